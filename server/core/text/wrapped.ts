/** Text in lines, broken between words; a word that is longer than a line stands alone in one. @param width characters */
export function wrapped(text: string, width: number): string[] {
  const lines = [""];
  for (const word of text.trim().split(/\s+/)) {
    const line = lines.at(-1) ?? "";
    if (line !== "" && line.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = line === "" ? word : `${line} ${word}`;
  }
  return lines;
}
