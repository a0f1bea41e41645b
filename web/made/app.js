var x$=Object.defineProperty;var $=(t,e,n)=>()=>{if(n)throw n[0];try{return t&&(e=t(t=0)),e}catch(s){throw n=[s],s}};var tt=(t,e)=>{for(var n in e)x$(t,n,{get:e[n],enumerable:!0})};function S$(){try{let t=JSON.parse(localStorage.getItem(oc)??"null");return t?.refused?t:sc}catch{return sc}}function rc({
role:t,refused:e={}}){let n=JSON.stringify({role:t,refused:e});if(n===JSON.stringify(jn))return!1;jn={role:t,refused:e};
try{localStorage.setItem(oc,n)}catch{}return!0}function ic(t){t&&t!==jn.role&&document.dispatchEvent(new CustomEvent(
"other-role"))}var oc,sc,jn,Hn,ht,ac,Et=$(()=>{oc="flangebook.rights",sc={role:"owner",refused:{}},jn=S$();Hn=
()=>jn.role,ht=t=>!Object.hasOwn(jn.refused,t),ac=t=>jn.refused[t]??"owner"});async function T(t,e,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return lc(t,e,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function xo(t,e,n,s,o=2e4){
return lc("POST",t,e,{type:n,signal:s,timeout:o})}async function lc(t,e,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let h=AbortSignal.
timeout(l),u=performance.now(),p;try{p=await fetch(`/api/v1${e}`,{method:t,headers:c,body:n,signal:r?AbortSignal.
any([r,h]):h,cache:"no-store"})}catch(g){throw r?.aborted?g:new F}if(ic(p.headers.get("Flangebook-Role")),!p.ok&&
p.status!==304)throw await Br(p,u);let m=T$.includes(p.status)?null:await M$(p,r);return{status:p.status,body:m,
etag:p.headers.get("ETag"),at:E$(p)}}async function M$(t,e){try{return await t.json()}catch(n){throw e?.aborted?
n:new F}}async function Br(t,e=1/0){let n=await t.json().catch(()=>null);if(!n?.status)throw new F;let s=new M(
n);return A$(s,e),s}function A$({status:t,errors:e},n){t===401&&e.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:e.pairing[0],asked:n}})),t===403&&e.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function cc(t,e,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${t}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(e),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await Br(c);for await(let h of O$(c.body,l)){let u=JSON.
parse(h);if(u.problem)throw new M(u.problem);if(!u.progress)return u;s(u.progress)}throw new F}catch(c){throw n.
aborted||c instanceof M?c:new F}finally{clearTimeout(r)}}async function*O$(t,e){let n=t.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;e();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function dc(t,e,n){let s;try{let a=await fetch(`/a\
pi/v1${t}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(e),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await Br(a);s=await a.blob()}catch(a){throw a instanceof M?a:new F}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var M,F,T$,E$,U=$(()=>{Et();M=class extends Error{constructor(e){super(e.detail||e.title),this.status=
e.status,this.title=e.title,this.errors=e.errors??{},this.outline=e.outline??null}},F=class extends Error{constructor(){
super("The shop's server does not answer.")}};T$=[204,304];E$=t=>new Date(t.headers.get("Date")??Date.now()).toISOString()});function L$(){return hc||(hc=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function N$(){return uc||
(uc=["advance","continue","continuePrimaryKey"].map(t=>IDBCursor.prototype[t]))}function C$(t){let e=new Promise(
(n,s)=>{let o=()=>{t.removeEventListener("success",a),t.removeEventListener("error",r)},a=()=>{n(nn(t.result)),
o()},r=()=>{s(t.error),o()};t.addEventListener("success",a),t.addEventListener("error",r)});return So.set(e,t),
e}function B$(t){if(Wr.has(t))return;let e=new Promise((n,s)=>{let o=()=>{t.removeEventListener("complete",a),
t.removeEventListener("error",r),t.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(t.error||new DOMException(
"AbortError","AbortError")),o()};t.addEventListener("complete",a),t.addEventListener("error",r),t.addEventListener(
"abort",r)});Wr.set(t,e)}function gc(t){Dr=t(Dr)}function P$(t){return N$().includes(t)?function(...e){return t.
apply(Fr(this),e),nn(this.request)}:function(...e){return nn(t.apply(Fr(this),e))}}function R$(t){return typeof t==
"function"?P$(t):(t instanceof IDBTransaction&&B$(t),Ir(t,L$())?new Proxy(t,Dr):t)}function nn(t){if(t instanceof
IDBRequest)return C$(t);if(Pr.has(t))return Pr.get(t);let e=R$(t);return Object.is(e,t)||(Pr.set(t,e),So.set(e,
t)),e}function $c(t,e,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(t,e),l=nn(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(nn(r.result),c.oldVersion,c.newVersion,nn(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",h=>o(h.oldVersion,h.newVersion,h))}).catch(()=>{}),l}function pc(t,e){if(!(t instanceof IDBDatabase&&
!(e in t)&&typeof e=="string"))return;if(Rr[e])return Rr[e];let n=e.replace(/FromIndex$/,""),s=e!==n,o=W$.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||I$.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),h=c.store;return s&&(h=h.index(l.shift())),(await Promise.all([h[n](...l),
o&&c.done]))[0]};return Rr[e]=a}async function*j$(...t){let e=this;if(e instanceof IDBCursor||(e=await e.openCursor(
...t)),!e)return;e=e;let n=new Proxy(e,F$);for(bc.set(n,e),So.set(n,Fr(e));e;)yield n,e=await(jr.get(n)||e.continue()),
jr.delete(n)}function fc(t,e){return e===Symbol.asyncIterator&&Ir(t,[IDBIndex,IDBObjectStore,IDBCursor])||e===
"iterate"&&Ir(t,[IDBIndex,IDBObjectStore])}var Ir,hc,uc,Wr,Pr,So,Dr,Fr,I$,W$,Rr,D$,mc,jr,bc,F$,wc=$(()=>{Ir=(t,e)=>e.
some(n=>t instanceof n);Wr=new WeakMap,Pr=new WeakMap,So=new WeakMap;Dr={get(t,e,n){if(t instanceof IDBTransaction){
if(e==="done")return Wr.get(t);if(e==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return nn(t[e])},set(t,e,n){return t[e]=n,!0},has(t,e){return t instanceof IDBTransaction&&(e==="done"||e==="s\
tore")?!0:e in t}};Fr=t=>So.get(t);I$=["get","getKey","getAll","getAllKeys","count"],W$=["put","add","delete",
"clear"],Rr={};gc(t=>({...t,get:(e,n,s)=>pc(e,n)||t.get(e,n,s),has:(e,n)=>!!pc(e,n)||t.has(e,n)}));D$=["advanc\
e","continue","continuePrimaryKey"],mc={},jr=new WeakMap,bc=new WeakMap,F$={get(t,e){if(!D$.includes(e))return t[e];
let n=mc[e];return n||(n=mc[e]=function(...s){jr.set(this,bc.get(this)[e](...s))}),n}};gc(t=>({...t,get(e,n,s){
return fc(e,n)?j$:t.get(e,n,s)},has(e,n){return fc(e,n)||t.has(e,n)}}))});function Hr(){return Un??=$c("flangebook",H$,{upgrade:(t,e,n,s)=>G$(t,e,s),blocking:U$,terminated:Ur}).catch(t=>{
throw Un=void 0,t}),Un}function Ur(){Un=void 0}async function U$(){(await Un)?.close(),Un=void 0}async function G$(t,e,n){
e<1&&(t.createObjectStore("cards",{keyPath:"code"}),t.createObjectStore("list",{keyPath:"code"}),t.createObjectStore(
"meta"),t.createObjectStore("outbox",{keyPath:"id"})),e<2&&(t.createObjectStore("sent",{keyPath:"id"}),t.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),e===1&&await V$(n))}async function V$(t){
let e=t.objectStore("outbox"),n=(await e.getAll()).sort((o,a)=>o.queued_at<a.queued_at?-1:1),s=0;for(let{trial:o,
...a}of n)e.put({...a,kind:"trial",body:o,number:++s});t.objectStore("meta").put(s,"number"),t.objectStore("me\
ta").delete("cursor")}function q$(t){return t instanceof DOMException?t.name==="QuotaExceededError"?"This devi\
ce is full: free some room on it.":"This browser lets nothing be kept here, as private windows do.":t instanceof
Error?t.message:String(t)}var H$,Un,To,Gr=$(()=>{wc();H$=2;To=class extends Error{constructor(e){super(q$(e))}}});async function Gn(t,e,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${t}`,{signal:AbortSignal.timeout(e)},o)}catch(a){if(s)throw a;return n()}}var Mo=$(()=>{});function qt(t,e){return kc(_c,n=>vc(t,"readonly",{},e,n))}function Lt(t,e,{patience:n=_c,durability:s="relaxed"}={}){
return kc(n,o=>Gn("writer",n/2,()=>vc(t,"readwrite",{durability:s},e,o)))}async function vc(t,e,n,s,o){let a=await Y$(
t,e,n);!o.now&&e==="readwrite"&&(a.abort(),await a.done),o.transaction=a,Ao.add(a),a.done.catch(()=>{}).finally(
()=>Ao.delete(a));try{let r=await s(K$(a));return e==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw qr(
a),a.error??r}}async function Y$(t,e,n){try{return(await Hr()).transaction(t,e,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return Ur(),(await Hr()).transaction(t,e,n)}}function qr(t){try{t.abort()}catch{}}
async function kc(t,e){let n={now:!0},s=e(n);s.then(()=>xc(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new Vt),sn?z$:t)});try{return await Promise.race([s,a])}catch(r){throw r instanceof Vt&&J$(n),r}finally{
clearTimeout(o)}}function J$(t){t.now=!1,t.transaction?.mode==="readwrite"&&qr(t.transaction),xc(!0)}function xc(t){
t!==sn&&(sn=t,document.documentElement.dataset.storage=sn?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:sn}})))}var _c,z$,Vt,Ao,sn,Vr,Is,K$,yc,Ee=$(()=>{Gr();Mo();_c=1e3,z$=100,Vt=class extends Error{constructor(){
super("This device's storage does not answer.")}},Ao=new Set,sn=!1,Vr=!1,Is=()=>sn;K$=t=>({store:yc(t.objectStore(
t.objectStoreNames[0])),objectStore:e=>yc(t.objectStore(e))}),yc=t=>new Proxy(t,{get:(e,n)=>typeof t[n]=="func\
tion"?(...s)=>{let o=t[n](...s);return o?.catch?.(()=>{}),o}:t[n]});addEventListener("pagehide",()=>{Vr||=Ao.size>
0;for(let t of Ao)qr(t)});addEventListener("pageshow",t=>{t.persisted&&Vr&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:sn}})),Vr=!1})});function Wt(){if(crypto.randomUUID)return crypto.randomUUID();let t=crypto.getRandomValues(new Uint8Array(16));
return t[6]=t[6]&15|64,t[8]=t[8]&63|128,[...t].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function Tc(t){try{return await Lt(["outbox","meta"],e=>Q$(e,t),Sc)}catch(e){throw new To(
e)}}async function Q$(t,e){let[n,s]=[t.objectStore("outbox"),t.objectStore("meta")],o=(await n.getAll()).sort(
zr).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...e,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function Mc(){return Lt("meta",async({store:t})=>{let e=(await t.get(
"number")??0)+1;return t.put(e,"number"),e})}async function Dt(){return(await qt("outbox",({store:t})=>t.getAll())).
sort(zr)}async function on(t){return(await Dt()).filter(e=>e.code===t)}async function Ws(t){return qt("outbox",
({store:e})=>e.get(t))}async function Oo(t){return qt("sent",({store:e})=>e.get(t))}async function Vn(t,e){await Lt(
"outbox",async({store:n})=>{let s=await n.get(t);s&&n.put({...s,...e})},Sc)}async function Eo(t){let e=await Ws(
t);await Lt("outbox",({store:n})=>n.delete(t)),e?.after&&await Lo(t,e.after)}async function Lo(t,e,n=()=>!0){for(let s of await Dt())
s.after===t&&n(s)&&await Vn(s.id,{after:e})}async function Ds(t,e,n=!1){let{again:s,refused:o,missing:a,parked:r,
...l}=t;try{await Lt(["outbox","sent"],c=>{c.objectStore("sent").put({...l,proposed:n,sent_at:t.sent_at??e}),c.
objectStore("outbox").delete(t.id)})}catch{await Lt("outbox",({store:c})=>c.delete(t.id))}}async function Oc(t){
let e=Date.parse(t)-X$*Z$;await Lt("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at)<
e&&n.delete(s.id)})}async function Ec(t){let[e,n]=[t.objectStore("outbox"),t.objectStore("sent")],s=(await n.getAll()).
sort(zr),o=await e.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...h}=r;a.has(r.id)||e.
put({...h,parked:c,again:!0,number:l-s.length})}),n.clear()}var X$,Z$,Sc,zr,Ac,Nt=$(()=>{Gr();Ee();X$=90,Z$=864e5,
Sc={durability:"strict"};zr=(t,e)=>t.number-e.number;Ac=t=>Vn(t,{refused:void 0})});async function Xt(t){return qt("cards",({store:e})=>e.get(t))}async function Le(){return(await qt("list",({store:e})=>e.
getAll())).sort((e,n)=>e.updated_at<n.updated_at?1:-1)}async function re(t){return Lt(["cards","list"],async e=>{
let n=await e.objectStore("cards").get(t.code);return n&&eb(t,n)?n:(Lc(e,t),t)})}function Lc(t,e){t.objectStore(
"cards").put(e),t.objectStore("list").put(nb(e))}function nb(t){let{code:e,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:h,trials_total:u,proposals:p}=t,{metal:m,thickness_mm:g}=h,b=p?.length??0;
return{code:e,title:n,note:s,metal:m,thickness_mm:g,bends:h.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:u,archived:c,settle:b}}async function Nc(){return qt("list",({store:t})=>t.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function Cc(){let t=["cards","list","meta","sent","lost"];await Lt(t,e=>{for(let n of t)
e.objectStore(n).clear()})}async function Zt(){return qt("meta",({store:t})=>t.get("shop"))}async function Bc(){
return qt("meta",({store:t})=>t.get("cursor"))}async function Pc(t){let e=t.reset||await sb()?["outbox","sent",
"lost"]:[];await Lt(["cards","list","meta",...e],async n=>{t.reset&&(await ob(n),await Ec(n));let s=new Set(e.
length?await n.objectStore("lost").getAllKeys():[]);for(let a of t.cards)Lc(n,a),s.has(a.code)&&await ab(n,a);
let o=n.objectStore("meta");t.shop&&o.put(t.shop,"shop"),o.put(t.cursor,"cursor"),o.put(!!t.more,"more")},{patience:tb})}
async function ob(t){let[e,n]=[t.objectStore("cards"),t.objectStore("lost")];for(let s of await e.getAll())n.put(
s);e.clear(),t.objectStore("list").clear()}async function ab(t,e){let n=await t.objectStore("lost").get(e.code);
t.objectStore("lost").delete(e.code);let s=new Set(e.trials.map(r=>r.id)),o=new Set(await t.objectStore("outbo\
x").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>t.objectStore("outbox").put(
Rc(e.code,r,l-a.length)))}function Rc(t,{number:e,received_at:n,correction:s,...o},a){return{id:o.id,kind:"tri\
al",code:t,body:o,number:a,queued_at:n,again:!0}}async function Ic(t){await Lt("outbox",({store:e})=>{t.trials.
forEach((n,s)=>{e.put({...Rc(t.code,n,s-t.trials.length),missing:!0})})})}async function No(){return qt(["meta",
"lost"],async t=>await t.objectStore("meta").get("more")?[]:t.objectStore("lost").getAll())}async function Co(t){
await Lt("lost",({store:e})=>e.delete(t))}var tb,eb,sb,$t=$(()=>{Nt();Ee();tb=2e4;eb=(t,e)=>t.revision<e.revision||
t.revision===e.revision&&(t.trials_total<e.trials_total||t.proposals_total<e.proposals_total);sb=async()=>await qt(
"lost",({store:t})=>t.count())>0});function rb(){try{return{...Wc,...JSON.parse(localStorage.getItem(Dc)??"{}")}}catch{return{...Wc}}}function C(){
return qn}function Ne(t){qn={...qn,...t};try{localStorage.setItem(Dc,JSON.stringify(qn))}catch{}Bo();for(let e of Kr)
e(qn)}function ft(t,e){Kr.add(t),e?.addEventListener("abort",()=>Kr.delete(t))}function Bo(){document.documentElement.
dataset.theme=qn.theme}var Dc,Wc,Kr,qn,et=$(()=>{Dc="flangebook.settings",Wc={units:"mm",inches:"decimal",theme:"\
day",name:"",paper:"A4"},Kr=new Set,qn=rb()});function Uc(t){return Fs!==null&&t!=="pair"&&!(jc?.labels_open&&ib.includes(t))}async function an(t){Yr+=1;try{
let{body:e}=await T("GET","/me",{signal:t,timeout:4e3});return jc=e,rc(e)&&document.dispatchEvent(new CustomEvent(
"rights")),e}finally{Yr-=1}}async function Gc(t){Fs!==t&&(Fs=t,await Promise.all([an().catch(()=>null),Cc().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function Vc(t,e){let{body:n}=await T(
"POST","/pair",{body:{code:t,name:e}});return C().name||Ne({name:n.name}),Fs=null,Hc=performance.now(),await an(),
n}async function qc(){await T("POST","/leave",{}),await Gc("unknown")}function zc(){document.addEventListener(
"not-paired",t=>{let{why:e,asked:n}=t.detail;n>Hc&&Gc(e)}),document.addEventListener("other-role",Fc),Hn()!=="\
owner"&&Fc()}function Fc(){Yr||an().catch(()=>null)}var zt,ib,jc,Fs,Hc,Yr,Ce,Po,rn=$(()=>{U();Et();$t();et();zt=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Bench\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},ib=["\
card","step"],jc=null,Fs=null,Hc=-1/0,Yr=0,Ce=()=>Fs;Po=t=>t instanceof M||t instanceof Error?t.message:String(
t)});function sd(t,e){if(!ti(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return Yc!==
void 0?Yc.createHTML(e):e}function hn(t,e,n=t,s){if(e===ie)return e;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=Us(e)?
void 0:e._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(t),o._$AT(t,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(e=hn(t,o._$AS(t,e.values),o,s)),e}var Xr,Kc,Ro,Yc,Zr,
we,Qr,lb,dn,Hs,Us,ti,ed,Jr,js,Jc,Xc,ln,Zc,Qc,nd,ei,i,x,bS,ie,d,td,cn,od,Gs,Io,zn,un,Wo,Do,Fo,jo,ad,cb,Be,_=$(()=>{
Xr=globalThis,Kc=t=>t,Ro=Xr.trustedTypes,Yc=Ro?Ro.createPolicy("lit-html",{createHTML:t=>t}):void 0,Zr="$lit$",
we=`lit$${Math.random().toFixed(9).slice(2)}$`,Qr="?"+we,lb=`<${Qr}>`,dn=document,Hs=()=>dn.createComment(""),
Us=t=>t===null||typeof t!="object"&&typeof t!="function",ti=Array.isArray,ed=t=>ti(t)||typeof t?.[Symbol.iterator]==
"function",Jr=`[ 	
\f\r]`,js=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Jc=/-->/g,Xc=/>/g,ln=RegExp(`>|${Jr}(?:([^\\s"'\
>=/]+)(${Jr}*=${Jr}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Zc=/'/g,Qc=/"/g,nd=/^(?:script|style|textarea|title)$/i,ei=t=>(e,...n)=>({_$litType$:t,
strings:e,values:n}),i=ei(1),x=ei(2),bS=ei(3),ie=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),td=new WeakMap,
cn=dn.createTreeWalker(dn,129);od=(t,e)=>{let n=t.length-1,s=[],o,a=e===2?"<svg>":e===3?"<math>":"",r=js;for(let l=0;l<
n;l++){let c=t[l],h,u,p=-1,m=0;for(;m<c.length&&(r.lastIndex=m,u=r.exec(c),u!==null);)m=r.lastIndex,r===js?u[1]===
"!--"?r=Jc:u[1]!==void 0?r=Xc:u[2]!==void 0?(nd.test(u[2])&&(o=RegExp("</"+u[2],"g")),r=ln):u[3]!==void 0&&(r=
ln):r===ln?u[0]===">"?(r=o??js,p=-1):u[1]===void 0?p=-2:(p=r.lastIndex-u[2].length,h=u[1],r=u[3]===void 0?ln:u[3]===
'"'?Qc:Zc):r===Qc||r===Zc?r=ln:r===Jc||r===Xc?r=js:(r=ln,o=void 0);let g=r===ln&&t[l+1].startsWith("/>")?" ":"";
a+=r===js?c+lb:p>=0?(s.push(h),c.slice(0,p)+Zr+c.slice(p)+we+g):c+we+(p===-2?l:g)}return[sd(t,a+(t[n]||"<?>")+
(e===2?"</svg>":e===3?"</math>":"")),s]},Gs=class t{constructor({strings:e,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=e.length-1,c=this.parts,[h,u]=od(e,n);if(this.el=t.createElement(h,s),cn.currentNode=this.el.content,
n===2||n===3){let p=this.el.content.firstChild;p.replaceWith(...p.childNodes)}for(;(o=cn.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let p of o.getAttributeNames())if(p.endsWith(Zr)){let m=u[r++],
g=o.getAttribute(p).split(we),b=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:b[2],strings:g,ctor:b[1]===
"."?Wo:b[1]==="?"?Do:b[1]==="@"?Fo:un}),o.removeAttribute(p)}else p.startsWith(we)&&(c.push({type:6,index:a}),
o.removeAttribute(p));if(nd.test(o.tagName)){let p=o.textContent.split(we),m=p.length-1;if(m>0){o.textContent=
Ro?Ro.emptyScript:"";for(let g=0;g<m;g++)o.append(p[g],Hs()),cn.nextNode(),c.push({type:2,index:++a});o.append(
p[m],Hs())}}}else if(o.nodeType===8)if(o.data===Qr)c.push({type:2,index:a});else{let p=-1;for(;(p=o.data.indexOf(
we,p+1))!==-1;)c.push({type:7,index:a}),p+=we.length-1}a++}}static createElement(e,n){let s=dn.createElement("\
template");return s.innerHTML=e,s}};Io=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:s}=this.
_$AD,o=(e?.creationScope??dn).importNode(n,!0);cn.currentNode=o;let a=cn.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let h;c.type===2?h=new zn(a,a.nextSibling,this,e):c.type===1?h=new c.ctor(a,c.name,c.strings,this,
e):c.type===6&&(h=new jo(a,this,e)),this._$AV.push(h),c=s[++l]}r!==c?.index&&(a=cn.nextNode(),r++)}return cn.currentNode=
dn,o}p(e){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(e,s,n),n+=s.strings.length-2):
s._$AI(e[n])),n++}},zn=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,s,o){this.type=2,this.
_$AH=d,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=hn(this,e,n),Us(e)?e===d||e==null||e===""?(this.
_$AH!==d&&this._$AR(),this._$AH=d):e!==this._$AH&&e!==ie&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==
void 0?this.T(e):ed(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this.
_$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==d&&Us(this._$AH)?this._$AA.nextSibling.data=e:this.
T(dn.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:s}=e,o=typeof s=="number"?this._$AC(e):(s.el===
void 0&&(s.el=Gs.createElement(sd(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new Io(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(e){let n=td.get(e.strings);return n===void 0&&td.
set(e.strings,n=new Gs(e)),n}k(e){ti(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of e)
o===n.length?n.push(s=new t(this.O(Hs()),this.O(Hs()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){
let s=Kc(e).nextSibling;Kc(e).remove(),e=s}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},
un=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,s,o,a){this.
type=1,this._$AH=d,this._$AN=void 0,this.element=e,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=d}_$AI(e,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)e=hn(this,e,n,0),r=!Us(e)||e!==this._$AH&&e!==ie,r&&(this._$AH=e);else{let l=e,c,h;
for(e=a[0],c=0;c<a.length-1;c++)h=hn(this,l[s+c],n,c),h===ie&&(h=this._$AH[c]),r||=!Us(h)||h!==this._$AH[c],h===
d?e=d:e!==d&&(e+=(h??"")+a[c+1]),this._$AH[c]=h}r&&!o&&this.j(e)}j(e){e===d?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,e??"")}},Wo=class extends un{constructor(){super(...arguments),this.
type=3}j(e){this.element[this.name]=e===d?void 0:e}},Do=class extends un{constructor(){super(...arguments),this.
type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==d)}},Fo=class extends un{constructor(e,n,s,o,a){super(
e,n,s,o,a),this.type=5}_$AI(e,n=this){if((e=hn(this,e,n,0)??d)===ie)return;let s=this._$AH,o=e===d&&s!==d||e.capture!==
s.capture||e.once!==s.once||e.passive!==s.passive,a=e!==d&&(s===d||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},jo=class{constructor(e,n,s){
this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(e){
hn(this,e)}},ad={M:Zr,P:we,A:Qr,C:1,L:od,R:Io,D:ed,V:hn,I:zn,H:un,N:Do,U:Fo,B:Wo,F:jo},cb=Xr.litHtmlPolyfillSupport;
cb?.(Gs,zn),(Xr.litHtmlVersions??=[]).push("3.3.3");Be=(t,e,n)=>{let s=n?.renderBefore??e,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new zn(e.insertBefore(Hs(),a),a,void 0,n??{})}return o._$AI(
t),o}});function qs(t){return t.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function W(t){
return t.length>3?`${t.slice(0,3)}-${t.slice(3)}`:t}function ut(t){let e=qs(t),n=[...e].filter(s=>!Vs.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:e,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return e.length>7?{code:e,whole:!1,
fault:`A card code has seven characters. This one has ${e.length}.`}:e.length<7?{code:e,whole:!1,fault:""}:id(
e.slice(0,-1))!==e.at(-1)?{code:e,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:e,whole:!0,fault:""}}function ni(){let t=crypto.getRandomValues(
new Uint8Array(6)),e=Array.from(t,n=>Vs[n%Vs.length]).join("");return e+id(e)}function id(t){let e=0,n=2;for(let s of t)
e^=rd(n,Vs.indexOf(s)),n=rd(n,2);return Vs[e]}function rd(t,e){let n=0;for(let s=e,o=t;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var Vs,dt=$(()=>{Vs="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});var pn,Ho,Kn,si=$(()=>{pn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Ho=t=>(...e)=>({
_$litDirective$:t,values:e}),Kn=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,s){this._$Ct=e,
this._$AM=n,this._$Ci=s}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}}});var kS,ld,db,Uo,oi=$(()=>{_();({I:kS}=ad),ld=t=>t.strings===void 0,db={},Uo=(t,e=db)=>t._$AH=e});var vt,Pe=$(()=>{_();si();oi();vt=Ho(class extends Kn{constructor(t){if(super(t),t.type!==pn.PROPERTY&&t.type!==
pn.ATTRIBUTE&&t.type!==pn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!ld(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[
e]){if(e===ie||e===d)return e;let n=t.element,s=t.name;if(t.type===pn.PROPERTY){if(e===n[s])return ie}else if(t.
type===pn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(s))return ie}else if(t.type===pn.ATTRIBUTE&&n.getAttribute(
s)===e+"")return ie;return Uo(t),e}})});function Yn(t,e=hd){return Object.fromEntries(e.filter(n=>t[n]!==void 0).map(n=>[n,t[n]]))}function cd(t){return Array.
isArray(t)?[...t].sort((e,n)=>e.step-n.step).map(({step:e,set_angle_deg:n,punch_depth_mm:s})=>[e,n??null,s??null]):
t??null}function Jn(t,e,n){let s=[];for(let[l,c]of[["title","Title"],["note","Note"],["archived","In use"]]){let[
h,u]=[t[l],e[l]];h!==void 0&&!Go(h,n[l])&&s.push({name:l,label:c,shop:n[l],yours:h,before:u})}if(!t.settings)return s;
let[o,a,r]=[t.settings,e.settings??[],n.settings].map(ud);for(let l of new Set([...o.keys(),...a.keys()])){let[
c,h,u]=[o.get(l),a.get(l),r.get(l)];dd(c,h)||dd(c,u)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,
shop:u,yours:c,before:h})}return s}function pd(t,e,n){let s={},o=t.filter(l=>e[l.name]==="yours");for(let l of o)
l.name.startsWith("settings ")||(s[l.name]=l.yours);let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)
return s;let r=ud(n.settings);for(let l of a){let c=Number(l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(
c)}return{...s,settings:[...r.values()]}}var hd,Go,Vo,ai,ud,dd,Xn=$(()=>{hd=["title","note","archived","settin\
gs"];Go=(t,e)=>JSON.stringify(cd(t))===JSON.stringify(cd(e));Vo=(t,e)=>Yn(t,hd.filter(n=>n in t&&!Go(t[n],e[n]))),
ai=({before:t={}},e)=>Object.keys(t).every(n=>Go(t[n],e[n]));ud=t=>new Map(t.map(e=>[e.step,e])),dd=(t,e)=>Go(
t?[t]:[],e?[e]:[])});async function qo(t){ri.add(t.id);try{return await md(t)}finally{ri.delete(t.id)}}async function md(t){let e;try{
e=await Tc(t)}catch(n){let s=await mb(t);return s||(await pb(n),md(t))}try{return await gd(e,4e3)??{where:"her\
e",answer:null}}catch(n){if(n instanceof F||n instanceof Vt||!li(n))return{where:"here",answer:null};throw await Eo(
e.id),n}}async function pb(t){ii.add(t),document.dispatchEvent(new CustomEvent("held")),await new Promise(e=>{
setTimeout(e,hb),document.addEventListener("storage",e,{once:!0})}),ii.delete(t),document.dispatchEvent(new CustomEvent(
"held"))}async function mb(t){try{return{where:"shop",answer:(await bd({...t,number:0,queued_at:""},8e3)).body}}catch(e){
if(e instanceof F||!li(e))return null;throw e}}async function fd(){return Gn("outbox",ub,fb)}async function fb(){
let t=0;for(let{id:e}of await Dt()){if(ri.has(e))continue;let n=await Ws(e);if(!(!n||!await gb(n)))try{await gd(
n,8e3)&&(t+=1)}catch(s){if(s instanceof F)break;li(s)&&await Vn(n.id,{refused:s.message,missing:s.status===404})}}
return{sent:t,left:(await Dt()).length}}async function gd(t,e){if(!await $b(t))return null;let n=await Ws(t.id)??
t;try{let s=await(n.parked?wd(n,e):bd(n,e));return await $d(n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){
if(!(s instanceof M&&s.status===412)||n.parked)throw s;return bb(n,e)}}async function $b({id:t,code:e,after:n,
before:s,parked:o}){if(!n||o)return!0;if(await Ws(n))return!1;if(!(await Oo(n))?.proposed)return!0;let a=await Xt(
e);return!a||a.proposals?.some(r=>r.id===n)?!1:(await Vn(t,ai({before:s},a)?{after:a.revision_id}:{parked:!0}),
!0)}async function bb(t,e){if(t.body.part)throw new M(wb);let{body:n,at:s}=await T("GET",`/cards/${t.code}`,{timeout:e});
await re(n);let o=(t.body.settles??[]).some(l=>n.proposals.some(c=>c.id===l));if(o||!Jn(t.body,t.before??{},n).
length)return await Ds(t,s),await Lo(t.id,n.revision_id,l=>ai(l,n)),{where:o?"settle":"shop",answer:n};let a={
...t,parked:!0};await Vn(t.id,{parked:!0});let r=await wd(a,e);return await $d(a,r),{where:"settle",answer:r.body}}
async function $d(t,{body:e,at:n}){t.kind!=="trial"&&(await re(e).catch(()=>{}),!t.parked&&t.after&&e.revision_id===
t.after&&await Lo(t.id,t.after)),await Ds(t,n,!!t.parked),await Oc(n)}function bd({kind:t,code:e,id:n,body:s,after:o,
etag:a,missing:r},l){return t==="trial"?T("POST",`/cards/${e}/trials`,{body:r?{...s,again:!0}:s,timeout:l}):T(
"PUT",`/cards/${e}`,{body:{...s,id:n,...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function wd({id:t,code:e,body:n,
before:s,revision:o,queued_at:a},r){let{reason:l,by:c,settles:h,...u}=n,p={...l?{reason:l}:{},...c?{by:c}:{}};
return T("POST",`/cards/${e}/proposals`,{body:{id:t,changes:u,before:s,revision:o,made_at:a,...p},timeout:r})}
function li(t){if(!(t instanceof M))throw t;return t.status<500&&![401,408,429].includes(t.status)}var hb,ub,ri,
ii,zs,gb,wb,Zn=$(()=>{U();Xn();Nt();$t();Ee();Mo();hb=3e3,ub=15e3;ri=new Set;ii=new Set,zs=()=>[...ii].at(-1)?.
message??"";gb=async({refused:t,again:e,missing:n,code:s})=>!t||!!(e&&n&&await Xt(s));wb={title:"Changed meanw\
hile",status:412,detail:"The part was changed here, the shop was put back to an earlier day, and the card was \
changed again since. Open the card and make the change anew."}});function yd(t,e){let s=e.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...Yn(c.body)}),
t),o=e.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(t.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??t.revision_id,here:o}}async function mn(t){return yd(t,
await on(t.code).catch(()=>[]))}async function ci(t){let e=await Xt(t);return e&&yd(e,(await on(t)).filter(n=>n.
body.settles))}async function Ks(t){let e=await Xt(t);return e&&mn(e)}async function Re(t,e,{reason:n="",settles:s=[]}={}){
let o=Vo(e,t),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:t};let{name:r}=C(),l=await qo(
{id:Wt(),kind:a.every(h=>h==="note")&&!s.length?"note":"edit",code:t.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:Yn(t,a),after:t.after,etag:t.etag,revision:t.revision}),c=await Ks(t.
code).catch(()=>{});return{where:l.where,card:c??l.answer??{...t,...o}}}var Ie=$(()=>{Xn();Nt();Zn();et();$t()});function di(t){if(t.limits!==void 0)return t.limits;let e=[t,...t.corrections??[]].filter(_b);if(!e.length)return null;
let n=vb(t)+.5,s=Math.max(Math.min(...e.map(r=>r.set_angle_deg)),n),o=e.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function le(t,e){let n=di(
t);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=e;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function vb({drawing:t,v_opening_mm:e}){let n=(t?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&e?2*Math.atan(e/2/Math.min(...n))*yb:0}var _d,yb,_b,fn=$(()=>{_d=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],yb=180/Math.PI;_b=t=>typeof t.set_angle_deg=="number"&&typeof t.punch_depth_mm=="number"});function ce(){return We}async function zo(t){let e=await Dt().catch(()=>[]),n=await No().catch(()=>[]);We={...We,
...t,waiting:e.length,words:ui(e),settle:await xb(e).catch(()=>[]),lost:n.length,refused:e.filter(s=>s.refused).
length},document.documentElement.dataset.reached=String(We.reached),document.documentElement.dataset.settle=String(
We.settle.length),document.documentElement.dataset.waiting=String(We.waiting),document.dispatchEvent(new CustomEvent(
"sync",{detail:We}))}function ui(t){let n=["trial","note","edit"].map(s=>({kind:s,many:t.filter(o=>o.kind===s).
length})).filter(({many:s})=>s).map(({kind:s,many:o})=>`${o} ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):
`${n.slice(0,-1).join(", ")} and ${n.at(-1)}`}async function xb(t){let e=(await Nc()).flatMap(({code:n,settle:s})=>Array(
s).fill(n));for(let n of t)for(let s of n.body.settles??[])e.includes(n.code)&&e.splice(e.indexOf(n.code),1);return e}
function De(t,e){let n=t||!!(e&&!(e instanceof F));n!==We.reached&&zo({reached:n})}function Qn(){return zo({})}
function j(){return Ys?(hi=!0,Ys):(Ys=Sb().finally(()=>Ys=void 0),Ys)}async function Sb(){do hi=!1,await Tb();while(hi)}
async function Tb(){try{await vd(),(await fd()).sent>0&&await vd(),await zo({reached:!0,at:new Date().toISOString(),
unkept:!1})}catch(t){await zo(t instanceof F?{reached:!1}:t instanceof M?{reached:!0}:{unkept:!0}),!(t instanceof
F||t instanceof M&&t.status===401)&&!(t instanceof Vt)&&console.warn("changes feed:",t)}}async function vd(){for(;await Gn(
"feed",kb,Mb););}async function Mb(){let t=await Bc()??"",{body:e}=await T("GET",`/changes?since=${encodeURIComponent(
t)}`,{timeout:15e3});return await Pc(e),e.more}function kd(){j(),addEventListener("online",()=>j()),addEventListener(
"offline",()=>j()),document.addEventListener("visibilitychange",()=>document.visibilityState==="visible"&&j()),
setInterval(()=>document.visibilityState==="visible"&&j(),1e4)}var kb,We,Ys,hi,bt=$(()=>{U();Nt();Zn();Ee();$t();
Mo();kb=3e3,We={reached:null,waiting:0,words:"",refused:0,settle:[],lost:0,at:null,unkept:!1},hi=!1});async function wt(t,e,n){let s=null,o=await Xt(t).catch(a=>{s=a});if(!o){await e(await mn(await Ab(t,n,s)),{where:"\
shop"});return}await e(await mn(o),{where:"device"}),Ob(o,e,n)}async function Ab(t,e,n){try{return await ye(t,
e)}catch(s){throw s instanceof F&&n instanceof Vt?n:s}}async function xd(){try{let t=await Le();if(t.length||!ce().
unkept)return{list:t,where:"device"}}catch{}try{let{body:t}=await T("GET","/cards?archived=all&limit=200",{timeout:4e3});
return De(!0),{list:t.cards,where:"shop"}}catch(t){return De(!1,t),{list:[],where:"shop"}}}async function Ob(t,e,n){
try{let s=await ye(t.code,n);!n.aborted&&s.etag!==t.etag&&await e(await mn(s),{where:"shop"})}catch{}}async function Sd(t,e){
if(await Xt(t).catch(()=>{}))return"device";try{return await ye(t,e),"shop"}catch(n){if(n instanceof M&&n.status===
404)return"nowhere";if(n instanceof F)return"silent";throw n}}async function ye(t,e){try{let{body:n}=await T("\
GET",`/cards/${t}`,{signal:e,timeout:4e3});return De(!0),await re(n).catch(()=>n)}catch(n){throw e?.aborted||De(
!1,n),n}}async function Ko(t,e){let{body:n}=await T("PUT",`/cards/${t.code}`,{body:e,etag:t.etag,timeout:e.replan?
6e4:8e3});return re(n).catch(()=>n)}function Qt(t,e){let n=t.settings?.find(a=>a.step===e.number),s={set_angle_deg:n?.
set_angle_deg??e.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??e.punch_depth_mm},o=le(e,s);return{...o?s:{set_angle_deg:null,
punch_depth_mm:null},firstHit:n||!o?null:e.first_hit??null,gauge_x_mm:n?.gauge_x_mm??e.gauge_x_mm,fromTrial:!!n,
reason:n?.reason??""}}var kt=$(()=>{U();Ie();fn();Ee();$t();bt()});function Yo(t){let e=Hn()==="bench"?"This device is a bench screen":"This device is an operator's",n=ac(t)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${e}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var R,at,rt=$(()=>{_();Et();ts();R=(t,e,n=d)=>ht(t)?e:n,at=(t,e,n=d)=>_e(t)?e:n});function nt(t,e){let n=t.toFixed(e);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function y(t,e={}){
return t==null?{text:"–",unit:""}:te()?C().inches==="fraction"?{text:Nb(t/de),unit:"in"}:{text:nt(t/de,(e.digits??
1)+2),unit:"in"}:{text:nt(t,e.digits??1),unit:"mm"}}function Nb(t){let e=Math.round(Math.abs(t)*64),n=e%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(e/64),a=t<0&&e>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function gt(t,{up:e=!1}={}){if(t==null)return{text:"–",unit:""};let n=te()?t/pi:t,s=Math.abs(
n)<10?1:0;return{text:nt(e?Td(n,s):n,s),unit:te()?"tons":"kN"}}function Ot(t,{up:e=!1}={}){if(t==null)return{text:"\
–",unit:""};let n=te()?t/pi*Lb:t,s=Math.abs(n)<20?1:0;return{text:nt(e?Td(n,s):n,s),unit:te()?"tons/ft":"kN/\
m"}}function Td(t,e){let n=10**e;return Math.ceil(t*n-1e-9)/n}function S(t,e=1){return t==null?{text:"–",unit:""}:
{text:nt(t,e),unit:"°"}}function Js(t){if(t==null)return{text:"–",unit:""};let e=te()?t/Eb:t;return{text:nt(
e,e<10?2:1),unit:te()?"lb":"kg"}}function gn(t,e){if(/_(low|high)$/.test(t))return gn(t.replace(/_(low|high)$/,
""),e);if(t.endsWith("_kn_per_m"))return Ot(e);if(t.endsWith("_mm_s")){let n=y(e,{digits:0});return{text:n.text,
unit:`${n.unit}/s`}}return t.endsWith("_mm")?y(e,{digits:Math.abs(e)<10?2:1}):t.endsWith("_kn")?gt(e):t.endsWith(
"_deg")?S(e):t.endsWith("_kg")?Js(e):t.endsWith("_percent")?{text:nt(e,0),unit:"%"}:{text:String(Math.round(e*
100)/100),unit:""}}function f(t){return t.unit==="°"?`${t.text}°`:`${t.text} ${t.unit}`.trim()}function mi(){
return te()?{unit:"tons",size:pi}:{unit:"kN",size:1}}function P(){return te()?"in":"mm"}function Q(t,e=P()){let n=t.
trim().replace(/^(\d+),(\d+)$/,"$1.$2");return/^[+-]?(\d+(\.\d*)?|\.\d+|\d+\s*\/\s*\d+|\d+\s+\d+\s*\/\s*\d+)$/.
test(n)?`${n} ${e}`:n}function Md(t){let[,e,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.exec(t??"")??[];return e?
Number(e)*(n==="in"?de:1):null}function q(t){if(t==null)return"";let e=te()?t/de:t;return String(Number(e.toFixed(
te()?4:3)))}var de,pi,Eb,Lb,te,O=$(()=>{et();de=25.4,pi=8.896443230521,Eb=.45359237,Lb=.3048,te=()=>C().units===
"inch"});function Ft(t,e){return t.length*e*.6+e*.3}function Cb(t,e){return Math.abs(t.x-e.x)*2<t.width+e.width&&Math.abs(
t.y-e.y)*2<t.height+e.height}function Ad(t,[[e,n],[s,o]]){let a=0,r=1,l=[[e-t.x,s-e,t.width/2],[n-t.y,o-n,t.height/
2]];for(let[c,h,u]of l){if(h===0){if(Math.abs(c)>u)return!1;continue}let[p,m]=[(-u-c)/h,(u-c)/h];a=Math.max(a,
Math.min(p,m)),r=Math.min(r,Math.max(p,m))}return a<=r}function Bb([t,e],[n,s]){return Jo(t,e,n)!==Jo(t,e,s)&&
Jo(n,s,t)!==Jo(n,s,e)}function Jo(t,e,n){return(e[0]-t[0])*(n[1]-t[1])>(e[1]-t[1])*(n[0]-t[0])}var Xo,Zo=$(()=>{
Xo=class{constructor(e){this.edges=e,this.taken=[]}choose(e){let n=e[0],s=1/0;for(let o of e){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:e,
lines:n=[]}){let s=this.taken.filter(l=>Cb(e,l)).length,o=this.edges.filter(l=>Ad(e,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(h=>Bb(c,h)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(h=>Ad(h,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function St(t){return t.length?`M${t.map(([e,n])=>`${e} ${-n}`).join("L")}Z`:""}function Xs(t){return t.length?
`M${t.map(([e,n])=>`${e} ${-n}`).join("L")}`:""}function Kt(t){let e=t.flat().map(([s])=>s),n=t.flat().map(([,
s])=>s);return[Math.min(...e),Math.min(...n),Math.max(...e),Math.max(...n)]}function Od([t,e,n,s],o){return`${t-
o} ${-s-o} ${n-t+2*o} ${s-e+2*o}`}function $n([t,e,n,s],o,a){let r=Math.min(o/Math.max(n-t,1e-6),a/Math.max(s-
e,1e-6));return([l,c])=>[(l-t)*r,(s-c)*r]}var Fe=$(()=>{});function H(t){let{text:e}=y(t,{digits:2});return C().inches==="fraction"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function Ld({section:t,part:e},{pixels:n=es(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=$n(Kt([t.outline]),n-2*l,s-2*l),h=t.outline.map(c),u=new Xo(h.map((v,E)=>[v,h[(E+1)%h.length]])),p=Ib(t).map(
(v,E)=>Db(v.map(c),H(e.flats_mm[E]),u,18)),m=t.bend_points.map((v,E)=>Wb(c(v),E+1,e.bends[E],u,18)),[g,b,w,L]=Hb(
[...h,...m.flatMap(v=>Ed(v.box)),...p.flatMap(v=>[...Ed(v.box),...v.lines.flat()])]),[B,N]=[w-g+12,L-b+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${Rb(e)}
    width=${B}
    height=${N}
    viewBox="${g-6} ${b-6} ${B} ${N}">
    <path class="sheet" d="M${h.map(v=>v.join(" ")).join("L")}Z" />
    ${p.map(({lines:v,box:E,text:X})=>x`${v.map(([ct,ko])=>x`<path class="dimension" d="M${ct}L${ko}"/>`)}
      ${Fb(v[0])}${jb(E,X,18)}`)}
    ${m.map(({box:v,text:E,number:X,badge:ct})=>x`<circle class="badge ${X===a?"marked":""}" cx=${ct[0]} cy=${ct[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${ct[0]} y=${ct[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${X}</text>
      <text x=${ct[0]+18*.95} y=${v.y} font-size=${18}
        dominant-baseline="central">${E}</text>`)}
  </svg>`}function es(){return Math.min(Math.max(innerWidth-32,300),720)}function Rb(t){return`Section. ${t.flats_mm.
map((n,s)=>{let o=t.bends[s],a=o?`, bend ${s+1}: ${Nd(o)} ${o.direction}`:"";return`flat ${s+1}: ${f(y(n))}${a}`}).
join("; ")}.`}function Nd(t){return t.kind==="closed_hem"?"hem":t.kind==="open_hem"?"open hem":f(S(t.included_angle_deg)).
replace(".0°","°")}function Ib({dimensions:t,bend_points:e,centre_line:n}){if(t)return t;let s=[n[0],...e,n[n.
length-1]];return s.slice(1).map((o,a)=>[s[a],o])}function Wb(t,e,n,s,o){let a=Nd(n),r=Ft(a,o)+1.6*o,l=[1.4,1.9,
2.6].flatMap(u=>Pb.map(p=>{let m=t[0]+Math.cos(p)*(u*o+r/2-o*.6),g=t[1]+Math.sin(p)*u*o;return{box:{x:m,y:g,width:r,
height:o*1.5},cost:u*2}})),{box:c}=s.choose(l),h=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:e,badge:h}}function Db([
t,e],n,s,o){let a=Math.hypot(e[0]-t[0],e[1]-t[1])||1,r=[-(e[1]-t[1])/a,(e[0]-t[0])/a],[l,c]=[Ft(n,o),o*1.3],h=(m,g)=>[
m[0]+r[0]*g,m[1]+r[1]*g],u=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap(g=>[.5,.3,.7].map(b=>{let[w,L]=[h(t,g*o),h(
e,g*o)],B={x:w[0]+(L[0]-w[0])*b,y:w[1]+(L[1]-w[1])*b,width:l,height:c},N=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(
g*r[1])*o*.9:0,v=[[w,L],[h(t,Math.sign(g)*o*.5),h(w,Math.sign(g)*4)],[h(e,Math.sign(g)*o*.5),h(L,Math.sign(g)*
4)]];return{box:{...B,y:B.y+N},cost:Math.abs(g)+(b===.5?0:.5),lines:v}}))),p=s.choose(u);return{box:p.box,lines:p.
lines,text:n}}function Fb(t){return t.map(([e,n])=>x`<path class="dimension tick" d="M${e-4} ${n+4}L${e+4} ${n-
4}"/>`)}function jb({x:t,y:e,width:n,height:s},o,a){return x`<rect class="ground" x=${t-n/2} y=${e-s/2} width=${n} height=${s}/>
    <text x=${t} y=${e} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function Ed({
x:t,y:e,width:n,height:s}){return[[t-n/2,e-s/2],[t+n/2,e+s/2]]}function Hb(t){return Kt([t])}var Pb,ee=$(()=>{
_();et();O();Zo();Fe();Pb=[0,90,180,270,45,135,225,315].map(t=>t*Math.PI/180)});function k(t,e=Ub[t]){return i`<span class="flag ${t}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${Gb[t]}</svg>${e}</span
  >`}function bn(t,e){return t.replace(/\{(\w+)\}/g,(n,s)=>s in e?f(gn(s,e[s])):n)}function Vb({step:t,steps:e=[]}){
return e.length>1?i`<b>Steps ${e.join(", ")}.</b> `:t?i`<b>Step ${t}.</b> `:d}function yt(t,{quiet:e=!1}={}){let n=t.
filter(s=>!e||s.level!=="ok").sort((s,o)=>Cd[jt(s)]-Cd[jt(o)]);return n.length===0?d:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${k(jt(s))}
          <div class="say">
            ${Vb(s)}${bn(s.template,s.numbers)}
            ${s.do?i`<div class="do">${bn(s.do_template??s.do,s.numbers)}</div>`:d}
          </div>
        </li>`)}
  </ul>`}var Ub,Cd,Gb,jt,V=$(()=>{_();O();Ub={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",ok:"\
OK"},Cd={stop:0,caution:1,unknown:2,note:3,ok:4},Gb={stop:x`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:x`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:x`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:x`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:x`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};jt=({level:t,sign:e,do:n,
step:s,steps:o=[]})=>e??(t==="ok"&&n&&(s||o.length)?"note":t)});function wn(t){let e=new Date(t);return Number.isNaN(e.valueOf())?"":e.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function st(t){let e=new Date(t);return Number.isNaN(e.valueOf())?"":`${wn(t)}\
, ${e.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function ns({made_at:t,received_at:e}){return e?
!t||Math.abs(Date.parse(t)-Date.parse(e))<qb?st(e):`in the shop ${st(e)}, made ${st(t)} by the device’s clock`:
st(t??"")}function ve({by:t,device:e}){return[t,e===t?"":e].filter(Boolean).join(", ")}var qb,Ht=$(()=>{qb=5*6e4});function Bd(t,{metalName:e,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${t.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${W(s.code)}</span>
            <span class="more">
              ${e(s.metal)}, ${H(s.thickness_mm)} ${P()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${wn(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · put away":""}
              ${zb(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="settle">${k("caution",`${s.settle} to settle`)}</span>`:d}
              ${s.worst==="stop"?k("stop"):d}
            </span>
          </a>
        </li>`)}
  </ul>`}var zb,Pd=$(()=>{_();dt();ee();O();V();Ht();zb=t=>t?i`· <b>${t} ${/^1 \S+$/.test(t)?"waits":"wait"}</b>`:
d});function je(t){if(t instanceof Vt)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${Id}
    </div>`;if(t instanceof F)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let e=t instanceof M?t.message:String(t);return t instanceof M||console.error(t),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${e}
  </div>`}var Tt,xt,Rd,Id,Ct=$(()=>{_();U();Ee();Tt=t=>i`<p class="state" data-test="loading">${t}</p>`,xt=(t,e=d)=>i`<div class="state" data-test="empty">
    <h1>${t}</h1>
    ${e}
  </div>`,Rd=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${Is()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${Id}
  </div>`,Id=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function pt(t,{replace:e=!1}={}){Yb()&&(history[e?"replaceState":"pushState"](null,"",t),ke(!0))}function he(t){
Zs=t}function Yb(){let t=Zs?.();return!t||confirm(t)}function Wd(){Zs?.()?He():ke()}async function ke(t=!1){fi.
abort(),fi=new AbortController,Zs=null;let{signal:e}=fi,n=document.documentElement;delete n.dataset.ready;let s=Jb(
ta(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
He();let o=l=>{clearTimeout(a),e.aborted||Be(l,Qo())};Be(i``,Qo());let a=setTimeout(()=>o(Rd()),Kb);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!ht(r)){o(Yo(r)),n.dataset.ready="n\
ot-yours";return}try{let l=await s.route.load();if(e.aborted)return;scrollTo(0,0),await l.show({params:s.params,
query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{e.
aborted||(n.dataset.ready=s.route.name)},signal:e})}catch(l){if(e.aborted)return;o(je(l)),n.dataset.ready="fai\
led"}t&&!e.aborted&&Qo().focus({preventScroll:!0})}function Jb(t){return t&&Uc(t.route.name)?{route:Fd("pair"),
params:{}}:t}function Dd(){return addEventListener("popstate",()=>ke()),addEventListener("beforeunload",t=>(zs()||
Zs?.())&&t.preventDefault()),document.addEventListener("click",t=>{let e=t.target.closest("a");!e||t.defaultPrevented||
t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||e.target||e.hasAttribute("download")||e.origin!==location.origin||
!ta(e.pathname)||e.hash&&e.pathname===location.pathname||(t.preventDefault(),pt(e.pathname+e.search+e.hash))}),
Qo().replaceChildren(),ke()}var Kb,fi,Zs,Qo,Bt=$(()=>{_();gi();rn();Et();ts();Zn();rt();Ct();Kb=1e3,fi=new AbortController,
Zs=null,Qo=()=>document.getElementById("main")});function na(t,e,n,s){let o=ut(t.code),a=o.fault||(t.asked&&!o.whole?Zb(o.code):"");return i`<form class="code-form" @submit=${l=>{
l.preventDefault(),t.asked=!0,o.whole?pt(`/c/${o.code}`):n()}}>
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
        .value=${vt(t.code)}
        aria-invalid=${a?"true":"false"}
        aria-describedby="code-more"
        @input=${l=>{t.code=l.target.value,t.asked=!1,n()}} />
      <button class="button ${o.whole?"next":""}" data-test="open">Open</button>
    </div>
    <p id="code-more" class="code-more" role="status">
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:Xb(o,e,s)}
    </p>
  </form>`}function Xb(t,e,n){if(!t.whole)return n;let s=e.find(o=>o.code===t.code);return s?i`<span data-test="code-found"
        >${W(t.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A right code, but not on this device yet. Open asks the shop.</span
      >`}var ea,Zb,$i=$(()=>{_();Pe();dt();Bt();ea=()=>({code:"",asked:!1});Zb=t=>t?`A card code has seven cha\
racters. This is ${t.length}.`:"Type the seven characters printed on the label."});var Hd={};tt(Hd,{show:()=>tw});async function tw(t){t.title("Find a card");let e={typed:ea(),search:"",shown:bi},
n=await jd(),s=!1,o=()=>{t.render(i`<div class="home">
        <h1>Find a card</h1>
        <div class="home-scan">
          <a class="button next wide" href="/scan" data-test="scan">${Qb} Scan a label</a>
        </div>
        <div class="home-ways">
          ${na(e.typed,n.list,o,"Seven characters, capitals or not.")}
          <nav class="home-new" aria-label="Start something">
            ${at("/bend",i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`)}
            ${at("/part",i`<a class="button" href="/part" data-test="new-part"
                >${R("cards.create","New part","Plan a part")}</a
              >`)}
          </nav>
        </div>
        ${ew(e,n,s,o)}
      </div>`)};o();let a=async()=>{s||=ce().reached!==null,n=await jd(),o(),(s||n.list.length)&&t.ready()};document.
addEventListener("sync",a,{signal:t.signal}),n.list.length&&t.ready(),await j().then(a)}async function jd(){let[
{list:t,where:e},n,s]=await Promise.all([xd(),Zt().catch(()=>{}),Dt().catch(()=>[])]),o=new Map;for(let{code:r}of s)
o.set(r,ui(s.filter(l=>l.code===r)));let a=new Map((n?.metals??[]).map(r=>[r.code,r.name]));return{list:t,where:e,
waiting:o,metalName:r=>a.get(r)??r}}function ew(t,e,n,s){if(e.list.length===0)return n?ow():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=nw(e,t.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${vt(t.search)}
        @input=${a=>{t.search=a.target.value,t.shown=bi,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${sw(o.length,e,t.search)}</p>
    ${Bd(o.slice(0,t.shown),e)}
    ${o.length>t.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{t.shown+=bi,s()}}>
              Show more
            </button>
          </div>`:d}
  </section>`}function nw({list:t,metalName:e},n){let s=n.toLowerCase().split(/\s+/).filter(Boolean);return s.
length===0?t.filter(o=>!o.archived):t.filter(o=>{let{code:a,title:r,note:l,metal:c}=o,h=`${a} ${W(a)} ${r} ${l}\
 ${c} ${e(c)}`.toLowerCase();return s.every(u=>h.includes(u))})}function sw(t,{list:e,where:n},s){let o=n==="d\
evice"?"on this device":"of the shop";return s.trim()===""?t===1?`1 card ${o}`:`${t} cards ${o}`:t===0?`None o\
f the ${e.length} cards has that.`:`${t} of ${e.length} cards`}function ow(){return ce().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${R("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var bi,Qb,Ud=$(()=>{_();Pe();dt();Nt();kt();$t();bt();rt();Pd();$i();bi=40,Qb=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`});var yn,Gd,Vd,ss,wi=$(()=>{yn=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],Gd=["guaranteed minimum","typical","measured","common practice","from memory"],Vd=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],ss=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function _n(t=""){let n=t.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(qd.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...zd}]}function Jd(t){let e=_n(t),{angle:n,face:s}=e[e.length-1];return Qs(
[...e,{...zd,angle:n,face:s}])}var qd,zd,Kd,Qs,Yd,Xd,to,yi=$(()=>{qd=["v","angle","radius","face","centre","co\
de","rating"],zd={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},Kd=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];Qs=t=>t.map(e=>qd.map(n=>e[n].replaceAll(";",",")).join("; ")).join(
`
`),Yd=(t,e,n)=>Qs(_n(t).map((s,o)=>o===e?{...s,...n}:s));Xd=(t,e)=>Qs(_n(t).filter((n,s)=>s!==e)),to={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var Qd,_i,Zd,vi,ki,sa,os,xi,Si,oa,Ti=$(()=>{Qd="Empty is unknown: checks with it then say so.",_i={name:"ratin\
g_kn_per_m",label:"Rating",type:"rating",unit:"kN/m",hint:"As stamped on the tool or in its maker's papers."},
Zd={name:"segments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned tw\
ice twice."},vi=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],ki=[{name:"con\
dition",label:"Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown",
"unknown"]]},{name:"condition_note",label:"Note on its condition",type:"note"}],sa={name:"name",label:"Name",type:"\
text",broad:!0},os=(t,e)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:t,hint:`One point a l\
ine: x, y. x towards the back gauge, y up. ${e}`,when:n=>n.shape==="points"}),xi=t=>t.shape!=="multi_v",Si=({die_holder_height_mm:t})=>!!t&&
!/^0+([.,]0*)?( mm| in)?$/.test(String(t)),oa={punches:[{title:"What it is",part:"what",fields:[sa,{name:"angl\
e_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_mm",label:"Tip radius",type:"length"}]},{
title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[["straight","\
straight"],["gooseneck","gooseneck"],["points","by points or DXF"]]},{name:"height_mm",label:"Height, tip to s\
eat",type:"length"},{name:"body_width_mm",label:"Width of the body",type:"length"},{name:"neck_relief_mm",label:"\
Throat behind the tip",type:"length",when:t=>t.shape==="gooseneck"},{name:"neck_width_mm",label:"Thickness of \
the neck",type:"length",when:t=>t.shape==="gooseneck",blank:"as the body"},{name:"throat_top_mm",label:"Throat\
 begins to close",type:"length",when:t=>t.shape==="gooseneck",blank:"as high as it can",hint:"Above the tip."},
os("punch","The tip is at 0, 0."),{name:"turned",label:"Sits in the press",type:"yes",options:[["no","as drawn"],
["yes","turned round"]]}]},{title:"Rating and pieces",part:"rest",fields:[_i,Zd]},{title:"Place and condition",
part:"rest",fields:[...vi,...ki]}],dies:[{title:"What it is",part:"what",fields:[sa,{name:"v_opening_mm",label:"\
V opening",type:"length",hint:"Between the sharp corners of face and flanks.",when:xi},{name:"angle_deg",label:"\
Angle of the V",type:"number",unit:"°",when:xi},{name:"shoulder_radius_mm",label:"Shoulder radius",type:"leng\
th",when:xi}]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[
["single_v","single V"],["multi_v","block with several V's"],["points","by points or DXF"]]},{name:"height_mm",
label:"Height",type:"length"},{name:"width_mm",label:"Width",type:"length"},{name:"turned",label:"Sits in the \
press",type:"yes",options:[["no","as drawn"],["yes","turned round"]]},{name:"openings",label:"The V's of the b\
lock",type:"openings",when:t=>t.shape==="multi_v"},{name:"up",label:"V that is up",type:"number",hidden:!0,when:t=>t.
shape==="multi_v"},os("die","The top face is at y 0, the V's middle at x 0.")]},{title:"Rating and pieces",part:"\
rest",fields:[_i,Zd]},{title:"Place and condition",part:"rest",fields:[...vi,...ki]}],holders:[{title:"What it\
 is",part:"what",fields:[sa,_i]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pic\
k",broad:!0,options:[["block","plain block"],["clamps","clamps that stick out"],["points","by points or DXF"]]},
{name:"height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the \
front",type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to\
 the back",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:t=>t.shape===
"clamps"},{name:"body_front_mm",label:"Body above, to the front",type:"length",when:t=>t.shape==="clamps"},{name:"\
body_back_mm",label:"Body above, to the back",type:"length",when:t=>t.shape==="clamps"},os("holder","The punch\
's seat is at 0, 0.")]},{title:"Place and condition",part:"rest",fields:[...vi,...ki]}],press:[{title:"The pre\
ss",part:"what",fields:[sa,{name:"force_kn",label:"Full force",type:"number",unit:"kN"},{name:"bed_length_mm",
label:"Bed length",type:"length"},{name:"between_frames_mm",label:"Between the frames",type:"length"},{name:"o\
pen_height_mm",label:"Open height",type:"length"},{name:"stroke_mm",label:"Stroke",type:"length"},{name:"throa\
t_mm",label:"Throat",type:"length"}]},{title:"Ram and bed",part:"outline",fields:[{name:"ram_width_mm",label:"\
Ram width",type:"length",needed:!0},{name:"ram_height_mm",label:"Ram height",type:"length",needed:!0},{name:"b\
ed_width_mm",label:"Bed width",type:"length",needed:!0},{name:"bed_height_mm",label:"Bed height",type:"length",
needed:!0},{name:"floor_below_die_mm",label:"Floor below the die",type:"length",broad:!0,blank:"not looked at",
hint:"From the face that the die stands on, down to the floor: long parts hang that far."},{...os("ram","From \
the face that carries the holder. Empty: a plain beam."),name:"ram_points_mm",label:"Ram by points",when:void 0,
folded:!0},{...os("bed","From the face that carries the die or its holder. Empty: a plain beam."),name:"bed_po\
ints_mm",label:"Bed by points",when:void 0,folded:!0}]},{title:"Riser or die holder on the bed",part:"rest",fields:[
{name:"die_holder_height_mm",label:"Height under the die",type:"length",blank:"none",broad:!0,hint:"0 or empty\
: the die stands on the bed."},{name:"die_holder_width_mm",label:"Width",type:"length",when:Si,blank:"by point\
s"},{name:"die_holder_rating_kn_per_m",label:"Rating of the die holder",type:"rating",unit:"kN/m",hint:"As sta\
mped on it or in its papers.",when:Si},{...os("die_holder","The die's seat is at y 0, the bed's at minus the h\
eight. Empty: a plain block."),name:"die_holder_points_mm",label:"Die holder by points",when:Si,folded:!0}]},{
title:"What it bears",part:"rest",fields:[{name:"force_per_m_limit_kn_per_m",label:"Most force per length of b\
ed",type:"rating",unit:"kN/m",hint:"What bed and ram bear over a short length."},{name:"off_centre_mm",label:"\
Full force off the middle, up to",type:"length",blank:"unknown"},{name:"deflection_mm",label:"Gives way in the\
 middle",type:"length",broad:!0,blank:"unknown",hint:"Bed and ram together, middle against ends, at full force\
 over the whole bed: from its papers, or from three strips below."},{name:"bending_speed_mm_s",label:"Bending \
speed",type:"number",unit:"mm/s",blank:"unknown"}]},{title:"How it is set",part:"rest",fields:[{name:"set_by",
label:"For a bend the press is set",type:"pick",broad:!0,blank:"not known: read as by angle",options:[["angle",
"by angle"],["depth","by depth"],["stop","by a stop"]]}]},{title:"Back gauge",part:"rest",fields:[{name:"gauge\
_x_min_mm",label:"X from",type:"length"},{name:"gauge_x_max_mm",label:"X to",type:"length"},{name:"gauge_r_min\
_mm",label:"R from",type:"length"},{name:"gauge_r_max_mm",label:"R to",type:"length"},{name:"finger_height_mm",
label:"Finger height",type:"length"},{name:"finger_depth_mm",label:"Finger depth",type:"length"},{name:"gauge_\
repeatability_mm",label:"Comes back to a place within ±",type:"length",broad:!0,blank:"unknown",hint:"As in i\
ts papers. Empty: 0.1 mm is counted with (common practice)."}]},{title:"Holder in the ram, and notes",part:"re\
st",fields:[{name:"holder",label:"Holder",type:"pick",options:[],blank:"none",broad:!0},{name:"note",label:"No\
te",type:"note"}]}]}});function Pt(t=""){let e=t.trim().replace(/^([+-]?\d+),(\d+)$/,"$1.$2");return e===""?null:aw.test(e)?Number(e):
e}function iw(t){let{show:e}=vn.number;return{v:q(t.v_opening_mm),angle:e(t.angle_deg),radius:q(t.shoulder_radius_mm),
face:t.face,centre:q(t.centre_mm),code:t.code??"",rating:e(t.rating_kn_per_m)}}function lw({v:t,angle:e,radius:n,
face:s,centre:o,code:a,rating:r}){let l={v_opening_mm:aa(t),angle_deg:Pt(e),shoulder_radius_mm:aa(n),centre_mm:aa(
o)};return{...Object.fromEntries(Object.entries(l).filter(([,h])=>h!==null)),face:s||"top",code:a||null,rating_kn_per_m:Pt(
r)}}function ra(t,e){return Object.fromEntries(Ue(t).map(({name:n,type:s})=>[n,vn[s].show(e[n])]))}function ia(t,e,n={}){
let s=({name:r,type:l})=>r in n&&vn[l].show(n[r])===e[r]?n[r]:vn[l].take(e[r]),a=Ue(t).filter(({when:r})=>!r||
r(e)).map(r=>({spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||cw(r)).map(
({spec:r,value:l})=>[r.name,l]))}function eh(t){let e={name:t.name??"",note:t.note??"",gauge_family:t.gauge_family??
""};for(let{name:n}of ss)e[n]=vn.number.show(t[n]);for(let{name:n}of yn){for(let s of dw)e[`${n}.${s}`]=vn.number.
show(t[n]?.[s]);e[`${n}.standing`]||="typical"}return e}function nh(t){let e={name:t.name.trim(),note:t.note.trim(),
gauge_family:t.gauge_family||null};for(let{name:n,needed:s}of ss)(t[n]?.trim()||!s)&&(e[n]=Pt(t[n]));for(let{name:n,
needed:s}of yn){let o=["low","nominal","high","source"].some(a=>t[`${n}.${a}`]?.trim());e[n]=o||s?hw(t,n):null}
return e}function hw(t,e){let n=["low","nominal","high"].map(s=>[s,Pt(t[`${e}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(t[`${e}.source`]??"").trim(),standing:t[`${e}.standing`]}}function sh(t,e){
let n={},s=[];for(let[o,a]of Object.entries(t)){let r=`.${o}.`,c=(r.includes(".openings.")?e.filter(u=>u==="op\
enings"):e).filter(u=>r.includes(`.${u}.`)).sort((u,p)=>p.length-u.length)[0],h=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n.openings??=[]).push(...a.map(u=>uw(o,u))):c?(n[c]??=[]).push(...h&&r.endsWith(`.${c}.${h}.`)?a.map(
u=>`Number ${Number(h)+1}: ${u}`):a):s.push(...a.map(u=>`${o}: ${u}`))}return{byName:n,others:s}}function uw(t,e){
let[,n,s]=/openings\.(\d+)(?:\.(\w+))?$/.exec(t)??[];return n===void 0?e:`V ${Number(n)+1}: ${s?`${s}: `:""}${e}`}
var aw,aa,rw,vn,th,Ue,cw,dw,ue=$(()=>{wi();yi();Ti();O();aw=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;aa=(t="")=>t.
trim()===""?null:Q(t),rw=(t="")=>t.split(/[\n;]/).map(e=>e.trim()).filter(Boolean),vn={text:{show:t=>t??"",take:(t="")=>t.
trim()},note:{show:t=>t??"",take:(t="")=>t.trim()},pick:{show:t=>t??"",take:t=>t||null},yes:{show:t=>t?"yes":"\
no",take:t=>t==="yes"},length:{show:q,take:aa},number:{show:t=>t==null?"":String(t),take:Pt},rating:{show:t=>t==
null?"":String(t),take:Pt},lengths:{show:t=>(t??[]).map(q).join(", "),take:(t="")=>t.split(/[,;\n]/).filter(e=>e.
trim()).map(e=>Q(e))},points:{show:t=>(t??[]).map(([e,n])=>`${q(e)}, ${q(n)}`).join(`
`),take:t=>rw(t).map(e=>e.split(e.includes(",")?",":/\s+/).map(n=>Q(n)))},openings:{show:t=>Qs((t??[]).map(iw)),
take:t=>_n(t).map(lw)},figure:{show:String,take:String}};th=t=>vn.points.show(t),Ue=t=>oa[t].flatMap(e=>e.fields);
cw=({type:t,blank:e})=>t==="rating"||e!==void 0,dw=["low","nominal","high","source","standing"]});function la(t){let e={...pw};for(let n of Ai){let s=t.get(Mi[n])?.slice(0,60);if(s==null)continue;let o=` ${P()}`;
e[n]=Oi(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return e}function ca(t){let e=new URLSearchParams;for(let n of Ai){
let s=t[n].trim();s!==""&&e.set(Mi[n],Oi(n)?Q(s):s)}return e.toString()}function eo(t){return mw.filter(e=>t[e].
trim()==="")}function kn(t){let e={};for(let n of Ai){let s=t[n].trim();s!==""&&(e[n]=Oi(n)?Q(s):n==="included\
_angle_deg"?Pt(s):s)}return e}var pw,Mi,Ai,mw,Oi,da=$(()=>{ue();O();pw={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},Mi={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},Ai=Object.keys(Mi),mw=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],Oi=t=>t.endsWith("_mm")});function ha(t){return Object.hasOwn(Ge,t)?t:void 0}async function lt(t,e){try{return await Ei(t,e)}catch(n){let s=n instanceof
F?await Zt():void 0;if(!s?.[t])throw n;return{items:s[t],etag:null,kept:!0}}}async function Ei(t,e){let{body:n,
etag:s}=await T("GET",`/${t}`,{signal:e});return{items:n[t],etag:s,kept:!1}}async function oh(t,e,n){await T("\
PUT",`/${t}`,{body:{[t]:e.map(xn),by:C().name},etag:n})}async function ua(t){try{return await Li(t)}catch(e){let n=e instanceof
F?await Zt():void 0;if(!n)throw e;return{press:n.press??null,etag:null,kept:!0}}}async function Li(t){let{body:e,
etag:n}=await T("GET","/press",{signal:t});return{press:e.press,etag:n,kept:!1}}async function ah(t,e){await T(
"PUT","/press",{body:{press:xn(t),by:C().name},etag:e})}function xn({outline_mm:t,outlines_mm:e,...n}){return n}
function rh(t,e){return JSON.stringify(t&&xn(t))===JSON.stringify(e&&xn(e))}function Ve({tray:t,slot:e}){return!t&&
!e?"place not given":[t&&(/^\S{1,4}$/.test(t)?`Tray ${t}`:t),e&&`slot ${e}`].filter(Boolean).join(", ")}var Ge,
it,_t=$(()=>{U();et();$t();Ge={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",
title:"Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"M\
etals"}},it={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_\
holders",metals:"shop.write_metals"}});function xe(t,e,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:h}=a;try{let u=await t(c,h);h.aborted||e({question:c,answer:u})}catch(u){h.aborted||
e({question:c,error:u})}}return{stop:r,ask(c,{now:h=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),h?0:s))}}}var no=$(
()=>{});function Se(t,e,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
d}>
    <span class="what">${t}</span>
    <span class="value"
      >${e.text}${e.unit==="°"?"°":i`<span class="unit">${e.unit}</span>`}</span
    >
    ${n||o?i`<span class="band"
            >${n?i`${n[0].text} to ${n[1].text}${n[1].unit==="°"?"°":` ${n[1].unit}`}`:d}${o?i` <i class="origin" data-test="origin">${o}</i>`:
d}</span
          >`:d}
    ${s&&s!==d?i`<span class="band">${s}</span>`:d}
  </div>`}var pa=$(()=>{_()});function ma(t){return t.force_kn===null||t.force_kn===void 0?d:i`<b>${f(Yt(t))}</b>
    <small class="expected">expected ${f(qe(t))}</small>`}function so(t,e,n="force_kn",{note:s=d,origin:o=""}={}){
return Se(t,Yt(e,n),{note:i`expected ${f(qe(e,n))}${s}`,origin:o,test:n})}var Yt,qe,ih,pe=$(()=>{_();O();pa();
Yt=(t,e="force_kn")=>ih(e)(t[`${e}_high`],{up:!0}),qe=(t,e="force_kn")=>ih(e)(t[e]),ih=t=>t==="force_kn"?gt:Ot});var Ni,lh=$(()=>{Ni=class extends HTMLElement{#t=new ResizeObserver(()=>this.measure());#e=new MutationObserver(
()=>this.measure());connectedCallback(){this.#t.observe(this),this.#e.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#t.disconnect(),this.#e.disconnect()}measure(){let e=this.
querySelector("svg"),{width:n,height:s}=e?.viewBox.baseVal??{width:0,height:0};if(!e||!n||!e.clientWidth||!e.clientHeight)
return;let o=Math.max(n/e.clientWidth,s/e.clientHeight);e.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",Ni)});function Ci({distance_mm:t,tool:e}){let n=f(y(Math.abs(t)));return t<=0?[n,`into ${e}`]:[n,`to ${e}`]}function ch(t,{
left:e,right:n,bottom:s,top:o}){let[a,r]=Sn(t),[[l,c],[h,u]]=[t.on_sheet,t.on_tool],p=a-e>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[g,b]=Ci(t);return x`<g class="near ${t.distance_mm<=0?"hit":""}" data-test="near" data-tool=${t.tool}>
    <path class="near-line" d="M${l} ${-c}L${h} ${-u}" />
    ${fa(t,n-e)?d:[t.on_sheet,t.on_tool].map(fw)}
    <g transform="translate(${a} ${-r})">
      ${fa(t,n-e)?x`<circle class="px near-ring" r="17" />`:d}
      <path class="px near-leader" d="M${p*12} ${m*12}L${p*34} ${m*30}H${p*44}" />
      <text class="px label near-label" x=${p*50} y=${m*30-2}
        text-anchor=${p>0?"start":"end"}>${g}<tspan x=${p*50}
          dy="1.1em">${b}</tspan></text>
    </g>
  </g>`}var Sn,fa,fw,Bi=$(()=>{_();O();Sn=({on_sheet:[t,e],on_tool:[n,s]})=>[(t+n)/2,(e+s)/2];fa=(t,e)=>Math.abs(
t.distance_mm)<.1*e,fw=([t,e])=>x`<g transform="translate(${t} ${-e})"><circle class="px near-dot" r="4" /></g>`});function me(t,{pose:e,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:h=!1,room:u=null}){
let p=s??(t.bounds[2]-t.bounds[0])/6,m=n?$w(p,h?c:null):bw(t,p,c),g=u&&!n?ww(m,u,p):m,{left:b,bottom:w,right:L,
top:B}=g,N=l??gw(t,e==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${e}
      viewBox="${b} ${-B} ${L-b} ${B-w}"
      preserveAspectRatio="xMidYMid meet">
      ${[t.bed,t.die].map(St).map(dh)}
      <g transform="translate(0 ${N.down})">${N.tools.map(dh)}</g>
      ${t.die.length?x`<path class="axis" d="M0 ${-B-999}V999" />`:d}
      <path class="gauge" transform="translate(${N.back} 0)" d=${N.gauge} />
      <path class="sheet" data-test="sheet" d=${N.sheet} />
      ${e==="before"&&t.gauge_point?yw(t.gauge_point,o,g):d}
      ${e==="after"&&a?_w(t.after.sheet,a,p,g):d}
      ${h&&c?ch(c,g):d}
    </svg>
  </drawing-frame>`}function gw(t,e){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=t[e];return{sheet:St(n),tools:[
s,o,a].map(St),down:0,gauge:St(r),back:0}}function $w(t,e){let[n,s]=e?Sn(e):[0,.1*t];return{left:n-1.5*t,bottom:s-
t,right:n+1.5*t,top:s+t}}function bw(t,e,n){let[s,o,a,r]=Kt([t.before.sheet,t.after.sheet]),l=14*e,c=t.gauge_point?
t.gauge_point[0]+1.5*e:0,h={left:Math.max(Math.min(s-.4*e,-1.4*e),-l),right:Math.min(Math.max(a+.4*e,c,1.4*e),
Math.max(l,c))},u=h.right-h.left,p={...h,bottom:Math.max(Math.min(o-.3*e,-1.1*e,-.17*u),-l/2),top:Math.min(Math.
max(r+.3*e,1.6*e),8*e)},m=n?Pi(p,Sn(n),Math.max(e,.1*u)):p;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function ww(t,{
bounds:e,share:n},s){let o=Pi(Pi(t,[e[0],e[1]],s),[e[2],e[3]],s),a=r=>t[r]+(o[r]-t[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function yw([t,e],n,{bottom:s}){let o=s*.45;return x`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${t} ${-e}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${t}" />
    ${hh(0,o,180)}${hh(t,o,0)}
    <g transform="translate(${t} ${-e})"><circle class="px touch" r="5" /></g>
    ${uh(t/2,o,n,17)}
  </g>`}function _w(t,e,n,{left:s,right:o}){let a=Math.min(...t.filter(([u])=>Math.abs(u)<n/2).map(([,u])=>u)),
r=Math.max(1.25*n,.14*(o-s)),l=e/2*(Math.PI/180),[c,h]=[r*Math.sin(l),a+r*Math.cos(l)];return x`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-h}A${r} ${r} 0 0 1 ${c} ${-h}" />
    ${uh(0,a+r,f(S(e)))}
  </g>`}var dh,Pi,hh,uh,oo=$(()=>{_();O();lh();Bi();Fe();dh=t=>t?x`<path class="tool" d=${t} />`:d;Pi=({left:t,
right:e,bottom:n,top:s},[o,a],r)=>({left:Math.min(t,o-r),right:Math.max(e,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});hh=(t,e,n)=>x`<g transform="translate(${t} ${-e})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,uh=(t,e,n,s=0)=>x`<g transform="translate(${t} ${-e})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function ph(t,e){let n=[...t].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>e(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die} <small>V ${nt(s.v_over_t,1)} t</small></span
            >
            ${s.level==="ok"?d:k(s.level)}
            <span class="facts"> ${vw(s).map(o=>kw(...o))} </span>
            <span class="more">${s.reason} ${Ve(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var vw,kw,mh=$(()=>{_();_t();O();pe();V();vw=t=>[["allow for",f(Yt(t,"force_kn_per_m")),`expected ${qe(
t,"force_kn_per_m").text}`],["radius",f(y(t.inside_radius_mm))],["flange from",f(y(t.min_flange_mm))],["set",f(
S(t.set_angle_deg))]],kw=(t,e,n)=>i`<span class="fact"
    ><small>${t}</small>
    <span class="amount">${e}</span
    >${n?i` <small class="beside">${n}</small>`:d}</span
  >`});function as(t,e=""){return t?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${Ri(t)}. Open is hit again. <span class="drawn">${e}</span>
  </p>`:d}var ga,Ri,fh,$a,Tn=$(()=>{_();O();ga=t=>S(t).text.replace(/\.0$/,""),Ri=t=>`comes out ${ga(t.comes_out_deg_low)}\
 to ${ga(t.comes_out_deg_high)}°`,fh=t=>`${ga(t.comes_out_deg_low)}–${ga(t.comes_out_deg_high)}°`,$a=(t,{set_angle_deg:e,
firstHit:n})=>n?t.expected_set_angle_deg:e});function rs(t){let e=t.filter(s=>!gh(s)&&(s.level==="stop"||s.level==="caution"));if(e.length===0)return d;let n=e.
some(s=>s.level==="stop");return i`<section
    class="panel urgent ${n?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${yt(e)}
  </section>`}function is(t){let e=t.filter(o=>o.level==="unknown"),n=t.filter(o=>jt(o)==="note"),s=t.filter(o=>jt(
o)==="ok");return i`${e.length?i`<section>
          <h2>Not known</h2>
          ${yt(e)}
        </section>`:d}
  ${n.length?i`<section data-test="notes">
          <h2>How to do it</h2>
          ${yt(n)}
        </section>`:d}
  ${s.length?i`<details class="fine" data-test="fine">
          <summary>Also checked and well: ${s.length}</summary>
          ${yt(s)}
        </details>`:d}`}function ze(t){let e=t.filter(gh);return e.length===0?d:i`<section class="every-time" data-test="every-time">
    <h2>${k("caution")} At the press, every time</h2>
    <ul>
      ${e.map(n=>i`<li>
            <b>${bn(n.template,n.numbers)}</b>
            ${bn(n.do_template??n.do,n.numbers)}
          </li>`)}
    </ul>
  </section>`}var gh,ao=$(()=>{_();V();gh=t=>t.code.startsWith("general-")});function A({name:t,label:e,value:n,change:s,hint:o="",wrong:a=[],keys:r="text",placeholder:l="",unit:c="",on:h="\
input",next:u=!1,list:p=""}){let m=g=>s(g.target.value);return i`<div class="field ${a.length?"has-wrong":""}">
    <label for=${t}>${e}${c?i` <span class="hint">(${c})</span>`:d}</label>
    <input
      id=${t}
      name=${t}
      data-test=${t}
      autocomplete="off"
      spellcheck="false"
      inputmode=${r}
      enterkeyhint=${u?"next":d}
      placeholder=${l}
      list=${p||d}
      .value=${vt(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${t}-more"
      @input=${h==="input"?m:d}
      @change=${h==="change"?m:d} />
    <span id="${t}-more">
      ${a.map(g=>i`<span class="wrong" data-test="wrong-${t}">${g}</span>`)}
      ${o?i`<span class="hint">${o}</span>`:d}
    </span>
  </div>`}function Mn({name:t,label:e,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${t}>${e}${l?i` <span class="hint">(${l})</span>`:d}</label>
    <textarea
      id=${t}
      name=${t}
      data-test=${t}
      rows=${o}
      .value=${vt(String(n))}
      aria-invalid=${r.length?"true":"false"}
      aria-describedby="${t}-more"
      @input=${c=>s(c.target.value)}></textarea>
    <span id="${t}-more">
      ${r.map(c=>i`<span class="wrong" data-test="wrong-${t}">${c}</span>`)}
      ${a?i`<span class="hint">${a}</span>`:d}
    </span>
  </div>`}function z({name:t,label:e,value:n,options:s,change:o,wrong:a=[]}){return i`<div class="field ${a.length?
"has-wrong":""}">
    <label for=${t}>${e}</label>
    <div class="picked">
      <select
        id=${t}
        name=${t}
        data-test=${t}
        aria-invalid=${a.length?"true":"false"}
        aria-describedby="${t}-more"
        @change=${r=>o(r.target.value)}>
        ${s.map(([r,l])=>i`<option value=${r} .selected=${vt(r===n)}>${l}</option>`)}
      </select>
    </div>
    <span id="${t}-more"
      >${a.map(r=>i`<span class="wrong" data-test="wrong-${t}">${r}</span>`)}</span
    >
  </div>`}function K({name:t,label:e,value:n,options:s,change:o}){return i`<div class="field" role="radiogroup" aria-label=${e}>
    <span class="legend" aria-hidden="true">${e}</span>
    <div class="choice" data-test=${t}>
      ${s.map(([a,r])=>i`<label>
            <input
              type="radio"
              name=${t}
              value=${a}
              .checked=${vt(a===n)}
              @change=${()=>o(a)} />
            <span>${r}</span>
          </label>`)}
    </div>
  </div>`}function ne(t){Object.keys(t).length!==0&&requestAnimationFrame(()=>document.querySelector('[aria-in\
valid="true"]')?.focus())}var J=$(()=>{_();Pe()});function ba(t){let[e,n]=[t?.die?.trim(),t?.punch?.trim()];return{...e?{die:e}:{},...n?{punch:n}:{}}}function Ii(t){
let e=ba(t);return Object.keys(e).length?{tools:e}:{}}function An(t){let{die:e,punch:n}=ba(t);return[e&&`die ${e}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var ro,ls=$(()=>{ro=t=>({die:t?.die??"",punch:t?.punch??""})});function I(t,e){return Object.entries(t).filter(([n])=>Wi(n,e)).flatMap(([,n])=>n)}function $h(t,e){return Object.
entries(t).filter(([n])=>!e.some(s=>Wi(n,s))).flatMap(([,n])=>n)}function bh(t,e,n){let s=Object.entries(t);return s.
length===0?d:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>Wi(o,c)).sort((c,h)=>h.length-c.length)[0],l=r?Di(e(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>io(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function Di(t,e){let n=e.join(" ");return n.startsWith(t)?n:`${t}: ${n}`}function io(t){let e=document.
getElementById(t);e?.closest("details")?.setAttribute("open",""),e?.focus({preventScroll:!0}),e?.scrollIntoView(
{block:"center"})}var Wi,se=$(()=>{_();Wi=(t,e)=>t===e||t.startsWith(`${e}.`)});function ji(t,e,n,s){let o=(a,r)=>A({next:!0,name:`${t}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:e[a]??"",wrong:I(n,`${t}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function yh(t,{dies:e,punches:n},s,o){
let a=e.flatMap(Hi).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${An(t.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${ji("tools",t.tools??{},s,r=>o({...t,tools:{die:"",punch:"",...t.tools,...r}}))}
    </details>
    ${wh("codes-of-dies",a)}
    ${wh("codes-of-punches",n.map(({code:r})=>r))}`}var Fi,Hi,wh,cs,On=$(()=>{_();ls();J();se();Fi=["tools.die",
"tools.punch"];Hi=t=>t.shape==="multi_v"?t.openings:[t];wh=(t,e)=>i`<datalist id=${t}>${e.map(n=>i`<option value=${n}></option>`)}</datalist>`,
cs=({tools_reason:t})=>t?i`<p class="tools-reason" data-test="tools-reason">${t}</p>`:d});function wa(t){let e=(t??"").split(":")[0].trim();return xw.includes(e)?e:""}function lo(t){if(!t)return"";let e=new Map;
for(let[n,s]of Sw){let o=t[n];o&&e.set(o,[...e.get(o)??[],s])}return[...e].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var xw,Sw,ya=$(()=>{xw=["model","handbook","your test bends"];Sw=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function vh(t){return i`<ul class="ratings" data-test="ratings">
    ${t.map(Tw)}
  </ul>`}function Tw(t){let{what:e,name:n,share_percent:s,level:o}=t;return i`<li class="rating" data-level=${o} data-what=${e}>
    <span class="rating-of"
      ><b>${Mw[e]??e}</b>${e.startsWith("press")||!n?d:` ${n}`}</span
    >
    ${k(o,s===null?"Unknown":`${nt(s,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${s===null?"open":""}" d="M0 9H250" />
      ${s===null?d:Ow(s)}
    </svg>
    <span class="rating-words">${Aw(t)}</span>
  </li>`}function Aw({load_kn:t,load_kn_per_m:e,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=e===void 0?
f(gt(t)):f(Ot(e));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=e===void 0?
f(gt(n)):f(Ot(s));return`${a} of ${r}`}function Ow(t){let e=Math.min(t/100*_h,250);return x`<path class="bar-load" d="M0 9H${e}" /><path class="bar-most" d="M${_h} 0V18" />`}
var _h,Mw,kh=$(()=>{_();O();V();_h=200;Mw={press:"Press","press per metre":"Bed and ram, per length",punch:"Pu\
nch",die:"Die",holder:"Holder","die holder":"Die holder"}});function ds(t,e,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(e-t)/o,c=(r?.find(w=>l/w<=a)??Ew(l,a))*o,h=Math.
floor(t/c+1e-9)*c,u=Math.ceil(e/c-1e-9)*c,p=w=>Lw(n+(w-h)/(u-h)*(s-n)),m=Math.round((u-h)/c),g=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),b=Array.from({length:m+1},(w,L)=>h+L*c).map(w=>({at:p(w),text:(w/o).toFixed(g).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:p,marks:b}}function Ew(t,e){let n=(t>0?t:1)/e,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function _a(t){return t.length?`M${t.
map(([e,n])=>`${e} ${n}`).join("L")}`:""}var Lw,Ui=$(()=>{Lw=t=>Math.round(t*100)/100});function xh({curve:t,set:e,peak:n,limits:s}){let o=Math.max(...t.map(g=>g.force_kn_high)),a=s.filter(g=>g.limit_kn!==
null).sort((g,b)=>Number(b.limit_kn)-Number(g.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:g})=>Number(
g)<=(g===r?Cw:Nw)*o),c=Mh(t),h=ds(0,Math.max(o,...l.map(g=>Number(g.limit_kn))),{from:Rt.bottom,to:Rt.top+28,size:mi().
size}),u=(g,b)=>[c.at(g.punch_depth_mm),h.at(g[b])],p=[...t.map(g=>u(g,"force_kn_high")),...t.map(g=>u(g,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${f(gt(n.force_kn))}, at a depth o\
f ${f(Th(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Gi} ${va}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${Ah(c,h,mi().unit)}
    <path class="band" d="${_a(p)}Z" />
    ${e.punch_depth_mm===null?d:Oh(c.at(e.punch_depth_mm))} ${Bw(l,h)}
    ${Rw(a.filter(g=>!l.includes(g)))}
    <path class="curve" d=${_a(t.map(g=>u(g,"force_kn")))} data-test="force-curve" />
    ${n?Ww(c.at(n.punch_depth_mm),h.at(n.force_kn)):d}
  </svg>`}function Sh({curve:t,set:e,trials:n}){let s=n.filter(p=>p.punch_depth_mm!==null),o=Mh(t,s.map(p=>Number(
p.punch_depth_mm))),a=[...t.map(p=>p.loaded_angle_deg),...s.map(p=>p.measured_deg)],r=ds(Math.min(...a),180,{from:Rt.
bottom,to:Rt.top,steps:[5,10,15,30,45]}),l=p=>_a(t.map(m=>[o.at(m.punch_depth_mm),r.at(m[p])])),c=e.set_angle_deg===
null?null:{x:o.at(Number(e.punch_depth_mm)),y:r.at(e.set_angle_deg)},u=`Angle over punch depth. ${c?`${f(S(e.set_angle_deg))}\
 under load at a depth of ${f(Th(Number(e.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} trials drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Gi} ${va}"
    role="img"
    aria-label=${u}
    data-test="stroke-angle">
    ${Ah(o,r,"°")} ${c?Oh(c.x):d}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?x`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:d}
    ${s.map(p=>Iw(o.at(Number(p.punch_depth_mm)),r.at(p.measured_deg),p))}
  </svg>`}function Mh(t,e=[]){let n=Math.max(...t.map(s=>s.punch_depth_mm),...e);return ds(0,n,{from:Rt.left,to:Rt.
right,size:P()==="in"?de:1,most:6})}function Ah(t,e,n){let{left:s,right:o,top:a,bottom:r}=Rt,l=n==="°",c=e.marks.
map(({at:p,text:m})=>x`<path class="faint" d="M${s} ${p}H${o}"/>
      <text x=${s-6} y=${p+6} text-anchor="end"
        font-size=${Ke}>${m}${l?"°":""}</text>`),h=t.marks.map(({at:p,text:m})=>x`<path class="faint" d="M${p} ${r}v6"/>
      <text x=${Math.min(p,o-4)} y=${r+24} text-anchor="middle"
        font-size=${Ke}>${m}</text>`),u=x`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${Ke}>${n}</text>`;return x`
    ${c}
    ${h}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${va-8} text-anchor="end"
      font-size=${Ke}>punch depth, ${P()}</text>
    ${l?d:u}`}function Bw(t,e){let n=-1/0;return Pw(t).map(({limit_kn:s,names:o})=>{let a=e.at(s);return n=Math.
max(a-6,n+Ke+2),x`<path class="limit" d="M${Rt.left} ${a}H${Rt.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${Rt.left+6} y=${n}
        font-size=${Ke}>${o.join(", ")} ${f(gt(s))}</text>`})}function Pw(t){let e=new Map;for(let n of t)e.set(
Number(n.limit_kn),[...e.get(Number(n.limit_kn))??[],ka(n)]);return[...e].map(([n,s])=>({limit_kn:n,names:s}))}
function Rw(t){if(!t.length)return d;let e=t.length>1?`, ${t.length-1} more`:"";return x`<text class="limit-word" x=${Rt.
right} y="18" text-anchor="end" font-size=${Ke}
      data-test="limit-far">↑ ${Vi(t[t.length-1])}${e}</text>`}function ka({what:t,name:e}){return t==="pres\
s per metre"?"Bed and ram":t==="press"||!e?t[0].toUpperCase()+t.slice(1):`${t[0].toUpperCase()}${t.slice(1)} ${e}`}
function Iw(t,e,{id:n,outlier:s}){return s?x`<path class="trial-odd" d="M${t-6} ${e-6}l12 12M${t+6} ${e-6}l-12 12"
        data-test="trial-point" data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${t} cy=${e} r="6" data-test="trial-point" data-id=${n}/>`}
var Gi,va,Rt,Ke,Nw,Cw,Th,Oh,Vi,Ww,Eh=$(()=>{_();O();Ui();Gi=400,va=320,Rt={left:58,right:Gi-14,top:20,bottom:va-
54},Ke=18,Nw=3,Cw=5;Th=t=>y(t,{digits:2});Oh=t=>x`<path class="set-line" d="M${t} ${Rt.top}V${Rt.bottom}"/>
  <text class="set-word" x=${t-5} y=${Rt.bottom-6} text-anchor="end" font-size=${Ke}>set</text>`;Vi=({what:t,name:e,
limit_kn:n})=>`${ka({what:t,name:e})} ${f(gt(n))}`;Ww=(t,e)=>x`<circle class="peak" cx=${t} cy=${e} r="6" data-test="peak-mark"/>`});function Ch({stroke:t,error:e,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?Dw(t,e):d}
  </details>`}function Dw(t,e){return e?i`<p class="hint" data-test="stroke-missing">
      ${e instanceof M?e.message:"The stroke could not be fetched."}
    </p>`:t?t.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${xh(t)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${Fw(t)}</p>
        ${jw(t)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${Sh(t)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${Lh("curve")} under load</li>
          <li>${Lh("curve let-go")} let go</li>
          ${t.trials.length?i`<li>${Gw} trials, let go</li>`:d}
        </ul>
        <p data-test="stroke-set">${Hw(t)}</p>
        ${Uw(t)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function Fw({peak:t,work_j:e}){if(!t)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${f(
Yt(t))}.</b> The peak is expected at
    ${f(gt(t.force_kn))}, ${Nh(t.punch_depth_mm)} deep, ${f(S(t.loaded_angle_deg))}
    under load.`;return e?i`${n} Work in the stroke ${nt(e,0)} J.`:n}function jw({limits:t}){let e=t.filter(s=>s.
limit_kn!==null),n=t.filter(s=>s.limit_kn===null);return i`${e.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${e.map(Vi).join(", ")}. The shaded band is what the force may be.
        </p>`:d}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(ka).join(", ")}. Read it off the plate.
        </p>`:d}`}function Hw({set:t}){return t.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${f(S(t.set_angle_deg))} under load at a depth of ${Nh(t.punch_depth_mm)}\
.`}function Uw({trials:t}){let e=t.filter(n=>n.punch_depth_mm===null).length;return e?i`<p class="hint">
        ${e===1?"One trial has":`${e} trials have`} no depth written down and can't be drawn.
      </p>`:d}var Nh,Lh,Gw,Bh=$(()=>{_();Eh();U();O();pe();Nh=t=>f(y(t,{digits:2}));Lh=t=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${t} d="M2 8H38" />
  </svg>`,Gw=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="trial-point" cx="20" cy="8" r="6" />
</svg>`});function Te(t,e,n,s,o=Rh(t,e,s)){let[a,r]=[t[`${e}_low`],t[`${e}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return Se(n,s(t[e]),{band:l?[s(a),s(r)]:null,note:o,origin:wa(t.sources?.[e]),test:e})}function Rh({
handbook:t,sources:e,...n},s,o){let a=t?.[s];if(typeof a!="number"||wa(e?.[s])==="handbook")return d;let r=o(a);
if(r.text===o(n[s]).text)return d;let l=a<n[`${s}_low`]||a>n[`${s}_high`];return i`<span class=${l?"handbook d\
iffers":"handbook"} data-test="handbook-${s}"
    >handbook says ${f(r)}</span
  >`}function Ih(t,e,n){return i`${rs(t.checks)}
    <div class="columns bend-columns">
      <div>
        ${Vw(t,e)} ${qw(t)} ${Yw(t)} ${Xw(t)}
        ${is(t.checks)} ${ty(t)}
      </div>
      <div>${Zw(t,n)} ${Ch(n.stroke)} ${Qw(t,n)}</div>
    </div>
    ${ze(t.checks)}`}function Vw(t,{punches:e,dies:n}){let s=n.find(({code:a})=>a===t.die),o=e.find(({code:a})=>a===
t.punch);return!t.die&&!t.punch?i`<p class="panel" data-test="no-tools">
      No tools of the crib chosen: the figures are for a V of ${f(y(t.v_opening_mm))}.
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:t.die,tool:s},{kind:"punch",code:t.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"><b>${r??"none"}</b> ${l?.name??""}</span>
            <span class="where">${l?Ve(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:d}
          </li>`)}
    </ul>
    ${cs(t)}`}function qw(t){return i`<section>
    <h2>Set</h2>
    <div class="figures">
      ${t.first_hit?Kw(t):zw(t)}
      ${Te(t,"springback_deg","Springback",S)}
    </div>
    ${as(t.first_hit)}
  </section>`}function Yw(t){return i`<section>
    <h2>Force</h2>
    <div class="figures">
      ${so("Allow for",t,"force_kn",{note:Jw(t),origin:wa(t.sources?.force_kn)})}
      ${so("Per length, allow for",t,"force_kn_per_m")}
    </div>
    ${t.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
            ${vh(t.ratings)}`:d}
  </section>`}function Jw(t){let e=t.force_kn_low,n=Rh(t,"force_kn",gt);return i`${typeof e=="number"?`, at le\
ast ${f(gt(e))}`:d}${n===d?d:i` <br />${n}`}`}function Xw(t){return i`<section>
    <h2>Comes out</h2>
    <div class="figures">
      ${Te(t,"inside_radius_mm","Inside radius",En)}
      ${Se("Smallest flange",y(t.min_flange_mm),{test:"min_flange_mm"})}
    </div>
    <h2>For the blank</h2>
    <div class="figures">
      ${Te(t,"bend_allowance_mm","Bend allowance",En)}
      ${Te(t,"bend_deduction_mm","Bend deduction",En)}
      ${Te(t,"k_factor","K-factor",Wh)}
    </div>
  </section>`}function Zw(t,{pose:e,show:n}){if(!t.drawing)return d;let s=f(S(t.set_angle_deg)),o=e==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return i`<section class="bend-drawing" aria-label="The bend in its tools">
    ${K({name:"pose-shown",label:"Drawn to scale",value:e,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
    ${me(t.drawing,{pose:e,close:!0,opening:t.v_opening_mm,gauge:"",angle:t.set_angle_deg,words:`The sheet in \
die and punch, ${o}`})}
  </section>`}function Qw(t,{use:e}){return t.options?.length?i`<section>
    <h2>Dies of the crib</h2>
    <p class="hint">Tap one to use it. Every one shown with the reason for its rank.</p>
    ${ph(t.options,e)}
  </section>`:d}function ty({opinions:t,sources:e}){return t?i`<section class="opinions">
    <h2>Second opinions</h2>
    ${t.force?.length?Ph("Force by published relations",t.force,[["force_kn","Force",gt],["force_kn_per_m","Pe\
r length",Ot]]):d}
    ${t.allowance?.length?Ph("Bend allowance by published relations",t.allowance,[["bend_allowance_mm","Allowa\
nce",En],["k_factor","K",Wh]]):d}
    ${e?i`<details>
            <summary>Where each figure comes from</summary>
            <dl class="sources">
              ${Object.entries(e).map(([n,s])=>i`<dt>${ey[n]??n}</dt>
                    <dd>${s}</dd>`)}
            </dl>
          </details>`:d}
  </section>`:d}function Ph(t,e,n){return i`<div class="table">
    <table>
      <caption>
        ${t}
      </caption>
      <thead>
        <tr>
          <th scope="col">By</th>
          ${n.map(([,s])=>i`<th scope="col" class="number">${s}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${e.map(s=>i`<tr>
              <th scope="row">${s.name}<small>${s.source}</small></th>
              ${n.map(([o,,a])=>i`<td class="number">${f(a(s[o]))}</td>`)}
            </tr>`)}
      </tbody>
    </table>
  </div>`}var En,zw,Kw,Wh,ey,Dh=$(()=>{_();oo();_t();O();pe();mh();pa();Tn();ao();J();On();ya();kh();Bh();En=t=>y(
t,{digits:2});zw=t=>i`
  ${Te(t,"set_angle_deg","Set angle, loaded",S)}
  ${Te(t,"punch_depth_mm","Punch depth",En)}
`,Kw=t=>i`
  ${Te(t,"set_angle_deg","First hit: set angle, loaded",S,`then about ${f(S(t.expected_set_angle_deg))}`)}
  ${Te(t,"punch_depth_mm","First hit: punch depth",En,`then about ${f(En(t.expected_punch_depth_mm))}`)}
`;Wh=t=>({text:t==null?"–":nt(t,2),unit:""});ey={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var jh={};tt(jh,{show:()=>oy});async function oy(t){t.title("Check a bend"),t.render(Tt("Looking into the crib\
…"));let[e,n,s]=await Promise.all(["metals","dies","punches"].map(async N=>(await lt(N,t.signal)).items)),o={
dies:n,punches:s},a=la(t.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=e[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:matchMedia("(min-width: 1000px)").matches},h=xe(
async(N,v)=>(await T("POST","/bend",{body:N,signal:v})).body,({answer:N=null,error:v=null})=>{Object.assign(l,
{answer:N,error:v,busy:!1}),Object.assign(c,{stroke:null,error:null}),p(),b()},t.signal),u=xe(async(N,v)=>(await T(
"POST","/stroke",{body:N,signal:v})).body,({answer:N=null,error:v=null})=>{Object.assign(c,{stroke:N,error:v}),
b()},t.signal);function p(){u.stop(),c.open&&l.answer&&!c.stroke&&u.ask(kn(a),{now:!0})}function m(N){history.
replaceState(null,"",`/bend?${ca(a)}`),l.busy=eo(a).length===0,l.busy?h.ask(kn(a),N):(h.stop(),Object.assign(l,
{answer:null,error:null})),b()}function g(N,v){Object.assign(a,N),m(v)}function b(){let N=l.error instanceof M?
l.error.errors:{};t.render(i`<h1>Check a bend</h1>
        <div
          class="desk"
          aria-busy=${l.busy?"true":"false"}
          data-test="bend"
          data-busy=${String(l.busy)}>
          <form
            class="panel desk-form"
            aria-label="The bend"
            @submit=${v=>v.preventDefault()}>
            ${ay(a,{metals:e,...o,openTools:r,answer:l.answer},N,g)}
          </form>
          <p class="unseen" role="status">${w()}</p>
          <div class="desk-answer" data-test="answer">${L(N)}</div>
        </div>`),l.busy||t.ready()}function w(){let{answer:N}=l;if(!N||l.busy)return"";let v=N.worst==="ok"?"":
`${N.worst}. `,E=N.set_angle_deg===null?"nothing to set":`set ${f(S(N.set_angle_deg))}`;return`${v}Die ${N.die??
"none"}, allow for ${f(Yt(N))}, ${E}.`}function L(N){let v=eo(a);return v.length?xt("One bend, all its figures",
i`Still to type: ${v.map(E=>sy[E]).join(", ")}.`):l.error?B(N):l.answer?Ih(l.answer,o,{pose:l.pose,show:E=>{l.
pose=E,b()},use:E=>g({die:a.die===E?"":E},{now:!0}),stroke:{...c,toggled:E=>{c.open!==E&&(c.open=E,p(),b())}}}):
Tt("Working it out…")}function B(N){if(!(l.error instanceof M)||l.error.status>=500)return i`${je(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let v=$h(N,ny),E=Object.keys(N).length>v.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...E,...v].map(X=>i`<p>${X}</p>`)}
    </div>`}m({now:!0})}function ay(t,{metals:e,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(p,m,g={})=>A(
{name:p,label:m,value:t[p],wrong:I(r,p),change:b=>l({[p]:b}),...g}),h=(p,m,g)=>z({name:p,label:m,value:t[p],options:g,
wrong:I(r,p),change:b=>l({[p]:b},{now:!0})}),u=t.metal&&!e.some(({code:p})=>p===t.metal);return i`${h("metal",
"Metal",[...u?[[t.metal,`${t.metal} (not in the shop)`]]:[],...iy(e)])}
    ${c("thickness_mm","Thickness",{unit:P(),hint:a&&ry(a,t.thickness_mm)||"3, 1/8 in, 16 ga"})}
    <div class="fields">
      ${c("bend_length_mm","Bend length",{unit:P()})}
      ${c("included_angle_deg","Included angle",{unit:"°, 90 is square",keys:"decimal"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${h("die","Die",[["","Best of the crib"],...Fh(t.die,n)])}
      ${h("punch","Punch",[["","Best of the crib"],...Fh(t.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:P()})}
    </details>
    ${t.die||t.punch||t.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:d}`}function ry({thickness_mm:t,thickness_gauge:e},n){return[/^[\d.,\s]+$/.test(n)?"":f(y(
t,{digits:2})),e??""].filter(Boolean).join(", ")}function Fh(t,e){let n=e.map(s=>[s.code,`${s.code} · ${s.name}`]);
return t&&!e.some(s=>s.code===t)?[[t,`${t} (not in the crib)`],...n]:n}var ny,sy,iy,Hh=$(()=>{_();U();da();_t();
no();O();pe();Dh();J();Ct();se();ny=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","punch",
"punch_radius_mm"],sy={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"angl\
e"};iy=t=>t.map(({code:e,name:n})=>[e,n])});function Uh(t){let e,n=async()=>{document.visibilityState!=="visible"||t.aborted||(e=await navigator.wakeLock?.
request("screen").catch(()=>{}),t.aborted&&e?.release())};document.addEventListener("visibilitychange",n,{signal:t}),
t.addEventListener("abort",()=>e?.release()),n()}var qi,zi=$(()=>{_();qi=()=>"wakeLock"in navigator?d:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function Ln(t){let{body:e}=await T("GET","/benches",{signal:t,timeout:3e3});return e.benches}async function qh(t){
let{body:e}=await T("PUT",`/benches/${encodeURIComponent(t)}`,{body:{code:null,step:0}});return e}async function zh(t){
await T("DELETE",`/benches/${encodeURIComponent(t)}`)}function Ki(){let t=Jh(Gh);return typeof t?.name=="strin\
g"?{code:null,step:0,etag:null,...t}:null}function Jh(t){try{return JSON.parse(localStorage.getItem(t)??"null")}catch{
return null}}function Xh(t,e){try{e===null?localStorage.removeItem(t):localStorage.setItem(t,JSON.stringify(e))}catch{}}
var Gh,Vh,Nn,Me,Yi,Kh,Yh,Ye=$(()=>{U();Gh="flangebook.bench.here",Vh="flangebook.bench.last";Nn=t=>/^\d/.test(
t)?`bench ${t}`:t,Me=t=>/^\d/.test(t)?`Bench ${t}`:t;Yi=t=>Xh(Gh,t),Kh=()=>String(Jh(Vh)??""),Yh=t=>Xh(Vh,t)});function xa(t,e,n,s){let o=`/benches/${encodeURIComponent(t)}`,a={answers:null,gone:!1,waits:!1,late:!1,refused:""},
r=null,l=e,c=0,h=!1,u;function p(v){let E={...a,waits:r!==null,...v},X=Object.keys(E).every(ct=>E[ct]===a[ct]);
a=E,!X&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(u),h||s.aborted)return;h=!0;try{await(r&&!g()?
b():w()),L()}catch(E){s.aborted||B(E)}h=!1;let v=r!==null&&c===0;s.aborted||(u=setTimeout(m,v?0:Math.min(cy,ly*
1.5**c)))}function g(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,p({late:!0}),!0)}async function b(){let v=r;
if(!v)return;let E=C().name?{by:C().name}:{};try{l=(await T("PUT",o,{body:{...v.place,...E},etag:v.whatever?null:
l,signal:s,timeout:Zh})).etag,r===v&&(r=null),n.sent?.(v.place,l??"",r!==null),p({refused:"",late:!1})}catch(X){
if(!(X instanceof M)||X.status>=500)throw X;r=null,l=null,p({refused:X.status===412?"":X.message}),await w()}}
async function w(){let v=r,{status:E,body:X,etag:ct}=await T("GET",o,{seen:l,signal:s,timeout:Zh});s.aborted||
r!==v||E===304||(l=ct,p({late:!1}),n.heard(X,ct??""))}function L(){let v=a.answers===!1;c=0,p({answers:!0,gone:!1}),
De(!0),v&&j()}function B(v){c+=1,v instanceof M&&v.status===404?p({answers:!0,gone:!0}):v instanceof M&&v.status<
500?p({answers:!0,refused:v.message}):p({answers:!1}),v instanceof F?De(!1,v):v instanceof M||console.error(v)}
let N=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",N,{signal:s}),
addEventListener("online",N,{signal:s}),s.addEventListener("abort",()=>clearTimeout(u)),m(),{move(v,{whatever:E=!1}={}){
r={place:v,at:Date.now(),whatever:E},p({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var ly,cy,Zh,Ji=$(()=>{
U();et();bt();ly=1e3,cy=4e3,Zh=3e3});function Qh(t,e){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=dy.
has(o.key)?t.next:hy.has(o.key)?t.back:null;!a||py(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<uy)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:e}),addEventListener("click",o=>o.detail>0&&my(),{signal:e})}
function py({key:t,target:e,repeat:n}){let s=e;return s.matches("input, select, textarea")?!0:!n&&(t==="Enter"||
t===" ")&&s.matches("button, a, summary")}function my(){let t=document.activeElement;t?.matches("button, summa\
ry, input[type=range]")&&t.blur()}var dy,hy,uy,tu=$(()=>{dy=new Set(["ArrowRight","PageDown"," ","Enter"]),hy=
new Set(["ArrowLeft","PageUp","Backspace"]),uy=300});function Sa(t,{pixels:e=es(),tallest:n=e*.7,test:s="folded",mark:o=""}={}){let a=G*2.4,r=$n(t.bounds,e-2*a,n-1.6*
a),[,l,c]=t.bounds,[h,u]=r([c,l]),p=m=>m.map(([g,b,w,L])=>`M${r([g,b])}L${r([w,L])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${$y(t)}
    width=${h+2*a}
    height=${u+1.6*a}
    viewBox="${-a} ${-G*.7} ${h+2*a} ${u+1.6*a}">
    ${t.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>x`<path class="marked-face" d="M${m.map(g=>r(g).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${p(t.lines.hidden)} />
    <path class="bend-edge" d=${p(t.lines.bend)} />
    <path class="edge" d=${p(t.lines.edge)} />
    ${t.dimensions.map(({name:m,from:g,to:b,mm:w})=>fy(r(g),r(b),m,H(w)))}
    ${t.faces.filter(({flat:m})=>m===1).map(({side:m,outline:g})=>gy(m,g.map(r),m===o))}
  </svg>`}function fy(t,e,n,s){let o=n==="length"?[-G*.5,G*.95]:n==="width"?[G*.5,G*.95]:[G*.9,0],[a,r]=[t,e].
map(([u,p])=>[u+o[0],p+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],h=Ft(s,G);return x`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-h/2} y=${c-G*.65} width=${h} height=${G*1.3}/>
    <text x=${l} y=${c} font-size=${G} text-anchor="middle" dominant-baseline="central">${s}</text>`}function gy(t,e,n){
let s=e.reduce((r,l)=>r+l[0],0)/e.length,o=e.reduce((r,l)=>r+l[1],0)/e.length,a=Ft(t,G);return x`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-G*.65}
      width=${a} height=${G*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${G}
      text-anchor="middle" dominant-baseline="central">${t}</text>`}function $y({length_mm:t,width_mm:e,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${Cn({length_mm:t,width_mm:e,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function Cn({length_mm:t,width_mm:e,height_mm:n}){
return f({text:[t,e,n].map(H).join(" × "),unit:y(0).unit})}function eu(t,{pixels:e=es(),tallest:n=e*.9,test:s="\
blank"}={}){let[o,a]=[H(t.length_mm),H(t.width_mm)],r=Ft(a,G)+G*1.8,l=$n([0,0,t.length_mm,t.width_mm],e-r-12,n-
G*3),[c,h]=l([t.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${yy(t)}
    width=${c+r+12}
    height=${h+G*3}
    viewBox="-6 -6 ${c+r+12} ${h+G*3}">
    <path class="sheet" d="M${t.outline.map(u=>l(u).join(" ")).join("L")}Z" />
    ${t.lines.map(u=>wy(u,l))}
    <path
      class="dimension"
      d="M0 ${h+G*1.3}H${c}M-4 ${h+G*1.3+4}l8 -8M${c-4} ${h+G*1.3+4}l8 -8" />
    ${by(c/2,h+G*1.3,o)}
    <path
      class="dimension"
      d="M${c+G} 0V${h}M${c+G-4} 4l8 -8M${c+G-4} ${h+4}l8 -8" />
    <text x=${c+G*1.6} y=${h/2} font-size=${G} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function by(t,e,n){let s=Ft(n,G);return x`<rect class="ground" x=${t-s/2} y=${e-G*.7} width=${s} height=${G*
1.4}/>
    <text x=${t} y=${e} font-size=${G} text-anchor="middle" dominant-baseline="central">${n}</text>`}function wy({
bend:t,place:e,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,h]=[l([n,s]),l([o,a])],u=.5+(e%2?-1:1)*.12*
Math.ceil((e-1)/1),[p,m]=[c[0]+(h[0]-c[0])*u,c[1]+(h[1]-c[1])*u];return x`<path class="fold ${r}" d="M${c}L${h}"/>
    <circle class="badge" cx=${p} cy=${m} r=${G*.68}/>
    <text class="badge-number" x=${p} y=${m} font-size=${G*.95} text-anchor="middle"
      dominant-baseline="central">${t}</text>`}function yy(t){let e=t.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${H(t.length_mm)} by ${H(t.width_mm)}, inside of the box up. ${e.join("; ")}.`}var G,
It,hs=$(()=>{_();O();Zo();Fe();ee();G=18;It=t=>!!t?.folded});function Ta(t,e){return!It(t)||!e.side?d:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${Sa(t.folded,{mark:e.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${f(y(e.bend_length_mm))}</b> long.</li>
      ${nu("Punch",e.segments_mm?.punch)} ${nu("Die",e.segments_mm?.die)}
      ${e.clear_between_mm===null||e.clear_between_mm===void 0?d:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${f(y(e.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${_y(e.sides_near??[])}
    </ul>
  </section>`}function nu(t,e){if(!e?.length)return d;let n=e.reduce((o,a)=>o+a,0),s=e.length>1?`${e.map(H).join(
" + ")} = `:"";return i`<li class="pieces">${t}: <b>${s}${H(n)} ${y(0).unit}</b></li>`}function _y(t){if(!t.length)
return d;let[e]=[...t].sort((o,a)=>o.distance_mm-a.distance_mm),n=f(S(e.included_angle_deg)),s=f(y(Math.abs(e.
distance_mm)));return i`<li data-test="sides-near">
    ${e.distance_mm<0?i`<b>The finished ${e.side} side runs ${s} into the ${e.tool}</b>, at ${n}.`:i`The finished ${e.
side} side stays <b>${s}</b> from the ${e.tool}, nearest at ${n}.`}
  </li>`}var Xi=$(()=>{_();hs();ee();O()});function au(t){return t.number===1?"first":t.turn_quarter?t.turn_over?"quarter-over":"quarter":t.turn_over&&t.
turn_end?"both":t.turn_over?"over":t.turn_end?"end":"same"}function us(t){let e=au(t);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${iu}${lu[e]}</svg
    ><b>${ru[e]}.</b>`}function Ma(t,e){let n=au(t);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${iu}${lu[n]}</svg>
    <p>
      <b data-test="move">${ru[n]}.</b>
      <span data-test="face">${t.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${xy(t,e)}
    </p>
  </div>`}function co({gauged_end:t,gauged_side:e},n){return e?`${e} side`:`${t} end${n?` (flat ${t==="left"?1:
n})`:""}`}function xy(t,e){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=t;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=co(t,e);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var ru,iu,Zi,su,vy,ou,ky,lu,ps=$(()=>{_();ru={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},iu=x`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,Zi=x`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
su=x`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,vy=x`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
ou=x`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,ky=x`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
lu={first:[vy],same:[ky],over:[Zi],end:[su],both:[Zi,su],quarter:[ou],"quarter-over":[Zi,ou]}});function ho({frames:t},e){let n=t.findIndex(a=>a.share>=e);if(n<0)return t[t.length-1];if(n===0)return t[0];let[
s,o]=[t[n-1],t[n]];return Qi(s,o,(e-s.share)/(o.share-s.share))}function Qi(t,e,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(t.share,e.share),phase:e.phase,included_angle_deg:s(t.included_angle_deg,
e.included_angle_deg),punch_y_mm:s(t.punch_y_mm,e.punch_y_mm),left:o(t.left,e.left),right:o(t.right,e.right),inside_radius_mm:s(
t.inside_radius_mm,e.inside_radius_mm),half_arc_mm:s(t.half_arc_mm,e.half_arc_mm),gauge_x_mm:t.gauge_x_mm===null||
e.gauge_x_mm===null?null:s(t.gauge_x_mm,e.gauge_x_mm)}}function cu({frames:t}){let e=t.find(o=>o.punch_y_mm<=0)??
t[0],n=Math.min(...t.map(o=>o.punch_y_mm)),s=[...t].reverse().find(o=>o.phase==="bend")??t[t.length-1];return{
before:e.share,after:n<0?s.share:t[t.length-1].share}}function du(t,e){let n=-e.punch_travel_mm,s=e.phase==="b\
end",o=c=>s?c.included_angle_deg:e.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?e.included_angle_deg:e.phase===
"approach"?n:-n,r=Sy(t.frames,e.phase);return{...Ty(r,o,a),punch_y_mm:n}}function Sy(t,e){let n=e==="withdrawa\
l"?["release","withdrawal"]:[e],s=t.findIndex(a=>n.includes(a.phase)),o=t.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:t}function Ty(t,e,n){for(let a=1;a<t.length;a+=1){let[r,l]=[e(t[a-1]),e(t[a])];if(n<=r&&
n>=l&&r>l)return Qi(t[a-1],t[a],(r-n)/(r-l))}if(n>e(t[0]))return t[0];let[s,o]=t.slice(-2);return o.phase==="b\
end"?Qi(s,o,(e(s)-n)/(e(s)-e(o))):o}function My({thickness_mm:t,left:e,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=ms([[-a,-t/2],[-a,t/2]],s),[h,u]=ms([[a,-t/2],[a,t/2]],o),p=([g,b])=>`${g} ${-b}`,
m=g=>g.map(b=>`L${p(b)}`).join("");return`M${p(l)}A${r+t} ${r+t} 0 0 0 ${p(h)}${m(ms(n,o))}L${p(u)}A${r} ${r} \
0 0 1 ${p(c)}${m(ms(e,s))}Z`}function hu(t,{phase:e,punch_y_mm:n}){let s=e==="putting in"||e==="approach",o=t.
frames.filter(p=>p.phase===(s?"putting in":"taking out"));if(!o.length||e==="bend"||e==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:p,right:m})=>[...ms(t.left,p),
...ms(t.right,m)]),[c,h]=[l.map(([p])=>p),l.map(([,p])=>p)];return{bounds:[Math.min(...c),Math.min(...h),Math.
max(...c),Math.max(...h,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function ms(t,[e,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return t.map(([r,l])=>[e+o*r-a*l,n+a*r+o*l])}function Aa(t,e,n){let s=-n.
punch_y_mm,o=e.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:My(e,n),tools:[
t.before.ram,t.before.holder,t.before.punch].map(St).filter(Boolean),down:s,gauge:St(t.before.gauge),back:a}}var tl=$(
()=>{Fe()});function Oa({clearance:t}){let e=t?.hits?.[0]??t?.nearest??null;return e&&e.distance_mm<=bu?e:null}function Bn(t){
let{drawing:e,motion:n}=t;if(!e||!n?.frames?.length)return null;let s=Oa(t),{before:o,after:a}=cu(n),r=s?du(n,
s):ho(n,(o+a)/2),l=!!t.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:Aa(e,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Hit":s?"Closest":"Half way"}}function fs(t){let{clearance:e}=t;
if(!e)return"Clearance was not checked at this step.";let n=Oa(t);if(!n)return`Nothing comes within ${f(y(bu,{
digits:0}))} of the part.`;let s=f(y(Math.abs(n.distance_mm))),o=typeof e.needed_mm=="number"?`, ${f(y(e.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${uu(n.tool)}, ${pu(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${uu(n.tool)}, ${pu(n)}${e.hits?.length?o:""}.`}function pu({phase:t,included_angle_deg:e,punch_travel_mm:n}){
let s=f(y(Math.max(0,-n),{digits:0}));return t==="approach"?`as the punch comes down, ${s} above the sheet`:t===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${f(S(e))}`}
function el({motion:t},e){let n=f(S(e.included_angle_deg));if(e.phase==="bend")return t.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(e.phase==="release")return`Letting go, ${n}`;if(e.phase==="taking ou\
t")return`Taking it out${mu(t,e)}`;if(e.phase==="putting in")return`Putting it in${mu(t,e)}`;let s=f(y(Math.max(
0,e.punch_y_mm),{digits:0}));return e.phase==="withdrawal"?`Punch rising, ${s} up`:e.punch_y_mm>0?`Punch comin\
g down, ${s} up`:"First touch, sheet flat"}function mu({frames:t},{phase:e,right:n}){let s=e==="putting in"?t.
find(a=>a.phase==="approach"):[...t].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??
t[0]).right[2]));return o?`, tilted by ${o}°`:", no tilt"}function Ay({clearance:t}){let{way_in:e,way_out:n,rides_up:s,
clear:o}=t??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(e==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[gu(e,n,"slide"),gu(e,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${fu}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${e==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${fu}`}:null}function fe(t,{short:e=!1}={}){let n=Ay(t);return n?
e?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${$u(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${$u(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:d}var bu,uu,fu,gu,$u,Oy,Ey,Ae=$(()=>{_();tl();O();bu=100;uu=t=>({gauge:"gauge finger",sheet:"part it\
self"})[t]??t;fu="Punch still, at its top. Fingers never between.";gu=(t,e,n)=>[t===n&&"in",e===n&&"out"].filter(
Boolean).join(" and ");$u=t=>t==="swing"?Oy:Ey(t!=="slide"),Oy=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,Ey=t=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${t?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function sl({segments_mm:t,segments_total_mm:e}){if(!t?.length)return"";let n=t.map(o=>H(o)).join(" + "),s=y(0).
unit;return t.length>1?`${n} = ${H(e??0)} ${s}`:`${n} ${s}`}function gs(t,e=0,n=[]){return t?.length?i`<ul class="tools" data-test="tools">
    ${t.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${nl(s)}</span>
          <span class="more"
            >${[sl(s),yu(s.steps,e),ol(s,n),Ly(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function yu(t,e){return!t?.
length||t.length===e?"":`step${t.length>1?"s":""} ${t.join(", ")}`}function ol({kind:t,code:e},n){let s=n.filter(
a=>t==="punch"&&a.punch===e),o=s.filter(a=>a.punch_turned);return o.length?`turned round${o.length<s.length?` \
for ${yu(o.map(({number:a})=>a),0)}`:""}`:""}function Ly(t){return t==="good"||!t?"":t==="unknown"?"condition \
unknown":t}function Ea(t){let e=t.length_mm_low===t.length_mm_high||t.length_mm_low===void 0;return i`<div class="figures">
      ${Se("Blank length",y(t.length_mm,{digits:2}),{test:"blank-length",band:e?null:[y(t.length_mm_low,{digits:2}),
y(t.length_mm_high,{digits:2})]})}
      ${Se("Blank width",y(t.width_mm,t.outline?{digits:2}:{}),{test:"blank-width",band:t.width_mm_low===void 0||
t.width_mm_low===t.width_mm_high?null:[y(t.width_mm_low,{digits:2}),y(t.width_mm_high,{digits:2})]})}
      ${Se("Mass",Js(t.mass_kg),{test:"blank-mass"})}
    </div>
    ${t.lines?i`<p data-test="relief">${al(t)}</p>`:d}`}function al({relief:t,lines:e=[]}){let n=new Set(e.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!t?"":t.shape===
"none"?"Corners without relief.":`Corner reliefs ${t.shape}, ${f(y(t.size_mm,{digits:1}))} ${t.shape==="round"?
"across.":"a side."}`}function _u(t){let e=s=>y(s,{digits:2}).text,n=[["At",s=>e(s.at_mm)],["Angle",s=>f(S(s.included_angle_deg))],
["Inside radius",s=>e(s.inside_radius_mm)],["Allowance",s=>e(s.bend_allowance_mm)],["Deduction",s=>e(s.bend_deduction_mm)],
["K-factor",s=>typeof s.k_factor=="number"?s.k_factor.toFixed(2):"–"]];return i`<div class="lines-frame">
    <table class="blank-table stacks" role="table" data-test="bend-lines">
      <caption>
        Bend lines, ${y(0).unit} from
        ${t.lines?"the left end; front and back from the front end":"the left end"}
      </caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">Bend</th>
          ${n.map(([s])=>i`<th role="columnheader" scope="col" class="number">${s}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${t.bend_lines.map(s=>i`<tr role="row" data-bend=${s.bend}>
              <th role="rowheader" scope="row">${s.bend} ${Ny(t,s)}${s.direction}</th>
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
  </div>`}function Ny({lines:t},{bend:e}){let n=t?.find(s=>s.bend===e)?.side;return n?`${n} `:""}function rl(t,e=0){
let n=t.turn_over||t.turn_end||t.turn_quarter,s=t.gauged_against&&t.gauged_against!=="flat edge"?`, against th\
e ${t.gauged_against}`:"",o=t.gauged_end?`${Cy(co(t,e))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!t.turn_quarter)}
            data-over=${String(t.turn_over)}
            data-end=${String(t.turn_end)}
            >${us(t)}</span
          > `:d}
    ${fe(t,{short:!0})} ${o}${t.inside_face==="up"?"top":"bottom"} face
    up.${By(t)}
  </span>`}function By({hits:t}){if(!t)return d;let e=t.gauge_x_mm.map(n=>H(n)).join(", ");return i` <span data-test="hits"
    >${t.count} hits, ${f(y(t.pitch_mm,{digits:2}))} apart, gauge X ${e}.</span
  >`}function ge(t){let e=t.operation&&t.operation!=="bend"?t.operation:"bend",n=t.side?`Bend ${t.bend}, ${t.side}`:
`Bend ${t.bend}`;return e==="bend"?n:`${n}, ${e}`}function Py(t,e,n){let s=t[`${e}_low`],o=t[`${e}_high`],a=s==
null||s===o?d:i`<small class="band">${n(s).text} to ${f(n(o))}</small>`;return i`${f(n(t[e]))}${a}`}function wu(t,e,n){
return le(t,t)?t.first_hit?Ry(t,e,n):t.limits?Py(t,e,n):f(n(t[e])):f(n(null))}function Ry(t,e,n){let s=e==="se\
t_angle_deg"?`first hit, ${Ri(t.first_hit)}; then about `:"then about ";return i`${f(n(t[e]))}<small class="band"
      >${s}${f(n(t[`expected_${e}`]))}</small
    >`}function La(t,{link:e}={}){let n=o=>y(o,{digits:2}),s=t.part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${t.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${e?i`<a href=${e(o.number)}>${o.number}. ${ge(o)}</a>`:i`${o.number}. ${ge(o)}`}
                <small>${f(S(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${f(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${f(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${wu(o,"set_angle_deg",S)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${wu(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${f(Yt(o))}<small class="band">expected ${f(qe(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch turned round</span>`:
d}
              </td>
              <td role="cell" data-head="Sheet" class="long">${rl(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var nl,Cy,Je=$(()=>{_();_t();fn();O();pe();ee();pa();Tn();ps();Ae();nl=Ve;Cy=t=>t[0].toUpperCase()+t.
slice(1)});function Na(t,e){return i`<header class="step-top">
    <a class="step-card" href="/c/${t.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${t.title||t.display_code}</span></a
    >
    ${il(t,e)}
  </header>`}function Ut(t,e,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${t}${e.unit&&e.unit!=="°"?i` <span class="unit">${e.unit}</span>`:d}</span
    >
    <span class="value" data-test="${n}-value">${e.text}${e.unit==="°"?"°":d}</span>
  </div>`}var il,Xe=$(()=>{_();Je();il=(t,e)=>i`<h1>
    <span data-test="step-number">Step ${e.number} of ${t.plan.steps.length}</span>
    <small
      >${ge(e)}
      ${e.direction}${e.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch turned round</b>`:
d}</small
    >
  </h1>`});function vu(t,e,n,s,o){let a=Bn(t),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?ho(t.motion,l):null,
h=a&&r==="during"?a.shown:null,u=f(y(t.gauge_x_mm)),p=(m,g,b,w)=>i`<button
      type="button"
      class="button"
      aria-pressed=${b?"true":"false"}
      data-test=${w}
      @click=${()=>{Object.assign(n,g,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${me(t.drawing,{pose:r==="between"?"during":r,close:n.close,opening:t.v_opening_mm,gauge:u,
angle:e,moment:h??(c&&Aa(t.drawing,t.motion,c)),near:a?.near??null,mark:r==="during",room:c&&hu(t.motion,c),words:`${ge(
t)}, ${Wy(t,r)}. Gauge at ${u}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${Dy(t,r,c)}
          </p>`:d}
    <div class="toggles">
      ${p("Before",{at:"before"},r==="before","before")}
      ${a?p(a.name,{at:"during"},r==="during","during"):d}
      ${p("After",{at:"after"},r==="after","after")}
      ${p(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?Fy(t,l,n,s,o):d}`}function Wy(t,e){return e==="before"?"the sheet on the die before the bend":e==="aft\
er"?"at the bottom of the stroke":e==="during"?fs(t):"on its way"}function Dy(t,e,n){return n?el(t,n):fs(t)}function Fy(t,e,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&jy(e>=1?0:e,n,s,o),s()};return i`<div class="motion">
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
      .value=${String(e)}
      aria-label="The bend from first to last"
      aria-valuetext=${el(t,ho(t.motion,e))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function jy(t,e,n,s){let o=performance.now(),a=r=>{!e.playing||s.aborted||(e.share=Math.min(1,t+Math.
max(0,r-o)/Iy),e.playing=e.share<1,n(),e.playing&&requestAnimationFrame(a))};Object.assign(e,{at:"between",share:t}),
requestAnimationFrame(a)}var Iy,uo,Ca=$(()=>{_();tl();oo();O();Je();Ae();Iy=7e3,uo=()=>({at:"before",share:0,close:!1,
playing:!1})});function ku(t,{waits:e,correction:n}){if(!e&&!n?.to_check?.length)return i`<p data-test="no-setting">${n?.words||
"No new setting comes from this one."}</p>`;let s=n?.what??`${Hy(t)} Something else is wrong.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${k("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??_d).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function Hy(t){let e=di(t),n="That is further off than the card’s table of corrections goes.";return e?
`${n} Tools and press end at ${f(S(e.sharpest_deg))} under load.`:n}function xu(t,e){return t.die?i`<p class="why-not-set" data-test="why-not-set">
    ${k("stop")} <b>No angle and depth.</b>
    ${e?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:d}var ll=$(()=>{_();fn();O();V()});function Su({stations:t=[]}){return t.length<2&&!t.some(e=>e.off_centre_level!=="ok")?d:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${t.map(e=>i`<li>
            <b>Station ${e.number}</b> ${e.punch}${e.turned?", turned round,":d} over
            ${e.die}: ${Tu(e.centre_mm)}; step${e.steps.length>1?"s":""}
            ${e.steps.join(", ")}.
            ${e.off_centre_level==="ok"?d:i`${k(e.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function Ba({stations:t=[]},e){let n=t.find(({steps:s})=>s.includes(e.number));return n&&t.length>1?
`Station ${n.number}, ${Tu(n.centre_mm)}`:""}function Tu(t){return Math.abs(t)<.5?"in the middle":`its middle ${f(
y(Math.abs(t),{digits:0}))} to the ${t>0?"right":"left"} of the press's middle`}var Pa=$(()=>{_();O();V()});function Ra(t,e){let n=e.checks.filter(l=>jt(l)!=="ok"),s=t.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=t.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+l.words,{...l,sign:jt(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function Ia(t,e,n,s,o){
if(!e.drawing)return i`<p class="state" data-test="no-drawing">
      ${e.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=Qt(t,e),r={...e,gauge_x_mm:a.gauge_x_mm};return vu(r,$a(e,a),n,s,o)}function Wa(t,e){let n=Qt(
t,e);return n.set_angle_deg===null&&e.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${Ut("Gauge X",y(n.gauge_x_mm),"gauge-x")}
      ${Ut("Gauge R",y(e.gauge_r_mm),"gauge-r")}
      ${Ut("Angle to set",S(n.set_angle_deg),"set-angle")}
      ${Ut("Depth",y(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${as(n.firstHit,e.drawing?"The drawing shows the last hit.":"")}
    ${n.set_angle_deg===null?xu(e,n.fromTrial):d} ${Uy(e)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-trial" data-test="from-trial">
            <b>Angle and depth from a first piece.</b> The plan said ${f(S(e.set_angle_deg))} and
            ${f(y(e.punch_depth_mm,{digits:2}))}.
          </p>`:d}
    ${e.gauge_draw_back_mm?i`<p class="draw-back" data-test="draw-back">
            <b>Draw the gauge back ${f(y(e.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would hit it.
          </p>`:d}
    ${Gy(e)}`}function Uy(t){let e=ma(t);return e===d?d:i`<p class="press-force" data-test="press-force">Allow for ${e}</p>`}
function Gy({hits:t}){return t?i`<div class="hits" data-test="hits">
    <b>${t.count} hits</b>, ${f(S(t.angle_each_deg))} each. Move the gauge
    ${f(y(t.pitch_mm,{digits:2}))} each time:
    ${t.gauge_x_mm.map(e=>y(e).text).join(" · ")}
  </div>`:d}function Mu(t,e){if(!e.die)return d;let n=Ba(t,e);return i`<dl class="step-tools" data-test="step-tools">
      <div>
        <dt>Punch</dt>
        <dd>
          <b>${e.punch}</b>
          ${e.punch_name}${e.punch_turned?i` <b class="punch-turned" data-test="tool-turned">turned round</b>`:
d}
        </dd>
      </div>
      <div>
        <dt>Die</dt>
        <dd><b>${e.die}</b> ${e.die_name}</dd>
      </div>
      ${e.holder?i`<div>
              <dt>Holder</dt>
              <dd><b>${e.holder}</b></dd>
            </div>`:d}
      ${n?i`<div class="stands">
              <dt>Stands</dt>
              <dd data-test="step-station"><b>${n}</b></dd>
            </div>`:d}
      <div>
        <dt>Wanted</dt>
        <dd><b>${f(S(e.included_angle_deg))}</b> ${e.direction}</dd>
      </div>
    </dl>
    ${cs(e)}`}var Da=$(()=>{_();kt();O();pe();V();Tn();Ca();On();ll();Xe();Pa()});function Au(t,e,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=Ra(t,e),c=l.filter(m=>jt(m)!=="note"),h=l.length>
Vy,u=h?c:l,p=e.number===t.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-step"
    data-code=${t.code}
    data-step=${e.number}
    data-revision=${t.revision}>
    <header class="step-top">
      ${Fa(n,o)}
      <p class="bench-card" data-test="bench-card">${t.title||t.display_code}</p>
      ${il(t,e)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${yt(r)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${Ma(e,t.part.flats_mm.length)}${fe(e)}</div>
      <section class="step-set" aria-label="What to set">${Wa(t,e)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${h?"many":""}" aria-label="What to watch">
        ${u.length?yt(u):d}${Ta(t.plan,e)}
      </section>
      <section class="step-with" aria-label="Tools">${gs(qy(t,e),0)}</section>
    </div>
    ${Eu({back:e.number>1,label:p?"Done":"Next",more:p?"":`step ${e.number+1}`},o)}
  </article>`}function Ou(t,{name:e,lines:n,acts:s}){let o=t.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-done"
    data-code=${t.code}
    data-step=${o+1}>
    <header class="step-top">
      ${Fa(e,s)}
      <p class="bench-card" data-test="bench-card">${t.title||t.display_code}</p>
    </header>
    ${n}
    <div class="bench-says">
      <h1>Done</h1>
      <p>
        ${o===1?"The one step is bent.":`All ${o} steps are bent.`} Measure it, and type what
        came out on the phone.
      </p>
      <button type="button" class="button" data-test="clear-bench" @click=${s.clear}>
        Take this card off
      </button>
    </div>
    ${Eu({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function Eu({back:t,label:e,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!t} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${e}${n?i` <small>${n}</small>`:d}
    </button>
  </nav>`}var Vy,qy,Fa,cl=$(()=>{_();Ye();Xi();V();ps();Je();Xe();Ae();Da();Vy=3;qy=(t,e)=>t.plan.tools.filter(
n=>n.steps.includes(e.number)).map(n=>({...n,steps:[]}));Fa=(t,e)=>i`<button
    type="button"
    class="button bench-name"
    data-test="bench-name"
    aria-label="${Me(t)}, this display. Choose another"
    @click=${e.choose}>
    ${Me(t)}
  </button>`});function Lu({names:t,silent:e,typed:n,wrong:s,here:o},a){return i`<div class="bench-choose" data-test="bench-choose">
    <h1>Which bench is this display?</h1>
    ${e?i`<p class="bench-line" data-test="silent">
            The shop does not answer. It is asked again by itself.
          </p>`:d}
    ${t?.length?i`<div class="buttons">
            ${t.map(r=>i`<button
                  type="button"
                  class="button next"
                  data-test="take-bench"
                  @click=${()=>a.take(r)}>
                  ${Me(r)}
                </button>`)}
          </div>`:d}
    ${t?i`<form
            class="bench-new"
            novalidate
            @submit=${r=>{r.preventDefault(),a.make()}}>
            ${A({name:"bench",label:t.length?"Or a new one":"Give it a name",value:n,wrong:s?[s]:[],change:a.type,
hint:"Like 1, or Big press. It is kept on this display."})}
            <button class="button" data-test="make-bench">Make it</button>
          </form>`:d}
    ${o?i`<button type="button" class="button" data-test="stay" @click=${()=>a.take(o)}>
            Stay at ${Nn(o)}
          </button>`:d}
    ${qi()}
  </div>`}function Pu({answers:t,refused:e},n,s,o){return i`${t===!1?i`<p class="bench-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again by itself.`}
        </p>`:d}
  ${e?i`<p class="bench-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${e}
        </p>`:d}
  ${s?i`<p class="bench-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:d}`}var Nu,Cu,Bu,dl,Ru=$(()=>{_();U();zi();Ye();dt();cl();J();Nu=t=>dl(t,"bench-idle",Me(t.name),
i`<p>Open a card on a phone and choose this bench.</p>
      ${qi()}`),Cu=(t,e,n)=>dl(n,"bench-no-card",W(t),e instanceof M?i`<p>${e.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes by itself when the shop
          is back.
        </p>`),Bu=(t,e,n)=>dl(n,"bench-no-step",`There is no step ${e}`,i`<p>
      ${t.title||t.display_code} has ${t.plan.steps.length} now. Choose the step on the phone.
    </p>`),dl=({name:t,lines:e,acts:n},s,o,a)=>i`<article class="step bench-step" data-test=${s}>
    <header class="step-top">${Fa(t,n)}</header>
    ${e}
    <div class="bench-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var Du={};tt(Du,{show:()=>Ky});function Ky(t){Uh(t.signal);let e=Ki();e?Wu(t,e):Iu(t,"")}function Iu(t,e){t.title(
"Bench screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:e},o;t.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&t.render(Lu(s,c)),r=u=>{n.abort();let p=Ki();Wu(t,p?.name===u?p:{name:u,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let u=s.typed.trim();if(s.names?.includes(u))return r(u);try{r((await qh(u||" ")).name)}catch(p){
s.wrong=p instanceof M?p.errors.name?.[0]??p.message:String(p.message),a()}},type:u=>Object.assign(s,{typed:u})},
h=async()=>{try{Object.assign(s,{names:(await Ln(n.signal)).map(({name:u})=>u),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),t.ready(),o=setTimeout(h,zy))};a(),h()}function Wu(t,e){let{name:n}=e,s=new AbortController,
{signal:o}=s;t.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:e.code,
step:e.step},l=null,c=null,h=0,u=uo(),p=xa(n,e.etag,{keepMs:1/0,heard:(v,E)=>{e={...e,etag:E},b({code:v.code,step:v.
step},!1)},sent:(v,E,X)=>m({etag:E,unsent:X}),changed:v=>v.gone?g(""):B()},o);function m(v){e={...e,...r,...v},
Yi(e)}function g(v){s.abort(),v||Yi(null),Iu(t,v)}function b(v,E){let X=v.code!==r.code||v.step!==r.step;v.code!==
r.code&&(l=null),X&&(u=uo()),r=v,m({unsent:E}),E&&p.move(v),X||!l&&v.code?w():B()}async function w(){a.abort(),
a=new AbortController;let v=a.signal;if(h=0,c=null,B(),!!r.code)try{await wt(r.code,E=>{v.aborted||(l=E,h=0,B())},
v)}catch(E){if(v.aborted||o.aborted)return;c=E,B()}}let L={next:()=>{if(!l)return;let v=l.plan.steps.length;b(
{code:l.code,step:r.step>v?1:r.step+1},!0)},back:()=>l&&r.step>1&&b({code:l.code,step:r.step-1},!0),clear:()=>b(
{code:null,step:0},!0),choose:()=>g(n),newer:()=>w()};function B(){if(o.aborted)return;let v=Pu(p.standing(),!!l,
h,L.newer);t.title(l?`${l.title||l.code}, ${n}`:n),t.render(N({name:n,lines:v,acts:L})),(l||c||!r.code)&&t.ready()}
function N(v){if(!r.code)return Nu(v);if(!l)return c?Cu(r.code,c,v):Tt(`Opening ${W(r.code)}…`);let E=l.plan.
steps,X=E[r.step-1];return X?Au(l,X,v,Ia(l,X,u,B,a.signal)):r.step===E.length+1?Ou(l,v):Bu(l,r.step,v)}Qh(L,o),
ft(B,o),document.addEventListener("sync",async v=>{if(!l)return c&&v.detail.reached?w():void 0;let E=await Xt(
l.code).catch(()=>{});!E||E.code!==l?.code||E.revision===l.revision||h===E.revision||(h=E.revision,B())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),e.unsent&&p.move(r),w()}var zy,Fu=$(()=>{U();zi();Ye();Ji();kt();
dt();tu();et();$t();Ru();cl();Ca();Ct();Da();zy=3e3});function Z(t,e){let n=document.getElementById("notices"),s=()=>Be(i``,n);Be(i`<div class="notice" data-test="notice">
      <span>${t}</span>
      <button type="button" @click=${()=>{s(),e?.act()}}>${e?.label??"Close"}</button>
    </div>`,n),clearTimeout(ju),e||(ju=setTimeout(s,8e3))}var ju,oe=$(()=>{_()});function Hu(t){try{let e=JSON.parse(localStorage.getItem(hl(t))??"null");return e&&Array.isArray(e.form?.flats)&&
Array.isArray(e.form?.bends)?e:null}catch{return null}}function ul(t,e){try{return localStorage.setItem(hl(t),
JSON.stringify({...e,kept_at:new Date().toISOString()})),!0}catch{return!1}}function pl(t){try{localStorage.removeItem(
hl(t))}catch{}}var hl,Uu=$(()=>{hl=t=>`flangebook.part.${t||"new"}`});var ja,$e,Ha,Ua,po=$(()=>{ue();ls();O();ja=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
$e=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),Ha=t=>({angle:String(t.included_angle_deg),direction:t.
direction,radius:q(t.inside_radius_mm),kind:t.kind??"bend",gap:t.kind==="open_hem"?q(t.hem_gap_mm):"",...ro(t)}),
Ua=(t,e)=>({included_angle_deg:t.kind==="bend"?Pt(t.angle):0,direction:t.direction,kind:t.kind,...t.radius.trim()&&
t.kind==="bend"?{inside_radius_mm:Q(t.radius,e)}:{},...t.kind==="open_hem"?{hem_gap_mm:Q(t.gap,e)}:{},...ba(t)})});function Ga(t="tray"){let e=()=>t==="lips-in"?{flats:["",""],bends:[$e(),$e()]}:t==="lips-out"?{flats:["",""],
bends:[$e(),{...$e(),direction:"down"}]}:{flats:[""],bends:[$e()]};return{length:"",width:"",there:t==="channe\
l"?["left","right"]:[...Pn],alike:!0,sides:{left:e(),right:e(),front:e(),back:e()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function Vu(t,e){let n=Ga(e);for(let s of Pn){let o=t.sides[t.alike?
t.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...t,there:n.there,sides:n.
sides}}function qu({there:t,sides:e,alike:n}){let s=(n?t.slice(0,1):t).map(r=>e[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return t.length===2&&t.includes("left")&&t.includes("right")&&s.every(o)?"channel":t.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function zu(t){let e=Pn.
filter(o=>t.sides[o]),n=e.map(o=>JSON.stringify(t.sides[o])),s=Ga().sides;for(let o of Pn){let a=t.sides[o]??t.
sides[e[0]];s[o]={flats:a.flats_mm.map(q),bends:a.bends.map(Ha)}}return{length:q(t.length_mm),width:q(t.width_mm),
there:e,alike:n.every(o=>o===n[0]),sides:s,relief:t.relief,reliefSize:q(t.relief_mm),corner:t.corner,gap:q(t.gap_mm),
firstPair:t.first_pair??"left-right"}}function Xu(t,e){let n=s=>t.there.includes(s)?Yu(t,s).flats.map((o,a)=>`${s}\
 ${ws(a)}`):[];return ml.filter(s=>s.some(o=>t.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...e(s,
o),...n(o)])}function Zu(t,e){let n=o=>Q(o,e),s=t.there.map(o=>{let a=Yu(t,o);return[o,{flats_mm:a.flats.map(n),
bends:a.bends.map(r=>Ua(r,e))}]});return{length_mm:n(t.length),width_mm:n(t.width),sides:Object.fromEntries(s),
relief:t.relief,corner:t.corner,...t.firstPair==="front-back"?{first_pair:t.firstPair}:{},...t.reliefSize.trim()&&
t.relief!=="none"?{relief_mm:n(t.reliefSize)}:{},...t.gap.trim()&&t.corner==="closed"?{gap_mm:n(t.gap)}:{}}}function $s(t){
return[["box.length_mm","length of the base",t.length],["box.width_mm","width of the base",t.width],...fl(t).flatMap(
e=>Yy(t,e))]}function Yy({sides:t,alike:e},n){let s=e?"":`${n} `;return t[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=t[n].bends[a],h=`${s}${ws(a)}`;return[[bs(n,a),h,o],...r==="bend"?[[Va(n,a),`angle of the ${h}`,
l]]:[],...r==="open_hem"?[[`${Ze(n,a)}.hem_gap_mm`,`gap of the ${h}`,c]]:[]]})}function Qu(t,e){if(!t.alike)return e;
let n=t.there[0];return Object.fromEntries(Object.entries(e).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function tp(t){let[,e,n,s,o,a]=t.split(".");if(e!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[e]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${ws(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function ep(t,e,n,s){
let o=t.sides[e];return qa(t,e,{...o,flats:o.flats.with(n,s)})}function ys(t,e,n,s){let o=t.sides[e];return qa(
t,e,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function np(t,e){let{flats:n,bends:s}=t.sides[e],o=s.map(
a=>({...a,kind:"bend"}));return qa(t,e,{flats:[...n,""],bends:[...o,$e()]})}function sp(t,e){let{flats:n,bends:s}=t.
sides[e];return qa(t,e,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function op(t,e){let n=Pn.filter(o=>o===e!==
t.there.includes(o));if(!n.length)return t;let s=t.sides[t.there[0]];return{...t,there:n,sides:t.alike?{...t.sides,
[n[0]]:s}:t.sides}}function ap(t,e){let n=t.sides[t.there[0]];return{...t,alike:e,sides:e?t.sides:{left:n,right:n,
front:n,back:n}}}var ml,Pn,Gu,Ku,Yu,Rn,Ju,fl,bs,Ze,Va,ws,qa,In=$(()=>{po();O();ml=[["left","right"],["front","\
back"]],Pn=ml.flat(),Gu=6;Ku=({there:t})=>ml.every(e=>e.some(n=>t.includes(n))),Yu=(t,e)=>t.sides[t.alike?t.there[0]:
e],Rn=t=>Xu(t,()=>[]),Ju=t=>Xu(t,(e,n)=>[`base, ${e} to ${n}`]);fl=({there:t,alike:e})=>e?t.slice(0,1):t;bs=(t,e)=>`\
box.sides.${t}.flats_mm.${e}`,Ze=(t,e)=>`box.sides.${t}.bends.${e}`,Va=(t,e)=>`${Ze(t,e)}.included_angle_deg`,
ws=t=>t===0?"wall":t===1?"lip":`flat ${t+1}`;qa=(t,e,n)=>({...t,sides:{...t.sides,[e]:n}})});function $l(t){if(!t)return mo();let{first:e,last:n,margin_mm:s}=t;return{first:e?String(e):"",last:n?String(n):
"",no_turn_over:!!t.no_turn_over,no_turn_end:!!t.no_turn_end,one_set_up:!!t.one_set_up,critical_flats:[...t.critical_flats??
[]],margin:s===void 0||s===gl?"":q(s)}}function bl(t,e){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=t??mo(),h={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:Q(c,
e)}:{}};return Object.keys(h).length?{wishes:h}:{}}function wl(t,e){if(!t)return{};let n=e?-1:1,s=a=>!a||Number(
a)===e?"":Number(a)>e?String(Number(a)+n):a,o=t.critical_flats.filter(a=>!e||a!==e+1).map(a=>a>e?a+n:a);return{
wishes:{...t,first:s(t.first),last:s(t.last),critical_flats:o}}}function za(t){let{first:e,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=t??mo();return[e&&`bend ${e} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var gl,mo,rp,Ka=$(()=>{O();gl=2,mo=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});rp=t=>({...t,first:"",
last:"",critical_flats:[]})});function _l(t){return{unit:P(),title:"",note:"",metal:t,thickness:"",length:"",flats:["",""],bends:[$e()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function Ya({aside:t,...e},n){let s=ip({...e,box:n?e.box??t??Ga():
null});return n?s:{...s,...e.box?{aside:e.box}:{}}}function lp(t,e){return t.box&&e&&String(Rn(t.box))===String(
Rn(e))&&t.box.firstPair===e.firstPair?{...t,box:e}:ip({...t,box:e})}function fo(t,e){return t.box?{..._l(t.metal),
title:t.title??"",note:e,thickness:q(t.thickness_mm),dimension:t.dimension??"din6935",order:t.order??null,wishes:$l(
t.wishes),tools:ro(t.tools),box:zu(t.box)}:{unit:P(),title:t.title??"",note:e,metal:t.metal,thickness:q(t.thickness_mm),
length:q(t.bend_length_mm),flats:t.flats_mm.map(q),bends:t.bends.map(Ha),dimension:t.dimension??"din6935",grain:t.
grain??"",order:t.order??null,wishes:$l(t.wishes),tools:ro(t.tools),holes:(t.holes??[]).map(n=>({flat:String(n.
flat),position:q(n.position_mm),diameter:q(n.diameter_mm)}))}}function _s(t){let e=n=>Q(n,t.unit);return t.box?
{title:t.title.trim(),metal:t.metal,thickness_mm:e(t.thickness),dimension:t.dimension,box:Zu(t.box,t.unit),...t.
order?{order:t.order}:{},...bl(t.wishes,t.unit),...Ii(t.tools)}:{title:t.title.trim(),metal:t.metal,thickness_mm:e(
t.thickness),bend_length_mm:e(t.length),flats_mm:t.flats.map(e),bends:t.bends.map(n=>Ua(n,t.unit)),dimension:t.
dimension,...t.grain?{grain:t.grain}:{},...t.order?{order:t.order}:{},...bl(t.wishes,t.unit),...Ii(t.tools),...t.
holes.length?{holes:t.holes.map(n=>({flat:Pt(n.flat),position_mm:e(n.position),diameter_mm:e(n.diameter)}))}:{}}}
function Ja(t){let e=[["metal","metal",t.metal],["thickness_mm","thickness",t.thickness]];return(t.box?[...e,...$s(
t.box)]:[...e,["bend_length_mm","length",t.length],...t.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...t.
bends.flatMap((s,o)=>Jy(s,o)),...t.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function Jy({kind:t,angle:e,gap:n},s){return t==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,e]]:t==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function cp(t,e,n){return{...t,flats:t.flats.with(e,n)}}function Wn(t,e,n){return{...t,bends:t.
bends.with(e,{...t.bends[e],...n})}}function kl(t,e){let n=t.bends.at(e==="left"?0:-1),s={...$e(),direction:n?.
direction??"up"},o=e==="left"?t.bends:t.bends.map((r,l)=>l>0&&l===t.bends.length-1?{...r,kind:"bend"}:r);if(e===
"right")return{...t,bends:[...o,s],flats:[...t.flats,""],order:null};let a=t.holes.map(r=>({...r,flat:hp(r.flat,
1,1)}));return{...t,bends:[s,...o],flats:["",...t.flats],order:null,holes:a,...wl(t.wishes,0)}}function dp(t,e){
let n=e+2,s=t.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:hp(o.flat,n,-1)}));return{...t,bends:t.
bends.toSpliced(e,1),flats:t.flats.toSpliced(e+1,1),order:null,holes:s,...wl(t.wishes,e+1)}}function hp(t,e,n){
let s=Number(t);return Number.isInteger(s)&&s>=e?String(s+n):t}function Xa(t){let e=t.split(/[^\d]+/).filter(Boolean).
map(Number);return e.length?e:null}function up(t,e){return e===0||e===t.bends.length-1}var yl,ip,vl,Qe=$(()=>{
po();In();ue();ls();O();Ka();yl=40;ip=t=>({...t,order:null,...t.wishes?{wishes:rp(t.wishes)}:{}});vl=t=>JSON.stringify(
{..._s(t),title:""})});async function xl(t,e){try{let{body:n}=await T("POST","/cards",{body:{...mp(t),code:e},timeout:pp});return{saved:await $p(
n)}}catch(n){if(n instanceof M&&n.status===409)return{taken:e};throw gp(n)}}async function fp(t,e){let n={...mp(
t),reason:t.reason??""},s=Xy(e,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await T("PUT",`/cards/${e.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:pp});return await Mc().then(c=>Ds({...s,number:c},l)).catch(
()=>{}),{saved:await $p(r)}}catch(o){if(o instanceof M&&o.status===412)return{stale:await ye(e.code)};throw gp(
o)}}function Xy(t,e){let n=JSON.stringify(e);t.saving?.wanted!==n&&(t.saving={id:Wt(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=t;return{id:t.saving.id,number:0,kind:"edit",code:s,body:e,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function gp(t){return t instanceof M&&(t.errors=Object.fromEntries(Object.entries(t.
errors).map(([e,n])=>[e.replace(/^part\./,""),n]))),t}async function $p(t){return re(t).catch(()=>t)}var pp,mp,
bp=$(()=>{U();kt();Nt();Qe();et();$t();pp=6e4,mp=t=>({part:_s(t),note:t.note,...C().name?{by:C().name}:{}})});function _p(t,{pixels:e=es(),tallest:n=e*.45,test:s="blank"}={}){let o=H(t.width_mm),a=e-Ft(o,Y)-Y*2,r=a/t.length_mm,
l=t.width_mm*r>n,c=l?n:Math.max(t.width_mm*r,3),h=wp(t.bend_lines.map(b=>[b.at_mm*r,Y*1.8+Ft(Sl(b),Y)]),a),u=wp(
t.bend_lines.map(b=>[b.at_mm*r,Ft(H(b.at_mm),Y)]),a),p=yp(h)*go+Y*.4,m=yp(u)*go+Y*.4,g=p+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${Zy(t)}
      viewBox="-8 -4 ${e+8} ${g+m+go*1.4}">
      ${l?t_(a,p,g):x`<rect class="sheet" x="0" y=${p} width=${a} height=${c}/>`}
      ${t.bend_lines.map((b,w)=>Qy(b,b.at_mm*r,h[w],u[w],p,g))}
      ${e_(a,g+m+Y*.7,H(t.length_mm))}
      ${n_(a+Y,p,g,o)}
    </svg>
    ${l?i`<p class="hint">Width ${f({text:o,unit:""})} is drawn short at the break.</p>`:d}`}function Sl(t){let e=t.
included_angle_deg?f(S(t.included_angle_deg)).replace(".0°","°"):"hem";return`${t.direction} ${e}`}function Zy(t){
let e=t.bend_lines.map(n=>`bend ${n.bend} ${Sl(n)} at ${H(n.at_mm)}`);return`Blank ${H(t.length_mm)} by ${H(t.
width_mm)}. ${e.join("; ")}.`}function wp(t,e){let n=[];return t.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),
Math.max(e-o/2,o/2)),r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function Qy(t,e,n,s,o,a){
let r=o-Y*.4-go*(n.row+.5),l=a+Y*.4+go*(s.row+.5),c=n.at-n.width/2;return x`<path class="fold ${t.direction}" d="M${e} ${o}V${a}"/>
    <path class="leader" d="M${e} ${o}V${r+Y*.8}M${e} ${a}V${l-Y*.8}"/>
    <rect class="ground" x=${c} y=${r-Y*.75} width=${n.width} height=${Y*1.5}/>
    <circle class="badge" cx=${c+Y*.75} cy=${r} r=${Y*.68}/>
    <text class="badge-number" x=${c+Y*.75} y=${r} font-size=${Y*.95} text-anchor="middle"
      dominant-baseline="central">${t.bend}</text>
    <text x=${c+Y*1.7} y=${r} font-size=${Y} dominant-baseline="central">${Sl(t)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-Y*.7} width=${s.width}
      height=${Y*1.4}/>
    <text x=${s.at} y=${l} font-size=${Y} text-anchor="middle"
      dominant-baseline="central">${H(t.at_mm)}</text>`}function t_(t,e,n){let s=(e+n)/2,o=`L${t*.52} ${s+3}L${t*
.54} ${s-14}L${t*.58} ${s+8}L${t*.6} ${s-9}`,a=`L${t*.6} ${s-1}L${t*.58} ${s+16}L${t*.54} ${s-6}L${t*.52} ${s+
11}`;return x`<path class="sheet" d="M0 ${e}V${s+3}${o}L${t} ${s-9}V${e}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${t*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${t} ${s-1}V${n}Z"/>`}function e_(t,e,n){let s=Ft(n,Y);return x`<path class="dimension"
      d="M0 ${e}H${t}M-4 ${e+4}L4 ${e-4}M${t-4} ${e+4}L${t+4} ${e-4}"/>
    <rect class="ground" x=${t/2-s/2} y=${e-Y*.7} width=${s} height=${Y*1.4}/>
    <text x=${t/2} y=${e} font-size=${Y} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function n_(t,e,n,s){let o=a=>`M${t-4} ${a+4}L${t+4} ${a-4}`;return x`<path class="dimension" d="M${t} ${e}V${n}${o(
e)}${o(n)}"/>
    <text x=${t+Y*.6} y=${(e+n)/2} font-size=${Y}
      dominant-baseline="central">${s}</text>`}var Y,go,yp,vp=$(()=>{_();O();Zo();ee();Y=18,go=Y*1.5;yp=t=>Math.
max(0,...t.map(e=>e.row+1))});function Jt(t,{mark:e=0,...n}={}){if(!It(t))return Ld(t,{mark:e,...n});let s=t.blank.lines.find(o=>o.bend===e)?.
side??"";return Sa(t.folded,{...n,mark:s})}function vs(t,e={}){return t.outline?eu(t,e):_p(t,e)}var tn=$(()=>{
hs();vp();ee()});function ks({how:t,differences:e},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
    <h2>${k("caution")} Somebody else saved meanwhile</h2>
    <p>
      ${t==="others changed"?`Not this ${n}, but others in the list. Save again to keep both.`:d}
      ${t==="taken out"?`This ${n} was taken out of the list. Save to put it back as you typed it.`:d}
      ${t==="this changed"?`This ${n} too. What you typed is still in the boxes.`:d}
    </p>
    ${e.length?i`<div class="table">
            <table>
              <thead>
                <tr>
                  <th scope="col">Where</th>
                  <th scope="col">Saved now</th>
                  <th scope="col">You typed</th>
                </tr>
              </thead>
              <tbody>
                ${e.map(({label:a,theirs:r,mine:l})=>i`<tr>
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
      ${t==="taken out"?d:i`<button type="button" class="button" data-test="take-theirs" @click=${o}>
              Take what is saved
            </button>`}
    </div>
  </section>`}function Za(t,e,n){return n.filter(({name:s})=>(t[s]??"")!==(e[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:e[s]??"",mine:t[s]??""}))}var xs=$(()=>{_();V()});function xp(t,e,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=fo(t.part,t.note),r=[...new Set([...Tl(e),...Tl(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=Za(kp(e),kp(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
    <h2>${k("caution")} Somebody else saved this card meanwhile</h2>
    <p>
      ${t.updated_by?`${t.updated_by} saved`:"Somebody saved"} revision ${t.revision}. What
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
            ${l.length?l.map(({label:c,theirs:h,mine:u})=>i`<tr>
                        <td>${c}</td>
                        <td>${h||"empty"}</td>
                        <td>${u||"empty"}</td>
                      </tr>`):i`<tr>
                    <td colspan="3">
                      The part is the same. Something else of the card changed: its trials, settings or
                      whether it is put away.
                    </td>
                  </tr>`}
          </tbody>
        </table>
      </div>
      <figure class="theirs">
        <figcaption>As saved now</figcaption>
        ${Jt(t.plan,{pixels:330,tallest:260,test:"theirs-section"})}
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
  </section>`}function Tl(t){return[{label:"Title",value:t.title},{label:"Note",value:t.note},{label:"Metal",value:t.
metal},{label:"Thickness",value:t.thickness},{label:"Length",value:t.length},{label:"Measured",value:t.dimension},
{label:"Grain",value:t.grain},{label:"Order",value:t.order?.join(", ")??""},{label:"Order keeps to",value:za(t.
wishes)},{label:"Tools",value:An(t.tools)},...t.box?[...$s(t.box).map(([,e,n])=>({label:`${e[0].toUpperCase()}${e.
slice(1)}`,value:n})),{label:"Corners",value:`${t.box.corner}, relief ${t.box.relief} ${t.box.reliefSize} ${t.
box.gap}`.trim()},{label:"Sides",value:t.box.there.join(", ")}]:[],...(t.box?[]:t.flats).map((e,n)=>({label:`F\
lat ${n+1}`,value:e})),...(t.box?[]:t.bends).map((e,n)=>({label:`Bend ${n+1}`,value:[e.kind==="bend"?`${e.angle}\
°`:e.kind.replace("_"," "),e.direction,e.radius&&`radius ${e.radius}`,e.gap&&`gap ${e.gap}`,An(e)].filter(Boolean).
join(", ")})),...t.holes.map((e,n)=>({label:`Hole ${n+1}`,value:`flat ${e.flat}, at ${e.position}, size ${e.diameter}`}))]}
var kp,Sp=$(()=>{_();tn();In();Qe();ls();Ka();V();xs();kp=t=>Object.fromEntries(Tl(t).map(({label:e,value:n})=>[
e,n]))});function Mp(t,e,n){let{box:s,unit:o}=t,a=Qu(s,e),r=(l,c)=>n(lp(t,l),c);return i`${i_(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${l_(s,r)}
      <div>
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
        @change=${l=>r(ap(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${fl(s).map(l=>c_(s,l,a,r))}
    <h2>Corners</h2>
    ${p_(t,a,r)}
    ${Ku(s)?K({name:"box.first_pair",label:"Bent first; the others go between them",value:s.firstPair??Tp[0][0],
options:Tp,change:l=>r({...s,firstPair:l==="front-back"?l:"left-right"})}):d}`}function i_(t,e){let n=qu(t);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${s_.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>e(Vu(t,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function l_(t,e){let n=s=>{let o=t.there.includes(s),a=o&&t.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>e(op(t,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${Pn.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function c_(t,e,n,s){let{flats:o,bends:a}=t.sides[e],r=t.alike?"Each side":`${e[0].toUpperCase()}${e.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${e}">
    <legend>${r}</legend>
    ${u_(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${d_(t,e,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${e}"
        ?disabled=${o.length>=Gu}
        @click=${()=>s(np(t,e),{focus:bs(e,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${e}"
              @click=${()=>s(sp(t,e),{focus:bs(e,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:d}
    </div>
  </fieldset>`}function d_(t,e,n,s,o){let{flats:a,bends:r}=t.sides[e],[l,c]=[r[n],Ap(ws(n))],h=`${Ze(e,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${A({next:!0,name:bs(e,n),label:c,value:a[n],wrong:[...I(s,bs(e,n)),...I(s,Ze(e,n))],change:u=>o(ep(t,e,
n,u))})}
      ${l.kind==="bend"?A({next:!0,name:Va(e,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:I(s,
Va(e,n)),change:u=>o(ys(t,e,n,{angle:u}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?A({next:!0,name:h,label:"Clear gap inside",value:l.gap,wrong:I(s,h),change:u=>o(ys(t,
e,n,{gap:u}))}):d}
    ${K({name:`${Ze(e,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:r_,change:u=>o(ys(t,e,n,{direction:u==="down"?"down":"up"}))})}
    ${h_(t,e,n,s,o)}`}function h_(t,e,n,s,o){let{flats:a,bends:r}=t.sides[e],l=`${Ze(e,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?d:i`<details class="bend-more">
    <summary>
      <span class="unseen">${Ap(ws(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":d}
    </summary>
    ${r[n].kind==="bend"?A({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:I(s,l),change:h=>o(ys(t,e,n,{radius:h}))}):d}
    ${c?z({name:`${Ze(e,n)}.kind`,label:"Kind",value:r[n].kind,options:ja,change:h=>o(ys(t,e,n,{kind:h}))}):d}
  </details>`}function u_(t){let e=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of t.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[h,u]=n[n.length-1];n.push(
[h+e[o]*Math.cos(s),u-e[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>x`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function p_({box:t,unit:e},n,s){return i`<div class="corner-grid">
      ${f_(t)}
      <div>
        ${K({name:"box.corner",label:"Walls at the corner",value:t.corner,options:a_,change:o=>s({...t,corner:o===
"open"?"open":"closed"})})}
        ${K({name:"box.relief",label:"Relief",value:t.relief,options:o_,change:o=>s({...t,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${t.relief==="none"?d:A({next:!0,name:"box.relief_mm",label:t.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:e,hint:"Empty: by radius and thickness.",value:t.reliefSize,wrong:I(n,"box.relief_mm"),change:o=>s(
{...t,reliefSize:o})})}
      ${t.corner==="open"?d:A({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:e,hint:"Empty: by \
thickness.",value:t.gap,wrong:I(n,"box.gap_mm"),change:o=>s({...t,gap:o})})}
    </div>`}function f_({corner:t,relief:e}){let[n,s]=t==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${m_[e]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var s_,o_,a_,Tp,r_,Ap,m_,Op=$(()=>{_();po();In();Qe();J();se();s_=[["tray","Tray","M10 14V44H86V14"],
["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channel","Two s\
ides","M10 14V44H86V14M18 36H30M66 36H78"]],o_=[["round","Round"],["square","Square"],["none","None"]],a_=[["c\
losed","Closed"],["open","Open"]],Tp=[["left-right","Left and right"],["front-back","Front and back"]],r_=[["u\
p","↑ in"],["down","↓ out"]];Ap=t=>t[0].toUpperCase()+t.slice(1);m_={none:"L50 40L30 40",square:"L58 20L58\
 48L30 48",round:"L50 31A9 9 0 1 1 41 40L30 40"}});function Ml(t,e){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${Ep[t.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(Ep).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${vt(t.dimension===n)}
              @change=${()=>e({...t,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?x`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:g_(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function g_(t){return t==="din6935"?x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function Lp(t,e,n){let s=(o,a)=>n({...t,holes:t.holes.with(o,{...t.holes[o],...a})});return i`<details class="holes">
    <summary>Holes near a bend${t.holes.length?`: ${t.holes.length}`:""}</summary>
    <p class="hint">Only those that could be pulled out of shape.</p>
    ${t.holes.map((o,a)=>{let r=`holes.${a}`;return i`<fieldset class="hole">
        <legend>Hole ${a+1}</legend>
        <div class="fields">
          ${A({next:!0,name:`${r}.flat`,label:"On flat",keys:"numeric",value:o.flat,wrong:I(e,`${r}.flat`),change:l=>s(
a,{flat:l})})}
          ${A({next:!0,name:`${r}.position_mm`,label:"Middle from its left end",unit:t.unit,value:o.position,wrong:I(
e,`${r}.position_mm`),change:l=>s(a,{position:l})})}
          ${A({next:!0,name:`${r}.diameter_mm`,label:"Size across",unit:t.unit,value:o.diameter,wrong:I(e,`${r}\
.diameter_mm`),change:l=>s(a,{diameter:l})})}
        </div>
        <button
          type="button"
          class="button"
          data-test="remove-hole-${a+1}"
          @click=${()=>n({...t,holes:t.holes.toSpliced(a,1)},{undo:`Hole ${a+1} is out.`})}>
          Remove hole ${a+1}
        </button>
      </fieldset>`})}
    <button
      type="button"
      class="button"
      data-test="add-hole"
      @click=${()=>n({...t,holes:[...t.holes,{flat:"",position:"",diameter:""}]},{focus:`holes.${t.holes.length}\
.flat`})}>
      + Hole
    </button>
  </details>`}function Al(t,e,n,s){let o=t.box?Rn(t.box):[],a=t.order??e??t.bends.map((l,c)=>c+1),r=(l,c)=>s({
...t,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${t.order?`${t.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${A({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:t.order?.
join(", ")??"",wrong:I(n,"order"),on:"change",change:l=>s({...t,order:Xa(l)})})}
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
    ${t.order?i`<button
            type="button"
            class="button"
            data-test="free-order"
            @click=${()=>s({...t,order:null})}>
            Let the planner choose
          </button>`:d}
  </details>`}function Np(t,e,n){return z({name:"grain",label:"Rolling direction against the bend lines",value:t.
grain,wrong:I(e,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...t,grain:s})})}var Ep,Cp=$(()=>{_();Pe();In();Qe();J();se();Ep={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:x`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:x`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:x`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var Bp,Pp=$(()=>{_();si();oi();Bp=Ho(class extends Kn{constructor(){super(...arguments),this.key=d}render(t,e){
return this.key=t,e}update(t,[e,n]){return e!==this.key&&(Uo(t),this.key=e),n}})});function Rp(t,e,n){let s=t.bends.length>=yl;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(kl(t,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${t.flats.map((o,a)=>i`${b_(t,a,e,n)}${a<t.bends.length?w_(t,a,e,n):d}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(kl(t,"right"),{focus:`flats_mm.${t.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${yl} bends.</p>`:d}`}function b_(t,e,n,s){let o=`flats_mm.${e}`;
return i`<li class="flat-row">
    ${A({next:!0,name:o,label:`Flat ${e+1}`,value:t.flats[e],wrong:I(n,o),change:a=>s(cp(t,e,a))})}
  </li>`}function w_(t,e,n,s){let o=t.bends[e],a=`bends.${e}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([h])=>h===a||h===`${a}.kind`||h===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${e+1}>
    <span class="badge-mark" aria-hidden="true">${e+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:A({next:!0,name:l,label:`\
Bend ${e+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:I(n,l),change:h=>s(Wn(t,e,{angle:h}))})}
      ${K({name:`${a}.direction`,label:`Bend ${e+1} turns`,value:o.direction,options:$_,change:h=>s(Wn(t,e,{direction:h===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(h=>i`<p class="wrong" data-test="wrong-${a}">${h}</p>`)}
    ${o.kind==="open_hem"?y_(t,e,n,s):d}
    ${Bp(e,__(t,e,n,s))}
  </li>`}function y_(t,e,n,s){let o=`bends.${e}.hem_gap_mm`;return A({next:!0,name:o,label:"Clear gap inside",
unit:t.unit,value:t.bends[e].gap,wrong:I(n,o),change:a=>s(Wn(t,e,{gap:a}))})}function __(t,e,n,s){let o=t.bends[e],
a=`bends.${e}.inside_radius_mm`;return i`<details class="bend-more">
    <summary>
      <span class="unseen">Bend ${e+1}: </span>${o.radius?`Radius ${o.radius}`:"Radius"},
      ${An(o)||"tools"}, kind, remove
    </summary>
    ${o.kind==="bend"?A({next:!0,name:a,label:"Inside radius wanted",unit:t.unit,hint:"Empty: what the tools g\
ive.",value:o.radius,wrong:I(n,a),change:r=>s(Wn(t,e,{radius:r}))}):d}
    ${ji(`bends.${e}`,o,n,r=>s(Wn(t,e,r)))}
    ${up(t,e)||o.kind!=="bend"?z({name:`bends.${e}.kind`,label:"Kind",value:o.kind,options:ja,change:r=>s(Wn(t,
e,{kind:r}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
    <button
      type="button"
      class="button wide"
      data-test="remove-bend-${e+1}"
      ?disabled=${t.bends.length<2}
      @click=${()=>s(dp(t,e),{focus:`flats_mm.${e}`,undo:`Bend ${e+1} and flat ${e+2} are out.`})}>
      Remove bend ${e+1} and flat ${e+2}
    </button>
  </details>`}var $_,Ip=$(()=>{_();Pp();po();Qe();J();ls();On();se();$_=[["up","↑ up"],["down","↓ down"]]});function Dp(t,e,n){let s=t.wishes??mo(),o=c=>n({...t,wishes:{...s,...c}}),a=t.box?Rn(t.box).map((c,h)=>[String(
h+1),`Bend ${h+1}: ${c}`]):t.bends.map((c,h)=>[String(h+1),`Bend ${h+1}`]),r=t.box?Ju(t.box).map(c=>c[0].toUpperCase()+
c.slice(1)):t.flats.map((c,h)=>`Flat ${h+1}`),l=za(s);return i`<details class="wishes" data-test="wishes">
    <summary>
      <span>Order, what it must keep to: <b>${l||"nothing special"}</b></span>
    </summary>
    <div class="fields">
      ${z({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:I(e,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${z({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:I(e,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${Qa("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${Qa("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${Qa("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,h)=>Qa(`wishes.flat-${h+1}`,c,s.critical_flats.includes(h+1),u=>o({critical_flats:v_(s.critical_flats,
h+1,u)})))}
      </div>
      ${I(e,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${A({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:t.unit,hint:"Emp\
ty: the usual.",placeholder:q(gl),value:s.margin,wrong:I(e,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function Qa(t,e,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${t}
      data-test=${t}
      .checked=${vt(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${e}</span
    ></label
  >`}var Ol,Wp,v_,Fp=$(()=>{_();Pe();In();O();Ka();J();se();Ol=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],Wp={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};v_=(t,e,n)=>[...t.filter(s=>s!==e),...n?[e]:[]].sort((s,o)=>s-o)});function Hp(t,{metals:e,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...e.some(({code:u})=>u===t.metal)?
[]:[[t.metal,t.metal?`${t.metal} (not in the shop)`:"Choose"]],...e.map(({code:u,name:p})=>[u,p])],{box:h}=t;return i`${K(
{name:"shape",label:"What it is",value:h?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:u=>r(Ya(t,u==="box"))})}
    ${A({next:!0,name:"title",label:"Name of the part",value:t.title,wrong:I(a,"title"),change:u=>r({...t,title:u})})}
    ${z({name:"metal",label:"Metal",value:t.metal,options:c,wrong:I(a,"metal"),change:u=>r({...t,metal:u})})}
    <div class="fields">
      ${A({next:!0,name:"thickness_mm",label:"Thickness",unit:t.unit,placeholder:"3 or 16 ga",hint:s?k_(s,t.thickness):
"",value:t.thickness,wrong:I(a,"thickness_mm"),change:u=>r({...t,thickness:u})})}
      ${h?d:A({next:!0,name:"bend_length_mm",label:"Bend length",unit:t.unit,value:t.length,wrong:I(a,"bend_le\
ngth_mm"),change:u=>r({...t,length:u})})}
    </div>
    ${h?i`${Mp({...t,box:h},a,r)}
            <h2>More, if it matters</h2>
            ${Ml(t,r)}
            ${s||t.order?Al(t,s?.order?.sequence,a,r):d}`:i`<h2>Section, left to right <small>${t.unit}</small></h2>
            ${Ml(t,r)} ${Rp(t,a,r)}
            <h2>More, if it matters</h2>
            ${Np(t,a,r)} ${Lp(t,a,r)}
            ${Al(t,s?.order?.sequence,a,r)}`}
    ${Dp(t,a,r)} ${yh(t,n,a,r)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${vt(t.note)}
        @input=${u=>r({...t,note:u.target.value})}></textarea>
    </div>
    ${o?A({next:!0,name:"reason",label:"Why this change, for the history",value:t.reason??"",wrong:I(a,"reason"),
change:u=>r({...t,reason:u})}):d}`}function k_({part:t,thickness_gauge:e},n){return[/^[\d.,\s]+$/.test(n)?"":f(
y(t.thickness_mm,{digits:2})),e??""].filter(Boolean).join(", ")}function El(t){return t.box?["title","metal","\
thickness_mm",...$s(t.box).map(([e])=>e),"box.relief_mm","box.gap_mm","order",...Ol,...Fi,"note","reason"]:["t\
itle","metal","thickness_mm","bend_length_mm",...t.flats.map((e,n)=>`flats_mm.${n}`),...t.bends.flatMap((e,n)=>[
`bends.${n}.included_angle_deg`,`bends.${n}.inside_radius_mm`,...e.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:
[],`bends.${n}.die`,`bends.${n}.punch`]),...t.holes.flatMap((e,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,
`holes.${n}.diameter_mm`]),"grain","order",...Ol,...Fi,"note","reason"]}function tr(t){if(t.startsWith("box"))
return tp(t);let[e,n,s]=t.split(".");return e==="tools"?n==="die"?"Die":"Punch":e==="wishes"?Wp[n]??"Order":n===
void 0?jp[e]??e:`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[e]??e} ${Number(n)+1}${s?`, ${jp[s]??s}`:""}`}function Up(t){
let e=t.target;if(t.key!=="Enter"||!(e instanceof HTMLInputElement))return;t.preventDefault();let n=[...e.form.
querySelectorAll("input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(e)+1).find(o=>o.checkVisibility());
s instanceof HTMLElement&&s.focus()}var jp,Ll=$(()=>{_();Pe();O();Qe();In();Op();J();Cp();On();Ip();Fp();se();
jp={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend length",grain:"Rolling direction",
order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"gap",flat:"flat",position_mm:"\
place",diameter_mm:"size",die:"die",punch:"punch"}});function Gp({dimensions:t=[]}){let e=t.filter(({error_mm:s})=>s!==null);if(!e.length)return d;let n=e[0].basis;
return i`<h3>How close the flats come out</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${e.map(S_)}
    </ul>
    ${n?i`<p class="hint" data-test="sizes-basis">${n}</p>`:d}`}function S_({flat:t,flat_name:e=`flat ${t}`,wanted_mm:n,
error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${t}>
    <b>${e[0].toUpperCase()}${e.slice(1)}</b> ${f(y(n))}
    <b>± ${f(x_(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:d}.
  </li>`}var x_,Vp=$(()=>{_();O();x_=t=>P()==="in"?{text:nt(t/de,3),unit:"in"}:y(t,{digits:2})});function er(t,e){if(!Dn(t))return d;let{order:n}=t,[s,o]=T_(t),a=!!t.part?.order?.length,r=a?e.free():d,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${k(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${qp(n.sequence)}
          </p>`:d}
    ${M_(n.blocked??[])} ${A_(n.remedies??[])} ${O_(n.wishes)}
    ${r===d?d:i`<div class="buttons">${r}</div>`}
    ${E_(n.alternatives,e)} ${Su(t)} ${Gp(t)}
  </div>`}function T_({order:t,checks:e}){let n=s=>e.some(o=>o.code===s);return t.proven?["ok","Proven"]:n("no\
-order")?["stop","No order"]:e.some(({level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the way"]:
n("order-not-found")?["caution","None found"]:n("clearance-not-checked")?["caution","Not checked"]:["caution",
"Not proven"]}function qp(t){return i`<span class="run" role="img" aria-label="bends ${t.join(", ")}"
    >${t.map(e=>i`<span class="badge-mark" aria-hidden="true">${e}</span>`)}</span
  >`}function M_(t){return t.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${t.map(({bend:e,words:n})=>i`<li><b>Bend ${e}</b> ${n}</li>`)}
    </ul>`:d}function A_(t){return t.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${t.map(({template:e,numbers:n})=>i`<li>${bn(e,n)}</li>`)}
    </ul>`:d}function O_(t){return t.length?i`<h3>What each wish costs</h3>
    <ul class="order-list" data-test="wish-costs">
      ${t.map(({wish:e,words:n})=>i`<li data-wish=${e}>${n}</li>`)}
    </ul>`:d}function E_(t,{use:e}){return t.length?i`<h3>Other orders that can be made</h3>
    <ul class="order-others" data-test="other-orders">
      ${t.map(({sequence:n,words:s})=>i`<li>${qp(n)} <span class="compared">${s}</span> ${e(n)}</li>`)}
    </ul>`:d}var Dn,zp,Kp,nr=$(()=>{_();V();rt();Vp();Pa();Dn=({order:t})=>Array.isArray(t?.wishes)&&Array.isArray(
t?.alternatives);zp=t=>({use:e=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${e.join(", ")}"
      @click=${()=>t(e)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>t(
null)}>
      Let it choose
    </button>`}),Kp=t=>({use:e=>R("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${e.join(", ")}"
        href="/part?from=${t}&order=${e.join("-")}"
        >Use this order</a
      >`),free:()=>R("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${t}&order=free"
        >Let it choose</a
      >`)})});function Yp(t,{save:e,order:n}){return i`${rs(t.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>
          ${Ea(t.blank)}${vs(t.blank,{pixels:innerWidth<1e3?innerWidth-24:560})}
        </div>
        <div>
          ${_u(t.blank)} ${L_(t.blank.bend_lines)}
          <div class="buttons">
            <button type="button" class="button" data-test="blank-svg" @click=${()=>e("svg")}>
              Drawing as SVG
            </button>
            <button type="button" class="button" data-test="blank-dxf" @click=${()=>e("dxf")}>
              Drawing as DXF
            </button>
          </div>
        </div>
      </div>
    </section>
    ${Dn(t)?i`<section>
            <h2>Order</h2>
            ${er(t,n)}
          </section>`:d}
    <section>
      <h2>Fetch</h2>
      ${gs(t.tools,t.steps.length,t.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${t.order&&!Dn(t)?i`<p data-test="order-words">${t.order.words}</p>`:d}
      ${La(t)}
      <div class="step-drawings">
        ${t.steps.map(s=>N_(s,t.part.thickness_mm))}
      </div>
    </section>
    ${is(t.checks)} ${ze(t.checks)}`}function L_(t){let e=t.filter(n=>n.opinions?.length);return e.length===0?
d:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${e.length===1?`bend ${e[0].bend}`:`${e.length} bends`}
    </summary>
    ${e.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${f(y(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function N_(t,e){if(!t.drawing)return d;let n=y(t.gauge_x_mm,{digits:2}),s=$a(t,{set_angle_deg:t.
set_angle_deg,firstHit:t.first_hit??null}),o=f(S(s)),a={close:!1,opening:t.v_opening_mm??8*e,gauge:n.text,angle:s,
near:Bn(t)?.near??null};return i`<figure class="step-drawing" data-step=${t.number}>
    <figcaption>
      <b>${t.number}. ${ge(t)}</b> ${rl(t)} ${cs(t)}
      <small data-test="origins">${lo(t.origin)}</small>
      ${t.motion?i`<span class="near-words ${t.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${fs(t)}</span
            >`:d}
    </figcaption>
    <div class="poses">
      ${me(t.drawing,{...a,pose:"before",words:`Step ${t.number} before the bend: the sheet on the die, gauge \
at ${f(n)}.`})}
      ${C_(t,a)}
      ${me(t.drawing,{...a,pose:"after",words:`Step ${t.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function C_(t,e){let n=Bn(t);return n?me(t.drawing,{...e,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${t.number}. ${fs(t)}`}):d}var Jp=$(()=>{_();tn();oo();O();Tn();ao();nr();On();ya();Ae();Je()});function Xp({plan:t,error:e,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${t&&o?"stale":""} ${a===d?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${t?.section?Jt(t,r?{pixels:innerWidth-56,tallest:215}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
d}
    ${a===d?i`<p class="picture-words" role="status" data-test="picture-words">
            ${P_(t,e,n,s)}
          </p>`:r?a:d}
  </div>`}function B_(t){let[e]=Object.entries(t.errors);return e?Di(tr(e[0]),e[1]):t.message}function P_(t,e,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,r])=>r).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(e instanceof F)return"The shop's server does not answer. What you type stays on this device.";if(e instanceof
M)return`Not right yet. ${B_(e)}`;if(e)return String(e);if(!t)return n?"Working it out…":"";let o=t.blank.outline?
`Blank ${y(t.blank.length_mm,{digits:2}).text} × ${f(y(t.blank.width_mm,{digits:2}))}`:`Blank ${f(y(t.blank.length_mm,
{digits:2}))}`;return i`${o} ${t.worst==="ok"?d:k(t.worst)}`}var Zp=$(()=>{_();tn();U();O();V();Ll();se()});function I_({seconds:t,deadline_s:e,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
    <h2><span role="status">Looking for the order…</span></h2>
    <progress max=${e} value=${Math.min(t,e)} aria-label="Time used">
      ${Math.round(t)} s
    </progress>
    <dl>
      <div>
        <dt>Time, at most about ${Math.round(e)} s</dt>
        <dd>
          <b data-test="looking-seconds">${Math.floor(t)} s</b
          >${t<e?d:", ending"}
        </dd>
      </div>
      <div>
        <dt>Steps looked at</dt>
        <dd><b data-test="looking-at">${n.toLocaleString("en-GB")}</b></dd>
      </div>
      <div class="best">
        <dt>Best so far</dt>
        <dd data-test="looking-best">${s?i`<b>${D_(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function D_(t){return W_.filter(([n])=>t[n]).map(([n,s,o])=>`${t[n]} ${t[n]===1?s:o}`).join(", ")||
"no turning"}function tm({plan:t,progress:e,stopped:n},{cancel:s,again:o,back:a}){return e?I_(e,s):n?F_({again:o,
back:t?a:null}):d}function F_({again:t,back:e}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
    <p role="status">
      <b>Cancelled: no plan for what is typed now.</b>
      ${e?"Below stands the plan from before your last change.":d}
    </p>
    <div class="buttons">
      <button type="button" class="button next" data-test="look-again" @click=${t}>Look again</button>
      ${e?i`<button type="button" class="button" data-test="part-before" @click=${e}>
              Back to the part before
            </button>`:d}
    </div>
  </section>`}var R_,Qp,W_,j_,H_,em,nm=$(()=>{_();R_=.6,Qp=({seconds:t})=>t>=R_;W_=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];j_="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",H_="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",em=t=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${t?H_:j_}
  </div>`});var om={};tt(om,{show:()=>U_});async function U_(t){let e=qs(t.query.get("from")??"").slice(0,7),n=e?"cards.re\
vise":"cards.create";t.title(e?`Edit ${W(e)}`:"New part"),t.render(Tt(e?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([lt("metals",t.signal),lt("dies",t.signal),
lt("punches",t.signal)]),r=await G_(e,s,t.signal);!e&&t.query.get("shape")==="box"&&(r.form=Ya(r.form,!0));let l={
...r,plan:null,planned:null,progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,
kept:!0},c=xe(async(D,ot)=>(await cc("/plan",_s(D),{signal:ot,tell:h})).plan,({question:D,answer:ot,error:ae=null})=>{
ot&&Object.assign(l,{plan:ot,planned:D}),Object.assign(l,{error:ae,busy:!1,progress:null,summary:l.summary&&ae!==
null}),ct()},t.signal,350);function h(D){Qp(D)&&(l.progress=D,ct())}function u(D=!1){let ot=vl(l.form);if(!D&&
ot===l.key&&!l.error)return ct();Object.assign(l,{key:ot,busy:Ja(l.form).length===0,progress:null,stopped:!1}),
l.busy?c.ask(l.form,{now:D}):(c.stop(),l.error=null),ct()}let p={cancel(){c.stop(),Object.assign(l,{busy:!1,progress:null,
stopped:!0,error:null}),ct()},again:()=>u(!0),back(){if(!l.planned)return;let D=l.form;Object.assign(l,{form:l.
planned,key:vl(l.planned),stopped:!1}),l.kept=ul(e,{form:l.form,base:l.base,newCode:l.newCode}),ct(),Z("The pa\
rt of this plan is in the boxes again.",{label:"Put mine back",act:()=>m(D)})}};function m(D,{focus:ot,undo:ae}={}){
let be=l.form;l.form=D,l.kept=ul(e,{form:D,base:l.base,newCode:l.newCode}),u(),ot&&requestAnimationFrame(()=>io(
ot)),ae&&Z(ae,{label:"Put it back",act:()=>m(be)})}function g(D){m({...l.form,order:D},{undo:D?`Order ${D.join(
", ")} is yours now.`:"The planner chooses the order."})}function b(D){history.replaceState(history.state,"",e?
`/part?from=${e}`:"/part"),g(Xa(D))}async function w(D){let[ot]=Ja(l.form);if(ot){l.summary=!0,ct(),io(ot[0]);
return}Object.assign(l,{saving:!0,clash:null,taken:""}),ct();try{let Gt=await D();if("saved"in Gt)return L(Gt.
saved);"stale"in Gt?l.clash=Gt.stale:l.taken=Gt.taken}catch(Gt){l.error=Gt,l.summary=!0}l.saving=!1,ct();let ae=l.
error instanceof M?l.error.errors:{},be=El(l.form).find(Gt=>Object.keys(ae).some(nc=>nc===Gt||nc.startsWith(`${Gt}\
.`)));be&&io(be)}function L(D){pl(e);let ot=D.revision===l.base?.revision;Z(ot?"Nothing was changed, so nothin\
g was saved.":`Card ${W(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),pt(`/c/${D.code}`)}let B=()=>ht(
n)&&w(()=>l.base?fp(l.form,l.base):xl(l.form,l.newCode)),N=()=>(l.newCode=ni(),w(()=>xl(l.form,l.newCode)));function v(){
pl(e);let D=l.form;Object.assign(l,{restored:!1,plan:null,planned:null,clash:null,...sm(l.card,s)}),u(!0),Z(e?
"The card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>m(D)})}function E(D){let ot=l.form;
Object.assign(l,{clash:null,base:Nl(D)}),m(fo(D.part,D.note)),Z("What is saved is in the boxes now.",{label:"P\
ut mine back",act:()=>m(ot)})}async function X(D){try{await dc(`/blank.${D}`,_s(l.form),`${l.form.title.trim()||
"blank"}.${D}`)}catch(ot){Z(ot instanceof Error?ot.message:String(ot))}}function ct(){let D=l.error instanceof
M?l.error.errors:{},ot=Ja(l.form),ae=tm(l,p),be=!l.busy&&!l.stopped&&!ot.length&&!l.error;t.render(i`<h1>
          ${e?i`${R(n,"Edit","Plan")} ${l.card?.title||"card"}
                  <small class="code">${W(e)}</small>`:R(n,"New part","Plan a part")}
        </h1>
        ${l.restored?i`<p class="restored" data-test="restored">
                What you typed before is back.
                <button type="button" class="link" data-test="start-over" @click=${v}>
                  ${e?"Back to the saved card":"Start an empty part"}
                </button>
              </p>`:d}
        ${l.kept?d:i`<p class="panel">
                This browser keeps nothing on this device: a reload loses what you type.
              </p>`}
        ${l.clash?xp(l.clash,l.form,{saveMine:()=>{l.base=Nl(l.clash),B()},takeTheirs:()=>E(l.clash),saveAsNew:N}):
d}
        ${l.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${l.taken}">card ${W(l.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${N}>
                  Save this as another card
                </button>
              </div>`:d}
        ${l.summary?bh(D,tr,El(l.form)):d}
        ${l.summary&&l.error instanceof F?i`<p class="panel" role="alert" data-test="not-saved">
                Not saved: the shop's server does not answer. What you typed stays on this device. Save again
                when it is back.
              </p>`:d}
        <div
          class="part-desk"
          data-test="part"
          data-busy=${String(l.busy)}
          aria-busy=${l.busy?"true":"false"}>
          <div class="part-edit">
            ${Xp(l,{open:ot,stale:!be,waiting:ae})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${Up}
              @submit=${Gt=>{Gt.preventDefault(),B()}}>
              ${Hp(l.form,{metals:s,crib:{dies:o,punches:a},plan:be?l.plan:null,editing:!!e,errors:D,change:m})}
              ${R(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${l.saving}>
                    ${l.saving?"Saving…":e?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?d:ae}
            <div class="part-plan ${be||!l.plan?"":"stale"}" data-test="plan">
              ${l.plan&&!be&&!l.busy?i`<p class="stale-note">
                      ${l.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:d}
              ${l.plan?Yp(l.plan,{save:X,order:zp(g)}):em(!!l.form.box)}
            </div>
          </div>
        </div>`),l.busy||t.ready()}u(!0);let ko=t.query.get("order");ko&&b(ko)}function sm(t,e){return t?{form:fo(
t.part,t.note),base:Nl(t)}:{form:_l(e[0]?.code??""),base:null}}async function G_(t,e,n){let s=Hu(t),o=null;try{
t&&(o=await ye(t,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.newCode,card:o,restored:!0}:
{...sm(o,e),newCode:ni(),card:o,restored:!1}}var Nl,am=$(()=>{_();U();kt();dt();_t();no();oe();Uu();Qe();bp();
Et();Bt();dt();rt();Sp();Ll();nr();Jp();Zp();nm();Ct();se();Nl=t=>({code:t.code,etag:t.etag,revision:t.revision,
revision_id:t.revision_id})});async function rm(t,e){if(!navigator.mediaDevices?.getUserMedia)throw new Fn(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(V_)}catch(o){throw new Fn(q_[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return t.aborted&&s(),t.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",e),n}function im(t){return!!t.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function lm(t,e){await t.
getVideoTracks()[0].applyConstraints({advanced:[{torch:e}]})}var Fn,V_,q_,cm=$(()=>{Fn=class extends Error{constructor(e){
super(e),this.fault=e}},V_={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
q_={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function um(){return sr??=K_(),sr.catch(()=>sr=void 0),sr}async function K_(){let t=await Y_(),e=t??await dm(),
n={own:!!t,async read(s){try{return await e.detect(s)}catch(o){if(e!==t)throw new Ss(String(o));return e=await dm(),
n.read(s)}}};return n}async function Y_(){let t=globalThis.BarcodeDetector;return(await t?.getSupportedFormats().
catch(()=>[]))?.includes("qr_code")?new t(hm):null}async function dm(){try{let{BarcodeDetector:t,prepareZXingModule:e}=await import("/vendor/barcode-detector/ponyfill.js");
return await e({overrides:{locateFile:()=>z_},fireImmediately:!0}),new t(hm)}catch(t){throw new Ss(String(t))}}
var Ss,z_,hm,sr,pm=$(()=>{Ss=class extends Error{},z_="/vendor/zxing-wasm/zxing_reader.wasm",hm={formats:["qr_\
code"]}});function fm(t){let e=Z_(t.trim()),n=e?J_.exec(e.pathname)?.[1]:X_.exec(t.trim())?.[0];if(!n)return{kind:"other",
code:"",words:tv(t,e)};let{code:s,whole:o,fault:a}=ut(Q_(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${Cl(W(s))} is\
 no card’s code. ${r}`}}function Z_(t){if(!URL.canParse(t))return null;let e=new URL(t);return/^https?:$/.test(
e.protocol)?e:null}function Q_(t){try{return decodeURIComponent(t)}catch{return t}}function tv(t,e){return e?`\
It leads to ${Cl(e.host)}, not to a card.`:t.trim()?`It holds “${Cl(t.trim())}”, no card’s code.`:"It ho\
lds nothing that can be read."}var J_,X_,mm,Cl,gm=$(()=>{dt();J_=/^\/c\/([^/]+)\/?$/i,X_=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
mm=40;Cl=t=>t.length>mm?`${t.slice(0,mm)}…`:t});async function wm(t,e,n,s){for(;!s.aborted;){if(t.readyState>=t.HAVE_CURRENT_DATA){let o=await e.read(t);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,ev))}}function ym(t,e,n){let o=t.filter(l=>bm(l,e,e)).map(l=>({...fm(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if($m(a))return a[0];let r=a.
filter(l=>bm(l.mark,e,n));return r.length>0&&$m(r)?r[0]:"several"}function bm({boundingBox:t},e,n){let s=e.getBoundingClientRect(),
o=Math.max(s.width/e.videoWidth,s.height/e.videoHeight),a=s.x+s.width/2+(t.x+t.width/2-e.videoWidth/2)*o,r=s.y+
s.height/2+(t.y+t.height/2-e.videoHeight/2)*o,{left:l,right:c,top:h,bottom:u}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=h&&r<=u}var ev,$m,_m=$(()=>{gm();ev=60;$m=t=>t.every(e=>e.code===t[0].code)});function vm(t,e){let{title:n,words:s,again:o}=nv[t];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${t}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${e}>Try again</button>`:d}
  </section>`}var Bl,nv,km=$(()=>{_();Bl=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,nv={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${Bl}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${Bl}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${Bl}`,again:!0}}});var Sm={};tt(Sm,{show:()=>rv});async function rv(t){t.title("Scan a label");let e={fault:null,stream:null,lamp:null,
says:xm},n=ea(),s=await Le().catch(()=>[]),o=new AbortController,a=()=>t.render(dv(e,{again:h,lamp:u},()=>na(n,
s,a,"Seven characters, capitals or not."))),r=p=>{Object.assign(e,p),a()},l=()=>{o.abort(),Object.assign(e,{stream:null,
lamp:null})},c=p=>{l(),p instanceof Fn?r({fault:p.fault}):p instanceof Ss?r({fault:"no-decoder"}):t.render(je(
p)),t.ready()};async function h(){l();let{signal:p}=o=new AbortController;r({fault:null,says:xm});try{let[m,g]=await Promise.
all([rm(p,()=>c(new Fn("busy"))),um()]);if(p.aborted)return;r({stream:m,lamp:im(m)?!1:null,says:sv});let b=document.
querySelector(".scan-view video"),w=document.querySelector(".scan-frame");b.play().catch(()=>{}),t.ready();let L=iv(
B=>r({says:B}),p);await wm(b,g,B=>L(ym(B,b,w)),p)}catch(m){p.aborted||c(m)}}async function u(){if(!e.stream)return;
let p=!e.lamp;await lm(e.stream,p).then(()=>r({lamp:p}),()=>r({lamp:null}))}t.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():h(),{signal:t.signal}),h()}function iv(t,e){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>av&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?t(ov):a.kind==="card"?await cv(a.code,t,e):t(lv(a)),s=performance.
now())}}function lv({kind:t,words:e}){return{kind:"wrong",title:t==="slip"?"Not a right code":"Not a card’s la\
bel",words:`${e} Still looking.`}}async function cv(t,e,n){let s=W(t);e({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await Sd(t,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?pt(`/c/${t}`,{replace:!0}):e(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is a right one, but this shop has no such card: it is another shop’s la\
bel. Still looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server d\
oes not answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wron\
g",title:`${s} could not be opened`,words:o}))}function dv({fault:t,stream:e,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${t??
s.kind}>
    <h1>Scan a label</h1>
    ${t?vm(t,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${e} aria-label="What the camera sees"></video>
            ${hv}
          </div>`}
    <div class="scan-beside">
      <p class="scan-says" data-kind=${t?"fault":s.kind} role="status" data-test="says">
        ${t?d:i`<b>${s.title}</b> <span>${s.words}</span>`}
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
  </div>`}var xm,sv,ov,av,hv,Tm=$(()=>{_();cm();kt();dt();pm();_m();Bt();$t();$i();km();Ct();xm={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},sv={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},ov={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},av=2500;hv=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function Mm(t,e,n){Em(t,e,n),Yh(t),mt?.link.move({code:e,step:n},{whatever:!0})}function or(){mt?.end.abort(),
mt=null,ar(),$o()}function Am(t,e){!mt||mt.at.code!==t||mt.at.step===e||(mt.at.step=e,ar(),mt.link.move({code:t,
step:e}),$o())}function Om(t){mt&&(mt.at.step=t,mt.link.move({code:mt.at.code,step:t},{whatever:!0}))}function rr(t,e){
document.addEventListener("bench",()=>t(bo()),{signal:e})}function Em(t,e,n,s=null){mt?.end.abort();let o=new AbortController,
a={name:t,code:e,step:n,answers:null,late:!1,refused:""},r=xa(t,s,{keepMs:uv,heard:l=>{if(l.code!==a.code)return or();
a.step=l.step,ar(),$o()},changed:({gone:l,answers:c,late:h,refused:u})=>{if(l)return or();Object.assign(a,{answers:c,
late:h,refused:u}),$o()}},o.signal);mt={at:a,link:r,end:o},ar(),$o()}function ar(){try{mt?sessionStorage.setItem(
Pl,JSON.stringify({name:mt.at.name,code:mt.at.code,step:mt.at.step})):sessionStorage.removeItem(Pl)}catch{}}function ir(){
if(!mt)try{let{name:t,code:e,step:n}=JSON.parse(sessionStorage.getItem(Pl)??"{}");t&&e&&Em(t,e,n)}catch{}}var Pl,
uv,mt,bo,$o,lr=$(()=>{Ji();Ye();Pl="flangebook.on-bench",uv=5e3,mt=null,bo=()=>mt?{...mt.at}:null;$o=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Mt(t){let{fault:e}=ut(t);return i`<div class="state" data-test="bad-code">
    <h1>${W(t)} is not a card</h1>
    ${e||"A card code has seven characters, digits and letters without I, L, O and U."} ${Rl}
  </div>`}function At(t,e){if(e instanceof F)return i`<div class="state" data-test="not-kept">
      <h1>${W(t)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${Rl}
    </div>`;if(e instanceof M&&e.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${W(t)}</h1>
      The code is a right one, but this shop has no card of that number. Look at the label again. ${Rl}
    </div>`;throw e}var Rl,Oe=$(()=>{_();U();dt();Rl=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function Nm(t,{busy:e,fault:n,take:s,settings:o}){return t?.differs?i`<details class="freshness panel" data-test="fresh">
    <summary>
      <span><b>${t.words}</b> The card stays as it is. Show the difference</span>
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
          ${t.differences.map(a=>i`<tr>
                <th scope="row">${a.where}</th>
                <td>${a.what}</td>
                <td>${Lm(a,"saved")}</td>
                <td>${Lm(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&ht("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
d}
    <p class="wrong" role="alert">${n}</p>
    ${R("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${e} @click=${s}>
        ${e?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:d}function Lm(t,e){let n=e==="saved"?t.saved_value:t.fresh_value;return t.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(t.field)&&typeof n=="number"?f(gn(t.field??"",n)):t[e]}var Cm=$(()=>{_();Et();O();rt()});function wo(t){return t.refused?t.missing?"The shop was put back and does not know its card":`Refused: ${t.refused}`:
t.parked?"Saved here. The card was changed meanwhile: to settle":"Saved here, not yet in the shop. Waiting to \
be sent"}function Bm(t){let e=t.here??[],n=t.proposals??[];if(!e.length&&!n.length)return d;let s=e.filter(o=>o.
refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-settle" data-test="to-settle">
            <p>${k("caution","To settle")} This card was changed in two places at once. Both are kept.</p>
            ${R("cards.revise",i`<a class="button next" href="/c/${t.code}/settle" data-test="settle"
                >Settle ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner settles which holds.</p>`)}
          </div>`:d}
    ${e.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${e.length===1?"One change of this card waits":`${e.length} changes of this card wait`}
            ${n.length?"until the other one is settled.":"and goes out by itself."}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:d}
          </p>`:d}
  </section>`}function cr(t){return t==="shop"?"Saved in the shop.":t==="here"?"Saved here, not yet in the sho\
p. It goes out by itself.":t==="settle"?`The card was changed meanwhile. Both are kept: ${ht("cards.revise")?"\
settle which holds.":"the owner settles which holds."}`:"Nothing was changed."}var Ts=$(()=>{_();Et();V();rt()});async function dr(t,e){try{Ms=(await Ln(t)).map(({name:n})=>n),t.aborted||e()}catch{}}function hr(t,e,{draw:n,
start:s}){let o=bo();if(o?.code===t)return pv(o,e);if(!Ms.length)return d;let a=[Pm,Kh()].find(r=>Ms.includes(
r))??Ms[0];return i`<section class="show-on-bench" aria-label="Bench screen" data-test="show-on-bench">
    ${Ms.length>1?z({name:"bench",label:"Bench",value:a,options:Ms.map(r=>[r,r]),change:r=>{Pm=r,n()}}):d}
    <button
      type="button"
      class="button"
      data-test="put-on-bench"
      @click=${()=>{Mm(a,t,e),n(),s?.()}}>
      Show on ${Nn(a)}
    </button>
  </section>`}function pv(t,e){let n=Nn(t.name);return i`<section
    class="show-on-bench on"
    aria-label="Bench screen"
    data-test="on-bench"
    data-bench-step=${t.step}>
    <p role="status">${mv(t,n)}</p>
    ${t.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>Om(e)}>
            Show step ${e} there
          </button>`:d}
    <button type="button" class="button" data-test="off-bench" @click=${or}>Stop</button>
  </section>`}function mv({answers:t,late:e,refused:n},s){return t===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:e?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var Ms,Pm,Il=$(()=>{_();Ye();lr();J();Ms=[],Pm=""});function ur(t){let{drawing:e}=t,n=Bn(t),s=Oa(t),o=fv(e,t.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${Wl("before","before",Rm(e.before),e,o)}
    ${n?Wl("during",s?Ci(s).join(" "):"half way",n.shown,e,o,s):d}
    ${Wl("after","after",Rm(e.after),e,o)}
  </div>`}function fv(t,e,n){let[s,o,a,r]=Kt([t.before.sheet,t.after.sheet]),l=e??(a-s)/6,[c,h]=n?Sn(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,t.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,h-l),high:Math.max(r+.3*l,2*l,h+l)}}function Wl(t,e,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${t}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${St(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(h=>x`<path class="tool" d=${h}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?gv(c,a-o):d}
    </svg>
    <figcaption data-test="small-${t}">${e}</figcaption>
  </figure>`}function gv(t,e){if(!fa(t,e))return x`<path class="ring" d=${Xs([t.on_sheet,t.on_tool])}/>`;let[n,
s]=Sn(t);return x`<circle class="ring" cx=${n} cy=${-s} r=${e*.05}/>`}var Rm,Dl=$(()=>{_();Ae();Bi();Fe();Rm=({
sheet:t,ram:e,holder:n,punch:s,gauge:o})=>({sheet:St(t),tools:[e,n,s].map(St).filter(Boolean),down:0,gauge:St(
o),back:0})});function As(t,{waiting:e,step:n}={}){return i`<li class="row trial" data-test=${e?"waiting-trial":"trial"} data-id=${t.
id}>
    <div>
      <span class="lead">${en(t)}</span>
      <span class="code">Step ${t.step}</span>
      <span class="more">
        ${e?i`<b class="waits">${wo(e)}</b> · `:d}
        ${[ns(t),ve(t),$v(t),bv(t.correction,n)].filter(Boolean).join(" · ")}
        ${t.note?i`<span class="trial-note">${t.note}</span>`:d}
        ${e?.refused?i`<a href="/settings">Decide</a>`:d}
      </span>
    </div>
  </li>`}function en(t){let e=[t.left_deg,t.middle_deg,t.right_deg],s=e.some(o=>o!=null)?e.map(o=>f(S(o??null))).
join(" / "):f(S(t.measured_deg));return t.flange_mm?`${s}, flange ${wv(t.flange_mm)}`:s}var $v,bv,wv,Os=$(()=>{
_();fn();O();Ts();Ht();$v=t=>t.set_angle_deg?`set at ${f(S(t.set_angle_deg))}`:"",bv=(t,e)=>t?.set_angle_deg&&
e&&le(e,t)?`new setting ${f(S(t.set_angle_deg))}`:"",wv=t=>typeof t=="string"?t:f(y(t,{digits:2}))});var Wm={};tt(Wm,{show:()=>yv});async function yv(t){let{code:e}=t.params;if(!ut(e).whole)return Im(t,Mt(e));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{t.title(n.title||W(e)),t.render(vv(n,s,a,o))},a=async()=>{
Object.assign(s,{busy:!0,fault:""}),o();try{let l=C().name?{by:C().name}:{};n=await mn(await Ko(n,{replan:!0,reason:"\
Planned afresh with today’s tools",id:Wt(),...l})),s.fresh=null,j()}catch(l){s.fault=l instanceof M&&l.status===
412?"The card was changed meanwhile. Open it again first.":l instanceof Error?l.message:String(l)}s.busy=!1,o()},
r=async l=>{n=l,s.waiting=(await on(e).catch(()=>[])).filter(c=>c.kind==="trial"),s.metal=await _v(n.part.metal),
o(),t.ready()};ft(()=>n&&o(),t.signal),rr(()=>n&&o(),t.signal),document.addEventListener("sync",async()=>n&&r(
await Ks(e).catch(()=>{})??n),{signal:t.signal});try{await wt(e,r,t.signal)}catch(l){t.signal.aborted||Im(t,At(
e,l));return}ir(),dr(t.signal,o),s.fresh=await T("GET",`/cards/${e}/fresh`,{signal:t.signal}).then(({body:l})=>l,
()=>null),o()}function Im(t,e){t.title("No such card"),t.render(e),t.ready()}async function _v(t){return(await Zt().
catch(()=>{}))?.metals?.find(n=>n.code===t)?.name??t}function vv(t,e,n,s){let{plan:o}=t,a=o.checks.filter(c=>c.
level!=="ok"),r=a.filter(c=>c.level==="stop"),l=a.filter(c=>c.level!=="stop"&&!c.code.startsWith("general-"));
return i`<article class="card" data-test="card" data-revision=${t.revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${W(t.code)}</p>
        <h1 data-test="card-title">${t.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${xv(t,e.metal)}</p>
        ${t.note?i`<p class="card-note" data-test="card-note">${t.note}</p>`:d}
        ${t.archived?i`<p class="card-note"><b>Put away.</b> This card is not in use any more.</p>`:d}
      </header>
      ${Bm(t)}
      ${r.length?i`<section class="card-stops" aria-label="Stop">${yt(r)}</section>`:d}
      ${Nm(e.fresh,{...e,take:n,settings:t.settings.length})}
      ${kv(t,r.length>0)}
      ${o.steps.length?hr(t.code,1,{draw:s,start:()=>pt(`/c/${t.code}/step/1`)}):d}
      <section class="panel card-picture" aria-label="What it becomes">
        ${Jt(o,{tallest:innerHeight*.34})}
      </section>
      ${Ov(t)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${gs(o.tools,o.steps.length,o.steps)}${Ea(o.blank)}${It(o)?vs(o.blank,{tallest:420}):d}
      </section>
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${Dn(o)?d:Sv(o.order)}${Mv(t)}
      </section>
      ${Dn(o)?i`<section class="panel card-order">
              <h2>Order</h2>
              ${er(o,Kp(t.code))}
            </section>`:d}
      ${l.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${yt(l)}
            </section>`:d}
      ${ze(o.checks)}
      <section class="panel card-trials">
        <h2>What came out</h2>
        ${Av(t,e.waiting)}
      </section>
    </div>
  </article>`}function kv({code:t,plan:e},n){return e.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${t}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${e.steps.length===1?"1 step":`${e.steps.length} steps`}</small>
    </a>
  </div>`:d}function xv({part:t,plan:e},n){let s=e.thickness_gauge?` (${e.thickness_gauge})`:"",o=t.bends.length===
1?"1 bend":`${t.bends.length} bends`,a=It(e)?`box ${Cn(e.folded)}`:`${H(t.bend_length_mm)} ${P()} long`;return`${n}\
, ${H(t.thickness_mm)} ${P()}${s}, ${a}, ${o}`}function Tv(t,e){let{gauge_x_mm:n}=Qt(t,e);return n===null?"no \
gauge":`gauge at ${f(y(n))}`}function Mv(t){return i`<ol class="rows" data-test="step-list">
    ${t.plan.steps.map(e=>i`<li class="row">
          <a href="/c/${t.code}/step/${e.number}">
            <span class="lead">${e.number}. ${ge(e)} ${e.direction}</span>
            <span class="code">${f(S(e.included_angle_deg))}</span>
            <span class="more">${Tv(t,e)}</span>
            ${e.turn_over||e.turn_end||e.turn_quarter?i`<span class="turn" data-test="turn">${us(e)}</span>`:d}
            ${fe(e,{short:!0})} ${e.drawing?ur(e):d}
          </a>
        </li>`)}
  </ol>`}function Av(t,e){let n=[...t.trials].reverse().slice(0,3);return!n.length&&!e.length?i`<p data-test="no-trials">
      Nothing measured yet.${R("trials.keep"," After a bend, type what came out.")}
    </p>`:i`<ul class="rows trials" data-test="trials">
    ${[...e].reverse().map(s=>As(s.body,{waiting:s}))}
    ${n.map(s=>As(s,{step:t.plan.steps[s.step-1]}))}
  </ul>`}function Ov({code:t}){return i`<nav class="card-links" aria-label="This card">
    ${at(`/c/${t}/note`,i`<a class="button" href="/c/${t}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${t}/history" data-test="history">History</a>
    <a class="button" href="/c/${t}/label" data-test="label">Label</a>
    <a class="button" href="/c/${t}/print" data-test="print">Print</a>
    ${R("cards.revise",i`<a class="button" href="/part?from=${t}" data-test="edit">Edit</a>`)}
  </nav>`}var Sv,Dm=$(()=>{_();U();kt();dt();Ie();Nt();lr();Bt();et();$t();bt();O();Oe();V();ao();Cm();Ts();ps();
rt();nr();Je();Il();Dl();Ae();Os();hs();tn();ee();Sv=t=>t?.words?i`<p class="order" data-test="order">${t.words}</p>`:
d});var Um={};tt(Um,{show:()=>Ev});async function Ev(t){let{code:e,step:n}=t.params;if(!ut(e).whole)return Fm(t,Mt(
e));let s=uo(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return t.render(Cv(o,n));t.title(`${o.title||e},\
 step ${r.number}`),t.render(Pv(o,r,()=>Ia(o,r,s,a,t.signal),hr(o.code,r.number,{draw:a})))};ft(()=>o&&a(),t.signal),
rr(()=>o&&Lv(o,Number(n),a),t.signal),document.addEventListener("sync",()=>o&&Nv(o),{signal:t.signal}),addEventListener(
"keydown",r=>o&&Bv(r,o,Number(n)),{signal:t.signal}),ir();try{await wt(e,r=>{!o&&r.plan.steps[Number(n)-1]&&Am(
e,Number(n)),o=r,a(),t.ready()},t.signal)}catch(r){t.signal.aborted||Fm(t,At(e,r));return}dr(t.signal,()=>o&&a())}
function Lv(t,e,n){let s=bo(),o=s?.code===t.code&&s?.step!==e&&t.plan.steps[(s?.step??0)-1];o?pt(`/c/${t.code}\
/step/${o.number}`,{replace:!0}):n()}async function Nv(t){let e=await Ks(t.code).catch(()=>{});e&&e.revision!==
t.revision&&Z(`This card is at revision ${e.revision} now.`,{label:"Show it",act:()=>ke()})}function Fm(t,e){t.
title("No such card"),t.render(e),t.ready()}function Bv(t,e,n){t.altKey||t.ctrlKey||t.metaKey||t.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.
test(t.target.tagName)||(t.key==="ArrowRight"&&pt(jm(e,n).href),t.key==="ArrowLeft"&&pt(Hm(e,n).href))}function jm(t,e){
let n=t.plan.steps.at(-1);return e<t.plan.steps.length?{href:`/c/${t.code}/step/${e+1}`,label:"Next",more:`ste\
p ${e+1}`}:n.set_angle_deg===null||!_e(`/c/${t.code}/trial/${e}`)?{href:`/c/${t.code}`,label:"Done: the card",
more:""}:{href:`/c/${t.code}/trial/${e}`,label:"What came out?",more:""}}function Pv(t,e,n,s){let{stops:o,watch:a}=Ra(
t,e),r=e.number===t.plan.steps.length,l=jm(t,e.number);return i`<article class="step" data-test="step">
    ${Na(t,e)} ${o.length?i`<div class="step-stop">${yt(o)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${Ma(e,t.part.flats_mm.length)}${fe(e)}</div>
      <section class="step-set" aria-label="What to set">${Wa(t,e)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-bench">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?yt(a):d}
      </section>
      <section class="step-with" aria-label="Tools">
        ${Mu(t.plan,e)} ${Ta(t.plan,e)}
        ${lo(e.origin)?i`<p class="hint origins" data-test="origins">${lo(e.origin)}</p>`:d}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${Hm(t,e.number).href} data-test="back">Back</a>
      ${r||e.set_angle_deg===null?d:at(`/c/${t.code}/trial/${e.number}`,i`<a class="button" href="/c/${t.code}/trial/${e.
number}" data-test="came-out"
                >What came out?</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:d}</a
      >
    </nav>
  </article>`}var Cv,Hm,Gm=$(()=>{_();kt();dt();oe();lr();Bt();ts();et();Ie();Oe();Xi();V();ps();rt();Ca();ya();
Il();Xe();Ae();Da();Cv=(t,e)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${e}</strong>This card has ${t.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${t.code}">Open the card</a></span>
  </div>`;Hm=(t,e)=>({href:e>1?`/c/${t.code}/step/${e-1}`:`/c/${t.code}`,label:"Back"})});function Vm(t,e,n,s){let o=t.gauged_flange;if(!o)return null;let a=p=>Math.abs(p.measured_deg-e),r=[...o.rows].
sort((p,m)=>a(p)-a(m))[0];if(!r||a(r)>.5)return null;let l=n-r.flange_mm;if(Math.abs(l)>o.most_error_mm)return{
gauge_x_mm:null,error_mm:l,words:"That flange is further off than a gauge is. No new X before it is checked.",
to_check:Rv};let c=Math.abs(l)<=.05?s:s-l,h=c>=o.x_low_mm&&c<=o.x_high_mm;return{gauge_x_mm:h?c:null,error_mm:l,
words:h?"":"The gauge does not reach far enough to mend the flange.",to_check:[]}}var Rv,Es,pr=$(()=>{Rv=["Mea\
sure again, to the face that the card's dimension goes to.","Check which flange was measured.","Read the gauge\
: did it stand at the X of the card, and the sheet against it?"],Es=({correction:t,gauge:e})=>t?.flange??e??null});function yo(t){let e=t.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(e))return null;
let n=Number(e);return n>0&&n<180?n:null}function _o(t){let e={},n={},s=t.places==="one"?[["measured_deg",t.one]]:
[["left_deg",t.left],["middle_deg",t.middle],["right_deg",t.right]];for(let[o,a]of s){if(a.trim()==="")continue;
let r=yo(a);r===null?n[o]=[t.places==="one"?qm:Iv]:e[o]=r}return!Object.keys(e).length&&!Object.keys(n).length&&
(n[s[0][0]]=[qm]),{angles:e,wrong:n}}function zm(t,e,n){let s=Fl(e),o=[...t.corrections??[]].sort((m,g)=>m.measured_deg-
g.measured_deg),a=o.findIndex(m=>m.measured_deg>=s);if(a<0||n.set_angle_deg===null)return null;let[r,l]=[o[Math.
max(a-1,0)],o[a]];if(s<r.measured_deg||Wv(t,s))return null;let c=l.measured_deg-r.measured_deg,h=c>0?(s-r.measured_deg)/
c:0,u=m=>r[m]+h*(l[m]-r[m]),p={row:s,set_angle_deg:u("set_angle_deg")+(n.set_angle_deg-t.set_angle_deg),punch_depth_mm:n.
punch_depth_mm===null?null:u("punch_depth_mm")+(n.punch_depth_mm-t.punch_depth_mm)};return le(t,p)?p:null}function Wv({
first_hit:t,included_angle_deg:e},n){return!!t&&n>Math.max(e+Dv,t.comes_out_deg_high)}function Fl(t){let e=Object.
values(t);return e.reduce((n,s)=>n+s,0)/e.length}function Ls(t){return t?.correction?.set_angle_deg?t.correction:
t?.table??null}var qm,Iv,Dv,Ns=$(()=>{fn();qm="Type the angle between the flats in degrees, such as 90.5. Squa\
re is 90.",Iv="Degrees, such as 90.5";Dv=5});function Ym(t,e,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(h,u,p,m={})=>A({name:u,label:p,value:a[h],wrong:r[u],
change:g=>Object.assign(a,{[h]:g}),...m}),c=n.used??Qt(t,e);return i`<form
    class="trial-form"
    novalidate
    data-test="trial-form"
    @submit=${h=>{h.preventDefault(),s()}}>
    <div class="trial-main">
      <h2>What came out? <small>Wanted ${f(S(e.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:d}
      <div class="trial-angles ${a.places}">
        ${a.places==="one"?l("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[l("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),l("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),l("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${K({name:"places",label:"Measured at",value:a.places,options:[["one","One place"],["three","Left, middl\
e, right"]],change:h=>{Object.assign(a,{places:h}),o()}})}
      <div class="trial-more">
        ${n.byDepth?l("set","punch_depth_mm","Depth that was set",{unit:P(),placeholder:c.punch_depth_mm===null?
"":y(c.punch_depth_mm,{digits:2}).text,hint:Km}):l("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:c.set_angle_deg===null?"":S(c.set_angle_deg).text,hint:Km})}
        ${l("flange","flange_mm","Flange measured",{unit:P(),hint:"If you measured it."})}
        ${l("note","note","Note",{hint:"Grain, anything odd."})}
      </div>
      <details
        class="more-measured"
        data-test="more-measured"
        ?open=${["lot","thickness_mm","radius_mm"].some(h=>r[h]?.length)}>
        <summary>More measured</summary>
        <div class="trial-more">
          ${l("thickness","thickness_mm","Thickness measured",{unit:P()})}
          ${l("radius","radius_mm","Inside radius",{unit:P()})}
          ${l("lot","lot","Lot or heat",{hint:"As on the sheet’s tag."})}
        </div>
      </details>
    </div>
    <div class="step-nav" role="group" aria-label="Trial">
      <a class="button" href="/c/${t.code}/step/${e.number}" data-test="back">Back</a>
      <button class="button next" data-test="save" ?disabled=${n.sending}>
        ${n.sending?"Sending…":"Save"}
      </button>
    </div>
  </form>`}var Km,Jm=$(()=>{_();kt();O();J();Km="Leave it if it was set as shown."});function Xm(t){let e=Es(t);return e?e.gauge_x_mm===null?jv(e):i`<div class="set-figures" data-test="new-gauge">
      ${Ut("Gauge X now",y(e.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${Zm(e.error_mm)}</p>`:d}function jv({error_mm:t,words:e,to_check:n}){
return n.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${k("stop")} <b>No new gauge X.</b> ${Zm(t)} No gauge is that far off.</p>
    <ol>
      ${n.map(s=>i`<li>${s}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${e}</p>`}function Zm(t){return t===null?"":Math.abs(t)<=.05?"Flange as wa\
nted: leave the gauge.":`Flange ${f(y(Math.abs(t),{digits:2}))} too ${t>0?"long":"short"}.`}function Qm(t){let e=t?.
crown;return e?i`<div class="crown" data-test="crown">
    <p>${Hv(e)}</p>
    ${e.shim?Uv(e.shim):d}
  </div>`:d}function Hv({middle_open_deg:t,shim:e,words:n}){return e?i`<b>The middle is ${f(S(t))} more open than the ends.</b> Crown the middle by
    ${f(y(e.middle_mm,{digits:2}))}, or shim the die:`:n}function Uv({strip_mm:t,lengths_mm:e}){let n=e.map(o=>y(
o,{digits:0}).text).join(", "),s=y(e[0],{digits:0}).unit;return i`<p data-test="shim">
    ${e.length===1?"1 strip":`${e.length} strips`} of ${f(y(t,{digits:2}))}
    under the middle of the die, one on the other, ${n} ${s} long. Nothing at the ends. Then measure
    again: the setting above is for the die without it.
  </p>`}var tf,ef=$(()=>{_();pr();O();V();Xe();tf=({thickness_mm:t})=>t?` Reckoned for the ${f(y(t,{digits:2}))}\
 that the sheet measures.`:""});function nf(t,e,n,{again:s,keep:o}){let a=Ls(n),r=e.number===t.plan.steps.length;return i`<div
    class="trial-result"
    data-test="trial-result"
    data-waits=${n.waits?"true":"false"}>
    <div class="trial-main">
      <h2>${en(n.trial)} <small>wanted ${f(S(e.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> the shop does not answer. It goes out by
              itself.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?Vv(a):ku(e,n)}
      ${a?i`<p class="basis" data-test="basis">${qv(n)}</p>`:d}
      ${n.question?Gv(t,n.question):d} ${Xm(n)}
      ${zv(n.correction)} ${Qm(n.correction)}
      ${a?R("cards.revise",Kv(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
d}
    </div>
    <nav class="step-nav" aria-label="Trial">
      <button class="button" data-test="again" @click=${s}>Measure again</button>
      <a class="button" href="/c/${t.code}/step/${e.number}" data-test="back">Step ${e.number}</a>
      ${r?i`<a class="button next" href="/c/${t.code}" data-test="next">Done: the card</a>`:i`<a class="button next" href="/c/${t.
code}/step/${e.number+1}" data-test="next"
              >Next: step ${e.number+1}</a
            >`}
    </nav>
  </div>`}function qv({correction:t,table:e}){return t?`${t.what}${tf(t)}`:`Worked out on this device, from th\
e card’s own table at ${f(S(e?.row??null))}. The shop works it out again when the result arrives.`}function zv(t){
let e=t?.tilt_mm_per_m;return e==null?d:i`<p data-test="tilt">
    Left and right differ: about ${nt(Math.abs(e),2)} mm in each metre,
    ${e>0?"the right end deeper":"the left end deeper"}.
  </p>`}function Kv(t,e){return t.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${t.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${t.words}
    </p>`:i`<div class="buttons">
      <button class="button" data-test="keep" ?disabled=${t.kept==="asking"} @click=${e}>
        ${t.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${t.words}</p>`}var Gv,Vv,sf=$(()=>{_();ef();Ns();O();
V();ll();rt();Xe();Os();Gv=(t,e)=>i`<section class="panel urgent" data-test="question">
    <p>${k("unknown","Does not count")} ${e}</p>
    <p><a href="/shop/learned/${encodeURIComponent(t.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,Vv=t=>i`<div class="set-figures" data-test="new-setting">
    ${Ut("Angle now",S(t.set_angle_deg),"new-angle")}
    ${t.punch_depth_mm===null?d:Ut("Depth now",y(t.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`});async function of(t,e,n,s){let o=Ls(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await Re(t,{settings:[...t.settings.filter(r=>r.step!==e.number),Jv(e,o,n.trial,Xv(t,e,n))]},{reason:`\
Step ${e.number} set from a piece that came out at ${en(n.trial)}`});Object.assign(t,a.card),Object.assign(n,{
kept:"kept",where:a.where,words:Yv(a)}),j()}catch(a){Object.assign(n,{kept:"no",words:a instanceof Error?a.message:
String(a)})}s()}}function Yv({where:t,card:e}){return t==="shop"?`Revision ${e.revision} of the card has it. S\
teps show it from now on.`:t==="settle"?"The card was changed meanwhile. Both are kept: settle on the card whi\
ch holds.":"Steps show it on this device from now on; it goes to the shop by itself."}var Jv,Xv,af=$(()=>{Ie();
Os();pr();Ns();bt();Jv=(t,e,n,s)=>({step:t.number,set_angle_deg:e.set_angle_deg,punch_depth_mm:e.punch_depth_mm,
...s===null?{}:{gauge_x_mm:s},trial_id:n.id,reason:`Piece came out at ${en(n)}`}),Xv=(t,e,n)=>Es(n)?.gauge_x_mm??
t.settings.find(s=>s.step===e.number)?.gauge_x_mm??null});var lf={};tt(lf,{show:()=>Qv});async function Qv(t){let{code:e,step:n}=t.params;if(!ut(e).whole)return jl(t,Mt(
e));let s={typed:{...rf},used:null,wrong:{},general:"",sending:!1,result:null,byDepth:!1},o,a=async()=>{let l=Zv.
includes((await Zt().catch(()=>{}))?.press?.set_by);l===s.byDepth||s.typed.set||s.sending||s.result||(s.byDepth=
l,o&&!t.signal.aborted&&r())};document.addEventListener("sync",a,{signal:t.signal}),await a();let r=()=>{let l=o.
plan.steps[Number(n)-1];if(!l)return jl(t,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${e}">Open the card</a>
        </p>`);t.title(`${o.title||e}: what came out`),t.render(tk(o,l,s,r))};he(()=>!s.result&&s.typed.one+s.
typed.left+s.typed.note?"Leave without saving what you measured?":null);try{await wt(e,l=>{s.sending||s.result||
(o=l,r(),t.ready())},t.signal)}catch(l){t.signal.aborted||jl(t,At(e,l))}}function jl(t,e){t.title("No such car\
d"),t.render(e),t.ready()}function tk(t,e,n,s){let o=()=>ek(t,e,n,s),a=()=>{let l=nk(n);Object.assign(n,{typed:{
...rf,places:n.typed.places,lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),s()},r=()=>of(
t,e,n.result,s);return i`<article class="step trial-screen" data-test="trial-screen">
    ${Na(t,e)}
    <div class="trial-body">
      ${n.result?nf(t,e,n.result,{again:a,keep:r}):Ym(t,e,n,{save:o,draw:s})}
      <aside class="trial-aside" aria-label="Which bend">
        ${Jt(t.plan,{mark:e.bend})}
      </aside>
    </div>
  </article>`}async function ek(t,e,n,s){if(n.sending)return;let{angles:o,wrong:a}=_o(n.typed),r=ok(t,e,n);if(r||
(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,{wrong:a,general:""}),
Object.keys(a).length||!r)return s(),ne(a);let l=ak(t,e,o,r,n.typed);n.sending=!0,s();try{let{answer:c}=await qo(
{id:l.id,kind:"trial",code:t.code,body:l}),h=c?.correction??null;n.result={trial:l,correction:h,table:c||r.set_angle_deg===
null?null:zm(e,o,r),gauge:c?null:sk(e,o,r,l.flange_mm),waits:!c,question:c?.question??"",kept:"no",words:""},c&&
j()}catch(c){n.wrong=c instanceof M?c.errors:{},n.general=c instanceof Error?c.message:String(c)}n.sending=!1,
await Qn(),s(),ne(n.wrong)}function nk({result:t,used:e}){let n=Ls(t),s=t&&(Es(t)?.gauge_x_mm??t.trial.gauge_x_mm??
null);return n?{...n,gauge_x_mm:s??e?.gauge_x_mm}:null}function sk(t,e,n,s){let o=Md(s);return o===null||typeof n.
gauge_x_mm!="number"?null:Vm(t,Fl(e),o,n.gauge_x_mm)}function ok(t,e,n){let{set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a}=n.
used??Qt(t,e);if(n.typed.set.trim()==="")return{set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a};if(n.byDepth)return{
set_angle_deg:null,punch_depth_mm:Q(n.typed.set),gauge_x_mm:a};let r=yo(n.typed.set);return r===null?null:{set_angle_deg:r,
punch_depth_mm:null,gauge_x_mm:a}}function ak(t,e,n,s,o){let a={id:Wt(),revision:t.revision,step:e.number,bend:e.
bend,...n,made_at:new Date().toISOString()};return s.set_angle_deg!==null&&(a.set_angle_deg=s.set_angle_deg),s.
punch_depth_mm!==null&&(a.punch_depth_mm=s.punch_depth_mm),typeof s.gauge_x_mm=="number"&&(a.gauge_x_mm=s.gauge_x_mm),
o.flange.trim()&&(a.flange_mm=Q(o.flange)),o.radius.trim()&&(a.radius_mm=Q(o.radius)),o.thickness.trim()&&(a.thickness_mm=
Q(o.thickness)),o.lot.trim()&&(a.lot=o.lot.trim()),o.note.trim()&&(a.note=o.note.trim()),C().name&&(a.by=C().name),
a}var rf,Zv,cf=$(()=>{_();U();kt();dt();pr();Ns();Nt();Bt();Zn();et();$t();bt();O();Oe();J();Xe();Jm();sf();tn();
af();rf={one:"",left:"",middle:"",right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""},
Zv=["depth","stop"]});function hf(t,e,n,s){return t.map(o=>i`<fieldset class="settle-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${vo(o,o.before)}</small></legend>
        ${df(o,"shop","In the shop",e,s)} ${df(o,"yours",n,e,s)}
      </fieldset>`)}function df(t,e,n,s,o){return i`<label class="settle-side" data-test=${e}>
    <span class="settle-whose"
      ><input
        type="radio"
        name=${t.name}
        value=${e}
        .checked=${s[t.name]===e}
        @change=${()=>o(t.name,e)} />
      ${n}</span
    >
    <span class="settle-value">${vo(t,t[e])}</span>
  </label>`}function vo({name:t},e){if(t==="archived")return e?"Put away":"In use";if(!t.startsWith("settings "))
return e||"nothing";if(!e)return"as planned";let n=e.punch_depth_mm===null||e.punch_depth_mm===void 0?"":`, de\
pth ${f(y(e.punch_depth_mm,{digits:2}))}`;return`${f(S(e.set_angle_deg??null))}${n}`}var Hl=$(()=>{_();O()});function uf(t,e){return t.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${t.map(n=>rk(n,e))}
    </ol>
  </section>`:d}function rk(t,e){let n=Jn(t.changes,t.before,{...t.before,settings:t.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${t.settled_by?`Settled by revision ${t.settled_by}`:at(`/c/${e}/settle`,i`<a href="/c/${e}/settle">To settle</a>`,
"To settle")}
    </h3>
    <p class="more">${[ns(t),ve(t)?`by ${ve(t)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${vo(s,s.before)} to ${vo(s,s.yours)}</li>`)}
    </ul>
  </li>`}var pf=$(()=>{_();Xn();rt();Hl();Ht()});function mf({title:t,note:e,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${t}</b>, ${f(y(n.thickness_mm,{digits:2}))},
      ${It(s)?Cn(s.folded):`${f(y(n.bend_length_mm))} long`}${e?i`. ${e}`:d}
    </p>
    ${Jt(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${ik(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:d}
    ${La(s)} ${yt(s.checks,{quiet:!0})}
  </div>`}function ik(t,e){let n={set_angle_deg:e.set_angle_deg??null,punch_depth_mm:e.punch_depth_mm??null};if(!t||
!le(t,n))return"had a setting beyond its tools";let s=f(y(n.punch_depth_mm,{digits:2}));return`set at ${f(S(n.
set_angle_deg))}, depth ${s}`}var ff=$(()=>{_();hs();tn();fn();O();V();Je()});var $f={};tt($f,{show:()=>lk});async function lk(t){let{code:e}=t.params;if(!ut(e).whole)return gf(t,Mt(e));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>t.render(dk(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=p=>T("GET",`/cards/${e}/${p}`,{signal:t.signal}),[h,u]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);Object.assign(s,{revisions:h.body.revisions,proposals:u.body.proposals}),
s.silent=!1}catch(c){if(!(c instanceof F))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=
null,o(),!!s.open){try{let{body:h}=await T("GET",`/cards/${e}/revisions/${c}`,{signal:t.signal});s.open===c&&(s.
snapshot=h)}catch(h){s.open=0,Z(h instanceof Error?h.message:String(h))}o()}},l=async c=>{s.busy=!0,o();try{n=
await ck(n,c),Z(`Revision ${c} is back, as revision ${n.revision}.`),s.open=0,j(),await a()}catch(h){Z(h instanceof
M&&h.status===412?"The card was changed meanwhile. Look at the history again.":String(h instanceof Error?h.message:
h))}s.busy=!1,o()};ft(()=>n&&o(),t.signal);try{await wt(e,async c=>{n=c,t.title(`${n.title||W(e)}: history`),s.
waiting=(await on(e).catch(()=>[])).filter(h=>h.kind==="trial"),o()},t.signal),await a(),o(),t.ready()}catch(c){
t.signal.aborted||gf(t,At(e,c))}}function gf(t,e){t.title("No such card"),t.render(e),t.ready()}async function ck(t,e){
let n=await ye(t.code);return Ko(n,{restore_revision:e,reason:`Revision ${e} brought back`,id:Wt(),...C().name?
{by:C().name}:{}})}function dk(t,e,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>History of ${t.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${hk(t,e,n)}
      </section>
      ${uf(e.proposals,t.code)}
      <section class="panel">
        <h2>What came out</h2>
        ${pk(t,e)}
      </section>
    </div>
  </article>`}function hk(t,e,n){return e.silent?i`<p data-test="silent">
      This device has revision ${t.revision}, of
      ${st(t.updated_at)}${t.updated_by?` by ${t.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:e.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${e.revisions.map(s=>uk(s,t,e,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function uk(t,e,n,{look:s,bringBack:o}){let a=t.revision===
e.revision,r=n.open===t.revision;return i`<li class="row revision" data-test="revision" data-revision=${t.revision}>
    <h3>
      Revision ${t.revision}${a?", as it is now":""}
      ${t.worst==="stop"||t.worst==="caution"?k(t.worst):d}
    </h3>
    <p class="more">${[st(t.at),ve(t)].filter(Boolean).join(", by ")}</p>
    ${t.reason?i`<p data-test="reason">${t.reason}</p>`:d}
    ${t.changes.length?i`<ul class="changes" data-test="changes">
            ${t.changes.map(l=>i`<li>${l}</li>`)}
          </ul>`:d}
    <div class="buttons">
      <button
        class="button"
        aria-expanded=${r?"true":"false"}
        data-test="look"
        @click=${()=>s(t.revision)}>
        ${r?"Close":"Look at it"}
      </button>
      ${a?d:R("cards.revise",i`<button
                class="button"
                data-test="bring-back"
                ?disabled=${n.busy}
                @click=${()=>o(t.revision)}>
                Bring this one back
              </button>`)}
    </div>
    ${r?n.snapshot?mf(n.snapshot):i`<p>Fetching it…</p>`:d}
  </li>`}function pk(t,e){return!t.trials.length&&!e.waiting.length?i`<p data-test="no-trials">Nothing measured yet.</p>`:
i`<ol class="rows trials" data-test="trials">
      ${[...e.waiting].reverse().map(n=>As(n.body,{waiting:n}))}
      ${[...t.trials].reverse().map(n=>As(n,{step:t.plan.steps[n.step-1]}))}
    </ol>
    ${t.trials_total>t.trials.length?i`<p>The newest ${t.trials.length} of ${t.trials_total}.</p>`:d}`}var bf=$(
()=>{_();U();kt();dt();oe();Nt();et();bt();Oe();V();rt();pf();ff();Os();Ht()});var yf={};tt(yf,{show:()=>mk});async function mk(t){let{code:e}=t.params;if(!ut(e).whole)return wf(t,Mt(e));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{t.title(`${n.title||W(e)}: not\
e`),t.render(gk(n,s,{draw:o,save:()=>fk(n,s,o,t.signal)}))};he(()=>s.typed?"Leave without saving what you type\
d?":null);try{await wt(e,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),
o(),t.ready())},t.signal)}catch(a){t.signal.aborted||wf(t,At(e,a))}}function wf(t,e){t.title("No such card"),t.
render(e),t.ready()}async function fk(t,e,n,s){if(e.sending)return;let[o,a]=[e.title.trim(),e.note.replace(/\r\n/g,
`
`).trim()];if(Object.assign(e,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),ne(e.wrong);
e.sending=!0,n();try{let{where:r}=await Re(t,{title:o,note:a,archived:e.archived});if(e.typed=!1,Z(cr(r)),j(),
s.aborted)return;pt(r==="settle"&&_e(`/c/${t.code}/settle`)?`/c/${t.code}/settle`:`/c/${t.code}`)}catch(r){e.wrong=
r instanceof M?r.errors:{},e.general=r instanceof Error?r.message:String(r),e.sending=!1,n(),ne(e.wrong)}}function gk(t,e,{
draw:n,save:s}){let o=a=>Object.assign(e,a,{typed:!0});return i`<form
    class="note-screen"
    novalidate
    data-test="note-screen"
    @submit=${a=>{a.preventDefault(),s()}}>
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>${R("cards.revise","Note and title","Note")}</h1>
    </header>
    ${e.general?i`<p class="wrong" role="alert" data-test="wrong">${e.general}</p>`:d}
    ${Mn({name:"note",label:"Note",value:e.note,lines:5,wrong:e.wrong.note,change:a=>o({note:a})})}
    ${R("cards.revise",[A({name:"title",label:"Title",value:e.title,wrong:e.wrong.title,change:a=>o({title:a})}),
K({name:"archived",label:"This card",value:e.archived?"away":"use",options:[["use","In use"],["away","Put away"]],
change:a=>{o({archived:a==="away"}),n()}})])}
    <p class="hint">
      This works without the shop too: it is saved here and goes out by itself.
      ${R("cards.revise","To change the part itself, use Edit: that is planned by the shop, so the shop must a\
nswer.","The owner changes the rest of the card.")}
    </p>
    <div class="buttons">
      <button class="button next wide" data-test="save" ?disabled=${e.sending}>
        ${e.sending?"Saving…":"Save"}
      </button>
    </div>
  </form>`}var _f=$(()=>{_();kt();dt();U();Ie();oe();Bt();ts();bt();Oe();rt();J();Ts()});var kf={};tt(kf,{show:()=>$k});async function $k(t){let{code:e}=t.params;if(!ut(e).whole)return vf(t,Mt(e));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{t.title(`${n.title||W(e)}: to settle`),
t.render(bk(n,s,c))},a=async h=>{if(!h||s.sending)return;let u=[n?.etag,s.proposal?.id].join();n=h,[s.proposal]=
n.proposals;let{changes:p={},before:m={}}=s.proposal??{};s.rows=Jn(p,m,n),s.mine=!!(s.proposal&&await Oo(s.proposal.
id).catch(()=>{})),u!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),t.ready()},r=async()=>a(await ci(e).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let h=await Re(n,pd(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Settled"});Z(cr(h.where)),s.sending=!1,await r(),j()}catch(h){Object.assign(
s,{sending:!1,fault:h instanceof Error?h.message:String(h)}),o()}},choose:(h,u)=>{s.chosen[h]=u,o()},all:h=>{for(let{
name:u}of s.rows)s.chosen[u]=h;o()}};document.addEventListener("sync",r,{signal:t.signal});try{await wt(e,async h=>a(
await ci(e).catch(()=>{})??h),t.signal)}catch(h){t.signal.aborted||vf(t,At(e,h))}}function vf(t,e){t.title("No\
 such card"),t.render(e),t.ready()}function bk(t,e,n){return i`<article class="settle" data-test="settle-screen">
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>${e.proposal?"Two changes met":"Nothing to settle"} <small>${t.title}</small></h1>
    </header>
    ${e.proposal?wk(t,e,n):i`<p data-test="settled">
            Every change of this card is settled. Both sides are in its
            <a href="/c/${t.code}/history">history</a>.
          </p>`}
  </article>`}function wk(t,{proposal:e,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:u})=>!o[u]).
length,h=s?"Yours":e.by?`By ${e.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":e.by?`${e.by} changed`:"Somebody changed"} this card
      (${ns(e)}) while it was changed in the shop (revision ${t.revision},
      ${st(t.updated_at)}${t.updated_by?`, ${t.updated_by}`:""}). Choose what holds. Both
      stay in the history.
    </p>
    ${t.proposals.length>1?i`<p><b>1 of ${t.proposals.length} to settle.</b></p>`:d}
    ${n.length?i`<div class="buttons">
              <button type="button" class="button" data-test="all-shop" @click=${()=>l.all("shop")}>
                All as in the shop
              </button>
              <button type="button" class="button" data-test="all-yours" @click=${()=>l.all("yours")}>
                ${s?"All of yours":e.by?`All by ${e.by}`:"All of the other one"}
              </button>
            </div>
            ${hf(n,o,h,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
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
    </div>`}var xf=$(()=>{_();Xn();kt();dt();Ie();oe();Nt();bt();Oe();Ts();Hl();Ht()});function Sf(t,e){let{plan:n}=t,s=Ek(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${_k(t,e)}
    <figure class="strip ${It(n)?"of-box":""}">
      <figcaption>
        Blank ${mr(n.blank.length_mm)} × ${mr(n.blank.width_mm)},
        ${f(Js(n.blank.mass_kg))}.
        ${It(n)?yk(n):"Bend lines from the left end."}
      </figcaption>
      ${vs(n.blank,It(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${vk(n)} ${kk(t,s)} ${Nk(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function yk({blank:t}){let e=({bend:a})=>{let r=t.bend_lines.find(l=>l.bend===a);return`${a} ${H(
r.at_mm)}`},n=a=>t.lines.filter(r=>a.includes(r.side)).map(e).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,al(t),"Inside up."].filter(
Boolean).join(" ")}function _k(t,e){let{part:n,plan:s}=t;return i`<header>
    <div>
      <h2>${t.title}</h2>
      <p class="big-code" data-test="sheet-code">${t.display_code}</p>
      <p>
        <b
          >${e},
          ${mr(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:d}</b
        >, ${It(s)?`box ${Cn(s.folded)}`:i`bend length ${mr(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${t.revision}, ${wn(t.updated_at)}${t.updated_by?`, ${t.updated_by}`:""}.
      </p>
      ${t.note?i`<p class="note">${t.note}</p>`:d}
    </div>
    ${s.section?Jt({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):d}
    <img
      class="qr"
      src="/api/v1/cards/${t.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function vk(t){let e=n=>{let s=ol(n,t.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:d};
return t.tools.length?i`<table class="fetch">
    <thead>
      <tr>
        <th scope="col">Fetch</th>
        <th scope="col">Name</th>
        <th scope="col">From</th>
        <th scope="col">Lay together</th>
        <th scope="col">Steps</th>
      </tr>
    </thead>
    <tbody>
      ${t.tools.map(n=>i`<tr>
            <th scope="row">${n.kind} ${n.code}</th>
            <td>${n.name}${e(n)}</td>
            <td>${nl(n)}</td>
            <td>${sl(n)||"–"}</td>
            <td>${n.steps.length===t.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function kk(t,e){let n=t.part.flats_mm.length;return i`<table class="paper-steps">
    <thead>
      <tr>
        <th scope="col">Step</th>
        <th scope="col">In the tools</th>
        <th scope="col">Gauge</th>
        <th scope="col">Set</th>
        <th scope="col">Sheet</th>
        <th scope="col">Watch</th>
        <th scope="col">Came out</th>
      </tr>
    </thead>
    <tbody>
      ${t.plan.steps.map(s=>xk(t,s,e.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function xk(t,e,n,s){let o=Qt(t,e);return i`<tr data-test="sheet-step-${e.number}">
    <th scope="row">
      <span class="number">${e.number}</span> bend ${e.bend} ${e.side??""}
      ${e.direction}${e.operation&&e.operation!=="bend"?i`<br />${e.operation}`:d}
    </th>
    <td class="picture">
      ${Tk(t.plan,e)}${e.drawing?ur(e):"no drawing"}${Mk(e,t.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${y(o.gauge_x_mm).text}</b><br />R
      <b>${y(e.gauge_r_mm).text}</b>${Ak(e)}
    </td>
    <td class="figures-cell">
      ${Bk(e,o)}<br />
      <span class="small"
        >${Sk(e)}${Pk(o)?i`<br />from a first piece`:d}</span
      >
    </td>
    <td class="move">
      ${us(e)}
      <span class="small"
        >${e.inside_face==="up"?"Top":"Bottom"} face
        up${e.gauged_end?`, ${co(e,s)} to the gauge`:""}.</span
      >${fe(e,{short:!0})}
    </td>
    <td>${Ok(n)}</td>
    <td class="pen">
      <span
        >${e.included_angle_deg?f(S(e.included_angle_deg)).replace(".0°","°"):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${fh(o.firstHit)}</span>`:d}</span
      >
    </td>
  </tr>`}function Sk(t){let e=ma(t);return e===d?d:i`<span data-test="sheet-force">allow for ${e}</span>`}function Tk(t,e){
let n=Ba(t,e);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${e.punch}${e.punch_turned?" turned round":""} over ${e.die}
      </div>`:d}function Mk({segments_mm:t,punch:e,die:n},s){return t?[["punch",e],["die",n]].map(([o,a])=>{let r=s.
find(c=>c.kind===o&&c.code===a)?.segments_mm??[],l=t[o]??[];return!l.length||l.length===r.length?d:i`<div class="pieces" data-test="own-pieces">
      ${o} ${l.map(H).join(" + ")} only
    </div>`}):d}function Ak({hits:t}){return t?i`<br /><span class="small"
          >${t.count} hits, ${y(t.pitch_mm,{digits:2}).text} apart</span
        >`:d}function Ok(t){return["stop","caution","unknown"].map(n=>({level:n,letters:t.filter(s=>s.level===
n).map(({letter:s})=>s)})).filter(({letters:n})=>n.length).map(({level:n,letters:s})=>i`<div class="mark">${k(
n)} <b>${s.join(" ")}</b></div>`)}function Ek(t){let e=new Map;for(let[n]of Tf)for(let s of t.filter(o=>jt(o)===
n)){let o=`${n} ${s.template} ${s.do_template??""}`,a=e.get(o)??{letter:Lk(e.size),level:n,checks:[],steps:[]};
a.checks.push(s),a.steps.push(...s.steps??(s.step?[s.step]:[])),e.set(o,a)}return[...e.values()]}function Nk(t){
return i`<div class="remarks" data-test="sheet-remarks">
    ${Tf.map(([e,n])=>{let s=t.filter(o=>o.level===e);return s.length?i`<section data-level=${e}>
        <h3>${k(e,n)}</h3>
        <ul>
          ${s.map(({letter:o,checks:a,steps:r})=>i`<li>
                <b>${o}</b>
                ${r.length?i`<b>Step ${r.join(", ")}.</b> `:d}${Ck(a)}
              </li>`)}
        </ul>
      </section>`:d})}
  </div>`}function Ck(t){let{template:e,do_template:n=""}=t[0];return`${e} ${n}`.replace(/\{(\w+)\}/g,(s,o)=>[
...new Set(t.map(({numbers:a})=>f(gn(o,a[o]))))].join(" / ")).trim()}function Bk(t,{set_angle_deg:e,punch_depth_mm:n}){
return e===null&&t.die?i`<b>no setting</b>`:i`<b>${f(S(e))}</b><br />depth <b>${y(n,{digits:2}).text}</b>`}var mr,
Tf,Lk,Pk,Mf=$(()=>{_();hs();tn();ee();Dl();kt();O();pe();V();Tn();ps();Je();Pa();Ae();Ht();mr=t=>f({text:H(t),
unit:P()});Tf=[["stop","Stop"],["caution","Caution"],["unknown","Unknown"]];Lk=t=>String.fromCharCode(97+t%26)+
(t<26?"":String(Math.floor(t/26)+1));Pk=t=>t.fromTrial&&t.set_angle_deg!==null});function Cs(t){return K({name:"paper",label:"Paper",value:C().paper,options:[["A4","A4"],["Letter","Letter"]],
change(e){Ne({paper:e==="Letter"?"Letter":"A4"}),t()}})}function Bs(t="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${t}
  </button>`}function fr(t,{lying:e=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${C().paper.toLowerCase()} ${e?"lying":"upright"}" data-test="sheet">
      ${t}
    </div>
  </div>`}var gr=$(()=>{_();et();J()});var Of={};tt(Of,{show:()=>Rk});async function Rk(t){let{code:e}=t.params;if(!ut(e).whole)return Af(t,Mt(e));let n,
s=[],o=async()=>{s=(await Zt().catch(()=>{}))?.metals??s,n&&a()};function a(){let r=s.find(({code:l})=>l===n.part.
metal)?.name??n.part.metal;t.title(`${n.title}, on paper`),t.render(i`<p class="crumb screen-only"><a href="/c/${e}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${Cs(a)}${Bs("Print the card")}</div>
        ${fr(Sf(n,r),{about:"The card as it prints"})}`)}ft(()=>n&&a(),t.signal),document.addEventListener("sy\
nc",o,{signal:t.signal}),await o();try{await wt(e,r=>{n=r,a(),t.ready()},t.signal)}catch(r){t.signal.aborted||
Af(t,At(e,r))}}function Af(t,e){t.title("No such card"),t.render(e),t.ready()}var Ef=$(()=>{_();kt();dt();et();
$t();Oe();Mf();gr()});var Cf={};tt(Cf,{show:()=>Ik});async function Ik(t){let{code:e}=t.params;if(!ut(e).whole)return Nf(t,Mt(e));let n=C().
units,s=Lf[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){t.title(`Label of ${o.title}`),t.render(i`<p class="crumb screen-only"><a href="/c/${e}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${K({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${Lf.map(l=>Wk(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${at("/labels",i`For office paper, lay them out <a href="/labels?codes=${e}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${$r(e,s.size,n,"svg")}
          alt=""
          hidden />`)}try{await wt(e,l=>{o=l,r(),t.ready()},t.signal)}catch(l){t.signal.aborted||Nf(t,At(e,l))}}
function Wk(t,{size:e,words:n,print:s},o,a){let r=`label-${t.code}-${e}`;return i`<section class="panel label-panel" data-test="label-${e}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${$r(t.code,e,o,"svg")}
        data-test="label-image-${e}"
        alt="Label of card ${t.display_code}: ${t.title}"
        @error=${l=>l.target.closest(".label-panel")?.classList.add("missing")} />
    </div>
    <p class="label-missing">
      The label is drawn by the shop's server, which does not answer. The code in clear:
      <b>${t.display_code}</b>
    </p>
    <div class="buttons">
      <button type="button" class="button next" data-test="print-${e}" @click=${a}>Print</button>
      <a
        class="button"
        download="${r}.svg"
        href=${$r(t.code,e,o,"svg")}
        data-test="svg-${e}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${$r(t.code,e,o,"png")}
        data-test="png-${e}"
        >PNG</a
      >
    </div>
  </section>`}function Nf(t,e){t.title("No such card"),t.render(e),t.ready()}var Lf,$r,Bf=$(()=>{_();kt();dt();
et();Oe();J();rt();Lf=[{size:"50x25",words:"50 × 25 mm, for a bin",print:"small"},{size:"100x50",words:"100 ×\
 50 mm, for a shelf or a door",print:"large"}];$r=(t,e,n,s)=>`/api/v1/cards/${t}/label.${s}?size=${e}&units=${n}`});var Pf={};tt(Pf,{show:()=>Fk});async function Fk(t){t.title("Labels on a sheet"),t.render(Tt("Fetching the car\
ds…"));let e=(await Hk(t.signal)).filter(b=>!b.archived);if(!e.length)return t.render(xt("No cards yet",R("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),t.ready();let n=new Set((t.query.
get("codes")??"").split(",").filter(b=>e.some(w=>w.code===b))),s="50x25",o=C().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=b=>new URLSearchParams({codes:[...n].join(","),size:s,paper:C().paper,units:o,skip:a.trim()||"0",page:String(
b)}),h=(b,w)=>`/api/v1/labels/sheet.${b}?${c(w)}`;async function u(){let b=String(c(1));if(!n.size)l={key:b,pages:[],
wrong:""};else try{let{body:w}=await T("GET",`/labels/sheet.json?${c(1)}`,{signal:t.signal});l={key:b,pages:Array.
from({length:w.pages},(L,B)=>B+1),wrong:""}}catch(w){l={key:b,pages:[],wrong:w instanceof Error?w.message:String(
w)}}b===String(c(1))&&g()}let p=b=>{b(),g(),u()},m=b=>p(()=>n.has(b)?n.delete(b):n.add(b));function g(){let b=e.
filter(w=>`${w.code} ${w.title}`.toLowerCase().includes(r.trim().toLowerCase()));t.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${e.length}</span>
              </h2>
              ${e.length>8?A({name:"find",label:"Find",value:r,change:w=>{r=w,g()}}):d}
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${()=>p(()=>b.forEach(w=>n.add(w.code)))}>
                  All shown
                </button>
                <button
                  type="button"
                  class="button"
                  data-test="none"
                  @click=${()=>p(()=>n.clear())}>
                  None
                </button>
              </div>
              <ul class="ticks">
                ${b.map(w=>i`<li>
                      <label>
                        <input
                          type="checkbox"
                          data-test="pick-${w.code}"
                          .checked=${n.has(w.code)}
                          @change=${()=>m(w.code)} />
                        <span>${w.title}</span> <span class="soft">${w.code}</span></label
                      >
                    </li>`)}
              </ul>
            </section>
            <section class="panel">
              <h2>How</h2>
              ${K({name:"size",label:"Label size",value:s,options:Dk,change:w=>p(()=>s=w)})}
              ${Cs(()=>p(()=>{}))}
              ${K({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:w=>p(()=>o=
w==="inch"?"inch":"mm")})}
              ${A({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:w=>p(()=>a=w)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${Bs(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(w=>jk(w,l.pages.length,h))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}ft(g,t.signal),g(),await u(),t.ready()}function jk(t,e,n){let s=`labels-${t}`;return i`<figure class="label-sheet ${C().
paper.toLowerCase()}">
    <img src=${n("svg",t)} alt="Sheet ${t} of ${e} with labels" data-test="sheet-${t}" />
    <figcaption class="screen-only">
      <span>Sheet ${t} of ${e}, ${C().paper}. Print at 100 %, without fitting to the page.</span>
      <div class="buttons">
        <a class="button" download="${s}.svg" href=${n("svg",t)} data-test="sheet-svg-${t}"
          >SVG</a
        >
        <a class="button" download="${s}.png" href=${n("png",t)} data-test="sheet-png-${t}"
          >PNG</a
        >
      </div>
    </figcaption>
  </figure>`}async function Hk(t){try{let e=[];for(;;){let{body:n}=await T("GET",`/cards?limit=100&offset=${e.
length}`,{signal:t});if(e.push(...n.cards),e.length>=n.total||!n.cards.length)return e}}catch(e){let n=await Le().
catch(()=>[]);if(t.aborted||!n.length)throw e;return n}}var Dk,Rf=$(()=>{_();U();et();$t();J();rt();gr();Ct();
Dk=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function If(t){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${t.metal.name}</h2>
      <p>
        ${t.press?.name??"No press entered"}${t.press?i`, ${f(gt(t.press.force_kn))}`:d}.
        Held against ratings at a bend length of ${f(y(t.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${wn(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${P()}</span></th>
          ${t.dies.map(e=>i`<th scope="col" data-test="die-${e.code}">
                V ${H(e.v_opening_mm)}<span class="sub">${e.code}</span>
                <span class="sub"
                  >${e.rating_kn_per_m===null?"rating ?":f(Ot(e.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${t.rows.map(e=>i`<tr>
              <th scope="row">${H(e.thickness_mm)}<span class="sub">${e.gauge??""}</span></th>
              ${e.cells.map(Uk)}
            </tr>`)}
      </tbody>
    </table>
    ${Vk()}
    <ul class="chart-words">
      ${t.words.map(e=>i`<li>${e}</li>`)}
    </ul>
  </article>`}function Uk(t){return t.usable?i`<td
    class="cell ${t.level}"
    data-level=${t.level}
    data-die=${t.die}
    title=${t.why}>
    <span class="first"
      ><span class="force">${Yt(t,"force_kn_per_m").text}</span>${t.level==="stop"?d:i`<span class="expected">${qe(
t,"force_kn_per_m").text}</span>`}${t.level==="ok"?d:k(t.level,Gk(t))}</span
    >
    ${t.level==="stop"?d:i`<span class="rest"
            >${y(t.min_flange_mm).text} · R ${y(t.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${t.die} title=${t.why}>
      <span aria-hidden="true">–</span><span class="unseen">${t.why}</span>
    </td>`}function Gk({level:t,limit:e,share_percent:n}){return t==="unknown"?"rating?":`${e??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(t==="stop"?"over":"near")}function Vk(){let t=Ot(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${t}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${y(0).unit}.
    </li>
    <li>${k("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${k("caution","die 85 %")} over 80 % of a rating</li>
    <li>${k("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var Wf=$(()=>{_();ee();O();pe();V();Ht()});var Df={};tt(Df,{show:()=>qk});async function qk(t){t.title("Wall chart"),t.render(Tt("Working out the chart…"));
let e=(await lt("metals",t.signal)).items;if(!e.length)return t.render(xt("No metals yet",i`A chart needs one. ${R(
it.metals,i`<a href="/shop/metals">Metals</a>`)}`)),t.ready();let n=t.query.get("metal")??e[0].code,s=t.query.
get("bend_length")??"",o=null,a=null,{ask:r}=xe(async(u,p)=>(await T("GET",`/chart?${l()}`,{signal:p,timeout:2e4})).
body,u=>{o=u.answer??o,a=u.error??null,h(),t.ready()},t.signal);function l(){let u=new URLSearchParams({metal:n});
return s.trim()&&u.set("bend_length_mm",Q(s)),u}function c(){let u=new URLSearchParams({metal:n,...s.trim()?{bend_length:s.
trim()}:{}});history.replaceState(null,"",`/chart?${u}`),r(null),h()}function h(){t.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${z({name:"metal",label:"Metal",value:n,options:e.map(({code:u,name:p})=>[u,p]),change:u=>{n=u,c()}})}
          ${A({name:"bend_length",label:"Checked at a bend length of",value:s,unit:P(),keys:"decimal",placeholder:P()===
"mm"?"1000":"39.37",change:u=>{s=u,c()}})}
          ${Cs(h)} ${Bs("Print the chart")}
        </div>
        ${a?je(a):d}
        ${o?fr(If(o),{lying:!0,about:"Wall chart as it prints"}):a?d:Tt("Working out the chart…")}`)}ft(h,t.
signal),r(null,{now:!0})}var Ff=$(()=>{_();U();_t();et();O();Wf();J();rt();gr();Ct();no()});function jf(t,{fault:e,takeOut:n}){return i`<section class="panel" data-test="panel-benches">
    <h2>Benches <span class="soft">${t.length}</span></h2>
    ${e?i`<p class="wrong" role="alert" data-test="bench-fault">${e}</p>`:d}
    ${t.length?i`<ul class="plain-list bench-list">
            ${t.map(s=>i`<li data-test="bench-row" data-name=${s.name}>
                  <span><b>${Me(s.name)}</b> ${zk(s)}</span>
                  ${R("benches.remove",i`<button
                      type="button"
                      class="button"
                      data-test="take-bench-out"
                      aria-label="Take it out… ${Me(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      A large screen at a press becomes one when it opens the shop's address with
      <a href="/bench">/bench</a> behind it.
    </p>
  </section>`}var zk,Hf=$(()=>{_();Ye();dt();rt();zk=({code:t})=>t?i`<a href="/c/${t}">${W(t)}</a>`:i`<span class="soft">empty</span>`});function Uf(t){let e=t.map(({ring:o})=>Kt([o])),n=Ul-2*wr,s=Math.min(...e.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return t.map(({name:o,ring:a},r)=>Kk(o,a,e[r],s))}function Kk(t,e,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*wr),c=(Ul-(o-n)*r)/2-n*r,h=p=>c+p*r,u=p=>wr+(a-p)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${Ul} ${l}"
      role="img"
      aria-label="${t||"Outline"} to scale, ${br(o-n)} wide, ${br(a-s)} high"
      data-test="outline">
      ${Yk(n,o,h(0),l)}
      <path
        class="tool"
        d=${St(e)}
        transform="translate(${c} ${wr+a*r}) scale(${r})" />
      ${Jk(h(n),h(o),l-16,br(o-n))}
      ${Xk(u(s),u(a),h(o)+16,br(a-s))}
    </svg>
    ${t?i`<figcaption>${t}</figcaption>`:d}
  </figure>`}function Yk(t,e,n,s){return t>0||e<0?d:x`<path class="centre" d="M${n} 6V${s-6}"/>`}function Jk(t,e,n,s){
return x`<path class="dimension" d="M${t} ${n}H${e}M${t} ${n-5}v10M${e} ${n-5}v10"/>
    <text class="measure" x=${(t+e)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function Xk(t,e,n,s){
let o=(t+e)/2;return x`<path class="dimension" d="M${n} ${t}V${e}M${n-5} ${t}h10M${n-5} ${e}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function yr(t,e){return t?.length?i`<svg class="small-outline" viewBox=${Od(
e,2)} aria-hidden="true">
    <path class="tool" d=${St(t)} />
  </svg>`:d}function _r(t){let e=t.filter(n=>n?.length);return e.length?Kt(e):[0,0,1,1]}var Ul,wr,br,vr=$(()=>{
_();O();Fe();ee();Ul=360,wr=50;br=t=>f({text:H(t),unit:P()})});function Gf(t,e){let n=_r(e.map(s=>s.outline_mm));return i`<ul class="rack">
    ${e.map(s=>i`<li>
          <a
            href="/shop/${t}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${yr(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:d}</span
            >
          </a>
        </li>`)}
  </ul>`}var Vf=$(()=>{_();vr()});var qf={};tt(qf,{show:()=>Zk});async function Zk(t){t.title("Shop");let[{press:e,kept:n},s,o,a,r,l]=await Promise.
all([ua(t.signal),lt("punches",t.signal),lt("dies",t.signal),lt("holders",t.signal),lt("metals",t.signal),Ln(t.
signal).catch(()=>null)]),c={benches:l,fault:""};async function h(p){let m=Nn(p.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A screen that stands there asks which bench it is.`)){c.fault="";try{await zh(
p.name)}catch(g){c.fault=g instanceof Error?g.message:String(g)}c.benches=await Ln(t.signal).catch(()=>c.benches),
u()}}let u=()=>t.render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${R(it.press,"Changing anything needs the shop's server.")}
              </p>`:d}
        <div class="shop-grid">
          ${tx(e)} ${Gl("punches",s.items)} ${Gl("dies",o.items)}
          ${Gl("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${at("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(Qk)}
            </ul>
          </section>
          ${c.benches?jf(c.benches,{...c,takeOut:h}):d} ${ex()}
          ${at("/crew",i`<section class="panel" data-test="panel-crew">
              <h2><a href="/crew">Crew</a></h2>
              <p>Phones and screens that may see this shop.</p>
              <a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>
            </section>`)}
        </div>`);u(),t.ready()}function tx(t){return t?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${t.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${f(gt(t.force_kn))}</dd>
      </div>
      <div>
        <dt>Bed</dt>
        <dd>${f(y(t.bed_length_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Open height</dt>
        <dd>${f(y(t.open_height_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Holder in the ram</dt>
        <dd>${t.holder??"none"}</dd>
      </div>
    </dl>
  </section>`:i`<section class="panel" data-test="panel-press">
      <h2>Press</h2>
      <p>${k("unknown","No press yet")}</p>
      <p>Without its figures nothing can be checked against it.</p>
      ${R(it.press,i`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`}function Gl(t,e){let n=e.filter(o=>o.rating_kn_per_m===null).length,s=e.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${t}">
    <h2><a href="/shop/${t}">${Ge[t].title}</a> <span class="soft">${e.length}</span></h2>
    ${e.length?Gf(t,e):i`<p>None yet. ${R(it[t],i`<a href="/shop/${t}/+">Add the first</a>`)}</p>`}
    ${n?i`<p>${k("unknown",`${n} without a rating`)}</p>`:d}
    ${s?i`<p>${k("caution",`${s} worn or damaged`)}</p>`:d}
  </section>`}function ex(){let t=at("/copies",i`<a class="button wide" href="/copies" data-test="to-copies">Copies and export</a>`);
return at("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${t===d?"":", and away"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${t}
      </div>
      ${t===d?d:i`<p class="hint">
              Whether there is a good copy of the shop; all of it in one open file, out and in.
            </p>`}
    </section>`)}var Qk,zf=$(()=>{_();Ye();_t();O();Hf();V();rt();Vf();Qk=({code:t,name:e})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(t)}">${e}</a>
    ${at("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(t)}" data-test="learned-${t}"
        >What the metal taught</a
      >`)}
  </li>`});function Yf(t,{took:e,show:n,signal:s}){let o={file:"",busy:!1,choices:{...Kf},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(u){return a=u,Object.assign(o,{file:u.name,choices:{...Kf},layers:[]}),
h()}function c(u,p){return o.choices={...o.choices,[u]:p},o.choices.origin==="point"&&!o.choices.point?n():h()}
async function h(){if(!a)return;let u=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>nx)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:p}=await xo(
`/outlines/dxf?${sx(o.choices,t)}`,a,"image/vnd.dxf",s);if(u!==r)return;Object.assign(o,{answer:p,layers:p.layers}),
e(p)}catch(p){if(u!==r||s.aborted)return;if(o.wrong=p instanceof Error?p.message:String(p),p instanceof M&&p.outline){
let{code:m,layers:g}=p.outline;Object.assign(o,{fault:p.outline,code:m,layers:g.length?g:o.layers})}}o.busy=!1,
n()}return{state:o,choose:l,set:c}}function sx(t,e){let n=Object.entries(t).filter(([s,o])=>o&&(s!=="point"||t.
origin==="point"));return new URLSearchParams([["kind",e],...n])}var Kf,nx,Jf=$(()=>{U();Kf={units:"",layer:"",
origin:"rule",point:"",turn_deg:"0",mirror:"no"},nx=2e6});async function Ps(t,e){let n=await t.read(e),s={kept:n,draft:t.toDraft(n??t.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>t.fromDraft(s.draft,s.kept??{}),a=()=>t.draw(s),r=()=>t.boxes.filter(({name:b,needed:w})=>w&&b in
s.draft&&!s.draft[b].trim());function l(b,w){s.draft={...s.draft,[b]:w},delete s.wrong[b],he(()=>"Leave withou\
t saving what you typed?"),t.preview?.(o()),a()}async function c(b){let w=b?Object.fromEntries(r().map(({name:B})=>[
B,["This is needed."]])):{},L=Object.keys(w).length===0;if(Object.assign(s,{busy:L,wrong:w,others:[],clash:null}),
a(),!L)return ne(w);try{await t.write(b),he(null),t.done(b);return}catch(B){await h(B)}s.busy=!1,a(),ne(s.wrong)}
async function h(b){if(b instanceof M&&b.status===412){let w=s.kept;s.kept=await t.read(e);let L=s.kept?t.toDraft(
s.kept):{},B=rh(w,s.kept)?"others changed":s.kept?"this changed":"taken out";s.clash={how:B,differences:B==="t\
his changed"?Za(s.draft,L,t.boxes):[]}}else if(b instanceof M&&Object.keys(b.errors).length){let{byName:w,others:L}=sh(
b.errors,t.boxes.map(({name:B})=>B));Object.assign(s,{wrong:w,others:L})}else s.others=[`Not saved: ${b instanceof
Error?b.message:b} What you typed is still here.`]}function u(){Object.assign(s,{draft:t.toDraft(s.kept??t.blank),
clash:null}),he(null),t.preview?.(o()),a()}let p=new Map;function m(b,w){let L=p.get(w)??Yf(b,{signal:e,show:a,
took:B=>g(w,B)});return p.set(w,L),L}function g(b,{points_mm:w,height_mm:L}){b==="points_mm"&&s.draft.height_mm===
""&&l("height_mm",q(L)),l(b,th(w))}return t.preview?.(o()),{reader:m,state:s,change:l,takeTheirs:u,show:a,save:()=>c(
o()),takeOut:()=>c(null)}}var kr=$(()=>{U();_t();ue();Jf();Bt();O();xs();J()});function Sr(t,e,n){let s=[],{ask:o}=xe(async(a,r)=>(await T("POST","/outline",{body:{kind:t,...rx(t,a)},signal:r})).
body,({answer:a,error:r})=>{a&&(s=Xf(a));let l=r instanceof M&&r.outline?.lines_mm.some(c=>c.length>1)?r.outline:
null;e({parts:s,checks:ax(a),wrong:r?ix(r):[],fault:l})},n);return a=>{ox(t,a)&&o(a)}}function ox(t,e){let n={
punch:"punches",die:"dies",holder:"holders",press:"press"}[t];return Ue(n).filter(({type:s,blank:o,when:a})=>[
"length","number"].includes(s)&&o===void 0&&(!a||a(e))).every(({name:s})=>e[s]!==void 0)&&(e.shape!=="multi_v"||
e.openings.every(s=>s.v_opening_mm&&s.angle_deg&&s.shoulder_radius_mm))}function Xf({outline_mm:t,ram:e,bed:n}){
return[{name:"",ring:t},{name:"Ram",ring:e},{name:"Bed",ring:n}].filter(({ring:s})=>s?.length)}function rx(t,e){
return t==="press"?xn(e):{...xn(e),code:e.code||"new"}}function ix(t){if(!(t instanceof M))return["The drawing\
 waits: the shop's server does not answer."];let e=[...new Set(Object.values(t.errors).flat())];return e.length?
e:[t.message]}var xr,ax,Vl=$(()=>{U();_t();ue();no();xr=t=>({parts:Xf({...t,...t?.outlines_mm}),checks:[],wrong:[],
fault:null});ax=t=>(t?.checks??[]).filter(({code:e})=>!e.endsWith("rating-unknown"))});function Tr({state:t,change:e},n){let s=n.taken(t.draft.code)?["This code is in use already."]:t.wrong.code;return A(
{name:"code",label:"Code",value:t.draft.code,change:o=>e("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function Mr({state:t,takeOut:e},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return ht(it[n.kind])?i`<div role="alert">
      ${t.others.map(a=>i`<p class="wrong-line" data-test="not-saved">${a}</p>`)}
    </div>
    <div class="buttons">
      <button
        class="button next"
        data-test="save"
        ?disabled=${t.busy||n.taken(t.draft.code??"")}>
        ${t.busy?"Saving…":`Save the ${s}`}
      </button>
      <a class="button" href="/shop/${n.kind}">Back to the list</a>
      ${n.isNew?d:i`<button
              type="button"
              class="button"
              data-test="take-out"
              ?disabled=${t.busy}
              @click=${()=>confirm(o)&&e()}>
              Take it out…
            </button>`}
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var Rs,
Ar=$(()=>{_();_t();Et();J();Rs=(t,e)=>ht(t)?e:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${e}</fieldset>`});function Qf(t,e){if(!t?.systematic)return d;let n=t.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
    <h2>The gauge’s zero</h2>
    <p>
      <b
        >${t.flanges} measured flanges agree: the gauge stands
        ${f(y(Math.abs(t.zero_mm),{digits:2}))} too far ${n}.</b
      >
      Set its zero by as much at the press. Nothing here changes until you say that it is set; flanges
      measured before then count no more.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="gauge-zero-set" @click=${e}>The zero is set</button>
    </div>
  </section>`}var Zf,tg=$(()=>{_();U();O();Zf=t=>T("GET","/press/gauge",{signal:t}).then(({body:e})=>e,()=>null)});function og(t,{metals:e,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=t,h=m=>g=>{r[m]=g,delete l[m]},
u=(m,g)=>({name:m,label:g,value:r[m]??"",wrong:l[m],change:h(m)}),p=(m,g,b)=>i`<div class="broad">${z({...u(m,
g),options:[["","Choose"],...b]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find it with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one comes out, the more bed and ram give way.
    </p>
    <form
      novalidate
      @submit=${m=>{m.preventDefault(),cx(t,o)}}>
      <div class="fields">
        ${p("metal","Metal",e)} ${p("die","Die",n)} ${p("punch","Punch",s)}
        ${sg.map(([m,g,b])=>A({...u(m,g),unit:P(),keys:"decimal",hint:b}))}
        ${ng.map(([m,g])=>A({...u(m,g),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${t.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${t.busy}>Work it out</button>
      </div>
    </form>
    ${c?lx(c,a):d}
  </details>`}function lx(t,e){let n=s=>f(y(s,{digits:2}));return i`<div data-test="strips-found" role="status">
    <p>
      <b>About ${n(t.deflection_mm)}</b> in the middle at full force over the whole bed, between
      ${n(t.deflection_mm_low)} and ${n(t.deflection_mm_high)}: the middle came out
      ${f(S(t.middle_open_deg))} more open.
    </p>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="strips-take"
        @click=${()=>e(q(t.deflection_mm))}>
        Put it in the box
      </button>
    </div>
  </div>`}async function cx(t,e){if(!t.busy){Object.assign(t,{busy:!0,wrong:{},general:"",found:null}),e();try{
t.found=(await T("POST","/press/strip-test",{body:dx(t.typed)})).body}catch(n){t.wrong=n instanceof M?n.errors:
{},t.general=n instanceof Error?n.message:String(n)}t.busy=!1,e()}}function dx(t){let e={metal:t.metal,die:t.die,
punch:t.punch};for(let[n]of sg)e[n]=Q(t[n]??"");for(let[n]of ng)e[n]=yo(t[n]??"");return e}var eg,ng,sg,ag=$(()=>{
_();U();Ns();O();J();eg=()=>({typed:{},wrong:{},general:"",busy:!1,found:null}),ng=[["left_deg","Left"],["midd\
le_deg","Middle"],["right_deg","Right"]],sg=[["thickness_mm","Thickness of the strips",""],["strip_length_mm",
"Length of the bend","All three alike, at most a quarter of the bed."],["end_mm","Outer strips from the bed’s \
end","To the middle of the strip, left and right alike."]]});function Or({code:t,lines_mm:e,edges:n,marks_mm:s}){let o=Kt([...e,s]),a=$n(o,ql-2*rg,zl-2*rg),[r,l]=a([o[2],o[1]]),
c=[(ql-r)/2,(zl-l)/2],h=m=>{let[g,b]=a(m);return[g+c[0],-(b+c[1])]},u=!["open","branching"].includes(t),p=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${ql} ${zl}"
    role="img"
    aria-label="The outline as far as it was understood, ${p}"
    data-test="outline-fault">
    ${e.map(m=>x`<path class="fault-line" d=${Xs((u?[...m,m[0]]:m).map(h))}/>`)}
    ${n.map(m=>hx(e[0],m,h))} ${s.map(m=>ux(h(m)))}
  </svg>`}function hx(t,e,n){let[s,o]=[t[e-1],t[e%t.length]].map(n);return x`<path class="fault-edge" d=${Xs([
s,o])}/>
    ${ig(s,e)}${ig(o,e%t.length+1)}`}var ql,zl,rg,ig,ux,Kl=$(()=>{_();Fe();ql=360,zl=300,rg=30;ig=([t,e],n)=>x`<text class="fault-number" x=${t} y=${-e-
9} text-anchor="middle" font-size="19">${n}</text>`,ux=([t,e])=>x`<g class="fault-mark" data-test="fault-mark"><circle cx=${t} cy=${-e} r="10"/>
    <path d="M${t-14} ${-e}h28M${t} ${-e-14}v28"/></g>`});function lg(t,{state:e,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:h,layers:u}=e,p=`dx\
f-${t}`,m=(g,b,w)=>z({name:`${p}-${g}`,label:b,value:h[g],options:w,change:L=>s(g,L)});return i`<div class="dxf broad" data-test=${p}>
    <label class="button dxf-file" for="${p}-file"
      >${o?"Read another DXF file":"Read a DXF file"}
      <input
        id="${p}-file"
        data-test="${p}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${({target:g})=>{g.files?.[0]&&n(g.files[0]),g.value=""}} />
    </label>
    ${o?i`<div role="status">
              ${a?i`<p class="hint">Reading ${o}…</p>`:d}
              ${r?i`<p data-test="${p}-read">
                      <b>${o}</b>, read in ${r.units}: ${Yl(r.width_mm)} wide,
                      ${Yl(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${Yl(r.within_mm)}. ${r.rule}${$x(r)}
                    </p>`:d}
              ${l?i`<p class="wrong" data-test="${p}-wrong">${l}</p>`:d}
            </div>
            ${c?.lines_mm.length?Or(c):d}
            <div class="fields">
              ${m("units","Drawn in",px)}
              ${u.length>1||h.layer?m("layer","Layer",[["","all"],...u.map(g=>[g,g])]):d}
              ${m("origin","0, 0 is",mx)}
              ${h.origin==="point"?A({name:`${p}-point`,label:"Point number",value:h.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:g=>s("point",g)}):d}
              ${m("turn_deg","Turned",fx)} ${m("mirror","Mirrored",gx)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function $x({left_out:t}){return t.length?` Left out: ${t.map(({kind:e,count:n})=>`${n} ${e}`).join(
", ")}.`:""}var px,mx,fx,gx,Yl,cg=$(()=>{_();Kl();O();J();px=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],mx=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
fx=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],gx=[["no","no"],
["yes","front to back"]];Yl=t=>f(y(t,{digits:2}))});function dg({draft:t,change:e,wrong:n}){let s=t.openings??"",o=_n(s),a=n.openings??[];return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((l,c)=>bx(l,c,{rows:o,said:a,up:t.up||"1",set:h=>e("openings",Yd(s,c,h)),raise:()=>e("up",String(c+
1)),drop:()=>r(c)}))}
    ${a.filter(l=>!/^V \d+: /.test(l)).map(l=>i`<p class="wrong" data-test="wrong-openings">${l}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>e("openings",Jd(s))}>
      Add a V
    </button>
  </div>`;function r(l){let c=Number(t.up||"1");e("openings",Xd(s,l)),(c>l+1||c>=o.length)&&e("up",String(Math.
max(c-1,1)))}}function bx(t,e,{rows:n,said:s,up:o,set:a,raise:r,drop:l}){let c=e+1,h=s.filter(g=>g.startsWith(
`V ${c}: `)).map(g=>g.slice(`V ${c}: `.length)),u=g=>h.filter(b=>b.startsWith(`${g}: `)).map(b=>b.slice(g.length+
2)),p=h.filter(g=>!Object.keys(to).some(b=>g.startsWith(`${b}: `))),m=(g,b,w,L="")=>A({name:`opening-${c}-${to[g]}`,
label:b,unit:w,placeholder:L,value:t[to[g]],keys:g==="code"?"text":"decimal",change:B=>a({[to[g]]:B}),wrong:u(
g)});return i`<fieldset class="opening" data-test="opening-${c}">
    <legend>V ${c}</legend>
    <div class="opening-head">
      <label class="tick"
        ><input
          type="radio"
          name="up"
          value=${c}
          data-test="up-${c}"
          .checked=${vt(o===String(c))}
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
      ${m("v_opening_mm","V opening",P())} ${m("angle_deg","Angle","°")}
      ${m("shoulder_radius_mm","Shoulder radius",P())}
      ${z({name:`opening-${c}-face`,label:"Face",value:t.face||"top",options:Kd,change:g=>a({face:g}),wrong:u(
"face")})}
      ${m("centre_mm","Off the middle",P(),"0")}
      ${m("rating_kn_per_m","Rating","kN/m","as the block")} ${m("code","Code","","by itself")}
    </div>
    ${p.map(g=>i`<p class="wrong">${g}</p>`)}
  </fieldset>`}var hg=$(()=>{_();Pe();yi();O();J()});function Er({kind:t,draft:e,change:n,wrong:s,preview:o,options:a={},first:r=d,reader:l}){return i`<div class="workbench">
    ${oa[t].map((c,h)=>i`<section class="panel ${c.part}">
          <h2>${c.title}</h2>
          ${h===0?r:d} ${c.part==="outline"?wx(o):d}
          <div class="fields">
            ${c.fields.filter(({when:u,hidden:p})=>!p&&(!u||u(e))).map(u=>u.type==="openings"?dg({draft:e,change:n,
wrong:s}):yx(u,e[u.name]??"",p=>n(u.name,p),{wrong:s[u.name],options:a[u.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function wx(t){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${t?.fault?Or(t.fault):t?.parts.length?i`<div class="outlines">${Uf(t.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${t?.wrong.map(e=>i`<p class="wrong" data-test="outline-wrong">${e}</p>`)}
    ${t?yt(t.checks,{quiet:!0}):d}
  </div>`}function yx(t,e,n,{wrong:s=[],options:o=t.options,reader:a}){let{name:r,label:l,type:c,hint:h=""}=t;
if(c==="pick"||c==="yes"){let b=t.blank?[["",t.blank],...o??[]]:o??[];return ug(t,z({name:r,label:l,value:e,options:b,
change:n,wrong:s}))}if(c==="points"||c==="note"){let b=t.dxf?lg(r,a(t.dxf,r)):d;return _x(t,e,i`${b}${vx(t,e,n,
s)}`)}let u=pg(t),p=c==="number"||c==="length"||c==="rating"?"decimal":"text",m=c==="rating"?kx(e,h):c==="leng\
ths"?xx(e,h):h,g=A({name:r,label:l,value:e,change:n,wrong:s,unit:u,keys:p,hint:m,placeholder:t.blank??""});return c===
"rating"?i`<div class="broad">
      ${g}${e.trim()?d:k("unknown",`${l} unknown`)}
    </div>`:ug(t,g)}function _x({folded:t,label:e},n,s){return t?i`<details class="broad" ?open=${!!n}>
        <summary>${e}</summary>
        ${s}
      </details>`:s}function vx(t,e,n,s){let{name:o,label:a,hint:r,type:l}=t;return Mn({name:o,label:a,value:e,
change:n,wrong:s,hint:r,unit:pg(t),lines:l==="points"?7:2})}function kx(t,e){let n=Pt(t);return n===null?`${e}\
 ${Qd}`:C().units!=="inch"?e:`${typeof n=="number"?`That is ${f(Ot(n))}. `:""}May be typed with its unit: 25 s\
hort tons/ft.`}function xx(t,e){let n=t.split(/[,;\n]/).filter(s=>s.trim()).length;return n?`${e} ${n===1?"1 p\
iece.":`${n} pieces.`}`:e}var ug,pg,Jl=$(()=>{_();Kl();vr();ue();et();Ti();O();V();cg();J();hg();ug=({broad:t,
type:e},n)=>t||e==="lengths"?i`<div class="broad">${n}</div>`:n;pg=({type:t,unit:e=""})=>["length","lengths","\
points"].includes(t)?P():e});var mg={};tt(mg,{show:()=>Sx});async function Sx(t){let e=ht(it.press),s=(await lt("holders",t.signal)).items.
map(({code:w,name:L})=>[w,`${w}, ${L}`]),o=async w=>(await lt(w,t.signal)).items.flatMap(Hi).map(({code:L,name:B})=>[
L,B?`${L}, ${B}`:L]),a=eg(),[r,l,c,h]=e?await Promise.all([Zf(t.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],u=null,p=null,m=await Ps({async read(w){let L=await(e?Li:ua)(w);return u=L.etag,L.press??void 0},
write:w=>ah(w,u),blank:{},boxes:Ue("press"),toDraft:w=>ra("press",w),fromDraft:(w,L)=>({...ia("press",w,L),gauge_zeroed_at:L?.
gauge_zeroed_at??null}),preview:e?Sr("press",w=>{p=w,m.show()},t.signal):void 0,draw:()=>m&&b(),done(){Z("The \
press is saved."),pt("/shop")}},t.signal);t.title("The press"),e||(p=xr(m.state.kept));let g=()=>{Object.assign(
m.state.kept,{gauge_zeroed_at:new Date().toISOString()}),m.save()};function b(){let{state:w,change:L,save:B}=m;
t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${w.kept?.name??"The press"}</h1>
        ${e?i`<p>
                ${w.kept?"Take every figure from the press's own plate and manual.":"No press yet. Take every \
figure from its own plate and manual."}
                What is not on the plate may stay empty where the box says unknown.
              </p>`:d}
        ${w.clash?ks(w.clash,"press",{saveMine:B,takeTheirs:m.takeTheirs}):d}
        ${Qf(r,g)}
        <form
          novalidate
          @submit=${N=>{N.preventDefault(),B()}}>
          ${Rs(it.press,Er({kind:"press",draft:w.draft,change:L,wrong:w.wrong,preview:p,reader:m.reader,options:{
holder:s}}))}
          <div role="alert">
            ${w.others.map(N=>i`<p class="wrong-line" data-test="not-saved">${N}</p>`)}
          </div>
          <div class="buttons">
            ${e?i`<button class="button next" data-test="save" ?disabled=${w.busy}>
                    ${w.busy?"Saving…":"Save the press"}
                  </button>`:d}
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>
        ${e&&w.kept?og(a,{metals:l,dies:c,punches:h},{draw:b,take:N=>L("deflection_mm",N)}):d}`)}b(),t.ready()}
var fg=$(()=>{_();_t();ue();kr();oe();Vl();Et();Bt();xs();Ar();tg();On();ag();Jl()});function $g(t,e,n,s){let{angles:o,wrong:a}=_o(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h}=kn(
e),u={id:t,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h,die:n.die,punch:n.punch,...o};u.set_angle_deg=
s.set.trim()?Mx(s.set,a):n.set_angle_deg;for(let[p,m]of Tx)s[p].trim()&&(u[m]=Q(s[p]));return s.lot.trim()&&(u.
lot=s.lot.trim()),s.note.trim()&&(u.note=s.note.trim()),C().name&&(u.by=C().name),{body:u,wrong:a}}function Mx(t,e){
let{angles:n}=_o({...Lr,one:t});return n.measured_deg===void 0&&(e.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var Lr,Tx,gg,bg=$(()=>{da();Ns();et();O();Lr={one:"",left:"",middle:"",
right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:"",depth:"",flat:"",leftFlange:"",rightFlange:""},
Tx=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_left_mm"],["rightFlange","flang\
e_right_mm"],["radius","radius_mm"]],gg=t=>Object.entries(t).some(([e,n])=>e!=="places"&&e!=="lot"&&n.trim()!==
"")});function _g(t,e){let n=Math.min((wg-2*yg-34)/t,170/e),[s,o]=[t*n,e*n],[a,r]=[yg+34,24],[l,c,h]=[a+s,r+o,a+s/2],
u=f(y(t,{digits:0})),p=f(y(e,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${wg} ${Math.round(c+52)}"
    role="img"
    aria-label="A strip ${u} long and ${p} wide, bent in its middle"
    data-test="strip">
    <path class="sheet" d="M${a} ${r}H${l}V${c}H${a}Z" />
    <path class="fold" d="M${h} ${r-14}V${c+14}" />
    <path
      class="dimension"
      d="M${a} ${c+20}H${l}M${a} ${c+15}v10M${l} ${c+15}v10" />
    <text x=${h} y=${c+44} text-anchor="middle" font-size="18">${u}</text>
    <path
      class="dimension"
      d="M${a-16} ${r}V${c}M${a-21} ${r}h10M${a-21} ${c}h10" />
    <text
      x=${a-26}
      y=${(r+c)/2}
      text-anchor="middle"
      font-size="18"
      transform="rotate(-90 ${a-26} ${(r+c)/2})">
      ${p}
    </text>
  </svg>`}var wg,yg,vg=$(()=>{_();O();wg=400,yg=30});function Sg({before:t,after:e,points:n=[],size:s=1,words:o}){let a=[t.low,t.high,e.low,e.high,...n.map(u=>u.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return d;let c=ds(r,l,{from:xg,to:kg-xg,size:s,most:5}),{at:h}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${kg} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(u=>x`<path class="faint" d="M${u.at} 8V84"/>
          <text class="quiet" x=${u.at} y="104" text-anchor="middle"
            font-size=${Ax}>${u.text}</text>`)}
    <path
      class="was"
      d="M${h(t.low)} 24H${h(t.high)}M${h(t.low)} 17v14M${h(t.high)} 17v14M${h(t.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${h(e.low)} 52H${h(e.high)}" data-test="band-after" />
    <path class="now-middle" d="M${h(e.nominal)} 42v20" />
    ${n.map(u=>Ox(h(u.value),74,u))}
  </svg>`}function Ox(t,e,{id:n,outlier:s,weight:o=1}){return s?x`<path class="trial-odd" d="M${t-6} ${e-6}l12 12M${t+
6} ${e-6}l-12 12" data-test="band-point"
        data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${t} cy=${e} r=${o<.25?3:6} data-test="band-point"
        data-id=${n}/>`}var kg,xg,Ax,Tg=$(()=>{_();Ui();kg=340,xg=24,Ax=17});function Nr(t){if(!t.length)return i`<p data-test="no-figures">No figure changed.</p>`;let e=t.flatMap(s=>s.points??
[]),n=["Thin: before. Thick: now. Rings: trials"];return e.some(s=>(s.weight??1)<.25)&&n.push("small ones, of \
other sheet or tools, count little"),e.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${t.
map(Ex)}</div>
    ${e.length?i`<p class="hint">${n.join("; ")}.</p>`:d}`}function Ex(t){let{what:e,before:n,after:s,trials:o,
points:a=[]}=t,r=c=>Lx(t.unit,c),l=`${e[0].toUpperCase()}${e.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${e}>
    <h3>
      ${l} <small>${o===0?"no trials":o===1?"1 trial":`${o} trials`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${Mg(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${Mg(s,r)}</dd>
      </div>
    </dl>
    ${Sg({before:n,after:s,points:a,size:t.unit==="mm"&&P()==="in"?de:1,words:`${l}: before ${Ag(n,r)}, now ${Ag(
s,r)}, ${a.length} trials drawn.`})}
  </section>`}function Lx(t,e){return t==="deg"?S(e,2):t==="mm"?y(e,{digits:2}):{text:nt(e,3),unit:t}}var Mg,Ag,
Xl=$(()=>{_();Tg();O();Mg=(t,e)=>i`<b>${f(e(t.nominal))}</b>
    <span class="band">${e(t.low).text} to ${e(t.high).text}</span>`,Ag=({low:t,high:e},n)=>`${n(t).text} to ${f(
n(e))}`});function Bg(t,{metals:e,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:h}=t,u=(m,g,b={})=>A(
{name:m,label:g,value:r[m],wrong:I(c,m),change:w=>Object.assign(r,{[m]:w}),unit:P(),next:!0,...b}),p=(m,g,b)=>z(
{name:m,label:g,value:r[m],options:b,wrong:I(c,m),change:w=>{Object.assign(r,{[m]:w}),a()}});return i`<form novalidate data-test="choose-form" @submit=${Cg(
o)}>
    <p>One strip, bent and measured, makes the book’s figures those of your metal and your tools.</p>
    ${Ng(t)}
    <div class="test-fields">
      ${p("metal","Metal",e.map(({code:m,name:g})=>[m,g]))}
      ${u("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${u("bend_length_mm","Strip’s width, along the bend")}
      ${u("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${p("die","Die",Eg(n,r.die))}
      ${p("punch","Punch",Eg(s,r.punch))}
      ${A({name:"lot",label:"Lot or heat",value:l.lot,wrong:I(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${h}>
        ${h?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function Eg(t,e){let n=t.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=e&&!t.some(({code:o})=>o===e)?
[[e,`${e} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function Pg({bend:t},{go:e}){let n=t.
worst!=="stop"&&t.die&&t.punch,s=f(y(Cx,{digits:0}));return i`${rs(t.checks)}
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
            Cut a strip <b>${f(y(t.bend_length_mm,{digits:0}))}</b> wide and about
            <b>${f(y(Og,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
            edges cut.
          </li>
          <li>
            Measure its <b>length</b> before you bend it, with a calliper or a good rule, and write it down.
          </li>
          <li>Lay it in the middle of the tools, square to the gauge, and bend it in its middle.</li>
        </ol>
        <div class="tools-line" data-test="tools-line">
          Die <b>${t.die??"none"}</b>, punch <b>${t.punch??"none"}</b>
        </div>
        <div class="set-figures">
          ${Ut("Angle to set",S(t.set_angle_deg),"set-angle")}
          ${Ut("Depth",y(t.punch_depth_mm,{digits:2}),"punch-depth")}
        </div>
        ${as(t.first_hit)}
        <div class="figures">${so("Allow for",t)}</div>
      </div>
      <div class="strip-pictures">
        ${_g(Og,t.bend_length_mm)}
        ${t.drawing?me(t.drawing,{pose:"before",close:!0,opening:t.v_opening_mm,gauge:"",angle:t.set_angle_deg,
words:"The strip on the die before the bend"}):d}
      </div>
    </div>
    ${is(t.checks)} ${ze(t.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>e("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>e("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function Rg(t,{go:e,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=t,c=(u,p,m,g={})=>A({name:p,
label:m,value:o[u],wrong:I(a,p),change:b=>Object.assign(o,{[u]:b}),unit:P(),next:!0,...g}),h={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${Cg(n)}>
    ${Ng(t)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${f(S(r.included_angle_deg))}. The angle is
      needed; the rest teaches more.
    </p>
    <div class="measures">
      <fieldset class="panel">
        <legend><span class="badge-word">1</span> Angle</legend>
        <div class="trial-angles ${o.places}">
          ${o.places==="one"?c("one","measured_deg","Angle measured",h):[c("left","left_deg","Left",h),c("midd\
le","middle_deg","Middle",h),c("right","right_deg","Right",h)]}
        </div>
        ${K({name:"places",label:"Measured at",value:o.places,options:[["one","One place"],["three","Left, mid\
dle, right"]],change:u=>{Object.assign(o,{places:u}),s()}})}
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
      <summary>Set otherwise, depth shown, note</summary>
      <div class="test-fields">
        ${c("set","set_angle_deg","Angle that was set",{...h,placeholder:S(r.set_angle_deg).text,hint:"Leave i\
t if it was set as shown."})}
        ${c("depth","punch_depth_mm","Depth the press showed",{hint:"Travel from first touch of the flat sheet\
, if the press shows it."})}
        ${c("note","note","Note",{unit:"",hint:"Grain, coating, anything odd."})}
      </div>
    </details>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>e("bend")}>Back</button>
      <button class="button next" data-test="done" ?disabled=${l}>${l?"Sending…":"Done"}</button>
    </div>
  </form>`}function Ig({answer:t,form:e,busy:n},s,{again:o}){if(!t)return d;let a=s.find(({code:h})=>h===e.metal)?.
name??e.metal,{teaches:r,asks:l,words:c}=t.test_bend;return i`<h2>What it taught <small>${a}</small></h2>
    <div class=${t.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${t.words.map(h=>i`<p>${h}</p>`)}
    </div>
    ${r?d:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${k("caution")} <b>Kept, but it does not count.</b> ${c}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(e.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:d}
          </section>`}
    ${t.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${k("caution","Odd one out")}</h2>
            ${t.outliers.map(({words:h})=>i`<p>${h}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(e.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:d}
    ${Nr(t.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${t.cards.length?i`<ul class="rows">
              ${t.cards.map(Bx)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(e.metal)}" data-test="to-learned"
        >All it taught</a
      >
    </div>`}var Nx,Og,Cx,Lg,Ng,Cg,Bx,Wg=$(()=>{_();oo();vg();O();pe();J();ao();V();Tn();Xl();Xe();se();Nx=[["c\
hoose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Learned"]],Og=300,Cx=102,Lg=t=>i`<ol class="stages" aria-label="Stages">
    ${Nx.map(([e,n])=>i`<li aria-current=${e===t?"step":"false"}>${n}</li>`)}
  </ol>`,Ng=({general:t})=>t?i`<p class="wrong" role="alert" data-test="wrong">${t}</p>`:d,Cg=t=>e=>{e.preventDefault(),
t()};Bx=({code:t,title:e,changes:n})=>i`<li class="row" data-test="changed-card" data-code=${t}>
    <a href="/c/${t}">
      <span class="lead">${e||t}</span> <span class="code">${t}</span>
      <span class="more">${n.join("; ")}</span>
    </a>
  </li>`});var Dg={};tt(Dg,{show:()=>Rx});async function Rx(t){t.title("Test bend"),t.render(Tt("Looking into the crib…"));
let[e,n,s]=await Promise.all(["metals","dies","punches"].map(async b=>(await lt(b,t.signal)).items)),o=la(t.query);
o.metal||=e[0]?.code??"",o.bend_length_mm||=P()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...Lr},bend:null,
answer:null,id:Wt(),wrong:{},general:"",busy:!1};he(()=>a.stage==="measure"&&gg(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>t.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${Lg(a.stage)} ${l()}
      </article>`);function l(){let b={draw:r,go:c,choose:h,send:u,again:p};return a.stage==="bend"?Pg(a,b):a.
stage==="measure"?Rg(a,b):a.stage==="taught"?Ig(a,e,b):Bg(a,{metals:e,dies:n,punches:s},b)}function c(b){Object.
assign(a,{stage:b,wrong:{},general:""}),r(),scrollTo(0,0)}async function h(){let b=eo(o);if(b.length)return m(
Object.fromEntries(b.map(w=>[w,Px[w]])));history.replaceState(null,"",`/shop/test-bend?${ca(o)}`),await g(async()=>{
a.bend=(await T("POST","/bend",{body:kn(o),signal:t.signal})).body,c("bend")})}async function u(){let{body:b,wrong:w}=$g(
a.id,o,a.bend,a.typed);if(Object.keys(w).length)return m(w);await g(async()=>{a.answer=(await T("POST","/test-\
bends",{body:b,timeout:2e4})).body,c("taught"),j()})}function p(){Object.assign(a,{typed:{...Lr,lot:a.typed.lot,
places:a.typed.places},answer:null,id:Wt()}),h()}function m(b,w=""){Object.assign(a,{wrong:b,general:w}),r(),ne(
b)}async function g(b){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await b()}catch(w){return t.
signal.aborted?void 0:(a.busy=!1,m(w instanceof M?w.errors:{},Ix(w)))}a.busy=!1,r()}}ft(r,t.signal),r(),t.ready()}
function Ix(t){return t instanceof M?t.message:t instanceof F?"The shop’s server does not answer. What you typ\
ed stays here: try again.":String(t)}var Px,Fg=$(()=>{_();U();da();_t();Nt();Bt();et();bt();bg();O();J();Ct();
Wg();Px={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as 1.98."],
bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you want, su\
ch as 90."]}});function jg(t){if(!t)return d;let{set_by:e,offset_mm:n,results:s,strip:o}=t;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
t.apart)}>
    <h2>
      The press <small>${e?Wx[e]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?Dx(n,s):d} ${t.words.map(a=>i`<p>${a}</p>`)}
    ${o?at("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${Fx(o)}>Bend this strip</a>
            </p>`):d}
  </section>`}function Dx({low:t,nominal:e,high:n},s){let o=l=>y(Math.abs(l),{digits:2}),a=l=>`${f(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(e).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(e)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(t)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var Wx,Fx,Hg=$(()=>{_();O();rt();Wx={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};Fx=
({metal:t,thickness_mm:e,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:t,thickness:`${e} mm`,die:n})}`});var Ug={};tt(Ug,{show:()=>jx});async function jx(t){let{metal:e}=t.params,n=`metal=${encodeURIComponent(e)}`;t.
title("What the metal taught");let{items:s}=await lt("metals",t.signal),o=s.find(({code:h})=>h===e);if(!o)return t.
title("No such metal"),t.render(xt(`No metal ${e} in the shop`,i`<a href="/shop/metals">Metals</a>`)),t.ready();
t.title(`What ${o.name} taught`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){let[h,u]=await Promise.
all([T("GET",`/learned?${n}`,{signal:t.signal}),T("GET",`/test-bends?${n}`,{signal:t.signal})]);a.groups=h.body.
groups,a.press=h.body.press,a.evidence=[...u.body.evidence].sort((p,m)=>p.made_at<m.made_at?1:-1)}async function l(h,u){
if(!a.busy){a.busy=h.id,c();try{let{body:p}=await T("POST",`/evidence/${encodeURIComponent(h.id)}/${u}`,{body:C().
name?{by:C().name}:{},timeout:2e4});await r(),Z(Ux(u,p.cards)),j()}catch(p){if(t.signal.aborted)return;if(!(p instanceof
M||p instanceof F))throw p;Z(p.message)}a.busy="",c()}}let c=()=>t.render(i`<p class="crumb">
          <a href="/shop">Shop</a> / <a href="/shop/metals/${encodeURIComponent(e)}">${o.name}</a>
        </p>
        <div class="head-line">
          <h1>What the metal taught <span class="soft">${o.name}</span></h1>
          ${at("/shop/test-bend",i`<a class="button next" href="/shop/test-bend?${n}" data-test="to-test-bend"
              >Test bend</a
            >`)}
        </div>
        ${a.evidence.length?i`<div class="learned" data-test="learned" aria-busy=${a.busy?"true":"false"}>
                <section class="learned-figures">
                  ${jg(a.press)} ${Gx(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Trials</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(h=>Vx(h,a.busy,l))}
                  </ul>
                </section>
              </div>`:xt("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),ft(c,t.signal),c(),t.ready()}function Ux(t,e){let n=Hx[t];return e.
length?`${n} ${e.length===1?"One card":`${e.length} cards`} would now plan differently: ${e.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function Gx(t){return t.length?t.map(({thickness_mm:e,v_opening_mm:n,lot:s,factor:o,figures:a,
words:r})=>i`<section data-test="group" data-thickness=${e} data-v=${n}>
        <h2>
          ${f(y(e,{digits:2}))} over V
          ${f(y(n))}${s?i` <small>lot ${s}</small>`:d}
        </h2>
        ${r.map(l=>i`<p class="together" data-test="together">${k("caution")} ${l}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${nt(o.nominal,2)} times</b> as much as expected
                (${nt(o.low,2)} to ${nt(o.high,2)}).
              </p>`:d}
        ${Nr(a)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No trial is in use: the figures are the metal’s own.</p>`}function Vx(t,e,n){
let s=t.kind==="test bend"?"Test bend":i`First piece${t.code?i` of <a href="/c/${t.code}">${t.code}</a>`:d}`,o=[
t.set_angle_deg===null?"":`set at ${f(S(t.set_angle_deg))}`,f(y(t.thickness_mm,{digits:2})),t.die?`die ${t.die}`:
t.v_opening_mm?`V ${f(y(t.v_opening_mm))}`:"",t.lot?`lot ${t.lot}`:"",st(t.made_at),ve(t)];return i`<li
    class="row evidence ${t.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${t.id}
    data-forgotten=${String(t.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${f(S(t.measured_deg))}</span> ${s}
        ${t.forgotten?k("unknown","Forgotten"):t.asks?k("unknown","Does not count"):t.outlier?k("caution","Odd\
 one out"):d}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${t.note?i`<p>${t.note}</p>`:d}
      ${t.words?i`<p class=${t.asks?"":"more"} data-test="evidence-words">${t.words}</p>`:d}
    </div>
    <div class="evidence-marks">
      ${qx(t).map(([a,r])=>R(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${e!==""}
            @click=${()=>n(t,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function qx({forgotten:t,asks:e}){return t?[["remember","Use it again"]]:e?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var Hx,Gg=$(()=>{_();U();_t();oe();et();bt();
O();V();Xl();rt();Hg();Ct();Ht();Hx={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var Vg={};tt(Vg,{show:()=>zx});async function zx(t){let e=ha(t.params.kind);if(!e)return t.title("Not here"),t.
render(xt("No such list in the shop",i`<a href="/shop">The shop</a>`)),t.ready();let{one:n,title:s,many:o}=Ge[e];
t.title(s);let{items:a,kept:r}=await lt(e,t.signal),l=_r(a.map(c=>c.outline_mm));t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?d:R(it[e],i`<a class="button" href="/shop/${e}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${R(it[e],"Changing anything needs the shop's server.")}
            </p>`:d}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>e==="metals"?Zx(c):Kx(e,c,l))}
            </ul>`:xt(`No ${o} yet`,R(it[e],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),t.ready()}function Kx(t,e,n){return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/${t}/${encodeURIComponent(e.code)}">
      <span class="thumb">${yr(e.outline_mm,n)}</span>
      <span class="who"><span class="lead">${e.code}</span> <span>${e.name}</span>${Yx(e)}</span>
      <span class="fact"><span class="what">Place</span>${Ve(e)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${e.rating_kn_per_m===null?k("unknown"):f(Ot(e.rating_kn_per_m))}</span
      >
      ${e.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${e.segments_mm.length?i`${e.segments_mm.length}, up to
                    ${f(y(Jx(e.segments_mm),{digits:0}))}`:"none"}</span
            >`:d}
      <span class="fact"><span class="what">Condition</span>${Xx(e)}</span>
    </a>
  </li>`}function Yx({shape:t,openings:e}){return t!=="multi_v"?d:i`<span class="soft" data-test="block-vs"
    >${e.map(n=>`${n.code}: V ${f(y(n.v_opening_mm))}`).join(", ")}</span
  >`}function Xx({condition:t,condition_note:e}){if(t==="good")return k("ok","Good");let n=t==="damaged"?k("st\
op","Damaged"):t==="worn"?k("caution","Worn"):k("unknown");return i`${n}${e?i` <span class="soft">${e}</span>`:
d}`}function Zx(t){let{tensile_mpa:e}=t;return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/metals/${encodeURIComponent(t.code)}">
      <span class="who"><span class="lead">${t.name}</span> <span class="soft">${t.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${e.low} to ${e.high} MPa</span>
      <span class="fact"><span class="what">Standing</span>${e.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${t.gauge_family??"none"}</span>
    </a>
  </li>`}var Jx,qg=$(()=>{_();_t();O();V();rt();Ct();vr();Jx=t=>Math.max(...t)});function Ql(t,e){let n=e.params.tool===Zl,s=n?void 0:e.params.tool,o={items:[],etag:null,kept:!1};return{kind:t,
isNew:n,code:s,async read(a){return o=await(ht(it[t])?Ei:lt)(t,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(h=>h.code!==s),l=o.items.findIndex(h=>h.code===s),c=a?[{...a,code:s??a.code}]:[];await oh(
t,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){Z(a?`${a.name||s} is saved.`:`${s} is taken out.`),pt(`/\
shop/${t}`)},taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var Zl,zg=$(()=>{_t();oe();Et();Bt();Zl="+"});async function Kg(t,e){let n=await Ps({...e,blank:{poisson:.3},boxes:Qx,toDraft:o=>({code:o.code??"",...eh(o)}),
fromDraft:o=>({...nh(o),code:o.code.trim()}),draw:()=>n&&s()},t.signal);if(!n.state.kept&&!e.isNew)return t.title(
"No such metal"),t.render(xt(`No metal ${e.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),t.ready();
t.title(e.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,h={})=>A({name:l,
label:c,value:o.draft[l]??"",change:u=>a(l,u),wrong:o.wrong[l],...h});t.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${e.isNew?"New metal":i`${e.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${e.isNew?d:i`<div class="buttons">
                ${at("/shop/learned/x",i`<a
                    class="button"
                    href="/shop/learned/${encodeURIComponent(e.code??"")}"
                    data-test="to-learned"
                    >What the metal taught</a
                  >`)}
                ${at("/shop/test-bend",i`<a
                    class="button"
                    href="/shop/test-bend?metal=${encodeURIComponent(e.code??"")}"
                    data-test="to-test-bend"
                    >Test bend</a
                  >`)}
              </div>`}
        ${o.clash?ks(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):d}
        <form
          novalidate
          @submit=${l=>{l.preventDefault(),n.save()}}>
          ${Rs(it.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${e.isNew?Tr(n,e):d} ${r("name","Name")}
                  ${z({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:Vd,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${ss.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${Mn({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${yn.map(l=>t0(l,n))}</div>`)}
          ${Mr(n,e,"metal")}
        </form>`)}s(),t.ready()}function t0({name:t,label:e,unit:n,needed:s},{state:o,change:a}){let r=u=>o.draft[`${t}\
.${u}`]??"",l=u=>o.wrong[`${t}.${u}`]??[],c=u=>p=>a(`${t}.${u}`,p),h=!s&&!tc.some(([u])=>r(u).trim());return i`<fieldset class="panel figure-card" data-test="figure-${t}">
    <legend>${e}${n?i` <span class="hint">(${n})</span>`:d}</legend>
    ${(o.wrong[t]??[]).map(u=>i`<p class="wrong-line">${u}</p>`)}
    <div class="fields three">
      ${tc.map(([u,p])=>A({name:`${t}.${u}`,label:p,value:r(u),change:c(u),wrong:l(u),keys:"decimal"}))}
    </div>
    ${h?k("unknown","Not known"):d}
    <div class="fields source-line">
      ${Mn({name:`${t}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${z({name:`${t}.standing`,label:"Standing",value:r("standing"),options:Gd.map(u=>[u,u]),change:c("standi\
ng"),wrong:l("standing")})}
    </div>
  </fieldset>`}var tc,Qx,Yg=$(()=>{_();ue();_t();kr();wi();Ar();xs();V();J();rt();Ct();tc=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],Qx=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...ss,...yn.flatMap(({name:t,label:e})=>[...tc,["source","s\
ource"],["standing","standing"]].map(([n,s])=>({name:`${t}.${n}`,label:`${e}: ${s.toLowerCase()}`}))),...yn]});var Jg={};tt(Jg,{show:()=>n0});async function n0(t){let e=ha(t.params.kind);return e?t.params.tool===Zl&&!ht(it[e])?
(t.title(`New ${Ge[e].one}`),t.render(Yo(it[e])),t.ready()):e==="metals"?Kg(t,Ql(e,t)):s0(t,e):(t.render(xt("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),t.ready())}async function s0(t,e){let n=Ge[e],s=Ql(
e,t),o=ht(it[e]),a=null,r=await Ps({...s,blank:e0[e],boxes:[{name:"code",label:"Code"},...Ue(e)],toDraft:c=>({
code:c.code??"",...ra(e,c)}),fromDraft:(c,h)=>({...ia(e,c,h),code:c.code.trim()}),preview:o?Sr(n.one,c=>{a=c,r.
show()},t.signal):void 0,draw:()=>r&&l()},t.signal);if(!r.state.kept&&!s.isNew)return t.title("Not in the crib"),
t.render(xt(`No ${n.one} ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${e}">${n.title}</a>`)),
t.ready();t.title(s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=xr(r.state.kept));function l(){let{state:c,
change:h}=r;t.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${e}">${n.title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${c.kept?.name}</span>`}
        </h1>
        ${c.clash?ks(c.clash,n.one,{saveMine:r.save,takeTheirs:r.takeTheirs}):d}
        <form
          novalidate
          @submit=${u=>{u.preventDefault(),r.save()}}>
          ${Rs(it[e],Er({kind:e,draft:c.draft,change:h,wrong:c.wrong,preview:a,reader:r.reader,first:s.isNew?Tr(
r,s):d}))}
          ${Mr(r,s,n.one)}
        </form>`)}l(),t.ready()}var e0,Xg=$(()=>{_();_t();ue();kr();zg();Vl();Et();xs();Ar();rt();Ct();Jl();Yg();
e0={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"unkno\
wn",up:1},holders:{shape:"block",condition:"unknown"}}});var t$={};tt(t$,{show:()=>a0});async function a0(t){t.title("Crew");let{signal:e}=t,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>t.render(i0(n,o)),o=r0(n,s,
e),[a,r,l]=await Promise.all([T("GET","/devices",{signal:e}),T("GET","/crew-options",{signal:e}),an(e).then(({
network:h})=>h?T("GET","/join",{signal:e}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),t.ready();let c=setInterval(o.look,o0);e.addEventListener("abort",()=>clearInterval(
c))}function r0(t,e,n){let s=async a=>{t.fault="";try{await a()}catch(r){if(n.aborted)return;t.fault=Po(r)}e()};
async function o(){if(document.visibilityState!=="visible")return;let a=await T("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;t.devices=a.body.devices;let r=t.offer&&t.devices.find(l=>!t.known.has(
l.id)&&!l.revoked_at);r?Object.assign(t,{came:r,offer:null,name:""}):t.offer&&Date.parse(t.offer.expires_at)<=
Date.now()&&(t.offer=null),e()}return{look:o,draw:e,offer:()=>s(async()=>{let{body:a}=await T("POST","/pairing\
s",{body:{role:t.role,name:t.name.trim()},signal:n});Object.assign(t,{offer:a,came:null,known:new Set(t.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Turn out ${a.name}? It can read nothing any more, and its car\
ds go from it when it next asks.`)&&(await T("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await T("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await T(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),t.open=a})}}function i0(t,e){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${t.fault?i`<p class="wrong" role="alert" data-test="fault">${t.fault}</p>`:d}
    ${t.joining?i`<div class="crew-grid">${c0(t,e)}${d0(t.joining)}</div>`:l0()}
    <section class="panel" data-test="devices">
      <h2>Who is in</h2>
      ${h0(t,e)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${K({name:"labels-open",label:"A device that is not paired",value:t.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>e.setOpen(n==="open")})}
    </section>`}function c0(t,e){let{offer:n,came:s}=t;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${zt[n.role].word}${n.name?i`: <b>${n.name}</b>`:d}. Works once, until
        ${st(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${Qg(n.qr)} />
      <p class="pair-code" data-test="offer-code">${n.code}</p>
      <p class="hint">
        A phone that has not joined the shop's https yet does that first, with the other code.
      </p>
      <button
        type="button"
        class="button wide"
        data-test="offer-done"
        @click=${()=>{t.offer=null,e.draw()}}>
        Put it away
      </button>
    </section>`:i`<section class="panel" data-test="let-in">
    <h2>Let a device in</h2>
    ${s?i`<p data-test="came">
            ${k("ok","Paired")} <b>${s.name}</b> is in, as ${zt[s.role].word.toLowerCase()}.
          </p>`:d}
    ${K({name:"role",label:"As",value:t.role,options:Zg,change:o=>{t.role=o,e.draw()}})}
    <p class="hint" data-test="role-does">${zt[t.role].word}: ${zt[t.role].does}.</p>
    ${A({name:"device-name",label:"Whose?",value:t.name,placeholder:"Ann's phone",change:o=>t.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${e.offer}>
      Show a pairing code
    </button>
  </section>`}function d0(t){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${Qg(t.qr)} />
    <p>${t.shop}: ${t.https.map(e=>i`<span class="address">${e}</span> `)}</p>
    ${t.http.length?i`<p class="hint">Or type <span class="address">${t.http[0]}/join</span></p>`:d}
    ${t.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${u0(t.fingerprint)}</p>`:d}
  </section>`}function h0({devices:t},e){return t.length?i`<ul class="plain-list devices">
    ${t.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:d}
            <span class="soft"
              >${n.revoked_at?`turned out ${st(n.revoked_at)}`:`last seen ${st(n.seen_at)}`},
              paired ${st(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${k("stop","Out")}</p>`:i`${z({name:`role-${n.id}`,label:`Role of ${n.name}`,value:n.
role,options:Zg,change:s=>e.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>e.revoke(n)}>
                    Turn out…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var o0,Zg,l0,Qg,u0,e$=$(()=>{_();U();rn();
V();J();Ht();o0=2e3,Zg=Object.entries(zt).map(([t,{word:e}])=>[t,e]);l0=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;Qg=t=>`data:image/svg+xml,${encodeURIComponent(t)}`,u0=t=>t.replace(/(.{4})(?=.)/g,"$1 ")});var Cr,ec=$(()=>{_();Cr=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop by themselves; what still waits to be sent does not, so open Flangebook in the shop’s network first.
  Some phones ask each time before the camera may be used.
</p>`});var s$={};tt(s$,{show:()=>p0});async function p0(t){t.title("Pair this device"),t.render(Tt("Asking the shop…"));
let e={me:null,code:m0(),name:C().name,fault:"",asking:!1,waits:0},n=()=>t.render(f0(e,n));e.me=await an(t.signal).
catch(()=>null),e.waits=(await Dt().catch(()=>[])).length,n(),t.ready()}function m0(){if(location.pathname!=="\
/pair"||!location.hash)return"";let t=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),t}function f0(t,e){let{me:n}=t;return n?n.role?g0(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${n$[Ce()??n.why]?i`<p data-test="why">${k("caution","Not let in")} ${n$[Ce()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
    ${t.waits?i`<p data-test="waits">
            ${t.waits===1?"1 result":`${t.waits} results`} typed here still
            ${t.waits===1?"waits":"wait"}. Pair again and
            ${t.waits===1?"it is":"they are"} sent.
          </p>`:d}
    <ol class="ways">
      <li>The owner opens <b>Shop, Crew</b> on the shop's computer or a paired phone, and shows a code.</li>
      <li>Point this phone's camera at it, or type the eight characters here.</li>
    </ol>
    <form
      class="panel"
      novalidate
      @submit=${s=>{s.preventDefault(),b0(t,e)}}>
      ${A({name:"pair-code",label:"Pairing code",value:t.code,placeholder:"ABCD-1234",change:s=>t.code=s,wrong:t.
fault?[t.fault]:[]})}
      ${A({name:"pair-name",label:"Whose device is this?",value:t.name,placeholder:"Ann's phone",change:s=>t.name=
s,hint:"The owner sees this name in the list."})}
      <button class="button next wide" data-test="pair" ?disabled=${t.asking}>Pair this device</button>
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
    </div>`}function g0(t){let e=t.role;return t.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${k("ok",zt[e].word)} <b>${t.name}</b>: ${zt[e].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${Cr}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${$0}>Unpair this device…</button>
    </p>
  </div>`}async function $0(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await qc()}async function b0(t,e){Object.assign(t,{asking:!0,fault:""}),e();try{await Vc(t.
code,t.name.trim()),j(),pt(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
t,{asking:!1,fault:Po(n)}),e()}}var n$,o$=$(()=>{_();rn();Nt();Bt();et();bt();V();J();ec();Ct();n$={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function a$({show:t,done:e,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,h){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),t();try{if(o.size>y0)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");s.told=(await xo(`/import?${h}`,
o,"application/json",n,w0)).body}catch(u){if(n.aborted)return;s.wrong=_0(u)}s.busy="",t(),s.told?.imported&&e()}}
return{state:s,choose:a,take:r}}function _0(t){if(!(t instanceof M))return[t instanceof Error?t.message:String(
t)];let e=Object.entries(t.errors).slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[t.message,...e]}var w0,
y0,r$=$(()=>{U();w0=3e5,y0=6e7});function c$({state:t,choose:e,take:n}){let{name:s,busy:o,told:a,wrong:r}=t;return i`<section class="panel" data-test="panel-import">
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
        @change=${({target:l})=>{l.files?.[0]&&e(l.files[0]),l.value=""}} />
    </label>
    <div role="status">
      ${o?i`<p>${o==="looking"?`Looking through ${s}…`:`Bringing ${s} in…`}</p>`:d}
      ${r.length?k0(s,r):d}
      ${a?a.imported?T0(a):x0(s,a,n):d}
    </div>
  </section>`}function x0(t,e,n){return i`<div data-test="import-preview">
    <p><b>${t}</b>, exported ${st(e.exported_at)} by ${e.made_by}</p>
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">In the file</th>
          <th scope="col">In the shop now</th>
        </tr>
      </thead>
      <tbody>
        ${v0.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${l$(e.holds[s])}</td>
              <td>${l$(e.here[s])}</td>
            </tr>`)}
      </tbody>
    </table>
    ${e.untouched?i`<p>${k("ok","The shop is empty")}</p>
            <button type="button" class="button next wide" data-test="import-now" @click=${n}>
              Bring it in
            </button>`:i`<p>
              ${k("caution","Everything in the shop is replaced")} A copy of what is there now is kept
              first.
            </p>
            <button
              type="button"
              class="button next wide"
              data-test="import-now"
              @click=${()=>S0(e)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var v0,i$,k0,l$,S0,T0,d$=$(()=>{_();V();Ht();v0=[["press","Press"],["tools","Tools"],["metals","Meta\
ls"],["cards","Cards"],["revisions","Revisions"],["trials","Trials"],["test_bends","Test bends"]],i$=8;k0=(t,e)=>i`<div data-test="import-wrong">
    <p>${k("stop","Not brought in")} ${t}</p>
    <ul>
      ${e.slice(0,i$).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${e.length>i$?i`<p>There are more.</p>`:d}
    <p>Nothing in the shop was changed.</p>
  </div>`;l$=t=>t===""?"none":t,S0=({here:t,holds:e})=>confirm(`Replace the shop? Its ${t.cards} cards and ${t.
trials} trials go, the file's ${e.cards} cards and ${e.trials} trials come. A copy is kept first.`),T0=({holds:t,
kept_as:e})=>i`<div data-test="import-done">
    <p>${k("ok","Brought in")} ${t.cards} cards, ${t.trials} trials.</p>
    ${e?i`<p>The shop that was there is kept as ${e}.</p>`:d}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var h$={};tt(h$,{show:()=>A0});async function A0(t){t.title("Copies and export");let e=a$({show:a,done:s,signal:t.
signal}),n=await o();async function s(){j(),n=await o(),a()}async function o(){return(await T("GET","/copies",
{signal:t.signal})).body}function a(){t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Copies and export</h1>
        <div class="settings-grid">
          ${O0(n)}
          <div class="stack">${N0()}${c$(e)}</div>
        </div>`)}a(),t.ready()}function O0({standing:t,last_good_at:e,trouble:n,folder:s,copies:o}){return i`<section class="panel" data-test="panel-copies">
    <h2>Copies</h2>
    <p data-test="standing">${E0(t)}</p>
    ${e?i`<p class="lead-line" data-test="last-good">Last good copy: ${st(e)}</p>`:d}
    ${n?i`<p class="wrong" data-test="trouble">${st(n.at)}: ${n.words}</p>`:d}
    <p>
      The server makes one each night, looks it through, and keeps seven days and four weeks. Put one on
      another disk, too: a copy beside the shop burns with it.
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
                    <td>${st(a.at)}</td>
                    <td>${M0[a.kind]}</td>
                    <td>${L0(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:d}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> puts one back.
    </p>
  </section>`}function E0(t){return t==="ok"?k("ok","There is a good copy"):t==="late"?k("caution","The last c\
opy is over two days old"):t==="trouble"?k("stop","The last copy could not be made"):k("unknown","There is no \
copy yet")}function N0(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and trials, as open JSON. Bring it in again here, or read
      it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var M0,L0,u$=$(()=>{_();U();r$();bt();V();d$();Ht();M0={night:"by itself","by-hand":"by hand",replaced:"\
before it was replaced"};L0=t=>`${(t/1e6).toFixed(1)} MB`});async function p$(t){let{code:e,part:n,title:s,note:o,created_by:a}=t,r={code:e,part:{...n,title:s},note:o,by:a},
{body:l}=await T("POST","/cards",{body:r,timeout:2e4}),c=await re(l),h={...c,after:c.revision_id};await Re(h,Vo(
Yn(t,["archived","settings"]),h),{reason:"Put back from a device"}),await Ic(t),await Co(e)}var m$=$(()=>{U();
Xn();Ie();$t()});function f$(t){return t.length?i`<section class="panel" data-test="lost">
    <h2>Not in the shop any more</h2>
    <p>
      The shop was put back to an earlier day and does not know these cards. This device still has
      them.${R("cards.create",d,i` <span data-test="owners"
          >The owner can put them back from here, once this is an owner's device.</span
        >`)}
    </p>
    <ul class="waiting-list">
      ${t.map(e=>i`<li data-test="lost-${e.code}">
            <p><b>${e.title}</b> ${W(e.code)}</p>
            <div class="buttons">
              ${R("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>C0(e)}>
                  Put it back
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>B0(e)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:d}async function C0(t){try{await p$(t),await j()}catch(e){Z(e instanceof Error?e.message:String(
e))}}async function B0(t){confirm(`Throw away the card ${W(t.code)}, ${t.title}? This device may have the only\
 copy.`)&&(await Co(t.code),await Qn())}var g$=$(()=>{_();dt();oe();m$();$t();bt();rt()});var w$={};tt(w$,{show:()=>P0});async function P0(t){t.title("Settings");let e={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([Le().catch(()=>[]),Dt().catch(()=>[]),No().catch(()=>[])]);e=
{...e,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await T("GET","/cards?limit=1",{signal:t.signal,
timeout:4e3}).catch(()=>null);e={...e,total:a?.body.total??null},o()}function o(){t.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${I0(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${W0(o)}
          </section>
          ${R0()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${D0(e.entries)}
          </section>
          ${f$(e.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${H0(e)} ${Cr}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:t.signal}),await n(),t.ready(),await s()}function R0(){
let t=Hn();return!t||t==="owner"?d:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${zt[t].word}</b>: ${zt[t].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function I0(t){let{units:e,inches:n}=C(),s=o=>{Ne(o),t()};return i`${K({name:"units",label:"Unit\
s",value:e,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${e==="inch"?K({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):d}
  ${K({name:"paper",label:"Paper",value:C().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${e==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:d}`}function W0(t){let{theme:e,name:n}=C();
return i`${K({name:"theme",label:"Theme",value:e,options:[["day","Day"],["shop","Shop, dark"]],change:s=>{Ne({
theme:s==="shop"?"shop":"day"}),t()}})}
  ${A({name:"name",label:"Your name",value:n,change:s=>Ne({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function D0(t){return t.length?i`<ul class="waiting-list">
      ${t.map(e=>i`<li data-test="waits-${e.id}">
            <p>
              <b>${b$(e)}</b> on <a href="/c/${e.code}">${W(e.code)}</a>,
              ${st(e.queued_at)} by this device’s clock
              ${e.body.note?i`<br /><span class="soft">${e.body.note}</span>`:d}
            </p>
            ${e.refused?i`<p data-test="refused">
                      ${k("caution","Refused")} ${e.missing?`${wo(e)}.`:""}
                      ${e.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>F0(e)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>j0(e)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${wo(e)}. It goes by itself when the shop's server answers.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>j()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every trial, note and edit typed here is saved in the shop.
    </p>`}function b$({kind:t,body:e}){if(t==="trial")return`${en(e)}, step ${e.step}`;if(t==="note")return"No\
te";let n=Object.keys(e).filter(s=>s in $$).map(s=>$$[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was settled"}async function F0(t){await Ac(t.id),await j()}async function j0(t){confirm(`Throw away ${b$(t)} o\
n ${W(t.code)}? It cannot be brought back.`)&&(await Eo(t.id),await Qn())}function H0({cards:t,total:e}){let{reached:n,
at:s}=ce(),o=e!==null&&t>=e,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${t}${e===null?d:` of ${e}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${s?st(s):"not since this page was opened"}</dd>
      </div>
    </dl>
    <p>
      ${o?k("ok","Every card is here"):e===null?k("unknown","Not known: no answer from the shop"):k("caution",
"Still fetching")}
    </p>
    <p data-test="app-kept">
      ${a?k("ok","The app opens without network"):i`${k("caution","The app needs the network")}
            ${"serviceWorker"in navigator?"It is still being kept.":"This browser keeps apps only over https o\
r on the shop's own computer."}`}
    </p>
    ${n===!1?i`<p>${k("caution","Not connected now")}</p>`:d}
    <button type="button" class="button" data-test="check-now" @click=${()=>j()}>Look again</button>`}var $$,y$=$(
()=>{_();U();rn();dt();Nt();Et();et();$t();bt();V();J();ec();Ts();g$();Os();Ht();$$={title:"title",note:"note",
archived:"in use or put away",settings:"settings"}});function _e(t){let e=ta(t.split("?")[0])?.route.needs;return!e||ht(e)}function ta(t){let e=t.split("/").filter(
Boolean);e[0]?.toLowerCase()==="c"&&(e[0]="c");for(let n of _$){let s=U0(n.path.split("/").filter(Boolean),e);
if(s)return{route:n,params:s}}}function U0(t,e){if(t.length!==e.length)return;let n={};for(let[s,o]of t.entries()){
if(!o.startsWith(":")){if(o!==e[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(e[s])}catch{return}}return n.
code&&(n.code=qs(n.code)),n}var _$,Fd,ts=$(()=>{dt();Et();_$=[{name:"home",path:"/",load:()=>Promise.resolve().then(()=>(Ud(),Hd))},
{name:"bend",path:"/bend",needs:"bends.bend",load:()=>Promise.resolve().then(()=>(Hh(),jh))},{name:"bench",path:"\
/bench",floor:!0,load:()=>Promise.resolve().then(()=>(Fu(),Du))},{name:"part",path:"/part",needs:"parts.plan",
load:()=>Promise.resolve().then(()=>(am(),om))},{name:"scan",path:"/scan",floor:!0,load:()=>Promise.resolve().then(()=>(Tm(),Sm))},
{name:"card",path:"/c/:code",floor:!0,load:()=>Promise.resolve().then(()=>(Dm(),Wm))},{name:"step",path:"/c/:c\
ode/step/:step",floor:!0,load:()=>Promise.resolve().then(()=>(Gm(),Um))},{name:"trial",path:"/c/:code/trial/:s\
tep",floor:!0,needs:"trials.keep",load:()=>Promise.resolve().then(()=>(cf(),lf))},{name:"history",path:"/c/:co\
de/history",load:()=>Promise.resolve().then(()=>(bf(),$f))},{name:"note",path:"/c/:code/note",floor:!0,needs:"\
cards.change",load:()=>Promise.resolve().then(()=>(_f(),yf))},{name:"settle",path:"/c/:code/settle",floor:!0,needs:"\
cards.revise",load:()=>Promise.resolve().then(()=>(xf(),kf))},{name:"print",path:"/c/:code/print",load:()=>Promise.resolve().then(()=>(Ef(),Of))},
{name:"label",path:"/c/:code/label",load:()=>Promise.resolve().then(()=>(Bf(),Cf))},{name:"labels",path:"/labe\
ls",needs:"labels.sheet_json",load:()=>Promise.resolve().then(()=>(Rf(),Pf))},{name:"chart",path:"/chart",needs:"\
bends.chart",load:()=>Promise.resolve().then(()=>(Ff(),Df))},{name:"shop",path:"/shop",load:()=>Promise.resolve().then(()=>(zf(),qf))},
{name:"press",path:"/shop/press",load:()=>Promise.resolve().then(()=>(fg(),mg))},{name:"test-bend",path:"/shop\
/test-bend",floor:!0,needs:"evidence.keep",load:()=>Promise.resolve().then(()=>(Fg(),Dg))},{name:"learned",path:"\
/shop/learned/:metal",needs:"evidence.learned",load:()=>Promise.resolve().then(()=>(Gg(),Ug))},{name:"tools",path:"\
/shop/:kind",load:()=>Promise.resolve().then(()=>(qg(),Vg))},{name:"tool",path:"/shop/:kind/:tool",load:()=>Promise.resolve().then(()=>(Xg(),Jg))},
{name:"crew",path:"/crew",needs:"crew.listed",load:()=>Promise.resolve().then(()=>(e$(),t$))},{name:"pair",path:"\
/pair",load:()=>Promise.resolve().then(()=>(o$(),s$))},{name:"copies",path:"/copies",needs:"copies.listed",load:()=>Promise.resolve().then(()=>(u$(),h$))},
{name:"settings",path:"/settings",load:()=>Promise.resolve().then(()=>(y$(),w$))}],Fd=t=>_$.find(e=>e.name===t)});function He(){let t=location.pathname,e=n=>n==="/"?t==="/"||t==="/scan"||/^\/c\//i.test(t):t.startsWith(n);Be(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${V0}<span>Flangebook</span></a>
        ${Ce()===null?i`<nav aria-label="Main">
                ${G0.filter(([n])=>_e(n)).map(([n,s])=>i`<a href=${n} aria-current=${e(n)?"page":"false"}>${s}</a>`)}
              </nav>`:d}
      </div>
      ${q0()}${z0()}${Ce()===null?K0():d}`,document.getElementById("masthead"))}function z0(){return zs()?i`<p class="standing" data-test="held">
      ${zs()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      It is saved by itself then.
    </p>`:Is()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${ce().reached===!1?d:"Cards come from the shop."}
  </p>`:d}function K0(){let{reached:t,waiting:e,words:n,refused:s,settle:o,lost:a}=ce(),r=o.filter(u=>_e(`/c/${u}\
/settle`)),l=e?`${n} ${e===1?"waits":"wait"} to be sent.`:"",c=Is()?"":"Cards on this device still open.",h=t===
!1?`Not connected to the shop. ${c}`:"";return!h&&!l&&!r.length&&!a?d:i`<p class="standing" data-test="standing">
    ${h} ${l} ${s?i`<a href="/settings">${s} refused: look</a>`:d}
    ${r.length?i`<a href="/c/${r[0]}/settle" data-test="settle-count">${r.length} to settle</a>`:d}
    ${a?i`<a href="/settings" data-test="lost-count"
            >${a===1?"1 card is":`${a} cards are`} not in the shop any more: look</a
          >`:d}
  </p>`}var G0,V0,q0,gi=$(()=>{_();rn();ts();Zn();Ee();bt();G0=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];V0=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,q0=()=>isSecureContext?d:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});rn();gi();Bt();et();bt();oe();async function k$(){if("serviceWorker"in navigator)try{let t=await navigator.serviceWorker.register("/sw.\
js");t.waiting&&v$(t.waiting),t.addEventListener("updatefound",()=>{let e=t.installing;e?.addEventListener("st\
atechange",()=>{e.state==="installed"&&navigator.serviceWorker.controller&&v$(e)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(t){console.
warn("The app could not be kept on this device:",t)}}function v$(t){Z("A newer Flangebook is here. It opens wh\
en you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),t.postMessage("take over")}})}Bo();ft(()=>Bo());document.addEventListener("sync",()=>He());document.addEventListener("held",()=>He());document.
addEventListener("storage",t=>{He(),!t.detail.silent&&(document.documentElement.dataset.ready==="failed"&&ke(),
j())});document.addEventListener("turned-away",()=>{He(),document.documentElement.dataset.screen!=="pair"&&ke()});
document.addEventListener("rights",()=>{Ce()===null&&document.documentElement.dataset.screen!=="pair"&&Wd()});
zc();Dd().finally(()=>{kd(),k$()});
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
