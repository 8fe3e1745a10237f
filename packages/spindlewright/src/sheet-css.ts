/** Style of the HTML sheet: one column, phone width first, light and dark by the reader's setting, paper always light. @internal */
export const sheetCss = `
:root{--ink:#1d2326;--soft:#566066;--paper:#fbfaf7;--rule:#c9c6bc;--panel:#f1efe8;--stop:#9c2f1f;--caution:#7a5200;--note:#2c5a7a;--fits:#20623c}
@media (prefers-color-scheme:dark){:root{--ink:#e8e6df;--soft:#a9b0b3;--paper:#15191b;--rule:#3c4448;--panel:#1e2427;--stop:#ff9a86;--caution:#f0c069;--note:#8cc4ea;--fits:#86d3a3}}
@media print{:root{--ink:#000;--soft:#333;--paper:#fff;--rule:#999;--panel:#fff;--stop:#7a1a0c;--caution:#5c3d00;--note:#173f5a;--fits:#0f4526}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.5 system-ui,sans-serif;overflow-wrap:anywhere}
main{max-width:48rem;margin:0 auto;padding:1rem}
h1{font-size:1.5rem;line-height:1.2;margin:.1rem 0 .8rem}
h2{font-size:1.05rem;margin:1.8rem 0 .5rem;padding-bottom:.2rem;border-bottom:1px solid var(--rule)}
p,ul,ol{margin:.5rem 0}
ul,ol{padding-left:1.4rem}
li{margin:.25rem 0}
.facts{color:var(--soft);font-size:.9rem;margin:0}
.answer{font-size:1.1rem;padding:.7rem .9rem;background:var(--panel);border:2px solid currentColor;border-radius:.3rem;margin:0}
.answer.yes{border-color:var(--fits)}.answer.no{border-color:var(--stop)}.answer.not-yet{border-color:var(--caution);border-style:dashed}
.answer.yes strong{color:var(--fits)}.answer.no strong{color:var(--stop)}.answer.not-yet strong{color:var(--caution)}
.findings{list-style:none;padding:0}
.findings li{border-left:.3rem solid var(--note);padding:.2rem .7rem;margin:.5rem 0}
.findings li.stop{border-left-color:var(--stop)}.findings li.stop strong{color:var(--stop)}
.findings li.caution{border-left-color:var(--caution);border-left-style:double}.findings li.caution strong{color:var(--caution)}
.findings li.note strong{color:var(--note)}
figure{margin:.8rem 0}
figure svg{display:block;width:100%;height:auto}
figure .wide{display:none}
@media (min-width:44rem),print{figure .narrow{display:none}figure .wide{display:block}}
.table{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:.9rem;font-variant-numeric:tabular-nums}
caption{text-align:left;color:var(--soft);padding-bottom:.3rem}
th,td{overflow-wrap:break-word;text-align:left;vertical-align:top;padding:.3rem .6rem .3rem 0;border-bottom:1px solid var(--rule)}
thead th{color:var(--soft);font-weight:600}
tbody th{font-weight:600}
@media (max-width:34rem){
thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
tbody tr{display:block;border-bottom:1px solid var(--rule);padding:.4rem 0}
tbody th,tbody td{display:block;overflow-wrap:anywhere;border:0;padding:.05rem 0}
tbody td{display:grid;grid-template-columns:9.5rem 1fr;gap:.5rem}
tbody td::before{content:attr(data-head);color:var(--soft)}
}
@media print{
@page{margin:11mm 13mm}
body{font-size:8.6pt;line-height:1.32}
main{max-width:none;padding:0}
h1{font-size:15pt;margin:0 0 1.5mm}
h2{break-after:avoid;margin:2.6mm 0 1mm;font-size:10pt}
p,ul,ol{margin:1mm 0}
li{margin:.4mm 0}
.answer{font-size:10pt;padding:1.5mm 2.5mm}
.table{overflow:visible}
table{font-size:8.2pt}
th,td{padding:.5mm 3mm .5mm 0}
figure{margin:1.5mm 0}
figure svg{max-height:82mm}
figure,tr,.findings li,.answer,#cautions{break-inside:avoid}
.findings{columns:2;column-gap:6mm}
.findings li{margin:0 0 1.2mm;padding:.2mm 2mm;font-size:8pt}
#grounds{font-size:6.6pt;line-height:1.2}
#other-ways table{font-size:7.4pt}
#other-ways td,#other-ways th{white-space:nowrap;padding-right:2mm}
#grounds ul{columns:3;column-gap:5mm;padding-left:3mm}
}
`;
