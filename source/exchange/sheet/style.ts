/** The look of the printed sheet: sizes in millimetres as html.ts counts them, type to be read at arm's length. */
export const sheetStyle = `
@page { size: A4; margin: 0 }
* { box-sizing: border-box; margin: 0; padding: 0 }
body { background: #fff; color: #000; font: 10.5pt/1.25 "DejaVu Sans Condensed", "Liberation Sans", Arial, Helvetica, sans-serif }
.page { position: relative; width: 210mm; height: 297mm; padding: 10mm 12mm; overflow: hidden; break-after: page }
.page:last-child { break-after: auto }
header { display: flex; justify-content: space-between; align-items: flex-end; height: 13mm; padding-bottom: 1.5mm }
h1, .date { font-size: 19pt; font-weight: bold; line-height: 1.1; white-space: nowrap }
h1 { flex: 0 1 auto; overflow: hidden; text-overflow: ellipsis; padding-right: 6mm }
.block { height: 5.5mm; font-size: 11pt; white-space: nowrap; overflow: hidden; text-overflow: ellipsis }
h2 { display: flex; align-items: flex-end; height: 12mm; padding-bottom: 1mm; border-bottom: 0.7mm solid #000; font-size: 15pt; white-space: nowrap }
h2 small { padding-left: 3mm; font-size: 11pt; font-weight: normal }
h2 em { flex: 1; overflow: hidden; padding-left: 6mm; font-size: 10pt; text-align: right; text-overflow: ellipsis }
.row { display: flex; align-items: center; height: 11mm; border-bottom: 0.2mm solid #000; overflow: hidden }
.row > span { white-space: nowrap; overflow: hidden; text-overflow: ellipsis }
.box { flex: none; width: 6mm; height: 6mm; border: 0.5mm solid #000; font: bold 13pt/5mm "DejaVu Sans", sans-serif; text-align: center }
.number { flex: none; width: 22mm; padding-right: 4mm; font-size: 21pt; line-height: 1; text-align: right; white-space: nowrap; overflow: hidden }
.number.long { font-size: 11pt }
.who { flex: 1 1 0 }
.who strong { padding-left: 2mm }
.service { flex: none; width: 68mm; padding-left: 3mm }
.service > b:first-child { font-size: 12pt }
.note { flex: none; align-self: flex-end; width: 27mm; height: 8mm; margin: 0 0 1mm 3mm; border-bottom: 0.2mm dotted #000 }
.numbers { display: flex; align-items: center; height: 10mm; border-bottom: 0.2mm solid #000 }
.numbers span { display: flex; align-items: center; flex: 0 0 31mm; overflow: hidden }
.numbers b { padding-left: 2mm; font-size: 16pt }
.line { height: 8mm; padding-top: 1.5mm; font-size: 13pt }
.nothing { height: 20mm; padding-top: 8mm; font-size: 15pt }
.cautions { padding-top: 4mm; list-style: none; font-size: 9pt; line-height: 4.4mm }
.cautions li { padding-left: 4mm; text-indent: -4mm }
.cautions li::before { content: "! "; font-weight: bold }
footer { position: absolute; right: 12mm; bottom: 8mm; font-size: 10pt }
@media screen { body { background: #ddd } .page { margin: 4mm auto; background: #fff } }
`
