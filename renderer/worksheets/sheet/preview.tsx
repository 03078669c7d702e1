import Box from '@mui/material/Box';
import NativeSelect from '@mui/material/NativeSelect';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useCalm } from '../../drawing/pace';
import { Plate, Tool } from '../../drawing/plate';
import type { DocumentName } from '../../printing';
import { useDesign } from '../../state/design';
import { useView } from '../../state/view';
import type { FigureProps } from '../worksheet';
import type { Pages, pageOf } from './pages';

const documents: Record<DocumentName, string> = {
  sheet: 'Winding sheet',
  templates: 'Templates at natural size',
  report: 'Calculation report',
};

const CALM = 400;

/** The documents page by page, each read back from the very file that would be saved. */
export function Preview(props: FigureProps) {
  const [what, setWhat] = useState<DocumentName>('sheet');
  const [wanted, setWanted] = useState(1);
  const { pages, fault } = usePages(what, props);
  const count = pages?.numPages ?? 1;
  const number = Math.min(wanted, count);
  const choose = (name: DocumentName) => {
    setWhat(name);
    setWanted(1);
  };
  return (
    <Plate
      title="Pages as printed"
      tools={
        <>
          <NativeSelect
            value={what}
            disableUnderline
            inputProps={{ 'aria-label': 'Document' }}
            onChange={(event) => choose(event.target.value as DocumentName)}
            sx={{ fontSize: 12.5 }}
          >
            {Object.entries(documents).map(([name, title]) => (
              <option key={name} value={name}>
                {title}
              </option>
            ))}
          </NativeSelect>
          <Tool label="Page before" onClick={() => setWanted(Math.max(1, number - 1))}>
            ‹
          </Tool>
          <Box component="span" role="status" sx={{ fontSize: 12.5, whiteSpace: 'nowrap' }}>
            {pages ? `page ${number} of ${count}` : 'printing…'}
          </Box>
          <Tool label="Page after" onClick={() => setWanted(Math.min(count, number + 1))}>
            ›
          </Tool>
        </>
      }
      note={fault && `The pages could not be made: ${fault}`}
    >
      {pages && <Page pages={pages} number={number} />}
    </Plate>
  );
}

interface Made {
  pages: Pages | null;
  fault: string | null;
}

/** The pages of the design once its numbers stand still; while they are made those before stay. */
function usePages(what: DocumentName, props: FigureProps): Made {
  const [made, setMade] = useState<Made>({ pages: null, fault: null });
  const { design, results } = useCalm(
    useMemo(() => ({ design: props.design, results: props.results }), [props.design, props.results]),
    CALM,
  );
  const paper = useView((s) => s.paper);
  const fileName = useDesign((s) => s.file?.name);
  useEffect(() => {
    let stale = false;
    Promise.all([import('../../printing'), import('./pages')])
      .then(async ([{ printed }, { pagesOf }]) => pagesOf(await printed(what, design, results, paper, fileName)))
      .then(
        (pages) => (stale ? void pages.destroy() : setMade({ pages, fault: null })),
        (error: unknown) => !stale && setMade({ pages: null, fault: String(error) }),
      );
    return () => {
      stale = true;
    };
  }, [what, design, results, paper, fileName]);
  const { pages } = made;
  useEffect(() => () => void pages?.destroy(), [pages]);
  return made;
}

/** Black on white, as paper is by night too. */
function Page({ pages, number }: { pages: Pages; number: number }) {
  const [shown, setShown] = useState<Awaited<ReturnType<typeof pageOf>> | null>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    let stale = false;
    void import('./pages')
      .then(({ pageOf }) => pageOf(pages, number))
      .then(
        (page) => !stale && setShown(page),
        // Pages that were replaced meanwhile are shown no more.
        (error: unknown) => {
          if (!stale) throw error;
        },
      );
    return () => {
      stale = true;
    };
  }, [pages, number]);
  useEffect(() => {
    if (!shown || !canvas.current) return;
    canvas.current.width = shown.picture.width;
    canvas.current.height = shown.picture.height;
    canvas.current.getContext('2d')?.drawImage(shown.picture, 0, 0);
  }, [shown]);
  return (
    <Box component="figure" aria-label={`Page ${number}`} sx={{ m: 0, p: 1.5, position: 'relative' }}>
      <canvas ref={canvas} aria-hidden style={sheetOfPaper} />
      <Box component="p" sx={unseen}>
        {shown?.words}
      </Box>
    </Box>
  );
}

/** Its edge grey, so that it stands out on white and on black. */
const sheetOfPaper = { display: 'block', width: '100%', maxWidth: 860, margin: '0 auto', background: '#fff', outline: '1px solid #999' };

/** For readers aloud, who get nothing from a picture. */
const unseen = { position: 'absolute', width: 1, height: 1, m: 0, overflow: 'hidden', clipPath: 'inset(50%)' } as const;
