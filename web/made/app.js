var K$=Object.defineProperty;var $=(t,e,n)=>()=>{if(n)throw n[0];try{return t&&(e=t(t=0)),e}catch(s){throw n=[s],s}};var nt=(t,e)=>{for(var n in e)K$(t,n,{get:e[n],enumerable:!0})};function Us(t){let e=t.split("/").filter(Boolean);e[0]?.toLowerCase()==="c"&&(e[0]="c");for(let n of xc){let s=Y$(
n.path.split("/").filter(Boolean),e);if(s)return{route:n,params:s}}}function Y$(t,e){if(t.length!==e.length)return;
let n={};for(let[s,o]of t.entries()){if(!o.startsWith(":")){if(o!==e[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(
e[s])}catch{return}}return n}var xc,Sc,Qr=$(()=>{xc=[{name:"home",path:"/"},{name:"bend",path:"/bend",needs:"b\
ends.bend"},{name:"bench",path:"/bench",floor:!0},{name:"part",path:"/part",needs:"parts.plan"},{name:"scan",path:"\
/scan",floor:!0},{name:"card",path:"/c/:code",floor:!0},{name:"step",path:"/c/:code/step/:step",floor:!0},{name:"\
trial",path:"/c/:code/trial/:step",floor:!0,needs:"trials.keep"},{name:"history",path:"/c/:code/history"},{name:"\
note",path:"/c/:code/note",floor:!0,needs:"cards.change"},{name:"settle",path:"/c/:code/settle",floor:!0,needs:"\
cards.revise"},{name:"print",path:"/c/:code/print"},{name:"label",path:"/c/:code/label"},{name:"labels",path:"\
/labels",needs:"labels.sheet_json"},{name:"chart",path:"/chart",needs:"bends.chart"},{name:"shop",path:"/shop"},
{name:"press",path:"/shop/press"},{name:"test-bend",path:"/shop/test-bend",floor:!0,needs:"evidence.keep"},{name:"\
learned",path:"/shop/learned/:metal",needs:"evidence.learned"},{name:"tools",path:"/shop/:kind"},{name:"tool",
path:"/shop/:kind/:tool"},{name:"crew",path:"/crew",needs:"crew.listed"},{name:"pair",path:"/pair"},{name:"cop\
ies",path:"/copies",needs:"copies.listed"},{name:"settings",path:"/settings"}],Sc=t=>xc.find(e=>e.name===t)});function J$(){try{let t=JSON.parse(localStorage.getItem(Mc)??"null");return t?.refused?t:Tc}catch{return Tc}}function _e(t){
let e=Us(t.split("?")[0])?.route.needs;return!e||ft(e)}function Ac({role:t,refused:e={}}){let n=JSON.stringify(
{role:t,refused:e});if(n===JSON.stringify(Jn))return!1;Jn={role:t,refused:e};try{localStorage.setItem(Mc,n)}catch{}
return!0}function Lc(t){t&&t!==Jn.role&&document.dispatchEvent(new CustomEvent("other-role"))}var Mc,Tc,Jn,Xn,
ft,Oc,St=$(()=>{Qr();Mc="flangebook.rights",Tc={role:"owner",refused:{}},Jn=J$();Xn=()=>Jn.role,ft=t=>!Object.
hasOwn(Jn.refused,t);Oc=t=>Jn.refused[t]??"owner"});async function M(t,e,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return Ec(t,e,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function Ro(t,e,n,s,o=2e4){
return Ec("POST",t,e,{type:n,signal:s,timeout:o})}async function Ec(t,e,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let h=AbortSignal.
timeout(l),p=performance.now(),u;try{u=await fetch(`/api/v1${e}`,{method:t,headers:c,body:n,signal:r?AbortSignal.
any([r,h]):h,cache:"no-store"})}catch(g){throw r?.aborted?g:new j}if(Lc(u.headers.get("Flangebook-Role")),!u.ok&&
u.status!==304)throw await ti(u,p);let m=X$.includes(u.status)?null:await Z$(u,r);return{status:u.status,body:m,
etag:u.headers.get("ETag"),at:eb(u)}}async function Z$(t,e){try{return await t.json()}catch(n){throw e?.aborted?
n:new j}}async function ti(t,e=1/0){let n=await t.json().catch(()=>null);if(!n?.status)throw new j;let s=new O(
n);return Q$(s,e),s}function Q$({status:t,errors:e},n){t===401&&e.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:e.pairing[0],asked:n}})),t===403&&e.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function Nc(t,e,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${t}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(e),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await ti(c);for await(let h of tb(c.body,l)){let p=JSON.
parse(h);if(p.problem)throw new O(p.problem);if(!p.progress)return p;s(p.progress)}throw new j}catch(c){throw n.
aborted||c instanceof O?c:new j}finally{clearTimeout(r)}}async function*tb(t,e){let n=t.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;e();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function Bc(t,e,n){let s;try{let a=await fetch(`/a\
pi/v1${t}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(e),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await ti(a);s=await a.blob()}catch(a){throw a instanceof O?a:new j}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var O,j,X,X$,eb,F=$(()=>{St();O=class extends Error{constructor(e){super(e.detail||e.title),this.
status=e.status,this.title=e.title,this.errors=e.errors??{},this.outline=e.outline??null}},j=class extends Error{constructor(){
super("The shop's server does not answer.")}},X=t=>t instanceof Error?t.message:String(t);X$=[204,304];eb=t=>new Date(
t.headers.get("Date")??Date.now()).toISOString()});function nb(){return Cc||(Cc=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function sb(){return Pc||
(Pc=["advance","continue","continuePrimaryKey"].map(t=>IDBCursor.prototype[t]))}function ob(t){let e=new Promise(
(n,s)=>{let o=()=>{t.removeEventListener("success",a),t.removeEventListener("error",r)},a=()=>{n(hn(t.result)),
o()},r=()=>{s(t.error),o()};t.addEventListener("success",a),t.addEventListener("error",r)});return Io.set(e,t),
e}function ab(t){if(oi.has(t))return;let e=new Promise((n,s)=>{let o=()=>{t.removeEventListener("complete",a),
t.removeEventListener("error",r),t.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(t.error||new DOMException(
"AbortError","AbortError")),o()};t.addEventListener("complete",a),t.addEventListener("error",r),t.addEventListener(
"abort",r)});oi.set(t,e)}function Dc(t){ai=t(ai)}function rb(t){return sb().includes(t)?function(...e){return t.
apply(ri(this),e),hn(this.request)}:function(...e){return hn(t.apply(ri(this),e))}}function ib(t){return typeof t==
"function"?rb(t):(t instanceof IDBTransaction&&ab(t),si(t,nb())?new Proxy(t,ai):t)}function hn(t){if(t instanceof
IDBRequest)return ob(t);if(ei.has(t))return ei.get(t);let e=ib(t);return Object.is(e,t)||(ei.set(t,e),Io.set(e,
t)),e}function Fc(t,e,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(t,e),l=hn(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(hn(r.result),c.oldVersion,c.newVersion,hn(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",h=>o(h.oldVersion,h.newVersion,h))}).catch(()=>{}),l}function Rc(t,e){if(!(t instanceof IDBDatabase&&
!(e in t)&&typeof e=="string"))return;if(ni[e])return ni[e];let n=e.replace(/FromIndex$/,""),s=e!==n,o=cb.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||lb.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),h=c.store;return s&&(h=h.index(l.shift())),(await Promise.all([h[n](...l),
o&&c.done]))[0]};return ni[e]=a}async function*pb(...t){let e=this;if(e instanceof IDBCursor||(e=await e.openCursor(
...t)),!e)return;e=e;let n=new Proxy(e,hb);for(jc.set(n,e),Io.set(n,ri(e));e;)yield n,e=await(ii.get(n)||e.continue()),
ii.delete(n)}function Wc(t,e){return e===Symbol.asyncIterator&&si(t,[IDBIndex,IDBObjectStore,IDBCursor])||e===
"iterate"&&si(t,[IDBIndex,IDBObjectStore])}var si,Cc,Pc,oi,ei,Io,ai,ri,lb,cb,ni,db,Ic,ii,jc,hb,Hc=$(()=>{si=(t,e)=>e.
some(n=>t instanceof n);oi=new WeakMap,ei=new WeakMap,Io=new WeakMap;ai={get(t,e,n){if(t instanceof IDBTransaction){
if(e==="done")return oi.get(t);if(e==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return hn(t[e])},set(t,e,n){return t[e]=n,!0},has(t,e){return t instanceof IDBTransaction&&(e==="done"||e==="s\
tore")?!0:e in t}};ri=t=>Io.get(t);lb=["get","getKey","getAll","getAllKeys","count"],cb=["put","add","delete",
"clear"],ni={};Dc(t=>({...t,get:(e,n,s)=>Rc(e,n)||t.get(e,n,s),has:(e,n)=>!!Rc(e,n)||t.has(e,n)}));db=["advanc\
e","continue","continuePrimaryKey"],Ic={},ii=new WeakMap,jc=new WeakMap,hb={get(t,e){if(!db.includes(e))return t[e];
let n=Ic[e];return n||(n=Ic[e]=function(...s){ii.set(this,jc.get(this)[e](...s))}),n}};Dc(t=>({...t,get(e,n,s){
return Wc(e,n)?pb:t.get(e,n,s)},has(e,n){return Wc(e,n)||t.has(e,n)}}))});function li(){return Zn??=Fc("flangebook",ub,{upgrade:(t,e,n,s)=>fb(t,e,s),blocking:mb,terminated:ci}).catch(t=>{
throw Zn=void 0,t}),Zn}function ci(){Zn=void 0}async function mb(){(await Zn)?.close(),Zn=void 0}async function fb(t,e,n){
e<1&&(t.createObjectStore("cards",{keyPath:"code"}),t.createObjectStore("list",{keyPath:"code"}),t.createObjectStore(
"meta"),t.createObjectStore("outbox",{keyPath:"id"})),e<2&&(t.createObjectStore("sent",{keyPath:"id"}),t.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),e===1&&await gb(n))}async function gb(t){
let e=t.objectStore("outbox"),s=(await e.getAll()).sort((a,r)=>a.queued_at<r.queued_at?-1:1),o=0;for(let{trial:a,
...r}of s)e.put({...r,kind:"trial",body:a,number:++o});t.objectStore("meta").put(o,"number"),t.objectStore("me\
ta").delete("cursor")}function $b(t){return t instanceof DOMException?t.name==="QuotaExceededError"?"This devi\
ce is full: free some room on it.":"This browser lets nothing be kept here, as private windows do.":t instanceof
Error?t.message:String(t)}var ub,Zn,Wo,di=$(()=>{Hc();ub=2;Wo=class extends Error{constructor(e){super($b(e))}}});async function Qn(t,e,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${t}`,{signal:AbortSignal.timeout(e)},o)}catch(a){if(s)throw a;return n()}}var Do=$(()=>{});function qt(t,e){return zc(Gc,n=>Vc(t,"readonly",{},e,n))}function Lt(t,e,{patience:n=Gc,durability:s="relaxed"}={}){
return zc(n,o=>Qn("writer",n/2,()=>Vc(t,"readwrite",{durability:s},e,o)))}async function Vc(t,e,n,s,o){let a=await _b(
t,e,n);!o.now&&e==="readwrite"&&(a.abort(),await a.done),o.transaction=a,Fo.add(a),a.done.catch(()=>{}).finally(
()=>Fo.delete(a));try{let r=await s(wb(a));return e==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw pi(
a),a.error??r}}async function _b(t,e,n){try{return(await li()).transaction(t,e,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return ci(),(await li()).transaction(t,e,n)}}function pi(t){try{t.abort()}catch{}}
async function zc(t,e){let n={now:!0},s=e(n);s.then(()=>qc(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new zt),pn?bb:t)});try{return await Promise.race([s,a])}catch(r){throw r instanceof zt&&yb(n),r}finally{
clearTimeout(o)}}function yb(t){t.now=!1,t.transaction?.mode==="readwrite"&&pi(t.transaction),qc(!0)}function qc(t){
t!==pn&&(pn=t,document.documentElement.dataset.storage=pn?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:pn}})))}var Gc,bb,zt,Fo,pn,hi,Gs,wb,Uc,Re=$(()=>{di();Do();Gc=1e3,bb=100,zt=class extends Error{constructor(){
super("This device's storage does not answer.")}},Fo=new Set,pn=!1,hi=!1,Gs=()=>pn;wb=t=>({store:Uc(t.objectStore(
t.objectStoreNames[0])),objectStore:e=>Uc(t.objectStore(e))}),Uc=t=>new Proxy(t,{get:(e,n)=>typeof t[n]=="func\
tion"?(...s)=>{let o=t[n](...s);return o?.catch?.(()=>{}),o}:t[n]});addEventListener("pagehide",()=>{hi||=Fo.size>
0;for(let t of Fo)pi(t)});addEventListener("pageshow",t=>{t.persisted&&hi&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:pn}})),hi=!1})});function Wt(){if(crypto.randomUUID)return crypto.randomUUID();let t=crypto.getRandomValues(new Uint8Array(16));
return t[6]=t[6]&15|64,t[8]=t[8]&63|128,[...t].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function Yc(t){try{return await Lt(["outbox","meta"],e=>xb(e,t),Kc)}catch(e){throw new Wo(
e)}}async function xb(t,e){let[n,s]=[t.objectStore("outbox"),t.objectStore("meta")],o=(await n.getAll()).sort(
ui).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...e,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function Jc(){return Lt("meta",async({store:t})=>{let e=(await t.get(
"number")??0)+1;return t.put(e,"number"),e})}async function Dt(){return(await qt("outbox",({store:t})=>t.getAll())).
sort(ui)}async function un(t){return(await Dt()).filter(e=>e.code===t)}async function Vs(t){return qt("outbox",
({store:e})=>e.get(t))}async function jo(t){return qt("sent",({store:e})=>e.get(t))}async function mn(t,e){await Lt(
"outbox",async({store:n})=>{let s=await n.get(t);s&&n.put({...s,...e})},Kc)}async function Ho(t){let e=await Vs(
t);await Lt("outbox",({store:n})=>n.delete(t)),e?.after&&await Uo(t,e.after)}async function Uo(t,e,n=()=>!0){for(let s of await Dt())
s.after===t&&n(s)&&await mn(s.id,{after:e})}async function zs(t,e,n=!1){let{again:s,refused:o,late:a,missing:r,
parked:l,...c}=t;try{await Lt(["outbox","sent"],h=>{h.objectStore("sent").put({...c,proposed:n,sent_at:t.sent_at??
e}),h.objectStore("outbox").delete(t.id)})}catch{await Lt("outbox",({store:h})=>h.delete(t.id))}}async function Zc(t){
let e=Date.parse(t)-vb*kb;await Lt("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at??
"")<e&&n.delete(s.id)})}async function Qc(t){let[e,n]=[t.objectStore("outbox"),t.objectStore("sent")],s=(await n.
getAll()).sort(ui),o=await e.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...h}=r;a.has(
r.id)||e.put({...h,parked:c,again:!0,number:l-s.length})}),n.clear()}var vb,kb,Kc,ui,Xc,Et=$(()=>{di();Re();vb=
90,kb=864e5,Kc={durability:"strict"};ui=(t,e)=>t.number-e.number;Xc=t=>mn(t,{refused:void 0})});async function te(t){return qt("cards",({store:e})=>e.get(t))}async function Ie(){return(await qt("list",({store:e})=>e.
getAll())).sort((e,n)=>e.updated_at<n.updated_at?1:-1)}async function ie(t){return Lt(["cards","list"],async e=>{
let n=await e.objectStore("cards").get(t.code);return n&&Tb(t,n)?n:(td(e,t),t)})}function td(t,e){t.objectStore(
"cards").put(e),t.objectStore("list").put(Mb(e))}function Mb(t){let{code:e,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:h,trials_total:p,proposals:u}=t,{metal:m,thickness_mm:g}=h,b=u?.length??0;
return{code:e,title:n,note:s,metal:m,thickness_mm:g,bends:h.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:p,archived:c,settle:b}}async function ed(){return qt("list",({store:t})=>t.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function nd(){let t=["cards","list","meta","sent","lost"];await Lt(t,e=>{for(let n of t)
e.objectStore(n).clear()})}async function Go(){return qt("meta",({store:t})=>t.get("shop"))}async function sd(){
return qt("meta",({store:t})=>t.get("cursor"))}async function od(t){let e=t.reset||await Ob()?["outbox","sent",
"lost"]:[];await Lt(["cards","list","meta",...e],async n=>{t.reset&&(await Ab(n),await Qc(n));let s=new Set(e.
length?await n.objectStore("lost").getAllKeys():[]);for(let a of t.cards)td(n,a),s.has(a.code)&&await Lb(n,a);
let o=n.objectStore("meta");t.shop&&o.put(t.shop,"shop"),o.put(t.cursor,"cursor"),o.put(!!t.more,"more")},{patience:Sb})}
async function Ab(t){let[e,n]=[t.objectStore("cards"),t.objectStore("lost")];for(let s of await e.getAll())n.put(
s);e.clear(),t.objectStore("list").clear()}async function Lb(t,e){let n=await t.objectStore("lost").get(e.code);
t.objectStore("lost").delete(e.code);let s=new Set(e.trials.map(r=>r.id)),o=new Set(await t.objectStore("outbo\
x").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>t.objectStore("outbox").put(
ad(e.code,r,l-a.length)))}function ad(t,{number:e,received_at:n,correction:s,device:o,...a},r){return{id:a.id,
kind:"trial",code:t,body:a,number:r,queued_at:n,again:!0}}async function rd(t){await Lt("outbox",({store:e})=>{
t.trials.forEach((n,s)=>{e.put({...ad(t.code,n,s-t.trials.length),missing:!0})})})}async function Vo(){return qt(
["meta","lost"],async t=>await t.objectStore("meta").get("more")?[]:t.objectStore("lost").getAll())}async function zo(t){
await Lt("lost",({store:e})=>e.delete(t))}var Sb,Tb,Ob,Nt=$(()=>{Et();Re();Sb=2e4;Tb=(t,e)=>t.revision<e.revision||
t.revision===e.revision&&(t.trials_total<e.trials_total||t.proposals_total<e.proposals_total);Ob=async()=>await qt(
"lost",({store:t})=>t.count())>0});function Eb(){try{return{...id,...JSON.parse(localStorage.getItem(ld)??"{}")}}catch{return{...id}}}function P(){
return fn}function We(t){fn={...fn,...t};try{localStorage.setItem(ld,JSON.stringify(fn))}catch{}qs();for(let e of mi)
e(fn)}function wt(t,e){mi.add(t),e?.addEventListener("abort",()=>mi.delete(t))}function qs(){let t=cd.matches?
"shop":"day";document.documentElement.dataset.theme=fn.theme==="system"?t:fn.theme}var ld,id,mi,fn,cd,st=$(()=>{
ld="flangebook.settings",id={units:"mm",inches:"decimal",theme:"system",name:"",paper:"A4"},mi=new Set,fn=Eb();
cd=matchMedia("(prefers-color-scheme: dark)");cd.addEventListener("change",qs)});function ud(t){return Ks!==null&&t!=="pair"&&!(hd?.labels_open&&Nb.includes(t))}async function gn(t){fi+=1;try{
let{body:e}=await M("GET","/me",{signal:t,timeout:4e3});return hd=e,Ac(e)&&document.dispatchEvent(new CustomEvent(
"rights")),e}finally{fi-=1}}async function md(t){Ks!==t&&(Ks=t,await Promise.all([gn().catch(()=>null),nd().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function fd(t,e){let{body:n}=await M(
"POST","/pair",{body:{code:t,name:e}});return P().name||We({name:n.name}),Ks=null,pd=performance.now(),await gn(),
n}async function gd(){await M("POST","/leave",{}),await md("unknown")}function $d(){document.addEventListener(
"not-paired",t=>{let{why:e,asked:n}=t.detail;n>pd&&md(e)}),document.addEventListener("other-role",dd),Xn()!=="\
owner"&&dd()}function dd(){fi||gn().catch(()=>null)}var Kt,Nb,hd,Ks,pd,fi,De,qo,$n=$(()=>{F();St();Nt();st();Kt=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Bench\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},Nb=["\
card","step"],hd=null,Ks=null,pd=-1/0,fi=0,De=()=>Ks;qo=t=>X(t)});function Md(t,e){if(!_i(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return wd!==
void 0?wd.createHTML(e):e}function yn(t,e,n=t,s){if(e===le)return e;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=Xs(e)?
void 0:e._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(t),o._$AT(t,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(e=yn(t,o._$AS(t,e.values),o,s)),e}var $i,bd,Ko,wd,bi,
ye,wi,Bb,_n,Js,Xs,_i,Sd,gi,Ys,_d,yd,bn,vd,kd,Td,yi,i,x,QS,le,d,xd,wn,Od,Zs,Yo,ts,vn,Jo,Xo,Zo,Qo,Ad,Cb,Fe,y=$(()=>{
$i=globalThis,bd=t=>t,Ko=$i.trustedTypes,wd=Ko?Ko.createPolicy("lit-html",{createHTML:t=>t}):void 0,bi="$lit$",
ye=`lit$${Math.random().toFixed(9).slice(2)}$`,wi="?"+ye,Bb=`<${wi}>`,_n=document,Js=()=>_n.createComment(""),
Xs=t=>t===null||typeof t!="object"&&typeof t!="function",_i=Array.isArray,Sd=t=>_i(t)||typeof t?.[Symbol.iterator]==
"function",gi=`[ 	
\f\r]`,Ys=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,_d=/-->/g,yd=/>/g,bn=RegExp(`>|${gi}(?:([^\\s"'\
>=/]+)(${gi}*=${gi}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),vd=/'/g,kd=/"/g,Td=/^(?:script|style|textarea|title)$/i,yi=t=>(e,...n)=>({_$litType$:t,
strings:e,values:n}),i=yi(1),x=yi(2),QS=yi(3),le=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),xd=new WeakMap,
wn=_n.createTreeWalker(_n,129);Od=(t,e)=>{let n=t.length-1,s=[],o,a=e===2?"<svg>":e===3?"<math>":"",r=Ys;for(let l=0;l<
n;l++){let c=t[l],h,p,u=-1,m=0;for(;m<c.length&&(r.lastIndex=m,p=r.exec(c),p!==null);)m=r.lastIndex,r===Ys?p[1]===
"!--"?r=_d:p[1]!==void 0?r=yd:p[2]!==void 0?(Td.test(p[2])&&(o=RegExp("</"+p[2],"g")),r=bn):p[3]!==void 0&&(r=
bn):r===bn?p[0]===">"?(r=o??Ys,u=-1):p[1]===void 0?u=-2:(u=r.lastIndex-p[2].length,h=p[1],r=p[3]===void 0?bn:p[3]===
'"'?kd:vd):r===kd||r===vd?r=bn:r===_d||r===yd?r=Ys:(r=bn,o=void 0);let g=r===bn&&t[l+1].startsWith("/>")?" ":"";
a+=r===Ys?c+Bb:u>=0?(s.push(h),c.slice(0,u)+bi+c.slice(u)+ye+g):c+ye+(u===-2?l:g)}return[Md(t,a+(t[n]||"<?>")+
(e===2?"</svg>":e===3?"</math>":"")),s]},Zs=class t{constructor({strings:e,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=e.length-1,c=this.parts,[h,p]=Od(e,n);if(this.el=t.createElement(h,s),wn.currentNode=this.el.content,
n===2||n===3){let u=this.el.content.firstChild;u.replaceWith(...u.childNodes)}for(;(o=wn.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let u of o.getAttributeNames())if(u.endsWith(bi)){let m=p[r++],
g=o.getAttribute(u).split(ye),b=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:b[2],strings:g,ctor:b[1]===
"."?Jo:b[1]==="?"?Xo:b[1]==="@"?Zo:vn}),o.removeAttribute(u)}else u.startsWith(ye)&&(c.push({type:6,index:a}),
o.removeAttribute(u));if(Td.test(o.tagName)){let u=o.textContent.split(ye),m=u.length-1;if(m>0){o.textContent=
Ko?Ko.emptyScript:"";for(let g=0;g<m;g++)o.append(u[g],Js()),wn.nextNode(),c.push({type:2,index:++a});o.append(
u[m],Js())}}}else if(o.nodeType===8)if(o.data===wi)c.push({type:2,index:a});else{let u=-1;for(;(u=o.data.indexOf(
ye,u+1))!==-1;)c.push({type:7,index:a}),u+=ye.length-1}a++}}static createElement(e,n){let s=_n.createElement("\
template");return s.innerHTML=e,s}};Yo=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:s}=this.
_$AD,o=(e?.creationScope??_n).importNode(n,!0);wn.currentNode=o;let a=wn.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let h;c.type===2?h=new ts(a,a.nextSibling,this,e):c.type===1?h=new c.ctor(a,c.name,c.strings,this,
e):c.type===6&&(h=new Qo(a,this,e)),this._$AV.push(h),c=s[++l]}r!==c?.index&&(a=wn.nextNode(),r++)}return wn.currentNode=
_n,o}p(e){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(e,s,n),n+=s.strings.length-2):
s._$AI(e[n])),n++}},ts=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,s,o){this.type=2,this.
_$AH=d,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=yn(this,e,n),Xs(e)?e===d||e==null||e===""?(this.
_$AH!==d&&this._$AR(),this._$AH=d):e!==this._$AH&&e!==le&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==
void 0?this.T(e):Sd(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this.
_$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==d&&Xs(this._$AH)?this._$AA.nextSibling.data=e:this.
T(_n.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:s}=e,o=typeof s=="number"?this._$AC(e):(s.el===
void 0&&(s.el=Zs.createElement(Md(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new Yo(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(e){let n=xd.get(e.strings);return n===void 0&&xd.
set(e.strings,n=new Zs(e)),n}k(e){_i(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of e)
o===n.length?n.push(s=new t(this.O(Js()),this.O(Js()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){
let s=bd(e).nextSibling;bd(e).remove(),e=s}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},
vn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,s,o,a){this.
type=1,this._$AH=d,this._$AN=void 0,this.element=e,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=d}_$AI(e,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)e=yn(this,e,n,0),r=!Xs(e)||e!==this._$AH&&e!==le,r&&(this._$AH=e);else{let l=e,c,h;
for(e=a[0],c=0;c<a.length-1;c++)h=yn(this,l[s+c],n,c),h===le&&(h=this._$AH[c]),r||=!Xs(h)||h!==this._$AH[c],h===
d?e=d:e!==d&&(e+=(h??"")+a[c+1]),this._$AH[c]=h}r&&!o&&this.j(e)}j(e){e===d?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,e??"")}},Jo=class extends vn{constructor(){super(...arguments),this.
type=3}j(e){this.element[this.name]=e===d?void 0:e}},Xo=class extends vn{constructor(){super(...arguments),this.
type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==d)}},Zo=class extends vn{constructor(e,n,s,o,a){super(
e,n,s,o,a),this.type=5}_$AI(e,n=this){if((e=yn(this,e,n,0)??d)===le)return;let s=this._$AH,o=e===d&&s!==d||e.capture!==
s.capture||e.once!==s.once||e.passive!==s.passive,a=e!==d&&(s===d||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},Qo=class{constructor(e,n,s){
this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(e){
yn(this,e)}},Ad={M:bi,P:ye,A:wi,C:1,L:Od,R:Yo,D:Sd,V:yn,I:ts,H:vn,N:Xo,U:Zo,B:Jo,F:Qo},Cb=$i.litHtmlPolyfillSupport;
Cb?.(Zs,ts),($i.litHtmlVersions??=[]).push("3.3.3");Fe=(t,e,n)=>{let s=n?.renderBefore??e,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new ts(e.insertBefore(Js(),a),a,void 0,n??{})}return o._$AI(
t),o}});function es(t,e=Nd){return Object.fromEntries(e.filter(n=>t[n]!==void 0).map(n=>[n,t[n]]))}function Ld(t){return Array.
isArray(t)?[...t].sort((e,n)=>e.step-n.step).map(({step:e,set_angle_deg:n,punch_depth_mm:s})=>[e,n??null,s??null]):
t??null}function ns(t,e,n){let s=[];for(let[l,c]of Pb){let[h,p]=[t[l],e[l]];h!==void 0&&!ta(h,n[l])&&s.push({name:l,
label:c,shop:n[l],yours:h,before:p})}if(!t.settings)return s;let[o,a,r]=[t.settings,e.settings??[],n.settings].
map(Bd);for(let l of new Set([...o.keys(),...a.keys()])){let[c,h,p]=[o.get(l),a.get(l),r.get(l)];Ed(c,h)||Ed(c,
p)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,shop:p,yours:c,before:h})}return s}function Cd(t,e,n){
let s={},o=t.filter(l=>e[l.name]==="yours");for(let l of o)l.name.startsWith("settings ")||(s[l.name]=l.yours);
let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)return s;let r=Bd(n.settings);for(let l of a){let c=Number(
l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(c)}return{...s,settings:[...r.values()]}}var Nd,ta,ea,
vi,Pb,Bd,Ed,ss=$(()=>{Nd=["title","note","archived","settings"];ta=(t,e)=>JSON.stringify(Ld(t))===JSON.stringify(
Ld(e));ea=(t,e)=>es(t,Nd.filter(n=>n in t&&!ta(t[n],e[n]))),vi=({before:t={}},e)=>Object.keys(t).every(n=>ta(t[n],
e[n])),Pb=[["title","Title"],["note","Note"],["archived","In use"]];Bd=t=>new Map(t.map(e=>[e.step,e])),Ed=(t,e)=>ta(
t?[t]:[],e?[e]:[])});async function na(t){ki.add(t.id);try{return await Pd(t)}finally{ki.delete(t.id)}}async function Pd(t){let e;try{
e=await Yc(t)}catch(n){let s=await Db(t);return s||(await Wb(n),Pd(t))}try{return await Id(e,4e3)??{where:"her\
e",answer:null}}catch(n){let s=n instanceof j||n instanceof zt;if(!s&&Si(n))throw await Ho(e.id),n;return{where:"\
here",answer:null,late:s?"":await jd(e,n)}}}async function Wb(t){xi.add(t),document.dispatchEvent(new CustomEvent(
"held")),await new Promise(e=>{setTimeout(e,Rb),document.addEventListener("storage",e,{once:!0})}),xi.delete(t),
document.dispatchEvent(new CustomEvent("held"))}async function Db(t){try{let{body:e}=await Dd({...t,number:0,queued_at:""},
8e3);return{where:"shop",answer:e}}catch(e){if(e instanceof j||!Si(e))return null;throw e}}async function Rd(){
return Qn("outbox",Ib,Fb)}async function Fb(){let t=0;for(let{id:e}of await Dt()){if(ki.has(e))continue;let n=await Vs(
e);if(!(!n||!await jb(n)))try{await Id(n,8e3)&&(t+=1)}catch(s){if(s instanceof j)break;Si(s)?await mn(n.id,{refused:s.
message,missing:s.status===404}):await jd(n,s)}}return{sent:t,left:(await Dt()).length}}async function Id(t,e){
if(!await Hb(t))return null;let n=await Vs(t.id)??t;try{let s=await(n.parked?Fd(n,e):Dd(n,e));return await Wd(
n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof O&&s.status===412)||n.parked)throw s;
return Ub(n,e)}}async function Hb({id:t,code:e,after:n,before:s,parked:o}){if(!n||o)return!0;if(await Vs(n))return!1;
if(!(await jo(n))?.proposed)return!0;let a=await te(e);return!a||a.proposals?.some(r=>r.id===n)?!1:(await mn(t,
vi({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function Ub(t,e){if(t.body.part)throw new O(Gb);
let{body:n,at:s}=await M("GET",`/cards/${t.code}`,{timeout:e});await ie(n);let o=(t.body.settles??[]).some(l=>n.
proposals.some(c=>c.id===l));if(o||!ns(t.body,t.before??{},n).length)return await zs(t,s),await Uo(t.id,n.revision_id,
l=>vi(l,n)),{where:o?"settle":"shop",answer:n};let a={...t,parked:!0};await mn(t.id,{parked:!0});let r=await Fd(
a,e);return await Wd(a,r),{where:"settle",answer:r.body}}async function Wd(t,{body:e,at:n}){if(t.kind!=="trial"){
let s=e;await ie(s).catch(()=>{}),!t.parked&&t.after&&s.revision_id===t.after&&await Uo(t.id,t.after)}await zs(
t,n,!!t.parked),await Zc(n)}function Dd({kind:t,code:e,id:n,body:s,after:o,etag:a,missing:r},l){return t==="tr\
ial"?M("POST",`/cards/${e}/trials`,{body:r?{...s,again:!0}:s,timeout:l}):M("PUT",`/cards/${e}`,{body:{...s,id:n,
...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function Fd({id:t,code:e,body:n,before:s,revision:o,queued_at:a},r){
let{reason:l,by:c,settles:h,...p}=n,u={...l?{reason:l}:{},...c?{by:c}:{}};return M("POST",`/cards/${e}/proposa\
ls`,{body:{id:t,changes:p,before:s,revision:o,made_at:a,...u},timeout:r})}async function jd({id:t},e){if(!(e instanceof
O)||e.status<500)return"";let n=e.status===507?"The disk of the shop’s server is full: make room on it":e.title;
return await mn(t,{late:n}).catch(()=>{}),n}function Si(t){if(!(t instanceof O))throw t;return t.status<500&&![
401,408,429].includes(t.status)}var Rb,Ib,ki,xi,Qs,jb,Gb,os=$(()=>{F();ss();Et();Nt();Re();Do();Rb=3e3,Ib=15e3;
ki=new Set;xi=new Set,Qs=()=>[...xi].at(-1)?.message??"";jb=async({refused:t,again:e,missing:n,code:s})=>!t||!!(e&&
n&&await te(s));Gb={title:"Changed meanwhile",status:412,detail:"The part was changed here, the shop was put b\
ack to an earlier day, and the card was changed again since. Open the card and make the change anew."}});function Yt(){return je}async function sa(t){let e=await Dt().catch(()=>[]),n=await Vo().catch(()=>[]);je={...je,
...t,waiting:e.length,words:Mi(e),late:e.find(s=>s.late&&!s.refused)?.late??"",settle:await zb(e).catch(()=>[]),
lost:n.length,refused:e.filter(s=>s.refused).length},document.documentElement.dataset.reached=String(je.reached),
document.documentElement.dataset.settle=String(je.settle.length),document.documentElement.dataset.waiting=String(
je.waiting),document.dispatchEvent(new CustomEvent("sync",{detail:je}))}function Mi(t){let n=["trial","note","\
edit"].map(s=>({kind:s,many:t.filter(o=>o.kind===s).length})).filter(({many:s})=>s).map(({kind:s,many:o})=>`${o}\
 ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):`${n.slice(0,-1).join(", ")} and ${n.at(-1)}`}async function zb(t){
let e=(await ed()).flatMap(({code:n,settle:s})=>Array(s).fill(n));for(let n of t)for(let s of n.body.settles??
[])e.includes(n.code)&&e.splice(e.indexOf(n.code),1);return e}function He(t,e){let n=t||!!(e&&!(e instanceof j));
n!==je.reached&&sa({reached:n})}function as(){return sa({})}function H(){return to?(Ti=!0,to):(to=qb().finally(
()=>to=void 0),to)}async function qb(){do Ti=!1,await Kb();while(Ti)}async function Kb(){try{await Hd(),(await Rd()).
sent>0&&await Hd(),await sa({reached:!0,at:new Date().toISOString(),unkept:!1})}catch(t){await sa(t instanceof
j?{reached:!1}:t instanceof O?{reached:!0}:{unkept:!0}),!(t instanceof j||t instanceof O&&t.status===401)&&!(t instanceof
zt)&&console.warn("changes feed:",t)}}async function Hd(){for(;await Qn("feed",Vb,Yb););}async function Yb(){let t=await sd()??
"",{body:e}=await M("GET",`/changes?since=${encodeURIComponent(t)}`,{timeout:15e3});return await od(e),e.more}
function Ud(){H(),addEventListener("online",()=>H()),addEventListener("offline",()=>H()),document.addEventListener(
"visibilitychange",()=>document.visibilityState==="visible"&&H()),setInterval(()=>document.visibilityState==="\
visible"&&H(),1e4)}var Vb,je,to,Ti,yt=$(()=>{F();Et();os();Re();Nt();Do();Vb=3e3,je={reached:null,waiting:0,words:"",
late:"",refused:0,settle:[],lost:0,at:null,unkept:!1},Ti=!1});function Ue(){let t=location.pathname,e=n=>n==="/"?t==="/"||t==="/scan"||/^\/c\//i.test(t):t.startsWith(n);Fe(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${Xb}<span>Flangebook</span></a>
        ${De()===null?i`<nav aria-label="Main">
                ${Jb.filter(([n])=>_e(n)).map(([n,s])=>i`<a href=${n} aria-current=${e(n)?"page":"false"}>${s}</a>`)}
              </nav>`:d}
      </div>
      ${Zb()}${Qb()}${De()===null?tw():d}`,document.getElementById("masthead"))}function Qb(){return Qs()?i`<p class="standing" data-test="held">
      ${Qs()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      It is saved by itself then.
    </p>`:Gs()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${Yt().reached===!1?d:"Cards come from the shop."}
  </p>`:d}function tw(){let{reached:t,waiting:e,words:n,late:s,refused:o,settle:a,lost:r}=Yt(),l=a.filter(m=>_e(
`/c/${m}/settle`)),c=s?` ${s}.`:"",h=e?`${n} ${e===1?"waits":"wait"} to be sent.${c}`:"",p=Gs()?"":"Cards on t\
his device still open.",u=t===!1?`Not connected to the shop. ${p}`:"";return!u&&!h&&!l.length&&!r?d:i`<p class="standing" data-test="standing">
    ${u} ${h} ${o?i`<a href="/settings">${o} refused: look</a>`:d}
    ${l.length?i`<a href="/c/${l[0]}/settle" data-test="settle-count">${l.length} to settle</a>`:d}
    ${r?i`<a href="/settings" data-test="lost-count"
            >${r===1?"1 card is":`${r} cards are`} not in the shop any more: look</a
          >`:d}
  </p>`}var Jb,Xb,Zb,Oi=$(()=>{y();$n();St();os();Re();yt();Jb=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];Xb=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,Zb=()=>isSecureContext?d:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});function no(t){return t.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function W(t){
return t.length>3?`${t.slice(0,3)}-${t.slice(3)}`:t}function pt(t){let e=no(t),n=[...e].filter(s=>!eo.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:e,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return e.length>7?{code:e,whole:!1,
fault:`A card code has seven characters. This one has ${e.length}.`}:e.length<7?{code:e,whole:!1,fault:""}:Vd(
e.slice(0,-1))!==e.at(-1)?{code:e,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:e,whole:!0,fault:""}}function Ai(){let t=crypto.getRandomValues(
new Uint8Array(6)),e=Array.from(t,n=>eo[n%eo.length]).join("");return e+Vd(e)}function Vd(t){let e=0,n=2;for(let s of t)
e^=Gd(n,eo.indexOf(s)),n=Gd(n,2);return eo[e]}function Gd(t,e){let n=0;for(let s=e,o=t;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var eo,dt=$(()=>{eo="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});function oa(t){let e=Xn()==="bench"?"This device is a bench screen":"This device is an operator's",n=Oc(t)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${e}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var R,ot,rt=$(()=>{y();St();R=(t,e,n=d)=>ft(t)?e:n,ot=(t,e,n=d)=>_e(t)?e:n});function Ge(t){if(t instanceof zt)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${qd}
    </div>`;if(t instanceof j)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let e=t instanceof O?t.message:String(t);return t instanceof O||console.error(t),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${e}
  </div>`}var Tt,kt,zd,qd,Bt=$(()=>{y();F();Re();Tt=t=>i`<p class="state" data-test="loading">${t}</p>`,kt=(t,e=d)=>i`<div class="state" data-test="empty">
    <h1>${t}</h1>
    ${e}
  </div>`,zd=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${Gs()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${qd}
  </div>`,qd=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function gt(t,{replace:e=!1}={}){nw()&&(history[e?"replaceState":"pushState"](null,"",t),ve(!0))}function ce(t){
so=t}function nw(){let t=so?.();return!t||confirm(t)}function Yd(){so?.()?Ue():ve()}async function ve(t=!1){Li.
abort(),Li=new AbortController,so=null;let{signal:e}=Li,n=document.documentElement;delete n.dataset.ready;let s=ow(
Us(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
Ue();let o=l=>{clearTimeout(a),e.aborted||Fe(l,aa())};Fe(i``,aa());let a=setTimeout(()=>o(zd()),ew);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!ft(r)){o(oa(r)),n.dataset.ready="n\
ot-yours";return}try{let l=await Kd[s.route.name]();if(e.aborted)return;scrollTo(0,0),await l.show({params:sw(
s.params),query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{
e.aborted||(n.dataset.ready=s.route.name)},signal:e})}catch(l){if(e.aborted)return;o(Ge(l)),n.dataset.ready="f\
ailed"}t&&!e.aborted&&aa().focus({preventScroll:!0})}function ow(t){return t&&ud(t.route.name)?{route:Sc("pair"),
params:{}}:t}function Jd(t){return Kd=t,addEventListener("popstate",()=>ve()),addEventListener("beforeunload",
e=>(Qs()||so?.())&&e.preventDefault()),document.addEventListener("click",e=>{let n=e.target.closest("a");!n||e.
defaultPrevented||e.button!==0||e.ctrlKey||e.metaKey||e.shiftKey||n.target||n.hasAttribute("download")||n.origin!==
location.origin||!Us(n.pathname)||n.hash&&n.pathname===location.pathname||(e.preventDefault(),gt(n.pathname+n.
search+n.hash))}),aa().replaceChildren(),ve()}var ew,Li,so,Kd,aa,sw,Ct=$(()=>{y();Oi();$n();dt();St();Qr();os();
rt();Bt();ew=1e3,Li=new AbortController,so=null,Kd={},aa=()=>document.getElementById("main");sw=t=>t.code?{...t,
code:no(t.code)}:t});var kn,ra,rs,Ei=$(()=>{kn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ra=t=>(...e)=>({
_$litDirective$:t,values:e}),rs=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,s){this._$Ct=e,
this._$AM=n,this._$Ci=s}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}}});var U1,Xd,aw,ia,Ni=$(()=>{y();({I:U1}=Ad),Xd=t=>t.strings===void 0,aw={},ia=(t,e=aw)=>t._$AH=e});var xt,Ve=$(()=>{y();Ei();Ni();xt=ra(class extends rs{constructor(t){if(super(t),t.type!==kn.PROPERTY&&t.type!==
kn.ATTRIBUTE&&t.type!==kn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!Xd(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[
e]){if(e===le||e===d)return e;let n=t.element,s=t.name;if(t.type===kn.PROPERTY){if(e===n[s])return le}else if(t.
type===kn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(s))return le}else if(t.type===kn.ATTRIBUTE&&n.getAttribute(
s)===e+"")return le;return ia(t),e}})});function la(t){return Object.hasOwn(ze,t)?t:void 0}async function lt(t,e){try{return await ca(t,e)}catch(n){let s=n instanceof
j?await Go():void 0;if(!s?.[t])throw n;return{items:s[t],etag:null,kept:!0}}}async function qe(){try{let t=await Go();
if(t||!Yt().unkept)return t}catch{}try{let[{press:t},{items:e}]=await Promise.all([ha(),ca("metals")]);return{
press:t,metals:e}}catch{return}}async function ca(t,e){let{body:n,etag:s}=await M("GET",`/${t}`,{signal:e});return{
items:n[t],etag:s,kept:!1}}async function Zd(t,e,n){await M("PUT",`/${t}`,{body:{[t]:e.map(xn),by:P().name},etag:n})}
async function da(t){try{return await ha(t)}catch(e){let n=e instanceof j?await Go():void 0;if(!n)throw e;return{
press:n.press??null,etag:null,kept:!0}}}async function ha(t){let{body:e,etag:n}=await M("GET","/press",{signal:t});
return{press:e.press,etag:n,kept:!1}}async function Qd(t,e){let n={press:xn(t),by:P().name};return(await M("PU\
T","/press",{body:n,etag:e})).body.press}function xn({outline_mm:t,outlines_mm:e,...n}){return n}function th(t,e){
return JSON.stringify(t&&xn(t))===JSON.stringify(e&&xn(e))}function Ke({tray:t,slot:e}){return!t&&!e?"place no\
t given":[t&&(/^\S{1,4}$/.test(t)?`Tray ${t}`:t),e&&`slot ${e}`].filter(Boolean).join(", ")}var ze,it,is,ut=$(
()=>{F();st();Nt();yt();ze={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",title:"\
Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"Metals"}},
it={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_holders",
metals:"shop.write_metals"};is=(t,e)=>t?.find(n=>n.code===e)?.name??e});function oo(t,e){let s=e.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...es(c.body)}),
t),o=e.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(t.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??t.revision_id,here:o}}async function Sn(t){return oo(t,
await un(t.code).catch(()=>[]))}async function Bi(t){let e=await te(t);return e&&oo(e,(await un(t)).filter(n=>n.
body.settles))}async function ao(t){let e=await te(t);return e&&Sn(e)}async function Ye(t,e,{reason:n="",settles:s=[]}={}){
let o=ea(e,t),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:t};let{name:r}=P(),l=await na(
{id:Wt(),kind:a.every(p=>p==="note")&&!s.length?"note":"edit",code:t.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:es(t,a),after:t.after,etag:t.etag,revision:t.revision}),c=await ao(t.
code).catch(()=>{}),h=l.answer;return{where:l.where,card:c??(h?oo(h,[]):{...t,...o})}}var Je=$(()=>{ss();Et();
os();st();Nt()});function Ci(t){if(t.limits!==void 0)return t.limits;let e=[t,...t.corrections??[]].filter(iw);if(!e.length)return null;
let n=lw(t)+.5,s=Math.max(Math.min(...e.map(r=>r.set_angle_deg)),n),o=e.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function de(t,e){let n=Ci(
t);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=e;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function lw({drawing:t,v_opening_mm:e}){let n=(t?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&e?2*Math.atan(e/2/Math.min(...n))*rw:0}var eh,rw,iw,Tn=$(()=>{eh=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],rw=180/Math.PI;iw=t=>typeof t.set_angle_deg=="number"&&typeof t.punch_depth_mm=="number"});async function he(t,e,n){let s=null,o=await te(t).catch(a=>{s=a});if(!o){await e(await Sn(await cw(t,n,s)),{where:"\
shop"});return}await e(await Sn(o),{where:"device"}),dw(o,e,n)}async function cw(t,e,n){try{return await ke(t,
e)}catch(s){throw s instanceof j&&n instanceof zt?n:s}}async function nh(){try{let t=await Ie();if(t.length||!Yt().
unkept)return{list:t,where:"device"}}catch{}try{let{body:t}=await M("GET","/cards?archived=all&limit=200",{timeout:4e3});
return He(!0),{list:t.cards.map(e=>({...e,note:""})),where:"shop"}}catch(t){return He(!1,t),{list:[],where:"sh\
op"}}}async function dw(t,e,n){try{let s=await ke(t.code,n);!n.aborted&&s.etag!==t.etag&&await e(await Sn(s),{
where:"shop"})}catch{}}async function sh(t,e){if(await te(t).catch(()=>{}))return"device";try{return await ke(
t,e),"shop"}catch(n){if(n instanceof O&&n.status===404)return"nowhere";if(n instanceof j)return"silent";throw n}}
async function ke(t,e){try{let{body:n}=await M("GET",`/cards/${t}`,{signal:e,timeout:4e3});return He(!0),await ie(
n).catch(()=>n)}catch(n){throw e?.aborted||He(!1,n),n}}async function pa(t,e){let{body:n}=await M("PUT",`/card\
s/${t.code}`,{body:e,etag:t.etag,timeout:e.replan?6e4:8e3});return ie(n).catch(()=>n)}function ee(t,e){let n=t.
settings?.find(a=>a.step===e.number),s={set_angle_deg:n?.set_angle_deg??e.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??
e.punch_depth_mm},o=de(e,s);return{...o?s:{set_angle_deg:null,punch_depth_mm:null},firstHit:n||!o?null:e.first_hit??
null,gauge_x_mm:n?.gauge_x_mm??e.gauge_x_mm,fromTrial:!!n,reason:n?.reason??""}}var Pt=$(()=>{F();Je();Tn();Re();
Nt();yt()});function tt(t,e){let n=t.toFixed(e);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(t,e={}){
return t==null?{text:"–",unit:""}:Ft()?P().inches==="fraction"?{text:pw(t/Jt),unit:"in"}:{text:tt(t/Jt,(e.digits??
1)+2),unit:"in"}:{text:tt(t,e.digits??1),unit:"mm"}}function pw(t){let e=Math.round(Math.abs(t)*64),n=e%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(e/64),a=t<0&&e>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function mt(t,{up:e=!1}={}){if(t==null)return{text:"–",unit:""};let n=Ft()?t/ua:t,s=Math.abs(
n)<10?1:0;return{text:tt(e?rh(n,s):n,s),unit:Ft()?"tons":"kN"}}function At(t,{up:e=!1}={}){if(t==null)return{text:"\
–",unit:""};let n=Ft()?t/ua*ah:t,s=Math.abs(n)<20?1:0;return{text:tt(e?rh(n,s):n,s),unit:Ft()?"tons/ft":"kN/\
m"}}function rh(t,e){let n=10**e;return Math.ceil(t*n-1e-9)/n}function S(t,e=1){return t==null?{text:"–",unit:""}:
{text:tt(t,e),unit:"°"}}function ro(t){if(t==null)return{text:"–",unit:""};let e=Ft()?t/hw:t;return{text:tt(
e,e<10?2:1),unit:Ft()?"lb":"kg"}}function xe(t,e){if(/_(low|high)$/.test(t))return xe(t.replace(/_(low|high)$/,
""),e);if(t.endsWith("_kn_per_m"))return At(e);if(t.endsWith("_mm_s")){let s=w(e,{digits:0});return{text:s.text,
unit:`${s.unit}/s`}}if(t.endsWith("_mm"))return w(e,{digits:Math.abs(e)<10?2:1});if(t.endsWith("_kn"))return mt(
e);if(t.endsWith("_deg"))return S(e);if(t.endsWith("_kg"))return ro(e);if(t.endsWith("_percent"))return{text:tt(
e,0),unit:"%"};let n=Math.abs(e)<10?100:Math.abs(e)<100?10:1;return{text:String(Math.round(e*n)/n),unit:""}}function f(t){
return t.unit==="°"?`${t.text}°`:`${t.text} ${t.unit}`.trim()}function ls({text:t,unit:e}){return f({text:e===
"in"?t:t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,""),unit:e})}function Xe(){return Ft()?{unit:"tons",size:ua}:
{unit:"kN",size:1}}function Mn(){return Ft()?{unit:"tons/ft",size:ua/ah}:{unit:"kN/m",size:1}}function Pi(t,{size:e}){
return t==null?"":String(e===1?t:Number((t/e).toFixed(4)))}function io(t,{unit:e}){let n=ma(t);return ih.test(
n)?`${n} ${e}`.replace(" tons"," short tons"):n.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i,(s,o,a="")=>{let r=a?
a.includes("ft"):Ft();return`${o}${r?"short tons":"t"}${a}`})}function C(){return Ft()?"in":"mm"}function et(t,e=C()){
let n=ma(t);return ih.test(n)||e==="in"&&ch.test(n)?`${n} ${e}`:n}function ma(t){let e=t.trim();return lh.test(
e)?e:e.replace(/^([+-]?\d+),(\d+)(?![\d.,])/,"$1.$2")}function dh(t,e=C()){let n=t.trim(),[,s,o,a]=lh.exec(n)??
[];return s?[String(+`${s}.${o}`),`${s}${o}`].map(l=>a?`${l} ${a}`:l):e==="mm"&&ch.test(n)?[`${n} in`]:[]}function hh(t){
let[,e,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.exec(t??"")??[];return e?Number(e)*(n==="in"?Jt:1):null}function z(t){
if(t==null)return"";let e=Ft()?t/Jt:t;return String(Number(e.toFixed(Ft()?4:3)))}var Jt,ua,oh,hw,ah,Ft,ih,lh,ch,
E=$(()=>{st();Jt=25.4,ua=8.896443230521,oh=9.80665,hw=.45359237,ah=.3048,Ft=()=>P().units==="inch";ih=/^[+-]?(\d+\.?\d*|\.\d+)$/,
lh=/^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/,ch=/^(\d+[\s-]+)?\d+\s*\/\s*\d+$/});function jt(t,e){return t.length*e*.6+e*.3}function uw(t,e){return Math.abs(t.x-e.x)*2<t.width+e.width&&Math.abs(
t.y-e.y)*2<t.height+e.height}function ph(t,[[e,n],[s,o]]){let a=0,r=1,l=[[e-t.x,s-e,t.width/2],[n-t.y,o-n,t.height/
2]];for(let[c,h,p]of l){if(h===0){if(Math.abs(c)>p)return!1;continue}let[u,m]=[(-p-c)/h,(p-c)/h];a=Math.max(a,
Math.min(u,m)),r=Math.min(r,Math.max(u,m))}return a<=r}function mw([t,e],[n,s]){return fa(t,e,n)!==fa(t,e,s)&&
fa(n,s,t)!==fa(n,s,e)}function fa(t,e,n){return(e[0]-t[0])*(n[1]-t[1])>(e[1]-t[1])*(n[0]-t[0])}var ga,$a=$(()=>{
ga=class{constructor(e){this.edges=e,this.taken=[]}choose(e){let n=e[0],s=1/0;for(let o of e){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:e,
lines:n=[]}){let s=this.taken.filter(l=>uw(e,l)).length,o=this.edges.filter(l=>ph(e,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(h=>mw(c,h)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(h=>ph(h,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function Mt(t){return t.length?`M${t.map(([e,n])=>`${e} ${-n}`).join("L")}Z`:""}function lo(t){return t.length?
`M${t.map(([e,n])=>`${e} ${-n}`).join("L")}`:""}function Xt(t){let e=t.flat().map(([s])=>s),n=t.flat().map(([,
s])=>s);return[Math.min(...e),Math.min(...n),Math.max(...e),Math.max(...n)]}function uh([t,e,n,s],o){return`${t-
o} ${-s-o} ${n-t+2*o} ${s-e+2*o}`}function On([t,e,n,s],o,a){let r=Math.min(o/Math.max(n-t,1e-6),a/Math.max(s-
e,1e-6));return([l,c])=>[(l-t)*r,(s-c)*r]}var Ze=$(()=>{});function U(t){let{text:e}=w(t,{digits:2});return P().inches==="fraction"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function fh({section:t,part:e},{pixels:n=cs(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=On(Xt([t.outline]),n-2*l,s-2*l),h=t.outline.map(c),p=new ga(h.map((v,N)=>[v,h[(N+1)%h.length]])),u=$w(t).map(
(v,N)=>ww(v.map(c),U(e.flats_mm[N]),p,18)),m=t.bend_points.map((v,N)=>bw(c(v),N+1,e.bends[N],p,18)),[g,b,_,T]=vw(
[...h,...m.flatMap(v=>mh(v.box)),...u.flatMap(v=>[...mh(v.box),...v.lines.flat()])]),[L,B]=[_-g+12,T-b+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${gw(e)}
    width=${L}
    height=${B}
    viewBox="${g-6} ${b-6} ${L} ${B}">
    <path class="sheet" d="M${h.map(v=>v.join(" ")).join("L")}Z" />
    ${u.map(({lines:v,box:N,text:Z})=>x`${v.map(([ct,Po])=>x`<path class="dimension" d="M${ct}L${Po}"/>`)}
      ${_w(v[0])}${yw(N,Z,18)}`)}
    ${m.map(({box:v,text:N,number:Z,badge:ct})=>x`<circle class="badge ${Z===a?"marked":""}" cx=${ct[0]} cy=${ct[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${ct[0]} y=${ct[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${Z}</text>
      <text x=${ct[0]+18*.95} y=${v.y} font-size=${18}
        dominant-baseline="central">${N}</text>`)}
  </svg>`}function cs(){return Math.min(Math.max(innerWidth-32,300),720)}function gw(t){return`Section. ${t.flats_mm.
map((n,s)=>{let o=t.bends[s],a=o?`, bend ${s+1}: ${gh(o)} ${o.direction}`:"";return`flat ${s+1}: ${f(w(n))}${a}`}).
join("; ")}.`}function gh(t){return t.kind==="closed_hem"?"hem":t.kind==="open_hem"?"open hem":f(S(t.included_angle_deg)).
replace(".0°","°")}function $w({dimensions:t,bend_points:e,centre_line:n}){if(t)return t;let s=[n[0],...e,n[n.
length-1]];return s.slice(1).map((o,a)=>[s[a],o])}function bw(t,e,n,s,o){let a=gh(n),r=jt(a,o)+1.6*o,l=[1.4,1.9,
2.6].flatMap(p=>fw.map(u=>{let m=t[0]+Math.cos(u)*(p*o+r/2-o*.6),g=t[1]+Math.sin(u)*p*o;return{box:{x:m,y:g,width:r,
height:o*1.5},cost:p*2}})),{box:c}=s.choose(l),h=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:e,badge:h}}function ww([
t,e],n,s,o){let a=Math.hypot(e[0]-t[0],e[1]-t[1])||1,r=[-(e[1]-t[1])/a,(e[0]-t[0])/a],[l,c]=[jt(n,o),o*1.3],h=(m,g)=>[
m[0]+r[0]*g,m[1]+r[1]*g],p=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap(g=>[.5,.3,.7].map(b=>{let[_,T]=[h(t,g*o),h(
e,g*o)],L={x:_[0]+(T[0]-_[0])*b,y:_[1]+(T[1]-_[1])*b,width:l,height:c},B=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(
g*r[1])*o*.9:0,v=[[_,T],[h(t,Math.sign(g)*o*.5),h(_,Math.sign(g)*4)],[h(e,Math.sign(g)*o*.5),h(T,Math.sign(g)*
4)]];return{box:{...L,y:L.y+B},cost:Math.abs(g)+(b===.5?0:.5),lines:v}}))),u=s.choose(p);return{box:u.box,lines:u.
lines,text:n}}function _w(t){return t.map(([e,n])=>x`<path class="dimension tick" d="M${e-4} ${n+4}L${e+4} ${n-
4}"/>`)}function yw({x:t,y:e,width:n,height:s},o,a){return x`<rect class="ground" x=${t-n/2} y=${e-s/2} width=${n} height=${s}/>
    <text x=${t} y=${e} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function mh({
x:t,y:e,width:n,height:s}){return[[t-n/2,e-s/2],[t+n/2,e+s/2]]}function vw(t){return Xt([t])}var fw,ne=$(()=>{
y();st();E();$a();Ze();fw=[0,90,180,270,45,135,225,315].map(t=>t*Math.PI/180)});function k(t,e=kw[t]){return i`<span class="flag ${t}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${xw[t]}</svg>${e}</span
  >`}function Qe(t,e){return t.replace(/\{(\w+)\}/g,(n,s)=>s in e?ls(xe(s,e[s])):n)}function Sw({step:t,steps:e=[]}){
return e.length>1?i`<b>Steps ${e.join(", ")}.</b> `:t?i`<b>Step ${t}.</b> `:d}function vt(t,{quiet:e=!1}={}){let n=t.
filter(s=>!e||s.level!=="ok").sort((s,o)=>ba.indexOf(Ht(s))-ba.indexOf(Ht(o)));return n.length===0?d:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${k(Ht(s))}
          <div class="say">
            ${Sw(s)}${Qe(s.template,s.numbers)}
            ${s.do?i`<div class="do">${Qe(s.do_template??s.do,s.numbers)}</div>`:d}
          </div>
        </li>`)}
  </ul>`}var kw,ba,xw,Ht,_t,co,G=$(()=>{y();E();kw={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",
ok:"OK"},ba=["stop","caution","unknown","note","ok"],xw={stop:x`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:x`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:x`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:x`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:x`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};Ht=({level:t,sign:e,do:n,
step:s,steps:o=[]})=>e??(t==="ok"&&n&&(s||o.length)?"note":t);_t=({template:t,numbers:e})=>Qe(t,e),co=t=>t.map(
_t).join(" ")});function An(t){let e=new Date(t);return Number.isNaN(e.valueOf())?"":e.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function at(t){let e=new Date(t);return Number.isNaN(e.valueOf())?"":`${An(t)}\
, ${e.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function ds({made_at:t,received_at:e}){return e?
!t||Math.abs(Date.parse(t)-Date.parse(e))<Tw?at(e):`in the shop ${at(e)}, made ${at(t)} by the device’s clock`:
at(t??"")}function Se({by:t,device:e}){return[t,e===t?"":e].filter(Boolean).join(", ")}var Tw,Ut=$(()=>{Tw=5*6e4});function $h(t,{metalName:e,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${t.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${W(s.code)}</span>
            <span class="more">
              ${e(s.metal)}, ${U(s.thickness_mm)} ${C()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${An(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · put away":""}
              ${Mw(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="settle">${k("caution",`${s.settle} to settle`)}</span>`:d}
              ${s.worst==="stop"?k("stop"):d}
            </span>
          </a>
        </li>`)}
  </ul>`}var Mw,bh=$(()=>{y();dt();ne();E();G();Ut();Mw=t=>t?i`· <b>${t} ${/^1 \S+$/.test(t)?"waits":"wait"}</b>`:
d});function _a(t,e,n,s){let o=pt(t.code),a=o.fault||(t.asked&&!o.whole?Aw(o.code):"");return i`<form class="code-form" @submit=${l=>{
l.preventDefault(),t.asked=!0,o.whole?gt(`/c/${o.code}`):n()}}>
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
        .value=${xt(t.code)}
        aria-invalid=${a?"true":"false"}
        aria-describedby="code-more"
        @input=${l=>{t.code=l.target.value,t.asked=!1,n()}} />
      <button class="button ${o.whole?"next":""}" data-test="open">Open</button>
    </div>
    <p id="code-more" class="code-more" role="status">
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:Ow(o,e,s)}
    </p>
  </form>`}function Ow(t,e,n){if(!t.whole)return n;let s=e.find(o=>o.code===t.code);return s?i`<span data-test="code-found"
        >${W(t.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A right code, but not on this device yet. Open asks the shop.</span
      >`}var wa,Aw,Ri=$(()=>{y();Ve();dt();Ct();wa=()=>({code:"",asked:!1});Aw=t=>t?`A card code has seven cha\
racters. This is ${t.length}.`:"Type the seven characters printed on the label."});var _h={};nt(_h,{show:()=>Ew});async function Ew(t){t.title("Find a card");let e={typed:wa(),search:"",shown:Ii},
n=await wh(),s=!1,o=()=>{t.render(i`<div class="home">
        <h1>Find a card</h1>
        <div class="home-scan">
          <a class="button next wide" href="/scan" data-test="scan">${Lw} Scan a label</a>
        </div>
        <div class="home-ways">
          ${_a(e.typed,n.list,o,"Seven characters, capitals or not.")}
          <nav class="home-new" aria-label="Start something">
            ${ot("/bend",i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`)}
            ${ot("/part",i`<a class="button" href="/part" data-test="new-part"
                >${R("cards.create","New part","Plan a part")}</a
              >`)}
          </nav>
        </div>
        ${Nw(e,n,s,o)}
      </div>`)};o();let a=async()=>{s||=Yt().reached!==null,n=await wh(),o(),(s||n.list.length)&&t.ready()};document.
addEventListener("sync",a,{signal:t.signal}),n.list.length&&t.ready(),await H().then(a)}async function wh(){let[
{list:t,where:e},n,s]=await Promise.all([nh(),qe(),Dt().catch(()=>[])]),o=new Map;for(let{code:r}of s)o.set(r,
Mi(s.filter(l=>l.code===r)));return{list:t,where:e,waiting:o,metalName:r=>is(n?.metals,r)}}function Nw(t,e,n,s){
if(e.list.length===0)return n?Pw():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=Bw(e,t.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${xt(t.search)}
        @input=${a=>{t.search=a.target.value,t.shown=Ii,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${Cw(o.length,e,t.search)}</p>
    ${$h(o.slice(0,t.shown),e)}
    ${o.length>t.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{t.shown+=Ii,s()}}>
              Show more
            </button>
          </div>`:d}
  </section>`}function Bw({list:t,metalName:e},n){let s=n.toLowerCase().split(/\s+/).filter(Boolean);return s.
length===0?t.filter(o=>!o.archived):t.filter(o=>{let{code:a,title:r,note:l,metal:c}=o,h=`${a} ${W(a)} ${r} ${l}\
 ${c} ${e(c)}`.toLowerCase();return s.every(p=>h.includes(p))})}function Cw(t,{list:e,where:n},s){let o=n==="d\
evice"?"on this device":"of the shop";return s.trim()===""?t===1?`1 card ${o}`:`${t} cards ${o}`:t===0?`None o\
f the ${e.length} cards has that.`:`${t} of ${e.length} cards`}function Pw(){return Yt().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${R("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var Ii,Lw,yh=$(()=>{y();Ve();dt();ut();Et();Pt();yt();rt();bh();Ri();Ii=40,Lw=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`});var Ln,vh,kh,hs,Wi=$(()=>{Ln=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],vh=["guaranteed minimum","typical","measured","common practice","from memory"],kh=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],hs=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function En(t=""){let n=t.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(xh.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...Sh}]}function Oh(t){let e=En(t),{angle:n,face:s}=e[e.length-1];return ho(
[...e,{...Sh,angle:n,face:s}])}var xh,Sh,Th,ho,Mh,Ah,po,Di=$(()=>{xh=["v","angle","radius","face","centre","co\
de","rating"],Sh={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},Th=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];ho=t=>t.map(e=>xh.map(n=>e[n].replaceAll(";",",")).join("; ")).join(
`
`),Mh=(t,e,n)=>ho(En(t).map((s,o)=>o===e?{...s,...n}:s));Ah=(t,e)=>ho(En(t).filter((n,s)=>s!==e)),po={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var Eh,Fi,Lh,ji,Hi,ya,ps,Ui,Gi,va,Vi=$(()=>{Eh="Empty is unknown: checks with it then say so.",Fi={name:"ratin\
g_kn_per_m",label:"Rating",type:"rating",hint:"As stamped on the tool or in its maker's papers."},Lh={name:"se\
gments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned twice twice."},
ji=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],Hi=[{name:"condition",label:"\
Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown","unknown"]]},
{name:"condition_note",label:"Note on its condition",type:"note"}],ya={name:"name",label:"Name",type:"text",broad:!0},
ps=(t,e)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:t,hint:`One point a line: x, y. x tow\
ards the back gauge, y up. ${e}`,when:n=>n.shape==="points"}),Ui=t=>t.shape!=="multi_v",Gi=({die_holder_height_mm:t})=>!!t&&
!/^0+([.,]0*)?( mm| in)?$/.test(String(t)),va={punches:[{title:"What it is",part:"what",fields:[ya,{name:"angl\
e_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_mm",label:"Tip radius",type:"length"}]},{
title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[["straight","\
straight"],["gooseneck","gooseneck"],["points","by points or DXF"]]},{name:"height_mm",label:"Height, tip to s\
eat",type:"length"},{name:"body_width_mm",label:"Width of the body",type:"length"},{name:"neck_relief_mm",label:"\
Throat behind the tip",type:"length",when:t=>t.shape==="gooseneck"},{name:"neck_width_mm",label:"Thickness of \
the neck",type:"length",when:t=>t.shape==="gooseneck",blank:"as the body"},{name:"throat_top_mm",label:"Throat\
 begins to close",type:"length",when:t=>t.shape==="gooseneck",blank:"as high as it can",hint:"Above the tip."},
ps("punch","The tip is at 0, 0."),{name:"turned",label:"Sits in the press",type:"yes",options:[["no","as drawn"],
["yes","turned round"]]}]},{title:"Rating and pieces",part:"rest",fields:[Fi,Lh]},{title:"Place and condition",
part:"rest",fields:[...ji,...Hi]}],dies:[{title:"What it is",part:"what",fields:[ya,{name:"v_opening_mm",label:"\
V opening",type:"length",hint:"Between the sharp corners of face and flanks.",when:Ui},{name:"angle_deg",label:"\
Angle of the V",type:"number",unit:"°",when:Ui},{name:"shoulder_radius_mm",label:"Shoulder radius",type:"leng\
th",when:Ui}]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[
["single_v","single V"],["multi_v","block with several V's"],["points","by points or DXF"]]},{name:"height_mm",
label:"Height",type:"length"},{name:"width_mm",label:"Width",type:"length"},{name:"turned",label:"Sits in the \
press",type:"yes",options:[["no","as drawn"],["yes","turned round"]]},{name:"openings",label:"The V's of the b\
lock",type:"openings",when:t=>t.shape==="multi_v"},{name:"up",label:"V that is up",type:"number",hidden:!0,when:t=>t.
shape==="multi_v"},ps("die","The top face is at y 0, the V's middle at x 0.")]},{title:"Rating and pieces",part:"\
rest",fields:[Fi,Lh]},{title:"Place and condition",part:"rest",fields:[...ji,...Hi]}],holders:[{title:"What it\
 is",part:"what",fields:[ya,Fi]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pic\
k",broad:!0,options:[["block","plain block"],["clamps","clamps that stick out"],["points","by points or DXF"]]},
{name:"height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the \
front",type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to\
 the back",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:t=>t.shape===
"clamps"},{name:"body_front_mm",label:"Body above, to the front",type:"length",when:t=>t.shape==="clamps"},{name:"\
body_back_mm",label:"Body above, to the back",type:"length",when:t=>t.shape==="clamps"},ps("holder","The punch\
's seat is at 0, 0.")]},{title:"Place and condition",part:"rest",fields:[...ji,...Hi]}],press:[{title:"The pre\
ss",part:"what",fields:[ya,{name:"force_kn",label:"Full force",type:"force"},{name:"bed_length_mm",label:"Bed \
length",type:"length"},{name:"between_frames_mm",label:"Between the frames",type:"length"},{name:"open_height_\
mm",label:"Open height",type:"length"},{name:"stroke_mm",label:"Stroke",type:"length"},{name:"throat_mm",label:"\
Throat",type:"length"}]},{title:"Ram and bed",part:"outline",fields:[{name:"ram_width_mm",label:"Ram width",type:"\
length",needed:!0},{name:"ram_height_mm",label:"Ram height",type:"length",needed:!0},{name:"bed_width_mm",label:"\
Bed width",type:"length",needed:!0},{name:"bed_height_mm",label:"Bed height",type:"length",needed:!0},{name:"f\
loor_below_die_mm",label:"Floor below the die",type:"length",broad:!0,blank:"not looked at",hint:"From the fac\
e that the die stands on, down to the floor: long parts hang that far."},{...ps("ram","From the face that carr\
ies the holder. Empty: a plain beam."),name:"ram_points_mm",label:"Ram by points",when:void 0,folded:!0},{...ps(
"bed","From the face that carries the die or its holder. Empty: a plain beam."),name:"bed_points_mm",label:"Be\
d by points",when:void 0,folded:!0}]},{title:"Riser or die holder on the bed",part:"rest",fields:[{name:"die_h\
older_height_mm",label:"Height under the die",type:"length",blank:"none",broad:!0,hint:"0 or empty: the die st\
ands on the bed."},{name:"die_holder_width_mm",label:"Width",type:"length",when:Gi,blank:"by points"},{name:"d\
ie_holder_rating_kn_per_m",label:"Rating of the die holder",type:"rating",hint:"As stamped on it or in its pap\
ers.",when:Gi},{...ps("die_holder","The die's seat is at y 0, the bed's at minus the height. Empty: a plain bl\
ock."),name:"die_holder_points_mm",label:"Die holder by points",when:Gi,folded:!0}]},{title:"What it bears",part:"\
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
none",broad:!0},{name:"note",label:"Note",type:"note"}]}]}});function pe(t=""){let e=ma(t);return e===""?null:Rw.test(e)?Number(e):e}function Dw(t){let{show:e}=Te.number;return{
v:z(t.v_opening_mm),angle:e(t.angle_deg),radius:z(t.shoulder_radius_mm),face:t.face,centre:z(t.centre_mm),code:t.
code??"",rating:Te.rating.show(t.rating_kn_per_m)}}function Fw({v:t,angle:e,radius:n,face:s,centre:o,code:a,rating:r}){
let l={v_opening_mm:ka(t),angle_deg:pe(e),shoulder_radius_mm:ka(n),centre_mm:ka(o)};return{...Object.fromEntries(
Object.entries(l).filter(([,h])=>h!==null)),face:s||"top",code:a||null,rating_kn_per_m:Nh(r)}}function xa(t,e){
return Object.fromEntries(tn(t).map(({name:n,type:s})=>[n,Te[s].show(e[n])]))}function Sa(t,e,n={}){let s=({name:r,
type:l})=>r in n&&Te[l].show(n[r])===e[r]?n[r]:Te[l].take(e[r]),a=tn(t).filter(({when:r})=>!r||r(e)).map(r=>({
spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||jw(r)).map(({spec:r,value:l})=>[
r.name,l]))}function Ch(t){let e={};for(let n of["name","note","gauge_family"])e[n]=Te.text.show(t[n]);for(let{
name:n}of hs)e[n]=Te.number.show(t[n]);for(let{name:n}of Ln){let s=t[n];for(let o of Hw)e[`${n}.${o}`]=Te.number.
show(s?.[o]);e[`${n}.standing`]||="typical"}return e}function Ph(t){let e={name:t.name.trim(),note:t.note.trim(),
gauge_family:t.gauge_family||null};for(let{name:n,needed:s}of hs)(t[n]?.trim()||!s)&&(e[n]=pe(t[n]));for(let{name:n,
needed:s}of Ln){let o=["low","nominal","high","source"].some(a=>t[`${n}.${a}`]?.trim());e[n]=o||s?Uw(t,n):null}
return e}function Uw(t,e){let n=["low","nominal","high"].map(s=>[s,pe(t[`${e}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(t[`${e}.source`]??"").trim(),standing:t[`${e}.standing`]}}function Rh(t,e){
let n={},s=[];for(let[o,a]of Object.entries(t)){let r=`.${o}.`,c=(r.includes(".openings.")?e.filter(p=>p==="op\
enings"):e).filter(p=>r.includes(`.${p}.`)).sort((p,u)=>u.length-p.length)[0],h=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n.openings??=[]).push(...a.map(p=>Gw(o,p))):c?(n[c]??=[]).push(...h&&r.endsWith(`.${c}.${h}.`)?a.map(
p=>`Number ${Number(h)+1}: ${p}`):a):s.push(...a.map(p=>`${o}: ${p}`))}return{byName:n,others:s}}function Gw(t,e){
let[,n,s]=/openings\.(\d+)(?:\.(\w+))?$/.exec(t)??[];return n===void 0?e:`V ${Number(n)+1}: ${s?`${s}: `:""}${e}`}
var Rw,zi,ka,Iw,Nh,Ww,Te,Bh,tn,jw,Hw,Me=$(()=>{Wi();Di();Vi();E();Rw=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
zi=t=>(e="")=>e.trim()===""?null:t(e),ka=zi(t=>et(t)),Iw=zi(t=>io(t,Xe())),Nh=zi(t=>io(t,Mn())),Ww=(t="")=>t.split(
/[\n;]/).map(e=>e.trim()).filter(Boolean),Te={text:{show:t=>t??"",take:(t="")=>t.trim()},note:{show:t=>t??"",take:(t="")=>t.
trim()},pick:{show:t=>t??"",take:t=>t||null},yes:{show:t=>t?"yes":"no",take:t=>t==="yes"},length:{show:z,take:ka},
number:{show:t=>t==null?"":String(t),take:pe},force:{show:t=>Pi(t,Xe()),take:Iw},rating:{show:t=>Pi(t,Mn()),take:Nh},
lengths:{show:t=>(t??[]).map(z).join(", "),take:(t="")=>t.split(/[,;\n]/).filter(e=>e.trim()).map(e=>et(e))},points:{
show:t=>(t??[]).map(([e,n])=>`${z(e)}, ${z(n)}`).join(`
`),take:t=>Ww(t).map(e=>e.split(e.includes(",")?",":/\s+/).map(n=>et(n)))},openings:{show:t=>ho((t??[]).map(Dw)),
take:t=>En(t).map(Fw)},figure:{show:String,take:String}};Bh=t=>Te.points.show(t),tn=t=>va[t].flatMap(e=>e.fields);
jw=({type:t,blank:e})=>t==="rating"||e!==void 0,Hw=["low","nominal","high","source","standing"]});function Ta(t){let e={...Vw};for(let n of Ki){let s=t.get(qi[n])?.slice(0,60);if(s==null)continue;let o=` ${C()}`;
e[n]=Yi(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return e}function Ma(t){let e=new URLSearchParams;for(let n of Ki){
let s=t[n].trim();s!==""&&e.set(qi[n],Yi(n)?et(s):s)}return e.toString()}function uo(t){return zw.filter(e=>t[e].
trim()==="")}function Nn(t){let e={};for(let n of Ki){let s=t[n].trim();s!==""&&(e[n]=Yi(n)?et(s):n==="include\
d_angle_deg"?pe(s):s)}return e}var Vw,qi,Ki,zw,Yi,Oa=$(()=>{Me();E();Vw={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},qi={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},Ki=Object.keys(qi),zw=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],Yi=t=>t.endsWith("_mm")});function Oe(t,e,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:h}=a;try{let p=await t(c,h);h.aborted||e({question:c,answer:p})}catch(p){h.aborted||
e({question:c,error:p})}}return{stop:r,ask(c,{now:h=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),h?0:s))}}}var mo=$(
()=>{});function Ae(t,e,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
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
  </div>`}var Aa=$(()=>{y()});function La(t){return t.force_kn===null||t.force_kn===void 0?d:i`<b>${f(Zt(t))}</b>
    <small class="expected">expected ${f(en(t))}</small>`}function fo(t,e,n="force_kn",{note:s=d,origin:o=""}={}){
return Ae(t,Zt(e,n),{note:i`expected ${f(en(e,n))}${s}`,origin:o,test:n})}var Zt,en,Ih,ue=$(()=>{y();E();Aa();
Zt=(t,e="force_kn")=>Ih(e)(t[`${e}_high`],{up:!0}),en=(t,e="force_kn")=>Ih(e)(t[e]),Ih=t=>t==="force_kn"?mt:At});var Ji,Wh=$(()=>{Ji=class extends HTMLElement{#t=new ResizeObserver(()=>this.measure());#e=new MutationObserver(
()=>this.measure());connectedCallback(){this.#t.observe(this),this.#e.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#t.disconnect(),this.#e.disconnect()}measure(){let e=this.
querySelector("svg"),{width:n,height:s}=e?.viewBox.baseVal??{width:0,height:0};if(!e||!n||!e.clientWidth||!e.clientHeight)
return;let o=Math.max(n/e.clientWidth,s/e.clientHeight);e.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",Ji)});function Xi({distance_mm:t,tool:e}){let n=f(w(Math.abs(t)));return t<=0?[n,`into ${e}`]:[n,`to ${e}`]}function Dh(t,{
left:e,right:n,bottom:s,top:o}){let[a,r]=Bn(t),[[l,c],[h,p]]=[t.on_sheet,t.on_tool],u=a-e>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[g,b]=Xi(t);return x`<g class="near ${t.distance_mm<=0?"hit":""}" data-test="near" data-tool=${t.tool}>
    <path class="near-line" d="M${l} ${-c}L${h} ${-p}" />
    ${Ea(t,n-e)?d:[t.on_sheet,t.on_tool].map(qw)}
    <g transform="translate(${a} ${-r})">
      ${Ea(t,n-e)?x`<circle class="px near-ring" r="17" />`:d}
      <path class="px near-leader" d="M${u*12} ${m*12}L${u*34} ${m*30}H${u*44}" />
      <text class="px label near-label" x=${u*50} y=${m*30-2}
        text-anchor=${u>0?"start":"end"}>${g}<tspan x=${u*50}
          dy="1.1em">${b}</tspan></text>
    </g>
  </g>`}var Bn,Ea,qw,Zi=$(()=>{y();E();Bn=({on_sheet:[t,e],on_tool:[n,s]})=>[(t+n)/2,(e+s)/2];Ea=(t,e)=>Math.abs(
t.distance_mm)<.1*e,qw=([t,e])=>x`<g transform="translate(${t} ${-e})"><circle class="px near-dot" r="4" /></g>`});function me(t,{pose:e,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:h=!1,room:p=null}){
let u=s??(t.bounds[2]-t.bounds[0])/6,m=n?Yw(u,h?c:null):Jw(t,u,c),g=p&&!n?Xw(m,p,u):m,{left:b,bottom:_,right:T,
top:L}=g,B=l??Kw(t,e==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${e}
      viewBox="${b} ${-L} ${T-b} ${L-_}"
      preserveAspectRatio="xMidYMid meet">
      ${[t.bed,t.die].map(Mt).map(Fh)}
      <g transform="translate(0 ${B.down})">${B.tools.map(Fh)}</g>
      ${t.die.length?x`<path class="axis" d="M0 ${-L-999}V999" />`:d}
      <path class="gauge" transform="translate(${B.back} 0)" d=${B.gauge} />
      <path class="sheet" data-test="sheet" d=${B.sheet} />
      ${e==="before"&&t.gauge_point?Zw(t.gauge_point,o,g):d}
      ${e==="after"&&a?Qw(t.after.sheet,a,u,g):d}
      ${h&&c?Dh(c,g):d}
    </svg>
  </drawing-frame>`}function Kw(t,e){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=t[e];return{sheet:Mt(n),tools:[
s,o,a].map(Mt),down:0,gauge:Mt(r),back:0}}function Yw(t,e){let[n,s]=e?Bn(e):[0,.1*t];return{left:n-1.5*t,bottom:s-
t,right:n+1.5*t,top:s+t}}function Jw(t,e,n){let[s,o,a,r]=Xt([t.before.sheet,t.after.sheet]),l=14*e,c=t.gauge_point?
t.gauge_point[0]+1.5*e:0,h={left:Math.max(Math.min(s-.4*e,-1.4*e),-l),right:Math.min(Math.max(a+.4*e,c,1.4*e),
Math.max(l,c))},p=h.right-h.left,u={...h,bottom:Math.max(Math.min(o-.3*e,-1.1*e,-.17*p),-l/2),top:Math.min(Math.
max(r+.3*e,1.6*e),8*e)},m=n?Qi(u,Bn(n),Math.max(e,.1*p)):u;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function Xw(t,{
bounds:e,share:n},s){let o=Qi(Qi(t,[e[0],e[1]],s),[e[2],e[3]],s),a=r=>t[r]+(o[r]-t[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function Zw([t,e],n,{bottom:s}){let o=s*.45;return x`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${t} ${-e}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${t}" />
    ${jh(0,o,180)}${jh(t,o,0)}
    <g transform="translate(${t} ${-e})"><circle class="px touch" r="5" /></g>
    ${Hh(t/2,o,n,17)}
  </g>`}function Qw(t,e,n,{left:s,right:o}){let a=Math.min(...t.filter(([p])=>Math.abs(p)<n/2).map(([,p])=>p)),
r=Math.max(1.25*n,.14*(o-s)),l=e/2*(Math.PI/180),[c,h]=[r*Math.sin(l),a+r*Math.cos(l)];return x`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-h}A${r} ${r} 0 0 1 ${c} ${-h}" />
    ${Hh(0,a+r,f(S(e)))}
  </g>`}var Fh,Qi,jh,Hh,go=$(()=>{y();E();Wh();Zi();Ze();Fh=t=>t?x`<path class="tool" d=${t} />`:d;Qi=({left:t,
right:e,bottom:n,top:s},[o,a],r)=>({left:Math.min(t,o-r),right:Math.max(e,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});jh=(t,e,n)=>x`<g transform="translate(${t} ${-e})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,Hh=(t,e,n,s=0)=>x`<g transform="translate(${t} ${-e})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function Uh(t,e){let n=[...t].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>e(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die} <small>V ${tt(s.v_over_t,1)} t</small></span
            >
            ${s.level==="ok"?d:k(s.level)}
            <span class="facts"> ${t_(s).map(o=>e_(...o))} </span>
            <span class="more">${_t(s.reason_said)} ${Ke(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var t_,e_,Gh=$(()=>{y();ut();E();ue();G();t_=t=>[["allow for",f(Zt(t,"force_kn_per_m")),`expected ${en(
t,"force_kn_per_m").text}`],["radius",f(w(t.inside_radius_mm))],["flange from",f(w(t.min_flange_mm))],["set",f(
S(t.set_angle_deg))]],e_=(t,e,n)=>i`<span class="fact"
    ><small>${t}</small>
    <span class="amount">${e}</span
    >${n?i` <small class="beside">${n}</small>`:d}</span
  >`});function us(t,e=""){return t?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${tl(t)}. Open is hit again. <span class="drawn">${e}</span>
  </p>`:d}var Na,tl,Vh,Ba,Cn=$(()=>{y();E();Na=t=>S(t).text.replace(/\.0$/,""),tl=t=>`comes out ${Na(t.comes_out_deg_low)}\
 to ${Na(t.comes_out_deg_high)}°`,Vh=t=>`${Na(t.comes_out_deg_low)}–${Na(t.comes_out_deg_high)}°`,Ba=(t,{set_angle_deg:e,
firstHit:n})=>n?t.expected_set_angle_deg:e});function ms(t){let e=t.filter(s=>!zh(s)&&(s.level==="stop"||s.level==="caution"));if(e.length===0)return d;let n=e.
some(s=>s.level==="stop");return i`<section
    class="panel urgent ${n?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${vt(e)}
  </section>`}function fs(t){let e=t.filter(o=>o.level==="unknown"),n=t.filter(o=>Ht(o)==="note"),s=t.filter(o=>Ht(
o)==="ok");return i`${e.length?i`<section>
          <h2>Not known</h2>
          ${vt(e)}
        </section>`:d}
  ${n.length?i`<section data-test="notes">
          <h2>How to do it</h2>
          ${vt(n)}
        </section>`:d}
  ${s.length?i`<details class="fine" data-test="fine">
          <summary>Also checked and well: ${s.length}</summary>
          ${vt(s)}
        </details>`:d}`}function nn(t){let e=t.filter(zh);return e.length===0?d:i`<section class="every-time" data-test="every-time">
    <h2>${k("caution")} At the press, every time</h2>
    <ul>
      ${e.map(n=>i`<li>
            <b>${Qe(n.template,n.numbers)}</b>
            ${Qe(n.do_template??n.do,n.numbers)}
          </li>`)}
    </ul>
  </section>`}var zh,$o=$(()=>{y();G();zh=t=>t.code.startsWith("general-")});function A({name:t,label:e,value:n,change:s,hint:o="",wrong:a=[],keys:r="text",placeholder:l="",unit:c="",on:h="\
input",next:p=!1,list:u=""}){let m=g=>s(g.target.value);return i`<div class="field ${a.length?"has-wrong":""}">
    <label for=${t}>${e}${c?i` <span class="hint">(${c})</span>`:d}</label>
    <input
      id=${t}
      name=${t}
      data-test=${t}
      autocomplete="off"
      spellcheck="false"
      inputmode=${r}
      enterkeyhint=${p?"next":d}
      placeholder=${l}
      list=${u||d}
      .value=${xt(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${t}-more"
      @input=${h==="input"?m:d}
      @change=${h==="change"?m:d} />
    <span id="${t}-more">
      ${a.map(g=>i`<span class="wrong" data-test="wrong-${t}">${g}</span>`)}
      ${o?i`<span class="hint">${o}</span>`:d}
    </span>
    ${a.length?n_(t,dh(String(n)),s):d}
  </div>`}function n_(t,e,n){return i`<div class="may-mean">
    ${e.map(s=>i`<button type="button" class="button" data-test="may-mean-${t}" @click=${()=>n(s)}>
          ${s}
        </button>`)}
  </div>`}function Pn({name:t,label:e,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${t}>${e}${l?i` <span class="hint">(${l})</span>`:d}</label>
    <textarea
      id=${t}
      name=${t}
      data-test=${t}
      rows=${o}
      .value=${xt(String(n))}
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
        ${s.map(([r,l])=>i`<option value=${r} .selected=${xt(r===n)}>${l}</option>`)}
      </select>
    </div>
    <span id="${t}-more"
      >${a.map(r=>i`<span class="wrong" data-test="wrong-${t}">${r}</span>`)}</span
    >
  </div>`}function Y({name:t,label:e,value:n,options:s,change:o}){return i`<div class="field" role="radiogroup" aria-label=${e}>
    <span class="legend" aria-hidden="true">${e}</span>
    <div class="choice" data-test=${t}>
      ${s.map(([a,r])=>i`<label>
            <input
              type="radio"
              name=${t}
              value=${a}
              .checked=${xt(a===n)}
              @change=${()=>o(a)} />
            <span>${r}</span>
          </label>`)}
    </div>
  </div>`}function se(t){Object.keys(t).length!==0&&requestAnimationFrame(()=>document.querySelector('[aria-in\
valid="true"]')?.focus())}var J=$(()=>{y();Ve();E()});function Ca(t){let[e,n]=[t?.die?.trim(),t?.punch?.trim()];return{...e?{die:e}:{},...n?{punch:n}:{}}}function el(t){
let e=Ca(t);return Object.keys(e).length?{tools:e}:{}}function Rn(t){let{die:e,punch:n}=Ca(t);return[e&&`die ${e}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var bo,gs=$(()=>{bo=t=>({die:t?.die??"",punch:t?.punch??""})});function I(t,e){return Object.entries(t).filter(([n])=>nl(n,e)).flatMap(([,n])=>n)}function qh(t,e){return Object.
entries(t).filter(([n])=>!e.some(s=>nl(n,s))).flatMap(([,n])=>n)}function Kh(t,e,n){let s=Object.entries(t);return s.
length===0?d:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>nl(o,c)).sort((c,h)=>h.length-c.length)[0],l=r?sl(e(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>wo(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function sl(t,e){let n=e.join(" ");return n.startsWith(t)?n:`${t}: ${n}`}function wo(t){let e=document.
getElementById(t);e?.closest("details")?.setAttribute("open",""),e?.focus({preventScroll:!0}),e?.scrollIntoView(
{block:"center"})}var nl,oe=$(()=>{y();nl=(t,e)=>t===e||t.startsWith(`${e}.`)});function al(t,e,n,s){let o=(a,r)=>A({next:!0,name:`${t}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:e[a]??"",wrong:I(n,`${t}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function Jh(t,{dies:e,punches:n},s,o){
let a=e.flatMap(rl).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${Rn(t.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${al("tools",t.tools??{},s,r=>o({...t,tools:{die:"",punch:"",...t.tools,...r}}))}
    </details>
    ${Yh("codes-of-dies",a)}
    ${Yh("codes-of-punches",n.map(({code:r})=>r))}`}var ol,rl,Yh,$s,In=$(()=>{y();gs();G();J();oe();ol=["tools\
.die","tools.punch"];rl=t=>t.shape==="multi_v"?t.openings:[t];Yh=(t,e)=>i`<datalist id=${t}>${e.map(n=>i`<option value=${n}></option>`)}</datalist>`,
$s=({tools_reason:t,tools_reason_said:e})=>t?i`<p class="tools-reason" data-test="tools-reason">${e?_t(e):t}</p>`:
d});function Pa(t){let e=(t??"").split(":")[0].trim();return s_.includes(e)?e:""}function _o(t){if(!t)return"";let e=new Map;
for(let[n,s]of o_){let o=t[n];o&&e.set(o,[...e.get(o)??[],s])}return[...e].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var s_,o_,Ra=$(()=>{s_=["model","handbook","your test bends"];o_=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function Zh(t){return i`<ul class="ratings" data-test="ratings">
    ${t.map(a_)}
  </ul>`}function a_(t){let{what:e,name:n,share_percent:s,level:o}=t;return i`<li class="rating" data-level=${o} data-what=${e}>
    <span class="rating-of"
      ><b>${r_[e]??e}</b>${e.startsWith("press")||!n?d:` ${n}`}</span
    >
    ${k(o,s===null?"Unknown":`${tt(s,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${s===null?"open":""}" d="M0 9H250" />
      ${s===null?d:l_(s)}
    </svg>
    <span class="rating-words">${i_(t)}</span>
  </li>`}function i_({load_kn:t,load_kn_per_m:e,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=e===void 0?
f(mt(t)):f(At(e));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=e===void 0?
f(mt(n)):f(At(s));return`${a} of ${r}`}function l_(t){let e=Math.min(t/100*Xh,250);return x`<path class="bar-load" d="M0 9H${e}" /><path class="bar-most" d="M${Xh} 0V18" />`}
var Xh,r_,Qh=$(()=>{y();E();G();Xh=200;r_={press:"Press","press per metre":"Bed and ram, per length",punch:"Pu\
nch",die:"Die",holder:"Holder","die holder":"Die holder"}});function bs(t,e,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(e-t)/o,c=(r?.find(_=>l/_<=a)??c_(l,a))*o,h=Math.
floor(t/c+1e-9)*c,p=Math.ceil(e/c-1e-9)*c,u=_=>d_(n+(_-h)/(p-h)*(s-n)),m=Math.round((p-h)/c),g=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),b=Array.from({length:m+1},(_,T)=>h+T*c).map(_=>({at:u(_),text:(_/o).toFixed(g).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:u,marks:b}}function c_(t,e){let n=(t>0?t:1)/e,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function Ia(t){return t.length?`M${t.
map(([e,n])=>`${e} ${n}`).join("L")}`:""}var d_,il=$(()=>{d_=t=>Math.round(t*100)/100});function tp({curve:t,set:e,peak:n,limits:s}){let o=Math.max(...t.map(g=>g.force_kn_high)),a=s.filter(g=>g.limit_kn!==
null).sort((g,b)=>Number(b.limit_kn)-Number(g.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:g})=>Number(
g)<=(g===r?p_:h_)*o),c=sp(t),h=bs(0,Math.max(o,...l.map(g=>Number(g.limit_kn))),{from:Rt.bottom,to:Rt.top+28,size:Xe().
size}),p=(g,b)=>[c.at(g.punch_depth_mm),h.at(g[b])],u=[...t.map(g=>p(g,"force_kn_high")),...t.map(g=>p(g,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${f(mt(n.force_kn))}, at a depth o\
f ${f(np(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Wa} ${Da}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${op(c,h,Xe().unit)}
    <path class="band" d="${Ia(u)}Z" />
    ${e.punch_depth_mm===null?d:ap(c.at(e.punch_depth_mm))} ${u_(l,h)}
    ${f_(a.filter(g=>!l.includes(g)))}
    <path class="curve" d=${Ia(t.map(g=>p(g,"force_kn")))} data-test="force-curve" />
    ${n?$_(c.at(n.punch_depth_mm),h.at(n.force_kn)):d}
  </svg>`}function ep({curve:t,set:e,trials:n}){let s=n.filter(u=>u.punch_depth_mm!==null),o=sp(t,s.map(u=>Number(
u.punch_depth_mm))),a=[...t.map(u=>u.loaded_angle_deg),...s.map(u=>u.measured_deg)],r=bs(Math.min(...a),180,{from:Rt.
bottom,to:Rt.top,steps:[5,10,15,30,45]}),l=u=>Ia(t.map(m=>[o.at(m.punch_depth_mm),r.at(m[u])])),c=e.set_angle_deg===
null?null:{x:o.at(Number(e.punch_depth_mm)),y:r.at(e.set_angle_deg)},p=`Angle over punch depth. ${c?`${f(S(e.set_angle_deg))}\
 under load at a depth of ${f(np(Number(e.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} trials drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Wa} ${Da}"
    role="img"
    aria-label=${p}
    data-test="stroke-angle">
    ${op(o,r,"°")} ${c?ap(c.x):d}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?x`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:d}
    ${s.map(u=>g_(o.at(Number(u.punch_depth_mm)),r.at(u.measured_deg),u))}
  </svg>`}function sp(t,e=[]){let n=Math.max(...t.map(s=>s.punch_depth_mm),...e);return bs(0,n,{from:Rt.left,to:Rt.
right,size:C()==="in"?Jt:1,most:6})}function op(t,e,n){let{left:s,right:o,top:a,bottom:r}=Rt,l=n==="°",c=e.marks.
map(({at:u,text:m})=>x`<path class="faint" d="M${s} ${u}H${o}"/>
      <text x=${s-6} y=${u+6} text-anchor="end"
        font-size=${Le}>${m}${l?"°":""}</text>`),h=t.marks.map(({at:u,text:m})=>x`<path class="faint" d="M${u} ${r}v6"/>
      <text x=${Math.min(u,Wa-m.length*Le*.3)} y=${r+24} text-anchor="middle"
        font-size=${Le}>${m}</text>`),p=x`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${Le}>${n}</text>`;return x`
    ${c}
    ${h}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${Da-8} text-anchor="end"
      font-size=${Le}>punch depth, ${C()}</text>
    ${l?d:p}`}function u_(t,e){let n=-1/0;return m_(t).map(({limit_kn:s,names:o})=>{let a=e.at(s);return n=Math.
max(a-6,n+Le+2),x`<path class="limit" d="M${Rt.left} ${a}H${Rt.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${Rt.left+6} y=${n}
        font-size=${Le}>${o.join(", ")} ${f(mt(s))}</text>`})}function m_(t){let e=new Map;for(let n of t)e.set(
Number(n.limit_kn),[...e.get(Number(n.limit_kn))??[],Fa(n)]);return[...e].map(([n,s])=>({limit_kn:n,names:s}))}
function f_(t){if(!t.length)return d;let e=t.length>1?`, ${t.length-1} more`:"";return x`<text class="limit-word" x=${Rt.
right} y="18" text-anchor="end" font-size=${Le}
      data-test="limit-far">↑ ${ll(t[t.length-1])}${e}</text>`}function Fa({what:t,name:e}){return t==="pres\
s per metre"?"Bed and ram":t==="press"||!e?t[0].toUpperCase()+t.slice(1):`${t[0].toUpperCase()}${t.slice(1)} ${e}`}
function g_(t,e,{id:n,outlier:s}){return s?x`<path class="trial-odd" d="M${t-6} ${e-6}l12 12M${t+6} ${e-6}l-12 12"
        data-test="trial-point" data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${t} cy=${e} r="6" data-test="trial-point" data-id=${n}/>`}
var Wa,Da,Rt,Le,h_,p_,np,ap,ll,$_,rp=$(()=>{y();E();il();Wa=400,Da=320,Rt={left:58,right:Wa-14,top:20,bottom:Da-
54},Le=18,h_=3,p_=5;np=t=>w(t,{digits:2});ap=t=>x`<path class="set-line" d="M${t} ${Rt.top}V${Rt.bottom}"/>
  <text class="set-word" x=${t-5} y=${Rt.bottom-6} text-anchor="end" font-size=${Le}>set</text>`;ll=({what:t,name:e,
limit_kn:n})=>`${Fa({what:t,name:e})} ${f(mt(n))}`;$_=(t,e)=>x`<circle class="peak" cx=${t} cy=${e} r="6" data-test="peak-mark"/>`});function cp({stroke:t,error:e,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?b_(t,e):d}
  </details>`}function b_(t,e){return e?i`<p class="hint" data-test="stroke-missing">
      ${e instanceof O?e.message:"The stroke could not be fetched."}
    </p>`:t?t.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${tp(t)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${w_(t)}</p>
        ${__(t)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${ep(t)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${ip("curve")} under load</li>
          <li>${ip("curve let-go")} let go</li>
          ${t.trials.length?i`<li>${k_} trials, let go</li>`:d}
        </ul>
        <p data-test="stroke-set">${y_(t)}</p>
        ${v_(t)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function w_({peak:t,work_j:e}){if(!t)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${f(
Zt(t))}.</b> The peak is expected at
    ${f(mt(t.force_kn))}, ${lp(t.punch_depth_mm)} deep, ${f(S(t.loaded_angle_deg))}
    under load.`;return e?i`${n} Work in the stroke ${tt(e,0)} J.`:n}function __({limits:t}){let e=t.filter(s=>s.
limit_kn!==null),n=t.filter(s=>s.limit_kn===null);return i`${e.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${e.map(ll).join(", ")}. The shaded band is what the force may be.
        </p>`:d}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(Fa).join(", ")}. Read it off the plate.
        </p>`:d}`}function y_({set:t}){return t.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${f(S(t.set_angle_deg))} under load at a depth of ${lp(t.punch_depth_mm)}\
.`}function v_({trials:t}){let e=t.filter(n=>n.punch_depth_mm===null).length;return e?i`<p class="hint">
        ${e===1?"One trial has":`${e} trials have`} no depth written down and can't be drawn.
      </p>`:d}var lp,ip,k_,dp=$(()=>{y();rp();F();E();ue();lp=t=>f(w(t,{digits:2}));ip=t=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${t} d="M2 8H38" />
  </svg>`,k_=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="trial-point" cx="20" cy="8" r="6" />
</svg>`});function Ee(t,e,n,s,o=pp(t,e,s)){let[a,r]=[t[`${e}_low`],t[`${e}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return Ae(n,s(t[e]),{band:l?[s(a),s(r)]:null,note:o,origin:Pa(t.sources?.[e]),test:e})}function pp({
handbook:t,sources:e,...n},s,o){let a=t?.[s];if(typeof a!="number"||Pa(e?.[s])==="handbook")return d;let r=o(a);
if(r.text===o(n[s]).text)return d;let[l,c]=[n[`${s}_low`],n[`${s}_high`]],h=a<l||a>c;return i`<span class=${h?
"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${f(r)}</span
  >`}function up(t,e,n){return i`${ms(t.checks)}
    <div class="columns bend-columns">
      <div>
        ${x_(t,e)} ${S_(t)} ${O_(t)} ${L_(t)}
        ${fs(t.checks)} ${B_(t)}
      </div>
      <div>${E_(t,n)} ${cp(n.stroke)} ${N_(t,n)}</div>
    </div>
    ${nn(t.checks)}`}function x_(t,{punches:e,dies:n}){let s=n.find(({code:a})=>a===t.die),o=e.find(({code:a})=>a===
t.punch);return!t.die&&!t.punch?i`<p class="panel" data-test="no-tools">
      No tools of the crib chosen: the figures are for a V of ${f(w(t.v_opening_mm))}.
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:t.die,tool:s},{kind:"punch",code:t.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"><b>${r??"none"}</b> ${l?.name??""}</span>
            <span class="where">${l?Ke(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:d}
          </li>`)}
    </ul>
    ${$s(t)}`}function S_(t){return i`<section>
    <h2>Set</h2>
    <div class="figures">
      ${t.first_hit?M_(t):T_(t)}
      ${Ee(t,"springback_deg","Springback",S)}
    </div>
    ${us(t.first_hit)}
  </section>`}function O_(t){return i`<section>
    <h2>Force</h2>
    <div class="figures">
      ${fo("Allow for",t,"force_kn",{note:A_(t),origin:Pa(t.sources?.force_kn)})}
      ${fo("Per length, allow for",t,"force_kn_per_m")}
    </div>
    ${t.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
            ${Zh(t.ratings)}`:d}
  </section>`}function A_(t){let e=t.force_kn_low,n=pp(t,"force_kn",mt);return i`${typeof e=="number"?`, at le\
ast ${f(mt(e))}`:d}${n===d?d:i` <br />${n}`}`}function L_(t){return i`<section>
    <h2>Comes out</h2>
    <div class="figures">
      ${Ee(t,"inside_radius_mm","Inside radius",Wn)}
      ${Ae("Smallest flange",w(t.min_flange_mm),{test:"min_flange_mm"})}
    </div>
    <h2>For the blank</h2>
    <div class="figures">
      ${Ee(t,"bend_allowance_mm","Bend allowance",Wn)}
      ${Ee(t,"bend_deduction_mm","Bend deduction",Wn)}
      ${Ee(t,"k_factor","K-factor",mp)}
    </div>
  </section>`}function E_(t,{pose:e,show:n}){if(!t.drawing)return d;let s=f(S(t.set_angle_deg)),o=e==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return i`<section class="bend-drawing" aria-label="The bend in its tools">
    ${Y({name:"pose-shown",label:"Drawn to scale",value:e,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
    ${me(t.drawing,{pose:e,close:!0,opening:t.v_opening_mm,gauge:"",angle:t.set_angle_deg,words:`The sheet in \
die and punch, ${o}`})}
  </section>`}function N_(t,{use:e}){return t.options?.length?i`<section>
    <h2>Dies of the crib</h2>
    <p class="hint">Tap one to use it. Every one shown with the reason for its rank.</p>
    ${Uh(t.options,e)}
  </section>`:d}function B_({opinions:t,sources:e}){return t?i`<section class="opinions">
    <h2>Second opinions</h2>
    ${t.force?.length?hp("Force by published relations",t.force,[["force_kn","Force",mt],["force_kn_per_m","Pe\
r length",At]]):d}
    ${t.allowance?.length?hp("Bend allowance by published relations",t.allowance,[["bend_allowance_mm","Allowa\
nce",Wn],["k_factor","K",mp]]):d}
    ${e?i`<details>
            <summary>Where each figure comes from</summary>
            <dl class="sources">
              ${Object.entries(e).map(([n,s])=>i`<dt>${C_[n]??n}</dt>
                    <dd>${s}</dd>`)}
            </dl>
          </details>`:d}
  </section>`:d}function hp(t,e,n){return i`<div class="table">
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
  </div>`}var Wn,T_,M_,mp,C_,fp=$(()=>{y();go();ut();E();ue();Gh();Aa();Cn();$o();J();In();Ra();Qh();dp();Wn=t=>w(
t,{digits:2});T_=t=>i`
  ${Ee(t,"set_angle_deg","Set angle, loaded",S)}
  ${Ee(t,"punch_depth_mm","Punch depth",Wn)}
`,M_=t=>i`
  ${Ee(t,"set_angle_deg","First hit: set angle, loaded",S,`then about ${f(S(t.expected_set_angle_deg))}`)}
  ${Ee(t,"punch_depth_mm","First hit: punch depth",Wn,`then about ${f(Wn(t.expected_punch_depth_mm))}`)}
`;mp=t=>({text:t==null?"–":tt(t,2),unit:""});C_={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var $p={};nt($p,{show:()=>I_});async function I_(t){t.title("Check a bend"),t.render(Tt("Looking into the crib\
…"));let[e,n,s]=await Promise.all(["metals","dies","punches"].map(async B=>(await lt(B,t.signal)).items)),o={
dies:n,punches:s},a=Ta(t.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=e[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:matchMedia("(min-width: 1000px)").matches},h=Oe(
async(B,v)=>(await M("POST","/bend",{body:B,signal:v})).body,({answer:B=null,error:v=null})=>{Object.assign(l,
{answer:B,error:v,busy:!1}),Object.assign(c,{stroke:null,error:null}),u(),b()},t.signal),p=Oe(async(B,v)=>(await M(
"POST","/stroke",{body:B,signal:v})).body,({answer:B=null,error:v=null})=>{Object.assign(c,{stroke:B,error:v}),
b()},t.signal);function u(){p.stop(),c.open&&l.answer&&!c.stroke&&p.ask(Nn(a),{now:!0})}function m(B){history.
replaceState(null,"",`/bend?${Ma(a)}`),l.busy=uo(a).length===0,l.busy?h.ask(Nn(a),B):(h.stop(),Object.assign(l,
{answer:null,error:null})),b()}function g(B,v){Object.assign(a,B),m(v)}function b(){let B=l.error instanceof O?
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
            ${W_(a,{metals:e,...o,openTools:r,answer:l.answer},B,g)}
          </form>
          <p class="unseen" role="status">${_()}</p>
          <div class="desk-answer" data-test="answer">${T(B)}</div>
        </div>`),l.busy||t.ready()}function _(){let{answer:B}=l;if(!B||l.busy)return"";let v=B.worst==="ok"?"":
`${B.worst}. `,N=B.set_angle_deg===null?"nothing to set":`set ${f(S(B.set_angle_deg))}`;return`${v}Die ${B.die??
"none"}, allow for ${f(Zt(B))}, ${N}.`}function T(B){let v=uo(a);return v.length?kt("One bend, all its figures",
i`Still to type: ${v.map(N=>R_[N]).join(", ")}.`):l.error?L(B):l.answer?up(l.answer,o,{pose:l.pose,show:N=>{l.
pose=N,b()},use:N=>g({die:a.die===N?"":N},{now:!0}),stroke:{...c,toggled:N=>{c.open!==N&&(c.open=N,u(),b())}}}):
Tt("Working it out…")}function L(B){if(!(l.error instanceof O)||l.error.status>=500)return i`${Ge(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let v=qh(B,P_),N=Object.keys(B).length>v.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...N,...v].map(Z=>i`<p>${Z}</p>`)}
    </div>`}m({now:!0})}function W_(t,{metals:e,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(u,m,g={})=>A(
{name:u,label:m,value:t[u],wrong:I(r,u),change:b=>l({[u]:b}),...g}),h=(u,m,g)=>q({name:u,label:m,value:t[u],options:g,
wrong:I(r,u),change:b=>l({[u]:b},{now:!0})}),p=t.metal&&!e.some(({code:u})=>u===t.metal);return i`${h("metal",
"Metal",[...p?[[t.metal,`${t.metal} (not in the shop)`]]:[],...F_(e)])}
    ${c("thickness_mm","Thickness",{unit:C(),hint:a&&D_(a,t.thickness_mm)||"3, 1/8 in, 16 ga"})}
    <div class="fields">
      ${c("bend_length_mm","Bend length",{unit:C()})}
      ${c("included_angle_deg","Included angle",{unit:"°, 90 is square",keys:"decimal"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${h("die","Die",[["","Best of the crib"],...gp(t.die,n)])}
      ${h("punch","Punch",[["","Best of the crib"],...gp(t.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:C()})}
    </details>
    ${t.die||t.punch||t.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:d}`}function D_({thickness_mm:t,thickness_gauge:e},n){return[/^[\d.,\s]+$/.test(n)?"":f(w(
t,{digits:2})),e??""].filter(Boolean).join(", ")}function gp(t,e){let n=e.map(s=>[s.code,`${s.code} · ${s.name}`]);
return t&&!e.some(s=>s.code===t)?[[t,`${t} (not in the crib)`],...n]:n}var P_,R_,F_,bp=$(()=>{y();F();Oa();ut();
mo();E();ue();fp();J();Bt();oe();P_=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","punch",
"punch_radius_mm"],R_={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"angl\
e"};F_=t=>t.map(({code:e,name:n})=>[e,n])});function wp(t){let e,n=async()=>{document.visibilityState!=="visible"||t.aborted||(e=await navigator.wakeLock?.
request("screen").catch(()=>{}),t.aborted&&e?.release())};document.addEventListener("visibilitychange",n,{signal:t}),
t.addEventListener("abort",()=>e?.release()),n()}var cl,dl=$(()=>{y();cl=()=>"wakeLock"in navigator?d:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function Dn(t){let{body:e}=await M("GET","/benches",{signal:t,timeout:3e3});return e.benches}async function vp(t){
let{body:e}=await M("PUT",`/benches/${encodeURIComponent(t)}`,{body:{code:null,step:0}});return e}async function kp(t){
await M("DELETE",`/benches/${encodeURIComponent(t)}`)}function hl(){let t=Tp(_p);return typeof t?.name=="strin\
g"?{code:null,step:0,etag:null,...t}:null}function Tp(t){try{return JSON.parse(localStorage.getItem(t)??"null")}catch{
return null}}function Mp(t,e){try{e===null?localStorage.removeItem(t):localStorage.setItem(t,JSON.stringify(e))}catch{}}
var _p,yp,Fn,Ne,pl,xp,Sp,sn=$(()=>{F();_p="flangebook.bench.here",yp="flangebook.bench.last";Fn=t=>/^\d/.test(
t)?`bench ${t}`:t,Ne=t=>/^\d/.test(t)?`Bench ${t}`:t;pl=t=>Mp(_p,t),xp=()=>String(Tp(yp)??""),Sp=t=>Mp(yp,t)});function ja(t,e,n,s){let o=`/benches/${encodeURIComponent(t)}`,a={answers:null,gone:!1,waits:!1,late:!1,refused:""},
r=null,l=e,c=0,h=!1,p;function u(v){let N={...a,waits:r!==null,...v},Z=Object.keys(N).every(ct=>N[ct]===a[ct]);
a=N,!Z&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(p),h||s.aborted)return;h=!0;try{await(r&&!g()?
b():_()),T()}catch(N){s.aborted||L(N)}h=!1;let v=r!==null&&c===0;s.aborted||(p=setTimeout(m,v?0:Math.min(H_,j_*
1.5**c)))}function g(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,u({late:!0}),!0)}async function b(){let v=r;
if(!v)return;let N=P().name?{by:P().name}:{};try{l=(await M("PUT",o,{body:{...v.place,...N},etag:v.whatever?null:
l,signal:s,timeout:Op})).etag,r===v&&(r=null),n.sent?.(v.place,l??"",r!==null),u({refused:"",late:!1})}catch(Z){
if(!(Z instanceof O)||Z.status>=500)throw Z;r=null,l=null,u({refused:Z.status===412?"":Z.message}),await _()}}
async function _(){let v=r,{status:N,body:Z,etag:ct}=await M("GET",o,{seen:l,signal:s,timeout:Op});s.aborted||
r!==v||N===304||(l=ct,u({late:!1}),n.heard(Z,ct??""))}function T(){let v=a.answers===!1;c=0,u({answers:!0,gone:!1}),
He(!0),v&&H()}function L(v){c+=1,v instanceof O&&v.status===404?u({answers:!0,gone:!0}):v instanceof O&&v.status<
500?u({answers:!0,refused:v.message}):u({answers:!1}),v instanceof j?He(!1,v):v instanceof O||console.error(v)}
let B=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",B,{signal:s}),
addEventListener("online",B,{signal:s}),s.addEventListener("abort",()=>clearTimeout(p)),m(),{move(v,{whatever:N=!1}={}){
r={place:v,at:Date.now(),whatever:N},u({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var j_,H_,Op,ul=$(()=>{
F();st();yt();j_=1e3,H_=4e3,Op=3e3});function Ap(t,e){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=U_.
has(o.key)?t.next:G_.has(o.key)?t.back:null;!a||z_(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<V_)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:e}),addEventListener("click",o=>o.detail>0&&q_(),{signal:e})}
function z_({key:t,target:e,repeat:n}){let s=e;return s.matches("input, select, textarea")?!0:!n&&(t==="Enter"||
t===" ")&&s.matches("button, a, summary")}function q_(){let t=document.activeElement;t?.matches("button, summa\
ry, input[type=range]")&&t.blur()}var U_,G_,V_,Lp=$(()=>{U_=new Set(["ArrowRight","PageDown"," ","Enter"]),G_=
new Set(["ArrowLeft","PageUp","Backspace"]),V_=300});function Ha(t,{pixels:e=cs(),tallest:n=e*.7,test:s="folded",mark:o=""}={}){let a=V*2.4,r=On(t.bounds,e-2*a,n-1.6*
a),[,l,c]=t.bounds,[h,p]=r([c,l]),u=m=>m.map(([g,b,_,T])=>`M${r([g,b])}L${r([_,T])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${J_(t)}
    width=${h+2*a}
    height=${p+1.6*a}
    viewBox="${-a} ${-V*.7} ${h+2*a} ${p+1.6*a}">
    ${t.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>x`<path class="marked-face" d="M${m.map(g=>r(g).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${u(t.lines.hidden)} />
    <path class="bend-edge" d=${u(t.lines.bend)} />
    <path class="edge" d=${u(t.lines.edge)} />
    ${t.dimensions.map(({name:m,from:g,to:b,mm:_})=>K_(r(g),r(b),m,U(_)))}
    ${t.faces.filter(({flat:m})=>m===1).map(({side:m,outline:g})=>Y_(m,g.map(r),m===o))}
  </svg>`}function K_(t,e,n,s){let o=n==="length"?[-V*.5,V*.95]:n==="width"?[V*.5,V*.95]:[V*.9,0],[a,r]=[t,e].
map(([p,u])=>[p+o[0],u+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],h=jt(s,V);return x`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-h/2} y=${c-V*.65} width=${h} height=${V*1.3}/>
    <text x=${l} y=${c} font-size=${V} text-anchor="middle" dominant-baseline="central">${s}</text>`}function Y_(t,e,n){
let s=e.reduce((r,l)=>r+l[0],0)/e.length,o=e.reduce((r,l)=>r+l[1],0)/e.length,a=jt(t,V);return x`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-V*.65}
      width=${a} height=${V*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${V}
      text-anchor="middle" dominant-baseline="central">${t}</text>`}function J_({length_mm:t,width_mm:e,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${jn({length_mm:t,width_mm:e,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function jn({length_mm:t,width_mm:e,height_mm:n}){
return f({text:[t,e,n].map(U).join(" × "),unit:w(0).unit})}function Ep(t,{pixels:e=cs(),tallest:n=e*.9,test:s="\
blank"}={}){let[o,a]=[U(t.length_mm),U(t.width_mm)],r=jt(a,V)+V*1.8,l=On([0,0,t.length_mm,t.width_mm],e-r-12,n-
V*3),[c,h]=l([t.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${Q_(t)}
    width=${c+r+12}
    height=${h+V*3}
    viewBox="-6 -6 ${c+r+12} ${h+V*3}">
    <path class="sheet" d="M${t.outline.map(p=>l(p).join(" ")).join("L")}Z" />
    ${t.lines.map(p=>Z_(p,l))}
    <path
      class="dimension"
      d="M0 ${h+V*1.3}H${c}M-4 ${h+V*1.3+4}l8 -8M${c-4} ${h+V*1.3+4}l8 -8" />
    ${X_(c/2,h+V*1.3,o)}
    <path
      class="dimension"
      d="M${c+V} 0V${h}M${c+V-4} 4l8 -8M${c+V-4} ${h+4}l8 -8" />
    <text x=${c+V*1.6} y=${h/2} font-size=${V} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function X_(t,e,n){let s=jt(n,V);return x`<rect class="ground" x=${t-s/2} y=${e-V*.7} width=${s} height=${V*
1.4}/>
    <text x=${t} y=${e} font-size=${V} text-anchor="middle" dominant-baseline="central">${n}</text>`}function Z_({
bend:t,place:e,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,h]=[l([n,s]),l([o,a])],p=.5+(e%2?-1:1)*.12*
Math.ceil((e-1)/1),[u,m]=[c[0]+(h[0]-c[0])*p,c[1]+(h[1]-c[1])*p];return x`<path class="fold ${r}" d="M${c}L${h}"/>
    <circle class="badge" cx=${u} cy=${m} r=${V*.68}/>
    <text class="badge-number" x=${u} y=${m} font-size=${V*.95} text-anchor="middle"
      dominant-baseline="central">${t}</text>`}function Q_(t){let e=t.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${U(t.length_mm)} by ${U(t.width_mm)}, inside of the box up. ${e.join("; ")}.`}var V,
It,ws=$(()=>{y();E();$a();Ze();ne();V=18;It=t=>!!t?.folded});function Ua(t,e){return!It(t)||!e.side?d:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${Ha(t.folded,{mark:e.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${f(w(e.bend_length_mm))}</b> long.</li>
      ${Np("Punch",e.segments_mm?.punch)} ${Np("Die",e.segments_mm?.die)}
      ${e.clear_between_mm===null||e.clear_between_mm===void 0?d:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${f(w(e.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${ty(e.sides_near??[])}
    </ul>
  </section>`}function Np(t,e){if(!e?.length)return d;let n=e.reduce((o,a)=>o+a,0),s=e.length>1?`${e.map(U).join(
" + ")} = `:"";return i`<li class="pieces">${t}: <b>${s}${U(n)} ${w(0).unit}</b></li>`}function ty(t){if(!t.length)
return d;let[e]=[...t].sort((o,a)=>o.distance_mm-a.distance_mm),n=f(S(e.included_angle_deg)),s=f(w(Math.abs(e.
distance_mm)));return i`<li data-test="sides-near">
    ${e.distance_mm<0?i`<b>The finished ${e.side} side runs ${s} into the ${e.tool}</b>, at ${n}.`:i`The finished ${e.
side} side stays <b>${s}</b> from the ${e.tool}, nearest at ${n}.`}
  </li>`}var ml=$(()=>{y();ws();ne();E()});function Pp(t){return t.number===1?"first":t.turn_quarter?t.turn_over?"quarter-over":"quarter":t.turn_over&&t.
turn_end?"both":t.turn_over?"over":t.turn_end?"end":"same"}function _s(t){let e=Pp(t);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${Ip}${Wp[e]}</svg
    ><b>${Rp[e]}.</b>`}function Ga(t,e){let n=Pp(t);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${Ip}${Wp[n]}</svg>
    <p>
      <b data-test="move">${Rp[n]}.</b>
      <span data-test="face">${t.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${sy(t,e)}
    </p>
  </div>`}function yo({gauged_end:t,gauged_side:e},n){return e?`${e} side`:`${t} end${n?` (flat ${t==="left"?1:
n})`:""}`}function sy(t,e){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=t;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=yo(t,e);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var Rp,Ip,fl,Bp,ey,Cp,ny,Wp,ys=$(()=>{y();Rp={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},Ip=x`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,fl=x`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
Bp=x`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,ey=x`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
Cp=x`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,ny=x`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
Wp={first:[ey],same:[ny],over:[fl],end:[Bp],both:[fl,Bp],quarter:[Cp],"quarter-over":[fl,Cp]}});function vo({frames:t},e){let n=t.findIndex(a=>a.share>=e);if(n<0)return t[t.length-1];if(n===0)return t[0];let[
s,o]=[t[n-1],t[n]];return gl(s,o,(e-s.share)/(o.share-s.share))}function gl(t,e,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(t.share,e.share),phase:e.phase,included_angle_deg:s(t.included_angle_deg,
e.included_angle_deg),punch_y_mm:s(t.punch_y_mm,e.punch_y_mm),left:o(t.left,e.left),right:o(t.right,e.right),inside_radius_mm:s(
t.inside_radius_mm,e.inside_radius_mm),half_arc_mm:s(t.half_arc_mm,e.half_arc_mm),gauge_x_mm:t.gauge_x_mm===null||
e.gauge_x_mm===null?null:s(t.gauge_x_mm,e.gauge_x_mm)}}function Dp({frames:t}){let e=t.find(o=>o.punch_y_mm<=0)??
t[0],n=Math.min(...t.map(o=>o.punch_y_mm)),s=[...t].reverse().find(o=>o.phase==="bend")??t[t.length-1];return{
before:e.share,after:n<0?s.share:t[t.length-1].share}}function Fp(t,e){let n=-e.punch_travel_mm,s=e.phase==="b\
end",o=c=>s?c.included_angle_deg:e.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?e.included_angle_deg:e.phase===
"approach"?n:-n,r=oy(t.frames,e.phase);return{...ay(r,o,a),punch_y_mm:n}}function oy(t,e){let n=e==="withdrawa\
l"?["release","withdrawal"]:[e],s=t.findIndex(a=>n.includes(a.phase)),o=t.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:t}function ay(t,e,n){for(let a=1;a<t.length;a+=1){let[r,l]=[e(t[a-1]),e(t[a])];if(n<=r&&
n>=l&&r>l)return gl(t[a-1],t[a],(r-n)/(r-l))}if(n>e(t[0]))return t[0];let[s,o]=t.slice(-2);return o.phase==="b\
end"?gl(s,o,(e(s)-n)/(e(s)-e(o))):o}function ry({thickness_mm:t,left:e,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=vs([[-a,-t/2],[-a,t/2]],s),[h,p]=vs([[a,-t/2],[a,t/2]],o),u=([g,b])=>`${g} ${-b}`,
m=g=>g.map(b=>`L${u(b)}`).join("");return`M${u(l)}A${r+t} ${r+t} 0 0 0 ${u(h)}${m(vs(n,o))}L${u(p)}A${r} ${r} \
0 0 1 ${u(c)}${m(vs(e,s))}Z`}function jp(t,{phase:e,punch_y_mm:n}){let s=e==="putting in"||e==="approach",o=t.
frames.filter(u=>u.phase===(s?"putting in":"taking out"));if(!o.length||e==="bend"||e==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:u,right:m})=>[...vs(t.left,u),
...vs(t.right,m)]),[c,h]=[l.map(([u])=>u),l.map(([,u])=>u)];return{bounds:[Math.min(...c),Math.min(...h),Math.
max(...c),Math.max(...h,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function vs(t,[e,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return t.map(([r,l])=>[e+o*r-a*l,n+a*r+o*l])}function Va(t,e,n){let s=-n.
punch_y_mm,o=e.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:ry(e,n),tools:[
t.before.ram,t.before.holder,t.before.punch].map(Mt).filter(Boolean),down:s,gauge:Mt(t.before.gauge),back:a}}var $l=$(
()=>{Ze()});function za({clearance:t}){let e=t?.hits?.[0]??t?.nearest??null;return e&&e.distance_mm<=Kp?e:null}function Hn(t){
let{drawing:e,motion:n}=t;if(!e||!n?.frames?.length)return null;let s=za(t),{before:o,after:a}=Dp(n),r=s?Fp(n,
s):vo(n,(o+a)/2),l=!!t.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:Va(e,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Hit":s?"Closest":"Half way"}}function ks(t){let{clearance:e}=t;
if(!e)return"Clearance was not checked at this step.";let n=za(t);if(!n)return`Nothing comes within ${f(w(Kp,{
digits:0}))} of the part.`;let s=f(w(Math.abs(n.distance_mm))),o=typeof e.needed_mm=="number"?`, ${f(w(e.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${Hp(n.tool)}, ${Up(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${Hp(n.tool)}, ${Up(n)}${e.hits?.length?o:""}.`}function Up({phase:t,included_angle_deg:e,punch_travel_mm:n}){
let s=f(w(Math.max(0,-n),{digits:0}));return t==="approach"?`as the punch comes down, ${s} above the sheet`:t===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${f(S(e))}`}
function bl({motion:t},e){let n=f(S(e.included_angle_deg));if(e.phase==="bend")return t.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(e.phase==="release")return`Letting go, ${n}`;if(e.phase==="taking ou\
t")return`Taking it out${Gp(t,e)}`;if(e.phase==="putting in")return`Putting it in${Gp(t,e)}`;let s=f(w(Math.max(
0,e.punch_y_mm),{digits:0}));return e.phase==="withdrawal"?`Punch rising, ${s} up`:e.punch_y_mm>0?`Punch comin\
g down, ${s} up`:"First touch, sheet flat"}function Gp({frames:t},{phase:e,right:n}){let s=e==="putting in"?t.
find(a=>a.phase==="approach"):[...t].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??
t[0]).right[2]));return o?`, tilted by ${o}°`:", no tilt"}function iy({clearance:t}){let{way_in:e,way_out:n,rides_up:s,
clear:o}=t??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(e==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[zp(e,n,"slide"),zp(e,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${Vp}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${e==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${Vp}`}:null}function fe(t,{short:e=!1}={}){let n=iy(t);return n?
e?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${qp(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${qp(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:d}var Kp,Hp,Vp,zp,qp,ly,cy,Be=$(()=>{y();$l();E();Kp=100;Hp=t=>({gauge:"gauge finger",sheet:"part it\
self"})[t]??t;Vp="Punch still, at its top. Fingers never between.";zp=(t,e,n)=>[t===n&&"in",e===n&&"out"].filter(
Boolean).join(" and ");qp=t=>t==="swing"?ly:cy(t!=="slide"),ly=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,cy=t=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${t?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function _l({segments_mm:t,segments_total_mm:e}){if(!t?.length)return"";let n=t.map(o=>U(o)).join(" + "),s=w(0).
unit;return t.length>1?`${n} = ${U(e??0)} ${s}`:`${n} ${s}`}function xs(t,e=0,n=[]){return t?.length?i`<ul class="tools" data-test="tools">
    ${t.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${wl(s)}</span>
          <span class="more"
            >${[_l(s),Jp(s.steps,e),yl(s,n),dy(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function Jp(t,e){return!t?.
length||t.length===e?"":`step${t.length>1?"s":""} ${t.join(", ")}`}function yl({kind:t,code:e},n){let s=n.filter(
a=>t==="punch"&&a.punch===e),o=s.filter(a=>a.punch_turned);return o.length?`turned round${o.length<s.length?` \
for ${Jp(o.map(({number:a})=>a),0)}`:""}`:""}function dy(t){return t==="good"||!t?"":t==="unknown"?"condition \
unknown":t}function qa(t){let e=t.length_mm_low===t.length_mm_high||t.length_mm_low===void 0;return i`<div class="figures">
      ${Ae("Blank length",w(t.length_mm,{digits:2}),{test:"blank-length",band:e?null:[w(t.length_mm_low,{digits:2}),
w(t.length_mm_high,{digits:2})]})}
      ${Ae("Blank width",w(t.width_mm,t.outline?{digits:2}:{}),{test:"blank-width",band:t.width_mm_low===void 0||
t.width_mm_low===t.width_mm_high?null:[w(t.width_mm_low,{digits:2}),w(t.width_mm_high,{digits:2})]})}
      ${Ae("Mass",ro(t.mass_kg),{test:"blank-mass"})}
    </div>
    ${t.rests_on?i`<p data-test="blank-rests-on">Blank by ${t.rests_on}.</p>`:d}
    ${t.lines?i`<p data-test="relief">${vl(t)}</p>`:d}`}function vl({relief:t,lines:e=[]}){let n=new Set(e.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!t?"":t.shape===
"none"?"Corners without relief.":`Corner reliefs ${t.shape}, ${f(w(t.size_mm,{digits:1}))} ${t.shape==="round"?
"across.":"a side."}`}function Xp(t){let e=s=>w(s,{digits:2}).text,n=[["At",s=>e(s.at_mm)],["Angle",s=>f(S(s.included_angle_deg))],
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
              <th role="rowheader" scope="row">${s.bend} ${hy(t,s)}${s.direction}</th>
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
  </div>`}function hy({lines:t},{bend:e}){let n=t?.find(s=>s.bend===e)?.side;return n?`${n} `:""}function kl(t,e=0){
let n=t.turn_over||t.turn_end||t.turn_quarter,s=t.gauged_against&&t.gauged_against!=="flat edge"?`, against th\
e ${t.gauged_against}`:"",o=t.gauged_end?`${py(yo(t,e))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!t.turn_quarter)}
            data-over=${String(t.turn_over)}
            data-end=${String(t.turn_end)}
            >${_s(t)}</span
          > `:d}
    ${fe(t,{short:!0})} ${o}${t.inside_face==="up"?"top":"bottom"} face
    up.${uy(t)}
  </span>`}function uy({hits:t}){if(!t)return d;let e=t.gauge_x_mm.map(n=>U(n)).join(", ");return i` <span data-test="hits"
    >${t.count} hits, ${f(w(t.pitch_mm,{digits:2}))} apart, gauge X ${e}.</span
  >`}function ge(t){let e=t.operation&&t.operation!=="bend"?t.operation:"bend",n=t.side?`Bend ${t.bend}, ${t.side}`:
`Bend ${t.bend}`;return e==="bend"?n:`${n}, ${e}`}function my(t,e,n){let s=t[`${e}_low`],o=t[`${e}_high`],a=s==
null||s===o?d:i`<small class="band">${n(s).text} to ${f(n(o))}</small>`;return i`${f(n(t[e]))}${a}`}function Yp(t,e,n){
return de(t,t)?t.first_hit?fy(t,e,n):t.limits?my(t,e,n):f(n(t[e])):f(n(null))}function fy(t,e,n){let s=e==="se\
t_angle_deg"?`first hit, ${tl(t.first_hit)}; then about `:"then about ";return i`${f(n(t[e]))}<small class="band"
      >${s}${f(n(t[`expected_${e}`]))}</small
    >`}function Ka(t,{link:e}={}){let n=o=>w(o,{digits:2}),s=t.part?.flats_mm?.length??0;return i`<div class="steps-frame">
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
                ${Yp(o,"set_angle_deg",S)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${Yp(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${f(Zt(o))}<small class="band">expected ${f(en(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch turned round</span>`:
d}
              </td>
              <td role="cell" data-head="Sheet" class="long">${kl(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var wl,py,on=$(()=>{y();ut();Tn();E();ue();ne();Aa();Cn();ys();Be();wl=Ke;py=t=>t[0].toUpperCase()+t.
slice(1)});function Ya(t,e){return i`<header class="step-top">
    <a class="step-card" href="/c/${t.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${t.title||t.display_code}</span></a
    >
    ${xl(t,e)}
  </header>`}function Gt(t,e,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${t}${e.unit&&e.unit!=="°"?i` <span class="unit">${e.unit}</span>`:d}</span
    >
    <span class="value" data-test="${n}-value">${e.text}${e.unit==="°"?"°":d}</span>
  </div>`}var xl,an=$(()=>{y();on();xl=(t,e)=>i`<h1>
    <span data-test="step-number">Step ${e.number} of ${t.plan.steps.length}</span>
    <small
      >${ge(e)}
      ${e.direction}${e.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch turned round</b>`:
d}</small
    >
  </h1>`});function Zp(t,e,n,s,o){let a=Hn(t),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?vo(t.motion,l):null,
h=a&&r==="during"?a.shown:null,p=f(w(t.gauge_x_mm)),u=(m,g,b,_)=>i`<button
      type="button"
      class="button"
      aria-pressed=${b?"true":"false"}
      data-test=${_}
      @click=${()=>{Object.assign(n,g,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${me(t.drawing,{pose:r==="between"?"during":r,close:n.close,opening:t.v_opening_mm,gauge:p,
angle:e,moment:h??(c&&Va(t.drawing,t.motion,c)),near:a?.near??null,mark:r==="during",room:c&&jp(t.motion,c),words:`${ge(
t)}, ${$y(t,r)}. Gauge at ${p}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${by(t,r,c)}
          </p>`:d}
    <div class="toggles">
      ${u("Before",{at:"before"},r==="before","before")}
      ${a?u(a.name,{at:"during"},r==="during","during"):d}
      ${u("After",{at:"after"},r==="after","after")}
      ${u(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?wy(t,l,n,s,o):d}`}function $y(t,e){return e==="before"?"the sheet on the die before the bend":e==="aft\
er"?"at the bottom of the stroke":e==="during"?ks(t):"on its way"}function by(t,e,n){return n?bl(t,n):ks(t)}function wy(t,e,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&_y(e>=1?0:e,n,s,o),s()};return i`<div class="motion">
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
      aria-valuetext=${bl(t,vo(t.motion,e))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function _y(t,e,n,s){let o=performance.now(),a=r=>{!e.playing||s.aborted||(e.share=Math.min(1,t+Math.
max(0,r-o)/gy),e.playing=e.share<1,n(),e.playing&&requestAnimationFrame(a))};Object.assign(e,{at:"between",share:t}),
requestAnimationFrame(a)}var gy,ko,Ja=$(()=>{y();$l();go();E();on();Be();gy=7e3,ko=()=>({at:"before",share:0,close:!1,
playing:!1})});function Qp(t,{waits:e,correction:n}){if(!e&&!n?.to_check?.length)return i`<p data-test="no-setting">${n?.words||
"No new setting comes from this one."}</p>`;let s=n?.said?_t(n.said):n?.what??`${yy(t)} Something else is wron\
g.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${k("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??eh).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function yy(t){let e=Ci(t),n="That is further off than the card’s table of corrections goes.";return e?
`${n} Tools and press end at ${f(S(e.sharpest_deg))} under load.`:n}function tu(t,e){return t.die?i`<p class="why-not-set" data-test="why-not-set">
    ${k("stop")} <b>No angle and depth.</b>
    ${e?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:d}var Sl=$(()=>{y();Tn();E();G()});function eu({stations:t=[]}){return t.length<2&&!t.some(e=>e.off_centre_level!=="ok")?d:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${t.map(e=>i`<li>
            <b>Station ${e.number}</b> ${e.punch}${e.turned?", turned round,":d} over
            ${e.die}: ${nu(e.centre_mm)}; step${e.steps.length>1?"s":""}
            ${e.steps.join(", ")}.
            ${e.off_centre_level==="ok"?d:i`${k(e.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function Xa({stations:t=[]},e){let n=t.find(({steps:s})=>s.includes(e.number));return n&&t.length>1?
`Station ${n.number}, ${nu(n.centre_mm)}`:""}function nu(t){return Math.abs(t)<.5?"in the middle":`its middle ${f(
w(Math.abs(t),{digits:0}))} to the ${t>0?"right":"left"} of the press's middle`}var Za=$(()=>{y();E();G()});function Qa(t,e){let n=e.checks.filter(l=>Ht(l)!=="ok"),s=t.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=t.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+l.words,{...l,sign:Ht(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function tr(t,e,n,s,o){
if(!e.drawing)return i`<p class="state" data-test="no-drawing">
      ${e.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=ee(t,e),r={...e,gauge_x_mm:a.gauge_x_mm};return Zp(r,Ba(e,a),n,s,o)}function er(t,e){let n=ee(
t,e);return n.set_angle_deg===null&&e.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${Gt("Gauge X",w(n.gauge_x_mm),"gauge-x")}
      ${Gt("Gauge R",w(e.gauge_r_mm),"gauge-r")}
      ${Gt("Angle to set",S(n.set_angle_deg),"set-angle")}
      ${Gt("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${us(n.firstHit,e.drawing?"The drawing shows the last hit.":"")}
    ${n.set_angle_deg===null?tu(e,n.fromTrial):d} ${vy(e)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-trial" data-test="from-trial">
            <b>Angle and depth from a first piece.</b> The plan said ${f(S(e.set_angle_deg))} and
            ${f(w(e.punch_depth_mm,{digits:2}))}.
          </p>`:d}
    ${e.gauge_draw_back_mm?i`<p class="draw-back" data-test="draw-back">
            <b>Draw the gauge back ${f(w(e.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would hit it.
          </p>`:d}
    ${ky(e)}`}function vy(t){let e=La(t);return e===d?d:i`<p class="press-force" data-test="press-force">Allow for ${e}</p>`}
function ky({hits:t}){return t?i`<div class="hits" data-test="hits">
    <b>${t.count} hits</b>, ${f(S(t.angle_each_deg))} each. Move the gauge
    ${f(w(t.pitch_mm,{digits:2}))} each time:
    ${t.gauge_x_mm.map(e=>w(e).text).join(" · ")}
  </div>`:d}function su(t,e){if(!e.die)return d;let n=Xa(t,e);return i`<dl class="step-tools" data-test="step-tools">
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
    ${$s(e)}`}var nr=$(()=>{y();Pt();E();ue();G();Cn();Ja();In();Sl();an();Za()});function ou(t,e,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=Qa(t,e),c=l.filter(m=>Ht(m)!=="note"),h=l.length>
xy,p=h?c:l,u=e.number===t.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-step"
    data-code=${t.code}
    data-step=${e.number}
    data-revision=${t.revision}>
    <header class="step-top">
      ${sr(n,o)}
      <p class="bench-card" data-test="bench-card">${t.title||t.display_code}</p>
      ${xl(t,e)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${vt(r)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${Ga(e,t.part.flats_mm.length)}${fe(e)}</div>
      <section class="step-set" aria-label="What to set">${er(t,e)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${h?"many":""}" aria-label="What to watch">
        ${p.length?vt(p):d}${Ua(t.plan,e)}
      </section>
      <section class="step-with" aria-label="Tools">${xs(Sy(t,e),0)}</section>
    </div>
    ${ru({back:e.number>1,label:u?"Done":"Next",more:u?"":`step ${e.number+1}`},o)}
  </article>`}function au(t,{name:e,lines:n,acts:s}){let o=t.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-done"
    data-code=${t.code}
    data-step=${o+1}>
    <header class="step-top">
      ${sr(e,s)}
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
    ${ru({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function ru({back:t,label:e,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!t} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${e}${n?i` <small>${n}</small>`:d}
    </button>
  </nav>`}var xy,Sy,sr,Tl=$(()=>{y();sn();ml();G();ys();on();an();Be();nr();xy=3;Sy=(t,e)=>t.plan.tools.filter(
n=>n.steps.includes(e.number)).map(n=>({...n,steps:[]}));sr=(t,e)=>i`<button
    type="button"
    class="button bench-name"
    data-test="bench-name"
    aria-label="${Ne(t)}, this display. Choose another"
    @click=${e.choose}>
    ${Ne(t)}
  </button>`});function iu({names:t,silent:e,typed:n,wrong:s,here:o},a){return i`<div class="bench-choose" data-test="bench-choose">
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
                  ${Ne(r)}
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
            Stay at ${Fn(o)}
          </button>`:d}
    ${cl()}
  </div>`}function hu({answers:t,refused:e},n,s,o){return i`${t===!1?i`<p class="bench-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again by itself.`}
        </p>`:d}
  ${e?i`<p class="bench-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${e}
        </p>`:d}
  ${s?i`<p class="bench-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:d}`}var lu,cu,du,Ml,pu=$(()=>{y();F();dl();sn();dt();Tl();J();lu=t=>Ml(t,"bench-idle",Ne(t.name),
i`<p>Open a card on a phone and choose this bench.</p>
      ${cl()}`),cu=(t,e,n)=>Ml(n,"bench-no-card",W(t),e instanceof O?i`<p>${e.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes by itself when the shop
          is back.
        </p>`),du=(t,e,n)=>Ml(n,"bench-no-step",`There is no step ${e}`,i`<p>
      ${t.title||t.display_code} has ${t.plan.steps.length} now. Choose the step on the phone.
    </p>`),Ml=({name:t,lines:e,acts:n},s,o,a)=>i`<article class="step bench-step" data-test=${s}>
    <header class="step-top">${sr(t,n)}</header>
    ${e}
    <div class="bench-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var fu={};nt(fu,{show:()=>My});function My(t){wp(t.signal);let e=hl();e?mu(t,e):uu(t,"")}function uu(t,e){t.title(
"Bench screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:e},o;t.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&t.render(iu(s,c)),r=p=>{n.abort();let u=hl();mu(t,u?.name===p?u:{name:p,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let p=s.typed.trim();if(s.names?.includes(p))return r(p);try{r((await vp(p||" ")).name)}catch(u){
s.wrong=u instanceof O?u.errors.name?.[0]??u.message:String(u.message),a()}},type:p=>Object.assign(s,{typed:p})},
h=async()=>{try{Object.assign(s,{names:(await Dn(n.signal)).map(({name:p})=>p),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),t.ready(),o=setTimeout(h,Ty))};a(),h()}function mu(t,e){let{name:n}=e,s=new AbortController,
{signal:o}=s;t.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:e.code,
step:e.step},l=null,c=null,h=0,p=ko(),u=ja(n,e.etag,{keepMs:1/0,heard:(v,N)=>{e={...e,etag:N},b({code:v.code,step:v.
step},!1)},sent:(v,N,Z)=>m({etag:N,unsent:Z}),changed:v=>v.gone?g(""):L()},o);function m(v){e={...e,...r,...v},
pl(e)}function g(v){s.abort(),v||pl(null),uu(t,v)}function b(v,N){let Z=v.code!==r.code||v.step!==r.step;v.code!==
r.code&&(l=null),Z&&(p=ko()),r=v,m({unsent:N}),N&&u.move(v),Z||!l&&v.code?_():L()}async function _(){a.abort(),
a=new AbortController;let v=a.signal;if(h=0,c=null,L(),!!r.code)try{await he(r.code,N=>{v.aborted||(l=N,h=0,L())},
v)}catch(N){if(v.aborted||o.aborted)return;c=N,L()}}let T={next:()=>{if(!l)return;let v=l.plan.steps.length;b(
{code:l.code,step:r.step>v?1:r.step+1},!0)},back:()=>l&&r.step>1&&b({code:l.code,step:r.step-1},!0),clear:()=>b(
{code:null,step:0},!0),choose:()=>g(n),newer:()=>_()};function L(){if(o.aborted)return;let v=hu(u.standing(),!!l,
h,T.newer);t.title(l?`${l.title||l.code}, ${n}`:n),t.render(B({name:n,lines:v,acts:T})),(l||c||!r.code)&&t.ready()}
function B(v){if(!r.code)return lu(v);if(!l)return c?cu(r.code,c,v):Tt(`Opening ${W(r.code)}…`);let N=l.plan.
steps,Z=N[r.step-1];return Z?ou(l,Z,v,tr(l,Z,p,L,a.signal)):r.step===N.length+1?au(l,v):du(l,r.step,v)}Ap(T,o),
wt(L,o),document.addEventListener("sync",async v=>{if(!l)return c&&v.detail.reached?_():void 0;let N=await te(
l.code).catch(()=>{});!N||N.code!==l?.code||N.revision===l.revision||h===N.revision||(h=N.revision,L())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),e.unsent&&u.move(r),_()}var Ty,gu=$(()=>{F();dl();sn();ul();Pt();
dt();Lp();st();Nt();pu();Tl();Ja();Bt();nr();Ty=3e3});function Q(t,e){let n=document.getElementById("notices"),s=()=>Fe(i``,n);Fe(i`<div class="notice" data-test="notice">
      <span>${t}</span>
      <button type="button" @click=${()=>{s(),e?.act()}}>${e?.label??"Close"}</button>
    </div>`,n),clearTimeout($u),e||($u=setTimeout(s,8e3))}var $u,ae=$(()=>{y()});function bu(t){try{let e=JSON.parse(localStorage.getItem(Ol(t))??"null");return e&&Array.isArray(e.form?.flats)&&
Array.isArray(e.form?.bends)?e:null}catch{return null}}function Al(t,e){try{return localStorage.setItem(Ol(t),
JSON.stringify({...e,kept_at:new Date().toISOString()})),!0}catch{return!1}}function Ll(t){try{localStorage.removeItem(
Ol(t))}catch{}}var Ol,wu=$(()=>{Ol=t=>`flangebook.part.${t||"new"}`});var or,$e,ar,rr,xo=$(()=>{Me();gs();E();or=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
$e=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),ar=t=>({angle:String(t.included_angle_deg),direction:t.
direction,radius:z(t.inside_radius_mm),kind:t.kind??"bend",gap:t.kind==="open_hem"?z(t.hem_gap_mm):"",...bo(t)}),
rr=(t,e)=>({included_angle_deg:t.kind==="bend"?pe(t.angle):0,direction:t.direction,kind:t.kind,...t.radius.trim()&&
t.kind==="bend"?{inside_radius_mm:et(t.radius,e)}:{},...t.kind==="open_hem"?{hem_gap_mm:et(t.gap,e)}:{},...Ca(
t)})});function ir(t="tray"){let e=()=>t==="lips-in"?{flats:["",""],bends:[$e(),$e()]}:t==="lips-out"?{flats:["",""],
bends:[$e(),{...$e(),direction:"down"}]}:{flats:[""],bends:[$e()]};return{length:"",width:"",there:t==="channe\
l"?["left","right"]:[...Un],alike:!0,sides:{left:e(),right:e(),front:e(),back:e()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function yu(t,e){let n=ir(e);for(let s of Un){let o=t.sides[t.alike?
t.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...t,there:n.there,sides:n.
sides}}function vu({there:t,sides:e,alike:n}){let s=(n?t.slice(0,1):t).map(r=>e[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return t.length===2&&t.includes("left")&&t.includes("right")&&s.every(o)?"channel":t.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function ku(t){let e=Un.
filter(o=>t.sides[o]),n=e.map(o=>JSON.stringify(t.sides[o])),s=ir().sides;for(let o of Un){let a=t.sides[o]??t.
sides[e[0]];s[o]={flats:a.flats_mm.map(z),bends:a.bends.map(ar)}}return{length:z(t.length_mm),width:z(t.width_mm),
there:e,alike:n.every(o=>o===n[0]),sides:s,relief:t.relief,reliefSize:z(t.relief_mm),corner:t.corner,gap:z(t.gap_mm),
firstPair:t.first_pair??"left-right"}}function Mu(t,e){let n=s=>t.there.includes(s)?Su(t,s).flats.map((o,a)=>`${s}\
 ${Ms(a)}`):[];return El.filter(s=>s.some(o=>t.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...e(s,
o),...n(o)])}function Ou(t,e){let n=o=>et(o,e),s=t.there.map(o=>{let a=Su(t,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>rr(r,e))}]});return{length_mm:n(t.length),width_mm:n(t.width),sides:Object.fromEntries(
s),relief:t.relief,corner:t.corner,...t.firstPair==="front-back"?{first_pair:t.firstPair}:{},...t.reliefSize.trim()&&
t.relief!=="none"?{relief_mm:n(t.reliefSize)}:{},...t.gap.trim()&&t.corner==="closed"?{gap_mm:n(t.gap)}:{}}}function Ss(t){
return[["box.length_mm","length of the base",t.length],["box.width_mm","width of the base",t.width],...Nl(t).flatMap(
e=>Oy(t,e))]}function Oy({sides:t,alike:e},n){let s=e?"":`${n} `;return t[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=t[n].bends[a],h=`${s}${Ms(a)}`;return[[Ts(n,a),h,o],...r==="bend"?[[lr(n,a),`angle of the ${h}`,
l]]:[],...r==="open_hem"?[[`${rn(n,a)}.hem_gap_mm`,`gap of the ${h}`,c]]:[]]})}function Au(t,e){if(!t.alike)return e;
let n=t.there[0];return Object.fromEntries(Object.entries(e).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function Lu(t){let[,e,n,s,o,a]=t.split(".");if(e!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[e]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${Ms(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function Eu(t,e,n,s){
let o=t.sides[e];return cr(t,e,{...o,flats:o.flats.with(n,s)})}function Os(t,e,n,s){let o=t.sides[e];return cr(
t,e,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function Nu(t,e){let{flats:n,bends:s}=t.sides[e],o=s.map(
a=>({...a,kind:"bend"}));return cr(t,e,{flats:[...n,""],bends:[...o,$e()]})}function Bu(t,e){let{flats:n,bends:s}=t.
sides[e];return cr(t,e,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function Cu(t,e){let n=Un.filter(o=>o===e!==
t.there.includes(o));if(!n.length)return t;let s=t.sides[t.there[0]];return{...t,there:n,sides:t.alike?{...t.sides,
[n[0]]:s}:t.sides}}function Pu(t,e){let n=t.sides[t.there[0]];return{...t,alike:e,sides:e?t.sides:{left:n,right:n,
front:n,back:n}}}var El,Un,_u,xu,Su,Gn,Tu,Nl,Ts,rn,lr,Ms,cr,Vn=$(()=>{xo();E();El=[["left","right"],["front","\
back"]],Un=El.flat(),_u=6;xu=({there:t})=>El.every(e=>e.some(n=>t.includes(n))),Su=(t,e)=>t.sides[t.alike?t.there[0]:
e],Gn=t=>Mu(t,()=>[]),Tu=t=>Mu(t,(e,n)=>[`base, ${e} to ${n}`]);Nl=({there:t,alike:e})=>e?t.slice(0,1):t;Ts=(t,e)=>`\
box.sides.${t}.flats_mm.${e}`,rn=(t,e)=>`box.sides.${t}.bends.${e}`,lr=(t,e)=>`${rn(t,e)}.included_angle_deg`,
Ms=t=>t===0?"wall":t===1?"lip":`flat ${t+1}`;cr=(t,e,n)=>({...t,sides:{...t.sides,[e]:n}})});function Cl(t){if(!t)return So();let{first:e,last:n,margin_mm:s}=t;return{first:e?String(e):"",last:n?String(n):
"",no_turn_over:!!t.no_turn_over,no_turn_end:!!t.no_turn_end,one_set_up:!!t.one_set_up,critical_flats:[...t.critical_flats??
[]],margin:s===void 0||s===Bl?"":z(s)}}function Pl(t,e){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=t??So(),h={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:et(
c,e)}:{}};return Object.keys(h).length?{wishes:h}:{}}function Rl(t,e){if(!t)return{};let n=e?-1:1,s=a=>!a||Number(
a)===e?"":Number(a)>e?String(Number(a)+n):a,o=t.critical_flats.filter(a=>!e||a!==e+1).map(a=>a>e?a+n:a);return{
wishes:{...t,first:s(t.first),last:s(t.last),critical_flats:o}}}function dr(t){let{first:e,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=t??So();return[e&&`bend ${e} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var Bl,So,Ru,hr=$(()=>{E();Bl=2,So=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});Ru=t=>({...t,first:"",
last:"",critical_flats:[]})});function Wl(t){return{unit:C(),title:"",note:"",metal:t,thickness:"",length:"",flats:["",""],bends:[$e()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function pr({aside:t,...e},n){let s=Iu({...e,box:n?e.box??t??ir():
null});return n?s:{...s,...e.box?{aside:e.box}:{}}}function Wu(t,e){return t.box&&e&&String(Gn(t.box))===String(
Gn(e))&&t.box.firstPair===e.firstPair?{...t,box:e}:Iu({...t,box:e})}function To(t,e){return t.box?{...Wl(t.metal),
title:t.title??"",note:e,thickness:z(t.thickness_mm),dimension:t.dimension??"din6935",order:t.order??null,wishes:Cl(
t.wishes),tools:bo(t.tools),box:ku(t.box)}:{unit:C(),title:t.title??"",note:e,metal:t.metal,thickness:z(t.thickness_mm),
length:z(t.bend_length_mm),flats:t.flats_mm.map(z),bends:t.bends.map(ar),dimension:t.dimension??"din6935",grain:t.
grain??"",order:t.order??null,wishes:Cl(t.wishes),tools:bo(t.tools),holes:(t.holes??[]).map(n=>({flat:String(n.
flat),position:z(n.position_mm),diameter:z(n.diameter_mm)}))}}function As(t){let e=n=>et(n,t.unit);return t.box?
{title:t.title.trim(),metal:t.metal,thickness_mm:e(t.thickness),dimension:t.dimension,box:Ou(t.box,t.unit),...t.
order?{order:t.order}:{},...Pl(t.wishes,t.unit),...el(t.tools)}:{title:t.title.trim(),metal:t.metal,thickness_mm:e(
t.thickness),bend_length_mm:e(t.length),flats_mm:t.flats.map(e),bends:t.bends.map(n=>rr(n,t.unit)),dimension:t.
dimension,...t.grain?{grain:t.grain}:{},...t.order?{order:t.order}:{},...Pl(t.wishes,t.unit),...el(t.tools),...t.
holes.length?{holes:t.holes.map(n=>({flat:pe(n.flat),position_mm:e(n.position),diameter_mm:e(n.diameter)}))}:{}}}
function ur(t){let e=[["metal","metal",t.metal],["thickness_mm","thickness",t.thickness]];return(t.box?[...e,...Ss(
t.box)]:[...e,["bend_length_mm","length",t.length],...t.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...t.
bends.flatMap((s,o)=>Ay(s,o)),...t.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function Ay({kind:t,angle:e,gap:n},s){return t==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,e]]:t==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function Du(t,e,n){return{...t,flats:t.flats.with(e,n)}}function zn(t,e,n){return{...t,bends:t.
bends.with(e,{...t.bends[e],...n})}}function Fl(t,e){let n=t.bends.at(e==="left"?0:-1),s={...$e(),direction:n?.
direction??"up"},o=e==="left"?t.bends:t.bends.map((r,l)=>l>0&&l===t.bends.length-1?{...r,kind:"bend"}:r);if(e===
"right")return{...t,bends:[...o,s],flats:[...t.flats,""],order:null};let a=t.holes.map(r=>({...r,flat:ju(r.flat,
1,1)}));return{...t,bends:[s,...o],flats:["",...t.flats],order:null,holes:a,...Rl(t.wishes,0)}}function Fu(t,e){
let n=e+2,s=t.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:ju(o.flat,n,-1)}));return{...t,bends:t.
bends.toSpliced(e,1),flats:t.flats.toSpliced(e+1,1),order:null,holes:s,...Rl(t.wishes,e+1)}}function ju(t,e,n){
let s=Number(t);return Number.isInteger(s)&&s>=e?String(s+n):t}function mr(t){let e=t.split(/[^\d]+/).filter(Boolean).
map(Number);return e.length?e:null}function Hu(t,e){return e===0||e===t.bends.length-1}var Il,Iu,Dl,ln=$(()=>{
xo();Vn();Me();gs();E();hr();Il=40;Iu=t=>({...t,order:null,...t.wishes?{wishes:Ru(t.wishes)}:{}});Dl=t=>JSON.stringify(
{...As(t),title:""})});async function jl(t,e){try{let{body:n}=await M("POST","/cards",{body:{...Gu(t),code:e},timeout:Uu});return{saved:await qu(
n)}}catch(n){if(n instanceof O&&n.status===409)return{taken:e};throw zu(n)}}async function Vu(t,e){let n={...Gu(
t),reason:t.reason??""},s=Ly(e,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await M("PUT",`/cards/${e.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:Uu});return await Jc().then(c=>zs({...s,number:c},l)).catch(
()=>{}),{saved:await qu(r)}}catch(o){if(o instanceof O&&o.status===412)return{stale:await ke(e.code)};throw zu(
o)}}function Ly(t,e){let n=JSON.stringify(e);t.saving?.wanted!==n&&(t.saving={id:Wt(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=t;return{id:t.saving.id,number:0,kind:"edit",code:s,body:e,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function zu(t){return t instanceof O&&(t.errors=Object.fromEntries(Object.entries(t.
errors).map(([e,n])=>[e.replace(/^part\./,""),n]))),t}async function qu(t){return ie(t).catch(()=>t)}var Uu,Gu,
Ku=$(()=>{F();Pt();Et();ln();st();Nt();Uu=6e4,Gu=t=>({part:As(t),note:t.note,...P().name?{by:P().name}:{}})});function Xu(t,{pixels:e=cs(),tallest:n=e*.45,test:s="blank"}={}){let o=U(t.width_mm),a=e-jt(o,K)-K*2,r=a/t.length_mm,
l=t.width_mm*r>n,c=l?n:Math.max(t.width_mm*r,3),h=Yu(t.bend_lines.map(b=>[b.at_mm*r,K*1.8+jt(Hl(b),K)]),a),p=Yu(
t.bend_lines.map(b=>[b.at_mm*r,jt(U(b.at_mm),K)]),a),u=Ju(h)*Mo+K*.4,m=Ju(p)*Mo+K*.4,g=u+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${Ey(t)}
      viewBox="-8 -4 ${e+8} ${g+m+Mo*1.4}">
      ${l?By(a,u,g):x`<rect class="sheet" x="0" y=${u} width=${a} height=${c}/>`}
      ${t.bend_lines.map((b,_)=>Ny(b,b.at_mm*r,h[_],p[_],u,g))}
      ${Cy(a,g+m+K*.7,U(t.length_mm))}
      ${Py(a+K,u,g,o)}
    </svg>
    ${l?i`<p class="hint">Width ${f({text:o,unit:""})} is drawn short at the break.</p>`:d}`}function Hl(t){let e=t.
included_angle_deg?f(S(t.included_angle_deg)).replace(".0°","°"):"hem";return`${t.direction} ${e}`}function Ey(t){
let e=t.bend_lines.map(n=>`bend ${n.bend} ${Hl(n)} at ${U(n.at_mm)}`);return`Blank ${U(t.length_mm)} by ${U(t.
width_mm)}. ${e.join("; ")}.`}function Yu(t,e){let n=[];return t.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),
Math.max(e-o/2,o/2)),r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function Ny(t,e,n,s,o,a){
let r=o-K*.4-Mo*(n.row+.5),l=a+K*.4+Mo*(s.row+.5),c=n.at-n.width/2;return x`<path class="fold ${t.direction}" d="M${e} ${o}V${a}"/>
    <path class="leader" d="M${e} ${o}V${r+K*.8}M${e} ${a}V${l-K*.8}"/>
    <rect class="ground" x=${c} y=${r-K*.75} width=${n.width} height=${K*1.5}/>
    <circle class="badge" cx=${c+K*.75} cy=${r} r=${K*.68}/>
    <text class="badge-number" x=${c+K*.75} y=${r} font-size=${K*.95} text-anchor="middle"
      dominant-baseline="central">${t.bend}</text>
    <text x=${c+K*1.7} y=${r} font-size=${K} dominant-baseline="central">${Hl(t)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-K*.7} width=${s.width}
      height=${K*1.4}/>
    <text x=${s.at} y=${l} font-size=${K} text-anchor="middle"
      dominant-baseline="central">${U(t.at_mm)}</text>`}function By(t,e,n){let s=(e+n)/2,o=`L${t*.52} ${s+3}L${t*
.54} ${s-14}L${t*.58} ${s+8}L${t*.6} ${s-9}`,a=`L${t*.6} ${s-1}L${t*.58} ${s+16}L${t*.54} ${s-6}L${t*.52} ${s+
11}`;return x`<path class="sheet" d="M0 ${e}V${s+3}${o}L${t} ${s-9}V${e}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${t*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${t} ${s-1}V${n}Z"/>`}function Cy(t,e,n){let s=jt(n,K);return x`<path class="dimension"
      d="M0 ${e}H${t}M-4 ${e+4}L4 ${e-4}M${t-4} ${e+4}L${t+4} ${e-4}"/>
    <rect class="ground" x=${t/2-s/2} y=${e-K*.7} width=${s} height=${K*1.4}/>
    <text x=${t/2} y=${e} font-size=${K} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function Py(t,e,n,s){let o=a=>`M${t-4} ${a+4}L${t+4} ${a-4}`;return x`<path class="dimension" d="M${t} ${e}V${n}${o(
e)}${o(n)}"/>
    <text x=${t+K*.6} y=${(e+n)/2} font-size=${K}
      dominant-baseline="central">${s}</text>`}var K,Mo,Ju,Zu=$(()=>{y();E();$a();ne();K=18,Mo=K*1.5;Ju=t=>Math.
max(0,...t.map(e=>e.row+1))});function Qt(t,{mark:e=0,...n}={}){if(!It(t))return fh(t,{mark:e,...n});let s=t.blank.lines.find(o=>o.bend===e)?.
side??"";return Ha(t.folded,{...n,mark:s})}function Ls(t,e={}){return t.outline?Ep(t,e):Xu(t,e)}var cn=$(()=>{
ws();Zu();ne()});function Es({how:t,differences:e},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
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
  </section>`}function fr(t,e,n){return n.filter(({name:s})=>(t[s]??"")!==(e[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:e[s]??"",mine:t[s]??""}))}var Ns=$(()=>{y();G()});function tm(t,e,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=To(t.part,t.note),r=[...new Set([...Ul(e),...Ul(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=fr(Qu(e),Qu(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
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
            ${l.length?l.map(({label:c,theirs:h,mine:p})=>i`<tr>
                        <td>${c}</td>
                        <td>${h||"empty"}</td>
                        <td>${p||"empty"}</td>
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
  </section>`}function Ul(t){return[{label:"Title",value:t.title},{label:"Note",value:t.note},{label:"Metal",value:t.
metal},{label:"Thickness",value:t.thickness},{label:"Length",value:t.length},{label:"Measured",value:t.dimension},
{label:"Grain",value:t.grain},{label:"Order",value:t.order?.join(", ")??""},{label:"Order keeps to",value:dr(t.
wishes)},{label:"Tools",value:Rn(t.tools)},...t.box?[...Ss(t.box).map(([,e,n])=>({label:`${e[0].toUpperCase()}${e.
slice(1)}`,value:n})),{label:"Corners",value:`${t.box.corner}, relief ${t.box.relief} ${t.box.reliefSize} ${t.
box.gap}`.trim()},{label:"Sides",value:t.box.there.join(", ")}]:[],...(t.box?[]:t.flats).map((e,n)=>({label:`F\
lat ${n+1}`,value:e})),...(t.box?[]:t.bends).map((e,n)=>({label:`Bend ${n+1}`,value:[e.kind==="bend"?`${e.angle}\
°`:e.kind.replace("_"," "),e.direction,e.radius&&`radius ${e.radius}`,e.gap&&`gap ${e.gap}`,Rn(e)].filter(Boolean).
join(", ")})),...t.holes.map((e,n)=>({label:`Hole ${n+1}`,value:`flat ${e.flat}, at ${e.position}, size ${e.diameter}`}))]}
var Qu,em=$(()=>{y();cn();Vn();ln();gs();hr();G();Ns();Qu=t=>Object.fromEntries(Ul(t).map(({label:e,value:n})=>[
e,n]))});function sm(t,e,n){let{box:s,unit:o}=t,a=Au(s,e),r=(l,c)=>n(Wu(t,l),c);return i`${Fy(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${jy(s,r)}
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
        @change=${l=>r(Pu(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${Nl(s).map(l=>Hy(s,l,a,r))}
    <h2>Corners</h2>
    ${zy(t,a,r)}
    ${xu(s)?Y({name:"box.first_pair",label:"Bent first; the others go between them",value:s.firstPair??nm[0][0],
options:nm,change:l=>r({...s,firstPair:l==="front-back"?l:"left-right"})}):d}`}function Fy(t,e){let n=vu(t);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${Ry.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>e(yu(t,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function jy(t,e){let n=s=>{let o=t.there.includes(s),a=o&&t.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>e(Cu(t,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${Un.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function Hy(t,e,n,s){let{flats:o,bends:a}=t.sides[e],r=t.alike?"Each side":`${e[0].toUpperCase()}${e.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${e}">
    <legend>${r}</legend>
    ${Vy(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${Uy(t,e,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${e}"
        ?disabled=${o.length>=_u}
        @click=${()=>s(Nu(t,e),{focus:Ts(e,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${e}"
              @click=${()=>s(Bu(t,e),{focus:Ts(e,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:d}
    </div>
  </fieldset>`}function Uy(t,e,n,s,o){let{flats:a,bends:r}=t.sides[e],[l,c]=[r[n],om(Ms(n))],h=`${rn(e,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${A({next:!0,name:Ts(e,n),label:c,value:a[n],wrong:[...I(s,Ts(e,n)),...I(s,rn(e,n))],change:p=>o(Eu(t,e,
n,p))})}
      ${l.kind==="bend"?A({next:!0,name:lr(e,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:I(s,
lr(e,n)),change:p=>o(Os(t,e,n,{angle:p}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?A({next:!0,name:h,label:"Clear gap inside",value:l.gap,wrong:I(s,h),change:p=>o(Os(t,
e,n,{gap:p}))}):d}
    ${Y({name:`${rn(e,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:Dy,change:p=>o(Os(t,e,n,{direction:p==="down"?"down":"up"}))})}
    ${Gy(t,e,n,s,o)}`}function Gy(t,e,n,s,o){let{flats:a,bends:r}=t.sides[e],l=`${rn(e,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?d:i`<details class="bend-more">
    <summary>
      <span class="unseen">${om(Ms(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":d}
    </summary>
    ${r[n].kind==="bend"?A({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:I(s,l),change:h=>o(Os(t,e,n,{radius:h}))}):d}
    ${c?q({name:`${rn(e,n)}.kind`,label:"Kind",value:r[n].kind,options:or,change:h=>o(Os(t,e,n,{kind:h}))}):d}
  </details>`}function Vy(t){let e=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of t.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[h,p]=n[n.length-1];n.push(
[h+e[o]*Math.cos(s),p-e[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>x`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function zy({box:t,unit:e},n,s){return i`<div class="corner-grid">
      ${Ky(t)}
      <div>
        ${Y({name:"box.corner",label:"Walls at the corner",value:t.corner,options:Wy,change:o=>s({...t,corner:o===
"open"?"open":"closed"})})}
        ${Y({name:"box.relief",label:"Relief",value:t.relief,options:Iy,change:o=>s({...t,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${t.relief==="none"?d:A({next:!0,name:"box.relief_mm",label:t.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:e,hint:"Empty: by radius and thickness.",value:t.reliefSize,wrong:I(n,"box.relief_mm"),change:o=>s(
{...t,reliefSize:o})})}
      ${t.corner==="open"?d:A({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:e,hint:"Empty: by \
thickness.",value:t.gap,wrong:I(n,"box.gap_mm"),change:o=>s({...t,gap:o})})}
    </div>`}function Ky({corner:t,relief:e}){let[n,s]=t==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${qy[e]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var Ry,Iy,Wy,nm,Dy,om,qy,am=$(()=>{y();xo();Vn();ln();J();oe();Ry=[["tray","Tray","M10 14V44H86V14"],
["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channel","Two s\
ides","M10 14V44H86V14M18 36H30M66 36H78"]],Iy=[["round","Round"],["square","Square"],["none","None"]],Wy=[["c\
losed","Closed"],["open","Open"]],nm=[["left-right","Left and right"],["front-back","Front and back"]],Dy=[["u\
p","↑ in"],["down","↓ out"]];om=t=>t[0].toUpperCase()+t.slice(1);qy={none:"L50 40L30 40",square:"L58 20L58\
 48L30 48",round:"L50 31A9 9 0 1 1 41 40L30 40"}});function Gl(t,e){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${rm[t.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(rm).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${xt(t.dimension===n)}
              @change=${()=>e({...t,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?x`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:Yy(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function Yy(t){return t==="din6935"?x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function im(t,e,n){let s=(o,a)=>n({...t,holes:t.holes.with(o,{...t.holes[o],...a})});return i`<details class="holes">
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
  </details>`}function Vl(t,e,n,s){let o=t.box?Gn(t.box):[],a=t.order??e??t.bends.map((l,c)=>c+1),r=(l,c)=>s({
...t,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${t.order?`${t.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${A({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:t.order?.
join(", ")??"",wrong:I(n,"order"),on:"change",change:l=>s({...t,order:mr(l)})})}
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
  </details>`}function lm(t,e,n){return q({name:"grain",label:"Rolling direction against the bend lines",value:t.
grain,wrong:I(e,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...t,grain:s})})}var rm,cm=$(()=>{y();Ve();Vn();ln();J();oe();rm={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:x`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:x`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:x`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var dm,hm=$(()=>{y();Ei();Ni();dm=ra(class extends rs{constructor(){super(...arguments),this.key=d}render(t,e){
return this.key=t,e}update(t,[e,n]){return e!==this.key&&(ia(t),this.key=e),n}})});function pm(t,e,n){let s=t.bends.length>=Il;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(Fl(t,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${t.flats.map((o,a)=>i`${Xy(t,a,e,n)}${a<t.bends.length?Zy(t,a,e,n):d}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(Fl(t,"right"),{focus:`flats_mm.${t.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${Il} bends.</p>`:d}`}function Xy(t,e,n,s){let o=`flats_mm.${e}`;
return i`<li class="flat-row">
    ${A({next:!0,name:o,label:`Flat ${e+1}`,value:t.flats[e],wrong:I(n,o),change:a=>s(Du(t,e,a))})}
  </li>`}function Zy(t,e,n,s){let o=t.bends[e],a=`bends.${e}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([h])=>h===a||h===`${a}.kind`||h===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${e+1}>
    <span class="badge-mark" aria-hidden="true">${e+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:A({next:!0,name:l,label:`\
Bend ${e+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:I(n,l),change:h=>s(zn(t,e,{angle:h}))})}
      ${Y({name:`${a}.direction`,label:`Bend ${e+1} turns`,value:o.direction,options:Jy,change:h=>s(zn(t,e,{direction:h===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(h=>i`<p class="wrong" data-test="wrong-${a}">${h}</p>`)}
    ${o.kind==="open_hem"?Qy(t,e,n,s):d}
    ${dm(e,tv(t,e,n,s))}
  </li>`}function Qy(t,e,n,s){let o=`bends.${e}.hem_gap_mm`;return A({next:!0,name:o,label:"Clear gap inside",
unit:t.unit,value:t.bends[e].gap,wrong:I(n,o),change:a=>s(zn(t,e,{gap:a}))})}function tv(t,e,n,s){let o=t.bends[e],
a=`bends.${e}.inside_radius_mm`;return i`<details class="bend-more">
    <summary>
      <span class="unseen">Bend ${e+1}: </span>${o.radius?`Radius ${o.radius}`:"Radius"},
      ${Rn(o)||"tools"}, kind, remove
    </summary>
    ${o.kind==="bend"?A({next:!0,name:a,label:"Inside radius wanted",unit:t.unit,hint:"Empty: what the tools g\
ive.",value:o.radius,wrong:I(n,a),change:r=>s(zn(t,e,{radius:r}))}):d}
    ${al(`bends.${e}`,o,n,r=>s(zn(t,e,r)))}
    ${Hu(t,e)||o.kind!=="bend"?q({name:`bends.${e}.kind`,label:"Kind",value:o.kind,options:or,change:r=>s(zn(t,
e,{kind:r}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
    <button
      type="button"
      class="button wide"
      data-test="remove-bend-${e+1}"
      ?disabled=${t.bends.length<2}
      @click=${()=>s(Fu(t,e),{focus:`flats_mm.${e}`,undo:`Bend ${e+1} and flat ${e+2} are out.`})}>
      Remove bend ${e+1} and flat ${e+2}
    </button>
  </details>`}var Jy,um=$(()=>{y();hm();xo();ln();J();gs();In();oe();Jy=[["up","↑ up"],["down","↓ down"]]});function fm(t,e,n){let s=t.wishes??So(),o=c=>n({...t,wishes:{...s,...c}}),a=t.box?Gn(t.box).map((c,h)=>[String(
h+1),`Bend ${h+1}: ${c}`]):t.bends.map((c,h)=>[String(h+1),`Bend ${h+1}`]),r=t.box?Tu(t.box).map(c=>c[0].toUpperCase()+
c.slice(1)):t.flats.map((c,h)=>`Flat ${h+1}`),l=dr(s);return i`<details class="wishes" data-test="wishes">
    <summary>
      <span>Order, what it must keep to: <b>${l||"nothing special"}</b></span>
    </summary>
    <div class="fields">
      ${q({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:I(e,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${q({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:I(e,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${gr("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${gr("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${gr("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,h)=>gr(`wishes.flat-${h+1}`,c,s.critical_flats.includes(h+1),p=>o({critical_flats:ev(s.critical_flats,
h+1,p)})))}
      </div>
      ${I(e,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${A({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:t.unit,hint:"Emp\
ty: the usual.",placeholder:z(Bl),value:s.margin,wrong:I(e,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function gr(t,e,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${t}
      data-test=${t}
      .checked=${xt(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${e}</span
    ></label
  >`}var zl,mm,ev,gm=$(()=>{y();Ve();Vn();E();hr();J();oe();zl=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],mm={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};ev=(t,e,n)=>[...t.filter(s=>s!==e),...n?[e]:[]].sort((s,o)=>s-o)});function bm(t,{metals:e,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...e.some(({code:p})=>p===t.metal)?
[]:[[t.metal,t.metal?`${t.metal} (not in the shop)`:"Choose"]],...e.map(({code:p,name:u})=>[p,u])],{box:h}=t;return i`${Y(
{name:"shape",label:"What it is",value:h?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:p=>r(pr(t,p==="box"))})}
    ${A({next:!0,name:"title",label:"Name of the part",value:t.title,wrong:I(a,"title"),change:p=>r({...t,title:p})})}
    ${q({name:"metal",label:"Metal",value:t.metal,options:c,wrong:I(a,"metal"),change:p=>r({...t,metal:p})})}
    <div class="fields">
      ${A({next:!0,name:"thickness_mm",label:"Thickness",unit:t.unit,placeholder:"3 or 16 ga",hint:s?nv(s,t.thickness):
"",value:t.thickness,wrong:I(a,"thickness_mm"),change:p=>r({...t,thickness:p})})}
      ${h?d:A({next:!0,name:"bend_length_mm",label:"Bend length",unit:t.unit,value:t.length,wrong:I(a,"bend_le\
ngth_mm"),change:p=>r({...t,length:p})})}
    </div>
    ${h?i`${sm({...t,box:h},a,r)}
            <h2>More, if it matters</h2>
            ${Gl(t,r)}
            ${s||t.order?Vl(t,s?.order?.sequence,a,r):d}`:i`<h2>Section, left to right <small>${t.unit}</small></h2>
            ${Gl(t,r)} ${pm(t,a,r)}
            <h2>More, if it matters</h2>
            ${lm(t,a,r)} ${im(t,a,r)}
            ${Vl(t,s?.order?.sequence,a,r)}`}
    ${fm(t,a,r)} ${Jh(t,n,a,r)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${xt(t.note)}
        @input=${p=>r({...t,note:p.target.value})}></textarea>
    </div>
    ${o?A({next:!0,name:"reason",label:"Why this change, for the history",value:t.reason??"",wrong:I(a,"reason"),
change:p=>r({...t,reason:p})}):d}`}function nv({part:t,thickness_gauge:e},n){return[/^[\d.,\s]+$/.test(n)?"":f(
w(t.thickness_mm,{digits:2})),e??""].filter(Boolean).join(", ")}function ql(t){return t.box?["title","metal","\
thickness_mm",...Ss(t.box).map(([e])=>e),"box.relief_mm","box.gap_mm","order",...zl,...ol,"note","reason"]:["t\
itle","metal","thickness_mm","bend_length_mm",...t.flats.map((e,n)=>`flats_mm.${n}`),...t.bends.flatMap((e,n)=>[
`bends.${n}.included_angle_deg`,`bends.${n}.inside_radius_mm`,...e.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:
[],`bends.${n}.die`,`bends.${n}.punch`]),...t.holes.flatMap((e,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,
`holes.${n}.diameter_mm`]),"grain","order",...zl,...ol,"note","reason"]}function $r(t){if(t.startsWith("box"))
return Lu(t);let[e,n,s]=t.split(".");return e==="tools"?n==="die"?"Die":"Punch":e==="wishes"?mm[n]??"Order":n===
void 0?$m[e]??e:`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[e]??e} ${Number(n)+1}${s?`, ${$m[s]??s}`:""}`}function wm(t){
let e=t.target;if(t.key!=="Enter"||!(e instanceof HTMLInputElement))return;t.preventDefault();let n=[...e.form.
querySelectorAll("input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(e)+1).find(o=>o.checkVisibility());
s instanceof HTMLElement&&s.focus()}var $m,Kl=$(()=>{y();Ve();E();ln();Vn();am();J();cm();In();um();gm();oe();
$m={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend length",grain:"Rolling direction",
order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"gap",flat:"flat",position_mm:"\
place",diameter_mm:"size",die:"die",punch:"punch"}});function _m({dimensions:t=[]}){let e=t.filter(({error_mm:o})=>o!==null);if(!e.length)return d;let{basis:n,basis_said:s}=e[0];
return i`<h3>How close the flats come out</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${e.map(ov)}
    </ul>
    ${n?i`<p class="hint" data-test="sizes-basis">${s?_t(s):n}</p>`:d}`}function ov({flat:t,flat_name:e=`flat ${t}`,
wanted_mm:n,error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${t}>
    <b>${e[0].toUpperCase()}${e.slice(1)}</b> ${f(w(n))}
    <b>± ${f(sv(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:d}.
  </li>`}var sv,ym=$(()=>{y();E();G();sv=t=>C()==="in"?{text:tt(t/Jt,3),unit:"in"}:w(t,{digits:2})});function br(t,e){if(!qn(t))return d;let{order:n}=t,[s,o]=av(t),a=!!t.part?.order?.length,r=a?e.free():d,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${k(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${vm(n.sequence)}
          </p>`:d}
    ${rv(n.blocked??[])} ${iv(n.remedies??[])} ${lv(n.wishes)}
    ${r===d?d:i`<div class="buttons">${r}</div>`}
    ${cv(n.alternatives,e)} ${eu(t)} ${_m(t)}
  </div>`}function av({order:t,checks:e}){let n=s=>e.some(o=>o.code===s);return t.proven?["ok","Proven"]:n("no\
-order")?["stop","No order"]:e.some(({level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the way"]:
n("order-not-found")?["caution","None found"]:n("clearance-not-checked")?["caution","Not checked"]:["caution",
"Not proven"]}function vm(t){return i`<span class="run" role="img" aria-label="bends ${t.join(", ")}"
    >${t.map(e=>i`<span class="badge-mark" aria-hidden="true">${e}</span>`)}</span
  >`}function rv(t){return t.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${t.map(({bend:e,words:n})=>i`<li><b>Bend ${e}</b> ${n}</li>`)}
    </ul>`:d}function iv(t){return t.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${t.map(({template:e,numbers:n})=>i`<li>${Qe(e,n)}</li>`)}
    </ul>`:d}function lv(t){return t.length?i`<h3>What each wish costs</h3>
    <ul class="order-list" data-test="wish-costs">
      ${t.map(({wish:e,words:n})=>i`<li data-wish=${e}>${n}</li>`)}
    </ul>`:d}function cv(t,{use:e}){return t.length?i`<h3>Other orders that can be made</h3>
    <ul class="order-others" data-test="other-orders">
      ${t.map(({sequence:n,words:s})=>i`<li>${vm(n)} <span class="compared">${s}</span> ${e(n)}</li>`)}
    </ul>`:d}var qn,km,xm,wr=$(()=>{y();G();rt();ym();Za();qn=({order:t})=>Array.isArray(t?.wishes)&&Array.isArray(
t?.alternatives);km=t=>({use:e=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${e.join(", ")}"
      @click=${()=>t(e)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>t(
null)}>
      Let it choose
    </button>`}),xm=t=>({use:e=>R("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${e.join(", ")}"
        href="/part?from=${t}&order=${e.join("-")}"
        >Use this order</a
      >`),free:()=>R("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${t}&order=free"
        >Let it choose</a
      >`)})});function Sm(t,{save:e,order:n}){return i`${ms(t.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>
          ${qa(t.blank)}${Ls(t.blank,{pixels:innerWidth<1e3?innerWidth-24:560})}
        </div>
        <div>
          ${Xp(t.blank)} ${dv(t.blank.bend_lines)}
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
    ${qn(t)?i`<section>
            <h2>Order</h2>
            ${br(t,n)}
          </section>`:d}
    <section>
      <h2>Fetch</h2>
      ${xs(t.tools,t.steps.length,t.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${t.order&&!qn(t)?i`<p data-test="order-words">${t.order.words}</p>`:d}
      ${Ka(t)}
      <div class="step-drawings">${t.steps.map(s=>hv(s,t.part.thickness_mm))}</div>
    </section>
    ${fs(t.checks)} ${nn(t.checks)}`}function dv(t){let e=t.filter(n=>n.opinions?.length);return e.length===0?
d:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${e.length===1?`bend ${e[0].bend}`:`${e.length} bends`}
    </summary>
    ${e.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${f(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function hv(t,e){if(!t.drawing)return d;let n=w(t.gauge_x_mm,{digits:2}),s=Ba(t,{set_angle_deg:t.
set_angle_deg,firstHit:t.first_hit??null}),o=f(S(s)),a={close:!1,opening:t.v_opening_mm??8*e,gauge:n.text,angle:s,
near:Hn(t)?.near??null};return i`<figure class="step-drawing" data-step=${t.number}>
    <figcaption>
      <b>${t.number}. ${ge(t)}</b> ${kl(t)} ${$s(t)}
      <small data-test="origins">${_o(t.origin)}</small>
      ${t.motion?i`<span class="near-words ${t.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${ks(t)}</span
            >`:d}
    </figcaption>
    <div class="poses">
      ${me(t.drawing,{...a,pose:"before",words:`Step ${t.number} before the bend: the sheet on the die, gauge \
at ${f(n)}.`})}
      ${pv(t,a)}
      ${me(t.drawing,{...a,pose:"after",words:`Step ${t.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function pv(t,e){let n=Hn(t);return n?me(t.drawing,{...e,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${t.number}. ${ks(t)}`}):d}var Tm=$(()=>{y();cn();go();E();Cn();$o();wr();In();Ra();Be();on()});function Mm({plan:t,error:e,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${t&&o?"stale":""} ${a===d?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${t?.section?Qt(t,r?{pixels:innerWidth-56,tallest:215}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
d}
    ${a===d?i`<p class="picture-words" role="status" data-test="picture-words">
            ${mv(t,e,n,s)}
          </p>`:r?a:d}
  </div>`}function uv(t){let[e]=Object.entries(t.errors);return e?sl($r(e[0]),e[1]):t.message}function mv(t,e,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,r])=>r).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(e instanceof j)return"The shop's server does not answer. What you type stays on this device.";if(e instanceof
O)return`Not right yet. ${uv(e)}`;if(e)return String(e);if(!t)return n?"Working it out…":"";let o=t.blank.outline?
`Blank ${w(t.blank.length_mm,{digits:2}).text} × ${f(w(t.blank.width_mm,{digits:2}))}`:`Blank ${f(w(t.blank.length_mm,
{digits:2}))}`;return i`${o} ${t.worst==="ok"?d:k(t.worst)}`}var Om=$(()=>{y();cn();F();E();G();Kl();oe()});function gv({seconds:t,deadline_s:e,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
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
        <dd data-test="looking-best">${s?i`<b>${bv(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function bv(t){return $v.filter(([n])=>t[n]).map(([n,s,o])=>`${t[n]} ${t[n]===1?s:o}`).join(", ")||
"no turning"}function Lm({plan:t,progress:e,stopped:n},{cancel:s,again:o,back:a}){return e?gv(e,s):n?wv({again:o,
back:t?a:null}):d}function wv({again:t,back:e}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
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
  </section>`}var fv,Am,$v,_v,yv,Em,Nm=$(()=>{y();fv=.6,Am=({seconds:t})=>t>=fv;$v=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];_v="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",yv="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",Em=t=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${t?yv:_v}
  </div>`});var Cm={};nt(Cm,{show:()=>vv});async function vv(t){let e=no(t.query.get("from")??"").slice(0,7),n=e?"cards.re\
vise":"cards.create";t.title(e?`Edit ${W(e)}`:"New part"),t.render(Tt(e?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([lt("metals",t.signal),lt("dies",t.signal),
lt("punches",t.signal)]),r=await kv(e,s,t.signal);!e&&t.query.get("shape")==="box"&&(r.form=pr(r.form,!0));let l={
...r,plan:null,planned:null,progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,
kept:!0},c=Oe(async(D,ht)=>(await Nc("/plan",As(D),{signal:ht,tell:h})).plan,({question:D,answer:ht,error:re=null})=>{
ht&&Object.assign(l,{plan:ht,planned:D}),Object.assign(l,{error:re,busy:!1,progress:null,summary:l.summary&&re!==
null}),ct()},t.signal,350);function h(D){Am(D)&&(l.progress=D,ct())}function p(D=!1){let ht=Dl(l.form);if(!D&&
ht===l.key&&!l.error)return ct();Object.assign(l,{key:ht,busy:ur(l.form).length===0,progress:null,stopped:!1}),
l.busy?c.ask(l.form,{now:D}):(c.stop(),l.error=null),ct()}let u={cancel(){c.stop(),Object.assign(l,{busy:!1,progress:null,
stopped:!0,error:null}),ct()},again:()=>p(!0),back(){if(!l.planned)return;let D=l.form;Object.assign(l,{form:l.
planned,key:Dl(l.planned),stopped:!1}),l.kept=Al(e,{form:l.form,base:l.base,newCode:l.newCode}),ct(),Q("The pa\
rt of this plan is in the boxes again.",{label:"Put mine back",act:()=>m(D)})}};function m(D,{focus:ht,undo:re}={}){
let we=l.form;l.form=D,l.kept=Al(e,{form:D,base:l.base,newCode:l.newCode}),p(),ht&&requestAnimationFrame(()=>wo(
ht)),re&&Q(re,{label:"Put it back",act:()=>m(we)})}function g(D){m({...l.form,order:D},{undo:D?`Order ${D.join(
", ")} is yours now.`:"The planner chooses the order."})}function b(D){history.replaceState(history.state,"",e?
`/part?from=${e}`:"/part"),g(mr(D))}async function _(D){let[ht]=ur(l.form);if(ht){l.summary=!0,ct(),wo(ht[0]);
return}Object.assign(l,{saving:!0,clash:null,taken:""}),ct();try{let Vt=await D();if("saved"in Vt)return T(Vt.
saved);"stale"in Vt?l.clash=Vt.stale:l.taken=Vt.taken}catch(Vt){l.error=Vt,l.summary=!0}l.saving=!1,ct();let re=l.
error instanceof O?l.error.errors:{},we=ql(l.form).find(Vt=>Object.keys(re).some(kc=>kc===Vt||kc.startsWith(`${Vt}\
.`)));we&&wo(we)}function T(D){Ll(e);let ht=D.revision===l.base?.revision;Q(ht?"Nothing was changed, so nothin\
g was saved.":`Card ${W(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),gt(`/c/${D.code}`)}let L=()=>ft(
n)&&_(()=>l.base?Vu(l.form,l.base):jl(l.form,l.newCode)),B=()=>(l.newCode=Ai(),_(()=>jl(l.form,l.newCode)));function v(){
Ll(e);let D=l.form;Object.assign(l,{restored:!1,plan:null,planned:null,clash:null,...Bm(l.card,s)}),p(!0),Q(e?
"The card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>m(D)})}function N(D){let ht=l.form;
Object.assign(l,{clash:null,base:Yl(D)}),m(To(D.part,D.note)),Q("What is saved is in the boxes now.",{label:"P\
ut mine back",act:()=>m(ht)})}async function Z(D){try{await Bc(`/blank.${D}`,As(l.form),`${l.form.title.trim()||
"blank"}.${D}`)}catch(ht){Q(X(ht))}}function ct(){let D=l.error instanceof O?l.error.errors:{},ht=ur(l.form),re=Lm(
l,u),we=!l.busy&&!l.stopped&&!ht.length&&!l.error;t.render(i`<h1>
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
        ${l.clash?tm(l.clash,l.form,{saveMine:()=>{l.base=Yl(l.clash),L()},takeTheirs:()=>N(l.clash),saveAsNew:B}):
d}
        ${l.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${l.taken}">card ${W(l.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${B}>
                  Save this as another card
                </button>
              </div>`:d}
        ${l.summary?Kh(D,$r,ql(l.form)):d}
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
            ${Mm(l,{open:ht,stale:!we,waiting:re})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${wm}
              @submit=${Vt=>{Vt.preventDefault(),L()}}>
              ${bm(l.form,{metals:s,crib:{dies:o,punches:a},plan:we?l.plan:null,editing:!!e,errors:D,change:m})}
              ${R(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${l.saving}>
                    ${l.saving?"Saving…":e?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?d:re}
            <div class="part-plan ${we||!l.plan?"":"stale"}" data-test="plan">
              ${l.plan&&!we&&!l.busy?i`<p class="stale-note">
                      ${l.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:d}
              ${l.plan?Sm(l.plan,{save:Z,order:km(g)}):Em(!!l.form.box)}
            </div>
          </div>
        </div>`),l.busy||t.ready()}p(!0);let Po=t.query.get("order");Po&&b(Po)}function Bm(t,e){return t?{form:To(
t.part,t.note),base:Yl(t)}:{form:Wl(e[0]?.code??""),base:null}}async function kv(t,e,n){let s=bu(t),o=null;try{
t&&(o=await ke(t,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.newCode,card:o,restored:!0}:
{...Bm(o,e),newCode:Ai(),card:o,restored:!1}}var Yl,Pm=$(()=>{y();F();Pt();dt();ut();mo();ae();wu();ln();Ku();
St();Ct();dt();rt();em();Kl();wr();Tm();Om();Nm();Bt();oe();Yl=t=>({code:t.code,etag:t.etag,revision:t.revision,
revision_id:t.revision_id})});async function Rm(t,e){if(!navigator.mediaDevices?.getUserMedia)throw new Kn(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(xv)}catch(o){throw new Kn(Sv[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return t.aborted&&s(),t.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",e),n}function Im(t){return!!t.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function Wm(t,e){await t.
getVideoTracks()[0].applyConstraints({advanced:[{torch:e}]})}var Kn,xv,Sv,Dm=$(()=>{Kn=class extends Error{constructor(e){
super(e),this.fault=e}},xv={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
Sv={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function Hm(){return _r??=Mv(),_r.catch(()=>_r=void 0),_r}async function Mv(){let t=await Ov(),e=t??await Fm(),
n={own:!!t,async read(s){try{return await e.detect(s)}catch(o){if(e!==t)throw new Bs(String(o));return e=await Fm(),
n.read(s)}}};return n}async function Ov(){let t=globalThis.BarcodeDetector,e=await t?.getSupportedFormats().catch(
()=>[]);return t&&e?.includes("qr_code")?new t(jm):null}async function Fm(){try{let{BarcodeDetector:t,prepareZXingModule:e}=await import("/vendor/barcode-detector/ponyfill.js");
return await e({overrides:{locateFile:()=>Tv},fireImmediately:!0}),new t(jm)}catch(t){throw new Bs(String(t))}}
var Bs,Tv,jm,_r,Um=$(()=>{Bs=class extends Error{},Tv="/vendor/zxing-wasm/zxing_reader.wasm",jm={formats:["qr_\
code"]}});function Vm(t){let e=Ev(t.trim()),n=e?Av.exec(e.pathname)?.[1]:Lv.exec(t.trim())?.[0];if(!n)return{kind:"other",
code:"",words:Bv(t,e)};let{code:s,whole:o,fault:a}=pt(Nv(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${Jl(W(s))} is\
 no card’s code. ${r}`}}function Ev(t){if(!URL.canParse(t))return null;let e=new URL(t);return/^https?:$/.test(
e.protocol)?e:null}function Nv(t){try{return decodeURIComponent(t)}catch{return t}}function Bv(t,e){return e?`\
It leads to ${Jl(e.host)}, not to a card.`:t.trim()?`It holds “${Jl(t.trim())}”, no card’s code.`:"It ho\
lds nothing that can be read."}var Av,Lv,Gm,Jl,zm=$(()=>{dt();Av=/^\/c\/([^/]+)\/?$/i,Lv=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
Gm=40;Jl=t=>t.length>Gm?`${t.slice(0,Gm)}…`:t});async function Ym(t,e,n,s){for(;!s.aborted;){if(t.readyState>=t.HAVE_CURRENT_DATA){let o=await e.read(t);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,Cv))}}function Jm(t,e,n){let o=t.filter(l=>Km(l,e,e)).map(l=>({...Vm(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if(qm(a))return a[0];let r=a.
filter(l=>Km(l.mark,e,n));return r.length>0&&qm(r)?r[0]:"several"}function Km({boundingBox:t},e,n){let s=e.getBoundingClientRect(),
o=Math.max(s.width/e.videoWidth,s.height/e.videoHeight),a=s.x+s.width/2+(t.x+t.width/2-e.videoWidth/2)*o,r=s.y+
s.height/2+(t.y+t.height/2-e.videoHeight/2)*o,{left:l,right:c,top:h,bottom:p}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=h&&r<=p}var Cv,qm,Xm=$(()=>{zm();Cv=60;qm=t=>t.every(e=>e.code===t[0].code)});function Zm(t,e){let{title:n,words:s,again:o}=Pv[t];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${t}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${e}>Try again</button>`:d}
  </section>`}var Xl,Pv,Qm=$(()=>{y();Xl=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,Pv={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${Xl}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${Xl}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${Xl}`,again:!0}}});var ef={};nt(ef,{show:()=>Dv});async function Dv(t){t.title("Scan a label");let e={fault:null,stream:null,lamp:null,
says:tf},n=wa(),s=await Ie().catch(()=>[]),o=new AbortController,a=()=>t.render(Uv(e,{again:h,lamp:p},()=>_a(n,
s,a,"Seven characters, capitals or not."))),r=u=>{Object.assign(e,u),a()},l=()=>{o.abort(),Object.assign(e,{stream:null,
lamp:null})},c=u=>{l(),u instanceof Kn?r({fault:u.fault}):u instanceof Bs?r({fault:"no-decoder"}):t.render(Ge(
u)),t.ready()};async function h(){l();let{signal:u}=o=new AbortController;r({fault:null,says:tf});try{let[m,g]=await Promise.
all([Rm(u,()=>c(new Kn("busy"))),Hm()]);if(u.aborted)return;r({stream:m,lamp:Im(m)?!1:null,says:Rv});let b=document.
querySelector(".scan-view video"),_=document.querySelector(".scan-frame");b.play().catch(()=>{}),t.ready();let T=Fv(
L=>r({says:L}),u);await Ym(b,g,L=>T(Jm(L,b,_)),u)}catch(m){u.aborted||c(m)}}async function p(){if(!e.stream)return;
let u=!e.lamp;await Wm(e.stream,u).then(()=>r({lamp:u}),()=>r({lamp:null}))}t.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():h(),{signal:t.signal}),h()}function Fv(t,e){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>Wv&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?t(Iv):a.kind==="card"?await Hv(a.code,t,e):t(jv(a)),s=performance.
now())}}function jv({kind:t,words:e}){return{kind:"wrong",title:t==="slip"?"Not a right code":"Not a card’s la\
bel",words:`${e} Still looking.`}}async function Hv(t,e,n){let s=W(t);e({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await sh(t,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?gt(`/c/${t}`,{replace:!0}):e(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is a right one, but this shop has no such card: it is another shop’s la\
bel. Still looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server d\
oes not answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wron\
g",title:`${s} could not be opened`,words:o}))}function Uv({fault:t,stream:e,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${t??
s.kind}>
    <h1>Scan a label</h1>
    ${t?Zm(t,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${e} aria-label="What the camera sees"></video>
            ${Gv}
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
  </div>`}var tf,Rv,Iv,Wv,Gv,nf=$(()=>{y();Dm();Pt();dt();Um();Xm();Ct();Nt();Ri();Qm();Bt();tf={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},Rv={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},Iv={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},Wv=2500;Gv=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function sf(t,e,n){rf(t,e,n),Sp(t),$t?.link.move({code:e,step:n},{whatever:!0})}function yr(){$t?.end.abort(),
$t=null,vr(),Oo()}function of(t,e){!$t||$t.at.code!==t||$t.at.step===e||($t.at.step=e,vr(),$t.link.move({code:t,
step:e}),Oo())}function af(t){$t&&($t.at.step=t,$t.link.move({code:$t.at.code,step:t},{whatever:!0}))}function kr(t,e){
document.addEventListener("bench",()=>t(Ao()),{signal:e})}function rf(t,e,n,s=null){$t?.end.abort();let o=new AbortController,
a={name:t,code:e,step:n,answers:null,late:!1,refused:""},r=ja(t,s,{keepMs:Vv,heard:l=>{if(l.code!==a.code)return yr();
a.step=l.step,vr(),Oo()},changed:({gone:l,answers:c,late:h,refused:p})=>{if(l)return yr();Object.assign(a,{answers:c,
late:h,refused:p}),Oo()}},o.signal);$t={at:a,link:r,end:o},vr(),Oo()}function vr(){try{$t?sessionStorage.setItem(
Zl,JSON.stringify({name:$t.at.name,code:$t.at.code,step:$t.at.step})):sessionStorage.removeItem(Zl)}catch{}}function xr(){
if(!$t)try{let{name:t,code:e,step:n}=JSON.parse(sessionStorage.getItem(Zl)??"{}");t&&e&&rf(t,e,n)}catch{}}var Zl,
Vv,$t,Ao,Oo,Sr=$(()=>{ul();sn();Zl="flangebook.on-bench",Vv=5e3,$t=null,Ao=()=>$t?{...$t.at}:null;Oo=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Ot(t){let{fault:e}=pt(t);return i`<div class="state" data-test="bad-code">
    <h1>${W(t)} is not a card</h1>
    ${e||"A card code has seven characters, digits and letters without I, L, O and U."} ${Ql}
  </div>`}function Yn(t,e){if(e instanceof j)return i`<div class="state" data-test="not-kept">
      <h1>${W(t)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${Ql}
    </div>`;if(e instanceof O&&e.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${W(t)}</h1>
      The code is a right one, but this shop has no card of that number. Look at the label again. ${Ql}
    </div>`;throw e}async function be(t,e){let{code:n}=t.params;try{await he(n,e,t.signal)}catch(s){t.signal.aborted||
bt(t,Yn(n,s))}}function bt(t,e){t.title("No such card"),t.render(e),t.ready()}var Ql,Ce=$(()=>{y();F();Pt();dt();
Ql=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function cf(t,{busy:e,fault:n,take:s,settings:o}){return t?.differs?i`<details class="freshness panel" data-test="fresh">
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
                <td>${lf(a,"saved")}</td>
                <td>${lf(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&ft("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
d}
    <p class="wrong" role="alert">${n}</p>
    ${R("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${e} @click=${s}>
        ${e?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:d}function lf(t,e){let n=e==="saved"?t.saved_value:t.fresh_value;return t.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(t.field)&&typeof n=="number"?f(xe(t.field??"",n)):t[e]}var df=$(()=>{y();St();E();rt()});function Lo(t){return t.refused?t.missing?"The shop was put back and does not know its card":`Refused: ${t.refused}`:
t.parked?"Saved here. The card was changed meanwhile: to settle":t.late?`Saved here, not yet in the shop. ${t.
late}`:"Saved here, not yet in the shop. Waiting to be sent"}function hf(t){let e=t.here??[],n=t.proposals??[];
if(!e.length&&!n.length)return d;let s=e.filter(o=>o.refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-settle" data-test="to-settle">
            <p>${k("caution","To settle")} This card was changed in two places at once. Both are kept.</p>
            ${R("cards.revise",i`<a class="button next" href="/c/${t.code}/settle" data-test="settle"
                >Settle ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner settles which holds.</p>`)}
          </div>`:d}
    ${e.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${zv(e.length,n.length>0)}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:d}
          </p>`:d}
  </section>`}function zv(t,e){let n=t===1?"One change of this card waits":`${t} changes of this card wait`;return e?
`${n} until the other one is settled.`:`${n} and ${t===1?"goes out by itself":"go out by themselves"}.`}function Tr(t){
return t==="shop"?"Saved in the shop.":t==="here"?"Saved here, not yet in the shop. It goes out by itself.":t===
"settle"?`The card was changed meanwhile. Both are kept: ${ft("cards.revise")?"settle which holds.":"the owner\
 settles which holds."}`:"Nothing was changed."}var Cs=$(()=>{y();St();G();rt()});async function Mr(t,e){try{Ps=(await Dn(t)).map(({name:n})=>n),t.aborted||e()}catch{}}function Or(t,e,{draw:n,
start:s}){let o=Ao();if(o?.code===t)return qv(o,e);if(!Ps.length)return d;let a=[pf,xp()].find(r=>Ps.includes(
r))??Ps[0];return i`<section class="show-on-bench" aria-label="Bench screen" data-test="show-on-bench">
    ${Ps.length>1?q({name:"bench",label:"Bench",value:a,options:Ps.map(r=>[r,r]),change:r=>{pf=r,n()}}):d}
    <button
      type="button"
      class="button"
      data-test="put-on-bench"
      @click=${()=>{sf(a,t,e),n(),s?.()}}>
      Show on ${Fn(a)}
    </button>
  </section>`}function qv(t,e){let n=Fn(t.name);return i`<section
    class="show-on-bench on"
    aria-label="Bench screen"
    data-test="on-bench"
    data-bench-step=${t.step}>
    <p role="status">${Kv(t,n)}</p>
    ${t.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>af(e)}>
            Show step ${e} there
          </button>`:d}
    <button type="button" class="button" data-test="off-bench" @click=${yr}>Stop</button>
  </section>`}function Kv({answers:t,late:e,refused:n},s){return t===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:e?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var Ps,pf,tc=$(()=>{y();sn();Sr();J();Ps=[],pf=""});function Ar(t){let{drawing:e}=t,n=Hn(t),s=za(t),o=Yv(e,t.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${ec("before","before",uf(e.before),e,o)}
    ${n?ec("during",s?Xi(s).join(" "):"half way",n.shown,e,o,s):d}
    ${ec("after","after",uf(e.after),e,o)}
  </div>`}function Yv(t,e,n){let[s,o,a,r]=Xt([t.before.sheet,t.after.sheet]),l=e??(a-s)/6,[c,h]=n?Bn(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,t.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,h-l),high:Math.max(r+.3*l,2*l,h+l)}}function ec(t,e,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${t}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${Mt(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(h=>x`<path class="tool" d=${h}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?Jv(c,a-o):d}
    </svg>
    <figcaption data-test="small-${t}">${e}</figcaption>
  </figure>`}function Jv(t,e){if(!Ea(t,e))return x`<path class="ring" d=${lo([t.on_sheet,t.on_tool])}/>`;let[n,
s]=Bn(t);return x`<circle class="ring" cx=${n} cy=${-s} r=${e*.05}/>`}var uf,nc=$(()=>{y();Be();Zi();Ze();uf=({
sheet:t,ram:e,holder:n,punch:s,gauge:o})=>({sheet:Mt(t),tools:[e,n,s].map(Mt).filter(Boolean),down:0,gauge:Mt(
o),back:0})});function Lr(t,e,n,s){let o=[...t].sort((h,p)=>h[e]-p[e]);if(o.length<2||n<o[0][e]-.002||n>o[o.length-1][e]+.002)
return null;let a=o.findIndex(h=>h[e]>n),r=a<0?o.length-1:Math.max(a,1),[l,c]=[o[r-1],o[r]];return l[s]+(n-l[e])/
(c[e]-l[e])*(c[s]-l[s])}var sc=$(()=>{});function No(t){let e=t.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(e))return null;
let n=Number(e);return n>0&&n<180?n:null}function Bo(t){let e={},n={},s=t.places==="one"?[["measured_deg",t.one]]:
[["left_deg",t.left],["middle_deg",t.middle],["right_deg",t.right]];for(let[o,a]of s){if(a.trim()==="")continue;
let r=No(a);r===null?n[o]=[t.places==="one"?mf:Xv]:e[o]=r}return!Object.keys(e).length&&!Object.keys(n).length&&
(n[s[0][0]]=[mf]),{angles:e,wrong:n}}function ff(t,e,n){let s=ek(e),[o,a]=["set_angle_deg","punch_depth_mm"].map(
c=>Lr(t.corrections??[],"measured_deg",s,c));if(o===null||a===null||n.set_angle_deg===null||Zv(t,s))return null;
let r=t,l={row:s,ends:s!==Er(e),set_angle_deg:o+(n.set_angle_deg-r.set_angle_deg),punch_depth_mm:n.punch_depth_mm===
null?null:a+(n.punch_depth_mm-r.punch_depth_mm)};return de(t,l)?l:null}function Zv({first_hit:t,included_angle_deg:e},n){
return!!(t&&n>Math.max(e+Qv,t.comes_out_deg_high))}function Er(t){let e=Object.values(t);return e.reduce((n,s)=>n+
s,0)/e.length}function ek(t){let e=(t.left_deg+t.right_deg)/2;return t.middle_deg-e>=tk?e:Er(t)}function Rs(t){
return t?.correction?.set_angle_deg?t.correction:t?.table??null}function Pe(t){let e=[t.left_deg,t.middle_deg,
t.right_deg],s=e.some(o=>o!=null)?e.map(o=>f(S(o??null))).join(" / "):f(S(t.measured_deg));return t.flange_mm?
`${s}, flange ${nk(t.flange_mm)}`:s}var Eo,mf,Xv,Qv,tk,nk,dn=$(()=>{Tn();sc();E();Eo={one:"",left:"",middle:"",
right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""};mf="Type the angle between the f\
lats in degrees, such as 90.5. Square is 90.",Xv="Degrees, such as 90.5";Qv=5;tk=.3;nk=t=>typeof t=="string"?t:
f(w(t,{digits:2}))});function Is(t,{waiting:e,step:n}={}){return i`<li class="row trial" data-test=${e?"waiting-trial":"trial"} data-id=${t.
id}>
    <div>
      <span class="lead">${Pe(t)}</span>
      <span class="code">Step ${t.step}</span>
      <span class="more">
        ${e?i`<b class="waits">${Lo(e)}</b> · `:d}
        ${[ds(t),Se(t),sk(t),ok(t.correction,n)].filter(Boolean).join(" · ")}
        ${t.note?i`<span class="trial-note">${t.note}</span>`:d}
        ${e?.refused?i`<a href="/settings">Decide</a>`:d}
      </span>
    </div>
  </li>`}var sk,ok,oc=$(()=>{y();Tn();dn();E();Cs();Ut();sk=t=>t.set_angle_deg?`set at ${f(S(t.set_angle_deg))}`:
"",ok=(t,e)=>t?.set_angle_deg&&e&&de(e,t)?`new setting ${f(S(t.set_angle_deg))}`:""});var gf={};nt(gf,{show:()=>ak});async function ak(t){let{code:e}=t.params;if(!pt(e).whole)return bt(t,Ot(e));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{t.title(n.title||W(e)),t.render(rk(n,s,a,o))},a=async()=>{
Object.assign(s,{busy:!0,fault:""}),o();try{let l=P().name?{by:P().name}:{};n=await Sn(await pa(n,{replan:!0,reason:"\
Planned afresh with today’s tools",id:Wt(),...l})),s.fresh=null,H()}catch(l){s.fault=l instanceof O&&l.status===
412?"The card was changed meanwhile. Open it again first.":l instanceof Error?l.message:String(l)}s.busy=!1,o()},
r=async l=>{n=l,s.waiting=(await un(e).catch(()=>[])).filter(c=>c.kind==="trial"),s.metal=is((await qe())?.metals,
n.part.metal),o(),t.ready()};wt(()=>n&&o(),t.signal),kr(()=>n&&o(),t.signal),document.addEventListener("sync",
async()=>n&&r(await ao(e).catch(()=>{})??n),{signal:t.signal});try{await he(e,r,t.signal)}catch(l){t.signal.aborted||
bt(t,Yn(e,l));return}xr(),Mr(t.signal,o),s.fresh=await M("GET",`/cards/${e}/fresh`,{signal:t.signal}).then(({body:l})=>l,
()=>null),o()}function rk(t,e,n,s){let{plan:o}=t,a=o.checks.filter(c=>c.level!=="ok"),r=a.filter(c=>c.level===
"stop"),l=a.filter(c=>c.level!=="stop"&&!c.code.startsWith("general-"));return i`<article class="card" data-test="card" data-revision=${t.
revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${W(t.code)}</p>
        <h1 data-test="card-title">${t.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${lk(t,e.metal)}</p>
        ${t.note?i`<p class="card-note" data-test="card-note">${t.note}</p>`:d}
        ${t.archived?i`<p class="card-note"><b>Put away.</b> This card is not in use any more.</p>`:d}
      </header>
      ${hf(t)}
      ${r.length?i`<section class="card-stops" aria-label="Stop">${vt(r)}</section>`:d}
      ${cf(e.fresh,{...e,take:n,settings:t.settings.length})}
      ${ik(t,r.length>0)}
      ${o.steps.length?Or(t.code,1,{draw:s,start:()=>gt(`/c/${t.code}/step/1`)}):d}
      <section class="panel card-picture" aria-label="What it becomes">
        ${Qt(o,{tallest:innerHeight*.34})}
      </section>
      ${uk(t)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${xs(o.tools,o.steps.length,o.steps)}${qa(o.blank)}${It(o)?Ls(o.blank,{tallest:420}):d}
      </section>
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${qn(o)?d:ck(o.order)}${hk(t)}
      </section>
      ${qn(o)?i`<section class="panel card-order">
              <h2>Order</h2>
              ${br(o,xm(t.code))}
            </section>`:d}
      ${l.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${vt(l)}
            </section>`:d}
      ${nn(o.checks)}
      <section class="panel card-trials">
        <h2>What came out</h2>
        ${pk(t,e.waiting)}
      </section>
    </div>
  </article>`}function ik({code:t,plan:e},n){return e.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${t}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${e.steps.length===1?"1 step":`${e.steps.length} steps`}</small>
    </a>
  </div>`:d}function lk({part:t,plan:e},n){let s=e.thickness_gauge?` (${e.thickness_gauge})`:"",o=t.bends.length===
1?"1 bend":`${t.bends.length} bends`,a=It(e)?`box ${jn(e.folded)}`:`${U(t.bend_length_mm)} ${C()} long`;return`${n}\
, ${U(t.thickness_mm)} ${C()}${s}, ${a}, ${o}`}function dk(t,e){let{gauge_x_mm:n}=ee(t,e);return n===null?"no \
gauge":`gauge at ${f(w(n))}`}function hk(t){return i`<ol class="rows" data-test="step-list">
    ${t.plan.steps.map(e=>i`<li class="row">
          <a href="/c/${t.code}/step/${e.number}">
            <span class="lead">${e.number}. ${ge(e)} ${e.direction}</span>
            <span class="code">${f(S(e.included_angle_deg))}</span>
            <span class="more">${dk(t,e)}</span>
            ${e.turn_over||e.turn_end||e.turn_quarter?i`<span class="turn" data-test="turn">${_s(e)}</span>`:d}
            ${fe(e,{short:!0})}
            ${e.drawing?Ar(e):d}
          </a>
        </li>`)}
  </ol>`}function pk(t,e){let n=[...t.trials].reverse().slice(0,3);return!n.length&&!e.length?i`<p data-test="no-trials">
      Nothing measured yet.${R("trials.keep"," After a bend, type what came out.")}
    </p>`:i`<ul class="rows trials" data-test="trials">
    ${[...e].reverse().map(s=>Is(s.body,{waiting:s}))}
    ${n.map(s=>Is(s,{step:t.plan.steps[s.step-1]}))}
  </ul>`}function uk({code:t}){return i`<nav class="card-links" aria-label="This card">
    ${ot(`/c/${t}/note`,i`<a class="button" href="/c/${t}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${t}/history" data-test="history">History</a>
    <a class="button" href="/c/${t}/label" data-test="label">Label</a>
    <a class="button" href="/c/${t}/print" data-test="print">Print</a>
    ${R("cards.revise",i`<a class="button" href="/part?from=${t}" data-test="edit">Edit</a>`)}
  </nav>`}var ck,$f=$(()=>{y();F();Pt();dt();ut();Je();Et();Sr();Ct();st();yt();E();Ce();G();$o();df();Cs();ys();
rt();wr();on();tc();nc();Be();oc();ws();cn();ne();ck=t=>t?.words?i`<p class="order" data-test="order">${t.words}</p>`:
d});var _f={};nt(_f,{show:()=>mk});async function mk(t){let{code:e,step:n}=t.params;if(!pt(e).whole)return bt(t,Ot(
e));let s=ko(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return t.render($k(o,n));t.title(`${o.title||e},\
 step ${r.number}`),t.render(wk(o,r,()=>tr(o,r,s,a,t.signal),Or(o.code,r.number,{draw:a})))};wt(()=>o&&a(),t.signal),
kr(()=>o&&fk(o,Number(n),a),t.signal),document.addEventListener("sync",()=>o&&gk(o),{signal:t.signal}),addEventListener(
"keydown",r=>o&&bk(r,o,Number(n)),{signal:t.signal}),xr();try{await he(e,r=>{!o&&r.plan.steps[Number(n)-1]&&of(
e,Number(n)),o=r,a(),t.ready()},t.signal)}catch(r){t.signal.aborted||bt(t,Yn(e,r));return}Mr(t.signal,()=>o&&a())}
function fk(t,e,n){let s=Ao(),o=s?.code===t.code&&s?.step!==e&&t.plan.steps[(s?.step??0)-1];o?gt(`/c/${t.code}\
/step/${o.number}`,{replace:!0}):n()}async function gk(t){let e=await ao(t.code).catch(()=>{});e&&e.revision!==
t.revision&&Q(`This card is at revision ${e.revision} now.`,{label:"Show it",act:()=>ve()})}function bk(t,e,n){
t.altKey||t.ctrlKey||t.metaKey||t.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.test(t.target.tagName)||(t.key==="Arro\
wRight"&&gt(bf(e,n).href),t.key==="ArrowLeft"&&gt(wf(e,n).href))}function bf(t,e){let n=t.plan.steps.at(-1);return e<
t.plan.steps.length?{href:`/c/${t.code}/step/${e+1}`,label:"Next",more:`step ${e+1}`}:n.set_angle_deg===null||
!_e(`/c/${t.code}/trial/${e}`)?{href:`/c/${t.code}`,label:"Done: the card",more:""}:{href:`/c/${t.code}/trial/${e}`,
label:"What came out?",more:""}}function wk(t,e,n,s){let{stops:o,watch:a}=Qa(t,e),r=e.number===t.plan.steps.length,
l=bf(t,e.number);return i`<article class="step" data-test="step">
    ${Ya(t,e)} ${o.length?i`<div class="step-stop">${vt(o)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${Ga(e,t.part.flats_mm.length)}${fe(e)}</div>
      <section class="step-set" aria-label="What to set">${er(t,e)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-bench">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?vt(a):d}
      </section>
      <section class="step-with" aria-label="Tools">
        ${su(t.plan,e)} ${Ua(t.plan,e)}
        ${_o(e.origin)?i`<p class="hint origins" data-test="origins">${_o(e.origin)}</p>`:d}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${wf(t,e.number).href} data-test="back">Back</a>
      ${r||e.set_angle_deg===null?d:ot(`/c/${t.code}/trial/${e.number}`,i`<a class="button" href="/c/${t.code}/trial/${e.
number}" data-test="came-out"
                >What came out?</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:d}</a
      >
    </nav>
  </article>`}var $k,wf,yf=$(()=>{y();Pt();dt();ae();Sr();Ct();St();st();Je();Ce();ml();G();ys();rt();Ja();Ra();
tc();an();Be();nr();$k=(t,e)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${e}</strong>This card has ${t.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${t.code}">Open the card</a></span>
  </div>`;wf=(t,e)=>({href:e>1?`/c/${t.code}/step/${e-1}`:`/c/${t.code}`,label:"Back"})});function vf(t,e,n,s){let o=t.gauged_flange;if(!o)return null;let a=Lr(o.rows,"measured_deg",e,"flange_mm");if(a===
null)return null;let r=n-a;if(Math.abs(r)>o.most_error_mm)return{gauge_x_mm:null,error_mm:r,words:"That flange\
 is further off than a gauge is. No new X before it is checked.",to_check:_k};let l=Math.abs(r)<=ac?s:s-r,c=l>=
o.x_low_mm&&l<=o.x_high_mm;return{gauge_x_mm:c?l:null,error_mm:r,words:c?"":"The gauge does not reach far enou\
gh to mend the flange.",to_check:[]}}var ac,_k,Ws,Nr=$(()=>{sc();ac=.05;_k=["Measure again, to the face that t\
he card's dimension goes to.","Check which flange was measured.","Read the gauge: did it stand at the X of the\
 card, and the sheet against it?"],Ws=({correction:t,gauge:e})=>t?.flange??e??null});function xf(t,e,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(h,p,u,m={})=>A({name:p,label:u,value:a[h],wrong:r[p],
change:g=>Object.assign(a,{[h]:g}),...m}),c=n.used??ee(t,e);return i`<form
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
      ${rc(a,o)}
      <div class="trial-more">
        ${n.byDepth?l("set","punch_depth_mm","Depth that was set",{unit:C(),placeholder:c.punch_depth_mm===null?
"":w(c.punch_depth_mm,{digits:2}).text,hint:kf}):l("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:c.set_angle_deg===null?"":S(c.set_angle_deg).text,hint:kf})}
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
    <div class="step-nav" role="group" aria-label="Trial">
      <a class="button" href="/c/${t.code}/step/${e.number}" data-test="back">Back</a>
      <button class="button next" data-test="save" ?disabled=${n.sending}>
        ${n.sending?"Sending…":"Save"}
      </button>
    </div>
  </form>`}var kf,rc,ic=$(()=>{y();Pt();E();J();kf="Leave it if it was set as shown.",rc=(t,e)=>Y({name:"place\
s",label:"Measured at",value:t.places,options:[["one","One place"],["three","Left, middle, right"]],change:n=>{
Object.assign(t,{places:n}),e()}})});function Sf(t){let e=Ws(t);return e?e.gauge_x_mm===null?yk(e):i`<div class="set-figures" data-test="new-gauge">
      ${Gt("Gauge X now",w(e.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${Tf(e.error_mm)}</p>`:d}function yk({error_mm:t,words:e,said:n,to_check:s}){
return s.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${k("stop")} <b>No new gauge X.</b> ${Tf(t)} No gauge is that far off.</p>
    <ol>
      ${s.map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${n?_t(n):e}</p>`}function Tf(t){return t===null?"":Math.abs(t)<=ac?"Flang\
e as wanted: leave the gauge.":`Flange ${f(w(Math.abs(t),{digits:2}))} too ${t>0?"long":"short"}.`}function Mf(t){
let e=t?.crown;return e?i`<div class="crown" data-test="crown">
    <p>${vk(e)}</p>
    ${e.shim?kk(e.shim):d}
  </div>`:d}function vk({middle_open_deg:t,shim:e,words:n}){return e?i`<b>The middle is ${f(S(t))} more open than the ends.</b> First crown the middle by
    ${f(w(e.middle_mm,{digits:2}))}, or shim the die:`:n}function kk({strip_mm:t,lengths_mm:e}){let n=e.map(o=>w(
o,{digits:0}).text).join(", "),s=w(e[0],{digits:0}).unit;return i`<p data-test="shim">
    ${e.length===1?"1 strip":`${e.length} strips`} of ${f(w(t,{digits:2}))}
    under the middle of the die, one on the other, ${n} ${s} long. Nothing at the ends. Then set what
    stands above, which is for the ends; bend again and measure.
  </p>`}var Of,Af=$(()=>{y();Nr();E();G();an();Of=({thickness_mm:t})=>t?` Reckoned for the ${f(w(t,{digits:2}))}\
 that the sheet measures.`:""});function Lf(t,e,n,{again:s,keep:o}){let a=Rs(n),r=e.number===t.plan.steps.length;return i`<div
    class="trial-result"
    data-test="trial-result"
    data-waits=${n.waits?"true":"false"}>
    <div class="trial-main">
      <h2>${Pe(n.trial)} <small>wanted ${f(S(e.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${n.late||"the shop does not answer"}.
              It goes out by itself.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?Sk(a):Qp(e,n)}
      ${a?i`<p class="basis" data-test="basis">${Mk(n)}</p>`:d}
      ${n.question?xk(t,n.question):d} ${Sf(n)}
      ${Ak(n.correction)} ${Mf(n.correction)}
      ${a?R("cards.revise",Nk(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
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
  </div>`}function Mk({correction:t,table:e}){return t?`${t.what}${Ok(t)}${Of(t)}`:`Worked out on this device,\
 from the card’s own table at ${f(S(e?.row??null))}. The shop works it out again when the result arrives.${e?.
ends?` ${Tk}`:""}`}function Ak(t){let e=t?.tilt_mm_per_m;return e==null?d:i`<p data-test="tilt">
    Left and right differ: about ${Ek(Math.abs(e))},
    ${e>0?"the right end deeper":"the left end deeper"}.
  </p>`}function Nk(t,e){return t.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${t.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${t.words}
    </p>`:i`<div class="buttons">
      <button class="button" data-test="keep" ?disabled=${t.kept==="asking"} @click=${e}>
        ${t.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${t.words}</p>`}var xk,Sk,Tk,Ok,Lk,Ek,Ef=$(()=>{y();Af();
dn();E();G();Sl();rt();an();xk=(t,e)=>i`<section class="panel urgent" data-test="question">
    <p>${k("unknown","Does not count")} ${e}</p>
    <p><a href="/shop/learned/${encodeURIComponent(t.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,Sk=t=>i`<div class="set-figures" data-test="new-setting">
    ${Gt("Angle now",S(t.set_angle_deg),"new-angle")}
    ${t.punch_depth_mm===null?d:Gt("Depth now",w(t.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`,Tk="The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it\
 first.";Ok=({crown:t})=>t?.setting_for==="ends"?" This is for the ends; first mend the open middle, see below\
.":"";Lk=3048,Ek=t=>C()==="in"?`${tt(t*Lk/1e3/Jt,3)} in over ten feet`:`${tt(t,2)} mm in each metre`});async function Nf(t,e,n,s){let o=Rs(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await Ye(t,{settings:[...t.settings.filter(r=>r.step!==e.number),Ck(e,o,n.trial,Pk(t,e,n))]},{reason:`\
Step ${e.number} set from a piece that came out at ${Pe(n.trial)}`});Object.assign(t,a.card),Object.assign(n,{
kept:"kept",where:a.where,words:Bk(a)}),H()}catch(a){Object.assign(n,{kept:"no",words:X(a)})}s()}}function Bk({
where:t,card:e}){return t==="shop"?`Revision ${e.revision} of the card has it. Steps show it from now on.`:t===
"settle"?"The card was changed meanwhile. Both are kept: settle on the card which holds.":"Steps show it on th\
is device from now on; it goes to the shop by itself."}var Ck,Pk,Bf=$(()=>{F();Je();Nr();dn();yt();Ck=(t,e,n,s)=>({
step:t.number,set_angle_deg:e.set_angle_deg,punch_depth_mm:e.punch_depth_mm,...s===null?{}:{gauge_x_mm:s},trial_id:n.
id,reason:`Piece came out at ${Pe(n)}`}),Pk=(t,e,n)=>Ws(n)?.gauge_x_mm??t.settings.find(s=>s.step===e.number)?.
gauge_x_mm??null});var Cf={};nt(Cf,{show:()=>Ik});async function Ik(t){let{code:e,step:n}=t.params;if(!pt(e).whole)return bt(t,Ot(
e));let s={typed:{...Eo},used:null,wrong:{},general:"",sending:!1,result:null,byDepth:!1},o,a=async()=>{let l=Rk.
includes((await qe())?.press?.set_by);l===s.byDepth||s.typed.set||s.sending||s.result||(s.byDepth=l,o&&!t.signal.
aborted&&r())};document.addEventListener("sync",a,{signal:t.signal}),await a();let r=()=>{let l=o.plan.steps[Number(
n)-1];if(!l)return bt(t,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${e}">Open the card</a>
        </p>`);t.title(`${o.title||e}: what came out`),t.render(Wk(o,l,s,r))};ce(()=>!s.result&&s.typed.one+s.
typed.left+s.typed.note?"Leave without saving what you measured?":null),await be(t,l=>{s.sending||s.result||(o=
l,r(),t.ready())})}function Wk(t,e,n,s){let o=()=>Dk(t,e,n,s),a=()=>{let l=Fk(n);Object.assign(n,{typed:{...Eo,
places:n.typed.places,lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),s()},r=()=>Nf(
t,e,n.result,s);return i`<article class="step trial-screen" data-test="trial-screen">
    ${Ya(t,e)}
    <div class="trial-body">
      ${n.result?Lf(t,e,n.result,{again:a,keep:r}):xf(t,e,n,{save:o,draw:s})}
      <aside class="trial-aside" aria-label="Which bend">
        ${Qt(t.plan,{mark:e.bend})}
      </aside>
    </div>
  </article>`}async function Dk(t,e,n,s){if(n.sending)return;let{angles:o,wrong:a}=Bo(n.typed),r=Hk(t,e,n);if(r||
(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,{wrong:a,general:""}),
Object.keys(a).length||!r)return s(),se(a);let l=Uk(t,e,o,r,n.typed);n.sending=!0,s();try{let{late:c,...h}=await na(
{id:l.id,kind:"trial",code:t.code,body:l}),p=h.answer,u=p?.correction??null;n.result={trial:l,correction:u,table:p||
r.set_angle_deg===null?null:ff(e,o,r),gauge:p?null:jk(e,o,r,l.flange_mm),waits:!p,late:c??"",question:p?.question_said?
_t(p.question_said):"",kept:"no",words:""},p&&H()}catch(c){n.wrong=c instanceof O?c.errors:{},n.general=X(c)}n.
sending=!1,await as(),s(),se(n.wrong)}function Fk({result:t,used:e}){let n=Rs(t),s=t&&(Ws(t)?.gauge_x_mm??t.trial.
gauge_x_mm??null);return n?{...n,gauge_x_mm:s??e?.gauge_x_mm}:null}function jk(t,e,n,s){let o=hh(s);return o===
null||typeof n.gauge_x_mm!="number"?null:vf(t,Er(e),o,n.gauge_x_mm)}function Hk(t,e,n){let{set_angle_deg:s,punch_depth_mm:o,
gauge_x_mm:a}=n.used??ee(t,e),r={set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a};if(n.typed.set.trim()==="")return r;
if(n.byDepth)return{set_angle_deg:null,punch_depth_mm:et(n.typed.set),gauge_x_mm:a};let l=No(n.typed.set);return l===
null?null:{set_angle_deg:l,punch_depth_mm:null,gauge_x_mm:a}}function Uk(t,e,n,s,o){let a={id:Wt(),revision:t.
revision,step:e.number,bend:e.bend,...n,made_at:new Date().toISOString()};return s.set_angle_deg!==null&&(a.set_angle_deg=
s.set_angle_deg),s.punch_depth_mm!==null&&(a.punch_depth_mm=s.punch_depth_mm),typeof s.gauge_x_mm=="number"&&(a.
gauge_x_mm=s.gauge_x_mm),o.flange.trim()&&(a.flange_mm=et(o.flange)),o.radius.trim()&&(a.radius_mm=et(o.radius)),
o.thickness.trim()&&(a.thickness_mm=et(o.thickness)),o.lot.trim()&&(a.lot=o.lot.trim()),o.note.trim()&&(a.note=
o.note.trim()),P().name&&(a.by=P().name),a}var Rk,Pf=$(()=>{y();F();Pt();dt();ut();Nr();dn();Et();Ct();os();st();
yt();E();Ce();G();J();an();ic();Ef();cn();Bf();Rk=["depth","stop"]});function If(t,e,n,s){return t.map(o=>i`<fieldset class="settle-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${Co(o,o.before)}</small></legend>
        ${Rf(o,"shop","In the shop",e,s)} ${Rf(o,"yours",n,e,s)}
      </fieldset>`)}function Rf(t,e,n,s,o){return i`<label class="settle-side" data-test=${e}>
    <span class="settle-whose"
      ><input
        type="radio"
        name=${t.name}
        value=${e}
        .checked=${s[t.name]===e}
        @change=${()=>o(t.name,e)} />
      ${n}</span
    >
    <span class="settle-value">${Co(t,t[e])}</span>
  </label>`}function Co({name:t},e){if(t==="archived")return e?"Put away":"In use";if(!t.startsWith("settings "))
return e||"nothing";if(!e)return"as planned";let n=e,s=n.punch_depth_mm===null||n.punch_depth_mm===void 0?"":`\
, depth ${f(w(n.punch_depth_mm,{digits:2}))}`;return`${f(S(n.set_angle_deg??null))}${s}`}var lc=$(()=>{y();E()});function Wf(t,e){return t.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${t.map(n=>Gk(n,e))}
    </ol>
  </section>`:d}function Gk(t,e){let n=ns(t.changes,t.before,{...t.before,settings:t.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${t.settled_by?`Settled by revision ${t.settled_by}`:ot(`/c/${e}/settle`,i`<a href="/c/${e}/settle">To settle</a>`,
"To settle")}
    </h3>
    <p class="more">${[ds(t),Se(t)?`by ${Se(t)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${Co(s,s.before)} to ${Co(s,s.yours)}</li>`)}
    </ul>
  </li>`}var Df=$(()=>{y();ss();rt();lc();Ut()});function Ff({title:t,note:e,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${t}</b>, ${f(w(n.thickness_mm,{digits:2}))},
      ${It(s)?jn(s.folded):`${f(w(n.bend_length_mm))} long`}${e?i`. ${e}`:d}
    </p>
    ${Qt(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${Vk(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:d}
    ${Ka(s)} ${vt(s.checks,{quiet:!0})}
  </div>`}function Vk(t,e){let n={set_angle_deg:e.set_angle_deg??null,punch_depth_mm:e.punch_depth_mm??null};if(!t||
!de(t,n))return"had a setting beyond its tools";let s=f(w(n.punch_depth_mm,{digits:2}));return`set at ${f(S(n.
set_angle_deg))}, depth ${s}`}var jf=$(()=>{y();ws();cn();Tn();E();G();on()});var Hf={};nt(Hf,{show:()=>zk});async function zk(t){let{code:e}=t.params;if(!pt(e).whole)return bt(t,Ot(e));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>t.render(Kk(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=u=>M("GET",`/cards/${e}/${u}`,{signal:t.signal}),[h,p]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);s.revisions=h.body.revisions,s.proposals=p.body.proposals,s.silent=
!1}catch(c){if(!(c instanceof j))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=null,o(),
!!s.open){try{let{body:h}=await M("GET",`/cards/${e}/revisions/${c}`,{signal:t.signal});s.open===c&&(s.snapshot=
h)}catch(h){s.open=0,Q(X(h))}o()}},l=async c=>{s.busy=!0,o();try{n=await qk(n,c),Q(`Revision ${c} is back, as \
revision ${n.revision}.`),s.open=0,H(),await a()}catch(h){Q(h instanceof O&&h.status===412?"The card was chang\
ed meanwhile. Look at the history again.":X(h))}s.busy=!1,o()};wt(()=>n&&o(),t.signal);try{await he(e,async c=>{
n=c,t.title(`${n.title||W(e)}: history`),s.waiting=(await un(e).catch(()=>[])).filter(h=>h.kind==="trial"),o()},
t.signal),await a(),o(),t.ready()}catch(c){t.signal.aborted||bt(t,Yn(e,c))}}async function qk(t,e){let n=await ke(
t.code);return pa(n,{restore_revision:e,reason:`Revision ${e} brought back`,id:Wt(),...P().name?{by:P().name}:
{}})}function Kk(t,e,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>History of ${t.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${Yk(t,e,n)}
      </section>
      ${Wf(e.proposals,t.code)}
      <section class="panel">
        <h2>What came out</h2>
        ${Xk(t,e)}
      </section>
    </div>
  </article>`}function Yk(t,e,n){return e.silent?i`<p data-test="silent">
      This device has revision ${t.revision}, of
      ${at(t.updated_at)}${t.updated_by?` by ${t.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:e.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${e.revisions.map(s=>Jk(s,t,e,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function Jk(t,e,n,{look:s,bringBack:o}){let a=t.revision===
e.revision,r=n.open===t.revision;return i`<li class="row revision" data-test="revision" data-revision=${t.revision}>
    <h3>
      Revision ${t.revision}${a?", as it is now":""}
      ${t.worst==="stop"||t.worst==="caution"?k(t.worst):d}
    </h3>
    <p class="more">${[at(t.at),Se(t)].filter(Boolean).join(", by ")}</p>
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
    ${r?n.snapshot?Ff(n.snapshot):i`<p>Fetching it…</p>`:d}
  </li>`}function Xk(t,e){return!t.trials.length&&!e.waiting.length?i`<p data-test="no-trials">Nothing measured yet.</p>`:
i`<ol class="rows trials" data-test="trials">
      ${[...e.waiting].reverse().map(n=>Is(n.body,{waiting:n}))}
      ${[...t.trials].reverse().map(n=>Is(n,{step:t.plan.steps[n.step-1]}))}
    </ol>
    ${t.trials_total>t.trials.length?i`<p>The newest ${t.trials.length} of ${t.trials_total}.</p>`:d}`}var Uf=$(
()=>{y();F();Pt();dt();ae();Et();st();yt();Ce();G();rt();Df();jf();oc();Ut()});var Gf={};nt(Gf,{show:()=>Zk});async function Zk(t){let{code:e}=t.params;if(!pt(e).whole)return bt(t,Ot(e));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{t.title(`${n.title||W(e)}: not\
e`),t.render(tx(n,s,{draw:o,save:()=>Qk(n,s,o,t.signal)}))};ce(()=>s.typed?"Leave without saving what you type\
d?":null),await be(t,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),
o(),t.ready())})}async function Qk(t,e,n,s){if(e.sending)return;let[o,a]=[e.title.trim(),e.note.replace(/\r\n/g,
`
`).trim()];if(Object.assign(e,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),se(e.wrong);
e.sending=!0,n();try{let{where:r}=await Ye(t,{title:o,note:a,archived:e.archived});if(e.typed=!1,Q(Tr(r)),H(),
s.aborted)return;gt(r==="settle"&&_e(`/c/${t.code}/settle`)?`/c/${t.code}/settle`:`/c/${t.code}`)}catch(r){e.wrong=
r instanceof O?r.errors:{},e.general=X(r),e.sending=!1,n(),se(e.wrong)}}function tx(t,e,{draw:n,save:s}){let o=a=>Object.
assign(e,a,{typed:!0});return i`<form
    class="note-screen"
    novalidate
    data-test="note-screen"
    @submit=${a=>{a.preventDefault(),s()}}>
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>${R("cards.revise","Note and title","Note")}</h1>
    </header>
    ${e.general?i`<p class="wrong" role="alert" data-test="wrong">${e.general}</p>`:d}
    ${Pn({name:"note",label:"Note",value:e.note,lines:5,wrong:e.wrong.note,change:a=>o({note:a})})}
    ${R("cards.revise",[A({name:"title",label:"Title",value:e.title,wrong:e.wrong.title,change:a=>o({title:a})}),
Y({name:"archived",label:"This card",value:e.archived?"away":"use",options:[["use","In use"],["away","Put away"]],
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
  </form>`}var Vf=$(()=>{y();dt();F();Je();ae();Ct();St();yt();Ce();rt();J();Cs()});var zf={};nt(zf,{show:()=>ex});async function ex(t){let{code:e}=t.params;if(!pt(e).whole)return bt(t,Ot(e));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{t.title(`${n.title||W(e)}: to settle`),
t.render(nx(n,s,c))},a=async h=>{if(!h||s.sending)return;let p=[n?.etag,s.proposal?.id].join();n=h,[s.proposal]=
n.proposals;let{changes:u={},before:m={}}=s.proposal??{};s.rows=ns(u,m,n),s.mine=!!(s.proposal&&await jo(s.proposal.
id).catch(()=>{})),p!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),t.ready()},r=async()=>a(await Bi(e).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let h=await Ye(n,Cd(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Settled"});Q(Tr(h.where)),s.sending=!1,await r(),H()}catch(h){Object.assign(
s,{sending:!1,fault:X(h)}),o()}},choose:(h,p)=>{s.chosen[h]=p,o()},all:h=>{for(let{name:p}of s.rows)s.chosen[p]=
h;o()}};document.addEventListener("sync",r,{signal:t.signal}),await be(t,async h=>a(await Bi(e).catch(()=>{})??
h))}function nx(t,e,n){return i`<article class="settle" data-test="settle-screen">
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${W(t.code)}</a></p>
      <h1>${e.proposal?"Two changes met":"Nothing to settle"} <small>${t.title}</small></h1>
    </header>
    ${e.proposal?sx(t,e,n):i`<p data-test="settled">
            Every change of this card is settled. Both sides are in its
            <a href="/c/${t.code}/history">history</a>.
          </p>`}
  </article>`}function sx(t,{proposal:e,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:p})=>!o[p]).
length,h=s?"Yours":e.by?`By ${e.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":e.by?`${e.by} changed`:"Somebody changed"} this card
      (${ds(e)}) while it was changed in the shop (revision ${t.revision},
      ${at(t.updated_at)}${t.updated_by?`, ${t.updated_by}`:""}). Choose what holds. Both
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
            ${If(n,o,h,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
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
    </div>`}var qf=$(()=>{y();F();ss();dt();Je();ae();Et();yt();Ce();Cs();lc();Ut()});function Kf(t,e){let{plan:n}=t,s=mx(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${ax(t,e)}
    <figure class="strip ${It(n)?"of-box":""}">
      <figcaption>
        Blank ${Br(n.blank.length_mm)} × ${Br(n.blank.width_mm)},
        ${f(ro(n.blank.mass_kg))}.
        ${It(n)?ox(n):"Bend lines from the left end."}
      </figcaption>
      ${Ls(n.blank,It(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${rx(n)} ${ix(t,s)} ${gx(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function ox({blank:t}){let e=({bend:a})=>{let r=t.bend_lines.find(l=>l.bend===a);return`${a} ${U(
r.at_mm)}`},n=a=>t.lines.filter(r=>a.includes(r.side)).map(e).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,vl(t),"Inside up."].filter(
Boolean).join(" ")}function ax(t,e){let{part:n,plan:s}=t;return i`<header>
    <div>
      <h2>${t.title}</h2>
      <p class="big-code" data-test="sheet-code">${t.display_code}</p>
      <p>
        <b
          >${e},
          ${Br(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:d}</b
        >, ${It(s)?`box ${jn(s.folded)}`:i`bend length ${Br(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${t.revision}, ${An(t.updated_at)}${t.updated_by?`, ${t.updated_by}`:""}.
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
  </header>`}function rx(t){let e=n=>{let s=yl(n,t.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:d};
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
            <td>${wl(n)}</td>
            <td>${_l(n)||"–"}</td>
            <td>${n.steps.length===t.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function ix(t,e){let n=t.part.flats_mm.length;return i`<table class="paper-steps">
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
      ${t.plan.steps.map(s=>lx(t,s,e.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function lx(t,e,n,s){let o=ee(t,e);return i`<tr data-test="sheet-step-${e.number}">
    <th scope="row">
      <span class="number">${e.number}</span> bend ${e.bend} ${e.side??""}
      ${e.direction}${e.operation&&e.operation!=="bend"?i`<br />${e.operation}`:d}
    </th>
    <td class="picture">
      ${dx(t.plan,e)}${e.drawing?Ar(e):"no drawing"}${hx(e,t.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(o.gauge_x_mm).text}</b><br />R
      <b>${w(e.gauge_r_mm).text}</b>${px(e)}
    </td>
    <td class="figures-cell">
      ${bx(e,o)}<br />
      <span class="small"
        >${cx(e)}${wx(o)?i`<br />from a first piece`:d}</span
      >
    </td>
    <td class="move">
      ${_s(e)}
      <span class="small"
        >${e.inside_face==="up"?"Top":"Bottom"} face
        up${e.gauged_end?`, ${yo(e,s)} to the gauge`:""}.</span
      >${fe(e,{short:!0})}
    </td>
    <td>${ux(n)}</td>
    <td class="pen">
      <span
        >${e.included_angle_deg?f(S(e.included_angle_deg)).replace(".0°","°"):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${Vh(o.firstHit)}</span>`:d}</span
      >
    </td>
  </tr>`}function cx(t){let e=La(t);return e===d?d:i`<span data-test="sheet-force">allow for ${e}</span>`}function dx(t,e){
let n=Xa(t,e);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${e.punch}${e.punch_turned?" turned round":""} over ${e.die}
      </div>`:d}function hx({segments_mm:t,punch:e,die:n},s){return t?[["punch",e],["die",n]].map(([a,r])=>{let l=s.
find(h=>h.kind===a&&h.code===r)?.segments_mm??[],c=t[a]??[];return!c.length||c.length===l.length?d:i`<div class="pieces" data-test="own-pieces">
      ${a} ${c.map(U).join(" + ")} only
    </div>`}):d}function px({hits:t}){return t?i`<br /><span class="small"
          >${t.count} hits, ${w(t.pitch_mm,{digits:2}).text} apart</span
        >`:d}function ux(t){return cc.filter(e=>e!=="note").map(e=>({level:e,letters:t.filter(n=>n.level===e).
map(({letter:n})=>n)})).filter(({letters:e})=>e.length).map(({level:e,letters:n})=>i`<div class="mark">${k(e)} <b>${n.
join(" ")}</b></div>`)}function mx(t){let e=new Map;for(let n of cc)for(let s of t.filter(o=>Ht(o)===n)){let o=`${n}\
 ${s.template} ${s.do_template??""}`,a=e.get(o)??{letter:fx(e.size),level:n,checks:[],steps:[]};a.checks.push(
s),a.steps.push(...s.steps??(s.step?[s.step]:[])),e.set(o,a)}return[...e.values()]}function gx(t){return i`<div class="remarks" data-test="sheet-remarks">
    ${cc.map(e=>{let n=t.filter(s=>s.level===e);return n.length?i`<section data-level=${e}>
        <h3>${k(e)}</h3>
        <ul>
          ${n.map(({letter:s,checks:o,steps:a})=>i`<li>
                <b>${s}</b>
                ${a.length?i`<b>Step ${a.join(", ")}.</b> `:d}${$x(o)}
              </li>`)}
        </ul>
      </section>`:d})}
  </div>`}function $x(t){let{template:e,do_template:n=""}=t[0];return`${e} ${n}`.replace(/\{(\w+)\}/g,(s,o)=>[
...new Set(t.map(({numbers:a})=>ls(xe(o,a[o]))))].join(" / ")).trim()}function bx(t,{set_angle_deg:e,punch_depth_mm:n,
firstHit:s}){if(e===null&&t.die)return i`<b>no setting</b>`;let o=s?i` <span class="small" data-test="sheet-first">first hit</span>`:
d;return i`<b>${f(S(e))}</b>${o}<br />depth <b>${w(n,{digits:2}).text}</b>`}var Br,cc,fx,wx,Yf=$(()=>{y();ws();
cn();ne();nc();Pt();E();ue();G();Cn();ys();on();Za();Be();Ut();Br=t=>f({text:U(t),unit:C()});cc=ba.filter(t=>t!==
"ok");fx=t=>String.fromCharCode(97+t%26)+(t<26?"":String(Math.floor(t/26)+1));wx=t=>t.fromTrial&&t.set_angle_deg!==
null});function Ds(t){return Y({name:"paper",label:"Paper",value:P().paper,options:[["A4","A4"],["Letter","Letter"]],
change(e){We({paper:e==="Letter"?"Letter":"A4"}),t()}})}function Fs(t="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${t}
  </button>`}function Cr(t,{lying:e=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${P().paper.toLowerCase()} ${e?"lying":"upright"}" data-test="sheet">
      ${t}
    </div>
  </div>`}var Pr=$(()=>{y();st();J()});var Jf={};nt(Jf,{show:()=>_x});async function _x(t){let{code:e}=t.params;if(!pt(e).whole)return bt(t,Ot(e));let n,
s=[],o=async()=>{s=(await qe())?.metals??s,n&&a()};function a(){t.title(`${n.title}, on paper`),t.render(i`<p class="crumb screen-only"><a href="/c/${e}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${Ds(a)}${Fs("Print the card")}</div>
        ${Cr(Kf(n,is(s,n.part.metal)),{about:"The card as it prints"})}`)}wt(()=>n&&a(),t.signal),document.addEventListener(
"sync",o,{signal:t.signal}),await o(),await be(t,r=>{n=r,a(),t.ready()})}var Xf=$(()=>{y();dt();ut();st();Ce();
Yf();Pr()});var Qf={};nt(Qf,{show:()=>yx});async function yx(t){let{code:e}=t.params;if(!pt(e).whole)return bt(t,Ot(e));let n=P().
units,s=Zf[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){t.title(`Label of ${o.title}`),t.render(i`<p class="crumb screen-only"><a href="/c/${e}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${Y({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${Zf.map(l=>vx(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${ot("/labels",i`For office paper, lay them out <a href="/labels?codes=${e}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${Rr(e,s.size,n,"svg")}
          alt=""
          hidden />`)}await be(t,l=>{o=l,r(),t.ready()})}function vx(t,{size:e,words:n,print:s},o,a){let r=`la\
bel-${t.code}-${e}`;return i`<section class="panel label-panel" data-test="label-${e}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${Rr(t.code,e,o,"svg")}
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
        href=${Rr(t.code,e,o,"svg")}
        data-test="svg-${e}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${Rr(t.code,e,o,"png")}
        data-test="png-${e}"
        >PNG</a
      >
    </div>
  </section>`}var Zf,Rr,tg=$(()=>{y();dt();st();Ce();J();rt();Zf=[{size:"50x25",words:"50 × 25 mm, for a bin",
print:"small"},{size:"100x50",words:"100 × 50 mm, for a shelf or a door",print:"large"}];Rr=(t,e,n,s)=>`/api/\
v1/cards/${t}/label.${s}?size=${e}&units=${n}`});var eg={};nt(eg,{show:()=>xx});async function xx(t){t.title("Labels on a sheet"),t.render(Tt("Fetching the car\
ds…"));let e=(await Tx(t.signal)).filter(b=>!b.archived);if(!e.length)return t.render(kt("No cards yet",R("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),t.ready();let n=new Set((t.query.
get("codes")??"").split(",").filter(b=>e.some(_=>_.code===b))),s="50x25",o=P().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=b=>new URLSearchParams({codes:[...n].join(","),size:s,paper:P().paper,units:o,skip:a.trim()||"0",page:String(
b)}),h=(b,_)=>`/api/v1/labels/sheet.${b}?${c(_)}`;async function p(){let b=String(c(1));if(!n.size)l={key:b,pages:[],
wrong:""};else try{let{body:_}=await M("GET",`/labels/sheet.json?${c(1)}`,{signal:t.signal});l={key:b,pages:Array.
from({length:_.pages},(T,L)=>L+1),wrong:""}}catch(_){l={key:b,pages:[],wrong:X(_)}}b===String(c(1))&&g()}let u=b=>{
b(),g(),p()},m=b=>u(()=>n.has(b)?n.delete(b):n.add(b));function g(){let b=e.filter(_=>`${_.code} ${_.title}`.toLowerCase().
includes(r.trim().toLowerCase()));t.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${e.length}</span>
              </h2>
              ${e.length>8?A({name:"find",label:"Find",value:r,change:_=>{r=_,g()}}):d}
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
              ${Y({name:"size",label:"Label size",value:s,options:kx,change:_=>u(()=>s=_)})}
              ${Ds(()=>u(()=>{}))}
              ${Y({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:_=>u(()=>o=
_==="inch"?"inch":"mm")})}
              ${A({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:_=>u(()=>a=_)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${Fs(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(_=>Sx(_,l.pages.length,h))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}wt(g,t.signal),g(),await p(),t.ready()}function Sx(t,e,n){let s=`labels-${t}`;return i`<figure class="label-sheet ${P().
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
  </figure>`}async function Tx(t){try{let e=[];for(;;){let{body:n}=await M("GET",`/cards?limit=100&offset=${e.
length}`,{signal:t});if(e.push(...n.cards),e.length>=n.total||!n.cards.length)return e}}catch(e){let n=await Ie().
catch(()=>[]);if(t.aborted||!n.length)throw e;return n}}var kx,ng=$(()=>{y();F();st();Nt();J();rt();Pr();Bt();
kx=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function sg(t){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${t.metal.name}</h2>
      <p>
        ${t.press?.name??"No press entered"}${t.press?i`, ${f(mt(t.press.force_kn))}`:d}.
        Held against ratings at a bend length of ${f(w(t.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${An(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${C()}</span></th>
          ${t.dies.map(e=>i`<th scope="col" data-test="die-${e.code}">
                V ${U(e.v_opening_mm)}<span class="sub">${e.code}</span>
                <span class="sub"
                  >${e.rating_kn_per_m===null?"rating ?":f(At(e.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${t.rows.map(e=>i`<tr>
              <th scope="row">${U(e.thickness_mm)}<span class="sub">${e.gauge??""}</span></th>
              ${e.cells.map(Mx)}
            </tr>`)}
      </tbody>
    </table>
    ${Ax()}
    <ul class="chart-words">
      ${t.words.map(e=>i`<li>${e}</li>`)}
    </ul>
  </article>`}function Mx(t){return t.usable?i`<td
    class="cell ${t.level}"
    data-level=${t.level}
    data-die=${t.die}
    title=${t.why}>
    <span class="first"
      ><span class="force">${Zt(t,"force_kn_per_m").text}</span>${t.level==="stop"?d:i`<span class="expected">${en(
t,"force_kn_per_m").text}</span>`}${t.level==="ok"?d:k(t.level,Ox(t))}</span
    >
    ${t.level==="stop"?d:i`<span class="rest"
            >${w(t.min_flange_mm).text} · R ${w(t.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${t.die} title=${t.why}>
      <span aria-hidden="true">–</span><span class="unseen">${t.why}</span>
    </td>`}function Ox({level:t,limit:e,share_percent:n}){return t==="unknown"?"rating?":`${e??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(t==="stop"?"over":"near")}function Ax(){let t=At(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${t}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${k("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${k("caution","die 85 %")} over 80 % of a rating</li>
    <li>${k("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var og=$(()=>{y();ne();E();ue();G();Ut()});var ag={};nt(ag,{show:()=>Lx});async function Lx(t){t.title("Wall chart"),t.render(Tt("Working out the chart…"));
let e=(await lt("metals",t.signal)).items;if(!e.length)return t.render(kt("No metals yet",i`A chart needs one. ${R(
it.metals,i`<a href="/shop/metals">Metals</a>`)}`)),t.ready();let n=t.query.get("metal")??e[0].code,s=t.query.
get("bend_length")??"",o=null,a=null,{ask:r}=Oe(async(p,u)=>(await M("GET",`/chart?${l()}`,{signal:u,timeout:2e4})).
body,p=>{o=p.answer??o,a=p.error??null,h(),t.ready()},t.signal);function l(){let p=new URLSearchParams({metal:n});
return s.trim()&&p.set("bend_length_mm",et(s)),p}function c(){let p=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${p}`),r(null),h()}function h(){t.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${q({name:"metal",label:"Metal",value:n,options:e.map(({code:p,name:u})=>[p,u]),change:p=>{n=p,c()}})}
          ${A({name:"bend_length",label:"Checked at a bend length of",value:s,unit:C(),keys:"decimal",placeholder:C()===
"mm"?"1000":"39.37",change:p=>{s=p,c()}})}
          ${Ds(h)} ${Fs("Print the chart")}
        </div>
        ${a?Ge(a):d}
        ${o?Cr(sg(o),{lying:!0,about:"Wall chart as it prints"}):a?d:Tt("Working out the chart…")}`)}wt(h,t.
signal),r(null,{now:!0})}var rg=$(()=>{y();F();ut();st();E();og();J();rt();Pr();Bt();mo()});function ig(t,{fault:e,takeOut:n}){return i`<section class="panel" data-test="panel-benches">
    <h2>Benches <span class="soft">${t.length}</span></h2>
    ${e?i`<p class="wrong" role="alert" data-test="bench-fault">${e}</p>`:d}
    ${t.length?i`<ul class="plain-list bench-list">
            ${t.map(s=>i`<li data-test="bench-row" data-name=${s.name}>
                  <span><b>${Ne(s.name)}</b> ${Ex(s)}</span>
                  ${R("benches.remove",i`<button
                      type="button"
                      class="button"
                      data-test="take-bench-out"
                      aria-label="Take it out… ${Ne(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      A large screen at a press becomes one when it opens the shop's address with
      <a href="/bench">/bench</a> behind it.
    </p>
  </section>`}var Ex,lg=$(()=>{y();sn();dt();rt();Ex=({code:t})=>t?i`<a href="/c/${t}">${W(t)}</a>`:i`<span class="soft">empty</span>`});function cg(t){let e=t.map(({ring:o})=>Xt([o])),n=dc-2*Wr,s=Math.min(...e.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return t.map(({name:o,ring:a},r)=>Nx(o,a,e[r],s))}function Nx(t,e,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*Wr),c=(dc-(o-n)*r)/2-n*r,h=u=>c+u*r,p=u=>Wr+(a-u)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${dc} ${l}"
      role="img"
      aria-label="${t||"Outline"} to scale, ${Ir(o-n)} wide, ${Ir(a-s)} high"
      data-test="outline">
      ${Bx(n,o,h(0),l)}
      <path
        class="tool"
        d=${Mt(e)}
        transform="translate(${c} ${Wr+a*r}) scale(${r})" />
      ${Cx(h(n),h(o),l-16,Ir(o-n))}
      ${Px(p(s),p(a),h(o)+16,Ir(a-s))}
    </svg>
    ${t?i`<figcaption>${t}</figcaption>`:d}
  </figure>`}function Bx(t,e,n,s){return t>0||e<0?d:x`<path class="centre" d="M${n} 6V${s-6}"/>`}function Cx(t,e,n,s){
return x`<path class="dimension" d="M${t} ${n}H${e}M${t} ${n-5}v10M${e} ${n-5}v10"/>
    <text class="measure" x=${(t+e)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function Px(t,e,n,s){
let o=(t+e)/2;return x`<path class="dimension" d="M${n} ${t}V${e}M${n-5} ${t}h10M${n-5} ${e}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function Dr(t,e){return t?.length?i`<svg class="small-outline" viewBox=${uh(
e,2)} aria-hidden="true">
    <path class="tool" d=${Mt(t)} />
  </svg>`:d}function Fr(t){let e=t.filter(n=>n?.length);return e.length?Xt(e):[0,0,1,1]}var dc,Wr,Ir,jr=$(()=>{
y();E();Ze();ne();dc=360,Wr=50;Ir=t=>f({text:U(t),unit:C()})});function dg(t,e){let n=Fr(e.map(s=>s.outline_mm));return i`<ul class="rack">
    ${e.map(s=>i`<li>
          <a
            href="/shop/${t}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${Dr(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:d}</span
            >
          </a>
        </li>`)}
  </ul>`}var hg=$(()=>{y();jr()});var pg={};nt(pg,{show:()=>Rx});async function Rx(t){t.title("Shop");let[{press:e,kept:n},s,o,a,r,l]=await Promise.
all([da(t.signal),lt("punches",t.signal),lt("dies",t.signal),lt("holders",t.signal),lt("metals",t.signal),Dn(t.
signal).catch(()=>null)]),c={benches:l,fault:""};async function h(u){let m=Fn(u.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A screen that stands there asks which bench it is.`)){c.fault="";try{await kp(
u.name)}catch(g){c.fault=X(g)}c.benches=await Dn(t.signal).catch(()=>c.benches),p()}}let p=()=>t.render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${R(it.press,"Changing anything needs the shop's server.")}
              </p>`:d}
        <div class="shop-grid">
          ${Wx(e)} ${hc("punches",s.items)} ${hc("dies",o.items)}
          ${hc("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${ot("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(Ix)}
            </ul>
          </section>
          ${c.benches?ig(c.benches,{...c,takeOut:h}):d} ${Dx()}
          ${ot("/crew",i`<section class="panel" data-test="panel-crew">
              <h2><a href="/crew">Crew</a></h2>
              <p>Phones and screens that may see this shop.</p>
              <a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>
            </section>`)}
        </div>`);p(),t.ready()}function Wx(t){return t?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${t.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${f(mt(t.force_kn))}</dd>
      </div>
      <div>
        <dt>Bed</dt>
        <dd>${f(w(t.bed_length_mm,{digits:0}))}</dd>
      </div>
      <div>
        <dt>Open height</dt>
        <dd>${f(w(t.open_height_mm,{digits:0}))}</dd>
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
    </section>`}function hc(t,e){let n=e.filter(o=>o.rating_kn_per_m===null).length,s=e.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${t}">
    <h2><a href="/shop/${t}">${ze[t].title}</a> <span class="soft">${e.length}</span></h2>
    ${e.length?dg(t,e):i`<p>None yet. ${R(it[t],i`<a href="/shop/${t}/+">Add the first</a>`)}</p>`}
    ${n?i`<p>${k("unknown",`${n} without a rating`)}</p>`:d}
    ${s?i`<p>${k("caution",`${s} worn or damaged`)}</p>`:d}
  </section>`}function Dx(){let t=ot("/copies",i`<a class="button wide" href="/copies" data-test="to-copies">Copies and export</a>`);
return ot("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${t===d?"":", and away"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${t}
      </div>
      ${t===d?d:i`<p class="hint">
              Whether there is a good copy of the shop; all of it in one open file, out and in.
            </p>`}
    </section>`)}var Ix,ug=$(()=>{y();F();sn();ut();E();lg();G();rt();hg();Ix=({code:t,name:e})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(t)}">${e}</a>
    ${ot("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(t)}" data-test="learned-${t}"
        >What the metal taught</a
      >`)}
  </li>`});function fg(t,{took:e,show:n,signal:s}){let o={file:"",busy:!1,choices:{...mg},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(p){return a=p,Object.assign(o,{file:p.name,choices:{...mg},layers:[]}),
h()}function c(p,u){return o.choices={...o.choices,[p]:u},o.choices.origin==="point"&&!o.choices.point?n():h()}
async function h(){if(!a)return;let p=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>Fx)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:u}=await Ro(
`/outlines/dxf?${jx(o.choices,t)}`,a,"image/vnd.dxf",s);if(p!==r)return;Object.assign(o,{answer:u,layers:u.layers}),
e(u)}catch(u){if(p!==r||s.aborted)return;if(o.wrong=X(u),u instanceof O&&u.outline){let{code:m,layers:g}=u.outline;
Object.assign(o,{fault:u.outline,code:m,layers:g.length?g:o.layers})}}o.busy=!1,n()}return{state:o,choose:l,set:c}}
function jx(t,e){let n=Object.entries(t).filter(([s,o])=>o&&(s!=="point"||t.origin==="point"));return new URLSearchParams(
[["kind",e],...n])}var mg,Fx,gg=$(()=>{F();mg={units:"",layer:"",origin:"rule",point:"",turn_deg:"0",mirror:"n\
o"},Fx=2e6});async function js(t,e){let n=await t.read(e),s={kept:n,draft:t.toDraft(n??t.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>t.fromDraft(s.draft,s.kept??{}),a=()=>t.draw(s),r=()=>t.boxes.filter(({name:b,needed:_})=>_&&b in
s.draft&&!s.draft[b].trim());function l(b,_){s.draft={...s.draft,[b]:_},delete s.wrong[b],ce(()=>"Leave withou\
t saving what you typed?"),t.preview?.(o()),a()}async function c(b){let _=b?Object.fromEntries(r().map(({name:L})=>[
L,["This is needed."]])):{},T=Object.keys(_).length===0;if(Object.assign(s,{busy:T,wrong:_,others:[],clash:null}),
a(),!T)return se(_);try{await t.write(b),ce(null),t.done(b);return}catch(L){await h(L)}s.busy=!1,a(),se(s.wrong)}
async function h(b){if(b instanceof O&&b.status===412){let _=s.kept;s.kept=await t.read(e);let T=s.kept?t.toDraft(
s.kept):{},L=th(_,s.kept)?"others changed":s.kept?"this changed":"taken out";s.clash={how:L,differences:L==="t\
his changed"?fr(s.draft,T,t.boxes):[]}}else if(b instanceof O&&Object.keys(b.errors).length){let{byName:_,others:T}=Rh(
b.errors,t.boxes.map(({name:L})=>L));Object.assign(s,{wrong:_,others:T})}else s.others=[`Not saved: ${X(b)} Wh\
at you typed is still here.`]}function p(){Object.assign(s,{draft:t.toDraft(s.kept??t.blank),clash:null}),ce(null),
t.preview?.(o()),a()}let u=new Map;function m(b,_){let T=u.get(_)??fg(b,{signal:e,show:a,took:L=>g(_,L)});return u.
set(_,T),T}function g(b,{points_mm:_,height_mm:T}){b==="points_mm"&&s.draft.height_mm===""&&l("height_mm",z(T)),
l(b,Bh(_))}return t.preview?.(o()),{reader:m,state:s,change:l,takeTheirs:p,show:a,save:()=>c(o()),takeOut:()=>c(
null)}}var Hr=$(()=>{F();ut();Me();gg();Ct();E();Ns();J()});function Gr(t,e,n){let s=[],{ask:o}=Oe(async(a,r)=>{let{body:l}=await M("POST","/outline",{body:{kind:t,...Gx(
t,a)},signal:r});return l},({answer:a,error:r})=>{a&&(s=$g(a));let l=r instanceof O&&r.outline?.lines_mm.some(
c=>c.length>1)?r.outline:null;e({parts:s,checks:Ux(a),wrong:r?Vx(r):[],fault:l})},n);return a=>{Hx(t,a)&&o(a)}}
function Hx(t,e){let n={punch:"punches",die:"dies",holder:"holders",press:"press"}[t];return tn(n).filter(({type:s,
blank:o,when:a})=>["length","number"].includes(s)&&o===void 0&&(!a||a(e))).every(({name:s})=>e[s]!==void 0)&&(e.
shape!=="multi_v"||e.openings.every(s=>s.v_opening_mm&&s.angle_deg&&s.shoulder_radius_mm))}function $g({outline_mm:t,
ram:e,bed:n}){return[{name:"",ring:t},{name:"Ram",ring:e},{name:"Bed",ring:n}].filter(({ring:s})=>s?.length)}function Gx(t,e){
return t==="press"?xn(e):{...xn(e),code:e.code||"new"}}function Vx(t){if(!(t instanceof O))return["The drawing\
 waits: the shop's server does not answer."];let e=[...new Set(Object.values(t.errors).flat())];return e.length?
e:[t.message]}var Ur,Ux,pc=$(()=>{F();ut();Me();mo();Ur=t=>({parts:$g({...t,...t?.outlines_mm}),checks:[],wrong:[],
fault:null});Ux=t=>(t?.checks??[]).filter(({code:e})=>!e.endsWith("rating-unknown"))});function Vr({state:t,change:e},n){let s=n.taken(t.draft.code)?["This code is in use already."]:t.wrong.code;return A(
{name:"code",label:"Code",value:t.draft.code,change:o=>e("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function zr({state:t,takeOut:e},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return ft(it[n.kind])?i`<div role="alert">
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
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var Hs,
qr=$(()=>{y();ut();St();J();Hs=(t,e)=>ft(t)?e:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${e}</fieldset>`});function wg(t,e){if(!t?.systematic)return d;let n=t.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
    <h2>The gauge’s zero</h2>
    <p>
      <b
        >${t.flanges} measured flanges agree: the gauge stands
        ${f(w(Math.abs(t.zero_mm),{digits:2}))} too far ${n}.</b
      >
      Set its zero by as much at the press. Nothing here changes until you say that it is set; flanges
      measured before then count no more.
    </p>
    <div class="buttons">
      <button type="button" class="button" data-test="gauge-zero-set" @click=${e}>The zero is set</button>
    </div>
  </section>`}var bg,_g=$(()=>{y();F();E();bg=t=>M("GET","/press/gauge",{signal:t}).then(({body:e})=>e,()=>null)});function xg(t,{metals:e,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=t,h=m=>g=>{r[m]=g,delete l[m]},
p=(m,g)=>({name:m,label:g,value:r[m]??"",wrong:l[m],change:h(m)}),u=(m,g,b)=>i`<div class="broad">${q({...p(m,
g),options:[["","Choose"],...b]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one comes out, the more bed and ram give way.
    </p>
    <form
      novalidate
      @submit=${m=>{m.preventDefault(),qx(t,o)}}>
      <div class="fields">
        ${u("metal","Metal",e)} ${u("die","Die",n)} ${u("punch","Punch",s)}
        ${kg.map(([m,g,b])=>A({...p(m,g),unit:C(),keys:"decimal",hint:b}))}
        ${vg.map(([m,g])=>A({...p(m,g),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${t.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${t.busy}>Work it out</button>
      </div>
    </form>
    ${c?zx(c,a):d}
  </details>`}function zx(t,e){let n=s=>f(w(s,{digits:2}));return i`<div data-test="strips-found" role="status">
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
        @click=${()=>e(z(t.deflection_mm))}>
        Put it in the box
      </button>
    </div>
  </div>`}async function qx(t,e){if(!t.busy){Object.assign(t,{busy:!0,wrong:{},general:"",found:null}),e();try{
let{body:n}=await M("POST","/press/strip-test",{body:Kx(t.typed)});t.found=n}catch(n){t.wrong=n instanceof O?n.
errors:{},t.general=X(n)}t.busy=!1,e()}}function Kx(t){let e={metal:t.metal,die:t.die,punch:t.punch};for(let[n]of kg)
e[n]=et(t[n]??"");for(let[n]of vg)e[n]=No(t[n]??"");return e}var yg,vg,kg,Sg=$(()=>{y();F();dn();E();J();yg=()=>({
typed:{},wrong:{},general:"",busy:!1,found:null}),vg=[["left_deg","Left"],["middle_deg","Middle"],["right_deg",
"Right"]],kg=[["thickness_mm","Thickness of the strips",""],["strip_length_mm","Length of the bend","All three\
 alike, at most a quarter of the bed."],["end_mm","Outer strips from the bed’s end","To the middle of the st\
rip, left and right alike."]]});function Kr({code:t,lines_mm:e,edges:n,marks_mm:s}){let o=Xt([...e,s]),a=On(o,uc-2*Tg,mc-2*Tg),[r,l]=a([o[2],o[1]]),
c=[(uc-r)/2,(mc-l)/2],h=m=>{let[g,b]=a(m);return[g+c[0],-(b+c[1])]},p=!["open","branching"].includes(t),u=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${uc} ${mc}"
    role="img"
    aria-label="The outline as far as it was understood, ${u}"
    data-test="outline-fault">
    ${e.map(m=>x`<path class="fault-line" d=${lo((p?[...m,m[0]]:m).map(h))}/>`)}
    ${n.map(m=>Yx(e[0],m,h))} ${s.map(m=>Jx(h(m)))}
  </svg>`}function Yx(t,e,n){let[s,o]=[t[e-1],t[e%t.length]].map(n);return x`<path class="fault-edge" d=${lo([
s,o])}/>
    ${Mg(s,e)}${Mg(o,e%t.length+1)}`}var uc,mc,Tg,Mg,Jx,fc=$(()=>{y();Ze();uc=360,mc=300,Tg=30;Mg=([t,e],n)=>x`<text class="fault-number" x=${t} y=${-e-
9} text-anchor="middle" font-size="19">${n}</text>`,Jx=([t,e])=>x`<g class="fault-mark" data-test="fault-mark"><circle cx=${t} cy=${-e} r="10"/>
    <path d="M${t-14} ${-e}h28M${t} ${-e-14}v28"/></g>`});function Og(t,{state:e,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:h,layers:p}=e,u=`dx\
f-${t}`,m=(g,b,_)=>q({name:`${u}-${g}`,label:b,value:h[g],options:_,change:T=>s(g,T)});return i`<div class="dxf broad" data-test=${u}>
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
              ${a?i`<p class="hint">Reading ${o}…</p>`:d}
              ${r?i`<p data-test="${u}-read">
                      <b>${o}</b>, read in ${r.units}: ${gc(r.width_mm)} wide,
                      ${gc(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${gc(r.within_mm)}. ${r.rule}${e0(r)}
                    </p>`:d}
              ${l?i`<p class="wrong" data-test="${u}-wrong">${l}</p>`:d}
            </div>
            ${c?.lines_mm.length?Kr(c):d}
            <div class="fields">
              ${m("units","Drawn in",Xx)}
              ${p.length>1||h.layer?m("layer","Layer",[["","all"],...p.map(g=>[g,g])]):d}
              ${m("origin","0, 0 is",Zx)}
              ${h.origin==="point"?A({name:`${u}-point`,label:"Point number",value:h.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:g=>s("point",g)}):d}
              ${m("turn_deg","Turned",Qx)} ${m("mirror","Mirrored",t0)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function e0({left_out:t}){return t.length?` Left out: ${t.map(({kind:e,count:n})=>`${n} ${e}`).join(
", ")}.`:""}var Xx,Zx,Qx,t0,gc,Ag=$(()=>{y();fc();E();J();Xx=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],Zx=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
Qx=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],t0=[["no","no"],
["yes","front to back"]];gc=t=>f(w(t,{digits:2}))});function Lg({draft:t,change:e,wrong:n}){let s=t.openings??"",o=En(s),a=n.openings??[];return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((l,c)=>n0(l,c,{rows:o,said:a,up:t.up||"1",set:h=>e("openings",Mh(s,c,h)),raise:()=>e("up",String(c+
1)),drop:()=>r(c)}))}
    ${a.filter(l=>!/^V \d+: /.test(l)).map(l=>i`<p class="wrong" data-test="wrong-openings">${l}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>e("openings",Oh(s))}>
      Add a V
    </button>
  </div>`;function r(l){let c=Number(t.up||"1");e("openings",Ah(s,l)),(c>l+1||c>=o.length)&&e("up",String(Math.
max(c-1,1)))}}function n0(t,e,{rows:n,said:s,up:o,set:a,raise:r,drop:l}){let c=e+1,h=s.filter(g=>g.startsWith(
`V ${c}: `)).map(g=>g.slice(`V ${c}: `.length)),p=g=>h.filter(b=>b.startsWith(`${g}: `)).map(b=>b.slice(g.length+
2)),u=h.filter(g=>!Object.keys(po).some(b=>g.startsWith(`${b}: `))),m=(g,b,_,T="")=>A({name:`opening-${c}-${po[g]}`,
label:b,unit:_,placeholder:T,value:t[po[g]],keys:g==="code"?"text":"decimal",change:L=>a({[po[g]]:L}),wrong:p(
g)});return i`<fieldset class="opening" data-test="opening-${c}">
    <legend>V ${c}</legend>
    <div class="opening-head">
      <label class="tick"
        ><input
          type="radio"
          name="up"
          value=${c}
          data-test="up-${c}"
          .checked=${xt(o===String(c))}
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
      ${m("v_opening_mm","V opening",C())} ${m("angle_deg","Angle","°")}
      ${m("shoulder_radius_mm","Shoulder radius",C())}
      ${q({name:`opening-${c}-face`,label:"Face",value:t.face||"top",options:Th,change:g=>a({face:g}),wrong:p(
"face")})}
      ${m("centre_mm","Off the middle",C(),"0")}
      ${m("rating_kn_per_m","Rating",Mn().unit,"as the block")}
      ${m("code","Code","","by itself")}
    </div>
    ${u.map(g=>i`<p class="wrong">${g}</p>`)}
  </fieldset>`}var Eg=$(()=>{y();Ve();Di();E();J()});function Yr({kind:t,draft:e,change:n,wrong:s,preview:o,options:a={},first:r=d,reader:l}){return i`<div class="workbench">
    ${va[t].map((c,h)=>i`<section class="panel ${c.part}">
          <h2>${c.title}</h2>
          ${h===0?r:d} ${c.part==="outline"?s0(o):d}
          <div class="fields">
            ${c.fields.filter(({when:p,hidden:u})=>!u&&(!p||p(e))).map(p=>p.type==="openings"?Lg({draft:e,change:n,
wrong:s}):o0(p,e[p.name]??"",u=>n(p.name,u),{wrong:s[p.name],options:a[p.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function s0(t){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${t?.fault?Kr(t.fault):t?.parts.length?i`<div class="outlines">${cg(t.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${t?.wrong.map(e=>i`<p class="wrong" data-test="outline-wrong">${e}</p>`)}
    ${t?vt(t.checks,{quiet:!0}):d}
  </div>`}function o0(t,e,n,{wrong:s=[],options:o=t.options,reader:a}){let{name:r,label:l,type:c}=t;if(c==="pi\
ck"||c==="yes"){let m=t.blank?[["",t.blank],...o??[]]:o??[];return Ng(t,q({name:r,label:l,value:e,options:m,change:n,
wrong:s}))}if(c==="points"||c==="note"){let m=t.dxf?Og(r,a(t.dxf,r)):d;return a0(t,e,i`${m}${r0(t,e,n,s)}`)}let h=Bg(
t),p=["number","length","force","rating"].includes(c)?"decimal":"text",u=A({name:r,label:l,value:e,change:n,wrong:s,
unit:h,keys:p,hint:i0(t,e),placeholder:t.blank??""});return c==="rating"?i`<div class="broad">
      ${u}${e.trim()?d:k("unknown",`${l} unknown`)}
    </div>`:Ng(t,u)}function a0({folded:t,label:e},n,s){return t?i`<details class="broad" ?open=${!!n}>
        <summary>${e}</summary>
        ${s}
      </details>`:s}function Bg({type:t,unit:e=""}){return t==="force"?Xe().unit:t==="rating"?Mn().unit:["leng\
th","lengths","points"].includes(t)?C():e}function r0(t,e,n,s){let{name:o,label:a,hint:r,type:l}=t;return Pn({
name:o,label:a,value:e,change:n,wrong:s,hint:r,unit:Bg(t),lines:l==="points"?7:2})}function i0({type:t,hint:e="",
counted_mm:n},s){let o=[e];return n!==void 0&&o.push(`Empty: ${ls(xe("counted_mm",n))} is counted with (common\
 practice).`),t==="rating"&&!s.trim()&&o.push(Eh),(t==="force"||t==="rating")&&o.push(l0(t,s)),t==="lengths"&&
o.push(c0(s)),o.filter(Boolean).join(" ")}function l0(t,e){if(P().units==="inch")return"Short tons, of 2000 lb\
; metric ones with a t.";let n=io(e,{unit:""}).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];if(!n)return"";let s=Number(
n)*oh;return`In metric tons: ${f(t==="force"?mt(s):At(s))}.`}function c0(t){let e=t.split(/[,;\n]/).filter(n=>n.
trim()).length;return e?e===1?"1 piece.":`${e} pieces.`:""}var Ng,$c=$(()=>{y();fc();jr();st();Vi();E();G();Ag();
J();Eg();Ng=({broad:t,type:e},n)=>t||e==="lengths"?i`<div class="broad">${n}</div>`:n});function Cg(t,e){return i`<section class="panel" id="zero" data-test="zero">
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
  </section>`}var Pg=$(()=>{y()});var Rg={};nt(Rg,{show:()=>d0});async function d0(t){let e=ft(it.press),s=(await lt("holders",t.signal)).items.
map(({code:T,name:L})=>[T,`${T}, ${L}`]),o=async T=>(await lt(T,t.signal)).items.flatMap(rl).map(({code:L,name:B})=>[
L,B?`${L}, ${B}`:L]),a=yg(),[r,l,c,h]=e?await Promise.all([bg(t.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],p=null,u={before:null,after:null},m=null,g=await js({async read(T){let L=await(e?ha:da)(T);return p=
L.etag,u.before=L.press?.depth_zeroed_at??null,L.press??void 0},async write(T){let L=await Qd(T,p);u.after=L.depth_zeroed_at},
blank:{},boxes:tn("press"),toDraft:T=>xa("press",T),fromDraft:(T,L)=>({...Sa("press",T,L),depth_zeroed_at:L?.depth_zeroed_at??
null,gauge_zeroed_at:L?.gauge_zeroed_at??null}),preview:e?Gr("press",T=>{m=T,g.show()},t.signal):void 0,draw:()=>g&&
_(),done(){Q(u.after===u.before?"The press is saved.":"The press is saved. Its error is learned anew."),gt("/s\
hop")}},t.signal);t.title("The press"),e||(m=Ur(g.state.kept));let b=(...T)=>{let L=new Date().toISOString();for(let B of T)
g.state.kept[B]=L;g.save()};function _(){let{state:T,change:L,save:B}=g;t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${T.kept?.name??"The press"}</h1>
        ${e?i`<p>
                ${T.kept?"Take every figure from the press's own plate and manual.":"No press yet. Take every \
figure from its own plate and manual."}
                What is not on the plate may stay empty where the box says unknown.
              </p>`:d}
        ${T.clash?Es(T.clash,"press",{saveMine:B,takeTheirs:g.takeTheirs}):d}
        ${wg(r,()=>b("gauge_zeroed_at"))}
        <form
          novalidate
          @submit=${v=>{v.preventDefault(),B()}}>
          ${Hs(it.press,Yr({kind:"press",draft:T.draft,change:L,wrong:T.wrong,preview:m,reader:g.reader,options:{
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
        ${e&&T.kept?xg(a,{metals:l,dies:c,punches:h},{draw:_,take:v=>L("deflection_mm",v)}):d}
        ${e&&T.kept?Cg(()=>b("depth_zeroed_at"),()=>b("depth_zeroed_at","gauge_zeroed_at")):d}`)}_(),t.ready()}
var Ig=$(()=>{y();ut();Me();Hr();ae();pc();St();Ct();Ns();qr();_g();In();Sg();$c();Pg()});function Dg(t,e,n,s){let{angles:o,wrong:a}=Bo(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h}=Nn(
e),p={id:t,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h,die:n.die,punch:n.punch,...o};p.set_angle_deg=
s.set.trim()?p0(s.set,a):n.set_angle_deg;for(let[u,m]of h0)s[u].trim()&&(p[m]=et(s[u]));return s.lot.trim()&&(p.
lot=s.lot.trim()),s.note.trim()&&(p.note=s.note.trim()),P().name&&(p.by=P().name),{body:p,wrong:a}}function p0(t,e){
let{angles:n}=Bo({...Jr,one:t});return n.measured_deg===void 0&&(e.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var Jr,h0,Wg,Fg=$(()=>{Oa();dn();st();E();Jr={...Eo,depth:"",flat:"",
leftFlange:"",rightFlange:""},h0=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_l\
eft_mm"],["rightFlange","flange_right_mm"],["radius","radius_mm"]],Wg=t=>Object.entries(t).some(([e,n])=>e!=="\
places"&&e!=="lot"&&n.trim()!=="")});function Ug(t,e){let n=Math.min((jg-2*Hg-34)/t,170/e),[s,o]=[t*n,e*n],[a,r]=[Hg+34,24],[l,c,h]=[a+s,r+o,a+s/2],
p=f(w(t,{digits:0})),u=f(w(e,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${jg} ${Math.round(c+52)}"
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
  </svg>`}var jg,Hg,Gg=$(()=>{y();E();jg=400,Hg=30});function qg({before:t,after:e,points:n=[],size:s=1,words:o}){let a=[t.low,t.high,e.low,e.high,...n.map(p=>p.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return d;let c=bs(r,l,{from:zg,to:Vg-zg,size:s,most:5}),{at:h}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${Vg} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(p=>x`<path class="faint" d="M${p.at} 8V84"/>
          <text class="quiet" x=${p.at} y="104" text-anchor="middle"
            font-size=${u0}>${p.text}</text>`)}
    <path
      class="was"
      d="M${h(t.low)} 24H${h(t.high)}M${h(t.low)} 17v14M${h(t.high)} 17v14M${h(t.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${h(e.low)} 52H${h(e.high)}" data-test="band-after" />
    <path class="now-middle" d="M${h(e.nominal)} 42v20" />
    ${n.map(p=>m0(h(p.value),74,p))}
  </svg>`}function m0(t,e,{id:n,outlier:s,weight:o=1}){return s?x`<path class="trial-odd" d="M${t-6} ${e-6}l12 12M${t+
6} ${e-6}l-12 12" data-test="band-point"
        data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${t} cy=${e} r=${o<.25?3:6} data-test="band-point"
        data-id=${n}/>`}var Vg,zg,u0,Kg=$(()=>{y();il();Vg=340,zg=24,u0=17});function Zg({before_mm:t,after_mm:e,flanges:n,strips:s}){let o=c=>f(w(c,{digits:2})),a=e.nominal-t.nominal,r=Number(
tt(a,2))===0,l=`${o(Math.abs(a))} ${a>0?"shorter":"longer"}`;return i`<p data-test="deduction">
    A bend takes <b>${o(e.nominal)}</b> (${o(e.low)} to ${o(e.high)}) off the sum of its
    flats${r?", as before":i`: the next blank is <b>${l}</b> for each such bend`}. Rests on
    ${[Yg(n,"measured flange"),Yg(s,"strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`}function Xr(t){if(!t.length)return i`<p data-test="no-figures">No figure changed.</p>`;let e=t.flatMap(
s=>s.points??[]),n=["Thin: before. Thick: now. Rings: trials"];return e.some(s=>(s.weight??1)<.25)&&n.push("sm\
all ones, of other sheet or tools, count little"),e.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${t.
map(f0)}</div>
    ${e.length?i`<p class="hint">${n.join("; ")}.</p>`:d}`}function f0(t){let{what:e,before:n,after:s,trials:o,
points:a=[]}=t,r=c=>g0(t.unit,c),l=`${e[0].toUpperCase()}${e.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${e}>
    <h3>
      ${l} <small>${o===0?"no trials":o===1?"1 trial":`${o} trials`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${Jg(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${Jg(s,r)}</dd>
      </div>
    </dl>
    ${qg({before:n,after:s,points:a,size:t.unit==="mm"&&C()==="in"?Jt:1,words:`${l}: before ${Xg(n,r)}, now ${Xg(
s,r)}, ${a.length} trials drawn.`})}
  </section>`}function g0(t,e){return t==="deg"?S(e):t==="mm"?w(e,{digits:2}):{text:tt(e,3),unit:t}}var Yg,Jg,
Xg,bc=$(()=>{y();Kg();E();Yg=(t,e)=>t?`${t} ${e}${t>1?"s":""}`:"";Jg=(t,e)=>i`<b>${f(e(t.nominal))}</b>
    <span class="band">${e(t.low).text} to ${e(t.high).text}</span>`,Xg=({low:t,high:e},n)=>`${n(t).text} to ${f(
n(e))}`});function o$(t,{metals:e,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:h}=t,p=(m,g,b={})=>A(
{name:m,label:g,value:r[m],wrong:I(c,m),change:_=>Object.assign(r,{[m]:_}),unit:C(),next:!0,...b}),u=(m,g,b)=>q(
{name:m,label:g,value:r[m],options:b,wrong:I(c,m),change:_=>{Object.assign(r,{[m]:_}),a()}});return i`<form novalidate data-test="choose-form" @submit=${s$(
o)}>
    <p>One strip, bent and measured, makes the book’s figures those of your metal and your tools.</p>
    ${n$(t)}
    <div class="test-fields">
      ${u("metal","Metal",e.map(({code:m,name:g})=>[m,g]))}
      ${p("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${p("bend_length_mm","Strip’s width, along the bend")}
      ${p("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${u("die","Die",t$(n,r.die))}
      ${u("punch","Punch",t$(s,r.punch))}
      ${A({name:"lot",label:"Lot or heat",value:l.lot,wrong:I(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${h}>
        ${h?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function t$(t,e){let n=t.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=e&&!t.some(({code:o})=>o===e)?
[[e,`${e} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function a$({bend:t},{go:e}){let n=t.
worst!=="stop"&&t.die&&t.punch,s=f(w(b0,{digits:0}));return i`${ms(t.checks)}
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
            Cut a strip <b>${f(w(t.bend_length_mm,{digits:0}))}</b> wide and about
            <b>${f(w(Qg,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
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
        ${us(t.first_hit)}
        <div class="figures">${fo("Allow for",t)}</div>
      </div>
      <div class="strip-pictures">
        ${Ug(Qg,t.bend_length_mm)}
        ${t.drawing?me(t.drawing,{pose:"before",close:!0,opening:t.v_opening_mm,gauge:"",angle:t.set_angle_deg,
words:"The strip on the die before the bend"}):d}
      </div>
    </div>
    ${fs(t.checks)} ${nn(t.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>e("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>e("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function r$(t,{go:e,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=t,c=(p,u,m,g={})=>A({name:u,
label:m,value:o[p],wrong:I(a,u),change:b=>Object.assign(o,{[p]:b}),unit:C(),next:!0,...g}),h={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${s$(n)}>
    ${n$(t)}
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
        ${rc(o,s)}
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
  </form>`}function i$({answer:t,form:e,busy:n},s,{again:o}){if(!t)return d;let a=s.find(({code:h})=>h===e.metal)?.
name??e.metal,{teaches:r,asks:l,said:c}=t.test_bend;return i`<h2>What it taught <small>${a}</small></h2>
    <div class=${t.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${t.said.map(h=>i`<p>${_t(h)}</p>`)}
    </div>
    ${r?d:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${k("caution")} <b>Kept, but it does not count.</b> ${co(c)}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(e.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:d}
          </section>`}
    ${t.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${k("caution","Odd one out")}</h2>
            ${t.outliers.map(({said:h})=>i`<p>${co(h)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(e.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:d}
    ${Xr(t.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${t.cards.length?i`<ul class="rows">
              ${t.cards.map(w0)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(e.metal)}" data-test="to-learned"
        >All it taught</a
      >
    </div>`}var $0,Qg,b0,e$,n$,s$,w0,l$=$(()=>{y();go();Gg();E();ue();J();ic();$o();G();Cn();bc();an();oe();$0=
[["choose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Learned"]],Qg=300,b0=102,e$=t=>i`<ol class="stages" aria-label="Stages">
    ${$0.map(([e,n])=>i`<li aria-current=${e===t?"step":"false"}>${n}</li>`)}
  </ol>`,n$=({general:t})=>t?i`<p class="wrong" role="alert" data-test="wrong">${t}</p>`:d,s$=t=>e=>{e.preventDefault(),
t()};w0=({code:t,title:e,said:n})=>i`<li class="row" data-test="changed-card" data-code=${t}>
    <a href="/c/${t}">
      <span class="lead">${e||t}</span> <span class="code">${t}</span>
      <span class="more">${n.map(_t).join("; ")}</span>
    </a>
  </li>`});var c$={};nt(c$,{show:()=>y0});async function y0(t){t.title("Test bend"),t.render(Tt("Looking into the crib…"));
let[e,n,s]=await Promise.all(["metals","dies","punches"].map(async b=>(await lt(b,t.signal)).items)),o=Ta(t.query);
o.metal||=e[0]?.code??"",o.bend_length_mm||=C()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...Jr},bend:null,
answer:null,id:Wt(),wrong:{},general:"",busy:!1};ce(()=>a.stage==="measure"&&Wg(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>t.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${e$(a.stage)} ${l()}
      </article>`);function l(){let b={draw:r,go:c,choose:h,send:p,again:u};return a.stage==="bend"?a$(a,b):a.
stage==="measure"?r$(a,b):a.stage==="taught"?i$(a,e,b):o$(a,{metals:e,dies:n,punches:s},b)}function c(b){Object.
assign(a,{stage:b,wrong:{},general:""}),r(),scrollTo(0,0)}async function h(){let b=uo(o);if(b.length)return m(
Object.fromEntries(b.map(_=>[_,_0[_]])));history.replaceState(null,"",`/shop/test-bend?${Ma(o)}`),await g(async()=>{
let _=await M("POST","/bend",{body:Nn(o),signal:t.signal});a.bend=_.body,c("bend")})}async function p(){let{body:b,
wrong:_}=Dg(a.id,o,a.bend,a.typed);if(Object.keys(_).length)return m(_);await g(async()=>{let T=await M("POST",
"/test-bends",{body:b,timeout:2e4});a.answer=T.body,c("taught"),H()})}function u(){Object.assign(a,{typed:{...Jr,
lot:a.typed.lot,places:a.typed.places},answer:null,id:Wt()}),h()}function m(b,_=""){Object.assign(a,{wrong:b,general:_}),
r(),se(b)}async function g(b){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await b()}catch(_){
return t.signal.aborted?void 0:(a.busy=!1,m(_ instanceof O?_.errors:{},v0(_)))}a.busy=!1,r()}}wt(r,t.signal),r(),
t.ready()}function v0(t){return t instanceof O?t.message:t instanceof j?"The shop’s server does not answer. Wh\
at you typed stays here: try again.":String(t)}var _0,d$=$(()=>{y();F();Oa();ut();Et();Ct();st();yt();Fg();E();
J();Bt();l$();_0={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as\
 1.98."],bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you\
 want, such as 90."]}});function h$(t){if(!t)return d;let{set_by:e,offset_mm:n,results:s,strip:o}=t;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
t.apart)}>
    <h2>
      The press <small>${e?k0[e]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?x0(n,s):d}
    ${n?ot("/shop/press",i`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`):d}
    ${t.said.map(a=>i`<p>${_t(a)}</p>`)}
    ${o?ot("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${S0(o)}>Bend this strip</a>
            </p>`):d}
  </section>`}function x0({low:t,nominal:e,high:n},s){let o=l=>w(Math.abs(l),{digits:2}),a=l=>`${f(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(e).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(e)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(t)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var k0,S0,p$=$(()=>{y();E();G();rt();k0={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};
S0=({metal:t,thickness_mm:e,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:t,thickness:`${e} mm`,die:n})}`});var u$={};nt(u$,{show:()=>T0});async function T0(t){let{metal:e}=t.params,n=`metal=${encodeURIComponent(e)}`;t.
title("What the metal taught");let{items:s}=await lt("metals",t.signal),o=s.find(({code:h})=>h===e);if(!o)return t.
title("No such metal"),t.render(kt(`No metal ${e} in the shop`,i`<a href="/shop/metals">Metals</a>`)),t.ready();
t.title(`What ${o.name} taught`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){let[h,p]=await Promise.
all([M("GET",`/learned?${n}`,{signal:t.signal}),M("GET",`/test-bends?${n}`,{signal:t.signal})]),u=h.body,{evidence:m}=p.
body;Object.assign(a,{groups:u.groups,press:u.press}),a.evidence=[...m].sort((g,b)=>g.made_at<b.made_at?1:-1)}
async function l(h,p){if(!a.busy){a.busy=h.id,c();try{let{body:u}=await M("POST",`/evidence/${encodeURIComponent(
h.id)}/${p}`,{body:P().name?{by:P().name}:{},timeout:2e4});await r(),Q(O0(p,u.cards)),H()}catch(u){if(t.signal.
aborted)return;if(!(u instanceof O||u instanceof j))throw u;Q(u.message)}a.busy="",c()}}let c=()=>t.render(i`<p class="crumb">
          <a href="/shop">Shop</a> / <a href="/shop/metals/${encodeURIComponent(e)}">${o.name}</a>
        </p>
        <div class="head-line">
          <h1>What the metal taught <span class="soft">${o.name}</span></h1>
          ${ot("/shop/test-bend",i`<a class="button next" href="/shop/test-bend?${n}" data-test="to-test-bend"
              >Test bend</a
            >`)}
        </div>
        ${a.evidence.length?i`<div class="learned" data-test="learned" aria-busy=${a.busy?"true":"false"}>
                <section class="learned-figures">
                  ${h$(a.press)} ${A0(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Trials</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(h=>L0(h,a.busy,l))}
                  </ul>
                </section>
              </div>`:kt("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),wt(c,t.signal),c(),t.ready()}function O0(t,e){let n=M0[t];return e.
length?`${n} ${e.length===1?"One card":`${e.length} cards`} would now plan differently: ${e.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function A0(t){return t.length?t.map(({thickness_mm:e,v_opening_mm:n,lot:s,factor:o,deduction:a,
figures:r,said:l})=>i`<section data-test="group" data-thickness=${e} data-v=${n}>
        <h2>
          ${f(w(e,{digits:2}))} over V
          ${f(w(n))}${s?i` <small>lot ${s}</small>`:d}
        </h2>
        ${l.map(c=>i`<p class="together" data-test="together">${k("caution")} ${_t(c)}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${tt(o.nominal,2)} times</b> as much as expected
                (${tt(o.low,2)} to ${tt(o.high,2)}).
              </p>`:d}
        ${a?Zg(a):d} ${Xr(r)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No trial is in use: the figures are the metal’s own.</p>`}function L0(t,e,n){
let s=t.kind==="test bend"?"Test bend":i`First piece${t.code?i` of <a href="/c/${t.code}">${t.code}</a>`:d}`,o=[
t.set_angle_deg===null?"":`set at ${f(S(t.set_angle_deg))}`,f(w(t.thickness_mm,{digits:2})),t.die?`die ${t.die}`:
t.v_opening_mm?`V ${f(w(t.v_opening_mm))}`:"",t.lot?`lot ${t.lot}`:"",at(t.made_at),Se(t)];return i`<li
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
      ${t.said.length?i`<p class=${t.asks?"":"more"} data-test="evidence-words">${co(t.said)}</p>`:d}
    </div>
    <div class="evidence-marks">
      ${E0(t).map(([a,r])=>R(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${e!==""}
            @click=${()=>n(t,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function E0({forgotten:t,asks:e}){return t?[["remember","Use it again"]]:e?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var M0,m$=$(()=>{y();F();ut();ae();st();yt();
E();G();bc();rt();p$();Bt();Ut();M0={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var f$={};nt(f$,{show:()=>N0});async function N0(t){let e=la(t.params.kind);if(!e)return t.title("Not here"),t.
render(kt("No such list in the shop",i`<a href="/shop">The shop</a>`)),t.ready();let{one:n,title:s,many:o}=ze[e];
t.title(s);let{items:a,kept:r}=await lt(e,t.signal),l=Fr(a.map(c=>c.outline_mm??[]));t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?d:R(it[e],i`<a class="button" href="/shop/${e}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${R(it[e],"Changing anything needs the shop's server.")}
            </p>`:d}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>e==="metals"?I0(c):B0(e,c,l))}
            </ul>`:kt(`No ${o} yet`,R(it[e],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),t.ready()}function B0(t,e,n){return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/${t}/${encodeURIComponent(e.code)}">
      <span class="thumb">${Dr(e.outline_mm,n)}</span>
      <span class="who"><span class="lead">${e.code}</span> <span>${e.name}</span>${C0(e)}</span>
      <span class="fact"><span class="what">Place</span>${Ke(e)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${e.rating_kn_per_m===null?k("unknown"):f(At(e.rating_kn_per_m))}</span
      >
      ${e.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${e.segments_mm.length?i`${e.segments_mm.length}, up to
                    ${f(w(P0(e.segments_mm),{digits:0}))}`:"none"}</span
            >`:d}
      <span class="fact"><span class="what">Condition</span>${R0(e)}</span>
    </a>
  </li>`}function C0({shape:t,openings:e=[]}){return t!=="multi_v"?d:i`<span class="soft" data-test="block-vs"
    >${e.map(n=>`${n.code}: V ${f(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function R0({condition:t,condition_note:e}){if(t==="good")return k("ok","Good");let n=t==="damaged"?k("st\
op","Damaged"):t==="worn"?k("caution","Worn"):k("unknown");return i`${n}${e?i` <span class="soft">${e}</span>`:
d}`}function I0(t){let{tensile_mpa:e}=t;return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/metals/${encodeURIComponent(t.code)}">
      <span class="who"><span class="lead">${t.name}</span> <span class="soft">${t.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${e.low} to ${e.high} MPa</span>
      <span class="fact"><span class="what">Standing</span>${e.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${t.gauge_family??"none"}</span>
    </a>
  </li>`}var P0,g$=$(()=>{y();ut();E();G();rt();Bt();jr();P0=t=>Math.max(...t)});function _c(t,e){let n=e.params.tool===wc,s=n?void 0:e.params.tool,o={items:[],etag:null,kept:!1};return{kind:t,
isNew:n,code:s,async read(a){return o=await(ft(it[t])?ca:lt)(t,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(h=>h.code!==s),l=o.items.findIndex(h=>h.code===s),c=a?[{...a,code:s??a.code}]:[];await Zd(
t,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){Q(a?`${a.name||s} is saved.`:`${s} is taken out.`),gt(`/\
shop/${t}`)},taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var wc,$$=$(()=>{ut();ae();St();Ct();wc="+"});async function b$(t,e){let n=await js({...e,blank:{poisson:.3},boxes:W0,toDraft:o=>({code:String(o.code??""),...Ch(
o)}),fromDraft:o=>({...Ph(o),code:o.code.trim()}),draw:()=>n&&s()},t.signal);if(!n.state.kept&&!e.isNew)return t.
title("No such metal"),t.render(kt(`No metal ${e.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),t.ready();
t.title(e.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,h={})=>A({name:l,
label:c,value:o.draft[l]??"",change:p=>a(l,p),wrong:o.wrong[l],...h});t.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${e.isNew?"New metal":i`${e.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${e.isNew?d:i`<div class="buttons">
                ${ot("/shop/learned/x",i`<a
                    class="button"
                    href="/shop/learned/${encodeURIComponent(e.code??"")}"
                    data-test="to-learned"
                    >What the metal taught</a
                  >`)}
                ${ot("/shop/test-bend",i`<a
                    class="button"
                    href="/shop/test-bend?metal=${encodeURIComponent(e.code??"")}"
                    data-test="to-test-bend"
                    >Test bend</a
                  >`)}
              </div>`}
        ${o.clash?Es(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):d}
        <form
          novalidate
          @submit=${l=>{l.preventDefault(),n.save()}}>
          ${Hs(it.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${e.isNew?Vr(n,e):d} ${r("name","Name")}
                  ${q({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:kh,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${hs.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${Pn({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${Ln.map(l=>D0(l,n))}</div>`)}
          ${zr(n,e,"metal")}
        </form>`)}s(),t.ready()}function D0({name:t,label:e,unit:n,needed:s},{state:o,change:a}){let r=p=>o.draft[`${t}\
.${p}`]??"",l=p=>o.wrong[`${t}.${p}`]??[],c=p=>u=>a(`${t}.${p}`,u),h=!s&&!yc.some(([p])=>r(p).trim());return i`<fieldset class="panel figure-card" data-test="figure-${t}">
    <legend>${e}${n?i` <span class="hint">(${n})</span>`:d}</legend>
    ${(o.wrong[t]??[]).map(p=>i`<p class="wrong-line">${p}</p>`)}
    <div class="fields three">
      ${yc.map(([p,u])=>A({name:`${t}.${p}`,label:u,value:r(p),change:c(p),wrong:l(p),keys:"decimal"}))}
    </div>
    ${h?k("unknown","Not known"):d}
    <div class="fields source-line">
      ${Pn({name:`${t}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${q({name:`${t}.standing`,label:"Standing",value:r("standing"),options:vh.map(p=>[p,p]),change:c("standi\
ng"),wrong:l("standing")})}
    </div>
  </fieldset>`}var yc,W0,w$=$(()=>{y();Me();ut();Hr();Wi();qr();Ns();G();J();rt();Bt();yc=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],W0=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...hs,...Ln.flatMap(({name:t,label:e})=>[...yc,["source","s\
ource"],["standing","standing"]].map(([n,s])=>({name:`${t}.${n}`,label:`${e}: ${s.toLowerCase()}`}))),...Ln]});var _$={};nt(_$,{show:()=>j0});async function j0(t){let e=la(t.params.kind);return e?t.params.tool===wc&&!ft(it[e])?
(t.title(`New ${ze[e].one}`),t.render(oa(it[e])),t.ready()):e==="metals"?b$(t,_c(e,t)):H0(t,e):(t.render(kt("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),t.ready())}async function H0(t,e){let n=ze[e],s=_c(
e,t),o=ft(it[e]),a=null,r=await js({...s,blank:F0[e],boxes:[{name:"code",label:"Code"},...tn(e)],toDraft:c=>({
code:String(c.code??""),...xa(e,c)}),fromDraft:(c,h)=>({...Sa(e,c,h),code:c.code.trim()}),preview:o?Gr(n.one,c=>{
a=c,r.show()},t.signal):void 0,draw:()=>r&&l()},t.signal);if(!r.state.kept&&!s.isNew)return t.title("Not in th\
e crib"),t.render(kt(`No ${n.one} ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${e}">${n.
title}</a>`)),t.ready();t.title(s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=Ur(r.state.kept));function l(){
let{state:c,change:h}=r;t.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${e}">${n.title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${c.kept?.name}</span>`}
        </h1>
        ${c.clash?Es(c.clash,n.one,{saveMine:r.save,takeTheirs:r.takeTheirs}):d}
        <form
          novalidate
          @submit=${p=>{p.preventDefault(),r.save()}}>
          ${Hs(it[e],Yr({kind:e,draft:c.draft,change:h,wrong:c.wrong,preview:a,reader:r.reader,first:s.isNew?Vr(
r,s):d}))}
          ${zr(r,s,n.one)}
        </form>`)}l(),t.ready()}var F0,y$=$(()=>{y();ut();Me();Hr();$$();pc();St();Ns();qr();rt();Bt();$c();w$();
F0={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"unkno\
wn",up:1},holders:{shape:"block",condition:"unknown"}}});var x$={};nt(x$,{show:()=>G0});async function G0(t){t.title("Crew");let{signal:e}=t,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>t.render(z0(n,o)),o=V0(n,s,
e),[a,r,l]=await Promise.all([M("GET","/devices",{signal:e}),M("GET","/crew-options",{signal:e}),gn(e).then(({
network:h})=>h?M("GET","/join",{signal:e}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),t.ready();let c=setInterval(o.look,U0);e.addEventListener("abort",()=>clearInterval(
c))}function V0(t,e,n){let s=async a=>{t.fault="";try{await a()}catch(r){if(n.aborted)return;t.fault=qo(r)}e()};
async function o(){if(document.visibilityState!=="visible")return;let a=await M("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;t.devices=a.body.devices;let r=t.offer&&t.devices.find(l=>!t.known.has(
l.id)&&!l.revoked_at);r?Object.assign(t,{came:r,offer:null,name:""}):t.offer&&Date.parse(t.offer.expires_at)<=
Date.now()&&(t.offer=null),e()}return{look:o,draw:e,offer:()=>s(async()=>{let{body:a}=await M("POST","/pairing\
s",{body:{role:t.role,name:t.name.trim()},signal:n});Object.assign(t,{offer:a,came:null,known:new Set(t.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Turn out ${a.name}? It can read nothing any more, and its car\
ds go from it when it next asks.`)&&(await M("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await M("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await M(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),t.open=a})}}function z0(t,e){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${t.fault?i`<p class="wrong" role="alert" data-test="fault">${t.fault}</p>`:d}
    ${t.joining?i`<div class="crew-grid">${K0(t,e)}${Y0(t.joining)}</div>`:q0()}
    <section class="panel" data-test="devices">
      <h2>Who is in</h2>
      ${J0(t,e)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${Y({name:"labels-open",label:"A device that is not paired",value:t.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>e.setOpen(n==="open")})}
    </section>`}function K0(t,e){let{offer:n,came:s}=t;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${Kt[n.role].word}${n.name?i`: <b>${n.name}</b>`:d}. Works once, until
        ${at(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${k$(n.qr)} />
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
    ${Y({name:"role",label:"As",value:t.role,options:v$,change:o=>{t.role=o,e.draw()}})}
    <p class="hint" data-test="role-does">${Kt[t.role].word}: ${Kt[t.role].does}.</p>
    ${A({name:"device-name",label:"Whose?",value:t.name,placeholder:"Ann's phone",change:o=>t.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${e.offer}>
      Show a pairing code
    </button>
  </section>`}function Y0(t){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${k$(t.qr)} />
    <p>${t.shop}: ${t.https.map(e=>i`<span class="address">${e}</span> `)}</p>
    ${t.http.length?i`<p class="hint">Or type <span class="address">${t.http[0]}/join</span></p>`:d}
    ${t.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${X0(t.fingerprint)}</p>`:d}
  </section>`}function J0({devices:t},e){return t.length?i`<ul class="plain-list devices">
    ${t.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:d}
            <span class="soft"
              >${n.revoked_at?`turned out ${at(n.revoked_at)}`:`last seen ${at(n.seen_at)}`},
              paired ${at(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${k("stop","Out")}</p>`:i`${q({name:`role-${n.id}`,label:`Role of ${n.name}`,value:n.
role,options:v$,change:s=>e.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>e.revoke(n)}>
                    Turn out…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var U0,v$,q0,k$,X0,S$=$(()=>{y();F();$n();
G();J();Ut();U0=2e3,v$=Object.entries(Kt).map(([t,{word:e}])=>[t,e]);q0=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;k$=t=>`data:image/svg+xml,${encodeURIComponent(t)}`,X0=t=>t.replace(/(.{4})(?=.)/g,"$1 ")});var Zr,vc=$(()=>{y();Zr=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop by themselves; what still waits to be sent does not, so open Flangebook in the shop’s network first.
  Some phones ask each time before the camera may be used.
</p>`});var M$={};nt(M$,{show:()=>Z0});async function Z0(t){t.title("Pair this device"),t.render(Tt("Asking the shop…"));
let e={me:null,code:Q0(),name:P().name,fault:"",asking:!1,waits:0},n=()=>t.render(tS(e,n));e.me=await gn(t.signal).
catch(()=>null),e.waits=(await Dt().catch(()=>[])).length,n(),t.ready()}function Q0(){if(location.pathname!=="\
/pair"||!location.hash)return"";let t=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),t}function tS(t,e){let{me:n}=t;return n?n.role?eS(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${T$[De()??n.why]?i`<p data-test="why">${k("caution","Not let in")} ${T$[De()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
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
      @submit=${s=>{s.preventDefault(),sS(t,e)}}>
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
    </div>`}function eS(t){let e=t.role;return t.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${k("ok",Kt[e].word)} <b>${t.name}</b>: ${Kt[e].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${Zr}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${nS}>Unpair this device…</button>
    </p>
  </div>`}async function nS(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await gd()}async function sS(t,e){Object.assign(t,{asking:!0,fault:""}),e();try{await fd(t.
code,t.name.trim()),H(),gt(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
t,{asking:!1,fault:qo(n)}),e()}}var T$,O$=$(()=>{y();$n();Et();Ct();st();yt();G();J();vc();Bt();T$={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function A$({show:t,done:e,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,h){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),t();try{if(o.size>aS)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");let p=await Ro(`/import?${h}`,
o,"application/json",n,oS);s.told=p.body}catch(p){if(n.aborted)return;s.wrong=rS(p)}s.busy="",t(),s.told?.imported&&
e()}}return{state:s,choose:a,take:r}}function rS(t){if(!(t instanceof O))return[X(t)];let e=Object.entries(t.errors).
slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[t.message,...e]}var oS,aS,L$=$(()=>{F();oS=3e5,aS=6e7});function B$({state:t,choose:e,take:n}){let{name:s,busy:o,told:a,wrong:r}=t;return i`<section class="panel" data-test="panel-import">
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
      ${r.length?lS(s,r):d}
      ${a?a.imported?hS(a):cS(s,a,n):d}
    </div>
  </section>`}function cS(t,e,n){return i`<div data-test="import-preview">
    <p><b>${t}</b>, exported ${at(e.exported_at)} by ${e.made_by}</p>
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">In the file</th>
          <th scope="col">In the shop now</th>
        </tr>
      </thead>
      <tbody>
        ${iS.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${N$(e.holds[s])}</td>
              <td>${N$(e.here[s])}</td>
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
              @click=${()=>dS(e)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var iS,E$,lS,N$,dS,hS,C$=$(()=>{y();G();Ut();iS=[["press","Press"],["tools","Tools"],["metals","Meta\
ls"],["cards","Cards"],["revisions","Revisions"],["trials","Trials"],["test_bends","Test bends"]],E$=8;lS=(t,e)=>i`<div data-test="import-wrong">
    <p>${k("stop","Not brought in")} ${t}</p>
    <ul>
      ${e.slice(0,E$).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${e.length>E$?i`<p>There are more.</p>`:d}
    <p>Nothing in the shop was changed.</p>
  </div>`;N$=t=>t===""?"none":t,dS=({here:t,holds:e})=>confirm(`Replace the shop? Its ${t.cards} cards and ${t.
trials} trials go, the file's ${e.cards} cards and ${e.trials} trials come. A copy is kept first.`),hS=({holds:t,
kept_as:e})=>i`<div data-test="import-done">
    <p>${k("ok","Brought in")} ${t.cards} cards, ${t.trials} trials.</p>
    ${e?i`<p>The shop that was there is kept as ${e}.</p>`:d}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var P$={};nt(P$,{show:()=>uS});async function uS(t){t.title("Copies and export");let e=A$({show:a,done:s,signal:t.
signal}),n=await o();async function s(){H(),n=await o(),a()}async function o(){let{body:r}=await M("GET","/cop\
ies",{signal:t.signal});return r}function a(){t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Copies and export</h1>
        <div class="settings-grid">
          ${mS(n)}
          <div class="stack">${$S()}${B$(e)}</div>
        </div>`)}a(),t.ready()}function mS({standing:t,last_good_at:e,trouble:n,folder:s,copies:o}){return i`<section class="panel" data-test="panel-copies">
    <h2>Copies</h2>
    <p data-test="standing">${fS(t)}</p>
    ${e?i`<p class="lead-line" data-test="last-good">Last good copy: ${at(e)}</p>`:d}
    ${n?i`<p class="wrong" data-test="trouble">${at(n.at)}: ${n.words}</p>`:d}
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
                    <td>${at(a.at)}</td>
                    <td>${pS[a.kind]}</td>
                    <td>${gS(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:d}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> puts one back.
    </p>
  </section>`}function fS(t){return t==="ok"?k("ok","There is a good copy"):t==="late"?k("caution","The last c\
opy is over two days old"):t==="trouble"?k("stop","The last copy could not be made"):k("unknown","There is no \
copy yet")}function $S(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and trials, as open JSON. Bring it in again here, or read
      it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var pS,gS,R$=$(()=>{y();F();L$();yt();G();C$();Ut();pS={night:"by itself","by-hand":"by hand",replaced:"\
before it was replaced"};gS=t=>`${(t/1e6).toFixed(1)} MB`});async function I$(t){let{code:e,part:n,title:s,note:o,created_by:a}=t,r={code:e,part:{...n,title:s},note:o,by:a},
{body:l}=await M("POST","/cards",{body:r,timeout:2e4}),c=oo(await ie(l),[]);await Ye(c,ea(es(t,["archived","se\
ttings"]),c),{reason:"Put back from a device"}),await rd(t),await zo(e)}var W$=$(()=>{F();ss();Je();Nt()});function D$(t){return t.length?i`<section class="panel" data-test="lost">
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
              ${R("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>bS(e)}>
                  Put it back
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>wS(e)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:d}async function bS(t){try{await I$(t),await H()}catch(e){Q(X(e))}}async function wS(t){confirm(
`Throw away the card ${W(t.code)}, ${t.title}? This device may have the only copy.`)&&(await zo(t.code),await as())}
var F$=$(()=>{y();F();dt();ae();W$();Nt();yt();rt()});var U$={};nt(U$,{show:()=>_S});async function _S(t){t.title("Settings");let e={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([Ie().catch(()=>[]),Dt().catch(()=>[]),Vo().catch(()=>[])]);e=
{...e,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await M("GET","/cards?limit=1",{signal:t.signal,
timeout:4e3}).catch(()=>null);e={...e,total:a?.body?.total??null},o()}function o(){t.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${vS(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${kS(o)}
          </section>
          ${yS()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${xS(e.entries)}
          </section>
          ${D$(e.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${MS(e)} ${Zr}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:t.signal}),await n(),t.ready(),await s()}function yS(){
let t=Xn();return!t||t==="owner"?d:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${Kt[t].word}</b>: ${Kt[t].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function vS(t){let{units:e,inches:n}=P(),s=o=>{We(o),t()};return i`${Y({name:"units",label:"Unit\
s",value:e,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${e==="inch"?Y({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):d}
  ${Y({name:"paper",label:"Paper",value:P().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${e==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:d}`}function kS(t){let{theme:e,name:n}=P();
return i`${Y({name:"theme",label:"Theme",value:e,options:[["system","As the device"],["day","Day"],["shop","Sh\
op, dark"]],change:s=>{We({theme:s==="shop"||s==="day"?s:"system"}),t()}})}
  ${A({name:"name",label:"Your name",value:n,change:s=>We({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function xS(t){return t.length?i`<ul class="waiting-list">
      ${t.map(e=>i`<li data-test="waits-${e.id}">
            <p>
              <b>${H$(e)}</b> on <a href="/c/${e.code}">${W(e.code)}</a>,
              ${at(e.queued_at)} by this device’s clock
              ${e.body.note?i`<br /><span class="soft">${e.body.note}</span>`:d}
            </p>
            ${e.refused?i`<p data-test="refused">
                      ${k("caution","Refused")} ${e.missing?`${Lo(e)}.`:""}
                      ${e.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>SS(e)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>TS(e)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${Lo(e)}. It goes by itself when the shop's server
                    ${e.late?"takes it":"answers"}.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>H()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every trial, note and edit typed here is saved in the shop.
    </p>`}function H$({kind:t,body:e}){if(t==="trial")return`${Pe(e)}, step ${e.step}`;if(t==="note")return"No\
te";let n=Object.keys(e).filter(s=>s in j$).map(s=>j$[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was settled"}async function SS(t){await Xc(t.id),await H()}async function TS(t){confirm(`Throw away ${H$(t)} o\
n ${W(t.code)}? It cannot be brought back.`)&&(await Ho(t.id),await as())}function MS({cards:t,total:e}){let{reached:n,
at:s}=Yt(),o=e!==null&&t>=e,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${t}${e===null?d:` of ${e}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${s?at(s):"not since this page was opened"}</dd>
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
    <button type="button" class="button" data-test="check-now" @click=${()=>H()}>Look again</button>`}var j$,G$=$(
()=>{y();F();$n();dt();Et();St();st();Nt();yt();G();J();vc();Cs();F$();dn();Ut();j$={title:"title",note:"note",
archived:"in use or put away",settings:"settings"}});$n();Oi();Ct();var V$={home:()=>Promise.resolve().then(()=>(yh(),_h)),bend:()=>Promise.resolve().then(()=>(bp(),$p)),bench:()=>Promise.resolve().then(()=>(gu(),fu)),
part:()=>Promise.resolve().then(()=>(Pm(),Cm)),scan:()=>Promise.resolve().then(()=>(nf(),ef)),card:()=>Promise.resolve().then(()=>($f(),gf)),
step:()=>Promise.resolve().then(()=>(yf(),_f)),trial:()=>Promise.resolve().then(()=>(Pf(),Cf)),history:()=>Promise.resolve().then(()=>(Uf(),Hf)),
note:()=>Promise.resolve().then(()=>(Vf(),Gf)),settle:()=>Promise.resolve().then(()=>(qf(),zf)),print:()=>Promise.resolve().then(()=>(Xf(),Jf)),
label:()=>Promise.resolve().then(()=>(tg(),Qf)),labels:()=>Promise.resolve().then(()=>(ng(),eg)),chart:()=>Promise.resolve().then(()=>(rg(),ag)),
shop:()=>Promise.resolve().then(()=>(ug(),pg)),press:()=>Promise.resolve().then(()=>(Ig(),Rg)),"test-bend":()=>Promise.resolve().then(()=>(d$(),c$)),
learned:()=>Promise.resolve().then(()=>(m$(),u$)),tools:()=>Promise.resolve().then(()=>(g$(),f$)),tool:()=>Promise.resolve().then(()=>(y$(),_$)),
crew:()=>Promise.resolve().then(()=>(S$(),x$)),pair:()=>Promise.resolve().then(()=>(O$(),M$)),copies:()=>Promise.resolve().then(()=>(R$(),P$)),
settings:()=>Promise.resolve().then(()=>(G$(),U$))};st();yt();ae();async function q$(){if("serviceWorker"in navigator)try{let t=await navigator.serviceWorker.register("/sw.\
js");t.waiting&&z$(t.waiting),t.addEventListener("updatefound",()=>{let e=t.installing;e?.addEventListener("st\
atechange",()=>{e.state==="installed"&&navigator.serviceWorker.controller&&z$(e)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(t){console.
warn("The app could not be kept on this device:",t)}}function z$(t){Q("A newer Flangebook is here. It opens wh\
en you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),t.postMessage("take over")}})}qs();wt(()=>qs());document.addEventListener("sync",()=>Ue());document.addEventListener("held",()=>Ue());document.
addEventListener("storage",t=>{Ue(),!t.detail.silent&&(document.documentElement.dataset.ready==="failed"&&ve(),
H())});document.addEventListener("turned-away",()=>{Ue(),document.documentElement.dataset.screen!=="pair"&&ve()});
document.addEventListener("rights",()=>{De()===null&&document.documentElement.dataset.screen!=="pair"&&Yd()});
$d();Jd(V$).finally(()=>{Ud(),q$()});
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
