/** Whether a text can be the id of a fact or an animal in the herd file. */
export const isId = (text: string): boolean => /^[0-9A-Za-z][\w.:-]{0,99}$/.test(text)
