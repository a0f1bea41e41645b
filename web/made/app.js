var J$=Object.defineProperty;var $=(t,e,n)=>()=>{if(n)throw n[0];try{return t&&(e=t(t=0)),e}catch(s){throw n=[s],s}};var et=(t,e)=>{for(var n in e)J$(t,n,{get:e[n],enumerable:!0})};function X$(){try{let t=JSON.parse(localStorage.getItem(bc)??"null");return t?.refused?t:$c}catch{return $c}}function yc({
role:t,refused:e={}}){let n=JSON.stringify({role:t,refused:e});if(n===JSON.stringify(zn))return!1;zn={role:t,refused:e};
try{localStorage.setItem(bc,n)}catch{}return!0}function _c(t){t&&t!==zn.role&&document.dispatchEvent(new CustomEvent(
"other-role"))}var bc,$c,zn,qn,ht,wc,Et=$(()=>{bc="flangebook.rights",$c={role:"owner",refused:{}},zn=X$();qn=
()=>zn.role,ht=t=>!Object.hasOwn(zn.refused,t),wc=t=>zn.refused[t]??"owner"});async function A(t,e,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return vc(t,e,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function Co(t,e,n,s,o=2e4){
return vc("POST",t,e,{type:n,signal:s,timeout:o})}async function vc(t,e,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let h=AbortSignal.
timeout(l),u=performance.now(),p;try{p=await fetch(`/api/v1${e}`,{method:t,headers:c,body:n,signal:r?AbortSignal.
any([r,h]):h,cache:"no-store"})}catch(f){throw r?.aborted?f:new F}if(_c(p.headers.get("Flangebook-Role")),!p.ok&&
p.status!==304)throw await Jr(p,u);let m=Z$.includes(p.status)?null:await Q$(p,r);return{status:p.status,body:m,
etag:p.headers.get("ETag"),at:nb(p)}}async function Q$(t,e){try{return await t.json()}catch(n){throw e?.aborted?
n:new F}}async function Jr(t,e=1/0){let n=await t.json().catch(()=>null);if(!n?.status)throw new F;let s=new M(
n);return tb(s,e),s}function tb({status:t,errors:e},n){t===401&&e.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:e.pairing[0],asked:n}})),t===403&&e.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function kc(t,e,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${t}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(e),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await Jr(c);for await(let h of eb(c.body,l)){let u=JSON.
parse(h);if(u.problem)throw new M(u.problem);if(!u.progress)return u;s(u.progress)}throw new F}catch(c){throw n.
aborted||c instanceof M?c:new F}finally{clearTimeout(r)}}async function*eb(t,e){let n=t.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;e();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function xc(t,e,n){let s;try{let a=await fetch(`/a\
pi/v1${t}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(e),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await Jr(a);s=await a.blob()}catch(a){throw a instanceof M?a:new F}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var M,F,Z$,nb,G=$(()=>{Et();M=class extends Error{constructor(e){super(e.detail||e.title),this.status=
e.status,this.title=e.title,this.errors=e.errors??{},this.outline=e.outline??null}},F=class extends Error{constructor(){
super("The shop's server does not answer.")}};Z$=[204,304];nb=t=>new Date(t.headers.get("Date")??Date.now()).toISOString()});function sb(){return Sc||(Sc=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function ob(){return Tc||
(Tc=["advance","continue","continuePrimaryKey"].map(t=>IDBCursor.prototype[t]))}function ab(t){let e=new Promise(
(n,s)=>{let o=()=>{t.removeEventListener("success",a),t.removeEventListener("error",r)},a=()=>{n(ln(t.result)),
o()},r=()=>{s(t.error),o()};t.addEventListener("success",a),t.addEventListener("error",r)});return Bo.set(e,t),
e}function rb(t){if(ti.has(t))return;let e=new Promise((n,s)=>{let o=()=>{t.removeEventListener("complete",a),
t.removeEventListener("error",r),t.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(t.error||new DOMException(
"AbortError","AbortError")),o()};t.addEventListener("complete",a),t.addEventListener("error",r),t.addEventListener(
"abort",r)});ti.set(t,e)}function Ec(t){ei=t(ei)}function ib(t){return ob().includes(t)?function(...e){return t.
apply(ni(this),e),ln(this.request)}:function(...e){return ln(t.apply(ni(this),e))}}function lb(t){return typeof t==
"function"?ib(t):(t instanceof IDBTransaction&&rb(t),Qr(t,sb())?new Proxy(t,ei):t)}function ln(t){if(t instanceof
IDBRequest)return ab(t);if(Xr.has(t))return Xr.get(t);let e=lb(t);return Object.is(e,t)||(Xr.set(t,e),Bo.set(e,
t)),e}function Lc(t,e,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(t,e),l=ln(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(ln(r.result),c.oldVersion,c.newVersion,ln(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",h=>o(h.oldVersion,h.newVersion,h))}).catch(()=>{}),l}function Mc(t,e){if(!(t instanceof IDBDatabase&&
!(e in t)&&typeof e=="string"))return;if(Zr[e])return Zr[e];let n=e.replace(/FromIndex$/,""),s=e!==n,o=db.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||cb.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),h=c.store;return s&&(h=h.index(l.shift())),(await Promise.all([h[n](...l),
o&&c.done]))[0]};return Zr[e]=a}async function*pb(...t){let e=this;if(e instanceof IDBCursor||(e=await e.openCursor(
...t)),!e)return;e=e;let n=new Proxy(e,ub);for(Nc.set(n,e),Bo.set(n,ni(e));e;)yield n,e=await(si.get(n)||e.continue()),
si.delete(n)}function Oc(t,e){return e===Symbol.asyncIterator&&Qr(t,[IDBIndex,IDBObjectStore,IDBCursor])||e===
"iterate"&&Qr(t,[IDBIndex,IDBObjectStore])}var Qr,Sc,Tc,ti,Xr,Bo,ei,ni,cb,db,Zr,hb,Ac,si,Nc,ub,Cc=$(()=>{Qr=(t,e)=>e.
some(n=>t instanceof n);ti=new WeakMap,Xr=new WeakMap,Bo=new WeakMap;ei={get(t,e,n){if(t instanceof IDBTransaction){
if(e==="done")return ti.get(t);if(e==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return ln(t[e])},set(t,e,n){return t[e]=n,!0},has(t,e){return t instanceof IDBTransaction&&(e==="done"||e==="s\
tore")?!0:e in t}};ni=t=>Bo.get(t);cb=["get","getKey","getAll","getAllKeys","count"],db=["put","add","delete",
"clear"],Zr={};Ec(t=>({...t,get:(e,n,s)=>Mc(e,n)||t.get(e,n,s),has:(e,n)=>!!Mc(e,n)||t.has(e,n)}));hb=["advanc\
e","continue","continuePrimaryKey"],Ac={},si=new WeakMap,Nc=new WeakMap,ub={get(t,e){if(!hb.includes(e))return t[e];
let n=Ac[e];return n||(n=Ac[e]=function(...s){si.set(this,Nc.get(this)[e](...s))}),n}};Ec(t=>({...t,get(e,n,s){
return Oc(e,n)?pb:t.get(e,n,s)},has(e,n){return Oc(e,n)||t.has(e,n)}}))});function oi(){return Kn??=Lc("flangebook",mb,{upgrade:(t,e,n,s)=>gb(t,e,s),blocking:fb,terminated:ai}).catch(t=>{
throw Kn=void 0,t}),Kn}function ai(){Kn=void 0}async function fb(){(await Kn)?.close(),Kn=void 0}async function gb(t,e,n){
e<1&&(t.createObjectStore("cards",{keyPath:"code"}),t.createObjectStore("list",{keyPath:"code"}),t.createObjectStore(
"meta"),t.createObjectStore("outbox",{keyPath:"id"})),e<2&&(t.createObjectStore("sent",{keyPath:"id"}),t.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),e===1&&await $b(n))}async function $b(t){
let e=t.objectStore("outbox"),s=(await e.getAll()).sort((a,r)=>a.queued_at<r.queued_at?-1:1),o=0;for(let{trial:a,
...r}of s)e.put({...r,kind:"trial",body:a,number:++o});t.objectStore("meta").put(o,"number"),t.objectStore("me\
ta").delete("cursor")}function bb(t){return t instanceof DOMException?t.name==="QuotaExceededError"?"This devi\
ce is full: free some room on it.":"This browser lets nothing be kept here, as private windows do.":t instanceof
Error?t.message:String(t)}var mb,Kn,Po,ri=$(()=>{Cc();mb=2;Po=class extends Error{constructor(e){super(bb(e))}}});async function Yn(t,e,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${t}`,{signal:AbortSignal.timeout(e)},o)}catch(a){if(s)throw a;return n()}}var Io=$(()=>{});function qt(t,e){return Rc(Pc,n=>Ic(t,"readonly",{},e,n))}function Lt(t,e,{patience:n=Pc,durability:s="relaxed"}={}){
return Rc(n,o=>Yn("writer",n/2,()=>Ic(t,"readwrite",{durability:s},e,o)))}async function Ic(t,e,n,s,o){let a=await _b(
t,e,n);!o.now&&e==="readwrite"&&(a.abort(),await a.done),o.transaction=a,Ro.add(a),a.done.catch(()=>{}).finally(
()=>Ro.delete(a));try{let r=await s(yb(a));return e==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw li(
a),a.error??r}}async function _b(t,e,n){try{return(await oi()).transaction(t,e,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return ai(),(await oi()).transaction(t,e,n)}}function li(t){try{t.abort()}catch{}}
async function Rc(t,e){let n={now:!0},s=e(n);s.then(()=>Wc(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new zt),cn?wb:t)});try{return await Promise.race([s,a])}catch(r){throw r instanceof zt&&vb(n),r}finally{
clearTimeout(o)}}function vb(t){t.now=!1,t.transaction?.mode==="readwrite"&&li(t.transaction),Wc(!0)}function Wc(t){
t!==cn&&(cn=t,document.documentElement.dataset.storage=cn?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:cn}})))}var Pc,wb,zt,Ro,cn,ii,Hs,yb,Bc,Ce=$(()=>{ri();Io();Pc=1e3,wb=100,zt=class extends Error{constructor(){
super("This device's storage does not answer.")}},Ro=new Set,cn=!1,ii=!1,Hs=()=>cn;yb=t=>({store:Bc(t.objectStore(
t.objectStoreNames[0])),objectStore:e=>Bc(t.objectStore(e))}),Bc=t=>new Proxy(t,{get:(e,n)=>typeof t[n]=="func\
tion"?(...s)=>{let o=t[n](...s);return o?.catch?.(()=>{}),o}:t[n]});addEventListener("pagehide",()=>{ii||=Ro.size>
0;for(let t of Ro)li(t)});addEventListener("pageshow",t=>{t.persisted&&ii&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:cn}})),ii=!1})});function Wt(){if(crypto.randomUUID)return crypto.randomUUID();let t=crypto.getRandomValues(new Uint8Array(16));
return t[6]=t[6]&15|64,t[8]=t[8]&63|128,[...t].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function Fc(t){try{return await Lt(["outbox","meta"],e=>Sb(e,t),Dc)}catch(e){throw new Po(
e)}}async function Sb(t,e){let[n,s]=[t.objectStore("outbox"),t.objectStore("meta")],o=(await n.getAll()).sort(
ci).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...e,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function jc(){return Lt("meta",async({store:t})=>{let e=(await t.get(
"number")??0)+1;return t.put(e,"number"),e})}async function Dt(){return(await qt("outbox",({store:t})=>t.getAll())).
sort(ci)}async function dn(t){return(await Dt()).filter(e=>e.code===t)}async function Us(t){return qt("outbox",
({store:e})=>e.get(t))}async function Wo(t){return qt("sent",({store:e})=>e.get(t))}async function hn(t,e){await Lt(
"outbox",async({store:n})=>{let s=await n.get(t);s&&n.put({...s,...e})},Dc)}async function Do(t){let e=await Us(
t);await Lt("outbox",({store:n})=>n.delete(t)),e?.after&&await Fo(t,e.after)}async function Fo(t,e,n=()=>!0){for(let s of await Dt())
s.after===t&&n(s)&&await hn(s.id,{after:e})}async function Gs(t,e,n=!1){let{again:s,refused:o,late:a,missing:r,
parked:l,...c}=t;try{await Lt(["outbox","sent"],h=>{h.objectStore("sent").put({...c,proposed:n,sent_at:t.sent_at??
e}),h.objectStore("outbox").delete(t.id)})}catch{await Lt("outbox",({store:h})=>h.delete(t.id))}}async function Uc(t){
let e=Date.parse(t)-kb*xb;await Lt("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at??
"")<e&&n.delete(s.id)})}async function Gc(t){let[e,n]=[t.objectStore("outbox"),t.objectStore("sent")],s=(await n.
getAll()).sort(ci),o=await e.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...h}=r;a.has(
r.id)||e.put({...h,parked:c,again:!0,number:l-s.length})}),n.clear()}var kb,xb,Dc,ci,Hc,Nt=$(()=>{ri();Ce();kb=
90,xb=864e5,Dc={durability:"strict"};ci=(t,e)=>t.number-e.number;Hc=t=>hn(t,{refused:void 0})});async function te(t){return qt("cards",({store:e})=>e.get(t))}async function Be(){return(await qt("list",({store:e})=>e.
getAll())).sort((e,n)=>e.updated_at<n.updated_at?1:-1)}async function ie(t){return Lt(["cards","list"],async e=>{
let n=await e.objectStore("cards").get(t.code);return n&&Mb(t,n)?n:(Vc(e,t),t)})}function Vc(t,e){t.objectStore(
"cards").put(e),t.objectStore("list").put(Ab(e))}function Ab(t){let{code:e,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:h,trials_total:u,proposals:p}=t,{metal:m,thickness_mm:f}=h,b=p?.length??0;
return{code:e,title:n,note:s,metal:m,thickness_mm:f,bends:h.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:u,archived:c,settle:b}}async function zc(){return qt("list",({store:t})=>t.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function qc(){let t=["cards","list","meta","sent","lost"];await Lt(t,e=>{for(let n of t)
e.objectStore(n).clear()})}async function jo(){return qt("meta",({store:t})=>t.get("shop"))}async function Kc(){
return qt("meta",({store:t})=>t.get("cursor"))}async function Yc(t){let e=t.reset||await Ob()?["outbox","sent",
"lost"]:[];await Lt(["cards","list","meta",...e],async n=>{t.reset&&(await Eb(n),await Gc(n));let s=new Set(e.
length?await n.objectStore("lost").getAllKeys():[]);for(let a of t.cards)Vc(n,a),s.has(a.code)&&await Lb(n,a);
let o=n.objectStore("meta");t.shop&&o.put(t.shop,"shop"),o.put(t.cursor,"cursor"),o.put(!!t.more,"more")},{patience:Tb})}
async function Eb(t){let[e,n]=[t.objectStore("cards"),t.objectStore("lost")];for(let s of await e.getAll())n.put(
s);e.clear(),t.objectStore("list").clear()}async function Lb(t,e){let n=await t.objectStore("lost").get(e.code);
t.objectStore("lost").delete(e.code);let s=new Set(e.trials.map(r=>r.id)),o=new Set(await t.objectStore("outbo\
x").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>t.objectStore("outbox").put(
Jc(e.code,r,l-a.length)))}function Jc(t,{number:e,received_at:n,correction:s,device:o,...a},r){return{id:a.id,
kind:"trial",code:t,body:a,number:r,queued_at:n,again:!0}}async function Xc(t){await Lt("outbox",({store:e})=>{
t.trials.forEach((n,s)=>{e.put({...Jc(t.code,n,s-t.trials.length),missing:!0})})})}async function Ho(){return qt(
["meta","lost"],async t=>await t.objectStore("meta").get("more")?[]:t.objectStore("lost").getAll())}async function Uo(t){
await Lt("lost",({store:e})=>e.delete(t))}var Tb,Mb,Ob,Ct=$(()=>{Nt();Ce();Tb=2e4;Mb=(t,e)=>t.revision<e.revision||
t.revision===e.revision&&(t.trials_total<e.trials_total||t.proposals_total<e.proposals_total);Ob=async()=>await qt(
"lost",({store:t})=>t.count())>0});function Nb(){try{return{...Zc,...JSON.parse(localStorage.getItem(Qc)??"{}")}}catch{return{...Zc}}}function P(){
return un}function Pe(t){un={...un,...t};try{localStorage.setItem(Qc,JSON.stringify(un))}catch{}Vs();for(let e of di)
e(un)}function $t(t,e){di.add(t),e?.addEventListener("abort",()=>di.delete(t))}function Vs(){let t=td.matches?
"shop":"day";document.documentElement.dataset.theme=un.theme==="system"?t:un.theme}var Qc,Zc,di,un,td,nt=$(()=>{
Qc="flangebook.settings",Zc={units:"mm",inches:"decimal",theme:"system",name:"",paper:"A4"},di=new Set,un=Nb();
td=matchMedia("(prefers-color-scheme: dark)");td.addEventListener("change",Vs)});function od(t){return zs!==null&&t!=="pair"&&!(nd?.labels_open&&Cb.includes(t))}async function pn(t){hi+=1;try{
let{body:e}=await A("GET","/me",{signal:t,timeout:4e3});return nd=e,yc(e)&&document.dispatchEvent(new CustomEvent(
"rights")),e}finally{hi-=1}}async function ad(t){zs!==t&&(zs=t,await Promise.all([pn().catch(()=>null),qc().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function rd(t,e){let{body:n}=await A(
"POST","/pair",{body:{code:t,name:e}});return P().name||Pe({name:n.name}),zs=null,sd=performance.now(),await pn(),
n}async function id(){await A("POST","/leave",{}),await ad("unknown")}function ld(){document.addEventListener(
"not-paired",t=>{let{why:e,asked:n}=t.detail;n>sd&&ad(e)}),document.addEventListener("other-role",ed),qn()!=="\
owner"&&ed()}function ed(){hi||pn().catch(()=>null)}var Kt,Cb,nd,zs,sd,hi,Ie,Go,mn=$(()=>{G();Et();Ct();nt();Kt=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Bench\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},Cb=["\
card","step"],nd=null,zs=null,sd=-1/0,hi=0,Ie=()=>zs;Go=t=>t instanceof M||t instanceof Error?t.message:String(
t)});function bd(t,e){if(!gi(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return dd!==
void 0?dd.createHTML(e):e}function bn(t,e,n=t,s){if(e===le)return e;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=Ys(e)?
void 0:e._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(t),o._$AT(t,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(e=bn(t,o._$AS(t,e.values),o,s)),e}var pi,cd,Vo,dd,mi,
be,fi,Bb,$n,Ks,Ys,gi,gd,ui,qs,hd,ud,fn,pd,md,$d,$i,i,x,ZS,le,d,fd,gn,wd,Js,zo,Jn,wn,qo,Ko,Yo,Jo,yd,Pb,Re,_=$(()=>{
pi=globalThis,cd=t=>t,Vo=pi.trustedTypes,dd=Vo?Vo.createPolicy("lit-html",{createHTML:t=>t}):void 0,mi="$lit$",
be=`lit$${Math.random().toFixed(9).slice(2)}$`,fi="?"+be,Bb=`<${fi}>`,$n=document,Ks=()=>$n.createComment(""),
Ys=t=>t===null||typeof t!="object"&&typeof t!="function",gi=Array.isArray,gd=t=>gi(t)||typeof t?.[Symbol.iterator]==
"function",ui=`[ 	
\f\r]`,qs=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,hd=/-->/g,ud=/>/g,fn=RegExp(`>|${ui}(?:([^\\s"'\
>=/]+)(${ui}*=${ui}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),pd=/'/g,md=/"/g,$d=/^(?:script|style|textarea|title)$/i,$i=t=>(e,...n)=>({_$litType$:t,
strings:e,values:n}),i=$i(1),x=$i(2),ZS=$i(3),le=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),fd=new WeakMap,
gn=$n.createTreeWalker($n,129);wd=(t,e)=>{let n=t.length-1,s=[],o,a=e===2?"<svg>":e===3?"<math>":"",r=qs;for(let l=0;l<
n;l++){let c=t[l],h,u,p=-1,m=0;for(;m<c.length&&(r.lastIndex=m,u=r.exec(c),u!==null);)m=r.lastIndex,r===qs?u[1]===
"!--"?r=hd:u[1]!==void 0?r=ud:u[2]!==void 0?($d.test(u[2])&&(o=RegExp("</"+u[2],"g")),r=fn):u[3]!==void 0&&(r=
fn):r===fn?u[0]===">"?(r=o??qs,p=-1):u[1]===void 0?p=-2:(p=r.lastIndex-u[2].length,h=u[1],r=u[3]===void 0?fn:u[3]===
'"'?md:pd):r===md||r===pd?r=fn:r===hd||r===ud?r=qs:(r=fn,o=void 0);let f=r===fn&&t[l+1].startsWith("/>")?" ":"";
a+=r===qs?c+Bb:p>=0?(s.push(h),c.slice(0,p)+mi+c.slice(p)+be+f):c+be+(p===-2?l:f)}return[bd(t,a+(t[n]||"<?>")+
(e===2?"</svg>":e===3?"</math>":"")),s]},Js=class t{constructor({strings:e,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=e.length-1,c=this.parts,[h,u]=wd(e,n);if(this.el=t.createElement(h,s),gn.currentNode=this.el.content,
n===2||n===3){let p=this.el.content.firstChild;p.replaceWith(...p.childNodes)}for(;(o=gn.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let p of o.getAttributeNames())if(p.endsWith(mi)){let m=u[r++],
f=o.getAttribute(p).split(be),b=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:b[2],strings:f,ctor:b[1]===
"."?qo:b[1]==="?"?Ko:b[1]==="@"?Yo:wn}),o.removeAttribute(p)}else p.startsWith(be)&&(c.push({type:6,index:a}),
o.removeAttribute(p));if($d.test(o.tagName)){let p=o.textContent.split(be),m=p.length-1;if(m>0){o.textContent=
Vo?Vo.emptyScript:"";for(let f=0;f<m;f++)o.append(p[f],Ks()),gn.nextNode(),c.push({type:2,index:++a});o.append(
p[m],Ks())}}}else if(o.nodeType===8)if(o.data===fi)c.push({type:2,index:a});else{let p=-1;for(;(p=o.data.indexOf(
be,p+1))!==-1;)c.push({type:7,index:a}),p+=be.length-1}a++}}static createElement(e,n){let s=$n.createElement("\
template");return s.innerHTML=e,s}};zo=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:s}=this.
_$AD,o=(e?.creationScope??$n).importNode(n,!0);gn.currentNode=o;let a=gn.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let h;c.type===2?h=new Jn(a,a.nextSibling,this,e):c.type===1?h=new c.ctor(a,c.name,c.strings,this,
e):c.type===6&&(h=new Jo(a,this,e)),this._$AV.push(h),c=s[++l]}r!==c?.index&&(a=gn.nextNode(),r++)}return gn.currentNode=
$n,o}p(e){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(e,s,n),n+=s.strings.length-2):
s._$AI(e[n])),n++}},Jn=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,s,o){this.type=2,this.
_$AH=d,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=bn(this,e,n),Ys(e)?e===d||e==null||e===""?(this.
_$AH!==d&&this._$AR(),this._$AH=d):e!==this._$AH&&e!==le&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==
void 0?this.T(e):gd(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this.
_$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==d&&Ys(this._$AH)?this._$AA.nextSibling.data=e:this.
T($n.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:s}=e,o=typeof s=="number"?this._$AC(e):(s.el===
void 0&&(s.el=Js.createElement(bd(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new zo(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(e){let n=fd.get(e.strings);return n===void 0&&fd.
set(e.strings,n=new Js(e)),n}k(e){gi(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of e)
o===n.length?n.push(s=new t(this.O(Ks()),this.O(Ks()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){
let s=cd(e).nextSibling;cd(e).remove(),e=s}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},
wn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,s,o,a){this.
type=1,this._$AH=d,this._$AN=void 0,this.element=e,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=d}_$AI(e,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)e=bn(this,e,n,0),r=!Ys(e)||e!==this._$AH&&e!==le,r&&(this._$AH=e);else{let l=e,c,h;
for(e=a[0],c=0;c<a.length-1;c++)h=bn(this,l[s+c],n,c),h===le&&(h=this._$AH[c]),r||=!Ys(h)||h!==this._$AH[c],h===
d?e=d:e!==d&&(e+=(h??"")+a[c+1]),this._$AH[c]=h}r&&!o&&this.j(e)}j(e){e===d?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,e??"")}},qo=class extends wn{constructor(){super(...arguments),this.
type=3}j(e){this.element[this.name]=e===d?void 0:e}},Ko=class extends wn{constructor(){super(...arguments),this.
type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==d)}},Yo=class extends wn{constructor(e,n,s,o,a){super(
e,n,s,o,a),this.type=5}_$AI(e,n=this){if((e=bn(this,e,n,0)??d)===le)return;let s=this._$AH,o=e===d&&s!==d||e.capture!==
s.capture||e.once!==s.once||e.passive!==s.passive,a=e!==d&&(s===d||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Jo=class{constructor(e,n,s){
this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(e){
bn(this,e)}},yd={M:mi,P:be,A:fi,C:1,L:wd,R:zo,D:gd,V:bn,I:Jn,H:wn,N:Ko,U:Yo,B:qo,F:Jo},Pb=pi.litHtmlPolyfillSupport;
Pb?.(Js,Jn),(pi.litHtmlVersions??=[]).push("3.3.3");Re=(t,e,n)=>{let s=n?.renderBefore??e,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new Jn(e.insertBefore(Ks(),a),a,void 0,n??{})}return o._$AI(
t),o}});function Zs(t){return t.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function W(t){
return t.length>3?`${t.slice(0,3)}-${t.slice(3)}`:t}function ut(t){let e=Zs(t),n=[...e].filter(s=>!Xs.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:e,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return e.length>7?{code:e,whole:!1,
fault:`A card code has seven characters. This one has ${e.length}.`}:e.length<7?{code:e,whole:!1,fault:""}:vd(
e.slice(0,-1))!==e.at(-1)?{code:e,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:e,whole:!0,fault:""}}function bi(){let t=crypto.getRandomValues(
new Uint8Array(6)),e=Array.from(t,n=>Xs[n%Xs.length]).join("");return e+vd(e)}function vd(t){let e=0,n=2;for(let s of t)
e^=_d(n,Xs.indexOf(s)),n=_d(n,2);return Xs[e]}function _d(t,e){let n=0;for(let s=e,o=t;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var Xs,dt=$(()=>{Xs="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});var yn,Xo,Xn,wi=$(()=>{yn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Xo=t=>(...e)=>({
_$litDirective$:t,values:e}),Xn=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,s){this._$Ct=e,
this._$AM=n,this._$Ci=s}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}}});var s1,kd,Ib,Zo,yi=$(()=>{_();({I:s1}=yd),kd=t=>t.strings===void 0,Ib={},Zo=(t,e=Ib)=>t._$AH=e});var vt,We=$(()=>{_();wi();yi();vt=Xo(class extends Xn{constructor(t){if(super(t),t.type!==yn.PROPERTY&&t.type!==
yn.ATTRIBUTE&&t.type!==yn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!kd(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[
e]){if(e===le||e===d)return e;let n=t.element,s=t.name;if(t.type===yn.PROPERTY){if(e===n[s])return le}else if(t.
type===yn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(s))return le}else if(t.type===yn.ATTRIBUTE&&n.getAttribute(
s)===e+"")return le;return Zo(t),e}})});function Zn(t,e=Td){return Object.fromEntries(e.filter(n=>t[n]!==void 0).map(n=>[n,t[n]]))}function xd(t){return Array.
isArray(t)?[...t].sort((e,n)=>e.step-n.step).map(({step:e,set_angle_deg:n,punch_depth_mm:s})=>[e,n??null,s??null]):
t??null}function Qn(t,e,n){let s=[];for(let[l,c]of Rb){let[h,u]=[t[l],e[l]];h!==void 0&&!Qo(h,n[l])&&s.push({name:l,
label:c,shop:n[l],yours:h,before:u})}if(!t.settings)return s;let[o,a,r]=[t.settings,e.settings??[],n.settings].
map(Md);for(let l of new Set([...o.keys(),...a.keys()])){let[c,h,u]=[o.get(l),a.get(l),r.get(l)];Sd(c,h)||Sd(c,
u)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,shop:u,yours:c,before:h})}return s}function Ad(t,e,n){
let s={},o=t.filter(l=>e[l.name]==="yours");for(let l of o)l.name.startsWith("settings ")||(s[l.name]=l.yours);
let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)return s;let r=Md(n.settings);for(let l of a){let c=Number(
l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(c)}return{...s,settings:[...r.values()]}}var Td,Qo,ta,
_i,Rb,Md,Sd,ts=$(()=>{Td=["title","note","archived","settings"];Qo=(t,e)=>JSON.stringify(xd(t))===JSON.stringify(
xd(e));ta=(t,e)=>Zn(t,Td.filter(n=>n in t&&!Qo(t[n],e[n]))),_i=({before:t={}},e)=>Object.keys(t).every(n=>Qo(t[n],
e[n])),Rb=[["title","Title"],["note","Note"],["archived","In use"]];Md=t=>new Map(t.map(e=>[e.step,e])),Sd=(t,e)=>Qo(
t?[t]:[],e?[e]:[])});async function ea(t){vi.add(t.id);try{return await Od(t)}finally{vi.delete(t.id)}}async function Od(t){let e;try{
e=await Fc(t)}catch(n){let s=await jb(t);return s||(await Fb(n),Od(t))}try{return await Ld(e,4e3)??{where:"her\
e",answer:null}}catch(n){let s=n instanceof F||n instanceof zt;if(!s&&xi(n))throw await Do(e.id),n;return{where:"\
here",answer:null,late:s?"":await Pd(e,n)}}}async function Fb(t){ki.add(t),document.dispatchEvent(new CustomEvent(
"held")),await new Promise(e=>{setTimeout(e,Wb),document.addEventListener("storage",e,{once:!0})}),ki.delete(t),
document.dispatchEvent(new CustomEvent("held"))}async function jb(t){try{let{body:e}=await Cd({...t,number:0,queued_at:""},
8e3);return{where:"shop",answer:e}}catch(e){if(e instanceof F||!xi(e))return null;throw e}}async function Ed(){
return Yn("outbox",Db,Hb)}async function Hb(){let t=0;for(let{id:e}of await Dt()){if(vi.has(e))continue;let n=await Us(
e);if(!(!n||!await Ub(n)))try{await Ld(n,8e3)&&(t+=1)}catch(s){if(s instanceof F)break;xi(s)?await hn(n.id,{refused:s.
message,missing:s.status===404}):await Pd(n,s)}}return{sent:t,left:(await Dt()).length}}async function Ld(t,e){
if(!await Gb(t))return null;let n=await Us(t.id)??t;try{let s=await(n.parked?Bd(n,e):Cd(n,e));return await Nd(
n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof M&&s.status===412)||n.parked)throw s;
return Vb(n,e)}}async function Gb({id:t,code:e,after:n,before:s,parked:o}){if(!n||o)return!0;if(await Us(n))return!1;
if(!(await Wo(n))?.proposed)return!0;let a=await te(e);return!a||a.proposals?.some(r=>r.id===n)?!1:(await hn(t,
_i({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function Vb(t,e){if(t.body.part)throw new M(zb);
let{body:n,at:s}=await A("GET",`/cards/${t.code}`,{timeout:e});await ie(n);let o=(t.body.settles??[]).some(l=>n.
proposals.some(c=>c.id===l));if(o||!Qn(t.body,t.before??{},n).length)return await Gs(t,s),await Fo(t.id,n.revision_id,
l=>_i(l,n)),{where:o?"settle":"shop",answer:n};let a={...t,parked:!0};await hn(t.id,{parked:!0});let r=await Bd(
a,e);return await Nd(a,r),{where:"settle",answer:r.body}}async function Nd(t,{body:e,at:n}){if(t.kind!=="trial"){
let s=e;await ie(s).catch(()=>{}),!t.parked&&t.after&&s.revision_id===t.after&&await Fo(t.id,t.after)}await Gs(
t,n,!!t.parked),await Uc(n)}function Cd({kind:t,code:e,id:n,body:s,after:o,etag:a,missing:r},l){return t==="tr\
ial"?A("POST",`/cards/${e}/trials`,{body:r?{...s,again:!0}:s,timeout:l}):A("PUT",`/cards/${e}`,{body:{...s,id:n,
...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function Bd({id:t,code:e,body:n,before:s,revision:o,queued_at:a},r){
let{reason:l,by:c,settles:h,...u}=n,p={...l?{reason:l}:{},...c?{by:c}:{}};return A("POST",`/cards/${e}/proposa\
ls`,{body:{id:t,changes:u,before:s,revision:o,made_at:a,...p},timeout:r})}async function Pd({id:t},e){if(!(e instanceof
M)||e.status<500)return"";let n=e.status===507?"The disk of the shop’s server is full: make room on it":e.title;
return await hn(t,{late:n}).catch(()=>{}),n}function xi(t){if(!(t instanceof M))throw t;return t.status<500&&![
401,408,429].includes(t.status)}var Wb,Db,vi,ki,Qs,Ub,zb,es=$(()=>{G();ts();Nt();Ct();Ce();Io();Wb=3e3,Db=15e3;
vi=new Set;ki=new Set,Qs=()=>[...ki].at(-1)?.message??"";Ub=async({refused:t,again:e,missing:n,code:s})=>!t||!!(e&&
n&&await te(s));zb={title:"Changed meanwhile",status:412,detail:"The part was changed here, the shop was put b\
ack to an earlier day, and the card was changed again since. Open the card and make the change anew."}});function Yt(){return De}async function na(t){let e=await Dt().catch(()=>[]),n=await Ho().catch(()=>[]);De={...De,
...t,waiting:e.length,words:Ti(e),late:e.find(s=>s.late&&!s.refused)?.late??"",settle:await Kb(e).catch(()=>[]),
lost:n.length,refused:e.filter(s=>s.refused).length},document.documentElement.dataset.reached=String(De.reached),
document.documentElement.dataset.settle=String(De.settle.length),document.documentElement.dataset.waiting=String(
De.waiting),document.dispatchEvent(new CustomEvent("sync",{detail:De}))}function Ti(t){let n=["trial","note","\
edit"].map(s=>({kind:s,many:t.filter(o=>o.kind===s).length})).filter(({many:s})=>s).map(({kind:s,many:o})=>`${o}\
 ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):`${n.slice(0,-1).join(", ")} and ${n.at(-1)}`}async function Kb(t){
let e=(await zc()).flatMap(({code:n,settle:s})=>Array(s).fill(n));for(let n of t)for(let s of n.body.settles??
[])e.includes(n.code)&&e.splice(e.indexOf(n.code),1);return e}function Fe(t,e){let n=t||!!(e&&!(e instanceof F));
n!==De.reached&&na({reached:n})}function ns(){return na({})}function j(){return to?(Si=!0,to):(to=Yb().finally(
()=>to=void 0),to)}async function Yb(){do Si=!1,await Jb();while(Si)}async function Jb(){try{await Id(),(await Ed()).
sent>0&&await Id(),await na({reached:!0,at:new Date().toISOString(),unkept:!1})}catch(t){await na(t instanceof
F?{reached:!1}:t instanceof M?{reached:!0}:{unkept:!0}),!(t instanceof F||t instanceof M&&t.status===401)&&!(t instanceof
zt)&&console.warn("changes feed:",t)}}async function Id(){for(;await Yn("feed",qb,Xb););}async function Xb(){let t=await Kc()??
"",{body:e}=await A("GET",`/changes?since=${encodeURIComponent(t)}`,{timeout:15e3});return await Yc(e),e.more}
function Rd(){j(),addEventListener("online",()=>j()),addEventListener("offline",()=>j()),document.addEventListener(
"visibilitychange",()=>document.visibilityState==="visible"&&j()),setInterval(()=>document.visibilityState==="\
visible"&&j(),1e4)}var qb,De,to,Si,wt=$(()=>{G();Nt();es();Ce();Ct();Io();qb=3e3,De={reached:null,waiting:0,words:"",
late:"",refused:0,settle:[],lost:0,at:null,unkept:!1},Si=!1});function sa(t){return Object.hasOwn(je,t)?t:void 0}async function it(t,e){try{return await oa(t,e)}catch(n){let s=n instanceof
F?await jo():void 0;if(!s?.[t])throw n;return{items:s[t],etag:null,kept:!0}}}async function He(){try{let t=await jo();
if(t||!Yt().unkept)return t}catch{}try{let[{press:t},{items:e}]=await Promise.all([ra(),oa("metals")]);return{
press:t,metals:e}}catch{return}}async function oa(t,e){let{body:n,etag:s}=await A("GET",`/${t}`,{signal:e});return{
items:n[t],etag:s,kept:!1}}async function Wd(t,e,n){await A("PUT",`/${t}`,{body:{[t]:e.map(_n),by:P().name},etag:n})}
async function aa(t){try{return await ra(t)}catch(e){let n=e instanceof F?await jo():void 0;if(!n)throw e;return{
press:n.press??null,etag:null,kept:!0}}}async function ra(t){let{body:e,etag:n}=await A("GET","/press",{signal:t});
return{press:e.press,etag:n,kept:!1}}async function Dd(t,e){let n={press:_n(t),by:P().name};return(await A("PU\
T","/press",{body:n,etag:e})).body.press}function _n({outline_mm:t,outlines_mm:e,...n}){return n}function Fd(t,e){
return JSON.stringify(t&&_n(t))===JSON.stringify(e&&_n(e))}function Ue({tray:t,slot:e}){return!t&&!e?"place no\
t given":[t&&(/^\S{1,4}$/.test(t)?`Tray ${t}`:t),e&&`slot ${e}`].filter(Boolean).join(", ")}var je,rt,ss,pt=$(
()=>{G();nt();Ct();wt();je={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",title:"\
Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"Metals"}},
rt={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_holders",
metals:"shop.write_metals"};ss=(t,e)=>t?.find(n=>n.code===e)?.name??e});function eo(t,e){let s=e.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...Zn(c.body)}),
t),o=e.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(t.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??t.revision_id,here:o}}async function vn(t){return eo(t,
await dn(t.code).catch(()=>[]))}async function Mi(t){let e=await te(t);return e&&eo(e,(await dn(t)).filter(n=>n.
body.settles))}async function no(t){let e=await te(t);return e&&vn(e)}async function Ge(t,e,{reason:n="",settles:s=[]}={}){
let o=ta(e,t),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:t};let{name:r}=P(),l=await ea(
{id:Wt(),kind:a.every(u=>u==="note")&&!s.length?"note":"edit",code:t.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:Zn(t,a),after:t.after,etag:t.etag,revision:t.revision}),c=await no(t.
code).catch(()=>{}),h=l.answer;return{where:l.where,card:c??(h?eo(h,[]):{...t,...o})}}var Ve=$(()=>{ts();Nt();
es();nt();Ct()});function Ai(t){if(t.limits!==void 0)return t.limits;let e=[t,...t.corrections??[]].filter(Qb);if(!e.length)return null;
let n=tw(t)+.5,s=Math.max(Math.min(...e.map(r=>r.set_angle_deg)),n),o=e.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function ce(t,e){let n=Ai(
t);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=e;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function tw({drawing:t,v_opening_mm:e}){let n=(t?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&e?2*Math.atan(e/2/Math.min(...n))*Zb:0}var jd,Zb,Qb,kn=$(()=>{jd=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],Zb=180/Math.PI;Qb=t=>typeof t.set_angle_deg=="number"&&typeof t.punch_depth_mm=="number"});async function yt(t,e,n){let s=null,o=await te(t).catch(a=>{s=a});if(!o){await e(await vn(await ew(t,n,s)),{where:"\
shop"});return}await e(await vn(o),{where:"device"}),nw(o,e,n)}async function ew(t,e,n){try{return await we(t,
e)}catch(s){throw s instanceof F&&n instanceof zt?n:s}}async function Hd(){try{let t=await Be();if(t.length||!Yt().
unkept)return{list:t,where:"device"}}catch{}try{let{body:t}=await A("GET","/cards?archived=all&limit=200",{timeout:4e3});
return Fe(!0),{list:t.cards.map(e=>({...e,note:""})),where:"shop"}}catch(t){return Fe(!1,t),{list:[],where:"sh\
op"}}}async function nw(t,e,n){try{let s=await we(t.code,n);!n.aborted&&s.etag!==t.etag&&await e(await vn(s),{
where:"shop"})}catch{}}async function Ud(t,e){if(await te(t).catch(()=>{}))return"device";try{return await we(
t,e),"shop"}catch(n){if(n instanceof M&&n.status===404)return"nowhere";if(n instanceof F)return"silent";throw n}}
async function we(t,e){try{let{body:n}=await A("GET",`/cards/${t}`,{signal:e,timeout:4e3});return Fe(!0),await ie(
n).catch(()=>n)}catch(n){throw e?.aborted||Fe(!1,n),n}}async function ia(t,e){let{body:n}=await A("PUT",`/card\
s/${t.code}`,{body:e,etag:t.etag,timeout:e.replan?6e4:8e3});return ie(n).catch(()=>n)}function ee(t,e){let n=t.
settings?.find(a=>a.step===e.number),s={set_angle_deg:n?.set_angle_deg??e.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??
e.punch_depth_mm},o=ce(e,s);return{...o?s:{set_angle_deg:null,punch_depth_mm:null},firstHit:n||!o?null:e.first_hit??
null,gauge_x_mm:n?.gauge_x_mm??e.gauge_x_mm,fromTrial:!!n,reason:n?.reason??""}}var kt=$(()=>{G();Ve();kn();Ce();
Ct();wt()});function la(t){let e=qn()==="bench"?"This device is a bench screen":"This device is an operator's",n=wc(t)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${e}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var I,st,lt=$(()=>{_();Et();os();I=(t,e,n=d)=>ht(t)?e:n,st=(t,e,n=d)=>ye(t)?e:n});function Q(t,e){let n=t.toFixed(e);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(t,e={}){
return t==null?{text:"–",unit:""}:Ft()?P().inches==="fraction"?{text:ow(t/Jt),unit:"in"}:{text:Q(t/Jt,(e.digits??
1)+2),unit:"in"}:{text:Q(t,e.digits??1),unit:"mm"}}function ow(t){let e=Math.round(Math.abs(t)*64),n=e%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(e/64),a=t<0&&e>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function mt(t,{up:e=!1}={}){if(t==null)return{text:"–",unit:""};let n=Ft()?t/ca:t,s=Math.abs(
n)<10?1:0;return{text:Q(e?zd(n,s):n,s),unit:Ft()?"tons":"kN"}}function Ot(t,{up:e=!1}={}){if(t==null)return{text:"\
–",unit:""};let n=Ft()?t/ca*Vd:t,s=Math.abs(n)<20?1:0;return{text:Q(e?zd(n,s):n,s),unit:Ft()?"tons/ft":"kN/m"}}
function zd(t,e){let n=10**e;return Math.ceil(t*n-1e-9)/n}function S(t,e=1){return t==null?{text:"–",unit:""}:
{text:Q(t,e),unit:"°"}}function so(t){if(t==null)return{text:"–",unit:""};let e=Ft()?t/sw:t;return{text:Q(e,
e<10?2:1),unit:Ft()?"lb":"kg"}}function _e(t,e){if(/_(low|high)$/.test(t))return _e(t.replace(/_(low|high)$/,""),
e);if(t.endsWith("_kn_per_m"))return Ot(e);if(t.endsWith("_mm_s")){let s=w(e,{digits:0});return{text:s.text,unit:`${s.
unit}/s`}}if(t.endsWith("_mm"))return w(e,{digits:Math.abs(e)<10?2:1});if(t.endsWith("_kn"))return mt(e);if(t.
endsWith("_deg"))return S(e);if(t.endsWith("_kg"))return so(e);if(t.endsWith("_percent"))return{text:Q(e,0),unit:"\
%"};let n=Math.abs(e)<10?100:Math.abs(e)<100?10:1;return{text:String(Math.round(e*n)/n),unit:""}}function g(t){
return t.unit==="°"?`${t.text}°`:`${t.text} ${t.unit}`.trim()}function as({text:t,unit:e}){return g({text:e===
"in"?t:t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,""),unit:e})}function ze(){return Ft()?{unit:"tons",size:ca}:
{unit:"kN",size:1}}function xn(){return Ft()?{unit:"tons/ft",size:ca/Vd}:{unit:"kN/m",size:1}}function Oi(t,{size:e}){
return t==null?"":String(e===1?t:Number((t/e).toFixed(4)))}function oo(t,{unit:e}){let n=da(t);return qd.test(
n)?`${n} ${e}`.replace(" tons"," short tons"):n.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i,(s,o,a="")=>{let r=a?
a.includes("ft"):Ft();return`${o}${r?"short tons":"t"}${a}`})}function B(){return Ft()?"in":"mm"}function tt(t,e=B()){
let n=da(t);return qd.test(n)||e==="in"&&Yd.test(n)?`${n} ${e}`:n}function da(t){let e=t.trim();return Kd.test(
e)?e:e.replace(/^([+-]?\d+),(\d+)(?![\d.,])/,"$1.$2")}function Jd(t,e=B()){let n=t.trim(),[,s,o,a]=Kd.exec(n)??
[];return s?[String(+`${s}.${o}`),`${s}${o}`].map(l=>a?`${l} ${a}`:l):e==="mm"&&Yd.test(n)?[`${n} in`]:[]}function Xd(t){
let[,e,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.exec(t??"")??[];return e?Number(e)*(n==="in"?Jt:1):null}function z(t){
if(t==null)return"";let e=Ft()?t/Jt:t;return String(Number(e.toFixed(Ft()?4:3)))}var Jt,ca,Gd,sw,Vd,Ft,qd,Kd,Yd,
L=$(()=>{nt();Jt=25.4,ca=8.896443230521,Gd=9.80665,sw=.45359237,Vd=.3048,Ft=()=>P().units==="inch";qd=/^[+-]?(\d+\.?\d*|\.\d+)$/,
Kd=/^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/,Yd=/^(\d+[\s-]+)?\d+\s*\/\s*\d+$/});function jt(t,e){return t.length*e*.6+e*.3}function aw(t,e){return Math.abs(t.x-e.x)*2<t.width+e.width&&Math.abs(
t.y-e.y)*2<t.height+e.height}function Zd(t,[[e,n],[s,o]]){let a=0,r=1,l=[[e-t.x,s-e,t.width/2],[n-t.y,o-n,t.height/
2]];for(let[c,h,u]of l){if(h===0){if(Math.abs(c)>u)return!1;continue}let[p,m]=[(-u-c)/h,(u-c)/h];a=Math.max(a,
Math.min(p,m)),r=Math.min(r,Math.max(p,m))}return a<=r}function rw([t,e],[n,s]){return ha(t,e,n)!==ha(t,e,s)&&
ha(n,s,t)!==ha(n,s,e)}function ha(t,e,n){return(e[0]-t[0])*(n[1]-t[1])>(e[1]-t[1])*(n[0]-t[0])}var ua,pa=$(()=>{
ua=class{constructor(e){this.edges=e,this.taken=[]}choose(e){let n=e[0],s=1/0;for(let o of e){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:e,
lines:n=[]}){let s=this.taken.filter(l=>aw(e,l)).length,o=this.edges.filter(l=>Zd(e,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(h=>rw(c,h)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(h=>Zd(h,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function St(t){return t.length?`M${t.map(([e,n])=>`${e} ${-n}`).join("L")}Z`:""}function ao(t){return t.length?
`M${t.map(([e,n])=>`${e} ${-n}`).join("L")}`:""}function Xt(t){let e=t.flat().map(([s])=>s),n=t.flat().map(([,
s])=>s);return[Math.min(...e),Math.min(...n),Math.max(...e),Math.max(...n)]}function Qd([t,e,n,s],o){return`${t-
o} ${-s-o} ${n-t+2*o} ${s-e+2*o}`}function Sn([t,e,n,s],o,a){let r=Math.min(o/Math.max(n-t,1e-6),a/Math.max(s-
e,1e-6));return([l,c])=>[(l-t)*r,(s-c)*r]}var qe=$(()=>{});function H(t){let{text:e}=w(t,{digits:2});return P().inches==="fraction"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function eh({section:t,part:e},{pixels:n=rs(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=Sn(Xt([t.outline]),n-2*l,s-2*l),h=t.outline.map(c),u=new ua(h.map((v,N)=>[v,h[(N+1)%h.length]])),p=cw(t).map(
(v,N)=>hw(v.map(c),H(e.flats_mm[N]),u,18)),m=t.bend_points.map((v,N)=>dw(c(v),N+1,e.bends[N],u,18)),[f,b,y,T]=mw(
[...h,...m.flatMap(v=>th(v.box)),...p.flatMap(v=>[...th(v.box),...v.lines.flat()])]),[E,C]=[y-f+12,T-b+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${lw(e)}
    width=${E}
    height=${C}
    viewBox="${f-6} ${b-6} ${E} ${C}">
    <path class="sheet" d="M${h.map(v=>v.join(" ")).join("L")}Z" />
    ${p.map(({lines:v,box:N,text:X})=>x`${v.map(([ct,No])=>x`<path class="dimension" d="M${ct}L${No}"/>`)}
      ${uw(v[0])}${pw(N,X,18)}`)}
    ${m.map(({box:v,text:N,number:X,badge:ct})=>x`<circle class="badge ${X===a?"marked":""}" cx=${ct[0]} cy=${ct[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${ct[0]} y=${ct[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${X}</text>
      <text x=${ct[0]+18*.95} y=${v.y} font-size=${18}
        dominant-baseline="central">${N}</text>`)}
  </svg>`}function rs(){return Math.min(Math.max(innerWidth-32,300),720)}function lw(t){return`Section. ${t.flats_mm.
map((n,s)=>{let o=t.bends[s],a=o?`, bend ${s+1}: ${nh(o)} ${o.direction}`:"";return`flat ${s+1}: ${g(w(n))}${a}`}).
join("; ")}.`}function nh(t){return t.kind==="closed_hem"?"hem":t.kind==="open_hem"?"open hem":g(S(t.included_angle_deg)).
replace(".0°","°")}function cw({dimensions:t,bend_points:e,centre_line:n}){if(t)return t;let s=[n[0],...e,n[n.
length-1]];return s.slice(1).map((o,a)=>[s[a],o])}function dw(t,e,n,s,o){let a=nh(n),r=jt(a,o)+1.6*o,l=[1.4,1.9,
2.6].flatMap(u=>iw.map(p=>{let m=t[0]+Math.cos(p)*(u*o+r/2-o*.6),f=t[1]+Math.sin(p)*u*o;return{box:{x:m,y:f,width:r,
height:o*1.5},cost:u*2}})),{box:c}=s.choose(l),h=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:e,badge:h}}function hw([
t,e],n,s,o){let a=Math.hypot(e[0]-t[0],e[1]-t[1])||1,r=[-(e[1]-t[1])/a,(e[0]-t[0])/a],[l,c]=[jt(n,o),o*1.3],h=(m,f)=>[
m[0]+r[0]*f,m[1]+r[1]*f],u=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap(f=>[.5,.3,.7].map(b=>{let[y,T]=[h(t,f*o),h(
e,f*o)],E={x:y[0]+(T[0]-y[0])*b,y:y[1]+(T[1]-y[1])*b,width:l,height:c},C=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(
f*r[1])*o*.9:0,v=[[y,T],[h(t,Math.sign(f)*o*.5),h(y,Math.sign(f)*4)],[h(e,Math.sign(f)*o*.5),h(T,Math.sign(f)*
4)]];return{box:{...E,y:E.y+C},cost:Math.abs(f)+(b===.5?0:.5),lines:v}}))),p=s.choose(u);return{box:p.box,lines:p.
lines,text:n}}function uw(t){return t.map(([e,n])=>x`<path class="dimension tick" d="M${e-4} ${n+4}L${e+4} ${n-
4}"/>`)}function pw({x:t,y:e,width:n,height:s},o,a){return x`<rect class="ground" x=${t-n/2} y=${e-s/2} width=${n} height=${s}/>
    <text x=${t} y=${e} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function th({
x:t,y:e,width:n,height:s}){return[[t-n/2,e-s/2],[t+n/2,e+s/2]]}function mw(t){return Xt([t])}var iw,ne=$(()=>{
_();nt();L();pa();qe();iw=[0,90,180,270,45,135,225,315].map(t=>t*Math.PI/180)});function k(t,e=fw[t]){return i`<span class="flag ${t}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${gw[t]}</svg>${e}</span
  >`}function Ke(t,e){return t.replace(/\{(\w+)\}/g,(n,s)=>s in e?as(_e(s,e[s])):n)}function $w({step:t,steps:e=[]}){
return e.length>1?i`<b>Steps ${e.join(", ")}.</b> `:t?i`<b>Step ${t}.</b> `:d}function _t(t,{quiet:e=!1}={}){let n=t.
filter(s=>!e||s.level!=="ok").sort((s,o)=>sh[Ht(s)]-sh[Ht(o)]);return n.length===0?d:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${k(Ht(s))}
          <div class="say">
            ${$w(s)}${Ke(s.template,s.numbers)}
            ${s.do?i`<div class="do">${Ke(s.do_template??s.do,s.numbers)}</div>`:d}
          </div>
        </li>`)}
  </ul>`}var fw,sh,gw,Ht,bt,ro,U=$(()=>{_();L();fw={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",
ok:"OK"},sh={stop:0,caution:1,unknown:2,note:3,ok:4},gw={stop:x`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:x`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:x`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:x`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:x`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};Ht=({level:t,sign:e,do:n,
step:s,steps:o=[]})=>e??(t==="ok"&&n&&(s||o.length)?"note":t);bt=({template:t,numbers:e})=>Ke(t,e),ro=t=>t.map(
bt).join(" ")});function Tn(t){let e=new Date(t);return Number.isNaN(e.valueOf())?"":e.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function ot(t){let e=new Date(t);return Number.isNaN(e.valueOf())?"":`${Tn(t)}\
, ${e.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function is({made_at:t,received_at:e}){return e?
!t||Math.abs(Date.parse(t)-Date.parse(e))<bw?ot(e):`in the shop ${ot(e)}, made ${ot(t)} by the device’s clock`:
ot(t??"")}function ve({by:t,device:e}){return[t,e===t?"":e].filter(Boolean).join(", ")}var bw,Ut=$(()=>{bw=5*6e4});function oh(t,{metalName:e,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${t.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${W(s.code)}</span>
            <span class="more">
              ${e(s.metal)}, ${H(s.thickness_mm)} ${B()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${Tn(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · put away":""}
              ${ww(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="settle">${k("caution",`${s.settle} to settle`)}</span>`:d}
              ${s.worst==="stop"?k("stop"):d}
            </span>
          </a>
        </li>`)}
  </ul>`}var ww,ah=$(()=>{_();dt();ne();L();U();Ut();ww=t=>t?i`· <b>${t} ${/^1 \S+$/.test(t)?"waits":"wait"}</b>`:
d});function Ye(t){if(t instanceof zt)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${ih}
    </div>`;if(t instanceof F)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let e=t instanceof M?t.message:String(t);return t instanceof M||console.error(t),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${e}
  </div>`}var Tt,xt,rh,ih,Bt=$(()=>{_();G();Ce();Tt=t=>i`<p class="state" data-test="loading">${t}</p>`,xt=(t,e=d)=>i`<div class="state" data-test="empty">
    <h1>${t}</h1>
    ${e}
  </div>`,rh=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${Hs()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${ih}
  </div>`,ih=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function ft(t,{replace:e=!1}={}){_w()&&(history[e?"replaceState":"pushState"](null,"",t),ke(!0))}function de(t){
io=t}function _w(){let t=io?.();return!t||confirm(t)}function lh(){io?.()?Je():ke()}async function ke(t=!1){Ei.
abort(),Ei=new AbortController,io=null;let{signal:e}=Ei,n=document.documentElement;delete n.dataset.ready;let s=vw(
fa(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
Je();let o=l=>{clearTimeout(a),e.aborted||Re(l,ma())};Re(i``,ma());let a=setTimeout(()=>o(rh()),yw);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!ht(r)){o(la(r)),n.dataset.ready="n\
ot-yours";return}try{let l=await s.route.load();if(e.aborted)return;scrollTo(0,0),await l.show({params:s.params,
query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{e.
aborted||(n.dataset.ready=s.route.name)},signal:e})}catch(l){if(e.aborted)return;o(Ye(l)),n.dataset.ready="fai\
led"}t&&!e.aborted&&ma().focus({preventScroll:!0})}function vw(t){return t&&od(t.route.name)?{route:dh("pair"),
params:{}}:t}function ch(){return addEventListener("popstate",()=>ke()),addEventListener("beforeunload",t=>(Qs()||
io?.())&&t.preventDefault()),document.addEventListener("click",t=>{let e=t.target.closest("a");!e||t.defaultPrevented||
t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||e.target||e.hasAttribute("download")||e.origin!==location.origin||
!fa(e.pathname)||e.hash&&e.pathname===location.pathname||(t.preventDefault(),ft(e.pathname+e.search+e.hash))}),
ma().replaceChildren(),ke()}var yw,Ei,io,ma,Pt=$(()=>{_();Li();mn();Et();os();es();lt();Bt();yw=1e3,Ei=new AbortController,
io=null,ma=()=>document.getElementById("main")});function $a(t,e,n,s){let o=ut(t.code),a=o.fault||(t.asked&&!o.whole?xw(o.code):"");return i`<form class="code-form" @submit=${l=>{
l.preventDefault(),t.asked=!0,o.whole?ft(`/c/${o.code}`):n()}}>
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
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:kw(o,e,s)}
    </p>
  </form>`}function kw(t,e,n){if(!t.whole)return n;let s=e.find(o=>o.code===t.code);return s?i`<span data-test="code-found"
        >${W(t.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A right code, but not on this device yet. Open asks the shop.</span
      >`}var ga,xw,Ni=$(()=>{_();We();dt();Pt();ga=()=>({code:"",asked:!1});xw=t=>t?`A card code has seven cha\
racters. This is ${t.length}.`:"Type the seven characters printed on the label."});var uh={};et(uh,{show:()=>Tw});async function Tw(t){t.title("Find a card");let e={typed:ga(),search:"",shown:Ci},
n=await hh(),s=!1,o=()=>{t.render(i`<div class="home">
        <h1>Find a card</h1>
        <div class="home-scan">
          <a class="button next wide" href="/scan" data-test="scan">${Sw} Scan a label</a>
        </div>
        <div class="home-ways">
          ${$a(e.typed,n.list,o,"Seven characters, capitals or not.")}
          <nav class="home-new" aria-label="Start something">
            ${st("/bend",i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`)}
            ${st("/part",i`<a class="button" href="/part" data-test="new-part"
                >${I("cards.create","New part","Plan a part")}</a
              >`)}
          </nav>
        </div>
        ${Mw(e,n,s,o)}
      </div>`)};o();let a=async()=>{s||=Yt().reached!==null,n=await hh(),o(),(s||n.list.length)&&t.ready()};document.
addEventListener("sync",a,{signal:t.signal}),n.list.length&&t.ready(),await j().then(a)}async function hh(){let[
{list:t,where:e},n,s]=await Promise.all([Hd(),He(),Dt().catch(()=>[])]),o=new Map;for(let{code:r}of s)o.set(r,
Ti(s.filter(l=>l.code===r)));return{list:t,where:e,waiting:o,metalName:r=>ss(n?.metals,r)}}function Mw(t,e,n,s){
if(e.list.length===0)return n?Ew():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=Aw(e,t.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${vt(t.search)}
        @input=${a=>{t.search=a.target.value,t.shown=Ci,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${Ow(o.length,e,t.search)}</p>
    ${oh(o.slice(0,t.shown),e)}
    ${o.length>t.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{t.shown+=Ci,s()}}>
              Show more
            </button>
          </div>`:d}
  </section>`}function Aw({list:t,metalName:e},n){let s=n.toLowerCase().split(/\s+/).filter(Boolean);return s.
length===0?t.filter(o=>!o.archived):t.filter(o=>{let{code:a,title:r,note:l,metal:c}=o,h=`${a} ${W(a)} ${r} ${l}\
 ${c} ${e(c)}`.toLowerCase();return s.every(u=>h.includes(u))})}function Ow(t,{list:e,where:n},s){let o=n==="d\
evice"?"on this device":"of the shop";return s.trim()===""?t===1?`1 card ${o}`:`${t} cards ${o}`:t===0?`None o\
f the ${e.length} cards has that.`:`${t} of ${e.length} cards`}function Ew(){return Yt().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${I("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var Ci,Sw,ph=$(()=>{_();We();dt();pt();Nt();kt();wt();lt();ah();Ni();Ci=40,Sw=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`});var Mn,mh,fh,ls,Bi=$(()=>{Mn=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],mh=["guaranteed minimum","typical","measured","common practice","from memory"],fh=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],ls=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function An(t=""){let n=t.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(gh.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...$h}]}function yh(t){let e=An(t),{angle:n,face:s}=e[e.length-1];return lo(
[...e,{...$h,angle:n,face:s}])}var gh,$h,bh,lo,wh,_h,co,Pi=$(()=>{gh=["v","angle","radius","face","centre","co\
de","rating"],$h={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},bh=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];lo=t=>t.map(e=>gh.map(n=>e[n].replaceAll(";",",")).join("; ")).join(
`
`),wh=(t,e,n)=>lo(An(t).map((s,o)=>o===e?{...s,...n}:s));_h=(t,e)=>lo(An(t).filter((n,s)=>s!==e)),co={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var kh,Ii,vh,Ri,Wi,ba,cs,Di,Fi,wa,ji=$(()=>{kh="Empty is unknown: checks with it then say so.",Ii={name:"ratin\
g_kn_per_m",label:"Rating",type:"rating",hint:"As stamped on the tool or in its maker's papers."},vh={name:"se\
gments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned twice twice."},
Ri=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],Wi=[{name:"condition",label:"\
Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown","unknown"]]},
{name:"condition_note",label:"Note on its condition",type:"note"}],ba={name:"name",label:"Name",type:"text",broad:!0},
cs=(t,e)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:t,hint:`One point a line: x, y. x tow\
ards the back gauge, y up. ${e}`,when:n=>n.shape==="points"}),Di=t=>t.shape!=="multi_v",Fi=({die_holder_height_mm:t})=>!!t&&
!/^0+([.,]0*)?( mm| in)?$/.test(String(t)),wa={punches:[{title:"What it is",part:"what",fields:[ba,{name:"angl\
e_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_mm",label:"Tip radius",type:"length"}]},{
title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[["straight","\
straight"],["gooseneck","gooseneck"],["points","by points or DXF"]]},{name:"height_mm",label:"Height, tip to s\
eat",type:"length"},{name:"body_width_mm",label:"Width of the body",type:"length"},{name:"neck_relief_mm",label:"\
Throat behind the tip",type:"length",when:t=>t.shape==="gooseneck"},{name:"neck_width_mm",label:"Thickness of \
the neck",type:"length",when:t=>t.shape==="gooseneck",blank:"as the body"},{name:"throat_top_mm",label:"Throat\
 begins to close",type:"length",when:t=>t.shape==="gooseneck",blank:"as high as it can",hint:"Above the tip."},
cs("punch","The tip is at 0, 0."),{name:"turned",label:"Sits in the press",type:"yes",options:[["no","as drawn"],
["yes","turned round"]]}]},{title:"Rating and pieces",part:"rest",fields:[Ii,vh]},{title:"Place and condition",
part:"rest",fields:[...Ri,...Wi]}],dies:[{title:"What it is",part:"what",fields:[ba,{name:"v_opening_mm",label:"\
V opening",type:"length",hint:"Between the sharp corners of face and flanks.",when:Di},{name:"angle_deg",label:"\
Angle of the V",type:"number",unit:"°",when:Di},{name:"shoulder_radius_mm",label:"Shoulder radius",type:"leng\
th",when:Di}]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[
["single_v","single V"],["multi_v","block with several V's"],["points","by points or DXF"]]},{name:"height_mm",
label:"Height",type:"length"},{name:"width_mm",label:"Width",type:"length"},{name:"turned",label:"Sits in the \
press",type:"yes",options:[["no","as drawn"],["yes","turned round"]]},{name:"openings",label:"The V's of the b\
lock",type:"openings",when:t=>t.shape==="multi_v"},{name:"up",label:"V that is up",type:"number",hidden:!0,when:t=>t.
shape==="multi_v"},cs("die","The top face is at y 0, the V's middle at x 0.")]},{title:"Rating and pieces",part:"\
rest",fields:[Ii,vh]},{title:"Place and condition",part:"rest",fields:[...Ri,...Wi]}],holders:[{title:"What it\
 is",part:"what",fields:[ba,Ii]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pic\
k",broad:!0,options:[["block","plain block"],["clamps","clamps that stick out"],["points","by points or DXF"]]},
{name:"height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the \
front",type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to\
 the back",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:t=>t.shape===
"clamps"},{name:"body_front_mm",label:"Body above, to the front",type:"length",when:t=>t.shape==="clamps"},{name:"\
body_back_mm",label:"Body above, to the back",type:"length",when:t=>t.shape==="clamps"},cs("holder","The punch\
's seat is at 0, 0.")]},{title:"Place and condition",part:"rest",fields:[...Ri,...Wi]}],press:[{title:"The pre\
ss",part:"what",fields:[ba,{name:"force_kn",label:"Full force",type:"force"},{name:"bed_length_mm",label:"Bed \
length",type:"length"},{name:"between_frames_mm",label:"Between the frames",type:"length"},{name:"open_height_\
mm",label:"Open height",type:"length"},{name:"stroke_mm",label:"Stroke",type:"length"},{name:"throat_mm",label:"\
Throat",type:"length"}]},{title:"Ram and bed",part:"outline",fields:[{name:"ram_width_mm",label:"Ram width",type:"\
length",needed:!0},{name:"ram_height_mm",label:"Ram height",type:"length",needed:!0},{name:"bed_width_mm",label:"\
Bed width",type:"length",needed:!0},{name:"bed_height_mm",label:"Bed height",type:"length",needed:!0},{name:"f\
loor_below_die_mm",label:"Floor below the die",type:"length",broad:!0,blank:"not looked at",hint:"From the fac\
e that the die stands on, down to the floor: long parts hang that far."},{...cs("ram","From the face that carr\
ies the holder. Empty: a plain beam."),name:"ram_points_mm",label:"Ram by points",when:void 0,folded:!0},{...cs(
"bed","From the face that carries the die or its holder. Empty: a plain beam."),name:"bed_points_mm",label:"Be\
d by points",when:void 0,folded:!0}]},{title:"Riser or die holder on the bed",part:"rest",fields:[{name:"die_h\
older_height_mm",label:"Height under the die",type:"length",blank:"none",broad:!0,hint:"0 or empty: the die st\
ands on the bed."},{name:"die_holder_width_mm",label:"Width",type:"length",when:Fi,blank:"by points"},{name:"d\
ie_holder_rating_kn_per_m",label:"Rating of the die holder",type:"rating",hint:"As stamped on it or in its pap\
ers.",when:Fi},{...cs("die_holder","The die's seat is at y 0, the bed's at minus the height. Empty: a plain bl\
ock."),name:"die_holder_points_mm",label:"Die holder by points",when:Fi,folded:!0}]},{title:"What it bears",part:"\
rest",fields:[{name:"force_per_m_limit_kn_per_m",label:"Most force per length of bed",type:"rating",hint:"What\
 bed and ram bear over a short length."},{name:"off_centre_mm",label:"Full force off the middle, up to",type:"\
length",blank:"unknown"},{name:"deflection_mm",label:"Gives way in the middle",type:"length",broad:!0,blank:"u\
nknown",hint:"Bed and ram together, middle against ends, at full force over the whole bed: from its papers, or\
 from three strips below."},{name:"bending_speed_mm_s",label:"Bending speed",type:"number",unit:"mm/s",blank:"\
unknown"}]},{title:"How it is set",part:"rest",fields:[{name:"set_by",label:"For a bend the press is set",type:"\
pick",broad:!0,blank:"not known: read as by angle",options:[["angle","by angle"],["depth","by depth"],["stop",
"by a stop"]]},{name:"angle_accuracy_deg",label:"It measures the angle in the sheet, within ±",type:"number",
unit:"°",broad:!0,blank:"unknown",hint:"Only where its papers say how near. Empty: what sheet, tools and zero\
 leave open counts."}]},{title:"Back gauge",part:"rest",fields:[{name:"gauge_x_min_mm",label:"X from",type:"le\
ngth"},{name:"gauge_x_max_mm",label:"X to",type:"length"},{name:"gauge_r_min_mm",label:"R from",type:"length"},
{name:"gauge_r_max_mm",label:"R to",type:"length"},{name:"finger_height_mm",label:"Finger height",type:"length"},
{name:"finger_depth_mm",label:"Finger depth",type:"length"},{name:"gauge_repeatability_mm",label:"Comes back t\
o a place within ±",type:"length",broad:!0,blank:"unknown",hint:"As in its papers.",counted_mm:.1}]},{title:"\
Holder in the ram, and notes",part:"rest",fields:[{name:"holder",label:"Holder",type:"pick",options:[],blank:"\
none",broad:!0},{name:"note",label:"Note",type:"note"}]}]}});function he(t=""){let e=da(t);return e===""?null:Lw.test(e)?Number(e):e}function Bw(t){let{show:e}=xe.number;return{
v:z(t.v_opening_mm),angle:e(t.angle_deg),radius:z(t.shoulder_radius_mm),face:t.face,centre:z(t.centre_mm),code:t.
code??"",rating:xe.rating.show(t.rating_kn_per_m)}}function Pw({v:t,angle:e,radius:n,face:s,centre:o,code:a,rating:r}){
let l={v_opening_mm:ya(t),angle_deg:he(e),shoulder_radius_mm:ya(n),centre_mm:ya(o)};return{...Object.fromEntries(
Object.entries(l).filter(([,h])=>h!==null)),face:s||"top",code:a||null,rating_kn_per_m:xh(r)}}function _a(t,e){
return Object.fromEntries(Xe(t).map(({name:n,type:s})=>[n,xe[s].show(e[n])]))}function va(t,e,n={}){let s=({name:r,
type:l})=>r in n&&xe[l].show(n[r])===e[r]?n[r]:xe[l].take(e[r]),a=Xe(t).filter(({when:r})=>!r||r(e)).map(r=>({
spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||Iw(r)).map(({spec:r,value:l})=>[
r.name,l]))}function Th(t){let e={};for(let n of["name","note","gauge_family"])e[n]=xe.text.show(t[n]);for(let{
name:n}of ls)e[n]=xe.number.show(t[n]);for(let{name:n}of Mn){let s=t[n];for(let o of Rw)e[`${n}.${o}`]=xe.number.
show(s?.[o]);e[`${n}.standing`]||="typical"}return e}function Mh(t){let e={name:t.name.trim(),note:t.note.trim(),
gauge_family:t.gauge_family||null};for(let{name:n,needed:s}of ls)(t[n]?.trim()||!s)&&(e[n]=he(t[n]));for(let{name:n,
needed:s}of Mn){let o=["low","nominal","high","source"].some(a=>t[`${n}.${a}`]?.trim());e[n]=o||s?Ww(t,n):null}
return e}function Ww(t,e){let n=["low","nominal","high"].map(s=>[s,he(t[`${e}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(t[`${e}.source`]??"").trim(),standing:t[`${e}.standing`]}}function Ah(t,e){
let n={},s=[];for(let[o,a]of Object.entries(t)){let r=`.${o}.`,c=(r.includes(".openings.")?e.filter(u=>u==="op\
enings"):e).filter(u=>r.includes(`.${u}.`)).sort((u,p)=>p.length-u.length)[0],h=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n.openings??=[]).push(...a.map(u=>Dw(o,u))):c?(n[c]??=[]).push(...h&&r.endsWith(`.${c}.${h}.`)?a.map(
u=>`Number ${Number(h)+1}: ${u}`):a):s.push(...a.map(u=>`${o}: ${u}`))}return{byName:n,others:s}}function Dw(t,e){
let[,n,s]=/openings\.(\d+)(?:\.(\w+))?$/.exec(t)??[];return n===void 0?e:`V ${Number(n)+1}: ${s?`${s}: `:""}${e}`}
var Lw,Hi,ya,Nw,xh,Cw,xe,Sh,Xe,Iw,Rw,Se=$(()=>{Bi();Pi();ji();L();Lw=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
Hi=t=>(e="")=>e.trim()===""?null:t(e),ya=Hi(t=>tt(t)),Nw=Hi(t=>oo(t,ze())),xh=Hi(t=>oo(t,xn())),Cw=(t="")=>t.split(
/[\n;]/).map(e=>e.trim()).filter(Boolean),xe={text:{show:t=>t??"",take:(t="")=>t.trim()},note:{show:t=>t??"",take:(t="")=>t.
trim()},pick:{show:t=>t??"",take:t=>t||null},yes:{show:t=>t?"yes":"no",take:t=>t==="yes"},length:{show:z,take:ya},
number:{show:t=>t==null?"":String(t),take:he},force:{show:t=>Oi(t,ze()),take:Nw},rating:{show:t=>Oi(t,xn()),take:xh},
lengths:{show:t=>(t??[]).map(z).join(", "),take:(t="")=>t.split(/[,;\n]/).filter(e=>e.trim()).map(e=>tt(e))},points:{
show:t=>(t??[]).map(([e,n])=>`${z(e)}, ${z(n)}`).join(`
`),take:t=>Cw(t).map(e=>e.split(e.includes(",")?",":/\s+/).map(n=>tt(n)))},openings:{show:t=>lo((t??[]).map(Bw)),
take:t=>An(t).map(Pw)},figure:{show:String,take:String}};Sh=t=>xe.points.show(t),Xe=t=>wa[t].flatMap(e=>e.fields);
Iw=({type:t,blank:e})=>t==="rating"||e!==void 0,Rw=["low","nominal","high","source","standing"]});function ka(t){let e={...Fw};for(let n of Gi){let s=t.get(Ui[n])?.slice(0,60);if(s==null)continue;let o=` ${B()}`;
e[n]=Vi(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return e}function xa(t){let e=new URLSearchParams;for(let n of Gi){
let s=t[n].trim();s!==""&&e.set(Ui[n],Vi(n)?tt(s):s)}return e.toString()}function ho(t){return jw.filter(e=>t[e].
trim()==="")}function On(t){let e={};for(let n of Gi){let s=t[n].trim();s!==""&&(e[n]=Vi(n)?tt(s):n==="include\
d_angle_deg"?he(s):s)}return e}var Fw,Ui,Gi,jw,Vi,Sa=$(()=>{Se();L();Fw={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},Ui={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},Gi=Object.keys(Ui),jw=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],Vi=t=>t.endsWith("_mm")});function Te(t,e,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:h}=a;try{let u=await t(c,h);h.aborted||e({question:c,answer:u})}catch(u){h.aborted||
e({question:c,error:u})}}return{stop:r,ask(c,{now:h=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),h?0:s))}}}var uo=$(
()=>{});function Me(t,e,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
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
  </div>`}var Ta=$(()=>{_()});function Ma(t){return t.force_kn===null||t.force_kn===void 0?d:i`<b>${g(Zt(t))}</b>
    <small class="expected">expected ${g(Ze(t))}</small>`}function po(t,e,n="force_kn",{note:s=d,origin:o=""}={}){
return Me(t,Zt(e,n),{note:i`expected ${g(Ze(e,n))}${s}`,origin:o,test:n})}var Zt,Ze,Oh,ue=$(()=>{_();L();Ta();
Zt=(t,e="force_kn")=>Oh(e)(t[`${e}_high`],{up:!0}),Ze=(t,e="force_kn")=>Oh(e)(t[e]),Oh=t=>t==="force_kn"?mt:Ot});var zi,Eh=$(()=>{zi=class extends HTMLElement{#t=new ResizeObserver(()=>this.measure());#e=new MutationObserver(
()=>this.measure());connectedCallback(){this.#t.observe(this),this.#e.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#t.disconnect(),this.#e.disconnect()}measure(){let e=this.
querySelector("svg"),{width:n,height:s}=e?.viewBox.baseVal??{width:0,height:0};if(!e||!n||!e.clientWidth||!e.clientHeight)
return;let o=Math.max(n/e.clientWidth,s/e.clientHeight);e.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",zi)});function qi({distance_mm:t,tool:e}){let n=g(w(Math.abs(t)));return t<=0?[n,`into ${e}`]:[n,`to ${e}`]}function Lh(t,{
left:e,right:n,bottom:s,top:o}){let[a,r]=En(t),[[l,c],[h,u]]=[t.on_sheet,t.on_tool],p=a-e>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[f,b]=qi(t);return x`<g class="near ${t.distance_mm<=0?"hit":""}" data-test="near" data-tool=${t.tool}>
    <path class="near-line" d="M${l} ${-c}L${h} ${-u}" />
    ${Aa(t,n-e)?d:[t.on_sheet,t.on_tool].map(Hw)}
    <g transform="translate(${a} ${-r})">
      ${Aa(t,n-e)?x`<circle class="px near-ring" r="17" />`:d}
      <path class="px near-leader" d="M${p*12} ${m*12}L${p*34} ${m*30}H${p*44}" />
      <text class="px label near-label" x=${p*50} y=${m*30-2}
        text-anchor=${p>0?"start":"end"}>${f}<tspan x=${p*50}
          dy="1.1em">${b}</tspan></text>
    </g>
  </g>`}var En,Aa,Hw,Ki=$(()=>{_();L();En=({on_sheet:[t,e],on_tool:[n,s]})=>[(t+n)/2,(e+s)/2];Aa=(t,e)=>Math.abs(
t.distance_mm)<.1*e,Hw=([t,e])=>x`<g transform="translate(${t} ${-e})"><circle class="px near-dot" r="4" /></g>`});function pe(t,{pose:e,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:h=!1,room:u=null}){
let p=s??(t.bounds[2]-t.bounds[0])/6,m=n?Gw(p,h?c:null):Vw(t,p,c),f=u&&!n?zw(m,u,p):m,{left:b,bottom:y,right:T,
top:E}=f,C=l??Uw(t,e==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${e}
      viewBox="${b} ${-E} ${T-b} ${E-y}"
      preserveAspectRatio="xMidYMid meet">
      ${[t.bed,t.die].map(St).map(Nh)}
      <g transform="translate(0 ${C.down})">${C.tools.map(Nh)}</g>
      ${t.die.length?x`<path class="axis" d="M0 ${-E-999}V999" />`:d}
      <path class="gauge" transform="translate(${C.back} 0)" d=${C.gauge} />
      <path class="sheet" data-test="sheet" d=${C.sheet} />
      ${e==="before"&&t.gauge_point?qw(t.gauge_point,o,f):d}
      ${e==="after"&&a?Kw(t.after.sheet,a,p,f):d}
      ${h&&c?Lh(c,f):d}
    </svg>
  </drawing-frame>`}function Uw(t,e){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=t[e];return{sheet:St(n),tools:[
s,o,a].map(St),down:0,gauge:St(r),back:0}}function Gw(t,e){let[n,s]=e?En(e):[0,.1*t];return{left:n-1.5*t,bottom:s-
t,right:n+1.5*t,top:s+t}}function Vw(t,e,n){let[s,o,a,r]=Xt([t.before.sheet,t.after.sheet]),l=14*e,c=t.gauge_point?
t.gauge_point[0]+1.5*e:0,h={left:Math.max(Math.min(s-.4*e,-1.4*e),-l),right:Math.min(Math.max(a+.4*e,c,1.4*e),
Math.max(l,c))},u=h.right-h.left,p={...h,bottom:Math.max(Math.min(o-.3*e,-1.1*e,-.17*u),-l/2),top:Math.min(Math.
max(r+.3*e,1.6*e),8*e)},m=n?Yi(p,En(n),Math.max(e,.1*u)):p;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function zw(t,{
bounds:e,share:n},s){let o=Yi(Yi(t,[e[0],e[1]],s),[e[2],e[3]],s),a=r=>t[r]+(o[r]-t[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function qw([t,e],n,{bottom:s}){let o=s*.45;return x`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${t} ${-e}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${t}" />
    ${Ch(0,o,180)}${Ch(t,o,0)}
    <g transform="translate(${t} ${-e})"><circle class="px touch" r="5" /></g>
    ${Bh(t/2,o,n,17)}
  </g>`}function Kw(t,e,n,{left:s,right:o}){let a=Math.min(...t.filter(([u])=>Math.abs(u)<n/2).map(([,u])=>u)),
r=Math.max(1.25*n,.14*(o-s)),l=e/2*(Math.PI/180),[c,h]=[r*Math.sin(l),a+r*Math.cos(l)];return x`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-h}A${r} ${r} 0 0 1 ${c} ${-h}" />
    ${Bh(0,a+r,g(S(e)))}
  </g>`}var Nh,Yi,Ch,Bh,mo=$(()=>{_();L();Eh();Ki();qe();Nh=t=>t?x`<path class="tool" d=${t} />`:d;Yi=({left:t,
right:e,bottom:n,top:s},[o,a],r)=>({left:Math.min(t,o-r),right:Math.max(e,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});Ch=(t,e,n)=>x`<g transform="translate(${t} ${-e})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,Bh=(t,e,n,s=0)=>x`<g transform="translate(${t} ${-e})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function Ph(t,e){let n=[...t].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>e(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die} <small>V ${Q(s.v_over_t,1)} t</small></span
            >
            ${s.level==="ok"?d:k(s.level)}
            <span class="facts"> ${Yw(s).map(o=>Jw(...o))} </span>
            <span class="more">${bt(s.reason_said)} ${Ue(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var Yw,Jw,Ih=$(()=>{_();pt();L();ue();U();Yw=t=>[["allow for",g(Zt(t,"force_kn_per_m")),`expected ${Ze(
t,"force_kn_per_m").text}`],["radius",g(w(t.inside_radius_mm))],["flange from",g(w(t.min_flange_mm))],["set",g(
S(t.set_angle_deg))]],Jw=(t,e,n)=>i`<span class="fact"
    ><small>${t}</small>
    <span class="amount">${e}</span
    >${n?i` <small class="beside">${n}</small>`:d}</span
  >`});function ds(t,e=""){return t?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${Ji(t)}. Open is hit again. <span class="drawn">${e}</span>
  </p>`:d}var Oa,Ji,Rh,Ea,Ln=$(()=>{_();L();Oa=t=>S(t).text.replace(/\.0$/,""),Ji=t=>`comes out ${Oa(t.comes_out_deg_low)}\
 to ${Oa(t.comes_out_deg_high)}°`,Rh=t=>`${Oa(t.comes_out_deg_low)}–${Oa(t.comes_out_deg_high)}°`,Ea=(t,{set_angle_deg:e,
firstHit:n})=>n?t.expected_set_angle_deg:e});function hs(t){let e=t.filter(s=>!Wh(s)&&(s.level==="stop"||s.level==="caution"));if(e.length===0)return d;let n=e.
some(s=>s.level==="stop");return i`<section
    class="panel urgent ${n?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${_t(e)}
  </section>`}function us(t){let e=t.filter(o=>o.level==="unknown"),n=t.filter(o=>Ht(o)==="note"),s=t.filter(o=>Ht(
o)==="ok");return i`${e.length?i`<section>
          <h2>Not known</h2>
          ${_t(e)}
        </section>`:d}
  ${n.length?i`<section data-test="notes">
          <h2>How to do it</h2>
          ${_t(n)}
        </section>`:d}
  ${s.length?i`<details class="fine" data-test="fine">
          <summary>Also checked and well: ${s.length}</summary>
          ${_t(s)}
        </details>`:d}`}function Qe(t){let e=t.filter(Wh);return e.length===0?d:i`<section class="every-time" data-test="every-time">
    <h2>${k("caution")} At the press, every time</h2>
    <ul>
      ${e.map(n=>i`<li>
            <b>${Ke(n.template,n.numbers)}</b>
            ${Ke(n.do_template??n.do,n.numbers)}
          </li>`)}
    </ul>
  </section>`}var Wh,fo=$(()=>{_();U();Wh=t=>t.code.startsWith("general-")});function O({name:t,label:e,value:n,change:s,hint:o="",wrong:a=[],keys:r="text",placeholder:l="",unit:c="",on:h="\
input",next:u=!1,list:p=""}){let m=f=>s(f.target.value);return i`<div class="field ${a.length?"has-wrong":""}">
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
      ${a.map(f=>i`<span class="wrong" data-test="wrong-${t}">${f}</span>`)}
      ${o?i`<span class="hint">${o}</span>`:d}
    </span>
    ${a.length?Xw(t,Jd(String(n)),s):d}
  </div>`}function Xw(t,e,n){return i`<div class="may-mean">
    ${e.map(s=>i`<button type="button" class="button" data-test="may-mean-${t}" @click=${()=>n(s)}>
          ${s}
        </button>`)}
  </div>`}function Nn({name:t,label:e,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
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
  </div>`}function q({name:t,label:e,value:n,options:s,change:o,wrong:a=[]}){return i`<div class="field ${a.length?
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
  </div>`}function se(t){Object.keys(t).length!==0&&requestAnimationFrame(()=>document.querySelector('[aria-in\
valid="true"]')?.focus())}var J=$(()=>{_();We();L()});function La(t){let[e,n]=[t?.die?.trim(),t?.punch?.trim()];return{...e?{die:e}:{},...n?{punch:n}:{}}}function Xi(t){
let e=La(t);return Object.keys(e).length?{tools:e}:{}}function Cn(t){let{die:e,punch:n}=La(t);return[e&&`die ${e}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var go,ps=$(()=>{go=t=>({die:t?.die??"",punch:t?.punch??""})});function R(t,e){return Object.entries(t).filter(([n])=>Zi(n,e)).flatMap(([,n])=>n)}function Dh(t,e){return Object.
entries(t).filter(([n])=>!e.some(s=>Zi(n,s))).flatMap(([,n])=>n)}function Fh(t,e,n){let s=Object.entries(t);return s.
length===0?d:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>Zi(o,c)).sort((c,h)=>h.length-c.length)[0],l=r?Qi(e(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>$o(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function Qi(t,e){let n=e.join(" ");return n.startsWith(t)?n:`${t}: ${n}`}function $o(t){let e=document.
getElementById(t);e?.closest("details")?.setAttribute("open",""),e?.focus({preventScroll:!0}),e?.scrollIntoView(
{block:"center"})}var Zi,oe=$(()=>{_();Zi=(t,e)=>t===e||t.startsWith(`${e}.`)});function el(t,e,n,s){let o=(a,r)=>O({next:!0,name:`${t}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:e[a]??"",wrong:R(n,`${t}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function Hh(t,{dies:e,punches:n},s,o){
let a=e.flatMap(nl).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${Cn(t.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${el("tools",t.tools??{},s,r=>o({...t,tools:{die:"",punch:"",...t.tools,...r}}))}
    </details>
    ${jh("codes-of-dies",a)}
    ${jh("codes-of-punches",n.map(({code:r})=>r))}`}var tl,nl,jh,ms,Bn=$(()=>{_();ps();U();J();oe();tl=["tools\
.die","tools.punch"];nl=t=>t.shape==="multi_v"?t.openings:[t];jh=(t,e)=>i`<datalist id=${t}>${e.map(n=>i`<option value=${n}></option>`)}</datalist>`,
ms=({tools_reason:t,tools_reason_said:e})=>t?i`<p class="tools-reason" data-test="tools-reason">${e?bt(e):t}</p>`:
d});function Na(t){let e=(t??"").split(":")[0].trim();return Zw.includes(e)?e:""}function bo(t){if(!t)return"";let e=new Map;
for(let[n,s]of Qw){let o=t[n];o&&e.set(o,[...e.get(o)??[],s])}return[...e].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var Zw,Qw,Ca=$(()=>{Zw=["model","handbook","your test bends"];Qw=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function Gh(t){return i`<ul class="ratings" data-test="ratings">
    ${t.map(ty)}
  </ul>`}function ty(t){let{what:e,name:n,share_percent:s,level:o}=t;return i`<li class="rating" data-level=${o} data-what=${e}>
    <span class="rating-of"
      ><b>${ey[e]??e}</b>${e.startsWith("press")||!n?d:` ${n}`}</span
    >
    ${k(o,s===null?"Unknown":`${Q(s,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${s===null?"open":""}" d="M0 9H250" />
      ${s===null?d:sy(s)}
    </svg>
    <span class="rating-words">${ny(t)}</span>
  </li>`}function ny({load_kn:t,load_kn_per_m:e,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=e===void 0?
g(mt(t)):g(Ot(e));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=e===void 0?
g(mt(n)):g(Ot(s));return`${a} of ${r}`}function sy(t){let e=Math.min(t/100*Uh,250);return x`<path class="bar-load" d="M0 9H${e}" /><path class="bar-most" d="M${Uh} 0V18" />`}
var Uh,ey,Vh=$(()=>{_();L();U();Uh=200;ey={press:"Press","press per metre":"Bed and ram, per length",punch:"Pu\
nch",die:"Die",holder:"Holder","die holder":"Die holder"}});function fs(t,e,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(e-t)/o,c=(r?.find(y=>l/y<=a)??oy(l,a))*o,h=Math.
floor(t/c+1e-9)*c,u=Math.ceil(e/c-1e-9)*c,p=y=>ay(n+(y-h)/(u-h)*(s-n)),m=Math.round((u-h)/c),f=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),b=Array.from({length:m+1},(y,T)=>h+T*c).map(y=>({at:p(y),text:(y/o).toFixed(f).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:p,marks:b}}function oy(t,e){let n=(t>0?t:1)/e,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function Ba(t){return t.length?`M${t.
map(([e,n])=>`${e} ${n}`).join("L")}`:""}var ay,sl=$(()=>{ay=t=>Math.round(t*100)/100});function zh({curve:t,set:e,peak:n,limits:s}){let o=Math.max(...t.map(f=>f.force_kn_high)),a=s.filter(f=>f.limit_kn!==
null).sort((f,b)=>Number(b.limit_kn)-Number(f.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:f})=>Number(
f)<=(f===r?iy:ry)*o),c=Yh(t),h=fs(0,Math.max(o,...l.map(f=>Number(f.limit_kn))),{from:It.bottom,to:It.top+28,size:ze().
size}),u=(f,b)=>[c.at(f.punch_depth_mm),h.at(f[b])],p=[...t.map(f=>u(f,"force_kn_high")),...t.map(f=>u(f,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${g(mt(n.force_kn))}, at a depth o\
f ${g(Kh(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Pa} ${Ia}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${Jh(c,h,ze().unit)}
    <path class="band" d="${Ba(p)}Z" />
    ${e.punch_depth_mm===null?d:Xh(c.at(e.punch_depth_mm))} ${ly(l,h)}
    ${dy(a.filter(f=>!l.includes(f)))}
    <path class="curve" d=${Ba(t.map(f=>u(f,"force_kn")))} data-test="force-curve" />
    ${n?uy(c.at(n.punch_depth_mm),h.at(n.force_kn)):d}
  </svg>`}function qh({curve:t,set:e,trials:n}){let s=n.filter(p=>p.punch_depth_mm!==null),o=Yh(t,s.map(p=>Number(
p.punch_depth_mm))),a=[...t.map(p=>p.loaded_angle_deg),...s.map(p=>p.measured_deg)],r=fs(Math.min(...a),180,{from:It.
bottom,to:It.top,steps:[5,10,15,30,45]}),l=p=>Ba(t.map(m=>[o.at(m.punch_depth_mm),r.at(m[p])])),c=e.set_angle_deg===
null?null:{x:o.at(Number(e.punch_depth_mm)),y:r.at(e.set_angle_deg)},u=`Angle over punch depth. ${c?`${g(S(e.set_angle_deg))}\
 under load at a depth of ${g(Kh(Number(e.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} trials drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Pa} ${Ia}"
    role="img"
    aria-label=${u}
    data-test="stroke-angle">
    ${Jh(o,r,"°")} ${c?Xh(c.x):d}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?x`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:d}
    ${s.map(p=>hy(o.at(Number(p.punch_depth_mm)),r.at(p.measured_deg),p))}
  </svg>`}function Yh(t,e=[]){let n=Math.max(...t.map(s=>s.punch_depth_mm),...e);return fs(0,n,{from:It.left,to:It.
right,size:B()==="in"?Jt:1,most:6})}function Jh(t,e,n){let{left:s,right:o,top:a,bottom:r}=It,l=n==="°",c=e.marks.
map(({at:p,text:m})=>x`<path class="faint" d="M${s} ${p}H${o}"/>
      <text x=${s-6} y=${p+6} text-anchor="end"
        font-size=${Ae}>${m}${l?"°":""}</text>`),h=t.marks.map(({at:p,text:m})=>x`<path class="faint" d="M${p} ${r}v6"/>
      <text x=${Math.min(p,Pa-m.length*Ae*.3)} y=${r+24} text-anchor="middle"
        font-size=${Ae}>${m}</text>`),u=x`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${Ae}>${n}</text>`;return x`
    ${c}
    ${h}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${Ia-8} text-anchor="end"
      font-size=${Ae}>punch depth, ${B()}</text>
    ${l?d:u}`}function ly(t,e){let n=-1/0;return cy(t).map(({limit_kn:s,names:o})=>{let a=e.at(s);return n=Math.
max(a-6,n+Ae+2),x`<path class="limit" d="M${It.left} ${a}H${It.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${It.left+6} y=${n}
        font-size=${Ae}>${o.join(", ")} ${g(mt(s))}</text>`})}function cy(t){let e=new Map;for(let n of t)e.set(
Number(n.limit_kn),[...e.get(Number(n.limit_kn))??[],Ra(n)]);return[...e].map(([n,s])=>({limit_kn:n,names:s}))}
function dy(t){if(!t.length)return d;let e=t.length>1?`, ${t.length-1} more`:"";return x`<text class="limit-word" x=${It.
right} y="18" text-anchor="end" font-size=${Ae}
      data-test="limit-far">↑ ${ol(t[t.length-1])}${e}</text>`}function Ra({what:t,name:e}){return t==="pres\
s per metre"?"Bed and ram":t==="press"||!e?t[0].toUpperCase()+t.slice(1):`${t[0].toUpperCase()}${t.slice(1)} ${e}`}
function hy(t,e,{id:n,outlier:s}){return s?x`<path class="trial-odd" d="M${t-6} ${e-6}l12 12M${t+6} ${e-6}l-12 12"
        data-test="trial-point" data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${t} cy=${e} r="6" data-test="trial-point" data-id=${n}/>`}
var Pa,Ia,It,Ae,ry,iy,Kh,Xh,ol,uy,Zh=$(()=>{_();L();sl();Pa=400,Ia=320,It={left:58,right:Pa-14,top:20,bottom:Ia-
54},Ae=18,ry=3,iy=5;Kh=t=>w(t,{digits:2});Xh=t=>x`<path class="set-line" d="M${t} ${It.top}V${It.bottom}"/>
  <text class="set-word" x=${t-5} y=${It.bottom-6} text-anchor="end" font-size=${Ae}>set</text>`;ol=({what:t,name:e,
limit_kn:n})=>`${Ra({what:t,name:e})} ${g(mt(n))}`;uy=(t,e)=>x`<circle class="peak" cx=${t} cy=${e} r="6" data-test="peak-mark"/>`});function eu({stroke:t,error:e,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?py(t,e):d}
  </details>`}function py(t,e){return e?i`<p class="hint" data-test="stroke-missing">
      ${e instanceof M?e.message:"The stroke could not be fetched."}
    </p>`:t?t.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${zh(t)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${my(t)}</p>
        ${fy(t)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${qh(t)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${Qh("curve")} under load</li>
          <li>${Qh("curve let-go")} let go</li>
          ${t.trials.length?i`<li>${by} trials, let go</li>`:d}
        </ul>
        <p data-test="stroke-set">${gy(t)}</p>
        ${$y(t)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function my({peak:t,work_j:e}){if(!t)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${g(
Zt(t))}.</b> The peak is expected at
    ${g(mt(t.force_kn))}, ${tu(t.punch_depth_mm)} deep, ${g(S(t.loaded_angle_deg))}
    under load.`;return e?i`${n} Work in the stroke ${Q(e,0)} J.`:n}function fy({limits:t}){let e=t.filter(s=>s.
limit_kn!==null),n=t.filter(s=>s.limit_kn===null);return i`${e.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${e.map(ol).join(", ")}. The shaded band is what the force may be.
        </p>`:d}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(Ra).join(", ")}. Read it off the plate.
        </p>`:d}`}function gy({set:t}){return t.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${g(S(t.set_angle_deg))} under load at a depth of ${tu(t.punch_depth_mm)}\
.`}function $y({trials:t}){let e=t.filter(n=>n.punch_depth_mm===null).length;return e?i`<p class="hint">
        ${e===1?"One trial has":`${e} trials have`} no depth written down and can't be drawn.
      </p>`:d}var tu,Qh,by,nu=$(()=>{_();Zh();G();L();ue();tu=t=>g(w(t,{digits:2}));Qh=t=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${t} d="M2 8H38" />
  </svg>`,by=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="trial-point" cx="20" cy="8" r="6" />
</svg>`});function Oe(t,e,n,s,o=ou(t,e,s)){let[a,r]=[t[`${e}_low`],t[`${e}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return Me(n,s(t[e]),{band:l?[s(a),s(r)]:null,note:o,origin:Na(t.sources?.[e]),test:e})}function ou({
handbook:t,sources:e,...n},s,o){let a=t?.[s];if(typeof a!="number"||Na(e?.[s])==="handbook")return d;let r=o(a);
if(r.text===o(n[s]).text)return d;let[l,c]=[n[`${s}_low`],n[`${s}_high`]],h=a<l||a>c;return i`<span class=${h?
"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${g(r)}</span
  >`}function au(t,e,n){return i`${hs(t.checks)}
    <div class="columns bend-columns">
      <div>
        ${wy(t,e)} ${yy(t)} ${ky(t)} ${Sy(t)}
        ${us(t.checks)} ${Ay(t)}
      </div>
      <div>${Ty(t,n)} ${eu(n.stroke)} ${My(t,n)}</div>
    </div>
    ${Qe(t.checks)}`}function wy(t,{punches:e,dies:n}){let s=n.find(({code:a})=>a===t.die),o=e.find(({code:a})=>a===
t.punch);return!t.die&&!t.punch?i`<p class="panel" data-test="no-tools">
      No tools of the crib chosen: the figures are for a V of ${g(w(t.v_opening_mm))}.
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:t.die,tool:s},{kind:"punch",code:t.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"><b>${r??"none"}</b> ${l?.name??""}</span>
            <span class="where">${l?Ue(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:d}
          </li>`)}
    </ul>
    ${ms(t)}`}function yy(t){return i`<section>
    <h2>Set</h2>
    <div class="figures">
      ${t.first_hit?vy(t):_y(t)}
      ${Oe(t,"springback_deg","Springback",S)}
    </div>
    ${ds(t.first_hit)}
  </section>`}function ky(t){return i`<section>
    <h2>Force</h2>
    <div class="figures">
      ${po("Allow for",t,"force_kn",{note:xy(t),origin:Na(t.sources?.force_kn)})}
      ${po("Per length, allow for",t,"force_kn_per_m")}
    </div>
    ${t.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
            ${Gh(t.ratings)}`:d}
  </section>`}function xy(t){let e=t.force_kn_low,n=ou(t,"force_kn",mt);return i`${typeof e=="number"?`, at le\
ast ${g(mt(e))}`:d}${n===d?d:i` <br />${n}`}`}function Sy(t){return i`<section>
    <h2>Comes out</h2>
    <div class="figures">
      ${Oe(t,"inside_radius_mm","Inside radius",Pn)}
      ${Me("Smallest flange",w(t.min_flange_mm),{test:"min_flange_mm"})}
    </div>
    <h2>For the blank</h2>
    <div class="figures">
      ${Oe(t,"bend_allowance_mm","Bend allowance",Pn)}
      ${Oe(t,"bend_deduction_mm","Bend deduction",Pn)}
      ${Oe(t,"k_factor","K-factor",ru)}
    </div>
  </section>`}function Ty(t,{pose:e,show:n}){if(!t.drawing)return d;let s=g(S(t.set_angle_deg)),o=e==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return i`<section class="bend-drawing" aria-label="The bend in its tools">
    ${K({name:"pose-shown",label:"Drawn to scale",value:e,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
    ${pe(t.drawing,{pose:e,close:!0,opening:t.v_opening_mm,gauge:"",angle:t.set_angle_deg,words:`The sheet in \
die and punch, ${o}`})}
  </section>`}function My(t,{use:e}){return t.options?.length?i`<section>
    <h2>Dies of the crib</h2>
    <p class="hint">Tap one to use it. Every one shown with the reason for its rank.</p>
    ${Ph(t.options,e)}
  </section>`:d}function Ay({opinions:t,sources:e}){return t?i`<section class="opinions">
    <h2>Second opinions</h2>
    ${t.force?.length?su("Force by published relations",t.force,[["force_kn","Force",mt],["force_kn_per_m","Pe\
r length",Ot]]):d}
    ${t.allowance?.length?su("Bend allowance by published relations",t.allowance,[["bend_allowance_mm","Allowa\
nce",Pn],["k_factor","K",ru]]):d}
    ${e?i`<details>
            <summary>Where each figure comes from</summary>
            <dl class="sources">
              ${Object.entries(e).map(([n,s])=>i`<dt>${Oy[n]??n}</dt>
                    <dd>${s}</dd>`)}
            </dl>
          </details>`:d}
  </section>`:d}function su(t,e,n){return i`<div class="table">
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
              ${n.map(([o,,a])=>i`<td class="number">${g(a(s[o]))}</td>`)}
            </tr>`)}
      </tbody>
    </table>
  </div>`}var Pn,_y,vy,ru,Oy,iu=$(()=>{_();mo();pt();L();ue();Ih();Ta();Ln();fo();J();Bn();Ca();Vh();nu();Pn=t=>w(
t,{digits:2});_y=t=>i`
  ${Oe(t,"set_angle_deg","Set angle, loaded",S)}
  ${Oe(t,"punch_depth_mm","Punch depth",Pn)}
`,vy=t=>i`
  ${Oe(t,"set_angle_deg","First hit: set angle, loaded",S,`then about ${g(S(t.expected_set_angle_deg))}`)}
  ${Oe(t,"punch_depth_mm","First hit: punch depth",Pn,`then about ${g(Pn(t.expected_punch_depth_mm))}`)}
`;ru=t=>({text:t==null?"–":Q(t,2),unit:""});Oy={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var cu={};et(cu,{show:()=>Ny});async function Ny(t){t.title("Check a bend"),t.render(Tt("Looking into the crib\
…"));let[e,n,s]=await Promise.all(["metals","dies","punches"].map(async C=>(await it(C,t.signal)).items)),o={
dies:n,punches:s},a=ka(t.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=e[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:matchMedia("(min-width: 1000px)").matches},h=Te(
async(C,v)=>(await A("POST","/bend",{body:C,signal:v})).body,({answer:C=null,error:v=null})=>{Object.assign(l,
{answer:C,error:v,busy:!1}),Object.assign(c,{stroke:null,error:null}),p(),b()},t.signal),u=Te(async(C,v)=>(await A(
"POST","/stroke",{body:C,signal:v})).body,({answer:C=null,error:v=null})=>{Object.assign(c,{stroke:C,error:v}),
b()},t.signal);function p(){u.stop(),c.open&&l.answer&&!c.stroke&&u.ask(On(a),{now:!0})}function m(C){history.
replaceState(null,"",`/bend?${xa(a)}`),l.busy=ho(a).length===0,l.busy?h.ask(On(a),C):(h.stop(),Object.assign(l,
{answer:null,error:null})),b()}function f(C,v){Object.assign(a,C),m(v)}function b(){let C=l.error instanceof M?
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
            ${Cy(a,{metals:e,...o,openTools:r,answer:l.answer},C,f)}
          </form>
          <p class="unseen" role="status">${y()}</p>
          <div class="desk-answer" data-test="answer">${T(C)}</div>
        </div>`),l.busy||t.ready()}function y(){let{answer:C}=l;if(!C||l.busy)return"";let v=C.worst==="ok"?"":
`${C.worst}. `,N=C.set_angle_deg===null?"nothing to set":`set ${g(S(C.set_angle_deg))}`;return`${v}Die ${C.die??
"none"}, allow for ${g(Zt(C))}, ${N}.`}function T(C){let v=ho(a);return v.length?xt("One bend, all its figures",
i`Still to type: ${v.map(N=>Ly[N]).join(", ")}.`):l.error?E(C):l.answer?au(l.answer,o,{pose:l.pose,show:N=>{l.
pose=N,b()},use:N=>f({die:a.die===N?"":N},{now:!0}),stroke:{...c,toggled:N=>{c.open!==N&&(c.open=N,p(),b())}}}):
Tt("Working it out…")}function E(C){if(!(l.error instanceof M)||l.error.status>=500)return i`${Ye(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let v=Dh(C,Ey),N=Object.keys(C).length>v.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...N,...v].map(X=>i`<p>${X}</p>`)}
    </div>`}m({now:!0})}function Cy(t,{metals:e,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(p,m,f={})=>O(
{name:p,label:m,value:t[p],wrong:R(r,p),change:b=>l({[p]:b}),...f}),h=(p,m,f)=>q({name:p,label:m,value:t[p],options:f,
wrong:R(r,p),change:b=>l({[p]:b},{now:!0})}),u=t.metal&&!e.some(({code:p})=>p===t.metal);return i`${h("metal",
"Metal",[...u?[[t.metal,`${t.metal} (not in the shop)`]]:[],...Py(e)])}
    ${c("thickness_mm","Thickness",{unit:B(),hint:a&&By(a,t.thickness_mm)||"3, 1/8 in, 16 ga"})}
    <div class="fields">
      ${c("bend_length_mm","Bend length",{unit:B()})}
      ${c("included_angle_deg","Included angle",{unit:"°, 90 is square",keys:"decimal"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${h("die","Die",[["","Best of the crib"],...lu(t.die,n)])}
      ${h("punch","Punch",[["","Best of the crib"],...lu(t.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:B()})}
    </details>
    ${t.die||t.punch||t.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:d}`}function By({thickness_mm:t,thickness_gauge:e},n){return[/^[\d.,\s]+$/.test(n)?"":g(w(
t,{digits:2})),e??""].filter(Boolean).join(", ")}function lu(t,e){let n=e.map(s=>[s.code,`${s.code} · ${s.name}`]);
return t&&!e.some(s=>s.code===t)?[[t,`${t} (not in the crib)`],...n]:n}var Ey,Ly,Py,du=$(()=>{_();G();Sa();pt();
uo();L();ue();iu();J();Bt();oe();Ey=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","punch",
"punch_radius_mm"],Ly={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"angl\
e"};Py=t=>t.map(({code:e,name:n})=>[e,n])});function hu(t){let e,n=async()=>{document.visibilityState!=="visible"||t.aborted||(e=await navigator.wakeLock?.
request("screen").catch(()=>{}),t.aborted&&e?.release())};document.addEventListener("visibilitychange",n,{signal:t}),
t.addEventListener("abort",()=>e?.release()),n()}var al,rl=$(()=>{_();al=()=>"wakeLock"in navigator?d:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function In(t){let{body:e}=await A("GET","/benches",{signal:t,timeout:3e3});return e.benches}async function mu(t){
let{body:e}=await A("PUT",`/benches/${encodeURIComponent(t)}`,{body:{code:null,step:0}});return e}async function fu(t){
await A("DELETE",`/benches/${encodeURIComponent(t)}`)}function il(){let t=bu(uu);return typeof t?.name=="strin\
g"?{code:null,step:0,etag:null,...t}:null}function bu(t){try{return JSON.parse(localStorage.getItem(t)??"null")}catch{
return null}}function wu(t,e){try{e===null?localStorage.removeItem(t):localStorage.setItem(t,JSON.stringify(e))}catch{}}
var uu,pu,Rn,Ee,ll,gu,$u,tn=$(()=>{G();uu="flangebook.bench.here",pu="flangebook.bench.last";Rn=t=>/^\d/.test(
t)?`bench ${t}`:t,Ee=t=>/^\d/.test(t)?`Bench ${t}`:t;ll=t=>wu(uu,t),gu=()=>String(bu(pu)??""),$u=t=>wu(pu,t)});function Wa(t,e,n,s){let o=`/benches/${encodeURIComponent(t)}`,a={answers:null,gone:!1,waits:!1,late:!1,refused:""},
r=null,l=e,c=0,h=!1,u;function p(v){let N={...a,waits:r!==null,...v},X=Object.keys(N).every(ct=>N[ct]===a[ct]);
a=N,!X&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(u),h||s.aborted)return;h=!0;try{await(r&&!f()?
b():y()),T()}catch(N){s.aborted||E(N)}h=!1;let v=r!==null&&c===0;s.aborted||(u=setTimeout(m,v?0:Math.min(Ry,Iy*
1.5**c)))}function f(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,p({late:!0}),!0)}async function b(){let v=r;
if(!v)return;let N=P().name?{by:P().name}:{};try{l=(await A("PUT",o,{body:{...v.place,...N},etag:v.whatever?null:
l,signal:s,timeout:yu})).etag,r===v&&(r=null),n.sent?.(v.place,l??"",r!==null),p({refused:"",late:!1})}catch(X){
if(!(X instanceof M)||X.status>=500)throw X;r=null,l=null,p({refused:X.status===412?"":X.message}),await y()}}
async function y(){let v=r,{status:N,body:X,etag:ct}=await A("GET",o,{seen:l,signal:s,timeout:yu});s.aborted||
r!==v||N===304||(l=ct,p({late:!1}),n.heard(X,ct??""))}function T(){let v=a.answers===!1;c=0,p({answers:!0,gone:!1}),
Fe(!0),v&&j()}function E(v){c+=1,v instanceof M&&v.status===404?p({answers:!0,gone:!0}):v instanceof M&&v.status<
500?p({answers:!0,refused:v.message}):p({answers:!1}),v instanceof F?Fe(!1,v):v instanceof M||console.error(v)}
let C=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",C,{signal:s}),
addEventListener("online",C,{signal:s}),s.addEventListener("abort",()=>clearTimeout(u)),m(),{move(v,{whatever:N=!1}={}){
r={place:v,at:Date.now(),whatever:N},p({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var Iy,Ry,yu,cl=$(()=>{
G();nt();wt();Iy=1e3,Ry=4e3,yu=3e3});function _u(t,e){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=Wy.
has(o.key)?t.next:Dy.has(o.key)?t.back:null;!a||jy(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<Fy)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:e}),addEventListener("click",o=>o.detail>0&&Hy(),{signal:e})}
function jy({key:t,target:e,repeat:n}){let s=e;return s.matches("input, select, textarea")?!0:!n&&(t==="Enter"||
t===" ")&&s.matches("button, a, summary")}function Hy(){let t=document.activeElement;t?.matches("button, summa\
ry, input[type=range]")&&t.blur()}var Wy,Dy,Fy,vu=$(()=>{Wy=new Set(["ArrowRight","PageDown"," ","Enter"]),Dy=
new Set(["ArrowLeft","PageUp","Backspace"]),Fy=300});function Da(t,{pixels:e=rs(),tallest:n=e*.7,test:s="folded",mark:o=""}={}){let a=V*2.4,r=Sn(t.bounds,e-2*a,n-1.6*
a),[,l,c]=t.bounds,[h,u]=r([c,l]),p=m=>m.map(([f,b,y,T])=>`M${r([f,b])}L${r([y,T])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${Vy(t)}
    width=${h+2*a}
    height=${u+1.6*a}
    viewBox="${-a} ${-V*.7} ${h+2*a} ${u+1.6*a}">
    ${t.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>x`<path class="marked-face" d="M${m.map(f=>r(f).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${p(t.lines.hidden)} />
    <path class="bend-edge" d=${p(t.lines.bend)} />
    <path class="edge" d=${p(t.lines.edge)} />
    ${t.dimensions.map(({name:m,from:f,to:b,mm:y})=>Uy(r(f),r(b),m,H(y)))}
    ${t.faces.filter(({flat:m})=>m===1).map(({side:m,outline:f})=>Gy(m,f.map(r),m===o))}
  </svg>`}function Uy(t,e,n,s){let o=n==="length"?[-V*.5,V*.95]:n==="width"?[V*.5,V*.95]:[V*.9,0],[a,r]=[t,e].
map(([u,p])=>[u+o[0],p+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],h=jt(s,V);return x`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-h/2} y=${c-V*.65} width=${h} height=${V*1.3}/>
    <text x=${l} y=${c} font-size=${V} text-anchor="middle" dominant-baseline="central">${s}</text>`}function Gy(t,e,n){
let s=e.reduce((r,l)=>r+l[0],0)/e.length,o=e.reduce((r,l)=>r+l[1],0)/e.length,a=jt(t,V);return x`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-V*.65}
      width=${a} height=${V*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${V}
      text-anchor="middle" dominant-baseline="central">${t}</text>`}function Vy({length_mm:t,width_mm:e,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${Wn({length_mm:t,width_mm:e,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function Wn({length_mm:t,width_mm:e,height_mm:n}){
return g({text:[t,e,n].map(H).join(" × "),unit:w(0).unit})}function ku(t,{pixels:e=rs(),tallest:n=e*.9,test:s="\
blank"}={}){let[o,a]=[H(t.length_mm),H(t.width_mm)],r=jt(a,V)+V*1.8,l=Sn([0,0,t.length_mm,t.width_mm],e-r-12,n-
V*3),[c,h]=l([t.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${Ky(t)}
    width=${c+r+12}
    height=${h+V*3}
    viewBox="-6 -6 ${c+r+12} ${h+V*3}">
    <path class="sheet" d="M${t.outline.map(u=>l(u).join(" ")).join("L")}Z" />
    ${t.lines.map(u=>qy(u,l))}
    <path
      class="dimension"
      d="M0 ${h+V*1.3}H${c}M-4 ${h+V*1.3+4}l8 -8M${c-4} ${h+V*1.3+4}l8 -8" />
    ${zy(c/2,h+V*1.3,o)}
    <path
      class="dimension"
      d="M${c+V} 0V${h}M${c+V-4} 4l8 -8M${c+V-4} ${h+4}l8 -8" />
    <text x=${c+V*1.6} y=${h/2} font-size=${V} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function zy(t,e,n){let s=jt(n,V);return x`<rect class="ground" x=${t-s/2} y=${e-V*.7} width=${s} height=${V*
1.4}/>
    <text x=${t} y=${e} font-size=${V} text-anchor="middle" dominant-baseline="central">${n}</text>`}function qy({
bend:t,place:e,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,h]=[l([n,s]),l([o,a])],u=.5+(e%2?-1:1)*.12*
Math.ceil((e-1)/1),[p,m]=[c[0]+(h[0]-c[0])*u,c[1]+(h[1]-c[1])*u];return x`<path class="fold ${r}" d="M${c}L${h}"/>
    <circle class="badge" cx=${p} cy=${m} r=${V*.68}/>
    <text class="badge-number" x=${p} y=${m} font-size=${V*.95} text-anchor="middle"
      dominant-baseline="central">${t}</text>`}function Ky(t){let e=t.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${H(t.length_mm)} by ${H(t.width_mm)}, inside of the box up. ${e.join("; ")}.`}var V,
Rt,gs=$(()=>{_();L();pa();qe();ne();V=18;Rt=t=>!!t?.folded});function Fa(t,e){return!Rt(t)||!e.side?d:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${Da(t.folded,{mark:e.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${g(w(e.bend_length_mm))}</b> long.</li>
      ${xu("Punch",e.segments_mm?.punch)} ${xu("Die",e.segments_mm?.die)}
      ${e.clear_between_mm===null||e.clear_between_mm===void 0?d:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${g(w(e.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${Yy(e.sides_near??[])}
    </ul>
  </section>`}function xu(t,e){if(!e?.length)return d;let n=e.reduce((o,a)=>o+a,0),s=e.length>1?`${e.map(H).join(
" + ")} = `:"";return i`<li class="pieces">${t}: <b>${s}${H(n)} ${w(0).unit}</b></li>`}function Yy(t){if(!t.length)
return d;let[e]=[...t].sort((o,a)=>o.distance_mm-a.distance_mm),n=g(S(e.included_angle_deg)),s=g(w(Math.abs(e.
distance_mm)));return i`<li data-test="sides-near">
    ${e.distance_mm<0?i`<b>The finished ${e.side} side runs ${s} into the ${e.tool}</b>, at ${n}.`:i`The finished ${e.
side} side stays <b>${s}</b> from the ${e.tool}, nearest at ${n}.`}
  </li>`}var dl=$(()=>{_();gs();ne();L()});function Mu(t){return t.number===1?"first":t.turn_quarter?t.turn_over?"quarter-over":"quarter":t.turn_over&&t.
turn_end?"both":t.turn_over?"over":t.turn_end?"end":"same"}function $s(t){let e=Mu(t);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${Ou}${Eu[e]}</svg
    ><b>${Au[e]}.</b>`}function ja(t,e){let n=Mu(t);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${Ou}${Eu[n]}</svg>
    <p>
      <b data-test="move">${Au[n]}.</b>
      <span data-test="face">${t.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${Zy(t,e)}
    </p>
  </div>`}function wo({gauged_end:t,gauged_side:e},n){return e?`${e} side`:`${t} end${n?` (flat ${t==="left"?1:
n})`:""}`}function Zy(t,e){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=t;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=wo(t,e);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var Au,Ou,hl,Su,Jy,Tu,Xy,Eu,bs=$(()=>{_();Au={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},Ou=x`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,hl=x`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
Su=x`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,Jy=x`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
Tu=x`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,Xy=x`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
Eu={first:[Jy],same:[Xy],over:[hl],end:[Su],both:[hl,Su],quarter:[Tu],"quarter-over":[hl,Tu]}});function yo({frames:t},e){let n=t.findIndex(a=>a.share>=e);if(n<0)return t[t.length-1];if(n===0)return t[0];let[
s,o]=[t[n-1],t[n]];return ul(s,o,(e-s.share)/(o.share-s.share))}function ul(t,e,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(t.share,e.share),phase:e.phase,included_angle_deg:s(t.included_angle_deg,
e.included_angle_deg),punch_y_mm:s(t.punch_y_mm,e.punch_y_mm),left:o(t.left,e.left),right:o(t.right,e.right),inside_radius_mm:s(
t.inside_radius_mm,e.inside_radius_mm),half_arc_mm:s(t.half_arc_mm,e.half_arc_mm),gauge_x_mm:t.gauge_x_mm===null||
e.gauge_x_mm===null?null:s(t.gauge_x_mm,e.gauge_x_mm)}}function Lu({frames:t}){let e=t.find(o=>o.punch_y_mm<=0)??
t[0],n=Math.min(...t.map(o=>o.punch_y_mm)),s=[...t].reverse().find(o=>o.phase==="bend")??t[t.length-1];return{
before:e.share,after:n<0?s.share:t[t.length-1].share}}function Nu(t,e){let n=-e.punch_travel_mm,s=e.phase==="b\
end",o=c=>s?c.included_angle_deg:e.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?e.included_angle_deg:e.phase===
"approach"?n:-n,r=Qy(t.frames,e.phase);return{...t_(r,o,a),punch_y_mm:n}}function Qy(t,e){let n=e==="withdrawa\
l"?["release","withdrawal"]:[e],s=t.findIndex(a=>n.includes(a.phase)),o=t.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:t}function t_(t,e,n){for(let a=1;a<t.length;a+=1){let[r,l]=[e(t[a-1]),e(t[a])];if(n<=r&&
n>=l&&r>l)return ul(t[a-1],t[a],(r-n)/(r-l))}if(n>e(t[0]))return t[0];let[s,o]=t.slice(-2);return o.phase==="b\
end"?ul(s,o,(e(s)-n)/(e(s)-e(o))):o}function e_({thickness_mm:t,left:e,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=ws([[-a,-t/2],[-a,t/2]],s),[h,u]=ws([[a,-t/2],[a,t/2]],o),p=([f,b])=>`${f} ${-b}`,
m=f=>f.map(b=>`L${p(b)}`).join("");return`M${p(l)}A${r+t} ${r+t} 0 0 0 ${p(h)}${m(ws(n,o))}L${p(u)}A${r} ${r} \
0 0 1 ${p(c)}${m(ws(e,s))}Z`}function Cu(t,{phase:e,punch_y_mm:n}){let s=e==="putting in"||e==="approach",o=t.
frames.filter(p=>p.phase===(s?"putting in":"taking out"));if(!o.length||e==="bend"||e==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:p,right:m})=>[...ws(t.left,p),
...ws(t.right,m)]),[c,h]=[l.map(([p])=>p),l.map(([,p])=>p)];return{bounds:[Math.min(...c),Math.min(...h),Math.
max(...c),Math.max(...h,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function ws(t,[e,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return t.map(([r,l])=>[e+o*r-a*l,n+a*r+o*l])}function Ha(t,e,n){let s=-n.
punch_y_mm,o=e.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:e_(e,n),tools:[
t.before.ram,t.before.holder,t.before.punch].map(St).filter(Boolean),down:s,gauge:St(t.before.gauge),back:a}}var pl=$(
()=>{qe()});function Ua({clearance:t}){let e=t?.hits?.[0]??t?.nearest??null;return e&&e.distance_mm<=Fu?e:null}function Dn(t){
let{drawing:e,motion:n}=t;if(!e||!n?.frames?.length)return null;let s=Ua(t),{before:o,after:a}=Lu(n),r=s?Nu(n,
s):yo(n,(o+a)/2),l=!!t.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:Ha(e,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Hit":s?"Closest":"Half way"}}function ys(t){let{clearance:e}=t;
if(!e)return"Clearance was not checked at this step.";let n=Ua(t);if(!n)return`Nothing comes within ${g(w(Fu,{
digits:0}))} of the part.`;let s=g(w(Math.abs(n.distance_mm))),o=typeof e.needed_mm=="number"?`, ${g(w(e.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${Bu(n.tool)}, ${Pu(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${Bu(n.tool)}, ${Pu(n)}${e.hits?.length?o:""}.`}function Pu({phase:t,included_angle_deg:e,punch_travel_mm:n}){
let s=g(w(Math.max(0,-n),{digits:0}));return t==="approach"?`as the punch comes down, ${s} above the sheet`:t===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${g(S(e))}`}
function ml({motion:t},e){let n=g(S(e.included_angle_deg));if(e.phase==="bend")return t.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(e.phase==="release")return`Letting go, ${n}`;if(e.phase==="taking ou\
t")return`Taking it out${Iu(t,e)}`;if(e.phase==="putting in")return`Putting it in${Iu(t,e)}`;let s=g(w(Math.max(
0,e.punch_y_mm),{digits:0}));return e.phase==="withdrawal"?`Punch rising, ${s} up`:e.punch_y_mm>0?`Punch comin\
g down, ${s} up`:"First touch, sheet flat"}function Iu({frames:t},{phase:e,right:n}){let s=e==="putting in"?t.
find(a=>a.phase==="approach"):[...t].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??
t[0]).right[2]));return o?`, tilted by ${o}°`:", no tilt"}function n_({clearance:t}){let{way_in:e,way_out:n,rides_up:s,
clear:o}=t??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(e==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[Wu(e,n,"slide"),Wu(e,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${Ru}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${e==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${Ru}`}:null}function me(t,{short:e=!1}={}){let n=n_(t);return n?
e?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${Du(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${Du(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:d}var Fu,Bu,Ru,Wu,Du,s_,o_,Le=$(()=>{_();pl();L();Fu=100;Bu=t=>({gauge:"gauge finger",sheet:"part it\
self"})[t]??t;Ru="Punch still, at its top. Fingers never between.";Wu=(t,e,n)=>[t===n&&"in",e===n&&"out"].filter(
Boolean).join(" and ");Du=t=>t==="swing"?s_:o_(t!=="slide"),s_=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,o_=t=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${t?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function gl({segments_mm:t,segments_total_mm:e}){if(!t?.length)return"";let n=t.map(o=>H(o)).join(" + "),s=w(0).
unit;return t.length>1?`${n} = ${H(e??0)} ${s}`:`${n} ${s}`}function _s(t,e=0,n=[]){return t?.length?i`<ul class="tools" data-test="tools">
    ${t.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${fl(s)}</span>
          <span class="more"
            >${[gl(s),Hu(s.steps,e),$l(s,n),a_(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function Hu(t,e){return!t?.
length||t.length===e?"":`step${t.length>1?"s":""} ${t.join(", ")}`}function $l({kind:t,code:e},n){let s=n.filter(
a=>t==="punch"&&a.punch===e),o=s.filter(a=>a.punch_turned);return o.length?`turned round${o.length<s.length?` \
for ${Hu(o.map(({number:a})=>a),0)}`:""}`:""}function a_(t){return t==="good"||!t?"":t==="unknown"?"condition \
unknown":t}function Ga(t){let e=t.length_mm_low===t.length_mm_high||t.length_mm_low===void 0;return i`<div class="figures">
      ${Me("Blank length",w(t.length_mm,{digits:2}),{test:"blank-length",band:e?null:[w(t.length_mm_low,{digits:2}),
w(t.length_mm_high,{digits:2})]})}
      ${Me("Blank width",w(t.width_mm,t.outline?{digits:2}:{}),{test:"blank-width",band:t.width_mm_low===void 0||
t.width_mm_low===t.width_mm_high?null:[w(t.width_mm_low,{digits:2}),w(t.width_mm_high,{digits:2})]})}
      ${Me("Mass",so(t.mass_kg),{test:"blank-mass"})}
    </div>
    ${t.rests_on?i`<p data-test="blank-rests-on">Blank by ${t.rests_on}.</p>`:d}
    ${t.lines?i`<p data-test="relief">${bl(t)}</p>`:d}`}function bl({relief:t,lines:e=[]}){let n=new Set(e.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!t?"":t.shape===
"none"?"Corners without relief.":`Corner reliefs ${t.shape}, ${g(w(t.size_mm,{digits:1}))} ${t.shape==="round"?
"across.":"a side."}`}function Uu(t){let e=s=>w(s,{digits:2}).text,n=[["At",s=>e(s.at_mm)],["Angle",s=>g(S(s.included_angle_deg))],
["Inside radius",s=>e(s.inside_radius_mm)],["Allowance",s=>e(s.bend_allowance_mm)],["Deduction",s=>e(s.bend_deduction_mm)],
["K-factor",s=>typeof s.k_factor=="number"?s.k_factor.toFixed(2):"–"]];return i`<div class="lines-frame">
    <table class="blank-table stacks" role="table" data-test="bend-lines">
      <caption>
        Bend lines, ${w(0).unit} from
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
              <th role="rowheader" scope="row">${s.bend} ${r_(t,s)}${s.direction}</th>
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
  </div>`}function r_({lines:t},{bend:e}){let n=t?.find(s=>s.bend===e)?.side;return n?`${n} `:""}function wl(t,e=0){
let n=t.turn_over||t.turn_end||t.turn_quarter,s=t.gauged_against&&t.gauged_against!=="flat edge"?`, against th\
e ${t.gauged_against}`:"",o=t.gauged_end?`${i_(wo(t,e))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!t.turn_quarter)}
            data-over=${String(t.turn_over)}
            data-end=${String(t.turn_end)}
            >${$s(t)}</span
          > `:d}
    ${me(t,{short:!0})} ${o}${t.inside_face==="up"?"top":"bottom"} face
    up.${l_(t)}
  </span>`}function l_({hits:t}){if(!t)return d;let e=t.gauge_x_mm.map(n=>H(n)).join(", ");return i` <span data-test="hits"
    >${t.count} hits, ${g(w(t.pitch_mm,{digits:2}))} apart, gauge X ${e}.</span
  >`}function fe(t){let e=t.operation&&t.operation!=="bend"?t.operation:"bend",n=t.side?`Bend ${t.bend}, ${t.side}`:
`Bend ${t.bend}`;return e==="bend"?n:`${n}, ${e}`}function c_(t,e,n){let s=t[`${e}_low`],o=t[`${e}_high`],a=s==
null||s===o?d:i`<small class="band">${n(s).text} to ${g(n(o))}</small>`;return i`${g(n(t[e]))}${a}`}function ju(t,e,n){
return ce(t,t)?t.first_hit?d_(t,e,n):t.limits?c_(t,e,n):g(n(t[e])):g(n(null))}function d_(t,e,n){let s=e==="se\
t_angle_deg"?`first hit, ${Ji(t.first_hit)}; then about `:"then about ";return i`${g(n(t[e]))}<small class="band"
      >${s}${g(n(t[`expected_${e}`]))}</small
    >`}function Va(t,{link:e}={}){let n=o=>w(o,{digits:2}),s=t.part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${t.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${e?i`<a href=${e(o.number)}>${o.number}. ${fe(o)}</a>`:i`${o.number}. ${fe(o)}`}
                <small>${g(S(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${g(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${g(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${ju(o,"set_angle_deg",S)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${ju(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${g(Zt(o))}<small class="band">expected ${g(Ze(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch turned round</span>`:
d}
              </td>
              <td role="cell" data-head="Sheet" class="long">${wl(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var fl,i_,en=$(()=>{_();pt();kn();L();ue();ne();Ta();Ln();bs();Le();fl=Ue;i_=t=>t[0].toUpperCase()+t.
slice(1)});function za(t,e){return i`<header class="step-top">
    <a class="step-card" href="/c/${t.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${t.title||t.display_code}</span></a
    >
    ${yl(t,e)}
  </header>`}function Gt(t,e,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${t}${e.unit&&e.unit!=="°"?i` <span class="unit">${e.unit}</span>`:d}</span
    >
    <span class="value" data-test="${n}-value">${e.text}${e.unit==="°"?"°":d}</span>
  </div>`}var yl,nn=$(()=>{_();en();yl=(t,e)=>i`<h1>
    <span data-test="step-number">Step ${e.number} of ${t.plan.steps.length}</span>
    <small
      >${fe(e)}
      ${e.direction}${e.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch turned round</b>`:
d}</small
    >
  </h1>`});function Gu(t,e,n,s,o){let a=Dn(t),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?yo(t.motion,l):null,
h=a&&r==="during"?a.shown:null,u=g(w(t.gauge_x_mm)),p=(m,f,b,y)=>i`<button
      type="button"
      class="button"
      aria-pressed=${b?"true":"false"}
      data-test=${y}
      @click=${()=>{Object.assign(n,f,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${pe(t.drawing,{pose:r==="between"?"during":r,close:n.close,opening:t.v_opening_mm,gauge:u,
angle:e,moment:h??(c&&Ha(t.drawing,t.motion,c)),near:a?.near??null,mark:r==="during",room:c&&Cu(t.motion,c),words:`${fe(
t)}, ${u_(t,r)}. Gauge at ${u}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${p_(t,r,c)}
          </p>`:d}
    <div class="toggles">
      ${p("Before",{at:"before"},r==="before","before")}
      ${a?p(a.name,{at:"during"},r==="during","during"):d}
      ${p("After",{at:"after"},r==="after","after")}
      ${p(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?m_(t,l,n,s,o):d}`}function u_(t,e){return e==="before"?"the sheet on the die before the bend":e==="aft\
er"?"at the bottom of the stroke":e==="during"?ys(t):"on its way"}function p_(t,e,n){return n?ml(t,n):ys(t)}function m_(t,e,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&f_(e>=1?0:e,n,s,o),s()};return i`<div class="motion">
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
      aria-valuetext=${ml(t,yo(t.motion,e))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function f_(t,e,n,s){let o=performance.now(),a=r=>{!e.playing||s.aborted||(e.share=Math.min(1,t+Math.
max(0,r-o)/h_),e.playing=e.share<1,n(),e.playing&&requestAnimationFrame(a))};Object.assign(e,{at:"between",share:t}),
requestAnimationFrame(a)}var h_,_o,qa=$(()=>{_();pl();mo();L();en();Le();h_=7e3,_o=()=>({at:"before",share:0,close:!1,
playing:!1})});function Vu(t,{waits:e,correction:n}){if(!e&&!n?.to_check?.length)return i`<p data-test="no-setting">${n?.words||
"No new setting comes from this one."}</p>`;let s=n?.said?bt(n.said):n?.what??`${g_(t)} Something else is wron\
g.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${k("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??jd).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function g_(t){let e=Ai(t),n="That is further off than the card’s table of corrections goes.";return e?
`${n} Tools and press end at ${g(S(e.sharpest_deg))} under load.`:n}function zu(t,e){return t.die?i`<p class="why-not-set" data-test="why-not-set">
    ${k("stop")} <b>No angle and depth.</b>
    ${e?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:d}var _l=$(()=>{_();kn();L();U()});function qu({stations:t=[]}){return t.length<2&&!t.some(e=>e.off_centre_level!=="ok")?d:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${t.map(e=>i`<li>
            <b>Station ${e.number}</b> ${e.punch}${e.turned?", turned round,":d} over
            ${e.die}: ${Ku(e.centre_mm)}; step${e.steps.length>1?"s":""}
            ${e.steps.join(", ")}.
            ${e.off_centre_level==="ok"?d:i`${k(e.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function Ka({stations:t=[]},e){let n=t.find(({steps:s})=>s.includes(e.number));return n&&t.length>1?
`Station ${n.number}, ${Ku(n.centre_mm)}`:""}function Ku(t){return Math.abs(t)<.5?"in the middle":`its middle ${g(
w(Math.abs(t),{digits:0}))} to the ${t>0?"right":"left"} of the press's middle`}var Ya=$(()=>{_();L();U()});function Ja(t,e){let n=e.checks.filter(l=>Ht(l)!=="ok"),s=t.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=t.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+l.words,{...l,sign:Ht(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function Xa(t,e,n,s,o){
if(!e.drawing)return i`<p class="state" data-test="no-drawing">
      ${e.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=ee(t,e),r={...e,gauge_x_mm:a.gauge_x_mm};return Gu(r,Ea(e,a),n,s,o)}function Za(t,e){let n=ee(
t,e);return n.set_angle_deg===null&&e.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${Gt("Gauge X",w(n.gauge_x_mm),"gauge-x")}
      ${Gt("Gauge R",w(e.gauge_r_mm),"gauge-r")}
      ${Gt("Angle to set",S(n.set_angle_deg),"set-angle")}
      ${Gt("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${ds(n.firstHit,e.drawing?"The drawing shows the last hit.":"")}
    ${n.set_angle_deg===null?zu(e,n.fromTrial):d} ${$_(e)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-trial" data-test="from-trial">
            <b>Angle and depth from a first piece.</b> The plan said ${g(S(e.set_angle_deg))} and
            ${g(w(e.punch_depth_mm,{digits:2}))}.
          </p>`:d}
    ${e.gauge_draw_back_mm?i`<p class="draw-back" data-test="draw-back">
            <b>Draw the gauge back ${g(w(e.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would hit it.
          </p>`:d}
    ${b_(e)}`}function $_(t){let e=Ma(t);return e===d?d:i`<p class="press-force" data-test="press-force">Allow for ${e}</p>`}
function b_({hits:t}){return t?i`<div class="hits" data-test="hits">
    <b>${t.count} hits</b>, ${g(S(t.angle_each_deg))} each. Move the gauge
    ${g(w(t.pitch_mm,{digits:2}))} each time:
    ${t.gauge_x_mm.map(e=>w(e).text).join(" · ")}
  </div>`:d}function Yu(t,e){if(!e.die)return d;let n=Ka(t,e);return i`<dl class="step-tools" data-test="step-tools">
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
        <dd><b>${g(S(e.included_angle_deg))}</b> ${e.direction}</dd>
      </div>
    </dl>
    ${ms(e)}`}var Qa=$(()=>{_();kt();L();ue();U();Ln();qa();Bn();_l();nn();Ya()});function Ju(t,e,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=Ja(t,e),c=l.filter(m=>Ht(m)!=="note"),h=l.length>
w_,u=h?c:l,p=e.number===t.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-step"
    data-code=${t.code}
    data-step=${e.number}
    data-revision=${t.revision}>
    <header class="step-top">
      ${tr(n,o)}
      <p class="bench-card" data-test="bench-card">${t.title||t.display_code}</p>
      ${yl(t,e)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${_t(r)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${ja(e,t.part.flats_mm.length)}${me(e)}</div>
      <section class="step-set" aria-label="What to set">${Za(t,e)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${h?"many":""}" aria-label="What to watch">
        ${u.length?_t(u):d}${Fa(t.plan,e)}
      </section>
      <section class="step-with" aria-label="Tools">${_s(y_(t,e),0)}</section>
    </div>
    ${Zu({back:e.number>1,label:p?"Done":"Next",more:p?"":`step ${e.number+1}`},o)}
  </article>`}function Xu(t,{name:e,lines:n,acts:s}){let o=t.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-done"
    data-code=${t.code}
    data-step=${o+1}>
    <header class="step-top">
      ${tr(e,s)}
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
    ${Zu({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function Zu({back:t,label:e,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!t} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${e}${n?i` <small>${n}</small>`:d}
    </button>
  </nav>`}var w_,y_,tr,vl=$(()=>{_();tn();dl();U();bs();en();nn();Le();Qa();w_=3;y_=(t,e)=>t.plan.tools.filter(
n=>n.steps.includes(e.number)).map(n=>({...n,steps:[]}));tr=(t,e)=>i`<button
    type="button"
    class="button bench-name"
    data-test="bench-name"
    aria-label="${Ee(t)}, this display. Choose another"
    @click=${e.choose}>
    ${Ee(t)}
  </button>`});function Qu({names:t,silent:e,typed:n,wrong:s,here:o},a){return i`<div class="bench-choose" data-test="bench-choose">
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
                  ${Ee(r)}
                </button>`)}
          </div>`:d}
    ${t?i`<form
            class="bench-new"
            novalidate
            @submit=${r=>{r.preventDefault(),a.make()}}>
            ${O({name:"bench",label:t.length?"Or a new one":"Give it a name",value:n,wrong:s?[s]:[],change:a.type,
hint:"Like 1, or Big press. It is kept on this display."})}
            <button class="button" data-test="make-bench">Make it</button>
          </form>`:d}
    ${o?i`<button type="button" class="button" data-test="stay" @click=${()=>a.take(o)}>
            Stay at ${Rn(o)}
          </button>`:d}
    ${al()}
  </div>`}function sp({answers:t,refused:e},n,s,o){return i`${t===!1?i`<p class="bench-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again by itself.`}
        </p>`:d}
  ${e?i`<p class="bench-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${e}
        </p>`:d}
  ${s?i`<p class="bench-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:d}`}var tp,ep,np,kl,op=$(()=>{_();G();rl();tn();dt();vl();J();tp=t=>kl(t,"bench-idle",Ee(t.name),
i`<p>Open a card on a phone and choose this bench.</p>
      ${al()}`),ep=(t,e,n)=>kl(n,"bench-no-card",W(t),e instanceof M?i`<p>${e.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes by itself when the shop
          is back.
        </p>`),np=(t,e,n)=>kl(n,"bench-no-step",`There is no step ${e}`,i`<p>
      ${t.title||t.display_code} has ${t.plan.steps.length} now. Choose the step on the phone.
    </p>`),kl=({name:t,lines:e,acts:n},s,o,a)=>i`<article class="step bench-step" data-test=${s}>
    <header class="step-top">${tr(t,n)}</header>
    ${e}
    <div class="bench-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var ip={};et(ip,{show:()=>v_});function v_(t){hu(t.signal);let e=il();e?rp(t,e):ap(t,"")}function ap(t,e){t.title(
"Bench screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:e},o;t.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&t.render(Qu(s,c)),r=u=>{n.abort();let p=il();rp(t,p?.name===u?p:{name:u,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let u=s.typed.trim();if(s.names?.includes(u))return r(u);try{r((await mu(u||" ")).name)}catch(p){
s.wrong=p instanceof M?p.errors.name?.[0]??p.message:String(p.message),a()}},type:u=>Object.assign(s,{typed:u})},
h=async()=>{try{Object.assign(s,{names:(await In(n.signal)).map(({name:u})=>u),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),t.ready(),o=setTimeout(h,__))};a(),h()}function rp(t,e){let{name:n}=e,s=new AbortController,
{signal:o}=s;t.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:e.code,
step:e.step},l=null,c=null,h=0,u=_o(),p=Wa(n,e.etag,{keepMs:1/0,heard:(v,N)=>{e={...e,etag:N},b({code:v.code,step:v.
step},!1)},sent:(v,N,X)=>m({etag:N,unsent:X}),changed:v=>v.gone?f(""):E()},o);function m(v){e={...e,...r,...v},
ll(e)}function f(v){s.abort(),v||ll(null),ap(t,v)}function b(v,N){let X=v.code!==r.code||v.step!==r.step;v.code!==
r.code&&(l=null),X&&(u=_o()),r=v,m({unsent:N}),N&&p.move(v),X||!l&&v.code?y():E()}async function y(){a.abort(),
a=new AbortController;let v=a.signal;if(h=0,c=null,E(),!!r.code)try{await yt(r.code,N=>{v.aborted||(l=N,h=0,E())},
v)}catch(N){if(v.aborted||o.aborted)return;c=N,E()}}let T={next:()=>{if(!l)return;let v=l.plan.steps.length;b(
{code:l.code,step:r.step>v?1:r.step+1},!0)},back:()=>l&&r.step>1&&b({code:l.code,step:r.step-1},!0),clear:()=>b(
{code:null,step:0},!0),choose:()=>f(n),newer:()=>y()};function E(){if(o.aborted)return;let v=sp(p.standing(),!!l,
h,T.newer);t.title(l?`${l.title||l.code}, ${n}`:n),t.render(C({name:n,lines:v,acts:T})),(l||c||!r.code)&&t.ready()}
function C(v){if(!r.code)return tp(v);if(!l)return c?ep(r.code,c,v):Tt(`Opening ${W(r.code)}…`);let N=l.plan.
steps,X=N[r.step-1];return X?Ju(l,X,v,Xa(l,X,u,E,a.signal)):r.step===N.length+1?Xu(l,v):np(l,r.step,v)}_u(T,o),
$t(E,o),document.addEventListener("sync",async v=>{if(!l)return c&&v.detail.reached?y():void 0;let N=await te(
l.code).catch(()=>{});!N||N.code!==l?.code||N.revision===l.revision||h===N.revision||(h=N.revision,E())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),e.unsent&&p.move(r),y()}var __,lp=$(()=>{G();rl();tn();cl();kt();
dt();vu();nt();Ct();op();vl();qa();Bt();Qa();__=3e3});function Z(t,e){let n=document.getElementById("notices"),s=()=>Re(i``,n);Re(i`<div class="notice" data-test="notice">
      <span>${t}</span>
      <button type="button" @click=${()=>{s(),e?.act()}}>${e?.label??"Close"}</button>
    </div>`,n),clearTimeout(cp),e||(cp=setTimeout(s,8e3))}var cp,ae=$(()=>{_()});function dp(t){try{let e=JSON.parse(localStorage.getItem(xl(t))??"null");return e&&Array.isArray(e.form?.flats)&&
Array.isArray(e.form?.bends)?e:null}catch{return null}}function Sl(t,e){try{return localStorage.setItem(xl(t),
JSON.stringify({...e,kept_at:new Date().toISOString()})),!0}catch{return!1}}function Tl(t){try{localStorage.removeItem(
xl(t))}catch{}}var xl,hp=$(()=>{xl=t=>`flangebook.part.${t||"new"}`});var er,ge,nr,sr,vo=$(()=>{Se();ps();L();er=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
ge=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),nr=t=>({angle:String(t.included_angle_deg),direction:t.
direction,radius:z(t.inside_radius_mm),kind:t.kind??"bend",gap:t.kind==="open_hem"?z(t.hem_gap_mm):"",...go(t)}),
sr=(t,e)=>({included_angle_deg:t.kind==="bend"?he(t.angle):0,direction:t.direction,kind:t.kind,...t.radius.trim()&&
t.kind==="bend"?{inside_radius_mm:tt(t.radius,e)}:{},...t.kind==="open_hem"?{hem_gap_mm:tt(t.gap,e)}:{},...La(
t)})});function or(t="tray"){let e=()=>t==="lips-in"?{flats:["",""],bends:[ge(),ge()]}:t==="lips-out"?{flats:["",""],
bends:[ge(),{...ge(),direction:"down"}]}:{flats:[""],bends:[ge()]};return{length:"",width:"",there:t==="channe\
l"?["left","right"]:[...Fn],alike:!0,sides:{left:e(),right:e(),front:e(),back:e()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function pp(t,e){let n=or(e);for(let s of Fn){let o=t.sides[t.alike?
t.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...t,there:n.there,sides:n.
sides}}function mp({there:t,sides:e,alike:n}){let s=(n?t.slice(0,1):t).map(r=>e[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return t.length===2&&t.includes("left")&&t.includes("right")&&s.every(o)?"channel":t.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function fp(t){let e=Fn.
filter(o=>t.sides[o]),n=e.map(o=>JSON.stringify(t.sides[o])),s=or().sides;for(let o of Fn){let a=t.sides[o]??t.
sides[e[0]];s[o]={flats:a.flats_mm.map(z),bends:a.bends.map(nr)}}return{length:z(t.length_mm),width:z(t.width_mm),
there:e,alike:n.every(o=>o===n[0]),sides:s,relief:t.relief,reliefSize:z(t.relief_mm),corner:t.corner,gap:z(t.gap_mm),
firstPair:t.first_pair??"left-right"}}function wp(t,e){let n=s=>t.there.includes(s)?$p(t,s).flats.map((o,a)=>`${s}\
 ${xs(a)}`):[];return Ml.filter(s=>s.some(o=>t.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...e(s,
o),...n(o)])}function yp(t,e){let n=o=>tt(o,e),s=t.there.map(o=>{let a=$p(t,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>sr(r,e))}]});return{length_mm:n(t.length),width_mm:n(t.width),sides:Object.fromEntries(
s),relief:t.relief,corner:t.corner,...t.firstPair==="front-back"?{first_pair:t.firstPair}:{},...t.reliefSize.trim()&&
t.relief!=="none"?{relief_mm:n(t.reliefSize)}:{},...t.gap.trim()&&t.corner==="closed"?{gap_mm:n(t.gap)}:{}}}function vs(t){
return[["box.length_mm","length of the base",t.length],["box.width_mm","width of the base",t.width],...Al(t).flatMap(
e=>k_(t,e))]}function k_({sides:t,alike:e},n){let s=e?"":`${n} `;return t[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=t[n].bends[a],h=`${s}${xs(a)}`;return[[ks(n,a),h,o],...r==="bend"?[[ar(n,a),`angle of the ${h}`,
l]]:[],...r==="open_hem"?[[`${sn(n,a)}.hem_gap_mm`,`gap of the ${h}`,c]]:[]]})}function _p(t,e){if(!t.alike)return e;
let n=t.there[0];return Object.fromEntries(Object.entries(e).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function vp(t){let[,e,n,s,o,a]=t.split(".");if(e!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[e]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${xs(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function kp(t,e,n,s){
let o=t.sides[e];return rr(t,e,{...o,flats:o.flats.with(n,s)})}function Ss(t,e,n,s){let o=t.sides[e];return rr(
t,e,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function xp(t,e){let{flats:n,bends:s}=t.sides[e],o=s.map(
a=>({...a,kind:"bend"}));return rr(t,e,{flats:[...n,""],bends:[...o,ge()]})}function Sp(t,e){let{flats:n,bends:s}=t.
sides[e];return rr(t,e,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function Tp(t,e){let n=Fn.filter(o=>o===e!==
t.there.includes(o));if(!n.length)return t;let s=t.sides[t.there[0]];return{...t,there:n,sides:t.alike?{...t.sides,
[n[0]]:s}:t.sides}}function Mp(t,e){let n=t.sides[t.there[0]];return{...t,alike:e,sides:e?t.sides:{left:n,right:n,
front:n,back:n}}}var Ml,Fn,up,gp,$p,jn,bp,Al,ks,sn,ar,xs,rr,Hn=$(()=>{vo();L();Ml=[["left","right"],["front","\
back"]],Fn=Ml.flat(),up=6;gp=({there:t})=>Ml.every(e=>e.some(n=>t.includes(n))),$p=(t,e)=>t.sides[t.alike?t.there[0]:
e],jn=t=>wp(t,()=>[]),bp=t=>wp(t,(e,n)=>[`base, ${e} to ${n}`]);Al=({there:t,alike:e})=>e?t.slice(0,1):t;ks=(t,e)=>`\
box.sides.${t}.flats_mm.${e}`,sn=(t,e)=>`box.sides.${t}.bends.${e}`,ar=(t,e)=>`${sn(t,e)}.included_angle_deg`,
xs=t=>t===0?"wall":t===1?"lip":`flat ${t+1}`;rr=(t,e,n)=>({...t,sides:{...t.sides,[e]:n}})});function El(t){if(!t)return ko();let{first:e,last:n,margin_mm:s}=t;return{first:e?String(e):"",last:n?String(n):
"",no_turn_over:!!t.no_turn_over,no_turn_end:!!t.no_turn_end,one_set_up:!!t.one_set_up,critical_flats:[...t.critical_flats??
[]],margin:s===void 0||s===Ol?"":z(s)}}function Ll(t,e){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=t??ko(),h={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:tt(
c,e)}:{}};return Object.keys(h).length?{wishes:h}:{}}function Nl(t,e){if(!t)return{};let n=e?-1:1,s=a=>!a||Number(
a)===e?"":Number(a)>e?String(Number(a)+n):a,o=t.critical_flats.filter(a=>!e||a!==e+1).map(a=>a>e?a+n:a);return{
wishes:{...t,first:s(t.first),last:s(t.last),critical_flats:o}}}function ir(t){let{first:e,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=t??ko();return[e&&`bend ${e} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var Ol,ko,Ap,lr=$(()=>{L();Ol=2,ko=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});Ap=t=>({...t,first:"",
last:"",critical_flats:[]})});function Bl(t){return{unit:B(),title:"",note:"",metal:t,thickness:"",length:"",flats:["",""],bends:[ge()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function cr({aside:t,...e},n){let s=Op({...e,box:n?e.box??t??or():
null});return n?s:{...s,...e.box?{aside:e.box}:{}}}function Ep(t,e){return t.box&&e&&String(jn(t.box))===String(
jn(e))&&t.box.firstPair===e.firstPair?{...t,box:e}:Op({...t,box:e})}function xo(t,e){return t.box?{...Bl(t.metal),
title:t.title??"",note:e,thickness:z(t.thickness_mm),dimension:t.dimension??"din6935",order:t.order??null,wishes:El(
t.wishes),tools:go(t.tools),box:fp(t.box)}:{unit:B(),title:t.title??"",note:e,metal:t.metal,thickness:z(t.thickness_mm),
length:z(t.bend_length_mm),flats:t.flats_mm.map(z),bends:t.bends.map(nr),dimension:t.dimension??"din6935",grain:t.
grain??"",order:t.order??null,wishes:El(t.wishes),tools:go(t.tools),holes:(t.holes??[]).map(n=>({flat:String(n.
flat),position:z(n.position_mm),diameter:z(n.diameter_mm)}))}}function Ts(t){let e=n=>tt(n,t.unit);return t.box?
{title:t.title.trim(),metal:t.metal,thickness_mm:e(t.thickness),dimension:t.dimension,box:yp(t.box,t.unit),...t.
order?{order:t.order}:{},...Ll(t.wishes,t.unit),...Xi(t.tools)}:{title:t.title.trim(),metal:t.metal,thickness_mm:e(
t.thickness),bend_length_mm:e(t.length),flats_mm:t.flats.map(e),bends:t.bends.map(n=>sr(n,t.unit)),dimension:t.
dimension,...t.grain?{grain:t.grain}:{},...t.order?{order:t.order}:{},...Ll(t.wishes,t.unit),...Xi(t.tools),...t.
holes.length?{holes:t.holes.map(n=>({flat:he(n.flat),position_mm:e(n.position),diameter_mm:e(n.diameter)}))}:{}}}
function dr(t){let e=[["metal","metal",t.metal],["thickness_mm","thickness",t.thickness]];return(t.box?[...e,...vs(
t.box)]:[...e,["bend_length_mm","length",t.length],...t.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...t.
bends.flatMap((s,o)=>x_(s,o)),...t.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function x_({kind:t,angle:e,gap:n},s){return t==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,e]]:t==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function Lp(t,e,n){return{...t,flats:t.flats.with(e,n)}}function Un(t,e,n){return{...t,bends:t.
bends.with(e,{...t.bends[e],...n})}}function Il(t,e){let n=t.bends.at(e==="left"?0:-1),s={...ge(),direction:n?.
direction??"up"},o=e==="left"?t.bends:t.bends.map((r,l)=>l>0&&l===t.bends.length-1?{...r,kind:"bend"}:r);if(e===
"right")return{...t,bends:[...o,s],flats:[...t.flats,""],order:null};let a=t.holes.map(r=>({...r,flat:Cp(r.flat,
1,1)}));return{...t,bends:[s,...o],flats:["",...t.flats],order:null,holes:a,...Nl(t.wishes,0)}}function Np(t,e){
let n=e+2,s=t.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:Cp(o.flat,n,-1)}));return{...t,bends:t.
bends.toSpliced(e,1),flats:t.flats.toSpliced(e+1,1),order:null,holes:s,...Nl(t.wishes,e+1)}}function Cp(t,e,n){
let s=Number(t);return Number.isInteger(s)&&s>=e?String(s+n):t}function hr(t){let e=t.split(/[^\d]+/).filter(Boolean).
map(Number);return e.length?e:null}function Bp(t,e){return e===0||e===t.bends.length-1}var Cl,Op,Pl,on=$(()=>{
vo();Hn();Se();ps();L();lr();Cl=40;Op=t=>({...t,order:null,...t.wishes?{wishes:Ap(t.wishes)}:{}});Pl=t=>JSON.stringify(
{...Ts(t),title:""})});async function Rl(t,e){try{let{body:n}=await A("POST","/cards",{body:{...Ip(t),code:e},timeout:Pp});return{saved:await Dp(
n)}}catch(n){if(n instanceof M&&n.status===409)return{taken:e};throw Wp(n)}}async function Rp(t,e){let n={...Ip(
t),reason:t.reason??""},s=S_(e,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await A("PUT",`/cards/${e.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:Pp});return await jc().then(c=>Gs({...s,number:c},l)).catch(
()=>{}),{saved:await Dp(r)}}catch(o){if(o instanceof M&&o.status===412)return{stale:await we(e.code)};throw Wp(
o)}}function S_(t,e){let n=JSON.stringify(e);t.saving?.wanted!==n&&(t.saving={id:Wt(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=t;return{id:t.saving.id,number:0,kind:"edit",code:s,body:e,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function Wp(t){return t instanceof M&&(t.errors=Object.fromEntries(Object.entries(t.
errors).map(([e,n])=>[e.replace(/^part\./,""),n]))),t}async function Dp(t){return ie(t).catch(()=>t)}var Pp,Ip,
Fp=$(()=>{G();kt();Nt();on();nt();Ct();Pp=6e4,Ip=t=>({part:Ts(t),note:t.note,...P().name?{by:P().name}:{}})});function Up(t,{pixels:e=rs(),tallest:n=e*.45,test:s="blank"}={}){let o=H(t.width_mm),a=e-jt(o,Y)-Y*2,r=a/t.length_mm,
l=t.width_mm*r>n,c=l?n:Math.max(t.width_mm*r,3),h=jp(t.bend_lines.map(b=>[b.at_mm*r,Y*1.8+jt(Wl(b),Y)]),a),u=jp(
t.bend_lines.map(b=>[b.at_mm*r,jt(H(b.at_mm),Y)]),a),p=Hp(h)*So+Y*.4,m=Hp(u)*So+Y*.4,f=p+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${T_(t)}
      viewBox="-8 -4 ${e+8} ${f+m+So*1.4}">
      ${l?A_(a,p,f):x`<rect class="sheet" x="0" y=${p} width=${a} height=${c}/>`}
      ${t.bend_lines.map((b,y)=>M_(b,b.at_mm*r,h[y],u[y],p,f))}
      ${O_(a,f+m+Y*.7,H(t.length_mm))}
      ${E_(a+Y,p,f,o)}
    </svg>
    ${l?i`<p class="hint">Width ${g({text:o,unit:""})} is drawn short at the break.</p>`:d}`}function Wl(t){let e=t.
included_angle_deg?g(S(t.included_angle_deg)).replace(".0°","°"):"hem";return`${t.direction} ${e}`}function T_(t){
let e=t.bend_lines.map(n=>`bend ${n.bend} ${Wl(n)} at ${H(n.at_mm)}`);return`Blank ${H(t.length_mm)} by ${H(t.
width_mm)}. ${e.join("; ")}.`}function jp(t,e){let n=[];return t.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),
Math.max(e-o/2,o/2)),r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function M_(t,e,n,s,o,a){
let r=o-Y*.4-So*(n.row+.5),l=a+Y*.4+So*(s.row+.5),c=n.at-n.width/2;return x`<path class="fold ${t.direction}" d="M${e} ${o}V${a}"/>
    <path class="leader" d="M${e} ${o}V${r+Y*.8}M${e} ${a}V${l-Y*.8}"/>
    <rect class="ground" x=${c} y=${r-Y*.75} width=${n.width} height=${Y*1.5}/>
    <circle class="badge" cx=${c+Y*.75} cy=${r} r=${Y*.68}/>
    <text class="badge-number" x=${c+Y*.75} y=${r} font-size=${Y*.95} text-anchor="middle"
      dominant-baseline="central">${t.bend}</text>
    <text x=${c+Y*1.7} y=${r} font-size=${Y} dominant-baseline="central">${Wl(t)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-Y*.7} width=${s.width}
      height=${Y*1.4}/>
    <text x=${s.at} y=${l} font-size=${Y} text-anchor="middle"
      dominant-baseline="central">${H(t.at_mm)}</text>`}function A_(t,e,n){let s=(e+n)/2,o=`L${t*.52} ${s+3}L${t*
.54} ${s-14}L${t*.58} ${s+8}L${t*.6} ${s-9}`,a=`L${t*.6} ${s-1}L${t*.58} ${s+16}L${t*.54} ${s-6}L${t*.52} ${s+
11}`;return x`<path class="sheet" d="M0 ${e}V${s+3}${o}L${t} ${s-9}V${e}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${t*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${t} ${s-1}V${n}Z"/>`}function O_(t,e,n){let s=jt(n,Y);return x`<path class="dimension"
      d="M0 ${e}H${t}M-4 ${e+4}L4 ${e-4}M${t-4} ${e+4}L${t+4} ${e-4}"/>
    <rect class="ground" x=${t/2-s/2} y=${e-Y*.7} width=${s} height=${Y*1.4}/>
    <text x=${t/2} y=${e} font-size=${Y} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function E_(t,e,n,s){let o=a=>`M${t-4} ${a+4}L${t+4} ${a-4}`;return x`<path class="dimension" d="M${t} ${e}V${n}${o(
e)}${o(n)}"/>
    <text x=${t+Y*.6} y=${(e+n)/2} font-size=${Y}
      dominant-baseline="central">${s}</text>`}var Y,So,Hp,Gp=$(()=>{_();L();pa();ne();Y=18,So=Y*1.5;Hp=t=>Math.
max(0,...t.map(e=>e.row+1))});function Qt(t,{mark:e=0,...n}={}){if(!Rt(t))return eh(t,{mark:e,...n});let s=t.blank.lines.find(o=>o.bend===e)?.
side??"";return Da(t.folded,{...n,mark:s})}function Ms(t,e={}){return t.outline?ku(t,e):Up(t,e)}var an=$(()=>{
gs();Gp();ne()});function As({how:t,differences:e},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
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
  </section>`}function ur(t,e,n){return n.filter(({name:s})=>(t[s]??"")!==(e[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:e[s]??"",mine:t[s]??""}))}var Os=$(()=>{_();U()});function zp(t,e,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=xo(t.part,t.note),r=[...new Set([...Dl(e),...Dl(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=ur(Vp(e),Vp(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
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
        ${Qt(t.plan,{pixels:330,tallest:260,test:"theirs-section"})}
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
  </section>`}function Dl(t){return[{label:"Title",value:t.title},{label:"Note",value:t.note},{label:"Metal",value:t.
metal},{label:"Thickness",value:t.thickness},{label:"Length",value:t.length},{label:"Measured",value:t.dimension},
{label:"Grain",value:t.grain},{label:"Order",value:t.order?.join(", ")??""},{label:"Order keeps to",value:ir(t.
wishes)},{label:"Tools",value:Cn(t.tools)},...t.box?[...vs(t.box).map(([,e,n])=>({label:`${e[0].toUpperCase()}${e.
slice(1)}`,value:n})),{label:"Corners",value:`${t.box.corner}, relief ${t.box.relief} ${t.box.reliefSize} ${t.
box.gap}`.trim()},{label:"Sides",value:t.box.there.join(", ")}]:[],...(t.box?[]:t.flats).map((e,n)=>({label:`F\
lat ${n+1}`,value:e})),...(t.box?[]:t.bends).map((e,n)=>({label:`Bend ${n+1}`,value:[e.kind==="bend"?`${e.angle}\
°`:e.kind.replace("_"," "),e.direction,e.radius&&`radius ${e.radius}`,e.gap&&`gap ${e.gap}`,Cn(e)].filter(Boolean).
join(", ")})),...t.holes.map((e,n)=>({label:`Hole ${n+1}`,value:`flat ${e.flat}, at ${e.position}, size ${e.diameter}`}))]}
var Vp,qp=$(()=>{_();an();Hn();on();ps();lr();U();Os();Vp=t=>Object.fromEntries(Dl(t).map(({label:e,value:n})=>[
e,n]))});function Yp(t,e,n){let{box:s,unit:o}=t,a=_p(s,e),r=(l,c)=>n(Ep(t,l),c);return i`${P_(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${I_(s,r)}
      <div>
        ${O({next:!0,name:"box.length_mm",label:"Length, left to right",value:s.length,wrong:R(a,"box.length_m\
m"),change:l=>r({...s,length:l})})}
        ${O({next:!0,name:"box.width_mm",label:"Width, front to back",value:s.width,wrong:R(a,"box.width_mm"),
change:l=>r({...s,width:l})})}
      </div>
    </div>
    ${R(a,"box.sides").map(l=>i`<p class="wrong" data-test="wrong-box.sides">${l}</p>`)}
    <h2>Sides, from the base outwards <small>${o}</small></h2>
    <label class="tick"
      ><input
        type="checkbox"
        name="box.alike"
        data-test="box.alike"
        .checked=${s.alike}
        @change=${l=>r(Mp(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${Al(s).map(l=>R_(s,l,a,r))}
    <h2>Corners</h2>
    ${j_(t,a,r)}
    ${gp(s)?K({name:"box.first_pair",label:"Bent first; the others go between them",value:s.firstPair??Kp[0][0],
options:Kp,change:l=>r({...s,firstPair:l==="front-back"?l:"left-right"})}):d}`}function P_(t,e){let n=mp(t);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${L_.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>e(pp(t,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function I_(t,e){let n=s=>{let o=t.there.includes(s),a=o&&t.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>e(Tp(t,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${Fn.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function R_(t,e,n,s){let{flats:o,bends:a}=t.sides[e],r=t.alike?"Each side":`${e[0].toUpperCase()}${e.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${e}">
    <legend>${r}</legend>
    ${F_(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${W_(t,e,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${e}"
        ?disabled=${o.length>=up}
        @click=${()=>s(xp(t,e),{focus:ks(e,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${e}"
              @click=${()=>s(Sp(t,e),{focus:ks(e,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:d}
    </div>
  </fieldset>`}function W_(t,e,n,s,o){let{flats:a,bends:r}=t.sides[e],[l,c]=[r[n],Jp(xs(n))],h=`${sn(e,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${O({next:!0,name:ks(e,n),label:c,value:a[n],wrong:[...R(s,ks(e,n)),...R(s,sn(e,n))],change:u=>o(kp(t,e,
n,u))})}
      ${l.kind==="bend"?O({next:!0,name:ar(e,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:R(s,
ar(e,n)),change:u=>o(Ss(t,e,n,{angle:u}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?O({next:!0,name:h,label:"Clear gap inside",value:l.gap,wrong:R(s,h),change:u=>o(Ss(t,
e,n,{gap:u}))}):d}
    ${K({name:`${sn(e,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:B_,change:u=>o(Ss(t,e,n,{direction:u==="down"?"down":"up"}))})}
    ${D_(t,e,n,s,o)}`}function D_(t,e,n,s,o){let{flats:a,bends:r}=t.sides[e],l=`${sn(e,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?d:i`<details class="bend-more">
    <summary>
      <span class="unseen">${Jp(xs(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":d}
    </summary>
    ${r[n].kind==="bend"?O({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:R(s,l),change:h=>o(Ss(t,e,n,{radius:h}))}):d}
    ${c?q({name:`${sn(e,n)}.kind`,label:"Kind",value:r[n].kind,options:er,change:h=>o(Ss(t,e,n,{kind:h}))}):d}
  </details>`}function F_(t){let e=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of t.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[h,u]=n[n.length-1];n.push(
[h+e[o]*Math.cos(s),u-e[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>x`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function j_({box:t,unit:e},n,s){return i`<div class="corner-grid">
      ${U_(t)}
      <div>
        ${K({name:"box.corner",label:"Walls at the corner",value:t.corner,options:C_,change:o=>s({...t,corner:o===
"open"?"open":"closed"})})}
        ${K({name:"box.relief",label:"Relief",value:t.relief,options:N_,change:o=>s({...t,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${t.relief==="none"?d:O({next:!0,name:"box.relief_mm",label:t.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:e,hint:"Empty: by radius and thickness.",value:t.reliefSize,wrong:R(n,"box.relief_mm"),change:o=>s(
{...t,reliefSize:o})})}
      ${t.corner==="open"?d:O({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:e,hint:"Empty: by \
thickness.",value:t.gap,wrong:R(n,"box.gap_mm"),change:o=>s({...t,gap:o})})}
    </div>`}function U_({corner:t,relief:e}){let[n,s]=t==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${H_[e]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var L_,N_,C_,Kp,B_,Jp,H_,Xp=$(()=>{_();vo();Hn();on();J();oe();L_=[["tray","Tray","M10 14V44H86V14"],
["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channel","Two s\
ides","M10 14V44H86V14M18 36H30M66 36H78"]],N_=[["round","Round"],["square","Square"],["none","None"]],C_=[["c\
losed","Closed"],["open","Open"]],Kp=[["left-right","Left and right"],["front-back","Front and back"]],B_=[["u\
p","↑ in"],["down","↓ out"]];Jp=t=>t[0].toUpperCase()+t.slice(1);H_={none:"L50 40L30 40",square:"L58 20L58\
 48L30 48",round:"L50 31A9 9 0 1 1 41 40L30 40"}});function Fl(t,e){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${Zp[t.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(Zp).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${vt(t.dimension===n)}
              @change=${()=>e({...t,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?x`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:G_(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function G_(t){return t==="din6935"?x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function Qp(t,e,n){let s=(o,a)=>n({...t,holes:t.holes.with(o,{...t.holes[o],...a})});return i`<details class="holes">
    <summary>Holes near a bend${t.holes.length?`: ${t.holes.length}`:""}</summary>
    <p class="hint">Only those that could be pulled out of shape.</p>
    ${t.holes.map((o,a)=>{let r=`holes.${a}`;return i`<fieldset class="hole">
        <legend>Hole ${a+1}</legend>
        <div class="fields">
          ${O({next:!0,name:`${r}.flat`,label:"On flat",keys:"numeric",value:o.flat,wrong:R(e,`${r}.flat`),change:l=>s(
a,{flat:l})})}
          ${O({next:!0,name:`${r}.position_mm`,label:"Middle from its left end",unit:t.unit,value:o.position,wrong:R(
e,`${r}.position_mm`),change:l=>s(a,{position:l})})}
          ${O({next:!0,name:`${r}.diameter_mm`,label:"Size across",unit:t.unit,value:o.diameter,wrong:R(e,`${r}\
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
  </details>`}function jl(t,e,n,s){let o=t.box?jn(t.box):[],a=t.order??e??t.bends.map((l,c)=>c+1),r=(l,c)=>s({
...t,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${t.order?`${t.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${O({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:t.order?.
join(", ")??"",wrong:R(n,"order"),on:"change",change:l=>s({...t,order:hr(l)})})}
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
  </details>`}function tm(t,e,n){return q({name:"grain",label:"Rolling direction against the bend lines",value:t.
grain,wrong:R(e,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...t,grain:s})})}var Zp,em=$(()=>{_();We();Hn();on();J();oe();Zp={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:x`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:x`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:x`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var nm,sm=$(()=>{_();wi();yi();nm=Xo(class extends Xn{constructor(){super(...arguments),this.key=d}render(t,e){
return this.key=t,e}update(t,[e,n]){return e!==this.key&&(Zo(t),this.key=e),n}})});function om(t,e,n){let s=t.bends.length>=Cl;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(Il(t,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${t.flats.map((o,a)=>i`${z_(t,a,e,n)}${a<t.bends.length?q_(t,a,e,n):d}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(Il(t,"right"),{focus:`flats_mm.${t.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${Cl} bends.</p>`:d}`}function z_(t,e,n,s){let o=`flats_mm.${e}`;
return i`<li class="flat-row">
    ${O({next:!0,name:o,label:`Flat ${e+1}`,value:t.flats[e],wrong:R(n,o),change:a=>s(Lp(t,e,a))})}
  </li>`}function q_(t,e,n,s){let o=t.bends[e],a=`bends.${e}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([h])=>h===a||h===`${a}.kind`||h===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${e+1}>
    <span class="badge-mark" aria-hidden="true">${e+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:O({next:!0,name:l,label:`\
Bend ${e+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:R(n,l),change:h=>s(Un(t,e,{angle:h}))})}
      ${K({name:`${a}.direction`,label:`Bend ${e+1} turns`,value:o.direction,options:V_,change:h=>s(Un(t,e,{direction:h===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(h=>i`<p class="wrong" data-test="wrong-${a}">${h}</p>`)}
    ${o.kind==="open_hem"?K_(t,e,n,s):d}
    ${nm(e,Y_(t,e,n,s))}
  </li>`}function K_(t,e,n,s){let o=`bends.${e}.hem_gap_mm`;return O({next:!0,name:o,label:"Clear gap inside",
unit:t.unit,value:t.bends[e].gap,wrong:R(n,o),change:a=>s(Un(t,e,{gap:a}))})}function Y_(t,e,n,s){let o=t.bends[e],
a=`bends.${e}.inside_radius_mm`;return i`<details class="bend-more">
    <summary>
      <span class="unseen">Bend ${e+1}: </span>${o.radius?`Radius ${o.radius}`:"Radius"},
      ${Cn(o)||"tools"}, kind, remove
    </summary>
    ${o.kind==="bend"?O({next:!0,name:a,label:"Inside radius wanted",unit:t.unit,hint:"Empty: what the tools g\
ive.",value:o.radius,wrong:R(n,a),change:r=>s(Un(t,e,{radius:r}))}):d}
    ${el(`bends.${e}`,o,n,r=>s(Un(t,e,r)))}
    ${Bp(t,e)||o.kind!=="bend"?q({name:`bends.${e}.kind`,label:"Kind",value:o.kind,options:er,change:r=>s(Un(t,
e,{kind:r}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
    <button
      type="button"
      class="button wide"
      data-test="remove-bend-${e+1}"
      ?disabled=${t.bends.length<2}
      @click=${()=>s(Np(t,e),{focus:`flats_mm.${e}`,undo:`Bend ${e+1} and flat ${e+2} are out.`})}>
      Remove bend ${e+1} and flat ${e+2}
    </button>
  </details>`}var V_,am=$(()=>{_();sm();vo();on();J();ps();Bn();oe();V_=[["up","↑ up"],["down","↓ down"]]});function im(t,e,n){let s=t.wishes??ko(),o=c=>n({...t,wishes:{...s,...c}}),a=t.box?jn(t.box).map((c,h)=>[String(
h+1),`Bend ${h+1}: ${c}`]):t.bends.map((c,h)=>[String(h+1),`Bend ${h+1}`]),r=t.box?bp(t.box).map(c=>c[0].toUpperCase()+
c.slice(1)):t.flats.map((c,h)=>`Flat ${h+1}`),l=ir(s);return i`<details class="wishes" data-test="wishes">
    <summary>
      <span>Order, what it must keep to: <b>${l||"nothing special"}</b></span>
    </summary>
    <div class="fields">
      ${q({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:R(e,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${q({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:R(e,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${pr("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${pr("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${pr("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,h)=>pr(`wishes.flat-${h+1}`,c,s.critical_flats.includes(h+1),u=>o({critical_flats:J_(s.critical_flats,
h+1,u)})))}
      </div>
      ${R(e,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${O({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:t.unit,hint:"Emp\
ty: the usual.",placeholder:z(Ol),value:s.margin,wrong:R(e,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function pr(t,e,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${t}
      data-test=${t}
      .checked=${vt(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${e}</span
    ></label
  >`}var Hl,rm,J_,lm=$(()=>{_();We();Hn();L();lr();J();oe();Hl=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],rm={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};J_=(t,e,n)=>[...t.filter(s=>s!==e),...n?[e]:[]].sort((s,o)=>s-o)});function dm(t,{metals:e,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...e.some(({code:u})=>u===t.metal)?
[]:[[t.metal,t.metal?`${t.metal} (not in the shop)`:"Choose"]],...e.map(({code:u,name:p})=>[u,p])],{box:h}=t;return i`${K(
{name:"shape",label:"What it is",value:h?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:u=>r(cr(t,u==="box"))})}
    ${O({next:!0,name:"title",label:"Name of the part",value:t.title,wrong:R(a,"title"),change:u=>r({...t,title:u})})}
    ${q({name:"metal",label:"Metal",value:t.metal,options:c,wrong:R(a,"metal"),change:u=>r({...t,metal:u})})}
    <div class="fields">
      ${O({next:!0,name:"thickness_mm",label:"Thickness",unit:t.unit,placeholder:"3 or 16 ga",hint:s?X_(s,t.thickness):
"",value:t.thickness,wrong:R(a,"thickness_mm"),change:u=>r({...t,thickness:u})})}
      ${h?d:O({next:!0,name:"bend_length_mm",label:"Bend length",unit:t.unit,value:t.length,wrong:R(a,"bend_le\
ngth_mm"),change:u=>r({...t,length:u})})}
    </div>
    ${h?i`${Yp({...t,box:h},a,r)}
            <h2>More, if it matters</h2>
            ${Fl(t,r)}
            ${s||t.order?jl(t,s?.order?.sequence,a,r):d}`:i`<h2>Section, left to right <small>${t.unit}</small></h2>
            ${Fl(t,r)} ${om(t,a,r)}
            <h2>More, if it matters</h2>
            ${tm(t,a,r)} ${Qp(t,a,r)}
            ${jl(t,s?.order?.sequence,a,r)}`}
    ${im(t,a,r)} ${Hh(t,n,a,r)}
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
    ${o?O({next:!0,name:"reason",label:"Why this change, for the history",value:t.reason??"",wrong:R(a,"reason"),
change:u=>r({...t,reason:u})}):d}`}function X_({part:t,thickness_gauge:e},n){return[/^[\d.,\s]+$/.test(n)?"":g(
w(t.thickness_mm,{digits:2})),e??""].filter(Boolean).join(", ")}function Ul(t){return t.box?["title","metal","\
thickness_mm",...vs(t.box).map(([e])=>e),"box.relief_mm","box.gap_mm","order",...Hl,...tl,"note","reason"]:["t\
itle","metal","thickness_mm","bend_length_mm",...t.flats.map((e,n)=>`flats_mm.${n}`),...t.bends.flatMap((e,n)=>[
`bends.${n}.included_angle_deg`,`bends.${n}.inside_radius_mm`,...e.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:
[],`bends.${n}.die`,`bends.${n}.punch`]),...t.holes.flatMap((e,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,
`holes.${n}.diameter_mm`]),"grain","order",...Hl,...tl,"note","reason"]}function mr(t){if(t.startsWith("box"))
return vp(t);let[e,n,s]=t.split(".");return e==="tools"?n==="die"?"Die":"Punch":e==="wishes"?rm[n]??"Order":n===
void 0?cm[e]??e:`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[e]??e} ${Number(n)+1}${s?`, ${cm[s]??s}`:""}`}function hm(t){
let e=t.target;if(t.key!=="Enter"||!(e instanceof HTMLInputElement))return;t.preventDefault();let n=[...e.form.
querySelectorAll("input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(e)+1).find(o=>o.checkVisibility());
s instanceof HTMLElement&&s.focus()}var cm,Gl=$(()=>{_();We();L();on();Hn();Xp();J();em();Bn();am();lm();oe();
cm={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend length",grain:"Rolling direction",
order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"gap",flat:"flat",position_mm:"\
place",diameter_mm:"size",die:"die",punch:"punch"}});function um({dimensions:t=[]}){let e=t.filter(({error_mm:o})=>o!==null);if(!e.length)return d;let{basis:n,basis_said:s}=e[0];
return i`<h3>How close the flats come out</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${e.map(Q_)}
    </ul>
    ${n?i`<p class="hint" data-test="sizes-basis">${s?bt(s):n}</p>`:d}`}function Q_({flat:t,flat_name:e=`flat ${t}`,
wanted_mm:n,error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${t}>
    <b>${e[0].toUpperCase()}${e.slice(1)}</b> ${g(w(n))}
    <b>± ${g(Z_(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:d}.
  </li>`}var Z_,pm=$(()=>{_();L();U();Z_=t=>B()==="in"?{text:Q(t/Jt,3),unit:"in"}:w(t,{digits:2})});function fr(t,e){if(!Gn(t))return d;let{order:n}=t,[s,o]=tv(t),a=!!t.part?.order?.length,r=a?e.free():d,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${k(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${mm(n.sequence)}
          </p>`:d}
    ${ev(n.blocked??[])} ${nv(n.remedies??[])} ${sv(n.wishes)}
    ${r===d?d:i`<div class="buttons">${r}</div>`}
    ${ov(n.alternatives,e)} ${qu(t)} ${um(t)}
  </div>`}function tv({order:t,checks:e}){let n=s=>e.some(o=>o.code===s);return t.proven?["ok","Proven"]:n("no\
-order")?["stop","No order"]:e.some(({level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the way"]:
n("order-not-found")?["caution","None found"]:n("clearance-not-checked")?["caution","Not checked"]:["caution",
"Not proven"]}function mm(t){return i`<span class="run" role="img" aria-label="bends ${t.join(", ")}"
    >${t.map(e=>i`<span class="badge-mark" aria-hidden="true">${e}</span>`)}</span
  >`}function ev(t){return t.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${t.map(({bend:e,words:n})=>i`<li><b>Bend ${e}</b> ${n}</li>`)}
    </ul>`:d}function nv(t){return t.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${t.map(({template:e,numbers:n})=>i`<li>${Ke(e,n)}</li>`)}
    </ul>`:d}function sv(t){return t.length?i`<h3>What each wish costs</h3>
    <ul class="order-list" data-test="wish-costs">
      ${t.map(({wish:e,words:n})=>i`<li data-wish=${e}>${n}</li>`)}
    </ul>`:d}function ov(t,{use:e}){return t.length?i`<h3>Other orders that can be made</h3>
    <ul class="order-others" data-test="other-orders">
      ${t.map(({sequence:n,words:s})=>i`<li>${mm(n)} <span class="compared">${s}</span> ${e(n)}</li>`)}
    </ul>`:d}var Gn,fm,gm,gr=$(()=>{_();U();lt();pm();Ya();Gn=({order:t})=>Array.isArray(t?.wishes)&&Array.isArray(
t?.alternatives);fm=t=>({use:e=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${e.join(", ")}"
      @click=${()=>t(e)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>t(
null)}>
      Let it choose
    </button>`}),gm=t=>({use:e=>I("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${e.join(", ")}"
        href="/part?from=${t}&order=${e.join("-")}"
        >Use this order</a
      >`),free:()=>I("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${t}&order=free"
        >Let it choose</a
      >`)})});function $m(t,{save:e,order:n}){return i`${hs(t.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>
          ${Ga(t.blank)}${Ms(t.blank,{pixels:innerWidth<1e3?innerWidth-24:560})}
        </div>
        <div>
          ${Uu(t.blank)} ${av(t.blank.bend_lines)}
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
    ${Gn(t)?i`<section>
            <h2>Order</h2>
            ${fr(t,n)}
          </section>`:d}
    <section>
      <h2>Fetch</h2>
      ${_s(t.tools,t.steps.length,t.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${t.order&&!Gn(t)?i`<p data-test="order-words">${t.order.words}</p>`:d}
      ${Va(t)}
      <div class="step-drawings">${t.steps.map(s=>rv(s,t.part.thickness_mm))}</div>
    </section>
    ${us(t.checks)} ${Qe(t.checks)}`}function av(t){let e=t.filter(n=>n.opinions?.length);return e.length===0?
d:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${e.length===1?`bend ${e[0].bend}`:`${e.length} bends`}
    </summary>
    ${e.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${g(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function rv(t,e){if(!t.drawing)return d;let n=w(t.gauge_x_mm,{digits:2}),s=Ea(t,{set_angle_deg:t.
set_angle_deg,firstHit:t.first_hit??null}),o=g(S(s)),a={close:!1,opening:t.v_opening_mm??8*e,gauge:n.text,angle:s,
near:Dn(t)?.near??null};return i`<figure class="step-drawing" data-step=${t.number}>
    <figcaption>
      <b>${t.number}. ${fe(t)}</b> ${wl(t)} ${ms(t)}
      <small data-test="origins">${bo(t.origin)}</small>
      ${t.motion?i`<span class="near-words ${t.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${ys(t)}</span
            >`:d}
    </figcaption>
    <div class="poses">
      ${pe(t.drawing,{...a,pose:"before",words:`Step ${t.number} before the bend: the sheet on the die, gauge \
at ${g(n)}.`})}
      ${iv(t,a)}
      ${pe(t.drawing,{...a,pose:"after",words:`Step ${t.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function iv(t,e){let n=Dn(t);return n?pe(t.drawing,{...e,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${t.number}. ${ys(t)}`}):d}var bm=$(()=>{_();an();mo();L();Ln();fo();gr();Bn();Ca();Le();en()});function wm({plan:t,error:e,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${t&&o?"stale":""} ${a===d?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${t?.section?Qt(t,r?{pixels:innerWidth-56,tallest:215}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
d}
    ${a===d?i`<p class="picture-words" role="status" data-test="picture-words">
            ${cv(t,e,n,s)}
          </p>`:r?a:d}
  </div>`}function lv(t){let[e]=Object.entries(t.errors);return e?Qi(mr(e[0]),e[1]):t.message}function cv(t,e,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,r])=>r).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(e instanceof F)return"The shop's server does not answer. What you type stays on this device.";if(e instanceof
M)return`Not right yet. ${lv(e)}`;if(e)return String(e);if(!t)return n?"Working it out…":"";let o=t.blank.outline?
`Blank ${w(t.blank.length_mm,{digits:2}).text} × ${g(w(t.blank.width_mm,{digits:2}))}`:`Blank ${g(w(t.blank.length_mm,
{digits:2}))}`;return i`${o} ${t.worst==="ok"?d:k(t.worst)}`}var ym=$(()=>{_();an();G();L();U();Gl();oe()});function hv({seconds:t,deadline_s:e,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
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
        <dd data-test="looking-best">${s?i`<b>${pv(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function pv(t){return uv.filter(([n])=>t[n]).map(([n,s,o])=>`${t[n]} ${t[n]===1?s:o}`).join(", ")||
"no turning"}function vm({plan:t,progress:e,stopped:n},{cancel:s,again:o,back:a}){return e?hv(e,s):n?mv({again:o,
back:t?a:null}):d}function mv({again:t,back:e}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
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
  </section>`}var dv,_m,uv,fv,gv,km,xm=$(()=>{_();dv=.6,_m=({seconds:t})=>t>=dv;uv=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];fv="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",gv="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",km=t=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${t?gv:fv}
  </div>`});var Tm={};et(Tm,{show:()=>$v});async function $v(t){let e=Zs(t.query.get("from")??"").slice(0,7),n=e?"cards.re\
vise":"cards.create";t.title(e?`Edit ${W(e)}`:"New part"),t.render(Tt(e?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([it("metals",t.signal),it("dies",t.signal),
it("punches",t.signal)]),r=await bv(e,s,t.signal);!e&&t.query.get("shape")==="box"&&(r.form=cr(r.form,!0));let l={
...r,plan:null,planned:null,progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,
kept:!0},c=Te(async(D,at)=>(await kc("/plan",Ts(D),{signal:at,tell:h})).plan,({question:D,answer:at,error:re=null})=>{
at&&Object.assign(l,{plan:at,planned:D}),Object.assign(l,{error:re,busy:!1,progress:null,summary:l.summary&&re!==
null}),ct()},t.signal,350);function h(D){_m(D)&&(l.progress=D,ct())}function u(D=!1){let at=Pl(l.form);if(!D&&
at===l.key&&!l.error)return ct();Object.assign(l,{key:at,busy:dr(l.form).length===0,progress:null,stopped:!1}),
l.busy?c.ask(l.form,{now:D}):(c.stop(),l.error=null),ct()}let p={cancel(){c.stop(),Object.assign(l,{busy:!1,progress:null,
stopped:!0,error:null}),ct()},again:()=>u(!0),back(){if(!l.planned)return;let D=l.form;Object.assign(l,{form:l.
planned,key:Pl(l.planned),stopped:!1}),l.kept=Sl(e,{form:l.form,base:l.base,newCode:l.newCode}),ct(),Z("The pa\
rt of this plan is in the boxes again.",{label:"Put mine back",act:()=>m(D)})}};function m(D,{focus:at,undo:re}={}){
let $e=l.form;l.form=D,l.kept=Sl(e,{form:D,base:l.base,newCode:l.newCode}),u(),at&&requestAnimationFrame(()=>$o(
at)),re&&Z(re,{label:"Put it back",act:()=>m($e)})}function f(D){m({...l.form,order:D},{undo:D?`Order ${D.join(
", ")} is yours now.`:"The planner chooses the order."})}function b(D){history.replaceState(history.state,"",e?
`/part?from=${e}`:"/part"),f(hr(D))}async function y(D){let[at]=dr(l.form);if(at){l.summary=!0,ct(),$o(at[0]);
return}Object.assign(l,{saving:!0,clash:null,taken:""}),ct();try{let Vt=await D();if("saved"in Vt)return T(Vt.
saved);"stale"in Vt?l.clash=Vt.stale:l.taken=Vt.taken}catch(Vt){l.error=Vt,l.summary=!0}l.saving=!1,ct();let re=l.
error instanceof M?l.error.errors:{},$e=Ul(l.form).find(Vt=>Object.keys(re).some(gc=>gc===Vt||gc.startsWith(`${Vt}\
.`)));$e&&$o($e)}function T(D){Tl(e);let at=D.revision===l.base?.revision;Z(at?"Nothing was changed, so nothin\
g was saved.":`Card ${W(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),ft(`/c/${D.code}`)}let E=()=>ht(
n)&&y(()=>l.base?Rp(l.form,l.base):Rl(l.form,l.newCode)),C=()=>(l.newCode=bi(),y(()=>Rl(l.form,l.newCode)));function v(){
Tl(e);let D=l.form;Object.assign(l,{restored:!1,plan:null,planned:null,clash:null,...Sm(l.card,s)}),u(!0),Z(e?
"The card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>m(D)})}function N(D){let at=l.form;
Object.assign(l,{clash:null,base:Vl(D)}),m(xo(D.part,D.note)),Z("What is saved is in the boxes now.",{label:"P\
ut mine back",act:()=>m(at)})}async function X(D){try{await xc(`/blank.${D}`,Ts(l.form),`${l.form.title.trim()||
"blank"}.${D}`)}catch(at){Z(at instanceof Error?at.message:String(at))}}function ct(){let D=l.error instanceof
M?l.error.errors:{},at=dr(l.form),re=vm(l,p),$e=!l.busy&&!l.stopped&&!at.length&&!l.error;t.render(i`<h1>
          ${e?i`${I(n,"Edit","Plan")} ${l.card?.title||"card"}
                  <small class="code">${W(e)}</small>`:I(n,"New part","Plan a part")}
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
        ${l.clash?zp(l.clash,l.form,{saveMine:()=>{l.base=Vl(l.clash),E()},takeTheirs:()=>N(l.clash),saveAsNew:C}):
d}
        ${l.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${l.taken}">card ${W(l.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${C}>
                  Save this as another card
                </button>
              </div>`:d}
        ${l.summary?Fh(D,mr,Ul(l.form)):d}
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
            ${wm(l,{open:at,stale:!$e,waiting:re})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${hm}
              @submit=${Vt=>{Vt.preventDefault(),E()}}>
              ${dm(l.form,{metals:s,crib:{dies:o,punches:a},plan:$e?l.plan:null,editing:!!e,errors:D,change:m})}
              ${I(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${l.saving}>
                    ${l.saving?"Saving…":e?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?d:re}
            <div class="part-plan ${$e||!l.plan?"":"stale"}" data-test="plan">
              ${l.plan&&!$e&&!l.busy?i`<p class="stale-note">
                      ${l.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:d}
              ${l.plan?$m(l.plan,{save:X,order:fm(f)}):km(!!l.form.box)}
            </div>
          </div>
        </div>`),l.busy||t.ready()}u(!0);let No=t.query.get("order");No&&b(No)}function Sm(t,e){return t?{form:xo(
t.part,t.note),base:Vl(t)}:{form:Bl(e[0]?.code??""),base:null}}async function bv(t,e,n){let s=dp(t),o=null;try{
t&&(o=await we(t,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.newCode,card:o,restored:!0}:
{...Sm(o,e),newCode:bi(),card:o,restored:!1}}var Vl,Mm=$(()=>{_();G();kt();dt();pt();uo();ae();hp();on();Fp();
Et();Pt();dt();lt();qp();Gl();gr();bm();ym();xm();Bt();oe();Vl=t=>({code:t.code,etag:t.etag,revision:t.revision,
revision_id:t.revision_id})});async function Am(t,e){if(!navigator.mediaDevices?.getUserMedia)throw new Vn(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(wv)}catch(o){throw new Vn(yv[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return t.aborted&&s(),t.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",e),n}function Om(t){return!!t.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function Em(t,e){await t.
getVideoTracks()[0].applyConstraints({advanced:[{torch:e}]})}var Vn,wv,yv,Lm=$(()=>{Vn=class extends Error{constructor(e){
super(e),this.fault=e}},wv={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
yv={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function Bm(){return $r??=vv(),$r.catch(()=>$r=void 0),$r}async function vv(){let t=await kv(),e=t??await Nm(),
n={own:!!t,async read(s){try{return await e.detect(s)}catch(o){if(e!==t)throw new Es(String(o));return e=await Nm(),
n.read(s)}}};return n}async function kv(){let t=globalThis.BarcodeDetector,e=await t?.getSupportedFormats().catch(
()=>[]);return t&&e?.includes("qr_code")?new t(Cm):null}async function Nm(){try{let{BarcodeDetector:t,prepareZXingModule:e}=await import("/vendor/barcode-detector/ponyfill.js");
return await e({overrides:{locateFile:()=>_v},fireImmediately:!0}),new t(Cm)}catch(t){throw new Es(String(t))}}
var Es,_v,Cm,$r,Pm=$(()=>{Es=class extends Error{},_v="/vendor/zxing-wasm/zxing_reader.wasm",Cm={formats:["qr_\
code"]}});function Rm(t){let e=Tv(t.trim()),n=e?xv.exec(e.pathname)?.[1]:Sv.exec(t.trim())?.[0];if(!n)return{kind:"other",
code:"",words:Av(t,e)};let{code:s,whole:o,fault:a}=ut(Mv(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${zl(W(s))} is\
 no card’s code. ${r}`}}function Tv(t){if(!URL.canParse(t))return null;let e=new URL(t);return/^https?:$/.test(
e.protocol)?e:null}function Mv(t){try{return decodeURIComponent(t)}catch{return t}}function Av(t,e){return e?`\
It leads to ${zl(e.host)}, not to a card.`:t.trim()?`It holds “${zl(t.trim())}”, no card’s code.`:"It ho\
lds nothing that can be read."}var xv,Sv,Im,zl,Wm=$(()=>{dt();xv=/^\/c\/([^/]+)\/?$/i,Sv=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
Im=40;zl=t=>t.length>Im?`${t.slice(0,Im)}…`:t});async function jm(t,e,n,s){for(;!s.aborted;){if(t.readyState>=t.HAVE_CURRENT_DATA){let o=await e.read(t);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,Ov))}}function Hm(t,e,n){let o=t.filter(l=>Fm(l,e,e)).map(l=>({...Rm(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if(Dm(a))return a[0];let r=a.
filter(l=>Fm(l.mark,e,n));return r.length>0&&Dm(r)?r[0]:"several"}function Fm({boundingBox:t},e,n){let s=e.getBoundingClientRect(),
o=Math.max(s.width/e.videoWidth,s.height/e.videoHeight),a=s.x+s.width/2+(t.x+t.width/2-e.videoWidth/2)*o,r=s.y+
s.height/2+(t.y+t.height/2-e.videoHeight/2)*o,{left:l,right:c,top:h,bottom:u}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=h&&r<=u}var Ov,Dm,Um=$(()=>{Wm();Ov=60;Dm=t=>t.every(e=>e.code===t[0].code)});function Gm(t,e){let{title:n,words:s,again:o}=Ev[t];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${t}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${e}>Try again</button>`:d}
  </section>`}var ql,Ev,Vm=$(()=>{_();ql=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,Ev={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${ql}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${ql}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${ql}`,again:!0}}});var qm={};et(qm,{show:()=>Bv});async function Bv(t){t.title("Scan a label");let e={fault:null,stream:null,lamp:null,
says:zm},n=ga(),s=await Be().catch(()=>[]),o=new AbortController,a=()=>t.render(Wv(e,{again:h,lamp:u},()=>$a(n,
s,a,"Seven characters, capitals or not."))),r=p=>{Object.assign(e,p),a()},l=()=>{o.abort(),Object.assign(e,{stream:null,
lamp:null})},c=p=>{l(),p instanceof Vn?r({fault:p.fault}):p instanceof Es?r({fault:"no-decoder"}):t.render(Ye(
p)),t.ready()};async function h(){l();let{signal:p}=o=new AbortController;r({fault:null,says:zm});try{let[m,f]=await Promise.
all([Am(p,()=>c(new Vn("busy"))),Bm()]);if(p.aborted)return;r({stream:m,lamp:Om(m)?!1:null,says:Lv});let b=document.
querySelector(".scan-view video"),y=document.querySelector(".scan-frame");b.play().catch(()=>{}),t.ready();let T=Pv(
E=>r({says:E}),p);await jm(b,f,E=>T(Hm(E,b,y)),p)}catch(m){p.aborted||c(m)}}async function u(){if(!e.stream)return;
let p=!e.lamp;await Em(e.stream,p).then(()=>r({lamp:p}),()=>r({lamp:null}))}t.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():h(),{signal:t.signal}),h()}function Pv(t,e){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>Cv&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?t(Nv):a.kind==="card"?await Rv(a.code,t,e):t(Iv(a)),s=performance.
now())}}function Iv({kind:t,words:e}){return{kind:"wrong",title:t==="slip"?"Not a right code":"Not a card’s la\
bel",words:`${e} Still looking.`}}async function Rv(t,e,n){let s=W(t);e({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await Ud(t,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?ft(`/c/${t}`,{replace:!0}):e(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is a right one, but this shop has no such card: it is another shop’s la\
bel. Still looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server d\
oes not answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wron\
g",title:`${s} could not be opened`,words:o}))}function Wv({fault:t,stream:e,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${t??
s.kind}>
    <h1>Scan a label</h1>
    ${t?Gm(t,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${e} aria-label="What the camera sees"></video>
            ${Dv}
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
  </div>`}var zm,Lv,Nv,Cv,Dv,Km=$(()=>{_();Lm();kt();dt();Pm();Um();Pt();Ct();Ni();Vm();Bt();zm={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},Lv={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},Nv={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},Cv=2500;Dv=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function Ym(t,e,n){Zm(t,e,n),$u(t),gt?.link.move({code:e,step:n},{whatever:!0})}function br(){gt?.end.abort(),
gt=null,wr(),To()}function Jm(t,e){!gt||gt.at.code!==t||gt.at.step===e||(gt.at.step=e,wr(),gt.link.move({code:t,
step:e}),To())}function Xm(t){gt&&(gt.at.step=t,gt.link.move({code:gt.at.code,step:t},{whatever:!0}))}function yr(t,e){
document.addEventListener("bench",()=>t(Mo()),{signal:e})}function Zm(t,e,n,s=null){gt?.end.abort();let o=new AbortController,
a={name:t,code:e,step:n,answers:null,late:!1,refused:""},r=Wa(t,s,{keepMs:Fv,heard:l=>{if(l.code!==a.code)return br();
a.step=l.step,wr(),To()},changed:({gone:l,answers:c,late:h,refused:u})=>{if(l)return br();Object.assign(a,{answers:c,
late:h,refused:u}),To()}},o.signal);gt={at:a,link:r,end:o},wr(),To()}function wr(){try{gt?sessionStorage.setItem(
Kl,JSON.stringify({name:gt.at.name,code:gt.at.code,step:gt.at.step})):sessionStorage.removeItem(Kl)}catch{}}function _r(){
if(!gt)try{let{name:t,code:e,step:n}=JSON.parse(sessionStorage.getItem(Kl)??"{}");t&&e&&Zm(t,e,n)}catch{}}var Kl,
Fv,gt,Mo,To,vr=$(()=>{cl();tn();Kl="flangebook.on-bench",Fv=5e3,gt=null,Mo=()=>gt?{...gt.at}:null;To=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Mt(t){let{fault:e}=ut(t);return i`<div class="state" data-test="bad-code">
    <h1>${W(t)} is not a card</h1>
    ${e||"A card code has seven characters, digits and letters without I, L, O and U."} ${Yl}
  </div>`}function At(t,e){if(e instanceof F)return i`<div class="state" data-test="not-kept">
      <h1>${W(t)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${Yl}
    </div>`;if(e instanceof M&&e.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${W(t)}</h1>
      The code is a right one, but this shop has no card of that number. Look at the label again. ${Yl}
    </div>`;throw e}var Yl,Ne=$(()=>{_();G();dt();Yl=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function tf(t,{busy:e,fault:n,take:s,settings:o}){return t?.differs?i`<details class="freshness panel" data-test="fresh">
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
                <td>${Qm(a,"saved")}</td>
                <td>${Qm(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&ht("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
d}
    <p class="wrong" role="alert">${n}</p>
    ${I("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${e} @click=${s}>
        ${e?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:d}function Qm(t,e){let n=e==="saved"?t.saved_value:t.fresh_value;return t.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(t.field)&&typeof n=="number"?g(_e(t.field??"",n)):t[e]}var ef=$(()=>{_();Et();L();lt()});function Ao(t){return t.refused?t.missing?"The shop was put back and does not know its card":`Refused: ${t.refused}`:
t.parked?"Saved here. The card was changed meanwhile: to settle":t.late?`Saved here, not yet in the shop. ${t.
late}`:"Saved here, not yet in the shop. Waiting to be sent"}function nf(t){let e=t.here??[],n=t.proposals??[];
if(!e.length&&!n.length)return d;let s=e.filter(o=>o.refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-settle" data-test="to-settle">
            <p>${k("caution","To settle")} This card was changed in two places at once. Both are kept.</p>
            ${I("cards.revise",i`<a class="button next" href="/c/${t.code}/settle" data-test="settle"
                >Settle ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner settles which holds.</p>`)}
          </div>`:d}
    ${e.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${jv(e.length,n.length>0)}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:d}
          </p>`:d}
  </section>`}function jv(t,e){let n=t===1?"One change of this card waits":`${t} changes of this card wait`;return e?
`${n} until the other one is settled.`:`${n} and ${t===1?"goes out by itself":"go out by themselves"}.`}function kr(t){
return t==="shop"?"Saved in the shop.":t==="here"?"Saved here, not yet in the shop. It goes out by itself.":t===
"settle"?`The card was changed meanwhile. Both are kept: ${ht("cards.revise")?"settle which holds.":"the owner\
 settles which holds."}`:"Nothing was changed."}var Ls=$(()=>{_();Et();U();lt()});async function xr(t,e){try{Ns=(await In(t)).map(({name:n})=>n),t.aborted||e()}catch{}}function Sr(t,e,{draw:n,
start:s}){let o=Mo();if(o?.code===t)return Hv(o,e);if(!Ns.length)return d;let a=[sf,gu()].find(r=>Ns.includes(
r))??Ns[0];return i`<section class="show-on-bench" aria-label="Bench screen" data-test="show-on-bench">
    ${Ns.length>1?q({name:"bench",label:"Bench",value:a,options:Ns.map(r=>[r,r]),change:r=>{sf=r,n()}}):d}
    <button
      type="button"
      class="button"
      data-test="put-on-bench"
      @click=${()=>{Ym(a,t,e),n(),s?.()}}>
      Show on ${Rn(a)}
    </button>
  </section>`}function Hv(t,e){let n=Rn(t.name);return i`<section
    class="show-on-bench on"
    aria-label="Bench screen"
    data-test="on-bench"
    data-bench-step=${t.step}>
    <p role="status">${Uv(t,n)}</p>
    ${t.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>Xm(e)}>
            Show step ${e} there
          </button>`:d}
    <button type="button" class="button" data-test="off-bench" @click=${br}>Stop</button>
  </section>`}function Uv({answers:t,late:e,refused:n},s){return t===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:e?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var Ns,sf,Jl=$(()=>{_();tn();vr();J();Ns=[],sf=""});function Tr(t){let{drawing:e}=t,n=Dn(t),s=Ua(t),o=Gv(e,t.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${Xl("before","before",of(e.before),e,o)}
    ${n?Xl("during",s?qi(s).join(" "):"half way",n.shown,e,o,s):d}
    ${Xl("after","after",of(e.after),e,o)}
  </div>`}function Gv(t,e,n){let[s,o,a,r]=Xt([t.before.sheet,t.after.sheet]),l=e??(a-s)/6,[c,h]=n?En(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,t.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,h-l),high:Math.max(r+.3*l,2*l,h+l)}}function Xl(t,e,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${t}>
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
      ${c?Vv(c,a-o):d}
    </svg>
    <figcaption data-test="small-${t}">${e}</figcaption>
  </figure>`}function Vv(t,e){if(!Aa(t,e))return x`<path class="ring" d=${ao([t.on_sheet,t.on_tool])}/>`;let[n,
s]=En(t);return x`<circle class="ring" cx=${n} cy=${-s} r=${e*.05}/>`}var of,Zl=$(()=>{_();Le();Ki();qe();of=({
sheet:t,ram:e,holder:n,punch:s,gauge:o})=>({sheet:St(t),tools:[e,n,s].map(St).filter(Boolean),down:0,gauge:St(
o),back:0})});function Cs(t,{waiting:e,step:n}={}){return i`<li class="row trial" data-test=${e?"waiting-trial":"trial"} data-id=${t.
id}>
    <div>
      <span class="lead">${rn(t)}</span>
      <span class="code">Step ${t.step}</span>
      <span class="more">
        ${e?i`<b class="waits">${Ao(e)}</b> · `:d}
        ${[is(t),ve(t),zv(t),qv(t.correction,n)].filter(Boolean).join(" · ")}
        ${t.note?i`<span class="trial-note">${t.note}</span>`:d}
        ${e?.refused?i`<a href="/settings">Decide</a>`:d}
      </span>
    </div>
  </li>`}function rn(t){let e=[t.left_deg,t.middle_deg,t.right_deg],s=e.some(o=>o!=null)?e.map(o=>g(S(o??null))).
join(" / "):g(S(t.measured_deg));return t.flange_mm?`${s}, flange ${Kv(t.flange_mm)}`:s}var zv,qv,Kv,Bs=$(()=>{
_();kn();L();Ls();Ut();zv=t=>t.set_angle_deg?`set at ${g(S(t.set_angle_deg))}`:"",qv=(t,e)=>t?.set_angle_deg&&
e&&ce(e,t)?`new setting ${g(S(t.set_angle_deg))}`:"",Kv=t=>typeof t=="string"?t:g(w(t,{digits:2}))});var rf={};et(rf,{show:()=>Yv});async function Yv(t){let{code:e}=t.params;if(!ut(e).whole)return af(t,Mt(e));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{t.title(n.title||W(e)),t.render(Jv(n,s,a,o))},a=async()=>{
Object.assign(s,{busy:!0,fault:""}),o();try{let l=P().name?{by:P().name}:{};n=await vn(await ia(n,{replan:!0,reason:"\
Planned afresh with today’s tools",id:Wt(),...l})),s.fresh=null,j()}catch(l){s.fault=l instanceof M&&l.status===
412?"The card was changed meanwhile. Open it again first.":l instanceof Error?l.message:String(l)}s.busy=!1,o()},
r=async l=>{n=l,s.waiting=(await dn(e).catch(()=>[])).filter(c=>c.kind==="trial"),s.metal=ss((await He())?.metals,
n.part.metal),o(),t.ready()};$t(()=>n&&o(),t.signal),yr(()=>n&&o(),t.signal),document.addEventListener("sync",
async()=>n&&r(await no(e).catch(()=>{})??n),{signal:t.signal});try{await yt(e,r,t.signal)}catch(l){t.signal.aborted||
af(t,At(e,l));return}_r(),xr(t.signal,o),s.fresh=await A("GET",`/cards/${e}/fresh`,{signal:t.signal}).then(({body:l})=>l,
()=>null),o()}function af(t,e){t.title("No such card"),t.render(e),t.ready()}function Jv(t,e,n,s){let{plan:o}=t,
a=o.checks.filter(c=>c.level!=="ok"),r=a.filter(c=>c.level==="stop"),l=a.filter(c=>c.level!=="stop"&&!c.code.startsWith(
"general-"));return i`<article class="card" data-test="card" data-revision=${t.revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${W(t.code)}</p>
        <h1 data-test="card-title">${t.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${Zv(t,e.metal)}</p>
        ${t.note?i`<p class="card-note" data-test="card-note">${t.note}</p>`:d}
        ${t.archived?i`<p class="card-note"><b>Put away.</b> This card is not in use any more.</p>`:d}
      </header>
      ${nf(t)}
      ${r.length?i`<section class="card-stops" aria-label="Stop">${_t(r)}</section>`:d}
      ${tf(e.fresh,{...e,take:n,settings:t.settings.length})}
      ${Xv(t,r.length>0)}
      ${o.steps.length?Sr(t.code,1,{draw:s,start:()=>ft(`/c/${t.code}/step/1`)}):d}
      <section class="panel card-picture" aria-label="What it becomes">
        ${Qt(o,{tallest:innerHeight*.34})}
      </section>
      ${sk(t)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${_s(o.tools,o.steps.length,o.steps)}${Ga(o.blank)}${Rt(o)?Ms(o.blank,{tallest:420}):d}
      </section>
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${Gn(o)?d:Qv(o.order)}${ek(t)}
      </section>
      ${Gn(o)?i`<section class="panel card-order">
              <h2>Order</h2>
              ${fr(o,gm(t.code))}
            </section>`:d}
      ${l.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${_t(l)}
            </section>`:d}
      ${Qe(o.checks)}
      <section class="panel card-trials">
        <h2>What came out</h2>
        ${nk(t,e.waiting)}
      </section>
    </div>
  </article>`}function Xv({code:t,plan:e},n){return e.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${t}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${e.steps.length===1?"1 step":`${e.steps.length} steps`}</small>
    </a>
  </div>`:d}function Zv({part:t,plan:e},n){let s=e.thickness_gauge?` (${e.thickness_gauge})`:"",o=t.bends.length===
1?"1 bend":`${t.bends.length} bends`,a=Rt(e)?`box ${Wn(e.folded)}`:`${H(t.bend_length_mm)} ${B()} long`;return`${n}\
, ${H(t.thickness_mm)} ${B()}${s}, ${a}, ${o}`}function tk(t,e){let{gauge_x_mm:n}=ee(t,e);return n===null?"no \
gauge":`gauge at ${g(w(n))}`}function ek(t){return i`<ol class="rows" data-test="step-list">
    ${t.plan.steps.map(e=>i`<li class="row">
          <a href="/c/${t.code}/step/${e.number}">
            <span class="lead">${e.number}. ${fe(e)} ${e.direction}</span>
            <span class="code">${g(S(e.included_angle_deg))}</span>
            <span class="more">${tk(t,e)}</span>
            ${e.turn_over||e.turn_end||e.turn_quarter?i`<span class="turn" data-test="turn">${$s(e)}</span>`:d}
            ${me(e,{short:!0})}
            ${e.drawing?Tr(e):d}
          </a>
        </li>`)}
  </ol>`}function nk(t,e){let n=[...t.trials].reverse().slice(0,3);return!n.length&&!e.length?i`<p data-test="no-trials">
      Nothing measured yet.${I("trials.keep"," After a bend, type what came out.")}
    </p>`:i`<ul class="rows trials" data-test="trials">
    ${[...e].reverse().map(s=>Cs(s.body,{waiting:s}))}
    ${n.map(s=>Cs(s,{step:t.plan.steps[s.step-1]}))}
  </ul>`}function sk({code:t}){return i`<nav class="card-links" aria-label="This card">
    ${st(`/c/${t}/note`,i`<a class="button" href="/c/${t}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${t}/history" data-test="history">History</a>
    <a class="button" href="/c/${t}/label" data-test="label">Label</a>
    <a class="button" href="/c/${t}/print" data-test="print">Print</a>
    ${I("cards.revise",i`<a class="button" href="/part?from=${t}" data-test="edit">Edit</a>`)}
  </nav>`}var Qv,lf=$(()=>{_();G();kt();dt();pt();Ve();Nt();vr();Pt();nt();wt();L();Ne();U();fo();ef();Ls();bs();
lt();gr();en();Jl();Zl();Le();Bs();gs();an();ne();Qv=t=>t?.words?i`<p class="order" data-test="order">${t.words}</p>`:
d});var uf={};et(uf,{show:()=>ok});async function ok(t){let{code:e,step:n}=t.params;if(!ut(e).whole)return cf(t,Mt(
e));let s=_o(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return t.render(ik(o,n));t.title(`${o.title||e},\
 step ${r.number}`),t.render(ck(o,r,()=>Xa(o,r,s,a,t.signal),Sr(o.code,r.number,{draw:a})))};$t(()=>o&&a(),t.signal),
yr(()=>o&&ak(o,Number(n),a),t.signal),document.addEventListener("sync",()=>o&&rk(o),{signal:t.signal}),addEventListener(
"keydown",r=>o&&lk(r,o,Number(n)),{signal:t.signal}),_r();try{await yt(e,r=>{!o&&r.plan.steps[Number(n)-1]&&Jm(
e,Number(n)),o=r,a(),t.ready()},t.signal)}catch(r){t.signal.aborted||cf(t,At(e,r));return}xr(t.signal,()=>o&&a())}
function ak(t,e,n){let s=Mo(),o=s?.code===t.code&&s?.step!==e&&t.plan.steps[(s?.step??0)-1];o?ft(`/c/${t.code}\
/step/${o.number}`,{replace:!0}):n()}async function rk(t){let e=await no(t.code).catch(()=>{});e&&e.revision!==
t.revision&&Z(`This card is at revision ${e.revision} now.`,{label:"Show it",act:()=>ke()})}function cf(t,e){t.
title("No such card"),t.render(e),t.ready()}function lk(t,e,n){t.altKey||t.ctrlKey||t.metaKey||t.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.
test(t.target.tagName)||(t.key==="ArrowRight"&&ft(df(e,n).href),t.key==="ArrowLeft"&&ft(hf(e,n).href))}function df(t,e){
let n=t.plan.steps.at(-1);return e<t.plan.steps.length?{href:`/c/${t.code}/step/${e+1}`,label:"Next",more:`ste\
p ${e+1}`}:n.set_angle_deg===null||!ye(`/c/${t.code}/trial/${e}`)?{href:`/c/${t.code}`,label:"Done: the card",
more:""}:{href:`/c/${t.code}/trial/${e}`,label:"What came out?",more:""}}function ck(t,e,n,s){let{stops:o,watch:a}=Ja(
t,e),r=e.number===t.plan.steps.length,l=df(t,e.number);return i`<article class="step" data-test="step">
    ${za(t,e)} ${o.length?i`<div class="step-stop">${_t(o)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${ja(e,t.part.flats_mm.length)}${me(e)}</div>
      <section class="step-set" aria-label="What to set">${Za(t,e)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-bench">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?_t(a):d}
      </section>
      <section class="step-with" aria-label="Tools">
        ${Yu(t.plan,e)} ${Fa(t.plan,e)}
        ${bo(e.origin)?i`<p class="hint origins" data-test="origins">${bo(e.origin)}</p>`:d}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${hf(t,e.number).href} data-test="back">Back</a>
      ${r||e.set_angle_deg===null?d:st(`/c/${t.code}/trial/${e.number}`,i`<a class="button" href="/c/${t.code}/trial/${e.
number}" data-test="came-out"
                >What came out?</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:d}</a
      >
    </nav>
  </article>`}var ik,hf,pf=$(()=>{_();kt();dt();ae();vr();Pt();os();nt();Ve();Ne();dl();U();bs();lt();qa();Ca();
Jl();nn();Le();Qa();ik=(t,e)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${e}</strong>This card has ${t.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${t.code}">Open the card</a></span>
  </div>`;hf=(t,e)=>({href:e>1?`/c/${t.code}/step/${e-1}`:`/c/${t.code}`,label:"Back"})});function Mr(t,e,n,s){let o=[...t].sort((h,u)=>h[e]-u[e]);if(o.length<2||n<o[0][e]-.002||n>o[o.length-1][e]+.002)
return null;let a=o.findIndex(h=>h[e]>n),r=a<0?o.length-1:Math.max(a,1),[l,c]=[o[r-1],o[r]];return l[s]+(n-l[e])/
(c[e]-l[e])*(c[s]-l[s])}var Ql=$(()=>{});function mf(t,e,n,s){let o=t.gauged_flange;if(!o)return null;let a=Mr(o.rows,"measured_deg",e,"flange_mm");if(a===
null)return null;let r=n-a;if(Math.abs(r)>o.most_error_mm)return{gauge_x_mm:null,error_mm:r,words:"That flange\
 is further off than a gauge is. No new X before it is checked.",to_check:dk};let l=Math.abs(r)<=tc?s:s-r,c=l>=
o.x_low_mm&&l<=o.x_high_mm;return{gauge_x_mm:c?l:null,error_mm:r,words:c?"":"The gauge does not reach far enou\
gh to mend the flange.",to_check:[]}}var tc,dk,Ps,Ar=$(()=>{Ql();tc=.05;dk=["Measure again, to the face that t\
he card's dimension goes to.","Check which flange was measured.","Read the gauge: did it stand at the X of the\
 card, and the sheet against it?"],Ps=({correction:t,gauge:e})=>t?.flange??e??null});function Oo(t){let e=t.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(e))return null;
let n=Number(e);return n>0&&n<180?n:null}function Eo(t){let e={},n={},s=t.places==="one"?[["measured_deg",t.one]]:
[["left_deg",t.left],["middle_deg",t.middle],["right_deg",t.right]];for(let[o,a]of s){if(a.trim()==="")continue;
let r=Oo(a);r===null?n[o]=[t.places==="one"?ff:hk]:e[o]=r}return!Object.keys(e).length&&!Object.keys(n).length&&
(n[s[0][0]]=[ff]),{angles:e,wrong:n}}function gf(t,e,n){let s=fk(e),[o,a]=["set_angle_deg","punch_depth_mm"].map(
c=>Mr(t.corrections??[],"measured_deg",s,c));if(o===null||a===null||n.set_angle_deg===null||uk(t,s))return null;
let r=t,l={row:s,ends:s!==Or(e),set_angle_deg:o+(n.set_angle_deg-r.set_angle_deg),punch_depth_mm:n.punch_depth_mm===
null?null:a+(n.punch_depth_mm-r.punch_depth_mm)};return ce(t,l)?l:null}function uk({first_hit:t,included_angle_deg:e},n){
return!!(t&&n>Math.max(e+pk,t.comes_out_deg_high))}function Or(t){let e=Object.values(t);return e.reduce((n,s)=>n+
s,0)/e.length}function fk(t){let e=(t.left_deg+t.right_deg)/2;return t.middle_deg-e>=mk?e:Or(t)}function Is(t){
return t?.correction?.set_angle_deg?t.correction:t?.table??null}var ff,hk,pk,mk,Rs=$(()=>{kn();Ql();ff="Type t\
he angle between the flats in degrees, such as 90.5. Square is 90.",hk="Degrees, such as 90.5";pk=5;mk=.3});function bf(t,e,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(h,u,p,m={})=>O({name:u,label:p,value:a[h],wrong:r[u],
change:f=>Object.assign(a,{[h]:f}),...m}),c=n.used??ee(t,e);return i`<form
    class="trial-form"
    novalidate
    data-test="trial-form"
    @submit=${h=>{h.preventDefault(),s()}}>
    <div class="trial-main">
      <h2>What came out? <small>Wanted ${g(S(e.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:d}
      <div class="trial-angles ${a.places}">
        ${a.places==="one"?l("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[l("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),l("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),l("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${K({name:"places",label:"Measured at",value:a.places,options:[["one","One place"],["three","Left, middl\
e, right"]],change:h=>{Object.assign(a,{places:h}),o()}})}
      <div class="trial-more">
        ${n.byDepth?l("set","punch_depth_mm","Depth that was set",{unit:B(),placeholder:c.punch_depth_mm===null?
"":w(c.punch_depth_mm,{digits:2}).text,hint:$f}):l("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:c.set_angle_deg===null?"":S(c.set_angle_deg).text,hint:$f})}
        ${l("flange","flange_mm","Flange measured",{unit:B(),hint:"If you measured it."})}
        ${l("note","note","Note",{hint:"Grain, anything odd."})}
      </div>
      <details
        class="more-measured"
        data-test="more-measured"
        ?open=${["lot","thickness_mm","radius_mm"].some(h=>r[h]?.length)}>
        <summary>More measured</summary>
        <div class="trial-more">
          ${l("thickness","thickness_mm","Thickness measured",{unit:B()})}
          ${l("radius","radius_mm","Inside radius",{unit:B()})}
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
  </form>`}var $f,wf=$(()=>{_();kt();L();J();$f="Leave it if it was set as shown."});function yf(t){let e=Ps(t);return e?e.gauge_x_mm===null?gk(e):i`<div class="set-figures" data-test="new-gauge">
      ${Gt("Gauge X now",w(e.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${_f(e.error_mm)}</p>`:d}function gk({error_mm:t,words:e,said:n,to_check:s}){
return s.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${k("stop")} <b>No new gauge X.</b> ${_f(t)} No gauge is that far off.</p>
    <ol>
      ${s.map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${n?bt(n):e}</p>`}function _f(t){return t===null?"":Math.abs(t)<=tc?"Flang\
e as wanted: leave the gauge.":`Flange ${g(w(Math.abs(t),{digits:2}))} too ${t>0?"long":"short"}.`}function vf(t){
let e=t?.crown;return e?i`<div class="crown" data-test="crown">
    <p>${$k(e)}</p>
    ${e.shim?bk(e.shim):d}
  </div>`:d}function $k({middle_open_deg:t,shim:e,words:n}){return e?i`<b>The middle is ${g(S(t))} more open than the ends.</b> First crown the middle by
    ${g(w(e.middle_mm,{digits:2}))}, or shim the die:`:n}function bk({strip_mm:t,lengths_mm:e}){let n=e.map(o=>w(
o,{digits:0}).text).join(", "),s=w(e[0],{digits:0}).unit;return i`<p data-test="shim">
    ${e.length===1?"1 strip":`${e.length} strips`} of ${g(w(t,{digits:2}))}
    under the middle of the die, one on the other, ${n} ${s} long. Nothing at the ends. Then set what
    stands above, which is for the ends; bend again and measure.
  </p>`}var kf,xf=$(()=>{_();Ar();L();U();nn();kf=({thickness_mm:t})=>t?` Reckoned for the ${g(w(t,{digits:2}))}\
 that the sheet measures.`:""});function Sf(t,e,n,{again:s,keep:o}){let a=Is(n),r=e.number===t.plan.steps.length;return i`<div
    class="trial-result"
    data-test="trial-result"
    data-waits=${n.waits?"true":"false"}>
    <div class="trial-main">
      <h2>${rn(n.trial)} <small>wanted ${g(S(e.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${n.late||"the shop does not answer"}.
              It goes out by itself.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?yk(a):Vu(e,n)}
      ${a?i`<p class="basis" data-test="basis">${vk(n)}</p>`:d}
      ${n.question?wk(t,n.question):d} ${yf(n)}
      ${xk(n.correction)} ${vf(n.correction)}
      ${a?I("cards.revise",Mk(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
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
  </div>`}function vk({correction:t,table:e}){return t?`${t.what}${kk(t)}${kf(t)}`:`Worked out on this device,\
 from the card’s own table at ${g(S(e?.row??null))}. The shop works it out again when the result arrives.${e?.
ends?` ${_k}`:""}`}function xk(t){let e=t?.tilt_mm_per_m;return e==null?d:i`<p data-test="tilt">
    Left and right differ: about ${Tk(Math.abs(e))},
    ${e>0?"the right end deeper":"the left end deeper"}.
  </p>`}function Mk(t,e){return t.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${t.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${t.words}
    </p>`:i`<div class="buttons">
      <button class="button" data-test="keep" ?disabled=${t.kept==="asking"} @click=${e}>
        ${t.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${t.words}</p>`}var wk,yk,_k,kk,Sk,Tk,Tf=$(()=>{_();xf();
Rs();L();U();_l();lt();nn();Bs();wk=(t,e)=>i`<section class="panel urgent" data-test="question">
    <p>${k("unknown","Does not count")} ${e}</p>
    <p><a href="/shop/learned/${encodeURIComponent(t.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,yk=t=>i`<div class="set-figures" data-test="new-setting">
    ${Gt("Angle now",S(t.set_angle_deg),"new-angle")}
    ${t.punch_depth_mm===null?d:Gt("Depth now",w(t.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`,_k="The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it\
 first.";kk=({crown:t})=>t?.setting_for==="ends"?" This is for the ends; first mend the open middle, see below\
.":"";Sk=3048,Tk=t=>B()==="in"?`${Q(t*Sk/1e3/Jt,3)} in over ten feet`:`${Q(t,2)} mm in each metre`});async function Mf(t,e,n,s){let o=Is(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await Ge(t,{settings:[...t.settings.filter(r=>r.step!==e.number),Ok(e,o,n.trial,Ek(t,e,n))]},{reason:`\
Step ${e.number} set from a piece that came out at ${rn(n.trial)}`});Object.assign(t,a.card),Object.assign(n,{
kept:"kept",where:a.where,words:Ak(a)}),j()}catch(a){Object.assign(n,{kept:"no",words:a instanceof Error?a.message:
String(a)})}s()}}function Ak({where:t,card:e}){return t==="shop"?`Revision ${e.revision} of the card has it. S\
teps show it from now on.`:t==="settle"?"The card was changed meanwhile. Both are kept: settle on the card whi\
ch holds.":"Steps show it on this device from now on; it goes to the shop by itself."}var Ok,Ek,Af=$(()=>{Ve();
Bs();Ar();Rs();wt();Ok=(t,e,n,s)=>({step:t.number,set_angle_deg:e.set_angle_deg,punch_depth_mm:e.punch_depth_mm,
...s===null?{}:{gauge_x_mm:s},trial_id:n.id,reason:`Piece came out at ${rn(n)}`}),Ek=(t,e,n)=>Ps(n)?.gauge_x_mm??
t.settings.find(s=>s.step===e.number)?.gauge_x_mm??null});var Ef={};et(Ef,{show:()=>Nk});async function Nk(t){let{code:e,step:n}=t.params;if(!ut(e).whole)return ec(t,Mt(
e));let s={typed:{...Of},used:null,wrong:{},general:"",sending:!1,result:null,byDepth:!1},o,a=async()=>{let l=Lk.
includes((await He())?.press?.set_by);l===s.byDepth||s.typed.set||s.sending||s.result||(s.byDepth=l,o&&!t.signal.
aborted&&r())};document.addEventListener("sync",a,{signal:t.signal}),await a();let r=()=>{let l=o.plan.steps[Number(
n)-1];if(!l)return ec(t,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${e}">Open the card</a>
        </p>`);t.title(`${o.title||e}: what came out`),t.render(Ck(o,l,s,r))};de(()=>!s.result&&s.typed.one+s.
typed.left+s.typed.note?"Leave without saving what you measured?":null);try{await yt(e,l=>{s.sending||s.result||
(o=l,r(),t.ready())},t.signal)}catch(l){t.signal.aborted||ec(t,At(e,l))}}function ec(t,e){t.title("No such car\
d"),t.render(e),t.ready()}function Ck(t,e,n,s){let o=()=>Bk(t,e,n,s),a=()=>{let l=Pk(n);Object.assign(n,{typed:{
...Of,places:n.typed.places,lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),s()},r=()=>Mf(
t,e,n.result,s);return i`<article class="step trial-screen" data-test="trial-screen">
    ${za(t,e)}
    <div class="trial-body">
      ${n.result?Sf(t,e,n.result,{again:a,keep:r}):bf(t,e,n,{save:o,draw:s})}
      <aside class="trial-aside" aria-label="Which bend">
        ${Qt(t.plan,{mark:e.bend})}
      </aside>
    </div>
  </article>`}async function Bk(t,e,n,s){if(n.sending)return;let{angles:o,wrong:a}=Eo(n.typed),r=Rk(t,e,n);if(r||
(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,{wrong:a,general:""}),
Object.keys(a).length||!r)return s(),se(a);let l=Wk(t,e,o,r,n.typed);n.sending=!0,s();try{let{late:c,...h}=await ea(
{id:l.id,kind:"trial",code:t.code,body:l}),u=h.answer,p=u?.correction??null;n.result={trial:l,correction:p,table:u||
r.set_angle_deg===null?null:gf(e,o,r),gauge:u?null:Ik(e,o,r,l.flange_mm),waits:!u,late:c??"",question:u?.question_said?
bt(u.question_said):"",kept:"no",words:""},u&&j()}catch(c){n.wrong=c instanceof M?c.errors:{},n.general=c instanceof
Error?c.message:String(c)}n.sending=!1,await ns(),s(),se(n.wrong)}function Pk({result:t,used:e}){let n=Is(t),s=t&&
(Ps(t)?.gauge_x_mm??t.trial.gauge_x_mm??null);return n?{...n,gauge_x_mm:s??e?.gauge_x_mm}:null}function Ik(t,e,n,s){
let o=Xd(s);return o===null||typeof n.gauge_x_mm!="number"?null:mf(t,Or(e),o,n.gauge_x_mm)}function Rk(t,e,n){
let{set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a}=n.used??ee(t,e),r={set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a};
if(n.typed.set.trim()==="")return r;if(n.byDepth)return{set_angle_deg:null,punch_depth_mm:tt(n.typed.set),gauge_x_mm:a};
let l=Oo(n.typed.set);return l===null?null:{set_angle_deg:l,punch_depth_mm:null,gauge_x_mm:a}}function Wk(t,e,n,s,o){
let a={id:Wt(),revision:t.revision,step:e.number,bend:e.bend,...n,made_at:new Date().toISOString()};return s.set_angle_deg!==
null&&(a.set_angle_deg=s.set_angle_deg),s.punch_depth_mm!==null&&(a.punch_depth_mm=s.punch_depth_mm),typeof s.
gauge_x_mm=="number"&&(a.gauge_x_mm=s.gauge_x_mm),o.flange.trim()&&(a.flange_mm=tt(o.flange)),o.radius.trim()&&
(a.radius_mm=tt(o.radius)),o.thickness.trim()&&(a.thickness_mm=tt(o.thickness)),o.lot.trim()&&(a.lot=o.lot.trim()),
o.note.trim()&&(a.note=o.note.trim()),P().name&&(a.by=P().name),a}var Of,Lk,Lf=$(()=>{_();G();kt();dt();pt();Ar();
Rs();Nt();Pt();es();nt();wt();L();Ne();U();J();nn();wf();Tf();an();Af();Of={one:"",left:"",middle:"",right:"",
places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""},Lk=["depth","stop"]});function Cf(t,e,n,s){return t.map(o=>i`<fieldset class="settle-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${Lo(o,o.before)}</small></legend>
        ${Nf(o,"shop","In the shop",e,s)} ${Nf(o,"yours",n,e,s)}
      </fieldset>`)}function Nf(t,e,n,s,o){return i`<label class="settle-side" data-test=${e}>
    <span class="settle-whose"
      ><input
        type="radio"
        name=${t.name}
        value=${e}
        .checked=${s[t.name]===e}
        @change=${()=>o(t.name,e)} />
      ${n}</span
    >
    <span class="settle-value">${Lo(t,t[e])}</span>
  </label>`}function Lo({name:t},e){if(t==="archived")return e?"Put away":"In use";if(!t.startsWith("settings "))
return e||"nothing";if(!e)return"as planned";let n=e,s=n.punch_depth_mm===null||n.punch_depth_mm===void 0?"":`\
, depth ${g(w(n.punch_depth_mm,{digits:2}))}`;return`${g(S(n.set_angle_deg??null))}${s}`}var nc=$(()=>{_();L()});function Bf(t,e){return t.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${t.map(n=>Dk(n,e))}
    </ol>
  </section>`:d}function Dk(t,e){let n=Qn(t.changes,t.before,{...t.before,settings:t.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${t.settled_by?`Settled by revision ${t.settled_by}`:st(`/c/${e}/settle`,i`<a href="/c/${e}/settle">To settle</a>`,
"To settle")}
    </h3>
    <p class="more">${[is(t),ve(t)?`by ${ve(t)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${Lo(s,s.before)} to ${Lo(s,s.yours)}</li>`)}
    </ul>
  </li>`}var Pf=$(()=>{_();ts();lt();nc();Ut()});function If({title:t,note:e,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${t}</b>, ${g(w(n.thickness_mm,{digits:2}))},
      ${Rt(s)?Wn(s.folded):`${g(w(n.bend_length_mm))} long`}${e?i`. ${e}`:d}
    </p>
    ${Qt(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${Fk(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:d}
    ${Va(s)} ${_t(s.checks,{quiet:!0})}
  </div>`}function Fk(t,e){let n={set_angle_deg:e.set_angle_deg??null,punch_depth_mm:e.punch_depth_mm??null};if(!t||
!ce(t,n))return"had a setting beyond its tools";let s=g(w(n.punch_depth_mm,{digits:2}));return`set at ${g(S(n.
set_angle_deg))}, depth ${s}`}var Rf=$(()=>{_();gs();an();kn();L();U();en()});var Df={};et(Df,{show:()=>jk});async function jk(t){let{code:e}=t.params;if(!ut(e).whole)return Wf(t,Mt(e));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>t.render(Uk(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=p=>A("GET",`/cards/${e}/${p}`,{signal:t.signal}),[h,u]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);s.revisions=h.body.revisions,s.proposals=u.body.proposals,s.silent=
!1}catch(c){if(!(c instanceof F))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=null,o(),
!!s.open){try{let{body:h}=await A("GET",`/cards/${e}/revisions/${c}`,{signal:t.signal});s.open===c&&(s.snapshot=
h)}catch(h){s.open=0,Z(h instanceof Error?h.message:String(h))}o()}},l=async c=>{s.busy=!0,o();try{n=await Hk(
n,c),Z(`Revision ${c} is back, as revision ${n.revision}.`),s.open=0,j(),await a()}catch(h){Z(h instanceof M&&
h.status===412?"The card was changed meanwhile. Look at the history again.":String(h instanceof Error?h.message:
h))}s.busy=!1,o()};$t(()=>n&&o(),t.signal);try{await yt(e,async c=>{n=c,t.title(`${n.title||W(e)}: history`),s.
waiting=(await dn(e).catch(()=>[])).filter(h=>h.kind==="trial"),o()},t.signal),await a(),o(),t.ready()}catch(c){
t.signal.aborted||Wf(t,At(e,c))}}function Wf(t,e){t.title("No such card"),t.render(e),t.ready()}async function Hk(t,e){
let n=await we(t.code);return ia(n,{restore_revision:e,reason:`Revision ${e} brought back`,id:Wt(),...P().name?
{by:P().name}:{}})}function Uk(t,e,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>History of ${t.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${Gk(t,e,n)}
      </section>
      ${Bf(e.proposals,t.code)}
      <section class="panel">
        <h2>What came out</h2>
        ${zk(t,e)}
      </section>
    </div>
  </article>`}function Gk(t,e,n){return e.silent?i`<p data-test="silent">
      This device has revision ${t.revision}, of
      ${ot(t.updated_at)}${t.updated_by?` by ${t.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:e.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${e.revisions.map(s=>Vk(s,t,e,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function Vk(t,e,n,{look:s,bringBack:o}){let a=t.revision===
e.revision,r=n.open===t.revision;return i`<li class="row revision" data-test="revision" data-revision=${t.revision}>
    <h3>
      Revision ${t.revision}${a?", as it is now":""}
      ${t.worst==="stop"||t.worst==="caution"?k(t.worst):d}
    </h3>
    <p class="more">${[ot(t.at),ve(t)].filter(Boolean).join(", by ")}</p>
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
      ${a?d:I("cards.revise",i`<button
                class="button"
                data-test="bring-back"
                ?disabled=${n.busy}
                @click=${()=>o(t.revision)}>
                Bring this one back
              </button>`)}
    </div>
    ${r?n.snapshot?If(n.snapshot):i`<p>Fetching it…</p>`:d}
  </li>`}function zk(t,e){return!t.trials.length&&!e.waiting.length?i`<p data-test="no-trials">Nothing measured yet.</p>`:
i`<ol class="rows trials" data-test="trials">
      ${[...e.waiting].reverse().map(n=>Cs(n.body,{waiting:n}))}
      ${[...t.trials].reverse().map(n=>Cs(n,{step:t.plan.steps[n.step-1]}))}
    </ol>
    ${t.trials_total>t.trials.length?i`<p>The newest ${t.trials.length} of ${t.trials_total}.</p>`:d}`}var Ff=$(
()=>{_();G();kt();dt();ae();Nt();nt();wt();Ne();U();lt();Pf();Rf();Bs();Ut()});var Hf={};et(Hf,{show:()=>qk});async function qk(t){let{code:e}=t.params;if(!ut(e).whole)return jf(t,Mt(e));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{t.title(`${n.title||W(e)}: not\
e`),t.render(Yk(n,s,{draw:o,save:()=>Kk(n,s,o,t.signal)}))};de(()=>s.typed?"Leave without saving what you type\
d?":null);try{await yt(e,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),
o(),t.ready())},t.signal)}catch(a){t.signal.aborted||jf(t,At(e,a))}}function jf(t,e){t.title("No such card"),t.
render(e),t.ready()}async function Kk(t,e,n,s){if(e.sending)return;let[o,a]=[e.title.trim(),e.note.replace(/\r\n/g,
`
`).trim()];if(Object.assign(e,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),se(e.wrong);
e.sending=!0,n();try{let{where:r}=await Ge(t,{title:o,note:a,archived:e.archived});if(e.typed=!1,Z(kr(r)),j(),
s.aborted)return;ft(r==="settle"&&ye(`/c/${t.code}/settle`)?`/c/${t.code}/settle`:`/c/${t.code}`)}catch(r){e.wrong=
r instanceof M?r.errors:{},e.general=r instanceof Error?r.message:String(r),e.sending=!1,n(),se(e.wrong)}}function Yk(t,e,{
draw:n,save:s}){let o=a=>Object.assign(e,a,{typed:!0});return i`<form
    class="note-screen"
    novalidate
    data-test="note-screen"
    @submit=${a=>{a.preventDefault(),s()}}>
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>${I("cards.revise","Note and title","Note")}</h1>
    </header>
    ${e.general?i`<p class="wrong" role="alert" data-test="wrong">${e.general}</p>`:d}
    ${Nn({name:"note",label:"Note",value:e.note,lines:5,wrong:e.wrong.note,change:a=>o({note:a})})}
    ${I("cards.revise",[O({name:"title",label:"Title",value:e.title,wrong:e.wrong.title,change:a=>o({title:a})}),
K({name:"archived",label:"This card",value:e.archived?"away":"use",options:[["use","In use"],["away","Put away"]],
change:a=>{o({archived:a==="away"}),n()}})])}
    <p class="hint">
      This works without the shop too: it is saved here and goes out by itself.
      ${I("cards.revise","To change the part itself, use Edit: that is planned by the shop, so the shop must a\
nswer.","The owner changes the rest of the card.")}
    </p>
    <div class="buttons">
      <button class="button next wide" data-test="save" ?disabled=${e.sending}>
        ${e.sending?"Saving…":"Save"}
      </button>
    </div>
  </form>`}var Uf=$(()=>{_();kt();dt();G();Ve();ae();Pt();os();wt();Ne();lt();J();Ls()});var Vf={};et(Vf,{show:()=>Jk});async function Jk(t){let{code:e}=t.params;if(!ut(e).whole)return Gf(t,Mt(e));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{t.title(`${n.title||W(e)}: to settle`),
t.render(Xk(n,s,c))},a=async h=>{if(!h||s.sending)return;let u=[n?.etag,s.proposal?.id].join();n=h,[s.proposal]=
n.proposals;let{changes:p={},before:m={}}=s.proposal??{};s.rows=Qn(p,m,n),s.mine=!!(s.proposal&&await Wo(s.proposal.
id).catch(()=>{})),u!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),t.ready()},r=async()=>a(await Mi(e).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let h=await Ge(n,Ad(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Settled"});Z(kr(h.where)),s.sending=!1,await r(),j()}catch(h){Object.assign(
s,{sending:!1,fault:h instanceof Error?h.message:String(h)}),o()}},choose:(h,u)=>{s.chosen[h]=u,o()},all:h=>{for(let{
name:u}of s.rows)s.chosen[u]=h;o()}};document.addEventListener("sync",r,{signal:t.signal});try{await yt(e,async h=>a(
await Mi(e).catch(()=>{})??h),t.signal)}catch(h){t.signal.aborted||Gf(t,At(e,h))}}function Gf(t,e){t.title("No\
 such card"),t.render(e),t.ready()}function Xk(t,e,n){return i`<article class="settle" data-test="settle-screen">
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>${e.proposal?"Two changes met":"Nothing to settle"} <small>${t.title}</small></h1>
    </header>
    ${e.proposal?Zk(t,e,n):i`<p data-test="settled">
            Every change of this card is settled. Both sides are in its
            <a href="/c/${t.code}/history">history</a>.
          </p>`}
  </article>`}function Zk(t,{proposal:e,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:u})=>!o[u]).
length,h=s?"Yours":e.by?`By ${e.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":e.by?`${e.by} changed`:"Somebody changed"} this card
      (${is(e)}) while it was changed in the shop (revision ${t.revision},
      ${ot(t.updated_at)}${t.updated_by?`, ${t.updated_by}`:""}). Choose what holds. Both
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
            ${Cf(n,o,h,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
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
    </div>`}var zf=$(()=>{_();ts();kt();dt();Ve();ae();Nt();wt();Ne();Ls();nc();Ut()});function qf(t,e){let{plan:n}=t,s=cx(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${tx(t,e)}
    <figure class="strip ${Rt(n)?"of-box":""}">
      <figcaption>
        Blank ${Er(n.blank.length_mm)} × ${Er(n.blank.width_mm)},
        ${g(so(n.blank.mass_kg))}.
        ${Rt(n)?Qk(n):"Bend lines from the left end."}
      </figcaption>
      ${Ms(n.blank,Rt(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${ex(n)} ${nx(t,s)} ${hx(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function Qk({blank:t}){let e=({bend:a})=>{let r=t.bend_lines.find(l=>l.bend===a);return`${a} ${H(
r.at_mm)}`},n=a=>t.lines.filter(r=>a.includes(r.side)).map(e).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,bl(t),"Inside up."].filter(
Boolean).join(" ")}function tx(t,e){let{part:n,plan:s}=t;return i`<header>
    <div>
      <h2>${t.title}</h2>
      <p class="big-code" data-test="sheet-code">${t.display_code}</p>
      <p>
        <b
          >${e},
          ${Er(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:d}</b
        >, ${Rt(s)?`box ${Wn(s.folded)}`:i`bend length ${Er(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${t.revision}, ${Tn(t.updated_at)}${t.updated_by?`, ${t.updated_by}`:""}.
      </p>
      ${t.note?i`<p class="note">${t.note}</p>`:d}
    </div>
    ${s.section?Qt({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):d}
    <img
      class="qr"
      src="/api/v1/cards/${t.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function ex(t){let e=n=>{let s=$l(n,t.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:d};
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
            <td>${fl(n)}</td>
            <td>${gl(n)||"–"}</td>
            <td>${n.steps.length===t.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function nx(t,e){let n=t.part.flats_mm.length;return i`<table class="paper-steps">
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
      ${t.plan.steps.map(s=>sx(t,s,e.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function sx(t,e,n,s){let o=ee(t,e);return i`<tr data-test="sheet-step-${e.number}">
    <th scope="row">
      <span class="number">${e.number}</span> bend ${e.bend} ${e.side??""}
      ${e.direction}${e.operation&&e.operation!=="bend"?i`<br />${e.operation}`:d}
    </th>
    <td class="picture">
      ${ax(t.plan,e)}${e.drawing?Tr(e):"no drawing"}${rx(e,t.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(o.gauge_x_mm).text}</b><br />R
      <b>${w(e.gauge_r_mm).text}</b>${ix(e)}
    </td>
    <td class="figures-cell">
      ${px(e,o)}<br />
      <span class="small"
        >${ox(e)}${mx(o)?i`<br />from a first piece`:d}</span
      >
    </td>
    <td class="move">
      ${$s(e)}
      <span class="small"
        >${e.inside_face==="up"?"Top":"Bottom"} face
        up${e.gauged_end?`, ${wo(e,s)} to the gauge`:""}.</span
      >${me(e,{short:!0})}
    </td>
    <td>${lx(n)}</td>
    <td class="pen">
      <span
        >${e.included_angle_deg?g(S(e.included_angle_deg)).replace(".0°","°"):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${Rh(o.firstHit)}</span>`:d}</span
      >
    </td>
  </tr>`}function ox(t){let e=Ma(t);return e===d?d:i`<span data-test="sheet-force">allow for ${e}</span>`}function ax(t,e){
let n=Ka(t,e);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${e.punch}${e.punch_turned?" turned round":""} over ${e.die}
      </div>`:d}function rx({segments_mm:t,punch:e,die:n},s){return t?[["punch",e],["die",n]].map(([a,r])=>{let l=s.
find(h=>h.kind===a&&h.code===r)?.segments_mm??[],c=t[a]??[];return!c.length||c.length===l.length?d:i`<div class="pieces" data-test="own-pieces">
      ${a} ${c.map(H).join(" + ")} only
    </div>`}):d}function ix({hits:t}){return t?i`<br /><span class="small"
          >${t.count} hits, ${w(t.pitch_mm,{digits:2}).text} apart</span
        >`:d}function lx(t){return["stop","caution","unknown"].map(n=>({level:n,letters:t.filter(s=>s.level===
n).map(({letter:s})=>s)})).filter(({letters:n})=>n.length).map(({level:n,letters:s})=>i`<div class="mark">${k(
n)} <b>${s.join(" ")}</b></div>`)}function cx(t){let e=new Map;for(let[n]of Kf)for(let s of t.filter(o=>Ht(o)===
n)){let o=`${n} ${s.template} ${s.do_template??""}`,a=e.get(o)??{letter:dx(e.size),level:n,checks:[],steps:[]};
a.checks.push(s),a.steps.push(...s.steps??(s.step?[s.step]:[])),e.set(o,a)}return[...e.values()]}function hx(t){
return i`<div class="remarks" data-test="sheet-remarks">
    ${Kf.map(([e,n])=>{let s=t.filter(o=>o.level===e);return s.length?i`<section data-level=${e}>
        <h3>${k(e,n)}</h3>
        <ul>
          ${s.map(({letter:o,checks:a,steps:r})=>i`<li>
                <b>${o}</b>
                ${r.length?i`<b>Step ${r.join(", ")}.</b> `:d}${ux(a)}
              </li>`)}
        </ul>
      </section>`:d})}
  </div>`}function ux(t){let{template:e,do_template:n=""}=t[0];return`${e} ${n}`.replace(/\{(\w+)\}/g,(s,o)=>[
...new Set(t.map(({numbers:a})=>as(_e(o,a[o]))))].join(" / ")).trim()}function px(t,{set_angle_deg:e,punch_depth_mm:n,
firstHit:s}){if(e===null&&t.die)return i`<b>no setting</b>`;let o=s?i` <span class="small" data-test="sheet-first">first hit</span>`:
d;return i`<b>${g(S(e))}</b>${o}<br />depth <b>${w(n,{digits:2}).text}</b>`}var Er,Kf,dx,mx,Yf=$(()=>{_();gs();
an();ne();Zl();kt();L();ue();U();Ln();bs();en();Ya();Le();Ut();Er=t=>g({text:H(t),unit:B()});Kf=[["stop","Stop"],
["caution","Caution"],["unknown","Unknown"],["note","Note"]];dx=t=>String.fromCharCode(97+t%26)+(t<26?"":String(
Math.floor(t/26)+1));mx=t=>t.fromTrial&&t.set_angle_deg!==null});function Ws(t){return K({name:"paper",label:"Paper",value:P().paper,options:[["A4","A4"],["Letter","Letter"]],
change(e){Pe({paper:e==="Letter"?"Letter":"A4"}),t()}})}function Ds(t="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${t}
  </button>`}function Lr(t,{lying:e=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${P().paper.toLowerCase()} ${e?"lying":"upright"}" data-test="sheet">
      ${t}
    </div>
  </div>`}var Nr=$(()=>{_();nt();J()});var Xf={};et(Xf,{show:()=>fx});async function fx(t){let{code:e}=t.params;if(!ut(e).whole)return Jf(t,Mt(e));let n,
s=[],o=async()=>{s=(await He())?.metals??s,n&&a()};function a(){t.title(`${n.title}, on paper`),t.render(i`<p class="crumb screen-only"><a href="/c/${e}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${Ws(a)}${Ds("Print the card")}</div>
        ${Lr(qf(n,ss(s,n.part.metal)),{about:"The card as it prints"})}`)}$t(()=>n&&a(),t.signal),document.addEventListener(
"sync",o,{signal:t.signal}),await o();try{await yt(e,r=>{n=r,a(),t.ready()},t.signal)}catch(r){t.signal.aborted||
Jf(t,At(e,r))}}function Jf(t,e){t.title("No such card"),t.render(e),t.ready()}var Zf=$(()=>{_();kt();dt();pt();
nt();Ne();Yf();Nr()});var eg={};et(eg,{show:()=>gx});async function gx(t){let{code:e}=t.params;if(!ut(e).whole)return tg(t,Mt(e));let n=P().
units,s=Qf[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){t.title(`Label of ${o.title}`),t.render(i`<p class="crumb screen-only"><a href="/c/${e}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${K({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${Qf.map(l=>$x(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${st("/labels",i`For office paper, lay them out <a href="/labels?codes=${e}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${Cr(e,s.size,n,"svg")}
          alt=""
          hidden />`)}try{await yt(e,l=>{o=l,r(),t.ready()},t.signal)}catch(l){t.signal.aborted||tg(t,At(e,l))}}
function $x(t,{size:e,words:n,print:s},o,a){let r=`label-${t.code}-${e}`;return i`<section class="panel label-panel" data-test="label-${e}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${Cr(t.code,e,o,"svg")}
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
        href=${Cr(t.code,e,o,"svg")}
        data-test="svg-${e}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${Cr(t.code,e,o,"png")}
        data-test="png-${e}"
        >PNG</a
      >
    </div>
  </section>`}function tg(t,e){t.title("No such card"),t.render(e),t.ready()}var Qf,Cr,ng=$(()=>{_();kt();dt();
nt();Ne();J();lt();Qf=[{size:"50x25",words:"50 × 25 mm, for a bin",print:"small"},{size:"100x50",words:"100 ×\
 50 mm, for a shelf or a door",print:"large"}];Cr=(t,e,n,s)=>`/api/v1/cards/${t}/label.${s}?size=${e}&units=${n}`});var sg={};et(sg,{show:()=>wx});async function wx(t){t.title("Labels on a sheet"),t.render(Tt("Fetching the car\
ds…"));let e=(await _x(t.signal)).filter(b=>!b.archived);if(!e.length)return t.render(xt("No cards yet",I("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),t.ready();let n=new Set((t.query.
get("codes")??"").split(",").filter(b=>e.some(y=>y.code===b))),s="50x25",o=P().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=b=>new URLSearchParams({codes:[...n].join(","),size:s,paper:P().paper,units:o,skip:a.trim()||"0",page:String(
b)}),h=(b,y)=>`/api/v1/labels/sheet.${b}?${c(y)}`;async function u(){let b=String(c(1));if(!n.size)l={key:b,pages:[],
wrong:""};else try{let{body:y}=await A("GET",`/labels/sheet.json?${c(1)}`,{signal:t.signal});l={key:b,pages:Array.
from({length:y.pages},(T,E)=>E+1),wrong:""}}catch(y){l={key:b,pages:[],wrong:y instanceof Error?y.message:String(
y)}}b===String(c(1))&&f()}let p=b=>{b(),f(),u()},m=b=>p(()=>n.has(b)?n.delete(b):n.add(b));function f(){let b=e.
filter(y=>`${y.code} ${y.title}`.toLowerCase().includes(r.trim().toLowerCase()));t.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${e.length}</span>
              </h2>
              ${e.length>8?O({name:"find",label:"Find",value:r,change:y=>{r=y,f()}}):d}
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${()=>p(()=>b.forEach(y=>n.add(y.code)))}>
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
                ${b.map(y=>i`<li>
                      <label>
                        <input
                          type="checkbox"
                          data-test="pick-${y.code}"
                          .checked=${n.has(y.code)}
                          @change=${()=>m(y.code)} />
                        <span>${y.title}</span> <span class="soft">${y.code}</span></label
                      >
                    </li>`)}
              </ul>
            </section>
            <section class="panel">
              <h2>How</h2>
              ${K({name:"size",label:"Label size",value:s,options:bx,change:y=>p(()=>s=y)})}
              ${Ws(()=>p(()=>{}))}
              ${K({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:y=>p(()=>o=
y==="inch"?"inch":"mm")})}
              ${O({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:y=>p(()=>a=y)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${Ds(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(y=>yx(y,l.pages.length,h))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}$t(f,t.signal),f(),await u(),t.ready()}function yx(t,e,n){let s=`labels-${t}`;return i`<figure class="label-sheet ${P().
paper.toLowerCase()}">
    <img src=${n("svg",t)} alt="Sheet ${t} of ${e} with labels" data-test="sheet-${t}" />
    <figcaption class="screen-only">
      <span>Sheet ${t} of ${e}, ${P().paper}. Print at 100 %, without fitting to the page.</span>
      <div class="buttons">
        <a class="button" download="${s}.svg" href=${n("svg",t)} data-test="sheet-svg-${t}"
          >SVG</a
        >
        <a class="button" download="${s}.png" href=${n("png",t)} data-test="sheet-png-${t}"
          >PNG</a
        >
      </div>
    </figcaption>
  </figure>`}async function _x(t){try{let e=[];for(;;){let{body:n}=await A("GET",`/cards?limit=100&offset=${e.
length}`,{signal:t});if(e.push(...n.cards),e.length>=n.total||!n.cards.length)return e}}catch(e){let n=await Be().
catch(()=>[]);if(t.aborted||!n.length)throw e;return n}}var bx,og=$(()=>{_();G();nt();Ct();J();lt();Nr();Bt();
bx=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function ag(t){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${t.metal.name}</h2>
      <p>
        ${t.press?.name??"No press entered"}${t.press?i`, ${g(mt(t.press.force_kn))}`:d}.
        Held against ratings at a bend length of ${g(w(t.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${Tn(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${B()}</span></th>
          ${t.dies.map(e=>i`<th scope="col" data-test="die-${e.code}">
                V ${H(e.v_opening_mm)}<span class="sub">${e.code}</span>
                <span class="sub"
                  >${e.rating_kn_per_m===null?"rating ?":g(Ot(e.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${t.rows.map(e=>i`<tr>
              <th scope="row">${H(e.thickness_mm)}<span class="sub">${e.gauge??""}</span></th>
              ${e.cells.map(vx)}
            </tr>`)}
      </tbody>
    </table>
    ${xx()}
    <ul class="chart-words">
      ${t.words.map(e=>i`<li>${e}</li>`)}
    </ul>
  </article>`}function vx(t){return t.usable?i`<td
    class="cell ${t.level}"
    data-level=${t.level}
    data-die=${t.die}
    title=${t.why}>
    <span class="first"
      ><span class="force">${Zt(t,"force_kn_per_m").text}</span>${t.level==="stop"?d:i`<span class="expected">${Ze(
t,"force_kn_per_m").text}</span>`}${t.level==="ok"?d:k(t.level,kx(t))}</span
    >
    ${t.level==="stop"?d:i`<span class="rest"
            >${w(t.min_flange_mm).text} · R ${w(t.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${t.die} title=${t.why}>
      <span aria-hidden="true">–</span><span class="unseen">${t.why}</span>
    </td>`}function kx({level:t,limit:e,share_percent:n}){return t==="unknown"?"rating?":`${e??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(t==="stop"?"over":"near")}function xx(){let t=Ot(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${t}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${k("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${k("caution","die 85 %")} over 80 % of a rating</li>
    <li>${k("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var rg=$(()=>{_();ne();L();ue();U();Ut()});var ig={};et(ig,{show:()=>Sx});async function Sx(t){t.title("Wall chart"),t.render(Tt("Working out the chart…"));
let e=(await it("metals",t.signal)).items;if(!e.length)return t.render(xt("No metals yet",i`A chart needs one. ${I(
rt.metals,i`<a href="/shop/metals">Metals</a>`)}`)),t.ready();let n=t.query.get("metal")??e[0].code,s=t.query.
get("bend_length")??"",o=null,a=null,{ask:r}=Te(async(u,p)=>(await A("GET",`/chart?${l()}`,{signal:p,timeout:2e4})).
body,u=>{o=u.answer??o,a=u.error??null,h(),t.ready()},t.signal);function l(){let u=new URLSearchParams({metal:n});
return s.trim()&&u.set("bend_length_mm",tt(s)),u}function c(){let u=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${u}`),r(null),h()}function h(){t.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${q({name:"metal",label:"Metal",value:n,options:e.map(({code:u,name:p})=>[u,p]),change:u=>{n=u,c()}})}
          ${O({name:"bend_length",label:"Checked at a bend length of",value:s,unit:B(),keys:"decimal",placeholder:B()===
"mm"?"1000":"39.37",change:u=>{s=u,c()}})}
          ${Ws(h)} ${Ds("Print the chart")}
        </div>
        ${a?Ye(a):d}
        ${o?Lr(ag(o),{lying:!0,about:"Wall chart as it prints"}):a?d:Tt("Working out the chart…")}`)}$t(h,t.
signal),r(null,{now:!0})}var lg=$(()=>{_();G();pt();nt();L();rg();J();lt();Nr();Bt();uo()});function cg(t,{fault:e,takeOut:n}){return i`<section class="panel" data-test="panel-benches">
    <h2>Benches <span class="soft">${t.length}</span></h2>
    ${e?i`<p class="wrong" role="alert" data-test="bench-fault">${e}</p>`:d}
    ${t.length?i`<ul class="plain-list bench-list">
            ${t.map(s=>i`<li data-test="bench-row" data-name=${s.name}>
                  <span><b>${Ee(s.name)}</b> ${Tx(s)}</span>
                  ${I("benches.remove",i`<button
                      type="button"
                      class="button"
                      data-test="take-bench-out"
                      aria-label="Take it out… ${Ee(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      A large screen at a press becomes one when it opens the shop's address with
      <a href="/bench">/bench</a> behind it.
    </p>
  </section>`}var Tx,dg=$(()=>{_();tn();dt();lt();Tx=({code:t})=>t?i`<a href="/c/${t}">${W(t)}</a>`:i`<span class="soft">empty</span>`});function hg(t){let e=t.map(({ring:o})=>Xt([o])),n=sc-2*Pr,s=Math.min(...e.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return t.map(({name:o,ring:a},r)=>Mx(o,a,e[r],s))}function Mx(t,e,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*Pr),c=(sc-(o-n)*r)/2-n*r,h=p=>c+p*r,u=p=>Pr+(a-p)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${sc} ${l}"
      role="img"
      aria-label="${t||"Outline"} to scale, ${Br(o-n)} wide, ${Br(a-s)} high"
      data-test="outline">
      ${Ax(n,o,h(0),l)}
      <path
        class="tool"
        d=${St(e)}
        transform="translate(${c} ${Pr+a*r}) scale(${r})" />
      ${Ox(h(n),h(o),l-16,Br(o-n))}
      ${Ex(u(s),u(a),h(o)+16,Br(a-s))}
    </svg>
    ${t?i`<figcaption>${t}</figcaption>`:d}
  </figure>`}function Ax(t,e,n,s){return t>0||e<0?d:x`<path class="centre" d="M${n} 6V${s-6}"/>`}function Ox(t,e,n,s){
return x`<path class="dimension" d="M${t} ${n}H${e}M${t} ${n-5}v10M${e} ${n-5}v10"/>
    <text class="measure" x=${(t+e)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function Ex(t,e,n,s){
let o=(t+e)/2;return x`<path class="dimension" d="M${n} ${t}V${e}M${n-5} ${t}h10M${n-5} ${e}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function Ir(t,e){return t?.length?i`<svg class="small-outline" viewBox=${Qd(
e,2)} aria-hidden="true">
    <path class="tool" d=${St(t)} />
  </svg>`:d}function Rr(t){let e=t.filter(n=>n?.length);return e.length?Xt(e):[0,0,1,1]}var sc,Pr,Br,Wr=$(()=>{
_();L();qe();ne();sc=360,Pr=50;Br=t=>g({text:H(t),unit:B()})});function ug(t,e){let n=Rr(e.map(s=>s.outline_mm));return i`<ul class="rack">
    ${e.map(s=>i`<li>
          <a
            href="/shop/${t}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${Ir(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:d}</span
            >
          </a>
        </li>`)}
  </ul>`}var pg=$(()=>{_();Wr()});var mg={};et(mg,{show:()=>Lx});async function Lx(t){t.title("Shop");let[{press:e,kept:n},s,o,a,r,l]=await Promise.
all([aa(t.signal),it("punches",t.signal),it("dies",t.signal),it("holders",t.signal),it("metals",t.signal),In(t.
signal).catch(()=>null)]),c={benches:l,fault:""};async function h(p){let m=Rn(p.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A screen that stands there asks which bench it is.`)){c.fault="";try{await fu(
p.name)}catch(f){c.fault=f instanceof Error?f.message:String(f)}c.benches=await In(t.signal).catch(()=>c.benches),
u()}}let u=()=>t.render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${I(rt.press,"Changing anything needs the shop's server.")}
              </p>`:d}
        <div class="shop-grid">
          ${Cx(e)} ${oc("punches",s.items)} ${oc("dies",o.items)}
          ${oc("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${st("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(Nx)}
            </ul>
          </section>
          ${c.benches?cg(c.benches,{...c,takeOut:h}):d} ${Bx()}
          ${st("/crew",i`<section class="panel" data-test="panel-crew">
              <h2><a href="/crew">Crew</a></h2>
              <p>Phones and screens that may see this shop.</p>
              <a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>
            </section>`)}
        </div>`);u(),t.ready()}function Cx(t){return t?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${t.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${g(mt(t.force_kn))}</dd>
      </div>
      <div>
        <dt>Bed</dt>
        <dd>${g(w(t.bed_length_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Open height</dt>
        <dd>${g(w(t.open_height_mm,{digits:0}))}</dd>
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
      ${I(rt.press,i`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`}function oc(t,e){let n=e.filter(o=>o.rating_kn_per_m===null).length,s=e.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${t}">
    <h2><a href="/shop/${t}">${je[t].title}</a> <span class="soft">${e.length}</span></h2>
    ${e.length?ug(t,e):i`<p>None yet. ${I(rt[t],i`<a href="/shop/${t}/+">Add the first</a>`)}</p>`}
    ${n?i`<p>${k("unknown",`${n} without a rating`)}</p>`:d}
    ${s?i`<p>${k("caution",`${s} worn or damaged`)}</p>`:d}
  </section>`}function Bx(){let t=st("/copies",i`<a class="button wide" href="/copies" data-test="to-copies">Copies and export</a>`);
return st("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${t===d?"":", and away"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${t}
      </div>
      ${t===d?d:i`<p class="hint">
              Whether there is a good copy of the shop; all of it in one open file, out and in.
            </p>`}
    </section>`)}var Nx,fg=$(()=>{_();tn();pt();L();dg();U();lt();pg();Nx=({code:t,name:e})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(t)}">${e}</a>
    ${st("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(t)}" data-test="learned-${t}"
        >What the metal taught</a
      >`)}
  </li>`});function $g(t,{took:e,show:n,signal:s}){let o={file:"",busy:!1,choices:{...gg},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(u){return a=u,Object.assign(o,{file:u.name,choices:{...gg},layers:[]}),
h()}function c(u,p){return o.choices={...o.choices,[u]:p},o.choices.origin==="point"&&!o.choices.point?n():h()}
async function h(){if(!a)return;let u=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>Px)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:p}=await Co(
`/outlines/dxf?${Ix(o.choices,t)}`,a,"image/vnd.dxf",s);if(u!==r)return;Object.assign(o,{answer:p,layers:p.layers}),
e(p)}catch(p){if(u!==r||s.aborted)return;if(o.wrong=p instanceof Error?p.message:String(p),p instanceof M&&p.outline){
let{code:m,layers:f}=p.outline;Object.assign(o,{fault:p.outline,code:m,layers:f.length?f:o.layers})}}o.busy=!1,
n()}return{state:o,choose:l,set:c}}function Ix(t,e){let n=Object.entries(t).filter(([s,o])=>o&&(s!=="point"||t.
origin==="point"));return new URLSearchParams([["kind",e],...n])}var gg,Px,bg=$(()=>{G();gg={units:"",layer:"",
origin:"rule",point:"",turn_deg:"0",mirror:"no"},Px=2e6});async function Fs(t,e){let n=await t.read(e),s={kept:n,draft:t.toDraft(n??t.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>t.fromDraft(s.draft,s.kept??{}),a=()=>t.draw(s),r=()=>t.boxes.filter(({name:b,needed:y})=>y&&b in
s.draft&&!s.draft[b].trim());function l(b,y){s.draft={...s.draft,[b]:y},delete s.wrong[b],de(()=>"Leave withou\
t saving what you typed?"),t.preview?.(o()),a()}async function c(b){let y=b?Object.fromEntries(r().map(({name:E})=>[
E,["This is needed."]])):{},T=Object.keys(y).length===0;if(Object.assign(s,{busy:T,wrong:y,others:[],clash:null}),
a(),!T)return se(y);try{await t.write(b),de(null),t.done(b);return}catch(E){await h(E)}s.busy=!1,a(),se(s.wrong)}
async function h(b){if(b instanceof M&&b.status===412){let y=s.kept;s.kept=await t.read(e);let T=s.kept?t.toDraft(
s.kept):{},E=Fd(y,s.kept)?"others changed":s.kept?"this changed":"taken out";s.clash={how:E,differences:E==="t\
his changed"?ur(s.draft,T,t.boxes):[]}}else if(b instanceof M&&Object.keys(b.errors).length){let{byName:y,others:T}=Ah(
b.errors,t.boxes.map(({name:E})=>E));Object.assign(s,{wrong:y,others:T})}else s.others=[`Not saved: ${b instanceof
Error?b.message:b} What you typed is still here.`]}function u(){Object.assign(s,{draft:t.toDraft(s.kept??t.blank),
clash:null}),de(null),t.preview?.(o()),a()}let p=new Map;function m(b,y){let T=p.get(y)??$g(b,{signal:e,show:a,
took:E=>f(y,E)});return p.set(y,T),T}function f(b,{points_mm:y,height_mm:T}){b==="points_mm"&&s.draft.height_mm===
""&&l("height_mm",z(T)),l(b,Sh(y))}return t.preview?.(o()),{reader:m,state:s,change:l,takeTheirs:u,show:a,save:()=>c(
o()),takeOut:()=>c(null)}}var Dr=$(()=>{G();pt();Se();bg();Pt();L();Os();J()});function jr(t,e,n){let s=[],{ask:o}=Te(async(a,r)=>{let{body:l}=await A("POST","/outline",{body:{kind:t,...Dx(
t,a)},signal:r});return l},({answer:a,error:r})=>{a&&(s=wg(a));let l=r instanceof M&&r.outline?.lines_mm.some(
c=>c.length>1)?r.outline:null;e({parts:s,checks:Wx(a),wrong:r?Fx(r):[],fault:l})},n);return a=>{Rx(t,a)&&o(a)}}
function Rx(t,e){let n={punch:"punches",die:"dies",holder:"holders",press:"press"}[t];return Xe(n).filter(({type:s,
blank:o,when:a})=>["length","number"].includes(s)&&o===void 0&&(!a||a(e))).every(({name:s})=>e[s]!==void 0)&&(e.
shape!=="multi_v"||e.openings.every(s=>s.v_opening_mm&&s.angle_deg&&s.shoulder_radius_mm))}function wg({outline_mm:t,
ram:e,bed:n}){return[{name:"",ring:t},{name:"Ram",ring:e},{name:"Bed",ring:n}].filter(({ring:s})=>s?.length)}function Dx(t,e){
return t==="press"?_n(e):{..._n(e),code:e.code||"new"}}function Fx(t){if(!(t instanceof M))return["The drawing\
 waits: the shop's server does not answer."];let e=[...new Set(Object.values(t.errors).flat())];return e.length?
e:[t.message]}var Fr,Wx,ac=$(()=>{G();pt();Se();uo();Fr=t=>({parts:wg({...t,...t?.outlines_mm}),checks:[],wrong:[],
fault:null});Wx=t=>(t?.checks??[]).filter(({code:e})=>!e.endsWith("rating-unknown"))});function Hr({state:t,change:e},n){let s=n.taken(t.draft.code)?["This code is in use already."]:t.wrong.code;return O(
{name:"code",label:"Code",value:t.draft.code,change:o=>e("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function Ur({state:t,takeOut:e},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return ht(rt[n.kind])?i`<div role="alert">
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
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var js,
Gr=$(()=>{_();pt();Et();J();js=(t,e)=>ht(t)?e:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${e}</fieldset>`});function _g(t,e){if(!t?.systematic)return d;let n=t.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
    <h2>The gauge’s zero</h2>
    <p>
      <b
        >${t.flanges} measured flanges agree: the gauge stands
        ${g(w(Math.abs(t.zero_mm),{digits:2}))} too far ${n}.</b
      >
      Set its zero by as much at the press. Nothing here changes until you say that it is set; flanges
      measured before then count no more.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="gauge-zero-set" @click=${e}>The zero is set</button>
    </div>
  </section>`}var yg,vg=$(()=>{_();G();L();yg=t=>A("GET","/press/gauge",{signal:t}).then(({body:e})=>e,()=>null)});function Tg(t,{metals:e,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=t,h=m=>f=>{r[m]=f,delete l[m]},
u=(m,f)=>({name:m,label:f,value:r[m]??"",wrong:l[m],change:h(m)}),p=(m,f,b)=>i`<div class="broad">${q({...u(m,
f),options:[["","Choose"],...b]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one comes out, the more bed and ram give way.
    </p>
    <form
      novalidate
      @submit=${m=>{m.preventDefault(),Hx(t,o)}}>
      <div class="fields">
        ${p("metal","Metal",e)} ${p("die","Die",n)} ${p("punch","Punch",s)}
        ${Sg.map(([m,f,b])=>O({...u(m,f),unit:B(),keys:"decimal",hint:b}))}
        ${xg.map(([m,f])=>O({...u(m,f),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${t.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${t.busy}>Work it out</button>
      </div>
    </form>
    ${c?jx(c,a):d}
  </details>`}function jx(t,e){let n=s=>g(w(s,{digits:2}));return i`<div data-test="strips-found" role="status">
    <p>
      <b>About ${n(t.deflection_mm)}</b> in the middle at full force over the whole bed, between
      ${n(t.deflection_mm_low)} and ${n(t.deflection_mm_high)}: the middle came out
      ${g(S(t.middle_open_deg))} more open.
    </p>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="strips-take"
        @click=${()=>e(z(t.deflection_mm))}>
        Put it in the box
      </button>
    </div>
  </div>`}async function Hx(t,e){if(!t.busy){Object.assign(t,{busy:!0,wrong:{},general:"",found:null}),e();try{
let{body:n}=await A("POST","/press/strip-test",{body:Ux(t.typed)});t.found=n}catch(n){t.wrong=n instanceof M?n.
errors:{},t.general=n instanceof Error?n.message:String(n)}t.busy=!1,e()}}function Ux(t){let e={metal:t.metal,
die:t.die,punch:t.punch};for(let[n]of Sg)e[n]=tt(t[n]??"");for(let[n]of xg)e[n]=Oo(t[n]??"");return e}var kg,xg,
Sg,Mg=$(()=>{_();G();Rs();L();J();kg=()=>({typed:{},wrong:{},general:"",busy:!1,found:null}),xg=[["left_deg","\
Left"],["middle_deg","Middle"],["right_deg","Right"]],Sg=[["thickness_mm","Thickness of the strips",""],["stri\
p_length_mm","Length of the bend","All three alike, at most a quarter of the bed."],["end_mm","Outer strips fr\
om the bed’s end","To the middle of the strip, left and right alike."]]});function Vr({code:t,lines_mm:e,edges:n,marks_mm:s}){let o=Xt([...e,s]),a=Sn(o,rc-2*Ag,ic-2*Ag),[r,l]=a([o[2],o[1]]),
c=[(rc-r)/2,(ic-l)/2],h=m=>{let[f,b]=a(m);return[f+c[0],-(b+c[1])]},u=!["open","branching"].includes(t),p=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${rc} ${ic}"
    role="img"
    aria-label="The outline as far as it was understood, ${p}"
    data-test="outline-fault">
    ${e.map(m=>x`<path class="fault-line" d=${ao((u?[...m,m[0]]:m).map(h))}/>`)}
    ${n.map(m=>Gx(e[0],m,h))} ${s.map(m=>Vx(h(m)))}
  </svg>`}function Gx(t,e,n){let[s,o]=[t[e-1],t[e%t.length]].map(n);return x`<path class="fault-edge" d=${ao([
s,o])}/>
    ${Og(s,e)}${Og(o,e%t.length+1)}`}var rc,ic,Ag,Og,Vx,lc=$(()=>{_();qe();rc=360,ic=300,Ag=30;Og=([t,e],n)=>x`<text class="fault-number" x=${t} y=${-e-
9} text-anchor="middle" font-size="19">${n}</text>`,Vx=([t,e])=>x`<g class="fault-mark" data-test="fault-mark"><circle cx=${t} cy=${-e} r="10"/>
    <path d="M${t-14} ${-e}h28M${t} ${-e-14}v28"/></g>`});function Eg(t,{state:e,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:h,layers:u}=e,p=`dx\
f-${t}`,m=(f,b,y)=>q({name:`${p}-${f}`,label:b,value:h[f],options:y,change:T=>s(f,T)});return i`<div class="dxf broad" data-test=${p}>
    <label class="button dxf-file" for="${p}-file"
      >${o?"Read another DXF file":"Read a DXF file"}
      <input
        id="${p}-file"
        data-test="${p}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${({target:f})=>{f.files?.[0]&&n(f.files[0]),f.value=""}} />
    </label>
    ${o?i`<div role="status">
              ${a?i`<p class="hint">Reading ${o}…</p>`:d}
              ${r?i`<p data-test="${p}-read">
                      <b>${o}</b>, read in ${r.units}: ${cc(r.width_mm)} wide,
                      ${cc(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${cc(r.within_mm)}. ${r.rule}${Jx(r)}
                    </p>`:d}
              ${l?i`<p class="wrong" data-test="${p}-wrong">${l}</p>`:d}
            </div>
            ${c?.lines_mm.length?Vr(c):d}
            <div class="fields">
              ${m("units","Drawn in",zx)}
              ${u.length>1||h.layer?m("layer","Layer",[["","all"],...u.map(f=>[f,f])]):d}
              ${m("origin","0, 0 is",qx)}
              ${h.origin==="point"?O({name:`${p}-point`,label:"Point number",value:h.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:f=>s("point",f)}):d}
              ${m("turn_deg","Turned",Kx)} ${m("mirror","Mirrored",Yx)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function Jx({left_out:t}){return t.length?` Left out: ${t.map(({kind:e,count:n})=>`${n} ${e}`).join(
", ")}.`:""}var zx,qx,Kx,Yx,cc,Lg=$(()=>{_();lc();L();J();zx=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],qx=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
Kx=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],Yx=[["no","no"],
["yes","front to back"]];cc=t=>g(w(t,{digits:2}))});function Ng({draft:t,change:e,wrong:n}){let s=t.openings??"",o=An(s),a=n.openings??[];return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((l,c)=>Xx(l,c,{rows:o,said:a,up:t.up||"1",set:h=>e("openings",wh(s,c,h)),raise:()=>e("up",String(c+
1)),drop:()=>r(c)}))}
    ${a.filter(l=>!/^V \d+: /.test(l)).map(l=>i`<p class="wrong" data-test="wrong-openings">${l}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>e("openings",yh(s))}>
      Add a V
    </button>
  </div>`;function r(l){let c=Number(t.up||"1");e("openings",_h(s,l)),(c>l+1||c>=o.length)&&e("up",String(Math.
max(c-1,1)))}}function Xx(t,e,{rows:n,said:s,up:o,set:a,raise:r,drop:l}){let c=e+1,h=s.filter(f=>f.startsWith(
`V ${c}: `)).map(f=>f.slice(`V ${c}: `.length)),u=f=>h.filter(b=>b.startsWith(`${f}: `)).map(b=>b.slice(f.length+
2)),p=h.filter(f=>!Object.keys(co).some(b=>f.startsWith(`${b}: `))),m=(f,b,y,T="")=>O({name:`opening-${c}-${co[f]}`,
label:b,unit:y,placeholder:T,value:t[co[f]],keys:f==="code"?"text":"decimal",change:E=>a({[co[f]]:E}),wrong:u(
f)});return i`<fieldset class="opening" data-test="opening-${c}">
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
      ${m("v_opening_mm","V opening",B())} ${m("angle_deg","Angle","°")}
      ${m("shoulder_radius_mm","Shoulder radius",B())}
      ${q({name:`opening-${c}-face`,label:"Face",value:t.face||"top",options:bh,change:f=>a({face:f}),wrong:u(
"face")})}
      ${m("centre_mm","Off the middle",B(),"0")}
      ${m("rating_kn_per_m","Rating",xn().unit,"as the block")}
      ${m("code","Code","","by itself")}
    </div>
    ${p.map(f=>i`<p class="wrong">${f}</p>`)}
  </fieldset>`}var Cg=$(()=>{_();We();Pi();L();J()});function zr({kind:t,draft:e,change:n,wrong:s,preview:o,options:a={},first:r=d,reader:l}){return i`<div class="workbench">
    ${wa[t].map((c,h)=>i`<section class="panel ${c.part}">
          <h2>${c.title}</h2>
          ${h===0?r:d} ${c.part==="outline"?Zx(o):d}
          <div class="fields">
            ${c.fields.filter(({when:u,hidden:p})=>!p&&(!u||u(e))).map(u=>u.type==="openings"?Ng({draft:e,change:n,
wrong:s}):Qx(u,e[u.name]??"",p=>n(u.name,p),{wrong:s[u.name],options:a[u.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function Zx(t){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${t?.fault?Vr(t.fault):t?.parts.length?i`<div class="outlines">${hg(t.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${t?.wrong.map(e=>i`<p class="wrong" data-test="outline-wrong">${e}</p>`)}
    ${t?_t(t.checks,{quiet:!0}):d}
  </div>`}function Qx(t,e,n,{wrong:s=[],options:o=t.options,reader:a}){let{name:r,label:l,type:c}=t;if(c==="pi\
ck"||c==="yes"){let m=t.blank?[["",t.blank],...o??[]]:o??[];return Bg(t,q({name:r,label:l,value:e,options:m,change:n,
wrong:s}))}if(c==="points"||c==="note"){let m=t.dxf?Eg(r,a(t.dxf,r)):d;return t0(t,e,i`${m}${e0(t,e,n,s)}`)}let h=Pg(
t),u=["number","length","force","rating"].includes(c)?"decimal":"text",p=O({name:r,label:l,value:e,change:n,wrong:s,
unit:h,keys:u,hint:n0(t,e),placeholder:t.blank??""});return c==="rating"?i`<div class="broad">
      ${p}${e.trim()?d:k("unknown",`${l} unknown`)}
    </div>`:Bg(t,p)}function t0({folded:t,label:e},n,s){return t?i`<details class="broad" ?open=${!!n}>
        <summary>${e}</summary>
        ${s}
      </details>`:s}function Pg({type:t,unit:e=""}){return t==="force"?ze().unit:t==="rating"?xn().unit:["leng\
th","lengths","points"].includes(t)?B():e}function e0(t,e,n,s){let{name:o,label:a,hint:r,type:l}=t;return Nn({
name:o,label:a,value:e,change:n,wrong:s,hint:r,unit:Pg(t),lines:l==="points"?7:2})}function n0({type:t,hint:e="",
counted_mm:n},s){let o=[e];return n!==void 0&&o.push(`Empty: ${as(_e("counted_mm",n))} is counted with (common\
 practice).`),t==="rating"&&!s.trim()&&o.push(kh),(t==="force"||t==="rating")&&o.push(s0(t,s)),t==="lengths"&&
o.push(o0(s)),o.filter(Boolean).join(" ")}function s0(t,e){if(P().units==="inch")return"Short tons, of 2000 lb\
; metric ones with a t.";let n=oo(e,{unit:""}).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];if(!n)return"";let s=Number(
n)*Gd;return`In metric tons: ${g(t==="force"?mt(s):Ot(s))}.`}function o0(t){let e=t.split(/[,;\n]/).filter(n=>n.
trim()).length;return e?e===1?"1 piece.":`${e} pieces.`:""}var Bg,dc=$(()=>{_();lc();Wr();nt();ji();L();U();Lg();
J();Cg();Bg=({broad:t,type:e},n)=>t||e==="lengths"?i`<div class="broad">${n}</div>`:n});function Ig(t,e){return i`<section class="panel" id="zero" data-test="zero">
    <h2>Zero set anew, or another press?</h2>
    <p>
      What results taught of this press’s error no longer holds then. It is learned again from the next piece
      on, each bend leads with a first hit until then, and what the metals were taught stays.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="depth-zero-set" @click=${t}>
        The depth’s zero was set
      </button>
      <button type="button" class="button" data-test="another-press" @click=${e}>
        It is another press
      </button>
    </div>
  </section>`}var Rg=$(()=>{_()});var Wg={};et(Wg,{show:()=>a0});async function a0(t){let e=ht(rt.press),s=(await it("holders",t.signal)).items.
map(({code:T,name:E})=>[T,`${T}, ${E}`]),o=async T=>(await it(T,t.signal)).items.flatMap(nl).map(({code:E,name:C})=>[
E,C?`${E}, ${C}`:E]),a=kg(),[r,l,c,h]=e?await Promise.all([yg(t.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],u=null,p={before:null,after:null},m=null,f=await Fs({async read(T){let E=await(e?ra:aa)(T);return u=
E.etag,p.before=E.press?.depth_zeroed_at??null,E.press??void 0},async write(T){let E=await Dd(T,u);p.after=E.depth_zeroed_at},
blank:{},boxes:Xe("press"),toDraft:T=>_a("press",T),fromDraft:(T,E)=>({...va("press",T,E),depth_zeroed_at:E?.depth_zeroed_at??
null,gauge_zeroed_at:E?.gauge_zeroed_at??null}),preview:e?jr("press",T=>{m=T,f.show()},t.signal):void 0,draw:()=>f&&
y(),done(){Z(p.after===p.before?"The press is saved.":"The press is saved. Its error is learned anew."),ft("/s\
hop")}},t.signal);t.title("The press"),e||(m=Fr(f.state.kept));let b=(...T)=>{let E=new Date().toISOString();for(let C of T)
f.state.kept[C]=E;f.save()};function y(){let{state:T,change:E,save:C}=f;t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${T.kept?.name??"The press"}</h1>
        ${e?i`<p>
                ${T.kept?"Take every figure from the press's own plate and manual.":"No press yet. Take every \
figure from its own plate and manual."}
                What is not on the plate may stay empty where the box says unknown.
              </p>`:d}
        ${T.clash?As(T.clash,"press",{saveMine:C,takeTheirs:f.takeTheirs}):d}
        ${_g(r,()=>b("gauge_zeroed_at"))}
        <form
          novalidate
          @submit=${v=>{v.preventDefault(),C()}}>
          ${js(rt.press,zr({kind:"press",draft:T.draft,change:E,wrong:T.wrong,preview:m,reader:f.reader,options:{
holder:s}}))}
          <div role="alert">
            ${T.others.map(v=>i`<p class="wrong-line" data-test="not-saved">${v}</p>`)}
          </div>
          <div class="buttons">
            ${e?i`<button class="button next" data-test="save" ?disabled=${T.busy}>
                    ${T.busy?"Saving…":"Save the press"}
                  </button>`:d}
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>
        ${e&&T.kept?Tg(a,{metals:l,dies:c,punches:h},{draw:y,take:v=>E("deflection_mm",v)}):d}
        ${e&&T.kept?Ig(()=>b("depth_zeroed_at"),()=>b("depth_zeroed_at","gauge_zeroed_at")):d}`)}y(),t.ready()}
var Dg=$(()=>{_();pt();Se();Dr();ae();ac();Et();Pt();Os();Gr();vg();Bn();Mg();dc();Rg()});function jg(t,e,n,s){let{angles:o,wrong:a}=Eo(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h}=On(
e),u={id:t,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h,die:n.die,punch:n.punch,...o};u.set_angle_deg=
s.set.trim()?i0(s.set,a):n.set_angle_deg;for(let[p,m]of r0)s[p].trim()&&(u[m]=tt(s[p]));return s.lot.trim()&&(u.
lot=s.lot.trim()),s.note.trim()&&(u.note=s.note.trim()),P().name&&(u.by=P().name),{body:u,wrong:a}}function i0(t,e){
let{angles:n}=Eo({...qr,one:t});return n.measured_deg===void 0&&(e.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var qr,r0,Fg,Hg=$(()=>{Sa();Rs();nt();L();qr={one:"",left:"",middle:"",
right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:"",depth:"",flat:"",leftFlange:"",rightFlange:""},
r0=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_left_mm"],["rightFlange","flang\
e_right_mm"],["radius","radius_mm"]],Fg=t=>Object.entries(t).some(([e,n])=>e!=="places"&&e!=="lot"&&n.trim()!==
"")});function Vg(t,e){let n=Math.min((Ug-2*Gg-34)/t,170/e),[s,o]=[t*n,e*n],[a,r]=[Gg+34,24],[l,c,h]=[a+s,r+o,a+s/2],
u=g(w(t,{digits:0})),p=g(w(e,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${Ug} ${Math.round(c+52)}"
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
  </svg>`}var Ug,Gg,zg=$(()=>{_();L();Ug=400,Gg=30});function Yg({before:t,after:e,points:n=[],size:s=1,words:o}){let a=[t.low,t.high,e.low,e.high,...n.map(u=>u.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return d;let c=fs(r,l,{from:Kg,to:qg-Kg,size:s,most:5}),{at:h}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${qg} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(u=>x`<path class="faint" d="M${u.at} 8V84"/>
          <text class="quiet" x=${u.at} y="104" text-anchor="middle"
            font-size=${l0}>${u.text}</text>`)}
    <path
      class="was"
      d="M${h(t.low)} 24H${h(t.high)}M${h(t.low)} 17v14M${h(t.high)} 17v14M${h(t.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${h(e.low)} 52H${h(e.high)}" data-test="band-after" />
    <path class="now-middle" d="M${h(e.nominal)} 42v20" />
    ${n.map(u=>c0(h(u.value),74,u))}
  </svg>`}function c0(t,e,{id:n,outlier:s,weight:o=1}){return s?x`<path class="trial-odd" d="M${t-6} ${e-6}l12 12M${t+
6} ${e-6}l-12 12" data-test="band-point"
        data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${t} cy=${e} r=${o<.25?3:6} data-test="band-point"
        data-id=${n}/>`}var qg,Kg,l0,Jg=$(()=>{_();sl();qg=340,Kg=24,l0=17});function t$({before_mm:t,after_mm:e,flanges:n,strips:s}){let o=c=>g(w(c,{digits:2})),a=e.nominal-t.nominal,r=Number(
Q(a,2))===0,l=`${o(Math.abs(a))} ${a>0?"shorter":"longer"}`;return i`<p data-test="deduction">
    A bend takes <b>${o(e.nominal)}</b> (${o(e.low)} to ${o(e.high)}) off the sum of its
    flats${r?", as before":i`: the next blank is <b>${l}</b> for each such bend`}. Rests on
    ${[Xg(n,"measured flange"),Xg(s,"strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`}function Kr(t){if(!t.length)return i`<p data-test="no-figures">No figure changed.</p>`;let e=t.flatMap(
s=>s.points??[]),n=["Thin: before. Thick: now. Rings: trials"];return e.some(s=>(s.weight??1)<.25)&&n.push("sm\
all ones, of other sheet or tools, count little"),e.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${t.
map(d0)}</div>
    ${e.length?i`<p class="hint">${n.join("; ")}.</p>`:d}`}function d0(t){let{what:e,before:n,after:s,trials:o,
points:a=[]}=t,r=c=>h0(t.unit,c),l=`${e[0].toUpperCase()}${e.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${e}>
    <h3>
      ${l} <small>${o===0?"no trials":o===1?"1 trial":`${o} trials`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${Zg(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${Zg(s,r)}</dd>
      </div>
    </dl>
    ${Yg({before:n,after:s,points:a,size:t.unit==="mm"&&B()==="in"?Jt:1,words:`${l}: before ${Qg(n,r)}, now ${Qg(
s,r)}, ${a.length} trials drawn.`})}
  </section>`}function h0(t,e){return t==="deg"?S(e):t==="mm"?w(e,{digits:2}):{text:Q(e,3),unit:t}}var Xg,Zg,Qg,
hc=$(()=>{_();Jg();L();Xg=(t,e)=>t?`${t} ${e}${t>1?"s":""}`:"";Zg=(t,e)=>i`<b>${g(e(t.nominal))}</b>
    <span class="band">${e(t.low).text} to ${e(t.high).text}</span>`,Qg=({low:t,high:e},n)=>`${n(t).text} to ${g(
n(e))}`});function r$(t,{metals:e,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:h}=t,u=(m,f,b={})=>O(
{name:m,label:f,value:r[m],wrong:R(c,m),change:y=>Object.assign(r,{[m]:y}),unit:B(),next:!0,...b}),p=(m,f,b)=>q(
{name:m,label:f,value:r[m],options:b,wrong:R(c,m),change:y=>{Object.assign(r,{[m]:y}),a()}});return i`<form novalidate data-test="choose-form" @submit=${a$(
o)}>
    <p>One strip, bent and measured, makes the book’s figures those of your metal and your tools.</p>
    ${o$(t)}
    <div class="test-fields">
      ${p("metal","Metal",e.map(({code:m,name:f})=>[m,f]))}
      ${u("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${u("bend_length_mm","Strip’s width, along the bend")}
      ${u("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${p("die","Die",n$(n,r.die))}
      ${p("punch","Punch",n$(s,r.punch))}
      ${O({name:"lot",label:"Lot or heat",value:l.lot,wrong:R(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${h}>
        ${h?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function n$(t,e){let n=t.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=e&&!t.some(({code:o})=>o===e)?
[[e,`${e} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function i$({bend:t},{go:e}){let n=t.
worst!=="stop"&&t.die&&t.punch,s=g(w(p0,{digits:0}));return i`${hs(t.checks)}
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
            Cut a strip <b>${g(w(t.bend_length_mm,{digits:0}))}</b> wide and about
            <b>${g(w(e$,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
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
          ${Gt("Angle to set",S(t.set_angle_deg),"set-angle")}
          ${Gt("Depth",w(t.punch_depth_mm,{digits:2}),"punch-depth")}
        </div>
        ${ds(t.first_hit)}
        <div class="figures">${po("Allow for",t)}</div>
      </div>
      <div class="strip-pictures">
        ${Vg(e$,t.bend_length_mm)}
        ${t.drawing?pe(t.drawing,{pose:"before",close:!0,opening:t.v_opening_mm,gauge:"",angle:t.set_angle_deg,
words:"The strip on the die before the bend"}):d}
      </div>
    </div>
    ${us(t.checks)} ${Qe(t.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>e("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>e("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function l$(t,{go:e,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=t,c=(u,p,m,f={})=>O({name:p,
label:m,value:o[u],wrong:R(a,p),change:b=>Object.assign(o,{[u]:b}),unit:B(),next:!0,...f}),h={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${a$(n)}>
    ${o$(t)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${g(S(r.included_angle_deg))}. The angle is
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
      ?open=${["set_angle_deg","punch_depth_mm","note"].some(u=>R(a,u).length)}>
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
  </form>`}function c$({answer:t,form:e,busy:n},s,{again:o}){if(!t)return d;let a=s.find(({code:h})=>h===e.metal)?.
name??e.metal,{teaches:r,asks:l,said:c}=t.test_bend;return i`<h2>What it taught <small>${a}</small></h2>
    <div class=${t.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${t.said.map(h=>i`<p>${bt(h)}</p>`)}
    </div>
    ${r?d:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${k("caution")} <b>Kept, but it does not count.</b> ${ro(c)}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(e.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:d}
          </section>`}
    ${t.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${k("caution","Odd one out")}</h2>
            ${t.outliers.map(({said:h})=>i`<p>${ro(h)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(e.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:d}
    ${Kr(t.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${t.cards.length?i`<ul class="rows">
              ${t.cards.map(m0)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(e.metal)}" data-test="to-learned"
        >All it taught</a
      >
    </div>`}var u0,e$,p0,s$,o$,a$,m0,d$=$(()=>{_();mo();zg();L();ue();J();fo();U();Ln();hc();nn();oe();u0=[["c\
hoose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Learned"]],e$=300,p0=102,s$=t=>i`<ol class="stages" aria-label="Stages">
    ${u0.map(([e,n])=>i`<li aria-current=${e===t?"step":"false"}>${n}</li>`)}
  </ol>`,o$=({general:t})=>t?i`<p class="wrong" role="alert" data-test="wrong">${t}</p>`:d,a$=t=>e=>{e.preventDefault(),
t()};m0=({code:t,title:e,said:n})=>i`<li class="row" data-test="changed-card" data-code=${t}>
    <a href="/c/${t}">
      <span class="lead">${e||t}</span> <span class="code">${t}</span>
      <span class="more">${n.map(bt).join("; ")}</span>
    </a>
  </li>`});var h$={};et(h$,{show:()=>g0});async function g0(t){t.title("Test bend"),t.render(Tt("Looking into the crib…"));
let[e,n,s]=await Promise.all(["metals","dies","punches"].map(async b=>(await it(b,t.signal)).items)),o=ka(t.query);
o.metal||=e[0]?.code??"",o.bend_length_mm||=B()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...qr},bend:null,
answer:null,id:Wt(),wrong:{},general:"",busy:!1};de(()=>a.stage==="measure"&&Fg(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>t.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${s$(a.stage)} ${l()}
      </article>`);function l(){let b={draw:r,go:c,choose:h,send:u,again:p};return a.stage==="bend"?i$(a,b):a.
stage==="measure"?l$(a,b):a.stage==="taught"?c$(a,e,b):r$(a,{metals:e,dies:n,punches:s},b)}function c(b){Object.
assign(a,{stage:b,wrong:{},general:""}),r(),scrollTo(0,0)}async function h(){let b=ho(o);if(b.length)return m(
Object.fromEntries(b.map(y=>[y,f0[y]])));history.replaceState(null,"",`/shop/test-bend?${xa(o)}`),await f(async()=>{
let y=await A("POST","/bend",{body:On(o),signal:t.signal});a.bend=y.body,c("bend")})}async function u(){let{body:b,
wrong:y}=jg(a.id,o,a.bend,a.typed);if(Object.keys(y).length)return m(y);await f(async()=>{let T=await A("POST",
"/test-bends",{body:b,timeout:2e4});a.answer=T.body,c("taught"),j()})}function p(){Object.assign(a,{typed:{...qr,
lot:a.typed.lot,places:a.typed.places},answer:null,id:Wt()}),h()}function m(b,y=""){Object.assign(a,{wrong:b,general:y}),
r(),se(b)}async function f(b){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await b()}catch(y){
return t.signal.aborted?void 0:(a.busy=!1,m(y instanceof M?y.errors:{},$0(y)))}a.busy=!1,r()}}$t(r,t.signal),r(),
t.ready()}function $0(t){return t instanceof M?t.message:t instanceof F?"The shop’s server does not answer. Wh\
at you typed stays here: try again.":String(t)}var f0,u$=$(()=>{_();G();Sa();pt();Nt();Pt();nt();wt();Hg();L();
J();Bt();d$();f0={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as\
 1.98."],bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you\
 want, such as 90."]}});function p$(t){if(!t)return d;let{set_by:e,offset_mm:n,results:s,strip:o}=t;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
t.apart)}>
    <h2>
      The press <small>${e?b0[e]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?w0(n,s):d}
    ${n?st("/shop/press",i`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`):d}
    ${t.said.map(a=>i`<p>${bt(a)}</p>`)}
    ${o?st("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${y0(o)}>Bend this strip</a>
            </p>`):d}
  </section>`}function w0({low:t,nominal:e,high:n},s){let o=l=>w(Math.abs(l),{digits:2}),a=l=>`${g(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(e).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(e)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(t)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var b0,y0,m$=$(()=>{_();L();U();lt();b0={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};
y0=({metal:t,thickness_mm:e,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:t,thickness:`${e} mm`,die:n})}`});var f$={};et(f$,{show:()=>_0});async function _0(t){let{metal:e}=t.params,n=`metal=${encodeURIComponent(e)}`;t.
title("What the metal taught");let{items:s}=await it("metals",t.signal),o=s.find(({code:h})=>h===e);if(!o)return t.
title("No such metal"),t.render(xt(`No metal ${e} in the shop`,i`<a href="/shop/metals">Metals</a>`)),t.ready();
t.title(`What ${o.name} taught`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){let[h,u]=await Promise.
all([A("GET",`/learned?${n}`,{signal:t.signal}),A("GET",`/test-bends?${n}`,{signal:t.signal})]),p=h.body,{evidence:m}=u.
body;Object.assign(a,{groups:p.groups,press:p.press}),a.evidence=[...m].sort((f,b)=>f.made_at<b.made_at?1:-1)}
async function l(h,u){if(!a.busy){a.busy=h.id,c();try{let{body:p}=await A("POST",`/evidence/${encodeURIComponent(
h.id)}/${u}`,{body:P().name?{by:P().name}:{},timeout:2e4});await r(),Z(k0(u,p.cards)),j()}catch(p){if(t.signal.
aborted)return;if(!(p instanceof M||p instanceof F))throw p;Z(p.message)}a.busy="",c()}}let c=()=>t.render(i`<p class="crumb">
          <a href="/shop">Shop</a> / <a href="/shop/metals/${encodeURIComponent(e)}">${o.name}</a>
        </p>
        <div class="head-line">
          <h1>What the metal taught <span class="soft">${o.name}</span></h1>
          ${st("/shop/test-bend",i`<a class="button next" href="/shop/test-bend?${n}" data-test="to-test-bend"
              >Test bend</a
            >`)}
        </div>
        ${a.evidence.length?i`<div class="learned" data-test="learned" aria-busy=${a.busy?"true":"false"}>
                <section class="learned-figures">
                  ${p$(a.press)} ${x0(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Trials</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(h=>S0(h,a.busy,l))}
                  </ul>
                </section>
              </div>`:xt("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),$t(c,t.signal),c(),t.ready()}function k0(t,e){let n=v0[t];return e.
length?`${n} ${e.length===1?"One card":`${e.length} cards`} would now plan differently: ${e.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function x0(t){return t.length?t.map(({thickness_mm:e,v_opening_mm:n,lot:s,factor:o,deduction:a,
figures:r,said:l})=>i`<section data-test="group" data-thickness=${e} data-v=${n}>
        <h2>
          ${g(w(e,{digits:2}))} over V
          ${g(w(n))}${s?i` <small>lot ${s}</small>`:d}
        </h2>
        ${l.map(c=>i`<p class="together" data-test="together">${k("caution")} ${bt(c)}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${Q(o.nominal,2)} times</b> as much as expected
                (${Q(o.low,2)} to ${Q(o.high,2)}).
              </p>`:d}
        ${a?t$(a):d} ${Kr(r)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No trial is in use: the figures are the metal’s own.</p>`}function S0(t,e,n){
let s=t.kind==="test bend"?"Test bend":i`First piece${t.code?i` of <a href="/c/${t.code}">${t.code}</a>`:d}`,o=[
t.set_angle_deg===null?"":`set at ${g(S(t.set_angle_deg))}`,g(w(t.thickness_mm,{digits:2})),t.die?`die ${t.die}`:
t.v_opening_mm?`V ${g(w(t.v_opening_mm))}`:"",t.lot?`lot ${t.lot}`:"",ot(t.made_at),ve(t)];return i`<li
    class="row evidence ${t.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${t.id}
    data-forgotten=${String(t.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${g(S(t.measured_deg))}</span> ${s}
        ${t.forgotten?k("unknown","Forgotten"):t.asks?k("unknown","Does not count"):t.outlier?k("caution","Odd\
 one out"):d}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${t.note?i`<p>${t.note}</p>`:d}
      ${t.said.length?i`<p class=${t.asks?"":"more"} data-test="evidence-words">${ro(t.said)}</p>`:d}
    </div>
    <div class="evidence-marks">
      ${T0(t).map(([a,r])=>I(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${e!==""}
            @click=${()=>n(t,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function T0({forgotten:t,asks:e}){return t?[["remember","Use it again"]]:e?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var v0,g$=$(()=>{_();G();pt();ae();nt();wt();
L();U();hc();lt();m$();Bt();Ut();v0={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var $$={};et($$,{show:()=>M0});async function M0(t){let e=sa(t.params.kind);if(!e)return t.title("Not here"),t.
render(xt("No such list in the shop",i`<a href="/shop">The shop</a>`)),t.ready();let{one:n,title:s,many:o}=je[e];
t.title(s);let{items:a,kept:r}=await it(e,t.signal),l=Rr(a.map(c=>c.outline_mm??[]));t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?d:I(rt[e],i`<a class="button" href="/shop/${e}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${I(rt[e],"Changing anything needs the shop's server.")}
            </p>`:d}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>e==="metals"?N0(c):A0(e,c,l))}
            </ul>`:xt(`No ${o} yet`,I(rt[e],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),t.ready()}function A0(t,e,n){return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/${t}/${encodeURIComponent(e.code)}">
      <span class="thumb">${Ir(e.outline_mm,n)}</span>
      <span class="who"><span class="lead">${e.code}</span> <span>${e.name}</span>${O0(e)}</span>
      <span class="fact"><span class="what">Place</span>${Ue(e)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${e.rating_kn_per_m===null?k("unknown"):g(Ot(e.rating_kn_per_m))}</span
      >
      ${e.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${e.segments_mm.length?i`${e.segments_mm.length}, up to
                    ${g(w(E0(e.segments_mm),{digits:0}))}`:"none"}</span
            >`:d}
      <span class="fact"><span class="what">Condition</span>${L0(e)}</span>
    </a>
  </li>`}function O0({shape:t,openings:e=[]}){return t!=="multi_v"?d:i`<span class="soft" data-test="block-vs"
    >${e.map(n=>`${n.code}: V ${g(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function L0({condition:t,condition_note:e}){if(t==="good")return k("ok","Good");let n=t==="damaged"?k("st\
op","Damaged"):t==="worn"?k("caution","Worn"):k("unknown");return i`${n}${e?i` <span class="soft">${e}</span>`:
d}`}function N0(t){let{tensile_mpa:e}=t;return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/metals/${encodeURIComponent(t.code)}">
      <span class="who"><span class="lead">${t.name}</span> <span class="soft">${t.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${e.low} to ${e.high} MPa</span>
      <span class="fact"><span class="what">Standing</span>${e.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${t.gauge_family??"none"}</span>
    </a>
  </li>`}var E0,b$=$(()=>{_();pt();L();U();lt();Bt();Wr();E0=t=>Math.max(...t)});function pc(t,e){let n=e.params.tool===uc,s=n?void 0:e.params.tool,o={items:[],etag:null,kept:!1};return{kind:t,
isNew:n,code:s,async read(a){return o=await(ht(rt[t])?oa:it)(t,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(h=>h.code!==s),l=o.items.findIndex(h=>h.code===s),c=a?[{...a,code:s??a.code}]:[];await Wd(
t,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){Z(a?`${a.name||s} is saved.`:`${s} is taken out.`),ft(`/\
shop/${t}`)},taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var uc,w$=$(()=>{pt();ae();Et();Pt();uc="+"});async function y$(t,e){let n=await Fs({...e,blank:{poisson:.3},boxes:C0,toDraft:o=>({code:String(o.code??""),...Th(
o)}),fromDraft:o=>({...Mh(o),code:o.code.trim()}),draw:()=>n&&s()},t.signal);if(!n.state.kept&&!e.isNew)return t.
title("No such metal"),t.render(xt(`No metal ${e.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),t.ready();
t.title(e.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,h={})=>O({name:l,
label:c,value:o.draft[l]??"",change:u=>a(l,u),wrong:o.wrong[l],...h});t.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${e.isNew?"New metal":i`${e.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${e.isNew?d:i`<div class="buttons">
                ${st("/shop/learned/x",i`<a
                    class="button"
                    href="/shop/learned/${encodeURIComponent(e.code??"")}"
                    data-test="to-learned"
                    >What the metal taught</a
                  >`)}
                ${st("/shop/test-bend",i`<a
                    class="button"
                    href="/shop/test-bend?metal=${encodeURIComponent(e.code??"")}"
                    data-test="to-test-bend"
                    >Test bend</a
                  >`)}
              </div>`}
        ${o.clash?As(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):d}
        <form
          novalidate
          @submit=${l=>{l.preventDefault(),n.save()}}>
          ${js(rt.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${e.isNew?Hr(n,e):d} ${r("name","Name")}
                  ${q({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:fh,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${ls.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${Nn({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${Mn.map(l=>B0(l,n))}</div>`)}
          ${Ur(n,e,"metal")}
        </form>`)}s(),t.ready()}function B0({name:t,label:e,unit:n,needed:s},{state:o,change:a}){let r=u=>o.draft[`${t}\
.${u}`]??"",l=u=>o.wrong[`${t}.${u}`]??[],c=u=>p=>a(`${t}.${u}`,p),h=!s&&!mc.some(([u])=>r(u).trim());return i`<fieldset class="panel figure-card" data-test="figure-${t}">
    <legend>${e}${n?i` <span class="hint">(${n})</span>`:d}</legend>
    ${(o.wrong[t]??[]).map(u=>i`<p class="wrong-line">${u}</p>`)}
    <div class="fields three">
      ${mc.map(([u,p])=>O({name:`${t}.${u}`,label:p,value:r(u),change:c(u),wrong:l(u),keys:"decimal"}))}
    </div>
    ${h?k("unknown","Not known"):d}
    <div class="fields source-line">
      ${Nn({name:`${t}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${q({name:`${t}.standing`,label:"Standing",value:r("standing"),options:mh.map(u=>[u,u]),change:c("standi\
ng"),wrong:l("standing")})}
    </div>
  </fieldset>`}var mc,C0,_$=$(()=>{_();Se();pt();Dr();Bi();Gr();Os();U();J();lt();Bt();mc=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],C0=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...ls,...Mn.flatMap(({name:t,label:e})=>[...mc,["source","s\
ource"],["standing","standing"]].map(([n,s])=>({name:`${t}.${n}`,label:`${e}: ${s.toLowerCase()}`}))),...Mn]});var v$={};et(v$,{show:()=>I0});async function I0(t){let e=sa(t.params.kind);return e?t.params.tool===uc&&!ht(rt[e])?
(t.title(`New ${je[e].one}`),t.render(la(rt[e])),t.ready()):e==="metals"?y$(t,pc(e,t)):R0(t,e):(t.render(xt("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),t.ready())}async function R0(t,e){let n=je[e],s=pc(
e,t),o=ht(rt[e]),a=null,r=await Fs({...s,blank:P0[e],boxes:[{name:"code",label:"Code"},...Xe(e)],toDraft:c=>({
code:String(c.code??""),..._a(e,c)}),fromDraft:(c,h)=>({...va(e,c,h),code:c.code.trim()}),preview:o?jr(n.one,c=>{
a=c,r.show()},t.signal):void 0,draw:()=>r&&l()},t.signal);if(!r.state.kept&&!s.isNew)return t.title("Not in th\
e crib"),t.render(xt(`No ${n.one} ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${e}">${n.
title}</a>`)),t.ready();t.title(s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=Fr(r.state.kept));function l(){
let{state:c,change:h}=r;t.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${e}">${n.title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${c.kept?.name}</span>`}
        </h1>
        ${c.clash?As(c.clash,n.one,{saveMine:r.save,takeTheirs:r.takeTheirs}):d}
        <form
          novalidate
          @submit=${u=>{u.preventDefault(),r.save()}}>
          ${js(rt[e],zr({kind:e,draft:c.draft,change:h,wrong:c.wrong,preview:a,reader:r.reader,first:s.isNew?Hr(
r,s):d}))}
          ${Ur(r,s,n.one)}
        </form>`)}l(),t.ready()}var P0,k$=$(()=>{_();pt();Se();Dr();w$();ac();Et();Os();Gr();lt();Bt();dc();_$();
P0={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"unkno\
wn",up:1},holders:{shape:"block",condition:"unknown"}}});var T$={};et(T$,{show:()=>D0});async function D0(t){t.title("Crew");let{signal:e}=t,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>t.render(j0(n,o)),o=F0(n,s,
e),[a,r,l]=await Promise.all([A("GET","/devices",{signal:e}),A("GET","/crew-options",{signal:e}),pn(e).then(({
network:h})=>h?A("GET","/join",{signal:e}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),t.ready();let c=setInterval(o.look,W0);e.addEventListener("abort",()=>clearInterval(
c))}function F0(t,e,n){let s=async a=>{t.fault="";try{await a()}catch(r){if(n.aborted)return;t.fault=Go(r)}e()};
async function o(){if(document.visibilityState!=="visible")return;let a=await A("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;t.devices=a.body.devices;let r=t.offer&&t.devices.find(l=>!t.known.has(
l.id)&&!l.revoked_at);r?Object.assign(t,{came:r,offer:null,name:""}):t.offer&&Date.parse(t.offer.expires_at)<=
Date.now()&&(t.offer=null),e()}return{look:o,draw:e,offer:()=>s(async()=>{let{body:a}=await A("POST","/pairing\
s",{body:{role:t.role,name:t.name.trim()},signal:n});Object.assign(t,{offer:a,came:null,known:new Set(t.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Turn out ${a.name}? It can read nothing any more, and its car\
ds go from it when it next asks.`)&&(await A("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await A("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await A(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),t.open=a})}}function j0(t,e){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${t.fault?i`<p class="wrong" role="alert" data-test="fault">${t.fault}</p>`:d}
    ${t.joining?i`<div class="crew-grid">${U0(t,e)}${G0(t.joining)}</div>`:H0()}
    <section class="panel" data-test="devices">
      <h2>Who is in</h2>
      ${V0(t,e)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${K({name:"labels-open",label:"A device that is not paired",value:t.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>e.setOpen(n==="open")})}
    </section>`}function U0(t,e){let{offer:n,came:s}=t;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${Kt[n.role].word}${n.name?i`: <b>${n.name}</b>`:d}. Works once, until
        ${ot(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${S$(n.qr)} />
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
            ${k("ok","Paired")} <b>${s.name}</b> is in, as ${Kt[s.role].word.toLowerCase()}.
          </p>`:d}
    ${K({name:"role",label:"As",value:t.role,options:x$,change:o=>{t.role=o,e.draw()}})}
    <p class="hint" data-test="role-does">${Kt[t.role].word}: ${Kt[t.role].does}.</p>
    ${O({name:"device-name",label:"Whose?",value:t.name,placeholder:"Ann's phone",change:o=>t.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${e.offer}>
      Show a pairing code
    </button>
  </section>`}function G0(t){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${S$(t.qr)} />
    <p>${t.shop}: ${t.https.map(e=>i`<span class="address">${e}</span> `)}</p>
    ${t.http.length?i`<p class="hint">Or type <span class="address">${t.http[0]}/join</span></p>`:d}
    ${t.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${z0(t.fingerprint)}</p>`:d}
  </section>`}function V0({devices:t},e){return t.length?i`<ul class="plain-list devices">
    ${t.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:d}
            <span class="soft"
              >${n.revoked_at?`turned out ${ot(n.revoked_at)}`:`last seen ${ot(n.seen_at)}`},
              paired ${ot(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${k("stop","Out")}</p>`:i`${q({name:`role-${n.id}`,label:`Role of ${n.name}`,value:n.
role,options:x$,change:s=>e.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>e.revoke(n)}>
                    Turn out…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var W0,x$,H0,S$,z0,M$=$(()=>{_();G();mn();
U();J();Ut();W0=2e3,x$=Object.entries(Kt).map(([t,{word:e}])=>[t,e]);H0=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;S$=t=>`data:image/svg+xml,${encodeURIComponent(t)}`,z0=t=>t.replace(/(.{4})(?=.)/g,"$1 ")});var Yr,fc=$(()=>{_();Yr=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop by themselves; what still waits to be sent does not, so open Flangebook in the shop’s network first.
  Some phones ask each time before the camera may be used.
</p>`});var O$={};et(O$,{show:()=>q0});async function q0(t){t.title("Pair this device"),t.render(Tt("Asking the shop…"));
let e={me:null,code:K0(),name:P().name,fault:"",asking:!1,waits:0},n=()=>t.render(Y0(e,n));e.me=await pn(t.signal).
catch(()=>null),e.waits=(await Dt().catch(()=>[])).length,n(),t.ready()}function K0(){if(location.pathname!=="\
/pair"||!location.hash)return"";let t=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),t}function Y0(t,e){let{me:n}=t;return n?n.role?J0(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${A$[Ie()??n.why]?i`<p data-test="why">${k("caution","Not let in")} ${A$[Ie()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
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
      @submit=${s=>{s.preventDefault(),Z0(t,e)}}>
      ${O({name:"pair-code",label:"Pairing code",value:t.code,placeholder:"ABCD-1234",change:s=>t.code=s,wrong:t.
fault?[t.fault]:[]})}
      ${O({name:"pair-name",label:"Whose device is this?",value:t.name,placeholder:"Ann's phone",change:s=>t.name=
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
    </div>`}function J0(t){let e=t.role;return t.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${k("ok",Kt[e].word)} <b>${t.name}</b>: ${Kt[e].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${Yr}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${X0}>Unpair this device…</button>
    </p>
  </div>`}async function X0(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await id()}async function Z0(t,e){Object.assign(t,{asking:!0,fault:""}),e();try{await rd(t.
code,t.name.trim()),j(),ft(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
t,{asking:!1,fault:Go(n)}),e()}}var A$,E$=$(()=>{_();mn();Nt();Pt();nt();wt();U();J();fc();Bt();A$={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function L$({show:t,done:e,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,h){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),t();try{if(o.size>tS)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");let u=await Co(`/import?${h}`,
o,"application/json",n,Q0);s.told=u.body}catch(u){if(n.aborted)return;s.wrong=eS(u)}s.busy="",t(),s.told?.imported&&
e()}}return{state:s,choose:a,take:r}}function eS(t){if(!(t instanceof M))return[t instanceof Error?t.message:String(
t)];let e=Object.entries(t.errors).slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[t.message,...e]}var Q0,
tS,N$=$(()=>{G();Q0=3e5,tS=6e7});function P$({state:t,choose:e,take:n}){let{name:s,busy:o,told:a,wrong:r}=t;return i`<section class="panel" data-test="panel-import">
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
      ${r.length?sS(s,r):d}
      ${a?a.imported?rS(a):oS(s,a,n):d}
    </div>
  </section>`}function oS(t,e,n){return i`<div data-test="import-preview">
    <p><b>${t}</b>, exported ${ot(e.exported_at)} by ${e.made_by}</p>
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">In the file</th>
          <th scope="col">In the shop now</th>
        </tr>
      </thead>
      <tbody>
        ${nS.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${B$(e.holds[s])}</td>
              <td>${B$(e.here[s])}</td>
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
              @click=${()=>aS(e)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var nS,C$,sS,B$,aS,rS,I$=$(()=>{_();U();Ut();nS=[["press","Press"],["tools","Tools"],["metals","Meta\
ls"],["cards","Cards"],["revisions","Revisions"],["trials","Trials"],["test_bends","Test bends"]],C$=8;sS=(t,e)=>i`<div data-test="import-wrong">
    <p>${k("stop","Not brought in")} ${t}</p>
    <ul>
      ${e.slice(0,C$).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${e.length>C$?i`<p>There are more.</p>`:d}
    <p>Nothing in the shop was changed.</p>
  </div>`;B$=t=>t===""?"none":t,aS=({here:t,holds:e})=>confirm(`Replace the shop? Its ${t.cards} cards and ${t.
trials} trials go, the file's ${e.cards} cards and ${e.trials} trials come. A copy is kept first.`),rS=({holds:t,
kept_as:e})=>i`<div data-test="import-done">
    <p>${k("ok","Brought in")} ${t.cards} cards, ${t.trials} trials.</p>
    ${e?i`<p>The shop that was there is kept as ${e}.</p>`:d}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var R$={};et(R$,{show:()=>lS});async function lS(t){t.title("Copies and export");let e=L$({show:a,done:s,signal:t.
signal}),n=await o();async function s(){j(),n=await o(),a()}async function o(){let{body:r}=await A("GET","/cop\
ies",{signal:t.signal});return r}function a(){t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Copies and export</h1>
        <div class="settings-grid">
          ${cS(n)}
          <div class="stack">${uS()}${P$(e)}</div>
        </div>`)}a(),t.ready()}function cS({standing:t,last_good_at:e,trouble:n,folder:s,copies:o}){return i`<section class="panel" data-test="panel-copies">
    <h2>Copies</h2>
    <p data-test="standing">${dS(t)}</p>
    ${e?i`<p class="lead-line" data-test="last-good">Last good copy: ${ot(e)}</p>`:d}
    ${n?i`<p class="wrong" data-test="trouble">${ot(n.at)}: ${n.words}</p>`:d}
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
                    <td>${ot(a.at)}</td>
                    <td>${iS[a.kind]}</td>
                    <td>${hS(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:d}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> puts one back.
    </p>
  </section>`}function dS(t){return t==="ok"?k("ok","There is a good copy"):t==="late"?k("caution","The last c\
opy is over two days old"):t==="trouble"?k("stop","The last copy could not be made"):k("unknown","There is no \
copy yet")}function uS(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and trials, as open JSON. Bring it in again here, or read
      it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var iS,hS,W$=$(()=>{_();G();N$();wt();U();I$();Ut();iS={night:"by itself","by-hand":"by hand",replaced:"\
before it was replaced"};hS=t=>`${(t/1e6).toFixed(1)} MB`});async function D$(t){let{code:e,part:n,title:s,note:o,created_by:a}=t,r={code:e,part:{...n,title:s},note:o,by:a},
{body:l}=await A("POST","/cards",{body:r,timeout:2e4}),c=eo(await ie(l),[]);await Ge(c,ta(Zn(t,["archived","se\
ttings"]),c),{reason:"Put back from a device"}),await Xc(t),await Uo(e)}var F$=$(()=>{G();ts();Ve();Ct()});function j$(t){return t.length?i`<section class="panel" data-test="lost">
    <h2>Not in the shop any more</h2>
    <p>
      The shop was put back to an earlier day and does not know these cards. This device still has
      them.${I("cards.create",d,i` <span data-test="owners"
          >The owner can put them back from here, once this is an owner's device.</span
        >`)}
    </p>
    <ul class="waiting-list">
      ${t.map(e=>i`<li data-test="lost-${e.code}">
            <p><b>${e.title}</b> ${W(e.code)}</p>
            <div class="buttons">
              ${I("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>pS(e)}>
                  Put it back
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>mS(e)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:d}async function pS(t){try{await D$(t),await j()}catch(e){Z(e instanceof Error?e.message:String(
e))}}async function mS(t){confirm(`Throw away the card ${W(t.code)}, ${t.title}? This device may have the only\
 copy.`)&&(await Uo(t.code),await ns())}var H$=$(()=>{_();dt();ae();F$();Ct();wt();lt()});var V$={};et(V$,{show:()=>fS});async function fS(t){t.title("Settings");let e={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([Be().catch(()=>[]),Dt().catch(()=>[]),Ho().catch(()=>[])]);e=
{...e,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await A("GET","/cards?limit=1",{signal:t.signal,
timeout:4e3}).catch(()=>null);e={...e,total:a?.body?.total??null},o()}function o(){t.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${$S(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${bS(o)}
          </section>
          ${gS()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${wS(e.entries)}
          </section>
          ${j$(e.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${vS(e)} ${Yr}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:t.signal}),await n(),t.ready(),await s()}function gS(){
let t=qn();return!t||t==="owner"?d:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${Kt[t].word}</b>: ${Kt[t].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function $S(t){let{units:e,inches:n}=P(),s=o=>{Pe(o),t()};return i`${K({name:"units",label:"Unit\
s",value:e,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${e==="inch"?K({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):d}
  ${K({name:"paper",label:"Paper",value:P().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${e==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:d}`}function bS(t){let{theme:e,name:n}=P();
return i`${K({name:"theme",label:"Theme",value:e,options:[["system","As the device"],["day","Day"],["shop","Sh\
op, dark"]],change:s=>{Pe({theme:s==="shop"||s==="day"?s:"system"}),t()}})}
  ${O({name:"name",label:"Your name",value:n,change:s=>Pe({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function wS(t){return t.length?i`<ul class="waiting-list">
      ${t.map(e=>i`<li data-test="waits-${e.id}">
            <p>
              <b>${G$(e)}</b> on <a href="/c/${e.code}">${W(e.code)}</a>,
              ${ot(e.queued_at)} by this device’s clock
              ${e.body.note?i`<br /><span class="soft">${e.body.note}</span>`:d}
            </p>
            ${e.refused?i`<p data-test="refused">
                      ${k("caution","Refused")} ${e.missing?`${Ao(e)}.`:""}
                      ${e.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>yS(e)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>_S(e)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${Ao(e)}. It goes by itself when the shop's server
                    ${e.late?"takes it":"answers"}.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>j()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every trial, note and edit typed here is saved in the shop.
    </p>`}function G$({kind:t,body:e}){if(t==="trial")return`${rn(e)}, step ${e.step}`;if(t==="note")return"No\
te";let n=Object.keys(e).filter(s=>s in U$).map(s=>U$[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was settled"}async function yS(t){await Hc(t.id),await j()}async function _S(t){confirm(`Throw away ${G$(t)} o\
n ${W(t.code)}? It cannot be brought back.`)&&(await Do(t.id),await ns())}function vS({cards:t,total:e}){let{reached:n,
at:s}=Yt(),o=e!==null&&t>=e,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${t}${e===null?d:` of ${e}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${s?ot(s):"not since this page was opened"}</dd>
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
    <button type="button" class="button" data-test="check-now" @click=${()=>j()}>Look again</button>`}var U$,z$=$(
()=>{_();G();mn();dt();Nt();Et();nt();Ct();wt();U();J();fc();Ls();H$();Bs();Ut();U$={title:"title",note:"note",
archived:"in use or put away",settings:"settings"}});function ye(t){let e=fa(t.split("?")[0])?.route.needs;return!e||ht(e)}function fa(t){let e=t.split("/").filter(
Boolean);e[0]?.toLowerCase()==="c"&&(e[0]="c");for(let n of q$){let s=kS(n.path.split("/").filter(Boolean),e);
if(s)return{route:n,params:s}}}function kS(t,e){if(t.length!==e.length)return;let n={};for(let[s,o]of t.entries()){
if(!o.startsWith(":")){if(o!==e[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(e[s])}catch{return}}return n.
code&&(n.code=Zs(n.code)),n}var q$,dh,os=$(()=>{dt();Et();q$=[{name:"home",path:"/",load:()=>Promise.resolve().then(()=>(ph(),uh))},
{name:"bend",path:"/bend",needs:"bends.bend",load:()=>Promise.resolve().then(()=>(du(),cu))},{name:"bench",path:"\
/bench",floor:!0,load:()=>Promise.resolve().then(()=>(lp(),ip))},{name:"part",path:"/part",needs:"parts.plan",
load:()=>Promise.resolve().then(()=>(Mm(),Tm))},{name:"scan",path:"/scan",floor:!0,load:()=>Promise.resolve().then(()=>(Km(),qm))},
{name:"card",path:"/c/:code",floor:!0,load:()=>Promise.resolve().then(()=>(lf(),rf))},{name:"step",path:"/c/:c\
ode/step/:step",floor:!0,load:()=>Promise.resolve().then(()=>(pf(),uf))},{name:"trial",path:"/c/:code/trial/:s\
tep",floor:!0,needs:"trials.keep",load:()=>Promise.resolve().then(()=>(Lf(),Ef))},{name:"history",path:"/c/:co\
de/history",load:()=>Promise.resolve().then(()=>(Ff(),Df))},{name:"note",path:"/c/:code/note",floor:!0,needs:"\
cards.change",load:()=>Promise.resolve().then(()=>(Uf(),Hf))},{name:"settle",path:"/c/:code/settle",floor:!0,needs:"\
cards.revise",load:()=>Promise.resolve().then(()=>(zf(),Vf))},{name:"print",path:"/c/:code/print",load:()=>Promise.resolve().then(()=>(Zf(),Xf))},
{name:"label",path:"/c/:code/label",load:()=>Promise.resolve().then(()=>(ng(),eg))},{name:"labels",path:"/labe\
ls",needs:"labels.sheet_json",load:()=>Promise.resolve().then(()=>(og(),sg))},{name:"chart",path:"/chart",needs:"\
bends.chart",load:()=>Promise.resolve().then(()=>(lg(),ig))},{name:"shop",path:"/shop",load:()=>Promise.resolve().then(()=>(fg(),mg))},
{name:"press",path:"/shop/press",load:()=>Promise.resolve().then(()=>(Dg(),Wg))},{name:"test-bend",path:"/shop\
/test-bend",floor:!0,needs:"evidence.keep",load:()=>Promise.resolve().then(()=>(u$(),h$))},{name:"learned",path:"\
/shop/learned/:metal",needs:"evidence.learned",load:()=>Promise.resolve().then(()=>(g$(),f$))},{name:"tools",path:"\
/shop/:kind",load:()=>Promise.resolve().then(()=>(b$(),$$))},{name:"tool",path:"/shop/:kind/:tool",load:()=>Promise.resolve().then(()=>(k$(),v$))},
{name:"crew",path:"/crew",needs:"crew.listed",load:()=>Promise.resolve().then(()=>(M$(),T$))},{name:"pair",path:"\
/pair",load:()=>Promise.resolve().then(()=>(E$(),O$))},{name:"copies",path:"/copies",needs:"copies.listed",load:()=>Promise.resolve().then(()=>(W$(),R$))},
{name:"settings",path:"/settings",load:()=>Promise.resolve().then(()=>(z$(),V$))}],dh=t=>q$.find(e=>e.name===t)});function Je(){let t=location.pathname,e=n=>n==="/"?t==="/"||t==="/scan"||/^\/c\//i.test(t):t.startsWith(n);Re(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${SS}<span>Flangebook</span></a>
        ${Ie()===null?i`<nav aria-label="Main">
                ${xS.filter(([n])=>ye(n)).map(([n,s])=>i`<a href=${n} aria-current=${e(n)?"page":"false"}>${s}</a>`)}
              </nav>`:d}
      </div>
      ${TS()}${MS()}${Ie()===null?AS():d}`,document.getElementById("masthead"))}function MS(){return Qs()?i`<p class="standing" data-test="held">
      ${Qs()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      It is saved by itself then.
    </p>`:Hs()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${Yt().reached===!1?d:"Cards come from the shop."}
  </p>`:d}function AS(){let{reached:t,waiting:e,words:n,late:s,refused:o,settle:a,lost:r}=Yt(),l=a.filter(m=>ye(
`/c/${m}/settle`)),c=s?` ${s}.`:"",h=e?`${n} ${e===1?"waits":"wait"} to be sent.${c}`:"",u=Hs()?"":"Cards on t\
his device still open.",p=t===!1?`Not connected to the shop. ${u}`:"";return!p&&!h&&!l.length&&!r?d:i`<p class="standing" data-test="standing">
    ${p} ${h} ${o?i`<a href="/settings">${o} refused: look</a>`:d}
    ${l.length?i`<a href="/c/${l[0]}/settle" data-test="settle-count">${l.length} to settle</a>`:d}
    ${r?i`<a href="/settings" data-test="lost-count"
            >${r===1?"1 card is":`${r} cards are`} not in the shop any more: look</a
          >`:d}
  </p>`}var xS,SS,TS,Li=$(()=>{_();mn();os();es();Ce();wt();xS=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];SS=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,TS=()=>isSecureContext?d:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});mn();Li();Pt();nt();wt();ae();async function Y$(){if("serviceWorker"in navigator)try{let t=await navigator.serviceWorker.register("/sw.\
js");t.waiting&&K$(t.waiting),t.addEventListener("updatefound",()=>{let e=t.installing;e?.addEventListener("st\
atechange",()=>{e.state==="installed"&&navigator.serviceWorker.controller&&K$(e)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(t){console.
warn("The app could not be kept on this device:",t)}}function K$(t){Z("A newer Flangebook is here. It opens wh\
en you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),t.postMessage("take over")}})}Vs();$t(()=>Vs());document.addEventListener("sync",()=>Je());document.addEventListener("held",()=>Je());document.
addEventListener("storage",t=>{Je(),!t.detail.silent&&(document.documentElement.dataset.ready==="failed"&&ke(),
j())});document.addEventListener("turned-away",()=>{Je(),document.documentElement.dataset.screen!=="pair"&&ke()});
document.addEventListener("rights",()=>{Ie()===null&&document.documentElement.dataset.screen!=="pair"&&lh()});
ld();ch().finally(()=>{Rd(),Y$()});
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
