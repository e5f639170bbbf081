/** The colour to show beside a material's name: none when the name says it already. */
export const colourBeside = (name: string, colour: string): string => (name.toLowerCase().includes(colour.toLowerCase()) ? "" : colour);
