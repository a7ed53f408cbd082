/** A thing of the logbook while linking still fills it in. */
export type Open<T> = {-readonly [K in keyof T]: T[K]}
