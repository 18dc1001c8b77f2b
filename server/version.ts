/** The version of this build, as the package states it. */
export { version as VERSION } from "../package.json";
