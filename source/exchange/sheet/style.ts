/** The look of the printed sheet: sizes in millimetres as html.ts counts them, type to be read at arm's length. */
export const sheetStyle = `
@page { size: A4; margin: 0 }
* { box-sizing: border-box; margin: 0; padding: 0 }
body { background: #fff; color: #000; font: 10.5pt/4.7mm "DejaVu Sans Condensed", "Liberation Sans", Arial, Helvetica, sans-serif; overflow-wrap: anywhere }
.page { position: relative; width: 210mm; height: 297mm; padding: 10mm 12mm; overflow: hidden; break-after: page }
.page:last-child { break-after: auto }
header { display: flex; justify-content: space-between; align-items: flex-end; height: 13mm; padding-bottom: 1.5mm }
h1, .date { font-size: 19pt; font-weight: bold; line-height: 1.1 }
.date { flex: none; padding-left: 6mm; white-space: nowrap }
h1.long { max-height: 11mm; font-size: 11pt; line-height: 5mm; overflow: hidden }
.block { font-size: 11pt; line-height: 5.5mm }
h2 { display: flex; align-items: flex-end; height: 12mm; padding-bottom: 1mm; border-bottom: 0.7mm solid #000; font-size: 15pt; line-height: 1.2; white-space: nowrap }
h2 small { padding-left: 3mm; font-size: 11pt; font-weight: normal }
h2 em { flex: 1; padding-left: 6mm; font-size: 10pt; text-align: right }
.row { display: flex; align-items: center; min-height: 11mm; border-bottom: 0.2mm solid #000 }
.box { display: inline-block; flex: none; width: 6mm; height: 6mm; border: 0.5mm solid #000; font: bold 13pt/5mm "DejaVu Sans", sans-serif; text-align: center; vertical-align: middle }
.number { flex: none; width: 24mm; padding-right: 3mm; font-size: 21pt; line-height: 1; text-align: right }
.number.middle { font-size: 15pt }
.number.long { font-size: 11pt; line-height: 4.8mm }
.who { flex: 1 1 0; font-size: 11pt; line-height: 4.8mm }
.who strong { padding-left: 2mm }
.service { flex: none; width: 68mm; padding-left: 3mm }
.straw { font-size: 12pt; line-height: 5.1mm }
.note { flex: none; align-self: flex-end; width: 25mm; height: 8mm; margin: 0 0 1mm 3mm; border-bottom: 0.2mm dotted #000 }
.results { flex: none; width: 88mm; padding-left: 3mm; text-align: right; white-space: nowrap }
.results .box { margin-left: 1.5mm }
.age { display: inline-block; width: 11mm; height: 6mm; margin-left: 1mm; border-bottom: 0.2mm dotted #000; vertical-align: middle }
.numbers { display: flex; align-items: center; height: 10mm; border-bottom: 0.2mm solid #000 }
.numbers span { display: flex; align-items: center; flex: 1 }
.numbers b { padding-left: 2mm; font-size: 15pt }
.line { padding-top: 1.5mm; font-size: 13pt; line-height: 6.5mm }
.nothing { height: 20mm; padding-top: 8mm; font-size: 15pt; line-height: 1.2 }
.card { margin-top: 4mm; padding: 1.5mm 3mm; border: 0.5mm solid #000 }
.card h3 { height: 6mm; font-size: 12pt; line-height: 5mm }
.card ol { padding-left: 7mm; font-size: 11pt; line-height: 5mm }
.cautions { padding-top: 4mm; list-style: none; font-size: 10pt; line-height: 4.7mm }
.cautions li { padding-left: 4mm; text-indent: -4mm }
.cautions li::before { content: "! "; font-weight: bold }
footer { position: absolute; left: 12mm; right: 12mm; bottom: 7mm; display: flex; justify-content: space-between; align-items: flex-end; min-height: 14mm; font-size: 10pt; line-height: 4.5mm }
.page-number { flex: none; padding-left: 8mm; white-space: nowrap }
@media screen { body { background: #ddd } .page { margin: 4mm auto; background: #fff } }
`
