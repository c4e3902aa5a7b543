// A storage without room for one letter more.

/** Runs on the page: fills what is left of the browser's storage, under keys that begin with `filler.` */
export function fillUp() {
  let count = 0;
  for (let length = 1 << 22; length >= 1; ) {
    try {
      localStorage.setItem(`filler.${count}`, 'x'.repeat(length));
      count += 1;
    } catch {
      length = Math.floor(length / 2);
    }
  }
  // What is less than another entry's name goes to the last one.
  const last = `filler.${count - 1}`;
  for (let text = localStorage.getItem(last); ; ) {
    text += 'x';
    try {
      localStorage.setItem(last, text);
    } catch {
      return;
    }
  }
}
