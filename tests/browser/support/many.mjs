/** Runs on the page: keeps copies of the first job under names of their own, up to so many jobs or as many as there is room for. */
export function manyJobs(count) {
  const [, text] = Object.entries(localStorage).find(([key]) => key.includes('.job.'));
  const { job, drafts } = JSON.parse(text);
  const kept = JSON.parse(localStorage.getItem('wellwright.order'));
  const more = Array.from({ length: count - kept.length }, (_, at) => `many-${at + 1}`);
  localStorage.setItem('wellwright.order', JSON.stringify([...kept, ...more]));
  for (const [at, id] of more.entries()) {
    const entry = { job: { ...job, name: `Field ${at + 1} `, demo: false }, drafts };
    try {
      localStorage.setItem(`wellwright.job.${id}`, JSON.stringify(entry));
    } catch {
      return kept.length + at;
    }
  }
  return count;
}
