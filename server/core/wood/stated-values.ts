/**
 * Design values of a timber class as its file has them: the tables, with what the file states itself on top; or stated
 * values alone, for a wood that is in no table.
 */
import { given } from "../sourced.ts";
import {
  ASSUMED_GRADE,
  designValues,
  type FoundValues,
  minimumModulusOf,
  type NoValues,
  overrideValues,
} from "./design-values.ts";
import { findSpecies } from "./species.ts";
import type { DesignValueKey, DesignValues } from "./types.ts";

export interface StatedTimber {
  readonly species: string;
  /** undefined = No.2 */
  readonly grade: string | undefined;
  /** in, actual */
  readonly width: number;
  readonly depth: number;
  /** psi (`G` without unit) that the file states itself */
  readonly own: ReadonlyMap<DesignValueKey, number>;
  readonly because: string | undefined;
}

/** Values of a file; `table` undefined where no table was used. */
export type TimberValues = Omit<FoundValues, "table"> & { readonly table: FoundValues["table"] | undefined };

/** Without a table the file has to state F_b, F_t, F_v, F_c⊥, F_c and E; E_min follows from E, G from the species. */
export function timberValues(timber: StatedTimber): TimberValues | NoValues {
  const { species, grade, width, depth, own, because } = timber;
  const found = designValues(species, grade, width, depth);
  if (found.kind === "values") return { ...found, values: overrideValues(found.values, own, because) };
  if (found.sizeClass === "too-thin") return found;
  const values = statedAlone(species, own, because);
  if (values === undefined) return found;
  return {
    kind: "values",
    group: species,
    table: undefined,
    sizeClass: found.sizeClass,
    grade: ASSUMED_GRADE,
    assumedGrade: false,
    values,
    status: "given",
  };
}

function statedAlone(
  species: string,
  own: ReadonlyMap<DesignValueKey, number>,
  because: string | undefined,
): DesignValues | undefined {
  const stated = (key: DesignValueKey) => {
    const value = own.get(key);
    return value === undefined ? undefined : given(value, because);
  };
  const [Fb, Ft, Fv, Fc, E] = [stated("Fb"), stated("Ft"), stated("Fv"), stated("Fc"), stated("E")];
  const FcPerp = stated("Fc-perp");
  if (!Fb || !Ft || !Fv || !FcPerp || !Fc || !E) return undefined;
  const dry = findSpecies(species)?.species[0]?.gravity.dry;
  const G =
    stated("G") ??
    (dry && { value: dry[0], status: dry[1], source: "USDA Wood Handbook Table 5-3a, 12 percent" });
  if (G === undefined) return undefined;
  const Emin = stated("E-min") ?? minimumModulusOf(E.value);
  return { Fb, Ft, Fv, "Fc-perp": FcPerp, Fc, E, "E-min": Emin, G };
}
