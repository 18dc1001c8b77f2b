/**
 * Given to a program with `--require`: whatever would reach for a network fails, and is written to the file that
 * BENTWRIGHT_NETWORK_LOG names. The deepest functions are replaced, through which all others go.
 */
const { appendFileSync } = require("node:fs");

/** @param {object} owner @param {string} name @param {string} [as] */
function forbid(owner, name, as = name) {
  Object.defineProperty(owner, name, {
    configurable: true,
    value: () => {
      appendFileSync(process.env.BENTWRIGHT_NETWORK_LOG, `${as}\n${new Error().stack}\n`);
      throw new Error(`${as}: there is no network here`);
    },
  });
}

const net = require("node:net");
forbid(net.Socket.prototype, "connect", "net.connect");
forbid(net.Server.prototype, "listen", "net.listen");
forbid(require("node:tls"), "connect", "tls.connect");
forbid(require("node:http2"), "connect", "http2.connect");

for (const http of [require("node:http"), require("node:https")]) {
  forbid(http, "request", "http.request");
  forbid(http, "get", "http.get");
}

const { Socket } = require("node:dgram");
for (const name of ["bind", "send", "connect"]) forbid(Socket.prototype, name, `dgram.${name}`);

const dns = require("node:dns");
for (const owner of [dns, dns.promises])
  for (const name of Object.keys(owner))
    if (/^(lookup|resolve|reverse)/.test(name)) forbid(owner, name, `dns.${name}`);

for (const name of ["fetch", "WebSocket", "EventSource"]) forbid(globalThis, name);
