/** A question that cannot be asked so; the message is a whole sentence for the one who asked. */
export class Refusal extends Error {}
