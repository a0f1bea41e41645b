var lb=Object.defineProperty;var f=(e,t,n)=>()=>{if(n)throw n[0];try{return e&&(t=e(e=0)),t}catch(s){throw n=[s],s}};var ne=(e,t)=>{for(var n in t)lb(e,n,{get:t[n],enumerable:!0})};function Ys(e){let t=e.split("/").filter(Boolean);t[0]?.toLowerCase()==="c"&&(t[0]="c");for(let n of Nc){let s=cb(
n.path.split("/").filter(Boolean),t);if(s)return{route:n,params:s}}}function cb(e,t){if(e.length!==t.length)return;
let n={};for(let[s,o]of e.entries()){if(!o.startsWith(":")){if(o!==t[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(
t[s])}catch{return}}return n}var Nc,Pc,ai=f(()=>{Nc=[{name:"home",path:"/"},{name:"bend",path:"/bend",needs:"b\
ends.bend"},{name:"bench",path:"/bench",floor:!0},{name:"part",path:"/part",needs:"parts.plan"},{name:"scan",path:"\
/scan",floor:!0},{name:"card",path:"/c/:code",floor:!0},{name:"step",path:"/c/:code/step/:step",floor:!0},{name:"\
trial",path:"/c/:code/trial/:step",floor:!0,needs:"trials.keep"},{name:"history",path:"/c/:code/history"},{name:"\
note",path:"/c/:code/note",floor:!0,needs:"cards.change"},{name:"settle",path:"/c/:code/settle",floor:!0,needs:"\
cards.revise"},{name:"print",path:"/c/:code/print"},{name:"label",path:"/c/:code/label"},{name:"labels",path:"\
/labels",needs:"labels.sheet_json"},{name:"chart",path:"/chart",needs:"bends.chart"},{name:"shop",path:"/shop"},
{name:"press",path:"/shop/press"},{name:"test-bend",path:"/shop/test-bend",floor:!0,needs:"evidence.keep"},{name:"\
learned",path:"/shop/learned/:metal",needs:"evidence.learned"},{name:"tools",path:"/shop/:kind"},{name:"tool",
path:"/shop/:kind/:tool"},{name:"crew",path:"/crew",needs:"crew.listed"},{name:"pair",path:"/pair"},{name:"cop\
ies",path:"/copies",needs:"copies.listed"},{name:"settings",path:"/settings"}],Pc=e=>Nc.find(t=>t.name===e)});function db(){try{let e=JSON.parse(localStorage.getItem(Rc)??"null");return e?.refused?e:Cc}catch{return Cc}}function xt(e){
let t=Ys(e.split("?")[0])?.route.needs;return!t||ge(t)}function Ic({role:e,refused:t={}}){let n=JSON.stringify(
{role:e,refused:t});if(n===JSON.stringify(es))return!1;es={role:e,refused:t};try{localStorage.setItem(Rc,n)}catch{}
return!0}function Wc(e){e&&e!==es.role&&document.dispatchEvent(new CustomEvent("other-role"))}var Rc,Cc,es,ts,
ge,Bc,Me=f(()=>{ai();Rc="flangebook.rights",Cc={role:"owner",refused:{}},es=db();ts=()=>es.role,ge=e=>!Object.
hasOwn(es.refused,e);Bc=e=>es.refused[e]??"owner"});function hb(){try{return{...Dc,...JSON.parse(localStorage.getItem(Fc)??"{}")}}catch{return{...Dc}}}function R(){
return mn}function Dt(e){mn={...mn,...e};try{localStorage.setItem(Fc,JSON.stringify(mn))}catch{}Js();for(let t of ri)
t(mn)}function _e(e,t){ri.add(e),t?.addEventListener("abort",()=>ri.delete(e))}function Js(){let e=jc.matches?
"shop":"day";document.documentElement.dataset.theme=mn.theme==="system"?e:mn.theme}var Fc,Dc,ri,mn,jc,se=f(()=>{
Fc="flangebook.settings",Dc={units:"mm",inches:"decimal",theme:"system",name:"",paper:"A4"},ri=new Set,mn=hb();
jc=matchMedia("(prefers-color-scheme: dark)");jc.addEventListener("change",Js)});function Q(e,t){let n=e.toFixed(t);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(e,t={}){
return e==null?{text:"–",unit:""}:je()?R().inches==="fraction"?{text:ub(e/Ye),unit:"in"}:{text:Q(e/Ye,(t.digits??
1)+2),unit:"in"}:{text:Q(e,t.digits??1),unit:"mm"}}function ub(e){let t=Math.round(Math.abs(e)*64),n=t%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(t/64),a=e<0&&t>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function he(e,{up:t=!1}={}){if(e==null)return{text:"–",unit:""};let n=je()?e/Ho:e,s=Math.abs(
n)<10?1:0;return{text:Q(t?Gc(n,s):n,s),unit:je()?"tons":"kN"}}function Ee(e,{up:t=!1}={}){if(e==null)return{text:"\
–",unit:""};let n=je()?e/Ho*Uc:e,s=Math.abs(n)<20?1:0;return{text:Q(t?Gc(n,s):n,s),unit:je()?"tons/ft":"kN/m"}}
function Gc(e,t){let n=10**t;return Math.ceil(e*n-1e-9)/n}function S(e,t=1){return e==null?{text:"–",unit:""}:
{text:Q(e,t),unit:"°"}}function Zs(e){if(e==null)return{text:"–",unit:""};let t=je()?e/pb:e;return{text:Q(t,
t<10?2:1),unit:je()?"lb":"kg"}}function Ft(e,t){if(/_(low|high)$/.test(e))return Ft(e.replace(/_(low|high)$/,""),
t);if(e.endsWith("_kn_per_m"))return Ee(t);if(e.endsWith("_mm_s")){let s=w(t,{digits:0});return{text:s.text,unit:`${s.
unit}/s`}}if(e.endsWith("_mm"))return w(t,{digits:Math.abs(t)<10?2:1});if(e.endsWith("_kn"))return he(t);if(e.
endsWith("_deg"))return S(t);if(e.endsWith("_kg"))return Zs(t);if(e.endsWith("_percent"))return{text:Q(t,0),unit:"\
%"};let n=Math.abs(t)<10?100:Math.abs(t)<100?10:1;return{text:String(Math.round(t*n)/n),unit:""}}function g(e){
return e.unit==="°"?`${e.text}°`:`${e.text} ${e.unit}`.trim()}function re({text:e,unit:t}){return g({text:t===
"in"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,""),unit:t})}function He(e,t){return e.replace(/\{(\w+)\}/g,
(n,s)=>s in t?re(Ft(s,t[s])):n)}function jt(){return je()?{unit:"tons",size:Ho}:{unit:"kN",size:1}}function fn(){
return je()?{unit:"tons/ft",size:Ho/Uc}:{unit:"kN/m",size:1}}function ii(e,{size:t}){return e==null?"":String(
t===1?e:Number((e/t).toFixed(4)))}function Xs(e,{unit:t}){let n=Uo(e);return Vc.test(n)?`${n} ${t}`.replace(" \
tons"," short tons"):n.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i,(s,o,a="")=>{let r=a?a.includes("ft"):je();
return`${o}${r?"short tons":"t"}${a}`})}function C(){return je()?"in":"mm"}function te(e,t=C()){let n=Uo(e);return Vc.
test(n)||t==="in"&&qc.test(n)?`${n} ${t}`:n}function Uo(e){let t=e.trim();return zc.test(t)?t:t.replace(/^([+-]?\d+),(\d+)(?![\d.,])/,
"$1.$2")}function Kc(e,t=C()){let n=e.trim(),[,s,o,a]=zc.exec(n)??[];return s?[String(+`${s}.${o}`),`${s}${o}`].
map(l=>a?`${l} ${a}`:l):t==="mm"&&qc.test(n)?[`${n} in`]:[]}function Yc(e){let[,t,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.
exec(e??"")??[];return t?Number(t)*(n==="in"?Ye:1):null}function z(e){if(e==null)return"";let t=je()?e/Ye:e;return String(
Number(t.toFixed(je()?4:3)))}var Ye,Ho,Hc,pb,Uc,je,Vc,zc,qc,A=f(()=>{se();Ye=25.4,Ho=8.896443230521,Hc=9.80665,
pb=.45359237,Uc=.3048,je=()=>R().units==="inch";Vc=/^[+-]?(\d+\.?\d*|\.\d+)$/,zc=/^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/,
qc=/^(\d+[\s-]+)?\d+\s*\/\s*\d+$/});async function M(e,t,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return Jc(e,t,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function Go(e,t,n,s,o=2e4){
return Jc("POST",e,t,{type:n,signal:s,timeout:o})}async function Jc(e,t,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let h=AbortSignal.
timeout(l),p=performance.now(),u;try{u=await fetch(`/api/v1${t}`,{method:e,headers:c,body:n,signal:r?AbortSignal.
any([r,h]):h,cache:"no-store"})}catch($){throw r?.aborted?$:new j}if(Wc(u.headers.get("Flangebook-Role")),!u.ok&&
u.status!==304)throw await li(u,p);let m=mb.includes(u.status)?null:await fb(u,r);return{status:u.status,body:m,
etag:u.headers.get("ETag"),at:bb(u)}}async function fb(e,t){try{return await e.json()}catch(n){throw t?.aborted?
n:new j}}async function li(e,t=1/0){let n=await e.json().catch(()=>null);if(!n?.status)throw new j;let s=new O(
n);return gb(s,t),s}function gb({status:e,errors:t},n){e===401&&t.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:t.pairing[0],asked:n}})),e===403&&t.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function Zc(e,t,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${e}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await li(c);for await(let h of $b(c.body,l)){let p=JSON.
parse(h);if(p.problem)throw new O(p.problem);if(!p.progress)return p;s(p.progress)}throw new j}catch(c){throw n.
aborted||c instanceof O?c:new j}finally{clearTimeout(r)}}async function*$b(e,t){let n=e.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;t();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function Xc(e,t,n){let s;try{let a=await fetch(`/a\
pi/v1${e}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await li(a);s=await a.blob()}catch(a){throw a instanceof O?a:new j}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var O,j,Z,mb,bb,F=f(()=>{Me();A();O=class extends Error{constructor(t){let n=t.said?He(t.said.template,
t.said.numbers):"";if(super(n||t.detail||t.title),this.status=t.status,this.title=t.title,this.errors=t.errors??
{},n)for(let s of Object.keys(this.errors))this.errors[s]=[n];this.outline=t.outline??null}},j=class extends Error{constructor(){
super("The shop's server does not answer.")}},Z=e=>e instanceof Error?e.message:String(e);mb=[204,304];bb=e=>new Date(
e.headers.get("Date")??Date.now()).toISOString()});function wb(){return Qc||(Qc=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function _b(){return ed||
(ed=["advance","continue","continuePrimaryKey"].map(e=>IDBCursor.prototype[e]))}function yb(e){let t=new Promise(
(n,s)=>{let o=()=>{e.removeEventListener("success",a),e.removeEventListener("error",r)},a=()=>{n(gn(e.result)),
o()},r=()=>{s(e.error),o()};e.addEventListener("success",a),e.addEventListener("error",r)});return Vo.set(t,e),
t}function vb(e){if(pi.has(e))return;let t=new Promise((n,s)=>{let o=()=>{e.removeEventListener("complete",a),
e.removeEventListener("error",r),e.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(e.error||new DOMException(
"AbortError","AbortError")),o()};e.addEventListener("complete",a),e.addEventListener("error",r),e.addEventListener(
"abort",r)});pi.set(e,t)}function od(e){ui=e(ui)}function kb(e){return _b().includes(e)?function(...t){return e.
apply(mi(this),t),gn(this.request)}:function(...t){return gn(e.apply(mi(this),t))}}function xb(e){return typeof e==
"function"?kb(e):(e instanceof IDBTransaction&&vb(e),hi(e,wb())?new Proxy(e,ui):e)}function gn(e){if(e instanceof
IDBRequest)return yb(e);if(ci.has(e))return ci.get(e);let t=xb(e);return Object.is(t,e)||(ci.set(e,t),Vo.set(t,
e)),t}function ad(e,t,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(e,t),l=gn(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(gn(r.result),c.oldVersion,c.newVersion,gn(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",h=>o(h.oldVersion,h.newVersion,h))}).catch(()=>{}),l}function td(e,t){if(!(e instanceof IDBDatabase&&
!(t in e)&&typeof t=="string"))return;if(di[t])return di[t];let n=t.replace(/FromIndex$/,""),s=t!==n,o=Tb.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||Sb.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),h=c.store;return s&&(h=h.index(l.shift())),(await Promise.all([h[n](...l),
o&&c.done]))[0]};return di[t]=a}async function*Ab(...e){let t=this;if(t instanceof IDBCursor||(t=await t.openCursor(
...e)),!t)return;t=t;let n=new Proxy(t,Ob);for(rd.set(n,t),Vo.set(n,mi(t));t;)yield n,t=await(fi.get(n)||t.continue()),
fi.delete(n)}function sd(e,t){return t===Symbol.asyncIterator&&hi(e,[IDBIndex,IDBObjectStore,IDBCursor])||t===
"iterate"&&hi(e,[IDBIndex,IDBObjectStore])}var hi,Qc,ed,pi,ci,Vo,ui,mi,Sb,Tb,di,Mb,nd,fi,rd,Ob,id=f(()=>{hi=(e,t)=>t.
some(n=>e instanceof n);pi=new WeakMap,ci=new WeakMap,Vo=new WeakMap;ui={get(e,t,n){if(e instanceof IDBTransaction){
if(t==="done")return pi.get(e);if(t==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return gn(e[t])},set(e,t,n){return e[t]=n,!0},has(e,t){return e instanceof IDBTransaction&&(t==="done"||t==="s\
tore")?!0:t in e}};mi=e=>Vo.get(e);Sb=["get","getKey","getAll","getAllKeys","count"],Tb=["put","add","delete",
"clear"],di={};od(e=>({...e,get:(t,n,s)=>td(t,n)||e.get(t,n,s),has:(t,n)=>!!td(t,n)||e.has(t,n)}));Mb=["advanc\
e","continue","continuePrimaryKey"],nd={},fi=new WeakMap,rd=new WeakMap,Ob={get(e,t){if(!Mb.includes(t))return e[t];
let n=nd[t];return n||(n=nd[t]=function(...s){fi.set(this,rd.get(this)[t](...s))}),n}};od(e=>({...e,get(t,n,s){
return sd(t,n)?Ab:e.get(t,n,s)},has(t,n){return sd(t,n)||e.has(t,n)}}))});function gi(){return ns??=ad("flangebook",Lb,{upgrade:(e,t,n,s)=>Nb(e,t,s),blocking:Eb,terminated:$i}).catch(e=>{
throw ns=void 0,e}),ns}function $i(){ns=void 0}async function Eb(){(await ns)?.close(),ns=void 0}async function Nb(e,t,n){
t<1&&(e.createObjectStore("cards",{keyPath:"code"}),e.createObjectStore("list",{keyPath:"code"}),e.createObjectStore(
"meta"),e.createObjectStore("outbox",{keyPath:"id"})),t<2&&(e.createObjectStore("sent",{keyPath:"id"}),e.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),t===1&&await Pb(n))}async function Pb(e){
let t=e.objectStore("outbox"),s=(await t.getAll()).sort((a,r)=>a.queued_at<r.queued_at?-1:1),o=0;for(let{trial:a,
...r}of s)t.put({...r,kind:"trial",body:a,number:++o});e.objectStore("meta").put(o,"number"),e.objectStore("me\
ta").delete("cursor")}function Cb(e){return e instanceof DOMException?e.name==="QuotaExceededError"?"This devi\
ce is full: free some room on it.":"This browser lets nothing be kept here, as private windows do.":e instanceof
Error?e.message:String(e)}var Lb,ns,zo,bi=f(()=>{id();Lb=2;zo=class extends Error{constructor(t){super(Cb(t))}}});async function ss(e,t,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${e}`,{signal:AbortSignal.timeout(t)},o)}catch(a){if(s)throw a;return n()}}var qo=f(()=>{});function Ze(e,t){return hd(cd,n=>dd(e,"readonly",{},t,n))}function Ne(e,t,{patience:n=cd,durability:s="relaxed"}={}){
return hd(n,o=>ss("writer",n/2,()=>dd(e,"readwrite",{durability:s},t,o)))}async function dd(e,t,n,s,o){let a=await Ib(
e,t,n);!o.now&&t==="readwrite"&&(a.abort(),await a.done),o.transaction=a,Ko.add(a),a.done.catch(()=>{}).finally(
()=>Ko.delete(a));try{let r=await s(Bb(a));return t==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw _i(
a),a.error??r}}async function Ib(e,t,n){try{return(await gi()).transaction(e,t,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return $i(),(await gi()).transaction(e,t,n)}}function _i(e){try{e.abort()}catch{}}
async function hd(e,t){let n={now:!0},s=t(n);s.then(()=>pd(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new Je),$n?Rb:e)});try{return await Promise.race([s,a])}catch(r){throw r instanceof Je&&Wb(n),r}finally{
clearTimeout(o)}}function Wb(e){e.now=!1,e.transaction?.mode==="readwrite"&&_i(e.transaction),pd(!0)}function pd(e){
e!==$n&&($n=e,document.documentElement.dataset.storage=$n?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:$n}})))}var cd,Rb,Je,Ko,$n,wi,Qs,Bb,ld,Ht=f(()=>{bi();qo();cd=1e3,Rb=100,Je=class extends Error{constructor(){
super("This device's storage does not answer.")}},Ko=new Set,$n=!1,wi=!1,Qs=()=>$n;Bb=e=>({store:ld(e.objectStore(
e.objectStoreNames[0])),objectStore:t=>ld(e.objectStore(t))}),ld=e=>new Proxy(e,{get:(t,n)=>typeof e[n]=="func\
tion"?(...s)=>{let o=e[n](...s);return o?.catch?.(()=>{}),o}:e[n]});addEventListener("pagehide",()=>{wi||=Ko.size>
0;for(let e of Ko)_i(e)});addEventListener("pageshow",e=>{e.persisted&&wi&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:$n}})),wi=!1})});function Ue(){if(crypto.randomUUID)return crypto.randomUUID();let e=crypto.getRandomValues(new Uint8Array(16));
return e[6]=e[6]&15|64,e[8]=e[8]&63|128,[...e].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function md(e){try{return await Ne(["outbox","meta"],t=>jb(t,e),ud)}catch(t){throw new zo(
t)}}async function jb(e,t){let[n,s]=[e.objectStore("outbox"),e.objectStore("meta")],o=(await n.getAll()).sort(
yi).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...t,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function fd(){return Ne("meta",async({store:e})=>{let t=(await e.get(
"number")??0)+1;return e.put(t,"number"),t})}async function Ge(){return(await Ze("outbox",({store:e})=>e.getAll())).
sort(yi)}async function bn(e){return(await Ge()).filter(t=>t.code===e)}async function eo(e){return Ze("outbox",
({store:t})=>t.get(e))}async function Yo(e){return Ze("sent",({store:t})=>t.get(e))}async function wn(e,t){await Ne(
"outbox",async({store:n})=>{let s=await n.get(e);s&&n.put({...s,...t})},ud)}async function Jo(e){let t=await eo(
e);await Ne("outbox",({store:n})=>n.delete(e)),t?.after&&await Zo(e,t.after)}async function Zo(e,t,n=()=>!0){for(let s of await Ge())
s.after===e&&n(s)&&await wn(s.id,{after:t})}async function to(e,t,n=!1){let{again:s,refused:o,late:a,missing:r,
parked:l,...c}=e;try{await Ne(["outbox","sent"],h=>{h.objectStore("sent").put({...c,proposed:n,sent_at:e.sent_at??
t}),h.objectStore("outbox").delete(e.id)})}catch{await Ne("outbox",({store:h})=>h.delete(e.id))}}async function $d(e){
let t=Date.parse(e)-Db*Fb;await Ne("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at??
"")<t&&n.delete(s.id)})}async function bd(e){let[t,n]=[e.objectStore("outbox"),e.objectStore("sent")],s=(await n.
getAll()).sort(yi),o=await t.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...h}=r;a.has(
r.id)||t.put({...h,parked:c,again:!0,number:l-s.length})}),n.clear()}var Db,Fb,ud,yi,gd,Pe=f(()=>{bi();Ht();Db=
90,Fb=864e5,ud={durability:"strict"};yi=(e,t)=>e.number-t.number;gd=e=>wn(e,{refused:void 0})});async function st(e){return Ze("cards",({store:t})=>t.get(e))}async function Ut(){return(await Ze("list",({store:t})=>t.
getAll())).sort((t,n)=>t.updated_at<n.updated_at?1:-1)}async function dt(e){return Ne(["cards","list"],async t=>{
let n=await t.objectStore("cards").get(e.code);return n&&Ub(e,n)?n:(wd(t,e),e)})}function wd(e,t){e.objectStore(
"cards").put(t),e.objectStore("list").put(Gb(t))}function Gb(e){let{code:t,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:h,trials_total:p,proposals:u}=e,{metal:m,thickness_mm:$}=h,b=u?.length??0;
return{code:t,title:n,note:s,metal:m,thickness_mm:$,bends:h.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:p,archived:c,settle:b}}async function _d(){return Ze("list",({store:e})=>e.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function yd(){let e=["cards","list","meta","sent","lost"];await Ne(e,t=>{for(let n of e)
t.objectStore(n).clear()})}async function Xo(){return Ze("meta",({store:e})=>e.get("shop"))}async function vd(){
return Ze("meta",({store:e})=>e.get("cursor"))}async function kd(e){let t=e.reset||await Vb()?["outbox","sent",
"lost"]:[];await Ne(["cards","list","meta",...t],async n=>{e.reset&&(await zb(n),await bd(n));let s=new Set(t.
length?await n.objectStore("lost").getAllKeys():[]);for(let a of e.cards)wd(n,a),s.has(a.code)&&await qb(n,a);
let o=n.objectStore("meta");e.shop&&o.put(e.shop,"shop"),o.put(e.cursor,"cursor"),o.put(!!e.more,"more")},{patience:Hb})}
async function zb(e){let[t,n]=[e.objectStore("cards"),e.objectStore("lost")];for(let s of await t.getAll())n.put(
s);t.clear(),e.objectStore("list").clear()}async function qb(e,t){let n=await e.objectStore("lost").get(t.code);
e.objectStore("lost").delete(t.code);let s=new Set(t.trials.map(r=>r.id)),o=new Set(await e.objectStore("outbo\
x").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>e.objectStore("outbox").put(
xd(t.code,r,l-a.length)))}function xd(e,{number:t,received_at:n,correction:s,device:o,...a},r){return{id:a.id,
kind:"trial",code:e,body:a,number:r,queued_at:n,again:!0}}async function Sd(e){await Ne("outbox",({store:t})=>{
e.trials.forEach((n,s)=>{t.put({...xd(e.code,n,s-e.trials.length),missing:!0})})})}async function Qo(){return Ze(
["meta","lost"],async e=>await e.objectStore("meta").get("more")?[]:e.objectStore("lost").getAll())}async function ea(e){
await Ne("lost",({store:t})=>t.delete(e))}var Hb,Ub,Vb,Ce=f(()=>{Pe();Ht();Hb=2e4;Ub=(e,t)=>e.revision<t.revision||
e.revision===t.revision&&(e.trials_total<t.trials_total||e.proposals_total<t.proposals_total);Vb=async()=>await Ze(
"lost",({store:e})=>e.count())>0});function Ad(e){return no!==null&&e!=="pair"&&!(Md?.labels_open&&Kb.includes(e))}async function _n(e){vi+=1;try{
let{body:t}=await M("GET","/me",{signal:e,timeout:4e3});return Md=t,Ic(t)&&document.dispatchEvent(new CustomEvent(
"rights")),t}finally{vi-=1}}async function Ld(e){no!==e&&(no=e,await Promise.all([_n().catch(()=>null),yd().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function Ed(e,t){let{body:n}=await M(
"POST","/pair",{body:{code:e,name:t}});return R().name||Dt({name:n.name}),no=null,Od=performance.now(),await _n(),
n}async function Nd(){await M("POST","/leave",{}),await Ld("unknown")}function Pd(){document.addEventListener(
"not-paired",e=>{let{why:t,asked:n}=e.detail;n>Od&&Ld(t)}),document.addEventListener("other-role",Td),ts()!=="\
owner"&&Td()}function Td(){vi||_n().catch(()=>null)}var Xe,Kb,Md,no,Od,vi,Gt,ta,yn=f(()=>{F();Me();Ce();se();Xe=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Press\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},Kb=["\
card","step"],Md=null,no=null,Od=-1/0,vi=0,Gt=()=>no;ta=e=>Z(e)});function Ud(e,t){if(!Mi(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Rd!==
void 0?Rd.createHTML(t):t}function Sn(e,t,n=e,s){if(t===ht)return t;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=ao(t)?
void 0:t._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(e),o._$AT(e,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(t=Sn(e,o._$AS(e,t.values),o,s)),t}var xi,Cd,na,Rd,Si,
St,Ti,Yb,xn,oo,ao,Mi,jd,ki,so,Bd,Id,vn,Wd,Dd,Hd,Oi,i,x,v1,ht,d,Fd,kn,Gd,ro,sa,os,Tn,oa,aa,ra,ia,Vd,Jb,Vt,y=f(()=>{
xi=globalThis,Cd=e=>e,na=xi.trustedTypes,Rd=na?na.createPolicy("lit-html",{createHTML:e=>e}):void 0,Si="$lit$",
St=`lit$${Math.random().toFixed(9).slice(2)}$`,Ti="?"+St,Yb=`<${Ti}>`,xn=document,oo=()=>xn.createComment(""),
ao=e=>e===null||typeof e!="object"&&typeof e!="function",Mi=Array.isArray,jd=e=>Mi(e)||typeof e?.[Symbol.iterator]==
"function",ki=`[ 	
\f\r]`,so=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Bd=/-->/g,Id=/>/g,vn=RegExp(`>|${ki}(?:([^\\s"'\
>=/]+)(${ki}*=${ki}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Wd=/'/g,Dd=/"/g,Hd=/^(?:script|style|textarea|title)$/i,Oi=e=>(t,...n)=>({_$litType$:e,
strings:t,values:n}),i=Oi(1),x=Oi(2),v1=Oi(3),ht=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),Fd=new WeakMap,
kn=xn.createTreeWalker(xn,129);Gd=(e,t)=>{let n=e.length-1,s=[],o,a=t===2?"<svg>":t===3?"<math>":"",r=so;for(let l=0;l<
n;l++){let c=e[l],h,p,u=-1,m=0;for(;m<c.length&&(r.lastIndex=m,p=r.exec(c),p!==null);)m=r.lastIndex,r===so?p[1]===
"!--"?r=Bd:p[1]!==void 0?r=Id:p[2]!==void 0?(Hd.test(p[2])&&(o=RegExp("</"+p[2],"g")),r=vn):p[3]!==void 0&&(r=
vn):r===vn?p[0]===">"?(r=o??so,u=-1):p[1]===void 0?u=-2:(u=r.lastIndex-p[2].length,h=p[1],r=p[3]===void 0?vn:p[3]===
'"'?Dd:Wd):r===Dd||r===Wd?r=vn:r===Bd||r===Id?r=so:(r=vn,o=void 0);let $=r===vn&&e[l+1].startsWith("/>")?" ":"";
a+=r===so?c+Yb:u>=0?(s.push(h),c.slice(0,u)+Si+c.slice(u)+St+$):c+St+(u===-2?l:$)}return[Ud(e,a+(e[n]||"<?>")+
(t===2?"</svg>":t===3?"</math>":"")),s]},ro=class e{constructor({strings:t,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=t.length-1,c=this.parts,[h,p]=Gd(t,n);if(this.el=e.createElement(h,s),kn.currentNode=this.el.content,
n===2||n===3){let u=this.el.content.firstChild;u.replaceWith(...u.childNodes)}for(;(o=kn.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let u of o.getAttributeNames())if(u.endsWith(Si)){let m=p[r++],
$=o.getAttribute(u).split(St),b=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:b[2],strings:$,ctor:b[1]===
"."?oa:b[1]==="?"?aa:b[1]==="@"?ra:Tn}),o.removeAttribute(u)}else u.startsWith(St)&&(c.push({type:6,index:a}),
o.removeAttribute(u));if(Hd.test(o.tagName)){let u=o.textContent.split(St),m=u.length-1;if(m>0){o.textContent=
na?na.emptyScript:"";for(let $=0;$<m;$++)o.append(u[$],oo()),kn.nextNode(),c.push({type:2,index:++a});o.append(
u[m],oo())}}}else if(o.nodeType===8)if(o.data===Ti)c.push({type:2,index:a});else{let u=-1;for(;(u=o.data.indexOf(
St,u+1))!==-1;)c.push({type:7,index:a}),u+=St.length-1}a++}}static createElement(t,n){let s=xn.createElement("\
template");return s.innerHTML=t,s}};sa=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:s}=this.
_$AD,o=(t?.creationScope??xn).importNode(n,!0);kn.currentNode=o;let a=kn.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let h;c.type===2?h=new os(a,a.nextSibling,this,t):c.type===1?h=new c.ctor(a,c.name,c.strings,this,
t):c.type===6&&(h=new ia(a,this,t)),this._$AV.push(h),c=s[++l]}r!==c?.index&&(a=kn.nextNode(),r++)}return kn.currentNode=
xn,o}p(t){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(t,s,n),n+=s.strings.length-2):
s._$AI(t[n])),n++}},os=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,s,o){this.type=2,this.
_$AH=d,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Sn(this,t,n),ao(t)?t===d||t==null||t===""?(this.
_$AH!==d&&this._$AR(),this._$AH=d):t!==this._$AH&&t!==ht&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==
void 0?this.T(t):jd(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this.
_$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==d&&ao(this._$AH)?this._$AA.nextSibling.data=t:this.
T(xn.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:s}=t,o=typeof s=="number"?this._$AC(t):(s.el===
void 0&&(s.el=ro.createElement(Ud(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new sa(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(t){let n=Fd.get(t.strings);return n===void 0&&Fd.
set(t.strings,n=new ro(t)),n}k(t){Mi(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of t)
o===n.length?n.push(s=new e(this.O(oo()),this.O(oo()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){
let s=Cd(t).nextSibling;Cd(t).remove(),t=s}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},
Tn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,s,o,a){this.
type=1,this._$AH=d,this._$AN=void 0,this.element=t,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=d}_$AI(t,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)t=Sn(this,t,n,0),r=!ao(t)||t!==this._$AH&&t!==ht,r&&(this._$AH=t);else{let l=t,c,h;
for(t=a[0],c=0;c<a.length-1;c++)h=Sn(this,l[s+c],n,c),h===ht&&(h=this._$AH[c]),r||=!ao(h)||h!==this._$AH[c],h===
d?t=d:t!==d&&(t+=(h??"")+a[c+1]),this._$AH[c]=h}r&&!o&&this.j(t)}j(t){t===d?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,t??"")}},oa=class extends Tn{constructor(){super(...arguments),this.
type=3}j(t){this.element[this.name]=t===d?void 0:t}},aa=class extends Tn{constructor(){super(...arguments),this.
type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==d)}},ra=class extends Tn{constructor(t,n,s,o,a){super(
t,n,s,o,a),this.type=5}_$AI(t,n=this){if((t=Sn(this,t,n,0)??d)===ht)return;let s=this._$AH,o=t===d&&s!==d||t.capture!==
s.capture||t.once!==s.once||t.passive!==s.passive,a=t!==d&&(s===d||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},ia=class{constructor(t,n,s){
this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(t){
Sn(this,t)}},Vd={M:Si,P:St,A:Ti,C:1,L:Gd,R:sa,D:jd,V:Sn,I:os,H:Tn,N:aa,U:ra,B:oa,F:ia},Jb=xi.litHtmlPolyfillSupport;
Jb?.(ro,os),(xi.litHtmlVersions??=[]).push("3.3.3");Vt=(e,t,n)=>{let s=n?.renderBefore??t,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new os(t.insertBefore(oo(),a),a,void 0,n??{})}return o._$AI(
e),o}});function as(e,t=Kd){return Object.fromEntries(t.filter(n=>e[n]!==void 0).map(n=>[n,e[n]]))}function zd(e){return Array.
isArray(e)?[...e].sort((t,n)=>t.step-n.step).map(({step:t,set_angle_deg:n,punch_depth_mm:s})=>[t,n??null,s??null]):
e??null}function rs(e,t,n){let s=[];for(let[l,c]of Zb){let[h,p]=[e[l],t[l]];h!==void 0&&!la(h,n[l])&&s.push({name:l,
label:c,shop:n[l],yours:h,before:p})}if(!e.settings)return s;let[o,a,r]=[e.settings,t.settings??[],n.settings].
map(Yd);for(let l of new Set([...o.keys(),...a.keys()])){let[c,h,p]=[o.get(l),a.get(l),r.get(l)];qd(c,h)||qd(c,
p)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,shop:p,yours:c,before:h})}return s}function Jd(e,t,n){
let s={},o=e.filter(l=>t[l.name]==="yours");for(let l of o)l.name.startsWith("settings ")||(s[l.name]=l.yours);
let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)return s;let r=Yd(n.settings);for(let l of a){let c=Number(
l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(c)}return{...s,settings:[...r.values()]}}var Kd,la,ca,
Ai,Zb,Yd,qd,is=f(()=>{Kd=["title","note","archived","settings"];la=(e,t)=>JSON.stringify(zd(e))===JSON.stringify(
zd(t));ca=(e,t)=>as(e,Kd.filter(n=>n in e&&!la(e[n],t[n]))),Ai=({before:e={}},t)=>Object.keys(e).every(n=>la(e[n],
t[n])),Zb=[["title","Title"],["note","Note"],["archived","In use"]];Yd=e=>new Map(e.map(t=>[t.step,t])),qd=(e,t)=>la(
e?[e]:[],t?[t]:[])});async function da(e){Li.add(e.id);try{return await Zd(e)}finally{Li.delete(e.id)}}async function Zd(e){let t;try{
t=await md(e)}catch(n){let s=await tw(e);return s||(await ew(n),Zd(e))}try{return await Qd(t,4e3)??{where:"her\
e",answer:null}}catch(n){let s=n instanceof j||n instanceof Je;if(!s&&Ni(n))throw await Jo(t.id),n;return{where:"\
here",answer:null,late:s?"":await sh(t,n)}}}async function ew(e){Ei.add(e),document.dispatchEvent(new CustomEvent(
"held")),await new Promise(t=>{setTimeout(t,Xb),document.addEventListener("storage",t,{once:!0})}),Ei.delete(e),
document.dispatchEvent(new CustomEvent("held"))}async function tw(e){try{let{body:t}=await th({...e,number:0,queued_at:""},
8e3);return{where:"shop",answer:t}}catch(t){if(t instanceof j||!Ni(t))return null;throw t}}async function Xd(){
return ss("outbox",Qb,nw)}async function nw(){let e=0;for(let{id:t}of await Ge()){if(Li.has(t))continue;let n=await eo(
t);if(!(!n||!await sw(n)))try{await Qd(n,8e3)&&(e+=1)}catch(s){if(s instanceof j)break;Ni(s)?await wn(n.id,{refused:s.
message,missing:s.status===404}):await sh(n,s)}}return{sent:e,left:(await Ge()).length}}async function Qd(e,t){
if(!await ow(e))return null;let n=await eo(e.id)??e;try{let s=await(n.parked?nh(n,t):th(n,t));return await eh(
n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof O&&s.status===412)||n.parked)throw s;
return aw(n,t)}}async function ow({id:e,code:t,after:n,before:s,parked:o}){if(!n||o)return!0;if(await eo(n))return!1;
if(!(await Yo(n))?.proposed)return!0;let a=await st(t);return!a||a.proposals?.some(r=>r.id===n)?!1:(await wn(e,
Ai({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function aw(e,t){if(e.body.part)throw new O(rw);
let{body:n,at:s}=await M("GET",`/cards/${e.code}`,{timeout:t});await dt(n);let o=(e.body.settles??[]).some(l=>n.
proposals.some(c=>c.id===l));if(o||!rs(e.body,e.before??{},n).length)return await to(e,s),await Zo(e.id,n.revision_id,
l=>Ai(l,n)),{where:o?"settle":"shop",answer:n};let a={...e,parked:!0};await wn(e.id,{parked:!0});let r=await nh(
a,t);return await eh(a,r),{where:"settle",answer:r.body}}async function eh(e,{body:t,at:n}){if(e.kind!=="trial"){
let s=t;await dt(s).catch(()=>{}),!e.parked&&e.after&&s.revision_id===e.after&&await Zo(e.id,e.after)}await to(
e,n,!!e.parked),await $d(n)}function th({kind:e,code:t,id:n,body:s,after:o,etag:a,missing:r},l){return e==="tr\
ial"?M("POST",`/cards/${t}/trials`,{body:r?{...s,again:!0}:s,timeout:l}):M("PUT",`/cards/${t}`,{body:{...s,id:n,
...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function nh({id:e,code:t,body:n,before:s,revision:o,queued_at:a},r){
let{reason:l,by:c,settles:h,...p}=n,u={...l?{reason:l}:{},...c?{by:c}:{}};return M("POST",`/cards/${t}/proposa\
ls`,{body:{id:e,changes:p,before:s,revision:o,made_at:a,...u},timeout:r})}async function sh({id:e},t){if(!(t instanceof
O)||t.status<500)return"";let n=t.status===507?"The disk of the shop’s server is full: make room on it":t.title;
return await wn(e,{late:n}).catch(()=>{}),n}function Ni(e){if(!(e instanceof O))throw e;return e.status<500&&![
401,408,429].includes(e.status)}var Xb,Qb,Li,Ei,io,sw,rw,ls=f(()=>{F();is();Pe();Ce();Ht();qo();Xb=3e3,Qb=15e3;
Li=new Set;Ei=new Set,io=()=>[...Ei].at(-1)?.message??"";sw=async({refused:e,again:t,missing:n,code:s})=>!e||!!(t&&
n&&await st(s));rw={title:"Changed meanwhile",status:412,detail:"The part was changed here, the shop was resto\
red from an earlier backup, and the card was changed again since. Open the card and make the change anew."}});function Qe(){return zt}async function ha(e){let t=await Ge().catch(()=>[]),n=await Qo().catch(()=>[]);zt={...zt,
...e,waiting:t.length,words:Ci(t),late:t.find(s=>s.late&&!s.refused)?.late??"",settle:await lw(t).catch(()=>[]),
lost:n.length,refused:t.filter(s=>s.refused).length},document.documentElement.dataset.reached=String(zt.reached),
document.documentElement.dataset.settle=String(zt.settle.length),document.documentElement.dataset.waiting=String(
zt.waiting),document.dispatchEvent(new CustomEvent("sync",{detail:zt}))}function Ci(e){let n=[["trial","result"],
["note","note"],["edit","edit"]].map(([s,o])=>({word:o,many:e.filter(a=>a.kind===s).length})).filter(({many:s})=>s).
map(({word:s,many:o})=>`${o} ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):`${n.slice(0,-1).join(", ")} a\
nd ${n.at(-1)}`}async function lw(e){let t=(await _d()).flatMap(({code:n,settle:s})=>Array(s).fill(n));for(let n of e)
for(let s of n.body.settles??[])t.includes(n.code)&&t.splice(t.indexOf(n.code),1);return t}function qt(e,t){let n=e||
!!(t&&!(t instanceof j));n!==zt.reached&&ha({reached:n})}function cs(){return ha({})}function H(){return lo?(Pi=
!0,lo):(lo=cw().finally(()=>lo=void 0),lo)}async function cw(){do Pi=!1,await dw();while(Pi)}async function dw(){
try{await oh(),(await Xd()).sent>0&&await oh(),await ha({reached:!0,at:new Date().toISOString(),unkept:!1})}catch(e){
await ha(e instanceof j?{reached:!1}:e instanceof O?{reached:!0}:{unkept:!0}),!(e instanceof j||e instanceof O&&
e.status===401)&&!(e instanceof Je)&&console.warn("changes feed:",e)}}async function oh(){for(;await ss("feed",
iw,hw););}async function hw(){let e=await vd()??"",{body:t}=await M("GET",`/changes?since=${encodeURIComponent(
e)}`,{timeout:15e3});return await kd(t),t.more}function ah(){H(),addEventListener("online",()=>H()),addEventListener(
"offline",()=>H()),document.addEventListener("visibilitychange",()=>document.visibilityState==="visible"&&H()),
setInterval(()=>document.visibilityState==="visible"&&H(),1e4)}var iw,zt,lo,Pi,ve=f(()=>{F();Pe();ls();Ht();Ce();
qo();iw=3e3,zt={reached:null,waiting:0,words:"",late:"",refused:0,settle:[],lost:0,at:null,unkept:!1},Pi=!1});function Kt(){let e=location.pathname,t=n=>n==="/"?e==="/"||e==="/scan"||/^\/c\//i.test(e):e.startsWith(n);Vt(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${uw}<span>Flangebook</span></a>
        ${Gt()===null?i`<nav aria-label="Main">
                ${pw.filter(([n])=>xt(n)).map(([n,s])=>i`<a href=${n} aria-current=${t(n)?"page":"false"}>${s}</a>`)}
              </nav>`:d}
      </div>
      ${mw()}${fw()}${Gt()===null?gw():d}`,document.getElementById("masthead"))}function fw(){return io()?i`<p class="standing" data-test="held">
      ${io()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      Then it is saved automatically.
    </p>`:Qs()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${Qe().reached===!1?d:"Cards come from the shop."}
  </p>`:d}function gw(){let{reached:e,waiting:t,words:n,late:s,refused:o,settle:a,lost:r}=Qe(),l=a.filter(m=>xt(
`/c/${m}/settle`)),c=s?` ${s}.`:"",h=t?`${n} ${t===1?"waits":"wait"} to be sent.${c}`:"",p=Qs()?"":"Cards on t\
his device still open.",u=e===!1?`Not connected to the shop. ${p}`:"";return!u&&!h&&!l.length&&!r?d:i`<p class="standing" data-test="standing">
    ${u} ${h} ${o?i`<a href="/settings">${o} refused: look</a>`:d}
    ${l.length?i`<a href="/c/${l[0]}/settle" data-test="settle-count">${l.length} to resolve</a>`:d}
    ${r?i`<a href="/settings" data-test="lost-count"
            >${r===1?"1 card is":`${r} cards are`} not in the shop any more: look</a
          >`:d}
  </p>`}var pw,uw,mw,Ri=f(()=>{y();yn();Me();ls();Ht();ve();pw=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];uw=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,mw=()=>isSecureContext?d:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});function ho(e){return e.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function W(e){
return e.length>3?`${e.slice(0,3)}-${e.slice(3)}`:e}function me(e){let t=ho(e),n=[...t].filter(s=>!co.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:t,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return t.length>7?{code:t,whole:!1,
fault:`A card code has seven characters. This one has ${t.length}.`}:t.length<7?{code:t,whole:!1,fault:""}:ih(
t.slice(0,-1))!==t.at(-1)?{code:t,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:t,whole:!0,fault:""}}function Bi(){let e=crypto.getRandomValues(
new Uint8Array(6)),t=Array.from(e,n=>co[n%co.length]).join("");return t+ih(t)}function ih(e){let t=0,n=2;for(let s of e)
t^=rh(n,co.indexOf(s)),n=rh(n,2);return co[t]}function rh(e,t){let n=0;for(let s=t,o=e;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var co,pe=f(()=>{co="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});function pa(e){let t=ts()==="bench"?"This device is a press screen":"This device is an operator's",n=Bc(e)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${t}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var B,oe,ie=f(()=>{y();Me();B=(e,t,n=d)=>ge(e)?t:n,oe=(e,t,n=d)=>xt(e)?t:n});function Yt(e){if(e instanceof Je)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${ch}
    </div>`;if(e instanceof j)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let t=e instanceof O?e.message:String(e);return e instanceof O||console.error(e),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${t}
  </div>`}var Oe,xe,lh,ch,Re=f(()=>{y();F();Ht();Oe=e=>i`<p class="state" data-test="loading">${e}</p>`,xe=(e,t=d)=>i`<div class="state" data-test="empty">
    <h1>${e}</h1>
    ${t}
  </div>`,lh=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${Qs()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${ch}
  </div>`,ch=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function $e(e,{replace:t=!1}={}){bw()&&(history[t?"replaceState":"pushState"](null,"",e),Tt(!0))}function pt(e){
po=e}function bw(){let e=po?.();return!e||confirm(e)}function hh(){po?.()?Kt():Tt()}async function Tt(e=!1){Ii.
abort(),Ii=new AbortController,po=null;let{signal:t}=Ii,n=document.documentElement;delete n.dataset.ready;let s=_w(
Ys(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
Kt();let o=l=>{clearTimeout(a),t.aborted||Vt(l,ua())};Vt(i``,ua());let a=setTimeout(()=>o(lh()),$w);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!ge(r)){o(pa(r)),n.dataset.ready="n\
ot-yours";return}try{let l=await dh[s.route.name]();if(t.aborted)return;scrollTo(0,0),await l.show({params:ww(
s.params),query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{
t.aborted||(n.dataset.ready=s.route.name)},signal:t})}catch(l){if(t.aborted)return;o(Yt(l)),n.dataset.ready="f\
ailed"}e&&!t.aborted&&ua().focus({preventScroll:!0})}function _w(e){return e&&Ad(e.route.name)?{route:Pc("pair"),
params:{}}:e}function ph(e){return dh=e,addEventListener("popstate",()=>Tt()),addEventListener("beforeunload",
t=>(io()||po?.())&&t.preventDefault()),document.addEventListener("click",t=>{let n=t.target.closest("a");!n||t.
defaultPrevented||t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||n.target||n.hasAttribute("download")||n.origin!==
location.origin||!Ys(n.pathname)||n.hash&&n.pathname===location.pathname||(t.preventDefault(),$e(n.pathname+n.
search+n.hash))}),ua().replaceChildren(),Tt()}var $w,Ii,po,dh,ua,ww,Be=f(()=>{y();Ri();yn();pe();Me();ai();ls();
ie();Re();$w=1e3,Ii=new AbortController,po=null,dh={},ua=()=>document.getElementById("main");ww=e=>e.code?{...e,
code:ho(e.code)}:e});var Mn,ma,ds,Wi=f(()=>{Mn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ma=e=>(...t)=>({
_$litDirective$:e,values:t}),ds=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,s){this._$Ct=t,
this._$AM=n,this._$Ci=s}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}}});var pT,uh,yw,fa,Di=f(()=>{y();({I:pT}=Vd),uh=e=>e.strings===void 0,yw={},fa=(e,t=yw)=>e._$AH=t});var Se,Jt=f(()=>{y();Wi();Di();Se=ma(class extends ds{constructor(e){if(super(e),e.type!==Mn.PROPERTY&&e.type!==
Mn.ATTRIBUTE&&e.type!==Mn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!uh(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[
t]){if(t===ht||t===d)return t;let n=e.element,s=e.name;if(e.type===Mn.PROPERTY){if(t===n[s])return ht}else if(e.
type===Mn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(s))return ht}else if(e.type===Mn.ATTRIBUTE&&n.getAttribute(
s)===t+"")return ht;return fa(e),t}})});function ga(e){return Object.hasOwn(Zt,e)?e:void 0}async function ce(e,t){try{return await $a(e,t)}catch(n){let s=n instanceof
j?await Xo():void 0;if(!s?.[e])throw n;return{items:s[e],etag:null,kept:!0}}}async function Xt(){try{let e=await Xo();
if(e||!Qe().unkept)return e}catch{}try{let[{press:e},{items:t}]=await Promise.all([wa(),$a("metals")]);return{
press:e,metals:t}}catch{return}}async function $a(e,t){let{body:n,etag:s}=await M("GET",`/${e}`,{signal:t});return{
items:n[e],etag:s,kept:!1}}async function mh(e,t,n){await M("PUT",`/${e}`,{body:{[e]:t.map(On),by:R().name},etag:n})}
async function ba(e){try{return await wa(e)}catch(t){let n=t instanceof j?await Xo():void 0;if(!n)throw t;return{
press:n.press??null,etag:null,kept:!0}}}async function wa(e){let{body:t,etag:n}=await M("GET","/press",{signal:e});
return{press:t.press,etag:n,kept:!1}}async function fh(e,t){let n={press:On(e),by:R().name};return(await M("PU\
T","/press",{body:n,etag:t})).body.press}function On({outline_mm:e,outlines_mm:t,...n}){return n}function gh(e,t){
return JSON.stringify(e&&On(e))===JSON.stringify(t&&On(t))}function Qt({tray:e,slot:t}){return!e&&!t?"place no\
t given":[e&&(/^\S{1,4}$/.test(e)?`Tray ${e}`:e),t&&`slot ${t}`].filter(Boolean).join(", ")}var Zt,le,hs,fe=f(
()=>{F();se();Ce();ve();Zt={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",title:"\
Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"Metals"}},
le={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_holders",
metals:"shop.write_metals"};hs=(e,t)=>e?.find(n=>n.code===t)?.name??t});function uo(e,t){let s=t.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...as(c.body)}),
e),o=t.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(e.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??e.revision_id,here:o}}async function An(e){return uo(e,
await bn(e.code).catch(()=>[]))}async function Fi(e){let t=await st(e);return t&&uo(t,(await bn(e)).filter(n=>n.
body.settles))}async function mo(e){let t=await st(e);return t&&An(t)}async function en(e,t,{reason:n="",settles:s=[]}={}){
let o=ca(t,e),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:e};let{name:r}=R(),l=await da(
{id:Ue(),kind:a.every(p=>p==="note")&&!s.length?"note":"edit",code:e.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:as(e,a),after:e.after,etag:e.etag,revision:e.revision}),c=await mo(e.
code).catch(()=>{}),h=l.answer;return{where:l.where,card:c??(h?uo(h,[]):{...e,...o})}}var tn=f(()=>{is();Pe();
ls();se();Ce()});function ji(e){if(e.limits!==void 0)return e.limits;let t=[e,...e.corrections??[]].filter(kw);if(!t.length)return null;
let n=xw(e)+.5,s=Math.max(Math.min(...t.map(r=>r.set_angle_deg)),n),o=t.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function ut(e,t){let n=ji(
e);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=t;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function xw({drawing:e,v_opening_mm:t}){let n=(e?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&t?2*Math.atan(t/2/Math.min(...n))*vw:0}var $h,vw,kw,Ln=f(()=>{$h=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],vw=180/Math.PI;kw=e=>typeof e.set_angle_deg=="number"&&typeof e.punch_depth_mm=="number"});async function mt(e,t,n){let s=null,o=await st(e).catch(a=>{s=a});if(!o){await t(await An(await Sw(e,n,s)),{where:"\
shop"});return}await t(await An(o),{where:"device"}),Tw(o,t,n)}async function Sw(e,t,n){try{return await Mt(e,
t)}catch(s){throw s instanceof j&&n instanceof Je?n:s}}async function bh(){try{let e=await Ut();if(e.length||!Qe().
unkept)return{list:e,where:"device"}}catch{}try{let{body:e}=await M("GET","/cards?archived=all&limit=200",{timeout:4e3});
return qt(!0),{list:e.cards.map(t=>({...t,note:""})),where:"shop"}}catch(e){return qt(!1,e),{list:[],where:"sh\
op"}}}async function Tw(e,t,n){try{let s=await Mt(e.code,n);!n.aborted&&s.etag!==e.etag&&await t(await An(s),{
where:"shop"})}catch{}}async function wh(e,t){if(await st(e).catch(()=>{}))return"device";try{return await Mt(
e,t),"shop"}catch(n){if(n instanceof O&&n.status===404)return"nowhere";if(n instanceof j)return"silent";throw n}}
async function Mt(e,t){try{let{body:n}=await M("GET",`/cards/${e}`,{signal:t,timeout:4e3});return qt(!0),await dt(
n).catch(()=>n)}catch(n){throw t?.aborted||qt(!1,n),n}}async function _a(e,t){let{body:n}=await M("PUT",`/card\
s/${e.code}`,{body:t,etag:e.etag,timeout:t.replan?6e4:8e3});return dt(n).catch(()=>n)}function ot(e,t){let n=e.
settings?.find(a=>a.step===t.number),s={set_angle_deg:n?.set_angle_deg??t.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??
t.punch_depth_mm},o=ut(t,s);return{...o?s:{set_angle_deg:null,punch_depth_mm:null},firstHit:n||!o?null:t.first_hit??
null,gauge_x_mm:n?.gauge_x_mm??t.gauge_x_mm,fromTrial:!!n,reason:n?.reason??""}}var Ie=f(()=>{F();tn();Ln();Ht();
Ce();ve()});function Ve(e,t){return e.length*t*.6+t*.3}function Mw(e,t){return Math.abs(e.x-t.x)*2<e.width+t.width&&Math.abs(
e.y-t.y)*2<e.height+t.height}function _h(e,[[t,n],[s,o]]){let a=0,r=1,l=[[t-e.x,s-t,e.width/2],[n-e.y,o-n,e.height/
2]];for(let[c,h,p]of l){if(h===0){if(Math.abs(c)>p)return!1;continue}let[u,m]=[(-p-c)/h,(p-c)/h];a=Math.max(a,
Math.min(u,m)),r=Math.min(r,Math.max(u,m))}return a<=r}function Ow([e,t],[n,s]){return ya(e,t,n)!==ya(e,t,s)&&
ya(n,s,e)!==ya(n,s,t)}function ya(e,t,n){return(t[0]-e[0])*(n[1]-e[1])>(t[1]-e[1])*(n[0]-e[0])}var va,ka=f(()=>{
va=class{constructor(t){this.edges=t,this.taken=[]}choose(t){let n=t[0],s=1/0;for(let o of t){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:t,
lines:n=[]}){let s=this.taken.filter(l=>Mw(t,l)).length,o=this.edges.filter(l=>_h(t,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(h=>Ow(c,h)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(h=>_h(h,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function Ae(e){return e.length?`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}Z`:""}function fo(e){return e.length?
`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}`:""}function et(e){let t=e.flat().map(([s])=>s),n=e.flat().map(([,
s])=>s);return[Math.min(...t),Math.min(...n),Math.max(...t),Math.max(...n)]}function yh([e,t,n,s],o){return`${e-
o} ${-s-o} ${n-e+2*o} ${s-t+2*o}`}function En([e,t,n,s],o,a){let r=Math.min(o/Math.max(n-e,1e-6),a/Math.max(s-
t,1e-6));return([l,c])=>[(l-e)*r,(s-c)*r]}var nn=f(()=>{});function U(e){let{text:t}=w(e,{digits:2});return R().inches==="fraction"?t:t.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function kh({section:e,part:t},{pixels:n=ps(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=En(et([e.outline]),n-2*l,s-2*l),h=e.outline.map(c),p=new va(h.map((v,P)=>[v,h[(P+1)%h.length]])),u=Ew(e).map(
(v,P)=>Pw(v.map(c),U(t.flats_mm[P]),p,18)),m=e.bend_points.map((v,P)=>Nw(c(v),P+1,t.bends[P],p,18)),[$,b,_,T]=Bw(
[...h,...m.flatMap(v=>vh(v.box)),...u.flatMap(v=>[...vh(v.box),...v.lines.flat()])]),[E,N]=[_-$+12,T-b+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${Lw(t)}
    width=${E}
    height=${N}
    viewBox="${$-6} ${b-6} ${E} ${N}">
    <path class="sheet" d="M${h.map(v=>v.join(" ")).join("L")}Z" />
    ${u.map(({lines:v,box:P,text:X})=>x`${v.map(([de,jo])=>x`<path class="dimension" d="M${de}L${jo}"/>`)}
      ${Cw(v[0])}${Rw(P,X,18)}`)}
    ${m.map(({box:v,text:P,number:X,badge:de})=>x`<circle class="badge ${X===a?"marked":""}" cx=${de[0]} cy=${de[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${de[0]} y=${de[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${X}</text>
      <text x=${de[0]+18*.95} y=${v.y} font-size=${18}
        dominant-baseline="central">${P}</text>`)}
  </svg>`}function ps(){return Math.min(Math.max(innerWidth-32,300),720)}function Lw(e){return`Section. ${e.flats_mm.
map((n,s)=>{let o=e.bends[s],a=o?`, bend ${s+1}: ${xh(o)} ${o.direction}`:"";return`flat ${s+1}: ${g(w(n))}${a}`}).
join("; ")}.`}function xh(e){return e.kind==="closed_hem"?"hem":e.kind==="open_hem"?"open hem":re(S(e.included_angle_deg))}
function Ew({dimensions:e,bend_points:t,centre_line:n}){if(e)return e;let s=[n[0],...t,n[n.length-1]];return s.
slice(1).map((o,a)=>[s[a],o])}function Nw(e,t,n,s,o){let a=xh(n),r=Ve(a,o)+1.6*o,l=[1.4,1.9,2.6].flatMap(p=>Aw.
map(u=>{let m=e[0]+Math.cos(u)*(p*o+r/2-o*.6),$=e[1]+Math.sin(u)*p*o;return{box:{x:m,y:$,width:r,height:o*1.5},
cost:p*2}})),{box:c}=s.choose(l),h=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:t,badge:h}}function Pw([e,t],n,s,o){
let a=Math.hypot(t[0]-e[0],t[1]-e[1])||1,r=[-(t[1]-e[1])/a,(t[0]-e[0])/a],[l,c]=[Ve(n,o),o*1.3],h=(m,$)=>[m[0]+
r[0]*$,m[1]+r[1]*$],p=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap($=>[.5,.3,.7].map(b=>{let[_,T]=[h(e,$*o),h(t,$*o)],
E={x:_[0]+(T[0]-_[0])*b,y:_[1]+(T[1]-_[1])*b,width:l,height:c},N=a<l*1.4&&Math.abs(r[1])>.5?Math.sign($*r[1])*
o*.9:0,v=[[_,T],[h(e,Math.sign($)*o*.5),h(_,Math.sign($)*4)],[h(t,Math.sign($)*o*.5),h(T,Math.sign($)*4)]];return{
box:{...E,y:E.y+N},cost:Math.abs($)+(b===.5?0:.5),lines:v}}))),u=s.choose(p);return{box:u.box,lines:u.lines,text:n}}
function Cw(e){return e.map(([t,n])=>x`<path class="dimension tick" d="M${t-4} ${n+4}L${t+4} ${n-4}"/>`)}function Rw({
x:e,y:t,width:n,height:s},o,a){return x`<rect class="ground" x=${e-n/2} y=${t-s/2} width=${n} height=${s}/>
    <text x=${e} y=${t} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function vh({
x:e,y:t,width:n,height:s}){return[[e-n/2,t-s/2],[e+n/2,t+s/2]]}function Bw(e){return et([e])}var Aw,at=f(()=>{
y();se();A();ka();nn();Aw=[0,90,180,270,45,135,225,315].map(e=>e*Math.PI/180)});function k(e,t=Iw[e]){return i`<span class="flag ${e}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${Ww[e]}</svg>${t}</span
  >`}function Hi({step:e,steps:t=[]}){return t.length>1?i`<b>Steps ${t.join(", ")}.</b> `:e?i`<b>Step ${e}.</b> `:
d}function We(e,{quiet:t=!1}={}){let n=e.filter(s=>!t||s.level!=="ok").sort((s,o)=>us.indexOf(Te(s))-us.indexOf(
Te(o)));return n.length===0?d:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${k(Te(s))}
          <div class="say">
            ${Hi(s)}${He(s.template,s.numbers)}
            ${s.do?i`<div class="do">${He(Nn(s),s.numbers)}</div>`:d}
          </div>
        </li>`)}
  </ul>`}function fs(e){let t=new Map;for(let s of e){let o=`${Te(s)} ${s.code}`;t.set(o,[...t.get(o)??[],s])}
let n=[...t.values()].sort(([s],[o])=>us.indexOf(Te(s))-us.indexOf(Te(o)));return i`<ul class="checks lines" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s[0].level} data-code=${s[0].code}>
          ${Dw(s)}
        </li>`)}
  </ul>`}function Dw([e,...t]){let n=i`${k(Te(e))}
    <div class="say">${Hi(e)}${He(e.template,e.numbers)} ${Fw(t)}</div>`;return!e.do&&t.length===0?n:i`<details ?open=${e.
level==="stop"}>
    <summary>${n}</summary>
    ${t.map(s=>i`<p class="say">${Hi(s)}${He(s.template,s.numbers)}</p>`)}
    ${e.do?i`<p class="do">${He(Nn(e),e.numbers)}</p>`:d}
  </details>`}function Fw(e){let t=e.flatMap(({step:n,steps:s=[]})=>s.length?s:n??[]);return e.length===0?d:t.
length===0?i`<b>And ${e.length} more.</b>`:i`<b>Also step${t.length>1?"s":""} ${t.join(", ")}.</b>`}var Iw,us,
Ww,Te,ye,Nn,ms,go,G=f(()=>{y();A();Iw={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",ok:"OK"},us=
["stop","caution","unknown","note","ok"],Ww={stop:x`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:x`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:x`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:x`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:x`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};Te=({level:e,sign:t,do:n,
step:s,steps:o=[]})=>t??(e==="ok"&&n&&(s||o.length)?"note":e),ye=({template:e,numbers:t})=>He(e,t),Nn=({do:e,do_template:t})=>t??
e,ms=({template:e,numbers:t={},words:n=""})=>e?He(e,t):n,go=e=>e.map(ye).join(" ")});function Pn(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":t.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function ae(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":`${Pn(e)}\
, ${t.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function gs({made_at:e,received_at:t}){return t?
!e||Math.abs(Date.parse(e)-Date.parse(t))<jw?ae(t):`in the shop ${ae(t)}, made ${ae(e)} by the device’s clock`:
ae(e??"")}function Ot({by:e,device:t}){return[e,t===e?"":t].filter(Boolean).join(", ")}var jw,ze=f(()=>{jw=5*6e4});function Sh(e,{metalName:t,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${e.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${W(s.code)}</span>
            <span class="more">
              ${t(s.metal)}, ${U(s.thickness_mm)} ${C()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${Pn(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · archived":""}
              ${Hw(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="settle">${k("caution",`${s.settle} to resolve`)}</span>`:d}
              ${s.worst==="stop"?k("stop"):d}
            </span>
          </a>
        </li>`)}
  </ul>`}var Hw,Th=f(()=>{y();pe();at();A();G();ze();Hw=e=>e?i`· <b>${e} ${/^1 \S+$/.test(e)?"waits":"wait"}</b>`:
d});function Sa(e,t,n,s){let o=me(e.code),a=o.fault||(e.asked&&!o.whole?Gw(o.code):"");return i`<form class="code-form" @submit=${l=>{
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
        .value=${Se(e.code)}
        aria-invalid=${a?"true":"false"}
        aria-describedby="code-more"
        @input=${l=>{e.code=l.target.value,e.asked=!1,n()}} />
      <button class="button ${o.whole?"next":""}" data-test="open">Open</button>
    </div>
    <p id="code-more" class="code-more" role="status">
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:Uw(o,t,s)}
    </p>
  </form>`}function Uw(e,t,n){if(!e.whole)return n;let s=t.find(o=>o.code===e.code);return s?i`<span data-test="code-found"
        >${W(e.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A valid code, but not on this device yet. Open asks the shop.</span
      >`}var xa,Gw,Ui=f(()=>{y();Jt();pe();Be();xa=()=>({code:"",asked:!1});Gw=e=>e?`A card code has seven cha\
racters. This is ${e.length}.`:"Type the seven characters printed on the label."});var Oh={};ne(Oh,{show:()=>zw});async function zw(e){e.title("Find a card");let t={typed:xa(),search:"",shown:Gi},
n=await Mh(),s=!1,o=()=>{e.render(i`<div class="home">
        <h1>Find a card</h1>
        <div class="home-scan">
          <a class="button next wide" href="/scan" data-test="scan">${Vw} Scan a label</a>
        </div>
        <div class="home-ways">
          ${Sa(t.typed,n.list,o,"Seven characters, capitals or not.")}
          <nav class="home-new" aria-label="Start something">
            ${oe("/bend",i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`)}
            ${oe("/part",i`<a class="button" href="/part" data-test="new-part"
                >${B("cards.create","New part","Plan a part")}</a
              >`)}
          </nav>
        </div>
        ${qw(t,n,s,o)}
      </div>`)};o();let a=async()=>{s||=Qe().reached!==null,n=await Mh(),o(),(s||n.list.length)&&e.ready()};document.
addEventListener("sync",a,{signal:e.signal}),n.list.length&&e.ready(),await H().then(a)}async function Mh(){let[
{list:e,where:t},n,s]=await Promise.all([bh(),Xt(),Ge().catch(()=>[])]),o=new Map;for(let{code:r}of s)o.set(r,
Ci(s.filter(l=>l.code===r)));return{list:e,where:t,waiting:o,metalName:r=>hs(n?.metals,r)}}function qw(e,t,n,s){
if(t.list.length===0)return n?Jw():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=Kw(t,e.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${Se(e.search)}
        @input=${a=>{e.search=a.target.value,e.shown=Gi,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${Yw(o.length,t,e.search)}</p>
    ${Sh(o.slice(0,e.shown),t)}
    ${o.length>e.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{e.shown+=Gi,s()}}>
              Show more
            </button>
          </div>`:d}
  </section>`}function Kw({list:e,metalName:t},n){let s=n.toLowerCase().split(/\s+/).filter(Boolean);return s.
length===0?e.filter(o=>!o.archived):e.filter(o=>{let{code:a,title:r,note:l,metal:c}=o,h=`${a} ${W(a)} ${r} ${l}\
 ${c} ${t(c)}`.toLowerCase();return s.every(p=>h.includes(p))})}function Yw(e,{list:t,where:n},s){let o=n==="d\
evice"?"on this device":"of the shop";return s.trim()===""?e===1?`1 card ${o}`:`${e} cards ${o}`:e===0?`None o\
f the ${t.length} cards matches.`:`${e} of ${t.length} cards`}function Jw(){return Qe().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${B("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var Gi,Vw,Ah=f(()=>{y();Jt();pe();fe();Pe();Ie();ve();ie();Th();Ui();Gi=40,Vw=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`});var Cn,Lh,Eh,$s,Vi=f(()=>{Cn=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],Lh=["guaranteed minimum","typical","measured","common practice","from memory"],Eh=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],$s=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function Rn(e=""){let n=e.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(Nh.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...Ph}]}function Bh(e){let t=Rn(e),{angle:n,face:s}=t[t.length-1];return $o(
[...t,{...Ph,angle:n,face:s}])}var Nh,Ph,Ch,$o,Rh,Ih,bo,zi=f(()=>{Nh=["v","angle","radius","face","centre","co\
de","rating"],Ph={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},Ch=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];$o=e=>e.map(t=>Nh.map(n=>t[n].replaceAll(";",",")).join("; ")).join(
`
`),Rh=(e,t,n)=>$o(Rn(e).map((s,o)=>o===t?{...s,...n}:s));Ih=(e,t)=>$o(Rn(e).filter((n,s)=>s!==t)),bo={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var Fh,jh,Zw,Xw,Qw,Ta,At,bs,qi,Wh,Dh,Ki,Yi,Ji,Ma,Zi=f(()=>{Fh="Empty is unknown: checks with it then say so.",
jh={name:"rating_kn_per_m",label:"Rating",type:"rating",hint:"As stamped on the tool or in its maker's papers."},
Zw={name:"segments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned tw\
ice twice."},Xw=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],Qw=[{name:"con\
dition",label:"Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown",
"unknown"]]},{name:"condition_note",label:"Note on its condition",type:"note"}],Ta={name:"name",label:"Name",type:"\
text",broad:!0},At=e=>t=>t.shape===e,bs=(e,t)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:e,
hint:`One point a line: x, y. x towards the back gauge, y up. ${t}`,when:At("points")}),qi=(...e)=>({name:"sha\
pe",label:"Shape",type:"pick",broad:!0,options:[...e,["points","by points or DXF"]]}),Wh={name:"turned",label:"\
Sits in the press",type:"yes",options:[["no","as drawn"],["yes","reversed"]]},Dh={title:"Rating and pieces",part:"\
rest",fields:[jh,Zw]},Ki={title:"Place and condition",part:"rest",fields:[...Xw,...Qw]},Yi=e=>e.shape!=="multi\
_v",Ji=({die_holder_height_mm:e})=>!!e&&!/^0+([.,]0*)?( mm| in)?$/.test(String(e)),Ma={punches:[{title:"What i\
t is",part:"what",fields:[Ta,{name:"angle_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_m\
m",label:"Tip radius",type:"length"}]},{title:"Outline",part:"outline",fields:[qi(["straight","straight"],["go\
oseneck","gooseneck"]),{name:"height_mm",label:"Height, tip to seat",type:"length"},{name:"body_width_mm",label:"\
Width of the body",type:"length"},{name:"neck_relief_mm",label:"Throat behind the tip",type:"length",when:At("\
gooseneck")},{name:"neck_width_mm",label:"Thickness of the neck",type:"length",when:At("gooseneck"),blank:"as \
the body"},{name:"throat_top_mm",label:"Throat begins to close",type:"length",when:At("gooseneck"),blank:"as h\
igh as it can",hint:"Above the tip."},bs("punch","The tip is at 0, 0."),Wh]},Dh,Ki],dies:[{title:"What it is",
part:"what",fields:[Ta,{name:"v_opening_mm",label:"V opening",type:"length",hint:"Between the sharp corners of\
 face and flanks.",when:Yi},{name:"angle_deg",label:"Angle of the V",type:"number",unit:"°",when:Yi},{name:"s\
houlder_radius_mm",label:"Shoulder radius",type:"length",when:Yi}]},{title:"Outline",part:"outline",fields:[qi(
["single_v","single V"],["multi_v","block with several V's"]),{name:"height_mm",label:"Height",type:"length"},
{name:"width_mm",label:"Width",type:"length"},Wh,{name:"openings",label:"The V's of the block",type:"openings",
when:At("multi_v")},{name:"up",label:"V that is up",type:"number",hidden:!0,when:At("multi_v")},bs("die","The \
top face is at y 0, the V's middle at x 0.")]},Dh,Ki],holders:[{title:"What it is",part:"what",fields:[Ta,jh]},
{title:"Outline",part:"outline",fields:[qi(["block","plain block"],["clamps","clamps that stick out"]),{name:"\
height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the front",
type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to the ba\
ck",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:At("clamps")},{name:"\
body_front_mm",label:"Body above, to the front",type:"length",when:At("clamps")},{name:"body_back_mm",label:"B\
ody above, to the back",type:"length",when:At("clamps")},bs("holder","The punch's seat is at 0, 0.")]},Ki],press:[
{title:"The press",part:"what",fields:[Ta,{name:"force_kn",label:"Full force",type:"force"},{name:"bed_length_\
mm",label:"Bed length",type:"length"},{name:"between_frames_mm",label:"Between the frames",type:"length"},{name:"\
open_height_mm",label:"Open height",type:"length"},{name:"stroke_mm",label:"Stroke",type:"length"},{name:"thro\
at_mm",label:"Throat",type:"length"}]},{title:"Ram and bed",part:"outline",fields:[{name:"ram_width_mm",label:"\
Ram width",type:"length",needed:!0},{name:"ram_height_mm",label:"Ram height",type:"length",needed:!0},{name:"b\
ed_width_mm",label:"Bed width",type:"length",needed:!0},{name:"bed_height_mm",label:"Bed height",type:"length",
needed:!0},{name:"floor_below_die_mm",label:"Floor below the die",type:"length",broad:!0,blank:"not looked at",
hint:"From the face that the die stands on, down to the floor: long parts hang that far."},{...bs("ram","From \
the face that carries the holder. Empty: a plain beam."),name:"ram_points_mm",label:"Ram by points",when:void 0,
folded:!0},{...bs("bed","From the face that carries the die or its holder. Empty: a plain beam."),name:"bed_po\
ints_mm",label:"Bed by points",when:void 0,folded:!0}]},{title:"Riser or die holder on the bed",part:"rest",fields:[
{name:"die_holder_height_mm",label:"Height under the die",type:"length",blank:"none",broad:!0,hint:"0 or empty\
: the die stands on the bed."},{name:"die_holder_width_mm",label:"Width",type:"length",when:Ji,blank:"by point\
s"},{name:"die_holder_rating_kn_per_m",label:"Rating of the die holder",type:"rating",hint:"As stamped on it o\
r in its papers.",when:Ji},{...bs("die_holder","The die's seat is at y 0, the bed's at minus the height. Empty\
: a plain block."),name:"die_holder_points_mm",label:"Die holder by points",when:Ji,folded:!0}]},{title:"Ratin\
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
broad:!0},{name:"note",label:"Note",type:"note"}]}]}});function ft(e=""){let t=Uo(e);return t===""?null:e_.test(t)?Number(t):t}function s_(e){let{show:t}=Lt.number;return{
v:z(e.v_opening_mm),angle:t(e.angle_deg),radius:z(e.shoulder_radius_mm),face:e.face,centre:z(e.centre_mm),code:e.
code??"",rating:Lt.rating.show(e.rating_kn_per_m)}}function o_({v:e,angle:t,radius:n,face:s,centre:o,code:a,rating:r}){
let l={v_opening_mm:Oa(e),angle_deg:ft(t),shoulder_radius_mm:Oa(n),centre_mm:Oa(o)};return{...Object.fromEntries(
Object.entries(l).filter(([,h])=>h!==null)),face:s||"top",code:a||null,rating_kn_per_m:Hh(r)}}function Aa(e,t){
return Object.fromEntries(sn(e).map(({name:n,type:s})=>[n,Lt[s].show(t[n])]))}function La(e,t,n={}){let s=({name:r,
type:l})=>r in n&&Lt[l].show(n[r])===t[r]?n[r]:Lt[l].take(t[r]),a=sn(e).filter(({when:r})=>!r||r(t)).map(r=>({
spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||a_(r)).map(({spec:r,value:l})=>[
r.name,l]))}function Gh(e){let t={};for(let n of["name","note","gauge_family"])t[n]=Lt.text.show(e[n]);for(let{
name:n}of $s)t[n]=Lt.number.show(e[n]);for(let{name:n}of Cn){let s=e[n];for(let o of r_)t[`${n}.${o}`]=Lt.number.
show(s?.[o]);t[`${n}.standing`]||="typical"}return t}function Vh(e){let t={name:e.name.trim(),note:e.note.trim(),
gauge_family:e.gauge_family||null};for(let{name:n,needed:s}of $s)(e[n]?.trim()||!s)&&(t[n]=ft(e[n]));for(let{name:n,
needed:s}of Cn){let o=["low","nominal","high","source"].some(a=>e[`${n}.${a}`]?.trim());t[n]=o||s?i_(e,n):null}
return t}function i_(e,t){let n=["low","nominal","high"].map(s=>[s,ft(e[`${t}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(e[`${t}.source`]??"").trim(),standing:e[`${t}.standing`]}}function zh(e,t){
let n={},s=[];for(let[o,a]of Object.entries(e)){let r=`.${o}.`,c=(r.includes(".openings.")?t.filter(p=>p==="op\
enings"):t).filter(p=>r.includes(`.${p}.`)).sort((p,u)=>u.length-p.length)[0],h=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n[o.slice(o.indexOf(c))]??=[]).push(...a):c?(n[c]??=[]).push(...h&&r.endsWith(`.${c}.${h}.`)?a.map(p=>`\
Number ${Number(h)+1}: ${p}`):a):s.push(...a.map(p=>`${o}: ${p}`))}return{byName:n,others:s}}var e_,Xi,Oa,t_,Hh,
n_,Lt,Uh,sn,a_,r_,Et=f(()=>{Vi();zi();Zi();A();e_=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;Xi=e=>(t="")=>t.trim()===
""?null:e(t),Oa=Xi(e=>te(e)),t_=Xi(e=>Xs(e,jt())),Hh=Xi(e=>Xs(e,fn())),n_=(e="")=>e.split(/[\n;]/).map(t=>t.trim()).
filter(Boolean),Lt={text:{show:e=>e??"",take:(e="")=>e.trim()},note:{show:e=>e??"",take:(e="")=>e.trim()},pick:{
show:e=>e??"",take:e=>e||null},yes:{show:e=>e?"yes":"no",take:e=>e==="yes"},length:{show:z,take:Oa},number:{show:e=>e==
null?"":String(e),take:ft},force:{show:e=>ii(e,jt()),take:t_},rating:{show:e=>ii(e,fn()),take:Hh},lengths:{show:e=>(e??
[]).map(z).join(", "),take:(e="")=>e.split(/[,;\n]/).filter(t=>t.trim()).map(t=>te(t))},points:{show:e=>(e??[]).
map(([t,n])=>`${z(t)}, ${z(n)}`).join(`
`),take:e=>n_(e).map(t=>t.split(t.includes(",")?",":/\s+/).map(n=>te(n)))},openings:{show:e=>$o((e??[]).map(s_)),
take:e=>Rn(e).map(o_)},figure:{show:String,take:String}};Uh=e=>Lt.points.show(e),sn=e=>Ma[e].flatMap(t=>t.fields);
a_=({type:e,blank:t})=>e==="rating"||t!==void 0,r_=["low","nominal","high","source","standing"]});function Ea(e){let t={...l_};for(let n of el){let s=e.get(Qi[n])?.slice(0,60);if(s==null)continue;let o=` ${C()}`;
t[n]=tl(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return t}function Na(e){let t=new URLSearchParams;for(let n of el){
let s=e[n].trim();s!==""&&t.set(Qi[n],tl(n)?te(s):s)}return t.toString()}function wo(e){return c_.filter(t=>e[t].
trim()==="")}function Bn(e){let t={};for(let n of el){let s=e[n].trim();s!==""&&(t[n]=tl(n)?te(s):n==="include\
d_angle_deg"?ft(s):s)}return t}var l_,Qi,el,c_,tl,Pa=f(()=>{Et();A();l_={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},Qi={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},el=Object.keys(Qi),c_=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],tl=e=>e.endsWith("_mm")});function Nt(e,t,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:h}=a;try{let p=await e(c,h);h.aborted||t({question:c,answer:p})}catch(p){h.aborted||
t({question:c,error:p})}}return{stop:r,ask(c,{now:h=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),h?0:s))}}}var _o=f(
()=>{});function gt(e,t,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
d}>
    <span class="what">${e}</span>
    <span class="value"
      >${t.text}${t.unit==="°"?"°":i`<span class="unit">${t.unit}</span>`}</span
    >
    ${n||o?i`<span class="band"
            >${n?i`${n[0].text} to ${n[1].text}${n[1].unit==="°"?"°":` ${n[1].unit}`}`:d}${o?i` <i class="origin" data-test="origin">${o}</i>`:
d}</span
          >`:d}
    ${s&&s!==d?i`<span class="band">${s}</span>`:d}
  </div>`}var Ca=f(()=>{y()});function Ra(e){return e.force_kn===null||e.force_kn===void 0?d:i`<b>${g(tt(e))}</b>
    <small class="expected">expected ${g(on(e))}</small>`}function yo(e,t,n="force_kn",{note:s=d,origin:o=""}={}){
return gt(e,tt(t,n),{note:i`expected ${g(on(t,n))}${s}`,origin:o,test:n})}var tt,on,qh,$t=f(()=>{y();A();Ca();
tt=(e,t="force_kn")=>qh(t)(e[`${t}_high`],{up:!0}),on=(e,t="force_kn")=>qh(t)(e[t]),qh=e=>e==="force_kn"?he:Ee});var nl,Kh=f(()=>{nl=class extends HTMLElement{#e=new ResizeObserver(()=>this.measure());#t=new MutationObserver(
()=>this.measure());connectedCallback(){this.#e.observe(this),this.#t.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#e.disconnect(),this.#t.disconnect()}measure(){let t=this.
querySelector("svg"),{width:n,height:s}=t?.viewBox.baseVal??{width:0,height:0};if(!t||!n||!t.clientWidth||!t.clientHeight)
return;let o=Math.max(n/t.clientWidth,s/t.clientHeight);t.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",nl)});function sl({distance_mm:e,tool:t}){let n=g(w(Math.abs(e)));return e<=0?[n,`into ${t}`]:[n,`to ${t}`]}function Yh(e,{
left:t,right:n,bottom:s,top:o}){let[a,r]=In(e),[[l,c],[h,p]]=[e.on_sheet,e.on_tool],u=a-t>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[$,b]=sl(e);return x`<g class="near ${e.distance_mm<=0?"hit":""}" data-test="near" data-tool=${e.tool}>
    <path class="near-line" d="M${l} ${-c}L${h} ${-p}" />
    ${Ba(e,n-t)?d:[e.on_sheet,e.on_tool].map(d_)}
    <g transform="translate(${a} ${-r})">
      ${Ba(e,n-t)?x`<circle class="px near-ring" r="17" />`:d}
      <path class="px near-leader" d="M${u*12} ${m*12}L${u*34} ${m*30}H${u*44}" />
      <text class="px label near-label" x=${u*50} y=${m*30-2}
        text-anchor=${u>0?"start":"end"}>${$}<tspan x=${u*50}
          dy="1.1em">${b}</tspan></text>
    </g>
  </g>`}var In,Ba,d_,ol=f(()=>{y();A();In=({on_sheet:[e,t],on_tool:[n,s]})=>[(e+n)/2,(t+s)/2];Ba=(e,t)=>Math.abs(
e.distance_mm)<.1*t,d_=([e,t])=>x`<g transform="translate(${e} ${-t})"><circle class="px near-dot" r="4" /></g>`});function bt(e,{pose:t,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:h=!1,room:p=null}){
let u=s??(e.bounds[2]-e.bounds[0])/6,m=n?p_(u,h?c:null):u_(e,u,c),$=p&&!n?m_(m,p,u):m,{left:b,bottom:_,right:T,
top:E}=$,N=l??h_(e,t==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${t}
      viewBox="${b} ${-E} ${T-b} ${E-_}"
      preserveAspectRatio="xMidYMid meet">
      ${[e.bed,e.die].map(Ae).map(Jh)}
      <g transform="translate(0 ${N.down})">${N.tools.map(Jh)}</g>
      ${e.die.length?x`<path class="axis" d="M0 ${-E-999}V999" />`:d}
      <path class="gauge" transform="translate(${N.back} 0)" d=${N.gauge} />
      <path class="sheet" data-test="sheet" d=${N.sheet} />
      ${t==="before"&&e.gauge_point?f_(e.gauge_point,o,$):d}
      ${t==="after"&&a?g_(e.after.sheet,a,u,$):d}
      ${h&&c?Yh(c,$):d}
    </svg>
  </drawing-frame>`}function h_(e,t){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=e[t];return{sheet:Ae(n),tools:[
s,o,a].map(Ae),down:0,gauge:Ae(r),back:0}}function p_(e,t){let[n,s]=t?In(t):[0,.1*e];return{left:n-1.5*e,bottom:s-
e,right:n+1.5*e,top:s+e}}function u_(e,t,n){let[s,o,a,r]=et([e.before.sheet,e.after.sheet]),l=14*t,c=e.gauge_point?
e.gauge_point[0]+1.5*t:0,h={left:Math.max(Math.min(s-.4*t,-1.4*t),-l),right:Math.min(Math.max(a+.4*t,c,1.4*t),
Math.max(l,c))},p=h.right-h.left,u={...h,bottom:Math.max(Math.min(o-.3*t,-1.1*t,-.17*p),-l/2),top:Math.min(Math.
max(r+.3*t,1.6*t),8*t)},m=n?al(u,In(n),Math.max(t,.1*p)):u;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function m_(e,{
bounds:t,share:n},s){let o=al(al(e,[t[0],t[1]],s),[t[2],t[3]],s),a=r=>e[r]+(o[r]-e[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function f_([e,t],n,{bottom:s}){let o=s*.45;return x`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${e} ${-t}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${e}" />
    ${Zh(0,o,180)}${Zh(e,o,0)}
    <g transform="translate(${e} ${-t})"><circle class="px touch" r="5" /></g>
    ${Xh(e/2,o,n,17)}
  </g>`}function g_(e,t,n,{left:s,right:o}){let a=Math.min(...e.filter(([p])=>Math.abs(p)<n/2).map(([,p])=>p)),
r=Math.max(1.25*n,.14*(o-s)),l=t/2*(Math.PI/180),[c,h]=[r*Math.sin(l),a+r*Math.cos(l)];return x`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-h}A${r} ${r} 0 0 1 ${c} ${-h}" />
    ${Xh(0,a+r,g(S(t)))}
  </g>`}var Jh,al,Zh,Xh,vo=f(()=>{y();A();Kh();ol();nn();Jh=e=>e?x`<path class="tool" d=${e} />`:d;al=({left:e,
right:t,bottom:n,top:s},[o,a],r)=>({left:Math.min(e,o-r),right:Math.max(t,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});Zh=(e,t,n)=>x`<g transform="translate(${e} ${-t})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,Xh=(e,t,n,s=0)=>x`<g transform="translate(${e} ${-t})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function Qh(e,t){let n=[...e].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>t(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die} <small>V ${Q(s.v_over_t,1)} t</small></span
            >
            ${s.level==="ok"?d:k(s.level)}
            <span class="facts"> ${$_(s).map(o=>b_(...o))} </span>
            <span class="more">${ye(s.reason_said)} ${Qt(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var $_,b_,ep=f(()=>{y();fe();A();$t();G();$_=e=>[["allow for",g(tt(e,"force_kn_per_m")),`expected ${on(
e,"force_kn_per_m").text}`],["radius",g(w(e.inside_radius_mm))],["flange from",g(w(e.min_flange_mm))],["set",g(
S(e.set_angle_deg))]],b_=(e,t,n)=>i`<span class="fact"
    ><small>${e}</small>
    <span class="amount">${t}</span
    >${n?i` <small class="beside">${n}</small>`:d}</span
  >`});function ws(e,t=""){return e?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${rl(e)}. If it is too open, make a second hit.
    <span class="drawn">${t}</span>
  </p>`:d}var Ia,rl,tp,Wa,Wn=f(()=>{y();A();Ia=e=>S(e).text.replace(/\.0$/,""),rl=e=>`comes out ${Ia(e.comes_out_deg_low)}\
 to ${Ia(e.comes_out_deg_high)}°`,tp=e=>`${Ia(e.comes_out_deg_low)}–${Ia(e.comes_out_deg_high)}°`,Wa=(e,{set_angle_deg:t,
firstHit:n})=>n?e.expected_set_angle_deg:t});var w_,ke,_s=f(()=>{y();w_=()=>matchMedia("(min-width: 1000px)").matches,ke=(e,t,{test:n="",open:s=w_()}={})=>i`<details class="fold" data-test=${n||
d} ?open=${s}>
    <summary><h2>${e}</h2></summary>
    ${t}
  </details>`});function Da(e){return il(e,t=>t.level==="stop"||t.level==="caution")}function il(e,t){let n=e.filter(o=>!np(o)&&
t(o));if(n.length===0)return d;let s=n.some(o=>o.level==="stop");return i`<section
    class="panel urgent ${s?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${fs(n)}
  </section>`}function ys(e){let t=e.filter(o=>o.level==="unknown"),n=e.filter(o=>Te(o)==="note"),s=e.filter(o=>Te(
o)==="ok");return i`${t.length?i`<section>
          <h2>Not known</h2>
          ${fs(t)}
        </section>`:d}
  ${n.length?i`<section data-test="notes">
          <h2>How to do it</h2>
          ${fs(n)}
        </section>`:d}
  ${s.length?ke(`Passed checks: ${s.length}`,We(s),{test:"fine",open:!1}):d}`}function an(e){let t=e.filter(np);
if(t.length===0)return d;let n=i`<ul>
    ${t.map(s=>i`<li>
          <b>${He(s.template,s.numbers)}</b>
          ${He(Nn(s),s.numbers)}
        </li>`)}
  </ul>`;return i`<section class="every-time">
    ${ke(i`${k("caution")} At the press, every time`,n,{test:"every-time"})}
  </section>`}var np,sp,op,ko=f(()=>{y();A();G();_s();np=e=>e.code.startsWith("general-");sp=e=>il(e,t=>t.level===
"stop"),op=e=>il(e,t=>t.level==="caution")});function L({name:e,label:t,value:n,change:s,hint:o="",wrong:a=[],keys:r="text",placeholder:l="",unit:c="",on:h="\
input",next:p=!1,list:u=""}){let m=$=>s($.target.value);return i`<div class="field ${a.length?"has-wrong":""}">
    <label for=${e}>${t}${c?i` <span class="hint">(${c})</span>`:d}</label>
    <input
      id=${e}
      name=${e}
      data-test=${e}
      autocomplete="off"
      spellcheck="false"
      inputmode=${r}
      enterkeyhint=${p?"next":d}
      placeholder=${l}
      list=${u||d}
      .value=${Se(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${h==="input"?m:d}
      @change=${h==="change"?m:d} />
    <span id="${e}-more">
      ${a.map($=>i`<span class="wrong" data-test="wrong-${e}">${$}</span>`)}
      ${o?i`<span class="hint">${o}</span>`:d}
    </span>
    ${a.length?__(e,Kc(String(n)),s):d}
  </div>`}function __(e,t,n){return i`<div class="may-mean">
    ${t.map(s=>i`<button type="button" class="button" data-test="may-mean-${e}" @click=${()=>n(s)}>
          ${s}
        </button>`)}
  </div>`}function Dn({name:e,label:t,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${e}>${t}${l?i` <span class="hint">(${l})</span>`:d}</label>
    <textarea
      id=${e}
      name=${e}
      data-test=${e}
      rows=${o}
      .value=${Se(String(n))}
      aria-invalid=${r.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${c=>s(c.target.value)}></textarea>
    <span id="${e}-more">
      ${r.map(c=>i`<span class="wrong" data-test="wrong-${e}">${c}</span>`)}
      ${a?i`<span class="hint">${a}</span>`:d}
    </span>
  </div>`}function q({name:e,label:t,value:n,options:s,change:o,wrong:a=[]}){return i`<div class="field ${a.length?
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
        ${s.map(([r,l])=>i`<option value=${r} .selected=${Se(r===n)}>${l}</option>`)}
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
              .checked=${Se(a===n)}
              @change=${()=>o(a)} />
            <span>${r}</span>
          </label>`)}
    </div>
  </div>`}function rt(e){Object.keys(e).length!==0&&document.querySelector('[aria-invalid="true"]')?.focus()}var J=f(
()=>{y();Jt();A()});function Fa(e){let[t,n]=[e?.die?.trim(),e?.punch?.trim()];return{...t?{die:t}:{},...n?{punch:n}:{}}}function ll(e){
let t=Fa(e);return Object.keys(t).length?{tools:t}:{}}function Fn(e){let{die:t,punch:n}=Fa(e);return[t&&`die ${t}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var xo,vs=f(()=>{xo=e=>({die:e?.die??"",punch:e?.punch??""})});function I(e,t){return Object.entries(e).filter(([n])=>cl(n,t)).flatMap(([,n])=>n)}function ap(e,t){return Object.
entries(e).filter(([n])=>!t.some(s=>cl(n,s))).flatMap(([,n])=>n)}function rp(e,t,n){let s=Object.entries(e);return s.
length===0?d:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>cl(o,c)).sort((c,h)=>h.length-c.length)[0],l=r?dl(t(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>So(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function dl(e,t){let n=t.join(" ");return n.startsWith(e)?n:`${e}: ${n}`}function So(e){let t=document.
getElementById(e);t?.closest("details")?.setAttribute("open",""),t?.focus({preventScroll:!0}),t?.scrollIntoView(
{block:"center"})}var cl,it=f(()=>{y();cl=(e,t)=>e===t||e.startsWith(`${t}.`)});function pl(e,t,n,s){let o=(a,r)=>L({next:!0,name:`${e}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:t[a]??"",wrong:I(n,`${e}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function lp(e,{dies:t,punches:n},s,o){
let a=t.flatMap(ul).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${Fn(e.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${pl("tools",e.tools??{},s,r=>o({...e,tools:{die:"",punch:"",...e.tools,...r}}))}
    </details>
    ${ip("codes-of-dies",a)}
    ${ip("codes-of-punches",n.map(({code:r})=>r))}`}function ks({tools_reason:e,tools_reason_said:t}){let n=ms(
{...t,words:e});return n?i`<p class="tools-reason" data-test="tools-reason">${n}</p>`:d}var hl,ul,ip,jn=f(()=>{
y();vs();G();J();it();hl=["tools.die","tools.punch"];ul=e=>e.shape==="multi_v"?e.openings:[e];ip=(e,t)=>i`<datalist id=${e}>${t.
map(n=>i`<option value=${n}></option>`)}</datalist>`});function ja(e){let t=(e??"").split(":")[0].trim();return y_.includes(t)?t:""}function To(e){if(!e)return"";let t=new Map;
for(let[n,s]of v_){let o=e[n];o&&t.set(o,[...t.get(o)??[],s])}return[...t].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var y_,v_,Ha=f(()=>{y_=["model","handbook","your test bends"];v_=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function dp(e){return i`<ul class="ratings" data-test="ratings">
    ${e.map(k_)}
  </ul>`}function k_(e){let{what:t,share_percent:n,level:s}=e;return i`<li class="rating" data-level=${s} data-what=${t}>
    <span class="rating-of"><b>${pp[t]??t}</b>${hp(e)}</span>
    ${k(s,n===null?"Unknown":`${Q(n,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${n===null?"open":""}" d="M0 9H250" />
      ${n===null?d:S_(n)}
    </svg>
    <span class="rating-words">${x_(e)}</span>
  </li>`}function x_({load_kn:e,load_kn_per_m:t,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=t===void 0?
g(he(e)):g(Ee(t));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=t===void 0?
g(he(n)):g(Ee(s));return`${a} of ${r}`}function S_(e){let t=Math.min(e/100*cp,250);return x`<path class="bar-load" d="M0 9H${t}" /><path class="bar-most" d="M${cp} 0V18" />`}
var cp,hp,ml,pp,up=f(()=>{y();A();G();cp=200;hp=({what:e,name:t})=>e.startsWith("press")||!t?"":` ${t}`,ml=e=>`${pp[e.
what]??e.what}${hp(e)}`,pp={press:"Press","press per metre":"Bed and ram, per length",punch:"Punch",die:"Die",
holder:"Holder","die holder":"Die holder"}});function xs(e,t,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(t-e)/o,c=(r?.find(_=>l/_<=a)??T_(l,a))*o,h=Math.
floor(e/c+1e-9)*c,p=Math.ceil(t/c-1e-9)*c,u=_=>M_(n+(_-h)/(p-h)*(s-n)),m=Math.round((p-h)/c),$=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),b=Array.from({length:m+1},(_,T)=>h+T*c).map(_=>({at:u(_),text:(_/o).toFixed($).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:u,marks:b}}function T_(e,t){let n=(e>0?e:1)/t,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function Ua(e){return e.length?`M${e.
map(([t,n])=>`${t} ${n}`).join("L")}`:""}var M_,fl=f(()=>{M_=e=>Math.round(e*100)/100});function mp({curve:e,set:t,peak:n,limits:s}){let o=Math.max(...e.map($=>$.force_kn_high)),a=s.filter($=>$.limit_kn!==
null).sort(($,b)=>Number(b.limit_kn)-Number($.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:$})=>Number(
$)<=($===r?A_:O_)*o),c=$p(e),h=xs(0,Math.max(o,...l.map($=>Number($.limit_kn))),{from:De.bottom,to:De.top+28,size:jt().
size}),p=($,b)=>[c.at($.punch_depth_mm),h.at($[b])],u=[...e.map($=>p($,"force_kn_high")),...e.map($=>p($,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${g(he(n.force_kn))}, at a depth o\
f ${g(gp(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Ga} ${Va}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${bp(c,h,jt().unit)}
    <path class="band" d="${Ua(u)}Z" />
    ${t.punch_depth_mm===null?d:wp(c.at(t.punch_depth_mm))} ${L_(l,h)}
    ${N_(a.filter($=>!l.includes($)))}
    <path class="curve" d=${Ua(e.map($=>p($,"force_kn")))} data-test="force-curve" />
    ${n?C_(c.at(n.punch_depth_mm),h.at(n.force_kn)):d}
  </svg>`}function fp({curve:e,set:t,trials:n}){let s=n.filter(u=>u.punch_depth_mm!==null),o=$p(e,s.map(u=>Number(
u.punch_depth_mm))),a=[...e.map(u=>u.loaded_angle_deg),...s.map(u=>u.measured_deg)],r=xs(Math.min(...a),180,{from:De.
bottom,to:De.top,steps:[5,10,15,30,45]}),l=u=>Ua(e.map(m=>[o.at(m.punch_depth_mm),r.at(m[u])])),c=t.set_angle_deg===
null?null:{x:o.at(Number(t.punch_depth_mm)),y:r.at(t.set_angle_deg)},p=`Angle over punch depth. ${c?`${g(S(t.set_angle_deg))}\
 under load at a depth of ${g(gp(Number(t.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} results drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Ga} ${Va}"
    role="img"
    aria-label=${p}
    data-test="stroke-angle">
    ${bp(o,r,"°")} ${c?wp(c.x):d}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?x`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:d}
    ${s.map(u=>P_(o.at(Number(u.punch_depth_mm)),r.at(u.measured_deg),u))}
  </svg>`}function $p(e,t=[]){let n=Math.max(...e.map(s=>s.punch_depth_mm),...t);return xs(0,n,{from:De.left,to:De.
right,size:C()==="in"?Ye:1,most:6})}function bp(e,t,n){let{left:s,right:o,top:a,bottom:r}=De,l=n==="°",c=t.marks.
map(({at:u,text:m})=>x`<path class="faint" d="M${s} ${u}H${o}"/>
      <text x=${s-6} y=${u+6} text-anchor="end"
        font-size=${Pt}>${m}${l?"°":""}</text>`),h=e.marks.map(({at:u,text:m})=>x`<path class="faint" d="M${u} ${r}v6"/>
      <text x=${Math.min(u,Ga-m.length*Pt*.3)} y=${r+24} text-anchor="middle"
        font-size=${Pt}>${m}</text>`),p=x`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${Pt}>${n}</text>`;return x`
    ${c}
    ${h}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${Va-8} text-anchor="end"
      font-size=${Pt}>punch depth, ${C()}</text>
    ${l?d:p}`}function L_(e,t){let n=-1/0;return E_(e).map(({limit_kn:s,names:o})=>{let a=t.at(s);return n=Math.
max(a-6,n+Pt+2),x`<path class="limit" d="M${De.left} ${a}H${De.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${De.left+6} y=${n}
        font-size=${Pt}>${o.join(", ")} ${g(he(s))}</text>`})}function E_(e){let t=new Map;for(let n of e)t.set(
Number(n.limit_kn),[...t.get(Number(n.limit_kn))??[],za(n)]);return[...t].map(([n,s])=>({limit_kn:n,names:s}))}
function N_(e){if(!e.length)return d;let t=e.length>1?`, ${e.length-1} more`:"";return x`<text class="limit-word" x=${De.
right} y="18" text-anchor="end" font-size=${Pt}
      data-test="limit-far">↑ ${gl(e[e.length-1])}${t}</text>`}function za({what:e,name:t}){return e==="pres\
s per metre"?"Bed and ram":e==="press"||!t?e[0].toUpperCase()+e.slice(1):`${e[0].toUpperCase()}${e.slice(1)} ${t}`}
function P_(e,t,{id:n,outlier:s}){return s?x`<path class="trial-odd" d="M${e-6} ${t-6}l12 12M${e+6} ${t-6}l-12 12"
        data-test="trial-point" data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${e} cy=${t} r="6" data-test="trial-point" data-id=${n}/>`}
var Ga,Va,De,Pt,O_,A_,gp,wp,gl,C_,_p=f(()=>{y();A();fl();Ga=400,Va=320,De={left:58,right:Ga-14,top:20,bottom:Va-
54},Pt=18,O_=3,A_=5;gp=e=>w(e,{digits:2});wp=e=>x`<path class="set-line" d="M${e} ${De.top}V${De.bottom}"/>
  <text class="set-word" x=${e-5} y=${De.bottom-6} text-anchor="end" font-size=${Pt}>set</text>`;gl=({what:e,name:t,
limit_kn:n})=>`${za({what:e,name:t})} ${g(he(n))}`;C_=(e,t)=>x`<circle class="peak" cx=${e} cy=${t} r="6" data-test="peak-mark"/>`});function kp({stroke:e,error:t,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?R_(e,t):d}
  </details>`}function R_(e,t){return t?i`<p class="hint" data-test="stroke-missing">
      ${t instanceof O?t.message:"The stroke could not be fetched."}
    </p>`:e?e.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${mp(e)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${B_(e)}</p>
        ${I_(e)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${fp(e)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${yp("curve")} under load</li>
          <li>${yp("curve let-go")} released</li>
          ${e.trials.length?i`<li>${F_} trials, released</li>`:d}
        </ul>
        <p data-test="stroke-set">${W_(e)}</p>
        ${D_(e)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function B_({peak:e,work_j:t}){if(!e)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${g(
tt(e))}.</b> The peak is expected at
    ${g(he(e.force_kn))}, ${vp(e.punch_depth_mm)} deep, ${g(S(e.loaded_angle_deg))}
    under load.`;return t?i`${n} Work in the stroke ${Q(t,0)} J.`:n}function I_({limits:e}){let t=e.filter(s=>s.
limit_kn!==null),n=e.filter(s=>s.limit_kn===null);return i`${t.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${t.map(gl).join(", ")}. The shaded band is what the force may be.
        </p>`:d}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(za).join(", ")}. Read it off the plate.
        </p>`:d}`}function W_({set:e}){return e.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${g(S(e.set_angle_deg))} under load at a depth of ${vp(e.punch_depth_mm)}\
.`}function D_({trials:e}){let t=e.filter(n=>n.punch_depth_mm===null).length;return t?i`<p class="hint">
        ${t===1?"One result has":`${t} results have`} no depth written down and can't be drawn.
      </p>`:d}var vp,yp,F_,xp=f(()=>{y();_p();F();A();$t();vp=e=>g(w(e,{digits:2}));yp=e=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${e} d="M2 8H38" />
  </svg>`,F_=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="trial-point" cx="20" cy="8" r="6" />
</svg>`});function Ct(e,t,n,s,o=Tp(e,t,s)){let[a,r]=[e[`${t}_low`],e[`${t}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return gt(n,s(e[t]),{band:l?[s(a),s(r)]:null,note:o,origin:ja(e.sources?.[t]),test:t})}function Tp({
handbook:e,sources:t,...n},s,o){let a=e?.[s];if(typeof a!="number"||ja(t?.[s])==="handbook")return d;let r=o(a);
if(r.text===o(n[s]).text)return d;let[l,c]=[n[`${s}_low`],n[`${s}_high`]],h=a<l||a>c;return i`<span class=${h?
"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${g(r)}</span
  >`}function Mp(e,t,n){return i`${sp(e.checks)}
    <section class="bend-first" aria-label="What to set" data-test="first">
      ${j_(e,t)} ${H_(e)}
    </section>
    ${op(e.checks)} ${ys(e.checks)}
    <div class="columns bend-columns">
      <div>${z_(e)} ${K_(e)}</div>
      <div>${Y_(e,n)} ${kp(n.stroke)} ${J_(e,n)}</div>
    </div>
    ${Z_(e)} ${an(e.checks)}`}function j_(e,{punches:t,dies:n}){let s=n.find(({code:a})=>a===e.die),o=t.find(({
code:a})=>a===e.punch);return!e.die&&!e.punch?i`<p class="panel" data-test="no-tools">
      No tools of the crib chosen: the figures are for a V of ${g(w(e.v_opening_mm))}.
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:e.die,tool:s},{kind:"punch",code:e.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"
              ><b>${r??"none"}</b> <span>${l?.name??""}</span></span
            >
            <span class="where">${l?Qt(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:d}
          </li>`)}
    </ul>
    ${ks(e)}`}function H_(e){return i`<div class="figures">${e.first_hit?V_(e):G_(e)}</div>
    <div class="figures three">
      ${yo("Allow for",e,"force_kn")}
      ${gt("Flange from",w(e.min_flange_mm),{test:"min_flange_mm"})}
      ${Ct(e,"bend_deduction_mm","Deduction",Hn)}
    </div>
    ${U_(e)} ${ws(e.first_hit)}`}function U_({ratings:e}){let t=e?.find(({share_percent:s})=>s===null),n=(e??[]).
reduce((s,o)=>(o.share_percent??0)>(s?.share_percent??0)?o:s,null);return i`<p class="weakest" data-test="weakest">
    ${t?i`<b>${ml(t)}: rating unknown.</b>`:d}
    ${n?i`${ml(n)}: ${Q(n.share_percent??0,0)} % of the rating.`:d}
  </p>`}function z_(e){return ke("Force against the ratings",i`<div class="figures">
        ${yo("Per length, allow for",e,"force_kn_per_m")}
        ${gt("Expected",he(e.force_kn),{note:q_(e),origin:ja(e.sources?.force_kn),test:"force_expected"})}
      </div>
      ${e.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
              ${dp(e.ratings)}`:d}`)}function q_(e){let t=e.force_kn_low,n=Tp(e,"force_kn",he);return i`${typeof t==
"number"?`at least ${g(he(t))}`:d}${n===d?d:i` <br />${n}`}`}function K_(e){return ke("What comes out",i`<div class="figures">
      ${Ct(e,"inside_radius_mm","Inside radius",Hn)}
      ${Ct(e,"springback_deg","Springback",S)}
      ${Ct(e,"bend_allowance_mm","Bend allowance",Hn)}
      ${Ct(e,"k_factor","K-factor",Op)}
    </div>`)}function Y_(e,{pose:t,show:n}){if(!e.drawing)return d;let s=g(S(e.set_angle_deg)),o=t==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return ke("Drawn to scale",i`<section class="bend-drawing" aria-label="The bend in its tools">
      ${Y({name:"pose-shown",label:"Shown",value:t,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
      ${bt(e.drawing,{pose:t,close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,words:`The sheet i\
n die and punch, ${o}`})}
    </section>`,{test:"drawing"})}function J_(e,{use:t}){return e.options?.length?ke(`Dies of the crib: ${e.options.
length}`,i`<p class="hint">Tap one to use it. Each with the reason for its rank.</p>
      ${Qh(e.options,t)}`,{test:"dies"}):d}function Z_({opinions:e,sources:t}){return e?ke("Second opinions",i`<div class="opinions">
      ${e.force?.length?Sp("Force by published relations",e.force,[["force_kn","Force",he],["force_kn_per_m","\
Per length",Ee]]):d}
      ${e.allowance?.length?Sp("Bend allowance by published relations",e.allowance,[["bend_allowance_mm","Allo\
wance",Hn],["k_factor","K",Op]]):d}
      ${t?i`<details>
              <summary>Where each figure comes from</summary>
              <dl class="sources">
                ${Object.entries(t).map(([n,s])=>i`<dt>${X_[n]??n}</dt>
                      <dd>${s}</dd>`)}
              </dl>
            </details>`:d}
    </div>`,{open:!1}):d}function Sp(e,t,n){return i`<div class="table">
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
              ${n.map(([o,,a])=>i`<td class="number">${g(a(s[o]))}</td>`)}
            </tr>`)}
      </tbody>
    </table>
  </div>`}var Hn,G_,V_,Op,X_,Ap=f(()=>{y();vo();fe();A();$t();ep();Ca();Wn();ko();_s();J();jn();Ha();up();xp();
Hn=e=>w(e,{digits:2});G_=e=>i`
  ${Ct(e,"set_angle_deg","Set angle",S)}
  ${Ct(e,"punch_depth_mm","Depth",Hn)}
`,V_=e=>i`
  ${Ct(e,"set_angle_deg","First hit: set angle",S,`then about ${g(S(e.expected_set_angle_deg))}`)}
  ${Ct(e,"punch_depth_mm","First hit: depth",Hn,`then about ${g(Hn(e.expected_punch_depth_mm))}`)}
`;Op=e=>({text:e==null?"–":Q(e,2),unit:""});X_={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var Ep={};ne(Ep,{show:()=>ty});async function ty(e){e.title("Check a bend"),e.render(Oe("Looking into the crib\
…"));let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async N=>(await ce(N,e.signal)).items)),o={
dies:n,punches:s},a=Ea(e.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=t[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:matchMedia("(min-width: 1000px)").matches},h=Nt(
async(N,v)=>(await M("POST","/bend",{body:N,signal:v})).body,({answer:N=null,error:v=null})=>{Object.assign(l,
{answer:N,error:v,busy:!1}),Object.assign(c,{stroke:null,error:null}),u(),b()},e.signal),p=Nt(async(N,v)=>(await M(
"POST","/stroke",{body:N,signal:v})).body,({answer:N=null,error:v=null})=>{Object.assign(c,{stroke:N,error:v}),
b()},e.signal);function u(){p.stop(),c.open&&l.answer&&!c.stroke&&p.ask(Bn(a),{now:!0})}function m(N){history.
replaceState(null,"",`/bend?${Na(a)}`),l.busy=wo(a).length===0,l.busy?h.ask(Bn(a),N):(h.stop(),Object.assign(l,
{answer:null,error:null})),b()}function $(N,v){Object.assign(a,N),m(v)}function b(){let N=l.error instanceof O?
l.error.errors:{};e.render(i`<h1 class="bend-title">Check a bend</h1>
        <div
          class="desk"
          aria-busy=${l.busy?"true":"false"}
          data-test="bend"
          data-busy=${String(l.busy)}>
          <form
            class="panel desk-form"
            aria-label="The bend"
            @submit=${v=>v.preventDefault()}>
            ${ny(a,{metals:t,...o,openTools:r,answer:l.answer},N,$)}
          </form>
          <p class="unseen" role="status">${_()}</p>
          <div class="desk-answer" data-test="answer">${T(N)}</div>
        </div>`),l.busy||e.ready()}function _(){let{answer:N}=l;if(!N||l.busy)return"";let v=N.worst==="ok"?"":
`${N.worst}. `,P=N.set_angle_deg===null?"nothing to set":`set ${g(S(N.set_angle_deg))}`;return`${v}Die ${N.die??
"none"}, allow for ${g(tt(N))}, ${P}.`}function T(N){let v=wo(a);return v.length?xe("One bend, all its figures",
i`Still to type: ${v.map(P=>ey[P]).join(", ")}.`):l.error?E(N):l.answer?Mp(l.answer,o,{pose:l.pose,show:P=>{l.
pose=P,b()},use:P=>$({die:a.die===P?"":P},{now:!0}),stroke:{...c,toggled:P=>{c.open!==P&&(c.open=P,u(),b())}}}):
Oe("Working it out…")}function E(N){if(!(l.error instanceof O)||l.error.status>=500)return i`${Yt(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let v=ap(N,Q_),P=Object.keys(N).length>v.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...P,...v].map(X=>i`<p>${X}</p>`)}
    </div>`}m({now:!0})}function ny(e,{metals:t,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(u,m,$={})=>L(
{name:u,label:m,value:e[u],wrong:I(r,u),change:b=>l({[u]:b}),...$}),h=(u,m,$)=>q({name:u,label:m,value:e[u],options:$,
wrong:I(r,u),change:b=>l({[u]:b},{now:!0})}),p=e.metal&&!t.some(({code:u})=>u===e.metal);return i`${h("metal",
"Metal",[...p?[[e.metal,`${e.metal} (not in the shop)`]]:[],...oy(t)])}
    <div class="fields three">
      ${c("thickness_mm","Thickness",{unit:C(),hint:a?sy(a,e.thickness_mm):"3, 1/8 in, 16 ga"})}
      ${c("bend_length_mm","Length",{unit:C()})}
      ${c("included_angle_deg","Angle",{unit:"°",keys:"decimal",hint:a?"":"90 is square"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${h("die","Die",[["","Best of the crib"],...Lp(e.die,n)])}
      ${h("punch","Punch",[["","Best of the crib"],...Lp(e.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:C()})}
    </details>
    ${e.die||e.punch||e.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:d}`}function sy({thickness_mm:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":g(w(
e,{digits:2})),t??""].filter(Boolean).join(", ")}function Lp(e,t){let n=t.map(s=>[s.code,`${s.code} · ${s.name}`]);
return e&&!t.some(s=>s.code===e)?[[e,`${e} (not in the crib)`],...n]:n}var Q_,ey,oy,Np=f(()=>{y();F();Pa();fe();
_o();A();$t();Ap();J();Re();it();Q_=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","punch",
"punch_radius_mm"],ey={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"angl\
e"};oy=e=>e.map(({code:t,name:n})=>[t,n])});function Pp(e){let t,n=async()=>{document.visibilityState!=="visible"||e.aborted||(t=await navigator.wakeLock?.
request("screen").catch(()=>{}),e.aborted&&t?.release())};document.addEventListener("visibilitychange",n,{signal:e}),
e.addEventListener("abort",()=>t?.release()),n()}var $l,bl=f(()=>{y();$l=()=>"wakeLock"in navigator?d:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function Un(e){let{body:t}=await M("GET","/benches",{signal:e,timeout:3e3});return t.benches}async function Bp(e){
let{body:t}=await M("PUT",`/benches/${encodeURIComponent(e)}`,{body:{code:null,step:0}});return t}async function Ip(e){
await M("DELETE",`/benches/${encodeURIComponent(e)}`)}function wl(){let e=Fp(Cp);return typeof e?.name=="strin\
g"?{code:null,step:0,etag:null,...e}:null}function Fp(e){try{return JSON.parse(localStorage.getItem(e)??"null")}catch{
return null}}function jp(e,t){try{t===null?localStorage.removeItem(e):localStorage.setItem(e,JSON.stringify(t))}catch{}}
var Cp,Rp,Gn,Rt,_l,Wp,Dp,rn=f(()=>{F();Cp="flangebook.bench.here",Rp="flangebook.bench.last";Gn=e=>/^\d/.test(
e)?`press screen ${e}`:e,Rt=e=>/^\d/.test(e)?`Press screen ${e}`:e;_l=e=>jp(Cp,e),Wp=()=>String(Fp(Rp)??""),Dp=
e=>jp(Rp,e)});function qa(e,t,n,s){let o=`/benches/${encodeURIComponent(e)}`,a={answers:null,gone:!1,waits:!1,late:!1,refused:""},
r=null,l=t,c=0,h=!1,p;function u(v){let P={...a,waits:r!==null,...v},X=Object.keys(P).every(de=>P[de]===a[de]);
a=P,!X&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(p),h||s.aborted)return;h=!0;try{await(r&&!$()?
b():_()),T()}catch(P){s.aborted||E(P)}h=!1;let v=r!==null&&c===0;s.aborted||(p=setTimeout(m,v?0:Math.min(ry,ay*
1.5**c)))}function $(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,u({late:!0}),!0)}async function b(){let v=r;
if(!v)return;let P=R().name?{by:R().name}:{};try{l=(await M("PUT",o,{body:{...v.place,...P},etag:v.whatever?null:
l,signal:s,timeout:Hp})).etag,r===v&&(r=null),n.sent?.(v.place,l??"",r!==null),u({refused:"",late:!1})}catch(X){
if(!(X instanceof O)||X.status>=500)throw X;r=null,l=null,u({refused:X.status===412?"":X.message}),await _()}}
async function _(){let v=r,{status:P,body:X,etag:de}=await M("GET",o,{seen:l,signal:s,timeout:Hp});s.aborted||
r!==v||P===304||(l=de,u({late:!1}),n.heard(X,de??""))}function T(){let v=a.answers===!1;c=0,u({answers:!0,gone:!1}),
qt(!0),v&&H()}function E(v){c+=1,v instanceof O&&v.status===404?u({answers:!0,gone:!0}):v instanceof O&&v.status<
500?u({answers:!0,refused:v.message}):u({answers:!1}),v instanceof j?qt(!1,v):v instanceof O||console.error(v)}
let N=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",N,{signal:s}),
addEventListener("online",N,{signal:s}),s.addEventListener("abort",()=>clearTimeout(p)),m(),{move(v,{whatever:P=!1}={}){
r={place:v,at:Date.now(),whatever:P},u({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var ay,ry,Hp,yl=f(()=>{
F();se();ve();ay=1e3,ry=4e3,Hp=3e3});function Up(e,t){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=iy.
has(o.key)?e.next:ly.has(o.key)?e.back:null;!a||dy(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<cy)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:t}),addEventListener("click",o=>o.detail>0&&hy(),{signal:t})}
function dy({key:e,target:t,repeat:n}){let s=t;return s.matches("input, select, textarea")?!0:!n&&(e==="Enter"||
e===" ")&&s.matches("button, a, summary")}function hy(){let e=document.activeElement;e?.matches("button, summa\
ry, input[type=range]")&&e.blur()}var iy,ly,cy,Gp=f(()=>{iy=new Set(["ArrowRight","PageDown"," ","Enter"]),ly=
new Set(["ArrowLeft","PageUp","Backspace"]),cy=300});function Ka(e,{pixels:t=ps(),tallest:n=t*.7,test:s="folded",mark:o=""}={}){let a=V*2.4,r=En(e.bounds,t-2*a,n-1.6*
a),[,l,c]=e.bounds,[h,p]=r([c,l]),u=m=>m.map(([$,b,_,T])=>`M${r([$,b])}L${r([_,T])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${my(e)}
    width=${h+2*a}
    height=${p+1.6*a}
    viewBox="${-a} ${-V*.7} ${h+2*a} ${p+1.6*a}">
    ${e.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>x`<path class="marked-face" d="M${m.map($=>r($).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${u(e.lines.hidden)} />
    <path class="bend-edge" d=${u(e.lines.bend)} />
    <path class="edge" d=${u(e.lines.edge)} />
    ${e.dimensions.map(({name:m,from:$,to:b,mm:_})=>py(r($),r(b),m,U(_)))}
    ${e.faces.filter(({flat:m})=>m===1).map(({side:m,outline:$})=>uy(m,$.map(r),m===o))}
  </svg>`}function py(e,t,n,s){let o=n==="length"?[-V*.5,V*.95]:n==="width"?[V*.5,V*.95]:[V*.9,0],[a,r]=[e,t].
map(([p,u])=>[p+o[0],u+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],h=Ve(s,V);return x`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-h/2} y=${c-V*.65} width=${h} height=${V*1.3}/>
    <text x=${l} y=${c} font-size=${V} text-anchor="middle" dominant-baseline="central">${s}</text>`}function uy(e,t,n){
let s=t.reduce((r,l)=>r+l[0],0)/t.length,o=t.reduce((r,l)=>r+l[1],0)/t.length,a=Ve(e,V);return x`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-V*.65}
      width=${a} height=${V*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${V}
      text-anchor="middle" dominant-baseline="central">${e}</text>`}function my({length_mm:e,width_mm:t,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${Vn({length_mm:e,width_mm:t,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function Vn({length_mm:e,width_mm:t,height_mm:n}){
return g({text:[e,t,n].map(U).join(" × "),unit:w(0).unit})}function Vp(e,{pixels:t=ps(),tallest:n=t*.9,test:s="\
blank"}={}){let[o,a]=[U(e.length_mm),U(e.width_mm)],r=Ve(a,V)+V*1.8,l=En([0,0,e.length_mm,e.width_mm],t-r-12,n-
V*3),[c,h]=l([e.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${$y(e)}
    width=${c+r+12}
    height=${h+V*3}
    viewBox="-6 -6 ${c+r+12} ${h+V*3}">
    <path class="sheet" d="M${e.outline.map(p=>l(p).join(" ")).join("L")}Z" />
    ${e.lines.map(p=>gy(p,l))}
    <path
      class="dimension"
      d="M0 ${h+V*1.3}H${c}M-4 ${h+V*1.3+4}l8 -8M${c-4} ${h+V*1.3+4}l8 -8" />
    ${fy(c/2,h+V*1.3,o)}
    <path
      class="dimension"
      d="M${c+V} 0V${h}M${c+V-4} 4l8 -8M${c+V-4} ${h+4}l8 -8" />
    <text x=${c+V*1.6} y=${h/2} font-size=${V} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function fy(e,t,n){let s=Ve(n,V);return x`<rect class="ground" x=${e-s/2} y=${t-V*.7} width=${s} height=${V*
1.4}/>
    <text x=${e} y=${t} font-size=${V} text-anchor="middle" dominant-baseline="central">${n}</text>`}function gy({
bend:e,place:t,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,h]=[l([n,s]),l([o,a])],p=.5+(t%2?-1:1)*.12*
Math.ceil((t-1)/1),[u,m]=[c[0]+(h[0]-c[0])*p,c[1]+(h[1]-c[1])*p];return x`<path class="fold ${r}" d="M${c}L${h}"/>
    <circle class="badge" cx=${u} cy=${m} r=${V*.68}/>
    <text class="badge-number" x=${u} y=${m} font-size=${V*.95} text-anchor="middle"
      dominant-baseline="central">${e}</text>`}function $y(e){let t=e.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${U(e.length_mm)} by ${U(e.width_mm)}, inside of the box up. ${t.join("; ")}.`}var V,
Fe,Ss=f(()=>{y();A();ka();nn();at();V=18;Fe=e=>!!e?.folded});function Ya(e,t){return!Fe(e)||!t.side?d:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${Ka(e.folded,{mark:t.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${re(w(t.bend_length_mm))}</b> long.</li>
      ${zp("Punch",t.segments_mm?.punch)} ${zp("Die",t.segments_mm?.die)}
      ${t.clear_between_mm===null||t.clear_between_mm===void 0?d:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${re(w(t.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${by(t.sides_near??[])}
    </ul>
  </section>`}function zp(e,t){if(!t?.length)return d;let n=t.reduce((o,a)=>o+a,0),s=t.length>1?`${t.map(U).join(
" + ")} = `:"";return i`<li class="pieces">${e}: <b>${s}${U(n)} ${w(0).unit}</b></li>`}function by(e){if(!e.length)
return d;let[t]=[...e].sort((o,a)=>o.distance_mm-a.distance_mm),n=g(S(t.included_angle_deg)),s=re(w(Math.abs(t.
distance_mm)));return i`<li data-test="sides-near">
    ${t.distance_mm<0?i`<b>The finished ${t.side} side runs ${s} into the ${t.tool}</b>, at ${n}.`:i`The finished ${t.
side} side stays <b>${s}</b> from the ${t.tool}, nearest at ${n}.`}
  </li>`}var vl=f(()=>{y();Ss();at();A()});function Yp(e){return e.number===1?"first":e.turn_quarter?e.turn_over?"quarter-over":"quarter":e.turn_over&&e.
turn_end?"both":e.turn_over?"over":e.turn_end?"end":"same"}function Ts(e){let t=Yp(e);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${Zp}${Xp[t]}</svg
    ><b>${Jp[t]}.</b>`}function Ja(e,t){let n=Yp(e);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${Zp}${Xp[n]}</svg>
    <p>
      <b data-test="move">${Jp[n]}.</b>
      <span data-test="face">${e.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${yy(e,t)}
    </p>
  </div>`}function Mo({gauged_end:e,gauged_side:t},n){return t?`${t} side`:`${e} end${n?` (flat ${e==="left"?1:
n})`:""}`}function yy(e,t){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=e;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=Mo(e,t);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var Jp,Zp,kl,qp,wy,Kp,_y,Xp,Ms=f(()=>{y();Jp={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},Zp=x`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,kl=x`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
qp=x`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,wy=x`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
Kp=x`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,_y=x`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
Xp={first:[wy],same:[_y],over:[kl],end:[qp],both:[kl,qp],quarter:[Kp],"quarter-over":[kl,Kp]}});function Oo({frames:e},t){let n=e.findIndex(a=>a.share>=t);if(n<0)return e[e.length-1];if(n===0)return e[0];let[
s,o]=[e[n-1],e[n]];return xl(s,o,(t-s.share)/(o.share-s.share))}function xl(e,t,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(e.share,t.share),phase:t.phase,included_angle_deg:s(e.included_angle_deg,
t.included_angle_deg),punch_y_mm:s(e.punch_y_mm,t.punch_y_mm),left:o(e.left,t.left),right:o(e.right,t.right),inside_radius_mm:s(
e.inside_radius_mm,t.inside_radius_mm),half_arc_mm:s(e.half_arc_mm,t.half_arc_mm),gauge_x_mm:e.gauge_x_mm===null||
t.gauge_x_mm===null?null:s(e.gauge_x_mm,t.gauge_x_mm)}}function Qp({frames:e}){let t=e.find(o=>o.punch_y_mm<=0)??
e[0],n=Math.min(...e.map(o=>o.punch_y_mm)),s=[...e].reverse().find(o=>o.phase==="bend")??e[e.length-1];return{
before:t.share,after:n<0?s.share:e[e.length-1].share}}function eu(e,t){let n=-t.punch_travel_mm,s=t.phase==="b\
end",o=c=>s?c.included_angle_deg:t.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?t.included_angle_deg:t.phase===
"approach"?n:-n,r=vy(e.frames,t.phase);return{...ky(r,o,a),punch_y_mm:n}}function vy(e,t){let n=t==="withdrawa\
l"?["release","withdrawal"]:[t],s=e.findIndex(a=>n.includes(a.phase)),o=e.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:e}function ky(e,t,n){for(let a=1;a<e.length;a+=1){let[r,l]=[t(e[a-1]),t(e[a])];if(n<=r&&
n>=l&&r>l)return xl(e[a-1],e[a],(r-n)/(r-l))}if(n>t(e[0]))return e[0];let[s,o]=e.slice(-2);return o.phase==="b\
end"?xl(s,o,(t(s)-n)/(t(s)-t(o))):o}function xy({thickness_mm:e,left:t,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=Os([[-a,-e/2],[-a,e/2]],s),[h,p]=Os([[a,-e/2],[a,e/2]],o),u=([$,b])=>`${$} ${-b}`,
m=$=>$.map(b=>`L${u(b)}`).join("");return`M${u(l)}A${r+e} ${r+e} 0 0 0 ${u(h)}${m(Os(n,o))}L${u(p)}A${r} ${r} \
0 0 1 ${u(c)}${m(Os(t,s))}Z`}function tu(e,{phase:t,punch_y_mm:n}){let s=t==="putting in"||t==="approach",o=e.
frames.filter(u=>u.phase===(s?"putting in":"taking out"));if(!o.length||t==="bend"||t==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:u,right:m})=>[...Os(e.left,u),
...Os(e.right,m)]),[c,h]=[l.map(([u])=>u),l.map(([,u])=>u)];return{bounds:[Math.min(...c),Math.min(...h),Math.
max(...c),Math.max(...h,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function Os(e,[t,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return e.map(([r,l])=>[t+o*r-a*l,n+a*r+o*l])}function Za(e,t,n){let s=-n.
punch_y_mm,o=t.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:xy(t,n),tools:[
e.before.ram,e.before.holder,e.before.punch].map(Ae).filter(Boolean),down:s,gauge:Ae(e.before.gauge),back:a}}var Sl=f(
()=>{nn()});function Xa({clearance:e}){let t=e?.hits?.[0]??e?.nearest??null;return t&&t.distance_mm<=lu?t:null}function zn(e){
let{drawing:t,motion:n}=e;if(!t||!n?.frames?.length)return null;let s=Xa(e),{before:o,after:a}=Qp(n),r=s?eu(n,
s):Oo(n,(o+a)/2),l=!!e.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:Za(t,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Collision":s?"Closest":"Half way"}}function As(e){let{clearance:t}=e;
if(!t)return"Clearance was not checked at this step.";let n=Xa(e);if(!n)return`Nothing comes within ${re(w(lu,
{digits:0}))} of the part.`;let s=re(w(Math.abs(n.distance_mm))),o=typeof t.needed_mm=="number"?`, ${re(w(t.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${nu(n.tool)}, ${su(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${nu(n.tool)}, ${su(n)}${t.hits?.length?o:""}.`}function su({phase:e,included_angle_deg:t,punch_travel_mm:n}){
let s=g(w(Math.max(0,-n),{digits:0}));return e==="approach"?`as the punch comes down, ${s} above the sheet`:e===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${g(S(t))}`}
function Tl({motion:e},t){let n=g(S(t.included_angle_deg));if(t.phase==="bend")return e.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(t.phase==="release")return`Releasing, ${n}`;if(t.phase==="taking out")
return`Taking it out${ou(e,t)}`;if(t.phase==="putting in")return`Putting it in${ou(e,t)}`;let s=g(w(Math.max(0,
t.punch_y_mm),{digits:0}));return t.phase==="withdrawal"?`Punch rising, ${s} up`:t.punch_y_mm>0?`Punch coming \
down, ${s} up`:"First touch, sheet flat"}function ou({frames:e},{phase:t,right:n}){let s=t==="putting in"?e.find(
a=>a.phase==="approach"):[...e].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??e[0]).
right[2]));return o?`, tilted by ${o}°`:", no tilt"}function Sy({clearance:e}){let{way_in:t,way_out:n,rides_up:s,
clear:o}=e??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(t==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[ru(t,n,"slide"),ru(t,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${au}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${t==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${au}`}:null}function wt(e,{short:t=!1}={}){let n=Sy(e);return n?
t?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${iu(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${iu(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:d}var lu,nu,au,ru,iu,Ty,My,Bt=f(()=>{y();Sl();A();lu=100;nu=e=>({gauge:"gauge finger",sheet:"part it\
self"})[e]??e;au="Punch still, at its top. Fingers never between.";ru=(e,t,n)=>[e===n&&"in",t===n&&"out"].filter(
Boolean).join(" and ");iu=e=>e==="swing"?Ty:My(e!=="slide"),Ty=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,My=e=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${e?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function Ol({segments_mm:e,segments_total_mm:t}){if(!e?.length)return"";let n=e.map(o=>U(o)).join(" + "),s=w(0).
unit;return e.length>1?`${n} = ${U(t??0)} ${s}`:`${n} ${s}`}function Ls(e,t=0,n=[]){return e?.length?i`<ul class="tools" data-test="tools">
    ${e.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${Ml(s)}</span>
          <span class="more"
            >${[Ol(s),du(s.steps,t),Al(s,n),Oy(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function du(e,t){return!e?.
length||e.length===t?"":`step${e.length>1?"s":""} ${e.join(", ")}`}function Al({kind:e,code:t},n){let s=n.filter(
a=>e==="punch"&&a.punch===t),o=s.filter(a=>a.punch_turned);return o.length?`reversed${o.length<s.length?` for ${du(
o.map(({number:a})=>a),0)}`:""}`:""}function Oy(e){return e==="good"||!e?"":e==="unknown"?"condition unknown":
e}function Qa(e){let t=e.length_mm_low===e.length_mm_high||e.length_mm_low===void 0;return i`<div class="figures">
      ${gt("Blank length",w(e.length_mm,{digits:2}),{test:"blank-length",band:t?null:[w(e.length_mm_low,{digits:2}),
w(e.length_mm_high,{digits:2})]})}
      ${gt("Blank width",w(e.width_mm,e.outline?{digits:2}:{}),{test:"blank-width",band:e.width_mm_low===void 0||
e.width_mm_low===e.width_mm_high?null:[w(e.width_mm_low,{digits:2}),w(e.width_mm_high,{digits:2})]})}
      ${gt("Mass",Zs(e.mass_kg),{test:"blank-mass"})}
    </div>
    ${e.rests_on?i`<p data-test="blank-rests-on">Blank by ${e.rests_on}.</p>`:d}
    ${e.lines?i`<p data-test="relief">${Ll(e)}</p>`:d}`}function Ll({relief:e,lines:t=[]}){let n=new Set(t.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!e?"":e.shape===
"none"?"Corners without relief.":`Corner reliefs ${e.shape}, ${g(w(e.size_mm,{digits:1}))} ${e.shape==="round"?
"across.":"a side."}`}function hu(e){let t=s=>w(s,{digits:2}).text,n=[["At",s=>t(s.at_mm)],["Angle",s=>g(S(s.included_angle_deg))],
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
              <th role="rowheader" scope="row">${s.bend} ${Ay(e,s)}${s.direction}</th>
              ${n.map(([o,a],r)=>i`<td
                    role="cell"
                    class="number"
                    data-head=${o}
                    data-test=${r===0?"line-at":d}>
                    ${a(s)}
                  </td>`)}
            </tr>`)}
      </tbody>
    </table>
  </div>`}function Ay({lines:e},{bend:t}){let n=e?.find(s=>s.bend===t)?.side;return n?`${n} `:""}function El(e,t=0){
let n=e.turn_over||e.turn_end||e.turn_quarter,s=e.gauged_against&&e.gauged_against!=="flat edge"?`, against th\
e ${e.gauged_against}`:"",o=e.gauged_end?`${Ly(Mo(e,t))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!e.turn_quarter)}
            data-over=${String(e.turn_over)}
            data-end=${String(e.turn_end)}
            >${Ts(e)}</span
          > `:d}
    ${wt(e,{short:!0})} ${o}${e.inside_face==="up"?"top":"bottom"} face
    up.${Ey(e)}
  </span>`}function Ey({hits:e}){if(!e)return d;let t=e.gauge_x_mm.map(n=>U(n)).join(", ");return i` <span data-test="hits"
    >${e.count} bumps, ${g(w(e.pitch_mm,{digits:2}))} apart, gauge X ${t}.</span
  >`}function _t(e){let t=e.operation&&e.operation!=="bend"?e.operation:"bend",n=e.side?`Bend ${e.bend}, ${e.side}`:
`Bend ${e.bend}`;return t==="bend"?n:`${n}, ${t}`}function Ny(e,t,n){let s=e[`${t}_low`],o=e[`${t}_high`],a=s==
null||s===o?d:i`<small class="band">${n(s).text} to ${g(n(o))}</small>`;return i`${g(n(e[t]))}${a}`}function cu(e,t,n){
return ut(e,e)?e.first_hit?Py(e,t,n):e.limits?Ny(e,t,n):g(n(e[t])):g(n(null))}function Py(e,t,n){let s=t==="se\
t_angle_deg"?`first hit, ${rl(e.first_hit)}; then about `:"then about ";return i`${g(n(e[t]))}<small class="band"
      >${s}${g(n(e[`expected_${t}`]))}</small
    >`}function er(e,{link:t}={}){let n=o=>w(o,{digits:2}),s=e.part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${e.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${t?i`<a href=${t(o.number)}>${o.number}. ${_t(o)}</a>`:i`${o.number}. ${_t(o)}`}
                <small>${g(S(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${g(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${g(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${cu(o,"set_angle_deg",S)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${cu(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${g(tt(o))}<small class="band">expected ${g(on(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch reversed</span>`:
d}
              </td>
              <td role="cell" data-head="Sheet" class="long">${El(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var Ml,Ly,ln=f(()=>{y();fe();Ln();A();$t();at();Ca();Wn();Ms();Bt();Ml=Qt;Ly=e=>e[0].toUpperCase()+e.
slice(1)});function tr(e,t){return i`<header class="step-top">
    <a class="step-card" href="/c/${e.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${e.title||e.display_code}</span></a
    >
    ${Nl(e,t)}
  </header>`}function qe(e,t,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${e}${t.unit&&t.unit!=="°"?i` <span class="unit">${t.unit}</span>`:d}</span
    >
    <span class="value" data-test="${n}-value">${t.text}${t.unit==="°"?"°":d}</span>
  </div>`}var Nl,cn=f(()=>{y();ln();Nl=(e,t)=>i`<h1>
    <span data-test="step-number">Step ${t.number} of ${e.plan.steps.length}</span>
    <small
      >${_t(t)}
      ${t.direction}${t.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch reversed</b>`:
d}</small
    >
  </h1>`});function pu(e,t,n,s,o){let a=zn(e),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?Oo(e.motion,l):null,
h=a&&r==="during"?a.shown:null,p=g(w(e.gauge_x_mm)),u=(m,$,b,_)=>i`<button
      type="button"
      class="button"
      aria-pressed=${b?"true":"false"}
      data-test=${_}
      @click=${()=>{Object.assign(n,$,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${bt(e.drawing,{pose:r==="between"?"during":r,close:n.close,opening:e.v_opening_mm,gauge:p,
angle:t,moment:h??(c&&Za(e.drawing,e.motion,c)),near:a?.near??null,mark:r==="during",room:c&&tu(e.motion,c),words:`${_t(
e)}, ${Ry(e,r)}. Gauge at ${p}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${By(e,r,c)}
          </p>`:d}
    <div class="toggles">
      ${u("Before",{at:"before"},r==="before","before")}
      ${a?u(a.name,{at:"during"},r==="during","during"):d}
      ${u("After",{at:"after"},r==="after","after")}
      ${u(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?Iy(e,l,n,s,o):d}`}function Ry(e,t){return t==="before"?"the sheet on the die before the bend":t==="aft\
er"?"at the bottom of the stroke":t==="during"?As(e):"on its way"}function By(e,t,n){return n?Tl(e,n):As(e)}function Iy(e,t,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&Wy(t>=1?0:t,n,s,o),s()};return i`<div class="motion">
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
      aria-valuetext=${Tl(e,Oo(e.motion,t))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function Wy(e,t,n,s){let o=performance.now(),a=r=>{!t.playing||s.aborted||(t.share=Math.min(1,e+Math.
max(0,r-o)/Cy),t.playing=t.share<1,n(),t.playing&&requestAnimationFrame(a))};Object.assign(t,{at:"between",share:e}),
requestAnimationFrame(a)}var Cy,Ao,nr=f(()=>{y();Sl();vo();A();ln();Bt();Cy=7e3,Ao=()=>({at:"before",share:0,close:!1,
playing:!1})});function uu(e,{waits:t,correction:n}){if(!t&&!n?.to_check?.length)return i`<p data-test="no-setting">${n?.words||
"No new setting comes from this one."}</p>`;let s=n?.said?ye(n.said):n?.what??`${Dy(e)} Something else is wron\
g.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${k("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??$h).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function Dy(e){let t=ji(e),n="That is further off than the card’s table of corrections goes.";return t?
`${n} Tools and press end at ${g(S(t.sharpest_deg))} under load.`:n}function mu(e,t){return e.die?i`<p class="why-not-set" data-test="why-not-set">
    ${k("stop")} <b>No angle and depth.</b>
    ${t?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:d}var Pl=f(()=>{y();Ln();A();G()});function fu({stations:e=[]}){return e.length<2&&!e.some(t=>t.off_centre_level!=="ok")?d:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${e.map(t=>i`<li>
            <b>Station ${t.number}</b> ${t.punch}${t.turned?", reversed,":d} over ${t.die}:
            ${gu(t.centre_mm)}; step${t.steps.length>1?"s":""} ${t.steps.join(", ")}.
            ${t.off_centre_level==="ok"?d:i`${k(t.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function sr({stations:e=[]},t){let n=e.find(({steps:s})=>s.includes(t.number));return n&&e.length>1?
`Station ${n.number}, ${gu(n.centre_mm)}`:""}function gu(e){return Math.abs(e)<.5?"in the middle":`its middle ${g(
w(Math.abs(e),{digits:0}))} to the ${e>0?"right":"left"} of the press's middle`}var or=f(()=>{y();A();G()});function ar(e,t){let n=t.checks.filter(l=>Te(l)!=="ok"),s=e.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=e.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+ye(l),{...l,sign:Te(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function rr(e,t,n,s,o){
if(!t.drawing)return i`<p class="state" data-test="no-drawing">
      ${t.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=ot(e,t),r={...t,gauge_x_mm:a.gauge_x_mm};return pu(r,Wa(t,a),n,s,o)}function ir(e,t){let n=ot(
e,t);return n.set_angle_deg===null&&t.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${qe("Gauge X",w(n.gauge_x_mm),"gauge-x")}
      ${qe("Gauge R",w(t.gauge_r_mm),"gauge-r")}
      ${qe("Angle to set",S(n.set_angle_deg),"set-angle")}
      ${qe("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${ws(n.firstHit,t.drawing?"The drawing shows the finished bend.":"")}
    ${n.set_angle_deg===null?mu(t,n.fromTrial):d} ${Fy(t)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-trial" data-test="from-trial">
            <b>Angle and depth from a first piece.</b> The plan said ${g(S(t.set_angle_deg))} and
            ${g(w(t.punch_depth_mm,{digits:2}))}.
          </p>`:d}
    ${t.gauge_draw_back_mm?i`<p class="draw-back" data-test="draw-back">
            <b>Retract the gauge ${g(w(t.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would run into it.
          </p>`:d}
    ${jy(t)}`}function Fy(e){let t=Ra(e);return t===d?d:i`<p class="press-force" data-test="press-force">Allow for ${t}</p>`}
function jy({hits:e}){return e?i`<div class="hits" data-test="hits">
    <b>${e.count} bumps</b>, ${g(S(e.angle_each_deg))} each. Move the gauge
    ${g(w(e.pitch_mm,{digits:2}))} each time:
    ${e.gauge_x_mm.map(t=>w(t).text).join(" · ")}
  </div>`:d}function $u(e,t){if(!t.die)return d;let n=sr(e,t);return i`<dl class="step-tools" data-test="step-tools">
      <div>
        <dt>Punch</dt>
        <dd>
          <b>${t.punch}</b>
          ${t.punch_name}${t.punch_turned?i` <b class="punch-turned" data-test="tool-turned">reversed</b>`:d}
        </dd>
      </div>
      <div>
        <dt>Die</dt>
        <dd><b>${t.die}</b> ${t.die_name}</dd>
      </div>
      ${t.holder?i`<div>
              <dt>Holder</dt>
              <dd><b>${t.holder}</b></dd>
            </div>`:d}
      ${n?i`<div class="stands">
              <dt>Stands</dt>
              <dd data-test="step-station"><b>${n}</b></dd>
            </div>`:d}
      <div>
        <dt>Wanted</dt>
        <dd><b>${g(S(t.included_angle_deg))}</b> ${t.direction}</dd>
      </div>
    </dl>
    ${ks(t)}`}var lr=f(()=>{y();Ie();A();$t();G();Wn();nr();jn();Pl();cn();or()});function bu(e,t,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=ar(e,t),c=l.filter(m=>Te(m)!=="note"),h=l.length>
Hy,p=h?c:l,u=t.number===e.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-step"
    data-code=${e.code}
    data-step=${t.number}
    data-revision=${e.revision}>
    <header class="step-top">
      ${cr(n,o)}
      <p class="bench-card" data-test="bench-card">${e.title||e.display_code}</p>
      ${Nl(e,t)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${We(r)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${Ja(t,e.part.flats_mm.length)}${wt(t)}</div>
      <section class="step-set" aria-label="What to set">${ir(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${h?"many":""}" aria-label="What to watch">
        ${p.length?We(p):d}${Ya(e.plan,t)}
      </section>
      <section class="step-with" aria-label="Tools">${Ls(Uy(e,t),0)}</section>
    </div>
    ${_u({back:t.number>1,label:u?"Done":"Next",more:u?"":`step ${t.number+1}`},o)}
  </article>`}function wu(e,{name:t,lines:n,acts:s}){let o=e.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-done"
    data-code=${e.code}
    data-step=${o+1}>
    <header class="step-top">
      ${cr(t,s)}
      <p class="bench-card" data-test="bench-card">${e.title||e.display_code}</p>
    </header>
    ${n}
    <div class="bench-says">
      <h1>Done</h1>
      <p>
        ${o===1?"The one step is bent.":`All ${o} steps are bent.`} Measure it, and type the
        result on the phone.
      </p>
      <button type="button" class="button" data-test="clear-bench" @click=${s.clear}>
        Take this card off
      </button>
    </div>
    ${_u({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function _u({back:e,label:t,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!e} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${t}${n?i` <small>${n}</small>`:d}
    </button>
  </nav>`}var Hy,Uy,cr,Cl=f(()=>{y();rn();vl();G();Ms();ln();cn();Bt();lr();Hy=3;Uy=(e,t)=>e.plan.tools.filter(
n=>n.steps.includes(t.number)).map(n=>({...n,steps:[]}));cr=(e,t)=>i`<button
    type="button"
    class="button bench-name"
    data-test="bench-name"
    aria-label="${Rt(e)}, this display. Choose another"
    @click=${t.choose}>
    ${Rt(e)}
  </button>`});function yu({names:e,silent:t,typed:n,wrong:s,here:o},a){return i`<div class="bench-choose" data-test="bench-choose">
    <h1>Which press screen is this display?</h1>
    ${t?i`<p class="bench-line" data-test="silent">
            The shop does not answer. It is asked again automatically.
          </p>`:d}
    ${e?.length?i`<div class="buttons">
            ${e.map(r=>i`<button
                  type="button"
                  class="button next"
                  data-test="take-bench"
                  @click=${()=>a.take(r)}>
                  ${Rt(r)}
                </button>`)}
          </div>`:d}
    ${e?i`<form
            class="bench-new"
            novalidate
            @submit=${r=>{r.preventDefault(),a.make()}}>
            ${L({name:"bench",label:e.length?"Or a new one":"Give it a name",value:n,wrong:s?[s]:[],change:a.type,
hint:"Like 1, or Big press. It is kept on this display."})}
            <button class="button" data-test="make-bench">Add it</button>
          </form>`:d}
    ${o?i`<button type="button" class="button" data-test="stay" @click=${()=>a.take(o)}>
            Stay at ${Gn(o)}
          </button>`:d}
    ${$l()}
  </div>`}function Su({answers:e,refused:t},n,s,o){return i`${e===!1?i`<p class="bench-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again automatically.`}
        </p>`:d}
  ${t?i`<p class="bench-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${t}
        </p>`:d}
  ${s?i`<p class="bench-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:d}`}var vu,ku,xu,Rl,Tu=f(()=>{y();F();bl();rn();pe();Cl();J();vu=e=>Rl(e,"bench-idle",Rt(e.name),
i`<p>Open a card on a phone and choose this press screen.</p>
      ${$l()}`),ku=(e,t,n)=>Rl(n,"bench-no-card",W(e),t instanceof O?i`<p>${t.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes when the shop is back.
        </p>`),xu=(e,t,n)=>Rl(n,"bench-no-step",`There is no step ${t}`,i`<p>
      ${e.title||e.display_code} has ${e.plan.steps.length} now. Choose the step on the phone.
    </p>`),Rl=({name:e,lines:t,acts:n},s,o,a)=>i`<article class="step bench-step" data-test=${s}>
    <header class="step-top">${cr(e,n)}</header>
    ${t}
    <div class="bench-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var Au={};ne(Au,{show:()=>Vy});function Vy(e){Pp(e.signal);let t=wl();t?Ou(e,t):Mu(e,"")}function Mu(e,t){e.title(
"Press screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:t},o;e.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&e.render(yu(s,c)),r=p=>{n.abort();let u=wl();Ou(e,u?.name===p?u:{name:p,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let p=s.typed.trim();if(s.names?.includes(p))return r(p);try{r((await Bp(p||" ")).name)}catch(u){
s.wrong=u instanceof O?u.errors.name?.[0]??u.message:String(u.message),a()}},type:p=>Object.assign(s,{typed:p})},
h=async()=>{try{Object.assign(s,{names:(await Un(n.signal)).map(({name:p})=>p),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),e.ready(),o=setTimeout(h,Gy))};a(),h()}function Ou(e,t){let{name:n}=t,s=new AbortController,
{signal:o}=s;e.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:t.code,
step:t.step},l=null,c=null,h=0,p=Ao(),u=qa(n,t.etag,{keepMs:1/0,heard:(v,P)=>{t={...t,etag:P},b({code:v.code,step:v.
step},!1)},sent:(v,P,X)=>m({etag:P,unsent:X}),changed:v=>v.gone?$(""):E()},o);function m(v){t={...t,...r,...v},
_l(t)}function $(v){s.abort(),v||_l(null),Mu(e,v)}function b(v,P){let X=v.code!==r.code||v.step!==r.step;v.code!==
r.code&&(l=null),X&&(p=Ao()),r=v,m({unsent:P}),P&&u.move(v),X||!l&&v.code?_():E()}async function _(){a.abort(),
a=new AbortController;let v=a.signal;if(h=0,c=null,E(),!!r.code)try{await mt(r.code,P=>{v.aborted||(l=P,h=0,E())},
v)}catch(P){if(v.aborted||o.aborted)return;c=P,E()}}let T={next:()=>{if(!l)return;let v=l.plan.steps.length;b(
{code:l.code,step:r.step>v?1:r.step+1},!0)},back:()=>l&&r.step>1&&b({code:l.code,step:r.step-1},!0),clear:()=>b(
{code:null,step:0},!0),choose:()=>$(n),newer:()=>_()};function E(){if(o.aborted)return;let v=Su(u.standing(),!!l,
h,T.newer);e.title(l?`${l.title||l.code}, ${n}`:n),e.render(N({name:n,lines:v,acts:T})),(l||c||!r.code)&&e.ready()}
function N(v){if(!r.code)return vu(v);if(!l)return c?ku(r.code,c,v):Oe(`Opening ${W(r.code)}…`);let P=l.plan.
steps,X=P[r.step-1];return X?bu(l,X,v,rr(l,X,p,E,a.signal)):r.step===P.length+1?wu(l,v):xu(l,r.step,v)}Up(T,o),
_e(E,o),document.addEventListener("sync",async v=>{if(!l)return c&&v.detail.reached?_():void 0;let P=await st(
l.code).catch(()=>{});!P||P.code!==l?.code||P.revision===l.revision||h===P.revision||(h=P.revision,E())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),t.unsent&&u.move(r),_()}var Gy,Lu=f(()=>{F();bl();rn();yl();Ie();
pe();Gp();se();Ce();Tu();Cl();nr();Re();lr();Gy=3e3});function ee(e,t){let n=document.getElementById("notices"),s=()=>Vt(i``,n);Vt(i`<div class="notice" data-test="notice">
      <span>${e}</span>
      <button type="button" @click=${()=>{s(),t?.act()}}>${t?.label??"Close"}</button>
    </div>`,n),clearTimeout(Eu),t||(Eu=setTimeout(s,8e3))}var Eu,lt=f(()=>{y()});function Nu(e){try{let t=JSON.parse(localStorage.getItem(Bl(e))??"null");return t&&Array.isArray(t.form?.flats)&&
Array.isArray(t.form?.bends)?t:null}catch{return null}}function Il(e,t){try{return localStorage.setItem(Bl(e),
JSON.stringify({...t,kept_at:new Date().toISOString()})),!0}catch{return!1}}function Wl(e){try{localStorage.removeItem(
Bl(e))}catch{}}var Bl,Pu=f(()=>{Bl=e=>`flangebook.part.${e||"new"}`});var dr,yt,hr,pr,Lo=f(()=>{Et();vs();A();dr=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
yt=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),hr=e=>({angle:String(e.included_angle_deg),direction:e.
direction,radius:z(e.inside_radius_mm),kind:e.kind??"bend",gap:e.kind==="open_hem"?z(e.hem_gap_mm):"",...xo(e)}),
pr=(e,t)=>({included_angle_deg:e.kind==="bend"?ft(e.angle):0,direction:e.direction,kind:e.kind,...e.radius.trim()&&
e.kind==="bend"?{inside_radius_mm:te(e.radius,t)}:{},...e.kind==="open_hem"?{hem_gap_mm:te(e.gap,t)}:{},...Fa(
e)})});function ur(e="tray"){let t=()=>e==="lips-in"?{flats:["",""],bends:[yt(),yt()]}:e==="lips-out"?{flats:["",""],
bends:[yt(),{...yt(),direction:"down"}]}:{flats:[""],bends:[yt()]};return{length:"",width:"",there:e==="channe\
l"?["left","right"]:[...qn],alike:!0,sides:{left:t(),right:t(),front:t(),back:t()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function Ru(e,t){let n=ur(t);for(let s of qn){let o=e.sides[e.alike?
e.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...e,there:n.there,sides:n.
sides}}function Bu({there:e,sides:t,alike:n}){let s=(n?e.slice(0,1):e).map(r=>t[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return e.length===2&&e.includes("left")&&e.includes("right")&&s.every(o)?"channel":e.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function Iu(e){let t=qn.
filter(o=>e.sides[o]),n=t.map(o=>JSON.stringify(e.sides[o])),s=ur().sides;for(let o of qn){let a=e.sides[o]??e.
sides[t[0]];s[o]={flats:a.flats_mm.map(z),bends:a.bends.map(hr)}}return{length:z(e.length_mm),width:z(e.width_mm),
there:t,alike:n.every(o=>o===n[0]),sides:s,relief:e.relief,reliefSize:z(e.relief_mm),corner:e.corner,gap:z(e.gap_mm),
firstPair:e.first_pair??"left-right"}}function ju(e,t){let n=s=>e.there.includes(s)?Du(e,s).flats.map((o,a)=>`${s}\
 ${Ps(a)}`):[];return Dl.filter(s=>s.some(o=>e.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...t(s,
o),...n(o)])}function Hu(e,t){let n=o=>te(o,t),s=e.there.map(o=>{let a=Du(e,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>pr(r,t))}]});return{length_mm:n(e.length),width_mm:n(e.width),sides:Object.fromEntries(
s),relief:e.relief,corner:e.corner,...e.firstPair==="front-back"?{first_pair:e.firstPair}:{},...e.reliefSize.trim()&&
e.relief!=="none"?{relief_mm:n(e.reliefSize)}:{},...e.gap.trim()&&e.corner==="closed"?{gap_mm:n(e.gap)}:{}}}function Es(e){
return[["box.length_mm","length of the base",e.length],["box.width_mm","width of the base",e.width],...Fl(e).flatMap(
t=>zy(e,t))]}function zy({sides:e,alike:t},n){let s=t?"":`${n} `;return e[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=e[n].bends[a],h=`${s}${Ps(a)}`;return[[Ns(n,a),h,o],...r==="bend"?[[mr(n,a),`angle of the ${h}`,
l]]:[],...r==="open_hem"?[[`${dn(n,a)}.hem_gap_mm`,`gap of the ${h}`,c]]:[]]})}function Uu(e,t){if(!e.alike)return t;
let n=e.there[0];return Object.fromEntries(Object.entries(t).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function Gu(e){let[,t,n,s,o,a]=e.split(".");if(t!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[t]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${Ps(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function Vu(e,t,n,s){
let o=e.sides[t];return fr(e,t,{...o,flats:o.flats.with(n,s)})}function Cs(e,t,n,s){let o=e.sides[t];return fr(
e,t,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function zu(e,t){let{flats:n,bends:s}=e.sides[t],o=s.map(
a=>({...a,kind:"bend"}));return fr(e,t,{flats:[...n,""],bends:[...o,yt()]})}function qu(e,t){let{flats:n,bends:s}=e.
sides[t];return fr(e,t,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function Ku(e,t){let n=qn.filter(o=>o===t!==
e.there.includes(o));if(!n.length)return e;let s=e.sides[e.there[0]];return{...e,there:n,sides:e.alike?{...e.sides,
[n[0]]:s}:e.sides}}function Yu(e,t){let n=e.sides[e.there[0]];return{...e,alike:t,sides:t?e.sides:{left:n,right:n,
front:n,back:n}}}var Dl,qn,Cu,Wu,Du,Kn,Fu,Fl,Ns,dn,mr,Ps,fr,Yn=f(()=>{Lo();A();Dl=[["left","right"],["front","\
back"]],qn=Dl.flat(),Cu=6;Wu=({there:e})=>Dl.every(t=>t.some(n=>e.includes(n))),Du=(e,t)=>e.sides[e.alike?e.there[0]:
t],Kn=e=>ju(e,()=>[]),Fu=e=>ju(e,(t,n)=>[`base, ${t} to ${n}`]);Fl=({there:e,alike:t})=>t?e.slice(0,1):e;Ns=(e,t)=>`\
box.sides.${e}.flats_mm.${t}`,dn=(e,t)=>`box.sides.${e}.bends.${t}`,mr=(e,t)=>`${dn(e,t)}.included_angle_deg`,
Ps=e=>e===0?"wall":e===1?"lip":`flat ${e+1}`;fr=(e,t,n)=>({...e,sides:{...e.sides,[t]:n}})});function Hl(e){if(!e)return Eo();let{first:t,last:n,margin_mm:s}=e;return{first:t?String(t):"",last:n?String(n):
"",no_turn_over:!!e.no_turn_over,no_turn_end:!!e.no_turn_end,one_set_up:!!e.one_set_up,critical_flats:[...e.critical_flats??
[]],margin:s===void 0||s===jl?"":z(s)}}function Ul(e,t){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=e??Eo(),h={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:te(
c,t)}:{}};return Object.keys(h).length?{wishes:h}:{}}function Gl(e,t){if(!e)return{};let n=t?-1:1,s=a=>!a||Number(
a)===t?"":Number(a)>t?String(Number(a)+n):a,o=e.critical_flats.filter(a=>!t||a!==t+1).map(a=>a>t?a+n:a);return{
wishes:{...e,first:s(e.first),last:s(e.last),critical_flats:o}}}function gr(e){let{first:t,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=e??Eo();return[t&&`bend ${t} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var jl,Eo,Ju,$r=f(()=>{A();jl=2,Eo=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});Ju=e=>({...e,first:"",
last:"",critical_flats:[]})});function zl(e){return{unit:C(),title:"",note:"",metal:e,thickness:"",length:"",flats:["",""],bends:[yt()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function br({aside:e,...t},n){let s=Zu({...t,box:n?t.box??e??ur():
null});return n?s:{...s,...t.box?{aside:t.box}:{}}}function Xu(e,t){return e.box&&t&&String(Kn(e.box))===String(
Kn(t))&&e.box.firstPair===t.firstPair?{...e,box:t}:Zu({...e,box:t})}function No(e,t){return e.box?{...zl(e.metal),
title:e.title??"",note:t,thickness:z(e.thickness_mm),dimension:e.dimension??"din6935",order:e.order??null,wishes:Hl(
e.wishes),tools:xo(e.tools),box:Iu(e.box)}:{unit:C(),title:e.title??"",note:t,metal:e.metal,thickness:z(e.thickness_mm),
length:z(e.bend_length_mm),flats:e.flats_mm.map(z),bends:e.bends.map(hr),dimension:e.dimension??"din6935",grain:e.
grain??"",order:e.order??null,wishes:Hl(e.wishes),tools:xo(e.tools),holes:(e.holes??[]).map(n=>({flat:String(n.
flat),position:z(n.position_mm),diameter:z(n.diameter_mm)}))}}function Rs(e){let t=n=>te(n,e.unit);return e.box?
{title:e.title.trim(),metal:e.metal,thickness_mm:t(e.thickness),dimension:e.dimension,box:Hu(e.box,e.unit),...e.
order?{order:e.order}:{},...Ul(e.wishes,e.unit),...ll(e.tools)}:{title:e.title.trim(),metal:e.metal,thickness_mm:t(
e.thickness),bend_length_mm:t(e.length),flats_mm:e.flats.map(t),bends:e.bends.map(n=>pr(n,e.unit)),dimension:e.
dimension,...e.grain?{grain:e.grain}:{},...e.order?{order:e.order}:{},...Ul(e.wishes,e.unit),...ll(e.tools),...e.
holes.length?{holes:e.holes.map(n=>({flat:ft(n.flat),position_mm:t(n.position),diameter_mm:t(n.diameter)}))}:{}}}
function wr(e){let t=[["metal","metal",e.metal],["thickness_mm","thickness",e.thickness]];return(e.box?[...t,...Es(
e.box)]:[...t,["bend_length_mm","length",e.length],...e.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...e.
bends.flatMap((s,o)=>qy(s,o)),...e.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function qy({kind:e,angle:t,gap:n},s){return e==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,t]]:e==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function Qu(e,t,n){return{...e,flats:e.flats.with(t,n)}}function Jn(e,t,n){return{...e,bends:e.
bends.with(t,{...e.bends[t],...n})}}function Kl(e,t){let n=e.bends.at(t==="left"?0:-1),s={...yt(),direction:n?.
direction??"up"},o=t==="left"?e.bends:e.bends.map((r,l)=>l>0&&l===e.bends.length-1?{...r,kind:"bend"}:r);if(t===
"right")return{...e,bends:[...o,s],flats:[...e.flats,""],order:null};let a=e.holes.map(r=>({...r,flat:tm(r.flat,
1,1)}));return{...e,bends:[s,...o],flats:["",...e.flats],order:null,holes:a,...Gl(e.wishes,0)}}function em(e,t){
let n=t+2,s=e.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:tm(o.flat,n,-1)}));return{...e,bends:e.
bends.toSpliced(t,1),flats:e.flats.toSpliced(t+1,1),order:null,holes:s,...Gl(e.wishes,t+1)}}function tm(e,t,n){
let s=Number(e);return Number.isInteger(s)&&s>=t?String(s+n):e}function _r(e){let t=e.split(/[^\d]+/).filter(Boolean).
map(Number);return t.length?t:null}function nm(e,t){return t===0||t===e.bends.length-1}var Vl,Zu,ql,hn=f(()=>{
Lo();Yn();Et();vs();A();$r();Vl=40;Zu=e=>({...e,order:null,...e.wishes?{wishes:Ju(e.wishes)}:{}});ql=e=>JSON.stringify(
{...Rs(e),title:""})});async function Yl(e,t){try{let{body:n}=await M("POST","/cards",{body:{...om(e),code:t},timeout:sm});return{saved:await im(
n)}}catch(n){if(n instanceof O&&n.status===409)return{taken:t};throw rm(n)}}async function am(e,t){let n={...om(
e),reason:e.reason??""},s=Ky(t,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await M("PUT",`/cards/${t.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:sm});return await fd().then(c=>to({...s,number:c},l)).catch(
()=>{}),{saved:await im(r)}}catch(o){if(o instanceof O&&o.status===412)return{stale:await Mt(t.code)};throw rm(
o)}}function Ky(e,t){let n=JSON.stringify(t);e.saving?.wanted!==n&&(e.saving={id:Ue(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=e;return{id:e.saving.id,number:0,kind:"edit",code:s,body:t,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function rm(e){return e instanceof O&&(e.errors=Object.fromEntries(Object.entries(e.
errors).map(([t,n])=>[t.replace(/^part\./,""),n]))),e}async function im(e){return dt(e).catch(()=>e)}var sm,om,
lm=f(()=>{F();Ie();Pe();hn();se();Ce();sm=6e4,om=e=>({part:Rs(e),note:e.note,...R().name?{by:R().name}:{}})});function hm(e,{pixels:t=ps(),tallest:n=t*.45,test:s="blank"}={}){let o=U(e.width_mm),a=t-Ve(o,K)-K*2,r=a/e.length_mm,
l=e.width_mm*r>n,c=l?n:Math.max(e.width_mm*r,3),h=cm(e.bend_lines.map(b=>[b.at_mm*r,K*1.8+Ve(Jl(b),K)]),a),p=cm(
e.bend_lines.map(b=>[b.at_mm*r,Ve(U(b.at_mm),K)]),a),u=dm(h)*Po+K*.4,m=dm(p)*Po+K*.4,$=u+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${Yy(e)}
      viewBox="-8 -4 ${t+8} ${$+m+Po*1.4}">
      ${l?Zy(a,u,$):x`<rect class="sheet" x="0" y=${u} width=${a} height=${c}/>`}
      ${e.bend_lines.map((b,_)=>Jy(b,b.at_mm*r,h[_],p[_],u,$))}
      ${Xy(a,$+m+K*.7,U(e.length_mm))}
      ${Qy(a+K,u,$,o)}
    </svg>
    ${l?i`<p class="hint">Width ${g({text:o,unit:""})} is drawn short at the break.</p>`:d}`}function Jl(e){let t=e.
included_angle_deg?re(S(e.included_angle_deg)):"hem";return`${e.direction} ${t}`}function Yy(e){let t=e.bend_lines.
map(n=>`bend ${n.bend} ${Jl(n)} at ${U(n.at_mm)}`);return`Blank ${U(e.length_mm)} by ${U(e.width_mm)}. ${t.join(
"; ")}.`}function cm(e,t){let n=[];return e.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),Math.max(t-o/2,o/2)),
r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function Jy(e,t,n,s,o,a){
let r=o-K*.4-Po*(n.row+.5),l=a+K*.4+Po*(s.row+.5),c=n.at-n.width/2;return x`<path class="fold ${e.direction}" d="M${t} ${o}V${a}"/>
    <path class="leader" d="M${t} ${o}V${r+K*.8}M${t} ${a}V${l-K*.8}"/>
    <rect class="ground" x=${c} y=${r-K*.75} width=${n.width} height=${K*1.5}/>
    <circle class="badge" cx=${c+K*.75} cy=${r} r=${K*.68}/>
    <text class="badge-number" x=${c+K*.75} y=${r} font-size=${K*.95} text-anchor="middle"
      dominant-baseline="central">${e.bend}</text>
    <text x=${c+K*1.7} y=${r} font-size=${K} dominant-baseline="central">${Jl(e)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-K*.7} width=${s.width}
      height=${K*1.4}/>
    <text x=${s.at} y=${l} font-size=${K} text-anchor="middle"
      dominant-baseline="central">${U(e.at_mm)}</text>`}function Zy(e,t,n){let s=(t+n)/2,o=`L${e*.52} ${s+3}L${e*
.54} ${s-14}L${e*.58} ${s+8}L${e*.6} ${s-9}`,a=`L${e*.6} ${s-1}L${e*.58} ${s+16}L${e*.54} ${s-6}L${e*.52} ${s+
11}`;return x`<path class="sheet" d="M0 ${t}V${s+3}${o}L${e} ${s-9}V${t}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${e*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${e} ${s-1}V${n}Z"/>`}function Xy(e,t,n){let s=Ve(n,K);return x`<path class="dimension"
      d="M0 ${t}H${e}M-4 ${t+4}L4 ${t-4}M${e-4} ${t+4}L${e+4} ${t-4}"/>
    <rect class="ground" x=${e/2-s/2} y=${t-K*.7} width=${s} height=${K*1.4}/>
    <text x=${e/2} y=${t} font-size=${K} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function Qy(e,t,n,s){let o=a=>`M${e-4} ${a+4}L${e+4} ${a-4}`;return x`<path class="dimension" d="M${e} ${t}V${n}${o(
t)}${o(n)}"/>
    <text x=${e+K*.6} y=${(t+n)/2} font-size=${K}
      dominant-baseline="central">${s}</text>`}var K,Po,dm,pm=f(()=>{y();A();ka();at();K=18,Po=K*1.5;dm=e=>Math.
max(0,...e.map(t=>t.row+1))});function nt(e,{mark:t=0,...n}={}){if(!Fe(e))return kh(e,{mark:t,...n});let s=e.blank.lines.find(o=>o.bend===t)?.
side??"";return Ka(e.folded,{...n,mark:s})}function Bs(e,t={}){return e.outline?Vp(e,t):hm(e,t)}var pn=f(()=>{
Ss();pm();at()});function Is({how:e,differences:t},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
    <h2>${k("caution")} Somebody else saved meanwhile</h2>
    <p>
      ${e==="others changed"?`Not this ${n}, but others in the list. Save again to keep both.`:d}
      ${e==="taken out"?`This ${n} was taken out of the list. Save to put it back as you typed it.`:d}
      ${e==="this changed"?`This ${n} too. What you typed is still in the boxes.`:d}
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
          </div>`:d}
    <div class="buttons">
      <button type="button" class="button next" data-test="save-mine" @click=${s}>
        Save what I typed
      </button>
      ${e==="taken out"?d:i`<button type="button" class="button" data-test="take-theirs" @click=${o}>
              Take what is saved
            </button>`}
    </div>
  </section>`}function yr(e,t,n){return n.filter(({name:s})=>(e[s]??"")!==(t[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:t[s]??"",mine:e[s]??""}))}var Ws=f(()=>{y();G()});function mm(e,t,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=No(e.part,e.note),r=[...new Set([...Zl(t),...Zl(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=yr(um(t),um(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
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
            ${l.length?l.map(({label:c,theirs:h,mine:p})=>i`<tr>
                        <td>${c}</td>
                        <td>${h||"empty"}</td>
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
        ${nt(e.plan,{pixels:330,tallest:260,test:"theirs-section"})}
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
  </section>`}function Zl(e){return[{label:"Title",value:e.title},{label:"Note",value:e.note},{label:"Metal",value:e.
metal},{label:"Thickness",value:e.thickness},{label:"Length",value:e.length},{label:"Measured",value:e.dimension},
{label:"Grain",value:e.grain},{label:"Order",value:e.order?.join(", ")??""},{label:"Limits on the order",value:gr(
e.wishes)},{label:"Tools",value:Fn(e.tools)},...e.box?[...Es(e.box).map(([,t,n])=>({label:`${t[0].toUpperCase()}${t.
slice(1)}`,value:n})),{label:"Corners",value:`${e.box.corner}, relief ${e.box.relief} ${e.box.reliefSize} ${e.
box.gap}`.trim()},{label:"Sides",value:e.box.there.join(", ")}]:[],...(e.box?[]:e.flats).map((t,n)=>({label:`F\
lat ${n+1}`,value:t})),...(e.box?[]:e.bends).map((t,n)=>({label:`Bend ${n+1}`,value:[t.kind==="bend"?`${t.angle}\
°`:t.kind.replace("_"," "),t.direction,t.radius&&`radius ${t.radius}`,t.gap&&`gap ${t.gap}`,Fn(t)].filter(Boolean).
join(", ")})),...e.holes.map((t,n)=>({label:`Hole ${n+1}`,value:`flat ${t.flat}, at ${t.position}, size ${t.diameter}`}))]}
var um,fm=f(()=>{y();pn();Yn();hn();vs();$r();G();Ws();um=e=>Object.fromEntries(Zl(e).map(({label:t,value:n})=>[
t,n]))});function $m(e,t,n){let{box:s,unit:o}=e,a=Uu(s,t),r=(l,c)=>n(Xu(e,l),c);return i`${ov(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${av(s,r)}
      <div>
        ${L({next:!0,name:"box.length_mm",label:"Length, left to right",value:s.length,wrong:I(a,"box.length_m\
m"),change:l=>r({...s,length:l})})}
        ${L({next:!0,name:"box.width_mm",label:"Width, front to back",value:s.width,wrong:I(a,"box.width_mm"),
change:l=>r({...s,width:l})})}
      </div>
    </div>
    ${I(a,"box.sides").map(l=>i`<p class="wrong" data-test="wrong-box.sides">${l}</p>`)}
    <h2>Sides, from the base outwards <small>${o}</small></h2>
    <label class="tick"
      ><input
        type="checkbox"
        name="box.alike"
        data-test="box.alike"
        .checked=${s.alike}
        @change=${l=>r(Yu(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${Fl(s).map(l=>rv(s,l,a,r))}
    <h2>Corners</h2>
    ${dv(e,a,r)}
    ${Wu(s)?Y({name:"box.first_pair",label:"Bent first; the others go between them",value:s.firstPair??gm[0][0],
options:gm,change:l=>r({...s,firstPair:l==="front-back"?l:"left-right"})}):d}`}function ov(e,t){let n=Bu(e);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${ev.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>t(Ru(e,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function av(e,t){let n=s=>{let o=e.there.includes(s),a=o&&e.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>t(Ku(e,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${qn.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function rv(e,t,n,s){let{flats:o,bends:a}=e.sides[t],r=e.alike?"Each side":`${t[0].toUpperCase()}${t.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${t}">
    <legend>${r}</legend>
    ${cv(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${iv(e,t,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${t}"
        ?disabled=${o.length>=Cu}
        @click=${()=>s(zu(e,t),{focus:Ns(t,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${t}"
              @click=${()=>s(qu(e,t),{focus:Ns(t,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:d}
    </div>
  </fieldset>`}function iv(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],[l,c]=[r[n],bm(Ps(n))],h=`${dn(t,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${L({next:!0,name:Ns(t,n),label:c,value:a[n],wrong:[...I(s,Ns(t,n)),...I(s,dn(t,n))],change:p=>o(Vu(e,t,
n,p))})}
      ${l.kind==="bend"?L({next:!0,name:mr(t,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:I(s,
mr(t,n)),change:p=>o(Cs(e,t,n,{angle:p}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?L({next:!0,name:h,label:"Clear gap inside",value:l.gap,wrong:I(s,h),change:p=>o(Cs(e,
t,n,{gap:p}))}):d}
    ${Y({name:`${dn(t,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:sv,change:p=>o(Cs(e,t,n,{direction:p==="down"?"down":"up"}))})}
    ${lv(e,t,n,s,o)}`}function lv(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],l=`${dn(t,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?d:i`<details class="bend-more">
    <summary>
      <span class="unseen">${bm(Ps(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":d}
    </summary>
    ${r[n].kind==="bend"?L({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:I(s,l),change:h=>o(Cs(e,t,n,{radius:h}))}):d}
    ${c?q({name:`${dn(t,n)}.kind`,label:"Kind",value:r[n].kind,options:dr,change:h=>o(Cs(e,t,n,{kind:h}))}):d}
  </details>`}function cv(e){let t=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of e.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[h,p]=n[n.length-1];n.push(
[h+t[o]*Math.cos(s),p-t[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>x`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function dv({box:e,unit:t},n,s){return i`<div class="corner-grid">
      ${pv(e)}
      <div>
        ${Y({name:"box.corner",label:"Walls at the corner",value:e.corner,options:nv,change:o=>s({...e,corner:o===
"open"?"open":"closed"})})}
        ${Y({name:"box.relief",label:"Relief",value:e.relief,options:tv,change:o=>s({...e,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${e.relief==="none"?d:L({next:!0,name:"box.relief_mm",label:e.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:t,hint:"Empty: by radius and thickness.",value:e.reliefSize,wrong:I(n,"box.relief_mm"),change:o=>s(
{...e,reliefSize:o})})}
      ${e.corner==="open"?d:L({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:t,hint:"Empty: by \
thickness.",value:e.gap,wrong:I(n,"box.gap_mm"),change:o=>s({...e,gap:o})})}
    </div>`}function pv({corner:e,relief:t}){let[n,s]=e==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${hv[t]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var ev,tv,nv,gm,sv,bm,hv,wm=f(()=>{y();Lo();Yn();hn();J();it();ev=[["tray","Tray","M10 14V44H86V14"],
["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channel","Two s\
ides","M10 14V44H86V14M18 36H30M66 36H78"]],tv=[["round","Round"],["square","Square"],["none","None"]],nv=[["c\
losed","Closed"],["open","Open"]],gm=[["left-right","Left and right"],["front-back","Front and back"]],sv=[["u\
p","↑ in"],["down","↓ out"]];bm=e=>e[0].toUpperCase()+e.slice(1);hv={none:"L50 40L30 40",square:"L58 20L58\
 48L30 48",round:"L50 31A9 9 0 1 1 41 40L30 40"}});function Xl(e,t){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${_m[e.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(_m).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${Se(e.dimension===n)}
              @change=${()=>t({...e,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?x`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:uv(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function uv(e){return e==="din6935"?x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function ym(e,t,n){let s=(o,a)=>n({...e,holes:e.holes.with(o,{...e.holes[o],...a})});return i`<details class="holes">
    <summary>Holes near a bend${e.holes.length?`: ${e.holes.length}`:""}</summary>
    <p class="hint">Only those that could be pulled out of shape.</p>
    ${e.holes.map((o,a)=>{let r=`holes.${a}`;return i`<fieldset class="hole">
        <legend>Hole ${a+1}</legend>
        <div class="fields">
          ${L({next:!0,name:`${r}.flat`,label:"On flat",keys:"numeric",value:o.flat,wrong:I(t,`${r}.flat`),change:l=>s(
a,{flat:l})})}
          ${L({next:!0,name:`${r}.position_mm`,label:"Middle from its left end",unit:e.unit,value:o.position,wrong:I(
t,`${r}.position_mm`),change:l=>s(a,{position:l})})}
          ${L({next:!0,name:`${r}.diameter_mm`,label:"Size across",unit:e.unit,value:o.diameter,wrong:I(t,`${r}\
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
  </details>`}function Ql(e,t,n,s){let o=e.box?Kn(e.box):[],a=e.order??t??e.bends.map((l,c)=>c+1),r=(l,c)=>s({
...e,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${e.order?`${e.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${L({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:e.order?.
join(", ")??"",wrong:I(n,"order"),on:"change",change:l=>s({...e,order:_r(l)})})}
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
          </button>`:d}
  </details>`}function vm(e,t,n){return q({name:"grain",label:"Rolling direction against the bend lines",value:e.
grain,wrong:I(t,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...e,grain:s})})}var _m,km=f(()=>{y();Jt();Yn();hn();J();it();_m={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:x`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:x`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:x`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var xm,Sm=f(()=>{y();Wi();Di();xm=ma(class extends ds{constructor(){super(...arguments),this.key=d}render(e,t){
return this.key=e,t}update(e,[t,n]){return t!==this.key&&(fa(e),this.key=t),n}})});function Tm(e,t,n){let s=e.bends.length>=Vl;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(Kl(e,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${e.flats.map((o,a)=>i`${fv(e,a,t,n)}${a<e.bends.length?gv(e,a,t,n):d}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(Kl(e,"right"),{focus:`flats_mm.${e.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${Vl} bends.</p>`:d}`}function fv(e,t,n,s){let o=`flats_mm.${t}`;
return i`<li class="flat-row">
    ${L({next:!0,name:o,label:`Flat ${t+1}`,value:e.flats[t],wrong:I(n,o),change:a=>s(Qu(e,t,a))})}
  </li>`}function gv(e,t,n,s){let o=e.bends[t],a=`bends.${t}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([h])=>h===a||h===`${a}.kind`||h===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${t+1}>
    <span class="badge-mark" aria-hidden="true">${t+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:L({next:!0,name:l,label:`\
Bend ${t+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:I(n,l),change:h=>s(Jn(e,t,{angle:h}))})}
      ${Y({name:`${a}.direction`,label:`Bend ${t+1} turns`,value:o.direction,options:mv,change:h=>s(Jn(e,t,{direction:h===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(h=>i`<p class="wrong" data-test="wrong-${a}">${h}</p>`)}
    ${o.kind==="open_hem"?$v(e,t,n,s):d}
    ${xm(t,bv(e,t,n,s))}
  </li>`}function $v(e,t,n,s){let o=`bends.${t}.hem_gap_mm`;return L({next:!0,name:o,label:"Clear gap inside",
unit:e.unit,value:e.bends[t].gap,wrong:I(n,o),change:a=>s(Jn(e,t,{gap:a}))})}function bv(e,t,n,s){let o=e.bends[t],
a=`bends.${t}.inside_radius_mm`;return i`<details class="bend-more">
    <summary>
      <span class="unseen">Bend ${t+1}: </span>${o.radius?`Radius ${o.radius}`:"Radius"},
      ${Fn(o)||"tools"}, kind, remove
    </summary>
    ${o.kind==="bend"?L({next:!0,name:a,label:"Inside radius wanted",unit:e.unit,hint:"Empty: what the tools g\
ive.",value:o.radius,wrong:I(n,a),change:r=>s(Jn(e,t,{radius:r}))}):d}
    ${pl(`bends.${t}`,o,n,r=>s(Jn(e,t,r)))}
    ${nm(e,t)||o.kind!=="bend"?q({name:`bends.${t}.kind`,label:"Kind",value:o.kind,options:dr,change:r=>s(Jn(e,
t,{kind:r}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
    <button
      type="button"
      class="button wide"
      data-test="remove-bend-${t+1}"
      ?disabled=${e.bends.length<2}
      @click=${()=>s(em(e,t),{focus:`flats_mm.${t}`,undo:`Bend ${t+1} and flat ${t+2} are out.`})}>
      Remove bend ${t+1} and flat ${t+2}
    </button>
  </details>`}var mv,Mm=f(()=>{y();Sm();Lo();hn();J();vs();jn();it();mv=[["up","↑ up"],["down","↓ down"]]});function Am(e,t,n){let s=e.wishes??Eo(),o=c=>n({...e,wishes:{...s,...c}}),a=e.box?Kn(e.box).map((c,h)=>[String(
h+1),`Bend ${h+1}: ${c}`]):e.bends.map((c,h)=>[String(h+1),`Bend ${h+1}`]),r=e.box?Fu(e.box).map(c=>c[0].toUpperCase()+
c.slice(1)):e.flats.map((c,h)=>`Flat ${h+1}`),l=gr(s);return i`<details class="wishes" data-test="wishes">
    <summary>
      <span>Limits on the order: <b>${l||"none"}</b></span>
    </summary>
    <div class="fields">
      ${q({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:I(t,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${q({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:I(t,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${vr("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${vr("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${vr("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,h)=>vr(`wishes.flat-${h+1}`,c,s.critical_flats.includes(h+1),p=>o({critical_flats:wv(s.critical_flats,
h+1,p)})))}
      </div>
      ${I(t,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${L({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:e.unit,hint:"Emp\
ty: the usual.",placeholder:z(jl),value:s.margin,wrong:I(t,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function vr(e,t,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${e}
      data-test=${e}
      .checked=${Se(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${t}</span
    ></label
  >`}var ec,Om,wv,Lm=f(()=>{y();Jt();Yn();A();$r();J();it();ec=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],Om={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};wv=(e,t,n)=>[...e.filter(s=>s!==t),...n?[t]:[]].sort((s,o)=>s-o)});function Nm(e,{metals:t,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...t.some(({code:p})=>p===e.metal)?
[]:[[e.metal,e.metal?`${e.metal} (not in the shop)`:"Choose"]],...t.map(({code:p,name:u})=>[p,u])],{box:h}=e;return i`${Y(
{name:"shape",label:"What it is",value:h?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:p=>r(br(e,p==="box"))})}
    ${L({next:!0,name:"title",label:"Name of the part",value:e.title,wrong:I(a,"title"),change:p=>r({...e,title:p})})}
    ${q({name:"metal",label:"Metal",value:e.metal,options:c,wrong:I(a,"metal"),change:p=>r({...e,metal:p})})}
    <div class="fields">
      ${L({next:!0,name:"thickness_mm",label:"Thickness",unit:e.unit,placeholder:"3 or 16 ga",hint:s?_v(s,e.thickness):
"",value:e.thickness,wrong:I(a,"thickness_mm"),change:p=>r({...e,thickness:p})})}
      ${h?d:L({next:!0,name:"bend_length_mm",label:"Bend length",unit:e.unit,value:e.length,wrong:I(a,"bend_le\
ngth_mm"),change:p=>r({...e,length:p})})}
    </div>
    ${h?i`${$m({...e,box:h},a,r)}
            <h2>More, if it matters</h2>
            ${Xl(e,r)}
            ${s||e.order?Ql(e,s?.order?.sequence,a,r):d}`:i`<h2>Section, left to right <small>${e.unit}</small></h2>
            ${Xl(e,r)} ${Tm(e,a,r)}
            <h2>More, if it matters</h2>
            ${vm(e,a,r)} ${ym(e,a,r)}
            ${Ql(e,s?.order?.sequence,a,r)}`}
    ${Am(e,a,r)} ${lp(e,n,a,r)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${Se(e.note)}
        @input=${p=>r({...e,note:p.target.value})}></textarea>
    </div>
    ${o?L({next:!0,name:"reason",label:"Why this change, for the history",value:e.reason??"",wrong:I(a,"reason"),
change:p=>r({...e,reason:p})}):d}`}function _v({part:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":g(
w(e.thickness_mm,{digits:2})),t??""].filter(Boolean).join(", ")}function tc(e){return e.box?["title","metal","\
thickness_mm",...Es(e.box).map(([t])=>t),"box.relief_mm","box.gap_mm","order",...ec,...hl,"note","reason"]:["t\
itle","metal","thickness_mm","bend_length_mm",...e.flats.map((t,n)=>`flats_mm.${n}`),...e.bends.flatMap((t,n)=>[
`bends.${n}.included_angle_deg`,`bends.${n}.inside_radius_mm`,...t.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:
[],`bends.${n}.die`,`bends.${n}.punch`]),...e.holes.flatMap((t,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,
`holes.${n}.diameter_mm`]),"grain","order",...ec,...hl,"note","reason"]}function kr(e){if(e.startsWith("box"))
return Gu(e);let[t,n,s]=e.split(".");return t==="tools"?n==="die"?"Die":"Punch":t==="wishes"?Om[n]??"Limits on\
 the order":n===void 0?Em[t]??t:`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[t]??t} ${Number(n)+1}${s?`, ${Em[s]??
s}`:""}`}function Pm(e){let t=e.target;if(e.key!=="Enter"||!(t instanceof HTMLInputElement))return;e.preventDefault();
let n=[...t.form.querySelectorAll("input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(t)+
1).find(o=>o.checkVisibility());s instanceof HTMLElement&&s.focus()}var Em,nc=f(()=>{y();Jt();A();hn();Yn();wm();
J();km();jn();Mm();Lm();it();Em={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend leng\
th",grain:"Rolling direction",order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"\
gap",flat:"flat",position_mm:"place",diameter_mm:"size",die:"die",punch:"punch"}});function Cm({dimensions:e=[]}){let t=e.filter(({error_mm:a})=>a!==null);if(!t.length)return d;let{basis:n,basis_said:s}=t[0],
o=ms({...s,words:n});return i`<h3>Expected tolerance of each flange</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${t.map(vv)}
    </ul>
    ${o?i`<p class="hint" data-test="sizes-basis">${o}</p>`:d}`}function vv({flat:e,flat_name:t=`flat ${e}`,wanted_mm:n,
error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${e}>
    <b>${t[0].toUpperCase()}${t.slice(1)}</b> ${g(w(n))}
    <b>± ${g(yv(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:d}.
  </li>`}var yv,Rm=f(()=>{y();A();G();yv=e=>C()==="in"?{text:Q(e/Ye,3),unit:"in"}:w(e,{digits:2})});function xr(e,t){if(!Zn(e))return d;let{order:n}=e,[s,o]=kv(e),a=!!e.part?.order?.length,r=a?t.free():d,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${k(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${Bm(n.sequence)}
          </p>`:d}
    ${xv(n.blocked??[])} ${Sv(n.remedies??[])} ${Tv(n.wishes)}
    ${r===d?d:i`<div class="buttons">${r}</div>`}
    ${Mv(n.alternatives,t)}
    ${ke("Where the tools stand, and how near it comes",i`${fu(e)} ${Cm(e)}`,{test:"stations-fold"})}
  </div>`}function kv({order:e,checks:t}){let n=s=>t.some(o=>o.code===s);return e.proven?["ok","Clear on paper"]:
n("no-order")?["stop","No order"]:t.some(({level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the\
 way"]:n("order-not-found")?["caution","None found"]:n("clearance-not-checked")?["caution","Not checked"]:["ca\
ution","Not fully checked"]}function Bm(e){return i`<span class="run" role="img" aria-label="bends ${e.join(",\
 ")}"
    >${e.map(t=>i`<span class="badge-mark" aria-hidden="true">${t}</span>`)}</span
  >`}function xv(e){return e.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${e.map(({bend:t,words:n})=>i`<li><b>Bend ${t}</b> ${n}</li>`)}
    </ul>`:d}function Sv(e){return e.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${e.map(t=>i`<li>${ye(t)}</li>`)}
    </ul>`:d}function Tv(e){return e.length?i`<h3>What each limit costs</h3>
    <ul class="order-list" data-test="wish-costs">
      ${e.map(t=>i`<li data-wish=${t.wish}>${ms(t)}</li>`)}
    </ul>`:d}function Mv(e,{use:t}){return e.length?ke("Other orders that can be made",i`<ul class="order-others" data-test="other-orders">
      ${e.map(({sequence:n,words:s})=>i`<li>${Bm(n)} <span class="compared">${s}</span> ${t(n)}</li>`)}
    </ul>`,{test:"others-fold"}):d}var Zn,Im,Wm,Sr=f(()=>{y();G();_s();ie();Rm();or();Zn=({order:e})=>Array.isArray(
e?.wishes)&&Array.isArray(e?.alternatives);Im=e=>({use:t=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${t.join(", ")}"
      @click=${()=>e(t)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>e(
null)}>
      Let it choose
    </button>`}),Wm=e=>({use:t=>B("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${t.join(", ")}"
        href="/part?from=${e}&order=${t.join("-")}"
        >Use this order</a
      >`),free:()=>B("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${e}&order=free"
        >Let it choose</a
      >`)})});function Dm(e,{save:t,order:n}){return i`${Da(e.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>
          ${Qa(e.blank)}${Bs(e.blank,{pixels:innerWidth<1e3?innerWidth-24:560})}
        </div>
        <div>
          ${ke("Bend lines and drawings",Ov(e.blank,t),{test:"bend-lines-fold"})}
        </div>
      </div>
    </section>
    ${Zn(e)?i`<section>
            <h2>Order</h2>
            ${xr(e,n)}
          </section>`:d}
    <section>
      <h2>Fetch</h2>
      ${Ls(e.tools,e.steps.length,e.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${e.order&&!Zn(e)?i`<p data-test="order-words">${e.order.words}</p>`:d}
      <div class="step-drawings">${e.steps.map(s=>Av(s,e.part.thickness_mm))}</div>
      ${ke("All settings in a table",er(e),{test:"steps-fold"})}
    </section>
    ${ys(e.checks)} ${an(e.checks)}`}function Ov(e,t){return i`${hu(e)} ${Lv(e.bend_lines)}
    <div class="buttons">
      <button type="button" class="button" data-test="blank-svg" @click=${()=>t("svg")}>
        Drawing as SVG
      </button>
      <button type="button" class="button" data-test="blank-dxf" @click=${()=>t("dxf")}>
        Drawing as DXF
      </button>
    </div>`}function Av(e,t){let n=[g(S(e.set_angle_deg)),`X ${w(e.gauge_x_mm,{digits:1}).text}`],s=i`${e.number}. ${_t(
e)} <span class="step-set">${n.join(", ")}</span>`;return ke(s,Ev(e,t),{test:"step-fold"})}function Lv(e){let t=e.
filter(n=>n.opinions?.length);return t.length===0?d:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${t.length===1?`bend ${t[0].bend}`:`${t.length} bends`}
    </summary>
    ${t.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${g(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function Ev(e,t){if(!e.drawing)return d;let n=w(e.gauge_x_mm,{digits:2}),s=Wa(e,{set_angle_deg:e.
set_angle_deg,firstHit:e.first_hit??null}),o=g(S(s)),a={close:!1,opening:e.v_opening_mm??8*t,gauge:n.text,angle:s,
near:zn(e)?.near??null};return i`<figure class="step-drawing" data-step=${e.number}>
    <figcaption>
      ${El(e)} ${ks(e)}
      <small data-test="origins">${To(e.origin)}</small>
      ${e.motion?i`<span class="near-words ${e.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${As(e)}</span
            >`:d}
    </figcaption>
    <div class="poses">
      ${bt(e.drawing,{...a,pose:"before",words:`Step ${e.number} before the bend: the sheet on the die, gauge \
at ${g(n)}.`})}
      ${Nv(e,a)}
      ${bt(e.drawing,{...a,pose:"after",words:`Step ${e.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function Nv(e,t){let n=zn(e);return n?bt(e.drawing,{...t,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${e.number}. ${As(e)}`}):d}var Fm=f(()=>{y();pn();vo();A();Wn();ko();_s();Sr();jn();Ha();Bt();ln()});function jm({plan:e,error:t,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${e&&o?"stale":""} ${a===d?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${e?.section?nt(e,r?{pixels:innerWidth-56,tallest:215}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
d}
    ${a===d?i`<p class="picture-words" role="status" data-test="picture-words">
            ${Cv(e,t,n,s)}
          </p>`:r?a:d}
  </div>`}function Pv(e){let[t]=Object.entries(e.errors);return t?dl(kr(t[0]),t[1]):e.message}function Cv(e,t,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,r])=>r).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(t instanceof j)return"The shop's server does not answer. What you type stays on this device.";if(t instanceof
O)return`Not right yet. ${Pv(t)}`;if(t)return String(t);if(!e)return n?"Working it out…":"";let o=e.blank.outline?
`Blank ${w(e.blank.length_mm,{digits:2}).text} × ${g(w(e.blank.width_mm,{digits:2}))}`:`Blank ${g(w(e.blank.length_mm,
{digits:2}))}`;return i`${o} ${e.worst==="ok"?d:k(e.worst)}`}var Hm=f(()=>{y();pn();F();A();G();nc();it()});function Bv({seconds:e,deadline_s:t,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
    <h2><span role="status">Looking for the order…</span></h2>
    <progress max=${t} value=${Math.min(e,t)} aria-label="Time used">
      ${Math.round(e)} s
    </progress>
    <dl>
      <div>
        <dt>Time, at most about ${Math.round(t)} s</dt>
        <dd>
          <b data-test="looking-seconds">${Math.floor(e)} s</b
          >${e<t?d:", ending"}
        </dd>
      </div>
      <div>
        <dt>Steps looked at</dt>
        <dd><b data-test="looking-at">${n.toLocaleString("en-GB")}</b></dd>
      </div>
      <div class="best">
        <dt>Best so far</dt>
        <dd data-test="looking-best">${s?i`<b>${Wv(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function Wv(e){return Iv.filter(([n])=>e[n]).map(([n,s,o])=>`${e[n]} ${e[n]===1?s:o}`).join(", ")||
"no turning"}function Gm({plan:e,progress:t,stopped:n},{cancel:s,again:o,back:a}){return t?Bv(t,s):n?Dv({again:o,
back:e?a:null}):d}function Dv({again:e,back:t}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
    <p role="status">
      <b>Cancelled: no plan for what is typed now.</b>
      ${t?"Below stands the plan from before your last change.":d}
    </p>
    <div class="buttons">
      <button type="button" class="button next" data-test="look-again" @click=${e}>Look again</button>
      ${t?i`<button type="button" class="button" data-test="part-before" @click=${t}>
              Back to the part before
            </button>`:d}
    </div>
  </section>`}var Rv,Um,Iv,Fv,jv,Vm,zm=f(()=>{y();Rv=.6,Um=({seconds:e})=>e>=Rv;Iv=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];Fv="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",jv="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",Vm=e=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${e?jv:Fv}
  </div>`});var Km={};ne(Km,{show:()=>Hv});async function Hv(e){let t=ho(e.query.get("from")??"").slice(0,7),n=t?"cards.re\
vise":"cards.create";e.title(t?`Edit ${W(t)}`:"New part"),e.render(Oe(t?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([ce("metals",e.signal),ce("dies",e.signal),
ce("punches",e.signal)]),r=await Uv(t,s,e.signal);!t&&e.query.get("shape")==="box"&&(r.form=br(r.form,!0));let l={
...r,plan:null,planned:null,progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,
kept:!0},c=Nt(async(D,ue)=>(await Zc("/plan",Rs(D),{signal:ue,tell:h})).plan,({question:D,answer:ue,error:ct=null})=>{
ue&&Object.assign(l,{plan:ue,planned:D}),Object.assign(l,{error:ct,busy:!1,progress:null,summary:l.summary&&ct!==
null}),de()},e.signal,350);function h(D){Um(D)&&(l.progress=D,de())}function p(D=!1){let ue=ql(l.form);if(!D&&
ue===l.key&&!l.error)return de();Object.assign(l,{key:ue,busy:wr(l.form).length===0,progress:null,stopped:!1}),
l.busy?c.ask(l.form,{now:D}):(c.stop(),l.error=null),de()}let u={cancel(){c.stop(),Object.assign(l,{busy:!1,progress:null,
stopped:!0,error:null}),de()},again:()=>p(!0),back(){if(!l.planned)return;let D=l.form;Object.assign(l,{form:l.
planned,key:ql(l.planned),stopped:!1}),l.kept=Il(t,{form:l.form,base:l.base,newCode:l.newCode}),de(),ee("The p\
art of this plan is in the boxes again.",{label:"Put mine back",act:()=>m(D)})}};function m(D,{focus:ue,undo:ct}={}){
let kt=l.form;l.form=D,l.kept=Il(t,{form:D,base:l.base,newCode:l.newCode}),p(),ue&&requestAnimationFrame(()=>So(
ue)),ct&&ee(ct,{label:"Put it back",act:()=>m(kt)})}function $(D){m({...l.form,order:D},{undo:D?`Order ${D.join(
", ")} is yours now.`:"The planner chooses the order."})}function b(D){history.replaceState(history.state,"",t?
`/part?from=${t}`:"/part"),$(_r(D))}async function _(D){let[ue]=wr(l.form);if(ue){l.summary=!0,de(),So(ue[0]);
return}Object.assign(l,{saving:!0,clash:null,taken:""}),de();try{let Ke=await D();if("saved"in Ke)return T(Ke.
saved);"stale"in Ke?l.clash=Ke.stale:l.taken=Ke.taken}catch(Ke){l.error=Ke,l.summary=!0}l.saving=!1,de();let ct=l.
error instanceof O?l.error.errors:{},kt=tc(l.form).find(Ke=>Object.keys(ct).some(Ec=>Ec===Ke||Ec.startsWith(`${Ke}\
.`)));kt&&So(kt)}function T(D){Wl(t);let ue=D.revision===l.base?.revision;ee(ue?"Nothing was changed, so nothi\
ng was saved.":`Card ${W(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),$e(`/c/${D.code}`)}let E=()=>ge(
n)&&_(()=>l.base?am(l.form,l.base):Yl(l.form,l.newCode)),N=()=>(l.newCode=Bi(),_(()=>Yl(l.form,l.newCode)));function v(){
Wl(t);let D=l.form;Object.assign(l,{restored:!1,plan:null,planned:null,clash:null,...qm(l.card,s)}),p(!0),ee(t?
"The card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>m(D)})}function P(D){let ue=l.form;
Object.assign(l,{clash:null,base:sc(D)}),m(No(D.part,D.note)),ee("What is saved is in the boxes now.",{label:"\
Put mine back",act:()=>m(ue)})}async function X(D){try{await Xc(`/blank.${D}`,Rs(l.form),`${l.form.title.trim()||
"blank"}.${D}`)}catch(ue){ee(Z(ue))}}function de(){let D=l.error instanceof O?l.error.errors:{},ue=wr(l.form),
ct=Gm(l,u),kt=!l.busy&&!l.stopped&&!ue.length&&!l.error;e.render(i`<h1>
          ${t?i`${B(n,"Edit","Plan")} ${l.card?.title||"card"}
                  <small class="code">${W(t)}</small>`:B(n,"New part","Plan a part")}
        </h1>
        ${l.restored?i`<p class="restored" data-test="restored">
                What you typed before is back.
                <button type="button" class="link" data-test="start-over" @click=${v}>
                  ${t?"Back to the saved card":"Start an empty part"}
                </button>
              </p>`:d}
        ${l.kept?d:i`<p class="panel">
                This browser keeps nothing on this device: a reload loses what you type.
              </p>`}
        ${l.clash?mm(l.clash,l.form,{saveMine:()=>{l.base=sc(l.clash),E()},takeTheirs:()=>P(l.clash),saveAsNew:N}):
d}
        ${l.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${l.taken}">card ${W(l.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${N}>
                  Save this as another card
                </button>
              </div>`:d}
        ${l.summary?rp(D,kr,tc(l.form)):d}
        ${l.summary&&l.error instanceof j?i`<p class="panel" role="alert" data-test="not-saved">
                Not saved: the shop's server does not answer. What you typed stays on this device. Save again
                when it is back.
              </p>`:d}
        <div
          class="part-desk"
          data-test="part"
          data-busy=${String(l.busy)}
          aria-busy=${l.busy?"true":"false"}>
          <div class="part-edit">
            ${jm(l,{open:ue,stale:!kt,waiting:ct})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${Pm}
              @submit=${Ke=>{Ke.preventDefault(),E()}}>
              ${Nm(l.form,{metals:s,crib:{dies:o,punches:a},plan:kt?l.plan:null,editing:!!t,errors:D,change:m})}
              ${B(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${l.saving}>
                    ${l.saving?"Saving…":t?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?d:ct}
            <div class="part-plan ${kt||!l.plan?"":"stale"}" data-test="plan">
              ${l.plan&&!kt&&!l.busy?i`<p class="stale-note">
                      ${l.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:d}
              ${l.plan?Dm(l.plan,{save:X,order:Im($)}):Vm(!!l.form.box)}
            </div>
          </div>
        </div>`),l.busy||e.ready()}p(!0);let jo=e.query.get("order");jo&&b(jo)}function qm(e,t){return e?{form:No(
e.part,e.note),base:sc(e)}:{form:zl(t[0]?.code??""),base:null}}async function Uv(e,t,n){let s=Nu(e),o=null;try{
e&&(o=await Mt(e,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.newCode,card:o,restored:!0}:
{...qm(o,t),newCode:Bi(),card:o,restored:!1}}var sc,Ym=f(()=>{y();F();Ie();pe();fe();_o();lt();Pu();hn();lm();
Me();Be();pe();ie();fm();nc();Sr();Fm();Hm();zm();Re();it();sc=e=>({code:e.code,etag:e.etag,revision:e.revision,
revision_id:e.revision_id})});async function Jm(e,t){if(!navigator.mediaDevices?.getUserMedia)throw new Xn(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(Gv)}catch(o){throw new Xn(Vv[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return e.aborted&&s(),e.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",t),n}function Zm(e){return!!e.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function Xm(e,t){await e.
getVideoTracks()[0].applyConstraints({advanced:[{torch:t}]})}var Xn,Gv,Vv,Qm=f(()=>{Xn=class extends Error{constructor(t){
super(t),this.fault=t}},Gv={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
Vv={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function nf(){return Tr??=qv(),Tr.catch(()=>Tr=void 0),Tr}async function qv(){let e=await Kv(),t=e??await ef(),
n={own:!!e,async read(s){try{return await t.detect(s)}catch(o){if(t!==e)throw new Ds(String(o));return t=await ef(),
n.read(s)}}};return n}async function Kv(){let e=globalThis.BarcodeDetector,t=await e?.getSupportedFormats().catch(
()=>[]);return e&&t?.includes("qr_code")?new e(tf):null}async function ef(){try{let{BarcodeDetector:e,prepareZXingModule:t}=await import("/vendor/barcode-detector/ponyfill.js");
return await t({overrides:{locateFile:()=>zv},fireImmediately:!0}),new e(tf)}catch(e){throw new Ds(String(e))}}
var Ds,zv,tf,Tr,sf=f(()=>{Ds=class extends Error{},zv="/vendor/zxing-wasm/zxing_reader.wasm",tf={formats:["qr_\
code"]}});function af(e){let t=Zv(e.trim()),n=t?Yv.exec(t.pathname)?.[1]:Jv.exec(e.trim())?.[0];if(!n)return{kind:"other",
code:"",words:Qv(e,t)};let{code:s,whole:o,fault:a}=me(Xv(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${oc(W(s))} is\
 not a card code. ${r}`}}function Zv(e){if(!URL.canParse(e))return null;let t=new URL(e);return/^https?:$/.test(
t.protocol)?t:null}function Xv(e){try{return decodeURIComponent(e)}catch{return e}}function Qv(e,t){return t?`\
It leads to ${oc(t.host)}, not to a card.`:e.trim()?`It says “${oc(e.trim())}”, which is not a card code.`:
"It holds nothing that can be read."}var Yv,Jv,of,oc,rf=f(()=>{pe();Yv=/^\/c\/([^/]+)\/?$/i,Jv=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
of=40;oc=e=>e.length>of?`${e.slice(0,of)}…`:e});async function df(e,t,n,s){for(;!s.aborted;){if(e.readyState>=e.HAVE_CURRENT_DATA){let o=await t.read(e);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,ek))}}function hf(e,t,n){let o=e.filter(l=>cf(l,t,t)).map(l=>({...af(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if(lf(a))return a[0];let r=a.
filter(l=>cf(l.mark,t,n));return r.length>0&&lf(r)?r[0]:"several"}function cf({boundingBox:e},t,n){let s=t.getBoundingClientRect(),
o=Math.max(s.width/t.videoWidth,s.height/t.videoHeight),a=s.x+s.width/2+(e.x+e.width/2-t.videoWidth/2)*o,r=s.y+
s.height/2+(e.y+e.height/2-t.videoHeight/2)*o,{left:l,right:c,top:h,bottom:p}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=h&&r<=p}var ek,lf,pf=f(()=>{rf();ek=60;lf=e=>e.every(t=>t.code===e[0].code)});function uf(e,t){let{title:n,words:s,again:o}=tk[e];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${e}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${t}>Try again</button>`:d}
  </section>`}var ac,tk,mf=f(()=>{y();ac=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,tk={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${ac}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${ac}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${ac}`,again:!0}}});var gf={};ne(gf,{show:()=>ak});async function ak(e){e.title("Scan a label");let t={fault:null,stream:null,lamp:null,
says:ff},n=xa(),s=await Ut().catch(()=>[]),o=new AbortController,a=()=>e.render(ck(t,{again:h,lamp:p},()=>Sa(n,
s,a,"Seven characters, capitals or not."))),r=u=>{Object.assign(t,u),a()},l=()=>{o.abort(),Object.assign(t,{stream:null,
lamp:null})},c=u=>{l(),u instanceof Xn?r({fault:u.fault}):u instanceof Ds?r({fault:"no-decoder"}):e.render(Yt(
u)),e.ready()};async function h(){l();let{signal:u}=o=new AbortController;r({fault:null,says:ff});try{let[m,$]=await Promise.
all([Jm(u,()=>c(new Xn("busy"))),nf()]);if(u.aborted)return;r({stream:m,lamp:Zm(m)?!1:null,says:nk});let b=document.
querySelector(".scan-view video"),_=document.querySelector(".scan-frame");b.play().catch(()=>{}),e.ready();let T=rk(
E=>r({says:E}),u);await df(b,$,E=>T(hf(E,b,_)),u)}catch(m){u.aborted||c(m)}}async function p(){if(!t.stream)return;
let u=!t.lamp;await Xm(t.stream,u).then(()=>r({lamp:u}),()=>r({lamp:null}))}e.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():h(),{signal:e.signal}),h()}function rk(e,t){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>ok&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?e(sk):a.kind==="card"?await lk(a.code,e,t):e(ik(a)),s=performance.
now())}}function ik({kind:e,words:t}){return{kind:"wrong",title:e==="slip"?"Not a valid code":"Not a card’s la\
bel",words:`${t} Still looking.`}}async function lk(e,t,n){let s=W(e);t({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await wh(e,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?$e(`/c/${e}`,{replace:!0}):t(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is valid, but this shop has no such card: it is another shop’s label. S\
till looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server does no\
t answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wrong",title:`${s}\
 could not be opened`,words:o}))}function ck({fault:e,stream:t,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${e??
s.kind}>
    <h1>Scan a label</h1>
    ${e?uf(e,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${t} aria-label="What the camera sees"></video>
            ${dk}
          </div>`}
    <div class="scan-beside">
      <p class="scan-says" data-kind=${e?"fault":s.kind} role="status" data-test="says">
        ${e?d:i`<b>${s.title}</b> <span>${s.words}</span>`}
      </p>
      ${n===null?d:i`<button
              class="button wide"
              type="button"
              data-test="lamp"
              aria-pressed=${n}
              @click=${o.lamp}>
              Light ${n?"is on":"is off"}
            </button>`}
      ${a()}
    </div>
  </div>`}var ff,nk,sk,ok,dk,$f=f(()=>{y();Qm();Ie();pe();sf();pf();Be();Ce();Ui();mf();Re();ff={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},nk={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},sk={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},ok=2500;dk=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function bf(e,t,n){yf(e,t,n),Dp(e),be?.link.move({code:t,step:n},{whatever:!0})}function Mr(){be?.end.abort(),
be=null,Or(),Co()}function wf(e,t){!be||be.at.code!==e||be.at.step===t||(be.at.step=t,Or(),be.link.move({code:e,
step:t}),Co())}function _f(e){be&&(be.at.step=e,be.link.move({code:be.at.code,step:e},{whatever:!0}))}function Ar(e,t){
document.addEventListener("bench",()=>e(Ro()),{signal:t})}function yf(e,t,n,s=null){be?.end.abort();let o=new AbortController,
a={name:e,code:t,step:n,answers:null,late:!1,refused:""},r=qa(e,s,{keepMs:hk,heard:l=>{if(l.code!==a.code)return Mr();
a.step=l.step,Or(),Co()},changed:({gone:l,answers:c,late:h,refused:p})=>{if(l)return Mr();Object.assign(a,{answers:c,
late:h,refused:p}),Co()}},o.signal);be={at:a,link:r,end:o},Or(),Co()}function Or(){try{be?sessionStorage.setItem(
rc,JSON.stringify({name:be.at.name,code:be.at.code,step:be.at.step})):sessionStorage.removeItem(rc)}catch{}}function Lr(){
if(!be)try{let{name:e,code:t,step:n}=JSON.parse(sessionStorage.getItem(rc)??"{}");e&&t&&yf(e,t,n)}catch{}}var rc,
hk,be,Ro,Co,Er=f(()=>{yl();rn();rc="flangebook.on-bench",hk=5e3,be=null,Ro=()=>be?{...be.at}:null;Co=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Le(e){let{fault:t}=me(e);return i`<div class="state" data-test="bad-code">
    <h1>${W(e)} is not a card</h1>
    ${t||"A card code has seven characters, digits and letters without I, L, O and U."} ${ic}
  </div>`}function Qn(e,t){if(t instanceof j)return i`<div class="state" data-test="not-kept">
      <h1>${W(e)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${ic}
    </div>`;if(t instanceof O&&t.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${W(e)}</h1>
      The code is valid, but this shop has no card of that number. Look at the label again. ${ic}
    </div>`;throw t}async function vt(e,t){let{code:n}=e.params;try{await mt(n,t,e.signal)}catch(s){e.signal.aborted||
we(e,Qn(n,s))}}function we(e,t){e.title("No such card"),e.render(t),e.ready()}var ic,It=f(()=>{y();F();Ie();pe();
ic=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function kf(e,{busy:t,fault:n,take:s,settings:o}){return e?.differs?i`<details class="freshness panel" data-test="fresh">
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
                <td>${vf(a,"saved")}</td>
                <td>${vf(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&ge("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
d}
    <p class="wrong" role="alert">${n}</p>
    ${B("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${t} @click=${s}>
        ${t?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:d}function vf(e,t){let n=t==="saved"?e.saved_value:e.fresh_value;return e.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(e.field)&&typeof n=="number"?g(Ft(e.field??"",n)):e[t]}var xf=f(()=>{y();Me();A();ie()});function Bo(e){return e.refused?e.missing?"The shop was restored from a backup and does not know its card":`Re\
fused: ${e.refused}`:e.parked?"Saved here. The card was changed meanwhile: to resolve":e.late?`Saved here, not\
 yet in the shop. ${e.late}`:"Saved here, not yet in the shop. Waiting to be sent"}function Sf(e){let t=e.here??
[],n=e.proposals??[];if(!t.length&&!n.length)return d;let s=t.filter(o=>o.refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-settle" data-test="to-settle">
            <p>
              ${k("caution","To resolve")} This card was changed in two places at once. Both are kept.
            </p>
            ${B("cards.revise",i`<a class="button next" href="/c/${e.code}/settle" data-test="settle"
                >Resolve ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner decides which holds.</p>`)}
          </div>`:d}
    ${t.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${pk(t.length,n.length>0)}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:d}
          </p>`:d}
  </section>`}function pk(e,t){let n=e===1?"One change of this card waits":`${e} changes of this card wait`;return t?
`${n} until the other one is resolved.`:`${n} and ${e===1?"is sent automatically":"are sent automatically"}.`}
function Nr(e){return e==="shop"?"Saved in the shop.":e==="here"?"Saved here, not yet in the shop. It is sent \
automatically.":e==="settle"?`The card was changed meanwhile. Both are kept: ${ge("cards.revise")?"decide whic\
h holds.":"the owner decides which holds."}`:"Nothing was changed."}var Fs=f(()=>{y();Me();G();ie()});async function Pr(e,t){try{js=(await Un(e)).map(({name:n})=>n),e.aborted||t()}catch{}}function Cr(e,t,{draw:n,
start:s}){let o=Ro();if(o?.code===e)return uk(o,t);if(!js.length)return d;let a=[Tf,Wp()].find(r=>js.includes(
r))??js[0];return i`<section class="show-on-bench" aria-label="Press screen" data-test="show-on-bench">
    ${js.length>1?q({name:"bench",label:"Press screen",value:a,options:js.map(r=>[r,r]),change:r=>{Tf=r,n()}}):
d}
    <button
      type="button"
      class="button"
      data-test="put-on-bench"
      @click=${()=>{bf(a,e,t),n(),s?.()}}>
      Show on ${Gn(a)}
    </button>
  </section>`}function uk(e,t){let n=Gn(e.name);return i`<section
    class="show-on-bench on"
    aria-label="Press screen"
    data-test="on-bench"
    data-bench-step=${e.step}>
    <p role="status">${mk(e,n)}</p>
    ${e.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>_f(t)}>
            Show step ${t} there
          </button>`:d}
    <button type="button" class="button" data-test="off-bench" @click=${Mr}>Stop</button>
  </section>`}function mk({answers:e,late:t,refused:n},s){return e===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:t?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var js,Tf,lc=f(()=>{y();rn();Er();J();js=[],Tf=""});function Rr(e){let{drawing:t}=e,n=zn(e),s=Xa(e),o=fk(t,e.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${cc("before","before",Mf(t.before),t,o)}
    ${n?cc("during",s?sl(s).join(" "):"half way",n.shown,t,o,s):d}
    ${cc("after","after",Mf(t.after),t,o)}
  </div>`}function fk(e,t,n){let[s,o,a,r]=et([e.before.sheet,e.after.sheet]),l=t??(a-s)/6,[c,h]=n?In(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,e.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,h-l),high:Math.max(r+.3*l,2*l,h+l)}}function cc(e,t,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${e}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${Ae(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(h=>x`<path class="tool" d=${h}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?gk(c,a-o):d}
    </svg>
    <figcaption data-test="small-${e}">${t}</figcaption>
  </figure>`}function gk(e,t){if(!Ba(e,t))return x`<path class="ring" d=${fo([e.on_sheet,e.on_tool])}/>`;let[n,
s]=In(e);return x`<circle class="ring" cx=${n} cy=${-s} r=${t*.05}/>`}var Mf,dc=f(()=>{y();Bt();ol();nn();Mf=({
sheet:e,ram:t,holder:n,punch:s,gauge:o})=>({sheet:Ae(e),tools:[t,n,s].map(Ae).filter(Boolean),down:0,gauge:Ae(
o),back:0})});function Br(e,t,n,s){let o=[...e].sort((h,p)=>h[t]-p[t]);if(o.length<2||n<o[0][t]-.002||n>o[o.length-1][t]+.002)
return null;let a=o.findIndex(h=>h[t]>n),r=a<0?o.length-1:Math.max(a,1),[l,c]=[o[r-1],o[r]];return l[s]+(n-l[t])/
(c[t]-l[t])*(c[s]-l[s])}var hc=f(()=>{});function Wo(e){let t=e.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(t))return null;
let n=Number(t);return n>0&&n<180?n:null}function Do(e){let t={},n={},s=e.places==="one"?[["measured_deg",e.one]]:
[["left_deg",e.left],["middle_deg",e.middle],["right_deg",e.right]];for(let[o,a]of s){if(a.trim()==="")continue;
let r=Wo(a);r===null?n[o]=[e.places==="one"?Of:$k]:t[o]=r}return!Object.keys(t).length&&!Object.keys(n).length&&
(n[s[0][0]]=[Of]),{angles:t,wrong:n}}function Af(e,t,n){let s=yk(t),[o,a]=["set_angle_deg","punch_depth_mm"].map(
c=>Br(e.corrections??[],"measured_deg",s,c));if(o===null||a===null||n.set_angle_deg===null||bk(e,s))return null;
let r=e,l={row:s,ends:s!==Ir(t),set_angle_deg:o+(n.set_angle_deg-r.set_angle_deg),punch_depth_mm:n.punch_depth_mm===
null?null:a+(n.punch_depth_mm-r.punch_depth_mm)};return ut(e,l)?l:null}function bk({first_hit:e,included_angle_deg:t},n){
return!!(e&&n>Math.max(t+wk,e.comes_out_deg_high))}function Ir(e){let t=Object.values(e);return t.reduce((n,s)=>n+
s,0)/t.length}function yk(e){let t=(e.left_deg+e.right_deg)/2;return e.middle_deg-t>=_k?t:Ir(e)}function Hs(e){
return e?.correction?.set_angle_deg?e.correction:e?.table??null}function Wt(e){let t=[e.left_deg,e.middle_deg,
e.right_deg],s=t.some(o=>o!=null)?t.map(o=>g(S(o??null))).join(" / "):g(S(e.measured_deg));return e.flange_mm?
`${s}, flange ${vk(e.flange_mm)}`:s}var Io,Of,$k,wk,_k,vk,un=f(()=>{Ln();hc();A();Io={one:"",left:"",middle:"",
right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""};Of="Type the angle between the f\
lats in degrees, such as 90.5. Square is 90.",$k="Degrees, such as 90.5";wk=5;_k=.3;vk=e=>typeof e=="string"?e:
g(w(e,{digits:2}))});function Us(e,{waiting:t,step:n}={}){return i`<li class="row trial" data-test=${t?"waiting-trial":"trial"} data-id=${e.
id}>
    <div>
      <span class="lead">${Wt(e)}</span>
      <span class="code">Step ${e.step}</span>
      <span class="more">
        ${t?i`<b class="waits">${Bo(t)}</b> · `:d}
        ${[gs(e),Ot(e),kk(e),xk(e.correction,n)].filter(Boolean).join(" · ")}
        ${e.note?i`<span class="trial-note">${e.note}</span>`:d}
        ${t?.refused?i`<a href="/settings">Decide</a>`:d}
      </span>
    </div>
  </li>`}var kk,xk,pc=f(()=>{y();Ln();un();A();Fs();ze();kk=e=>e.set_angle_deg?`set at ${g(S(e.set_angle_deg))}`:
"",xk=(e,t)=>e?.set_angle_deg&&t&&ut(t,e)?`new setting ${g(S(e.set_angle_deg))}`:""});var Lf={};ne(Lf,{show:()=>Sk});async function Sk(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Le(t));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{e.title(n.title||W(t)),e.render(Tk(n,s,a,o))},a=async()=>{
Object.assign(s,{busy:!0,fault:""}),o();try{let l=R().name?{by:R().name}:{};n=await An(await _a(n,{replan:!0,reason:"\
Planned afresh with today’s tools",id:Ue(),...l})),s.fresh=null,H()}catch(l){s.fault=l instanceof O&&l.status===
412?"The card was changed meanwhile. Open it again first.":l instanceof Error?l.message:String(l)}s.busy=!1,o()},
r=async l=>{n=l,s.waiting=(await bn(t).catch(()=>[])).filter(c=>c.kind==="trial"),s.metal=hs((await Xt())?.metals,
n.part.metal),o(),e.ready()};_e(()=>n&&o(),e.signal),Ar(()=>n&&o(),e.signal),document.addEventListener("sync",
async()=>n&&r(await mo(t).catch(()=>{})??n),{signal:e.signal});try{await mt(t,r,e.signal)}catch(l){e.signal.aborted||
we(e,Qn(t,l));return}Lr(),Pr(e.signal,o),s.fresh=await M("GET",`/cards/${t}/fresh`,{signal:e.signal}).then(({body:l})=>l,
()=>null),o()}function Tk(e,t,n,s){let{plan:o}=e,a=o.checks.filter(c=>c.level!=="ok"),r=a.filter(c=>c.level===
"stop"),l=a.filter(c=>c.level!=="stop"&&!c.code.startsWith("general-"));return i`<article class="card" data-test="card" data-revision=${e.
revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${W(e.code)}</p>
        <h1 data-test="card-title">${e.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${Ok(e,t.metal)}</p>
        ${e.note?i`<p class="card-note" data-test="card-note">${e.note}</p>`:d}
        ${e.archived?i`<p class="card-note"><b>Archived.</b> This card is not in use any more.</p>`:d}
      </header>
      ${Sf(e)}
      ${r.length?i`<section class="card-stops" aria-label="Stop">${We(r)}</section>`:d}
      ${kf(t.fresh,{...t,take:n,settings:e.settings.length})}
      ${Mk(e,r.length>0)}
      ${o.steps.length?Cr(e.code,1,{draw:s,start:()=>$e(`/c/${e.code}/step/1`)}):d}
      <section class="panel card-picture" aria-label="What it becomes">
        ${nt(o,{tallest:innerHeight*.34})}
      </section>
      ${Pk(e)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${Ls(o.tools,o.steps.length,o.steps)}${Qa(o.blank)}${Fe(o)?Bs(o.blank,{tallest:420}):d}
      </section>
      <section class="panel card-trials">
        <h2>Results</h2>
        ${Nk(e,t.waiting)}
      </section>
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${Zn(o)?d:Ak(o.order)}${Ek(e)}
      </section>
      ${Zn(o)?i`<section class="panel card-order">
              ${ke("Order",xr(o,Wm(e.code)),{test:"order-fold"})}
            </section>`:d}
      ${l.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${fs(l)}
            </section>`:d}
      ${an(o.checks)}
    </div>
  </article>`}function Mk({code:e,plan:t},n){return t.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${e}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${t.steps.length===1?"1 step":`${t.steps.length} steps`}</small>
    </a>
  </div>`:d}function Ok({part:e,plan:t},n){let s=t.thickness_gauge?` (${t.thickness_gauge})`:"",o=e.bends.length===
1?"1 bend":`${e.bends.length} bends`,a=Fe(t)?`box ${Vn(t.folded)}`:`${U(e.bend_length_mm)} ${C()} long`;return`${n}\
, ${U(e.thickness_mm)} ${C()}${s}, ${a}, ${o}`}function Lk(e,t){let{gauge_x_mm:n}=ot(e,t);return n===null?"no \
gauge":`gauge at ${g(w(n))}`}function Ek(e){return i`<ol class="rows" data-test="step-list">
    ${e.plan.steps.map(t=>i`<li class="row">
          <a href="/c/${e.code}/step/${t.number}">
            <span class="lead">${t.number}. ${_t(t)} ${t.direction}</span>
            <span class="code">${g(S(t.included_angle_deg))}</span>
            <span class="more">${Lk(e,t)}</span>
            ${t.turn_over||t.turn_end||t.turn_quarter?i`<span class="turn" data-test="turn">${Ts(t)}</span>`:d}
            ${wt(t,{short:!0})}
            ${t.drawing?Rr(t):d}
          </a>
        </li>`)}
  </ol>`}function Nk(e,t){let n=[...e.trials].reverse().slice(0,3);return!n.length&&!t.length?i`<p data-test="no-trials">
      Nothing measured yet.${B("trials.keep"," After a bend, type the result.")}
    </p>`:i`<ul class="rows trials" data-test="trials">
    ${[...t].reverse().map(s=>Us(s.body,{waiting:s}))}
    ${n.map(s=>Us(s,{step:e.plan.steps[s.step-1]}))}
  </ul>`}function Pk({code:e}){return i`<nav class="card-links" aria-label="This card">
    ${oe(`/c/${e}/note`,i`<a class="button" href="/c/${e}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${e}/history" data-test="history">History</a>
    <a class="button" href="/c/${e}/label" data-test="label">Label</a>
    <a class="button" href="/c/${e}/print" data-test="print">Print</a>
    ${B("cards.revise",i`<a class="button" href="/part?from=${e}" data-test="edit">Edit</a>`)}
  </nav>`}var Ak,Ef=f(()=>{y();F();Ie();pe();fe();tn();Pe();Er();Be();se();ve();A();It();G();ko();_s();xf();Fs();
Ms();ie();Sr();ln();lc();dc();Bt();pc();Ss();pn();at();Ak=e=>e?.words?i`<p class="order" data-test="order">${e.
words}</p>`:d});var Cf={};ne(Cf,{show:()=>Ck});async function Ck(e){let{code:t,step:n}=e.params;if(!me(t).whole)return we(e,Le(
t));let s=Ao(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return e.render(Ik(o,n));e.title(`${o.title||t},\
 step ${r.number}`),e.render(Dk(o,r,()=>rr(o,r,s,a,e.signal),Cr(o.code,r.number,{draw:a})))};_e(()=>o&&a(),e.signal),
Ar(()=>o&&Rk(o,Number(n),a),e.signal),document.addEventListener("sync",()=>o&&Bk(o),{signal:e.signal}),addEventListener(
"keydown",r=>o&&Wk(r,o,Number(n)),{signal:e.signal}),Lr();try{await mt(t,r=>{!o&&r.plan.steps[Number(n)-1]&&wf(
t,Number(n)),o=r,a(),e.ready()},e.signal)}catch(r){e.signal.aborted||we(e,Qn(t,r));return}Pr(e.signal,()=>o&&a())}
function Rk(e,t,n){let s=Ro(),o=s?.code===e.code&&s?.step!==t&&e.plan.steps[(s?.step??0)-1];o?$e(`/c/${e.code}\
/step/${o.number}`,{replace:!0}):n()}async function Bk(e){let t=await mo(e.code).catch(()=>{});t&&t.revision!==
e.revision&&ee(`This card is at revision ${t.revision} now.`,{label:"Show it",act:()=>Tt()})}function Wk(e,t,n){
e.altKey||e.ctrlKey||e.metaKey||e.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.test(e.target.tagName)||(e.key==="Arro\
wRight"&&$e(Nf(t,n).href),e.key==="ArrowLeft"&&$e(Pf(t,n).href))}function Nf(e,t){let n=e.plan.steps.at(-1);return t<
e.plan.steps.length?{href:`/c/${e.code}/step/${t+1}`,label:"Next",more:`step ${t+1}`}:n.set_angle_deg===null||
!xt(`/c/${e.code}/trial/${t}`)?{href:`/c/${e.code}`,label:"Done: the card",more:""}:{href:`/c/${e.code}/trial/${t}`,
label:"Type the result",more:""}}function Dk(e,t,n,s){let{stops:o,watch:a}=ar(e,t),r=t.number===e.plan.steps.length,
l=Nf(e,t.number);return i`<article class="step" data-test="step">
    ${tr(e,t)} ${o.length?i`<div class="step-stop">${We(o)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${Ja(t,e.part.flats_mm.length)}${wt(t)}</div>
      <section class="step-set" aria-label="What to set">${ir(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-bench">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?We(a):d}
      </section>
      <section class="step-with" aria-label="Tools">
        ${$u(e.plan,t)} ${Ya(e.plan,t)}
        ${To(t.origin)?i`<p class="hint origins" data-test="origins">${To(t.origin)}</p>`:d}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${Pf(e,t.number).href} data-test="back">Back</a>
      ${r||t.set_angle_deg===null?d:oe(`/c/${e.code}/trial/${t.number}`,i`<a class="button" href="/c/${e.code}/trial/${t.
number}" data-test="came-out"
                >Type the result</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:d}</a
      >
    </nav>
  </article>`}var Ik,Pf,Rf=f(()=>{y();Ie();pe();lt();Er();Be();Me();se();tn();It();vl();G();Ms();ie();nr();Ha();
lc();cn();Bt();lr();Ik=(e,t)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${t}</strong>This card has ${e.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${e.code}">Open the card</a></span>
  </div>`;Pf=(e,t)=>({href:t>1?`/c/${e.code}/step/${t-1}`:`/c/${e.code}`,label:"Back"})});function Bf(e,t,n,s){let o=e.gauged_flange;if(!o)return null;let a=Br(o.rows,"measured_deg",t,"flange_mm");if(a===
null)return null;let r=n-a;if(Math.abs(r)>o.most_error_mm)return{gauge_x_mm:null,error_mm:r,words:"That flange\
 is further off than a gauge error can be. Check it before you set a new X.",to_check:Fk};let l=Math.abs(r)<=uc?
s:s-r,c=l>=o.x_low_mm&&l<=o.x_high_mm;return{gauge_x_mm:c?l:null,error_mm:r,words:c?"":"The gauge does not rea\
ch far enough to correct the flange.",to_check:[]}}var uc,Fk,Gs,Wr=f(()=>{hc();uc=.05;Fk=["Measure again, to t\
he face that the card's dimension goes to.","Check which flange was measured.","Read the gauge: did it stand a\
t the X of the card, and the sheet against it?"],Gs=({correction:e,gauge:t})=>e?.flange??t??null});function Wf(e,t,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(h,p,u,m={})=>L({name:p,label:u,value:a[h],wrong:r[p],
change:$=>Object.assign(a,{[h]:$}),...m}),c=n.used??ot(e,t);return i`<form
    class="trial-form"
    novalidate
    data-test="trial-form"
    @submit=${h=>{h.preventDefault(),s()}}>
    <div class="trial-main">
      <h2>Result <small>Wanted ${g(S(t.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:d}
      <div class="trial-angles ${a.places}">
        ${a.places==="one"?l("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[l("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),l("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),l("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${mc(a,o)}
      <div class="trial-more">
        ${n.byDepth?l("set","punch_depth_mm","Depth that was set",{unit:C(),placeholder:c.punch_depth_mm===null?
"":w(c.punch_depth_mm,{digits:2}).text,hint:If}):l("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:c.set_angle_deg===null?"":S(c.set_angle_deg).text,hint:If})}
        ${l("flange","flange_mm","Flange measured",{unit:C(),hint:"If you measured it."})}
        ${l("note","note","Note",{hint:"Grain, anything odd."})}
      </div>
      <details
        class="more-measured"
        data-test="more-measured"
        ?open=${["lot","thickness_mm","radius_mm"].some(h=>r[h]?.length)}>
        <summary>More measured</summary>
        <div class="trial-more">
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
  </form>`}var If,mc,fc=f(()=>{y();Ie();A();J();If="Leave it if it was set as shown.",mc=(e,t)=>Y({name:"place\
s",label:"Measured at",value:e.places,options:[["one","One place"],["three","Left, middle, right"]],change:n=>{
Object.assign(e,{places:n}),t()}})});function Df(e){let t=Gs(e);return t?t.gauge_x_mm===null?jk(t):i`<div class="set-figures" data-test="new-gauge">
      ${qe("Gauge X now",w(t.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${Ff(t.error_mm)}</p>`:d}function jk({error_mm:e,words:t,said:n,to_check:s}){
return s.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${k("stop")} <b>No new gauge X.</b> ${Ff(e)} No gauge is that far off.</p>
    <ol>
      ${s.map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${n?ye(n):t}</p>`}function Ff(e){return e===null?"":Math.abs(e)<=uc?"Flang\
e as wanted: leave the gauge.":`Flange ${re(w(Math.abs(e),{digits:2}))} too ${e>0?"long":"short"}.`}function jf(e){
let t=e?.crown;return t?i`<div class="crown" data-test="crown">
    <p>${Hk(t)}</p>
    ${t.shim?Uk(t.shim):d}
  </div>`:d}function Hk({middle_open_deg:e,shim:t,words:n}){return t?i`<b>The middle is ${re(S(e))} more open than the ends.</b> First crown the middle
    by ${re(w(t.middle_mm,{digits:2}))}, or shim the die:`:n}function Uk({strip_mm:e,lengths_mm:t}){let n=t.map(
o=>w(o,{digits:0}).text).join(", "),s=w(t[0],{digits:0}).unit;return i`<p data-test="shim">
    ${t.length===1?"1 strip":`${t.length} strips`} of
    ${re(w(e,{digits:2}))} under the middle of the die, one on the other, ${n} ${s}
    long. Nothing at the ends. Then set what stands above, which is for the ends; bend again and measure.
  </p>`}var Hf,Uf=f(()=>{y();Wr();A();G();cn();Hf=({thickness_mm:e})=>e?` Calculated for the ${re(w(e,{digits:2}))}\
 that the sheet measures.`:""});function Gf(e,t,n,{again:s,keep:o}){let a=Hs(n),r=t.number===e.plan.steps.length;return i`<div
    class="trial-result"
    data-test="trial-result"
    data-waits=${n.waits?"true":"false"}>
    <div class="trial-main">
      <h2>${Wt(n.trial)} <small>wanted ${g(S(t.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${n.late||"the shop does not answer"}.
              It is sent automatically.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?Vk(a):uu(t,n)}
      ${a?i`<p class="basis" data-test="basis">${qk(n)}</p>`:d}
      ${n.question?Gk(e,n.question):d} ${Df(n)}
      ${Yk(n.correction)} ${jf(n.correction)}
      ${a?B("cards.revise",Xk(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
d}
    </div>
    <nav class="step-nav" aria-label="Result">
      <button class="button" data-test="again" @click=${s}>Measure again</button>
      <a class="button" href="/c/${e.code}/step/${t.number}" data-test="back">Step ${t.number}</a>
      ${r?i`<a class="button next" href="/c/${e.code}" data-test="next">Done: the card</a>`:i`<a class="button next" href="/c/${e.
code}/step/${t.number+1}" data-test="next"
              >Next: step ${t.number+1}</a
            >`}
    </nav>
  </div>`}function qk({correction:e,table:t}){return e?`${e.what}${Kk(e)}${Hf(e)}`:`Worked out on this device,\
 from the card’s own table at ${g(S(t?.row??null))}. The shop works it out again when the result arrives.${t?.
ends?` ${zk}`:""}`}function Yk(e){let t=e?.tilt_mm_per_m;return t==null?d:i`<p data-test="tilt">
    Left and right differ: about ${Zk(Math.abs(t))},
    ${t>0?"the right end deeper":"the left end deeper"}.
  </p>`}function Xk(e,t){return e.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${e.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${e.words}
    </p>`:i`<div class="buttons">
      <button class="button" data-test="keep" ?disabled=${e.kept==="asking"} @click=${t}>
        ${e.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${e.words}</p>`}var Gk,Vk,zk,Kk,Jk,Zk,Vf=f(()=>{y();Uf();
un();A();G();Pl();ie();cn();Gk=(e,t)=>i`<section class="panel urgent" data-test="question">
    <p>${k("unknown","Does not count")} ${t}</p>
    <p><a href="/shop/learned/${encodeURIComponent(e.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,Vk=e=>i`<div class="set-figures" data-test="new-setting">
    ${qe("Angle now",S(e.set_angle_deg),"new-angle")}
    ${e.punch_depth_mm===null?d:qe("Depth now",w(e.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`,zk="The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it\
 first.";Kk=({crown:e})=>e?.setting_for==="ends"?" This is for the ends; first correct the open middle, see be\
low.":"";Jk=3048,Zk=e=>C()==="in"?`${Q(e*Jk/1e3/Ye,3)} in over ten feet`:`${Q(e,2)} mm in each metre`});async function zf(e,t,n,s){let o=Hs(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await en(e,{settings:[...e.settings.filter(r=>r.step!==t.number),ex(t,o,n.trial,tx(e,t,n))]},{reason:`\
Step ${t.number} set from a piece measured at ${Wt(n.trial)}`});Object.assign(e,a.card),Object.assign(n,{kept:"\
kept",where:a.where,words:Qk(a)}),H()}catch(a){Object.assign(n,{kept:"no",words:Z(a)})}s()}}function Qk({where:e,
card:t}){return e==="shop"?`Revision ${t.revision} of the card has it. Steps show it from now on.`:e==="settle"?
"The card was changed meanwhile. Both are kept: decide on the card which holds.":"Steps show it on this device\
 from now on; it is sent to the shop automatically."}var ex,tx,qf=f(()=>{F();tn();Wr();un();ve();ex=(e,t,n,s)=>({
step:e.number,set_angle_deg:t.set_angle_deg,punch_depth_mm:t.punch_depth_mm,...s===null?{}:{gauge_x_mm:s},trial_id:n.
id,reason:`Piece measured at ${Wt(n)}`}),tx=(e,t,n)=>Gs(n)?.gauge_x_mm??e.settings.find(s=>s.step===t.number)?.
gauge_x_mm??null});var Kf={};ne(Kf,{show:()=>sx});async function sx(e){let{code:t,step:n}=e.params;if(!me(t).whole)return we(e,Le(
t));let s={typed:{...Io},used:null,wrong:{},general:"",sending:!1,result:null,byDepth:!1},o,a=async()=>{let l=nx.
includes((await Xt())?.press?.set_by);l===s.byDepth||s.typed.set||s.sending||s.result||(s.byDepth=l,o&&!e.signal.
aborted&&r())};document.addEventListener("sync",a,{signal:e.signal}),await a();let r=()=>{let l=o.plan.steps[Number(
n)-1];if(!l)return we(e,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${t}">Open the card</a>
        </p>`);e.title(`${o.title||t}: result`),e.render(ox(o,l,s,r))};pt(()=>!s.result&&s.typed.one+s.typed.left+
s.typed.note?"Leave without saving what you measured?":null),await vt(e,l=>{s.sending||s.result||(o=l,r(),e.ready())})}
function ox(e,t,n,s){let o=()=>ax(e,t,n,s),a=()=>{let l=rx(n);Object.assign(n,{typed:{...Io,places:n.typed.places,
lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),s()},r=()=>zf(e,t,n.result,s);return i`<article class="step trial-screen" data-test="trial-screen">
    ${tr(e,t)}
    <div class="trial-body">
      ${n.result?Gf(e,t,n.result,{again:a,keep:r}):Wf(e,t,n,{save:o,draw:s})}
      <aside class="trial-aside" aria-label="Which bend">
        ${nt(e.plan,{mark:t.bend})}
      </aside>
    </div>
  </article>`}async function ax(e,t,n,s){if(n.sending)return;let{angles:o,wrong:a}=Do(n.typed),r=lx(e,t,n);if(r||
(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,{wrong:a,general:""}),
Object.keys(a).length||!r)return s(),rt(a);let l=cx(e,t,o,r,n.typed);n.sending=!0,s();try{let{late:c,...h}=await da(
{id:l.id,kind:"trial",code:e.code,body:l}),p=h.answer,u=p?.correction??null;n.result={trial:l,correction:u,table:p||
r.set_angle_deg===null?null:Af(t,o,r),gauge:p?null:ix(t,o,r,l.flange_mm),waits:!p,late:c??"",question:p?.question_said?
ye(p.question_said):"",kept:"no",words:""},p&&H()}catch(c){n.wrong=c instanceof O?c.errors:{},n.general=Z(c)}n.
sending=!1,await cs(),s(),rt(n.wrong)}function rx({result:e,used:t}){let n=Hs(e),s=e&&(Gs(e)?.gauge_x_mm??e.trial.
gauge_x_mm??null);return n?{...n,gauge_x_mm:s??t?.gauge_x_mm}:null}function ix(e,t,n,s){let o=Yc(s);return o===
null||typeof n.gauge_x_mm!="number"?null:Bf(e,Ir(t),o,n.gauge_x_mm)}function lx(e,t,n){let{set_angle_deg:s,punch_depth_mm:o,
gauge_x_mm:a}=n.used??ot(e,t),r={set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a};if(n.typed.set.trim()==="")return r;
if(n.byDepth)return{set_angle_deg:null,punch_depth_mm:te(n.typed.set),gauge_x_mm:a};let l=Wo(n.typed.set);return l===
null?null:{set_angle_deg:l,punch_depth_mm:null,gauge_x_mm:a}}function cx(e,t,n,s,o){let a={id:Ue(),revision:e.
revision,step:t.number,bend:t.bend,...n,made_at:new Date().toISOString()};return s.set_angle_deg!==null&&(a.set_angle_deg=
s.set_angle_deg),s.punch_depth_mm!==null&&(a.punch_depth_mm=s.punch_depth_mm),typeof s.gauge_x_mm=="number"&&(a.
gauge_x_mm=s.gauge_x_mm),o.flange.trim()&&(a.flange_mm=te(o.flange)),o.radius.trim()&&(a.radius_mm=te(o.radius)),
o.thickness.trim()&&(a.thickness_mm=te(o.thickness)),o.lot.trim()&&(a.lot=o.lot.trim()),o.note.trim()&&(a.note=
o.note.trim()),R().name&&(a.by=R().name),a}var nx,Yf=f(()=>{y();F();Ie();pe();fe();Wr();un();Pe();Be();ls();se();
ve();A();It();G();J();cn();fc();Vf();pn();qf();nx=["depth","stop"]});function Zf(e,t,n,s){return e.map(o=>i`<fieldset class="settle-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${Fo(o,o.before)}</small></legend>
        ${Jf(o,"shop","In the shop",t,s)} ${Jf(o,"yours",n,t,s)}
      </fieldset>`)}function Jf(e,t,n,s,o){return i`<label class="settle-side" data-test=${t}>
    <span class="settle-whose"
      ><input
        type="radio"
        name=${e.name}
        value=${t}
        .checked=${s[e.name]===t}
        @change=${()=>o(e.name,t)} />
      ${n}</span
    >
    <span class="settle-value">${Fo(e,e[t])}</span>
  </label>`}function Fo({name:e},t){if(e==="archived")return t?"Archived":"In use";if(!e.startsWith("settings "))
return t||"nothing";if(!t)return"as planned";let n=t,s=n.punch_depth_mm===null||n.punch_depth_mm===void 0?"":`\
, depth ${g(w(n.punch_depth_mm,{digits:2}))}`;return`${g(S(n.set_angle_deg??null))}${s}`}var gc=f(()=>{y();A()});function Xf(e,t){return e.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${e.map(n=>dx(n,t))}
    </ol>
  </section>`:d}function dx(e,t){let n=rs(e.changes,e.before,{...e.before,settings:e.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${e.settled_by?`Resolved by revision ${e.settled_by}`:oe(`/c/${t}/settle`,i`<a href="/c/${t}/settle">To resolve</a>`,
"To resolve")}
    </h3>
    <p class="more">${[gs(e),Ot(e)?`by ${Ot(e)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${Fo(s,s.before)} to ${Fo(s,s.yours)}</li>`)}
    </ul>
  </li>`}var Qf=f(()=>{y();is();ie();gc();ze()});function eg({title:e,note:t,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${e}</b>, ${g(w(n.thickness_mm,{digits:2}))},
      ${Fe(s)?Vn(s.folded):`${g(w(n.bend_length_mm))} long`}${t?i`. ${t}`:d}
    </p>
    ${nt(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${hx(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:d}
    ${er(s)} ${We(s.checks,{quiet:!0})}
  </div>`}function hx(e,t){let n={set_angle_deg:t.set_angle_deg??null,punch_depth_mm:t.punch_depth_mm??null};if(!e||
!ut(e,n))return"had a setting beyond its tools";let s=g(w(n.punch_depth_mm,{digits:2}));return`set at ${g(S(n.
set_angle_deg))}, depth ${s}`}var tg=f(()=>{y();Ss();pn();Ln();A();G();ln()});var ng={};ne(ng,{show:()=>px});async function px(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Le(t));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>e.render(mx(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=u=>M("GET",`/cards/${t}/${u}`,{signal:e.signal}),[h,p]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);s.revisions=h.body.revisions,s.proposals=p.body.proposals,s.silent=
!1}catch(c){if(!(c instanceof j))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=null,o(),
!!s.open){try{let{body:h}=await M("GET",`/cards/${t}/revisions/${c}`,{signal:e.signal});s.open===c&&(s.snapshot=
h)}catch(h){s.open=0,ee(Z(h))}o()}},l=async c=>{s.busy=!0,o();try{n=await ux(n,c),ee(`Revision ${c} is back, a\
s revision ${n.revision}.`),s.open=0,H(),await a()}catch(h){ee(h instanceof O&&h.status===412?"The card was ch\
anged meanwhile. Look at the history again.":Z(h))}s.busy=!1,o()};_e(()=>n&&o(),e.signal);try{await mt(t,async c=>{
n=c,e.title(`${n.title||W(t)}: history`),s.waiting=(await bn(t).catch(()=>[])).filter(h=>h.kind==="trial"),o()},
e.signal),await a(),o(),e.ready()}catch(c){e.signal.aborted||we(e,Qn(t,c))}}async function ux(e,t){let n=await Mt(
e.code);return _a(n,{restore_revision:t,reason:`Revision ${t} brought back`,id:Ue(),...R().name?{by:R().name}:
{}})}function mx(e,t,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${W(e.code)}</a></p>
      <h1>History of ${e.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${fx(e,t,n)}
      </section>
      ${Xf(t.proposals,e.code)}
      <section class="panel">
        <h2>Results</h2>
        ${$x(e,t)}
      </section>
    </div>
  </article>`}function fx(e,t,n){return t.silent?i`<p data-test="silent">
      This device has revision ${e.revision}, of
      ${ae(e.updated_at)}${e.updated_by?` by ${e.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:t.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${t.revisions.map(s=>gx(s,e,t,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function gx(e,t,n,{look:s,bringBack:o}){let a=e.revision===
t.revision,r=n.open===e.revision;return i`<li class="row revision" data-test="revision" data-revision=${e.revision}>
    <h3>
      Revision ${e.revision}${a?", as it is now":""}
      ${e.worst==="stop"||e.worst==="caution"?k(e.worst):d}
    </h3>
    <p class="more">${[ae(e.at),Ot(e)].filter(Boolean).join(", by ")}</p>
    ${e.reason?i`<p data-test="reason">${e.reason}</p>`:d}
    ${e.changes.length?i`<ul class="changes" data-test="changes">
            ${e.changes.map(l=>i`<li>${l}</li>`)}
          </ul>`:d}
    <div class="buttons">
      <button
        class="button"
        aria-expanded=${r?"true":"false"}
        data-test="look"
        @click=${()=>s(e.revision)}>
        ${r?"Close":"Look at it"}
      </button>
      ${a?d:B("cards.revise",i`<button
                class="button"
                data-test="bring-back"
                ?disabled=${n.busy}
                @click=${()=>o(e.revision)}>
                Bring this one back
              </button>`)}
    </div>
    ${r?n.snapshot?eg(n.snapshot):i`<p>Fetching it…</p>`:d}
  </li>`}function $x(e,t){return!e.trials.length&&!t.waiting.length?i`<p data-test="no-trials">Nothing measured yet.</p>`:
i`<ol class="rows trials" data-test="trials">
      ${[...t.waiting].reverse().map(n=>Us(n.body,{waiting:n}))}
      ${[...e.trials].reverse().map(n=>Us(n,{step:e.plan.steps[n.step-1]}))}
    </ol>
    ${e.trials_total>e.trials.length?i`<p>The newest ${e.trials.length} of ${e.trials_total}.</p>`:d}`}var sg=f(
()=>{y();F();Ie();pe();lt();Pe();se();ve();It();G();ie();Qf();tg();pc();ze()});var og={};ne(og,{show:()=>bx});async function bx(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Le(t));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{e.title(`${n.title||W(t)}: not\
e`),e.render(_x(n,s,{draw:o,save:()=>wx(n,s,o,e.signal)}))};pt(()=>s.typed?"Leave without saving what you type\
d?":null),await vt(e,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),
o(),e.ready())})}async function wx(e,t,n,s){if(t.sending)return;let[o,a]=[t.title.trim(),t.note.replace(/\r\n/g,
`
`).trim()];if(Object.assign(t,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),rt(t.wrong);
t.sending=!0,n();try{let{where:r}=await en(e,{title:o,note:a,archived:t.archived});if(t.typed=!1,ee(Nr(r)),H(),
s.aborted)return;$e(r==="settle"&&xt(`/c/${e.code}/settle`)?`/c/${e.code}/settle`:`/c/${e.code}`)}catch(r){t.wrong=
r instanceof O?r.errors:{},t.general=Z(r),t.sending=!1,n(),rt(t.wrong)}}function _x(e,t,{draw:n,save:s}){let o=a=>Object.
assign(t,a,{typed:!0});return i`<form
    class="note-screen"
    novalidate
    data-test="note-screen"
    @submit=${a=>{a.preventDefault(),s()}}>
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${W(e.code)}</a></p>
      <h1>${B("cards.revise","Note and title","Note")}</h1>
    </header>
    ${t.general?i`<p class="wrong" role="alert" data-test="wrong">${t.general}</p>`:d}
    ${Dn({name:"note",label:"Note",value:t.note,lines:5,wrong:t.wrong.note,change:a=>o({note:a})})}
    ${B("cards.revise",[L({name:"title",label:"Title",value:t.title,wrong:t.wrong.title,change:a=>o({title:a})}),
Y({name:"archived",label:"This card",value:t.archived?"away":"use",options:[["use","In use"],["away","Archived"]],
change:a=>{o({archived:a==="away"}),n()}})])}
    <p class="hint">
      This works without the shop too: it is saved here and sent automatically.
      ${B("cards.revise","To change the part itself, use Edit: that is planned by the shop, so the shop must a\
nswer.","The owner changes the rest of the card.")}
    </p>
    <div class="buttons">
      <button class="button next wide" data-test="save" ?disabled=${t.sending}>
        ${t.sending?"Saving…":"Save"}
      </button>
    </div>
  </form>`}var ag=f(()=>{y();pe();F();tn();lt();Be();Me();ve();It();ie();J();Fs()});var rg={};ne(rg,{show:()=>yx});async function yx(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Le(t));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{e.title(`${n.title||W(t)}: to resolve`),
e.render(vx(n,s,c))},a=async h=>{if(!h||s.sending)return;let p=[n?.etag,s.proposal?.id].join();n=h,[s.proposal]=
n.proposals;let{changes:u={},before:m={}}=s.proposal??{};s.rows=rs(u,m,n),s.mine=!!(s.proposal&&await Yo(s.proposal.
id).catch(()=>{})),p!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),e.ready()},r=async()=>a(await Fi(t).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let h=await en(n,Jd(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Resolved"});ee(Nr(h.where)),s.sending=!1,await r(),H()}catch(h){Object.assign(
s,{sending:!1,fault:Z(h)}),o()}},choose:(h,p)=>{s.chosen[h]=p,o()},all:h=>{for(let{name:p}of s.rows)s.chosen[p]=
h;o()}};document.addEventListener("sync",r,{signal:e.signal}),await vt(e,async h=>a(await Fi(t).catch(()=>{})??
h))}function vx(e,t,n){return i`<article class="settle" data-test="settle-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${W(e.code)}</a></p>
      <h1>${t.proposal?"Two changes met":"Nothing to resolve"} <small>${e.title}</small></h1>
    </header>
    ${t.proposal?kx(e,t,n):i`<p data-test="settled">
            Every change of this card is resolved. Both sides are in its
            <a href="/c/${e.code}/history">history</a>.
          </p>`}
  </article>`}function kx(e,{proposal:t,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:p})=>!o[p]).
length,h=s?"Yours":t.by?`By ${t.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":t.by?`${t.by} changed`:"Somebody changed"} this card
      (${gs(t)}) while it was changed in the shop (revision ${e.revision},
      ${ae(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}). Choose what holds. Both
      stay in the history.
    </p>
    ${e.proposals.length>1?i`<p><b>1 of ${e.proposals.length} to resolve.</b></p>`:d}
    ${n.length?i`<div class="buttons">
              <button type="button" class="button" data-test="all-shop" @click=${()=>l.all("shop")}>
                All as in the shop
              </button>
              <button type="button" class="button" data-test="all-yours" @click=${()=>l.all("yours")}>
                ${s?"All of yours":t.by?`All by ${t.by}`:"All of the other one"}
              </button>
            </div>
            ${Zf(n,o,h,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
    ${r?i`<p class="wrong" role="alert" data-test="wrong">${r}</p>`:d}
    <div class="buttons settle-keep">
      <button
        type="button"
        class="button next wide"
        data-test="keep"
        ?disabled=${a||c>0}
        @click=${l.keep}>
        ${a?"Saving…":"Keep this"}
        ${c?i`<small>${c===1?"1 still to choose":`${c} still to choose`}</small>`:d}
      </button>
    </div>`}var ig=f(()=>{y();F();is();pe();tn();lt();Pe();ve();It();Fs();gc();ze()});function lg(e,t){let{plan:n}=e,s=Cx(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${Sx(e,t)}
    <figure class="strip ${Fe(n)?"of-box":""}">
      <figcaption>
        Blank ${Dr(n.blank.length_mm)} × ${Dr(n.blank.width_mm)},
        ${g(Zs(n.blank.mass_kg))}.
        ${Fe(n)?xx(n):"Bend lines from the left end."}
      </figcaption>
      ${Bs(n.blank,Fe(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${Tx(n)} ${Mx(e,s)} ${Bx(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function xx({blank:e}){let t=({bend:a})=>{let r=e.bend_lines.find(l=>l.bend===a);return`${a} ${U(
r.at_mm)}`},n=a=>e.lines.filter(r=>a.includes(r.side)).map(t).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,Ll(e),"Inside up."].filter(
Boolean).join(" ")}function Sx(e,t){let{part:n,plan:s}=e;return i`<header>
    <div>
      <h2>${e.title}</h2>
      <p class="big-code" data-test="sheet-code">${e.display_code}</p>
      <p>
        <b
          >${t},
          ${Dr(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:d}</b
        >, ${Fe(s)?`box ${Vn(s.folded)}`:i`bend length ${Dr(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${e.revision}, ${Pn(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}.
      </p>
      ${e.note?i`<p class="note">${e.note}</p>`:d}
    </div>
    ${s.section?nt({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):d}
    <img
      class="qr"
      src="/api/v1/cards/${e.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function Tx(e){let t=n=>{let s=Al(n,e.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:d};
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
            <td>${Ml(n)}</td>
            <td>${Ol(n)||"–"}</td>
            <td>${n.steps.length===e.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function Mx(e,t){let n=e.part.flats_mm.length;return i`<table class="paper-steps">
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
      ${e.plan.steps.map(s=>Ox(e,s,t.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function Ox(e,t,n,s){let o=ot(e,t);return i`<tr data-test="sheet-step-${t.number}">
    <th scope="row">
      <span class="number">${t.number}</span> bend ${t.bend} ${t.side??""}
      ${t.direction}${t.operation&&t.operation!=="bend"?i`<br />${t.operation}`:d}
    </th>
    <td class="picture">
      ${Lx(e.plan,t)}${t.drawing?Rr(t):"no drawing"}${Ex(t,e.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(o.gauge_x_mm).text}</b><br />R
      <b>${w(t.gauge_r_mm).text}</b>${Nx(t)}
    </td>
    <td class="figures-cell">
      ${Wx(t,o)}<br />
      <span class="small"
        >${Ax(t)}${Dx(o)?i`<br />from a first piece`:d}</span
      >
    </td>
    <td class="move">
      ${Ts(t)}
      <span class="small"
        >${t.inside_face==="up"?"Top":"Bottom"} face
        up${t.gauged_end?`, ${Mo(t,s)} to the gauge`:""}.</span
      >${wt(t,{short:!0})}
    </td>
    <td>${Px(n)}</td>
    <td class="pen">
      <span
        >${t.included_angle_deg?re(S(t.included_angle_deg)):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${tp(o.firstHit)}</span>`:d}</span
      >
    </td>
  </tr>`}function Ax(e){let t=Ra(e);return t===d?d:i`<span data-test="sheet-force">allow for ${t}</span>`}function Lx(e,t){
let n=sr(e,t);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${t.punch}${t.punch_turned?" reversed":""} over ${t.die}
      </div>`:d}function Ex({segments_mm:e,punch:t,die:n},s){return e?[["punch",t],["die",n]].map(([a,r])=>{let l=s.
find(h=>h.kind===a&&h.code===r)?.segments_mm??[],c=e[a]??[];return!c.length||c.length===l.length?d:i`<div class="pieces" data-test="own-pieces">
      ${a} ${c.map(U).join(" + ")} only
    </div>`}):d}function Nx({hits:e}){return e?i`<br /><span class="small"
          >${e.count} bumps, ${w(e.pitch_mm,{digits:2}).text} apart</span
        >`:d}function Px(e){return $c.filter(t=>t!=="note").map(t=>({level:t,letters:e.filter(n=>n.level===t).
map(({letter:n})=>n)})).filter(({letters:t})=>t.length).map(({level:t,letters:n})=>i`<div class="mark">${k(t)} <b>${n.
join(" ")}</b></div>`)}function Cx(e){let t=new Map;for(let n of $c)for(let s of e.filter(o=>Te(o)===n)){let o=`${n}\
 ${s.template} ${Nn(s)}`,a=t.get(o)??{letter:Rx(t.size),level:n,checks:[],steps:[]};a.checks.push(s),a.steps.push(
...s.steps??(s.step?[s.step]:[])),t.set(o,a)}return[...t.values()]}function Bx(e){return i`<div class="remarks" data-test="sheet-remarks">
    ${$c.map(t=>{let n=e.filter(s=>s.level===t);return n.length?i`<section data-level=${t}>
        <h3>${k(t)}</h3>
        <ul>
          ${n.map(({letter:s,checks:o,steps:a})=>i`<li>
                <b>${s}</b>
                ${a.length?i`<b>Step ${a.join(", ")}.</b> `:d}${Ix(o)}
              </li>`)}
        </ul>
      </section>`:d})}
  </div>`}function Ix(e){return`${e[0].template} ${Nn(e[0])}`.replace(/\{(\w+)\}/g,(t,n)=>[...new Set(e.map(({
numbers:s})=>re(Ft(n,s[n]))))].join(" / ")).trim()}function Wx(e,{set_angle_deg:t,punch_depth_mm:n,firstHit:s}){
if(t===null&&e.die)return i`<b>no setting</b>`;let o=s?i` <span class="small" data-test="sheet-first">first hit</span>`:
d;return i`<b>${g(S(t))}</b>${o}<br />depth <b>${w(n,{digits:2}).text}</b>`}var Dr,$c,Rx,Dx,cg=f(()=>{y();Ss();
pn();at();dc();Ie();A();$t();G();Wn();Ms();ln();or();Bt();ze();Dr=e=>g({text:U(e),unit:C()});$c=us.filter(e=>e!==
"ok");Rx=e=>String.fromCharCode(97+e%26)+(e<26?"":String(Math.floor(e/26)+1));Dx=e=>e.fromTrial&&e.set_angle_deg!==
null});function Vs(e){return Y({name:"paper",label:"Paper",value:R().paper,options:[["A4","A4"],["Letter","Letter"]],
change(t){Dt({paper:t==="Letter"?"Letter":"A4"}),e()}})}function zs(e="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${e}
  </button>`}function Fr(e,{lying:t=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${R().paper.toLowerCase()} ${t?"lying":"upright"}" data-test="sheet">
      ${e}
    </div>
  </div>`}var jr=f(()=>{y();se();J()});var dg={};ne(dg,{show:()=>Fx});async function Fx(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Le(t));let n,
s=[],o=async()=>{s=(await Xt())?.metals??s,n&&a()};function a(){e.title(`${n.title}, on paper`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${Vs(a)}${zs("Print the card")}</div>
        ${Fr(lg(n,hs(s,n.part.metal)),{about:"The card as it prints"})}`)}_e(()=>n&&a(),e.signal),document.addEventListener(
"sync",o,{signal:e.signal}),await o(),await vt(e,r=>{n=r,a(),e.ready()})}var hg=f(()=>{y();pe();fe();se();It();
cg();jr()});var ug={};ne(ug,{show:()=>jx});async function jx(e){let{code:t}=e.params;if(!me(t).whole)return we(e,Le(t));let n=R().
units,s=pg[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){e.title(`Label of ${o.title}`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${Y({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${pg.map(l=>Hx(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${oe("/labels",i`For office paper, lay them out <a href="/labels?codes=${t}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${Hr(t,s.size,n,"svg")}
          alt=""
          hidden />`)}await vt(e,l=>{o=l,r(),e.ready()})}function Hx(e,{size:t,words:n,print:s},o,a){let r=`la\
bel-${e.code}-${t}`;return i`<section class="panel label-panel" data-test="label-${t}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${Hr(e.code,t,o,"svg")}
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
        href=${Hr(e.code,t,o,"svg")}
        data-test="svg-${t}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${Hr(e.code,t,o,"png")}
        data-test="png-${t}"
        >PNG</a
      >
    </div>
  </section>`}var pg,Hr,mg=f(()=>{y();pe();se();It();J();ie();pg=[{size:"50x25",words:"50 × 25 mm, for a bin",
print:"small"},{size:"100x50",words:"100 × 50 mm, for a shelf or a door",print:"large"}];Hr=(e,t,n,s)=>`/api/\
v1/cards/${e}/label.${s}?size=${t}&units=${n}`});var fg={};ne(fg,{show:()=>Gx});async function Gx(e){e.title("Labels on a sheet"),e.render(Oe("Fetching the car\
ds…"));let t=(await zx(e.signal)).filter(b=>!b.archived);if(!t.length)return e.render(xe("No cards yet",B("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),e.ready();let n=new Set((e.query.
get("codes")??"").split(",").filter(b=>t.some(_=>_.code===b))),s="50x25",o=R().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=b=>new URLSearchParams({codes:[...n].join(","),size:s,paper:R().paper,units:o,skip:a.trim()||"0",page:String(
b)}),h=(b,_)=>`/api/v1/labels/sheet.${b}?${c(_)}`;async function p(){let b=String(c(1));if(!n.size)l={key:b,pages:[],
wrong:""};else try{let{body:_}=await M("GET",`/labels/sheet.json?${c(1)}`,{signal:e.signal});l={key:b,pages:Array.
from({length:_.pages},(T,E)=>E+1),wrong:""}}catch(_){l={key:b,pages:[],wrong:Z(_)}}b===String(c(1))&&$()}let u=b=>{
b(),$(),p()},m=b=>u(()=>n.has(b)?n.delete(b):n.add(b));function $(){let b=t.filter(_=>`${_.code} ${_.title}`.toLowerCase().
includes(r.trim().toLowerCase()));e.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${t.length}</span>
              </h2>
              ${t.length>8?L({name:"find",label:"Find",value:r,change:_=>{r=_,$()}}):d}
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${()=>u(()=>b.forEach(_=>n.add(_.code)))}>
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
                ${b.map(_=>i`<li>
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
              ${Y({name:"size",label:"Label size",value:s,options:Ux,change:_=>u(()=>s=_)})}
              ${Vs(()=>u(()=>{}))}
              ${Y({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:_=>u(()=>o=
_==="inch"?"inch":"mm")})}
              ${L({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:_=>u(()=>a=_)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${zs(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(_=>Vx(_,l.pages.length,h))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}_e($,e.signal),$(),await p(),e.ready()}function Vx(e,t,n){let s=`labels-${e}`;return i`<figure class="label-sheet ${R().
paper.toLowerCase()}">
    <img src=${n("svg",e)} alt="Sheet ${e} of ${t} with labels" data-test="sheet-${e}" />
    <figcaption class="screen-only">
      <span>Sheet ${e} of ${t}, ${R().paper}. Print at 100 %, without fitting to the page.</span>
      <div class="buttons">
        <a class="button" download="${s}.svg" href=${n("svg",e)} data-test="sheet-svg-${e}"
          >SVG</a
        >
        <a class="button" download="${s}.png" href=${n("png",e)} data-test="sheet-png-${e}"
          >PNG</a
        >
      </div>
    </figcaption>
  </figure>`}async function zx(e){try{let t=[];for(;;){let{body:n}=await M("GET",`/cards?limit=100&offset=${t.
length}`,{signal:e});if(t.push(...n.cards),t.length>=n.total||!n.cards.length)return t}}catch(t){let n=await Ut().
catch(()=>[]);if(e.aborted||!n.length)throw t;return n}}var Ux,gg=f(()=>{y();F();se();Ce();J();ie();jr();Re();
Ux=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function $g(e){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${e.metal.name}</h2>
      <p>
        ${e.press?.name??"No press entered"}${e.press?i`, ${g(he(e.press.force_kn))}`:d}.
        Checked against ratings at a bend length of ${g(w(e.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${Pn(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${C()}</span></th>
          ${e.dies.map(t=>i`<th scope="col" data-test="die-${t.code}">
                V ${U(t.v_opening_mm)}<span class="sub">${t.code}</span>
                <span class="sub"
                  >${t.rating_kn_per_m===null?"rating ?":g(Ee(t.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${e.rows.map(t=>i`<tr>
              <th scope="row">${U(t.thickness_mm)}<span class="sub">${t.gauge??""}</span></th>
              ${t.cells.map(qx)}
            </tr>`)}
      </tbody>
    </table>
    ${Yx()}
    <ul class="chart-words">
      ${e.words.map(t=>i`<li>${t}</li>`)}
    </ul>
  </article>`}function qx(e){return e.usable?i`<td
    class="cell ${e.level}"
    data-level=${e.level}
    data-die=${e.die}
    title=${e.why}>
    <span class="first"
      ><span class="force">${tt(e,"force_kn_per_m").text}</span>${e.level==="stop"?d:i`<span class="expected">${on(
e,"force_kn_per_m").text}</span>`}${e.level==="ok"?d:k(e.level,Kx(e))}</span
    >
    ${e.level==="stop"?d:i`<span class="rest"
            >${w(e.min_flange_mm).text} · R ${w(e.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${e.die} title=${e.why}>
      <span aria-hidden="true">–</span><span class="unseen">${e.why}</span>
    </td>`}function Kx({level:e,limit:t,share_percent:n}){return e==="unknown"?"rating?":`${t??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(e==="stop"?"over":"near")}function Yx(){let e=Ee(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${e}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${k("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${k("caution","die 85 %")} over 80 % of a rating</li>
    <li>${k("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var bg=f(()=>{y();at();A();$t();G();ze()});var wg={};ne(wg,{show:()=>Jx});async function Jx(e){e.title("Wall chart"),e.render(Oe("Working out the chart…"));
let t=(await ce("metals",e.signal)).items;if(!t.length)return e.render(xe("No metals yet",i`A chart needs one. ${B(
le.metals,i`<a href="/shop/metals">Metals</a>`)}`)),e.ready();let n=e.query.get("metal")??t[0].code,s=e.query.
get("bend_length")??"",o=null,a=null,{ask:r}=Nt(async(p,u)=>(await M("GET",`/chart?${l()}`,{signal:u,timeout:2e4})).
body,p=>{o=p.answer??o,a=p.error??null,h(),e.ready()},e.signal);function l(){let p=new URLSearchParams({metal:n});
return s.trim()&&p.set("bend_length_mm",te(s)),p}function c(){let p=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${p}`),r(null),h()}function h(){e.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${q({name:"metal",label:"Metal",value:n,options:t.map(({code:p,name:u})=>[p,u]),change:p=>{n=p,c()}})}
          ${L({name:"bend_length",label:"Checked at a bend length of",value:s,unit:C(),keys:"decimal",placeholder:C()===
"mm"?"1000":"39.37",change:p=>{s=p,c()}})}
          ${Vs(h)} ${zs("Print the chart")}
        </div>
        ${a?Yt(a):d}
        ${o?Fr($g(o),{lying:!0,about:"Wall chart as it prints"}):a?d:Oe("Working out the chart…")}`)}_e(h,e.
signal),r(null,{now:!0})}var _g=f(()=>{y();F();fe();se();A();bg();J();ie();jr();Re();_o()});function yg(e,{fault:t,takeOut:n}){return i`<section class="panel" data-test="panel-benches">
    <h2>Press screens <span class="soft">${e.length}</span></h2>
    ${t?i`<p class="wrong" role="alert" data-test="bench-fault">${t}</p>`:d}
    ${e.length?i`<ul class="plain-list bench-list">
            ${e.map(s=>i`<li data-test="bench-row" data-name=${s.name}>
                  <span><b>${Rt(s.name)}</b> ${Zx(s)}</span>
                  ${B("benches.remove",i`<button
                      type="button"
                      class="button"
                      data-test="take-bench-out"
                      aria-label="Take it out… ${Rt(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      Make a large screen at a press one of them: open the shop's address there with
      <a href="/bench">/bench</a> behind it.
    </p>
  </section>`}var Zx,vg=f(()=>{y();rn();pe();ie();Zx=({code:e})=>e?i`<a href="/c/${e}">${W(e)}</a>`:i`<span class="soft">empty</span>`});function kg(e){let t=e.map(({ring:o})=>et([o])),n=bc-2*Gr,s=Math.min(...t.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return e.map(({name:o,ring:a},r)=>Xx(o,a,t[r],s))}function Xx(e,t,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*Gr),c=(bc-(o-n)*r)/2-n*r,h=u=>c+u*r,p=u=>Gr+(a-u)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${bc} ${l}"
      role="img"
      aria-label="${e||"Outline"} to scale, ${Ur(o-n)} wide, ${Ur(a-s)} high"
      data-test="outline">
      ${Qx(n,o,h(0),l)}
      <path
        class="tool"
        d=${Ae(t)}
        transform="translate(${c} ${Gr+a*r}) scale(${r})" />
      ${e0(h(n),h(o),l-16,Ur(o-n))}
      ${t0(p(s),p(a),h(o)+16,Ur(a-s))}
    </svg>
    ${e?i`<figcaption>${e}</figcaption>`:d}
  </figure>`}function Qx(e,t,n,s){return e>0||t<0?d:x`<path class="centre" d="M${n} 6V${s-6}"/>`}function e0(e,t,n,s){
return x`<path class="dimension" d="M${e} ${n}H${t}M${e} ${n-5}v10M${t} ${n-5}v10"/>
    <text class="measure" x=${(e+t)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function t0(e,t,n,s){
let o=(e+t)/2;return x`<path class="dimension" d="M${n} ${e}V${t}M${n-5} ${e}h10M${n-5} ${t}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function Vr(e,t){return e?.length?i`<svg class="small-outline" viewBox=${yh(
t,2)} aria-hidden="true">
    <path class="tool" d=${Ae(e)} />
  </svg>`:d}function zr(e){let t=e.filter(n=>n?.length);return t.length?et(t):[0,0,1,1]}var bc,Gr,Ur,qr=f(()=>{
y();A();nn();at();bc=360,Gr=50;Ur=e=>g({text:U(e),unit:C()})});function xg(e,t){let n=zr(t.map(s=>s.outline_mm));return i`<ul class="rack">
    ${t.map(s=>i`<li>
          <a
            href="/shop/${e}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${Vr(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:d}</span
            >
          </a>
        </li>`)}
  </ul>`}var Sg=f(()=>{y();qr()});var Tg={};ne(Tg,{show:()=>n0});async function n0(e){e.title("Shop");let[{press:t,kept:n},s,o,a,r,l]=await Promise.
all([ba(e.signal),ce("punches",e.signal),ce("dies",e.signal),ce("holders",e.signal),ce("metals",e.signal),Un(e.
signal).catch(()=>null)]),c={benches:l,fault:""};async function h(u){let m=Gn(u.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A display that still shows it asks which press screen it is.`)){c.fault=
"";try{await Ip(u.name)}catch($){c.fault=Z($)}c.benches=await Un(e.signal).catch(()=>c.benches),p()}}let p=()=>e.
render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${B(le.press,"Changing anything needs the shop's server.")}
              </p>`:d}
        <div class="shop-grid">
          ${o0(t)} ${wc("punches",s.items)} ${wc("dies",o.items)}
          ${wc("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${oe("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(s0)}
            </ul>
          </section>
          ${c.benches?yg(c.benches,{...c,takeOut:h}):d} ${a0()}
          ${oe("/crew",i`<section class="panel" data-test="panel-crew">
              <h2><a href="/crew">Crew</a></h2>
              <p>Phones and screens that may see this shop.</p>
              <a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>
            </section>`)}
        </div>`);p(),e.ready()}function o0(e){return e?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${e.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${g(he(e.force_kn))}</dd>
      </div>
      <div>
        <dt>Bed</dt>
        <dd>${g(w(e.bed_length_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Open height</dt>
        <dd>${g(w(e.open_height_mm,{digits:0}))}</dd>
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
      ${B(le.press,i`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`}function wc(e,t){let n=t.filter(o=>o.rating_kn_per_m===null).length,s=t.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${e}">
    <h2><a href="/shop/${e}">${Zt[e].title}</a> <span class="soft">${t.length}</span></h2>
    ${t.length?xg(e,t):i`<p>None yet. ${B(le[e],i`<a href="/shop/${e}/+">Add the first</a>`)}</p>`}
    ${n?i`<p>${k("unknown",`${n} without a rating`)}</p>`:d}
    ${s?i`<p>${k("caution",`${s} worn or damaged`)}</p>`:d}
  </section>`}function a0(){let e=oe("/copies",i`<a class="button wide" href="/copies" data-test="to-copies">Backups and export</a>`);
return oe("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${e===d?"":", and away"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${e}
      </div>
      ${e===d?d:i`<p class="hint">
              Whether there is a good backup of the shop; all of it in one open file, out and in.
            </p>`}
    </section>`)}var s0,Mg=f(()=>{y();F();rn();fe();A();vg();G();ie();Sg();s0=({code:e,name:t})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(e)}">${t}</a>
    ${oe("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(e)}" data-test="learned-${e}"
        >Measured springback</a
      >`)}
  </li>`});function Ag(e,{took:t,show:n,signal:s}){let o={file:"",busy:!1,choices:{...Og},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(p){return a=p,Object.assign(o,{file:p.name,choices:{...Og},layers:[]}),
h()}function c(p,u){return o.choices={...o.choices,[p]:u},o.choices.origin==="point"&&!o.choices.point?n():h()}
async function h(){if(!a)return;let p=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>r0)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:u}=await Go(
`/outlines/dxf?${i0(o.choices,e)}`,a,"image/vnd.dxf",s);if(p!==r)return;Object.assign(o,{answer:u,layers:u.layers}),
t(u)}catch(u){if(p!==r||s.aborted)return;if(o.wrong=Z(u),u instanceof O&&u.outline){let{code:m,layers:$}=u.outline;
Object.assign(o,{fault:u.outline,code:m,layers:$.length?$:o.layers})}}o.busy=!1,n()}return{state:o,choose:l,set:c}}
function i0(e,t){let n=Object.entries(e).filter(([s,o])=>o&&(s!=="point"||e.origin==="point"));return new URLSearchParams(
[["kind",t],...n])}var Og,r0,Lg=f(()=>{F();Og={units:"",layer:"",origin:"rule",point:"",turn_deg:"0",mirror:"n\
o"},r0=2e6});async function qs(e,t){let n=await e.read(t),s={kept:n,draft:e.toDraft(n??e.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>e.fromDraft(s.draft,s.kept??{}),a=()=>e.draw(s),r=()=>e.boxes.filter(({name:b,needed:_})=>_&&b in
s.draft&&!s.draft[b].trim());function l(b,_){s.draft={...s.draft,[b]:_},delete s.wrong[b],pt(()=>"Leave withou\
t saving what you typed?"),e.preview?.(o()),a()}async function c(b){let _=b?Object.fromEntries(r().map(({name:E})=>[
E,["This is needed."]])):{},T=Object.keys(_).length===0;if(Object.assign(s,{busy:T,wrong:_,others:[],clash:null}),
a(),!T)return rt(_);try{await e.write(b),pt(null),e.done(b);return}catch(E){await h(E)}s.busy=!1,a(),rt(s.wrong)}
async function h(b){if(b instanceof O&&b.status===412){let _=s.kept;s.kept=await e.read(t);let T=s.kept?e.toDraft(
s.kept):{},E=gh(_,s.kept)?"others changed":s.kept?"this changed":"taken out";s.clash={how:E,differences:E==="t\
his changed"?yr(s.draft,T,e.boxes):[]}}else if(b instanceof O&&Object.keys(b.errors).length){let{byName:_,others:T}=zh(
b.errors,e.boxes.map(({name:E})=>E));Object.assign(s,{wrong:_,others:T})}else s.others=[`Not saved: ${Z(b)} Wh\
at you typed is still here.`]}function p(){Object.assign(s,{draft:e.toDraft(s.kept??e.blank),clash:null}),pt(null),
e.preview?.(o()),a()}let u=new Map;function m(b,_){let T=u.get(_)??Ag(b,{signal:t,show:a,took:E=>$(_,E)});return u.
set(_,T),T}function $(b,{points_mm:_,height_mm:T}){b==="points_mm"&&s.draft.height_mm===""&&l("height_mm",z(T)),
l(b,Uh(_))}return e.preview?.(o()),{reader:m,state:s,change:l,takeTheirs:p,show:a,save:()=>c(o()),takeOut:()=>c(
null)}}var Kr=f(()=>{F();fe();Et();Lg();Be();A();Ws();J()});function Jr(e,t,n){let s=[],{ask:o}=Nt(async(a,r)=>{let{body:l}=await M("POST","/outline",{body:{kind:e,...d0(
e,a)},signal:r});return l},({answer:a,error:r})=>{a&&(s=Eg(a));let l=r instanceof O&&r.outline?.lines_mm.some(
c=>c.length>1)?r.outline:null;t({parts:s,checks:c0(a),wrong:r?h0(r):[],fault:l})},n);return a=>{l0(e,a)&&o(a)}}
function l0(e,t){let n={punch:"punches",die:"dies",holder:"holders",press:"press"}[e];return sn(n).filter(({type:s,
blank:o,when:a})=>["length","number"].includes(s)&&o===void 0&&(!a||a(t))).every(({name:s})=>t[s]!==void 0)&&(t.
shape!=="multi_v"||t.openings.every(s=>s.v_opening_mm&&s.angle_deg&&s.shoulder_radius_mm))}function Eg({outline_mm:e,
ram:t,bed:n}){return[{name:"",ring:e},{name:"Ram",ring:t},{name:"Bed",ring:n}].filter(({ring:s})=>s?.length)}function d0(e,t){
return e==="press"?On(t):{...On(t),code:t.code||"new"}}function h0(e){if(!(e instanceof O))return["The drawing\
 waits: the shop's server does not answer."];let t=[...new Set(Object.values(e.errors).flat())];return t.length?
t:[e.message]}var Yr,c0,_c=f(()=>{F();fe();Et();_o();Yr=e=>({parts:Eg({...e,...e?.outlines_mm}),checks:[],wrong:[],
fault:null});c0=e=>(e?.checks??[]).filter(({code:t})=>!t.endsWith("rating-unknown"))});function Zr({state:e,change:t},n){let s=n.taken(e.draft.code)?["This code is in use already."]:e.wrong.code;return L(
{name:"code",label:"Code",value:e.draft.code,change:o=>t("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function Xr({state:e,takeOut:t},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return ge(le[n.kind])?i`<div role="alert">
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
      ${n.isNew?d:i`<button
              type="button"
              class="button"
              data-test="take-out"
              ?disabled=${e.busy}
              @click=${()=>confirm(o)&&t()}>
              Take it out…
            </button>`}
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var Ks,
Qr=f(()=>{y();fe();Me();J();Ks=(e,t)=>ge(e)?t:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${t}</fieldset>`});function Pg(e,t){if(!e?.systematic)return d;let n=e.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
    <h2>The gauge’s zero</h2>
    <p>
      <b
        >${e.flanges} measured flanges agree: the gauge stands
        ${g(w(Math.abs(e.zero_mm),{digits:2}))} too far ${n}.</b
      >
      Set its zero by as much at the press. Nothing here changes until you say that it is set; flanges
      measured before that no longer count.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="gauge-zero-set" @click=${t}>The zero is set</button>
    </div>
  </section>`}var Ng,Cg=f(()=>{y();F();A();Ng=e=>M("GET","/press/gauge",{signal:e}).then(({body:t})=>t,()=>null)});function Wg(e,{metals:t,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=e,h=m=>$=>{r[m]=$,delete l[m]},
p=(m,$)=>({name:m,label:$,value:r[m]??"",wrong:l[m],change:h(m)}),u=(m,$,b)=>i`<div class="broad">${q({...p(m,
$),options:[["","Choose"],...b]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one is, the more bed and ram give way.
    </p>
    <form
      novalidate
      @submit=${m=>{m.preventDefault(),u0(e,o)}}>
      <div class="fields">
        ${u("metal","Metal",t)} ${u("die","Die",n)} ${u("punch","Punch",s)}
        ${Ig.map(([m,$,b])=>L({...p(m,$),unit:C(),keys:"decimal",hint:b}))}
        ${Bg.map(([m,$])=>L({...p(m,$),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${e.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${e.busy}>Work it out</button>
      </div>
    </form>
    ${c?p0(c,a):d}
  </details>`}function p0(e,t){let n=s=>g(w(s,{digits:2}));return i`<div data-test="strips-found" role="status">
    <p>
      <b>About ${n(e.deflection_mm)}</b> in the middle at full force over the whole bed, between
      ${n(e.deflection_mm_low)} and ${n(e.deflection_mm_high)}: the middle strip is
      ${g(S(e.middle_open_deg))} more open.
    </p>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="strips-take"
        @click=${()=>t(z(e.deflection_mm))}>
        Put it in the box
      </button>
    </div>
  </div>`}async function u0(e,t){if(!e.busy){Object.assign(e,{busy:!0,wrong:{},general:"",found:null}),t();try{
let{body:n}=await M("POST","/press/strip-test",{body:m0(e.typed)});e.found=n}catch(n){e.wrong=n instanceof O?n.
errors:{},e.general=Z(n)}e.busy=!1,t()}}function m0(e){let t={metal:e.metal,die:e.die,punch:e.punch};for(let[n]of Ig)
t[n]=te(e[n]??"");for(let[n]of Bg)t[n]=Wo(e[n]??"");return t}var Rg,Bg,Ig,Dg=f(()=>{y();F();un();A();J();Rg=()=>({
typed:{},wrong:{},general:"",busy:!1,found:null}),Bg=[["left_deg","Left"],["middle_deg","Middle"],["right_deg",
"Right"]],Ig=[["thickness_mm","Thickness of the strips",""],["strip_length_mm","Length of the bend","All three\
 alike, at most a quarter of the bed."],["end_mm","Outer strips from the bed’s end","To the middle of the st\
rip, left and right alike."]]});function ei({code:e,lines_mm:t,edges:n,marks_mm:s}){let o=et([...t,s]),a=En(o,yc-2*Fg,vc-2*Fg),[r,l]=a([o[2],o[1]]),
c=[(yc-r)/2,(vc-l)/2],h=m=>{let[$,b]=a(m);return[$+c[0],-(b+c[1])]},p=!["open","branching"].includes(e),u=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${yc} ${vc}"
    role="img"
    aria-label="The outline as far as it was understood, ${u}"
    data-test="outline-fault">
    ${t.map(m=>x`<path class="fault-line" d=${fo((p?[...m,m[0]]:m).map(h))}/>`)}
    ${n.map(m=>f0(t[0],m,h))} ${s.map(m=>g0(h(m)))}
  </svg>`}function f0(e,t,n){let[s,o]=[e[t-1],e[t%e.length]].map(n);return x`<path class="fault-edge" d=${fo([
s,o])}/>
    ${jg(s,t)}${jg(o,t%e.length+1)}`}var yc,vc,Fg,jg,g0,kc=f(()=>{y();nn();yc=360,vc=300,Fg=30;jg=([e,t],n)=>x`<text class="fault-number" x=${e} y=${-t-
9} text-anchor="middle" font-size="19">${n}</text>`,g0=([e,t])=>x`<g class="fault-mark" data-test="fault-mark"><circle cx=${e} cy=${-t} r="10"/>
    <path d="M${e-14} ${-t}h28M${e} ${-t-14}v28"/></g>`});function Hg(e,{state:t,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:h,layers:p}=t,u=`dx\
f-${e}`,m=($,b,_)=>q({name:`${u}-${$}`,label:b,value:h[$],options:_,change:T=>s($,T)});return i`<div class="dxf broad" data-test=${u}>
    <label class="button dxf-file" for="${u}-file"
      >${o?"Read another DXF file":"Read a DXF file"}
      <input
        id="${u}-file"
        data-test="${u}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${({target:$})=>{$.files?.[0]&&n($.files[0]),$.value=""}} />
    </label>
    ${o?i`<div role="status">
              ${a?i`<p class="hint">Reading ${o}…</p>`:d}
              ${r?i`<p data-test="${u}-read">
                      <b>${o}</b>, read in ${r.units}: ${xc(r.width_mm)} wide,
                      ${xc(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${xc(r.within_mm)}. ${r.rule}${y0(r)}
                    </p>`:d}
              ${l?i`<p class="wrong" data-test="${u}-wrong">${l}</p>`:d}
            </div>
            ${c?.lines_mm.length?ei(c):d}
            <div class="fields">
              ${m("units","Drawn in",$0)}
              ${p.length>1||h.layer?m("layer","Layer",[["","all"],...p.map($=>[$,$])]):d}
              ${m("origin","0, 0 is",b0)}
              ${h.origin==="point"?L({name:`${u}-point`,label:"Point number",value:h.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:$=>s("point",$)}):d}
              ${m("turn_deg","Turned",w0)} ${m("mirror","Mirrored",_0)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function y0({left_out:e}){return e.length?` Left out: ${e.map(({kind:t,count:n})=>`${n} ${t}`).join(
", ")}.`:""}var $0,b0,w0,_0,xc,Ug=f(()=>{y();kc();A();J();$0=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],b0=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
w0=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],_0=[["no","no"],
["yes","front to back"]];xc=e=>g(w(e,{digits:2}))});function Gg({draft:e,change:t,wrong:n}){let s=e.openings??"",o=Rn(s);return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((r,l)=>v0(r,l,{rows:o,wrong:n,up:e.up||"1",set:c=>t("openings",Rh(s,l,c)),raise:()=>t("up",String(
l+1)),drop:()=>a(l)}))}
    ${(n.openings??[]).map(r=>i`<p class="wrong" data-test="wrong-openings">${r}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>t("openings",Bh(s))}>
      Add a V
    </button>
  </div>`;function a(r){let l=Number(e.up||"1");t("openings",Ih(s,r)),(l>r+1||l>=o.length)&&t("up",String(Math.
max(l-1,1)))}}function v0(e,t,{rows:n,wrong:s,up:o,set:a,raise:r,drop:l}){let[c,h]=[t+1,`openings.${t}`],p=b=>s[`${h}\
.${b}`]??[],u=Object.keys(bo).map(b=>`${h}.${b}`),m=Object.entries(s).filter(([b])=>(b===h||b.startsWith(`${h}\
.`))&&!u.includes(b)).flatMap(([,b])=>b),$=(b,_,T,E="")=>L({name:`opening-${c}-${bo[b]}`,label:_,unit:T,placeholder:E,
value:e[bo[b]],keys:b==="code"?"text":"decimal",change:N=>a({[bo[b]]:N}),wrong:p(b)});return i`<fieldset class="opening" data-test="opening-${c}">
    <legend>V ${c}</legend>
    <div class="opening-head">
      <label class="tick"
        ><input
          type="radio"
          name="up"
          value=${c}
          data-test="up-${c}"
          .checked=${Se(o===String(c))}
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
            </button>`:d}
    </div>
    <div class="fields three">
      ${$("v_opening_mm","V opening",C())} ${$("angle_deg","Angle","°")}
      ${$("shoulder_radius_mm","Shoulder radius",C())}
      ${q({name:`opening-${c}-face`,label:"Face",value:e.face||"top",options:Ch,change:b=>a({face:b}),wrong:p(
"face")})}
      ${$("centre_mm","Off the middle",C(),"0")}
      ${$("rating_kn_per_m","Rating",fn().unit,"as the block")}
      ${$("code","Code","","automatic")}
    </div>
    ${m.map(b=>i`<p class="wrong">${b}</p>`)}
  </fieldset>`}var Vg=f(()=>{y();Jt();zi();A();J()});function ti({kind:e,draft:t,change:n,wrong:s,preview:o,options:a={},first:r=d,reader:l}){return i`<div class="workbench">
    ${Ma[e].map((c,h)=>i`<section class="panel ${c.part}">
          <h2>${c.title}</h2>
          ${h===0?r:d} ${c.part==="outline"?k0(o):d}
          <div class="fields">
            ${c.fields.filter(({when:p,hidden:u})=>!u&&(!p||p(t))).map(p=>p.type==="openings"?Gg({draft:t,change:n,
wrong:s}):x0(p,t[p.name]??"",u=>n(p.name,u),{wrong:s[p.name],options:a[p.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function k0(e){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${e?.fault?ei(e.fault):e?.parts.length?i`<div class="outlines">${kg(e.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${e?.wrong.map(t=>i`<p class="wrong" data-test="outline-wrong">${t}</p>`)}
    ${e?We(e.checks,{quiet:!0}):d}
  </div>`}function x0(e,t,n,{wrong:s=[],options:o=e.options,reader:a}){let{name:r,label:l,type:c}=e;if(c==="pi\
ck"||c==="yes"){let m=e.blank?[["",e.blank],...o??[]]:o??[];return zg(e,q({name:r,label:l,value:t,options:m,change:n,
wrong:s}))}if(c==="points"||c==="note"){let m=e.dxf?Hg(r,a(e.dxf,r)):d;return S0(e,t,i`${m}${T0(e,t,n,s)}`)}let h=qg(
e),p=["number","length","force","rating"].includes(c)?"decimal":"text",u=L({name:r,label:l,value:t,change:n,wrong:s,
unit:h,keys:p,hint:M0(e,t),placeholder:e.blank??""});return c==="rating"?i`<div class="broad">
      ${u}${t.trim()?d:k("unknown",`${l} unknown`)}
    </div>`:zg(e,u)}function S0({folded:e,label:t},n,s){return e?i`<details class="broad" ?open=${!!n}>
        <summary>${t}</summary>
        ${s}
      </details>`:s}function qg({type:e,unit:t=""}){return e==="force"?jt().unit:e==="rating"?fn().unit:["leng\
th","lengths","points"].includes(e)?C():t}function T0(e,t,n,s){let{name:o,label:a,hint:r,type:l}=e;return Dn({
name:o,label:a,value:t,change:n,wrong:s,hint:r,unit:qg(e),lines:l==="points"?7:2})}function M0({type:e,hint:t="",
counted_mm:n},s){let o=[t];return n!==void 0&&o.push(`Empty: ${re(Ft("counted_mm",n))} is counted with (common\
 practice).`),e==="rating"&&!s.trim()&&o.push(Fh),(e==="force"||e==="rating")&&o.push(O0(e,s)),e==="lengths"&&
o.push(A0(s)),o.filter(Boolean).join(" ")}function O0(e,t){if(R().units==="inch")return"Short tons, of 2000 lb\
; metric ones with a t.";let n=Xs(t,{unit:""}).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];if(!n)return"";let s=Number(
n)*Hc;return`In metric tons: ${g(e==="force"?he(s):Ee(s))}.`}function A0(e){let t=e.split(/[,;\n]/).filter(n=>n.
trim()).length;return t?t===1?"1 piece.":`${t} pieces.`:""}var zg,Sc=f(()=>{y();kc();qr();se();Zi();A();G();Ug();
J();Vg();zg=({broad:e,type:t},n)=>e||t==="lengths"?i`<div class="broad">${n}</div>`:n});function Kg(e,t){return i`<section class="panel" id="zero" data-test="zero">
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
  </section>`}var Yg=f(()=>{y()});var Jg={};ne(Jg,{show:()=>L0});async function L0(e){let t=ge(le.press),s=(await ce("holders",e.signal)).items.
map(({code:T,name:E})=>[T,`${T}, ${E}`]),o=async T=>(await ce(T,e.signal)).items.flatMap(ul).map(({code:E,name:N})=>[
E,N?`${E}, ${N}`:E]),a=Rg(),[r,l,c,h]=t?await Promise.all([Ng(e.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],p=null,u={before:null,after:null},m=null,$=await qs({async read(T){let E=await(t?wa:ba)(T);return p=
E.etag,u.before=E.press?.depth_zeroed_at??null,E.press??void 0},async write(T){let E=await fh(T,p);u.after=E.depth_zeroed_at},
blank:{},boxes:sn("press"),toDraft:T=>Aa("press",T),fromDraft:(T,E)=>({...La("press",T,E),depth_zeroed_at:E?.depth_zeroed_at??
null,gauge_zeroed_at:E?.gauge_zeroed_at??null}),preview:t?Jr("press",T=>{m=T,$.show()},e.signal):void 0,draw:()=>$&&
_(),done(){ee(u.after===u.before?"The press is saved.":"The press is saved. Its error is measured anew."),$e("\
/shop")}},e.signal);e.title("The press"),t||(m=Yr($.state.kept));let b=(...T)=>{let E=new Date().toISOString();
for(let N of T)$.state.kept[N]=E;$.save()};function _(){let{state:T,change:E,save:N}=$;e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${T.kept?.name??"The press"}</h1>
        ${t?i`<p>
                ${T.kept?"Take every figure from the press's own plate and manual.":"No press yet. Take every \
figure from its own plate and manual."}
                What is not on the plate may stay empty where the box says unknown.
              </p>`:d}
        ${T.clash?Is(T.clash,"press",{saveMine:N,takeTheirs:$.takeTheirs}):d}
        ${Pg(r,()=>b("gauge_zeroed_at"))}
        <form
          novalidate
          @submit=${v=>{v.preventDefault(),N()}}>
          ${Ks(le.press,ti({kind:"press",draft:T.draft,change:E,wrong:T.wrong,preview:m,reader:$.reader,options:{
holder:s}}))}
          <div role="alert">
            ${T.others.map(v=>i`<p class="wrong-line" data-test="not-saved">${v}</p>`)}
          </div>
          <div class="buttons">
            ${t?i`<button class="button next" data-test="save" ?disabled=${T.busy}>
                    ${T.busy?"Saving…":"Save the press"}
                  </button>`:d}
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>
        ${t&&T.kept?Wg(a,{metals:l,dies:c,punches:h},{draw:_,take:v=>E("deflection_mm",v)}):d}
        ${t&&T.kept?Kg(()=>b("depth_zeroed_at"),()=>b("depth_zeroed_at","gauge_zeroed_at")):d}`)}_(),e.ready()}
var Zg=f(()=>{y();fe();Et();Kr();lt();_c();Me();Be();Ws();Qr();Cg();jn();Dg();Sc();Yg()});function Qg(e,t,n,s){let{angles:o,wrong:a}=Do(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h}=Bn(
t),p={id:e,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h,die:n.die,punch:n.punch,...o};p.set_angle_deg=
s.set.trim()?N0(s.set,a):n.set_angle_deg;for(let[u,m]of E0)s[u].trim()&&(p[m]=te(s[u]));return s.lot.trim()&&(p.
lot=s.lot.trim()),s.note.trim()&&(p.note=s.note.trim()),R().name&&(p.by=R().name),{body:p,wrong:a}}function N0(e,t){
let{angles:n}=Do({...ni,one:e});return n.measured_deg===void 0&&(t.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var ni,E0,Xg,e$=f(()=>{Pa();un();se();A();ni={...Io,depth:"",flat:"",
leftFlange:"",rightFlange:""},E0=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_l\
eft_mm"],["rightFlange","flange_right_mm"],["radius","radius_mm"]],Xg=e=>Object.entries(e).some(([t,n])=>t!=="\
places"&&t!=="lot"&&n.trim()!=="")});function s$(e,t){let n=Math.min((t$-2*n$-34)/e,170/t),[s,o]=[e*n,t*n],[a,r]=[n$+34,24],[l,c,h]=[a+s,r+o,a+s/2],
p=g(w(e,{digits:0})),u=g(w(t,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${t$} ${Math.round(c+52)}"
    role="img"
    aria-label="A strip ${p} long and ${u} wide, bent in its middle"
    data-test="strip">
    <path class="sheet" d="M${a} ${r}H${l}V${c}H${a}Z" />
    <path class="fold" d="M${h} ${r-14}V${c+14}" />
    <path
      class="dimension"
      d="M${a} ${c+20}H${l}M${a} ${c+15}v10M${l} ${c+15}v10" />
    <text x=${h} y=${c+44} text-anchor="middle" font-size="18">${p}</text>
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
  </svg>`}var t$,n$,o$=f(()=>{y();A();t$=400,n$=30});function i$({before:e,after:t,points:n=[],size:s=1,words:o}){let a=[e.low,e.high,t.low,t.high,...n.map(p=>p.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return d;let c=xs(r,l,{from:r$,to:a$-r$,size:s,most:5}),{at:h}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${a$} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(p=>x`<path class="faint" d="M${p.at} 8V84"/>
          <text class="quiet" x=${p.at} y="104" text-anchor="middle"
            font-size=${P0}>${p.text}</text>`)}
    <path
      class="was"
      d="M${h(e.low)} 24H${h(e.high)}M${h(e.low)} 17v14M${h(e.high)} 17v14M${h(e.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${h(t.low)} 52H${h(t.high)}" data-test="band-after" />
    <path class="now-middle" d="M${h(t.nominal)} 42v20" />
    ${n.map(p=>C0(h(p.value),74,p))}
  </svg>`}function C0(e,t,{id:n,outlier:s,weight:o=1}){return s?x`<path class="trial-odd" d="M${e-6} ${t-6}l12 12M${e+
6} ${t-6}l-12 12" data-test="band-point"
        data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${e} cy=${t} r=${o<.25?3:6} data-test="band-point"
        data-id=${n}/>`}var a$,r$,P0,l$=f(()=>{y();fl();a$=340,r$=24,P0=17});function p$({before_mm:e,after_mm:t,flanges:n,strips:s}){let o=c=>g(w(c,{digits:2})),a=t.nominal-e.nominal,r=Number(
Q(a,2))===0,l=`${o(Math.abs(a))} ${a>0?"shorter":"longer"}`;return i`<p data-test="deduction">
    A bend takes <b>${o(t.nominal)}</b> (${o(t.low)} to ${o(t.high)}) off the sum of its
    flats${r?", as before":i`: the next blank is <b>${l}</b> for each such bend`}. Rests on
    ${[c$(n,"measured flange"),c$(s,"strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`}function si(e){if(!e.length)return i`<p data-test="no-figures">No figure changed.</p>`;let t=e.flatMap(
s=>s.points??[]),n=["Thin: before. Thick: now. Rings: results"];return t.some(s=>(s.weight??1)<.25)&&n.push("s\
mall ones, of other sheet or tools, count little"),t.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${e.
map(R0)}</div>
    ${t.length?i`<p class="hint">${n.join("; ")}.</p>`:d}`}function R0(e){let{what:t,before:n,after:s,trials:o,
points:a=[]}=e,r=c=>B0(e.unit,c),l=`${t[0].toUpperCase()}${t.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${t}>
    <h3>
      ${l} <small>${o===0?"no results":o===1?"1 result":`${o} results`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${d$(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${d$(s,r)}</dd>
      </div>
    </dl>
    ${i$({before:n,after:s,points:a,size:e.unit==="mm"&&C()==="in"?Ye:1,words:`${l}: before ${h$(n,r)}, now ${h$(
s,r)}, ${a.length} results drawn.`})}
  </section>`}function B0(e,t){return e==="deg"?S(t):e==="mm"?w(t,{digits:2}):{text:Q(t,3),unit:e}}var c$,d$,h$,
Tc=f(()=>{y();l$();A();c$=(e,t)=>e?`${e} ${t}${e>1?"s":""}`:"";d$=(e,t)=>i`<b>${g(t(e.nominal))}</b>
    <span class="band">${t(e.low).text} to ${t(e.high).text}</span>`,h$=({low:e,high:t},n)=>`${n(e).text} to ${g(
n(t))}`});function b$(e,{metals:t,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:h}=e,p=(m,$,b={})=>L(
{name:m,label:$,value:r[m],wrong:I(c,m),change:_=>Object.assign(r,{[m]:_}),unit:C(),next:!0,...b}),u=(m,$,b)=>q(
{name:m,label:$,value:r[m],options:b,wrong:I(c,m),change:_=>{Object.assign(r,{[m]:_}),a()}});return i`<form novalidate data-test="choose-form" @submit=${$$(
o)}>
    <p>One strip, bent and measured, turns the handbook’s figures into those of your metal and your tools.</p>
    ${g$(e)}
    <div class="test-fields">
      ${u("metal","Metal",t.map(({code:m,name:$})=>[m,$]))}
      ${p("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${p("bend_length_mm","Strip’s width, along the bend")}
      ${p("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${u("die","Die",m$(n,r.die))}
      ${u("punch","Punch",m$(s,r.punch))}
      ${L({name:"lot",label:"Lot or heat",value:l.lot,wrong:I(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${h}>
        ${h?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function m$(e,t){let n=e.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=t&&!e.some(({code:o})=>o===t)?
[[t,`${t} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function w$({bend:e},{go:t}){let n=e.
worst!=="stop"&&e.die&&e.punch,s=g(w(W0,{digits:0}));return i`${Da(e.checks)}
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
            Cut a strip <b>${g(w(e.bend_length_mm,{digits:0}))}</b> wide and about
            <b>${g(w(u$,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
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
          ${qe("Angle to set",S(e.set_angle_deg),"set-angle")}
          ${qe("Depth",w(e.punch_depth_mm,{digits:2}),"punch-depth")}
        </div>
        ${ws(e.first_hit)}
        <div class="figures">${yo("Allow for",e)}</div>
      </div>
      <div class="strip-pictures">
        ${s$(u$,e.bend_length_mm)}
        ${e.drawing?bt(e.drawing,{pose:"before",close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,
words:"The strip on the die before the bend"}):d}
      </div>
    </div>
    ${ys(e.checks)} ${an(e.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>t("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>t("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function _$(e,{go:t,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=e,c=(p,u,m,$={})=>L({name:u,
label:m,value:o[p],wrong:I(a,u),change:b=>Object.assign(o,{[p]:b}),unit:C(),next:!0,...$}),h={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${$$(n)}>
    ${g$(e)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${g(S(r.included_angle_deg))}. The angle is
      needed; the lengths and the radius improve the figures.
    </p>
    <div class="measures">
      <fieldset class="panel">
        <legend><span class="badge-word">1</span> Angle</legend>
        <div class="trial-angles ${o.places}">
          ${o.places==="one"?c("one","measured_deg","Angle measured",h):[c("left","left_deg","Left",h),c("midd\
le","middle_deg","Middle",h),c("right","right_deg","Right",h)]}
        </div>
        ${mc(o,s)}
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
      ?open=${["set_angle_deg","punch_depth_mm","note"].some(p=>I(a,p).length)}>
      <summary>Another setting, depth shown, note</summary>
      <div class="test-fields">
        ${c("set","set_angle_deg","Angle that was set",{...h,placeholder:S(r.set_angle_deg).text,hint:"Leave i\
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
  </form>`}function y$({answer:e,form:t,busy:n},s,{again:o}){if(!e)return d;let a=s.find(({code:h})=>h===t.metal)?.
name??t.metal,{teaches:r,asks:l,said:c}=e.test_bend;return i`<h2>What it changed <small>${a}</small></h2>
    <div class=${e.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${e.said.map(h=>i`<p>${ye(h)}</p>`)}
    </div>
    ${r?d:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${k("caution")} <b>Kept, but it does not count.</b> ${go(c)}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:d}
          </section>`}
    ${e.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${k("caution","Odd one out")}</h2>
            ${e.outliers.map(({said:h})=>i`<p>${go(h)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(t.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:d}
    ${si(e.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${e.cards.length?i`<ul class="rows">
              ${e.cards.map(D0)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-learned"
        >Measured springback</a
      >
    </div>`}var I0,u$,W0,f$,g$,$$,D0,v$=f(()=>{y();vo();o$();A();$t();J();fc();ko();G();Wn();Tc();cn();it();I0=
[["choose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Result"]],u$=300,W0=102,f$=e=>i`<ol class="stages" aria-label="Stages">
    ${I0.map(([t,n])=>i`<li aria-current=${t===e?"step":"false"}>${n}</li>`)}
  </ol>`,g$=({general:e})=>e?i`<p class="wrong" role="alert" data-test="wrong">${e}</p>`:d,$$=e=>t=>{t.preventDefault(),
e()};D0=({code:e,title:t,said:n})=>i`<li class="row" data-test="changed-card" data-code=${e}>
    <a href="/c/${e}">
      <span class="lead">${t||e}</span> <span class="code">${e}</span>
      <span class="more">${n.map(ye).join("; ")}</span>
    </a>
  </li>`});var k$={};ne(k$,{show:()=>j0});async function j0(e){e.title("Test bend"),e.render(Oe("Looking into the crib…"));
let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async b=>(await ce(b,e.signal)).items)),o=Ea(e.query);
o.metal||=t[0]?.code??"",o.bend_length_mm||=C()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...ni},bend:null,
answer:null,id:Ue(),wrong:{},general:"",busy:!1};pt(()=>a.stage==="measure"&&Xg(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>e.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${f$(a.stage)} ${l()}
      </article>`);function l(){let b={draw:r,go:c,choose:h,send:p,again:u};return a.stage==="bend"?w$(a,b):a.
stage==="measure"?_$(a,b):a.stage==="taught"?y$(a,t,b):b$(a,{metals:t,dies:n,punches:s},b)}function c(b){Object.
assign(a,{stage:b,wrong:{},general:""}),r(),scrollTo(0,0)}async function h(){let b=wo(o);if(b.length)return m(
Object.fromEntries(b.map(_=>[_,F0[_]])));history.replaceState(null,"",`/shop/test-bend?${Na(o)}`),await $(async()=>{
let _=await M("POST","/bend",{body:Bn(o),signal:e.signal});a.bend=_.body,c("bend")})}async function p(){let{body:b,
wrong:_}=Qg(a.id,o,a.bend,a.typed);if(Object.keys(_).length)return m(_);await $(async()=>{let T=await M("POST",
"/test-bends",{body:b,timeout:2e4});a.answer=T.body,c("taught"),H()})}function u(){Object.assign(a,{typed:{...ni,
lot:a.typed.lot,places:a.typed.places},answer:null,id:Ue()}),h()}function m(b,_=""){Object.assign(a,{wrong:b,general:_}),
r(),rt(b)}async function $(b){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await b()}catch(_){
return e.signal.aborted?void 0:(a.busy=!1,m(_ instanceof O?_.errors:{},H0(_)))}a.busy=!1,r()}}_e(r,e.signal),r(),
e.ready()}function H0(e){return e instanceof O?e.message:e instanceof j?"The shop’s server does not answer. Wh\
at you typed stays here: try again.":String(e)}var F0,x$=f(()=>{y();F();Pa();fe();Pe();Be();se();ve();e$();A();
J();Re();v$();F0={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as\
 1.98."],bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you\
 want, such as 90."]}});function S$(e){if(!e)return d;let{set_by:t,offset_mm:n,results:s,strip:o}=e;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
e.apart)}>
    <h2>
      The press <small>${t?U0[t]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?G0(n,s):d}
    ${n?oe("/shop/press",i`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`):d}
    ${e.said.map(a=>i`<p>${ye(a)}</p>`)}
    ${o?oe("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${V0(o)}>Bend this strip</a>
            </p>`):d}
  </section>`}function G0({low:e,nominal:t,high:n},s){let o=l=>w(Math.abs(l),{digits:2}),a=l=>`${g(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(t).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(t)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(e)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var U0,V0,T$=f(()=>{y();A();G();ie();U0={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};
V0=({metal:e,thickness_mm:t,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:e,thickness:`${t} mm`,die:n})}`});var M$={};ne(M$,{show:()=>z0});async function z0(e){let{metal:t}=e.params,n=`metal=${encodeURIComponent(t)}`;e.
title("Measured springback");let{items:s}=await ce("metals",e.signal),o=s.find(({code:h})=>h===t);if(!o)return e.
title("No such metal"),e.render(xe(`No metal ${t} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(`${o.name}: measured springback`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){
let[h,p]=await Promise.all([M("GET",`/learned?${n}`,{signal:e.signal}),M("GET",`/test-bends?${n}`,{signal:e.signal})]),
u=h.body,{evidence:m}=p.body;Object.assign(a,{groups:u.groups,press:u.press}),a.evidence=[...m].sort(($,b)=>$.
made_at<b.made_at?1:-1)}async function l(h,p){if(!a.busy){a.busy=h.id,c();try{let{body:u}=await M("POST",`/evi\
dence/${encodeURIComponent(h.id)}/${p}`,{body:R().name?{by:R().name}:{},timeout:2e4});await r(),ee(K0(p,u.cards)),
H()}catch(u){if(e.signal.aborted)return;if(!(u instanceof O||u instanceof j))throw u;ee(u.message)}a.busy="",c()}}
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
                  ${S$(a.press)} ${Y0(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Results</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(h=>J0(h,a.busy,l))}
                  </ul>
                </section>
              </div>`:xe("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),_e(c,e.signal),c(),e.ready()}function K0(e,t){let n=q0[e];return t.
length?`${n} ${t.length===1?"One card":`${t.length} cards`} would now plan differently: ${t.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function Y0(e){return e.length?e.map(({thickness_mm:t,v_opening_mm:n,lot:s,factor:o,deduction:a,
figures:r,said:l})=>i`<section data-test="group" data-thickness=${t} data-v=${n}>
        <h2>
          ${g(w(t,{digits:2}))} over V
          ${g(w(n))}${s?i` <small>lot ${s}</small>`:d}
        </h2>
        ${l.map(c=>i`<p class="together" data-test="together">${k("caution")} ${ye(c)}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${Q(o.nominal,2)} times</b> as much as expected
                (${Q(o.low,2)} to ${Q(o.high,2)}).
              </p>`:d}
        ${a?p$(a):d} ${si(r)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No result is in use: the figures are the metal’s own.</p>`}function J0(e,t,n){
let s=e.kind==="test bend"?"Test bend":i`First piece${e.code?i` of <a href="/c/${e.code}">${e.code}</a>`:d}`,o=[
e.set_angle_deg===null?"":`set at ${g(S(e.set_angle_deg))}`,g(w(e.thickness_mm,{digits:2})),e.die?`die ${e.die}`:
e.v_opening_mm?`V ${g(w(e.v_opening_mm))}`:"",e.lot?`lot ${e.lot}`:"",ae(e.made_at),Ot(e)];return i`<li
    class="row evidence ${e.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${e.id}
    data-forgotten=${String(e.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${g(S(e.measured_deg))}</span> ${s}
        ${e.forgotten?k("unknown","Forgotten"):e.asks?k("unknown","Does not count"):e.outlier?k("caution","Odd\
 one out"):d}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${e.note?i`<p>${e.note}</p>`:d}
      ${e.said.length?i`<p class=${e.asks?"":"more"} data-test="evidence-words">${go(e.said)}</p>`:d}
    </div>
    <div class="evidence-marks">
      ${Z0(e).map(([a,r])=>B(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${t!==""}
            @click=${()=>n(e,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function Z0({forgotten:e,asks:t}){return e?[["remember","Use it again"]]:t?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var q0,O$=f(()=>{y();F();fe();lt();se();ve();
A();G();Tc();ie();T$();Re();ze();q0={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var A$={};ne(A$,{show:()=>X0});async function X0(e){let t=ga(e.params.kind);if(!t)return e.title("Not here"),e.
render(xe("No such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready();let{one:n,title:s,many:o}=Zt[t];
e.title(s);let{items:a,kept:r}=await ce(t,e.signal),l=zr(a.map(c=>c.outline_mm??[]));e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?d:B(le[t],i`<a class="button" href="/shop/${t}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${B(le[t],"Changing anything needs the shop's server.")}
            </p>`:d}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>t==="metals"?sS(c):Q0(t,c,l))}
            </ul>`:xe(`No ${o} yet`,B(le[t],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),e.ready()}function Q0(e,t,n){return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/${e}/${encodeURIComponent(t.code)}">
      <span class="thumb">${Vr(t.outline_mm,n)}</span>
      <span class="who"><span class="lead">${t.code}</span> <span>${t.name}</span>${eS(t)}</span>
      <span class="fact"><span class="what">Place</span>${Qt(t)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${t.rating_kn_per_m===null?k("unknown"):g(Ee(t.rating_kn_per_m))}</span
      >
      ${t.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${t.segments_mm.length?i`${t.segments_mm.length}, up to
                    ${g(w(tS(t.segments_mm),{digits:0}))}`:"none"}</span
            >`:d}
      <span class="fact"><span class="what">Condition</span>${nS(t)}</span>
    </a>
  </li>`}function eS({shape:e,openings:t=[]}){return e!=="multi_v"?d:i`<span class="soft" data-test="block-vs"
    >${t.map(n=>`${n.code}: V ${g(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function nS({condition:e,condition_note:t}){if(e==="good")return k("ok","Good");let n=e==="damaged"?k("st\
op","Damaged"):e==="worn"?k("caution","Worn"):k("unknown");return i`${n}${t?i` <span class="soft">${t}</span>`:
d}`}function sS(e){let{tensile_mpa:t}=e;return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/metals/${encodeURIComponent(e.code)}">
      <span class="who"><span class="lead">${e.name}</span> <span class="soft">${e.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${t.low} to ${t.high} MPa</span>
      <span class="fact"><span class="what">Reliability</span>${t.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${e.gauge_family??"none"}</span>
    </a>
  </li>`}var tS,L$=f(()=>{y();fe();A();G();ie();Re();qr();tS=e=>Math.max(...e)});function Oc(e,t){let n=t.params.tool===Mc,s=n?void 0:t.params.tool,o={items:[],etag:null,kept:!1};return{kind:e,
isNew:n,code:s,async read(a){return o=await(ge(le[e])?$a:ce)(e,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(h=>h.code!==s),l=o.items.findIndex(h=>h.code===s),c=a?[{...a,code:s??a.code}]:[];await mh(
e,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){ee(a?`${a.name||s} is saved.`:`${s} is taken out.`),$e(`\
/shop/${e}`)},taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var Mc,E$=f(()=>{fe();lt();Me();Be();Mc="+"});async function N$(e,t){let n=await qs({...t,blank:{poisson:.3},boxes:oS,toDraft:o=>({code:String(o.code??""),...Gh(
o)}),fromDraft:o=>({...Vh(o),code:o.code.trim()}),draw:()=>n&&s()},e.signal);if(!n.state.kept&&!t.isNew)return e.
title("No such metal"),e.render(xe(`No metal ${t.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(t.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,h={})=>L({name:l,
label:c,value:o.draft[l]??"",change:p=>a(l,p),wrong:o.wrong[l],...h});e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${t.isNew?"New metal":i`${t.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${t.isNew?d:i`<div class="buttons">
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
        ${o.clash?Is(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):d}
        <form
          novalidate
          @submit=${l=>{l.preventDefault(),n.save()}}>
          ${Ks(le.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${t.isNew?Zr(n,t):d} ${r("name","Name")}
                  ${q({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:Eh,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${$s.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${Dn({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${Cn.map(l=>aS(l,n))}</div>`)}
          ${Xr(n,t,"metal")}
        </form>`)}s(),e.ready()}function aS({name:e,label:t,unit:n,needed:s},{state:o,change:a}){let r=p=>o.draft[`${e}\
.${p}`]??"",l=p=>o.wrong[`${e}.${p}`]??[],c=p=>u=>a(`${e}.${p}`,u),h=!s&&!Ac.some(([p])=>r(p).trim());return i`<fieldset class="panel figure-card" data-test="figure-${e}">
    <legend>${t}${n?i` <span class="hint">(${n})</span>`:d}</legend>
    ${(o.wrong[e]??[]).map(p=>i`<p class="wrong-line">${p}</p>`)}
    <div class="fields three">
      ${Ac.map(([p,u])=>L({name:`${e}.${p}`,label:u,value:r(p),change:c(p),wrong:l(p),keys:"decimal"}))}
    </div>
    ${h?k("unknown","Not known"):d}
    <div class="fields source-line">
      ${Dn({name:`${e}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${q({name:`${e}.standing`,label:"Reliability",value:r("standing"),options:Lh.map(p=>[p,p]),change:c("sta\
nding"),wrong:l("standing")})}
    </div>
  </fieldset>`}var Ac,oS,P$=f(()=>{y();Et();fe();Kr();Vi();Qr();Ws();G();J();ie();Re();Ac=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],oS=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...$s,...Cn.flatMap(({name:e,label:t})=>[...Ac,["source","s\
ource"],["standing","reliability"]].map(([n,s])=>({name:`${e}.${n}`,label:`${t}: ${s.toLowerCase()}`}))),...Cn]});var C$={};ne(C$,{show:()=>iS});async function iS(e){let t=ga(e.params.kind);return t?e.params.tool===Mc&&!ge(le[t])?
(e.title(`New ${Zt[t].one}`),e.render(pa(le[t])),e.ready()):t==="metals"?N$(e,Oc(t,e)):lS(e,t):(e.render(xe("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready())}async function lS(e,t){let n=Zt[t],s=Oc(
t,e),o=ge(le[t]),a=null,r=await qs({...s,blank:rS[t],boxes:[{name:"code",label:"Code"},...sn(t)],toDraft:c=>({
code:String(c.code??""),...Aa(t,c)}),fromDraft:(c,h)=>({...La(t,c,h),code:c.code.trim()}),preview:o?Jr(n.one,c=>{
a=c,r.show()},e.signal):void 0,draw:()=>r&&l()},e.signal);if(!r.state.kept&&!s.isNew)return e.title("Not in th\
e crib"),e.render(xe(`No ${n.one} ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${t}">${n.
title}</a>`)),e.ready();e.title(s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=Yr(r.state.kept));function l(){
let{state:c,change:h}=r;e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${t}">${n.title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${c.kept?.name}</span>`}
        </h1>
        ${c.clash?Is(c.clash,n.one,{saveMine:r.save,takeTheirs:r.takeTheirs}):d}
        <form
          novalidate
          @submit=${p=>{p.preventDefault(),r.save()}}>
          ${Ks(le[t],ti({kind:t,draft:c.draft,change:h,wrong:c.wrong,preview:a,reader:r.reader,first:s.isNew?Zr(
r,s):d}))}
          ${Xr(r,s,n.one)}
        </form>`)}l(),e.ready()}var rS,R$=f(()=>{y();fe();Et();Kr();E$();_c();Me();Ws();Qr();ie();Re();Sc();P$();
rS={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"unkno\
wn",up:1},holders:{shape:"block",condition:"unknown"}}});var W$={};ne(W$,{show:()=>dS});async function dS(e){e.title("Crew");let{signal:t}=e,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>e.render(pS(n,o)),o=hS(n,s,
t),[a,r,l]=await Promise.all([M("GET","/devices",{signal:t}),M("GET","/crew-options",{signal:t}),_n(t).then(({
network:h})=>h?M("GET","/join",{signal:t}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),e.ready();let c=setInterval(o.look,cS);t.addEventListener("abort",()=>clearInterval(
c))}function hS(e,t,n){let s=async a=>{e.fault="";try{await a()}catch(r){if(n.aborted)return;e.fault=ta(r)}t()};
async function o(){if(document.visibilityState!=="visible")return;let a=await M("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;e.devices=a.body.devices;let r=e.offer&&e.devices.find(l=>!e.known.has(
l.id)&&!l.revoked_at);r?Object.assign(e,{came:r,offer:null,name:""}):e.offer&&Date.parse(e.offer.expires_at)<=
Date.now()&&(e.offer=null),t()}return{look:o,draw:t,offer:()=>s(async()=>{let{body:a}=await M("POST","/pairing\
s",{body:{role:e.role,name:e.name.trim()},signal:n});Object.assign(e,{offer:a,came:null,known:new Set(e.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Remove ${a.name}? It can read nothing any more, and its cards\
 go from it when it next asks.`)&&(await M("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await M("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await M(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),e.open=a})}}function pS(e,t){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${e.fault?i`<p class="wrong" role="alert" data-test="fault">${e.fault}</p>`:d}
    ${e.joining?i`<div class="crew-grid">${mS(e,t)}${fS(e.joining)}</div>`:uS()}
    <section class="panel" data-test="devices">
      <h2>Devices in the shop</h2>
      ${gS(e,t)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${Y({name:"labels-open",label:"A device that is not paired",value:e.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>t.setOpen(n==="open")})}
    </section>`}function mS(e,t){let{offer:n,came:s}=e;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${Xe[n.role].word}${n.name?i`: <b>${n.name}</b>`:d}. Works once, until
        ${ae(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${I$(n.qr)} />
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
            ${k("ok","Paired")} <b>${s.name}</b> is in, as ${Xe[s.role].word.toLowerCase()}.
          </p>`:d}
    ${Y({name:"role",label:"As",value:e.role,options:B$,change:o=>{e.role=o,t.draw()}})}
    <p class="hint" data-test="role-does">${Xe[e.role].word}: ${Xe[e.role].does}.</p>
    ${L({name:"device-name",label:"Whose?",value:e.name,placeholder:"Ann's phone",change:o=>e.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${t.offer}>
      Show a pairing code
    </button>
  </section>`}function fS(e){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${I$(e.qr)} />
    <p>${e.shop}: ${e.https.map(t=>i`<span class="address">${t}</span> `)}</p>
    ${e.http.length?i`<p class="hint">Or type <span class="address">${e.http[0]}/join</span></p>`:d}
    ${e.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${$S(e.fingerprint)}</p>`:d}
  </section>`}function gS({devices:e},t){return e.length?i`<ul class="plain-list devices">
    ${e.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:d}
            <span class="soft"
              >${n.revoked_at?`removed ${ae(n.revoked_at)}`:`last seen ${ae(n.seen_at)}`},
              paired ${ae(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${k("stop","Removed")}</p>`:i`${q({name:`role-${n.id}`,label:`Role of ${n.name}`,
value:n.role,options:B$,change:s=>t.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>t.revoke(n)}>
                    Remove…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var cS,B$,uS,I$,$S,D$=f(()=>{y();F();yn();
G();J();ze();cS=2e3,B$=Object.entries(Xe).map(([e,{word:t}])=>[e,t]);uS=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;I$=e=>`data:image/svg+xml,${encodeURIComponent(e)}`,$S=e=>e.replace(/(.{4})(?=.)/g,"$1 ")});var oi,Lc=f(()=>{y();oi=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop; what still waits to be sent does not, so open Flangebook in the shop’s network first. Some phones ask
  each time before the camera may be used.
</p>`});var j$={};ne(j$,{show:()=>bS});async function bS(e){e.title("Pair this device"),e.render(Oe("Asking the shop…"));
let t={me:null,code:wS(),name:R().name,fault:"",asking:!1,waits:0},n=()=>e.render(_S(t,n));t.me=await _n(e.signal).
catch(()=>null),t.waits=(await Ge().catch(()=>[])).length,n(),e.ready()}function wS(){if(location.pathname!=="\
/pair"||!location.hash)return"";let e=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),e}function _S(e,t){let{me:n}=e;return n?n.role?yS(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${F$[Gt()??n.why]?i`<p data-test="why">${k("caution","Not paired")} ${F$[Gt()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
    ${e.waits?i`<p data-test="waits">
            ${e.waits===1?"1 result":`${e.waits} results`} typed here still
            ${e.waits===1?"waits":"wait"}. Pair again and
            ${e.waits===1?"it is":"they are"} sent.
          </p>`:d}
    <ol class="ways">
      <li>The owner opens <b>Shop, Crew</b> on the shop's computer or a paired phone, and shows a code.</li>
      <li>Point this phone's camera at it, or type the eight characters here.</li>
    </ol>
    <form
      class="panel"
      novalidate
      @submit=${s=>{s.preventDefault(),kS(e,t)}}>
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
          </p>`:d}
  </div>`:i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      Pairing needs it. Try again when this device is in the shop's network.
      <p>
        <button type="button" class="button next" data-test="try-again" @click=${()=>location.reload()}>
          Try again
        </button>
      </p>
    </div>`}function yS(e){let t=e.role;return e.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${k("ok",Xe[t].word)} <b>${e.name}</b>: ${Xe[t].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${oi}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${vS}>Unpair this device…</button>
    </p>
  </div>`}async function vS(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await Nd()}async function kS(e,t){Object.assign(e,{asking:!0,fault:""}),t();try{await Ed(e.
code,e.name.trim()),H(),$e(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
e,{asking:!1,fault:ta(n)}),t()}}var F$,H$=f(()=>{y();yn();Pe();Be();se();ve();G();J();Lc();Re();F$={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function U$({show:e,done:t,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,h){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),e();try{if(o.size>SS)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");let p=await Go(`/import?${h}`,
o,"application/json",n,xS);s.told=p.body}catch(p){if(n.aborted)return;s.wrong=TS(p)}s.busy="",e(),s.told?.imported&&
t()}}return{state:s,choose:a,take:r}}function TS(e){if(!(e instanceof O))return[Z(e)];let t=Object.entries(e.errors).
slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[e.message,...t]}var xS,SS,G$=f(()=>{F();xS=3e5,SS=6e7});function q$({state:e,choose:t,take:n}){let{name:s,busy:o,told:a,wrong:r}=e;return i`<section class="panel" data-test="panel-import">
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
      ${o?i`<p>${o==="looking"?`Looking through ${s}…`:`Bringing ${s} in…`}</p>`:d}
      ${r.length?OS(s,r):d}
      ${a?a.imported?ES(a):AS(s,a,n):d}
    </div>
  </section>`}function AS(e,t,n){return i`<div data-test="import-preview">
    <p><b>${e}</b>, exported ${ae(t.exported_at)} by ${t.made_by}</p>
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">In the file</th>
          <th scope="col">In the shop now</th>
        </tr>
      </thead>
      <tbody>
        ${MS.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${z$(t.holds[s])}</td>
              <td>${z$(t.here[s])}</td>
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
              @click=${()=>LS(t)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var MS,V$,OS,z$,LS,ES,K$=f(()=>{y();G();ze();MS=[["press","Press"],["tools","Tools"],["metals","Meta\
ls"],["cards","Cards"],["revisions","Revisions"],["trials","Results"],["test_bends","Test bends"]],V$=8;OS=(e,t)=>i`<div data-test="import-wrong">
    <p>${k("stop","Not brought in")} ${e}</p>
    <ul>
      ${t.slice(0,V$).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${t.length>V$?i`<p>There are more.</p>`:d}
    <p>Nothing in the shop was changed.</p>
  </div>`;z$=e=>e===""?"none":e,LS=({here:e,holds:t})=>confirm(`Replace the shop? Its ${e.cards} cards and ${e.
trials} results go, the file's ${t.cards} cards and ${t.trials} results come. A backup is made first.`),ES=({holds:e,
kept_as:t})=>i`<div data-test="import-done">
    <p>${k("ok","Brought in")} ${e.cards} cards, ${e.trials} results.</p>
    ${t?i`<p>The shop that was there is kept as ${t}.</p>`:d}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var Y$={};ne(Y$,{show:()=>PS});async function PS(e){e.title("Backups and export");let t=U$({show:a,done:s,signal:e.
signal}),n=await o();async function s(){H(),n=await o(),a()}async function o(){let{body:r}=await M("GET","/cop\
ies",{signal:e.signal});return r}function a(){e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Backups and export</h1>
        <div class="settings-grid">
          ${CS(n)}
          <div class="stack">${IS()}${q$(t)}</div>
        </div>`)}a(),e.ready()}function CS({standing:e,last_good_at:t,trouble:n,folder:s,copies:o}){return i`<section class="panel" data-test="panel-copies">
    <h2>Backups</h2>
    <p data-test="standing">${RS(e)}</p>
    ${t?i`<p class="lead-line" data-test="last-good">Last good backup: ${ae(t)}</p>`:d}
    ${n?i`<p class="wrong" data-test="trouble">${ae(n.at)}: ${n.words}</p>`:d}
    <p>
      The server makes one each night, looks it through, and keeps seven days and four weeks. Put one on
      another disk, too: a backup beside the shop burns with it.
    </p>
    ${o.length?i`<table data-test="copies">
            <thead>
              <tr>
                <th scope="col">Made</th>
                <th scope="col">How</th>
                <th scope="col">Size</th>
              </tr>
            </thead>
            <tbody>
              ${o.map(a=>i`<tr>
                    <td>${ae(a.at)}</td>
                    <td>${NS[a.kind]}</td>
                    <td>${BS(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:d}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> restores one.
    </p>
  </section>`}function RS(e){return e==="ok"?k("ok","There is a good backup"):e==="late"?k("caution","The last\
 backup is over two days old"):e==="trouble"?k("stop","The last backup could not be made"):k("unknown","There \
is no backup yet")}function IS(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and results, as open JSON. Bring it in again here, or
      read it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var NS,BS,J$=f(()=>{y();F();G$();ve();G();K$();ze();NS={night:"automatic","by-hand":"by hand",replaced:"\
before it was replaced"};BS=e=>`${(e/1e6).toFixed(1)} MB`});async function Z$(e){let{code:t,part:n,title:s,note:o,created_by:a}=e,r={code:t,part:{...n,title:s},note:o,by:a},
{body:l}=await M("POST","/cards",{body:r,timeout:2e4}),c=uo(await dt(l),[]);await en(c,ca(as(e,["archived","se\
ttings"]),c),{reason:"Restored from a device"}),await Sd(e),await ea(t)}var X$=f(()=>{F();is();tn();Ce()});function Q$(e){return e.length?i`<section class="panel" data-test="lost">
    <h2>Not in the shop any more</h2>
    <p>
      The shop was restored from an earlier backup and does not know these cards. This device still has
      them.${B("cards.create",d,i` <span data-test="owners"
          >The owner can restore them from here, once this is an owner's device.</span
        >`)}
    </p>
    <ul class="waiting-list">
      ${e.map(t=>i`<li data-test="lost-${t.code}">
            <p><b>${t.title}</b> ${W(t.code)}</p>
            <div class="buttons">
              ${B("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>WS(t)}>
                  Restore it
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>DS(t)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:d}async function WS(e){try{await Z$(e),await H()}catch(t){ee(Z(t))}}async function DS(e){confirm(
`Throw away the card ${W(e.code)}, ${e.title}? This device may have the only copy.`)&&(await ea(e.code),await cs())}
var eb=f(()=>{y();F();pe();lt();X$();Ce();ve();ie()});var sb={};ne(sb,{show:()=>FS});async function FS(e){e.title("Settings");let t={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([Ut().catch(()=>[]),Ge().catch(()=>[]),Qo().catch(()=>[])]);t=
{...t,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await M("GET","/cards?limit=1",{signal:e.signal,
timeout:4e3}).catch(()=>null);t={...t,total:a?.body?.total??null},o()}function o(){e.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${HS(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${US(o)}
          </section>
          ${jS()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${GS(t.entries)}
          </section>
          ${Q$(t.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${qS(t)} ${oi}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:e.signal}),await n(),e.ready(),await s()}function jS(){
let e=ts();return!e||e==="owner"?d:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${Xe[e].word}</b>: ${Xe[e].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function HS(e){let{units:t,inches:n}=R(),s=o=>{Dt(o),e()};return i`${Y({name:"units",label:"Unit\
s",value:t,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${t==="inch"?Y({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):d}
  ${Y({name:"paper",label:"Paper",value:R().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${t==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:d}`}function US(e){let{theme:t,name:n}=R();
return i`${Y({name:"theme",label:"Theme",value:t,options:[["system","As the device"],["day","Day"],["shop","Sh\
op, dark"]],change:s=>{Dt({theme:s==="shop"||s==="day"?s:"system"}),e()}})}
  ${L({name:"name",label:"Your name",value:n,change:s=>Dt({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function GS(e){return e.length?i`<ul class="waiting-list">
      ${e.map(t=>i`<li data-test="waits-${t.id}">
            <p>
              <b>${nb(t)}</b> on <a href="/c/${t.code}">${W(t.code)}</a>,
              ${ae(t.queued_at)} by this device’s clock
              ${t.body.note?i`<br /><span class="soft">${t.body.note}</span>`:d}
            </p>
            ${t.refused?i`<p data-test="refused">
                      ${k("caution","Refused")} ${t.missing?`${Bo(t)}.`:""}
                      ${t.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>VS(t)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>zS(t)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${Bo(t)}. It is sent when the shop's server
                    ${t.late?"takes it":"answers"}.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>H()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every result, note and edit typed here is saved in the shop.
    </p>`}function nb({kind:e,body:t}){if(e==="trial")return`${Wt(t)}, step ${t.step}`;if(e==="note")return"No\
te";let n=Object.keys(t).filter(s=>s in tb).map(s=>tb[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was resolved"}async function VS(e){await gd(e.id),await H()}async function zS(e){confirm(`Throw away ${nb(e)} \
on ${W(e.code)}? It cannot be brought back.`)&&(await Jo(e.id),await cs())}function qS({cards:e,total:t}){let{
reached:n,at:s}=Qe(),o=t!==null&&e>=t,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${e}${t===null?d:` of ${t}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${s?ae(s):"not since this page was opened"}</dd>
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
    ${n===!1?i`<p>${k("caution","Not connected now")}</p>`:d}
    <button type="button" class="button" data-test="check-now" @click=${()=>H()}>Look again</button>`}var tb,ob=f(
()=>{y();F();yn();pe();Pe();Me();se();Ce();ve();G();J();Lc();Fs();eb();un();ze();tb={title:"title",note:"note",
archived:"in use or archived",settings:"settings"}});yn();Ri();Be();var ab={home:()=>Promise.resolve().then(()=>(Ah(),Oh)),bend:()=>Promise.resolve().then(()=>(Np(),Ep)),bench:()=>Promise.resolve().then(()=>(Lu(),Au)),
part:()=>Promise.resolve().then(()=>(Ym(),Km)),scan:()=>Promise.resolve().then(()=>($f(),gf)),card:()=>Promise.resolve().then(()=>(Ef(),Lf)),
step:()=>Promise.resolve().then(()=>(Rf(),Cf)),trial:()=>Promise.resolve().then(()=>(Yf(),Kf)),history:()=>Promise.resolve().then(()=>(sg(),ng)),
note:()=>Promise.resolve().then(()=>(ag(),og)),settle:()=>Promise.resolve().then(()=>(ig(),rg)),print:()=>Promise.resolve().then(()=>(hg(),dg)),
label:()=>Promise.resolve().then(()=>(mg(),ug)),labels:()=>Promise.resolve().then(()=>(gg(),fg)),chart:()=>Promise.resolve().then(()=>(_g(),wg)),
shop:()=>Promise.resolve().then(()=>(Mg(),Tg)),press:()=>Promise.resolve().then(()=>(Zg(),Jg)),"test-bend":()=>Promise.resolve().then(()=>(x$(),k$)),
learned:()=>Promise.resolve().then(()=>(O$(),M$)),tools:()=>Promise.resolve().then(()=>(L$(),A$)),tool:()=>Promise.resolve().then(()=>(R$(),C$)),
crew:()=>Promise.resolve().then(()=>(D$(),W$)),pair:()=>Promise.resolve().then(()=>(H$(),j$)),copies:()=>Promise.resolve().then(()=>(J$(),Y$)),
settings:()=>Promise.resolve().then(()=>(ob(),sb))};se();ve();lt();async function ib(){if("serviceWorker"in navigator)try{let e=await navigator.serviceWorker.register("/sw.\
js");e.waiting&&rb(e.waiting),e.addEventListener("updatefound",()=>{let t=e.installing;t?.addEventListener("st\
atechange",()=>{t.state==="installed"&&navigator.serviceWorker.controller&&rb(t)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(e){console.
warn("The app could not be kept on this device:",e)}}function rb(e){ee("A newer Flangebook is here. It opens w\
hen you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),e.postMessage("take over")}})}Js();_e(()=>Js());document.addEventListener("sync",()=>Kt());document.addEventListener("held",()=>Kt());document.
addEventListener("storage",e=>{Kt(),!e.detail.silent&&(document.documentElement.dataset.ready==="failed"&&Tt(),
H())});document.addEventListener("turned-away",()=>{Kt(),document.documentElement.dataset.screen!=="pair"&&Tt()});
document.addEventListener("rights",()=>{Gt()===null&&document.documentElement.dataset.screen!=="pair"&&hh()});
Pd();ph(ab).finally(()=>{ah(),ib()});
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
