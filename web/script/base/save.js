// save.js - a text handed to the reader as a file.
// SPDX-License-Identifier: MIT

/** type: of media, as "text/yaml". */
export function saveAs(name, text, type) {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}
