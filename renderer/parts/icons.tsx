import SvgIcon, { type SvgIconProps } from '@mui/material/SvgIcon';

const icon = (path: string) =>
  function Icon(props: SvgIconProps) {
    return (
      <SvgIcon fontSize="small" viewBox="0 0 20 20" {...props}>
        <path d={path} fill="none" stroke="currentColor" strokeWidth="1.5" strokeLinecap="round" strokeLinejoin="round" />
      </SvgIcon>
    );
  };

export const UndoIcon = icon('M7 4 3 8l4 4M3 8h8a5 5 0 0 1 0 10H8');
export const RedoIcon = icon('m13 4 4 4-4 4m4-4H9a5 5 0 0 0 0 10h3');
export const LightIcon = icon(
  'M10 6.5a3.5 3.5 0 1 0 0 7 3.5 3.5 0 0 0 0-7ZM10 1.5v2M10 16.5v2M1.5 10h2M16.5 10h2M4 4l1.4 1.4M14.6 14.6 16 16M16 4l-1.4 1.4M5.4 14.6 4 16',
);
export const DarkIcon = icon('M16.5 12.2A7 7 0 0 1 7.8 3.5a7 7 0 1 0 8.7 8.7Z');
export const SystemIcon = icon('M3 4h14v9H3zM7 17h6M10 13v4');
export const NoteIcon = icon('M10 2.5a7.5 7.5 0 1 0 0 15 7.5 7.5 0 0 0 0-15ZM10 9v5M10 6.2v.1');
export const WarningIcon = icon('M10 3 2 17h16L10 3ZM10 8.5v4M10 14.8v.1');
export const DangerIcon = icon('M6.7 2.5h6.6l4.2 4.2v6.6l-4.2 4.2H6.7l-4.2-4.2V6.7l4.2-4.2ZM10 6v5M10 13.8v.1');
export const ErrorIcon = icon('M10 2.5a7.5 7.5 0 1 0 0 15 7.5 7.5 0 0 0 0-15ZM7 7l6 6M13 7l-6 6');
export const RemoveIcon = icon('m5 5 10 10M15 5 5 15');
export const AddIcon = icon('M10 4v12M4 10h12');
export const PrintIcon = icon('M6 8V3h8v5M6 15H3V8h14v7h-3M6 12h8v5H6z');
export const MenuDownIcon = icon('m6 8 4 4 4-4');
