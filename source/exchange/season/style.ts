/** The look of the season's page on A4: dark on white, told apart without colour too. */
export const seasonStyle = `
@page { size: A4; margin: 9mm 12mm }
* { box-sizing: border-box; margin: 0; padding: 0 }
html { -webkit-print-color-adjust: exact; print-color-adjust: exact }
body { background: #fff; color: #111; font: 9.5pt/1.3 "DejaVu Sans Condensed", "Liberation Sans", Arial, Helvetica, sans-serif }
.page { break-after: page }
.page.first { height: 278.5mm; overflow: hidden; display: flex; flex-direction: column }
.page.first > * { flex: none }
.page:last-child { break-after: auto }
header { display: flex; justify-content: space-between; align-items: baseline; border-bottom: 0.7mm solid #111; padding-bottom: 1.5mm }
h1 { font-size: 20pt; line-height: 1.1; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; padding-right: 6mm }
.date { font-size: 13pt; font-weight: bold; white-space: nowrap }
.sub { font-size: 11pt; padding: 1.5mm 0 2.5mm; white-space: nowrap; overflow: hidden; text-overflow: ellipsis }
.sub b { font-size: 12pt }
h2 { font-size: 11.5pt; padding: 2.5mm 0 0.6mm }
h2 small { font-size: 8.5pt; font-weight: normal; padding-left: 2mm }
.tiles { display: grid; grid-template-columns: repeat(4, 1fr); gap: 3mm }
.tile { border: 0.35mm solid #111; border-radius: 1.2mm; padding: 1.5mm 2.5mm }
.tile h3 { font-size: 9.5pt; line-height: 1.15 }
.tile .big { font-size: 27pt; font-weight: bold; line-height: 1.15; white-space: nowrap }
.tile .big small { font-size: 12pt }
.tile p { font-size: 8.5pt; line-height: 1.25 }
.pair { display: grid; grid-template-columns: 1fr 1fr; gap: 6mm }
.uneven { display: grid; grid-template-columns: 118mm 1fr; gap: 6mm }
.legend { font-size: 8.5pt }
.legend span { padding-right: 4mm; white-space: nowrap }
.legend i { display: inline-block; width: 7mm; height: 2.6mm; margin-right: 1.2mm; vertical-align: -0.2mm }
i.k-known { border-top: 0.9mm solid #111; height: 0 !important; vertical-align: 0.9mm !important }
i.k-expected { background: #cfe0d6; border-top: 0.7mm solid #1f6b45 }
i.k-earlier { border-top: 0.5mm dashed #666; height: 0 !important; vertical-align: 0.9mm !important }
i.k-full { background: #333 }
i.k-to-come { background: #aaa }
i.k-next { background: #fff; border: 0.35mm solid #1f6b45 }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums }
th { font-size: 8.5pt; text-align: right; font-weight: normal; border-bottom: 0.35mm solid #111; padding: 0.6mm 1mm; vertical-align: bottom }
th:first-child, td:first-child { text-align: left }
td { text-align: right; padding: 0.5mm 1mm; border-bottom: 0.15mm solid #bbb; white-space: nowrap }
td.wide { white-space: normal; text-align: left }
td.meaning { white-space: normal; text-align: left; font-size: 7pt; line-height: 1.15; color: #444; width: 62mm }
tr.plan td { font-weight: bold; background: #eef3f0 }
td svg { display: inline-block; vertical-align: middle }
.box { border: 0.35mm solid #111; border-radius: 1.2mm; padding: 2mm 2.5mm }
.box p { padding-bottom: 1mm }
.caution { font-weight: bold }
.groups { columns: 2; column-gap: 6mm }
.groups > div { break-inside: avoid }
.groups table { table-layout: fixed }
.groups td { overflow: hidden; text-overflow: ellipsis }
.groups td:nth-child(1) { width: 27mm }
.groups td:nth-child(2) { width: 19mm }
.groups td:nth-child(3) { width: 11mm }
.foot { margin-top: auto; padding-top: 2mm; font-size: 7.5pt; line-height: 1.25; color: #333 }
ul { padding-left: 4mm; font-size: 8.5pt }
/* Whole on one sheet: a few of its lines on a third look lost. */
.rests { break-inside: avoid }
.rests ul { columns: 2; column-gap: 8mm; font-size: 7.5pt; line-height: 1.2 }
.rests li { break-inside: avoid }
li, .wide { overflow-wrap: anywhere }
tr, .box, h2 { break-inside: avoid }
h2 { break-after: avoid }
svg { flex: none; display: block }
svg text { font-family: inherit; font-size: 3.1px; fill: #111 }
svg .small { font-size: 2.7px }
svg .strong { font-size: 4.2px; font-weight: bold; fill: #1f6b45 }
svg .end { text-anchor: end }
svg .middle { text-anchor: middle }
svg .axis { stroke: #111; stroke-width: 0.3 }
svg .grid { stroke: #ccc; stroke-width: 0.15 }
svg .shade { fill: #f1f1f1 }
svg .band { fill: #cfe0d6 }
svg .interval { fill: #999; fill-opacity: 0.35 }
svg polyline { fill: none; stroke-linejoin: round }
svg .expected { stroke: #1f6b45; stroke-width: 0.7 }
svg .known { stroke: #111; stroke-width: 0.9 }
svg .earlier { stroke: #666; stroke-width: 0.4; stroke-dasharray: 1.4 0.9 }
svg .aim-line { stroke: #111; stroke-width: 0.3; stroke-dasharray: 0.5 0.8 }
svg .today { stroke: #111; stroke-width: 0.25; stroke-dasharray: 0.8 0.6 }
svg .aim { fill: #fff; stroke: #111; stroke-width: 0.4 }
svg .mark { fill: #111 }
svg .whisker { stroke: #111; stroke-width: 0.5 }
svg .full { fill: #333 }
svg .to-come { fill: #aaa }
svg .next { fill: #fff; stroke: #1f6b45; stroke-width: 0.35 }
@media screen { body { background: #ddd } .page { width: 210mm; margin: 4mm auto; padding: 10mm 12mm; background: #fff } .page.first { height: 297mm } }
`
