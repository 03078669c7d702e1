export declare function versionStamp(folder?: string): string;
