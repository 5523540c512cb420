// Unpacks the program and compiles it, in a thread of its own while the page is laid out and
// painted. It stands before boot.js, which calls programOf.
'use strict';
{
  // All that the thread needs stands in here: its script is this function's text.
  const unpacker = () => {
    // What is done at a time: what is pressed meanwhile waits for no more.
    const piece = 1 << 19; // bytes
    // A character holds seven bits of the program, the lowest first; one of two bytes holds
    // twelve, the first seven by what they may not be written as: see sevens in web/pack.
    const bytesOf = text => {
      const colon = text.indexOf(':'), end = text.lastIndexOf('.');
      const bytes = new Uint8Array(+text.slice(0, colon) + 4);
      let held = 0, bits = 0, n = 0;
      for (let i = colon + 1; i < end; i++) {
        const code = text.charCodeAt(i);
        if (code < 128) {
          held |= code << bits;
          bits += 7;
        } else {
          held |= ((code < 192 ? 0 : code < 224 ? 13 : 60) | (code & 31) << 7) << bits;
          bits += 12;
          if (bits >= 16) { bytes[n++] = held; held >>>= 8; bits -= 8; }
        }
        if (bits >= 8) { bytes[n++] = held; held >>>= 8; bits -= 8; }
      }
      return bytes.subarray(0, -4);
    };
    // Lays together what split in web/pack took apart, where the layout stands, and gives it in pieces. A
    // program has millions of shapes, so each takes eight bytes at once, if it needs them or not.
    const joined = function* (buffer) {
      const input = new Uint8Array(buffer);
      const [before, whole, functions, count, ...sizes] = new Uint32Array(buffer, 0, 32);
      const PLAIN = 0, SHAPES = 1, LOCALS = 2, CODE = 3, RETURNS = 4, TABLES = 5;
      const RETURN = 253, TABLE = 254, LAST = 255;
      const at = new Int32Array(count + 1).fill(4 * (4 + count));
      for (let k = 0; k < count; k++) at[k + 1] = at[k] + sizes[k];
      const texts = new Int32Array(512);
      const [longs, streams, hows] = [0, 1, 2].map(() => new Uint8Array(256));
      for (let s = 0, p = at[SHAPES]; p < at[LOCALS]; s++) {
        longs[s] = input[p++]; streams[s] = input[p++]; hows[s] = input[p++];
        for (let i = 0; i < longs[s]; i++) texts[2 * s + (i >> 2)] |= input[p++] << (8 * i);
      }
      const out = new Uint8Array(whole + 8), view = new DataView(out.buffer);
      let n = before, last = 0;
      const number = k => {
        let byte, v = 0, shift = 0;
        do { byte = input[at[k]++]; v |= (byte & 127) << shift; shift += 7; } while (byte > 127);
        return byte & 64 && shift < 32 ? v | -1 << shift : v;
      };
      const write = v => {
        for (; v > 127; v >>>= 7) out[n++] = v & 127 | 128;
        out[n++] = v;
      };
      const special = how => {
        if (how === RETURN) {
          let v = last += number(RETURNS);
          for (; v > 63; v >>= 7) out[n++] = v & 127 | 128;
          out[n++] = v;
        } else if (how === TABLE) {
          const labels = number(TABLES);
          write(labels);
          for (let i = 0, label = 0; i <= labels; i++) write(label += number(TABLES));
        }
      };
      const body = () => {
        let c = at[CODE], to = n;
        for (let how = 0; how !== LAST;) {
          const s = input[c++], k = streams[s];
          view.setInt32(to, texts[2 * s], true);
          view.setInt32(to + 4, texts[2 * s + 1], true);
          to += longs[s];
          how = hows[s];
          if (k === 0 && how === 0) continue;
          if (how >= RETURN) {
            n = to;
            special(how);
            to = n;
          } else if (how === 0) {
            let p = at[k];
            do out[to++] = input[p]; while (input[p++] > 127);
            at[k] = p;
          } else {
            for (let i = 0; i < how; i++) out[to++] = input[at[k]++];
          }
        }
        at[CODE] = c;
        n = to;
      };
      // A size is written in all the bytes left for it.
      const size = (at, bytes, v) => {
        for (let i = 0; i < bytes; i++, v >>>= 7) out[at + i] = v & 127 | (i < bytes - 1 ? 128 : 0);
      };
      const sectionSize = 5, functionSize = 4, behind = at[SHAPES] - at[PLAIN] - before;
      out.set(input.subarray(at[PLAIN], at[PLAIN] + before));
      size(n, sectionSize, whole - before - sectionSize - behind);
      n += sectionSize;
      write(functions);
      let given = 0;
      for (let f = 0; f < functions; f++) {
        last = Math.max(last, (4096 + f) << 16);
        const place = n;
        n += functionSize;
        for (let long = input[at[LOCALS]++]; long > 0; long--) out[n++] = input[at[LOCALS]++];
        body();
        size(place, functionSize, n - place - functionSize);
        if (n - given < piece) continue;
        yield out.subarray(given, n);
        given = n;
      }
      out.set(input.subarray(at[PLAIN] + before, at[SHAPES]), n);
      yield out.subarray(given, whole);
    };
    return async texts => {
      const packed = bytesOf(texts.join(''));
      const unzip = new DecompressionStream('gzip'), writer = unzip.writable.getWriter();
      const feed = async () => {
        for (let i = 0; i < packed.length; i += piece) await writer.write(packed.subarray(i, i + piece));
        await writer.close();
      };
      const [apart] = await Promise.all([new Response(unzip.readable).arrayBuffer(), feed()]);
      // The browser checks a piece in a thread of its own while the next is laid together.
      const pieces = joined(apart);
      const program = new ReadableStream({
        pull(to) {
          const {value, done} = pieces.next();
          done ? to.close() : to.enqueue(value);
        },
      });
      return WebAssembly.compileStreaming(new Response(program, {headers: {'Content-Type': 'application/wasm'}}));
    };
  };
  const script = `const compiled = (${unpacker})();
    onmessage = ({data}) => {
      postMessage('begun');
      compiled(data).then(program => postMessage(program)).catch(error => postMessage(String(error)));
    };`;
  const inThread = (texts, begun) => new Promise((done, fail) => {
    const thread = new Worker(URL.createObjectURL(new Blob([script], {type: 'text/javascript'})));
    const end = act => value => { thread.terminate(); act(value); };
    thread.onmessage = ({data}) => {
      if (data === 'begun') begun();
      else end(data instanceof WebAssembly.Module ? done : fail)(data);
    };
    thread.onerror = thread.onmessageerror = end(fail);
    thread.postMessage(texts);
  });
  // programOf is the compiled program of its text, given in pieces; begun is called while the
  // thread makes it. It is made here if the browser refuses the thread, or the program its way
  // back from it.
  window.programOf = (texts, begun) => inThread(texts, begun).catch(() => unpacker()(texts));
}
