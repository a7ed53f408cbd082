/** A fault of the system, such as a full disk or a file that may not be read: its message is for the person at the keyboard, where our own slips need their trace. */
export interface SystemFault extends Error {
  readonly code: string
  readonly syscall: string
}

export const isSystemFault = (fault: unknown): fault is SystemFault =>
  fault instanceof Error && 'code' in fault && typeof fault.code === 'string' && 'syscall' in fault && typeof fault.syscall === 'string'
