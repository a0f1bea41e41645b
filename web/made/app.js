var gb=Object.defineProperty;var f=(e,t,n)=>()=>{if(n)throw n[0];try{return e&&(t=e(e=0)),t}catch(s){throw n=[s],s}};var ne=(e,t)=>{for(var n in t)gb(e,n,{get:t[n],enumerable:!0})};function so(e){let t=e.split("/").filter(Boolean);t[0]?.toLowerCase()==="c"&&(t[0]="c");for(let n of jc){let s=$b(
n.path.split("/").filter(Boolean),t);if(s)return{route:n,params:s}}}function $b(e,t){if(e.length!==t.length)return;
let n={};for(let[s,o]of e.entries()){if(!o.startsWith(":")){if(o!==t[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(
t[s])}catch{return}}return n}var jc,Hc,ui=f(()=>{jc=[{name:"home",path:"/"},{name:"bend",path:"/bend",needs:"b\
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
sted"},{name:"settings",path:"/settings"}],Hc=e=>jc.find(t=>t.name===e)});function bb(){try{let e=JSON.parse(localStorage.getItem(Gc)??"null");return e?.refused?e:Uc}catch{return Uc}}function Et(e){
let t=so(e.split("?")[0])?.route.needs;return!t||ge(t)}function qc({role:e,refused:t={}}){let n=JSON.stringify(
{role:e,refused:t});if(n===JSON.stringify(is))return!1;is={role:e,refused:t};try{localStorage.setItem(Gc,n)}catch{}
return!0}function zc(e){e&&e!==is.role&&document.dispatchEvent(new CustomEvent("other-role"))}var Gc,Uc,is,ls,
ge,Vc,Me=f(()=>{ui();Gc="flangebook.rights",Uc={role:"owner",refused:{}},is=bb();ls=()=>is.role,ge=e=>!Object.
hasOwn(is.refused,e);Vc=e=>is.refused[e]??"owner"});function wb(){try{return{...Kc,...JSON.parse(localStorage.getItem(Yc)??"{}")}}catch{return{...Kc}}}function B(){
return yn}function qt(e){yn={...yn,...e};try{localStorage.setItem(Yc,JSON.stringify(yn))}catch{}oo();for(let t of hi)
t(yn)}function ye(e,t){hi.add(e),t?.addEventListener("abort",()=>hi.delete(e))}function oo(){let e=Jc.matches?
"shop":"day";document.documentElement.dataset.theme=yn.theme==="system"?e:yn.theme}var Yc,Kc,hi,yn,Jc,se=f(()=>{
Yc="flangebook.settings",Kc={units:"mm",inches:"decimal",theme:"system",name:"",paper:"A4"},hi=new Set,yn=wb();
Jc=matchMedia("(prefers-color-scheme: dark)");Jc.addEventListener("change",oo)});function ee(e,t){let n=e.toFixed(t);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(e,t={}){
return e==null?{text:"–",unit:""}:Ge()?B().inches==="fraction"?{text:yb(e/Xe),unit:"in"}:{text:ee(e/Xe,(t.digits??
1)+2),unit:"in"}:{text:ee(e,t.digits??1),unit:"mm"}}function yb(e){let t=Math.round(Math.abs(e)*64),n=t%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(t/64),a=e<0&&t>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function pe(e,{up:t=!1}={}){if(e==null)return{text:"–",unit:""};let n=Ge()?e/Ko:e,s=Math.abs(
n)<10?1:0;return{text:ee(t?Qc(n,s):n,s),unit:Ge()?"tons":"kN"}}function Ne(e,{up:t=!1}={}){if(e==null)return{text:"\
–",unit:""};let n=Ge()?e/Ko*Zc:e,s=Math.abs(n)<20?1:0;return{text:ee(t?Qc(n,s):n,s),unit:Ge()?"tons/ft":"kN/\
m"}}function Qc(e,t){let n=10**t;return Math.ceil(e*n-1e-9)/n}function S(e,t=1){return e==null?{text:"–",unit:""}:
{text:ee(e,t),unit:"°"}}function ao(e){if(e==null)return{text:"–",unit:""};let t=Ge()?e/_b:e;return{text:ee(
t,t<10?2:1),unit:Ge()?"lb":"kg"}}function zt(e,t){if(/_(low|high)$/.test(e))return zt(e.replace(/_(low|high)$/,
""),t);if(e.endsWith("_kn_per_m"))return Ne(t);if(e.endsWith("_mm_s")){let s=w(t,{digits:0});return{text:s.text,
unit:`${s.unit}/s`}}if(e.endsWith("_mm"))return w(t,{digits:Math.abs(t)<10?2:1});if(e.endsWith("_kn"))return pe(
t);if(e.endsWith("_deg"))return S(t);if(e.endsWith("_kg"))return ao(t);if(e.endsWith("_percent"))return{text:ee(
t,0),unit:"%"};let n=Math.abs(t)<10?100:Math.abs(t)<100?10:1;return{text:String(Math.round(t*n)/n),unit:""}}function $(e){
return e.unit==="°"?`${e.text}°`:`${e.text} ${e.unit}`.trim()}function ie({text:e,unit:t}){return $({text:t===
"in"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,""),unit:t})}function Ve(e,t){return e.replace(/\{(\w+)\}/g,
(n,s)=>s in t?ie(zt(s,t[s])):n)}function Kt(){return Ge()?{unit:"tons",size:Ko}:{unit:"kN",size:1}}function vn(){
return Ge()?{unit:"tons/ft",size:Ko/Zc}:{unit:"kN/m",size:1}}function mi(e,{size:t}){return e==null?"":String(
t===1?e:Number((e/t).toFixed(4)))}function ro(e,{unit:t}){let n=Yo(e);return ed.test(n)?`${n} ${t}`.replace(" \
tons"," short tons"):n.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i,(s,o,a="")=>{let r=a?a.includes("ft"):Ge();
return`${o}${r?"short tons":"t"}${a}`})}function C(){return Ge()?"in":"mm"}function te(e,t=C()){let n=Yo(e);return ed.
test(n)||t==="in"&&nd.test(n)?`${n} ${t}`:n}function Yo(e){let t=e.trim();return td.test(t)?t:t.replace(/^([+-]?\d+),(\d+)(?![\d.,])/,
"$1.$2")}function sd(e,t=C()){let n=e.trim(),[,s,o,a]=td.exec(n)??[];return s?[String(+`${s}.${o}`),`${s}${o}`].
map(l=>a?`${l} ${a}`:l):t==="mm"&&nd.test(n)?[`${n} in`]:[]}function od(e){let[,t,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.
exec(e??"")??[];return t?Number(t)*(n==="in"?Xe:1):null}function z(e){if(e==null)return"";let t=Ge()?e/Xe:e;return String(
Number(t.toFixed(Ge()?4:3)))}var Xe,Ko,Xc,_b,Zc,Ge,ed,td,nd,A=f(()=>{se();Xe=25.4,Ko=8.896443230521,Xc=9.80665,
_b=.45359237,Zc=.3048,Ge=()=>B().units==="inch";ed=/^[+-]?(\d+\.?\d*|\.\d+)$/,td=/^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/,
nd=/^(\d+[\s-]+)?\d+\s*\/\s*\d+$/});async function M(e,t,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return ad(e,t,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function Jo(e,t,n,s,o=2e4){
return ad("POST",e,t,{type:n,signal:s,timeout:o})}async function ad(e,t,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let d=AbortSignal.
timeout(l),u=performance.now(),h;try{h=await fetch(`/api/v1${t}`,{method:e,headers:c,body:n,signal:r?AbortSignal.
any([r,d]):d,cache:"no-store"})}catch(b){throw r?.aborted?b:new H}if(zc(h.headers.get("Flangebook-Role")),!h.ok&&
h.status!==304)throw await fi(h,u);let m=vb.includes(h.status)?null:await kb(h,r);return{status:h.status,body:m,
etag:h.headers.get("ETag"),at:Tb(h)}}async function kb(e,t){try{return await e.json()}catch(n){throw t?.aborted?
n:new H}}async function fi(e,t=1/0){let n=await e.json().catch(()=>null);if(!n?.status)throw new H;let s=new O(
n);return xb(s,t),s}function xb({status:e,errors:t},n){e===401&&t.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:t.pairing[0],asked:n}})),e===403&&t.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function rd(e,t,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${e}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await fi(c);for await(let d of Sb(c.body,l)){let u=JSON.
parse(d);if(u.problem)throw new O(u.problem);if(!u.progress)return u;s(u.progress)}throw new H}catch(c){throw n.
aborted||c instanceof O?c:new H}finally{clearTimeout(r)}}async function*Sb(e,t){let n=e.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;t();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function id(e,t,n){let s;try{let a=await fetch(`/a\
pi/v1${e}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await fi(a);s=await a.blob()}catch(a){throw a instanceof O?a:new H}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var O,H,K,vb,Tb,F=f(()=>{Me();A();O=class extends Error{constructor(t){let n=t.said?Ve(t.said.template,
t.said.numbers):"";if(super(n||t.detail||t.title),this.status=t.status,this.title=t.title,this.errors=t.errors??
{},n)for(let s of Object.keys(this.errors))this.errors[s]=[n];this.outline=t.outline??null}},H=class extends Error{constructor(){
super("The shop's server does not answer.")}},K=e=>e instanceof Error?e.message:String(e);vb=[204,304];Tb=e=>new Date(
e.headers.get("Date")??Date.now()).toISOString()});function Mb(){return ld||(ld=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function Ob(){return cd||
(cd=["advance","continue","continuePrimaryKey"].map(e=>IDBCursor.prototype[e]))}function Ab(e){let t=new Promise(
(n,s)=>{let o=()=>{e.removeEventListener("success",a),e.removeEventListener("error",r)},a=()=>{n(kn(e.result)),
o()},r=()=>{s(e.error),o()};e.addEventListener("success",a),e.addEventListener("error",r)});return Xo.set(t,e),
t}function Lb(e){if(wi.has(e))return;let t=new Promise((n,s)=>{let o=()=>{e.removeEventListener("complete",a),
e.removeEventListener("error",r),e.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(e.error||new DOMException(
"AbortError","AbortError")),o()};e.addEventListener("complete",a),e.addEventListener("error",r),e.addEventListener(
"abort",r)});wi.set(e,t)}function hd(e){_i=e(_i)}function Eb(e){return Ob().includes(e)?function(...t){return e.
apply(yi(this),t),kn(this.request)}:function(...t){return kn(e.apply(yi(this),t))}}function Nb(e){return typeof e==
"function"?Eb(e):(e instanceof IDBTransaction&&Lb(e),bi(e,Mb())?new Proxy(e,_i):e)}function kn(e){if(e instanceof
IDBRequest)return Ab(e);if(gi.has(e))return gi.get(e);let t=Nb(e);return Object.is(t,e)||(gi.set(e,t),Xo.set(t,
e)),t}function md(e,t,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(e,t),l=kn(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(kn(r.result),c.oldVersion,c.newVersion,kn(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",d=>o(d.oldVersion,d.newVersion,d))}).catch(()=>{}),l}function dd(e,t){if(!(e instanceof IDBDatabase&&
!(t in e)&&typeof t=="string"))return;if($i[t])return $i[t];let n=t.replace(/FromIndex$/,""),s=t!==n,o=Cb.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||Pb.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),d=c.store;return s&&(d=d.index(l.shift())),(await Promise.all([d[n](...l),
o&&c.done]))[0]};return $i[t]=a}async function*Ib(...e){let t=this;if(t instanceof IDBCursor||(t=await t.openCursor(
...e)),!t)return;t=t;let n=new Proxy(t,Rb);for(fd.set(n,t),Xo.set(n,yi(t));t;)yield n,t=await(vi.get(n)||t.continue()),
vi.delete(n)}function ud(e,t){return t===Symbol.asyncIterator&&bi(e,[IDBIndex,IDBObjectStore,IDBCursor])||t===
"iterate"&&bi(e,[IDBIndex,IDBObjectStore])}var bi,ld,cd,wi,gi,Xo,_i,yi,Pb,Cb,$i,Bb,pd,vi,fd,Rb,gd=f(()=>{bi=(e,t)=>t.
some(n=>e instanceof n);wi=new WeakMap,gi=new WeakMap,Xo=new WeakMap;_i={get(e,t,n){if(e instanceof IDBTransaction){
if(t==="done")return wi.get(e);if(t==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return kn(e[t])},set(e,t,n){return e[t]=n,!0},has(e,t){return e instanceof IDBTransaction&&(t==="done"||t==="s\
tore")?!0:t in e}};yi=e=>Xo.get(e);Pb=["get","getKey","getAll","getAllKeys","count"],Cb=["put","add","delete",
"clear"],$i={};hd(e=>({...e,get:(t,n,s)=>dd(t,n)||e.get(t,n,s),has:(t,n)=>!!dd(t,n)||e.has(t,n)}));Bb=["advanc\
e","continue","continuePrimaryKey"],pd={},vi=new WeakMap,fd=new WeakMap,Rb={get(e,t){if(!Bb.includes(t))return e[t];
let n=pd[t];return n||(n=pd[t]=function(...s){vi.set(this,fd.get(this)[t](...s))}),n}};hd(e=>({...e,get(t,n,s){
return ud(t,n)?Ib:e.get(t,n,s)},has(t,n){return ud(t,n)||e.has(t,n)}}))});function ki(){return cs??=md("flangebook",Wb,{upgrade:(e,t,n,s)=>Fb(e,t,s),blocking:Db,terminated:xi}).catch(e=>{
throw cs=void 0,e}),cs}function xi(){cs=void 0}async function Db(){(await cs)?.close(),cs=void 0}async function Fb(e,t,n){
t<1&&(e.createObjectStore("cards",{keyPath:"code"}),e.createObjectStore("list",{keyPath:"code"}),e.createObjectStore(
"meta"),e.createObjectStore("outbox",{keyPath:"id"})),t<2&&(e.createObjectStore("sent",{keyPath:"id"}),e.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),t===1&&await jb(n))}async function jb(e){
let t=e.objectStore("outbox"),s=(await t.getAll()).sort((a,r)=>a.queued_at<r.queued_at?-1:1),o=0;for(let{trial:a,
...r}of s)t.put({...r,kind:"trial",body:a,number:++o});e.objectStore("meta").put(o,"number"),e.objectStore("me\
ta").delete("cursor")}function Hb(e){return e instanceof DOMException?e.name==="QuotaExceededError"?"This devi\
ce is full: free some room on it.":"This browser lets nothing be kept here, as private windows do.":e instanceof
Error?e.message:String(e)}var Wb,cs,Zo,Si=f(()=>{gd();Wb=2;Zo=class extends Error{constructor(t){super(Hb(t))}}});async function ds(e,t,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${e}`,{signal:AbortSignal.timeout(t)},o)}catch(a){if(s)throw a;return n()}}var Qo=f(()=>{});function Qe(e,t){return _d(bd,n=>wd(e,"readonly",{},t,n))}function Pe(e,t,{patience:n=bd,durability:s="relaxed"}={}){
return _d(n,o=>ds("writer",n/2,()=>wd(e,"readwrite",{durability:s},t,o)))}async function wd(e,t,n,s,o){let a=await Vb(
e,t,n);!o.now&&t==="readwrite"&&(a.abort(),await a.done),o.transaction=a,ea.add(a),a.done.catch(()=>{}).finally(
()=>ea.delete(a));try{let r=await s(Gb(a));return t==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw Mi(
a),a.error??r}}async function Vb(e,t,n){try{return(await ki()).transaction(e,t,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return xi(),(await ki()).transaction(e,t,n)}}function Mi(e){try{e.abort()}catch{}}
async function _d(e,t){let n={now:!0},s=t(n);s.then(()=>yd(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new Ze),xn?Ub:e)});try{return await Promise.race([s,a])}catch(r){throw r instanceof Ze&&qb(n),r}finally{
clearTimeout(o)}}function qb(e){e.now=!1,e.transaction?.mode==="readwrite"&&Mi(e.transaction),yd(!0)}function yd(e){
e!==xn&&(xn=e,document.documentElement.dataset.storage=xn?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:xn}})))}var bd,Ub,Ze,ea,xn,Ti,io,Gb,$d,Yt=f(()=>{Si();Qo();bd=1e3,Ub=100,Ze=class extends Error{constructor(){
super("This device's storage does not answer.")}},ea=new Set,xn=!1,Ti=!1,io=()=>xn;Gb=e=>({store:$d(e.objectStore(
e.objectStoreNames[0])),objectStore:t=>$d(e.objectStore(t))}),$d=e=>new Proxy(e,{get:(t,n)=>typeof e[n]=="func\
tion"?(...s)=>{let o=e[n](...s);return o?.catch?.(()=>{}),o}:e[n]});addEventListener("pagehide",()=>{Ti||=ea.size>
0;for(let e of ea)Mi(e)});addEventListener("pageshow",e=>{e.persisted&&Ti&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:xn}})),Ti=!1})});function qe(){if(crypto.randomUUID)return crypto.randomUUID();let e=crypto.getRandomValues(new Uint8Array(16));
return e[6]=e[6]&15|64,e[8]=e[8]&63|128,[...e].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function kd(e){try{return await Pe(["outbox","meta"],t=>Yb(t,e),vd)}catch(t){throw new Zo(
t)}}async function Yb(e,t){let[n,s]=[e.objectStore("outbox"),e.objectStore("meta")],o=(await n.getAll()).sort(
Oi).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...t,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function xd(){return Pe("meta",async({store:e})=>{let t=(await e.get(
"number")??0)+1;return e.put(t,"number"),t})}async function ze(){return(await Qe("outbox",({store:e})=>e.getAll())).
sort(Oi)}async function Sn(e){return(await ze()).filter(t=>t.code===e)}async function lo(e){return Qe("outbox",
({store:t})=>t.get(e))}async function ta(e){return Qe("sent",({store:t})=>t.get(e))}async function Tn(e,t){await Pe(
"outbox",async({store:n})=>{let s=await n.get(e);s&&n.put({...s,...t})},vd)}async function na(e){let t=await lo(
e);await Pe("outbox",({store:n})=>n.delete(e)),t?.after&&await sa(e,t.after)}async function sa(e,t,n=()=>!0){for(let s of await ze())
s.after===e&&n(s)&&await Tn(s.id,{after:t})}async function co(e,t,n=!1){let{again:s,refused:o,late:a,missing:r,
parked:l,...c}=e;try{await Pe(["outbox","sent"],d=>{d.objectStore("sent").put({...c,proposed:n,sent_at:e.sent_at??
t}),d.objectStore("outbox").delete(e.id)})}catch{await Pe("outbox",({store:d})=>d.delete(e.id))}}async function Td(e){
let t=Date.parse(e)-zb*Kb;await Pe("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at??
"")<t&&n.delete(s.id)})}async function Md(e){let[t,n]=[e.objectStore("outbox"),e.objectStore("sent")],s=(await n.
getAll()).sort(Oi),o=await t.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...d}=r;a.has(
r.id)||t.put({...d,parked:c,again:!0,number:l-s.length})}),n.clear()}var zb,Kb,vd,Oi,Sd,Ce=f(()=>{Si();Yt();zb=
90,Kb=864e5,vd={durability:"strict"};Oi=(e,t)=>e.number-t.number;Sd=e=>Tn(e,{refused:void 0})});async function it(e){return Qe("cards",({store:t})=>t.get(e))}async function Jt(){return(await Qe("list",({store:t})=>t.
getAll())).sort((t,n)=>t.updated_at<n.updated_at?1:-1)}async function ft(e){return Pe(["cards","list"],async t=>{
let n=await t.objectStore("cards").get(e.code);return n&&Xb(e,n)?n:(Od(t,e),e)})}function Od(e,t){e.objectStore(
"cards").put(t),e.objectStore("list").put(Zb(t))}function Zb(e){let{code:t,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:d,trials_total:u,proposals:h}=e,{metal:m,thickness_mm:b}=d,g=h?.length??0;
return{code:t,title:n,note:s,metal:m,thickness_mm:b,bends:d.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:u,archived:c,settle:g}}async function Ad(){return Qe("list",({store:e})=>e.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function Ld(){let e=["cards","list","meta","sent","lost"];await Pe(e,t=>{for(let n of e)
t.objectStore(n).clear()})}async function oa(){return Qe("meta",({store:e})=>e.get("shop"))}async function Ed(){
return Qe("meta",({store:e})=>e.get("cursor"))}async function Nd(e){let t=e.reset||await Qb()?["outbox","sent",
"lost"]:[];await Pe(["cards","list","meta",...t],async n=>{e.reset&&(await ew(n),await Md(n));let s=new Set(t.
length?await n.objectStore("lost").getAllKeys():[]);for(let a of e.cards)Od(n,a),s.has(a.code)&&await tw(n,a);
let o=n.objectStore("meta");e.shop&&o.put(e.shop,"shop"),o.put(e.cursor,"cursor"),o.put(!!e.more,"more")},{patience:Jb})}
async function ew(e){let[t,n]=[e.objectStore("cards"),e.objectStore("lost")];for(let s of await t.getAll())n.put(
s);t.clear(),e.objectStore("list").clear()}async function tw(e,t){let n=await e.objectStore("lost").get(t.code);
e.objectStore("lost").delete(t.code);let s=new Set(t.trials.map(r=>r.id)),o=new Set(await e.objectStore("outbo\
x").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>e.objectStore("outbox").put(
Pd(t.code,r,l-a.length)))}function Pd(e,{number:t,received_at:n,correction:s,device:o,...a},r){return{id:a.id,
kind:"trial",code:e,body:a,number:r,queued_at:n,again:!0}}async function Cd(e){await Pe("outbox",({store:t})=>{
e.trials.forEach((n,s)=>{t.put({...Pd(e.code,n,s-e.trials.length),missing:!0})})})}async function aa(){return Qe(
["meta","lost"],async e=>await e.objectStore("meta").get("more")?[]:e.objectStore("lost").getAll())}async function ra(e){
await Pe("lost",({store:t})=>t.delete(e))}var Jb,Xb,Qb,Be=f(()=>{Ce();Yt();Jb=2e4;Xb=(e,t)=>e.revision<t.revision||
e.revision===t.revision&&(e.trials_total<t.trials_total||e.proposals_total<t.proposals_total);Qb=async()=>await Qe(
"lost",({store:e})=>e.count())>0});function Wd(e){return po!==null&&e!=="pair"&&!(Rd?.labels_open&&nw.includes(e))}async function Mn(e){Ai+=1;try{
let{body:t}=await M("GET","/me",{signal:e,timeout:4e3});return Rd=t,qc(t)&&document.dispatchEvent(new CustomEvent(
"rights")),t}finally{Ai-=1}}async function Dd(e){po!==e&&(po=e,await Promise.all([Mn().catch(()=>null),Ld().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function Fd(e,t){let{body:n}=await M(
"POST","/pair",{body:{code:e,name:t}});return B().name||qt({name:n.name}),po=null,Id=performance.now(),await Mn(),
n}async function jd(){await M("POST","/leave",{}),await Dd("unknown")}function Hd(){document.addEventListener(
"not-paired",e=>{let{why:t,asked:n}=e.detail;n>Id&&Dd(t)}),document.addEventListener("other-role",Bd),ls()!=="\
owner"&&Bd()}function Bd(){Ai||Mn().catch(()=>null)}var et,nw,Rd,po,Id,Ai,Xt,ia,On=f(()=>{F();Me();Be();se();et=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Press\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},nw=["\
card","step"],Rd=null,po=null,Id=-1/0,Ai=0,Xt=()=>po;ia=e=>K(e)});function Zd(e,t){if(!Ci(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Gd!==
void 0?Gd.createHTML(t):t}function Nn(e,t,n=e,s){if(t===gt)return t;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=mo(t)?
void 0:t._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(e),o._$AT(e,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(t=Nn(e,o._$AS(e,t.values),o,s)),t}var Ei,Ud,la,Gd,Ni,
Nt,Pi,sw,En,ho,mo,Ci,Jd,Li,uo,Vd,qd,An,zd,Kd,Xd,Bi,i,x,I1,gt,p,Yd,Ln,Qd,fo,ca,ps,Pn,da,pa,ua,ha,ep,ow,Zt,y=f(()=>{
Ei=globalThis,Ud=e=>e,la=Ei.trustedTypes,Gd=la?la.createPolicy("lit-html",{createHTML:e=>e}):void 0,Ni="$lit$",
Nt=`lit$${Math.random().toFixed(9).slice(2)}$`,Pi="?"+Nt,sw=`<${Pi}>`,En=document,ho=()=>En.createComment(""),
mo=e=>e===null||typeof e!="object"&&typeof e!="function",Ci=Array.isArray,Jd=e=>Ci(e)||typeof e?.[Symbol.iterator]==
"function",Li=`[ 	
\f\r]`,uo=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Vd=/-->/g,qd=/>/g,An=RegExp(`>|${Li}(?:([^\\s"'\
>=/]+)(${Li}*=${Li}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),zd=/'/g,Kd=/"/g,Xd=/^(?:script|style|textarea|title)$/i,Bi=e=>(t,...n)=>({_$litType$:e,
strings:t,values:n}),i=Bi(1),x=Bi(2),I1=Bi(3),gt=Symbol.for("lit-noChange"),p=Symbol.for("lit-nothing"),Yd=new WeakMap,
Ln=En.createTreeWalker(En,129);Qd=(e,t)=>{let n=e.length-1,s=[],o,a=t===2?"<svg>":t===3?"<math>":"",r=uo;for(let l=0;l<
n;l++){let c=e[l],d,u,h=-1,m=0;for(;m<c.length&&(r.lastIndex=m,u=r.exec(c),u!==null);)m=r.lastIndex,r===uo?u[1]===
"!--"?r=Vd:u[1]!==void 0?r=qd:u[2]!==void 0?(Xd.test(u[2])&&(o=RegExp("</"+u[2],"g")),r=An):u[3]!==void 0&&(r=
An):r===An?u[0]===">"?(r=o??uo,h=-1):u[1]===void 0?h=-2:(h=r.lastIndex-u[2].length,d=u[1],r=u[3]===void 0?An:u[3]===
'"'?Kd:zd):r===Kd||r===zd?r=An:r===Vd||r===qd?r=uo:(r=An,o=void 0);let b=r===An&&e[l+1].startsWith("/>")?" ":"";
a+=r===uo?c+sw:h>=0?(s.push(d),c.slice(0,h)+Ni+c.slice(h)+Nt+b):c+Nt+(h===-2?l:b)}return[Zd(e,a+(e[n]||"<?>")+
(t===2?"</svg>":t===3?"</math>":"")),s]},fo=class e{constructor({strings:t,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=t.length-1,c=this.parts,[d,u]=Qd(t,n);if(this.el=e.createElement(d,s),Ln.currentNode=this.el.content,
n===2||n===3){let h=this.el.content.firstChild;h.replaceWith(...h.childNodes)}for(;(o=Ln.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let h of o.getAttributeNames())if(h.endsWith(Ni)){let m=u[r++],
b=o.getAttribute(h).split(Nt),g=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:g[2],strings:b,ctor:g[1]===
"."?da:g[1]==="?"?pa:g[1]==="@"?ua:Pn}),o.removeAttribute(h)}else h.startsWith(Nt)&&(c.push({type:6,index:a}),
o.removeAttribute(h));if(Xd.test(o.tagName)){let h=o.textContent.split(Nt),m=h.length-1;if(m>0){o.textContent=
la?la.emptyScript:"";for(let b=0;b<m;b++)o.append(h[b],ho()),Ln.nextNode(),c.push({type:2,index:++a});o.append(
h[m],ho())}}}else if(o.nodeType===8)if(o.data===Pi)c.push({type:2,index:a});else{let h=-1;for(;(h=o.data.indexOf(
Nt,h+1))!==-1;)c.push({type:7,index:a}),h+=Nt.length-1}a++}}static createElement(t,n){let s=En.createElement("\
template");return s.innerHTML=t,s}};ca=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:s}=this.
_$AD,o=(t?.creationScope??En).importNode(n,!0);Ln.currentNode=o;let a=Ln.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let d;c.type===2?d=new ps(a,a.nextSibling,this,t):c.type===1?d=new c.ctor(a,c.name,c.strings,this,
t):c.type===6&&(d=new ha(a,this,t)),this._$AV.push(d),c=s[++l]}r!==c?.index&&(a=Ln.nextNode(),r++)}return Ln.currentNode=
En,o}p(t){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(t,s,n),n+=s.strings.length-2):
s._$AI(t[n])),n++}},ps=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,s,o){this.type=2,this.
_$AH=p,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Nn(this,t,n),mo(t)?t===p||t==null||t===""?(this.
_$AH!==p&&this._$AR(),this._$AH=p):t!==this._$AH&&t!==gt&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==
void 0?this.T(t):Jd(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this.
_$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==p&&mo(this._$AH)?this._$AA.nextSibling.data=t:this.
T(En.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:s}=t,o=typeof s=="number"?this._$AC(t):(s.el===
void 0&&(s.el=fo.createElement(Zd(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new ca(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(t){let n=Yd.get(t.strings);return n===void 0&&Yd.
set(t.strings,n=new fo(t)),n}k(t){Ci(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of t)
o===n.length?n.push(s=new e(this.O(ho()),this.O(ho()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){
let s=Ud(t).nextSibling;Ud(t).remove(),t=s}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},
Pn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,s,o,a){this.
type=1,this._$AH=p,this._$AN=void 0,this.element=t,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=p}_$AI(t,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)t=Nn(this,t,n,0),r=!mo(t)||t!==this._$AH&&t!==gt,r&&(this._$AH=t);else{let l=t,c,d;
for(t=a[0],c=0;c<a.length-1;c++)d=Nn(this,l[s+c],n,c),d===gt&&(d=this._$AH[c]),r||=!mo(d)||d!==this._$AH[c],d===
p?t=p:t!==p&&(t+=(d??"")+a[c+1]),this._$AH[c]=d}r&&!o&&this.j(t)}j(t){t===p?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,t??"")}},da=class extends Pn{constructor(){super(...arguments),this.
type=3}j(t){this.element[this.name]=t===p?void 0:t}},pa=class extends Pn{constructor(){super(...arguments),this.
type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==p)}},ua=class extends Pn{constructor(t,n,s,o,a){super(
t,n,s,o,a),this.type=5}_$AI(t,n=this){if((t=Nn(this,t,n,0)??p)===gt)return;let s=this._$AH,o=t===p&&s!==p||t.capture!==
s.capture||t.once!==s.once||t.passive!==s.passive,a=t!==p&&(s===p||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},ha=class{constructor(t,n,s){
this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(t){
Nn(this,t)}},ep={M:Ni,P:Nt,A:Pi,C:1,L:Qd,R:ca,D:Jd,V:Nn,I:ps,H:Pn,N:pa,U:ua,B:da,F:ha},ow=Ei.litHtmlPolyfillSupport;
ow?.(fo,ps),(Ei.litHtmlVersions??=[]).push("3.3.3");Zt=(e,t,n)=>{let s=n?.renderBefore??t,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new ps(t.insertBefore(ho(),a),a,void 0,n??{})}return o._$AI(
e),o}});function us(e,t=sp){return Object.fromEntries(t.filter(n=>e[n]!==void 0).map(n=>[n,e[n]]))}function tp(e){return Array.
isArray(e)?[...e].sort((t,n)=>t.step-n.step).map(({step:t,set_angle_deg:n,punch_depth_mm:s})=>[t,n??null,s??null]):
e??null}function hs(e,t,n){let s=[];for(let[l,c]of aw){let[d,u]=[e[l],t[l]];d!==void 0&&!ma(d,n[l])&&s.push({name:l,
label:c,shop:n[l],yours:d,before:u})}if(!e.settings)return s;let[o,a,r]=[e.settings,t.settings??[],n.settings].
map(op);for(let l of new Set([...o.keys(),...a.keys()])){let[c,d,u]=[o.get(l),a.get(l),r.get(l)];np(c,d)||np(c,
u)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,shop:u,yours:c,before:d})}return s}function ap(e,t,n){
let s={},o=e.filter(l=>t[l.name]==="yours");for(let l of o)l.name.startsWith("settings ")||(s[l.name]=l.yours);
let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)return s;let r=op(n.settings);for(let l of a){let c=Number(
l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(c)}return{...s,settings:[...r.values()]}}var sp,ma,fa,
Ri,aw,op,np,ms=f(()=>{sp=["title","note","archived","settings"];ma=(e,t)=>JSON.stringify(tp(e))===JSON.stringify(
tp(t));fa=(e,t)=>us(e,sp.filter(n=>n in e&&!ma(e[n],t[n]))),Ri=({before:e={}},t)=>Object.keys(e).every(n=>ma(e[n],
t[n])),aw=[["title","Title"],["note","Note"],["archived","In use"]];op=e=>new Map(e.map(t=>[t.step,t])),np=(e,t)=>ma(
e?[e]:[],t?[t]:[])});async function ga(e){Ii.add(e.id);try{return await rp(e)}finally{Ii.delete(e.id)}}async function rp(e){let t;try{
t=await kd(e)}catch(n){let s=await cw(e);return s||(await lw(n),rp(e))}try{return await lp(t,4e3)??{where:"her\
e",answer:null}}catch(n){let s=n instanceof H||n instanceof Ze;if(!s&&Di(n))throw await na(t.id),n;return{where:"\
here",answer:null,late:s?"":await up(t,n)}}}async function lw(e){Wi.add(e),document.dispatchEvent(new CustomEvent(
"held")),await new Promise(t=>{setTimeout(t,rw),document.addEventListener("storage",t,{once:!0})}),Wi.delete(e),
document.dispatchEvent(new CustomEvent("held"))}async function cw(e){try{let{body:t}=await dp({...e,number:0,queued_at:""},
8e3);return{where:"shop",answer:t}}catch(t){if(t instanceof H||!Di(t))return null;throw t}}async function ip(){
return ds("outbox",iw,dw)}async function dw(){let e=0;for(let{id:t}of await ze()){if(Ii.has(t))continue;let n=await lo(
t);if(!(!n||!await pw(n)))try{await lp(n,8e3)&&(e+=1)}catch(s){if(s instanceof H)break;Di(s)?await Tn(n.id,{refused:s.
message,missing:s.status===404}):await up(n,s)}}return{sent:e,left:(await ze()).length}}async function lp(e,t){
if(!await uw(e))return null;let n=await lo(e.id)??e;try{let s=await(n.parked?pp(n,t):dp(n,t));return await cp(
n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof O&&s.status===412)||n.parked)throw s;
return hw(n,t)}}async function uw({id:e,code:t,after:n,before:s,parked:o}){if(!n||o)return!0;if(await lo(n))return!1;
if(!(await ta(n))?.proposed)return!0;let a=await it(t);return!a||a.proposals?.some(r=>r.id===n)?!1:(await Tn(e,
Ri({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function hw(e,t){if(e.body.part)throw new O(mw);
let{body:n,at:s}=await M("GET",`/cards/${e.code}`,{timeout:t});await ft(n);let o=(e.body.settles??[]).some(l=>n.
proposals.some(c=>c.id===l));if(o||!hs(e.body,e.before??{},n).length)return await co(e,s),await sa(e.id,n.revision_id,
l=>Ri(l,n)),{where:o?"settle":"shop",answer:n};let a={...e,parked:!0};await Tn(e.id,{parked:!0});let r=await pp(
a,t);return await cp(a,r),{where:"settle",answer:r.body}}async function cp(e,{body:t,at:n}){if(e.kind!=="trial"){
let s=t;await ft(s).catch(()=>{}),!e.parked&&e.after&&s.revision_id===e.after&&await sa(e.id,e.after)}await co(
e,n,!!e.parked),await Td(n)}function dp({kind:e,code:t,id:n,body:s,after:o,etag:a,missing:r},l){return e==="tr\
ial"?M("POST",`/cards/${t}/results`,{body:r?{...s,again:!0}:s,timeout:l}):M("PUT",`/cards/${t}`,{body:{...s,id:n,
...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function pp({id:e,code:t,body:n,before:s,revision:o,queued_at:a},r){
let{reason:l,by:c,settles:d,...u}=n,h={...l?{reason:l}:{},...c?{by:c}:{}};return M("POST",`/cards/${t}/proposa\
ls`,{body:{id:e,changes:u,before:s,revision:o,made_at:a,...h},timeout:r})}async function up({id:e},t){if(!(t instanceof
O)||t.status<500)return"";let n=t.status===507?"The disk of the shop’s server is full: make room on it":t.title;
return await Tn(e,{late:n}).catch(()=>{}),n}function Di(e){if(!(e instanceof O))throw e;return e.status<500&&![
401,408,429].includes(e.status)}var rw,iw,Ii,Wi,go,pw,mw,fs=f(()=>{F();ms();Ce();Be();Yt();Qo();rw=3e3,iw=15e3;
Ii=new Set;Wi=new Set,go=()=>[...Wi].at(-1)?.message??"";pw=async({refused:e,again:t,missing:n,code:s})=>!e||!!(t&&
n&&await it(s));mw={title:"Changed meanwhile",status:412,detail:"The part was changed here, the shop was resto\
red from an earlier backup, and the card was changed again since. Open the card and make the change anew."}});function tt(){return Qt}async function $a(e){let t=await ze().catch(()=>[]),n=await aa().catch(()=>[]);Qt={...Qt,
...e,waiting:t.length,words:ji(t),late:t.find(s=>s.late&&!s.refused)?.late??"",settle:await gw(t).catch(()=>[]),
lost:n.length,refused:t.filter(s=>s.refused).length},document.documentElement.dataset.reached=String(Qt.reached),
document.documentElement.dataset.resolve=String(Qt.settle.length),document.documentElement.dataset.waiting=String(
Qt.waiting),document.dispatchEvent(new CustomEvent("sync",{detail:Qt}))}function ji(e){let n=[["trial","result"],
["note","note"],["edit","edit"]].map(([s,o])=>({word:o,many:e.filter(a=>a.kind===s).length})).filter(({many:s})=>s).
map(({word:s,many:o})=>`${o} ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):`${n.slice(0,-1).join(", ")} a\
nd ${n.at(-1)}`}async function gw(e){let t=(await Ad()).flatMap(({code:n,settle:s})=>Array(s).fill(n));for(let n of e)
for(let s of n.body.settles??[])t.includes(n.code)&&t.splice(t.indexOf(n.code),1);return t}function en(e,t){let n=e||
!!(t&&!(t instanceof H));n!==Qt.reached&&$a({reached:n})}function gs(){return $a({})}function U(){return $o?(Fi=
!0,$o):($o=$w().finally(()=>$o=void 0),$o)}async function $w(){do Fi=!1,await bw();while(Fi)}async function bw(){
try{await hp(),(await ip()).sent>0&&await hp(),await $a({reached:!0,at:new Date().toISOString(),unkept:!1})}catch(e){
await $a(e instanceof H?{reached:!1}:e instanceof O?{reached:!0}:{unkept:!0}),!(e instanceof H||e instanceof O&&
e.status===401)&&!(e instanceof Ze)&&console.warn("changes feed:",e)}}async function hp(){for(;await ds("feed",
fw,ww););}async function ww(){let e=await Ed()??"",{body:t}=await M("GET",`/changes?since=${encodeURIComponent(
e)}`,{timeout:15e3});return await Nd(t),t.more}function mp(){U(),addEventListener("online",()=>U()),addEventListener(
"offline",()=>U()),document.addEventListener("visibilitychange",()=>document.visibilityState==="visible"&&U()),
setInterval(()=>document.visibilityState==="visible"&&U(),1e4)}var fw,Qt,$o,Fi,ve=f(()=>{F();Ce();fs();Yt();Be();
Qo();fw=3e3,Qt={reached:null,waiting:0,words:"",late:"",refused:0,settle:[],lost:0,at:null,unkept:!1},Fi=!1});function tn(){let e=location.pathname,t=n=>n==="/"?e==="/"||e==="/scan"||/^\/c\//i.test(e):e.startsWith(n);Zt(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${yw}<span>Flangebook</span></a>
        ${Xt()===null?i`<nav aria-label="Main">
                ${_w.filter(([n])=>Et(n)).map(([n,s])=>i`<a href=${n} aria-current=${t(n)?"page":"false"}>${s}</a>`)}
              </nav>`:p}
      </div>
      ${vw()}${kw()}${Xt()===null?xw():p}`,document.getElementById("masthead"))}function kw(){return go()?i`<p class="standing" data-test="held">
      ${go()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      Then it is saved automatically.
    </p>`:io()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${tt().reached===!1?p:"Cards come from the shop."}
  </p>`:p}function xw(){let{reached:e,waiting:t,words:n,late:s,refused:o,settle:a,lost:r}=tt(),l=a.filter(m=>Et(
`/c/${m}/resolve`)),c=s?` ${s}.`:"",d=t?`${n} ${t===1?"waits":"wait"} to be sent.${c}`:"",u=io()?"":"Cards on \
this device still open.",h=e===!1?`Not connected to the shop. ${u}`:"";return!h&&!d&&!l.length&&!r?p:i`<p class="standing" data-test="standing">
    ${h} ${d} ${o?i`<a href="/settings">${o} refused: look</a>`:p}
    ${l.length?i`<a href="/c/${l[0]}/resolve" data-test="resolve-count">${l.length} to resolve</a>`:p}
    ${r?i`<a href="/settings" data-test="lost-count"
            >${r===1?"1 card is":`${r} cards are`} not in the shop any more: look</a
          >`:p}
  </p>`}var _w,yw,vw,Hi=f(()=>{y();On();Me();fs();Yt();ve();_w=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];yw=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,vw=()=>isSecureContext?p:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});function $s(e){return e.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function I(e){
return e.length>3?`${e.slice(0,3)}-${e.slice(3)}`:e}function me(e){let t=$s(e),n=[...t].filter(s=>!bo.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:t,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return t.length>7?{code:t,whole:!1,
fault:`A card code has seven characters. This one has ${t.length}.`}:t.length<7?{code:t,whole:!1,fault:""}:gp(
t.slice(0,-1))!==t.at(-1)?{code:t,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:t,whole:!0,fault:""}}function ba(){let e=crypto.getRandomValues(
new Uint8Array(6)),t=Array.from(e,n=>bo[n%bo.length]).join("");return t+gp(t)}function gp(e){let t=0,n=2;for(let s of e)
t^=fp(n,bo.indexOf(s)),n=fp(n,2);return bo[t]}function fp(e,t){let n=0;for(let s=t,o=e;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var bo,ue=f(()=>{bo="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});function wa(e){let t=ls()==="bench"?"This device is a press screen":"This device is an operator's",n=Vc(e)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${t}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var R,oe,le=f(()=>{y();Me();R=(e,t,n=p)=>ge(e)?t:n,oe=(e,t,n=p)=>Et(e)?t:n});function nn(e){if(e instanceof Ze)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${bp}
    </div>`;if(e instanceof H)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let t=e instanceof O?e.message:String(e);return e instanceof O||console.error(e),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${t}
  </div>`}var Oe,xe,$p,bp,Re=f(()=>{y();F();Yt();Oe=e=>i`<p class="state" data-test="loading">${e}</p>`,xe=(e,t=p)=>i`<div class="state" data-test="empty">
    <h1>${e}</h1>
    ${t}
  </div>`,$p=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${io()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${bp}
  </div>`,bp=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function $e(e,{replace:t=!1}={}){Tw()&&(history[t?"replaceState":"pushState"](null,"",e),Pt(!0))}function $t(e){
wo=e}function Tw(){let e=wo?.();return!e||confirm(e)}function _p(){wo?.()?tn():Pt()}async function Pt(e=!1){Ui.
abort(),Ui=new AbortController,wo=null;let{signal:t}=Ui,n=document.documentElement;delete n.dataset.ready;let s=Ow(
so(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
tn();let o=l=>{clearTimeout(a),t.aborted||Zt(l,_a())};Zt(i``,_a());let a=setTimeout(()=>o($p()),Sw);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!ge(r)){o(wa(r)),n.dataset.ready="n\
ot-yours";return}try{let l=await wp[s.route.name]();if(t.aborted)return;scrollTo(0,0),await l.show({params:Mw(
s.params),query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{
t.aborted||(n.dataset.ready=s.route.name)},signal:t})}catch(l){if(t.aborted)return;o(nn(l)),n.dataset.ready="f\
ailed"}e&&!t.aborted&&_a().focus({preventScroll:!0})}function Ow(e){return e&&Wd(e.route.name)?{route:Hc("pair"),
params:{}}:e}function yp(e){return wp=e,addEventListener("popstate",()=>Pt()),addEventListener("beforeunload",
t=>(go()||wo?.())&&t.preventDefault()),document.addEventListener("click",t=>{let n=t.target.closest("a");!n||t.
defaultPrevented||t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||n.target||n.hasAttribute("download")||n.origin!==
location.origin||!so(n.pathname)||n.hash&&n.pathname===location.pathname||(t.preventDefault(),$e(n.pathname+n.
search+n.hash))}),_a().replaceChildren(),Pt()}var Sw,Ui,wo,wp,_a,Mw,Ie=f(()=>{y();Hi();On();ue();Me();ui();fs();
le();Re();Sw=1e3,Ui=new AbortController,wo=null,wp={},_a=()=>document.getElementById("main");Mw=e=>e.code?{...e,
code:$s(e.code)}:e});var Cn,ya,bs,Gi=f(()=>{Cn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ya=e=>(...t)=>({
_$litDirective$:e,values:t}),bs=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,s){this._$Ct=t,
this._$AM=n,this._$Ci=s}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}}});var MT,vp,Aw,va,Vi=f(()=>{y();({I:MT}=ep),vp=e=>e.strings===void 0,Aw={},va=(e,t=Aw)=>e._$AH=t});var Se,sn=f(()=>{y();Gi();Vi();Se=ya(class extends bs{constructor(e){if(super(e),e.type!==Cn.PROPERTY&&e.type!==
Cn.ATTRIBUTE&&e.type!==Cn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!vp(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[
t]){if(t===gt||t===p)return t;let n=e.element,s=e.name;if(e.type===Cn.PROPERTY){if(t===n[s])return gt}else if(e.
type===Cn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(s))return gt}else if(e.type===Cn.ATTRIBUTE&&n.getAttribute(
s)===t+"")return gt;return va(e),t}})});function ka(e){return Object.hasOwn(on,e)?e:void 0}async function de(e,t){try{return await xa(e,t)}catch(n){let s=n instanceof
H?await oa():void 0;if(!s?.[e])throw n;return{items:s[e],etag:null,kept:!0}}}async function an(){try{let e=await oa();
if(e||!tt().unkept)return e}catch{}try{let[{press:e},{items:t}]=await Promise.all([Ta(),xa("metals")]);return{
press:e,metals:t}}catch{return}}async function xa(e,t){let{body:n,etag:s}=await M("GET",`/${e}`,{signal:t});return{
items:n[e],etag:s,kept:!1}}async function kp(e,t,n){await M("PUT",`/${e}`,{body:{[e]:t.map(Bn),by:B().name},etag:n})}
async function Sa(e){try{return await Ta(e)}catch(t){let n=t instanceof H?await oa():void 0;if(!n)throw t;return{
press:n.press??null,etag:null,kept:!0}}}async function Ta(e){let{body:t,etag:n}=await M("GET","/press",{signal:e});
return{press:t.press,etag:n,kept:!1}}async function xp(e,t){let n={press:Bn(e),by:B().name};return(await M("PU\
T","/press",{body:n,etag:t})).body.press}function Bn({outline_mm:e,outlines_mm:t,...n}){return n}function Sp(e,t){
return JSON.stringify(e&&Bn(e))===JSON.stringify(t&&Bn(t))}function rn({tray:e,slot:t}){return!e&&!t?"place no\
t given":[e&&(/^\S{1,4}$/.test(e)?`Tray ${e}`:e),t&&`slot ${t}`].filter(Boolean).join(", ")}var on,ce,ws,fe=f(
()=>{F();se();Be();ve();on={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",title:"\
Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"Metals"}},
ce={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_holders",
metals:"shop.write_metals"};ws=(e,t)=>e?.find(n=>n.code===t)?.name??t});function _o(e,t){let s=t.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...us(c.body)}),
e),o=t.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(e.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??e.revision_id,here:o}}async function Rn(e){return _o(e,
await Sn(e.code).catch(()=>[]))}async function qi(e){let t=await it(e);return t&&_o(t,(await Sn(e)).filter(n=>n.
body.settles))}async function yo(e){let t=await it(e);return t&&Rn(t)}async function bt(e,t,{reason:n="",settles:s=[]}={}){
let o=fa(t,e),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:e};let{name:r}=B(),l=await ga(
{id:qe(),kind:a.every(u=>u==="note")&&!s.length?"note":"edit",code:e.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:us(e,a),after:e.after,etag:e.etag,revision:e.revision}),c=await yo(e.
code).catch(()=>{}),d=l.answer;return{where:l.where,card:c??(d?_o(d,[]):{...e,...o})}}var ln=f(()=>{ms();Ce();
fs();se();Be()});function zi(e){if(e.limits!==void 0)return e.limits;let t=[e,...e.corrections??[]].filter(Ew);if(!t.length)return null;
let n=Nw(e)+.5,s=Math.max(Math.min(...t.map(r=>r.set_angle_deg)),n),o=t.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function nt(e,t){let n=zi(
e);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=t;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function Nw({drawing:e,v_opening_mm:t}){let n=(e?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&t?2*Math.atan(t/2/Math.min(...n))*Lw:0}var Tp,Lw,Ew,cn=f(()=>{Tp=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],Lw=180/Math.PI;Ew=e=>typeof e.set_angle_deg=="number"&&typeof e.punch_depth_mm=="number"});async function wt(e,t,n){let s=null,o=await it(e).catch(a=>{s=a});if(!o){await t(await Rn(await Pw(e,n,s)),{where:"\
shop"});return}await t(await Rn(o),{where:"device"}),Cw(o,t,n)}async function Pw(e,t,n){try{return await _t(e,
t)}catch(s){throw s instanceof H&&n instanceof Ze?n:s}}async function Mp(){try{let e=await Jt();if(e.length||!tt().
unkept)return{list:e,where:"device"}}catch{}try{let{body:e}=await M("GET","/cards?archived=all&limit=200",{timeout:4e3});
return en(!0),{list:e.cards.map(t=>({...t,note:""})),where:"shop"}}catch(e){return en(!1,e),{list:[],where:"sh\
op"}}}async function Cw(e,t,n){try{let s=await _t(e.code,n);!n.aborted&&s.etag!==e.etag&&await t(await Rn(s),{
where:"shop"})}catch{}}async function Op(e,t){if(await it(e).catch(()=>{}))return"device";try{return await _t(
e,t),"shop"}catch(n){if(n instanceof O&&n.status===404)return"nowhere";if(n instanceof H)return"silent";throw n}}
async function _t(e,t){try{let{body:n}=await M("GET",`/cards/${e}`,{signal:t,timeout:4e3});return en(!0),await ft(
n).catch(()=>n)}catch(n){throw t?.aborted||en(!1,n),n}}async function Ma(e,t){let{body:n}=await M("PUT",`/card\
s/${e.code}`,{body:t,etag:e.etag,timeout:t.replan?6e4:8e3});return ft(n).catch(()=>n)}function lt(e,t){let n=e.
settings?.find(a=>a.step===t.number),s={set_angle_deg:n?.set_angle_deg??t.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??
t.punch_depth_mm},o=nt(t,s);return{...o?s:{set_angle_deg:null,punch_depth_mm:null},firstHit:n||!o?null:t.first_hit??
null,gauge_x_mm:n?.gauge_x_mm??t.gauge_x_mm,fromTrial:!!n,reason:n?.reason??""}}var We=f(()=>{F();ln();cn();Yt();
Be();ve()});function Ke(e,t){return e.length*t*.6+t*.3}function Bw(e,t){return Math.abs(e.x-t.x)*2<e.width+t.width&&Math.abs(
e.y-t.y)*2<e.height+t.height}function Ap(e,[[t,n],[s,o]]){let a=0,r=1,l=[[t-e.x,s-t,e.width/2],[n-e.y,o-n,e.height/
2]];for(let[c,d,u]of l){if(d===0){if(Math.abs(c)>u)return!1;continue}let[h,m]=[(-u-c)/d,(u-c)/d];a=Math.max(a,
Math.min(h,m)),r=Math.min(r,Math.max(h,m))}return a<=r}function Rw([e,t],[n,s]){return Oa(e,t,n)!==Oa(e,t,s)&&
Oa(n,s,e)!==Oa(n,s,t)}function Oa(e,t,n){return(t[0]-e[0])*(n[1]-e[1])>(t[1]-e[1])*(n[0]-e[0])}var Aa,La=f(()=>{
Aa=class{constructor(t){this.edges=t,this.taken=[]}choose(t){let n=t[0],s=1/0;for(let o of t){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:t,
lines:n=[]}){let s=this.taken.filter(l=>Bw(t,l)).length,o=this.edges.filter(l=>Ap(t,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(d=>Rw(c,d)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(d=>Ap(d,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function Ae(e){return e.length?`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}Z`:""}function vo(e){return e.length?
`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}`:""}function st(e){let t=e.flat().map(([s])=>s),n=e.flat().map(([,
s])=>s);return[Math.min(...t),Math.min(...n),Math.max(...t),Math.max(...n)]}function Lp([e,t,n,s],o){return`${e-
o} ${-s-o} ${n-e+2*o} ${s-t+2*o}`}function In([e,t,n,s],o,a){let r=Math.min(o/Math.max(n-e,1e-6),a/Math.max(s-
t,1e-6));return([l,c])=>[(l-e)*r,(s-c)*r]}var dn=f(()=>{});function j(e){let{text:t}=w(e,{digits:2});return B().inches==="fraction"?t:t.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function Np({section:e,part:t},{pixels:n=_s(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=In(st([e.outline]),n-2*l,s-2*l),d=e.outline.map(c),u=new Aa(d.map((v,N)=>[v,d[(N+1)%d.length]])),h=Dw(e).map(
(v,N)=>jw(v.map(c),j(t.flats_mm[N]),u,18)),m=e.bend_points.map((v,N)=>Fw(c(v),N+1,t.bends[N],u,18)),[b,g,_,T]=Gw(
[...d,...m.flatMap(v=>Ep(v.box)),...h.flatMap(v=>[...Ep(v.box),...v.lines.flat()])]),[E,P]=[_-b+12,T-g+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${Ww(t)}
    width=${E}
    height=${P}
    viewBox="${b-6} ${g-6} ${E} ${P}">
    <path class="sheet" d="M${d.map(v=>v.join(" ")).join("L")}Z" />
    ${h.map(({lines:v,box:N,text:Q})=>x`${v.map(([Ee,pi])=>x`<path class="dimension" d="M${Ee}L${pi}"/>`)}
      ${Hw(v[0])}${Uw(N,Q,18)}`)}
    ${m.map(({box:v,text:N,number:Q,badge:Ee})=>x`<circle class="badge ${Q===a?"marked":""}" cx=${Ee[0]} cy=${Ee[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${Ee[0]} y=${Ee[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${Q}</text>
      <text x=${Ee[0]+18*.95} y=${v.y} font-size=${18}
        dominant-baseline="central">${N}</text>`)}
  </svg>`}function _s(){return Math.min(Math.max(innerWidth-32,300),720)}function Ww(e){return`Section. ${e.flats_mm.
map((n,s)=>{let o=e.bends[s],a=o?`, bend ${s+1}: ${Pp(o)} ${o.direction}`:"";return`flat ${s+1}: ${$(w(n))}${a}`}).
join("; ")}.`}function Pp(e){return e.kind==="closed_hem"?"hem":e.kind==="open_hem"?"open hem":ie(S(e.included_angle_deg))}
function Dw({dimensions:e,bend_points:t,centre_line:n}){if(e)return e;let s=[n[0],...t,n[n.length-1]];return s.
slice(1).map((o,a)=>[s[a],o])}function Fw(e,t,n,s,o){let a=Pp(n),r=Ke(a,o)+1.6*o,l=[1.4,1.9,2.6].flatMap(u=>Iw.
map(h=>{let m=e[0]+Math.cos(h)*(u*o+r/2-o*.6),b=e[1]+Math.sin(h)*u*o;return{box:{x:m,y:b,width:r,height:o*1.5},
cost:u*2}})),{box:c}=s.choose(l),d=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:t,badge:d}}function jw([e,t],n,s,o){
let a=Math.hypot(t[0]-e[0],t[1]-e[1])||1,r=[-(t[1]-e[1])/a,(t[0]-e[0])/a],[l,c]=[Ke(n,o),o*1.3],d=(m,b)=>[m[0]+
r[0]*b,m[1]+r[1]*b],u=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap(b=>[.5,.3,.7].map(g=>{let[_,T]=[d(e,b*o),d(t,b*o)],
E={x:_[0]+(T[0]-_[0])*g,y:_[1]+(T[1]-_[1])*g,width:l,height:c},P=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(b*r[1])*
o*.9:0,v=[[_,T],[d(e,Math.sign(b)*o*.5),d(_,Math.sign(b)*4)],[d(t,Math.sign(b)*o*.5),d(T,Math.sign(b)*4)]];return{
box:{...E,y:E.y+P},cost:Math.abs(b)+(g===.5?0:.5),lines:v}}))),h=s.choose(u);return{box:h.box,lines:h.lines,text:n}}
function Hw(e){return e.map(([t,n])=>x`<path class="dimension tick" d="M${t-4} ${n+4}L${t+4} ${n-4}"/>`)}function Uw({
x:e,y:t,width:n,height:s},o,a){return x`<rect class="ground" x=${e-n/2} y=${t-s/2} width=${n} height=${s}/>
    <text x=${e} y=${t} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function Ep({
x:e,y:t,width:n,height:s}){return[[e-n/2,t-s/2],[e+n/2,t+s/2]]}function Gw(e){return st([e])}var Iw,ot=f(()=>{
y();se();A();La();dn();Iw=[0,90,180,270,45,135,225,315].map(e=>e*Math.PI/180)});var ys,ae,yt=f(()=>{y();ys=()=>matchMedia("(min-width: 1000px)").matches,ae=(e,t,{test:n="",open:s=ys()}={})=>i`<details class="fold" data-test=${n||
p} ?open=${s}>
    <summary><h2>${e}</h2></summary>
    ${t}
  </details>`});function k(e,t=Vw[e]){return i`<span class="flag ${e}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${qw[e]}</svg>${t}</span
  >`}function Ki({step:e,steps:t=[]}){return t.length>1?i`<b>Steps ${t.join(", ")}.</b> `:e?i`<b>Step ${e}.</b> `:
p}function Fe(e,{quiet:t=!1}={}){let n=e.filter(s=>!t||s.level!=="ok").sort((s,o)=>vs.indexOf(Te(s))-vs.indexOf(
Te(o)));return n.length===0?p:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${k(Te(s))}
          <div class="say">
            ${Ki(s)}${Ve(s.template,s.numbers)}
            ${s.do?i`<div class="do">${Ve(Wn(s),s.numbers)}</div>`:p}
          </div>
        </li>`)}
  </ul>`}function ks(e){let t=new Map;for(let s of e){let o=`${Te(s)} ${s.code}`;t.set(o,[...t.get(o)??[],s])}
let n=[...t.values()].sort(([s],[o])=>vs.indexOf(Te(s))-vs.indexOf(Te(o)));return i`<ul class="checks lines" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s[0].level} data-code=${s[0].code}>
          ${zw(s)}
        </li>`)}
  </ul>`}function zw([e,...t]){let n=i`${k(Te(e))}
    <div class="say">${Ki(e)}${Ve(e.template,e.numbers)} ${Kw(t)}</div>`;return!e.do&&t.length===0?n:i`<details ?open=${e.
level==="stop"}>
    <summary>${n}</summary>
    ${t.map(s=>i`<p class="say">${Ki(s)}${Ve(s.template,s.numbers)}</p>`)}
    ${e.do?i`<p class="do">${Ve(Wn(e),e.numbers)}</p>`:p}
  </details>`}function Kw(e){let t=e.flatMap(({step:n,steps:s=[]})=>s.length?s:n??[]);return e.length===0?p:t.
length===0?i`<b>And ${e.length} more.</b>`:i`<b>Also step${t.length>1?"s":""} ${t.join(", ")}.</b>`}var Vw,vs,
qw,Te,ke,Wn,De,ko,G=f(()=>{y();A();Vw={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",ok:"OK"},vs=
["stop","caution","unknown","note","ok"],qw={stop:x`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:x`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:x`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:x`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:x`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};Te=({level:e,sign:t,do:n,
step:s,steps:o=[]})=>t??(e==="ok"&&n&&(s||o.length)?"note":e),ke=({template:e,numbers:t})=>Ve(e,t),Wn=({do:e,do_template:t})=>t??
e,De=({template:e,numbers:t={},words:n=""})=>e?Ve(e,t):n,ko=e=>e.map(ke).join(" ")});function Dn(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":t.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function re(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":`${Dn(e)}\
, ${t.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function xs({made_at:e,received_at:t}){return t?
!e||Math.abs(Date.parse(e)-Date.parse(t))<Yw?re(t):`in the shop ${re(t)}, made ${re(e)} by the device’s clock`:
re(e??"")}function Ct({by:e,device:t}){return[e,t===e?"":t].filter(Boolean).join(", ")}var Yw,Ye=f(()=>{Yw=5*6e4});function Yi(e,{metalName:t,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${e.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${I(s.code)}</span>
            <span class="more">
              ${t(s.metal)}, ${j(s.thickness_mm)} ${C()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${Dn(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · archived":""}
              ${Jw(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="resolve">${k("caution",`${s.settle} to resolve`)}</span>`:p}
              ${s.worst==="stop"?k("stop"):p}
            </span>
          </a>
        </li>`)}
  </ul>`}var Jw,Cp=f(()=>{y();ue();ot();A();G();Ye();Jw=e=>e?i`· <b>${e} ${/^1 \S+$/.test(e)?"waits":"wait"}</b>`:
p});function Na(e,t,n,s){let o=me(e.code),a=o.fault||(e.asked&&!o.whole?Zw(o.code):"");return i`<form class="code-form" @submit=${l=>{
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
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:Xw(o,t,s)}
    </p>
  </form>`}function Xw(e,t,n){if(!e.whole)return n;let s=t.find(o=>o.code===e.code);return s?i`<span data-test="code-found"
        >${I(e.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A valid code, but not on this device yet. Open asks the shop.</span
      >`}var Ea,Zw,Ji=f(()=>{y();sn();ue();Ie();Ea=()=>({code:"",asked:!1});Zw=e=>e?`A card code has seven cha\
racters. This is ${e.length}.`:"Type the seven characters printed on the label."});var Rp={};ne(Rp,{show:()=>e_});async function e_(e){e.title("Find a card");let t={typed:Ea(),search:"",shown:Xi},
n=await Bp(),s=!1,o=()=>{e.render(i`<div class="home">
        <h1>Find a card</h1>
        <div class="home-scan">
          <a class="button next wide" href="/scan" data-test="scan">${Qw} Scan a label</a>
        </div>
        <div class="home-ways">
          ${Na(t.typed,n.list,o,"Seven characters, capitals or not.")}
          <nav class="home-new" aria-label="Start something">
            ${oe("/bend",i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`)}
            ${oe("/part",i`<a class="button" href="/part" data-test="new-part"
                >${R("cards.create","New part","Plan a part")}</a
              >`)}
          </nav>
        </div>
        ${t_(t,n,s,o)}
      </div>`)};o();let a=async()=>{s||=tt().reached!==null,n=await Bp(),o(),(s||n.list.length)&&e.ready()};document.
addEventListener("sync",a,{signal:e.signal}),n.list.length&&e.ready(),await U().then(a)}async function Bp(){let[
{list:e,where:t},n,s]=await Promise.all([Mp(),an(),ze().catch(()=>[])]),o=new Map;for(let{code:r}of s)o.set(r,
ji(s.filter(l=>l.code===r)));return{list:e,where:t,waiting:o,metalName:r=>ws(n?.metals,r)}}function t_(e,t,n,s){
if(t.list.length===0)return n?a_():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=s_(t,e.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal, thickness or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${Se(e.search)}
        @input=${a=>{e.search=a.target.value,e.shown=Xi,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${o_(o.length,t,e.search)}</p>
    ${Yi(o.slice(0,e.shown),t)}
    ${o.length>e.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{e.shown+=Xi,s()}}>
              Show more
            </button>
          </div>`:p}
    ${e.search.trim()?p:n_(t)}
  </section>`}function n_(e){let t=e.list.filter(n=>n.archived);return t.length?ae(`Archived: ${t.length}`,Yi(
t,e),{test:"archived",open:!1}):p}function s_({list:e,metalName:t},n){let s=n.toLowerCase().split(/\s+/).filter(
Boolean);return s.length===0?e.filter(o=>!o.archived):e.filter(o=>{let{code:a,title:r,note:l,metal:c,thickness_mm:d}=o,
u=`${c} ${t(c)} ${j(d)} ${C()}`,h=`${a} ${I(a)} ${r} ${l} ${u}`.toLowerCase();return s.every(m=>h.includes(m))})}
function o_(e,{list:t,where:n},s){let o=n==="device"?"on this device":"of the shop";return s.trim()===""?e===1?
`1 card ${o}`:`${e} cards ${o}`:e===0?`None of the ${t.length} cards matches.`:`${e} of ${t.length} cards`}function a_(){
return tt().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${R("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var Xi,Qw,Ip=f(()=>{y();sn();ue();fe();Ce();We();ve();A();ot();yt();le();Cp();Ji();Xi=40,Qw=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`});var Fn,Wp,Dp,Ss,Zi=f(()=>{Fn=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],Wp=["guaranteed minimum","typical","measured","common practice","from memory"],Dp=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],Ss=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function jn(e=""){let n=e.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(Fp.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...jp}]}function Gp(e){let t=jn(e),{angle:n,face:s}=t[t.length-1];return xo(
[...t,{...jp,angle:n,face:s}])}var Fp,jp,Hp,xo,Up,Vp,So,Qi=f(()=>{Fp=["v","angle","radius","face","centre","co\
de","rating"],jp={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},Hp=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];xo=e=>e.map(t=>Fp.map(n=>t[n].replaceAll(";",",")).join("; ")).join(
`
`),Up=(e,t,n)=>xo(jn(e).map((s,o)=>o===t?{...s,...n}:s));Vp=(e,t)=>xo(jn(e).filter((n,s)=>s!==t)),So={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var Kp,Yp,r_,i_,l_,Pa,Bt,Ts,el,qp,zp,tl,nl,sl,Ca,ol=f(()=>{Kp="Empty is unknown: checks with it then say so.",
Yp={name:"rating_kn_per_m",label:"Rating",type:"rating",hint:"As stamped on the tool or in its maker's papers."},
r_={name:"segments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned tw\
ice twice."},i_=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],l_=[{name:"con\
dition",label:"Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown",
"unknown"]]},{name:"condition_note",label:"Note on its condition",type:"note"}],Pa={name:"name",label:"Name",type:"\
text",broad:!0},Bt=e=>t=>t.shape===e,Ts=(e,t)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:e,
hint:`One point a line: x, y. x towards the back gauge, y up. ${t}`,when:Bt("points")}),el=(...e)=>({name:"sha\
pe",label:"Shape",type:"pick",broad:!0,options:[...e,["points","by points or DXF"]]}),qp={name:"turned",label:"\
Sits in the press",type:"yes",options:[["no","as drawn"],["yes","reversed"]]},zp={title:"Rating and pieces",part:"\
rest",fields:[Yp,r_]},tl={title:"Place and condition",part:"rest",fields:[...i_,...l_]},nl=e=>e.shape!=="multi\
_v",sl=({die_holder_height_mm:e})=>!!e&&!/^0+([.,]0*)?( mm| in)?$/.test(String(e)),Ca={punches:[{title:"What i\
t is",part:"what",fields:[Pa,{name:"angle_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_m\
m",label:"Tip radius",type:"length"}]},{title:"Outline",part:"outline",fields:[el(["straight","straight"],["go\
oseneck","gooseneck"]),{name:"height_mm",label:"Height, tip to seat",type:"length"},{name:"body_width_mm",label:"\
Width of the body",type:"length"},{name:"neck_relief_mm",label:"Throat behind the tip",type:"length",when:Bt("\
gooseneck")},{name:"neck_width_mm",label:"Thickness of the neck",type:"length",when:Bt("gooseneck"),blank:"as \
the body"},{name:"throat_top_mm",label:"Throat begins to close",type:"length",when:Bt("gooseneck"),blank:"as h\
igh as it can",hint:"Above the tip."},Ts("punch","The tip is at 0, 0."),qp]},zp,tl],dies:[{title:"What it is",
part:"what",fields:[Pa,{name:"v_opening_mm",label:"V opening",type:"length",hint:"Between the sharp corners of\
 face and flanks.",when:nl},{name:"angle_deg",label:"Angle of the V",type:"number",unit:"°",when:nl},{name:"s\
houlder_radius_mm",label:"Shoulder radius",type:"length",when:nl}]},{title:"Outline",part:"outline",fields:[el(
["single_v","single V"],["multi_v","block with several V's"]),{name:"height_mm",label:"Height",type:"length"},
{name:"width_mm",label:"Width",type:"length"},qp,{name:"openings",label:"The V's of the block",type:"openings",
when:Bt("multi_v")},{name:"up",label:"V that is up",type:"number",hidden:!0,when:Bt("multi_v")},Ts("die","The \
top face is at y 0, the V's middle at x 0.")]},zp,tl],holders:[{title:"What it is",part:"what",fields:[Pa,Yp]},
{title:"Outline",part:"outline",fields:[el(["block","plain block"],["clamps","clamps that stick out"]),{name:"\
height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the front",
type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to the ba\
ck",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:Bt("clamps")},{name:"\
body_front_mm",label:"Body above, to the front",type:"length",when:Bt("clamps")},{name:"body_back_mm",label:"B\
ody above, to the back",type:"length",when:Bt("clamps")},Ts("holder","The punch's seat is at 0, 0.")]},tl],press:[
{title:"The press",part:"what",fields:[Pa,{name:"force_kn",label:"Full force",type:"force"},{name:"bed_length_\
mm",label:"Bed length",type:"length"},{name:"between_frames_mm",label:"Between the frames",type:"length"},{name:"\
open_height_mm",label:"Open height",type:"length"},{name:"stroke_mm",label:"Stroke",type:"length"},{name:"thro\
at_mm",label:"Throat",type:"length"}]},{title:"Ram and bed",part:"outline",fields:[{name:"ram_width_mm",label:"\
Ram width",type:"length",needed:!0},{name:"ram_height_mm",label:"Ram height",type:"length",needed:!0},{name:"b\
ed_width_mm",label:"Bed width",type:"length",needed:!0},{name:"bed_height_mm",label:"Bed height",type:"length",
needed:!0},{name:"floor_below_die_mm",label:"Floor below the die",type:"length",broad:!0,blank:"not looked at",
hint:"From the face that the die stands on, down to the floor: long parts hang that far."},{...Ts("ram","From \
the face that carries the holder. Empty: a plain beam."),name:"ram_points_mm",label:"Ram by points",when:void 0,
folded:!0},{...Ts("bed","From the face that carries the die or its holder. Empty: a plain beam."),name:"bed_po\
ints_mm",label:"Bed by points",when:void 0,folded:!0}]},{title:"Riser or die holder on the bed",part:"rest",fields:[
{name:"die_holder_height_mm",label:"Height under the die",type:"length",blank:"none",broad:!0,hint:"0 or empty\
: the die stands on the bed."},{name:"die_holder_width_mm",label:"Width",type:"length",when:sl,blank:"by point\
s"},{name:"die_holder_rating_kn_per_m",label:"Rating of the die holder",type:"rating",hint:"As stamped on it o\
r in its papers.",when:sl},{...Ts("die_holder","The die's seat is at y 0, the bed's at minus the height. Empty\
: a plain block."),name:"die_holder_points_mm",label:"Die holder by points",when:sl,folded:!0}]},{title:"Ratin\
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
broad:!0},{name:"note",label:"Note",type:"note"}]}]}});function vt(e=""){let t=Yo(e);return t===""?null:c_.test(t)?Number(t):t}function u_(e){let{show:t}=Rt.number;return{
v:z(e.v_opening_mm),angle:t(e.angle_deg),radius:z(e.shoulder_radius_mm),face:e.face,centre:z(e.centre_mm),code:e.
code??"",rating:Rt.rating.show(e.rating_kn_per_m)}}function h_({v:e,angle:t,radius:n,face:s,centre:o,code:a,rating:r}){
let l={v_opening_mm:Ba(e),angle_deg:vt(t),shoulder_radius_mm:Ba(n),centre_mm:Ba(o)};return{...Object.fromEntries(
Object.entries(l).filter(([,d])=>d!==null)),face:s||"top",code:a||null,rating_kn_per_m:Jp(r)}}function Ra(e,t){
return Object.fromEntries(pn(e).map(({name:n,type:s})=>[n,Rt[s].show(t[n])]))}function Ia(e,t,n={}){let s=({name:r,
type:l})=>r in n&&Rt[l].show(n[r])===t[r]?n[r]:Rt[l].take(t[r]),a=pn(e).filter(({when:r})=>!r||r(t)).map(r=>({
spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||m_(r)).map(({spec:r,value:l})=>[
r.name,l]))}function Zp(e){let t={};for(let n of["name","note","gauge_family"])t[n]=Rt.text.show(e[n]);for(let{
name:n}of Ss)t[n]=Rt.number.show(e[n]);for(let{name:n}of Fn){let s=e[n];for(let o of f_)t[`${n}.${o}`]=Rt.number.
show(s?.[o]);t[`${n}.standing`]||="typical"}return t}function Qp(e){let t={name:e.name.trim(),note:e.note.trim(),
gauge_family:e.gauge_family||null};for(let{name:n,needed:s}of Ss)(e[n]?.trim()||!s)&&(t[n]=vt(e[n]));for(let{name:n,
needed:s}of Fn){let o=["low","nominal","high","source"].some(a=>e[`${n}.${a}`]?.trim());t[n]=o||s?g_(e,n):null}
return t}function g_(e,t){let n=["low","nominal","high"].map(s=>[s,vt(e[`${t}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(e[`${t}.source`]??"").trim(),standing:e[`${t}.standing`]}}function eu(e,t){
let n={},s=[];for(let[o,a]of Object.entries(e)){let r=`.${o}.`,c=(r.includes(".openings.")?t.filter(u=>u==="op\
enings"):t).filter(u=>r.includes(`.${u}.`)).sort((u,h)=>h.length-u.length)[0],d=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n[o.slice(o.indexOf(c))]??=[]).push(...a):c?(n[c]??=[]).push(...d&&r.endsWith(`.${c}.${d}.`)?a.map(u=>`\
Number ${Number(d)+1}: ${u}`):a):s.push(...a.map(u=>`${o}: ${u}`))}return{byName:n,others:s}}var c_,al,Ba,d_,Jp,
p_,Rt,Xp,pn,m_,f_,It=f(()=>{Zi();Qi();ol();A();c_=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;al=e=>(t="")=>t.trim()===
""?null:e(t),Ba=al(e=>te(e)),d_=al(e=>ro(e,Kt())),Jp=al(e=>ro(e,vn())),p_=(e="")=>e.split(/[\n;]/).map(t=>t.trim()).
filter(Boolean),Rt={text:{show:e=>e??"",take:(e="")=>e.trim()},note:{show:e=>e??"",take:(e="")=>e.trim()},pick:{
show:e=>e??"",take:e=>e||null},yes:{show:e=>e?"yes":"no",take:e=>e==="yes"},length:{show:z,take:Ba},number:{show:e=>e==
null?"":String(e),take:vt},force:{show:e=>mi(e,Kt()),take:d_},rating:{show:e=>mi(e,vn()),take:Jp},lengths:{show:e=>(e??
[]).map(z).join(", "),take:(e="")=>e.split(/[,;\n]/).filter(t=>t.trim()).map(t=>te(t))},points:{show:e=>(e??[]).
map(([t,n])=>`${z(t)}, ${z(n)}`).join(`
`),take:e=>p_(e).map(t=>t.split(t.includes(",")?",":/\s+/).map(n=>te(n)))},openings:{show:e=>xo((e??[]).map(u_)),
take:e=>jn(e).map(h_)},figure:{show:String,take:String}};Xp=e=>Rt.points.show(e),pn=e=>Ca[e].flatMap(t=>t.fields);
m_=({type:e,blank:t})=>e==="rating"||t!==void 0,f_=["low","nominal","high","source","standing"]});function Wa(e){let t={...$_};for(let n of il){let s=e.get(rl[n])?.slice(0,60);if(s==null)continue;let o=` ${C()}`;
t[n]=ll(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return t}function Da(e){let t=new URLSearchParams;for(let n of il){
let s=e[n].trim();s!==""&&t.set(rl[n],ll(n)?te(s):s)}return t.toString()}function To(e){return b_.filter(t=>e[t].
trim()==="")}function Hn(e){let t={};for(let n of il){let s=e[n].trim();s!==""&&(t[n]=ll(n)?te(s):n==="include\
d_angle_deg"?vt(s):s)}return t}var $_,rl,il,b_,ll,Fa=f(()=>{It();A();$_={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},rl={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},il=Object.keys(rl),b_=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],ll=e=>e.endsWith("_mm")});function Wt(e,t,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:d}=a;try{let u=await e(c,d);d.aborted||t({question:c,answer:u})}catch(u){d.aborted||
t({question:c,error:u})}}return{stop:r,ask(c,{now:d=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),d?0:s))}}}var Mo=f(
()=>{});function kt(e,t,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
p}>
    <span class="what">${e}</span>
    <span class="value"
      >${t.text}${t.unit==="°"?"°":i`<span class="unit">${t.unit}</span>`}</span
    >
    ${n||o?i`<span class="band"
            >${n?i`${n[0].text} to ${n[1].text}${n[1].unit==="°"?"°":` ${n[1].unit}`}`:p}${o?i` <i class="origin" data-test="origin">${o}</i>`:
p}</span
          >`:p}
    ${s&&s!==p?i`<span class="band">${s}</span>`:p}
  </div>`}var ja=f(()=>{y()});function Ha(e){return e.force_kn===null||e.force_kn===void 0?p:i`<b>${$(je(e))}</b>
    <small class="expected">expected ${$(un(e))}</small>`}function Oo(e,t,n="force_kn",{note:s=p,origin:o=""}={}){
return kt(e,je(t,n),{note:i`expected ${$(un(t,n))}${s}`,origin:o,test:n})}var je,un,tu,ct=f(()=>{y();A();ja();
je=(e,t="force_kn")=>tu(t)(e[`${t}_high`],{up:!0}),un=(e,t="force_kn")=>tu(t)(e[t]),tu=e=>e==="force_kn"?pe:Ne});var cl,nu=f(()=>{cl=class extends HTMLElement{#e=new ResizeObserver(()=>this.measure());#t=new MutationObserver(
()=>this.measure());connectedCallback(){this.#e.observe(this),this.#t.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#e.disconnect(),this.#t.disconnect()}measure(){let t=this.
querySelector("svg"),{width:n,height:s}=t?.viewBox.baseVal??{width:0,height:0};if(!t||!n||!t.clientWidth||!t.clientHeight)
return;let o=Math.max(n/t.clientWidth,s/t.clientHeight);t.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",cl)});function dl({distance_mm:e,tool:t}){let n=$(w(Math.abs(e)));return e<=0?[n,`into ${t}`]:[n,`to ${t}`]}function su(e,{
left:t,right:n,bottom:s,top:o}){let[a,r]=Un(e),[[l,c],[d,u]]=[e.on_sheet,e.on_tool],h=a-t>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[b,g]=dl(e);return x`<g class="near ${e.distance_mm<=0?"hit":""}" data-test="near" data-tool=${e.tool}>
    <path class="near-line" d="M${l} ${-c}L${d} ${-u}" />
    ${Ua(e,n-t)?p:[e.on_sheet,e.on_tool].map(w_)}
    <g transform="translate(${a} ${-r})">
      ${Ua(e,n-t)?x`<circle class="px near-ring" r="17" />`:p}
      <path class="px near-leader" d="M${h*12} ${m*12}L${h*34} ${m*30}H${h*44}" />
      <text class="px label near-label" x=${h*50} y=${m*30-2}
        text-anchor=${h>0?"start":"end"}>${b}<tspan x=${h*50}
          dy="1.1em">${g}</tspan></text>
    </g>
  </g>`}var Un,Ua,w_,pl=f(()=>{y();A();Un=({on_sheet:[e,t],on_tool:[n,s]})=>[(e+n)/2,(t+s)/2];Ua=(e,t)=>Math.abs(
e.distance_mm)<.1*t,w_=([e,t])=>x`<g transform="translate(${e} ${-t})"><circle class="px near-dot" r="4" /></g>`});function xt(e,{pose:t,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:d=!1,room:u=null}){
let h=s??(e.bounds[2]-e.bounds[0])/6,m=n?y_(h,d?c:null):v_(e,h,c),b=u&&!n?k_(m,u,h):m,{left:g,bottom:_,right:T,
top:E}=b,P=l??__(e,t==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${t}
      viewBox="${g} ${-E} ${T-g} ${E-_}"
      preserveAspectRatio="xMidYMid meet">
      ${[e.bed,e.die].map(Ae).map(ou)}
      <g transform="translate(0 ${P.down})">${P.tools.map(ou)}</g>
      ${e.die.length?x`<path class="axis" d="M0 ${-E-999}V999" />`:p}
      <path class="gauge" transform="translate(${P.back} 0)" d=${P.gauge} />
      <path class="sheet" data-test="sheet" d=${P.sheet} />
      ${t==="before"&&e.gauge_point?x_(e.gauge_point,o,b):p}
      ${t==="after"&&a?S_(e.after.sheet,a,h,b):p}
      ${d&&c?su(c,b):p}
    </svg>
  </drawing-frame>`}function __(e,t){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=e[t];return{sheet:Ae(n),tools:[
s,o,a].map(Ae),down:0,gauge:Ae(r),back:0}}function y_(e,t){let[n,s]=t?Un(t):[0,.1*e];return{left:n-1.5*e,bottom:s-
e,right:n+1.5*e,top:s+e}}function v_(e,t,n){let[s,o,a,r]=st([e.before.sheet,e.after.sheet]),l=14*t,c=e.gauge_point?
e.gauge_point[0]+1.5*t:0,d={left:Math.max(Math.min(s-.4*t,-1.4*t),-l),right:Math.min(Math.max(a+.4*t,c,1.4*t),
Math.max(l,c))},u=d.right-d.left,h={...d,bottom:Math.max(Math.min(o-.3*t,-1.1*t,-.17*u),-l/2),top:Math.min(Math.
max(r+.3*t,1.6*t),8*t)},m=n?ul(h,Un(n),Math.max(t,.1*u)):h;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function k_(e,{
bounds:t,share:n},s){let o=ul(ul(e,[t[0],t[1]],s),[t[2],t[3]],s),a=r=>e[r]+(o[r]-e[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function x_([e,t],n,{bottom:s}){let o=s*.45;return x`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${e} ${-t}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${e}" />
    ${au(0,o,180)}${au(e,o,0)}
    <g transform="translate(${e} ${-t})"><circle class="px touch" r="5" /></g>
    ${ru(e/2,o,n,17)}
  </g>`}function S_(e,t,n,{left:s,right:o}){let a=Math.min(...e.filter(([u])=>Math.abs(u)<n/2).map(([,u])=>u)),
r=Math.max(1.25*n,.14*(o-s)),l=t/2*(Math.PI/180),[c,d]=[r*Math.sin(l),a+r*Math.cos(l)];return x`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-d}A${r} ${r} 0 0 1 ${c} ${-d}" />
    ${ru(0,a+r,$(S(t)))}
  </g>`}var ou,ul,au,ru,Ao=f(()=>{y();A();nu();pl();dn();ou=e=>e?x`<path class="tool" d=${e} />`:p;ul=({left:e,
right:t,bottom:n,top:s},[o,a],r)=>({left:Math.min(e,o-r),right:Math.max(t,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});au=(e,t,n)=>x`<g transform="translate(${e} ${-t})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,ru=(e,t,n,s=0)=>x`<g transform="translate(${e} ${-t})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function iu(e,t){let n=[...e].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>t(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die}
              <small>V ${ee(s.v_over_t,1)} × thickness</small></span
            >
            ${s.level==="ok"?p:k(s.level)}
            <span class="facts"> ${T_(s).map(o=>M_(...o))} </span>
            <span class="more">${ke(s.reason_said)} ${rn(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var T_,M_,lu=f(()=>{y();fe();A();ct();G();T_=e=>[["allow for",$(je(e,"force_kn_per_m")),`expected ${un(
e,"force_kn_per_m").text}`],["radius",$(w(e.inside_radius_mm))],["flange from",$(w(e.min_flange_mm))],["set",$(
S(e.set_angle_deg))]],M_=(e,t,n)=>i`<span class="fact"
    ><small>${e}</small>
    <span class="amount">${t}</span
    >${n?i` <small class="beside">${n}</small>`:p}</span
  >`});function Ms(e,t=""){return e?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${hl(e)}. If it is too open, make a second hit.
    <span class="drawn">${t}</span>
  </p>`:p}var Ga,hl,cu,Va,Gn=f(()=>{y();A();Ga=e=>S(e).text.replace(/\.0$/,""),hl=e=>`comes out ${Ga(e.comes_out_deg_low)}\
 to ${Ga(e.comes_out_deg_high)}°`,cu=e=>`${Ga(e.comes_out_deg_low)}–${Ga(e.comes_out_deg_high)}°`,Va=(e,{set_angle_deg:t,
firstHit:n})=>n?e.expected_set_angle_deg:t});function qa(e){return ml(e,t=>t.level==="stop"||t.level==="caution")}function ml(e,t){let n=e.filter(o=>!du(o)&&
t(o));if(n.length===0)return p;let s=n.some(o=>o.level==="stop");return i`<section
    class="panel urgent ${s?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${ks(n)}
  </section>`}function Os(e){let t=e.filter(o=>o.level==="unknown"),n=e.filter(o=>Te(o)==="note"),s=e.filter(o=>Te(
o)==="ok");return i`${t.length?i`<section>
          <h2>Not known</h2>
          ${ks(t)}
        </section>`:p}
  ${n.length?i`<section data-test="notes">
          ${ae("How to do it",ks(n),{test:"notes-fold"})}
        </section>`:p}
  ${s.length?ae(`Passed checks: ${s.length}`,Fe(s),{test:"fine",open:!1}):p}`}function hn(e){let t=e.filter(du);
if(t.length===0)return p;let n=i`<ul>
    ${t.map(s=>i`<li>
          <b>${Ve(s.template,s.numbers)}</b>
          ${Ve(Wn(s),s.numbers)}
        </li>`)}
  </ul>`;return i`<section class="every-time">
    ${ae(i`${k("caution")} At the press, every time`,n,{test:"every-time"})}
  </section>`}var du,pu,uu,Lo=f(()=>{y();A();G();yt();du=e=>e.code.startsWith("general-");pu=e=>ml(e,t=>t.level===
"stop"),uu=e=>ml(e,t=>t.level==="caution")});function L({name:e,label:t,value:n,change:s,hint:o="",wrong:a=[],keys:r="text",placeholder:l="",unit:c="",on:d="\
input",next:u=!1,list:h=""}){let m=b=>s(b.target.value);return i`<div class="field ${a.length?"has-wrong":""}">
    <label for=${e}>${t}${c?i` <span class="hint">(${c})</span>`:p}</label>
    <input
      id=${e}
      name=${e}
      data-test=${e}
      autocomplete="off"
      spellcheck="false"
      inputmode=${r}
      enterkeyhint=${u?"next":p}
      placeholder=${l}
      list=${h||p}
      .value=${Se(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${d==="input"?m:p}
      @change=${d==="change"?m:p} />
    <span id="${e}-more">
      ${a.map(b=>i`<span class="wrong" data-test="wrong-${e}">${b}</span>`)}
      ${o?i`<span class="hint">${o}</span>`:p}
    </span>
    ${a.length?O_(e,sd(String(n)),s):p}
  </div>`}function O_(e,t,n){return i`<div class="may-mean">
    ${t.map(s=>i`<button type="button" class="button" data-test="may-mean-${e}" @click=${()=>n(s)}>
          ${s}
        </button>`)}
  </div>`}function Vn({name:e,label:t,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${e}>${t}${l?i` <span class="hint">(${l})</span>`:p}</label>
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
      ${a?i`<span class="hint">${a}</span>`:p}
    </span>
  </div>`}function Y({name:e,label:t,value:n,options:s,change:o,wrong:a=[]}){return i`<div class="field ${a.length?
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
  </div>`}function Z({name:e,label:t,value:n,options:s,change:o}){return i`<div class="field" role="radiogroup" aria-label=${t}>
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
  </div>`}function dt(e){Object.keys(e).length!==0&&document.querySelector('[aria-invalid="true"]')?.focus()}var be,
q=f(()=>{y();sn();A();be=e=>t=>{t.preventDefault(),e()}});function za(e){let[t,n]=[e?.die?.trim(),e?.punch?.trim()];return{...t?{die:t}:{},...n?{punch:n}:{}}}function fl(e){
let t=za(e);return Object.keys(t).length?{tools:t}:{}}function Dt(e){let{die:t,punch:n}=za(e);return[t&&`die ${t}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var Eo,qn=f(()=>{Eo=e=>({die:e?.die??"",punch:e?.punch??""})});function W(e,t){return Object.entries(e).filter(([n])=>gl(n,t)).flatMap(([,n])=>n)}function hu(e,t){return Object.
entries(e).filter(([n])=>!t.some(s=>gl(n,s))).flatMap(([,n])=>n)}function mu(e,t,n){let s=Object.entries(e);return s.
length===0?p:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>gl(o,c)).sort((c,d)=>d.length-c.length)[0],l=r?$l(t(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>No(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function $l(e,t){let n=t.join(" ");return n.startsWith(e)?n:`${e}: ${n}`}function bl(e){for(let t=e?.
closest("details");t;t=t.parentElement?.closest("details"))t.open=!0}function No(e){let t=document.getElementById(
e);bl(t),t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"center"})}var gl,pt=f(()=>{y();gl=(e,t)=>e===t||
e.startsWith(`${t}.`)});function _l(e,t,n,s){let o=(a,r)=>L({next:!0,name:`${e}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:t[a]??"",wrong:W(n,`${e}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function gu(e,{dies:t,punches:n},s,o){
let a=t.flatMap(yl).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${Dt(e.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${_l("tools",e.tools??{},s,r=>o({...e,tools:{die:"",punch:"",...e.tools,...r}}))}
    </details>
    ${fu("codes-of-dies",a)}
    ${fu("codes-of-punches",n.map(({code:r})=>r))}`}function As({tools_reason:e,tools_reason_said:t}){let n=De(
{...t,words:e});return n?i`<p class="tools-reason" data-test="tools-reason">${n}</p>`:p}var wl,yl,fu,zn=f(()=>{
y();qn();G();q();pt();wl=["tools.die","tools.punch"];yl=e=>e.shape==="multi_v"?e.openings:[e];fu=(e,t)=>i`<datalist id=${e}>${t.
map(n=>i`<option value=${n}></option>`)}</datalist>`});function Ka(e){let t=(e??"").split(":")[0].trim();return A_.includes(t)?t:""}function Po(e){if(!e)return"";let t=new Map;
for(let[n,s]of L_){let o=e[n];o&&t.set(o,[...t.get(o)??[],s])}return[...t].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var A_,L_,Ya=f(()=>{A_=["model","handbook","your test bends"];L_=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function bu(e){return i`<ul class="ratings" data-test="ratings">
    ${e.map(E_)}
  </ul>`}function E_(e){let{what:t,share_percent:n,level:s}=e;return i`<li class="rating" data-level=${s} data-what=${t}>
    <span class="rating-of"><b>${_u[t]??t}</b>${wu(e)}</span>
    ${k(s,n===null?"Unknown":`${ee(n,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${n===null?"open":""}" d="M0 9H250" />
      ${n===null?p:P_(n)}
    </svg>
    <span class="rating-words">${N_(e)}</span>
  </li>`}function N_({load_kn:e,load_kn_per_m:t,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=t===void 0?
$(pe(e)):$(Ne(t));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=t===void 0?
$(pe(n)):$(Ne(s));return`${a} of ${r}`}function P_(e){let t=Math.min(e/100*$u,250);return x`<path class="bar-load" d="M0 9H${t}" /><path class="bar-most" d="M${$u} 0V18" />`}
var $u,wu,vl,_u,yu=f(()=>{y();A();G();$u=200;wu=({what:e,name:t})=>e.startsWith("press")||!t?"":` ${t}`,vl=e=>`${_u[e.
what]??e.what}${wu(e)}`,_u={press:"Press","press per metre":"Bed and ram, per length",punch:"Punch",die:"Die",
holder:"Holder","die holder":"Die holder"}});function Ls(e,t,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(t-e)/o,c=(r?.find(_=>l/_<=a)??C_(l,a))*o,d=Math.
floor(e/c+1e-9)*c,u=Math.ceil(t/c-1e-9)*c,h=_=>B_(n+(_-d)/(u-d)*(s-n)),m=Math.round((u-d)/c),b=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),g=Array.from({length:m+1},(_,T)=>d+T*c).map(_=>({at:h(_),text:(_/o).toFixed(b).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:h,marks:g}}function C_(e,t){let n=(e>0?e:1)/t,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function Ja(e){return e.length?`M${e.
map(([t,n])=>`${t} ${n}`).join("L")}`:""}var B_,kl=f(()=>{B_=e=>Math.round(e*100)/100});function vu({curve:e,set:t,peak:n,limits:s}){let o=Math.max(...e.map(b=>b.force_kn_high)),a=s.filter(b=>b.limit_kn!==
null).sort((b,g)=>Number(g.limit_kn)-Number(b.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:b})=>Number(
b)<=(b===r?I_:R_)*o),c=Su(e),d=Ls(0,Math.max(o,...l.map(b=>Number(b.limit_kn))),{from:He.bottom,to:He.top+28,size:Kt().
size}),u=(b,g)=>[c.at(b.punch_depth_mm),d.at(b[g])],h=[...e.map(b=>u(b,"force_kn_high")),...e.map(b=>u(b,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${$(pe(n.force_kn))}, at a depth o\
f ${$(xu(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Xa} ${Za}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${Tu(c,d,Kt().unit)}
    <path class="band" d="${Ja(h)}Z" />
    ${t.punch_depth_mm===null?p:Mu(c.at(t.punch_depth_mm))} ${W_(l,d)}
    ${F_(a.filter(b=>!l.includes(b)))}
    <path class="curve" d=${Ja(e.map(b=>u(b,"force_kn")))} data-test="force-curve" />
    ${n?H_(c.at(n.punch_depth_mm),d.at(n.force_kn)):p}
  </svg>`}function ku({curve:e,set:t,trials:n}){let s=n.filter(h=>h.punch_depth_mm!==null),o=Su(e,s.map(h=>Number(
h.punch_depth_mm))),a=[...e.map(h=>h.loaded_angle_deg),...s.map(h=>h.measured_deg)],r=Ls(Math.min(...a),180,{from:He.
bottom,to:He.top,steps:[5,10,15,30,45]}),l=h=>Ja(e.map(m=>[o.at(m.punch_depth_mm),r.at(m[h])])),c=t.set_angle_deg===
null?null:{x:o.at(Number(t.punch_depth_mm)),y:r.at(t.set_angle_deg)},u=`Angle over punch depth. ${c?`${$(S(t.set_angle_deg))}\
 under load at a depth of ${$(xu(Number(t.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} results drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Xa} ${Za}"
    role="img"
    aria-label=${u}
    data-test="stroke-angle">
    ${Tu(o,r,"°")} ${c?Mu(c.x):p}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?x`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:p}
    ${s.map(h=>j_(o.at(Number(h.punch_depth_mm)),r.at(h.measured_deg),h))}
  </svg>`}function Su(e,t=[]){let n=Math.max(...e.map(s=>s.punch_depth_mm),...t);return Ls(0,n,{from:He.left,to:He.
right,size:C()==="in"?Xe:1,most:6})}function Tu(e,t,n){let{left:s,right:o,top:a,bottom:r}=He,l=n==="°",c=t.marks.
map(({at:h,text:m})=>x`<path class="faint" d="M${s} ${h}H${o}"/>
      <text x=${s-6} y=${h+6} text-anchor="end"
        font-size=${Ft}>${m}${l?"°":""}</text>`),d=e.marks.map(({at:h,text:m})=>x`<path class="faint" d="M${h} ${r}v6"/>
      <text x=${Math.min(h,Xa-m.length*Ft*.3)} y=${r+24} text-anchor="middle"
        font-size=${Ft}>${m}</text>`),u=x`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${Ft}>${n}</text>`;return x`
    ${c}
    ${d}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${Za-8} text-anchor="end"
      font-size=${Ft}>punch depth, ${C()}</text>
    ${l?p:u}`}function W_(e,t){let n=-1/0;return D_(e).map(({limit_kn:s,names:o})=>{let a=t.at(s);return n=Math.
max(a-6,n+Ft+2),x`<path class="limit" d="M${He.left} ${a}H${He.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${He.left+6} y=${n}
        font-size=${Ft}>${o.join(", ")} ${$(pe(s))}</text>`})}function D_(e){let t=new Map;for(let n of e)t.set(
Number(n.limit_kn),[...t.get(Number(n.limit_kn))??[],Qa(n)]);return[...t].map(([n,s])=>({limit_kn:n,names:s}))}
function F_(e){if(!e.length)return p;let t=e.length>1?`, ${e.length-1} more`:"";return x`<text class="limit-word" x=${He.
right} y="18" text-anchor="end" font-size=${Ft}
      data-test="limit-far">↑ ${xl(e[e.length-1])}${t}</text>`}function Qa({what:e,name:t}){return e==="pres\
s per metre"?"Bed and ram":e==="press"||!t?e[0].toUpperCase()+e.slice(1):`${e[0].toUpperCase()}${e.slice(1)} ${t}`}
function j_(e,t,{id:n,outlier:s}){return s?x`<path class="result-odd" d="M${e-6} ${t-6}l12 12M${e+6} ${t-6}l-12 12"
        data-test="result-point" data-id=${n} data-odd="true"/>`:x`<circle class="result-point" cx=${e} cy=${t} r="6" data-test="result-point" data-id=${n}/>`}
var Xa,Za,He,Ft,R_,I_,xu,Mu,xl,H_,Ou=f(()=>{y();A();kl();Xa=400,Za=320,He={left:58,right:Xa-14,top:20,bottom:Za-
54},Ft=18,R_=3,I_=5;xu=e=>w(e,{digits:2});Mu=e=>x`<path class="set-line" d="M${e} ${He.top}V${He.bottom}"/>
  <text class="set-word" x=${e-5} y=${He.bottom-6} text-anchor="end" font-size=${Ft}>set</text>`;xl=({what:e,name:t,
limit_kn:n})=>`${Qa({what:e,name:t})} ${$(pe(n))}`;H_=(e,t)=>x`<circle class="peak" cx=${e} cy=${t} r="6" data-test="peak-mark"/>`});function Eu({stroke:e,error:t,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?U_(e,t):p}
  </details>`}function U_(e,t){return t?i`<p class="hint" data-test="stroke-missing">
      ${t instanceof O?t.message:"The stroke could not be fetched."}
    </p>`:e?e.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${vu(e)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${G_(e)}</p>
        ${V_(e)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${ku(e)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${Au("curve")} under load</li>
          <li>${Au("curve let-go")} released</li>
          ${e.trials.length?i`<li>${K_} trials, released</li>`:p}
        </ul>
        <p data-test="stroke-set">${q_(e)}</p>
        ${z_(e)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function G_({peak:e,work_j:t}){if(!e)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${$(
je(e))}.</b> The peak is expected at
    ${$(pe(e.force_kn))}, ${Lu(e.punch_depth_mm)} deep, ${$(S(e.loaded_angle_deg))}
    under load.`;return t?i`${n} Work in the stroke ${ee(t,0)} J.`:n}function V_({limits:e}){let t=e.filter(s=>s.
limit_kn!==null),n=e.filter(s=>s.limit_kn===null);return i`${t.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${t.map(xl).join(", ")}. The shaded band is what the force may be.
        </p>`:p}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(Qa).join(", ")}. Read it off the plate.
        </p>`:p}`}function q_({set:e}){return e.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${$(S(e.set_angle_deg))} under load at a depth of ${Lu(e.punch_depth_mm)}\
.`}function z_({trials:e}){let t=e.filter(n=>n.punch_depth_mm===null).length;return t?i`<p class="hint">
        ${t===1?"One result has":`${t} results have`} no depth written down and can't be drawn.
      </p>`:p}var Lu,Au,K_,Nu=f(()=>{y();Ou();F();A();ct();Lu=e=>$(w(e,{digits:2}));Au=e=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${e} d="M2 8H38" />
  </svg>`,K_=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="result-point" cx="20" cy="8" r="6" />
</svg>`});function jt(e,t,n,s,o=Cu(e,t,s)){let[a,r]=[e[`${t}_low`],e[`${t}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return kt(n,s(e[t]),{band:l?[s(a),s(r)]:null,note:o,origin:Ka(e.sources?.[t]),test:t})}function Cu({
handbook:e,sources:t,...n},s,o){let a=e?.[s];if(typeof a!="number"||Ka(t?.[s])==="handbook")return p;let r=o(a);
if(r.text===o(n[s]).text)return p;let[l,c]=[n[`${s}_low`],n[`${s}_high`]],d=a<l||a>c;return i`<span class=${d?
"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${$(r)}</span
  >`}function Bu(e,t,n){return i`${pu(e.checks)}
    <section class="bend-first" aria-label="What to set" data-test="first">
      ${Y_(e,t)} ${J_(e)}
    </section>
    ${uu(e.checks)} ${Os(e.checks)}
    <div class="columns bend-columns">
      <div>${ey(e)} ${ny(e)}</div>
      <div>${sy(e,n)} ${Eu(n.stroke)} ${oy(e,n)}</div>
    </div>
    ${ay(e)} ${hn(e.checks)}`}function Y_(e,{punches:t,dies:n}){let s=n.find(({code:a})=>a===e.die),o=t.find(({
code:a})=>a===e.punch);return!e.die&&!e.punch?i`<p class="panel" data-test="no-tools">
      No tools of the crib chosen: the figures are for a V of ${$(w(e.v_opening_mm))}.
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:e.die,tool:s},{kind:"punch",code:e.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"
              ><b>${r??"none"}</b> <span>${l?.name??""}</span></span
            >
            <span class="where">${l?rn(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:p}
          </li>`)}
    </ul>
    ${As(e)}`}function J_(e){return i`<div class="figures">${e.first_hit?Q_(e):Z_(e)}</div>
    <div class="figures three">
      ${Oo("Allow for",e,"force_kn")}
      ${kt("Flange from",w(e.min_flange_mm),{test:"min_flange_mm"})}
      ${jt(e,"bend_deduction_mm","Deduction",Kn)}
    </div>
    ${X_(e)} ${Ms(e.first_hit)}`}function X_({ratings:e}){let t=e?.find(({share_percent:s})=>s===null),n=(e??[]).
reduce((s,o)=>(o.share_percent??0)>(s?.share_percent??0)?o:s,null);return i`<p class="weakest" data-test="weakest">
    ${t?i`<b>${vl(t)}: rating unknown.</b>`:p}
    ${n?i`${vl(n)}: ${ee(n.share_percent??0,0)} % of the rating.`:p}
  </p>`}function ey(e){return ae("Force against the ratings",i`<div class="figures">
        ${Oo("Per length, allow for",e,"force_kn_per_m")}
        ${kt("Expected",pe(e.force_kn),{note:ty(e),origin:Ka(e.sources?.force_kn),test:"force_expected"})}
      </div>
      ${e.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
              ${bu(e.ratings)}`:p}`)}function ty(e){let t=e.force_kn_low,n=Cu(e,"force_kn",pe);return i`${typeof t==
"number"?`at least ${$(pe(t))}`:p}${n===p?p:i` <br />${n}`}`}function ny(e){return ae("What comes out",i`<div class="figures">
      ${jt(e,"inside_radius_mm","Inside radius",Kn)}
      ${jt(e,"springback_deg","Springback",S)}
      ${jt(e,"bend_allowance_mm","Bend allowance",Kn)}
      ${jt(e,"k_factor","K-factor",Ru)}
    </div>`)}function sy(e,{pose:t,show:n}){if(!e.drawing)return p;let s=$(S(e.set_angle_deg)),o=t==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return ae("Drawn to scale",i`<section class="bend-drawing" aria-label="The bend in its tools">
      ${Z({name:"pose-shown",label:"Shown",value:t,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
      ${xt(e.drawing,{pose:t,close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,words:`The sheet i\
n die and punch, ${o}`})}
    </section>`,{test:"drawing"})}function oy(e,{use:t}){return e.options?.length?ae(`Dies of the crib: ${e.options.
length}`,i`<p class="hint">Tap one to use it. Each with the reason for its rank.</p>
      ${iu(e.options,t)}`,{test:"dies"}):p}function ay({opinions:e,sources:t}){return e?ae("Second opinions",i`<div class="opinions">
      ${e.force?.length?Pu("Force by published relations",e.force,[["force_kn","Force",pe],["force_kn_per_m","\
Per length",Ne]]):p}
      ${e.allowance?.length?Pu("Bend allowance by published relations",e.allowance,[["bend_allowance_mm","Allo\
wance",Kn],["k_factor","K",Ru]]):p}
      ${t?i`<details>
              <summary>Where each figure comes from</summary>
              <dl class="sources">
                ${Object.entries(t).map(([n,s])=>i`<dt>${ry[n]??n}</dt>
                      <dd>${s}</dd>`)}
              </dl>
            </details>`:p}
    </div>`,{open:!1}):p}function Pu(e,t,n){return i`<div class="table">
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
  </div>`}var Kn,Z_,Q_,Ru,ry,Iu=f(()=>{y();Ao();fe();A();ct();lu();ja();Gn();Lo();yt();q();zn();Ya();yu();Nu();
Kn=e=>w(e,{digits:2});Z_=e=>i`
  ${jt(e,"set_angle_deg","Set angle",S)}
  ${jt(e,"punch_depth_mm","Depth",Kn)}
`,Q_=e=>i`
  ${jt(e,"set_angle_deg","First hit: set angle",S,`then about ${$(S(e.expected_set_angle_deg))}`)}
  ${jt(e,"punch_depth_mm","First hit: depth",Kn,`then about ${$(Kn(e.expected_punch_depth_mm))}`)}
`;Ru=e=>({text:e==null?"–":ee(e,2),unit:""});ry={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var Du={};ne(Du,{show:()=>cy});async function cy(e){e.title("Check a bend"),e.render(Oe("Looking into the crib\
…"));let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async P=>(await de(P,e.signal)).items)),o={
dies:n,punches:s},a=Wa(e.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=t[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:ys()},d=Wt(async(P,v)=>(await M("POST","/bend",
{body:P,signal:v})).body,({answer:P=null,error:v=null})=>{Object.assign(l,{answer:P,error:v,busy:!1}),Object.assign(
c,{stroke:null,error:null}),h(),g()},e.signal),u=Wt(async(P,v)=>(await M("POST","/stroke",{body:P,signal:v})).
body,({answer:P=null,error:v=null})=>{Object.assign(c,{stroke:P,error:v}),g()},e.signal);function h(){u.stop(),
c.open&&l.answer&&!c.stroke&&u.ask(Hn(a),{now:!0})}function m(P){history.replaceState(null,"",`/bend?${Da(a)}`),
l.busy=To(a).length===0,l.busy?d.ask(Hn(a),P):(d.stop(),Object.assign(l,{answer:null,error:null})),g()}function b(P,v){
Object.assign(a,P),m(v)}function g(){let P=l.error instanceof O?l.error.errors:{};e.render(i`<h1 class="bend-title">Check a bend</h1>
        <div
          class="desk"
          aria-busy=${l.busy?"true":"false"}
          data-test="bend"
          data-busy=${String(l.busy)}>
          <form
            class="panel desk-form"
            aria-label="The bend"
            @submit=${v=>v.preventDefault()}>
            ${dy(a,{metals:t,...o,openTools:r,answer:l.answer},P,b)}
          </form>
          <p class="unseen" role="status">${_()}</p>
          <div class="desk-answer" data-test="answer">${T(P)}</div>
        </div>`),l.busy||e.ready()}function _(){let{answer:P}=l;if(!P||l.busy)return"";let v=P.worst==="ok"?"":
`${P.worst}. `,N=P.set_angle_deg===null?"nothing to set":`set ${$(S(P.set_angle_deg))}`;return`${v}Die ${P.die??
"none"}, allow for ${$(je(P))}, ${N}.`}function T(P){let v=To(a);return v.length?xe("One bend, all its figures",
i`Still to type: ${v.map(N=>ly[N]).join(", ")}.`):l.error?E(P):l.answer?Bu(l.answer,o,{pose:l.pose,show:N=>{l.
pose=N,g()},use:N=>b({die:a.die===N?"":N},{now:!0}),stroke:{...c,toggled:N=>{c.open!==N&&(c.open=N,h(),g())}}}):
Oe("Working it out…")}function E(P){if(!(l.error instanceof O)||l.error.status>=500)return i`${nn(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let v=hu(P,iy),N=Object.keys(P).length>v.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...N,...v].map(Q=>i`<p>${Q}</p>`)}
    </div>`}m({now:!0})}function dy(e,{metals:t,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(h,m,b={})=>L(
{name:h,label:m,value:e[h],wrong:W(r,h),change:g=>l({[h]:g}),...b}),d=(h,m,b)=>Y({name:h,label:m,value:e[h],options:b,
wrong:W(r,h),change:g=>l({[h]:g},{now:!0})}),u=e.metal&&!t.some(({code:h})=>h===e.metal);return i`${d("metal",
"Metal",[...u?[[e.metal,`${e.metal} (not in the shop)`]]:[],...uy(t)])}
    <div class="fields three">
      ${c("thickness_mm","Thickness",{unit:C(),hint:a?py(a,e.thickness_mm):"3, 1/8 in, 16 ga"})}
      ${c("bend_length_mm","Length",{unit:C()})}
      ${c("included_angle_deg","Angle",{unit:"°",keys:"decimal",hint:a?"":"90 is square"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${d("die","Die",[["","Best of the crib"],...Wu(e.die,n)])}
      ${d("punch","Punch",[["","Best of the crib"],...Wu(e.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:C()})}
    </details>
    ${e.die||e.punch||e.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:p}`}function py({thickness_mm:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":$(w(
e,{digits:2})),t??""].filter(Boolean).join(", ")}function Wu(e,t){let n=t.map(s=>[s.code,`${s.code} · ${s.name}`]);
return e&&!t.some(s=>s.code===e)?[[e,`${e} (not in the crib)`],...n]:n}var iy,ly,uy,Fu=f(()=>{y();F();Fa();fe();
Mo();A();ct();Iu();q();yt();Re();pt();iy=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","\
punch","punch_radius_mm"],ly={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"\
angle"};uy=e=>e.map(({code:t,name:n})=>[t,n])});function ju(e){let t,n=async()=>{document.visibilityState!=="visible"||e.aborted||(t=await navigator.wakeLock?.
request("screen").catch(()=>{}),e.aborted&&t?.release())};document.addEventListener("visibilitychange",n,{signal:e}),
e.addEventListener("abort",()=>t?.release()),n()}var Sl,Tl=f(()=>{y();Sl=()=>"wakeLock"in navigator?p:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function Yn(e){let{body:t}=await M("GET","/press-screens",{signal:e,timeout:3e3});return t.press_screens}
async function Gu(e){let{body:t}=await M("PUT",`/press-screens/${encodeURIComponent(e)}`,{body:{code:null,step:0}});
return t}async function Vu(e){await M("DELETE",`/press-screens/${encodeURIComponent(e)}`)}function Ml(){let e=Ku(
Hu);return typeof e?.name=="string"?{code:null,step:0,etag:null,...e}:null}function Ku(e){try{return JSON.parse(
localStorage.getItem(e)??"null")}catch{return null}}function Yu(e,t){try{t===null?localStorage.removeItem(e):localStorage.
setItem(e,JSON.stringify(t))}catch{}}var Hu,Uu,Jn,Ht,Ol,qu,zu,mn=f(()=>{F();Hu="flangebook.bench.here",Uu="fla\
ngebook.bench.last";Jn=e=>/^\d/.test(e)?`press screen ${e}`:e,Ht=e=>/^\d/.test(e)?`Press screen ${e}`:e;Ol=e=>Yu(
Hu,e),qu=()=>String(Ku(Uu)??""),zu=e=>Yu(Uu,e)});function er(e,t,n,s){let o=`/press-screens/${encodeURIComponent(e)}`,a={answers:null,gone:!1,waits:!1,late:!1,
refused:""},r=null,l=t,c=0,d=!1,u;function h(v){let N={...a,waits:r!==null,...v},Q=Object.keys(N).every(Ee=>N[Ee]===
a[Ee]);a=N,!Q&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(u),d||s.aborted)return;d=!0;try{await(r&&
!b()?g():_()),T()}catch(N){s.aborted||E(N)}d=!1;let v=r!==null&&c===0;s.aborted||(u=setTimeout(m,v?0:Math.min(
my,hy*1.5**c)))}function b(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,h({late:!0}),!0)}async function g(){
let v=r;if(!v)return;let N=B().name?{by:B().name}:{};try{l=(await M("PUT",o,{body:{...v.place,...N},etag:v.whatever?
null:l,signal:s,timeout:Ju})).etag,r===v&&(r=null),n.sent?.(v.place,l??"",r!==null),h({refused:"",late:!1})}catch(Q){
if(!(Q instanceof O)||Q.status>=500)throw Q;r=null,l=null,h({refused:Q.status===412?"":Q.message}),await _()}}
async function _(){let v=r,{status:N,body:Q,etag:Ee}=await M("GET",o,{seen:l,signal:s,timeout:Ju});s.aborted||
r!==v||N===304||(l=Ee,h({late:!1}),n.heard(Q,Ee??""))}function T(){let v=a.answers===!1;c=0,h({answers:!0,gone:!1}),
en(!0),v&&U()}function E(v){c+=1,v instanceof O&&v.status===404?h({answers:!0,gone:!0}):v instanceof O&&v.status<
500?h({answers:!0,refused:v.message}):h({answers:!1}),v instanceof H?en(!1,v):v instanceof O||console.error(v)}
let P=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",P,{signal:s}),
addEventListener("online",P,{signal:s}),s.addEventListener("abort",()=>clearTimeout(u)),m(),{move(v,{whatever:N=!1}={}){
r={place:v,at:Date.now(),whatever:N},h({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var hy,my,Ju,Al=f(()=>{
F();se();ve();hy=1e3,my=4e3,Ju=3e3});function Xu(e,t){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=fy.
has(o.key)?e.next:gy.has(o.key)?e.back:null;!a||by(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<$y)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:t}),addEventListener("click",o=>o.detail>0&&wy(),{signal:t})}
function by({key:e,target:t,repeat:n}){let s=t;return s.matches("input, select, textarea")?!0:!n&&(e==="Enter"||
e===" ")&&s.matches("button, a, summary")}function wy(){let e=document.activeElement;e?.matches("button, summa\
ry, input[type=range]")&&e.blur()}var fy,gy,$y,Zu=f(()=>{fy=new Set(["ArrowRight","PageDown"," ","Enter"]),gy=
new Set(["ArrowLeft","PageUp","Backspace"]),$y=300});function tr(e,{pixels:t=_s(),tallest:n=t*.7,test:s="folded",mark:o=""}={}){let a=V*2.4,r=In(e.bounds,t-2*a,n-1.6*
a),[,l,c]=e.bounds,[d,u]=r([c,l]),h=m=>m.map(([b,g,_,T])=>`M${r([b,g])}L${r([_,T])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${vy(e)}
    width=${d+2*a}
    height=${u+1.6*a}
    viewBox="${-a} ${-V*.7} ${d+2*a} ${u+1.6*a}">
    ${e.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>x`<path class="marked-face" d="M${m.map(b=>r(b).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${h(e.lines.hidden)} />
    <path class="bend-edge" d=${h(e.lines.bend)} />
    <path class="edge" d=${h(e.lines.edge)} />
    ${e.dimensions.map(({name:m,from:b,to:g,mm:_})=>_y(r(b),r(g),m,j(_)))}
    ${e.faces.filter(({flat:m})=>m===1).map(({side:m,outline:b})=>yy(m,b.map(r),m===o))}
  </svg>`}function _y(e,t,n,s){let o=n==="length"?[-V*.5,V*.95]:n==="width"?[V*.5,V*.95]:[V*.9,0],[a,r]=[e,t].
map(([u,h])=>[u+o[0],h+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],d=Ke(s,V);return x`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-d/2} y=${c-V*.65} width=${d} height=${V*1.3}/>
    <text x=${l} y=${c} font-size=${V} text-anchor="middle" dominant-baseline="central">${s}</text>`}function yy(e,t,n){
let s=t.reduce((r,l)=>r+l[0],0)/t.length,o=t.reduce((r,l)=>r+l[1],0)/t.length,a=Ke(e,V);return x`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-V*.65}
      width=${a} height=${V*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${V}
      text-anchor="middle" dominant-baseline="central">${e}</text>`}function vy({length_mm:e,width_mm:t,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${Xn({length_mm:e,width_mm:t,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function Xn({length_mm:e,width_mm:t,height_mm:n}){
return $({text:[e,t,n].map(j).join(" × "),unit:w(0).unit})}function Qu(e,{pixels:t=_s(),tallest:n=t*.9,test:s="\
blank"}={}){let[o,a]=[j(e.length_mm),j(e.width_mm)],r=Ke(a,V)+V*1.8,l=In([0,0,e.length_mm,e.width_mm],t-r-12,n-
V*3),[c,d]=l([e.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${Sy(e)}
    width=${c+r+12}
    height=${d+V*3}
    viewBox="-6 -6 ${c+r+12} ${d+V*3}">
    <path class="sheet" d="M${e.outline.map(u=>l(u).join(" ")).join("L")}Z" />
    ${e.lines.map(u=>xy(u,l))}
    <path
      class="dimension"
      d="M0 ${d+V*1.3}H${c}M-4 ${d+V*1.3+4}l8 -8M${c-4} ${d+V*1.3+4}l8 -8" />
    ${ky(c/2,d+V*1.3,o)}
    <path
      class="dimension"
      d="M${c+V} 0V${d}M${c+V-4} 4l8 -8M${c+V-4} ${d+4}l8 -8" />
    <text x=${c+V*1.6} y=${d/2} font-size=${V} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function ky(e,t,n){let s=Ke(n,V);return x`<rect class="ground" x=${e-s/2} y=${t-V*.7} width=${s} height=${V*
1.4}/>
    <text x=${e} y=${t} font-size=${V} text-anchor="middle" dominant-baseline="central">${n}</text>`}function xy({
bend:e,place:t,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,d]=[l([n,s]),l([o,a])],u=.5+(t%2?-1:1)*.12*
Math.ceil((t-1)/1),[h,m]=[c[0]+(d[0]-c[0])*u,c[1]+(d[1]-c[1])*u];return x`<path class="fold ${r}" d="M${c}L${d}"/>
    <circle class="badge" cx=${h} cy=${m} r=${V*.68}/>
    <text class="badge-number" x=${h} y=${m} font-size=${V*.95} text-anchor="middle"
      dominant-baseline="central">${e}</text>`}function Sy(e){let t=e.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${j(e.length_mm)} by ${j(e.width_mm)}, inside of the box up. ${t.join("; ")}.`}var V,
Ue,Es=f(()=>{y();A();La();dn();ot();V=18;Ue=e=>!!e?.folded});function nr(e,t){return!Ue(e)||!t.side?p:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${tr(e.folded,{mark:t.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${ie(w(t.bend_length_mm))}</b> long.</li>
      ${eh("Punch",t.segments_mm?.punch)} ${eh("Die",t.segments_mm?.die)}
      ${t.clear_between_mm===null||t.clear_between_mm===void 0?p:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${ie(w(t.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${Ty(t.sides_near??[])}
    </ul>
  </section>`}function eh(e,t){if(!t?.length)return p;let n=t.reduce((o,a)=>o+a,0),s=t.length>1?`${t.map(j).join(
" + ")} = `:"";return i`<li class="pieces">${e}: <b>${s}${j(n)} ${w(0).unit}</b></li>`}function Ty(e){if(!e.length)
return p;let[t]=[...e].sort((o,a)=>o.distance_mm-a.distance_mm),n=$(S(t.included_angle_deg)),s=ie(w(Math.abs(t.
distance_mm)));return i`<li data-test="sides-near">
    ${t.distance_mm<0?i`<b>The finished ${t.side} side runs ${s} into the ${t.tool}</b>, at ${n}.`:i`The finished ${t.
side} side stays <b>${s}</b> from the ${t.tool}, nearest at ${n}.`}
  </li>`}var Ll=f(()=>{y();Es();ot();A()});function sh(e){return e.number===1?"first":e.turn_quarter?e.turn_over?"quarter-over":"quarter":e.turn_over&&e.
turn_end?"both":e.turn_over?"over":e.turn_end?"end":"same"}function Ns(e){let t=sh(e);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${ah}${rh[t]}</svg
    ><b>${oh[t]}.</b>`}function sr(e,t){let n=sh(e);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${ah}${rh[n]}</svg>
    <p>
      <b data-test="move">${oh[n]}.</b>
      <span data-test="face">${e.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${Ay(e,t)}
    </p>
  </div>`}function Co({gauged_end:e,gauged_side:t},n){return t?`${t} side`:`${e} end${n?` (flat ${e==="left"?1:
n})`:""}`}function Ay(e,t){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=e;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=Co(e,t);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var oh,ah,El,th,My,nh,Oy,rh,Ps=f(()=>{y();oh={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},ah=x`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,El=x`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
th=x`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,My=x`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
nh=x`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,Oy=x`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
rh={first:[My],same:[Oy],over:[El],end:[th],both:[El,th],quarter:[nh],"quarter-over":[El,nh]}});function Bo({frames:e},t){let n=e.findIndex(a=>a.share>=t);if(n<0)return e[e.length-1];if(n===0)return e[0];let[
s,o]=[e[n-1],e[n]];return Nl(s,o,(t-s.share)/(o.share-s.share))}function Nl(e,t,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(e.share,t.share),phase:t.phase,included_angle_deg:s(e.included_angle_deg,
t.included_angle_deg),punch_y_mm:s(e.punch_y_mm,t.punch_y_mm),left:o(e.left,t.left),right:o(e.right,t.right),inside_radius_mm:s(
e.inside_radius_mm,t.inside_radius_mm),half_arc_mm:s(e.half_arc_mm,t.half_arc_mm),gauge_x_mm:e.gauge_x_mm===null||
t.gauge_x_mm===null?null:s(e.gauge_x_mm,t.gauge_x_mm)}}function ih({frames:e}){let t=e.find(o=>o.punch_y_mm<=0)??
e[0],n=Math.min(...e.map(o=>o.punch_y_mm)),s=[...e].reverse().find(o=>o.phase==="bend")??e[e.length-1];return{
before:t.share,after:n<0?s.share:e[e.length-1].share}}function lh(e,t){let n=-t.punch_travel_mm,s=t.phase==="b\
end",o=c=>s?c.included_angle_deg:t.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?t.included_angle_deg:t.phase===
"approach"?n:-n,r=Ly(e.frames,t.phase);return{...Ey(r,o,a),punch_y_mm:n}}function Ly(e,t){let n=t==="withdrawa\
l"?["release","withdrawal"]:[t],s=e.findIndex(a=>n.includes(a.phase)),o=e.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:e}function Ey(e,t,n){for(let a=1;a<e.length;a+=1){let[r,l]=[t(e[a-1]),t(e[a])];if(n<=r&&
n>=l&&r>l)return Nl(e[a-1],e[a],(r-n)/(r-l))}if(n>t(e[0]))return e[0];let[s,o]=e.slice(-2);return o.phase==="b\
end"?Nl(s,o,(t(s)-n)/(t(s)-t(o))):o}function Ny({thickness_mm:e,left:t,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=Cs([[-a,-e/2],[-a,e/2]],s),[d,u]=Cs([[a,-e/2],[a,e/2]],o),h=([b,g])=>`${b} ${-g}`,
m=b=>b.map(g=>`L${h(g)}`).join("");return`M${h(l)}A${r+e} ${r+e} 0 0 0 ${h(d)}${m(Cs(n,o))}L${h(u)}A${r} ${r} \
0 0 1 ${h(c)}${m(Cs(t,s))}Z`}function ch(e,{phase:t,punch_y_mm:n}){let s=t==="putting in"||t==="approach",o=e.
frames.filter(h=>h.phase===(s?"putting in":"taking out"));if(!o.length||t==="bend"||t==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:h,right:m})=>[...Cs(e.left,h),
...Cs(e.right,m)]),[c,d]=[l.map(([h])=>h),l.map(([,h])=>h)];return{bounds:[Math.min(...c),Math.min(...d),Math.
max(...c),Math.max(...d,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function Cs(e,[t,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return e.map(([r,l])=>[t+o*r-a*l,n+a*r+o*l])}function or(e,t,n){let s=-n.
punch_y_mm,o=t.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:Ny(t,n),tools:[
e.before.ram,e.before.holder,e.before.punch].map(Ae).filter(Boolean),down:s,gauge:Ae(e.before.gauge),back:a}}var Pl=f(
()=>{dn()});function ar({clearance:e}){let t=e?.hits?.[0]??e?.nearest??null;return t&&t.distance_mm<=gh?t:null}function Zn(e){
let{drawing:t,motion:n}=e;if(!t||!n?.frames?.length)return null;let s=ar(e),{before:o,after:a}=ih(n),r=s?lh(n,
s):Bo(n,(o+a)/2),l=!!e.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:or(t,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Collision":s?"Closest":"Half way"}}function Bs(e){let{clearance:t}=e;
if(!t)return"Clearance was not checked at this step.";let n=ar(e);if(!n)return`Nothing comes within ${ie(w(gh,
{digits:0}))} of the part.`;let s=ie(w(Math.abs(n.distance_mm))),o=typeof t.needed_mm=="number"?`, ${ie(w(t.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${dh(n.tool)}, ${ph(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${dh(n.tool)}, ${ph(n)}${t.hits?.length?o:""}.`}function ph({phase:e,included_angle_deg:t,punch_travel_mm:n}){
let s=$(w(Math.max(0,-n),{digits:0}));return e==="approach"?`as the punch comes down, ${s} above the sheet`:e===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${$(S(t))}`}
function Cl({motion:e},t){let n=$(S(t.included_angle_deg));if(t.phase==="bend")return e.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(t.phase==="release")return`Releasing, ${n}`;if(t.phase==="taking out")
return`Taking it out${uh(e,t)}`;if(t.phase==="putting in")return`Putting it in${uh(e,t)}`;let s=$(w(Math.max(0,
t.punch_y_mm),{digits:0}));return t.phase==="withdrawal"?`Punch rising, ${s} up`:t.punch_y_mm>0?`Punch coming \
down, ${s} up`:"First touch, sheet flat"}function uh({frames:e},{phase:t,right:n}){let s=t==="putting in"?e.find(
a=>a.phase==="approach"):[...e].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??e[0]).
right[2]));return o?`, tilted by ${o}°`:", no tilt"}function Py({clearance:e}){let{way_in:t,way_out:n,rides_up:s,
clear:o}=e??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(t==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[mh(t,n,"slide"),mh(t,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${hh}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${t==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${hh}`}:null}function St(e,{short:t=!1}={}){let n=Py(e);return n?
t?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${fh(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${fh(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:p}var gh,dh,hh,mh,fh,Cy,By,Ut=f(()=>{y();Pl();A();gh=100;dh=e=>({gauge:"gauge finger",sheet:"part it\
self"})[e]??e;hh="Punch still, at its top. Fingers never between.";mh=(e,t,n)=>[e===n&&"in",t===n&&"out"].filter(
Boolean).join(" and ");fh=e=>e==="swing"?Cy:By(e!=="slide"),Cy=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,By=e=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${e?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function Rl({segments_mm:e,segments_total_mm:t}){if(!e?.length)return"";let n=e.map(o=>j(o)).join(" + "),s=w(0).
unit;return e.length>1?`${n} = ${j(t??0)} ${s}`:`${n} ${s}`}function Rs(e,t=0,n=[]){return e?.length?i`<ul class="tools" data-test="tools">
    ${e.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${Bl(s)}</span>
          <span class="more"
            >${[Rl(s),bh(s.steps,t),Il(s,n),Ry(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function bh(e,t){return!e?.
length||e.length===t?"":`step${e.length>1?"s":""} ${e.join(", ")}`}function Il({kind:e,code:t},n){let s=n.filter(
a=>e==="punch"&&a.punch===t),o=s.filter(a=>a.punch_turned);return o.length?`reversed${o.length<s.length?` for ${bh(
o.map(({number:a})=>a),0)}`:""}`:""}function Ry(e){return e==="good"||!e?"":e==="unknown"?"condition unknown":
e}function rr(e){let t=e.length_mm_low===e.length_mm_high||e.length_mm_low===void 0;return i`<div class="figures blank">
      ${kt("Blank length",w(e.length_mm,{digits:2}),{test:"blank-length",band:t?null:[w(e.length_mm_low,{digits:2}),
w(e.length_mm_high,{digits:2})]})}
      ${kt("Blank width",w(e.width_mm,e.outline?{digits:2}:{}),{test:"blank-width",band:e.width_mm_low===void 0||
e.width_mm_low===e.width_mm_high?null:[w(e.width_mm_low,{digits:2}),w(e.width_mm_high,{digits:2})]})}
      ${kt("Mass",ao(e.mass_kg),{test:"blank-mass"})}
    </div>
    ${e.rests_on?i`<p data-test="blank-rests-on">Blank by ${e.rests_on}.</p>`:p}
    ${e.lines?i`<p data-test="relief">${Wl(e)}</p>`:p}`}function Wl({relief:e,lines:t=[]}){let n=new Set(t.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!e?"":e.shape===
"none"?"Corners without relief.":`Corner reliefs ${e.shape}, ${$(w(e.size_mm,{digits:1}))} ${e.shape==="round"?
"across.":"a side."}`}function wh(e){let t=s=>w(s,{digits:2}).text,n=[["At",s=>t(s.at_mm)],["Angle",s=>$(S(s.included_angle_deg))],
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
              <th role="rowheader" scope="row">${s.bend} ${Iy(e,s)}${s.direction}</th>
              ${n.map(([o,a],r)=>i`<td
                    role="cell"
                    class="number"
                    data-head=${o}
                    data-test=${r===0?"line-at":p}>
                    ${a(s)}
                  </td>`)}
            </tr>`)}
      </tbody>
    </table>
  </div>`}function Iy({lines:e},{bend:t}){let n=e?.find(s=>s.bend===t)?.side;return n?`${n} `:""}function Dl(e,t=0){
let n=e.turn_over||e.turn_end||e.turn_quarter,s=e.gauged_against&&e.gauged_against!=="flat edge"?`, against th\
e ${e.gauged_against}`:"",o=e.gauged_end?`${Wy(Co(e,t))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!e.turn_quarter)}
            data-over=${String(e.turn_over)}
            data-end=${String(e.turn_end)}
            >${Ns(e)}</span
          > `:p}
    ${St(e,{short:!0})} ${o}${e.inside_face==="up"?"top":"bottom"} face
    up.${Dy(e)}
  </span>`}function Dy({hits:e}){if(!e)return p;let t=e.gauge_x_mm.map(n=>j(n)).join(", ");return i` <span data-test="hits"
    >${e.count} bumps, ${$(w(e.pitch_mm,{digits:2}))} apart, gauge X ${t}.</span
  >`}function Tt(e){let t=e.operation&&e.operation!=="bend"?e.operation:"bend",n=e.side?`Bend ${e.bend}, ${e.side}`:
`Bend ${e.bend}`;return t==="bend"?n:`${n}, ${t}`}function Fy(e,t,n){let s=e[`${t}_low`],o=e[`${t}_high`],a=s==
null||s===o?p:i`<small class="band">${n(s).text} to ${$(n(o))}</small>`;return i`${$(n(e[t]))}${a}`}function $h(e,t,n){
return nt(e,e)?e.first_hit?jy(e,t,n):e.limits?Fy(e,t,n):$(n(e[t])):$(n(null))}function jy(e,t,n){let s=t==="se\
t_angle_deg"?`first hit, ${hl(e.first_hit)}; then about `:"then about ";return i`${$(n(e[t]))}<small class="band"
      >${s}${$(n(e[`expected_${t}`]))}</small
    >`}function ir(e,{link:t}={}){let n=o=>w(o,{digits:2}),s=e.part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${e.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${t?i`<a href=${t(o.number)}>${o.number}. ${Tt(o)}</a>`:i`${o.number}. ${Tt(o)}`}
                <small>${$(S(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${$(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${$(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${$h(o,"set_angle_deg",S)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${$h(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${$(je(o))}<small class="band">expected ${$(un(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch reversed</span>`:
p}
              </td>
              <td role="cell" data-head="Sheet" class="long">${Dl(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var Bl,Wy,fn=f(()=>{y();fe();cn();A();ct();ot();ja();Gn();Ps();Ut();Bl=rn;Wy=e=>e[0].toUpperCase()+e.
slice(1)});function lr(e,t){return i`<header class="step-top">
    <a class="step-card" href="/c/${e.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${e.title||e.display_code}</span></a
    >
    ${Fl(e,t)}
  </header>`}function Je(e,t,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${e}${t.unit&&t.unit!=="°"?i` <span class="unit">${t.unit}</span>`:p}</span
    >
    <span class="value" data-test="${n}-value">${t.text}${t.unit==="°"?"°":p}</span>
  </div>`}var Fl,gn=f(()=>{y();fn();Fl=(e,t)=>i`<h1>
    <span data-test="step-number">Step ${t.number} of ${e.plan.steps.length}</span>
    <small
      >${Tt(t)}
      ${t.direction}${t.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch reversed</b>`:
p}</small
    >
  </h1>`});function _h(e,t,n,s,o){let a=Zn(e),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?Bo(e.motion,l):null,
d=a&&r==="during"?a.shown:null,u=$(w(e.gauge_x_mm)),h=(m,b,g,_)=>i`<button
      type="button"
      class="button"
      aria-pressed=${g?"true":"false"}
      data-test=${_}
      @click=${()=>{Object.assign(n,b,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${xt(e.drawing,{pose:r==="between"?"during":r,close:n.close,opening:e.v_opening_mm,gauge:u,
angle:t,moment:d??(c&&or(e.drawing,e.motion,c)),near:a?.near??null,mark:r==="during",room:c&&ch(e.motion,c),words:`${Tt(
e)}, ${Uy(e,r)}. Gauge at ${u}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${Gy(e,r,c)}
          </p>`:p}
    <div class="toggles">
      ${h("Before",{at:"before"},r==="before","before")}
      ${a?h(a.name,{at:"during"},r==="during","during"):p}
      ${h("After",{at:"after"},r==="after","after")}
      ${h(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?Vy(e,l,n,s,o):p}`}function Uy(e,t){return t==="before"?"the sheet on the die before the bend":t==="aft\
er"?"at the bottom of the stroke":t==="during"?Bs(e):"on its way"}function Gy(e,t,n){return n?Cl(e,n):Bs(e)}function Vy(e,t,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&qy(t>=1?0:t,n,s,o),s()};return i`<div class="motion">
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
      aria-valuetext=${Cl(e,Bo(e.motion,t))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function qy(e,t,n,s){let o=performance.now(),a=r=>{!t.playing||s.aborted||(t.share=Math.min(1,e+Math.
max(0,r-o)/Hy),t.playing=t.share<1,n(),t.playing&&requestAnimationFrame(a))};Object.assign(t,{at:"between",share:e}),
requestAnimationFrame(a)}var Hy,Ro,cr=f(()=>{y();Pl();Ao();A();fn();Ut();Hy=7e3,Ro=()=>({at:"before",share:0,close:!1,
playing:!1})});function yh(e,{waits:t,correction:n}){if(!t&&!n?.to_check?.length){let o=De({...n?.said,words:n?.words});return i`<p data-test="no-setting">${o||
"No new setting comes from this one."}</p>`}let s=De({...n?.said,words:n?.what})||`${zy(e)} Something else is \
wrong.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${k("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??Tp).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function zy(e){let t=zi(e),n="That is further off than the card’s table of corrections goes.";return t?
`${n} Tools and press end at ${$(S(t.sharpest_deg))} under load.`:n}function vh(e,t){return e.die?i`<p class="why-not-set" data-test="why-not-set">
    ${k("stop")} <b>No angle and depth.</b>
    ${t?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:p}var jl=f(()=>{y();cn();A();G()});function kh({stations:e=[]}){return e.length<2&&!e.some(t=>t.off_centre_level!=="ok")?p:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${e.map(t=>i`<li>
            <b>Station ${t.number}</b> ${t.punch}${t.turned?", reversed,":p} over ${t.die}:
            ${xh(t.centre_mm)}; step${t.steps.length>1?"s":""} ${t.steps.join(", ")}.
            ${t.off_centre_level==="ok"?p:i`${k(t.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function dr({stations:e=[]},t){let n=e.find(({steps:s})=>s.includes(t.number));return n&&e.length>1?
`Station ${n.number}, ${xh(n.centre_mm)}`:""}function xh(e){return Math.abs(e)<.5?"in the middle":`its middle ${$(
w(Math.abs(e),{digits:0}))} to the ${e>0?"right":"left"} of the press's middle`}var pr=f(()=>{y();A();G()});function ur(e,t){let n=t.checks.filter(l=>Te(l)!=="ok"),s=e.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=e.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+ke(l),{...l,sign:Te(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function hr(e,t,n,s,o){
if(!t.drawing)return i`<p class="state" data-test="no-drawing">
      ${t.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=lt(e,t),r={...t,gauge_x_mm:a.gauge_x_mm};return _h(r,Va(t,a),n,s,o)}function mr(e,t){let n=lt(
e,t);return n.set_angle_deg===null&&t.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${Je("Gauge X",w(n.gauge_x_mm),"gauge-x")}
      ${Je("Gauge R",w(t.gauge_r_mm),"gauge-r")}
      ${Je("Angle to set",S(n.set_angle_deg),"set-angle")}
      ${Je("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${Ms(n.firstHit,t.drawing?"The drawing shows the finished bend.":"")}
    ${n.set_angle_deg===null?vh(t,n.fromTrial):p} ${Ky(t)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-result" data-test="from-result">
            <b>Angle and depth from a first piece.</b> The plan said ${$(S(t.set_angle_deg))} and
            ${$(w(t.punch_depth_mm,{digits:2}))}.
          </p>`:p}
    ${t.gauge_draw_back_mm?i`<p class="retract" data-test="retract">
            <b>Retract the gauge ${$(w(t.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would run into it.
          </p>`:p}
    ${Yy(t)}`}function Ky(e){let t=Ha(e);return t===p?p:i`<p class="press-force" data-test="press-force">Allow for ${t}</p>`}
function Yy({hits:e}){return e?i`<div class="hits" data-test="hits">
    <b>${e.count} bumps</b>, ${$(S(e.angle_each_deg))} each. Move the gauge
    ${$(w(e.pitch_mm,{digits:2}))} each time:
    ${e.gauge_x_mm.map(t=>w(t).text).join(" · ")}
  </div>`:p}function Sh(e,t){if(!t.die)return p;let n=dr(e,t);return i`<dl class="step-tools" data-test="step-tools">
      <div>
        <dt>Punch</dt>
        <dd>
          <b>${t.punch}</b>
          ${t.punch_name}${t.punch_turned?i` <b class="punch-turned" data-test="tool-turned">reversed</b>`:p}
        </dd>
      </div>
      <div>
        <dt>Die</dt>
        <dd><b>${t.die}</b> ${t.die_name}</dd>
      </div>
      ${t.holder?i`<div>
              <dt>Holder</dt>
              <dd><b>${t.holder}</b></dd>
            </div>`:p}
      ${n?i`<div class="stands">
              <dt>Stands</dt>
              <dd data-test="step-station"><b>${n}</b></dd>
            </div>`:p}
      <div>
        <dt>Wanted</dt>
        <dd><b>${$(S(t.included_angle_deg))}</b> ${t.direction}</dd>
      </div>
    </dl>
    ${As(t)}`}var fr=f(()=>{y();We();A();ct();G();Gn();cr();zn();jl();gn();pr()});function Th(e,t,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=ur(e,t),c=l.filter(m=>Te(m)!=="note"),d=l.length>
Jy,u=d?c:l,h=t.number===e.plan.steps.length;return i`<article
    class="step press-screen-step"
    data-test="press-screen-step"
    data-code=${e.code}
    data-step=${t.number}
    data-revision=${e.revision}>
    <header class="step-top">
      ${gr(n,o)}
      <p class="press-screen-card" data-test="press-screen-card">${e.title||e.display_code}</p>
      ${Fl(e,t)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${Fe(r)}</div>`:p}
    <div class="step-body">
      <div class="step-way">${sr(t,e.part.flats_mm.length)}${St(t)}</div>
      <section class="step-set" aria-label="What to set">${mr(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${d?"many":""}" aria-label="What to watch">
        ${u.length?Fe(u):p}${nr(e.plan,t)}
      </section>
      <section class="step-with" aria-label="Tools">${Rs(Xy(e,t),0)}</section>
    </div>
    ${Oh({back:t.number>1,label:h?"Done":"Next",more:h?"":`step ${t.number+1}`},o)}
  </article>`}function Mh(e,{name:t,lines:n,acts:s}){let o=e.plan.steps.length;return i`<article
    class="step press-screen-step"
    data-test="press-screen-done"
    data-code=${e.code}
    data-step=${o+1}>
    <header class="step-top">
      ${gr(t,s)}
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
    ${Oh({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function Oh({back:e,label:t,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!e} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${t}${n?i` <small>${n}</small>`:p}
    </button>
  </nav>`}var Jy,Xy,gr,Hl=f(()=>{y();mn();Ll();G();Ps();fn();gn();Ut();fr();Jy=3;Xy=(e,t)=>e.plan.tools.filter(
n=>n.steps.includes(t.number)).map(n=>({...n,steps:[]}));gr=(e,t)=>i`<button
    type="button"
    class="button press-screen-name"
    data-test="press-screen-name"
    aria-label="${Ht(e)}, this display. Choose another"
    @click=${t.choose}>
    ${Ht(e)}
  </button>`});function Ah({names:e,silent:t,typed:n,wrong:s,here:o},a){return i`<div class="press-screen-choose" data-test="press-screen-choose">
    <h1>Which press screen is this display?</h1>
    ${t?i`<p class="press-screen-line" data-test="silent">
            The shop does not answer. It is asked again automatically.
          </p>`:p}
    ${e?.length?i`<div class="buttons">
            ${e.map(r=>i`<button
                  type="button"
                  class="button next"
                  data-test="take-press-screen"
                  @click=${()=>a.take(r)}>
                  ${Ht(r)}
                </button>`)}
          </div>`:p}
    ${e?i`<form class="press-screen-new" novalidate @submit=${be(a.make)}>
            ${L({name:"press-screen",label:e.length?"Or a new one":"Give it a name",value:n,wrong:s?[s]:[],change:a.
type,hint:"Like 1, or Big press. It is kept on this display."})}
            <button class="button" data-test="make-press-screen">Add it</button>
          </form>`:p}
    ${o?i`<button type="button" class="button" data-test="stay" @click=${()=>a.take(o)}>
            Stay at ${Jn(o)}
          </button>`:p}
    ${Sl()}
  </div>`}function Ph({answers:e,refused:t},n,s,o){return i`${e===!1?i`<p class="press-screen-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again automatically.`}
        </p>`:p}
  ${t?i`<p class="press-screen-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${t}
        </p>`:p}
  ${s?i`<p class="press-screen-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:p}`}var Lh,Eh,Nh,Ul,Ch=f(()=>{y();F();Tl();mn();ue();Hl();q();Lh=e=>Ul(e,"press-screen-idle",Ht(
e.name),i`<p>Open a card on a phone and choose this press screen.</p>
      ${Sl()}`),Eh=(e,t,n)=>Ul(n,"press-screen-no-card",I(e),t instanceof O?i`<p>${t.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes when the shop is back.
        </p>`),Nh=(e,t,n)=>Ul(n,"press-screen-no-step",`There is no step ${t}`,i`<p>
      ${e.title||e.display_code} has ${e.plan.steps.length} now. Choose the step on the phone.
    </p>`),Ul=({name:e,lines:t,acts:n},s,o,a)=>i`<article class="step press-screen-step" data-test=${s}>
    <header class="step-top">${gr(e,n)}</header>
    ${t}
    <div class="press-screen-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var Ih={};ne(Ih,{show:()=>Qy});function Qy(e){ju(e.signal);let t=Ml();t?Rh(e,t):Bh(e,"")}function Bh(e,t){e.title(
"Press screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:t},o;e.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&e.render(Ah(s,c)),r=u=>{n.abort();let h=Ml();Rh(e,h?.name===u?h:{name:u,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let u=s.typed.trim();if(s.names?.includes(u))return r(u);try{r((await Gu(u||" ")).name)}catch(h){
s.wrong=h instanceof O?h.errors.name?.[0]??h.message:String(h.message),a()}},type:u=>Object.assign(s,{typed:u})},
d=async()=>{try{Object.assign(s,{names:(await Yn(n.signal)).map(({name:u})=>u),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),e.ready(),o=setTimeout(d,Zy))};a(),d()}function Rh(e,t){let{name:n}=t,s=new AbortController,
{signal:o}=s;e.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:t.code,
step:t.step},l=null,c=null,d=0,u=Ro(),h=er(n,t.etag,{keepMs:1/0,heard:(v,N)=>{t={...t,etag:N},g({code:v.code,step:v.
step},!1)},sent:(v,N,Q)=>m({etag:N,unsent:Q}),changed:v=>v.gone?b(""):E()},o);function m(v){t={...t,...r,...v},
Ol(t)}function b(v){s.abort(),v||Ol(null),Bh(e,v)}function g(v,N){let Q=v.code!==r.code||v.step!==r.step;v.code!==
r.code&&(l=null),Q&&(u=Ro()),r=v,m({unsent:N}),N&&h.move(v),Q||!l&&v.code?_():E()}async function _(){a.abort(),
a=new AbortController;let v=a.signal;if(d=0,c=null,E(),!!r.code)try{await wt(r.code,N=>{v.aborted||(l=N,d=0,E())},
v)}catch(N){if(v.aborted||o.aborted)return;c=N,E()}}let T={next:()=>{if(!l)return;let v=l.plan.steps.length;g(
{code:l.code,step:r.step>v?1:r.step+1},!0)},back:()=>l&&r.step>1&&g({code:l.code,step:r.step-1},!0),clear:()=>g(
{code:null,step:0},!0),choose:()=>b(n),newer:()=>_()};function E(){if(o.aborted)return;let v=Ph(h.standing(),!!l,
d,T.newer);e.title(l?`${l.title||l.code}, ${n}`:n),e.render(P({name:n,lines:v,acts:T})),(l||c||!r.code)&&e.ready()}
function P(v){if(!r.code)return Lh(v);if(!l)return c?Eh(r.code,c,v):Oe(`Opening ${I(r.code)}…`);let N=l.plan.
steps,Q=N[r.step-1];return Q?Th(l,Q,v,hr(l,Q,u,E,a.signal)):r.step===N.length+1?Mh(l,v):Nh(l,r.step,v)}Xu(T,o),
ye(E,o),document.addEventListener("sync",async v=>{if(!l)return c&&v.detail.reached?_():void 0;let N=await it(
l.code).catch(()=>{});!N||N.code!==l?.code||N.revision===l.revision||d===N.revision||(d=N.revision,E())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),t.unsent&&h.move(r),_()}var Zy,Wh=f(()=>{F();Tl();mn();Al();We();
ue();Zu();se();Be();Ch();Hl();cr();Re();fr();Zy=3e3});function J(e,t){let n=document.getElementById("notices"),s=()=>Zt(i``,n);Zt(i`<div class="notice" data-test="notice">
      <span>${e}</span>
      <button type="button" @click=${()=>{s(),t?.act()}}>${t?.label??"Close"}</button>
    </div>`,n),clearTimeout(Dh),t||(Dh=setTimeout(s,8e3))}var Dh,at=f(()=>{y()});function Vl(e){try{let t=JSON.parse(localStorage.getItem(Gl(e))??"null");return t&&Array.isArray(t.form?.flats)&&
Array.isArray(t.form?.bends)?t:null}catch{return null}}function $r(e,t){try{return localStorage.setItem(Gl(e),
JSON.stringify({...t,kept_at:new Date().toISOString()})),!0}catch{return!1}}function ql(e){try{localStorage.removeItem(
Gl(e))}catch{}}var Gl,Fh=f(()=>{Gl=e=>`flangebook.part.${e||"new"}`});var br,Mt,wr,_r,Io=f(()=>{It();qn();A();br=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
Mt=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),wr=e=>({angle:String(e.included_angle_deg),direction:e.
direction,radius:z(e.inside_radius_mm),kind:e.kind??"bend",gap:e.kind==="open_hem"?z(e.hem_gap_mm):"",...Eo(e)}),
_r=(e,t)=>({included_angle_deg:e.kind==="bend"?vt(e.angle):0,direction:e.direction,kind:e.kind,...e.radius.trim()&&
e.kind==="bend"?{inside_radius_mm:te(e.radius,t)}:{},...e.kind==="open_hem"?{hem_gap_mm:te(e.gap,t)}:{},...za(
e)})});function yr(e="tray"){let t=()=>e==="lips-in"?{flats:["",""],bends:[Mt(),Mt()]}:e==="lips-out"?{flats:["",""],
bends:[Mt(),{...Mt(),direction:"down"}]}:{flats:[""],bends:[Mt()]};return{length:"",width:"",there:e==="channe\
l"?["left","right"]:[...Qn],alike:!0,sides:{left:t(),right:t(),front:t(),back:t()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function Hh(e,t){let n=yr(t);for(let s of Qn){let o=e.sides[e.alike?
e.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...e,there:n.there,sides:n.
sides}}function Uh({there:e,sides:t,alike:n}){let s=(n?e.slice(0,1):e).map(r=>t[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return e.length===2&&e.includes("left")&&e.includes("right")&&s.every(o)?"channel":e.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function Gh(e){let t=Qn.
filter(o=>e.sides[o]),n=t.map(o=>JSON.stringify(e.sides[o])),s=yr().sides;for(let o of Qn){let a=e.sides[o]??e.
sides[t[0]];s[o]={flats:a.flats_mm.map(z),bends:a.bends.map(wr)}}return{length:z(e.length_mm),width:z(e.width_mm),
there:t,alike:n.every(o=>o===n[0]),sides:s,relief:e.relief,reliefSize:z(e.relief_mm),corner:e.corner,gap:z(e.gap_mm),
firstPair:e.first_pair??"left-right"}}function Kh(e,t){let n=s=>e.there.includes(s)?qh(e,s).flats.map((o,a)=>`${s}\
 ${Ds(a)}`):[];return zl.filter(s=>s.some(o=>e.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...t(s,
o),...n(o)])}function Yh(e,t){let n=o=>te(o,t),s=e.there.map(o=>{let a=qh(e,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>_r(r,t))}]});return{length_mm:n(e.length),width_mm:n(e.width),sides:Object.fromEntries(
s),relief:e.relief,corner:e.corner,...e.firstPair==="front-back"?{first_pair:e.firstPair}:{},...e.reliefSize.trim()&&
e.relief!=="none"?{relief_mm:n(e.reliefSize)}:{},...e.gap.trim()&&e.corner==="closed"?{gap_mm:n(e.gap)}:{}}}function Is(e){
return[["box.length_mm","length of the base",e.length],["box.width_mm","width of the base",e.width],...Kl(e).flatMap(
t=>ev(e,t))]}function ev({sides:e,alike:t},n){let s=t?"":`${n} `;return e[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=e[n].bends[a],d=`${s}${Ds(a)}`;return[[Ws(n,a),d,o],...r==="bend"?[[vr(n,a),`angle of the ${d}`,
l]]:[],...r==="open_hem"?[[`${$n(n,a)}.hem_gap_mm`,`gap of the ${d}`,c]]:[]]})}function Jh(e,t){if(!e.alike)return t;
let n=e.there[0];return Object.fromEntries(Object.entries(t).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function Xh(e){let[,t,n,s,o,a]=e.split(".");if(t!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[t]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${Ds(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function Zh(e,t,n,s){
let o=e.sides[t];return kr(e,t,{...o,flats:o.flats.with(n,s)})}function Fs(e,t,n,s){let o=e.sides[t];return kr(
e,t,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function Qh(e,t){let{flats:n,bends:s}=e.sides[t],o=s.map(
a=>({...a,kind:"bend"}));return kr(e,t,{flats:[...n,""],bends:[...o,Mt()]})}function em(e,t){let{flats:n,bends:s}=e.
sides[t];return kr(e,t,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function tm(e,t){let n=Qn.filter(o=>o===t!==
e.there.includes(o));if(!n.length)return e;let s=e.sides[e.there[0]];return{...e,there:n,sides:e.alike?{...e.sides,
[n[0]]:s}:e.sides}}function nm(e,t){let n=e.sides[e.there[0]];return{...e,alike:t,sides:t?e.sides:{left:n,right:n,
front:n,back:n}}}var zl,Qn,jh,Vh,qh,es,zh,Kl,Ws,$n,vr,Ds,kr,ts=f(()=>{Io();A();zl=[["left","right"],["front","\
back"]],Qn=zl.flat(),jh=6;Vh=({there:e})=>zl.every(t=>t.some(n=>e.includes(n))),qh=(e,t)=>e.sides[e.alike?e.there[0]:
t],es=e=>Kh(e,()=>[]),zh=e=>Kh(e,(t,n)=>[`base, ${t} to ${n}`]);Kl=({there:e,alike:t})=>t?e.slice(0,1):e;Ws=(e,t)=>`\
box.sides.${e}.flats_mm.${t}`,$n=(e,t)=>`box.sides.${e}.bends.${t}`,vr=(e,t)=>`${$n(e,t)}.included_angle_deg`,
Ds=e=>e===0?"wall":e===1?"lip":`flat ${e+1}`;kr=(e,t,n)=>({...e,sides:{...e.sides,[t]:n}})});function Jl(e){if(!e)return Wo();let{first:t,last:n,margin_mm:s}=e;return{first:t?String(t):"",last:n?String(n):
"",no_turn_over:!!e.no_turn_over,no_turn_end:!!e.no_turn_end,one_set_up:!!e.one_set_up,critical_flats:[...e.critical_flats??
[]],margin:s===void 0||s===Yl?"":z(s)}}function Xl(e,t){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=e??Wo(),d={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:te(
c,t)}:{}};return Object.keys(d).length?{wishes:d}:{}}function Zl(e,t){if(!e)return{};let n=t?-1:1,s=a=>!a||Number(
a)===t?"":Number(a)>t?String(Number(a)+n):a,o=e.critical_flats.filter(a=>!t||a!==t+1).map(a=>a>t?a+n:a);return{
wishes:{...e,first:s(e.first),last:s(e.last),critical_flats:o}}}function js(e){let{first:t,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=e??Wo();return[t&&`bend ${t} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var Yl,Wo,sm,Do=f(()=>{A();Yl=2,Wo=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});sm=e=>({...e,first:"",
last:"",critical_flats:[]})});function ec(e){return{unit:C(),title:"",note:"",metal:e,thickness:"",length:"",flats:["",""],bends:[Mt()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function xr({aside:e,...t},n){let s=om({...t,box:n?t.box??e??yr():
null});return n?s:{...s,...t.box?{aside:t.box}:{}}}function am(e,t){return e.box&&t&&String(es(e.box))===String(
es(t))&&e.box.firstPair===t.firstPair?{...e,box:t}:om({...e,box:t})}function Hs(e,t){return e.box?{...ec(e.metal),
title:e.title??"",note:t,thickness:z(e.thickness_mm),dimension:e.dimension??"din6935",order:e.order??null,wishes:Jl(
e.wishes),tools:Eo(e.tools),box:Gh(e.box)}:{unit:C(),title:e.title??"",note:t,metal:e.metal,thickness:z(e.thickness_mm),
length:z(e.bend_length_mm),flats:e.flats_mm.map(z),bends:e.bends.map(wr),dimension:e.dimension??"din6935",grain:e.
grain??"",order:e.order??null,wishes:Jl(e.wishes),tools:Eo(e.tools),holes:(e.holes??[]).map(n=>({flat:String(n.
flat),position:z(n.position_mm),diameter:z(n.diameter_mm)}))}}function Us(e){let t=n=>te(n,e.unit);return e.box?
{title:e.title.trim(),metal:e.metal,thickness_mm:t(e.thickness),dimension:e.dimension,box:Yh(e.box,e.unit),...e.
order?{order:e.order}:{},...Xl(e.wishes,e.unit),...fl(e.tools)}:{title:e.title.trim(),metal:e.metal,thickness_mm:t(
e.thickness),bend_length_mm:t(e.length),flats_mm:e.flats.map(t),bends:e.bends.map(n=>_r(n,e.unit)),dimension:e.
dimension,...e.grain?{grain:e.grain}:{},...e.order?{order:e.order}:{},...Xl(e.wishes,e.unit),...fl(e.tools),...e.
holes.length?{holes:e.holes.map(n=>({flat:vt(n.flat),position_mm:t(n.position),diameter_mm:t(n.diameter)}))}:{}}}
function Sr(e){let t=[["metal","metal",e.metal],["thickness_mm","thickness",e.thickness]];return(e.box?[...t,...Is(
e.box)]:[...t,["bend_length_mm","length",e.length],...e.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...e.
bends.flatMap((s,o)=>tv(s,o)),...e.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function tv({kind:e,angle:t,gap:n},s){return e==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,t]]:e==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function rm(e,t,n){return{...e,flats:e.flats.with(t,n)}}function ns(e,t,n){return{...e,bends:e.
bends.with(t,{...e.bends[t],...n})}}function nc(e,t){let n=e.bends.at(t==="left"?0:-1),s={...Mt(),direction:n?.
direction??"up"},o=t==="left"?e.bends:e.bends.map((r,l)=>l>0&&l===e.bends.length-1?{...r,kind:"bend"}:r);if(t===
"right")return{...e,bends:[...o,s],flats:[...e.flats,""],order:null};let a=e.holes.map(r=>({...r,flat:lm(r.flat,
1,1)}));return{...e,bends:[s,...o],flats:["",...e.flats],order:null,holes:a,...Zl(e.wishes,0)}}function im(e,t){
let n=t+2,s=e.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:lm(o.flat,n,-1)}));return{...e,bends:e.
bends.toSpliced(t,1),flats:e.flats.toSpliced(t+1,1),order:null,holes:s,...Zl(e.wishes,t+1)}}function lm(e,t,n){
let s=Number(e);return Number.isInteger(s)&&s>=t?String(s+n):e}function Tr(e){let t=e.split(/[^\d]+/).filter(Boolean).
map(Number);return t.length?t:null}function cm(e,t){return t===0||t===e.bends.length-1}var Ql,om,tc,bn=f(()=>{
Io();ts();It();qn();A();Do();Ql=40;om=e=>({...e,order:null,...e.wishes?{wishes:sm(e.wishes)}:{}});tc=e=>JSON.stringify(
{...Us(e),title:""})});async function sc(e,t){try{let{body:n}=await M("POST","/cards",{body:{...pm(e),code:t},timeout:dm});return{saved:await mm(
n)}}catch(n){if(n instanceof O&&n.status===409)return{taken:t};throw hm(n)}}async function um(e,t){let n={...pm(
e),reason:e.reason??""},s=nv(t,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await M("PUT",`/cards/${t.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:dm});return await xd().then(c=>co({...s,number:c},l)).catch(
()=>{}),{saved:await mm(r)}}catch(o){if(o instanceof O&&o.status===412)return{stale:await _t(t.code)};throw hm(
o)}}function nv(e,t){let n=JSON.stringify(t);e.saving?.wanted!==n&&(e.saving={id:qe(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=e;return{id:e.saving.id,number:0,kind:"edit",code:s,body:t,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function hm(e){return e instanceof O&&(e.errors=Object.fromEntries(Object.entries(e.
errors).map(([t,n])=>[t.replace(/^part\./,""),n]))),e}async function mm(e){return ft(e).catch(()=>e)}var dm,pm,
fm=f(()=>{F();We();Ce();bn();se();Be();dm=6e4,pm=e=>({part:Us(e),note:e.note,...B().name?{by:B().name}:{}})});function bm(e,{pixels:t=_s(),tallest:n=t*.45,test:s="blank"}={}){let o=j(e.width_mm),a=t-Ke(o,X)-X*2,r=a/e.length_mm,
l=e.width_mm*r>n,c=l?n:Math.max(e.width_mm*r,3),d=gm(e.bend_lines.map(g=>[g.at_mm*r,X*1.8+Ke(oc(g),X)]),a),u=gm(
e.bend_lines.map(g=>[g.at_mm*r,Ke(j(g.at_mm),X)]),a),h=$m(d)*Fo+X*.4,m=$m(u)*Fo+X*.4,b=h+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${sv(e)}
      viewBox="-8 -4 ${t+8} ${b+m+Fo*1.4}">
      ${l?av(a,h,b):x`<rect class="sheet" x="0" y=${h} width=${a} height=${c}/>`}
      ${e.bend_lines.map((g,_)=>ov(g,g.at_mm*r,d[_],u[_],h,b))}
      ${rv(a,b+m+X*.7,j(e.length_mm))}
      ${iv(a+X,h,b,o)}
    </svg>
    ${l?i`<p class="hint">Width ${$({text:o,unit:""})} is drawn short at the break.</p>`:p}`}function oc(e){let t=e.
included_angle_deg?ie(S(e.included_angle_deg)):"hem";return`${e.direction} ${t}`}function sv(e){let t=e.bend_lines.
map(n=>`bend ${n.bend} ${oc(n)} at ${j(n.at_mm)}`);return`Blank ${j(e.length_mm)} by ${j(e.width_mm)}. ${t.join(
"; ")}.`}function gm(e,t){let n=[];return e.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),Math.max(t-o/2,o/2)),
r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function ov(e,t,n,s,o,a){
let r=o-X*.4-Fo*(n.row+.5),l=a+X*.4+Fo*(s.row+.5),c=n.at-n.width/2;return x`<path class="fold ${e.direction}" d="M${t} ${o}V${a}"/>
    <path class="leader" d="M${t} ${o}V${r+X*.8}M${t} ${a}V${l-X*.8}"/>
    <rect class="ground" x=${c} y=${r-X*.75} width=${n.width} height=${X*1.5}/>
    <circle class="badge" cx=${c+X*.75} cy=${r} r=${X*.68}/>
    <text class="badge-number" x=${c+X*.75} y=${r} font-size=${X*.95} text-anchor="middle"
      dominant-baseline="central">${e.bend}</text>
    <text x=${c+X*1.7} y=${r} font-size=${X} dominant-baseline="central">${oc(e)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-X*.7} width=${s.width}
      height=${X*1.4}/>
    <text x=${s.at} y=${l} font-size=${X} text-anchor="middle"
      dominant-baseline="central">${j(e.at_mm)}</text>`}function av(e,t,n){let s=(t+n)/2,o=`L${e*.52} ${s+3}L${e*
.54} ${s-14}L${e*.58} ${s+8}L${e*.6} ${s-9}`,a=`L${e*.6} ${s-1}L${e*.58} ${s+16}L${e*.54} ${s-6}L${e*.52} ${s+
11}`;return x`<path class="sheet" d="M0 ${t}V${s+3}${o}L${e} ${s-9}V${t}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${e*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${e} ${s-1}V${n}Z"/>`}function rv(e,t,n){let s=Ke(n,X);return x`<path class="dimension"
      d="M0 ${t}H${e}M-4 ${t+4}L4 ${t-4}M${e-4} ${t+4}L${e+4} ${t-4}"/>
    <rect class="ground" x=${e/2-s/2} y=${t-X*.7} width=${s} height=${X*1.4}/>
    <text x=${e/2} y=${t} font-size=${X} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function iv(e,t,n,s){let o=a=>`M${e-4} ${a+4}L${e+4} ${a-4}`;return x`<path class="dimension" d="M${e} ${t}V${n}${o(
t)}${o(n)}"/>
    <text x=${e+X*.6} y=${(t+n)/2} font-size=${X}
      dominant-baseline="central">${s}</text>`}var X,Fo,$m,wm=f(()=>{y();A();La();ot();X=18,Fo=X*1.5;$m=e=>Math.
max(0,...e.map(t=>t.row+1))});function rt(e,{mark:t=0,...n}={}){if(!Ue(e))return Np(e,{mark:t,...n});let s=e.blank.lines.find(o=>o.bend===t)?.
side??"";return tr(e.folded,{...n,mark:s})}function ss(e,t={}){return e.outline?Qu(e,t):bm(e,t)}var wn=f(()=>{
Es();wm();ot()});var ut,Gs=f(()=>{y();ut=(...e)=>i`<thead>
    <tr>
      ${e.map(t=>i`<th scope="col">${t}</th>`)}
    </tr>
  </thead>`});function Vs({how:e,differences:t},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
    <h2>${k("caution")} Somebody else saved meanwhile</h2>
    <p>
      ${e==="others changed"?`Not this ${n}, but others in the list. Save again to keep both.`:p}
      ${e==="taken out"?`This ${n} was taken out of the list. Save to put it back as you typed it.`:p}
      ${e==="this changed"?`This ${n} too. What you typed is still in the boxes.`:p}
    </p>
    ${t.length?ac(t):p}
    <div class="buttons">
      <button type="button" class="button next" data-test="save-mine" @click=${s}>
        Save what I typed
      </button>
      ${e==="taken out"?p:i`<button type="button" class="button" data-test="take-theirs" @click=${o}>
              Take what is saved
            </button>`}
    </div>
  </section>`}function Mr(e,t,n){return n.filter(({name:s})=>(e[s]??"")!==(t[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:t[s]??"",mine:e[s]??""}))}var ac,qs=f(()=>{y();G();Gs();ac=e=>i`<div class="table">
    <table>
      ${ut("Where","Saved now","You typed")}
      <tbody>
        ${e.map(({label:t,theirs:n,mine:s})=>i`<tr>
              <td>${t}</td>
              <td>${n||"empty"}</td>
              <td>${s||"empty"}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`});function ym(e,t,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=Hs(e.part,e.note),r=[...new Set([...rc(t),...rc(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=Mr(_m(t),_m(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
    <h2>${k("caution")} Somebody else saved this card meanwhile</h2>
    <p>
      ${e.updated_by?`${e.updated_by} saved`:"Somebody saved"} revision ${e.revision}. What
      you typed is still in the boxes, and both can be kept.
    </p>
    <div class="columns">
      ${l.length?ac(l):i`<p>
              The part is the same. Something else of the card changed: its results, its settings or whether
              it is archived.
            </p>`}
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
  </section>`}function rc(e){return[{label:"Title",value:e.title},{label:"Note",value:e.note},{label:"Metal",value:e.
metal},{label:"Thickness",value:e.thickness},{label:"Length",value:e.length},{label:"Measured",value:e.dimension},
{label:"Grain",value:e.grain},{label:"Order",value:e.order?.join(", ")??""},{label:"Limits on the order",value:js(
e.wishes)},{label:"Tools",value:Dt(e.tools)},...e.box?[...Is(e.box).map(([,t,n])=>({label:`${t[0].toUpperCase()}${t.
slice(1)}`,value:n})),{label:"Corners",value:`${e.box.corner}, relief ${e.box.relief} ${e.box.reliefSize} ${e.
box.gap}`.trim()},{label:"Sides",value:e.box.there.join(", ")}]:[],...(e.box?[]:e.flats).map((t,n)=>({label:`F\
lat ${n+1}`,value:t})),...(e.box?[]:e.bends).map((t,n)=>({label:`Bend ${n+1}`,value:[t.kind==="bend"?`${t.angle}\
°`:t.kind.replace("_"," "),t.direction,t.radius&&`radius ${t.radius}`,t.gap&&`gap ${t.gap}`,Dt(t)].filter(Boolean).
join(", ")})),...e.holes.map((t,n)=>({label:`Hole ${n+1}`,value:`flat ${t.flat}, at ${t.position}, size ${t.diameter}`}))]}
var _m,vm=f(()=>{y();wn();ts();bn();qn();Do();G();qs();_m=e=>Object.fromEntries(rc(e).map(({label:t,value:n})=>[
t,n]))});function xm(e,t,n){let{box:s,unit:o}=e,a=Jh(s,t),r=(l,c)=>n(am(e,l),c);return i`${mv(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${fv(s,r)}
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
        @change=${l=>r(nm(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${Kl(s).map(l=>gv(s,l,a,r))}
    ${ae(i`Corners <span class="fold-now">${uv(s)}</span>`,i`${_v(e,a,r)}${hv(s,r)}`,{test:"corners-fold"})}`}
function uv({corner:e,relief:t,reliefSize:n}){let s=t==="none"?"no relief":`${t} relief`;return`${e}, ${s}${t!==
"none"&&n?` ${n}`:""}`}function mv(e,t){let n=Uh(e);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${lv.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>t(Hh(e,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function fv(e,t){let n=s=>{let o=e.there.includes(s),a=o&&e.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>t(tm(e,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${Qn.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function gv(e,t,n,s){let{flats:o,bends:a}=e.sides[t],r=e.alike?"Each side":`${t[0].toUpperCase()}${t.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${t}">
    <legend>${r}</legend>
    ${wv(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${$v(e,t,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${t}"
        ?disabled=${o.length>=jh}
        @click=${()=>s(Qh(e,t),{focus:Ws(t,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${t}"
              @click=${()=>s(em(e,t),{focus:Ws(t,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:p}
    </div>
  </fieldset>`}function $v(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],[l,c]=[r[n],Sm(Ds(n))],d=`${$n(t,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${L({next:!0,name:Ws(t,n),label:c,value:a[n],wrong:[...W(s,Ws(t,n)),...W(s,$n(t,n))],change:u=>o(Zh(e,t,
n,u))})}
      ${l.kind==="bend"?L({next:!0,name:vr(t,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:W(s,
vr(t,n)),change:u=>o(Fs(e,t,n,{angle:u}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?L({next:!0,name:d,label:"Clear gap inside",value:l.gap,wrong:W(s,d),change:u=>o(Fs(e,
t,n,{gap:u}))}):p}
    ${Z({name:`${$n(t,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:pv,change:u=>o(Fs(e,t,n,{direction:u==="down"?"down":"up"}))})}
    ${bv(e,t,n,s,o)}`}function bv(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],l=`${$n(t,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?p:i`<details class="bend-more">
    <summary>
      <span class="unseen">${Sm(Ds(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":p}
    </summary>
    ${r[n].kind==="bend"?L({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:W(s,l),change:d=>o(Fs(e,t,n,{radius:d}))}):p}
    ${c?Y({name:`${$n(t,n)}.kind`,label:"Kind",value:r[n].kind,options:br,change:d=>o(Fs(e,t,n,{kind:d}))}):p}
  </details>`}function wv(e){let t=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of e.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[d,u]=n[n.length-1];n.push(
[d+t[o]*Math.cos(s),u-t[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>x`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function _v({box:e,unit:t},n,s){return i`<div class="corner-grid">
      ${vv(e)}
      <div>
        ${Z({name:"box.corner",label:"Walls at the corner",value:e.corner,options:dv,change:o=>s({...e,corner:o===
"open"?"open":"closed"})})}
        ${Z({name:"box.relief",label:"Relief",value:e.relief,options:cv,change:o=>s({...e,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${e.relief==="none"?p:L({next:!0,name:"box.relief_mm",label:e.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:t,hint:"Empty: by radius and thickness.",value:e.reliefSize,wrong:W(n,"box.relief_mm"),change:o=>s(
{...e,reliefSize:o})})}
      ${e.corner==="open"?p:L({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:t,hint:"Empty: by \
thickness.",value:e.gap,wrong:W(n,"box.gap_mm"),change:o=>s({...e,gap:o})})}
    </div>`}function vv({corner:e,relief:t}){let[n,s]=e==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${yv[t]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var lv,cv,dv,km,pv,hv,Sm,yv,Tm=f(()=>{y();Io();ts();bn();q();yt();pt();lv=[["tray","Tray","M10 14V44\
H86V14"],["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channe\
l","Two sides","M10 14V44H86V14M18 36H30M66 36H78"]],cv=[["round","Round"],["square","Square"],["none","None"]],
dv=[["closed","Closed"],["open","Open"]],km=[["left-right","Left and right"],["front-back","Front and back"]],
pv=[["up","↑ in"],["down","↓ out"]];hv=(e,t)=>Vh(e)?Z({name:"box.first_pair",label:"Bent first; the others\
 go between them",value:e.firstPair??km[0][0],options:km,change:n=>t({...e,firstPair:n==="front-back"?n:"left-\
right"})}):p;Sm=e=>e[0].toUpperCase()+e.slice(1);yv={none:"L50 40L30 40",square:"L58 20L58 48L30 48",round:"L5\
0 31A9 9 0 1 1 41 40L30 40"}});function Om(e,t){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${Mm[e.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(Mm).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${Se(e.dimension===n)}
              @change=${()=>t({...e,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?x`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:kv(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function kv(e){return e==="din6935"?x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function Am(e,t,n){let s=(o,a)=>n({...e,holes:e.holes.with(o,{...e.holes[o],...a})});return i`<details class="holes">
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
  </details>`}function Lm(e,t,n,s){let o=e.box?es(e.box):[],a=e.order??t??e.bends.map((l,c)=>c+1),r=(l,c)=>s({
...e,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${e.order?`${e.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${L({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:e.order?.
join(", ")??"",wrong:W(n,"order"),on:"change",change:l=>s({...e,order:Tr(l)})})}
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
          </button>`:p}
  </details>`}function Em(e,t,n){return Y({name:"grain",label:"Rolling direction against the bend lines",value:e.
grain,wrong:W(t,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...e,grain:s})})}var Mm,Nm=f(()=>{y();sn();ts();bn();q();pt();Mm={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:x`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:x`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:x`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var Pm,Cm=f(()=>{y();Gi();Vi();Pm=ya(class extends bs{constructor(){super(...arguments),this.key=p}render(e,t){
return this.key=e,t}update(e,[t,n]){return t!==this.key&&(va(e),this.key=t),n}})});function Bm(e,t,n){let s=e.bends.length>=Ql;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(nc(e,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${e.flats.map((o,a)=>i`${Sv(e,a,t,n)}${a<e.bends.length?Tv(e,a,t,n):p}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(nc(e,"right"),{focus:`flats_mm.${e.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${Ql} bends.</p>`:p}`}function Sv(e,t,n,s){let o=`flats_mm.${t}`;
return i`<li class="flat-row">
    ${L({next:!0,name:o,label:`Flat ${t+1}`,value:e.flats[t],wrong:W(n,o),change:a=>s(rm(e,t,a))})}
  </li>`}function Tv(e,t,n,s){let o=e.bends[t],a=`bends.${t}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([d])=>d===a||d===`${a}.kind`||d===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${t+1}>
    <span class="badge-mark" aria-hidden="true">${t+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:L({next:!0,name:l,label:`\
Bend ${t+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:W(n,l),change:d=>s(ns(e,t,{angle:d}))})}
      ${Z({name:`${a}.direction`,label:`Bend ${t+1} turns`,value:o.direction,options:xv,change:d=>s(ns(e,t,{direction:d===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(d=>i`<p class="wrong" data-test="wrong-${a}">${d}</p>`)}
    ${o.kind==="open_hem"?Mv(e,t,n,s):p}
    ${Pm(t,Ov(e,t,n,s))}
  </li>`}function Mv(e,t,n,s){let o=`bends.${t}.hem_gap_mm`;return L({next:!0,name:o,label:"Clear gap inside",
unit:e.unit,value:e.bends[t].gap,wrong:W(n,o),change:a=>s(ns(e,t,{gap:a}))})}function Ov(e,t,n,s){let o=e.bends[t],
a=`bends.${t}.inside_radius_mm`,r=[o.radius&&`Radius ${o.radius}`,Dt(o)].filter(Boolean).join(", ");return i`${r?
i`<p class="hint bend-wanted">${r}</p>`:p}
    <details class="bend-more">
      <summary>
        <span class="unseen">Bend ${t+1}: </span
        ><span class="bend-more-words">Radius, tools, kind, remove</span>
      </summary>
      ${o.kind==="bend"?L({next:!0,name:a,label:"Inside radius wanted",unit:e.unit,hint:"Empty: what the tools\
 give.",value:o.radius,wrong:W(n,a),change:l=>s(ns(e,t,{radius:l}))}):p}
      ${_l(`bends.${t}`,o,n,l=>s(ns(e,t,l)))}
      ${cm(e,t)||o.kind!=="bend"?Y({name:`bends.${t}.kind`,label:"Kind",value:o.kind,options:br,change:l=>s(ns(
e,t,{kind:l}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
      <button
        type="button"
        class="button wide"
        data-test="remove-bend-${t+1}"
        ?disabled=${e.bends.length<2}
        @click=${()=>s(im(e,t),{focus:`flats_mm.${t}`,undo:`Bend ${t+1} and flat ${t+2} are out.`})}>
        Remove bend ${t+1} and flat ${t+2}
      </button>
    </details>`}var xv,Rm=f(()=>{y();Cm();Io();bn();q();qn();zn();pt();xv=[["up","↑ up"],["down","↓ down"]]});function Wm(e,t,n){let s=e.wishes??Wo(),o=c=>n({...e,wishes:{...s,...c}}),a=e.box?es(e.box).map((c,d)=>[String(
d+1),`Bend ${d+1}: ${c}`]):e.bends.map((c,d)=>[String(d+1),`Bend ${d+1}`]),r=e.box?zh(e.box).map(c=>c[0].toUpperCase()+
c.slice(1)):e.flats.map((c,d)=>`Flat ${d+1}`),l=js(s);return i`<details class="order-limits" data-test="order-limits">
    <summary>
      <span>Limits on the order: <b>${l||"none"}</b></span>
    </summary>
    <div class="fields">
      ${Y({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:W(t,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${Y({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:W(t,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${Or("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${Or("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${Or("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,d)=>Or(`wishes.flat-${d+1}`,c,s.critical_flats.includes(d+1),u=>o({critical_flats:Av(s.critical_flats,
d+1,u)})))}
      </div>
      ${W(t,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${L({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:e.unit,hint:"Emp\
ty: the usual.",placeholder:z(Yl),value:s.margin,wrong:W(t,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function Or(e,t,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${e}
      data-test=${e}
      .checked=${Se(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${t}</span
    ></label
  >`}var ic,Im,Av,Dm=f(()=>{y();sn();ts();A();Do();q();pt();ic=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],Im={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};Av=(e,t,n)=>[...e.filter(s=>s!==t),...n?[t]:[]].sort((s,o)=>s-o)});function jm(e,{metals:t,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...t.some(({code:u})=>u===e.metal)?
[]:[[e.metal,e.metal?`${e.metal} (not in the shop)`:"Choose"]],...t.map(({code:u,name:h})=>[u,h])],{box:d}=e;return i`${Z(
{name:"shape",label:"What it is",value:d?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:u=>r(xr(e,u==="box"))})}
    ${L({next:!0,name:"title",label:"Name of the part",value:e.title,wrong:W(a,"title"),change:u=>r({...e,title:u})})}
    ${Y({name:"metal",label:"Metal",value:e.metal,options:c,wrong:W(a,"metal"),change:u=>r({...e,metal:u})})}
    <div class="fields">
      ${L({next:!0,name:"thickness_mm",label:"Thickness",unit:e.unit,placeholder:"3 or 16 ga",hint:s?Nv(s,e.thickness):
"",value:e.thickness,wrong:W(a,"thickness_mm"),change:u=>r({...e,thickness:u})})}
      ${d?p:L({next:!0,name:"bend_length_mm",label:"Bend length",unit:e.unit,value:e.length,wrong:W(a,"bend_le\
ngth_mm"),change:u=>r({...e,length:u})})}
    </div>
    ${d?i`${xm({...e,box:d},a,r)} `:i`<h2>Section, left to right <small>${e.unit}, °</small></h2>
            ${Bm(e,a,r)}`}
    ${ae(i`More, if it matters <span class="fold-now">${Lv(e)}</span>`,Ev(e,{crib:n,plan:s,errors:a,change:r}),
{test:"more-fold"})}
    ${o?L({next:!0,name:"reason",label:"Why this change, for the history",value:e.reason??"",wrong:W(a,"reason"),
change:u=>r({...e,reason:u})}):p}`}function Ev(e,{crib:t,plan:n,errors:s,change:o}){let a=n?.order?.sequence;return i`${Om(
e,o)}
    ${e.box?p:i`${Em(e,s,o)} ${Am(e,s,o)}`}
    ${e.box&&!n&&!e.order?p:Lm(e,a,s,o)}
    ${Wm(e,s,o)} ${gu(e,t,s,o)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${Se(e.note)}
        @input=${r=>o({...e,note:r.target.value})}></textarea>
    </div>`}function Nv({part:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":$(w(e.thickness_mm,{digits:2})),
t??""].filter(Boolean).join(", ")}function lc(e){return e.box?["title","metal","thickness_mm",...Is(e.box).map(
([t])=>t),"box.relief_mm","box.gap_mm","order",...ic,...wl,"note","reason"]:["title","metal","thickness_mm","b\
end_length_mm",...e.flats.map((t,n)=>`flats_mm.${n}`),...e.bends.flatMap((t,n)=>[`bends.${n}.included_angle_de\
g`,`bends.${n}.inside_radius_mm`,...t.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:[],`bends.${n}.die`,`bends.${n}\
.punch`]),...e.holes.flatMap((t,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,`holes.${n}.diameter_mm`]),"gr\
ain","order",...ic,...wl,"note","reason"]}function Ar(e){if(e.startsWith("box"))return Xh(e);let[t,n,s]=e.split(
".");return t==="tools"?n==="die"?"Die":"Punch":t==="wishes"?Im[n]??"Limits on the order":n===void 0?Fm[t]??t:
`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[t]??t} ${Number(n)+1}${s?`, ${Fm[s]??s}`:""}`}function Hm(e){let t=e.
target;if(e.key!=="Enter"||!(t instanceof HTMLInputElement))return;e.preventDefault();let n=[...t.form.querySelectorAll(
"input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(t)+1).find(o=>o.checkVisibility());s instanceof
HTMLElement&&s.focus()}var Lv,Fm,cc=f(()=>{y();sn();A();bn();ts();Tm();q();yt();Nm();zn();Rm();Do();qn();Dm();
pt();Lv=e=>[e.dimension!=="din6935"&&"how flats are measured",e.grain&&"rolling direction",e.holes.length>0&&"\
holes",e.order&&"order",js(e.wishes)&&"limits",Dt(e.tools)&&"tools",e.note&&"note"].filter(Boolean).join(", ");
Fm={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend length",grain:"Rolling direction",
order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"gap",flat:"flat",position_mm:"\
place",diameter_mm:"size",die:"die",punch:"punch"}});function Um({dimensions:e=[]}){let t=e.filter(({error_mm:a})=>a!==null);if(!t.length)return p;let{basis:n,basis_said:s}=t[0],
o=De({...s,words:n});return i`<h3>Expected tolerance of each flange</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${t.map(Cv)}
    </ul>
    ${o?i`<p class="hint" data-test="sizes-basis">${o}</p>`:p}`}function Cv({flat:e,flat_name:t=`flat ${e}`,wanted_mm:n,
error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${e}>
    <b>${t[0].toUpperCase()}${t.slice(1)}</b> ${$(w(n))}
    <b>± ${$(Pv(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:p}.
  </li>`}var Pv,Gm=f(()=>{y();A();G();Pv=e=>C()==="in"?{text:ee(e/Xe,3),unit:"in"}:w(e,{digits:2})});function Lr(e,t){if(!os(e))return p;let{order:n}=e,[s,o]=Bv(e),a=!!e.part?.order?.length,r=a?t.free():p,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${k(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${Vm(n.sequence)}
          </p>`:p}
    ${Rv(n.blocked??[])} ${Iv(n.remedies??[])} ${Wv(n.wishes)}
    ${r===p?p:i`<div class="buttons">${r}</div>`}
    ${Dv(n.alternatives,t)}
    ${ae("Where the tools stand, and flange tolerances",i`${kh(e)} ${Um(e)}`,{test:"stations-fold"})}
  </div>`}function Bv({order:e,checks:t}){let n=s=>t.some(o=>o.code===s);return e.proven?["ok","Clear on paper"]:
n("no-order")?["stop","No order"]:t.some(({level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the\
 way"]:n("order-not-found")?["caution","None found"]:n("clearance-not-checked")?["caution","Not checked"]:["ca\
ution","Not fully checked"]}function Vm(e){return i`<span class="run" role="img" aria-label="bends ${e.join(",\
 ")}"
    >${e.map(t=>i`<span class="badge-mark" aria-hidden="true">${t}</span>`)}</span
  >`}function Rv(e){return e.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${e.map(({bend:t,words:n})=>i`<li><b>Bend ${t}</b> ${n}</li>`)}
    </ul>`:p}function Iv(e){return e.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${e.map(t=>i`<li>${ke(t)}</li>`)}
    </ul>`:p}function Wv(e){return e.length?i`<h3>What each limit costs</h3>
    <ul class="order-list" data-test="limit-costs">
      ${e.map(t=>i`<li data-limit=${t.wish}>${De(t)}</li>`)}
    </ul>`:p}function Dv(e,{use:t}){return e.length?ae("Other orders that can be made",i`<ul class="order-others" data-test="other-orders">
      ${e.map(({sequence:n,words:s})=>i`<li>${Vm(n)} <span class="compared">${s}</span> ${t(n)}</li>`)}
    </ul>`,{test:"others-fold"}):p}var os,qm,zm,Er=f(()=>{y();G();yt();le();Gm();pr();os=({order:e})=>Array.isArray(
e?.wishes)&&Array.isArray(e?.alternatives);qm=e=>({use:t=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${t.join(", ")}"
      @click=${()=>e(t)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>e(
null)}>
      Let it choose
    </button>`}),zm=e=>({use:t=>R("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${t.join(", ")}"
        href="/part?from=${e}&order=${t.join("-")}"
        >Use this order</a
      >`),free:()=>R("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${e}&order=free"
        >Let it choose</a
      >`)})});function Km(e,{save:t,order:n}){return i`${qa(e.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>${rr(e.blank)}${ys()?ss(e.blank,{pixels:560}):p}</div>
        <div>
          ${ae("Bend lines and drawings",Fv(e.blank,t),{test:"bend-lines-fold"})}
        </div>
      </div>
    </section>
    ${os(e)?i`<section>
            <h2>Order</h2>
            ${Lr(e,n)}
          </section>`:p}
    <section>
      <h2>Fetch</h2>
      ${Rs(e.tools,e.steps.length,e.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${e.order&&!os(e)?i`<p data-test="order-words">${e.order.words}</p>`:p}
      <div class="step-drawings">${e.steps.map(s=>jv(s,e.part.thickness_mm))}</div>
      ${ae("All settings in a table",ir(e),{test:"steps-fold"})}
    </section>
    ${Os(e.checks)} ${hn(e.checks)}`}function Fv(e,t){return i`${ys()?p:ss(e,{pixels:innerWidth-24})} ${wh(e)}
    ${Hv(e.bend_lines)}
    <div class="buttons">
      <button type="button" class="button" data-test="blank-svg" @click=${()=>t("svg")}>
        Drawing as SVG
      </button>
      <button type="button" class="button" data-test="blank-dxf" @click=${()=>t("dxf")}>
        Drawing as DXF
      </button>
    </div>`}function jv(e,t){let n=nt(e,e)?e.set_angle_deg:null,s=[$(S(n)),`X ${w(e.gauge_x_mm,{digits:1}).text}`],
o=i`${e.number}. ${Tt(e)} <span class="step-set">${s.join(", ")}</span>`;return ae(o,Uv(e,t),{test:"step-fold"})}
function Hv(e){let t=e.filter(n=>n.opinions?.length);return t.length===0?p:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${t.length===1?`bend ${t[0].bend}`:`${t.length} bends`}
    </summary>
    ${t.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${$(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function Uv(e,t){if(!e.drawing)return p;let n=w(e.gauge_x_mm,{digits:2}),s=Va(e,{set_angle_deg:e.
set_angle_deg,firstHit:e.first_hit??null}),o=$(S(s)),a={close:!1,opening:e.v_opening_mm??8*t,gauge:n.text,angle:s,
near:Zn(e)?.near??null};return i`<figure class="step-drawing" data-step=${e.number}>
    <figcaption>
      ${Dl(e)} ${As(e)}
      <small data-test="origins">${Po(e.origin)}</small>
      ${e.motion?i`<span class="near-words ${e.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${Bs(e)}</span
            >`:p}
    </figcaption>
    <div class="poses">
      ${xt(e.drawing,{...a,pose:"before",words:`Step ${e.number} before the bend: the sheet on the die, gauge \
at ${$(n)}.`})}
      ${Gv(e,a)}
      ${xt(e.drawing,{...a,pose:"after",words:`Step ${e.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function Gv(e,t){let n=Zn(e);return n?xt(e.drawing,{...t,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${e.number}. ${Bs(e)}`}):p}var Ym=f(()=>{y();wn();Ao();cn();A();Gn();Lo();yt();Er();zn();Ya();Ut();fn()});function Jm({plan:e,error:t,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${e&&o?"stale":""} ${a===p?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${e?.section?rt(e,r?{pixels:innerWidth-56,tallest:200}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
p}
    ${a===p?i`<p class="picture-words" role="status" data-test="picture-words">
            ${qv(e,t,n,s)}
          </p>`:r?a:p}
  </div>`}function Vv(e){let[t]=Object.entries(e.errors);return t?$l(Ar(t[0]),t[1]):e.message}function qv(e,t,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,l])=>l).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(t instanceof H)return"The shop's server does not answer. What you type stays on this device.";if(t instanceof
O)return`Not right yet. ${Vv(t)}`;if(t)return String(t);if(!e)return n?"Working it out…":"";let o=e.blank.outline?
`Blank ${w(e.blank.length_mm,{digits:2}).text} × ${$(w(e.blank.width_mm,{digits:2}))}`:`Blank ${$(w(e.blank.length_mm,
{digits:2}))}`,[a]=e.checks.filter(({level:r})=>r==="stop");return i`<span>${[o,...Kv(e)].join(" · ")}</span>
    ${e.worst==="ok"?p:k(e.worst)}
    ${a?i`<span class="picture-stop">${ke(a)}</span>`:p}`}function Kv({steps:e,order:t}){if(!e.length)return[];
let n=["punch","die"].map(a=>[...new Set(e.map(r=>r[a]).filter(Boolean))]),s=e.reduce((a,r)=>(r.force_kn_high??
0)>(a.force_kn_high??0)?r:a),o=t?.sequence??[];return[n.every(a=>a.length)?n.map(a=>a.join(", ")).join(" on "):
"",s.force_kn_high?$(je(s)):"",o.length>1&&o.length<=zv?`order ${o.join(" ")}`:""].filter(Boolean)}var zv,Xm=f(
()=>{y();wn();F();A();G();ct();cc();pt();zv=8});function Jv({seconds:e,deadline_s:t,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
    <h2><span role="status">Looking for the order…</span></h2>
    <progress max=${t} value=${Math.min(e,t)} aria-label="Time used">
      ${Math.round(e)} s
    </progress>
    <dl>
      <div>
        <dt>Time, at most about ${Math.round(t)} s</dt>
        <dd>
          <b data-test="looking-seconds">${Math.floor(e)} s</b
          >${e<t?p:", ending"}
        </dd>
      </div>
      <div>
        <dt>Steps looked at</dt>
        <dd><b data-test="looking-at">${n.toLocaleString("en-GB")}</b></dd>
      </div>
      <div class="best">
        <dt>Best so far</dt>
        <dd data-test="looking-best">${s?i`<b>${Zv(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function Zv(e){return Xv.filter(([n])=>e[n]).map(([n,s,o])=>`${e[n]} ${e[n]===1?s:o}`).join(", ")||
"no turning"}function Qm({plan:e,progress:t,stopped:n},{cancel:s,again:o,back:a}){return t?Jv(t,s):n?Qv({again:o,
back:e?a:null}):p}function Qv({again:e,back:t}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
    <p role="status">
      <b>Cancelled: no plan for what is typed now.</b>
      ${t?"Below stands the plan from before your last change.":p}
    </p>
    <div class="buttons">
      <button type="button" class="button next" data-test="look-again" @click=${e}>Look again</button>
      ${t?i`<button type="button" class="button" data-test="part-before" @click=${t}>
              Back to the part before
            </button>`:p}
    </div>
  </section>`}var Yv,Zm,Xv,ek,tk,ef,tf=f(()=>{y();Yv=.6,Zm=({seconds:e})=>e>=Yv;Xv=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];ek="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",tk="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",ef=e=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${e?tk:ek}
  </div>`});var sf={};ne(sf,{show:()=>nk});async function nk(e){let t=$s(e.query.get("from")??"").slice(0,7),n=t?"cards.re\
vise":"cards.create";e.title(t?`Edit ${I(t)}`:"New part"),e.render(Oe(t?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([de("metals",e.signal),de("dies",e.signal),
de("punches",e.signal)]),r=t?"":$s(e.query.get("copy")??"").slice(0,7),l=r?Vl(""):null,c=r?await ok(r,e.signal):
await sk(t,s,e.signal);!t&&e.query.get("shape")==="box"&&(c.form=xr(c.form,!0));let d={...c,plan:null,planned:null,
progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,kept:!0},u=Wt(async(D,he)=>(await rd(
"/plan",Us(D),{signal:he,tell:h})).plan,({question:D,answer:he,error:ht=null})=>{he&&Object.assign(d,{plan:he,
planned:D}),Object.assign(d,{error:ht,busy:!1,progress:null,summary:d.summary&&ht!==null}),At()},e.signal,350);
function h(D){Zm(D)&&(d.progress=D,At())}function m(D=!1){let he=tc(d.form);if(!D&&he===d.key&&!d.error)return At();
Object.assign(d,{key:he,busy:Sr(d.form).length===0,progress:null,stopped:!1}),d.busy?u.ask(d.form,{now:D}):(u.
stop(),d.error=null),At()}let b={cancel(){u.stop(),Object.assign(d,{busy:!1,progress:null,stopped:!0,error:null}),
At()},again:()=>m(!0),back(){if(!d.planned)return;let D=d.form;Object.assign(d,{form:d.planned,key:tc(d.planned),
stopped:!1}),d.kept=$r(t,{form:d.form,base:d.base,newCode:d.newCode}),At(),J("The part of this plan is in the \
boxes again.",{label:"Put mine back",act:()=>g(D)})}};function g(D,{focus:he,undo:ht}={}){let Lt=d.form;d.form=
D,d.kept=$r(t,{form:D,base:d.base,newCode:d.newCode}),m(),he&&requestAnimationFrame(()=>No(he)),ht&&J(ht,{label:"\
Put it back",act:()=>g(Lt)})}function _(D){g({...d.form,order:D},{undo:D?`Order ${D.join(", ")} is yours now.`:
"The planner chooses the order."})}function T(D){history.replaceState(history.state,"",t?`/part?from=${t}`:"/p\
art"),_(Tr(D))}async function E(D){let[he]=Sr(d.form);if(he){d.summary=!0,At(),No(he[0]);return}Object.assign(
d,{saving:!0,clash:null,taken:""}),At();try{let mt=await D();if("saved"in mt)return P(mt.saved);"stale"in mt?d.
clash=mt.stale:d.taken=mt.taken}catch(mt){d.error=mt,d.summary=!0}d.saving=!1,At();let ht=d.error instanceof O?
d.error.errors:{},Lt=lc(d.form).find(mt=>Object.keys(ht).some(Fc=>Fc===mt||Fc.startsWith(`${mt}.`)));Lt&&No(Lt)}
function P(D){ql(t);let he=D.revision===d.base?.revision;J(he?"Nothing was changed, so nothing was saved.":`Ca\
rd ${I(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),$e(`/c/${D.code}`)}let v=()=>ge(n)&&E(()=>d.
base?um(d.form,d.base):sc(d.form,d.newCode)),N=()=>(d.newCode=ba(),E(()=>sc(d.form,d.newCode)));function Q(){ql(
t);let D=d.form;Object.assign(d,{restored:!1,plan:null,planned:null,clash:null,...nf(d.card,s)}),m(!0),J(t?"Th\
e card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>g(D)})}function Ee(D){let he=d.form;Object.
assign(d,{clash:null,base:dc(D)}),g(Hs(D.part,D.note)),J("What is saved is in the boxes now.",{label:"Put mine\
 back",act:()=>g(he)})}async function pi(D){try{await id(`/blank.${D}`,Us(d.form),`${d.form.title.trim()||"bla\
nk"}.${D}`)}catch(he){J(K(he))}}function At(){let D=d.error instanceof O?d.error.errors:{},he=Sr(d.form),ht=Qm(
d,b),Lt=!d.busy&&!d.stopped&&!he.length&&!d.error;e.render(i`<h1>
          ${t?i`${R(n,"Edit","Plan")} ${d.card?.title||"card"}
                  <small class="code">${I(t)}</small>`:R(n,"New part","Plan a part")}
        </h1>
        ${d.restored?i`<p class="restored" data-test="restored">
                What you typed before is back.
                <button type="button" class="link" data-test="start-over" @click=${Q}>
                  ${t?"Back to the saved card":"Start an empty part"}
                </button>
              </p>`:p}
        ${d.kept?p:i`<p class="panel">
                This browser keeps nothing on this device: a reload loses what you type.
              </p>`}
        ${d.clash?ym(d.clash,d.form,{saveMine:()=>{d.base=dc(d.clash),v()},takeTheirs:()=>Ee(d.clash),saveAsNew:N}):
p}
        ${d.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${d.taken}">card ${I(d.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${N}>
                  Save this as another card
                </button>
              </div>`:p}
        ${d.summary?mu(D,Ar,lc(d.form)):p}
        ${d.summary&&d.error instanceof H?i`<p class="panel" role="alert" data-test="not-saved">
                Not saved: the shop's server does not answer. What you typed stays on this device. Save again
                when it is back.
              </p>`:p}
        <div
          class="part-desk"
          data-test="part"
          data-busy=${String(d.busy)}
          aria-busy=${d.busy?"true":"false"}>
          <div class="part-edit">
            ${Jm(d,{open:he,stale:!Lt,waiting:ht})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${Hm}
              @submit=${be(v)}>
              ${jm(d.form,{metals:s,crib:{dies:o,punches:a},plan:Lt?d.plan:null,editing:!!t,errors:D,change:g})}
              ${R(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${d.saving}>
                    ${d.saving?"Saving…":t?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?p:ht}
            <div class="part-plan ${Lt||!d.plan?"":"stale"}" data-test="plan">
              ${d.plan&&!Lt&&!d.busy?i`<p class="stale-note">
                      ${d.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:p}
              ${d.plan?Km(d.plan,{save:pi,order:qm(_)}):ef(!!d.form.box)}
            </div>
          </div>
        </div>`),document.querySelectorAll(".part-form .wrong").forEach(bl),d.busy||e.ready()}m(!0),r&&(history.
replaceState(null,"","/part"),d.kept=$r("",{form:d.form,base:null,newCode:d.newCode}),l&&J("The copy took the \
place of a part you had begun.",{label:"Put it back",act:()=>g(l.form)}));let Dc=e.query.get("order");Dc&&T(Dc)}
function nf(e,t){return e?{form:Hs(e.part,e.note),base:dc(e)}:{form:ec(t[0]?.code??""),base:null}}async function sk(e,t,n){
let s=Vl(e),o=null;try{e&&(o=await _t(e,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.
newCode,card:o,restored:!0}:{...nf(o,t),newCode:ba(),card:o,restored:!1}}async function ok(e,t){let{part:n,note:s}=await _t(
e,t),o=`Copy of ${n.title||I(e)}`;return{form:Hs({...n,title:o},s),base:null,newCode:ba(),card:null,restored:!1}}
var dc,of=f(()=>{y();F();We();ue();fe();Mo();at();Fh();bn();fm();Me();Ie();ue();le();vm();cc();Er();Ym();Xm();
tf();Re();pt();q();dc=e=>({code:e.code,etag:e.etag,revision:e.revision,revision_id:e.revision_id})});async function af(e,t){if(!navigator.mediaDevices?.getUserMedia)throw new as(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(ak)}catch(o){throw new as(rk[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return e.aborted&&s(),e.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",t),n}function rf(e){return!!e.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function lf(e,t){await e.
getVideoTracks()[0].applyConstraints({advanced:[{torch:t}]})}var as,ak,rk,cf=f(()=>{as=class extends Error{constructor(t){
super(t),this.fault=t}},ak={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
rk={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function uf(){return Nr??=lk(),Nr.catch(()=>Nr=void 0),Nr}async function lk(){let e=await ck(),t=e??await df(),
n={own:!!e,async read(s){try{return await t.detect(s)}catch(o){if(t!==e)throw new zs(String(o));return t=await df(),
n.read(s)}}};return n}async function ck(){let e=globalThis.BarcodeDetector,t=await e?.getSupportedFormats().catch(
()=>[]);return e&&t?.includes("qr_code")?new e(pf):null}async function df(){try{let{BarcodeDetector:e,prepareZXingModule:t}=await import("/vendor/barcode-detector/ponyfill.js");
return await t({overrides:{locateFile:()=>ik},fireImmediately:!0}),new e(pf)}catch(e){throw new zs(String(e))}}
var zs,ik,pf,Nr,hf=f(()=>{zs=class extends Error{},ik="/vendor/zxing-wasm/zxing_reader.wasm",pf={formats:["qr_\
code"]}});function ff(e){let t=uk(e.trim()),n=t?dk.exec(t.pathname)?.[1]:pk.exec(e.trim())?.[0];if(!n)return{kind:"other",
code:"",words:mk(e,t)};let{code:s,whole:o,fault:a}=me(hk(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${pc(I(s))} is\
 not a card code. ${r}`}}function uk(e){if(!URL.canParse(e))return null;let t=new URL(e);return/^https?:$/.test(
t.protocol)?t:null}function hk(e){try{return decodeURIComponent(e)}catch{return e}}function mk(e,t){return t?`\
It leads to ${pc(t.host)}, not to a card.`:e.trim()?`It says “${pc(e.trim())}”, which is not a card code.`:
"It holds nothing that can be read."}var dk,pk,mf,pc,gf=f(()=>{ue();dk=/^\/c\/([^/]+)\/?$/i,pk=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
mf=40;pc=e=>e.length>mf?`${e.slice(0,mf)}…`:e});async function wf(e,t,n,s){for(;!s.aborted;){if(e.readyState>=e.HAVE_CURRENT_DATA){let o=await t.read(e);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,fk))}}function _f(e,t,n){let o=e.filter(l=>bf(l,t,t)).map(l=>({...ff(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if($f(a))return a[0];let r=a.
filter(l=>bf(l.mark,t,n));return r.length>0&&$f(r)?r[0]:"several"}function bf({boundingBox:e},t,n){let s=t.getBoundingClientRect(),
o=Math.max(s.width/t.videoWidth,s.height/t.videoHeight),a=s.x+s.width/2+(e.x+e.width/2-t.videoWidth/2)*o,r=s.y+
s.height/2+(e.y+e.height/2-t.videoHeight/2)*o,{left:l,right:c,top:d,bottom:u}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=d&&r<=u}var fk,$f,yf=f(()=>{gf();fk=60;$f=e=>e.every(t=>t.code===e[0].code)});function vf(e,t){let{title:n,words:s,again:o}=gk[e];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${e}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${t}>Try again</button>`:p}
  </section>`}var uc,gk,kf=f(()=>{y();uc=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,gk={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${uc}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${uc}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${uc}`,again:!0}}});var Sf={};ne(Sf,{show:()=>_k});async function _k(e){e.title("Scan a label");let t={fault:null,stream:null,lamp:null,
says:xf},n=Ea(),s=await Jt().catch(()=>[]),o=new AbortController,a=()=>e.render(xk(t,{again:d,lamp:u},()=>Na(n,
s,a,"Seven characters, capitals or not."))),r=h=>{Object.assign(t,h),a()},l=()=>{o.abort(),Object.assign(t,{stream:null,
lamp:null})},c=h=>{l(),h instanceof as?r({fault:h.fault}):h instanceof zs?r({fault:"no-decoder"}):e.render(nn(
h)),e.ready()};async function d(){l();let{signal:h}=o=new AbortController;r({fault:null,says:xf});try{let[m,b]=await Promise.
all([af(h,()=>c(new as("busy"))),uf()]);if(h.aborted)return;r({stream:m,lamp:rf(m)?!1:null,says:$k});let g=document.
querySelector(".scan-view video"),_=document.querySelector(".scan-frame");g.play().catch(()=>{}),e.ready();let T=yk(
E=>r({says:E}),h);await wf(g,b,E=>T(_f(E,g,_)),h)}catch(m){h.aborted||c(m)}}async function u(){if(!t.stream)return;
let h=!t.lamp;await lf(t.stream,h).then(()=>r({lamp:h}),()=>r({lamp:null}))}e.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():d(),{signal:e.signal}),d()}function yk(e,t){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>wk&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?e(bk):a.kind==="card"?await kk(a.code,e,t):e(vk(a)),s=performance.
now())}}function vk({kind:e,words:t}){return{kind:"wrong",title:e==="slip"?"Not a valid code":"Not a card’s la\
bel",words:`${t} Still looking.`}}async function kk(e,t,n){let s=I(e);t({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await Op(e,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?$e(`/c/${e}`,{replace:!0}):t(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is valid, but this shop has no such card: it is another shop’s label. S\
till looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server does no\
t answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wrong",title:`${s}\
 could not be opened`,words:o}))}function xk({fault:e,stream:t,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${e??
s.kind}>
    <h1>Scan a label</h1>
    ${e?vf(e,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${t} aria-label="What the camera sees"></video>
            ${Sk}
          </div>`}
    <div class="scan-beside">
      <p class="scan-says" data-kind=${e?"fault":s.kind} role="status" data-test="says">
        ${e?p:i`<b>${s.title}</b> <span>${s.words}</span>`}
      </p>
      ${n===null?p:i`<button
              class="button wide"
              type="button"
              data-test="lamp"
              aria-pressed=${n}
              @click=${o.lamp}>
              Light ${n?"is on":"is off"}
            </button>`}
      ${a()}
    </div>
  </div>`}var xf,$k,bk,wk,Sk,Tf=f(()=>{y();cf();We();ue();hf();yf();Ie();Be();Ji();kf();Re();xf={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},$k={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},bk={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},wk=2500;Sk=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function Mf(e,t,n){Lf(e,t,n),zu(e),we?.link.move({code:t,step:n},{whatever:!0})}function Pr(){we?.end.abort(),
we=null,Cr(),jo()}function Of(e,t){!we||we.at.code!==e||we.at.step===t||(we.at.step=t,Cr(),we.link.move({code:e,
step:t}),jo())}function Af(e){we&&(we.at.step=e,we.link.move({code:we.at.code,step:e},{whatever:!0}))}function Br(e,t){
document.addEventListener("bench",()=>e(Ho()),{signal:t})}function Lf(e,t,n,s=null){we?.end.abort();let o=new AbortController,
a={name:e,code:t,step:n,answers:null,late:!1,refused:""},r=er(e,s,{keepMs:Tk,heard:l=>{if(l.code!==a.code)return Pr();
a.step=l.step,Cr(),jo()},changed:({gone:l,answers:c,late:d,refused:u})=>{if(l)return Pr();Object.assign(a,{answers:c,
late:d,refused:u}),jo()}},o.signal);we={at:a,link:r,end:o},Cr(),jo()}function Cr(){try{we?sessionStorage.setItem(
hc,JSON.stringify({name:we.at.name,code:we.at.code,step:we.at.step})):sessionStorage.removeItem(hc)}catch{}}function Rr(){
if(!we)try{let{name:e,code:t,step:n}=JSON.parse(sessionStorage.getItem(hc)??"{}");e&&t&&Lf(e,t,n)}catch{}}var hc,
Tk,we,Ho,jo,Ir=f(()=>{Al();mn();hc="flangebook.on-bench",Tk=5e3,we=null,Ho=()=>we?{...we.at}:null;jo=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Le(e){let{fault:t}=me(e);return i`<div class="state" data-test="bad-code">
    <h1>${I(e)} is not a card</h1>
    ${t||"A card code has seven characters, digits and letters without I, L, O and U."} ${mc}
  </div>`}function rs(e,t){if(t instanceof H)return i`<div class="state" data-test="not-kept">
      <h1>${I(e)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${mc}
    </div>`;if(t instanceof O&&t.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${I(e)}</h1>
      The code is valid, but this shop has no card of that number. Look at the label again. ${mc}
    </div>`;throw t}async function Ot(e,t){let{code:n}=e.params;try{await wt(n,t,e.signal)}catch(s){e.signal.aborted||
_e(e,rs(n,s))}}function _e(e,t){e.title("No such card"),e.render(t),e.ready()}var mc,Gt=f(()=>{y();F();We();ue();
mc=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function Nf(e,{busy:t,fault:n,take:s,settings:o}){return e?.differs?i`<details class="freshness panel" data-test="fresh">
    <summary>
      <span><b>${e.words}</b> The card stays as it is. Show the difference</span>
    </summary>
    <div class="table">
      <table>
        ${ut("Where","What","On the card","Today")}
        <tbody>
          ${e.differences.map(a=>i`<tr>
                <th scope="row">${a.where}</th>
                <td>${a.what}</td>
                <td>${Ef(a,"saved")}</td>
                <td>${Ef(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&ge("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
p}
    <p class="wrong" role="alert">${n}</p>
    ${R("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${t} @click=${s}>
        ${t?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:p}function Ef(e,t){let n=t==="saved"?e.saved_value:e.fresh_value;return e.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(e.field)&&typeof n=="number"?$(zt(e.field??"",n)):e[t]}var Pf=f(()=>{y();Me();A();le();Gs()});function Uo(e){return e.refused?e.missing?"The shop was restored from a backup and does not know its card":`Re\
fused: ${e.refused}`:e.parked?"Saved here. The card was changed meanwhile: to resolve":e.late?`Saved here, not\
 yet in the shop. ${e.late}`:"Saved here, not yet in the shop. Waiting to be sent"}function Cf(e){let t=e.here??
[],n=e.proposals??[];if(!t.length&&!n.length)return p;let s=t.filter(o=>o.refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-resolve" data-test="to-resolve">
            <p>
              ${k("caution","To resolve")} This card was changed in two places at once. Both are kept.
            </p>
            ${R("cards.revise",i`<a class="button next" href="/c/${e.code}/resolve" data-test="resolve"
                >Resolve ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner decides which holds.</p>`)}
          </div>`:p}
    ${t.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${Mk(t.length,n.length>0)}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:p}
          </p>`:p}
  </section>`}function Mk(e,t){let n=e===1?"One change of this card waits":`${e} changes of this card wait`;return t?
`${n} until the other one is resolved.`:`${n} and ${e===1?"is sent automatically":"are sent automatically"}.`}
function Wr(e){return e==="shop"?"Saved in the shop.":e==="here"?"Saved here, not yet in the shop. It is sent \
automatically.":e==="settle"?`The card was changed meanwhile. Both are kept: ${ge("cards.revise")?"decide whic\
h holds.":"the owner decides which holds."}`:"Nothing was changed."}var Ks=f(()=>{y();Me();G();le()});async function Dr(e,t){try{Ys=(await Yn(e)).map(({name:n})=>n),e.aborted||t()}catch{}}function Fr(e,t,{draw:n,
start:s}){let o=Ho();if(o?.code===e)return Ok(o,t);if(!Ys.length)return p;let a=[Bf,qu()].find(r=>Ys.includes(
r))??Ys[0];return i`<section
    class="show-on-press-screen"
    aria-label="Press screen"
    data-test="show-on-press-screen">
    ${Ys.length>1?Y({name:"press-screen",label:"Press screen",value:a,options:Ys.map(r=>[r,r]),change:r=>{Bf=r,
n()}}):p}
    <button
      type="button"
      class="button"
      data-test="put-on-press-screen"
      @click=${()=>{Mf(a,e,t),n(),s?.()}}>
      Show on ${Jn(a)}
    </button>
  </section>`}function Ok(e,t){let n=Jn(e.name);return i`<section
    class="show-on-press-screen on"
    aria-label="Press screen"
    data-test="on-press-screen"
    data-press-screen-step=${e.step}>
    <p role="status">${Ak(e,n)}</p>
    ${e.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>Af(t)}>
            Show step ${t} there
          </button>`:p}
    <button type="button" class="button" data-test="off-press-screen" @click=${Pr}>
      Stop
    </button>
  </section>`}function Ak({answers:e,late:t,refused:n},s){return e===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:t?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var Ys,Bf,fc=f(()=>{y();mn();Ir();q();Ys=[],Bf=""});function jr(e){let{drawing:t}=e,n=Zn(e),s=ar(e),o=Lk(t,e.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${gc("before","before",Rf(t.before),t,o)}
    ${n?gc("during",s?dl(s).join(" "):"half way",n.shown,t,o,s):p}
    ${gc("after","after",Rf(t.after),t,o)}
  </div>`}function Lk(e,t,n){let[s,o,a,r]=st([e.before.sheet,e.after.sheet]),l=t??(a-s)/6,[c,d]=n?Un(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,e.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,d-l),high:Math.max(r+.3*l,2*l,d+l)}}function gc(e,t,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${e}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${Ae(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(d=>x`<path class="tool" d=${d}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?Ek(c,a-o):p}
    </svg>
    <figcaption data-test="small-${e}">${t}</figcaption>
  </figure>`}function Ek(e,t){if(!Ua(e,t))return x`<path class="ring" d=${vo([e.on_sheet,e.on_tool])}/>`;let[n,
s]=Un(e);return x`<circle class="ring" cx=${n} cy=${-s} r=${t*.05}/>`}var Rf,$c=f(()=>{y();Ut();pl();dn();Rf=({
sheet:e,ram:t,holder:n,punch:s,gauge:o})=>({sheet:Ae(e),tools:[t,n,s].map(Ae).filter(Boolean),down:0,gauge:Ae(
o),back:0})});function Hr(e,t,n,s){let o=[...e].sort((d,u)=>d[t]-u[t]);if(o.length<2||n<o[0][t]-.002||n>o[o.length-1][t]+.002)
return null;let a=o.findIndex(d=>d[t]>n),r=a<0?o.length-1:Math.max(a,1),[l,c]=[o[r-1],o[r]];return l[s]+(n-l[t])/
(c[t]-l[t])*(c[s]-l[s])}var bc=f(()=>{});function Vo(e){let t=e.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(t))return null;
let n=Number(t);return n>0&&n<180?n:null}function qo(e){let t={},n={},s=e.places==="one"?[["measured_deg",e.one]]:
[["left_deg",e.left],["middle_deg",e.middle],["right_deg",e.right]];for(let[o,a]of s){if(a.trim()==="")continue;
let r=Vo(a);r===null?n[o]=[e.places==="one"?If:Nk]:t[o]=r}return!Object.keys(t).length&&!Object.keys(n).length&&
(n[s[0][0]]=[If]),{angles:t,wrong:n}}function Wf(e,t,n){let s=Rk(t),[o,a]=["set_angle_deg","punch_depth_mm"].map(
c=>Hr(e.corrections??[],"measured_deg",s,c));if(o===null||a===null||n.set_angle_deg===null||Pk(e,s))return null;
let r=e,l={row:s,ends:s!==Ur(t),set_angle_deg:o+(n.set_angle_deg-r.set_angle_deg),punch_depth_mm:n.punch_depth_mm===
null?null:a+(n.punch_depth_mm-r.punch_depth_mm)};return nt(e,l)?l:null}function Pk({first_hit:e,included_angle_deg:t},n){
return!!(e&&n>Math.max(t+Ck,e.comes_out_deg_high))}function Ur(e){let t=Object.values(e);return t.reduce((n,s)=>n+
s,0)/t.length}function Rk(e){let t=(e.left_deg+e.right_deg)/2;return e.middle_deg-t>=Bk?t:Ur(e)}function Js(e){
return e?.correction?.set_angle_deg?e.correction:e?.table??null}function Vt(e){let t=[e.left_deg,e.middle_deg,
e.right_deg],s=t.some(o=>o!=null)?t.map(o=>$(S(o??null))).join(" / "):$(S(e.measured_deg));return e.flange_mm?
`${s}, flange ${Ik(e.flange_mm)}`:s}var Go,If,Nk,Ck,Bk,Ik,_n=f(()=>{cn();bc();A();Go={one:"",left:"",middle:"",
right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""};If="Type the angle between the f\
lats in degrees, such as 90.5. Square is 90.",Nk="Degrees, such as 90.5";Ck=5;Bk=.3;Ik=e=>typeof e=="string"?e:
$(w(e,{digits:2}))});function Xs(e,{waiting:t,step:n}={}){return i`<li class="row result" data-test=${t?"waiting-result":"result"} data-id=${e.
id}>
    <div>
      <span class="lead">${Vt(e)}</span>
      <span class="code">Step ${e.step}</span>
      <span class="more">
        ${t?i`<b class="waits">${Uo(t)}</b> · `:p}
        ${[xs(e),Ct(e),Wk(e),Dk(e.correction,n)].filter(Boolean).join(" · ")}
        ${e.note?i`<span class="result-note">${e.note}</span>`:p}
        ${t?.refused?i`<a href="/settings">Decide</a>`:p}
      </span>
    </div>
  </li>`}var Wk,Dk,wc=f(()=>{y();cn();_n();A();Ks();Ye();Wk=e=>e.set_angle_deg?`set at ${$(S(e.set_angle_deg))}`:
"",Dk=(e,t)=>e?.set_angle_deg&&t&&nt(t,e)?`new setting ${$(S(e.set_angle_deg))}`:""});var Df={};ne(Df,{show:()=>Fk});async function Fk(e){let{code:t}=e.params;if(!me(t).whole)return _e(e,Le(t));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{e.title(n.title||I(t)),e.render(jk(n,s,{take:r,archive:a,
draw:o}))},a=async()=>{try{({card:n}=await bt(n,{archived:!n.archived})),J(n.archived?"Archived. It stands und\
er Archived, below the cards.":"In use again."),U()}catch(c){J(K(c))}o()},r=async()=>{Object.assign(s,{busy:!0,
fault:""}),o();try{let c=B().name?{by:B().name}:{};n=await Rn(await Ma(n,{replan:!0,reason:"Planned afresh wit\
h today’s tools",id:qe(),...c})),s.fresh=null,U()}catch(c){s.fault=c instanceof O&&c.status===412?"The card \
was changed meanwhile. Open it again first.":K(c)}s.busy=!1,o()},l=async c=>{n=c,s.waiting=(await Sn(t).catch(
()=>[])).filter(d=>d.kind==="trial"),s.metal=ws((await an())?.metals,n.part.metal),o(),e.ready()};ye(()=>n&&o(),
e.signal),Br(()=>n&&o(),e.signal),document.addEventListener("sync",async()=>n&&l(await yo(t).catch(()=>{})??n),
{signal:e.signal});try{await wt(t,l,e.signal)}catch(c){e.signal.aborted||_e(e,rs(t,c));return}Rr(),Dr(e.signal,
o),s.fresh=await M("GET",`/cards/${t}/fresh`,{signal:e.signal}).then(({body:c})=>c,()=>null),o()}function jk(e,t,{
take:n,archive:s,draw:o}){let{plan:a}=e,r=a.checks.filter(d=>d.level!=="ok"),l=r.filter(d=>d.level==="stop"),c=r.
filter(d=>d.level!=="stop"&&!d.code.startsWith("general-"));return i`<article class="card" data-test="card" data-revision=${e.
revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${I(e.code)}</p>
        <h1 data-test="card-title">${e.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${Uk(e,t.metal)}</p>
        ${e.note?i`<p class="card-note" data-test="card-note">${e.note}</p>`:p}
        ${e.archived?i`<p class="card-note"><b>Archived.</b> This card is not in use any more.</p>`:p}
      </header>
      ${Cf(e)}
      ${l.length?i`<section class="card-stops" aria-label="Stop">${Fe(l)}</section>`:p}
      ${Nf(t.fresh,{...t,take:n,settings:e.settings.length})}
      ${Hk(e,l.length>0)}
      ${a.steps.length?Fr(e.code,1,{draw:o,start:()=>$e(`/c/${e.code}/step/1`)}):p}
      <section class="panel card-picture" aria-label="What it becomes">
        ${rt(a,{tallest:innerHeight*.26})}
      </section>
      ${Kk(e,s)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${Rs(a.tools,a.steps.length,a.steps)}${rr(a.blank)}${Ue(a)?ss(a.blank,{tallest:420}):p}
      </section>
      ${zk(e,t.waiting)}
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${os(a)?p:Gk(a.order)}${qk(e)}
        ${os(a)?ae("Order",Lr(a,zm(e.code)),{test:"order-fold"}):p}
      </section>
      ${c.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${ks(c)}
            </section>`:p}
      ${hn(a.checks)}
    </div>
  </article>`}function Hk({code:e,plan:t},n){return t.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${e}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${t.steps.length===1?"1 step":`${t.steps.length} steps`}</small>
    </a>
  </div>`:p}function Uk({part:e,plan:t},n){let s=t.thickness_gauge?` (${t.thickness_gauge})`:"",o=e.bends.length===
1?"1 bend":`${e.bends.length} bends`,a=Ue(t)?`box ${Xn(t.folded)}`:`${j(e.bend_length_mm)} ${C()} long`;return`${n}\
, ${j(e.thickness_mm)} ${C()}${s}, ${a}, ${o}`}function Vk(e,t){let{gauge_x_mm:n}=lt(e,t);return n===null?"no \
gauge":`gauge X ${$(w(n))}`}function qk(e){return i`<ol class="rows" data-test="step-list">
    ${e.plan.steps.map(t=>i`<li class="row">
          <a href="/c/${e.code}/step/${t.number}">
            <span class="lead">${t.number}. ${Tt(t)} ${t.direction}</span>
            <span class="code">${$(S(t.included_angle_deg))}</span>
            <span class="more">
              ${Vk(e,t)}
              ${t.turn_over||t.turn_end||t.turn_quarter?i`<span class="turn" data-test="turn">${Ns(t)}</span>`:
p}
            </span>
            ${St(t,{short:!0})}
            ${t.drawing?jr(t):p}
          </a>
        </li>`)}
  </ol>`}function zk(e,t){let n=[...e.trials].reverse().slice(0,3);return!n.length&&!t.length?i`<section class="card-results">
      <p class="soft" data-test="no-results">
        Nothing measured yet.${R("results.keep"," After a bend, type the result.")}
      </p>
    </section>`:i`<section class="panel card-results">
    <h2>Results</h2>
    <ul class="rows results" data-test="results">
      ${[...t].reverse().map(s=>Xs(s.body,{waiting:s}))}
      ${n.map(s=>Xs(s,{step:e.plan.steps[s.step-1]}))}
    </ul>
  </section>`}function Kk({code:e,archived:t},n){return i`<nav class="card-links" aria-label="This card">
    ${oe(`/c/${e}/note`,i`<a class="button" href="/c/${e}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${e}/history" data-test="history">History</a>
    <a class="button" href="/c/${e}/label" data-test="label">Label</a>
    <a class="button" href="/c/${e}/print" data-test="print">Print</a>
    ${R("cards.revise",i`<a class="button" href="/part?from=${e}" data-test="edit">Edit</a>`)}
    ${R("cards.create",i`<a class="button" href="/part?copy=${e}" data-test="copy">Copy</a>`)}
    ${R("cards.revise",i`<button type="button" class="button" data-test="archive" @click=${n}>
        ${t?"Use again":"Archive"}
      </button>`)}
  </nav>`}var Gk,Ff=f(()=>{y();F();We();ue();fe();ln();Ce();Ir();Ie();at();se();ve();A();Gt();G();Lo();yt();Pf();
Ks();Ps();le();Er();fn();fc();$c();Ut();wc();Es();wn();ot();Gk=e=>e?.words?i`<p class="order" data-test="order">${e.
words}</p>`:p});var Uf={};ne(Uf,{show:()=>Yk});async function Yk(e){let{code:t,step:n}=e.params;if(!me(t).whole)return _e(e,Le(
t));let s=Ro(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return e.render(Zk(o,n));e.title(`${o.title||t},\
 step ${r.number}`),e.render(ex(o,r,()=>hr(o,r,s,a,e.signal),Fr(o.code,r.number,{draw:a})))};ye(()=>o&&a(),e.signal),
Br(()=>o&&Jk(o,Number(n),a),e.signal),document.addEventListener("sync",()=>o&&Xk(o),{signal:e.signal}),addEventListener(
"keydown",r=>o&&Qk(r,o,Number(n)),{signal:e.signal}),Rr();try{await wt(t,r=>{!o&&r.plan.steps[Number(n)-1]&&Of(
t,Number(n)),o=r,a(),e.ready()},e.signal)}catch(r){e.signal.aborted||_e(e,rs(t,r));return}Dr(e.signal,()=>o&&a())}
function Jk(e,t,n){let s=Ho(),o=s?.code===e.code&&s?.step!==t&&e.plan.steps[(s?.step??0)-1];o?$e(`/c/${e.code}\
/step/${o.number}`,{replace:!0}):n()}async function Xk(e){let t=await yo(e.code).catch(()=>{});t&&t.revision!==
e.revision&&J(`This card is at revision ${t.revision} now.`,{label:"Show it",act:()=>Pt()})}function Qk(e,t,n){
e.altKey||e.ctrlKey||e.metaKey||e.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.test(e.target.tagName)||(e.key==="Arro\
wRight"&&$e(jf(t,n).href),e.key==="ArrowLeft"&&$e(Hf(t,n).href))}function jf(e,t){let n=e.plan.steps.at(-1);return t<
e.plan.steps.length?{href:`/c/${e.code}/step/${t+1}`,label:"Next",more:`step ${t+1}`}:n.set_angle_deg===null||
!Et(`/c/${e.code}/result/${t}`)?{href:`/c/${e.code}`,label:"Done: the card",more:""}:{href:`/c/${e.code}/resul\
t/${t}`,label:"Type the result",more:""}}function ex(e,t,n,s){let{stops:o,watch:a}=ur(e,t),r=t.number===e.plan.
steps.length,l=jf(e,t.number);return i`<article class="step" data-test="step">
    ${lr(e,t)} ${o.length?i`<div class="step-stop">${Fe(o)}</div>`:p}
    <div class="step-body">
      <div class="step-way">${sr(t,e.part.flats_mm.length)}${St(t)}</div>
      <section class="step-set" aria-label="What to set">${mr(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-press-screen">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?Fe(a):p}
      </section>
      <section class="step-with" aria-label="Tools">
        ${Sh(e.plan,t)} ${nr(e.plan,t)}
        ${Po(t.origin)?i`<p class="hint origins" data-test="origins">${Po(t.origin)}</p>`:p}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${Hf(e,t.number).href} data-test="back">Back</a>
      ${r||t.set_angle_deg===null?p:oe(`/c/${e.code}/result/${t.number}`,i`<a class="button" href="/c/${e.code}/result/${t.
number}" data-test="came-out"
                >Type the result</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:p}</a
      >
    </nav>
  </article>`}var Zk,Hf,Gf=f(()=>{y();We();ue();at();Ir();Ie();Me();se();ln();Gt();Ll();G();Ps();le();cr();Ya();
fc();gn();Ut();fr();Zk=(e,t)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${t}</strong>This card has ${e.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${e.code}">Open the card</a></span>
  </div>`;Hf=(e,t)=>({href:t>1?`/c/${e.code}/step/${t-1}`:`/c/${e.code}`,label:"Back"})});function Vf(e,t,n,s){let o=e.gauged_flange;if(!o)return null;let a=Hr(o.rows,"measured_deg",t,"flange_mm");if(a===
null)return null;let r=n-a;if(Math.abs(r)>o.most_error_mm)return{gauge_x_mm:null,error_mm:r,words:"That flange\
 is further off than a gauge error can be. Check it before you set a new X.",to_check:tx};let l=Math.abs(r)<=_c?
s:s-r,c=l>=o.x_low_mm&&l<=o.x_high_mm;return{gauge_x_mm:c?l:null,error_mm:r,words:c?"":"The gauge does not rea\
ch far enough to correct the flange.",to_check:[]}}var _c,tx,Zs,Gr=f(()=>{bc();_c=.05;tx=["Measure again, to t\
he face that the card's dimension goes to.","Check which flange was measured.","Read the gauge: did it stand a\
t the X of the card, and the sheet against it?"],Zs=({correction:e,gauge:t})=>e?.flange??t??null});function zf(e,t,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(d,u,h,m={})=>L({name:u,label:h,value:a[d],wrong:r[u],
change:b=>Object.assign(a,{[d]:b}),...m}),c=n.used??lt(e,t);return i`<form class="result-form" novalidate data-test="result-form" @submit=${be(
s)}>
    <div class="result-main">
      <h2>Result <small>Wanted ${$(S(t.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:p}
      <div class="result-angles ${a.places}">
        ${a.places==="one"?l("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[l("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),l("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),l("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${yc(a,o)}
      <div class="result-more">
        ${n.byDepth?l("set","punch_depth_mm","Depth that was set",{unit:C(),placeholder:c.punch_depth_mm===null?
"":w(c.punch_depth_mm,{digits:2}).text,hint:qf}):l("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:c.set_angle_deg===null?"":S(c.set_angle_deg).text,hint:qf})}
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
  </form>`}var qf,yc,vc=f(()=>{y();We();A();q();qf="Leave it if it was set as shown.",yc=(e,t)=>Z({name:"place\
s",label:"Measured at",value:e.places,options:[["one","One place"],["three","Left, middle, right"]],change:n=>{
Object.assign(e,{places:n}),t()}})});function Kf(e){let t=Zs(e);return t?t.gauge_x_mm===null?nx(t):i`<div class="set-figures" data-test="new-gauge">
      ${Je("Gauge X now",w(t.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${Yf(t.error_mm)}</p>`:p}function nx({error_mm:e,words:t,said:n,to_check:s}){
return s.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${k("stop")} <b>No new gauge X.</b> ${Yf(e)} No gauge is that far off.</p>
    <ol>
      ${s.map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${De({...n,words:t})}</p>`}function Yf(e){return e===null?"":Math.abs(e)<=
_c?"Flange as wanted: leave the gauge.":`Flange ${ie(w(Math.abs(e),{digits:2}))} too ${e>0?"long":"short"}.`}function Jf(e){
let t=e?.crown;return t?i`<div class="crown" data-test="crown">
    <p>${sx(t)}</p>
    ${t.shim?ox(t.shim):p}
  </div>`:p}function sx({middle_open_deg:e,shim:t,said:n,words:s}){return t?i`<b>The middle is ${ie(S(e))} more open than the ends.</b> First crown the middle
    by ${ie(w(t.middle_mm,{digits:2}))}, or shim the die:`:De({...n,words:s})}function ox({strip_mm:e,lengths_mm:t}){
let n=t.map(o=>w(o,{digits:0}).text).join(", "),s=w(t[0],{digits:0}).unit;return i`<p data-test="shim">
    ${t.length===1?"1 strip":`${t.length} strips`} of
    ${ie(w(e,{digits:2}))} under the middle of the die, one on the other, ${n} ${s}
    long. Nothing at the ends. Then set what stands above, which is for the ends; bend again and measure.
  </p>`}var Xf,Zf=f(()=>{y();Gr();A();G();gn();Xf=({thickness_mm:e})=>e?` Calculated for the ${ie(w(e,{digits:2}))}\
 that the sheet measures.`:""});function Qf(e,t,n,{again:s,keep:o}){let a=Js(n);return i`<div
    class="result-answer"
    data-test="result-answer"
    data-waits=${n.waits?"true":"false"}>
    <div class="result-main">
      <h2>${Vt(n.trial)} <small>wanted ${$(S(t.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${n.late||"the shop does not answer"}.
              It is sent automatically.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?rx(a):yh(t,n)}
      ${a?i`<p class="basis" data-test="basis">${lx(n)}</p>`:p}
      ${n.question?ax(e,n.question):p} ${Kf(n)}
      ${dx(n.correction)} ${Jf(n.correction)}
      ${a?R("cards.revise",hx(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
p}
    </div>
    <nav class="step-nav" aria-label="Result">
      <button class="button" data-test="again" @click=${s}>Measure again</button>
      <a class="button" href="/c/${e.code}/step/${t.number}" data-test="back">Step ${t.number}</a>
      ${a&&n.kept!=="kept"?R("cards.revise",kc(e,t,"button",", not kept"),kc(e,t)):kc(e,t)}
    </nav>
  </div>`}function kc({code:e,plan:t},{number:n},s="button next",o=""){let a=n===t.steps.length;return i`<a class=${s} href=${a?
`/c/${e}`:`/c/${e}/step/${n+1}`} data-test="next"
    >${a?`Done${o}: the card`:`Next${o}: step ${n+1}`}</a
  >`}function lx({correction:e,table:t}){return e?`${De({...e.said,words:e.what})}${cx(e)}${Xf(e)}`:`Worked ou\
t on this device, from the card’s own table at ${$(S(t?.row??null))}. The shop works it out again when the r\
esult arrives.${t?.ends?` ${ix}`:""}`}function dx(e){let t=e?.tilt_mm_per_m;return t==null?p:i`<p data-test="tilt">
    Left and right differ: about ${ux(Math.abs(t))},
    ${t>0?"the right end deeper":"the left end deeper"}.
  </p>`}function hx(e,t){return e.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${e.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${e.words}
    </p>`:i`<div class="buttons">
      <button class="button next wide" data-test="keep" ?disabled=${e.kept==="asking"} @click=${t}>
        ${e.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${e.words}</p>`}var ax,rx,ix,cx,px,ux,eg=f(()=>{y();Zf();
_n();A();G();jl();le();gn();ax=(e,t)=>i`<section class="panel urgent" data-test="question">
    <p>${k("unknown","Does not count")} ${t}</p>
    <p><a href="/shop/learned/${encodeURIComponent(e.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,rx=e=>i`<div class="set-figures" data-test="new-setting">
    ${Je("Angle now",S(e.set_angle_deg),"new-angle")}
    ${e.punch_depth_mm===null?p:Je("Depth now",w(e.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`,ix="The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it\
 first.";cx=({crown:e})=>e?.setting_for==="ends"?" This is for the ends; first correct the open middle, see be\
low.":"";px=3048,ux=e=>C()==="in"?`${ee(e*px/1e3/Xe,3)} in over ten feet`:`${ee(e,2)} mm in each metre`});async function tg(e,t,n,s){let o=Js(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await bt(e,{settings:[...e.settings.filter(r=>r.step!==t.number),fx(t,o,n.trial,gx(e,t,n))]},{reason:`\
Step ${t.number} set from a piece measured at ${Vt(n.trial)}`});Object.assign(e,a.card),Object.assign(n,{kept:"\
kept",where:a.where,words:mx(a)}),U()}catch(a){Object.assign(n,{kept:"no",words:K(a)})}s()}}function mx({where:e,
card:t}){return e==="shop"?`Revision ${t.revision} of the card has it. Steps show it from now on.`:e==="settle"?
"The card was changed meanwhile. Both are kept: decide on the card which holds.":"Steps show it on this device\
 from now on; it is sent to the shop automatically."}var fx,gx,ng=f(()=>{F();ln();Gr();_n();ve();fx=(e,t,n,s)=>({
step:e.number,set_angle_deg:t.set_angle_deg,punch_depth_mm:t.punch_depth_mm,...s===null?{}:{gauge_x_mm:s},trial_id:n.
id,reason:`Piece measured at ${Vt(n)}`}),gx=(e,t,n)=>Zs(n)?.gauge_x_mm??e.settings.find(s=>s.step===t.number)?.
gauge_x_mm??null});var sg={};ne(sg,{show:()=>bx});async function bx(e){let{code:t,step:n}=e.params;if(!me(t).whole)return _e(e,Le(
t));let s={typed:{...Go},used:null,wrong:{},general:"",sending:!1,result:null,byDepth:!1},o,a=async()=>{let l=$x.
includes((await an())?.press?.set_by);l===s.byDepth||s.typed.set||s.sending||s.result||(s.byDepth=l,o&&!e.signal.
aborted&&r())};document.addEventListener("sync",a,{signal:e.signal}),await a();let r=()=>{let l=o.plan.steps[Number(
n)-1];if(!l)return _e(e,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${t}">Open the card</a>
        </p>`);e.title(`${o.title||t}: result`),e.render(wx(o,l,s,r))};$t(()=>!s.result&&s.typed.one+s.typed.left+
s.typed.note?"Leave without saving what you measured?":null),await Ot(e,l=>{s.sending||s.result||(o=l,r(),e.ready())})}
function wx(e,t,n,s){let o=()=>_x(e,t,n,s),a=()=>{let l=yx(n);Object.assign(n,{typed:{...Go,places:n.typed.places,
lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),s()},r=()=>tg(e,t,n.result,s);return i`<article class="step result-screen" data-test="result-screen">
    ${lr(e,t)}
    <div class="result-body">
      ${n.result?Qf(e,t,n.result,{again:a,keep:r}):zf(e,t,n,{save:o,draw:s})}
      <aside class="result-aside" aria-label="Which bend">
        ${rt(e.plan,{mark:t.bend})}
      </aside>
    </div>
  </article>`}async function _x(e,t,n,s){if(n.sending)return;let{angles:o,wrong:a}=qo(n.typed),r=kx(e,t,n);if(r||
(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,{wrong:a,general:""}),
Object.keys(a).length||!r)return s(),dt(a);let l=xx(e,t,o,r,n.typed);n.sending=!0,s();try{let{late:c,...d}=await ga(
{id:l.id,kind:"trial",code:e.code,body:l}),u=d.answer,h=u?.correction??null;n.result={trial:l,correction:h,table:u||
r.set_angle_deg===null?null:Wf(t,o,r),gauge:u?null:vx(t,o,r,l.flange_mm),waits:!u,late:c??"",question:u?.question_said?
ke(u.question_said):"",kept:"no",words:""},u&&U()}catch(c){n.wrong=c instanceof O?c.errors:{},n.general=K(c)}n.
sending=!1,await gs(),s(),dt(n.wrong)}function yx({result:e,used:t}){let n=Js(e),s=e&&(Zs(e)?.gauge_x_mm??e.trial.
gauge_x_mm??null);return n?{...n,gauge_x_mm:s??t?.gauge_x_mm}:null}function vx(e,t,n,s){let o=od(s);return o===
null||typeof n.gauge_x_mm!="number"?null:Vf(e,Ur(t),o,n.gauge_x_mm)}function kx(e,t,n){let{set_angle_deg:s,punch_depth_mm:o,
gauge_x_mm:a}=n.used??lt(e,t),r={set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a};if(n.typed.set.trim()==="")return r;
if(n.byDepth)return{set_angle_deg:null,punch_depth_mm:te(n.typed.set),gauge_x_mm:a};let l=Vo(n.typed.set);return l===
null?null:{set_angle_deg:l,punch_depth_mm:null,gauge_x_mm:a}}function xx(e,t,n,s,o){let a={id:qe(),revision:e.
revision,step:t.number,bend:t.bend,...n,made_at:new Date().toISOString()};return s.set_angle_deg!==null&&(a.set_angle_deg=
s.set_angle_deg),s.punch_depth_mm!==null&&(a.punch_depth_mm=s.punch_depth_mm),typeof s.gauge_x_mm=="number"&&(a.
gauge_x_mm=s.gauge_x_mm),o.flange.trim()&&(a.flange_mm=te(o.flange)),o.radius.trim()&&(a.radius_mm=te(o.radius)),
o.thickness.trim()&&(a.thickness_mm=te(o.thickness)),o.lot.trim()&&(a.lot=o.lot.trim()),o.note.trim()&&(a.note=
o.note.trim()),B().name&&(a.by=B().name),a}var $x,og=f(()=>{y();F();We();ue();fe();Gr();_n();Ce();Ie();fs();se();
ve();A();Gt();G();q();gn();vc();eg();wn();ng();$x=["depth","stop"]});function rg(e,t,n,s){return e.map(o=>i`<fieldset class="resolve-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${zo(o,o.before)}</small></legend>
        ${ag(o,"shop","In the shop",t,s)} ${ag(o,"yours",n,t,s)}
      </fieldset>`)}function ag(e,t,n,s,o){return i`<label class="resolve-side" data-test=${t}>
    <span class="resolve-whose"
      ><input
        type="radio"
        name=${e.name}
        value=${t}
        .checked=${s[e.name]===t}
        @change=${()=>o(e.name,t)} />
      ${n}</span
    >
    <span class="resolve-value">${zo(e,e[t])}</span>
  </label>`}function zo({name:e},t){if(e==="archived")return t?"Archived":"In use";if(!e.startsWith("settings "))
return t||"nothing";if(!t)return"as planned";let n=t,s=n.punch_depth_mm===null||n.punch_depth_mm===void 0?"":`\
, depth ${$(w(n.punch_depth_mm,{digits:2}))}`;return`${$(S(n.set_angle_deg??null))}${s}`}var xc=f(()=>{y();A()});function ig(e,t){return e.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${e.map(n=>Sx(n,t))}
    </ol>
  </section>`:p}function Sx(e,t){let n=hs(e.changes,e.before,{...e.before,settings:e.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${e.settled_by?`Resolved by revision ${e.settled_by}`:oe(`/c/${t}/resolve`,i`<a href="/c/${t}/resolve">To resolve</a>`,
"To resolve")}
    </h3>
    <p class="more">${[xs(e),Ct(e)?`by ${Ct(e)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${zo(s,s.before)} to ${zo(s,s.yours)}</li>`)}
    </ul>
  </li>`}var lg=f(()=>{y();ms();le();xc();Ye()});function cg({title:e,note:t,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${e}</b>, ${$(w(n.thickness_mm,{digits:2}))},
      ${Ue(s)?Xn(s.folded):`${$(w(n.bend_length_mm))} long`}${t?i`. ${t}`:p}
    </p>
    ${rt(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${Tx(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:p}
    ${ir(s)} ${Fe(s.checks,{quiet:!0})}
  </div>`}function Tx(e,t){let n={set_angle_deg:t.set_angle_deg??null,punch_depth_mm:t.punch_depth_mm??null};if(!e||
!nt(e,n))return"had a setting beyond its tools";let s=$(w(n.punch_depth_mm,{digits:2}));return`set at ${$(S(n.
set_angle_deg))}, depth ${s}`}var dg=f(()=>{y();Es();wn();cn();A();G();fn()});var pg={};ne(pg,{show:()=>Mx});async function Mx(e){let{code:t}=e.params;if(!me(t).whole)return _e(e,Le(t));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>e.render(Ax(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=h=>M("GET",`/cards/${t}/${h}`,{signal:e.signal}),[d,u]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);s.revisions=d.body.revisions,s.proposals=u.body.proposals,s.silent=
!1}catch(c){if(!(c instanceof H))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=null,o(),
!!s.open){try{let{body:d}=await M("GET",`/cards/${t}/revisions/${c}`,{signal:e.signal});s.open===c&&(s.snapshot=
d)}catch(d){s.open=0,J(K(d))}o()}},l=async c=>{s.busy=!0,o();try{n=await Ox(n,c),J(`Revision ${c} is back, as \
revision ${n.revision}.`),s.open=0,U(),await a()}catch(d){J(d instanceof O&&d.status===412?"The card was chang\
ed meanwhile. Look at the history again.":K(d))}s.busy=!1,o()};ye(()=>n&&o(),e.signal);try{await wt(t,async c=>{
n=c,e.title(`${n.title||I(t)}: history`),s.waiting=(await Sn(t).catch(()=>[])).filter(d=>d.kind==="trial"),o()},
e.signal),await a(),o(),e.ready()}catch(c){e.signal.aborted||_e(e,rs(t,c))}}async function Ox(e,t){let n=await _t(
e.code);return Ma(n,{restore_revision:t,reason:`Revision ${t} brought back`,id:qe(),...B().name?{by:B().name}:
{}})}function Ax(e,t,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>History of ${e.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${Lx(e,t,n)}
      </section>
      ${ig(t.proposals,e.code)}
      <section class="panel">
        <h2>Results</h2>
        ${Nx(e,t)}
      </section>
    </div>
  </article>`}function Lx(e,t,n){return t.silent?i`<p data-test="silent">
      This device has revision ${e.revision}, of
      ${re(e.updated_at)}${e.updated_by?` by ${e.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:t.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${t.revisions.map(s=>Ex(s,e,t,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function Ex(e,t,n,{look:s,bringBack:o}){let a=e.revision===
t.revision,r=n.open===e.revision;return i`<li class="row revision" data-test="revision" data-revision=${e.revision}>
    <h3>
      Revision ${e.revision}${a?", as it is now":""}
      ${e.worst==="stop"||e.worst==="caution"?k(e.worst):p}
    </h3>
    <p class="more">${[re(e.at),Ct(e)].filter(Boolean).join(", by ")}</p>
    ${e.reason?i`<p data-test="reason">${e.reason}</p>`:p}
    ${e.changes.length?i`<ul class="changes" data-test="changes">
            ${e.changes.map(l=>i`<li>${l}</li>`)}
          </ul>`:p}
    <div class="buttons">
      <button
        class="button"
        aria-expanded=${r?"true":"false"}
        data-test="look"
        @click=${()=>s(e.revision)}>
        ${r?"Close":"Look at it"}
      </button>
      ${a?p:R("cards.revise",i`<button
                class="button"
                data-test="bring-back"
                ?disabled=${n.busy}
                @click=${()=>o(e.revision)}>
                Bring this one back
              </button>`)}
    </div>
    ${r?n.snapshot?cg(n.snapshot):i`<p>Fetching it…</p>`:p}
  </li>`}function Nx(e,t){return!e.trials.length&&!t.waiting.length?i`<p data-test="no-results">Nothing measured yet.</p>`:
i`<ol class="rows results" data-test="results">
      ${[...t.waiting].reverse().map(n=>Xs(n.body,{waiting:n}))}
      ${[...e.trials].reverse().map(n=>Xs(n,{step:e.plan.steps[n.step-1]}))}
    </ol>
    ${e.trials_total>e.trials.length?i`<p>The newest ${e.trials.length} of ${e.trials_total}.</p>`:p}`}var ug=f(
()=>{y();F();We();ue();at();Ce();se();ve();Gt();G();le();lg();dg();wc();Ye()});var hg={};ne(hg,{show:()=>Px});async function Px(e){let{code:t}=e.params;if(!me(t).whole)return _e(e,Le(t));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{e.title(`${n.title||I(t)}: not\
e`),e.render(Bx(n,s,{draw:o,save:()=>Cx(n,s,o,e.signal)}))};$t(()=>s.typed?"Leave without saving what you type\
d?":null),await Ot(e,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),
o(),e.ready())})}async function Cx(e,t,n,s){if(t.sending)return;let[o,a]=[t.title.trim(),t.note.replace(/\r\n/g,
`
`).trim()];if(Object.assign(t,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),dt(t.wrong);
t.sending=!0,n();try{let{where:r}=await bt(e,{title:o,note:a,archived:t.archived});if(t.typed=!1,J(Wr(r)),U(),
s.aborted)return;$e(r==="settle"&&Et(`/c/${e.code}/resolve`)?`/c/${e.code}/resolve`:`/c/${e.code}`)}catch(r){t.
wrong=r instanceof O?r.errors:{},t.general=K(r),t.sending=!1,n(),dt(t.wrong)}}function Bx(e,t,{draw:n,save:s}){
let o=a=>Object.assign(t,a,{typed:!0});return i`<form class="note-screen" novalidate data-test="note-screen" @submit=${be(
s)}>
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>${R("cards.revise","Note and title","Note")}</h1>
    </header>
    ${t.general?i`<p class="wrong" role="alert" data-test="wrong">${t.general}</p>`:p}
    ${Vn({name:"note",label:"Note",value:t.note,lines:5,wrong:t.wrong.note,change:a=>o({note:a})})}
    ${R("cards.revise",[L({name:"title",label:"Title",value:t.title,wrong:t.wrong.title,change:a=>o({title:a})}),
Z({name:"archived",label:"This card",value:t.archived?"away":"use",options:[["use","In use"],["away","Archived"]],
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
  </form>`}var mg=f(()=>{y();ue();F();ln();at();Ie();Me();ve();Gt();le();q();Ks()});var fg={};ne(fg,{show:()=>Rx});async function Rx(e){let{code:t}=e.params;if(!me(t).whole)return _e(e,Le(t));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{e.title(`${n.title||I(t)}: to resolve`),
e.render(Ix(n,s,c))},a=async d=>{if(!d||s.sending)return;let u=[n?.etag,s.proposal?.id].join();n=d,[s.proposal]=
n.proposals;let{changes:h={},before:m={}}=s.proposal??{};s.rows=hs(h,m,n),s.mine=!!(s.proposal&&await ta(s.proposal.
id).catch(()=>{})),u!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),e.ready()},r=async()=>a(await qi(t).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let d=await bt(n,ap(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Resolved"});J(Wr(d.where)),s.sending=!1,await r(),U()}catch(d){Object.assign(
s,{sending:!1,fault:K(d)}),o()}},choose:(d,u)=>{s.chosen[d]=u,o()},all:d=>{for(let{name:u}of s.rows)s.chosen[u]=
d;o()}};document.addEventListener("sync",r,{signal:e.signal}),await Ot(e,async d=>a(await qi(t).catch(()=>{})??
d))}function Ix(e,t,n){return i`<article class="resolve" data-test="resolve-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${I(e.code)}</a></p>
      <h1>${t.proposal?"Two changes met":"Nothing to resolve"} <small>${e.title}</small></h1>
    </header>
    ${t.proposal?Wx(e,t,n):i`<p data-test="resolved">
            Every change of this card is resolved. Both sides are in its
            <a href="/c/${e.code}/history">history</a>.
          </p>`}
  </article>`}function Wx(e,{proposal:t,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:u})=>!o[u]).
length,d=s?"Yours":t.by?`By ${t.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":t.by?`${t.by} changed`:"Somebody changed"} this card
      (${xs(t)}) while it was changed in the shop (revision ${e.revision},
      ${re(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}). Choose what holds. Both
      stay in the history.
    </p>
    ${e.proposals.length>1?i`<p><b>1 of ${e.proposals.length} to resolve.</b></p>`:p}
    ${n.length?i`<div class="buttons">
              <button type="button" class="button" data-test="all-shop" @click=${()=>l.all("shop")}>
                All as in the shop
              </button>
              <button type="button" class="button" data-test="all-yours" @click=${()=>l.all("yours")}>
                ${s?"All of yours":t.by?`All by ${t.by}`:"All of the other one"}
              </button>
            </div>
            ${rg(n,o,d,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
    ${r?i`<p class="wrong" role="alert" data-test="wrong">${r}</p>`:p}
    <div class="buttons resolve-keep">
      <button
        type="button"
        class="button next wide"
        data-test="keep"
        ?disabled=${a||c>0}
        @click=${l.keep}>
        ${a?"Saving…":"Keep this"}
        ${c?i`<small>${c===1?"1 still to choose":`${c} still to choose`}</small>`:p}
      </button>
    </div>`}var gg=f(()=>{y();F();ms();ue();ln();at();Ce();ve();Gt();Ks();xc();Ye()});function $g(e,t){let{plan:n}=e,s=Yx(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${Fx(e,t)}
    <figure class="strip ${Ue(n)?"of-box":""}">
      <figcaption>
        Blank ${Vr(n.blank.length_mm)} × ${Vr(n.blank.width_mm)},
        ${$(ao(n.blank.mass_kg))}.
        ${Ue(n)?Dx(n):"Bend lines from the left end."}
      </figcaption>
      ${ss(n.blank,Ue(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${jx(n)} ${Hx(e,s)} ${Xx(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function Dx({blank:e}){let t=({bend:a})=>{let r=e.bend_lines.find(l=>l.bend===a);return`${a} ${j(
r.at_mm)}`},n=a=>e.lines.filter(r=>a.includes(r.side)).map(t).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,Wl(e),"Inside up."].filter(
Boolean).join(" ")}function Fx(e,t){let{part:n,plan:s}=e;return i`<header>
    <div>
      <h2>${e.title}</h2>
      <p class="big-code" data-test="sheet-code">${e.display_code}</p>
      <p>
        <b
          >${t},
          ${Vr(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:p}</b
        >, ${Ue(s)?`box ${Xn(s.folded)}`:i`bend length ${Vr(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${e.revision}, ${Dn(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}.
      </p>
      ${e.note?i`<p class="note">${e.note}</p>`:p}
    </div>
    ${s.section?rt({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):p}
    <img
      class="qr"
      src="/api/v1/cards/${e.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function jx(e){let t=n=>{let s=Il(n,e.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:p};
return e.tools.length?i`<table class="fetch">
    ${ut("Fetch","Name","From","Pieces","Steps")}
    <tbody>
      ${e.tools.map(n=>i`<tr>
            <th scope="row">${n.kind} ${n.code}</th>
            <td>${n.name}${t(n)}</td>
            <td>${Bl(n)}</td>
            <td>${Rl(n)||"–"}</td>
            <td>${n.steps.length===e.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function Hx(e,t){let n=e.part.flats_mm.length;return i`<table class="paper-steps">
    ${ut("Step","In the tools","Gauge","Set","Sheet","Watch","Result")}
    <tbody>
      ${e.plan.steps.map(s=>Ux(e,s,t.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function Ux(e,t,n,s){let o=lt(e,t);return i`<tr data-test="sheet-step-${t.number}">
    <th scope="row">
      <span class="number">${t.number}</span> bend ${t.bend} ${t.side??""}
      ${t.direction}${t.operation&&t.operation!=="bend"?i`<br />${t.operation}`:p}
    </th>
    <td class="picture">
      ${Vx(e.plan,t)}${t.drawing?jr(t):"no drawing"}${qx(t,e.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(o.gauge_x_mm).text}</b><br />R
      <b>${w(t.gauge_r_mm).text}</b>${zx(t)}
    </td>
    <td class="figures-cell">
      ${Qx(t,o)}<br />
      <span class="small"
        >${Gx(t)}${e0(o)?i`<br />from a first piece`:p}</span
      >
    </td>
    <td class="move">
      ${Ns(t)}
      <span class="small"
        >${t.inside_face==="up"?"Top":"Bottom"} face
        up${t.gauged_end?`, ${Co(t,s)} to the gauge`:""}.</span
      >${St(t,{short:!0})}
    </td>
    <td>${Kx(n)}</td>
    <td class="pen">
      <span
        >${t.included_angle_deg?ie(S(t.included_angle_deg)):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${cu(o.firstHit)}</span>`:p}</span
      >
    </td>
  </tr>`}function Gx(e){let t=Ha(e);return t===p?p:i`<span data-test="sheet-force">allow for ${t}</span>`}function Vx(e,t){
let n=dr(e,t);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${t.punch}${t.punch_turned?" reversed":""} over ${t.die}
      </div>`:p}function qx({segments_mm:e,punch:t,die:n},s){return e?[["punch",t],["die",n]].map(([a,r])=>{let l=s.
find(d=>d.kind===a&&d.code===r)?.segments_mm??[],c=e[a]??[];return!c.length||c.length===l.length?p:i`<div class="pieces" data-test="own-pieces">
      ${a} ${c.map(j).join(" + ")} only
    </div>`}):p}function zx({hits:e}){return e?i`<br /><span class="small"
          >${e.count} bumps, ${w(e.pitch_mm,{digits:2}).text} apart</span
        >`:p}function Kx(e){return Sc.filter(t=>t!=="note").map(t=>({level:t,letters:e.filter(n=>n.level===t).
map(({letter:n})=>n)})).filter(({letters:t})=>t.length).map(({level:t,letters:n})=>i`<div class="mark">${k(t)} <b>${n.
join(" ")}</b></div>`)}function Yx(e){let t=new Map;for(let n of Sc)for(let s of e.filter(o=>Te(o)===n)){let o=`${n}\
 ${s.template} ${Wn(s)}`,a=t.get(o)??{letter:Jx(t.size),level:n,checks:[],steps:[]};a.checks.push(s),a.steps.push(
...s.steps??(s.step?[s.step]:[])),t.set(o,a)}return[...t.values()]}function Xx(e){return i`<div class="remarks" data-test="sheet-remarks">
    ${Sc.map(t=>{let n=e.filter(s=>s.level===t);return n.length?i`<section data-level=${t}>
        <h3>${k(t)}</h3>
        <ul>
          ${n.map(({letter:s,checks:o,steps:a})=>i`<li>
                <b>${s}</b>
                ${a.length?i`<b>Step ${a.join(", ")}.</b> `:p}${Zx(o)}
              </li>`)}
        </ul>
      </section>`:p})}
  </div>`}function Zx(e){return`${e[0].template} ${Wn(e[0])}`.replace(/\{(\w+)\}/g,(t,n)=>[...new Set(e.map(({
numbers:s})=>ie(zt(n,s[n]))))].join(" / ")).trim()}function Qx(e,{set_angle_deg:t,punch_depth_mm:n,firstHit:s}){
if(t===null&&e.die)return i`<b>no setting</b>`;let o=s?i` <span class="small" data-test="sheet-first">first hit</span>`:
p;return i`<b>${$(S(t))}</b>${o}<br />depth <b>${w(n,{digits:2}).text}</b>`}var Vr,Sc,Jx,e0,bg=f(()=>{y();Es();
wn();ot();$c();We();A();ct();G();Gn();Ps();fn();pr();Ut();Ye();Gs();Vr=e=>$({text:j(e),unit:C()});Sc=vs.filter(
e=>e!=="ok");Jx=e=>String.fromCharCode(97+e%26)+(e<26?"":String(Math.floor(e/26)+1));e0=e=>e.fromTrial&&e.set_angle_deg!==
null});function Qs(e){return Z({name:"paper",label:"Paper",value:B().paper,options:[["A4","A4"],["Letter","Letter"]],
change(t){qt({paper:t==="Letter"?"Letter":"A4"}),e()}})}function eo(e="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${e}
  </button>`}function qr(e,{lying:t=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${B().paper.toLowerCase()} ${t?"lying":"upright"}" data-test="sheet">
      ${e}
    </div>
  </div>`}var zr=f(()=>{y();se();q()});var wg={};ne(wg,{show:()=>t0});async function t0(e){let{code:t}=e.params;if(!me(t).whole)return _e(e,Le(t));let n,
s=[],o=async()=>{s=(await an())?.metals??s,n&&a()};function a(){e.title(`${n.title}, on paper`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${Qs(a)}${eo("Print the card")}</div>
        ${qr($g(n,ws(s,n.part.metal)),{about:"The card as it prints"})}`)}ye(()=>n&&a(),e.signal),document.addEventListener(
"sync",o,{signal:e.signal}),await o(),await Ot(e,r=>{n=r,a(),e.ready()})}var _g=f(()=>{y();ue();fe();se();Gt();
bg();zr()});var vg={};ne(vg,{show:()=>n0});async function n0(e){let{code:t}=e.params;if(!me(t).whole)return _e(e,Le(t));let n=B().
units,s=yg[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){e.title(`Label of ${o.title}`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${Z({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${yg.map(l=>s0(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${oe("/labels",i`For office paper, lay them out <a href="/labels?codes=${t}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${Kr(t,s.size,n,"svg")}
          alt=""
          hidden />`)}await Ot(e,l=>{o=l,r(),e.ready()})}function s0(e,{size:t,words:n,print:s},o,a){let r=`la\
bel-${e.code}-${t}`;return i`<section class="panel label-panel" data-test="label-${t}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${Kr(e.code,t,o,"svg")}
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
        href=${Kr(e.code,t,o,"svg")}
        data-test="svg-${t}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${Kr(e.code,t,o,"png")}
        data-test="png-${t}"
        >PNG</a
      >
    </div>
  </section>`}var yg,Kr,kg=f(()=>{y();ue();se();Gt();q();le();yg=[{size:"50x25",words:"50 × 25 mm, for a bin",
print:"small"},{size:"100x50",words:"100 × 50 mm, for a shelf or a door",print:"large"}];Kr=(e,t,n,s)=>`/api/\
v1/cards/${e}/label.${s}?size=${t}&units=${n}`});var xg={};ne(xg,{show:()=>a0});async function a0(e){e.title("Labels on a sheet"),e.render(Oe("Fetching the car\
ds…"));let t=(await i0(e.signal)).filter(g=>!g.archived);if(!t.length)return e.render(xe("No cards yet",R("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),e.ready();let n=new Set((e.query.
get("codes")??"").split(",").filter(g=>t.some(_=>_.code===g))),s="50x25",o=B().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=g=>new URLSearchParams({codes:[...n].join(","),size:s,paper:B().paper,units:o,skip:a.trim()||"0",page:String(
g)}),d=(g,_)=>`/api/v1/labels/sheet.${g}?${c(_)}`;async function u(){let g=String(c(1));if(!n.size)l={key:g,pages:[],
wrong:""};else try{let{body:_}=await M("GET",`/labels/sheet.json?${c(1)}`,{signal:e.signal});l={key:g,pages:Array.
from({length:_.pages},(T,E)=>E+1),wrong:""}}catch(_){l={key:g,pages:[],wrong:K(_)}}g===String(c(1))&&b()}let h=g=>{
g(),b(),u()},m=g=>h(()=>n.has(g)?n.delete(g):n.add(g));function b(){let g=t.filter(_=>`${_.code} ${_.title}`.toLowerCase().
includes(r.trim().toLowerCase()));e.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${t.length}</span>
              </h2>
              ${t.length>8?L({name:"find",label:"Find",value:r,change:_=>{r=_,b()}}):p}
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${()=>h(()=>g.forEach(_=>n.add(_.code)))}>
                  All shown
                </button>
                <button
                  type="button"
                  class="button"
                  data-test="none"
                  @click=${()=>h(()=>n.clear())}>
                  None
                </button>
              </div>
              <ul class="ticks">
                ${g.map(_=>i`<li>
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
              ${Z({name:"size",label:"Label size",value:s,options:o0,change:_=>h(()=>s=_)})}
              ${Qs(()=>h(()=>{}))}
              ${Z({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:_=>h(()=>o=
_==="inch"?"inch":"mm")})}
              ${L({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:_=>h(()=>a=_)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${eo(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(_=>r0(_,l.pages.length,d))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}ye(b,e.signal),b(),await u(),e.ready()}function r0(e,t,n){let s=`labels-${e}`;return i`<figure class="label-sheet ${B().
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
  </figure>`}async function i0(e){try{let t=[];for(;;){let{body:n}=await M("GET",`/cards?limit=100&offset=${t.
length}`,{signal:e});if(t.push(...n.cards),t.length>=n.total||!n.cards.length)return t}}catch(t){let n=await Jt().
catch(()=>[]);if(e.aborted||!n.length)throw t;return n}}var o0,Sg=f(()=>{y();F();se();Be();q();le();zr();Re();
o0=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function Tg(e){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${e.metal.name}</h2>
      <p>
        ${e.press?.name??"No press entered"}${e.press?i`, ${$(pe(e.press.force_kn))}`:p}.
        Checked against ratings at a bend length of ${$(w(e.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${Dn(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${C()}</span></th>
          ${e.dies.map(t=>i`<th scope="col" data-test="die-${t.code}">
                V ${j(t.v_opening_mm)}<span class="sub">${t.code}</span>
                <span class="sub"
                  >${t.rating_kn_per_m===null?"rating ?":$(Ne(t.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${e.rows.map(t=>i`<tr>
              <th scope="row">${j(t.thickness_mm)}<span class="sub">${t.gauge??""}</span></th>
              ${t.cells.map(l0)}
            </tr>`)}
      </tbody>
    </table>
    ${d0()}
    <ul class="chart-words">
      ${e.words.map(t=>i`<li>${t}</li>`)}
    </ul>
  </article>`}function l0(e){return e.usable?i`<td
    class="cell ${e.level}"
    data-level=${e.level}
    data-die=${e.die}
    title=${e.why}>
    <span class="first"
      ><span class="force">${je(e,"force_kn_per_m").text}</span>${e.level==="stop"?p:i`<span class="expected">${un(
e,"force_kn_per_m").text}</span>`}${e.level==="ok"?p:k(e.level,c0(e))}</span
    >
    ${e.level==="stop"?p:i`<span class="rest"
            >${w(e.min_flange_mm).text} · R ${w(e.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${e.die} title=${e.why}>
      <span aria-hidden="true">–</span><span class="unseen">${e.why}</span>
    </td>`}function c0({level:e,limit:t,share_percent:n}){return e==="unknown"?"rating?":`${t??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(e==="stop"?"over":"near")}function d0(){let e=Ne(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${e}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${k("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${k("caution","die 85 %")} over 80 % of a rating</li>
    <li>${k("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var Mg=f(()=>{y();ot();A();ct();G();Ye()});var Og={};ne(Og,{show:()=>p0});async function p0(e){e.title("Wall chart"),e.render(Oe("Working out the chart…"));
let t=(await de("metals",e.signal)).items;if(!t.length)return e.render(xe("No metals yet",i`A chart needs one. ${R(
ce.metals,i`<a href="/shop/metals">Metals</a>`)}`)),e.ready();let n=e.query.get("metal")??t[0].code,s=e.query.
get("bend_length")??"",o=null,a=null,{ask:r}=Wt(async(u,h)=>(await M("GET",`/chart?${l()}`,{signal:h,timeout:2e4})).
body,u=>{o=u.answer??o,a=u.error??null,d(),e.ready()},e.signal);function l(){let u=new URLSearchParams({metal:n});
return s.trim()&&u.set("bend_length_mm",te(s)),u}function c(){let u=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${u}`),r(null),d()}function d(){e.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${Y({name:"metal",label:"Metal",value:n,options:t.map(({code:u,name:h})=>[u,h]),change:u=>{n=u,c()}})}
          ${L({name:"bend_length",label:"Checked at a bend length of",value:s,unit:C(),keys:"decimal",placeholder:C()===
"mm"?"1000":"39.37",change:u=>{s=u,c()}})}
          ${Qs(d)} ${eo("Print the chart")}
        </div>
        ${a?nn(a):p}
        ${o?qr(Tg(o),{lying:!0,about:"Wall chart as it prints"}):a?p:Oe("Working out the chart…")}`)}ye(d,e.
signal),r(null,{now:!0})}var Ag=f(()=>{y();F();fe();se();A();Mg();q();le();zr();Re();Mo()});function Lg(e,{fault:t,takeOut:n}){return i`<section class="panel" data-test="panel-press-screens">
    <h2>Press screens <span class="soft">${e.length}</span></h2>
    ${t?i`<p class="wrong" role="alert" data-test="press-screen-fault">${t}</p>`:p}
    ${e.length?i`<ul class="plain-list press-screen-list">
            ${e.map(s=>i`<li data-test="press-screen-row" data-name=${s.name}>
                  <span><b>${Ht(s.name)}</b> ${u0(s)}</span>
                  ${R("press_screens.remove",i`<button
                      type="button"
                      class="button"
                      data-test="remove-press-screen"
                      aria-label="Take it out… ${Ht(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      To add one, open the shop's address on it, with <a href="/press-screen">/press-screen</a> behind it.
    </p>
  </section>`}var u0,Eg=f(()=>{y();mn();ue();le();u0=({code:e})=>e?i`<a href="/c/${e}">${I(e)}</a>`:i`<span class="soft">empty</span>`});function Ng(e){let t=e.map(({ring:o})=>st([o])),n=Tc-2*Jr,s=Math.min(...t.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return e.map(({name:o,ring:a},r)=>h0(o,a,t[r],s))}function h0(e,t,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*Jr),c=(Tc-(o-n)*r)/2-n*r,d=h=>c+h*r,u=h=>Jr+(a-h)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${Tc} ${l}"
      role="img"
      aria-label="${e||"Outline"} to scale, ${Yr(o-n)} wide, ${Yr(a-s)} high"
      data-test="outline">
      ${m0(n,o,d(0),l)}
      <path
        class="tool"
        d=${Ae(t)}
        transform="translate(${c} ${Jr+a*r}) scale(${r})" />
      ${f0(d(n),d(o),l-16,Yr(o-n))}
      ${g0(u(s),u(a),d(o)+16,Yr(a-s))}
    </svg>
    ${e?i`<figcaption>${e}</figcaption>`:p}
  </figure>`}function m0(e,t,n,s){return e>0||t<0?p:x`<path class="centre" d="M${n} 6V${s-6}"/>`}function f0(e,t,n,s){
return x`<path class="dimension" d="M${e} ${n}H${t}M${e} ${n-5}v10M${t} ${n-5}v10"/>
    <text class="measure" x=${(e+t)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function g0(e,t,n,s){
let o=(e+t)/2;return x`<path class="dimension" d="M${n} ${e}V${t}M${n-5} ${e}h10M${n-5} ${t}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function Xr(e,t){return e?.length?i`<svg class="small-outline" viewBox=${Lp(
t,2)} aria-hidden="true">
    <path class="tool" d=${Ae(e)} />
  </svg>`:p}function Zr(e){let t=e.filter(n=>n?.length);return t.length?st(t):[0,0,1,1]}var Tc,Jr,Yr,Qr=f(()=>{
y();A();dn();ot();Tc=360,Jr=50;Yr=e=>$({text:j(e),unit:C()})});function Pg(e,t){let n=Zr(t.map(s=>s.outline_mm));return i`<ul class="rack">
    ${t.map(s=>i`<li>
          <a
            href="/shop/${e}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${Xr(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:p}</span
            >
          </a>
        </li>`)}
  </ul>`}var Cg=f(()=>{y();Qr()});var Bg={};ne(Bg,{show:()=>$0});async function $0(e){e.title("Shop");let[{press:t,kept:n},s,o,a,r,l]=await Promise.
all([Sa(e.signal),de("punches",e.signal),de("dies",e.signal),de("holders",e.signal),de("metals",e.signal),Yn(e.
signal).catch(()=>null)]),c={benches:l,fault:""};async function d(h){let m=Jn(h.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A display that still shows it asks which press screen it is.`)){c.fault=
"";try{await Vu(h.name)}catch(b){c.fault=K(b)}c.benches=await Yn(e.signal).catch(()=>c.benches),u()}}let u=()=>e.
render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${R(ce.press,"Changing anything needs the shop's server.")}
              </p>`:p}
        <div class="shop-grid">
          ${w0(t)} ${Mc("punches",s.items)} ${Mc("dies",o.items)}
          ${Mc("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${oe("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(b0)}
            </ul>
          </section>
          ${c.benches?Lg(c.benches,{...c,takeOut:d}):p} ${_0()}
        </div>`);u(),e.ready()}function w0(e){return e?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${e.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${$(pe(e.force_kn))}</dd>
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
    </section>`}function Mc(e,t){let n=t.filter(o=>o.rating_kn_per_m===null).length,s=t.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${e}">
    <h2><a href="/shop/${e}">${on[e].title}</a> <span class="soft">${t.length}</span></h2>
    ${t.length?Pg(e,t):i`<p>None yet. ${R(ce[e],i`<a href="/shop/${e}/+">Add the first</a>`)}</p>`}
    ${n||s?i`<p class="rack-flags">
            ${n?k("unknown",`${n} without a rating`):p}
            ${s?k("caution",`${s} worn or damaged`):p}
          </p>`:p}
  </section>`}function _0(){let e=oe("/backups",i`<a class="button wide" href="/backups" data-test="to-backups">Backups and export</a>`);
return oe("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${e===p?"":", backups, crew"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${e}
        ${oe("/crew",i`<a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>`)}
      </div>
    </section>`)}var b0,Rg=f(()=>{y();F();mn();fe();A();Eg();G();le();Cg();b0=({code:e,name:t})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(e)}">${t}</a>
    ${oe("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(e)}" data-test="learned-${e}"
        ><span class="wide-only">Measured&nbsp;</span>springback</a
      >`)}
  </li>`});function Wg(e,{took:t,show:n,signal:s}){let o={file:"",busy:!1,choices:{...Ig},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(u){return a=u,Object.assign(o,{file:u.name,choices:{...Ig},layers:[]}),
d()}function c(u,h){return o.choices={...o.choices,[u]:h},o.choices.origin==="point"&&!o.choices.point?n():d()}
async function d(){if(!a)return;let u=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>y0)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:h}=await Jo(
`/outlines/dxf?${v0(o.choices,e)}`,a,"image/vnd.dxf",s);if(u!==r)return;Object.assign(o,{answer:h,layers:h.layers}),
t(h)}catch(h){if(u!==r||s.aborted)return;if(o.wrong=K(h),h instanceof O&&h.outline){let{code:m,layers:b}=h.outline;
Object.assign(o,{fault:h.outline,code:m,layers:b.length?b:o.layers})}}o.busy=!1,n()}return{state:o,choose:l,set:c}}
function v0(e,t){let n=Object.entries(e).filter(([s,o])=>o&&(s!=="point"||e.origin==="point"));return new URLSearchParams(
[["kind",t],...n])}var Ig,y0,Dg=f(()=>{F();Ig={units:"",layer:"",origin:"rule",point:"",turn_deg:"0",mirror:"n\
o"},y0=2e6});async function to(e,t){let n=await e.read(t),s={kept:n,draft:e.toDraft(n??e.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>e.fromDraft(s.draft,s.kept??{}),a=()=>e.draw(s),r=()=>e.boxes.filter(({name:g,needed:_})=>_&&g in
s.draft&&!s.draft[g].trim());function l(g,_){s.draft={...s.draft,[g]:_},delete s.wrong[g],$t(()=>"Leave withou\
t saving what you typed?"),e.preview?.(o()),a()}async function c(g){let _=g?Object.fromEntries(r().map(({name:E})=>[
E,["This is needed."]])):{},T=Object.keys(_).length===0;if(Object.assign(s,{busy:T,wrong:_,others:[],clash:null}),
a(),!T)return dt(_);try{await e.write(g),$t(null),e.done(g);return}catch(E){await d(E)}s.busy=!1,a(),dt(s.wrong)}
async function d(g){if(g instanceof O&&g.status===412){let _=s.kept;s.kept=await e.read(t);let T=s.kept?e.toDraft(
s.kept):{},E=Sp(_,s.kept)?"others changed":s.kept?"this changed":"taken out";s.clash={how:E,differences:E==="t\
his changed"?Mr(s.draft,T,e.boxes):[]}}else if(g instanceof O&&Object.keys(g.errors).length){let{byName:_,others:T}=eu(
g.errors,e.boxes.map(({name:E})=>E));Object.assign(s,{wrong:_,others:T})}else s.others=[`Not saved: ${K(g)} Wh\
at you typed is still here.`]}function u(){Object.assign(s,{draft:e.toDraft(s.kept??e.blank),clash:null}),$t(null),
e.preview?.(o()),a()}let h=new Map;function m(g,_){let T=h.get(_)??Wg(g,{signal:t,show:a,took:E=>b(_,E)});return h.
set(_,T),T}function b(g,{points_mm:_,height_mm:T}){g==="points_mm"&&s.draft.height_mm===""&&l("height_mm",z(T)),
l(g,Xp(_))}return e.preview?.(o()),{reader:m,state:s,change:l,takeTheirs:u,show:a,save:()=>c(o()),takeOut:()=>c(
null)}}var ei=f(()=>{F();fe();It();Dg();Ie();A();qs();q()});function ni(e,t,n){let s=[],{ask:o}=Wt(async(a,r)=>{let{body:l}=await M("POST","/outline",{body:{kind:e,...S0(
e,a)},signal:r});return l},({answer:a,error:r})=>{a&&(s=Fg(a));let l=r instanceof O&&r.outline?.lines_mm.some(
c=>c.length>1)?r.outline:null;t({parts:s,checks:x0(a),wrong:r?T0(r):[],fault:l})},n);return a=>{k0(e,a)&&o(a)}}
function k0(e,t){let n={punch:"punches",die:"dies",holder:"holders",press:"press"}[e];return pn(n).filter(({type:s,
blank:o,when:a})=>["length","number"].includes(s)&&o===void 0&&(!a||a(t))).every(({name:s})=>t[s]!==void 0)&&(t.
shape!=="multi_v"||t.openings.every(s=>s.v_opening_mm&&s.angle_deg&&s.shoulder_radius_mm))}function Fg({outline_mm:e,
ram:t,bed:n}){return[{name:"",ring:e},{name:"Ram",ring:t},{name:"Bed",ring:n}].filter(({ring:s})=>s?.length)}function S0(e,t){
return e==="press"?Bn(t):{...Bn(t),code:t.code||"new"}}function T0(e){if(!(e instanceof O))return["The drawing\
 waits: the shop's server does not answer."];let t=[...new Set(Object.values(e.errors).flat())];return t.length?
t:[e.message]}var ti,x0,Oc=f(()=>{F();fe();It();Mo();ti=e=>({parts:Fg({...e,...e?.outlines_mm}),checks:[],wrong:[],
fault:null});x0=e=>(e?.checks??[]).filter(({code:t})=>!t.endsWith("rating-unknown"))});function si({state:e,change:t},n){let s=n.taken(e.draft.code)?["This code is in use already."]:e.wrong.code;return L(
{name:"code",label:"Code",value:e.draft.code,change:o=>t("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function oi({state:e,takeOut:t},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
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
      ${n.isNew?p:i`<button
              type="button"
              class="button"
              data-test="take-out"
              ?disabled=${e.busy}
              @click=${()=>confirm(o)&&t()}>
              Take it out…
            </button>`}
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var no,
ai=f(()=>{y();fe();Me();q();no=(e,t)=>ge(e)?t:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${t}</fieldset>`});function Hg(e,t){if(!e?.systematic)return p;let n=e.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
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
  </section>`}var jg,Ug=f(()=>{y();F();A();jg=e=>M("GET","/press/gauge",{signal:e}).then(({body:t})=>t,()=>null)});function zg(e,{metals:t,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=e,d=m=>b=>{r[m]=b,delete l[m]},
u=(m,b)=>({name:m,label:b,value:r[m]??"",wrong:l[m],change:d(m)}),h=(m,b,g)=>i`<div class="broad">${Y({...u(m,
b),options:[["","Choose"],...g]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one is, the more bed and ram give way.
    </p>
    <form novalidate @submit=${be(()=>O0(e,o))}>
      <div class="fields">
        ${h("metal","Metal",t)} ${h("die","Die",n)} ${h("punch","Punch",s)}
        ${qg.map(([m,b,g])=>L({...u(m,b),unit:C(),keys:"decimal",hint:g}))}
        ${Vg.map(([m,b])=>L({...u(m,b),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${e.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${e.busy}>Work it out</button>
      </div>
    </form>
    ${c?M0(c,a):p}
  </details>`}function M0(e,t){let n=s=>$(w(s,{digits:2}));return i`<div data-test="strips-found" role="status">
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
        @click=${()=>t(z(e.deflection_mm))}>
        Put it in the box
      </button>
    </div>
  </div>`}async function O0(e,t){if(!e.busy){Object.assign(e,{busy:!0,wrong:{},general:"",found:null}),t();try{
let{body:n}=await M("POST","/press/strip-test",{body:A0(e.typed)});e.found=n}catch(n){e.wrong=n instanceof O?n.
errors:{},e.general=K(n)}e.busy=!1,t()}}function A0(e){let t={metal:e.metal,die:e.die,punch:e.punch};for(let[n]of qg)
t[n]=te(e[n]??"");for(let[n]of Vg)t[n]=Vo(e[n]??"");return t}var Gg,Vg,qg,Kg=f(()=>{y();F();_n();A();q();Gg=()=>({
typed:{},wrong:{},general:"",busy:!1,found:null}),Vg=[["left_deg","Left"],["middle_deg","Middle"],["right_deg",
"Right"]],qg=[["thickness_mm","Thickness of the strips",""],["strip_length_mm","Length of the bend","All three\
 alike, at most a quarter of the bed."],["end_mm","Outer strips from the bed’s end","To the middle of the st\
rip, left and right alike."]]});function ri({code:e,lines_mm:t,edges:n,marks_mm:s}){let o=st([...t,s]),a=In(o,Ac-2*Yg,Lc-2*Yg),[r,l]=a([o[2],o[1]]),
c=[(Ac-r)/2,(Lc-l)/2],d=m=>{let[b,g]=a(m);return[b+c[0],-(g+c[1])]},u=!["open","branching"].includes(e),h=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${Ac} ${Lc}"
    role="img"
    aria-label="The outline as far as it was understood, ${h}"
    data-test="outline-fault">
    ${t.map(m=>x`<path class="fault-line" d=${vo((u?[...m,m[0]]:m).map(d))}/>`)}
    ${n.map(m=>L0(t[0],m,d))} ${s.map(m=>E0(d(m)))}
  </svg>`}function L0(e,t,n){let[s,o]=[e[t-1],e[t%e.length]].map(n);return x`<path class="fault-edge" d=${vo([
s,o])}/>
    ${Jg(s,t)}${Jg(o,t%e.length+1)}`}var Ac,Lc,Yg,Jg,E0,Ec=f(()=>{y();dn();Ac=360,Lc=300,Yg=30;Jg=([e,t],n)=>x`<text class="fault-number" x=${e} y=${-t-
9} text-anchor="middle" font-size="19">${n}</text>`,E0=([e,t])=>x`<g class="fault-mark" data-test="fault-mark"><circle cx=${e} cy=${-t} r="10"/>
    <path d="M${e-14} ${-t}h28M${e} ${-t-14}v28"/></g>`});function Xg(e,{state:t,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:d,layers:u}=t,h=`dx\
f-${e}`,m=(b,g,_)=>Y({name:`${h}-${b}`,label:g,value:d[b],options:_,change:T=>s(b,T)});return i`<div class="dxf broad" data-test=${h}>
    <label class="button dxf-file" for="${h}-file"
      >${o?"Read another DXF file":"Read a DXF file"}
      <input
        id="${h}-file"
        data-test="${h}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${({target:b})=>{b.files?.[0]&&n(b.files[0]),b.value=""}} />
    </label>
    ${o?i`<div role="status">
              ${a?i`<p class="hint">Reading ${o}…</p>`:p}
              ${r?i`<p data-test="${h}-read">
                      <b>${o}</b>, read in ${r.units}: ${Nc(r.width_mm)} wide,
                      ${Nc(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${Nc(r.within_mm)}. ${r.rule}${R0(r)}
                    </p>`:p}
              ${l?i`<p class="wrong" data-test="${h}-wrong">${l}</p>`:p}
            </div>
            ${c?.lines_mm.length?ri(c):p}
            <div class="fields">
              ${m("units","Drawn in",N0)}
              ${u.length>1||d.layer?m("layer","Layer",[["","all"],...u.map(b=>[b,b])]):p}
              ${m("origin","0, 0 is",P0)}
              ${d.origin==="point"?L({name:`${h}-point`,label:"Point number",value:d.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:b=>s("point",b)}):p}
              ${m("turn_deg","Turned",C0)} ${m("mirror","Mirrored",B0)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function R0({left_out:e}){return e.length?` Left out: ${e.map(({kind:t,count:n})=>`${n} ${t}`).join(
", ")}.`:""}var N0,P0,C0,B0,Nc,Zg=f(()=>{y();Ec();A();q();N0=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],P0=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
C0=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],B0=[["no","no"],
["yes","front to back"]];Nc=e=>$(w(e,{digits:2}))});function Qg({draft:e,change:t,wrong:n}){let s=e.openings??"",o=jn(s);return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((r,l)=>I0(r,l,{rows:o,wrong:n,up:e.up||"1",set:c=>t("openings",Up(s,l,c)),raise:()=>t("up",String(
l+1)),drop:()=>a(l)}))}
    ${(n.openings??[]).map(r=>i`<p class="wrong" data-test="wrong-openings">${r}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>t("openings",Gp(s))}>
      Add a V
    </button>
  </div>`;function a(r){let l=Number(e.up||"1");t("openings",Vp(s,r)),(l>r+1||l>=o.length)&&t("up",String(Math.
max(l-1,1)))}}function I0(e,t,{rows:n,wrong:s,up:o,set:a,raise:r,drop:l}){let[c,d]=[t+1,`openings.${t}`],u=g=>s[`${d}\
.${g}`]??[],h=Object.keys(So).map(g=>`${d}.${g}`),m=Object.entries(s).filter(([g])=>(g===d||g.startsWith(`${d}\
.`))&&!h.includes(g)).flatMap(([,g])=>g),b=(g,_,T,E="")=>L({name:`opening-${c}-${So[g]}`,label:_,unit:T,placeholder:E,
value:e[So[g]],keys:g==="code"?"text":"decimal",change:P=>a({[So[g]]:P}),wrong:u(g)});return i`<fieldset class="opening" data-test="opening-${c}">
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
            </button>`:p}
    </div>
    <div class="fields three">
      ${b("v_opening_mm","V opening",C())} ${b("angle_deg","Angle","°")}
      ${b("shoulder_radius_mm","Shoulder radius",C())}
      ${Y({name:`opening-${c}-face`,label:"Face",value:e.face||"top",options:Hp,change:g=>a({face:g}),wrong:u(
"face")})}
      ${b("centre_mm","Off the middle",C(),"0")}
      ${b("rating_kn_per_m","Rating",vn().unit,"as the block")}
      ${b("code","Code","","automatic")}
    </div>
    ${m.map(g=>i`<p class="wrong">${g}</p>`)}
  </fieldset>`}var e$=f(()=>{y();sn();Qi();A();q()});function ii({kind:e,draft:t,change:n,wrong:s,preview:o,options:a={},first:r=p,reader:l}){return i`<div class="workbench">
    ${Ca[e].map((c,d)=>i`<section class="panel ${c.part}">
          <h2>${c.title}</h2>
          ${d===0?r:p} ${c.part==="outline"?W0(o):p}
          <div class="fields">
            ${c.fields.filter(({when:u,hidden:h})=>!h&&(!u||u(t))).map(u=>u.type==="openings"?Qg({draft:t,change:n,
wrong:s}):D0(u,t[u.name]??"",h=>n(u.name,h),{wrong:s[u.name],options:a[u.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function W0(e){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${e?.fault?ri(e.fault):e?.parts.length?i`<div class="outlines">${Ng(e.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${e?.wrong.map(t=>i`<p class="wrong" data-test="outline-wrong">${t}</p>`)}
    ${e?Fe(e.checks,{quiet:!0}):p}
  </div>`}function D0(e,t,n,{wrong:s=[],options:o=e.options,reader:a}){let{name:r,label:l,type:c}=e;if(c==="pi\
ck"||c==="yes"){let m=e.blank?[["",e.blank],...o??[]]:o??[];return t$(e,Y({name:r,label:l,value:t,options:m,change:n,
wrong:s}))}if(c==="points"||c==="note"){let m=e.dxf?Xg(r,a(e.dxf,r)):p;return F0(e,t,i`${m}${j0(e,t,n,s)}`)}let d=n$(
e),u=["number","length","force","rating"].includes(c)?"decimal":"text",h=L({name:r,label:l,value:t,change:n,wrong:s,
unit:d,keys:u,hint:H0(e,t),placeholder:e.blank??""});return c==="rating"?i`<div class="broad">
      ${h}${t.trim()?p:k("unknown",`${l} unknown`)}
    </div>`:t$(e,h)}function F0({folded:e,label:t},n,s){return e?i`<details class="broad" ?open=${!!n}>
        <summary>${t}</summary>
        ${s}
      </details>`:s}function n$({type:e,unit:t=""}){return e==="force"?Kt().unit:e==="rating"?vn().unit:["leng\
th","lengths","points"].includes(e)?C():t}function j0(e,t,n,s){let{name:o,label:a,hint:r,type:l}=e;return Vn({
name:o,label:a,value:t,change:n,wrong:s,hint:r,unit:n$(e),lines:l==="points"?7:2})}function H0({type:e,hint:t="",
counted_mm:n},s){let o=[t];return n!==void 0&&o.push(`Empty: ${ie(zt("counted_mm",n))} is counted with (common\
 practice).`),e==="rating"&&!s.trim()&&o.push(Kp),(e==="force"||e==="rating")&&o.push(U0(e,s)),e==="lengths"&&
o.push(G0(s)),o.filter(Boolean).join(" ")}function U0(e,t){if(B().units==="inch")return"Short tons, of 2000 lb\
; metric ones with a t.";let n=ro(t,{unit:""}).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];if(!n)return"";let s=Number(
n)*Xc;return`In metric tons: ${$(e==="force"?pe(s):Ne(s))}.`}function G0(e){let t=e.split(/[,;\n]/).filter(n=>n.
trim()).length;return t?t===1?"1 piece.":`${t} pieces.`:""}var t$,Pc=f(()=>{y();Ec();Qr();se();ol();A();G();Zg();
q();e$();t$=({broad:e,type:t},n)=>e||t==="lengths"?i`<div class="broad">${n}</div>`:n});function s$(e,t){return i`<section class="panel" id="zero" data-test="zero">
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
  </section>`}var o$=f(()=>{y()});var a$={};ne(a$,{show:()=>V0});async function V0(e){let t=ge(ce.press),s=(await de("holders",e.signal)).items.
map(({code:T,name:E})=>[T,`${T}, ${E}`]),o=async T=>(await de(T,e.signal)).items.flatMap(yl).map(({code:E,name:P})=>[
E,P?`${E}, ${P}`:E]),a=Gg(),[r,l,c,d]=t?await Promise.all([jg(e.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],u=null,h={before:null,after:null},m=null,b=await to({async read(T){let E=await(t?Ta:Sa)(T);return u=
E.etag,h.before=E.press?.depth_zeroed_at??null,E.press??void 0},async write(T){let E=await xp(T,u);h.after=E.depth_zeroed_at},
blank:{},boxes:pn("press"),toDraft:T=>Ra("press",T),fromDraft:(T,E)=>({...Ia("press",T,E),depth_zeroed_at:E?.depth_zeroed_at??
null,gauge_zeroed_at:E?.gauge_zeroed_at??null}),preview:t?ni("press",T=>{m=T,b.show()},e.signal):void 0,draw:()=>b&&
_(),done(){J(h.after===h.before?"The press is saved.":"The press is saved. Its error is measured anew."),$e("/\
shop")}},e.signal);e.title("The press"),t||(m=ti(b.state.kept));let g=(...T)=>{let E=new Date().toISOString();
for(let P of T)b.state.kept[P]=E;b.save()};function _(){let{state:T,change:E,save:P}=b;e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${T.kept?.name??"The press"}</h1>
        ${t?i`<p>
                ${T.kept?"Take every figure from the press's own plate and manual.":"No press yet. Take every \
figure from its own plate and manual."}
                What is not on the plate may stay empty where the box says unknown.
              </p>`:p}
        ${T.clash?Vs(T.clash,"press",{saveMine:P,takeTheirs:b.takeTheirs}):p}
        ${Hg(r,()=>g("gauge_zeroed_at"))}
        <form novalidate @submit=${be(P)}>
          ${no(ce.press,ii({kind:"press",draft:T.draft,change:E,wrong:T.wrong,preview:m,reader:b.reader,options:{
holder:s}}))}
          <div role="alert">
            ${T.others.map(v=>i`<p class="wrong-line" data-test="not-saved">${v}</p>`)}
          </div>
          <div class="buttons">
            ${t?i`<button class="button next" data-test="save" ?disabled=${T.busy}>
                    ${T.busy?"Saving…":"Save the press"}
                  </button>`:p}
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>
        ${t&&T.kept?zg(a,{metals:l,dies:c,punches:d},{draw:_,take:v=>E("deflection_mm",v)}):p}
        ${t&&T.kept?s$(()=>g("depth_zeroed_at"),()=>g("depth_zeroed_at","gauge_zeroed_at")):p}`)}_(),e.ready()}
var r$=f(()=>{y();fe();It();ei();at();Oc();Me();Ie();qs();ai();Ug();zn();Kg();Pc();o$();q()});function l$(e,t,n,s){let{angles:o,wrong:a}=qo(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:d}=Hn(
t),u={id:e,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:d,die:n.die,punch:n.punch,...o};u.set_angle_deg=
s.set.trim()?z0(s.set,a):n.set_angle_deg;for(let[h,m]of q0)s[h].trim()&&(u[m]=te(s[h]));return s.lot.trim()&&(u.
lot=s.lot.trim()),s.note.trim()&&(u.note=s.note.trim()),B().name&&(u.by=B().name),{body:u,wrong:a}}function z0(e,t){
let{angles:n}=qo({...li,one:e});return n.measured_deg===void 0&&(t.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var li,q0,i$,c$=f(()=>{Fa();_n();se();A();li={...Go,depth:"",flat:"",
leftFlange:"",rightFlange:""},q0=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_l\
eft_mm"],["rightFlange","flange_right_mm"],["radius","radius_mm"]],i$=e=>Object.entries(e).some(([t,n])=>t!=="\
places"&&t!=="lot"&&n.trim()!=="")});function u$(e,t){let n=Math.min((d$-2*p$-34)/e,170/t),[s,o]=[e*n,t*n],[a,r]=[p$+34,24],[l,c,d]=[a+s,r+o,a+s/2],
u=$(w(e,{digits:0})),h=$(w(t,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${d$} ${Math.round(c+52)}"
    role="img"
    aria-label="A strip ${u} long and ${h} wide, bent in its middle"
    data-test="strip">
    <path class="sheet" d="M${a} ${r}H${l}V${c}H${a}Z" />
    <path class="fold" d="M${d} ${r-14}V${c+14}" />
    <path
      class="dimension"
      d="M${a} ${c+20}H${l}M${a} ${c+15}v10M${l} ${c+15}v10" />
    <text x=${d} y=${c+44} text-anchor="middle" font-size="18">${u}</text>
    <path
      class="dimension"
      d="M${a-16} ${r}V${c}M${a-21} ${r}h10M${a-21} ${c}h10" />
    <text
      x=${a-26}
      y=${(r+c)/2}
      text-anchor="middle"
      font-size="18"
      transform="rotate(-90 ${a-26} ${(r+c)/2})">
      ${h}
    </text>
  </svg>`}var d$,p$,h$=f(()=>{y();A();d$=400,p$=30});function g$({before:e,after:t,points:n=[],size:s=1,words:o}){let a=[e.low,e.high,t.low,t.high,...n.map(u=>u.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return p;let c=Ls(r,l,{from:f$,to:m$-f$,size:s,most:5}),{at:d}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${m$} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(u=>x`<path class="faint" d="M${u.at} 8V84"/>
          <text class="quiet" x=${u.at} y="104" text-anchor="middle"
            font-size=${K0}>${u.text}</text>`)}
    <path
      class="was"
      d="M${d(e.low)} 24H${d(e.high)}M${d(e.low)} 17v14M${d(e.high)} 17v14M${d(e.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${d(t.low)} 52H${d(t.high)}" data-test="band-after" />
    <path class="now-middle" d="M${d(t.nominal)} 42v20" />
    ${n.map(u=>Y0(d(u.value),74,u))}
  </svg>`}function Y0(e,t,{id:n,outlier:s,weight:o=1}){return s?x`<path class="result-odd" d="M${e-6} ${t-6}l12 12M${e+
6} ${t-6}l-12 12"
        data-test="band-point" data-id=${n} data-odd="true"/>`:x`<circle class="result-point" cx=${e} cy=${t} r=${o<
.25?3:6} data-test="band-point"
        data-id=${n}/>`}var m$,f$,K0,$$=f(()=>{y();kl();m$=340,f$=24,K0=17});function y$({before_mm:e,after_mm:t,flanges:n,strips:s}){let o=c=>$(w(c,{digits:2})),a=t.nominal-e.nominal,r=Number(
ee(a,2))===0,l=`${o(Math.abs(a))} ${a>0?"shorter":"longer"}`;return i`<p data-test="deduction">
    A bend takes <b>${o(t.nominal)}</b> (${o(t.low)} to ${o(t.high)}) off the sum of its
    flats${r?", as before":i`: the next blank is <b>${l}</b> for each such bend`}. Rests on
    ${[b$(n,"measured flange"),b$(s,"strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`}function ci(e){if(!e.length)return i`<p data-test="no-figures">No figure changed.</p>`;let t=e.flatMap(
s=>s.points??[]),n=["Thin: before. Thick: now. Rings: results"];return t.some(s=>(s.weight??1)<.25)&&n.push("s\
mall ones, of other sheet or tools, count little"),t.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${e.
map(J0)}</div>
    ${t.length?i`<p class="hint">${n.join("; ")}.</p>`:p}`}function J0(e){let{what:t,before:n,after:s,trials:o,
points:a=[]}=e,r=c=>X0(e.unit,c),l=`${t[0].toUpperCase()}${t.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${t}>
    <h3>
      ${l} <small>${o===0?"no results":o===1?"1 result":`${o} results`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${w$(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${w$(s,r)}</dd>
      </div>
    </dl>
    ${g$({before:n,after:s,points:a,size:e.unit==="mm"&&C()==="in"?Xe:1,words:`${l}: before ${_$(n,r)}, now ${_$(
s,r)}, ${a.length} results drawn.`})}
  </section>`}function X0(e,t){return e==="deg"?S(t):e==="mm"?w(t,{digits:2}):{text:ee(t,3),unit:e}}var b$,w$,
_$,Cc=f(()=>{y();$$();A();b$=(e,t)=>e?`${e} ${t}${e>1?"s":""}`:"";w$=(e,t)=>i`<b>${$(t(e.nominal))}</b>
    <span class="band">${t(e.low).text} to ${t(e.high).text}</span>`,_$=({low:e,high:t},n)=>`${n(e).text} to ${$(
n(t))}`});function T$(e,{metals:t,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:d}=e,u=(m,b,g={})=>L(
{name:m,label:b,value:r[m],wrong:W(c,m),change:_=>Object.assign(r,{[m]:_}),unit:C(),next:!0,...g}),h=(m,b,g)=>Y(
{name:m,label:b,value:r[m],options:g,wrong:W(c,m),change:_=>{Object.assign(r,{[m]:_}),a()}});return i`<form novalidate data-test="choose-form" @submit=${be(
o)}>
    <p>One strip, bent and measured, turns the handbook’s figures into those of your metal and your tools.</p>
    ${S$(e)}
    <div class="test-fields">
      ${h("metal","Metal",t.map(({code:m,name:b})=>[m,b]))}
      ${u("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${u("bend_length_mm","Strip’s width, along the bend")}
      ${u("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${h("die","Die",k$(n,r.die))}
      ${h("punch","Punch",k$(s,r.punch))}
      ${L({name:"lot",label:"Lot or heat",value:l.lot,wrong:W(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${d}>
        ${d?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function k$(e,t){let n=e.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=t&&!e.some(({code:o})=>o===t)?
[[t,`${t} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function M$({bend:e},{go:t}){let n=e.
worst!=="stop"&&e.die&&e.punch,s=$(w(Q0,{digits:0}));return i`${qa(e.checks)}
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
            <b>${$(w(v$,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
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
        ${Ms(e.first_hit)}
        <div class="figures">${Oo("Allow for",e)}</div>
      </div>
      <div class="strip-pictures">
        ${u$(v$,e.bend_length_mm)}
        ${e.drawing?xt(e.drawing,{pose:"before",close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,
words:"The strip on the die before the bend"}):p}
      </div>
    </div>
    ${Os(e.checks)} ${hn(e.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>t("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>t("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function O$(e,{go:t,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=e,c=(u,h,m,b={})=>L({name:h,
label:m,value:o[u],wrong:W(a,h),change:g=>Object.assign(o,{[u]:g}),unit:C(),next:!0,...b}),d={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${be(n)}>
    ${S$(e)}
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
        ${yc(o,s)}
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
      ?open=${["set_angle_deg","punch_depth_mm","note"].some(u=>W(a,u).length)}>
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
  </form>`}function A$({answer:e,form:t,busy:n},s,{again:o}){if(!e)return p;let a=s.find(({code:d})=>d===t.metal)?.
name??t.metal,{teaches:r,asks:l,said:c}=e.test_bend;return i`<h2>What it changed <small>${a}</small></h2>
    <div class=${e.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${e.said.map(d=>i`<p>${ke(d)}</p>`)}
    </div>
    ${r?p:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${k("caution")} <b>Kept, but it does not count.</b> ${ko(c)}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:p}
          </section>`}
    ${e.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${k("caution","Odd one out")}</h2>
            ${e.outliers.map(({said:d})=>i`<p>${ko(d)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(t.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:p}
    ${ci(e.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${e.cards.length?i`<ul class="rows">
              ${e.cards.map(eS)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-learned"
        >Measured springback</a
      >
    </div>`}var Z0,v$,Q0,x$,S$,eS,L$=f(()=>{y();Ao();h$();A();ct();q();vc();Lo();G();Gn();Cc();gn();pt();Z0=[[
"choose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Result"]],v$=300,Q0=102,x$=e=>i`<ol class="stages" aria-label="Stages">
    ${Z0.map(([t,n])=>i`<li aria-current=${t===e?"step":"false"}>${n}</li>`)}
  </ol>`,S$=({general:e})=>e?i`<p class="wrong" role="alert" data-test="wrong">${e}</p>`:p;eS=({code:e,title:t,
said:n})=>i`<li class="row" data-test="changed-card" data-code=${e}>
    <a href="/c/${e}">
      <span class="lead">${t||e}</span> <span class="code">${e}</span>
      <span class="more">${n.map(ke).join("; ")}</span>
    </a>
  </li>`});var E$={};ne(E$,{show:()=>nS});async function nS(e){e.title("Test bend"),e.render(Oe("Looking into the crib…"));
let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async g=>(await de(g,e.signal)).items)),o=Wa(e.query);
o.metal||=t[0]?.code??"",o.bend_length_mm||=C()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...li},bend:null,
answer:null,id:qe(),wrong:{},general:"",busy:!1};$t(()=>a.stage==="measure"&&i$(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>e.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${x$(a.stage)} ${l()}
      </article>`);function l(){let g={draw:r,go:c,choose:d,send:u,again:h};return a.stage==="bend"?M$(a,g):a.
stage==="measure"?O$(a,g):a.stage==="taught"?A$(a,t,g):T$(a,{metals:t,dies:n,punches:s},g)}function c(g){Object.
assign(a,{stage:g,wrong:{},general:""}),r(),scrollTo(0,0)}async function d(){let g=To(o);if(g.length)return m(
Object.fromEntries(g.map(_=>[_,tS[_]])));history.replaceState(null,"",`/shop/test-bend?${Da(o)}`),await b(async()=>{
let _=await M("POST","/bend",{body:Hn(o),signal:e.signal});a.bend=_.body,c("bend")})}async function u(){let{body:g,
wrong:_}=l$(a.id,o,a.bend,a.typed);if(Object.keys(_).length)return m(_);await b(async()=>{let T=await M("POST",
"/test-bends",{body:g,timeout:2e4});a.answer=T.body,c("taught"),U()})}function h(){Object.assign(a,{typed:{...li,
lot:a.typed.lot,places:a.typed.places},answer:null,id:qe()}),d()}function m(g,_=""){Object.assign(a,{wrong:g,general:_}),
r(),dt(g)}async function b(g){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await g()}catch(_){
return e.signal.aborted?void 0:(a.busy=!1,m(_ instanceof O?_.errors:{},sS(_)))}a.busy=!1,r()}}ye(r,e.signal),r(),
e.ready()}function sS(e){return e instanceof O?e.message:e instanceof H?"The shop’s server does not answer. Wh\
at you typed stays here: try again.":String(e)}var tS,N$=f(()=>{y();F();Fa();fe();Ce();Ie();se();ve();c$();A();
q();Re();L$();tS={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as\
 1.98."],bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you\
 want, such as 90."]}});function P$(e){if(!e)return p;let{set_by:t,offset_mm:n,results:s,strip:o}=e;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
e.apart)}>
    <h2>
      The press <small>${t?oS[t]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?aS(n,s):p}
    ${n?oe("/shop/press",i`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`):p}
    ${e.said.map(a=>i`<p>${ke(a)}</p>`)}
    ${o?oe("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${rS(o)}>Bend this strip</a>
            </p>`):p}
  </section>`}function aS({low:e,nominal:t,high:n},s){let o=l=>w(Math.abs(l),{digits:2}),a=l=>`${$(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(t).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(t)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(e)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var oS,rS,C$=f(()=>{y();A();G();le();oS={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};
rS=({metal:e,thickness_mm:t,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:e,thickness:`${t} mm`,die:n})}`});var B$={};ne(B$,{show:()=>iS});async function iS(e){let{metal:t}=e.params,n=`metal=${encodeURIComponent(t)}`;e.
title("Measured springback");let{items:s}=await de("metals",e.signal),o=s.find(({code:d})=>d===t);if(!o)return e.
title("No such metal"),e.render(xe(`No metal ${t} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(`${o.name}: measured springback`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){
let[d,u]=await Promise.all([M("GET",`/learned?${n}`,{signal:e.signal}),M("GET",`/test-bends?${n}`,{signal:e.signal})]),
h=d.body,{evidence:m}=u.body;Object.assign(a,{groups:h.groups,press:h.press}),a.evidence=[...m].sort((b,g)=>b.
made_at<g.made_at?1:-1)}async function l(d,u){if(!a.busy){a.busy=d.id,c();try{let{body:h}=await M("POST",`/evi\
dence/${encodeURIComponent(d.id)}/${u}`,{body:B().name?{by:B().name}:{},timeout:2e4});await r(),J(cS(u,h.cards)),
U()}catch(h){if(e.signal.aborted)return;if(!(h instanceof O||h instanceof H))throw h;J(h.message)}a.busy="",c()}}
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
                  ${P$(a.press)} ${dS(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Results</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(d=>pS(d,a.busy,l))}
                  </ul>
                </section>
              </div>`:xe("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),ye(c,e.signal),c(),e.ready()}function cS(e,t){let n=lS[e];return t.
length?`${n} ${t.length===1?"One card":`${t.length} cards`} would now plan differently: ${t.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function dS(e){return e.length?e.map(({thickness_mm:t,v_opening_mm:n,lot:s,factor:o,deduction:a,
figures:r,said:l})=>i`<section data-test="group" data-thickness=${t} data-v=${n}>
        <h2>
          ${$(w(t,{digits:2}))} over V
          ${$(w(n))}${s?i` <small>lot ${s}</small>`:p}
        </h2>
        ${l.map(c=>i`<p class="together" data-test="together">${k("caution")} ${ke(c)}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${ee(o.nominal,2)} times</b> as much as expected
                (${ee(o.low,2)} to ${ee(o.high,2)}).
              </p>`:p}
        ${a?y$(a):p} ${ci(r)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No result is in use: the figures are the metal’s own.</p>`}function pS(e,t,n){
let s=e.kind==="test bend"?"Test bend":i`First piece${e.code?i` of <a href="/c/${e.code}">${e.code}</a>`:p}`,o=[
e.set_angle_deg===null?"":`set at ${$(S(e.set_angle_deg))}`,$(w(e.thickness_mm,{digits:2})),e.die?`die ${e.die}`:
e.v_opening_mm?`V ${$(w(e.v_opening_mm))}`:"",e.lot?`lot ${e.lot}`:"",re(e.made_at),Ct(e)];return i`<li
    class="row evidence ${e.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${e.id}
    data-forgotten=${String(e.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${$(S(e.measured_deg))}</span> ${s}
        ${e.forgotten?k("unknown","Forgotten"):e.asks?k("unknown","Does not count"):e.outlier?k("caution","Odd\
 one out"):p}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${e.note?i`<p>${e.note}</p>`:p}
      ${e.said.length?i`<p class=${e.asks?"":"more"} data-test="evidence-words">${ko(e.said)}</p>`:p}
    </div>
    <div class="evidence-marks">
      ${uS(e).map(([a,r])=>R(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${t!==""}
            @click=${()=>n(e,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function uS({forgotten:e,asks:t}){return e?[["remember","Use it again"]]:t?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var lS,R$=f(()=>{y();F();fe();at();se();ve();
A();G();Cc();le();C$();Re();Ye();lS={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var I$={};ne(I$,{show:()=>hS});async function hS(e){let t=ka(e.params.kind);if(!t)return e.title("Not here"),e.
render(xe("No such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready();let{one:n,title:s,many:o}=on[t];
e.title(s);let{items:a,kept:r}=await de(t,e.signal),l=Zr(a.map(c=>c.outline_mm??[]));e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?p:R(ce[t],i`<a class="button" href="/shop/${t}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${R(ce[t],"Changing anything needs the shop's server.")}
            </p>`:p}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>t==="metals"?bS(c):mS(t,c,l))}
            </ul>`:xe(`No ${o} yet`,R(ce[t],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),e.ready()}function mS(e,t,n){return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/${e}/${encodeURIComponent(t.code)}">
      <span class="thumb">${Xr(t.outline_mm,n)}</span>
      <span class="who"><span class="lead">${t.code}</span> <span>${t.name}</span>${fS(t)}</span>
      <span class="fact"><span class="what">Place</span>${rn(t)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${t.rating_kn_per_m===null?k("unknown"):$(Ne(t.rating_kn_per_m))}</span
      >
      ${t.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${t.segments_mm.length?i`${t.segments_mm.length}, up to
                    ${$(w(gS(t.segments_mm),{digits:0}))}`:"none"}</span
            >`:p}
      <span class="fact"><span class="what">Condition</span>${$S(t)}</span>
    </a>
  </li>`}function fS({shape:e,openings:t=[]}){return e!=="multi_v"?p:i`<span class="soft" data-test="block-vs"
    >${t.map(n=>`${n.code}: V ${$(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function $S({condition:e,condition_note:t}){if(e==="good")return k("ok","Good");let n=e==="damaged"?k("st\
op","Damaged"):e==="worn"?k("caution","Worn"):k("unknown");return i`${n}${t?i` <span class="soft">${t}</span>`:
p}`}function bS(e){let{tensile_mpa:t}=e;return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/metals/${encodeURIComponent(e.code)}">
      <span class="who"><span class="lead">${e.name}</span> <span class="soft">${e.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${t.low} to ${t.high} MPa</span>
      <span class="fact"><span class="what">Reliability</span>${t.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${e.gauge_family??"none"}</span>
    </a>
  </li>`}var gS,W$=f(()=>{y();fe();A();G();le();Re();Qr();gS=e=>Math.max(...e)});function Rc(e,t){let n=t.params.tool===Bc,s=n?void 0:t.params.tool,o={items:[],etag:null,kept:!1};return{kind:e,
isNew:n,code:s,async read(a){return o=await(ge(ce[e])?xa:de)(e,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(d=>d.code!==s),l=o.items.findIndex(d=>d.code===s),c=a?[{...a,code:s??a.code}]:[];await kp(
e,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){J(a?`${a.name||s} is saved.`:`${s} is taken out.`),$e(`/\
shop/${e}`)},taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var Bc,D$=f(()=>{fe();at();Me();Ie();Bc="+"});async function F$(e,t){let n=await to({...t,blank:{poisson:.3},boxes:wS,toDraft:o=>({code:String(o.code??""),...Zp(
o)}),fromDraft:o=>({...Qp(o),code:o.code.trim()}),draw:()=>n&&s()},e.signal);if(!n.state.kept&&!t.isNew)return e.
title("No such metal"),e.render(xe(`No metal ${t.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(t.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,d={})=>L({name:l,
label:c,value:o.draft[l]??"",change:u=>a(l,u),wrong:o.wrong[l],...d});e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${t.isNew?"New metal":i`${t.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${t.isNew?p:i`<div class="buttons">
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
        ${o.clash?Vs(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):p}
        <form novalidate @submit=${be(n.save)}>
          ${no(ce.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${t.isNew?si(n,t):p} ${r("name","Name")}
                  ${Y({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:Dp,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${Ss.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${Vn({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${Fn.map(l=>_S(l,n))}</div>`)}
          ${oi(n,t,"metal")}
        </form>`)}s(),e.ready()}function _S({name:e,label:t,unit:n,needed:s},{state:o,change:a}){let r=u=>o.draft[`${e}\
.${u}`]??"",l=u=>o.wrong[`${e}.${u}`]??[],c=u=>h=>a(`${e}.${u}`,h),d=!s&&!Ic.some(([u])=>r(u).trim());return i`<fieldset class="panel figure-card" data-test="figure-${e}">
    <legend>${t}${n?i` <span class="hint">(${n})</span>`:p}</legend>
    ${(o.wrong[e]??[]).map(u=>i`<p class="wrong-line">${u}</p>`)}
    <div class="fields three">
      ${Ic.map(([u,h])=>L({name:`${e}.${u}`,label:h,value:r(u),change:c(u),wrong:l(u),keys:"decimal"}))}
    </div>
    ${d?k("unknown","Not known"):p}
    <div class="fields source-line">
      ${Vn({name:`${e}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${Y({name:`${e}.standing`,label:"Reliability",value:r("standing"),options:Wp.map(u=>[u,u]),change:c("sta\
nding"),wrong:l("standing")})}
    </div>
  </fieldset>`}var Ic,wS,j$=f(()=>{y();It();fe();ei();Zi();ai();qs();G();q();le();Re();Ic=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],wS=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...Ss,...Fn.flatMap(({name:e,label:t})=>[...Ic,["source","s\
ource"],["standing","reliability"]].map(([n,s])=>({name:`${e}.${n}`,label:`${t}: ${s.toLowerCase()}`}))),...Fn]});var H$={};ne(H$,{show:()=>vS});async function vS(e){let t=ka(e.params.kind);return t?e.params.tool===Bc&&!ge(ce[t])?
(e.title(`New ${on[t].one}`),e.render(wa(ce[t])),e.ready()):t==="metals"?F$(e,Rc(t,e)):kS(e,t):(e.render(xe("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready())}async function kS(e,t){let n=on[t],s=Rc(
t,e),o=ge(ce[t]),a=null,r=await to({...s,blank:yS[t],boxes:[{name:"code",label:"Code"},...pn(t)],toDraft:c=>({
code:String(c.code??""),...Ra(t,c)}),fromDraft:(c,d)=>({...Ia(t,c,d),code:c.code.trim()}),preview:o?ni(n.one,c=>{
a=c,r.show()},e.signal):void 0,draw:()=>r&&l()},e.signal);if(!r.state.kept&&!s.isNew)return e.title("Not in th\
e crib"),e.render(xe(`No ${n.one} ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${t}">${n.
title}</a>`)),e.ready();e.title(s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=ti(r.state.kept));function l(){
let{state:c,change:d}=r;e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${t}">${n.title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${c.kept?.name}</span>`}
        </h1>
        ${c.clash?Vs(c.clash,n.one,{saveMine:r.save,takeTheirs:r.takeTheirs}):p}
        <form novalidate @submit=${be(r.save)}>
          ${no(ce[t],ii({kind:t,draft:c.draft,change:d,wrong:c.wrong,preview:a,reader:r.reader,first:s.isNew?si(
r,s):p}))}
          ${oi(r,s,n.one)}
        </form>`)}l(),e.ready()}var yS,U$=f(()=>{y();fe();It();ei();D$();Oc();Me();qs();ai();le();Re();Pc();j$();
q();yS={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"u\
nknown",up:1},holders:{shape:"block",condition:"unknown"}}});var q$={};ne(q$,{show:()=>SS});async function SS(e){e.title("Crew");let{signal:t}=e,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>e.render(MS(n,o)),o=TS(n,s,
t),[a,r,l]=await Promise.all([M("GET","/devices",{signal:t}),M("GET","/crew-options",{signal:t}),Mn(t).then(({
network:d})=>d?M("GET","/join",{signal:t}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),e.ready();let c=setInterval(o.look,xS);t.addEventListener("abort",()=>clearInterval(
c))}function TS(e,t,n){let s=async a=>{e.fault="";try{await a()}catch(r){if(n.aborted)return;e.fault=ia(r)}t()};
async function o(){if(document.visibilityState!=="visible")return;let a=await M("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;e.devices=a.body.devices;let r=e.offer&&e.devices.find(l=>!e.known.has(
l.id)&&!l.revoked_at);r?Object.assign(e,{came:r,offer:null,name:""}):e.offer&&Date.parse(e.offer.expires_at)<=
Date.now()&&(e.offer=null),t()}return{look:o,draw:t,offer:()=>s(async()=>{let{body:a}=await M("POST","/pairing\
s",{body:{role:e.role,name:e.name.trim()},signal:n});Object.assign(e,{offer:a,came:null,known:new Set(e.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Remove ${a.name}? It can read nothing any more, and its cards\
 go from it when it next asks.`)&&(await M("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await M("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await M(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),e.open=a})}}function MS(e,t){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${e.fault?i`<p class="wrong" role="alert" data-test="fault">${e.fault}</p>`:p}
    ${e.joining?i`<div class="crew-grid">${AS(e,t)}${LS(e.joining)}</div>`:OS()}
    <section class="panel" data-test="devices">
      <h2>Devices in the shop</h2>
      ${ES(e,t)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${Z({name:"labels-open",label:"A device that is not paired",value:e.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>t.setOpen(n==="open")})}
    </section>`}function AS(e,t){let{offer:n,came:s}=e;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${et[n.role].word}${n.name?i`: <b>${n.name}</b>`:p}. Works once, until
        ${re(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${V$(n.qr)} />
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
          </p>`:p}
    ${Z({name:"role",label:"As",value:e.role,options:G$,change:o=>{e.role=o,t.draw()}})}
    <p class="hint" data-test="role-does">${et[e.role].word}: ${et[e.role].does}.</p>
    ${L({name:"device-name",label:"Whose?",value:e.name,placeholder:"Ann's phone",change:o=>e.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${t.offer}>
      Show a pairing code
    </button>
  </section>`}function LS(e){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${V$(e.qr)} />
    <p>${e.shop}: ${e.https.map(t=>i`<span class="address">${t}</span> `)}</p>
    ${e.http.length?i`<p class="hint">Or type <span class="address">${e.http[0]}/join</span></p>`:p}
    ${e.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${NS(e.fingerprint)}</p>`:p}
  </section>`}function ES({devices:e},t){return e.length?i`<ul class="plain-list devices">
    ${e.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:p}
            <span class="soft"
              >${n.revoked_at?`removed ${re(n.revoked_at)}`:`last seen ${re(n.seen_at)}`},
              paired ${re(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${k("stop","Removed")}</p>`:i`${Y({name:`role-${n.id}`,label:`Role of ${n.name}`,
value:n.role,options:G$,change:s=>t.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>t.revoke(n)}>
                    Remove…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var xS,G$,OS,V$,NS,z$=f(()=>{y();F();On();
G();q();Ye();xS=2e3,G$=Object.entries(et).map(([e,{word:t}])=>[e,t]);OS=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;V$=e=>`data:image/svg+xml,${encodeURIComponent(e)}`,NS=e=>e.replace(/(.{4})(?=.)/g,"$1 ")});var di,Wc=f(()=>{y();di=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop; what still waits to be sent does not, so open Flangebook in the shop’s network first. Some phones ask
  each time before the camera may be used.
</p>`});var Y$={};ne(Y$,{show:()=>PS});async function PS(e){e.title("Pair this device"),e.render(Oe("Asking the shop…"));
let t={me:null,code:CS(),name:B().name,fault:"",asking:!1,waits:0},n=()=>e.render(BS(t,n));t.me=await Mn(e.signal).
catch(()=>null),t.waits=(await ze().catch(()=>[])).length,n(),e.ready()}function CS(){if(location.pathname!=="\
/pair"||!location.hash)return"";let e=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),e}function BS(e,t){let{me:n}=e;return n?n.role?RS(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${K$[Xt()??n.why]?i`<p data-test="why">${k("caution","Not paired")} ${K$[Xt()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
    ${e.waits?i`<p data-test="waits">
            ${e.waits===1?"1 result":`${e.waits} results`} typed here still
            ${e.waits===1?"waits":"wait"}. Pair again and
            ${e.waits===1?"it is":"they are"} sent.
          </p>`:p}
    <ol class="ways">
      <li>The owner opens <b>Shop, Crew</b> on the shop's computer or a paired phone, and shows a code.</li>
      <li>Point this phone's camera at it, or type the eight characters here.</li>
    </ol>
    <form class="panel" novalidate @submit=${be(()=>WS(e,t))}>
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
          </p>`:p}
  </div>`:i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      Pairing needs it. Try again when this device is in the shop's network.
      <p>
        <button type="button" class="button next" data-test="try-again" @click=${()=>location.reload()}>
          Try again
        </button>
      </p>
    </div>`}function RS(e){let t=e.role;return e.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${k("ok",et[t].word)} <b>${e.name}</b>: ${et[t].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${di}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${IS}>Unpair this device…</button>
    </p>
  </div>`}async function IS(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await jd()}async function WS(e,t){Object.assign(e,{asking:!0,fault:""}),t();try{await Fd(e.
code,e.name.trim()),U(),$e(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
e,{asking:!1,fault:ia(n)}),t()}}var K$,J$=f(()=>{y();On();Ce();Ie();se();ve();G();q();Wc();Re();K$={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function X$({show:e,done:t,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,d){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),e();try{if(o.size>FS)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");let u=await Jo(`/import?${d}`,
o,"application/json",n,DS);s.told=u.body}catch(u){if(n.aborted)return;s.wrong=jS(u)}s.busy="",e(),s.told?.imported&&
t()}}return{state:s,choose:a,take:r}}function jS(e){if(!(e instanceof O))return[K(e)];let t=Object.entries(e.errors).
slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[e.message,...t]}var DS,FS,Z$=f(()=>{F();DS=3e5,FS=6e7});function tb({state:e,choose:t,take:n}){let{name:s,busy:o,told:a,wrong:r}=e;return i`<section class="panel" data-test="panel-import">
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
      ${o?i`<p>${o==="looking"?`Looking through ${s}…`:`Bringing ${s} in…`}</p>`:p}
      ${r.length?US(s,r):p}
      ${a?a.imported?qS(a):GS(s,a,n):p}
    </div>
  </section>`}function GS(e,t,n){return i`<div data-test="import-preview">
    <p><b>${e}</b>, exported ${re(t.exported_at)} by ${t.made_by}</p>
    <table>
      ${ut("What","In the file","In the shop now")}
      <tbody>
        ${HS.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${eb(t.holds[s])}</td>
              <td>${eb(t.here[s])}</td>
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
              @click=${()=>VS(t)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var HS,Q$,US,eb,VS,qS,nb=f(()=>{y();G();Ye();Gs();HS=[["press","Press"],["tools","Tools"],["metals",
"Metals"],["cards","Cards"],["revisions","Revisions"],["trials","Results"],["test_bends","Test bends"]],Q$=8;US=
(e,t)=>i`<div data-test="import-wrong">
    <p>${k("stop","Not brought in")} ${e}</p>
    <ul>
      ${t.slice(0,Q$).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${t.length>Q$?i`<p>There are more.</p>`:p}
    <p>Nothing in the shop was changed.</p>
  </div>`;eb=e=>e===""?"none":e,VS=({here:e,holds:t})=>confirm(`Replace the shop? Its ${e.cards} cards and ${e.
trials} results go, the file's ${t.cards} cards and ${t.trials} results come. A backup is made first.`),qS=({holds:e,
kept_as:t})=>i`<div data-test="import-done">
    <p>${k("ok","Brought in")} ${e.cards} cards, ${e.trials} results.</p>
    ${t?i`<p>The shop that was there is kept as ${t}.</p>`:p}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var sb={};ne(sb,{show:()=>KS});async function KS(e){e.title("Backups and export");let t=X$({show:a,done:s,signal:e.
signal}),n=await o();async function s(){U(),n=await o(),a()}async function o(){let{body:r}=await M("GET","/bac\
kups",{signal:e.signal});return r}function a(){e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Backups and export</h1>
        <div class="settings-grid">
          ${YS(n)}
          <div class="stack">${ZS()}${tb(t)}</div>
        </div>`)}a(),e.ready()}function YS({standing:e,last_good_at:t,trouble:n,folder:s,backups:o}){return i`<section class="panel" data-test="panel-backups">
    <h2>Backups</h2>
    <p data-test="standing">${JS(e)}</p>
    ${t?i`<p class="lead-line" data-test="last-good">Last good backup: ${re(t)}</p>`:p}
    ${n?i`<p class="wrong" data-test="trouble">${re(n.at)}: ${n.words}</p>`:p}
    <p>
      The server makes one each night, looks it through, and keeps seven days and four weeks. Put one on
      another disk, too: a backup beside the shop burns with it.
    </p>
    ${o.length?i`<table data-test="backups">
            ${ut("Made","How","Size")}
            <tbody>
              ${o.map(a=>i`<tr>
                    <td>${re(a.at)}</td>
                    <td>${zS[a.kind]}</td>
                    <td>${XS(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:p}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> restores one.
    </p>
  </section>`}function JS(e){return e==="ok"?k("ok","There is a good backup"):e==="late"?k("caution","The last\
 backup is over two days old"):e==="trouble"?k("stop","The last backup could not be made"):k("unknown","There \
is no backup yet")}function ZS(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and results, as open JSON. Bring it in again here, or
      read it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var zS,XS,ob=f(()=>{y();F();Z$();ve();G();nb();Ye();Gs();zS={night:"automatic","by-hand":"by han\
d",replaced:"before it was replaced"};XS=e=>`${(e/1e6).toFixed(1)} MB`});async function ab(e){let{code:t,part:n,title:s,note:o,created_by:a}=e,r={code:t,part:{...n,title:s},note:o,by:a},
{body:l}=await M("POST","/cards",{body:r,timeout:2e4}),c=_o(await ft(l),[]);await bt(c,fa(us(e,["archived","se\
ttings"]),c),{reason:"Restored from a device"}),await Cd(e),await ra(t)}var rb=f(()=>{F();ms();ln();Be()});function ib(e){return e.length?i`<section class="panel" data-test="lost">
    <h2>Not in the shop any more</h2>
    <p>
      The shop was restored from an earlier backup and does not know these cards. This device still has
      them.${R("cards.create",p,i` <span data-test="owners"
          >The owner can restore them from here, once this is an owner's device.</span
        >`)}
    </p>
    <ul class="waiting-list">
      ${e.map(t=>i`<li data-test="lost-${t.code}">
            <p><b>${t.title}</b> ${I(t.code)}</p>
            <div class="buttons">
              ${R("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>QS(t)}>
                  Restore it
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>e1(t)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:p}async function QS(e){try{await ab(e),await U()}catch(t){J(K(t))}}async function e1(e){confirm(
`Throw away the card ${I(e.code)}, ${e.title}? This device may have the only copy.`)&&(await ra(e.code),await gs())}
var lb=f(()=>{y();F();ue();at();rb();Be();ve();le()});var pb={};ne(pb,{show:()=>t1});async function t1(e){e.title("Settings");let t={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([Jt().catch(()=>[]),ze().catch(()=>[]),aa().catch(()=>[])]);t=
{...t,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await M("GET","/cards?limit=1",{signal:e.signal,
timeout:4e3}).catch(()=>null);t={...t,total:a?.body?.total??null},o()}function o(){e.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${s1(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${o1(o)}
          </section>
          ${n1()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${a1(t.entries)}
          </section>
          ${ib(t.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${l1(t)} ${di}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:e.signal}),await n(),e.ready(),await s()}function n1(){
let e=ls();return!e||e==="owner"?p:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${et[e].word}</b>: ${et[e].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function s1(e){let{units:t,inches:n}=B(),s=o=>{qt(o),e()};return i`${Z({name:"units",label:"Unit\
s",value:t,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${t==="inch"?Z({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):p}
  ${Z({name:"paper",label:"Paper",value:B().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${t==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:p}`}function o1(e){let{theme:t,name:n}=B();
return i`${Z({name:"theme",label:"Theme",value:t,options:[["system","As the device"],["day","Day"],["shop","Sh\
op, dark"]],change:s=>{qt({theme:s==="shop"||s==="day"?s:"system"}),e()}})}
  ${L({name:"name",label:"Your name",value:n,change:s=>qt({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function a1(e){return e.length?i`<ul class="waiting-list">
      ${e.map(t=>i`<li data-test="waits-${t.id}">
            <p>
              <b>${db(t)}</b> on <a href="/c/${t.code}">${I(t.code)}</a>,
              ${re(t.queued_at)} by this device’s clock
              ${t.body.note?i`<br /><span class="soft">${t.body.note}</span>`:p}
            </p>
            ${t.refused?i`<p data-test="refused">
                      ${k("caution","Refused")} ${t.missing?`${Uo(t)}.`:""}
                      ${t.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>r1(t)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>i1(t)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${Uo(t)}. It is sent when the shop's server
                    ${t.late?"takes it":"answers"}.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>U()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every result, note and edit typed here is saved in the shop.
    </p>`}function db({kind:e,body:t}){if(e==="trial")return`${Vt(t)}, step ${t.step}`;if(e==="note")return"No\
te";let n=Object.keys(t).filter(s=>s in cb).map(s=>cb[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was resolved"}async function r1(e){await Sd(e.id),await U()}async function i1(e){confirm(`Throw away ${db(e)} \
on ${I(e.code)}? It cannot be brought back.`)&&(await na(e.id),await gs())}function l1({cards:e,total:t}){let{
reached:n,at:s}=tt(),o=t!==null&&e>=t,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${e}${t===null?p:` of ${t}`}</dd>
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
    ${n===!1?i`<p>${k("caution","Not connected now")}</p>`:p}
    <button type="button" class="button" data-test="check-now" @click=${()=>U()}>Look again</button>`}var cb,ub=f(
()=>{y();F();On();ue();Ce();Me();se();Be();ve();G();q();Wc();Ks();lb();_n();Ye();cb={title:"title",note:"note",
archived:"in use or archived",settings:"settings"}});On();Hi();Ie();var hb={home:()=>Promise.resolve().then(()=>(Ip(),Rp)),bend:()=>Promise.resolve().then(()=>(Fu(),Du)),"press-s\
creen":()=>Promise.resolve().then(()=>(Wh(),Ih)),part:()=>Promise.resolve().then(()=>(of(),sf)),scan:()=>Promise.resolve().then(()=>(Tf(),Sf)),
card:()=>Promise.resolve().then(()=>(Ff(),Df)),step:()=>Promise.resolve().then(()=>(Gf(),Uf)),result:()=>Promise.resolve().then(()=>(og(),sg)),
history:()=>Promise.resolve().then(()=>(ug(),pg)),note:()=>Promise.resolve().then(()=>(mg(),hg)),resolve:()=>Promise.resolve().then(()=>(gg(),fg)),
print:()=>Promise.resolve().then(()=>(_g(),wg)),label:()=>Promise.resolve().then(()=>(kg(),vg)),labels:()=>Promise.resolve().then(()=>(Sg(),xg)),
chart:()=>Promise.resolve().then(()=>(Ag(),Og)),shop:()=>Promise.resolve().then(()=>(Rg(),Bg)),press:()=>Promise.resolve().then(()=>(r$(),a$)),
"test-bend":()=>Promise.resolve().then(()=>(N$(),E$)),learned:()=>Promise.resolve().then(()=>(R$(),B$)),tools:()=>Promise.resolve().then(()=>(W$(),I$)),
tool:()=>Promise.resolve().then(()=>(U$(),H$)),crew:()=>Promise.resolve().then(()=>(z$(),q$)),pair:()=>Promise.resolve().then(()=>(J$(),Y$)),
backups:()=>Promise.resolve().then(()=>(ob(),sb)),settings:()=>Promise.resolve().then(()=>(ub(),pb))};se();ve();at();async function fb(){if("serviceWorker"in navigator)try{let e=await navigator.serviceWorker.register("/sw.\
js");e.waiting&&mb(e.waiting),e.addEventListener("updatefound",()=>{let t=e.installing;t?.addEventListener("st\
atechange",()=>{t.state==="installed"&&navigator.serviceWorker.controller&&mb(t)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(e){console.
warn("The app could not be kept on this device:",e)}}function mb(e){J("A newer Flangebook is here. It opens wh\
en you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),e.postMessage("take over")}})}oo();ye(()=>oo());document.addEventListener("sync",()=>tn());document.addEventListener("held",()=>tn());document.
addEventListener("storage",e=>{tn(),!e.detail.silent&&(document.documentElement.dataset.ready==="failed"&&Pt(),
U())});document.addEventListener("turned-away",()=>{tn(),document.documentElement.dataset.screen!=="pair"&&Pt()});
document.addEventListener("rights",()=>{Xt()===null&&document.documentElement.dataset.screen!=="pair"&&_p()});
Hd();yp(hb).finally(()=>{mp(),fb()});
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
