import { versionText } from './help.ts';

/** `0.1.0` */
export const toolVersion: string = versionText.trim().split(' ').at(-1) ?? '';
