/** A sentence about some ports. @module */

/** The words with the ports they are about, in the order of their numbers. @internal */
export function withPorts(words: string, ports: readonly number[]): string {
  return `${words}: ${ports.length === 1 ? 'port' : 'ports'} ${[...ports].sort((a, b) => a - b).join(', ')}`;
}
