import { sections } from '../../source/breeding/sections.ts'
import { cautionOfForm } from '../../source/screens/words/cautions.ts'
import { formTitles } from '../../source/screens/words/forms.ts'
import { type CautionName, cautions, cautionsOf } from '../../source/words/cautions.ts'
import { sectionNames } from '../../source/words/list.ts'
import { page, table } from './markdown.ts'

const shownIn = (name: CautionName): string => {
  const lists = sections.filter((section) => cautionsOf[section].includes(name))
  const forms = (Object.keys(cautionOfForm) as Array<keyof typeof cautionOfForm>).filter(
    (form) => cautionOfForm[form] === name,
  )
  return [
    ...(lists.length === 0 ? [] : [`list: ${lists.map((section) => sectionNames[section]).join(', ')}`]),
    ...(forms.length === 0 ? [] : [`forms: ${forms.map((form) => formTitles[form]).join(', ')}`]),
  ].join('; ')
}

/** Every caution, where it is shown and who says so. */
export const cautionsPage = (): string =>
  page(
    'Cautions',
    `dawnlist is a reminder, not advice. Local law and your vet come first. The cautions stand in short where the danger is,
in full on the first screen of the day, and on every printed sheet.
`,
    table(
      ['In full', 'Shown with', 'Who says so'],
      (Object.keys(cautions) as CautionName[]).map((name) => [
        cautions[name].full,
        shownIn(name),
        cautions[name].source,
      ]),
    ),
  )
