import { DomainError } from '../../shared/errors.ts';

/** The bytes of a file, or of a piece of one, in base64. @throws DomainError 'input-missing' if it can no longer be read */
export async function base64Of(blob: Blob): Promise<string> {
  const reader = new FileReader();
  const url = await new Promise<string>((resolve, reject) => {
    reader.addEventListener('load', () => resolve(reader.result as string));
    reader.addEventListener('error', () =>
      reject(new DomainError('input-missing', 'The file can no longer be read where it lies. Choose it again.')),
    );
    reader.readAsDataURL(blob);
  });
  return url.slice(url.indexOf(',') + 1);
}
