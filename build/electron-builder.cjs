const { version: electronVersion } = require('electron/package.json');

/** @type {import('electron-builder').Configuration} */
module.exports = {
  appId: 'org.gapwright.app',
  productName: 'Gapwright',
  copyright: 'MIT licence',
  directories: { output: 'release', buildResources: 'assets' },
  files: ['dist/window/**', 'dist/renderer/**', 'assets/fonts/*LICENSE*', 'package.json', '!node_modules'],
  // Beside the program, where Electron's own licences lie too.
  extraFiles: [
    { from: 'LICENSE', to: 'LICENSE.gapwright.txt' },
    { from: 'dist/renderer/licences.txt', to: 'LICENSES.packages.txt' },
  ],
  asar: true,
  npmRebuild: false,
  electronVersion,
  fileAssociations: [{ ext: 'gapwright', name: 'Gapwright design', mimeType: 'application/x-gapwright+json', role: 'Editor' }],
  electronFuses: {
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    grantFileProtocolExtraPrivileges: false,
  },
  linux: { target: ['AppImage', 'deb'], category: 'Engineering', maintainer: 'The Gapwright founders' },
  win: { target: ['nsis'] },
  nsis: { oneClick: false, allowToChangeInstallationDirectory: true },
  mac: { target: ['dmg'], category: 'public.app-category.utilities' },
  publish: null,
};
