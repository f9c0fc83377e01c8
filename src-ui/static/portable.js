// Starts the app where everything is in one file: the program stands in the page, packed. The build puts the glue
// above this.

open().catch((error) => {
  console.error(error);
  const paragraph = document.createElement("p");
  paragraph.setAttribute("role", "alert");
  paragraph.textContent = "Scantling could not start here. It needs a browser that runs WebAssembly, such as one made since 2023.";
  document.getElementById("app")?.replaceChildren(paragraph);
});

async function open() {
  const packed = Uint8Array.from(atob(document.getElementById("program").textContent.trim()), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  await __wbg_init({ module_or_path: await new Response(unpacked).arrayBuffer() });
}
