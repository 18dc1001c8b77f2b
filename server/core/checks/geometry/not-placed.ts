/** Timbers that lack a neighbor only because the neighbor's own entry cannot be placed or read: they are not blamed for it. */
import type { Member } from "../../frame/frame.ts";
import type { Model, Timber } from "../../model/model.ts";

const base = (name: string): string => name.split("@")[0] ?? name;

function refsOf(member: Member): string[] {
  const refs = [member.from, member.to, member.hungOn, ...(member.between ?? [])];
  return refs.flatMap((ref) => (ref ? [base(ref.text)] : []));
}

/** Every name that the entries of the frame refer to. */
function referredTo(model: Model): Set<string> {
  const { frame } = model;
  const refs = [
    ...frame.members.flatMap((m) => [...(m.walls ?? []), ...(m.bents ?? [])]),
    ...frame.joints.flatMap((j) => [...j.of, ...j.into]),
    ...frame.piers.flatMap((p) => (p.under ? [p.under] : [])),
  ];
  return new Set([...refs.map((ref) => base(ref.text)), ...frame.members.flatMap(refsOf)]);
}

/** Names of what an entry is tied to: by its own references, by others', by joints. */
function tiedTo(model: Model, name: string): string[] {
  const { members, joints } = model.frame;
  const self = members.filter((m) => m.name === name);
  const own = self.flatMap(refsOf);
  const isOwn = (ref: string): boolean => ref === name || self.some(({ kind }) => kind === ref);
  const others = members.filter((m) => refsOf(m).some(isOwn)).map((m) => m.name);
  const partners = joints.flatMap((joint) => {
    const [of, into] = [joint.of, joint.into].map((refs) => refs.map((ref) => base(ref.text)));
    return [...(of?.some(isOwn) ? (into ?? []) : []), ...(into?.some(isOwn) ? (of ?? []) : [])];
  });
  return [...own, ...others, ...partners];
}

/** @returns whether what should hold a timber may be an entry that is not in the model; piers without depth are none */
export function maybeHeld(model: Model): (timber: Timber) => boolean {
  const lost = [...model.frame.unread].filter((name) => !model.members.has(name));
  const known = lost.length === 0 ? new Set<string>() : referredTo(model);
  // what an entry that cannot be read at all would have held, nobody can say
  if (lost.some((name) => known.has(name))) return () => true;
  const absent = model.frame.members.filter((m) => !model.sticks.has(m.name));
  const tied = new Set(absent.flatMap((m) => tiedTo(model, m.name)));
  for (const { under, depth } of model.frame.piers)
    if (under && depth === undefined) tied.add(base(under.text));
  return (timber) => tied.has(timber.member) || tied.has(timber.kind);
}
