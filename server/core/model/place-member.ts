/** Which rule places which entry. */
import type { Member } from "../frame/frame.ts";
import type { Timber } from "./model.ts";
import { placeBraces } from "./place-brace.ts";
import { placeFree } from "./place-free.ts";
import { placeLying } from "./place-lying.ts";
import { placePurlins } from "./place-purlins.ts";
import { placePrincipals, placeRidge } from "./place-roof.ts";
import { placeSeries } from "./place-series.ts";
import { placeKingPosts, placePosts } from "./place-upright.ts";
import type { Placer } from "./placer.ts";

/** All sticks of one entry; what cannot be placed is reported to the placer. */
export function placeMember(p: Placer, member: Member): readonly Timber[] {
  if (member.ends) return placeFree(p, member, member.ends);
  switch (member.kind) {
    case "post":
      return placePosts(p, member);
    case "king-post":
      return placeKingPosts(p, member);
    case "ridge":
      return placeRidge(p, member);
    case "rafter":
      return placePrincipals(p, member);
    case "brace":
      return placeBraces(p, member);
    case "strut":
      return member.between ? placeBraces(p, member) : placePosts(p, member);
    case "purlin":
      return member.walls || member.bents ? placeLying(p, member) : placePurlins(p, member);
    case "joist":
      return member.between ? placeSeries(p, member, member.between) : placeLying(p, member);
    case "plate":
    case "sill":
    case "girt":
    case "tie":
    case "beam":
      return member.between ? placeSeries(p, member, member.between) : placeLying(p, member);
  }
}
