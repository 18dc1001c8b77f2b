/** What a diagnostic's link leads to, by what the editor can show. */
import { pageLink } from "./check-page.ts";
import type { LinkOf } from "./diagnostics.ts";

/** What is known of an editor when it starts the server. */
export interface LinkAbilities {
  /** it shows links of diagnostics at all */
  readonly links: boolean;
  /** it opens our own pages */
  readonly pages: boolean;
}

/**
 * @param reference address of the check reference that is installed with the server, where it is known
 * @returns our own pages with this case's numbers, else the chapter of the reference, which any editor opens; undefined
 *   where there is neither
 */
export function linksFor({ links, pages }: LinkAbilities, reference: string | undefined): LinkOf | undefined {
  if (!links) return undefined;
  if (pages) return pageLink;
  return reference === undefined ? undefined : (_, { check }) => `${reference}#${check}`;
}
