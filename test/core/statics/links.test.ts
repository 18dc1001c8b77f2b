/**
 * The springs of a frame point along unit vectors, so that whoever solves the printed model needs to scale none of them
 * (model.schema.json says so; outside it: that a spring's force is its stiffness times how far its points part).
 */
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { prepare } from "../../../server/core/analysis/analyse.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { jointActions } from "../../../server/core/statics/joint-actions.ts";
import { PreparedFrame } from "../../../server/core/statics/prepared-frame.ts";
import { readFrame } from "../../../server/document/read.ts";

const files = ["../../../samples/", "../../frames/"].flatMap((folder) => {
  const url = new URL(folder, import.meta.url);
  return readdirSync(url)
    .filter((name) => name.endsWith(".frame.yaml"))
    .map((name) => [name, new URL(name, url)] as const);
});

const structuresOf = (file: URL) => {
  const model = buildModel(readFrame(readFileSync(file, "utf8")).frame);
  const prepared = new PreparedFrame(model, jointActions(model));
  return [
    prepared.hold.frame.structure,
    ...(prepared.sliding ? [prepared.sliding.made.frame.structure] : []),
  ];
};

test.each(files)("%s", (_, file) => {
  for (const { links = [] } of structuresOf(file))
    for (const { id, direction } of links) expect(Math.hypot(...direction), id).toBeCloseTo(1, 12);
});

test("decks of panels are among them, as stiff as before: only their direction counts", () => {
  const file = files.find(([name]) => name.startsWith("king-post-truss"))![1];
  const [structure] = structuresOf(file);
  const links = structure!.links!;
  const decks = links.filter(({ id }) => id.startsWith("deck "));
  expect(decks.length).toBeGreaterThan(3);
  const load = {
    id: "push",
    nodeLoads: structure!.nodes.map((_, node) => ({ node, force: [1, 1, -1] as const })),
  };
  const other = {
    ...structure!,
    links: links.map((l) => ({
      ...l,
      direction: l.direction.map((v) => 50 * v) as [number, number, number],
    })),
  };
  const [a, b] = [structure!, other].map((s) => prepare(s).solve(load).solution!);
  a!.displacements.forEach((u, node) => {
    u.forEach((v, m) => {
      expect(Math.abs(v - b!.displacements[node]![m]!)).toBeLessThan(1e-9);
    });
  });
});
