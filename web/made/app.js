var gw=Object.defineProperty;var f=(e,t,n)=>()=>{if(n)throw n[0];try{return e&&(t=e(e=0)),t}catch(s){throw n=[s],s}};var se=(e,t)=>{for(var n in t)gw(e,n,{get:t[n],enumerable:!0})};function $o(e){let t=e.split("/").filter(Boolean);t[0]?.toLowerCase()==="c"&&(t[0]="c");for(let n of $d){let s=$w(
n.path.split("/").filter(Boolean),t);if(s)return{route:n,params:s}}}function $w(e,t){if(e.length!==t.length)return;
let n={};for(let[s,o]of e.entries()){if(!o.startsWith(":")){if(o!==t[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(
t[s])}catch{return}}return n}var $d,bd,Ci=f(()=>{$d=[{name:"home",path:"/"},{name:"bend",path:"/bend",needs:"b\
ends.bend"},{name:"press-screen",path:"/press-screen",floor:!0},{name:"press-screen",path:"/bench",floor:!0},{
name:"part",path:"/part",needs:"parts.plan"},{name:"scan",path:"/scan",floor:!0},{name:"card",path:"/c/:code",
floor:!0},{name:"step",path:"/c/:code/step/:step",floor:!0},{name:"result",path:"/c/:code/result/:step",floor:!0,
needs:"results.keep"},{name:"history",path:"/c/:code/history"},{name:"note",path:"/c/:code/note",floor:!0,needs:"\
cards.change"},{name:"resolve",path:"/c/:code/resolve",floor:!0,needs:"cards.revise"},{name:"print",path:"/c/:\
code/print"},{name:"label",path:"/c/:code/label"},{name:"labels",path:"/labels",needs:"labels.sheet_json"},{name:"\
chart",path:"/chart",needs:"bends.chart"},{name:"shop",path:"/shop"},{name:"press",path:"/shop/press"},{name:"\
test-bend",path:"/shop/test-bend",floor:!0,needs:"evidence.keep"},{name:"learned",path:"/shop/learned/:metal",
needs:"evidence.learned"},{name:"tools",path:"/shop/:kind"},{name:"tool",path:"/shop/:kind/:tool"},{name:"crew",
path:"/crew",needs:"crew.listed"},{name:"pair",path:"/pair"},{name:"backups",path:"/backups",needs:"backups.li\
sted"},{name:"settings",path:"/settings"},{name:"guide",path:"/guide"},{name:"guide-page",path:"/guide/:page"},
{name:"words",path:"/words"}],bd=e=>$d.find(t=>t.name===e)});function bw(){try{let e=JSON.parse(localStorage.getItem(_d)??"null");return e?.refused?e:wd}catch{return wd}}function Ft(e){
let t=$o(e.split("?")[0])?.route.needs;return!t||he(t)}function vd({role:e,refused:t={}}){let n=JSON.stringify(
{role:e,refused:t});if(n===JSON.stringify(fs))return!1;fs={role:e,refused:t};try{localStorage.setItem(_d,n)}catch{}
return!0}function kd(e){e&&e!==fs.role&&document.dispatchEvent(new CustomEvent("other-role"))}var _d,wd,fs,gs,
he,yd,Te=f(()=>{Ci();_d="flangebook.rights",wd={role:"owner",refused:{}},fs=bw();gs=()=>fs.role,he=e=>!Object.
hasOwn(fs.refused,e);yd=e=>fs.refused[e]??"owner"});function ww(){try{return{...xd,...JSON.parse(localStorage.getItem(Ri)??"{}")}}catch{return{...xd}}}function Sd(){
try{return localStorage.getItem(Ri)!==null}catch{return!1}}function C(){return An}function Ge(e){An={...An,...e};
try{localStorage.setItem(Ri,JSON.stringify(An))}catch{}bo();for(let t of Bi)t(An)}function ye(e,t){Bi.add(e),t?.
addEventListener("abort",()=>Bi.delete(e))}function bo(){let e=Td.matches?"shop":"day";document.documentElement.
dataset.theme=An.theme==="system"?e:An.theme}var Ri,xd,Bi,An,Td,oe=f(()=>{Ri="flangebook.settings",xd={units:"\
mm",inches:"decimal",theme:"system",name:"",paper:"A4"},Bi=new Set,An=ww();Td=matchMedia("(prefers-color-schem\
e: dark)");Td.addEventListener("change",bo)});function Q(e,t){let n=e.toFixed(t);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(e,t={}){
return e==null?{text:"–",unit:""}:ze()?C().inches==="fraction"?{text:yw(e/ve),unit:"in"}:{text:Q(e/ve,(t.digits??
1)+2),unit:"in"}:{text:Q(e,t.digits??1),unit:"mm"}}function yw(e){let t=Math.round(Math.abs(e)*64),n=t%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(t/64),a=e<0&&t>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function pe(e,{up:t=!1}={}){if(e==null)return{text:"–",unit:""};let n=ze()?e/Ht:e,s=Math.abs(
n)<10?1:0;return{text:Q(t?Md(n,s):n,s),unit:ze()?"tons":"kN"}}function Pe(e,{up:t=!1}={}){if(e==null)return{text:"\
–",unit:""};let n=ze()?e/Ht*wo:e,s=Math.abs(n)<20?1:0;return{text:Q(t?Md(n,s):n,s),unit:ze()?"tons/ft":"kN/m"}}
function Md(e,t){let n=10**t;return Math.ceil(e*n-1e-9)/n}function S(e,t=1){return e==null?{text:"–",unit:""}:
{text:Q(e,t),unit:"°"}}function _o(e){if(e==null)return{text:"–",unit:""};let t=ze()?e/_w:e;return{text:Q(t,
t<10?2:1),unit:ze()?"lb":"kg"}}function jt(e,t){if(/_(low|high)$/.test(e))return jt(e.replace(/_(low|high)$/,""),
t);if(e.endsWith("_kn_per_m"))return Pe(t);if(e.endsWith("_mm_s")){let s=w(t,{digits:0});return{text:s.text,unit:`${s.
unit}/s`}}if(e.endsWith("_mm"))return w(t,{digits:Math.abs(t)<10?2:1});if(e.endsWith("_kn"))return pe(t);if(e.
endsWith("_deg"))return S(t);if(e.endsWith("_kg"))return _o(t);if(e.endsWith("_percent"))return{text:Q(t,0),unit:"\
%"};let n=Math.abs(t)<10?100:Math.abs(t)<100?10:1;return{text:String(Math.round(t*n)/n),unit:""}}function b(e){
return e.unit==="°"?`${e.text}°`:`${e.text} ${e.unit}`.trim()}function ae({text:e,unit:t}){return b({text:t===
"in"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,""),unit:t})}function qe(e,t){return e.replace(/\{(\w+)\}/g,
(n,s)=>s in t?ae(jt(s,t[s])):n)}function ct(){return ze()?{unit:"tons",size:Ht}:{unit:"kN",size:1}}function Qe(){
return ze()?{unit:"tons/ft",size:Ht/wo}:{unit:"kN/m",size:1}}function Ii(e,{size:t}){return e==null?"":String(
t===1?e:Number((e/t).toFixed(4)))}function sn(e,{unit:t}){let n=$s(e);return Ad.test(n)?`${n} ${t}`.replace(" \
tons"," short tons"):n.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i,(s,o,a="")=>{let r=a?a.includes("ft"):ze();
return`${o}${r?"short tons":"t"}${a}`})}function E(){return ze()?"in":"mm"}function ee(e,t=E()){let n=$s(e);return Ad.
test(n)||t==="in"&&Ld.test(n)?`${n} ${t}`:n}function $s(e){let t=e.trim().replace("−","-");return Od.test(t)?
t:t.replace(/^([+-]?\d+),(\d+)(?![\d.,])/,"$1.$2")}function Ed(e,t=E()){let n=e.trim().replace("−","-"),[,s,
o,a]=Od.exec(n)??[];return s?[String(+`${s}.${o}`),`${s}${o}`].map(l=>a?`${l} ${a}`:l):t==="mm"&&Ld.test(n)?[`${n}\
 in`]:[]}function Nd(e){let[,t,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.exec(e??"")??[];return t?Number(t)*(n===
"in"?ve:1):null}function q(e){if(e==null)return"";let t=ze()?e/ve:e;return String(Number(t.toFixed(ze()?4:3)))}
var ve,Ht,ma,_w,wo,ze,Ad,Od,Ld,A=f(()=>{oe();ve=25.4,Ht=8.896443230521,ma=9.80665,_w=.45359237,wo=.3048,ze=()=>C().
units==="inch";Ad=/^[+-]?(\d+\.?\d*|\.\d+)$/,Od=/^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/,Ld=/^[+-]?(\d+[\s-]+)?\d+\s*\/\s*\d+$/});async function M(e,t,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return Pd(e,t,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function fa(e,t,n,s,o=2e4){
return Pd("POST",e,t,{type:n,signal:s,timeout:o})}async function Pd(e,t,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let d=AbortSignal.
timeout(l),p=performance.now(),u;try{u=await fetch(`/api/v1${t}`,{method:e,headers:c,body:n,signal:r?AbortSignal.
any([r,d]):d,cache:"no-store"})}catch(g){throw r?.aborted?g:new j}if(kd(u.headers.get("Flangebook-Role")),!u.ok&&
u.status!==304)throw await Wi(u,p);let m=vw.includes(u.status)?null:await kw(u,r);return{status:u.status,body:m,
etag:u.headers.get("ETag"),at:Tw(u)}}async function kw(e,t){try{return await e.json()}catch(n){throw t?.aborted?
n:new j}}async function Wi(e,t=1/0){let n=await e.json().catch(()=>null);if(!n?.status)throw new j;let s=new L(
n);return xw(s,t),s}function xw({status:e,errors:t},n){e===401&&t.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:t.pairing[0],asked:n}})),e===403&&t.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function Cd(e,t,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${e}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await Wi(c);for await(let d of Sw(c.body,l)){let p=JSON.
parse(d);if(p.problem)throw new L(p.problem);if(!p.progress)return p;s(p.progress)}throw new j}catch(c){throw n.
aborted||c instanceof L?c:new j}finally{clearTimeout(r)}}async function*Sw(e,t){let n=e.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;t();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function Bd(e,t,n){let s;try{let a=await fetch(`/a\
pi/v1${e}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await Wi(a);s=await a.blob()}catch(a){throw a instanceof L?a:new j}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var L,j,K,vw,Tw,F=f(()=>{Te();A();L=class extends Error{constructor(t){let n=t.said?qe(t.said.template,
t.said.numbers):"";if(super(n||t.detail||t.title),this.status=t.status,this.title=t.title,this.errors=t.errors??
{},n)for(let s of Object.keys(this.errors))this.errors[s]=[n];this.outline=t.outline??null}},j=class extends Error{constructor(){
super("The shop's server does not answer.")}},K=e=>e instanceof Error?e.message:String(e);vw=[204,304];Tw=e=>new Date(
e.headers.get("Date")??Date.now()).toISOString()});function Mw(){return Rd||(Rd=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function Aw(){return Id||
(Id=["advance","continue","continuePrimaryKey"].map(e=>IDBCursor.prototype[e]))}function Ow(e){let t=new Promise(
(n,s)=>{let o=()=>{e.removeEventListener("success",a),e.removeEventListener("error",r)},a=()=>{n(On(e.result)),
o()},r=()=>{s(e.error),o()};e.addEventListener("success",a),e.addEventListener("error",r)});return ga.set(t,e),
t}function Lw(e){if(ji.has(e))return;let t=new Promise((n,s)=>{let o=()=>{e.removeEventListener("complete",a),
e.removeEventListener("error",r),e.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(e.error||new DOMException(
"AbortError","AbortError")),o()};e.addEventListener("complete",a),e.addEventListener("error",r),e.addEventListener(
"abort",r)});ji.set(e,t)}function Hd(e){Ui=e(Ui)}function Ew(e){return Aw().includes(e)?function(...t){return e.
apply(Vi(this),t),On(this.request)}:function(...t){return On(e.apply(Vi(this),t))}}function Nw(e){return typeof e==
"function"?Ew(e):(e instanceof IDBTransaction&&Lw(e),Hi(e,Mw())?new Proxy(e,Ui):e)}function On(e){if(e instanceof
IDBRequest)return Ow(e);if(Di.has(e))return Di.get(e);let t=Nw(e);return Object.is(t,e)||(Di.set(e,t),ga.set(t,
e)),t}function jd(e,t,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(e,t),l=On(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(On(r.result),c.oldVersion,c.newVersion,On(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",d=>o(d.oldVersion,d.newVersion,d))}).catch(()=>{}),l}function Wd(e,t){if(!(e instanceof IDBDatabase&&
!(t in e)&&typeof t=="string"))return;if(Fi[t])return Fi[t];let n=t.replace(/FromIndex$/,""),s=t!==n,o=Cw.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||Pw.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),d=c.store;return s&&(d=d.index(l.shift())),(await Promise.all([d[n](...l),
o&&c.done]))[0]};return Fi[t]=a}async function*Iw(...e){let t=this;if(t instanceof IDBCursor||(t=await t.openCursor(
...e)),!t)return;t=t;let n=new Proxy(t,Rw);for(Ud.set(n,t),ga.set(n,Vi(t));t;)yield n,t=await(Gi.get(n)||t.continue()),
Gi.delete(n)}function Fd(e,t){return t===Symbol.asyncIterator&&Hi(e,[IDBIndex,IDBObjectStore,IDBCursor])||t===
"iterate"&&Hi(e,[IDBIndex,IDBObjectStore])}var Hi,Rd,Id,ji,Di,ga,Ui,Vi,Pw,Cw,Fi,Bw,Dd,Gi,Ud,Rw,Vd=f(()=>{Hi=(e,t)=>t.
some(n=>e instanceof n);ji=new WeakMap,Di=new WeakMap,ga=new WeakMap;Ui={get(e,t,n){if(e instanceof IDBTransaction){
if(t==="done")return ji.get(e);if(t==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return On(e[t])},set(e,t,n){return e[t]=n,!0},has(e,t){return e instanceof IDBTransaction&&(t==="done"||t==="s\
tore")?!0:t in e}};Vi=e=>ga.get(e);Pw=["get","getKey","getAll","getAllKeys","count"],Cw=["put","add","delete",
"clear"],Fi={};Hd(e=>({...e,get:(t,n,s)=>Wd(t,n)||e.get(t,n,s),has:(t,n)=>!!Wd(t,n)||e.has(t,n)}));Bw=["advanc\
e","continue","continuePrimaryKey"],Dd={},Gi=new WeakMap,Ud=new WeakMap,Rw={get(e,t){if(!Bw.includes(t))return e[t];
let n=Dd[t];return n||(n=Dd[t]=function(...s){Gi.set(this,Ud.get(this)[t](...s))}),n}};Hd(e=>({...e,get(t,n,s){
return Fd(t,n)?Iw:e.get(t,n,s)},has(t,n){return Fd(t,n)||e.has(t,n)}}))});function zi(){return bs??=jd("flangebook",Ww,{upgrade:(e,t,n,s)=>Fw(e,t,s),blocking:Dw,terminated:qi}).catch(e=>{
throw bs=void 0,e}),bs}function qi(){bs=void 0}async function Dw(){(await bs)?.close(),bs=void 0}async function Fw(e,t,n){
t<1&&(e.createObjectStore("cards",{keyPath:"code"}),e.createObjectStore("list",{keyPath:"code"}),e.createObjectStore(
"meta"),e.createObjectStore("outbox",{keyPath:"id"})),t<2&&(e.createObjectStore("sent",{keyPath:"id"}),e.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),t===1&&await Hw(n))}async function Hw(e){
let t=e.objectStore("outbox"),s=(await t.getAll()).sort((a,r)=>a.queued_at<r.queued_at?-1:1),o=0;for(let{trial:a,
...r}of s)t.put({...r,kind:"trial",body:a,number:++o});e.objectStore("meta").put(o,"number"),e.objectStore("me\
ta").delete("cursor")}function jw(e){return e instanceof DOMException?e.name==="QuotaExceededError"?"This devi\
ce is full: free some room on it.":"This browser lets nothing be kept here, as private windows do.":e instanceof
Error?e.message:String(e)}var Ww,bs,$a,Ki=f(()=>{Vd();Ww=2;$a=class extends Error{constructor(t){super(jw(t))}}});async function ws(e,t,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${e}`,{signal:AbortSignal.timeout(t)},o)}catch(a){if(s)throw a;return n()}}var ba=f(()=>{});function tt(e,t){return Kd(zd,n=>qd(e,"readonly",{},t,n))}function Be(e,t,{patience:n=zd,durability:s="relaxed"}={}){
return Kd(n,o=>ws("writer",n/2,()=>qd(e,"readwrite",{durability:s},t,o)))}async function qd(e,t,n,s,o){let a=await Gw(
e,t,n);!o.now&&t==="readwrite"&&(a.abort(),await a.done),o.transaction=a,wa.add(a),a.done.catch(()=>{}).finally(
()=>wa.delete(a));try{let r=await s(Vw(a));return t==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw Yi(
a),a.error??r}}async function Gw(e,t,n){try{return(await zi()).transaction(e,t,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return qi(),(await zi()).transaction(e,t,n)}}function Yi(e){try{e.abort()}catch{}}
async function Kd(e,t){let n={now:!0},s=t(n);s.then(()=>Zd(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new et),Ln?Uw:e)});try{return await Promise.race([s,a])}catch(r){throw r instanceof et&&zw(n),r}finally{
clearTimeout(o)}}function zw(e){e.now=!1,e.transaction?.mode==="readwrite"&&Yi(e.transaction),Zd(!0)}function Zd(e){
e!==Ln&&(Ln=e,document.documentElement.dataset.storage=Ln?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:Ln}})))}var zd,Uw,et,wa,Ln,Zi,yo,Vw,Gd,on=f(()=>{Ki();ba();zd=1e3,Uw=100,et=class extends Error{constructor(){
super("This device's storage does not answer.")}},wa=new Set,Ln=!1,Zi=!1,yo=()=>Ln;Vw=e=>({store:Gd(e.objectStore(
e.objectStoreNames[0])),objectStore:t=>Gd(e.objectStore(t))}),Gd=e=>new Proxy(e,{get:(t,n)=>typeof e[n]=="func\
tion"?(...s)=>{let o=e[n](...s);return o?.catch?.(()=>{}),o}:e[n]});addEventListener("pagehide",()=>{Zi||=wa.size>
0;for(let e of wa)Yi(e)});addEventListener("pageshow",e=>{e.persisted&&Zi&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:Ln}})),Zi=!1})});function Ke(){if(crypto.randomUUID)return crypto.randomUUID();let e=crypto.getRandomValues(new Uint8Array(16));
return e[6]=e[6]&15|64,e[8]=e[8]&63|128,[...e].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function Xd(e){try{return await Be(["outbox","meta"],t=>Zw(t,e),Yd)}catch(t){throw new $a(
t)}}async function Zw(e,t){let[n,s]=[e.objectStore("outbox"),e.objectStore("meta")],o=(await n.getAll()).sort(
Xi).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...t,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function Jd(){return Be("meta",async({store:e})=>{let t=(await e.get(
"number")??0)+1;return e.put(t,"number"),t})}async function Ze(){return(await tt("outbox",({store:e})=>e.getAll())).
sort(Xi)}async function En(e){return(await Ze()).filter(t=>t.code===e)}async function vo(e){return tt("outbox",
({store:t})=>t.get(e))}async function _a(e){return tt("sent",({store:t})=>t.get(e))}async function Nn(e,t){await Be(
"outbox",async({store:n})=>{let s=await n.get(e);s&&n.put({...s,...t})},Yd)}async function ya(e){let t=await vo(
e);await Be("outbox",({store:n})=>n.delete(e)),t?.after&&await va(e,t.after)}async function va(e,t,n=()=>!0){for(let s of await Ze())
s.after===e&&n(s)&&await Nn(s.id,{after:t})}async function ko(e,t,n=!1){let{again:s,refused:o,late:a,missing:r,
parked:l,...c}=e;try{await Be(["outbox","sent"],d=>{d.objectStore("sent").put({...c,proposed:n,sent_at:e.sent_at??
t}),d.objectStore("outbox").delete(e.id)})}catch{await Be("outbox",({store:d})=>d.delete(e.id))}}async function eh(e){
let t=Date.parse(e)-qw*Kw;await Be("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at??
"")<t&&n.delete(s.id)})}async function th(e){let[t,n]=[e.objectStore("outbox"),e.objectStore("sent")],s=(await n.
getAll()).sort(Xi),o=await t.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...d}=r;a.has(
r.id)||t.put({...d,parked:c,again:!0,number:l-s.length})}),n.clear()}var qw,Kw,Yd,Xi,Qd,Re=f(()=>{Ki();on();qw=
90,Kw=864e5,Yd={durability:"strict"};Xi=(e,t)=>e.number-t.number;Qd=e=>Nn(e,{refused:void 0})});async function dt(e){return tt("cards",({store:t})=>t.get(e))}async function an(){return(await tt("list",({store:t})=>t.
getAll())).sort((t,n)=>t.updated_at<n.updated_at?1:-1)}async function bt(e){return Be(["cards","list"],async t=>{
let n=await t.objectStore("cards").get(e.code);return n&&Xw(e,n)?n:(nh(t,e),e)})}function nh(e,t){e.objectStore(
"cards").put(t),e.objectStore("list").put(Jw(t))}function Jw(e){let{code:t,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:d,trials_total:p,proposals:u}=e,{metal:m,thickness_mm:g}=d,$=u?.length??0;
return{code:t,title:n,note:s,metal:m,thickness_mm:g,bends:d.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:p,archived:c,settle:$}}async function sh(){return tt("list",({store:e})=>e.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function oh(){let e=["cards","list","meta","sent","lost"];await Be(e,t=>{for(let n of e)
t.objectStore(n).clear()})}async function ka(){return tt("meta",({store:e})=>e.get("shop"))}async function ah(){
return tt("meta",({store:e})=>e.get("cursor"))}async function rh(e){let t=e.reset||await Qw()?["outbox","sent",
"lost"]:[];await Be(["cards","list","meta",...t],async n=>{e.reset&&(await e_(n),await th(n));let s=new Set(t.
length?await n.objectStore("lost").getAllKeys():[]);for(let a of e.cards)nh(n,a),s.has(a.code)&&await t_(n,a);
let o=n.objectStore("meta");e.shop&&o.put(e.shop,"shop"),o.put(e.cursor,"cursor"),o.put(!!e.more,"more")},{patience:Yw})}
async function e_(e){let[t,n]=[e.objectStore("cards"),e.objectStore("lost")];for(let s of await t.getAll())n.put(
s);t.clear(),e.objectStore("list").clear()}async function t_(e,t){let n=await e.objectStore("lost").get(t.code);
e.objectStore("lost").delete(t.code);let s=new Set(t.trials.map(r=>r.id)),o=new Set(await e.objectStore("outbo\
x").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>e.objectStore("outbox").put(
ih(t.code,r,l-a.length)))}function ih(e,{number:t,received_at:n,correction:s,device:o,...a},r){return{id:a.id,
kind:"trial",code:e,body:a,number:r,queued_at:n,again:!0}}async function lh(e){await Be("outbox",({store:t})=>{
e.trials.forEach((n,s)=>{t.put({...ih(e.code,n,s-e.trials.length),missing:!0})})})}async function xa(){return tt(
["meta","lost"],async e=>await e.objectStore("meta").get("more")?[]:e.objectStore("lost").getAll())}async function Sa(e){
await Be("lost",({store:t})=>t.delete(e))}var Yw,Xw,Qw,Ie=f(()=>{Re();on();Yw=2e4;Xw=(e,t)=>e.revision<t.revision||
e.revision===t.revision&&(e.trials_total<t.trials_total||e.proposals_total<t.proposals_total);Qw=async()=>await tt(
"lost",({store:e})=>e.count())>0});function ph(e){return xo!==null&&e!=="pair"&&!(dh?.labels_open&&n_.includes(e))}async function Pn(e){Ji+=1;try{
let{body:t}=await M("GET","/me",{signal:e,timeout:4e3});return dh=t,vd(t)&&document.dispatchEvent(new CustomEvent(
"rights")),t}finally{Ji-=1}}async function uh(e){xo!==e&&(xo=e,await Promise.all([Pn().catch(()=>null),oh().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function mh(e,t){let{body:n}=await M(
"POST","/pair",{body:{code:e,name:t}});return C().name||Ge({name:n.name}),xo=null,hh=performance.now(),await Pn(),
n}async function fh(){await M("POST","/leave",{}),await uh("unknown")}function gh(){document.addEventListener(
"not-paired",e=>{let{why:t,asked:n}=e.detail;n>hh&&uh(t)}),document.addEventListener("other-role",ch),gs()!=="\
owner"&&ch()}function ch(){Ji||Pn().catch(()=>null)}var nt,n_,dh,xo,hh,Ji,rn,Ta,Cn=f(()=>{F();Te();Ie();oe();nt=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Press\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},n_=["\
card","step"],dh=null,xo=null,hh=-1/0,Ji=0,rn=()=>xo;Ta=e=>K(e)});function Th(e,t){if(!sl(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return bh!==
void 0?bh.createHTML(t):t}function Wn(e,t,n=e,s){if(t===wt)return t;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=Mo(t)?
void 0:t._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(e),o._$AT(e,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(t=Wn(e,o._$AS(e,t.values),o,s)),t}var el,$h,Ma,bh,tl,
Ut,nl,s_,In,To,Mo,sl,xh,Qi,So,wh,_h,Bn,yh,vh,Sh,ol,i,y,fT,wt,h,kh,Rn,Mh,Ao,Aa,_s,Dn,Oa,La,Ea,Na,Ah,o_,_t,_=f(()=>{
el=globalThis,$h=e=>e,Ma=el.trustedTypes,bh=Ma?Ma.createPolicy("lit-html",{createHTML:e=>e}):void 0,tl="$lit$",
Ut=`lit$${Math.random().toFixed(9).slice(2)}$`,nl="?"+Ut,s_=`<${nl}>`,In=document,To=()=>In.createComment(""),
Mo=e=>e===null||typeof e!="object"&&typeof e!="function",sl=Array.isArray,xh=e=>sl(e)||typeof e?.[Symbol.iterator]==
"function",Qi=`[ 	
\f\r]`,So=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,wh=/-->/g,_h=/>/g,Bn=RegExp(`>|${Qi}(?:([^\\s"'\
>=/]+)(${Qi}*=${Qi}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),yh=/'/g,vh=/"/g,Sh=/^(?:script|style|textarea|title)$/i,ol=e=>(t,...n)=>({_$litType$:e,
strings:t,values:n}),i=ol(1),y=ol(2),fT=ol(3),wt=Symbol.for("lit-noChange"),h=Symbol.for("lit-nothing"),kh=new WeakMap,
Rn=In.createTreeWalker(In,129);Mh=(e,t)=>{let n=e.length-1,s=[],o,a=t===2?"<svg>":t===3?"<math>":"",r=So;for(let l=0;l<
n;l++){let c=e[l],d,p,u=-1,m=0;for(;m<c.length&&(r.lastIndex=m,p=r.exec(c),p!==null);)m=r.lastIndex,r===So?p[1]===
"!--"?r=wh:p[1]!==void 0?r=_h:p[2]!==void 0?(Sh.test(p[2])&&(o=RegExp("</"+p[2],"g")),r=Bn):p[3]!==void 0&&(r=
Bn):r===Bn?p[0]===">"?(r=o??So,u=-1):p[1]===void 0?u=-2:(u=r.lastIndex-p[2].length,d=p[1],r=p[3]===void 0?Bn:p[3]===
'"'?vh:yh):r===vh||r===yh?r=Bn:r===wh||r===_h?r=So:(r=Bn,o=void 0);let g=r===Bn&&e[l+1].startsWith("/>")?" ":"";
a+=r===So?c+s_:u>=0?(s.push(d),c.slice(0,u)+tl+c.slice(u)+Ut+g):c+Ut+(u===-2?l:g)}return[Th(e,a+(e[n]||"<?>")+
(t===2?"</svg>":t===3?"</math>":"")),s]},Ao=class e{constructor({strings:t,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=t.length-1,c=this.parts,[d,p]=Mh(t,n);if(this.el=e.createElement(d,s),Rn.currentNode=this.el.content,
n===2||n===3){let u=this.el.content.firstChild;u.replaceWith(...u.childNodes)}for(;(o=Rn.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let u of o.getAttributeNames())if(u.endsWith(tl)){let m=p[r++],
g=o.getAttribute(u).split(Ut),$=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:$[2],strings:g,ctor:$[1]===
"."?Oa:$[1]==="?"?La:$[1]==="@"?Ea:Dn}),o.removeAttribute(u)}else u.startsWith(Ut)&&(c.push({type:6,index:a}),
o.removeAttribute(u));if(Sh.test(o.tagName)){let u=o.textContent.split(Ut),m=u.length-1;if(m>0){o.textContent=
Ma?Ma.emptyScript:"";for(let g=0;g<m;g++)o.append(u[g],To()),Rn.nextNode(),c.push({type:2,index:++a});o.append(
u[m],To())}}}else if(o.nodeType===8)if(o.data===nl)c.push({type:2,index:a});else{let u=-1;for(;(u=o.data.indexOf(
Ut,u+1))!==-1;)c.push({type:7,index:a}),u+=Ut.length-1}a++}}static createElement(t,n){let s=In.createElement("\
template");return s.innerHTML=t,s}};Aa=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:s}=this.
_$AD,o=(t?.creationScope??In).importNode(n,!0);Rn.currentNode=o;let a=Rn.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let d;c.type===2?d=new _s(a,a.nextSibling,this,t):c.type===1?d=new c.ctor(a,c.name,c.strings,this,
t):c.type===6&&(d=new Na(a,this,t)),this._$AV.push(d),c=s[++l]}r!==c?.index&&(a=Rn.nextNode(),r++)}return Rn.currentNode=
In,o}p(t){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(t,s,n),n+=s.strings.length-2):
s._$AI(t[n])),n++}},_s=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,s,o){this.type=2,this.
_$AH=h,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Wn(this,t,n),Mo(t)?t===h||t==null||t===""?(this.
_$AH!==h&&this._$AR(),this._$AH=h):t!==this._$AH&&t!==wt&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==
void 0?this.T(t):xh(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this.
_$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==h&&Mo(this._$AH)?this._$AA.nextSibling.data=t:this.
T(In.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:s}=t,o=typeof s=="number"?this._$AC(t):(s.el===
void 0&&(s.el=Ao.createElement(Th(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new Aa(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(t){let n=kh.get(t.strings);return n===void 0&&kh.
set(t.strings,n=new Ao(t)),n}k(t){sl(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of t)
o===n.length?n.push(s=new e(this.O(To()),this.O(To()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){
let s=$h(t).nextSibling;$h(t).remove(),t=s}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},
Dn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,s,o,a){this.
type=1,this._$AH=h,this._$AN=void 0,this.element=t,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=h}_$AI(t,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)t=Wn(this,t,n,0),r=!Mo(t)||t!==this._$AH&&t!==wt,r&&(this._$AH=t);else{let l=t,c,d;
for(t=a[0],c=0;c<a.length-1;c++)d=Wn(this,l[s+c],n,c),d===wt&&(d=this._$AH[c]),r||=!Mo(d)||d!==this._$AH[c],d===
h?t=h:t!==h&&(t+=(d??"")+a[c+1]),this._$AH[c]=d}r&&!o&&this.j(t)}j(t){t===h?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,t??"")}},Oa=class extends Dn{constructor(){super(...arguments),this.
type=3}j(t){this.element[this.name]=t===h?void 0:t}},La=class extends Dn{constructor(){super(...arguments),this.
type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==h)}},Ea=class extends Dn{constructor(t,n,s,o,a){super(
t,n,s,o,a),this.type=5}_$AI(t,n=this){if((t=Wn(this,t,n,0)??h)===wt)return;let s=this._$AH,o=t===h&&s!==h||t.capture!==
s.capture||t.once!==s.once||t.passive!==s.passive,a=t!==h&&(s===h||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},Na=class{constructor(t,n,s){
this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(t){
Wn(this,t)}},Ah={M:tl,P:Ut,A:nl,C:1,L:Mh,R:Aa,D:xh,V:Wn,I:_s,H:Dn,N:La,U:Ea,B:Oa,F:Na},o_=el.litHtmlPolyfillSupport;
o_?.(Ao,_s),(el.litHtmlVersions??=[]).push("3.3.3");_t=(e,t,n)=>{let s=n?.renderBefore??t,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new _s(t.insertBefore(To(),a),a,void 0,n??{})}return o._$AI(
e),o}});function ys(e,t=Eh){return Object.fromEntries(t.filter(n=>e[n]!==void 0).map(n=>[n,e[n]]))}function Oh(e){return Array.
isArray(e)?[...e].sort((t,n)=>t.step-n.step).map(({step:t,set_angle_deg:n,punch_depth_mm:s})=>[t,n??null,s??null]):
e??null}function vs(e,t,n){let s=[];for(let[l,c]of a_){let[d,p]=[e[l],t[l]];d!==void 0&&!Pa(d,n[l])&&s.push({name:l,
label:c,shop:n[l],yours:d,before:p})}if(!e.settings)return s;let[o,a,r]=[e.settings,t.settings??[],n.settings].
map(Nh);for(let l of new Set([...o.keys(),...a.keys()])){let[c,d,p]=[o.get(l),a.get(l),r.get(l)];Lh(c,d)||Lh(c,
p)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,shop:p,yours:c,before:d})}return s}function Ph(e,t,n){
let s={},o=e.filter(l=>t[l.name]==="yours");for(let l of o)l.name.startsWith("settings ")||(s[l.name]=l.yours);
let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)return s;let r=Nh(n.settings);for(let l of a){let c=Number(
l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(c)}return{...s,settings:[...r.values()]}}var Eh,Pa,Ca,
al,a_,Nh,Lh,ks=f(()=>{Eh=["title","note","archived","settings"];Pa=(e,t)=>JSON.stringify(Oh(e))===JSON.stringify(
Oh(t));Ca=(e,t)=>ys(e,Eh.filter(n=>n in e&&!Pa(e[n],t[n]))),al=({before:e={}},t)=>Object.keys(e).every(n=>Pa(e[n],
t[n])),a_=[["title","Title"],["note","Note"],["archived","In use"]];Nh=e=>new Map(e.map(t=>[t.step,t])),Lh=(e,t)=>Pa(
e?[e]:[],t?[t]:[])});async function Ba(e){rl.add(e.id);try{return await Ch(e)}finally{rl.delete(e.id)}}async function Ch(e){let t;try{
t=await Xd(e)}catch(n){let s=await c_(e);return s||(await l_(n),Ch(e))}try{return await Rh(t,4e3)??{where:"her\
e",answer:null}}catch(n){let s=n instanceof j||n instanceof et;if(!s&&ll(n))throw await ya(t.id),n;return{where:"\
here",answer:null,late:s?"":await Fh(t,n)}}}async function l_(e){il.add(e),document.dispatchEvent(new CustomEvent(
"held")),await new Promise(t=>{setTimeout(t,r_),document.addEventListener("storage",t,{once:!0})}),il.delete(e),
document.dispatchEvent(new CustomEvent("held"))}async function c_(e){try{let{body:t}=await Wh({...e,number:0,queued_at:""},
8e3);return{where:"shop",answer:t}}catch(t){if(t instanceof j||!ll(t))return null;throw t}}async function Bh(){
return ws("outbox",i_,d_)}async function d_(){let e=0;for(let{id:t}of await Ze()){if(rl.has(t))continue;let n=await vo(
t);if(!(!n||!await h_(n)))try{await Rh(n,8e3)&&(e+=1)}catch(s){if(s instanceof j)break;ll(s)?await Nn(n.id,{refused:s.
message,missing:s.status===404}):await Fh(n,s)}}return{sent:e,left:(await Ze()).length}}async function Rh(e,t){
if(!await p_(e))return null;let n=await vo(e.id)??e;try{let s=await(n.parked?Dh(n,t):Wh(n,t));return await Ih(
n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof L&&s.status===412)||n.parked)throw s;
return u_(n,t)}}async function p_({id:e,code:t,after:n,before:s,parked:o}){if(!n||o)return!0;if(await vo(n))return!1;
if(!(await _a(n))?.proposed)return!0;let a=await dt(t);return!a||a.proposals?.some(r=>r.id===n)?!1:(await Nn(e,
al({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function u_(e,t){if(e.body.part)throw new L(m_);
let{body:n,at:s}=await M("GET",`/cards/${e.code}`,{timeout:t});await bt(n);let o=(e.body.settles??[]).some(l=>n.
proposals.some(c=>c.id===l));if(o||!vs(e.body,e.before??{},n).length)return await ko(e,s),await va(e.id,n.revision_id,
l=>al(l,n)),{where:o?"settle":"shop",answer:n};let a={...e,parked:!0};await Nn(e.id,{parked:!0});let r=await Dh(
a,t);return await Ih(a,r),{where:"settle",answer:r.body}}async function Ih(e,{body:t,at:n}){if(e.kind!=="trial"){
let s=t;await bt(s).catch(()=>{}),!e.parked&&e.after&&s.revision_id===e.after&&await va(e.id,e.after)}await ko(
e,n,!!e.parked),await eh(n)}function Wh({kind:e,code:t,id:n,body:s,after:o,etag:a,missing:r},l){return e==="tr\
ial"?M("POST",`/cards/${t}/results`,{body:r?{...s,again:!0}:s,timeout:l}):M("PUT",`/cards/${t}`,{body:{...s,id:n,
...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function Dh({id:e,code:t,body:n,before:s,revision:o,queued_at:a},r){
let{reason:l,by:c,settles:d,...p}=n,u={...l?{reason:l}:{},...c?{by:c}:{}};return M("POST",`/cards/${t}/proposa\
ls`,{body:{id:e,changes:p,before:s,revision:o,made_at:a,...u},timeout:r})}async function Fh({id:e},t){if(!(t instanceof
L)||t.status<500)return"";let n=t.status===507?"The disk of the shop’s server is full: make room on it":t.title;
return await Nn(e,{late:n}).catch(()=>{}),n}function ll(e){if(!(e instanceof L))throw e;return e.status<500&&![
401,408,429].includes(e.status)}var r_,i_,rl,il,Oo,h_,m_,xs=f(()=>{F();ks();Re();Ie();on();ba();r_=3e3,i_=15e3;
rl=new Set;il=new Set,Oo=()=>[...il].at(-1)?.message??"";h_=async({refused:e,again:t,missing:n,code:s})=>!e||!!(t&&
n&&await dt(s));m_={title:"Changed meanwhile",status:412,detail:"The part was changed here, the shop was resto\
red from an earlier backup, and the card was changed again since. Open the card and make the change anew."}});function st(){return ln}async function Ra(e){let t=await Ze().catch(()=>[]),n=await xa().catch(()=>[]);ln={...ln,
...e,waiting:t.length,words:dl(t),late:t.find(s=>s.late&&!s.refused)?.late??"",settle:await g_(t).catch(()=>[]),
lost:n.length,refused:t.filter(s=>s.refused).length},document.documentElement.dataset.reached=String(ln.reached),
document.documentElement.dataset.resolve=String(ln.settle.length),document.documentElement.dataset.waiting=String(
ln.waiting),document.dispatchEvent(new CustomEvent("sync",{detail:ln}))}function dl(e){let n=[["trial","result"],
["note","note"],["edit","edit"]].map(([s,o])=>({word:o,many:e.filter(a=>a.kind===s).length})).filter(({many:s})=>s).
map(({word:s,many:o})=>`${o} ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):`${n.slice(0,-1).join(", ")} a\
nd ${n.at(-1)}`}async function g_(e){let t=(await sh()).flatMap(({code:n,settle:s})=>Array(s).fill(n));for(let n of e)
for(let s of n.body.settles??[])t.includes(n.code)&&t.splice(t.indexOf(n.code),1);return t}function cn(e,t){let n=e||
!!(t&&!(t instanceof j));n!==ln.reached&&Ra({reached:n})}function Ss(){return Ra({})}function U(){return Lo?(cl=
!0,Lo):(Lo=$_().finally(()=>Lo=void 0),Lo)}async function $_(){do cl=!1,await b_();while(cl)}async function b_(){
try{await Hh(),(await Bh()).sent>0&&await Hh(),await Ra({reached:!0,at:new Date().toISOString(),unkept:!1})}catch(e){
await Ra(e instanceof j?{reached:!1}:e instanceof L?{reached:!0}:{unkept:!0}),!(e instanceof j||e instanceof L&&
e.status===401)&&!(e instanceof et)&&console.warn("changes feed:",e)}}async function Hh(){for(;await ws("feed",
f_,w_););}async function w_(){let e=await ah()??"",{body:t}=await M("GET",`/changes?since=${encodeURIComponent(
e)}`,{timeout:15e3});return await rh(t),t.more}function jh(){U(),addEventListener("online",()=>U()),addEventListener(
"offline",()=>U()),document.addEventListener("visibilitychange",()=>document.visibilityState==="visible"&&U()),
setInterval(()=>document.visibilityState==="visible"&&U(),1e4)}var f_,ln,Lo,cl,ke=f(()=>{F();Re();xs();on();Ie();
ba();f_=3e3,ln={reached:null,waiting:0,words:"",late:"",refused:0,settle:[],lost:0,at:null,unkept:!1},cl=!1});function dn(){let e=location.pathname,t=n=>n==="/"?e==="/"||e==="/scan"||/^\/c\//i.test(e):e.startsWith(n);_t(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${y_}<span>Flangebook</span></a>
        ${rn()===null?i`<nav aria-label="Main">
                ${__.filter(([n])=>Ft(n)).map(([n,s])=>i`<a href=${n} aria-current=${t(n)?"page":"false"}>${s}</a>`)}
              </nav>`:h}
      </div>
      ${v_()}${k_()}${rn()===null?x_():h}`,document.getElementById("masthead"))}function k_(){return Oo()?i`<p class="standing" data-test="held">
      ${Oo()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      Then it is saved automatically.
    </p>`:yo()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${st().reached===!1?h:"Cards come from the shop."}
  </p>`:h}function x_(){let{reached:e,waiting:t,words:n,late:s,refused:o,settle:a,lost:r}=st(),l=a.filter(m=>Ft(
`/c/${m}/resolve`)),c=s?` ${s}.`:"",d=t?`${n} ${t===1?"waits":"wait"} to be sent.${c}`:"",p=yo()?"":"Cards on \
this device still open.",u=e===!1?`Not connected to the shop. ${p}`:"";return!u&&!d&&!l.length&&!r?h:i`<p class="standing" data-test="standing">
    ${u} ${d} ${o?i`<a href="/settings">${o} refused: look</a>`:h}
    ${l.length?i`<a href="/c/${l[0]}/resolve" data-test="resolve-count">${l.length} to resolve</a>`:h}
    ${r?i`<a href="/settings" data-test="lost-count"
            >${r===1?"1 card is":`${r} cards are`} not in the shop any more: look</a
          >`:h}
  </p>`}var __,y_,v_,hl=f(()=>{_();Cn();Te();xs();on();ke();__=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];y_=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,v_=()=>isSecureContext?h:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});function Ts(e){return e.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function I(e){
return e.length>3?`${e.slice(0,3)}-${e.slice(3)}`:e}function fe(e){let t=Ts(e),n=[...t].filter(s=>!Eo.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:t,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return t.length>7?{code:t,whole:!1,
fault:`A card code has seven characters. This one has ${t.length}.`}:t.length<7?{code:t,whole:!1,fault:""}:Vh(
t.slice(0,-1))!==t.at(-1)?{code:t,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:t,whole:!0,fault:""}}function Ia(){let e=crypto.getRandomValues(
new Uint8Array(6)),t=Array.from(e,n=>Eo[n%Eo.length]).join("");return t+Vh(t)}function Vh(e){let t=0,n=2;for(let s of e)
t^=Uh(n,Eo.indexOf(s)),n=Uh(n,2);return Eo[t]}function Uh(e,t){let n=0;for(let s=t,o=e;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var Eo,ue=f(()=>{Eo="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});function Wa(e){let t=gs()==="bench"?"This device is a press screen":"This device is an operator's",n=yd(e)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${t}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var R,re,le=f(()=>{_();Te();R=(e,t,n=h)=>he(e)?t:n,re=(e,t,n=h)=>Ft(e)?t:n});function hn(e){if(e instanceof et)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${zh}
    </div>`;if(e instanceof j)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let t=e instanceof L?e.message:String(e);return e instanceof L||console.error(e),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${t}
  </div>`}var Oe,xe,Gh,zh,Ce=f(()=>{_();F();on();Oe=e=>i`<p class="state" data-test="loading">${e}</p>`,xe=(e,t=h)=>i`<div class="state" data-test="empty">
    <h1>${e}</h1>
    ${t}
  </div>`,Gh=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${yo()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${zh}
  </div>`,zh=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function $e(e,{replace:t=!1}={}){T_()&&(history[t?"replaceState":"pushState"](null,"",e),Vt(!0))}function yt(e){
No=e}function T_(){let e=No?.();return!e||confirm(e)}function Kh(){No?.()?dn():Vt()}async function Vt(e=!1){pl.
abort(),pl=new AbortController,No=null;let{signal:t}=pl,n=document.documentElement;delete n.dataset.ready;let s=A_(
$o(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
dn();let o=l=>{clearTimeout(a),t.aborted||_t(l,Da())};_t(i``,Da());let a=setTimeout(()=>o(Gh()),S_);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!he(r)){o(Wa(r)),n.dataset.ready="n\
ot-yours";return}try{let l=await qh[s.route.name]();if(t.aborted)return;scrollTo(0,0),await l.show({params:M_(
s.params),query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{
t.aborted||(n.dataset.ready=s.route.name)},signal:t})}catch(l){if(t.aborted)return;o(hn(l)),n.dataset.ready="f\
ailed"}e&&!t.aborted&&Da().focus({preventScroll:!0})}function A_(e){return e&&ph(e.route.name)?{route:bd("pair"),
params:{}}:e}function Zh(e){return qh=e,addEventListener("popstate",()=>Vt()),addEventListener("beforeunload",
t=>(Oo()||No?.())&&t.preventDefault()),document.addEventListener("click",t=>{let n=t.target.closest("a");!n||t.
defaultPrevented||t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||n.target||n.hasAttribute("download")||n.origin!==
location.origin||!$o(n.pathname)||n.hash&&n.pathname===location.pathname||(t.preventDefault(),$e(n.pathname+n.
search+n.hash))}),Da().replaceChildren(),Vt()}var S_,pl,No,qh,Da,M_,We=f(()=>{_();hl();Cn();ue();Te();Ci();xs();
le();Ce();S_=1e3,pl=new AbortController,No=null,qh={},Da=()=>document.getElementById("main");M_=e=>e.code?{...e,
code:Ts(e.code)}:e});var Fn,Fa,Ms,ul=f(()=>{Fn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Fa=e=>(...t)=>({
_$litDirective$:e,values:t}),Ms=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,s){this._$Ct=t,
this._$AM=n,this._$Ci=s}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}}});var aM,Yh,O_,Ha,ml=f(()=>{_();({I:aM}=Ah),Yh=e=>e.strings===void 0,O_={},Ha=(e,t=O_)=>e._$AH=t});var Me,pn=f(()=>{_();ul();ml();Me=Fa(class extends Ms{constructor(e){if(super(e),e.type!==Fn.PROPERTY&&e.type!==
Fn.ATTRIBUTE&&e.type!==Fn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!Yh(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[
t]){if(t===wt||t===h)return t;let n=e.element,s=e.name;if(e.type===Fn.PROPERTY){if(t===n[s])return wt}else if(e.
type===Fn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(s))return wt}else if(e.type===Fn.ATTRIBUTE&&n.getAttribute(
s)===t+"")return wt;return Ha(e),t}})});function ja(e){return Object.hasOwn(un,e)?e:void 0}async function de(e,t){try{return await Ua(e,t)}catch(n){let s=n instanceof
j?await ka():void 0;if(!s?.[e])throw n;return{items:s[e],etag:null,kept:!0}}}async function mn(){try{let e=await ka();
if(e||!st().unkept)return e}catch{}try{let[{press:e},{items:t}]=await Promise.all([Ga(),Ua("metals")]);return{
press:e,metals:t}}catch{return}}async function Ua(e,t){let{body:n,etag:s}=await M("GET",`/${e}`,{signal:t});return{
items:n[e],etag:s,kept:!1}}async function Xh(e,t,n){await M("PUT",`/${e}`,{body:{[e]:t.map(Hn),by:C().name},etag:n})}
async function Va(e){try{return await Ga(e)}catch(t){let n=t instanceof j?await ka():void 0;if(!n)throw t;return{
press:n.press??null,etag:null,kept:!0}}}async function Ga(e){let{body:t,etag:n}=await M("GET","/press",{signal:e});
return{press:t.press,etag:n,kept:!1}}async function Jh(e,t){let n={press:Hn(e),by:C().name};return(await M("PU\
T","/press",{body:n,etag:t})).body.press}function Hn({outline_mm:e,outlines_mm:t,...n}){return n}function Qh(e,t){
return JSON.stringify(e&&Hn(e))===JSON.stringify(t&&Hn(t))}function fn({tray:e,slot:t}){return!e&&!t?"place no\
t given":[e&&(/^\S{1,4}$/.test(e)?`Tray ${e}`:e),t&&`slot ${t}`].filter(Boolean).join(", ")}var un,ne,As,ge=f(
()=>{F();oe();Ie();ke();un={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",title:"\
Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"Metals"}},
ne={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_holders",
metals:"shop.write_metals"};As=(e,t)=>e?.find(n=>n.code===t)?.name??t});function Po(e,t){let s=t.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...ys(c.body)}),
e),o=t.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(e.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??e.revision_id,here:o}}async function jn(e){return Po(e,
await En(e.code).catch(()=>[]))}async function fl(e){let t=await dt(e);return t&&Po(t,(await En(e)).filter(n=>n.
body.settles))}async function Co(e){let t=await dt(e);return t&&jn(t)}async function vt(e,t,{reason:n="",settles:s=[]}={}){
let o=Ca(t,e),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:e};let{name:r}=C(),l=await Ba(
{id:Ke(),kind:a.every(p=>p==="note")&&!s.length?"note":"edit",code:e.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:ys(e,a),after:e.after,etag:e.etag,revision:e.revision}),c=await Co(e.
code).catch(()=>{}),d=l.answer;return{where:l.where,card:c??(d?Po(d,[]):{...e,...o})}}var gn=f(()=>{ks();Re();
xs();oe();Ie()});function gl(e){if(e.limits!==void 0)return e.limits;let t=[e,...e.corrections??[]].filter(E_);if(!t.length)return null;
let n=N_(e)+.5,s=Math.max(Math.min(...t.map(r=>r.set_angle_deg)),n),o=t.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function ot(e,t){let n=gl(
e);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=t;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function N_({drawing:e,v_opening_mm:t}){let n=(e?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&t?2*Math.atan(t/2/Math.min(...n))*L_:0}var ep,L_,E_,$n=f(()=>{ep=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],L_=180/Math.PI;E_=e=>typeof e.set_angle_deg=="number"&&typeof e.punch_depth_mm=="number"});async function kt(e,t,n){let s=null,o=await dt(e).catch(a=>{s=a});if(!o){await t(await jn(await P_(e,n,s)),{where:"\
shop"});return}await t(await jn(o),{where:"device"}),C_(o,t,n)}async function P_(e,t,n){try{return await xt(e,
t)}catch(s){throw s instanceof j&&n instanceof et?n:s}}async function tp(){try{let e=await an();if(e.length||!st().
unkept)return{list:e,where:"device"}}catch{}try{let{body:e}=await M("GET","/cards?archived=all&limit=200",{timeout:4e3});
return cn(!0),{list:e.cards.map(t=>({...t,note:""})),where:"shop"}}catch(e){return cn(!1,e),{list:[],where:"sh\
op"}}}async function C_(e,t,n){try{let s=await xt(e.code,n);!n.aborted&&s.etag!==e.etag&&await t(await jn(s),{
where:"shop"})}catch{}}async function np(e,t){if(await dt(e).catch(()=>{}))return"device";try{return await xt(
e,t),"shop"}catch(n){if(n instanceof L&&n.status===404)return"nowhere";if(n instanceof j)return"silent";throw n}}
async function xt(e,t){try{let{body:n}=await M("GET",`/cards/${e}`,{signal:t,timeout:4e3});return cn(!0),await bt(
n).catch(()=>n)}catch(n){throw t?.aborted||cn(!1,n),n}}async function za(e,t){let{body:n}=await M("PUT",`/card\
s/${e.code}`,{body:t,etag:e.etag,timeout:t.replan?6e4:8e3});return bt(n).catch(()=>n)}function ht(e,t){let n=e.
settings?.find(a=>a.step===t.number),s={set_angle_deg:n?.set_angle_deg??t.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??
t.punch_depth_mm},o=ot(t,s);return{...o?s:{set_angle_deg:null,punch_depth_mm:null},firstHit:n||!o?null:t.first_hit??
null,gauge_x_mm:n?.gauge_x_mm??t.gauge_x_mm,fromTrial:!!n,reason:n?.reason??""}}var De=f(()=>{F();gn();$n();on();
Ie();ke()});function Ye(e,t){return e.length*t*.6+t*.3}function B_(e,t){return Math.abs(e.x-t.x)*2<e.width+t.width&&Math.abs(
e.y-t.y)*2<e.height+t.height}function sp(e,[[t,n],[s,o]]){let a=0,r=1,l=[[t-e.x,s-t,e.width/2],[n-e.y,o-n,e.height/
2]];for(let[c,d,p]of l){if(d===0){if(Math.abs(c)>p)return!1;continue}let[u,m]=[(-p-c)/d,(p-c)/d];a=Math.max(a,
Math.min(u,m)),r=Math.min(r,Math.max(u,m))}return a<=r}function R_([e,t],[n,s]){return qa(e,t,n)!==qa(e,t,s)&&
qa(n,s,e)!==qa(n,s,t)}function qa(e,t,n){return(t[0]-e[0])*(n[1]-e[1])>(t[1]-e[1])*(n[0]-e[0])}var Ka,Za=f(()=>{
Ka=class{constructor(t){this.edges=t,this.taken=[]}choose(t){let n=t[0],s=1/0;for(let o of t){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:t,
lines:n=[]}){let s=this.taken.filter(l=>B_(t,l)).length,o=this.edges.filter(l=>sp(t,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(d=>R_(c,d)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(d=>sp(d,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function Le(e){return e.length?`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}Z`:""}function Bo(e){return e.length?
`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}`:""}function at(e){let t=e.flat().map(([s])=>s),n=e.flat().map(([,
s])=>s);return[Math.min(...t),Math.min(...n),Math.max(...t),Math.max(...n)]}function op([e,t,n,s],o){return`${e-
o} ${-s-o} ${n-e+2*o} ${s-t+2*o}`}function Un([e,t,n,s],o,a){let r=Math.min(o/Math.max(n-e,1e-6),a/Math.max(s-
t,1e-6));return([l,c])=>[(l-e)*r,(s-c)*r]}var bn=f(()=>{});function H(e){let{text:t}=w(e,{digits:2});return C().inches==="fraction"?t:t.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function rp({section:e,part:t},{pixels:n=Os(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=Un(at([e.outline]),n-2*l,s-2*l),d=e.outline.map(c),p=new Ka(d.map((k,N)=>[k,d[(N+1)%d.length]])),u=D_(e).map(
(k,N)=>H_(k.map(c),H(t.flats_mm[N]),p,18)),m=e.bend_points.map((k,N)=>F_(c(k),N+1,t.bends[N],p,18)),[g,$,v,T]=V_(
[...d,...m.flatMap(k=>ap(k.box)),...u.flatMap(k=>[...ap(k.box),...k.lines.flat()])]),[B,P]=[v-g+12,T-$+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${W_(t)}
    width=${B}
    height=${P}
    viewBox="${g-6} ${$-6} ${B} ${P}">
    <path class="sheet" d="M${d.map(k=>k.join(" ")).join("L")}Z" />
    ${u.map(({lines:k,box:N,text:te})=>y`${k.map(([Ne,Pi])=>y`<path class="dimension" d="M${Ne}L${Pi}"/>`)}
      ${j_(k[0])}${U_(N,te,18)}`)}
    ${m.map(({box:k,text:N,number:te,badge:Ne})=>y`<circle class="badge ${te===a?"marked":""}" cx=${Ne[0]} cy=${Ne[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${Ne[0]} y=${Ne[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${te}</text>
      <text x=${Ne[0]+18*.95} y=${k.y} font-size=${18}
        dominant-baseline="central">${N}</text>`)}
  </svg>`}function Os(){return Math.min(Math.max(innerWidth-32,300),720)}function W_(e){return`Section. ${e.flats_mm.
map((n,s)=>{let o=e.bends[s],a=o?`, bend ${s+1}: ${ip(o)} ${o.direction}`:"";return`flat ${s+1}: ${b(w(n))}${a}`}).
join("; ")}.`}function ip(e){return e.kind==="closed_hem"?"hem":e.kind==="open_hem"?"open hem":ae(S(e.included_angle_deg))}
function D_({dimensions:e,bend_points:t,centre_line:n}){if(e)return e;let s=[n[0],...t,n[n.length-1]];return s.
slice(1).map((o,a)=>[s[a],o])}function F_(e,t,n,s,o){let a=ip(n),r=Ye(a,o)+1.6*o,l=[1.4,1.9,2.6].flatMap(p=>I_.
map(u=>{let m=e[0]+Math.cos(u)*(p*o+r/2-o*.6),g=e[1]+Math.sin(u)*p*o;return{box:{x:m,y:g,width:r,height:o*1.5},
cost:p*2}})),{box:c}=s.choose(l),d=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:t,badge:d}}function H_([e,t],n,s,o){
let a=Math.hypot(t[0]-e[0],t[1]-e[1])||1,r=[-(t[1]-e[1])/a,(t[0]-e[0])/a],[l,c]=[Ye(n,o),o*1.3],d=(m,g)=>[m[0]+
r[0]*g,m[1]+r[1]*g],p=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap(g=>[.5,.3,.7].map($=>{let[v,T]=[d(e,g*o),d(t,g*o)],
B={x:v[0]+(T[0]-v[0])*$,y:v[1]+(T[1]-v[1])*$,width:l,height:c},P=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(g*r[1])*
o*.9:0,k=[[v,T],[d(e,Math.sign(g)*o*.5),d(v,Math.sign(g)*4)],[d(t,Math.sign(g)*o*.5),d(T,Math.sign(g)*4)]];return{
box:{...B,y:B.y+P},cost:Math.abs(g)+($===.5?0:.5),lines:k}}))),u=s.choose(p);return{box:u.box,lines:u.lines,text:n}}
function j_(e){return e.map(([t,n])=>y`<path class="dimension tick" d="M${t-4} ${n+4}L${t+4} ${n-4}"/>`)}function U_({
x:e,y:t,width:n,height:s},o,a){return y`<rect class="ground" x=${e-n/2} y=${t-s/2} width=${n} height=${s}/>
    <text x=${e} y=${t} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function ap({
x:e,y:t,width:n,height:s}){return[[e-n/2,t-s/2],[e+n/2,t+s/2]]}function V_(e){return at([e])}var I_,rt=f(()=>{
_();oe();A();Za();bn();I_=[0,90,180,270,45,135,225,315].map(e=>e*Math.PI/180)});function z_(e){try{return G_.includes(new Intl.Locale(e).region??"")?"inch":"mm"}catch{return"mm"}}function lp(){
Sd()||Ge({units:z_(navigator.language)})}function dp(e){if(!e?.punches||!e.dies)return[];let t=!!e.press,n=e.punches.
length>0&&e.dies.length>0,s=[{step:"units",done:Ro("units")},{step:"press",done:t},{step:"tools",done:n}],o=s.
slice(1).some(({step:r,done:l})=>!l&&!Ro(r)),a=!t&&!n&&!Ro("units");return o||a?s:[]}var G_,Ro,cp,$l=f(()=>{oe();
G_=["US","LR","MM"];Ro=e=>(C().skipped??[]).includes(e),cp=e=>Ge({skipped:[...C().skipped??[],e]})});function pp(e,t){return t===E()?[Ya.length,ee(e)]:t===`${E()}/s`?[Ya.speed,Z_(e)?`${e} ${t}`:e]:t===ct().unit?
[Ya.force,sn(e,ct())]:t===Qe().unit?[Ya.rating,sn(e,Qe())]:null}function Y_(e,t){let n=pp(e,t);if(!n)return null;
let[{spellings:s},o]=n,[,a,r="0",l,c,d,p=""]=K_.exec($s(o))??[],u=s[p.toLowerCase().trim()];if(a===void 0||!u||
Number(c)===0)return null;let m=l?Number(r)+Number(l)/Number(c):Number(d);return(a==="-"?-m:m)*u}function up(e,t){
let n=Y_(e,t);if(n===null)return"";let[{both:s}]=pp(e,t);return s.map(([o,a,r])=>`${X_(n/a,r)} ${o}`).join(" =\
 ")}var q_,hp,Ya,K_,Z_,X_,mp=f(()=>{A();q_={mm:1,cm:10,m:1e3,in:ve,inch:ve,'"':ve,ft:304.8},hp={"short tons":Ht,
t:ma},Ya={length:{spellings:q_,both:[["mm",1,3],["in",ve,4]]},speed:{spellings:{"mm/s":1,"in/s":ve},both:[["mm\
/s",1,3],["in/s",ve,3]]},force:{spellings:{kn:1,n:.001,...hp},both:[["kN",1,1],["short tons",Ht,1]]},rating:{spellings:{
"kn/m":1,"n/mm":1,"short tons/ft":Ht/wo,"t/m":hp.t},both:[["kN/m",1,1],["short tons/ft",Ht/wo,1]]}},K_=/^([+-]?)(?:(?:(\d+)[ -])?(\d+)\/(\d+)|(\d+\.?\d*|\.\d+)) *(.*)$/;
Z_=e=>/^[\d.,]+$/.test(e.trim());X_=(e,t)=>Q(e,t).replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"")});function St([e,t],[n,s],o,a=[(e+n)/2,(t+s)/2-10]){return y`<path class="dimension strong" d="M${e} ${t}L${n} ${s}"/>
    <circle class="dimension-end" cx=${e} cy=${t} r="4"/>
    <circle class="dimension-end" cx=${n} cy=${s} r="4"/>
    <text x=${a[0]} y=${a[1]} text-anchor="middle" font-size="21">${o}</text>`}function Wo(e){let[t,n]=ey[e];return i`<svg class="drawing word-picture" viewBox="0 0 360 260" role="img" aria-label=${t}>
    ${n}
  </svg>`}var fp,J_,Io,Xa,Q_,ey,bl=f(()=>{_();fp=y`<path class="tool" d="M180 168L150 138V20H210V138Z"/>
  <path class="tool" d="M80 150H130L180 200L230 150H280V245H80Z"/>`,J_=y`<path class="sheet-line" d="M88 80L180 178L272 80"/>`,
Io=y`${fp}${J_}`,Xa=y`<path class="sheet-line" d="M50 200H230Q250 200 250 180V60"/>`,Q_=y`<path class="sheet-line" d="M30 130H330"/><path class="fold" d="M180 100V160"/>`,
ey={"v-opening":["A die, its V opening marked",y`${Io}${St([130,225],[230,225],"V opening",[180,218])}
    <path class="dimension" d="M130 150V232M230 150V232"/>`],"tip-radius":["A punch, its tip marked",y`${fp}${St(
[180,166],[255,60],"tip radius",[290,52])}`],"inside-radius":["A bent sheet, the radius inside the bend marked",
y`${Xa}${St([238,186],[150,110],"inside radius",[135,98])}`],flange:["A bent sheet, the flange marked",y`${Xa}${St(
[290,205],[290,60],"flange",[325,48])}`],deduction:["A bent sheet with its two outside lengths, A and B",y`${Xa}${St(
[45,235],[258,235],"A")}${St([290,207],[290,60],"B",[315,138])}`],blank:["A flat sheet with its bend line",y`${Q_}${St(
[30,190],[330,190],"blank = A + B − deduction")}`],allowance:["A bent sheet, the length of the metal in the \
bend marked",y`${Xa}<path class="dimension strong" d="M222 200Q250 200 250 172"/>
      <text x="165" y="160" font-size="21" text-anchor="middle">bend allowance</text>`],"k-factor":["A bent sh\
eet, the line that keeps its length marked",y`<path class="tool" d="M60 240A180 180 0 0 1 240 60V110A130 130 0 0 0 110 240Z"/>
      <path class="centre strong" d="M88 240A152 152 0 0 1 240 88"/>
      <text x="250" y="72" font-size="21">outside</text><text x="250" y="95" font-size="21">keeps its</text>
      <text x="250" y="114" font-size="21">length</text><text x="125" y="225" font-size="21">inside</text>`],springback:[
"A sheet under the punch, and more open after it",y`<path class="sheet-line" d="M90 70L180 190L270 70"/>
      <path class="centre strong" d="M66 90L180 190L294 90"/>
      <text x="180" y="235" font-size="21" text-anchor="middle">dashed: after release</text>`],"set-angle":["A\
 bend in its tools, the angle between its flats marked",y`${Io}<path class="dimension strong" d="M120 114A90 90 0 0 1 240 114"/>
      <text x="305" y="100" font-size="21" text-anchor="middle">set angle</text>`],"punch-depth":["A bend in i\
ts tools, the way of the punch below the flat sheet marked",y`${Io}<path class="centre" d="M40 132H320"/>
      ${St([320,132],[320,168],"depth",[320,195])}`],gauge:["A flat sheet on the die against the back gauge, X\
 and R marked",y`<path class="tool" d="M80 150H130L160 180L190 150H240V240H80Z"/>
      <path class="sheet-line thin" d="M40 143H285V60"/>
      <path class="tool" d="M292 82H340V104H292Z"/>${St([160,40],[292,40],"X")}
      ${St([318,150],[318,93],"R",[338,130])}
      <path class="centre" d="M160 20V240M240 150H340"/>`],"second-hit":["The same bend, pressed again and a l\
ittle deeper",y`${Io}<path class="dimension strong" d="M180 25V75M170 62L180 78L190 62"/>
      <text x="272" y="40" font-size="21" text-anchor="middle">again, deeper</text>`],rating:["A bend in its t\
ools, the force on the punch marked",y`${Io}<path class="dimension strong" d="M180 2V60M168 44L180 62L192 44"/>
      <text x="250" y="40" font-size="21" text-anchor="middle">force</text>`],label:["A label with its square \
and its code",y`<path class="tool" d="M40 40H320V220H40Z"/>
      <path class="square" d="M60 60h40v40h-40zM60 160h40v40h-40zM150 60h40v40h-40z
      M120 120h20v20h-20zM160 150h20v20h-20zM120 180h20v20h-20z"/>
      <text x="190" y="140" font-size="24">ABC-1234</text>
      <text x="190" y="176" font-size="21">Bracket</text>`],screen:["A large display beside the press",y`<path class="tool" d="M50 30H310V180H50ZM160 180H200V215H160ZM110 215H250V230H110Z"/>
      <text x="180" y="110" font-size="52" text-anchor="middle">88.5°</text>
      <text x="180" y="155" font-size="24" text-anchor="middle">X 57.9</text>`],devices:["A phone and a comput\
er of the same shop",y`<path class="tool" d="M40 50H110V190H40ZM170 60H330V170H170ZM150 190H350V205H150Z"/>
      <path class="dimension strong" d="M115 120H165"/>`],copy:["The shop's file and its copy",y`<path class="tool" d="M60 60H140V190H60ZM220 60H300V190H220Z"/>
      <path class="dimension strong" d="M150 125H210M196 115L212 125L196 135"/>`]}});function Ja(e){let t=ty[e];return t?i`<a class="word" href="/words#${t}" data-test="word-${t}" @click=${ny(t)}>${e}</a>`:
e}var Do,ty,wl,ny,Qa=f(()=>{_();bl();Do={"v-opening":{title:"V opening",text:"The width of the V in the die, b\
etween the sharp corners of its face and flanks. Usual is 8 times the thickness: a wider V takes less force an\
d gives a larger inside radius and a longer flange."},"tip-radius":{title:"Tip radius",text:"The rounding of t\
he punch's tip. A tip much sharper than the sheet is thick creases it."},"inside-radius":{title:"Inside radius",
text:"The radius inside the finished bend. In an air bend the V opening sets it more than the punch's tip does\
."},flange:{title:"Flange",text:"What lies on one side of the bend. It has to reach over the V's shoulder thro\
ugh the whole stroke: that is the smallest flange. A shorter one slips into the V."},deduction:{title:"Deducti\
on",text:"How much shorter the blank is than the outside lengths added up: blank = A + B − deduction. It depen\
ds on metal, thickness, angle and V."},allowance:{title:"Bend allowance",text:"The length of sheet that goes i\
nto the bend itself, between the ends of the two straight flats."},blank:{title:"Blank",text:"The flat sheet b\
efore the first bend, cut to length, with its bend lines."},"k-factor":{title:"K-factor",text:"Where in the th\
ickness the line lies that keeps its length: 0 is the inside face, 0.5 the middle. The bend allowance follows \
from it."},springback:{title:"Springback",text:"How far a bend opens when the punch leaves it. Harder and thin\
ner sheet springs back more."},"set-angle":{title:"Set angle",text:"The angle under load that the press is set\
 to. It is sharper than the finished angle by the springback. 90 is square, 180 is flat."},"punch-depth":{title:"\
Punch depth",text:"How far the punch travels from its first touch of the flat sheet to the bottom of the strok\
e."},gauge:{title:"Gauge X and R",text:"Where the back gauge stands: X is the way from the tools' centre line \
to the finger's face, R its height above the die's top face."},"second-hit":{title:"First hit, second hit",text:"\
A bend can be closed further, never opened. So the first piece is pressed a little too open, measured, and pre\
ssed again, deeper."},rating:{title:"Rating and force to allow for",text:"The rating is what a tool bears over\
 its length, as stamped on it. The force to allow for is the high end of what a bend may take; it is compared \
with each rating. Plate and papers come first."}},ty={"V opening":"v-opening","V openings":"v-opening","Tip ra\
dius":"tip-radius","Inside radius":"inside-radius","Flange from":"flange",Deduction:"deduction","Bend allowanc\
e":"allowance","K-factor":"k-factor",Springback:"springback","Set angle":"set-angle","First hit: set angle":"s\
econd-hit",Depth:"punch-depth","First hit: depth":"punch-depth","Allow for":"rating",Rating:"rating"};wl=e=>i`${Wo(
e)}
    <p>${Do[e].text}</p>`,ny=e=>t=>{if(t.ctrlKey||t.metaKey||t.shiftKey)return;t.preventDefault();let n=document.
querySelector("dialog.word-entry")??document.createElement("dialog");n.className="word-entry",n.setAttribute("\
aria-label",Do[e].title),n.isConnected||document.body.append(n);let s=n;_t(i`<h2>${Do[e].title}</h2>
      ${wl(e)}
      <div class="buttons">
        <button type="button" class="button next" data-test="close-word" @click=${()=>s.close()}>
          Close
        </button>
      </div>`,s),s.open||s.showModal()}});function O({name:e,label:t,value:n,change:s,hint:o="",wrong:a=[],meant:r=Ed(String(n)),keys:l="text",placeholder:c="",
unit:d="",on:p="input",next:u=!1,list:m="",mark:g=0}){let $=T=>s(T.target.value),v=a.length?"":up(String(n),d);
return i`<div class="field ${a.length?"has-wrong":""}">
    <label for=${e}
      >${sy(g)}${Ja(t)}${d?i` <span class="hint">(${d})</span>`:h}</label
    >
    <input
      id=${e}
      name=${e}
      data-test=${e}
      autocomplete="off"
      spellcheck="false"
      inputmode=${l}
      enterkeyhint=${u?"next":h}
      placeholder=${c}
      list=${m||h}
      .value=${Me(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${p==="input"?$:h}
      @change=${p==="change"?$:h} />
    <span id="${e}-more">
      ${a.map(T=>i`<span class="wrong" data-test="wrong-${e}">${T}</span>`)}
      ${v?i`<span class="hint" data-test="read-${e}">${v}</span>`:h}
      ${o?i`<span class="hint">${o}</span>`:h}
    </span>
    ${a.length?oy(e,r,s):h}
  </div>`}function oy(e,t,n){return i`<div class="may-mean">
    ${t.map(s=>i`<button type="button" class="button" data-test="may-mean-${e}" @click=${()=>n(s)}>
          ${s}
        </button>`)}
  </div>`}function Vn({name:e,label:t,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${e}>${t}${l?i` <span class="hint">(${l})</span>`:h}</label>
    <textarea
      id=${e}
      name=${e}
      data-test=${e}
      rows=${o}
      .value=${Me(String(n))}
      aria-invalid=${r.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${c=>s(c.target.value)}></textarea>
    <span id="${e}-more">
      ${r.map(c=>i`<span class="wrong" data-test="wrong-${e}">${c}</span>`)}
      ${a?i`<span class="hint">${a}</span>`:h}
    </span>
  </div>`}function Z({name:e,label:t,value:n,options:s,change:o,wrong:a=[]}){return i`<div class="field ${a.length?
"has-wrong":""}">
    <label for=${e}>${t}</label>
    <div class="picked">
      <select
        id=${e}
        name=${e}
        data-test=${e}
        aria-invalid=${a.length?"true":"false"}
        aria-describedby="${e}-more"
        @change=${r=>o(r.target.value)}>
        ${s.map(([r,l])=>i`<option value=${r} .selected=${Me(r===n)}>${l}</option>`)}
      </select>
    </div>
    <span id="${e}-more"
      >${a.map(r=>i`<span class="wrong" data-test="wrong-${e}">${r}</span>`)}</span
    >
  </div>`}function Y({name:e,label:t,value:n,options:s,change:o}){return i`<div class="field" role="radiogroup" aria-label=${t}>
    <span class="legend" aria-hidden="true">${t}</span>
    <div class="choice" data-test=${e}>
      ${s.map(([a,r])=>i`<label>
            <input
              type="radio"
              name=${e}
              value=${a}
              .checked=${Me(a===n)}
              @change=${()=>o(a)} />
            <span>${r}</span>
          </label>`)}
    </div>
  </div>`}function Tt(e){Object.keys(e).length!==0&&document.querySelector('[aria-invalid="true"]')?.focus()}var be,
sy,G=f(()=>{_();pn();mp();A();Qa();be=e=>t=>{t.preventDefault(),e()};sy=e=>e?i`<span class="mark-in-label" aria-hidden="true">${e}</span> `:
h});function gp(e,t){return i`<p>
      Check a bend at once: until your press and tools are entered, plain stand-in tools are counted with, and
      the answer says so.
    </p>
    <a class="button next wide first-bend" href="/bend" data-test="check-a-bend">Check a bend</a>
    <section aria-label="Set up the shop">
      <h2>Set up the shop</h2>
      <ol class="first-steps" data-test="first-steps">
        ${e.map(n=>ay(n,t))}
      </ol>
    </section>
    <nav class="home-new" aria-label="Start something">
      <a class="button" href="/part" data-test="new-part">New part</a>
      <a class="button" href="/scan">Scan a label</a>
    </nav>`}function ay({step:e,done:t},n){let{title:s,words:o,body:a}=ry[e](n),r=!t&&!Ro(e),l=()=>{cp(e),n()};
return i`<li class="panel" data-test="step-${e}" data-open=${String(r)}>
    <h3>${s} ${t?i`<span class="soft">done</span>`:h}</h3>
    ${r?i`<p>${o}</p>`:h} ${a}
    ${r?i`<button type="button" class="button" data-test="later-${e}" @click=${l}>
            ${e==="units"?"That is right":"Later"}
          </button>`:h}
  </li>`}var ry,$p=f(()=>{_();$l();oe();G();ry={units:e=>({title:"Units",words:"Guessed from the language of t\
his browser. Settings change them at any time.",body:Y({name:"units",label:"Units",value:C().units,options:[["\
mm","mm and kN"],["inch","inch and tons"]],change:t=>{Ge({units:t==="inch"?"inch":"mm"}),e()}})}),press:()=>({
title:"Press",words:"Its name, force and bed length are enough.",body:i`<a class="button" href="/shop/press" data-test="to-press">The press</a>`}),
tools:()=>({title:"Tools",words:"Pick a shape by its picture, type the sizes that are engraved on it.",body:i`<a class="button" href="/shop/dies/+" data-test="to-dies">Add a die</a>
      <a class="button" href="/shop/punches/+" data-test="to-punches">Add a punch</a>`})}});var Ls,ie,pt=f(()=>{_();Ls=()=>matchMedia("(min-width: 1000px)").matches,ie=(e,t,{test:n="",open:s=Ls()}={})=>i`<details class="fold" data-test=${n||
h} ?open=${s}>
    <summary><h2>${e}</h2></summary>
    ${t}
  </details>`});function x(e,t=iy[e]){return i`<span class="flag ${e}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${ly[e]}</svg>${t}</span
  >`}function _l({step:e,steps:t=[]}){return t.length>1?i`<b>Steps ${t.join(", ")}.</b> `:e?i`<b>Step ${e}.</b> `:
h}function He(e,{quiet:t=!1}={}){let n=e.filter(s=>!t||s.level!=="ok").sort((s,o)=>Es.indexOf(Ae(s))-Es.indexOf(
Ae(o)));return n.length===0?h:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${x(Ae(s))}
          <div class="say">
            ${_l(s)}${qe(s.template,s.numbers)}
            ${s.do?i`<div class="do">${qe(Gn(s),s.numbers)}</div>`:h}
          </div>
        </li>`)}
  </ul>`}function Ns(e){let t=new Map;for(let s of e){let o=`${Ae(s)} ${s.code}`;t.set(o,[...t.get(o)??[],s])}
let n=[...t.values()].sort(([s],[o])=>Es.indexOf(Ae(s))-Es.indexOf(Ae(o)));return i`<ul class="checks lines" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s[0].level} data-code=${s[0].code}>
          ${cy(s)}
        </li>`)}
  </ul>`}function cy([e,...t]){let n=i`${x(Ae(e))}
    <div class="say">${_l(e)}${qe(e.template,e.numbers)} ${dy(t)}</div>`;return!e.do&&t.length===0?n:i`<details ?open=${e.
level==="stop"}>
    <summary>${n}</summary>
    ${t.map(s=>i`<p class="say">${_l(s)}${qe(s.template,s.numbers)}</p>`)}
    ${e.do?i`<p class="do">${qe(Gn(e),e.numbers)}</p>`:h}
  </details>`}function dy(e){let t=e.flatMap(({step:n,steps:s=[]})=>s.length?s:n??[]);return e.length===0?h:t.
length===0?i`<b>And ${e.length} more.</b>`:i`<b>Also step${t.length>1?"s":""} ${t.join(", ")}.</b>`}var iy,Es,
ly,Ae,Se,Gn,Fe,Fo,V=f(()=>{_();A();iy={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",ok:"OK"},Es=
["stop","caution","unknown","note","ok"],ly={stop:y`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:y`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:y`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:y`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:y`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};Ae=({level:e,sign:t,do:n,
step:s,steps:o=[]})=>t??(e==="ok"&&n&&(s||o.length)?"note":e),Se=({template:e,numbers:t})=>qe(e,t),Gn=({do:e,do_template:t})=>t??
e,Fe=({template:e,numbers:t={},words:n=""})=>e?qe(e,t):n,Fo=e=>e.map(Se).join(" ")});function zn(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":t.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function ce(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":`${zn(e)}\
, ${t.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function Ps({made_at:e,received_at:t}){return t?
!e||Math.abs(Date.parse(e)-Date.parse(t))<hy?ce(t):`in the shop ${ce(t)}, made ${ce(e)} by the device’s clock`:
ce(e??"")}function Gt({by:e,device:t}){return[e,t===e?"":t].filter(Boolean).join(", ")}var hy,Xe=f(()=>{hy=5*6e4});function yl(e,{metalName:t,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${e.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${I(s.code)}</span>
            <span class="more">
              ${t(s.metal)}, ${H(s.thickness_mm)} ${E()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${zn(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · archived":""}
              ${py(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="resolve">${x("caution",`${s.settle} to resolve`)}</span>`:h}
              ${s.worst==="stop"?x("stop"):h}
            </span>
          </a>
        </li>`)}
  </ul>`}var py,bp=f(()=>{_();ue();rt();A();V();Xe();py=e=>e?i`· <b>${e} ${/^1 \S+$/.test(e)?"waits":"wait"}</b>`:
h});function tr(e,t,n,s){let o=fe(e.code),a=o.fault||(e.asked&&!o.whole?my(o.code):"");return i`<form class="code-form" @submit=${l=>{
l.preventDefault(),e.asked=!0,o.whole?$e(`/c/${o.code}`):n()}}>
    <label for="code">Code on the label</label>
    <div class="code-line">
      <input
        id="code"
        data-test="code"
        autocomplete="off"
        autocapitalize="characters"
        spellcheck="false"
        enterkeyhint="go"
        maxlength="20"
        placeholder="ABC-1234"
        .value=${Me(e.code)}
        aria-invalid=${a?"true":"false"}
        aria-describedby="code-more"
        @input=${l=>{e.code=l.target.value,e.asked=!1,n()}} />
      <button class="button ${o.whole?"next":""}" data-test="open">Open</button>
    </div>
    <p id="code-more" class="code-more" role="status">
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:uy(o,t,s)}
    </p>
  </form>`}function uy(e,t,n){if(!e.whole)return n;let s=t.find(o=>o.code===e.code);return s?i`<span data-test="code-found"
        >${I(e.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A valid code, but not on this device yet. Open asks the shop.</span
      >`}var er,my,vl=f(()=>{_();pn();ue();We();er=()=>({code:"",asked:!1});my=e=>e?`A card code has seven cha\
racters. This is ${e.length}.`:"Type the seven characters printed on the label."});var yp={};se(yp,{show:()=>$y});async function $y(e){e.title("Find a card");let t={typed:er(),search:"",shown:kl},
n=await _p(),s=!1,o=()=>{let r=he(ne.press)?dp(n.shop):[];r.length&&lp(),e.render(r.length&&n.list.length===0?
i`<div class="home">
            <h1>A new shop</h1>
            ${gp(r,o)} ${wp}
          </div>`:i`<div class="home">
            <h1>Find a card</h1>
            <div class="home-scan">
              <a class="button next wide" href="/scan" data-test="scan">${fy} Scan a label</a>
            </div>
            <div class="home-ways">
              ${tr(t.typed,n.list,o,"Seven characters, capitals or not.")}
              <nav class="home-new" aria-label="Start something">
                ${re("/bend",gy)}
                ${re("/part",i`<a class="button" href="/part" data-test="new-part"
                    >${R("cards.create","New part","Plan a part")}</a
                  >`)}
              </nav>
            </div>
            ${by(t,n,s,o)} ${wp}
          </div>`)};o();let a=async()=>{s||=st().reached!==null,n=await _p(),o(),(s||n.list.length)&&e.ready()};
document.addEventListener("sync",a,{signal:e.signal}),n.list.length&&e.ready(),await U().then(a)}async function _p(){
let[{list:e,where:t},n,s]=await Promise.all([tp(),mn(),Ze().catch(()=>[])]),o=new Map;for(let{code:r}of s)o.set(
r,dl(s.filter(l=>l.code===r)));return{list:e,where:t,waiting:o,metalName:r=>As(n?.metals,r),shop:n}}function by(e,t,n,s){
if(t.list.length===0)return n?vy():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=_y(t,e.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal, thickness or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${Me(e.search)}
        @input=${a=>{e.search=a.target.value,e.shown=kl,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${yy(o.length,t,e.search)}</p>
    ${yl(o.slice(0,e.shown),t)}
    ${o.length>e.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{e.shown+=kl,s()}}>
              Show more
            </button>
          </div>`:h}
    ${e.search.trim()?h:wy(t)}
  </section>`}function wy(e){let t=e.list.filter(n=>n.archived);return t.length?ie(`Archived: ${t.length}`,yl(
t,e),{test:"archived",open:!1}):h}function _y({list:e,metalName:t},n){let s=n.toLowerCase().split(/\s+/).filter(
Boolean);return s.length===0?e.filter(o=>!o.archived):e.filter(o=>{let{code:a,title:r,note:l,metal:c,thickness_mm:d}=o,
p=`${c} ${t(c)} ${H(d)} ${E()}`,u=`${a} ${I(a)} ${r} ${l} ${p}`.toLowerCase();return s.every(m=>u.includes(m))})}
function yy(e,{list:t,where:n},s){let o=n==="device"?"on this device":"of the shop";return s.trim()===""?e===1?
`1 card ${o}`:`${e} cards ${o}`:e===0?`None of the ${t.length} cards matches.`:`${e} of ${t.length} cards`}function vy(){
return st().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${R("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var kl,fy,wp,gy,vp=f(()=>{_();pn();ue();ge();Re();De();ke();A();rt();$l();Te();$p();pt();le();bp();
vl();kl=40,fy=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`,wp=i`<p><a href="/guide" data-test="to-guide">Guide</a></p>`,gy=i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`});var qn,kp,xp,Cs,xl=f(()=>{qn=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],kp=["guaranteed minimum","typical","measured","common practice","from memory"],xp=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],Cs=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function Mt(e=""){let n=e.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(Sp.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...Tp}]}function Op(e){let t=Mt(e),{angle:n,face:s}=t[t.length-1];return Kn(
[...t,{...Tp,angle:n,face:s}])}var Sp,Tp,Mp,Kn,Ap,Lp,Ho,nr=f(()=>{Sp=["v","angle","radius","face","centre","co\
de","rating"],Tp={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},Mp=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];Kn=e=>e.map(t=>Sp.map(n=>t[n].replaceAll(";",",")).join("; ")).join(
`
`),Ap=(e,t,n)=>Kn(Mt(e).map((s,o)=>o===t?{...s,...n}:s));Lp=(e,t)=>Kn(Mt(e).filter((n,s)=>s!==t)),Ho={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var Pp,Cp,ky,xy,Sy,sr,zt,Bs,Sl,Ep,Np,Tl,Ml,Al,Rs,Ol=f(()=>{Pp="Empty is unknown: checks with it then say so.",
Cp={name:"rating_kn_per_m",label:"Rating",type:"rating",hint:"As stamped on the tool or in its maker's papers."},
ky={name:"segments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned tw\
ice twice."},xy=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],Sy=[{name:"con\
dition",label:"Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown",
"unknown"]]},{name:"condition_note",label:"Note on its condition",type:"note"}],sr={name:"name",label:"Name",type:"\
text",broad:!0},zt=e=>t=>t.shape===e,Bs=(e,t)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:e,
hint:`One point a line: x, y. x towards the back gauge, y up. ${t}`,when:zt("points")}),Sl=(...e)=>({name:"sha\
pe",label:"Shape",type:"pick",broad:!0,options:[...e,["points","by points or DXF"]]}),Ep={name:"turned",label:"\
Sits in the press",type:"yes",options:[["no","as drawn"],["yes","reversed"]]},Np={title:"Rating and pieces",part:"\
rest",fields:[Cp,ky]},Tl={title:"Place and condition",part:"rest",fields:[...xy,...Sy]},Ml=e=>e.shape!=="multi\
_v",Al=({die_holder_height_mm:e})=>!!e&&!/^0+([.,]0*)?( mm| in)?$/.test(String(e)),Rs={punches:[{title:"What i\
t is",part:"what",fields:[sr,{name:"angle_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_m\
m",label:"Tip radius",type:"length"}]},{title:"Outline",part:"outline",fields:[Sl(["straight","straight"],["go\
oseneck","gooseneck"]),{name:"height_mm",label:"Height, tip to seat",type:"length"},{name:"body_width_mm",label:"\
Width of the body",type:"length"},{name:"neck_relief_mm",label:"Throat behind the tip",type:"length",when:zt("\
gooseneck")},{name:"neck_width_mm",label:"Thickness of the neck",type:"length",when:zt("gooseneck"),blank:"as \
the body"},{name:"throat_top_mm",label:"Throat begins to close",type:"length",when:zt("gooseneck"),blank:"as h\
igh as it can",hint:"Above the tip."},Bs("punch","The tip is at 0, 0."),Ep]},Np,Tl],dies:[{title:"What it is",
part:"what",fields:[sr,{name:"v_opening_mm",label:"V opening",type:"length",hint:"Between the sharp corners of\
 face and flanks.",when:Ml},{name:"angle_deg",label:"Angle of the V",type:"number",unit:"°",when:Ml},{name:"s\
houlder_radius_mm",label:"Shoulder radius",type:"length",when:Ml}]},{title:"Outline",part:"outline",fields:[Sl(
["single_v","single V"],["multi_v","block with several V's"]),{name:"height_mm",label:"Height",type:"length"},
{name:"width_mm",label:"Width",type:"length"},Ep,{name:"openings",label:"The V's of the block",type:"openings",
when:zt("multi_v")},{name:"up",label:"V that is up",type:"number",hidden:!0,when:zt("multi_v")},Bs("die","The \
top face is at y 0, the V's middle at x 0.")]},Np,Tl],holders:[{title:"What it is",part:"what",fields:[sr,Cp]},
{title:"Outline",part:"outline",fields:[Sl(["block","plain block"],["clamps","clamps that stick out"]),{name:"\
height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the front",
type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to the ba\
ck",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:zt("clamps")},{name:"\
body_front_mm",label:"Body above, to the front",type:"length",when:zt("clamps")},{name:"body_back_mm",label:"B\
ody above, to the back",type:"length",when:zt("clamps")},Bs("holder","The punch's seat is at 0, 0.")]},Tl],press:[
{title:"The press",part:"what",fields:[sr,{name:"force_kn",label:"Full force",type:"force"},{name:"bed_length_\
mm",label:"Bed length",type:"length"}]},{title:"Room for the sheet and the tools",part:"rest",fields:[{name:"b\
etween_frames_mm",label:"Between the frames",type:"length",blank:"unknown"},{name:"open_height_mm",label:"Open\
 height",type:"length",blank:"unknown"},{name:"stroke_mm",label:"Stroke",type:"length",blank:"unknown"},{name:"\
throat_mm",label:"Throat",type:"length",blank:"unknown"}]},{title:"Ram and bed",part:"outline",fields:[{name:"\
ram_width_mm",label:"Ram width",type:"length",blank:"unknown"},{name:"ram_height_mm",label:"Ram height",type:"\
length",blank:"unknown"},{name:"bed_width_mm",label:"Bed width",type:"length",blank:"unknown"},{name:"bed_heig\
ht_mm",label:"Bed height",type:"length",blank:"unknown"},{name:"floor_below_die_mm",label:"Floor below the die",
type:"length",broad:!0,blank:"not looked at",hint:"From the face that the die stands on, down to the floor: lo\
ng parts hang that far."},{...Bs("ram","From the face that carries the holder. Empty: a plain beam."),name:"ra\
m_points_mm",label:"Ram by points",when:void 0,folded:!0},{...Bs("bed","From the face that carries the die or \
its holder. Empty: a plain beam."),name:"bed_points_mm",label:"Bed by points",when:void 0,folded:!0}]},{title:"\
Riser or die holder on the bed",part:"rest",fields:[{name:"die_holder_height_mm",label:"Height under the die",
type:"length",blank:"none",broad:!0,hint:"0 or empty: the die stands on the bed."},{name:"die_holder_width_mm",
label:"Width",type:"length",when:Al,blank:"by points"},{name:"die_holder_rating_kn_per_m",label:"Rating of the\
 die holder",type:"rating",hint:"As stamped on it or in its papers.",when:Al},{...Bs("die_holder","The die's s\
eat is at y 0, the bed's at minus the height. Empty: a plain block."),name:"die_holder_points_mm",label:"Die h\
older by points",when:Al,folded:!0}]},{title:"Ratings",part:"rest",fields:[{name:"force_per_m_limit_kn_per_m",
label:"Most force per length of bed",type:"rating",hint:"What bed and ram bear over a short length."},{name:"o\
ff_centre_mm",label:"Full force off the middle, up to",type:"length",blank:"unknown"},{name:"deflection_mm",label:"\
Gives way in the middle",type:"length",broad:!0,blank:"unknown",hint:"Bed and ram together, middle against end\
s, at full force over the whole bed: from its papers, or from three strips below."},{name:"bending_speed_mm_s",
label:"Bending speed",type:"speed",blank:"unknown"}]},{title:"How it is set",part:"rest",fields:[{name:"set_by",
label:"For a bend the press is set",type:"pick",broad:!0,blank:"not known: read as by angle",options:[["angle",
"by angle"],["depth","by depth"],["stop","by a stop"]]},{name:"angle_accuracy_deg",label:"It measures the angl\
e in the sheet, within ±",type:"number",unit:"°",broad:!0,blank:"unknown",hint:"Only where its papers say ho\
w near. Empty: what sheet, tools and zero leave open counts."}]},{title:"Back gauge",part:"rest",fields:[{name:"\
gauge_x_min_mm",label:"X from",type:"length",blank:"unknown"},{name:"gauge_x_max_mm",label:"X to",type:"length",
blank:"unknown"},{name:"gauge_r_min_mm",label:"R from",type:"length",blank:"unknown"},{name:"gauge_r_max_mm",label:"\
R to",type:"length",blank:"unknown"},{name:"finger_height_mm",label:"Finger height",type:"length",blank:"unkno\
wn"},{name:"finger_depth_mm",label:"Finger depth",type:"length",blank:"unknown"},{name:"gauge_repeatability_mm",
label:"Repeats within ±",type:"length",broad:!0,blank:"unknown",hint:"As in its papers.",counted_mm:.1}]},{title:"\
Holder in the ram, and notes",part:"rest",fields:[{name:"holder",label:"Holder",type:"pick",options:[],blank:"\
none",broad:!0},{name:"note",label:"Note",type:"note"}]}]}});function At(e=""){let t=$s(e);return t===""?null:Ty.test(t)?Number(t):t}function Oy(e){let{show:t}=qt.number;return{
v:q(e.v_opening_mm),angle:t(e.angle_deg),radius:q(e.shoulder_radius_mm),face:e.face,centre:q(e.centre_mm),code:e.
code??"",rating:qt.rating.show(e.rating_kn_per_m)}}function Ly({v:e,angle:t,radius:n,face:s,centre:o,code:a,rating:r}){
let l={v_opening_mm:or(e),angle_deg:At(t),shoulder_radius_mm:or(n),centre_mm:or(o)};return{...Object.fromEntries(
Object.entries(l).filter(([,d])=>d!==null)),face:s||"top",code:a||null,rating_kn_per_m:Bp(r)}}function rr(e,t){
return Object.fromEntries(Ot(e).map(({name:n,type:s})=>[n,qt[s].show(t[n])]))}function ir(e,t,n={}){let s=({name:r,
type:l})=>r in n&&qt[l].show(n[r])===t[r]?n[r]:qt[l].take(t[r]),a=Ot(e).filter(({when:r})=>!r||r(t)).map(r=>({
spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||Ey(r)).map(({spec:r,value:l})=>[
r.name,l]))}function Ip(e){let t={};for(let n of["name","note","gauge_family"])t[n]=qt.text.show(e[n]);for(let{
name:n}of Cs)t[n]=qt.number.show(e[n]);for(let{name:n}of qn){let s=e[n];for(let o of Ny)t[`${n}.${o}`]=qt.number.
show(s?.[o]);t[`${n}.standing`]||="typical"}return t}function Wp(e){let t={name:e.name.trim(),note:e.note.trim(),
gauge_family:e.gauge_family||null};for(let{name:n,needed:s}of Cs)(e[n]?.trim()||!s)&&(t[n]=At(e[n]));for(let{name:n,
needed:s}of qn){let o=["low","nominal","high","source"].some(a=>e[`${n}.${a}`]?.trim());t[n]=o||s?Py(e,n):null}
return t}function Py(e,t){let n=["low","nominal","high"].map(s=>[s,At(e[`${t}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(e[`${t}.source`]??"").trim(),standing:e[`${t}.standing`]}}function Dp(e,t){
let n={},s=[];for(let[o,a]of Object.entries(e)){let r=`.${o}.`,c=(r.includes(".openings.")?t.filter(p=>p==="op\
enings"):t).filter(p=>r.includes(`.${p}.`)).sort((p,u)=>u.length-p.length)[0],d=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n[o.slice(o.indexOf(c))]??=[]).push(...a):c?(n[c]??=[]).push(...d&&r.endsWith(`.${c}.${d}.`)?a.map(p=>`\
Number ${Number(d)+1}: ${p}`):a):s.push(...a.map(p=>`${o}: ${p}`))}return{byName:n,others:s}}var Ty,ar,or,My,Bp,
Ay,qt,Rp,Ot,Ey,Ny,Lt=f(()=>{xl();nr();Ol();A();Ty=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;ar=e=>(t="")=>t.trim()===
""?null:e(t),or=ar(e=>ee(e)),My=ar(e=>sn(e,ct())),Bp=ar(e=>sn(e,Qe())),Ay=(e="")=>e.split(/[\n;]/).map(t=>t.trim()).
filter(Boolean),qt={text:{show:e=>e??"",take:(e="")=>e.trim()},note:{show:e=>e??"",take:(e="")=>e.trim()},pick:{
show:e=>e??"",take:e=>e||null},yes:{show:e=>e?"yes":"no",take:e=>e==="yes"},length:{show:q,take:or},number:{show:e=>e==
null?"":String(e),take:At},force:{show:e=>Ii(e,ct()),take:My},rating:{show:e=>Ii(e,Qe()),take:Bp},speed:{show:q,
take:ar(e=>ee(e).replace(/ (mm|in)$/," $1/s"))},lengths:{show:e=>(e??[]).map(q).join(", "),take:(e="")=>e.split(
/[,;\n]/).filter(t=>t.trim()).map(t=>ee(t))},points:{show:e=>(e??[]).map(([t,n])=>`${q(t)}, ${q(n)}`).join(`
`),take:e=>Ay(e).map(t=>t.split(t.includes(",")?",":/\s+/).map(n=>ee(n)))},openings:{show:e=>Kn((e??[]).map(Oy)),
take:e=>Mt(e).map(Ly)},figure:{show:String,take:String}};Rp=e=>qt.points.show(e),Ot=e=>Rs[e].flatMap(t=>t.fields);
Ey=({type:e,blank:t})=>e==="rating"||t!==void 0,Ny=["low","nominal","high","source","standing"]});function lr(e){let t={...Cy};for(let n of El){let s=e.get(Ll[n])?.slice(0,60);if(s==null)continue;let o=` ${E()}`;
t[n]=Nl(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return t}function cr(e){let t=new URLSearchParams;for(let n of El){
let s=e[n].trim();s!==""&&t.set(Ll[n],Nl(n)?ee(s):s)}return t.toString()}function jo(e){return By.filter(t=>e[t].
trim()==="")}function Zn(e){let t={};for(let n of El){let s=e[n].trim();s!==""&&(t[n]=Nl(n)?ee(s):n==="include\
d_angle_deg"?At(s):s)}return t}var Cy,Ll,El,By,Nl,dr=f(()=>{Lt();A();Cy={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},Ll={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},El=Object.keys(Ll),By=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],Nl=e=>e.endsWith("_mm")});function Kt(e,t,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:d}=a;try{let p=await e(c,d);d.aborted||t({question:c,answer:p})}catch(p){d.aborted||
t({question:c,error:p})}}return{stop:r,ask(c,{now:d=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),d?0:s))}}}var Uo=f(
()=>{});function Et(e,t,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
h}>
    <span class="what">${Ja(e)}</span>
    <span class="value"
      >${t.text}${t.unit==="°"?"°":i`<span class="unit">${t.unit}</span>`}</span
    >
    ${n||o?i`<span class="band"
            >${n?i`${n[0].text} to ${n[1].text}${n[1].unit==="°"?"°":` ${n[1].unit}`}`:h}${o?i` <i class="origin" data-test="origin">${o}</i>`:
h}</span
          >`:h}
    ${s&&s!==h?i`<span class="band">${s}</span>`:h}
  </div>`}var hr=f(()=>{_();Qa()});function pr(e){return e.force_kn===null||e.force_kn===void 0?h:i`<b>${b(je(e))}</b>
    <small class="expected">expected ${b(wn(e))}</small>`}function Vo(e,t,n="force_kn",{note:s=h,origin:o=""}={}){
return Et(e,je(t,n),{note:i`expected ${b(wn(t,n))}${s}`,origin:o,test:n})}var je,wn,Fp,ut=f(()=>{_();A();hr();
je=(e,t="force_kn")=>Fp(t)(e[`${t}_high`],{up:!0}),wn=(e,t="force_kn")=>Fp(t)(e[t]),Fp=e=>e==="force_kn"?pe:Pe});var Pl,Hp=f(()=>{Pl=class extends HTMLElement{#e=new ResizeObserver(()=>this.measure());#t=new MutationObserver(
()=>this.measure());connectedCallback(){this.#e.observe(this),this.#t.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#e.disconnect(),this.#t.disconnect()}measure(){let t=this.
querySelector("svg"),{width:n,height:s}=t?.viewBox.baseVal??{width:0,height:0};if(!t||!n||!t.clientWidth||!t.clientHeight)
return;let o=Math.max(n/t.clientWidth,s/t.clientHeight);t.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",Pl)});function Cl({distance_mm:e,tool:t}){let n=b(w(Math.abs(e)));return e<=0?[n,`into ${t}`]:[n,`to ${t}`]}function jp(e,{
left:t,right:n,bottom:s,top:o}){let[a,r]=Yn(e),[[l,c],[d,p]]=[e.on_sheet,e.on_tool],u=a-t>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[g,$]=Cl(e);return y`<g class="near ${e.distance_mm<=0?"hit":""}" data-test="near" data-tool=${e.tool}>
    <path class="near-line" d="M${l} ${-c}L${d} ${-p}" />
    ${ur(e,n-t)?h:[e.on_sheet,e.on_tool].map(Ry)}
    <g transform="translate(${a} ${-r})">
      ${ur(e,n-t)?y`<circle class="px near-ring" r="17" />`:h}
      <path class="px near-leader" d="M${u*12} ${m*12}L${u*34} ${m*30}H${u*44}" />
      <text class="px label near-label" x=${u*50} y=${m*30-2}
        text-anchor=${u>0?"start":"end"}>${g}<tspan x=${u*50}
          dy="1.1em">${$}</tspan></text>
    </g>
  </g>`}var Yn,ur,Ry,Bl=f(()=>{_();A();Yn=({on_sheet:[e,t],on_tool:[n,s]})=>[(e+n)/2,(t+s)/2];ur=(e,t)=>Math.abs(
e.distance_mm)<.1*t,Ry=([e,t])=>y`<g transform="translate(${e} ${-t})"><circle class="px near-dot" r="4" /></g>`});function Nt(e,{pose:t,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:d=!1,room:p=null}){
let u=s??(e.bounds[2]-e.bounds[0])/6,m=n?Wy(u,d?c:null):Dy(e,u,c),g=p&&!n?Fy(m,p,u):m,{left:$,bottom:v,right:T,
top:B}=g,P=l??Iy(e,t==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${t}
      viewBox="${$} ${-B} ${T-$} ${B-v}"
      preserveAspectRatio="xMidYMid meet">
      ${[e.bed,e.die].map(Le).map(Up)}
      <g transform="translate(0 ${P.down})">${P.tools.map(Up)}</g>
      ${e.die.length?y`<path class="axis" d="M0 ${-B-999}V999" />`:h}
      <path class="gauge" transform="translate(${P.back} 0)" d=${P.gauge} />
      <path class="sheet" data-test="sheet" d=${P.sheet} />
      ${t==="before"&&e.gauge_point?Hy(e.gauge_point,o,g):h}
      ${t==="after"&&a?jy(e.after.sheet,a,u,g):h}
      ${d&&c?jp(c,g):h}
    </svg>
  </drawing-frame>`}function Iy(e,t){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=e[t];return{sheet:Le(n),tools:[
s,o,a].map(Le),down:0,gauge:Le(r),back:0}}function Wy(e,t){let[n,s]=t?Yn(t):[0,.1*e];return{left:n-1.5*e,bottom:s-
e,right:n+1.5*e,top:s+e}}function Dy(e,t,n){let[s,o,a,r]=at([e.before.sheet,e.after.sheet]),l=14*t,c=e.gauge_point?
e.gauge_point[0]+1.5*t:0,d={left:Math.max(Math.min(s-.4*t,-1.4*t),-l),right:Math.min(Math.max(a+.4*t,c,1.4*t),
Math.max(l,c))},p=d.right-d.left,u={...d,bottom:Math.max(Math.min(o-.3*t,-1.1*t,-.17*p),-l/2),top:Math.min(Math.
max(r+.3*t,1.6*t),8*t)},m=n?Rl(u,Yn(n),Math.max(t,.1*p)):u;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function Fy(e,{
bounds:t,share:n},s){let o=Rl(Rl(e,[t[0],t[1]],s),[t[2],t[3]],s),a=r=>e[r]+(o[r]-e[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function Hy([e,t],n,{bottom:s}){let o=s*.45;return y`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${e} ${-t}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${e}" />
    ${Vp(0,o,180)}${Vp(e,o,0)}
    <g transform="translate(${e} ${-t})"><circle class="px touch" r="5" /></g>
    ${Gp(e/2,o,n,17)}
  </g>`}function jy(e,t,n,{left:s,right:o}){let a=Math.min(...e.filter(([p])=>Math.abs(p)<n/2).map(([,p])=>p)),
r=Math.max(1.25*n,.14*(o-s)),l=t/2*(Math.PI/180),[c,d]=[r*Math.sin(l),a+r*Math.cos(l)];return y`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-d}A${r} ${r} 0 0 1 ${c} ${-d}" />
    ${Gp(0,a+r,b(S(t)))}
  </g>`}var Up,Rl,Vp,Gp,Go=f(()=>{_();A();Hp();Bl();bn();Up=e=>e?y`<path class="tool" d=${e} />`:h;Rl=({left:e,
right:t,bottom:n,top:s},[o,a],r)=>({left:Math.min(e,o-r),right:Math.max(t,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});Vp=(e,t,n)=>y`<g transform="translate(${e} ${-t})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,Gp=(e,t,n,s=0)=>y`<g transform="translate(${e} ${-t})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function zp(e,t){let n=[...e].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>t(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die}
              <small>V ${Q(s.v_over_t,1)} × thickness</small></span
            >
            ${s.level==="ok"?h:x(s.level)}
            <span class="facts"> ${Uy(s).map(o=>Vy(...o))} </span>
            <span class="more">${Se(s.reason_said)} ${fn(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var Uy,Vy,qp=f(()=>{_();ge();A();ut();V();Uy=e=>[["allow for",b(je(e,"force_kn_per_m")),`expected ${wn(
e,"force_kn_per_m").text}`],["radius",b(w(e.inside_radius_mm))],["flange from",b(w(e.min_flange_mm))],["set",b(
S(e.set_angle_deg))]],Vy=(e,t,n)=>i`<span class="fact"
    ><small>${e}</small>
    <span class="amount">${t}</span
    >${n?i` <small class="beside">${n}</small>`:h}</span
  >`});function Is(e,t=""){return e?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${Il(e)}. If it is too open, make a second hit.
    <span class="drawn">${t}</span>
  </p>`:h}var mr,Il,Kp,fr,Xn=f(()=>{_();A();mr=e=>S(e).text.replace(/\.0$/,""),Il=e=>`comes out ${mr(e.comes_out_deg_low)}\
 to ${mr(e.comes_out_deg_high)}°`,Kp=e=>`${mr(e.comes_out_deg_low)}–${mr(e.comes_out_deg_high)}°`,fr=(e,{set_angle_deg:t,
firstHit:n})=>n?e.expected_set_angle_deg:t});function gr(e){return Wl(e,t=>t.level==="stop"||t.level==="caution")}function Wl(e,t){let n=e.filter(o=>!Zp(o)&&
t(o));if(n.length===0)return h;let s=n.some(o=>o.level==="stop");return i`<section
    class="panel urgent ${s?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${Ns(n)}
  </section>`}function Ws(e){let t=e.filter(o=>o.level==="unknown"),n=e.filter(o=>Ae(o)==="note"),s=e.filter(o=>Ae(
o)==="ok");return i`${t.length?i`<section>
          <h2>Not known</h2>
          ${Ns(t)}
        </section>`:h}
  ${n.length?i`<section data-test="notes">
          ${ie("How to do it",Ns(n),{test:"notes-fold"})}
        </section>`:h}
  ${s.length?ie(`Passed checks: ${s.length}`,He(s),{test:"fine",open:!1}):h}`}function _n(e){let t=e.filter(Zp);
if(t.length===0)return h;let n=i`<ul>
    ${t.map(s=>i`<li>
          <b>${qe(s.template,s.numbers)}</b>
          ${qe(Gn(s),s.numbers)}
        </li>`)}
  </ul>`;return i`<section class="every-time">
    ${ie(i`${x("caution")} At the press, every time`,n,{test:"every-time"})}
  </section>`}var Zp,Yp,Xp,zo=f(()=>{_();A();V();pt();Zp=e=>e.code.startsWith("general-");Yp=e=>Wl(e,t=>t.level===
"stop"),Xp=e=>Wl(e,t=>t.level==="caution")});function $r(e){let[t,n]=[e?.die?.trim(),e?.punch?.trim()];return{...t?{die:t}:{},...n?{punch:n}:{}}}function Dl(e){
let t=$r(e);return Object.keys(t).length?{tools:t}:{}}function Zt(e){let{die:t,punch:n}=$r(e);return[t&&`die ${t}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var qo,Jn=f(()=>{qo=e=>({die:e?.die??"",punch:e?.punch??""})});function W(e,t){return Object.entries(e).filter(([n])=>Fl(n,t)).flatMap(([,n])=>n)}function Jp(e,t){return Object.
entries(e).filter(([n])=>!t.some(s=>Fl(n,s))).flatMap(([,n])=>n)}function Qp(e,t,n){let s=Object.entries(e);return s.
length===0?h:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>Fl(o,c)).sort((c,d)=>d.length-c.length)[0],l=r?Hl(t(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>Ko(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function Hl(e,t){let n=t.join(" ");return n.startsWith(e)?n:`${e}: ${n}`}function jl(e){for(let t=e?.
closest("details");t;t=t.parentElement?.closest("details"))t.open=!0}function Ko(e){let t=document.getElementById(
e);jl(t),t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"center"})}var Fl,mt=f(()=>{_();Fl=(e,t)=>e===t||
e.startsWith(`${t}.`)});function Vl(e,t,n,s){let o=(a,r)=>O({next:!0,name:`${e}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:t[a]??"",wrong:W(n,`${e}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function tu(e,{dies:t,punches:n},s,o){
let a=t.flatMap(Gl).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${Zt(e.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${Vl("tools",e.tools??{},s,r=>o({...e,tools:{die:"",punch:"",...e.tools,...r}}))}
    </details>
    ${eu("codes-of-dies",a)}
    ${eu("codes-of-punches",n.map(({code:r})=>r))}`}function Ds({tools_reason:e,tools_reason_said:t}){let n=Fe(
{...t,words:e});return n?i`<p class="tools-reason" data-test="tools-reason">${n}</p>`:h}var Ul,Gl,eu,Qn=f(()=>{
_();Jn();V();G();mt();Ul=["tools.die","tools.punch"];Gl=e=>e.shape==="multi_v"?e.openings:[e];eu=(e,t)=>i`<datalist id=${e}>${t.
map(n=>i`<option value=${n}></option>`)}</datalist>`});function br(e){let t=(e??"").split(":")[0].trim();return Gy.includes(t)?t:""}function Zo(e){if(!e)return"";let t=new Map;
for(let[n,s]of zy){let o=e[n];o&&t.set(o,[...t.get(o)??[],s])}return[...t].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var Gy,zy,wr=f(()=>{Gy=["model","handbook","your test bends"];zy=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function su(e){return i`<ul class="ratings" data-test="ratings">
    ${e.map(qy)}
  </ul>`}function qy(e){let{what:t,share_percent:n,level:s}=e;return i`<li class="rating" data-level=${s} data-what=${t}>
    <span class="rating-of"><b>${au[t]??t}</b>${ou(e)}</span>
    ${x(s,n===null?"Unknown":`${Q(n,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${n===null?"open":""}" d="M0 9H250" />
      ${n===null?h:Zy(n)}
    </svg>
    <span class="rating-words">${Ky(e)}</span>
  </li>`}function Ky({load_kn:e,load_kn_per_m:t,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=t===void 0?
b(pe(e)):b(Pe(t));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=t===void 0?
b(pe(n)):b(Pe(s));return`${a} of ${r}`}function Zy(e){let t=Math.min(e/100*nu,250);return y`<path class="bar-load" d="M0 9H${t}" /><path class="bar-most" d="M${nu} 0V18" />`}
var nu,ou,zl,au,ru=f(()=>{_();A();V();nu=200;ou=({what:e,name:t})=>e.startsWith("press")||!t?"":` ${t}`,zl=e=>`${au[e.
what]??e.what}${ou(e)}`,au={press:"Press","press per metre":"Bed and ram, per length",punch:"Punch",die:"Die",
holder:"Holder","die holder":"Die holder"}});function Fs(e,t,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(t-e)/o,c=(r?.find(v=>l/v<=a)??Yy(l,a))*o,d=Math.
floor(e/c+1e-9)*c,p=Math.ceil(t/c-1e-9)*c,u=v=>Xy(n+(v-d)/(p-d)*(s-n)),m=Math.round((p-d)/c),g=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),$=Array.from({length:m+1},(v,T)=>d+T*c).map(v=>({at:u(v),text:(v/o).toFixed(g).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:u,marks:$}}function Yy(e,t){let n=(e>0?e:1)/t,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function _r(e){return e.length?`M${e.
map(([t,n])=>`${t} ${n}`).join("L")}`:""}var Xy,ql=f(()=>{Xy=e=>Math.round(e*100)/100});function iu({curve:e,set:t,peak:n,limits:s}){let o=Math.max(...e.map(g=>g.force_kn_high)),a=s.filter(g=>g.limit_kn!==
null).sort((g,$)=>Number($.limit_kn)-Number(g.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:g})=>Number(
g)<=(g===r?Qy:Jy)*o),c=du(e),d=Fs(0,Math.max(o,...l.map(g=>Number(g.limit_kn))),{from:Ue.bottom,to:Ue.top+28,size:ct().
size}),p=(g,$)=>[c.at(g.punch_depth_mm),d.at(g[$])],u=[...e.map(g=>p(g,"force_kn_high")),...e.map(g=>p(g,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${b(pe(n.force_kn))}, at a depth o\
f ${b(cu(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${yr} ${vr}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${hu(c,d,ct().unit)}
    <path class="band" d="${_r(u)}Z" />
    ${t.punch_depth_mm===null?h:pu(c.at(t.punch_depth_mm))} ${ev(l,d)}
    ${nv(a.filter(g=>!l.includes(g)))}
    <path class="curve" d=${_r(e.map(g=>p(g,"force_kn")))} data-test="force-curve" />
    ${n?ov(c.at(n.punch_depth_mm),d.at(n.force_kn)):h}
  </svg>`}function lu({curve:e,set:t,trials:n}){let s=n.filter(u=>u.punch_depth_mm!==null),o=du(e,s.map(u=>Number(
u.punch_depth_mm))),a=[...e.map(u=>u.loaded_angle_deg),...s.map(u=>u.measured_deg)],r=Fs(Math.min(...a),180,{from:Ue.
bottom,to:Ue.top,steps:[5,10,15,30,45]}),l=u=>_r(e.map(m=>[o.at(m.punch_depth_mm),r.at(m[u])])),c=t.set_angle_deg===
null?null:{x:o.at(Number(t.punch_depth_mm)),y:r.at(t.set_angle_deg)},p=`Angle over punch depth. ${c?`${b(S(t.set_angle_deg))}\
 under load at a depth of ${b(cu(Number(t.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} results drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${yr} ${vr}"
    role="img"
    aria-label=${p}
    data-test="stroke-angle">
    ${hu(o,r,"°")} ${c?pu(c.x):h}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?y`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:h}
    ${s.map(u=>sv(o.at(Number(u.punch_depth_mm)),r.at(u.measured_deg),u))}
  </svg>`}function du(e,t=[]){let n=Math.max(...e.map(s=>s.punch_depth_mm),...t);return Fs(0,n,{from:Ue.left,to:Ue.
right,size:E()==="in"?ve:1,most:6})}function hu(e,t,n){let{left:s,right:o,top:a,bottom:r}=Ue,l=n==="°",c=t.marks.
map(({at:u,text:m})=>y`<path class="faint" d="M${s} ${u}H${o}"/>
      <text x=${s-6} y=${u+6} text-anchor="end"
        font-size=${Yt}>${m}${l?"°":""}</text>`),d=e.marks.map(({at:u,text:m})=>y`<path class="faint" d="M${u} ${r}v6"/>
      <text x=${Math.min(u,yr-m.length*Yt*.3)} y=${r+24} text-anchor="middle"
        font-size=${Yt}>${m}</text>`),p=y`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${Yt}>${n}</text>`;return y`
    ${c}
    ${d}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${vr-8} text-anchor="end"
      font-size=${Yt}>punch depth, ${E()}</text>
    ${l?h:p}`}function ev(e,t){let n=-1/0;return tv(e).map(({limit_kn:s,names:o})=>{let a=t.at(s);return n=Math.
max(a-6,n+Yt+2),y`<path class="limit" d="M${Ue.left} ${a}H${Ue.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${Ue.left+6} y=${n}
        font-size=${Yt}>${o.join(", ")} ${b(pe(s))}</text>`})}function tv(e){let t=new Map;for(let n of e)t.set(
Number(n.limit_kn),[...t.get(Number(n.limit_kn))??[],kr(n)]);return[...t].map(([n,s])=>({limit_kn:n,names:s}))}
function nv(e){if(!e.length)return h;let t=e.length>1?`, ${e.length-1} more`:"";return y`<text class="limit-word" x=${Ue.
right} y="18" text-anchor="end" font-size=${Yt}
      data-test="limit-far">↑ ${Kl(e[e.length-1])}${t}</text>`}function kr({what:e,name:t}){return e==="pres\
s per metre"?"Bed and ram":e==="press"||!t?e[0].toUpperCase()+e.slice(1):`${e[0].toUpperCase()}${e.slice(1)} ${t}`}
function sv(e,t,{id:n,outlier:s}){return s?y`<path class="result-odd" d="M${e-6} ${t-6}l12 12M${e+6} ${t-6}l-12 12"
        data-test="result-point" data-id=${n} data-odd="true"/>`:y`<circle class="result-point" cx=${e} cy=${t} r="6" data-test="result-point" data-id=${n}/>`}
var yr,vr,Ue,Yt,Jy,Qy,cu,pu,Kl,ov,uu=f(()=>{_();A();ql();yr=400,vr=320,Ue={left:58,right:yr-14,top:20,bottom:vr-
54},Yt=18,Jy=3,Qy=5;cu=e=>w(e,{digits:2});pu=e=>y`<path class="set-line" d="M${e} ${Ue.top}V${Ue.bottom}"/>
  <text class="set-word" x=${e-5} y=${Ue.bottom-6} text-anchor="end" font-size=${Yt}>set</text>`;Kl=({what:e,name:t,
limit_kn:n})=>`${kr({what:e,name:t})} ${b(pe(n))}`;ov=(e,t)=>y`<circle class="peak" cx=${e} cy=${t} r="6" data-test="peak-mark"/>`});function gu({stroke:e,error:t,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?av(e,t):h}
  </details>`}function av(e,t){return t?i`<p class="hint" data-test="stroke-missing">
      ${t instanceof L?t.message:"The stroke could not be fetched."}
    </p>`:e?e.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${iu(e)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${rv(e)}</p>
        ${iv(e)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${lu(e)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${mu("curve")} under load</li>
          <li>${mu("curve let-go")} released</li>
          ${e.trials.length?i`<li>${dv} trials, released</li>`:h}
        </ul>
        <p data-test="stroke-set">${lv(e)}</p>
        ${cv(e)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function rv({peak:e,work_j:t}){if(!e)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${b(
je(e))}.</b> The peak is expected at
    ${b(pe(e.force_kn))}, ${fu(e.punch_depth_mm)} deep, ${b(S(e.loaded_angle_deg))}
    under load.`;return t?i`${n} Work in the stroke ${Q(t,0)} J.`:n}function iv({limits:e}){let t=e.filter(s=>s.
limit_kn!==null),n=e.filter(s=>s.limit_kn===null);return i`${t.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${t.map(Kl).join(", ")}. The shaded band is what the force may be.
        </p>`:h}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(kr).join(", ")}. Read it off the plate.
        </p>`:h}`}function lv({set:e}){return e.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${b(S(e.set_angle_deg))} under load at a depth of ${fu(e.punch_depth_mm)}\
.`}function cv({trials:e}){let t=e.filter(n=>n.punch_depth_mm===null).length;return t?i`<p class="hint">
        ${t===1?"One result has":`${t} results have`} no depth written down and can't be drawn.
      </p>`:h}var fu,mu,dv,$u=f(()=>{_();uu();F();A();ut();fu=e=>b(w(e,{digits:2}));mu=e=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${e} d="M2 8H38" />
  </svg>`,dv=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="result-point" cx="20" cy="8" r="6" />
</svg>`});function Xt(e,t,n,s,o=wu(e,t,s)){let[a,r]=[e[`${t}_low`],e[`${t}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return Et(n,s(e[t]),{band:l?[s(a),s(r)]:null,note:o,origin:br(e.sources?.[t]),test:t})}function wu({
handbook:e,sources:t,...n},s,o){let a=e?.[s];if(typeof a!="number"||br(t?.[s])==="handbook")return h;let r=o(a);
if(r.text===o(n[s]).text)return h;let[l,c]=[n[`${s}_low`],n[`${s}_high`]],d=a<l||a>c;return i`<span class=${d?
"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${b(r)}</span
  >`}function _u(e,t,n){return i`${Yp(e.checks)}
    <section class="bend-first" aria-label="What to set" data-test="first">
      ${hv(e,t)} ${pv(e)}
    </section>
    ${Xp(e.checks)} ${Ws(e.checks)}
    <div class="columns bend-columns">
      <div>${gv(e)} ${bv(e)}</div>
      <div>${wv(e,n)} ${gu(n.stroke)} ${_v(e,n)}</div>
    </div>
    ${yv(e)} ${_n(e.checks)}`}function hv(e,{punches:t,dies:n}){let s=n.find(({code:a})=>a===e.die),o=t.find(({
code:a})=>a===e.punch);return!e.die&&!e.punch?i`<p class="panel" data-test="no-tools">
      Counted with plain stand-in tools: a V of ${b(w(e.v_opening_mm))} and a punch with a tip
      of ${b(w(e.punch_radius_mm))}.
      ${t.length&&n.length?h:R(ne.punches,i`<a href="/shop/${n.length?"punches":"dies"}/+" data-test="to-first-tools"
                >Enter your own tools</a
              >`)}
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:e.die,tool:s},{kind:"punch",code:e.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"
              ><b>${r??"none"}</b> <span>${l?.name??""}</span></span
            >
            <span class="where">${l?fn(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:h}
          </li>`)}
    </ul>
    ${Ds(e)}`}function pv(e){return i`<div class="figures">${e.first_hit?fv(e):mv(e)}</div>
    <div class="figures three">
      ${Vo("Allow for",e,"force_kn")}
      ${Et("Flange from",w(e.min_flange_mm),{test:"min_flange_mm"})}
      ${Xt(e,"bend_deduction_mm","Deduction",es)}
    </div>
    ${uv(e)} ${Is(e.first_hit)}`}function uv({ratings:e}){let t=e?.find(({share_percent:s})=>s===null),n=(e??[]).
reduce((s,o)=>(o.share_percent??0)>(s?.share_percent??0)?o:s,null);return i`<p class="weakest" data-test="weakest">
    ${t?i`<b>${zl(t)}: rating unknown.</b>`:h}
    ${n?i`${zl(n)}: ${Q(n.share_percent??0,0)} % of the rating.`:h}
  </p>`}function gv(e){return ie("Force against the ratings",i`<div class="figures">
        ${Vo("Per length, allow for",e,"force_kn_per_m")}
        ${Et("Expected",pe(e.force_kn),{note:$v(e),origin:br(e.sources?.force_kn),test:"force_expected"})}
      </div>
      ${e.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
              ${su(e.ratings)}`:h}`)}function $v(e){let t=e.force_kn_low,n=wu(e,"force_kn",pe);return i`${typeof t==
"number"?`at least ${b(pe(t))}`:h}${n===h?h:i` <br />${n}`}`}function bv(e){return ie("What comes out",i`<div class="figures">
      ${Xt(e,"inside_radius_mm","Inside radius",es)}
      ${Xt(e,"springback_deg","Springback",S)}
      ${Xt(e,"bend_allowance_mm","Bend allowance",es)}
      ${Xt(e,"k_factor","K-factor",yu)}
    </div>`)}function wv(e,{pose:t,show:n}){if(!e.drawing)return h;let s=b(S(e.set_angle_deg)),o=t==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return ie("Drawn to scale",i`<section class="bend-drawing" aria-label="The bend in its tools">
      ${Y({name:"pose-shown",label:"Shown",value:t,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
      ${Nt(e.drawing,{pose:t,close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,words:`The sheet i\
n die and punch, ${o}`})}
    </section>`,{test:"drawing"})}function _v(e,{use:t}){return e.options?.length?ie(`Dies of the crib: ${e.options.
length}`,i`<p class="hint">Tap one to use it. Each with the reason for its rank.</p>
      ${zp(e.options,t)}`,{test:"dies"}):h}function yv({opinions:e,sources:t}){return e?ie("Second opinions",i`<div class="opinions">
      ${e.force?.length?bu("Force by published relations",e.force,[["force_kn","Force",pe],["force_kn_per_m","\
Per length",Pe]]):h}
      ${e.allowance?.length?bu("Bend allowance by published relations",e.allowance,[["bend_allowance_mm","Allo\
wance",es],["k_factor","K",yu]]):h}
      ${t?i`<details>
              <summary>Where each figure comes from</summary>
              <dl class="sources">
                ${Object.entries(t).map(([n,s])=>i`<dt>${vv[n]??n}</dt>
                      <dd>${s}</dd>`)}
              </dl>
            </details>`:h}
    </div>`,{open:!1}):h}function bu(e,t,n){return i`<div class="table">
    <table>
      <caption>
        ${e}
      </caption>
      <thead>
        <tr>
          <th scope="col">By</th>
          ${n.map(([,s])=>i`<th scope="col" class="number">${s}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${t.map(s=>i`<tr>
              <th scope="row">${s.name}<small>${s.source}</small></th>
              ${n.map(([o,,a])=>i`<td class="number">${b(a(s[o]))}</td>`)}
            </tr>`)}
      </tbody>
    </table>
  </div>`}var es,mv,fv,yu,vv,vu=f(()=>{_();Go();ge();A();ut();qp();hr();Xn();zo();pt();le();G();Qn();wr();ru();
$u();es=e=>w(e,{digits:2});mv=e=>i`
  ${Xt(e,"set_angle_deg","Set angle",S)}
  ${Xt(e,"punch_depth_mm","Depth",es)}
`,fv=e=>i`
  ${Xt(e,"set_angle_deg","First hit: set angle",S,`then about ${b(S(e.expected_set_angle_deg))}`)}
  ${Xt(e,"punch_depth_mm","First hit: depth",es,`then about ${b(es(e.expected_punch_depth_mm))}`)}
`;yu=e=>({text:e==null?"–":Q(e,2),unit:""});vv={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var xu={};se(xu,{show:()=>Sv});async function Sv(e){e.title("Check a bend"),e.render(Oe("Looking into the crib\
…"));let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async P=>(await de(P,e.signal)).items)),o={
dies:n,punches:s},a=lr(e.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=t[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:Ls()},d=Kt(async(P,k)=>(await M("POST","/bend",
{body:P,signal:k})).body,({answer:P=null,error:k=null})=>{Object.assign(l,{answer:P,error:k,busy:!1}),Object.assign(
c,{stroke:null,error:null}),u(),$()},e.signal),p=Kt(async(P,k)=>(await M("POST","/stroke",{body:P,signal:k})).
body,({answer:P=null,error:k=null})=>{Object.assign(c,{stroke:P,error:k}),$()},e.signal);function u(){p.stop(),
c.open&&l.answer&&!c.stroke&&p.ask(Zn(a),{now:!0})}function m(P){history.replaceState(null,"",`/bend?${cr(a)}`),
l.busy=jo(a).length===0,l.busy?d.ask(Zn(a),P):(d.stop(),Object.assign(l,{answer:null,error:null})),$()}function g(P,k){
Object.assign(a,P),m(k)}function $(){let P=l.error instanceof L?l.error.errors:{};e.render(i`<h1 class="bend-title">Check a bend</h1>
        <div
          class="desk"
          aria-busy=${l.busy?"true":"false"}
          data-test="bend"
          data-busy=${String(l.busy)}>
          <form
            class="panel desk-form"
            aria-label="The bend"
            @submit=${k=>k.preventDefault()}>
            ${Tv(a,{metals:t,...o,openTools:r,answer:l.answer},P,g)}
          </form>
          <p class="unseen" role="status">${v()}</p>
          <div class="desk-answer" data-test="answer">${T(P)}</div>
        </div>`),l.busy||e.ready()}function v(){let{answer:P}=l;if(!P||l.busy)return"";let k=P.worst==="ok"?"":
`${P.worst}. `,N=P.set_angle_deg===null?"nothing to set":`set ${b(S(P.set_angle_deg))}`;return`${k}Die ${P.die??
"none"}, allow for ${b(je(P))}, ${N}.`}function T(P){let k=jo(a);return k.length?xe("One bend, all its figures",
i`Still to type: ${k.map(N=>xv[N]).join(", ")}.`):l.error?B(P):l.answer?_u(l.answer,o,{pose:l.pose,show:N=>{l.
pose=N,$()},use:N=>g({die:a.die===N?"":N},{now:!0}),stroke:{...c,toggled:N=>{c.open!==N&&(c.open=N,u(),$())}}}):
Oe("Working it out…")}function B(P){if(!(l.error instanceof L)||l.error.status>=500)return i`${hn(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let k=Jp(P,kv),N=Object.keys(P).length>k.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...N,...k].map(te=>i`<p>${te}</p>`)}
    </div>`}m({now:!0})}function Tv(e,{metals:t,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(u,m,g={})=>O(
{name:u,label:m,value:e[u],wrong:W(r,u),change:$=>l({[u]:$}),...g}),d=(u,m,g)=>Z({name:u,label:m,value:e[u],options:g,
wrong:W(r,u),change:$=>l({[u]:$},{now:!0})}),p=e.metal&&!t.some(({code:u})=>u===e.metal);return i`${d("metal",
"Metal",[...p?[[e.metal,`${e.metal} (not in the shop)`]]:[],...Av(t)])}
    <div class="fields three">
      ${c("thickness_mm","Thickness",{unit:E(),hint:a?Mv(a,e.thickness_mm):"3, 1/8 in, 16 ga"})}
      ${c("bend_length_mm","Length",{unit:E()})}
      ${c("included_angle_deg","Angle",{unit:"°",keys:"decimal",hint:a?"":"90 is square"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${d("die","Die",[["","Best of the crib"],...ku(e.die,n)])}
      ${d("punch","Punch",[["","Best of the crib"],...ku(e.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:E()})}
    </details>
    ${e.die||e.punch||e.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:h}`}function Mv({thickness_mm:e,thickness_gauge:t},n){return[/ga/i.test(n)?b(w(e,{digits:2})):
"",t??""].filter(Boolean).join(", ")}function ku(e,t){let n=t.map(s=>[s.code,`${s.code} · ${s.name}`]);return e&&
!t.some(s=>s.code===e)?[[e,`${e} (not in the crib)`],...n]:n}var kv,xv,Av,Su=f(()=>{_();F();dr();ge();Uo();A();
ut();vu();G();pt();Ce();mt();kv=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","punch","p\
unch_radius_mm"],xv={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"angle"};
Av=e=>e.map(({code:t,name:n})=>[t,n])});function Tu(e){let t,n=async()=>{document.visibilityState!=="visible"||e.aborted||(t=await navigator.wakeLock?.
request("screen").catch(()=>{}),e.aborted&&t?.release())};document.addEventListener("visibilitychange",n,{signal:e}),
e.addEventListener("abort",()=>t?.release()),n()}var Zl,Yl=f(()=>{_();Zl=()=>"wakeLock"in navigator?h:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function ts(e){let{body:t}=await M("GET","/press-screens",{signal:e,timeout:3e3});return t.press_screens}
async function Ou(e){let{body:t}=await M("PUT",`/press-screens/${encodeURIComponent(e)}`,{body:{code:null,step:0}});
return t}async function Lu(e){await M("DELETE",`/press-screens/${encodeURIComponent(e)}`)}function Xl(){let e=Pu(
Mu);return typeof e?.name=="string"?{code:null,step:0,etag:null,...e}:null}function Pu(e){try{return JSON.parse(
localStorage.getItem(e)??"null")}catch{return null}}function Cu(e,t){try{t===null?localStorage.removeItem(e):localStorage.
setItem(e,JSON.stringify(t))}catch{}}var Mu,Au,ns,Jt,Jl,Eu,Nu,yn=f(()=>{F();Mu="flangebook.bench.here",Au="fla\
ngebook.bench.last";ns=e=>/^\d/.test(e)?`press screen ${e}`:e,Jt=e=>/^\d/.test(e)?`Press screen ${e}`:e;Jl=e=>Cu(
Mu,e),Eu=()=>String(Pu(Au)??""),Nu=e=>Cu(Au,e)});function xr(e,t,n,s){let o=`/press-screens/${encodeURIComponent(e)}`,a={answers:null,gone:!1,waits:!1,late:!1,
refused:""},r=null,l=t,c=0,d=!1,p;function u(k){let N={...a,waits:r!==null,...k},te=Object.keys(N).every(Ne=>N[Ne]===
a[Ne]);a=N,!te&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(p),d||s.aborted)return;d=!0;try{await(r&&
!g()?$():v()),T()}catch(N){s.aborted||B(N)}d=!1;let k=r!==null&&c===0;s.aborted||(p=setTimeout(m,k?0:Math.min(
Lv,Ov*1.5**c)))}function g(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,u({late:!0}),!0)}async function $(){
let k=r;if(!k)return;let N=C().name?{by:C().name}:{};try{l=(await M("PUT",o,{body:{...k.place,...N},etag:k.whatever?
null:l,signal:s,timeout:Bu})).etag,r===k&&(r=null),n.sent?.(k.place,l??"",r!==null),u({refused:"",late:!1})}catch(te){
if(!(te instanceof L)||te.status>=500)throw te;r=null,l=null,u({refused:te.status===412?"":te.message}),await v()}}
async function v(){let k=r,{status:N,body:te,etag:Ne}=await M("GET",o,{seen:l,signal:s,timeout:Bu});s.aborted||
r!==k||N===304||(l=Ne,u({late:!1}),n.heard(te,Ne??""))}function T(){let k=a.answers===!1;c=0,u({answers:!0,gone:!1}),
cn(!0),k&&U()}function B(k){c+=1,k instanceof L&&k.status===404?u({answers:!0,gone:!0}):k instanceof L&&k.status<
500?u({answers:!0,refused:k.message}):u({answers:!1}),k instanceof j?cn(!1,k):k instanceof L||console.error(k)}
let P=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",P,{signal:s}),
addEventListener("online",P,{signal:s}),s.addEventListener("abort",()=>clearTimeout(p)),m(),{move(k,{whatever:N=!1}={}){
r={place:k,at:Date.now(),whatever:N},u({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var Ov,Lv,Bu,Ql=f(()=>{
F();oe();ke();Ov=1e3,Lv=4e3,Bu=3e3});function Ru(e,t){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=Ev.
has(o.key)?e.next:Nv.has(o.key)?e.back:null;!a||Cv(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<Pv)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:t}),addEventListener("click",o=>o.detail>0&&Bv(),{signal:t})}
function Cv({key:e,target:t,repeat:n}){let s=t;return s.matches("input, select, textarea")?!0:!n&&(e==="Enter"||
e===" ")&&s.matches("button, a, summary")}function Bv(){let e=document.activeElement;e?.matches("button, summa\
ry, input[type=range]")&&e.blur()}var Ev,Nv,Pv,Iu=f(()=>{Ev=new Set(["ArrowRight","PageDown"," ","Enter"]),Nv=
new Set(["ArrowLeft","PageUp","Backspace"]),Pv=300});function Sr(e,{pixels:t=Os(),tallest:n=t*.7,test:s="folded",mark:o=""}={}){let a=z*2.4,r=Un(e.bounds,t-2*a,n-1.6*
a),[,l,c]=e.bounds,[d,p]=r([c,l]),u=m=>m.map(([g,$,v,T])=>`M${r([g,$])}L${r([v,T])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${Wv(e)}
    width=${d+2*a}
    height=${p+1.6*a}
    viewBox="${-a} ${-z*.7} ${d+2*a} ${p+1.6*a}">
    ${e.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>y`<path class="marked-face" d="M${m.map(g=>r(g).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${u(e.lines.hidden)} />
    <path class="bend-edge" d=${u(e.lines.bend)} />
    <path class="edge" d=${u(e.lines.edge)} />
    ${e.dimensions.map(({name:m,from:g,to:$,mm:v})=>Rv(r(g),r($),m,H(v)))}
    ${e.faces.filter(({flat:m})=>m===1).map(({side:m,outline:g})=>Iv(m,g.map(r),m===o))}
  </svg>`}function Rv(e,t,n,s){let o=n==="length"?[-z*.5,z*.95]:n==="width"?[z*.5,z*.95]:[z*.9,0],[a,r]=[e,t].
map(([p,u])=>[p+o[0],u+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],d=Ye(s,z);return y`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-d/2} y=${c-z*.65} width=${d} height=${z*1.3}/>
    <text x=${l} y=${c} font-size=${z} text-anchor="middle" dominant-baseline="central">${s}</text>`}function Iv(e,t,n){
let s=t.reduce((r,l)=>r+l[0],0)/t.length,o=t.reduce((r,l)=>r+l[1],0)/t.length,a=Ye(e,z);return y`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-z*.65}
      width=${a} height=${z*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${z}
      text-anchor="middle" dominant-baseline="central">${e}</text>`}function Wv({length_mm:e,width_mm:t,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${ss({length_mm:e,width_mm:t,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function ss({length_mm:e,width_mm:t,height_mm:n}){
return b({text:[e,t,n].map(H).join(" × "),unit:w(0).unit})}function Wu(e,{pixels:t=Os(),tallest:n=t*.9,test:s="\
blank"}={}){let[o,a]=[H(e.length_mm),H(e.width_mm)],r=Ye(a,z)+z*1.8,l=Un([0,0,e.length_mm,e.width_mm],t-r-12,n-
z*3),[c,d]=l([e.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${Hv(e)}
    width=${c+r+12}
    height=${d+z*3}
    viewBox="-6 -6 ${c+r+12} ${d+z*3}">
    <path class="sheet" d="M${e.outline.map(p=>l(p).join(" ")).join("L")}Z" />
    ${e.lines.map(p=>Fv(p,l))}
    <path
      class="dimension"
      d="M0 ${d+z*1.3}H${c}M-4 ${d+z*1.3+4}l8 -8M${c-4} ${d+z*1.3+4}l8 -8" />
    ${Dv(c/2,d+z*1.3,o)}
    <path
      class="dimension"
      d="M${c+z} 0V${d}M${c+z-4} 4l8 -8M${c+z-4} ${d+4}l8 -8" />
    <text x=${c+z*1.6} y=${d/2} font-size=${z} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function Dv(e,t,n){let s=Ye(n,z);return y`<rect class="ground" x=${e-s/2} y=${t-z*.7} width=${s} height=${z*
1.4}/>
    <text x=${e} y=${t} font-size=${z} text-anchor="middle" dominant-baseline="central">${n}</text>`}function Fv({
bend:e,place:t,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,d]=[l([n,s]),l([o,a])],p=.5+(t%2?-1:1)*.12*
Math.ceil((t-1)/1),[u,m]=[c[0]+(d[0]-c[0])*p,c[1]+(d[1]-c[1])*p];return y`<path class="fold ${r}" d="M${c}L${d}"/>
    <circle class="badge" cx=${u} cy=${m} r=${z*.68}/>
    <text class="badge-number" x=${u} y=${m} font-size=${z*.95} text-anchor="middle"
      dominant-baseline="central">${e}</text>`}function Hv(e){let t=e.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${H(e.length_mm)} by ${H(e.width_mm)}, inside of the box up. ${t.join("; ")}.`}var z,
Ve,Hs=f(()=>{_();A();Za();bn();rt();z=18;Ve=e=>!!e?.folded});function Tr(e,t){return!Ve(e)||!t.side?h:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${Sr(e.folded,{mark:t.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${ae(w(t.bend_length_mm))}</b> long.</li>
      ${Du("Punch",t.segments_mm?.punch)} ${Du("Die",t.segments_mm?.die)}
      ${t.clear_between_mm===null||t.clear_between_mm===void 0?h:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${ae(w(t.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${jv(t.sides_near??[])}
    </ul>
  </section>`}function Du(e,t){if(!t?.length)return h;let n=t.reduce((o,a)=>o+a,0),s=t.length>1?`${t.map(H).join(
" + ")} = `:"";return i`<li class="pieces">${e}: <b>${s}${H(n)} ${w(0).unit}</b></li>`}function jv(e){if(!e.length)
return h;let[t]=[...e].sort((o,a)=>o.distance_mm-a.distance_mm),n=b(S(t.included_angle_deg)),s=ae(w(Math.abs(t.
distance_mm)));return i`<li data-test="sides-near">
    ${t.distance_mm<0?i`<b>The finished ${t.side} side runs ${s} into the ${t.tool}</b>, at ${n}.`:i`The finished ${t.
side} side stays <b>${s}</b> from the ${t.tool}, nearest at ${n}.`}
  </li>`}var ec=f(()=>{_();Hs();rt();A()});function ju(e){return e.number===1?"first":e.turn_quarter?e.turn_over?"quarter-over":"quarter":e.turn_over&&e.
turn_end?"both":e.turn_over?"over":e.turn_end?"end":"same"}function js(e){let t=ju(e);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${Vu}${Gu[t]}</svg
    ><b>${Uu[t]}.</b>`}function Mr(e,t){let n=ju(e);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${Vu}${Gu[n]}</svg>
    <p>
      <b data-test="move">${Uu[n]}.</b>
      <span data-test="face">${e.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${Gv(e,t)}
    </p>
  </div>`}function Yo({gauged_end:e,gauged_side:t},n){return t?`${t} side`:`${e} end${n?` (flat ${e==="left"?1:
n})`:""}`}function Gv(e,t){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=e;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=Yo(e,t);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var Uu,Vu,tc,Fu,Uv,Hu,Vv,Gu,Us=f(()=>{_();Uu={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},Vu=y`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,tc=y`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
Fu=y`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,Uv=y`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
Hu=y`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,Vv=y`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
Gu={first:[Uv],same:[Vv],over:[tc],end:[Fu],both:[tc,Fu],quarter:[Hu],"quarter-over":[tc,Hu]}});function Xo({frames:e},t){let n=e.findIndex(a=>a.share>=t);if(n<0)return e[e.length-1];if(n===0)return e[0];let[
s,o]=[e[n-1],e[n]];return nc(s,o,(t-s.share)/(o.share-s.share))}function nc(e,t,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(e.share,t.share),phase:t.phase,included_angle_deg:s(e.included_angle_deg,
t.included_angle_deg),punch_y_mm:s(e.punch_y_mm,t.punch_y_mm),left:o(e.left,t.left),right:o(e.right,t.right),inside_radius_mm:s(
e.inside_radius_mm,t.inside_radius_mm),half_arc_mm:s(e.half_arc_mm,t.half_arc_mm),gauge_x_mm:e.gauge_x_mm===null||
t.gauge_x_mm===null?null:s(e.gauge_x_mm,t.gauge_x_mm)}}function zu({frames:e}){let t=e.find(o=>o.punch_y_mm<=0)??
e[0],n=Math.min(...e.map(o=>o.punch_y_mm)),s=[...e].reverse().find(o=>o.phase==="bend")??e[e.length-1];return{
before:t.share,after:n<0?s.share:e[e.length-1].share}}function qu(e,t){let n=-t.punch_travel_mm,s=t.phase==="b\
end",o=c=>s?c.included_angle_deg:t.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?t.included_angle_deg:t.phase===
"approach"?n:-n,r=zv(e.frames,t.phase);return{...qv(r,o,a),punch_y_mm:n}}function zv(e,t){let n=t==="withdrawa\
l"?["release","withdrawal"]:[t],s=e.findIndex(a=>n.includes(a.phase)),o=e.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:e}function qv(e,t,n){for(let a=1;a<e.length;a+=1){let[r,l]=[t(e[a-1]),t(e[a])];if(n<=r&&
n>=l&&r>l)return nc(e[a-1],e[a],(r-n)/(r-l))}if(n>t(e[0]))return e[0];let[s,o]=e.slice(-2);return o.phase==="b\
end"?nc(s,o,(t(s)-n)/(t(s)-t(o))):o}function Kv({thickness_mm:e,left:t,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=Vs([[-a,-e/2],[-a,e/2]],s),[d,p]=Vs([[a,-e/2],[a,e/2]],o),u=([g,$])=>`${g} ${-$}`,
m=g=>g.map($=>`L${u($)}`).join("");return`M${u(l)}A${r+e} ${r+e} 0 0 0 ${u(d)}${m(Vs(n,o))}L${u(p)}A${r} ${r} \
0 0 1 ${u(c)}${m(Vs(t,s))}Z`}function Ku(e,{phase:t,punch_y_mm:n}){let s=t==="putting in"||t==="approach",o=e.
frames.filter(u=>u.phase===(s?"putting in":"taking out"));if(!o.length||t==="bend"||t==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:u,right:m})=>[...Vs(e.left,u),
...Vs(e.right,m)]),[c,d]=[l.map(([u])=>u),l.map(([,u])=>u)];return{bounds:[Math.min(...c),Math.min(...d),Math.
max(...c),Math.max(...d,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function Vs(e,[t,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return e.map(([r,l])=>[t+o*r-a*l,n+a*r+o*l])}function Ar(e,t,n){let s=-n.
punch_y_mm,o=t.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:Kv(t,n),tools:[
e.before.ram,e.before.holder,e.before.punch].map(Le).filter(Boolean),down:s,gauge:Le(e.before.gauge),back:a}}var sc=f(
()=>{bn()});function Or({clearance:e}){let t=e?.hits?.[0]??e?.nearest??null;return t&&t.distance_mm<=tm?t:null}function os(e){
let{drawing:t,motion:n}=e;if(!t||!n?.frames?.length)return null;let s=Or(e),{before:o,after:a}=zu(n),r=s?qu(n,
s):Xo(n,(o+a)/2),l=!!e.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:Ar(t,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Collision":s?"Closest":"Half way"}}function Gs(e){let{clearance:t}=e;
if(!t)return"Clearance was not checked at this step.";let n=Or(e);if(!n)return`Nothing comes within ${ae(w(tm,
{digits:0}))} of the part.`;let s=ae(w(Math.abs(n.distance_mm))),o=typeof t.needed_mm=="number"?`, ${ae(w(t.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${Zu(n.tool)}, ${Yu(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${Zu(n.tool)}, ${Yu(n)}${t.hits?.length?o:""}.`}function Yu({phase:e,included_angle_deg:t,punch_travel_mm:n}){
let s=b(w(Math.max(0,-n),{digits:0}));return e==="approach"?`as the punch comes down, ${s} above the sheet`:e===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${b(S(t))}`}
function oc({motion:e},t){let n=b(S(t.included_angle_deg));if(t.phase==="bend")return e.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(t.phase==="release")return`Releasing, ${n}`;if(t.phase==="taking out")
return`Taking it out${Xu(e,t)}`;if(t.phase==="putting in")return`Putting it in${Xu(e,t)}`;let s=b(w(Math.max(0,
t.punch_y_mm),{digits:0}));return t.phase==="withdrawal"?`Punch rising, ${s} up`:t.punch_y_mm>0?`Punch coming \
down, ${s} up`:"First touch, sheet flat"}function Xu({frames:e},{phase:t,right:n}){let s=t==="putting in"?e.find(
a=>a.phase==="approach"):[...e].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??e[0]).
right[2]));return o?`, tilted by ${o}°`:", no tilt"}function Zv({clearance:e}){let{way_in:t,way_out:n,rides_up:s,
clear:o}=e??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(t==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[Qu(t,n,"slide"),Qu(t,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${Ju}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${t==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${Ju}`}:null}function Pt(e,{short:t=!1}={}){let n=Zv(e);return n?
t?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${em(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${em(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:h}var tm,Zu,Ju,Qu,em,Yv,Xv,Qt=f(()=>{_();sc();A();tm=100;Zu=e=>({gauge:"gauge finger",sheet:"part it\
self"})[e]??e;Ju="Punch still, at its top. Fingers never between.";Qu=(e,t,n)=>[e===n&&"in",t===n&&"out"].filter(
Boolean).join(" and ");em=e=>e==="swing"?Yv:Xv(e!=="slide"),Yv=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,Xv=e=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${e?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function rc({segments_mm:e,segments_total_mm:t}){if(!e?.length)return"";let n=e.map(o=>H(o)).join(" + "),s=w(0).
unit;return e.length>1?`${n} = ${H(t??0)} ${s}`:`${n} ${s}`}function zs(e,t=0,n=[]){return e?.length?i`<ul class="tools" data-test="tools">
    ${e.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${ac(s)}</span>
          <span class="more"
            >${[rc(s),sm(s.steps,t),ic(s,n),Jv(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function sm(e,t){return!e?.
length||e.length===t?"":`step${e.length>1?"s":""} ${e.join(", ")}`}function ic({kind:e,code:t},n){let s=n.filter(
a=>e==="punch"&&a.punch===t),o=s.filter(a=>a.punch_turned);return o.length?`reversed${o.length<s.length?` for ${sm(
o.map(({number:a})=>a),0)}`:""}`:""}function Jv(e){return e==="good"||!e?"":e==="unknown"?"condition unknown":
e}function Lr(e){let t=e.length_mm_low===e.length_mm_high||e.length_mm_low===void 0;return i`<div class="figures blank">
      ${Et("Blank length",w(e.length_mm,{digits:2}),{test:"blank-length",band:t?null:[w(e.length_mm_low,{digits:2}),
w(e.length_mm_high,{digits:2})]})}
      ${Et("Blank width",w(e.width_mm,e.outline?{digits:2}:{}),{test:"blank-width",band:e.width_mm_low===void 0||
e.width_mm_low===e.width_mm_high?null:[w(e.width_mm_low,{digits:2}),w(e.width_mm_high,{digits:2})]})}
      ${Et("Mass",_o(e.mass_kg),{test:"blank-mass"})}
    </div>
    ${e.rests_on?i`<p data-test="blank-rests-on">Blank by ${e.rests_on}.</p>`:h}
    ${e.lines?i`<p data-test="relief">${lc(e)}</p>`:h}`}function lc({relief:e,lines:t=[]}){let n=new Set(t.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!e?"":e.shape===
"none"?"Corners without relief.":`Corner reliefs ${e.shape}, ${b(w(e.size_mm,{digits:1}))} ${e.shape==="round"?
"across.":"a side."}`}function om(e){let t=s=>w(s,{digits:2}).text,n=[["At",s=>t(s.at_mm)],["Angle",s=>b(S(s.included_angle_deg))],
["Inside radius",s=>t(s.inside_radius_mm)],["Allowance",s=>t(s.bend_allowance_mm)],["Deduction",s=>t(s.bend_deduction_mm)],
["K-factor",s=>typeof s.k_factor=="number"?s.k_factor.toFixed(2):"–"]];return i`<div class="lines-frame">
    <table class="blank-table stacks" role="table" data-test="bend-lines">
      <caption>
        Bend lines, ${w(0).unit} from
        ${e.lines?"the left end; front and back from the front end":"the left end"}
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">Bend</th>
          ${n.map(([s])=>i`<th role="columnheader" scope="col" class="number">${s}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${e.bend_lines.map(s=>i`<tr role="row" data-bend=${s.bend}>
              <th role="rowheader" scope="row">${s.bend} ${Qv(e,s)}${s.direction}</th>
              ${n.map(([o,a],r)=>i`<td
                    role="cell"
                    class="number"
                    data-head=${o}
                    data-test=${r===0?"line-at":h}>
                    ${a(s)}
                  </td>`)}
            </tr>`)}
      </tbody>
    </table>
  </div>`}function Qv({lines:e},{bend:t}){let n=e?.find(s=>s.bend===t)?.side;return n?`${n} `:""}function cc(e,t=0){
let n=e.turn_over||e.turn_end||e.turn_quarter,s=e.gauged_against&&e.gauged_against!=="flat edge"?`, against th\
e ${e.gauged_against}`:"",o=e.gauged_end?`${ek(Yo(e,t))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!e.turn_quarter)}
            data-over=${String(e.turn_over)}
            data-end=${String(e.turn_end)}
            >${js(e)}</span
          > `:h}
    ${Pt(e,{short:!0})} ${o}${e.inside_face==="up"?"top":"bottom"} face
    up.${tk(e)}
  </span>`}function tk({hits:e}){if(!e)return h;let t=e.gauge_x_mm.map(n=>H(n)).join(", ");return i` <span data-test="hits"
    >${e.count} bumps, ${b(w(e.pitch_mm,{digits:2}))} apart, gauge X ${t}.</span
  >`}function Ct(e){let t=e.operation&&e.operation!=="bend"?e.operation:"bend",n=e.side?`Bend ${e.bend}, ${e.side}`:
`Bend ${e.bend}`;return t==="bend"?n:`${n}, ${t}`}function nk(e,t,n){let s=e[`${t}_low`],o=e[`${t}_high`],a=s==
null||s===o?h:i`<small class="band">${n(s).text} to ${b(n(o))}</small>`;return i`${b(n(e[t]))}${a}`}function nm(e,t,n){
return ot(e,e)?e.first_hit?sk(e,t,n):e.limits?nk(e,t,n):b(n(e[t])):b(n(null))}function sk(e,t,n){let s=t==="se\
t_angle_deg"?`first hit, ${Il(e.first_hit)}; then about `:"then about ";return i`${b(n(e[t]))}<small class="band"
      >${s}${b(n(e[`expected_${t}`]))}</small
    >`}function Er(e,{link:t}={}){let n=o=>w(o,{digits:2}),s=e.part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${e.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${t?i`<a href=${t(o.number)}>${o.number}. ${Ct(o)}</a>`:i`${o.number}. ${Ct(o)}`}
                <small>${b(S(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${b(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${b(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${nm(o,"set_angle_deg",S)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${nm(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${b(je(o))}<small class="band">expected ${b(wn(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch reversed</span>`:
h}
              </td>
              <td role="cell" data-head="Sheet" class="long">${cc(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var ac,ek,vn=f(()=>{_();ge();$n();A();ut();rt();hr();Xn();Us();Qt();ac=fn;ek=e=>e[0].toUpperCase()+e.
slice(1)});function Nr(e,t){return i`<header class="step-top">
    <a class="step-card" href="/c/${e.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${e.title||e.display_code}</span></a
    >
    ${dc(e,t)}
  </header>`}function Je(e,t,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${e}${t.unit&&t.unit!=="°"?i` <span class="unit">${t.unit}</span>`:h}</span
    >
    <span class="value" data-test="${n}-value">${t.text}${t.unit==="°"?"°":h}</span>
  </div>`}var dc,kn=f(()=>{_();vn();dc=(e,t)=>i`<h1>
    <span data-test="step-number">Step ${t.number} of ${e.plan.steps.length}</span>
    <small
      >${Ct(t)}
      ${t.direction}${t.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch reversed</b>`:
h}</small
    >
  </h1>`});function am(e,t,n,s,o){let a=os(e),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?Xo(e.motion,l):null,
d=a&&r==="during"?a.shown:null,p=b(w(e.gauge_x_mm)),u=(m,g,$,v)=>i`<button
      type="button"
      class="button"
      aria-pressed=${$?"true":"false"}
      data-test=${v}
      @click=${()=>{Object.assign(n,g,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${Nt(e.drawing,{pose:r==="between"?"during":r,close:n.close,opening:e.v_opening_mm,gauge:p,
angle:t,moment:d??(c&&Ar(e.drawing,e.motion,c)),near:a?.near??null,mark:r==="during",room:c&&Ku(e.motion,c),words:`${Ct(
e)}, ${ak(e,r)}. Gauge at ${p}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${rk(e,r,c)}
          </p>`:h}
    <div class="toggles">
      ${u("Before",{at:"before"},r==="before","before")}
      ${a?u(a.name,{at:"during"},r==="during","during"):h}
      ${u("After",{at:"after"},r==="after","after")}
      ${u(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?ik(e,l,n,s,o):h}`}function ak(e,t){return t==="before"?"the sheet on the die before the bend":t==="aft\
er"?"at the bottom of the stroke":t==="during"?Gs(e):"on its way"}function rk(e,t,n){return n?oc(e,n):Gs(e)}function ik(e,t,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&lk(t>=1?0:t,n,s,o),s()};return i`<div class="motion">
    <button
      type="button"
      class="button play"
      data-test="play"
      aria-label=${n.playing?"Stop":"Play the bend"}
      @click=${a}>
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path fill="currentColor" d=${n.playing?"M5 4h5v16H5zM14 4h5v16h-5z":"M6 3l15 9-15 9z"} />
      </svg>
    </button>
    <input
      type="range"
      min="0"
      max="1"
      step="any"
      .value=${String(t)}
      aria-label="The bend from first to last"
      aria-valuetext=${oc(e,Xo(e.motion,t))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function lk(e,t,n,s){let o=performance.now(),a=r=>{!t.playing||s.aborted||(t.share=Math.min(1,e+Math.
max(0,r-o)/ok),t.playing=t.share<1,n(),t.playing&&requestAnimationFrame(a))};Object.assign(t,{at:"between",share:e}),
requestAnimationFrame(a)}var ok,Jo,Pr=f(()=>{_();sc();Go();A();vn();Qt();ok=7e3,Jo=()=>({at:"before",share:0,close:!1,
playing:!1})});function rm(e,{waits:t,correction:n}){if(!t&&!n?.to_check?.length){let o=Fe({...n?.said,words:n?.words});return i`<p data-test="no-setting">${o||
"No new setting comes from this one."}</p>`}let s=Fe({...n?.said,words:n?.what})||`${ck(e)} Something else is \
wrong.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${x("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??ep).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function ck(e){let t=gl(e),n="That is further off than the card’s table of corrections goes.";return t?
`${n} Tools and press end at ${b(S(t.sharpest_deg))} under load.`:n}function im(e,t){return e.die?i`<p class="why-not-set" data-test="why-not-set">
    ${x("stop")} <b>No angle and depth.</b>
    ${t?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:h}var hc=f(()=>{_();$n();A();V()});function lm({stations:e=[]}){return e.length<2&&!e.some(t=>t.off_centre_level!=="ok")?h:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${e.map(t=>i`<li>
            <b>Station ${t.number}</b> ${t.punch}${t.turned?", reversed,":h} over ${t.die}:
            ${cm(t.centre_mm)}; step${t.steps.length>1?"s":""} ${t.steps.join(", ")}.
            ${t.off_centre_level==="ok"?h:i`${x(t.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function Cr({stations:e=[]},t){let n=e.find(({steps:s})=>s.includes(t.number));return n&&e.length>1?
`Station ${n.number}, ${cm(n.centre_mm)}`:""}function cm(e){return Math.abs(e)<.5?"in the middle":`its middle ${b(
w(Math.abs(e),{digits:0}))} to the ${e>0?"right":"left"} of the press's middle`}var Br=f(()=>{_();A();V()});function Rr(e,t){let n=t.checks.filter(l=>Ae(l)!=="ok"),s=e.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=e.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+Se(l),{...l,sign:Ae(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function Ir(e,t,n,s,o){
if(!t.drawing)return i`<p class="state" data-test="no-drawing">
      ${t.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=ht(e,t),r={...t,gauge_x_mm:a.gauge_x_mm};return am(r,fr(t,a),n,s,o)}function Wr(e,t){let n=ht(
e,t);return n.set_angle_deg===null&&t.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${Je("Gauge X",w(n.gauge_x_mm),"gauge-x")}
      ${Je("Gauge R",w(t.gauge_r_mm),"gauge-r")}
      ${Je("Angle to set",S(n.set_angle_deg),"set-angle")}
      ${Je("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${Is(n.firstHit,t.drawing?"The drawing shows the finished bend.":"")}
    ${n.set_angle_deg===null?im(t,n.fromTrial):h} ${dk(t)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-result" data-test="from-result">
            <b>Angle and depth from a first piece.</b> The plan said ${b(S(t.set_angle_deg))} and
            ${b(w(t.punch_depth_mm,{digits:2}))}.
          </p>`:h}
    ${t.gauge_draw_back_mm?i`<p class="retract" data-test="retract">
            <b>Retract the gauge ${b(w(t.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would run into it.
          </p>`:h}
    ${hk(t)}`}function dk(e){let t=pr(e);return t===h?h:i`<p class="press-force" data-test="press-force">Allow for ${t}</p>`}
function hk({hits:e}){return e?i`<div class="hits" data-test="hits">
    <b>${e.count} bumps</b>, ${b(S(e.angle_each_deg))} each. Move the gauge
    ${b(w(e.pitch_mm,{digits:2}))} each time:
    ${e.gauge_x_mm.map(t=>w(t).text).join(" · ")}
  </div>`:h}function dm(e,t){if(!t.die)return h;let n=Cr(e,t);return i`<dl class="step-tools" data-test="step-tools">
      <div>
        <dt>Punch</dt>
        <dd>
          <b>${t.punch}</b>
          ${t.punch_name}${t.punch_turned?i` <b class="punch-turned" data-test="tool-turned">reversed</b>`:h}
        </dd>
      </div>
      <div>
        <dt>Die</dt>
        <dd><b>${t.die}</b> ${t.die_name}</dd>
      </div>
      ${t.holder?i`<div>
              <dt>Holder</dt>
              <dd><b>${t.holder}</b></dd>
            </div>`:h}
      ${n?i`<div class="stands">
              <dt>Stands</dt>
              <dd data-test="step-station"><b>${n}</b></dd>
            </div>`:h}
      <div>
        <dt>Wanted</dt>
        <dd><b>${b(S(t.included_angle_deg))}</b> ${t.direction}</dd>
      </div>
    </dl>
    ${Ds(t)}`}var Dr=f(()=>{_();De();A();ut();V();Xn();Pr();Qn();hc();kn();Br()});function hm(e,t,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=Rr(e,t),c=l.filter(m=>Ae(m)!=="note"),d=l.length>
pk,p=d?c:l,u=t.number===e.plan.steps.length;return i`<article
    class="step press-screen-step"
    data-test="press-screen-step"
    data-code=${e.code}
    data-step=${t.number}
    data-revision=${e.revision}>
    <header class="step-top">
      ${Fr(n,o)}
      <p class="press-screen-card" data-test="press-screen-card">${e.title||e.display_code}</p>
      ${dc(e,t)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${He(r)}</div>`:h}
    <div class="step-body">
      <div class="step-way">${Mr(t,e.part.flats_mm.length)}${Pt(t)}</div>
      <section class="step-set" aria-label="What to set">${Wr(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${d?"many":""}" aria-label="What to watch">
        ${p.length?He(p):h}${Tr(e.plan,t)}
      </section>
      <section class="step-with" aria-label="Tools">${zs(uk(e,t),0)}</section>
    </div>
    ${um({back:t.number>1,label:u?"Done":"Next",more:u?"":`step ${t.number+1}`},o)}
  </article>`}function pm(e,{name:t,lines:n,acts:s}){let o=e.plan.steps.length;return i`<article
    class="step press-screen-step"
    data-test="press-screen-done"
    data-code=${e.code}
    data-step=${o+1}>
    <header class="step-top">
      ${Fr(t,s)}
      <p class="press-screen-card" data-test="press-screen-card">${e.title||e.display_code}</p>
    </header>
    ${n}
    <div class="press-screen-says">
      <h1>Done</h1>
      <p>
        ${o===1?"The one step is bent.":`All ${o} steps are bent.`} Measure it, and type the
        result on the phone.
      </p>
      <button type="button" class="button" data-test="clear-press-screen" @click=${s.clear}>
        Take this card off
      </button>
    </div>
    ${um({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function um({back:e,label:t,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!e} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${t}${n?i` <small>${n}</small>`:h}
    </button>
  </nav>`}var pk,uk,Fr,pc=f(()=>{_();yn();ec();V();Us();vn();kn();Qt();Dr();pk=3;uk=(e,t)=>e.plan.tools.filter(
n=>n.steps.includes(t.number)).map(n=>({...n,steps:[]}));Fr=(e,t)=>i`<button
    type="button"
    class="button press-screen-name"
    data-test="press-screen-name"
    aria-label="${Jt(e)}, this display. Choose another"
    @click=${t.choose}>
    ${Jt(e)}
  </button>`});function mm({names:e,silent:t,typed:n,wrong:s,here:o},a){return i`<div class="press-screen-choose" data-test="press-screen-choose">
    <h1>Which press screen is this display?</h1>
    ${t?i`<p class="press-screen-line" data-test="silent">
            The shop does not answer. It is asked again automatically.
          </p>`:h}
    ${e?.length?i`<div class="buttons">
            ${e.map(r=>i`<button
                  type="button"
                  class="button next"
                  data-test="take-press-screen"
                  @click=${()=>a.take(r)}>
                  ${Jt(r)}
                </button>`)}
          </div>`:h}
    ${e?i`<form class="press-screen-new" novalidate @submit=${be(a.make)}>
            ${O({name:"press-screen",label:e.length?"Or a new one":"Give it a name",value:n,wrong:s?[s]:[],change:a.
type,hint:"Like 1, or Big press. It is kept on this display."})}
            <button class="button" data-test="make-press-screen">Add it</button>
          </form>`:h}
    ${o?i`<button type="button" class="button" data-test="stay" @click=${()=>a.take(o)}>
            Stay at ${ns(o)}
          </button>`:h}
    ${Zl()}
  </div>`}function bm({answers:e,refused:t},n,s,o){return i`${e===!1?i`<p class="press-screen-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again automatically.`}
        </p>`:h}
  ${t?i`<p class="press-screen-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${t}
        </p>`:h}
  ${s?i`<p class="press-screen-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:h}`}var fm,gm,$m,uc,wm=f(()=>{_();F();Yl();yn();ue();pc();G();fm=e=>uc(e,"press-screen-idle",Jt(
e.name),i`<p>Open a card on a phone and choose this press screen.</p>
      ${Zl()}`),gm=(e,t,n)=>uc(n,"press-screen-no-card",I(e),t instanceof L?i`<p>${t.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes when the shop is back.
        </p>`),$m=(e,t,n)=>uc(n,"press-screen-no-step",`There is no step ${t}`,i`<p>
      ${e.title||e.display_code} has ${e.plan.steps.length} now. Choose the step on the phone.
    </p>`),uc=({name:e,lines:t,acts:n},s,o,a)=>i`<article class="step press-screen-step" data-test=${s}>
    <header class="step-top">${Fr(e,n)}</header>
    ${t}
    <div class="press-screen-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var vm={};se(vm,{show:()=>fk});function fk(e){Tu(e.signal);let t=Xl();t?ym(e,t):_m(e,"")}function _m(e,t){e.title(
"Press screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:t},o;e.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&e.render(mm(s,c)),r=p=>{n.abort();let u=Xl();ym(e,u?.name===p?u:{name:p,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let p=s.typed.trim();if(s.names?.includes(p))return r(p);try{r((await Ou(p||" ")).name)}catch(u){
s.wrong=u instanceof L?u.errors.name?.[0]??u.message:String(u.message),a()}},type:p=>Object.assign(s,{typed:p})},
d=async()=>{try{Object.assign(s,{names:(await ts(n.signal)).map(({name:p})=>p),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),e.ready(),o=setTimeout(d,mk))};a(),d()}function ym(e,t){let{name:n}=t,s=new AbortController,
{signal:o}=s;e.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:t.code,
step:t.step},l=null,c=null,d=0,p=Jo(),u=xr(n,t.etag,{keepMs:1/0,heard:(k,N)=>{t={...t,etag:N},$({code:k.code,step:k.
step},!1)},sent:(k,N,te)=>m({etag:N,unsent:te}),changed:k=>k.gone?g(""):B()},o);function m(k){t={...t,...r,...k},
Jl(t)}function g(k){s.abort(),k||Jl(null),_m(e,k)}function $(k,N){let te=k.code!==r.code||k.step!==r.step;k.code!==
r.code&&(l=null),te&&(p=Jo()),r=k,m({unsent:N}),N&&u.move(k),te||!l&&k.code?v():B()}async function v(){a.abort(),
a=new AbortController;let k=a.signal;if(d=0,c=null,B(),!!r.code)try{await kt(r.code,N=>{k.aborted||(l=N,d=0,B())},
k)}catch(N){if(k.aborted||o.aborted)return;c=N,B()}}let T={next:()=>{if(!l)return;let k=l.plan.steps.length;$(
{code:l.code,step:r.step>k?1:r.step+1},!0)},back:()=>l&&r.step>1&&$({code:l.code,step:r.step-1},!0),clear:()=>$(
{code:null,step:0},!0),choose:()=>g(n),newer:()=>v()};function B(){if(o.aborted)return;let k=bm(u.standing(),!!l,
d,T.newer);e.title(l?`${l.title||l.code}, ${n}`:n),e.render(P({name:n,lines:k,acts:T})),(l||c||!r.code)&&e.ready()}
function P(k){if(!r.code)return fm(k);if(!l)return c?gm(r.code,c,k):Oe(`Opening ${I(r.code)}…`);let N=l.plan.
steps,te=N[r.step-1];return te?hm(l,te,k,Ir(l,te,p,B,a.signal)):r.step===N.length+1?pm(l,k):$m(l,r.step,k)}Ru(
T,o),ye(B,o),document.addEventListener("sync",async k=>{if(!l)return c&&k.detail.reached?v():void 0;let N=await dt(
l.code).catch(()=>{});!N||N.code!==l?.code||N.revision===l.revision||d===N.revision||(d=N.revision,B())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),t.unsent&&u.move(r),v()}var mk,km=f(()=>{F();Yl();yn();Ql();De();
ue();Iu();oe();Ie();wm();pc();Pr();Ce();Dr();mk=3e3});function X(e,t){let n=document.getElementById("notices"),s=()=>_t(i``,n);_t(i`<div class="notice" data-test="notice">
      <span>${e}</span>
      <button type="button" @click=${()=>{s(),t?.act()}}>${t?.label??"Close"}</button>
    </div>`,n),clearTimeout(xm),t||(xm=setTimeout(s,8e3))}var xm,it=f(()=>{_()});function fc(e){try{let t=JSON.parse(localStorage.getItem(mc(e))??"null");return t&&Array.isArray(t.form?.flats)&&
Array.isArray(t.form?.bends)?t:null}catch{return null}}function Hr(e,t){try{return localStorage.setItem(mc(e),
JSON.stringify({...t,kept_at:new Date().toISOString()})),!0}catch{return!1}}function gc(e){try{localStorage.removeItem(
mc(e))}catch{}}var mc,Sm=f(()=>{mc=e=>`flangebook.part.${e||"new"}`});var jr,Bt,Ur,Vr,Qo=f(()=>{Lt();Jn();A();jr=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
Bt=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),Ur=e=>({angle:String(e.included_angle_deg),direction:e.
direction,radius:q(e.inside_radius_mm),kind:e.kind??"bend",gap:e.kind==="open_hem"?q(e.hem_gap_mm):"",...qo(e)}),
Vr=(e,t)=>({included_angle_deg:e.kind==="bend"?At(e.angle):0,direction:e.direction,kind:e.kind,...e.radius.trim()&&
e.kind==="bend"?{inside_radius_mm:ee(e.radius,t)}:{},...e.kind==="open_hem"?{hem_gap_mm:ee(e.gap,t)}:{},...$r(
e)})});function Gr(e="tray"){let t=()=>e==="lips-in"?{flats:["",""],bends:[Bt(),Bt()]}:e==="lips-out"?{flats:["",""],
bends:[Bt(),{...Bt(),direction:"down"}]}:{flats:[""],bends:[Bt()]};return{length:"",width:"",there:e==="channe\
l"?["left","right"]:[...as],alike:!0,sides:{left:t(),right:t(),front:t(),back:t()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function Mm(e,t){let n=Gr(t);for(let s of as){let o=e.sides[e.alike?
e.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...e,there:n.there,sides:n.
sides}}function Am({there:e,sides:t,alike:n}){let s=(n?e.slice(0,1):e).map(r=>t[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return e.length===2&&e.includes("left")&&e.includes("right")&&s.every(o)?"channel":e.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function Om(e){let t=as.
filter(o=>e.sides[o]),n=t.map(o=>JSON.stringify(e.sides[o])),s=Gr().sides;for(let o of as){let a=e.sides[o]??e.
sides[t[0]];s[o]={flats:a.flats_mm.map(q),bends:a.bends.map(Ur)}}return{length:q(e.length_mm),width:q(e.width_mm),
there:t,alike:n.every(o=>o===n[0]),sides:s,relief:e.relief,reliefSize:q(e.relief_mm),corner:e.corner,gap:q(e.gap_mm),
firstPair:e.first_pair??"left-right"}}function Pm(e,t){let n=s=>e.there.includes(s)?Em(e,s).flats.map((o,a)=>`${s}\
 ${Zs(a)}`):[];return $c.filter(s=>s.some(o=>e.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...t(s,
o),...n(o)])}function Cm(e,t){let n=o=>ee(o,t),s=e.there.map(o=>{let a=Em(e,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>Vr(r,t))}]});return{length_mm:n(e.length),width_mm:n(e.width),sides:Object.fromEntries(
s),relief:e.relief,corner:e.corner,...e.firstPair==="front-back"?{first_pair:e.firstPair}:{},...e.reliefSize.trim()&&
e.relief!=="none"?{relief_mm:n(e.reliefSize)}:{},...e.gap.trim()&&e.corner==="closed"?{gap_mm:n(e.gap)}:{}}}function qs(e){
return[["box.length_mm","length of the base",e.length],["box.width_mm","width of the base",e.width],...bc(e).flatMap(
t=>gk(e,t))]}function gk({sides:e,alike:t},n){let s=t?"":`${n} `;return e[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=e[n].bends[a],d=`${s}${Zs(a)}`;return[[Ks(n,a),d,o],...r==="bend"?[[zr(n,a),`angle of the ${d}`,
l]]:[],...r==="open_hem"?[[`${xn(n,a)}.hem_gap_mm`,`gap of the ${d}`,c]]:[]]})}function Bm(e,t){if(!e.alike)return t;
let n=e.there[0];return Object.fromEntries(Object.entries(t).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function Rm(e){let[,t,n,s,o,a]=e.split(".");if(t!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[t]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${Zs(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function Im(e,t,n,s){
let o=e.sides[t];return qr(e,t,{...o,flats:o.flats.with(n,s)})}function Ys(e,t,n,s){let o=e.sides[t];return qr(
e,t,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function Wm(e,t){let{flats:n,bends:s}=e.sides[t],o=s.map(
a=>({...a,kind:"bend"}));return qr(e,t,{flats:[...n,""],bends:[...o,Bt()]})}function Dm(e,t){let{flats:n,bends:s}=e.
sides[t];return qr(e,t,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function Fm(e,t){let n=as.filter(o=>o===t!==
e.there.includes(o));if(!n.length)return e;let s=e.sides[e.there[0]];return{...e,there:n,sides:e.alike?{...e.sides,
[n[0]]:s}:e.sides}}function Hm(e,t){let n=e.sides[e.there[0]];return{...e,alike:t,sides:t?e.sides:{left:n,right:n,
front:n,back:n}}}var $c,as,Tm,Lm,Em,rs,Nm,bc,Ks,xn,zr,Zs,qr,is=f(()=>{Qo();A();$c=[["left","right"],["front","\
back"]],as=$c.flat(),Tm=6;Lm=({there:e})=>$c.every(t=>t.some(n=>e.includes(n))),Em=(e,t)=>e.sides[e.alike?e.there[0]:
t],rs=e=>Pm(e,()=>[]),Nm=e=>Pm(e,(t,n)=>[`base, ${t} to ${n}`]);bc=({there:e,alike:t})=>t?e.slice(0,1):e;Ks=(e,t)=>`\
box.sides.${e}.flats_mm.${t}`,xn=(e,t)=>`box.sides.${e}.bends.${t}`,zr=(e,t)=>`${xn(e,t)}.included_angle_deg`,
Zs=e=>e===0?"wall":e===1?"lip":`flat ${e+1}`;qr=(e,t,n)=>({...e,sides:{...e.sides,[t]:n}})});function _c(e){if(!e)return ea();let{first:t,last:n,margin_mm:s}=e;return{first:t?String(t):"",last:n?String(n):
"",no_turn_over:!!e.no_turn_over,no_turn_end:!!e.no_turn_end,one_set_up:!!e.one_set_up,critical_flats:[...e.critical_flats??
[]],margin:s===void 0||s===wc?"":q(s)}}function yc(e,t){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=e??ea(),d={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:ee(
c,t)}:{}};return Object.keys(d).length?{wishes:d}:{}}function vc(e,t){if(!e)return{};let n=t?-1:1,s=a=>!a||Number(
a)===t?"":Number(a)>t?String(Number(a)+n):a,o=e.critical_flats.filter(a=>!t||a!==t+1).map(a=>a>t?a+n:a);return{
wishes:{...e,first:s(e.first),last:s(e.last),critical_flats:o}}}function Xs(e){let{first:t,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=e??ea();return[t&&`bend ${t} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var wc,ea,jm,ta=f(()=>{A();wc=2,ea=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});jm=e=>({...e,first:"",
last:"",critical_flats:[]})});function xc(e){return{unit:E(),title:"",note:"",metal:e,thickness:"",length:"",flats:["",""],bends:[Bt()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function Kr({aside:e,...t},n){let s=Um({...t,box:n?t.box??e??Gr():
null});return n?s:{...s,...t.box?{aside:t.box}:{}}}function Vm(e,t){return e.box&&t&&String(rs(e.box))===String(
rs(t))&&e.box.firstPair===t.firstPair?{...e,box:t}:Um({...e,box:t})}function Js(e,t){return e.box?{...xc(e.metal),
title:e.title??"",note:t,thickness:q(e.thickness_mm),dimension:e.dimension??"din6935",order:e.order??null,wishes:_c(
e.wishes),tools:qo(e.tools),box:Om(e.box)}:{unit:E(),title:e.title??"",note:t,metal:e.metal,thickness:q(e.thickness_mm),
length:q(e.bend_length_mm),flats:e.flats_mm.map(q),bends:e.bends.map(Ur),dimension:e.dimension??"din6935",grain:e.
grain??"",order:e.order??null,wishes:_c(e.wishes),tools:qo(e.tools),holes:(e.holes??[]).map(n=>({flat:String(n.
flat),position:q(n.position_mm),diameter:q(n.diameter_mm)}))}}function Qs(e){let t=n=>ee(n,e.unit);return e.box?
{title:e.title.trim(),metal:e.metal,thickness_mm:t(e.thickness),dimension:e.dimension,box:Cm(e.box,e.unit),...e.
order?{order:e.order}:{},...yc(e.wishes,e.unit),...Dl(e.tools)}:{title:e.title.trim(),metal:e.metal,thickness_mm:t(
e.thickness),bend_length_mm:t(e.length),flats_mm:e.flats.map(t),bends:e.bends.map(n=>Vr(n,e.unit)),dimension:e.
dimension,...e.grain?{grain:e.grain}:{},...e.order?{order:e.order}:{},...yc(e.wishes,e.unit),...Dl(e.tools),...e.
holes.length?{holes:e.holes.map(n=>({flat:At(n.flat),position_mm:t(n.position),diameter_mm:t(n.diameter)}))}:{}}}
function Zr(e){let t=[["metal","metal",e.metal],["thickness_mm","thickness",e.thickness]];return(e.box?[...t,...qs(
e.box)]:[...t,["bend_length_mm","length",e.length],...e.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...e.
bends.flatMap((s,o)=>$k(s,o)),...e.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function $k({kind:e,angle:t,gap:n},s){return e==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,t]]:e==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function Gm(e,t,n){return{...e,flats:e.flats.with(t,n)}}function ls(e,t,n){return{...e,bends:e.
bends.with(t,{...e.bends[t],...n})}}function Tc(e,t){let n=e.bends.at(t==="left"?0:-1),s={...Bt(),direction:n?.
direction??"up"},o=t==="left"?e.bends:e.bends.map((r,l)=>l>0&&l===e.bends.length-1?{...r,kind:"bend"}:r);if(t===
"right")return{...e,bends:[...o,s],flats:[...e.flats,""],order:null};let a=e.holes.map(r=>({...r,flat:qm(r.flat,
1,1)}));return{...e,bends:[s,...o],flats:["",...e.flats],order:null,holes:a,...vc(e.wishes,0)}}function zm(e,t){
let n=t+2,s=e.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:qm(o.flat,n,-1)}));return{...e,bends:e.
bends.toSpliced(t,1),flats:e.flats.toSpliced(t+1,1),order:null,holes:s,...vc(e.wishes,t+1)}}function qm(e,t,n){
let s=Number(e);return Number.isInteger(s)&&s>=t?String(s+n):e}function Yr(e){let t=e.split(/[^\d]+/).filter(Boolean).
map(Number);return t.length?t:null}function Km(e,t){return t===0||t===e.bends.length-1}var kc,Um,Sc,Sn=f(()=>{
Qo();is();Lt();Jn();A();ta();kc=40;Um=e=>({...e,order:null,...e.wishes?{wishes:jm(e.wishes)}:{}});Sc=e=>JSON.stringify(
{...Qs(e),title:""})});async function Mc(e,t){try{let{body:n}=await M("POST","/cards",{body:{...Ym(e),code:t},timeout:Zm});return{saved:await Qm(
n)}}catch(n){if(n instanceof L&&n.status===409)return{taken:t};throw Jm(n)}}async function Xm(e,t){let n={...Ym(
e),reason:e.reason??""},s=bk(t,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await M("PUT",`/cards/${t.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:Zm});return await Jd().then(c=>ko({...s,number:c},l)).catch(
()=>{}),{saved:await Qm(r)}}catch(o){if(o instanceof L&&o.status===412)return{stale:await xt(t.code)};throw Jm(
o)}}function bk(e,t){let n=JSON.stringify(t);e.saving?.wanted!==n&&(e.saving={id:Ke(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=e;return{id:e.saving.id,number:0,kind:"edit",code:s,body:t,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function Jm(e){return e instanceof L&&(e.errors=Object.fromEntries(Object.entries(e.
errors).map(([t,n])=>[t.replace(/^part\./,""),n]))),e}async function Qm(e){return bt(e).catch(()=>e)}var Zm,Ym,
ef=f(()=>{F();De();Re();Sn();oe();Ie();Zm=6e4,Ym=e=>({part:Qs(e),note:e.note,...C().name?{by:C().name}:{}})});function sf(e,{pixels:t=Os(),tallest:n=t*.45,test:s="blank"}={}){let o=H(e.width_mm),a=t-Ye(o,J)-J*2,r=a/e.length_mm,
l=e.width_mm*r>n,c=l?n:Math.max(e.width_mm*r,3),d=tf(e.bend_lines.map($=>[$.at_mm*r,J*1.8+Ye(Ac($),J)]),a),p=tf(
e.bend_lines.map($=>[$.at_mm*r,Ye(H($.at_mm),J)]),a),u=nf(d)*na+J*.4,m=nf(p)*na+J*.4,g=u+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${wk(e)}
      viewBox="-8 -4 ${t+8} ${g+m+na*1.4}">
      ${l?yk(a,u,g):y`<rect class="sheet" x="0" y=${u} width=${a} height=${c}/>`}
      ${e.bend_lines.map(($,v)=>_k($,$.at_mm*r,d[v],p[v],u,g))}
      ${vk(a,g+m+J*.7,H(e.length_mm))}
      ${kk(a+J,u,g,o)}
    </svg>
    ${l?i`<p class="hint">Width ${b({text:o,unit:""})} is drawn short at the break.</p>`:h}`}function Ac(e){let t=e.
included_angle_deg?ae(S(e.included_angle_deg)):"hem";return`${e.direction} ${t}`}function wk(e){let t=e.bend_lines.
map(n=>`bend ${n.bend} ${Ac(n)} at ${H(n.at_mm)}`);return`Blank ${H(e.length_mm)} by ${H(e.width_mm)}. ${t.join(
"; ")}.`}function tf(e,t){let n=[];return e.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),Math.max(t-o/2,o/2)),
r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function _k(e,t,n,s,o,a){
let r=o-J*.4-na*(n.row+.5),l=a+J*.4+na*(s.row+.5),c=n.at-n.width/2;return y`<path class="fold ${e.direction}" d="M${t} ${o}V${a}"/>
    <path class="leader" d="M${t} ${o}V${r+J*.8}M${t} ${a}V${l-J*.8}"/>
    <rect class="ground" x=${c} y=${r-J*.75} width=${n.width} height=${J*1.5}/>
    <circle class="badge" cx=${c+J*.75} cy=${r} r=${J*.68}/>
    <text class="badge-number" x=${c+J*.75} y=${r} font-size=${J*.95} text-anchor="middle"
      dominant-baseline="central">${e.bend}</text>
    <text x=${c+J*1.7} y=${r} font-size=${J} dominant-baseline="central">${Ac(e)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-J*.7} width=${s.width}
      height=${J*1.4}/>
    <text x=${s.at} y=${l} font-size=${J} text-anchor="middle"
      dominant-baseline="central">${H(e.at_mm)}</text>`}function yk(e,t,n){let s=(t+n)/2,o=`L${e*.52} ${s+3}L${e*
.54} ${s-14}L${e*.58} ${s+8}L${e*.6} ${s-9}`,a=`L${e*.6} ${s-1}L${e*.58} ${s+16}L${e*.54} ${s-6}L${e*.52} ${s+
11}`;return y`<path class="sheet" d="M0 ${t}V${s+3}${o}L${e} ${s-9}V${t}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${e*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${e} ${s-1}V${n}Z"/>`}function vk(e,t,n){let s=Ye(n,J);return y`<path class="dimension"
      d="M0 ${t}H${e}M-4 ${t+4}L4 ${t-4}M${e-4} ${t+4}L${e+4} ${t-4}"/>
    <rect class="ground" x=${e/2-s/2} y=${t-J*.7} width=${s} height=${J*1.4}/>
    <text x=${e/2} y=${t} font-size=${J} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function kk(e,t,n,s){let o=a=>`M${e-4} ${a+4}L${e+4} ${a-4}`;return y`<path class="dimension" d="M${e} ${t}V${n}${o(
t)}${o(n)}"/>
    <text x=${e+J*.6} y=${(t+n)/2} font-size=${J}
      dominant-baseline="central">${s}</text>`}var J,na,nf,of=f(()=>{_();A();Za();rt();J=18,na=J*1.5;nf=e=>Math.
max(0,...e.map(t=>t.row+1))});function lt(e,{mark:t=0,...n}={}){if(!Ve(e))return rp(e,{mark:t,...n});let s=e.blank.lines.find(o=>o.bend===t)?.
side??"";return Sr(e.folded,{...n,mark:s})}function cs(e,t={}){return e.outline?Wu(e,t):sf(e,t)}var Tn=f(()=>{
Hs();of();rt()});var ft,eo=f(()=>{_();ft=(...e)=>i`<thead>
    <tr>
      ${e.map(t=>i`<th scope="col">${t}</th>`)}
    </tr>
  </thead>`});function to({how:e,differences:t},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
    <h2>${x("caution")} Somebody else saved meanwhile</h2>
    <p>
      ${e==="others changed"?`Not this ${n}, but others in the list. Save again to keep both.`:h}
      ${e==="taken out"?`This ${n} was taken out of the list. Save to put it back as you typed it.`:h}
      ${e==="this changed"?`This ${n} too. What you typed is still in the boxes.`:h}
    </p>
    ${t.length?Oc(t):h}
    <div class="buttons">
      <button type="button" class="button next" data-test="save-mine" @click=${s}>
        Save what I typed
      </button>
      ${e==="taken out"?h:i`<button type="button" class="button" data-test="take-theirs" @click=${o}>
              Take what is saved
            </button>`}
    </div>
  </section>`}function Xr(e,t,n){return n.filter(({name:s})=>(e[s]??"")!==(t[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:t[s]??"",mine:e[s]??""}))}var Oc,no=f(()=>{_();V();eo();Oc=e=>i`<div class="table">
    <table>
      ${ft("Where","Saved now","You typed")}
      <tbody>
        ${e.map(({label:t,theirs:n,mine:s})=>i`<tr>
              <td>${t}</td>
              <td>${n||"empty"}</td>
              <td>${s||"empty"}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`});function rf(e,t,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=Js(e.part,e.note),r=[...new Set([...Lc(t),...Lc(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=Xr(af(t),af(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
    <h2>${x("caution")} Somebody else saved this card meanwhile</h2>
    <p>
      ${e.updated_by?`${e.updated_by} saved`:"Somebody saved"} revision ${e.revision}. What
      you typed is still in the boxes, and both can be kept.
    </p>
    <div class="columns">
      ${l.length?Oc(l):i`<p>
              The part is the same. Something else of the card changed: its results, its settings or whether
              it is archived.
            </p>`}
      <figure class="theirs">
        <figcaption>As saved now</figcaption>
        ${lt(e.plan,{pixels:330,tallest:260,test:"theirs-section"})}
      </figure>
    </div>
    <div class="buttons">
      <button type="button" class="button next" data-test="save-mine" @click=${n}>
        Save mine as the next revision
      </button>
      <button type="button" class="button" data-test="take-theirs" @click=${s}>
        Take what is saved
      </button>
      <button type="button" class="button" data-test="save-as-new" @click=${o}>
        Save mine as a new card
      </button>
    </div>
    <p class="hint">Saved revisions stay in the card's history whatever you choose.</p>
  </section>`}function Lc(e){return[{label:"Title",value:e.title},{label:"Note",value:e.note},{label:"Metal",value:e.
metal},{label:"Thickness",value:e.thickness},{label:"Length",value:e.length},{label:"Measured",value:e.dimension},
{label:"Grain",value:e.grain},{label:"Order",value:e.order?.join(", ")??""},{label:"Limits on the order",value:Xs(
e.wishes)},{label:"Tools",value:Zt(e.tools)},...e.box?[...qs(e.box).map(([,t,n])=>({label:`${t[0].toUpperCase()}${t.
slice(1)}`,value:n})),{label:"Corners",value:`${e.box.corner}, relief ${e.box.relief} ${e.box.reliefSize} ${e.
box.gap}`.trim()},{label:"Sides",value:e.box.there.join(", ")}]:[],...(e.box?[]:e.flats).map((t,n)=>({label:`F\
lat ${n+1}`,value:t})),...(e.box?[]:e.bends).map((t,n)=>({label:`Bend ${n+1}`,value:[t.kind==="bend"?`${t.angle}\
°`:t.kind.replace("_"," "),t.direction,t.radius&&`radius ${t.radius}`,t.gap&&`gap ${t.gap}`,Zt(t)].filter(Boolean).
join(", ")})),...e.holes.map((t,n)=>({label:`Hole ${n+1}`,value:`flat ${t.flat}, at ${t.position}, size ${t.diameter}`}))]}
var af,lf=f(()=>{_();Tn();is();Sn();Jn();ta();V();no();af=e=>Object.fromEntries(Lc(e).map(({label:t,value:n})=>[
t,n]))});function df(e,t,n){let{box:s,unit:o}=e,a=Bm(s,t),r=(l,c)=>n(Vm(e,l),c);return i`${Lk(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${Ek(s,r)}
      <div class="fields">
        ${O({next:!0,name:"box.length_mm",label:"Length, left to right",value:s.length,wrong:W(a,"box.length_m\
m"),change:l=>r({...s,length:l})})}
        ${O({next:!0,name:"box.width_mm",label:"Width, front to back",value:s.width,wrong:W(a,"box.width_mm"),
change:l=>r({...s,width:l})})}
      </div>
    </div>
    ${W(a,"box.sides").map(l=>i`<p class="wrong" data-test="wrong-box.sides">${l}</p>`)}
    <h2>Sides, from the base outwards <small>${o}</small></h2>
    <label class="tick"
      ><input
        type="checkbox"
        name="box.alike"
        data-test="box.alike"
        .checked=${s.alike}
        @change=${l=>r(Hm(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${bc(s).map(l=>Nk(s,l,a,r))}
    ${ie(i`Corners <span class="fold-now">${Ak(s)}</span>`,i`${Rk(e,a,r)}${Ok(s,r)}`,{test:"corners-fold"})}`}
function Ak({corner:e,relief:t,reliefSize:n}){let s=t==="none"?"no relief":`${t} relief`;return`${e}, ${s}${t!==
"none"&&n?` ${n}`:""}`}function Lk(e,t){let n=Am(e);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${xk.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>t(Mm(e,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function Ek(e,t){let n=s=>{let o=e.there.includes(s),a=o&&e.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>t(Fm(e,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${as.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function Nk(e,t,n,s){let{flats:o,bends:a}=e.sides[t],r=e.alike?"Each side":`${t[0].toUpperCase()}${t.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${t}">
    <legend>${r}</legend>
    ${Bk(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${Pk(e,t,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${t}"
        ?disabled=${o.length>=Tm}
        @click=${()=>s(Wm(e,t),{focus:Ks(t,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${t}"
              @click=${()=>s(Dm(e,t),{focus:Ks(t,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:h}
    </div>
  </fieldset>`}function Pk(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],[l,c]=[r[n],hf(Zs(n))],d=`${xn(t,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${O({next:!0,name:Ks(t,n),label:c,value:a[n],wrong:[...W(s,Ks(t,n)),...W(s,xn(t,n))],change:p=>o(Im(e,t,
n,p))})}
      ${l.kind==="bend"?O({next:!0,name:zr(t,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:W(s,
zr(t,n)),change:p=>o(Ys(e,t,n,{angle:p}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?O({next:!0,name:d,label:"Clear gap inside",value:l.gap,wrong:W(s,d),change:p=>o(Ys(e,
t,n,{gap:p}))}):h}
    ${Y({name:`${xn(t,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:Mk,change:p=>o(Ys(e,t,n,{direction:p==="down"?"down":"up"}))})}
    ${Ck(e,t,n,s,o)}`}function Ck(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],l=`${xn(t,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?h:i`<details class="bend-more">
    <summary>
      <span class="unseen">${hf(Zs(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":h}
    </summary>
    ${r[n].kind==="bend"?O({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:W(s,l),change:d=>o(Ys(e,t,n,{radius:d}))}):h}
    ${c?Z({name:`${xn(t,n)}.kind`,label:"Kind",value:r[n].kind,options:jr,change:d=>o(Ys(e,t,n,{kind:d}))}):h}
  </details>`}function Bk(e){let t=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of e.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[d,p]=n[n.length-1];n.push(
[d+t[o]*Math.cos(s),p-t[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>y`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function Rk({box:e,unit:t},n,s){return i`<div class="corner-grid">
      ${Wk(e)}
      <div>
        ${Y({name:"box.corner",label:"Walls at the corner",value:e.corner,options:Tk,change:o=>s({...e,corner:o===
"open"?"open":"closed"})})}
        ${Y({name:"box.relief",label:"Relief",value:e.relief,options:Sk,change:o=>s({...e,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${e.relief==="none"?h:O({next:!0,name:"box.relief_mm",label:e.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:t,hint:"Empty: by radius and thickness.",value:e.reliefSize,wrong:W(n,"box.relief_mm"),change:o=>s(
{...e,reliefSize:o})})}
      ${e.corner==="open"?h:O({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:t,hint:"Empty: by \
thickness.",value:e.gap,wrong:W(n,"box.gap_mm"),change:o=>s({...e,gap:o})})}
    </div>`}function Wk({corner:e,relief:t}){let[n,s]=e==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${Ik[t]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var xk,Sk,Tk,cf,Mk,Ok,hf,Ik,pf=f(()=>{_();Qo();is();Sn();G();pt();mt();xk=[["tray","Tray","M10 14V44\
H86V14"],["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channe\
l","Two sides","M10 14V44H86V14M18 36H30M66 36H78"]],Sk=[["round","Round"],["square","Square"],["none","None"]],
Tk=[["closed","Closed"],["open","Open"]],cf=[["left-right","Left and right"],["front-back","Front and back"]],
Mk=[["up","↑ in"],["down","↓ out"]];Ok=(e,t)=>Lm(e)?Y({name:"box.first_pair",label:"Bent first; the others\
 go between them",value:e.firstPair??cf[0][0],options:cf,change:n=>t({...e,firstPair:n==="front-back"?n:"left-\
right"})}):h;hf=e=>e[0].toUpperCase()+e.slice(1);Ik={none:"L50 40L30 40",square:"L58 20L58 48L30 48",round:"L5\
0 31A9 9 0 1 1 41 40L30 40"}});function mf(e,t){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${uf[e.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(uf).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${Me(e.dimension===n)}
              @change=${()=>t({...e,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?y`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:Dk(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function Dk(e){return e==="din6935"?y`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:y`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function ff(e,t,n){let s=(o,a)=>n({...e,holes:e.holes.with(o,{...e.holes[o],...a})});return i`<details class="holes">
    <summary>Holes near a bend${e.holes.length?`: ${e.holes.length}`:""}</summary>
    <p class="hint">Only those that could be pulled out of shape.</p>
    ${e.holes.map((o,a)=>{let r=`holes.${a}`;return i`<fieldset class="hole">
        <legend>Hole ${a+1}</legend>
        <div class="fields">
          ${O({next:!0,name:`${r}.flat`,label:"On flat",keys:"numeric",value:o.flat,wrong:W(t,`${r}.flat`),change:l=>s(
a,{flat:l})})}
          ${O({next:!0,name:`${r}.position_mm`,label:"Middle from its left end",unit:e.unit,value:o.position,wrong:W(
t,`${r}.position_mm`),change:l=>s(a,{position:l})})}
          ${O({next:!0,name:`${r}.diameter_mm`,label:"Size across",unit:e.unit,value:o.diameter,wrong:W(t,`${r}\
.diameter_mm`),change:l=>s(a,{diameter:l})})}
        </div>
        <button
          type="button"
          class="button"
          data-test="remove-hole-${a+1}"
          @click=${()=>n({...e,holes:e.holes.toSpliced(a,1)},{undo:`Hole ${a+1} is out.`})}>
          Remove hole ${a+1}
        </button>
      </fieldset>`})}
    <button
      type="button"
      class="button"
      data-test="add-hole"
      @click=${()=>n({...e,holes:[...e.holes,{flat:"",position:"",diameter:""}]},{focus:`holes.${e.holes.length}\
.flat`})}>
      + Hole
    </button>
  </details>`}function gf(e,t,n,s){let o=e.box?rs(e.box):[],a=e.order??t??e.bends.map((l,c)=>c+1),r=(l,c)=>s({
...e,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${e.order?`${e.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${O({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:e.order?.
join(", ")??"",wrong:W(n,"order"),on:"change",change:l=>s({...e,order:Yr(l)})})}
    <ol class="order-rows">
      ${a.map((l,c)=>i`<li>
            <span>Bend ${l}${o[l-1]?`: ${o[l-1]}`:""}</span>
            <button
              type="button"
              class="button"
              id="order-${l}-earlier"
              aria-label="Bend ${l} earlier"
              ?disabled=${c===0}
              @click=${()=>r(c,c-1)}>
              ↑
            </button>
            <button
              type="button"
              class="button"
              id="order-${l}-later"
              aria-label="Bend ${l} later"
              ?disabled=${c===a.length-1}
              @click=${()=>r(c,c+1)}>
              ↓
            </button>
          </li>`)}
    </ol>
    ${e.order?i`<button
            type="button"
            class="button"
            data-test="free-order"
            @click=${()=>s({...e,order:null})}>
            Let the planner choose
          </button>`:h}
  </details>`}function $f(e,t,n){return Z({name:"grain",label:"Rolling direction against the bend lines",value:e.
grain,wrong:W(t,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...e,grain:s})})}var uf,bf=f(()=>{_();pn();is();Sn();G();mt();uf={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:y`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:y`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:y`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var wf,_f=f(()=>{_();ul();ml();wf=Fa(class extends Ms{constructor(){super(...arguments),this.key=h}render(e,t){
return this.key=e,t}update(e,[t,n]){return t!==this.key&&(Ha(e),this.key=t),n}})});function yf(e,t,n){let s=e.bends.length>=kc;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(Tc(e,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${e.flats.map((o,a)=>i`${Hk(e,a,t,n)}${a<e.bends.length?jk(e,a,t,n):h}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(Tc(e,"right"),{focus:`flats_mm.${e.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${kc} bends.</p>`:h}`}function Hk(e,t,n,s){let o=`flats_mm.${t}`;
return i`<li class="flat-row">
    ${O({next:!0,name:o,label:`Flat ${t+1}`,value:e.flats[t],wrong:W(n,o),change:a=>s(Gm(e,t,a))})}
  </li>`}function jk(e,t,n,s){let o=e.bends[t],a=`bends.${t}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([d])=>d===a||d===`${a}.kind`||d===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${t+1}>
    <span class="badge-mark" aria-hidden="true">${t+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:O({next:!0,name:l,label:`\
Bend ${t+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:W(n,l),change:d=>s(ls(e,t,{angle:d}))})}
      ${Y({name:`${a}.direction`,label:`Bend ${t+1} turns`,value:o.direction,options:Fk,change:d=>s(ls(e,t,{direction:d===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(d=>i`<p class="wrong" data-test="wrong-${a}">${d}</p>`)}
    ${o.kind==="open_hem"?Uk(e,t,n,s):h}
    ${wf(t,Vk(e,t,n,s))}
  </li>`}function Uk(e,t,n,s){let o=`bends.${t}.hem_gap_mm`;return O({next:!0,name:o,label:"Clear gap inside",
unit:e.unit,value:e.bends[t].gap,wrong:W(n,o),change:a=>s(ls(e,t,{gap:a}))})}function Vk(e,t,n,s){let o=e.bends[t],
a=`bends.${t}.inside_radius_mm`,r=[o.radius&&`Radius ${o.radius}`,Zt(o)].filter(Boolean).join(", ");return i`${r?
i`<p class="hint bend-wanted">${r}</p>`:h}
    <details class="bend-more">
      <summary>
        <span class="unseen">Bend ${t+1}: </span
        ><span class="bend-more-words">Radius, tools, kind, remove</span>
      </summary>
      ${o.kind==="bend"?O({next:!0,name:a,label:"Inside radius wanted",unit:e.unit,hint:"Empty: what the tools\
 give.",value:o.radius,wrong:W(n,a),change:l=>s(ls(e,t,{radius:l}))}):h}
      ${Vl(`bends.${t}`,o,n,l=>s(ls(e,t,l)))}
      ${Km(e,t)||o.kind!=="bend"?Z({name:`bends.${t}.kind`,label:"Kind",value:o.kind,options:jr,change:l=>s(ls(
e,t,{kind:l}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
      <button
        type="button"
        class="button wide"
        data-test="remove-bend-${t+1}"
        ?disabled=${e.bends.length<2}
        @click=${()=>s(zm(e,t),{focus:`flats_mm.${t}`,undo:`Bend ${t+1} and flat ${t+2} are out.`})}>
        Remove bend ${t+1} and flat ${t+2}
      </button>
    </details>`}var Fk,vf=f(()=>{_();_f();Qo();Sn();G();Jn();Qn();mt();Fk=[["up","↑ up"],["down","↓ down"]]});function xf(e,t,n){let s=e.wishes??ea(),o=c=>n({...e,wishes:{...s,...c}}),a=e.box?rs(e.box).map((c,d)=>[String(
d+1),`Bend ${d+1}: ${c}`]):e.bends.map((c,d)=>[String(d+1),`Bend ${d+1}`]),r=e.box?Nm(e.box).map(c=>c[0].toUpperCase()+
c.slice(1)):e.flats.map((c,d)=>`Flat ${d+1}`),l=Xs(s);return i`<details class="order-limits" data-test="order-limits">
    <summary>
      <span>Limits on the order: <b>${l||"none"}</b></span>
    </summary>
    <div class="fields">
      ${Z({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:W(t,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${Z({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:W(t,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${Jr("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${Jr("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${Jr("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,d)=>Jr(`wishes.flat-${d+1}`,c,s.critical_flats.includes(d+1),p=>o({critical_flats:Gk(s.critical_flats,
d+1,p)})))}
      </div>
      ${W(t,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${O({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:e.unit,hint:"Emp\
ty: the usual.",placeholder:q(wc),value:s.margin,wrong:W(t,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function Jr(e,t,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${e}
      data-test=${e}
      .checked=${Me(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${t}</span
    ></label
  >`}var Ec,kf,Gk,Sf=f(()=>{_();pn();is();A();ta();G();mt();Ec=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],kf={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};Gk=(e,t,n)=>[...e.filter(s=>s!==t),...n?[t]:[]].sort((s,o)=>s-o)});function Mf(e,{metals:t,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...t.some(({code:p})=>p===e.metal)?
[]:[[e.metal,e.metal?`${e.metal} (not in the shop)`:"Choose"]],...t.map(({code:p,name:u})=>[p,u])],{box:d}=e;return i`${Y(
{name:"shape",label:"What it is",value:d?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:p=>r(Kr(e,p==="box"))})}
    ${O({next:!0,name:"title",label:"Name of the part",value:e.title,wrong:W(a,"title"),change:p=>r({...e,title:p})})}
    ${Z({name:"metal",label:"Metal",value:e.metal,options:c,wrong:W(a,"metal"),change:p=>r({...e,metal:p})})}
    <div class="fields">
      ${O({next:!0,name:"thickness_mm",label:"Thickness",unit:e.unit,placeholder:"3 or 16 ga",hint:s?Kk(s,e.thickness):
"",value:e.thickness,wrong:W(a,"thickness_mm"),change:p=>r({...e,thickness:p})})}
      ${d?h:O({next:!0,name:"bend_length_mm",label:"Bend length",unit:e.unit,value:e.length,wrong:W(a,"bend_le\
ngth_mm"),change:p=>r({...e,length:p})})}
    </div>
    ${d?i`${df({...e,box:d},a,r)} `:i`<h2>Section, left to right <small>${e.unit}, °</small></h2>
            ${yf(e,a,r)}`}
    ${ie(i`More, if it matters <span class="fold-now">${zk(e)}</span>`,qk(e,{crib:n,plan:s,errors:a,change:r}),
{test:"more-fold"})}
    ${o?O({next:!0,name:"reason",label:"Why this change, for the history",value:e.reason??"",wrong:W(a,"reason"),
change:p=>r({...e,reason:p})}):h}`}function qk(e,{crib:t,plan:n,errors:s,change:o}){let a=n?.order?.sequence;return i`${mf(
e,o)}
    ${e.box?h:i`${$f(e,s,o)} ${ff(e,s,o)}`}
    ${e.box&&!n&&!e.order?h:gf(e,a,s,o)}
    ${xf(e,s,o)} ${tu(e,t,s,o)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${Me(e.note)}
        @input=${r=>o({...e,note:r.target.value})}></textarea>
    </div>`}function Kk({part:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":b(w(e.thickness_mm,{digits:2})),
t??""].filter(Boolean).join(", ")}function Nc(e){return e.box?["title","metal","thickness_mm",...qs(e.box).map(
([t])=>t),"box.relief_mm","box.gap_mm","order",...Ec,...Ul,"note","reason"]:["title","metal","thickness_mm","b\
end_length_mm",...e.flats.map((t,n)=>`flats_mm.${n}`),...e.bends.flatMap((t,n)=>[`bends.${n}.included_angle_de\
g`,`bends.${n}.inside_radius_mm`,...t.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:[],`bends.${n}.die`,`bends.${n}\
.punch`]),...e.holes.flatMap((t,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,`holes.${n}.diameter_mm`]),"gr\
ain","order",...Ec,...Ul,"note","reason"]}function Qr(e){if(e.startsWith("box"))return Rm(e);let[t,n,s]=e.split(
".");return t==="tools"?n==="die"?"Die":"Punch":t==="wishes"?kf[n]??"Limits on the order":n===void 0?Tf[t]??t:
`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[t]??t} ${Number(n)+1}${s?`, ${Tf[s]??s}`:""}`}function Af(e){let t=e.
target;if(e.key!=="Enter"||!(t instanceof HTMLInputElement))return;e.preventDefault();let n=[...t.form.querySelectorAll(
"input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(t)+1).find(o=>o.checkVisibility());s instanceof
HTMLElement&&s.focus()}var zk,Tf,Pc=f(()=>{_();pn();A();Sn();is();pf();G();pt();bf();Qn();vf();ta();Jn();Sf();
mt();zk=e=>[e.dimension!=="din6935"&&"how flats are measured",e.grain&&"rolling direction",e.holes.length>0&&"\
holes",e.order&&"order",Xs(e.wishes)&&"limits",Zt(e.tools)&&"tools",e.note&&"note"].filter(Boolean).join(", ");
Tf={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend length",grain:"Rolling direction",
order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"gap",flat:"flat",position_mm:"\
place",diameter_mm:"size",die:"die",punch:"punch"}});function Of({dimensions:e=[]}){let t=e.filter(({error_mm:a})=>a!==null);if(!t.length)return h;let{basis:n,basis_said:s}=t[0],
o=Fe({...s,words:n});return i`<h3>Expected tolerance of each flange</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${t.map(Yk)}
    </ul>
    ${o?i`<p class="hint" data-test="sizes-basis">${o}</p>`:h}`}function Yk({flat:e,flat_name:t=`flat ${e}`,wanted_mm:n,
error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${e}>
    <b>${t[0].toUpperCase()}${t.slice(1)}</b> ${b(w(n))}
    <b>± ${b(Zk(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:h}.
  </li>`}var Zk,Lf=f(()=>{_();A();V();Zk=e=>E()==="in"?{text:Q(e/ve,3),unit:"in"}:w(e,{digits:2})});function ei(e,t){if(!ds(e))return h;let{order:n}=e,[s,o]=Xk(e),a=!!e.part?.order?.length,r=a?t.free():h,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${x(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${Ef(n.sequence)}
          </p>`:h}
    ${Jk(n.blocked??[])} ${Qk(n.remedies??[])} ${e0(n.wishes)}
    ${r===h?h:i`<div class="buttons">${r}</div>`}
    ${t0(n.alternatives,t)}
    ${ie("Where the tools stand, and flange tolerances",i`${lm(e)} ${Of(e)}`,{test:"stations-fold"})}
  </div>`}function Xk({order:e,checks:t}){let n=s=>t.some(o=>o.code===s);return e.proven?["ok","Clear on paper"]:
n("clearance-assumed")&&!n("no-order")?["unknown","Sizes assumed"]:n("no-order")?["stop","No order"]:t.some(({
level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the way"]:n("order-not-found")?["caution","Non\
e found"]:n("clearance-not-checked")?["caution","Not checked"]:["caution","Not fully checked"]}function Ef(e){
return i`<span class="run" role="img" aria-label="bends ${e.join(", ")}"
    >${e.map(t=>i`<span class="badge-mark" aria-hidden="true">${t}</span>`)}</span
  >`}function Jk(e){return e.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${e.map(({bend:t,words:n})=>i`<li><b>Bend ${t}</b> ${n}</li>`)}
    </ul>`:h}function Qk(e){return e.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${e.map(t=>i`<li>${Se(t)}</li>`)}
    </ul>`:h}function e0(e){return e.length?i`<h3>What each limit costs</h3>
    <ul class="order-list" data-test="limit-costs">
      ${e.map(t=>i`<li data-limit=${t.wish}>${Fe(t)}</li>`)}
    </ul>`:h}function t0(e,{use:t}){return e.length?ie("Other orders that can be made",i`<ul class="order-others" data-test="other-orders">
      ${e.map(({sequence:n,words:s})=>i`<li>${Ef(n)} <span class="compared">${s}</span> ${t(n)}</li>`)}
    </ul>`,{test:"others-fold"}):h}var ds,Nf,Pf,ti=f(()=>{_();V();pt();le();Lf();Br();ds=({order:e})=>Array.isArray(
e?.wishes)&&Array.isArray(e?.alternatives);Nf=e=>({use:t=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${t.join(", ")}"
      @click=${()=>e(t)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>e(
null)}>
      Let it choose
    </button>`}),Pf=e=>({use:t=>R("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${t.join(", ")}"
        href="/part?from=${e}&order=${t.join("-")}"
        >Use this order</a
      >`),free:()=>R("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${e}&order=free"
        >Let it choose</a
      >`)})});function Cf(e,{save:t,order:n}){return i`${gr(e.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>${Lr(e.blank)}${Ls()?cs(e.blank,{pixels:560}):h}</div>
        <div>
          ${ie("Bend lines and drawings",n0(e.blank,t),{test:"bend-lines-fold"})}
        </div>
      </div>
    </section>
    ${ds(e)?i`<section>
            <h2>Order</h2>
            ${ei(e,n)}
          </section>`:h}
    <section>
      <h2>Fetch</h2>
      ${zs(e.tools,e.steps.length,e.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${e.order&&!ds(e)?i`<p data-test="order-words">${e.order.words}</p>`:h}
      <div class="step-drawings">${e.steps.map(s=>s0(s,e.part.thickness_mm))}</div>
      ${ie("All settings in a table",Er(e),{test:"steps-fold"})}
    </section>
    ${Ws(e.checks)} ${_n(e.checks)}`}function n0(e,t){return i`${Ls()?h:cs(e,{pixels:innerWidth-24})} ${om(e)}
    ${o0(e.bend_lines)}
    <div class="buttons">
      <button type="button" class="button" data-test="blank-svg" @click=${()=>t("svg")}>
        Drawing as SVG
      </button>
      <button type="button" class="button" data-test="blank-dxf" @click=${()=>t("dxf")}>
        Drawing as DXF
      </button>
    </div>`}function s0(e,t){let n=ot(e,e)?e.set_angle_deg:null,s=[b(S(n)),`X ${w(e.gauge_x_mm,{digits:1}).text}`],
o=i`${e.number}. ${Ct(e)} <span class="step-set">${s.join(", ")}</span>`;return ie(o,a0(e,t),{test:"step-fold"})}
function o0(e){let t=e.filter(n=>n.opinions?.length);return t.length===0?h:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${t.length===1?`bend ${t[0].bend}`:`${t.length} bends`}
    </summary>
    ${t.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${b(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function a0(e,t){if(!e.drawing)return h;let n=w(e.gauge_x_mm,{digits:2}),s=fr(e,{set_angle_deg:e.
set_angle_deg,firstHit:e.first_hit??null}),o=b(S(s)),a={close:!1,opening:e.v_opening_mm??8*t,gauge:n.text,angle:s,
near:os(e)?.near??null};return i`<figure class="step-drawing" data-step=${e.number}>
    <figcaption>
      ${cc(e)} ${Ds(e)}
      <small data-test="origins">${Zo(e.origin)}</small>
      ${e.motion?i`<span class="near-words ${e.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${Gs(e)}</span
            >`:h}
    </figcaption>
    <div class="poses">
      ${Nt(e.drawing,{...a,pose:"before",words:`Step ${e.number} before the bend: the sheet on the die, gauge \
at ${b(n)}.`})}
      ${r0(e,a)}
      ${Nt(e.drawing,{...a,pose:"after",words:`Step ${e.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function r0(e,t){let n=os(e);return n?Nt(e.drawing,{...t,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${e.number}. ${Gs(e)}`}):h}var Bf=f(()=>{_();Tn();Go();$n();A();Xn();zo();pt();ti();Qn();wr();Qt();vn()});function Rf({plan:e,error:t,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${e&&o?"stale":""} ${a===h?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${e?.section?lt(e,r?{pixels:innerWidth-56,tallest:200}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
h}
    ${a===h?i`<p class="picture-words" role="status" data-test="picture-words">
            ${l0(e,t,n,s)}
          </p>`:r?a:h}
  </div>`}function i0(e){let[t]=Object.entries(e.errors);return t?Hl(Qr(t[0]),t[1]):e.message}function l0(e,t,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,l])=>l).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(t instanceof j)return"The shop's server does not answer. What you type stays on this device.";if(t instanceof
L)return`Not right yet. ${i0(t)}`;if(t)return String(t);if(!e)return n?"Working it out…":"";let o=e.blank.outline?
`Blank ${w(e.blank.length_mm,{digits:2}).text} × ${b(w(e.blank.width_mm,{digits:2}))}`:`Blank ${b(w(e.blank.length_mm,
{digits:2}))}`,[a]=e.checks.filter(({level:r})=>r==="stop");return i`<span>${[o,...d0(e)].join(" · ")}</span>
    ${e.worst==="ok"?h:x(e.worst)}
    ${a?i`<span class="picture-stop">${Se(a)}</span>`:h}`}function d0({steps:e,order:t}){if(!e.length)return[];
let n=["punch","die"].map(a=>[...new Set(e.map(r=>r[a]).filter(Boolean))]),s=e.reduce((a,r)=>(r.force_kn_high??
0)>(a.force_kn_high??0)?r:a),o=t?.sequence??[];return[n.every(a=>a.length)?n.map(a=>a.join(", ")).join(" on "):
"",s.force_kn_high?b(je(s)):"",o.length>1&&o.length<=c0?`order ${o.join(" ")}`:""].filter(Boolean)}var c0,If=f(
()=>{_();Tn();F();A();V();ut();Pc();mt();c0=8});function p0({seconds:e,deadline_s:t,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
    <h2><span role="status">Looking for the order…</span></h2>
    <progress max=${t} value=${Math.min(e,t)} aria-label="Time used">
      ${Math.round(e)} s
    </progress>
    <dl>
      <div>
        <dt>Time, at most about ${Math.round(t)} s</dt>
        <dd>
          <b data-test="looking-seconds">${Math.floor(e)} s</b
          >${e<t?h:", ending"}
        </dd>
      </div>
      <div>
        <dt>Steps looked at</dt>
        <dd><b data-test="looking-at">${n.toLocaleString("en-GB")}</b></dd>
      </div>
      <div class="best">
        <dt>Best so far</dt>
        <dd data-test="looking-best">${s?i`<b>${m0(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function m0(e){return u0.filter(([n])=>e[n]).map(([n,s,o])=>`${e[n]} ${e[n]===1?s:o}`).join(", ")||
"no turning"}function Df({plan:e,progress:t,stopped:n},{cancel:s,again:o,back:a}){return t?p0(t,s):n?f0({again:o,
back:e?a:null}):h}function f0({again:e,back:t}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
    <p role="status">
      <b>Cancelled: no plan for what is typed now.</b>
      ${t?"Below stands the plan from before your last change.":h}
    </p>
    <div class="buttons">
      <button type="button" class="button next" data-test="look-again" @click=${e}>Look again</button>
      ${t?i`<button type="button" class="button" data-test="part-before" @click=${t}>
              Back to the part before
            </button>`:h}
    </div>
  </section>`}var h0,Wf,u0,g0,$0,Ff,Hf=f(()=>{_();h0=.6,Wf=({seconds:e})=>e>=h0;u0=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];g0="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",$0="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",Ff=e=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${e?$0:g0}
  </div>`});var Uf={};se(Uf,{show:()=>b0});async function b0(e){let t=Ts(e.query.get("from")??"").slice(0,7),n=t?"cards.re\
vise":"cards.create";e.title(t?`Edit ${I(t)}`:"New part"),e.render(Oe(t?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([de("metals",e.signal),de("dies",e.signal),
de("punches",e.signal)]),r=t?"":Ts(e.query.get("copy")??"").slice(0,7),l=r?fc(""):null,c=r?await _0(r,e.signal):
await w0(t,s,e.signal);!t&&e.query.get("shape")==="box"&&(c.form=Kr(c.form,!0));let d={...c,plan:null,planned:null,
progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,kept:!0},p=Kt(async(D,me)=>(await Cd(
"/plan",Qs(D),{signal:me,tell:u})).plan,({question:D,answer:me,error:gt=null})=>{me&&Object.assign(d,{plan:me,
planned:D}),Object.assign(d,{error:gt,busy:!1,progress:null,summary:d.summary&&gt!==null}),Wt()},e.signal,350);
function u(D){Wf(D)&&(d.progress=D,Wt())}function m(D=!1){let me=Sc(d.form);if(!D&&me===d.key&&!d.error)return Wt();
Object.assign(d,{key:me,busy:Zr(d.form).length===0,progress:null,stopped:!1}),d.busy?p.ask(d.form,{now:D}):(p.
stop(),d.error=null),Wt()}let g={cancel(){p.stop(),Object.assign(d,{busy:!1,progress:null,stopped:!0,error:null}),
Wt()},again:()=>m(!0),back(){if(!d.planned)return;let D=d.form;Object.assign(d,{form:d.planned,key:Sc(d.planned),
stopped:!1}),d.kept=Hr(t,{form:d.form,base:d.base,newCode:d.newCode}),Wt(),X("The part of this plan is in the \
boxes again.",{label:"Put mine back",act:()=>$(D)})}};function $(D,{focus:me,undo:gt}={}){let Dt=d.form;d.form=
D,d.kept=Hr(t,{form:D,base:d.base,newCode:d.newCode}),m(),me&&requestAnimationFrame(()=>Ko(me)),gt&&X(gt,{label:"\
Put it back",act:()=>$(Dt)})}function v(D){$({...d.form,order:D},{undo:D?`Order ${D.join(", ")} is yours now.`:
"The planner chooses the order."})}function T(D){history.replaceState(history.state,"",t?`/part?from=${t}`:"/p\
art"),v(Yr(D))}async function B(D){let[me]=Zr(d.form);if(me){d.summary=!0,Wt(),Ko(me[0]);return}Object.assign(
d,{saving:!0,clash:null,taken:""}),Wt();try{let $t=await D();if("saved"in $t)return P($t.saved);"stale"in $t?d.
clash=$t.stale:d.taken=$t.taken}catch($t){d.error=$t,d.summary=!0}d.saving=!1,Wt();let gt=d.error instanceof L?
d.error.errors:{},Dt=Nc(d.form).find($t=>Object.keys(gt).some(gd=>gd===$t||gd.startsWith(`${$t}.`)));Dt&&Ko(Dt)}
function P(D){gc(t);let me=D.revision===d.base?.revision;X(me?"Nothing was changed, so nothing was saved.":`Ca\
rd ${I(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),$e(`/c/${D.code}`)}let k=()=>he(n)&&B(()=>d.
base?Xm(d.form,d.base):Mc(d.form,d.newCode)),N=()=>(d.newCode=Ia(),B(()=>Mc(d.form,d.newCode)));function te(){
gc(t);let D=d.form;Object.assign(d,{restored:!1,plan:null,planned:null,clash:null,...jf(d.card,s)}),m(!0),X(t?
"The card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>$(D)})}function Ne(D){let me=d.form;
Object.assign(d,{clash:null,base:Cc(D)}),$(Js(D.part,D.note)),X("What is saved is in the boxes now.",{label:"P\
ut mine back",act:()=>$(me)})}async function Pi(D){try{await Bd(`/blank.${D}`,Qs(d.form),`${d.form.title.trim()||
"blank"}.${D}`)}catch(me){X(K(me))}}function Wt(){let D=d.error instanceof L?d.error.errors:{},me=Zr(d.form),gt=Df(
d,g),Dt=!d.busy&&!d.stopped&&!me.length&&!d.error;e.render(i`<h1>
          ${t?i`${R(n,"Edit","Plan")} ${d.card?.title||"card"}
                  <small class="code">${I(t)}</small>`:R(n,"New part","Plan a part")}
        </h1>
        ${d.restored?i`<p class="restored" data-test="restored">
                What you typed before is back.
                <button type="button" class="link" data-test="start-over" @click=${te}>
                  ${t?"Back to the saved card":"Start an empty part"}
                </button>
              </p>`:h}
        ${d.kept?h:i`<p class="panel">
                This browser keeps nothing on this device: a reload loses what you type.
              </p>`}
        ${d.clash?rf(d.clash,d.form,{saveMine:()=>{d.base=Cc(d.clash),k()},takeTheirs:()=>Ne(d.clash),saveAsNew:N}):
h}
        ${d.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${d.taken}">card ${I(d.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${N}>
                  Save this as another card
                </button>
              </div>`:h}
        ${d.summary?Qp(D,Qr,Nc(d.form)):h}
        ${d.summary&&d.error instanceof j?i`<p class="panel" role="alert" data-test="not-saved">
                Not saved: the shop's server does not answer. What you typed stays on this device. Save again
                when it is back.
              </p>`:h}
        <div
          class="part-desk"
          data-test="part"
          data-busy=${String(d.busy)}
          aria-busy=${d.busy?"true":"false"}>
          <div class="part-edit">
            ${Rf(d,{open:me,stale:!Dt,waiting:gt})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${Af}
              @submit=${be(k)}>
              ${Mf(d.form,{metals:s,crib:{dies:o,punches:a},plan:Dt?d.plan:null,editing:!!t,errors:D,change:$})}
              ${R(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${d.saving}>
                    ${d.saving?"Saving…":t?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?h:gt}
            <div class="part-plan ${Dt||!d.plan?"":"stale"}" data-test="plan">
              ${d.plan&&!Dt&&!d.busy?i`<p class="stale-note">
                      ${d.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:h}
              ${d.plan?Cf(d.plan,{save:Pi,order:Nf(v)}):Ff(!!d.form.box)}
            </div>
          </div>
        </div>`),document.querySelectorAll(".part-form .wrong").forEach(jl),d.busy||e.ready()}m(!0),r&&(history.
replaceState(null,"","/part"),d.kept=Hr("",{form:d.form,base:null,newCode:d.newCode}),l&&X("The copy took the \
place of a part you had begun.",{label:"Put it back",act:()=>$(l.form)}));let fd=e.query.get("order");fd&&T(fd)}
function jf(e,t){return e?{form:Js(e.part,e.note),base:Cc(e)}:{form:xc(t[0]?.code??""),base:null}}async function w0(e,t,n){
let s=fc(e),o=null;try{e&&(o=await xt(e,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.
newCode,card:o,restored:!0}:{...jf(o,t),newCode:Ia(),card:o,restored:!1}}async function _0(e,t){let{part:n,note:s}=await xt(
e,t),o=`Copy of ${n.title||I(e)}`;return{form:Js({...n,title:o},s),base:null,newCode:Ia(),card:null,restored:!1}}
var Cc,Vf=f(()=>{_();F();De();ue();ge();Uo();it();Sm();Sn();ef();Te();We();ue();le();lf();Pc();ti();Bf();If();
Hf();Ce();mt();G();Cc=e=>({code:e.code,etag:e.etag,revision:e.revision,revision_id:e.revision_id})});async function Gf(e,t){if(!navigator.mediaDevices?.getUserMedia)throw new hs(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(y0)}catch(o){throw new hs(v0[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return e.aborted&&s(),e.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",t),n}function zf(e){return!!e.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function qf(e,t){await e.
getVideoTracks()[0].applyConstraints({advanced:[{torch:t}]})}var hs,y0,v0,Kf=f(()=>{hs=class extends Error{constructor(t){
super(t),this.fault=t}},y0={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
v0={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function Xf(){return ni??=x0(),ni.catch(()=>ni=void 0),ni}async function x0(){let e=await S0(),t=e??await Zf(),
n={own:!!e,async read(s){try{return await t.detect(s)}catch(o){if(t!==e)throw new so(String(o));return t=await Zf(),
n.read(s)}}};return n}async function S0(){let e=globalThis.BarcodeDetector,t=await e?.getSupportedFormats().catch(
()=>[]);return e&&t?.includes("qr_code")?new e(Yf):null}async function Zf(){try{let{BarcodeDetector:e,prepareZXingModule:t}=await import("/vendor/barcode-detector/ponyfill.js");
return await t({overrides:{locateFile:()=>k0},fireImmediately:!0}),new e(Yf)}catch(e){throw new so(String(e))}}
var so,k0,Yf,ni,Jf=f(()=>{so=class extends Error{},k0="/vendor/zxing-wasm/zxing_reader.wasm",Yf={formats:["qr_\
code"]}});function eg(e){let t=A0(e.trim()),n=t?T0.exec(t.pathname)?.[1]:M0.exec(e.trim())?.[0];if(!n)return{kind:"other",
code:"",words:L0(e,t)};let{code:s,whole:o,fault:a}=fe(O0(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${Bc(I(s))} is\
 not a card code. ${r}`}}function A0(e){if(!URL.canParse(e))return null;let t=new URL(e);return/^https?:$/.test(
t.protocol)?t:null}function O0(e){try{return decodeURIComponent(e)}catch{return e}}function L0(e,t){return t?`\
It leads to ${Bc(t.host)}, not to a card.`:e.trim()?`It says “${Bc(e.trim())}”, which is not a card code.`:
"It holds nothing that can be read."}var T0,M0,Qf,Bc,tg=f(()=>{ue();T0=/^\/c\/([^/]+)\/?$/i,M0=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
Qf=40;Bc=e=>e.length>Qf?`${e.slice(0,Qf)}…`:e});async function og(e,t,n,s){for(;!s.aborted;){if(e.readyState>=e.HAVE_CURRENT_DATA){let o=await t.read(e);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,E0))}}function ag(e,t,n){let o=e.filter(l=>sg(l,t,t)).map(l=>({...eg(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if(ng(a))return a[0];let r=a.
filter(l=>sg(l.mark,t,n));return r.length>0&&ng(r)?r[0]:"several"}function sg({boundingBox:e},t,n){let s=t.getBoundingClientRect(),
o=Math.max(s.width/t.videoWidth,s.height/t.videoHeight),a=s.x+s.width/2+(e.x+e.width/2-t.videoWidth/2)*o,r=s.y+
s.height/2+(e.y+e.height/2-t.videoHeight/2)*o,{left:l,right:c,top:d,bottom:p}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=d&&r<=p}var E0,ng,rg=f(()=>{tg();E0=60;ng=e=>e.every(t=>t.code===e[0].code)});function ig(e,t){let{title:n,words:s,again:o}=N0[e];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${e}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${t}>Try again</button>`:h}
  </section>`}var Rc,N0,lg=f(()=>{_();Rc=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,N0={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${Rc}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${Rc}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${Rc}`,again:!0}}});var dg={};se(dg,{show:()=>R0});async function R0(e){e.title("Scan a label");let t={fault:null,stream:null,lamp:null,
says:cg},n=er(),s=await an().catch(()=>[]),o=new AbortController,a=()=>e.render(F0(t,{again:d,lamp:p},()=>tr(n,
s,a,"Seven characters, capitals or not."))),r=u=>{Object.assign(t,u),a()},l=()=>{o.abort(),Object.assign(t,{stream:null,
lamp:null})},c=u=>{l(),u instanceof hs?r({fault:u.fault}):u instanceof so?r({fault:"no-decoder"}):e.render(hn(
u)),e.ready()};async function d(){l();let{signal:u}=o=new AbortController;r({fault:null,says:cg});try{let[m,g]=await Promise.
all([Gf(u,()=>c(new hs("busy"))),Xf()]);if(u.aborted)return;r({stream:m,lamp:zf(m)?!1:null,says:P0});let $=document.
querySelector(".scan-view video"),v=document.querySelector(".scan-frame");$.play().catch(()=>{}),e.ready();let T=I0(
B=>r({says:B}),u);await og($,g,B=>T(ag(B,$,v)),u)}catch(m){u.aborted||c(m)}}async function p(){if(!t.stream)return;
let u=!t.lamp;await qf(t.stream,u).then(()=>r({lamp:u}),()=>r({lamp:null}))}e.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():d(),{signal:e.signal}),d()}function I0(e,t){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>B0&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?e(C0):a.kind==="card"?await D0(a.code,e,t):e(W0(a)),s=performance.
now())}}function W0({kind:e,words:t}){return{kind:"wrong",title:e==="slip"?"Not a valid code":"Not a card’s la\
bel",words:`${t} Still looking.`}}async function D0(e,t,n){let s=I(e);t({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await np(e,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?$e(`/c/${e}`,{replace:!0}):t(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is valid, but this shop has no such card: it is another shop’s label. S\
till looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server does no\
t answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wrong",title:`${s}\
 could not be opened`,words:o}))}function F0({fault:e,stream:t,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${e??
s.kind}>
    <h1>Scan a label</h1>
    ${e?ig(e,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${t} aria-label="What the camera sees"></video>
            ${H0}
          </div>`}
    <div class="scan-beside">
      <p class="scan-says" data-kind=${e?"fault":s.kind} role="status" data-test="says">
        ${e?h:i`<b>${s.title}</b> <span>${s.words}</span>`}
      </p>
      ${n===null?h:i`<button
              class="button wide"
              type="button"
              data-test="lamp"
              aria-pressed=${n}
              @click=${o.lamp}>
              Light ${n?"is on":"is off"}
            </button>`}
      ${a()}
    </div>
  </div>`}var cg,P0,C0,B0,H0,hg=f(()=>{_();Kf();De();ue();Jf();rg();We();Ie();vl();lg();Ce();cg={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},P0={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},C0={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},B0=2500;H0=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function pg(e,t,n){fg(e,t,n),Nu(e),we?.link.move({code:t,step:n},{whatever:!0})}function si(){we?.end.abort(),
we=null,oi(),sa()}function ug(e,t){!we||we.at.code!==e||we.at.step===t||(we.at.step=t,oi(),we.link.move({code:e,
step:t}),sa())}function mg(e){we&&(we.at.step=e,we.link.move({code:we.at.code,step:e},{whatever:!0}))}function ai(e,t){
document.addEventListener("bench",()=>e(oa()),{signal:t})}function fg(e,t,n,s=null){we?.end.abort();let o=new AbortController,
a={name:e,code:t,step:n,answers:null,late:!1,refused:""},r=xr(e,s,{keepMs:j0,heard:l=>{if(l.code!==a.code)return si();
a.step=l.step,oi(),sa()},changed:({gone:l,answers:c,late:d,refused:p})=>{if(l)return si();Object.assign(a,{answers:c,
late:d,refused:p}),sa()}},o.signal);we={at:a,link:r,end:o},oi(),sa()}function oi(){try{we?sessionStorage.setItem(
Ic,JSON.stringify({name:we.at.name,code:we.at.code,step:we.at.step})):sessionStorage.removeItem(Ic)}catch{}}function ri(){
if(!we)try{let{name:e,code:t,step:n}=JSON.parse(sessionStorage.getItem(Ic)??"{}");e&&t&&fg(e,t,n)}catch{}}var Ic,
j0,we,oa,sa,ii=f(()=>{Ql();yn();Ic="flangebook.on-bench",j0=5e3,we=null,oa=()=>we?{...we.at}:null;sa=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Ee(e){let{fault:t}=fe(e);return i`<div class="state" data-test="bad-code">
    <h1>${I(e)} is not a card</h1>
    ${t||"A card code has seven characters, digits and letters without I, L, O and U."} ${Wc}
  </div>`}function ps(e,t){if(t instanceof j)return i`<div class="state" data-test="not-kept">
      <h1>${I(e)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${Wc}
    </div>`;if(t instanceof L&&t.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${I(e)}</h1>
      The code is valid, but this shop has no card of that number. Look at the label again. ${Wc}
    </div>`;throw t}async function Rt(e,t){let{code:n}=e.params;try{await kt(n,t,e.signal)}catch(s){e.signal.aborted||
_e(e,ps(n,s))}}function _e(e,t){e.title("No such card"),e.render(t),e.ready()}var Wc,en=f(()=>{_();F();De();ue();
Wc=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function $g(e,{busy:t,fault:n,take:s,settings:o}){return e?.differs?i`<details class="freshness panel" data-test="fresh">
    <summary>
      <span><b>${e.words}</b> The card stays as it is. Show the difference</span>
    </summary>
    <div class="table">
      <table>
        ${ft("Where","What","On the card","Today")}
        <tbody>
          ${e.differences.map(a=>i`<tr>
                <th scope="row">${a.where}</th>
                <td>${a.what}</td>
                <td>${gg(a,"saved")}</td>
                <td>${gg(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&he("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
h}
    <p class="wrong" role="alert">${n}</p>
    ${R("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${t} @click=${s}>
        ${t?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:h}function gg(e,t){let n=t==="saved"?e.saved_value:e.fresh_value;return e.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(e.field)&&typeof n=="number"?b(jt(e.field??"",n)):e[t]}var bg=f(()=>{_();Te();A();le();eo()});function aa(e){return e.refused?e.missing?"The shop was restored from a backup and does not know its card":`Re\
fused: ${e.refused}`:e.parked?"Saved here. The card was changed meanwhile: to resolve":e.late?`Saved here, not\
 yet in the shop. ${e.late}`:"Saved here, not yet in the shop. Waiting to be sent"}function wg(e){let t=e.here??
[],n=e.proposals??[];if(!t.length&&!n.length)return h;let s=t.filter(o=>o.refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-resolve" data-test="to-resolve">
            <p>
              ${x("caution","To resolve")} This card was changed in two places at once. Both are kept.
            </p>
            ${R("cards.revise",i`<a class="button next" href="/c/${e.code}/resolve" data-test="resolve"
                >Resolve ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner decides which holds.</p>`)}
          </div>`:h}
    ${t.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${U0(t.length,n.length>0)}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:h}
          </p>`:h}
  </section>`}function U0(e,t){let n=e===1?"One change of this card waits":`${e} changes of this card wait`;return t?
`${n} until the other one is resolved.`:`${n} and ${e===1?"is sent automatically":"are sent automatically"}.`}
function li(e){return e==="shop"?"Saved in the shop.":e==="here"?"Saved here, not yet in the shop. It is sent \
automatically.":e==="settle"?`The card was changed meanwhile. Both are kept: ${he("cards.revise")?"decide whic\
h holds.":"the owner decides which holds."}`:"Nothing was changed."}var oo=f(()=>{_();Te();V();le()});async function ci(e,t){try{ao=(await ts(e)).map(({name:n})=>n),e.aborted||t()}catch{}}function di(e,t,{draw:n,
start:s}){let o=oa();if(o?.code===e)return V0(o,t);if(!ao.length)return h;let a=[_g,Eu()].find(r=>ao.includes(
r))??ao[0];return i`<section
    class="show-on-press-screen"
    aria-label="Press screen"
    data-test="show-on-press-screen">
    ${ao.length>1?Z({name:"press-screen",label:"Press screen",value:a,options:ao.map(r=>[r,r]),change:r=>{_g=r,
n()}}):h}
    <button
      type="button"
      class="button"
      data-test="put-on-press-screen"
      @click=${()=>{pg(a,e,t),n(),s?.()}}>
      Show on ${ns(a)}
    </button>
  </section>`}function V0(e,t){let n=ns(e.name);return i`<section
    class="show-on-press-screen on"
    aria-label="Press screen"
    data-test="on-press-screen"
    data-press-screen-step=${e.step}>
    <p role="status">${G0(e,n)}</p>
    ${e.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>mg(t)}>
            Show step ${t} there
          </button>`:h}
    <button type="button" class="button" data-test="off-press-screen" @click=${si}>
      Stop
    </button>
  </section>`}function G0({answers:e,late:t,refused:n},s){return e===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:t?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var ao,_g,Dc=f(()=>{_();yn();ii();G();ao=[],_g=""});function hi(e){let{drawing:t}=e,n=os(e),s=Or(e),o=z0(t,e.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${Fc("before","before",yg(t.before),t,o)}
    ${n?Fc("during",s?Cl(s).join(" "):"half way",n.shown,t,o,s):h}
    ${Fc("after","after",yg(t.after),t,o)}
  </div>`}function z0(e,t,n){let[s,o,a,r]=at([e.before.sheet,e.after.sheet]),l=t??(a-s)/6,[c,d]=n?Yn(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,e.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,d-l),high:Math.max(r+.3*l,2*l,d+l)}}function Fc(e,t,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${e}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${Le(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(d=>y`<path class="tool" d=${d}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?q0(c,a-o):h}
    </svg>
    <figcaption data-test="small-${e}">${t}</figcaption>
  </figure>`}function q0(e,t){if(!ur(e,t))return y`<path class="ring" d=${Bo([e.on_sheet,e.on_tool])}/>`;let[n,
s]=Yn(e);return y`<circle class="ring" cx=${n} cy=${-s} r=${t*.05}/>`}var yg,Hc=f(()=>{_();Qt();Bl();bn();yg=({
sheet:e,ram:t,holder:n,punch:s,gauge:o})=>({sheet:Le(e),tools:[t,n,s].map(Le).filter(Boolean),down:0,gauge:Le(
o),back:0})});function pi(e,t,n,s){let o=[...e].sort((d,p)=>d[t]-p[t]);if(o.length<2||n<o[0][t]-.002||n>o[o.length-1][t]+.002)
return null;let a=o.findIndex(d=>d[t]>n),r=a<0?o.length-1:Math.max(a,1),[l,c]=[o[r-1],o[r]];return l[s]+(n-l[t])/
(c[t]-l[t])*(c[s]-l[s])}var jc=f(()=>{});function ia(e){let t=e.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(t))return null;
let n=Number(t);return n>0&&n<180?n:null}function Z0(e,t){let n=Number(e.trim().replace(",","."));if(t===null||
!e.trim()||!Number.isFinite(n)||n<=0)return null;let s=Math.abs(n-t),[o]=[n*10,n/10].filter(a=>Math.abs(a-t)<s/
3);return o&&o<180?String(Number(o.toFixed(3))):null}function la(e,t=null){let n={},s={},o={},a=e.places==="on\
e"?[["measured_deg",e.one]]:[["left_deg",e.left],["middle_deg",e.middle],["right_deg",e.right]];for(let[r,l]of a){
if(l.trim()==="")continue;let c=ia(l),d=Z0(l,t);d?(o[r]=[`${d}°`,...c===null?[]:[`${l.trim()}°`]],s[r]=[`${o[r].
join(" or ")}?`]):c===null?s[r]=[e.places==="one"?vg:K0]:n[r]=c}return!Object.keys(n).length&&!Object.keys(s).
length&&(s[a[0][0]]=[vg]),{angles:n,wrong:s,meant:o}}function kg(e,t,n){let s=Q0(t),[o,a]=["set_angle_deg","pu\
nch_depth_mm"].map(c=>pi(e.corrections??[],"measured_deg",s,c));if(o===null||a===null||n.set_angle_deg===null||
Y0(e,s))return null;let r=e,l={row:s,ends:s!==ui(t),set_angle_deg:o+(n.set_angle_deg-r.set_angle_deg),punch_depth_mm:n.
punch_depth_mm===null?null:a+(n.punch_depth_mm-r.punch_depth_mm)};return ot(e,l)?l:null}function Y0({first_hit:e,
included_angle_deg:t},n){return!!(e&&n>Math.max(t+X0,e.comes_out_deg_high))}function ui(e){let t=Object.values(
e);return t.reduce((n,s)=>n+s,0)/t.length}function Q0(e){let t=(e.left_deg+e.right_deg)/2;return e.middle_deg-
t>=J0?t:ui(e)}function ro(e){return e?.correction?.set_angle_deg?e.correction:e?.table??null}function tn(e){let t=[
e.left_deg,e.middle_deg,e.right_deg],s=t.some(o=>o!=null)?t.map(o=>b(S(o??null))).join(" / "):b(S(e.measured_deg));
return e.flange_mm?`${s}, flange ${ex(e.flange_mm)}`:s}var ra,vg,K0,X0,J0,ex,Mn=f(()=>{$n();jc();A();ra={one:"",
left:"",middle:"",right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""};vg="Type the a\
ngle between the flats in degrees, such as 90.5. Square is 90.",K0="Degrees, such as 90.5";X0=5;J0=.3;ex=e=>typeof e==
"string"?e:b(w(e,{digits:2}))});function io(e,{waiting:t,step:n}={}){return i`<li class="row result" data-test=${t?"waiting-result":"result"} data-id=${e.
id}>
    <div>
      <span class="lead">${tn(e)}</span>
      <span class="code">Step ${e.step}</span>
      <span class="more">
        ${t?i`<b class="waits">${aa(t)}</b> · `:h}
        ${[Ps(e),Gt(e),tx(e),nx(e.correction,n)].filter(Boolean).join(" · ")}
        ${e.note?i`<span class="result-note">${e.note}</span>`:h}
        ${t?.refused?i`<a href="/settings">Decide</a>`:h}
      </span>
    </div>
  </li>`}var tx,nx,Uc=f(()=>{_();$n();Mn();A();oo();Xe();tx=e=>e.set_angle_deg?`set at ${b(S(e.set_angle_deg))}`:
"",nx=(e,t)=>e?.set_angle_deg&&t&&ot(t,e)?`new setting ${b(S(e.set_angle_deg))}`:""});var xg={};se(xg,{show:()=>sx});async function sx(e){let{code:t}=e.params;if(!fe(t).whole)return _e(e,Ee(t));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{e.title(n.title||I(t)),e.render(ox(n,s,{take:r,archive:a,
draw:o}))},a=async()=>{try{({card:n}=await vt(n,{archived:!n.archived})),X(n.archived?"Archived. It stands und\
er Archived, below the cards.":"In use again."),U()}catch(c){X(K(c))}o()},r=async()=>{Object.assign(s,{busy:!0,
fault:""}),o();try{let c=C().name?{by:C().name}:{};n=await jn(await za(n,{replan:!0,reason:"Planned afresh wit\
h today’s tools",id:Ke(),...c})),s.fresh=null,U()}catch(c){s.fault=c instanceof L&&c.status===412?"The card \
was changed meanwhile. Open it again first.":K(c)}s.busy=!1,o()},l=async c=>{n=c,s.waiting=(await En(t).catch(
()=>[])).filter(d=>d.kind==="trial"),s.metal=As((await mn())?.metals,n.part.metal),o(),e.ready()};ye(()=>n&&o(),
e.signal),ai(()=>n&&o(),e.signal),document.addEventListener("sync",async()=>n&&l(await Co(t).catch(()=>{})??n),
{signal:e.signal});try{await kt(t,l,e.signal)}catch(c){e.signal.aborted||_e(e,ps(t,c));return}ri(),ci(e.signal,
o),s.fresh=await M("GET",`/cards/${t}/fresh`,{signal:e.signal}).then(({body:c})=>c,()=>null),o()}function ox(e,t,{
take:n,archive:s,draw:o}){let{plan:a}=e,r=a.checks.filter(d=>d.level!=="ok"),l=r.filter(d=>d.level==="stop"),c=r.
filter(d=>d.level!=="stop"&&!d.code.startsWith("general-"));return i`<article class="card" data-test="card" data-revision=${e.
revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${I(e.code)}</p>
        <h1 data-test="card-title">${e.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${rx(e,t.metal)}</p>
        ${e.note?i`<p class="card-note" data-test="card-note">${e.note}</p>`:h}
        ${e.archived?i`<p class="card-note"><b>Archived.</b> This card is not in use any more.</p>`:h}
      </header>
      ${wg(e)}
      ${l.length?i`<section class="card-stops" aria-label="Stop">${He(l)}</section>`:h}
      ${$g(t.fresh,{...t,take:n,settings:e.settings.length})}
      ${ax(e,l.length>0)}
      ${a.steps.length?di(e.code,1,{draw:o,start:()=>$e(`/c/${e.code}/step/1`)}):h}
      <section class="panel card-picture" aria-label="What it becomes">
        ${lt(a,{tallest:innerHeight*.26})}
      </section>
      ${hx(e,s)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${zs(a.tools,a.steps.length,a.steps)}${Lr(a.blank)}${Ve(a)?cs(a.blank,{tallest:420}):h}
      </section>
      ${dx(e,t.waiting)}
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${ds(a)?h:ix(a.order)}${cx(e)}
        ${ds(a)?ie("Order",ei(a,Pf(e.code)),{test:"order-fold"}):h}
      </section>
      ${c.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${Ns(c)}
            </section>`:h}
      ${_n(a.checks)}
    </div>
  </article>`}function ax({code:e,plan:t},n){return t.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${e}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${t.steps.length===1?"1 step":`${t.steps.length} steps`}</small>
    </a>
  </div>`:h}function rx({part:e,plan:t},n){let s=t.thickness_gauge?` (${t.thickness_gauge})`:"",o=e.bends.length===
1?"1 bend":`${e.bends.length} bends`,a=Ve(t)?`box ${ss(t.folded)}`:`${H(e.bend_length_mm)} ${E()} long`;return`${n}\
, ${H(e.thickness_mm)} ${E()}${s}, ${a}, ${o}`}function lx(e,t){let{gauge_x_mm:n}=ht(e,t);return n===null?"no \
gauge":`gauge X ${b(w(n))}`}function cx(e){return i`<ol class="rows" data-test="step-list">
    ${e.plan.steps.map(t=>i`<li class="row">
          <a href="/c/${e.code}/step/${t.number}">
            <span class="lead">${t.number}. ${Ct(t)} ${t.direction}</span>
            <span class="code">${b(S(t.included_angle_deg))}</span>
            <span class="more">
              ${lx(e,t)}
              ${t.turn_over||t.turn_end||t.turn_quarter?i`<span class="turn" data-test="turn">${js(t)}</span>`:
h}
            </span>
            ${Pt(t,{short:!0})}
            ${t.drawing?hi(t):h}
          </a>
        </li>`)}
  </ol>`}function dx(e,t){let n=[...e.trials].reverse().slice(0,3);return!n.length&&!t.length?i`<section class="card-results">
      <p class="soft" data-test="no-results">
        Nothing measured yet.${R("results.keep"," After a bend, type the result.")}
      </p>
    </section>`:i`<section class="panel card-results">
    <h2>Results</h2>
    <ul class="rows results" data-test="results">
      ${[...t].reverse().map(s=>io(s.body,{waiting:s}))}
      ${n.map(s=>io(s,{step:e.plan.steps[s.step-1]}))}
    </ul>
  </section>`}function hx({code:e,archived:t},n){return i`<nav class="card-links" aria-label="This card">
    ${re(`/c/${e}/note`,i`<a class="button" href="/c/${e}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${e}/history" data-test="history">History</a>
    <a class="button" href="/c/${e}/label" data-test="label">Label</a>
    <a class="button" href="/c/${e}/print" data-test="print">Print</a>
    ${R("cards.revise",i`<a class="button" href="/part?from=${e}" data-test="edit">Edit</a>`)}
    ${R("cards.create",i`<a class="button" href="/part?copy=${e}" data-test="copy">Copy</a>`)}
    ${R("cards.revise",i`<button type="button" class="button" data-test="archive" @click=${n}>
        ${t?"Use again":"Archive"}
      </button>`)}
  </nav>`}var ix,Sg=f(()=>{_();F();De();ue();ge();gn();Re();ii();We();it();oe();ke();A();en();V();zo();pt();bg();
oo();Us();le();ti();vn();Dc();Hc();Qt();Uc();Hs();Tn();rt();ix=e=>e?.words?i`<p class="order" data-test="order">${e.
words}</p>`:h});var Ag={};se(Ag,{show:()=>px});async function px(e){let{code:t,step:n}=e.params;if(!fe(t).whole)return _e(e,Ee(
t));let s=Jo(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return e.render(fx(o,n));e.title(`${o.title||t},\
 step ${r.number}`),e.render($x(o,r,()=>Ir(o,r,s,a,e.signal),di(o.code,r.number,{draw:a})))};ye(()=>o&&a(),e.signal),
ai(()=>o&&ux(o,Number(n),a),e.signal),document.addEventListener("sync",()=>o&&mx(o),{signal:e.signal}),addEventListener(
"keydown",r=>o&&gx(r,o,Number(n)),{signal:e.signal}),ri();try{await kt(t,r=>{!o&&r.plan.steps[Number(n)-1]&&ug(
t,Number(n)),o=r,a(),e.ready()},e.signal)}catch(r){e.signal.aborted||_e(e,ps(t,r));return}ci(e.signal,()=>o&&a())}
function ux(e,t,n){let s=oa(),o=s?.code===e.code&&s?.step!==t&&e.plan.steps[(s?.step??0)-1];o?$e(`/c/${e.code}\
/step/${o.number}`,{replace:!0}):n()}async function mx(e){let t=await Co(e.code).catch(()=>{});t&&t.revision!==
e.revision&&X(`This card is at revision ${t.revision} now.`,{label:"Show it",act:()=>Vt()})}function gx(e,t,n){
e.altKey||e.ctrlKey||e.metaKey||e.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.test(e.target.tagName)||(e.key==="Arro\
wRight"&&$e(Tg(t,n).href),e.key==="ArrowLeft"&&$e(Mg(t,n).href))}function Tg(e,t){let n=e.plan.steps.at(-1);return t<
e.plan.steps.length?{href:`/c/${e.code}/step/${t+1}`,label:"Next",more:`step ${t+1}`}:n.set_angle_deg===null||
!Ft(`/c/${e.code}/result/${t}`)?{href:`/c/${e.code}`,label:"Done: the card",more:""}:{href:`/c/${e.code}/resul\
t/${t}`,label:"Type the result",more:""}}function $x(e,t,n,s){let{stops:o,watch:a}=Rr(e,t),r=t.number===e.plan.
steps.length,l=Tg(e,t.number);return i`<article class="step" data-test="step">
    ${Nr(e,t)} ${o.length?i`<div class="step-stop">${He(o)}</div>`:h}
    <div class="step-body">
      <div class="step-way">${Mr(t,e.part.flats_mm.length)}${Pt(t)}</div>
      <section class="step-set" aria-label="What to set">${Wr(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-press-screen">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?He(a):h}
      </section>
      <section class="step-with" aria-label="Tools">
        ${dm(e.plan,t)} ${Tr(e.plan,t)}
        ${Zo(t.origin)?i`<p class="hint origins" data-test="origins">${Zo(t.origin)}</p>`:h}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${Mg(e,t.number).href} data-test="back">Back</a>
      ${r||t.set_angle_deg===null?h:re(`/c/${e.code}/result/${t.number}`,i`<a class="button" href="/c/${e.code}/result/${t.
number}" data-test="came-out"
                >Type the result</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:h}</a
      >
    </nav>
  </article>`}var fx,Mg,Og=f(()=>{_();De();ue();it();ii();We();Te();oe();gn();en();ec();V();Us();le();Pr();wr();
Dc();kn();Qt();Dr();fx=(e,t)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${t}</strong>This card has ${e.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${e.code}">Open the card</a></span>
  </div>`;Mg=(e,t)=>({href:t>1?`/c/${e.code}/step/${t-1}`:`/c/${e.code}`,label:"Back"})});function Lg(e,t,n,s){let o=e.gauged_flange;if(!o)return null;let a=pi(o.rows,"measured_deg",t,"flange_mm");if(a===
null)return null;let r=n-a;if(Math.abs(r)>o.most_error_mm)return{gauge_x_mm:null,error_mm:r,words:"That flange\
 is further off than a gauge error can be. Check it before you set a new X.",to_check:bx};let l=Math.abs(r)<=Vc?
s:s-r,c=l>=o.x_low_mm&&l<=o.x_high_mm;return{gauge_x_mm:c?l:null,error_mm:r,words:c?"":"The gauge does not rea\
ch far enough to correct the flange.",to_check:[]}}var Vc,bx,lo,mi=f(()=>{jc();Vc=.05;bx=["Measure again, to t\
he face that the card's dimension goes to.","Check which flange was measured.","Read the gauge: did it stand a\
t the X of the card, and the sheet against it?"],lo=({correction:e,gauge:t})=>e?.flange??t??null});function Ng(e,t,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(d,p,u,m={})=>O({name:p,label:u,value:a[d],wrong:r[p],
meant:n.meant[p],change:g=>{if(Object.assign(a,{[d]:g}),!!n.meant[p]){for(let $ of[r,n.meant])delete $[p];o()}},
...m}),c=n.used??ht(e,t);return i`<form class="result-form" novalidate data-test="result-form" @submit=${be(s)}>
    <div class="result-main">
      <h2>Result <small>Wanted ${b(S(t.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:h}
      <div class="result-angles ${a.places}">
        ${a.places==="one"?l("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[l("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),l("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),l("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${Gc(a,o)}
      <div class="result-more">
        ${n.byDepth?l("set","punch_depth_mm","Depth that was set",{unit:E(),placeholder:c.punch_depth_mm===null?
"":w(c.punch_depth_mm,{digits:2}).text,hint:Eg}):l("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:c.set_angle_deg===null?"":S(c.set_angle_deg).text,hint:Eg})}
        ${l("flange","flange_mm","Flange measured",{unit:E(),hint:"If you measured it."})}
        ${l("note","note","Note",{hint:"Grain, anything odd."})}
      </div>
      <details
        class="more-measured"
        data-test="more-measured"
        ?open=${["lot","thickness_mm","radius_mm"].some(d=>r[d]?.length)}>
        <summary>More measured</summary>
        <div class="result-more">
          ${l("thickness","thickness_mm","Thickness measured",{unit:E()})}
          ${l("radius","radius_mm","Inside radius",{unit:E()})}
          ${l("lot","lot","Lot or heat",{hint:"As on the sheet’s tag."})}
        </div>
      </details>
    </div>
    <div class="step-nav" role="group" aria-label="Result">
      <a class="button" href="/c/${e.code}/step/${t.number}" data-test="back">Back</a>
      <button class="button next" data-test="save" ?disabled=${n.sending}>
        ${n.sending?"Sending…":"Save"}
      </button>
    </div>
  </form>`}var Eg,Gc,zc=f(()=>{_();De();A();G();Eg="Leave it if it was set as shown.",Gc=(e,t)=>Y({name:"place\
s",label:"Measured at",value:e.places,options:[["one","One place"],["three","Left, middle, right"]],change:n=>{
Object.assign(e,{places:n}),t()}})});function Pg(e){let t=lo(e);return t?t.gauge_x_mm===null?wx(t):i`<div class="set-figures" data-test="new-gauge">
      ${Je("Gauge X now",w(t.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${Cg(t.error_mm)}</p>`:h}function wx({error_mm:e,words:t,said:n,to_check:s}){
return s.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${x("stop")} <b>No new gauge X.</b> ${Cg(e)} No gauge is that far off.</p>
    <ol>
      ${s.map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${Fe({...n,words:t})}</p>`}function Cg(e){return e===null?"":Math.abs(e)<=
Vc?"Flange as wanted: leave the gauge.":`Flange ${ae(w(Math.abs(e),{digits:2}))} too ${e>0?"long":"short"}.`}function Bg(e){
let t=e?.crown;return t?i`<div class="crown" data-test="crown">
    <p>${_x(t)}</p>
    ${t.shim?yx(t.shim):h}
  </div>`:h}function _x({middle_open_deg:e,shim:t,said:n,words:s}){return t?i`<b>The middle is ${ae(S(e))} more open than the ends.</b> First crown the middle
    by ${ae(w(t.middle_mm,{digits:2}))}, or shim the die:`:Fe({...n,words:s})}function yx({strip_mm:e,lengths_mm:t}){
let n=t.map(o=>w(o,{digits:0}).text).join(", "),s=w(t[0],{digits:0}).unit;return i`<p data-test="shim">
    ${t.length===1?"1 strip":`${t.length} strips`} of
    ${ae(w(e,{digits:2}))} under the middle of the die, one on the other, ${n} ${s}
    long. Nothing at the ends. Then set what stands above, which is for the ends; bend again and measure.
  </p>`}var Rg,Ig=f(()=>{_();mi();A();V();kn();Rg=({thickness_mm:e})=>e?` Calculated for the ${ae(w(e,{digits:2}))}\
 that the sheet measures.`:""});function Wg(e,t,n,{again:s,keep:o}){let a=ro(n);return i`<div
    class="result-answer"
    data-test="result-answer"
    data-waits=${n.waits?"true":"false"}>
    <div class="result-main">
      <h2>${tn(n.trial)} <small>wanted ${b(S(t.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${n.late||"the shop does not answer"}.
              It is sent automatically.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?kx(a):rm(t,n)}
      ${a?i`<p class="basis" data-test="basis">${Sx(n)}</p>`:h}
      ${n.question?vx(e,n.question):h} ${Pg(n)}
      ${Mx(n.correction)} ${Bg(n.correction)}
      ${a?R("cards.revise",Lx(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
h}
    </div>
    <nav class="step-nav" aria-label="Result">
      <button class="button" data-test="again" @click=${s}>Measure again</button>
      <a class="button" href="/c/${e.code}/step/${t.number}" data-test="back">Step ${t.number}</a>
      ${a&&n.kept!=="kept"?R("cards.revise",qc(e,t,"button",", not kept"),qc(e,t)):qc(e,t)}
    </nav>
  </div>`}function qc({code:e,plan:t},{number:n},s="button next",o=""){let a=n===t.steps.length;return i`<a class=${s} href=${a?
`/c/${e}`:`/c/${e}/step/${n+1}`} data-test="next"
    >${a?`Done${o}: the card`:`Next${o}: step ${n+1}`}</a
  >`}function Sx({correction:e,table:t}){return e?`${Fe({...e.said,words:e.what})}${Tx(e)}${Rg(e)}`:`Worked ou\
t on this device, from the card’s own table at ${b(S(t?.row??null))}. The shop works it out again when the r\
esult arrives.${t?.ends?` ${xx}`:""}`}function Mx(e){let t=e?.tilt_mm_per_m;return t==null?h:i`<p data-test="tilt">
    Left and right differ: about ${Ox(Math.abs(t))},
    ${t>0?"the right end deeper":"the left end deeper"}.
  </p>`}function Lx(e,t){return e.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${e.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${e.words}
    </p>`:i`<div class="buttons">
      <button class="button next wide" data-test="keep" ?disabled=${e.kept==="asking"} @click=${t}>
        ${e.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${e.words}</p>`}var vx,kx,xx,Tx,Ax,Ox,Dg=f(()=>{_();Ig();
Mn();A();V();hc();le();kn();vx=(e,t)=>i`<section class="panel urgent" data-test="question">
    <p>${x("unknown","Does not count")} ${t}</p>
    <p><a href="/shop/learned/${encodeURIComponent(e.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,kx=e=>i`<div class="set-figures" data-test="new-setting">
    ${Je("Angle now",S(e.set_angle_deg),"new-angle")}
    ${e.punch_depth_mm===null?h:Je("Depth now",w(e.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`,xx="The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it\
 first.";Tx=({crown:e})=>e?.setting_for==="ends"?" This is for the ends; first correct the open middle, see be\
low.":"";Ax=3048,Ox=e=>E()==="in"?`${Q(e*Ax/1e3/ve,3)} in over ten feet`:`${Q(e,2)} mm in each metre`});async function Fg(e,t,n,s){let o=ro(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await vt(e,{settings:[...e.settings.filter(r=>r.step!==t.number),Nx(t,o,n.trial,Px(e,t,n))]},{reason:`\
Step ${t.number} set from a piece measured at ${tn(n.trial)}`});Object.assign(e,a.card),Object.assign(n,{kept:"\
kept",where:a.where,words:Ex(a)}),U()}catch(a){Object.assign(n,{kept:"no",words:K(a)})}s()}}function Ex({where:e,
card:t}){return e==="shop"?`Revision ${t.revision} of the card has it. Steps show it from now on.`:e==="settle"?
"The card was changed meanwhile. Both are kept: decide on the card which holds.":"Steps show it on this device\
 from now on; it is sent to the shop automatically."}var Nx,Px,Hg=f(()=>{F();gn();mi();Mn();ke();Nx=(e,t,n,s)=>({
step:e.number,set_angle_deg:t.set_angle_deg,punch_depth_mm:t.punch_depth_mm,...s===null?{}:{gauge_x_mm:s},trial_id:n.
id,reason:`Piece measured at ${tn(n)}`}),Px=(e,t,n)=>lo(n)?.gauge_x_mm??e.settings.find(s=>s.step===t.number)?.
gauge_x_mm??null});var jg={};se(jg,{show:()=>Bx});async function Bx(e){let{code:t,step:n}=e.params;if(!fe(t).whole)return _e(e,Ee(
t));let s={typed:{...ra},used:null,wrong:{},meant:{},general:"",sending:!1,result:null,byDepth:!1},o,a=async()=>{
let l=Cx.includes((await mn())?.press?.set_by);l===s.byDepth||s.typed.set||s.sending||s.result||(s.byDepth=l,o&&
!e.signal.aborted&&r())};document.addEventListener("sync",a,{signal:e.signal}),await a();let r=()=>{let l=o.plan.
steps[Number(n)-1];if(!l)return _e(e,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${t}">Open the card</a>
        </p>`);e.title(`${o.title||t}: result`),e.render(Rx(o,l,s,r))};yt(()=>!s.result&&s.typed.one+s.typed.left+
s.typed.note?"Leave without saving what you measured?":null),await Rt(e,l=>{s.sending||s.result||(o=l,r(),e.ready())})}
function Rx(e,t,n,s){let o=()=>Ix(e,t,n,s),a=()=>{let l=Wx(n);Object.assign(n,{typed:{...ra,places:n.typed.places,
lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),s()},r=()=>Fg(e,t,n.result,s);return i`<article class="step result-screen" data-test="result-screen">
    ${Nr(e,t)}
    <div class="result-body">
      ${n.result?Wg(e,t,n.result,{again:a,keep:r}):Ng(e,t,n,{save:o,draw:s})}
      <aside class="result-aside" aria-label="Which bend">
        ${lt(e.plan,{mark:t.bend})}
      </aside>
    </div>
  </article>`}async function Ix(e,t,n,s){if(n.sending)return;let{angles:o,wrong:a,meant:r}=la(n.typed,t.included_angle_deg),
l=Fx(e,t,n);if(l||(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,
{wrong:a,meant:r,general:""}),Object.keys(a).length||!l)return s(),Tt(a);let c=Hx(e,t,o,l,n.typed);n.sending=!0,
s();try{let{late:d,...p}=await Ba({id:c.id,kind:"trial",code:e.code,body:c}),u=p.answer,m=u?.correction??null;
n.result={trial:c,correction:m,table:u||l.set_angle_deg===null?null:kg(t,o,l),gauge:u?null:Dx(t,o,l,c.flange_mm),
waits:!u,late:d??"",question:u?.question_said?Se(u.question_said):"",kept:"no",words:""},u&&U()}catch(d){n.wrong=
d instanceof L?d.errors:{},n.general=K(d)}n.sending=!1,await Ss(),s(),Tt(n.wrong)}function Wx({result:e,used:t}){
let n=ro(e),s=e&&(lo(e)?.gauge_x_mm??e.trial.gauge_x_mm??null);return n?{...n,gauge_x_mm:s??t?.gauge_x_mm}:null}
function Dx(e,t,n,s){let o=Nd(s);return o===null||typeof n.gauge_x_mm!="number"?null:Lg(e,ui(t),o,n.gauge_x_mm)}
function Fx(e,t,n){let{set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a}=n.used??ht(e,t),r={set_angle_deg:s,punch_depth_mm:o,
gauge_x_mm:a};if(n.typed.set.trim()==="")return r;if(n.byDepth)return{set_angle_deg:null,punch_depth_mm:ee(n.typed.
set),gauge_x_mm:a};let l=ia(n.typed.set);return l===null?null:{set_angle_deg:l,punch_depth_mm:null,gauge_x_mm:a}}
function Hx(e,t,n,s,o){let a={id:Ke(),revision:e.revision,step:t.number,bend:t.bend,...n,made_at:new Date().toISOString()};
return s.set_angle_deg!==null&&(a.set_angle_deg=s.set_angle_deg),s.punch_depth_mm!==null&&(a.punch_depth_mm=s.
punch_depth_mm),typeof s.gauge_x_mm=="number"&&(a.gauge_x_mm=s.gauge_x_mm),o.flange.trim()&&(a.flange_mm=ee(o.
flange)),o.radius.trim()&&(a.radius_mm=ee(o.radius)),o.thickness.trim()&&(a.thickness_mm=ee(o.thickness)),o.lot.
trim()&&(a.lot=o.lot.trim()),o.note.trim()&&(a.note=o.note.trim()),C().name&&(a.by=C().name),a}var Cx,Ug=f(()=>{
_();F();De();ue();ge();mi();Mn();Re();We();xs();oe();ke();A();en();V();G();kn();zc();Dg();Tn();Hg();Cx=["depth",
"stop"]});function Gg(e,t,n,s){return e.map(o=>i`<fieldset class="resolve-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${ca(o,o.before)}</small></legend>
        ${Vg(o,"shop","In the shop",t,s)} ${Vg(o,"yours",n,t,s)}
      </fieldset>`)}function Vg(e,t,n,s,o){return i`<label class="resolve-side" data-test=${t}>
    <span class="resolve-whose"
      ><input
        type="radio"
        name=${e.name}
        value=${t}
        .checked=${s[e.name]===t}
        @change=${()=>o(e.name,t)} />
      ${n}</span
    >
    <span class="resolve-value">${ca(e,e[t])}</span>
  </label>`}function ca({name:e},t){if(e==="archived")return t?"Archived":"In use";if(!e.startsWith("settings "))
return t||"nothing";if(!t)return"as planned";let n=t,s=n.punch_depth_mm===null||n.punch_depth_mm===void 0?"":`\
, depth ${b(w(n.punch_depth_mm,{digits:2}))}`;return`${b(S(n.set_angle_deg??null))}${s}`}var Kc=f(()=>{_();A()});function zg(e,t){return e.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${e.map(n=>jx(n,t))}
    </ol>
  </section>`:h}function jx(e,t){let n=vs(e.changes,e.before,{...e.before,settings:e.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${e.settled_by?`Resolved by revision ${e.settled_by}`:re(`/c/${t}/resolve`,i`<a href="/c/${t}/resolve">To resolve</a>`,
"To resolve")}
    </h3>
    <p class="more">${[Ps(e),Gt(e)?`by ${Gt(e)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${ca(s,s.before)} to ${ca(s,s.yours)}</li>`)}
    </ul>
  </li>`}var qg=f(()=>{_();ks();le();Kc();Xe()});function Kg({title:e,note:t,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${e}</b>, ${b(w(n.thickness_mm,{digits:2}))},
      ${Ve(s)?ss(s.folded):`${b(w(n.bend_length_mm))} long`}${t?i`. ${t}`:h}
    </p>
    ${lt(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${Ux(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:h}
    ${Er(s)} ${He(s.checks,{quiet:!0})}
  </div>`}function Ux(e,t){let n={set_angle_deg:t.set_angle_deg??null,punch_depth_mm:t.punch_depth_mm??null};if(!e||
!ot(e,n))return"had a setting beyond its tools";let s=b(w(n.punch_depth_mm,{digits:2}));return`set at ${b(S(n.
set_angle_deg))}, depth ${s}`}var Zg=f(()=>{_();Hs();Tn();$n();A();V();vn()});var Yg={};se(Yg,{show:()=>Vx});async function Vx(e){let{code:t}=e.params;if(!fe(t).whole)return _e(e,Ee(t));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>e.render(zx(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=u=>M("GET",`/cards/${t}/${u}`,{signal:e.signal}),[d,p]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);s.revisions=d.body.revisions,s.proposals=p.body.proposals,s.silent=
!1}catch(c){if(!(c instanceof j))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=null,o(),
!!s.open){try{let{body:d}=await M("GET",`/cards/${t}/revisions/${c}`,{signal:e.signal});s.open===c&&(s.snapshot=
d)}catch(d){s.open=0,X(K(d))}o()}},l=async c=>{s.busy=!0,o();try{n=await Gx(n,c),X(`Revision ${c} is back, as \
revision ${n.revision}.`),s.open=0,U(),await a()}catch(d){X(d instanceof L&&d.status===412?"The card was chang\
ed meanwhile. Look at the history again.":K(d))}s.busy=!1,o()};ye(()=>n&&o(),e.signal);try{await kt(t,async c=>{
n=c,e.title(`${n.title||I(t)}: history`),s.waiting=(await En(t).catch(()=>[])).filter(d=>d.kind==="trial"),o()},
e.signal),await a(),o(),e.ready()}catch(c){e.signal.aborted||_e(e,ps(t,c))}}async function Gx(e,t){let n=await xt(
e.code);return za(n,{restore_revision:t,reason:`Revision ${t} brought back`,id:Ke(),...C().name?{by:C().name}:
{}})}function zx(e,t,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>History of ${e.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${qx(e,t,n)}
      </section>
      ${zg(t.proposals,e.code)}
      <section class="panel">
        <h2>Results</h2>
        ${Zx(e,t)}
      </section>
    </div>
  </article>`}function qx(e,t,n){return t.silent?i`<p data-test="silent">
      This device has revision ${e.revision}, of
      ${ce(e.updated_at)}${e.updated_by?` by ${e.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:t.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${t.revisions.map(s=>Kx(s,e,t,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function Kx(e,t,n,{look:s,bringBack:o}){let a=e.revision===
t.revision,r=n.open===e.revision;return i`<li class="row revision" data-test="revision" data-revision=${e.revision}>
    <h3>
      Revision ${e.revision}${a?", as it is now":""}
      ${e.worst==="stop"||e.worst==="caution"?x(e.worst):h}
    </h3>
    <p class="more">${[ce(e.at),Gt(e)].filter(Boolean).join(", by ")}</p>
    ${e.reason?i`<p data-test="reason">${e.reason}</p>`:h}
    ${e.changes.length?i`<ul class="changes" data-test="changes">
            ${e.changes.map(l=>i`<li>${l}</li>`)}
          </ul>`:h}
    <div class="buttons">
      <button
        class="button"
        aria-expanded=${r?"true":"false"}
        data-test="look"
        @click=${()=>s(e.revision)}>
        ${r?"Close":"Look at it"}
      </button>
      ${a?h:R("cards.revise",i`<button
                class="button"
                data-test="bring-back"
                ?disabled=${n.busy}
                @click=${()=>o(e.revision)}>
                Bring this one back
              </button>`)}
    </div>
    ${r?n.snapshot?Kg(n.snapshot):i`<p>Fetching it…</p>`:h}
  </li>`}function Zx(e,t){return!e.trials.length&&!t.waiting.length?i`<p data-test="no-results">Nothing measured yet.</p>`:
i`<ol class="rows results" data-test="results">
      ${[...t.waiting].reverse().map(n=>io(n.body,{waiting:n}))}
      ${[...e.trials].reverse().map(n=>io(n,{step:e.plan.steps[n.step-1]}))}
    </ol>
    ${e.trials_total>e.trials.length?i`<p>The newest ${e.trials.length} of ${e.trials_total}.</p>`:h}`}var Xg=f(
()=>{_();F();De();ue();it();Re();oe();ke();en();V();le();qg();Zg();Uc();Xe()});var Jg={};se(Jg,{show:()=>Yx});async function Yx(e){let{code:t}=e.params;if(!fe(t).whole)return _e(e,Ee(t));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{e.title(`${n.title||I(t)}: not\
e`),e.render(Jx(n,s,{draw:o,save:()=>Xx(n,s,o,e.signal)}))};yt(()=>s.typed?"Leave without saving what you type\
d?":null),await Rt(e,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),
o(),e.ready())})}async function Xx(e,t,n,s){if(t.sending)return;let[o,a]=[t.title.trim(),t.note.replace(/\r\n/g,
`
`).trim()];if(Object.assign(t,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),Tt(t.wrong);
t.sending=!0,n();try{let{where:r}=await vt(e,{title:o,note:a,archived:t.archived});if(t.typed=!1,X(li(r)),U(),
s.aborted)return;$e(r==="settle"&&Ft(`/c/${e.code}/resolve`)?`/c/${e.code}/resolve`:`/c/${e.code}`)}catch(r){t.
wrong=r instanceof L?r.errors:{},t.general=K(r),t.sending=!1,n(),Tt(t.wrong)}}function Jx(e,t,{draw:n,save:s}){
let o=a=>Object.assign(t,a,{typed:!0});return i`<form class="note-screen" novalidate data-test="note-screen" @submit=${be(
s)}>
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>${R("cards.revise","Note and title","Note")}</h1>
    </header>
    ${t.general?i`<p class="wrong" role="alert" data-test="wrong">${t.general}</p>`:h}
    ${Vn({name:"note",label:"Note",value:t.note,lines:5,wrong:t.wrong.note,change:a=>o({note:a})})}
    ${R("cards.revise",[O({name:"title",label:"Title",value:t.title,wrong:t.wrong.title,change:a=>o({title:a})}),
Y({name:"archived",label:"This card",value:t.archived?"away":"use",options:[["use","In use"],["away","Archived"]],
change:a=>{o({archived:a==="away"}),n()}})])}
    <p class="hint">
      This works without the shop too: it is saved here and sent automatically.
      ${R("cards.revise","To change the part itself, use Edit: that is planned by the shop, so the shop must a\
nswer.","The owner changes the rest of the card.")}
    </p>
    <div class="buttons">
      <button class="button next wide" data-test="save" ?disabled=${t.sending}>
        ${t.sending?"Saving…":"Save"}
      </button>
    </div>
  </form>`}var Qg=f(()=>{_();ue();F();gn();it();We();Te();ke();en();le();G();oo()});var e$={};se(e$,{show:()=>Qx});async function Qx(e){let{code:t}=e.params;if(!fe(t).whole)return _e(e,Ee(t));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{e.title(`${n.title||I(t)}: to resolve`),
e.render(e1(n,s,c))},a=async d=>{if(!d||s.sending)return;let p=[n?.etag,s.proposal?.id].join();n=d,[s.proposal]=
n.proposals;let{changes:u={},before:m={}}=s.proposal??{};s.rows=vs(u,m,n),s.mine=!!(s.proposal&&await _a(s.proposal.
id).catch(()=>{})),p!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),e.ready()},r=async()=>a(await fl(t).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let d=await vt(n,Ph(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Resolved"});X(li(d.where)),s.sending=!1,await r(),U()}catch(d){Object.assign(
s,{sending:!1,fault:K(d)}),o()}},choose:(d,p)=>{s.chosen[d]=p,o()},all:d=>{for(let{name:p}of s.rows)s.chosen[p]=
d;o()}};document.addEventListener("sync",r,{signal:e.signal}),await Rt(e,async d=>a(await fl(t).catch(()=>{})??
d))}function e1(e,t,n){return i`<article class="resolve" data-test="resolve-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>${t.proposal?"Two changes met":"Nothing to resolve"} <small>${e.title}</small></h1>
    </header>
    ${t.proposal?t1(e,t,n):i`<p data-test="resolved">
            Every change of this card is resolved. Both sides are in its
            <a href="/c/${e.code}/history">history</a>.
          </p>`}
  </article>`}function t1(e,{proposal:t,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:p})=>!o[p]).
length,d=s?"Yours":t.by?`By ${t.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":t.by?`${t.by} changed`:"Somebody changed"} this card
      (${Ps(t)}) while it was changed in the shop (revision ${e.revision},
      ${ce(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}). Choose what holds. Both
      stay in the history.
    </p>
    ${e.proposals.length>1?i`<p><b>1 of ${e.proposals.length} to resolve.</b></p>`:h}
    ${n.length?i`<div class="buttons">
              <button type="button" class="button" data-test="all-shop" @click=${()=>l.all("shop")}>
                All as in the shop
              </button>
              <button type="button" class="button" data-test="all-yours" @click=${()=>l.all("yours")}>
                ${s?"All of yours":t.by?`All by ${t.by}`:"All of the other one"}
              </button>
            </div>
            ${Gg(n,o,d,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
    ${r?i`<p class="wrong" role="alert" data-test="wrong">${r}</p>`:h}
    <div class="buttons resolve-keep">
      <button
        type="button"
        class="button next wide"
        data-test="keep"
        ?disabled=${a||c>0}
        @click=${l.keep}>
        ${a?"Saving…":"Keep this"}
        ${c?i`<small>${c===1?"1 still to choose":`${c} still to choose`}</small>`:h}
      </button>
    </div>`}var t$=f(()=>{_();F();ks();ue();gn();it();Re();ke();en();oo();Kc();Xe()});function n$(e,t){let{plan:n}=e,s=p1(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${s1(e,t)}
    <figure class="strip ${Ve(n)?"of-box":""}">
      <figcaption>
        Blank ${fi(n.blank.length_mm)} × ${fi(n.blank.width_mm)},
        ${b(_o(n.blank.mass_kg))}.
        ${Ve(n)?n1(n):"Bend lines from the left end."}
      </figcaption>
      ${cs(n.blank,Ve(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${o1(n)} ${a1(e,s)} ${m1(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function n1({blank:e}){let t=({bend:a})=>{let r=e.bend_lines.find(l=>l.bend===a);return`${a} ${H(
r.at_mm)}`},n=a=>e.lines.filter(r=>a.includes(r.side)).map(t).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,lc(e),"Inside up."].filter(
Boolean).join(" ")}function s1(e,t){let{part:n,plan:s}=e;return i`<header>
    <div>
      <h2>${e.title}</h2>
      <p class="big-code" data-test="sheet-code">${e.display_code}</p>
      <p>
        <b
          >${t},
          ${fi(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:h}</b
        >, ${Ve(s)?`box ${ss(s.folded)}`:i`bend length ${fi(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${e.revision}, ${zn(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}.
      </p>
      ${e.note?i`<p class="note">${e.note}</p>`:h}
    </div>
    ${s.section?lt({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):h}
    <img
      class="qr"
      src="/api/v1/cards/${e.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function o1(e){let t=n=>{let s=ic(n,e.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:h};
return e.tools.length?i`<table class="fetch">
    ${ft("Fetch","Name","From","Pieces","Steps")}
    <tbody>
      ${e.tools.map(n=>i`<tr>
            <th scope="row">${n.kind} ${n.code}</th>
            <td>${n.name}${t(n)}</td>
            <td>${ac(n)}</td>
            <td>${rc(n)||"–"}</td>
            <td>${n.steps.length===e.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function a1(e,t){let n=e.part.flats_mm.length;return i`<table class="paper-steps">
    ${ft("Step","In the tools","Gauge","Set","Sheet","Watch","Result")}
    <tbody>
      ${e.plan.steps.map(s=>r1(e,s,t.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function r1(e,t,n,s){let o=ht(e,t);return i`<tr data-test="sheet-step-${t.number}">
    <th scope="row">
      <span class="number">${t.number}</span> bend ${t.bend} ${t.side??""}
      ${t.direction}${t.operation&&t.operation!=="bend"?i`<br />${t.operation}`:h}
    </th>
    <td class="picture">
      ${l1(e.plan,t)}${t.drawing?hi(t):"no drawing"}${c1(t,e.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(o.gauge_x_mm).text}</b><br />R
      <b>${w(t.gauge_r_mm).text}</b>${d1(t)}
    </td>
    <td class="figures-cell">
      ${g1(t,o)}<br />
      <span class="small"
        >${i1(t)}${$1(o)?i`<br />from a first piece`:h}</span
      >
    </td>
    <td class="move">
      ${js(t)}
      <span class="small"
        >${t.inside_face==="up"?"Top":"Bottom"} face
        up${t.gauged_end?`, ${Yo(t,s)} to the gauge`:""}.</span
      >${Pt(t,{short:!0})}
    </td>
    <td>${h1(n)}</td>
    <td class="pen">
      <span
        >${t.included_angle_deg?ae(S(t.included_angle_deg)):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${Kp(o.firstHit)}</span>`:h}</span
      >
    </td>
  </tr>`}function i1(e){let t=pr(e);return t===h?h:i`<span data-test="sheet-force">allow for ${t}</span>`}function l1(e,t){
let n=Cr(e,t);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${t.punch}${t.punch_turned?" reversed":""} over ${t.die}
      </div>`:h}function c1({segments_mm:e,punch:t,die:n},s){return e?[["punch",t],["die",n]].map(([a,r])=>{let l=s.
find(d=>d.kind===a&&d.code===r)?.segments_mm??[],c=e[a]??[];return!c.length||c.length===l.length?h:i`<div class="pieces" data-test="own-pieces">
      ${a} ${c.map(H).join(" + ")} only
    </div>`}):h}function d1({hits:e}){return e?i`<br /><span class="small"
          >${e.count} bumps, ${w(e.pitch_mm,{digits:2}).text} apart</span
        >`:h}function h1(e){return Zc.filter(t=>t!=="note").map(t=>({level:t,letters:e.filter(n=>n.level===t).
map(({letter:n})=>n)})).filter(({letters:t})=>t.length).map(({level:t,letters:n})=>i`<div class="mark">${x(t)} <b>${n.
join(" ")}</b></div>`)}function p1(e){let t=new Map;for(let n of Zc)for(let s of e.filter(o=>Ae(o)===n)){let o=`${n}\
 ${s.template} ${Gn(s)}`,a=t.get(o)??{letter:u1(t.size),level:n,checks:[],steps:[]};a.checks.push(s),a.steps.push(
...s.steps??(s.step?[s.step]:[])),t.set(o,a)}return[...t.values()]}function m1(e){return i`<div class="remarks" data-test="sheet-remarks">
    ${Zc.map(t=>{let n=e.filter(s=>s.level===t);return n.length?i`<section data-level=${t}>
        <h3>${x(t)}</h3>
        <ul>
          ${n.map(({letter:s,checks:o,steps:a})=>i`<li>
                <b>${s}</b>
                ${a.length?i`<b>Step ${a.join(", ")}.</b> `:h}${f1(o)}
              </li>`)}
        </ul>
      </section>`:h})}
  </div>`}function f1(e){return`${e[0].template} ${Gn(e[0])}`.replace(/\{(\w+)\}/g,(t,n)=>[...new Set(e.map(({
numbers:s})=>ae(jt(n,s[n]))))].join(" / ")).trim()}function g1(e,{set_angle_deg:t,punch_depth_mm:n,firstHit:s}){
if(t===null&&e.die)return i`<b>no setting</b>`;let o=s?i` <span class="small" data-test="sheet-first">first hit</span>`:
h;return i`<b>${b(S(t))}</b>${o}<br />depth <b>${w(n,{digits:2}).text}</b>`}var fi,Zc,u1,$1,s$=f(()=>{_();Hs();
Tn();rt();Hc();De();A();ut();V();Xn();Us();vn();Br();Qt();Xe();eo();fi=e=>b({text:H(e),unit:E()});Zc=Es.filter(
e=>e!=="ok");u1=e=>String.fromCharCode(97+e%26)+(e<26?"":String(Math.floor(e/26)+1));$1=e=>e.fromTrial&&e.set_angle_deg!==
null});function co(e){return Y({name:"paper",label:"Paper",value:C().paper,options:[["A4","A4"],["Letter","Letter"]],
change(t){Ge({paper:t==="Letter"?"Letter":"A4"}),e()}})}function ho(e="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${e}
  </button>`}function gi(e,{lying:t=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${C().paper.toLowerCase()} ${t?"lying":"upright"}" data-test="sheet">
      ${e}
    </div>
  </div>`}var $i=f(()=>{_();oe();G()});var o$={};se(o$,{show:()=>b1});async function b1(e){let{code:t}=e.params;if(!fe(t).whole)return _e(e,Ee(t));let n,
s=[],o=async()=>{s=(await mn())?.metals??s,n&&a()};function a(){e.title(`${n.title}, on paper`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${co(a)}${ho("Print the card")}</div>
        ${gi(n$(n,As(s,n.part.metal)),{about:"The card as it prints"})}`)}ye(()=>n&&a(),e.signal),document.addEventListener(
"sync",o,{signal:e.signal}),await o(),await Rt(e,r=>{n=r,a(),e.ready()})}var a$=f(()=>{_();ue();ge();oe();en();
s$();$i()});var i$={};se(i$,{show:()=>w1});async function w1(e){let{code:t}=e.params;if(!fe(t).whole)return _e(e,Ee(t));let n=C().
units,s=r$[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){e.title(`Label of ${o.title}`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${Y({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${r$.map(l=>_1(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${re("/labels",i`For office paper, lay them out <a href="/labels?codes=${t}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${bi(t,s.size,n,"svg")}
          alt=""
          hidden />`)}await Rt(e,l=>{o=l,r(),e.ready()})}function _1(e,{size:t,words:n,print:s},o,a){let r=`la\
bel-${e.code}-${t}`;return i`<section class="panel label-panel" data-test="label-${t}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${bi(e.code,t,o,"svg")}
        data-test="label-image-${t}"
        alt="Label of card ${e.display_code}: ${e.title}"
        @error=${l=>l.target.closest(".label-panel")?.classList.add("missing")} />
    </div>
    <p class="label-missing">
      The label is drawn by the shop's server, which does not answer. The code in clear:
      <b>${e.display_code}</b>
    </p>
    <div class="buttons">
      <button type="button" class="button next" data-test="print-${t}" @click=${a}>Print</button>
      <a
        class="button"
        download="${r}.svg"
        href=${bi(e.code,t,o,"svg")}
        data-test="svg-${t}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${bi(e.code,t,o,"png")}
        data-test="png-${t}"
        >PNG</a
      >
    </div>
  </section>`}var r$,bi,l$=f(()=>{_();ue();oe();en();G();le();r$=[{size:"50x25",words:"50 × 25 mm, for a bin",
print:"small"},{size:"100x50",words:"100 × 50 mm, for a shelf or a door",print:"large"}];bi=(e,t,n,s)=>`/api/\
v1/cards/${e}/label.${s}?size=${t}&units=${n}`});var c$={};se(c$,{show:()=>v1});async function v1(e){e.title("Labels on a sheet"),e.render(Oe("Fetching the car\
ds…"));let t=(await x1(e.signal)).filter($=>!$.archived);if(!t.length)return e.render(xe("No cards yet",R("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),e.ready();let n=new Set((e.query.
get("codes")??"").split(",").filter($=>t.some(v=>v.code===$))),s="50x25",o=C().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=$=>new URLSearchParams({codes:[...n].join(","),size:s,paper:C().paper,units:o,skip:a.trim()||"0",page:String(
$)}),d=($,v)=>`/api/v1/labels/sheet.${$}?${c(v)}`;async function p(){let $=String(c(1));if(!n.size)l={key:$,pages:[],
wrong:""};else try{let{body:v}=await M("GET",`/labels/sheet.json?${c(1)}`,{signal:e.signal});l={key:$,pages:Array.
from({length:v.pages},(T,B)=>B+1),wrong:""}}catch(v){l={key:$,pages:[],wrong:K(v)}}$===String(c(1))&&g()}let u=$=>{
$(),g(),p()},m=$=>u(()=>n.has($)?n.delete($):n.add($));function g(){let $=t.filter(v=>`${v.code} ${v.title}`.toLowerCase().
includes(r.trim().toLowerCase()));e.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${t.length}</span>
              </h2>
              ${t.length>8?O({name:"find",label:"Find",value:r,change:v=>{r=v,g()}}):h}
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${()=>u(()=>$.forEach(v=>n.add(v.code)))}>
                  All shown
                </button>
                <button
                  type="button"
                  class="button"
                  data-test="none"
                  @click=${()=>u(()=>n.clear())}>
                  None
                </button>
              </div>
              <ul class="ticks">
                ${$.map(v=>i`<li>
                      <label>
                        <input
                          type="checkbox"
                          data-test="pick-${v.code}"
                          .checked=${n.has(v.code)}
                          @change=${()=>m(v.code)} />
                        <span>${v.title}</span> <span class="soft">${v.code}</span></label
                      >
                    </li>`)}
              </ul>
            </section>
            <section class="panel">
              <h2>How</h2>
              ${Y({name:"size",label:"Label size",value:s,options:y1,change:v=>u(()=>s=v)})}
              ${co(()=>u(()=>{}))}
              ${Y({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:v=>u(()=>o=
v==="inch"?"inch":"mm")})}
              ${O({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:v=>u(()=>a=v)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${ho(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(v=>k1(v,l.pages.length,d))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}ye(g,e.signal),g(),await p(),e.ready()}function k1(e,t,n){let s=`labels-${e}`;return i`<figure class="label-sheet ${C().
paper.toLowerCase()}">
    <img src=${n("svg",e)} alt="Sheet ${e} of ${t} with labels" data-test="sheet-${e}" />
    <figcaption class="screen-only">
      <span>Sheet ${e} of ${t}, ${C().paper}. Print at 100 %, without fitting to the page.</span>
      <div class="buttons">
        <a class="button" download="${s}.svg" href=${n("svg",e)} data-test="sheet-svg-${e}"
          >SVG</a
        >
        <a class="button" download="${s}.png" href=${n("png",e)} data-test="sheet-png-${e}"
          >PNG</a
        >
      </div>
    </figcaption>
  </figure>`}async function x1(e){try{let t=[];for(;;){let{body:n}=await M("GET",`/cards?limit=100&offset=${t.
length}`,{signal:e});if(t.push(...n.cards),t.length>=n.total||!n.cards.length)return t}}catch(t){let n=await an().
catch(()=>[]);if(e.aborted||!n.length)throw t;return n}}var y1,d$=f(()=>{_();F();oe();Ie();G();le();$i();Ce();
y1=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function h$(e){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${e.metal.name}</h2>
      <p>
        ${e.press?.name??"No press entered"}${e.press?i`, ${b(pe(e.press.force_kn))}`:h}.
        Checked against ratings at a bend length of ${b(w(e.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${zn(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${E()}</span></th>
          ${e.dies.map(t=>i`<th scope="col" data-test="die-${t.code}">
                V ${H(t.v_opening_mm)}<span class="sub">${t.code}</span>
                <span class="sub"
                  >${t.rating_kn_per_m===null?"rating ?":b(Pe(t.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${e.rows.map(t=>i`<tr>
              <th scope="row">${H(t.thickness_mm)}<span class="sub">${t.gauge??""}</span></th>
              ${t.cells.map(S1)}
            </tr>`)}
      </tbody>
    </table>
    ${M1()}
    <ul class="chart-words">
      ${e.words.map(t=>i`<li>${t}</li>`)}
    </ul>
  </article>`}function S1(e){return e.usable?i`<td
    class="cell ${e.level}"
    data-level=${e.level}
    data-die=${e.die}
    title=${e.why}>
    <span class="first"
      ><span class="force">${je(e,"force_kn_per_m").text}</span>${e.level==="stop"?h:i`<span class="expected">${wn(
e,"force_kn_per_m").text}</span>`}${e.level==="ok"?h:x(e.level,T1(e))}</span
    >
    ${e.level==="stop"?h:i`<span class="rest"
            >${w(e.min_flange_mm).text} · R ${w(e.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${e.die} title=${e.why}>
      <span aria-hidden="true">–</span><span class="unseen">${e.why}</span>
    </td>`}function T1({level:e,limit:t,share_percent:n}){return e==="unknown"?"rating?":`${t??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(e==="stop"?"over":"near")}function M1(){let e=Pe(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${e}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${x("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${x("caution","die 85 %")} over 80 % of a rating</li>
    <li>${x("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var p$=f(()=>{_();rt();A();ut();V();Xe()});var u$={};se(u$,{show:()=>A1});async function A1(e){e.title("Wall chart"),e.render(Oe("Working out the chart…"));
let t=(await de("metals",e.signal)).items;if(!t.length)return e.render(xe("No metals yet",i`A chart needs one. ${R(
ne.metals,i`<a href="/shop/metals">Metals</a>`)}`)),e.ready();let n=e.query.get("metal")??t[0].code,s=e.query.
get("bend_length")??"",o=null,a=null,{ask:r}=Kt(async(p,u)=>(await M("GET",`/chart?${l()}`,{signal:u,timeout:2e4})).
body,p=>{o=p.answer??o,a=p.error??null,d(),e.ready()},e.signal);function l(){let p=new URLSearchParams({metal:n});
return s.trim()&&p.set("bend_length_mm",ee(s)),p}function c(){let p=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${p}`),r(null),d()}function d(){e.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${Z({name:"metal",label:"Metal",value:n,options:t.map(({code:p,name:u})=>[p,u]),change:p=>{n=p,c()}})}
          ${O({name:"bend_length",label:"Checked at a bend length of",value:s,unit:E(),keys:"decimal",placeholder:E()===
"mm"?"1000":"39.37",change:p=>{s=p,c()}})}
          ${co(d)} ${ho("Print the chart")}
        </div>
        ${a?hn(a):h}
        ${o?gi(h$(o),{lying:!0,about:"Wall chart as it prints"}):a?h:Oe("Working out the chart…")}`)}ye(d,e.
signal),r(null,{now:!0})}var m$=f(()=>{_();F();ge();oe();A();p$();G();le();$i();Ce();Uo()});function f$(e,{fault:t,takeOut:n}){return i`<section class="panel" data-test="panel-press-screens">
    <h2>Press screens <span class="soft">${e.length}</span></h2>
    ${t?i`<p class="wrong" role="alert" data-test="press-screen-fault">${t}</p>`:h}
    ${e.length?i`<ul class="plain-list press-screen-list">
            ${e.map(s=>i`<li data-test="press-screen-row" data-name=${s.name}>
                  <span><b>${Jt(s.name)}</b> ${O1(s)}</span>
                  ${R("press_screens.remove",i`<button
                      type="button"
                      class="button"
                      data-test="remove-press-screen"
                      aria-label="Take it out… ${Jt(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      To add one, open the shop's address on it, with <a href="/press-screen">/press-screen</a> behind it.
    </p>
  </section>`}var O1,g$=f(()=>{_();yn();ue();le();O1=({code:e})=>e?i`<a href="/c/${e}">${I(e)}</a>`:i`<span class="soft">empty</span>`});function $$(e){let t=e.map(({ring:o})=>at([o])),n=Yc-2*_i,s=Math.min(...t.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return e.map(({name:o,ring:a},r)=>L1(o,a,t[r],s))}function L1(e,t,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*_i),c=(Yc-(o-n)*r)/2-n*r,d=u=>c+u*r,p=u=>_i+(a-u)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${Yc} ${l}"
      role="img"
      aria-label="${e||"Outline"} to scale, ${wi(o-n)} wide, ${wi(a-s)} high"
      data-test="outline">
      ${E1(n,o,d(0),l)}
      <path
        class="tool"
        d=${Le(t)}
        transform="translate(${c} ${_i+a*r}) scale(${r})" />
      ${N1(d(n),d(o),l-16,wi(o-n))}
      ${P1(p(s),p(a),d(o)+16,wi(a-s))}
    </svg>
    ${e?i`<figcaption>${e}</figcaption>`:h}
  </figure>`}function E1(e,t,n,s){return e>0||t<0?h:y`<path class="centre" d="M${n} 6V${s-6}"/>`}function N1(e,t,n,s){
return y`<path class="dimension" d="M${e} ${n}H${t}M${e} ${n-5}v10M${t} ${n-5}v10"/>
    <text class="measure" x=${(e+t)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function P1(e,t,n,s){
let o=(e+t)/2;return y`<path class="dimension" d="M${n} ${e}V${t}M${n-5} ${e}h10M${n-5} ${t}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function po(e,t){return e?.length?i`<svg class="small-outline" viewBox=${op(
t,2)} aria-hidden="true">
    <path class="tool" d=${Le(e)} />
  </svg>`:h}function uo(e){let t=e.filter(n=>n?.length);return t.length?at(t):[0,0,1,1]}var Yc,_i,wi,da=f(()=>{
_();A();bn();rt();Yc=360,_i=50;wi=e=>b({text:H(e),unit:E()})});function b$(e,t){let n=uo(t.map(s=>s.outline_mm));return i`<ul class="rack">
    ${t.map(s=>i`<li>
          <a
            href="/shop/${e}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${po(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:h}</span
            >
          </a>
        </li>`)}
  </ul>`}var w$=f(()=>{_();da()});var _$={};se(_$,{show:()=>C1});async function C1(e){e.title("Shop");let[{press:t,kept:n},s,o,a,r,l]=await Promise.
all([Va(e.signal),de("punches",e.signal),de("dies",e.signal),de("holders",e.signal),de("metals",e.signal),ts(e.
signal).catch(()=>null)]),c={benches:l,fault:""};async function d(u){let m=ns(u.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A display that still shows it asks which press screen it is.`)){c.fault=
"";try{await Lu(u.name)}catch(g){c.fault=K(g)}c.benches=await ts(e.signal).catch(()=>c.benches),p()}}let p=()=>e.
render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${R(ne.press,"Changing anything needs the shop's server.")}
              </p>`:h}
        <div class="shop-grid">
          ${R1(t)} ${Xc("punches",s.items)} ${Xc("dies",o.items)}
          ${Xc("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${re("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(B1)}
            </ul>
          </section>
          ${c.benches?f$(c.benches,{...c,takeOut:d}):h} ${I1()}
        </div>`);p(),e.ready()}function R1(e){return e?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${e.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${b(pe(e.force_kn))}</dd>
      </div>
      <div>
        <dt>Bed</dt>
        <dd>${b(w(e.bed_length_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Open height</dt>
        <dd>${b(w(e.open_height_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Holder in the ram</dt>
        <dd>${e.holder??"none"}</dd>
      </div>
    </dl>
  </section>`:i`<section class="panel" data-test="panel-press">
      <h2>Press</h2>
      <p>${x("unknown","No press yet")}</p>
      <p>Without its figures nothing can be checked against it.</p>
      ${R(ne.press,i`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`}function Xc(e,t){let n=t.filter(o=>o.rating_kn_per_m===null).length,s=t.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${e}">
    <h2><a href="/shop/${e}">${un[e].title}</a> <span class="soft">${t.length}</span></h2>
    ${t.length?b$(e,t):i`<p>None yet. ${R(ne[e],i`<a href="/shop/${e}/+">Add the first</a>`)}</p>`}
    ${n||s?i`<p class="rack-flags">
            ${n?x("unknown",`${n} without a rating`):h}
            ${s?x("caution",`${s} worn or damaged`):h}
          </p>`:h}
  </section>`}function I1(){let e=re("/backups",i`<a class="button wide" href="/backups" data-test="to-backups">Backups and export</a>`);
return re("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${e===h?"":", backups, crew"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${e}
        ${re("/crew",i`<a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>`)}
      </div>
    </section>`)}var B1,y$=f(()=>{_();F();yn();ge();A();g$();V();le();w$();B1=({code:e,name:t})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(e)}">${t}</a>
    ${re("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(e)}" data-test="learned-${e}"
        ><span class="wide-only">Measured&nbsp;</span>springback</a
      >`)}
  </li>`});function k$(e,{took:t,show:n,signal:s}){let o={file:"",busy:!1,choices:{...v$},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(p){return a=p,Object.assign(o,{file:p.name,choices:{...v$},layers:[]}),
d()}function c(p,u){return o.choices={...o.choices,[p]:u},o.choices.origin==="point"&&!o.choices.point?n():d()}
async function d(){if(!a)return;let p=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>W1)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:u}=await fa(
`/outlines/dxf?${D1(o.choices,e)}`,a,"image/vnd.dxf",s);if(p!==r)return;Object.assign(o,{answer:u,layers:u.layers}),
t(u)}catch(u){if(p!==r||s.aborted)return;if(o.wrong=K(u),u instanceof L&&u.outline){let{code:m,layers:g}=u.outline;
Object.assign(o,{fault:u.outline,code:m,layers:g.length?g:o.layers})}}o.busy=!1,n()}return{state:o,choose:l,set:c}}
function D1(e,t){let n=Object.entries(e).filter(([s,o])=>o&&(s!=="point"||e.origin==="point"));return new URLSearchParams(
[["kind",t],...n])}var v$,W1,x$=f(()=>{F();v$={units:"",layer:"",origin:"rule",point:"",turn_deg:"0",mirror:"n\
o"},W1=2e6});async function mo(e,t){let n=await e.read(t),s={kept:n,draft:e.toDraft(n??e.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>e.fromDraft(s.draft,s.kept??{}),a=()=>e.draw(s);function r(g,$){s.draft={...s.draft,[g]:$},delete s.
wrong[g],yt(()=>"Leave without saving what you typed?"),e.preview?.(o()),a()}async function l(g){Object.assign(
s,{busy:!0,wrong:{},others:[],clash:null}),a();try{await e.write(g),yt(null),e.done(g);return}catch($){await c(
$)}s.busy=!1,a(),Tt(s.wrong)}async function c(g){if(g instanceof L&&g.status===412){let $=s.kept;s.kept=await e.
read(t);let v=s.kept?e.toDraft(s.kept):{},T=Qh($,s.kept)?"others changed":s.kept?"this changed":"taken out";s.
clash={how:T,differences:T==="this changed"?Xr(s.draft,v,e.boxes):[]}}else if(g instanceof L&&Object.keys(g.errors).
length){let{byName:$,others:v}=Dp(g.errors,e.boxes.map(({name:T})=>T));Object.assign(s,{wrong:$,others:v})}else
s.others=[`Not saved: ${K(g)} What you typed is still here.`]}function d(){Object.assign(s,{draft:e.toDraft(s.
kept??e.blank),clash:null}),yt(null),e.preview?.(o()),a()}let p=new Map;function u(g,$){let v=p.get($)??k$(g,{
signal:t,show:a,took:T=>m($,T)});return p.set($,v),v}function m(g,{points_mm:$,height_mm:v}){g==="points_mm"&&
s.draft.height_mm===""&&r("height_mm",q(v)),r(g,Rp($))}return e.preview?.(o()),{reader:u,state:s,change:r,takeTheirs:d,
show:a,save:()=>l(o()),takeOut:()=>l(null)}}var yi=f(()=>{F();ge();Lt();x$();We();A();no();G()});function ki(e,t,n){let s=[],o={},{ask:a}=Kt(async(r,l)=>{let{body:c}=await M("POST","/outline",{body:{kind:e,...j1(
e,r)},signal:l});return c},({question:r,answer:l,error:c})=>{l&&([s,o]=[S$(l,r),l.assumed_mm??{}]);let d=c instanceof
L&&c.outline?.lines_mm.some(u=>u.length>1)?c.outline:null,p=c?U1(c):[];t({parts:s,checks:H1(l),wrong:p,fault:d,
assumed:o})},n);return r=>{F1(e,r)&&a(r)}}function F1(e,t){let n={punch:"punches",die:"dies",holder:"holders",
press:"press"}[e],s=t.assumed??[];return Ot(n).filter(({name:o,type:a,blank:r,when:l})=>["length","number"].includes(
a)&&r===void 0&&!s.includes(o)&&(!l||l(t))).every(({name:o})=>t[o]!==void 0)&&(t.shape!=="multi_v"||t.openings.
every(o=>o.v_opening_mm&&o.angle_deg&&(o.shoulder_radius_mm||s.includes("shoulder_radius_mm"))))}function S$({
outline_mm:e,ram:t,bed:n},s){let o=a=>[`${a}_width_mm`,`${a}_height_mm`].some(r=>s[r]===null);return[{name:"",
ring:e},{name:o("ram")?"Ram, usual size assumed":"Ram",ring:t},{name:o("bed")?"Bed, usual size assumed":"Bed",
ring:n}].filter(({ring:a})=>a?.length)}function j1(e,t){return e==="press"?Hn(t):{...Hn(t),code:t.code||"new"}}
function U1(e){if(!(e instanceof L))return["The drawing waits: the shop's server does not answer."];let t=[...new Set(
Object.values(e.errors).flat())];return t.length?t:[e.message]}var vi,H1,Jc=f(()=>{F();ge();Lt();Uo();vi=e=>({
parts:S$({...e,...e?.outlines_mm},{...e}),checks:[],wrong:[],fault:null,assumed:{}});H1=e=>(e?.checks??[]).filter(
({code:t})=>!/(rating-unknown|no-segments)$/.test(t))});function ha({state:e,change:t},n){let s=n.taken(e.draft.code)?["This code is in use already."]:e.wrong.code;return O(
{name:"code",label:"Code",value:e.draft.code,change:o=>t("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function xi({state:e,takeOut:t},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return he(ne[n.kind])?i`<div role="alert">
      ${e.others.map(a=>i`<p class="wrong-line" data-test="not-saved">${a}</p>`)}
    </div>
    <div class="buttons">
      <button
        class="button next"
        data-test="save"
        ?disabled=${e.busy||n.taken(e.draft.code??"")}>
        ${e.busy?"Saving…":`Save the ${s}`}
      </button>
      <a class="button" href="/shop/${n.kind}">Back to the list</a>
      ${n.isNew?h:i`<button
              type="button"
              class="button"
              data-test="take-out"
              ?disabled=${e.busy}
              @click=${()=>confirm(o)&&t()}>
              Take it out…
            </button>`}
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var fo,
Si=f(()=>{_();ge();Te();G();fo=(e,t)=>he(e)?t:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${t}</fieldset>`});function M$(e,t){if(!e?.systematic)return h;let n=e.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
    <h2>The gauge’s zero</h2>
    <p>
      <b
        >${e.flanges} measured flanges agree: the gauge stands
        ${b(w(Math.abs(e.zero_mm),{digits:2}))} too far ${n}.</b
      >
      Set its zero by as much at the press. Nothing here changes until you say that it is set; flanges
      measured before that no longer count.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="gauge-zero-set" @click=${t}>The zero is set</button>
    </div>
  </section>`}var T$,A$=f(()=>{_();F();A();T$=e=>M("GET","/press/gauge",{signal:e}).then(({body:t})=>t,()=>null)});function N$(e,{metals:t,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=e,d=m=>g=>{r[m]=g,delete l[m]},
p=(m,g)=>({name:m,label:g,value:r[m]??"",wrong:l[m],change:d(m)}),u=(m,g,$)=>i`<div class="broad">${Z({...p(m,
g),options:[["","Choose"],...$]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one is, the more bed and ram give way.
    </p>
    <form novalidate @submit=${be(()=>G1(e,o))}>
      <div class="fields">
        ${u("metal","Metal",t)} ${u("die","Die",n)} ${u("punch","Punch",s)}
        ${E$.map(([m,g,$])=>O({...p(m,g),unit:E(),keys:"decimal",hint:$}))}
        ${L$.map(([m,g])=>O({...p(m,g),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${e.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${e.busy}>Work it out</button>
      </div>
    </form>
    ${c?V1(c,a):h}
  </details>`}function V1(e,t){let n=s=>b(w(s,{digits:2}));return i`<div data-test="strips-found" role="status">
    <p>
      <b>About ${n(e.deflection_mm)}</b> in the middle at full force over the whole bed, between
      ${n(e.deflection_mm_low)} and ${n(e.deflection_mm_high)}: the middle strip is
      ${b(S(e.middle_open_deg))} more open.
    </p>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="strips-take"
        @click=${()=>t(q(e.deflection_mm))}>
        Put it in the box
      </button>
    </div>
  </div>`}async function G1(e,t){if(!e.busy){Object.assign(e,{busy:!0,wrong:{},general:"",found:null}),t();try{
let{body:n}=await M("POST","/press/strip-test",{body:z1(e.typed)});e.found=n}catch(n){e.wrong=n instanceof L?n.
errors:{},e.general=K(n)}e.busy=!1,t()}}function z1(e){let t={metal:e.metal,die:e.die,punch:e.punch};for(let[n]of E$)
t[n]=ee(e[n]??"");for(let[n]of L$)t[n]=ia(e[n]??"");return t}var O$,L$,E$,P$=f(()=>{_();F();Mn();A();G();O$=()=>({
typed:{},wrong:{},general:"",busy:!1,found:null}),L$=[["left_deg","Left"],["middle_deg","Middle"],["right_deg",
"Right"]],E$=[["thickness_mm","Thickness of the strips",""],["strip_length_mm","Length of the bend","All three\
 alike, at most a quarter of the bed."],["end_mm","Outer strips from the bed’s end","To the middle of the st\
rip, left and right alike."]]});function Ti({code:e,lines_mm:t,edges:n,marks_mm:s}){let o=at([...t,s]),a=Un(o,Qc-2*C$,ed-2*C$),[r,l]=a([o[2],o[1]]),
c=[(Qc-r)/2,(ed-l)/2],d=m=>{let[g,$]=a(m);return[g+c[0],-($+c[1])]},p=!["open","branching"].includes(e),u=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${Qc} ${ed}"
    role="img"
    aria-label="The outline as far as it was understood, ${u}"
    data-test="outline-fault">
    ${t.map(m=>y`<path class="fault-line" d=${Bo((p?[...m,m[0]]:m).map(d))}/>`)}
    ${n.map(m=>q1(t[0],m,d))} ${s.map(m=>K1(d(m)))}
  </svg>`}function q1(e,t,n){let[s,o]=[e[t-1],e[t%e.length]].map(n);return y`<path class="fault-edge" d=${Bo([
s,o])}/>
    ${B$(s,t)}${B$(o,t%e.length+1)}`}var Qc,ed,C$,B$,K1,td=f(()=>{_();bn();Qc=360,ed=300,C$=30;B$=([e,t],n)=>y`<text class="fault-number" x=${e} y=${-t-
9} text-anchor="middle" font-size="19">${n}</text>`,K1=([e,t])=>y`<g class="fault-mark" data-test="fault-mark"><circle cx=${e} cy=${-t} r="10"/>
    <path d="M${e-14} ${-t}h28M${e} ${-t-14}v28"/></g>`});var R$,I$,us,go,It,nd,W$=f(()=>{_();R$={bed_length_mm:1,between_frames_mm:2,open_height_mm:3,stroke_mm:4,throat_mm:5,
ram_width_mm:6,ram_height_mm:7,bed_width_mm:8,bed_height_mm:9,gauge_x_min_mm:10,gauge_x_max_mm:10,gauge_r_min_mm:11,
gauge_r_max_mm:11,finger_height_mm:12,finger_depth_mm:13},I$=(e,t,n)=>y`<circle class="mark" cx=${e} cy=${t} r="13"/>
    <text class="mark-number" x=${e} y=${t+6} text-anchor="middle" font-size="16">${n}</text>`,us=(e,t,n,s,o=(e+
t)/2)=>y`<path class="dimension" d="M${e} ${n}H${t}M${e} ${n-6}v12M${t} ${n-6}v12"/>
    ${I$(o,n,s)}`,go=(e,t,n,s,o=(t+n)/2)=>y`<path class="dimension" d="M${e} ${t}V${n}M${e-6} ${t}h12M${e-6} ${n}h12"/>
    ${I$(e,o,s)}`,It=e=>y`<path class="tool" d=${e} />`,nd=()=>i`<div class="press-sizes" data-test="press-sizes">
    <figure>
      <svg class="drawing" viewBox="0 0 360 300" role="img" aria-label="The press from the front">
        ${It("M40 20H70V280H40Z")}${It("M290 20H320V280H290Z")}${It("M55 60H305V120H55Z")}
        ${It("M30 200H330V260H30Z")} ${us(70,290,160,2)} ${us(30,330,285,1)}
      </svg>
      <figcaption>From the front</figcaption>
    </figure>
    <figure>
      <svg class="drawing" viewBox="0 0 360 300" role="img" aria-label="The press from the side">
        ${It("M120 12H345V288H120V262H285V42H120Z")} ${It("M150 42H190V110H150Z")}
        ${It("M150 190H190V262H150Z")} ${It("M160 110H180V125L170 140L160 125Z")}
        ${It("M158 170H165L170 176L175 170H182V190H158Z")} ${It("M225 158H262V168H225Z")}
        <path class="centre" d="M170 20V282" />
        ${go(110,110,190,3)} ${go(70,110,150,4)} ${us(170,285,72,5,250)}
        ${us(150,190,28,6,206)} ${go(135,42,110,7,76)} ${us(150,190,275,8,206)}
        ${go(135,190,262,9,226)} ${us(170,225,218,10)} ${go(205,158,170,11,138)}
        ${go(272,158,168,12,190)} ${us(225,262,140,13,243)}
      </svg>
      <figcaption>From the side; the back gauge stands on the right</figcaption>
    </figure>
  </div>`});function D$(e,{state:t,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:d,layers:p}=t,u=`dx\
f-${e}`,m=(g,$,v)=>Z({name:`${u}-${g}`,label:$,value:d[g],options:v,change:T=>s(g,T)});return i`<div class="dxf broad" data-test=${u}>
    <label class="button dxf-file" for="${u}-file"
      >${o?"Read another DXF file":"Read a DXF file"}
      <input
        id="${u}-file"
        data-test="${u}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${({target:g})=>{g.files?.[0]&&n(g.files[0]),g.value=""}} />
    </label>
    ${o?i`<div role="status">
              ${a?i`<p class="hint">Reading ${o}…</p>`:h}
              ${r?i`<p data-test="${u}-read">
                      <b>${o}</b>, read in ${r.units}: ${sd(r.width_mm)} wide,
                      ${sd(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${sd(r.within_mm)}. ${r.rule}${Q1(r)}
                    </p>`:h}
              ${l?i`<p class="wrong" data-test="${u}-wrong">${l}</p>`:h}
            </div>
            ${c?.lines_mm.length?Ti(c):h}
            <div class="fields">
              ${m("units","Drawn in",Z1)}
              ${p.length>1||d.layer?m("layer","Layer",[["","all"],...p.map(g=>[g,g])]):h}
              ${m("origin","0, 0 is",Y1)}
              ${d.origin==="point"?O({name:`${u}-point`,label:"Point number",value:d.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:g=>s("point",g)}):h}
              ${m("turn_deg","Turned",X1)} ${m("mirror","Mirrored",J1)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function Q1({left_out:e}){return e.length?` Left out: ${e.map(({kind:t,count:n})=>`${n} ${t}`).join(
", ")}.`:""}var Z1,Y1,X1,J1,sd,F$=f(()=>{_();td();A();G();Z1=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],Y1=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
X1=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],J1=[["no","no"],
["yes","front to back"]];sd=e=>b(w(e,{digits:2}))});function H$({draft:e,change:t,wrong:n}){let s=e.openings??"",o=Mt(s);return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((r,l)=>eS(r,l,{rows:o,wrong:n,up:e.up||"1",set:c=>t("openings",Ap(s,l,c)),raise:()=>t("up",String(
l+1)),drop:()=>a(l)}))}
    ${(n.openings??[]).map(r=>i`<p class="wrong" data-test="wrong-openings">${r}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>t("openings",Op(s))}>
      Add a V
    </button>
  </div>`;function a(r){let l=Number(e.up||"1");t("openings",Lp(s,r)),(l>r+1||l>=o.length)&&t("up",String(Math.
max(l-1,1)))}}function eS(e,t,{rows:n,wrong:s,up:o,set:a,raise:r,drop:l}){let[c,d]=[t+1,`openings.${t}`],p=$=>s[`${d}\
.${$}`]??[],u=Object.keys(Ho).map($=>`${d}.${$}`),m=Object.entries(s).filter(([$])=>($===d||$.startsWith(`${d}\
.`))&&!u.includes($)).flatMap(([,$])=>$),g=($,v,T,B="")=>O({name:`opening-${c}-${Ho[$]}`,label:v,unit:T,placeholder:B,
value:e[Ho[$]],keys:$==="code"?"text":"decimal",change:P=>a({[Ho[$]]:P}),wrong:p($)});return i`<fieldset class="opening" data-test="opening-${c}">
    <legend>V ${c}</legend>
    <div class="opening-head">
      <label class="tick"
        ><input
          type="radio"
          name="up"
          value=${c}
          data-test="up-${c}"
          .checked=${Me(o===String(c))}
          @change=${r} />
        drawn up</label
      >
      ${n.length>1?i`<button
              type="button"
              class="button"
              data-test="drop-${c}"
              aria-label="Take out V ${c}"
              @click=${l}>
              Take out
            </button>`:h}
    </div>
    <div class="fields three">
      ${g("v_opening_mm","V opening",E())} ${g("angle_deg","Angle","°")}
      ${g("shoulder_radius_mm","Shoulder radius",E())}
      ${Z({name:`opening-${c}-face`,label:"Face",value:e.face||"top",options:Mp,change:$=>a({face:$}),wrong:p(
"face")})}
      ${g("centre_mm","Off the middle",E(),"0")}
      ${g("rating_kn_per_m","Rating",Qe().unit,"as the block")}
      ${g("code","Code","","automatic")}
    </div>
    ${m.map($=>i`<p class="wrong">${$}</p>`)}
  </fieldset>`}var j$=f(()=>{_();pn();nr();A();G()});function Mi({kind:e,draft:t,change:n,wrong:s,preview:o,options:a={},first:r=h,reader:l,groups:c=Rs[e]}){return i`<div class="workbench">
    ${c.map((d,p)=>i`<section class="panel ${d.part}">
          <h2>${d.title}</h2>
          ${p===0?r:h} ${d.part==="outline"?rd(o):h}
          <div class="fields">
            ${d.fields.filter(({when:u,hidden:m})=>!m&&(!u||u(t))).map(u=>u.type==="openings"?H$({draft:t,change:n,
wrong:s}):tS(u,t[u.name]??"",m=>n(u.name,m),{wrong:s[u.name],options:a[u.name],assumed:o?.assumed[u.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function rd(e){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${e?.fault?Ti(e.fault):e?.parts.length?i`<div class="outlines">${$$(e.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${e?.wrong.map(t=>i`<p class="wrong" data-test="outline-wrong">${t}</p>`)}
    ${e?He(e.checks,{quiet:!0}):h}
  </div>`}function tS(e,t,n,{wrong:s=[],options:o=e.options,assumed:a,reader:r}){let{name:l,label:c,type:d}=e;
if(d==="pick"||d==="yes"){let g=e.blank?[["",e.blank],...o??[]]:o??[];return U$(e,Z({name:l,label:c,value:t,options:g,
change:n,wrong:s}))}if(d==="points"||d==="note"){let g=e.dxf?D$(l,r(e.dxf,l)):h;return nS(e,t,i`${g}${sS(e,t,n,
s)}`)}let p=V$(e),u=["number","length","force","rating","speed"].includes(d)?"decimal":"text",m=O({name:l,label:c,
mark:R$[l],value:t,change:n,wrong:s,unit:p,keys:u,hint:[ad(a),oS(e,t)].filter(Boolean).join(" "),placeholder:e.
blank??(a===void 0?"":"assumed")});return d==="rating"?i`<div class="broad">
      ${m}${t.trim()?h:x("unknown",`${c} unknown`)}
    </div>`:U$(e,m)}function nS({folded:e,label:t},n,s){return e?i`<details class="broad" ?open=${!!n}>
        <summary>${t}</summary>
        ${s}
      </details>`:s}function V$({type:e,unit:t=""}){return e==="force"?ct().unit:e==="rating"?Qe().unit:e==="s\
peed"?`${E()}/s`:["length","lengths","points"].includes(e)?E():t}function sS(e,t,n,s){let{name:o,label:a,hint:r,
type:l}=e;return Vn({name:o,label:a,value:t,change:n,wrong:s,hint:r,unit:V$(e),lines:l==="points"?7:2})}function oS({
type:e,hint:t="",counted_mm:n},s){let o=[t];return n!==void 0&&o.push(`Empty: ${ae(jt("counted_mm",n))} is cou\
nted with (common practice).`),e==="rating"&&!s.trim()&&o.push(Pp),(e==="force"||e==="rating")&&o.push(aS(e,s)),
e==="lengths"&&o.push(rS(s)),o.filter(Boolean).join(" ")}function aS(e,t){if(C().units==="inch")return"Short t\
ons, of 2000 lb; metric ones with a t.";let n=sn(t,{unit:""}).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];if(!n)return"";
let s=Number(n)*ma;return`In metric tons: ${b(e==="force"?pe(s):Pe(s))}.`}function rS(e){let t=e.split(/[,;\n]/).
filter(n=>n.trim()).length;return t?t===1?"1 piece.":`${t} pieces.`:""}function G$(e,t){let n=od.flatMap(({fields:o})=>o).
filter(({name:o,blank:a,type:r})=>(a==="unknown"||r==="rating")&&!e.draft[o]?.trim()).length,s=od.some(({fields:o})=>o.
some(({name:a})=>e.wrong[a]?.length));return i`${Mi({...e,kind:"press",groups:iS})}
    <details class="more-figures" data-test="more-figures" ?open=${t||s}>
      <summary>
        More figures${n?i` <span class="soft">(${n} not known)</span>`:h}
      </summary>
      <p>Each may stay unknown. An answer that depends on one says so and asks for it.</p>
      ${t?lS():nd()} ${Mi({...e,kind:"press",groups:od})}
    </details>`}var ad,U$,iS,od,lS,Ai=f(()=>{_();td();W$();da();oe();Ol();A();V();F$();G();pt();j$();ad=e=>e===
void 0?"":`Counted with ${ae(jt("assumed_mm",e))}, assumed.`;U$=({broad:e,type:t},n)=>e||t==="lengths"?i`<div class="broad">${n}</div>`:
n;iS=Rs.press.slice(0,1),od=Rs.press.slice(1);lS=()=>ie("Where each size is measured",nd(),{test:"sketch",open:!1})});function z$(e,t){return i`<section class="panel" id="zero" data-test="zero">
    <h2>Zero set anew, or another press?</h2>
    <p>
      What results taught of this press’s error no longer holds then. It is measured again from the next piece
      on; until then each bend begins with a first hit, and the measured springback of the metals stays.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="depth-zero-set" @click=${e}>
        The depth’s zero was set
      </button>
      <button type="button" class="button" data-test="another-press" @click=${t}>
        It is another press
      </button>
    </div>
  </section>`}var q$=f(()=>{_()});var K$={};se(K$,{show:()=>cS});async function cS(e){let t=he(ne.press),s=(await de("holders",e.signal)).items.
map(({code:T,name:B})=>[T,`${T}, ${B}`]),o=async T=>(await de(T,e.signal)).items.flatMap(Gl).map(({code:B,name:P})=>[
B,P?`${B}, ${P}`:B]),a=O$(),[r,l,c,d]=t?await Promise.all([T$(e.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],p=null,u={before:null,after:null},m=null,g=await mo({async read(T){let B=await(t?Ga:Va)(T);return p=
B.etag,u.before=B.press?.depth_zeroed_at??null,B.press??void 0},async write(T){let B=await Jh(T,p);u.after=B.depth_zeroed_at},
blank:{},boxes:Ot("press"),toDraft:T=>rr("press",T),fromDraft:(T,B)=>({...ir("press",T,B),depth_zeroed_at:B?.depth_zeroed_at??
null,gauge_zeroed_at:B?.gauge_zeroed_at??null}),preview:t?ki("press",T=>{m=T,g.show()},e.signal):void 0,draw:()=>g&&
v(),done(){X(u.after===u.before?"The press is saved.":"The press is saved. Its error is measured anew."),$e("/\
shop")}},e.signal);e.title("The press"),t||(m=vi(g.state.kept));let $=(...T)=>{let B=new Date().toISOString();
for(let P of T)g.state.kept[P]=B;g.save()};function v(){let{state:T,change:B,save:P}=g;e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${T.kept?.name??"The press"}</h1>
        ${t?i`<p>
                ${T.kept?"Take every figure from the press's own plate and manual.":"No press yet. Name, force\
 and bed length are enough, from its own plate."}
                What is not known may stay empty.
              </p>`:h}
        ${T.clash?to(T.clash,"press",{saveMine:P,takeTheirs:g.takeTheirs}):h}
        ${M$(r,()=>$("gauge_zeroed_at"))}
        <form novalidate @submit=${be(P)}>
          ${fo(ne.press,G$({draft:T.draft,change:B,wrong:T.wrong,preview:m,reader:g.reader,options:{holder:s}},
!!T.kept))}
          <div role="alert">
            ${T.others.map(k=>i`<p class="wrong-line" data-test="not-saved">${k}</p>`)}
          </div>
          <div class="buttons">
            ${t?i`<button class="button next" data-test="save" ?disabled=${T.busy}>
                    ${T.busy?"Saving…":"Save the press"}
                  </button>`:h}
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>
        ${t&&T.kept?N$(a,{metals:l,dies:c,punches:d},{draw:v,take:k=>B("deflection_mm",k)}):h}
        ${t&&T.kept?z$(()=>$("depth_zeroed_at"),()=>$("depth_zeroed_at","gauge_zeroed_at")):h}`)}v(),e.ready()}
var Z$=f(()=>{_();ge();Lt();yi();it();Jc();Te();We();no();Si();A$();Qn();P$();Ai();q$();G()});function X$(e,t,n,s){let{angles:o,wrong:a}=la(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:d}=Zn(
t),p={id:e,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:d,die:n.die,punch:n.punch,...o};p.set_angle_deg=
s.set.trim()?hS(s.set,a):n.set_angle_deg;for(let[u,m]of dS)s[u].trim()&&(p[m]=ee(s[u]));return s.lot.trim()&&(p.
lot=s.lot.trim()),s.note.trim()&&(p.note=s.note.trim()),C().name&&(p.by=C().name),{body:p,wrong:a}}function hS(e,t){
let{angles:n}=la({...Oi,one:e});return n.measured_deg===void 0&&(t.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var Oi,dS,Y$,J$=f(()=>{dr();Mn();oe();A();Oi={...ra,depth:"",flat:"",
leftFlange:"",rightFlange:""},dS=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_l\
eft_mm"],["rightFlange","flange_right_mm"],["radius","radius_mm"]],Y$=e=>Object.entries(e).some(([t,n])=>t!=="\
places"&&t!=="lot"&&n.trim()!=="")});function tb(e,t){let n=Math.min((Q$-2*eb-34)/e,170/t),[s,o]=[e*n,t*n],[a,r]=[eb+34,24],[l,c,d]=[a+s,r+o,a+s/2],
p=b(w(e,{digits:0})),u=b(w(t,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${Q$} ${Math.round(c+52)}"
    role="img"
    aria-label="A strip ${p} long and ${u} wide, bent in its middle"
    data-test="strip">
    <path class="sheet" d="M${a} ${r}H${l}V${c}H${a}Z" />
    <path class="fold" d="M${d} ${r-14}V${c+14}" />
    <path
      class="dimension"
      d="M${a} ${c+20}H${l}M${a} ${c+15}v10M${l} ${c+15}v10" />
    <text x=${d} y=${c+44} text-anchor="middle" font-size="18">${p}</text>
    <path
      class="dimension"
      d="M${a-16} ${r}V${c}M${a-21} ${r}h10M${a-21} ${c}h10" />
    <text
      x=${a-26}
      y=${(r+c)/2}
      text-anchor="middle"
      font-size="18"
      transform="rotate(-90 ${a-26} ${(r+c)/2})">
      ${u}
    </text>
  </svg>`}var Q$,eb,nb=f(()=>{_();A();Q$=400,eb=30});function ab({before:e,after:t,points:n=[],size:s=1,words:o}){let a=[e.low,e.high,t.low,t.high,...n.map(p=>p.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return h;let c=Fs(r,l,{from:ob,to:sb-ob,size:s,most:5}),{at:d}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${sb} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(p=>y`<path class="faint" d="M${p.at} 8V84"/>
          <text class="quiet" x=${p.at} y="104" text-anchor="middle"
            font-size=${pS}>${p.text}</text>`)}
    <path
      class="was"
      d="M${d(e.low)} 24H${d(e.high)}M${d(e.low)} 17v14M${d(e.high)} 17v14M${d(e.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${d(t.low)} 52H${d(t.high)}" data-test="band-after" />
    <path class="now-middle" d="M${d(t.nominal)} 42v20" />
    ${n.map(p=>uS(d(p.value),74,p))}
  </svg>`}function uS(e,t,{id:n,outlier:s,weight:o=1}){return s?y`<path class="result-odd" d="M${e-6} ${t-6}l12 12M${e+
6} ${t-6}l-12 12"
        data-test="band-point" data-id=${n} data-odd="true"/>`:y`<circle class="result-point" cx=${e} cy=${t} r=${o<
.25?3:6} data-test="band-point"
        data-id=${n}/>`}var sb,ob,pS,rb=f(()=>{_();ql();sb=340,ob=24,pS=17});function db({before_mm:e,after_mm:t,flanges:n,strips:s}){let o=c=>b(w(c,{digits:2})),a=t.nominal-e.nominal,r=Number(
Q(a,2))===0,l=`${o(Math.abs(a))} ${a>0?"shorter":"longer"}`;return i`<p data-test="deduction">
    A bend takes <b>${o(t.nominal)}</b> (${o(t.low)} to ${o(t.high)}) off the sum of its
    flats${r?", as before":i`: the next blank is <b>${l}</b> for each such bend`}. Rests on
    ${[ib(n,"measured flange"),ib(s,"strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`}function Li(e){if(!e.length)return i`<p data-test="no-figures">No figure changed.</p>`;let t=e.flatMap(
s=>s.points??[]),n=["Thin: before. Thick: now. Rings: results"];return t.some(s=>(s.weight??1)<.25)&&n.push("s\
mall ones, of other sheet or tools, count little"),t.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${e.
map(mS)}</div>
    ${t.length?i`<p class="hint">${n.join("; ")}.</p>`:h}`}function mS(e){let{what:t,before:n,after:s,trials:o,
points:a=[]}=e,r=c=>fS(e.unit,c),l=`${t[0].toUpperCase()}${t.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${t}>
    <h3>
      ${l} <small>${o===0?"no results":o===1?"1 result":`${o} results`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${lb(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${lb(s,r)}</dd>
      </div>
    </dl>
    ${ab({before:n,after:s,points:a,size:e.unit==="mm"&&E()==="in"?ve:1,words:`${l}: before ${cb(n,r)}, now ${cb(
s,r)}, ${a.length} results drawn.`})}
  </section>`}function fS(e,t){return e==="deg"?S(t):e==="mm"?w(t,{digits:2}):{text:Q(t,3),unit:e}}var ib,lb,cb,
id=f(()=>{_();rb();A();ib=(e,t)=>e?`${e} ${t}${e>1?"s":""}`:"";lb=(e,t)=>i`<b>${b(t(e.nominal))}</b>
    <span class="band">${t(e.low).text} to ${t(e.high).text}</span>`,cb=({low:e,high:t},n)=>`${n(e).text} to ${b(
n(t))}`});function fb(e,{metals:t,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:d}=e,p=(m,g,$={})=>O(
{name:m,label:g,value:r[m],wrong:W(c,m),change:v=>Object.assign(r,{[m]:v}),unit:E(),next:!0,...$}),u=(m,g,$)=>Z(
{name:m,label:g,value:r[m],options:$,wrong:W(c,m),change:v=>{Object.assign(r,{[m]:v}),a()}});return i`<form novalidate data-test="choose-form" @submit=${be(
o)}>
    <p>One strip, bent and measured, turns the handbook’s figures into those of your metal and your tools.</p>
    ${mb(e)}
    <div class="test-fields">
      ${u("metal","Metal",t.map(({code:m,name:g})=>[m,g]))}
      ${p("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${p("bend_length_mm","Strip’s width, along the bend")}
      ${p("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${u("die","Die",pb(n,r.die))}
      ${u("punch","Punch",pb(s,r.punch))}
      ${O({name:"lot",label:"Lot or heat",value:l.lot,wrong:W(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${d}>
        ${d?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function pb(e,t){let n=e.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=t&&!e.some(({code:o})=>o===t)?
[[t,`${t} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function gb({bend:e},{go:t}){let n=e.
worst!=="stop"&&e.die&&e.punch,s=b(w($S,{digits:0}));return i`${gr(e.checks)}
    <section class="panel urgent hands" aria-label="Hands" data-test="hands">
      <p>
        ${x("caution")} <b>A small strip brings hands close.</b> Hold it at its far end, ${s} or more
        from the punch. Shorter: tongs or a magnet, never fingers. Nobody else near the pedal. Guards on. The
        ends swing up: face clear of them.
      </p>
    </section>
    <div class="columns">
      <div>
        <ol class="do-list">
          <li>
            Cut a strip <b>${b(w(e.bend_length_mm,{digits:0}))}</b> wide and about
            <b>${b(w(hb,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
            edges cut.
          </li>
          <li>
            Measure its <b>length</b> before you bend it, with a calliper or a good rule, and write it down.
          </li>
          <li>Lay it in the middle of the tools, square to the gauge, and bend it in its middle.</li>
        </ol>
        <div class="tools-line" data-test="tools-line">
          Die <b>${e.die??"none"}</b>, punch <b>${e.punch??"none"}</b>
        </div>
        <div class="set-figures">
          ${Je("Angle to set",S(e.set_angle_deg),"set-angle")}
          ${Je("Depth",w(e.punch_depth_mm,{digits:2}),"punch-depth")}
        </div>
        ${Is(e.first_hit)}
        <div class="figures">${Vo("Allow for",e)}</div>
      </div>
      <div class="strip-pictures">
        ${tb(hb,e.bend_length_mm)}
        ${e.drawing?Nt(e.drawing,{pose:"before",close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,
words:"The strip on the die before the bend"}):h}
      </div>
    </div>
    ${Ws(e.checks)} ${_n(e.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>t("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>t("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function $b(e,{go:t,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=e,c=(p,u,m,g={})=>O({name:u,
label:m,value:o[p],wrong:W(a,u),change:$=>Object.assign(o,{[p]:$}),unit:E(),next:!0,...g}),d={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${be(n)}>
    ${mb(e)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${b(S(r.included_angle_deg))}. The angle is
      needed; the lengths and the radius improve the figures.
    </p>
    <div class="measures">
      <fieldset class="panel">
        <legend><span class="badge-word">1</span> Angle</legend>
        <div class="result-angles ${o.places}">
          ${o.places==="one"?c("one","measured_deg","Angle measured",d):[c("left","left_deg","Left",d),c("midd\
le","middle_deg","Middle",d),c("right","right_deg","Right",d)]}
        </div>
        ${Gc(o,s)}
      </fieldset>
      <fieldset class="panel">
        <legend><span class="badge-word">2</span> Lengths</legend>
        ${c("flat","flat_length_mm","Strip’s length before the bend")}
        <div class="fields">
          ${c("leftFlange","flange_left_mm","One flange")}
          ${c("rightFlange","flange_right_mm","The other")}
        </div>
        <p class="hint">Outside: from the edge to the outer face of the other flange.</p>
      </fieldset>
      <fieldset class="panel">
        <legend><span class="badge-word">3</span> Inside radius</legend>
        ${c("radius","radius_mm","Radius inside the bend",{hint:"With a radius gauge or a drill’s shank that j\
ust fits."})}
      </fieldset>
    </div>
    <details
      class="more-measured"
      ?open=${["set_angle_deg","punch_depth_mm","note"].some(p=>W(a,p).length)}>
      <summary>Another setting, depth shown, note</summary>
      <div class="test-fields">
        ${c("set","set_angle_deg","Angle that was set",{...d,placeholder:S(r.set_angle_deg).text,hint:"Leave i\
t if it was set as shown."})}
        ${c("depth","punch_depth_mm","Depth the press showed",{hint:"Travel from first touch of the flat sheet\
, if the press shows it."})}
        ${c("note","note","Note",{unit:"",hint:"Grain, coating, anything odd."})}
      </div>
    </details>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>t("bend")}>Back</button>
      <button class="button next" data-test="done" ?disabled=${l}>${l?"Sending…":"Done"}</button>
    </div>
  </form>`}function bb({answer:e,form:t,busy:n},s,{again:o}){if(!e)return h;let a=s.find(({code:d})=>d===t.metal)?.
name??t.metal,{teaches:r,asks:l,said:c}=e.test_bend;return i`<h2>What it changed <small>${a}</small></h2>
    <div class=${e.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${e.said.map(d=>i`<p>${Se(d)}</p>`)}
    </div>
    ${r?h:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${x("caution")} <b>Kept, but it does not count.</b> ${Fo(c)}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:h}
          </section>`}
    ${e.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${x("caution","Odd one out")}</h2>
            ${e.outliers.map(({said:d})=>i`<p>${Fo(d)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(t.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:h}
    ${Li(e.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${e.cards.length?i`<ul class="rows">
              ${e.cards.map(bS)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-learned"
        >Measured springback</a
      >
    </div>`}var gS,hb,$S,ub,mb,bS,wb=f(()=>{_();Go();nb();A();ut();G();zc();zo();V();Xn();id();kn();mt();gS=[[
"choose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Result"]],hb=300,$S=102,ub=e=>i`<ol class="stages" aria-label="Stages">
    ${gS.map(([t,n])=>i`<li aria-current=${t===e?"step":"false"}>${n}</li>`)}
  </ol>`,mb=({general:e})=>e?i`<p class="wrong" role="alert" data-test="wrong">${e}</p>`:h;bS=({code:e,title:t,
said:n})=>i`<li class="row" data-test="changed-card" data-code=${e}>
    <a href="/c/${e}">
      <span class="lead">${t||e}</span> <span class="code">${e}</span>
      <span class="more">${n.map(Se).join("; ")}</span>
    </a>
  </li>`});var _b={};se(_b,{show:()=>_S});async function _S(e){e.title("Test bend"),e.render(Oe("Looking into the crib…"));
let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async $=>(await de($,e.signal)).items)),o=lr(e.query);
o.metal||=t[0]?.code??"",o.bend_length_mm||=E()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...Oi},bend:null,
answer:null,id:Ke(),wrong:{},general:"",busy:!1};yt(()=>a.stage==="measure"&&Y$(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>e.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${ub(a.stage)} ${l()}
      </article>`);function l(){let $={draw:r,go:c,choose:d,send:p,again:u};return a.stage==="bend"?gb(a,$):a.
stage==="measure"?$b(a,$):a.stage==="taught"?bb(a,t,$):fb(a,{metals:t,dies:n,punches:s},$)}function c($){Object.
assign(a,{stage:$,wrong:{},general:""}),r(),scrollTo(0,0)}async function d(){let $=jo(o);if($.length)return m(
Object.fromEntries($.map(v=>[v,wS[v]])));history.replaceState(null,"",`/shop/test-bend?${cr(o)}`),await g(async()=>{
let v=await M("POST","/bend",{body:Zn(o),signal:e.signal});a.bend=v.body,c("bend")})}async function p(){let{body:$,
wrong:v}=X$(a.id,o,a.bend,a.typed);if(Object.keys(v).length)return m(v);await g(async()=>{let T=await M("POST",
"/test-bends",{body:$,timeout:2e4});a.answer=T.body,c("taught"),U()})}function u(){Object.assign(a,{typed:{...Oi,
lot:a.typed.lot,places:a.typed.places},answer:null,id:Ke()}),d()}function m($,v=""){Object.assign(a,{wrong:$,general:v}),
r(),Tt($)}async function g($){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await $()}catch(v){
return e.signal.aborted?void 0:(a.busy=!1,m(v instanceof L?v.errors:{},yS(v)))}a.busy=!1,r()}}ye(r,e.signal),r(),
e.ready()}function yS(e){return e instanceof L?e.message:e instanceof j?"The shop’s server does not answer. Wh\
at you typed stays here: try again.":String(e)}var wS,yb=f(()=>{_();F();dr();ge();Re();We();oe();ke();J$();A();
G();Ce();wb();wS={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as\
 1.98."],bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you\
 want, such as 90."]}});function vb(e){if(!e)return h;let{set_by:t,offset_mm:n,results:s,strip:o}=e;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
e.apart)}>
    <h2>
      The press <small>${t?vS[t]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?kS(n,s):h}
    ${n?re("/shop/press",i`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`):h}
    ${e.said.map(a=>i`<p>${Se(a)}</p>`)}
    ${o?re("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${xS(o)}>Bend this strip</a>
            </p>`):h}
  </section>`}function kS({low:e,nominal:t,high:n},s){let o=l=>w(Math.abs(l),{digits:2}),a=l=>`${b(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(t).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(t)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(e)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var vS,xS,kb=f(()=>{_();A();V();le();vS={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};
xS=({metal:e,thickness_mm:t,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:e,thickness:`${t} mm`,die:n})}`});var xb={};se(xb,{show:()=>SS});async function SS(e){let{metal:t}=e.params,n=`metal=${encodeURIComponent(t)}`;e.
title("Measured springback");let{items:s}=await de("metals",e.signal),o=s.find(({code:d})=>d===t);if(!o)return e.
title("No such metal"),e.render(xe(`No metal ${t} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(`${o.name}: measured springback`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){
let[d,p]=await Promise.all([M("GET",`/learned?${n}`,{signal:e.signal}),M("GET",`/test-bends?${n}`,{signal:e.signal})]),
u=d.body,{evidence:m}=p.body;Object.assign(a,{groups:u.groups,press:u.press}),a.evidence=[...m].sort((g,$)=>g.
made_at<$.made_at?1:-1)}async function l(d,p){if(!a.busy){a.busy=d.id,c();try{let{body:u}=await M("POST",`/evi\
dence/${encodeURIComponent(d.id)}/${p}`,{body:C().name?{by:C().name}:{},timeout:2e4});await r(),X(MS(p,u.cards)),
U()}catch(u){if(e.signal.aborted)return;if(!(u instanceof L||u instanceof j))throw u;X(u.message)}a.busy="",c()}}
let c=()=>e.render(i`<p class="crumb">
          <a href="/shop">Shop</a> / <a href="/shop/metals/${encodeURIComponent(t)}">${o.name}</a>
        </p>
        <div class="head-line">
          <h1>Measured springback <span class="soft">${o.name}</span></h1>
          ${re("/shop/test-bend",i`<a class="button next" href="/shop/test-bend?${n}" data-test="to-test-bend"
              >Test bend</a
            >`)}
        </div>
        ${a.evidence.length?i`<div class="learned" data-test="learned" aria-busy=${a.busy?"true":"false"}>
                <section class="learned-figures">
                  ${vb(a.press)} ${AS(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Results</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(d=>OS(d,a.busy,l))}
                  </ul>
                </section>
              </div>`:xe("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),ye(c,e.signal),c(),e.ready()}function MS(e,t){let n=TS[e];return t.
length?`${n} ${t.length===1?"One card":`${t.length} cards`} would now plan differently: ${t.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function AS(e){return e.length?e.map(({thickness_mm:t,v_opening_mm:n,lot:s,factor:o,deduction:a,
figures:r,said:l})=>i`<section data-test="group" data-thickness=${t} data-v=${n}>
        <h2>
          ${b(w(t,{digits:2}))} over V
          ${b(w(n))}${s?i` <small>lot ${s}</small>`:h}
        </h2>
        ${l.map(c=>i`<p class="together" data-test="together">${x("caution")} ${Se(c)}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${Q(o.nominal,2)} times</b> as much as expected
                (${Q(o.low,2)} to ${Q(o.high,2)}).
              </p>`:h}
        ${a?db(a):h} ${Li(r)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No result is in use: the figures are the metal’s own.</p>`}function OS(e,t,n){
let s=e.kind==="test bend"?"Test bend":i`First piece${e.code?i` of <a href="/c/${e.code}">${e.code}</a>`:h}`,o=[
e.set_angle_deg===null?"":`set at ${b(S(e.set_angle_deg))}`,b(w(e.thickness_mm,{digits:2})),e.die?`die ${e.die}`:
e.v_opening_mm?`V ${b(w(e.v_opening_mm))}`:"",e.lot?`lot ${e.lot}`:"",ce(e.made_at),Gt(e)];return i`<li
    class="row evidence ${e.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${e.id}
    data-forgotten=${String(e.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${b(S(e.measured_deg))}</span> ${s}
        ${e.forgotten?x("unknown","Forgotten"):e.asks?x("unknown","Does not count"):e.outlier?x("caution","Odd\
 one out"):h}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${e.note?i`<p>${e.note}</p>`:h}
      ${e.said.length?i`<p class=${e.asks?"":"more"} data-test="evidence-words">${Fo(e.said)}</p>`:h}
    </div>
    <div class="evidence-marks">
      ${LS(e).map(([a,r])=>R(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${t!==""}
            @click=${()=>n(e,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function LS({forgotten:e,asks:t}){return e?[["remember","Use it again"]]:t?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var TS,Sb=f(()=>{_();F();ge();it();oe();ke();
A();V();id();le();kb();Ce();Xe();TS={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var Tb={};se(Tb,{show:()=>ES});async function ES(e){let t=ja(e.params.kind);if(!t)return e.title("Not here"),e.
render(xe("No such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready();let{one:n,title:s,many:o}=un[t];
e.title(s);let{items:a,kept:r}=await de(t,e.signal),l=uo(a.map(c=>c.outline_mm??[]));e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?h:R(ne[t],i`<a class="button" href="/shop/${t}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${R(ne[t],"Changing anything needs the shop's server.")}
            </p>`:h}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>t==="metals"?IS(c):NS(t,c,l))}
            </ul>`:xe(`No ${o} yet`,R(ne[t],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),e.ready()}function NS(e,t,n){return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/${e}/${encodeURIComponent(t.code)}">
      <span class="thumb">${po(t.outline_mm,n)}</span>
      <span class="who"
        ><span class="lead">${t.code}</span> <span>${t.name}</span>${CS(t)}${PS(t)}</span
      >
      <span class="fact"><span class="what">Place</span>${fn(t)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${t.rating_kn_per_m===null?x("unknown"):b(Pe(t.rating_kn_per_m))}</span
      >
      ${t.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${t.segments_mm.length?i`${t.segments_mm.length}, up to
                    ${b(w(BS(t.segments_mm),{digits:0}))}`:"not entered"}</span
            >`:h}
      <span class="fact"><span class="what">Condition</span>${RS(t)}</span>
    </a>
  </li>`}function CS({shape:e,openings:t=[]}){return e!=="multi_v"?h:i`<span class="soft" data-test="block-vs"
    >${t.map(n=>`${n.code}: V ${b(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function RS({condition:e,condition_note:t}){if(e==="good")return x("ok","Good");let n=e==="damaged"?x("st\
op","Damaged"):e==="worn"?x("caution","Worn"):x("unknown");return i`${n}${t?i` <span class="soft">${t}</span>`:
h}`}function IS(e){let{tensile_mpa:t}=e;return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/metals/${encodeURIComponent(e.code)}">
      <span class="who"><span class="lead">${e.name}</span> <span class="soft">${e.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${t.low} to ${t.high} MPa</span>
      <span class="fact"><span class="what">Reliability</span>${t.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${e.gauge_family??"none"}</span>
    </a>
  </li>`}var PS,BS,Mb=f(()=>{_();ge();A();V();le();Ce();da();PS=e=>e.assumed?.length?x("unknown","Sizes assume\
d"):h;BS=e=>Math.max(...e)});function cd(e,t){let n=t.params.tool===ld,s=n?void 0:t.params.tool,o={items:[],etag:null,kept:!1};return{kind:e,
isNew:n,code:s,async read(a){return o=await(he(ne[e])?Ua:de)(e,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(d=>d.code!==s),l=o.items.findIndex(d=>d.code===s),c=a?[{...a,code:s??a.code}]:[];await Xh(
e,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){X(a?`${a.name||s} is saved.`:`${s} is taken out.`),$e(`/\
shop/${e}`)},free(){let a=e[0].toUpperCase();for(let r=1;;r+=1)if(!o.items.some(l=>l.code===`${a}${r}`))return`${a}${r}`},
taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var ld,Ab=f(()=>{ge();it();Te();We();ld="+"});function Nb(e,t,n){let s=e==="holders"?[]:t.assumed??[];return{...n,...Object.fromEntries(s.map(o=>[o,""]))}}function Pb(e,t,{
draft:n,kept:s,shape:o}){if(e==="holders")return t;let a=s.assumed??[],r=(WS[n.shape]??[]).filter(l=>!n[l]?.trim()&&
(o||a.includes(l)));return o?{...t,assumed:r,name:t.name||DS(o,n)}:{...t,assumed:r}}function DS({title:e,boxes:t},n){
let s=E();return t===pa?`${e} ${n.angle_deg}°, R ${n.tip_radius_mm} ${s}`:t===Eb?`V ${n.v_opening_mm} ${s}, ${n.
angle_deg}°`:`${e}: ${FS(n.openings).join(", ")} ${s}`}function Cb(e,t){let n=Lb(t);return Kn(Lb(e).map((s,o)=>({
...Mt("")[0],v:s,angle:n.length===1?n[0]:n[o]??""})))}var ms,pa,Eb,Ob,Ei,WS,FS,Lb,dd=f(()=>{A();nr();ms=e=>e.split(
" ").map(t=>t.split(",").map(Number)),pa=["angle_deg","tip_radius_mm","rating_kn_per_m","height_mm","segments_\
mm"],Eb=["v_opening_mm","angle_deg","rating_kn_per_m","height_mm","segments_mm"],Ob=["openings","rating_kn_per\
_m","height_mm","segments_mm"],Ei={punches:[{key:"straight",title:"Straight",shape:"straight",ring:ms("0,0 11,\
12 11,60 -11,60 -11,12"),boxes:pa},{key:"acute",title:"Acute",shape:"straight",ring:ms("0,0 10,36 10,60 -10,60\
 -10,36"),boxes:pa},{key:"gooseneck",title:"Gooseneck",shape:"gooseneck",ring:ms("0,0 7,8 26,26 26,38 13,50 13\
,60 -13,60 -13,50 12,34 12,26 -7,8"),boxes:pa},{key:"radius",title:"Radius",shape:"straight",ring:ms("-12,8 -9\
,3 -5,0.7 0,0 5,0.7 9,3 12,8 12,60 -12,60"),boxes:pa}],dies:[{key:"single",title:"Single V",shape:"single_v",ring:ms(
"-22,-45 22,-45 22,0 11,0 0,-11 -11,0 -22,0"),boxes:Eb},{key:"block",title:"Block of V’s",shape:"multi_v",ring:ms(
"-30,-60 -8,-60 0,-52 8,-60 30,-60 30,-35 25,-30 30,-25 30,0 12,0 0,-12 -12,0 -30,0 -30,-20 -20,-30 -30,-40"),
boxes:Ob},{key:"angles",title:"Several angles",shape:"multi_v",ring:ms("-30,-60 -5,-60 0,-40 5,-60 30,-60 30,-\
36 24,-30 30,-24 30,0 16,0 0,-8 -16,0 -30,0 -30,-24 -14,-30 -30,-36"),boxes:Ob}]},WS={straight:["height_mm","b\
ody_width_mm"],gooseneck:["height_mm","body_width_mm","neck_relief_mm"],single_v:["shoulder_radius_mm","height\
_mm","width_mm"],multi_v:["shoulder_radius_mm","height_mm","width_mm"]};FS=e=>Mt(e).map(({v:t})=>t);Lb=e=>e.split(
/[,;]/).map(t=>t.trim()).filter(Boolean)});function Bb(e){let{kind:t,shape:n,preview:s}=e;return i`<div class="workbench">
    <section class="panel what">
      <h2>Which looks like it?</h2>
      ${jS(t,n,e.pick)}
      <h2>What is engraved on it</h2>
      <div class="fields">
        ${n.boxes.map(o=>o==="openings"?VS(e):US(e,o))}
        ${e.first}
      </div>
      <button type="button" class="button" data-test="all-sizes" @click=${e.allSizes}>All sizes</button>
    </section>
    <section class="panel outline">
      <h2>As it is counted with</h2>
      ${rd(s)} ${GS(s)}
    </section>
  </div>`}function jS(e,t,n){let s=Ei[e]??[],o=uo(s.map(({ring:a})=>a));return i`<div class="shapes" role="radiogroup" aria-label="Shape">
    ${s.map(a=>i`<label>
          <input
            type="radio"
            name="picture"
            value=${a.key}
            data-test="shape-${a.key}"
            .checked=${a.key===t.key}
            @change=${()=>n(a)} />
          ${po(a.ring,o)}<span>${a.title}</span>
        </label>`)}
  </div>`}function US({kind:e,draft:t,change:n,wrong:s,preview:o},a){let r=Ot(e).find(c=>c.name===a);if(!r)return h;
let l=r.type==="rating"?Qe().unit:r.type==="number"?r.unit:E();return O({name:a,label:r.label,unit:l,keys:r.type===
"lengths"?"text":"decimal",value:t[a]??"",change:c=>n(a,c),wrong:s[a],hint:ad(o?.assumed[a])||HS[a]?.hint,placeholder:o&&
a in o.assumed?"assumed":""})}function VS({draft:e,change:t,wrong:n}){nn.openings!==(e.openings??"")&&Object.assign(
nn,{openings:"",vs:"",angles:""});let s=r=>{Object.assign(nn,r),nn.openings=Cb(nn.vs,nn.angles),t("openings",nn.
openings)},o=Object.entries(n).filter(([r])=>r.startsWith("openings")),a=r=>o.filter(([l])=>l.endsWith("angle_\
deg")===r).flatMap(([,l])=>l);return i`<div class="broad">
      ${O({name:"vs",label:"V openings",unit:E(),value:nn.vs,change:r=>s({vs:r}),wrong:a(!1),hint:"All of the \
block, with commas between."})}
    </div>
    ${O({name:"angles",label:"Angle of the V’s",unit:"°",keys:"text",value:nn.angles,change:r=>s({angles:r}),
wrong:a(!0),hint:"One for all, or one for each, with commas between."})}`}function GS(e){let t=Object.entries(
e?.assumed??{});if(t.length===0)return h;let n=t.map(([s,o])=>`${zS[s]??s} ${ae(w(o))}`).join(", ");return i`<p data-test="assumed">
    ${x("unknown","Assumed")} ${n}: usual proportions, common practice without a source. Answers that
    depend on them say so; measure and enter them under All sizes.
  </p>`}var HS,nn,zS,Rb=f(()=>{_();Lt();dd();A();da();G();V();Ai();HS={height_mm:{hint:"May stay empty."},segments_mm:{
hint:"Lengths with commas between. Empty: one piece as long as needed, assumed."},rating_kn_per_m:{hint:"As en\
graved. Empty is unknown."}};nn={openings:"",vs:"",angles:""};zS={height_mm:"height",body_width_mm:"width of t\
he body",neck_relief_mm:"throat",width_mm:"width",shoulder_radius_mm:"shoulder radius"}});async function Ib(e,t){let n=await mo({...t,blank:{poisson:.3},boxes:qS,toDraft:o=>({code:String(o.code??""),...Ip(
o)}),fromDraft:o=>({...Wp(o),code:o.code.trim()}),draw:()=>n&&s()},e.signal);if(!n.state.kept&&!t.isNew)return e.
title("No such metal"),e.render(xe(`No metal ${t.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(t.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,d={})=>O({name:l,
label:c,value:o.draft[l]??"",change:p=>a(l,p),wrong:o.wrong[l],...d});e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${t.isNew?"New metal":i`${t.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${t.isNew?h:i`<div class="buttons">
                ${re("/shop/learned/x",i`<a
                    class="button"
                    href="/shop/learned/${encodeURIComponent(t.code??"")}"
                    data-test="to-learned"
                    >Measured springback</a
                  >`)}
                ${re("/shop/test-bend",i`<a
                    class="button"
                    href="/shop/test-bend?metal=${encodeURIComponent(t.code??"")}"
                    data-test="to-test-bend"
                    >Test bend</a
                  >`)}
              </div>`}
        ${o.clash?to(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):h}
        <form novalidate @submit=${be(n.save)}>
          ${fo(ne.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${t.isNew?ha(n,t):h} ${r("name","Name")}
                  ${Z({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:xp,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${Cs.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${Vn({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${qn.map(l=>KS(l,n))}</div>`)}
          ${xi(n,t,"metal")}
        </form>`)}s(),e.ready()}function KS({name:e,label:t,unit:n,needed:s},{state:o,change:a}){let r=p=>o.draft[`${e}\
.${p}`]??"",l=p=>o.wrong[`${e}.${p}`]??[],c=p=>u=>a(`${e}.${p}`,u),d=!s&&!hd.some(([p])=>r(p).trim());return i`<fieldset class="panel figure-card" data-test="figure-${e}">
    <legend>${t}${n?i` <span class="hint">(${n})</span>`:h}</legend>
    ${(o.wrong[e]??[]).map(p=>i`<p class="wrong-line">${p}</p>`)}
    <div class="fields three">
      ${hd.map(([p,u])=>O({name:`${e}.${p}`,label:u,value:r(p),change:c(p),wrong:l(p),keys:"decimal"}))}
    </div>
    ${d?x("unknown","Not known"):h}
    <div class="fields source-line">
      ${Vn({name:`${e}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${Z({name:`${e}.standing`,label:"Reliability",value:r("standing"),options:kp.map(p=>[p,p]),change:c("sta\
nding"),wrong:l("standing")})}
    </div>
  </fieldset>`}var hd,qS,Wb=f(()=>{_();Lt();ge();yi();xl();Si();no();V();G();le();Ce();hd=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],qS=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...Cs,...qn.flatMap(({name:e,label:t})=>[...hd,["source","s\
ource"],["standing","reliability"]].map(([n,s])=>({name:`${e}.${n}`,label:`${t}: ${s.toLowerCase()}`}))),...qn]});var Db={};se(Db,{show:()=>YS});async function YS(e){let t=ja(e.params.kind);return t?e.params.tool===ld&&!he(ne[t])?
(e.title(`New ${un[t].one}`),e.render(Wa(ne[t])),e.ready()):t==="metals"?Ib(e,cd(t,e)):XS(e,t):(e.render(xe("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready())}async function XS(e,t){let n=un[t],s=cd(
t,e),o=he(ne[t]),a=null,r=o&&s.isNew?Ei[t]?.[0]:void 0,l=await mo({...s,blank:ZS[t],boxes:[{name:"code",label:"\
Code"},...Ot(t)],toDraft:p=>({code:String(p.code??(r?s.free():"")),...Nb(t,p,rr(t,p))}),fromDraft:(p,u)=>Pb(t,
{...ir(t,p,u),code:p.code.trim()},{draft:p,kept:u,shape:r}),preview:o?ki(n.one,p=>{a=p,l.show()},e.signal):void 0,
draw:()=>l&&d()},e.signal);if(!l.state.kept&&!s.isNew)return e.title("Not in the crib"),e.render(xe(`No ${n.one}\
 ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${t}">${n.title}</a>`)),e.ready();e.title(
s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=vi(l.state.kept));function c(p){r=p,l.change("shape",p.shape)}
function d(){let{state:p,change:u}=l;e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${t}">${n.
title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${p.kept?.name}</span>`}
        </h1>
        ${p.clash?to(p.clash,n.one,{saveMine:l.save,takeTheirs:l.takeTheirs}):h}
        <form novalidate @submit=${be(l.save)}>
          ${fo(ne[t],r&&t!=="holders"?Bb({kind:t,shape:r,draft:p.draft,change:u,wrong:p.wrong,preview:a,first:ha(
l,s),pick:c,allSizes:()=>{r=void 0,d()}}):Mi({kind:t,draft:p.draft,change:u,wrong:p.wrong,preview:a,reader:l.reader,
first:s.isNew?ha(l,s):h}))}
          ${xi(l,s,n.one)}
        </form>`)}d(),e.ready()}var ZS,Fb=f(()=>{_();ge();Lt();yi();Ab();dd();Jc();Te();no();Si();le();Ce();Rb();
Ai();Wb();G();ZS={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"\
unknown",up:1},holders:{shape:"block",condition:"unknown"}}});var Ub={};se(Ub,{show:()=>QS});async function QS(e){e.title("Crew");let{signal:t}=e,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>e.render(t2(n,o)),o=e2(n,s,
t),[a,r,l]=await Promise.all([M("GET","/devices",{signal:t}),M("GET","/crew-options",{signal:t}),Pn(t).then(({
network:d})=>d?M("GET","/join",{signal:t}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),e.ready();let c=setInterval(o.look,JS);t.addEventListener("abort",()=>clearInterval(
c))}function e2(e,t,n){let s=async a=>{e.fault="";try{await a()}catch(r){if(n.aborted)return;e.fault=Ta(r)}t()};
async function o(){if(document.visibilityState!=="visible")return;let a=await M("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;e.devices=a.body.devices;let r=e.offer&&e.devices.find(l=>!e.known.has(
l.id)&&!l.revoked_at);r?Object.assign(e,{came:r,offer:null,name:""}):e.offer&&Date.parse(e.offer.expires_at)<=
Date.now()&&(e.offer=null),t()}return{look:o,draw:t,offer:()=>s(async()=>{let{body:a}=await M("POST","/pairing\
s",{body:{role:e.role,name:e.name.trim()},signal:n});Object.assign(e,{offer:a,came:null,known:new Set(e.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Remove ${a.name}? It can read nothing any more, and its cards\
 go from it when it next asks.`)&&(await M("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await M("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await M(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),e.open=a})}}function t2(e,t){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${e.fault?i`<p class="wrong" role="alert" data-test="fault">${e.fault}</p>`:h}
    ${e.joining?i`<div class="crew-grid">${s2(e,t)}${o2(e.joining)}</div>`:n2()}
    <section class="panel" data-test="devices">
      <h2>Devices in the shop</h2>
      ${a2(e,t)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${Y({name:"labels-open",label:"A device that is not paired",value:e.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>t.setOpen(n==="open")})}
    </section>`}function s2(e,t){let{offer:n,came:s}=e;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${nt[n.role].word}${n.name?i`: <b>${n.name}</b>`:h}. Works once, until
        ${ce(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${jb(n.qr)} />
      <p class="pair-code" data-test="offer-code">${n.code}</p>
      <p class="hint">
        A phone that has not joined the shop's https yet does that first, with the other code.
      </p>
      <button
        type="button"
        class="button wide"
        data-test="offer-done"
        @click=${()=>{e.offer=null,t.draw()}}>
        Hide the code
      </button>
    </section>`:i`<section class="panel" data-test="let-in">
    <h2>Let a device in</h2>
    ${s?i`<p data-test="came">
            ${x("ok","Paired")} <b>${s.name}</b> is in, as ${nt[s.role].word.toLowerCase()}.
          </p>`:h}
    ${Y({name:"role",label:"As",value:e.role,options:Hb,change:o=>{e.role=o,t.draw()}})}
    <p class="hint" data-test="role-does">${nt[e.role].word}: ${nt[e.role].does}.</p>
    ${O({name:"device-name",label:"Whose?",value:e.name,placeholder:"Ann's phone",change:o=>e.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${t.offer}>
      Show a pairing code
    </button>
  </section>`}function o2(e){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${jb(e.qr)} />
    <p>${e.shop}: ${e.https.map(t=>i`<span class="address">${t}</span> `)}</p>
    ${e.http.length?i`<p class="hint">Or type <span class="address">${e.http[0]}/join</span></p>`:h}
    ${e.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${r2(e.fingerprint)}</p>`:h}
  </section>`}function a2({devices:e},t){return e.length?i`<ul class="plain-list devices">
    ${e.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:h}
            <span class="soft"
              >${n.revoked_at?`removed ${ce(n.revoked_at)}`:`last seen ${ce(n.seen_at)}`},
              paired ${ce(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${x("stop","Removed")}</p>`:i`${Z({name:`role-${n.id}`,label:`Role of ${n.name}`,
value:n.role,options:Hb,change:s=>t.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>t.revoke(n)}>
                    Remove…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var JS,Hb,n2,jb,r2,Vb=f(()=>{_();F();Cn();
V();G();Xe();JS=2e3,Hb=Object.entries(nt).map(([e,{word:t}])=>[e,t]);n2=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;jb=e=>`data:image/svg+xml,${encodeURIComponent(e)}`,r2=e=>e.replace(/(.{4})(?=.)/g,"$1 ")});var Ni,pd=f(()=>{_();Ni=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop; what still waits to be sent does not, so open Flangebook in the shop’s network first. Some phones ask
  each time before the camera may be used.
</p>`});var zb={};se(zb,{show:()=>i2});async function i2(e){e.title("Pair this device"),e.render(Oe("Asking the shop…"));
let t={me:null,code:l2(),name:C().name,fault:"",asking:!1,waits:0},n=()=>e.render(c2(t,n));t.me=await Pn(e.signal).
catch(()=>null),t.waits=(await Ze().catch(()=>[])).length,n(),e.ready()}function l2(){if(location.pathname!=="\
/pair"||!location.hash)return"";let e=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),e}function c2(e,t){let{me:n}=e;return n?n.role?d2(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${Gb[rn()??n.why]?i`<p data-test="why">${x("caution","Not paired")} ${Gb[rn()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
    ${e.waits?i`<p data-test="waits">
            ${e.waits===1?"1 result":`${e.waits} results`} typed here still
            ${e.waits===1?"waits":"wait"}. Pair again and
            ${e.waits===1?"it is":"they are"} sent.
          </p>`:h}
    <ol class="ways">
      <li>The owner opens <b>Shop, Crew</b> on the shop's computer or a paired phone, and shows a code.</li>
      <li>Point this phone's camera at it, or type the eight characters here.</li>
    </ol>
    <form class="panel" novalidate @submit=${be(()=>p2(e,t))}>
      ${O({name:"pair-code",label:"Pairing code",value:e.code,placeholder:"ABCD-1234",change:s=>e.code=s,wrong:e.
fault?[e.fault]:[]})}
      ${O({name:"pair-name",label:"Whose device is this?",value:e.name,placeholder:"Ann's phone",change:s=>e.name=
s,hint:"The owner sees this name in the list."})}
      <button class="button next wide" data-test="pair" ?disabled=${e.asking}>Pair this device</button>
    </form>
    ${n.way==="http"?i`<p data-test="plain-http">
            ${x("caution","Not encrypted")} This is plain http: whoever is in the network can listen.
            <a href="/join">Join the shop's https first</a>; it also gives you cards in dead spots and the
            camera.
          </p>`:h}
  </div>`:i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      Pairing needs it. Try again when this device is in the shop's network.
      <p>
        <button type="button" class="button next" data-test="try-again" @click=${()=>location.reload()}>
          Try again
        </button>
      </p>
    </div>`}function d2(e){let t=e.role;return e.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${x("ok",nt[t].word)} <b>${e.name}</b>: ${nt[t].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${Ni}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${h2}>Unpair this device…</button>
    </p>
  </div>`}async function h2(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await fh()}async function p2(e,t){Object.assign(e,{asking:!0,fault:""}),t();try{await mh(e.
code,e.name.trim()),U(),$e(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
e,{asking:!1,fault:Ta(n)}),t()}}var Gb,qb=f(()=>{_();Cn();Re();We();oe();ke();V();G();pd();Ce();Gb={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function Kb({show:e,done:t,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,d){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),e();try{if(o.size>m2)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");let p=await fa(`/import?${d}`,
o,"application/json",n,u2);s.told=p.body}catch(p){if(n.aborted)return;s.wrong=f2(p)}s.busy="",e(),s.told?.imported&&
t()}}return{state:s,choose:a,take:r}}function f2(e){if(!(e instanceof L))return[K(e)];let t=Object.entries(e.errors).
slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[e.message,...t]}var u2,m2,Zb=f(()=>{F();u2=3e5,m2=6e7});function Jb({state:e,choose:t,take:n}){let{name:s,busy:o,told:a,wrong:r}=e;return i`<section class="panel" data-test="panel-import">
    <h2>Bring a file in</h2>
    <p>
      A file that was exported here or in another shop. It is looked through first; nothing changes until you
      say so.
    </p>
    <label class="button wide dxf-file" for="import-file"
      >${s?"Choose another file":"Choose a file"}
      <input
        id="import-file"
        data-test="import-file"
        class="unseen"
        type="file"
        accept=".json,application/json"
        ?disabled=${!!o}
        @change=${({target:l})=>{l.files?.[0]&&t(l.files[0]),l.value=""}} />
    </label>
    <div role="status">
      ${o?i`<p>${o==="looking"?`Looking through ${s}…`:`Bringing ${s} in…`}</p>`:h}
      ${r.length?$2(s,r):h}
      ${a?a.imported?_2(a):b2(s,a,n):h}
    </div>
  </section>`}function b2(e,t,n){return i`<div data-test="import-preview">
    <p><b>${e}</b>, exported ${ce(t.exported_at)} by ${t.made_by}</p>
    <table>
      ${ft("What","In the file","In the shop now")}
      <tbody>
        ${g2.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${Xb(t.holds[s])}</td>
              <td>${Xb(t.here[s])}</td>
            </tr>`)}
      </tbody>
    </table>
    ${t.untouched?i`<p>${x("ok","The shop is empty")}</p>
            <button type="button" class="button next wide" data-test="import-now" @click=${n}>
              Bring it in
            </button>`:i`<p>
              ${x("caution","Everything in the shop is replaced")} A backup of what is there now is made
              first.
            </p>
            <button
              type="button"
              class="button next wide"
              data-test="import-now"
              @click=${()=>w2(t)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var g2,Yb,$2,Xb,w2,_2,Qb=f(()=>{_();V();Xe();eo();g2=[["press","Press"],["tools","Tools"],["metals",
"Metals"],["cards","Cards"],["revisions","Revisions"],["trials","Results"],["test_bends","Test bends"]],Yb=8;$2=
(e,t)=>i`<div data-test="import-wrong">
    <p>${x("stop","Not brought in")} ${e}</p>
    <ul>
      ${t.slice(0,Yb).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${t.length>Yb?i`<p>There are more.</p>`:h}
    <p>Nothing in the shop was changed.</p>
  </div>`;Xb=e=>e===""?"none":e,w2=({here:e,holds:t})=>confirm(`Replace the shop? Its ${e.cards} cards and ${e.
trials} results go, the file's ${t.cards} cards and ${t.trials} results come. A backup is made first.`),_2=({holds:e,
kept_as:t})=>i`<div data-test="import-done">
    <p>${x("ok","Brought in")} ${e.cards} cards, ${e.trials} results.</p>
    ${t?i`<p>The shop that was there is kept as ${t}.</p>`:h}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var ew={};se(ew,{show:()=>v2});async function v2(e){e.title("Backups and export");let t=Kb({show:a,done:s,signal:e.
signal}),n=await o();async function s(){U(),n=await o(),a()}async function o(){let{body:r}=await M("GET","/bac\
kups",{signal:e.signal});return r}function a(){e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Backups and export</h1>
        <div class="settings-grid">
          ${k2(n)}
          <div class="stack">${T2()}${Jb(t)}</div>
        </div>`)}a(),e.ready()}function k2({standing:e,last_good_at:t,trouble:n,folder:s,backups:o}){return i`<section class="panel" data-test="panel-backups">
    <h2>Backups</h2>
    <p data-test="standing">${x2(e)}</p>
    ${t?i`<p class="lead-line" data-test="last-good">Last good backup: ${ce(t)}</p>`:h}
    ${n?i`<p class="wrong" data-test="trouble">${ce(n.at)}: ${n.words}</p>`:h}
    <p>
      The server makes one each night, looks it through, and keeps seven days and four weeks. Put one on
      another disk, too: a backup beside the shop burns with it.
    </p>
    ${o.length?i`<table data-test="backups">
            ${ft("Made","How","Size")}
            <tbody>
              ${o.map(a=>i`<tr>
                    <td>${ce(a.at)}</td>
                    <td>${y2[a.kind]}</td>
                    <td>${S2(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:h}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> restores one.
    </p>
  </section>`}function x2(e){return e==="ok"?x("ok","There is a good backup"):e==="late"?x("caution","The last\
 backup is over two days old"):e==="trouble"?x("stop","The last backup could not be made"):x("unknown","There \
is no backup yet")}function T2(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and results, as open JSON. Bring it in again here, or
      read it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var y2,S2,tw=f(()=>{_();F();Zb();ke();V();Qb();Xe();eo();y2={night:"automatic","by-hand":"by han\
d",replaced:"before it was replaced"};S2=e=>`${(e/1e6).toFixed(1)} MB`});var ua,nw=f(()=>{ua=[{key:"bend",title:"Check a bend",picture:"v-opening",steps:["Pick the metal, type thickne\
ss and length of the bend. 90 is square.","Read the answer: which die and punch, what to set, the force to all\
ow for.","Read what is not known: each line says what to measure or enter.","Without a press or tools of your \
own, plain stand-in tools are counted with, and the answer says so."],to:["/bend","Check a bend"]},{key:"part",
title:"The first part",picture:"blank",steps:["Type the outside lengths of the flats from left to right, and t\
he bends between them.","The blank, the order of the bends and the tools to fetch come as you type.","A stop s\
ays what to change. A caution says what to watch.","Save it as a card: it keeps its set-up as planned."],to:["\
/part","New part"]},{key:"label",title:"Label and scan",picture:"label",steps:["Print the card's label and put\
 it on the bin or the drawing.","Scan a label: it opens that card and no other, without network too.","Where a\
 camera cannot read it, type the seven characters under the square."],to:["/scan","Scan a label"]},{key:"measu\
re",title:"Measure and correct",picture:"second-hit",steps:["Make the first hit as the step says. It comes out\
 a little too open.","Take the pressure off, measure the angle, type it as the result of the step.","Set what \
the app answers and press the same bend again.","Keep the new setting when the piece is right."],to:["/","Find\
 a card"]},{key:"strip",title:"Test strip",picture:"springback",steps:["Cut a strip of the same sheet, measure\
 its thickness and length.","Bend it as the screen says, measure the angle and the two flanges.","From then on\
 springback and deduction of this metal come from your own measurements."],to:["/shop/test-bend","Test bend"]},
{key:"screen",title:"Press screen",picture:"screen",steps:["Open this address on a large display by the press \
and give it a name.","On a phone, open a card and send it to the press screen.","A foot switch that acts as a \
keyboard steps on."],to:["/press-screen","Press screen"]},{key:"crew",title:"Crew",picture:"devices",steps:["S\
tart the shop for its network, then let each phone scan the pairing square once.","An owner's device changes p\
ress, tools and cards; an operator's works by the cards.","What is typed without network waits on the device a\
nd is sent later."],to:["/crew","Crew"]},{key:"backups",title:"Backups",picture:"copy",steps:["The shop makes \
a backup of itself each night. Look now and then whether there is a good one.","Save a copy on another disk: t\
he one in the same computer is lost with it.","The export is one open file with everything; it can be brought \
in again."],to:["/backups","Backups and export"]}]});var ud={};se(ud,{show:()=>M2});function M2(e){let{page:t}=e.params;e.title("Guide"),e.render(t?O2(t):A2()),e.ready()}
function O2(e){let t=ua.findIndex(l=>l.key===e);if(t<0)return xe("No such page of the guide",i`<a href="/guide">Guide</a>`);
let{title:n,picture:s,steps:o,to:a}=ua[t],r=ua[t+1];return i`<p class="crumb"><a href="/guide">Guide</a></p>
    <h1>${n}</h1>
    <div class="guide-page" data-test="guide-page">
      <div>${Wo(s)}</div>
      <div>
        <ol class="guide-steps">
          ${o.map(l=>i`<li>${l}</li>`)}
        </ol>
        <div class="buttons">
          ${re(a[0],i`<a class="button next" href=${a[0]}>${a[1]}</a>`)}
          ${r?i`<a class="button" href="/guide/${r.key}">Next: ${r.title}</a>`:h}
        </div>
      </div>
    </div>`}var A2,md=f(()=>{_();bl();le();Ce();nw();A2=()=>i`<h1>Guide</h1>
    <ol class="guide-list" data-test="guide">
      ${ua.map(({key:e,title:t,picture:n})=>i`<li>
            <a class="panel" href="/guide/${e}" data-test="guide-${e}"
              >${Wo(n)}<b>${t}</b></a
            >
          </li>`)}
    </ol>
    <p><a class="button" href="/words" data-test="to-words">The trade’s words</a></p>`});var sw={};se(sw,{show:()=>L2});function L2(e){e.title("The trade’s words"),e.render(i`<p class="crumb"><a href="/guide">Guide</a></p>
      <h1>The trade’s words</h1>
      <div class="word-list" data-test="words">
        ${Object.entries(Do).map(([t,{title:n}])=>i`<section class="panel" id=${t}>
              <h2>${n}</h2>
              ${wl(t)}
            </section>`)}
      </div>`),e.ready(),location.hash&&document.getElementById(location.hash.slice(1))?.scrollIntoView()}var ow=f(
()=>{_();Qa()});async function aw(e){let{code:t,part:n,title:s,note:o,created_by:a}=e,r={code:t,part:{...n,title:s},note:o,by:a},
{body:l}=await M("POST","/cards",{body:r,timeout:2e4}),c=Po(await bt(l),[]);await vt(c,Ca(ys(e,["archived","se\
ttings"]),c),{reason:"Restored from a device"}),await lh(e),await Sa(t)}var rw=f(()=>{F();ks();gn();Ie()});function iw(e){return e.length?i`<section class="panel" data-test="lost">
    <h2>Not in the shop any more</h2>
    <p>
      The shop was restored from an earlier backup and does not know these cards. This device still has
      them.${R("cards.create",h,i` <span data-test="owners"
          >The owner can restore them from here, once this is an owner's device.</span
        >`)}
    </p>
    <ul class="waiting-list">
      ${e.map(t=>i`<li data-test="lost-${t.code}">
            <p><b>${t.title}</b> ${I(t.code)}</p>
            <div class="buttons">
              ${R("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>E2(t)}>
                  Restore it
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>N2(t)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:h}async function E2(e){try{await aw(e),await U()}catch(t){X(K(t))}}async function N2(e){confirm(
`Throw away the card ${I(e.code)}, ${e.title}? This device may have the only copy.`)&&(await Sa(e.code),await Ss())}
var lw=f(()=>{_();F();ue();it();rw();Ie();ke();le()});var hw={};se(hw,{show:()=>P2});async function P2(e){e.title("Settings");let t={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([an().catch(()=>[]),Ze().catch(()=>[]),xa().catch(()=>[])]);t=
{...t,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await M("GET","/cards?limit=1",{signal:e.signal,
timeout:4e3}).catch(()=>null);t={...t,total:a?.body?.total??null},o()}function o(){e.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${B2(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${R2(o)}
          </section>
          ${C2()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${I2(t.entries)}
          </section>
          ${iw(t.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${F2(t)} ${Ni}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:e.signal}),await n(),e.ready(),await s()}function C2(){
let e=gs();return!e||e==="owner"?h:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${nt[e].word}</b>: ${nt[e].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function B2(e){let{units:t,inches:n}=C(),s=o=>{Ge(o),e()};return i`${Y({name:"units",label:"Unit\
s",value:t,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${t==="inch"?Y({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):h}
  ${Y({name:"paper",label:"Paper",value:C().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${t==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:h}`}function R2(e){let{theme:t,name:n}=C();
return i`${Y({name:"theme",label:"Theme",value:t,options:[["system","As the device"],["day","Day"],["shop","Sh\
op, dark"]],change:s=>{Ge({theme:s==="shop"||s==="day"?s:"system"}),e()}})}
  ${O({name:"name",label:"Your name",value:n,change:s=>Ge({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function I2(e){return e.length?i`<ul class="waiting-list">
      ${e.map(t=>i`<li data-test="waits-${t.id}">
            <p>
              <b>${dw(t)}</b> on <a href="/c/${t.code}">${I(t.code)}</a>,
              ${ce(t.queued_at)} by this device’s clock
              ${t.body.note?i`<br /><span class="soft">${t.body.note}</span>`:h}
            </p>
            ${t.refused?i`<p data-test="refused">
                      ${x("caution","Refused")} ${t.missing?`${aa(t)}.`:""}
                      ${t.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>W2(t)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>D2(t)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${aa(t)}. It is sent when the shop's server
                    ${t.late?"takes it":"answers"}.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>U()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every result, note and edit typed here is saved in the shop.
    </p>`}function dw({kind:e,body:t}){if(e==="trial")return`${tn(t)}, step ${t.step}`;if(e==="note")return"No\
te";let n=Object.keys(t).filter(s=>s in cw).map(s=>cw[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was resolved"}async function W2(e){await Qd(e.id),await U()}async function D2(e){confirm(`Throw away ${dw(e)} \
on ${I(e.code)}? It cannot be brought back.`)&&(await ya(e.id),await Ss())}function F2({cards:e,total:t}){let{
reached:n,at:s}=st(),o=t!==null&&e>=t,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${e}${t===null?h:` of ${t}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${s?ce(s):"not since this page was opened"}</dd>
      </div>
    </dl>
    <p>
      ${o?x("ok","Every card is here"):t===null?x("unknown","Not known: no answer from the shop"):x("caution",
"Still fetching")}
    </p>
    <p data-test="app-kept">
      ${a?x("ok","The app opens without network"):i`${x("caution","The app needs the network")}
            ${"serviceWorker"in navigator?"It is still being kept.":"This browser keeps apps only over https o\
r on the shop's own computer."}`}
    </p>
    ${n===!1?i`<p>${x("caution","Not connected now")}</p>`:h}
    <button type="button" class="button" data-test="check-now" @click=${()=>U()}>Look again</button>`}var cw,pw=f(
()=>{_();F();Cn();ue();Re();Te();oe();Ie();ke();V();G();pd();oo();lw();Mn();Xe();cw={title:"title",note:"note",
archived:"in use or archived",settings:"settings"}});Cn();hl();We();var uw={home:()=>Promise.resolve().then(()=>(vp(),yp)),bend:()=>Promise.resolve().then(()=>(Su(),xu)),"press-s\
creen":()=>Promise.resolve().then(()=>(km(),vm)),part:()=>Promise.resolve().then(()=>(Vf(),Uf)),scan:()=>Promise.resolve().then(()=>(hg(),dg)),
card:()=>Promise.resolve().then(()=>(Sg(),xg)),step:()=>Promise.resolve().then(()=>(Og(),Ag)),result:()=>Promise.resolve().then(()=>(Ug(),jg)),
history:()=>Promise.resolve().then(()=>(Xg(),Yg)),note:()=>Promise.resolve().then(()=>(Qg(),Jg)),resolve:()=>Promise.resolve().then(()=>(t$(),e$)),
print:()=>Promise.resolve().then(()=>(a$(),o$)),label:()=>Promise.resolve().then(()=>(l$(),i$)),labels:()=>Promise.resolve().then(()=>(d$(),c$)),
chart:()=>Promise.resolve().then(()=>(m$(),u$)),shop:()=>Promise.resolve().then(()=>(y$(),_$)),press:()=>Promise.resolve().then(()=>(Z$(),K$)),
"test-bend":()=>Promise.resolve().then(()=>(yb(),_b)),learned:()=>Promise.resolve().then(()=>(Sb(),xb)),tools:()=>Promise.resolve().then(()=>(Mb(),Tb)),
tool:()=>Promise.resolve().then(()=>(Fb(),Db)),crew:()=>Promise.resolve().then(()=>(Vb(),Ub)),pair:()=>Promise.resolve().then(()=>(qb(),zb)),
backups:()=>Promise.resolve().then(()=>(tw(),ew)),guide:()=>Promise.resolve().then(()=>(md(),ud)),"guide-page":()=>Promise.resolve().then(()=>(md(),ud)),
words:()=>Promise.resolve().then(()=>(ow(),sw)),settings:()=>Promise.resolve().then(()=>(pw(),hw))};oe();ke();it();async function fw(){if("serviceWorker"in navigator)try{let e=await navigator.serviceWorker.register("/sw.\
js");e.waiting&&mw(e.waiting),e.addEventListener("updatefound",()=>{let t=e.installing;t?.addEventListener("st\
atechange",()=>{t.state==="installed"&&navigator.serviceWorker.controller&&mw(t)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(e){console.
warn("The app could not be kept on this device:",e)}}function mw(e){X("A newer Flangebook is here. It opens wh\
en you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),e.postMessage("take over")}})}bo();ye(()=>bo());document.addEventListener("sync",()=>dn());document.addEventListener("held",()=>dn());document.
addEventListener("storage",e=>{dn(),!e.detail.silent&&(document.documentElement.dataset.ready==="failed"&&Vt(),
U())});document.addEventListener("turned-away",()=>{dn(),document.documentElement.dataset.screen!=="pair"&&Vt()});
document.addEventListener("rights",()=>{rn()===null&&document.documentElement.dataset.screen!=="pair"&&Kh()});
gh();Zh(uw).finally(()=>{jh(),fw()});
/**
 * @license
 * Copyright 2017 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */
/**
 * @license
 * Copyright 2020 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */
/**
 * @license
 * Copyright 2021 Google LLC
 * SPDX-License-Identifier: BSD-3-Clause
 */
//# sourceMappingURL=app.js.map
