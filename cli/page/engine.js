// The engine of this page: the same code as the command, as a WebAssembly module.

/** The calls of WASI that a module without files makes: it may say on its way down what went wrong. */
function systemCalls(memory) {
  const notHere = () => 52; // ENOSYS
  const said = [];
  return {
    fd_write(stream, pieces, count, written) {
      const view = new DataView(memory().buffer);
      let bytes = 0;
      for (let i = 0; i < count; ++i) {
        const at = view.getUint32(pieces + 8 * i, true);
        const length = view.getUint32(pieces + 8 * i + 4, true);
        said.push(new TextDecoder().decode(new Uint8Array(memory().buffer, at, length)));
        bytes += length;
      }
      view.setUint32(written, bytes, true);
      return 0;
    },
    proc_exit() {
      throw new Error(`the engine stopped: ${said.join("")}`);
    },
    environ_sizes_get(count, size) {
      const view = new DataView(memory().buffer);
      view.setUint32(count, 0, true);
      view.setUint32(size, 0, true);
      return 0;
    },
    environ_get: () => 0,
    fd_close: notHere,
    fd_seek: notHere,
  };
}

/**
 * Starts the engine on the rules of a page. Each function of the result takes a text and gives what
 * the engine answers; engine/page/page_engine.hpp says what that is. Fails where the rules are faulty.
 */
export async function startEngine(module, rules) {
  let running;
  const memory = () => running.exports.memory;
  const { instance } = await WebAssembly.instantiate(module, {
    wasi_snapshot_preview1: systemCalls(memory),
  });
  running = instance;
  running.exports._initialize();

  const ask = (question) => (text) => {
    const bytes = new TextEncoder().encode(text);
    const room = running.exports.room(bytes.length);
    new Uint8Array(memory().buffer, room, bytes.length).set(bytes);
    const answer = running.exports[question]();
    return new TextDecoder().decode(
      new Uint8Array(memory().buffer, answer, running.exports.length()));
  };
  const fault = ask("open")(rules);
  if (fault) {
    throw new Error(fault);
  }
  const engine = {};
  for (const question of ["speak", "questions", "answers", "verdict", "file", "opened"]) {
    engine[question] = ask(question);
  }
  return engine;
}
