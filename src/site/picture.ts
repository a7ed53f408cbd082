/** A picture as the site shows it: published copies of one file of `content/photos/`, never the original. */
export interface Picture {
  /** site path of the larger copy: `photos/24-031-3f9a2c41.jpg` */
  readonly path: string
  /** pixels */
  readonly width: number
  /** pixels */
  readonly height: number
  /** a copy half as wide, for phones and cards; null for drawings, which are sharp at any size */
  readonly small: {readonly path: string; readonly width: number; readonly height: number} | null
}

/** Published pictures by the name records call them by, the path inside `content/photos/`. */
export type Pictures = ReadonlyMap<string, Picture>
