// Files and paper: a file to the browser's downloads or a share sheet, a file from its picker, a
// page to its printer.

/// On a home screen of iOS a download link does nothing, or opens a sheet without a way back
/// (WebKit's bug 236943; "not working on ios PWA", issue 479 of FileSaver.js): files go out through
/// the share sheet there.
export function shares() {
  return navigator.standalone === true && navigator.canShare?.({ files: [new File(['a'], 'a.zip', { type: 'application/zip' })] }) === true;
}

/// `taken` is called with what happened to a shared file: 0 it was taken, 1 dismissed, 2 refused.
export function give(name, kind, bytes, taken) {
  if (shares()) {
    const file = new File([bytes], name, { type: kind });
    navigator.share({ files: [file] }).then(() => taken(0), (problem) => taken(problem.name === 'AbortError' ? 1 : 2));
    return;
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes], { type: kind }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/// The picker comes up only inside a touch, or shortly after it.
export function ask_for_file(take) {
  const input = document.createElement('input');
  input.type = 'file';
  input.id = 'picker';
  input.hidden = true;
  input.addEventListener('change', () => {
    if (input.files.length > 0) {
      take(input.files[0]);
    }
    input.remove();
  });
  document.getElementById('picker')?.remove();
  document.body.append(input);
  input.click();
}

/// Prints a page made by the program. It is put into this page, where only a printer shows it,
/// because not every tablet prints a frame.
export function print(html) {
  const page = new DOMParser().parseFromString(html, 'text/html');
  const style = document.createElement('style');
  style.textContent = [...page.querySelectorAll('style')].map((one) => one.textContent).join('\n');
  style.media = 'print';
  const paper = document.getElementById('paper');
  paper.replaceChildren(style, ...page.body.childNodes);
  const title = document.title;
  document.title = page.title;  // names the file where it is printed into one
  window.addEventListener('afterprint', () => { document.title = title; }, { once: true });
  window.print();
}
