/**
 * Style of the HTML sheet: one column, phone width first, light and dark by the reader's setting, paper always light. Paper
 * leaves out the drawings of the diagnosis, whose figures stand in words beside them, to end on its second page.
 * @internal
 */
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
@media (max-width:34rem){figure{margin-inline:-1rem}}
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
summary{cursor:pointer;border-bottom:1px solid var(--rule);margin-top:1.8rem;padding-bottom:.2rem}
summary h2{display:inline;border:0;margin:0;padding:0}
summary::after{content:"show";float:right;color:var(--soft);font-size:.85rem}
details[open]>summary::after{content:"hide"}
.printed{display:none}
@media print{
@page{margin:7.5mm 11mm}
body{font-size:8pt;line-height:1.25}
main{max-width:none;padding:0}
h1{font-size:14pt;margin:0 0 1mm}
h2{break-after:avoid;margin:1.9mm 0 .6mm;padding-bottom:.3mm;font-size:9.5pt}
p,ul,ol{margin:.7mm 0}
ul{padding-left:4.5mm}ol{padding-left:6mm}
li{margin:.25mm 0}
.facts{font-size:7.5pt}
.answer{font-size:9.5pt;padding:1.2mm 2.2mm}
.table{overflow:visible}
caption{padding-bottom:.3mm}
table{font-size:7.6pt}
th,td{padding:.25mm 2.5mm .25mm 0}
#buy table{font-size:7pt}
#buy tbody th{white-space:nowrap}
figure{margin:0}
#tighten{display:grid;grid-template-columns:1fr 64mm;column-gap:5mm;align-content:start;break-inside:avoid}
#tighten>*{grid-column:1}
#tighten>h2{grid-column:1/-1}
#tighten>.drawings{grid-column:2;grid-row:2/span 9;align-self:start}
.drawings{break-inside:avoid;display:flex;gap:5mm;align-items:flex-start}
.drawings figure .wide{display:none}.drawings figure .narrow{display:block}
#seat figure:first-child,#candidates figure:first-child{flex:0 0 97mm}
#seat figure:first-child .wide,#candidates figure:first-child .wide{display:block}
#seat figure:first-child .narrow,#candidates figure:first-child .narrow{display:none}
#seat figure+figure,#candidates figure+figure{flex:0 0 60mm}
#both-sides{display:grid;grid-template-columns:1fr 64mm;column-gap:5mm;align-content:start;break-inside:avoid}
#both-sides>*{grid-column:1}#both-sides>h2{grid-column:1/-1}
#both-sides>.drawings{grid-column:2;grid-row:2/span 4;align-self:start}
#both-sides .findings{columns:1}
#what-if,#cost,#holds,#mate,#re-check{break-inside:avoid}
#diagnosis td{white-space:nowrap}
#diagnosis{display:grid;grid-template-columns:1.15fr 1fr;column-gap:6mm;align-content:start}
#diagnosis>h2,#diagnosis>.findings{grid-column:1/-1}
#diagnosis>.drawings{display:none}#diagnosis>p{grid-column:1/-1}
#cautions ul{columns:2;column-gap:6mm}
figure,tr,.findings li,.answer,#cautions{break-inside:avoid}
.findings{columns:3;column-gap:5mm}
.findings li{margin:0 0 .8mm;padding:.1mm 1.6mm;font-size:6.9pt;line-height:1.2;border-left-width:.6mm}
#not-here,#cautions{font-size:7.2pt}
section:has(>details){display:none}
.printed{display:block;margin-top:2mm;padding-top:.8mm;border-top:1px solid var(--rule);font-size:5.8pt;line-height:1.15;color:var(--soft)}
}
`;
