var ub=Object.defineProperty;var g=(e,t,n)=>()=>{if(n)throw n[0];try{return e&&(t=e(e=0)),t}catch(s){throw n=[s],s}};var ne=(e,t)=>{for(var n in t)ub(e,n,{get:t[n],enumerable:!0})};function eo(e){let t=e.split("/").filter(Boolean);t[0]?.toLowerCase()==="c"&&(t[0]="c");for(let n of Ic){let s=mb(
n.path.split("/").filter(Boolean),t);if(s)return{route:n,params:s}}}function mb(e,t){if(e.length!==t.length)return;
let n={};for(let[s,o]of e.entries()){if(!o.startsWith(":")){if(o!==t[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(
t[s])}catch{return}}return n}var Ic,Wc,ci=g(()=>{Ic=[{name:"home",path:"/"},{name:"bend",path:"/bend",needs:"b\
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
sted"},{name:"settings",path:"/settings"}],Wc=e=>Ic.find(t=>t.name===e)});function fb(){try{let e=JSON.parse(localStorage.getItem(Fc)??"null");return e?.refused?e:Dc}catch{return Dc}}function At(e){
let t=eo(e.split("?")[0])?.route.needs;return!t||ge(t)}function Hc({role:e,refused:t={}}){let n=JSON.stringify(
{role:e,refused:t});if(n===JSON.stringify(as))return!1;as={role:e,refused:t};try{localStorage.setItem(Fc,n)}catch{}
return!0}function Uc(e){e&&e!==as.role&&document.dispatchEvent(new CustomEvent("other-role"))}var Fc,Dc,as,rs,
ge,jc,Te=g(()=>{ci();Fc="flangebook.rights",Dc={role:"owner",refused:{}},as=fb();rs=()=>as.role,ge=e=>!Object.
hasOwn(as.refused,e);jc=e=>as.refused[e]??"owner"});function gb(){try{return{...Gc,...JSON.parse(localStorage.getItem(Vc)??"{}")}}catch{return{...Gc}}}function B(){
return wn}function Gt(e){wn={...wn,...e};try{localStorage.setItem(Vc,JSON.stringify(wn))}catch{}to();for(let t of di)
t(wn)}function _e(e,t){di.add(e),t?.addEventListener("abort",()=>di.delete(e))}function to(){let e=qc.matches?
"shop":"day";document.documentElement.dataset.theme=wn.theme==="system"?e:wn.theme}var Vc,Gc,di,wn,qc,se=g(()=>{
Vc="flangebook.settings",Gc={units:"mm",inches:"decimal",theme:"system",name:"",paper:"A4"},di=new Set,wn=gb();
qc=matchMedia("(prefers-color-scheme: dark)");qc.addEventListener("change",to)});function ee(e,t){let n=e.toFixed(t);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(e,t={}){
return e==null?{text:"–",unit:""}:He()?B().inches==="fraction"?{text:bb(e/Xe),unit:"in"}:{text:ee(e/Xe,(t.digits??
1)+2),unit:"in"}:{text:ee(e,t.digits??1),unit:"mm"}}function bb(e){let t=Math.round(Math.abs(e)*64),n=t%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(t/64),a=e<0&&t>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function he(e,{up:t=!1}={}){if(e==null)return{text:"–",unit:""};let n=He()?e/Vo:e,s=Math.abs(
n)<10?1:0;return{text:ee(t?Yc(n,s):n,s),unit:He()?"tons":"kN"}}function Ee(e,{up:t=!1}={}){if(e==null)return{text:"\
–",unit:""};let n=He()?e/Vo*Kc:e,s=Math.abs(n)<20?1:0;return{text:ee(t?Yc(n,s):n,s),unit:He()?"tons/ft":"kN/\
m"}}function Yc(e,t){let n=10**t;return Math.ceil(e*n-1e-9)/n}function S(e,t=1){return e==null?{text:"–",unit:""}:
{text:ee(e,t),unit:"°"}}function no(e){if(e==null)return{text:"–",unit:""};let t=He()?e/$b:e;return{text:ee(
t,t<10?2:1),unit:He()?"lb":"kg"}}function Vt(e,t){if(/_(low|high)$/.test(e))return Vt(e.replace(/_(low|high)$/,
""),t);if(e.endsWith("_kn_per_m"))return Ee(t);if(e.endsWith("_mm_s")){let s=w(t,{digits:0});return{text:s.text,
unit:`${s.unit}/s`}}if(e.endsWith("_mm"))return w(t,{digits:Math.abs(t)<10?2:1});if(e.endsWith("_kn"))return he(
t);if(e.endsWith("_deg"))return S(t);if(e.endsWith("_kg"))return no(t);if(e.endsWith("_percent"))return{text:ee(
t,0),unit:"%"};let n=Math.abs(t)<10?100:Math.abs(t)<100?10:1;return{text:String(Math.round(t*n)/n),unit:""}}function $(e){
return e.unit==="°"?`${e.text}°`:`${e.text} ${e.unit}`.trim()}function ie({text:e,unit:t}){return $({text:t===
"in"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,""),unit:t})}function Ue(e,t){return e.replace(/\{(\w+)\}/g,
(n,s)=>s in t?ie(Vt(s,t[s])):n)}function qt(){return He()?{unit:"tons",size:Vo}:{unit:"kN",size:1}}function _n(){
return He()?{unit:"tons/ft",size:Vo/Kc}:{unit:"kN/m",size:1}}function hi(e,{size:t}){return e==null?"":String(
t===1?e:Number((e/t).toFixed(4)))}function so(e,{unit:t}){let n=qo(e);return Jc.test(n)?`${n} ${t}`.replace(" \
tons"," short tons"):n.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i,(s,o,a="")=>{let r=a?a.includes("ft"):He();
return`${o}${r?"short tons":"t"}${a}`})}function C(){return He()?"in":"mm"}function te(e,t=C()){let n=qo(e);return Jc.
test(n)||t==="in"&&Zc.test(n)?`${n} ${t}`:n}function qo(e){let t=e.trim();return Xc.test(t)?t:t.replace(/^([+-]?\d+),(\d+)(?![\d.,])/,
"$1.$2")}function Qc(e,t=C()){let n=e.trim(),[,s,o,a]=Xc.exec(n)??[];return s?[String(+`${s}.${o}`),`${s}${o}`].
map(l=>a?`${l} ${a}`:l):t==="mm"&&Zc.test(n)?[`${n} in`]:[]}function ed(e){let[,t,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.
exec(e??"")??[];return t?Number(t)*(n==="in"?Xe:1):null}function q(e){if(e==null)return"";let t=He()?e/Xe:e;return String(
Number(t.toFixed(He()?4:3)))}var Xe,Vo,zc,$b,Kc,He,Jc,Xc,Zc,A=g(()=>{se();Xe=25.4,Vo=8.896443230521,zc=9.80665,
$b=.45359237,Kc=.3048,He=()=>B().units==="inch";Jc=/^[+-]?(\d+\.?\d*|\.\d+)$/,Xc=/^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/,
Zc=/^(\d+[\s-]+)?\d+\s*\/\s*\d+$/});async function M(e,t,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return td(e,t,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function zo(e,t,n,s,o=2e4){
return td("POST",e,t,{type:n,signal:s,timeout:o})}async function td(e,t,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let d=AbortSignal.
timeout(l),p=performance.now(),u;try{u=await fetch(`/api/v1${t}`,{method:e,headers:c,body:n,signal:r?AbortSignal.
any([r,d]):d,cache:"no-store"})}catch(b){throw r?.aborted?b:new H}if(Uc(u.headers.get("Flangebook-Role")),!u.ok&&
u.status!==304)throw await pi(u,p);let m=wb.includes(u.status)?null:await _b(u,r);return{status:u.status,body:m,
etag:u.headers.get("ETag"),at:kb(u)}}async function _b(e,t){try{return await e.json()}catch(n){throw t?.aborted?
n:new H}}async function pi(e,t=1/0){let n=await e.json().catch(()=>null);if(!n?.status)throw new H;let s=new O(
n);return yb(s,t),s}function yb({status:e,errors:t},n){e===401&&t.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:t.pairing[0],asked:n}})),e===403&&t.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function nd(e,t,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${e}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await pi(c);for await(let d of vb(c.body,l)){let p=JSON.
parse(d);if(p.problem)throw new O(p.problem);if(!p.progress)return p;s(p.progress)}throw new H}catch(c){throw n.
aborted||c instanceof O?c:new H}finally{clearTimeout(r)}}async function*vb(e,t){let n=e.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;t();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function sd(e,t,n){let s;try{let a=await fetch(`/a\
pi/v1${e}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await pi(a);s=await a.blob()}catch(a){throw a instanceof O?a:new H}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var O,H,z,wb,kb,F=g(()=>{Te();A();O=class extends Error{constructor(t){let n=t.said?Ue(t.said.template,
t.said.numbers):"";if(super(n||t.detail||t.title),this.status=t.status,this.title=t.title,this.errors=t.errors??
{},n)for(let s of Object.keys(this.errors))this.errors[s]=[n];this.outline=t.outline??null}},H=class extends Error{constructor(){
super("The shop's server does not answer.")}},z=e=>e instanceof Error?e.message:String(e);wb=[204,304];kb=e=>new Date(
e.headers.get("Date")??Date.now()).toISOString()});function xb(){return od||(od=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function Sb(){return ad||
(ad=["advance","continue","continuePrimaryKey"].map(e=>IDBCursor.prototype[e]))}function Tb(e){let t=new Promise(
(n,s)=>{let o=()=>{e.removeEventListener("success",a),e.removeEventListener("error",r)},a=()=>{n(yn(e.result)),
o()},r=()=>{s(e.error),o()};e.addEventListener("success",a),e.addEventListener("error",r)});return Ko.set(t,e),
t}function Mb(e){if(gi.has(e))return;let t=new Promise((n,s)=>{let o=()=>{e.removeEventListener("complete",a),
e.removeEventListener("error",r),e.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(e.error||new DOMException(
"AbortError","AbortError")),o()};e.addEventListener("complete",a),e.addEventListener("error",r),e.addEventListener(
"abort",r)});gi.set(e,t)}function cd(e){$i=e($i)}function Ob(e){return Sb().includes(e)?function(...t){return e.
apply(bi(this),t),yn(this.request)}:function(...t){return yn(e.apply(bi(this),t))}}function Ab(e){return typeof e==
"function"?Ob(e):(e instanceof IDBTransaction&&Mb(e),fi(e,xb())?new Proxy(e,$i):e)}function yn(e){if(e instanceof
IDBRequest)return Tb(e);if(ui.has(e))return ui.get(e);let t=Ab(e);return Object.is(t,e)||(ui.set(e,t),Ko.set(t,
e)),t}function dd(e,t,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(e,t),l=yn(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(yn(r.result),c.oldVersion,c.newVersion,yn(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",d=>o(d.oldVersion,d.newVersion,d))}).catch(()=>{}),l}function rd(e,t){if(!(e instanceof IDBDatabase&&
!(t in e)&&typeof t=="string"))return;if(mi[t])return mi[t];let n=t.replace(/FromIndex$/,""),s=t!==n,o=Eb.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||Lb.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),d=c.store;return s&&(d=d.index(l.shift())),(await Promise.all([d[n](...l),
o&&c.done]))[0]};return mi[t]=a}async function*Cb(...e){let t=this;if(t instanceof IDBCursor||(t=await t.openCursor(
...e)),!t)return;t=t;let n=new Proxy(t,Pb);for(hd.set(n,t),Ko.set(n,bi(t));t;)yield n,t=await(wi.get(n)||t.continue()),
wi.delete(n)}function ld(e,t){return t===Symbol.asyncIterator&&fi(e,[IDBIndex,IDBObjectStore,IDBCursor])||t===
"iterate"&&fi(e,[IDBIndex,IDBObjectStore])}var fi,od,ad,gi,ui,Ko,$i,bi,Lb,Eb,mi,Nb,id,wi,hd,Pb,pd=g(()=>{fi=(e,t)=>t.
some(n=>e instanceof n);gi=new WeakMap,ui=new WeakMap,Ko=new WeakMap;$i={get(e,t,n){if(e instanceof IDBTransaction){
if(t==="done")return gi.get(e);if(t==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return yn(e[t])},set(e,t,n){return e[t]=n,!0},has(e,t){return e instanceof IDBTransaction&&(t==="done"||t==="s\
tore")?!0:t in e}};bi=e=>Ko.get(e);Lb=["get","getKey","getAll","getAllKeys","count"],Eb=["put","add","delete",
"clear"],mi={};cd(e=>({...e,get:(t,n,s)=>rd(t,n)||e.get(t,n,s),has:(t,n)=>!!rd(t,n)||e.has(t,n)}));Nb=["advanc\
e","continue","continuePrimaryKey"],id={},wi=new WeakMap,hd=new WeakMap,Pb={get(e,t){if(!Nb.includes(t))return e[t];
let n=id[t];return n||(n=id[t]=function(...s){wi.set(this,hd.get(this)[t](...s))}),n}};cd(e=>({...e,get(t,n,s){
return ld(t,n)?Cb:e.get(t,n,s)},has(t,n){return ld(t,n)||e.has(t,n)}}))});function _i(){return is??=dd("flangebook",Bb,{upgrade:(e,t,n,s)=>Ib(e,t,s),blocking:Rb,terminated:yi}).catch(e=>{
throw is=void 0,e}),is}function yi(){is=void 0}async function Rb(){(await is)?.close(),is=void 0}async function Ib(e,t,n){
t<1&&(e.createObjectStore("cards",{keyPath:"code"}),e.createObjectStore("list",{keyPath:"code"}),e.createObjectStore(
"meta"),e.createObjectStore("outbox",{keyPath:"id"})),t<2&&(e.createObjectStore("sent",{keyPath:"id"}),e.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),t===1&&await Wb(n))}async function Wb(e){
let t=e.objectStore("outbox"),s=(await t.getAll()).sort((a,r)=>a.queued_at<r.queued_at?-1:1),o=0;for(let{trial:a,
...r}of s)t.put({...r,kind:"trial",body:a,number:++o});e.objectStore("meta").put(o,"number"),e.objectStore("me\
ta").delete("cursor")}function Db(e){return e instanceof DOMException?e.name==="QuotaExceededError"?"This devi\
ce is full: free some room on it.":"This browser lets nothing be kept here, as private windows do.":e instanceof
Error?e.message:String(e)}var Bb,is,Yo,vi=g(()=>{pd();Bb=2;Yo=class extends Error{constructor(t){super(Db(t))}}});async function ls(e,t,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${e}`,{signal:AbortSignal.timeout(t)},o)}catch(a){if(s)throw a;return n()}}var Jo=g(()=>{});function Qe(e,t){return gd(md,n=>fd(e,"readonly",{},t,n))}function Ne(e,t,{patience:n=md,durability:s="relaxed"}={}){
return gd(n,o=>ls("writer",n/2,()=>fd(e,"readwrite",{durability:s},t,o)))}async function fd(e,t,n,s,o){let a=await Hb(
e,t,n);!o.now&&t==="readwrite"&&(a.abort(),await a.done),o.transaction=a,Xo.add(a),a.done.catch(()=>{}).finally(
()=>Xo.delete(a));try{let r=await s(jb(a));return t==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw xi(
a),a.error??r}}async function Hb(e,t,n){try{return(await _i()).transaction(e,t,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return yi(),(await _i()).transaction(e,t,n)}}function xi(e){try{e.abort()}catch{}}
async function gd(e,t){let n={now:!0},s=t(n);s.then(()=>$d(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new Ze),vn?Fb:e)});try{return await Promise.race([s,a])}catch(r){throw r instanceof Ze&&Ub(n),r}finally{
clearTimeout(o)}}function Ub(e){e.now=!1,e.transaction?.mode==="readwrite"&&xi(e.transaction),$d(!0)}function $d(e){
e!==vn&&(vn=e,document.documentElement.dataset.storage=vn?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:vn}})))}var md,Fb,Ze,Xo,vn,ki,oo,jb,ud,zt=g(()=>{vi();Jo();md=1e3,Fb=100,Ze=class extends Error{constructor(){
super("This device's storage does not answer.")}},Xo=new Set,vn=!1,ki=!1,oo=()=>vn;jb=e=>({store:ud(e.objectStore(
e.objectStoreNames[0])),objectStore:t=>ud(e.objectStore(t))}),ud=e=>new Proxy(e,{get:(t,n)=>typeof e[n]=="func\
tion"?(...s)=>{let o=e[n](...s);return o?.catch?.(()=>{}),o}:e[n]});addEventListener("pagehide",()=>{ki||=Xo.size>
0;for(let e of Xo)xi(e)});addEventListener("pageshow",e=>{e.persisted&&ki&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:vn}})),ki=!1})});function Ge(){if(crypto.randomUUID)return crypto.randomUUID();let e=crypto.getRandomValues(new Uint8Array(16));
return e[6]=e[6]&15|64,e[8]=e[8]&63|128,[...e].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function wd(e){try{return await Ne(["outbox","meta"],t=>qb(t,e),bd)}catch(t){throw new Yo(
t)}}async function qb(e,t){let[n,s]=[e.objectStore("outbox"),e.objectStore("meta")],o=(await n.getAll()).sort(
Si).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...t,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function _d(){return Ne("meta",async({store:e})=>{let t=(await e.get(
"number")??0)+1;return e.put(t,"number"),t})}async function Ve(){return(await Qe("outbox",({store:e})=>e.getAll())).
sort(Si)}async function kn(e){return(await Ve()).filter(t=>t.code===e)}async function ao(e){return Qe("outbox",
({store:t})=>t.get(e))}async function Zo(e){return Qe("sent",({store:t})=>t.get(e))}async function xn(e,t){await Ne(
"outbox",async({store:n})=>{let s=await n.get(e);s&&n.put({...s,...t})},bd)}async function Qo(e){let t=await ao(
e);await Ne("outbox",({store:n})=>n.delete(e)),t?.after&&await ea(e,t.after)}async function ea(e,t,n=()=>!0){for(let s of await Ve())
s.after===e&&n(s)&&await xn(s.id,{after:t})}async function ro(e,t,n=!1){let{again:s,refused:o,late:a,missing:r,
parked:l,...c}=e;try{await Ne(["outbox","sent"],d=>{d.objectStore("sent").put({...c,proposed:n,sent_at:e.sent_at??
t}),d.objectStore("outbox").delete(e.id)})}catch{await Ne("outbox",({store:d})=>d.delete(e.id))}}async function vd(e){
let t=Date.parse(e)-Gb*Vb;await Ne("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at??
"")<t&&n.delete(s.id)})}async function kd(e){let[t,n]=[e.objectStore("outbox"),e.objectStore("sent")],s=(await n.
getAll()).sort(Si),o=await t.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...d}=r;a.has(
r.id)||t.put({...d,parked:c,again:!0,number:l-s.length})}),n.clear()}var Gb,Vb,bd,Si,yd,Pe=g(()=>{vi();zt();Gb=
90,Vb=864e5,bd={durability:"strict"};Si=(e,t)=>e.number-t.number;yd=e=>xn(e,{refused:void 0})});async function it(e){return Qe("cards",({store:t})=>t.get(e))}async function Kt(){return(await Qe("list",({store:t})=>t.
getAll())).sort((t,n)=>t.updated_at<n.updated_at?1:-1)}async function ut(e){return Ne(["cards","list"],async t=>{
let n=await t.objectStore("cards").get(e.code);return n&&Kb(e,n)?n:(xd(t,e),e)})}function xd(e,t){e.objectStore(
"cards").put(t),e.objectStore("list").put(Yb(t))}function Yb(e){let{code:t,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:d,trials_total:p,proposals:u}=e,{metal:m,thickness_mm:b}=d,f=u?.length??0;
return{code:t,title:n,note:s,metal:m,thickness_mm:b,bends:d.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:p,archived:c,settle:f}}async function Sd(){return Qe("list",({store:e})=>e.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function Td(){let e=["cards","list","meta","sent","lost"];await Ne(e,t=>{for(let n of e)
t.objectStore(n).clear()})}async function ta(){return Qe("meta",({store:e})=>e.get("shop"))}async function Md(){
return Qe("meta",({store:e})=>e.get("cursor"))}async function Od(e){let t=e.reset||await Jb()?["outbox","sent",
"lost"]:[];await Ne(["cards","list","meta",...t],async n=>{e.reset&&(await Xb(n),await kd(n));let s=new Set(t.
length?await n.objectStore("lost").getAllKeys():[]);for(let a of e.cards)xd(n,a),s.has(a.code)&&await Zb(n,a);
let o=n.objectStore("meta");e.shop&&o.put(e.shop,"shop"),o.put(e.cursor,"cursor"),o.put(!!e.more,"more")},{patience:zb})}
async function Xb(e){let[t,n]=[e.objectStore("cards"),e.objectStore("lost")];for(let s of await t.getAll())n.put(
s);t.clear(),e.objectStore("list").clear()}async function Zb(e,t){let n=await e.objectStore("lost").get(t.code);
e.objectStore("lost").delete(t.code);let s=new Set(t.trials.map(r=>r.id)),o=new Set(await e.objectStore("outbo\
x").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>e.objectStore("outbox").put(
Ad(t.code,r,l-a.length)))}function Ad(e,{number:t,received_at:n,correction:s,device:o,...a},r){return{id:a.id,
kind:"trial",code:e,body:a,number:r,queued_at:n,again:!0}}async function Ld(e){await Ne("outbox",({store:t})=>{
e.trials.forEach((n,s)=>{t.put({...Ad(e.code,n,s-e.trials.length),missing:!0})})})}async function na(){return Qe(
["meta","lost"],async e=>await e.objectStore("meta").get("more")?[]:e.objectStore("lost").getAll())}async function sa(e){
await Ne("lost",({store:t})=>t.delete(e))}var zb,Kb,Jb,Ce=g(()=>{Pe();zt();zb=2e4;Kb=(e,t)=>e.revision<t.revision||
e.revision===t.revision&&(e.trials_total<t.trials_total||e.proposals_total<t.proposals_total);Jb=async()=>await Qe(
"lost",({store:e})=>e.count())>0});function Cd(e){return io!==null&&e!=="pair"&&!(Nd?.labels_open&&Qb.includes(e))}async function Sn(e){Ti+=1;try{
let{body:t}=await M("GET","/me",{signal:e,timeout:4e3});return Nd=t,Hc(t)&&document.dispatchEvent(new CustomEvent(
"rights")),t}finally{Ti-=1}}async function Bd(e){io!==e&&(io=e,await Promise.all([Sn().catch(()=>null),Td().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function Rd(e,t){let{body:n}=await M(
"POST","/pair",{body:{code:e,name:t}});return B().name||Gt({name:n.name}),io=null,Pd=performance.now(),await Sn(),
n}async function Id(){await M("POST","/leave",{}),await Bd("unknown")}function Wd(){document.addEventListener(
"not-paired",e=>{let{why:t,asked:n}=e.detail;n>Pd&&Bd(t)}),document.addEventListener("other-role",Ed),rs()!=="\
owner"&&Ed()}function Ed(){Ti||Sn().catch(()=>null)}var et,Qb,Nd,io,Pd,Ti,Yt,oa,Tn=g(()=>{F();Te();Ce();se();et=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Press\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},Qb=["\
card","step"],Nd=null,io=null,Pd=-1/0,Ti=0,Yt=()=>io;oa=e=>z(e)});function Kd(e,t){if(!Ei(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Fd!==
void 0?Fd.createHTML(t):t}function Ln(e,t,n=e,s){if(t===mt)return t;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=ho(t)?
void 0:t._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(e),o._$AT(e,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(t=Ln(e,o._$AS(e,t.values),o,s)),t}var Oi,Dd,aa,Fd,Ai,
Lt,Li,ew,An,co,ho,Ei,qd,Mi,lo,jd,Hd,Mn,Ud,Gd,zd,Ni,i,x,C1,mt,h,Vd,On,Yd,po,ra,cs,En,ia,la,ca,da,Jd,tw,Jt,y=g(()=>{
Oi=globalThis,Dd=e=>e,aa=Oi.trustedTypes,Fd=aa?aa.createPolicy("lit-html",{createHTML:e=>e}):void 0,Ai="$lit$",
Lt=`lit$${Math.random().toFixed(9).slice(2)}$`,Li="?"+Lt,ew=`<${Li}>`,An=document,co=()=>An.createComment(""),
ho=e=>e===null||typeof e!="object"&&typeof e!="function",Ei=Array.isArray,qd=e=>Ei(e)||typeof e?.[Symbol.iterator]==
"function",Mi=`[ 	
\f\r]`,lo=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,jd=/-->/g,Hd=/>/g,Mn=RegExp(`>|${Mi}(?:([^\\s"'\
>=/]+)(${Mi}*=${Mi}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Ud=/'/g,Gd=/"/g,zd=/^(?:script|style|textarea|title)$/i,Ni=e=>(t,...n)=>({_$litType$:e,
strings:t,values:n}),i=Ni(1),x=Ni(2),C1=Ni(3),mt=Symbol.for("lit-noChange"),h=Symbol.for("lit-nothing"),Vd=new WeakMap,
On=An.createTreeWalker(An,129);Yd=(e,t)=>{let n=e.length-1,s=[],o,a=t===2?"<svg>":t===3?"<math>":"",r=lo;for(let l=0;l<
n;l++){let c=e[l],d,p,u=-1,m=0;for(;m<c.length&&(r.lastIndex=m,p=r.exec(c),p!==null);)m=r.lastIndex,r===lo?p[1]===
"!--"?r=jd:p[1]!==void 0?r=Hd:p[2]!==void 0?(zd.test(p[2])&&(o=RegExp("</"+p[2],"g")),r=Mn):p[3]!==void 0&&(r=
Mn):r===Mn?p[0]===">"?(r=o??lo,u=-1):p[1]===void 0?u=-2:(u=r.lastIndex-p[2].length,d=p[1],r=p[3]===void 0?Mn:p[3]===
'"'?Gd:Ud):r===Gd||r===Ud?r=Mn:r===jd||r===Hd?r=lo:(r=Mn,o=void 0);let b=r===Mn&&e[l+1].startsWith("/>")?" ":"";
a+=r===lo?c+ew:u>=0?(s.push(d),c.slice(0,u)+Ai+c.slice(u)+Lt+b):c+Lt+(u===-2?l:b)}return[Kd(e,a+(e[n]||"<?>")+
(t===2?"</svg>":t===3?"</math>":"")),s]},po=class e{constructor({strings:t,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=t.length-1,c=this.parts,[d,p]=Yd(t,n);if(this.el=e.createElement(d,s),On.currentNode=this.el.content,
n===2||n===3){let u=this.el.content.firstChild;u.replaceWith(...u.childNodes)}for(;(o=On.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let u of o.getAttributeNames())if(u.endsWith(Ai)){let m=p[r++],
b=o.getAttribute(u).split(Lt),f=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:f[2],strings:b,ctor:f[1]===
"."?ia:f[1]==="?"?la:f[1]==="@"?ca:En}),o.removeAttribute(u)}else u.startsWith(Lt)&&(c.push({type:6,index:a}),
o.removeAttribute(u));if(zd.test(o.tagName)){let u=o.textContent.split(Lt),m=u.length-1;if(m>0){o.textContent=
aa?aa.emptyScript:"";for(let b=0;b<m;b++)o.append(u[b],co()),On.nextNode(),c.push({type:2,index:++a});o.append(
u[m],co())}}}else if(o.nodeType===8)if(o.data===Li)c.push({type:2,index:a});else{let u=-1;for(;(u=o.data.indexOf(
Lt,u+1))!==-1;)c.push({type:7,index:a}),u+=Lt.length-1}a++}}static createElement(t,n){let s=An.createElement("\
template");return s.innerHTML=t,s}};ra=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:s}=this.
_$AD,o=(t?.creationScope??An).importNode(n,!0);On.currentNode=o;let a=On.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let d;c.type===2?d=new cs(a,a.nextSibling,this,t):c.type===1?d=new c.ctor(a,c.name,c.strings,this,
t):c.type===6&&(d=new da(a,this,t)),this._$AV.push(d),c=s[++l]}r!==c?.index&&(a=On.nextNode(),r++)}return On.currentNode=
An,o}p(t){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(t,s,n),n+=s.strings.length-2):
s._$AI(t[n])),n++}},cs=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,s,o){this.type=2,this.
_$AH=h,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Ln(this,t,n),ho(t)?t===h||t==null||t===""?(this.
_$AH!==h&&this._$AR(),this._$AH=h):t!==this._$AH&&t!==mt&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==
void 0?this.T(t):qd(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this.
_$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==h&&ho(this._$AH)?this._$AA.nextSibling.data=t:this.
T(An.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:s}=t,o=typeof s=="number"?this._$AC(t):(s.el===
void 0&&(s.el=po.createElement(Kd(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new ra(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(t){let n=Vd.get(t.strings);return n===void 0&&Vd.
set(t.strings,n=new po(t)),n}k(t){Ei(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of t)
o===n.length?n.push(s=new e(this.O(co()),this.O(co()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){
let s=Dd(t).nextSibling;Dd(t).remove(),t=s}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},
En=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,s,o,a){this.
type=1,this._$AH=h,this._$AN=void 0,this.element=t,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=h}_$AI(t,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)t=Ln(this,t,n,0),r=!ho(t)||t!==this._$AH&&t!==mt,r&&(this._$AH=t);else{let l=t,c,d;
for(t=a[0],c=0;c<a.length-1;c++)d=Ln(this,l[s+c],n,c),d===mt&&(d=this._$AH[c]),r||=!ho(d)||d!==this._$AH[c],d===
h?t=h:t!==h&&(t+=(d??"")+a[c+1]),this._$AH[c]=d}r&&!o&&this.j(t)}j(t){t===h?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,t??"")}},ia=class extends En{constructor(){super(...arguments),this.
type=3}j(t){this.element[this.name]=t===h?void 0:t}},la=class extends En{constructor(){super(...arguments),this.
type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==h)}},ca=class extends En{constructor(t,n,s,o,a){super(
t,n,s,o,a),this.type=5}_$AI(t,n=this){if((t=Ln(this,t,n,0)??h)===mt)return;let s=this._$AH,o=t===h&&s!==h||t.capture!==
s.capture||t.once!==s.once||t.passive!==s.passive,a=t!==h&&(s===h||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},da=class{constructor(t,n,s){
this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(t){
Ln(this,t)}},Jd={M:Ai,P:Lt,A:Li,C:1,L:Yd,R:ra,D:qd,V:Ln,I:cs,H:En,N:la,U:ca,B:ia,F:da},tw=Oi.litHtmlPolyfillSupport;
tw?.(po,cs),(Oi.litHtmlVersions??=[]).push("3.3.3");Jt=(e,t,n)=>{let s=n?.renderBefore??t,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new cs(t.insertBefore(co(),a),a,void 0,n??{})}return o._$AI(
e),o}});function ds(e,t=Qd){return Object.fromEntries(t.filter(n=>e[n]!==void 0).map(n=>[n,e[n]]))}function Xd(e){return Array.
isArray(e)?[...e].sort((t,n)=>t.step-n.step).map(({step:t,set_angle_deg:n,punch_depth_mm:s})=>[t,n??null,s??null]):
e??null}function hs(e,t,n){let s=[];for(let[l,c]of nw){let[d,p]=[e[l],t[l]];d!==void 0&&!ha(d,n[l])&&s.push({name:l,
label:c,shop:n[l],yours:d,before:p})}if(!e.settings)return s;let[o,a,r]=[e.settings,t.settings??[],n.settings].
map(eh);for(let l of new Set([...o.keys(),...a.keys()])){let[c,d,p]=[o.get(l),a.get(l),r.get(l)];Zd(c,d)||Zd(c,
p)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,shop:p,yours:c,before:d})}return s}function th(e,t,n){
let s={},o=e.filter(l=>t[l.name]==="yours");for(let l of o)l.name.startsWith("settings ")||(s[l.name]=l.yours);
let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)return s;let r=eh(n.settings);for(let l of a){let c=Number(
l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(c)}return{...s,settings:[...r.values()]}}var Qd,ha,pa,
Pi,nw,eh,Zd,ps=g(()=>{Qd=["title","note","archived","settings"];ha=(e,t)=>JSON.stringify(Xd(e))===JSON.stringify(
Xd(t));pa=(e,t)=>ds(e,Qd.filter(n=>n in e&&!ha(e[n],t[n]))),Pi=({before:e={}},t)=>Object.keys(e).every(n=>ha(e[n],
t[n])),nw=[["title","Title"],["note","Note"],["archived","In use"]];eh=e=>new Map(e.map(t=>[t.step,t])),Zd=(e,t)=>ha(
e?[e]:[],t?[t]:[])});async function ua(e){Ci.add(e.id);try{return await nh(e)}finally{Ci.delete(e.id)}}async function nh(e){let t;try{
t=await wd(e)}catch(n){let s=await rw(e);return s||(await aw(n),nh(e))}try{return await oh(t,4e3)??{where:"her\
e",answer:null}}catch(n){let s=n instanceof H||n instanceof Ze;if(!s&&Ri(n))throw await Qo(t.id),n;return{where:"\
here",answer:null,late:s?"":await lh(t,n)}}}async function aw(e){Bi.add(e),document.dispatchEvent(new CustomEvent(
"held")),await new Promise(t=>{setTimeout(t,sw),document.addEventListener("storage",t,{once:!0})}),Bi.delete(e),
document.dispatchEvent(new CustomEvent("held"))}async function rw(e){try{let{body:t}=await rh({...e,number:0,queued_at:""},
8e3);return{where:"shop",answer:t}}catch(t){if(t instanceof H||!Ri(t))return null;throw t}}async function sh(){
return ls("outbox",ow,iw)}async function iw(){let e=0;for(let{id:t}of await Ve()){if(Ci.has(t))continue;let n=await ao(
t);if(!(!n||!await lw(n)))try{await oh(n,8e3)&&(e+=1)}catch(s){if(s instanceof H)break;Ri(s)?await xn(n.id,{refused:s.
message,missing:s.status===404}):await lh(n,s)}}return{sent:e,left:(await Ve()).length}}async function oh(e,t){
if(!await cw(e))return null;let n=await ao(e.id)??e;try{let s=await(n.parked?ih(n,t):rh(n,t));return await ah(
n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof O&&s.status===412)||n.parked)throw s;
return dw(n,t)}}async function cw({id:e,code:t,after:n,before:s,parked:o}){if(!n||o)return!0;if(await ao(n))return!1;
if(!(await Zo(n))?.proposed)return!0;let a=await it(t);return!a||a.proposals?.some(r=>r.id===n)?!1:(await xn(e,
Pi({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function dw(e,t){if(e.body.part)throw new O(hw);
let{body:n,at:s}=await M("GET",`/cards/${e.code}`,{timeout:t});await ut(n);let o=(e.body.settles??[]).some(l=>n.
proposals.some(c=>c.id===l));if(o||!hs(e.body,e.before??{},n).length)return await ro(e,s),await ea(e.id,n.revision_id,
l=>Pi(l,n)),{where:o?"settle":"shop",answer:n};let a={...e,parked:!0};await xn(e.id,{parked:!0});let r=await ih(
a,t);return await ah(a,r),{where:"settle",answer:r.body}}async function ah(e,{body:t,at:n}){if(e.kind!=="trial"){
let s=t;await ut(s).catch(()=>{}),!e.parked&&e.after&&s.revision_id===e.after&&await ea(e.id,e.after)}await ro(
e,n,!!e.parked),await vd(n)}function rh({kind:e,code:t,id:n,body:s,after:o,etag:a,missing:r},l){return e==="tr\
ial"?M("POST",`/cards/${t}/results`,{body:r?{...s,again:!0}:s,timeout:l}):M("PUT",`/cards/${t}`,{body:{...s,id:n,
...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function ih({id:e,code:t,body:n,before:s,revision:o,queued_at:a},r){
let{reason:l,by:c,settles:d,...p}=n,u={...l?{reason:l}:{},...c?{by:c}:{}};return M("POST",`/cards/${t}/proposa\
ls`,{body:{id:e,changes:p,before:s,revision:o,made_at:a,...u},timeout:r})}async function lh({id:e},t){if(!(t instanceof
O)||t.status<500)return"";let n=t.status===507?"The disk of the shop’s server is full: make room on it":t.title;
return await xn(e,{late:n}).catch(()=>{}),n}function Ri(e){if(!(e instanceof O))throw e;return e.status<500&&![
401,408,429].includes(e.status)}var sw,ow,Ci,Bi,uo,lw,hw,us=g(()=>{F();ps();Pe();Ce();zt();Jo();sw=3e3,ow=15e3;
Ci=new Set;Bi=new Set,uo=()=>[...Bi].at(-1)?.message??"";lw=async({refused:e,again:t,missing:n,code:s})=>!e||!!(t&&
n&&await it(s));hw={title:"Changed meanwhile",status:412,detail:"The part was changed here, the shop was resto\
red from an earlier backup, and the card was changed again since. Open the card and make the change anew."}});function tt(){return Xt}async function ma(e){let t=await Ve().catch(()=>[]),n=await na().catch(()=>[]);Xt={...Xt,
...e,waiting:t.length,words:Wi(t),late:t.find(s=>s.late&&!s.refused)?.late??"",settle:await uw(t).catch(()=>[]),
lost:n.length,refused:t.filter(s=>s.refused).length},document.documentElement.dataset.reached=String(Xt.reached),
document.documentElement.dataset.resolve=String(Xt.settle.length),document.documentElement.dataset.waiting=String(
Xt.waiting),document.dispatchEvent(new CustomEvent("sync",{detail:Xt}))}function Wi(e){let n=[["trial","result"],
["note","note"],["edit","edit"]].map(([s,o])=>({word:o,many:e.filter(a=>a.kind===s).length})).filter(({many:s})=>s).
map(({word:s,many:o})=>`${o} ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):`${n.slice(0,-1).join(", ")} a\
nd ${n.at(-1)}`}async function uw(e){let t=(await Sd()).flatMap(({code:n,settle:s})=>Array(s).fill(n));for(let n of e)
for(let s of n.body.settles??[])t.includes(n.code)&&t.splice(t.indexOf(n.code),1);return t}function Zt(e,t){let n=e||
!!(t&&!(t instanceof H));n!==Xt.reached&&ma({reached:n})}function ms(){return ma({})}function U(){return mo?(Ii=
!0,mo):(mo=mw().finally(()=>mo=void 0),mo)}async function mw(){do Ii=!1,await fw();while(Ii)}async function fw(){
try{await ch(),(await sh()).sent>0&&await ch(),await ma({reached:!0,at:new Date().toISOString(),unkept:!1})}catch(e){
await ma(e instanceof H?{reached:!1}:e instanceof O?{reached:!0}:{unkept:!0}),!(e instanceof H||e instanceof O&&
e.status===401)&&!(e instanceof Ze)&&console.warn("changes feed:",e)}}async function ch(){for(;await ls("feed",
pw,gw););}async function gw(){let e=await Md()??"",{body:t}=await M("GET",`/changes?since=${encodeURIComponent(
e)}`,{timeout:15e3});return await Od(t),t.more}function dh(){U(),addEventListener("online",()=>U()),addEventListener(
"offline",()=>U()),document.addEventListener("visibilitychange",()=>document.visibilityState==="visible"&&U()),
setInterval(()=>document.visibilityState==="visible"&&U(),1e4)}var pw,Xt,mo,Ii,ye=g(()=>{F();Pe();us();zt();Ce();
Jo();pw=3e3,Xt={reached:null,waiting:0,words:"",late:"",refused:0,settle:[],lost:0,at:null,unkept:!1},Ii=!1});function Qt(){let e=location.pathname,t=n=>n==="/"?e==="/"||e==="/scan"||/^\/c\//i.test(e):e.startsWith(n);Jt(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${bw}<span>Flangebook</span></a>
        ${Yt()===null?i`<nav aria-label="Main">
                ${$w.filter(([n])=>At(n)).map(([n,s])=>i`<a href=${n} aria-current=${t(n)?"page":"false"}>${s}</a>`)}
              </nav>`:h}
      </div>
      ${ww()}${_w()}${Yt()===null?yw():h}`,document.getElementById("masthead"))}function _w(){return uo()?i`<p class="standing" data-test="held">
      ${uo()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      Then it is saved automatically.
    </p>`:oo()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${tt().reached===!1?h:"Cards come from the shop."}
  </p>`:h}function yw(){let{reached:e,waiting:t,words:n,late:s,refused:o,settle:a,lost:r}=tt(),l=a.filter(m=>At(
`/c/${m}/resolve`)),c=s?` ${s}.`:"",d=t?`${n} ${t===1?"waits":"wait"} to be sent.${c}`:"",p=oo()?"":"Cards on \
this device still open.",u=e===!1?`Not connected to the shop. ${p}`:"";return!u&&!d&&!l.length&&!r?h:i`<p class="standing" data-test="standing">
    ${u} ${d} ${o?i`<a href="/settings">${o} refused: look</a>`:h}
    ${l.length?i`<a href="/c/${l[0]}/resolve" data-test="resolve-count">${l.length} to resolve</a>`:h}
    ${r?i`<a href="/settings" data-test="lost-count"
            >${r===1?"1 card is":`${r} cards are`} not in the shop any more: look</a
          >`:h}
  </p>`}var $w,bw,ww,Di=g(()=>{y();Tn();Te();us();zt();ye();$w=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];bw=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,ww=()=>isSecureContext?h:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});function fs(e){return e.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function I(e){
return e.length>3?`${e.slice(0,3)}-${e.slice(3)}`:e}function me(e){let t=fs(e),n=[...t].filter(s=>!fo.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:t,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return t.length>7?{code:t,whole:!1,
fault:`A card code has seven characters. This one has ${t.length}.`}:t.length<7?{code:t,whole:!1,fault:""}:ph(
t.slice(0,-1))!==t.at(-1)?{code:t,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:t,whole:!0,fault:""}}function fa(){let e=crypto.getRandomValues(
new Uint8Array(6)),t=Array.from(e,n=>fo[n%fo.length]).join("");return t+ph(t)}function ph(e){let t=0,n=2;for(let s of e)
t^=hh(n,fo.indexOf(s)),n=hh(n,2);return fo[t]}function hh(e,t){let n=0;for(let s=t,o=e;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var fo,pe=g(()=>{fo="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});function ga(e){let t=rs()==="bench"?"This device is a press screen":"This device is an operator's",n=jc(e)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${t}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var R,oe,le=g(()=>{y();Te();R=(e,t,n=h)=>ge(e)?t:n,oe=(e,t,n=h)=>At(e)?t:n});function en(e){if(e instanceof Ze)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${mh}
    </div>`;if(e instanceof H)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let t=e instanceof O?e.message:String(e);return e instanceof O||console.error(e),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${t}
  </div>`}var Me,ke,uh,mh,Be=g(()=>{y();F();zt();Me=e=>i`<p class="state" data-test="loading">${e}</p>`,ke=(e,t=h)=>i`<div class="state" data-test="empty">
    <h1>${e}</h1>
    ${t}
  </div>`,uh=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${oo()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${mh}
  </div>`,mh=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function $e(e,{replace:t=!1}={}){kw()&&(history[t?"replaceState":"pushState"](null,"",e),Et(!0))}function ft(e){
go=e}function kw(){let e=go?.();return!e||confirm(e)}function gh(){go?.()?Qt():Et()}async function Et(e=!1){Fi.
abort(),Fi=new AbortController,go=null;let{signal:t}=Fi,n=document.documentElement;delete n.dataset.ready;let s=Sw(
eo(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
Qt();let o=l=>{clearTimeout(a),t.aborted||Jt(l,$a())};Jt(i``,$a());let a=setTimeout(()=>o(uh()),vw);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!ge(r)){o(ga(r)),n.dataset.ready="n\
ot-yours";return}try{let l=await fh[s.route.name]();if(t.aborted)return;scrollTo(0,0),await l.show({params:xw(
s.params),query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{
t.aborted||(n.dataset.ready=s.route.name)},signal:t})}catch(l){if(t.aborted)return;o(en(l)),n.dataset.ready="f\
ailed"}e&&!t.aborted&&$a().focus({preventScroll:!0})}function Sw(e){return e&&Cd(e.route.name)?{route:Wc("pair"),
params:{}}:e}function $h(e){return fh=e,addEventListener("popstate",()=>Et()),addEventListener("beforeunload",
t=>(uo()||go?.())&&t.preventDefault()),document.addEventListener("click",t=>{let n=t.target.closest("a");!n||t.
defaultPrevented||t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||n.target||n.hasAttribute("download")||n.origin!==
location.origin||!eo(n.pathname)||n.hash&&n.pathname===location.pathname||(t.preventDefault(),$e(n.pathname+n.
search+n.hash))}),$a().replaceChildren(),Et()}var vw,Fi,go,fh,$a,xw,Re=g(()=>{y();Di();Tn();pe();Te();ci();us();
le();Be();vw=1e3,Fi=new AbortController,go=null,fh={},$a=()=>document.getElementById("main");xw=e=>e.code?{...e,
code:fs(e.code)}:e});var Nn,ba,gs,ji=g(()=>{Nn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ba=e=>(...t)=>({
_$litDirective$:e,values:t}),gs=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,s){this._$Ct=t,
this._$AM=n,this._$Ci=s}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}}});var xT,bh,Tw,wa,Hi=g(()=>{y();({I:xT}=Jd),bh=e=>e.strings===void 0,Tw={},wa=(e,t=Tw)=>e._$AH=t});var xe,tn=g(()=>{y();ji();Hi();xe=ba(class extends gs{constructor(e){if(super(e),e.type!==Nn.PROPERTY&&e.type!==
Nn.ATTRIBUTE&&e.type!==Nn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!bh(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[
t]){if(t===mt||t===h)return t;let n=e.element,s=e.name;if(e.type===Nn.PROPERTY){if(t===n[s])return mt}else if(e.
type===Nn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(s))return mt}else if(e.type===Nn.ATTRIBUTE&&n.getAttribute(
s)===t+"")return mt;return wa(e),t}})});function _a(e){return Object.hasOwn(nn,e)?e:void 0}async function de(e,t){try{return await ya(e,t)}catch(n){let s=n instanceof
H?await ta():void 0;if(!s?.[e])throw n;return{items:s[e],etag:null,kept:!0}}}async function sn(){try{let e=await ta();
if(e||!tt().unkept)return e}catch{}try{let[{press:e},{items:t}]=await Promise.all([ka(),ya("metals")]);return{
press:e,metals:t}}catch{return}}async function ya(e,t){let{body:n,etag:s}=await M("GET",`/${e}`,{signal:t});return{
items:n[e],etag:s,kept:!1}}async function wh(e,t,n){await M("PUT",`/${e}`,{body:{[e]:t.map(Pn),by:B().name},etag:n})}
async function va(e){try{return await ka(e)}catch(t){let n=t instanceof H?await ta():void 0;if(!n)throw t;return{
press:n.press??null,etag:null,kept:!0}}}async function ka(e){let{body:t,etag:n}=await M("GET","/press",{signal:e});
return{press:t.press,etag:n,kept:!1}}async function _h(e,t){let n={press:Pn(e),by:B().name};return(await M("PU\
T","/press",{body:n,etag:t})).body.press}function Pn({outline_mm:e,outlines_mm:t,...n}){return n}function yh(e,t){
return JSON.stringify(e&&Pn(e))===JSON.stringify(t&&Pn(t))}function on({tray:e,slot:t}){return!e&&!t?"place no\
t given":[e&&(/^\S{1,4}$/.test(e)?`Tray ${e}`:e),t&&`slot ${t}`].filter(Boolean).join(", ")}var nn,ce,$s,fe=g(
()=>{F();se();Ce();ye();nn={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",title:"\
Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"Metals"}},
ce={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_holders",
metals:"shop.write_metals"};$s=(e,t)=>e?.find(n=>n.code===t)?.name??t});function $o(e,t){let s=t.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...ds(c.body)}),
e),o=t.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(e.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??e.revision_id,here:o}}async function Cn(e){return $o(e,
await kn(e.code).catch(()=>[]))}async function Ui(e){let t=await it(e);return t&&$o(t,(await kn(e)).filter(n=>n.
body.settles))}async function bo(e){let t=await it(e);return t&&Cn(t)}async function gt(e,t,{reason:n="",settles:s=[]}={}){
let o=pa(t,e),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:e};let{name:r}=B(),l=await ua(
{id:Ge(),kind:a.every(p=>p==="note")&&!s.length?"note":"edit",code:e.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:ds(e,a),after:e.after,etag:e.etag,revision:e.revision}),c=await bo(e.
code).catch(()=>{}),d=l.answer;return{where:l.where,card:c??(d?$o(d,[]):{...e,...o})}}var an=g(()=>{ps();Pe();
us();se();Ce()});function Gi(e){if(e.limits!==void 0)return e.limits;let t=[e,...e.corrections??[]].filter(Ow);if(!t.length)return null;
let n=Aw(e)+.5,s=Math.max(Math.min(...t.map(r=>r.set_angle_deg)),n),o=t.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function nt(e,t){let n=Gi(
e);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=t;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function Aw({drawing:e,v_opening_mm:t}){let n=(e?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&t?2*Math.atan(t/2/Math.min(...n))*Mw:0}var vh,Mw,Ow,rn=g(()=>{vh=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],Mw=180/Math.PI;Ow=e=>typeof e.set_angle_deg=="number"&&typeof e.punch_depth_mm=="number"});async function $t(e,t,n){let s=null,o=await it(e).catch(a=>{s=a});if(!o){await t(await Cn(await Lw(e,n,s)),{where:"\
shop"});return}await t(await Cn(o),{where:"device"}),Ew(o,t,n)}async function Lw(e,t,n){try{return await bt(e,
t)}catch(s){throw s instanceof H&&n instanceof Ze?n:s}}async function kh(){try{let e=await Kt();if(e.length||!tt().
unkept)return{list:e,where:"device"}}catch{}try{let{body:e}=await M("GET","/cards?archived=all&limit=200",{timeout:4e3});
return Zt(!0),{list:e.cards.map(t=>({...t,note:""})),where:"shop"}}catch(e){return Zt(!1,e),{list:[],where:"sh\
op"}}}async function Ew(e,t,n){try{let s=await bt(e.code,n);!n.aborted&&s.etag!==e.etag&&await t(await Cn(s),{
where:"shop"})}catch{}}async function xh(e,t){if(await it(e).catch(()=>{}))return"device";try{return await bt(
e,t),"shop"}catch(n){if(n instanceof O&&n.status===404)return"nowhere";if(n instanceof H)return"silent";throw n}}
async function bt(e,t){try{let{body:n}=await M("GET",`/cards/${e}`,{signal:t,timeout:4e3});return Zt(!0),await ut(
n).catch(()=>n)}catch(n){throw t?.aborted||Zt(!1,n),n}}async function xa(e,t){let{body:n}=await M("PUT",`/card\
s/${e.code}`,{body:t,etag:e.etag,timeout:t.replan?6e4:8e3});return ut(n).catch(()=>n)}function lt(e,t){let n=e.
settings?.find(a=>a.step===t.number),s={set_angle_deg:n?.set_angle_deg??t.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??
t.punch_depth_mm},o=nt(t,s);return{...o?s:{set_angle_deg:null,punch_depth_mm:null},firstHit:n||!o?null:t.first_hit??
null,gauge_x_mm:n?.gauge_x_mm??t.gauge_x_mm,fromTrial:!!n,reason:n?.reason??""}}var Ie=g(()=>{F();an();rn();zt();
Ce();ye()});function qe(e,t){return e.length*t*.6+t*.3}function Nw(e,t){return Math.abs(e.x-t.x)*2<e.width+t.width&&Math.abs(
e.y-t.y)*2<e.height+t.height}function Sh(e,[[t,n],[s,o]]){let a=0,r=1,l=[[t-e.x,s-t,e.width/2],[n-e.y,o-n,e.height/
2]];for(let[c,d,p]of l){if(d===0){if(Math.abs(c)>p)return!1;continue}let[u,m]=[(-p-c)/d,(p-c)/d];a=Math.max(a,
Math.min(u,m)),r=Math.min(r,Math.max(u,m))}return a<=r}function Pw([e,t],[n,s]){return Sa(e,t,n)!==Sa(e,t,s)&&
Sa(n,s,e)!==Sa(n,s,t)}function Sa(e,t,n){return(t[0]-e[0])*(n[1]-e[1])>(t[1]-e[1])*(n[0]-e[0])}var Ta,Ma=g(()=>{
Ta=class{constructor(t){this.edges=t,this.taken=[]}choose(t){let n=t[0],s=1/0;for(let o of t){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:t,
lines:n=[]}){let s=this.taken.filter(l=>Nw(t,l)).length,o=this.edges.filter(l=>Sh(t,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(d=>Pw(c,d)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(d=>Sh(d,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function Oe(e){return e.length?`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}Z`:""}function wo(e){return e.length?
`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}`:""}function st(e){let t=e.flat().map(([s])=>s),n=e.flat().map(([,
s])=>s);return[Math.min(...t),Math.min(...n),Math.max(...t),Math.max(...n)]}function Th([e,t,n,s],o){return`${e-
o} ${-s-o} ${n-e+2*o} ${s-t+2*o}`}function Bn([e,t,n,s],o,a){let r=Math.min(o/Math.max(n-e,1e-6),a/Math.max(s-
t,1e-6));return([l,c])=>[(l-e)*r,(s-c)*r]}var ln=g(()=>{});function j(e){let{text:t}=w(e,{digits:2});return B().inches==="fraction"?t:t.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function Oh({section:e,part:t},{pixels:n=bs(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=Bn(st([e.outline]),n-2*l,s-2*l),d=e.outline.map(c),p=new Ta(d.map((v,N)=>[v,d[(N+1)%d.length]])),u=Rw(e).map(
(v,N)=>Ww(v.map(c),j(t.flats_mm[N]),p,18)),m=e.bend_points.map((v,N)=>Iw(c(v),N+1,t.bends[N],p,18)),[b,f,_,T]=jw(
[...d,...m.flatMap(v=>Mh(v.box)),...u.flatMap(v=>[...Mh(v.box),...v.lines.flat()])]),[E,P]=[_-b+12,T-f+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${Bw(t)}
    width=${E}
    height=${P}
    viewBox="${b-6} ${f-6} ${E} ${P}">
    <path class="sheet" d="M${d.map(v=>v.join(" ")).join("L")}Z" />
    ${u.map(({lines:v,box:N,text:Q})=>x`${v.map(([Le,li])=>x`<path class="dimension" d="M${Le}L${li}"/>`)}
      ${Dw(v[0])}${Fw(N,Q,18)}`)}
    ${m.map(({box:v,text:N,number:Q,badge:Le})=>x`<circle class="badge ${Q===a?"marked":""}" cx=${Le[0]} cy=${Le[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${Le[0]} y=${Le[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${Q}</text>
      <text x=${Le[0]+18*.95} y=${v.y} font-size=${18}
        dominant-baseline="central">${N}</text>`)}
  </svg>`}function bs(){return Math.min(Math.max(innerWidth-32,300),720)}function Bw(e){return`Section. ${e.flats_mm.
map((n,s)=>{let o=e.bends[s],a=o?`, bend ${s+1}: ${Ah(o)} ${o.direction}`:"";return`flat ${s+1}: ${$(w(n))}${a}`}).
join("; ")}.`}function Ah(e){return e.kind==="closed_hem"?"hem":e.kind==="open_hem"?"open hem":ie(S(e.included_angle_deg))}
function Rw({dimensions:e,bend_points:t,centre_line:n}){if(e)return e;let s=[n[0],...t,n[n.length-1]];return s.
slice(1).map((o,a)=>[s[a],o])}function Iw(e,t,n,s,o){let a=Ah(n),r=qe(a,o)+1.6*o,l=[1.4,1.9,2.6].flatMap(p=>Cw.
map(u=>{let m=e[0]+Math.cos(u)*(p*o+r/2-o*.6),b=e[1]+Math.sin(u)*p*o;return{box:{x:m,y:b,width:r,height:o*1.5},
cost:p*2}})),{box:c}=s.choose(l),d=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:t,badge:d}}function Ww([e,t],n,s,o){
let a=Math.hypot(t[0]-e[0],t[1]-e[1])||1,r=[-(t[1]-e[1])/a,(t[0]-e[0])/a],[l,c]=[qe(n,o),o*1.3],d=(m,b)=>[m[0]+
r[0]*b,m[1]+r[1]*b],p=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap(b=>[.5,.3,.7].map(f=>{let[_,T]=[d(e,b*o),d(t,b*o)],
E={x:_[0]+(T[0]-_[0])*f,y:_[1]+(T[1]-_[1])*f,width:l,height:c},P=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(b*r[1])*
o*.9:0,v=[[_,T],[d(e,Math.sign(b)*o*.5),d(_,Math.sign(b)*4)],[d(t,Math.sign(b)*o*.5),d(T,Math.sign(b)*4)]];return{
box:{...E,y:E.y+P},cost:Math.abs(b)+(f===.5?0:.5),lines:v}}))),u=s.choose(p);return{box:u.box,lines:u.lines,text:n}}
function Dw(e){return e.map(([t,n])=>x`<path class="dimension tick" d="M${t-4} ${n+4}L${t+4} ${n-4}"/>`)}function Fw({
x:e,y:t,width:n,height:s},o,a){return x`<rect class="ground" x=${e-n/2} y=${t-s/2} width=${n} height=${s}/>
    <text x=${e} y=${t} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function Mh({
x:e,y:t,width:n,height:s}){return[[e-n/2,t-s/2],[e+n/2,t+s/2]]}function jw(e){return st([e])}var Cw,ot=g(()=>{
y();se();A();Ma();ln();Cw=[0,90,180,270,45,135,225,315].map(e=>e*Math.PI/180)});var ws,ae,wt=g(()=>{y();ws=()=>matchMedia("(min-width: 1000px)").matches,ae=(e,t,{test:n="",open:s=ws()}={})=>i`<details class="fold" data-test=${n||
h} ?open=${s}>
    <summary><h2>${e}</h2></summary>
    ${t}
  </details>`});function k(e,t=Hw[e]){return i`<span class="flag ${e}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${Uw[e]}</svg>${t}</span
  >`}function Vi({step:e,steps:t=[]}){return t.length>1?i`<b>Steps ${t.join(", ")}.</b> `:e?i`<b>Step ${e}.</b> `:
h}function We(e,{quiet:t=!1}={}){let n=e.filter(s=>!t||s.level!=="ok").sort((s,o)=>_s.indexOf(Se(s))-_s.indexOf(
Se(o)));return n.length===0?h:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${k(Se(s))}
          <div class="say">
            ${Vi(s)}${Ue(s.template,s.numbers)}
            ${s.do?i`<div class="do">${Ue(Rn(s),s.numbers)}</div>`:h}
          </div>
        </li>`)}
  </ul>`}function ys(e){let t=new Map;for(let s of e){let o=`${Se(s)} ${s.code}`;t.set(o,[...t.get(o)??[],s])}
let n=[...t.values()].sort(([s],[o])=>_s.indexOf(Se(s))-_s.indexOf(Se(o)));return i`<ul class="checks lines" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s[0].level} data-code=${s[0].code}>
          ${Gw(s)}
        </li>`)}
  </ul>`}function Gw([e,...t]){let n=i`${k(Se(e))}
    <div class="say">${Vi(e)}${Ue(e.template,e.numbers)} ${Vw(t)}</div>`;return!e.do&&t.length===0?n:i`<details ?open=${e.
level==="stop"}>
    <summary>${n}</summary>
    ${t.map(s=>i`<p class="say">${Vi(s)}${Ue(s.template,s.numbers)}</p>`)}
    ${e.do?i`<p class="do">${Ue(Rn(e),e.numbers)}</p>`:h}
  </details>`}function Vw(e){let t=e.flatMap(({step:n,steps:s=[]})=>s.length?s:n??[]);return e.length===0?h:t.
length===0?i`<b>And ${e.length} more.</b>`:i`<b>Also step${t.length>1?"s":""} ${t.join(", ")}.</b>`}var Hw,_s,
Uw,Se,ve,Rn,ze,_o,G=g(()=>{y();A();Hw={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",ok:"OK"},_s=
["stop","caution","unknown","note","ok"],Uw={stop:x`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:x`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:x`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:x`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:x`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};Se=({level:e,sign:t,do:n,
step:s,steps:o=[]})=>t??(e==="ok"&&n&&(s||o.length)?"note":e),ve=({template:e,numbers:t})=>Ue(e,t),Rn=({do:e,do_template:t})=>t??
e,ze=({template:e,numbers:t={},words:n=""})=>e?Ue(e,t):n,_o=e=>e.map(ve).join(" ")});function In(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":t.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function re(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":`${In(e)}\
, ${t.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function vs({made_at:e,received_at:t}){return t?
!e||Math.abs(Date.parse(e)-Date.parse(t))<qw?re(t):`in the shop ${re(t)}, made ${re(e)} by the device’s clock`:
re(e??"")}function Nt({by:e,device:t}){return[e,t===e?"":t].filter(Boolean).join(", ")}var qw,Ke=g(()=>{qw=5*6e4});function qi(e,{metalName:t,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${e.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${I(s.code)}</span>
            <span class="more">
              ${t(s.metal)}, ${j(s.thickness_mm)} ${C()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${In(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · archived":""}
              ${zw(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="resolve">${k("caution",`${s.settle} to resolve`)}</span>`:h}
              ${s.worst==="stop"?k("stop"):h}
            </span>
          </a>
        </li>`)}
  </ul>`}var zw,Lh=g(()=>{y();pe();ot();A();G();Ke();zw=e=>e?i`· <b>${e} ${/^1 \S+$/.test(e)?"waits":"wait"}</b>`:
h});function Aa(e,t,n,s){let o=me(e.code),a=o.fault||(e.asked&&!o.whole?Yw(o.code):"");return i`<form class="code-form" @submit=${l=>{
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
        .value=${xe(e.code)}
        aria-invalid=${a?"true":"false"}
        aria-describedby="code-more"
        @input=${l=>{e.code=l.target.value,e.asked=!1,n()}} />
      <button class="button ${o.whole?"next":""}" data-test="open">Open</button>
    </div>
    <p id="code-more" class="code-more" role="status">
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:Kw(o,t,s)}
    </p>
  </form>`}function Kw(e,t,n){if(!e.whole)return n;let s=t.find(o=>o.code===e.code);return s?i`<span data-test="code-found"
        >${I(e.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A valid code, but not on this device yet. Open asks the shop.</span
      >`}var Oa,Yw,zi=g(()=>{y();tn();pe();Re();Oa=()=>({code:"",asked:!1});Yw=e=>e?`A card code has seven cha\
racters. This is ${e.length}.`:"Type the seven characters printed on the label."});var Nh={};ne(Nh,{show:()=>Xw});async function Xw(e){e.title("Find a card");let t={typed:Oa(),search:"",shown:Ki},
n=await Eh(),s=!1,o=()=>{e.render(i`<div class="home">
        <h1>Find a card</h1>
        <div class="home-scan">
          <a class="button next wide" href="/scan" data-test="scan">${Jw} Scan a label</a>
        </div>
        <div class="home-ways">
          ${Aa(t.typed,n.list,o,"Seven characters, capitals or not.")}
          <nav class="home-new" aria-label="Start something">
            ${oe("/bend",i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`)}
            ${oe("/part",i`<a class="button" href="/part" data-test="new-part"
                >${R("cards.create","New part","Plan a part")}</a
              >`)}
          </nav>
        </div>
        ${Zw(t,n,s,o)}
      </div>`)};o();let a=async()=>{s||=tt().reached!==null,n=await Eh(),o(),(s||n.list.length)&&e.ready()};document.
addEventListener("sync",a,{signal:e.signal}),n.list.length&&e.ready(),await U().then(a)}async function Eh(){let[
{list:e,where:t},n,s]=await Promise.all([kh(),sn(),Ve().catch(()=>[])]),o=new Map;for(let{code:r}of s)o.set(r,
Wi(s.filter(l=>l.code===r)));return{list:e,where:t,waiting:o,metalName:r=>$s(n?.metals,r)}}function Zw(e,t,n,s){
if(t.list.length===0)return n?n_():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=e_(t,e.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal, thickness or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${xe(e.search)}
        @input=${a=>{e.search=a.target.value,e.shown=Ki,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${t_(o.length,t,e.search)}</p>
    ${qi(o.slice(0,e.shown),t)}
    ${o.length>e.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{e.shown+=Ki,s()}}>
              Show more
            </button>
          </div>`:h}
    ${e.search.trim()?h:Qw(t)}
  </section>`}function Qw(e){let t=e.list.filter(n=>n.archived);return t.length?ae(`Archived: ${t.length}`,qi(
t,e),{test:"archived",open:!1}):h}function e_({list:e,metalName:t},n){let s=n.toLowerCase().split(/\s+/).filter(
Boolean);return s.length===0?e.filter(o=>!o.archived):e.filter(o=>{let{code:a,title:r,note:l,metal:c,thickness_mm:d}=o,
p=`${c} ${t(c)} ${j(d)} ${C()}`,u=`${a} ${I(a)} ${r} ${l} ${p}`.toLowerCase();return s.every(m=>u.includes(m))})}
function t_(e,{list:t,where:n},s){let o=n==="device"?"on this device":"of the shop";return s.trim()===""?e===1?
`1 card ${o}`:`${e} cards ${o}`:e===0?`None of the ${t.length} cards matches.`:`${e} of ${t.length} cards`}function n_(){
return tt().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${R("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var Ki,Jw,Ph=g(()=>{y();tn();pe();fe();Pe();Ie();ye();A();ot();wt();le();Lh();zi();Ki=40,Jw=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`});var Wn,Ch,Bh,ks,Yi=g(()=>{Wn=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],Ch=["guaranteed minimum","typical","measured","common practice","from memory"],Bh=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],ks=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function Dn(e=""){let n=e.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(Rh.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...Ih}]}function Fh(e){let t=Dn(e),{angle:n,face:s}=t[t.length-1];return yo(
[...t,{...Ih,angle:n,face:s}])}var Rh,Ih,Wh,yo,Dh,jh,vo,Ji=g(()=>{Rh=["v","angle","radius","face","centre","co\
de","rating"],Ih={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},Wh=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];yo=e=>e.map(t=>Rh.map(n=>t[n].replaceAll(";",",")).join("; ")).join(
`
`),Dh=(e,t,n)=>yo(Dn(e).map((s,o)=>o===t?{...s,...n}:s));jh=(e,t)=>yo(Dn(e).filter((n,s)=>s!==t)),vo={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var Gh,Vh,s_,o_,a_,La,Pt,xs,Xi,Hh,Uh,Zi,Qi,el,Ea,tl=g(()=>{Gh="Empty is unknown: checks with it then say so.",
Vh={name:"rating_kn_per_m",label:"Rating",type:"rating",hint:"As stamped on the tool or in its maker's papers."},
s_={name:"segments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned tw\
ice twice."},o_=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],a_=[{name:"con\
dition",label:"Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown",
"unknown"]]},{name:"condition_note",label:"Note on its condition",type:"note"}],La={name:"name",label:"Name",type:"\
text",broad:!0},Pt=e=>t=>t.shape===e,xs=(e,t)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:e,
hint:`One point a line: x, y. x towards the back gauge, y up. ${t}`,when:Pt("points")}),Xi=(...e)=>({name:"sha\
pe",label:"Shape",type:"pick",broad:!0,options:[...e,["points","by points or DXF"]]}),Hh={name:"turned",label:"\
Sits in the press",type:"yes",options:[["no","as drawn"],["yes","reversed"]]},Uh={title:"Rating and pieces",part:"\
rest",fields:[Vh,s_]},Zi={title:"Place and condition",part:"rest",fields:[...o_,...a_]},Qi=e=>e.shape!=="multi\
_v",el=({die_holder_height_mm:e})=>!!e&&!/^0+([.,]0*)?( mm| in)?$/.test(String(e)),Ea={punches:[{title:"What i\
t is",part:"what",fields:[La,{name:"angle_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_m\
m",label:"Tip radius",type:"length"}]},{title:"Outline",part:"outline",fields:[Xi(["straight","straight"],["go\
oseneck","gooseneck"]),{name:"height_mm",label:"Height, tip to seat",type:"length"},{name:"body_width_mm",label:"\
Width of the body",type:"length"},{name:"neck_relief_mm",label:"Throat behind the tip",type:"length",when:Pt("\
gooseneck")},{name:"neck_width_mm",label:"Thickness of the neck",type:"length",when:Pt("gooseneck"),blank:"as \
the body"},{name:"throat_top_mm",label:"Throat begins to close",type:"length",when:Pt("gooseneck"),blank:"as h\
igh as it can",hint:"Above the tip."},xs("punch","The tip is at 0, 0."),Hh]},Uh,Zi],dies:[{title:"What it is",
part:"what",fields:[La,{name:"v_opening_mm",label:"V opening",type:"length",hint:"Between the sharp corners of\
 face and flanks.",when:Qi},{name:"angle_deg",label:"Angle of the V",type:"number",unit:"°",when:Qi},{name:"s\
houlder_radius_mm",label:"Shoulder radius",type:"length",when:Qi}]},{title:"Outline",part:"outline",fields:[Xi(
["single_v","single V"],["multi_v","block with several V's"]),{name:"height_mm",label:"Height",type:"length"},
{name:"width_mm",label:"Width",type:"length"},Hh,{name:"openings",label:"The V's of the block",type:"openings",
when:Pt("multi_v")},{name:"up",label:"V that is up",type:"number",hidden:!0,when:Pt("multi_v")},xs("die","The \
top face is at y 0, the V's middle at x 0.")]},Uh,Zi],holders:[{title:"What it is",part:"what",fields:[La,Vh]},
{title:"Outline",part:"outline",fields:[Xi(["block","plain block"],["clamps","clamps that stick out"]),{name:"\
height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the front",
type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to the ba\
ck",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:Pt("clamps")},{name:"\
body_front_mm",label:"Body above, to the front",type:"length",when:Pt("clamps")},{name:"body_back_mm",label:"B\
ody above, to the back",type:"length",when:Pt("clamps")},xs("holder","The punch's seat is at 0, 0.")]},Zi],press:[
{title:"The press",part:"what",fields:[La,{name:"force_kn",label:"Full force",type:"force"},{name:"bed_length_\
mm",label:"Bed length",type:"length"},{name:"between_frames_mm",label:"Between the frames",type:"length"},{name:"\
open_height_mm",label:"Open height",type:"length"},{name:"stroke_mm",label:"Stroke",type:"length"},{name:"thro\
at_mm",label:"Throat",type:"length"}]},{title:"Ram and bed",part:"outline",fields:[{name:"ram_width_mm",label:"\
Ram width",type:"length",needed:!0},{name:"ram_height_mm",label:"Ram height",type:"length",needed:!0},{name:"b\
ed_width_mm",label:"Bed width",type:"length",needed:!0},{name:"bed_height_mm",label:"Bed height",type:"length",
needed:!0},{name:"floor_below_die_mm",label:"Floor below the die",type:"length",broad:!0,blank:"not looked at",
hint:"From the face that the die stands on, down to the floor: long parts hang that far."},{...xs("ram","From \
the face that carries the holder. Empty: a plain beam."),name:"ram_points_mm",label:"Ram by points",when:void 0,
folded:!0},{...xs("bed","From the face that carries the die or its holder. Empty: a plain beam."),name:"bed_po\
ints_mm",label:"Bed by points",when:void 0,folded:!0}]},{title:"Riser or die holder on the bed",part:"rest",fields:[
{name:"die_holder_height_mm",label:"Height under the die",type:"length",blank:"none",broad:!0,hint:"0 or empty\
: the die stands on the bed."},{name:"die_holder_width_mm",label:"Width",type:"length",when:el,blank:"by point\
s"},{name:"die_holder_rating_kn_per_m",label:"Rating of the die holder",type:"rating",hint:"As stamped on it o\
r in its papers.",when:el},{...xs("die_holder","The die's seat is at y 0, the bed's at minus the height. Empty\
: a plain block."),name:"die_holder_points_mm",label:"Die holder by points",when:el,folded:!0}]},{title:"Ratin\
gs",part:"rest",fields:[{name:"force_per_m_limit_kn_per_m",label:"Most force per length of bed",type:"rating",
hint:"What bed and ram bear over a short length."},{name:"off_centre_mm",label:"Full force off the middle, up \
to",type:"length",blank:"unknown"},{name:"deflection_mm",label:"Gives way in the middle",type:"length",broad:!0,
blank:"unknown",hint:"Bed and ram together, middle against ends, at full force over the whole bed: from its pa\
pers, or from three strips below."},{name:"bending_speed_mm_s",label:"Bending speed",type:"number",unit:"mm/s",
blank:"unknown"}]},{title:"How it is set",part:"rest",fields:[{name:"set_by",label:"For a bend the press is se\
t",type:"pick",broad:!0,blank:"not known: read as by angle",options:[["angle","by angle"],["depth","by depth"],
["stop","by a stop"]]},{name:"angle_accuracy_deg",label:"It measures the angle in the sheet, within ±",type:"\
number",unit:"°",broad:!0,blank:"unknown",hint:"Only where its papers say how near. Empty: what sheet, tools \
and zero leave open counts."}]},{title:"Back gauge",part:"rest",fields:[{name:"gauge_x_min_mm",label:"X from",
type:"length"},{name:"gauge_x_max_mm",label:"X to",type:"length"},{name:"gauge_r_min_mm",label:"R from",type:"\
length"},{name:"gauge_r_max_mm",label:"R to",type:"length"},{name:"finger_height_mm",label:"Finger height",type:"\
length"},{name:"finger_depth_mm",label:"Finger depth",type:"length"},{name:"gauge_repeatability_mm",label:"Rep\
eats within ±",type:"length",broad:!0,blank:"unknown",hint:"As in its papers.",counted_mm:.1}]},{title:"Holde\
r in the ram, and notes",part:"rest",fields:[{name:"holder",label:"Holder",type:"pick",options:[],blank:"none",
broad:!0},{name:"note",label:"Note",type:"note"}]}]}});function _t(e=""){let t=qo(e);return t===""?null:r_.test(t)?Number(t):t}function c_(e){let{show:t}=Ct.number;return{
v:q(e.v_opening_mm),angle:t(e.angle_deg),radius:q(e.shoulder_radius_mm),face:e.face,centre:q(e.centre_mm),code:e.
code??"",rating:Ct.rating.show(e.rating_kn_per_m)}}function d_({v:e,angle:t,radius:n,face:s,centre:o,code:a,rating:r}){
let l={v_opening_mm:Na(e),angle_deg:_t(t),shoulder_radius_mm:Na(n),centre_mm:Na(o)};return{...Object.fromEntries(
Object.entries(l).filter(([,d])=>d!==null)),face:s||"top",code:a||null,rating_kn_per_m:qh(r)}}function Pa(e,t){
return Object.fromEntries(cn(e).map(({name:n,type:s})=>[n,Ct[s].show(t[n])]))}function Ca(e,t,n={}){let s=({name:r,
type:l})=>r in n&&Ct[l].show(n[r])===t[r]?n[r]:Ct[l].take(t[r]),a=cn(e).filter(({when:r})=>!r||r(t)).map(r=>({
spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||h_(r)).map(({spec:r,value:l})=>[
r.name,l]))}function Kh(e){let t={};for(let n of["name","note","gauge_family"])t[n]=Ct.text.show(e[n]);for(let{
name:n}of ks)t[n]=Ct.number.show(e[n]);for(let{name:n}of Wn){let s=e[n];for(let o of p_)t[`${n}.${o}`]=Ct.number.
show(s?.[o]);t[`${n}.standing`]||="typical"}return t}function Yh(e){let t={name:e.name.trim(),note:e.note.trim(),
gauge_family:e.gauge_family||null};for(let{name:n,needed:s}of ks)(e[n]?.trim()||!s)&&(t[n]=_t(e[n]));for(let{name:n,
needed:s}of Wn){let o=["low","nominal","high","source"].some(a=>e[`${n}.${a}`]?.trim());t[n]=o||s?u_(e,n):null}
return t}function u_(e,t){let n=["low","nominal","high"].map(s=>[s,_t(e[`${t}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(e[`${t}.source`]??"").trim(),standing:e[`${t}.standing`]}}function Jh(e,t){
let n={},s=[];for(let[o,a]of Object.entries(e)){let r=`.${o}.`,c=(r.includes(".openings.")?t.filter(p=>p==="op\
enings"):t).filter(p=>r.includes(`.${p}.`)).sort((p,u)=>u.length-p.length)[0],d=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n[o.slice(o.indexOf(c))]??=[]).push(...a):c?(n[c]??=[]).push(...d&&r.endsWith(`.${c}.${d}.`)?a.map(p=>`\
Number ${Number(d)+1}: ${p}`):a):s.push(...a.map(p=>`${o}: ${p}`))}return{byName:n,others:s}}var r_,nl,Na,i_,qh,
l_,Ct,zh,cn,h_,p_,Bt=g(()=>{Yi();Ji();tl();A();r_=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;nl=e=>(t="")=>t.trim()===
""?null:e(t),Na=nl(e=>te(e)),i_=nl(e=>so(e,qt())),qh=nl(e=>so(e,_n())),l_=(e="")=>e.split(/[\n;]/).map(t=>t.trim()).
filter(Boolean),Ct={text:{show:e=>e??"",take:(e="")=>e.trim()},note:{show:e=>e??"",take:(e="")=>e.trim()},pick:{
show:e=>e??"",take:e=>e||null},yes:{show:e=>e?"yes":"no",take:e=>e==="yes"},length:{show:q,take:Na},number:{show:e=>e==
null?"":String(e),take:_t},force:{show:e=>hi(e,qt()),take:i_},rating:{show:e=>hi(e,_n()),take:qh},lengths:{show:e=>(e??
[]).map(q).join(", "),take:(e="")=>e.split(/[,;\n]/).filter(t=>t.trim()).map(t=>te(t))},points:{show:e=>(e??[]).
map(([t,n])=>`${q(t)}, ${q(n)}`).join(`
`),take:e=>l_(e).map(t=>t.split(t.includes(",")?",":/\s+/).map(n=>te(n)))},openings:{show:e=>yo((e??[]).map(c_)),
take:e=>Dn(e).map(d_)},figure:{show:String,take:String}};zh=e=>Ct.points.show(e),cn=e=>Ea[e].flatMap(t=>t.fields);
h_=({type:e,blank:t})=>e==="rating"||t!==void 0,p_=["low","nominal","high","source","standing"]});function Ba(e){let t={...m_};for(let n of ol){let s=e.get(sl[n])?.slice(0,60);if(s==null)continue;let o=` ${C()}`;
t[n]=al(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return t}function Ra(e){let t=new URLSearchParams;for(let n of ol){
let s=e[n].trim();s!==""&&t.set(sl[n],al(n)?te(s):s)}return t.toString()}function ko(e){return f_.filter(t=>e[t].
trim()==="")}function Fn(e){let t={};for(let n of ol){let s=e[n].trim();s!==""&&(t[n]=al(n)?te(s):n==="include\
d_angle_deg"?_t(s):s)}return t}var m_,sl,ol,f_,al,Ia=g(()=>{Bt();A();m_={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},sl={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},ol=Object.keys(sl),f_=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],al=e=>e.endsWith("_mm")});function Rt(e,t,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:d}=a;try{let p=await e(c,d);d.aborted||t({question:c,answer:p})}catch(p){d.aborted||
t({question:c,error:p})}}return{stop:r,ask(c,{now:d=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),d?0:s))}}}var xo=g(
()=>{});function yt(e,t,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
h}>
    <span class="what">${e}</span>
    <span class="value"
      >${t.text}${t.unit==="°"?"°":i`<span class="unit">${t.unit}</span>`}</span
    >
    ${n||o?i`<span class="band"
            >${n?i`${n[0].text} to ${n[1].text}${n[1].unit==="°"?"°":` ${n[1].unit}`}`:h}${o?i` <i class="origin" data-test="origin">${o}</i>`:
h}</span
          >`:h}
    ${s&&s!==h?i`<span class="band">${s}</span>`:h}
  </div>`}var Wa=g(()=>{y()});function Da(e){return e.force_kn===null||e.force_kn===void 0?h:i`<b>${$(De(e))}</b>
    <small class="expected">expected ${$(dn(e))}</small>`}function So(e,t,n="force_kn",{note:s=h,origin:o=""}={}){
return yt(e,De(t,n),{note:i`expected ${$(dn(t,n))}${s}`,origin:o,test:n})}var De,dn,Xh,ct=g(()=>{y();A();Wa();
De=(e,t="force_kn")=>Xh(t)(e[`${t}_high`],{up:!0}),dn=(e,t="force_kn")=>Xh(t)(e[t]),Xh=e=>e==="force_kn"?he:Ee});var rl,Zh=g(()=>{rl=class extends HTMLElement{#e=new ResizeObserver(()=>this.measure());#t=new MutationObserver(
()=>this.measure());connectedCallback(){this.#e.observe(this),this.#t.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#e.disconnect(),this.#t.disconnect()}measure(){let t=this.
querySelector("svg"),{width:n,height:s}=t?.viewBox.baseVal??{width:0,height:0};if(!t||!n||!t.clientWidth||!t.clientHeight)
return;let o=Math.max(n/t.clientWidth,s/t.clientHeight);t.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",rl)});function il({distance_mm:e,tool:t}){let n=$(w(Math.abs(e)));return e<=0?[n,`into ${t}`]:[n,`to ${t}`]}function Qh(e,{
left:t,right:n,bottom:s,top:o}){let[a,r]=jn(e),[[l,c],[d,p]]=[e.on_sheet,e.on_tool],u=a-t>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[b,f]=il(e);return x`<g class="near ${e.distance_mm<=0?"hit":""}" data-test="near" data-tool=${e.tool}>
    <path class="near-line" d="M${l} ${-c}L${d} ${-p}" />
    ${Fa(e,n-t)?h:[e.on_sheet,e.on_tool].map(g_)}
    <g transform="translate(${a} ${-r})">
      ${Fa(e,n-t)?x`<circle class="px near-ring" r="17" />`:h}
      <path class="px near-leader" d="M${u*12} ${m*12}L${u*34} ${m*30}H${u*44}" />
      <text class="px label near-label" x=${u*50} y=${m*30-2}
        text-anchor=${u>0?"start":"end"}>${b}<tspan x=${u*50}
          dy="1.1em">${f}</tspan></text>
    </g>
  </g>`}var jn,Fa,g_,ll=g(()=>{y();A();jn=({on_sheet:[e,t],on_tool:[n,s]})=>[(e+n)/2,(t+s)/2];Fa=(e,t)=>Math.abs(
e.distance_mm)<.1*t,g_=([e,t])=>x`<g transform="translate(${e} ${-t})"><circle class="px near-dot" r="4" /></g>`});function vt(e,{pose:t,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:d=!1,room:p=null}){
let u=s??(e.bounds[2]-e.bounds[0])/6,m=n?b_(u,d?c:null):w_(e,u,c),b=p&&!n?__(m,p,u):m,{left:f,bottom:_,right:T,
top:E}=b,P=l??$_(e,t==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${t}
      viewBox="${f} ${-E} ${T-f} ${E-_}"
      preserveAspectRatio="xMidYMid meet">
      ${[e.bed,e.die].map(Oe).map(ep)}
      <g transform="translate(0 ${P.down})">${P.tools.map(ep)}</g>
      ${e.die.length?x`<path class="axis" d="M0 ${-E-999}V999" />`:h}
      <path class="gauge" transform="translate(${P.back} 0)" d=${P.gauge} />
      <path class="sheet" data-test="sheet" d=${P.sheet} />
      ${t==="before"&&e.gauge_point?y_(e.gauge_point,o,b):h}
      ${t==="after"&&a?v_(e.after.sheet,a,u,b):h}
      ${d&&c?Qh(c,b):h}
    </svg>
  </drawing-frame>`}function $_(e,t){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=e[t];return{sheet:Oe(n),tools:[
s,o,a].map(Oe),down:0,gauge:Oe(r),back:0}}function b_(e,t){let[n,s]=t?jn(t):[0,.1*e];return{left:n-1.5*e,bottom:s-
e,right:n+1.5*e,top:s+e}}function w_(e,t,n){let[s,o,a,r]=st([e.before.sheet,e.after.sheet]),l=14*t,c=e.gauge_point?
e.gauge_point[0]+1.5*t:0,d={left:Math.max(Math.min(s-.4*t,-1.4*t),-l),right:Math.min(Math.max(a+.4*t,c,1.4*t),
Math.max(l,c))},p=d.right-d.left,u={...d,bottom:Math.max(Math.min(o-.3*t,-1.1*t,-.17*p),-l/2),top:Math.min(Math.
max(r+.3*t,1.6*t),8*t)},m=n?cl(u,jn(n),Math.max(t,.1*p)):u;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function __(e,{
bounds:t,share:n},s){let o=cl(cl(e,[t[0],t[1]],s),[t[2],t[3]],s),a=r=>e[r]+(o[r]-e[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function y_([e,t],n,{bottom:s}){let o=s*.45;return x`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${e} ${-t}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${e}" />
    ${tp(0,o,180)}${tp(e,o,0)}
    <g transform="translate(${e} ${-t})"><circle class="px touch" r="5" /></g>
    ${np(e/2,o,n,17)}
  </g>`}function v_(e,t,n,{left:s,right:o}){let a=Math.min(...e.filter(([p])=>Math.abs(p)<n/2).map(([,p])=>p)),
r=Math.max(1.25*n,.14*(o-s)),l=t/2*(Math.PI/180),[c,d]=[r*Math.sin(l),a+r*Math.cos(l)];return x`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-d}A${r} ${r} 0 0 1 ${c} ${-d}" />
    ${np(0,a+r,$(S(t)))}
  </g>`}var ep,cl,tp,np,To=g(()=>{y();A();Zh();ll();ln();ep=e=>e?x`<path class="tool" d=${e} />`:h;cl=({left:e,
right:t,bottom:n,top:s},[o,a],r)=>({left:Math.min(e,o-r),right:Math.max(t,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});tp=(e,t,n)=>x`<g transform="translate(${e} ${-t})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,np=(e,t,n,s=0)=>x`<g transform="translate(${e} ${-t})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function sp(e,t){let n=[...e].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>t(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die}
              <small>V ${ee(s.v_over_t,1)} × thickness</small></span
            >
            ${s.level==="ok"?h:k(s.level)}
            <span class="facts"> ${k_(s).map(o=>x_(...o))} </span>
            <span class="more">${ve(s.reason_said)} ${on(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var k_,x_,op=g(()=>{y();fe();A();ct();G();k_=e=>[["allow for",$(De(e,"force_kn_per_m")),`expected ${dn(
e,"force_kn_per_m").text}`],["radius",$(w(e.inside_radius_mm))],["flange from",$(w(e.min_flange_mm))],["set",$(
S(e.set_angle_deg))]],x_=(e,t,n)=>i`<span class="fact"
    ><small>${e}</small>
    <span class="amount">${t}</span
    >${n?i` <small class="beside">${n}</small>`:h}</span
  >`});function Ss(e,t=""){return e?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${dl(e)}. If it is too open, make a second hit.
    <span class="drawn">${t}</span>
  </p>`:h}var ja,dl,ap,Ha,Hn=g(()=>{y();A();ja=e=>S(e).text.replace(/\.0$/,""),dl=e=>`comes out ${ja(e.comes_out_deg_low)}\
 to ${ja(e.comes_out_deg_high)}°`,ap=e=>`${ja(e.comes_out_deg_low)}–${ja(e.comes_out_deg_high)}°`,Ha=(e,{set_angle_deg:t,
firstHit:n})=>n?e.expected_set_angle_deg:t});function Ua(e){return hl(e,t=>t.level==="stop"||t.level==="caution")}function hl(e,t){let n=e.filter(o=>!rp(o)&&
t(o));if(n.length===0)return h;let s=n.some(o=>o.level==="stop");return i`<section
    class="panel urgent ${s?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${ys(n)}
  </section>`}function Ts(e){let t=e.filter(o=>o.level==="unknown"),n=e.filter(o=>Se(o)==="note"),s=e.filter(o=>Se(
o)==="ok");return i`${t.length?i`<section>
          <h2>Not known</h2>
          ${ys(t)}
        </section>`:h}
  ${n.length?i`<section data-test="notes">
          ${ae("How to do it",ys(n),{test:"notes-fold"})}
        </section>`:h}
  ${s.length?ae(`Passed checks: ${s.length}`,We(s),{test:"fine",open:!1}):h}`}function hn(e){let t=e.filter(rp);
if(t.length===0)return h;let n=i`<ul>
    ${t.map(s=>i`<li>
          <b>${Ue(s.template,s.numbers)}</b>
          ${Ue(Rn(s),s.numbers)}
        </li>`)}
  </ul>`;return i`<section class="every-time">
    ${ae(i`${k("caution")} At the press, every time`,n,{test:"every-time"})}
  </section>`}var rp,ip,lp,Mo=g(()=>{y();A();G();wt();rp=e=>e.code.startsWith("general-");ip=e=>hl(e,t=>t.level===
"stop"),lp=e=>hl(e,t=>t.level==="caution")});function L({name:e,label:t,value:n,change:s,hint:o="",wrong:a=[],keys:r="text",placeholder:l="",unit:c="",on:d="\
input",next:p=!1,list:u=""}){let m=b=>s(b.target.value);return i`<div class="field ${a.length?"has-wrong":""}">
    <label for=${e}>${t}${c?i` <span class="hint">(${c})</span>`:h}</label>
    <input
      id=${e}
      name=${e}
      data-test=${e}
      autocomplete="off"
      spellcheck="false"
      inputmode=${r}
      enterkeyhint=${p?"next":h}
      placeholder=${l}
      list=${u||h}
      .value=${xe(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${d==="input"?m:h}
      @change=${d==="change"?m:h} />
    <span id="${e}-more">
      ${a.map(b=>i`<span class="wrong" data-test="wrong-${e}">${b}</span>`)}
      ${o?i`<span class="hint">${o}</span>`:h}
    </span>
    ${a.length?S_(e,Qc(String(n)),s):h}
  </div>`}function S_(e,t,n){return i`<div class="may-mean">
    ${t.map(s=>i`<button type="button" class="button" data-test="may-mean-${e}" @click=${()=>n(s)}>
          ${s}
        </button>`)}
  </div>`}function Un({name:e,label:t,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${e}>${t}${l?i` <span class="hint">(${l})</span>`:h}</label>
    <textarea
      id=${e}
      name=${e}
      data-test=${e}
      rows=${o}
      .value=${xe(String(n))}
      aria-invalid=${r.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${c=>s(c.target.value)}></textarea>
    <span id="${e}-more">
      ${r.map(c=>i`<span class="wrong" data-test="wrong-${e}">${c}</span>`)}
      ${a?i`<span class="hint">${a}</span>`:h}
    </span>
  </div>`}function K({name:e,label:t,value:n,options:s,change:o,wrong:a=[]}){return i`<div class="field ${a.length?
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
        ${s.map(([r,l])=>i`<option value=${r} .selected=${xe(r===n)}>${l}</option>`)}
      </select>
    </div>
    <span id="${e}-more"
      >${a.map(r=>i`<span class="wrong" data-test="wrong-${e}">${r}</span>`)}</span
    >
  </div>`}function X({name:e,label:t,value:n,options:s,change:o}){return i`<div class="field" role="radiogroup" aria-label=${t}>
    <span class="legend" aria-hidden="true">${t}</span>
    <div class="choice" data-test=${e}>
      ${s.map(([a,r])=>i`<label>
            <input
              type="radio"
              name=${e}
              value=${a}
              .checked=${xe(a===n)}
              @change=${()=>o(a)} />
            <span>${r}</span>
          </label>`)}
    </div>
  </div>`}function dt(e){Object.keys(e).length!==0&&document.querySelector('[aria-invalid="true"]')?.focus()}var Z=g(
()=>{y();tn();A()});function Ga(e){let[t,n]=[e?.die?.trim(),e?.punch?.trim()];return{...t?{die:t}:{},...n?{punch:n}:{}}}function pl(e){
let t=Ga(e);return Object.keys(t).length?{tools:t}:{}}function It(e){let{die:t,punch:n}=Ga(e);return[t&&`die ${t}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var Oo,Gn=g(()=>{Oo=e=>({die:e?.die??"",punch:e?.punch??""})});function W(e,t){return Object.entries(e).filter(([n])=>ul(n,t)).flatMap(([,n])=>n)}function cp(e,t){return Object.
entries(e).filter(([n])=>!t.some(s=>ul(n,s))).flatMap(([,n])=>n)}function dp(e,t,n){let s=Object.entries(e);return s.
length===0?h:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>ul(o,c)).sort((c,d)=>d.length-c.length)[0],l=r?ml(t(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>Ao(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function ml(e,t){let n=t.join(" ");return n.startsWith(e)?n:`${e}: ${n}`}function fl(e){for(let t=e?.
closest("details");t;t=t.parentElement?.closest("details"))t.open=!0}function Ao(e){let t=document.getElementById(
e);fl(t),t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"center"})}var ul,ht=g(()=>{y();ul=(e,t)=>e===t||
e.startsWith(`${t}.`)});function $l(e,t,n,s){let o=(a,r)=>L({next:!0,name:`${e}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:t[a]??"",wrong:W(n,`${e}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function pp(e,{dies:t,punches:n},s,o){
let a=t.flatMap(bl).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${It(e.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${$l("tools",e.tools??{},s,r=>o({...e,tools:{die:"",punch:"",...e.tools,...r}}))}
    </details>
    ${hp("codes-of-dies",a)}
    ${hp("codes-of-punches",n.map(({code:r})=>r))}`}function Ms({tools_reason:e,tools_reason_said:t}){let n=ze(
{...t,words:e});return n?i`<p class="tools-reason" data-test="tools-reason">${n}</p>`:h}var gl,bl,hp,Vn=g(()=>{
y();Gn();G();Z();ht();gl=["tools.die","tools.punch"];bl=e=>e.shape==="multi_v"?e.openings:[e];hp=(e,t)=>i`<datalist id=${e}>${t.
map(n=>i`<option value=${n}></option>`)}</datalist>`});function Va(e){let t=(e??"").split(":")[0].trim();return T_.includes(t)?t:""}function Lo(e){if(!e)return"";let t=new Map;
for(let[n,s]of M_){let o=e[n];o&&t.set(o,[...t.get(o)??[],s])}return[...t].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var T_,M_,qa=g(()=>{T_=["model","handbook","your test bends"];M_=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function mp(e){return i`<ul class="ratings" data-test="ratings">
    ${e.map(O_)}
  </ul>`}function O_(e){let{what:t,share_percent:n,level:s}=e;return i`<li class="rating" data-level=${s} data-what=${t}>
    <span class="rating-of"><b>${gp[t]??t}</b>${fp(e)}</span>
    ${k(s,n===null?"Unknown":`${ee(n,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${n===null?"open":""}" d="M0 9H250" />
      ${n===null?h:L_(n)}
    </svg>
    <span class="rating-words">${A_(e)}</span>
  </li>`}function A_({load_kn:e,load_kn_per_m:t,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=t===void 0?
$(he(e)):$(Ee(t));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=t===void 0?
$(he(n)):$(Ee(s));return`${a} of ${r}`}function L_(e){let t=Math.min(e/100*up,250);return x`<path class="bar-load" d="M0 9H${t}" /><path class="bar-most" d="M${up} 0V18" />`}
var up,fp,wl,gp,$p=g(()=>{y();A();G();up=200;fp=({what:e,name:t})=>e.startsWith("press")||!t?"":` ${t}`,wl=e=>`${gp[e.
what]??e.what}${fp(e)}`,gp={press:"Press","press per metre":"Bed and ram, per length",punch:"Punch",die:"Die",
holder:"Holder","die holder":"Die holder"}});function Os(e,t,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(t-e)/o,c=(r?.find(_=>l/_<=a)??E_(l,a))*o,d=Math.
floor(e/c+1e-9)*c,p=Math.ceil(t/c-1e-9)*c,u=_=>N_(n+(_-d)/(p-d)*(s-n)),m=Math.round((p-d)/c),b=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),f=Array.from({length:m+1},(_,T)=>d+T*c).map(_=>({at:u(_),text:(_/o).toFixed(b).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:u,marks:f}}function E_(e,t){let n=(e>0?e:1)/t,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function za(e){return e.length?`M${e.
map(([t,n])=>`${t} ${n}`).join("L")}`:""}var N_,_l=g(()=>{N_=e=>Math.round(e*100)/100});function bp({curve:e,set:t,peak:n,limits:s}){let o=Math.max(...e.map(b=>b.force_kn_high)),a=s.filter(b=>b.limit_kn!==
null).sort((b,f)=>Number(f.limit_kn)-Number(b.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:b})=>Number(
b)<=(b===r?C_:P_)*o),c=yp(e),d=Os(0,Math.max(o,...l.map(b=>Number(b.limit_kn))),{from:Fe.bottom,to:Fe.top+28,size:qt().
size}),p=(b,f)=>[c.at(b.punch_depth_mm),d.at(b[f])],u=[...e.map(b=>p(b,"force_kn_high")),...e.map(b=>p(b,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${$(he(n.force_kn))}, at a depth o\
f ${$(_p(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Ka} ${Ya}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${vp(c,d,qt().unit)}
    <path class="band" d="${za(u)}Z" />
    ${t.punch_depth_mm===null?h:kp(c.at(t.punch_depth_mm))} ${B_(l,d)}
    ${I_(a.filter(b=>!l.includes(b)))}
    <path class="curve" d=${za(e.map(b=>p(b,"force_kn")))} data-test="force-curve" />
    ${n?D_(c.at(n.punch_depth_mm),d.at(n.force_kn)):h}
  </svg>`}function wp({curve:e,set:t,trials:n}){let s=n.filter(u=>u.punch_depth_mm!==null),o=yp(e,s.map(u=>Number(
u.punch_depth_mm))),a=[...e.map(u=>u.loaded_angle_deg),...s.map(u=>u.measured_deg)],r=Os(Math.min(...a),180,{from:Fe.
bottom,to:Fe.top,steps:[5,10,15,30,45]}),l=u=>za(e.map(m=>[o.at(m.punch_depth_mm),r.at(m[u])])),c=t.set_angle_deg===
null?null:{x:o.at(Number(t.punch_depth_mm)),y:r.at(t.set_angle_deg)},p=`Angle over punch depth. ${c?`${$(S(t.set_angle_deg))}\
 under load at a depth of ${$(_p(Number(t.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} results drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Ka} ${Ya}"
    role="img"
    aria-label=${p}
    data-test="stroke-angle">
    ${vp(o,r,"°")} ${c?kp(c.x):h}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?x`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:h}
    ${s.map(u=>W_(o.at(Number(u.punch_depth_mm)),r.at(u.measured_deg),u))}
  </svg>`}function yp(e,t=[]){let n=Math.max(...e.map(s=>s.punch_depth_mm),...t);return Os(0,n,{from:Fe.left,to:Fe.
right,size:C()==="in"?Xe:1,most:6})}function vp(e,t,n){let{left:s,right:o,top:a,bottom:r}=Fe,l=n==="°",c=t.marks.
map(({at:u,text:m})=>x`<path class="faint" d="M${s} ${u}H${o}"/>
      <text x=${s-6} y=${u+6} text-anchor="end"
        font-size=${Wt}>${m}${l?"°":""}</text>`),d=e.marks.map(({at:u,text:m})=>x`<path class="faint" d="M${u} ${r}v6"/>
      <text x=${Math.min(u,Ka-m.length*Wt*.3)} y=${r+24} text-anchor="middle"
        font-size=${Wt}>${m}</text>`),p=x`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${Wt}>${n}</text>`;return x`
    ${c}
    ${d}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${Ya-8} text-anchor="end"
      font-size=${Wt}>punch depth, ${C()}</text>
    ${l?h:p}`}function B_(e,t){let n=-1/0;return R_(e).map(({limit_kn:s,names:o})=>{let a=t.at(s);return n=Math.
max(a-6,n+Wt+2),x`<path class="limit" d="M${Fe.left} ${a}H${Fe.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${Fe.left+6} y=${n}
        font-size=${Wt}>${o.join(", ")} ${$(he(s))}</text>`})}function R_(e){let t=new Map;for(let n of e)t.set(
Number(n.limit_kn),[...t.get(Number(n.limit_kn))??[],Ja(n)]);return[...t].map(([n,s])=>({limit_kn:n,names:s}))}
function I_(e){if(!e.length)return h;let t=e.length>1?`, ${e.length-1} more`:"";return x`<text class="limit-word" x=${Fe.
right} y="18" text-anchor="end" font-size=${Wt}
      data-test="limit-far">↑ ${yl(e[e.length-1])}${t}</text>`}function Ja({what:e,name:t}){return e==="pres\
s per metre"?"Bed and ram":e==="press"||!t?e[0].toUpperCase()+e.slice(1):`${e[0].toUpperCase()}${e.slice(1)} ${t}`}
function W_(e,t,{id:n,outlier:s}){return s?x`<path class="result-odd" d="M${e-6} ${t-6}l12 12M${e+6} ${t-6}l-12 12"
        data-test="result-point" data-id=${n} data-odd="true"/>`:x`<circle class="result-point" cx=${e} cy=${t} r="6" data-test="result-point" data-id=${n}/>`}
var Ka,Ya,Fe,Wt,P_,C_,_p,kp,yl,D_,xp=g(()=>{y();A();_l();Ka=400,Ya=320,Fe={left:58,right:Ka-14,top:20,bottom:Ya-
54},Wt=18,P_=3,C_=5;_p=e=>w(e,{digits:2});kp=e=>x`<path class="set-line" d="M${e} ${Fe.top}V${Fe.bottom}"/>
  <text class="set-word" x=${e-5} y=${Fe.bottom-6} text-anchor="end" font-size=${Wt}>set</text>`;yl=({what:e,name:t,
limit_kn:n})=>`${Ja({what:e,name:t})} ${$(he(n))}`;D_=(e,t)=>x`<circle class="peak" cx=${e} cy=${t} r="6" data-test="peak-mark"/>`});function Mp({stroke:e,error:t,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?F_(e,t):h}
  </details>`}function F_(e,t){return t?i`<p class="hint" data-test="stroke-missing">
      ${t instanceof O?t.message:"The stroke could not be fetched."}
    </p>`:e?e.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${bp(e)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${j_(e)}</p>
        ${H_(e)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${wp(e)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${Sp("curve")} under load</li>
          <li>${Sp("curve let-go")} released</li>
          ${e.trials.length?i`<li>${V_} trials, released</li>`:h}
        </ul>
        <p data-test="stroke-set">${U_(e)}</p>
        ${G_(e)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function j_({peak:e,work_j:t}){if(!e)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${$(
De(e))}.</b> The peak is expected at
    ${$(he(e.force_kn))}, ${Tp(e.punch_depth_mm)} deep, ${$(S(e.loaded_angle_deg))}
    under load.`;return t?i`${n} Work in the stroke ${ee(t,0)} J.`:n}function H_({limits:e}){let t=e.filter(s=>s.
limit_kn!==null),n=e.filter(s=>s.limit_kn===null);return i`${t.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${t.map(yl).join(", ")}. The shaded band is what the force may be.
        </p>`:h}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(Ja).join(", ")}. Read it off the plate.
        </p>`:h}`}function U_({set:e}){return e.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${$(S(e.set_angle_deg))} under load at a depth of ${Tp(e.punch_depth_mm)}\
.`}function G_({trials:e}){let t=e.filter(n=>n.punch_depth_mm===null).length;return t?i`<p class="hint">
        ${t===1?"One result has":`${t} results have`} no depth written down and can't be drawn.
      </p>`:h}var Tp,Sp,V_,Op=g(()=>{y();xp();F();A();ct();Tp=e=>$(w(e,{digits:2}));Sp=e=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${e} d="M2 8H38" />
  </svg>`,V_=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="result-point" cx="20" cy="8" r="6" />
</svg>`});function Dt(e,t,n,s,o=Lp(e,t,s)){let[a,r]=[e[`${t}_low`],e[`${t}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return yt(n,s(e[t]),{band:l?[s(a),s(r)]:null,note:o,origin:Va(e.sources?.[t]),test:t})}function Lp({
handbook:e,sources:t,...n},s,o){let a=e?.[s];if(typeof a!="number"||Va(t?.[s])==="handbook")return h;let r=o(a);
if(r.text===o(n[s]).text)return h;let[l,c]=[n[`${s}_low`],n[`${s}_high`]],d=a<l||a>c;return i`<span class=${d?
"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${$(r)}</span
  >`}function Ep(e,t,n){return i`${ip(e.checks)}
    <section class="bend-first" aria-label="What to set" data-test="first">
      ${q_(e,t)} ${z_(e)}
    </section>
    ${lp(e.checks)} ${Ts(e.checks)}
    <div class="columns bend-columns">
      <div>${X_(e)} ${Q_(e)}</div>
      <div>${ey(e,n)} ${Mp(n.stroke)} ${ty(e,n)}</div>
    </div>
    ${ny(e)} ${hn(e.checks)}`}function q_(e,{punches:t,dies:n}){let s=n.find(({code:a})=>a===e.die),o=t.find(({
code:a})=>a===e.punch);return!e.die&&!e.punch?i`<p class="panel" data-test="no-tools">
      No tools of the crib chosen: the figures are for a V of ${$(w(e.v_opening_mm))}.
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:e.die,tool:s},{kind:"punch",code:e.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"
              ><b>${r??"none"}</b> <span>${l?.name??""}</span></span
            >
            <span class="where">${l?on(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:h}
          </li>`)}
    </ul>
    ${Ms(e)}`}function z_(e){return i`<div class="figures">${e.first_hit?J_(e):Y_(e)}</div>
    <div class="figures three">
      ${So("Allow for",e,"force_kn")}
      ${yt("Flange from",w(e.min_flange_mm),{test:"min_flange_mm"})}
      ${Dt(e,"bend_deduction_mm","Deduction",qn)}
    </div>
    ${K_(e)} ${Ss(e.first_hit)}`}function K_({ratings:e}){let t=e?.find(({share_percent:s})=>s===null),n=(e??[]).
reduce((s,o)=>(o.share_percent??0)>(s?.share_percent??0)?o:s,null);return i`<p class="weakest" data-test="weakest">
    ${t?i`<b>${wl(t)}: rating unknown.</b>`:h}
    ${n?i`${wl(n)}: ${ee(n.share_percent??0,0)} % of the rating.`:h}
  </p>`}function X_(e){return ae("Force against the ratings",i`<div class="figures">
        ${So("Per length, allow for",e,"force_kn_per_m")}
        ${yt("Expected",he(e.force_kn),{note:Z_(e),origin:Va(e.sources?.force_kn),test:"force_expected"})}
      </div>
      ${e.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
              ${mp(e.ratings)}`:h}`)}function Z_(e){let t=e.force_kn_low,n=Lp(e,"force_kn",he);return i`${typeof t==
"number"?`at least ${$(he(t))}`:h}${n===h?h:i` <br />${n}`}`}function Q_(e){return ae("What comes out",i`<div class="figures">
      ${Dt(e,"inside_radius_mm","Inside radius",qn)}
      ${Dt(e,"springback_deg","Springback",S)}
      ${Dt(e,"bend_allowance_mm","Bend allowance",qn)}
      ${Dt(e,"k_factor","K-factor",Np)}
    </div>`)}function ey(e,{pose:t,show:n}){if(!e.drawing)return h;let s=$(S(e.set_angle_deg)),o=t==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return ae("Drawn to scale",i`<section class="bend-drawing" aria-label="The bend in its tools">
      ${X({name:"pose-shown",label:"Shown",value:t,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
      ${vt(e.drawing,{pose:t,close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,words:`The sheet i\
n die and punch, ${o}`})}
    </section>`,{test:"drawing"})}function ty(e,{use:t}){return e.options?.length?ae(`Dies of the crib: ${e.options.
length}`,i`<p class="hint">Tap one to use it. Each with the reason for its rank.</p>
      ${sp(e.options,t)}`,{test:"dies"}):h}function ny({opinions:e,sources:t}){return e?ae("Second opinions",i`<div class="opinions">
      ${e.force?.length?Ap("Force by published relations",e.force,[["force_kn","Force",he],["force_kn_per_m","\
Per length",Ee]]):h}
      ${e.allowance?.length?Ap("Bend allowance by published relations",e.allowance,[["bend_allowance_mm","Allo\
wance",qn],["k_factor","K",Np]]):h}
      ${t?i`<details>
              <summary>Where each figure comes from</summary>
              <dl class="sources">
                ${Object.entries(t).map(([n,s])=>i`<dt>${sy[n]??n}</dt>
                      <dd>${s}</dd>`)}
              </dl>
            </details>`:h}
    </div>`,{open:!1}):h}function Ap(e,t,n){return i`<div class="table">
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
              ${n.map(([o,,a])=>i`<td class="number">${$(a(s[o]))}</td>`)}
            </tr>`)}
      </tbody>
    </table>
  </div>`}var qn,Y_,J_,Np,sy,Pp=g(()=>{y();To();fe();A();ct();op();Wa();Hn();Mo();wt();Z();Vn();qa();$p();Op();
qn=e=>w(e,{digits:2});Y_=e=>i`
  ${Dt(e,"set_angle_deg","Set angle",S)}
  ${Dt(e,"punch_depth_mm","Depth",qn)}
`,J_=e=>i`
  ${Dt(e,"set_angle_deg","First hit: set angle",S,`then about ${$(S(e.expected_set_angle_deg))}`)}
  ${Dt(e,"punch_depth_mm","First hit: depth",qn,`then about ${$(qn(e.expected_punch_depth_mm))}`)}
`;Np=e=>({text:e==null?"–":ee(e,2),unit:""});sy={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var Bp={};ne(Bp,{show:()=>ry});async function ry(e){e.title("Check a bend"),e.render(Me("Looking into the crib\
…"));let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async P=>(await de(P,e.signal)).items)),o={
dies:n,punches:s},a=Ba(e.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=t[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:ws()},d=Rt(async(P,v)=>(await M("POST","/bend",
{body:P,signal:v})).body,({answer:P=null,error:v=null})=>{Object.assign(l,{answer:P,error:v,busy:!1}),Object.assign(
c,{stroke:null,error:null}),u(),f()},e.signal),p=Rt(async(P,v)=>(await M("POST","/stroke",{body:P,signal:v})).
body,({answer:P=null,error:v=null})=>{Object.assign(c,{stroke:P,error:v}),f()},e.signal);function u(){p.stop(),
c.open&&l.answer&&!c.stroke&&p.ask(Fn(a),{now:!0})}function m(P){history.replaceState(null,"",`/bend?${Ra(a)}`),
l.busy=ko(a).length===0,l.busy?d.ask(Fn(a),P):(d.stop(),Object.assign(l,{answer:null,error:null})),f()}function b(P,v){
Object.assign(a,P),m(v)}function f(){let P=l.error instanceof O?l.error.errors:{};e.render(i`<h1 class="bend-title">Check a bend</h1>
        <div
          class="desk"
          aria-busy=${l.busy?"true":"false"}
          data-test="bend"
          data-busy=${String(l.busy)}>
          <form
            class="panel desk-form"
            aria-label="The bend"
            @submit=${v=>v.preventDefault()}>
            ${iy(a,{metals:t,...o,openTools:r,answer:l.answer},P,b)}
          </form>
          <p class="unseen" role="status">${_()}</p>
          <div class="desk-answer" data-test="answer">${T(P)}</div>
        </div>`),l.busy||e.ready()}function _(){let{answer:P}=l;if(!P||l.busy)return"";let v=P.worst==="ok"?"":
`${P.worst}. `,N=P.set_angle_deg===null?"nothing to set":`set ${$(S(P.set_angle_deg))}`;return`${v}Die ${P.die??
"none"}, allow for ${$(De(P))}, ${N}.`}function T(P){let v=ko(a);return v.length?ke("One bend, all its figures",
i`Still to type: ${v.map(N=>ay[N]).join(", ")}.`):l.error?E(P):l.answer?Ep(l.answer,o,{pose:l.pose,show:N=>{l.
pose=N,f()},use:N=>b({die:a.die===N?"":N},{now:!0}),stroke:{...c,toggled:N=>{c.open!==N&&(c.open=N,u(),f())}}}):
Me("Working it out…")}function E(P){if(!(l.error instanceof O)||l.error.status>=500)return i`${en(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let v=cp(P,oy),N=Object.keys(P).length>v.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...N,...v].map(Q=>i`<p>${Q}</p>`)}
    </div>`}m({now:!0})}function iy(e,{metals:t,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(u,m,b={})=>L(
{name:u,label:m,value:e[u],wrong:W(r,u),change:f=>l({[u]:f}),...b}),d=(u,m,b)=>K({name:u,label:m,value:e[u],options:b,
wrong:W(r,u),change:f=>l({[u]:f},{now:!0})}),p=e.metal&&!t.some(({code:u})=>u===e.metal);return i`${d("metal",
"Metal",[...p?[[e.metal,`${e.metal} (not in the shop)`]]:[],...cy(t)])}
    <div class="fields three">
      ${c("thickness_mm","Thickness",{unit:C(),hint:a?ly(a,e.thickness_mm):"3, 1/8 in, 16 ga"})}
      ${c("bend_length_mm","Length",{unit:C()})}
      ${c("included_angle_deg","Angle",{unit:"°",keys:"decimal",hint:a?"":"90 is square"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${d("die","Die",[["","Best of the crib"],...Cp(e.die,n)])}
      ${d("punch","Punch",[["","Best of the crib"],...Cp(e.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:C()})}
    </details>
    ${e.die||e.punch||e.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:h}`}function ly({thickness_mm:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":$(w(
e,{digits:2})),t??""].filter(Boolean).join(", ")}function Cp(e,t){let n=t.map(s=>[s.code,`${s.code} · ${s.name}`]);
return e&&!t.some(s=>s.code===e)?[[e,`${e} (not in the crib)`],...n]:n}var oy,ay,cy,Rp=g(()=>{y();F();Ia();fe();
xo();A();ct();Pp();Z();wt();Be();ht();oy=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","\
punch","punch_radius_mm"],ay={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"\
angle"};cy=e=>e.map(({code:t,name:n})=>[t,n])});function Ip(e){let t,n=async()=>{document.visibilityState!=="visible"||e.aborted||(t=await navigator.wakeLock?.
request("screen").catch(()=>{}),e.aborted&&t?.release())};document.addEventListener("visibilitychange",n,{signal:e}),
e.addEventListener("abort",()=>t?.release()),n()}var vl,kl=g(()=>{y();vl=()=>"wakeLock"in navigator?h:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function zn(e){let{body:t}=await M("GET","/press-screens",{signal:e,timeout:3e3});return t.press_screens}
async function Fp(e){let{body:t}=await M("PUT",`/press-screens/${encodeURIComponent(e)}`,{body:{code:null,step:0}});
return t}async function jp(e){await M("DELETE",`/press-screens/${encodeURIComponent(e)}`)}function xl(){let e=Gp(
Wp);return typeof e?.name=="string"?{code:null,step:0,etag:null,...e}:null}function Gp(e){try{return JSON.parse(
localStorage.getItem(e)??"null")}catch{return null}}function Vp(e,t){try{t===null?localStorage.removeItem(e):localStorage.
setItem(e,JSON.stringify(t))}catch{}}var Wp,Dp,Kn,Ft,Sl,Hp,Up,pn=g(()=>{F();Wp="flangebook.bench.here",Dp="fla\
ngebook.bench.last";Kn=e=>/^\d/.test(e)?`press screen ${e}`:e,Ft=e=>/^\d/.test(e)?`Press screen ${e}`:e;Sl=e=>Vp(
Wp,e),Hp=()=>String(Gp(Dp)??""),Up=e=>Vp(Dp,e)});function Xa(e,t,n,s){let o=`/press-screens/${encodeURIComponent(e)}`,a={answers:null,gone:!1,waits:!1,late:!1,
refused:""},r=null,l=t,c=0,d=!1,p;function u(v){let N={...a,waits:r!==null,...v},Q=Object.keys(N).every(Le=>N[Le]===
a[Le]);a=N,!Q&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(p),d||s.aborted)return;d=!0;try{await(r&&
!b()?f():_()),T()}catch(N){s.aborted||E(N)}d=!1;let v=r!==null&&c===0;s.aborted||(p=setTimeout(m,v?0:Math.min(
hy,dy*1.5**c)))}function b(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,u({late:!0}),!0)}async function f(){
let v=r;if(!v)return;let N=B().name?{by:B().name}:{};try{l=(await M("PUT",o,{body:{...v.place,...N},etag:v.whatever?
null:l,signal:s,timeout:qp})).etag,r===v&&(r=null),n.sent?.(v.place,l??"",r!==null),u({refused:"",late:!1})}catch(Q){
if(!(Q instanceof O)||Q.status>=500)throw Q;r=null,l=null,u({refused:Q.status===412?"":Q.message}),await _()}}
async function _(){let v=r,{status:N,body:Q,etag:Le}=await M("GET",o,{seen:l,signal:s,timeout:qp});s.aborted||
r!==v||N===304||(l=Le,u({late:!1}),n.heard(Q,Le??""))}function T(){let v=a.answers===!1;c=0,u({answers:!0,gone:!1}),
Zt(!0),v&&U()}function E(v){c+=1,v instanceof O&&v.status===404?u({answers:!0,gone:!0}):v instanceof O&&v.status<
500?u({answers:!0,refused:v.message}):u({answers:!1}),v instanceof H?Zt(!1,v):v instanceof O||console.error(v)}
let P=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",P,{signal:s}),
addEventListener("online",P,{signal:s}),s.addEventListener("abort",()=>clearTimeout(p)),m(),{move(v,{whatever:N=!1}={}){
r={place:v,at:Date.now(),whatever:N},u({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var dy,hy,qp,Tl=g(()=>{
F();se();ye();dy=1e3,hy=4e3,qp=3e3});function zp(e,t){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=py.
has(o.key)?e.next:uy.has(o.key)?e.back:null;!a||fy(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<my)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:t}),addEventListener("click",o=>o.detail>0&&gy(),{signal:t})}
function fy({key:e,target:t,repeat:n}){let s=t;return s.matches("input, select, textarea")?!0:!n&&(e==="Enter"||
e===" ")&&s.matches("button, a, summary")}function gy(){let e=document.activeElement;e?.matches("button, summa\
ry, input[type=range]")&&e.blur()}var py,uy,my,Kp=g(()=>{py=new Set(["ArrowRight","PageDown"," ","Enter"]),uy=
new Set(["ArrowLeft","PageUp","Backspace"]),my=300});function Za(e,{pixels:t=bs(),tallest:n=t*.7,test:s="folded",mark:o=""}={}){let a=V*2.4,r=Bn(e.bounds,t-2*a,n-1.6*
a),[,l,c]=e.bounds,[d,p]=r([c,l]),u=m=>m.map(([b,f,_,T])=>`M${r([b,f])}L${r([_,T])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${wy(e)}
    width=${d+2*a}
    height=${p+1.6*a}
    viewBox="${-a} ${-V*.7} ${d+2*a} ${p+1.6*a}">
    ${e.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>x`<path class="marked-face" d="M${m.map(b=>r(b).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${u(e.lines.hidden)} />
    <path class="bend-edge" d=${u(e.lines.bend)} />
    <path class="edge" d=${u(e.lines.edge)} />
    ${e.dimensions.map(({name:m,from:b,to:f,mm:_})=>$y(r(b),r(f),m,j(_)))}
    ${e.faces.filter(({flat:m})=>m===1).map(({side:m,outline:b})=>by(m,b.map(r),m===o))}
  </svg>`}function $y(e,t,n,s){let o=n==="length"?[-V*.5,V*.95]:n==="width"?[V*.5,V*.95]:[V*.9,0],[a,r]=[e,t].
map(([p,u])=>[p+o[0],u+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],d=qe(s,V);return x`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-d/2} y=${c-V*.65} width=${d} height=${V*1.3}/>
    <text x=${l} y=${c} font-size=${V} text-anchor="middle" dominant-baseline="central">${s}</text>`}function by(e,t,n){
let s=t.reduce((r,l)=>r+l[0],0)/t.length,o=t.reduce((r,l)=>r+l[1],0)/t.length,a=qe(e,V);return x`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-V*.65}
      width=${a} height=${V*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${V}
      text-anchor="middle" dominant-baseline="central">${e}</text>`}function wy({length_mm:e,width_mm:t,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${Yn({length_mm:e,width_mm:t,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function Yn({length_mm:e,width_mm:t,height_mm:n}){
return $({text:[e,t,n].map(j).join(" × "),unit:w(0).unit})}function Yp(e,{pixels:t=bs(),tallest:n=t*.9,test:s="\
blank"}={}){let[o,a]=[j(e.length_mm),j(e.width_mm)],r=qe(a,V)+V*1.8,l=Bn([0,0,e.length_mm,e.width_mm],t-r-12,n-
V*3),[c,d]=l([e.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${vy(e)}
    width=${c+r+12}
    height=${d+V*3}
    viewBox="-6 -6 ${c+r+12} ${d+V*3}">
    <path class="sheet" d="M${e.outline.map(p=>l(p).join(" ")).join("L")}Z" />
    ${e.lines.map(p=>yy(p,l))}
    <path
      class="dimension"
      d="M0 ${d+V*1.3}H${c}M-4 ${d+V*1.3+4}l8 -8M${c-4} ${d+V*1.3+4}l8 -8" />
    ${_y(c/2,d+V*1.3,o)}
    <path
      class="dimension"
      d="M${c+V} 0V${d}M${c+V-4} 4l8 -8M${c+V-4} ${d+4}l8 -8" />
    <text x=${c+V*1.6} y=${d/2} font-size=${V} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function _y(e,t,n){let s=qe(n,V);return x`<rect class="ground" x=${e-s/2} y=${t-V*.7} width=${s} height=${V*
1.4}/>
    <text x=${e} y=${t} font-size=${V} text-anchor="middle" dominant-baseline="central">${n}</text>`}function yy({
bend:e,place:t,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,d]=[l([n,s]),l([o,a])],p=.5+(t%2?-1:1)*.12*
Math.ceil((t-1)/1),[u,m]=[c[0]+(d[0]-c[0])*p,c[1]+(d[1]-c[1])*p];return x`<path class="fold ${r}" d="M${c}L${d}"/>
    <circle class="badge" cx=${u} cy=${m} r=${V*.68}/>
    <text class="badge-number" x=${u} y=${m} font-size=${V*.95} text-anchor="middle"
      dominant-baseline="central">${e}</text>`}function vy(e){let t=e.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${j(e.length_mm)} by ${j(e.width_mm)}, inside of the box up. ${t.join("; ")}.`}var V,
je,As=g(()=>{y();A();Ma();ln();ot();V=18;je=e=>!!e?.folded});function Qa(e,t){return!je(e)||!t.side?h:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${Za(e.folded,{mark:t.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${ie(w(t.bend_length_mm))}</b> long.</li>
      ${Jp("Punch",t.segments_mm?.punch)} ${Jp("Die",t.segments_mm?.die)}
      ${t.clear_between_mm===null||t.clear_between_mm===void 0?h:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${ie(w(t.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${ky(t.sides_near??[])}
    </ul>
  </section>`}function Jp(e,t){if(!t?.length)return h;let n=t.reduce((o,a)=>o+a,0),s=t.length>1?`${t.map(j).join(
" + ")} = `:"";return i`<li class="pieces">${e}: <b>${s}${j(n)} ${w(0).unit}</b></li>`}function ky(e){if(!e.length)
return h;let[t]=[...e].sort((o,a)=>o.distance_mm-a.distance_mm),n=$(S(t.included_angle_deg)),s=ie(w(Math.abs(t.
distance_mm)));return i`<li data-test="sides-near">
    ${t.distance_mm<0?i`<b>The finished ${t.side} side runs ${s} into the ${t.tool}</b>, at ${n}.`:i`The finished ${t.
side} side stays <b>${s}</b> from the ${t.tool}, nearest at ${n}.`}
  </li>`}var Ml=g(()=>{y();As();ot();A()});function Qp(e){return e.number===1?"first":e.turn_quarter?e.turn_over?"quarter-over":"quarter":e.turn_over&&e.
turn_end?"both":e.turn_over?"over":e.turn_end?"end":"same"}function Ls(e){let t=Qp(e);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${tu}${nu[t]}</svg
    ><b>${eu[t]}.</b>`}function er(e,t){let n=Qp(e);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${tu}${nu[n]}</svg>
    <p>
      <b data-test="move">${eu[n]}.</b>
      <span data-test="face">${e.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${Ty(e,t)}
    </p>
  </div>`}function Eo({gauged_end:e,gauged_side:t},n){return t?`${t} side`:`${e} end${n?` (flat ${e==="left"?1:
n})`:""}`}function Ty(e,t){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=e;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=Eo(e,t);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var eu,tu,Ol,Xp,xy,Zp,Sy,nu,Es=g(()=>{y();eu={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},tu=x`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,Ol=x`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
Xp=x`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,xy=x`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
Zp=x`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,Sy=x`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
nu={first:[xy],same:[Sy],over:[Ol],end:[Xp],both:[Ol,Xp],quarter:[Zp],"quarter-over":[Ol,Zp]}});function No({frames:e},t){let n=e.findIndex(a=>a.share>=t);if(n<0)return e[e.length-1];if(n===0)return e[0];let[
s,o]=[e[n-1],e[n]];return Al(s,o,(t-s.share)/(o.share-s.share))}function Al(e,t,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(e.share,t.share),phase:t.phase,included_angle_deg:s(e.included_angle_deg,
t.included_angle_deg),punch_y_mm:s(e.punch_y_mm,t.punch_y_mm),left:o(e.left,t.left),right:o(e.right,t.right),inside_radius_mm:s(
e.inside_radius_mm,t.inside_radius_mm),half_arc_mm:s(e.half_arc_mm,t.half_arc_mm),gauge_x_mm:e.gauge_x_mm===null||
t.gauge_x_mm===null?null:s(e.gauge_x_mm,t.gauge_x_mm)}}function su({frames:e}){let t=e.find(o=>o.punch_y_mm<=0)??
e[0],n=Math.min(...e.map(o=>o.punch_y_mm)),s=[...e].reverse().find(o=>o.phase==="bend")??e[e.length-1];return{
before:t.share,after:n<0?s.share:e[e.length-1].share}}function ou(e,t){let n=-t.punch_travel_mm,s=t.phase==="b\
end",o=c=>s?c.included_angle_deg:t.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?t.included_angle_deg:t.phase===
"approach"?n:-n,r=My(e.frames,t.phase);return{...Oy(r,o,a),punch_y_mm:n}}function My(e,t){let n=t==="withdrawa\
l"?["release","withdrawal"]:[t],s=e.findIndex(a=>n.includes(a.phase)),o=e.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:e}function Oy(e,t,n){for(let a=1;a<e.length;a+=1){let[r,l]=[t(e[a-1]),t(e[a])];if(n<=r&&
n>=l&&r>l)return Al(e[a-1],e[a],(r-n)/(r-l))}if(n>t(e[0]))return e[0];let[s,o]=e.slice(-2);return o.phase==="b\
end"?Al(s,o,(t(s)-n)/(t(s)-t(o))):o}function Ay({thickness_mm:e,left:t,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=Ns([[-a,-e/2],[-a,e/2]],s),[d,p]=Ns([[a,-e/2],[a,e/2]],o),u=([b,f])=>`${b} ${-f}`,
m=b=>b.map(f=>`L${u(f)}`).join("");return`M${u(l)}A${r+e} ${r+e} 0 0 0 ${u(d)}${m(Ns(n,o))}L${u(p)}A${r} ${r} \
0 0 1 ${u(c)}${m(Ns(t,s))}Z`}function au(e,{phase:t,punch_y_mm:n}){let s=t==="putting in"||t==="approach",o=e.
frames.filter(u=>u.phase===(s?"putting in":"taking out"));if(!o.length||t==="bend"||t==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:u,right:m})=>[...Ns(e.left,u),
...Ns(e.right,m)]),[c,d]=[l.map(([u])=>u),l.map(([,u])=>u)];return{bounds:[Math.min(...c),Math.min(...d),Math.
max(...c),Math.max(...d,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function Ns(e,[t,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return e.map(([r,l])=>[t+o*r-a*l,n+a*r+o*l])}function tr(e,t,n){let s=-n.
punch_y_mm,o=t.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:Ay(t,n),tools:[
e.before.ram,e.before.holder,e.before.punch].map(Oe).filter(Boolean),down:s,gauge:Oe(e.before.gauge),back:a}}var Ll=g(
()=>{ln()});function nr({clearance:e}){let t=e?.hits?.[0]??e?.nearest??null;return t&&t.distance_mm<=pu?t:null}function Jn(e){
let{drawing:t,motion:n}=e;if(!t||!n?.frames?.length)return null;let s=nr(e),{before:o,after:a}=su(n),r=s?ou(n,
s):No(n,(o+a)/2),l=!!e.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:tr(t,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Collision":s?"Closest":"Half way"}}function Ps(e){let{clearance:t}=e;
if(!t)return"Clearance was not checked at this step.";let n=nr(e);if(!n)return`Nothing comes within ${ie(w(pu,
{digits:0}))} of the part.`;let s=ie(w(Math.abs(n.distance_mm))),o=typeof t.needed_mm=="number"?`, ${ie(w(t.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${ru(n.tool)}, ${iu(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${ru(n.tool)}, ${iu(n)}${t.hits?.length?o:""}.`}function iu({phase:e,included_angle_deg:t,punch_travel_mm:n}){
let s=$(w(Math.max(0,-n),{digits:0}));return e==="approach"?`as the punch comes down, ${s} above the sheet`:e===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${$(S(t))}`}
function El({motion:e},t){let n=$(S(t.included_angle_deg));if(t.phase==="bend")return e.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(t.phase==="release")return`Releasing, ${n}`;if(t.phase==="taking out")
return`Taking it out${lu(e,t)}`;if(t.phase==="putting in")return`Putting it in${lu(e,t)}`;let s=$(w(Math.max(0,
t.punch_y_mm),{digits:0}));return t.phase==="withdrawal"?`Punch rising, ${s} up`:t.punch_y_mm>0?`Punch coming \
down, ${s} up`:"First touch, sheet flat"}function lu({frames:e},{phase:t,right:n}){let s=t==="putting in"?e.find(
a=>a.phase==="approach"):[...e].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??e[0]).
right[2]));return o?`, tilted by ${o}°`:", no tilt"}function Ly({clearance:e}){let{way_in:t,way_out:n,rides_up:s,
clear:o}=e??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(t==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[du(t,n,"slide"),du(t,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${cu}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${t==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${cu}`}:null}function kt(e,{short:t=!1}={}){let n=Ly(e);return n?
t?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${hu(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${hu(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:h}var pu,ru,cu,du,hu,Ey,Ny,jt=g(()=>{y();Ll();A();pu=100;ru=e=>({gauge:"gauge finger",sheet:"part it\
self"})[e]??e;cu="Punch still, at its top. Fingers never between.";du=(e,t,n)=>[e===n&&"in",t===n&&"out"].filter(
Boolean).join(" and ");hu=e=>e==="swing"?Ey:Ny(e!=="slide"),Ey=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,Ny=e=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${e?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function Pl({segments_mm:e,segments_total_mm:t}){if(!e?.length)return"";let n=e.map(o=>j(o)).join(" + "),s=w(0).
unit;return e.length>1?`${n} = ${j(t??0)} ${s}`:`${n} ${s}`}function Cs(e,t=0,n=[]){return e?.length?i`<ul class="tools" data-test="tools">
    ${e.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${Nl(s)}</span>
          <span class="more"
            >${[Pl(s),mu(s.steps,t),Cl(s,n),Py(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function mu(e,t){return!e?.
length||e.length===t?"":`step${e.length>1?"s":""} ${e.join(", ")}`}function Cl({kind:e,code:t},n){let s=n.filter(
a=>e==="punch"&&a.punch===t),o=s.filter(a=>a.punch_turned);return o.length?`reversed${o.length<s.length?` for ${mu(
o.map(({number:a})=>a),0)}`:""}`:""}function Py(e){return e==="good"||!e?"":e==="unknown"?"condition unknown":
e}function sr(e){let t=e.length_mm_low===e.length_mm_high||e.length_mm_low===void 0;return i`<div class="figures blank">
      ${yt("Blank length",w(e.length_mm,{digits:2}),{test:"blank-length",band:t?null:[w(e.length_mm_low,{digits:2}),
w(e.length_mm_high,{digits:2})]})}
      ${yt("Blank width",w(e.width_mm,e.outline?{digits:2}:{}),{test:"blank-width",band:e.width_mm_low===void 0||
e.width_mm_low===e.width_mm_high?null:[w(e.width_mm_low,{digits:2}),w(e.width_mm_high,{digits:2})]})}
      ${yt("Mass",no(e.mass_kg),{test:"blank-mass"})}
    </div>
    ${e.rests_on?i`<p data-test="blank-rests-on">Blank by ${e.rests_on}.</p>`:h}
    ${e.lines?i`<p data-test="relief">${Bl(e)}</p>`:h}`}function Bl({relief:e,lines:t=[]}){let n=new Set(t.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!e?"":e.shape===
"none"?"Corners without relief.":`Corner reliefs ${e.shape}, ${$(w(e.size_mm,{digits:1}))} ${e.shape==="round"?
"across.":"a side."}`}function fu(e){let t=s=>w(s,{digits:2}).text,n=[["At",s=>t(s.at_mm)],["Angle",s=>$(S(s.included_angle_deg))],
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
              <th role="rowheader" scope="row">${s.bend} ${Cy(e,s)}${s.direction}</th>
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
  </div>`}function Cy({lines:e},{bend:t}){let n=e?.find(s=>s.bend===t)?.side;return n?`${n} `:""}function Rl(e,t=0){
let n=e.turn_over||e.turn_end||e.turn_quarter,s=e.gauged_against&&e.gauged_against!=="flat edge"?`, against th\
e ${e.gauged_against}`:"",o=e.gauged_end?`${By(Eo(e,t))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!e.turn_quarter)}
            data-over=${String(e.turn_over)}
            data-end=${String(e.turn_end)}
            >${Ls(e)}</span
          > `:h}
    ${kt(e,{short:!0})} ${o}${e.inside_face==="up"?"top":"bottom"} face
    up.${Ry(e)}
  </span>`}function Ry({hits:e}){if(!e)return h;let t=e.gauge_x_mm.map(n=>j(n)).join(", ");return i` <span data-test="hits"
    >${e.count} bumps, ${$(w(e.pitch_mm,{digits:2}))} apart, gauge X ${t}.</span
  >`}function xt(e){let t=e.operation&&e.operation!=="bend"?e.operation:"bend",n=e.side?`Bend ${e.bend}, ${e.side}`:
`Bend ${e.bend}`;return t==="bend"?n:`${n}, ${t}`}function Iy(e,t,n){let s=e[`${t}_low`],o=e[`${t}_high`],a=s==
null||s===o?h:i`<small class="band">${n(s).text} to ${$(n(o))}</small>`;return i`${$(n(e[t]))}${a}`}function uu(e,t,n){
return nt(e,e)?e.first_hit?Wy(e,t,n):e.limits?Iy(e,t,n):$(n(e[t])):$(n(null))}function Wy(e,t,n){let s=t==="se\
t_angle_deg"?`first hit, ${dl(e.first_hit)}; then about `:"then about ";return i`${$(n(e[t]))}<small class="band"
      >${s}${$(n(e[`expected_${t}`]))}</small
    >`}function or(e,{link:t}={}){let n=o=>w(o,{digits:2}),s=e.part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${e.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${t?i`<a href=${t(o.number)}>${o.number}. ${xt(o)}</a>`:i`${o.number}. ${xt(o)}`}
                <small>${$(S(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${$(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${$(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${uu(o,"set_angle_deg",S)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${uu(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${$(De(o))}<small class="band">expected ${$(dn(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch reversed</span>`:
h}
              </td>
              <td role="cell" data-head="Sheet" class="long">${Rl(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var Nl,By,un=g(()=>{y();fe();rn();A();ct();ot();Wa();Hn();Es();jt();Nl=on;By=e=>e[0].toUpperCase()+e.
slice(1)});function ar(e,t){return i`<header class="step-top">
    <a class="step-card" href="/c/${e.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${e.title||e.display_code}</span></a
    >
    ${Il(e,t)}
  </header>`}function Ye(e,t,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${e}${t.unit&&t.unit!=="°"?i` <span class="unit">${t.unit}</span>`:h}</span
    >
    <span class="value" data-test="${n}-value">${t.text}${t.unit==="°"?"°":h}</span>
  </div>`}var Il,mn=g(()=>{y();un();Il=(e,t)=>i`<h1>
    <span data-test="step-number">Step ${t.number} of ${e.plan.steps.length}</span>
    <small
      >${xt(t)}
      ${t.direction}${t.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch reversed</b>`:
h}</small
    >
  </h1>`});function gu(e,t,n,s,o){let a=Jn(e),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?No(e.motion,l):null,
d=a&&r==="during"?a.shown:null,p=$(w(e.gauge_x_mm)),u=(m,b,f,_)=>i`<button
      type="button"
      class="button"
      aria-pressed=${f?"true":"false"}
      data-test=${_}
      @click=${()=>{Object.assign(n,b,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${vt(e.drawing,{pose:r==="between"?"during":r,close:n.close,opening:e.v_opening_mm,gauge:p,
angle:t,moment:d??(c&&tr(e.drawing,e.motion,c)),near:a?.near??null,mark:r==="during",room:c&&au(e.motion,c),words:`${xt(
e)}, ${Fy(e,r)}. Gauge at ${p}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${jy(e,r,c)}
          </p>`:h}
    <div class="toggles">
      ${u("Before",{at:"before"},r==="before","before")}
      ${a?u(a.name,{at:"during"},r==="during","during"):h}
      ${u("After",{at:"after"},r==="after","after")}
      ${u(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?Hy(e,l,n,s,o):h}`}function Fy(e,t){return t==="before"?"the sheet on the die before the bend":t==="aft\
er"?"at the bottom of the stroke":t==="during"?Ps(e):"on its way"}function jy(e,t,n){return n?El(e,n):Ps(e)}function Hy(e,t,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&Uy(t>=1?0:t,n,s,o),s()};return i`<div class="motion">
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
      aria-valuetext=${El(e,No(e.motion,t))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function Uy(e,t,n,s){let o=performance.now(),a=r=>{!t.playing||s.aborted||(t.share=Math.min(1,e+Math.
max(0,r-o)/Dy),t.playing=t.share<1,n(),t.playing&&requestAnimationFrame(a))};Object.assign(t,{at:"between",share:e}),
requestAnimationFrame(a)}var Dy,Po,rr=g(()=>{y();Ll();To();A();un();jt();Dy=7e3,Po=()=>({at:"before",share:0,close:!1,
playing:!1})});function $u(e,{waits:t,correction:n}){if(!t&&!n?.to_check?.length){let o=ze({...n?.said,words:n?.words});return i`<p data-test="no-setting">${o||
"No new setting comes from this one."}</p>`}let s=ze({...n?.said,words:n?.what})||`${Gy(e)} Something else is \
wrong.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${k("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??vh).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function Gy(e){let t=Gi(e),n="That is further off than the card’s table of corrections goes.";return t?
`${n} Tools and press end at ${$(S(t.sharpest_deg))} under load.`:n}function bu(e,t){return e.die?i`<p class="why-not-set" data-test="why-not-set">
    ${k("stop")} <b>No angle and depth.</b>
    ${t?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:h}var Wl=g(()=>{y();rn();A();G()});function wu({stations:e=[]}){return e.length<2&&!e.some(t=>t.off_centre_level!=="ok")?h:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${e.map(t=>i`<li>
            <b>Station ${t.number}</b> ${t.punch}${t.turned?", reversed,":h} over ${t.die}:
            ${_u(t.centre_mm)}; step${t.steps.length>1?"s":""} ${t.steps.join(", ")}.
            ${t.off_centre_level==="ok"?h:i`${k(t.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function ir({stations:e=[]},t){let n=e.find(({steps:s})=>s.includes(t.number));return n&&e.length>1?
`Station ${n.number}, ${_u(n.centre_mm)}`:""}function _u(e){return Math.abs(e)<.5?"in the middle":`its middle ${$(
w(Math.abs(e),{digits:0}))} to the ${e>0?"right":"left"} of the press's middle`}var lr=g(()=>{y();A();G()});function cr(e,t){let n=t.checks.filter(l=>Se(l)!=="ok"),s=e.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=e.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+ve(l),{...l,sign:Se(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function dr(e,t,n,s,o){
if(!t.drawing)return i`<p class="state" data-test="no-drawing">
      ${t.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=lt(e,t),r={...t,gauge_x_mm:a.gauge_x_mm};return gu(r,Ha(t,a),n,s,o)}function hr(e,t){let n=lt(
e,t);return n.set_angle_deg===null&&t.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${Ye("Gauge X",w(n.gauge_x_mm),"gauge-x")}
      ${Ye("Gauge R",w(t.gauge_r_mm),"gauge-r")}
      ${Ye("Angle to set",S(n.set_angle_deg),"set-angle")}
      ${Ye("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${Ss(n.firstHit,t.drawing?"The drawing shows the finished bend.":"")}
    ${n.set_angle_deg===null?bu(t,n.fromTrial):h} ${Vy(t)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-result" data-test="from-result">
            <b>Angle and depth from a first piece.</b> The plan said ${$(S(t.set_angle_deg))} and
            ${$(w(t.punch_depth_mm,{digits:2}))}.
          </p>`:h}
    ${t.gauge_draw_back_mm?i`<p class="retract" data-test="retract">
            <b>Retract the gauge ${$(w(t.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would run into it.
          </p>`:h}
    ${qy(t)}`}function Vy(e){let t=Da(e);return t===h?h:i`<p class="press-force" data-test="press-force">Allow for ${t}</p>`}
function qy({hits:e}){return e?i`<div class="hits" data-test="hits">
    <b>${e.count} bumps</b>, ${$(S(e.angle_each_deg))} each. Move the gauge
    ${$(w(e.pitch_mm,{digits:2}))} each time:
    ${e.gauge_x_mm.map(t=>w(t).text).join(" · ")}
  </div>`:h}function yu(e,t){if(!t.die)return h;let n=ir(e,t);return i`<dl class="step-tools" data-test="step-tools">
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
        <dd><b>${$(S(t.included_angle_deg))}</b> ${t.direction}</dd>
      </div>
    </dl>
    ${Ms(t)}`}var pr=g(()=>{y();Ie();A();ct();G();Hn();rr();Vn();Wl();mn();lr()});function vu(e,t,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=cr(e,t),c=l.filter(m=>Se(m)!=="note"),d=l.length>
zy,p=d?c:l,u=t.number===e.plan.steps.length;return i`<article
    class="step press-screen-step"
    data-test="press-screen-step"
    data-code=${e.code}
    data-step=${t.number}
    data-revision=${e.revision}>
    <header class="step-top">
      ${ur(n,o)}
      <p class="press-screen-card" data-test="press-screen-card">${e.title||e.display_code}</p>
      ${Il(e,t)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${We(r)}</div>`:h}
    <div class="step-body">
      <div class="step-way">${er(t,e.part.flats_mm.length)}${kt(t)}</div>
      <section class="step-set" aria-label="What to set">${hr(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${d?"many":""}" aria-label="What to watch">
        ${p.length?We(p):h}${Qa(e.plan,t)}
      </section>
      <section class="step-with" aria-label="Tools">${Cs(Ky(e,t),0)}</section>
    </div>
    ${xu({back:t.number>1,label:u?"Done":"Next",more:u?"":`step ${t.number+1}`},o)}
  </article>`}function ku(e,{name:t,lines:n,acts:s}){let o=e.plan.steps.length;return i`<article
    class="step press-screen-step"
    data-test="press-screen-done"
    data-code=${e.code}
    data-step=${o+1}>
    <header class="step-top">
      ${ur(t,s)}
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
    ${xu({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function xu({back:e,label:t,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!e} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${t}${n?i` <small>${n}</small>`:h}
    </button>
  </nav>`}var zy,Ky,ur,Dl=g(()=>{y();pn();Ml();G();Es();un();mn();jt();pr();zy=3;Ky=(e,t)=>e.plan.tools.filter(
n=>n.steps.includes(t.number)).map(n=>({...n,steps:[]}));ur=(e,t)=>i`<button
    type="button"
    class="button press-screen-name"
    data-test="press-screen-name"
    aria-label="${Ft(e)}, this display. Choose another"
    @click=${t.choose}>
    ${Ft(e)}
  </button>`});function Su({names:e,silent:t,typed:n,wrong:s,here:o},a){return i`<div class="press-screen-choose" data-test="press-screen-choose">
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
                  ${Ft(r)}
                </button>`)}
          </div>`:h}
    ${e?i`<form
            class="press-screen-new"
            novalidate
            @submit=${r=>{r.preventDefault(),a.make()}}>
            ${L({name:"press-screen",label:e.length?"Or a new one":"Give it a name",value:n,wrong:s?[s]:[],change:a.
type,hint:"Like 1, or Big press. It is kept on this display."})}
            <button class="button" data-test="make-press-screen">Add it</button>
          </form>`:h}
    ${o?i`<button type="button" class="button" data-test="stay" @click=${()=>a.take(o)}>
            Stay at ${Kn(o)}
          </button>`:h}
    ${vl()}
  </div>`}function Au({answers:e,refused:t},n,s,o){return i`${e===!1?i`<p class="press-screen-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again automatically.`}
        </p>`:h}
  ${t?i`<p class="press-screen-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${t}
        </p>`:h}
  ${s?i`<p class="press-screen-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:h}`}var Tu,Mu,Ou,Fl,Lu=g(()=>{y();F();kl();pn();pe();Dl();Z();Tu=e=>Fl(e,"press-screen-idle",Ft(
e.name),i`<p>Open a card on a phone and choose this press screen.</p>
      ${vl()}`),Mu=(e,t,n)=>Fl(n,"press-screen-no-card",I(e),t instanceof O?i`<p>${t.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes when the shop is back.
        </p>`),Ou=(e,t,n)=>Fl(n,"press-screen-no-step",`There is no step ${t}`,i`<p>
      ${e.title||e.display_code} has ${e.plan.steps.length} now. Choose the step on the phone.
    </p>`),Fl=({name:e,lines:t,acts:n},s,o,a)=>i`<article class="step press-screen-step" data-test=${s}>
    <header class="step-top">${ur(e,n)}</header>
    ${t}
    <div class="press-screen-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var Pu={};ne(Pu,{show:()=>Jy});function Jy(e){Ip(e.signal);let t=xl();t?Nu(e,t):Eu(e,"")}function Eu(e,t){e.title(
"Press screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:t},o;e.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&e.render(Su(s,c)),r=p=>{n.abort();let u=xl();Nu(e,u?.name===p?u:{name:p,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let p=s.typed.trim();if(s.names?.includes(p))return r(p);try{r((await Fp(p||" ")).name)}catch(u){
s.wrong=u instanceof O?u.errors.name?.[0]??u.message:String(u.message),a()}},type:p=>Object.assign(s,{typed:p})},
d=async()=>{try{Object.assign(s,{names:(await zn(n.signal)).map(({name:p})=>p),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),e.ready(),o=setTimeout(d,Yy))};a(),d()}function Nu(e,t){let{name:n}=t,s=new AbortController,
{signal:o}=s;e.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:t.code,
step:t.step},l=null,c=null,d=0,p=Po(),u=Xa(n,t.etag,{keepMs:1/0,heard:(v,N)=>{t={...t,etag:N},f({code:v.code,step:v.
step},!1)},sent:(v,N,Q)=>m({etag:N,unsent:Q}),changed:v=>v.gone?b(""):E()},o);function m(v){t={...t,...r,...v},
Sl(t)}function b(v){s.abort(),v||Sl(null),Eu(e,v)}function f(v,N){let Q=v.code!==r.code||v.step!==r.step;v.code!==
r.code&&(l=null),Q&&(p=Po()),r=v,m({unsent:N}),N&&u.move(v),Q||!l&&v.code?_():E()}async function _(){a.abort(),
a=new AbortController;let v=a.signal;if(d=0,c=null,E(),!!r.code)try{await $t(r.code,N=>{v.aborted||(l=N,d=0,E())},
v)}catch(N){if(v.aborted||o.aborted)return;c=N,E()}}let T={next:()=>{if(!l)return;let v=l.plan.steps.length;f(
{code:l.code,step:r.step>v?1:r.step+1},!0)},back:()=>l&&r.step>1&&f({code:l.code,step:r.step-1},!0),clear:()=>f(
{code:null,step:0},!0),choose:()=>b(n),newer:()=>_()};function E(){if(o.aborted)return;let v=Au(u.standing(),!!l,
d,T.newer);e.title(l?`${l.title||l.code}, ${n}`:n),e.render(P({name:n,lines:v,acts:T})),(l||c||!r.code)&&e.ready()}
function P(v){if(!r.code)return Tu(v);if(!l)return c?Mu(r.code,c,v):Me(`Opening ${I(r.code)}…`);let N=l.plan.
steps,Q=N[r.step-1];return Q?vu(l,Q,v,dr(l,Q,p,E,a.signal)):r.step===N.length+1?ku(l,v):Ou(l,r.step,v)}zp(T,o),
_e(E,o),document.addEventListener("sync",async v=>{if(!l)return c&&v.detail.reached?_():void 0;let N=await it(
l.code).catch(()=>{});!N||N.code!==l?.code||N.revision===l.revision||d===N.revision||(d=N.revision,E())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),t.unsent&&u.move(r),_()}var Yy,Cu=g(()=>{F();kl();pn();Tl();Ie();
pe();Kp();se();Ce();Lu();Dl();rr();Be();pr();Yy=3e3});function Y(e,t){let n=document.getElementById("notices"),s=()=>Jt(i``,n);Jt(i`<div class="notice" data-test="notice">
      <span>${e}</span>
      <button type="button" @click=${()=>{s(),t?.act()}}>${t?.label??"Close"}</button>
    </div>`,n),clearTimeout(Bu),t||(Bu=setTimeout(s,8e3))}var Bu,at=g(()=>{y()});function Hl(e){try{let t=JSON.parse(localStorage.getItem(jl(e))??"null");return t&&Array.isArray(t.form?.flats)&&
Array.isArray(t.form?.bends)?t:null}catch{return null}}function mr(e,t){try{return localStorage.setItem(jl(e),
JSON.stringify({...t,kept_at:new Date().toISOString()})),!0}catch{return!1}}function Ul(e){try{localStorage.removeItem(
jl(e))}catch{}}var jl,Ru=g(()=>{jl=e=>`flangebook.part.${e||"new"}`});var fr,St,gr,$r,Co=g(()=>{Bt();Gn();A();fr=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
St=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),gr=e=>({angle:String(e.included_angle_deg),direction:e.
direction,radius:q(e.inside_radius_mm),kind:e.kind??"bend",gap:e.kind==="open_hem"?q(e.hem_gap_mm):"",...Oo(e)}),
$r=(e,t)=>({included_angle_deg:e.kind==="bend"?_t(e.angle):0,direction:e.direction,kind:e.kind,...e.radius.trim()&&
e.kind==="bend"?{inside_radius_mm:te(e.radius,t)}:{},...e.kind==="open_hem"?{hem_gap_mm:te(e.gap,t)}:{},...Ga(
e)})});function br(e="tray"){let t=()=>e==="lips-in"?{flats:["",""],bends:[St(),St()]}:e==="lips-out"?{flats:["",""],
bends:[St(),{...St(),direction:"down"}]}:{flats:[""],bends:[St()]};return{length:"",width:"",there:e==="channe\
l"?["left","right"]:[...Xn],alike:!0,sides:{left:t(),right:t(),front:t(),back:t()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function Wu(e,t){let n=br(t);for(let s of Xn){let o=e.sides[e.alike?
e.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...e,there:n.there,sides:n.
sides}}function Du({there:e,sides:t,alike:n}){let s=(n?e.slice(0,1):e).map(r=>t[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return e.length===2&&e.includes("left")&&e.includes("right")&&s.every(o)?"channel":e.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function Fu(e){let t=Xn.
filter(o=>e.sides[o]),n=t.map(o=>JSON.stringify(e.sides[o])),s=br().sides;for(let o of Xn){let a=e.sides[o]??e.
sides[t[0]];s[o]={flats:a.flats_mm.map(q),bends:a.bends.map(gr)}}return{length:q(e.length_mm),width:q(e.width_mm),
there:t,alike:n.every(o=>o===n[0]),sides:s,relief:e.relief,reliefSize:q(e.relief_mm),corner:e.corner,gap:q(e.gap_mm),
firstPair:e.first_pair??"left-right"}}function Gu(e,t){let n=s=>e.there.includes(s)?Hu(e,s).flats.map((o,a)=>`${s}\
 ${Is(a)}`):[];return Gl.filter(s=>s.some(o=>e.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...t(s,
o),...n(o)])}function Vu(e,t){let n=o=>te(o,t),s=e.there.map(o=>{let a=Hu(e,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>$r(r,t))}]});return{length_mm:n(e.length),width_mm:n(e.width),sides:Object.fromEntries(
s),relief:e.relief,corner:e.corner,...e.firstPair==="front-back"?{first_pair:e.firstPair}:{},...e.reliefSize.trim()&&
e.relief!=="none"?{relief_mm:n(e.reliefSize)}:{},...e.gap.trim()&&e.corner==="closed"?{gap_mm:n(e.gap)}:{}}}function Bs(e){
return[["box.length_mm","length of the base",e.length],["box.width_mm","width of the base",e.width],...Vl(e).flatMap(
t=>Xy(e,t))]}function Xy({sides:e,alike:t},n){let s=t?"":`${n} `;return e[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=e[n].bends[a],d=`${s}${Is(a)}`;return[[Rs(n,a),d,o],...r==="bend"?[[wr(n,a),`angle of the ${d}`,
l]]:[],...r==="open_hem"?[[`${fn(n,a)}.hem_gap_mm`,`gap of the ${d}`,c]]:[]]})}function qu(e,t){if(!e.alike)return t;
let n=e.there[0];return Object.fromEntries(Object.entries(t).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function zu(e){let[,t,n,s,o,a]=e.split(".");if(t!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[t]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${Is(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function Ku(e,t,n,s){
let o=e.sides[t];return _r(e,t,{...o,flats:o.flats.with(n,s)})}function Ws(e,t,n,s){let o=e.sides[t];return _r(
e,t,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function Yu(e,t){let{flats:n,bends:s}=e.sides[t],o=s.map(
a=>({...a,kind:"bend"}));return _r(e,t,{flats:[...n,""],bends:[...o,St()]})}function Ju(e,t){let{flats:n,bends:s}=e.
sides[t];return _r(e,t,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function Xu(e,t){let n=Xn.filter(o=>o===t!==
e.there.includes(o));if(!n.length)return e;let s=e.sides[e.there[0]];return{...e,there:n,sides:e.alike?{...e.sides,
[n[0]]:s}:e.sides}}function Zu(e,t){let n=e.sides[e.there[0]];return{...e,alike:t,sides:t?e.sides:{left:n,right:n,
front:n,back:n}}}var Gl,Xn,Iu,ju,Hu,Zn,Uu,Vl,Rs,fn,wr,Is,_r,Qn=g(()=>{Co();A();Gl=[["left","right"],["front","\
back"]],Xn=Gl.flat(),Iu=6;ju=({there:e})=>Gl.every(t=>t.some(n=>e.includes(n))),Hu=(e,t)=>e.sides[e.alike?e.there[0]:
t],Zn=e=>Gu(e,()=>[]),Uu=e=>Gu(e,(t,n)=>[`base, ${t} to ${n}`]);Vl=({there:e,alike:t})=>t?e.slice(0,1):e;Rs=(e,t)=>`\
box.sides.${e}.flats_mm.${t}`,fn=(e,t)=>`box.sides.${e}.bends.${t}`,wr=(e,t)=>`${fn(e,t)}.included_angle_deg`,
Is=e=>e===0?"wall":e===1?"lip":`flat ${e+1}`;_r=(e,t,n)=>({...e,sides:{...e.sides,[t]:n}})});function zl(e){if(!e)return Bo();let{first:t,last:n,margin_mm:s}=e;return{first:t?String(t):"",last:n?String(n):
"",no_turn_over:!!e.no_turn_over,no_turn_end:!!e.no_turn_end,one_set_up:!!e.one_set_up,critical_flats:[...e.critical_flats??
[]],margin:s===void 0||s===ql?"":q(s)}}function Kl(e,t){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=e??Bo(),d={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:te(
c,t)}:{}};return Object.keys(d).length?{wishes:d}:{}}function Yl(e,t){if(!e)return{};let n=t?-1:1,s=a=>!a||Number(
a)===t?"":Number(a)>t?String(Number(a)+n):a,o=e.critical_flats.filter(a=>!t||a!==t+1).map(a=>a>t?a+n:a);return{
wishes:{...e,first:s(e.first),last:s(e.last),critical_flats:o}}}function Ds(e){let{first:t,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=e??Bo();return[t&&`bend ${t} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var ql,Bo,Qu,Ro=g(()=>{A();ql=2,Bo=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});Qu=e=>({...e,first:"",
last:"",critical_flats:[]})});function Xl(e){return{unit:C(),title:"",note:"",metal:e,thickness:"",length:"",flats:["",""],bends:[St()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function yr({aside:e,...t},n){let s=em({...t,box:n?t.box??e??br():
null});return n?s:{...s,...t.box?{aside:t.box}:{}}}function tm(e,t){return e.box&&t&&String(Zn(e.box))===String(
Zn(t))&&e.box.firstPair===t.firstPair?{...e,box:t}:em({...e,box:t})}function Fs(e,t){return e.box?{...Xl(e.metal),
title:e.title??"",note:t,thickness:q(e.thickness_mm),dimension:e.dimension??"din6935",order:e.order??null,wishes:zl(
e.wishes),tools:Oo(e.tools),box:Fu(e.box)}:{unit:C(),title:e.title??"",note:t,metal:e.metal,thickness:q(e.thickness_mm),
length:q(e.bend_length_mm),flats:e.flats_mm.map(q),bends:e.bends.map(gr),dimension:e.dimension??"din6935",grain:e.
grain??"",order:e.order??null,wishes:zl(e.wishes),tools:Oo(e.tools),holes:(e.holes??[]).map(n=>({flat:String(n.
flat),position:q(n.position_mm),diameter:q(n.diameter_mm)}))}}function js(e){let t=n=>te(n,e.unit);return e.box?
{title:e.title.trim(),metal:e.metal,thickness_mm:t(e.thickness),dimension:e.dimension,box:Vu(e.box,e.unit),...e.
order?{order:e.order}:{},...Kl(e.wishes,e.unit),...pl(e.tools)}:{title:e.title.trim(),metal:e.metal,thickness_mm:t(
e.thickness),bend_length_mm:t(e.length),flats_mm:e.flats.map(t),bends:e.bends.map(n=>$r(n,e.unit)),dimension:e.
dimension,...e.grain?{grain:e.grain}:{},...e.order?{order:e.order}:{},...Kl(e.wishes,e.unit),...pl(e.tools),...e.
holes.length?{holes:e.holes.map(n=>({flat:_t(n.flat),position_mm:t(n.position),diameter_mm:t(n.diameter)}))}:{}}}
function vr(e){let t=[["metal","metal",e.metal],["thickness_mm","thickness",e.thickness]];return(e.box?[...t,...Bs(
e.box)]:[...t,["bend_length_mm","length",e.length],...e.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...e.
bends.flatMap((s,o)=>Zy(s,o)),...e.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function Zy({kind:e,angle:t,gap:n},s){return e==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,t]]:e==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function nm(e,t,n){return{...e,flats:e.flats.with(t,n)}}function es(e,t,n){return{...e,bends:e.
bends.with(t,{...e.bends[t],...n})}}function Ql(e,t){let n=e.bends.at(t==="left"?0:-1),s={...St(),direction:n?.
direction??"up"},o=t==="left"?e.bends:e.bends.map((r,l)=>l>0&&l===e.bends.length-1?{...r,kind:"bend"}:r);if(t===
"right")return{...e,bends:[...o,s],flats:[...e.flats,""],order:null};let a=e.holes.map(r=>({...r,flat:om(r.flat,
1,1)}));return{...e,bends:[s,...o],flats:["",...e.flats],order:null,holes:a,...Yl(e.wishes,0)}}function sm(e,t){
let n=t+2,s=e.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:om(o.flat,n,-1)}));return{...e,bends:e.
bends.toSpliced(t,1),flats:e.flats.toSpliced(t+1,1),order:null,holes:s,...Yl(e.wishes,t+1)}}function om(e,t,n){
let s=Number(e);return Number.isInteger(s)&&s>=t?String(s+n):e}function kr(e){let t=e.split(/[^\d]+/).filter(Boolean).
map(Number);return t.length?t:null}function am(e,t){return t===0||t===e.bends.length-1}var Jl,em,Zl,gn=g(()=>{
Co();Qn();Bt();Gn();A();Ro();Jl=40;em=e=>({...e,order:null,...e.wishes?{wishes:Qu(e.wishes)}:{}});Zl=e=>JSON.stringify(
{...js(e),title:""})});async function ec(e,t){try{let{body:n}=await M("POST","/cards",{body:{...im(e),code:t},timeout:rm});return{saved:await dm(
n)}}catch(n){if(n instanceof O&&n.status===409)return{taken:t};throw cm(n)}}async function lm(e,t){let n={...im(
e),reason:e.reason??""},s=Qy(t,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await M("PUT",`/cards/${t.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:rm});return await _d().then(c=>ro({...s,number:c},l)).catch(
()=>{}),{saved:await dm(r)}}catch(o){if(o instanceof O&&o.status===412)return{stale:await bt(t.code)};throw cm(
o)}}function Qy(e,t){let n=JSON.stringify(t);e.saving?.wanted!==n&&(e.saving={id:Ge(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=e;return{id:e.saving.id,number:0,kind:"edit",code:s,body:t,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function cm(e){return e instanceof O&&(e.errors=Object.fromEntries(Object.entries(e.
errors).map(([t,n])=>[t.replace(/^part\./,""),n]))),e}async function dm(e){return ut(e).catch(()=>e)}var rm,im,
hm=g(()=>{F();Ie();Pe();gn();se();Ce();rm=6e4,im=e=>({part:js(e),note:e.note,...B().name?{by:B().name}:{}})});function mm(e,{pixels:t=bs(),tallest:n=t*.45,test:s="blank"}={}){let o=j(e.width_mm),a=t-qe(o,J)-J*2,r=a/e.length_mm,
l=e.width_mm*r>n,c=l?n:Math.max(e.width_mm*r,3),d=pm(e.bend_lines.map(f=>[f.at_mm*r,J*1.8+qe(tc(f),J)]),a),p=pm(
e.bend_lines.map(f=>[f.at_mm*r,qe(j(f.at_mm),J)]),a),u=um(d)*Io+J*.4,m=um(p)*Io+J*.4,b=u+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${ev(e)}
      viewBox="-8 -4 ${t+8} ${b+m+Io*1.4}">
      ${l?nv(a,u,b):x`<rect class="sheet" x="0" y=${u} width=${a} height=${c}/>`}
      ${e.bend_lines.map((f,_)=>tv(f,f.at_mm*r,d[_],p[_],u,b))}
      ${sv(a,b+m+J*.7,j(e.length_mm))}
      ${ov(a+J,u,b,o)}
    </svg>
    ${l?i`<p class="hint">Width ${$({text:o,unit:""})} is drawn short at the break.</p>`:h}`}function tc(e){let t=e.
included_angle_deg?ie(S(e.included_angle_deg)):"hem";return`${e.direction} ${t}`}function ev(e){let t=e.bend_lines.
map(n=>`bend ${n.bend} ${tc(n)} at ${j(n.at_mm)}`);return`Blank ${j(e.length_mm)} by ${j(e.width_mm)}. ${t.join(
"; ")}.`}function pm(e,t){let n=[];return e.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),Math.max(t-o/2,o/2)),
r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function tv(e,t,n,s,o,a){
let r=o-J*.4-Io*(n.row+.5),l=a+J*.4+Io*(s.row+.5),c=n.at-n.width/2;return x`<path class="fold ${e.direction}" d="M${t} ${o}V${a}"/>
    <path class="leader" d="M${t} ${o}V${r+J*.8}M${t} ${a}V${l-J*.8}"/>
    <rect class="ground" x=${c} y=${r-J*.75} width=${n.width} height=${J*1.5}/>
    <circle class="badge" cx=${c+J*.75} cy=${r} r=${J*.68}/>
    <text class="badge-number" x=${c+J*.75} y=${r} font-size=${J*.95} text-anchor="middle"
      dominant-baseline="central">${e.bend}</text>
    <text x=${c+J*1.7} y=${r} font-size=${J} dominant-baseline="central">${tc(e)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-J*.7} width=${s.width}
      height=${J*1.4}/>
    <text x=${s.at} y=${l} font-size=${J} text-anchor="middle"
      dominant-baseline="central">${j(e.at_mm)}</text>`}function nv(e,t,n){let s=(t+n)/2,o=`L${e*.52} ${s+3}L${e*
.54} ${s-14}L${e*.58} ${s+8}L${e*.6} ${s-9}`,a=`L${e*.6} ${s-1}L${e*.58} ${s+16}L${e*.54} ${s-6}L${e*.52} ${s+
11}`;return x`<path class="sheet" d="M0 ${t}V${s+3}${o}L${e} ${s-9}V${t}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${e*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${e} ${s-1}V${n}Z"/>`}function sv(e,t,n){let s=qe(n,J);return x`<path class="dimension"
      d="M0 ${t}H${e}M-4 ${t+4}L4 ${t-4}M${e-4} ${t+4}L${e+4} ${t-4}"/>
    <rect class="ground" x=${e/2-s/2} y=${t-J*.7} width=${s} height=${J*1.4}/>
    <text x=${e/2} y=${t} font-size=${J} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function ov(e,t,n,s){let o=a=>`M${e-4} ${a+4}L${e+4} ${a-4}`;return x`<path class="dimension" d="M${e} ${t}V${n}${o(
t)}${o(n)}"/>
    <text x=${e+J*.6} y=${(t+n)/2} font-size=${J}
      dominant-baseline="central">${s}</text>`}var J,Io,um,fm=g(()=>{y();A();Ma();ot();J=18,Io=J*1.5;um=e=>Math.
max(0,...e.map(t=>t.row+1))});function rt(e,{mark:t=0,...n}={}){if(!je(e))return Oh(e,{mark:t,...n});let s=e.blank.lines.find(o=>o.bend===t)?.
side??"";return Za(e.folded,{...n,mark:s})}function ts(e,t={}){return e.outline?Yp(e,t):mm(e,t)}var $n=g(()=>{
As();fm();ot()});function Hs({how:e,differences:t},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
    <h2>${k("caution")} Somebody else saved meanwhile</h2>
    <p>
      ${e==="others changed"?`Not this ${n}, but others in the list. Save again to keep both.`:h}
      ${e==="taken out"?`This ${n} was taken out of the list. Save to put it back as you typed it.`:h}
      ${e==="this changed"?`This ${n} too. What you typed is still in the boxes.`:h}
    </p>
    ${t.length?i`<div class="table">
            <table>
              <thead>
                <tr>
                  <th scope="col">Where</th>
                  <th scope="col">Saved now</th>
                  <th scope="col">You typed</th>
                </tr>
              </thead>
              <tbody>
                ${t.map(({label:a,theirs:r,mine:l})=>i`<tr>
                      <td>${a}</td>
                      <td>${r||"empty"}</td>
                      <td>${l||"empty"}</td>
                    </tr>`)}
              </tbody>
            </table>
          </div>`:h}
    <div class="buttons">
      <button type="button" class="button next" data-test="save-mine" @click=${s}>
        Save what I typed
      </button>
      ${e==="taken out"?h:i`<button type="button" class="button" data-test="take-theirs" @click=${o}>
              Take what is saved
            </button>`}
    </div>
  </section>`}function xr(e,t,n){return n.filter(({name:s})=>(e[s]??"")!==(t[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:t[s]??"",mine:e[s]??""}))}var Us=g(()=>{y();G()});function $m(e,t,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=Fs(e.part,e.note),r=[...new Set([...nc(t),...nc(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=xr(gm(t),gm(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
    <h2>${k("caution")} Somebody else saved this card meanwhile</h2>
    <p>
      ${e.updated_by?`${e.updated_by} saved`:"Somebody saved"} revision ${e.revision}. What
      you typed is still in the boxes, and both can be kept.
    </p>
    <div class="columns">
      <div class="table">
        <table>
          <thead>
            <tr>
              <th scope="col">Where</th>
              <th scope="col">Saved now</th>
              <th scope="col">You typed</th>
            </tr>
          </thead>
          <tbody>
            ${l.length?l.map(({label:c,theirs:d,mine:p})=>i`<tr>
                        <td>${c}</td>
                        <td>${d||"empty"}</td>
                        <td>${p||"empty"}</td>
                      </tr>`):i`<tr>
                    <td colspan="3">
                      The part is the same. Something else of the card changed: its results, its settings or
                      whether it is archived.
                    </td>
                  </tr>`}
          </tbody>
        </table>
      </div>
      <figure class="theirs">
        <figcaption>As saved now</figcaption>
        ${rt(e.plan,{pixels:330,tallest:260,test:"theirs-section"})}
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
  </section>`}function nc(e){return[{label:"Title",value:e.title},{label:"Note",value:e.note},{label:"Metal",value:e.
metal},{label:"Thickness",value:e.thickness},{label:"Length",value:e.length},{label:"Measured",value:e.dimension},
{label:"Grain",value:e.grain},{label:"Order",value:e.order?.join(", ")??""},{label:"Limits on the order",value:Ds(
e.wishes)},{label:"Tools",value:It(e.tools)},...e.box?[...Bs(e.box).map(([,t,n])=>({label:`${t[0].toUpperCase()}${t.
slice(1)}`,value:n})),{label:"Corners",value:`${e.box.corner}, relief ${e.box.relief} ${e.box.reliefSize} ${e.
box.gap}`.trim()},{label:"Sides",value:e.box.there.join(", ")}]:[],...(e.box?[]:e.flats).map((t,n)=>({label:`F\
lat ${n+1}`,value:t})),...(e.box?[]:e.bends).map((t,n)=>({label:`Bend ${n+1}`,value:[t.kind==="bend"?`${t.angle}\
°`:t.kind.replace("_"," "),t.direction,t.radius&&`radius ${t.radius}`,t.gap&&`gap ${t.gap}`,It(t)].filter(Boolean).
join(", ")})),...e.holes.map((t,n)=>({label:`Hole ${n+1}`,value:`flat ${t.flat}, at ${t.position}, size ${t.diameter}`}))]}
var gm,bm=g(()=>{y();$n();Qn();gn();Gn();Ro();G();Us();gm=e=>Object.fromEntries(nc(e).map(({label:t,value:n})=>[
t,n]))});function _m(e,t,n){let{box:s,unit:o}=e,a=qu(s,t),r=(l,c)=>n(tm(e,l),c);return i`${hv(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${pv(s,r)}
      <div class="fields">
        ${L({next:!0,name:"box.length_mm",label:"Length, left to right",value:s.length,wrong:W(a,"box.length_m\
m"),change:l=>r({...s,length:l})})}
        ${L({next:!0,name:"box.width_mm",label:"Width, front to back",value:s.width,wrong:W(a,"box.width_mm"),
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
        @change=${l=>r(Zu(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${Vl(s).map(l=>uv(s,l,a,r))}
    ${ae(i`Corners <span class="fold-now">${cv(s)}</span>`,i`${$v(e,a,r)}${dv(s,r)}`,{test:"corners-fold"})}`}
function cv({corner:e,relief:t,reliefSize:n}){let s=t==="none"?"no relief":`${t} relief`;return`${e}, ${s}${t!==
"none"&&n?` ${n}`:""}`}function hv(e,t){let n=Du(e);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${av.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>t(Wu(e,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function pv(e,t){let n=s=>{let o=e.there.includes(s),a=o&&e.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>t(Xu(e,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${Xn.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function uv(e,t,n,s){let{flats:o,bends:a}=e.sides[t],r=e.alike?"Each side":`${t[0].toUpperCase()}${t.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${t}">
    <legend>${r}</legend>
    ${gv(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${mv(e,t,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${t}"
        ?disabled=${o.length>=Iu}
        @click=${()=>s(Yu(e,t),{focus:Rs(t,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${t}"
              @click=${()=>s(Ju(e,t),{focus:Rs(t,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:h}
    </div>
  </fieldset>`}function mv(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],[l,c]=[r[n],ym(Is(n))],d=`${fn(t,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${L({next:!0,name:Rs(t,n),label:c,value:a[n],wrong:[...W(s,Rs(t,n)),...W(s,fn(t,n))],change:p=>o(Ku(e,t,
n,p))})}
      ${l.kind==="bend"?L({next:!0,name:wr(t,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:W(s,
wr(t,n)),change:p=>o(Ws(e,t,n,{angle:p}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?L({next:!0,name:d,label:"Clear gap inside",value:l.gap,wrong:W(s,d),change:p=>o(Ws(e,
t,n,{gap:p}))}):h}
    ${X({name:`${fn(t,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:lv,change:p=>o(Ws(e,t,n,{direction:p==="down"?"down":"up"}))})}
    ${fv(e,t,n,s,o)}`}function fv(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],l=`${fn(t,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?h:i`<details class="bend-more">
    <summary>
      <span class="unseen">${ym(Is(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":h}
    </summary>
    ${r[n].kind==="bend"?L({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:W(s,l),change:d=>o(Ws(e,t,n,{radius:d}))}):h}
    ${c?K({name:`${fn(t,n)}.kind`,label:"Kind",value:r[n].kind,options:fr,change:d=>o(Ws(e,t,n,{kind:d}))}):h}
  </details>`}function gv(e){let t=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of e.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[d,p]=n[n.length-1];n.push(
[d+t[o]*Math.cos(s),p-t[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>x`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function $v({box:e,unit:t},n,s){return i`<div class="corner-grid">
      ${wv(e)}
      <div>
        ${X({name:"box.corner",label:"Walls at the corner",value:e.corner,options:iv,change:o=>s({...e,corner:o===
"open"?"open":"closed"})})}
        ${X({name:"box.relief",label:"Relief",value:e.relief,options:rv,change:o=>s({...e,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${e.relief==="none"?h:L({next:!0,name:"box.relief_mm",label:e.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:t,hint:"Empty: by radius and thickness.",value:e.reliefSize,wrong:W(n,"box.relief_mm"),change:o=>s(
{...e,reliefSize:o})})}
      ${e.corner==="open"?h:L({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:t,hint:"Empty: by \
thickness.",value:e.gap,wrong:W(n,"box.gap_mm"),change:o=>s({...e,gap:o})})}
    </div>`}function wv({corner:e,relief:t}){let[n,s]=e==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${bv[t]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var av,rv,iv,wm,lv,dv,ym,bv,vm=g(()=>{y();Co();Qn();gn();Z();wt();ht();av=[["tray","Tray","M10 14V44\
H86V14"],["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channe\
l","Two sides","M10 14V44H86V14M18 36H30M66 36H78"]],rv=[["round","Round"],["square","Square"],["none","None"]],
iv=[["closed","Closed"],["open","Open"]],wm=[["left-right","Left and right"],["front-back","Front and back"]],
lv=[["up","↑ in"],["down","↓ out"]];dv=(e,t)=>ju(e)?X({name:"box.first_pair",label:"Bent first; the others\
 go between them",value:e.firstPair??wm[0][0],options:wm,change:n=>t({...e,firstPair:n==="front-back"?n:"left-\
right"})}):h;ym=e=>e[0].toUpperCase()+e.slice(1);bv={none:"L50 40L30 40",square:"L58 20L58 48L30 48",round:"L5\
0 31A9 9 0 1 1 41 40L30 40"}});function xm(e,t){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${km[e.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(km).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${xe(e.dimension===n)}
              @change=${()=>t({...e,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?x`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:_v(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function _v(e){return e==="din6935"?x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function Sm(e,t,n){let s=(o,a)=>n({...e,holes:e.holes.with(o,{...e.holes[o],...a})});return i`<details class="holes">
    <summary>Holes near a bend${e.holes.length?`: ${e.holes.length}`:""}</summary>
    <p class="hint">Only those that could be pulled out of shape.</p>
    ${e.holes.map((o,a)=>{let r=`holes.${a}`;return i`<fieldset class="hole">
        <legend>Hole ${a+1}</legend>
        <div class="fields">
          ${L({next:!0,name:`${r}.flat`,label:"On flat",keys:"numeric",value:o.flat,wrong:W(t,`${r}.flat`),change:l=>s(
a,{flat:l})})}
          ${L({next:!0,name:`${r}.position_mm`,label:"Middle from its left end",unit:e.unit,value:o.position,wrong:W(
t,`${r}.position_mm`),change:l=>s(a,{position:l})})}
          ${L({next:!0,name:`${r}.diameter_mm`,label:"Size across",unit:e.unit,value:o.diameter,wrong:W(t,`${r}\
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
  </details>`}function Tm(e,t,n,s){let o=e.box?Zn(e.box):[],a=e.order??t??e.bends.map((l,c)=>c+1),r=(l,c)=>s({
...e,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${e.order?`${e.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${L({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:e.order?.
join(", ")??"",wrong:W(n,"order"),on:"change",change:l=>s({...e,order:kr(l)})})}
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
  </details>`}function Mm(e,t,n){return K({name:"grain",label:"Rolling direction against the bend lines",value:e.
grain,wrong:W(t,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...e,grain:s})})}var km,Om=g(()=>{y();tn();Qn();gn();Z();ht();km={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:x`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:x`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:x`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var Am,Lm=g(()=>{y();ji();Hi();Am=ba(class extends gs{constructor(){super(...arguments),this.key=h}render(e,t){
return this.key=e,t}update(e,[t,n]){return t!==this.key&&(wa(e),this.key=t),n}})});function Em(e,t,n){let s=e.bends.length>=Jl;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(Ql(e,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${e.flats.map((o,a)=>i`${vv(e,a,t,n)}${a<e.bends.length?kv(e,a,t,n):h}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(Ql(e,"right"),{focus:`flats_mm.${e.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${Jl} bends.</p>`:h}`}function vv(e,t,n,s){let o=`flats_mm.${t}`;
return i`<li class="flat-row">
    ${L({next:!0,name:o,label:`Flat ${t+1}`,value:e.flats[t],wrong:W(n,o),change:a=>s(nm(e,t,a))})}
  </li>`}function kv(e,t,n,s){let o=e.bends[t],a=`bends.${t}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([d])=>d===a||d===`${a}.kind`||d===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${t+1}>
    <span class="badge-mark" aria-hidden="true">${t+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:L({next:!0,name:l,label:`\
Bend ${t+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:W(n,l),change:d=>s(es(e,t,{angle:d}))})}
      ${X({name:`${a}.direction`,label:`Bend ${t+1} turns`,value:o.direction,options:yv,change:d=>s(es(e,t,{direction:d===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(d=>i`<p class="wrong" data-test="wrong-${a}">${d}</p>`)}
    ${o.kind==="open_hem"?xv(e,t,n,s):h}
    ${Am(t,Sv(e,t,n,s))}
  </li>`}function xv(e,t,n,s){let o=`bends.${t}.hem_gap_mm`;return L({next:!0,name:o,label:"Clear gap inside",
unit:e.unit,value:e.bends[t].gap,wrong:W(n,o),change:a=>s(es(e,t,{gap:a}))})}function Sv(e,t,n,s){let o=e.bends[t],
a=`bends.${t}.inside_radius_mm`,r=[o.radius&&`Radius ${o.radius}`,It(o)].filter(Boolean).join(", ");return i`${r?
i`<p class="hint bend-wanted">${r}</p>`:h}
    <details class="bend-more">
      <summary>
        <span class="unseen">Bend ${t+1}: </span
        ><span class="bend-more-words">Radius, tools, kind, remove</span>
      </summary>
      ${o.kind==="bend"?L({next:!0,name:a,label:"Inside radius wanted",unit:e.unit,hint:"Empty: what the tools\
 give.",value:o.radius,wrong:W(n,a),change:l=>s(es(e,t,{radius:l}))}):h}
      ${$l(`bends.${t}`,o,n,l=>s(es(e,t,l)))}
      ${am(e,t)||o.kind!=="bend"?K({name:`bends.${t}.kind`,label:"Kind",value:o.kind,options:fr,change:l=>s(es(
e,t,{kind:l}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
      <button
        type="button"
        class="button wide"
        data-test="remove-bend-${t+1}"
        ?disabled=${e.bends.length<2}
        @click=${()=>s(sm(e,t),{focus:`flats_mm.${t}`,undo:`Bend ${t+1} and flat ${t+2} are out.`})}>
        Remove bend ${t+1} and flat ${t+2}
      </button>
    </details>`}var yv,Nm=g(()=>{y();Lm();Co();gn();Z();Gn();Vn();ht();yv=[["up","↑ up"],["down","↓ down"]]});function Cm(e,t,n){let s=e.wishes??Bo(),o=c=>n({...e,wishes:{...s,...c}}),a=e.box?Zn(e.box).map((c,d)=>[String(
d+1),`Bend ${d+1}: ${c}`]):e.bends.map((c,d)=>[String(d+1),`Bend ${d+1}`]),r=e.box?Uu(e.box).map(c=>c[0].toUpperCase()+
c.slice(1)):e.flats.map((c,d)=>`Flat ${d+1}`),l=Ds(s);return i`<details class="order-limits" data-test="order-limits">
    <summary>
      <span>Limits on the order: <b>${l||"none"}</b></span>
    </summary>
    <div class="fields">
      ${K({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:W(t,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${K({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:W(t,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${Sr("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${Sr("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${Sr("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,d)=>Sr(`wishes.flat-${d+1}`,c,s.critical_flats.includes(d+1),p=>o({critical_flats:Tv(s.critical_flats,
d+1,p)})))}
      </div>
      ${W(t,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${L({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:e.unit,hint:"Emp\
ty: the usual.",placeholder:q(ql),value:s.margin,wrong:W(t,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function Sr(e,t,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${e}
      data-test=${e}
      .checked=${xe(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${t}</span
    ></label
  >`}var sc,Pm,Tv,Bm=g(()=>{y();tn();Qn();A();Ro();Z();ht();sc=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],Pm={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};Tv=(e,t,n)=>[...e.filter(s=>s!==t),...n?[t]:[]].sort((s,o)=>s-o)});function Im(e,{metals:t,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...t.some(({code:p})=>p===e.metal)?
[]:[[e.metal,e.metal?`${e.metal} (not in the shop)`:"Choose"]],...t.map(({code:p,name:u})=>[p,u])],{box:d}=e;return i`${X(
{name:"shape",label:"What it is",value:d?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:p=>r(yr(e,p==="box"))})}
    ${L({next:!0,name:"title",label:"Name of the part",value:e.title,wrong:W(a,"title"),change:p=>r({...e,title:p})})}
    ${K({name:"metal",label:"Metal",value:e.metal,options:c,wrong:W(a,"metal"),change:p=>r({...e,metal:p})})}
    <div class="fields">
      ${L({next:!0,name:"thickness_mm",label:"Thickness",unit:e.unit,placeholder:"3 or 16 ga",hint:s?Av(s,e.thickness):
"",value:e.thickness,wrong:W(a,"thickness_mm"),change:p=>r({...e,thickness:p})})}
      ${d?h:L({next:!0,name:"bend_length_mm",label:"Bend length",unit:e.unit,value:e.length,wrong:W(a,"bend_le\
ngth_mm"),change:p=>r({...e,length:p})})}
    </div>
    ${d?i`${_m({...e,box:d},a,r)} `:i`<h2>Section, left to right <small>${e.unit}, °</small></h2>
            ${Em(e,a,r)}`}
    ${ae(i`More, if it matters <span class="fold-now">${Mv(e)}</span>`,Ov(e,{crib:n,plan:s,errors:a,change:r}),
{test:"more-fold"})}
    ${o?L({next:!0,name:"reason",label:"Why this change, for the history",value:e.reason??"",wrong:W(a,"reason"),
change:p=>r({...e,reason:p})}):h}`}function Ov(e,{crib:t,plan:n,errors:s,change:o}){let a=n?.order?.sequence;return i`${xm(
e,o)}
    ${e.box?h:i`${Mm(e,s,o)} ${Sm(e,s,o)}`}
    ${e.box&&!n&&!e.order?h:Tm(e,a,s,o)}
    ${Cm(e,s,o)} ${pp(e,t,s,o)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${xe(e.note)}
        @input=${r=>o({...e,note:r.target.value})}></textarea>
    </div>`}function Av({part:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":$(w(e.thickness_mm,{digits:2})),
t??""].filter(Boolean).join(", ")}function oc(e){return e.box?["title","metal","thickness_mm",...Bs(e.box).map(
([t])=>t),"box.relief_mm","box.gap_mm","order",...sc,...gl,"note","reason"]:["title","metal","thickness_mm","b\
end_length_mm",...e.flats.map((t,n)=>`flats_mm.${n}`),...e.bends.flatMap((t,n)=>[`bends.${n}.included_angle_de\
g`,`bends.${n}.inside_radius_mm`,...t.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:[],`bends.${n}.die`,`bends.${n}\
.punch`]),...e.holes.flatMap((t,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,`holes.${n}.diameter_mm`]),"gr\
ain","order",...sc,...gl,"note","reason"]}function Tr(e){if(e.startsWith("box"))return zu(e);let[t,n,s]=e.split(
".");return t==="tools"?n==="die"?"Die":"Punch":t==="wishes"?Pm[n]??"Limits on the order":n===void 0?Rm[t]??t:
`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[t]??t} ${Number(n)+1}${s?`, ${Rm[s]??s}`:""}`}function Wm(e){let t=e.
target;if(e.key!=="Enter"||!(t instanceof HTMLInputElement))return;e.preventDefault();let n=[...t.form.querySelectorAll(
"input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(t)+1).find(o=>o.checkVisibility());s instanceof
HTMLElement&&s.focus()}var Mv,Rm,ac=g(()=>{y();tn();A();gn();Qn();vm();Z();wt();Om();Vn();Nm();Ro();Gn();Bm();
ht();Mv=e=>[e.dimension!=="din6935"&&"how flats are measured",e.grain&&"rolling direction",e.holes.length>0&&"\
holes",e.order&&"order",Ds(e.wishes)&&"limits",It(e.tools)&&"tools",e.note&&"note"].filter(Boolean).join(", ");
Rm={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend length",grain:"Rolling direction",
order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"gap",flat:"flat",position_mm:"\
place",diameter_mm:"size",die:"die",punch:"punch"}});function Dm({dimensions:e=[]}){let t=e.filter(({error_mm:a})=>a!==null);if(!t.length)return h;let{basis:n,basis_said:s}=t[0],
o=ze({...s,words:n});return i`<h3>Expected tolerance of each flange</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${t.map(Ev)}
    </ul>
    ${o?i`<p class="hint" data-test="sizes-basis">${o}</p>`:h}`}function Ev({flat:e,flat_name:t=`flat ${e}`,wanted_mm:n,
error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${e}>
    <b>${t[0].toUpperCase()}${t.slice(1)}</b> ${$(w(n))}
    <b>± ${$(Lv(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:h}.
  </li>`}var Lv,Fm=g(()=>{y();A();G();Lv=e=>C()==="in"?{text:ee(e/Xe,3),unit:"in"}:w(e,{digits:2})});function Mr(e,t){if(!ns(e))return h;let{order:n}=e,[s,o]=Nv(e),a=!!e.part?.order?.length,r=a?t.free():h,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${k(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${jm(n.sequence)}
          </p>`:h}
    ${Pv(n.blocked??[])} ${Cv(n.remedies??[])} ${Bv(n.wishes)}
    ${r===h?h:i`<div class="buttons">${r}</div>`}
    ${Rv(n.alternatives,t)}
    ${ae("Where the tools stand, and flange tolerances",i`${wu(e)} ${Dm(e)}`,{test:"stations-fold"})}
  </div>`}function Nv({order:e,checks:t}){let n=s=>t.some(o=>o.code===s);return e.proven?["ok","Clear on paper"]:
n("no-order")?["stop","No order"]:t.some(({level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the\
 way"]:n("order-not-found")?["caution","None found"]:n("clearance-not-checked")?["caution","Not checked"]:["ca\
ution","Not fully checked"]}function jm(e){return i`<span class="run" role="img" aria-label="bends ${e.join(",\
 ")}"
    >${e.map(t=>i`<span class="badge-mark" aria-hidden="true">${t}</span>`)}</span
  >`}function Pv(e){return e.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${e.map(({bend:t,words:n})=>i`<li><b>Bend ${t}</b> ${n}</li>`)}
    </ul>`:h}function Cv(e){return e.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${e.map(t=>i`<li>${ve(t)}</li>`)}
    </ul>`:h}function Bv(e){return e.length?i`<h3>What each limit costs</h3>
    <ul class="order-list" data-test="limit-costs">
      ${e.map(t=>i`<li data-limit=${t.wish}>${ze(t)}</li>`)}
    </ul>`:h}function Rv(e,{use:t}){return e.length?ae("Other orders that can be made",i`<ul class="order-others" data-test="other-orders">
      ${e.map(({sequence:n,words:s})=>i`<li>${jm(n)} <span class="compared">${s}</span> ${t(n)}</li>`)}
    </ul>`,{test:"others-fold"}):h}var ns,Hm,Um,Or=g(()=>{y();G();wt();le();Fm();lr();ns=({order:e})=>Array.isArray(
e?.wishes)&&Array.isArray(e?.alternatives);Hm=e=>({use:t=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${t.join(", ")}"
      @click=${()=>e(t)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>e(
null)}>
      Let it choose
    </button>`}),Um=e=>({use:t=>R("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${t.join(", ")}"
        href="/part?from=${e}&order=${t.join("-")}"
        >Use this order</a
      >`),free:()=>R("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${e}&order=free"
        >Let it choose</a
      >`)})});function Gm(e,{save:t,order:n}){return i`${Ua(e.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>${sr(e.blank)}${ws()?ts(e.blank,{pixels:560}):h}</div>
        <div>
          ${ae("Bend lines and drawings",Iv(e.blank,t),{test:"bend-lines-fold"})}
        </div>
      </div>
    </section>
    ${ns(e)?i`<section>
            <h2>Order</h2>
            ${Mr(e,n)}
          </section>`:h}
    <section>
      <h2>Fetch</h2>
      ${Cs(e.tools,e.steps.length,e.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${e.order&&!ns(e)?i`<p data-test="order-words">${e.order.words}</p>`:h}
      <div class="step-drawings">${e.steps.map(s=>Wv(s,e.part.thickness_mm))}</div>
      ${ae("All settings in a table",or(e),{test:"steps-fold"})}
    </section>
    ${Ts(e.checks)} ${hn(e.checks)}`}function Iv(e,t){return i`${ws()?h:ts(e,{pixels:innerWidth-24})} ${fu(e)}
    ${Dv(e.bend_lines)}
    <div class="buttons">
      <button type="button" class="button" data-test="blank-svg" @click=${()=>t("svg")}>
        Drawing as SVG
      </button>
      <button type="button" class="button" data-test="blank-dxf" @click=${()=>t("dxf")}>
        Drawing as DXF
      </button>
    </div>`}function Wv(e,t){let n=nt(e,e)?e.set_angle_deg:null,s=[$(S(n)),`X ${w(e.gauge_x_mm,{digits:1}).text}`],
o=i`${e.number}. ${xt(e)} <span class="step-set">${s.join(", ")}</span>`;return ae(o,Fv(e,t),{test:"step-fold"})}
function Dv(e){let t=e.filter(n=>n.opinions?.length);return t.length===0?h:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${t.length===1?`bend ${t[0].bend}`:`${t.length} bends`}
    </summary>
    ${t.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${$(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function Fv(e,t){if(!e.drawing)return h;let n=w(e.gauge_x_mm,{digits:2}),s=Ha(e,{set_angle_deg:e.
set_angle_deg,firstHit:e.first_hit??null}),o=$(S(s)),a={close:!1,opening:e.v_opening_mm??8*t,gauge:n.text,angle:s,
near:Jn(e)?.near??null};return i`<figure class="step-drawing" data-step=${e.number}>
    <figcaption>
      ${Rl(e)} ${Ms(e)}
      <small data-test="origins">${Lo(e.origin)}</small>
      ${e.motion?i`<span class="near-words ${e.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${Ps(e)}</span
            >`:h}
    </figcaption>
    <div class="poses">
      ${vt(e.drawing,{...a,pose:"before",words:`Step ${e.number} before the bend: the sheet on the die, gauge \
at ${$(n)}.`})}
      ${jv(e,a)}
      ${vt(e.drawing,{...a,pose:"after",words:`Step ${e.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function jv(e,t){let n=Jn(e);return n?vt(e.drawing,{...t,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${e.number}. ${Ps(e)}`}):h}var Vm=g(()=>{y();$n();To();rn();A();Hn();Mo();wt();Or();Vn();qa();jt();un()});function qm({plan:e,error:t,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${e&&o?"stale":""} ${a===h?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${e?.section?rt(e,r?{pixels:innerWidth-56,tallest:200}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
h}
    ${a===h?i`<p class="picture-words" role="status" data-test="picture-words">
            ${Uv(e,t,n,s)}
          </p>`:r?a:h}
  </div>`}function Hv(e){let[t]=Object.entries(e.errors);return t?ml(Tr(t[0]),t[1]):e.message}function Uv(e,t,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,l])=>l).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(t instanceof H)return"The shop's server does not answer. What you type stays on this device.";if(t instanceof
O)return`Not right yet. ${Hv(t)}`;if(t)return String(t);if(!e)return n?"Working it out…":"";let o=e.blank.outline?
`Blank ${w(e.blank.length_mm,{digits:2}).text} × ${$(w(e.blank.width_mm,{digits:2}))}`:`Blank ${$(w(e.blank.length_mm,
{digits:2}))}`,[a]=e.checks.filter(({level:r})=>r==="stop");return i`<span>${[o,...Vv(e)].join(" · ")}</span>
    ${e.worst==="ok"?h:k(e.worst)}
    ${a?i`<span class="picture-stop">${ve(a)}</span>`:h}`}function Vv({steps:e,order:t}){if(!e.length)return[];
let n=["punch","die"].map(a=>[...new Set(e.map(r=>r[a]).filter(Boolean))]),s=e.reduce((a,r)=>(r.force_kn_high??
0)>(a.force_kn_high??0)?r:a),o=t?.sequence??[];return[n.every(a=>a.length)?n.map(a=>a.join(", ")).join(" on "):
"",s.force_kn_high?$(De(s)):"",o.length>1&&o.length<=Gv?`order ${o.join(" ")}`:""].filter(Boolean)}var Gv,zm=g(
()=>{y();$n();F();A();G();ct();ac();ht();Gv=8});function zv({seconds:e,deadline_s:t,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
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
        <dd data-test="looking-best">${s?i`<b>${Yv(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function Yv(e){return Kv.filter(([n])=>e[n]).map(([n,s,o])=>`${e[n]} ${e[n]===1?s:o}`).join(", ")||
"no turning"}function Ym({plan:e,progress:t,stopped:n},{cancel:s,again:o,back:a}){return t?zv(t,s):n?Jv({again:o,
back:e?a:null}):h}function Jv({again:e,back:t}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
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
  </section>`}var qv,Km,Kv,Xv,Zv,Jm,Xm=g(()=>{y();qv=.6,Km=({seconds:e})=>e>=qv;Kv=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];Xv="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",Zv="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",Jm=e=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${e?Zv:Xv}
  </div>`});var Qm={};ne(Qm,{show:()=>Qv});async function Qv(e){let t=fs(e.query.get("from")??"").slice(0,7),n=t?"cards.re\
vise":"cards.create";e.title(t?`Edit ${I(t)}`:"New part"),e.render(Me(t?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([de("metals",e.signal),de("dies",e.signal),
de("punches",e.signal)]),r=t?"":fs(e.query.get("copy")??"").slice(0,7),l=r?Hl(""):null,c=r?await tk(r,e.signal):
await ek(t,s,e.signal);!t&&e.query.get("shape")==="box"&&(c.form=yr(c.form,!0));let d={...c,plan:null,planned:null,
progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,kept:!0},p=Rt(async(D,ue)=>(await nd(
"/plan",js(D),{signal:ue,tell:u})).plan,({question:D,answer:ue,error:pt=null})=>{ue&&Object.assign(d,{plan:ue,
planned:D}),Object.assign(d,{error:pt,busy:!1,progress:null,summary:d.summary&&pt!==null}),Mt()},e.signal,350);
function u(D){Km(D)&&(d.progress=D,Mt())}function m(D=!1){let ue=Zl(d.form);if(!D&&ue===d.key&&!d.error)return Mt();
Object.assign(d,{key:ue,busy:vr(d.form).length===0,progress:null,stopped:!1}),d.busy?p.ask(d.form,{now:D}):(p.
stop(),d.error=null),Mt()}let b={cancel(){p.stop(),Object.assign(d,{busy:!1,progress:null,stopped:!0,error:null}),
Mt()},again:()=>m(!0),back(){if(!d.planned)return;let D=d.form;Object.assign(d,{form:d.planned,key:Zl(d.planned),
stopped:!1}),d.kept=mr(t,{form:d.form,base:d.base,newCode:d.newCode}),Mt(),Y("The part of this plan is in the \
boxes again.",{label:"Put mine back",act:()=>f(D)})}};function f(D,{focus:ue,undo:pt}={}){let Ot=d.form;d.form=
D,d.kept=mr(t,{form:D,base:d.base,newCode:d.newCode}),m(),ue&&requestAnimationFrame(()=>Ao(ue)),pt&&Y(pt,{label:"\
Put it back",act:()=>f(Ot)})}function _(D){f({...d.form,order:D},{undo:D?`Order ${D.join(", ")} is yours now.`:
"The planner chooses the order."})}function T(D){history.replaceState(history.state,"",t?`/part?from=${t}`:"/p\
art"),_(kr(D))}async function E(D){let[ue]=vr(d.form);if(ue){d.summary=!0,Mt(),Ao(ue[0]);return}Object.assign(
d,{saving:!0,clash:null,taken:""}),Mt();try{let Je=await D();if("saved"in Je)return P(Je.saved);"stale"in Je?d.
clash=Je.stale:d.taken=Je.taken}catch(Je){d.error=Je,d.summary=!0}d.saving=!1,Mt();let pt=d.error instanceof O?
d.error.errors:{},Ot=oc(d.form).find(Je=>Object.keys(pt).some(Rc=>Rc===Je||Rc.startsWith(`${Je}.`)));Ot&&Ao(Ot)}
function P(D){Ul(t);let ue=D.revision===d.base?.revision;Y(ue?"Nothing was changed, so nothing was saved.":`Ca\
rd ${I(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),$e(`/c/${D.code}`)}let v=()=>ge(n)&&E(()=>d.
base?lm(d.form,d.base):ec(d.form,d.newCode)),N=()=>(d.newCode=fa(),E(()=>ec(d.form,d.newCode)));function Q(){Ul(
t);let D=d.form;Object.assign(d,{restored:!1,plan:null,planned:null,clash:null,...Zm(d.card,s)}),m(!0),Y(t?"Th\
e card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>f(D)})}function Le(D){let ue=d.form;Object.
assign(d,{clash:null,base:rc(D)}),f(Fs(D.part,D.note)),Y("What is saved is in the boxes now.",{label:"Put mine\
 back",act:()=>f(ue)})}async function li(D){try{await sd(`/blank.${D}`,js(d.form),`${d.form.title.trim()||"bla\
nk"}.${D}`)}catch(ue){Y(z(ue))}}function Mt(){let D=d.error instanceof O?d.error.errors:{},ue=vr(d.form),pt=Ym(
d,b),Ot=!d.busy&&!d.stopped&&!ue.length&&!d.error;e.render(i`<h1>
          ${t?i`${R(n,"Edit","Plan")} ${d.card?.title||"card"}
                  <small class="code">${I(t)}</small>`:R(n,"New part","Plan a part")}
        </h1>
        ${d.restored?i`<p class="restored" data-test="restored">
                What you typed before is back.
                <button type="button" class="link" data-test="start-over" @click=${Q}>
                  ${t?"Back to the saved card":"Start an empty part"}
                </button>
              </p>`:h}
        ${d.kept?h:i`<p class="panel">
                This browser keeps nothing on this device: a reload loses what you type.
              </p>`}
        ${d.clash?$m(d.clash,d.form,{saveMine:()=>{d.base=rc(d.clash),v()},takeTheirs:()=>Le(d.clash),saveAsNew:N}):
h}
        ${d.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${d.taken}">card ${I(d.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${N}>
                  Save this as another card
                </button>
              </div>`:h}
        ${d.summary?dp(D,Tr,oc(d.form)):h}
        ${d.summary&&d.error instanceof H?i`<p class="panel" role="alert" data-test="not-saved">
                Not saved: the shop's server does not answer. What you typed stays on this device. Save again
                when it is back.
              </p>`:h}
        <div
          class="part-desk"
          data-test="part"
          data-busy=${String(d.busy)}
          aria-busy=${d.busy?"true":"false"}>
          <div class="part-edit">
            ${qm(d,{open:ue,stale:!Ot,waiting:pt})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${Wm}
              @submit=${Je=>{Je.preventDefault(),v()}}>
              ${Im(d.form,{metals:s,crib:{dies:o,punches:a},plan:Ot?d.plan:null,editing:!!t,errors:D,change:f})}
              ${R(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${d.saving}>
                    ${d.saving?"Saving…":t?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?h:pt}
            <div class="part-plan ${Ot||!d.plan?"":"stale"}" data-test="plan">
              ${d.plan&&!Ot&&!d.busy?i`<p class="stale-note">
                      ${d.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:h}
              ${d.plan?Gm(d.plan,{save:li,order:Hm(_)}):Jm(!!d.form.box)}
            </div>
          </div>
        </div>`),document.querySelectorAll(".part-form .wrong").forEach(fl),d.busy||e.ready()}m(!0),r&&(history.
replaceState(null,"","/part"),d.kept=mr("",{form:d.form,base:null,newCode:d.newCode}),l&&Y("The copy took the \
place of a part you had begun.",{label:"Put it back",act:()=>f(l.form)}));let Bc=e.query.get("order");Bc&&T(Bc)}
function Zm(e,t){return e?{form:Fs(e.part,e.note),base:rc(e)}:{form:Xl(t[0]?.code??""),base:null}}async function ek(e,t,n){
let s=Hl(e),o=null;try{e&&(o=await bt(e,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.
newCode,card:o,restored:!0}:{...Zm(o,t),newCode:fa(),card:o,restored:!1}}async function tk(e,t){let{part:n,note:s}=await bt(
e,t),o=`Copy of ${n.title||I(e)}`;return{form:Fs({...n,title:o},s),base:null,newCode:fa(),card:null,restored:!1}}
var rc,ef=g(()=>{y();F();Ie();pe();fe();xo();at();Ru();gn();hm();Te();Re();pe();le();bm();ac();Or();Vm();zm();
Xm();Be();ht();rc=e=>({code:e.code,etag:e.etag,revision:e.revision,revision_id:e.revision_id})});async function tf(e,t){if(!navigator.mediaDevices?.getUserMedia)throw new ss(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(nk)}catch(o){throw new ss(sk[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return e.aborted&&s(),e.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",t),n}function nf(e){return!!e.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function sf(e,t){await e.
getVideoTracks()[0].applyConstraints({advanced:[{torch:t}]})}var ss,nk,sk,of=g(()=>{ss=class extends Error{constructor(t){
super(t),this.fault=t}},nk={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
sk={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function lf(){return Ar??=ak(),Ar.catch(()=>Ar=void 0),Ar}async function ak(){let e=await rk(),t=e??await af(),
n={own:!!e,async read(s){try{return await t.detect(s)}catch(o){if(t!==e)throw new Gs(String(o));return t=await af(),
n.read(s)}}};return n}async function rk(){let e=globalThis.BarcodeDetector,t=await e?.getSupportedFormats().catch(
()=>[]);return e&&t?.includes("qr_code")?new e(rf):null}async function af(){try{let{BarcodeDetector:e,prepareZXingModule:t}=await import("/vendor/barcode-detector/ponyfill.js");
return await t({overrides:{locateFile:()=>ok},fireImmediately:!0}),new e(rf)}catch(e){throw new Gs(String(e))}}
var Gs,ok,rf,Ar,cf=g(()=>{Gs=class extends Error{},ok="/vendor/zxing-wasm/zxing_reader.wasm",rf={formats:["qr_\
code"]}});function hf(e){let t=ck(e.trim()),n=t?ik.exec(t.pathname)?.[1]:lk.exec(e.trim())?.[0];if(!n)return{kind:"other",
code:"",words:hk(e,t)};let{code:s,whole:o,fault:a}=me(dk(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${ic(I(s))} is\
 not a card code. ${r}`}}function ck(e){if(!URL.canParse(e))return null;let t=new URL(e);return/^https?:$/.test(
t.protocol)?t:null}function dk(e){try{return decodeURIComponent(e)}catch{return e}}function hk(e,t){return t?`\
It leads to ${ic(t.host)}, not to a card.`:e.trim()?`It says “${ic(e.trim())}”, which is not a card code.`:
"It holds nothing that can be read."}var ik,lk,df,ic,pf=g(()=>{pe();ik=/^\/c\/([^/]+)\/?$/i,lk=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
df=40;ic=e=>e.length>df?`${e.slice(0,df)}…`:e});async function ff(e,t,n,s){for(;!s.aborted;){if(e.readyState>=e.HAVE_CURRENT_DATA){let o=await t.read(e);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,pk))}}function gf(e,t,n){let o=e.filter(l=>mf(l,t,t)).map(l=>({...hf(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if(uf(a))return a[0];let r=a.
filter(l=>mf(l.mark,t,n));return r.length>0&&uf(r)?r[0]:"several"}function mf({boundingBox:e},t,n){let s=t.getBoundingClientRect(),
o=Math.max(s.width/t.videoWidth,s.height/t.videoHeight),a=s.x+s.width/2+(e.x+e.width/2-t.videoWidth/2)*o,r=s.y+
s.height/2+(e.y+e.height/2-t.videoHeight/2)*o,{left:l,right:c,top:d,bottom:p}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=d&&r<=p}var pk,uf,$f=g(()=>{pf();pk=60;uf=e=>e.every(t=>t.code===e[0].code)});function bf(e,t){let{title:n,words:s,again:o}=uk[e];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${e}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${t}>Try again</button>`:h}
  </section>`}var lc,uk,wf=g(()=>{y();lc=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,uk={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${lc}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${lc}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${lc}`,again:!0}}});var yf={};ne(yf,{show:()=>$k});async function $k(e){e.title("Scan a label");let t={fault:null,stream:null,lamp:null,
says:_f},n=Oa(),s=await Kt().catch(()=>[]),o=new AbortController,a=()=>e.render(yk(t,{again:d,lamp:p},()=>Aa(n,
s,a,"Seven characters, capitals or not."))),r=u=>{Object.assign(t,u),a()},l=()=>{o.abort(),Object.assign(t,{stream:null,
lamp:null})},c=u=>{l(),u instanceof ss?r({fault:u.fault}):u instanceof Gs?r({fault:"no-decoder"}):e.render(en(
u)),e.ready()};async function d(){l();let{signal:u}=o=new AbortController;r({fault:null,says:_f});try{let[m,b]=await Promise.
all([tf(u,()=>c(new ss("busy"))),lf()]);if(u.aborted)return;r({stream:m,lamp:nf(m)?!1:null,says:mk});let f=document.
querySelector(".scan-view video"),_=document.querySelector(".scan-frame");f.play().catch(()=>{}),e.ready();let T=bk(
E=>r({says:E}),u);await ff(f,b,E=>T(gf(E,f,_)),u)}catch(m){u.aborted||c(m)}}async function p(){if(!t.stream)return;
let u=!t.lamp;await sf(t.stream,u).then(()=>r({lamp:u}),()=>r({lamp:null}))}e.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():d(),{signal:e.signal}),d()}function bk(e,t){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>gk&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?e(fk):a.kind==="card"?await _k(a.code,e,t):e(wk(a)),s=performance.
now())}}function wk({kind:e,words:t}){return{kind:"wrong",title:e==="slip"?"Not a valid code":"Not a card’s la\
bel",words:`${t} Still looking.`}}async function _k(e,t,n){let s=I(e);t({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await xh(e,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?$e(`/c/${e}`,{replace:!0}):t(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is valid, but this shop has no such card: it is another shop’s label. S\
till looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server does no\
t answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wrong",title:`${s}\
 could not be opened`,words:o}))}function yk({fault:e,stream:t,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${e??
s.kind}>
    <h1>Scan a label</h1>
    ${e?bf(e,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${t} aria-label="What the camera sees"></video>
            ${vk}
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
  </div>`}var _f,mk,fk,gk,vk,vf=g(()=>{y();of();Ie();pe();cf();$f();Re();Ce();zi();wf();Be();_f={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},mk={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},fk={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},gk=2500;vk=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function kf(e,t,n){Tf(e,t,n),Up(e),be?.link.move({code:t,step:n},{whatever:!0})}function Lr(){be?.end.abort(),
be=null,Er(),Wo()}function xf(e,t){!be||be.at.code!==e||be.at.step===t||(be.at.step=t,Er(),be.link.move({code:e,
step:t}),Wo())}function Sf(e){be&&(be.at.step=e,be.link.move({code:be.at.code,step:e},{whatever:!0}))}function Nr(e,t){
document.addEventListener("bench",()=>e(Do()),{signal:t})}function Tf(e,t,n,s=null){be?.end.abort();let o=new AbortController,
a={name:e,code:t,step:n,answers:null,late:!1,refused:""},r=Xa(e,s,{keepMs:kk,heard:l=>{if(l.code!==a.code)return Lr();
a.step=l.step,Er(),Wo()},changed:({gone:l,answers:c,late:d,refused:p})=>{if(l)return Lr();Object.assign(a,{answers:c,
late:d,refused:p}),Wo()}},o.signal);be={at:a,link:r,end:o},Er(),Wo()}function Er(){try{be?sessionStorage.setItem(
cc,JSON.stringify({name:be.at.name,code:be.at.code,step:be.at.step})):sessionStorage.removeItem(cc)}catch{}}function Pr(){
if(!be)try{let{name:e,code:t,step:n}=JSON.parse(sessionStorage.getItem(cc)??"{}");e&&t&&Tf(e,t,n)}catch{}}var cc,
kk,be,Do,Wo,Cr=g(()=>{Tl();pn();cc="flangebook.on-bench",kk=5e3,be=null,Do=()=>be?{...be.at}:null;Wo=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Ae(e){let{fault:t}=me(e);return i`<div class="state" data-test="bad-code">
    <h1>${I(e)} is not a card</h1>
    ${t||"A card code has seven characters, digits and letters without I, L, O and U."} ${dc}
  </div>`}function os(e,t){if(t instanceof H)return i`<div class="state" data-test="not-kept">
      <h1>${I(e)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${dc}
    </div>`;if(t instanceof O&&t.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${I(e)}</h1>
      The code is valid, but this shop has no card of that number. Look at the label again. ${dc}
    </div>`;throw t}async function Tt(e,t){let{code:n}=e.params;try{await $t(n,t,e.signal)}catch(s){e.signal.aborted||
we(e,os(n,s))}}function we(e,t){e.title("No such card"),e.render(t),e.ready()}var dc,Ht=g(()=>{y();F();Ie();pe();
dc=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function Of(e,{busy:t,fault:n,take:s,settings:o}){return e?.differs?i`<details class="freshness panel" data-test="fresh">
    <summary>
      <span><b>${e.words}</b> The card stays as it is. Show the difference</span>
    </summary>
    <div class="table">
      <table>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">What</th>
            <th scope="col">On the card</th>
            <th scope="col">Today</th>
          </tr>
        </thead>
        <tbody>
          ${e.differences.map(a=>i`<tr>
                <th scope="row">${a.where}</th>
                <td>${a.what}</td>
                <td>${Mf(a,"saved")}</td>
                <td>${Mf(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&ge("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
h}
    <p class="wrong" role="alert">${n}</p>
    ${R("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${t} @click=${s}>
        ${t?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:h}function Mf(e,t){let n=t==="saved"?e.saved_value:e.fresh_value;return e.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(e.field)&&typeof n=="number"?$(Vt(e.field??"",n)):e[t]}var Af=g(()=>{y();Te();A();le()});function Fo(e){return e.refused?e.missing?"The shop was restored from a backup and does not know its card":`Re\
fused: ${e.refused}`:e.parked?"Saved here. The card was changed meanwhile: to resolve":e.late?`Saved here, not\
 yet in the shop. ${e.late}`:"Saved here, not yet in the shop. Waiting to be sent"}function Lf(e){let t=e.here??
[],n=e.proposals??[];if(!t.length&&!n.length)return h;let s=t.filter(o=>o.refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-resolve" data-test="to-resolve">
            <p>
              ${k("caution","To resolve")} This card was changed in two places at once. Both are kept.
            </p>
            ${R("cards.revise",i`<a class="button next" href="/c/${e.code}/resolve" data-test="resolve"
                >Resolve ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner decides which holds.</p>`)}
          </div>`:h}
    ${t.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${xk(t.length,n.length>0)}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:h}
          </p>`:h}
  </section>`}function xk(e,t){let n=e===1?"One change of this card waits":`${e} changes of this card wait`;return t?
`${n} until the other one is resolved.`:`${n} and ${e===1?"is sent automatically":"are sent automatically"}.`}
function Br(e){return e==="shop"?"Saved in the shop.":e==="here"?"Saved here, not yet in the shop. It is sent \
automatically.":e==="settle"?`The card was changed meanwhile. Both are kept: ${ge("cards.revise")?"decide whic\
h holds.":"the owner decides which holds."}`:"Nothing was changed."}var Vs=g(()=>{y();Te();G();le()});async function Rr(e,t){try{qs=(await zn(e)).map(({name:n})=>n),e.aborted||t()}catch{}}function Ir(e,t,{draw:n,
start:s}){let o=Do();if(o?.code===e)return Sk(o,t);if(!qs.length)return h;let a=[Ef,Hp()].find(r=>qs.includes(
r))??qs[0];return i`<section
    class="show-on-press-screen"
    aria-label="Press screen"
    data-test="show-on-press-screen">
    ${qs.length>1?K({name:"press-screen",label:"Press screen",value:a,options:qs.map(r=>[r,r]),change:r=>{Ef=r,
n()}}):h}
    <button
      type="button"
      class="button"
      data-test="put-on-press-screen"
      @click=${()=>{kf(a,e,t),n(),s?.()}}>
      Show on ${Kn(a)}
    </button>
  </section>`}function Sk(e,t){let n=Kn(e.name);return i`<section
    class="show-on-press-screen on"
    aria-label="Press screen"
    data-test="on-press-screen"
    data-press-screen-step=${e.step}>
    <p role="status">${Tk(e,n)}</p>
    ${e.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>Sf(t)}>
            Show step ${t} there
          </button>`:h}
    <button type="button" class="button" data-test="off-press-screen" @click=${Lr}>
      Stop
    </button>
  </section>`}function Tk({answers:e,late:t,refused:n},s){return e===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:t?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var qs,Ef,hc=g(()=>{y();pn();Cr();Z();qs=[],Ef=""});function Wr(e){let{drawing:t}=e,n=Jn(e),s=nr(e),o=Mk(t,e.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${pc("before","before",Nf(t.before),t,o)}
    ${n?pc("during",s?il(s).join(" "):"half way",n.shown,t,o,s):h}
    ${pc("after","after",Nf(t.after),t,o)}
  </div>`}function Mk(e,t,n){let[s,o,a,r]=st([e.before.sheet,e.after.sheet]),l=t??(a-s)/6,[c,d]=n?jn(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,e.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,d-l),high:Math.max(r+.3*l,2*l,d+l)}}function pc(e,t,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${e}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${Oe(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(d=>x`<path class="tool" d=${d}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?Ok(c,a-o):h}
    </svg>
    <figcaption data-test="small-${e}">${t}</figcaption>
  </figure>`}function Ok(e,t){if(!Fa(e,t))return x`<path class="ring" d=${wo([e.on_sheet,e.on_tool])}/>`;let[n,
s]=jn(e);return x`<circle class="ring" cx=${n} cy=${-s} r=${t*.05}/>`}var Nf,uc=g(()=>{y();jt();ll();ln();Nf=({
sheet:e,ram:t,holder:n,punch:s,gauge:o})=>({sheet:Oe(e),tools:[t,n,s].map(Oe).filter(Boolean),down:0,gauge:Oe(
o),back:0})});function Dr(e,t,n,s){let o=[...e].sort((d,p)=>d[t]-p[t]);if(o.length<2||n<o[0][t]-.002||n>o[o.length-1][t]+.002)
return null;let a=o.findIndex(d=>d[t]>n),r=a<0?o.length-1:Math.max(a,1),[l,c]=[o[r-1],o[r]];return l[s]+(n-l[t])/
(c[t]-l[t])*(c[s]-l[s])}var mc=g(()=>{});function Ho(e){let t=e.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(t))return null;
let n=Number(t);return n>0&&n<180?n:null}function Uo(e){let t={},n={},s=e.places==="one"?[["measured_deg",e.one]]:
[["left_deg",e.left],["middle_deg",e.middle],["right_deg",e.right]];for(let[o,a]of s){if(a.trim()==="")continue;
let r=Ho(a);r===null?n[o]=[e.places==="one"?Pf:Ak]:t[o]=r}return!Object.keys(t).length&&!Object.keys(n).length&&
(n[s[0][0]]=[Pf]),{angles:t,wrong:n}}function Cf(e,t,n){let s=Pk(t),[o,a]=["set_angle_deg","punch_depth_mm"].map(
c=>Dr(e.corrections??[],"measured_deg",s,c));if(o===null||a===null||n.set_angle_deg===null||Lk(e,s))return null;
let r=e,l={row:s,ends:s!==Fr(t),set_angle_deg:o+(n.set_angle_deg-r.set_angle_deg),punch_depth_mm:n.punch_depth_mm===
null?null:a+(n.punch_depth_mm-r.punch_depth_mm)};return nt(e,l)?l:null}function Lk({first_hit:e,included_angle_deg:t},n){
return!!(e&&n>Math.max(t+Ek,e.comes_out_deg_high))}function Fr(e){let t=Object.values(e);return t.reduce((n,s)=>n+
s,0)/t.length}function Pk(e){let t=(e.left_deg+e.right_deg)/2;return e.middle_deg-t>=Nk?t:Fr(e)}function zs(e){
return e?.correction?.set_angle_deg?e.correction:e?.table??null}function Ut(e){let t=[e.left_deg,e.middle_deg,
e.right_deg],s=t.some(o=>o!=null)?t.map(o=>$(S(o??null))).join(" / "):$(S(e.measured_deg));return e.flange_mm?
`${s}, flange ${Ck(e.flange_mm)}`:s}var jo,Pf,Ak,Ek,Nk,Ck,bn=g(()=>{rn();mc();A();jo={one:"",left:"",middle:"",
right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""};Pf="Type the angle between the f\
lats in degrees, such as 90.5. Square is 90.",Ak="Degrees, such as 90.5";Ek=5;Nk=.3;Ck=e=>typeof e=="string"?e:
$(w(e,{digits:2}))});function Ks(e,{waiting:t,step:n}={}){return i`<li class="row result" data-test=${t?"waiting-result":"result"} data-id=${e.
id}>
    <div>
      <span class="lead">${Ut(e)}</span>
      <span class="code">Step ${e.step}</span>
      <span class="more">
        ${t?i`<b class="waits">${Fo(t)}</b> · `:h}
        ${[vs(e),Nt(e),Bk(e),Rk(e.correction,n)].filter(Boolean).join(" · ")}
        ${e.note?i`<span class="result-note">${e.note}</span>`:h}
        ${t?.refused?i`<a href="/settings">Decide</a>`:h}
      </span>
    </div>
  </li>`}var Bk,Rk,fc=g(()=>{y();rn();bn();A();Vs();Ke();Bk=e=>e.set_angle_deg?`set at ${$(S(e.set_angle_deg))}`:
"",Rk=(e,t)=>e?.set_angle_deg&&t&&nt(t,e)?`new setting ${$(S(e.set_angle_deg))}`:""});var Bf={};ne(Bf,{show:()=>Ik});async function Ik(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Ae(t));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{e.title(n.title||I(t)),e.render(Wk(n,s,{take:r,archive:a,
draw:o}))},a=async()=>{try{({card:n}=await gt(n,{archived:!n.archived})),Y(n.archived?"Archived. It stands und\
er Archived, below the cards.":"In use again."),U()}catch(c){Y(z(c))}o()},r=async()=>{Object.assign(s,{busy:!0,
fault:""}),o();try{let c=B().name?{by:B().name}:{};n=await Cn(await xa(n,{replan:!0,reason:"Planned afresh wit\
h today’s tools",id:Ge(),...c})),s.fresh=null,U()}catch(c){s.fault=c instanceof O&&c.status===412?"The card \
was changed meanwhile. Open it again first.":z(c)}s.busy=!1,o()},l=async c=>{n=c,s.waiting=(await kn(t).catch(
()=>[])).filter(d=>d.kind==="trial"),s.metal=$s((await sn())?.metals,n.part.metal),o(),e.ready()};_e(()=>n&&o(),
e.signal),Nr(()=>n&&o(),e.signal),document.addEventListener("sync",async()=>n&&l(await bo(t).catch(()=>{})??n),
{signal:e.signal});try{await $t(t,l,e.signal)}catch(c){e.signal.aborted||we(e,os(t,c));return}Pr(),Rr(e.signal,
o),s.fresh=await M("GET",`/cards/${t}/fresh`,{signal:e.signal}).then(({body:c})=>c,()=>null),o()}function Wk(e,t,{
take:n,archive:s,draw:o}){let{plan:a}=e,r=a.checks.filter(d=>d.level!=="ok"),l=r.filter(d=>d.level==="stop"),c=r.
filter(d=>d.level!=="stop"&&!d.code.startsWith("general-"));return i`<article class="card" data-test="card" data-revision=${e.
revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${I(e.code)}</p>
        <h1 data-test="card-title">${e.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${Fk(e,t.metal)}</p>
        ${e.note?i`<p class="card-note" data-test="card-note">${e.note}</p>`:h}
        ${e.archived?i`<p class="card-note"><b>Archived.</b> This card is not in use any more.</p>`:h}
      </header>
      ${Lf(e)}
      ${l.length?i`<section class="card-stops" aria-label="Stop">${We(l)}</section>`:h}
      ${Of(t.fresh,{...t,take:n,settings:e.settings.length})}
      ${Dk(e,l.length>0)}
      ${a.steps.length?Ir(e.code,1,{draw:o,start:()=>$e(`/c/${e.code}/step/1`)}):h}
      <section class="panel card-picture" aria-label="What it becomes">
        ${rt(a,{tallest:innerHeight*.26})}
      </section>
      ${Vk(e,s)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${Cs(a.tools,a.steps.length,a.steps)}${sr(a.blank)}${je(a)?ts(a.blank,{tallest:420}):h}
      </section>
      ${Gk(e,t.waiting)}
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${ns(a)?h:jk(a.order)}${Uk(e)}
        ${ns(a)?ae("Order",Mr(a,Um(e.code)),{test:"order-fold"}):h}
      </section>
      ${c.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${ys(c)}
            </section>`:h}
      ${hn(a.checks)}
    </div>
  </article>`}function Dk({code:e,plan:t},n){return t.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${e}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${t.steps.length===1?"1 step":`${t.steps.length} steps`}</small>
    </a>
  </div>`:h}function Fk({part:e,plan:t},n){let s=t.thickness_gauge?` (${t.thickness_gauge})`:"",o=e.bends.length===
1?"1 bend":`${e.bends.length} bends`,a=je(t)?`box ${Yn(t.folded)}`:`${j(e.bend_length_mm)} ${C()} long`;return`${n}\
, ${j(e.thickness_mm)} ${C()}${s}, ${a}, ${o}`}function Hk(e,t){let{gauge_x_mm:n}=lt(e,t);return n===null?"no \
gauge":`gauge X ${$(w(n))}`}function Uk(e){return i`<ol class="rows" data-test="step-list">
    ${e.plan.steps.map(t=>i`<li class="row">
          <a href="/c/${e.code}/step/${t.number}">
            <span class="lead">${t.number}. ${xt(t)} ${t.direction}</span>
            <span class="code">${$(S(t.included_angle_deg))}</span>
            <span class="more">
              ${Hk(e,t)}
              ${t.turn_over||t.turn_end||t.turn_quarter?i`<span class="turn" data-test="turn">${Ls(t)}</span>`:
h}
            </span>
            ${kt(t,{short:!0})}
            ${t.drawing?Wr(t):h}
          </a>
        </li>`)}
  </ol>`}function Gk(e,t){let n=[...e.trials].reverse().slice(0,3);return!n.length&&!t.length?i`<section class="card-results">
      <p class="soft" data-test="no-results">
        Nothing measured yet.${R("results.keep"," After a bend, type the result.")}
      </p>
    </section>`:i`<section class="panel card-results">
    <h2>Results</h2>
    <ul class="rows results" data-test="results">
      ${[...t].reverse().map(s=>Ks(s.body,{waiting:s}))}
      ${n.map(s=>Ks(s,{step:e.plan.steps[s.step-1]}))}
    </ul>
  </section>`}function Vk({code:e,archived:t},n){return i`<nav class="card-links" aria-label="This card">
    ${oe(`/c/${e}/note`,i`<a class="button" href="/c/${e}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${e}/history" data-test="history">History</a>
    <a class="button" href="/c/${e}/label" data-test="label">Label</a>
    <a class="button" href="/c/${e}/print" data-test="print">Print</a>
    ${R("cards.revise",i`<a class="button" href="/part?from=${e}" data-test="edit">Edit</a>`)}
    ${R("cards.create",i`<a class="button" href="/part?copy=${e}" data-test="copy">Copy</a>`)}
    ${R("cards.revise",i`<button type="button" class="button" data-test="archive" @click=${n}>
        ${t?"Use again":"Archive"}
      </button>`)}
  </nav>`}var jk,Rf=g(()=>{y();F();Ie();pe();fe();an();Pe();Cr();Re();at();se();ye();A();Ht();G();Mo();wt();Af();
Vs();Es();le();Or();un();hc();uc();jt();fc();As();$n();ot();jk=e=>e?.words?i`<p class="order" data-test="order">${e.
words}</p>`:h});var Df={};ne(Df,{show:()=>qk});async function qk(e){let{code:t,step:n}=e.params;if(!me(t).whole)return we(e,Ae(
t));let s=Po(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return e.render(Yk(o,n));e.title(`${o.title||t},\
 step ${r.number}`),e.render(Xk(o,r,()=>dr(o,r,s,a,e.signal),Ir(o.code,r.number,{draw:a})))};_e(()=>o&&a(),e.signal),
Nr(()=>o&&zk(o,Number(n),a),e.signal),document.addEventListener("sync",()=>o&&Kk(o),{signal:e.signal}),addEventListener(
"keydown",r=>o&&Jk(r,o,Number(n)),{signal:e.signal}),Pr();try{await $t(t,r=>{!o&&r.plan.steps[Number(n)-1]&&xf(
t,Number(n)),o=r,a(),e.ready()},e.signal)}catch(r){e.signal.aborted||we(e,os(t,r));return}Rr(e.signal,()=>o&&a())}
function zk(e,t,n){let s=Do(),o=s?.code===e.code&&s?.step!==t&&e.plan.steps[(s?.step??0)-1];o?$e(`/c/${e.code}\
/step/${o.number}`,{replace:!0}):n()}async function Kk(e){let t=await bo(e.code).catch(()=>{});t&&t.revision!==
e.revision&&Y(`This card is at revision ${t.revision} now.`,{label:"Show it",act:()=>Et()})}function Jk(e,t,n){
e.altKey||e.ctrlKey||e.metaKey||e.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.test(e.target.tagName)||(e.key==="Arro\
wRight"&&$e(If(t,n).href),e.key==="ArrowLeft"&&$e(Wf(t,n).href))}function If(e,t){let n=e.plan.steps.at(-1);return t<
e.plan.steps.length?{href:`/c/${e.code}/step/${t+1}`,label:"Next",more:`step ${t+1}`}:n.set_angle_deg===null||
!At(`/c/${e.code}/result/${t}`)?{href:`/c/${e.code}`,label:"Done: the card",more:""}:{href:`/c/${e.code}/resul\
t/${t}`,label:"Type the result",more:""}}function Xk(e,t,n,s){let{stops:o,watch:a}=cr(e,t),r=t.number===e.plan.
steps.length,l=If(e,t.number);return i`<article class="step" data-test="step">
    ${ar(e,t)} ${o.length?i`<div class="step-stop">${We(o)}</div>`:h}
    <div class="step-body">
      <div class="step-way">${er(t,e.part.flats_mm.length)}${kt(t)}</div>
      <section class="step-set" aria-label="What to set">${hr(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-press-screen">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?We(a):h}
      </section>
      <section class="step-with" aria-label="Tools">
        ${yu(e.plan,t)} ${Qa(e.plan,t)}
        ${Lo(t.origin)?i`<p class="hint origins" data-test="origins">${Lo(t.origin)}</p>`:h}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${Wf(e,t.number).href} data-test="back">Back</a>
      ${r||t.set_angle_deg===null?h:oe(`/c/${e.code}/result/${t.number}`,i`<a class="button" href="/c/${e.code}/result/${t.
number}" data-test="came-out"
                >Type the result</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:h}</a
      >
    </nav>
  </article>`}var Yk,Wf,Ff=g(()=>{y();Ie();pe();at();Cr();Re();Te();se();an();Ht();Ml();G();Es();le();rr();qa();
hc();mn();jt();pr();Yk=(e,t)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${t}</strong>This card has ${e.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${e.code}">Open the card</a></span>
  </div>`;Wf=(e,t)=>({href:t>1?`/c/${e.code}/step/${t-1}`:`/c/${e.code}`,label:"Back"})});function jf(e,t,n,s){let o=e.gauged_flange;if(!o)return null;let a=Dr(o.rows,"measured_deg",t,"flange_mm");if(a===
null)return null;let r=n-a;if(Math.abs(r)>o.most_error_mm)return{gauge_x_mm:null,error_mm:r,words:"That flange\
 is further off than a gauge error can be. Check it before you set a new X.",to_check:Zk};let l=Math.abs(r)<=gc?
s:s-r,c=l>=o.x_low_mm&&l<=o.x_high_mm;return{gauge_x_mm:c?l:null,error_mm:r,words:c?"":"The gauge does not rea\
ch far enough to correct the flange.",to_check:[]}}var gc,Zk,Ys,jr=g(()=>{mc();gc=.05;Zk=["Measure again, to t\
he face that the card's dimension goes to.","Check which flange was measured.","Read the gauge: did it stand a\
t the X of the card, and the sheet against it?"],Ys=({correction:e,gauge:t})=>e?.flange??t??null});function Uf(e,t,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(d,p,u,m={})=>L({name:p,label:u,value:a[d],wrong:r[p],
change:b=>Object.assign(a,{[d]:b}),...m}),c=n.used??lt(e,t);return i`<form
    class="result-form"
    novalidate
    data-test="result-form"
    @submit=${d=>{d.preventDefault(),s()}}>
    <div class="result-main">
      <h2>Result <small>Wanted ${$(S(t.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:h}
      <div class="result-angles ${a.places}">
        ${a.places==="one"?l("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[l("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),l("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),l("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${$c(a,o)}
      <div class="result-more">
        ${n.byDepth?l("set","punch_depth_mm","Depth that was set",{unit:C(),placeholder:c.punch_depth_mm===null?
"":w(c.punch_depth_mm,{digits:2}).text,hint:Hf}):l("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:c.set_angle_deg===null?"":S(c.set_angle_deg).text,hint:Hf})}
        ${l("flange","flange_mm","Flange measured",{unit:C(),hint:"If you measured it."})}
        ${l("note","note","Note",{hint:"Grain, anything odd."})}
      </div>
      <details
        class="more-measured"
        data-test="more-measured"
        ?open=${["lot","thickness_mm","radius_mm"].some(d=>r[d]?.length)}>
        <summary>More measured</summary>
        <div class="result-more">
          ${l("thickness","thickness_mm","Thickness measured",{unit:C()})}
          ${l("radius","radius_mm","Inside radius",{unit:C()})}
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
  </form>`}var Hf,$c,bc=g(()=>{y();Ie();A();Z();Hf="Leave it if it was set as shown.",$c=(e,t)=>X({name:"place\
s",label:"Measured at",value:e.places,options:[["one","One place"],["three","Left, middle, right"]],change:n=>{
Object.assign(e,{places:n}),t()}})});function Gf(e){let t=Ys(e);return t?t.gauge_x_mm===null?Qk(t):i`<div class="set-figures" data-test="new-gauge">
      ${Ye("Gauge X now",w(t.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${Vf(t.error_mm)}</p>`:h}function Qk({error_mm:e,words:t,said:n,to_check:s}){
return s.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${k("stop")} <b>No new gauge X.</b> ${Vf(e)} No gauge is that far off.</p>
    <ol>
      ${s.map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${ze({...n,words:t})}</p>`}function Vf(e){return e===null?"":Math.abs(e)<=
gc?"Flange as wanted: leave the gauge.":`Flange ${ie(w(Math.abs(e),{digits:2}))} too ${e>0?"long":"short"}.`}function qf(e){
let t=e?.crown;return t?i`<div class="crown" data-test="crown">
    <p>${ex(t)}</p>
    ${t.shim?tx(t.shim):h}
  </div>`:h}function ex({middle_open_deg:e,shim:t,words:n}){return t?i`<b>The middle is ${ie(S(e))} more open than the ends.</b> First crown the middle
    by ${ie(w(t.middle_mm,{digits:2}))}, or shim the die:`:n}function tx({strip_mm:e,lengths_mm:t}){let n=t.map(
o=>w(o,{digits:0}).text).join(", "),s=w(t[0],{digits:0}).unit;return i`<p data-test="shim">
    ${t.length===1?"1 strip":`${t.length} strips`} of
    ${ie(w(e,{digits:2}))} under the middle of the die, one on the other, ${n} ${s}
    long. Nothing at the ends. Then set what stands above, which is for the ends; bend again and measure.
  </p>`}var zf,Kf=g(()=>{y();jr();A();G();mn();zf=({thickness_mm:e})=>e?` Calculated for the ${ie(w(e,{digits:2}))}\
 that the sheet measures.`:""});function Yf(e,t,n,{again:s,keep:o}){let a=zs(n);return i`<div
    class="result-answer"
    data-test="result-answer"
    data-waits=${n.waits?"true":"false"}>
    <div class="result-main">
      <h2>${Ut(n.trial)} <small>wanted ${$(S(t.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${n.late||"the shop does not answer"}.
              It is sent automatically.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?sx(a):$u(t,n)}
      ${a?i`<p class="basis" data-test="basis">${ax(n)}</p>`:h}
      ${n.question?nx(e,n.question):h} ${Gf(n)}
      ${ix(n.correction)} ${qf(n.correction)}
      ${a?R("cards.revise",dx(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
h}
    </div>
    <nav class="step-nav" aria-label="Result">
      <button class="button" data-test="again" @click=${s}>Measure again</button>
      <a class="button" href="/c/${e.code}/step/${t.number}" data-test="back">Step ${t.number}</a>
      ${a&&n.kept!=="kept"?R("cards.revise",wc(e,t,"button",", not kept"),wc(e,t)):wc(e,t)}
    </nav>
  </div>`}function wc({code:e,plan:t},{number:n},s="button next",o=""){let a=n===t.steps.length;return i`<a class=${s} href=${a?
`/c/${e}`:`/c/${e}/step/${n+1}`} data-test="next"
    >${a?`Done${o}: the card`:`Next${o}: step ${n+1}`}</a
  >`}function ax({correction:e,table:t}){return e?`${ze({...e.said,words:e.what})}${rx(e)}${zf(e)}`:`Worked ou\
t on this device, from the card’s own table at ${$(S(t?.row??null))}. The shop works it out again when the r\
esult arrives.${t?.ends?` ${ox}`:""}`}function ix(e){let t=e?.tilt_mm_per_m;return t==null?h:i`<p data-test="tilt">
    Left and right differ: about ${cx(Math.abs(t))},
    ${t>0?"the right end deeper":"the left end deeper"}.
  </p>`}function dx(e,t){return e.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${e.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${e.words}
    </p>`:i`<div class="buttons">
      <button class="button next wide" data-test="keep" ?disabled=${e.kept==="asking"} @click=${t}>
        ${e.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${e.words}</p>`}var nx,sx,ox,rx,lx,cx,Jf=g(()=>{y();Kf();
bn();A();G();Wl();le();mn();nx=(e,t)=>i`<section class="panel urgent" data-test="question">
    <p>${k("unknown","Does not count")} ${t}</p>
    <p><a href="/shop/learned/${encodeURIComponent(e.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,sx=e=>i`<div class="set-figures" data-test="new-setting">
    ${Ye("Angle now",S(e.set_angle_deg),"new-angle")}
    ${e.punch_depth_mm===null?h:Ye("Depth now",w(e.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`,ox="The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it\
 first.";rx=({crown:e})=>e?.setting_for==="ends"?" This is for the ends; first correct the open middle, see be\
low.":"";lx=3048,cx=e=>C()==="in"?`${ee(e*lx/1e3/Xe,3)} in over ten feet`:`${ee(e,2)} mm in each metre`});async function Xf(e,t,n,s){let o=zs(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await gt(e,{settings:[...e.settings.filter(r=>r.step!==t.number),px(t,o,n.trial,ux(e,t,n))]},{reason:`\
Step ${t.number} set from a piece measured at ${Ut(n.trial)}`});Object.assign(e,a.card),Object.assign(n,{kept:"\
kept",where:a.where,words:hx(a)}),U()}catch(a){Object.assign(n,{kept:"no",words:z(a)})}s()}}function hx({where:e,
card:t}){return e==="shop"?`Revision ${t.revision} of the card has it. Steps show it from now on.`:e==="settle"?
"The card was changed meanwhile. Both are kept: decide on the card which holds.":"Steps show it on this device\
 from now on; it is sent to the shop automatically."}var px,ux,Zf=g(()=>{F();an();jr();bn();ye();px=(e,t,n,s)=>({
step:e.number,set_angle_deg:t.set_angle_deg,punch_depth_mm:t.punch_depth_mm,...s===null?{}:{gauge_x_mm:s},trial_id:n.
id,reason:`Piece measured at ${Ut(n)}`}),ux=(e,t,n)=>Ys(n)?.gauge_x_mm??e.settings.find(s=>s.step===t.number)?.
gauge_x_mm??null});var Qf={};ne(Qf,{show:()=>fx});async function fx(e){let{code:t,step:n}=e.params;if(!me(t).whole)return we(e,Ae(
t));let s={typed:{...jo},used:null,wrong:{},general:"",sending:!1,result:null,byDepth:!1},o,a=async()=>{let l=mx.
includes((await sn())?.press?.set_by);l===s.byDepth||s.typed.set||s.sending||s.result||(s.byDepth=l,o&&!e.signal.
aborted&&r())};document.addEventListener("sync",a,{signal:e.signal}),await a();let r=()=>{let l=o.plan.steps[Number(
n)-1];if(!l)return we(e,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${t}">Open the card</a>
        </p>`);e.title(`${o.title||t}: result`),e.render(gx(o,l,s,r))};ft(()=>!s.result&&s.typed.one+s.typed.left+
s.typed.note?"Leave without saving what you measured?":null),await Tt(e,l=>{s.sending||s.result||(o=l,r(),e.ready())})}
function gx(e,t,n,s){let o=()=>$x(e,t,n,s),a=()=>{let l=bx(n);Object.assign(n,{typed:{...jo,places:n.typed.places,
lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),s()},r=()=>Xf(e,t,n.result,s);return i`<article class="step result-screen" data-test="result-screen">
    ${ar(e,t)}
    <div class="result-body">
      ${n.result?Yf(e,t,n.result,{again:a,keep:r}):Uf(e,t,n,{save:o,draw:s})}
      <aside class="result-aside" aria-label="Which bend">
        ${rt(e.plan,{mark:t.bend})}
      </aside>
    </div>
  </article>`}async function $x(e,t,n,s){if(n.sending)return;let{angles:o,wrong:a}=Uo(n.typed),r=_x(e,t,n);if(r||
(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,{wrong:a,general:""}),
Object.keys(a).length||!r)return s(),dt(a);let l=yx(e,t,o,r,n.typed);n.sending=!0,s();try{let{late:c,...d}=await ua(
{id:l.id,kind:"trial",code:e.code,body:l}),p=d.answer,u=p?.correction??null;n.result={trial:l,correction:u,table:p||
r.set_angle_deg===null?null:Cf(t,o,r),gauge:p?null:wx(t,o,r,l.flange_mm),waits:!p,late:c??"",question:p?.question_said?
ve(p.question_said):"",kept:"no",words:""},p&&U()}catch(c){n.wrong=c instanceof O?c.errors:{},n.general=z(c)}n.
sending=!1,await ms(),s(),dt(n.wrong)}function bx({result:e,used:t}){let n=zs(e),s=e&&(Ys(e)?.gauge_x_mm??e.trial.
gauge_x_mm??null);return n?{...n,gauge_x_mm:s??t?.gauge_x_mm}:null}function wx(e,t,n,s){let o=ed(s);return o===
null||typeof n.gauge_x_mm!="number"?null:jf(e,Fr(t),o,n.gauge_x_mm)}function _x(e,t,n){let{set_angle_deg:s,punch_depth_mm:o,
gauge_x_mm:a}=n.used??lt(e,t),r={set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a};if(n.typed.set.trim()==="")return r;
if(n.byDepth)return{set_angle_deg:null,punch_depth_mm:te(n.typed.set),gauge_x_mm:a};let l=Ho(n.typed.set);return l===
null?null:{set_angle_deg:l,punch_depth_mm:null,gauge_x_mm:a}}function yx(e,t,n,s,o){let a={id:Ge(),revision:e.
revision,step:t.number,bend:t.bend,...n,made_at:new Date().toISOString()};return s.set_angle_deg!==null&&(a.set_angle_deg=
s.set_angle_deg),s.punch_depth_mm!==null&&(a.punch_depth_mm=s.punch_depth_mm),typeof s.gauge_x_mm=="number"&&(a.
gauge_x_mm=s.gauge_x_mm),o.flange.trim()&&(a.flange_mm=te(o.flange)),o.radius.trim()&&(a.radius_mm=te(o.radius)),
o.thickness.trim()&&(a.thickness_mm=te(o.thickness)),o.lot.trim()&&(a.lot=o.lot.trim()),o.note.trim()&&(a.note=
o.note.trim()),B().name&&(a.by=B().name),a}var mx,eg=g(()=>{y();F();Ie();pe();fe();jr();bn();Pe();Re();us();se();
ye();A();Ht();G();Z();mn();bc();Jf();$n();Zf();mx=["depth","stop"]});function ng(e,t,n,s){return e.map(o=>i`<fieldset class="resolve-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${Go(o,o.before)}</small></legend>
        ${tg(o,"shop","In the shop",t,s)} ${tg(o,"yours",n,t,s)}
      </fieldset>`)}function tg(e,t,n,s,o){return i`<label class="resolve-side" data-test=${t}>
    <span class="resolve-whose"
      ><input
        type="radio"
        name=${e.name}
        value=${t}
        .checked=${s[e.name]===t}
        @change=${()=>o(e.name,t)} />
      ${n}</span
    >
    <span class="resolve-value">${Go(e,e[t])}</span>
  </label>`}function Go({name:e},t){if(e==="archived")return t?"Archived":"In use";if(!e.startsWith("settings "))
return t||"nothing";if(!t)return"as planned";let n=t,s=n.punch_depth_mm===null||n.punch_depth_mm===void 0?"":`\
, depth ${$(w(n.punch_depth_mm,{digits:2}))}`;return`${$(S(n.set_angle_deg??null))}${s}`}var _c=g(()=>{y();A()});function sg(e,t){return e.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${e.map(n=>vx(n,t))}
    </ol>
  </section>`:h}function vx(e,t){let n=hs(e.changes,e.before,{...e.before,settings:e.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${e.settled_by?`Resolved by revision ${e.settled_by}`:oe(`/c/${t}/resolve`,i`<a href="/c/${t}/resolve">To resolve</a>`,
"To resolve")}
    </h3>
    <p class="more">${[vs(e),Nt(e)?`by ${Nt(e)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${Go(s,s.before)} to ${Go(s,s.yours)}</li>`)}
    </ul>
  </li>`}var og=g(()=>{y();ps();le();_c();Ke()});function ag({title:e,note:t,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${e}</b>, ${$(w(n.thickness_mm,{digits:2}))},
      ${je(s)?Yn(s.folded):`${$(w(n.bend_length_mm))} long`}${t?i`. ${t}`:h}
    </p>
    ${rt(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${kx(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:h}
    ${or(s)} ${We(s.checks,{quiet:!0})}
  </div>`}function kx(e,t){let n={set_angle_deg:t.set_angle_deg??null,punch_depth_mm:t.punch_depth_mm??null};if(!e||
!nt(e,n))return"had a setting beyond its tools";let s=$(w(n.punch_depth_mm,{digits:2}));return`set at ${$(S(n.
set_angle_deg))}, depth ${s}`}var rg=g(()=>{y();As();$n();rn();A();G();un()});var ig={};ne(ig,{show:()=>xx});async function xx(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Ae(t));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>e.render(Tx(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=u=>M("GET",`/cards/${t}/${u}`,{signal:e.signal}),[d,p]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);s.revisions=d.body.revisions,s.proposals=p.body.proposals,s.silent=
!1}catch(c){if(!(c instanceof H))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=null,o(),
!!s.open){try{let{body:d}=await M("GET",`/cards/${t}/revisions/${c}`,{signal:e.signal});s.open===c&&(s.snapshot=
d)}catch(d){s.open=0,Y(z(d))}o()}},l=async c=>{s.busy=!0,o();try{n=await Sx(n,c),Y(`Revision ${c} is back, as \
revision ${n.revision}.`),s.open=0,U(),await a()}catch(d){Y(d instanceof O&&d.status===412?"The card was chang\
ed meanwhile. Look at the history again.":z(d))}s.busy=!1,o()};_e(()=>n&&o(),e.signal);try{await $t(t,async c=>{
n=c,e.title(`${n.title||I(t)}: history`),s.waiting=(await kn(t).catch(()=>[])).filter(d=>d.kind==="trial"),o()},
e.signal),await a(),o(),e.ready()}catch(c){e.signal.aborted||we(e,os(t,c))}}async function Sx(e,t){let n=await bt(
e.code);return xa(n,{restore_revision:t,reason:`Revision ${t} brought back`,id:Ge(),...B().name?{by:B().name}:
{}})}function Tx(e,t,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>History of ${e.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${Mx(e,t,n)}
      </section>
      ${sg(t.proposals,e.code)}
      <section class="panel">
        <h2>Results</h2>
        ${Ax(e,t)}
      </section>
    </div>
  </article>`}function Mx(e,t,n){return t.silent?i`<p data-test="silent">
      This device has revision ${e.revision}, of
      ${re(e.updated_at)}${e.updated_by?` by ${e.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:t.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${t.revisions.map(s=>Ox(s,e,t,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function Ox(e,t,n,{look:s,bringBack:o}){let a=e.revision===
t.revision,r=n.open===e.revision;return i`<li class="row revision" data-test="revision" data-revision=${e.revision}>
    <h3>
      Revision ${e.revision}${a?", as it is now":""}
      ${e.worst==="stop"||e.worst==="caution"?k(e.worst):h}
    </h3>
    <p class="more">${[re(e.at),Nt(e)].filter(Boolean).join(", by ")}</p>
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
    ${r?n.snapshot?ag(n.snapshot):i`<p>Fetching it…</p>`:h}
  </li>`}function Ax(e,t){return!e.trials.length&&!t.waiting.length?i`<p data-test="no-results">Nothing measured yet.</p>`:
i`<ol class="rows results" data-test="results">
      ${[...t.waiting].reverse().map(n=>Ks(n.body,{waiting:n}))}
      ${[...e.trials].reverse().map(n=>Ks(n,{step:e.plan.steps[n.step-1]}))}
    </ol>
    ${e.trials_total>e.trials.length?i`<p>The newest ${e.trials.length} of ${e.trials_total}.</p>`:h}`}var lg=g(
()=>{y();F();Ie();pe();at();Pe();se();ye();Ht();G();le();og();rg();fc();Ke()});var cg={};ne(cg,{show:()=>Lx});async function Lx(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Ae(t));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{e.title(`${n.title||I(t)}: not\
e`),e.render(Nx(n,s,{draw:o,save:()=>Ex(n,s,o,e.signal)}))};ft(()=>s.typed?"Leave without saving what you type\
d?":null),await Tt(e,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),
o(),e.ready())})}async function Ex(e,t,n,s){if(t.sending)return;let[o,a]=[t.title.trim(),t.note.replace(/\r\n/g,
`
`).trim()];if(Object.assign(t,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),dt(t.wrong);
t.sending=!0,n();try{let{where:r}=await gt(e,{title:o,note:a,archived:t.archived});if(t.typed=!1,Y(Br(r)),U(),
s.aborted)return;$e(r==="settle"&&At(`/c/${e.code}/resolve`)?`/c/${e.code}/resolve`:`/c/${e.code}`)}catch(r){t.
wrong=r instanceof O?r.errors:{},t.general=z(r),t.sending=!1,n(),dt(t.wrong)}}function Nx(e,t,{draw:n,save:s}){
let o=a=>Object.assign(t,a,{typed:!0});return i`<form
    class="note-screen"
    novalidate
    data-test="note-screen"
    @submit=${a=>{a.preventDefault(),s()}}>
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>${R("cards.revise","Note and title","Note")}</h1>
    </header>
    ${t.general?i`<p class="wrong" role="alert" data-test="wrong">${t.general}</p>`:h}
    ${Un({name:"note",label:"Note",value:t.note,lines:5,wrong:t.wrong.note,change:a=>o({note:a})})}
    ${R("cards.revise",[L({name:"title",label:"Title",value:t.title,wrong:t.wrong.title,change:a=>o({title:a})}),
X({name:"archived",label:"This card",value:t.archived?"away":"use",options:[["use","In use"],["away","Archived"]],
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
  </form>`}var dg=g(()=>{y();pe();F();an();at();Re();Te();ye();Ht();le();Z();Vs()});var hg={};ne(hg,{show:()=>Px});async function Px(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Ae(t));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{e.title(`${n.title||I(t)}: to resolve`),
e.render(Cx(n,s,c))},a=async d=>{if(!d||s.sending)return;let p=[n?.etag,s.proposal?.id].join();n=d,[s.proposal]=
n.proposals;let{changes:u={},before:m={}}=s.proposal??{};s.rows=hs(u,m,n),s.mine=!!(s.proposal&&await Zo(s.proposal.
id).catch(()=>{})),p!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),e.ready()},r=async()=>a(await Ui(t).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let d=await gt(n,th(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Resolved"});Y(Br(d.where)),s.sending=!1,await r(),U()}catch(d){Object.assign(
s,{sending:!1,fault:z(d)}),o()}},choose:(d,p)=>{s.chosen[d]=p,o()},all:d=>{for(let{name:p}of s.rows)s.chosen[p]=
d;o()}};document.addEventListener("sync",r,{signal:e.signal}),await Tt(e,async d=>a(await Ui(t).catch(()=>{})??
d))}function Cx(e,t,n){return i`<article class="resolve" data-test="resolve-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>${t.proposal?"Two changes met":"Nothing to resolve"} <small>${e.title}</small></h1>
    </header>
    ${t.proposal?Bx(e,t,n):i`<p data-test="resolved">
            Every change of this card is resolved. Both sides are in its
            <a href="/c/${e.code}/history">history</a>.
          </p>`}
  </article>`}function Bx(e,{proposal:t,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:p})=>!o[p]).
length,d=s?"Yours":t.by?`By ${t.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":t.by?`${t.by} changed`:"Somebody changed"} this card
      (${vs(t)}) while it was changed in the shop (revision ${e.revision},
      ${re(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}). Choose what holds. Both
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
            ${ng(n,o,d,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
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
    </div>`}var pg=g(()=>{y();F();ps();pe();an();at();Pe();ye();Ht();Vs();_c();Ke()});function ug(e,t){let{plan:n}=e,s=qx(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${Ix(e,t)}
    <figure class="strip ${je(n)?"of-box":""}">
      <figcaption>
        Blank ${Hr(n.blank.length_mm)} × ${Hr(n.blank.width_mm)},
        ${$(no(n.blank.mass_kg))}.
        ${je(n)?Rx(n):"Bend lines from the left end."}
      </figcaption>
      ${ts(n.blank,je(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${Wx(n)} ${Dx(e,s)} ${Kx(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function Rx({blank:e}){let t=({bend:a})=>{let r=e.bend_lines.find(l=>l.bend===a);return`${a} ${j(
r.at_mm)}`},n=a=>e.lines.filter(r=>a.includes(r.side)).map(t).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,Bl(e),"Inside up."].filter(
Boolean).join(" ")}function Ix(e,t){let{part:n,plan:s}=e;return i`<header>
    <div>
      <h2>${e.title}</h2>
      <p class="big-code" data-test="sheet-code">${e.display_code}</p>
      <p>
        <b
          >${t},
          ${Hr(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:h}</b
        >, ${je(s)?`box ${Yn(s.folded)}`:i`bend length ${Hr(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${e.revision}, ${In(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}.
      </p>
      ${e.note?i`<p class="note">${e.note}</p>`:h}
    </div>
    ${s.section?rt({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):h}
    <img
      class="qr"
      src="/api/v1/cards/${e.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function Wx(e){let t=n=>{let s=Cl(n,e.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:h};
return e.tools.length?i`<table class="fetch">
    <thead>
      <tr>
        <th scope="col">Fetch</th>
        <th scope="col">Name</th>
        <th scope="col">From</th>
        <th scope="col">Pieces</th>
        <th scope="col">Steps</th>
      </tr>
    </thead>
    <tbody>
      ${e.tools.map(n=>i`<tr>
            <th scope="row">${n.kind} ${n.code}</th>
            <td>${n.name}${t(n)}</td>
            <td>${Nl(n)}</td>
            <td>${Pl(n)||"–"}</td>
            <td>${n.steps.length===e.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function Dx(e,t){let n=e.part.flats_mm.length;return i`<table class="paper-steps">
    <thead>
      <tr>
        <th scope="col">Step</th>
        <th scope="col">In the tools</th>
        <th scope="col">Gauge</th>
        <th scope="col">Set</th>
        <th scope="col">Sheet</th>
        <th scope="col">Watch</th>
        <th scope="col">Result</th>
      </tr>
    </thead>
    <tbody>
      ${e.plan.steps.map(s=>Fx(e,s,t.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function Fx(e,t,n,s){let o=lt(e,t);return i`<tr data-test="sheet-step-${t.number}">
    <th scope="row">
      <span class="number">${t.number}</span> bend ${t.bend} ${t.side??""}
      ${t.direction}${t.operation&&t.operation!=="bend"?i`<br />${t.operation}`:h}
    </th>
    <td class="picture">
      ${Hx(e.plan,t)}${t.drawing?Wr(t):"no drawing"}${Ux(t,e.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(o.gauge_x_mm).text}</b><br />R
      <b>${w(t.gauge_r_mm).text}</b>${Gx(t)}
    </td>
    <td class="figures-cell">
      ${Jx(t,o)}<br />
      <span class="small"
        >${jx(t)}${Xx(o)?i`<br />from a first piece`:h}</span
      >
    </td>
    <td class="move">
      ${Ls(t)}
      <span class="small"
        >${t.inside_face==="up"?"Top":"Bottom"} face
        up${t.gauged_end?`, ${Eo(t,s)} to the gauge`:""}.</span
      >${kt(t,{short:!0})}
    </td>
    <td>${Vx(n)}</td>
    <td class="pen">
      <span
        >${t.included_angle_deg?ie(S(t.included_angle_deg)):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${ap(o.firstHit)}</span>`:h}</span
      >
    </td>
  </tr>`}function jx(e){let t=Da(e);return t===h?h:i`<span data-test="sheet-force">allow for ${t}</span>`}function Hx(e,t){
let n=ir(e,t);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${t.punch}${t.punch_turned?" reversed":""} over ${t.die}
      </div>`:h}function Ux({segments_mm:e,punch:t,die:n},s){return e?[["punch",t],["die",n]].map(([a,r])=>{let l=s.
find(d=>d.kind===a&&d.code===r)?.segments_mm??[],c=e[a]??[];return!c.length||c.length===l.length?h:i`<div class="pieces" data-test="own-pieces">
      ${a} ${c.map(j).join(" + ")} only
    </div>`}):h}function Gx({hits:e}){return e?i`<br /><span class="small"
          >${e.count} bumps, ${w(e.pitch_mm,{digits:2}).text} apart</span
        >`:h}function Vx(e){return yc.filter(t=>t!=="note").map(t=>({level:t,letters:e.filter(n=>n.level===t).
map(({letter:n})=>n)})).filter(({letters:t})=>t.length).map(({level:t,letters:n})=>i`<div class="mark">${k(t)} <b>${n.
join(" ")}</b></div>`)}function qx(e){let t=new Map;for(let n of yc)for(let s of e.filter(o=>Se(o)===n)){let o=`${n}\
 ${s.template} ${Rn(s)}`,a=t.get(o)??{letter:zx(t.size),level:n,checks:[],steps:[]};a.checks.push(s),a.steps.push(
...s.steps??(s.step?[s.step]:[])),t.set(o,a)}return[...t.values()]}function Kx(e){return i`<div class="remarks" data-test="sheet-remarks">
    ${yc.map(t=>{let n=e.filter(s=>s.level===t);return n.length?i`<section data-level=${t}>
        <h3>${k(t)}</h3>
        <ul>
          ${n.map(({letter:s,checks:o,steps:a})=>i`<li>
                <b>${s}</b>
                ${a.length?i`<b>Step ${a.join(", ")}.</b> `:h}${Yx(o)}
              </li>`)}
        </ul>
      </section>`:h})}
  </div>`}function Yx(e){return`${e[0].template} ${Rn(e[0])}`.replace(/\{(\w+)\}/g,(t,n)=>[...new Set(e.map(({
numbers:s})=>ie(Vt(n,s[n]))))].join(" / ")).trim()}function Jx(e,{set_angle_deg:t,punch_depth_mm:n,firstHit:s}){
if(t===null&&e.die)return i`<b>no setting</b>`;let o=s?i` <span class="small" data-test="sheet-first">first hit</span>`:
h;return i`<b>${$(S(t))}</b>${o}<br />depth <b>${w(n,{digits:2}).text}</b>`}var Hr,yc,zx,Xx,mg=g(()=>{y();As();
$n();ot();uc();Ie();A();ct();G();Hn();Es();un();lr();jt();Ke();Hr=e=>$({text:j(e),unit:C()});yc=_s.filter(e=>e!==
"ok");zx=e=>String.fromCharCode(97+e%26)+(e<26?"":String(Math.floor(e/26)+1));Xx=e=>e.fromTrial&&e.set_angle_deg!==
null});function Js(e){return X({name:"paper",label:"Paper",value:B().paper,options:[["A4","A4"],["Letter","Letter"]],
change(t){Gt({paper:t==="Letter"?"Letter":"A4"}),e()}})}function Xs(e="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${e}
  </button>`}function Ur(e,{lying:t=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${B().paper.toLowerCase()} ${t?"lying":"upright"}" data-test="sheet">
      ${e}
    </div>
  </div>`}var Gr=g(()=>{y();se();Z()});var fg={};ne(fg,{show:()=>Zx});async function Zx(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Ae(t));let n,
s=[],o=async()=>{s=(await sn())?.metals??s,n&&a()};function a(){e.title(`${n.title}, on paper`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${Js(a)}${Xs("Print the card")}</div>
        ${Ur(ug(n,$s(s,n.part.metal)),{about:"The card as it prints"})}`)}_e(()=>n&&a(),e.signal),document.addEventListener(
"sync",o,{signal:e.signal}),await o(),await Tt(e,r=>{n=r,a(),e.ready()})}var gg=g(()=>{y();pe();fe();se();Ht();
mg();Gr()});var bg={};ne(bg,{show:()=>Qx});async function Qx(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Ae(t));let n=B().
units,s=$g[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){e.title(`Label of ${o.title}`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${X({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${$g.map(l=>e0(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${oe("/labels",i`For office paper, lay them out <a href="/labels?codes=${t}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${Vr(t,s.size,n,"svg")}
          alt=""
          hidden />`)}await Tt(e,l=>{o=l,r(),e.ready()})}function e0(e,{size:t,words:n,print:s},o,a){let r=`la\
bel-${e.code}-${t}`;return i`<section class="panel label-panel" data-test="label-${t}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${Vr(e.code,t,o,"svg")}
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
        href=${Vr(e.code,t,o,"svg")}
        data-test="svg-${t}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${Vr(e.code,t,o,"png")}
        data-test="png-${t}"
        >PNG</a
      >
    </div>
  </section>`}var $g,Vr,wg=g(()=>{y();pe();se();Ht();Z();le();$g=[{size:"50x25",words:"50 × 25 mm, for a bin",
print:"small"},{size:"100x50",words:"100 × 50 mm, for a shelf or a door",print:"large"}];Vr=(e,t,n,s)=>`/api/\
v1/cards/${e}/label.${s}?size=${t}&units=${n}`});var _g={};ne(_g,{show:()=>n0});async function n0(e){e.title("Labels on a sheet"),e.render(Me("Fetching the car\
ds…"));let t=(await o0(e.signal)).filter(f=>!f.archived);if(!t.length)return e.render(ke("No cards yet",R("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),e.ready();let n=new Set((e.query.
get("codes")??"").split(",").filter(f=>t.some(_=>_.code===f))),s="50x25",o=B().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=f=>new URLSearchParams({codes:[...n].join(","),size:s,paper:B().paper,units:o,skip:a.trim()||"0",page:String(
f)}),d=(f,_)=>`/api/v1/labels/sheet.${f}?${c(_)}`;async function p(){let f=String(c(1));if(!n.size)l={key:f,pages:[],
wrong:""};else try{let{body:_}=await M("GET",`/labels/sheet.json?${c(1)}`,{signal:e.signal});l={key:f,pages:Array.
from({length:_.pages},(T,E)=>E+1),wrong:""}}catch(_){l={key:f,pages:[],wrong:z(_)}}f===String(c(1))&&b()}let u=f=>{
f(),b(),p()},m=f=>u(()=>n.has(f)?n.delete(f):n.add(f));function b(){let f=t.filter(_=>`${_.code} ${_.title}`.toLowerCase().
includes(r.trim().toLowerCase()));e.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${t.length}</span>
              </h2>
              ${t.length>8?L({name:"find",label:"Find",value:r,change:_=>{r=_,b()}}):h}
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${()=>u(()=>f.forEach(_=>n.add(_.code)))}>
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
                ${f.map(_=>i`<li>
                      <label>
                        <input
                          type="checkbox"
                          data-test="pick-${_.code}"
                          .checked=${n.has(_.code)}
                          @change=${()=>m(_.code)} />
                        <span>${_.title}</span> <span class="soft">${_.code}</span></label
                      >
                    </li>`)}
              </ul>
            </section>
            <section class="panel">
              <h2>How</h2>
              ${X({name:"size",label:"Label size",value:s,options:t0,change:_=>u(()=>s=_)})}
              ${Js(()=>u(()=>{}))}
              ${X({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:_=>u(()=>o=
_==="inch"?"inch":"mm")})}
              ${L({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:_=>u(()=>a=_)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${Xs(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(_=>s0(_,l.pages.length,d))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}_e(b,e.signal),b(),await p(),e.ready()}function s0(e,t,n){let s=`labels-${e}`;return i`<figure class="label-sheet ${B().
paper.toLowerCase()}">
    <img src=${n("svg",e)} alt="Sheet ${e} of ${t} with labels" data-test="sheet-${e}" />
    <figcaption class="screen-only">
      <span>Sheet ${e} of ${t}, ${B().paper}. Print at 100 %, without fitting to the page.</span>
      <div class="buttons">
        <a class="button" download="${s}.svg" href=${n("svg",e)} data-test="sheet-svg-${e}"
          >SVG</a
        >
        <a class="button" download="${s}.png" href=${n("png",e)} data-test="sheet-png-${e}"
          >PNG</a
        >
      </div>
    </figcaption>
  </figure>`}async function o0(e){try{let t=[];for(;;){let{body:n}=await M("GET",`/cards?limit=100&offset=${t.
length}`,{signal:e});if(t.push(...n.cards),t.length>=n.total||!n.cards.length)return t}}catch(t){let n=await Kt().
catch(()=>[]);if(e.aborted||!n.length)throw t;return n}}var t0,yg=g(()=>{y();F();se();Ce();Z();le();Gr();Be();
t0=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function vg(e){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${e.metal.name}</h2>
      <p>
        ${e.press?.name??"No press entered"}${e.press?i`, ${$(he(e.press.force_kn))}`:h}.
        Checked against ratings at a bend length of ${$(w(e.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${In(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${C()}</span></th>
          ${e.dies.map(t=>i`<th scope="col" data-test="die-${t.code}">
                V ${j(t.v_opening_mm)}<span class="sub">${t.code}</span>
                <span class="sub"
                  >${t.rating_kn_per_m===null?"rating ?":$(Ee(t.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${e.rows.map(t=>i`<tr>
              <th scope="row">${j(t.thickness_mm)}<span class="sub">${t.gauge??""}</span></th>
              ${t.cells.map(a0)}
            </tr>`)}
      </tbody>
    </table>
    ${i0()}
    <ul class="chart-words">
      ${e.words.map(t=>i`<li>${t}</li>`)}
    </ul>
  </article>`}function a0(e){return e.usable?i`<td
    class="cell ${e.level}"
    data-level=${e.level}
    data-die=${e.die}
    title=${e.why}>
    <span class="first"
      ><span class="force">${De(e,"force_kn_per_m").text}</span>${e.level==="stop"?h:i`<span class="expected">${dn(
e,"force_kn_per_m").text}</span>`}${e.level==="ok"?h:k(e.level,r0(e))}</span
    >
    ${e.level==="stop"?h:i`<span class="rest"
            >${w(e.min_flange_mm).text} · R ${w(e.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${e.die} title=${e.why}>
      <span aria-hidden="true">–</span><span class="unseen">${e.why}</span>
    </td>`}function r0({level:e,limit:t,share_percent:n}){return e==="unknown"?"rating?":`${t??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(e==="stop"?"over":"near")}function i0(){let e=Ee(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${e}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${k("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${k("caution","die 85 %")} over 80 % of a rating</li>
    <li>${k("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var kg=g(()=>{y();ot();A();ct();G();Ke()});var xg={};ne(xg,{show:()=>l0});async function l0(e){e.title("Wall chart"),e.render(Me("Working out the chart…"));
let t=(await de("metals",e.signal)).items;if(!t.length)return e.render(ke("No metals yet",i`A chart needs one. ${R(
ce.metals,i`<a href="/shop/metals">Metals</a>`)}`)),e.ready();let n=e.query.get("metal")??t[0].code,s=e.query.
get("bend_length")??"",o=null,a=null,{ask:r}=Rt(async(p,u)=>(await M("GET",`/chart?${l()}`,{signal:u,timeout:2e4})).
body,p=>{o=p.answer??o,a=p.error??null,d(),e.ready()},e.signal);function l(){let p=new URLSearchParams({metal:n});
return s.trim()&&p.set("bend_length_mm",te(s)),p}function c(){let p=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${p}`),r(null),d()}function d(){e.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${K({name:"metal",label:"Metal",value:n,options:t.map(({code:p,name:u})=>[p,u]),change:p=>{n=p,c()}})}
          ${L({name:"bend_length",label:"Checked at a bend length of",value:s,unit:C(),keys:"decimal",placeholder:C()===
"mm"?"1000":"39.37",change:p=>{s=p,c()}})}
          ${Js(d)} ${Xs("Print the chart")}
        </div>
        ${a?en(a):h}
        ${o?Ur(vg(o),{lying:!0,about:"Wall chart as it prints"}):a?h:Me("Working out the chart…")}`)}_e(d,e.
signal),r(null,{now:!0})}var Sg=g(()=>{y();F();fe();se();A();kg();Z();le();Gr();Be();xo()});function Tg(e,{fault:t,takeOut:n}){return i`<section class="panel" data-test="panel-press-screens">
    <h2>Press screens <span class="soft">${e.length}</span></h2>
    ${t?i`<p class="wrong" role="alert" data-test="press-screen-fault">${t}</p>`:h}
    ${e.length?i`<ul class="plain-list press-screen-list">
            ${e.map(s=>i`<li data-test="press-screen-row" data-name=${s.name}>
                  <span><b>${Ft(s.name)}</b> ${c0(s)}</span>
                  ${R("press_screens.remove",i`<button
                      type="button"
                      class="button"
                      data-test="remove-press-screen"
                      aria-label="Take it out… ${Ft(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      To add one, open the shop's address on it, with <a href="/press-screen">/press-screen</a> behind it.
    </p>
  </section>`}var c0,Mg=g(()=>{y();pn();pe();le();c0=({code:e})=>e?i`<a href="/c/${e}">${I(e)}</a>`:i`<span class="soft">empty</span>`});function Og(e){let t=e.map(({ring:o})=>st([o])),n=vc-2*zr,s=Math.min(...t.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return e.map(({name:o,ring:a},r)=>d0(o,a,t[r],s))}function d0(e,t,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*zr),c=(vc-(o-n)*r)/2-n*r,d=u=>c+u*r,p=u=>zr+(a-u)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${vc} ${l}"
      role="img"
      aria-label="${e||"Outline"} to scale, ${qr(o-n)} wide, ${qr(a-s)} high"
      data-test="outline">
      ${h0(n,o,d(0),l)}
      <path
        class="tool"
        d=${Oe(t)}
        transform="translate(${c} ${zr+a*r}) scale(${r})" />
      ${p0(d(n),d(o),l-16,qr(o-n))}
      ${u0(p(s),p(a),d(o)+16,qr(a-s))}
    </svg>
    ${e?i`<figcaption>${e}</figcaption>`:h}
  </figure>`}function h0(e,t,n,s){return e>0||t<0?h:x`<path class="centre" d="M${n} 6V${s-6}"/>`}function p0(e,t,n,s){
return x`<path class="dimension" d="M${e} ${n}H${t}M${e} ${n-5}v10M${t} ${n-5}v10"/>
    <text class="measure" x=${(e+t)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function u0(e,t,n,s){
let o=(e+t)/2;return x`<path class="dimension" d="M${n} ${e}V${t}M${n-5} ${e}h10M${n-5} ${t}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function Kr(e,t){return e?.length?i`<svg class="small-outline" viewBox=${Th(
t,2)} aria-hidden="true">
    <path class="tool" d=${Oe(e)} />
  </svg>`:h}function Yr(e){let t=e.filter(n=>n?.length);return t.length?st(t):[0,0,1,1]}var vc,zr,qr,Jr=g(()=>{
y();A();ln();ot();vc=360,zr=50;qr=e=>$({text:j(e),unit:C()})});function Ag(e,t){let n=Yr(t.map(s=>s.outline_mm));return i`<ul class="rack">
    ${t.map(s=>i`<li>
          <a
            href="/shop/${e}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${Kr(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:h}</span
            >
          </a>
        </li>`)}
  </ul>`}var Lg=g(()=>{y();Jr()});var Eg={};ne(Eg,{show:()=>m0});async function m0(e){e.title("Shop");let[{press:t,kept:n},s,o,a,r,l]=await Promise.
all([va(e.signal),de("punches",e.signal),de("dies",e.signal),de("holders",e.signal),de("metals",e.signal),zn(e.
signal).catch(()=>null)]),c={benches:l,fault:""};async function d(u){let m=Kn(u.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A display that still shows it asks which press screen it is.`)){c.fault=
"";try{await jp(u.name)}catch(b){c.fault=z(b)}c.benches=await zn(e.signal).catch(()=>c.benches),p()}}let p=()=>e.
render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${R(ce.press,"Changing anything needs the shop's server.")}
              </p>`:h}
        <div class="shop-grid">
          ${g0(t)} ${kc("punches",s.items)} ${kc("dies",o.items)}
          ${kc("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${oe("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(f0)}
            </ul>
          </section>
          ${c.benches?Tg(c.benches,{...c,takeOut:d}):h} ${$0()}
        </div>`);p(),e.ready()}function g0(e){return e?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${e.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${$(he(e.force_kn))}</dd>
      </div>
      <div>
        <dt>Bed</dt>
        <dd>${$(w(e.bed_length_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Open height</dt>
        <dd>${$(w(e.open_height_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Holder in the ram</dt>
        <dd>${e.holder??"none"}</dd>
      </div>
    </dl>
  </section>`:i`<section class="panel" data-test="panel-press">
      <h2>Press</h2>
      <p>${k("unknown","No press yet")}</p>
      <p>Without its figures nothing can be checked against it.</p>
      ${R(ce.press,i`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`}function kc(e,t){let n=t.filter(o=>o.rating_kn_per_m===null).length,s=t.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${e}">
    <h2><a href="/shop/${e}">${nn[e].title}</a> <span class="soft">${t.length}</span></h2>
    ${t.length?Ag(e,t):i`<p>None yet. ${R(ce[e],i`<a href="/shop/${e}/+">Add the first</a>`)}</p>`}
    ${n||s?i`<p class="rack-flags">
            ${n?k("unknown",`${n} without a rating`):h}
            ${s?k("caution",`${s} worn or damaged`):h}
          </p>`:h}
  </section>`}function $0(){let e=oe("/backups",i`<a class="button wide" href="/backups" data-test="to-backups">Backups and export</a>`);
return oe("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${e===h?"":", backups, crew"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${e}
        ${oe("/crew",i`<a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>`)}
      </div>
    </section>`)}var f0,Ng=g(()=>{y();F();pn();fe();A();Mg();G();le();Lg();f0=({code:e,name:t})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(e)}">${t}</a>
    ${oe("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(e)}" data-test="learned-${e}"
        ><span class="wide-only">Measured&nbsp;</span>springback</a
      >`)}
  </li>`});function Cg(e,{took:t,show:n,signal:s}){let o={file:"",busy:!1,choices:{...Pg},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(p){return a=p,Object.assign(o,{file:p.name,choices:{...Pg},layers:[]}),
d()}function c(p,u){return o.choices={...o.choices,[p]:u},o.choices.origin==="point"&&!o.choices.point?n():d()}
async function d(){if(!a)return;let p=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>b0)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:u}=await zo(
`/outlines/dxf?${w0(o.choices,e)}`,a,"image/vnd.dxf",s);if(p!==r)return;Object.assign(o,{answer:u,layers:u.layers}),
t(u)}catch(u){if(p!==r||s.aborted)return;if(o.wrong=z(u),u instanceof O&&u.outline){let{code:m,layers:b}=u.outline;
Object.assign(o,{fault:u.outline,code:m,layers:b.length?b:o.layers})}}o.busy=!1,n()}return{state:o,choose:l,set:c}}
function w0(e,t){let n=Object.entries(e).filter(([s,o])=>o&&(s!=="point"||e.origin==="point"));return new URLSearchParams(
[["kind",t],...n])}var Pg,b0,Bg=g(()=>{F();Pg={units:"",layer:"",origin:"rule",point:"",turn_deg:"0",mirror:"n\
o"},b0=2e6});async function Zs(e,t){let n=await e.read(t),s={kept:n,draft:e.toDraft(n??e.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>e.fromDraft(s.draft,s.kept??{}),a=()=>e.draw(s),r=()=>e.boxes.filter(({name:f,needed:_})=>_&&f in
s.draft&&!s.draft[f].trim());function l(f,_){s.draft={...s.draft,[f]:_},delete s.wrong[f],ft(()=>"Leave withou\
t saving what you typed?"),e.preview?.(o()),a()}async function c(f){let _=f?Object.fromEntries(r().map(({name:E})=>[
E,["This is needed."]])):{},T=Object.keys(_).length===0;if(Object.assign(s,{busy:T,wrong:_,others:[],clash:null}),
a(),!T)return dt(_);try{await e.write(f),ft(null),e.done(f);return}catch(E){await d(E)}s.busy=!1,a(),dt(s.wrong)}
async function d(f){if(f instanceof O&&f.status===412){let _=s.kept;s.kept=await e.read(t);let T=s.kept?e.toDraft(
s.kept):{},E=yh(_,s.kept)?"others changed":s.kept?"this changed":"taken out";s.clash={how:E,differences:E==="t\
his changed"?xr(s.draft,T,e.boxes):[]}}else if(f instanceof O&&Object.keys(f.errors).length){let{byName:_,others:T}=Jh(
f.errors,e.boxes.map(({name:E})=>E));Object.assign(s,{wrong:_,others:T})}else s.others=[`Not saved: ${z(f)} Wh\
at you typed is still here.`]}function p(){Object.assign(s,{draft:e.toDraft(s.kept??e.blank),clash:null}),ft(null),
e.preview?.(o()),a()}let u=new Map;function m(f,_){let T=u.get(_)??Cg(f,{signal:t,show:a,took:E=>b(_,E)});return u.
set(_,T),T}function b(f,{points_mm:_,height_mm:T}){f==="points_mm"&&s.draft.height_mm===""&&l("height_mm",q(T)),
l(f,zh(_))}return e.preview?.(o()),{reader:m,state:s,change:l,takeTheirs:p,show:a,save:()=>c(o()),takeOut:()=>c(
null)}}var Xr=g(()=>{F();fe();Bt();Bg();Re();A();Us();Z()});function Qr(e,t,n){let s=[],{ask:o}=Rt(async(a,r)=>{let{body:l}=await M("POST","/outline",{body:{kind:e,...v0(
e,a)},signal:r});return l},({answer:a,error:r})=>{a&&(s=Rg(a));let l=r instanceof O&&r.outline?.lines_mm.some(
c=>c.length>1)?r.outline:null;t({parts:s,checks:y0(a),wrong:r?k0(r):[],fault:l})},n);return a=>{_0(e,a)&&o(a)}}
function _0(e,t){let n={punch:"punches",die:"dies",holder:"holders",press:"press"}[e];return cn(n).filter(({type:s,
blank:o,when:a})=>["length","number"].includes(s)&&o===void 0&&(!a||a(t))).every(({name:s})=>t[s]!==void 0)&&(t.
shape!=="multi_v"||t.openings.every(s=>s.v_opening_mm&&s.angle_deg&&s.shoulder_radius_mm))}function Rg({outline_mm:e,
ram:t,bed:n}){return[{name:"",ring:e},{name:"Ram",ring:t},{name:"Bed",ring:n}].filter(({ring:s})=>s?.length)}function v0(e,t){
return e==="press"?Pn(t):{...Pn(t),code:t.code||"new"}}function k0(e){if(!(e instanceof O))return["The drawing\
 waits: the shop's server does not answer."];let t=[...new Set(Object.values(e.errors).flat())];return t.length?
t:[e.message]}var Zr,y0,xc=g(()=>{F();fe();Bt();xo();Zr=e=>({parts:Rg({...e,...e?.outlines_mm}),checks:[],wrong:[],
fault:null});y0=e=>(e?.checks??[]).filter(({code:t})=>!t.endsWith("rating-unknown"))});function ei({state:e,change:t},n){let s=n.taken(e.draft.code)?["This code is in use already."]:e.wrong.code;return L(
{name:"code",label:"Code",value:e.draft.code,change:o=>t("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function ti({state:e,takeOut:t},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return ge(ce[n.kind])?i`<div role="alert">
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
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var Qs,
ni=g(()=>{y();fe();Te();Z();Qs=(e,t)=>ge(e)?t:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${t}</fieldset>`});function Wg(e,t){if(!e?.systematic)return h;let n=e.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
    <h2>The gauge’s zero</h2>
    <p>
      <b
        >${e.flanges} measured flanges agree: the gauge stands
        ${$(w(Math.abs(e.zero_mm),{digits:2}))} too far ${n}.</b
      >
      Set its zero by as much at the press. Nothing here changes until you say that it is set; flanges
      measured before that no longer count.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="gauge-zero-set" @click=${t}>The zero is set</button>
    </div>
  </section>`}var Ig,Dg=g(()=>{y();F();A();Ig=e=>M("GET","/press/gauge",{signal:e}).then(({body:t})=>t,()=>null)});function Ug(e,{metals:t,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=e,d=m=>b=>{r[m]=b,delete l[m]},
p=(m,b)=>({name:m,label:b,value:r[m]??"",wrong:l[m],change:d(m)}),u=(m,b,f)=>i`<div class="broad">${K({...p(m,
b),options:[["","Choose"],...f]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one is, the more bed and ram give way.
    </p>
    <form
      novalidate
      @submit=${m=>{m.preventDefault(),S0(e,o)}}>
      <div class="fields">
        ${u("metal","Metal",t)} ${u("die","Die",n)} ${u("punch","Punch",s)}
        ${Hg.map(([m,b,f])=>L({...p(m,b),unit:C(),keys:"decimal",hint:f}))}
        ${jg.map(([m,b])=>L({...p(m,b),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${e.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${e.busy}>Work it out</button>
      </div>
    </form>
    ${c?x0(c,a):h}
  </details>`}function x0(e,t){let n=s=>$(w(s,{digits:2}));return i`<div data-test="strips-found" role="status">
    <p>
      <b>About ${n(e.deflection_mm)}</b> in the middle at full force over the whole bed, between
      ${n(e.deflection_mm_low)} and ${n(e.deflection_mm_high)}: the middle strip is
      ${$(S(e.middle_open_deg))} more open.
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
  </div>`}async function S0(e,t){if(!e.busy){Object.assign(e,{busy:!0,wrong:{},general:"",found:null}),t();try{
let{body:n}=await M("POST","/press/strip-test",{body:T0(e.typed)});e.found=n}catch(n){e.wrong=n instanceof O?n.
errors:{},e.general=z(n)}e.busy=!1,t()}}function T0(e){let t={metal:e.metal,die:e.die,punch:e.punch};for(let[n]of Hg)
t[n]=te(e[n]??"");for(let[n]of jg)t[n]=Ho(e[n]??"");return t}var Fg,jg,Hg,Gg=g(()=>{y();F();bn();A();Z();Fg=()=>({
typed:{},wrong:{},general:"",busy:!1,found:null}),jg=[["left_deg","Left"],["middle_deg","Middle"],["right_deg",
"Right"]],Hg=[["thickness_mm","Thickness of the strips",""],["strip_length_mm","Length of the bend","All three\
 alike, at most a quarter of the bed."],["end_mm","Outer strips from the bed’s end","To the middle of the st\
rip, left and right alike."]]});function si({code:e,lines_mm:t,edges:n,marks_mm:s}){let o=st([...t,s]),a=Bn(o,Sc-2*Vg,Tc-2*Vg),[r,l]=a([o[2],o[1]]),
c=[(Sc-r)/2,(Tc-l)/2],d=m=>{let[b,f]=a(m);return[b+c[0],-(f+c[1])]},p=!["open","branching"].includes(e),u=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${Sc} ${Tc}"
    role="img"
    aria-label="The outline as far as it was understood, ${u}"
    data-test="outline-fault">
    ${t.map(m=>x`<path class="fault-line" d=${wo((p?[...m,m[0]]:m).map(d))}/>`)}
    ${n.map(m=>M0(t[0],m,d))} ${s.map(m=>O0(d(m)))}
  </svg>`}function M0(e,t,n){let[s,o]=[e[t-1],e[t%e.length]].map(n);return x`<path class="fault-edge" d=${wo([
s,o])}/>
    ${qg(s,t)}${qg(o,t%e.length+1)}`}var Sc,Tc,Vg,qg,O0,Mc=g(()=>{y();ln();Sc=360,Tc=300,Vg=30;qg=([e,t],n)=>x`<text class="fault-number" x=${e} y=${-t-
9} text-anchor="middle" font-size="19">${n}</text>`,O0=([e,t])=>x`<g class="fault-mark" data-test="fault-mark"><circle cx=${e} cy=${-t} r="10"/>
    <path d="M${e-14} ${-t}h28M${e} ${-t-14}v28"/></g>`});function zg(e,{state:t,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:d,layers:p}=t,u=`dx\
f-${e}`,m=(b,f,_)=>K({name:`${u}-${b}`,label:f,value:d[b],options:_,change:T=>s(b,T)});return i`<div class="dxf broad" data-test=${u}>
    <label class="button dxf-file" for="${u}-file"
      >${o?"Read another DXF file":"Read a DXF file"}
      <input
        id="${u}-file"
        data-test="${u}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${({target:b})=>{b.files?.[0]&&n(b.files[0]),b.value=""}} />
    </label>
    ${o?i`<div role="status">
              ${a?i`<p class="hint">Reading ${o}…</p>`:h}
              ${r?i`<p data-test="${u}-read">
                      <b>${o}</b>, read in ${r.units}: ${Oc(r.width_mm)} wide,
                      ${Oc(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${Oc(r.within_mm)}. ${r.rule}${P0(r)}
                    </p>`:h}
              ${l?i`<p class="wrong" data-test="${u}-wrong">${l}</p>`:h}
            </div>
            ${c?.lines_mm.length?si(c):h}
            <div class="fields">
              ${m("units","Drawn in",A0)}
              ${p.length>1||d.layer?m("layer","Layer",[["","all"],...p.map(b=>[b,b])]):h}
              ${m("origin","0, 0 is",L0)}
              ${d.origin==="point"?L({name:`${u}-point`,label:"Point number",value:d.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:b=>s("point",b)}):h}
              ${m("turn_deg","Turned",E0)} ${m("mirror","Mirrored",N0)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function P0({left_out:e}){return e.length?` Left out: ${e.map(({kind:t,count:n})=>`${n} ${t}`).join(
", ")}.`:""}var A0,L0,E0,N0,Oc,Kg=g(()=>{y();Mc();A();Z();A0=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],L0=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
E0=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],N0=[["no","no"],
["yes","front to back"]];Oc=e=>$(w(e,{digits:2}))});function Yg({draft:e,change:t,wrong:n}){let s=e.openings??"",o=Dn(s);return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((r,l)=>C0(r,l,{rows:o,wrong:n,up:e.up||"1",set:c=>t("openings",Dh(s,l,c)),raise:()=>t("up",String(
l+1)),drop:()=>a(l)}))}
    ${(n.openings??[]).map(r=>i`<p class="wrong" data-test="wrong-openings">${r}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>t("openings",Fh(s))}>
      Add a V
    </button>
  </div>`;function a(r){let l=Number(e.up||"1");t("openings",jh(s,r)),(l>r+1||l>=o.length)&&t("up",String(Math.
max(l-1,1)))}}function C0(e,t,{rows:n,wrong:s,up:o,set:a,raise:r,drop:l}){let[c,d]=[t+1,`openings.${t}`],p=f=>s[`${d}\
.${f}`]??[],u=Object.keys(vo).map(f=>`${d}.${f}`),m=Object.entries(s).filter(([f])=>(f===d||f.startsWith(`${d}\
.`))&&!u.includes(f)).flatMap(([,f])=>f),b=(f,_,T,E="")=>L({name:`opening-${c}-${vo[f]}`,label:_,unit:T,placeholder:E,
value:e[vo[f]],keys:f==="code"?"text":"decimal",change:P=>a({[vo[f]]:P}),wrong:p(f)});return i`<fieldset class="opening" data-test="opening-${c}">
    <legend>V ${c}</legend>
    <div class="opening-head">
      <label class="tick"
        ><input
          type="radio"
          name="up"
          value=${c}
          data-test="up-${c}"
          .checked=${xe(o===String(c))}
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
      ${b("v_opening_mm","V opening",C())} ${b("angle_deg","Angle","°")}
      ${b("shoulder_radius_mm","Shoulder radius",C())}
      ${K({name:`opening-${c}-face`,label:"Face",value:e.face||"top",options:Wh,change:f=>a({face:f}),wrong:p(
"face")})}
      ${b("centre_mm","Off the middle",C(),"0")}
      ${b("rating_kn_per_m","Rating",_n().unit,"as the block")}
      ${b("code","Code","","automatic")}
    </div>
    ${m.map(f=>i`<p class="wrong">${f}</p>`)}
  </fieldset>`}var Jg=g(()=>{y();tn();Ji();A();Z()});function oi({kind:e,draft:t,change:n,wrong:s,preview:o,options:a={},first:r=h,reader:l}){return i`<div class="workbench">
    ${Ea[e].map((c,d)=>i`<section class="panel ${c.part}">
          <h2>${c.title}</h2>
          ${d===0?r:h} ${c.part==="outline"?B0(o):h}
          <div class="fields">
            ${c.fields.filter(({when:p,hidden:u})=>!u&&(!p||p(t))).map(p=>p.type==="openings"?Yg({draft:t,change:n,
wrong:s}):R0(p,t[p.name]??"",u=>n(p.name,u),{wrong:s[p.name],options:a[p.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function B0(e){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${e?.fault?si(e.fault):e?.parts.length?i`<div class="outlines">${Og(e.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${e?.wrong.map(t=>i`<p class="wrong" data-test="outline-wrong">${t}</p>`)}
    ${e?We(e.checks,{quiet:!0}):h}
  </div>`}function R0(e,t,n,{wrong:s=[],options:o=e.options,reader:a}){let{name:r,label:l,type:c}=e;if(c==="pi\
ck"||c==="yes"){let m=e.blank?[["",e.blank],...o??[]]:o??[];return Xg(e,K({name:r,label:l,value:t,options:m,change:n,
wrong:s}))}if(c==="points"||c==="note"){let m=e.dxf?zg(r,a(e.dxf,r)):h;return I0(e,t,i`${m}${W0(e,t,n,s)}`)}let d=Zg(
e),p=["number","length","force","rating"].includes(c)?"decimal":"text",u=L({name:r,label:l,value:t,change:n,wrong:s,
unit:d,keys:p,hint:D0(e,t),placeholder:e.blank??""});return c==="rating"?i`<div class="broad">
      ${u}${t.trim()?h:k("unknown",`${l} unknown`)}
    </div>`:Xg(e,u)}function I0({folded:e,label:t},n,s){return e?i`<details class="broad" ?open=${!!n}>
        <summary>${t}</summary>
        ${s}
      </details>`:s}function Zg({type:e,unit:t=""}){return e==="force"?qt().unit:e==="rating"?_n().unit:["leng\
th","lengths","points"].includes(e)?C():t}function W0(e,t,n,s){let{name:o,label:a,hint:r,type:l}=e;return Un({
name:o,label:a,value:t,change:n,wrong:s,hint:r,unit:Zg(e),lines:l==="points"?7:2})}function D0({type:e,hint:t="",
counted_mm:n},s){let o=[t];return n!==void 0&&o.push(`Empty: ${ie(Vt("counted_mm",n))} is counted with (common\
 practice).`),e==="rating"&&!s.trim()&&o.push(Gh),(e==="force"||e==="rating")&&o.push(F0(e,s)),e==="lengths"&&
o.push(j0(s)),o.filter(Boolean).join(" ")}function F0(e,t){if(B().units==="inch")return"Short tons, of 2000 lb\
; metric ones with a t.";let n=so(t,{unit:""}).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];if(!n)return"";let s=Number(
n)*zc;return`In metric tons: ${$(e==="force"?he(s):Ee(s))}.`}function j0(e){let t=e.split(/[,;\n]/).filter(n=>n.
trim()).length;return t?t===1?"1 piece.":`${t} pieces.`:""}var Xg,Ac=g(()=>{y();Mc();Jr();se();tl();A();G();Kg();
Z();Jg();Xg=({broad:e,type:t},n)=>e||t==="lengths"?i`<div class="broad">${n}</div>`:n});function Qg(e,t){return i`<section class="panel" id="zero" data-test="zero">
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
  </section>`}var e$=g(()=>{y()});var t$={};ne(t$,{show:()=>H0});async function H0(e){let t=ge(ce.press),s=(await de("holders",e.signal)).items.
map(({code:T,name:E})=>[T,`${T}, ${E}`]),o=async T=>(await de(T,e.signal)).items.flatMap(bl).map(({code:E,name:P})=>[
E,P?`${E}, ${P}`:E]),a=Fg(),[r,l,c,d]=t?await Promise.all([Ig(e.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],p=null,u={before:null,after:null},m=null,b=await Zs({async read(T){let E=await(t?ka:va)(T);return p=
E.etag,u.before=E.press?.depth_zeroed_at??null,E.press??void 0},async write(T){let E=await _h(T,p);u.after=E.depth_zeroed_at},
blank:{},boxes:cn("press"),toDraft:T=>Pa("press",T),fromDraft:(T,E)=>({...Ca("press",T,E),depth_zeroed_at:E?.depth_zeroed_at??
null,gauge_zeroed_at:E?.gauge_zeroed_at??null}),preview:t?Qr("press",T=>{m=T,b.show()},e.signal):void 0,draw:()=>b&&
_(),done(){Y(u.after===u.before?"The press is saved.":"The press is saved. Its error is measured anew."),$e("/\
shop")}},e.signal);e.title("The press"),t||(m=Zr(b.state.kept));let f=(...T)=>{let E=new Date().toISOString();
for(let P of T)b.state.kept[P]=E;b.save()};function _(){let{state:T,change:E,save:P}=b;e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${T.kept?.name??"The press"}</h1>
        ${t?i`<p>
                ${T.kept?"Take every figure from the press's own plate and manual.":"No press yet. Take every \
figure from its own plate and manual."}
                What is not on the plate may stay empty where the box says unknown.
              </p>`:h}
        ${T.clash?Hs(T.clash,"press",{saveMine:P,takeTheirs:b.takeTheirs}):h}
        ${Wg(r,()=>f("gauge_zeroed_at"))}
        <form
          novalidate
          @submit=${v=>{v.preventDefault(),P()}}>
          ${Qs(ce.press,oi({kind:"press",draft:T.draft,change:E,wrong:T.wrong,preview:m,reader:b.reader,options:{
holder:s}}))}
          <div role="alert">
            ${T.others.map(v=>i`<p class="wrong-line" data-test="not-saved">${v}</p>`)}
          </div>
          <div class="buttons">
            ${t?i`<button class="button next" data-test="save" ?disabled=${T.busy}>
                    ${T.busy?"Saving…":"Save the press"}
                  </button>`:h}
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>
        ${t&&T.kept?Ug(a,{metals:l,dies:c,punches:d},{draw:_,take:v=>E("deflection_mm",v)}):h}
        ${t&&T.kept?Qg(()=>f("depth_zeroed_at"),()=>f("depth_zeroed_at","gauge_zeroed_at")):h}`)}_(),e.ready()}
var n$=g(()=>{y();fe();Bt();Xr();at();xc();Te();Re();Us();ni();Dg();Vn();Gg();Ac();e$()});function o$(e,t,n,s){let{angles:o,wrong:a}=Uo(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:d}=Fn(
t),p={id:e,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:d,die:n.die,punch:n.punch,...o};p.set_angle_deg=
s.set.trim()?G0(s.set,a):n.set_angle_deg;for(let[u,m]of U0)s[u].trim()&&(p[m]=te(s[u]));return s.lot.trim()&&(p.
lot=s.lot.trim()),s.note.trim()&&(p.note=s.note.trim()),B().name&&(p.by=B().name),{body:p,wrong:a}}function G0(e,t){
let{angles:n}=Uo({...ai,one:e});return n.measured_deg===void 0&&(t.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var ai,U0,s$,a$=g(()=>{Ia();bn();se();A();ai={...jo,depth:"",flat:"",
leftFlange:"",rightFlange:""},U0=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_l\
eft_mm"],["rightFlange","flange_right_mm"],["radius","radius_mm"]],s$=e=>Object.entries(e).some(([t,n])=>t!=="\
places"&&t!=="lot"&&n.trim()!=="")});function l$(e,t){let n=Math.min((r$-2*i$-34)/e,170/t),[s,o]=[e*n,t*n],[a,r]=[i$+34,24],[l,c,d]=[a+s,r+o,a+s/2],
p=$(w(e,{digits:0})),u=$(w(t,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${r$} ${Math.round(c+52)}"
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
  </svg>`}var r$,i$,c$=g(()=>{y();A();r$=400,i$=30});function p$({before:e,after:t,points:n=[],size:s=1,words:o}){let a=[e.low,e.high,t.low,t.high,...n.map(p=>p.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return h;let c=Os(r,l,{from:h$,to:d$-h$,size:s,most:5}),{at:d}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${d$} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(p=>x`<path class="faint" d="M${p.at} 8V84"/>
          <text class="quiet" x=${p.at} y="104" text-anchor="middle"
            font-size=${V0}>${p.text}</text>`)}
    <path
      class="was"
      d="M${d(e.low)} 24H${d(e.high)}M${d(e.low)} 17v14M${d(e.high)} 17v14M${d(e.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${d(t.low)} 52H${d(t.high)}" data-test="band-after" />
    <path class="now-middle" d="M${d(t.nominal)} 42v20" />
    ${n.map(p=>q0(d(p.value),74,p))}
  </svg>`}function q0(e,t,{id:n,outlier:s,weight:o=1}){return s?x`<path class="result-odd" d="M${e-6} ${t-6}l12 12M${e+
6} ${t-6}l-12 12"
        data-test="band-point" data-id=${n} data-odd="true"/>`:x`<circle class="result-point" cx=${e} cy=${t} r=${o<
.25?3:6} data-test="band-point"
        data-id=${n}/>`}var d$,h$,V0,u$=g(()=>{y();_l();d$=340,h$=24,V0=17});function $$({before_mm:e,after_mm:t,flanges:n,strips:s}){let o=c=>$(w(c,{digits:2})),a=t.nominal-e.nominal,r=Number(
ee(a,2))===0,l=`${o(Math.abs(a))} ${a>0?"shorter":"longer"}`;return i`<p data-test="deduction">
    A bend takes <b>${o(t.nominal)}</b> (${o(t.low)} to ${o(t.high)}) off the sum of its
    flats${r?", as before":i`: the next blank is <b>${l}</b> for each such bend`}. Rests on
    ${[m$(n,"measured flange"),m$(s,"strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`}function ri(e){if(!e.length)return i`<p data-test="no-figures">No figure changed.</p>`;let t=e.flatMap(
s=>s.points??[]),n=["Thin: before. Thick: now. Rings: results"];return t.some(s=>(s.weight??1)<.25)&&n.push("s\
mall ones, of other sheet or tools, count little"),t.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${e.
map(z0)}</div>
    ${t.length?i`<p class="hint">${n.join("; ")}.</p>`:h}`}function z0(e){let{what:t,before:n,after:s,trials:o,
points:a=[]}=e,r=c=>K0(e.unit,c),l=`${t[0].toUpperCase()}${t.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${t}>
    <h3>
      ${l} <small>${o===0?"no results":o===1?"1 result":`${o} results`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${f$(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${f$(s,r)}</dd>
      </div>
    </dl>
    ${p$({before:n,after:s,points:a,size:e.unit==="mm"&&C()==="in"?Xe:1,words:`${l}: before ${g$(n,r)}, now ${g$(
s,r)}, ${a.length} results drawn.`})}
  </section>`}function K0(e,t){return e==="deg"?S(t):e==="mm"?w(t,{digits:2}):{text:ee(t,3),unit:e}}var m$,f$,
g$,Lc=g(()=>{y();u$();A();m$=(e,t)=>e?`${e} ${t}${e>1?"s":""}`:"";f$=(e,t)=>i`<b>${$(t(e.nominal))}</b>
    <span class="band">${t(e.low).text} to ${t(e.high).text}</span>`,g$=({low:e,high:t},n)=>`${n(e).text} to ${$(
n(t))}`});function k$(e,{metals:t,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:d}=e,p=(m,b,f={})=>L(
{name:m,label:b,value:r[m],wrong:W(c,m),change:_=>Object.assign(r,{[m]:_}),unit:C(),next:!0,...f}),u=(m,b,f)=>K(
{name:m,label:b,value:r[m],options:f,wrong:W(c,m),change:_=>{Object.assign(r,{[m]:_}),a()}});return i`<form novalidate data-test="choose-form" @submit=${v$(
o)}>
    <p>One strip, bent and measured, turns the handbook’s figures into those of your metal and your tools.</p>
    ${y$(e)}
    <div class="test-fields">
      ${u("metal","Metal",t.map(({code:m,name:b})=>[m,b]))}
      ${p("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${p("bend_length_mm","Strip’s width, along the bend")}
      ${p("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${u("die","Die",w$(n,r.die))}
      ${u("punch","Punch",w$(s,r.punch))}
      ${L({name:"lot",label:"Lot or heat",value:l.lot,wrong:W(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${d}>
        ${d?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function w$(e,t){let n=e.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=t&&!e.some(({code:o})=>o===t)?
[[t,`${t} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function x$({bend:e},{go:t}){let n=e.
worst!=="stop"&&e.die&&e.punch,s=$(w(J0,{digits:0}));return i`${Ua(e.checks)}
    <section class="panel urgent hands" aria-label="Hands" data-test="hands">
      <p>
        ${k("caution")} <b>A small strip brings hands close.</b> Hold it at its far end, ${s} or more
        from the punch. Shorter: tongs or a magnet, never fingers. Nobody else near the pedal. Guards on. The
        ends swing up: face clear of them.
      </p>
    </section>
    <div class="columns">
      <div>
        <ol class="do-list">
          <li>
            Cut a strip <b>${$(w(e.bend_length_mm,{digits:0}))}</b> wide and about
            <b>${$(w(b$,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
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
          ${Ye("Angle to set",S(e.set_angle_deg),"set-angle")}
          ${Ye("Depth",w(e.punch_depth_mm,{digits:2}),"punch-depth")}
        </div>
        ${Ss(e.first_hit)}
        <div class="figures">${So("Allow for",e)}</div>
      </div>
      <div class="strip-pictures">
        ${l$(b$,e.bend_length_mm)}
        ${e.drawing?vt(e.drawing,{pose:"before",close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,
words:"The strip on the die before the bend"}):h}
      </div>
    </div>
    ${Ts(e.checks)} ${hn(e.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>t("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>t("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function S$(e,{go:t,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=e,c=(p,u,m,b={})=>L({name:u,
label:m,value:o[p],wrong:W(a,u),change:f=>Object.assign(o,{[p]:f}),unit:C(),next:!0,...b}),d={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${v$(n)}>
    ${y$(e)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${$(S(r.included_angle_deg))}. The angle is
      needed; the lengths and the radius improve the figures.
    </p>
    <div class="measures">
      <fieldset class="panel">
        <legend><span class="badge-word">1</span> Angle</legend>
        <div class="result-angles ${o.places}">
          ${o.places==="one"?c("one","measured_deg","Angle measured",d):[c("left","left_deg","Left",d),c("midd\
le","middle_deg","Middle",d),c("right","right_deg","Right",d)]}
        </div>
        ${$c(o,s)}
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
  </form>`}function T$({answer:e,form:t,busy:n},s,{again:o}){if(!e)return h;let a=s.find(({code:d})=>d===t.metal)?.
name??t.metal,{teaches:r,asks:l,said:c}=e.test_bend;return i`<h2>What it changed <small>${a}</small></h2>
    <div class=${e.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${e.said.map(d=>i`<p>${ve(d)}</p>`)}
    </div>
    ${r?h:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${k("caution")} <b>Kept, but it does not count.</b> ${_o(c)}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:h}
          </section>`}
    ${e.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${k("caution","Odd one out")}</h2>
            ${e.outliers.map(({said:d})=>i`<p>${_o(d)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(t.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:h}
    ${ri(e.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${e.cards.length?i`<ul class="rows">
              ${e.cards.map(X0)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-learned"
        >Measured springback</a
      >
    </div>`}var Y0,b$,J0,_$,y$,v$,X0,M$=g(()=>{y();To();c$();A();ct();Z();bc();Mo();G();Hn();Lc();mn();ht();Y0=
[["choose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Result"]],b$=300,J0=102,_$=e=>i`<ol class="stages" aria-label="Stages">
    ${Y0.map(([t,n])=>i`<li aria-current=${t===e?"step":"false"}>${n}</li>`)}
  </ol>`,y$=({general:e})=>e?i`<p class="wrong" role="alert" data-test="wrong">${e}</p>`:h,v$=e=>t=>{t.preventDefault(),
e()};X0=({code:e,title:t,said:n})=>i`<li class="row" data-test="changed-card" data-code=${e}>
    <a href="/c/${e}">
      <span class="lead">${t||e}</span> <span class="code">${e}</span>
      <span class="more">${n.map(ve).join("; ")}</span>
    </a>
  </li>`});var O$={};ne(O$,{show:()=>Q0});async function Q0(e){e.title("Test bend"),e.render(Me("Looking into the crib…"));
let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async f=>(await de(f,e.signal)).items)),o=Ba(e.query);
o.metal||=t[0]?.code??"",o.bend_length_mm||=C()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...ai},bend:null,
answer:null,id:Ge(),wrong:{},general:"",busy:!1};ft(()=>a.stage==="measure"&&s$(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>e.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${_$(a.stage)} ${l()}
      </article>`);function l(){let f={draw:r,go:c,choose:d,send:p,again:u};return a.stage==="bend"?x$(a,f):a.
stage==="measure"?S$(a,f):a.stage==="taught"?T$(a,t,f):k$(a,{metals:t,dies:n,punches:s},f)}function c(f){Object.
assign(a,{stage:f,wrong:{},general:""}),r(),scrollTo(0,0)}async function d(){let f=ko(o);if(f.length)return m(
Object.fromEntries(f.map(_=>[_,Z0[_]])));history.replaceState(null,"",`/shop/test-bend?${Ra(o)}`),await b(async()=>{
let _=await M("POST","/bend",{body:Fn(o),signal:e.signal});a.bend=_.body,c("bend")})}async function p(){let{body:f,
wrong:_}=o$(a.id,o,a.bend,a.typed);if(Object.keys(_).length)return m(_);await b(async()=>{let T=await M("POST",
"/test-bends",{body:f,timeout:2e4});a.answer=T.body,c("taught"),U()})}function u(){Object.assign(a,{typed:{...ai,
lot:a.typed.lot,places:a.typed.places},answer:null,id:Ge()}),d()}function m(f,_=""){Object.assign(a,{wrong:f,general:_}),
r(),dt(f)}async function b(f){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await f()}catch(_){
return e.signal.aborted?void 0:(a.busy=!1,m(_ instanceof O?_.errors:{},eS(_)))}a.busy=!1,r()}}_e(r,e.signal),r(),
e.ready()}function eS(e){return e instanceof O?e.message:e instanceof H?"The shop’s server does not answer. Wh\
at you typed stays here: try again.":String(e)}var Z0,A$=g(()=>{y();F();Ia();fe();Pe();Re();se();ye();a$();A();
Z();Be();M$();Z0={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as\
 1.98."],bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you\
 want, such as 90."]}});function L$(e){if(!e)return h;let{set_by:t,offset_mm:n,results:s,strip:o}=e;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
e.apart)}>
    <h2>
      The press <small>${t?tS[t]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?nS(n,s):h}
    ${n?oe("/shop/press",i`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`):h}
    ${e.said.map(a=>i`<p>${ve(a)}</p>`)}
    ${o?oe("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${sS(o)}>Bend this strip</a>
            </p>`):h}
  </section>`}function nS({low:e,nominal:t,high:n},s){let o=l=>w(Math.abs(l),{digits:2}),a=l=>`${$(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(t).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(t)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(e)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var tS,sS,E$=g(()=>{y();A();G();le();tS={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};
sS=({metal:e,thickness_mm:t,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:e,thickness:`${t} mm`,die:n})}`});var N$={};ne(N$,{show:()=>oS});async function oS(e){let{metal:t}=e.params,n=`metal=${encodeURIComponent(t)}`;e.
title("Measured springback");let{items:s}=await de("metals",e.signal),o=s.find(({code:d})=>d===t);if(!o)return e.
title("No such metal"),e.render(ke(`No metal ${t} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(`${o.name}: measured springback`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){
let[d,p]=await Promise.all([M("GET",`/learned?${n}`,{signal:e.signal}),M("GET",`/test-bends?${n}`,{signal:e.signal})]),
u=d.body,{evidence:m}=p.body;Object.assign(a,{groups:u.groups,press:u.press}),a.evidence=[...m].sort((b,f)=>b.
made_at<f.made_at?1:-1)}async function l(d,p){if(!a.busy){a.busy=d.id,c();try{let{body:u}=await M("POST",`/evi\
dence/${encodeURIComponent(d.id)}/${p}`,{body:B().name?{by:B().name}:{},timeout:2e4});await r(),Y(rS(p,u.cards)),
U()}catch(u){if(e.signal.aborted)return;if(!(u instanceof O||u instanceof H))throw u;Y(u.message)}a.busy="",c()}}
let c=()=>e.render(i`<p class="crumb">
          <a href="/shop">Shop</a> / <a href="/shop/metals/${encodeURIComponent(t)}">${o.name}</a>
        </p>
        <div class="head-line">
          <h1>Measured springback <span class="soft">${o.name}</span></h1>
          ${oe("/shop/test-bend",i`<a class="button next" href="/shop/test-bend?${n}" data-test="to-test-bend"
              >Test bend</a
            >`)}
        </div>
        ${a.evidence.length?i`<div class="learned" data-test="learned" aria-busy=${a.busy?"true":"false"}>
                <section class="learned-figures">
                  ${L$(a.press)} ${iS(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Results</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(d=>lS(d,a.busy,l))}
                  </ul>
                </section>
              </div>`:ke("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),_e(c,e.signal),c(),e.ready()}function rS(e,t){let n=aS[e];return t.
length?`${n} ${t.length===1?"One card":`${t.length} cards`} would now plan differently: ${t.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function iS(e){return e.length?e.map(({thickness_mm:t,v_opening_mm:n,lot:s,factor:o,deduction:a,
figures:r,said:l})=>i`<section data-test="group" data-thickness=${t} data-v=${n}>
        <h2>
          ${$(w(t,{digits:2}))} over V
          ${$(w(n))}${s?i` <small>lot ${s}</small>`:h}
        </h2>
        ${l.map(c=>i`<p class="together" data-test="together">${k("caution")} ${ve(c)}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${ee(o.nominal,2)} times</b> as much as expected
                (${ee(o.low,2)} to ${ee(o.high,2)}).
              </p>`:h}
        ${a?$$(a):h} ${ri(r)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No result is in use: the figures are the metal’s own.</p>`}function lS(e,t,n){
let s=e.kind==="test bend"?"Test bend":i`First piece${e.code?i` of <a href="/c/${e.code}">${e.code}</a>`:h}`,o=[
e.set_angle_deg===null?"":`set at ${$(S(e.set_angle_deg))}`,$(w(e.thickness_mm,{digits:2})),e.die?`die ${e.die}`:
e.v_opening_mm?`V ${$(w(e.v_opening_mm))}`:"",e.lot?`lot ${e.lot}`:"",re(e.made_at),Nt(e)];return i`<li
    class="row evidence ${e.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${e.id}
    data-forgotten=${String(e.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${$(S(e.measured_deg))}</span> ${s}
        ${e.forgotten?k("unknown","Forgotten"):e.asks?k("unknown","Does not count"):e.outlier?k("caution","Odd\
 one out"):h}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${e.note?i`<p>${e.note}</p>`:h}
      ${e.said.length?i`<p class=${e.asks?"":"more"} data-test="evidence-words">${_o(e.said)}</p>`:h}
    </div>
    <div class="evidence-marks">
      ${cS(e).map(([a,r])=>R(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${t!==""}
            @click=${()=>n(e,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function cS({forgotten:e,asks:t}){return e?[["remember","Use it again"]]:t?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var aS,P$=g(()=>{y();F();fe();at();se();ye();
A();G();Lc();le();E$();Be();Ke();aS={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var C$={};ne(C$,{show:()=>dS});async function dS(e){let t=_a(e.params.kind);if(!t)return e.title("Not here"),e.
render(ke("No such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready();let{one:n,title:s,many:o}=nn[t];
e.title(s);let{items:a,kept:r}=await de(t,e.signal),l=Yr(a.map(c=>c.outline_mm??[]));e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?h:R(ce[t],i`<a class="button" href="/shop/${t}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${R(ce[t],"Changing anything needs the shop's server.")}
            </p>`:h}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>t==="metals"?fS(c):hS(t,c,l))}
            </ul>`:ke(`No ${o} yet`,R(ce[t],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),e.ready()}function hS(e,t,n){return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/${e}/${encodeURIComponent(t.code)}">
      <span class="thumb">${Kr(t.outline_mm,n)}</span>
      <span class="who"><span class="lead">${t.code}</span> <span>${t.name}</span>${pS(t)}</span>
      <span class="fact"><span class="what">Place</span>${on(t)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${t.rating_kn_per_m===null?k("unknown"):$(Ee(t.rating_kn_per_m))}</span
      >
      ${t.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${t.segments_mm.length?i`${t.segments_mm.length}, up to
                    ${$(w(uS(t.segments_mm),{digits:0}))}`:"none"}</span
            >`:h}
      <span class="fact"><span class="what">Condition</span>${mS(t)}</span>
    </a>
  </li>`}function pS({shape:e,openings:t=[]}){return e!=="multi_v"?h:i`<span class="soft" data-test="block-vs"
    >${t.map(n=>`${n.code}: V ${$(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function mS({condition:e,condition_note:t}){if(e==="good")return k("ok","Good");let n=e==="damaged"?k("st\
op","Damaged"):e==="worn"?k("caution","Worn"):k("unknown");return i`${n}${t?i` <span class="soft">${t}</span>`:
h}`}function fS(e){let{tensile_mpa:t}=e;return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/metals/${encodeURIComponent(e.code)}">
      <span class="who"><span class="lead">${e.name}</span> <span class="soft">${e.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${t.low} to ${t.high} MPa</span>
      <span class="fact"><span class="what">Reliability</span>${t.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${e.gauge_family??"none"}</span>
    </a>
  </li>`}var uS,B$=g(()=>{y();fe();A();G();le();Be();Jr();uS=e=>Math.max(...e)});function Nc(e,t){let n=t.params.tool===Ec,s=n?void 0:t.params.tool,o={items:[],etag:null,kept:!1};return{kind:e,
isNew:n,code:s,async read(a){return o=await(ge(ce[e])?ya:de)(e,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(d=>d.code!==s),l=o.items.findIndex(d=>d.code===s),c=a?[{...a,code:s??a.code}]:[];await wh(
e,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){Y(a?`${a.name||s} is saved.`:`${s} is taken out.`),$e(`/\
shop/${e}`)},taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var Ec,R$=g(()=>{fe();at();Te();Re();Ec="+"});async function I$(e,t){let n=await Zs({...t,blank:{poisson:.3},boxes:gS,toDraft:o=>({code:String(o.code??""),...Kh(
o)}),fromDraft:o=>({...Yh(o),code:o.code.trim()}),draw:()=>n&&s()},e.signal);if(!n.state.kept&&!t.isNew)return e.
title("No such metal"),e.render(ke(`No metal ${t.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(t.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,d={})=>L({name:l,
label:c,value:o.draft[l]??"",change:p=>a(l,p),wrong:o.wrong[l],...d});e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${t.isNew?"New metal":i`${t.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${t.isNew?h:i`<div class="buttons">
                ${oe("/shop/learned/x",i`<a
                    class="button"
                    href="/shop/learned/${encodeURIComponent(t.code??"")}"
                    data-test="to-learned"
                    >Measured springback</a
                  >`)}
                ${oe("/shop/test-bend",i`<a
                    class="button"
                    href="/shop/test-bend?metal=${encodeURIComponent(t.code??"")}"
                    data-test="to-test-bend"
                    >Test bend</a
                  >`)}
              </div>`}
        ${o.clash?Hs(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):h}
        <form
          novalidate
          @submit=${l=>{l.preventDefault(),n.save()}}>
          ${Qs(ce.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${t.isNew?ei(n,t):h} ${r("name","Name")}
                  ${K({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:Bh,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${ks.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${Un({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${Wn.map(l=>$S(l,n))}</div>`)}
          ${ti(n,t,"metal")}
        </form>`)}s(),e.ready()}function $S({name:e,label:t,unit:n,needed:s},{state:o,change:a}){let r=p=>o.draft[`${e}\
.${p}`]??"",l=p=>o.wrong[`${e}.${p}`]??[],c=p=>u=>a(`${e}.${p}`,u),d=!s&&!Pc.some(([p])=>r(p).trim());return i`<fieldset class="panel figure-card" data-test="figure-${e}">
    <legend>${t}${n?i` <span class="hint">(${n})</span>`:h}</legend>
    ${(o.wrong[e]??[]).map(p=>i`<p class="wrong-line">${p}</p>`)}
    <div class="fields three">
      ${Pc.map(([p,u])=>L({name:`${e}.${p}`,label:u,value:r(p),change:c(p),wrong:l(p),keys:"decimal"}))}
    </div>
    ${d?k("unknown","Not known"):h}
    <div class="fields source-line">
      ${Un({name:`${e}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${K({name:`${e}.standing`,label:"Reliability",value:r("standing"),options:Ch.map(p=>[p,p]),change:c("sta\
nding"),wrong:l("standing")})}
    </div>
  </fieldset>`}var Pc,gS,W$=g(()=>{y();Bt();fe();Xr();Yi();ni();Us();G();Z();le();Be();Pc=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],gS=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...ks,...Wn.flatMap(({name:e,label:t})=>[...Pc,["source","s\
ource"],["standing","reliability"]].map(([n,s])=>({name:`${e}.${n}`,label:`${t}: ${s.toLowerCase()}`}))),...Wn]});var D$={};ne(D$,{show:()=>wS});async function wS(e){let t=_a(e.params.kind);return t?e.params.tool===Ec&&!ge(ce[t])?
(e.title(`New ${nn[t].one}`),e.render(ga(ce[t])),e.ready()):t==="metals"?I$(e,Nc(t,e)):_S(e,t):(e.render(ke("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready())}async function _S(e,t){let n=nn[t],s=Nc(
t,e),o=ge(ce[t]),a=null,r=await Zs({...s,blank:bS[t],boxes:[{name:"code",label:"Code"},...cn(t)],toDraft:c=>({
code:String(c.code??""),...Pa(t,c)}),fromDraft:(c,d)=>({...Ca(t,c,d),code:c.code.trim()}),preview:o?Qr(n.one,c=>{
a=c,r.show()},e.signal):void 0,draw:()=>r&&l()},e.signal);if(!r.state.kept&&!s.isNew)return e.title("Not in th\
e crib"),e.render(ke(`No ${n.one} ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${t}">${n.
title}</a>`)),e.ready();e.title(s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=Zr(r.state.kept));function l(){
let{state:c,change:d}=r;e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${t}">${n.title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${c.kept?.name}</span>`}
        </h1>
        ${c.clash?Hs(c.clash,n.one,{saveMine:r.save,takeTheirs:r.takeTheirs}):h}
        <form
          novalidate
          @submit=${p=>{p.preventDefault(),r.save()}}>
          ${Qs(ce[t],oi({kind:t,draft:c.draft,change:d,wrong:c.wrong,preview:a,reader:r.reader,first:s.isNew?ei(
r,s):h}))}
          ${ti(r,s,n.one)}
        </form>`)}l(),e.ready()}var bS,F$=g(()=>{y();fe();Bt();Xr();R$();xc();Te();Us();ni();le();Be();Ac();W$();
bS={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"unkno\
wn",up:1},holders:{shape:"block",condition:"unknown"}}});var U$={};ne(U$,{show:()=>vS});async function vS(e){e.title("Crew");let{signal:t}=e,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>e.render(xS(n,o)),o=kS(n,s,
t),[a,r,l]=await Promise.all([M("GET","/devices",{signal:t}),M("GET","/crew-options",{signal:t}),Sn(t).then(({
network:d})=>d?M("GET","/join",{signal:t}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),e.ready();let c=setInterval(o.look,yS);t.addEventListener("abort",()=>clearInterval(
c))}function kS(e,t,n){let s=async a=>{e.fault="";try{await a()}catch(r){if(n.aborted)return;e.fault=oa(r)}t()};
async function o(){if(document.visibilityState!=="visible")return;let a=await M("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;e.devices=a.body.devices;let r=e.offer&&e.devices.find(l=>!e.known.has(
l.id)&&!l.revoked_at);r?Object.assign(e,{came:r,offer:null,name:""}):e.offer&&Date.parse(e.offer.expires_at)<=
Date.now()&&(e.offer=null),t()}return{look:o,draw:t,offer:()=>s(async()=>{let{body:a}=await M("POST","/pairing\
s",{body:{role:e.role,name:e.name.trim()},signal:n});Object.assign(e,{offer:a,came:null,known:new Set(e.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Remove ${a.name}? It can read nothing any more, and its cards\
 go from it when it next asks.`)&&(await M("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await M("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await M(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),e.open=a})}}function xS(e,t){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${e.fault?i`<p class="wrong" role="alert" data-test="fault">${e.fault}</p>`:h}
    ${e.joining?i`<div class="crew-grid">${TS(e,t)}${MS(e.joining)}</div>`:SS()}
    <section class="panel" data-test="devices">
      <h2>Devices in the shop</h2>
      ${OS(e,t)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${X({name:"labels-open",label:"A device that is not paired",value:e.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>t.setOpen(n==="open")})}
    </section>`}function TS(e,t){let{offer:n,came:s}=e;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${et[n.role].word}${n.name?i`: <b>${n.name}</b>`:h}. Works once, until
        ${re(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${H$(n.qr)} />
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
            ${k("ok","Paired")} <b>${s.name}</b> is in, as ${et[s.role].word.toLowerCase()}.
          </p>`:h}
    ${X({name:"role",label:"As",value:e.role,options:j$,change:o=>{e.role=o,t.draw()}})}
    <p class="hint" data-test="role-does">${et[e.role].word}: ${et[e.role].does}.</p>
    ${L({name:"device-name",label:"Whose?",value:e.name,placeholder:"Ann's phone",change:o=>e.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${t.offer}>
      Show a pairing code
    </button>
  </section>`}function MS(e){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${H$(e.qr)} />
    <p>${e.shop}: ${e.https.map(t=>i`<span class="address">${t}</span> `)}</p>
    ${e.http.length?i`<p class="hint">Or type <span class="address">${e.http[0]}/join</span></p>`:h}
    ${e.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${AS(e.fingerprint)}</p>`:h}
  </section>`}function OS({devices:e},t){return e.length?i`<ul class="plain-list devices">
    ${e.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:h}
            <span class="soft"
              >${n.revoked_at?`removed ${re(n.revoked_at)}`:`last seen ${re(n.seen_at)}`},
              paired ${re(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${k("stop","Removed")}</p>`:i`${K({name:`role-${n.id}`,label:`Role of ${n.name}`,
value:n.role,options:j$,change:s=>t.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>t.revoke(n)}>
                    Remove…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var yS,j$,SS,H$,AS,G$=g(()=>{y();F();Tn();
G();Z();Ke();yS=2e3,j$=Object.entries(et).map(([e,{word:t}])=>[e,t]);SS=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;H$=e=>`data:image/svg+xml,${encodeURIComponent(e)}`,AS=e=>e.replace(/(.{4})(?=.)/g,"$1 ")});var ii,Cc=g(()=>{y();ii=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop; what still waits to be sent does not, so open Flangebook in the shop’s network first. Some phones ask
  each time before the camera may be used.
</p>`});var q$={};ne(q$,{show:()=>LS});async function LS(e){e.title("Pair this device"),e.render(Me("Asking the shop…"));
let t={me:null,code:ES(),name:B().name,fault:"",asking:!1,waits:0},n=()=>e.render(NS(t,n));t.me=await Sn(e.signal).
catch(()=>null),t.waits=(await Ve().catch(()=>[])).length,n(),e.ready()}function ES(){if(location.pathname!=="\
/pair"||!location.hash)return"";let e=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),e}function NS(e,t){let{me:n}=e;return n?n.role?PS(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${V$[Yt()??n.why]?i`<p data-test="why">${k("caution","Not paired")} ${V$[Yt()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
    ${e.waits?i`<p data-test="waits">
            ${e.waits===1?"1 result":`${e.waits} results`} typed here still
            ${e.waits===1?"waits":"wait"}. Pair again and
            ${e.waits===1?"it is":"they are"} sent.
          </p>`:h}
    <ol class="ways">
      <li>The owner opens <b>Shop, Crew</b> on the shop's computer or a paired phone, and shows a code.</li>
      <li>Point this phone's camera at it, or type the eight characters here.</li>
    </ol>
    <form
      class="panel"
      novalidate
      @submit=${s=>{s.preventDefault(),BS(e,t)}}>
      ${L({name:"pair-code",label:"Pairing code",value:e.code,placeholder:"ABCD-1234",change:s=>e.code=s,wrong:e.
fault?[e.fault]:[]})}
      ${L({name:"pair-name",label:"Whose device is this?",value:e.name,placeholder:"Ann's phone",change:s=>e.name=
s,hint:"The owner sees this name in the list."})}
      <button class="button next wide" data-test="pair" ?disabled=${e.asking}>Pair this device</button>
    </form>
    ${n.way==="http"?i`<p data-test="plain-http">
            ${k("caution","Not encrypted")} This is plain http: whoever is in the network can listen.
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
    </div>`}function PS(e){let t=e.role;return e.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${k("ok",et[t].word)} <b>${e.name}</b>: ${et[t].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${ii}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${CS}>Unpair this device…</button>
    </p>
  </div>`}async function CS(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await Id()}async function BS(e,t){Object.assign(e,{asking:!0,fault:""}),t();try{await Rd(e.
code,e.name.trim()),U(),$e(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
e,{asking:!1,fault:oa(n)}),t()}}var V$,z$=g(()=>{y();Tn();Pe();Re();se();ye();G();Z();Cc();Be();V$={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function K$({show:e,done:t,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,d){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),e();try{if(o.size>IS)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");let p=await zo(`/import?${d}`,
o,"application/json",n,RS);s.told=p.body}catch(p){if(n.aborted)return;s.wrong=WS(p)}s.busy="",e(),s.told?.imported&&
t()}}return{state:s,choose:a,take:r}}function WS(e){if(!(e instanceof O))return[z(e)];let t=Object.entries(e.errors).
slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[e.message,...t]}var RS,IS,Y$=g(()=>{F();RS=3e5,IS=6e7});function Z$({state:e,choose:t,take:n}){let{name:s,busy:o,told:a,wrong:r}=e;return i`<section class="panel" data-test="panel-import">
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
      ${r.length?FS(s,r):h}
      ${a?a.imported?US(a):jS(s,a,n):h}
    </div>
  </section>`}function jS(e,t,n){return i`<div data-test="import-preview">
    <p><b>${e}</b>, exported ${re(t.exported_at)} by ${t.made_by}</p>
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">In the file</th>
          <th scope="col">In the shop now</th>
        </tr>
      </thead>
      <tbody>
        ${DS.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${X$(t.holds[s])}</td>
              <td>${X$(t.here[s])}</td>
            </tr>`)}
      </tbody>
    </table>
    ${t.untouched?i`<p>${k("ok","The shop is empty")}</p>
            <button type="button" class="button next wide" data-test="import-now" @click=${n}>
              Bring it in
            </button>`:i`<p>
              ${k("caution","Everything in the shop is replaced")} A backup of what is there now is made
              first.
            </p>
            <button
              type="button"
              class="button next wide"
              data-test="import-now"
              @click=${()=>HS(t)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var DS,J$,FS,X$,HS,US,Q$=g(()=>{y();G();Ke();DS=[["press","Press"],["tools","Tools"],["metals","Meta\
ls"],["cards","Cards"],["revisions","Revisions"],["trials","Results"],["test_bends","Test bends"]],J$=8;FS=(e,t)=>i`<div data-test="import-wrong">
    <p>${k("stop","Not brought in")} ${e}</p>
    <ul>
      ${t.slice(0,J$).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${t.length>J$?i`<p>There are more.</p>`:h}
    <p>Nothing in the shop was changed.</p>
  </div>`;X$=e=>e===""?"none":e,HS=({here:e,holds:t})=>confirm(`Replace the shop? Its ${e.cards} cards and ${e.
trials} results go, the file's ${t.cards} cards and ${t.trials} results come. A backup is made first.`),US=({holds:e,
kept_as:t})=>i`<div data-test="import-done">
    <p>${k("ok","Brought in")} ${e.cards} cards, ${e.trials} results.</p>
    ${t?i`<p>The shop that was there is kept as ${t}.</p>`:h}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var eb={};ne(eb,{show:()=>VS});async function VS(e){e.title("Backups and export");let t=K$({show:a,done:s,signal:e.
signal}),n=await o();async function s(){U(),n=await o(),a()}async function o(){let{body:r}=await M("GET","/bac\
kups",{signal:e.signal});return r}function a(){e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Backups and export</h1>
        <div class="settings-grid">
          ${qS(n)}
          <div class="stack">${YS()}${Z$(t)}</div>
        </div>`)}a(),e.ready()}function qS({standing:e,last_good_at:t,trouble:n,folder:s,backups:o}){return i`<section class="panel" data-test="panel-backups">
    <h2>Backups</h2>
    <p data-test="standing">${zS(e)}</p>
    ${t?i`<p class="lead-line" data-test="last-good">Last good backup: ${re(t)}</p>`:h}
    ${n?i`<p class="wrong" data-test="trouble">${re(n.at)}: ${n.words}</p>`:h}
    <p>
      The server makes one each night, looks it through, and keeps seven days and four weeks. Put one on
      another disk, too: a backup beside the shop burns with it.
    </p>
    ${o.length?i`<table data-test="backups">
            <thead>
              <tr>
                <th scope="col">Made</th>
                <th scope="col">How</th>
                <th scope="col">Size</th>
              </tr>
            </thead>
            <tbody>
              ${o.map(a=>i`<tr>
                    <td>${re(a.at)}</td>
                    <td>${GS[a.kind]}</td>
                    <td>${KS(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:h}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> restores one.
    </p>
  </section>`}function zS(e){return e==="ok"?k("ok","There is a good backup"):e==="late"?k("caution","The last\
 backup is over two days old"):e==="trouble"?k("stop","The last backup could not be made"):k("unknown","There \
is no backup yet")}function YS(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and results, as open JSON. Bring it in again here, or
      read it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var GS,KS,tb=g(()=>{y();F();Y$();ye();G();Q$();Ke();GS={night:"automatic","by-hand":"by hand",replaced:"\
before it was replaced"};KS=e=>`${(e/1e6).toFixed(1)} MB`});async function nb(e){let{code:t,part:n,title:s,note:o,created_by:a}=e,r={code:t,part:{...n,title:s},note:o,by:a},
{body:l}=await M("POST","/cards",{body:r,timeout:2e4}),c=$o(await ut(l),[]);await gt(c,pa(ds(e,["archived","se\
ttings"]),c),{reason:"Restored from a device"}),await Ld(e),await sa(t)}var sb=g(()=>{F();ps();an();Ce()});function ob(e){return e.length?i`<section class="panel" data-test="lost">
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
              ${R("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>JS(t)}>
                  Restore it
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>XS(t)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:h}async function JS(e){try{await nb(e),await U()}catch(t){Y(z(t))}}async function XS(e){confirm(
`Throw away the card ${I(e.code)}, ${e.title}? This device may have the only copy.`)&&(await sa(e.code),await ms())}
var ab=g(()=>{y();F();pe();at();sb();Ce();ye();le()});var lb={};ne(lb,{show:()=>ZS});async function ZS(e){e.title("Settings");let t={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([Kt().catch(()=>[]),Ve().catch(()=>[]),na().catch(()=>[])]);t=
{...t,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await M("GET","/cards?limit=1",{signal:e.signal,
timeout:4e3}).catch(()=>null);t={...t,total:a?.body?.total??null},o()}function o(){e.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${e1(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${t1(o)}
          </section>
          ${QS()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${n1(t.entries)}
          </section>
          ${ob(t.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${a1(t)} ${ii}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:e.signal}),await n(),e.ready(),await s()}function QS(){
let e=rs();return!e||e==="owner"?h:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${et[e].word}</b>: ${et[e].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function e1(e){let{units:t,inches:n}=B(),s=o=>{Gt(o),e()};return i`${X({name:"units",label:"Unit\
s",value:t,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${t==="inch"?X({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):h}
  ${X({name:"paper",label:"Paper",value:B().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${t==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:h}`}function t1(e){let{theme:t,name:n}=B();
return i`${X({name:"theme",label:"Theme",value:t,options:[["system","As the device"],["day","Day"],["shop","Sh\
op, dark"]],change:s=>{Gt({theme:s==="shop"||s==="day"?s:"system"}),e()}})}
  ${L({name:"name",label:"Your name",value:n,change:s=>Gt({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function n1(e){return e.length?i`<ul class="waiting-list">
      ${e.map(t=>i`<li data-test="waits-${t.id}">
            <p>
              <b>${ib(t)}</b> on <a href="/c/${t.code}">${I(t.code)}</a>,
              ${re(t.queued_at)} by this device’s clock
              ${t.body.note?i`<br /><span class="soft">${t.body.note}</span>`:h}
            </p>
            ${t.refused?i`<p data-test="refused">
                      ${k("caution","Refused")} ${t.missing?`${Fo(t)}.`:""}
                      ${t.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>s1(t)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>o1(t)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${Fo(t)}. It is sent when the shop's server
                    ${t.late?"takes it":"answers"}.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>U()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every result, note and edit typed here is saved in the shop.
    </p>`}function ib({kind:e,body:t}){if(e==="trial")return`${Ut(t)}, step ${t.step}`;if(e==="note")return"No\
te";let n=Object.keys(t).filter(s=>s in rb).map(s=>rb[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was resolved"}async function s1(e){await yd(e.id),await U()}async function o1(e){confirm(`Throw away ${ib(e)} \
on ${I(e.code)}? It cannot be brought back.`)&&(await Qo(e.id),await ms())}function a1({cards:e,total:t}){let{
reached:n,at:s}=tt(),o=t!==null&&e>=t,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${e}${t===null?h:` of ${t}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${s?re(s):"not since this page was opened"}</dd>
      </div>
    </dl>
    <p>
      ${o?k("ok","Every card is here"):t===null?k("unknown","Not known: no answer from the shop"):k("caution",
"Still fetching")}
    </p>
    <p data-test="app-kept">
      ${a?k("ok","The app opens without network"):i`${k("caution","The app needs the network")}
            ${"serviceWorker"in navigator?"It is still being kept.":"This browser keeps apps only over https o\
r on the shop's own computer."}`}
    </p>
    ${n===!1?i`<p>${k("caution","Not connected now")}</p>`:h}
    <button type="button" class="button" data-test="check-now" @click=${()=>U()}>Look again</button>`}var rb,cb=g(
()=>{y();F();Tn();pe();Pe();Te();se();Ce();ye();G();Z();Cc();Vs();ab();bn();Ke();rb={title:"title",note:"note",
archived:"in use or archived",settings:"settings"}});Tn();Di();Re();var db={home:()=>Promise.resolve().then(()=>(Ph(),Nh)),bend:()=>Promise.resolve().then(()=>(Rp(),Bp)),"press-s\
creen":()=>Promise.resolve().then(()=>(Cu(),Pu)),part:()=>Promise.resolve().then(()=>(ef(),Qm)),scan:()=>Promise.resolve().then(()=>(vf(),yf)),
card:()=>Promise.resolve().then(()=>(Rf(),Bf)),step:()=>Promise.resolve().then(()=>(Ff(),Df)),result:()=>Promise.resolve().then(()=>(eg(),Qf)),
history:()=>Promise.resolve().then(()=>(lg(),ig)),note:()=>Promise.resolve().then(()=>(dg(),cg)),resolve:()=>Promise.resolve().then(()=>(pg(),hg)),
print:()=>Promise.resolve().then(()=>(gg(),fg)),label:()=>Promise.resolve().then(()=>(wg(),bg)),labels:()=>Promise.resolve().then(()=>(yg(),_g)),
chart:()=>Promise.resolve().then(()=>(Sg(),xg)),shop:()=>Promise.resolve().then(()=>(Ng(),Eg)),press:()=>Promise.resolve().then(()=>(n$(),t$)),
"test-bend":()=>Promise.resolve().then(()=>(A$(),O$)),learned:()=>Promise.resolve().then(()=>(P$(),N$)),tools:()=>Promise.resolve().then(()=>(B$(),C$)),
tool:()=>Promise.resolve().then(()=>(F$(),D$)),crew:()=>Promise.resolve().then(()=>(G$(),U$)),pair:()=>Promise.resolve().then(()=>(z$(),q$)),
backups:()=>Promise.resolve().then(()=>(tb(),eb)),settings:()=>Promise.resolve().then(()=>(cb(),lb))};se();ye();at();async function pb(){if("serviceWorker"in navigator)try{let e=await navigator.serviceWorker.register("/sw.\
js");e.waiting&&hb(e.waiting),e.addEventListener("updatefound",()=>{let t=e.installing;t?.addEventListener("st\
atechange",()=>{t.state==="installed"&&navigator.serviceWorker.controller&&hb(t)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(e){console.
warn("The app could not be kept on this device:",e)}}function hb(e){Y("A newer Flangebook is here. It opens wh\
en you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),e.postMessage("take over")}})}to();_e(()=>to());document.addEventListener("sync",()=>Qt());document.addEventListener("held",()=>Qt());document.
addEventListener("storage",e=>{Qt(),!e.detail.silent&&(document.documentElement.dataset.ready==="failed"&&Et(),
U())});document.addEventListener("turned-away",()=>{Qt(),document.documentElement.dataset.screen!=="pair"&&Et()});
document.addEventListener("rights",()=>{Yt()===null&&document.documentElement.dataset.screen!=="pair"&&gh()});
Wd();$h(db).finally(()=>{dh(),pb()});
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
