/** Frames that lack something or name what is not there: said once, never a crash or a loop (placement rules; derived). */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { boxOf, build, expectBox, idsOf, modelOf, problem, problemsOf, stick, textOf } from "./frames.ts";

describe("frames that lack something", () => {
  test("no roof, one bent, one wall", () => {
    const model = build({
      walls: "{A: 0}",
      bents: "{1: 0}",
      members: { post: "{kind: post, section: 6x6, at: [A1], from: base, to: top}" },
    });
    expectBox(model, "post@A1", [0, 6], [0, 6], [0, 96]);
    expect(model.roof).toBeUndefined();
    const beam = build({
      bents: "{1: 0}",
      members: { m: "{kind: beam, section: 6x6, walls: [A], top: top}" },
    });
    expect(problemsOf(beam)).toEqual(["no-length /members/m"]);
    const over = build({
      bents: "{1: 0}",
      members: { m: "{kind: beam, section: 6x6, walls: [A], top: top, overhang: 2 ft}" },
    });
    expect(boxOf(stick(over, "m@A")).x).toEqual([-24, 24]);
  });

  test("a timber without height or end is said, with the keys that would do", () => {
    const model = build({
      members: {
        plate: "{kind: plate, section: 8x9, walls: [A]}",
        post: "{kind: post, section: 8x8, at: [A1], from: base}",
        knee: "{kind: brace, section: 4x6, between: [post, plate]}",
      },
    });
    expect(problem(model, "placement-missing")).toMatchObject({
      path: "/members/plate",
      needs: ["top", "bottom"],
    });
    expect(problemsOf(model)).toEqual([
      "placement-missing /members/plate",
      "placement-missing /members/post",
    ]);
  });

  test("zero and negative lengths are said and not placed", () => {
    const model = build({
      members: {
        a: "{kind: post, section: 6x6, at: [A1], from: top, to: base}",
        b: "{kind: beam, section: 6x6, walls: [A], top: top, from: 2, to: 2}",
      },
    });
    expect(problemsOf(model)).toEqual(["no-length /members/a", "no-length /members/b"]);
    expect(problem(model, "no-length")).toMatchObject({ stick: "a@A1", length: -96 });
  });

  test("timbers that wait for each other are said, not waited for", () => {
    const model = build({
      members: {
        low: "{kind: post, section: 6x6, at: [A1], from: base, to: high}",
        high: "{kind: beam, section: 6x6, walls: [A], top: top, from: low}",
      },
    });
    expect(problem(model, "placement-circular").chain).toEqual(["low", "high", "low"]);
    const own = build({ members: { post: "{kind: post, section: 6x6, at: [A1], from: base, to: post}" } });
    expect(problemsOf(own)).toEqual(["placement-circular /members/post"]);
  });

  test("unknown names: line, place, level, class, with what is known", () => {
    const model = build({
      members: {
        plate: "{kind: plate, section: 8x9, walls: [C], top: top}",
        post: "{kind: post, section: 8x8, at: [A1, A7], from: base, to: top}",
        beam: "{kind: beam, section: 8x8, walls: [A], top: tops}",
        tie: "{kind: tie, section: 8x8, bents: [1], top: tie-top, timber: oak}",
      },
    });
    const sorts = model.problems.map((p) =>
      p.kind === "unknown-id" ? `${p.sort} ${p.text} ${p.path}` : p.kind,
    );
    expect(sorts.sort()).toEqual([
      "level tops /members/beam/top",
      "place A7 /members/post/at/1",
      "timber-class oak /members/tie/timber",
      "wall C /members/plate/walls/0",
    ]);
    expect(idsOf(model, "post")).toEqual(["post@A1"]);
  });

  test("whoever names an entry that cannot be read keeps silent", () => {
    const text = textOf({
      members: {
        plate: "{kind: plate, section: 8x9x, walls: [A], top: top}",
        post: "{kind: post, section: 8x8, at: [A1], from: base, to: plate}",
        knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 2 ft}",
      },
      joints: { head: "{kind: mortise-and-tenon, of: post, into: plate}" },
    });
    expect(problemsOf(modelOf(text, true))).toEqual([]);
  });

  test("a place named twice has one stick", () => {
    const twice = build({
      members: { post: "{kind: post, section: 8x8, at: [A1, B1], from: base, to: top}" },
    }).frame;
    const [post] = twice.members;
    const place = post?.at?.[0];
    const at = place === undefined ? [] : [place, place];
    const model = buildModel({ ...twice, members: twice.members.map((member) => ({ ...member, at })) });
    expect(model.timbers).toHaveLength(1);
    expect(model.joints).toEqual([]);
  });

  test("names: levels, members and joints share one set", () => {
    const model = build({
      members: { top: "{kind: post, section: 8x8, at: [A1], from: base, to: 5 ft}" },
    });
    expect(problem(model, "duplicate-id")).toMatchObject({ path: "/members/top", first: "/grid/levels/top" });
  });
});

describe("timber classes", () => {
  const members = {
    post: "{kind: post, section: 8x8, at: [A1], from: base, to: top}",
    beam: "{kind: beam, section: 8x8, walls: [A], top: 4 ft, timber: oak}",
  };
  const species = (name: string) => `{species: ${name}, grade: no-1}`;

  test("named, or frame, or the only one", () => {
    const both = build({
      members,
      timber: `{oak: ${species("white-oak")}, frame: ${species("eastern-hemlock")}}`,
    });
    expect(stick(both, "post@A1").class?.name).toBe("frame");
    expect(stick(both, "beam@A").class?.name).toBe("oak");
    const one = build({ members, timber: `{pegs: ${species("white-oak")}, oak: ${species("white-oak")}}` });
    expect(stick(one, "post@A1").class?.name).toBe("oak");
  });

  test("of several none is guessed, whatever their order", () => {
    for (const order of [
      ["oak", "pine"],
      ["pine", "oak"],
    ]) {
      const model = build({
        members,
        timber: `{${order.map((n) => `${n}: ${species("white-oak")}`).join(", ")}}`,
      });
      expect(stick(model, "post@A1").class).toBeUndefined();
      expect(problem(model, "two-readings")).toMatchObject({
        path: "/timber",
        what: "timber-class",
        readings: ["oak", "pine"],
      });
      expect(problemsOf(model)).toHaveLength(1);
    }
  });
});
