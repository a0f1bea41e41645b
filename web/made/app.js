var uy=Object.defineProperty;var m=(e,t,n)=>()=>{if(n)throw n[0];try{return e&&(t=e(e=0)),t}catch(s){throw n=[s],s}};var ie=(e,t)=>{for(var n in t)uy(e,n,{get:t[n],enumerable:!0})};function gt(e){try{return JSON.parse(localStorage.getItem(e)??"null")}catch{return null}}function Ye(e,t){try{
return t===null?localStorage.removeItem(e):localStorage.setItem(e,JSON.stringify(t)),!0}catch{return!1}}var Os=m(
()=>{});function Co(e){let t=e.split("/").filter(Boolean);t[0]?.toLowerCase()==="c"&&(t[0]="c");for(let n of zd){let s=hy(
n.path.split("/").filter(Boolean),t);if(s)return{route:n,params:s}}}function hy(e,t){if(e.length!==t.length)return;
let n={};for(let[s,o]of e.entries()){if(!o.startsWith(":")){if(o!==t[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(
t[s])}catch{return}}return n}var zd,qd,il=m(()=>{zd=[{name:"home",path:"/"},{name:"bend",path:"/bend",needs:"b\
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
{name:"words",path:"/words"}],qd=e=>zd.find(t=>t.name===e)});function fy(){let e=gt(Kd);return e?.refused?e:my}function Gt(e){let t=Co(e.split("?")[0])?.route.needs;return!t||
K(t)}function Yd({role:e,refused:t={}}){let n={role:e,refused:t};return JSON.stringify(n)===JSON.stringify(Wn)?
!1:(Wn=n,Ye(Kd,Wn),!0)}function Xd(e){e&&e!==Wn.role&&document.dispatchEvent(new CustomEvent("other-role"))}var Kd,
my,Wn,As,K,Zd,we=m(()=>{Os();il();Kd="flangebook.rights",my={role:"owner",refused:{}},Wn=fy();As=()=>Wn.role,K=
e=>!Object.hasOwn(Wn.refused,e);Zd=e=>Wn.refused[e]??"owner"});function $y(){return{...gy,...gt(cl)}}function Jd(){try{return localStorage.getItem(cl)!==null}catch{return!1}}
function P(){return Dn}function Xe(e){Dn={...Dn,...e},Ye(cl,Dn),Ro();for(let t of ll)t(Dn)}function xe(e,t){ll.
add(e),t?.addEventListener("abort",()=>ll.delete(e))}function Ro(){let e=Qd.matches?"shop":"day";document.documentElement.
dataset.theme=Dn.theme==="system"?e:Dn.theme}var cl,gy,ll,Dn,Qd,ae=m(()=>{Os();cl="flangebook.settings",gy={units:"\
mm",inches:"decimal",theme:"system",name:"",paper:"A4"},ll=new Set,Dn=$y();Qd=matchMedia("(prefers-color-schem\
e: dark)");Qd.addEventListener("change",Ro)});function te(e,t){let n=e.toFixed(t);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(e,t={}){
return e==null?{text:"–",unit:""}:Je()?P().inches==="fraction"?{text:wy(e/Se),unit:"in"}:{text:te(e/Se,(t.digits??
1)+2),unit:"in"}:{text:te(e,t.digits??1),unit:"mm"}}function wy(e){let t=Math.round(Math.abs(e)*64),n=t%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(t/64),a=e<0&&t>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function me(e,{up:t=!1}={}){if(e==null)return{text:"–",unit:""};let n=Je()?e/zt:e,s=Math.abs(
n)<10?1:0;return{text:te(t?ep(n,s):n,s),unit:Je()?"tons":"kN"}}function Ie(e,{up:t=!1}={}){if(e==null)return{text:"\
–",unit:""};let n=Je()?e/zt*Bo:e,s=Math.abs(n)<20?1:0;return{text:te(t?ep(n,s):n,s),unit:Je()?"tons/ft":"kN/\
m"}}function ep(e,t){let n=10**t;return Math.ceil(e*n-1e-9)/n}function M(e,t=1){return e==null?{text:"–",unit:""}:
{text:te(e,t),unit:"°"}}function Io(e){if(e==null)return{text:"–",unit:""};let t=Je()?e/by:e;return{text:te(
t,t<10?2:1),unit:Je()?"lb":"kg"}}function qt(e,t){if(/_(low|high)$/.test(e))return qt(e.replace(/_(low|high)$/,
""),t);if(e.endsWith("_kn_per_m"))return Ie(t);if(e.endsWith("_mm_s")){let s=w(t,{digits:0});return{text:s.text,
unit:`${s.unit}/s`}}if(e.endsWith("_mm"))return w(t,{digits:Math.abs(t)<10?2:1});if(e.endsWith("_kn"))return me(
t);if(e.endsWith("_deg"))return M(t);if(e.endsWith("_kg"))return Io(t);if(e.endsWith("_percent"))return{text:te(
t,0),unit:"%"};let n=Math.abs(t)<10?100:Math.abs(t)<100?10:1;return{text:String(Math.round(t*n)/n),unit:""}}function $(e){
return e.unit==="°"?`${e.text}°`:`${e.text} ${e.unit}`.trim()}function le({text:e,unit:t}){return $({text:t===
"in"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,""),unit:t})}function Qe(e,t){return e.replace(/\{(\w+)\}/g,
(n,s)=>s in t?le(qt(s,t[s])):n)}function $t(){return Je()?{unit:"tons",size:zt}:{unit:"kN",size:1}}function rt(){
return Je()?{unit:"tons/ft",size:zt/Bo}:{unit:"kN/m",size:1}}function dl(e,{size:t}){return e==null?"":String(
t===1?e:Number((e/t).toFixed(4)))}function un(e,{unit:t}){let n=Ls(e);return tp.test(n)?`${n} ${t}`.replace(" \
tons"," short tons"):n.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i,(s,o,a="")=>{let r=a?a.includes("ft"):Je();
return`${o}${r?"short tons":"t"}${a}`})}function N(){return Je()?"in":"mm"}function ne(e,t=N()){let n=Ls(e);return tp.
test(n)||t==="in"&&sp.test(n)?`${n} ${t}`:n}function Ls(e){let t=e.trim().replace("−","-");return np.test(t)?
t:t.replace(/^([+-]?\d+),(\d+)(?![\d.,])/,"$1.$2")}function op(e,t=N()){let n=e.trim().replace("−","-"),[,s,
o,a]=np.exec(n)??[];return s?[String(+`${s}.${o}`),`${s}${o}`].map(l=>a?`${l} ${a}`:l):t==="mm"&&sp.test(n)?[`${n}\
 in`]:[]}function ap(e){let[,t,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.exec(e??"")??[];return t?Number(t)*(n===
"in"?Se:1):null}function Y(e){if(e==null)return"";let t=Je()?e/Se:e;return String(Number(t.toFixed(Je()?4:3)))}
var Se,zt,Na,by,Bo,Je,tp,np,sp,L=m(()=>{ae();Se=25.4,zt=8.896443230521,Na=9.80665,by=.45359237,Bo=.3048,Je=()=>P().
units==="inch";tp=/^[+-]?(\d+\.?\d*|\.\d+)$/,np=/^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/,sp=/^[+-]?(\d+[\s-]+)?\d+\s*\/\s*\d+$/});async function O(e,t,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return rp(e,t,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function Pa(e,t,n,s,o=2e4){
return rp("POST",e,t,{type:n,signal:s,timeout:o})}async function rp(e,t,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let d=AbortSignal.
timeout(l),u=performance.now(),h;try{h=await fetch(`/api/v1${t}`,{method:e,headers:c,body:n,signal:r?AbortSignal.
any([r,d]):d,cache:"no-store"})}catch(g){throw r?.aborted?g:new V}if(Xd(h.headers.get("Flangebook-Role")),!h.ok&&
h.status!==304)throw await pl(h,u);let f=yy.includes(h.status)?null:await _y(h,r);return{status:h.status,body:f,
etag:h.headers.get("ETag"),at:xy(h)}}async function _y(e,t){try{return await e.json()}catch(n){throw t?.aborted?
n:new V}}async function pl(e,t=1/0){let n=await e.json().catch(()=>null);if(!n?.status)throw new V;let s=new E(
n);return vy(s,t),s}function vy({status:e,errors:t},n){e===401&&t.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:t.pairing[0],asked:n}})),e===403&&t.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function ip(e,t,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${e}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await pl(c);for await(let d of ky(c.body,l)){let u=JSON.
parse(d);if(u.problem)throw new E(u.problem);if(!u.progress)return u;s(u.progress)}throw new V}catch(c){throw n.
aborted||c instanceof E?c:new V}finally{clearTimeout(r)}}async function*ky(e,t){let n=e.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;t();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function lp(e,t,n){let s;try{let a=await fetch(`/a\
pi/v1${e}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await pl(a);s=await a.blob()}catch(a){throw a instanceof E?a:new V}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var E,V,X,yy,xy,j=m(()=>{we();L();E=class extends Error{constructor(t){let n=t.said?Qe(t.said.template,
t.said.numbers):"";if(super(n||t.detail||t.title),this.status=t.status,this.title=t.title,this.errors=t.errors??
{},n)for(let s of Object.keys(this.errors))this.errors[s]=[n];this.outline=t.outline??null}},V=class extends Error{constructor(){
super("The shop's server does not answer.")}},X=e=>e instanceof Error?e.message:String(e);yy=[204,304];xy=e=>new Date(
e.headers.get("Date")??Date.now()).toISOString()});function Sy(){return cp||(cp=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function Ty(){return dp||
(dp=["advance","continue","continuePrimaryKey"].map(e=>IDBCursor.prototype[e]))}function My(e){let t=new Promise(
(n,s)=>{let o=()=>{e.removeEventListener("success",a),e.removeEventListener("error",r)},a=()=>{n(Fn(e.result)),
o()},r=()=>{s(e.error),o()};e.addEventListener("success",a),e.addEventListener("error",r)});return Ca.set(t,e),
t}function Oy(e){if(fl.has(e))return;let t=new Promise((n,s)=>{let o=()=>{e.removeEventListener("complete",a),
e.removeEventListener("error",r),e.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(e.error||new DOMException(
"AbortError","AbortError")),o()};e.addEventListener("complete",a),e.addEventListener("error",r),e.addEventListener(
"abort",r)});fl.set(e,t)}function mp(e){gl=e(gl)}function Ay(e){return Ty().includes(e)?function(...t){return e.
apply($l(this),t),Fn(this.request)}:function(...t){return Fn(e.apply($l(this),t))}}function Ly(e){return typeof e==
"function"?Ay(e):(e instanceof IDBTransaction&&Oy(e),ml(e,Sy())?new Proxy(e,gl):e)}function Fn(e){if(e instanceof
IDBRequest)return My(e);if(ul.has(e))return ul.get(e);let t=Ly(e);return Object.is(t,e)||(ul.set(e,t),Ca.set(t,
e)),t}function fp(e,t,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(e,t),l=Fn(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(Fn(r.result),c.oldVersion,c.newVersion,Fn(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",d=>o(d.oldVersion,d.newVersion,d))}).catch(()=>{}),l}function pp(e,t){if(!(e instanceof IDBDatabase&&
!(t in e)&&typeof t=="string"))return;if(hl[t])return hl[t];let n=t.replace(/FromIndex$/,""),s=t!==n,o=Ny.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||Ey.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),d=c.store;return s&&(d=d.index(l.shift())),(await Promise.all([d[n](...l),
o&&c.done]))[0]};return hl[t]=a}async function*Ry(...e){let t=this;if(t instanceof IDBCursor||(t=await t.openCursor(
...e)),!t)return;t=t;let n=new Proxy(t,Cy);for(gp.set(n,t),Ca.set(n,$l(t));t;)yield n,t=await(bl.get(n)||t.continue()),
bl.delete(n)}function hp(e,t){return t===Symbol.asyncIterator&&ml(e,[IDBIndex,IDBObjectStore,IDBCursor])||t===
"iterate"&&ml(e,[IDBIndex,IDBObjectStore])}var ml,cp,dp,fl,ul,Ca,gl,$l,Ey,Ny,hl,Py,up,bl,gp,Cy,$p=m(()=>{ml=(e,t)=>t.
some(n=>e instanceof n);fl=new WeakMap,ul=new WeakMap,Ca=new WeakMap;gl={get(e,t,n){if(e instanceof IDBTransaction){
if(t==="done")return fl.get(e);if(t==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return Fn(e[t])},set(e,t,n){return e[t]=n,!0},has(e,t){return e instanceof IDBTransaction&&(t==="done"||t==="s\
tore")?!0:t in e}};$l=e=>Ca.get(e);Ey=["get","getKey","getAll","getAllKeys","count"],Ny=["put","add","delete",
"clear"],hl={};mp(e=>({...e,get:(t,n,s)=>pp(t,n)||e.get(t,n,s),has:(t,n)=>!!pp(t,n)||e.has(t,n)}));Py=["advanc\
e","continue","continuePrimaryKey"],up={},bl=new WeakMap,gp=new WeakMap,Cy={get(e,t){if(!Py.includes(t))return e[t];
let n=up[t];return n||(n=up[t]=function(...s){bl.set(this,gp.get(this)[t](...s))}),n}};mp(e=>({...e,get(t,n,s){
return hp(t,n)?Ry:e.get(t,n,s)},has(t,n){return hp(t,n)||e.has(t,n)}}))});function wl(){return Es??=fp("flangebook",By,{upgrade:(e,t,n,s)=>Wy(e,t,s),blocking:Iy,terminated:yl}).catch(e=>{
throw Es=void 0,e}),Es}function yl(){Es=void 0}async function Iy(){(await Es)?.close(),Es=void 0}async function Wy(e,t,n){
t<1&&(e.createObjectStore("cards",{keyPath:"code"}),e.createObjectStore("list",{keyPath:"code"}),e.createObjectStore(
"meta"),e.createObjectStore("outbox",{keyPath:"id"})),t<2&&(e.createObjectStore("sent",{keyPath:"id"}),e.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),t===1&&await Dy(n)),t<3&&(e.createObjectStore(
"runs",{keyPath:"id"}).createIndex("code","code"),e.createObjectStore("lost_runs",{keyPath:"id"}),n.objectStore(
"meta").delete("cursor"))}async function Dy(e){let t=e.objectStore("outbox"),s=(await t.getAll()).sort((a,r)=>a.
queued_at<r.queued_at?-1:1),o=0;for(let{trial:a,...r}of s)t.put({...r,kind:"trial",body:a,number:++o});e.objectStore(
"meta").put(o,"number"),e.objectStore("meta").delete("cursor")}function Fy(e){return e instanceof DOMException?
e.name==="QuotaExceededError"?"This device is full: free some room on it.":"This browser lets nothing be kept \
here, as private windows do.":e instanceof Error?e.message:String(e)}var By,Es,Ra,_l=m(()=>{$p();By=3;Ra=class extends Error{constructor(t){
super(Fy(t))}}});async function Ns(e,t,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${e}`,{signal:AbortSignal.timeout(t)},o)}catch(a){if(s)throw a;return n()}}var Ba=m(()=>{});function De(e,t){return _p(wp,n=>yp(e,"readonly",{},t,n))}function Ee(e,t,{patience:n=wp,durability:s="relaxed"}={}){
return _p(n,o=>Ns("writer",n/2,()=>yp(e,"readwrite",{durability:s},t,o)))}async function yp(e,t,n,s,o){let a=await Uy(
e,t,n);!o.now&&t==="readwrite"&&(a.abort(),await a.done),o.transaction=a,Ia.add(a),a.done.catch(()=>{}).finally(
()=>Ia.delete(a));try{let r=await s(jy(a));return t==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw kl(
a),a.error??r}}async function Uy(e,t,n){try{return(await wl()).transaction(e,t,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return yl(),(await wl()).transaction(e,t,n)}}function kl(e){try{e.abort()}catch{}}
async function _p(e,t){let n={now:!0},s=t(n);s.then(()=>vp(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new it),Hn?Hy:e)});try{return await Promise.race([s,a])}catch(r){throw r instanceof it&&Vy(n),r}finally{
clearTimeout(o)}}function Vy(e){e.now=!1,e.transaction?.mode==="readwrite"&&kl(e.transaction),vp(!0)}function vp(e){
e!==Hn&&(Hn=e,document.documentElement.dataset.storage=Hn?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:Hn}})))}var wp,Hy,it,Ia,Hn,vl,Wo,jy,bp,Kt=m(()=>{_l();Ba();wp=1e3,Hy=100,it=class extends Error{constructor(){
super("This device's storage does not answer.")}},Ia=new Set,Hn=!1,vl=!1,Wo=()=>Hn;jy=e=>({store:bp(e.objectStore(
e.objectStoreNames[0])),objectStore:t=>bp(e.objectStore(t))}),bp=e=>new Proxy(e,{get:(t,n)=>typeof e[n]=="func\
tion"?(...s)=>{let o=e[n](...s);return o?.catch?.(()=>{}),o}:e[n]});addEventListener("pagehide",()=>{vl||=Ia.size>
0;for(let e of Ia)kl(e)});addEventListener("pageshow",e=>{e.persisted&&vl&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:Hn}})),vl=!1})});function Ne(){if(crypto.randomUUID)return crypto.randomUUID();let e=crypto.getRandomValues(new Uint8Array(16));
return e[6]=e[6]&15|64,e[8]=e[8]&63|128,[...e].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function Wa(e){try{return await Ee(["outbox","meta"],t=>qy(t,e),kp)}catch(t){throw new Ra(
t)}}async function qy(e,t){let[n,s]=[e.objectStore("outbox"),e.objectStore("meta")],o=(await n.getAll()).sort(
xl).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...t,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function xp(){return Ee("meta",async({store:e})=>{let t=(await e.get(
"number")??0)+1;return e.put(t,"number"),t})}async function et(){return(await De("outbox",({store:e})=>e.getAll())).
sort(xl)}async function Zt(e){return(await et()).filter(t=>t.code===e)}async function Do(e){return De("outbox",
({store:t})=>t.get(e))}async function Da(e){return De("sent",({store:t})=>t.get(e))}async function jn(e,t){await Ee(
"outbox",async({store:n})=>{let s=await n.get(e);s&&n.put({...s,...t})},kp)}async function Fa(e){let t=await Do(
e);await Ee("outbox",({store:n})=>n.delete(e)),t?.after&&await Ha(e,t.after)}async function Ha(e,t,n=()=>!0){for(let s of await et())
s.after===e&&n(s)&&await jn(s.id,{after:t})}async function Fo(e,t,n=!1){let{again:s,refused:o,late:a,missing:r,
parked:l,...c}=e;try{await Ee(["outbox","sent"],d=>{d.objectStore("sent").put({...c,proposed:n,sent_at:e.sent_at??
t}),d.objectStore("outbox").delete(e.id)})}catch{await Ee("outbox",({store:d})=>d.delete(e.id))}}async function Tp(e){
let t=Date.parse(e)-Gy*zy;await Ee("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at??
"")<t&&n.delete(s.id)})}async function Mp(e){let[t,n]=[e.objectStore("outbox"),e.objectStore("sent")],s=(await n.
getAll()).sort(xl),o=await t.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...d}=r;a.has(
r.id)||t.put({...d,parked:c,again:!0,number:l-s.length})}),n.clear()}var Gy,zy,kp,xl,Sp,Pe=m(()=>{_l();Kt();Gy=
90,zy=864e5,kp={durability:"strict"};xl=(e,t)=>e.number-t.number;Sp=e=>jn(e,{refused:void 0})});async function Op(e){let t=(await Zt(e)).filter(({kind:r,refused:l})=>r==="run"&&!l),n=await De("runs",({store:r})=>r.
index("code").getAll(e)),s=t.map(({body:r})=>r),o=new Set(n.map(({id:r})=>r));return[...n.sort((r,l)=>r.change-
l.change),...s.filter(({id:r})=>!o.has(r))]}async function Ap(e){await Ee("runs",({store:t})=>t.put(e))}async function Lp(e){
let[t,n]=[e.objectStore("runs"),e.objectStore("lost_runs")];for(let s of await t.getAll())n.put(s);t.clear()}async function Ep(e,t){
let n=e.objectStore("lost_runs");for(let{id:c}of t.run_entries??[])n.delete(c);if(t.more)return;let[s,o]=[e.objectStore(
"cards"),e.objectStore("outbox")],a=new Set(await s.getAllKeys()),r=new Set(await o.getAllKeys()),l=(await n.getAll()).
filter(({code:c})=>a.has(c));l.forEach((c,d)=>{r.has(c.id)||o.put(Ky(c,d-l.length)),n.delete(c.id)})}function Ky({
code:e,received_at:t,change:n,...s},o){let a=s;return{id:s.id,kind:"run",code:e,body:a,number:o,queued_at:t,again:!0}}
var ja=m(()=>{Pe();Kt()});async function bt(e){return De("cards",({store:t})=>t.get(e))}async function hn(){return(await De("list",({store:t})=>t.
getAll())).sort((t,n)=>t.updated_at<n.updated_at?1:-1)}async function kt(e){return Ee(["cards","list"],async t=>{
let n=await t.objectStore("cards").get(e.code);return n&&Np(e,n)?n:(Pp(t,e),e)})}function Pp(e,t){e.objectStore(
"cards").put(t),e.objectStore("list").put(Yy(t))}function Yy(e){let{code:t,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:d,trials_total:u,proposals:h}=e,{metal:f,thickness_mm:g}=d,b=h?.length??0;
return{code:t,title:n,note:s,metal:f,thickness_mm:g,bends:d.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:u,archived:c,settle:b}}async function Cp(){return De("list",({store:e})=>e.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function Rp(){let e=["cards","list","meta","sent","lost","runs","lost_runs"];
await Ee(e,t=>{for(let n of e)t.objectStore(n).clear()})}async function Ua(){return De("meta",({store:e})=>e.get(
"shop"))}async function Bp(){return De("meta",({store:e})=>e.get("cursor"))}async function Ip(e){let t=e.reset||
await Xy()?["outbox","sent","lost","lost_runs"]:[];await Ee(["cards","list","meta","runs",...t],async n=>{e.reset&&
(await Jy(n),await Lp(n),await Mp(n));let s=new Set(t.length?await n.objectStore("lost").getAllKeys():[]);for(let a of e.
cards){let r=e.reset?void 0:await n.objectStore("cards").get(a.code);(!r||!Np(a,r))&&Pp(n,a),s.has(a.code)&&await Qy(
n,a)}for(let a of e.run_entries??[])n.objectStore("runs").put(a);t.length&&await Ep(n,e);let o=n.objectStore("\
meta");e.shop&&o.put(e.shop,"shop"),o.put(e.cursor,"cursor"),o.put(!!e.more,"more")},{patience:Zy})}async function Jy(e){
let[t,n]=[e.objectStore("cards"),e.objectStore("lost")];for(let s of await t.getAll())n.put(s);t.clear(),e.objectStore(
"list").clear()}async function Qy(e,t){let n=await e.objectStore("lost").get(t.code);e.objectStore("lost").delete(
t.code);let s=new Set(t.trials.map(r=>r.id)),o=new Set(await e.objectStore("outbox").getAllKeys()),a=n.trials.
filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>e.objectStore("outbox").put(Wp(t.code,r,l-a.length)))}function Wp(e,{
number:t,received_at:n,correction:s,device:o,...a},r){return{id:a.id,kind:"trial",code:e,body:a,number:r,queued_at:n,
again:!0}}async function Dp(e){await Ee("outbox",({store:t})=>{e.trials.forEach((n,s)=>{t.put({...Wp(e.code,n,
s-e.trials.length),missing:!0})})})}async function Va(){return De(["meta","lost"],async e=>await e.objectStore(
"meta").get("more")?[]:e.objectStore("lost").getAll())}async function Ga(e){await Ee("lost",({store:t})=>t.delete(
e))}var Zy,Np,Xy,Fe=m(()=>{Pe();ja();Kt();Zy=2e4;Np=(e,t)=>e.revision<t.revision||e.revision===t.revision&&(e.
trials_total<t.trials_total||e.proposals_total<t.proposals_total);Xy=()=>De(["lost","lost_runs"],async e=>await e.
objectStore("lost").count()+await e.objectStore("lost_runs").count()>0)});function Up(e){return Ho!==null&&e!=="pair"&&!(Hp?.labels_open&&e_.includes(e))}async function Un(e){Sl+=1;try{
let{body:t}=await O("GET","/me",{signal:e,timeout:4e3});return Hp=t,Yd(t)&&document.dispatchEvent(new CustomEvent(
"rights")),t}finally{Sl-=1}}async function Vp(e){Ho!==e&&(Ho=e,await Promise.all([Un().catch(()=>null),Rp().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function Gp(e,t){let{body:n}=await O(
"POST","/pair",{body:{code:e,name:t}});return P().name||Xe({name:n.name}),Ho=null,jp=performance.now(),await Un(),
n}async function zp(){await O("POST","/leave",{}),await Vp("unknown")}function qp(){document.addEventListener(
"not-paired",e=>{let{why:t,asked:n}=e.detail;n>jp&&Vp(t)}),document.addEventListener("other-role",Fp),As()!=="\
owner"&&Fp()}function Fp(){Sl||Un().catch(()=>null)}var lt,e_,Hp,Ho,jp,Sl,mn,za,Vn=m(()=>{j();we();Fe();ae();lt=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Press\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},e_=["\
card","step"],Hp=null,Ho=null,jp=-1/0,Sl=0,mn=()=>Ho;za=e=>X(e)});function su(e,t){if(!Ll(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Zp!==
void 0?Zp.createHTML(t):t}function Kn(e,t,n=e,s){if(t===xt)return t;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=Vo(t)?
void 0:t._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(e),o._$AT(e,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(t=Kn(e,o._$AS(e,t.values),o,s)),t}var Ml,Kp,qa,Zp,Ol,
Yt,Al,t_,qn,Uo,Vo,Ll,tu,Tl,jo,Yp,Xp,Gn,Jp,Qp,nu,El,i,v,GM,xt,p,eu,zn,ou,Go,Ka,Ps,Zn,Za,Ya,Xa,Ja,au,n_,St,y=m(()=>{
Ml=globalThis,Kp=e=>e,qa=Ml.trustedTypes,Zp=qa?qa.createPolicy("lit-html",{createHTML:e=>e}):void 0,Ol="$lit$",
Yt=`lit$${Math.random().toFixed(9).slice(2)}$`,Al="?"+Yt,t_=`<${Al}>`,qn=document,Uo=()=>qn.createComment(""),
Vo=e=>e===null||typeof e!="object"&&typeof e!="function",Ll=Array.isArray,tu=e=>Ll(e)||typeof e?.[Symbol.iterator]==
"function",Tl=`[ 	
\f\r]`,jo=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Yp=/-->/g,Xp=/>/g,Gn=RegExp(`>|${Tl}(?:([^\\s"'\
>=/]+)(${Tl}*=${Tl}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Jp=/'/g,Qp=/"/g,nu=/^(?:script|style|textarea|title)$/i,El=e=>(t,...n)=>({_$litType$:e,
strings:t,values:n}),i=El(1),v=El(2),GM=El(3),xt=Symbol.for("lit-noChange"),p=Symbol.for("lit-nothing"),eu=new WeakMap,
zn=qn.createTreeWalker(qn,129);ou=(e,t)=>{let n=e.length-1,s=[],o,a=t===2?"<svg>":t===3?"<math>":"",r=jo;for(let l=0;l<
n;l++){let c=e[l],d,u,h=-1,f=0;for(;f<c.length&&(r.lastIndex=f,u=r.exec(c),u!==null);)f=r.lastIndex,r===jo?u[1]===
"!--"?r=Yp:u[1]!==void 0?r=Xp:u[2]!==void 0?(nu.test(u[2])&&(o=RegExp("</"+u[2],"g")),r=Gn):u[3]!==void 0&&(r=
Gn):r===Gn?u[0]===">"?(r=o??jo,h=-1):u[1]===void 0?h=-2:(h=r.lastIndex-u[2].length,d=u[1],r=u[3]===void 0?Gn:u[3]===
'"'?Qp:Jp):r===Qp||r===Jp?r=Gn:r===Yp||r===Xp?r=jo:(r=Gn,o=void 0);let g=r===Gn&&e[l+1].startsWith("/>")?" ":"";
a+=r===jo?c+t_:h>=0?(s.push(d),c.slice(0,h)+Ol+c.slice(h)+Yt+g):c+Yt+(h===-2?l:g)}return[su(e,a+(e[n]||"<?>")+
(t===2?"</svg>":t===3?"</math>":"")),s]},Go=class e{constructor({strings:t,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=t.length-1,c=this.parts,[d,u]=ou(t,n);if(this.el=e.createElement(d,s),zn.currentNode=this.el.content,
n===2||n===3){let h=this.el.content.firstChild;h.replaceWith(...h.childNodes)}for(;(o=zn.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let h of o.getAttributeNames())if(h.endsWith(Ol)){let f=u[r++],
g=o.getAttribute(h).split(Yt),b=/([.?@])?(.*)/.exec(f);c.push({type:1,index:a,name:b[2],strings:g,ctor:b[1]===
"."?Za:b[1]==="?"?Ya:b[1]==="@"?Xa:Zn}),o.removeAttribute(h)}else h.startsWith(Yt)&&(c.push({type:6,index:a}),
o.removeAttribute(h));if(nu.test(o.tagName)){let h=o.textContent.split(Yt),f=h.length-1;if(f>0){o.textContent=
qa?qa.emptyScript:"";for(let g=0;g<f;g++)o.append(h[g],Uo()),zn.nextNode(),c.push({type:2,index:++a});o.append(
h[f],Uo())}}}else if(o.nodeType===8)if(o.data===Al)c.push({type:2,index:a});else{let h=-1;for(;(h=o.data.indexOf(
Yt,h+1))!==-1;)c.push({type:7,index:a}),h+=Yt.length-1}a++}}static createElement(t,n){let s=qn.createElement("\
template");return s.innerHTML=t,s}};Ka=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:s}=this.
_$AD,o=(t?.creationScope??qn).importNode(n,!0);zn.currentNode=o;let a=zn.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let d;c.type===2?d=new Ps(a,a.nextSibling,this,t):c.type===1?d=new c.ctor(a,c.name,c.strings,this,
t):c.type===6&&(d=new Ja(a,this,t)),this._$AV.push(d),c=s[++l]}r!==c?.index&&(a=zn.nextNode(),r++)}return zn.currentNode=
qn,o}p(t){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(t,s,n),n+=s.strings.length-2):
s._$AI(t[n])),n++}},Ps=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,s,o){this.type=2,this.
_$AH=p,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=Kn(this,t,n),Vo(t)?t===p||t==null||t===""?(this.
_$AH!==p&&this._$AR(),this._$AH=p):t!==this._$AH&&t!==xt&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==
void 0?this.T(t):tu(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this.
_$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==p&&Vo(this._$AH)?this._$AA.nextSibling.data=t:this.
T(qn.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:s}=t,o=typeof s=="number"?this._$AC(t):(s.el===
void 0&&(s.el=Go.createElement(su(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new Ka(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(t){let n=eu.get(t.strings);return n===void 0&&eu.
set(t.strings,n=new Go(t)),n}k(t){Ll(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of t)
o===n.length?n.push(s=new e(this.O(Uo()),this.O(Uo()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){
let s=Kp(t).nextSibling;Kp(t).remove(),t=s}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},
Zn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,s,o,a){this.
type=1,this._$AH=p,this._$AN=void 0,this.element=t,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=p}_$AI(t,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)t=Kn(this,t,n,0),r=!Vo(t)||t!==this._$AH&&t!==xt,r&&(this._$AH=t);else{let l=t,c,d;
for(t=a[0],c=0;c<a.length-1;c++)d=Kn(this,l[s+c],n,c),d===xt&&(d=this._$AH[c]),r||=!Vo(d)||d!==this._$AH[c],d===
p?t=p:t!==p&&(t+=(d??"")+a[c+1]),this._$AH[c]=d}r&&!o&&this.j(t)}j(t){t===p?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,t??"")}},Za=class extends Zn{constructor(){super(...arguments),this.
type=3}j(t){this.element[this.name]=t===p?void 0:t}},Ya=class extends Zn{constructor(){super(...arguments),this.
type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==p)}},Xa=class extends Zn{constructor(t,n,s,o,a){super(
t,n,s,o,a),this.type=5}_$AI(t,n=this){if((t=Kn(this,t,n,0)??p)===xt)return;let s=this._$AH,o=t===p&&s!==p||t.capture!==
s.capture||t.once!==s.once||t.passive!==s.passive,a=t!==p&&(s===p||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},Ja=class{constructor(t,n,s){
this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(t){
Kn(this,t)}},au={M:Ol,P:Yt,A:Al,C:1,L:ou,R:Ka,D:tu,V:Kn,I:Ps,H:Zn,N:Ya,U:Xa,B:Za,F:Ja},n_=Ml.litHtmlPolyfillSupport;
n_?.(Go,Ps),(Ml.litHtmlVersions??=[]).push("3.3.3");St=(e,t,n)=>{let s=n?.renderBefore??t,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new Ps(t.insertBefore(Uo(),a),a,void 0,n??{})}return o._$AI(
e),o}});function Cs(e,t=lu){return Object.fromEntries(t.filter(n=>e[n]!==void 0).map(n=>[n,e[n]]))}function ru(e){return Array.
isArray(e)?[...e].sort((t,n)=>t.step-n.step).map(({step:t,set_angle_deg:n,punch_depth_mm:s})=>[t,n??null,s??null]):
e??null}function Rs(e,t,n){let s=[];for(let[l,c]of s_){let[d,u]=[e[l],t[l]];d!==void 0&&!Qa(d,n[l])&&s.push({name:l,
label:c,shop:n[l],yours:d,before:u})}if(!e.settings)return s;let[o,a,r]=[e.settings,t.settings??[],n.settings].
map(cu);for(let l of new Set([...o.keys(),...a.keys()])){let[c,d,u]=[o.get(l),a.get(l),r.get(l)];iu(c,d)||iu(c,
u)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,shop:u,yours:c,before:d})}return s}function du(e,t,n){
let s={},o=e.filter(l=>t[l.name]==="yours");for(let l of o)l.name.startsWith("settings ")||(s[l.name]=l.yours);
let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)return s;let r=cu(n.settings);for(let l of a){let c=Number(
l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(c)}return{...s,settings:[...r.values()]}}var lu,Qa,er,
Nl,s_,cu,iu,Bs=m(()=>{lu=["title","note","archived","settings"];Qa=(e,t)=>JSON.stringify(ru(e))===JSON.stringify(
ru(t));er=(e,t)=>Cs(e,lu.filter(n=>n in e&&!Qa(e[n],t[n]))),Nl=({before:e={}},t)=>Object.keys(e).every(n=>Qa(e[n],
t[n])),s_=[["title","Title"],["note","Note"],["archived","In use"]];cu=e=>new Map(e.map(t=>[t.step,t])),iu=(e,t)=>Qa(
e?[e]:[],t?[t]:[])});async function Is(e){Pl.add(e.id);try{return await pu(e)}finally{Pl.delete(e.id)}}async function pu(e){let t;try{
t=await Wa(e)}catch(n){let s=await i_(e);return s||(await r_(n),pu(e))}try{return await hu(t,4e3)??{where:"her\
e",answer:null}}catch(n){let s=n instanceof V||n instanceof it;if(!s&&Rl(n))throw await Fa(t.id),n;return{where:"\
here",answer:null,late:s?"":await $u(t,n)}}}async function r_(e){Cl.add(e),document.dispatchEvent(new CustomEvent(
"held")),await new Promise(t=>{setTimeout(t,o_),document.addEventListener("storage",t,{once:!0})}),Cl.delete(e),
document.dispatchEvent(new CustomEvent("held"))}async function i_(e){try{let{body:t}=await fu({...e,number:0,queued_at:""},
8e3);return{where:"shop",answer:t}}catch(t){if(t instanceof V||!Rl(t))return null;throw t}}async function uu(){
return Ns("outbox",a_,l_)}async function l_(){let e=0;for(let{id:t}of await et()){if(Pl.has(t))continue;let n=await Do(
t);if(!(!n||!await c_(n)))try{await hu(n,8e3)&&(e+=1)}catch(s){if(s instanceof V)break;Rl(s)?await jn(n.id,{refused:s.
message,missing:s.status===404}):await $u(n,s)}}return{sent:e,left:(await et()).length}}async function hu(e,t){
if(!await d_(e))return null;let n=await Do(e.id)??e;try{let s=await(n.parked?gu(n,t):fu(n,t));return await mu(
n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof E&&s.status===412)||n.parked)throw s;
return p_(n,t)}}async function d_({id:e,code:t,after:n,before:s,parked:o}){if(!n||o)return!0;if(await Do(n))return!1;
if(!(await Da(n))?.proposed)return!0;let a=await bt(t);return!a||a.proposals?.some(r=>r.id===n)?!1:(await jn(e,
Nl({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function p_(e,t){if(e.body.part)throw new E(u_);
let{body:n,at:s}=await O("GET",`/cards/${e.code}`,{timeout:t});await kt(n);let o=(e.body.settles??[]).some(l=>n.
proposals.some(c=>c.id===l));if(o||!Rs(e.body,e.before??{},n).length)return await Fo(e,s),await Ha(e.id,n.revision_id,
l=>Nl(l,n)),{where:o?"settle":"shop",answer:n};let a={...e,parked:!0};await jn(e.id,{parked:!0});let r=await gu(
a,t);return await mu(a,r),{where:"settle",answer:r.body}}async function mu(e,{body:t,at:n}){if(e.kind==="run")
await Ap(t.entry).catch(()=>{});else if(e.kind!=="trial"){let s=t;await kt(s).catch(()=>{}),!e.parked&&e.after&&
s.revision_id===e.after&&await Ha(e.id,e.after)}await Fo(e,n,!!e.parked),await Tp(n)}function fu({kind:e,code:t,
id:n,body:s,after:o,etag:a,missing:r},l){return e==="trial"?O("POST",`/cards/${t}/results`,{body:r?{...s,again:!0}:
s,timeout:l}):e==="run"?O("POST",`/cards/${t}/runs`,{body:s,timeout:l}):O("PUT",`/cards/${t}`,{body:{...s,id:n,
...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function gu({id:e,code:t,body:n,before:s,revision:o,queued_at:a},r){
let{reason:l,by:c,settles:d,...u}=n,h={...l?{reason:l}:{},...c?{by:c}:{}};return O("POST",`/cards/${t}/proposa\
ls`,{body:{id:e,changes:u,before:s,revision:o,made_at:a,...h},timeout:r})}async function $u({id:e},t){if(!(t instanceof
E)||t.status<500)return"";let n=t.status===507?"The disk of the shop’s server is full: make room on it":t.title;
return await jn(e,{late:n}).catch(()=>{}),n}function Rl(e){if(!(e instanceof E))throw e;return e.status<500&&![
401,408,429].includes(e.status)}var o_,a_,Pl,Cl,zo,c_,u_,Yn=m(()=>{j();Bs();Pe();ja();Fe();Kt();Ba();o_=3e3,a_=
15e3;Pl=new Set;Cl=new Set,zo=()=>[...Cl].at(-1)?.message??"";c_=async({refused:e,again:t,missing:n,code:s})=>!e||
!!(t&&n&&await bt(s));u_={title:"Changed meanwhile",status:412,detail:"The part was changed here, the shop was\
 restored from an earlier backup, and the card was changed again since. Open the card and make the change anew\
."}});function ct(){return fn}async function tr(e){let t=await et().catch(()=>[]),n=await Va().catch(()=>[]);fn={...fn,
...e,waiting:t.length,words:Il(t),late:t.find(s=>s.late&&!s.refused)?.late??"",settle:await m_(t).catch(()=>[]),
lost:n.length,refused:t.filter(s=>s.refused).length},document.documentElement.dataset.reached=String(fn.reached),
document.documentElement.dataset.resolve=String(fn.settle.length),document.documentElement.dataset.waiting=String(
fn.waiting),document.dispatchEvent(new CustomEvent("sync",{detail:fn}))}function Il(e){let n=[["trial","result"],
["note","note"],["edit","edit"],["run","count"]].map(([s,o])=>({word:o,many:e.filter(a=>a.kind===s).length})).
filter(({many:s})=>s).map(({word:s,many:o})=>`${o} ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):`${n.slice(
0,-1).join(", ")} and ${n.at(-1)}`}async function m_(e){let t=(await Cp()).flatMap(({code:n,settle:s})=>Array(
s).fill(n));for(let n of e)for(let s of n.body.settles??[])t.includes(n.code)&&t.splice(t.indexOf(n.code),1);return t}
function gn(e,t){let n=e||!!(t&&!(t instanceof V));n!==fn.reached&&tr({reached:n})}function $n(){return tr({})}
function W(){return qo?(Bl=!0,qo):(qo=f_().finally(()=>qo=void 0),qo)}async function f_(){do Bl=!1,await g_();while(Bl)}
async function g_(){try{await bu(),(await uu()).sent>0&&await bu(),await tr({reached:!0,at:new Date().toISOString(),
unkept:!1})}catch(e){await tr(e instanceof V?{reached:!1}:e instanceof E?{reached:!0}:{unkept:!0}),!(e instanceof
V||e instanceof E&&e.status===401)&&!(e instanceof it)&&console.warn("changes feed:",e)}}async function bu(){for(;await Ns(
"feed",h_,$_););}async function $_(){let e=await Bp()??"",{body:t}=await O("GET",`/changes?since=${encodeURIComponent(
e)}`,{timeout:15e3});return await Ip(t),t.more}function wu(){W(),addEventListener("online",()=>W()),addEventListener(
"offline",()=>W()),document.addEventListener("visibilitychange",()=>document.visibilityState==="visible"&&W()),
setInterval(()=>document.visibilityState==="visible"&&W(),1e4)}var h_,fn,qo,Bl,ye=m(()=>{j();Pe();Yn();Kt();Fe();
Ba();h_=3e3,fn={reached:null,waiting:0,words:"",late:"",refused:0,settle:[],lost:0,at:null,unkept:!1},Bl=!1});function bn(){let e=location.pathname,t=n=>n==="/"?e==="/"||e==="/scan"||/^\/c\//i.test(e):e.startsWith(n);St(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${w_}<span>Flangebook</span></a>
        ${mn()===null?i`<nav aria-label="Main">
                ${b_.filter(([n])=>Gt(n)).map(([n,s])=>i`<a href=${n} aria-current=${t(n)?"page":"false"}>${s}</a>`)}
              </nav>`:p}
      </div>
      ${y_()}${__()}${mn()===null?v_():p}`,document.getElementById("masthead"))}function __(){return zo()?i`<p class="standing" data-test="held">
      ${zo()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      Then it is saved automatically.
    </p>`:Wo()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${ct().reached===!1?p:"Cards come from the shop."}
  </p>`:p}function v_(){let{reached:e,waiting:t,words:n,late:s,refused:o,settle:a,lost:r}=ct(),l=a.filter(f=>Gt(
`/c/${f}/resolve`)),c=s?` ${s}.`:"",d=t?`${n} ${t===1?"waits":"wait"} to be sent.${c}`:"",u=Wo()?"":"Cards on \
this device still open.",h=e===!1?`Not connected to the shop. ${u}`:"";return!h&&!d&&!l.length&&!r?p:i`<p class="standing" data-test="standing">
    ${h} ${d} ${o?i`<a href="/settings">${o} refused: look</a>`:p}
    ${l.length?i`<a href="/c/${l[0]}/resolve" data-test="resolve-count">${l.length} to resolve</a>`:p}
    ${r?i`<a href="/settings" data-test="lost-count"
            >${r===1?"1 card is":`${r} cards are`} not in the shop any more: look</a
          >`:p}
  </p>`}var b_,w_,y_,Wl=m(()=>{y();Vn();we();Yn();Kt();ye();b_=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];w_=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,y_=()=>isSecureContext?p:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});function Ws(e){return e.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function B(e){
return e.length>3?`${e.slice(0,3)}-${e.slice(3)}`:e}function $e(e){let t=Ws(e),n=[...t].filter(s=>!Ko.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:t,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return t.length>7?{code:t,whole:!1,
fault:`A card code has seven characters. This one has ${t.length}.`}:t.length<7?{code:t,whole:!1,fault:""}:_u(
t.slice(0,-1))!==t.at(-1)?{code:t,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:t,whole:!0,fault:""}}function nr(){let e=crypto.getRandomValues(
new Uint8Array(6)),t=Array.from(e,n=>Ko[n%Ko.length]).join("");return t+_u(t)}function _u(e){let t=0,n=2;for(let s of e)
t^=yu(n,Ko.indexOf(s)),n=yu(n,2);return Ko[t]}function yu(e,t){let n=0;for(let s=t,o=e;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var Ko,fe=m(()=>{Ko="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});function I(e,t){return Object.entries(e).filter(([n])=>Dl(n,t)).flatMap(([,n])=>n)}function vu(e,t){return Object.
entries(e).filter(([n])=>!t.some(s=>Dl(n,s))).flatMap(([,n])=>n)}function ku(e,t,n){let s=Object.entries(e);return s.
length===0?p:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>Dl(o,c)).sort((c,d)=>d.length-c.length)[0],l=r?Fl(t(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>Jn(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function Fl(e,t){let n=t.join(" ");return n.startsWith(e)?n:`${e}: ${n}`}function Xn(e){for(let t=e?.
closest("details");t;t=t.parentElement?.closest("details"))t.open=!0}function Jn(e){let t=document.getElementById(
e);Xn(t),t?.focus({preventScroll:!0}),t?.scrollIntoView({block:"center"})}var Dl,tt=m(()=>{y();Dl=(e,t)=>e===t||
e.startsWith(`${t}.`)});function sr(e){let t=As()==="bench"?"This device is a press screen":"This device is an operator's",n=Zd(e)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${t}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var R,ce,ue=m(()=>{y();we();R=(e,t,n=p)=>K(e)?t:n,ce=(e,t,n=p)=>Gt(e)?t:n});function wn(e){if(e instanceof it)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${Su}
    </div>`;if(e instanceof V)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let t=e instanceof E?e.message:String(e);return e instanceof E||console.error(e),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${t}
  </div>`}var Ce,Te,xu,Su,We=m(()=>{y();j();Kt();Ce=e=>i`<p class="state" data-test="loading">${e}</p>`,Te=(e,t=p)=>i`<div class="state" data-test="empty">
    <h1>${e}</h1>
    ${t}
  </div>`,xu=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${Wo()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${Su}
  </div>`,Su=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function se(e,{replace:t=!1}={}){x_()&&(history[t?"replaceState":"pushState"](null,"",e),Xt(!0))}function nt(e){
Zo=e}function x_(){let e=Zo?.();return!e||confirm(e)}function Mu(){Zo?.()?bn():Xt()}async function Xt(e=!1){Hl.
abort(),Hl=new AbortController,Zo=null;let{signal:t}=Hl,n=document.documentElement;delete n.dataset.ready;let s=M_(
Co(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
bn();let o=l=>{clearTimeout(a),t.aborted||St(l,or())};St(i``,or());let a=setTimeout(()=>o(xu()),k_);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!K(r)){o(sr(r)),n.dataset.ready="no\
t-yours";return}try{let l=await Tu[s.route.name]();if(t.aborted)return;scrollTo(0,0),await l.show({params:T_(s.
params),query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{
t.aborted||(n.dataset.ready=s.route.name)},signal:t})}catch(l){if(t.aborted)return;o(wn(l)),n.dataset.ready="f\
ailed"}e&&!t.aborted&&or().focus({preventScroll:!0}),t.aborted||S_()}function S_(){let e=location.hash&&document.
getElementById(location.hash.slice(1));e&&(Xn(e),e.scrollIntoView())}function M_(e){return e&&Up(e.route.name)?
{route:qd("pair"),params:{}}:e}function Ou(e){return Tu=e,addEventListener("popstate",()=>Xt()),addEventListener(
"beforeunload",t=>(zo()||Zo?.())&&t.preventDefault()),document.addEventListener("click",t=>{let n=t.target.closest(
"a");!n||t.defaultPrevented||t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||n.target||n.hasAttribute("downloa\
d")||n.origin!==location.origin||!Co(n.pathname)||n.hash&&n.pathname===location.pathname||(t.preventDefault(),
se(n.pathname+n.search+n.hash))}),or().replaceChildren(),Xt()}var k_,Hl,Zo,Tu,or,T_,Oe=m(()=>{y();Wl();Vn();fe();
we();il();Yn();tt();ue();We();k_=1e3,Hl=new AbortController,Zo=null,Tu={},or=()=>document.getElementById("main");
T_=e=>e.code?{...e,code:Ws(e.code)}:e});var Qn,ar,Ds,jl=m(()=>{Qn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ar=e=>(...t)=>({
_$litDirective$:e,values:t}),Ds=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,s){this._$Ct=t,
this._$AM=n,this._$Ci=s}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}}});var DO,Au,O_,rr,Ul=m(()=>{y();({I:DO}=au),Au=e=>e.strings===void 0,O_={},rr=(e,t=O_)=>e._$AH=t});var Ae,yn=m(()=>{y();jl();Ul();Ae=ar(class extends Ds{constructor(e){if(super(e),e.type!==Qn.PROPERTY&&e.type!==
Qn.ATTRIBUTE&&e.type!==Qn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!Au(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[
t]){if(t===xt||t===p)return t;let n=e.element,s=e.name;if(e.type===Qn.PROPERTY){if(t===n[s])return xt}else if(e.
type===Qn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(s))return xt}else if(e.type===Qn.ATTRIBUTE&&n.getAttribute(
s)===t+"")return xt;return rr(e),t}})});function ir(e){return Object.hasOwn(_n,e)?e:void 0}async function he(e,t){try{return await lr(e,t)}catch(n){let s=n instanceof
V?await Ua():void 0;if(!s?.[e])throw n;return{items:s[e],etag:null,kept:!0}}}async function vn(){try{let e=await Ua();
if(e||!ct().unkept)return e}catch{}try{let[{press:e},{items:t}]=await Promise.all([dr(),lr("metals")]);return{
press:e,metals:t}}catch{return}}async function lr(e,t){let{body:n,etag:s}=await O("GET",`/${e}`,{signal:t});return{
items:n[e],etag:s,kept:!1}}async function Lu(e,t,n){await O("PUT",`/${e}`,{body:{[e]:t.map(es),by:P().name},etag:n})}
async function cr(e){try{return await dr(e)}catch(t){let n=t instanceof V?await Ua():void 0;if(!n)throw t;return{
press:n.press??null,etag:null,kept:!0}}}async function dr(e){let{body:t,etag:n}=await O("GET","/press",{signal:e});
return{press:t.press,etag:n,kept:!1}}async function Eu(e,t){let n={press:es(e),by:P().name};return(await O("PU\
T","/press",{body:n,etag:t})).body.press}function es({outline_mm:e,outlines_mm:t,...n}){return n}function Nu(e,t){
return JSON.stringify(e&&es(e))===JSON.stringify(t&&es(t))}function kn({tray:e,slot:t}){return!e&&!t?"place no\
t given":[e&&(/^\S{1,4}$/.test(e)?`Tray ${e}`:e),t&&`slot ${t}`].filter(Boolean).join(", ")}var _n,re,Fs,be=m(
()=>{j();ae();Fe();ye();_n={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",title:"\
Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"Metals"}},
re={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_holders",
metals:"shop.write_metals"};Fs=(e,t)=>e?.find(n=>n.code===t)?.name??t});function Yo(e,t){let n=t.filter(A_),o=n.filter(l=>!l.parked&&!l.refused).reduce((l,c)=>({...l,...Cs(c.body)}),
e),a=new Set(n.flatMap(l=>l.body.settles??[])),r=(e.proposals??[]).filter(l=>!a.has(l.id));return{...o,proposals:r,
after:n.at(-1)?.id??e.revision_id,here:n}}async function ts(e){return Yo(e,await Zt(e.code).catch(()=>[]))}async function Vl(e){
let t=await bt(e);return t&&Yo(t,(await Zt(e)).filter(n=>n.body.settles))}async function Xo(e){let t=await bt(
e);return t&&ts(t)}async function Tt(e,t,{reason:n="",settles:s=[]}={}){let o=er(t,e),a=Object.keys(o);if(!a.length&&
!s.length)return{where:"same",card:e};let{name:r}=P(),l=await Is({id:Ne(),kind:a.every(u=>u==="note")&&!s.length?
"note":"edit",code:e.code,body:{...o,...s.length?{settles:s}:{},...n?{reason:n}:{},...r?{by:r}:{}},before:Cs(e,
a),after:e.after,etag:e.etag,revision:e.revision}),c=await Xo(e.code).catch(()=>{}),d=l.answer;return{where:l.
where,card:c??(d?Yo(d,[]):{...e,...o})}}var A_,xn=m(()=>{Bs();Pe();Yn();ae();Fe();A_=({kind:e})=>e==="edit"||e===
"note"});function Gl(e){if(e.limits!==void 0)return e.limits;let t=[e,...e.corrections??[]].filter(E_);if(!t.length)return null;
let n=N_(e)+.5,s=Math.max(Math.min(...t.map(r=>r.set_angle_deg)),n),o=t.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function dt(e,t){let n=Gl(
e);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=t;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function N_({drawing:e,v_opening_mm:t}){let n=(e?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&t?2*Math.atan(t/2/Math.min(...n))*L_:0}var Pu,L_,E_,Sn=m(()=>{Pu=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],L_=180/Math.PI;E_=e=>typeof e.set_angle_deg=="number"&&typeof e.punch_depth_mm=="number"});async function Mt(e,t,n){let s=null,o=await bt(e).catch(a=>{s=a});if(!o){await t(await ts(await P_(e,n,s)),{where:"\
shop"});return}await t(await ts(o),{where:"device"}),C_(o,t,n)}async function P_(e,t,n){try{return await Ot(e,
t)}catch(s){throw s instanceof V&&n instanceof it?n:s}}async function Cu(){try{let e=await hn();if(e.length||!ct().
unkept)return{list:e,where:"device"}}catch{}try{let{body:e}=await O("GET","/cards?archived=all&limit=200",{timeout:4e3});
return gn(!0),{list:e.cards.map(t=>({...t,note:""})),where:"shop"}}catch(e){return gn(!1,e),{list:[],where:"sh\
op"}}}async function C_(e,t,n){try{let s=await Ot(e.code,n);!n.aborted&&s.etag!==e.etag&&await t(await ts(s),{
where:"shop"})}catch{}}async function Ru(e,t){if(await bt(e).catch(()=>{}))return"device";try{return await Ot(
e,t),"shop"}catch(n){if(n instanceof E&&n.status===404)return"nowhere";if(n instanceof V)return"silent";throw n}}
async function Ot(e,t){try{let{body:n}=await O("GET",`/cards/${e}`,{signal:t,timeout:4e3});return gn(!0),await kt(
n).catch(()=>n)}catch(n){throw t?.aborted||gn(!1,n),n}}async function pr(e,t){let{body:n}=await O("PUT",`/card\
s/${e.code}`,{body:t,etag:e.etag,timeout:t.replan?6e4:8e3});return kt(n).catch(()=>n)}function pt(e,t){let n=e.
settings?.find(a=>a.step===t.number),s={set_angle_deg:n?.set_angle_deg??t.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??
t.punch_depth_mm},o=dt(t,s);return{...o?s:{set_angle_deg:null,punch_depth_mm:null},firstHit:n||!o?null:t.first_hit??
null,gauge_x_mm:n?.gauge_x_mm??t.gauge_x_mm,fromTrial:!!n,reason:n?.reason??""}}var He=m(()=>{j();xn();Sn();Kt();
Fe();ye()});function st(e,t){return e.length*t*.6+t*.3}function R_(e,t){return Math.abs(e.x-t.x)*2<e.width+t.width&&Math.abs(
e.y-t.y)*2<e.height+t.height}function Bu(e,[[t,n],[s,o]]){let a=0,r=1,l=[[t-e.x,s-t,e.width/2],[n-e.y,o-n,e.height/
2]];for(let[c,d,u]of l){if(d===0){if(Math.abs(c)>u)return!1;continue}let[h,f]=[(-u-c)/d,(u-c)/d];a=Math.max(a,
Math.min(h,f)),r=Math.min(r,Math.max(h,f))}return a<=r}function B_([e,t],[n,s]){return ur(e,t,n)!==ur(e,t,s)&&
ur(n,s,e)!==ur(n,s,t)}function ur(e,t,n){return(t[0]-e[0])*(n[1]-e[1])>(t[1]-e[1])*(n[0]-e[0])}var hr,mr=m(()=>{
hr=class{constructor(t){this.edges=t,this.taken=[]}choose(t){let n=t[0],s=1/0;for(let o of t){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:t,
lines:n=[]}){let s=this.taken.filter(l=>R_(t,l)).length,o=this.edges.filter(l=>Bu(t,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(d=>B_(c,d)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(d=>Bu(d,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function Re(e){return e.length?`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}Z`:""}function Jo(e){return e.length?
`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}`:""}function ut(e){let t=e.flat().map(([s])=>s),n=e.flat().map(([,
s])=>s);return[Math.min(...t),Math.min(...n),Math.max(...t),Math.max(...n)]}function Iu([e,t,n,s],o){return`${e-
o} ${-s-o} ${n-e+2*o} ${s-t+2*o}`}function ns([e,t,n,s],o,a){let r=Math.min(o/Math.max(n-e,1e-6),a/Math.max(s-
t,1e-6));return([l,c])=>[(l-e)*r,(s-c)*r]}var Tn=m(()=>{});function U(e){let{text:t}=w(e,{digits:2});return P().inches==="fraction"?t:t.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function Du({section:e,part:t},{pixels:n=Hs(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=ns(ut([e.outline]),n-2*l,s-2*l),d=e.outline.map(c),u=new hr(d.map((x,T)=>[x,d[(T+1)%d.length]])),h=D_(e).map(
(x,T)=>H_(x.map(c),U(t.flats_mm[T]),u,18)),f=e.bend_points.map((x,T)=>F_(c(x),T+1,t.bends[T],u,18)),[g,b,_,C]=V_(
[...d,...f.flatMap(x=>Wu(x.box)),...h.flatMap(x=>[...Wu(x.box),...x.lines.flat()])]),[D,k]=[_-g+12,C-b+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${W_(t)}
    width=${D}
    height=${k}
    viewBox="${g-6} ${b-6} ${D} ${k}">
    <path class="sheet" d="M${d.map(x=>x.join(" ")).join("L")}Z" />
    ${h.map(({lines:x,box:T,text:F})=>v`${x.map(([pe,Po])=>v`<path class="dimension" d="M${pe}L${Po}"/>`)}
      ${j_(x[0])}${U_(T,F,18)}`)}
    ${f.map(({box:x,text:T,number:F,badge:pe})=>v`<circle class="badge ${F===a?"marked":""}" cx=${pe[0]} cy=${pe[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${pe[0]} y=${pe[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${F}</text>
      <text x=${pe[0]+18*.95} y=${x.y} font-size=${18}
        dominant-baseline="central">${T}</text>`)}
  </svg>`}function Hs(){return Math.min(Math.max(innerWidth-32,300),720)}function W_(e){return`Section. ${e.flats_mm.
map((n,s)=>{let o=e.bends[s],a=o?`, bend ${s+1}: ${Fu(o)} ${o.direction}`:"";return`flat ${s+1}: ${$(w(n))}${a}`}).
join("; ")}.`}function Fu(e){return e.kind==="closed_hem"?"hem":e.kind==="open_hem"?"open hem":le(M(e.included_angle_deg))}
function D_({dimensions:e,bend_points:t,centre_line:n}){if(e)return e;let s=[n[0],...t,n[n.length-1]];return s.
slice(1).map((o,a)=>[s[a],o])}function F_(e,t,n,s,o){let a=Fu(n),r=st(a,o)+1.6*o,l=[1.4,1.9,2.6].flatMap(u=>I_.
map(h=>{let f=e[0]+Math.cos(h)*(u*o+r/2-o*.6),g=e[1]+Math.sin(h)*u*o;return{box:{x:f,y:g,width:r,height:o*1.5},
cost:u*2}})),{box:c}=s.choose(l),d=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:t,badge:d}}function H_([e,t],n,s,o){
let a=Math.hypot(t[0]-e[0],t[1]-e[1])||1,r=[-(t[1]-e[1])/a,(t[0]-e[0])/a],[l,c]=[st(n,o),o*1.3],d=(f,g)=>[f[0]+
r[0]*g,f[1]+r[1]*g],u=[1.8,3.2,4.8].flatMap(f=>[f,-f].flatMap(g=>[.5,.3,.7].map(b=>{let[_,C]=[d(e,g*o),d(t,g*o)],
D={x:_[0]+(C[0]-_[0])*b,y:_[1]+(C[1]-_[1])*b,width:l,height:c},k=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(g*r[1])*
o*.9:0,x=[[_,C],[d(e,Math.sign(g)*o*.5),d(_,Math.sign(g)*4)],[d(t,Math.sign(g)*o*.5),d(C,Math.sign(g)*4)]];return{
box:{...D,y:D.y+k},cost:Math.abs(g)+(b===.5?0:.5),lines:x}}))),h=s.choose(u);return{box:h.box,lines:h.lines,text:n}}
function j_(e){return e.map(([t,n])=>v`<path class="dimension tick" d="M${t-4} ${n+4}L${t+4} ${n-4}"/>`)}function U_({
x:e,y:t,width:n,height:s},o,a){return v`<rect class="ground" x=${e-n/2} y=${t-s/2} width=${n} height=${s}/>
    <text x=${e} y=${t} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function Wu({
x:e,y:t,width:n,height:s}){return[[e-n/2,t-s/2],[e+n/2,t+s/2]]}function V_(e){return ut([e])}var I_,ht=m(()=>{
y();ae();L();mr();Tn();I_=[0,90,180,270,45,135,225,315].map(e=>e*Math.PI/180)});function z_(e){try{return G_.includes(new Intl.Locale(e).region??"")?"inch":"mm"}catch{return"mm"}}function Hu(){
Jd()||Xe({units:z_(navigator.language)})}function Uu(e){if(!e?.punches||!e.dies)return[];let t=!!e.press,n=e.punches.
length>0&&e.dies.length>0,s=[{step:"units",done:Qo("units")},{step:"press",done:t},{step:"tools",done:n}],o=s.
slice(1).some(({step:r,done:l})=>!l&&!Qo(r)),a=!t&&!n&&!Qo("units");return o||a?s:[]}var G_,Qo,ju,zl=m(()=>{ae();
G_=["US","LR","MM"];Qo=e=>(P().skipped??[]).includes(e),ju=e=>Xe({skipped:[...P().skipped??[],e]})});function Gu(e,t){return t===N()?[fr.length,ne(e)]:t===`${N()}/s`?[fr.speed,Z_(e)?`${e} ${t}`:e]:t===$t().unit?
[fr.force,un(e,$t())]:t===rt().unit?[fr.rating,un(e,rt())]:null}function Y_(e,t){let n=Gu(e,t);if(!n)return null;
let[{spellings:s},o]=n,[,a,r="0",l,c,d,u=""]=K_.exec(Ls(o))??[],h=s[u.toLowerCase().trim()];if(a===void 0||!h||
Number(c)===0)return null;let f=l?Number(r)+Number(l)/Number(c):Number(d);return(a==="-"?-f:f)*h}function zu(e,t){
let n=Y_(e,t);if(n===null)return"";let[{both:s}]=Gu(e,t);return s.map(([o,a,r])=>`${X_(n/a,r)} ${o}`).join(" =\
 ")}var q_,Vu,fr,K_,Z_,X_,qu=m(()=>{L();q_={mm:1,cm:10,m:1e3,in:Se,inch:Se,'"':Se,ft:304.8},Vu={"short tons":zt,
t:Na},fr={length:{spellings:q_,both:[["mm",1,3],["in",Se,4]]},speed:{spellings:{"mm/s":1,"in/s":Se},both:[["mm\
/s",1,3],["in/s",Se,3]]},force:{spellings:{kn:1,n:.001,...Vu},both:[["kN",1,1],["short tons",zt,1]]},rating:{spellings:{
"kn/m":1,"n/mm":1,"short tons/ft":zt/Bo,"t/m":Vu.t},both:[["kN/m",1,1],["short tons/ft",zt/Bo,1]]}},K_=/^([+-]?)(?:(?:(\d+)[ -])?(\d+)\/(\d+)|(\d+\.?\d*|\.\d+)) *(.*)$/;
Z_=e=>/^[\d.,]+$/.test(e.trim());X_=(e,t)=>te(e,t).replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"")});function At([e,t],[n,s],o,a=[(e+n)/2,(t+s)/2-10]){return v`<path class="dimension strong" d="M${e} ${t}L${n} ${s}"/>
    <circle class="dimension-end" cx=${e} cy=${t} r="4"/>
    <circle class="dimension-end" cx=${n} cy=${s} r="4"/>
    <text x=${a[0]} y=${a[1]} text-anchor="middle" font-size="21">${o}</text>`}function ta(e){let[t,n]=ev[e];return i`<svg class="drawing word-picture" viewBox="0 0 360 260" role="img" aria-label=${t}>
    ${n}
  </svg>`}var Ku,J_,ea,gr,Q_,ev,ql=m(()=>{y();Ku=v`<path class="tool" d="M180 168L150 138V20H210V138Z"/>
  <path class="tool" d="M80 150H130L180 200L230 150H280V245H80Z"/>`,J_=v`<path class="sheet-line" d="M88 80L180 178L272 80"/>`,
ea=v`${Ku}${J_}`,gr=v`<path class="sheet-line" d="M50 200H230Q250 200 250 180V60"/>`,Q_=v`<path class="sheet-line" d="M30 130H330"/><path class="fold" d="M180 100V160"/>`,
ev={"v-opening":["A die, its V opening marked",v`${ea}${At([130,225],[230,225],"V opening",[180,218])}
    <path class="dimension" d="M130 150V232M230 150V232"/>`],"tip-radius":["A punch, its tip marked",v`${Ku}${At(
[180,166],[255,60],"tip radius",[290,52])}`],"inside-radius":["A bent sheet, the radius inside the bend marked",
v`${gr}${At([238,186],[150,110],"inside radius",[135,98])}`],flange:["A bent sheet, the flange marked",v`${gr}${At(
[290,205],[290,60],"flange",[325,48])}`],deduction:["A bent sheet with its two outside lengths, A and B",v`${gr}${At(
[45,235],[258,235],"A")}${At([290,207],[290,60],"B",[315,138])}`],blank:["A flat sheet with its bend line",v`${Q_}${At(
[30,190],[330,190],"blank = A + B − deduction")}`],allowance:["A bent sheet, the length of the metal in the \
bend marked",v`${gr}<path class="dimension strong" d="M222 200Q250 200 250 172"/>
      <text x="165" y="160" font-size="21" text-anchor="middle">bend allowance</text>`],"k-factor":["A bent sh\
eet, the line that keeps its length marked",v`<path class="tool" d="M60 240A180 180 0 0 1 240 60V110A130 130 0 0 0 110 240Z"/>
      <path class="centre strong" d="M88 240A152 152 0 0 1 240 88"/>
      <text x="250" y="72" font-size="21">outside</text><text x="250" y="95" font-size="21">keeps its</text>
      <text x="250" y="114" font-size="21">length</text><text x="125" y="225" font-size="21">inside</text>`],springback:[
"A sheet under the punch, and more open after it",v`<path class="sheet-line" d="M90 70L180 190L270 70"/>
      <path class="centre strong" d="M66 90L180 190L294 90"/>
      <text x="180" y="235" font-size="21" text-anchor="middle">dashed: after release</text>`],"set-angle":["A\
 bend in its tools, the angle between its flats marked",v`${ea}<path class="dimension strong" d="M120 114A90 90 0 0 1 240 114"/>
      <text x="305" y="100" font-size="21" text-anchor="middle">set angle</text>`],"punch-depth":["A bend in i\
ts tools, the way of the punch below the flat sheet marked",v`${ea}<path class="centre" d="M40 132H320"/>
      ${At([320,132],[320,168],"depth",[320,195])}`],gauge:["A flat sheet on the die against the back gauge, X\
 and R marked",v`<path class="tool" d="M80 150H130L160 180L190 150H240V240H80Z"/>
      <path class="sheet-line thin" d="M40 143H285V60"/>
      <path class="tool" d="M292 82H340V104H292Z"/>${At([160,40],[292,40],"X")}
      ${At([318,150],[318,93],"R",[338,130])}
      <path class="centre" d="M160 20V240M240 150H340"/>`],"second-hit":["The same bend, pressed again and a l\
ittle deeper",v`${ea}<path class="dimension strong" d="M180 25V75M170 62L180 78L190 62"/>
      <text x="272" y="40" font-size="21" text-anchor="middle">again, deeper</text>`],rating:["A bend in its t\
ools, the force on the punch marked",v`${ea}<path class="dimension strong" d="M180 2V60M168 44L180 62L192 44"/>
      <text x="250" y="40" font-size="21" text-anchor="middle">force</text>`],label:["A label with its square \
and its code",v`<path class="tool" d="M40 40H320V220H40Z"/>
      <path class="square" d="M60 60h40v40h-40zM60 160h40v40h-40zM150 60h40v40h-40z
      M120 120h20v20h-20zM160 150h20v20h-20zM120 180h20v20h-20z"/>
      <text x="190" y="140" font-size="24">ABC-1234</text>
      <text x="190" y="176" font-size="21">Bracket</text>`],screen:["A large display beside the press",v`<path class="tool" d="M50 30H310V180H50ZM160 180H200V215H160ZM110 215H250V230H110Z"/>
      <text x="180" y="110" font-size="52" text-anchor="middle">88.5°</text>
      <text x="180" y="155" font-size="24" text-anchor="middle">X 57.9</text>`],devices:["A phone and a comput\
er of the same shop",v`<path class="tool" d="M40 50H110V190H40ZM170 60H330V170H170ZM150 190H350V205H150Z"/>
      <path class="dimension strong" d="M115 120H165"/>`],copy:["The shop's file and its copy",v`<path class="tool" d="M60 60H140V190H60ZM220 60H300V190H220Z"/>
      <path class="dimension strong" d="M150 125H210M196 115L212 125L196 135"/>`]}});function $r(e){let t=tv[e];return t?i`<a class="word" href="/words#${t}" data-test="word-${t}" @click=${nv(t)}>${e}</a>`:
e}var na,tv,Kl,nv,br=m(()=>{y();ql();na={"v-opening":{title:"V opening",text:"The width of the V in the die, b\
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
with each rating. Plate and papers come first."}},tv={"V opening":"v-opening","V openings":"v-opening","Tip ra\
dius":"tip-radius","Inside radius":"inside-radius","Flange from":"flange",Deduction:"deduction","Bend allowanc\
e":"allowance","K-factor":"k-factor",Springback:"springback","Set angle":"set-angle","First hit: set angle":"s\
econd-hit",Depth:"punch-depth","First hit: depth":"punch-depth","Allow for":"rating",Rating:"rating"};Kl=e=>i`${ta(
e)}
    <p>${na[e].text}</p>`,nv=e=>t=>{if(t.ctrlKey||t.metaKey||t.shiftKey)return;t.preventDefault();let n=document.
querySelector("dialog.word-entry")??document.createElement("dialog");n.className="word-entry",n.setAttribute("\
aria-label",na[e].title),n.isConnected||document.body.append(n);let s=n;St(i`<h2>${na[e].title}</h2>
      ${Kl(e)}
      <div class="buttons">
        <button type="button" class="button next" data-test="close-word" @click=${()=>s.close()}>
          Close
        </button>
      </div>`,s),s.open||s.showModal()}});function A({name:e,label:t,value:n,change:s,hint:o="",wrong:a=[],meant:r=op(String(n)),keys:l="text",placeholder:c="",
unit:d="",on:u="input",next:h=!1,list:f="",mark:g=0}){let b=C=>s(C.target.value),_=a.length?"":zu(String(n),d);
return i`<div class="field ${a.length?"has-wrong":""}">
    <label for=${e}
      >${sv(g)}${$r(t)}${d?i` <span class="hint">(${d})</span>`:p}</label
    >
    <input
      id=${e}
      name=${e}
      data-test=${e}
      autocomplete="off"
      spellcheck="false"
      inputmode=${l}
      enterkeyhint=${h?"next":p}
      placeholder=${c}
      list=${f||p}
      .value=${Ae(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${u==="input"?b:p}
      @change=${u==="change"?b:p} />
    <span id="${e}-more">
      ${a.map(C=>i`<span class="wrong" data-test="wrong-${e}">${C}</span>`)}
      ${_?i`<span class="hint" data-test="read-${e}">${_}</span>`:p}
      ${o?i`<span class="hint">${o}</span>`:p}
    </span>
    ${a.length?ov(e,r,s):p}
  </div>`}function ov(e,t,n){return i`<div class="may-mean">
    ${t.map(s=>i`<button type="button" class="button" data-test="may-mean-${e}" @click=${()=>n(s)}>
          ${s}
        </button>`)}
  </div>`}function ss({name:e,label:t,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${e}>${t}${l?i` <span class="hint">(${l})</span>`:p}</label>
    <textarea
      id=${e}
      name=${e}
      data-test=${e}
      rows=${o}
      .value=${Ae(String(n))}
      aria-invalid=${r.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${c=>s(c.target.value)}></textarea>
    <span id="${e}-more">
      ${r.map(c=>i`<span class="wrong" data-test="wrong-${e}">${c}</span>`)}
      ${a?i`<span class="hint">${a}</span>`:p}
    </span>
  </div>`}function J({name:e,label:t,value:n,options:s,change:o,wrong:a=[]}){return i`<div class="field ${a.length?
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
        ${s.map(([r,l])=>i`<option value=${r} .selected=${Ae(r===n)}>${l}</option>`)}
      </select>
    </div>
    <span id="${e}-more"
      >${a.map(r=>i`<span class="wrong" data-test="wrong-${e}">${r}</span>`)}</span
    >
  </div>`}function Q({name:e,label:t,value:n,options:s,change:o}){return i`<div class="field" role="radiogroup" aria-label=${t}>
    <span class="legend" aria-hidden="true">${t}</span>
    <div class="choice" data-test=${e}>
      ${s.map(([a,r])=>i`<label>
            <input
              type="radio"
              name=${e}
              value=${a}
              .checked=${Ae(a===n)}
              @change=${()=>o(a)} />
            <span>${r}</span>
          </label>`)}
    </div>
  </div>`}function Lt(e){Object.keys(e).length!==0&&document.querySelector('[aria-invalid="true"]')?.focus()}var _e,
sv,z=m(()=>{y();yn();qu();L();br();_e=e=>t=>{t.preventDefault(),e()};sv=e=>e?i`<span class="mark-in-label" aria-hidden="true">${e}</span> `:
p});function Zu(e,t){return i`<p>
      Check a bend at once: until your press and tools are entered, plain stand-in tools are counted with, and
      the answer says so.
    </p>
    <a class="button next wide first-bend" href="/bend" data-test="check-a-bend">Check a bend</a>
    <section aria-label="Set up the shop">
      <h2>Set up the shop</h2>
      <ol class="first-steps" data-test="first-steps">
        ${e.map(n=>av(n,t))}
      </ol>
    </section>
    <nav class="home-new" aria-label="Start something">
      <a class="button" href="/part" data-test="new-part">New part</a>
      <a class="button" href="/scan">Scan a label</a>
    </nav>`}function av({step:e,done:t},n){let{title:s,words:o,body:a}=rv[e](n),r=!t&&!Qo(e),l=()=>{ju(e),n()};
return i`<li class="panel" data-test="step-${e}" data-open=${String(r)}>
    <h3>${s} ${t?i`<span class="soft">done</span>`:p}</h3>
    ${r?i`<p>${o}</p>`:p} ${a}
    ${r?i`<button type="button" class="button" data-test="later-${e}" @click=${l}>
            ${e==="units"?"That is right":"Later"}
          </button>`:p}
  </li>`}var rv,Yu=m(()=>{y();zl();ae();z();rv={units:e=>({title:"Units",words:"Guessed from the language of t\
his browser. Settings change them at any time.",body:Q({name:"units",label:"Units",value:P().units,options:[["\
mm","mm and kN"],["inch","inch and tons"]],change:t=>{Xe({units:t==="inch"?"inch":"mm"}),e()}})}),press:()=>({
title:"Press",words:"Its name, force and bed length are enough.",body:i`<a class="button" href="/shop/press" data-test="to-press">The press</a>`}),
tools:()=>({title:"Tools",words:"Pick a shape by its picture, type the sizes that are engraved on it.",body:i`<a class="button" href="/shop/dies/+" data-test="to-dies">Add a die</a>
      <a class="button" href="/shop/punches/+" data-test="to-punches">Add a punch</a>`})}});var Mn,oe,ot=m(()=>{y();Mn=()=>matchMedia("(min-width: 1000px)").matches,oe=(e,t,{test:n="",open:s=Mn()}={})=>i`<details class="fold" data-test=${n||
p} ?open=${s}>
    <summary><h2>${e}</h2></summary>
    ${t}
  </details>`});function S(e,t=iv[e]){return i`<span class="flag ${e}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${lv[e]}</svg>${t}</span
  >`}function Zl({step:e,steps:t=[]}){return t.length>1?i`<b>Steps ${t.join(", ")}.</b> `:e?i`<b>Step ${e}.</b> `:
p}function Ue(e,{quiet:t=!1}={}){let n=e.filter(s=>!t||s.level!=="ok").sort((s,o)=>js.indexOf(Le(s))-js.indexOf(
Le(o)));return n.length===0?p:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${S(Le(s))}
          <div class="say">
            ${Zl(s)}${Qe(s.template,s.numbers)}
            ${s.do?i`<div class="do">${Qe(os(s),s.numbers)}</div>`:p}
          </div>
        </li>`)}
  </ul>`}function Us(e){let t=new Map;for(let s of e){let o=`${Le(s)} ${s.code}`;t.set(o,[...t.get(o)??[],s])}
let n=[...t.values()].sort(([s],[o])=>js.indexOf(Le(s))-js.indexOf(Le(o)));return i`<ul class="checks lines" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s[0].level} data-code=${s[0].code}>
          ${cv(s)}
        </li>`)}
  </ul>`}function cv([e,...t]){let n=i`${S(Le(e))}
    <div class="say">${Zl(e)}${Qe(e.template,e.numbers)} ${dv(t)}</div>`;return!e.do&&t.length===0?n:i`<details ?open=${e.
level==="stop"}>
    <summary>${n}</summary>
    ${t.map(s=>i`<p class="say">${Zl(s)}${Qe(s.template,s.numbers)}</p>`)}
    ${e.do?i`<p class="do">${Qe(os(e),e.numbers)}</p>`:p}
  </details>`}function dv(e){let t=e.flatMap(({step:n,steps:s=[]})=>s.length?s:n??[]);return e.length===0?p:t.
length===0?i`<b>And ${e.length} more.</b>`:i`<b>Also step${t.length>1?"s":""} ${t.join(", ")}.</b>`}var iv,js,
lv,Le,Me,os,je,sa,G=m(()=>{y();L();iv={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",ok:"OK"},js=
["stop","caution","unknown","note","ok"],lv={stop:v`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:v`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:v`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:v`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:v`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};Le=({level:e,sign:t,do:n,
step:s,steps:o=[]})=>t??(e==="ok"&&n&&(s||o.length)?"note":e),Me=({template:e,numbers:t})=>Qe(e,t),os=({do:e,do_template:t})=>t??
e,je=({template:e,numbers:t={},words:n=""})=>e?Qe(e,t):n,sa=e=>e.map(Me).join(" ")});function as(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":t.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function de(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":`${as(e)}\
, ${t.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function Vs({made_at:e,received_at:t}){return t?
!e||Math.abs(Date.parse(e)-Date.parse(t))<pv?de(t):`in the shop ${de(t)}, made ${de(e)} by the device’s clock`:
de(e??"")}function Jt({by:e,device:t}){return[e,t===e?"":t].filter(Boolean).join(", ")}var pv,Ve=m(()=>{pv=5*6e4});function Yl(e,{metalName:t,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${e.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${B(s.code)}</span>
            <span class="more">
              ${t(s.metal)}, ${U(s.thickness_mm)} ${N()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${as(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · archived":""}
              ${uv(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="resolve">${S("caution",`${s.settle} to resolve`)}</span>`:p}
              ${s.worst==="stop"?S("stop"):p}
            </span>
          </a>
        </li>`)}
  </ul>`}var uv,Xu=m(()=>{y();fe();ht();L();G();Ve();uv=e=>e?i`· <b>${e} ${/^1 \S+$/.test(e)?"waits":"wait"}</b>`:
p});function yr(e,t,n,s){let o=$e(e.code),a=o.fault||(e.asked&&!o.whole?mv(o.code):"");return i`<form class="code-form" @submit=${l=>{
l.preventDefault(),e.asked=!0,o.whole?se(`/c/${o.code}`):n()}}>
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
        .value=${Ae(e.code)}
        aria-invalid=${a?"true":"false"}
        aria-describedby="code-more"
        @input=${l=>{e.code=l.target.value,e.asked=!1,n()}} />
      <button class="button ${o.whole?"next":""}" data-test="open">Open</button>
    </div>
    <p id="code-more" class="code-more" role="status">
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:hv(o,t,s)}
    </p>
  </form>`}function hv(e,t,n){if(!e.whole)return n;let s=t.find(o=>o.code===e.code);return s?i`<span data-test="code-found"
        >${B(e.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A valid code, but not on this device yet. Open asks the shop.</span
      >`}var wr,mv,Xl=m(()=>{y();yn();fe();Oe();wr=()=>({code:"",asked:!1});mv=e=>e?`A card code has seven cha\
racters. This is ${e.length}.`:"Type the seven characters printed on the label."});var eh={};ie(eh,{show:()=>$v});async function $v(e){e.title("Find a card");let t={typed:wr(),search:"",shown:Jl},
n=await Qu(),s=!1,o=()=>{let r=K(re.press)?Uu(n.shop):[];r.length&&Hu(),e.render(r.length&&n.list.length===0?i`<div class="home">
            <h1>A new shop</h1>
            ${Zu(r,o)} ${Ju}
          </div>`:i`<div class="home">
            <h1>Find a card</h1>
            <div class="home-scan">
              <a class="button next wide" href="/scan" data-test="scan">${fv} Scan a label</a>
            </div>
            <div class="home-ways">
              ${yr(t.typed,n.list,o,"Seven characters, capitals or not.")}
              <nav class="home-new" aria-label="Start something">
                ${ce("/bend",gv)}
                ${ce("/part",i`<a class="button" href="/part" data-test="new-part"
                    >${R("cards.create","New part","Plan a part")}</a
                  >`)}
              </nav>
            </div>
            ${bv(t,n,s,o)} ${Ju}
          </div>`)};o();let a=async()=>{s||=ct().reached!==null,n=await Qu(),o(),(s||n.list.length)&&e.ready()};
document.addEventListener("sync",a,{signal:e.signal}),n.list.length&&e.ready(),await W().then(a)}async function Qu(){
let[{list:e,where:t},n,s]=await Promise.all([Cu(),vn(),et().catch(()=>[])]),o=new Map;for(let{code:r}of s)o.set(
r,Il(s.filter(l=>l.code===r)));return{list:e,where:t,waiting:o,metalName:r=>Fs(n?.metals,r),shop:n}}function bv(e,t,n,s){
if(t.list.length===0)return n?vv():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=yv(t,e.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal, thickness or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${Ae(e.search)}
        @input=${a=>{e.search=a.target.value,e.shown=Jl,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${_v(o.length,t,e.search)}</p>
    ${Yl(o.slice(0,e.shown),t)}
    ${o.length>e.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{e.shown+=Jl,s()}}>
              Show more
            </button>
          </div>`:p}
    ${e.search.trim()?p:wv(t)}
  </section>`}function wv(e){let t=e.list.filter(n=>n.archived);return t.length?oe(`Archived: ${t.length}`,Yl(
t,e),{test:"archived",open:!1}):p}function yv({list:e,metalName:t},n){let s=n.toLowerCase().split(/\s+/).filter(
Boolean);return s.length===0?e.filter(o=>!o.archived):e.filter(o=>{let{code:a,title:r,note:l,metal:c,thickness_mm:d}=o,
u=`${c} ${t(c)} ${U(d)} ${N()}`,h=`${a} ${B(a)} ${r} ${l} ${u}`.toLowerCase();return s.every(f=>h.includes(f))})}
function _v(e,{list:t,where:n},s){let o=n==="device"?"on this device":"of the shop";return s.trim()===""?e===1?
`1 card ${o}`:`${e} cards ${o}`:e===0?`None of the ${t.length} cards matches.`:`${e} of ${t.length} cards`}function vv(){
return ct().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${R("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var Jl,fv,Ju,gv,th=m(()=>{y();yn();fe();be();Pe();He();ye();L();ht();zl();we();Yu();ot();ue();Xu();
Xl();Jl=40,fv=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`,Ju=i`<p><a href="/guide" data-test="to-guide">Guide</a></p>`,gv=i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`});var rs,nh,sh,Gs,Ql=m(()=>{rs=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],nh=["guaranteed minimum","typical","measured","common practice","from memory"],sh=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],Gs=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function Et(e=""){let n=e.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(oh.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...ah}]}function lh(e){let t=Et(e),{angle:n,face:s}=t[t.length-1];return is(
[...t,{...ah,angle:n,face:s}])}var oh,ah,rh,is,ih,ch,oa,_r=m(()=>{oh=["v","angle","radius","face","centre","co\
de","rating"],ah={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},rh=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];is=e=>e.map(t=>oh.map(n=>t[n].replaceAll(";",",")).join("; ")).join(
`
`),ih=(e,t,n)=>is(Et(e).map((s,o)=>o===t?{...s,...n}:s));ch=(e,t)=>is(Et(e).filter((n,s)=>s!==t)),oa={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var uh,hh,kv,xv,Sv,vr,Qt,zs,ec,dh,ph,tc,nc,sc,qs,oc=m(()=>{uh="Empty is unknown: checks with it then say so.",
hh={name:"rating_kn_per_m",label:"Rating",type:"rating",hint:"As stamped on the tool or in its maker's papers."},
kv={name:"segments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned tw\
ice twice."},xv=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],Sv=[{name:"con\
dition",label:"Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown",
"unknown"]]},{name:"condition_note",label:"Note on its condition",type:"note"}],vr={name:"name",label:"Name",type:"\
text",broad:!0},Qt=e=>t=>t.shape===e,zs=(e,t)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:e,
hint:`One point a line: x, y. x towards the back gauge, y up. ${t}`,when:Qt("points")}),ec=(...e)=>({name:"sha\
pe",label:"Shape",type:"pick",broad:!0,options:[...e,["points","by points or DXF"]]}),dh={name:"turned",label:"\
Sits in the press",type:"yes",options:[["no","as drawn"],["yes","reversed"]]},ph={title:"Rating and pieces",part:"\
rest",fields:[hh,kv]},tc={title:"Place and condition",part:"rest",fields:[...xv,...Sv]},nc=e=>e.shape!=="multi\
_v",sc=({die_holder_height_mm:e})=>!!e&&!/^0+([.,]0*)?( mm| in)?$/.test(String(e)),qs={punches:[{title:"What i\
t is",part:"what",fields:[vr,{name:"angle_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_m\
m",label:"Tip radius",type:"length"}]},{title:"Outline",part:"outline",fields:[ec(["straight","straight"],["go\
oseneck","gooseneck"]),{name:"height_mm",label:"Height, tip to seat",type:"length"},{name:"body_width_mm",label:"\
Width of the body",type:"length"},{name:"neck_relief_mm",label:"Throat behind the tip",type:"length",when:Qt("\
gooseneck")},{name:"neck_width_mm",label:"Thickness of the neck",type:"length",when:Qt("gooseneck"),blank:"as \
the body"},{name:"throat_top_mm",label:"Throat begins to close",type:"length",when:Qt("gooseneck"),blank:"as h\
igh as it can",hint:"Above the tip."},zs("punch","The tip is at 0, 0."),dh]},ph,tc],dies:[{title:"What it is",
part:"what",fields:[vr,{name:"v_opening_mm",label:"V opening",type:"length",hint:"Between the sharp corners of\
 face and flanks.",when:nc},{name:"angle_deg",label:"Angle of the V",type:"number",unit:"°",when:nc},{name:"s\
houlder_radius_mm",label:"Shoulder radius",type:"length",when:nc}]},{title:"Outline",part:"outline",fields:[ec(
["single_v","single V"],["multi_v","block with several V's"]),{name:"height_mm",label:"Height",type:"length"},
{name:"width_mm",label:"Width",type:"length"},dh,{name:"openings",label:"The V's of the block",type:"openings",
when:Qt("multi_v")},{name:"up",label:"V that is up",type:"number",hidden:!0,when:Qt("multi_v")},zs("die","The \
top face is at y 0, the V's middle at x 0.")]},ph,tc],holders:[{title:"What it is",part:"what",fields:[vr,hh]},
{title:"Outline",part:"outline",fields:[ec(["block","plain block"],["clamps","clamps that stick out"]),{name:"\
height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the front",
type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to the ba\
ck",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:Qt("clamps")},{name:"\
body_front_mm",label:"Body above, to the front",type:"length",when:Qt("clamps")},{name:"body_back_mm",label:"B\
ody above, to the back",type:"length",when:Qt("clamps")},zs("holder","The punch's seat is at 0, 0.")]},tc],press:[
{title:"The press",part:"what",fields:[vr,{name:"force_kn",label:"Full force",type:"force"},{name:"bed_length_\
mm",label:"Bed length",type:"length"}]},{title:"Room for the sheet and the tools",part:"rest",fields:[{name:"b\
etween_frames_mm",label:"Between the frames",type:"length",blank:"unknown"},{name:"open_height_mm",label:"Open\
 height",type:"length",blank:"unknown"},{name:"stroke_mm",label:"Stroke",type:"length",blank:"unknown"},{name:"\
throat_mm",label:"Throat",type:"length",blank:"unknown"}]},{title:"Ram and bed",part:"outline",fields:[{name:"\
ram_width_mm",label:"Ram width",type:"length",blank:"unknown"},{name:"ram_height_mm",label:"Ram height",type:"\
length",blank:"unknown"},{name:"bed_width_mm",label:"Bed width",type:"length",blank:"unknown"},{name:"bed_heig\
ht_mm",label:"Bed height",type:"length",blank:"unknown"},{name:"floor_below_die_mm",label:"Floor below the die",
type:"length",broad:!0,blank:"not looked at",hint:"From the face that the die stands on, down to the floor: lo\
ng parts hang that far."},{...zs("ram","From the face that carries the holder. Empty: a plain beam."),name:"ra\
m_points_mm",label:"Ram by points",when:void 0,folded:!0},{...zs("bed","From the face that carries the die or \
its holder. Empty: a plain beam."),name:"bed_points_mm",label:"Bed by points",when:void 0,folded:!0}]},{title:"\
Riser or die holder on the bed",part:"rest",fields:[{name:"die_holder_height_mm",label:"Height under the die",
type:"length",blank:"none",broad:!0,hint:"0 or empty: the die stands on the bed."},{name:"die_holder_width_mm",
label:"Width",type:"length",when:sc,blank:"by points"},{name:"die_holder_rating_kn_per_m",label:"Rating of the\
 die holder",type:"rating",hint:"As stamped on it or in its papers.",when:sc},{...zs("die_holder","The die's s\
eat is at y 0, the bed's at minus the height. Empty: a plain block."),name:"die_holder_points_mm",label:"Die h\
older by points",when:sc,folded:!0}]},{title:"Ratings",part:"rest",fields:[{name:"force_per_m_limit_kn_per_m",
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
none",broad:!0},{name:"note",label:"Note",type:"note"}]}]}});function Nt(e=""){let t=Ls(e);return t===""?null:Tv.test(t)?Number(t):t}function Av(e){let{show:t}=en.number;return{
v:Y(e.v_opening_mm),angle:t(e.angle_deg),radius:Y(e.shoulder_radius_mm),face:e.face,centre:Y(e.centre_mm),code:e.
code??"",rating:en.rating.show(e.rating_kn_per_m)}}function Lv({v:e,angle:t,radius:n,face:s,centre:o,code:a,rating:r}){
let l={v_opening_mm:kr(e),angle_deg:Nt(t),shoulder_radius_mm:kr(n),centre_mm:kr(o)};return{...Object.fromEntries(
Object.entries(l).filter(([,d])=>d!==null)),face:s||"top",code:a||null,rating_kn_per_m:mh(r)}}function Sr(e,t){
return Object.fromEntries(Pt(e).map(({name:n,type:s})=>[n,en[s].show(t[n])]))}function Tr(e,t,n={}){let s=({name:r,
type:l})=>r in n&&en[l].show(n[r])===t[r]?n[r]:en[l].take(t[r]),a=Pt(e).filter(({when:r})=>!r||r(t)).map(r=>({
spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||Ev(r)).map(({spec:r,value:l})=>[
r.name,l]))}function gh(e){let t={};for(let n of["name","note","gauge_family"])t[n]=en.text.show(e[n]);for(let{
name:n}of Gs)t[n]=en.number.show(e[n]);for(let{name:n}of rs){let s=e[n];for(let o of Nv)t[`${n}.${o}`]=en.number.
show(s?.[o]);t[`${n}.standing`]||="typical"}return t}function $h(e){let t={name:e.name.trim(),note:e.note.trim(),
gauge_family:e.gauge_family||null};for(let{name:n,needed:s}of Gs)(e[n]?.trim()||!s)&&(t[n]=Nt(e[n]));for(let{name:n,
needed:s}of rs){let o=["low","nominal","high","source"].some(a=>e[`${n}.${a}`]?.trim());t[n]=o||s?Pv(e,n):null}
return t}function Pv(e,t){let n=["low","nominal","high"].map(s=>[s,Nt(e[`${t}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(e[`${t}.source`]??"").trim(),standing:e[`${t}.standing`]}}function bh(e,t){
let n={},s=[];for(let[o,a]of Object.entries(e)){let r=`.${o}.`,c=(r.includes(".openings.")?t.filter(u=>u==="op\
enings"):t).filter(u=>r.includes(`.${u}.`)).sort((u,h)=>h.length-u.length)[0],d=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n[o.slice(o.indexOf(c))]??=[]).push(...a):c?(n[c]??=[]).push(...d&&r.endsWith(`.${c}.${d}.`)?a.map(u=>`\
Number ${Number(d)+1}: ${u}`):a):s.push(...a.map(u=>`${o}: ${u}`))}return{byName:n,others:s}}var Tv,xr,kr,Mv,mh,
Ov,en,fh,Pt,Ev,Nv,Ct=m(()=>{Ql();_r();oc();L();Tv=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;xr=e=>(t="")=>t.trim()===
""?null:e(t),kr=xr(e=>ne(e)),Mv=xr(e=>un(e,$t())),mh=xr(e=>un(e,rt())),Ov=(e="")=>e.split(/[\n;]/).map(t=>t.trim()).
filter(Boolean),en={text:{show:e=>e??"",take:(e="")=>e.trim()},note:{show:e=>e??"",take:(e="")=>e.trim()},pick:{
show:e=>e??"",take:e=>e||null},yes:{show:e=>e?"yes":"no",take:e=>e==="yes"},length:{show:Y,take:kr},number:{show:e=>e==
null?"":String(e),take:Nt},force:{show:e=>dl(e,$t()),take:Mv},rating:{show:e=>dl(e,rt()),take:mh},speed:{show:Y,
take:xr(e=>ne(e).replace(/ (mm|in)$/," $1/s"))},lengths:{show:e=>(e??[]).map(Y).join(", "),take:(e="")=>e.split(
/[,;\n]/).filter(t=>t.trim()).map(t=>ne(t))},points:{show:e=>(e??[]).map(([t,n])=>`${Y(t)}, ${Y(n)}`).join(`
`),take:e=>Ov(e).map(t=>t.split(t.includes(",")?",":/\s+/).map(n=>ne(n)))},openings:{show:e=>is((e??[]).map(Av)),
take:e=>Et(e).map(Lv)},figure:{show:String,take:String}};fh=e=>en.points.show(e),Pt=e=>qs[e].flatMap(t=>t.fields);
Ev=({type:e,blank:t})=>e==="rating"||t!==void 0,Nv=["low","nominal","high","source","standing"]});function Mr(e){let t={...Cv};for(let n of rc){let s=e.get(ac[n])?.slice(0,60);if(s==null)continue;let o=` ${N()}`;
t[n]=ic(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return t}function Or(e){let t=new URLSearchParams;for(let n of rc){
let s=e[n].trim();s!==""&&t.set(ac[n],ic(n)?ne(s):s)}return t.toString()}function aa(e){return Rv.filter(t=>e[t].
trim()==="")}function ls(e){let t={};for(let n of rc){let s=e[n].trim();s!==""&&(t[n]=ic(n)?ne(s):n==="include\
d_angle_deg"?Nt(s):s)}return t}var Cv,ac,rc,Rv,ic,Ar=m(()=>{Ct();L();Cv={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},ac={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},rc=Object.keys(ac),Rv=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],ic=e=>e.endsWith("_mm")});function tn(e,t,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:d}=a;try{let u=await e(c,d);d.aborted||t({question:c,answer:u})}catch(u){d.aborted||
t({question:c,error:u})}}return{stop:r,ask(c,{now:d=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),d?0:s))}}}var ra=m(
()=>{});function Rt(e,t,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
p}>
    <span class="what">${$r(e)}</span>
    <span class="value"
      >${t.text}${t.unit==="°"?"°":i`<span class="unit">${t.unit}</span>`}</span
    >
    ${n||o?i`<span class="band"
            >${n?i`${n[0].text} to ${n[1].text}${n[1].unit==="°"?"°":` ${n[1].unit}`}`:p}${o?i` <i class="origin" data-test="origin">${o}</i>`:
p}</span
          >`:p}
    ${s&&s!==p?i`<span class="band">${s}</span>`:p}
  </div>`}var Lr=m(()=>{y();br()});function Er(e){return e.force_kn===null||e.force_kn===void 0?p:i`<b>${$(Ge(e))}</b>
    <small class="expected">expected ${$(On(e))}</small>`}function ia(e,t,n="force_kn",{note:s=p,origin:o=""}={}){
return Rt(e,Ge(t,n),{note:i`expected ${$(On(t,n))}${s}`,origin:o,test:n})}var Ge,On,wh,wt=m(()=>{y();L();Lr();
Ge=(e,t="force_kn")=>wh(t)(e[`${t}_high`],{up:!0}),On=(e,t="force_kn")=>wh(t)(e[t]),wh=e=>e==="force_kn"?me:Ie});var lc,yh=m(()=>{lc=class extends HTMLElement{#e=new ResizeObserver(()=>this.measure());#t=new MutationObserver(
()=>this.measure());connectedCallback(){this.#e.observe(this),this.#t.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#e.disconnect(),this.#t.disconnect()}measure(){let t=this.
querySelector("svg"),{width:n,height:s}=t?.viewBox.baseVal??{width:0,height:0};if(!t||!n||!t.clientWidth||!t.clientHeight)
return;let o=Math.max(n/t.clientWidth,s/t.clientHeight);t.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",lc)});function cc({distance_mm:e,tool:t}){let n=$(w(Math.abs(e)));return e<=0?[n,`into ${t}`]:[n,`to ${t}`]}function _h(e,{
left:t,right:n,bottom:s,top:o}){let[a,r]=cs(e),[[l,c],[d,u]]=[e.on_sheet,e.on_tool],h=a-t>n-a?-1:1,f=r-s>.7*(o-
s)?1:-1,[g,b]=cc(e);return v`<g class="near ${e.distance_mm<=0?"hit":""}" data-test="near" data-tool=${e.tool}>
    <path class="near-line" d="M${l} ${-c}L${d} ${-u}" />
    ${Nr(e,n-t)?p:[e.on_sheet,e.on_tool].map(Bv)}
    <g transform="translate(${a} ${-r})">
      ${Nr(e,n-t)?v`<circle class="px near-ring" r="17" />`:p}
      <path class="px near-leader" d="M${h*12} ${f*12}L${h*34} ${f*30}H${h*44}" />
      <text class="px label near-label" x=${h*50} y=${f*30-2}
        text-anchor=${h>0?"start":"end"}>${g}<tspan x=${h*50}
          dy="1.1em">${b}</tspan></text>
    </g>
  </g>`}var cs,Nr,Bv,dc=m(()=>{y();L();cs=({on_sheet:[e,t],on_tool:[n,s]})=>[(e+n)/2,(t+s)/2];Nr=(e,t)=>Math.abs(
e.distance_mm)<.1*t,Bv=([e,t])=>v`<g transform="translate(${e} ${-t})"><circle class="px near-dot" r="4" /></g>`});function Bt(e,{pose:t,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:d=!1,room:u=null}){
let h=s??(e.bounds[2]-e.bounds[0])/6,f=n?Wv(h,d?c:null):Dv(e,h,c),g=u&&!n?Fv(f,u,h):f,{left:b,bottom:_,right:C,
top:D}=g,k=l??Iv(e,t==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${t}
      viewBox="${b} ${-D} ${C-b} ${D-_}"
      preserveAspectRatio="xMidYMid meet">
      ${[e.bed,e.die].map(Re).map(vh)}
      <g transform="translate(0 ${k.down})">${k.tools.map(vh)}</g>
      ${e.die.length?v`<path class="axis" d="M0 ${-D-999}V999" />`:p}
      <path class="gauge" transform="translate(${k.back} 0)" d=${k.gauge} />
      <path class="sheet" data-test="sheet" d=${k.sheet} />
      ${t==="before"&&e.gauge_point?Hv(e.gauge_point,o,g):p}
      ${t==="after"&&a?jv(e.after.sheet,a,h,g):p}
      ${d&&c?_h(c,g):p}
    </svg>
  </drawing-frame>`}function Iv(e,t){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=e[t];return{sheet:Re(n),tools:[
s,o,a].map(Re),down:0,gauge:Re(r),back:0}}function Wv(e,t){let[n,s]=t?cs(t):[0,.1*e];return{left:n-1.5*e,bottom:s-
e,right:n+1.5*e,top:s+e}}function Dv(e,t,n){let[s,o,a,r]=ut([e.before.sheet,e.after.sheet]),l=14*t,c=e.gauge_point?
e.gauge_point[0]+1.5*t:0,d={left:Math.max(Math.min(s-.4*t,-1.4*t),-l),right:Math.min(Math.max(a+.4*t,c,1.4*t),
Math.max(l,c))},u=d.right-d.left,h={...d,bottom:Math.max(Math.min(o-.3*t,-1.1*t,-.17*u),-l/2),top:Math.min(Math.
max(r+.3*t,1.6*t),8*t)},f=n?pc(h,cs(n),Math.max(t,.1*u)):h;return{...f,bottom:Math.min(f.bottom,f.top*-.33)}}function Fv(e,{
bounds:t,share:n},s){let o=pc(pc(e,[t[0],t[1]],s),[t[2],t[3]],s),a=r=>e[r]+(o[r]-e[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function Hv([e,t],n,{bottom:s}){let o=s*.45;return v`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${e} ${-t}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${e}" />
    ${kh(0,o,180)}${kh(e,o,0)}
    <g transform="translate(${e} ${-t})"><circle class="px touch" r="5" /></g>
    ${xh(e/2,o,n,17)}
  </g>`}function jv(e,t,n,{left:s,right:o}){let a=Math.min(...e.filter(([u])=>Math.abs(u)<n/2).map(([,u])=>u)),
r=Math.max(1.25*n,.14*(o-s)),l=t/2*(Math.PI/180),[c,d]=[r*Math.sin(l),a+r*Math.cos(l)];return v`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-d}A${r} ${r} 0 0 1 ${c} ${-d}" />
    ${xh(0,a+r,$(M(t)))}
  </g>`}var vh,pc,kh,xh,la=m(()=>{y();L();yh();dc();Tn();vh=e=>e?v`<path class="tool" d=${e} />`:p;pc=({left:e,
right:t,bottom:n,top:s},[o,a],r)=>({left:Math.min(e,o-r),right:Math.max(t,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});kh=(e,t,n)=>v`<g transform="translate(${e} ${-t})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,xh=(e,t,n,s=0)=>v`<g transform="translate(${e} ${-t})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function Sh(e,t){let n=[...e].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>t(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die}
              <small>V ${te(s.v_over_t,1)} × thickness</small></span
            >
            ${s.level==="ok"?p:S(s.level)}
            <span class="facts"> ${Uv(s).map(o=>Vv(...o))} </span>
            <span class="more">${Me(s.reason_said)} ${kn(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var Uv,Vv,Th=m(()=>{y();be();L();wt();G();Uv=e=>[["allow for",$(Ge(e,"force_kn_per_m")),`expected ${On(
e,"force_kn_per_m").text}`],["radius",$(w(e.inside_radius_mm))],["flange from",$(w(e.min_flange_mm))],["set",$(
M(e.set_angle_deg))]],Vv=(e,t,n)=>i`<span class="fact"
    ><small>${e}</small>
    <span class="amount">${t}</span
    >${n?i` <small class="beside">${n}</small>`:p}</span
  >`});function Ks(e,t=""){return e?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${uc(e)}. If it is too open, make a second hit.
    <span class="drawn">${t}</span>
  </p>`:p}var Pr,uc,Mh,Cr,ds=m(()=>{y();L();Pr=e=>M(e).text.replace(/\.0$/,""),uc=e=>`comes out ${Pr(e.comes_out_deg_low)}\
 to ${Pr(e.comes_out_deg_high)}°`,Mh=e=>`${Pr(e.comes_out_deg_low)}–${Pr(e.comes_out_deg_high)}°`,Cr=(e,{set_angle_deg:t,
firstHit:n})=>n?e.expected_set_angle_deg:t});function Rr(e){return hc(e,t=>t.level==="stop"||t.level==="caution")}function hc(e,t){let n=e.filter(o=>!Oh(o)&&
t(o));if(n.length===0)return p;let s=n.some(o=>o.level==="stop");return i`<section
    class="panel urgent ${s?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${Us(n)}
  </section>`}function Zs(e){let t=e.filter(o=>o.level==="unknown"),n=e.filter(o=>Le(o)==="note"),s=e.filter(o=>Le(
o)==="ok");return i`${t.length?i`<section>
          <h2>Not known</h2>
          ${Us(t)}
        </section>`:p}
  ${n.length?i`<section data-test="notes">
          ${oe("How to do it",Us(n),{test:"notes-fold"})}
        </section>`:p}
  ${s.length?oe(`Passed checks: ${s.length}`,Ue(s),{test:"fine",open:!1}):p}`}function An(e){let t=e.filter(Oh);
if(t.length===0)return p;let n=i`<ul>
    ${t.map(s=>i`<li>
          <b>${Qe(s.template,s.numbers)}</b>
          ${Qe(os(s),s.numbers)}
        </li>`)}
  </ul>`;return i`<section class="every-time">
    ${oe(i`${S("caution")} At the press, every time`,n,{test:"every-time"})}
  </section>`}var Oh,Ah,Lh,ca=m(()=>{y();L();G();ot();Oh=e=>e.code.startsWith("general-");Ah=e=>hc(e,t=>t.level===
"stop"),Lh=e=>hc(e,t=>t.level==="caution")});function Br(e){let[t,n]=[e?.die?.trim(),e?.punch?.trim()];return{...t?{die:t}:{},...n?{punch:n}:{}}}function mc(e){
let t=Br(e);return Object.keys(t).length?{tools:t}:{}}function nn(e){let{die:t,punch:n}=Br(e);return[t&&`die ${t}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var da,ps=m(()=>{da=e=>({die:e?.die??"",punch:e?.punch??""})});function gc(e,t,n,s){let o=(a,r)=>A({next:!0,name:`${e}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:t[a]??"",wrong:I(n,`${e}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function Nh(e,{dies:t,punches:n},s,o){
let a=t.flatMap($c).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${nn(e.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${gc("tools",e.tools??{},s,r=>o({...e,tools:{die:"",punch:"",...e.tools,...r}}))}
    </details>
    ${Eh("codes-of-dies",a)}
    ${Eh("codes-of-punches",n.map(({code:r})=>r))}`}function Ys({tools_reason:e,tools_reason_said:t}){let n=je(
{...t,words:e});return n?i`<p class="tools-reason" data-test="tools-reason">${n}</p>`:p}var fc,$c,Eh,us=m(()=>{
y();ps();G();z();tt();fc=["tools.die","tools.punch"];$c=e=>e.shape==="multi_v"?e.openings:[e];Eh=(e,t)=>i`<datalist id=${e}>${t.
map(n=>i`<option value=${n}></option>`)}</datalist>`});function Ir(e){let t=(e??"").split(":")[0].trim();return Gv.includes(t)?t:""}function pa(e){if(!e)return"";let t=new Map;
for(let[n,s]of zv){let o=e[n];o&&t.set(o,[...t.get(o)??[],s])}return[...t].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var Gv,zv,Wr=m(()=>{Gv=["model","handbook","your test bends"];zv=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function Ch(e){return i`<ul class="ratings" data-test="ratings">
    ${e.map(qv)}
  </ul>`}function qv(e){let{what:t,share_percent:n,level:s}=e;return i`<li class="rating" data-level=${s} data-what=${t}>
    <span class="rating-of"><b>${Bh[t]??t}</b>${Rh(e)}</span>
    ${S(s,n===null?"Unknown":`${te(n,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${n===null?"open":""}" d="M0 9H250" />
      ${n===null?p:Zv(n)}
    </svg>
    <span class="rating-words">${Kv(e)}</span>
  </li>`}function Kv({load_kn:e,load_kn_per_m:t,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=t===void 0?
$(me(e)):$(Ie(t));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=t===void 0?
$(me(n)):$(Ie(s));return`${a} of ${r}`}function Zv(e){let t=Math.min(e/100*Ph,250);return v`<path class="bar-load" d="M0 9H${t}" /><path class="bar-most" d="M${Ph} 0V18" />`}
var Ph,Rh,bc,Bh,Ih=m(()=>{y();L();G();Ph=200;Rh=({what:e,name:t})=>e.startsWith("press")||!t?"":` ${t}`,bc=e=>`${Bh[e.
what]??e.what}${Rh(e)}`,Bh={press:"Press","press per metre":"Bed and ram, per length",punch:"Punch",die:"Die",
holder:"Holder","die holder":"Die holder"}});function Xs(e,t,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(t-e)/o,c=(r?.find(_=>l/_<=a)??Yv(l,a))*o,d=Math.
floor(e/c+1e-9)*c,u=Math.ceil(t/c-1e-9)*c,h=_=>Xv(n+(_-d)/(u-d)*(s-n)),f=Math.round((u-d)/c),g=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),b=Array.from({length:f+1},(_,C)=>d+C*c).map(_=>({at:h(_),text:(_/o).toFixed(g).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:h,marks:b}}function Yv(e,t){let n=(e>0?e:1)/t,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function Dr(e){return e.length?`M${e.
map(([t,n])=>`${t} ${n}`).join("L")}`:""}var Xv,wc=m(()=>{Xv=e=>Math.round(e*100)/100});function Wh({curve:e,set:t,peak:n,limits:s}){let o=Math.max(...e.map(g=>g.force_kn_high)),a=s.filter(g=>g.limit_kn!==
null).sort((g,b)=>Number(b.limit_kn)-Number(g.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:g})=>Number(
g)<=(g===r?Qv:Jv)*o),c=Hh(e),d=Xs(0,Math.max(o,...l.map(g=>Number(g.limit_kn))),{from:ze.bottom,to:ze.top+28,size:$t().
size}),u=(g,b)=>[c.at(g.punch_depth_mm),d.at(g[b])],h=[...e.map(g=>u(g,"force_kn_high")),...e.map(g=>u(g,"forc\
e_kn_low")).reverse()],f=n?`Force over punch depth. The peak is expected at ${$(me(n.force_kn))}, at a depth o\
f ${$(Fh(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Fr} ${Hr}"
    role="img"
    aria-label=${f}
    data-test="stroke-force">
    ${jh(c,d,$t().unit)}
    <path class="band" d="${Dr(h)}Z" />
    ${t.punch_depth_mm===null?p:Uh(c.at(t.punch_depth_mm))} ${ek(l,d)}
    ${nk(a.filter(g=>!l.includes(g)))}
    <path class="curve" d=${Dr(e.map(g=>u(g,"force_kn")))} data-test="force-curve" />
    ${n?ok(c.at(n.punch_depth_mm),d.at(n.force_kn)):p}
  </svg>`}function Dh({curve:e,set:t,trials:n}){let s=n.filter(h=>h.punch_depth_mm!==null),o=Hh(e,s.map(h=>Number(
h.punch_depth_mm))),a=[...e.map(h=>h.loaded_angle_deg),...s.map(h=>h.measured_deg)],r=Xs(Math.min(...a),180,{from:ze.
bottom,to:ze.top,steps:[5,10,15,30,45]}),l=h=>Dr(e.map(f=>[o.at(f.punch_depth_mm),r.at(f[h])])),c=t.set_angle_deg===
null?null:{x:o.at(Number(t.punch_depth_mm)),y:r.at(t.set_angle_deg)},u=`Angle over punch depth. ${c?`${$(M(t.set_angle_deg))}\
 under load at a depth of ${$(Fh(Number(t.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} results drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Fr} ${Hr}"
    role="img"
    aria-label=${u}
    data-test="stroke-angle">
    ${jh(o,r,"°")} ${c?Uh(c.x):p}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?v`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:p}
    ${s.map(h=>sk(o.at(Number(h.punch_depth_mm)),r.at(h.measured_deg),h))}
  </svg>`}function Hh(e,t=[]){let n=Math.max(...e.map(s=>s.punch_depth_mm),...t);return Xs(0,n,{from:ze.left,to:ze.
right,size:N()==="in"?Se:1,most:6})}function jh(e,t,n){let{left:s,right:o,top:a,bottom:r}=ze,l=n==="°",c=t.marks.
map(({at:h,text:f})=>v`<path class="faint" d="M${s} ${h}H${o}"/>
      <text x=${s-6} y=${h+6} text-anchor="end"
        font-size=${sn}>${f}${l?"°":""}</text>`),d=e.marks.map(({at:h,text:f})=>v`<path class="faint" d="M${h} ${r}v6"/>
      <text x=${Math.min(h,Fr-f.length*sn*.3)} y=${r+24} text-anchor="middle"
        font-size=${sn}>${f}</text>`),u=v`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${sn}>${n}</text>`;return v`
    ${c}
    ${d}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${Hr-8} text-anchor="end"
      font-size=${sn}>punch depth, ${N()}</text>
    ${l?p:u}`}function ek(e,t){let n=-1/0;return tk(e).map(({limit_kn:s,names:o})=>{let a=t.at(s);return n=Math.
max(a-6,n+sn+2),v`<path class="limit" d="M${ze.left} ${a}H${ze.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${ze.left+6} y=${n}
        font-size=${sn}>${o.join(", ")} ${$(me(s))}</text>`})}function tk(e){let t=new Map;for(let n of e)t.set(
Number(n.limit_kn),[...t.get(Number(n.limit_kn))??[],jr(n)]);return[...t].map(([n,s])=>({limit_kn:n,names:s}))}
function nk(e){if(!e.length)return p;let t=e.length>1?`, ${e.length-1} more`:"";return v`<text class="limit-word" x=${ze.
right} y="18" text-anchor="end" font-size=${sn}
      data-test="limit-far">↑ ${yc(e[e.length-1])}${t}</text>`}function jr({what:e,name:t}){return e==="pres\
s per metre"?"Bed and ram":e==="press"||!t?e[0].toUpperCase()+e.slice(1):`${e[0].toUpperCase()}${e.slice(1)} ${t}`}
function sk(e,t,{id:n,outlier:s}){return s?v`<path class="result-odd" d="M${e-6} ${t-6}l12 12M${e+6} ${t-6}l-12 12"
        data-test="result-point" data-id=${n} data-odd="true"/>`:v`<circle class="result-point" cx=${e} cy=${t} r="6" data-test="result-point" data-id=${n}/>`}
var Fr,Hr,ze,sn,Jv,Qv,Fh,Uh,yc,ok,Vh=m(()=>{y();L();wc();Fr=400,Hr=320,ze={left:58,right:Fr-14,top:20,bottom:Hr-
54},sn=18,Jv=3,Qv=5;Fh=e=>w(e,{digits:2});Uh=e=>v`<path class="set-line" d="M${e} ${ze.top}V${ze.bottom}"/>
  <text class="set-word" x=${e-5} y=${ze.bottom-6} text-anchor="end" font-size=${sn}>set</text>`;yc=({what:e,name:t,
limit_kn:n})=>`${jr({what:e,name:t})} ${$(me(n))}`;ok=(e,t)=>v`<circle class="peak" cx=${e} cy=${t} r="6" data-test="peak-mark"/>`});function qh({stroke:e,error:t,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?ak(e,t):p}
  </details>`}function ak(e,t){return t?i`<p class="hint" data-test="stroke-missing">
      ${t instanceof E?t.message:"The stroke could not be fetched."}
    </p>`:e?e.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${Wh(e)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${rk(e)}</p>
        ${ik(e)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${Dh(e)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${Gh("curve")} under load</li>
          <li>${Gh("curve let-go")} released</li>
          ${e.trials.length?i`<li>${dk} trials, released</li>`:p}
        </ul>
        <p data-test="stroke-set">${lk(e)}</p>
        ${ck(e)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function rk({peak:e,work_j:t}){if(!e)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${$(
Ge(e))}.</b> The peak is expected at
    ${$(me(e.force_kn))}, ${zh(e.punch_depth_mm)} deep, ${$(M(e.loaded_angle_deg))}
    under load.`;return t?i`${n} Work in the stroke ${te(t,0)} J.`:n}function ik({limits:e}){let t=e.filter(s=>s.
limit_kn!==null),n=e.filter(s=>s.limit_kn===null);return i`${t.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${t.map(yc).join(", ")}. The shaded band is what the force may be.
        </p>`:p}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(jr).join(", ")}. Read it off the plate.
        </p>`:p}`}function lk({set:e}){return e.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${$(M(e.set_angle_deg))} under load at a depth of ${zh(e.punch_depth_mm)}\
.`}function ck({trials:e}){let t=e.filter(n=>n.punch_depth_mm===null).length;return t?i`<p class="hint">
        ${t===1?"One result has":`${t} results have`} no depth written down and can't be drawn.
      </p>`:p}var zh,Gh,dk,Kh=m(()=>{y();Vh();j();L();wt();zh=e=>$(w(e,{digits:2}));Gh=e=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${e} d="M2 8H38" />
  </svg>`,dk=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="result-point" cx="20" cy="8" r="6" />
</svg>`});function on(e,t,n,s,o=Yh(e,t,s)){let[a,r]=[e[`${t}_low`],e[`${t}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return Rt(n,s(e[t]),{band:l?[s(a),s(r)]:null,note:o,origin:Ir(e.sources?.[t]),test:t})}function Yh({
handbook:e,sources:t,...n},s,o){let a=e?.[s];if(typeof a!="number"||Ir(t?.[s])==="handbook")return p;let r=o(a);
if(r.text===o(n[s]).text)return p;let[l,c]=[n[`${s}_low`],n[`${s}_high`]],d=a<l||a>c;return i`<span class=${d?
"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${$(r)}</span
  >`}function Xh(e,t,n){return i`${Ah(e.checks)}
    <section class="bend-first" aria-label="What to set" data-test="first">
      ${pk(e,t)} ${uk(e)}
    </section>
    ${Lh(e.checks)} ${Zs(e.checks)}
    <div class="columns bend-columns">
      <div>${gk(e)} ${bk(e)}</div>
      <div>${wk(e,n)} ${qh(n.stroke)} ${yk(e,n)}</div>
    </div>
    ${_k(e)} ${An(e.checks)}`}function pk(e,{punches:t,dies:n}){let s=n.find(({code:a})=>a===e.die),o=t.find(({
code:a})=>a===e.punch);return!e.die&&!e.punch?i`<p class="panel" data-test="no-tools">
      Counted with plain stand-in tools: a V of ${$(w(e.v_opening_mm))} and a punch with a tip
      of ${$(w(e.punch_radius_mm))}.
      ${t.length&&n.length?p:R(re.punches,i`<a href="/shop/${n.length?"punches":"dies"}/+" data-test="to-first-tools"
                >Enter your own tools</a
              >`)}
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:e.die,tool:s},{kind:"punch",code:e.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"
              ><b>${r??"none"}</b> <span>${l?.name??""}</span></span
            >
            <span class="where">${l?kn(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:p}
          </li>`)}
    </ul>
    ${Ys(e)}`}function uk(e){return i`<div class="figures">${e.first_hit?fk(e):mk(e)}</div>
    <div class="figures three">
      ${ia("Allow for",e,"force_kn")}
      ${Rt("Flange from",w(e.min_flange_mm),{test:"min_flange_mm"})}
      ${on(e,"bend_deduction_mm","Deduction",hs)}
    </div>
    ${hk(e)} ${Ks(e.first_hit)}`}function hk({ratings:e}){let t=e?.find(({share_percent:s})=>s===null),n=(e??[]).
reduce((s,o)=>(o.share_percent??0)>(s?.share_percent??0)?o:s,null);return i`<p class="weakest" data-test="weakest">
    ${t?i`<b>${bc(t)}: rating unknown.</b>`:p}
    ${n?i`${bc(n)}: ${te(n.share_percent??0,0)} % of the rating.`:p}
  </p>`}function gk(e){return oe("Force against the ratings",i`<div class="figures">
        ${ia("Per length, allow for",e,"force_kn_per_m")}
        ${Rt("Expected",me(e.force_kn),{note:$k(e),origin:Ir(e.sources?.force_kn),test:"force_expected"})}
      </div>
      ${e.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
              ${Ch(e.ratings)}`:p}`)}function $k(e){let t=e.force_kn_low,n=Yh(e,"force_kn",me);return i`${typeof t==
"number"?`at least ${$(me(t))}`:p}${n===p?p:i` <br />${n}`}`}function bk(e){return oe("What comes out",i`<div class="figures">
      ${on(e,"inside_radius_mm","Inside radius",hs)}
      ${on(e,"springback_deg","Springback",M)}
      ${on(e,"bend_allowance_mm","Bend allowance",hs)}
      ${on(e,"k_factor","K-factor",Jh)}
    </div>`)}function wk(e,{pose:t,show:n}){if(!e.drawing)return p;let s=$(M(e.set_angle_deg)),o=t==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return oe("Drawn to scale",i`<section class="bend-drawing" aria-label="The bend in its tools">
      ${Q({name:"pose-shown",label:"Shown",value:t,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
      ${Bt(e.drawing,{pose:t,close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,words:`The sheet i\
n die and punch, ${o}`})}
    </section>`,{test:"drawing"})}function yk(e,{use:t}){return e.options?.length?oe(`Dies of the crib: ${e.options.
length}`,i`<p class="hint">Tap one to use it. Each with the reason for its rank.</p>
      ${Sh(e.options,t)}`,{test:"dies"}):p}function _k({opinions:e,sources:t}){return e?oe("Second opinions",i`<div class="opinions">
      ${e.force?.length?Zh("Force by published relations",e.force,[["force_kn","Force",me],["force_kn_per_m","\
Per length",Ie]]):p}
      ${e.allowance?.length?Zh("Bend allowance by published relations",e.allowance,[["bend_allowance_mm","Allo\
wance",hs],["k_factor","K",Jh]]):p}
      ${t?i`<details>
              <summary>Where each figure comes from</summary>
              <dl class="sources">
                ${Object.entries(t).map(([n,s])=>i`<dt>${vk[n]??n}</dt>
                      <dd>${s}</dd>`)}
              </dl>
            </details>`:p}
    </div>`,{open:!1}):p}function Zh(e,t,n){return i`<div class="table">
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
  </div>`}var hs,mk,fk,Jh,vk,Qh=m(()=>{y();la();be();L();wt();Th();Lr();ds();ca();ot();ue();z();us();Wr();Ih();
Kh();hs=e=>w(e,{digits:2});mk=e=>i`
  ${on(e,"set_angle_deg","Set angle",M)}
  ${on(e,"punch_depth_mm","Depth",hs)}
`,fk=e=>i`
  ${on(e,"set_angle_deg","First hit: set angle",M,`then about ${$(M(e.expected_set_angle_deg))}`)}
  ${on(e,"punch_depth_mm","First hit: depth",hs,`then about ${$(hs(e.expected_punch_depth_mm))}`)}
`;Jh=e=>({text:e==null?"–":te(e,2),unit:""});vk={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var tm={};ie(tm,{show:()=>Sk});async function Sk(e){e.title("Check a bend"),e.render(Ce("Looking into the crib\
…"));let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async k=>(await he(k,e.signal)).items)),o={
dies:n,punches:s},a=Mr(e.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=t[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:Mn()},d=tn(async(k,x)=>(await O("POST","/bend",
{body:k,signal:x})).body,({answer:k=null,error:x=null})=>{Object.assign(l,{answer:k,error:x,busy:!1}),Object.assign(
c,{stroke:null,error:null}),h(),b()},e.signal),u=tn(async(k,x)=>(await O("POST","/stroke",{body:k,signal:x})).
body,({answer:k=null,error:x=null})=>{Object.assign(c,{stroke:k,error:x}),b()},e.signal);function h(){u.stop(),
c.open&&l.answer&&!c.stroke&&u.ask(ls(a),{now:!0})}function f(k){history.replaceState(null,"",`/bend?${Or(a)}`),
l.busy=aa(a).length===0,l.busy?d.ask(ls(a),k):(d.stop(),Object.assign(l,{answer:null,error:null})),b()}function g(k,x){
Object.assign(a,k),f(x)}function b(){let k=l.error instanceof E?l.error.errors:{};e.render(i`<h1 class="bend-title">Check a bend</h1>
        <div
          class="desk"
          aria-busy=${l.busy?"true":"false"}
          data-test="bend"
          data-busy=${String(l.busy)}>
          <form
            class="panel desk-form"
            aria-label="The bend"
            @submit=${x=>x.preventDefault()}>
            ${Tk(a,{metals:t,...o,openTools:r,answer:l.answer},k,g)}
          </form>
          <p class="unseen" role="status">${_()}</p>
          <div class="desk-answer" data-test="answer">${C(k)}</div>
        </div>`),l.busy||e.ready()}function _(){let{answer:k}=l;if(!k||l.busy)return"";let x=k.worst==="ok"?"":
`${k.worst}. `,T=k.set_angle_deg===null?"nothing to set":`set ${$(M(k.set_angle_deg))}`;return`${x}Die ${k.die??
"none"}, allow for ${$(Ge(k))}, ${T}.`}function C(k){let x=aa(a);return x.length?Te("One bend, all its figures",
i`Still to type: ${x.map(T=>xk[T]).join(", ")}.`):l.error?D(k):l.answer?Xh(l.answer,o,{pose:l.pose,show:T=>{l.
pose=T,b()},use:T=>g({die:a.die===T?"":T},{now:!0}),stroke:{...c,toggled:T=>{c.open!==T&&(c.open=T,h(),b())}}}):
Ce("Working it out…")}function D(k){if(!(l.error instanceof E)||l.error.status>=500)return i`${wn(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>f({now:!0})}>
            Try again
          </button>
        </div>`;let x=vu(k,kk),T=Object.keys(k).length>x.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...T,...x].map(F=>i`<p>${F}</p>`)}
    </div>`}f({now:!0})}function Tk(e,{metals:t,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(h,f,g={})=>A(
{name:h,label:f,value:e[h],wrong:I(r,h),change:b=>l({[h]:b}),...g}),d=(h,f,g)=>J({name:h,label:f,value:e[h],options:g,
wrong:I(r,h),change:b=>l({[h]:b},{now:!0})}),u=e.metal&&!t.some(({code:h})=>h===e.metal);return i`${d("metal",
"Metal",[...u?[[e.metal,`${e.metal} (not in the shop)`]]:[],...Ok(t)])}
    <div class="fields three">
      ${c("thickness_mm","Thickness",{unit:N(),hint:a?Mk(a,e.thickness_mm):"3, 1/8 in, 16 ga"})}
      ${c("bend_length_mm","Length",{unit:N()})}
      ${c("included_angle_deg","Angle",{unit:"°",keys:"decimal",hint:a?"":"90 is square"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${d("die","Die",[["","Best of the crib"],...em(e.die,n)])}
      ${d("punch","Punch",[["","Best of the crib"],...em(e.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:N()})}
    </details>
    ${e.die||e.punch||e.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:p}`}function Mk({thickness_mm:e,thickness_gauge:t},n){return[/ga/i.test(n)?$(w(e,{digits:2})):
"",t??""].filter(Boolean).join(", ")}function em(e,t){let n=t.map(s=>[s.code,`${s.code} · ${s.name}`]);return e&&
!t.some(s=>s.code===e)?[[e,`${e} (not in the crib)`],...n]:n}var kk,xk,Ok,nm=m(()=>{y();j();Ar();be();ra();L();
wt();Qh();z();ot();We();tt();kk=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","punch","p\
unch_radius_mm"],xk={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"angle"};
Ok=e=>e.map(({code:t,name:n})=>[t,n])});function sm(e){let t,n=async()=>{document.visibilityState!=="visible"||e.aborted||(t=await navigator.wakeLock?.
request("screen").catch(()=>{}),e.aborted&&t?.release())};document.addEventListener("visibilitychange",n,{signal:e}),
e.addEventListener("abort",()=>t?.release()),n()}var _c,vc=m(()=>{y();_c=()=>"wakeLock"in navigator?p:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function an(e){let{body:t}=await O("GET","/press-screens",{signal:e,timeout:3e3});return t.press_screens}
async function rm(e){let{body:t}=await O("PUT",`/press-screens/${encodeURIComponent(e)}`,{body:{code:null,step:0}});
return t}async function im(e){await O("DELETE",`/press-screens/${encodeURIComponent(e)}`)}function kc(){let e=gt(
om);return typeof e?.name=="string"?{code:null,step:0,etag:null,...e}:null}var om,am,ms,mt,xc,lm,cm,It=m(()=>{
Os();j();om="flangebook.bench.here",am="flangebook.bench.last";ms=e=>/^\d/.test(e)?`press screen ${e}`:e,mt=e=>/^\d/.
test(e)?`Press screen ${e}`:e;xc=e=>Ye(om,e),lm=()=>String(gt(am)??""),cm=e=>Ye(am,e)});function Ur(e,t,n,s){let o=`/press-screens/${encodeURIComponent(e)}`,a={answers:null,gone:!1,waits:!1,late:!1,
refused:""},r=null,l=t,c=0,d=!1,u;function h(x){let T={...a,waits:r!==null,...x},F=Object.keys(T).every(pe=>T[pe]===
a[pe]);a=T,!F&&!s.aborted&&n.changed(a)}async function f(){if(clearTimeout(u),d||s.aborted)return;d=!0;try{await(r&&
!g()?b():_()),C()}catch(T){s.aborted||D(T)}d=!1;let x=r!==null&&c===0;s.aborted||(u=setTimeout(f,x?0:Math.min(
Lk,Ak*1.5**c)))}function g(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,h({late:!0}),!0)}async function b(){
let x=r;if(!x)return;let T=P().name?{by:P().name}:{};try{l=(await O("PUT",o,{body:{...x.place,...T},etag:x.whatever?
null:l,signal:s,timeout:dm})).etag,r===x&&(r=null),n.sent?.(x.place,l??"",r!==null),h({refused:"",late:!1})}catch(F){
if(!(F instanceof E)||F.status>=500)throw F;r=null,l=null,h({refused:F.status===412?"":F.message}),await _()}}
async function _(){let x=r,{status:T,body:F,etag:pe}=await O("GET",o,{seen:l,signal:s,timeout:dm});s.aborted||
r!==x||T===304||(l=pe,h({late:!1}),n.heard(F,pe??""))}function C(){let x=a.answers===!1;c=0,h({answers:!0,gone:!1}),
gn(!0),x&&W()}function D(x){c+=1,x instanceof E&&x.status===404?h({answers:!0,gone:!0}):x instanceof E&&x.status<
500?h({answers:!0,refused:x.message}):h({answers:!1}),x instanceof V?gn(!1,x):x instanceof E||console.error(x)}
let k=()=>document.visibilityState==="visible"&&f();return document.addEventListener("visibilitychange",k,{signal:s}),
addEventListener("online",k,{signal:s}),s.addEventListener("abort",()=>clearTimeout(u)),f(),{move(x,{whatever:T=!1}={}){
r={place:x,at:Date.now(),whatever:T},h({late:!1,refused:""}),c===0&&f()},standing:()=>a}}var Ak,Lk,dm,Sc=m(()=>{
j();ae();ye();Ak=1e3,Lk=4e3,dm=3e3});function pm(e,t){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=Ek.
has(o.key)?e.next:Nk.has(o.key)?e.back:null;!a||Ck(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<Pk)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:t}),addEventListener("click",o=>o.detail>0&&Rk(),{signal:t})}
function Ck({key:e,target:t,repeat:n}){let s=t;return s.matches("input, select, textarea")?!0:!n&&(e==="Enter"||
e===" ")&&s.matches("button, a, summary")}function Rk(){let e=document.activeElement;e?.matches("button, summa\
ry, input[type=range]")&&e.blur()}var Ek,Nk,Pk,um=m(()=>{Ek=new Set(["ArrowRight","PageDown"," ","Enter"]),Nk=
new Set(["ArrowLeft","PageUp","Backspace"]),Pk=300});function Vr(e,{pixels:t=Hs(),tallest:n=t*.7,test:s="folded",mark:o=""}={}){let a=Z*2.4,r=ns(e.bounds,t-2*a,n-1.6*
a),[,l,c]=e.bounds,[d,u]=r([c,l]),h=f=>f.map(([g,b,_,C])=>`M${r([g,b])}L${r([_,C])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${Wk(e)}
    width=${d+2*a}
    height=${u+1.6*a}
    viewBox="${-a} ${-Z*.7} ${d+2*a} ${u+1.6*a}">
    ${e.faces.filter(({side:f})=>o&&f===o).map(({outline:f})=>v`<path class="marked-face" d="M${f.map(g=>r(g).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${h(e.lines.hidden)} />
    <path class="bend-edge" d=${h(e.lines.bend)} />
    <path class="edge" d=${h(e.lines.edge)} />
    ${e.dimensions.map(({name:f,from:g,to:b,mm:_})=>Bk(r(g),r(b),f,U(_)))}
    ${e.faces.filter(({flat:f})=>f===1).map(({side:f,outline:g})=>Ik(f,g.map(r),f===o))}
  </svg>`}function Bk(e,t,n,s){let o=n==="length"?[-Z*.5,Z*.95]:n==="width"?[Z*.5,Z*.95]:[Z*.9,0],[a,r]=[e,t].
map(([u,h])=>[u+o[0],h+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],d=st(s,Z);return v`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-d/2} y=${c-Z*.65} width=${d} height=${Z*1.3}/>
    <text x=${l} y=${c} font-size=${Z} text-anchor="middle" dominant-baseline="central">${s}</text>`}function Ik(e,t,n){
let s=t.reduce((r,l)=>r+l[0],0)/t.length,o=t.reduce((r,l)=>r+l[1],0)/t.length,a=st(e,Z);return v`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-Z*.65}
      width=${a} height=${Z*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${Z}
      text-anchor="middle" dominant-baseline="central">${e}</text>`}function Wk({length_mm:e,width_mm:t,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${fs({length_mm:e,width_mm:t,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function fs({length_mm:e,width_mm:t,height_mm:n}){
return $({text:[e,t,n].map(U).join(" × "),unit:w(0).unit})}function hm(e,{pixels:t=Hs(),tallest:n=t*.9,test:s="\
blank"}={}){let[o,a]=[U(e.length_mm),U(e.width_mm)],r=st(a,Z)+Z*1.8,l=ns([0,0,e.length_mm,e.width_mm],t-r-12,n-
Z*3),[c,d]=l([e.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${Hk(e)}
    width=${c+r+12}
    height=${d+Z*3}
    viewBox="-6 -6 ${c+r+12} ${d+Z*3}">
    <path class="sheet" d="M${e.outline.map(u=>l(u).join(" ")).join("L")}Z" />
    ${e.lines.map(u=>Fk(u,l))}
    <path
      class="dimension"
      d="M0 ${d+Z*1.3}H${c}M-4 ${d+Z*1.3+4}l8 -8M${c-4} ${d+Z*1.3+4}l8 -8" />
    ${Dk(c/2,d+Z*1.3,o)}
    <path
      class="dimension"
      d="M${c+Z} 0V${d}M${c+Z-4} 4l8 -8M${c+Z-4} ${d+4}l8 -8" />
    <text x=${c+Z*1.6} y=${d/2} font-size=${Z} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function Dk(e,t,n){let s=st(n,Z);return v`<rect class="ground" x=${e-s/2} y=${t-Z*.7} width=${s} height=${Z*
1.4}/>
    <text x=${e} y=${t} font-size=${Z} text-anchor="middle" dominant-baseline="central">${n}</text>`}function Fk({
bend:e,place:t,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,d]=[l([n,s]),l([o,a])],u=.5+(t%2?-1:1)*.12*
Math.ceil((t-1)/1),[h,f]=[c[0]+(d[0]-c[0])*u,c[1]+(d[1]-c[1])*u];return v`<path class="fold ${r}" d="M${c}L${d}"/>
    <circle class="badge" cx=${h} cy=${f} r=${Z*.68}/>
    <text class="badge-number" x=${h} y=${f} font-size=${Z*.95} text-anchor="middle"
      dominant-baseline="central">${e}</text>`}function Hk(e){let t=e.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${U(e.length_mm)} by ${U(e.width_mm)}, inside of the box up. ${t.join("; ")}.`}var Z,
qe,Js=m(()=>{y();L();mr();Tn();ht();Z=18;qe=e=>!!e?.folded});function Gr(e,t){return!qe(e)||!t.side?p:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${Vr(e.folded,{mark:t.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${le(w(t.bend_length_mm))}</b> long.</li>
      ${mm("Punch",t.segments_mm?.punch)} ${mm("Die",t.segments_mm?.die)}
      ${t.clear_between_mm===null||t.clear_between_mm===void 0?p:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${le(w(t.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${jk(t.sides_near??[])}
    </ul>
  </section>`}function mm(e,t){if(!t?.length)return p;let n=t.reduce((o,a)=>o+a,0),s=t.length>1?`${t.map(U).join(
" + ")} = `:"";return i`<li class="pieces">${e}: <b>${s}${U(n)} ${w(0).unit}</b></li>`}function jk(e){if(!e.length)
return p;let[t]=[...e].sort((o,a)=>o.distance_mm-a.distance_mm),n=$(M(t.included_angle_deg)),s=le(w(Math.abs(t.
distance_mm)));return i`<li data-test="sides-near">
    ${t.distance_mm<0?i`<b>The finished ${t.side} side runs ${s} into the ${t.tool}</b>, at ${n}.`:i`The finished ${t.
side} side stays <b>${s}</b> from the ${t.tool}, nearest at ${n}.`}
  </li>`}var Tc=m(()=>{y();Js();ht();L()});function $m(e){return e.number===1?"first":e.turn_quarter?e.turn_over?"quarter-over":"quarter":e.turn_over&&e.
turn_end?"both":e.turn_over?"over":e.turn_end?"end":"same"}function Qs(e){let t=$m(e);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${wm}${ym[t]}</svg
    ><b>${bm[t]}.</b>`}function zr(e,t){let n=$m(e);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${wm}${ym[n]}</svg>
    <p>
      <b data-test="move">${bm[n]}.</b>
      <span data-test="face">${e.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${Gk(e,t)}
    </p>
  </div>`}function ua({gauged_end:e,gauged_side:t},n){return t?`${t} side`:`${e} end${n?` (flat ${e==="left"?1:
n})`:""}`}function Gk(e,t){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=e;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=ua(e,t);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var bm,wm,Mc,fm,Uk,gm,Vk,ym,eo=m(()=>{y();bm={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},wm=v`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,Mc=v`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
fm=v`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,Uk=v`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
gm=v`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,Vk=v`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
ym={first:[Uk],same:[Vk],over:[Mc],end:[fm],both:[Mc,fm],quarter:[gm],"quarter-over":[Mc,gm]}});function ha({frames:e},t){let n=e.findIndex(a=>a.share>=t);if(n<0)return e[e.length-1];if(n===0)return e[0];let[
s,o]=[e[n-1],e[n]];return Oc(s,o,(t-s.share)/(o.share-s.share))}function Oc(e,t,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(e.share,t.share),phase:t.phase,included_angle_deg:s(e.included_angle_deg,
t.included_angle_deg),punch_y_mm:s(e.punch_y_mm,t.punch_y_mm),left:o(e.left,t.left),right:o(e.right,t.right),inside_radius_mm:s(
e.inside_radius_mm,t.inside_radius_mm),half_arc_mm:s(e.half_arc_mm,t.half_arc_mm),gauge_x_mm:e.gauge_x_mm===null||
t.gauge_x_mm===null?null:s(e.gauge_x_mm,t.gauge_x_mm)}}function _m({frames:e}){let t=e.find(o=>o.punch_y_mm<=0)??
e[0],n=Math.min(...e.map(o=>o.punch_y_mm)),s=[...e].reverse().find(o=>o.phase==="bend")??e[e.length-1];return{
before:t.share,after:n<0?s.share:e[e.length-1].share}}function vm(e,t){let n=-t.punch_travel_mm,s=t.phase==="b\
end",o=c=>s?c.included_angle_deg:t.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?t.included_angle_deg:t.phase===
"approach"?n:-n,r=zk(e.frames,t.phase);return{...qk(r,o,a),punch_y_mm:n}}function zk(e,t){let n=t==="withdrawa\
l"?["release","withdrawal"]:[t],s=e.findIndex(a=>n.includes(a.phase)),o=e.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:e}function qk(e,t,n){for(let a=1;a<e.length;a+=1){let[r,l]=[t(e[a-1]),t(e[a])];if(n<=r&&
n>=l&&r>l)return Oc(e[a-1],e[a],(r-n)/(r-l))}if(n>t(e[0]))return e[0];let[s,o]=e.slice(-2);return o.phase==="b\
end"?Oc(s,o,(t(s)-n)/(t(s)-t(o))):o}function Kk({thickness_mm:e,left:t,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=to([[-a,-e/2],[-a,e/2]],s),[d,u]=to([[a,-e/2],[a,e/2]],o),h=([g,b])=>`${g} ${-b}`,
f=g=>g.map(b=>`L${h(b)}`).join("");return`M${h(l)}A${r+e} ${r+e} 0 0 0 ${h(d)}${f(to(n,o))}L${h(u)}A${r} ${r} \
0 0 1 ${h(c)}${f(to(t,s))}Z`}function km(e,{phase:t,punch_y_mm:n}){let s=t==="putting in"||t==="approach",o=e.
frames.filter(h=>h.phase===(s?"putting in":"taking out"));if(!o.length||t==="bend"||t==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:h,right:f})=>[...to(e.left,h),
...to(e.right,f)]),[c,d]=[l.map(([h])=>h),l.map(([,h])=>h)];return{bounds:[Math.min(...c),Math.min(...d),Math.
max(...c),Math.max(...d,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function to(e,[t,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return e.map(([r,l])=>[t+o*r-a*l,n+a*r+o*l])}function qr(e,t,n){let s=-n.
punch_y_mm,o=t.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:Kk(t,n),tools:[
e.before.ram,e.before.holder,e.before.punch].map(Re).filter(Boolean),down:s,gauge:Re(e.before.gauge),back:a}}var Ac=m(
()=>{Tn()});function Kr({clearance:e}){let t=e?.hits?.[0]??e?.nearest??null;return t&&t.distance_mm<=Lm?t:null}function gs(e){
let{drawing:t,motion:n}=e;if(!t||!n?.frames?.length)return null;let s=Kr(e),{before:o,after:a}=_m(n),r=s?vm(n,
s):ha(n,(o+a)/2),l=!!e.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:qr(t,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Collision":s?"Closest":"Half way"}}function no(e){let{clearance:t}=e;
if(!t)return"Clearance was not checked at this step.";let n=Kr(e);if(!n)return`Nothing comes within ${le(w(Lm,
{digits:0}))} of the part.`;let s=le(w(Math.abs(n.distance_mm))),o=typeof t.needed_mm=="number"?`, ${le(w(t.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${xm(n.tool)}, ${Sm(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${xm(n.tool)}, ${Sm(n)}${t.hits?.length?o:""}.`}function Sm({phase:e,included_angle_deg:t,punch_travel_mm:n}){
let s=$(w(Math.max(0,-n),{digits:0}));return e==="approach"?`as the punch comes down, ${s} above the sheet`:e===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${$(M(t))}`}
function Lc({motion:e},t){let n=$(M(t.included_angle_deg));if(t.phase==="bend")return e.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(t.phase==="release")return`Releasing, ${n}`;if(t.phase==="taking out")
return`Taking it out${Tm(e,t)}`;if(t.phase==="putting in")return`Putting it in${Tm(e,t)}`;let s=$(w(Math.max(0,
t.punch_y_mm),{digits:0}));return t.phase==="withdrawal"?`Punch rising, ${s} up`:t.punch_y_mm>0?`Punch coming \
down, ${s} up`:"First touch, sheet flat"}function Tm({frames:e},{phase:t,right:n}){let s=t==="putting in"?e.find(
a=>a.phase==="approach"):[...e].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??e[0]).
right[2]));return o?`, tilted by ${o}°`:", no tilt"}function Zk({clearance:e}){let{way_in:t,way_out:n,rides_up:s,
clear:o}=e??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(t==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[Om(t,n,"slide"),Om(t,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${Mm}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${t==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${Mm}`}:null}function Wt(e,{short:t=!1}={}){let n=Zk(e);return n?
t?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${Am(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${Am(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:p}var Lm,xm,Mm,Om,Am,Yk,Xk,rn=m(()=>{y();Ac();L();Lm=100;xm=e=>({gauge:"gauge finger",sheet:"part it\
self"})[e]??e;Mm="Punch still, at its top. Fingers never between.";Om=(e,t,n)=>[e===n&&"in",t===n&&"out"].filter(
Boolean).join(" and ");Am=e=>e==="swing"?Yk:Xk(e!=="slide"),Yk=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,Xk=e=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${e?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function Nc({segments_mm:e,segments_total_mm:t}){if(!e?.length)return"";let n=e.map(o=>U(o)).join(" + "),s=w(0).
unit;return e.length>1?`${n} = ${U(t??0)} ${s}`:`${n} ${s}`}function so(e,t=0,n=[]){return e?.length?i`<ul class="tools" data-test="tools">
    ${e.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${Ec(s)}</span>
          <span class="more"
            >${[Nc(s),Nm(s.steps,t),Pc(s,n),Jk(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function Nm(e,t){return!e?.
length||e.length===t?"":`step${e.length>1?"s":""} ${e.join(", ")}`}function Pc({kind:e,code:t},n){let s=n.filter(
a=>e==="punch"&&a.punch===t),o=s.filter(a=>a.punch_turned);return o.length?`reversed${o.length<s.length?` for ${Nm(
o.map(({number:a})=>a),0)}`:""}`:""}function Jk(e){return e==="good"||!e?"":e==="unknown"?"condition unknown":
e}function Zr(e){let t=e.length_mm_low===e.length_mm_high||e.length_mm_low===void 0;return i`<div class="figures blank">
      ${Rt("Blank length",w(e.length_mm,{digits:2}),{test:"blank-length",band:t?null:[w(e.length_mm_low,{digits:2}),
w(e.length_mm_high,{digits:2})]})}
      ${Rt("Blank width",w(e.width_mm,e.outline?{digits:2}:{}),{test:"blank-width",band:e.width_mm_low===void 0||
e.width_mm_low===e.width_mm_high?null:[w(e.width_mm_low,{digits:2}),w(e.width_mm_high,{digits:2})]})}
      ${Rt("Mass",Io(e.mass_kg),{test:"blank-mass"})}
    </div>
    ${e.rests_on?i`<p data-test="blank-rests-on">Blank by ${e.rests_on}.</p>`:p}
    ${e.lines?i`<p data-test="relief">${Cc(e)}</p>`:p}`}function Cc({relief:e,lines:t=[]}){let n=new Set(t.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!e?"":e.shape===
"none"?"Corners without relief.":`Corner reliefs ${e.shape}, ${$(w(e.size_mm,{digits:1}))} ${e.shape==="round"?
"across.":"a side."}`}function Pm(e){let t=s=>w(s,{digits:2}).text,n=[["At",s=>t(s.at_mm)],["Angle",s=>$(M(s.included_angle_deg))],
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
              <th role="rowheader" scope="row">${s.bend} ${Qk(e,s)}${s.direction}</th>
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
  </div>`}function Qk({lines:e},{bend:t}){let n=e?.find(s=>s.bend===t)?.side;return n?`${n} `:""}function Rc(e,t=0){
let n=e.turn_over||e.turn_end||e.turn_quarter,s=e.gauged_against&&e.gauged_against!=="flat edge"?`, against th\
e ${e.gauged_against}`:"",o=e.gauged_end?`${e0(ua(e,t))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!e.turn_quarter)}
            data-over=${String(e.turn_over)}
            data-end=${String(e.turn_end)}
            >${Qs(e)}</span
          > `:p}
    ${Wt(e,{short:!0})} ${o}${e.inside_face==="up"?"top":"bottom"} face
    up.${t0(e)}
  </span>`}function t0({hits:e}){if(!e)return p;let t=e.gauge_x_mm.map(n=>U(n)).join(", ");return i` <span data-test="hits"
    >${e.count} bumps, ${$(w(e.pitch_mm,{digits:2}))} apart, gauge X ${t}.</span
  >`}function Dt(e){let t=e.operation&&e.operation!=="bend"?e.operation:"bend",n=e.side?`Bend ${e.bend}, ${e.side}`:
`Bend ${e.bend}`;return t==="bend"?n:`${n}, ${t}`}function n0(e,t,n){let s=e[`${t}_low`],o=e[`${t}_high`],a=s==
null||s===o?p:i`<small class="band">${n(s).text} to ${$(n(o))}</small>`;return i`${$(n(e[t]))}${a}`}function Em(e,t,n){
return dt(e,e)?e.first_hit?s0(e,t,n):e.limits?n0(e,t,n):$(n(e[t])):$(n(null))}function s0(e,t,n){let s=t==="se\
t_angle_deg"?`first hit, ${uc(e.first_hit)}; then about `:"then about ";return i`${$(n(e[t]))}<small class="band"
      >${s}${$(n(e[`expected_${t}`]))}</small
    >`}function Yr(e,{link:t}={}){let n=o=>w(o,{digits:2}),s=e.part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${e.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${t?i`<a href=${t(o.number)}>${o.number}. ${Dt(o)}</a>`:i`${o.number}. ${Dt(o)}`}
                <small>${$(M(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${$(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${$(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${Em(o,"set_angle_deg",M)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${Em(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${$(Ge(o))}<small class="band">expected ${$(On(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch reversed</span>`:
p}
              </td>
              <td role="cell" data-head="Sheet" class="long">${Rc(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var Ec,e0,Ln=m(()=>{y();be();Sn();L();wt();ht();Lr();ds();eo();rn();Ec=kn;e0=e=>e[0].toUpperCase()+e.
slice(1)});function Xr(e,t){return i`<header class="step-top">
    <a class="step-card" href="/c/${e.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${e.title||e.display_code}</span></a
    >
    ${Bc(e,t)}
  </header>`}function at(e,t,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${e}${t.unit&&t.unit!=="°"?i` <span class="unit">${t.unit}</span>`:p}</span
    >
    <span class="value" data-test="${n}-value">${t.text}${t.unit==="°"?"°":p}</span>
  </div>`}var Bc,En=m(()=>{y();Ln();Bc=(e,t)=>i`<h1>
    <span data-test="step-number">Step ${t.number} of ${e.plan.steps.length}</span>
    <small
      >${Dt(t)}
      ${t.direction}${t.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch reversed</b>`:
p}</small
    >
  </h1>`});function Cm(e,t,n,s,o){let a=gs(e),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?ha(e.motion,l):null,
d=a&&r==="during"?a.shown:null,u=$(w(e.gauge_x_mm)),h=(f,g,b,_)=>i`<button
      type="button"
      class="button"
      aria-pressed=${b?"true":"false"}
      data-test=${_}
      @click=${()=>{Object.assign(n,g,{playing:!1}),s()}}>
      ${f}
    </button>`;return i`${Bt(e.drawing,{pose:r==="between"?"during":r,close:n.close,opening:e.v_opening_mm,gauge:u,
angle:t,moment:d??(c&&qr(e.drawing,e.motion,c)),near:a?.near??null,mark:r==="during",room:c&&km(e.motion,c),words:`${Dt(
e)}, ${a0(e,r)}. Gauge at ${u}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${r0(e,r,c)}
          </p>`:p}
    <div class="toggles">
      ${h("Before",{at:"before"},r==="before","before")}
      ${a?h(a.name,{at:"during"},r==="during","during"):p}
      ${h("After",{at:"after"},r==="after","after")}
      ${h(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?i0(e,l,n,s,o):p}`}function a0(e,t){return t==="before"?"the sheet on the die before the bend":t==="aft\
er"?"at the bottom of the stroke":t==="during"?no(e):"on its way"}function r0(e,t,n){return n?Lc(e,n):no(e)}function i0(e,t,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&l0(t>=1?0:t,n,s,o),s()};return i`<div class="motion">
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
      aria-valuetext=${Lc(e,ha(e.motion,t))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function l0(e,t,n,s){let o=performance.now(),a=r=>{!t.playing||s.aborted||(t.share=Math.min(1,e+Math.
max(0,r-o)/o0),t.playing=t.share<1,n(),t.playing&&requestAnimationFrame(a))};Object.assign(t,{at:"between",share:e}),
requestAnimationFrame(a)}var o0,ma,Jr=m(()=>{y();Ac();la();L();Ln();rn();o0=7e3,ma=()=>({at:"before",share:0,close:!1,
playing:!1})});function Rm(e,{waits:t,correction:n}){if(!t&&!n?.to_check?.length){let o=je({...n?.said,words:n?.words});return i`<p data-test="no-setting">${o||
"No new setting comes from this one."}</p>`}let s=je({...n?.said,words:n?.what})||`${c0(e)} Something else is \
wrong.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${S("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??Pu).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function c0(e){let t=Gl(e),n="That is further off than the card’s table of corrections goes.";return t?
`${n} Tools and press end at ${$(M(t.sharpest_deg))} under load.`:n}function Bm(e,t){return e.die?i`<p class="why-not-set" data-test="why-not-set">
    ${S("stop")} <b>No angle and depth.</b>
    ${t?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:p}var Ic=m(()=>{y();Sn();L();G()});function Im({stations:e=[]}){return e.length<2&&!e.some(t=>t.off_centre_level!=="ok")?p:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${e.map(t=>i`<li>
            <b>Station ${t.number}</b> ${t.punch}${t.turned?", reversed,":p} over ${t.die}:
            ${Wm(t.centre_mm)}; step${t.steps.length>1?"s":""} ${t.steps.join(", ")}.
            ${t.off_centre_level==="ok"?p:i`${S(t.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function Qr({stations:e=[]},t){let n=e.find(({steps:s})=>s.includes(t.number));return n&&e.length>1?
`Station ${n.number}, ${Wm(n.centre_mm)}`:""}function Wm(e){return Math.abs(e)<.5?"in the middle":`its middle ${$(
w(Math.abs(e),{digits:0}))} to the ${e>0?"right":"left"} of the press's middle`}var ei=m(()=>{y();L();G()});function ti(e,t){let n=t.checks.filter(l=>Le(l)!=="ok"),s=e.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=e.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+Me(l),{...l,sign:Le(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function ni(e,t,n,s,o){
if(!t.drawing)return i`<p class="state" data-test="no-drawing">
      ${t.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=pt(e,t),r={...t,gauge_x_mm:a.gauge_x_mm};return Cm(r,Cr(t,a),n,s,o)}function si(e,t){let n=pt(
e,t);return n.set_angle_deg===null&&t.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${at("Gauge X",w(n.gauge_x_mm),"gauge-x")}
      ${at("Gauge R",w(t.gauge_r_mm),"gauge-r")}
      ${at("Angle to set",M(n.set_angle_deg),"set-angle")}
      ${at("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${Ks(n.firstHit,t.drawing?"The drawing shows the finished bend.":"")}
    ${n.set_angle_deg===null?Bm(t,n.fromTrial):p} ${d0(t)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-result" data-test="from-result">
            <b>Angle and depth from a first piece.</b> The plan said ${$(M(t.set_angle_deg))} and
            ${$(w(t.punch_depth_mm,{digits:2}))}.
          </p>`:p}
    ${t.gauge_draw_back_mm?i`<p class="retract" data-test="retract">
            <b>Retract the gauge ${$(w(t.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would run into it.
          </p>`:p}
    ${p0(t)}`}function d0(e){let t=Er(e);return t===p?p:i`<p class="press-force" data-test="press-force">Allow for ${t}</p>`}
function p0({hits:e}){return e?i`<div class="hits" data-test="hits">
    <b>${e.count} bumps</b>, ${$(M(e.angle_each_deg))} each. Move the gauge
    ${$(w(e.pitch_mm,{digits:2}))} each time:
    ${e.gauge_x_mm.map(t=>w(t).text).join(" · ")}
  </div>`:p}function Dm(e,t){if(!t.die)return p;let n=Qr(e,t);return i`<dl class="step-tools" data-test="step-tools">
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
        <dd><b>${$(M(t.included_angle_deg))}</b> ${t.direction}</dd>
      </div>
    </dl>
    ${Ys(t)}`}var oi=m(()=>{y();He();L();wt();G();ds();Jr();us();Ic();En();ei()});function Fm(e){let t=new Map;for(let n of e)t.set(n.run_id,[...t.get(n.run_id)??[],n]);return[...t.values()].map(
u0).reverse()}function u0(e){let t=new Set(e.map(({undoes:r})=>r)),n=e.filter(({id:r,kind:l})=>l!=="back"&&!t.
has(r)),s=r=>n.filter(l=>l.kind===r).length,o=n.find(({kind:r})=>r==="begun"),a=n.filter(({kind:r})=>r==="piec\
e"||r==="scrap");return{id:e[0].run_id,revision:(o??e[0]).revision,pieces:o?.pieces??null,state:h0(n),done:s("\
piece"),scrapped:s("scrap"),settingUp:!a.length&&!s("setup"),last:a.at(-1)??null}}function h0(e){let t=e.filter(
({kind:n})=>["paused","resumed","ended"].includes(n));return t.some(({kind:n})=>n==="ended")?"ended":t.at(-1)?.
kind==="paused"?"paused":"open"}var Hm,$s,ai,oo=m(()=>{Hm=e=>e.find(({state:t})=>t!=="ended")??null,$s=({done:e,
pieces:t},n=0)=>`Piece ${e+1+n}${t===null?"":` of ${t}`}`,ai=({done:e,pieces:t})=>t!==null&&e+1>=t});function jm(e,{scrap:t,pause:n,resume:s,ready:o}){let a=e.state==="paused";return i`<section class="run-bar" aria-label="Run" data-test="run-bar" data-done=${e.
done}>
    ${ao(e)}
    ${a?i`<button type="button" class="button next" data-test="run-resume" @click=${s}>
            Go on with the run
          </button>`:i`<button type="button" class="button" data-test="run-scrap" @click=${t}>Scrap</button>
            <button type="button" class="button" data-test="run-pause" @click=${n}>Pause</button>`}
    ${e.settingUp&&!a?i`<button type="button" class="button run-ready" data-test="run-ready" @click=${o}>
            Set-up finished
          </button>`:p}
  </section>`}var ao,Wc=m(()=>{y();oo();ao=e=>i`<p class="run-piece" data-test="run-piece">
    <b>${$s(e)}</b>
    ${e.state==="paused"?i`<span data-test="run-paused">paused</span>`:p}
    ${e.scrapped?i`<span data-test="run-scrapped">${e.scrapped} scrapped</span>`:p}
  </p>`});function Vm(e,t,n,s){let o=t.runs.filter(r=>r.state!=="ended"),a=t.asking&&Gm(e,t,n);return!a&&!t.runs.length&&
!t.taken?.length?p:i`<section class="panel card-run" data-test="run-panel">
    <h2>Run</h2>
    ${o.map(r=>g0(e,r,s))}
    ${o.length?$0(e,t.screens):p}
    ${a?f0(t,s):p}
    ${t.runs.length>o.length||t.taken?.length?b0(e,t):p}
  </section>`}function f0({typed:e,wrong:t},{type:n,begin:s}){return i`<form class="run-begin" data-test="run-begin" novalidate @submit=${a=>{
a.preventDefault(),s()}}>
    ${A({name:"run_pieces",label:"Pieces",value:e,change:n,wrong:t,keys:"numeric"})}
    <button class="button" data-test="begin-run">Begin a run</button>
  </form>`}function g0(e,t,{pause:n,resume:s,back:o,end:a}){let r=t.pieces!==null&&t.done>=t.pieces;return i`<div class="run-going" data-test="run-going" data-state=${t.
state}>
    <p class="run-piece">
      <b data-test="run-stands">${r?"All pieces done":$s(t)}</b>
      ${t.state==="paused"?i`<span>paused</span>`:p}
    </p>
    <p data-test="run-counts">
      ${t.done} done, ${t.scrapped}
      scrapped.${t.revision===e.revision?p:i` <b>Begun with revision ${t.revision}; this is revision ${e.revision}.</b>`}
    </p>
    ${K("runs.keep")?i`<div class="buttons">
            ${t.state==="paused"?ri("run-resume","Go on with the run",()=>s(t)):ri("run-pause","Pause",()=>n(t))}
            ${t.last?ri("run-back","Back one",()=>o(t)):p}
            ${ri("run-end","End the run",()=>a(t),r)}
          </div>`:p}
  </div>`}function $0({plan:e},t){if(!t.length)return p;let n=t.map(({name:s,step:o})=>o>e.steps.length?`${mt(
s)}: all steps done`:`${mt(s)}: step ${o}`);return i`<p data-test="run-where">${n.join(". ")}.</p>`}function b0({
code:e},{taken:t}){if(!t)return i`<p class="hint" data-test="no-times">
      What the runs took is worked out in the shop, which does not answer.
    </p>`;let n=i`<ul class="rows" data-test="runs">
      ${t.slice(0,m0).map(s=>i`<li class="row run-row" data-test="run" data-id=${s.id}>
            <span class="lead">${w0(s)}</span>
            <span class="more">${de(s.begun_at)} · ${y0(s)}</span>
          </li>`)}
    </ul>
    <a class="button" href="/api/v1/cards/${e}/runs.csv" download data-test="runs-csv"
      >All runs as a table (CSV)</a
    >`;return oe("What the runs took",n,{test:"runs-fold"})}function w0({pieces:e,done:t,scrapped:n,scrap:s,state:o}){
let a=s.map(({step:r,pieces:l})=>`${l} at step ${r}`).join(", ");return[`${t}${e===null?"":` of ${e}`} done`,n?
`${n} scrapped (${a})`:"none scrapped",o==="ended"?"":o==="paused"?"paused":"goes on"].filter(Boolean).join(",\
 ")}function y0({setup_s:e,setup_until:t,seconds_per_piece:n}){let s=e===null?"set-up goes on":`set-up${t==="s\
aid"?"":" and first piece"} ${Um(e)}`;return n===null?s:`${s}, ${Um(n)} a piece`}function Um(e){let t=Math.round(
e);if(t<60)return`${t} s`;let n=Math.floor(t/60),s=t%60?` ${String(t%60).padStart(2,"0")} s`:"";return n<60?`${n}\
 min${s}`:`${Math.floor(n/60)} h ${String(n%60).padStart(2,"0")} min`}var m0,Gm,zm,ri,ii,li=m(()=>{y();oo();It();
we();z();Ve();ot();m0=5;Gm=({plan:e},{runs:t},n)=>K("runs.keep")&&!n&&e.steps.length>0&&t.every(s=>s.state==="\
ended"),zm=(e,t,n,{ask:s})=>Gm(e,t,n)?i`<button
        type="button"
        class="button"
        data-test="run-open"
        aria-expanded=${t.asking?"true":"false"}
        @click=${s}>
        Run
      </button>`:p;ri=(e,t,n,s=!1)=>i`<button type="button" class="button ${s?"next":""}" data-test=${e} @click=${n}>
    ${t}
  </button>`;ii=e=>ai(e)?{label:"Piece done",more:e.pieces===null?"":`${e.done+1} of ${e.pieces}`}:{label:"Nex\
t piece",more:$s(e,1).toLowerCase()}});function qm(e,t,{name:n,lines:s,acts:o},a,r=null){let{stops:l,watch:c}=ti(e,t),d=c.filter(g=>Le(g)!=="note"),u=c.
length>_0,h=u?d:c,f=t.number===e.plan.steps.length;return i`<article
    class="step press-screen-step"
    data-test="press-screen-step"
    data-code=${e.code}
    data-step=${t.number}
    data-revision=${e.revision}>
    <header class="step-top">
      ${ci(n,o)}
      <p class="press-screen-card" data-test="press-screen-card">${e.title||e.display_code}</p>
      ${r?ao(r):p} ${Bc(e,t)}
    </header>
    ${s} ${l.length?i`<div class="step-stop">${Ue(l)}</div>`:p}
    <div class="step-body">
      <div class="step-way">${zr(t,e.part.flats_mm.length)}${Wt(t)}</div>
      <section class="step-set" aria-label="What to set">${si(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${u?"many":""}" aria-label="What to watch">
        ${h.length?Ue(h):p}${Gr(e.plan,t)}
      </section>
      <section class="step-with" aria-label="Tools">${so(v0(e,t),0)}</section>
    </div>
    ${Ym({back:t.number>1,...Km(t.number,f,r)},o)}
  </article>`}function Km(e,t,n,s=!1){return t?n?.state==="open"&&K("runs.keep")?ii(n):s?{label:"Next piece",more:"\
step 1"}:{label:"Done",more:""}:{label:"Next",more:`step ${e+1}`}}function Zm(e,{name:t,lines:n,acts:s},o=null){
let a=e.plan.steps.length,r=o?.state==="open"&&!K("runs.keep");return i`<article
    class="step press-screen-step"
    data-test="press-screen-done"
    data-code=${e.code}
    data-step=${a+1}>
    <header class="step-top">
      ${ci(t,s)}
      <p class="press-screen-card" data-test="press-screen-card">${e.title||e.display_code}</p>
      ${o?ao(o):p}
    </header>
    ${n}
    <div class="press-screen-says">
      <h1>Done</h1>
      ${r?i`<p data-test="count-on-phone"><b>Count the piece on the phone.</b></p>`:p}
      <p>
        ${a===1?"The one step is bent.":`All ${a} steps are bent.`} Measure it, and type the
        result on the phone.
      </p>
      <button type="button" class="button" data-test="clear-press-screen" @click=${s.clear}>
        Take this card off
      </button>
    </div>
    ${Ym({back:!0,...r?{}:Km(a,!0,o,!0)},s)}
  </article>`}function Ym({back:e,label:t,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!e} @click=${s.back}>Back</button>
    ${t?i`<button type="button" class="button next" data-test="next" @click=${s.next}>
            ${t}${n?i` <small>${n}</small>`:p}
          </button>`:p}
  </nav>`}var _0,v0,ci,Dc=m(()=>{y();It();Tc();G();eo();Ln();En();rn();oi();we();Wc();li();_0=3;v0=(e,t)=>e.plan.
tools.filter(n=>n.steps.includes(t.number)).map(n=>({...n,steps:[]}));ci=(e,t)=>i`<button
    type="button"
    class="button press-screen-name"
    data-test="press-screen-name"
    aria-label="${mt(e)}, this display. Choose another"
    @click=${t.choose}>
    ${mt(e)}
  </button>`});function Xm({names:e,silent:t,typed:n,wrong:s,here:o},a){return i`<div class="press-screen-choose" data-test="press-screen-choose">
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
                  ${mt(r)}
                </button>`)}
          </div>`:p}
    ${e?i`<form class="press-screen-new" novalidate @submit=${_e(a.make)}>
            ${A({name:"press-screen",label:e.length?"Or a new one":"Give it a name",value:n,wrong:s?[s]:[],change:a.
type,hint:"Like 1, or Big press. It is kept on this display."})}
            <button class="button" data-test="make-press-screen">Add it</button>
          </form>`:p}
    ${o?i`<button type="button" class="button" data-test="stay" @click=${()=>a.take(o)}>
            Stay at ${ms(o)}
          </button>`:p}
    ${_c()}
  </div>`}function tf({answers:e,refused:t},n,s,o){return i`${e===!1?i`<p class="press-screen-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again automatically.`}
        </p>`:p}
  ${t?i`<p class="press-screen-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${t}
        </p>`:p}
  ${s?i`<p class="press-screen-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:p}`}var Jm,Qm,ef,Fc,nf=m(()=>{y();j();vc();It();fe();Dc();z();Jm=e=>Fc(e,"press-screen-idle",mt(
e.name),i`<p>Open a card on a phone and choose this press screen.</p>
      ${_c()}`),Qm=(e,t,n)=>Fc(n,"press-screen-no-card",B(e),t instanceof E?i`<p>${t.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes when the shop is back.
        </p>`),ef=(e,t,n)=>Fc(n,"press-screen-no-step",`There is no step ${t}`,i`<p>
      ${e.title||e.display_code} has ${e.plan.steps.length} now. Choose the step on the phone.
    </p>`),Fc=({name:e,lines:t,acts:n},s,o,a)=>i`<article class="step press-screen-step" data-test=${s}>
    <header class="step-top">${ci(e,n)}</header>
    ${t}
    <div class="press-screen-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});async function Hc(e){let t=await Op(e).catch(()=>[]),n=new Set(t.map(({id:o})=>o)),s=di.filter(o=>o.code===e&&
!n.has(o.body.id));return Fm([...t,...s.map(({body:o})=>o)])}async function Ke(e,t,n){let s={id:Ne(),run_id:t,
revision:e.revision,made_at:new Date().toISOString(),...n},o={id:s.id,kind:"run",code:e.code,body:s};try{await Wa(
o),$n(),W()}catch{di.push({code:e.code,body:s}),Is(o).catch(()=>di.splice(di.findIndex(a=>a.body.id===s.id),1))}
return document.dispatchEvent(new CustomEvent("run")),s}function ro(e,t){document.addEventListener("run",e,{signal:t}),
document.addEventListener("sync",e,{signal:t})}var di,pi,sf,fa=m(()=>{oo();ja();Pe();Yn();ye();di=[];pi=async e=>Hm(
await Hc(e)),sf=(e,t)=>Ke(e,Ne(),{kind:"begun",pieces:t})});function of(e,t,n){let s=null,o="",a=async()=>{let l=e()?.code??"",c=l?await pi(l):null;t.aborted||l!==(e()?.code??
"")||l===o&&JSON.stringify(c)===JSON.stringify(s)||([o,s]=[l,c],n())};ro(a,t);let r=()=>e()?.code===o?s:null;return{
look:a,now:r,moved:()=>{W(),setTimeout(()=>!t.aborted&&W(),k0)},count:()=>{let[l,c]=[r(),e()];return l?.state!==
"open"||!c||!K("runs.keep")?!1:(Ke(c,l.id,{kind:"piece"}),!0)}}}var k0,af=m(()=>{fa();we();ye();k0=1500});var cf={};ie(cf,{show:()=>S0});function S0(e){sm(e.signal);let t=kc();t?lf(e,t):rf(e,"")}function rf(e,t){e.title(
"Press screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:t},o;e.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&e.render(Xm(s,c)),r=u=>{n.abort();let h=kc();lf(e,h?.name===u?h:{name:u,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let u=s.typed.trim();if(s.names?.includes(u))return r(u);try{r((await rm(u||" ")).name)}catch(h){
s.wrong=h instanceof E?h.errors.name?.[0]??h.message:String(h.message),a()}},type:u=>Object.assign(s,{typed:u})},
d=async()=>{try{Object.assign(s,{names:(await an(n.signal)).map(({name:u})=>u),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),e.ready(),o=setTimeout(d,x0))};a(),d()}function lf(e,t){let{name:n}=t,s=new AbortController,
{signal:o}=s;e.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:t.code,
step:t.step},l=null,c=null,d=0,u=ma(),h=of(()=>l,o,()=>k()),f=Ur(n,t.etag,{keepMs:1/0,heard:(T,F)=>{t={...t,etag:F},
_({code:T.code,step:T.step},!1)},sent:(T,F,pe)=>g({etag:F,unsent:pe}),changed:T=>T.gone?b(""):k()},o);function g(T){
t={...t,...r,...T},xc(t)}function b(T){s.abort(),T||xc(null),rf(e,T)}function _(T,F){let pe=T.code!==r.code||T.
step!==r.step;T.code!==r.code&&(l=null),pe&&(u=ma()),pe&&(T.step===1||h.now())&&h.moved(),r=T,g({unsent:F}),F&&
f.move(T),pe||!l&&T.code?C():k()}async function C(){a.abort(),a=new AbortController;let T=a.signal;if(d=0,c=null,
k(),!!r.code)try{await Mt(r.code,F=>{T.aborted||(l=F,d=0,k(),h.look())},T)}catch(F){if(T.aborted||o.aborted)return;
c=F,k()}}let D={next:()=>{if(!l)return;let T=l.plan.steps.length;if(r.step>=T&&h.count())return _({code:l.code,
step:1},!0);r.step>T&&h.now()?.state==="open"||_({code:l.code,step:r.step>T?1:r.step+1},!0)},back:()=>l&&r.step>
1&&_({code:l.code,step:r.step-1},!0),clear:()=>_({code:null,step:0},!0),choose:()=>b(n),newer:()=>C()};function k(){
if(o.aborted)return;let T=tf(f.standing(),!!l,d,D.newer);e.title(l?`${l.title||l.code}, ${n}`:n),e.render(x({name:n,
lines:T,acts:D})),(l||c||!r.code)&&e.ready()}function x(T){if(!r.code)return Jm(T);if(!l)return c?Qm(r.code,c,
T):Ce(`Opening ${B(r.code)}…`);let F=l.plan.steps,pe=F[r.step-1],Po=pe&&ni(l,pe,u,k,a.signal);return pe?qm(l,
pe,T,Po,h.now()):r.step===F.length+1?Zm(l,T,h.now()):ef(l,r.step,T)}pm(D,o),xe(k,o),document.addEventListener(
"sync",async T=>{if(!l)return c&&T.detail.reached?C():void 0;let F=await bt(l.code).catch(()=>{});!F||F.code!==
l?.code||F.revision===l.revision||d===F.revision||(d=F.revision,k())},{signal:o}),o.addEventListener("abort",()=>a.
abort()),g({}),t.unsent&&f.move(r),C()}var x0,df=m(()=>{j();vc();It();Sc();He();fe();um();ae();Fe();nf();Dc();
Jr();We();oi();af();x0=3e3});function q(e,t){let n=document.getElementById("notices"),s=()=>St(i``,n);St(i`<div class="notice" data-test="notice">
      <span>${e}</span>
      <button type="button" @click=${()=>{s(),t?.act()}}>${t?.label??"Close"}</button>
    </div>`,n),clearTimeout(pf),(!t||t.goes)&&(pf=setTimeout(s,8e3))}var pf,Ze=m(()=>{y()});function Uc(e){let t=gt(jc(e));return t&&Array.isArray(t.form?.flats)&&Array.isArray(t.form?.bends)?t:null}var jc,
ui,Vc,uf=m(()=>{Os();jc=e=>`flangebook.part.${e||"new"}`;ui=(e,t)=>Ye(jc(e),{...t,kept_at:new Date().toISOString()}),
Vc=e=>Ye(jc(e),null)});var hi,Ft,mi,fi,ga=m(()=>{Ct();ps();L();hi=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
Ft=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),mi=e=>({angle:String(e.included_angle_deg),direction:e.
direction,radius:Y(e.inside_radius_mm),kind:e.kind??"bend",gap:e.kind==="open_hem"?Y(e.hem_gap_mm):"",...da(e)}),
fi=(e,t)=>({included_angle_deg:e.kind==="bend"?Nt(e.angle):0,direction:e.direction,kind:e.kind,...e.radius.trim()&&
e.kind==="bend"?{inside_radius_mm:ne(e.radius,t)}:{},...e.kind==="open_hem"?{hem_gap_mm:ne(e.gap,t)}:{},...Br(
e)})});function gi(e="tray"){let t=()=>e==="lips-in"?{flats:["",""],bends:[Ft(),Ft()]}:e==="lips-out"?{flats:["",""],
bends:[Ft(),{...Ft(),direction:"down"}]}:{flats:[""],bends:[Ft()]};return{length:"",width:"",there:e==="channe\
l"?["left","right"]:[...bs],alike:!0,sides:{left:t(),right:t(),front:t(),back:t()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function mf(e,t){let n=gi(t);for(let s of bs){let o=e.sides[e.alike?
e.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...e,there:n.there,sides:n.
sides}}function ff({there:e,sides:t,alike:n}){let s=(n?e.slice(0,1):e).map(r=>t[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return e.length===2&&e.includes("left")&&e.includes("right")&&s.every(o)?"channel":e.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function gf(e){let t=bs.
filter(o=>e.sides[o]),n=t.map(o=>JSON.stringify(e.sides[o])),s=gi().sides;for(let o of bs){let a=e.sides[o]??e.
sides[t[0]];s[o]={flats:a.flats_mm.map(Y),bends:a.bends.map(mi)}}return{length:Y(e.length_mm),width:Y(e.width_mm),
there:t,alike:n.every(o=>o===n[0]),sides:s,relief:e.relief,reliefSize:Y(e.relief_mm),corner:e.corner,gap:Y(e.gap_mm),
firstPair:e.first_pair??"left-right"}}function yf(e,t){let n=s=>e.there.includes(s)?bf(e,s).flats.map((o,a)=>`${s}\
 ${co(a)}`):[];return Gc.filter(s=>s.some(o=>e.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...t(s,
o),...n(o)])}function _f(e,t){let n=o=>ne(o,t),s=e.there.map(o=>{let a=bf(e,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>fi(r,t))}]});return{length_mm:n(e.length),width_mm:n(e.width),sides:Object.fromEntries(
s),relief:e.relief,corner:e.corner,...e.firstPair==="front-back"?{first_pair:e.firstPair}:{},...e.reliefSize.trim()&&
e.relief!=="none"?{relief_mm:n(e.reliefSize)}:{},...e.gap.trim()&&e.corner==="closed"?{gap_mm:n(e.gap)}:{}}}function io(e){
return[["box.length_mm","length of the base",e.length],["box.width_mm","width of the base",e.width],...zc(e).flatMap(
t=>T0(e,t))]}function T0({sides:e,alike:t},n){let s=t?"":`${n} `;return e[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=e[n].bends[a],d=`${s}${co(a)}`;return[[lo(n,a),d,o],...r==="bend"?[[$i(n,a),`angle of the ${d}`,
l]]:[],...r==="open_hem"?[[`${Nn(n,a)}.hem_gap_mm`,`gap of the ${d}`,c]]:[]]})}function vf(e,t){if(!e.alike)return t;
let n=e.there[0];return Object.fromEntries(Object.entries(t).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function kf(e){let[,t,n,s,o,a]=e.split(".");if(t!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[t]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${co(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function xf(e,t,n,s){
let o=e.sides[t];return bi(e,t,{...o,flats:o.flats.with(n,s)})}function po(e,t,n,s){let o=e.sides[t];return bi(
e,t,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function Sf(e,t){let{flats:n,bends:s}=e.sides[t],o=s.map(
a=>({...a,kind:"bend"}));return bi(e,t,{flats:[...n,""],bends:[...o,Ft()]})}function Tf(e,t){let{flats:n,bends:s}=e.
sides[t];return bi(e,t,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function Mf(e,t){let n=bs.filter(o=>o===t!==
e.there.includes(o));if(!n.length)return e;let s=e.sides[e.there[0]];return{...e,there:n,sides:e.alike?{...e.sides,
[n[0]]:s}:e.sides}}function Of(e,t){let n=e.sides[e.there[0]];return{...e,alike:t,sides:t?e.sides:{left:n,right:n,
front:n,back:n}}}var Gc,bs,hf,$f,bf,ws,wf,zc,lo,Nn,$i,co,bi,ys=m(()=>{ga();L();Gc=[["left","right"],["front","\
back"]],bs=Gc.flat(),hf=6;$f=({there:e})=>Gc.every(t=>t.some(n=>e.includes(n))),bf=(e,t)=>e.sides[e.alike?e.there[0]:
t],ws=e=>yf(e,()=>[]),wf=e=>yf(e,(t,n)=>[`base, ${t} to ${n}`]);zc=({there:e,alike:t})=>t?e.slice(0,1):e;lo=(e,t)=>`\
box.sides.${e}.flats_mm.${t}`,Nn=(e,t)=>`box.sides.${e}.bends.${t}`,$i=(e,t)=>`${Nn(e,t)}.included_angle_deg`,
co=e=>e===0?"wall":e===1?"lip":`flat ${e+1}`;bi=(e,t,n)=>({...e,sides:{...e.sides,[t]:n}})});function Kc(e){if(!e)return $a();let{first:t,last:n,margin_mm:s}=e;return{first:t?String(t):"",last:n?String(n):
"",no_turn_over:!!e.no_turn_over,no_turn_end:!!e.no_turn_end,one_set_up:!!e.one_set_up,critical_flats:[...e.critical_flats??
[]],margin:s===void 0||s===qc?"":Y(s)}}function Zc(e,t){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=e??$a(),d={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:ne(
c,t)}:{}};return Object.keys(d).length?{wishes:d}:{}}function Yc(e,t){if(!e)return{};let n=t?-1:1,s=a=>!a||Number(
a)===t?"":Number(a)>t?String(Number(a)+n):a,o=e.critical_flats.filter(a=>!t||a!==t+1).map(a=>a>t?a+n:a);return{
wishes:{...e,first:s(e.first),last:s(e.last),critical_flats:o}}}function uo(e){let{first:t,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=e??$a();return[t&&`bend ${t} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var qc,$a,Af,ba=m(()=>{L();qc=2,$a=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});Af=e=>({...e,first:"",
last:"",critical_flats:[]})});function Jc(e){return{unit:N(),title:"",note:"",metal:e,thickness:"",length:"",flats:["",""],bends:[Ft()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function wi({aside:e,...t},n){let s=Lf({...t,box:n?t.box??e??gi():
null});return n?s:{...s,...t.box?{aside:t.box}:{}}}function Ef(e,t){return e.box&&t&&String(ws(e.box))===String(
ws(t))&&e.box.firstPair===t.firstPair?{...e,box:t}:Lf({...e,box:t})}function ho(e,t){return e.box?{...Jc(e.metal),
title:e.title??"",note:t,thickness:Y(e.thickness_mm),dimension:e.dimension??"din6935",order:e.order??null,wishes:Kc(
e.wishes),tools:da(e.tools),box:gf(e.box)}:{unit:N(),title:e.title??"",note:t,metal:e.metal,thickness:Y(e.thickness_mm),
length:Y(e.bend_length_mm),flats:e.flats_mm.map(Y),bends:e.bends.map(mi),dimension:e.dimension??"din6935",grain:e.
grain??"",order:e.order??null,wishes:Kc(e.wishes),tools:da(e.tools),holes:(e.holes??[]).map(n=>({flat:String(n.
flat),position:Y(n.position_mm),diameter:Y(n.diameter_mm)}))}}function mo(e){let t=n=>ne(n,e.unit);return e.box?
{title:e.title.trim(),metal:e.metal,thickness_mm:t(e.thickness),dimension:e.dimension,box:_f(e.box,e.unit),...e.
order?{order:e.order}:{},...Zc(e.wishes,e.unit),...mc(e.tools)}:{title:e.title.trim(),metal:e.metal,thickness_mm:t(
e.thickness),bend_length_mm:t(e.length),flats_mm:e.flats.map(t),bends:e.bends.map(n=>fi(n,e.unit)),dimension:e.
dimension,...e.grain?{grain:e.grain}:{},...e.order?{order:e.order}:{},...Zc(e.wishes,e.unit),...mc(e.tools),...e.
holes.length?{holes:e.holes.map(n=>({flat:Nt(n.flat),position_mm:t(n.position),diameter_mm:t(n.diameter)}))}:{}}}
function yi(e){let t=[["metal","metal",e.metal],["thickness_mm","thickness",e.thickness]];return(e.box?[...t,...io(
e.box)]:[...t,["bend_length_mm","length",e.length],...e.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...e.
bends.flatMap((s,o)=>M0(s,o)),...e.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function M0({kind:e,angle:t,gap:n},s){return e==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,t]]:e==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function Nf(e,t,n){return{...e,flats:e.flats.with(t,n)}}function _s(e,t,n){return{...e,bends:e.
bends.with(t,{...e.bends[t],...n})}}function ed(e,t){let n=e.bends.at(t==="left"?0:-1),s={...Ft(),direction:n?.
direction??"up"},o=t==="left"?e.bends:e.bends.map((r,l)=>l>0&&l===e.bends.length-1?{...r,kind:"bend"}:r);if(t===
"right")return{...e,bends:[...o,s],flats:[...e.flats,""],order:null};let a=e.holes.map(r=>({...r,flat:Cf(r.flat,
1,1)}));return{...e,bends:[s,...o],flats:["",...e.flats],order:null,holes:a,...Yc(e.wishes,0)}}function Pf(e,t){
let n=t+2,s=e.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:Cf(o.flat,n,-1)}));return{...e,bends:e.
bends.toSpliced(t,1),flats:e.flats.toSpliced(t+1,1),order:null,holes:s,...Yc(e.wishes,t+1)}}function Cf(e,t,n){
let s=Number(e);return Number.isInteger(s)&&s>=t?String(s+n):e}function _i(e){let t=e.split(/[^\d]+/).filter(Boolean).
map(Number);return t.length?t:null}function Rf(e,t){return t===0||t===e.bends.length-1}var Xc,Lf,Qc,Pn=m(()=>{
ga();ys();Ct();ps();L();ba();Xc=40;Lf=e=>({...e,order:null,...e.wishes?{wishes:Af(e.wishes)}:{}});Qc=e=>JSON.stringify(
{...mo(e),title:""})});async function td(e,t){try{let{body:n}=await O("POST","/cards",{body:{...If(e),code:t},timeout:Bf});return{saved:await Ff(
n)}}catch(n){if(n instanceof E&&n.status===409)return{taken:t};throw Df(n)}}async function Wf(e,t){let n={...If(
e),reason:e.reason??""},s=O0(t,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await O("PUT",`/cards/${t.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:Bf});return await xp().then(c=>Fo({...s,number:c},l)).catch(
()=>{}),{saved:await Ff(r)}}catch(o){if(o instanceof E&&o.status===412)return{stale:await Ot(t.code)};throw Df(
o)}}function O0(e,t){let n=JSON.stringify(t);e.saving?.wanted!==n&&(e.saving={id:Ne(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=e;return{id:e.saving.id,number:0,kind:"edit",code:s,body:t,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function Df(e){return e instanceof E&&(e.errors=Object.fromEntries(Object.entries(e.
errors).map(([t,n])=>[t.replace(/^part\./,""),n]))),e}async function Ff(e){return kt(e).catch(()=>e)}var Bf,If,
Hf=m(()=>{j();He();Pe();Pn();ae();Fe();Bf=6e4,If=e=>({part:mo(e),note:e.note,...P().name?{by:P().name}:{}})});function Vf(e,{pixels:t=Hs(),tallest:n=t*.45,test:s="blank"}={}){let o=U(e.width_mm),a=t-st(o,ee)-ee*2,r=a/e.length_mm,
l=e.width_mm*r>n,c=l?n:Math.max(e.width_mm*r,3),d=jf(e.bend_lines.map(b=>[b.at_mm*r,ee*1.8+st(nd(b),ee)]),a),u=jf(
e.bend_lines.map(b=>[b.at_mm*r,st(U(b.at_mm),ee)]),a),h=Uf(d)*wa+ee*.4,f=Uf(u)*wa+ee*.4,g=h+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${A0(e)}
      viewBox="-8 -4 ${t+8} ${g+f+wa*1.4}">
      ${l?E0(a,h,g):v`<rect class="sheet" x="0" y=${h} width=${a} height=${c}/>`}
      ${e.bend_lines.map((b,_)=>L0(b,b.at_mm*r,d[_],u[_],h,g))}
      ${N0(a,g+f+ee*.7,U(e.length_mm))}
      ${P0(a+ee,h,g,o)}
    </svg>
    ${l?i`<p class="hint">Width ${$({text:o,unit:""})} is drawn short at the break.</p>`:p}`}function nd(e){let t=e.
included_angle_deg?le(M(e.included_angle_deg)):"hem";return`${e.direction} ${t}`}function A0(e){let t=e.bend_lines.
map(n=>`bend ${n.bend} ${nd(n)} at ${U(n.at_mm)}`);return`Blank ${U(e.length_mm)} by ${U(e.width_mm)}. ${t.join(
"; ")}.`}function jf(e,t){let n=[];return e.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),Math.max(t-o/2,o/2)),
r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function L0(e,t,n,s,o,a){
let r=o-ee*.4-wa*(n.row+.5),l=a+ee*.4+wa*(s.row+.5),c=n.at-n.width/2;return v`<path class="fold ${e.direction}" d="M${t} ${o}V${a}"/>
    <path class="leader" d="M${t} ${o}V${r+ee*.8}M${t} ${a}V${l-ee*.8}"/>
    <rect class="ground" x=${c} y=${r-ee*.75} width=${n.width} height=${ee*1.5}/>
    <circle class="badge" cx=${c+ee*.75} cy=${r} r=${ee*.68}/>
    <text class="badge-number" x=${c+ee*.75} y=${r} font-size=${ee*.95} text-anchor="middle"
      dominant-baseline="central">${e.bend}</text>
    <text x=${c+ee*1.7} y=${r} font-size=${ee} dominant-baseline="central">${nd(e)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-ee*.7} width=${s.width}
      height=${ee*1.4}/>
    <text x=${s.at} y=${l} font-size=${ee} text-anchor="middle"
      dominant-baseline="central">${U(e.at_mm)}</text>`}function E0(e,t,n){let s=(t+n)/2,o=`L${e*.52} ${s+3}L${e*
.54} ${s-14}L${e*.58} ${s+8}L${e*.6} ${s-9}`,a=`L${e*.6} ${s-1}L${e*.58} ${s+16}L${e*.54} ${s-6}L${e*.52} ${s+
11}`;return v`<path class="sheet" d="M0 ${t}V${s+3}${o}L${e} ${s-9}V${t}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${e*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${e} ${s-1}V${n}Z"/>`}function N0(e,t,n){let s=st(n,ee);return v`<path class="dimension"
      d="M0 ${t}H${e}M-4 ${t+4}L4 ${t-4}M${e-4} ${t+4}L${e+4} ${t-4}"/>
    <rect class="ground" x=${e/2-s/2} y=${t-ee*.7} width=${s} height=${ee*1.4}/>
    <text x=${e/2} y=${t} font-size=${ee} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function P0(e,t,n,s){let o=a=>`M${e-4} ${a+4}L${e+4} ${a-4}`;return v`<path class="dimension" d="M${e} ${t}V${n}${o(
t)}${o(n)}"/>
    <text x=${e+ee*.6} y=${(t+n)/2} font-size=${ee}
      dominant-baseline="central">${s}</text>`}var ee,wa,Uf,Gf=m(()=>{y();L();mr();ht();ee=18,wa=ee*1.5;Uf=e=>Math.
max(0,...e.map(t=>t.row+1))});function ft(e,{mark:t=0,...n}={}){if(!qe(e))return Du(e,{mark:t,...n});let s=e.blank.lines.find(o=>o.bend===t)?.
side??"";return Vr(e.folded,{...n,mark:s})}function vs(e,t={}){return e.outline?hm(e,t):Vf(e,t)}var Cn=m(()=>{
Js();Gf();ht()});var yt,fo=m(()=>{y();yt=(...e)=>i`<thead>
    <tr>
      ${e.map(t=>i`<th scope="col">${t}</th>`)}
    </tr>
  </thead>`});function go({how:e,differences:t},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
    <h2>${S("caution")} Somebody else saved meanwhile</h2>
    <p>
      ${e==="others changed"?`Not this ${n}, but others in the list. Save again to keep both.`:p}
      ${e==="taken out"?`This ${n} was taken out of the list. Save to put it back as you typed it.`:p}
      ${e==="this changed"?`This ${n} too. What you typed is still in the boxes.`:p}
    </p>
    ${t.length?sd(t):p}
    <div class="buttons">
      <button type="button" class="button next" data-test="save-mine" @click=${s}>
        Save what I typed
      </button>
      ${e==="taken out"?p:i`<button type="button" class="button" data-test="take-theirs" @click=${o}>
              Take what is saved
            </button>`}
    </div>
  </section>`}function vi(e,t,n){return n.filter(({name:s})=>(e[s]??"")!==(t[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:t[s]??"",mine:e[s]??""}))}var sd,$o=m(()=>{y();G();fo();sd=e=>i`<div class="table">
    <table>
      ${yt("Where","Saved now","You typed")}
      <tbody>
        ${e.map(({label:t,theirs:n,mine:s})=>i`<tr>
              <td>${t}</td>
              <td>${n||"empty"}</td>
              <td>${s||"empty"}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`});function qf(e,t,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=ho(e.part,e.note),r=[...new Set([...od(t),...od(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=vi(zf(t),zf(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
    <h2>${S("caution")} Somebody else saved this card meanwhile</h2>
    <p>
      ${e.updated_by?`${e.updated_by} saved`:"Somebody saved"} revision ${e.revision}. What
      you typed is still in the boxes, and both can be kept.
    </p>
    <div class="columns">
      ${l.length?sd(l):i`<p>
              The part is the same. Something else of the card changed: its results, its settings or whether
              it is archived.
            </p>`}
      <figure class="theirs">
        <figcaption>As saved now</figcaption>
        ${ft(e.plan,{pixels:330,tallest:260,test:"theirs-section"})}
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
  </section>`}function od(e){return[{label:"Title",value:e.title},{label:"Note",value:e.note},{label:"Metal",value:e.
metal},{label:"Thickness",value:e.thickness},{label:"Length",value:e.length},{label:"Measured",value:e.dimension},
{label:"Grain",value:e.grain},{label:"Order",value:e.order?.join(", ")??""},{label:"Limits on the order",value:uo(
e.wishes)},{label:"Tools",value:nn(e.tools)},...e.box?[...io(e.box).map(([,t,n])=>({label:`${t[0].toUpperCase()}${t.
slice(1)}`,value:n})),{label:"Corners",value:`${e.box.corner}, relief ${e.box.relief} ${e.box.reliefSize} ${e.
box.gap}`.trim()},{label:"Sides",value:e.box.there.join(", ")}]:[],...(e.box?[]:e.flats).map((t,n)=>({label:`F\
lat ${n+1}`,value:t})),...(e.box?[]:e.bends).map((t,n)=>({label:`Bend ${n+1}`,value:[t.kind==="bend"?`${t.angle}\
°`:t.kind.replace("_"," "),t.direction,t.radius&&`radius ${t.radius}`,t.gap&&`gap ${t.gap}`,nn(t)].filter(Boolean).
join(", ")})),...e.holes.map((t,n)=>({label:`Hole ${n+1}`,value:`flat ${t.flat}, at ${t.position}, size ${t.diameter}`}))]}
var zf,Kf=m(()=>{y();Cn();ys();Pn();ps();ba();G();$o();zf=e=>Object.fromEntries(od(e).map(({label:t,value:n})=>[
t,n]))});function Yf(e,t,n){let{box:s,unit:o}=e,a=vf(s,t),r=(l,c)=>n(Ef(e,l),c);return i`${F0(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${H0(s,r)}
      <div class="fields">
        ${A({next:!0,name:"box.length_mm",label:"Length, left to right",value:s.length,wrong:I(a,"box.length_m\
m"),change:l=>r({...s,length:l})})}
        ${A({next:!0,name:"box.width_mm",label:"Width, front to back",value:s.width,wrong:I(a,"box.width_mm"),
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
        @change=${l=>r(Of(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${zc(s).map(l=>j0(s,l,a,r))}
    ${oe(i`Corners <span class="fold-now">${W0(s)}</span>`,i`${z0(e,a,r)}${D0(s,r)}`,{test:"corners-fold"})}`}
function W0({corner:e,relief:t,reliefSize:n}){let s=t==="none"?"no relief":`${t} relief`;return`${e}, ${s}${t!==
"none"&&n?` ${n}`:""}`}function F0(e,t){let n=ff(e);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${C0.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>t(mf(e,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function H0(e,t){let n=s=>{let o=e.there.includes(s),a=o&&e.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>t(Mf(e,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${bs.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function j0(e,t,n,s){let{flats:o,bends:a}=e.sides[t],r=e.alike?"Each side":`${t[0].toUpperCase()}${t.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${t}">
    <legend>${r}</legend>
    ${G0(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${U0(e,t,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${t}"
        ?disabled=${o.length>=hf}
        @click=${()=>s(Sf(e,t),{focus:lo(t,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${t}"
              @click=${()=>s(Tf(e,t),{focus:lo(t,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:p}
    </div>
  </fieldset>`}function U0(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],[l,c]=[r[n],Xf(co(n))],d=`${Nn(t,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${A({next:!0,name:lo(t,n),label:c,value:a[n],wrong:[...I(s,lo(t,n)),...I(s,Nn(t,n))],change:u=>o(xf(e,t,
n,u))})}
      ${l.kind==="bend"?A({next:!0,name:$i(t,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:I(s,
$i(t,n)),change:u=>o(po(e,t,n,{angle:u}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?A({next:!0,name:d,label:"Clear gap inside",value:l.gap,wrong:I(s,d),change:u=>o(po(e,
t,n,{gap:u}))}):p}
    ${Q({name:`${Nn(t,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:I0,change:u=>o(po(e,t,n,{direction:u==="down"?"down":"up"}))})}
    ${V0(e,t,n,s,o)}`}function V0(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],l=`${Nn(t,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?p:i`<details class="bend-more">
    <summary>
      <span class="unseen">${Xf(co(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":p}
    </summary>
    ${r[n].kind==="bend"?A({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:I(s,l),change:d=>o(po(e,t,n,{radius:d}))}):p}
    ${c?J({name:`${Nn(t,n)}.kind`,label:"Kind",value:r[n].kind,options:hi,change:d=>o(po(e,t,n,{kind:d}))}):p}
  </details>`}function G0(e){let t=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of e.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[d,u]=n[n.length-1];n.push(
[d+t[o]*Math.cos(s),u-t[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>v`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function z0({box:e,unit:t},n,s){return i`<div class="corner-grid">
      ${K0(e)}
      <div>
        ${Q({name:"box.corner",label:"Walls at the corner",value:e.corner,options:B0,change:o=>s({...e,corner:o===
"open"?"open":"closed"})})}
        ${Q({name:"box.relief",label:"Relief",value:e.relief,options:R0,change:o=>s({...e,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${e.relief==="none"?p:A({next:!0,name:"box.relief_mm",label:e.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:t,hint:"Empty: by radius and thickness.",value:e.reliefSize,wrong:I(n,"box.relief_mm"),change:o=>s(
{...e,reliefSize:o})})}
      ${e.corner==="open"?p:A({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:t,hint:"Empty: by \
thickness.",value:e.gap,wrong:I(n,"box.gap_mm"),change:o=>s({...e,gap:o})})}
    </div>`}function K0({corner:e,relief:t}){let[n,s]=e==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${q0[t]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var C0,R0,B0,Zf,I0,D0,Xf,q0,Jf=m(()=>{y();ga();ys();Pn();z();ot();tt();C0=[["tray","Tray","M10 14V44\
H86V14"],["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channe\
l","Two sides","M10 14V44H86V14M18 36H30M66 36H78"]],R0=[["round","Round"],["square","Square"],["none","None"]],
B0=[["closed","Closed"],["open","Open"]],Zf=[["left-right","Left and right"],["front-back","Front and back"]],
I0=[["up","↑ in"],["down","↓ out"]];D0=(e,t)=>$f(e)?Q({name:"box.first_pair",label:"Bent first; the others\
 go between them",value:e.firstPair??Zf[0][0],options:Zf,change:n=>t({...e,firstPair:n==="front-back"?n:"left-\
right"})}):p;Xf=e=>e[0].toUpperCase()+e.slice(1);q0={none:"L50 40L30 40",square:"L58 20L58 48L30 48",round:"L5\
0 31A9 9 0 1 1 41 40L30 40"}});function eg(e,t){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${Qf[e.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(Qf).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${Ae(e.dimension===n)}
              @change=${()=>t({...e,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?v`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:Z0(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function Z0(e){return e==="din6935"?v`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:v`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function tg(e,t,n){let s=(o,a)=>n({...e,holes:e.holes.with(o,{...e.holes[o],...a})});return i`<details class="holes">
    <summary>Holes near a bend${e.holes.length?`: ${e.holes.length}`:""}</summary>
    <p class="hint">Only those that could be pulled out of shape.</p>
    ${e.holes.map((o,a)=>{let r=`holes.${a}`;return i`<fieldset class="hole">
        <legend>Hole ${a+1}</legend>
        <div class="fields">
          ${A({next:!0,name:`${r}.flat`,label:"On flat",keys:"numeric",value:o.flat,wrong:I(t,`${r}.flat`),change:l=>s(
a,{flat:l})})}
          ${A({next:!0,name:`${r}.position_mm`,label:"Middle from its left end",unit:e.unit,value:o.position,wrong:I(
t,`${r}.position_mm`),change:l=>s(a,{position:l})})}
          ${A({next:!0,name:`${r}.diameter_mm`,label:"Size across",unit:e.unit,value:o.diameter,wrong:I(t,`${r}\
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
  </details>`}function ng(e,t,n,s){let o=e.box?ws(e.box):[],a=e.order??t??e.bends.map((l,c)=>c+1),r=(l,c)=>s({
...e,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${e.order?`${e.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${A({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:e.order?.
join(", ")??"",wrong:I(n,"order"),on:"change",change:l=>s({...e,order:_i(l)})})}
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
  </details>`}function sg(e,t,n){return J({name:"grain",label:"Rolling direction against the bend lines",value:e.
grain,wrong:I(t,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...e,grain:s})})}var Qf,og=m(()=>{y();yn();ys();Pn();z();tt();Qf={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:v`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:v`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:v`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var ag,rg=m(()=>{y();jl();Ul();ag=ar(class extends Ds{constructor(){super(...arguments),this.key=p}render(e,t){
return this.key=e,t}update(e,[t,n]){return t!==this.key&&(rr(e),this.key=t),n}})});function ig(e,t,n){let s=e.bends.length>=Xc;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(ed(e,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${e.flats.map((o,a)=>i`${X0(e,a,t,n)}${a<e.bends.length?J0(e,a,t,n):p}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(ed(e,"right"),{focus:`flats_mm.${e.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${Xc} bends.</p>`:p}`}function X0(e,t,n,s){let o=`flats_mm.${t}`;
return i`<li class="flat-row">
    ${A({next:!0,name:o,label:`Flat ${t+1}`,value:e.flats[t],wrong:I(n,o),change:a=>s(Nf(e,t,a))})}
  </li>`}function J0(e,t,n,s){let o=e.bends[t],a=`bends.${t}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([d])=>d===a||d===`${a}.kind`||d===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${t+1}>
    <span class="badge-mark" aria-hidden="true">${t+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:A({next:!0,name:l,label:`\
Bend ${t+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:I(n,l),change:d=>s(_s(e,t,{angle:d}))})}
      ${Q({name:`${a}.direction`,label:`Bend ${t+1} turns`,value:o.direction,options:Y0,change:d=>s(_s(e,t,{direction:d===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(d=>i`<p class="wrong" data-test="wrong-${a}">${d}</p>`)}
    ${o.kind==="open_hem"?Q0(e,t,n,s):p}
    ${ag(t,ex(e,t,n,s))}
  </li>`}function Q0(e,t,n,s){let o=`bends.${t}.hem_gap_mm`;return A({next:!0,name:o,label:"Clear gap inside",
unit:e.unit,value:e.bends[t].gap,wrong:I(n,o),change:a=>s(_s(e,t,{gap:a}))})}function ex(e,t,n,s){let o=e.bends[t],
a=`bends.${t}.inside_radius_mm`,r=[o.radius&&`Radius ${o.radius}`,nn(o)].filter(Boolean).join(", ");return i`${r?
i`<p class="hint bend-wanted">${r}</p>`:p}
    <details class="bend-more">
      <summary>
        <span class="unseen">Bend ${t+1}: </span
        ><span class="bend-more-words">Radius, tools, kind, remove</span>
      </summary>
      ${o.kind==="bend"?A({next:!0,name:a,label:"Inside radius wanted",unit:e.unit,hint:"Empty: what the tools\
 give.",value:o.radius,wrong:I(n,a),change:l=>s(_s(e,t,{radius:l}))}):p}
      ${gc(`bends.${t}`,o,n,l=>s(_s(e,t,l)))}
      ${Rf(e,t)||o.kind!=="bend"?J({name:`bends.${t}.kind`,label:"Kind",value:o.kind,options:hi,change:l=>s(_s(
e,t,{kind:l}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
      <button
        type="button"
        class="button wide"
        data-test="remove-bend-${t+1}"
        ?disabled=${e.bends.length<2}
        @click=${()=>s(Pf(e,t),{focus:`flats_mm.${t}`,undo:`Bend ${t+1} and flat ${t+2} are out.`})}>
        Remove bend ${t+1} and flat ${t+2}
      </button>
    </details>`}var Y0,lg=m(()=>{y();rg();ga();Pn();z();ps();us();tt();Y0=[["up","↑ up"],["down","↓ down"]]});function dg(e,t,n){let s=e.wishes??$a(),o=c=>n({...e,wishes:{...s,...c}}),a=e.box?ws(e.box).map((c,d)=>[String(
d+1),`Bend ${d+1}: ${c}`]):e.bends.map((c,d)=>[String(d+1),`Bend ${d+1}`]),r=e.box?wf(e.box).map(c=>c[0].toUpperCase()+
c.slice(1)):e.flats.map((c,d)=>`Flat ${d+1}`),l=uo(s);return i`<details class="order-limits" data-test="order-limits">
    <summary>
      <span>Limits on the order: <b>${l||"none"}</b></span>
    </summary>
    <div class="fields">
      ${J({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:I(t,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${J({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:I(t,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${ki("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${ki("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${ki("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,d)=>ki(`wishes.flat-${d+1}`,c,s.critical_flats.includes(d+1),u=>o({critical_flats:tx(s.critical_flats,
d+1,u)})))}
      </div>
      ${I(t,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${A({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:e.unit,hint:"Emp\
ty: the usual.",placeholder:Y(qc),value:s.margin,wrong:I(t,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function ki(e,t,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${e}
      data-test=${e}
      .checked=${Ae(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${t}</span
    ></label
  >`}var ad,cg,tx,pg=m(()=>{y();yn();ys();L();ba();z();tt();ad=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],cg={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};tx=(e,t,n)=>[...e.filter(s=>s!==t),...n?[t]:[]].sort((s,o)=>s-o)});function hg(e,{metals:t,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...t.some(({code:u})=>u===e.metal)?
[]:[[e.metal,e.metal?`${e.metal} (not in the shop)`:"Choose"]],...t.map(({code:u,name:h})=>[u,h])],{box:d}=e;return i`${Q(
{name:"shape",label:"What it is",value:d?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:u=>r(wi(e,u==="box"))})}
    ${A({next:!0,name:"title",label:"Name of the part",value:e.title,wrong:I(a,"title"),change:u=>r({...e,title:u})})}
    ${J({name:"metal",label:"Metal",value:e.metal,options:c,wrong:I(a,"metal"),change:u=>r({...e,metal:u})})}
    <div class="fields">
      ${A({next:!0,name:"thickness_mm",label:"Thickness",unit:e.unit,placeholder:"3 or 16 ga",hint:s?ox(s,e.thickness):
"",value:e.thickness,wrong:I(a,"thickness_mm"),change:u=>r({...e,thickness:u})})}
      ${d?p:A({next:!0,name:"bend_length_mm",label:"Bend length",unit:e.unit,value:e.length,wrong:I(a,"bend_le\
ngth_mm"),change:u=>r({...e,length:u})})}
    </div>
    ${d?i`${Yf({...e,box:d},a,r)} `:i`<h2>Section, left to right <small>${e.unit}, °</small></h2>
            ${ig(e,a,r)}`}
    ${oe(i`More, if it matters <span class="fold-now">${nx(e)}</span>`,sx(e,{crib:n,plan:s,errors:a,change:r}),
{test:"more-fold"})}
    ${o?A({next:!0,name:"reason",label:"Why this change, for the history",value:e.reason??"",wrong:I(a,"reason"),
change:u=>r({...e,reason:u})}):p}`}function sx(e,{crib:t,plan:n,errors:s,change:o}){let a=n?.order?.sequence;return i`${eg(
e,o)}
    ${e.box?p:i`${sg(e,s,o)} ${tg(e,s,o)}`}
    ${e.box&&!n&&!e.order?p:ng(e,a,s,o)}
    ${dg(e,s,o)} ${Nh(e,t,s,o)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${Ae(e.note)}
        @input=${r=>o({...e,note:r.target.value})}></textarea>
    </div>`}function ox({part:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":$(w(e.thickness_mm,{digits:2})),
t??""].filter(Boolean).join(", ")}function rd(e){return e.box?["title","metal","thickness_mm",...io(e.box).map(
([t])=>t),"box.relief_mm","box.gap_mm","order",...ad,...fc,"note","reason"]:["title","metal","thickness_mm","b\
end_length_mm",...e.flats.map((t,n)=>`flats_mm.${n}`),...e.bends.flatMap((t,n)=>[`bends.${n}.included_angle_de\
g`,`bends.${n}.inside_radius_mm`,...t.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:[],`bends.${n}.die`,`bends.${n}\
.punch`]),...e.holes.flatMap((t,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,`holes.${n}.diameter_mm`]),"gr\
ain","order",...ad,...fc,"note","reason"]}function xi(e){if(e.startsWith("box"))return kf(e);let[t,n,s]=e.split(
".");return t==="tools"?n==="die"?"Die":"Punch":t==="wishes"?cg[n]??"Limits on the order":n===void 0?ug[t]??t:
`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[t]??t} ${Number(n)+1}${s?`, ${ug[s]??s}`:""}`}function mg(e){let t=e.
target;if(e.key!=="Enter"||!(t instanceof HTMLInputElement))return;e.preventDefault();let n=[...t.form.querySelectorAll(
"input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(t)+1).find(o=>o.checkVisibility());s instanceof
HTMLElement&&s.focus()}var nx,ug,id=m(()=>{y();yn();L();Pn();ys();Jf();z();ot();og();us();lg();ba();ps();pg();
tt();nx=e=>[e.dimension!=="din6935"&&"how flats are measured",e.grain&&"rolling direction",e.holes.length>0&&"\
holes",e.order&&"order",uo(e.wishes)&&"limits",nn(e.tools)&&"tools",e.note&&"note"].filter(Boolean).join(", ");
ug={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend length",grain:"Rolling direction",
order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"gap",flat:"flat",position_mm:"\
place",diameter_mm:"size",die:"die",punch:"punch"}});function fg({dimensions:e=[]}){let t=e.filter(({error_mm:a})=>a!==null);if(!t.length)return p;let{basis:n,basis_said:s}=t[0],
o=je({...s,words:n});return i`<h3>Expected tolerance of each flange</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${t.map(rx)}
    </ul>
    ${o?i`<p class="hint" data-test="sizes-basis">${o}</p>`:p}`}function rx({flat:e,flat_name:t=`flat ${e}`,wanted_mm:n,
error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${e}>
    <b>${t[0].toUpperCase()}${t.slice(1)}</b> ${$(w(n))}
    <b>± ${$(ax(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:p}.
  </li>`}var ax,gg=m(()=>{y();L();G();ax=e=>N()==="in"?{text:te(e/Se,3),unit:"in"}:w(e,{digits:2})});function Si(e,t){if(!ks(e))return p;let{order:n}=e,[s,o]=ix(e),a=!!e.part?.order?.length,r=a?t.free():p,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${S(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${$g(n.sequence)}
          </p>`:p}
    ${lx(n.blocked??[])} ${cx(n.remedies??[])} ${dx(n.wishes)}
    ${r===p?p:i`<div class="buttons">${r}</div>`}
    ${px(n.alternatives,t)}
    ${oe("Where the tools stand, and flange tolerances",i`${Im(e)} ${fg(e)}`,{test:"stations-fold"})}
  </div>`}function ix({order:e,checks:t}){let n=s=>t.some(o=>o.code===s);return e.proven?["ok","Clear on paper"]:
n("clearance-assumed")&&!n("no-order")?["unknown","Sizes assumed"]:n("no-order")?["stop","No order"]:t.some(({
level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the way"]:n("order-not-found")?["caution","Non\
e found"]:n("clearance-not-checked")?["caution","Not checked"]:["caution","Not fully checked"]}function $g(e){
return i`<span class="run" role="img" aria-label="bends ${e.join(", ")}"
    >${e.map(t=>i`<span class="badge-mark" aria-hidden="true">${t}</span>`)}</span
  >`}function lx(e){return e.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${e.map(({bend:t,words:n})=>i`<li><b>Bend ${t}</b> ${n}</li>`)}
    </ul>`:p}function cx(e){return e.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${e.map(t=>i`<li>${Me(t)}</li>`)}
    </ul>`:p}function dx(e){return e.length?i`<h3>What each limit costs</h3>
    <ul class="order-list" data-test="limit-costs">
      ${e.map(t=>i`<li data-limit=${t.wish}>${je(t)}</li>`)}
    </ul>`:p}function px(e,{use:t}){return e.length?oe("Other orders that can be made",i`<ul class="order-others" data-test="other-orders">
      ${e.map(({sequence:n,words:s})=>i`<li>${$g(n)} <span class="compared">${s}</span> ${t(n)}</li>`)}
    </ul>`,{test:"others-fold"}):p}var ks,bg,wg,Ti=m(()=>{y();G();ot();ue();gg();ei();ks=({order:e})=>Array.isArray(
e?.wishes)&&Array.isArray(e?.alternatives);bg=e=>({use:t=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${t.join(", ")}"
      @click=${()=>e(t)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>e(
null)}>
      Let it choose
    </button>`}),wg=e=>({use:t=>R("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${t.join(", ")}"
        href="/part?from=${e}&order=${t.join("-")}"
        >Use this order</a
      >`),free:()=>R("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${e}&order=free"
        >Let it choose</a
      >`)})});function yg(e,{save:t,order:n}){return i`${Rr(e.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>${Zr(e.blank)}${Mn()?vs(e.blank,{pixels:560}):p}</div>
        <div>
          ${oe("Bend lines and drawings",ux(e.blank,t),{test:"bend-lines-fold"})}
        </div>
      </div>
    </section>
    ${ks(e)?i`<section>
            <h2>Order</h2>
            ${Si(e,n)}
          </section>`:p}
    <section>
      <h2>Fetch</h2>
      ${so(e.tools,e.steps.length,e.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${e.order&&!ks(e)?i`<p data-test="order-words">${e.order.words}</p>`:p}
      <div class="step-drawings">${e.steps.map(s=>hx(s,e.part.thickness_mm))}</div>
      ${oe("All settings in a table",Yr(e),{test:"steps-fold"})}
    </section>
    ${Zs(e.checks)} ${An(e.checks)}`}function ux(e,t){return i`${Mn()?p:vs(e,{pixels:innerWidth-24})} ${Pm(e)}
    ${mx(e.bend_lines)}
    <div class="buttons">
      <button type="button" class="button" data-test="blank-svg" @click=${()=>t("svg")}>
        Drawing as SVG
      </button>
      <button type="button" class="button" data-test="blank-dxf" @click=${()=>t("dxf")}>
        Drawing as DXF
      </button>
    </div>`}function hx(e,t){let n=dt(e,e)?e.set_angle_deg:null,s=[$(M(n)),`X ${w(e.gauge_x_mm,{digits:1}).text}`],
o=i`${e.number}. ${Dt(e)} <span class="step-set">${s.join(", ")}</span>`;return oe(o,fx(e,t),{test:"step-fold"})}
function mx(e){let t=e.filter(n=>n.opinions?.length);return t.length===0?p:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${t.length===1?`bend ${t[0].bend}`:`${t.length} bends`}
    </summary>
    ${t.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${$(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function fx(e,t){if(!e.drawing)return p;let n=w(e.gauge_x_mm,{digits:2}),s=Cr(e,{set_angle_deg:e.
set_angle_deg,firstHit:e.first_hit??null}),o=$(M(s)),a={close:!1,opening:e.v_opening_mm??8*t,gauge:n.text,angle:s,
near:gs(e)?.near??null};return i`<figure class="step-drawing" data-step=${e.number}>
    <figcaption>
      ${Rc(e)} ${Ys(e)}
      <small data-test="origins">${pa(e.origin)}</small>
      ${e.motion?i`<span class="near-words ${e.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${no(e)}</span
            >`:p}
    </figcaption>
    <div class="poses">
      ${Bt(e.drawing,{...a,pose:"before",words:`Step ${e.number} before the bend: the sheet on the die, gauge \
at ${$(n)}.`})}
      ${gx(e,a)}
      ${Bt(e.drawing,{...a,pose:"after",words:`Step ${e.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function gx(e,t){let n=gs(e);return n?Bt(e.drawing,{...t,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${e.number}. ${no(e)}`}):p}var _g=m(()=>{y();Cn();la();Sn();L();ds();ca();ot();Ti();us();Wr();rn();Ln()});function vg({plan:e,error:t,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${e&&o?"stale":""} ${a===p?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${e?.section?ft(e,r?{pixels:innerWidth-56,tallest:200}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
p}
    ${a===p?i`<p class="picture-words" role="status" data-test="picture-words">
            ${bx(e,t,n,s)}
          </p>`:r?a:p}
  </div>`}function $x(e){let[t]=Object.entries(e.errors);return t?Fl(xi(t[0]),t[1]):e.message}function bx(e,t,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,l])=>l).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(t instanceof V)return"The shop's server does not answer. What you type stays on this device.";if(t instanceof
E)return`Not right yet. ${$x(t)}`;if(t)return String(t);if(!e)return n?"Working it out…":"";let o=e.blank.outline?
`Blank ${w(e.blank.length_mm,{digits:2}).text} × ${$(w(e.blank.width_mm,{digits:2}))}`:`Blank ${$(w(e.blank.length_mm,
{digits:2}))}`,[a]=e.checks.filter(({level:r})=>r==="stop");return i`<span>${[o,...yx(e)].join(" · ")}</span>
    ${e.worst==="ok"?p:S(e.worst)}
    ${a?i`<span class="picture-stop">${Me(a)}</span>`:p}`}function yx({steps:e,order:t}){if(!e.length)return[];
let n=["punch","die"].map(a=>[...new Set(e.map(r=>r[a]).filter(Boolean))]),s=e.reduce((a,r)=>(r.force_kn_high??
0)>(a.force_kn_high??0)?r:a),o=t?.sequence??[];return[n.every(a=>a.length)?n.map(a=>a.join(", ")).join(" on "):
"",s.force_kn_high?$(Ge(s)):"",o.length>1&&o.length<=wx?`order ${o.join(" ")}`:""].filter(Boolean)}var wx,kg=m(
()=>{y();Cn();j();L();G();wt();id();tt();wx=8});function vx({seconds:e,deadline_s:t,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
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
        <dd data-test="looking-best">${s?i`<b>${xx(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function xx(e){return kx.filter(([n])=>e[n]).map(([n,s,o])=>`${e[n]} ${e[n]===1?s:o}`).join(", ")||
"no turning"}function Sg({plan:e,progress:t,stopped:n},{cancel:s,again:o,back:a}){return t?vx(t,s):n?Sx({again:o,
back:e?a:null}):p}function Sx({again:e,back:t}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
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
  </section>`}var _x,xg,kx,Tx,Mx,Tg,Mg=m(()=>{y();_x=.6,xg=({seconds:e})=>e>=_x;kx=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];Tx="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",Mx="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",Tg=e=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${e?Mx:Tx}
  </div>`});var Ag={};ie(Ag,{show:()=>Ox});async function Ox(e){let t=Ws(e.query.get("from")??"").slice(0,7),n=t?"cards.re\
vise":"cards.create";e.title(t?`Edit ${B(t)}`:"New part"),e.render(Ce(t?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([he("metals",e.signal),he("dies",e.signal),
he("punches",e.signal)]),r=t?"":Ws(e.query.get("copy")??"").slice(0,7),l=r?Uc(""):null,c=r?await Lx(r,e.signal):
await Ax(t,s,e.signal);!t&&e.query.get("shape")==="box"&&(c.form=wi(c.form,!0));let d={...c,plan:null,planned:null,
progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,kept:!0},u=tn(async(H,ge)=>(await ip(
"/plan",mo(H),{signal:ge,tell:h})).plan,({question:H,answer:ge,error:_t=null})=>{ge&&Object.assign(d,{plan:ge,
planned:H}),Object.assign(d,{error:_t,busy:!1,progress:null,summary:d.summary&&_t!==null}),Ut()},e.signal,350);
function h(H){xg(H)&&(d.progress=H,Ut())}function f(H=!1){let ge=Qc(d.form);if(!H&&ge===d.key&&!d.error)return Ut();
Object.assign(d,{key:ge,busy:yi(d.form).length===0,progress:null,stopped:!1}),d.busy?u.ask(d.form,{now:H}):(u.
stop(),d.error=null),Ut()}let g={cancel(){u.stop(),Object.assign(d,{busy:!1,progress:null,stopped:!0,error:null}),
Ut()},again:()=>f(!0),back(){if(!d.planned)return;let H=d.form;Object.assign(d,{form:d.planned,key:Qc(d.planned),
stopped:!1}),d.kept=ui(t,{form:d.form,base:d.base,newCode:d.newCode}),Ut(),q("The part of this plan is in the \
boxes again.",{label:"Put mine back",act:()=>b(H)})}};function b(H,{focus:ge,undo:_t}={}){let Vt=d.form;d.form=
H,d.kept=ui(t,{form:H,base:d.base,newCode:d.newCode}),f(),ge&&requestAnimationFrame(()=>Jn(ge)),_t&&q(_t,{label:"\
Put it back",act:()=>b(Vt)})}function _(H){b({...d.form,order:H},{undo:H?`Order ${H.join(", ")} is yours now.`:
"The planner chooses the order."})}function C(H){history.replaceState(history.state,"",t?`/part?from=${t}`:"/p\
art"),_(_i(H))}async function D(H){let[ge]=yi(d.form);if(ge){d.summary=!0,Ut(),Jn(ge[0]);return}Object.assign(
d,{saving:!0,clash:null,taken:""}),Ut();try{let vt=await H();if("saved"in vt)return k(vt.saved);"stale"in vt?d.
clash=vt.stale:d.taken=vt.taken}catch(vt){d.error=vt,d.summary=!0}d.saving=!1,Ut();let _t=d.error instanceof E?
d.error.errors:{},Vt=rd(d.form).find(vt=>Object.keys(_t).some(Gd=>Gd===vt||Gd.startsWith(`${vt}.`)));Vt&&Jn(Vt)}
function k(H){Vc(t);let ge=H.revision===d.base?.revision;q(ge?"Nothing was changed, so nothing was saved.":`Ca\
rd ${B(H.code)} saved${H.revision>1?`, revision ${H.revision}`:""}.`),se(`/c/${H.code}`)}let x=()=>K(n)&&D(()=>d.
base?Wf(d.form,d.base):td(d.form,d.newCode)),T=()=>(d.newCode=nr(),D(()=>td(d.form,d.newCode)));function F(){Vc(
t);let H=d.form;Object.assign(d,{restored:!1,plan:null,planned:null,clash:null,...Og(d.card,s)}),f(!0),q(t?"Th\
e card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>b(H)})}function pe(H){let ge=d.form;Object.
assign(d,{clash:null,base:ld(H)}),b(ho(H.part,H.note)),q("What is saved is in the boxes now.",{label:"Put mine\
 back",act:()=>b(ge)})}async function Po(H){try{await lp(`/blank.${H}`,mo(d.form),`${d.form.title.trim()||"bla\
nk"}.${H}`)}catch(ge){q(X(ge))}}function Ut(){let H=d.error instanceof E?d.error.errors:{},ge=yi(d.form),_t=Sg(
d,g),Vt=!d.busy&&!d.stopped&&!ge.length&&!d.error;e.render(i`<h1>
          ${t?i`${R(n,"Edit","Plan")} ${d.card?.title||"card"}
                  <small class="code">${B(t)}</small>`:R(n,"New part","Plan a part")}
        </h1>
        ${d.restored?i`<p class="restored" data-test="restored">
                What you typed before is back.
                <button type="button" class="link" data-test="start-over" @click=${F}>
                  ${t?"Back to the saved card":"Start an empty part"}
                </button>
              </p>`:p}
        ${d.kept?p:i`<p class="panel">
                This browser keeps nothing on this device: a reload loses what you type.
              </p>`}
        ${d.clash?qf(d.clash,d.form,{saveMine:()=>{d.base=ld(d.clash),x()},takeTheirs:()=>pe(d.clash),saveAsNew:T}):
p}
        ${d.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${d.taken}">card ${B(d.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${T}>
                  Save this as another card
                </button>
              </div>`:p}
        ${d.summary?ku(H,xi,rd(d.form)):p}
        ${d.summary&&d.error instanceof V?i`<p class="panel" role="alert" data-test="not-saved">
                Not saved: the shop's server does not answer. What you typed stays on this device. Save again
                when it is back.
              </p>`:p}
        <div
          class="part-desk"
          data-test="part"
          data-busy=${String(d.busy)}
          aria-busy=${d.busy?"true":"false"}>
          <div class="part-edit">
            ${vg(d,{open:ge,stale:!Vt,waiting:_t})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${mg}
              @submit=${_e(x)}>
              ${hg(d.form,{metals:s,crib:{dies:o,punches:a},plan:Vt?d.plan:null,editing:!!t,errors:H,change:b})}
              ${R(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${d.saving}>
                    ${d.saving?"Saving…":t?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?p:_t}
            <div class="part-plan ${Vt||!d.plan?"":"stale"}" data-test="plan">
              ${d.plan&&!Vt&&!d.busy?i`<p class="stale-note">
                      ${d.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:p}
              ${d.plan?yg(d.plan,{save:Po,order:bg(_)}):Tg(!!d.form.box)}
            </div>
          </div>
        </div>`),document.querySelectorAll(".part-form .wrong").forEach(Xn),d.busy||e.ready()}f(!0),r&&(history.
replaceState(null,"","/part"),d.kept=ui("",{form:d.form,base:null,newCode:d.newCode}),l&&q("The copy took the \
place of a part you had begun.",{label:"Put it back",act:()=>b(l.form)}));let Vd=e.query.get("order");Vd&&C(Vd)}
function Og(e,t){return e?{form:ho(e.part,e.note),base:ld(e)}:{form:Jc(t[0]?.code??""),base:null}}async function Ax(e,t,n){
let s=Uc(e),o=null;try{e&&(o=await Ot(e,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.
newCode,card:o,restored:!0}:{...Og(o,t),newCode:nr(),card:o,restored:!1}}async function Lx(e,t){let{part:n,note:s}=await Ot(
e,t),o=`Copy of ${n.title||B(e)}`;return{form:ho({...n,title:o},s),base:null,newCode:nr(),card:null,restored:!1}}
var ld,Lg=m(()=>{y();j();He();fe();be();ra();Ze();uf();Pn();Hf();we();Oe();fe();ue();Kf();id();Ti();_g();kg();
Mg();We();tt();z();ld=e=>({code:e.code,etag:e.etag,revision:e.revision,revision_id:e.revision_id})});async function Eg(e,t){if(!navigator.mediaDevices?.getUserMedia)throw new xs(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(Ex)}catch(o){throw new xs(Nx[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return e.aborted&&s(),e.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",t),n}function Ng(e){return!!e.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function Pg(e,t){await e.
getVideoTracks()[0].applyConstraints({advanced:[{torch:t}]})}var xs,Ex,Nx,Cg=m(()=>{xs=class extends Error{constructor(t){
super(t),this.fault=t}},Ex={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
Nx={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function Ig(){return Mi??=Cx(),Mi.catch(()=>Mi=void 0),Mi}async function Cx(){let e=await Rx(),t=e??await Rg(),
n={own:!!e,async read(s){try{return await t.detect(s)}catch(o){if(t!==e)throw new bo(String(o));return t=await Rg(),
n.read(s)}}};return n}async function Rx(){let e=globalThis.BarcodeDetector,t=await e?.getSupportedFormats().catch(
()=>[]);return e&&t?.includes("qr_code")?new e(Bg):null}async function Rg(){try{let{BarcodeDetector:e,prepareZXingModule:t}=await import("/vendor/barcode-detector/ponyfill.js");
return await t({overrides:{locateFile:()=>Px},fireImmediately:!0}),new e(Bg)}catch(e){throw new bo(String(e))}}
var bo,Px,Bg,Mi,Wg=m(()=>{bo=class extends Error{},Px="/vendor/zxing-wasm/zxing_reader.wasm",Bg={formats:["qr_\
code"]}});function Fg(e){let t=Wx(e.trim()),n=t?Bx.exec(t.pathname)?.[1]:Ix.exec(e.trim())?.[0];if(!n)return{kind:"other",
code:"",words:Fx(e,t)};let{code:s,whole:o,fault:a}=$e(Dx(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${cd(B(s))} is\
 not a card code. ${r}`}}function Wx(e){if(!URL.canParse(e))return null;let t=new URL(e);return/^https?:$/.test(
t.protocol)?t:null}function Dx(e){try{return decodeURIComponent(e)}catch{return e}}function Fx(e,t){return t?`\
It leads to ${cd(t.host)}, not to a card.`:e.trim()?`It says “${cd(e.trim())}”, which is not a card code.`:
"It holds nothing that can be read."}var Bx,Ix,Dg,cd,Hg=m(()=>{fe();Bx=/^\/c\/([^/]+)\/?$/i,Ix=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
Dg=40;cd=e=>e.length>Dg?`${e.slice(0,Dg)}…`:e});async function Vg(e,t,n,s){for(;!s.aborted;){if(e.readyState>=e.HAVE_CURRENT_DATA){let o=await t.read(e);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,Hx))}}function Gg(e,t,n){let o=e.filter(l=>Ug(l,t,t)).map(l=>({...Fg(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if(jg(a))return a[0];let r=a.
filter(l=>Ug(l.mark,t,n));return r.length>0&&jg(r)?r[0]:"several"}function Ug({boundingBox:e},t,n){let s=t.getBoundingClientRect(),
o=Math.max(s.width/t.videoWidth,s.height/t.videoHeight),a=s.x+s.width/2+(e.x+e.width/2-t.videoWidth/2)*o,r=s.y+
s.height/2+(e.y+e.height/2-t.videoHeight/2)*o,{left:l,right:c,top:d,bottom:u}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=d&&r<=u}var Hx,jg,zg=m(()=>{Hg();Hx=60;jg=e=>e.every(t=>t.code===e[0].code)});function qg(e,t){let{title:n,words:s,again:o}=jx[e];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${e}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${t}>Try again</button>`:p}
  </section>`}var dd,jx,Kg=m(()=>{y();dd=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,jx={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${dd}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${dd}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${dd}`,again:!0}}});var Yg={};ie(Yg,{show:()=>zx});async function zx(e){e.title("Scan a label");let t={fault:null,stream:null,lamp:null,
says:Zg},n=wr(),s=await hn().catch(()=>[]),o=new AbortController,a=()=>e.render(Yx(t,{again:d,lamp:u},()=>yr(n,
s,a,"Seven characters, capitals or not."))),r=h=>{Object.assign(t,h),a()},l=()=>{o.abort(),Object.assign(t,{stream:null,
lamp:null})},c=h=>{l(),h instanceof xs?r({fault:h.fault}):h instanceof bo?r({fault:"no-decoder"}):e.render(wn(
h)),e.ready()};async function d(){l();let{signal:h}=o=new AbortController;r({fault:null,says:Zg});try{let[f,g]=await Promise.
all([Eg(h,()=>c(new xs("busy"))),Ig()]);if(h.aborted)return;r({stream:f,lamp:Ng(f)?!1:null,says:Ux});let b=document.
querySelector(".scan-view video"),_=document.querySelector(".scan-frame");b.play().catch(()=>{}),e.ready();let C=qx(
D=>r({says:D}),h);await Vg(b,g,D=>C(Gg(D,b,_)),h)}catch(f){h.aborted||c(f)}}async function u(){if(!t.stream)return;
let h=!t.lamp;await Pg(t.stream,h).then(()=>r({lamp:h}),()=>r({lamp:null}))}e.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():d(),{signal:e.signal}),d()}function qx(e,t){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>Gx&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?e(Vx):a.kind==="card"?await Zx(a.code,e,t):e(Kx(a)),s=performance.
now())}}function Kx({kind:e,words:t}){return{kind:"wrong",title:e==="slip"?"Not a valid code":"Not a card’s la\
bel",words:`${t} Still looking.`}}async function Zx(e,t,n){let s=B(e);t({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await Ru(e,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?se(`/c/${e}`,{replace:!0}):t(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is valid, but this shop has no such card: it is another shop’s label. S\
till looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server does no\
t answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wrong",title:`${s}\
 could not be opened`,words:o}))}function Yx({fault:e,stream:t,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${e??
s.kind}>
    <h1>Scan a label</h1>
    ${e?qg(e,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${t} aria-label="What the camera sees"></video>
            ${Xx}
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
  </div>`}var Zg,Ux,Vx,Gx,Xx,Xg=m(()=>{y();Cg();He();fe();Wg();zg();Oe();Fe();Xl();Kg();We();Zg={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},Ux={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},Vx={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},Gx=2500;Xx=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function Jg(e,t,n){t$(e,t,n),cm(e),ve?.link.move({code:t,step:n},{whatever:!0})}function Oi(){ve?.end.abort(),
ve=null,Ai(),ya()}function Qg(e,t){!ve||ve.at.code!==e||ve.at.step===t||(ve.at.step=t,Ai(),ve.link.move({code:e,
step:t}),ya())}function e$(e){ve&&(ve.at.step=e,ve.link.move({code:ve.at.code,step:e},{whatever:!0}))}function Li(e,t){
document.addEventListener("bench",()=>e(_a()),{signal:t})}function t$(e,t,n,s=null){ve?.end.abort();let o=new AbortController,
a={name:e,code:t,step:n,answers:null,late:!1,refused:""},r=Ur(e,s,{keepMs:Jx,heard:l=>{if(l.code!==a.code)return Oi();
a.step=l.step,Ai(),ya()},changed:({gone:l,answers:c,late:d,refused:u})=>{if(l)return Oi();Object.assign(a,{answers:c,
late:d,refused:u}),ya()}},o.signal);ve={at:a,link:r,end:o},Ai(),ya()}function Ai(){try{ve?sessionStorage.setItem(
pd,JSON.stringify({name:ve.at.name,code:ve.at.code,step:ve.at.step})):sessionStorage.removeItem(pd)}catch{}}function Ei(){
if(!ve)try{let{name:e,code:t,step:n}=JSON.parse(sessionStorage.getItem(pd)??"{}");e&&t&&t$(e,t,n)}catch{}}var pd,
Jx,ve,_a,ya,Ni=m(()=>{Sc();It();pd="flangebook.on-bench",Jx=5e3,ve=null,_a=()=>ve?{...ve.at}:null;ya=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Be(e){let{fault:t}=$e(e);return i`<div class="state" data-test="bad-code">
    <h1>${B(e)} is not a card</h1>
    ${t||"A card code has seven characters, digits and letters without I, L, O and U."} ${ud}
  </div>`}function Ss(e,t){if(t instanceof V)return i`<div class="state" data-test="not-kept">
      <h1>${B(e)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${ud}
    </div>`;if(t instanceof E&&t.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${B(e)}</h1>
      The code is valid, but this shop has no card of that number. Look at the label again. ${ud}
    </div>`;throw t}async function Ht(e,t){let{code:n}=e.params;try{await Mt(n,t,e.signal)}catch(s){e.signal.aborted||
ke(e,Ss(n,s))}}function ke(e,t){e.title("No such card"),e.render(t),e.ready()}var ud,ln=m(()=>{y();j();He();fe();
ud=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function s$(e,{busy:t,fault:n,take:s,settings:o}){return e?.differs?i`<details class="freshness panel" data-test="fresh">
    <summary>
      <span><b>${e.words}</b> The card stays as it is. Show the difference</span>
    </summary>
    <div class="table">
      <table>
        ${yt("Where","What","On the card","Today")}
        <tbody>
          ${e.differences.map(a=>i`<tr>
                <th scope="row">${a.where}</th>
                <td>${a.what}</td>
                <td>${n$(a,"saved")}</td>
                <td>${n$(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&K("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
p}
    <p class="wrong" role="alert">${n}</p>
    ${R("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${t} @click=${s}>
        ${t?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:p}function n$(e,t){let n=t==="saved"?e.saved_value:e.fresh_value;return e.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(e.field)&&typeof n=="number"?$(qt(e.field??"",n)):e[t]}var o$=m(()=>{y();we();L();ue();fo()});function va(e){return e.refused?e.missing?"The shop was restored from a backup and does not know its card":`Re\
fused: ${e.refused}`:e.parked?"Saved here. The card was changed meanwhile: to resolve":e.late?`Saved here, not\
 yet in the shop. ${e.late}`:"Saved here, not yet in the shop. Waiting to be sent"}function a$(e){let t=e.here??
[],n=e.proposals??[];if(!t.length&&!n.length)return p;let s=t.filter(o=>o.refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-resolve" data-test="to-resolve">
            <p>
              ${S("caution","To resolve")} This card was changed in two places at once. Both are kept.
            </p>
            ${R("cards.revise",i`<a class="button next" href="/c/${e.code}/resolve" data-test="resolve"
                >Resolve ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner decides which holds.</p>`)}
          </div>`:p}
    ${t.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${Qx(t.length,n.length>0)}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:p}
          </p>`:p}
  </section>`}function Qx(e,t){let n=e===1?"One change of this card waits":`${e} changes of this card wait`;return t?
`${n} until the other one is resolved.`:`${n} and ${e===1?"is sent automatically":"are sent automatically"}.`}
function Pi(e){return e==="shop"?"Saved in the shop.":e==="here"?"Saved here, not yet in the shop. It is sent \
automatically.":e==="settle"?`The card was changed meanwhile. Both are kept: ${K("cards.revise")?"decide which\
 holds.":"the owner decides which holds."}`:"Nothing was changed."}var wo=m(()=>{y();we();G();ue()});async function Ci(e,t){try{yo=(await an(e)).map(({name:n})=>n),e.aborted||t()}catch{}}function Ri(e,t,{draw:n,
start:s}){let o=_a();if(o?.code===e)return e1(o,t);if(!yo.length)return p;let a=[r$,lm()].find(r=>yo.includes(
r))??yo[0];return i`<section
    class="show-on-press-screen"
    aria-label="Press screen"
    data-test="show-on-press-screen">
    ${yo.length>1?J({name:"press-screen",label:"Press screen",value:a,options:yo.map(r=>[r,r]),change:r=>{r$=r,
n()}}):p}
    <button
      type="button"
      class="button"
      data-test="put-on-press-screen"
      @click=${()=>{Jg(a,e,t),n(),s?.()}}>
      Show on ${ms(a)}
    </button>
  </section>`}function e1(e,t){let n=ms(e.name);return i`<section
    class="show-on-press-screen on"
    aria-label="Press screen"
    data-test="on-press-screen"
    data-press-screen-step=${e.step}>
    <p role="status">${t1(e,n)}</p>
    ${e.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>e$(t)}>
            Show step ${t} there
          </button>`:p}
    <button type="button" class="button" data-test="off-press-screen" @click=${Oi}>
      Stop
    </button>
  </section>`}function t1({answers:e,late:t,refused:n},s){return e===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:t?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var yo,r$,hd=m(()=>{y();It();Ni();z();yo=[],r$=""});function Bi(e){let{drawing:t}=e,n=gs(e),s=Kr(e),o=n1(t,e.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${md("before","before",i$(t.before),t,o)}
    ${n?md("during",s?cc(s).join(" "):"half way",n.shown,t,o,s):p}
    ${md("after","after",i$(t.after),t,o)}
  </div>`}function n1(e,t,n){let[s,o,a,r]=ut([e.before.sheet,e.after.sheet]),l=t??(a-s)/6,[c,d]=n?cs(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,e.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,d-l),high:Math.max(r+.3*l,2*l,d+l)}}function md(e,t,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${e}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${Re(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(d=>v`<path class="tool" d=${d}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?s1(c,a-o):p}
    </svg>
    <figcaption data-test="small-${e}">${t}</figcaption>
  </figure>`}function s1(e,t){if(!Nr(e,t))return v`<path class="ring" d=${Jo([e.on_sheet,e.on_tool])}/>`;let[n,
s]=cs(e);return v`<circle class="ring" cx=${n} cy=${-s} r=${t*.05}/>`}var i$,fd=m(()=>{y();rn();dc();Tn();i$=({
sheet:e,ram:t,holder:n,punch:s,gauge:o})=>({sheet:Re(e),tools:[t,n,s].map(Re).filter(Boolean),down:0,gauge:Re(
o),back:0})});function Ii(e,t,n,s){let o=[...e].sort((d,u)=>d[t]-u[t]);if(o.length<2||n<o[0][t]-.002||n>o[o.length-1][t]+.002)
return null;let a=o.findIndex(d=>d[t]>n),r=a<0?o.length-1:Math.max(a,1),[l,c]=[o[r-1],o[r]];return l[s]+(n-l[t])/
(c[t]-l[t])*(c[s]-l[s])}var gd=m(()=>{});function ka(e){let t=e.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(t))return null;
let n=Number(t);return n>0&&n<180?n:null}function a1(e,t){let n=Number(e.trim().replace(",","."));if(t===null||
!e.trim()||!Number.isFinite(n)||n<=0)return null;let s=Math.abs(n-t),[o]=[n*10,n/10].filter(a=>Math.abs(a-t)<s/
3);return o&&o<180?String(Number(o.toFixed(3))):null}function xa(e,t=null){let n={},s={},o={},a=e.places==="on\
e"?[["measured_deg",e.one]]:[["left_deg",e.left],["middle_deg",e.middle],["right_deg",e.right]];for(let[r,l]of a){
if(l.trim()==="")continue;let c=ka(l),d=a1(l,t);d?(o[r]=[`${d}°`,...c===null?[]:[`${l.trim()}°`]],s[r]=[`${o[r].
join(" or ")}?`]):c===null?s[r]=[e.places==="one"?l$:o1]:n[r]=c}return!Object.keys(n).length&&!Object.keys(s).
length&&(s[a[0][0]]=[l$]),{angles:n,wrong:s,meant:o}}function c$(e,t,n){let s=c1(t),[o,a]=["set_angle_deg","pu\
nch_depth_mm"].map(c=>Ii(e.corrections??[],"measured_deg",s,c));if(o===null||a===null||n.set_angle_deg===null||
r1(e,s))return null;let r=e,l={row:s,ends:s!==Wi(t),set_angle_deg:o+(n.set_angle_deg-r.set_angle_deg),punch_depth_mm:n.
punch_depth_mm===null?null:a+(n.punch_depth_mm-r.punch_depth_mm)};return dt(e,l)?l:null}function r1({first_hit:e,
included_angle_deg:t},n){return!!(e&&n>Math.max(t+i1,e.comes_out_deg_high))}function Wi(e){let t=Object.values(
e);return t.reduce((n,s)=>n+s,0)/t.length}function c1(e){let t=(e.left_deg+e.right_deg)/2;return e.middle_deg-
t>=l1?t:Wi(e)}function vo(e){return e?.correction?.set_angle_deg?e.correction:e?.table??null}function cn(e){let t=[
e.left_deg,e.middle_deg,e.right_deg],s=t.some(o=>o!=null)?t.map(o=>$(M(o??null))).join(" / "):$(M(e.measured_deg));
return e.flange_mm?`${s}, flange ${d1(e.flange_mm)}`:s}var _o,l$,o1,i1,l1,d1,Rn=m(()=>{Sn();gd();L();_o={one:"",
left:"",middle:"",right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""};l$="Type the a\
ngle between the flats in degrees, such as 90.5. Square is 90.",o1="Degrees, such as 90.5";i1=5;l1=.3;d1=e=>typeof e==
"string"?e:$(w(e,{digits:2}))});function ko(e,{waiting:t,step:n}={}){return i`<li class="row result" data-test=${t?"waiting-result":"result"} data-id=${e.
id}>
    <div>
      <span class="lead">${cn(e)}</span>
      <span class="code">Step ${e.step}</span>
      <span class="more">
        ${t?i`<b class="waits">${va(t)}</b> · `:p}
        ${[Vs(e),Jt(e),p1(e),u1(e.correction,n)].filter(Boolean).join(" · ")}
        ${e.note?i`<span class="result-note">${e.note}</span>`:p}
        ${t?.refused?i`<a href="/settings">Decide</a>`:p}
      </span>
    </div>
  </li>`}var p1,u1,$d=m(()=>{y();Sn();Rn();L();wo();Ve();p1=e=>e.set_angle_deg?`set at ${$(M(e.set_angle_deg))}`:
"",u1=(e,t)=>e?.set_angle_deg&&t&&dt(t,e)?`new setting ${$(M(e.set_angle_deg))}`:""});function d$(e,t,n,s){let o={runs:[],typed:"",wrong:[],taken:null,screens:[],asking:!1},a="[]",r=async()=>{let d=await Hc(
e),u=JSON.stringify(d);n.aborted||u===a&&m1(d,o.taken??[])||(u!==a&&(o.typed||=String(d[0]?.pieces??""),o.runs=
d,a=u,s()),l())},l=async()=>{o.taken=await O("GET",`/cards/${e}/runs`,{signal:n,timeout:4e3}).then(({body:u})=>u.
runs,()=>null);let d=await an(n).catch(()=>[]);o.screens=d.filter(u=>u.code===e),n.aborted||s()};ro(r,n);let c=d=>u=>Ke(
t(),u.id,{kind:d});return{state:o,look:r,now:()=>o.runs.find(d=>d.state!=="ended")??null,acts:{ask:()=>{o.asking=
!o.asking,s(),o.asking&&document.getElementById("run_pieces")?.focus()},type:d=>o.typed=d,begin:async()=>{let d=f1(
o.typed);if(o.wrong=d?[]:["How many pieces? Type a whole number, such as 20."],!d||!o.asking)return s();o.asking=
!1,await sf(t(),d),se(`/c/${e}/step/1`)},pause:c("paused"),resume:c("resumed"),end:c("ended"),back:d=>Ke(t(),d.
id,{kind:"back",undoes:d.last?.id})}}}function f1(e){let t=/^\d{1,6}$/.test(e.trim())?Number(e):0;return t<=h1?
t:0}var h1,m1,p$=m(()=>{j();fa();It();Oe();h1=1e5;m1=(e,t)=>e.every(({id:n,...s})=>t.some(o=>o.id===n&&o.done===
s.done&&o.scrapped===s.scrapped&&o.state===s.state))});var u$={};ie(u$,{show:()=>g1});async function g1(e){let{code:t}=e.params;if(!$e(t).whole)return ke(e,Be(t));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=d$(t,()=>n,e.signal,()=>n&&a()),a=()=>{e.title(n.title||
B(t)),e.render($1(n,s,{take:l,archive:r,draw:a},o))},r=async()=>{try{({card:n}=await Tt(n,{archived:!n.archived})),
q(n.archived?"Archived. It stands under Archived, below the cards.":"In use again."),W()}catch(d){q(X(d))}a()},
l=async()=>{Object.assign(s,{busy:!0,fault:""}),a();try{let d=P().name?{by:P().name}:{};n=await ts(await pr(n,
{replan:!0,reason:"Planned afresh with today’s tools",id:Ne(),...d})),s.fresh=null,W()}catch(d){s.fault=d instanceof
E&&d.status===412?"The card was changed meanwhile. Open it again first.":X(d)}s.busy=!1,a()},c=async d=>{n=d,s.
waiting=(await Zt(t).catch(()=>[])).filter(u=>u.kind==="trial"),s.metal=Fs((await vn())?.metals,n.part.metal),
await o.look(),a(),e.ready()};xe(()=>n&&a(),e.signal),Li(()=>n&&a(),e.signal),document.addEventListener("sync",
async()=>n&&c(await Xo(t).catch(()=>{})??n),{signal:e.signal});try{await Mt(t,c,e.signal)}catch(d){e.signal.aborted||
ke(e,Ss(t,d));return}Ei(),Ci(e.signal,a),s.fresh=await O("GET",`/cards/${t}/fresh`,{signal:e.signal}).then(({body:d})=>d,
()=>null),a()}function $1(e,t,{take:n,archive:s,draw:o},a){let{plan:r}=e,l=r.checks.filter(u=>u.level!=="ok"),
c=l.filter(u=>u.level==="stop"),d=l.filter(u=>u.level!=="stop"&&!u.code.startsWith("general-"));return i`<article class="card" data-test="card" data-revision=${e.
revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${B(e.code)}</p>
        <h1 data-test="card-title">${e.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${w1(e,t.metal)}</p>
        ${e.note?i`<p class="card-note" data-test="card-note">${e.note}</p>`:p}
        ${e.archived?i`<p class="card-note"><b>Archived.</b> This card is not in use any more.</p>`:p}
      </header>
      ${a$(e)}
      ${c.length?i`<section class="card-stops" aria-label="Stop">${Ue(c)}</section>`:p}
      ${s$(t.fresh,{...t,take:n,settings:e.settings.length})}
      ${b1(e,c.length>0,a.now())}
      ${r.steps.length?Ri(e.code,1,{draw:o,start:()=>se(`/c/${e.code}/step/1`)}):p}
      <section class="panel card-picture" aria-label="What it becomes">
        ${ft(r,{tallest:innerHeight*.26})}
      </section>
      ${x1(e,s,zm(e,a.state,c.length>0,a.acts))}
    </div>
    <div class="card-body">
      ${Vm(e,a.state,c.length>0,a.acts)}
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${so(r.tools,r.steps.length,r.steps)}${Zr(r.blank)}${qe(r)?vs(r.blank,{tallest:420}):p}
      </section>
      ${k1(e,t.waiting)}
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${ks(r)?p:y1(r.order)}${v1(e)}
        ${ks(r)?oe("Order",Si(r,wg(e.code)),{test:"order-fold"}):p}
      </section>
      ${d.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${Us(d)}
            </section>`:p}
      ${An(r.checks)}
    </div>
  </article>`}function b1({code:e,plan:t},n,s){return t.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${e}/step/1" data-test="start">
      ${n?"See step 1":s?"Go on":"Start"}
      <small
        >${s?$s(s).toLowerCase():t.steps.length===1?"1 step":`${t.steps.length} steps`}</small
      >
    </a>
  </div>`:p}function w1({part:e,plan:t},n){let s=t.thickness_gauge?` (${t.thickness_gauge})`:"",o=e.bends.length===
1?"1 bend":`${e.bends.length} bends`,a=qe(t)?`box ${fs(t.folded)}`:`${U(e.bend_length_mm)} ${N()} long`;return`${n}\
, ${U(e.thickness_mm)} ${N()}${s}, ${a}, ${o}`}function _1(e,t){let{gauge_x_mm:n}=pt(e,t);return n===null?"no \
gauge":`gauge X ${$(w(n))}`}function v1(e){return i`<ol class="rows" data-test="step-list">
    ${e.plan.steps.map(t=>i`<li class="row">
          <a href="/c/${e.code}/step/${t.number}">
            <span class="lead">${t.number}. ${Dt(t)} ${t.direction}</span>
            <span class="code">${$(M(t.included_angle_deg))}</span>
            <span class="more">
              ${_1(e,t)}
              ${t.turn_over||t.turn_end||t.turn_quarter?i`<span class="turn" data-test="turn">${Qs(t)}</span>`:
p}
            </span>
            ${Wt(t,{short:!0})}
            ${t.drawing?Bi(t):p}
          </a>
        </li>`)}
  </ol>`}function k1(e,t){let n=[...e.trials].reverse().slice(0,3);return!n.length&&!t.length?i`<section class="card-results">
      <p class="soft" data-test="no-results">
        Nothing measured yet.${R("results.keep"," After a bend, type the result.")}
      </p>
    </section>`:i`<section class="panel card-results">
    <h2>Results</h2>
    <ul class="rows results" data-test="results">
      ${[...t].reverse().map(s=>ko(s.body,{waiting:s}))}
      ${n.map(s=>ko(s,{step:e.plan.steps[s.step-1]}))}
    </ul>
  </section>`}function x1({code:e,archived:t},n,s){return i`<nav class="card-links" aria-label="This card">
    ${s}
    ${ce(`/c/${e}/note`,i`<a class="button" href="/c/${e}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${e}/history" data-test="history">History</a>
    <a class="button" href="/c/${e}/label" data-test="label">Label</a>
    <a class="button" href="/c/${e}/print" data-test="print">Print</a>
    ${R("cards.revise",i`<a class="button" href="/part?from=${e}" data-test="edit">Edit</a>`)}
    ${R("cards.create",i`<a class="button" href="/part?copy=${e}" data-test="copy">Copy</a>`)}
    ${R("cards.revise",i`<button type="button" class="button" data-test="archive" @click=${n}>
        ${t?"Use again":"Archive"}
      </button>`)}
  </nav>`}var y1,h$=m(()=>{y();j();He();fe();be();xn();Pe();Ni();Oe();Ze();ae();ye();L();ln();G();ca();ot();o$();
wo();eo();ue();Ti();Ln();hd();fd();rn();$d();Js();Cn();ht();p$();oo();li();y1=e=>e?.words?i`<p class="order" data-test="order">${e.
words}</p>`:p});function f$(){return performance.now()-m$<S1?!1:(m$=performance.now(),!0)}function g$(e,t,n){let s=null,o=async()=>{
let a=await pi(e);t.aborted||JSON.stringify(a)===JSON.stringify(s)||(s=a,n())};return ro(o,t),{look:o,now:()=>s,
counted:()=>s?.state==="open"&&K("runs.keep")?s:null}}async function bd(e,t){if(!f$())return;let{id:n}=await Ke(
e,t.id,{kind:"piece"});se(ai(t)?`/c/${e.code}`:`/c/${e.code}/step/1`),b$(e,t,n,`Piece ${t.done+1} counted.`,e.
plan.steps.length)}async function $$(e,t,n){if(!f$())return;let{id:s}=await Ke(e,t.id,{kind:"scrap",step:n});se(
`/c/${e.code}/step/1`),b$(e,t,s,`One piece scrapped at step ${n}.`,n)}function b$(e,t,n,s,o){q(s,{label:"Undo",
act:async()=>{await Ke(e,t.id,{kind:"back",undoes:n}),se(`/c/${e.code}/step/${o}`)},goes:!0})}var S1,m$,w$=m(()=>{
oo();fa();we();Ze();Oe();S1=700,m$=-1/0});var v$={};ie(v$,{show:()=>T1});async function T1(e){let{code:t,step:n}=e.params;if(!$e(t).whole)return ke(e,Be(
t));let s=ma(),o,a=g$(t,e.signal,()=>o&&r()),r=()=>{let l=o.plan.steps[Number(n)-1];if(!l)return e.render(A1(o,
n));e.title(`${o.title||t}, step ${l.number}`),e.render(E1(o,l,()=>ni(o,l,s,r,e.signal),Ri(o.code,l.number,{draw:r}),
a))};xe(()=>o&&r(),e.signal),Li(()=>o&&M1(o,Number(n),r),e.signal),document.addEventListener("sync",()=>o&&O1(
o),{signal:e.signal}),addEventListener("keydown",l=>o&&L1(l,o,Number(n),a),{signal:e.signal}),Ei();try{await Mt(
t,async l=>{o||await a.look(),!o&&l.plan.steps[Number(n)-1]&&Qg(t,Number(n)),o=l,r(),e.ready()},e.signal)}catch(l){
e.signal.aborted||ke(e,Ss(t,l));return}Ci(e.signal,()=>o&&r())}function M1(e,t,n){let s=_a(),o=s?.code===e.code&&
s?.step!==t&&e.plan.steps[(s?.step??0)-1];o?se(`/c/${e.code}/step/${o.number}`,{replace:!0}):n()}async function O1(e){
let t=await Xo(e.code).catch(()=>{});t&&t.revision!==e.revision&&q(`This card is at revision ${t.revision} now\
.`,{label:"Show it",act:()=>Xt()})}function L1(e,t,n,s){if(e.altKey||e.ctrlKey||e.metaKey||e.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.
test(e.target.tagName))return;let o=n===t.plan.steps.length&&s.counted();e.key==="ArrowRight"&&o?bd(t,o):e.key===
"ArrowRight"&&se(y$(t,n).href),e.key==="ArrowLeft"&&se(_$(t,n).href)}function y$(e,t){let n=e.plan.steps.at(-1);
return t<e.plan.steps.length?{href:`/c/${e.code}/step/${t+1}`,label:"Next",more:`step ${t+1}`}:n.set_angle_deg===
null||!Gt(`/c/${e.code}/result/${t}`)?{href:`/c/${e.code}`,label:"Done: the card",more:""}:{href:`/c/${e.code}\
/result/${t}`,label:"Type the result",more:""}}function E1(e,t,n,s,o){let{stops:a,watch:r}=ti(e,t),l=t.number===
e.plan.steps.length,c=l?o.counted():null;return i`<article class="step" data-test="step">
    ${Xr(e,t)} ${C1(e,t,o.now())}
    ${a.length?i`<div class="step-stop">${Ue(a)}</div>`:p}
    <div class="step-body">
      <div class="step-way">${zr(t,e.part.flats_mm.length)}${Wt(t)}</div>
      <section class="step-set" aria-label="What to set">${si(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-press-screen">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${r.length?Ue(r):p}
      </section>
      <section class="step-with" aria-label="Tools">
        ${Dm(e.plan,t)} ${Gr(e.plan,t)}
        ${pa(t.origin)?i`<p class="hint origins" data-test="origins">${pa(t.origin)}</p>`:p}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${_$(e,t.number).href} data-test="back">Back</a>
      ${l&&!c||t.set_angle_deg===null?p:ce(`/c/${e.code}/result/${t.number}`,i`<a class="button" href="/c/${e.
code}/result/${t.number}" data-test="came-out"
                >Type the result</a
              >`)}
      ${c?P1(e,c):N1(y$(e,t.number))}
    </nav>
  </article>`}function P1(e,t){let{label:n,more:s}=ii(t);return i`<button
    type="button"
    class="button next"
    data-test="next-piece"
    @click=${()=>bd(e,t)}>
    ${n}${s?i` <small>${s}</small>`:p}
  </button>`}function C1(e,t,n){return n?K("runs.keep")?jm(n,{scrap:()=>$$(e,n,t.number),pause:()=>Ke(e,n.id,{
kind:"paused"}),resume:()=>Ke(e,n.id,{kind:"resumed"}),ready:()=>Ke(e,n.id,{kind:"setup"})}):i`<div class="run-bar">${ao(
n)}</div>`:p}var A1,_$,N1,k$=m(()=>{y();He();fe();Ze();Ni();Oe();we();ae();xn();ln();Tc();G();eo();ue();Jr();Wr();
hd();En();rn();oi();fa();w$();Wc();li();A1=(e,t)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${t}</strong>This card has ${e.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${e.code}">Open the card</a></span>
  </div>`;_$=(e,t)=>({href:t>1?`/c/${e.code}/step/${t-1}`:`/c/${e.code}`,label:"Back"});N1=({href:e,label:t,more:n})=>i`<a class="button next" href=${e} data-test="next"
    >${t}${n?i` <small>${n}</small>`:p}</a
  >`});function Bn(e){let t=gt(wd(e));return t?.units===P().units?t.typed:null}var wd,In,dn,Sa=m(()=>{Os();ae();wd=e=>`\
flangebook.typed.${e}`;In=(e,t)=>Ye(wd(e),{units:P().units,typed:t}),dn=e=>Ye(wd(e),null)});function x$(e,t,n,s){let o=e.gauged_flange;if(!o)return null;let a=Ii(o.rows,"measured_deg",t,"flange_mm");if(a===
null)return null;let r=n-a;if(Math.abs(r)>o.most_error_mm)return{gauge_x_mm:null,error_mm:r,words:"That flange\
 is further off than a gauge error can be. Check it before you set a new X.",to_check:R1};let l=Math.abs(r)<=yd?
s:s-r,c=l>=o.x_low_mm&&l<=o.x_high_mm;return{gauge_x_mm:c?l:null,error_mm:r,words:c?"":"The gauge does not rea\
ch far enough to correct the flange.",to_check:[]}}var yd,R1,xo,Di=m(()=>{gd();yd=.05;R1=["Measure again, to t\
he face that the card's dimension goes to.","Check which flange was measured.","Read the gauge: did it stand a\
t the X of the card, and the sheet against it?"],xo=({correction:e,gauge:t})=>e?.flange??t??null});function B1(e){let t=Bn(e);dn(e),nt(null),se(e,{replace:!0}),q("The form as it was before you typed.",{label:"\
Put mine back",act:()=>{In(e,t),se(e,{replace:location.pathname===e})}})}var So,Fi=m(()=>{y();Sa();Ze();Oe();So=
e=>i`<p class="restored" data-test="restored">
    What you typed before is back.
    <button type="button" class="link" data-test="start-over" @click=${()=>B1(e)}>
      Start over
    </button>
  </p>`});function T$(e,t,n,{save:s,draw:o,keep:a}){let{typed:r,wrong:l}=n,c=(u,h,f,g={})=>A({name:h,label:f,value:r[u],
wrong:l[h],meant:n.meant[h],change:b=>{if(Object.assign(r,{[u]:b}),a(),!!n.meant[h]){for(let _ of[l,n.meant])delete _[h];
o()}},...g}),d=n.used??pt(e,t);return i`<form class="result-form" novalidate data-test="result-form" @submit=${_e(
s)}>
    <div class="result-main">
      <h2>Result <small>Wanted ${$(M(t.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:p}
      <div class="result-angles ${r.places}">
        ${r.places==="one"?c("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[c("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),c("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),c("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${_d(r,()=>{a(),o()})}
      <div class="result-more">
        ${n.byDepth?c("set","punch_depth_mm","Depth that was set",{unit:N(),placeholder:d.punch_depth_mm===null?
"":w(d.punch_depth_mm,{digits:2}).text,hint:S$}):c("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:d.set_angle_deg===null?"":M(d.set_angle_deg).text,hint:S$})}
        ${c("flange","flange_mm","Flange measured",{unit:N(),hint:"If you measured it."})}
        ${c("note","note","Note",{hint:"Grain, anything odd."})}
      </div>
      <details
        class="more-measured"
        data-test="more-measured"
        ?open=${["lot","thickness_mm","radius_mm"].some(u=>l[u]?.length)}>
        <summary>More measured</summary>
        <div class="result-more">
          ${c("thickness","thickness_mm","Thickness measured",{unit:N()})}
          ${c("radius","radius_mm","Inside radius",{unit:N()})}
          ${c("lot","lot","Lot or heat",{hint:"As on the sheet’s tag."})}
        </div>
      </details>
    </div>
    <div class="step-nav" role="group" aria-label="Result">
      <a class="button" href="/c/${e.code}/step/${t.number}" data-test="back">Back</a>
      <button class="button next" data-test="save" ?disabled=${n.sending}>
        ${n.sending?"Sending…":"Save"}
      </button>
    </div>
  </form>`}var S$,_d,vd=m(()=>{y();He();L();z();S$="Leave it if it was set as shown.",_d=(e,t)=>Q({name:"place\
s",label:"Measured at",value:e.places,options:[["one","One place"],["three","Left, middle, right"]],change:n=>{
Object.assign(e,{places:n}),t()}})});function M$(e){let t=xo(e);return t?t.gauge_x_mm===null?I1(t):i`<div class="set-figures" data-test="new-gauge">
      ${at("Gauge X now",w(t.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${O$(t.error_mm)}</p>`:p}function I1({error_mm:e,words:t,said:n,to_check:s}){
return s.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${S("stop")} <b>No new gauge X.</b> ${O$(e)} No gauge is that far off.</p>
    <ol>
      ${s.map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${je({...n,words:t})}</p>`}function O$(e){return e===null?"":Math.abs(e)<=
yd?"Flange as wanted: leave the gauge.":`Flange ${le(w(Math.abs(e),{digits:2}))} too ${e>0?"long":"short"}.`}function A$(e){
let t=e?.crown;return t?i`<div class="crown" data-test="crown">
    <p>${W1(t)}</p>
    ${t.shim?D1(t.shim):p}
  </div>`:p}function W1({middle_open_deg:e,shim:t,said:n,words:s}){return t?i`<b>The middle is ${le(M(e))} more open than the ends.</b> First crown the middle
    by ${le(w(t.middle_mm,{digits:2}))}, or shim the die:`:je({...n,words:s})}function D1({strip_mm:e,lengths_mm:t}){
let n=t.map(o=>w(o,{digits:0}).text).join(", "),s=w(t[0],{digits:0}).unit;return i`<p data-test="shim">
    ${t.length===1?"1 strip":`${t.length} strips`} of
    ${le(w(e,{digits:2}))} under the middle of the die, one on the other, ${n} ${s}
    long. Nothing at the ends. Then set what stands above, which is for the ends; bend again and measure.
  </p>`}var L$,E$=m(()=>{y();Di();L();G();En();L$=({thickness_mm:e})=>e?` Calculated for the ${le(w(e,{digits:2}))}\
 that the sheet measures.`:""});function N$(e,t,n,{again:s,keep:o}){let a=vo(n);return i`<div
    class="result-answer"
    data-test="result-answer"
    data-waits=${n.waits?"true":"false"}>
    <div class="result-main">
      <h2>${cn(n.trial)} <small>wanted ${$(M(t.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${n.late||"the shop does not answer"}.
              It is sent automatically.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?H1(a):Rm(t,n)}
      ${a?i`<p class="basis" data-test="basis">${U1(n)}</p>`:p}
      ${n.question?F1(e,n.question):p} ${M$(n)}
      ${G1(n.correction)} ${A$(n.correction)}
      ${a?R("cards.revise",K1(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
p}
    </div>
    <nav class="step-nav" aria-label="Result">
      <button class="button" data-test="again" @click=${s}>Measure again</button>
      <a class="button" href="/c/${e.code}/step/${t.number}" data-test="back">Step ${t.number}</a>
      ${a&&n.kept!=="kept"?R("cards.revise",kd(e,t,"button",", not kept"),kd(e,t)):kd(e,t)}
    </nav>
  </div>`}function kd({code:e,plan:t},{number:n},s="button next",o=""){let a=n===t.steps.length;return i`<a class=${s} href=${a?
`/c/${e}`:`/c/${e}/step/${n+1}`} data-test="next"
    >${a?`Done${o}: the card`:`Next${o}: step ${n+1}`}</a
  >`}function U1({correction:e,table:t}){return e?`${je({...e.said,words:e.what})}${V1(e)}${L$(e)}`:`Worked ou\
t on this device, from the card’s own table at ${$(M(t?.row??null))}. The shop works it out again when the r\
esult arrives.${t?.ends?` ${j1}`:""}`}function G1(e){let t=e?.tilt_mm_per_m;return t==null?p:i`<p data-test="tilt">
    Left and right differ: about ${q1(Math.abs(t))},
    ${t>0?"the right end deeper":"the left end deeper"}.
  </p>`}function K1(e,t){return e.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${e.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${e.words}
    </p>`:i`<div class="buttons">
      <button class="button next wide" data-test="keep" ?disabled=${e.kept==="asking"} @click=${t}>
        ${e.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${e.words}</p>`}var F1,H1,j1,V1,z1,q1,P$=m(()=>{y();E$();
Rn();L();G();Ic();ue();En();F1=(e,t)=>i`<section class="panel urgent" data-test="question">
    <p>${S("unknown","Does not count")} ${t}</p>
    <p><a href="/shop/learned/${encodeURIComponent(e.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,H1=e=>i`<div class="set-figures" data-test="new-setting">
    ${at("Angle now",M(e.set_angle_deg),"new-angle")}
    ${e.punch_depth_mm===null?p:at("Depth now",w(e.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`,j1="The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it\
 first.";V1=({crown:e})=>e?.setting_for==="ends"?" This is for the ends; first correct the open middle, see be\
low.":"";z1=3048,q1=e=>N()==="in"?`${te(e*z1/1e3/Se,3)} in over ten feet`:`${te(e,2)} mm in each metre`});async function C$(e,t,n,s){let o=vo(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await Tt(e,{settings:[...e.settings.filter(r=>r.step!==t.number),Y1(t,o,n.trial,X1(e,t,n))]},{reason:`\
Step ${t.number} set from a piece measured at ${cn(n.trial)}`});Object.assign(e,a.card),Object.assign(n,{kept:"\
kept",where:a.where,words:Z1(a)}),W()}catch(a){Object.assign(n,{kept:"no",words:X(a)})}s()}}function Z1({where:e,
card:t}){return e==="shop"?`Revision ${t.revision} of the card has it. Steps show it from now on.`:e==="settle"?
"The card was changed meanwhile. Both are kept: decide on the card which holds.":"Steps show it on this device\
 from now on; it is sent to the shop automatically."}var Y1,X1,R$=m(()=>{j();xn();Di();Rn();ye();Y1=(e,t,n,s)=>({
step:e.number,set_angle_deg:t.set_angle_deg,punch_depth_mm:t.punch_depth_mm,...s===null?{}:{gauge_x_mm:s},trial_id:n.
id,reason:`Piece measured at ${cn(n)}`}),X1=(e,t,n)=>xo(n)?.gauge_x_mm??e.settings.find(s=>s.step===t.number)?.
gauge_x_mm??null});var I$={};ie(I$,{show:()=>Q1});async function Q1(e){let{code:t,step:n}=e.params;if(!$e(t).whole)return ke(e,Be(
t));let s={typed:{..._o},used:null,wrong:{},meant:{},general:"",sending:!1,result:null,byDepth:!1,before:""},o=!1,
a,r=async()=>{let c=J1.includes((await vn())?.press?.set_by);c===s.byDepth||s.typed.set||s.sending||s.result||
(s.byDepth=c,a&&!e.signal.aborted&&l())};document.addEventListener("sync",r,{signal:e.signal}),await r();let l=()=>{
let c=a.plan.steps[Number(n)-1];if(!c)return ke(e,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${t}">Open the card</a>
        </p>`);o||eS(a,c,s),o=!0,e.title(`${a.title||t}: result`),e.render(sS(a,c,s,l))};nt(()=>!s.result&&s.typed.
one+s.typed.left+s.typed.note?"Leave without saving what you measured?":null),await Ht(e,c=>{s.sending||s.result||
(a=c,l(),e.ready())})}function eS(e,t,n){let s=Bn(Ta(e,t));if(!s)return;if(s.about!==B$(e,t)){dn(Ta(e,t)),n.before=
"other step";return}let{typed:o,used:a,byDepth:r}=s;Object.assign(n,{typed:{..._o,...o},used:a,byDepth:r,before:"\
back"})}function tS(e,t,{typed:n,used:s,byDepth:o}){In(Ta(e,t),{typed:n,used:s,byDepth:o,about:B$(e,t)})}function sS(e,t,n,s){
let o=()=>oS(e,t,n,s),a=()=>{let l=aS(n);Object.assign(n,{typed:{..._o,places:n.typed.places,lot:n.typed.lot,thickness:n.
typed.thickness},used:l??n.used,result:null,before:""}),s()},r=()=>C$(e,t,n.result,s);return i`<article class="step result-screen" data-test="result-screen">
    ${Xr(e,t)}
    ${n.before&&!n.result?nS[n.before](Ta(e,t)):p}
    <div class="result-body">
      ${n.result?N$(e,t,n.result,{again:a,keep:r}):T$(e,t,n,{save:o,draw:s,keep:()=>tS(e,t,n)})}
      <aside class="result-aside" aria-label="Which bend">
        ${ft(e.plan,{mark:t.bend})}
      </aside>
    </div>
  </article>`}async function oS(e,t,n,s){if(n.sending)return;let{angles:o,wrong:a,meant:r}=xa(n.typed,t.included_angle_deg),
l=iS(e,t,n);if(l||(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,
{wrong:a,meant:r,general:""}),Object.keys(a).length||!l)return s(),Lt(a);let c=lS(e,t,o,l,n.typed);n.sending=!0,
s();try{let{late:d,...u}=await Is({id:c.id,kind:"trial",code:e.code,body:c});dn(Ta(e,t));let h=u.answer,f=h?.correction??
null;n.result={trial:c,correction:f,table:h||l.set_angle_deg===null?null:c$(t,o,l),gauge:h?null:rS(t,o,l,c.flange_mm),
waits:!h,late:d??"",question:h?.question_said?Me(h.question_said):"",kept:"no",words:""},h&&W()}catch(d){n.wrong=
d instanceof E?d.errors:{},n.general=X(d)}n.sending=!1,await $n(),s(),Lt(n.wrong)}function aS({result:e,used:t}){
let n=vo(e),s=e&&(xo(e)?.gauge_x_mm??e.trial.gauge_x_mm??null);return n?{...n,gauge_x_mm:s??t?.gauge_x_mm}:null}
function rS(e,t,n,s){let o=ap(s);return o===null||typeof n.gauge_x_mm!="number"?null:x$(e,Wi(t),o,n.gauge_x_mm)}
function iS(e,t,n){let{set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a}=n.used??pt(e,t),r={set_angle_deg:s,punch_depth_mm:o,
gauge_x_mm:a};if(n.typed.set.trim()==="")return r;if(n.byDepth)return{set_angle_deg:null,punch_depth_mm:ne(n.typed.
set),gauge_x_mm:a};let l=ka(n.typed.set);return l===null?null:{set_angle_deg:l,punch_depth_mm:null,gauge_x_mm:a}}
function lS(e,t,n,s,o){let a={id:Ne(),revision:e.revision,step:t.number,bend:t.bend,...n,made_at:new Date().toISOString()};
return s.set_angle_deg!==null&&(a.set_angle_deg=s.set_angle_deg),s.punch_depth_mm!==null&&(a.punch_depth_mm=s.
punch_depth_mm),typeof s.gauge_x_mm=="number"&&(a.gauge_x_mm=s.gauge_x_mm),o.flange.trim()&&(a.flange_mm=ne(o.
flange)),o.radius.trim()&&(a.radius_mm=ne(o.radius)),o.thickness.trim()&&(a.thickness_mm=ne(o.thickness)),o.lot.
trim()&&(a.lot=o.lot.trim()),o.note.trim()&&(a.note=o.note.trim()),P().name&&(a.by=P().name),a}var J1,Ta,B$,nS,
W$=m(()=>{y();j();He();Sa();fe();be();Di();Rn();Pe();Oe();Yn();ae();ye();L();ln();Fi();G();z();En();vd();P$();
Cn();R$();J1=["depth","stop"];Ta=(e,t)=>`/c/${e.code}/result/${t.number}`,B$=(e,t)=>JSON.stringify([t.bend,t.included_angle_deg,
pt(e,t)]);nS={back:So,"other step":()=>i`<p class="restored" data-test="other-step">
      The step has changed since you typed a result for it: that is not in the boxes any more.
    </p>`}});function F$(e,t,n,s){return e.map(o=>i`<fieldset class="resolve-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${Ma(o,o.before)}</small></legend>
        ${D$(o,"shop","In the shop",t,s)} ${D$(o,"yours",n,t,s)}
      </fieldset>`)}function D$(e,t,n,s,o){return i`<label class="resolve-side" data-test=${t}>
    <span class="resolve-whose"
      ><input
        type="radio"
        name=${e.name}
        value=${t}
        .checked=${s[e.name]===t}
        @change=${()=>o(e.name,t)} />
      ${n}</span
    >
    <span class="resolve-value">${Ma(e,e[t])}</span>
  </label>`}function Ma({name:e},t){if(e==="archived")return t?"Archived":"In use";if(!e.startsWith("settings "))
return t||"nothing";if(!t)return"as planned";let n=t,s=n.punch_depth_mm===null||n.punch_depth_mm===void 0?"":`\
, depth ${$(w(n.punch_depth_mm,{digits:2}))}`;return`${$(M(n.set_angle_deg??null))}${s}`}var xd=m(()=>{y();L()});function H$(e,t){return e.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${e.map(n=>cS(n,t))}
    </ol>
  </section>`:p}function cS(e,t){let n=Rs(e.changes,e.before,{...e.before,settings:e.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${e.settled_by?`Resolved by revision ${e.settled_by}`:ce(`/c/${t}/resolve`,i`<a href="/c/${t}/resolve">To resolve</a>`,
"To resolve")}
    </h3>
    <p class="more">${[Vs(e),Jt(e)?`by ${Jt(e)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${Ma(s,s.before)} to ${Ma(s,s.yours)}</li>`)}
    </ul>
  </li>`}var j$=m(()=>{y();Bs();ue();xd();Ve()});function U$({title:e,note:t,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${e}</b>, ${$(w(n.thickness_mm,{digits:2}))},
      ${qe(s)?fs(s.folded):`${$(w(n.bend_length_mm))} long`}${t?i`. ${t}`:p}
    </p>
    ${ft(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${dS(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:p}
    ${Yr(s)} ${Ue(s.checks,{quiet:!0})}
  </div>`}function dS(e,t){let n={set_angle_deg:t.set_angle_deg??null,punch_depth_mm:t.punch_depth_mm??null};if(!e||
!dt(e,n))return"had a setting beyond its tools";let s=$(w(n.punch_depth_mm,{digits:2}));return`set at ${$(M(n.
set_angle_deg))}, depth ${s}`}var V$=m(()=>{y();Js();Cn();Sn();L();G();Ln()});var G$={};ie(G$,{show:()=>pS});async function pS(e){let{code:t}=e.params;if(!$e(t).whole)return ke(e,Be(t));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>e.render(hS(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=h=>O("GET",`/cards/${t}/${h}`,{signal:e.signal}),[d,u]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);s.revisions=d.body.revisions,s.proposals=u.body.proposals,s.silent=
!1}catch(c){if(!(c instanceof V))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=null,o(),
!!s.open){try{let{body:d}=await O("GET",`/cards/${t}/revisions/${c}`,{signal:e.signal});s.open===c&&(s.snapshot=
d)}catch(d){s.open=0,q(X(d))}o()}},l=async c=>{s.busy=!0,o();try{n=await uS(n,c),q(`Revision ${c} is back, as \
revision ${n.revision}.`),s.open=0,W(),await a()}catch(d){q(d instanceof E&&d.status===412?"The card was chang\
ed meanwhile. Look at the history again.":X(d))}s.busy=!1,o()};xe(()=>n&&o(),e.signal);try{await Mt(t,async c=>{
n=c,e.title(`${n.title||B(t)}: history`),s.waiting=(await Zt(t).catch(()=>[])).filter(d=>d.kind==="trial"),o()},
e.signal),await a(),o(),e.ready()}catch(c){e.signal.aborted||ke(e,Ss(t,c))}}async function uS(e,t){let n=await Ot(
e.code);return pr(n,{restore_revision:t,reason:`Revision ${t} brought back`,id:Ne(),...P().name?{by:P().name}:
{}})}function hS(e,t,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${B(e.code)}</a></p>
      <h1>History of ${e.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${mS(e,t,n)}
      </section>
      ${H$(t.proposals,e.code)}
      <section class="panel">
        <h2>Results</h2>
        ${gS(e,t)}
      </section>
    </div>
  </article>`}function mS(e,t,n){return t.silent?i`<p data-test="silent">
      This device has revision ${e.revision}, of
      ${de(e.updated_at)}${e.updated_by?` by ${e.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:t.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${t.revisions.map(s=>fS(s,e,t,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function fS(e,t,n,{look:s,bringBack:o}){let a=e.revision===
t.revision,r=n.open===e.revision;return i`<li class="row revision" data-test="revision" data-revision=${e.revision}>
    <h3>
      Revision ${e.revision}${a?", as it is now":""}
      ${e.worst==="stop"||e.worst==="caution"?S(e.worst):p}
    </h3>
    <p class="more">${[de(e.at),Jt(e)].filter(Boolean).join(", by ")}</p>
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
    ${r?n.snapshot?U$(n.snapshot):i`<p>Fetching it…</p>`:p}
  </li>`}function gS(e,t){return!e.trials.length&&!t.waiting.length?i`<p data-test="no-results">Nothing measured yet.</p>`:
i`<ol class="rows results" data-test="results">
      ${[...t.waiting].reverse().map(n=>ko(n.body,{waiting:n}))}
      ${[...e.trials].reverse().map(n=>ko(n,{step:e.plan.steps[n.step-1]}))}
    </ol>
    ${e.trials_total>e.trials.length?i`<p>The newest ${e.trials.length} of ${e.trials_total}.</p>`:p}`}var z$=m(
()=>{y();j();He();fe();Ze();Pe();ae();ye();ln();G();ue();j$();V$();$d();Ve()});var q$={};ie(q$,{show:()=>$S});async function $S(e){let{code:t}=e.params;if(!$e(t).whole)return ke(e,Be(t));let n,
s={title:"",note:"",archived:!1,typed:!1,restored:!1,sending:!1,wrong:{},general:""},o=()=>{e.title(`${n.title||
B(t)}: note`),e.render(yS(n,s,{draw:o,save:()=>wS(n,s,o,e.signal)}))};nt(()=>s.typed?"Leave without saving wha\
t you typed?":null),await Ht(e,a=>{if(s.typed||s.sending)return;let r=Bn(Hi(t));n={...a,...r?.on};let{title:l,
note:c,archived:d}=r??a;Object.assign(s,{title:l,note:c,archived:d,typed:!!r,restored:!!r}),o(),e.ready()})}async function wS(e,t,n,s){
if(t.sending)return;let[o,a]=[t.title.trim(),t.note.replace(/\r\n/g,`
`).trim()];if(Object.assign(t,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),Lt(t.wrong);
t.sending=!0,n();try{let{where:r}=await Tt(e,{title:o,note:a,archived:t.archived});if(t.typed=!1,dn(Hi(e.code)),
q(Pi(r)),W(),s.aborted)return;se(r==="settle"&&Gt(`/c/${e.code}/resolve`)?`/c/${e.code}/resolve`:`/c/${e.code}`)}catch(r){
t.wrong=r instanceof E?r.errors:{},t.general=X(r),t.sending=!1,n(),Lt(t.wrong)}}function yS(e,t,{draw:n,save:s}){
let o=a=>{let{title:r,note:l,archived:c}=Object.assign(t,a,{typed:!0});In(Hi(e.code),{title:r,note:l,archived:c,
on:bS(e)})};return i`<form class="note-screen" novalidate data-test="note-screen" @submit=${_e(s)}>
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${B(e.code)}</a></p>
      <h1>${R("cards.revise","Note and title","Note")}</h1>
    </header>
    ${t.restored?So(Hi(e.code)):p}
    ${t.general?i`<p class="wrong" role="alert" data-test="wrong">${t.general}</p>`:p}
    ${ss({name:"note",label:"Note",value:t.note,lines:5,wrong:t.wrong.note,change:a=>o({note:a})})}
    ${R("cards.revise",[A({name:"title",label:"Title",value:t.title,wrong:t.wrong.title,change:a=>o({title:a})}),
Q({name:"archived",label:"This card",value:t.archived?"away":"use",options:[["use","In use"],["away","Archived"]],
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
  </form>`}var Hi,bS,K$=m(()=>{y();Sa();fe();j();xn();Ze();Oe();we();ye();ln();ue();z();Fi();wo();Hi=e=>`/c/${e}\
/note`;bS=({title:e,note:t,archived:n,etag:s,revision:o,revision_id:a,after:r})=>({title:e,note:t,archived:n,etag:s,
revision:o,revision_id:a,after:r})});var Z$={};ie(Z$,{show:()=>_S});async function _S(e){let{code:t}=e.params;if(!$e(t).whole)return ke(e,Be(t));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{e.title(`${n.title||B(t)}: to resolve`),
e.render(vS(n,s,c))},a=async d=>{if(!d||s.sending)return;let u=[n?.etag,s.proposal?.id].join();n=d,[s.proposal]=
n.proposals;let{changes:h={},before:f={}}=s.proposal??{};s.rows=Rs(h,f,n),s.mine=!!(s.proposal&&await Da(s.proposal.
id).catch(()=>{})),u!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),e.ready()},r=async()=>a(await Vl(t).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let d=await Tt(n,du(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Resolved"});q(Pi(d.where)),s.sending=!1,await r(),W()}catch(d){Object.assign(
s,{sending:!1,fault:X(d)}),o()}},choose:(d,u)=>{s.chosen[d]=u,o()},all:d=>{for(let{name:u}of s.rows)s.chosen[u]=
d;o()}};document.addEventListener("sync",r,{signal:e.signal}),await Ht(e,async d=>a(await Vl(t).catch(()=>{})??
d))}function vS(e,t,n){return i`<article class="resolve" data-test="resolve-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${B(e.code)}</a></p>
      <h1>${t.proposal?"Two changes met":"Nothing to resolve"} <small>${e.title}</small></h1>
    </header>
    ${t.proposal?kS(e,t,n):i`<p data-test="resolved">
            Every change of this card is resolved. Both sides are in its
            <a href="/c/${e.code}/history">history</a>.
          </p>`}
  </article>`}function kS(e,{proposal:t,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:u})=>!o[u]).
length,d=s?"Yours":t.by?`By ${t.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":t.by?`${t.by} changed`:"Somebody changed"} this card
      (${Vs(t)}) while it was changed in the shop (revision ${e.revision},
      ${de(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}). Choose what holds. Both
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
            ${F$(n,o,d,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
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
    </div>`}var Y$=m(()=>{y();j();Bs();fe();xn();Ze();Pe();ye();ln();wo();xd();Ve()});function X$(e,t){let{plan:n}=e,s=CS(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${SS(e,t)}
    <figure class="strip ${qe(n)?"of-box":""}">
      <figcaption>
        Blank ${ji(n.blank.length_mm)} × ${ji(n.blank.width_mm)},
        ${$(Io(n.blank.mass_kg))}.
        ${qe(n)?xS(n):"Bend lines from the left end."}
      </figcaption>
      ${vs(n.blank,qe(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${TS(n)} ${MS(e,s)} ${BS(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function xS({blank:e}){let t=({bend:a})=>{let r=e.bend_lines.find(l=>l.bend===a);return`${a} ${U(
r.at_mm)}`},n=a=>e.lines.filter(r=>a.includes(r.side)).map(t).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,Cc(e),"Inside up."].filter(
Boolean).join(" ")}function SS(e,t){let{part:n,plan:s}=e;return i`<header>
    <div>
      <h2>${e.title}</h2>
      <p class="big-code" data-test="sheet-code">${e.display_code}</p>
      <p>
        <b
          >${t},
          ${ji(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:p}</b
        >, ${qe(s)?`box ${fs(s.folded)}`:i`bend length ${ji(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${e.revision}, ${as(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}.
      </p>
      ${e.note?i`<p class="note">${e.note}</p>`:p}
    </div>
    ${s.section?ft({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):p}
    <img
      class="qr"
      src="/api/v1/cards/${e.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function TS(e){let t=n=>{let s=Pc(n,e.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:p};
return e.tools.length?i`<table class="fetch">
    ${yt("Fetch","Name","From","Pieces","Steps")}
    <tbody>
      ${e.tools.map(n=>i`<tr>
            <th scope="row">${n.kind} ${n.code}</th>
            <td>${n.name}${t(n)}</td>
            <td>${Ec(n)}</td>
            <td>${Nc(n)||"–"}</td>
            <td>${n.steps.length===e.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function MS(e,t){let n=e.part.flats_mm.length;return i`<table class="paper-steps">
    ${yt("Step","In the tools","Gauge","Set","Sheet","Watch","Result")}
    <tbody>
      ${e.plan.steps.map(s=>OS(e,s,t.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function OS(e,t,n,s){let o=pt(e,t);return i`<tr data-test="sheet-step-${t.number}">
    <th scope="row">
      <span class="number">${t.number}</span> bend ${t.bend} ${t.side??""}
      ${t.direction}${t.operation&&t.operation!=="bend"?i`<br />${t.operation}`:p}
    </th>
    <td class="picture">
      ${LS(e.plan,t)}${t.drawing?Bi(t):"no drawing"}${ES(t,e.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(o.gauge_x_mm).text}</b><br />R
      <b>${w(t.gauge_r_mm).text}</b>${NS(t)}
    </td>
    <td class="figures-cell">
      ${WS(t,o)}<br />
      <span class="small"
        >${AS(t)}${DS(o)?i`<br />from a first piece`:p}</span
      >
    </td>
    <td class="move">
      ${Qs(t)}
      <span class="small"
        >${t.inside_face==="up"?"Top":"Bottom"} face
        up${t.gauged_end?`, ${ua(t,s)} to the gauge`:""}.</span
      >${Wt(t,{short:!0})}
    </td>
    <td>${PS(n)}</td>
    <td class="pen">
      <span
        >${t.included_angle_deg?le(M(t.included_angle_deg)):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${Mh(o.firstHit)}</span>`:p}</span
      >
    </td>
  </tr>`}function AS(e){let t=Er(e);return t===p?p:i`<span data-test="sheet-force">allow for ${t}</span>`}function LS(e,t){
let n=Qr(e,t);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${t.punch}${t.punch_turned?" reversed":""} over ${t.die}
      </div>`:p}function ES({segments_mm:e,punch:t,die:n},s){return e?[["punch",t],["die",n]].map(([a,r])=>{let l=s.
find(d=>d.kind===a&&d.code===r)?.segments_mm??[],c=e[a]??[];return!c.length||c.length===l.length?p:i`<div class="pieces" data-test="own-pieces">
      ${a} ${c.map(U).join(" + ")} only
    </div>`}):p}function NS({hits:e}){return e?i`<br /><span class="small"
          >${e.count} bumps, ${w(e.pitch_mm,{digits:2}).text} apart</span
        >`:p}function PS(e){return Sd.filter(t=>t!=="note").map(t=>({level:t,letters:e.filter(n=>n.level===t).
map(({letter:n})=>n)})).filter(({letters:t})=>t.length).map(({level:t,letters:n})=>i`<div class="mark">${S(t)} <b>${n.
join(" ")}</b></div>`)}function CS(e){let t=new Map;for(let n of Sd)for(let s of e.filter(o=>Le(o)===n)){let o=`${n}\
 ${s.template} ${os(s)}`,a=t.get(o)??{letter:RS(t.size),level:n,checks:[],steps:[]};a.checks.push(s),a.steps.push(
...s.steps??(s.step?[s.step]:[])),t.set(o,a)}return[...t.values()]}function BS(e){return i`<div class="remarks" data-test="sheet-remarks">
    ${Sd.map(t=>{let n=e.filter(s=>s.level===t);return n.length?i`<section data-level=${t}>
        <h3>${S(t)}</h3>
        <ul>
          ${n.map(({letter:s,checks:o,steps:a})=>i`<li>
                <b>${s}</b>
                ${a.length?i`<b>Step ${a.join(", ")}.</b> `:p}${IS(o)}
              </li>`)}
        </ul>
      </section>`:p})}
  </div>`}function IS(e){return`${e[0].template} ${os(e[0])}`.replace(/\{(\w+)\}/g,(t,n)=>[...new Set(e.map(({
numbers:s})=>le(qt(n,s[n]))))].join(" / ")).trim()}function WS(e,{set_angle_deg:t,punch_depth_mm:n,firstHit:s}){
if(t===null&&e.die)return i`<b>no setting</b>`;let o=s?i` <span class="small" data-test="sheet-first">first hit</span>`:
p;return i`<b>${$(M(t))}</b>${o}<br />depth <b>${w(n,{digits:2}).text}</b>`}var ji,Sd,RS,DS,J$=m(()=>{y();Js();
Cn();ht();fd();He();L();wt();G();ds();eo();Ln();ei();rn();Ve();fo();ji=e=>$({text:U(e),unit:N()});Sd=js.filter(
e=>e!=="ok");RS=e=>String.fromCharCode(97+e%26)+(e<26?"":String(Math.floor(e/26)+1));DS=e=>e.fromTrial&&e.set_angle_deg!==
null});function To(e){return Q({name:"paper",label:"Paper",value:P().paper,options:[["A4","A4"],["Letter","Letter"]],
change(t){Xe({paper:t==="Letter"?"Letter":"A4"}),e()}})}function Mo(e="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${e}
  </button>`}function Ui(e,{lying:t=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${P().paper.toLowerCase()} ${t?"lying":"upright"}" data-test="sheet">
      ${e}
    </div>
  </div>`}var Vi=m(()=>{y();ae();z()});var Q$={};ie(Q$,{show:()=>FS});async function FS(e){let{code:t}=e.params;if(!$e(t).whole)return ke(e,Be(t));let n,
s=[],o=async()=>{s=(await vn())?.metals??s,n&&a()};function a(){e.title(`${n.title}, on paper`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${To(a)}${Mo("Print the card")}</div>
        ${Ui(X$(n,Fs(s,n.part.metal)),{about:"The card as it prints"})}`)}xe(()=>n&&a(),e.signal),document.addEventListener(
"sync",o,{signal:e.signal}),await o(),await Ht(e,r=>{n=r,a(),e.ready()})}var eb=m(()=>{y();fe();be();ae();ln();
J$();Vi()});var nb={};ie(nb,{show:()=>HS});async function HS(e){let{code:t}=e.params;if(!$e(t).whole)return ke(e,Be(t));let n=P().
units,s=tb[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){e.title(`Label of ${o.title}`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${Q({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${tb.map(l=>jS(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${ce("/labels",i`For office paper, lay them out <a href="/labels?codes=${t}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${Gi(t,s.size,n,"svg")}
          alt=""
          hidden />`)}await Ht(e,l=>{o=l,r(),e.ready()})}function jS(e,{size:t,words:n,print:s},o,a){let r=`la\
bel-${e.code}-${t}`;return i`<section class="panel label-panel" data-test="label-${t}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${Gi(e.code,t,o,"svg")}
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
        href=${Gi(e.code,t,o,"svg")}
        data-test="svg-${t}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${Gi(e.code,t,o,"png")}
        data-test="png-${t}"
        >PNG</a
      >
    </div>
  </section>`}var tb,Gi,sb=m(()=>{y();fe();ae();ln();z();ue();tb=[{size:"50x25",words:"50 × 25 mm, for a bin",
print:"small"},{size:"100x50",words:"100 × 50 mm, for a shelf or a door",print:"large"}];Gi=(e,t,n,s)=>`/api/\
v1/cards/${e}/label.${s}?size=${t}&units=${n}`});var ob={};ie(ob,{show:()=>VS});async function VS(e){e.title("Labels on a sheet"),e.render(Ce("Fetching the car\
ds…"));let t=(await zS(e.signal)).filter(b=>!b.archived);if(!t.length)return e.render(Te("No cards yet",R("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),e.ready();let n=new Set((e.query.
get("codes")??"").split(",").filter(b=>t.some(_=>_.code===b))),s="50x25",o=P().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=b=>new URLSearchParams({codes:[...n].join(","),size:s,paper:P().paper,units:o,skip:a.trim()||"0",page:String(
b)}),d=(b,_)=>`/api/v1/labels/sheet.${b}?${c(_)}`;async function u(){let b=String(c(1));if(!n.size)l={key:b,pages:[],
wrong:""};else try{let{body:_}=await O("GET",`/labels/sheet.json?${c(1)}`,{signal:e.signal});l={key:b,pages:Array.
from({length:_.pages},(C,D)=>D+1),wrong:""}}catch(_){l={key:b,pages:[],wrong:X(_)}}b===String(c(1))&&g()}let h=b=>{
b(),g(),u()},f=b=>h(()=>n.has(b)?n.delete(b):n.add(b));function g(){let b=t.filter(_=>`${_.code} ${_.title}`.toLowerCase().
includes(r.trim().toLowerCase()));e.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${t.length}</span>
              </h2>
              ${t.length>8?A({name:"find",label:"Find",value:r,change:_=>{r=_,g()}}):p}
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${()=>h(()=>b.forEach(_=>n.add(_.code)))}>
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
                ${b.map(_=>i`<li>
                      <label>
                        <input
                          type="checkbox"
                          data-test="pick-${_.code}"
                          .checked=${n.has(_.code)}
                          @change=${()=>f(_.code)} />
                        <span>${_.title}</span> <span class="soft">${_.code}</span></label
                      >
                    </li>`)}
              </ul>
            </section>
            <section class="panel">
              <h2>How</h2>
              ${Q({name:"size",label:"Label size",value:s,options:US,change:_=>h(()=>s=_)})}
              ${To(()=>h(()=>{}))}
              ${Q({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:_=>h(()=>o=
_==="inch"?"inch":"mm")})}
              ${A({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:_=>h(()=>a=_)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${Mo(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(_=>GS(_,l.pages.length,d))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}xe(g,e.signal),g(),await u(),e.ready()}function GS(e,t,n){let s=`labels-${e}`;return i`<figure class="label-sheet ${P().
paper.toLowerCase()}">
    <img src=${n("svg",e)} alt="Sheet ${e} of ${t} with labels" data-test="sheet-${e}" />
    <figcaption class="screen-only">
      <span>Sheet ${e} of ${t}, ${P().paper}. Print at 100 %, without fitting to the page.</span>
      <div class="buttons">
        <a class="button" download="${s}.svg" href=${n("svg",e)} data-test="sheet-svg-${e}"
          >SVG</a
        >
        <a class="button" download="${s}.png" href=${n("png",e)} data-test="sheet-png-${e}"
          >PNG</a
        >
      </div>
    </figcaption>
  </figure>`}async function zS(e){try{let t=[];for(;;){let{body:n}=await O("GET",`/cards?limit=100&offset=${t.
length}`,{signal:e});if(t.push(...n.cards),t.length>=n.total||!n.cards.length)return t}}catch(t){let n=await hn().
catch(()=>[]);if(e.aborted||!n.length)throw t;return n}}var US,ab=m(()=>{y();j();ae();Fe();z();ue();Vi();We();
US=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function rb(e){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${e.metal.name}</h2>
      <p>
        ${e.press?.name??"No press entered"}${e.press?i`, ${$(me(e.press.force_kn))}`:p}.
        Checked against ratings at a bend length of ${$(w(e.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${as(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${N()}</span></th>
          ${e.dies.map(t=>i`<th scope="col" data-test="die-${t.code}">
                V ${U(t.v_opening_mm)}<span class="sub">${t.code}</span>
                <span class="sub"
                  >${t.rating_kn_per_m===null?"rating ?":$(Ie(t.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${e.rows.map(t=>i`<tr>
              <th scope="row">${U(t.thickness_mm)}<span class="sub">${t.gauge??""}</span></th>
              ${t.cells.map(qS)}
            </tr>`)}
      </tbody>
    </table>
    ${ZS()}
    <ul class="chart-words">
      ${e.words.map(t=>i`<li>${t}</li>`)}
    </ul>
  </article>`}function qS(e){return e.usable?i`<td
    class="cell ${e.level}"
    data-level=${e.level}
    data-die=${e.die}
    title=${e.why}>
    <span class="first"
      ><span class="force">${Ge(e,"force_kn_per_m").text}</span>${e.level==="stop"?p:i`<span class="expected">${On(
e,"force_kn_per_m").text}</span>`}${e.level==="ok"?p:S(e.level,KS(e))}</span
    >
    ${e.level==="stop"?p:i`<span class="rest"
            >${w(e.min_flange_mm).text} · R ${w(e.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${e.die} title=${e.why}>
      <span aria-hidden="true">–</span><span class="unseen">${e.why}</span>
    </td>`}function KS({level:e,limit:t,share_percent:n}){return e==="unknown"?"rating?":`${t??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(e==="stop"?"over":"near")}function ZS(){let e=Ie(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${e}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${S("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${S("caution","die 85 %")} over 80 % of a rating</li>
    <li>${S("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var ib=m(()=>{y();ht();L();wt();G();Ve()});var lb={};ie(lb,{show:()=>YS});async function YS(e){e.title("Wall chart"),e.render(Ce("Working out the chart…"));
let t=(await he("metals",e.signal)).items;if(!t.length)return e.render(Te("No metals yet",i`A chart needs one. ${R(
re.metals,i`<a href="/shop/metals">Metals</a>`)}`)),e.ready();let n=e.query.get("metal")??t[0].code,s=e.query.
get("bend_length")??"",o=null,a=null,{ask:r}=tn(async(u,h)=>(await O("GET",`/chart?${l()}`,{signal:h,timeout:2e4})).
body,u=>{o=u.answer??o,a=u.error??null,d(),e.ready()},e.signal);function l(){let u=new URLSearchParams({metal:n});
return s.trim()&&u.set("bend_length_mm",ne(s)),u}function c(){let u=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${u}`),r(null),d()}function d(){e.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${J({name:"metal",label:"Metal",value:n,options:t.map(({code:u,name:h})=>[u,h]),change:u=>{n=u,c()}})}
          ${A({name:"bend_length",label:"Checked at a bend length of",value:s,unit:N(),keys:"decimal",placeholder:N()===
"mm"?"1000":"39.37",change:u=>{s=u,c()}})}
          ${To(d)} ${Mo("Print the chart")}
        </div>
        ${a?wn(a):p}
        ${o?Ui(rb(o),{lying:!0,about:"Wall chart as it prints"}):a?p:Ce("Working out the chart…")}`)}xe(d,e.
signal),r(null,{now:!0})}var cb=m(()=>{y();j();be();ae();L();ib();z();ue();Vi();We();ra()});function db(e,{fault:t,takeOut:n}){return i`<section class="panel" data-test="panel-press-screens">
    <h2>Press screens <span class="soft">${e.length}</span></h2>
    ${t?i`<p class="wrong" role="alert" data-test="press-screen-fault">${t}</p>`:p}
    ${e.length?i`<ul class="plain-list press-screen-list">
            ${e.map(s=>i`<li data-test="press-screen-row" data-name=${s.name}>
                  <span><b>${mt(s.name)}</b> ${XS(s)}</span>
                  ${R("press_screens.remove",i`<button
                      type="button"
                      class="button"
                      data-test="remove-press-screen"
                      aria-label="Take it out… ${mt(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      To add one, open the shop's address on it with <a href="/press-screen">/press-screen</a> at the end.
    </p>
  </section>`}var XS,pb=m(()=>{y();It();fe();ue();XS=({code:e})=>e?i`<a href="/c/${e}">${B(e)}</a>`:i`<span class="soft">empty</span>`});function ub(e){let t=e.map(({ring:o})=>ut([o])),n=Td-2*qi,s=Math.min(...t.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return e.map(({name:o,ring:a},r)=>JS(o,a,t[r],s))}function JS(e,t,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*qi),c=(Td-(o-n)*r)/2-n*r,d=h=>c+h*r,u=h=>qi+(a-h)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${Td} ${l}"
      role="img"
      aria-label="${e||"Outline"} to scale, ${zi(o-n)} wide, ${zi(a-s)} high"
      data-test="outline">
      ${QS(n,o,d(0),l)}
      <path
        class="tool"
        d=${Re(t)}
        transform="translate(${c} ${qi+a*r}) scale(${r})" />
      ${e2(d(n),d(o),l-16,zi(o-n))}
      ${t2(u(s),u(a),d(o)+16,zi(a-s))}
    </svg>
    ${e?i`<figcaption>${e}</figcaption>`:p}
  </figure>`}function QS(e,t,n,s){return e>0||t<0?p:v`<path class="centre" d="M${n} 6V${s-6}"/>`}function e2(e,t,n,s){
return v`<path class="dimension" d="M${e} ${n}H${t}M${e} ${n-5}v10M${t} ${n-5}v10"/>
    <text class="measure" x=${(e+t)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function t2(e,t,n,s){
let o=(e+t)/2;return v`<path class="dimension" d="M${n} ${e}V${t}M${n-5} ${e}h10M${n-5} ${t}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function Oo(e,t){return e?.length?i`<svg class="small-outline" viewBox=${Iu(
t,2)} aria-hidden="true">
    <path class="tool" d=${Re(e)} />
  </svg>`:p}function Ao(e){let t=e.filter(n=>n?.length);return t.length?ut(t):[0,0,1,1]}var Td,qi,zi,Oa=m(()=>{
y();L();Tn();ht();Td=360,qi=50;zi=e=>$({text:U(e),unit:N()})});function hb(e,t){let n=Ao(t.map(s=>s.outline_mm));return i`<ul class="rack">
    ${t.map(s=>i`<li>
          <a
            href="/shop/${e}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${Oo(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:p}</span
            >
          </a>
        </li>`)}
  </ul>`}var mb=m(()=>{y();Oa()});var fb={};ie(fb,{show:()=>n2});async function n2(e){e.title("Shop");let[{press:t,kept:n},s,o,a,r,l]=await Promise.
all([cr(e.signal),he("punches",e.signal),he("dies",e.signal),he("holders",e.signal),he("metals",e.signal),an(e.
signal).catch(()=>null)]),c={benches:l,fault:""};async function d(h){let f=ms(h.name);if(confirm(`Take ${f} ou\
t of the shop? Its card stays as it is. A display that still shows it asks which press screen it is.`)){c.fault=
"";try{await im(h.name)}catch(g){c.fault=X(g)}c.benches=await an(e.signal).catch(()=>c.benches),u()}}let u=()=>e.
render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${R(re.press,"Changing anything needs the shop's server.")}
              </p>`:p}
        <div class="shop-grid">
          ${o2(t)} ${Md("punches",s.items)} ${Md("dies",o.items)}
          ${Md("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${ce("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(s2)}
            </ul>
          </section>
          ${c.benches?db(c.benches,{...c,takeOut:d}):p} ${a2()}
        </div>`);u(),e.ready()}function o2(e){return e?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${e.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${$(me(e.force_kn))}</dd>
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
      <p>${S("unknown","No press yet")}</p>
      <p>Without its figures nothing can be checked against it.</p>
      ${R(re.press,i`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`}function Md(e,t){let n=t.filter(o=>o.rating_kn_per_m===null).length,s=t.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${e}">
    <h2><a href="/shop/${e}">${_n[e].title}</a> <span class="soft">${t.length}</span></h2>
    ${t.length?hb(e,t):i`<p>None yet. ${R(re[e],i`<a href="/shop/${e}/+">Add the first</a>`)}</p>`}
    ${n||s?i`<p class="rack-flags">
            ${n?S("unknown",`${n} without a rating`):p}
            ${s?S("caution",`${s} worn or damaged`):p}
          </p>`:p}
  </section>`}function a2(){let e=ce("/backups",i`<a class="button wide" href="/backups" data-test="to-backups">Backups and export</a>`);
return ce("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${e===p?"":", backups, crew"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${e}
        ${ce("/crew",i`<a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>`)}
      </div>
    </section>`)}var s2,gb=m(()=>{y();j();It();be();L();pb();G();ue();mb();s2=({code:e,name:t})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(e)}">${t}</a>
    ${ce("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(e)}" data-test="learned-${e}"
        ><span class="wide-only">Measured&nbsp;</span>springback</a
      >`)}
  </li>`});function bb(e,{took:t,show:n,signal:s}){let o={file:"",busy:!1,choices:{...$b},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(u){return a=u,Object.assign(o,{file:u.name,choices:{...$b},layers:[]}),
d()}function c(u,h){return o.choices={...o.choices,[u]:h},o.choices.origin==="point"&&!o.choices.point?n():d()}
async function d(){if(!a)return;let u=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>r2)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:h}=await Pa(
`/outlines/dxf?${i2(o.choices,e)}`,a,"image/vnd.dxf",s);if(u!==r)return;Object.assign(o,{answer:h,layers:h.layers}),
t(h)}catch(h){if(u!==r||s.aborted)return;if(o.wrong=X(h),h instanceof E&&h.outline){let{code:f,layers:g}=h.outline;
Object.assign(o,{fault:h.outline,code:f,layers:g.length?g:o.layers})}}o.busy=!1,n()}return{state:o,choose:l,set:c}}
function i2(e,t){let n=Object.entries(e).filter(([s,o])=>o&&(s!=="point"||e.origin==="point"));return new URLSearchParams(
[["kind",t],...n])}var $b,r2,wb=m(()=>{j();$b={units:"",layer:"",origin:"rule",point:"",turn_deg:"0",mirror:"n\
o"},r2=2e6});async function Lo(e,t){let n=await e.read(t),s=e.drafts?.begun()??null,o=s?s.kept:n,a={kept:o,draft:{...e.toDraft(
o??e.blank),...s?.draft},restored:s!==null,wrong:{},others:[],clash:null,busy:!1},r=()=>e.fromDraft(a.draft,a.
kept??{}),l=()=>e.draw(a);function c(_,C){a.draft={...a.draft,[_]:C},delete a.wrong[_],nt(()=>"Leave without s\
aving what you typed?"),e.drafts?.keep(a),e.preview?.(r()),l()}async function d(_){Object.assign(a,{busy:!0,wrong:{},
others:[],clash:null}),l();try{await e.write(_),e.drafts?.clear(),nt(null),e.done(_);return}catch(C){await u(C)}
a.busy=!1,l(),Lt(a.wrong)}async function u(_){if(_ instanceof E&&_.status===412){let C=a.kept;a.kept=await e.read(
t);let D=a.kept?e.toDraft(a.kept):{},k=Nu(C,a.kept)?"others changed":a.kept?"this changed":"taken out";a.clash=
{how:k,differences:k==="this changed"?vi(a.draft,D,e.boxes):[]}}else if(_ instanceof E&&Object.keys(_.errors).
length){let{byName:C,others:D}=bh(_.errors,e.boxes.map(({name:k})=>k));Object.assign(a,{wrong:C,others:D})}else
a.others=[`Not saved: ${X(_)} What you typed is still here.`]}function h(){Object.assign(a,{draft:e.toDraft(a.
kept??e.blank),clash:null,restored:!1}),nt(null),e.drafts?.clear(),e.preview?.(r()),l()}let f=new Map;function g(_,C){
let D=f.get(C)??bb(_,{signal:t,show:l,took:k=>b(C,k)});return f.set(C,D),D}function b(_,{points_mm:C,height_mm:D}){
_==="points_mm"&&a.draft.height_mm===""&&c("height_mm",Y(D)),c(_,fh(C))}return s&&nt(()=>"Leave without saving\
 what you typed?"),e.preview?.(r()),{reader:g,state:a,change:c,takeTheirs:h,show:l,save:()=>d(r()),takeOut:()=>d(
null)}}var Ki=m(()=>{j();be();Ct();wb();Oe();L();$o();z()});function Yi(e,t,n){let s=[],o={},{ask:a}=tn(async(r,l)=>{let{body:c}=await O("POST","/outline",{body:{kind:e,...d2(
e,r)},signal:l});return c},({question:r,answer:l,error:c})=>{l&&([s,o]=[yb(l,r),l.assumed_mm??{}]);let d=c instanceof
E&&c.outline?.lines_mm.some(h=>h.length>1)?c.outline:null,u=c?p2(c):[];t({parts:s,checks:c2(l),wrong:u,fault:d,
assumed:o})},n);return r=>{l2(e,r)&&a(r)}}function l2(e,t){let n={punch:"punches",die:"dies",holder:"holders",
press:"press"}[e],s=t.assumed??[];return Pt(n).filter(({name:o,type:a,blank:r,when:l})=>["length","number"].includes(
a)&&r===void 0&&!s.includes(o)&&(!l||l(t))).every(({name:o})=>t[o]!==void 0)&&(t.shape!=="multi_v"||t.openings.
every(o=>o.v_opening_mm&&o.angle_deg&&(o.shoulder_radius_mm||s.includes("shoulder_radius_mm"))))}function yb({
outline_mm:e,ram:t,bed:n},s){let o=a=>[`${a}_width_mm`,`${a}_height_mm`].some(r=>s[r]===null);return[{name:"",
ring:e},{name:o("ram")?"Ram, usual size assumed":"Ram",ring:t},{name:o("bed")?"Bed, usual size assumed":"Bed",
ring:n}].filter(({ring:a})=>a?.length)}function d2(e,t){return e==="press"?es(t):{...es(t),code:t.code||"new"}}
function p2(e){if(!(e instanceof E))return["The drawing waits: the shop's server does not answer."];let t=[...new Set(
Object.values(e.errors).flat())];return t.length?t:[e.message]}var Zi,c2,Od=m(()=>{j();be();Ct();ra();Zi=e=>({
parts:yb({...e,...e?.outlines_mm},{...e}),checks:[],wrong:[],fault:null,assumed:{}});c2=e=>(e?.checks??[]).filter(
({code:t})=>!/(rating-unknown|no-segments)$/.test(t))});function Aa({state:e,change:t},n){let s=n.taken(e.draft.code)?["This code is in use already."]:e.wrong.code;return A(
{name:"code",label:"Code",value:e.draft.code,change:o=>t("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function Xi({state:e,takeOut:t},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return K(re[n.kind])?i`<div role="alert">
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
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var Eo,
Ji=m(()=>{y();be();we();z();Eo=(e,t)=>K(e)?t:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${t}</fieldset>`});function vb(e,t){if(!e?.systematic)return p;let n=e.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
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
  </section>`}var _b,kb=m(()=>{y();j();L();_b=e=>O("GET","/press/gauge",{signal:e}).then(({body:t})=>t,()=>null)});function Mb(e,{metals:t,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=e,d=f=>g=>{r[f]=g,delete l[f]},
u=(f,g)=>({name:f,label:g,value:r[f]??"",wrong:l[f],change:d(f)}),h=(f,g,b)=>i`<div class="broad">${J({...u(f,
g),options:[["","Choose"],...b]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one is, the more bed and ram give way.
    </p>
    <form novalidate @submit=${_e(()=>h2(e,o))}>
      <div class="fields">
        ${h("metal","Metal",t)} ${h("die","Die",n)} ${h("punch","Punch",s)}
        ${Tb.map(([f,g,b])=>A({...u(f,g),unit:N(),keys:"decimal",hint:b}))}
        ${Sb.map(([f,g])=>A({...u(f,g),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${e.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${e.busy}>Work it out</button>
      </div>
    </form>
    ${c?u2(c,a):p}
  </details>`}function u2(e,t){let n=s=>$(w(s,{digits:2}));return i`<div data-test="strips-found" role="status">
    <p>
      <b>About ${n(e.deflection_mm)}</b> in the middle at full force over the whole bed, between
      ${n(e.deflection_mm_low)} and ${n(e.deflection_mm_high)}: the middle strip is
      ${$(M(e.middle_open_deg))} more open.
    </p>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="strips-take"
        @click=${()=>t(Y(e.deflection_mm))}>
        Put it in the box
      </button>
    </div>
  </div>`}async function h2(e,t){if(!e.busy){Object.assign(e,{busy:!0,wrong:{},general:"",found:null}),t();try{
let{body:n}=await O("POST","/press/strip-test",{body:m2(e.typed)});e.found=n}catch(n){e.wrong=n instanceof E?n.
errors:{},e.general=X(n)}e.busy=!1,t()}}function m2(e){let t={metal:e.metal,die:e.die,punch:e.punch};for(let[n]of Tb)
t[n]=ne(e[n]??"");for(let[n]of Sb)t[n]=ka(e[n]??"");return t}var xb,Sb,Tb,Ob=m(()=>{y();j();Rn();L();z();xb=()=>({
typed:{},wrong:{},general:"",busy:!1,found:null}),Sb=[["left_deg","Left"],["middle_deg","Middle"],["right_deg",
"Right"]],Tb=[["thickness_mm","Thickness of the strips",""],["strip_length_mm","Length of the bend","All three\
 alike, at most a quarter of the bed."],["end_mm","Outer strips from the bed’s end","To the middle of the st\
rip, left and right alike."]]});function Qi({code:e,lines_mm:t,edges:n,marks_mm:s}){let o=ut([...t,s]),a=ns(o,Ad-2*Ab,Ld-2*Ab),[r,l]=a([o[2],o[1]]),
c=[(Ad-r)/2,(Ld-l)/2],d=f=>{let[g,b]=a(f);return[g+c[0],-(b+c[1])]},u=!["open","branching"].includes(e),h=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${Ad} ${Ld}"
    role="img"
    aria-label="The outline as far as it was understood, ${h}"
    data-test="outline-fault">
    ${t.map(f=>v`<path class="fault-line" d=${Jo((u?[...f,f[0]]:f).map(d))}/>`)}
    ${n.map(f=>f2(t[0],f,d))} ${s.map(f=>g2(d(f)))}
  </svg>`}function f2(e,t,n){let[s,o]=[e[t-1],e[t%e.length]].map(n);return v`<path class="fault-edge" d=${Jo([
s,o])}/>
    ${Lb(s,t)}${Lb(o,t%e.length+1)}`}var Ad,Ld,Ab,Lb,g2,Ed=m(()=>{y();Tn();Ad=360,Ld=300,Ab=30;Lb=([e,t],n)=>v`<text class="fault-number" x=${e} y=${-t-
9} text-anchor="middle" font-size="19">${n}</text>`,g2=([e,t])=>v`<g class="fault-mark" data-test="fault-mark"><circle cx=${e} cy=${-t} r="10"/>
    <path d="M${e-14} ${-t}h28M${e} ${-t-14}v28"/></g>`});var Eb,Nb,Ts,No,jt,Nd,Pb=m(()=>{y();Eb={bed_length_mm:1,between_frames_mm:2,open_height_mm:3,stroke_mm:4,throat_mm:5,
ram_width_mm:6,ram_height_mm:7,bed_width_mm:8,bed_height_mm:9,gauge_x_min_mm:10,gauge_x_max_mm:10,gauge_r_min_mm:11,
gauge_r_max_mm:11,finger_height_mm:12,finger_depth_mm:13},Nb=(e,t,n)=>v`<circle class="mark" cx=${e} cy=${t} r="13"/>
    <text class="mark-number" x=${e} y=${t+6} text-anchor="middle" font-size="16">${n}</text>`,Ts=(e,t,n,s,o=(e+
t)/2)=>v`<path class="dimension" d="M${e} ${n}H${t}M${e} ${n-6}v12M${t} ${n-6}v12"/>
    ${Nb(o,n,s)}`,No=(e,t,n,s,o=(t+n)/2)=>v`<path class="dimension" d="M${e} ${t}V${n}M${e-6} ${t}h12M${e-6} ${n}h12"/>
    ${Nb(e,o,s)}`,jt=e=>v`<path class="tool" d=${e} />`,Nd=()=>i`<div class="press-sizes" data-test="press-sizes">
    <figure>
      <svg class="drawing" viewBox="0 0 360 300" role="img" aria-label="The press from the front">
        ${jt("M40 20H70V280H40Z")}${jt("M290 20H320V280H290Z")}${jt("M55 60H305V120H55Z")}
        ${jt("M30 200H330V260H30Z")} ${Ts(70,290,160,2)} ${Ts(30,330,285,1)}
      </svg>
      <figcaption>From the front</figcaption>
    </figure>
    <figure>
      <svg class="drawing" viewBox="0 0 360 300" role="img" aria-label="The press from the side">
        ${jt("M120 12H345V288H120V262H285V42H120Z")} ${jt("M150 42H190V110H150Z")}
        ${jt("M150 190H190V262H150Z")} ${jt("M160 110H180V125L170 140L160 125Z")}
        ${jt("M158 170H165L170 176L175 170H182V190H158Z")} ${jt("M225 158H262V168H225Z")}
        <path class="centre" d="M170 20V282" />
        ${No(110,110,190,3)} ${No(70,110,150,4)} ${Ts(170,285,72,5,250)}
        ${Ts(150,190,28,6,206)} ${No(135,42,110,7,76)} ${Ts(150,190,275,8,206)}
        ${No(135,190,262,9,226)} ${Ts(170,225,218,10)} ${No(205,158,170,11,138)}
        ${No(272,158,168,12,190)} ${Ts(225,262,140,13,243)}
      </svg>
      <figcaption>From the side; the back gauge stands on the right</figcaption>
    </figure>
  </div>`});function Cb(e,{state:t,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:d,layers:u}=t,h=`dx\
f-${e}`,f=(g,b,_)=>J({name:`${h}-${g}`,label:b,value:d[g],options:_,change:C=>s(g,C)});return i`<div class="dxf broad" data-test=${h}>
    <label class="button dxf-file" for="${h}-file"
      >${o?"Read another DXF file":"Read a DXF file"}
      <input
        id="${h}-file"
        data-test="${h}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${({target:g})=>{g.files?.[0]&&n(g.files[0]),g.value=""}} />
    </label>
    ${o?i`<div role="status">
              ${a?i`<p class="hint">Reading ${o}…</p>`:p}
              ${r?i`<p data-test="${h}-read">
                      <b>${o}</b>, read in ${r.units}: ${Pd(r.width_mm)} wide,
                      ${Pd(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${Pd(r.within_mm)}. ${r.rule}${_2(r)}
                    </p>`:p}
              ${l?i`<p class="wrong" data-test="${h}-wrong">${l}</p>`:p}
            </div>
            ${c?.lines_mm.length?Qi(c):p}
            <div class="fields">
              ${f("units","Drawn in",$2)}
              ${u.length>1||d.layer?f("layer","Layer",[["","all"],...u.map(g=>[g,g])]):p}
              ${f("origin","0, 0 is",b2)}
              ${d.origin==="point"?A({name:`${h}-point`,label:"Point number",value:d.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:g=>s("point",g)}):p}
              ${f("turn_deg","Turned",w2)} ${f("mirror","Mirrored",y2)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function _2({left_out:e}){return e.length?` Left out: ${e.map(({kind:t,count:n})=>`${n} ${t}`).join(
", ")}.`:""}var $2,b2,w2,y2,Pd,Rb=m(()=>{y();Ed();L();z();$2=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],b2=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
w2=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],y2=[["no","no"],
["yes","front to back"]];Pd=e=>$(w(e,{digits:2}))});function Bb({draft:e,change:t,wrong:n}){let s=e.openings??"",o=Et(s);return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((r,l)=>v2(r,l,{rows:o,wrong:n,up:e.up||"1",set:c=>t("openings",ih(s,l,c)),raise:()=>t("up",String(
l+1)),drop:()=>a(l)}))}
    ${(n.openings??[]).map(r=>i`<p class="wrong" data-test="wrong-openings">${r}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>t("openings",lh(s))}>
      Add a V
    </button>
  </div>`;function a(r){let l=Number(e.up||"1");t("openings",ch(s,r)),(l>r+1||l>=o.length)&&t("up",String(Math.
max(l-1,1)))}}function v2(e,t,{rows:n,wrong:s,up:o,set:a,raise:r,drop:l}){let[c,d]=[t+1,`openings.${t}`],u=b=>s[`${d}\
.${b}`]??[],h=Object.keys(oa).map(b=>`${d}.${b}`),f=Object.entries(s).filter(([b])=>(b===d||b.startsWith(`${d}\
.`))&&!h.includes(b)).flatMap(([,b])=>b),g=(b,_,C,D="")=>A({name:`opening-${c}-${oa[b]}`,label:_,unit:C,placeholder:D,
value:e[oa[b]],keys:b==="code"?"text":"decimal",change:k=>a({[oa[b]]:k}),wrong:u(b)});return i`<fieldset class="opening" data-test="opening-${c}">
    <legend>V ${c}</legend>
    <div class="opening-head">
      <label class="tick"
        ><input
          type="radio"
          name="up"
          value=${c}
          data-test="up-${c}"
          .checked=${Ae(o===String(c))}
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
      ${g("v_opening_mm","V opening",N())} ${g("angle_deg","Angle","°")}
      ${g("shoulder_radius_mm","Shoulder radius",N())}
      ${J({name:`opening-${c}-face`,label:"Face",value:e.face||"top",options:rh,change:b=>a({face:b}),wrong:u(
"face")})}
      ${g("centre_mm","Off the middle",N(),"0")}
      ${g("rating_kn_per_m","Rating",rt().unit,"as the block")}
      ${g("code","Code","","automatic")}
    </div>
    ${f.map(b=>i`<p class="wrong">${b}</p>`)}
  </fieldset>`}var Ib=m(()=>{y();yn();_r();L();z()});function el({kind:e,draft:t,change:n,wrong:s,preview:o,options:a={},first:r=p,reader:l,groups:c=qs[e]}){return i`<div class="workbench">
    ${c.map((d,u)=>i`<section class="panel ${d.part}">
          <h2>${d.title}</h2>
          ${u===0?r:p} ${d.part==="outline"?Rd(o):p}
          <div class="fields">
            ${d.fields.filter(({when:h,hidden:f})=>!f&&(!h||h(t))).map(h=>h.type==="openings"?Bb({draft:t,change:n,
wrong:s}):k2(h,t[h.name]??"",f=>n(h.name,f),{wrong:s[h.name],options:a[h.name],assumed:o?.assumed[h.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function Rd(e){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${e?.fault?Qi(e.fault):e?.parts.length?i`<div class="outlines">${ub(e.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${e?.wrong.map(t=>i`<p class="wrong" data-test="outline-wrong">${t}</p>`)}
    ${e?Ue(e.checks,{quiet:!0}):p}
  </div>`}function k2(e,t,n,{wrong:s=[],options:o=e.options,assumed:a,reader:r}){let{name:l,label:c,type:d}=e;
if(d==="pick"||d==="yes"){let g=e.blank?[["",e.blank],...o??[]]:o??[];return Wb(e,J({name:l,label:c,value:t,options:g,
change:n,wrong:s}))}if(d==="points"||d==="note"){let g=e.dxf?Cb(l,r(e.dxf,l)):p;return x2(e,t,i`${g}${S2(e,t,n,
s)}`)}let u=Fb(e),h=["number","length","force","rating","speed"].includes(d)?"decimal":"text",f=A({name:l,label:c,
mark:Eb[l],value:t,change:n,wrong:s,unit:u,keys:h,hint:[Cd(a),T2(e,t)].filter(Boolean).join(" "),placeholder:e.
blank??(a===void 0?"":"assumed")});return d==="rating"?i`<div class="broad">
      ${f}${t.trim()?p:S("unknown",`${c} unknown`)}
    </div>`:Wb(e,f)}function x2({folded:e,label:t},n,s){return e?i`<details class="broad" ?open=${!!n}>
        <summary>${t}</summary>
        ${s}
      </details>`:s}function Fb({type:e,unit:t=""}){return e==="force"?$t().unit:e==="rating"?rt().unit:e==="s\
peed"?`${N()}/s`:["length","lengths","points"].includes(e)?N():t}function S2(e,t,n,s){let{name:o,label:a,hint:r,
type:l}=e;return ss({name:o,label:a,value:t,change:n,wrong:s,hint:r,unit:Fb(e),lines:l==="points"?7:2})}function T2({
type:e,hint:t="",counted_mm:n},s){let o=[t];return n!==void 0&&o.push(`Empty: ${le(qt("counted_mm",n))} is cou\
nted with (common practice).`),e==="rating"&&!s.trim()&&o.push(uh),(e==="force"||e==="rating")&&o.push(M2(e,s)),
e==="lengths"&&o.push(O2(s)),o.filter(Boolean).join(" ")}function M2(e,t){if(P().units==="inch")return"Short t\
ons, of 2000 lb; metric ones with a t.";let n=un(t,{unit:""}).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];if(!n)return"";
let s=Number(n)*Na;return`In metric tons: ${$(e==="force"?me(s):Ie(s))}.`}function O2(e){let t=e.split(/[,;\n]/).
filter(n=>n.trim()).length;return t?t===1?"1 piece.":`${t} pieces.`:""}function Hb(e,{kept:t,open:n}){let s=Db.
flatMap(({fields:o})=>o).filter(({name:o,blank:a,type:r})=>(a==="unknown"||r==="rating")&&!e.draft[o]?.trim()).
length;return i`${el({...e,kind:"press",groups:A2})}
    <details class="fold more-figures" data-test="more-figures" ?open=${n}>
      <summary>
        More figures${s?i` <span class="soft">(${s} not known)</span>`:p}
      </summary>
      <p>Each may stay unknown. An answer that depends on one says so and asks for it.</p>
      ${t?L2():Nd()} ${el({...e,kind:"press",groups:Db})}
    </details>`}var Cd,Wb,A2,Db,L2,tl=m(()=>{y();Ed();Pb();Oa();ae();oc();L();G();Rb();z();ot();Ib();Cd=e=>e===
void 0?"":`Counted with ${le(qt("assumed_mm",e))}, assumed.`;Wb=({broad:e,type:t},n)=>e||t==="lengths"?i`<div class="broad">${n}</div>`:
n;A2=qs.press.slice(0,1),Db=qs.press.slice(1);L2=()=>oe("Where each size is measured",Nd(),{test:"sketch",open:!1})});function jb(e,t){return i`<section class="panel" id="zero" data-test="zero">
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
  </section>`}var Ub=m(()=>{y()});var Vb={};ie(Vb,{show:()=>E2});async function E2(e){let t=K(re.press),s=(await he("holders",e.signal)).items.map(
({code:k,name:x})=>[k,`${k}, ${x}`]),o=async k=>(await he(k,e.signal)).items.flatMap($c).map(({code:x,name:T})=>[
x,T?`${x}, ${T}`:x]),a=xb(),[r,l,c,d]=t?await Promise.all([_b(e.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],u=null,h={before:null,after:null},f=null,g=await Lo({async read(k){let x=await(t?dr:cr)(k);return u=
x.etag,h.before=x.press?.depth_zeroed_at??null,x.press??void 0},async write(k){let x=await Eu(k,u);h.after=x.depth_zeroed_at},
blank:{},boxes:Pt("press"),toDraft:k=>Sr("press",k),fromDraft:(k,x)=>({...Tr("press",k,x),depth_zeroed_at:x?.depth_zeroed_at??
null,gauge_zeroed_at:x?.gauge_zeroed_at??null}),preview:t?Yi("press",k=>{f=k,g.show()},e.signal):void 0,drafts:{
begun(){let k=t?Bn(nl):null;return k?(u=k.etag,h.before=k.kept?.depth_zeroed_at??null,k):null},keep:({draft:k,
kept:x})=>In(nl,{draft:k,kept:x,etag:u}),clear:()=>dn(nl)},draw:()=>g&&D(),done(){q(h.after===h.before?"The pr\
ess is saved.":"The press is saved. Its error is measured anew."),se("/shop")}},e.signal);e.title("The press");
let b=Mn();t||(f=Zi(g.state.kept));let _=(...k)=>{let x=new Date().toISOString();for(let T of k)g.state.kept[T]=
x;g.save()},C=k=>{g.change("deflection_mm",k),Jn("deflection_mm")};function D(){let{state:k,change:x,save:T}=g;
e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${k.kept?.name??"The press"}</h1>
        ${t?i`<p>
                ${k.kept?"Take every figure from the press's own plate and manual.":"No press yet. Name, force\
 and bed length are enough, from its own plate."}
                What is not known may stay empty.
              </p>`:p}
        ${k.restored?So(nl):p}
        ${k.clash?go(k.clash,"press",{saveMine:T,takeTheirs:g.takeTheirs}):p}
        ${vb(r,()=>_("gauge_zeroed_at"))}
        <form novalidate @submit=${_e(T)}>
          ${Eo(re.press,Hb({draft:k.draft,change:x,wrong:k.wrong,preview:f,reader:g.reader,options:{holder:s}},
{kept:!!k.kept,open:!!k.kept&&b}))}
          <div role="alert">
            ${k.others.map(F=>i`<p class="wrong-line" data-test="not-saved">${F}</p>`)}
          </div>
          <div class="buttons">
            ${t?i`<button class="button next" data-test="save" ?disabled=${k.busy}>
                    ${k.busy?"Saving…":"Save the press"}
                  </button>`:p}
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>
        ${t&&k.kept?Mb(a,{metals:l,dies:c,punches:d},{draw:D,take:C}):p}
        ${t&&k.kept?jb(()=>_("depth_zeroed_at"),()=>_("depth_zeroed_at","gauge_zeroed_at")):p}`),document.querySelectorAll(
".workbench :is(.wrong, .fault)").forEach(Xn)}D(),e.ready()}var nl,Gb=m(()=>{y();be();Ct();Ki();Sa();Ze();Od();
we();Oe();Fi();$o();Ji();kb();us();Ob();tl();Ub();tt();ot();z();nl="/shop/press"});function qb(e,t,n,s){let{angles:o,wrong:a}=xa(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:d}=ls(
t),u={id:e,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:d,die:n.die,punch:n.punch,...o};u.set_angle_deg=
s.set.trim()?P2(s.set,a):n.set_angle_deg;for(let[h,f]of N2)s[h].trim()&&(u[f]=ne(s[h]));return s.lot.trim()&&(u.
lot=s.lot.trim()),s.note.trim()&&(u.note=s.note.trim()),P().name&&(u.by=P().name),{body:u,wrong:a}}function P2(e,t){
let{angles:n}=xa({...sl,one:e});return n.measured_deg===void 0&&(t.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var sl,N2,zb,Kb=m(()=>{Ar();Rn();ae();L();sl={..._o,depth:"",flat:"",
leftFlange:"",rightFlange:""},N2=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_l\
eft_mm"],["rightFlange","flange_right_mm"],["radius","radius_mm"]],zb=e=>Object.entries(e).some(([t,n])=>t!=="\
places"&&t!=="lot"&&n.trim()!=="")});function Xb(e,t){let n=Math.min((Zb-2*Yb-34)/e,170/t),[s,o]=[e*n,t*n],[a,r]=[Yb+34,24],[l,c,d]=[a+s,r+o,a+s/2],
u=$(w(e,{digits:0})),h=$(w(t,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${Zb} ${Math.round(c+52)}"
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
  </svg>`}var Zb,Yb,Jb=m(()=>{y();L();Zb=400,Yb=30});function tw({before:e,after:t,points:n=[],size:s=1,words:o}){let a=[e.low,e.high,t.low,t.high,...n.map(u=>u.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return p;let c=Xs(r,l,{from:ew,to:Qb-ew,size:s,most:5}),{at:d}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${Qb} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(u=>v`<path class="faint" d="M${u.at} 8V84"/>
          <text class="quiet" x=${u.at} y="104" text-anchor="middle"
            font-size=${C2}>${u.text}</text>`)}
    <path
      class="was"
      d="M${d(e.low)} 24H${d(e.high)}M${d(e.low)} 17v14M${d(e.high)} 17v14M${d(e.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${d(t.low)} 52H${d(t.high)}" data-test="band-after" />
    <path class="now-middle" d="M${d(t.nominal)} 42v20" />
    ${n.map(u=>R2(d(u.value),74,u))}
  </svg>`}function R2(e,t,{id:n,outlier:s,weight:o=1}){return s?v`<path class="result-odd" d="M${e-6} ${t-6}l12 12M${e+
6} ${t-6}l-12 12"
        data-test="band-point" data-id=${n} data-odd="true"/>`:v`<circle class="result-point" cx=${e} cy=${t} r=${o<
.25?3:6} data-test="band-point"
        data-id=${n}/>`}var Qb,ew,C2,nw=m(()=>{y();wc();Qb=340,ew=24,C2=17});function rw({before_mm:e,after_mm:t,flanges:n,strips:s}){let o=c=>$(w(c,{digits:2})),a=t.nominal-e.nominal,r=Number(
te(a,2))===0,l=`${o(Math.abs(a))} ${a>0?"shorter":"longer"}`;return i`<p data-test="deduction">
    A bend takes <b>${o(t.nominal)}</b> (${o(t.low)} to ${o(t.high)}) off the sum of its
    flats${r?", as before":i`: the next blank is <b>${l}</b> for each such bend`}. Rests on
    ${[sw(n,"measured flange"),sw(s,"strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`}function ol(e){if(!e.length)return i`<p data-test="no-figures">No figure changed.</p>`;let t=e.flatMap(
s=>s.points??[]),n=["Thin: before. Thick: now. Rings: results"];return t.some(s=>(s.weight??1)<.25)&&n.push("s\
mall ones, of other sheet or tools, count little"),t.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${e.
map(B2)}</div>
    ${t.length?i`<p class="hint">${n.join("; ")}.</p>`:p}`}function B2(e){let{what:t,before:n,after:s,trials:o,
points:a=[]}=e,r=c=>I2(e.unit,c),l=`${t[0].toUpperCase()}${t.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${t}>
    <h3>
      ${l} <small>${o===0?"no results":o===1?"1 result":`${o} results`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${ow(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${ow(s,r)}</dd>
      </div>
    </dl>
    ${tw({before:n,after:s,points:a,size:e.unit==="mm"&&N()==="in"?Se:1,words:`${l}: before ${aw(n,r)}, now ${aw(
s,r)}, ${a.length} results drawn.`})}
  </section>`}function I2(e,t){return e==="deg"?M(t):e==="mm"?w(t,{digits:2}):{text:te(t,3),unit:e}}var sw,ow,
aw,Bd=m(()=>{y();nw();L();sw=(e,t)=>e?`${e} ${t}${e>1?"s":""}`:"";ow=(e,t)=>i`<b>${$(t(e.nominal))}</b>
    <span class="band">${t(e.low).text} to ${t(e.high).text}</span>`,aw=({low:e,high:t},n)=>`${n(e).text} to ${$(
n(t))}`});function pw(e,{metals:t,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:d}=e,u=(f,g,b={})=>A(
{name:f,label:g,value:r[f],wrong:I(c,f),change:_=>Object.assign(r,{[f]:_}),unit:N(),next:!0,...b}),h=(f,g,b)=>J(
{name:f,label:g,value:r[f],options:b,wrong:I(c,f),change:_=>{Object.assign(r,{[f]:_}),a()}});return i`<form novalidate data-test="choose-form" @submit=${_e(
o)}>
    <p>One strip, bent and measured, turns the handbook’s figures into those of your metal and your tools.</p>
    ${dw(e)}
    <div class="test-fields">
      ${h("metal","Metal",t.map(({code:f,name:g})=>[f,g]))}
      ${u("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${u("bend_length_mm","Strip’s width, along the bend")}
      ${u("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${h("die","Die",lw(n,r.die))}
      ${h("punch","Punch",lw(s,r.punch))}
      ${A({name:"lot",label:"Lot or heat",value:l.lot,wrong:I(c,"lot"),change:f=>Object.assign(l,{lot:f}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${d}>
        ${d?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function lw(e,t){let n=e.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=t&&!e.some(({code:o})=>o===t)?
[[t,`${t} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function uw({bend:e},{go:t}){let n=e.
worst!=="stop"&&e.die&&e.punch,s=$(w(D2,{digits:0}));return i`${Rr(e.checks)}
    <section class="panel urgent hands" aria-label="Hands" data-test="hands">
      <p>
        ${S("caution")} <b>A small strip brings hands close.</b> Hold it at its far end, ${s} or more
        from the punch. Shorter: tongs or a magnet, never fingers. Nobody else near the pedal. Guards on. The
        ends swing up: face clear of them.
      </p>
    </section>
    <div class="columns">
      <div>
        <ol class="do-list">
          <li>
            Cut a strip <b>${$(w(e.bend_length_mm,{digits:0}))}</b> wide and about
            <b>${$(w(iw,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
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
          ${at("Angle to set",M(e.set_angle_deg),"set-angle")}
          ${at("Depth",w(e.punch_depth_mm,{digits:2}),"punch-depth")}
        </div>
        ${Ks(e.first_hit)}
        <div class="figures">${ia("Allow for",e)}</div>
      </div>
      <div class="strip-pictures">
        ${Xb(iw,e.bend_length_mm)}
        ${e.drawing?Bt(e.drawing,{pose:"before",close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,
words:"The strip on the die before the bend"}):p}
      </div>
    </div>
    ${Zs(e.checks)} ${An(e.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>t("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>t("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function hw(e,{go:t,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=e,c=(u,h,f,g={})=>A({name:h,
label:f,value:o[u],wrong:I(a,h),change:b=>Object.assign(o,{[u]:b}),unit:N(),next:!0,...g}),d={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${_e(n)}>
    ${dw(e)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${$(M(r.included_angle_deg))}. The angle is
      needed; the lengths and the radius improve the figures.
    </p>
    <div class="measures">
      <fieldset class="panel">
        <legend><span class="badge-word">1</span> Angle</legend>
        <div class="result-angles ${o.places}">
          ${o.places==="one"?c("one","measured_deg","Angle measured",d):[c("left","left_deg","Left",d),c("midd\
le","middle_deg","Middle",d),c("right","right_deg","Right",d)]}
        </div>
        ${_d(o,s)}
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
      ?open=${["set_angle_deg","punch_depth_mm","note"].some(u=>I(a,u).length)}>
      <summary>Another setting, depth shown, note</summary>
      <div class="test-fields">
        ${c("set","set_angle_deg","Angle that was set",{...d,placeholder:M(r.set_angle_deg).text,hint:"Leave i\
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
  </form>`}function mw({answer:e,form:t,busy:n},s,{again:o}){if(!e)return p;let a=s.find(({code:d})=>d===t.metal)?.
name??t.metal,{teaches:r,asks:l,said:c}=e.test_bend;return i`<h2>What it changed <small>${a}</small></h2>
    <div class=${e.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${e.said.map(d=>i`<p>${Me(d)}</p>`)}
    </div>
    ${r?p:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${S("caution")} <b>Kept, but it does not count.</b> ${sa(c)}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:p}
          </section>`}
    ${e.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${S("caution","Odd one out")}</h2>
            ${e.outliers.map(({said:d})=>i`<p>${sa(d)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(t.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:p}
    ${ol(e.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${e.cards.length?i`<ul class="rows">
              ${e.cards.map(F2)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-learned"
        >Measured springback</a
      >
    </div>`}var W2,iw,D2,cw,dw,F2,fw=m(()=>{y();la();Jb();L();wt();z();vd();ca();G();ds();Bd();En();tt();W2=[[
"choose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Result"]],iw=300,D2=102,cw=e=>i`<ol class="stages" aria-label="Stages">
    ${W2.map(([t,n])=>i`<li aria-current=${t===e?"step":"false"}>${n}</li>`)}
  </ol>`,dw=({general:e})=>e?i`<p class="wrong" role="alert" data-test="wrong">${e}</p>`:p;F2=({code:e,title:t,
said:n})=>i`<li class="row" data-test="changed-card" data-code=${e}>
    <a href="/c/${e}">
      <span class="lead">${t||e}</span> <span class="code">${e}</span>
      <span class="more">${n.map(Me).join("; ")}</span>
    </a>
  </li>`});var gw={};ie(gw,{show:()=>j2});async function j2(e){e.title("Test bend"),e.render(Ce("Looking into the crib…"));
let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async b=>(await he(b,e.signal)).items)),o=Mr(e.query);
o.metal||=t[0]?.code??"",o.bend_length_mm||=N()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...sl},bend:null,
answer:null,id:Ne(),wrong:{},general:"",busy:!1};nt(()=>a.stage==="measure"&&zb(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>e.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${cw(a.stage)} ${l()}
      </article>`);function l(){let b={draw:r,go:c,choose:d,send:u,again:h};return a.stage==="bend"?uw(a,b):a.
stage==="measure"?hw(a,b):a.stage==="taught"?mw(a,t,b):pw(a,{metals:t,dies:n,punches:s},b)}function c(b){Object.
assign(a,{stage:b,wrong:{},general:""}),r(),scrollTo(0,0)}async function d(){let b=aa(o);if(b.length)return f(
Object.fromEntries(b.map(_=>[_,H2[_]])));history.replaceState(null,"",`/shop/test-bend?${Or(o)}`),await g(async()=>{
let _=await O("POST","/bend",{body:ls(o),signal:e.signal});a.bend=_.body,c("bend")})}async function u(){let{body:b,
wrong:_}=qb(a.id,o,a.bend,a.typed);if(Object.keys(_).length)return f(_);await g(async()=>{let C=await O("POST",
"/test-bends",{body:b,timeout:2e4});a.answer=C.body,c("taught"),W()})}function h(){Object.assign(a,{typed:{...sl,
lot:a.typed.lot,places:a.typed.places},answer:null,id:Ne()}),d()}function f(b,_=""){Object.assign(a,{wrong:b,general:_}),
r(),Lt(b)}async function g(b){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await b()}catch(_){
return e.signal.aborted?void 0:(a.busy=!1,f(_ instanceof E?_.errors:{},U2(_)))}a.busy=!1,r()}}xe(r,e.signal),r(),
e.ready()}function U2(e){return e instanceof E?e.message:e instanceof V?"The shop’s server does not answer. Wh\
at you typed stays here: try again.":String(e)}var H2,$w=m(()=>{y();j();Ar();be();Pe();Oe();ae();ye();Kb();L();
z();We();fw();H2={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as\
 1.98."],bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you\
 want, such as 90."]}});function bw(e){if(!e)return p;let{set_by:t,offset_mm:n,results:s,strip:o}=e;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
e.apart)}>
    <h2>
      The press <small>${t?V2[t]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?G2(n,s):p}
    ${n?ce("/shop/press",i`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`):p}
    ${e.said.map(a=>i`<p>${Me(a)}</p>`)}
    ${o?ce("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${z2(o)}>Bend this strip</a>
            </p>`):p}
  </section>`}function G2({low:e,nominal:t,high:n},s){let o=l=>w(Math.abs(l),{digits:2}),a=l=>`${$(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(t).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(t)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(e)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var V2,z2,ww=m(()=>{y();L();G();ue();V2={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};
z2=({metal:e,thickness_mm:t,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:e,thickness:`${t} mm`,die:n})}`});var yw={};ie(yw,{show:()=>q2});async function q2(e){let{metal:t}=e.params,n=`metal=${encodeURIComponent(t)}`;e.
title("Measured springback");let{items:s}=await he("metals",e.signal),o=s.find(({code:d})=>d===t);if(!o)return e.
title("No such metal"),e.render(Te(`No metal ${t} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(`${o.name}: measured springback`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){
let[d,u]=await Promise.all([O("GET",`/learned?${n}`,{signal:e.signal}),O("GET",`/test-bends?${n}`,{signal:e.signal})]),
h=d.body,{evidence:f}=u.body;Object.assign(a,{groups:h.groups,press:h.press}),a.evidence=[...f].sort((g,b)=>g.
made_at<b.made_at?1:-1)}async function l(d,u){if(!a.busy){a.busy=d.id,c();try{let{body:h}=await O("POST",`/evi\
dence/${encodeURIComponent(d.id)}/${u}`,{body:P().name?{by:P().name}:{},timeout:2e4});await r(),q(Z2(u,h.cards)),
W()}catch(h){if(e.signal.aborted)return;if(!(h instanceof E||h instanceof V))throw h;q(h.message)}a.busy="",c()}}
let c=()=>e.render(i`<p class="crumb">
          <a href="/shop">Shop</a> / <a href="/shop/metals/${encodeURIComponent(t)}">${o.name}</a>
        </p>
        <div class="head-line">
          <h1>Measured springback <span class="soft">${o.name}</span></h1>
          ${ce("/shop/test-bend",i`<a class="button next" href="/shop/test-bend?${n}" data-test="to-test-bend"
              >Test bend</a
            >`)}
        </div>
        ${a.evidence.length?i`<div class="learned" data-test="learned" aria-busy=${a.busy?"true":"false"}>
                <section class="learned-figures">
                  ${bw(a.press)} ${Y2(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Results</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(d=>X2(d,a.busy,l))}
                  </ul>
                </section>
              </div>`:Te("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),xe(c,e.signal),c(),e.ready()}function Z2(e,t){let n=K2[e];return t.
length?`${n} ${t.length===1?"One card":`${t.length} cards`} would now plan differently: ${t.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function Y2(e){return e.length?e.map(({thickness_mm:t,v_opening_mm:n,lot:s,factor:o,deduction:a,
figures:r,said:l})=>i`<section data-test="group" data-thickness=${t} data-v=${n}>
        <h2>
          ${$(w(t,{digits:2}))} over V
          ${$(w(n))}${s?i` <small>lot ${s}</small>`:p}
        </h2>
        ${l.map(c=>i`<p class="together" data-test="together">${S("caution")} ${Me(c)}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${te(o.nominal,2)} times</b> as much as expected
                (${te(o.low,2)} to ${te(o.high,2)}).
              </p>`:p}
        ${a?rw(a):p} ${ol(r)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No result is in use: the figures are the metal’s own.</p>`}function X2(e,t,n){
let s=e.kind==="test bend"?"Test bend":i`First piece${e.code?i` of <a href="/c/${e.code}">${e.code}</a>`:p}`,o=[
e.set_angle_deg===null?"":`set at ${$(M(e.set_angle_deg))}`,$(w(e.thickness_mm,{digits:2})),e.die?`die ${e.die}`:
e.v_opening_mm?`V ${$(w(e.v_opening_mm))}`:"",e.lot?`lot ${e.lot}`:"",de(e.made_at),Jt(e)];return i`<li
    class="row evidence ${e.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${e.id}
    data-forgotten=${String(e.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${$(M(e.measured_deg))}</span> ${s}
        ${e.forgotten?S("unknown","Forgotten"):e.asks?S("unknown","Does not count"):e.outlier?S("caution","Odd\
 one out"):p}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${e.note?i`<p>${e.note}</p>`:p}
      ${e.said.length?i`<p class=${e.asks?"":"more"} data-test="evidence-words">${sa(e.said)}</p>`:p}
    </div>
    <div class="evidence-marks">
      ${J2(e).map(([a,r])=>R(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${t!==""}
            @click=${()=>n(e,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function J2({forgotten:e,asks:t}){return e?[["remember","Use it again"]]:t?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var K2,_w=m(()=>{y();j();be();Ze();ae();ye();
L();G();Bd();ue();ww();We();Ve();K2={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var vw={};ie(vw,{show:()=>Q2});async function Q2(e){let t=ir(e.params.kind);if(!t)return e.title("Not here"),e.
render(Te("No such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready();let{one:n,title:s,many:o}=_n[t];
e.title(s);let{items:a,kept:r}=await he(t,e.signal),l=Ao(a.map(c=>c.outline_mm??[]));e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?p:R(re[t],i`<a class="button" href="/shop/${t}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${R(re[t],"Changing anything needs the shop's server.")}
            </p>`:p}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>t==="metals"?aT(c):eT(t,c,l))}
            </ul>`:Te(`No ${o} yet`,R(re[t],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),e.ready()}function eT(e,t,n){return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/${e}/${encodeURIComponent(t.code)}">
      <span class="thumb">${Oo(t.outline_mm,n)}</span>
      <span class="who"
        ><span class="lead">${t.code}</span> <span>${t.name}</span>${nT(t)}${tT(t)}</span
      >
      <span class="fact"><span class="what">Place</span>${kn(t)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${t.rating_kn_per_m===null?S("unknown"):$(Ie(t.rating_kn_per_m))}</span
      >
      ${t.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${t.segments_mm.length?i`${t.segments_mm.length}, up to
                    ${$(w(sT(t.segments_mm),{digits:0}))}`:"not entered"}</span
            >`:p}
      <span class="fact"><span class="what">Condition</span>${oT(t)}</span>
    </a>
  </li>`}function nT({shape:e,openings:t=[]}){return e!=="multi_v"?p:i`<span class="soft" data-test="block-vs"
    >${t.map(n=>`${n.code}: V ${$(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function oT({condition:e,condition_note:t}){if(e==="good")return S("ok","Good");let n=e==="damaged"?S("st\
op","Damaged"):e==="worn"?S("caution","Worn"):S("unknown");return i`${n}${t?i` <span class="soft">${t}</span>`:
p}`}function aT(e){let{tensile_mpa:t}=e;return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/metals/${encodeURIComponent(e.code)}">
      <span class="who"><span class="lead">${e.name}</span> <span class="soft">${e.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${t.low} to ${t.high} MPa</span>
      <span class="fact"><span class="what">Reliability</span>${t.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${e.gauge_family??"none"}</span>
    </a>
  </li>`}var tT,sT,kw=m(()=>{y();be();L();G();ue();We();Oa();tT=e=>e.assumed?.length?S("unknown","Sizes assume\
d"):p;sT=e=>Math.max(...e)});function Wd(e,t){let n=t.params.tool===Id,s=n?void 0:t.params.tool,o={items:[],etag:null,kept:!1};return{kind:e,
isNew:n,code:s,async read(a){return o=await(K(re[e])?lr:he)(e,a),o.items.find(r=>r.code===s)},async write(a){let r=o.
items.filter(d=>d.code!==s),l=o.items.findIndex(d=>d.code===s),c=a?[{...a,code:s??a.code}]:[];await Lu(e,r.toSpliced(
l<0?r.length:l,0,...c),o.etag)},done(a){q(a?`${a.name||s} is saved.`:`${s} is taken out.`),se(`/shop/${e}`)},free(){
let a=e[0].toUpperCase();for(let r=1;;r+=1)if(!o.items.some(l=>l.code===`${a}${r}`))return`${a}${r}`},taken:a=>n&&
o.items.some(r=>r.code===a.trim())}}var Id,xw=m(()=>{be();Ze();we();Oe();Id="+"});function Ow(e,t,n){let s=e==="holders"?[]:t.assumed??[];return{...n,...Object.fromEntries(s.map(o=>[o,""]))}}function Aw(e,t,{
draft:n,kept:s,shape:o}){if(e==="holders")return t;let a=s.assumed??[],r=(rT[n.shape]??[]).filter(l=>!n[l]?.trim()&&
(o||a.includes(l)));return o?{...t,assumed:r,name:t.name||iT(o,n)}:{...t,assumed:r}}function iT({title:e,boxes:t},n){
let s=N();return t===La?`${e} ${n.angle_deg}°, R ${n.tip_radius_mm} ${s}`:t===Mw?`V ${n.v_opening_mm} ${s}, ${n.
angle_deg}°`:`${e}: ${lT(n.openings).join(", ")} ${s}`}function Lw(e,t){let n=Tw(t);return is(Tw(e).map((s,o)=>({
...Et("")[0],v:s,angle:n.length===1?n[0]:n[o]??""})))}var Ms,La,Mw,Sw,al,rT,lT,Tw,Dd=m(()=>{L();_r();Ms=e=>e.split(
" ").map(t=>t.split(",").map(Number)),La=["angle_deg","tip_radius_mm","rating_kn_per_m","height_mm","segments_\
mm"],Mw=["v_opening_mm","angle_deg","rating_kn_per_m","height_mm","segments_mm"],Sw=["openings","rating_kn_per\
_m","height_mm","segments_mm"],al={punches:[{key:"straight",title:"Straight",shape:"straight",ring:Ms("0,0 11,\
12 11,60 -11,60 -11,12"),boxes:La},{key:"acute",title:"Acute",shape:"straight",ring:Ms("0,0 10,36 10,60 -10,60\
 -10,36"),boxes:La},{key:"gooseneck",title:"Gooseneck",shape:"gooseneck",ring:Ms("0,0 7,8 26,26 26,38 13,50 13\
,60 -13,60 -13,50 12,34 12,26 -7,8"),boxes:La},{key:"radius",title:"Radius",shape:"straight",ring:Ms("-12,8 -9\
,3 -5,0.7 0,0 5,0.7 9,3 12,8 12,60 -12,60"),boxes:La}],dies:[{key:"single",title:"Single V",shape:"single_v",ring:Ms(
"-22,-45 22,-45 22,0 11,0 0,-11 -11,0 -22,0"),boxes:Mw},{key:"block",title:"Block of V’s",shape:"multi_v",ring:Ms(
"-30,-60 -8,-60 0,-52 8,-60 30,-60 30,-35 25,-30 30,-25 30,0 12,0 0,-12 -12,0 -30,0 -30,-20 -20,-30 -30,-40"),
boxes:Sw},{key:"angles",title:"Several angles",shape:"multi_v",ring:Ms("-30,-60 -5,-60 0,-40 5,-60 30,-60 30,-\
36 24,-30 30,-24 30,0 16,0 0,-8 -16,0 -30,0 -30,-24 -14,-30 -30,-36"),boxes:Sw}]},rT={straight:["height_mm","b\
ody_width_mm"],gooseneck:["height_mm","body_width_mm","neck_relief_mm"],single_v:["shoulder_radius_mm","height\
_mm","width_mm"],multi_v:["shoulder_radius_mm","height_mm","width_mm"]};lT=e=>Et(e).map(({v:t})=>t);Tw=e=>e.split(
/[,;]/).map(t=>t.trim()).filter(Boolean)});function Ew(e){let{kind:t,shape:n,preview:s}=e;return i`<div class="workbench">
    <section class="panel what">
      <h2>Which looks like it?</h2>
      ${dT(t,n,e.pick)}
      <h2>What is engraved on it</h2>
      <div class="fields">
        ${n.boxes.map(o=>o==="openings"?uT(e):pT(e,o))}
        ${e.first}
      </div>
      <button type="button" class="button" data-test="all-sizes" @click=${e.allSizes}>All sizes</button>
    </section>
    <section class="panel outline">
      <h2>As it is counted with</h2>
      ${Rd(s)} ${hT(s)}
    </section>
  </div>`}function dT(e,t,n){let s=al[e]??[],o=Ao(s.map(({ring:a})=>a));return i`<div class="shapes" role="radiogroup" aria-label="Shape">
    ${s.map(a=>i`<label>
          <input
            type="radio"
            name="picture"
            value=${a.key}
            data-test="shape-${a.key}"
            .checked=${a.key===t.key}
            @change=${()=>n(a)} />
          ${Oo(a.ring,o)}<span>${a.title}</span>
        </label>`)}
  </div>`}function pT({kind:e,draft:t,change:n,wrong:s,preview:o},a){let r=Pt(e).find(c=>c.name===a);if(!r)return p;
let l=r.type==="rating"?rt().unit:r.type==="number"?r.unit:N();return A({name:a,label:r.label,unit:l,keys:r.type===
"lengths"?"text":"decimal",value:t[a]??"",change:c=>n(a,c),wrong:s[a],hint:Cd(o?.assumed[a])||cT[a]?.hint,placeholder:o&&
a in o.assumed?"assumed":""})}function uT({draft:e,change:t,wrong:n}){pn.openings!==(e.openings??"")&&Object.assign(
pn,{openings:"",vs:"",angles:""});let s=r=>{Object.assign(pn,r),pn.openings=Lw(pn.vs,pn.angles),t("openings",pn.
openings)},o=Object.entries(n).filter(([r])=>r.startsWith("openings")),a=r=>o.filter(([l])=>l.endsWith("angle_\
deg")===r).flatMap(([,l])=>l);return i`<div class="broad">
      ${A({name:"vs",label:"V openings",unit:N(),value:pn.vs,change:r=>s({vs:r}),wrong:a(!1),hint:"All of the \
block, with commas between."})}
    </div>
    ${A({name:"angles",label:"Angle of the V’s",unit:"°",keys:"text",value:pn.angles,change:r=>s({angles:r}),
wrong:a(!0),hint:"One for all, or one for each, with commas between."})}`}function hT(e){let t=Object.entries(
e?.assumed??{});if(t.length===0)return p;let n=t.map(([s,o])=>`${mT[s]??s} ${le(w(o))}`).join(", ");return i`<p data-test="assumed">
    ${S("unknown","Assumed")} ${n}: usual proportions, common practice without a source. Answers that
    depend on them say so; measure and enter them under All sizes.
  </p>`}var cT,pn,mT,Nw=m(()=>{y();Ct();Dd();L();Oa();z();G();tl();cT={height_mm:{hint:"May stay empty."},segments_mm:{
hint:"Lengths with commas between. Empty: one piece as long as needed, assumed."},rating_kn_per_m:{hint:"As en\
graved. Empty is unknown."}};pn={openings:"",vs:"",angles:""};mT={height_mm:"height",body_width_mm:"width of t\
he body",neck_relief_mm:"throat",width_mm:"width",shoulder_radius_mm:"shoulder radius"}});async function Pw(e,t){let n=await Lo({...t,blank:{poisson:.3},boxes:fT,toDraft:o=>({code:String(o.code??""),...gh(
o)}),fromDraft:o=>({...$h(o),code:o.code.trim()}),draw:()=>n&&s()},e.signal);if(!n.state.kept&&!t.isNew)return e.
title("No such metal"),e.render(Te(`No metal ${t.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(t.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,d={})=>A({name:l,
label:c,value:o.draft[l]??"",change:u=>a(l,u),wrong:o.wrong[l],...d});e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${t.isNew?"New metal":i`${t.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${t.isNew?p:i`<div class="buttons">
                ${ce("/shop/learned/x",i`<a
                    class="button"
                    href="/shop/learned/${encodeURIComponent(t.code??"")}"
                    data-test="to-learned"
                    >Measured springback</a
                  >`)}
                ${ce("/shop/test-bend",i`<a
                    class="button"
                    href="/shop/test-bend?metal=${encodeURIComponent(t.code??"")}"
                    data-test="to-test-bend"
                    >Test bend</a
                  >`)}
              </div>`}
        ${o.clash?go(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):p}
        <form novalidate @submit=${_e(n.save)}>
          ${Eo(re.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${t.isNew?Aa(n,t):p} ${r("name","Name")}
                  ${J({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:sh,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${Gs.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${ss({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${rs.map(l=>gT(l,n))}</div>`)}
          ${Xi(n,t,"metal")}
        </form>`)}s(),e.ready()}function gT({name:e,label:t,unit:n,needed:s},{state:o,change:a}){let r=u=>o.draft[`${e}\
.${u}`]??"",l=u=>o.wrong[`${e}.${u}`]??[],c=u=>h=>a(`${e}.${u}`,h),d=!s&&!Fd.some(([u])=>r(u).trim());return i`<fieldset class="panel figure-card" data-test="figure-${e}">
    <legend>${t}${n?i` <span class="hint">(${n})</span>`:p}</legend>
    ${(o.wrong[e]??[]).map(u=>i`<p class="wrong-line">${u}</p>`)}
    <div class="fields three">
      ${Fd.map(([u,h])=>A({name:`${e}.${u}`,label:h,value:r(u),change:c(u),wrong:l(u),keys:"decimal"}))}
    </div>
    ${d?S("unknown","Not known"):p}
    <div class="fields source-line">
      ${ss({name:`${e}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${J({name:`${e}.standing`,label:"Reliability",value:r("standing"),options:nh.map(u=>[u,u]),change:c("sta\
nding"),wrong:l("standing")})}
    </div>
  </fieldset>`}var Fd,fT,Cw=m(()=>{y();Ct();be();Ki();Ql();Ji();$o();G();z();ue();We();Fd=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],fT=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...Gs,...rs.flatMap(({name:e,label:t})=>[...Fd,["source","s\
ource"],["standing","reliability"]].map(([n,s])=>({name:`${e}.${n}`,label:`${t}: ${s.toLowerCase()}`}))),...rs]});var Rw={};ie(Rw,{show:()=>bT});async function bT(e){let t=ir(e.params.kind);return t?e.params.tool===Id&&!K(re[t])?
(e.title(`New ${_n[t].one}`),e.render(sr(re[t])),e.ready()):t==="metals"?Pw(e,Wd(t,e)):wT(e,t):(e.render(Te("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready())}async function wT(e,t){let n=_n[t],s=Wd(
t,e),o=K(re[t]),a=null,r=o&&s.isNew?al[t]?.[0]:void 0,l=await Lo({...s,blank:$T[t],boxes:[{name:"code",label:"\
Code"},...Pt(t)],toDraft:u=>({code:String(u.code??(r?s.free():"")),...Ow(t,u,Sr(t,u))}),fromDraft:(u,h)=>Aw(t,
{...Tr(t,u,h),code:u.code.trim()},{draft:u,kept:h,shape:r}),preview:o?Yi(n.one,u=>{a=u,l.show()},e.signal):void 0,
draw:()=>l&&d()},e.signal);if(!l.state.kept&&!s.isNew)return e.title("Not in the crib"),e.render(Te(`No ${n.one}\
 ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${t}">${n.title}</a>`)),e.ready();e.title(
s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=Zi(l.state.kept));function c(u){r=u,l.change("shape",u.shape)}
function d(){let{state:u,change:h}=l;e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${t}">${n.
title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${u.kept?.name}</span>`}
        </h1>
        ${u.clash?go(u.clash,n.one,{saveMine:l.save,takeTheirs:l.takeTheirs}):p}
        <form novalidate @submit=${_e(l.save)}>
          ${Eo(re[t],r&&t!=="holders"?Ew({kind:t,shape:r,draft:u.draft,change:h,wrong:u.wrong,preview:a,first:Aa(
l,s),pick:c,allSizes:()=>{r=void 0,d()}}):el({kind:t,draft:u.draft,change:h,wrong:u.wrong,preview:a,reader:l.reader,
first:s.isNew?Aa(l,s):p}))}
          ${Xi(l,s,n.one)}
        </form>`)}d(),e.ready()}var $T,Bw=m(()=>{y();be();Ct();Ki();xw();Dd();Od();we();$o();Ji();ue();We();Nw();
tl();Cw();z();$T={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"\
unknown",up:1},holders:{shape:"block",condition:"unknown"}}});var Dw={};ie(Dw,{show:()=>_T});async function _T(e){e.title("Crew");let{signal:t}=e,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>e.render(kT(n,o)),o=vT(n,s,
t),[a,r,l]=await Promise.all([O("GET","/devices",{signal:t}),O("GET","/crew-options",{signal:t}),Un(t).then(({
network:d})=>d?O("GET","/join",{signal:t}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),e.ready();let c=setInterval(o.look,yT);t.addEventListener("abort",()=>clearInterval(
c))}function vT(e,t,n){let s=async a=>{e.fault="";try{await a()}catch(r){if(n.aborted)return;e.fault=za(r)}t()};
async function o(){if(document.visibilityState!=="visible")return;let a=await O("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;e.devices=a.body.devices;let r=e.offer&&e.devices.find(l=>!e.known.has(
l.id)&&!l.revoked_at);r?Object.assign(e,{came:r,offer:null,name:""}):e.offer&&Date.parse(e.offer.expires_at)<=
Date.now()&&(e.offer=null),t()}return{look:o,draw:t,offer:()=>s(async()=>{let{body:a}=await O("POST","/pairing\
s",{body:{role:e.role,name:e.name.trim()},signal:n});Object.assign(e,{offer:a,came:null,known:new Set(e.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Remove ${a.name}? It can read nothing any more, and its cards\
 go from it when it next asks.`)&&(await O("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await O("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await O(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),e.open=a})}}function kT(e,t){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${e.fault?i`<p class="wrong" role="alert" data-test="fault">${e.fault}</p>`:p}
    ${e.joining?i`<div class="crew-grid">${ST(e,t)}${TT(e.joining)}</div>`:xT()}
    <section class="panel" data-test="devices">
      <h2>Devices in the shop</h2>
      ${MT(e,t)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${Q({name:"labels-open",label:"A device that is not paired",value:e.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>t.setOpen(n==="open")})}
    </section>`}function ST(e,t){let{offer:n,came:s}=e;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${lt[n.role].word}${n.name?i`: <b>${n.name}</b>`:p}. Works once, until
        ${de(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${Ww(n.qr)} />
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
            ${S("ok","Paired")} <b>${s.name}</b> is in, as ${lt[s.role].word.toLowerCase()}.
          </p>`:p}
    ${Q({name:"role",label:"As",value:e.role,options:Iw,change:o=>{e.role=o,t.draw()}})}
    <p class="hint" data-test="role-does">${lt[e.role].word}: ${lt[e.role].does}.</p>
    ${A({name:"device-name",label:"Whose?",value:e.name,placeholder:"Ann's phone",change:o=>e.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${t.offer}>
      Show a pairing code
    </button>
  </section>`}function TT(e){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${Ww(e.qr)} />
    <p>${e.shop}: ${e.https.map(t=>i`<span class="address">${t}</span> `)}</p>
    ${e.http.length?i`<p class="hint">Or type <span class="address">${e.http[0]}/join</span></p>`:p}
    ${e.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${OT(e.fingerprint)}</p>`:p}
  </section>`}function MT({devices:e},t){return e.length?i`<ul class="plain-list devices">
    ${e.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:p}
            <span class="soft"
              >${n.revoked_at?`removed ${de(n.revoked_at)}`:`last seen ${de(n.seen_at)}`},
              paired ${de(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${S("stop","Removed")}</p>`:i`${J({name:`role-${n.id}`,label:`Role of ${n.name}`,
value:n.role,options:Iw,change:s=>t.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>t.revoke(n)}>
                    Remove…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var yT,Iw,xT,Ww,OT,Fw=m(()=>{y();j();Vn();
G();z();Ve();yT=2e3,Iw=Object.entries(lt).map(([e,{word:t}])=>[e,t]);xT=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;Ww=e=>`data:image/svg+xml,${encodeURIComponent(e)}`,OT=e=>e.replace(/(.{4})(?=.)/g,"$1 ")});var rl,Hd=m(()=>{y();rl=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop; what still waits to be sent does not, so open Flangebook in the shop’s network first. Some phones ask
  each time before the camera may be used.
</p>`});var jw={};ie(jw,{show:()=>AT});async function AT(e){e.title("Pair this device"),e.render(Ce("Asking the shop…"));
let t={me:null,code:LT(),name:P().name,fault:"",asking:!1,waits:0},n=()=>e.render(ET(t,n));t.me=await Un(e.signal).
catch(()=>null),t.waits=(await et().catch(()=>[])).length,n(),e.ready()}function LT(){if(location.pathname!=="\
/pair"||!location.hash)return"";let e=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),e}function ET(e,t){let{me:n}=e;return n?n.role?NT(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${Hw[mn()??n.why]?i`<p data-test="why">${S("caution","Not paired")} ${Hw[mn()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
    ${e.waits?i`<p data-test="waits">
            ${e.waits===1?"1 result":`${e.waits} results`} typed here still
            ${e.waits===1?"waits":"wait"}. Pair again and
            ${e.waits===1?"it is":"they are"} sent.
          </p>`:p}
    <ol class="ways">
      <li>The owner opens <b>Shop, Crew</b> on the shop's computer or a paired phone, and shows a code.</li>
      <li>Point this phone's camera at it, or type the eight characters here.</li>
    </ol>
    <form class="panel" novalidate @submit=${_e(()=>CT(e,t))}>
      ${A({name:"pair-code",label:"Pairing code",value:e.code,placeholder:"ABCD-1234",change:s=>e.code=s,wrong:e.
fault?[e.fault]:[]})}
      ${A({name:"pair-name",label:"Whose device is this?",value:e.name,placeholder:"Ann's phone",change:s=>e.name=
s,hint:"The owner sees this name in the list."})}
      <button class="button next wide" data-test="pair" ?disabled=${e.asking}>Pair this device</button>
    </form>
    ${n.way==="http"?i`<p data-test="plain-http">
            ${S("caution","Not encrypted")} This is plain http: whoever is in the network can listen.
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
    </div>`}function NT(e){let t=e.role;return e.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${S("ok",lt[t].word)} <b>${e.name}</b>: ${lt[t].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${rl}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${PT}>Unpair this device…</button>
    </p>
  </div>`}async function PT(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await zp()}async function CT(e,t){Object.assign(e,{asking:!0,fault:""}),t();try{await Gp(e.
code,e.name.trim()),W(),se(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
e,{asking:!1,fault:za(n)}),t()}}var Hw,Uw=m(()=>{y();Vn();Pe();Oe();ae();ye();G();z();Hd();We();Hw={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function Vw({show:e,done:t,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,d){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),e();try{if(o.size>BT)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");let u=await Pa(`/import?${d}`,
o,"application/json",n,RT);s.told=u.body}catch(u){if(n.aborted)return;s.wrong=IT(u)}s.busy="",e(),s.told?.imported&&
t()}}return{state:s,choose:a,take:r}}function IT(e){if(!(e instanceof E))return[X(e)];let t=Object.entries(e.errors).
slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[e.message,...t]}var RT,BT,Gw=m(()=>{j();RT=3e5,BT=6e7});function Kw({state:e,choose:t,take:n}){let{name:s,busy:o,told:a,wrong:r}=e;return i`<section class="panel" data-test="panel-import">
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
      ${r.length?DT(s,r):p}
      ${a?a.imported?jT(a):FT(s,a,n):p}
    </div>
  </section>`}function FT(e,t,n){return i`<div data-test="import-preview">
    <p><b>${e}</b>, exported ${de(t.exported_at)} by ${t.made_by}</p>
    <table>
      ${yt("What","In the file","In the shop now")}
      <tbody>
        ${WT.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${qw(t.holds[s])}</td>
              <td>${qw(t.here[s])}</td>
            </tr>`)}
      </tbody>
    </table>
    ${t.untouched?i`<p>${S("ok","The shop is empty")}</p>
            <button type="button" class="button next wide" data-test="import-now" @click=${n}>
              Bring it in
            </button>`:i`<p>
              ${S("caution","Everything in the shop is replaced")} A backup of what is there now is made
              first.
            </p>
            <button
              type="button"
              class="button next wide"
              data-test="import-now"
              @click=${()=>HT(t)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var WT,zw,DT,qw,HT,jT,Zw=m(()=>{y();G();Ve();fo();WT=[["press","Press"],["tools","Tools"],["metals",
"Metals"],["cards","Cards"],["revisions","Revisions"],["trials","Results"],["test_bends","Test bends"]],zw=8;DT=
(e,t)=>i`<div data-test="import-wrong">
    <p>${S("stop","Not brought in")} ${e}</p>
    <ul>
      ${t.slice(0,zw).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${t.length>zw?i`<p>There are more.</p>`:p}
    <p>Nothing in the shop was changed.</p>
  </div>`;qw=e=>e===""?"none":e,HT=({here:e,holds:t})=>confirm(`Replace the shop? Its ${e.cards} cards and ${e.
trials} results go, the file's ${t.cards} cards and ${t.trials} results come. A backup is made first.`),jT=({holds:e,
kept_as:t})=>i`<div data-test="import-done">
    <p>${S("ok","Brought in")} ${e.cards} cards, ${e.trials} results.</p>
    ${t?i`<p>The shop that was there is kept as ${t}.</p>`:p}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var Yw={};ie(Yw,{show:()=>VT});async function VT(e){e.title("Backups and export");let t=Vw({show:a,done:s,signal:e.
signal}),n=await o();async function s(){W(),n=await o(),a()}async function o(){let{body:r}=await O("GET","/bac\
kups",{signal:e.signal});return r}function a(){e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Backups and export</h1>
        <div class="settings-grid">
          ${GT(n)}
          <div class="stack">${KT()}${Kw(t)}</div>
        </div>`)}a(),e.ready()}function GT({standing:e,last_good_at:t,trouble:n,folder:s,backups:o}){return i`<section class="panel" data-test="panel-backups">
    <h2>Backups</h2>
    <p data-test="standing">${zT(e)}</p>
    ${t?i`<p class="lead-line" data-test="last-good">Last good backup: ${de(t)}</p>`:p}
    ${n?i`<p class="wrong" data-test="trouble">${de(n.at)}: ${n.words}</p>`:p}
    <p>
      The server makes one each night, looks it through, and keeps seven days and four weeks. Put one on
      another disk, too: a backup beside the shop burns with it.
    </p>
    ${o.length?i`<table data-test="backups">
            ${yt("Made","How","Size")}
            <tbody>
              ${o.map(a=>i`<tr>
                    <td>${de(a.at)}</td>
                    <td>${UT[a.kind]}</td>
                    <td>${qT(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:p}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> restores one.
    </p>
  </section>`}function zT(e){return e==="ok"?S("ok","There is a good backup"):e==="late"?S("caution","The last\
 backup is over two days old"):e==="trouble"?S("stop","The last backup could not be made"):S("unknown","There \
is no backup yet")}function KT(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and results, as open JSON. Bring it in again here, or
      read it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var UT,qT,Xw=m(()=>{y();j();Gw();ye();G();Zw();Ve();fo();UT={night:"automatic","by-hand":"by han\
d",replaced:"before it was replaced"};qT=e=>`${(e/1e6).toFixed(1)} MB`});var Ea,Jw=m(()=>{Ea=[{key:"bend",title:"Check a bend",picture:"v-opening",steps:["Pick the metal, type thickne\
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
in again."],to:["/backups","Backups and export"]}]});var jd={};ie(jd,{show:()=>ZT});function ZT(e){let{page:t}=e.params;e.title("Guide"),e.render(t?XT(t):YT()),e.ready()}
function XT(e){let t=Ea.findIndex(l=>l.key===e);if(t<0)return Te("No such page of the guide",i`<a href="/guide">Guide</a>`);
let{title:n,picture:s,steps:o,to:a}=Ea[t],r=Ea[t+1];return i`<p class="crumb"><a href="/guide">Guide</a></p>
    <h1>${n}</h1>
    <div class="guide-page" data-test="guide-page">
      <div>${ta(s)}</div>
      <div>
        <ol class="guide-steps">
          ${o.map(l=>i`<li>${l}</li>`)}
        </ol>
        <div class="buttons">
          ${ce(a[0],i`<a class="button next" href=${a[0]}>${a[1]}</a>`)}
          ${r?i`<a class="button" href="/guide/${r.key}">Next: ${r.title}</a>`:p}
        </div>
      </div>
    </div>`}var YT,Ud=m(()=>{y();ql();ue();We();Jw();YT=()=>i`<h1>Guide</h1>
    <ol class="guide-list" data-test="guide">
      ${Ea.map(({key:e,title:t,picture:n})=>i`<li>
            <a class="panel" href="/guide/${e}" data-test="guide-${e}"
              >${ta(n)}<b>${t}</b></a
            >
          </li>`)}
    </ol>
    <p><a class="button" href="/words" data-test="to-words">The trade’s words</a></p>`});var Qw={};ie(Qw,{show:()=>JT});function JT(e){e.title("The trade’s words"),e.render(i`<p class="crumb"><a href="/guide">Guide</a></p>
      <h1>The trade’s words</h1>
      <div class="word-list" data-test="words">
        ${Object.entries(na).map(([t,{title:n}])=>i`<section class="panel" id=${t}>
              <h2>${n}</h2>
              ${Kl(t)}
            </section>`)}
      </div>`),e.ready()}var ey=m(()=>{y();br()});async function ty(e){let{code:t,part:n,title:s,note:o,created_by:a}=e,r={code:t,part:{...n,title:s},note:o,by:a},
{body:l}=await O("POST","/cards",{body:r,timeout:2e4}),c=Yo(await kt(l),[]);await Tt(c,er(Cs(e,["archived","se\
ttings"]),c),{reason:"Restored from a device"}),await Dp(e),await Ga(t)}var ny=m(()=>{j();Bs();xn();Fe()});function sy(e){return e.length?i`<section class="panel" data-test="lost">
    <h2>Not in the shop any more</h2>
    <p>
      The shop was restored from an earlier backup and does not know these cards. This device still has
      them.${R("cards.create",p,i` <span data-test="owners"
          >The owner can restore them from here, once this is an owner's device.</span
        >`)}
    </p>
    <ul class="waiting-list">
      ${e.map(t=>i`<li data-test="lost-${t.code}">
            <p><b>${t.title}</b> ${B(t.code)}</p>
            <div class="buttons">
              ${R("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>QT(t)}>
                  Restore it
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>eM(t)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:p}async function QT(e){try{await ty(e),await W()}catch(t){q(X(t))}}async function eM(e){confirm(
`Throw away the card ${B(e.code)}, ${e.title}? This device may have the only copy.`)&&(await Ga(e.code),await $n())}
var oy=m(()=>{y();j();fe();Ze();ny();Fe();ye();ue()});var iy={};ie(iy,{show:()=>tM});async function tM(e){e.title("Settings");let t={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([hn().catch(()=>[]),et().catch(()=>[]),Va().catch(()=>[])]);t=
{...t,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await O("GET","/cards?limit=1",{signal:e.signal,
timeout:4e3}).catch(()=>null);t={...t,total:a?.body?.total??null},o()}function o(){e.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${sM(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${oM(o)}
          </section>
          ${nM()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${aM(t.entries)}
          </section>
          ${sy(t.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${cM(t)} ${rl}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:e.signal}),await n(),e.ready(),await s()}function nM(){
let e=As();return!e||e==="owner"?p:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${lt[e].word}</b>: ${lt[e].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function sM(e){let{units:t,inches:n}=P(),s=o=>{Xe(o),e()};return i`${Q({name:"units",label:"Unit\
s",value:t,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${t==="inch"?Q({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):p}
  ${Q({name:"paper",label:"Paper",value:P().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${t==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:p}`}function oM(e){let{theme:t,name:n}=P();
return i`${Q({name:"theme",label:"Theme",value:t,options:[["system","As the device"],["day","Day"],["shop","Sh\
op, dark"]],change:s=>{Xe({theme:s==="shop"||s==="day"?s:"system"}),e()}})}
  ${A({name:"name",label:"Your name",value:n,change:s=>Xe({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function aM(e){return e.length?i`<ul class="waiting-list">
      ${e.map(t=>i`<li data-test="waits-${t.id}">
            <p>
              <b>${ry(t)}</b> on <a href="/c/${t.code}">${B(t.code)}</a>,
              ${de(t.queued_at)} by this device’s clock
              ${t.body.note?i`<br /><span class="soft">${t.body.note}</span>`:p}
            </p>
            ${t.refused?i`<p data-test="refused">
                      ${S("caution","Refused")} ${t.missing?`${va(t)}.`:""}
                      ${t.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>iM(t)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>lM(t)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${va(t)}. It is sent when the shop's server
                    ${t.late?"takes it":"answers"}.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>W()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every result, note and edit typed here is saved in the shop.
    </p>`}function ry({kind:e,body:t}){if(e==="trial")return`${cn(t)}, step ${t.step}`;if(e==="note")return"No\
te";if(e==="run")return`Run: ${rM[t.kind??"piece"]}`;let n=Object.keys(t).filter(s=>s in ay).map(s=>ay[s]);return n.
length?`Edit: ${n.join(", ")}`:"Edit: what was resolved"}async function iM(e){await Sp(e.id),await W()}async function lM(e){
confirm(`Throw away ${ry(e)} on ${B(e.code)}? It cannot be brought back.`)&&(await Fa(e.id),await $n())}function cM({
cards:e,total:t}){let{reached:n,at:s}=ct(),o=t!==null&&e>=t,a=document.documentElement.dataset.offlineReady===
"true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${e}${t===null?p:` of ${t}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${s?de(s):"not since this page was opened"}</dd>
      </div>
    </dl>
    <p>
      ${o?S("ok","Every card is here"):t===null?S("unknown","Not known: no answer from the shop"):S("caution",
"Still fetching")}
    </p>
    <p data-test="app-kept">
      ${a?S("ok","The app opens without network"):i`${S("caution","The app needs the network")}
            ${"serviceWorker"in navigator?"It is still being kept.":"This browser keeps apps only over https o\
r on the shop's own computer."}`}
    </p>
    ${n===!1?i`<p>${S("caution","Not connected now")}</p>`:p}
    <button type="button" class="button" data-test="check-now" @click=${()=>W()}>Look again</button>`}var rM,ay,
ly=m(()=>{y();j();Vn();fe();Pe();we();ae();Fe();ye();G();z();Hd();wo();oy();Rn();Ve();rM={begun:"begun",setup:"\
set-up finished",piece:"a piece done",scrap:"a piece scrapped",back:"a count taken back",paused:"paused",resumed:"\
went on",ended:"ended"},ay={title:"title",note:"note",archived:"in use or archived",settings:"settings"}});Vn();Wl();Oe();var cy={home:()=>Promise.resolve().then(()=>(th(),eh)),bend:()=>Promise.resolve().then(()=>(nm(),tm)),"press-s\
creen":()=>Promise.resolve().then(()=>(df(),cf)),part:()=>Promise.resolve().then(()=>(Lg(),Ag)),scan:()=>Promise.resolve().then(()=>(Xg(),Yg)),
card:()=>Promise.resolve().then(()=>(h$(),u$)),step:()=>Promise.resolve().then(()=>(k$(),v$)),result:()=>Promise.resolve().then(()=>(W$(),I$)),
history:()=>Promise.resolve().then(()=>(z$(),G$)),note:()=>Promise.resolve().then(()=>(K$(),q$)),resolve:()=>Promise.resolve().then(()=>(Y$(),Z$)),
print:()=>Promise.resolve().then(()=>(eb(),Q$)),label:()=>Promise.resolve().then(()=>(sb(),nb)),labels:()=>Promise.resolve().then(()=>(ab(),ob)),
chart:()=>Promise.resolve().then(()=>(cb(),lb)),shop:()=>Promise.resolve().then(()=>(gb(),fb)),press:()=>Promise.resolve().then(()=>(Gb(),Vb)),
"test-bend":()=>Promise.resolve().then(()=>($w(),gw)),learned:()=>Promise.resolve().then(()=>(_w(),yw)),tools:()=>Promise.resolve().then(()=>(kw(),vw)),
tool:()=>Promise.resolve().then(()=>(Bw(),Rw)),crew:()=>Promise.resolve().then(()=>(Fw(),Dw)),pair:()=>Promise.resolve().then(()=>(Uw(),jw)),
backups:()=>Promise.resolve().then(()=>(Xw(),Yw)),guide:()=>Promise.resolve().then(()=>(Ud(),jd)),"guide-page":()=>Promise.resolve().then(()=>(Ud(),jd)),
words:()=>Promise.resolve().then(()=>(ey(),Qw)),settings:()=>Promise.resolve().then(()=>(ly(),iy))};ae();ye();Ze();async function py(){if("serviceWorker"in navigator)try{let e=await navigator.serviceWorker.register("/sw.\
js");e.waiting&&dy(e.waiting),e.addEventListener("updatefound",()=>{let t=e.installing;t?.addEventListener("st\
atechange",()=>{t.state==="installed"&&navigator.serviceWorker.controller&&dy(t)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(e){console.
warn("The app could not be kept on this device:",e)}}function dy(e){q("A newer Flangebook is here. It opens wh\
en you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),e.postMessage("take over")}})}Ro();xe(()=>Ro());document.addEventListener("sync",()=>bn());document.addEventListener("held",()=>bn());document.
addEventListener("storage",e=>{bn(),!e.detail.silent&&(document.documentElement.dataset.ready==="failed"&&Xt(),
W())});document.addEventListener("turned-away",()=>{bn(),document.documentElement.dataset.screen!=="pair"&&Xt()});
document.addEventListener("rights",()=>{mn()===null&&document.documentElement.dataset.screen!=="pair"&&Mu()});
qp();Ou(cy).finally(()=>{wu(),py()});
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
