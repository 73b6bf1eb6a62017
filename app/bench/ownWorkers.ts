interface TrustedTypes {
  readonly defaultPolicy: object | null;
  createPolicy(name: string, rules: { createScriptURL: (url: string) => string | null }): object;
}

/**
 * The page's policy lets no text become code. Workers are the one exception, and only those that stand beside this very
 * script: everything else is refused as before.
 */
export function allowOwnWorkers(): void {
  const { trustedTypes } = window as Window & { readonly trustedTypes?: TrustedTypes };
  if (trustedTypes === undefined || trustedTypes.defaultPolicy !== null) return;
  const folder = import.meta.url.replace(/[^/]*$/, '');
  trustedTypes.createPolicy('default', {
    createScriptURL: (url) =>
      /^(track|suggest)Worker-[\w-]+\.js$/.test(url.slice(folder.length)) && url.startsWith(folder) ? url : null,
  });
}
