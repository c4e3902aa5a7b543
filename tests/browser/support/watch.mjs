// Takes note of everything that goes wrong on a page, and of what the page loads.
import assert from 'node:assert/strict';

export function watch(page) {
  const problems = [];
  const responses = [];
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => problems.push(`page error: ${error}`));
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText;
    // What is still on its way when a test leaves the page is cut off; that is no fault.
    if (why !== 'net::ERR_ABORTED') problems.push(`request failed: ${request.url()} ${why}`);
  });
  page.on('request', (request) => {
    // Hosts of the tests stand on this machine; the page asks nobody else.
    if (!/^(http:\/\/127\.0\.0\.1:\d+\/|data:|blob:)/.test(request.url())) problems.push(`asked elsewhere: ${request.url()}`);
  });
  page.on('response', (response) => {
    responses.push(response);
    if (response.status() >= 400) problems.push(`status ${response.status()}: ${response.url()}`);
  });
  return {
    problems,
    responses,
    assertQuiet: () => assert.deepEqual(problems, [], 'the page reported problems'),
  };
}
