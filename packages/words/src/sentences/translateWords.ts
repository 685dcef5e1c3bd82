import type { Speech } from '../problems.ts';
import type { TranslationFault } from '../translating.ts';
import { yes } from './telling.ts';

const braced = (names: readonly string[]) => names.map((name) => `{${name}}`).join(' ');

/** What is wrong with a text in a language, in a few words. */
function faultIn({ say }: Speech, fault: TranslationFault['fault']): string {
  switch (fault.kind) {
    case 'broken':
      return say('commandLine.translate.fault.broken', { reason: fault.reason });
    case 'placesLost':
    case 'placesUnknown':
      return say(`commandLine.translate.fault.${fault.kind}`, { names: braced(fault.names) });
    case 'formsMissing':
    case 'formsUnknown':
      return say(`commandLine.translate.fault.${fault.kind}`, { name: fault.name, forms: fault.forms.join(', ') });
    case 'tooLong':
      return say('commandLine.translate.fault.tooLong', { length: fault.length, most: fault.most });
    case 'keyUnknown':
    case 'englishChanged':
      return say(`commandLine.translate.fault.${fault.kind}`);
  }
}

/** What the command says that carries texts to another language and back. */
// long: the words of one command, one a line
export const translateIn = ({ say, numbers }: Speech) => ({
  help: {
    words: say('commandLine.help.words'),
    export: say('commandLine.translate.help.export'),
    import: say('commandLine.translate.help.import'),
    language: say('commandLine.translate.help.language'),
    file: say('commandLine.translate.help.file'),
    missing: say('commandLine.translate.help.missing'),
    from: say('commandLine.translate.help.from'),
    into: say('commandLine.translate.help.into'),
    name: say('commandLine.translate.help.name'),
    direction: say('commandLine.translate.help.direction'),
    overwrite: say('commandLine.translate.help.overwrite'),
    examples: say('commandLine.translate.help.examples'),
  },
  written: (count: number, path: string) => say('commandLine.translate.written', { count, path }),
  allThere: say('commandLine.translate.allThere'),
  taken: (count: number, missing: number) => say('commandLine.translate.taken', { count, missing }),
  notTaken: (count: number) => say('commandLine.translate.notTaken', { count }),
  looked: (count: number) => say('commandLine.translate.looked', { count }),
  more: (count: number) => say('commandLine.translate.more', { count }),
  kept: (path: string) => say('commandLine.translate.kept', { path }),
  notKept: say('commandLine.translate.notKept'),
  about: (places: readonly string[], most: number) =>
    say('commandLine.translate.about', { hasPlaces: yes(places.length > 0), places: braced(places), most }),
  fault: (fault: TranslationFault['fault']) => faultIn({ say, numbers }, fault),
  trouble: {
    tag: (tag: string) => say('commandLine.translate.trouble.tag', { tag }),
    ending: (path: string) => say('commandLine.translate.trouble.ending', { path }),
    isThere: (path: string) => say('commandLine.translate.trouble.isThere', { path }),
    noFile: (path: string) => say('commandLine.translate.trouble.noFile', { path }),
    notATable: (path: string) => say('commandLine.translate.trouble.notATable', { path }),
    notALanguage: (path: string) => say('commandLine.translate.trouble.notALanguage', { path }),
    otherLanguage: (path: string, tag: string) => say('commandLine.translate.trouble.otherLanguage', { path, tag }),
    direction: say('commandLine.translate.trouble.direction'),
  },
});
