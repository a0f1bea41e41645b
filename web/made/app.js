var ob=Object.defineProperty;var g=(e,t,n)=>()=>{if(n)throw n[0];try{return e&&(t=e(e=0)),t}catch(s){throw n=[s],s}};var ne=(e,t)=>{for(var n in t)ob(e,n,{get:t[n],enumerable:!0})};function Gs(e){let t=e.split("/").filter(Boolean);t[0]?.toLowerCase()==="c"&&(t[0]="c");for(let n of Lc){let s=ab(
n.path.split("/").filter(Boolean),t);if(s)return{route:n,params:s}}}function ab(e,t){if(e.length!==t.length)return;
let n={};for(let[s,o]of e.entries()){if(!o.startsWith(":")){if(o!==t[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(
t[s])}catch{return}}return n}var Lc,Ec,ti=g(()=>{Lc=[{name:"home",path:"/"},{name:"bend",path:"/bend",needs:"b\
ends.bend"},{name:"bench",path:"/bench",floor:!0},{name:"part",path:"/part",needs:"parts.plan"},{name:"scan",path:"\
/scan",floor:!0},{name:"card",path:"/c/:code",floor:!0},{name:"step",path:"/c/:code/step/:step",floor:!0},{name:"\
trial",path:"/c/:code/trial/:step",floor:!0,needs:"trials.keep"},{name:"history",path:"/c/:code/history"},{name:"\
note",path:"/c/:code/note",floor:!0,needs:"cards.change"},{name:"settle",path:"/c/:code/settle",floor:!0,needs:"\
cards.revise"},{name:"print",path:"/c/:code/print"},{name:"label",path:"/c/:code/label"},{name:"labels",path:"\
/labels",needs:"labels.sheet_json"},{name:"chart",path:"/chart",needs:"bends.chart"},{name:"shop",path:"/shop"},
{name:"press",path:"/shop/press"},{name:"test-bend",path:"/shop/test-bend",floor:!0,needs:"evidence.keep"},{name:"\
learned",path:"/shop/learned/:metal",needs:"evidence.learned"},{name:"tools",path:"/shop/:kind"},{name:"tool",
path:"/shop/:kind/:tool"},{name:"crew",path:"/crew",needs:"crew.listed"},{name:"pair",path:"/pair"},{name:"cop\
ies",path:"/copies",needs:"copies.listed"},{name:"settings",path:"/settings"}],Ec=e=>Lc.find(t=>t.name===e)});function rb(){try{let e=JSON.parse(localStorage.getItem(Pc)??"null");return e?.refused?e:Nc}catch{return Nc}}function kt(e){
let t=Gs(e.split("?")[0])?.route.needs;return!t||fe(t)}function Rc({role:e,refused:t={}}){let n=JSON.stringify(
{role:e,refused:t});if(n===JSON.stringify(Zn))return!1;Zn={role:e,refused:t};try{localStorage.setItem(Pc,n)}catch{}
return!0}function Bc(e){e&&e!==Zn.role&&document.dispatchEvent(new CustomEvent("other-role"))}var Pc,Nc,Zn,Qn,
fe,Cc,Te=g(()=>{ti();Pc="flangebook.rights",Nc={role:"owner",refused:{}},Zn=rb();Qn=()=>Zn.role,fe=e=>!Object.
hasOwn(Zn.refused,e);Cc=e=>Zn.refused[e]??"owner"});async function M(e,t,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return Ic(e,t,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function Io(e,t,n,s,o=2e4){
return Ic("POST",e,t,{type:n,signal:s,timeout:o})}async function Ic(e,t,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let h=AbortSignal.
timeout(l),p=performance.now(),u;try{u=await fetch(`/api/v1${t}`,{method:e,headers:c,body:n,signal:r?AbortSignal.
any([r,h]):h,cache:"no-store"})}catch(f){throw r?.aborted?f:new j}if(Bc(u.headers.get("Flangebook-Role")),!u.ok&&
u.status!==304)throw await ni(u,p);let m=ib.includes(u.status)?null:await lb(u,r);return{status:u.status,body:m,
etag:u.headers.get("ETag"),at:hb(u)}}async function lb(e,t){try{return await e.json()}catch(n){throw t?.aborted?
n:new j}}async function ni(e,t=1/0){let n=await e.json().catch(()=>null);if(!n?.status)throw new j;let s=new O(
n);return cb(s,t),s}function cb({status:e,errors:t},n){e===401&&t.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:t.pairing[0],asked:n}})),e===403&&t.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function Wc(e,t,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${e}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await ni(c);for await(let h of db(c.body,l)){let p=JSON.
parse(h);if(p.problem)throw new O(p.problem);if(!p.progress)return p;s(p.progress)}throw new j}catch(c){throw n.
aborted||c instanceof O?c:new j}finally{clearTimeout(r)}}async function*db(e,t){let n=e.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;t();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function Dc(e,t,n){let s;try{let a=await fetch(`/a\
pi/v1${e}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(t),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await ni(a);s=await a.blob()}catch(a){throw a instanceof O?a:new j}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var O,j,X,ib,hb,F=g(()=>{Te();O=class extends Error{constructor(t){super(t.detail||t.title),this.
status=t.status,this.title=t.title,this.errors=t.errors??{},this.outline=t.outline??null}},j=class extends Error{constructor(){
super("The shop's server does not answer.")}},X=e=>e instanceof Error?e.message:String(e);ib=[204,304];hb=e=>new Date(
e.headers.get("Date")??Date.now()).toISOString()});function pb(){return Fc||(Fc=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function ub(){return jc||
(jc=["advance","continue","continuePrimaryKey"].map(e=>IDBCursor.prototype[e]))}function mb(e){let t=new Promise(
(n,s)=>{let o=()=>{e.removeEventListener("success",a),e.removeEventListener("error",r)},a=()=>{n(un(e.result)),
o()},r=()=>{s(e.error),o()};e.addEventListener("success",a),e.addEventListener("error",r)});return Wo.set(t,e),
t}function fb(e){if(ri.has(e))return;let t=new Promise((n,s)=>{let o=()=>{e.removeEventListener("complete",a),
e.removeEventListener("error",r),e.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(e.error||new DOMException(
"AbortError","AbortError")),o()};e.addEventListener("complete",a),e.addEventListener("error",r),e.addEventListener(
"abort",r)});ri.set(e,t)}function Vc(e){ii=e(ii)}function gb(e){return ub().includes(e)?function(...t){return e.
apply(li(this),t),un(this.request)}:function(...t){return un(e.apply(li(this),t))}}function $b(e){return typeof e==
"function"?gb(e):(e instanceof IDBTransaction&&fb(e),ai(e,pb())?new Proxy(e,ii):e)}function un(e){if(e instanceof
IDBRequest)return mb(e);if(si.has(e))return si.get(e);let t=$b(e);return Object.is(t,e)||(si.set(e,t),Wo.set(t,
e)),t}function zc(e,t,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(e,t),l=un(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(un(r.result),c.oldVersion,c.newVersion,un(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",h=>o(h.oldVersion,h.newVersion,h))}).catch(()=>{}),l}function Hc(e,t){if(!(e instanceof IDBDatabase&&
!(t in e)&&typeof t=="string"))return;if(oi[t])return oi[t];let n=t.replace(/FromIndex$/,""),s=t!==n,o=wb.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||bb.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),h=c.store;return s&&(h=h.index(l.shift())),(await Promise.all([h[n](...l),
o&&c.done]))[0]};return oi[t]=a}async function*vb(...e){let t=this;if(t instanceof IDBCursor||(t=await t.openCursor(
...e)),!t)return;t=t;let n=new Proxy(t,yb);for(qc.set(n,t),Wo.set(n,li(t));t;)yield n,t=await(ci.get(n)||t.continue()),
ci.delete(n)}function Gc(e,t){return t===Symbol.asyncIterator&&ai(e,[IDBIndex,IDBObjectStore,IDBCursor])||t===
"iterate"&&ai(e,[IDBIndex,IDBObjectStore])}var ai,Fc,jc,ri,si,Wo,ii,li,bb,wb,oi,_b,Uc,ci,qc,yb,Kc=g(()=>{ai=(e,t)=>t.
some(n=>e instanceof n);ri=new WeakMap,si=new WeakMap,Wo=new WeakMap;ii={get(e,t,n){if(e instanceof IDBTransaction){
if(t==="done")return ri.get(e);if(t==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return un(e[t])},set(e,t,n){return e[t]=n,!0},has(e,t){return e instanceof IDBTransaction&&(t==="done"||t==="s\
tore")?!0:t in e}};li=e=>Wo.get(e);bb=["get","getKey","getAll","getAllKeys","count"],wb=["put","add","delete",
"clear"],oi={};Vc(e=>({...e,get:(t,n,s)=>Hc(t,n)||e.get(t,n,s),has:(t,n)=>!!Hc(t,n)||e.has(t,n)}));_b=["advanc\
e","continue","continuePrimaryKey"],Uc={},ci=new WeakMap,qc=new WeakMap,yb={get(e,t){if(!_b.includes(t))return e[t];
let n=Uc[t];return n||(n=Uc[t]=function(...s){ci.set(this,qc.get(this)[t](...s))}),n}};Vc(e=>({...e,get(t,n,s){
return Gc(t,n)?vb:e.get(t,n,s)},has(t,n){return Gc(t,n)||e.has(t,n)}}))});function di(){return es??=zc("flangebook",kb,{upgrade:(e,t,n,s)=>Sb(e,t,s),blocking:xb,terminated:hi}).catch(e=>{
throw es=void 0,e}),es}function hi(){es=void 0}async function xb(){(await es)?.close(),es=void 0}async function Sb(e,t,n){
t<1&&(e.createObjectStore("cards",{keyPath:"code"}),e.createObjectStore("list",{keyPath:"code"}),e.createObjectStore(
"meta"),e.createObjectStore("outbox",{keyPath:"id"})),t<2&&(e.createObjectStore("sent",{keyPath:"id"}),e.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),t===1&&await Tb(n))}async function Tb(e){
let t=e.objectStore("outbox"),s=(await t.getAll()).sort((a,r)=>a.queued_at<r.queued_at?-1:1),o=0;for(let{trial:a,
...r}of s)t.put({...r,kind:"trial",body:a,number:++o});e.objectStore("meta").put(o,"number"),e.objectStore("me\
ta").delete("cursor")}function Mb(e){return e instanceof DOMException?e.name==="QuotaExceededError"?"This devi\
ce is full: free some room on it.":"This browser lets nothing be kept here, as private windows do.":e instanceof
Error?e.message:String(e)}var kb,es,Do,pi=g(()=>{Kc();kb=2;Do=class extends Error{constructor(t){super(Mb(t))}}});async function ts(e,t,n){if(!navigator.locks)return n();let s=!1,o=()=>(s=!0,n());try{return await navigator.locks.
request(`flangebook.${e}`,{signal:AbortSignal.timeout(t)},o)}catch(a){if(s)throw a;return n()}}var Fo=g(()=>{});function Ke(e,t){return Zc(Jc,n=>Xc(e,"readonly",{},t,n))}function Ne(e,t,{patience:n=Jc,durability:s="relaxed"}={}){
return Zc(n,o=>ts("writer",n/2,()=>Xc(e,"readwrite",{durability:s},t,o)))}async function Xc(e,t,n,s,o){let a=await Lb(
e,t,n);!o.now&&t==="readwrite"&&(a.abort(),await a.done),o.transaction=a,jo.add(a),a.done.catch(()=>{}).finally(
()=>jo.delete(a));try{let r=await s(Ab(a));return t==="readwrite"&&(a.commit(),await a.done),r}catch(r){throw mi(
a),a.error??r}}async function Lb(e,t,n){try{return(await di()).transaction(e,t,n)}catch(s){if(!(s instanceof DOMException&&
s.name==="InvalidStateError"))throw s;return hi(),(await di()).transaction(e,t,n)}}function mi(e){try{e.abort()}catch{}}
async function Zc(e,t){let n={now:!0},s=t(n);s.then(()=>Qc(!1),()=>{});let o,a=new Promise((r,l)=>{o=setTimeout(
()=>l(new qe),mn?Ob:e)});try{return await Promise.race([s,a])}catch(r){throw r instanceof qe&&Eb(n),r}finally{
clearTimeout(o)}}function Eb(e){e.now=!1,e.transaction?.mode==="readwrite"&&mi(e.transaction),Qc(!0)}function Qc(e){
e!==mn&&(mn=e,document.documentElement.dataset.storage=mn?"silent":"answers",document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:mn}})))}var Jc,Ob,qe,jo,mn,ui,Vs,Ab,Yc,Dt=g(()=>{pi();Fo();Jc=1e3,Ob=100,qe=class extends Error{constructor(){
super("This device's storage does not answer.")}},jo=new Set,mn=!1,ui=!1,Vs=()=>mn;Ab=e=>({store:Yc(e.objectStore(
e.objectStoreNames[0])),objectStore:t=>Yc(e.objectStore(t))}),Yc=e=>new Proxy(e,{get:(t,n)=>typeof e[n]=="func\
tion"?(...s)=>{let o=e[n](...s);return o?.catch?.(()=>{}),o}:e[n]});addEventListener("pagehide",()=>{ui||=jo.size>
0;for(let e of jo)mi(e)});addEventListener("pageshow",e=>{e.persisted&&ui&&document.dispatchEvent(new CustomEvent(
"storage",{detail:{silent:mn}})),ui=!1})});function Fe(){if(crypto.randomUUID)return crypto.randomUUID();let e=crypto.getRandomValues(new Uint8Array(16));
return e[6]=e[6]&15|64,e[8]=e[8]&63|128,[...e].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function td(e){try{return await Ne(["outbox","meta"],t=>Cb(t,e),ed)}catch(t){throw new Do(
t)}}async function Cb(e,t){let[n,s]=[e.objectStore("outbox"),e.objectStore("meta")],o=(await n.getAll()).sort(
fi).at(-1)?.number??0,a=Math.max(await s.get("number")??0,o)+1,r={...t,number:a,queued_at:new Date().toISOString()};
return s.put(a,"number"),n.put(r),r}async function nd(){return Ne("meta",async({store:e})=>{let t=(await e.get(
"number")??0)+1;return e.put(t,"number"),t})}async function je(){return(await Ke("outbox",({store:e})=>e.getAll())).
sort(fi)}async function fn(e){return(await je()).filter(t=>t.code===e)}async function zs(e){return Ke("outbox",
({store:t})=>t.get(e))}async function Ho(e){return Ke("sent",({store:t})=>t.get(e))}async function gn(e,t){await Ne(
"outbox",async({store:n})=>{let s=await n.get(e);s&&n.put({...s,...t})},ed)}async function Uo(e){let t=await zs(
e);await Ne("outbox",({store:n})=>n.delete(e)),t?.after&&await Go(e,t.after)}async function Go(e,t,n=()=>!0){for(let s of await je())
s.after===e&&n(s)&&await gn(s.id,{after:t})}async function qs(e,t,n=!1){let{again:s,refused:o,late:a,missing:r,
parked:l,...c}=e;try{await Ne(["outbox","sent"],h=>{h.objectStore("sent").put({...c,proposed:n,sent_at:e.sent_at??
t}),h.objectStore("outbox").delete(e.id)})}catch{await Ne("outbox",({store:h})=>h.delete(e.id))}}async function od(e){
let t=Date.parse(e)-Nb*Pb;await Ne("sent",async({store:n})=>{for(let s of await n.getAll())Date.parse(s.sent_at??
"")<t&&n.delete(s.id)})}async function ad(e){let[t,n]=[e.objectStore("outbox"),e.objectStore("sent")],s=(await n.
getAll()).sort(fi),o=await t.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{let{proposed:c,...h}=r;a.has(
r.id)||t.put({...h,parked:c,again:!0,number:l-s.length})}),n.clear()}var Nb,Pb,ed,fi,sd,Pe=g(()=>{pi();Dt();Nb=
90,Pb=864e5,ed={durability:"strict"};fi=(e,t)=>e.number-t.number;sd=e=>gn(e,{refused:void 0})});async function tt(e){return Ke("cards",({store:t})=>t.get(e))}async function Ft(){return(await Ke("list",({store:t})=>t.
getAll())).sort((t,n)=>t.updated_at<n.updated_at?1:-1)}async function ct(e){return Ne(["cards","list"],async t=>{
let n=await t.objectStore("cards").get(e.code);return n&&Bb(e,n)?n:(rd(t,e),e)})}function rd(e,t){e.objectStore(
"cards").put(t),e.objectStore("list").put(Ib(t))}function Ib(e){let{code:t,title:n,note:s,revision:o,updated_at:a,
updated_by:r,worst:l,archived:c,part:h,trials_total:p,proposals:u}=e,{metal:m,thickness_mm:f}=h,b=u?.length??0;
return{code:t,title:n,note:s,metal:m,thickness_mm:f,bends:h.bends.length,revision:o,updated_at:a,updated_by:r,
worst:l,trials:p,archived:c,settle:b}}async function id(){return Ke("list",({store:e})=>e.index("settle").getAll(
IDBKeyRange.lowerBound(1)))}async function ld(){let e=["cards","list","meta","sent","lost"];await Ne(e,t=>{for(let n of e)
t.objectStore(n).clear()})}async function Vo(){return Ke("meta",({store:e})=>e.get("shop"))}async function cd(){
return Ke("meta",({store:e})=>e.get("cursor"))}async function dd(e){let t=e.reset||await Wb()?["outbox","sent",
"lost"]:[];await Ne(["cards","list","meta",...t],async n=>{e.reset&&(await Db(n),await ad(n));let s=new Set(t.
length?await n.objectStore("lost").getAllKeys():[]);for(let a of e.cards)rd(n,a),s.has(a.code)&&await Fb(n,a);
let o=n.objectStore("meta");e.shop&&o.put(e.shop,"shop"),o.put(e.cursor,"cursor"),o.put(!!e.more,"more")},{patience:Rb})}
async function Db(e){let[t,n]=[e.objectStore("cards"),e.objectStore("lost")];for(let s of await t.getAll())n.put(
s);t.clear(),e.objectStore("list").clear()}async function Fb(e,t){let n=await e.objectStore("lost").get(t.code);
e.objectStore("lost").delete(t.code);let s=new Set(t.trials.map(r=>r.id)),o=new Set(await e.objectStore("outbo\
x").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.forEach((r,l)=>e.objectStore("outbox").put(
hd(t.code,r,l-a.length)))}function hd(e,{number:t,received_at:n,correction:s,device:o,...a},r){return{id:a.id,
kind:"trial",code:e,body:a,number:r,queued_at:n,again:!0}}async function pd(e){await Ne("outbox",({store:t})=>{
e.trials.forEach((n,s)=>{t.put({...hd(e.code,n,s-e.trials.length),missing:!0})})})}async function zo(){return Ke(
["meta","lost"],async e=>await e.objectStore("meta").get("more")?[]:e.objectStore("lost").getAll())}async function qo(e){
await Ne("lost",({store:t})=>t.delete(e))}var Rb,Bb,Wb,Ce=g(()=>{Pe();Dt();Rb=2e4;Bb=(e,t)=>e.revision<t.revision||
e.revision===t.revision&&(e.trials_total<t.trials_total||e.proposals_total<t.proposals_total);Wb=async()=>await Ke(
"lost",({store:e})=>e.count())>0});function jb(){try{return{...ud,...JSON.parse(localStorage.getItem(md)??"{}")}}catch{return{...ud}}}function R(){
return $n}function jt(e){$n={...$n,...e};try{localStorage.setItem(md,JSON.stringify($n))}catch{}Ks();for(let t of gi)
t($n)}function we(e,t){gi.add(e),t?.addEventListener("abort",()=>gi.delete(e))}function Ks(){let e=fd.matches?
"shop":"day";document.documentElement.dataset.theme=$n.theme==="system"?e:$n.theme}var md,ud,gi,$n,fd,se=g(()=>{
md="flangebook.settings",ud={units:"mm",inches:"decimal",theme:"system",name:"",paper:"A4"},gi=new Set,$n=jb();
fd=matchMedia("(prefers-color-scheme: dark)");fd.addEventListener("change",Ks)});function wd(e){return Ys!==null&&e!=="pair"&&!($d?.labels_open&&Hb.includes(e))}async function bn(e){$i+=1;try{
let{body:t}=await M("GET","/me",{signal:e,timeout:4e3});return $d=t,Rc(t)&&document.dispatchEvent(new CustomEvent(
"rights")),t}finally{$i-=1}}async function _d(e){Ys!==e&&(Ys=e,await Promise.all([bn().catch(()=>null),ld().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function yd(e,t){let{body:n}=await M(
"POST","/pair",{body:{code:e,name:t}});return R().name||jt({name:n.name}),Ys=null,bd=performance.now(),await bn(),
n}async function vd(){await M("POST","/leave",{}),await _d("unknown")}function kd(){document.addEventListener(
"not-paired",e=>{let{why:t,asked:n}=e.detail;n>bd&&_d(t)}),document.addEventListener("other-role",gd),Qn()!=="\
owner"&&gd()}function gd(){$i||bn().catch(()=>null)}var Ye,Hb,$d,Ys,bd,$i,Ht,Ko,wn=g(()=>{F();Te();Ce();se();Ye=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Press\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},Hb=["\
card","step"],$d=null,Ys=null,bd=-1/0,$i=0,Ht=()=>Ys;Ko=e=>X(e)});function Pd(e,t){if(!vi(e)||!e.hasOwnProperty("raw"))throw Error("invalid template strings array");return Sd!==
void 0?Sd.createHTML(t):t}function kn(e,t,n=e,s){if(t===dt)return t;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=Zs(t)?
void 0:t._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(e),o._$AT(e,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(t=kn(e,o._$AS(e,t.values),o,s)),t}var wi,xd,Yo,Sd,_i,
xt,yi,Ub,vn,Xs,Zs,vi,Ed,bi,Js,Td,Md,_n,Od,Ad,Nd,ki,i,x,h1,dt,d,Ld,yn,Cd,Qs,Jo,ns,xn,Xo,Zo,Qo,ea,Rd,Gb,Ut,y=g(()=>{
wi=globalThis,xd=e=>e,Yo=wi.trustedTypes,Sd=Yo?Yo.createPolicy("lit-html",{createHTML:e=>e}):void 0,_i="$lit$",
xt=`lit$${Math.random().toFixed(9).slice(2)}$`,yi="?"+xt,Ub=`<${yi}>`,vn=document,Xs=()=>vn.createComment(""),
Zs=e=>e===null||typeof e!="object"&&typeof e!="function",vi=Array.isArray,Ed=e=>vi(e)||typeof e?.[Symbol.iterator]==
"function",bi=`[ 	
\f\r]`,Js=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,Td=/-->/g,Md=/>/g,_n=RegExp(`>|${bi}(?:([^\\s"'\
>=/]+)(${bi}*=${bi}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),Od=/'/g,Ad=/"/g,Nd=/^(?:script|style|textarea|title)$/i,ki=e=>(t,...n)=>({_$litType$:e,
strings:t,values:n}),i=ki(1),x=ki(2),h1=ki(3),dt=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),Ld=new WeakMap,
yn=vn.createTreeWalker(vn,129);Cd=(e,t)=>{let n=e.length-1,s=[],o,a=t===2?"<svg>":t===3?"<math>":"",r=Js;for(let l=0;l<
n;l++){let c=e[l],h,p,u=-1,m=0;for(;m<c.length&&(r.lastIndex=m,p=r.exec(c),p!==null);)m=r.lastIndex,r===Js?p[1]===
"!--"?r=Td:p[1]!==void 0?r=Md:p[2]!==void 0?(Nd.test(p[2])&&(o=RegExp("</"+p[2],"g")),r=_n):p[3]!==void 0&&(r=
_n):r===_n?p[0]===">"?(r=o??Js,u=-1):p[1]===void 0?u=-2:(u=r.lastIndex-p[2].length,h=p[1],r=p[3]===void 0?_n:p[3]===
'"'?Ad:Od):r===Ad||r===Od?r=_n:r===Td||r===Md?r=Js:(r=_n,o=void 0);let f=r===_n&&e[l+1].startsWith("/>")?" ":"";
a+=r===Js?c+Ub:u>=0?(s.push(h),c.slice(0,u)+_i+c.slice(u)+xt+f):c+xt+(u===-2?l:f)}return[Pd(e,a+(e[n]||"<?>")+
(t===2?"</svg>":t===3?"</math>":"")),s]},Qs=class e{constructor({strings:t,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=t.length-1,c=this.parts,[h,p]=Cd(t,n);if(this.el=e.createElement(h,s),yn.currentNode=this.el.content,
n===2||n===3){let u=this.el.content.firstChild;u.replaceWith(...u.childNodes)}for(;(o=yn.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let u of o.getAttributeNames())if(u.endsWith(_i)){let m=p[r++],
f=o.getAttribute(u).split(xt),b=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:b[2],strings:f,ctor:b[1]===
"."?Xo:b[1]==="?"?Zo:b[1]==="@"?Qo:xn}),o.removeAttribute(u)}else u.startsWith(xt)&&(c.push({type:6,index:a}),
o.removeAttribute(u));if(Nd.test(o.tagName)){let u=o.textContent.split(xt),m=u.length-1;if(m>0){o.textContent=
Yo?Yo.emptyScript:"";for(let f=0;f<m;f++)o.append(u[f],Xs()),yn.nextNode(),c.push({type:2,index:++a});o.append(
u[m],Xs())}}}else if(o.nodeType===8)if(o.data===yi)c.push({type:2,index:a});else{let u=-1;for(;(u=o.data.indexOf(
xt,u+1))!==-1;)c.push({type:7,index:a}),u+=xt.length-1}a++}}static createElement(t,n){let s=vn.createElement("\
template");return s.innerHTML=t,s}};Jo=class{constructor(t,n){this._$AV=[],this._$AN=void 0,this._$AD=t,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(t){let{el:{content:n},parts:s}=this.
_$AD,o=(t?.creationScope??vn).importNode(n,!0);yn.currentNode=o;let a=yn.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let h;c.type===2?h=new ns(a,a.nextSibling,this,t):c.type===1?h=new c.ctor(a,c.name,c.strings,this,
t):c.type===6&&(h=new ea(a,this,t)),this._$AV.push(h),c=s[++l]}r!==c?.index&&(a=yn.nextNode(),r++)}return yn.currentNode=
vn,o}p(t){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(t,s,n),n+=s.strings.length-2):
s._$AI(t[n])),n++}},ns=class e{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(t,n,s,o){this.type=2,this.
_$AH=d,this._$AN=void 0,this._$AA=t,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let t=this._$AA.parentNode,n=this._$AM;return n!==void 0&&t?.nodeType===11&&(t=n.parentNode),t}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(t,n=this){t=kn(this,t,n),Zs(t)?t===d||t==null||t===""?(this.
_$AH!==d&&this._$AR(),this._$AH=d):t!==this._$AH&&t!==dt&&this._(t):t._$litType$!==void 0?this.$(t):t.nodeType!==
void 0?this.T(t):Ed(t)?this.k(t):this._(t)}O(t){return this._$AA.parentNode.insertBefore(t,this._$AB)}T(t){this.
_$AH!==t&&(this._$AR(),this._$AH=this.O(t))}_(t){this._$AH!==d&&Zs(this._$AH)?this._$AA.nextSibling.data=t:this.
T(vn.createTextNode(t)),this._$AH=t}$(t){let{values:n,_$litType$:s}=t,o=typeof s=="number"?this._$AC(t):(s.el===
void 0&&(s.el=Qs.createElement(Pd(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new Jo(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(t){let n=Ld.get(t.strings);return n===void 0&&Ld.
set(t.strings,n=new Qs(t)),n}k(t){vi(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of t)
o===n.length?n.push(s=new e(this.O(Xs()),this.O(Xs()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(t=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);t!==this._$AB;){
let s=xd(t).nextSibling;xd(t).remove(),t=s}}setConnected(t){this._$AM===void 0&&(this._$Cv=t,this._$AP?.(t))}},
xn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(t,n,s,o,a){this.
type=1,this._$AH=d,this._$AN=void 0,this.element=t,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=d}_$AI(t,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)t=kn(this,t,n,0),r=!Zs(t)||t!==this._$AH&&t!==dt,r&&(this._$AH=t);else{let l=t,c,h;
for(t=a[0],c=0;c<a.length-1;c++)h=kn(this,l[s+c],n,c),h===dt&&(h=this._$AH[c]),r||=!Zs(h)||h!==this._$AH[c],h===
d?t=d:t!==d&&(t+=(h??"")+a[c+1]),this._$AH[c]=h}r&&!o&&this.j(t)}j(t){t===d?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,t??"")}},Xo=class extends xn{constructor(){super(...arguments),this.
type=3}j(t){this.element[this.name]=t===d?void 0:t}},Zo=class extends xn{constructor(){super(...arguments),this.
type=4}j(t){this.element.toggleAttribute(this.name,!!t&&t!==d)}},Qo=class extends xn{constructor(t,n,s,o,a){super(
t,n,s,o,a),this.type=5}_$AI(t,n=this){if((t=kn(this,t,n,0)??d)===dt)return;let s=this._$AH,o=t===d&&s!==d||t.capture!==
s.capture||t.once!==s.once||t.passive!==s.passive,a=t!==d&&(s===d||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,t),this._$AH=t}handleEvent(t){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,t):this._$AH.handleEvent(t)}},ea=class{constructor(t,n,s){
this.element=t,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(t){
kn(this,t)}},Rd={M:_i,P:xt,A:yi,C:1,L:Cd,R:Jo,D:Ed,V:kn,I:ns,H:xn,N:Zo,U:Qo,B:Xo,F:ea},Gb=wi.litHtmlPolyfillSupport;
Gb?.(Qs,ns),(wi.litHtmlVersions??=[]).push("3.3.3");Ut=(e,t,n)=>{let s=n?.renderBefore??t,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new ns(t.insertBefore(Xs(),a),a,void 0,n??{})}return o._$AI(
e),o}});function ss(e,t=Wd){return Object.fromEntries(t.filter(n=>e[n]!==void 0).map(n=>[n,e[n]]))}function Bd(e){return Array.
isArray(e)?[...e].sort((t,n)=>t.step-n.step).map(({step:t,set_angle_deg:n,punch_depth_mm:s})=>[t,n??null,s??null]):
e??null}function os(e,t,n){let s=[];for(let[l,c]of Vb){let[h,p]=[e[l],t[l]];h!==void 0&&!ta(h,n[l])&&s.push({name:l,
label:c,shop:n[l],yours:h,before:p})}if(!e.settings)return s;let[o,a,r]=[e.settings,t.settings??[],n.settings].
map(Dd);for(let l of new Set([...o.keys(),...a.keys()])){let[c,h,p]=[o.get(l),a.get(l),r.get(l)];Id(c,h)||Id(c,
p)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,shop:p,yours:c,before:h})}return s}function Fd(e,t,n){
let s={},o=e.filter(l=>t[l.name]==="yours");for(let l of o)l.name.startsWith("settings ")||(s[l.name]=l.yours);
let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)return s;let r=Dd(n.settings);for(let l of a){let c=Number(
l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(c)}return{...s,settings:[...r.values()]}}var Wd,ta,na,
xi,Vb,Dd,Id,as=g(()=>{Wd=["title","note","archived","settings"];ta=(e,t)=>JSON.stringify(Bd(e))===JSON.stringify(
Bd(t));na=(e,t)=>ss(e,Wd.filter(n=>n in e&&!ta(e[n],t[n]))),xi=({before:e={}},t)=>Object.keys(e).every(n=>ta(e[n],
t[n])),Vb=[["title","Title"],["note","Note"],["archived","In use"]];Dd=e=>new Map(e.map(t=>[t.step,t])),Id=(e,t)=>ta(
e?[e]:[],t?[t]:[])});async function sa(e){Si.add(e.id);try{return await jd(e)}finally{Si.delete(e.id)}}async function jd(e){let t;try{
t=await td(e)}catch(n){let s=await Yb(e);return s||(await Kb(n),jd(e))}try{return await Ud(t,4e3)??{where:"her\
e",answer:null}}catch(n){let s=n instanceof j||n instanceof qe;if(!s&&Mi(n))throw await Uo(t.id),n;return{where:"\
here",answer:null,late:s?"":await qd(t,n)}}}async function Kb(e){Ti.add(e),document.dispatchEvent(new CustomEvent(
"held")),await new Promise(t=>{setTimeout(t,zb),document.addEventListener("storage",t,{once:!0})}),Ti.delete(e),
document.dispatchEvent(new CustomEvent("held"))}async function Yb(e){try{let{body:t}=await Vd({...e,number:0,queued_at:""},
8e3);return{where:"shop",answer:t}}catch(t){if(t instanceof j||!Mi(t))return null;throw t}}async function Hd(){
return ts("outbox",qb,Jb)}async function Jb(){let e=0;for(let{id:t}of await je()){if(Si.has(t))continue;let n=await zs(
t);if(!(!n||!await Xb(n)))try{await Ud(n,8e3)&&(e+=1)}catch(s){if(s instanceof j)break;Mi(s)?await gn(n.id,{refused:s.
message,missing:s.status===404}):await qd(n,s)}}return{sent:e,left:(await je()).length}}async function Ud(e,t){
if(!await Zb(e))return null;let n=await zs(e.id)??e;try{let s=await(n.parked?zd(n,t):Vd(n,t));return await Gd(
n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof O&&s.status===412)||n.parked)throw s;
return Qb(n,t)}}async function Zb({id:e,code:t,after:n,before:s,parked:o}){if(!n||o)return!0;if(await zs(n))return!1;
if(!(await Ho(n))?.proposed)return!0;let a=await tt(t);return!a||a.proposals?.some(r=>r.id===n)?!1:(await gn(e,
xi({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function Qb(e,t){if(e.body.part)throw new O(ew);
let{body:n,at:s}=await M("GET",`/cards/${e.code}`,{timeout:t});await ct(n);let o=(e.body.settles??[]).some(l=>n.
proposals.some(c=>c.id===l));if(o||!os(e.body,e.before??{},n).length)return await qs(e,s),await Go(e.id,n.revision_id,
l=>xi(l,n)),{where:o?"settle":"shop",answer:n};let a={...e,parked:!0};await gn(e.id,{parked:!0});let r=await zd(
a,t);return await Gd(a,r),{where:"settle",answer:r.body}}async function Gd(e,{body:t,at:n}){if(e.kind!=="trial"){
let s=t;await ct(s).catch(()=>{}),!e.parked&&e.after&&s.revision_id===e.after&&await Go(e.id,e.after)}await qs(
e,n,!!e.parked),await od(n)}function Vd({kind:e,code:t,id:n,body:s,after:o,etag:a,missing:r},l){return e==="tr\
ial"?M("POST",`/cards/${t}/trials`,{body:r?{...s,again:!0}:s,timeout:l}):M("PUT",`/cards/${t}`,{body:{...s,id:n,
...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function zd({id:e,code:t,body:n,before:s,revision:o,queued_at:a},r){
let{reason:l,by:c,settles:h,...p}=n,u={...l?{reason:l}:{},...c?{by:c}:{}};return M("POST",`/cards/${t}/proposa\
ls`,{body:{id:e,changes:p,before:s,revision:o,made_at:a,...u},timeout:r})}async function qd({id:e},t){if(!(t instanceof
O)||t.status<500)return"";let n=t.status===507?"The disk of the shop’s server is full: make room on it":t.title;
return await gn(e,{late:n}).catch(()=>{}),n}function Mi(e){if(!(e instanceof O))throw e;return e.status<500&&![
401,408,429].includes(e.status)}var zb,qb,Si,Ti,eo,Xb,ew,rs=g(()=>{F();as();Pe();Ce();Dt();Fo();zb=3e3,qb=15e3;
Si=new Set;Ti=new Set,eo=()=>[...Ti].at(-1)?.message??"";Xb=async({refused:e,again:t,missing:n,code:s})=>!e||!!(t&&
n&&await tt(s));ew={title:"Changed meanwhile",status:412,detail:"The part was changed here, the shop was resto\
red from an earlier backup, and the card was changed again since. Open the card and make the change anew."}});function Je(){return Gt}async function oa(e){let t=await je().catch(()=>[]),n=await zo().catch(()=>[]);Gt={...Gt,
...e,waiting:t.length,words:Ai(t),late:t.find(s=>s.late&&!s.refused)?.late??"",settle:await nw(t).catch(()=>[]),
lost:n.length,refused:t.filter(s=>s.refused).length},document.documentElement.dataset.reached=String(Gt.reached),
document.documentElement.dataset.settle=String(Gt.settle.length),document.documentElement.dataset.waiting=String(
Gt.waiting),document.dispatchEvent(new CustomEvent("sync",{detail:Gt}))}function Ai(e){let n=[["trial","result"],
["note","note"],["edit","edit"]].map(([s,o])=>({word:o,many:e.filter(a=>a.kind===s).length})).filter(({many:s})=>s).
map(({word:s,many:o})=>`${o} ${s}${o===1?"":"s"}`);return n.length<2?n.join(""):`${n.slice(0,-1).join(", ")} a\
nd ${n.at(-1)}`}async function nw(e){let t=(await id()).flatMap(({code:n,settle:s})=>Array(s).fill(n));for(let n of e)
for(let s of n.body.settles??[])t.includes(n.code)&&t.splice(t.indexOf(n.code),1);return t}function Vt(e,t){let n=e||
!!(t&&!(t instanceof j));n!==Gt.reached&&oa({reached:n})}function is(){return oa({})}function H(){return to?(Oi=
!0,to):(to=sw().finally(()=>to=void 0),to)}async function sw(){do Oi=!1,await ow();while(Oi)}async function ow(){
try{await Kd(),(await Hd()).sent>0&&await Kd(),await oa({reached:!0,at:new Date().toISOString(),unkept:!1})}catch(e){
await oa(e instanceof j?{reached:!1}:e instanceof O?{reached:!0}:{unkept:!0}),!(e instanceof j||e instanceof O&&
e.status===401)&&!(e instanceof qe)&&console.warn("changes feed:",e)}}async function Kd(){for(;await ts("feed",
tw,aw););}async function aw(){let e=await cd()??"",{body:t}=await M("GET",`/changes?since=${encodeURIComponent(
e)}`,{timeout:15e3});return await dd(t),t.more}function Yd(){H(),addEventListener("online",()=>H()),addEventListener(
"offline",()=>H()),document.addEventListener("visibilitychange",()=>document.visibilityState==="visible"&&H()),
setInterval(()=>document.visibilityState==="visible"&&H(),1e4)}var tw,Gt,to,Oi,ve=g(()=>{F();Pe();rs();Dt();Ce();
Fo();tw=3e3,Gt={reached:null,waiting:0,words:"",late:"",refused:0,settle:[],lost:0,at:null,unkept:!1},Oi=!1});function zt(){let e=location.pathname,t=n=>n==="/"?e==="/"||e==="/scan"||/^\/c\//i.test(e):e.startsWith(n);Ut(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${iw}<span>Flangebook</span></a>
        ${Ht()===null?i`<nav aria-label="Main">
                ${rw.filter(([n])=>kt(n)).map(([n,s])=>i`<a href=${n} aria-current=${t(n)?"page":"false"}>${s}</a>`)}
              </nav>`:d}
      </div>
      ${lw()}${cw()}${Ht()===null?dw():d}`,document.getElementById("masthead"))}function cw(){return eo()?i`<p class="standing" data-test="held">
      ${eo()}
      <b
        >What you typed is held in this window only, until it can be kept here or the shop answers: leave it
        open.</b
      >
      Then it is saved automatically.
    </p>`:Vs()?i`<p class="standing" data-test="silent-storage">
    This device’s storage does not answer.
    ${Je().reached===!1?d:"Cards come from the shop."}
  </p>`:d}function dw(){let{reached:e,waiting:t,words:n,late:s,refused:o,settle:a,lost:r}=Je(),l=a.filter(m=>kt(
`/c/${m}/settle`)),c=s?` ${s}.`:"",h=t?`${n} ${t===1?"waits":"wait"} to be sent.${c}`:"",p=Vs()?"":"Cards on t\
his device still open.",u=e===!1?`Not connected to the shop. ${p}`:"";return!u&&!h&&!l.length&&!r?d:i`<p class="standing" data-test="standing">
    ${u} ${h} ${o?i`<a href="/settings">${o} refused: look</a>`:d}
    ${l.length?i`<a href="/c/${l[0]}/settle" data-test="settle-count">${l.length} to resolve</a>`:d}
    ${r?i`<a href="/settings" data-test="lost-count"
            >${r===1?"1 card is":`${r} cards are`} not in the shop any more: look</a
          >`:d}
  </p>`}var rw,iw,lw,Li=g(()=>{y();wn();Te();rs();Dt();ve();rw=[["/","Cards"],["/bend","Bend"],["/part","Part"],
["/shop","Shop"],["/settings","Settings"]];iw=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,lw=()=>isSecureContext?d:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});function so(e){return e.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function W(e){
return e.length>3?`${e.slice(0,3)}-${e.slice(3)}`:e}function ue(e){let t=so(e),n=[...t].filter(s=>!no.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:t,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return t.length>7?{code:t,whole:!1,
fault:`A card code has seven characters. This one has ${t.length}.`}:t.length<7?{code:t,whole:!1,fault:""}:Xd(
t.slice(0,-1))!==t.at(-1)?{code:t,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:t,whole:!0,fault:""}}function Ei(){let e=crypto.getRandomValues(
new Uint8Array(6)),t=Array.from(e,n=>no[n%no.length]).join("");return t+Xd(t)}function Xd(e){let t=0,n=2;for(let s of e)
t^=Jd(n,no.indexOf(s)),n=Jd(n,2);return no[t]}function Jd(e,t){let n=0;for(let s=t,o=e;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var no,de=g(()=>{no="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});function aa(e){let t=Qn()==="bench"?"This device is a press screen":"This device is an operator's",n=Cc(e)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${t}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var B,oe,re=g(()=>{y();Te();B=(e,t,n=d)=>fe(e)?t:n,oe=(e,t,n=d)=>kt(e)?t:n});function qt(e){if(e instanceof qe)return i`<div class="state" data-test="storage-silent">
      <h1>This device’s storage does not answer</h1>
      Nor does the shop’s server. What was saved here is not lost. The page goes on by itself once one of them
      answers. ${Qd}
    </div>`;if(e instanceof j)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let t=e instanceof O?e.message:String(e);return e instanceof O||console.error(e),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${t}
  </div>`}var Me,ke,Zd,Qd,Re=g(()=>{y();F();Dt();Me=e=>i`<p class="state" data-test="loading">${e}</p>`,ke=(e,t=d)=>i`<div class="state" data-test="empty">
    <h1>${e}</h1>
    ${t}
  </div>`,Zd=()=>i`<div class="state" data-test="still-opening">
    <h1>Still opening</h1>
    ${Vs()?"This device’s storage does not answer, so the shop is asked.":"This takes longer than it should."}
    The page goes on by itself. ${Qd}
  </div>`,Qd=i`<span class="buttons"
  ><button type="button" class="button" data-test="try-again" @click=${()=>location.reload()}>
    Try again
  </button></span
>`});function ge(e,{replace:t=!1}={}){pw()&&(history[t?"replaceState":"pushState"](null,"",e),St(!0))}function ht(e){
oo=e}function pw(){let e=oo?.();return!e||confirm(e)}function th(){oo?.()?zt():St()}async function St(e=!1){Ni.
abort(),Ni=new AbortController,oo=null;let{signal:t}=Ni,n=document.documentElement;delete n.dataset.ready;let s=mw(
Gs(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
zt();let o=l=>{clearTimeout(a),t.aborted||Ut(l,ra())};Ut(i``,ra());let a=setTimeout(()=>o(Zd()),hw);if(!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:r}=s.route;if(r&&!fe(r)){o(aa(r)),n.dataset.ready="n\
ot-yours";return}try{let l=await eh[s.route.name]();if(t.aborted)return;scrollTo(0,0),await l.show({params:uw(
s.params),query:new URLSearchParams(location.search),render:o,title:c=>document.title=`${c} · Flangebook`,ready:()=>{
t.aborted||(n.dataset.ready=s.route.name)},signal:t})}catch(l){if(t.aborted)return;o(qt(l)),n.dataset.ready="f\
ailed"}e&&!t.aborted&&ra().focus({preventScroll:!0})}function mw(e){return e&&wd(e.route.name)?{route:Ec("pair"),
params:{}}:e}function nh(e){return eh=e,addEventListener("popstate",()=>St()),addEventListener("beforeunload",
t=>(eo()||oo?.())&&t.preventDefault()),document.addEventListener("click",t=>{let n=t.target.closest("a");!n||t.
defaultPrevented||t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||n.target||n.hasAttribute("download")||n.origin!==
location.origin||!Gs(n.pathname)||n.hash&&n.pathname===location.pathname||(t.preventDefault(),ge(n.pathname+n.
search+n.hash))}),ra().replaceChildren(),St()}var hw,Ni,oo,eh,ra,uw,Be=g(()=>{y();Li();wn();de();Te();ti();rs();
re();Re();hw=1e3,Ni=new AbortController,oo=null,eh={},ra=()=>document.getElementById("main");uw=e=>e.code?{...e,
code:so(e.code)}:e});var Sn,ia,ls,Pi=g(()=>{Sn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},ia=e=>(...t)=>({
_$litDirective$:e,values:t}),ls=class{constructor(t){}get _$AU(){return this._$AM._$AU}_$AT(t,n,s){this._$Ct=t,
this._$AM=n,this._$Ci=s}_$AS(t,n){return this.update(t,n)}update(t,n){return this.render(...n)}}});var tT,sh,fw,la,Ci=g(()=>{y();({I:tT}=Rd),sh=e=>e.strings===void 0,fw={},la=(e,t=fw)=>e._$AH=t});var xe,Kt=g(()=>{y();Pi();Ci();xe=ia(class extends ls{constructor(e){if(super(e),e.type!==Sn.PROPERTY&&e.type!==
Sn.ATTRIBUTE&&e.type!==Sn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!sh(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[
t]){if(t===dt||t===d)return t;let n=e.element,s=e.name;if(e.type===Sn.PROPERTY){if(t===n[s])return dt}else if(e.
type===Sn.BOOLEAN_ATTRIBUTE){if(!!t===n.hasAttribute(s))return dt}else if(e.type===Sn.ATTRIBUTE&&n.getAttribute(
s)===t+"")return dt;return la(e),t}})});function ca(e){return Object.hasOwn(Yt,e)?e:void 0}async function le(e,t){try{return await da(e,t)}catch(n){let s=n instanceof
j?await Vo():void 0;if(!s?.[e])throw n;return{items:s[e],etag:null,kept:!0}}}async function Jt(){try{let e=await Vo();
if(e||!Je().unkept)return e}catch{}try{let[{press:e},{items:t}]=await Promise.all([pa(),da("metals")]);return{
press:e,metals:t}}catch{return}}async function da(e,t){let{body:n,etag:s}=await M("GET",`/${e}`,{signal:t});return{
items:n[e],etag:s,kept:!1}}async function oh(e,t,n){await M("PUT",`/${e}`,{body:{[e]:t.map(Tn),by:R().name},etag:n})}
async function ha(e){try{return await pa(e)}catch(t){let n=t instanceof j?await Vo():void 0;if(!n)throw t;return{
press:n.press??null,etag:null,kept:!0}}}async function pa(e){let{body:t,etag:n}=await M("GET","/press",{signal:e});
return{press:t.press,etag:n,kept:!1}}async function ah(e,t){let n={press:Tn(e),by:R().name};return(await M("PU\
T","/press",{body:n,etag:t})).body.press}function Tn({outline_mm:e,outlines_mm:t,...n}){return n}function rh(e,t){
return JSON.stringify(e&&Tn(e))===JSON.stringify(t&&Tn(t))}function Xt({tray:e,slot:t}){return!e&&!t?"place no\
t given":[e&&(/^\S{1,4}$/.test(e)?`Tray ${e}`:e),t&&`slot ${t}`].filter(Boolean).join(", ")}var Yt,ie,cs,me=g(
()=>{F();se();Ce();ve();Yt={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",title:"\
Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"Metals"}},
ie={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_holders",
metals:"shop.write_metals"};cs=(e,t)=>e?.find(n=>n.code===t)?.name??t});function ao(e,t){let s=t.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...ss(c.body)}),
e),o=t.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(e.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??e.revision_id,here:o}}async function Mn(e){return ao(e,
await fn(e.code).catch(()=>[]))}async function Ri(e){let t=await tt(e);return t&&ao(t,(await fn(e)).filter(n=>n.
body.settles))}async function ro(e){let t=await tt(e);return t&&Mn(t)}async function Zt(e,t,{reason:n="",settles:s=[]}={}){
let o=na(t,e),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:e};let{name:r}=R(),l=await sa(
{id:Fe(),kind:a.every(p=>p==="note")&&!s.length?"note":"edit",code:e.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:ss(e,a),after:e.after,etag:e.etag,revision:e.revision}),c=await ro(e.
code).catch(()=>{}),h=l.answer;return{where:l.where,card:c??(h?ao(h,[]):{...e,...o})}}var Qt=g(()=>{as();Pe();
rs();se();Ce()});function Bi(e){if(e.limits!==void 0)return e.limits;let t=[e,...e.corrections??[]].filter($w);if(!t.length)return null;
let n=bw(e)+.5,s=Math.max(Math.min(...t.map(r=>r.set_angle_deg)),n),o=t.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function pt(e,t){let n=Bi(
e);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=t;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function bw({drawing:e,v_opening_mm:t}){let n=(e?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&t?2*Math.atan(t/2/Math.min(...n))*gw:0}var ih,gw,$w,On=g(()=>{ih=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],gw=180/Math.PI;$w=e=>typeof e.set_angle_deg=="number"&&typeof e.punch_depth_mm=="number"});async function ut(e,t,n){let s=null,o=await tt(e).catch(a=>{s=a});if(!o){await t(await Mn(await ww(e,n,s)),{where:"\
shop"});return}await t(await Mn(o),{where:"device"}),_w(o,t,n)}async function ww(e,t,n){try{return await Tt(e,
t)}catch(s){throw s instanceof j&&n instanceof qe?n:s}}async function lh(){try{let e=await Ft();if(e.length||!Je().
unkept)return{list:e,where:"device"}}catch{}try{let{body:e}=await M("GET","/cards?archived=all&limit=200",{timeout:4e3});
return Vt(!0),{list:e.cards.map(t=>({...t,note:""})),where:"shop"}}catch(e){return Vt(!1,e),{list:[],where:"sh\
op"}}}async function _w(e,t,n){try{let s=await Tt(e.code,n);!n.aborted&&s.etag!==e.etag&&await t(await Mn(s),{
where:"shop"})}catch{}}async function ch(e,t){if(await tt(e).catch(()=>{}))return"device";try{return await Tt(
e,t),"shop"}catch(n){if(n instanceof O&&n.status===404)return"nowhere";if(n instanceof j)return"silent";throw n}}
async function Tt(e,t){try{let{body:n}=await M("GET",`/cards/${e}`,{signal:t,timeout:4e3});return Vt(!0),await ct(
n).catch(()=>n)}catch(n){throw t?.aborted||Vt(!1,n),n}}async function ua(e,t){let{body:n}=await M("PUT",`/card\
s/${e.code}`,{body:t,etag:e.etag,timeout:t.replan?6e4:8e3});return ct(n).catch(()=>n)}function nt(e,t){let n=e.
settings?.find(a=>a.step===t.number),s={set_angle_deg:n?.set_angle_deg??t.set_angle_deg,punch_depth_mm:n?.punch_depth_mm??
t.punch_depth_mm},o=pt(t,s);return{...o?s:{set_angle_deg:null,punch_depth_mm:null},firstHit:n||!o?null:t.first_hit??
null,gauge_x_mm:n?.gauge_x_mm??t.gauge_x_mm,fromTrial:!!n,reason:n?.reason??""}}var Ie=g(()=>{F();Qt();On();Dt();
Ce();ve()});function Q(e,t){let n=e.toFixed(t);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(e,t={}){
return e==null?{text:"–",unit:""}:He()?R().inches==="fraction"?{text:vw(e/Xe),unit:"in"}:{text:Q(e/Xe,(t.digits??
1)+2),unit:"in"}:{text:Q(e,t.digits??1),unit:"mm"}}function vw(e){let t=Math.round(Math.abs(e)*64),n=t%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(t/64),a=e<0&&t>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function he(e,{up:t=!1}={}){if(e==null)return{text:"–",unit:""};let n=He()?e/ma:e,s=Math.abs(
n)<10?1:0;return{text:Q(t?ph(n,s):n,s),unit:He()?"tons":"kN"}}function Le(e,{up:t=!1}={}){if(e==null)return{text:"\
–",unit:""};let n=He()?e/ma*hh:e,s=Math.abs(n)<20?1:0;return{text:Q(t?ph(n,s):n,s),unit:He()?"tons/ft":"kN/m"}}
function ph(e,t){let n=10**t;return Math.ceil(e*n-1e-9)/n}function S(e,t=1){return e==null?{text:"–",unit:""}:
{text:Q(e,t),unit:"°"}}function io(e){if(e==null)return{text:"–",unit:""};let t=He()?e/yw:e;return{text:Q(t,
t<10?2:1),unit:He()?"lb":"kg"}}function Mt(e,t){if(/_(low|high)$/.test(e))return Mt(e.replace(/_(low|high)$/,""),
t);if(e.endsWith("_kn_per_m"))return Le(t);if(e.endsWith("_mm_s")){let s=w(t,{digits:0});return{text:s.text,unit:`${s.
unit}/s`}}if(e.endsWith("_mm"))return w(t,{digits:Math.abs(t)<10?2:1});if(e.endsWith("_kn"))return he(t);if(e.
endsWith("_deg"))return S(t);if(e.endsWith("_kg"))return io(t);if(e.endsWith("_percent"))return{text:Q(t,0),unit:"\
%"};let n=Math.abs(t)<10?100:Math.abs(t)<100?10:1;return{text:String(Math.round(t*n)/n),unit:""}}function $(e){
return e.unit==="°"?`${e.text}°`:`${e.text} ${e.unit}`.trim()}function _e({text:e,unit:t}){return $({text:t===
"in"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,""),unit:t})}function en(){return He()?{unit:"tons",size:ma}:
{unit:"kN",size:1}}function An(){return He()?{unit:"tons/ft",size:ma/hh}:{unit:"kN/m",size:1}}function Ii(e,{size:t}){
return e==null?"":String(t===1?e:Number((e/t).toFixed(4)))}function lo(e,{unit:t}){let n=fa(e);return uh.test(
n)?`${n} ${t}`.replace(" tons"," short tons"):n.replace(/^([^a-z]*)tons?(\s*\/\s*(?:ft|m))?$/i,(s,o,a="")=>{let r=a?
a.includes("ft"):He();return`${o}${r?"short tons":"t"}${a}`})}function C(){return He()?"in":"mm"}function te(e,t=C()){
let n=fa(e);return uh.test(n)||t==="in"&&fh.test(n)?`${n} ${t}`:n}function fa(e){let t=e.trim();return mh.test(
t)?t:t.replace(/^([+-]?\d+),(\d+)(?![\d.,])/,"$1.$2")}function gh(e,t=C()){let n=e.trim(),[,s,o,a]=mh.exec(n)??
[];return s?[String(+`${s}.${o}`),`${s}${o}`].map(l=>a?`${l} ${a}`:l):t==="mm"&&fh.test(n)?[`${n} in`]:[]}function $h(e){
let[,t,n]=/^([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|in)$/.exec(e??"")??[];return t?Number(t)*(n==="in"?Xe:1):null}function z(e){
if(e==null)return"";let t=He()?e/Xe:e;return String(Number(t.toFixed(He()?4:3)))}var Xe,ma,dh,yw,hh,He,uh,mh,fh,
E=g(()=>{se();Xe=25.4,ma=8.896443230521,dh=9.80665,yw=.45359237,hh=.3048,He=()=>R().units==="inch";uh=/^[+-]?(\d+\.?\d*|\.\d+)$/,
mh=/^([1-9]\d{0,2}),(\d{3}) *([^\d.,].*)?$/,fh=/^(\d+[\s-]+)?\d+\s*\/\s*\d+$/});function Ue(e,t){return e.length*t*.6+t*.3}function kw(e,t){return Math.abs(e.x-t.x)*2<e.width+t.width&&Math.abs(
e.y-t.y)*2<e.height+t.height}function bh(e,[[t,n],[s,o]]){let a=0,r=1,l=[[t-e.x,s-t,e.width/2],[n-e.y,o-n,e.height/
2]];for(let[c,h,p]of l){if(h===0){if(Math.abs(c)>p)return!1;continue}let[u,m]=[(-p-c)/h,(p-c)/h];a=Math.max(a,
Math.min(u,m)),r=Math.min(r,Math.max(u,m))}return a<=r}function xw([e,t],[n,s]){return ga(e,t,n)!==ga(e,t,s)&&
ga(n,s,e)!==ga(n,s,t)}function ga(e,t,n){return(t[0]-e[0])*(n[1]-e[1])>(t[1]-e[1])*(n[0]-e[0])}var $a,ba=g(()=>{
$a=class{constructor(t){this.edges=t,this.taken=[]}choose(t){let n=t[0],s=1/0;for(let o of t){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:t,
lines:n=[]}){let s=this.taken.filter(l=>kw(t,l)).length,o=this.edges.filter(l=>bh(t,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(h=>xw(c,h)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(h=>bh(h,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function Oe(e){return e.length?`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}Z`:""}function co(e){return e.length?
`M${e.map(([t,n])=>`${t} ${-n}`).join("L")}`:""}function Ze(e){let t=e.flat().map(([s])=>s),n=e.flat().map(([,
s])=>s);return[Math.min(...t),Math.min(...n),Math.max(...t),Math.max(...n)]}function wh([e,t,n,s],o){return`${e-
o} ${-s-o} ${n-e+2*o} ${s-t+2*o}`}function Ln([e,t,n,s],o,a){let r=Math.min(o/Math.max(n-e,1e-6),a/Math.max(s-
t,1e-6));return([l,c])=>[(l-e)*r,(s-c)*r]}var tn=g(()=>{});function U(e){let{text:t}=w(e,{digits:2});return R().inches==="fraction"?t:t.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function yh({section:e,part:t},{pixels:n=ds(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=Ln(Ze([e.outline]),n-2*l,s-2*l),h=e.outline.map(c),p=new $a(h.map((v,N)=>[v,h[(N+1)%h.length]])),u=Mw(e).map(
(v,N)=>Aw(v.map(c),U(t.flats_mm[N]),p,18)),m=e.bend_points.map((v,N)=>Ow(c(v),N+1,t.bends[N],p,18)),[f,b,_,T]=Nw(
[...h,...m.flatMap(v=>_h(v.box)),...u.flatMap(v=>[..._h(v.box),...v.lines.flat()])]),[L,P]=[_-f+12,T-b+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${Tw(t)}
    width=${L}
    height=${P}
    viewBox="${f-6} ${b-6} ${L} ${P}">
    <path class="sheet" d="M${h.map(v=>v.join(" ")).join("L")}Z" />
    ${u.map(({lines:v,box:N,text:Z})=>x`${v.map(([ce,Bo])=>x`<path class="dimension" d="M${ce}L${Bo}"/>`)}
      ${Lw(v[0])}${Ew(N,Z,18)}`)}
    ${m.map(({box:v,text:N,number:Z,badge:ce})=>x`<circle class="badge ${Z===a?"marked":""}" cx=${ce[0]} cy=${ce[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${ce[0]} y=${ce[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${Z}</text>
      <text x=${ce[0]+18*.95} y=${v.y} font-size=${18}
        dominant-baseline="central">${N}</text>`)}
  </svg>`}function ds(){return Math.min(Math.max(innerWidth-32,300),720)}function Tw(e){return`Section. ${e.flats_mm.
map((n,s)=>{let o=e.bends[s],a=o?`, bend ${s+1}: ${vh(o)} ${o.direction}`:"";return`flat ${s+1}: ${$(w(n))}${a}`}).
join("; ")}.`}function vh(e){return e.kind==="closed_hem"?"hem":e.kind==="open_hem"?"open hem":$(S(e.included_angle_deg)).
replace(".0°","°")}function Mw({dimensions:e,bend_points:t,centre_line:n}){if(e)return e;let s=[n[0],...t,n[n.
length-1]];return s.slice(1).map((o,a)=>[s[a],o])}function Ow(e,t,n,s,o){let a=vh(n),r=Ue(a,o)+1.6*o,l=[1.4,1.9,
2.6].flatMap(p=>Sw.map(u=>{let m=e[0]+Math.cos(u)*(p*o+r/2-o*.6),f=e[1]+Math.sin(u)*p*o;return{box:{x:m,y:f,width:r,
height:o*1.5},cost:p*2}})),{box:c}=s.choose(l),h=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:t,badge:h}}function Aw([
e,t],n,s,o){let a=Math.hypot(t[0]-e[0],t[1]-e[1])||1,r=[-(t[1]-e[1])/a,(t[0]-e[0])/a],[l,c]=[Ue(n,o),o*1.3],h=(m,f)=>[
m[0]+r[0]*f,m[1]+r[1]*f],p=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap(f=>[.5,.3,.7].map(b=>{let[_,T]=[h(e,f*o),h(
t,f*o)],L={x:_[0]+(T[0]-_[0])*b,y:_[1]+(T[1]-_[1])*b,width:l,height:c},P=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(
f*r[1])*o*.9:0,v=[[_,T],[h(e,Math.sign(f)*o*.5),h(_,Math.sign(f)*4)],[h(t,Math.sign(f)*o*.5),h(T,Math.sign(f)*
4)]];return{box:{...L,y:L.y+P},cost:Math.abs(f)+(b===.5?0:.5),lines:v}}))),u=s.choose(p);return{box:u.box,lines:u.
lines,text:n}}function Lw(e){return e.map(([t,n])=>x`<path class="dimension tick" d="M${t-4} ${n+4}L${t+4} ${n-
4}"/>`)}function Ew({x:e,y:t,width:n,height:s},o,a){return x`<rect class="ground" x=${e-n/2} y=${t-s/2} width=${n} height=${s}/>
    <text x=${e} y=${t} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function _h({
x:e,y:t,width:n,height:s}){return[[e-n/2,t-s/2],[e+n/2,t+s/2]]}function Nw(e){return Ze([e])}var Sw,st=g(()=>{
y();se();E();ba();tn();Sw=[0,90,180,270,45,135,225,315].map(e=>e*Math.PI/180)});function k(e,t=Pw[e]){return i`<span class="flag ${e}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${Cw[e]}</svg>${t}</span
  >`}function ot(e,t){return e.replace(/\{(\w+)\}/g,(n,s)=>s in t?_e(Mt(s,t[s])):n)}function Wi({step:e,steps:t=[]}){
return t.length>1?i`<b>Steps ${t.join(", ")}.</b> `:e?i`<b>Step ${e}.</b> `:d}function Ee(e,{quiet:t=!1}={}){let n=e.
filter(s=>!t||s.level!=="ok").sort((s,o)=>hs.indexOf(Se(s))-hs.indexOf(Se(o)));return n.length===0?d:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${k(Se(s))}
          <div class="say">
            ${Wi(s)}${ot(s.template,s.numbers)}
            ${s.do?i`<div class="do">${ot(s.do_template??s.do,s.numbers)}</div>`:d}
          </div>
        </li>`)}
  </ul>`}function wa(e){let t=new Map;for(let s of e){let o=`${Se(s)} ${s.code}`;t.set(o,[...t.get(o)??[],s])}
let n=[...t.values()].sort(([s],[o])=>hs.indexOf(Se(s))-hs.indexOf(Se(o)));return i`<ul class="checks lines" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s[0].level} data-code=${s[0].code}>
          ${Rw(s)}
        </li>`)}
  </ul>`}function Rw([e,...t]){let n=i`${k(Se(e))}
    <div class="say">${Wi(e)}${ot(e.template,e.numbers)} ${Bw(t)}</div>`;return!e.do&&t.length===0?n:i`<details ?open=${e.
level==="stop"}>
    <summary>${n}</summary>
    ${t.map(s=>i`<p class="say">${Wi(s)}${ot(s.template,s.numbers)}</p>`)}
    ${e.do?i`<p class="do">${ot(e.do_template??e.do,e.numbers)}</p>`:d}
  </details>`}function Bw(e){let t=e.flatMap(({step:n,steps:s=[]})=>s.length?s:n??[]);return e.length===0?d:t.
length===0?i`<b>And ${e.length} more.</b>`:i`<b>Also step${t.length>1?"s":""} ${t.join(", ")}.</b>`}var Pw,hs,
Cw,Se,ye,ho,G=g(()=>{y();E();Pw={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",ok:"OK"},hs=["sto\
p","caution","unknown","note","ok"],Cw={stop:x`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:x`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:x`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:x`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:x`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};Se=({level:e,sign:t,do:n,
step:s,steps:o=[]})=>t??(e==="ok"&&n&&(s||o.length)?"note":e);ye=({template:e,numbers:t})=>ot(e,t),ho=e=>e.map(
ye).join(" ")});function En(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":t.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function ae(e){let t=new Date(e);return Number.isNaN(t.valueOf())?"":`${En(e)}\
, ${t.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function ps({made_at:e,received_at:t}){return t?
!e||Math.abs(Date.parse(e)-Date.parse(t))<Iw?ae(t):`in the shop ${ae(t)}, made ${ae(e)} by the device’s clock`:
ae(e??"")}function Ot({by:e,device:t}){return[e,t===e?"":t].filter(Boolean).join(", ")}var Iw,Ge=g(()=>{Iw=5*6e4});function kh(e,{metalName:t,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${e.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${W(s.code)}</span>
            <span class="more">
              ${t(s.metal)}, ${U(s.thickness_mm)} ${C()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${En(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · archived":""}
              ${Ww(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="settle">${k("caution",`${s.settle} to resolve`)}</span>`:d}
              ${s.worst==="stop"?k("stop"):d}
            </span>
          </a>
        </li>`)}
  </ul>`}var Ww,xh=g(()=>{y();de();st();E();G();Ge();Ww=e=>e?i`· <b>${e} ${/^1 \S+$/.test(e)?"waits":"wait"}</b>`:
d});function ya(e,t,n,s){let o=ue(e.code),a=o.fault||(e.asked&&!o.whole?Fw(o.code):"");return i`<form class="code-form" @submit=${l=>{
l.preventDefault(),e.asked=!0,o.whole?ge(`/c/${o.code}`):n()}}>
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
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:Dw(o,t,s)}
    </p>
  </form>`}function Dw(e,t,n){if(!e.whole)return n;let s=t.find(o=>o.code===e.code);return s?i`<span data-test="code-found"
        >${W(e.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A valid code, but not on this device yet. Open asks the shop.</span
      >`}var _a,Fw,Di=g(()=>{y();Kt();de();Be();_a=()=>({code:"",asked:!1});Fw=e=>e?`A card code has seven cha\
racters. This is ${e.length}.`:"Type the seven characters printed on the label."});var Th={};ne(Th,{show:()=>Hw});async function Hw(e){e.title("Find a card");let t={typed:_a(),search:"",shown:Fi},
n=await Sh(),s=!1,o=()=>{e.render(i`<div class="home">
        <h1>Find a card</h1>
        <div class="home-scan">
          <a class="button next wide" href="/scan" data-test="scan">${jw} Scan a label</a>
        </div>
        <div class="home-ways">
          ${ya(t.typed,n.list,o,"Seven characters, capitals or not.")}
          <nav class="home-new" aria-label="Start something">
            ${oe("/bend",i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`)}
            ${oe("/part",i`<a class="button" href="/part" data-test="new-part"
                >${B("cards.create","New part","Plan a part")}</a
              >`)}
          </nav>
        </div>
        ${Uw(t,n,s,o)}
      </div>`)};o();let a=async()=>{s||=Je().reached!==null,n=await Sh(),o(),(s||n.list.length)&&e.ready()};document.
addEventListener("sync",a,{signal:e.signal}),n.list.length&&e.ready(),await H().then(a)}async function Sh(){let[
{list:e,where:t},n,s]=await Promise.all([lh(),Jt(),je().catch(()=>[])]),o=new Map;for(let{code:r}of s)o.set(r,
Ai(s.filter(l=>l.code===r)));return{list:e,where:t,waiting:o,metalName:r=>cs(n?.metals,r)}}function Uw(e,t,n,s){
if(t.list.length===0)return n?zw():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=Gw(t,e.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${xe(e.search)}
        @input=${a=>{e.search=a.target.value,e.shown=Fi,s()}} />
    </div>
    <p class="count" role="status" data-test="count">${Vw(o.length,t,e.search)}</p>
    ${kh(o.slice(0,e.shown),t)}
    ${o.length>e.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{e.shown+=Fi,s()}}>
              Show more
            </button>
          </div>`:d}
  </section>`}function Gw({list:e,metalName:t},n){let s=n.toLowerCase().split(/\s+/).filter(Boolean);return s.
length===0?e.filter(o=>!o.archived):e.filter(o=>{let{code:a,title:r,note:l,metal:c}=o,h=`${a} ${W(a)} ${r} ${l}\
 ${c} ${t(c)}`.toLowerCase();return s.every(p=>h.includes(p))})}function Vw(e,{list:t,where:n},s){let o=n==="d\
evice"?"on this device":"of the shop";return s.trim()===""?e===1?`1 card ${o}`:`${e} cards ${o}`:e===0?`None o\
f the ${t.length} cards matches.`:`${e} of ${t.length} cards`}function zw(){return Je().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${B("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var Fi,jw,Mh=g(()=>{y();Kt();de();me();Pe();Ie();ve();re();xh();Di();Fi=40,jw=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`});var Nn,Oh,Ah,us,ji=g(()=>{Nn=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],Oh=["guaranteed minimum","typical","measured","common practice","from memory"],Ah=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],us=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function Pn(e=""){let n=e.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(Lh.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...Eh}]}function Ch(e){let t=Pn(e),{angle:n,face:s}=t[t.length-1];return po(
[...t,{...Eh,angle:n,face:s}])}var Lh,Eh,Nh,po,Ph,Rh,uo,Hi=g(()=>{Lh=["v","angle","radius","face","centre","co\
de","rating"],Eh={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},Nh=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];po=e=>e.map(t=>Lh.map(n=>t[n].replaceAll(";",",")).join("; ")).join(
`
`),Ph=(e,t,n)=>po(Pn(e).map((s,o)=>o===t?{...s,...n}:s));Rh=(e,t)=>po(Pn(e).filter((n,s)=>s!==t)),uo={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var Ih,Ui,Bh,Gi,Vi,va,ms,zi,qi,ka,Ki=g(()=>{Ih="Empty is unknown: checks with it then say so.",Ui={name:"ratin\
g_kn_per_m",label:"Rating",type:"rating",hint:"As stamped on the tool or in its maker's papers."},Bh={name:"se\
gments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned twice twice."},
Gi=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],Vi=[{name:"condition",label:"\
Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown","unknown"]]},
{name:"condition_note",label:"Note on its condition",type:"note"}],va={name:"name",label:"Name",type:"text",broad:!0},
ms=(e,t)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:e,hint:`One point a line: x, y. x tow\
ards the back gauge, y up. ${t}`,when:n=>n.shape==="points"}),zi=e=>e.shape!=="multi_v",qi=({die_holder_height_mm:e})=>!!e&&
!/^0+([.,]0*)?( mm| in)?$/.test(String(e)),ka={punches:[{title:"What it is",part:"what",fields:[va,{name:"angl\
e_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_mm",label:"Tip radius",type:"length"}]},{
title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[["straight","\
straight"],["gooseneck","gooseneck"],["points","by points or DXF"]]},{name:"height_mm",label:"Height, tip to s\
eat",type:"length"},{name:"body_width_mm",label:"Width of the body",type:"length"},{name:"neck_relief_mm",label:"\
Throat behind the tip",type:"length",when:e=>e.shape==="gooseneck"},{name:"neck_width_mm",label:"Thickness of \
the neck",type:"length",when:e=>e.shape==="gooseneck",blank:"as the body"},{name:"throat_top_mm",label:"Throat\
 begins to close",type:"length",when:e=>e.shape==="gooseneck",blank:"as high as it can",hint:"Above the tip."},
ms("punch","The tip is at 0, 0."),{name:"turned",label:"Sits in the press",type:"yes",options:[["no","as drawn"],
["yes","reversed"]]}]},{title:"Rating and pieces",part:"rest",fields:[Ui,Bh]},{title:"Place and condition",part:"\
rest",fields:[...Gi,...Vi]}],dies:[{title:"What it is",part:"what",fields:[va,{name:"v_opening_mm",label:"V op\
ening",type:"length",hint:"Between the sharp corners of face and flanks.",when:zi},{name:"angle_deg",label:"An\
gle of the V",type:"number",unit:"°",when:zi},{name:"shoulder_radius_mm",label:"Shoulder radius",type:"length",
when:zi}]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[[
"single_v","single V"],["multi_v","block with several V's"],["points","by points or DXF"]]},{name:"height_mm",
label:"Height",type:"length"},{name:"width_mm",label:"Width",type:"length"},{name:"turned",label:"Sits in the \
press",type:"yes",options:[["no","as drawn"],["yes","reversed"]]},{name:"openings",label:"The V's of the block",
type:"openings",when:e=>e.shape==="multi_v"},{name:"up",label:"V that is up",type:"number",hidden:!0,when:e=>e.
shape==="multi_v"},ms("die","The top face is at y 0, the V's middle at x 0.")]},{title:"Rating and pieces",part:"\
rest",fields:[Ui,Bh]},{title:"Place and condition",part:"rest",fields:[...Gi,...Vi]}],holders:[{title:"What it\
 is",part:"what",fields:[va,Ui]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pic\
k",broad:!0,options:[["block","plain block"],["clamps","clamps that stick out"],["points","by points or DXF"]]},
{name:"height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the \
front",type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to\
 the back",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:e=>e.shape===
"clamps"},{name:"body_front_mm",label:"Body above, to the front",type:"length",when:e=>e.shape==="clamps"},{name:"\
body_back_mm",label:"Body above, to the back",type:"length",when:e=>e.shape==="clamps"},ms("holder","The punch\
's seat is at 0, 0.")]},{title:"Place and condition",part:"rest",fields:[...Gi,...Vi]}],press:[{title:"The pre\
ss",part:"what",fields:[va,{name:"force_kn",label:"Full force",type:"force"},{name:"bed_length_mm",label:"Bed \
length",type:"length"},{name:"between_frames_mm",label:"Between the frames",type:"length"},{name:"open_height_\
mm",label:"Open height",type:"length"},{name:"stroke_mm",label:"Stroke",type:"length"},{name:"throat_mm",label:"\
Throat",type:"length"}]},{title:"Ram and bed",part:"outline",fields:[{name:"ram_width_mm",label:"Ram width",type:"\
length",needed:!0},{name:"ram_height_mm",label:"Ram height",type:"length",needed:!0},{name:"bed_width_mm",label:"\
Bed width",type:"length",needed:!0},{name:"bed_height_mm",label:"Bed height",type:"length",needed:!0},{name:"f\
loor_below_die_mm",label:"Floor below the die",type:"length",broad:!0,blank:"not looked at",hint:"From the fac\
e that the die stands on, down to the floor: long parts hang that far."},{...ms("ram","From the face that carr\
ies the holder. Empty: a plain beam."),name:"ram_points_mm",label:"Ram by points",when:void 0,folded:!0},{...ms(
"bed","From the face that carries the die or its holder. Empty: a plain beam."),name:"bed_points_mm",label:"Be\
d by points",when:void 0,folded:!0}]},{title:"Riser or die holder on the bed",part:"rest",fields:[{name:"die_h\
older_height_mm",label:"Height under the die",type:"length",blank:"none",broad:!0,hint:"0 or empty: the die st\
ands on the bed."},{name:"die_holder_width_mm",label:"Width",type:"length",when:qi,blank:"by points"},{name:"d\
ie_holder_rating_kn_per_m",label:"Rating of the die holder",type:"rating",hint:"As stamped on it or in its pap\
ers.",when:qi},{...ms("die_holder","The die's seat is at y 0, the bed's at minus the height. Empty: a plain bl\
ock."),name:"die_holder_points_mm",label:"Die holder by points",when:qi,folded:!0}]},{title:"Ratings",part:"re\
st",fields:[{name:"force_per_m_limit_kn_per_m",label:"Most force per length of bed",type:"rating",hint:"What b\
ed and ram bear over a short length."},{name:"off_centre_mm",label:"Full force off the middle, up to",type:"le\
ngth",blank:"unknown"},{name:"deflection_mm",label:"Gives way in the middle",type:"length",broad:!0,blank:"unk\
nown",hint:"Bed and ram together, middle against ends, at full force over the whole bed: from its papers, or f\
rom three strips below."},{name:"bending_speed_mm_s",label:"Bending speed",type:"number",unit:"mm/s",blank:"un\
known"}]},{title:"How it is set",part:"rest",fields:[{name:"set_by",label:"For a bend the press is set",type:"\
pick",broad:!0,blank:"not known: read as by angle",options:[["angle","by angle"],["depth","by depth"],["stop",
"by a stop"]]},{name:"angle_accuracy_deg",label:"It measures the angle in the sheet, within ±",type:"number",
unit:"°",broad:!0,blank:"unknown",hint:"Only where its papers say how near. Empty: what sheet, tools and zero\
 leave open counts."}]},{title:"Back gauge",part:"rest",fields:[{name:"gauge_x_min_mm",label:"X from",type:"le\
ngth"},{name:"gauge_x_max_mm",label:"X to",type:"length"},{name:"gauge_r_min_mm",label:"R from",type:"length"},
{name:"gauge_r_max_mm",label:"R to",type:"length"},{name:"finger_height_mm",label:"Finger height",type:"length"},
{name:"finger_depth_mm",label:"Finger depth",type:"length"},{name:"gauge_repeatability_mm",label:"Repeats with\
in ±",type:"length",broad:!0,blank:"unknown",hint:"As in its papers.",counted_mm:.1}]},{title:"Holder in the \
ram, and notes",part:"rest",fields:[{name:"holder",label:"Holder",type:"pick",options:[],blank:"none",broad:!0},
{name:"note",label:"Note",type:"note"}]}]}});function mt(e=""){let t=fa(e);return t===""?null:qw.test(t)?Number(t):t}function Jw(e){let{show:t}=At.number;return{
v:z(e.v_opening_mm),angle:t(e.angle_deg),radius:z(e.shoulder_radius_mm),face:e.face,centre:z(e.centre_mm),code:e.
code??"",rating:At.rating.show(e.rating_kn_per_m)}}function Xw({v:e,angle:t,radius:n,face:s,centre:o,code:a,rating:r}){
let l={v_opening_mm:xa(e),angle_deg:mt(t),shoulder_radius_mm:xa(n),centre_mm:xa(o)};return{...Object.fromEntries(
Object.entries(l).filter(([,h])=>h!==null)),face:s||"top",code:a||null,rating_kn_per_m:Wh(r)}}function Sa(e,t){
return Object.fromEntries(nn(e).map(({name:n,type:s})=>[n,At[s].show(t[n])]))}function Ta(e,t,n={}){let s=({name:r,
type:l})=>r in n&&At[l].show(n[r])===t[r]?n[r]:At[l].take(t[r]),a=nn(e).filter(({when:r})=>!r||r(t)).map(r=>({
spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||Zw(r)).map(({spec:r,value:l})=>[
r.name,l]))}function Fh(e){let t={};for(let n of["name","note","gauge_family"])t[n]=At.text.show(e[n]);for(let{
name:n}of us)t[n]=At.number.show(e[n]);for(let{name:n}of Nn){let s=e[n];for(let o of Qw)t[`${n}.${o}`]=At.number.
show(s?.[o]);t[`${n}.standing`]||="typical"}return t}function jh(e){let t={name:e.name.trim(),note:e.note.trim(),
gauge_family:e.gauge_family||null};for(let{name:n,needed:s}of us)(e[n]?.trim()||!s)&&(t[n]=mt(e[n]));for(let{name:n,
needed:s}of Nn){let o=["low","nominal","high","source"].some(a=>e[`${n}.${a}`]?.trim());t[n]=o||s?e_(e,n):null}
return t}function e_(e,t){let n=["low","nominal","high"].map(s=>[s,mt(e[`${t}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(e[`${t}.source`]??"").trim(),standing:e[`${t}.standing`]}}function Hh(e,t){
let n={},s=[];for(let[o,a]of Object.entries(e)){let r=`.${o}.`,c=(r.includes(".openings.")?t.filter(p=>p==="op\
enings"):t).filter(p=>r.includes(`.${p}.`)).sort((p,u)=>u.length-p.length)[0],h=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n.openings??=[]).push(...a.map(p=>t_(o,p))):c?(n[c]??=[]).push(...h&&r.endsWith(`.${c}.${h}.`)?a.map(
p=>`Number ${Number(h)+1}: ${p}`):a):s.push(...a.map(p=>`${o}: ${p}`))}return{byName:n,others:s}}function t_(e,t){
let[,n,s]=/openings\.(\d+)(?:\.(\w+))?$/.exec(e)??[];return n===void 0?t:`V ${Number(n)+1}: ${s?`${s}: `:""}${t}`}
var qw,Yi,xa,Kw,Wh,Yw,At,Dh,nn,Zw,Qw,Lt=g(()=>{ji();Hi();Ki();E();qw=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
Yi=e=>(t="")=>t.trim()===""?null:e(t),xa=Yi(e=>te(e)),Kw=Yi(e=>lo(e,en())),Wh=Yi(e=>lo(e,An())),Yw=(e="")=>e.split(
/[\n;]/).map(t=>t.trim()).filter(Boolean),At={text:{show:e=>e??"",take:(e="")=>e.trim()},note:{show:e=>e??"",take:(e="")=>e.
trim()},pick:{show:e=>e??"",take:e=>e||null},yes:{show:e=>e?"yes":"no",take:e=>e==="yes"},length:{show:z,take:xa},
number:{show:e=>e==null?"":String(e),take:mt},force:{show:e=>Ii(e,en()),take:Kw},rating:{show:e=>Ii(e,An()),take:Wh},
lengths:{show:e=>(e??[]).map(z).join(", "),take:(e="")=>e.split(/[,;\n]/).filter(t=>t.trim()).map(t=>te(t))},points:{
show:e=>(e??[]).map(([t,n])=>`${z(t)}, ${z(n)}`).join(`
`),take:e=>Yw(e).map(t=>t.split(t.includes(",")?",":/\s+/).map(n=>te(n)))},openings:{show:e=>po((e??[]).map(Jw)),
take:e=>Pn(e).map(Xw)},figure:{show:String,take:String}};Dh=e=>At.points.show(e),nn=e=>ka[e].flatMap(t=>t.fields);
Zw=({type:e,blank:t})=>e==="rating"||t!==void 0,Qw=["low","nominal","high","source","standing"]});function Ma(e){let t={...n_};for(let n of Xi){let s=e.get(Ji[n])?.slice(0,60);if(s==null)continue;let o=` ${C()}`;
t[n]=Zi(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return t}function Oa(e){let t=new URLSearchParams;for(let n of Xi){
let s=e[n].trim();s!==""&&t.set(Ji[n],Zi(n)?te(s):s)}return t.toString()}function mo(e){return s_.filter(t=>e[t].
trim()==="")}function Cn(e){let t={};for(let n of Xi){let s=e[n].trim();s!==""&&(t[n]=Zi(n)?te(s):n==="include\
d_angle_deg"?mt(s):s)}return t}var n_,Ji,Xi,s_,Zi,Aa=g(()=>{Lt();E();n_={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},Ji={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},Xi=Object.keys(Ji),s_=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],Zi=e=>e.endsWith("_mm")});function Et(e,t,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:h}=a;try{let p=await e(c,h);h.aborted||t({question:c,answer:p})}catch(p){h.aborted||
t({question:c,error:p})}}return{stop:r,ask(c,{now:h=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),h?0:s))}}}var fo=g(
()=>{});function ft(e,t,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
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
  </div>`}var La=g(()=>{y()});function Ea(e){return e.force_kn===null||e.force_kn===void 0?d:i`<b>${$(Qe(e))}</b>
    <small class="expected">expected ${$(sn(e))}</small>`}function go(e,t,n="force_kn",{note:s=d,origin:o=""}={}){
return ft(e,Qe(t,n),{note:i`expected ${$(sn(t,n))}${s}`,origin:o,test:n})}var Qe,sn,Uh,gt=g(()=>{y();E();La();
Qe=(e,t="force_kn")=>Uh(t)(e[`${t}_high`],{up:!0}),sn=(e,t="force_kn")=>Uh(t)(e[t]),Uh=e=>e==="force_kn"?he:Le});var Qi,Gh=g(()=>{Qi=class extends HTMLElement{#e=new ResizeObserver(()=>this.measure());#t=new MutationObserver(
()=>this.measure());connectedCallback(){this.#e.observe(this),this.#t.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#e.disconnect(),this.#t.disconnect()}measure(){let t=this.
querySelector("svg"),{width:n,height:s}=t?.viewBox.baseVal??{width:0,height:0};if(!t||!n||!t.clientWidth||!t.clientHeight)
return;let o=Math.max(n/t.clientWidth,s/t.clientHeight);t.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",Qi)});function el({distance_mm:e,tool:t}){let n=$(w(Math.abs(e)));return e<=0?[n,`into ${t}`]:[n,`to ${t}`]}function Vh(e,{
left:t,right:n,bottom:s,top:o}){let[a,r]=Rn(e),[[l,c],[h,p]]=[e.on_sheet,e.on_tool],u=a-t>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[f,b]=el(e);return x`<g class="near ${e.distance_mm<=0?"hit":""}" data-test="near" data-tool=${e.tool}>
    <path class="near-line" d="M${l} ${-c}L${h} ${-p}" />
    ${Na(e,n-t)?d:[e.on_sheet,e.on_tool].map(o_)}
    <g transform="translate(${a} ${-r})">
      ${Na(e,n-t)?x`<circle class="px near-ring" r="17" />`:d}
      <path class="px near-leader" d="M${u*12} ${m*12}L${u*34} ${m*30}H${u*44}" />
      <text class="px label near-label" x=${u*50} y=${m*30-2}
        text-anchor=${u>0?"start":"end"}>${f}<tspan x=${u*50}
          dy="1.1em">${b}</tspan></text>
    </g>
  </g>`}var Rn,Na,o_,tl=g(()=>{y();E();Rn=({on_sheet:[e,t],on_tool:[n,s]})=>[(e+n)/2,(t+s)/2];Na=(e,t)=>Math.abs(
e.distance_mm)<.1*t,o_=([e,t])=>x`<g transform="translate(${e} ${-t})"><circle class="px near-dot" r="4" /></g>`});function $t(e,{pose:t,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:h=!1,room:p=null}){
let u=s??(e.bounds[2]-e.bounds[0])/6,m=n?r_(u,h?c:null):i_(e,u,c),f=p&&!n?l_(m,p,u):m,{left:b,bottom:_,right:T,
top:L}=f,P=l??a_(e,t==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${t}
      viewBox="${b} ${-L} ${T-b} ${L-_}"
      preserveAspectRatio="xMidYMid meet">
      ${[e.bed,e.die].map(Oe).map(zh)}
      <g transform="translate(0 ${P.down})">${P.tools.map(zh)}</g>
      ${e.die.length?x`<path class="axis" d="M0 ${-L-999}V999" />`:d}
      <path class="gauge" transform="translate(${P.back} 0)" d=${P.gauge} />
      <path class="sheet" data-test="sheet" d=${P.sheet} />
      ${t==="before"&&e.gauge_point?c_(e.gauge_point,o,f):d}
      ${t==="after"&&a?d_(e.after.sheet,a,u,f):d}
      ${h&&c?Vh(c,f):d}
    </svg>
  </drawing-frame>`}function a_(e,t){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=e[t];return{sheet:Oe(n),tools:[
s,o,a].map(Oe),down:0,gauge:Oe(r),back:0}}function r_(e,t){let[n,s]=t?Rn(t):[0,.1*e];return{left:n-1.5*e,bottom:s-
e,right:n+1.5*e,top:s+e}}function i_(e,t,n){let[s,o,a,r]=Ze([e.before.sheet,e.after.sheet]),l=14*t,c=e.gauge_point?
e.gauge_point[0]+1.5*t:0,h={left:Math.max(Math.min(s-.4*t,-1.4*t),-l),right:Math.min(Math.max(a+.4*t,c,1.4*t),
Math.max(l,c))},p=h.right-h.left,u={...h,bottom:Math.max(Math.min(o-.3*t,-1.1*t,-.17*p),-l/2),top:Math.min(Math.
max(r+.3*t,1.6*t),8*t)},m=n?nl(u,Rn(n),Math.max(t,.1*p)):u;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function l_(e,{
bounds:t,share:n},s){let o=nl(nl(e,[t[0],t[1]],s),[t[2],t[3]],s),a=r=>e[r]+(o[r]-e[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function c_([e,t],n,{bottom:s}){let o=s*.45;return x`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${e} ${-t}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${e}" />
    ${qh(0,o,180)}${qh(e,o,0)}
    <g transform="translate(${e} ${-t})"><circle class="px touch" r="5" /></g>
    ${Kh(e/2,o,n,17)}
  </g>`}function d_(e,t,n,{left:s,right:o}){let a=Math.min(...e.filter(([p])=>Math.abs(p)<n/2).map(([,p])=>p)),
r=Math.max(1.25*n,.14*(o-s)),l=t/2*(Math.PI/180),[c,h]=[r*Math.sin(l),a+r*Math.cos(l)];return x`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-h}A${r} ${r} 0 0 1 ${c} ${-h}" />
    ${Kh(0,a+r,$(S(t)))}
  </g>`}var zh,nl,qh,Kh,$o=g(()=>{y();E();Gh();tl();tn();zh=e=>e?x`<path class="tool" d=${e} />`:d;nl=({left:e,
right:t,bottom:n,top:s},[o,a],r)=>({left:Math.min(e,o-r),right:Math.max(t,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});qh=(e,t,n)=>x`<g transform="translate(${e} ${-t})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,Kh=(e,t,n,s=0)=>x`<g transform="translate(${e} ${-t})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function Yh(e,t){let n=[...e].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>t(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die} <small>V ${Q(s.v_over_t,1)} t</small></span
            >
            ${s.level==="ok"?d:k(s.level)}
            <span class="facts"> ${h_(s).map(o=>p_(...o))} </span>
            <span class="more">${ye(s.reason_said)} ${Xt(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var h_,p_,Jh=g(()=>{y();me();E();gt();G();h_=e=>[["allow for",$(Qe(e,"force_kn_per_m")),`expected ${sn(
e,"force_kn_per_m").text}`],["radius",$(w(e.inside_radius_mm))],["flange from",$(w(e.min_flange_mm))],["set",$(
S(e.set_angle_deg))]],p_=(e,t,n)=>i`<span class="fact"
    ><small>${e}</small>
    <span class="amount">${t}</span
    >${n?i` <small class="beside">${n}</small>`:d}</span
  >`});function fs(e,t=""){return e?i`<p class="first-hit" data-test="first-hit">
    <b>First hit:</b> ${sl(e)}. If it is too open, make a second hit.
    <span class="drawn">${t}</span>
  </p>`:d}var Pa,sl,Xh,Ca,Bn=g(()=>{y();E();Pa=e=>S(e).text.replace(/\.0$/,""),sl=e=>`comes out ${Pa(e.comes_out_deg_low)}\
 to ${Pa(e.comes_out_deg_high)}°`,Xh=e=>`${Pa(e.comes_out_deg_low)}–${Pa(e.comes_out_deg_high)}°`,Ca=(e,{set_angle_deg:t,
firstHit:n})=>n?e.expected_set_angle_deg:t});var u_,Nt,ol=g(()=>{y();u_=()=>matchMedia("(min-width: 1000px)").matches,Nt=(e,t,{test:n="",open:s=u_()}={})=>i`<details class="fold" data-test=${n||
d} ?open=${s}>
    <summary><h2>${e}</h2></summary>
    ${t}
  </details>`});function Ra(e){return al(e,t=>t.level==="stop"||t.level==="caution")}function al(e,t){let n=e.filter(o=>!Zh(o)&&
t(o));if(n.length===0)return d;let s=n.some(o=>o.level==="stop");return i`<section
    class="panel urgent ${s?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${wa(n)}
  </section>`}function gs(e){let t=e.filter(o=>o.level==="unknown"),n=e.filter(o=>Se(o)==="note"),s=e.filter(o=>Se(
o)==="ok");return i`${t.length?i`<section>
          <h2>Not known</h2>
          ${wa(t)}
        </section>`:d}
  ${n.length?i`<section data-test="notes">
          <h2>How to do it</h2>
          ${wa(n)}
        </section>`:d}
  ${s.length?Nt(`Passed checks: ${s.length}`,Ee(s),{test:"fine",open:!1}):d}`}function on(e){let t=e.filter(Zh);
if(t.length===0)return d;let n=i`<ul>
    ${t.map(s=>i`<li>
          <b>${ot(s.template,s.numbers)}</b>
          ${ot(s.do_template??s.do,s.numbers)}
        </li>`)}
  </ul>`;return i`<section class="every-time">
    ${Nt(i`${k("caution")} At the press, every time`,n,{test:"every-time"})}
  </section>`}var Zh,Qh,ep,bo=g(()=>{y();G();ol();Zh=e=>e.code.startsWith("general-");Qh=e=>al(e,t=>t.level===
"stop"),ep=e=>al(e,t=>t.level==="caution")});function A({name:e,label:t,value:n,change:s,hint:o="",wrong:a=[],keys:r="text",placeholder:l="",unit:c="",on:h="\
input",next:p=!1,list:u=""}){let m=f=>s(f.target.value);return i`<div class="field ${a.length?"has-wrong":""}">
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
      .value=${xe(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${e}-more"
      @input=${h==="input"?m:d}
      @change=${h==="change"?m:d} />
    <span id="${e}-more">
      ${a.map(f=>i`<span class="wrong" data-test="wrong-${e}">${f}</span>`)}
      ${o?i`<span class="hint">${o}</span>`:d}
    </span>
    ${a.length?m_(e,gh(String(n)),s):d}
  </div>`}function m_(e,t,n){return i`<div class="may-mean">
    ${t.map(s=>i`<button type="button" class="button" data-test="may-mean-${e}" @click=${()=>n(s)}>
          ${s}
        </button>`)}
  </div>`}function In({name:e,label:t,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${e}>${t}${l?i` <span class="hint">(${l})</span>`:d}</label>
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
        ${s.map(([r,l])=>i`<option value=${r} .selected=${xe(r===n)}>${l}</option>`)}
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
              .checked=${xe(a===n)}
              @change=${()=>o(a)} />
            <span>${r}</span>
          </label>`)}
    </div>
  </div>`}function at(e){Object.keys(e).length!==0&&document.querySelector('[aria-invalid="true"]')?.focus()}var J=g(
()=>{y();Kt();E()});function Ba(e){let[t,n]=[e?.die?.trim(),e?.punch?.trim()];return{...t?{die:t}:{},...n?{punch:n}:{}}}function rl(e){
let t=Ba(e);return Object.keys(t).length?{tools:t}:{}}function Wn(e){let{die:t,punch:n}=Ba(e);return[t&&`die ${t}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var wo,$s=g(()=>{wo=e=>({die:e?.die??"",punch:e?.punch??""})});function I(e,t){return Object.entries(e).filter(([n])=>il(n,t)).flatMap(([,n])=>n)}function tp(e,t){return Object.
entries(e).filter(([n])=>!t.some(s=>il(n,s))).flatMap(([,n])=>n)}function np(e,t,n){let s=Object.entries(e);return s.
length===0?d:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>il(o,c)).sort((c,h)=>h.length-c.length)[0],l=r?ll(t(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>_o(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function ll(e,t){let n=t.join(" ");return n.startsWith(e)?n:`${e}: ${n}`}function _o(e){let t=document.
getElementById(e);t?.closest("details")?.setAttribute("open",""),t?.focus({preventScroll:!0}),t?.scrollIntoView(
{block:"center"})}var il,rt=g(()=>{y();il=(e,t)=>e===t||e.startsWith(`${t}.`)});function dl(e,t,n,s){let o=(a,r)=>A({next:!0,name:`${e}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:t[a]??"",wrong:I(n,`${e}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function op(e,{dies:t,punches:n},s,o){
let a=t.flatMap(hl).map(({code:r})=>r);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${Wn(e.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${dl("tools",e.tools??{},s,r=>o({...e,tools:{die:"",punch:"",...e.tools,...r}}))}
    </details>
    ${sp("codes-of-dies",a)}
    ${sp("codes-of-punches",n.map(({code:r})=>r))}`}var cl,hl,sp,bs,Dn=g(()=>{y();$s();G();J();rt();cl=["tools\
.die","tools.punch"];hl=e=>e.shape==="multi_v"?e.openings:[e];sp=(e,t)=>i`<datalist id=${e}>${t.map(n=>i`<option value=${n}></option>`)}</datalist>`,
bs=({tools_reason:e,tools_reason_said:t})=>e?i`<p class="tools-reason" data-test="tools-reason">${t?ye(t):e}</p>`:
d});function Ia(e){let t=(e??"").split(":")[0].trim();return f_.includes(t)?t:""}function yo(e){if(!e)return"";let t=new Map;
for(let[n,s]of g_){let o=e[n];o&&t.set(o,[...t.get(o)??[],s])}return[...t].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var f_,g_,Wa=g(()=>{f_=["model","handbook","your test bends"];g_=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function rp(e){return i`<ul class="ratings" data-test="ratings">
    ${e.map($_)}
  </ul>`}function $_(e){let{what:t,share_percent:n,level:s}=e;return i`<li class="rating" data-level=${s} data-what=${t}>
    <span class="rating-of"><b>${lp[t]??t}</b>${ip(e)}</span>
    ${k(s,n===null?"Unknown":`${Q(n,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${n===null?"open":""}" d="M0 9H250" />
      ${n===null?d:w_(n)}
    </svg>
    <span class="rating-words">${b_(e)}</span>
  </li>`}function b_({load_kn:e,load_kn_per_m:t,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=t===void 0?
$(he(e)):$(Le(t));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=t===void 0?
$(he(n)):$(Le(s));return`${a} of ${r}`}function w_(e){let t=Math.min(e/100*ap,250);return x`<path class="bar-load" d="M0 9H${t}" /><path class="bar-most" d="M${ap} 0V18" />`}
var ap,ip,pl,lp,cp=g(()=>{y();E();G();ap=200;ip=({what:e,name:t})=>e.startsWith("press")||!t?"":` ${t}`,pl=e=>`${lp[e.
what]??e.what}${ip(e)}`,lp={press:"Press","press per metre":"Bed and ram, per length",punch:"Punch",die:"Die",
holder:"Holder","die holder":"Die holder"}});function ws(e,t,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(t-e)/o,c=(r?.find(_=>l/_<=a)??__(l,a))*o,h=Math.
floor(e/c+1e-9)*c,p=Math.ceil(t/c-1e-9)*c,u=_=>y_(n+(_-h)/(p-h)*(s-n)),m=Math.round((p-h)/c),f=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),b=Array.from({length:m+1},(_,T)=>h+T*c).map(_=>({at:u(_),text:(_/o).toFixed(f).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:u,marks:b}}function __(e,t){let n=(e>0?e:1)/t,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function Da(e){return e.length?`M${e.
map(([t,n])=>`${t} ${n}`).join("L")}`:""}var y_,ul=g(()=>{y_=e=>Math.round(e*100)/100});function dp({curve:e,set:t,peak:n,limits:s}){let o=Math.max(...e.map(f=>f.force_kn_high)),a=s.filter(f=>f.limit_kn!==
null).sort((f,b)=>Number(b.limit_kn)-Number(f.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:f})=>Number(
f)<=(f===r?k_:v_)*o),c=up(e),h=ws(0,Math.max(o,...l.map(f=>Number(f.limit_kn))),{from:We.bottom,to:We.top+28,size:en().
size}),p=(f,b)=>[c.at(f.punch_depth_mm),h.at(f[b])],u=[...e.map(f=>p(f,"force_kn_high")),...e.map(f=>p(f,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${$(he(n.force_kn))}, at a depth o\
f ${$(pp(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Fa} ${ja}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${mp(c,h,en().unit)}
    <path class="band" d="${Da(u)}Z" />
    ${t.punch_depth_mm===null?d:fp(c.at(t.punch_depth_mm))} ${x_(l,h)}
    ${T_(a.filter(f=>!l.includes(f)))}
    <path class="curve" d=${Da(e.map(f=>p(f,"force_kn")))} data-test="force-curve" />
    ${n?O_(c.at(n.punch_depth_mm),h.at(n.force_kn)):d}
  </svg>`}function hp({curve:e,set:t,trials:n}){let s=n.filter(u=>u.punch_depth_mm!==null),o=up(e,s.map(u=>Number(
u.punch_depth_mm))),a=[...e.map(u=>u.loaded_angle_deg),...s.map(u=>u.measured_deg)],r=ws(Math.min(...a),180,{from:We.
bottom,to:We.top,steps:[5,10,15,30,45]}),l=u=>Da(e.map(m=>[o.at(m.punch_depth_mm),r.at(m[u])])),c=t.set_angle_deg===
null?null:{x:o.at(Number(t.punch_depth_mm)),y:r.at(t.set_angle_deg)},p=`Angle over punch depth. ${c?`${$(S(t.set_angle_deg))}\
 under load at a depth of ${$(pp(Number(t.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} results drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${Fa} ${ja}"
    role="img"
    aria-label=${p}
    data-test="stroke-angle">
    ${mp(o,r,"°")} ${c?fp(c.x):d}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?x`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:d}
    ${s.map(u=>M_(o.at(Number(u.punch_depth_mm)),r.at(u.measured_deg),u))}
  </svg>`}function up(e,t=[]){let n=Math.max(...e.map(s=>s.punch_depth_mm),...t);return ws(0,n,{from:We.left,to:We.
right,size:C()==="in"?Xe:1,most:6})}function mp(e,t,n){let{left:s,right:o,top:a,bottom:r}=We,l=n==="°",c=t.marks.
map(({at:u,text:m})=>x`<path class="faint" d="M${s} ${u}H${o}"/>
      <text x=${s-6} y=${u+6} text-anchor="end"
        font-size=${Pt}>${m}${l?"°":""}</text>`),h=e.marks.map(({at:u,text:m})=>x`<path class="faint" d="M${u} ${r}v6"/>
      <text x=${Math.min(u,Fa-m.length*Pt*.3)} y=${r+24} text-anchor="middle"
        font-size=${Pt}>${m}</text>`),p=x`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${Pt}>${n}</text>`;return x`
    ${c}
    ${h}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${ja-8} text-anchor="end"
      font-size=${Pt}>punch depth, ${C()}</text>
    ${l?d:p}`}function x_(e,t){let n=-1/0;return S_(e).map(({limit_kn:s,names:o})=>{let a=t.at(s);return n=Math.
max(a-6,n+Pt+2),x`<path class="limit" d="M${We.left} ${a}H${We.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${We.left+6} y=${n}
        font-size=${Pt}>${o.join(", ")} ${$(he(s))}</text>`})}function S_(e){let t=new Map;for(let n of e)t.set(
Number(n.limit_kn),[...t.get(Number(n.limit_kn))??[],Ha(n)]);return[...t].map(([n,s])=>({limit_kn:n,names:s}))}
function T_(e){if(!e.length)return d;let t=e.length>1?`, ${e.length-1} more`:"";return x`<text class="limit-word" x=${We.
right} y="18" text-anchor="end" font-size=${Pt}
      data-test="limit-far">↑ ${ml(e[e.length-1])}${t}</text>`}function Ha({what:e,name:t}){return e==="pres\
s per metre"?"Bed and ram":e==="press"||!t?e[0].toUpperCase()+e.slice(1):`${e[0].toUpperCase()}${e.slice(1)} ${t}`}
function M_(e,t,{id:n,outlier:s}){return s?x`<path class="trial-odd" d="M${e-6} ${t-6}l12 12M${e+6} ${t-6}l-12 12"
        data-test="trial-point" data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${e} cy=${t} r="6" data-test="trial-point" data-id=${n}/>`}
var Fa,ja,We,Pt,v_,k_,pp,fp,ml,O_,gp=g(()=>{y();E();ul();Fa=400,ja=320,We={left:58,right:Fa-14,top:20,bottom:ja-
54},Pt=18,v_=3,k_=5;pp=e=>w(e,{digits:2});fp=e=>x`<path class="set-line" d="M${e} ${We.top}V${We.bottom}"/>
  <text class="set-word" x=${e-5} y=${We.bottom-6} text-anchor="end" font-size=${Pt}>set</text>`;ml=({what:e,name:t,
limit_kn:n})=>`${Ha({what:e,name:t})} ${$(he(n))}`;O_=(e,t)=>x`<circle class="peak" cx=${e} cy=${t} r="6" data-test="peak-mark"/>`});function wp({stroke:e,error:t,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?A_(e,t):d}
  </details>`}function A_(e,t){return t?i`<p class="hint" data-test="stroke-missing">
      ${t instanceof O?t.message:"The stroke could not be fetched."}
    </p>`:e?e.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${dp(e)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${L_(e)}</p>
        ${E_(e)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${hp(e)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${$p("curve")} under load</li>
          <li>${$p("curve let-go")} released</li>
          ${e.trials.length?i`<li>${C_} trials, released</li>`:d}
        </ul>
        <p data-test="stroke-set">${N_(e)}</p>
        ${P_(e)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function L_({peak:e,work_j:t}){if(!e)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${$(
Qe(e))}.</b> The peak is expected at
    ${$(he(e.force_kn))}, ${bp(e.punch_depth_mm)} deep, ${$(S(e.loaded_angle_deg))}
    under load.`;return t?i`${n} Work in the stroke ${Q(t,0)} J.`:n}function E_({limits:e}){let t=e.filter(s=>s.
limit_kn!==null),n=e.filter(s=>s.limit_kn===null);return i`${t.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${t.map(ml).join(", ")}. The shaded band is what the force may be.
        </p>`:d}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(Ha).join(", ")}. Read it off the plate.
        </p>`:d}`}function N_({set:e}){return e.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${$(S(e.set_angle_deg))} under load at a depth of ${bp(e.punch_depth_mm)}\
.`}function P_({trials:e}){let t=e.filter(n=>n.punch_depth_mm===null).length;return t?i`<p class="hint">
        ${t===1?"One result has":`${t} results have`} no depth written down and can't be drawn.
      </p>`:d}var bp,$p,C_,_p=g(()=>{y();gp();F();E();gt();bp=e=>$(w(e,{digits:2}));$p=e=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${e} d="M2 8H38" />
  </svg>`,C_=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="trial-point" cx="20" cy="8" r="6" />
</svg>`});function Ct(e,t,n,s,o=vp(e,t,s)){let[a,r]=[e[`${t}_low`],e[`${t}_high`]],l=typeof a=="number"&&typeof r=="numb\
er"&&a!==r;return ft(n,s(e[t]),{band:l?[s(a),s(r)]:null,note:o,origin:Ia(e.sources?.[t]),test:t})}function vp({
handbook:e,sources:t,...n},s,o){let a=e?.[s];if(typeof a!="number"||Ia(t?.[s])==="handbook")return d;let r=o(a);
if(r.text===o(n[s]).text)return d;let[l,c]=[n[`${s}_low`],n[`${s}_high`]],h=a<l||a>c;return i`<span class=${h?
"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${$(r)}</span
  >`}function kp(e,t,n){return i`${Qh(e.checks)}
    <section class="bend-first" aria-label="What to set" data-test="first">
      ${R_(e,t)} ${B_(e)}
    </section>
    ${ep(e.checks)} ${gs(e.checks)}
    <div class="columns bend-columns">
      <div>${F_(e)} ${H_(e)}</div>
      <div>${U_(e,n)} ${wp(n.stroke)} ${G_(e,n)}</div>
    </div>
    ${V_(e)} ${on(e.checks)}`}function R_(e,{punches:t,dies:n}){let s=n.find(({code:a})=>a===e.die),o=t.find(({
code:a})=>a===e.punch);return!e.die&&!e.punch?i`<p class="panel" data-test="no-tools">
      No tools of the crib chosen: the figures are for a V of ${$(w(e.v_opening_mm))}.
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:e.die,tool:s},{kind:"punch",code:e.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"
              ><b>${r??"none"}</b> <span>${l?.name??""}</span></span
            >
            <span class="where">${l?Xt(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:d}
          </li>`)}
    </ul>
    ${bs(e)}`}function B_(e){return i`<div class="figures">${e.first_hit?D_(e):W_(e)}</div>
    <div class="figures three">
      ${go("Allow for",e,"force_kn")}
      ${ft("Flange from",w(e.min_flange_mm),{test:"min_flange_mm"})}
      ${Ct(e,"bend_deduction_mm","Deduction",Fn)}
    </div>
    ${I_(e)} ${fs(e.first_hit)}`}function I_({ratings:e}){let t=e?.find(({share_percent:s})=>s===null),n=(e??[]).
reduce((s,o)=>(o.share_percent??0)>(s?.share_percent??0)?o:s,null);return i`<p class="weakest" data-test="weakest">
    ${t?i`<b>${pl(t)}: rating unknown.</b>`:d}
    ${n?i`${pl(n)}: ${Q(n.share_percent??0,0)} % of the rating.`:d}
  </p>`}function F_(e){return Nt("Force against the ratings",i`<div class="figures">
        ${go("Per length, allow for",e,"force_kn_per_m")}
        ${ft("Expected",he(e.force_kn),{note:j_(e),origin:Ia(e.sources?.force_kn),test:"force_expected"})}
      </div>
      ${e.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
              ${rp(e.ratings)}`:d}`)}function j_(e){let t=e.force_kn_low,n=vp(e,"force_kn",he);return i`${typeof t==
"number"?`at least ${$(he(t))}`:d}${n===d?d:i` <br />${n}`}`}function H_(e){return Nt("What comes out",i`<div class="figures">
      ${Ct(e,"inside_radius_mm","Inside radius",Fn)}
      ${Ct(e,"springback_deg","Springback",S)}
      ${Ct(e,"bend_allowance_mm","Bend allowance",Fn)}
      ${Ct(e,"k_factor","K-factor",xp)}
    </div>`)}function U_(e,{pose:t,show:n}){if(!e.drawing)return d;let s=$(S(e.set_angle_deg)),o=t==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return Nt("Drawn to scale",i`<section class="bend-drawing" aria-label="The bend in its tools">
      ${Y({name:"pose-shown",label:"Shown",value:t,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
      ${$t(e.drawing,{pose:t,close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,words:`The sheet i\
n die and punch, ${o}`})}
    </section>`,{test:"drawing"})}function G_(e,{use:t}){return e.options?.length?Nt(`Dies of the crib: ${e.options.
length}`,i`<p class="hint">Tap one to use it. Each with the reason for its rank.</p>
      ${Yh(e.options,t)}`,{test:"dies"}):d}function V_({opinions:e,sources:t}){return e?Nt("Second opinions",i`<div class="opinions">
      ${e.force?.length?yp("Force by published relations",e.force,[["force_kn","Force",he],["force_kn_per_m","\
Per length",Le]]):d}
      ${e.allowance?.length?yp("Bend allowance by published relations",e.allowance,[["bend_allowance_mm","Allo\
wance",Fn],["k_factor","K",xp]]):d}
      ${t?i`<details>
              <summary>Where each figure comes from</summary>
              <dl class="sources">
                ${Object.entries(t).map(([n,s])=>i`<dt>${z_[n]??n}</dt>
                      <dd>${s}</dd>`)}
              </dl>
            </details>`:d}
    </div>`,{open:!1}):d}function yp(e,t,n){return i`<div class="table">
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
  </div>`}var Fn,W_,D_,xp,z_,Sp=g(()=>{y();$o();me();E();gt();Jh();La();Bn();bo();ol();J();Dn();Wa();cp();_p();
Fn=e=>w(e,{digits:2});W_=e=>i`
  ${Ct(e,"set_angle_deg","Set angle",S)}
  ${Ct(e,"punch_depth_mm","Depth",Fn)}
`,D_=e=>i`
  ${Ct(e,"set_angle_deg","First hit: set angle",S,`then about ${$(S(e.expected_set_angle_deg))}`)}
  ${Ct(e,"punch_depth_mm","First hit: depth",Fn,`then about ${$(Fn(e.expected_punch_depth_mm))}`)}
`;xp=e=>({text:e==null?"–":Q(e,2),unit:""});z_={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var Mp={};ne(Mp,{show:()=>Y_});async function Y_(e){e.title("Check a bend"),e.render(Me("Looking into the crib\
…"));let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async P=>(await le(P,e.signal)).items)),o={
dies:n,punches:s},a=Ma(e.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=t[0]?.code??"";let l={answer:null,
error:null,busy:!1,pose:"after"},c={stroke:null,error:null,open:matchMedia("(min-width: 1000px)").matches},h=Et(
async(P,v)=>(await M("POST","/bend",{body:P,signal:v})).body,({answer:P=null,error:v=null})=>{Object.assign(l,
{answer:P,error:v,busy:!1}),Object.assign(c,{stroke:null,error:null}),u(),b()},e.signal),p=Et(async(P,v)=>(await M(
"POST","/stroke",{body:P,signal:v})).body,({answer:P=null,error:v=null})=>{Object.assign(c,{stroke:P,error:v}),
b()},e.signal);function u(){p.stop(),c.open&&l.answer&&!c.stroke&&p.ask(Cn(a),{now:!0})}function m(P){history.
replaceState(null,"",`/bend?${Oa(a)}`),l.busy=mo(a).length===0,l.busy?h.ask(Cn(a),P):(h.stop(),Object.assign(l,
{answer:null,error:null})),b()}function f(P,v){Object.assign(a,P),m(v)}function b(){let P=l.error instanceof O?
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
            ${J_(a,{metals:t,...o,openTools:r,answer:l.answer},P,f)}
          </form>
          <p class="unseen" role="status">${_()}</p>
          <div class="desk-answer" data-test="answer">${T(P)}</div>
        </div>`),l.busy||e.ready()}function _(){let{answer:P}=l;if(!P||l.busy)return"";let v=P.worst==="ok"?"":
`${P.worst}. `,N=P.set_angle_deg===null?"nothing to set":`set ${$(S(P.set_angle_deg))}`;return`${v}Die ${P.die??
"none"}, allow for ${$(Qe(P))}, ${N}.`}function T(P){let v=mo(a);return v.length?ke("One bend, all its figures",
i`Still to type: ${v.map(N=>K_[N]).join(", ")}.`):l.error?L(P):l.answer?kp(l.answer,o,{pose:l.pose,show:N=>{l.
pose=N,b()},use:N=>f({die:a.die===N?"":N},{now:!0}),stroke:{...c,toggled:N=>{c.open!==N&&(c.open=N,u(),b())}}}):
Me("Working it out…")}function L(P){if(!(l.error instanceof O)||l.error.status>=500)return i`${qt(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let v=tp(P,q_),N=Object.keys(P).length>v.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...N,...v].map(Z=>i`<p>${Z}</p>`)}
    </div>`}m({now:!0})}function J_(e,{metals:t,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(u,m,f={})=>A(
{name:u,label:m,value:e[u],wrong:I(r,u),change:b=>l({[u]:b}),...f}),h=(u,m,f)=>q({name:u,label:m,value:e[u],options:f,
wrong:I(r,u),change:b=>l({[u]:b},{now:!0})}),p=e.metal&&!t.some(({code:u})=>u===e.metal);return i`${h("metal",
"Metal",[...p?[[e.metal,`${e.metal} (not in the shop)`]]:[],...Z_(t)])}
    <div class="fields three">
      ${c("thickness_mm","Thickness",{unit:C(),hint:a?X_(a,e.thickness_mm):"3, 1/8 in, 16 ga"})}
      ${c("bend_length_mm","Length",{unit:C()})}
      ${c("included_angle_deg","Angle",{unit:"°",keys:"decimal",hint:a?"":"90 is square"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${h("die","Die",[["","Best of the crib"],...Tp(e.die,n)])}
      ${h("punch","Punch",[["","Best of the crib"],...Tp(e.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:C()})}
    </details>
    ${e.die||e.punch||e.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:d}`}function X_({thickness_mm:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":$(w(
e,{digits:2})),t??""].filter(Boolean).join(", ")}function Tp(e,t){let n=t.map(s=>[s.code,`${s.code} · ${s.name}`]);
return e&&!t.some(s=>s.code===e)?[[e,`${e} (not in the crib)`],...n]:n}var q_,K_,Z_,Op=g(()=>{y();F();Aa();me();
fo();E();gt();Sp();J();Re();rt();q_=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","punch",
"punch_radius_mm"],K_={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"angl\
e"};Z_=e=>e.map(({code:t,name:n})=>[t,n])});function Ap(e){let t,n=async()=>{document.visibilityState!=="visible"||e.aborted||(t=await navigator.wakeLock?.
request("screen").catch(()=>{}),e.aborted&&t?.release())};document.addEventListener("visibilitychange",n,{signal:e}),
e.addEventListener("abort",()=>t?.release()),n()}var fl,gl=g(()=>{y();fl=()=>"wakeLock"in navigator?d:i`<p class="hint" data-test="may-go-dark">
        This browser cannot keep the display awake: switch off sleep in the device’s own settings.
      </p>`});async function jn(e){let{body:t}=await M("GET","/benches",{signal:e,timeout:3e3});return t.benches}async function Np(e){
let{body:t}=await M("PUT",`/benches/${encodeURIComponent(e)}`,{body:{code:null,step:0}});return t}async function Pp(e){
await M("DELETE",`/benches/${encodeURIComponent(e)}`)}function $l(){let e=Bp(Lp);return typeof e?.name=="strin\
g"?{code:null,step:0,etag:null,...e}:null}function Bp(e){try{return JSON.parse(localStorage.getItem(e)??"null")}catch{
return null}}function Ip(e,t){try{t===null?localStorage.removeItem(e):localStorage.setItem(e,JSON.stringify(t))}catch{}}
var Lp,Ep,Hn,Rt,bl,Cp,Rp,an=g(()=>{F();Lp="flangebook.bench.here",Ep="flangebook.bench.last";Hn=e=>/^\d/.test(
e)?`press screen ${e}`:e,Rt=e=>/^\d/.test(e)?`Press screen ${e}`:e;bl=e=>Ip(Lp,e),Cp=()=>String(Bp(Ep)??""),Rp=
e=>Ip(Ep,e)});function Ua(e,t,n,s){let o=`/benches/${encodeURIComponent(e)}`,a={answers:null,gone:!1,waits:!1,late:!1,refused:""},
r=null,l=t,c=0,h=!1,p;function u(v){let N={...a,waits:r!==null,...v},Z=Object.keys(N).every(ce=>N[ce]===a[ce]);
a=N,!Z&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(p),h||s.aborted)return;h=!0;try{await(r&&!f()?
b():_()),T()}catch(N){s.aborted||L(N)}h=!1;let v=r!==null&&c===0;s.aborted||(p=setTimeout(m,v?0:Math.min(ey,Q_*
1.5**c)))}function f(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,u({late:!0}),!0)}async function b(){let v=r;
if(!v)return;let N=R().name?{by:R().name}:{};try{l=(await M("PUT",o,{body:{...v.place,...N},etag:v.whatever?null:
l,signal:s,timeout:Wp})).etag,r===v&&(r=null),n.sent?.(v.place,l??"",r!==null),u({refused:"",late:!1})}catch(Z){
if(!(Z instanceof O)||Z.status>=500)throw Z;r=null,l=null,u({refused:Z.status===412?"":Z.message}),await _()}}
async function _(){let v=r,{status:N,body:Z,etag:ce}=await M("GET",o,{seen:l,signal:s,timeout:Wp});s.aborted||
r!==v||N===304||(l=ce,u({late:!1}),n.heard(Z,ce??""))}function T(){let v=a.answers===!1;c=0,u({answers:!0,gone:!1}),
Vt(!0),v&&H()}function L(v){c+=1,v instanceof O&&v.status===404?u({answers:!0,gone:!0}):v instanceof O&&v.status<
500?u({answers:!0,refused:v.message}):u({answers:!1}),v instanceof j?Vt(!1,v):v instanceof O||console.error(v)}
let P=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",P,{signal:s}),
addEventListener("online",P,{signal:s}),s.addEventListener("abort",()=>clearTimeout(p)),m(),{move(v,{whatever:N=!1}={}){
r={place:v,at:Date.now(),whatever:N},u({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var Q_,ey,Wp,wl=g(()=>{
F();se();ve();Q_=1e3,ey=4e3,Wp=3e3});function Dp(e,t){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=ty.
has(o.key)?e.next:ny.has(o.key)?e.back:null;!a||oy(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<sy)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:t}),addEventListener("click",o=>o.detail>0&&ay(),{signal:t})}
function oy({key:e,target:t,repeat:n}){let s=t;return s.matches("input, select, textarea")?!0:!n&&(e==="Enter"||
e===" ")&&s.matches("button, a, summary")}function ay(){let e=document.activeElement;e?.matches("button, summa\
ry, input[type=range]")&&e.blur()}var ty,ny,sy,Fp=g(()=>{ty=new Set(["ArrowRight","PageDown"," ","Enter"]),ny=
new Set(["ArrowLeft","PageUp","Backspace"]),sy=300});function Ga(e,{pixels:t=ds(),tallest:n=t*.7,test:s="folded",mark:o=""}={}){let a=V*2.4,r=Ln(e.bounds,t-2*a,n-1.6*
a),[,l,c]=e.bounds,[h,p]=r([c,l]),u=m=>m.map(([f,b,_,T])=>`M${r([f,b])}L${r([_,T])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${ly(e)}
    width=${h+2*a}
    height=${p+1.6*a}
    viewBox="${-a} ${-V*.7} ${h+2*a} ${p+1.6*a}">
    ${e.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>x`<path class="marked-face" d="M${m.map(f=>r(f).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${u(e.lines.hidden)} />
    <path class="bend-edge" d=${u(e.lines.bend)} />
    <path class="edge" d=${u(e.lines.edge)} />
    ${e.dimensions.map(({name:m,from:f,to:b,mm:_})=>ry(r(f),r(b),m,U(_)))}
    ${e.faces.filter(({flat:m})=>m===1).map(({side:m,outline:f})=>iy(m,f.map(r),m===o))}
  </svg>`}function ry(e,t,n,s){let o=n==="length"?[-V*.5,V*.95]:n==="width"?[V*.5,V*.95]:[V*.9,0],[a,r]=[e,t].
map(([p,u])=>[p+o[0],u+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],h=Ue(s,V);return x`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-h/2} y=${c-V*.65} width=${h} height=${V*1.3}/>
    <text x=${l} y=${c} font-size=${V} text-anchor="middle" dominant-baseline="central">${s}</text>`}function iy(e,t,n){
let s=t.reduce((r,l)=>r+l[0],0)/t.length,o=t.reduce((r,l)=>r+l[1],0)/t.length,a=Ue(e,V);return x`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-V*.65}
      width=${a} height=${V*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${V}
      text-anchor="middle" dominant-baseline="central">${e}</text>`}function ly({length_mm:e,width_mm:t,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${Un({length_mm:e,width_mm:t,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function Un({length_mm:e,width_mm:t,height_mm:n}){
return $({text:[e,t,n].map(U).join(" × "),unit:w(0).unit})}function jp(e,{pixels:t=ds(),tallest:n=t*.9,test:s="\
blank"}={}){let[o,a]=[U(e.length_mm),U(e.width_mm)],r=Ue(a,V)+V*1.8,l=Ln([0,0,e.length_mm,e.width_mm],t-r-12,n-
V*3),[c,h]=l([e.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${hy(e)}
    width=${c+r+12}
    height=${h+V*3}
    viewBox="-6 -6 ${c+r+12} ${h+V*3}">
    <path class="sheet" d="M${e.outline.map(p=>l(p).join(" ")).join("L")}Z" />
    ${e.lines.map(p=>dy(p,l))}
    <path
      class="dimension"
      d="M0 ${h+V*1.3}H${c}M-4 ${h+V*1.3+4}l8 -8M${c-4} ${h+V*1.3+4}l8 -8" />
    ${cy(c/2,h+V*1.3,o)}
    <path
      class="dimension"
      d="M${c+V} 0V${h}M${c+V-4} 4l8 -8M${c+V-4} ${h+4}l8 -8" />
    <text x=${c+V*1.6} y=${h/2} font-size=${V} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function cy(e,t,n){let s=Ue(n,V);return x`<rect class="ground" x=${e-s/2} y=${t-V*.7} width=${s} height=${V*
1.4}/>
    <text x=${e} y=${t} font-size=${V} text-anchor="middle" dominant-baseline="central">${n}</text>`}function dy({
bend:e,place:t,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,h]=[l([n,s]),l([o,a])],p=.5+(t%2?-1:1)*.12*
Math.ceil((t-1)/1),[u,m]=[c[0]+(h[0]-c[0])*p,c[1]+(h[1]-c[1])*p];return x`<path class="fold ${r}" d="M${c}L${h}"/>
    <circle class="badge" cx=${u} cy=${m} r=${V*.68}/>
    <text class="badge-number" x=${u} y=${m} font-size=${V*.95} text-anchor="middle"
      dominant-baseline="central">${e}</text>`}function hy(e){let t=e.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${U(e.length_mm)} by ${U(e.width_mm)}, inside of the box up. ${t.join("; ")}.`}var V,
De,_s=g(()=>{y();E();ba();tn();st();V=18;De=e=>!!e?.folded});function Va(e,t){return!De(e)||!t.side?d:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${Ga(e.folded,{mark:t.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${_e(w(t.bend_length_mm))}</b> long.</li>
      ${Hp("Punch",t.segments_mm?.punch)} ${Hp("Die",t.segments_mm?.die)}
      ${t.clear_between_mm===null||t.clear_between_mm===void 0?d:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${_e(w(t.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${py(t.sides_near??[])}
    </ul>
  </section>`}function Hp(e,t){if(!t?.length)return d;let n=t.reduce((o,a)=>o+a,0),s=t.length>1?`${t.map(U).join(
" + ")} = `:"";return i`<li class="pieces">${e}: <b>${s}${U(n)} ${w(0).unit}</b></li>`}function py(e){if(!e.length)
return d;let[t]=[...e].sort((o,a)=>o.distance_mm-a.distance_mm),n=$(S(t.included_angle_deg)),s=_e(w(Math.abs(t.
distance_mm)));return i`<li data-test="sides-near">
    ${t.distance_mm<0?i`<b>The finished ${t.side} side runs ${s} into the ${t.tool}</b>, at ${n}.`:i`The finished ${t.
side} side stays <b>${s}</b> from the ${t.tool}, nearest at ${n}.`}
  </li>`}var _l=g(()=>{y();_s();st();E()});function Vp(e){return e.number===1?"first":e.turn_quarter?e.turn_over?"quarter-over":"quarter":e.turn_over&&e.
turn_end?"both":e.turn_over?"over":e.turn_end?"end":"same"}function ys(e){let t=Vp(e);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${qp}${Kp[t]}</svg
    ><b>${zp[t]}.</b>`}function za(e,t){let n=Vp(e);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${qp}${Kp[n]}</svg>
    <p>
      <b data-test="move">${zp[n]}.</b>
      <span data-test="face">${e.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${fy(e,t)}
    </p>
  </div>`}function vo({gauged_end:e,gauged_side:t},n){return t?`${t} side`:`${e} end${n?` (flat ${e==="left"?1:
n})`:""}`}function fy(e,t){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=e;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=vo(e,t);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var zp,qp,yl,Up,uy,Gp,my,Kp,vs=g(()=>{y();zp={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},qp=x`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,yl=x`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
Up=x`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,uy=x`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
Gp=x`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,my=x`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
Kp={first:[uy],same:[my],over:[yl],end:[Up],both:[yl,Up],quarter:[Gp],"quarter-over":[yl,Gp]}});function ko({frames:e},t){let n=e.findIndex(a=>a.share>=t);if(n<0)return e[e.length-1];if(n===0)return e[0];let[
s,o]=[e[n-1],e[n]];return vl(s,o,(t-s.share)/(o.share-s.share))}function vl(e,t,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(e.share,t.share),phase:t.phase,included_angle_deg:s(e.included_angle_deg,
t.included_angle_deg),punch_y_mm:s(e.punch_y_mm,t.punch_y_mm),left:o(e.left,t.left),right:o(e.right,t.right),inside_radius_mm:s(
e.inside_radius_mm,t.inside_radius_mm),half_arc_mm:s(e.half_arc_mm,t.half_arc_mm),gauge_x_mm:e.gauge_x_mm===null||
t.gauge_x_mm===null?null:s(e.gauge_x_mm,t.gauge_x_mm)}}function Yp({frames:e}){let t=e.find(o=>o.punch_y_mm<=0)??
e[0],n=Math.min(...e.map(o=>o.punch_y_mm)),s=[...e].reverse().find(o=>o.phase==="bend")??e[e.length-1];return{
before:t.share,after:n<0?s.share:e[e.length-1].share}}function Jp(e,t){let n=-t.punch_travel_mm,s=t.phase==="b\
end",o=c=>s?c.included_angle_deg:t.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?t.included_angle_deg:t.phase===
"approach"?n:-n,r=gy(e.frames,t.phase);return{...$y(r,o,a),punch_y_mm:n}}function gy(e,t){let n=t==="withdrawa\
l"?["release","withdrawal"]:[t],s=e.findIndex(a=>n.includes(a.phase)),o=e.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:e}function $y(e,t,n){for(let a=1;a<e.length;a+=1){let[r,l]=[t(e[a-1]),t(e[a])];if(n<=r&&
n>=l&&r>l)return vl(e[a-1],e[a],(r-n)/(r-l))}if(n>t(e[0]))return e[0];let[s,o]=e.slice(-2);return o.phase==="b\
end"?vl(s,o,(t(s)-n)/(t(s)-t(o))):o}function by({thickness_mm:e,left:t,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=ks([[-a,-e/2],[-a,e/2]],s),[h,p]=ks([[a,-e/2],[a,e/2]],o),u=([f,b])=>`${f} ${-b}`,
m=f=>f.map(b=>`L${u(b)}`).join("");return`M${u(l)}A${r+e} ${r+e} 0 0 0 ${u(h)}${m(ks(n,o))}L${u(p)}A${r} ${r} \
0 0 1 ${u(c)}${m(ks(t,s))}Z`}function Xp(e,{phase:t,punch_y_mm:n}){let s=t==="putting in"||t==="approach",o=e.
frames.filter(u=>u.phase===(s?"putting in":"taking out"));if(!o.length||t==="bend"||t==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:u,right:m})=>[...ks(e.left,u),
...ks(e.right,m)]),[c,h]=[l.map(([u])=>u),l.map(([,u])=>u)];return{bounds:[Math.min(...c),Math.min(...h),Math.
max(...c),Math.max(...h,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function ks(e,[t,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return e.map(([r,l])=>[t+o*r-a*l,n+a*r+o*l])}function qa(e,t,n){let s=-n.
punch_y_mm,o=t.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:by(t,n),tools:[
e.before.ram,e.before.holder,e.before.punch].map(Oe).filter(Boolean),down:s,gauge:Oe(e.before.gauge),back:a}}var kl=g(
()=>{tn()});function Ka({clearance:e}){let t=e?.hits?.[0]??e?.nearest??null;return t&&t.distance_mm<=ou?t:null}function Gn(e){
let{drawing:t,motion:n}=e;if(!t||!n?.frames?.length)return null;let s=Ka(e),{before:o,after:a}=Yp(n),r=s?Jp(n,
s):ko(n,(o+a)/2),l=!!e.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:qa(t,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Collision":s?"Closest":"Half way"}}function xs(e){let{clearance:t}=e;
if(!t)return"Clearance was not checked at this step.";let n=Ka(e);if(!n)return`Nothing comes within ${_e(w(ou,
{digits:0}))} of the part.`;let s=_e(w(Math.abs(n.distance_mm))),o=typeof t.needed_mm=="number"?`, ${_e(w(t.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${Zp(n.tool)}, ${Qp(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${Zp(n.tool)}, ${Qp(n)}${t.hits?.length?o:""}.`}function Qp({phase:e,included_angle_deg:t,punch_travel_mm:n}){
let s=$(w(Math.max(0,-n),{digits:0}));return e==="approach"?`as the punch comes down, ${s} above the sheet`:e===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${$(S(t))}`}
function xl({motion:e},t){let n=$(S(t.included_angle_deg));if(t.phase==="bend")return e.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(t.phase==="release")return`Releasing, ${n}`;if(t.phase==="taking out")
return`Taking it out${eu(e,t)}`;if(t.phase==="putting in")return`Putting it in${eu(e,t)}`;let s=$(w(Math.max(0,
t.punch_y_mm),{digits:0}));return t.phase==="withdrawal"?`Punch rising, ${s} up`:t.punch_y_mm>0?`Punch coming \
down, ${s} up`:"First touch, sheet flat"}function eu({frames:e},{phase:t,right:n}){let s=t==="putting in"?e.find(
a=>a.phase==="approach"):[...e].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??e[0]).
right[2]));return o?`, tilted by ${o}°`:", no tilt"}function wy({clearance:e}){let{way_in:t,way_out:n,rides_up:s,
clear:o}=e??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(t==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[nu(t,n,"slide"),nu(t,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${tu}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${t==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${tu}`}:null}function bt(e,{short:t=!1}={}){let n=wy(e);return n?
t?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${su(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${su(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:d}var ou,Zp,tu,nu,su,_y,yy,Bt=g(()=>{y();kl();E();ou=100;Zp=e=>({gauge:"gauge finger",sheet:"part it\
self"})[e]??e;tu="Punch still, at its top. Fingers never between.";nu=(e,t,n)=>[e===n&&"in",t===n&&"out"].filter(
Boolean).join(" and ");su=e=>e==="swing"?_y:yy(e!=="slide"),_y=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,yy=e=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${e?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function Tl({segments_mm:e,segments_total_mm:t}){if(!e?.length)return"";let n=e.map(o=>U(o)).join(" + "),s=w(0).
unit;return e.length>1?`${n} = ${U(t??0)} ${s}`:`${n} ${s}`}function Ss(e,t=0,n=[]){return e?.length?i`<ul class="tools" data-test="tools">
    ${e.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${Sl(s)}</span>
          <span class="more"
            >${[Tl(s),ru(s.steps,t),Ml(s,n),vy(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function ru(e,t){return!e?.
length||e.length===t?"":`step${e.length>1?"s":""} ${e.join(", ")}`}function Ml({kind:e,code:t},n){let s=n.filter(
a=>e==="punch"&&a.punch===t),o=s.filter(a=>a.punch_turned);return o.length?`reversed${o.length<s.length?` for ${ru(
o.map(({number:a})=>a),0)}`:""}`:""}function vy(e){return e==="good"||!e?"":e==="unknown"?"condition unknown":
e}function Ya(e){let t=e.length_mm_low===e.length_mm_high||e.length_mm_low===void 0;return i`<div class="figures">
      ${ft("Blank length",w(e.length_mm,{digits:2}),{test:"blank-length",band:t?null:[w(e.length_mm_low,{digits:2}),
w(e.length_mm_high,{digits:2})]})}
      ${ft("Blank width",w(e.width_mm,e.outline?{digits:2}:{}),{test:"blank-width",band:e.width_mm_low===void 0||
e.width_mm_low===e.width_mm_high?null:[w(e.width_mm_low,{digits:2}),w(e.width_mm_high,{digits:2})]})}
      ${ft("Mass",io(e.mass_kg),{test:"blank-mass"})}
    </div>
    ${e.rests_on?i`<p data-test="blank-rests-on">Blank by ${e.rests_on}.</p>`:d}
    ${e.lines?i`<p data-test="relief">${Ol(e)}</p>`:d}`}function Ol({relief:e,lines:t=[]}){let n=new Set(t.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!e?"":e.shape===
"none"?"Corners without relief.":`Corner reliefs ${e.shape}, ${$(w(e.size_mm,{digits:1}))} ${e.shape==="round"?
"across.":"a side."}`}function iu(e){let t=s=>w(s,{digits:2}).text,n=[["At",s=>t(s.at_mm)],["Angle",s=>$(S(s.included_angle_deg))],
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
              <th role="rowheader" scope="row">${s.bend} ${ky(e,s)}${s.direction}</th>
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
  </div>`}function ky({lines:e},{bend:t}){let n=e?.find(s=>s.bend===t)?.side;return n?`${n} `:""}function Al(e,t=0){
let n=e.turn_over||e.turn_end||e.turn_quarter,s=e.gauged_against&&e.gauged_against!=="flat edge"?`, against th\
e ${e.gauged_against}`:"",o=e.gauged_end?`${xy(vo(e,t))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!e.turn_quarter)}
            data-over=${String(e.turn_over)}
            data-end=${String(e.turn_end)}
            >${ys(e)}</span
          > `:d}
    ${bt(e,{short:!0})} ${o}${e.inside_face==="up"?"top":"bottom"} face
    up.${Sy(e)}
  </span>`}function Sy({hits:e}){if(!e)return d;let t=e.gauge_x_mm.map(n=>U(n)).join(", ");return i` <span data-test="hits"
    >${e.count} bumps, ${$(w(e.pitch_mm,{digits:2}))} apart, gauge X ${t}.</span
  >`}function wt(e){let t=e.operation&&e.operation!=="bend"?e.operation:"bend",n=e.side?`Bend ${e.bend}, ${e.side}`:
`Bend ${e.bend}`;return t==="bend"?n:`${n}, ${t}`}function Ty(e,t,n){let s=e[`${t}_low`],o=e[`${t}_high`],a=s==
null||s===o?d:i`<small class="band">${n(s).text} to ${$(n(o))}</small>`;return i`${$(n(e[t]))}${a}`}function au(e,t,n){
return pt(e,e)?e.first_hit?My(e,t,n):e.limits?Ty(e,t,n):$(n(e[t])):$(n(null))}function My(e,t,n){let s=t==="se\
t_angle_deg"?`first hit, ${sl(e.first_hit)}; then about `:"then about ";return i`${$(n(e[t]))}<small class="band"
      >${s}${$(n(e[`expected_${t}`]))}</small
    >`}function Ja(e,{link:t}={}){let n=o=>w(o,{digits:2}),s=e.part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${e.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${t?i`<a href=${t(o.number)}>${o.number}. ${wt(o)}</a>`:i`${o.number}. ${wt(o)}`}
                <small>${$(S(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${$(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${$(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${au(o,"set_angle_deg",S)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${au(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${$(Qe(o))}<small class="band">expected ${$(sn(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch reversed</span>`:
d}
              </td>
              <td role="cell" data-head="Sheet" class="long">${Al(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var Sl,xy,rn=g(()=>{y();me();On();E();gt();st();La();Bn();vs();Bt();Sl=Xt;xy=e=>e[0].toUpperCase()+e.
slice(1)});function Xa(e,t){return i`<header class="step-top">
    <a class="step-card" href="/c/${e.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${e.title||e.display_code}</span></a
    >
    ${Ll(e,t)}
  </header>`}function Ve(e,t,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${e}${t.unit&&t.unit!=="°"?i` <span class="unit">${t.unit}</span>`:d}</span
    >
    <span class="value" data-test="${n}-value">${t.text}${t.unit==="°"?"°":d}</span>
  </div>`}var Ll,ln=g(()=>{y();rn();Ll=(e,t)=>i`<h1>
    <span data-test="step-number">Step ${t.number} of ${e.plan.steps.length}</span>
    <small
      >${wt(t)}
      ${t.direction}${t.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch reversed</b>`:
d}</small
    >
  </h1>`});function lu(e,t,n,s,o){let a=Gn(e),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?ko(e.motion,l):null,
h=a&&r==="during"?a.shown:null,p=$(w(e.gauge_x_mm)),u=(m,f,b,_)=>i`<button
      type="button"
      class="button"
      aria-pressed=${b?"true":"false"}
      data-test=${_}
      @click=${()=>{Object.assign(n,f,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${$t(e.drawing,{pose:r==="between"?"during":r,close:n.close,opening:e.v_opening_mm,gauge:p,
angle:t,moment:h??(c&&qa(e.drawing,e.motion,c)),near:a?.near??null,mark:r==="during",room:c&&Xp(e.motion,c),words:`${wt(
e)}, ${Ay(e,r)}. Gauge at ${p}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${Ly(e,r,c)}
          </p>`:d}
    <div class="toggles">
      ${u("Before",{at:"before"},r==="before","before")}
      ${a?u(a.name,{at:"during"},r==="during","during"):d}
      ${u("After",{at:"after"},r==="after","after")}
      ${u(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?Ey(e,l,n,s,o):d}`}function Ay(e,t){return t==="before"?"the sheet on the die before the bend":t==="aft\
er"?"at the bottom of the stroke":t==="during"?xs(e):"on its way"}function Ly(e,t,n){return n?xl(e,n):xs(e)}function Ey(e,t,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&Ny(t>=1?0:t,n,s,o),s()};return i`<div class="motion">
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
      aria-valuetext=${xl(e,ko(e.motion,t))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function Ny(e,t,n,s){let o=performance.now(),a=r=>{!t.playing||s.aborted||(t.share=Math.min(1,e+Math.
max(0,r-o)/Oy),t.playing=t.share<1,n(),t.playing&&requestAnimationFrame(a))};Object.assign(t,{at:"between",share:e}),
requestAnimationFrame(a)}var Oy,xo,Za=g(()=>{y();kl();$o();E();rn();Bt();Oy=7e3,xo=()=>({at:"before",share:0,close:!1,
playing:!1})});function cu(e,{waits:t,correction:n}){if(!t&&!n?.to_check?.length)return i`<p data-test="no-setting">${n?.words||
"No new setting comes from this one."}</p>`;let s=n?.said?ye(n.said):n?.what??`${Py(e)} Something else is wron\
g.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${k("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??ih).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function Py(e){let t=Bi(e),n="That is further off than the card’s table of corrections goes.";return t?
`${n} Tools and press end at ${$(S(t.sharpest_deg))} under load.`:n}function du(e,t){return e.die?i`<p class="why-not-set" data-test="why-not-set">
    ${k("stop")} <b>No angle and depth.</b>
    ${t?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:d}var El=g(()=>{y();On();E();G()});function hu({stations:e=[]}){return e.length<2&&!e.some(t=>t.off_centre_level!=="ok")?d:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${e.map(t=>i`<li>
            <b>Station ${t.number}</b> ${t.punch}${t.turned?", reversed,":d} over ${t.die}:
            ${pu(t.centre_mm)}; step${t.steps.length>1?"s":""} ${t.steps.join(", ")}.
            ${t.off_centre_level==="ok"?d:i`${k(t.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function Qa({stations:e=[]},t){let n=e.find(({steps:s})=>s.includes(t.number));return n&&e.length>1?
`Station ${n.number}, ${pu(n.centre_mm)}`:""}function pu(e){return Math.abs(e)<.5?"in the middle":`its middle ${$(
w(Math.abs(e),{digits:0}))} to the ${e>0?"right":"left"} of the press's middle`}var er=g(()=>{y();E();G()});function tr(e,t){let n=t.checks.filter(l=>Se(l)!=="ok"),s=e.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=e.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+l.words,{...l,sign:Se(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function nr(e,t,n,s,o){
if(!t.drawing)return i`<p class="state" data-test="no-drawing">
      ${t.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`;let a=nt(e,t),r={...t,gauge_x_mm:a.gauge_x_mm};return lu(r,Ca(t,a),n,s,o)}function sr(e,t){let n=nt(
e,t);return n.set_angle_deg===null&&t.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${Ve("Gauge X",w(n.gauge_x_mm),"gauge-x")}
      ${Ve("Gauge R",w(t.gauge_r_mm),"gauge-r")}
      ${Ve("Angle to set",S(n.set_angle_deg),"set-angle")}
      ${Ve("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${fs(n.firstHit,t.drawing?"The drawing shows the finished bend.":"")}
    ${n.set_angle_deg===null?du(t,n.fromTrial):d} ${Cy(t)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-trial" data-test="from-trial">
            <b>Angle and depth from a first piece.</b> The plan said ${$(S(t.set_angle_deg))} and
            ${$(w(t.punch_depth_mm,{digits:2}))}.
          </p>`:d}
    ${t.gauge_draw_back_mm?i`<p class="draw-back" data-test="draw-back">
            <b>Retract the gauge ${$(w(t.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would run into it.
          </p>`:d}
    ${Ry(t)}`}function Cy(e){let t=Ea(e);return t===d?d:i`<p class="press-force" data-test="press-force">Allow for ${t}</p>`}
function Ry({hits:e}){return e?i`<div class="hits" data-test="hits">
    <b>${e.count} bumps</b>, ${$(S(e.angle_each_deg))} each. Move the gauge
    ${$(w(e.pitch_mm,{digits:2}))} each time:
    ${e.gauge_x_mm.map(t=>w(t).text).join(" · ")}
  </div>`:d}function uu(e,t){if(!t.die)return d;let n=Qa(e,t);return i`<dl class="step-tools" data-test="step-tools">
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
        <dd><b>${$(S(t.included_angle_deg))}</b> ${t.direction}</dd>
      </div>
    </dl>
    ${bs(t)}`}var or=g(()=>{y();Ie();E();gt();G();Bn();Za();Dn();El();ln();er()});function mu(e,t,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=tr(e,t),c=l.filter(m=>Se(m)!=="note"),h=l.length>
By,p=h?c:l,u=t.number===e.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-step"
    data-code=${e.code}
    data-step=${t.number}
    data-revision=${e.revision}>
    <header class="step-top">
      ${ar(n,o)}
      <p class="bench-card" data-test="bench-card">${e.title||e.display_code}</p>
      ${Ll(e,t)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${Ee(r)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${za(t,e.part.flats_mm.length)}${bt(t)}</div>
      <section class="step-set" aria-label="What to set">${sr(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${h?"many":""}" aria-label="What to watch">
        ${p.length?Ee(p):d}${Va(e.plan,t)}
      </section>
      <section class="step-with" aria-label="Tools">${Ss(Iy(e,t),0)}</section>
    </div>
    ${gu({back:t.number>1,label:u?"Done":"Next",more:u?"":`step ${t.number+1}`},o)}
  </article>`}function fu(e,{name:t,lines:n,acts:s}){let o=e.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-done"
    data-code=${e.code}
    data-step=${o+1}>
    <header class="step-top">
      ${ar(t,s)}
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
    ${gu({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function gu({back:e,label:t,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!e} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${t}${n?i` <small>${n}</small>`:d}
    </button>
  </nav>`}var By,Iy,ar,Nl=g(()=>{y();an();_l();G();vs();rn();ln();Bt();or();By=3;Iy=(e,t)=>e.plan.tools.filter(
n=>n.steps.includes(t.number)).map(n=>({...n,steps:[]}));ar=(e,t)=>i`<button
    type="button"
    class="button bench-name"
    data-test="bench-name"
    aria-label="${Rt(e)}, this display. Choose another"
    @click=${t.choose}>
    ${Rt(e)}
  </button>`});function $u({names:e,silent:t,typed:n,wrong:s,here:o},a){return i`<div class="bench-choose" data-test="bench-choose">
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
            ${A({name:"bench",label:e.length?"Or a new one":"Give it a name",value:n,wrong:s?[s]:[],change:a.type,
hint:"Like 1, or Big press. It is kept on this display."})}
            <button class="button" data-test="make-bench">Add it</button>
          </form>`:d}
    ${o?i`<button type="button" class="button" data-test="stay" @click=${()=>a.take(o)}>
            Stay at ${Hn(o)}
          </button>`:d}
    ${fl()}
  </div>`}function yu({answers:e,refused:t},n,s,o){return i`${e===!1?i`<p class="bench-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again automatically.`}
        </p>`:d}
  ${t?i`<p class="bench-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${t}
        </p>`:d}
  ${s?i`<p class="bench-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:d}`}var bu,wu,_u,Pl,vu=g(()=>{y();F();gl();an();de();Nl();J();bu=e=>Pl(e,"bench-idle",Rt(e.name),
i`<p>Open a card on a phone and choose this press screen.</p>
      ${fl()}`),wu=(e,t,n)=>Pl(n,"bench-no-card",W(e),t instanceof O?i`<p>${t.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes when the shop is back.
        </p>`),_u=(e,t,n)=>Pl(n,"bench-no-step",`There is no step ${t}`,i`<p>
      ${e.title||e.display_code} has ${e.plan.steps.length} now. Choose the step on the phone.
    </p>`),Pl=({name:e,lines:t,acts:n},s,o,a)=>i`<article class="step bench-step" data-test=${s}>
    <header class="step-top">${ar(e,n)}</header>
    ${t}
    <div class="bench-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var Su={};ne(Su,{show:()=>Dy});function Dy(e){Ap(e.signal);let t=$l();t?xu(e,t):ku(e,"")}function ku(e,t){e.title(
"Press screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:t},o;e.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&e.render($u(s,c)),r=p=>{n.abort();let u=$l();xu(e,u?.name===p?u:{name:p,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let p=s.typed.trim();if(s.names?.includes(p))return r(p);try{r((await Np(p||" ")).name)}catch(u){
s.wrong=u instanceof O?u.errors.name?.[0]??u.message:String(u.message),a()}},type:p=>Object.assign(s,{typed:p})},
h=async()=>{try{Object.assign(s,{names:(await jn(n.signal)).map(({name:p})=>p),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),e.ready(),o=setTimeout(h,Wy))};a(),h()}function xu(e,t){let{name:n}=t,s=new AbortController,
{signal:o}=s;e.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:t.code,
step:t.step},l=null,c=null,h=0,p=xo(),u=Ua(n,t.etag,{keepMs:1/0,heard:(v,N)=>{t={...t,etag:N},b({code:v.code,step:v.
step},!1)},sent:(v,N,Z)=>m({etag:N,unsent:Z}),changed:v=>v.gone?f(""):L()},o);function m(v){t={...t,...r,...v},
bl(t)}function f(v){s.abort(),v||bl(null),ku(e,v)}function b(v,N){let Z=v.code!==r.code||v.step!==r.step;v.code!==
r.code&&(l=null),Z&&(p=xo()),r=v,m({unsent:N}),N&&u.move(v),Z||!l&&v.code?_():L()}async function _(){a.abort(),
a=new AbortController;let v=a.signal;if(h=0,c=null,L(),!!r.code)try{await ut(r.code,N=>{v.aborted||(l=N,h=0,L())},
v)}catch(N){if(v.aborted||o.aborted)return;c=N,L()}}let T={next:()=>{if(!l)return;let v=l.plan.steps.length;b(
{code:l.code,step:r.step>v?1:r.step+1},!0)},back:()=>l&&r.step>1&&b({code:l.code,step:r.step-1},!0),clear:()=>b(
{code:null,step:0},!0),choose:()=>f(n),newer:()=>_()};function L(){if(o.aborted)return;let v=yu(u.standing(),!!l,
h,T.newer);e.title(l?`${l.title||l.code}, ${n}`:n),e.render(P({name:n,lines:v,acts:T})),(l||c||!r.code)&&e.ready()}
function P(v){if(!r.code)return bu(v);if(!l)return c?wu(r.code,c,v):Me(`Opening ${W(r.code)}…`);let N=l.plan.
steps,Z=N[r.step-1];return Z?mu(l,Z,v,nr(l,Z,p,L,a.signal)):r.step===N.length+1?fu(l,v):_u(l,r.step,v)}Dp(T,o),
we(L,o),document.addEventListener("sync",async v=>{if(!l)return c&&v.detail.reached?_():void 0;let N=await tt(
l.code).catch(()=>{});!N||N.code!==l?.code||N.revision===l.revision||h===N.revision||(h=N.revision,L())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),t.unsent&&u.move(r),_()}var Wy,Tu=g(()=>{F();gl();an();wl();Ie();
de();Fp();se();Ce();vu();Nl();Za();Re();or();Wy=3e3});function ee(e,t){let n=document.getElementById("notices"),s=()=>Ut(i``,n);Ut(i`<div class="notice" data-test="notice">
      <span>${e}</span>
      <button type="button" @click=${()=>{s(),t?.act()}}>${t?.label??"Close"}</button>
    </div>`,n),clearTimeout(Mu),t||(Mu=setTimeout(s,8e3))}var Mu,it=g(()=>{y()});function Ou(e){try{let t=JSON.parse(localStorage.getItem(Cl(e))??"null");return t&&Array.isArray(t.form?.flats)&&
Array.isArray(t.form?.bends)?t:null}catch{return null}}function Rl(e,t){try{return localStorage.setItem(Cl(e),
JSON.stringify({...t,kept_at:new Date().toISOString()})),!0}catch{return!1}}function Bl(e){try{localStorage.removeItem(
Cl(e))}catch{}}var Cl,Au=g(()=>{Cl=e=>`flangebook.part.${e||"new"}`});var rr,_t,ir,lr,So=g(()=>{Lt();$s();E();rr=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
_t=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),ir=e=>({angle:String(e.included_angle_deg),direction:e.
direction,radius:z(e.inside_radius_mm),kind:e.kind??"bend",gap:e.kind==="open_hem"?z(e.hem_gap_mm):"",...wo(e)}),
lr=(e,t)=>({included_angle_deg:e.kind==="bend"?mt(e.angle):0,direction:e.direction,kind:e.kind,...e.radius.trim()&&
e.kind==="bend"?{inside_radius_mm:te(e.radius,t)}:{},...e.kind==="open_hem"?{hem_gap_mm:te(e.gap,t)}:{},...Ba(
e)})});function cr(e="tray"){let t=()=>e==="lips-in"?{flats:["",""],bends:[_t(),_t()]}:e==="lips-out"?{flats:["",""],
bends:[_t(),{..._t(),direction:"down"}]}:{flats:[""],bends:[_t()]};return{length:"",width:"",there:e==="channe\
l"?["left","right"]:[...Vn],alike:!0,sides:{left:t(),right:t(),front:t(),back:t()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function Eu(e,t){let n=cr(t);for(let s of Vn){let o=e.sides[e.alike?
e.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...e,there:n.there,sides:n.
sides}}function Nu({there:e,sides:t,alike:n}){let s=(n?e.slice(0,1):e).map(r=>t[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return e.length===2&&e.includes("left")&&e.includes("right")&&s.every(o)?"channel":e.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function Pu(e){let t=Vn.
filter(o=>e.sides[o]),n=t.map(o=>JSON.stringify(e.sides[o])),s=cr().sides;for(let o of Vn){let a=e.sides[o]??e.
sides[t[0]];s[o]={flats:a.flats_mm.map(z),bends:a.bends.map(ir)}}return{length:z(e.length_mm),width:z(e.width_mm),
there:t,alike:n.every(o=>o===n[0]),sides:s,relief:e.relief,reliefSize:z(e.relief_mm),corner:e.corner,gap:z(e.gap_mm),
firstPair:e.first_pair??"left-right"}}function Iu(e,t){let n=s=>e.there.includes(s)?Ru(e,s).flats.map((o,a)=>`${s}\
 ${Os(a)}`):[];return Il.filter(s=>s.some(o=>e.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...t(s,
o),...n(o)])}function Wu(e,t){let n=o=>te(o,t),s=e.there.map(o=>{let a=Ru(e,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>lr(r,t))}]});return{length_mm:n(e.length),width_mm:n(e.width),sides:Object.fromEntries(
s),relief:e.relief,corner:e.corner,...e.firstPair==="front-back"?{first_pair:e.firstPair}:{},...e.reliefSize.trim()&&
e.relief!=="none"?{relief_mm:n(e.reliefSize)}:{},...e.gap.trim()&&e.corner==="closed"?{gap_mm:n(e.gap)}:{}}}function Ts(e){
return[["box.length_mm","length of the base",e.length],["box.width_mm","width of the base",e.width],...Wl(e).flatMap(
t=>Fy(e,t))]}function Fy({sides:e,alike:t},n){let s=t?"":`${n} `;return e[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=e[n].bends[a],h=`${s}${Os(a)}`;return[[Ms(n,a),h,o],...r==="bend"?[[dr(n,a),`angle of the ${h}`,
l]]:[],...r==="open_hem"?[[`${cn(n,a)}.hem_gap_mm`,`gap of the ${h}`,c]]:[]]})}function Du(e,t){if(!e.alike)return t;
let n=e.there[0];return Object.fromEntries(Object.entries(t).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function Fu(e){let[,t,n,s,o,a]=e.split(".");if(t!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[t]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${Os(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function ju(e,t,n,s){
let o=e.sides[t];return hr(e,t,{...o,flats:o.flats.with(n,s)})}function As(e,t,n,s){let o=e.sides[t];return hr(
e,t,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function Hu(e,t){let{flats:n,bends:s}=e.sides[t],o=s.map(
a=>({...a,kind:"bend"}));return hr(e,t,{flats:[...n,""],bends:[...o,_t()]})}function Uu(e,t){let{flats:n,bends:s}=e.
sides[t];return hr(e,t,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function Gu(e,t){let n=Vn.filter(o=>o===t!==
e.there.includes(o));if(!n.length)return e;let s=e.sides[e.there[0]];return{...e,there:n,sides:e.alike?{...e.sides,
[n[0]]:s}:e.sides}}function Vu(e,t){let n=e.sides[e.there[0]];return{...e,alike:t,sides:t?e.sides:{left:n,right:n,
front:n,back:n}}}var Il,Vn,Lu,Cu,Ru,zn,Bu,Wl,Ms,cn,dr,Os,hr,qn=g(()=>{So();E();Il=[["left","right"],["front","\
back"]],Vn=Il.flat(),Lu=6;Cu=({there:e})=>Il.every(t=>t.some(n=>e.includes(n))),Ru=(e,t)=>e.sides[e.alike?e.there[0]:
t],zn=e=>Iu(e,()=>[]),Bu=e=>Iu(e,(t,n)=>[`base, ${t} to ${n}`]);Wl=({there:e,alike:t})=>t?e.slice(0,1):e;Ms=(e,t)=>`\
box.sides.${e}.flats_mm.${t}`,cn=(e,t)=>`box.sides.${e}.bends.${t}`,dr=(e,t)=>`${cn(e,t)}.included_angle_deg`,
Os=e=>e===0?"wall":e===1?"lip":`flat ${e+1}`;hr=(e,t,n)=>({...e,sides:{...e.sides,[t]:n}})});function Fl(e){if(!e)return To();let{first:t,last:n,margin_mm:s}=e;return{first:t?String(t):"",last:n?String(n):
"",no_turn_over:!!e.no_turn_over,no_turn_end:!!e.no_turn_end,one_set_up:!!e.one_set_up,critical_flats:[...e.critical_flats??
[]],margin:s===void 0||s===Dl?"":z(s)}}function jl(e,t){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=e??To(),h={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:te(
c,t)}:{}};return Object.keys(h).length?{wishes:h}:{}}function Hl(e,t){if(!e)return{};let n=t?-1:1,s=a=>!a||Number(
a)===t?"":Number(a)>t?String(Number(a)+n):a,o=e.critical_flats.filter(a=>!t||a!==t+1).map(a=>a>t?a+n:a);return{
wishes:{...e,first:s(e.first),last:s(e.last),critical_flats:o}}}function pr(e){let{first:t,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=e??To();return[t&&`bend ${t} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var Dl,To,zu,ur=g(()=>{E();Dl=2,To=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});zu=e=>({...e,first:"",
last:"",critical_flats:[]})});function Gl(e){return{unit:C(),title:"",note:"",metal:e,thickness:"",length:"",flats:["",""],bends:[_t()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function mr({aside:e,...t},n){let s=qu({...t,box:n?t.box??e??cr():
null});return n?s:{...s,...t.box?{aside:t.box}:{}}}function Ku(e,t){return e.box&&t&&String(zn(e.box))===String(
zn(t))&&e.box.firstPair===t.firstPair?{...e,box:t}:qu({...e,box:t})}function Mo(e,t){return e.box?{...Gl(e.metal),
title:e.title??"",note:t,thickness:z(e.thickness_mm),dimension:e.dimension??"din6935",order:e.order??null,wishes:Fl(
e.wishes),tools:wo(e.tools),box:Pu(e.box)}:{unit:C(),title:e.title??"",note:t,metal:e.metal,thickness:z(e.thickness_mm),
length:z(e.bend_length_mm),flats:e.flats_mm.map(z),bends:e.bends.map(ir),dimension:e.dimension??"din6935",grain:e.
grain??"",order:e.order??null,wishes:Fl(e.wishes),tools:wo(e.tools),holes:(e.holes??[]).map(n=>({flat:String(n.
flat),position:z(n.position_mm),diameter:z(n.diameter_mm)}))}}function Ls(e){let t=n=>te(n,e.unit);return e.box?
{title:e.title.trim(),metal:e.metal,thickness_mm:t(e.thickness),dimension:e.dimension,box:Wu(e.box,e.unit),...e.
order?{order:e.order}:{},...jl(e.wishes,e.unit),...rl(e.tools)}:{title:e.title.trim(),metal:e.metal,thickness_mm:t(
e.thickness),bend_length_mm:t(e.length),flats_mm:e.flats.map(t),bends:e.bends.map(n=>lr(n,e.unit)),dimension:e.
dimension,...e.grain?{grain:e.grain}:{},...e.order?{order:e.order}:{},...jl(e.wishes,e.unit),...rl(e.tools),...e.
holes.length?{holes:e.holes.map(n=>({flat:mt(n.flat),position_mm:t(n.position),diameter_mm:t(n.diameter)}))}:{}}}
function fr(e){let t=[["metal","metal",e.metal],["thickness_mm","thickness",e.thickness]];return(e.box?[...t,...Ts(
e.box)]:[...t,["bend_length_mm","length",e.length],...e.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...e.
bends.flatMap((s,o)=>jy(s,o)),...e.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function jy({kind:e,angle:t,gap:n},s){return e==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,t]]:e==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function Yu(e,t,n){return{...e,flats:e.flats.with(t,n)}}function Kn(e,t,n){return{...e,bends:e.
bends.with(t,{...e.bends[t],...n})}}function zl(e,t){let n=e.bends.at(t==="left"?0:-1),s={..._t(),direction:n?.
direction??"up"},o=t==="left"?e.bends:e.bends.map((r,l)=>l>0&&l===e.bends.length-1?{...r,kind:"bend"}:r);if(t===
"right")return{...e,bends:[...o,s],flats:[...e.flats,""],order:null};let a=e.holes.map(r=>({...r,flat:Xu(r.flat,
1,1)}));return{...e,bends:[s,...o],flats:["",...e.flats],order:null,holes:a,...Hl(e.wishes,0)}}function Ju(e,t){
let n=t+2,s=e.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:Xu(o.flat,n,-1)}));return{...e,bends:e.
bends.toSpliced(t,1),flats:e.flats.toSpliced(t+1,1),order:null,holes:s,...Hl(e.wishes,t+1)}}function Xu(e,t,n){
let s=Number(e);return Number.isInteger(s)&&s>=t?String(s+n):e}function gr(e){let t=e.split(/[^\d]+/).filter(Boolean).
map(Number);return t.length?t:null}function Zu(e,t){return t===0||t===e.bends.length-1}var Ul,qu,Vl,dn=g(()=>{
So();qn();Lt();$s();E();ur();Ul=40;qu=e=>({...e,order:null,...e.wishes?{wishes:zu(e.wishes)}:{}});Vl=e=>JSON.stringify(
{...Ls(e),title:""})});async function ql(e,t){try{let{body:n}=await M("POST","/cards",{body:{...em(e),code:t},timeout:Qu});return{saved:await sm(
n)}}catch(n){if(n instanceof O&&n.status===409)return{taken:t};throw nm(n)}}async function tm(e,t){let n={...em(
e),reason:e.reason??""},s=Hy(t,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await M("PUT",`/cards/${t.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:Qu});return await nd().then(c=>qs({...s,number:c},l)).catch(
()=>{}),{saved:await sm(r)}}catch(o){if(o instanceof O&&o.status===412)return{stale:await Tt(t.code)};throw nm(
o)}}function Hy(e,t){let n=JSON.stringify(t);e.saving?.wanted!==n&&(e.saving={id:Fe(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=e;return{id:e.saving.id,number:0,kind:"edit",code:s,body:t,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function nm(e){return e instanceof O&&(e.errors=Object.fromEntries(Object.entries(e.
errors).map(([t,n])=>[t.replace(/^part\./,""),n]))),e}async function sm(e){return ct(e).catch(()=>e)}var Qu,em,
om=g(()=>{F();Ie();Pe();dn();se();Ce();Qu=6e4,em=e=>({part:Ls(e),note:e.note,...R().name?{by:R().name}:{}})});function im(e,{pixels:t=ds(),tallest:n=t*.45,test:s="blank"}={}){let o=U(e.width_mm),a=t-Ue(o,K)-K*2,r=a/e.length_mm,
l=e.width_mm*r>n,c=l?n:Math.max(e.width_mm*r,3),h=am(e.bend_lines.map(b=>[b.at_mm*r,K*1.8+Ue(Kl(b),K)]),a),p=am(
e.bend_lines.map(b=>[b.at_mm*r,Ue(U(b.at_mm),K)]),a),u=rm(h)*Oo+K*.4,m=rm(p)*Oo+K*.4,f=u+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${Uy(e)}
      viewBox="-8 -4 ${t+8} ${f+m+Oo*1.4}">
      ${l?Vy(a,u,f):x`<rect class="sheet" x="0" y=${u} width=${a} height=${c}/>`}
      ${e.bend_lines.map((b,_)=>Gy(b,b.at_mm*r,h[_],p[_],u,f))}
      ${zy(a,f+m+K*.7,U(e.length_mm))}
      ${qy(a+K,u,f,o)}
    </svg>
    ${l?i`<p class="hint">Width ${$({text:o,unit:""})} is drawn short at the break.</p>`:d}`}function Kl(e){let t=e.
included_angle_deg?$(S(e.included_angle_deg)).replace(".0°","°"):"hem";return`${e.direction} ${t}`}function Uy(e){
let t=e.bend_lines.map(n=>`bend ${n.bend} ${Kl(n)} at ${U(n.at_mm)}`);return`Blank ${U(e.length_mm)} by ${U(e.
width_mm)}. ${t.join("; ")}.`}function am(e,t){let n=[];return e.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),
Math.max(t-o/2,o/2)),r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function Gy(e,t,n,s,o,a){
let r=o-K*.4-Oo*(n.row+.5),l=a+K*.4+Oo*(s.row+.5),c=n.at-n.width/2;return x`<path class="fold ${e.direction}" d="M${t} ${o}V${a}"/>
    <path class="leader" d="M${t} ${o}V${r+K*.8}M${t} ${a}V${l-K*.8}"/>
    <rect class="ground" x=${c} y=${r-K*.75} width=${n.width} height=${K*1.5}/>
    <circle class="badge" cx=${c+K*.75} cy=${r} r=${K*.68}/>
    <text class="badge-number" x=${c+K*.75} y=${r} font-size=${K*.95} text-anchor="middle"
      dominant-baseline="central">${e.bend}</text>
    <text x=${c+K*1.7} y=${r} font-size=${K} dominant-baseline="central">${Kl(e)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-K*.7} width=${s.width}
      height=${K*1.4}/>
    <text x=${s.at} y=${l} font-size=${K} text-anchor="middle"
      dominant-baseline="central">${U(e.at_mm)}</text>`}function Vy(e,t,n){let s=(t+n)/2,o=`L${e*.52} ${s+3}L${e*
.54} ${s-14}L${e*.58} ${s+8}L${e*.6} ${s-9}`,a=`L${e*.6} ${s-1}L${e*.58} ${s+16}L${e*.54} ${s-6}L${e*.52} ${s+
11}`;return x`<path class="sheet" d="M0 ${t}V${s+3}${o}L${e} ${s-9}V${t}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${e*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${e} ${s-1}V${n}Z"/>`}function zy(e,t,n){let s=Ue(n,K);return x`<path class="dimension"
      d="M0 ${t}H${e}M-4 ${t+4}L4 ${t-4}M${e-4} ${t+4}L${e+4} ${t-4}"/>
    <rect class="ground" x=${e/2-s/2} y=${t-K*.7} width=${s} height=${K*1.4}/>
    <text x=${e/2} y=${t} font-size=${K} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function qy(e,t,n,s){let o=a=>`M${e-4} ${a+4}L${e+4} ${a-4}`;return x`<path class="dimension" d="M${e} ${t}V${n}${o(
t)}${o(n)}"/>
    <text x=${e+K*.6} y=${(t+n)/2} font-size=${K}
      dominant-baseline="central">${s}</text>`}var K,Oo,rm,lm=g(()=>{y();E();ba();st();K=18,Oo=K*1.5;rm=e=>Math.
max(0,...e.map(t=>t.row+1))});function et(e,{mark:t=0,...n}={}){if(!De(e))return yh(e,{mark:t,...n});let s=e.blank.lines.find(o=>o.bend===t)?.
side??"";return Ga(e.folded,{...n,mark:s})}function Es(e,t={}){return e.outline?jp(e,t):im(e,t)}var hn=g(()=>{
_s();lm();st()});function Ns({how:e,differences:t},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
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
  </section>`}function $r(e,t,n){return n.filter(({name:s})=>(e[s]??"")!==(t[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:t[s]??"",mine:e[s]??""}))}var Ps=g(()=>{y();G()});function dm(e,t,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=Mo(e.part,e.note),r=[...new Set([...Yl(t),...Yl(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=$r(cm(t),cm(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
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
        ${et(e.plan,{pixels:330,tallest:260,test:"theirs-section"})}
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
  </section>`}function Yl(e){return[{label:"Title",value:e.title},{label:"Note",value:e.note},{label:"Metal",value:e.
metal},{label:"Thickness",value:e.thickness},{label:"Length",value:e.length},{label:"Measured",value:e.dimension},
{label:"Grain",value:e.grain},{label:"Order",value:e.order?.join(", ")??""},{label:"Limits on the order",value:pr(
e.wishes)},{label:"Tools",value:Wn(e.tools)},...e.box?[...Ts(e.box).map(([,t,n])=>({label:`${t[0].toUpperCase()}${t.
slice(1)}`,value:n})),{label:"Corners",value:`${e.box.corner}, relief ${e.box.relief} ${e.box.reliefSize} ${e.
box.gap}`.trim()},{label:"Sides",value:e.box.there.join(", ")}]:[],...(e.box?[]:e.flats).map((t,n)=>({label:`F\
lat ${n+1}`,value:t})),...(e.box?[]:e.bends).map((t,n)=>({label:`Bend ${n+1}`,value:[t.kind==="bend"?`${t.angle}\
°`:t.kind.replace("_"," "),t.direction,t.radius&&`radius ${t.radius}`,t.gap&&`gap ${t.gap}`,Wn(t)].filter(Boolean).
join(", ")})),...e.holes.map((t,n)=>({label:`Hole ${n+1}`,value:`flat ${t.flat}, at ${t.position}, size ${t.diameter}`}))]}
var cm,hm=g(()=>{y();hn();qn();dn();$s();ur();G();Ps();cm=e=>Object.fromEntries(Yl(e).map(({label:t,value:n})=>[
t,n]))});function um(e,t,n){let{box:s,unit:o}=e,a=Du(s,t),r=(l,c)=>n(Ku(e,l),c);return i`${Zy(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${Qy(s,r)}
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
        @change=${l=>r(Vu(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${Wl(s).map(l=>ev(s,l,a,r))}
    <h2>Corners</h2>
    ${ov(e,a,r)}
    ${Cu(s)?Y({name:"box.first_pair",label:"Bent first; the others go between them",value:s.firstPair??pm[0][0],
options:pm,change:l=>r({...s,firstPair:l==="front-back"?l:"left-right"})}):d}`}function Zy(e,t){let n=Nu(e);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${Ky.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>t(Eu(e,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function Qy(e,t){let n=s=>{let o=e.there.includes(s),a=o&&e.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>t(Gu(e,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${Vn.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function ev(e,t,n,s){let{flats:o,bends:a}=e.sides[t],r=e.alike?"Each side":`${t[0].toUpperCase()}${t.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${t}">
    <legend>${r}</legend>
    ${sv(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${tv(e,t,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${t}"
        ?disabled=${o.length>=Lu}
        @click=${()=>s(Hu(e,t),{focus:Ms(t,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${t}"
              @click=${()=>s(Uu(e,t),{focus:Ms(t,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:d}
    </div>
  </fieldset>`}function tv(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],[l,c]=[r[n],mm(Os(n))],h=`${cn(t,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${A({next:!0,name:Ms(t,n),label:c,value:a[n],wrong:[...I(s,Ms(t,n)),...I(s,cn(t,n))],change:p=>o(ju(e,t,
n,p))})}
      ${l.kind==="bend"?A({next:!0,name:dr(t,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:I(s,
dr(t,n)),change:p=>o(As(e,t,n,{angle:p}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?A({next:!0,name:h,label:"Clear gap inside",value:l.gap,wrong:I(s,h),change:p=>o(As(e,
t,n,{gap:p}))}):d}
    ${Y({name:`${cn(t,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:Xy,change:p=>o(As(e,t,n,{direction:p==="down"?"down":"up"}))})}
    ${nv(e,t,n,s,o)}`}function nv(e,t,n,s,o){let{flats:a,bends:r}=e.sides[t],l=`${cn(t,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?d:i`<details class="bend-more">
    <summary>
      <span class="unseen">${mm(Os(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":d}
    </summary>
    ${r[n].kind==="bend"?A({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:I(s,l),change:h=>o(As(e,t,n,{radius:h}))}):d}
    ${c?q({name:`${cn(t,n)}.kind`,label:"Kind",value:r[n].kind,options:rr,change:h=>o(As(e,t,n,{kind:h}))}):d}
  </details>`}function sv(e){let t=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of e.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[h,p]=n[n.length-1];n.push(
[h+t[o]*Math.cos(s),p-t[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>x`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function ov({box:e,unit:t},n,s){return i`<div class="corner-grid">
      ${rv(e)}
      <div>
        ${Y({name:"box.corner",label:"Walls at the corner",value:e.corner,options:Jy,change:o=>s({...e,corner:o===
"open"?"open":"closed"})})}
        ${Y({name:"box.relief",label:"Relief",value:e.relief,options:Yy,change:o=>s({...e,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${e.relief==="none"?d:A({next:!0,name:"box.relief_mm",label:e.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:t,hint:"Empty: by radius and thickness.",value:e.reliefSize,wrong:I(n,"box.relief_mm"),change:o=>s(
{...e,reliefSize:o})})}
      ${e.corner==="open"?d:A({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:t,hint:"Empty: by \
thickness.",value:e.gap,wrong:I(n,"box.gap_mm"),change:o=>s({...e,gap:o})})}
    </div>`}function rv({corner:e,relief:t}){let[n,s]=e==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${av[t]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var Ky,Yy,Jy,pm,Xy,mm,av,fm=g(()=>{y();So();qn();dn();J();rt();Ky=[["tray","Tray","M10 14V44H86V14"],
["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channel","Two s\
ides","M10 14V44H86V14M18 36H30M66 36H78"]],Yy=[["round","Round"],["square","Square"],["none","None"]],Jy=[["c\
losed","Closed"],["open","Open"]],pm=[["left-right","Left and right"],["front-back","Front and back"]],Xy=[["u\
p","↑ in"],["down","↓ out"]];mm=e=>e[0].toUpperCase()+e.slice(1);av={none:"L50 40L30 40",square:"L58 20L58\
 48L30 48",round:"L50 31A9 9 0 1 1 41 40L30 40"}});function Jl(e,t){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${gm[e.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(gm).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${xe(e.dimension===n)}
              @change=${()=>t({...e,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?x`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:iv(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function iv(e){return e==="din6935"?x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:x`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function $m(e,t,n){let s=(o,a)=>n({...e,holes:e.holes.with(o,{...e.holes[o],...a})});return i`<details class="holes">
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
  </details>`}function Xl(e,t,n,s){let o=e.box?zn(e.box):[],a=e.order??t??e.bends.map((l,c)=>c+1),r=(l,c)=>s({
...e,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${e.order?`${e.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${A({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:e.order?.
join(", ")??"",wrong:I(n,"order"),on:"change",change:l=>s({...e,order:gr(l)})})}
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
  </details>`}function bm(e,t,n){return q({name:"grain",label:"Rolling direction against the bend lines",value:e.
grain,wrong:I(t,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...e,grain:s})})}var gm,wm=g(()=>{y();Kt();qn();dn();J();rt();gm={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:x`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:x`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:x`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var _m,ym=g(()=>{y();Pi();Ci();_m=ia(class extends ls{constructor(){super(...arguments),this.key=d}render(e,t){
return this.key=e,t}update(e,[t,n]){return t!==this.key&&(la(e),this.key=t),n}})});function vm(e,t,n){let s=e.bends.length>=Ul;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(zl(e,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${e.flats.map((o,a)=>i`${cv(e,a,t,n)}${a<e.bends.length?dv(e,a,t,n):d}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(zl(e,"right"),{focus:`flats_mm.${e.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${Ul} bends.</p>`:d}`}function cv(e,t,n,s){let o=`flats_mm.${t}`;
return i`<li class="flat-row">
    ${A({next:!0,name:o,label:`Flat ${t+1}`,value:e.flats[t],wrong:I(n,o),change:a=>s(Yu(e,t,a))})}
  </li>`}function dv(e,t,n,s){let o=e.bends[t],a=`bends.${t}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([h])=>h===a||h===`${a}.kind`||h===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${t+1}>
    <span class="badge-mark" aria-hidden="true">${t+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:A({next:!0,name:l,label:`\
Bend ${t+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:I(n,l),change:h=>s(Kn(e,t,{angle:h}))})}
      ${Y({name:`${a}.direction`,label:`Bend ${t+1} turns`,value:o.direction,options:lv,change:h=>s(Kn(e,t,{direction:h===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(h=>i`<p class="wrong" data-test="wrong-${a}">${h}</p>`)}
    ${o.kind==="open_hem"?hv(e,t,n,s):d}
    ${_m(t,pv(e,t,n,s))}
  </li>`}function hv(e,t,n,s){let o=`bends.${t}.hem_gap_mm`;return A({next:!0,name:o,label:"Clear gap inside",
unit:e.unit,value:e.bends[t].gap,wrong:I(n,o),change:a=>s(Kn(e,t,{gap:a}))})}function pv(e,t,n,s){let o=e.bends[t],
a=`bends.${t}.inside_radius_mm`;return i`<details class="bend-more">
    <summary>
      <span class="unseen">Bend ${t+1}: </span>${o.radius?`Radius ${o.radius}`:"Radius"},
      ${Wn(o)||"tools"}, kind, remove
    </summary>
    ${o.kind==="bend"?A({next:!0,name:a,label:"Inside radius wanted",unit:e.unit,hint:"Empty: what the tools g\
ive.",value:o.radius,wrong:I(n,a),change:r=>s(Kn(e,t,{radius:r}))}):d}
    ${dl(`bends.${t}`,o,n,r=>s(Kn(e,t,r)))}
    ${Zu(e,t)||o.kind!=="bend"?q({name:`bends.${t}.kind`,label:"Kind",value:o.kind,options:rr,change:r=>s(Kn(e,
t,{kind:r}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
    <button
      type="button"
      class="button wide"
      data-test="remove-bend-${t+1}"
      ?disabled=${e.bends.length<2}
      @click=${()=>s(Ju(e,t),{focus:`flats_mm.${t}`,undo:`Bend ${t+1} and flat ${t+2} are out.`})}>
      Remove bend ${t+1} and flat ${t+2}
    </button>
  </details>`}var lv,km=g(()=>{y();ym();So();dn();J();$s();Dn();rt();lv=[["up","↑ up"],["down","↓ down"]]});function Sm(e,t,n){let s=e.wishes??To(),o=c=>n({...e,wishes:{...s,...c}}),a=e.box?zn(e.box).map((c,h)=>[String(
h+1),`Bend ${h+1}: ${c}`]):e.bends.map((c,h)=>[String(h+1),`Bend ${h+1}`]),r=e.box?Bu(e.box).map(c=>c[0].toUpperCase()+
c.slice(1)):e.flats.map((c,h)=>`Flat ${h+1}`),l=pr(s);return i`<details class="wishes" data-test="wishes">
    <summary>
      <span>Limits on the order: <b>${l||"none"}</b></span>
    </summary>
    <div class="fields">
      ${q({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:I(t,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${q({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:I(t,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${br("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${br("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${br("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,h)=>br(`wishes.flat-${h+1}`,c,s.critical_flats.includes(h+1),p=>o({critical_flats:uv(s.critical_flats,
h+1,p)})))}
      </div>
      ${I(t,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${A({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:e.unit,hint:"Emp\
ty: the usual.",placeholder:z(Dl),value:s.margin,wrong:I(t,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function br(e,t,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${e}
      data-test=${e}
      .checked=${xe(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${t}</span
    ></label
  >`}var Zl,xm,uv,Tm=g(()=>{y();Kt();qn();E();ur();J();rt();Zl=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],xm={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};uv=(e,t,n)=>[...e.filter(s=>s!==t),...n?[t]:[]].sort((s,o)=>s-o)});function Om(e,{metals:t,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...t.some(({code:p})=>p===e.metal)?
[]:[[e.metal,e.metal?`${e.metal} (not in the shop)`:"Choose"]],...t.map(({code:p,name:u})=>[p,u])],{box:h}=e;return i`${Y(
{name:"shape",label:"What it is",value:h?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:p=>r(mr(e,p==="box"))})}
    ${A({next:!0,name:"title",label:"Name of the part",value:e.title,wrong:I(a,"title"),change:p=>r({...e,title:p})})}
    ${q({name:"metal",label:"Metal",value:e.metal,options:c,wrong:I(a,"metal"),change:p=>r({...e,metal:p})})}
    <div class="fields">
      ${A({next:!0,name:"thickness_mm",label:"Thickness",unit:e.unit,placeholder:"3 or 16 ga",hint:s?mv(s,e.thickness):
"",value:e.thickness,wrong:I(a,"thickness_mm"),change:p=>r({...e,thickness:p})})}
      ${h?d:A({next:!0,name:"bend_length_mm",label:"Bend length",unit:e.unit,value:e.length,wrong:I(a,"bend_le\
ngth_mm"),change:p=>r({...e,length:p})})}
    </div>
    ${h?i`${um({...e,box:h},a,r)}
            <h2>More, if it matters</h2>
            ${Jl(e,r)}
            ${s||e.order?Xl(e,s?.order?.sequence,a,r):d}`:i`<h2>Section, left to right <small>${e.unit}</small></h2>
            ${Jl(e,r)} ${vm(e,a,r)}
            <h2>More, if it matters</h2>
            ${bm(e,a,r)} ${$m(e,a,r)}
            ${Xl(e,s?.order?.sequence,a,r)}`}
    ${Sm(e,a,r)} ${op(e,n,a,r)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${xe(e.note)}
        @input=${p=>r({...e,note:p.target.value})}></textarea>
    </div>
    ${o?A({next:!0,name:"reason",label:"Why this change, for the history",value:e.reason??"",wrong:I(a,"reason"),
change:p=>r({...e,reason:p})}):d}`}function mv({part:e,thickness_gauge:t},n){return[/^[\d.,\s]+$/.test(n)?"":$(
w(e.thickness_mm,{digits:2})),t??""].filter(Boolean).join(", ")}function Ql(e){return e.box?["title","metal","\
thickness_mm",...Ts(e.box).map(([t])=>t),"box.relief_mm","box.gap_mm","order",...Zl,...cl,"note","reason"]:["t\
itle","metal","thickness_mm","bend_length_mm",...e.flats.map((t,n)=>`flats_mm.${n}`),...e.bends.flatMap((t,n)=>[
`bends.${n}.included_angle_deg`,`bends.${n}.inside_radius_mm`,...t.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:
[],`bends.${n}.die`,`bends.${n}.punch`]),...e.holes.flatMap((t,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,
`holes.${n}.diameter_mm`]),"grain","order",...Zl,...cl,"note","reason"]}function wr(e){if(e.startsWith("box"))
return Fu(e);let[t,n,s]=e.split(".");return t==="tools"?n==="die"?"Die":"Punch":t==="wishes"?xm[n]??"Limits on\
 the order":n===void 0?Mm[t]??t:`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[t]??t} ${Number(n)+1}${s?`, ${Mm[s]??
s}`:""}`}function Am(e){let t=e.target;if(e.key!=="Enter"||!(t instanceof HTMLInputElement))return;e.preventDefault();
let n=[...t.form.querySelectorAll("input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(t)+
1).find(o=>o.checkVisibility());s instanceof HTMLElement&&s.focus()}var Mm,ec=g(()=>{y();Kt();E();dn();qn();fm();
J();wm();Dn();km();Tm();rt();Mm={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend leng\
th",grain:"Rolling direction",order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"\
gap",flat:"flat",position_mm:"place",diameter_mm:"size",die:"die",punch:"punch"}});function Lm({dimensions:e=[]}){let t=e.filter(({error_mm:o})=>o!==null);if(!t.length)return d;let{basis:n,basis_said:s}=t[0];
return i`<h3>Expected tolerance of each flange</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${t.map(gv)}
    </ul>
    ${n?i`<p class="hint" data-test="sizes-basis">${s?ye(s):n}</p>`:d}`}function gv({flat:e,flat_name:t=`flat ${e}`,
wanted_mm:n,error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${e}>
    <b>${t[0].toUpperCase()}${t.slice(1)}</b> ${$(w(n))}
    <b>± ${$(fv(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:d}.
  </li>`}var fv,Em=g(()=>{y();E();G();fv=e=>C()==="in"?{text:Q(e/Xe,3),unit:"in"}:w(e,{digits:2})});function _r(e,t){if(!Yn(e))return d;let{order:n}=e,[s,o]=$v(e),a=!!e.part?.order?.length,r=a?t.free():d,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${k(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${Nm(n.sequence)}
          </p>`:d}
    ${bv(n.blocked??[])} ${wv(n.remedies??[])} ${_v(n.wishes)}
    ${r===d?d:i`<div class="buttons">${r}</div>`}
    ${yv(n.alternatives,t)} ${hu(e)} ${Lm(e)}
  </div>`}function $v({order:e,checks:t}){let n=s=>t.some(o=>o.code===s);return e.proven?["ok","Clear on paper"]:
n("no-order")?["stop","No order"]:t.some(({level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the\
 way"]:n("order-not-found")?["caution","None found"]:n("clearance-not-checked")?["caution","Not checked"]:["ca\
ution","Not fully checked"]}function Nm(e){return i`<span class="run" role="img" aria-label="bends ${e.join(",\
 ")}"
    >${e.map(t=>i`<span class="badge-mark" aria-hidden="true">${t}</span>`)}</span
  >`}function bv(e){return e.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${e.map(({bend:t,words:n})=>i`<li><b>Bend ${t}</b> ${n}</li>`)}
    </ul>`:d}function wv(e){return e.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${e.map(({template:t,numbers:n})=>i`<li>${ot(t,n)}</li>`)}
    </ul>`:d}function _v(e){return e.length?i`<h3>What each limit costs</h3>
    <ul class="order-list" data-test="wish-costs">
      ${e.map(({wish:t,words:n})=>i`<li data-wish=${t}>${n}</li>`)}
    </ul>`:d}function yv(e,{use:t}){return e.length?i`<h3>Other orders that can be made</h3>
    <ul class="order-others" data-test="other-orders">
      ${e.map(({sequence:n,words:s})=>i`<li>${Nm(n)} <span class="compared">${s}</span> ${t(n)}</li>`)}
    </ul>`:d}var Yn,Pm,Cm,yr=g(()=>{y();G();re();Em();er();Yn=({order:e})=>Array.isArray(e?.wishes)&&Array.isArray(
e?.alternatives);Pm=e=>({use:t=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${t.join(", ")}"
      @click=${()=>e(t)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>e(
null)}>
      Let it choose
    </button>`}),Cm=e=>({use:t=>B("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${t.join(", ")}"
        href="/part?from=${e}&order=${t.join("-")}"
        >Use this order</a
      >`),free:()=>B("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${e}&order=free"
        >Let it choose</a
      >`)})});function Rm(e,{save:t,order:n}){return i`${Ra(e.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>
          ${Ya(e.blank)}${Es(e.blank,{pixels:innerWidth<1e3?innerWidth-24:560})}
        </div>
        <div>
          ${iu(e.blank)} ${vv(e.blank.bend_lines)}
          <div class="buttons">
            <button type="button" class="button" data-test="blank-svg" @click=${()=>t("svg")}>
              Drawing as SVG
            </button>
            <button type="button" class="button" data-test="blank-dxf" @click=${()=>t("dxf")}>
              Drawing as DXF
            </button>
          </div>
        </div>
      </div>
    </section>
    ${Yn(e)?i`<section>
            <h2>Order</h2>
            ${_r(e,n)}
          </section>`:d}
    <section>
      <h2>Fetch</h2>
      ${Ss(e.tools,e.steps.length,e.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${e.order&&!Yn(e)?i`<p data-test="order-words">${e.order.words}</p>`:d}
      ${Ja(e)}
      <div class="step-drawings">${e.steps.map(s=>kv(s,e.part.thickness_mm))}</div>
    </section>
    ${gs(e.checks)} ${on(e.checks)}`}function vv(e){let t=e.filter(n=>n.opinions?.length);return t.length===0?
d:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${t.length===1?`bend ${t[0].bend}`:`${t.length} bends`}
    </summary>
    ${t.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${$(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function kv(e,t){if(!e.drawing)return d;let n=w(e.gauge_x_mm,{digits:2}),s=Ca(e,{set_angle_deg:e.
set_angle_deg,firstHit:e.first_hit??null}),o=$(S(s)),a={close:!1,opening:e.v_opening_mm??8*t,gauge:n.text,angle:s,
near:Gn(e)?.near??null};return i`<figure class="step-drawing" data-step=${e.number}>
    <figcaption>
      <b>${e.number}. ${wt(e)}</b> ${Al(e)} ${bs(e)}
      <small data-test="origins">${yo(e.origin)}</small>
      ${e.motion?i`<span class="near-words ${e.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${xs(e)}</span
            >`:d}
    </figcaption>
    <div class="poses">
      ${$t(e.drawing,{...a,pose:"before",words:`Step ${e.number} before the bend: the sheet on the die, gauge \
at ${$(n)}.`})}
      ${xv(e,a)}
      ${$t(e.drawing,{...a,pose:"after",words:`Step ${e.number} at the bottom of the stroke, ${o}.`})}
    </div>
  </figure>`}function xv(e,t){let n=Gn(e);return n?$t(e.drawing,{...t,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${e.number}. ${xs(e)}`}):d}var Bm=g(()=>{y();hn();$o();E();Bn();bo();yr();Dn();Wa();Bt();rn()});function Im({plan:e,error:t,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${e&&o?"stale":""} ${a===d?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${e?.section?et(e,r?{pixels:innerWidth-56,tallest:215}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
d}
    ${a===d?i`<p class="picture-words" role="status" data-test="picture-words">
            ${Tv(e,t,n,s)}
          </p>`:r?a:d}
  </div>`}function Sv(e){let[t]=Object.entries(e.errors);return t?ll(wr(t[0]),t[1]):e.message}function Tv(e,t,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,r])=>r).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(t instanceof j)return"The shop's server does not answer. What you type stays on this device.";if(t instanceof
O)return`Not right yet. ${Sv(t)}`;if(t)return String(t);if(!e)return n?"Working it out…":"";let o=e.blank.outline?
`Blank ${w(e.blank.length_mm,{digits:2}).text} × ${$(w(e.blank.width_mm,{digits:2}))}`:`Blank ${$(w(e.blank.length_mm,
{digits:2}))}`;return i`${o} ${e.worst==="ok"?d:k(e.worst)}`}var Wm=g(()=>{y();hn();F();E();G();ec();rt()});function Ov({seconds:e,deadline_s:t,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
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
        <dd data-test="looking-best">${s?i`<b>${Lv(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function Lv(e){return Av.filter(([n])=>e[n]).map(([n,s,o])=>`${e[n]} ${e[n]===1?s:o}`).join(", ")||
"no turning"}function Fm({plan:e,progress:t,stopped:n},{cancel:s,again:o,back:a}){return t?Ov(t,s):n?Ev({again:o,
back:e?a:null}):d}function Ev({again:e,back:t}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
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
  </section>`}var Mv,Dm,Av,Nv,Pv,jm,Hm=g(()=>{y();Mv=.6,Dm=({seconds:e})=>e>=Mv;Av=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];Nv="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",Pv="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",jm=e=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${e?Pv:Nv}
  </div>`});var Gm={};ne(Gm,{show:()=>Cv});async function Cv(e){let t=so(e.query.get("from")??"").slice(0,7),n=t?"cards.re\
vise":"cards.create";e.title(t?`Edit ${W(t)}`:"New part"),e.render(Me(t?"Fetching the card…":"Looking into t\
he shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([le("metals",e.signal),le("dies",e.signal),
le("punches",e.signal)]),r=await Rv(t,s,e.signal);!t&&e.query.get("shape")==="box"&&(r.form=mr(r.form,!0));let l={
...r,plan:null,planned:null,progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,
kept:!0},c=Et(async(D,pe)=>(await Wc("/plan",Ls(D),{signal:pe,tell:h})).plan,({question:D,answer:pe,error:lt=null})=>{
pe&&Object.assign(l,{plan:pe,planned:D}),Object.assign(l,{error:lt,busy:!1,progress:null,summary:l.summary&&lt!==
null}),ce()},e.signal,350);function h(D){Dm(D)&&(l.progress=D,ce())}function p(D=!1){let pe=Vl(l.form);if(!D&&
pe===l.key&&!l.error)return ce();Object.assign(l,{key:pe,busy:fr(l.form).length===0,progress:null,stopped:!1}),
l.busy?c.ask(l.form,{now:D}):(c.stop(),l.error=null),ce()}let u={cancel(){c.stop(),Object.assign(l,{busy:!1,progress:null,
stopped:!0,error:null}),ce()},again:()=>p(!0),back(){if(!l.planned)return;let D=l.form;Object.assign(l,{form:l.
planned,key:Vl(l.planned),stopped:!1}),l.kept=Rl(t,{form:l.form,base:l.base,newCode:l.newCode}),ce(),ee("The p\
art of this plan is in the boxes again.",{label:"Put mine back",act:()=>m(D)})}};function m(D,{focus:pe,undo:lt}={}){
let vt=l.form;l.form=D,l.kept=Rl(t,{form:D,base:l.base,newCode:l.newCode}),p(),pe&&requestAnimationFrame(()=>_o(
pe)),lt&&ee(lt,{label:"Put it back",act:()=>m(vt)})}function f(D){m({...l.form,order:D},{undo:D?`Order ${D.join(
", ")} is yours now.`:"The planner chooses the order."})}function b(D){history.replaceState(history.state,"",t?
`/part?from=${t}`:"/part"),f(gr(D))}async function _(D){let[pe]=fr(l.form);if(pe){l.summary=!0,ce(),_o(pe[0]);
return}Object.assign(l,{saving:!0,clash:null,taken:""}),ce();try{let ze=await D();if("saved"in ze)return T(ze.
saved);"stale"in ze?l.clash=ze.stale:l.taken=ze.taken}catch(ze){l.error=ze,l.summary=!0}l.saving=!1,ce();let lt=l.
error instanceof O?l.error.errors:{},vt=Ql(l.form).find(ze=>Object.keys(lt).some(Ac=>Ac===ze||Ac.startsWith(`${ze}\
.`)));vt&&_o(vt)}function T(D){Bl(t);let pe=D.revision===l.base?.revision;ee(pe?"Nothing was changed, so nothi\
ng was saved.":`Card ${W(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),ge(`/c/${D.code}`)}let L=()=>fe(
n)&&_(()=>l.base?tm(l.form,l.base):ql(l.form,l.newCode)),P=()=>(l.newCode=Ei(),_(()=>ql(l.form,l.newCode)));function v(){
Bl(t);let D=l.form;Object.assign(l,{restored:!1,plan:null,planned:null,clash:null,...Um(l.card,s)}),p(!0),ee(t?
"The card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>m(D)})}function N(D){let pe=l.form;
Object.assign(l,{clash:null,base:tc(D)}),m(Mo(D.part,D.note)),ee("What is saved is in the boxes now.",{label:"\
Put mine back",act:()=>m(pe)})}async function Z(D){try{await Dc(`/blank.${D}`,Ls(l.form),`${l.form.title.trim()||
"blank"}.${D}`)}catch(pe){ee(X(pe))}}function ce(){let D=l.error instanceof O?l.error.errors:{},pe=fr(l.form),
lt=Fm(l,u),vt=!l.busy&&!l.stopped&&!pe.length&&!l.error;e.render(i`<h1>
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
        ${l.clash?dm(l.clash,l.form,{saveMine:()=>{l.base=tc(l.clash),L()},takeTheirs:()=>N(l.clash),saveAsNew:P}):
d}
        ${l.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${l.taken}">card ${W(l.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${P}>
                  Save this as another card
                </button>
              </div>`:d}
        ${l.summary?np(D,wr,Ql(l.form)):d}
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
            ${Im(l,{open:pe,stale:!vt,waiting:lt})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${Am}
              @submit=${ze=>{ze.preventDefault(),L()}}>
              ${Om(l.form,{metals:s,crib:{dies:o,punches:a},plan:vt?l.plan:null,editing:!!t,errors:D,change:m})}
              ${B(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${l.saving}>
                    ${l.saving?"Saving…":t?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?d:lt}
            <div class="part-plan ${vt||!l.plan?"":"stale"}" data-test="plan">
              ${l.plan&&!vt&&!l.busy?i`<p class="stale-note">
                      ${l.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:d}
              ${l.plan?Rm(l.plan,{save:Z,order:Pm(f)}):jm(!!l.form.box)}
            </div>
          </div>
        </div>`),l.busy||e.ready()}p(!0);let Bo=e.query.get("order");Bo&&b(Bo)}function Um(e,t){return e?{form:Mo(
e.part,e.note),base:tc(e)}:{form:Gl(t[0]?.code??""),base:null}}async function Rv(e,t,n){let s=Ou(e),o=null;try{
e&&(o=await Tt(e,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.newCode,card:o,restored:!0}:
{...Um(o,t),newCode:Ei(),card:o,restored:!1}}var tc,Vm=g(()=>{y();F();Ie();de();me();fo();it();Au();dn();om();
Te();Be();de();re();hm();ec();yr();Bm();Wm();Hm();Re();rt();tc=e=>({code:e.code,etag:e.etag,revision:e.revision,
revision_id:e.revision_id})});async function zm(e,t){if(!navigator.mediaDevices?.getUserMedia)throw new Jn(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(Bv)}catch(o){throw new Jn(Iv[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return e.aborted&&s(),e.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",t),n}function qm(e){return!!e.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function Km(e,t){await e.
getVideoTracks()[0].applyConstraints({advanced:[{torch:t}]})}var Jn,Bv,Iv,Ym=g(()=>{Jn=class extends Error{constructor(t){
super(t),this.fault=t}},Bv={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
Iv={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function Zm(){return vr??=Dv(),vr.catch(()=>vr=void 0),vr}async function Dv(){let e=await Fv(),t=e??await Jm(),
n={own:!!e,async read(s){try{return await t.detect(s)}catch(o){if(t!==e)throw new Cs(String(o));return t=await Jm(),
n.read(s)}}};return n}async function Fv(){let e=globalThis.BarcodeDetector,t=await e?.getSupportedFormats().catch(
()=>[]);return e&&t?.includes("qr_code")?new e(Xm):null}async function Jm(){try{let{BarcodeDetector:e,prepareZXingModule:t}=await import("/vendor/barcode-detector/ponyfill.js");
return await t({overrides:{locateFile:()=>Wv},fireImmediately:!0}),new e(Xm)}catch(e){throw new Cs(String(e))}}
var Cs,Wv,Xm,vr,Qm=g(()=>{Cs=class extends Error{},Wv="/vendor/zxing-wasm/zxing_reader.wasm",Xm={formats:["qr_\
code"]}});function tf(e){let t=Uv(e.trim()),n=t?jv.exec(t.pathname)?.[1]:Hv.exec(e.trim())?.[0];if(!n)return{kind:"other",
code:"",words:Vv(e,t)};let{code:s,whole:o,fault:a}=ue(Gv(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${nc(W(s))} is\
 not a card code. ${r}`}}function Uv(e){if(!URL.canParse(e))return null;let t=new URL(e);return/^https?:$/.test(
t.protocol)?t:null}function Gv(e){try{return decodeURIComponent(e)}catch{return e}}function Vv(e,t){return t?`\
It leads to ${nc(t.host)}, not to a card.`:e.trim()?`It says “${nc(e.trim())}”, which is not a card code.`:
"It holds nothing that can be read."}var jv,Hv,ef,nc,nf=g(()=>{de();jv=/^\/c\/([^/]+)\/?$/i,Hv=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
ef=40;nc=e=>e.length>ef?`${e.slice(0,ef)}…`:e});async function af(e,t,n,s){for(;!s.aborted;){if(e.readyState>=e.HAVE_CURRENT_DATA){let o=await t.read(e);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,zv))}}function rf(e,t,n){let o=e.filter(l=>of(l,t,t)).map(l=>({...tf(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if(sf(a))return a[0];let r=a.
filter(l=>of(l.mark,t,n));return r.length>0&&sf(r)?r[0]:"several"}function of({boundingBox:e},t,n){let s=t.getBoundingClientRect(),
o=Math.max(s.width/t.videoWidth,s.height/t.videoHeight),a=s.x+s.width/2+(e.x+e.width/2-t.videoWidth/2)*o,r=s.y+
s.height/2+(e.y+e.height/2-t.videoHeight/2)*o,{left:l,right:c,top:h,bottom:p}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=h&&r<=p}var zv,sf,lf=g(()=>{nf();zv=60;sf=e=>e.every(t=>t.code===e[0].code)});function cf(e,t){let{title:n,words:s,again:o}=qv[e];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${e}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${t}>Try again</button>`:d}
  </section>`}var sc,qv,df=g(()=>{y();sc=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,qv={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${sc}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${sc}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${sc}`,again:!0}}});var pf={};ne(pf,{show:()=>Xv});async function Xv(e){e.title("Scan a label");let t={fault:null,stream:null,lamp:null,
says:hf},n=_a(),s=await Ft().catch(()=>[]),o=new AbortController,a=()=>e.render(tk(t,{again:h,lamp:p},()=>ya(n,
s,a,"Seven characters, capitals or not."))),r=u=>{Object.assign(t,u),a()},l=()=>{o.abort(),Object.assign(t,{stream:null,
lamp:null})},c=u=>{l(),u instanceof Jn?r({fault:u.fault}):u instanceof Cs?r({fault:"no-decoder"}):e.render(qt(
u)),e.ready()};async function h(){l();let{signal:u}=o=new AbortController;r({fault:null,says:hf});try{let[m,f]=await Promise.
all([zm(u,()=>c(new Jn("busy"))),Zm()]);if(u.aborted)return;r({stream:m,lamp:qm(m)?!1:null,says:Kv});let b=document.
querySelector(".scan-view video"),_=document.querySelector(".scan-frame");b.play().catch(()=>{}),e.ready();let T=Zv(
L=>r({says:L}),u);await af(b,f,L=>T(rf(L,b,_)),u)}catch(m){u.aborted||c(m)}}async function p(){if(!t.stream)return;
let u=!t.lamp;await Km(t.stream,u).then(()=>r({lamp:u}),()=>r({lamp:null}))}e.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():h(),{signal:e.signal}),h()}function Zv(e,t){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>Jv&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?e(Yv):a.kind==="card"?await ek(a.code,e,t):e(Qv(a)),s=performance.
now())}}function Qv({kind:e,words:t}){return{kind:"wrong",title:e==="slip"?"Not a valid code":"Not a card’s la\
bel",words:`${t} Still looking.`}}async function ek(e,t,n){let s=W(e);t({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await ch(e,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?ge(`/c/${e}`,{replace:!0}):t(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is valid, but this shop has no such card: it is another shop’s label. S\
till looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server does no\
t answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wrong",title:`${s}\
 could not be opened`,words:o}))}function tk({fault:e,stream:t,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${e??
s.kind}>
    <h1>Scan a label</h1>
    ${e?cf(e,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${t} aria-label="What the camera sees"></video>
            ${nk}
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
  </div>`}var hf,Kv,Yv,Jv,nk,uf=g(()=>{y();Ym();Ie();de();Qm();lf();Be();Ce();Di();df();Re();hf={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},Kv={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},Yv={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},Jv=2500;nk=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function mf(e,t,n){$f(e,t,n),Rp(e),$e?.link.move({code:t,step:n},{whatever:!0})}function kr(){$e?.end.abort(),
$e=null,xr(),Ao()}function ff(e,t){!$e||$e.at.code!==e||$e.at.step===t||($e.at.step=t,xr(),$e.link.move({code:e,
step:t}),Ao())}function gf(e){$e&&($e.at.step=e,$e.link.move({code:$e.at.code,step:e},{whatever:!0}))}function Sr(e,t){
document.addEventListener("bench",()=>e(Lo()),{signal:t})}function $f(e,t,n,s=null){$e?.end.abort();let o=new AbortController,
a={name:e,code:t,step:n,answers:null,late:!1,refused:""},r=Ua(e,s,{keepMs:sk,heard:l=>{if(l.code!==a.code)return kr();
a.step=l.step,xr(),Ao()},changed:({gone:l,answers:c,late:h,refused:p})=>{if(l)return kr();Object.assign(a,{answers:c,
late:h,refused:p}),Ao()}},o.signal);$e={at:a,link:r,end:o},xr(),Ao()}function xr(){try{$e?sessionStorage.setItem(
oc,JSON.stringify({name:$e.at.name,code:$e.at.code,step:$e.at.step})):sessionStorage.removeItem(oc)}catch{}}function Tr(){
if(!$e)try{let{name:e,code:t,step:n}=JSON.parse(sessionStorage.getItem(oc)??"{}");e&&t&&$f(e,t,n)}catch{}}var oc,
sk,$e,Lo,Ao,Mr=g(()=>{wl();an();oc="flangebook.on-bench",sk=5e3,$e=null,Lo=()=>$e?{...$e.at}:null;Ao=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Ae(e){let{fault:t}=ue(e);return i`<div class="state" data-test="bad-code">
    <h1>${W(e)} is not a card</h1>
    ${t||"A card code has seven characters, digits and letters without I, L, O and U."} ${ac}
  </div>`}function Xn(e,t){if(t instanceof j)return i`<div class="state" data-test="not-kept">
      <h1>${W(e)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${ac}
    </div>`;if(t instanceof O&&t.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${W(e)}</h1>
      The code is valid, but this shop has no card of that number. Look at the label again. ${ac}
    </div>`;throw t}async function yt(e,t){let{code:n}=e.params;try{await ut(n,t,e.signal)}catch(s){e.signal.aborted||
be(e,Xn(n,s))}}function be(e,t){e.title("No such card"),e.render(t),e.ready()}var ac,It=g(()=>{y();F();Ie();de();
ac=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function wf(e,{busy:t,fault:n,take:s,settings:o}){return e?.differs?i`<details class="freshness panel" data-test="fresh">
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
                <td>${bf(a,"saved")}</td>
                <td>${bf(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&fe("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
d}
    <p class="wrong" role="alert">${n}</p>
    ${B("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${t} @click=${s}>
        ${t?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:d}function bf(e,t){let n=t==="saved"?e.saved_value:e.fresh_value;return e.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(e.field)&&typeof n=="number"?$(Mt(e.field??"",n)):e[t]}var _f=g(()=>{y();Te();E();re()});function Eo(e){return e.refused?e.missing?"The shop was restored from a backup and does not know its card":`Re\
fused: ${e.refused}`:e.parked?"Saved here. The card was changed meanwhile: to resolve":e.late?`Saved here, not\
 yet in the shop. ${e.late}`:"Saved here, not yet in the shop. Waiting to be sent"}function yf(e){let t=e.here??
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
            ${ok(t.length,n.length>0)}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:d}
          </p>`:d}
  </section>`}function ok(e,t){let n=e===1?"One change of this card waits":`${e} changes of this card wait`;return t?
`${n} until the other one is resolved.`:`${n} and ${e===1?"is sent automatically":"are sent automatically"}.`}
function Or(e){return e==="shop"?"Saved in the shop.":e==="here"?"Saved here, not yet in the shop. It is sent \
automatically.":e==="settle"?`The card was changed meanwhile. Both are kept: ${fe("cards.revise")?"decide whic\
h holds.":"the owner decides which holds."}`:"Nothing was changed."}var Rs=g(()=>{y();Te();G();re()});async function Ar(e,t){try{Bs=(await jn(e)).map(({name:n})=>n),e.aborted||t()}catch{}}function Lr(e,t,{draw:n,
start:s}){let o=Lo();if(o?.code===e)return ak(o,t);if(!Bs.length)return d;let a=[vf,Cp()].find(r=>Bs.includes(
r))??Bs[0];return i`<section class="show-on-bench" aria-label="Press screen" data-test="show-on-bench">
    ${Bs.length>1?q({name:"bench",label:"Press screen",value:a,options:Bs.map(r=>[r,r]),change:r=>{vf=r,n()}}):
d}
    <button
      type="button"
      class="button"
      data-test="put-on-bench"
      @click=${()=>{mf(a,e,t),n(),s?.()}}>
      Show on ${Hn(a)}
    </button>
  </section>`}function ak(e,t){let n=Hn(e.name);return i`<section
    class="show-on-bench on"
    aria-label="Press screen"
    data-test="on-bench"
    data-bench-step=${e.step}>
    <p role="status">${rk(e,n)}</p>
    ${e.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>gf(t)}>
            Show step ${t} there
          </button>`:d}
    <button type="button" class="button" data-test="off-bench" @click=${kr}>Stop</button>
  </section>`}function rk({answers:e,late:t,refused:n},s){return e===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:t?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var Bs,vf,rc=g(()=>{y();an();Mr();J();Bs=[],vf=""});function Er(e){let{drawing:t}=e,n=Gn(e),s=Ka(e),o=ik(t,e.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${ic("before","before",kf(t.before),t,o)}
    ${n?ic("during",s?el(s).join(" "):"half way",n.shown,t,o,s):d}
    ${ic("after","after",kf(t.after),t,o)}
  </div>`}function ik(e,t,n){let[s,o,a,r]=Ze([e.before.sheet,e.after.sheet]),l=t??(a-s)/6,[c,h]=n?Rn(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,e.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,h-l),high:Math.max(r+.3*l,2*l,h+l)}}function ic(e,t,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${e}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${Oe(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(h=>x`<path class="tool" d=${h}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?lk(c,a-o):d}
    </svg>
    <figcaption data-test="small-${e}">${t}</figcaption>
  </figure>`}function lk(e,t){if(!Na(e,t))return x`<path class="ring" d=${co([e.on_sheet,e.on_tool])}/>`;let[n,
s]=Rn(e);return x`<circle class="ring" cx=${n} cy=${-s} r=${t*.05}/>`}var kf,lc=g(()=>{y();Bt();tl();tn();kf=({
sheet:e,ram:t,holder:n,punch:s,gauge:o})=>({sheet:Oe(e),tools:[t,n,s].map(Oe).filter(Boolean),down:0,gauge:Oe(
o),back:0})});function Nr(e,t,n,s){let o=[...e].sort((h,p)=>h[t]-p[t]);if(o.length<2||n<o[0][t]-.002||n>o[o.length-1][t]+.002)
return null;let a=o.findIndex(h=>h[t]>n),r=a<0?o.length-1:Math.max(a,1),[l,c]=[o[r-1],o[r]];return l[s]+(n-l[t])/
(c[t]-l[t])*(c[s]-l[s])}var cc=g(()=>{});function Po(e){let t=e.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(t))return null;
let n=Number(t);return n>0&&n<180?n:null}function Co(e){let t={},n={},s=e.places==="one"?[["measured_deg",e.one]]:
[["left_deg",e.left],["middle_deg",e.middle],["right_deg",e.right]];for(let[o,a]of s){if(a.trim()==="")continue;
let r=Po(a);r===null?n[o]=[e.places==="one"?xf:ck]:t[o]=r}return!Object.keys(t).length&&!Object.keys(n).length&&
(n[s[0][0]]=[xf]),{angles:t,wrong:n}}function Sf(e,t,n){let s=uk(t),[o,a]=["set_angle_deg","punch_depth_mm"].map(
c=>Nr(e.corrections??[],"measured_deg",s,c));if(o===null||a===null||n.set_angle_deg===null||dk(e,s))return null;
let r=e,l={row:s,ends:s!==Pr(t),set_angle_deg:o+(n.set_angle_deg-r.set_angle_deg),punch_depth_mm:n.punch_depth_mm===
null?null:a+(n.punch_depth_mm-r.punch_depth_mm)};return pt(e,l)?l:null}function dk({first_hit:e,included_angle_deg:t},n){
return!!(e&&n>Math.max(t+hk,e.comes_out_deg_high))}function Pr(e){let t=Object.values(e);return t.reduce((n,s)=>n+
s,0)/t.length}function uk(e){let t=(e.left_deg+e.right_deg)/2;return e.middle_deg-t>=pk?t:Pr(e)}function Is(e){
return e?.correction?.set_angle_deg?e.correction:e?.table??null}function Wt(e){let t=[e.left_deg,e.middle_deg,
e.right_deg],s=t.some(o=>o!=null)?t.map(o=>$(S(o??null))).join(" / "):$(S(e.measured_deg));return e.flange_mm?
`${s}, flange ${mk(e.flange_mm)}`:s}var No,xf,ck,hk,pk,mk,pn=g(()=>{On();cc();E();No={one:"",left:"",middle:"",
right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""};xf="Type the angle between the f\
lats in degrees, such as 90.5. Square is 90.",ck="Degrees, such as 90.5";hk=5;pk=.3;mk=e=>typeof e=="string"?e:
$(w(e,{digits:2}))});function Ws(e,{waiting:t,step:n}={}){return i`<li class="row trial" data-test=${t?"waiting-trial":"trial"} data-id=${e.
id}>
    <div>
      <span class="lead">${Wt(e)}</span>
      <span class="code">Step ${e.step}</span>
      <span class="more">
        ${t?i`<b class="waits">${Eo(t)}</b> · `:d}
        ${[ps(e),Ot(e),fk(e),gk(e.correction,n)].filter(Boolean).join(" · ")}
        ${e.note?i`<span class="trial-note">${e.note}</span>`:d}
        ${t?.refused?i`<a href="/settings">Decide</a>`:d}
      </span>
    </div>
  </li>`}var fk,gk,dc=g(()=>{y();On();pn();E();Rs();Ge();fk=e=>e.set_angle_deg?`set at ${$(S(e.set_angle_deg))}`:
"",gk=(e,t)=>e?.set_angle_deg&&t&&pt(t,e)?`new setting ${$(S(e.set_angle_deg))}`:""});var Tf={};ne(Tf,{show:()=>$k});async function $k(e){let{code:t}=e.params;if(!ue(t).whole)return be(e,Ae(t));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{e.title(n.title||W(t)),e.render(bk(n,s,a,o))},a=async()=>{
Object.assign(s,{busy:!0,fault:""}),o();try{let l=R().name?{by:R().name}:{};n=await Mn(await ua(n,{replan:!0,reason:"\
Planned afresh with today’s tools",id:Fe(),...l})),s.fresh=null,H()}catch(l){s.fault=l instanceof O&&l.status===
412?"The card was changed meanwhile. Open it again first.":l instanceof Error?l.message:String(l)}s.busy=!1,o()},
r=async l=>{n=l,s.waiting=(await fn(t).catch(()=>[])).filter(c=>c.kind==="trial"),s.metal=cs((await Jt())?.metals,
n.part.metal),o(),e.ready()};we(()=>n&&o(),e.signal),Sr(()=>n&&o(),e.signal),document.addEventListener("sync",
async()=>n&&r(await ro(t).catch(()=>{})??n),{signal:e.signal});try{await ut(t,r,e.signal)}catch(l){e.signal.aborted||
be(e,Xn(t,l));return}Tr(),Ar(e.signal,o),s.fresh=await M("GET",`/cards/${t}/fresh`,{signal:e.signal}).then(({body:l})=>l,
()=>null),o()}function bk(e,t,n,s){let{plan:o}=e,a=o.checks.filter(c=>c.level!=="ok"),r=a.filter(c=>c.level===
"stop"),l=a.filter(c=>c.level!=="stop"&&!c.code.startsWith("general-"));return i`<article class="card" data-test="card" data-revision=${e.
revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${W(e.code)}</p>
        <h1 data-test="card-title">${e.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${_k(e,t.metal)}</p>
        ${e.note?i`<p class="card-note" data-test="card-note">${e.note}</p>`:d}
        ${e.archived?i`<p class="card-note"><b>Archived.</b> This card is not in use any more.</p>`:d}
      </header>
      ${yf(e)}
      ${r.length?i`<section class="card-stops" aria-label="Stop">${Ee(r)}</section>`:d}
      ${wf(t.fresh,{...t,take:n,settings:e.settings.length})}
      ${wk(e,r.length>0)}
      ${o.steps.length?Lr(e.code,1,{draw:s,start:()=>ge(`/c/${e.code}/step/1`)}):d}
      <section class="panel card-picture" aria-label="What it becomes">
        ${et(o,{tallest:innerHeight*.34})}
      </section>
      ${Sk(e)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${Ss(o.tools,o.steps.length,o.steps)}${Ya(o.blank)}${De(o)?Es(o.blank,{tallest:420}):d}
      </section>
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${Yn(o)?d:yk(o.order)}${kk(e)}
      </section>
      ${Yn(o)?i`<section class="panel card-order">
              <h2>Order</h2>
              ${_r(o,Cm(e.code))}
            </section>`:d}
      ${l.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${Ee(l)}
            </section>`:d}
      ${on(o.checks)}
      <section class="panel card-trials">
        <h2>Results</h2>
        ${xk(e,t.waiting)}
      </section>
    </div>
  </article>`}function wk({code:e,plan:t},n){return t.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${e}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${t.steps.length===1?"1 step":`${t.steps.length} steps`}</small>
    </a>
  </div>`:d}function _k({part:e,plan:t},n){let s=t.thickness_gauge?` (${t.thickness_gauge})`:"",o=e.bends.length===
1?"1 bend":`${e.bends.length} bends`,a=De(t)?`box ${Un(t.folded)}`:`${U(e.bend_length_mm)} ${C()} long`;return`${n}\
, ${U(e.thickness_mm)} ${C()}${s}, ${a}, ${o}`}function vk(e,t){let{gauge_x_mm:n}=nt(e,t);return n===null?"no \
gauge":`gauge at ${$(w(n))}`}function kk(e){return i`<ol class="rows" data-test="step-list">
    ${e.plan.steps.map(t=>i`<li class="row">
          <a href="/c/${e.code}/step/${t.number}">
            <span class="lead">${t.number}. ${wt(t)} ${t.direction}</span>
            <span class="code">${$(S(t.included_angle_deg))}</span>
            <span class="more">${vk(e,t)}</span>
            ${t.turn_over||t.turn_end||t.turn_quarter?i`<span class="turn" data-test="turn">${ys(t)}</span>`:d}
            ${bt(t,{short:!0})}
            ${t.drawing?Er(t):d}
          </a>
        </li>`)}
  </ol>`}function xk(e,t){let n=[...e.trials].reverse().slice(0,3);return!n.length&&!t.length?i`<p data-test="no-trials">
      Nothing measured yet.${B("trials.keep"," After a bend, type the result.")}
    </p>`:i`<ul class="rows trials" data-test="trials">
    ${[...t].reverse().map(s=>Ws(s.body,{waiting:s}))}
    ${n.map(s=>Ws(s,{step:e.plan.steps[s.step-1]}))}
  </ul>`}function Sk({code:e}){return i`<nav class="card-links" aria-label="This card">
    ${oe(`/c/${e}/note`,i`<a class="button" href="/c/${e}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${e}/history" data-test="history">History</a>
    <a class="button" href="/c/${e}/label" data-test="label">Label</a>
    <a class="button" href="/c/${e}/print" data-test="print">Print</a>
    ${B("cards.revise",i`<a class="button" href="/part?from=${e}" data-test="edit">Edit</a>`)}
  </nav>`}var yk,Mf=g(()=>{y();F();Ie();de();me();Qt();Pe();Mr();Be();se();ve();E();It();G();bo();_f();Rs();vs();
re();yr();rn();rc();lc();Bt();dc();_s();hn();st();yk=e=>e?.words?i`<p class="order" data-test="order">${e.words}</p>`:
d});var Lf={};ne(Lf,{show:()=>Tk});async function Tk(e){let{code:t,step:n}=e.params;if(!ue(t).whole)return be(e,Ae(
t));let s=xo(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return e.render(Ak(o,n));e.title(`${o.title||t},\
 step ${r.number}`),e.render(Ek(o,r,()=>nr(o,r,s,a,e.signal),Lr(o.code,r.number,{draw:a})))};we(()=>o&&a(),e.signal),
Sr(()=>o&&Mk(o,Number(n),a),e.signal),document.addEventListener("sync",()=>o&&Ok(o),{signal:e.signal}),addEventListener(
"keydown",r=>o&&Lk(r,o,Number(n)),{signal:e.signal}),Tr();try{await ut(t,r=>{!o&&r.plan.steps[Number(n)-1]&&ff(
t,Number(n)),o=r,a(),e.ready()},e.signal)}catch(r){e.signal.aborted||be(e,Xn(t,r));return}Ar(e.signal,()=>o&&a())}
function Mk(e,t,n){let s=Lo(),o=s?.code===e.code&&s?.step!==t&&e.plan.steps[(s?.step??0)-1];o?ge(`/c/${e.code}\
/step/${o.number}`,{replace:!0}):n()}async function Ok(e){let t=await ro(e.code).catch(()=>{});t&&t.revision!==
e.revision&&ee(`This card is at revision ${t.revision} now.`,{label:"Show it",act:()=>St()})}function Lk(e,t,n){
e.altKey||e.ctrlKey||e.metaKey||e.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.test(e.target.tagName)||(e.key==="Arro\
wRight"&&ge(Of(t,n).href),e.key==="ArrowLeft"&&ge(Af(t,n).href))}function Of(e,t){let n=e.plan.steps.at(-1);return t<
e.plan.steps.length?{href:`/c/${e.code}/step/${t+1}`,label:"Next",more:`step ${t+1}`}:n.set_angle_deg===null||
!kt(`/c/${e.code}/trial/${t}`)?{href:`/c/${e.code}`,label:"Done: the card",more:""}:{href:`/c/${e.code}/trial/${t}`,
label:"Type the result",more:""}}function Ek(e,t,n,s){let{stops:o,watch:a}=tr(e,t),r=t.number===e.plan.steps.length,
l=Of(e,t.number);return i`<article class="step" data-test="step">
    ${Xa(e,t)} ${o.length?i`<div class="step-stop">${Ee(o)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${za(t,e.part.flats_mm.length)}${bt(t)}</div>
      <section class="step-set" aria-label="What to set">${sr(e,t)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-bench">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?Ee(a):d}
      </section>
      <section class="step-with" aria-label="Tools">
        ${uu(e.plan,t)} ${Va(e.plan,t)}
        ${yo(t.origin)?i`<p class="hint origins" data-test="origins">${yo(t.origin)}</p>`:d}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${Af(e,t.number).href} data-test="back">Back</a>
      ${r||t.set_angle_deg===null?d:oe(`/c/${e.code}/trial/${t.number}`,i`<a class="button" href="/c/${e.code}/trial/${t.
number}" data-test="came-out"
                >Type the result</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:d}</a
      >
    </nav>
  </article>`}var Ak,Af,Ef=g(()=>{y();Ie();de();it();Mr();Be();Te();se();Qt();It();_l();G();vs();re();Za();Wa();
rc();ln();Bt();or();Ak=(e,t)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${t}</strong>This card has ${e.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${e.code}">Open the card</a></span>
  </div>`;Af=(e,t)=>({href:t>1?`/c/${e.code}/step/${t-1}`:`/c/${e.code}`,label:"Back"})});function Nf(e,t,n,s){let o=e.gauged_flange;if(!o)return null;let a=Nr(o.rows,"measured_deg",t,"flange_mm");if(a===
null)return null;let r=n-a;if(Math.abs(r)>o.most_error_mm)return{gauge_x_mm:null,error_mm:r,words:"That flange\
 is further off than a gauge error can be. Check it before you set a new X.",to_check:Nk};let l=Math.abs(r)<=hc?
s:s-r,c=l>=o.x_low_mm&&l<=o.x_high_mm;return{gauge_x_mm:c?l:null,error_mm:r,words:c?"":"The gauge does not rea\
ch far enough to correct the flange.",to_check:[]}}var hc,Nk,Ds,Cr=g(()=>{cc();hc=.05;Nk=["Measure again, to t\
he face that the card's dimension goes to.","Check which flange was measured.","Read the gauge: did it stand a\
t the X of the card, and the sheet against it?"],Ds=({correction:e,gauge:t})=>e?.flange??t??null});function Cf(e,t,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(h,p,u,m={})=>A({name:p,label:u,value:a[h],wrong:r[p],
change:f=>Object.assign(a,{[h]:f}),...m}),c=n.used??nt(e,t);return i`<form
    class="trial-form"
    novalidate
    data-test="trial-form"
    @submit=${h=>{h.preventDefault(),s()}}>
    <div class="trial-main">
      <h2>Result <small>Wanted ${$(S(t.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:d}
      <div class="trial-angles ${a.places}">
        ${a.places==="one"?l("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[l("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),l("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),l("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${pc(a,o)}
      <div class="trial-more">
        ${n.byDepth?l("set","punch_depth_mm","Depth that was set",{unit:C(),placeholder:c.punch_depth_mm===null?
"":w(c.punch_depth_mm,{digits:2}).text,hint:Pf}):l("set","set_angle_deg","Angle that was set",{keys:"decimal",
unit:"°",placeholder:c.set_angle_deg===null?"":S(c.set_angle_deg).text,hint:Pf})}
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
  </form>`}var Pf,pc,uc=g(()=>{y();Ie();E();J();Pf="Leave it if it was set as shown.",pc=(e,t)=>Y({name:"place\
s",label:"Measured at",value:e.places,options:[["one","One place"],["three","Left, middle, right"]],change:n=>{
Object.assign(e,{places:n}),t()}})});function Rf(e){let t=Ds(e);return t?t.gauge_x_mm===null?Pk(t):i`<div class="set-figures" data-test="new-gauge">
      ${Ve("Gauge X now",w(t.gauge_x_mm,{digits:2}),"new-gauge-x")}
    </div>
    <p class="basis" data-test="gauge-basis">${Bf(t.error_mm)}</p>`:d}function Pk({error_mm:e,words:t,said:n,to_check:s}){
return s.length?i`<div class="no-setting" data-test="no-gauge" role="alert">
    <p>${k("stop")} <b>No new gauge X.</b> ${Bf(e)} No gauge is that far off.</p>
    <ol>
      ${s.map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`:i`<p data-test="no-gauge">${n?ye(n):t}</p>`}function Bf(e){return e===null?"":Math.abs(e)<=hc?"Flang\
e as wanted: leave the gauge.":`Flange ${_e(w(Math.abs(e),{digits:2}))} too ${e>0?"long":"short"}.`}function If(e){
let t=e?.crown;return t?i`<div class="crown" data-test="crown">
    <p>${Ck(t)}</p>
    ${t.shim?Rk(t.shim):d}
  </div>`:d}function Ck({middle_open_deg:e,shim:t,words:n}){return t?i`<b>The middle is ${_e(S(e))} more open than the ends.</b> First crown the middle
    by ${_e(w(t.middle_mm,{digits:2}))}, or shim the die:`:n}function Rk({strip_mm:e,lengths_mm:t}){let n=t.map(
o=>w(o,{digits:0}).text).join(", "),s=w(t[0],{digits:0}).unit;return i`<p data-test="shim">
    ${t.length===1?"1 strip":`${t.length} strips`} of
    ${_e(w(e,{digits:2}))} under the middle of the die, one on the other, ${n} ${s}
    long. Nothing at the ends. Then set what stands above, which is for the ends; bend again and measure.
  </p>`}var Wf,Df=g(()=>{y();Cr();E();G();ln();Wf=({thickness_mm:e})=>e?` Calculated for the ${_e(w(e,{digits:2}))}\
 that the sheet measures.`:""});function Ff(e,t,n,{again:s,keep:o}){let a=Is(n),r=t.number===e.plan.steps.length;return i`<div
    class="trial-result"
    data-test="trial-result"
    data-waits=${n.waits?"true":"false"}>
    <div class="trial-main">
      <h2>${Wt(n.trial)} <small>wanted ${$(S(t.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> ${n.late||"the shop does not answer"}.
              It is sent automatically.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?Ik(a):cu(t,n)}
      ${a?i`<p class="basis" data-test="basis">${Dk(n)}</p>`:d}
      ${n.question?Bk(e,n.question):d} ${Rf(n)}
      ${jk(n.correction)} ${If(n.correction)}
      ${a?B("cards.revise",Gk(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
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
  </div>`}function Dk({correction:e,table:t}){return e?`${e.what}${Fk(e)}${Wf(e)}`:`Worked out on this device,\
 from the card’s own table at ${$(S(t?.row??null))}. The shop works it out again when the result arrives.${t?.
ends?` ${Wk}`:""}`}function jk(e){let t=e?.tilt_mm_per_m;return t==null?d:i`<p data-test="tilt">
    Left and right differ: about ${Uk(Math.abs(t))},
    ${t>0?"the right end deeper":"the left end deeper"}.
  </p>`}function Gk(e,t){return e.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${e.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${e.words}
    </p>`:i`<div class="buttons">
      <button class="button" data-test="keep" ?disabled=${e.kept==="asking"} @click=${t}>
        ${e.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${e.words}</p>`}var Bk,Ik,Wk,Fk,Hk,Uk,jf=g(()=>{y();Df();
pn();E();G();El();re();ln();Bk=(e,t)=>i`<section class="panel urgent" data-test="question">
    <p>${k("unknown","Does not count")} ${t}</p>
    <p><a href="/shop/learned/${encodeURIComponent(e.part.metal)}">Say that it was right, or wrong</a></p>
  </section>`,Ik=e=>i`<div class="set-figures" data-test="new-setting">
    ${Ve("Angle now",S(e.set_angle_deg),"new-angle")}
    ${e.punch_depth_mm===null?d:Ve("Depth now",w(e.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`,Wk="The middle is more open: this is for the ends. The shop says then what shim takes it out; lay it\
 first.";Fk=({crown:e})=>e?.setting_for==="ends"?" This is for the ends; first correct the open middle, see be\
low.":"";Hk=3048,Uk=e=>C()==="in"?`${Q(e*Hk/1e3/Xe,3)} in over ten feet`:`${Q(e,2)} mm in each metre`});async function Hf(e,t,n,s){let o=Is(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await Zt(e,{settings:[...e.settings.filter(r=>r.step!==t.number),zk(t,o,n.trial,qk(e,t,n))]},{reason:`\
Step ${t.number} set from a piece measured at ${Wt(n.trial)}`});Object.assign(e,a.card),Object.assign(n,{kept:"\
kept",where:a.where,words:Vk(a)}),H()}catch(a){Object.assign(n,{kept:"no",words:X(a)})}s()}}function Vk({where:e,
card:t}){return e==="shop"?`Revision ${t.revision} of the card has it. Steps show it from now on.`:e==="settle"?
"The card was changed meanwhile. Both are kept: decide on the card which holds.":"Steps show it on this device\
 from now on; it is sent to the shop automatically."}var zk,qk,Uf=g(()=>{F();Qt();Cr();pn();ve();zk=(e,t,n,s)=>({
step:e.number,set_angle_deg:t.set_angle_deg,punch_depth_mm:t.punch_depth_mm,...s===null?{}:{gauge_x_mm:s},trial_id:n.
id,reason:`Piece measured at ${Wt(n)}`}),qk=(e,t,n)=>Ds(n)?.gauge_x_mm??e.settings.find(s=>s.step===t.number)?.
gauge_x_mm??null});var Gf={};ne(Gf,{show:()=>Yk});async function Yk(e){let{code:t,step:n}=e.params;if(!ue(t).whole)return be(e,Ae(
t));let s={typed:{...No},used:null,wrong:{},general:"",sending:!1,result:null,byDepth:!1},o,a=async()=>{let l=Kk.
includes((await Jt())?.press?.set_by);l===s.byDepth||s.typed.set||s.sending||s.result||(s.byDepth=l,o&&!e.signal.
aborted&&r())};document.addEventListener("sync",a,{signal:e.signal}),await a();let r=()=>{let l=o.plan.steps[Number(
n)-1];if(!l)return be(e,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${t}">Open the card</a>
        </p>`);e.title(`${o.title||t}: result`),e.render(Jk(o,l,s,r))};ht(()=>!s.result&&s.typed.one+s.typed.left+
s.typed.note?"Leave without saving what you measured?":null),await yt(e,l=>{s.sending||s.result||(o=l,r(),e.ready())})}
function Jk(e,t,n,s){let o=()=>Xk(e,t,n,s),a=()=>{let l=Zk(n);Object.assign(n,{typed:{...No,places:n.typed.places,
lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),s()},r=()=>Hf(e,t,n.result,s);return i`<article class="step trial-screen" data-test="trial-screen">
    ${Xa(e,t)}
    <div class="trial-body">
      ${n.result?Ff(e,t,n.result,{again:a,keep:r}):Cf(e,t,n,{save:o,draw:s})}
      <aside class="trial-aside" aria-label="Which bend">
        ${et(e.plan,{mark:t.bend})}
      </aside>
    </div>
  </article>`}async function Xk(e,t,n,s){if(n.sending)return;let{angles:o,wrong:a}=Co(n.typed),r=ex(e,t,n);if(r||
(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,{wrong:a,general:""}),
Object.keys(a).length||!r)return s(),at(a);let l=tx(e,t,o,r,n.typed);n.sending=!0,s();try{let{late:c,...h}=await sa(
{id:l.id,kind:"trial",code:e.code,body:l}),p=h.answer,u=p?.correction??null;n.result={trial:l,correction:u,table:p||
r.set_angle_deg===null?null:Sf(t,o,r),gauge:p?null:Qk(t,o,r,l.flange_mm),waits:!p,late:c??"",question:p?.question_said?
ye(p.question_said):"",kept:"no",words:""},p&&H()}catch(c){n.wrong=c instanceof O?c.errors:{},n.general=X(c)}n.
sending=!1,await is(),s(),at(n.wrong)}function Zk({result:e,used:t}){let n=Is(e),s=e&&(Ds(e)?.gauge_x_mm??e.trial.
gauge_x_mm??null);return n?{...n,gauge_x_mm:s??t?.gauge_x_mm}:null}function Qk(e,t,n,s){let o=$h(s);return o===
null||typeof n.gauge_x_mm!="number"?null:Nf(e,Pr(t),o,n.gauge_x_mm)}function ex(e,t,n){let{set_angle_deg:s,punch_depth_mm:o,
gauge_x_mm:a}=n.used??nt(e,t),r={set_angle_deg:s,punch_depth_mm:o,gauge_x_mm:a};if(n.typed.set.trim()==="")return r;
if(n.byDepth)return{set_angle_deg:null,punch_depth_mm:te(n.typed.set),gauge_x_mm:a};let l=Po(n.typed.set);return l===
null?null:{set_angle_deg:l,punch_depth_mm:null,gauge_x_mm:a}}function tx(e,t,n,s,o){let a={id:Fe(),revision:e.
revision,step:t.number,bend:t.bend,...n,made_at:new Date().toISOString()};return s.set_angle_deg!==null&&(a.set_angle_deg=
s.set_angle_deg),s.punch_depth_mm!==null&&(a.punch_depth_mm=s.punch_depth_mm),typeof s.gauge_x_mm=="number"&&(a.
gauge_x_mm=s.gauge_x_mm),o.flange.trim()&&(a.flange_mm=te(o.flange)),o.radius.trim()&&(a.radius_mm=te(o.radius)),
o.thickness.trim()&&(a.thickness_mm=te(o.thickness)),o.lot.trim()&&(a.lot=o.lot.trim()),o.note.trim()&&(a.note=
o.note.trim()),R().name&&(a.by=R().name),a}var Kk,Vf=g(()=>{y();F();Ie();de();me();Cr();pn();Pe();Be();rs();se();
ve();E();It();G();J();ln();uc();jf();hn();Uf();Kk=["depth","stop"]});function qf(e,t,n,s){return e.map(o=>i`<fieldset class="settle-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${Ro(o,o.before)}</small></legend>
        ${zf(o,"shop","In the shop",t,s)} ${zf(o,"yours",n,t,s)}
      </fieldset>`)}function zf(e,t,n,s,o){return i`<label class="settle-side" data-test=${t}>
    <span class="settle-whose"
      ><input
        type="radio"
        name=${e.name}
        value=${t}
        .checked=${s[e.name]===t}
        @change=${()=>o(e.name,t)} />
      ${n}</span
    >
    <span class="settle-value">${Ro(e,e[t])}</span>
  </label>`}function Ro({name:e},t){if(e==="archived")return t?"Archived":"In use";if(!e.startsWith("settings "))
return t||"nothing";if(!t)return"as planned";let n=t,s=n.punch_depth_mm===null||n.punch_depth_mm===void 0?"":`\
, depth ${$(w(n.punch_depth_mm,{digits:2}))}`;return`${$(S(n.set_angle_deg??null))}${s}`}var mc=g(()=>{y();E()});function Kf(e,t){return e.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${e.map(n=>nx(n,t))}
    </ol>
  </section>`:d}function nx(e,t){let n=os(e.changes,e.before,{...e.before,settings:e.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${e.settled_by?`Resolved by revision ${e.settled_by}`:oe(`/c/${t}/settle`,i`<a href="/c/${t}/settle">To resolve</a>`,
"To resolve")}
    </h3>
    <p class="more">${[ps(e),Ot(e)?`by ${Ot(e)}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${Ro(s,s.before)} to ${Ro(s,s.yours)}</li>`)}
    </ul>
  </li>`}var Yf=g(()=>{y();as();re();mc();Ge()});function Jf({title:e,note:t,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${e}</b>, ${$(w(n.thickness_mm,{digits:2}))},
      ${De(s)?Un(s.folded):`${$(w(n.bend_length_mm))} long`}${t?i`. ${t}`:d}
    </p>
    ${et(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${sx(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:d}
    ${Ja(s)} ${Ee(s.checks,{quiet:!0})}
  </div>`}function sx(e,t){let n={set_angle_deg:t.set_angle_deg??null,punch_depth_mm:t.punch_depth_mm??null};if(!e||
!pt(e,n))return"had a setting beyond its tools";let s=$(w(n.punch_depth_mm,{digits:2}));return`set at ${$(S(n.
set_angle_deg))}, depth ${s}`}var Xf=g(()=>{y();_s();hn();On();E();G();rn()});var Zf={};ne(Zf,{show:()=>ox});async function ox(e){let{code:t}=e.params;if(!ue(t).whole)return be(e,Ae(t));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>e.render(rx(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=u=>M("GET",`/cards/${t}/${u}`,{signal:e.signal}),[h,p]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);s.revisions=h.body.revisions,s.proposals=p.body.proposals,s.silent=
!1}catch(c){if(!(c instanceof j))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=null,o(),
!!s.open){try{let{body:h}=await M("GET",`/cards/${t}/revisions/${c}`,{signal:e.signal});s.open===c&&(s.snapshot=
h)}catch(h){s.open=0,ee(X(h))}o()}},l=async c=>{s.busy=!0,o();try{n=await ax(n,c),ee(`Revision ${c} is back, a\
s revision ${n.revision}.`),s.open=0,H(),await a()}catch(h){ee(h instanceof O&&h.status===412?"The card was ch\
anged meanwhile. Look at the history again.":X(h))}s.busy=!1,o()};we(()=>n&&o(),e.signal);try{await ut(t,async c=>{
n=c,e.title(`${n.title||W(t)}: history`),s.waiting=(await fn(t).catch(()=>[])).filter(h=>h.kind==="trial"),o()},
e.signal),await a(),o(),e.ready()}catch(c){e.signal.aborted||be(e,Xn(t,c))}}async function ax(e,t){let n=await Tt(
e.code);return ua(n,{restore_revision:t,reason:`Revision ${t} brought back`,id:Fe(),...R().name?{by:R().name}:
{}})}function rx(e,t,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${W(e.code)}</a></p>
      <h1>History of ${e.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${ix(e,t,n)}
      </section>
      ${Kf(t.proposals,e.code)}
      <section class="panel">
        <h2>Results</h2>
        ${cx(e,t)}
      </section>
    </div>
  </article>`}function ix(e,t,n){return t.silent?i`<p data-test="silent">
      This device has revision ${e.revision}, of
      ${ae(e.updated_at)}${e.updated_by?` by ${e.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:t.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${t.revisions.map(s=>lx(s,e,t,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function lx(e,t,n,{look:s,bringBack:o}){let a=e.revision===
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
    ${r?n.snapshot?Jf(n.snapshot):i`<p>Fetching it…</p>`:d}
  </li>`}function cx(e,t){return!e.trials.length&&!t.waiting.length?i`<p data-test="no-trials">Nothing measured yet.</p>`:
i`<ol class="rows trials" data-test="trials">
      ${[...t.waiting].reverse().map(n=>Ws(n.body,{waiting:n}))}
      ${[...e.trials].reverse().map(n=>Ws(n,{step:e.plan.steps[n.step-1]}))}
    </ol>
    ${e.trials_total>e.trials.length?i`<p>The newest ${e.trials.length} of ${e.trials_total}.</p>`:d}`}var Qf=g(
()=>{y();F();Ie();de();it();Pe();se();ve();It();G();re();Yf();Xf();dc();Ge()});var eg={};ne(eg,{show:()=>dx});async function dx(e){let{code:t}=e.params;if(!ue(t).whole)return be(e,Ae(t));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{e.title(`${n.title||W(t)}: not\
e`),e.render(px(n,s,{draw:o,save:()=>hx(n,s,o,e.signal)}))};ht(()=>s.typed?"Leave without saving what you type\
d?":null),await yt(e,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),
o(),e.ready())})}async function hx(e,t,n,s){if(t.sending)return;let[o,a]=[t.title.trim(),t.note.replace(/\r\n/g,
`
`).trim()];if(Object.assign(t,{wrong:o?{}:{title:["A card needs a title."]},general:""}),!o)return n(),at(t.wrong);
t.sending=!0,n();try{let{where:r}=await Zt(e,{title:o,note:a,archived:t.archived});if(t.typed=!1,ee(Or(r)),H(),
s.aborted)return;ge(r==="settle"&&kt(`/c/${e.code}/settle`)?`/c/${e.code}/settle`:`/c/${e.code}`)}catch(r){t.wrong=
r instanceof O?r.errors:{},t.general=X(r),t.sending=!1,n(),at(t.wrong)}}function px(e,t,{draw:n,save:s}){let o=a=>Object.
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
    ${In({name:"note",label:"Note",value:t.note,lines:5,wrong:t.wrong.note,change:a=>o({note:a})})}
    ${B("cards.revise",[A({name:"title",label:"Title",value:t.title,wrong:t.wrong.title,change:a=>o({title:a})}),
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
  </form>`}var tg=g(()=>{y();de();F();Qt();it();Be();Te();ve();It();re();J();Rs()});var ng={};ne(ng,{show:()=>ux});async function ux(e){let{code:t}=e.params;if(!ue(t).whole)return be(e,Ae(t));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{e.title(`${n.title||W(t)}: to resolve`),
e.render(mx(n,s,c))},a=async h=>{if(!h||s.sending)return;let p=[n?.etag,s.proposal?.id].join();n=h,[s.proposal]=
n.proposals;let{changes:u={},before:m={}}=s.proposal??{};s.rows=os(u,m,n),s.mine=!!(s.proposal&&await Ho(s.proposal.
id).catch(()=>{})),p!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),e.ready()},r=async()=>a(await Ri(t).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let h=await Zt(n,Fd(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Resolved"});ee(Or(h.where)),s.sending=!1,await r(),H()}catch(h){Object.assign(
s,{sending:!1,fault:X(h)}),o()}},choose:(h,p)=>{s.chosen[h]=p,o()},all:h=>{for(let{name:p}of s.rows)s.chosen[p]=
h;o()}};document.addEventListener("sync",r,{signal:e.signal}),await yt(e,async h=>a(await Ri(t).catch(()=>{})??
h))}function mx(e,t,n){return i`<article class="settle" data-test="settle-screen">
    <header>
      <p><a class="button" href="/c/${e.code}" data-test="to-card">‹ ${W(e.code)}</a></p>
      <h1>${t.proposal?"Two changes met":"Nothing to resolve"} <small>${e.title}</small></h1>
    </header>
    ${t.proposal?fx(e,t,n):i`<p data-test="settled">
            Every change of this card is resolved. Both sides are in its
            <a href="/c/${e.code}/history">history</a>.
          </p>`}
  </article>`}function fx(e,{proposal:t,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:p})=>!o[p]).
length,h=s?"Yours":t.by?`By ${t.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":t.by?`${t.by} changed`:"Somebody changed"} this card
      (${ps(t)}) while it was changed in the shop (revision ${e.revision},
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
            ${qf(n,o,h,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
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
    </div>`}var sg=g(()=>{y();F();as();de();Qt();it();Pe();ve();It();Rs();mc();Ge()});function og(e,t){let{plan:n}=e,s=Tx(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${$x(e,t)}
    <figure class="strip ${De(n)?"of-box":""}">
      <figcaption>
        Blank ${Rr(n.blank.length_mm)} × ${Rr(n.blank.width_mm)},
        ${$(io(n.blank.mass_kg))}.
        ${De(n)?gx(n):"Bend lines from the left end."}
      </figcaption>
      ${Es(n.blank,De(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${bx(n)} ${wx(e,s)} ${Ox(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function gx({blank:e}){let t=({bend:a})=>{let r=e.bend_lines.find(l=>l.bend===a);return`${a} ${U(
r.at_mm)}`},n=a=>e.lines.filter(r=>a.includes(r.side)).map(t).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,Ol(e),"Inside up."].filter(
Boolean).join(" ")}function $x(e,t){let{part:n,plan:s}=e;return i`<header>
    <div>
      <h2>${e.title}</h2>
      <p class="big-code" data-test="sheet-code">${e.display_code}</p>
      <p>
        <b
          >${t},
          ${Rr(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:d}</b
        >, ${De(s)?`box ${Un(s.folded)}`:i`bend length ${Rr(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${e.revision}, ${En(e.updated_at)}${e.updated_by?`, ${e.updated_by}`:""}.
      </p>
      ${e.note?i`<p class="note">${e.note}</p>`:d}
    </div>
    ${s.section?et({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):d}
    <img
      class="qr"
      src="/api/v1/cards/${e.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function bx(e){let t=n=>{let s=Ml(n,e.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:d};
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
            <td>${Sl(n)}</td>
            <td>${Tl(n)||"–"}</td>
            <td>${n.steps.length===e.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function wx(e,t){let n=e.part.flats_mm.length;return i`<table class="paper-steps">
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
      ${e.plan.steps.map(s=>_x(e,s,t.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function _x(e,t,n,s){let o=nt(e,t);return i`<tr data-test="sheet-step-${t.number}">
    <th scope="row">
      <span class="number">${t.number}</span> bend ${t.bend} ${t.side??""}
      ${t.direction}${t.operation&&t.operation!=="bend"?i`<br />${t.operation}`:d}
    </th>
    <td class="picture">
      ${vx(e.plan,t)}${t.drawing?Er(t):"no drawing"}${kx(t,e.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(o.gauge_x_mm).text}</b><br />R
      <b>${w(t.gauge_r_mm).text}</b>${xx(t)}
    </td>
    <td class="figures-cell">
      ${Lx(t,o)}<br />
      <span class="small"
        >${yx(t)}${Ex(o)?i`<br />from a first piece`:d}</span
      >
    </td>
    <td class="move">
      ${ys(t)}
      <span class="small"
        >${t.inside_face==="up"?"Top":"Bottom"} face
        up${t.gauged_end?`, ${vo(t,s)} to the gauge`:""}.</span
      >${bt(t,{short:!0})}
    </td>
    <td>${Sx(n)}</td>
    <td class="pen">
      <span
        >${t.included_angle_deg?$(S(t.included_angle_deg)).replace(".0°","°"):"flat"}
        wanted${o.firstHit?i`<br /><span data-test="sheet-first-hit">first ${Xh(o.firstHit)}</span>`:d}</span
      >
    </td>
  </tr>`}function yx(e){let t=Ea(e);return t===d?d:i`<span data-test="sheet-force">allow for ${t}</span>`}function vx(e,t){
let n=Qa(e,t);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${t.punch}${t.punch_turned?" reversed":""} over ${t.die}
      </div>`:d}function kx({segments_mm:e,punch:t,die:n},s){return e?[["punch",t],["die",n]].map(([a,r])=>{let l=s.
find(h=>h.kind===a&&h.code===r)?.segments_mm??[],c=e[a]??[];return!c.length||c.length===l.length?d:i`<div class="pieces" data-test="own-pieces">
      ${a} ${c.map(U).join(" + ")} only
    </div>`}):d}function xx({hits:e}){return e?i`<br /><span class="small"
          >${e.count} bumps, ${w(e.pitch_mm,{digits:2}).text} apart</span
        >`:d}function Sx(e){return fc.filter(t=>t!=="note").map(t=>({level:t,letters:e.filter(n=>n.level===t).
map(({letter:n})=>n)})).filter(({letters:t})=>t.length).map(({level:t,letters:n})=>i`<div class="mark">${k(t)} <b>${n.
join(" ")}</b></div>`)}function Tx(e){let t=new Map;for(let n of fc)for(let s of e.filter(o=>Se(o)===n)){let o=`${n}\
 ${s.template} ${s.do_template??""}`,a=t.get(o)??{letter:Mx(t.size),level:n,checks:[],steps:[]};a.checks.push(
s),a.steps.push(...s.steps??(s.step?[s.step]:[])),t.set(o,a)}return[...t.values()]}function Ox(e){return i`<div class="remarks" data-test="sheet-remarks">
    ${fc.map(t=>{let n=e.filter(s=>s.level===t);return n.length?i`<section data-level=${t}>
        <h3>${k(t)}</h3>
        <ul>
          ${n.map(({letter:s,checks:o,steps:a})=>i`<li>
                <b>${s}</b>
                ${a.length?i`<b>Step ${a.join(", ")}.</b> `:d}${Ax(o)}
              </li>`)}
        </ul>
      </section>`:d})}
  </div>`}function Ax(e){let{template:t,do_template:n=""}=e[0];return`${t} ${n}`.replace(/\{(\w+)\}/g,(s,o)=>[
...new Set(e.map(({numbers:a})=>_e(Mt(o,a[o]))))].join(" / ")).trim()}function Lx(e,{set_angle_deg:t,punch_depth_mm:n,
firstHit:s}){if(t===null&&e.die)return i`<b>no setting</b>`;let o=s?i` <span class="small" data-test="sheet-first">first hit</span>`:
d;return i`<b>${$(S(t))}</b>${o}<br />depth <b>${w(n,{digits:2}).text}</b>`}var Rr,fc,Mx,Ex,ag=g(()=>{y();_s();
hn();st();lc();Ie();E();gt();G();Bn();vs();rn();er();Bt();Ge();Rr=e=>$({text:U(e),unit:C()});fc=hs.filter(e=>e!==
"ok");Mx=e=>String.fromCharCode(97+e%26)+(e<26?"":String(Math.floor(e/26)+1));Ex=e=>e.fromTrial&&e.set_angle_deg!==
null});function Fs(e){return Y({name:"paper",label:"Paper",value:R().paper,options:[["A4","A4"],["Letter","Letter"]],
change(t){jt({paper:t==="Letter"?"Letter":"A4"}),e()}})}function js(e="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${e}
  </button>`}function Br(e,{lying:t=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${R().paper.toLowerCase()} ${t?"lying":"upright"}" data-test="sheet">
      ${e}
    </div>
  </div>`}var Ir=g(()=>{y();se();J()});var rg={};ne(rg,{show:()=>Nx});async function Nx(e){let{code:t}=e.params;if(!ue(t).whole)return be(e,Ae(t));let n,
s=[],o=async()=>{s=(await Jt())?.metals??s,n&&a()};function a(){e.title(`${n.title}, on paper`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${Fs(a)}${js("Print the card")}</div>
        ${Br(og(n,cs(s,n.part.metal)),{about:"The card as it prints"})}`)}we(()=>n&&a(),e.signal),document.addEventListener(
"sync",o,{signal:e.signal}),await o(),await yt(e,r=>{n=r,a(),e.ready()})}var ig=g(()=>{y();de();me();se();It();
ag();Ir()});var cg={};ne(cg,{show:()=>Px});async function Px(e){let{code:t}=e.params;if(!ue(t).whole)return be(e,Ae(t));let n=R().
units,s=lg[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){e.title(`Label of ${o.title}`),e.render(i`<p class="crumb screen-only"><a href="/c/${t}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${Y({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${lg.map(l=>Cx(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${oe("/labels",i`For office paper, lay them out <a href="/labels?codes=${t}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${Wr(t,s.size,n,"svg")}
          alt=""
          hidden />`)}await yt(e,l=>{o=l,r(),e.ready()})}function Cx(e,{size:t,words:n,print:s},o,a){let r=`la\
bel-${e.code}-${t}`;return i`<section class="panel label-panel" data-test="label-${t}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${Wr(e.code,t,o,"svg")}
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
        href=${Wr(e.code,t,o,"svg")}
        data-test="svg-${t}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${Wr(e.code,t,o,"png")}
        data-test="png-${t}"
        >PNG</a
      >
    </div>
  </section>`}var lg,Wr,dg=g(()=>{y();de();se();It();J();re();lg=[{size:"50x25",words:"50 × 25 mm, for a bin",
print:"small"},{size:"100x50",words:"100 × 50 mm, for a shelf or a door",print:"large"}];Wr=(e,t,n,s)=>`/api/\
v1/cards/${e}/label.${s}?size=${t}&units=${n}`});var hg={};ne(hg,{show:()=>Bx});async function Bx(e){e.title("Labels on a sheet"),e.render(Me("Fetching the car\
ds…"));let t=(await Wx(e.signal)).filter(b=>!b.archived);if(!t.length)return e.render(ke("No cards yet",B("c\
ards.create",i`Save a part as a card first. <a href="/part">New part</a>`))),e.ready();let n=new Set((e.query.
get("codes")??"").split(",").filter(b=>t.some(_=>_.code===b))),s="50x25",o=R().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=b=>new URLSearchParams({codes:[...n].join(","),size:s,paper:R().paper,units:o,skip:a.trim()||"0",page:String(
b)}),h=(b,_)=>`/api/v1/labels/sheet.${b}?${c(_)}`;async function p(){let b=String(c(1));if(!n.size)l={key:b,pages:[],
wrong:""};else try{let{body:_}=await M("GET",`/labels/sheet.json?${c(1)}`,{signal:e.signal});l={key:b,pages:Array.
from({length:_.pages},(T,L)=>L+1),wrong:""}}catch(_){l={key:b,pages:[],wrong:X(_)}}b===String(c(1))&&f()}let u=b=>{
b(),f(),p()},m=b=>u(()=>n.has(b)?n.delete(b):n.add(b));function f(){let b=t.filter(_=>`${_.code} ${_.title}`.toLowerCase().
includes(r.trim().toLowerCase()));e.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${t.length}</span>
              </h2>
              ${t.length>8?A({name:"find",label:"Find",value:r,change:_=>{r=_,f()}}):d}
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
              ${Y({name:"size",label:"Label size",value:s,options:Rx,change:_=>u(()=>s=_)})}
              ${Fs(()=>u(()=>{}))}
              ${Y({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:_=>u(()=>o=
_==="inch"?"inch":"mm")})}
              ${A({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:_=>u(()=>a=_)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${js(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(_=>Ix(_,l.pages.length,h))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}we(f,e.signal),f(),await p(),e.ready()}function Ix(e,t,n){let s=`labels-${e}`;return i`<figure class="label-sheet ${R().
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
  </figure>`}async function Wx(e){try{let t=[];for(;;){let{body:n}=await M("GET",`/cards?limit=100&offset=${t.
length}`,{signal:e});if(t.push(...n.cards),t.length>=n.total||!n.cards.length)return t}}catch(t){let n=await Ft().
catch(()=>[]);if(e.aborted||!n.length)throw t;return n}}var Rx,pg=g(()=>{y();F();se();Ce();J();re();Ir();Re();
Rx=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function ug(e){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${e.metal.name}</h2>
      <p>
        ${e.press?.name??"No press entered"}${e.press?i`, ${$(he(e.press.force_kn))}`:d}.
        Checked against ratings at a bend length of ${$(w(e.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${En(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${C()}</span></th>
          ${e.dies.map(t=>i`<th scope="col" data-test="die-${t.code}">
                V ${U(t.v_opening_mm)}<span class="sub">${t.code}</span>
                <span class="sub"
                  >${t.rating_kn_per_m===null?"rating ?":$(Le(t.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${e.rows.map(t=>i`<tr>
              <th scope="row">${U(t.thickness_mm)}<span class="sub">${t.gauge??""}</span></th>
              ${t.cells.map(Dx)}
            </tr>`)}
      </tbody>
    </table>
    ${jx()}
    <ul class="chart-words">
      ${e.words.map(t=>i`<li>${t}</li>`)}
    </ul>
  </article>`}function Dx(e){return e.usable?i`<td
    class="cell ${e.level}"
    data-level=${e.level}
    data-die=${e.die}
    title=${e.why}>
    <span class="first"
      ><span class="force">${Qe(e,"force_kn_per_m").text}</span>${e.level==="stop"?d:i`<span class="expected">${sn(
e,"force_kn_per_m").text}</span>`}${e.level==="ok"?d:k(e.level,Fx(e))}</span
    >
    ${e.level==="stop"?d:i`<span class="rest"
            >${w(e.min_flange_mm).text} · R ${w(e.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${e.die} title=${e.why}>
      <span aria-hidden="true">–</span><span class="unseen">${e.why}</span>
    </td>`}function Fx({level:e,limit:t,share_percent:n}){return e==="unknown"?"rating?":`${t??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(e==="stop"?"over":"near")}function jx(){let e=Le(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${e}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${k("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${k("caution","die 85 %")} over 80 % of a rating</li>
    <li>${k("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var mg=g(()=>{y();st();E();gt();G();Ge()});var fg={};ne(fg,{show:()=>Hx});async function Hx(e){e.title("Wall chart"),e.render(Me("Working out the chart…"));
let t=(await le("metals",e.signal)).items;if(!t.length)return e.render(ke("No metals yet",i`A chart needs one. ${B(
ie.metals,i`<a href="/shop/metals">Metals</a>`)}`)),e.ready();let n=e.query.get("metal")??t[0].code,s=e.query.
get("bend_length")??"",o=null,a=null,{ask:r}=Et(async(p,u)=>(await M("GET",`/chart?${l()}`,{signal:u,timeout:2e4})).
body,p=>{o=p.answer??o,a=p.error??null,h(),e.ready()},e.signal);function l(){let p=new URLSearchParams({metal:n});
return s.trim()&&p.set("bend_length_mm",te(s)),p}function c(){let p=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${p}`),r(null),h()}function h(){e.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${q({name:"metal",label:"Metal",value:n,options:t.map(({code:p,name:u})=>[p,u]),change:p=>{n=p,c()}})}
          ${A({name:"bend_length",label:"Checked at a bend length of",value:s,unit:C(),keys:"decimal",placeholder:C()===
"mm"?"1000":"39.37",change:p=>{s=p,c()}})}
          ${Fs(h)} ${js("Print the chart")}
        </div>
        ${a?qt(a):d}
        ${o?Br(ug(o),{lying:!0,about:"Wall chart as it prints"}):a?d:Me("Working out the chart…")}`)}we(h,e.
signal),r(null,{now:!0})}var gg=g(()=>{y();F();me();se();E();mg();J();re();Ir();Re();fo()});function $g(e,{fault:t,takeOut:n}){return i`<section class="panel" data-test="panel-benches">
    <h2>Press screens <span class="soft">${e.length}</span></h2>
    ${t?i`<p class="wrong" role="alert" data-test="bench-fault">${t}</p>`:d}
    ${e.length?i`<ul class="plain-list bench-list">
            ${e.map(s=>i`<li data-test="bench-row" data-name=${s.name}>
                  <span><b>${Rt(s.name)}</b> ${Ux(s)}</span>
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
  </section>`}var Ux,bg=g(()=>{y();an();de();re();Ux=({code:e})=>e?i`<a href="/c/${e}">${W(e)}</a>`:i`<span class="soft">empty</span>`});function wg(e){let t=e.map(({ring:o})=>Ze([o])),n=gc-2*Fr,s=Math.min(...t.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return e.map(({name:o,ring:a},r)=>Gx(o,a,t[r],s))}function Gx(e,t,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*Fr),c=(gc-(o-n)*r)/2-n*r,h=u=>c+u*r,p=u=>Fr+(a-u)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${gc} ${l}"
      role="img"
      aria-label="${e||"Outline"} to scale, ${Dr(o-n)} wide, ${Dr(a-s)} high"
      data-test="outline">
      ${Vx(n,o,h(0),l)}
      <path
        class="tool"
        d=${Oe(t)}
        transform="translate(${c} ${Fr+a*r}) scale(${r})" />
      ${zx(h(n),h(o),l-16,Dr(o-n))}
      ${qx(p(s),p(a),h(o)+16,Dr(a-s))}
    </svg>
    ${e?i`<figcaption>${e}</figcaption>`:d}
  </figure>`}function Vx(e,t,n,s){return e>0||t<0?d:x`<path class="centre" d="M${n} 6V${s-6}"/>`}function zx(e,t,n,s){
return x`<path class="dimension" d="M${e} ${n}H${t}M${e} ${n-5}v10M${t} ${n-5}v10"/>
    <text class="measure" x=${(e+t)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function qx(e,t,n,s){
let o=(e+t)/2;return x`<path class="dimension" d="M${n} ${e}V${t}M${n-5} ${e}h10M${n-5} ${t}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function jr(e,t){return e?.length?i`<svg class="small-outline" viewBox=${wh(
t,2)} aria-hidden="true">
    <path class="tool" d=${Oe(e)} />
  </svg>`:d}function Hr(e){let t=e.filter(n=>n?.length);return t.length?Ze(t):[0,0,1,1]}var gc,Fr,Dr,Ur=g(()=>{
y();E();tn();st();gc=360,Fr=50;Dr=e=>$({text:U(e),unit:C()})});function _g(e,t){let n=Hr(t.map(s=>s.outline_mm));return i`<ul class="rack">
    ${t.map(s=>i`<li>
          <a
            href="/shop/${e}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${jr(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:d}</span
            >
          </a>
        </li>`)}
  </ul>`}var yg=g(()=>{y();Ur()});var vg={};ne(vg,{show:()=>Kx});async function Kx(e){e.title("Shop");let[{press:t,kept:n},s,o,a,r,l]=await Promise.
all([ha(e.signal),le("punches",e.signal),le("dies",e.signal),le("holders",e.signal),le("metals",e.signal),jn(e.
signal).catch(()=>null)]),c={benches:l,fault:""};async function h(u){let m=Hn(u.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A display that still shows it asks which press screen it is.`)){c.fault=
"";try{await Pp(u.name)}catch(f){c.fault=X(f)}c.benches=await jn(e.signal).catch(()=>c.benches),p()}}let p=()=>e.
render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${B(ie.press,"Changing anything needs the shop's server.")}
              </p>`:d}
        <div class="shop-grid">
          ${Jx(t)} ${$c("punches",s.items)} ${$c("dies",o.items)}
          ${$c("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${oe("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(Yx)}
            </ul>
          </section>
          ${c.benches?$g(c.benches,{...c,takeOut:h}):d} ${Xx()}
          ${oe("/crew",i`<section class="panel" data-test="panel-crew">
              <h2><a href="/crew">Crew</a></h2>
              <p>Phones and screens that may see this shop.</p>
              <a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>
            </section>`)}
        </div>`);p(),e.ready()}function Jx(e){return e?i`<section class="panel" data-test="panel-press">
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
      ${B(ie.press,i`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`}function $c(e,t){let n=t.filter(o=>o.rating_kn_per_m===null).length,s=t.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${e}">
    <h2><a href="/shop/${e}">${Yt[e].title}</a> <span class="soft">${t.length}</span></h2>
    ${t.length?_g(e,t):i`<p>None yet. ${B(ie[e],i`<a href="/shop/${e}/+">Add the first</a>`)}</p>`}
    ${n?i`<p>${k("unknown",`${n} without a rating`)}</p>`:d}
    ${s?i`<p>${k("caution",`${s} worn or damaged`)}</p>`:d}
  </section>`}function Xx(){let e=oe("/copies",i`<a class="button wide" href="/copies" data-test="to-copies">Backups and export</a>`);
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
    </section>`)}var Yx,kg=g(()=>{y();F();an();me();E();bg();G();re();yg();Yx=({code:e,name:t})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(e)}">${t}</a>
    ${oe("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(e)}" data-test="learned-${e}"
        >Measured springback</a
      >`)}
  </li>`});function Sg(e,{took:t,show:n,signal:s}){let o={file:"",busy:!1,choices:{...xg},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(p){return a=p,Object.assign(o,{file:p.name,choices:{...xg},layers:[]}),
h()}function c(p,u){return o.choices={...o.choices,[p]:u},o.choices.origin==="point"&&!o.choices.point?n():h()}
async function h(){if(!a)return;let p=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>Zx)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:u}=await Io(
`/outlines/dxf?${Qx(o.choices,e)}`,a,"image/vnd.dxf",s);if(p!==r)return;Object.assign(o,{answer:u,layers:u.layers}),
t(u)}catch(u){if(p!==r||s.aborted)return;if(o.wrong=X(u),u instanceof O&&u.outline){let{code:m,layers:f}=u.outline;
Object.assign(o,{fault:u.outline,code:m,layers:f.length?f:o.layers})}}o.busy=!1,n()}return{state:o,choose:l,set:c}}
function Qx(e,t){let n=Object.entries(e).filter(([s,o])=>o&&(s!=="point"||e.origin==="point"));return new URLSearchParams(
[["kind",t],...n])}var xg,Zx,Tg=g(()=>{F();xg={units:"",layer:"",origin:"rule",point:"",turn_deg:"0",mirror:"n\
o"},Zx=2e6});async function Hs(e,t){let n=await e.read(t),s={kept:n,draft:e.toDraft(n??e.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>e.fromDraft(s.draft,s.kept??{}),a=()=>e.draw(s),r=()=>e.boxes.filter(({name:b,needed:_})=>_&&b in
s.draft&&!s.draft[b].trim());function l(b,_){s.draft={...s.draft,[b]:_},delete s.wrong[b],ht(()=>"Leave withou\
t saving what you typed?"),e.preview?.(o()),a()}async function c(b){let _=b?Object.fromEntries(r().map(({name:L})=>[
L,["This is needed."]])):{},T=Object.keys(_).length===0;if(Object.assign(s,{busy:T,wrong:_,others:[],clash:null}),
a(),!T)return at(_);try{await e.write(b),ht(null),e.done(b);return}catch(L){await h(L)}s.busy=!1,a(),at(s.wrong)}
async function h(b){if(b instanceof O&&b.status===412){let _=s.kept;s.kept=await e.read(t);let T=s.kept?e.toDraft(
s.kept):{},L=rh(_,s.kept)?"others changed":s.kept?"this changed":"taken out";s.clash={how:L,differences:L==="t\
his changed"?$r(s.draft,T,e.boxes):[]}}else if(b instanceof O&&Object.keys(b.errors).length){let{byName:_,others:T}=Hh(
b.errors,e.boxes.map(({name:L})=>L));Object.assign(s,{wrong:_,others:T})}else s.others=[`Not saved: ${X(b)} Wh\
at you typed is still here.`]}function p(){Object.assign(s,{draft:e.toDraft(s.kept??e.blank),clash:null}),ht(null),
e.preview?.(o()),a()}let u=new Map;function m(b,_){let T=u.get(_)??Sg(b,{signal:t,show:a,took:L=>f(_,L)});return u.
set(_,T),T}function f(b,{points_mm:_,height_mm:T}){b==="points_mm"&&s.draft.height_mm===""&&l("height_mm",z(T)),
l(b,Dh(_))}return e.preview?.(o()),{reader:m,state:s,change:l,takeTheirs:p,show:a,save:()=>c(o()),takeOut:()=>c(
null)}}var Gr=g(()=>{F();me();Lt();Tg();Be();E();Ps();J()});function zr(e,t,n){let s=[],{ask:o}=Et(async(a,r)=>{let{body:l}=await M("POST","/outline",{body:{kind:e,...n0(
e,a)},signal:r});return l},({answer:a,error:r})=>{a&&(s=Mg(a));let l=r instanceof O&&r.outline?.lines_mm.some(
c=>c.length>1)?r.outline:null;t({parts:s,checks:t0(a),wrong:r?s0(r):[],fault:l})},n);return a=>{e0(e,a)&&o(a)}}
function e0(e,t){let n={punch:"punches",die:"dies",holder:"holders",press:"press"}[e];return nn(n).filter(({type:s,
blank:o,when:a})=>["length","number"].includes(s)&&o===void 0&&(!a||a(t))).every(({name:s})=>t[s]!==void 0)&&(t.
shape!=="multi_v"||t.openings.every(s=>s.v_opening_mm&&s.angle_deg&&s.shoulder_radius_mm))}function Mg({outline_mm:e,
ram:t,bed:n}){return[{name:"",ring:e},{name:"Ram",ring:t},{name:"Bed",ring:n}].filter(({ring:s})=>s?.length)}function n0(e,t){
return e==="press"?Tn(t):{...Tn(t),code:t.code||"new"}}function s0(e){if(!(e instanceof O))return["The drawing\
 waits: the shop's server does not answer."];let t=[...new Set(Object.values(e.errors).flat())];return t.length?
t:[e.message]}var Vr,t0,bc=g(()=>{F();me();Lt();fo();Vr=e=>({parts:Mg({...e,...e?.outlines_mm}),checks:[],wrong:[],
fault:null});t0=e=>(e?.checks??[]).filter(({code:t})=>!t.endsWith("rating-unknown"))});function qr({state:e,change:t},n){let s=n.taken(e.draft.code)?["This code is in use already."]:e.wrong.code;return A(
{name:"code",label:"Code",value:e.draft.code,change:o=>t("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function Kr({state:e,takeOut:t},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return fe(ie[n.kind])?i`<div role="alert">
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
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var Us,
Yr=g(()=>{y();me();Te();J();Us=(e,t)=>fe(e)?t:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${t}</fieldset>`});function Ag(e,t){if(!e?.systematic)return d;let n=e.zero_mm>0?"back":"forward";return i`<section class="panel" data-test="gauge-zero">
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
  </section>`}var Og,Lg=g(()=>{y();F();E();Og=e=>M("GET","/press/gauge",{signal:e}).then(({body:t})=>t,()=>null)});function Cg(e,{metals:t,dies:n,punches:s},{draw:o,take:a}){let{typed:r,wrong:l,found:c}=e,h=m=>f=>{r[m]=f,delete l[m]},
p=(m,f)=>({name:m,label:f,value:r[m]??"",wrong:l[m],change:h(m)}),u=(m,f,b)=>i`<div class="broad">${q({...p(m,
f),options:[["","Choose"],...b]})}</div>`;return i`<details class="panel strips" data-test="strips">
    <summary>Find how far it gives way, with three strips</summary>
    <p>
      Cut three strips alike, thick ones. Bend them at one setting: one at the left of the bed, one in the
      middle, one at the right. The more open the middle one is, the more bed and ram give way.
    </p>
    <form
      novalidate
      @submit=${m=>{m.preventDefault(),a0(e,o)}}>
      <div class="fields">
        ${u("metal","Metal",t)} ${u("die","Die",n)} ${u("punch","Punch",s)}
        ${Pg.map(([m,f,b])=>A({...p(m,f),unit:C(),keys:"decimal",hint:b}))}
        ${Ng.map(([m,f])=>A({...p(m,f),unit:"°",keys:"decimal"}))}
      </div>
      <p class="wrong" role="alert" data-test="strips-wrong">${e.general}</p>
      <div class="buttons">
        <button class="button" data-test="strips-ask" ?disabled=${e.busy}>Work it out</button>
      </div>
    </form>
    ${c?o0(c,a):d}
  </details>`}function o0(e,t){let n=s=>$(w(s,{digits:2}));return i`<div data-test="strips-found" role="status">
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
  </div>`}async function a0(e,t){if(!e.busy){Object.assign(e,{busy:!0,wrong:{},general:"",found:null}),t();try{
let{body:n}=await M("POST","/press/strip-test",{body:r0(e.typed)});e.found=n}catch(n){e.wrong=n instanceof O?n.
errors:{},e.general=X(n)}e.busy=!1,t()}}function r0(e){let t={metal:e.metal,die:e.die,punch:e.punch};for(let[n]of Pg)
t[n]=te(e[n]??"");for(let[n]of Ng)t[n]=Po(e[n]??"");return t}var Eg,Ng,Pg,Rg=g(()=>{y();F();pn();E();J();Eg=()=>({
typed:{},wrong:{},general:"",busy:!1,found:null}),Ng=[["left_deg","Left"],["middle_deg","Middle"],["right_deg",
"Right"]],Pg=[["thickness_mm","Thickness of the strips",""],["strip_length_mm","Length of the bend","All three\
 alike, at most a quarter of the bed."],["end_mm","Outer strips from the bed’s end","To the middle of the st\
rip, left and right alike."]]});function Jr({code:e,lines_mm:t,edges:n,marks_mm:s}){let o=Ze([...t,s]),a=Ln(o,wc-2*Bg,_c-2*Bg),[r,l]=a([o[2],o[1]]),
c=[(wc-r)/2,(_c-l)/2],h=m=>{let[f,b]=a(m);return[f+c[0],-(b+c[1])]},p=!["open","branching"].includes(e),u=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${wc} ${_c}"
    role="img"
    aria-label="The outline as far as it was understood, ${u}"
    data-test="outline-fault">
    ${t.map(m=>x`<path class="fault-line" d=${co((p?[...m,m[0]]:m).map(h))}/>`)}
    ${n.map(m=>i0(t[0],m,h))} ${s.map(m=>l0(h(m)))}
  </svg>`}function i0(e,t,n){let[s,o]=[e[t-1],e[t%e.length]].map(n);return x`<path class="fault-edge" d=${co([
s,o])}/>
    ${Ig(s,t)}${Ig(o,t%e.length+1)}`}var wc,_c,Bg,Ig,l0,yc=g(()=>{y();tn();wc=360,_c=300,Bg=30;Ig=([e,t],n)=>x`<text class="fault-number" x=${e} y=${-t-
9} text-anchor="middle" font-size="19">${n}</text>`,l0=([e,t])=>x`<g class="fault-mark" data-test="fault-mark"><circle cx=${e} cy=${-t} r="10"/>
    <path d="M${e-14} ${-t}h28M${e} ${-t-14}v28"/></g>`});function Wg(e,{state:t,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:h,layers:p}=t,u=`dx\
f-${e}`,m=(f,b,_)=>q({name:`${u}-${f}`,label:b,value:h[f],options:_,change:T=>s(f,T)});return i`<div class="dxf broad" data-test=${u}>
    <label class="button dxf-file" for="${u}-file"
      >${o?"Read another DXF file":"Read a DXF file"}
      <input
        id="${u}-file"
        data-test="${u}-file"
        class="unseen"
        type="file"
        accept=".dxf,.DXF"
        @change=${({target:f})=>{f.files?.[0]&&n(f.files[0]),f.value=""}} />
    </label>
    ${o?i`<div role="status">
              ${a?i`<p class="hint">Reading ${o}…</p>`:d}
              ${r?i`<p data-test="${u}-read">
                      <b>${o}</b>, read in ${r.units}: ${vc(r.width_mm)} wide,
                      ${vc(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${vc(r.within_mm)}. ${r.rule}${u0(r)}
                    </p>`:d}
              ${l?i`<p class="wrong" data-test="${u}-wrong">${l}</p>`:d}
            </div>
            ${c?.lines_mm.length?Jr(c):d}
            <div class="fields">
              ${m("units","Drawn in",c0)}
              ${p.length>1||h.layer?m("layer","Layer",[["","all"],...p.map(f=>[f,f])]):d}
              ${m("origin","0, 0 is",d0)}
              ${h.origin==="point"?A({name:`${u}-point`,label:"Point number",value:h.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:f=>s("point",f)}):d}
              ${m("turn_deg","Turned",h0)} ${m("mirror","Mirrored",p0)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function u0({left_out:e}){return e.length?` Left out: ${e.map(({kind:t,count:n})=>`${n} ${t}`).join(
", ")}.`:""}var c0,d0,h0,p0,vc,Dg=g(()=>{y();yc();E();J();c0=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],d0=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
h0=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],p0=[["no","no"],
["yes","front to back"]];vc=e=>$(w(e,{digits:2}))});function Fg({draft:e,change:t,wrong:n}){let s=e.openings??"",o=Pn(s),a=n.openings??[];return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((l,c)=>m0(l,c,{rows:o,said:a,up:e.up||"1",set:h=>t("openings",Ph(s,c,h)),raise:()=>t("up",String(c+
1)),drop:()=>r(c)}))}
    ${a.filter(l=>!/^V \d+: /.test(l)).map(l=>i`<p class="wrong" data-test="wrong-openings">${l}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>t("openings",Ch(s))}>
      Add a V
    </button>
  </div>`;function r(l){let c=Number(e.up||"1");t("openings",Rh(s,l)),(c>l+1||c>=o.length)&&t("up",String(Math.
max(c-1,1)))}}function m0(e,t,{rows:n,said:s,up:o,set:a,raise:r,drop:l}){let c=t+1,h=s.filter(f=>f.startsWith(
`V ${c}: `)).map(f=>f.slice(`V ${c}: `.length)),p=f=>h.filter(b=>b.startsWith(`${f}: `)).map(b=>b.slice(f.length+
2)),u=h.filter(f=>!Object.keys(uo).some(b=>f.startsWith(`${b}: `))),m=(f,b,_,T="")=>A({name:`opening-${c}-${uo[f]}`,
label:b,unit:_,placeholder:T,value:e[uo[f]],keys:f==="code"?"text":"decimal",change:L=>a({[uo[f]]:L}),wrong:p(
f)});return i`<fieldset class="opening" data-test="opening-${c}">
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
            </button>`:d}
    </div>
    <div class="fields three">
      ${m("v_opening_mm","V opening",C())} ${m("angle_deg","Angle","°")}
      ${m("shoulder_radius_mm","Shoulder radius",C())}
      ${q({name:`opening-${c}-face`,label:"Face",value:e.face||"top",options:Nh,change:f=>a({face:f}),wrong:p(
"face")})}
      ${m("centre_mm","Off the middle",C(),"0")}
      ${m("rating_kn_per_m","Rating",An().unit,"as the block")}
      ${m("code","Code","","automatic")}
    </div>
    ${u.map(f=>i`<p class="wrong">${f}</p>`)}
  </fieldset>`}var jg=g(()=>{y();Kt();Hi();E();J()});function Xr({kind:e,draft:t,change:n,wrong:s,preview:o,options:a={},first:r=d,reader:l}){return i`<div class="workbench">
    ${ka[e].map((c,h)=>i`<section class="panel ${c.part}">
          <h2>${c.title}</h2>
          ${h===0?r:d} ${c.part==="outline"?f0(o):d}
          <div class="fields">
            ${c.fields.filter(({when:p,hidden:u})=>!u&&(!p||p(t))).map(p=>p.type==="openings"?Fg({draft:t,change:n,
wrong:s}):g0(p,t[p.name]??"",u=>n(p.name,u),{wrong:s[p.name],options:a[p.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function f0(e){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${e?.fault?Jr(e.fault):e?.parts.length?i`<div class="outlines">${wg(e.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${e?.wrong.map(t=>i`<p class="wrong" data-test="outline-wrong">${t}</p>`)}
    ${e?Ee(e.checks,{quiet:!0}):d}
  </div>`}function g0(e,t,n,{wrong:s=[],options:o=e.options,reader:a}){let{name:r,label:l,type:c}=e;if(c==="pi\
ck"||c==="yes"){let m=e.blank?[["",e.blank],...o??[]]:o??[];return Hg(e,q({name:r,label:l,value:t,options:m,change:n,
wrong:s}))}if(c==="points"||c==="note"){let m=e.dxf?Wg(r,a(e.dxf,r)):d;return $0(e,t,i`${m}${b0(e,t,n,s)}`)}let h=Ug(
e),p=["number","length","force","rating"].includes(c)?"decimal":"text",u=A({name:r,label:l,value:t,change:n,wrong:s,
unit:h,keys:p,hint:w0(e,t),placeholder:e.blank??""});return c==="rating"?i`<div class="broad">
      ${u}${t.trim()?d:k("unknown",`${l} unknown`)}
    </div>`:Hg(e,u)}function $0({folded:e,label:t},n,s){return e?i`<details class="broad" ?open=${!!n}>
        <summary>${t}</summary>
        ${s}
      </details>`:s}function Ug({type:e,unit:t=""}){return e==="force"?en().unit:e==="rating"?An().unit:["leng\
th","lengths","points"].includes(e)?C():t}function b0(e,t,n,s){let{name:o,label:a,hint:r,type:l}=e;return In({
name:o,label:a,value:t,change:n,wrong:s,hint:r,unit:Ug(e),lines:l==="points"?7:2})}function w0({type:e,hint:t="",
counted_mm:n},s){let o=[t];return n!==void 0&&o.push(`Empty: ${_e(Mt("counted_mm",n))} is counted with (common\
 practice).`),e==="rating"&&!s.trim()&&o.push(Ih),(e==="force"||e==="rating")&&o.push(_0(e,s)),e==="lengths"&&
o.push(y0(s)),o.filter(Boolean).join(" ")}function _0(e,t){if(R().units==="inch")return"Short tons, of 2000 lb\
; metric ones with a t.";let n=lo(t,{unit:""}).match(/^([\d.]+) *t( *\/ *m)?$/)?.[1];if(!n)return"";let s=Number(
n)*dh;return`In metric tons: ${$(e==="force"?he(s):Le(s))}.`}function y0(e){let t=e.split(/[,;\n]/).filter(n=>n.
trim()).length;return t?t===1?"1 piece.":`${t} pieces.`:""}var Hg,kc=g(()=>{y();yc();Ur();se();Ki();E();G();Dg();
J();jg();Hg=({broad:e,type:t},n)=>e||t==="lengths"?i`<div class="broad">${n}</div>`:n});function Gg(e,t){return i`<section class="panel" id="zero" data-test="zero">
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
  </section>`}var Vg=g(()=>{y()});var zg={};ne(zg,{show:()=>v0});async function v0(e){let t=fe(ie.press),s=(await le("holders",e.signal)).items.
map(({code:T,name:L})=>[T,`${T}, ${L}`]),o=async T=>(await le(T,e.signal)).items.flatMap(hl).map(({code:L,name:P})=>[
L,P?`${L}, ${P}`:L]),a=Eg(),[r,l,c,h]=t?await Promise.all([Og(e.signal),o("metals"),o("dies"),o("punches")]):[
null,[],[],[]],p=null,u={before:null,after:null},m=null,f=await Hs({async read(T){let L=await(t?pa:ha)(T);return p=
L.etag,u.before=L.press?.depth_zeroed_at??null,L.press??void 0},async write(T){let L=await ah(T,p);u.after=L.depth_zeroed_at},
blank:{},boxes:nn("press"),toDraft:T=>Sa("press",T),fromDraft:(T,L)=>({...Ta("press",T,L),depth_zeroed_at:L?.depth_zeroed_at??
null,gauge_zeroed_at:L?.gauge_zeroed_at??null}),preview:t?zr("press",T=>{m=T,f.show()},e.signal):void 0,draw:()=>f&&
_(),done(){ee(u.after===u.before?"The press is saved.":"The press is saved. Its error is measured anew."),ge("\
/shop")}},e.signal);e.title("The press"),t||(m=Vr(f.state.kept));let b=(...T)=>{let L=new Date().toISOString();
for(let P of T)f.state.kept[P]=L;f.save()};function _(){let{state:T,change:L,save:P}=f;e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${T.kept?.name??"The press"}</h1>
        ${t?i`<p>
                ${T.kept?"Take every figure from the press's own plate and manual.":"No press yet. Take every \
figure from its own plate and manual."}
                What is not on the plate may stay empty where the box says unknown.
              </p>`:d}
        ${T.clash?Ns(T.clash,"press",{saveMine:P,takeTheirs:f.takeTheirs}):d}
        ${Ag(r,()=>b("gauge_zeroed_at"))}
        <form
          novalidate
          @submit=${v=>{v.preventDefault(),P()}}>
          ${Us(ie.press,Xr({kind:"press",draft:T.draft,change:L,wrong:T.wrong,preview:m,reader:f.reader,options:{
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
        ${t&&T.kept?Cg(a,{metals:l,dies:c,punches:h},{draw:_,take:v=>L("deflection_mm",v)}):d}
        ${t&&T.kept?Gg(()=>b("depth_zeroed_at"),()=>b("depth_zeroed_at","gauge_zeroed_at")):d}`)}_(),e.ready()}
var qg=g(()=>{y();me();Lt();Gr();it();bc();Te();Be();Ps();Yr();Lg();Dn();Rg();kc();Vg()});function Yg(e,t,n,s){let{angles:o,wrong:a}=Co(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h}=Cn(
t),p={id:e,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h,die:n.die,punch:n.punch,...o};p.set_angle_deg=
s.set.trim()?x0(s.set,a):n.set_angle_deg;for(let[u,m]of k0)s[u].trim()&&(p[m]=te(s[u]));return s.lot.trim()&&(p.
lot=s.lot.trim()),s.note.trim()&&(p.note=s.note.trim()),R().name&&(p.by=R().name),{body:p,wrong:a}}function x0(e,t){
let{angles:n}=Co({...Zr,one:e});return n.measured_deg===void 0&&(t.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var Zr,k0,Kg,Jg=g(()=>{Aa();pn();se();E();Zr={...No,depth:"",flat:"",
leftFlange:"",rightFlange:""},k0=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_l\
eft_mm"],["rightFlange","flange_right_mm"],["radius","radius_mm"]],Kg=e=>Object.entries(e).some(([t,n])=>t!=="\
places"&&t!=="lot"&&n.trim()!=="")});function Qg(e,t){let n=Math.min((Xg-2*Zg-34)/e,170/t),[s,o]=[e*n,t*n],[a,r]=[Zg+34,24],[l,c,h]=[a+s,r+o,a+s/2],
p=$(w(e,{digits:0})),u=$(w(t,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${Xg} ${Math.round(c+52)}"
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
  </svg>`}var Xg,Zg,e$=g(()=>{y();E();Xg=400,Zg=30});function s$({before:e,after:t,points:n=[],size:s=1,words:o}){let a=[e.low,e.high,t.low,t.high,...n.map(p=>p.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return d;let c=ws(r,l,{from:n$,to:t$-n$,size:s,most:5}),{at:h}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${t$} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(p=>x`<path class="faint" d="M${p.at} 8V84"/>
          <text class="quiet" x=${p.at} y="104" text-anchor="middle"
            font-size=${S0}>${p.text}</text>`)}
    <path
      class="was"
      d="M${h(e.low)} 24H${h(e.high)}M${h(e.low)} 17v14M${h(e.high)} 17v14M${h(e.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${h(t.low)} 52H${h(t.high)}" data-test="band-after" />
    <path class="now-middle" d="M${h(t.nominal)} 42v20" />
    ${n.map(p=>T0(h(p.value),74,p))}
  </svg>`}function T0(e,t,{id:n,outlier:s,weight:o=1}){return s?x`<path class="trial-odd" d="M${e-6} ${t-6}l12 12M${e+
6} ${t-6}l-12 12" data-test="band-point"
        data-id=${n} data-odd="true"/>`:x`<circle class="trial-point" cx=${e} cy=${t} r=${o<.25?3:6} data-test="band-point"
        data-id=${n}/>`}var t$,n$,S0,o$=g(()=>{y();ul();t$=340,n$=24,S0=17});function l$({before_mm:e,after_mm:t,flanges:n,strips:s}){let o=c=>$(w(c,{digits:2})),a=t.nominal-e.nominal,r=Number(
Q(a,2))===0,l=`${o(Math.abs(a))} ${a>0?"shorter":"longer"}`;return i`<p data-test="deduction">
    A bend takes <b>${o(t.nominal)}</b> (${o(t.low)} to ${o(t.high)}) off the sum of its
    flats${r?", as before":i`: the next blank is <b>${l}</b> for each such bend`}. Rests on
    ${[a$(n,"measured flange"),a$(s,"strip")].filter(Boolean).join(" and ")} of this
    metal.
  </p>`}function Qr(e){if(!e.length)return i`<p data-test="no-figures">No figure changed.</p>`;let t=e.flatMap(
s=>s.points??[]),n=["Thin: before. Thick: now. Rings: results"];return t.some(s=>(s.weight??1)<.25)&&n.push("s\
mall ones, of other sheet or tools, count little"),t.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${e.
map(M0)}</div>
    ${t.length?i`<p class="hint">${n.join("; ")}.</p>`:d}`}function M0(e){let{what:t,before:n,after:s,trials:o,
points:a=[]}=e,r=c=>O0(e.unit,c),l=`${t[0].toUpperCase()}${t.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${t}>
    <h3>
      ${l} <small>${o===0?"no results":o===1?"1 result":`${o} results`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${r$(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${r$(s,r)}</dd>
      </div>
    </dl>
    ${s$({before:n,after:s,points:a,size:e.unit==="mm"&&C()==="in"?Xe:1,words:`${l}: before ${i$(n,r)}, now ${i$(
s,r)}, ${a.length} results drawn.`})}
  </section>`}function O0(e,t){return e==="deg"?S(t):e==="mm"?w(t,{digits:2}):{text:Q(t,3),unit:e}}var a$,r$,i$,
xc=g(()=>{y();o$();E();a$=(e,t)=>e?`${e} ${t}${e>1?"s":""}`:"";r$=(e,t)=>i`<b>${$(t(e.nominal))}</b>
    <span class="band">${t(e.low).text} to ${t(e.high).text}</span>`,i$=({low:e,high:t},n)=>`${n(e).text} to ${$(
n(t))}`});function m$(e,{metals:t,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:h}=e,p=(m,f,b={})=>A(
{name:m,label:f,value:r[m],wrong:I(c,m),change:_=>Object.assign(r,{[m]:_}),unit:C(),next:!0,...b}),u=(m,f,b)=>q(
{name:m,label:f,value:r[m],options:b,wrong:I(c,m),change:_=>{Object.assign(r,{[m]:_}),a()}});return i`<form novalidate data-test="choose-form" @submit=${u$(
o)}>
    <p>One strip, bent and measured, turns the handbook’s figures into those of your metal and your tools.</p>
    ${p$(e)}
    <div class="test-fields">
      ${u("metal","Metal",t.map(({code:m,name:f})=>[m,f]))}
      ${p("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${p("bend_length_mm","Strip’s width, along the bend")}
      ${p("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${u("die","Die",d$(n,r.die))}
      ${u("punch","Punch",d$(s,r.punch))}
      ${A({name:"lot",label:"Lot or heat",value:l.lot,wrong:I(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${h}>
        ${h?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function d$(e,t){let n=e.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=t&&!e.some(({code:o})=>o===t)?
[[t,`${t} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function f$({bend:e},{go:t}){let n=e.
worst!=="stop"&&e.die&&e.punch,s=$(w(L0,{digits:0}));return i`${Ra(e.checks)}
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
            <b>${$(w(c$,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
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
          ${Ve("Angle to set",S(e.set_angle_deg),"set-angle")}
          ${Ve("Depth",w(e.punch_depth_mm,{digits:2}),"punch-depth")}
        </div>
        ${fs(e.first_hit)}
        <div class="figures">${go("Allow for",e)}</div>
      </div>
      <div class="strip-pictures">
        ${Qg(c$,e.bend_length_mm)}
        ${e.drawing?$t(e.drawing,{pose:"before",close:!0,opening:e.v_opening_mm,gauge:"",angle:e.set_angle_deg,
words:"The strip on the die before the bend"}):d}
      </div>
    </div>
    ${gs(e.checks)} ${on(e.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>t("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>t("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function g$(e,{go:t,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=e,c=(p,u,m,f={})=>A({name:u,
label:m,value:o[p],wrong:I(a,u),change:b=>Object.assign(o,{[p]:b}),unit:C(),next:!0,...f}),h={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${u$(n)}>
    ${p$(e)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${$(S(r.included_angle_deg))}. The angle is
      needed; the lengths and the radius improve the figures.
    </p>
    <div class="measures">
      <fieldset class="panel">
        <legend><span class="badge-word">1</span> Angle</legend>
        <div class="trial-angles ${o.places}">
          ${o.places==="one"?c("one","measured_deg","Angle measured",h):[c("left","left_deg","Left",h),c("midd\
le","middle_deg","Middle",h),c("right","right_deg","Right",h)]}
        </div>
        ${pc(o,s)}
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
  </form>`}function $$({answer:e,form:t,busy:n},s,{again:o}){if(!e)return d;let a=s.find(({code:h})=>h===t.metal)?.
name??t.metal,{teaches:r,asks:l,said:c}=e.test_bend;return i`<h2>What it changed <small>${a}</small></h2>
    <div class=${e.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${e.said.map(h=>i`<p>${ye(h)}</p>`)}
    </div>
    ${r?d:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${k("caution")} <b>Kept, but it does not count.</b> ${ho(c)}</p>
            ${l?i`<p>
                    <a href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-confirm"
                      >Say that it was right, or wrong</a
                    >
                  </p>`:d}
          </section>`}
    ${e.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${k("caution","Odd one out")}</h2>
            ${e.outliers.map(({said:h})=>i`<p>${ho(h)}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(t.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:d}
    ${Qr(e.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${e.cards.length?i`<ul class="rows">
              ${e.cards.map(E0)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(t.metal)}" data-test="to-learned"
        >Measured springback</a
      >
    </div>`}var A0,c$,L0,h$,p$,u$,E0,b$=g(()=>{y();$o();e$();E();gt();J();uc();bo();G();Bn();xc();ln();rt();A0=
[["choose","Choose"],["bend","Bend"],["measure","Measure"],["taught","Result"]],c$=300,L0=102,h$=e=>i`<ol class="stages" aria-label="Stages">
    ${A0.map(([t,n])=>i`<li aria-current=${t===e?"step":"false"}>${n}</li>`)}
  </ol>`,p$=({general:e})=>e?i`<p class="wrong" role="alert" data-test="wrong">${e}</p>`:d,u$=e=>t=>{t.preventDefault(),
e()};E0=({code:e,title:t,said:n})=>i`<li class="row" data-test="changed-card" data-code=${e}>
    <a href="/c/${e}">
      <span class="lead">${t||e}</span> <span class="code">${e}</span>
      <span class="more">${n.map(ye).join("; ")}</span>
    </a>
  </li>`});var w$={};ne(w$,{show:()=>P0});async function P0(e){e.title("Test bend"),e.render(Me("Looking into the crib…"));
let[t,n,s]=await Promise.all(["metals","dies","punches"].map(async b=>(await le(b,e.signal)).items)),o=Ma(e.query);
o.metal||=t[0]?.code??"",o.bend_length_mm||=C()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...Zr},bend:null,
answer:null,id:Fe(),wrong:{},general:"",busy:!1};ht(()=>a.stage==="measure"&&Kg(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>e.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${h$(a.stage)} ${l()}
      </article>`);function l(){let b={draw:r,go:c,choose:h,send:p,again:u};return a.stage==="bend"?f$(a,b):a.
stage==="measure"?g$(a,b):a.stage==="taught"?$$(a,t,b):m$(a,{metals:t,dies:n,punches:s},b)}function c(b){Object.
assign(a,{stage:b,wrong:{},general:""}),r(),scrollTo(0,0)}async function h(){let b=mo(o);if(b.length)return m(
Object.fromEntries(b.map(_=>[_,N0[_]])));history.replaceState(null,"",`/shop/test-bend?${Oa(o)}`),await f(async()=>{
let _=await M("POST","/bend",{body:Cn(o),signal:e.signal});a.bend=_.body,c("bend")})}async function p(){let{body:b,
wrong:_}=Yg(a.id,o,a.bend,a.typed);if(Object.keys(_).length)return m(_);await f(async()=>{let T=await M("POST",
"/test-bends",{body:b,timeout:2e4});a.answer=T.body,c("taught"),H()})}function u(){Object.assign(a,{typed:{...Zr,
lot:a.typed.lot,places:a.typed.places},answer:null,id:Fe()}),h()}function m(b,_=""){Object.assign(a,{wrong:b,general:_}),
r(),at(b)}async function f(b){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await b()}catch(_){
return e.signal.aborted?void 0:(a.busy=!1,m(_ instanceof O?_.errors:{},C0(_)))}a.busy=!1,r()}}we(r,e.signal),r(),
e.ready()}function C0(e){return e instanceof O?e.message:e instanceof j?"The shop’s server does not answer. Wh\
at you typed stays here: try again.":String(e)}var N0,_$=g(()=>{y();F();Aa();me();Pe();Be();se();ve();Jg();E();
J();Re();b$();N0={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as\
 1.98."],bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you\
 want, such as 90."]}});function y$(e){if(!e)return d;let{set_by:t,offset_mm:n,results:s,strip:o}=e;return i`<section class="press-learned" data-test="press-learned" data-apart=${String(
e.apart)}>
    <h2>
      The press <small>${t?R0[t]:i`<a href="/shop/press">how is it set?</a>`}</small>
    </h2>
    ${n?B0(n,s):d}
    ${n?oe("/shop/press",i`<p><a href="/shop/press#zero">Was its zero set, or is it another press?</a></p>`):d}
    ${e.said.map(a=>i`<p>${ye(a)}</p>`)}
    ${o?oe("/shop/test-bend",i`<p>
              <a class="button" data-test="to-strip" href=${I0(o)}>Bend this strip</a>
            </p>`):d}
  </section>`}function B0({low:e,nominal:t,high:n},s){let o=l=>w(Math.abs(l),{digits:2}),a=l=>`${$(o(l))} ${l<
0?"deeper":"less deep"}`,r=Number(o(t).text)===0;return i`<p data-test="press-offset">
    The punch goes
    <b class="large">${r?"as deep":a(t)}</b> ${r?"as":"than"} the press shows
    <span class="soft"
      >(${a(e)} to ${a(n)}; ${s===1?"1 result":`${s} results`}, all
      metals)</span
    >.
  </p>`}var R0,I0,v$=g(()=>{y();E();G();re();R0={angle:"set by angle",depth:"set by depth",stop:"set by a stop"};
I0=({metal:e,thickness_mm:t,die:n})=>`/shop/test-bend?${new URLSearchParams({metal:e,thickness:`${t} mm`,die:n})}`});var k$={};ne(k$,{show:()=>W0});async function W0(e){let{metal:t}=e.params,n=`metal=${encodeURIComponent(t)}`;e.
title("Measured springback");let{items:s}=await le("metals",e.signal),o=s.find(({code:h})=>h===t);if(!o)return e.
title("No such metal"),e.render(ke(`No metal ${t} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(`${o.name}: measured springback`);let a={groups:[],press:null,evidence:[],busy:""};async function r(){
let[h,p]=await Promise.all([M("GET",`/learned?${n}`,{signal:e.signal}),M("GET",`/test-bends?${n}`,{signal:e.signal})]),
u=h.body,{evidence:m}=p.body;Object.assign(a,{groups:u.groups,press:u.press}),a.evidence=[...m].sort((f,b)=>f.
made_at<b.made_at?1:-1)}async function l(h,p){if(!a.busy){a.busy=h.id,c();try{let{body:u}=await M("POST",`/evi\
dence/${encodeURIComponent(h.id)}/${p}`,{body:R().name?{by:R().name}:{},timeout:2e4});await r(),ee(F0(p,u.cards)),
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
                  ${y$(a.press)} ${j0(a.groups)}
                </section>
                <section class="learned-evidence">
                  <h2>Results</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(h=>H0(h,a.busy,l))}
                  </ul>
                </section>
              </div>`:ke("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),we(c,e.signal),c(),e.ready()}function F0(e,t){let n=D0[e];return t.
length?`${n} ${t.length===1?"One card":`${t.length} cards`} would now plan differently: ${t.map(({title:s,code:o})=>s||
o).join(", ")}.`:n}function j0(e){return e.length?e.map(({thickness_mm:t,v_opening_mm:n,lot:s,factor:o,deduction:a,
figures:r,said:l})=>i`<section data-test="group" data-thickness=${t} data-v=${n}>
        <h2>
          ${$(w(t,{digits:2}))} over V
          ${$(w(n))}${s?i` <small>lot ${s}</small>`:d}
        </h2>
        ${l.map(c=>i`<p class="together" data-test="together">${k("caution")} ${ye(c)}</p>`)}
        ${o?i`<p data-test="factor">
                The metal springs back <b>${Q(o.nominal,2)} times</b> as much as expected
                (${Q(o.low,2)} to ${Q(o.high,2)}).
              </p>`:d}
        ${a?l$(a):d} ${Qr(r)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No result is in use: the figures are the metal’s own.</p>`}function H0(e,t,n){
let s=e.kind==="test bend"?"Test bend":i`First piece${e.code?i` of <a href="/c/${e.code}">${e.code}</a>`:d}`,o=[
e.set_angle_deg===null?"":`set at ${$(S(e.set_angle_deg))}`,$(w(e.thickness_mm,{digits:2})),e.die?`die ${e.die}`:
e.v_opening_mm?`V ${$(w(e.v_opening_mm))}`:"",e.lot?`lot ${e.lot}`:"",ae(e.made_at),Ot(e)];return i`<li
    class="row evidence ${e.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${e.id}
    data-forgotten=${String(e.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${$(S(e.measured_deg))}</span> ${s}
        ${e.forgotten?k("unknown","Forgotten"):e.asks?k("unknown","Does not count"):e.outlier?k("caution","Odd\
 one out"):d}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${e.note?i`<p>${e.note}</p>`:d}
      ${e.said.length?i`<p class=${e.asks?"":"more"} data-test="evidence-words">${ho(e.said)}</p>`:d}
    </div>
    <div class="evidence-marks">
      ${U0(e).map(([a,r])=>B(`evidence.${a}`,i`<button
            type="button"
            class="button"
            data-test=${a}
            ?disabled=${t!==""}
            @click=${()=>n(e,a)}>
            ${r}
          </button>`))}
    </div>
  </li>`}function U0({forgotten:e,asks:t}){return e?[["remember","Use it again"]]:t?[["confirm","It was measur\
ed right"],["forget","It was wrong"]]:[["forget","Forget this one"]]}var D0,x$=g(()=>{y();F();me();it();se();ve();
E();G();xc();re();v$();Re();Ge();D0={forget:"Forgotten.",remember:"Used again.",confirm:"It counts now."}});var S$={};ne(S$,{show:()=>G0});async function G0(e){let t=ca(e.params.kind);if(!t)return e.title("Not here"),e.
render(ke("No such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready();let{one:n,title:s,many:o}=Yt[t];
e.title(s);let{items:a,kept:r}=await le(t,e.signal),l=Hr(a.map(c=>c.outline_mm??[]));e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?d:B(ie[t],i`<a class="button" href="/shop/${t}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${B(ie[t],"Changing anything needs the shop's server.")}
            </p>`:d}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>t==="metals"?Y0(c):V0(t,c,l))}
            </ul>`:ke(`No ${o} yet`,B(ie[t],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),e.ready()}function V0(e,t,n){return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/${e}/${encodeURIComponent(t.code)}">
      <span class="thumb">${jr(t.outline_mm,n)}</span>
      <span class="who"><span class="lead">${t.code}</span> <span>${t.name}</span>${z0(t)}</span>
      <span class="fact"><span class="what">Place</span>${Xt(t)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${t.rating_kn_per_m===null?k("unknown"):$(Le(t.rating_kn_per_m))}</span
      >
      ${t.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${t.segments_mm.length?i`${t.segments_mm.length}, up to
                    ${$(w(q0(t.segments_mm),{digits:0}))}`:"none"}</span
            >`:d}
      <span class="fact"><span class="what">Condition</span>${K0(t)}</span>
    </a>
  </li>`}function z0({shape:e,openings:t=[]}){return e!=="multi_v"?d:i`<span class="soft" data-test="block-vs"
    >${t.map(n=>`${n.code}: V ${$(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function K0({condition:e,condition_note:t}){if(e==="good")return k("ok","Good");let n=e==="damaged"?k("st\
op","Damaged"):e==="worn"?k("caution","Worn"):k("unknown");return i`${n}${t?i` <span class="soft">${t}</span>`:
d}`}function Y0(e){let{tensile_mpa:t}=e;return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/metals/${encodeURIComponent(e.code)}">
      <span class="who"><span class="lead">${e.name}</span> <span class="soft">${e.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${t.low} to ${t.high} MPa</span>
      <span class="fact"><span class="what">Reliability</span>${t.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${e.gauge_family??"none"}</span>
    </a>
  </li>`}var q0,T$=g(()=>{y();me();E();G();re();Re();Ur();q0=e=>Math.max(...e)});function Tc(e,t){let n=t.params.tool===Sc,s=n?void 0:t.params.tool,o={items:[],etag:null,kept:!1};return{kind:e,
isNew:n,code:s,async read(a){return o=await(fe(ie[e])?da:le)(e,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(h=>h.code!==s),l=o.items.findIndex(h=>h.code===s),c=a?[{...a,code:s??a.code}]:[];await oh(
e,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){ee(a?`${a.name||s} is saved.`:`${s} is taken out.`),ge(`\
/shop/${e}`)},taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var Sc,M$=g(()=>{me();it();Te();Be();Sc="+"});async function O$(e,t){let n=await Hs({...t,blank:{poisson:.3},boxes:J0,toDraft:o=>({code:String(o.code??""),...Fh(
o)}),fromDraft:o=>({...jh(o),code:o.code.trim()}),draw:()=>n&&s()},e.signal);if(!n.state.kept&&!t.isNew)return e.
title("No such metal"),e.render(ke(`No metal ${t.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),e.ready();
e.title(t.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,h={})=>A({name:l,
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
        ${o.clash?Ns(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):d}
        <form
          novalidate
          @submit=${l=>{l.preventDefault(),n.save()}}>
          ${Us(ie.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${t.isNew?qr(n,t):d} ${r("name","Name")}
                  ${q({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:Ah,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${us.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${In({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${Nn.map(l=>X0(l,n))}</div>`)}
          ${Kr(n,t,"metal")}
        </form>`)}s(),e.ready()}function X0({name:e,label:t,unit:n,needed:s},{state:o,change:a}){let r=p=>o.draft[`${e}\
.${p}`]??"",l=p=>o.wrong[`${e}.${p}`]??[],c=p=>u=>a(`${e}.${p}`,u),h=!s&&!Mc.some(([p])=>r(p).trim());return i`<fieldset class="panel figure-card" data-test="figure-${e}">
    <legend>${t}${n?i` <span class="hint">(${n})</span>`:d}</legend>
    ${(o.wrong[e]??[]).map(p=>i`<p class="wrong-line">${p}</p>`)}
    <div class="fields three">
      ${Mc.map(([p,u])=>A({name:`${e}.${p}`,label:u,value:r(p),change:c(p),wrong:l(p),keys:"decimal"}))}
    </div>
    ${h?k("unknown","Not known"):d}
    <div class="fields source-line">
      ${In({name:`${e}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${q({name:`${e}.standing`,label:"Reliability",value:r("standing"),options:Oh.map(p=>[p,p]),change:c("sta\
nding"),wrong:l("standing")})}
    </div>
  </fieldset>`}var Mc,J0,A$=g(()=>{y();Lt();me();Gr();ji();Yr();Ps();G();J();re();Re();Mc=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],J0=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...us,...Nn.flatMap(({name:e,label:t})=>[...Mc,["source","s\
ource"],["standing","reliability"]].map(([n,s])=>({name:`${e}.${n}`,label:`${t}: ${s.toLowerCase()}`}))),...Nn]});var L$={};ne(L$,{show:()=>Q0});async function Q0(e){let t=ca(e.params.kind);return t?e.params.tool===Sc&&!fe(ie[t])?
(e.title(`New ${Yt[t].one}`),e.render(aa(ie[t])),e.ready()):t==="metals"?O$(e,Tc(t,e)):eS(e,t):(e.render(ke("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),e.ready())}async function eS(e,t){let n=Yt[t],s=Tc(
t,e),o=fe(ie[t]),a=null,r=await Hs({...s,blank:Z0[t],boxes:[{name:"code",label:"Code"},...nn(t)],toDraft:c=>({
code:String(c.code??""),...Sa(t,c)}),fromDraft:(c,h)=>({...Ta(t,c,h),code:c.code.trim()}),preview:o?zr(n.one,c=>{
a=c,r.show()},e.signal):void 0,draw:()=>r&&l()},e.signal);if(!r.state.kept&&!s.isNew)return e.title("Not in th\
e crib"),e.render(ke(`No ${n.one} ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${t}">${n.
title}</a>`)),e.ready();e.title(s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=Vr(r.state.kept));function l(){
let{state:c,change:h}=r;e.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${t}">${n.title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${c.kept?.name}</span>`}
        </h1>
        ${c.clash?Ns(c.clash,n.one,{saveMine:r.save,takeTheirs:r.takeTheirs}):d}
        <form
          novalidate
          @submit=${p=>{p.preventDefault(),r.save()}}>
          ${Us(ie[t],Xr({kind:t,draft:c.draft,change:h,wrong:c.wrong,preview:a,reader:r.reader,first:s.isNew?qr(
r,s):d}))}
          ${Kr(r,s,n.one)}
        </form>`)}l(),e.ready()}var Z0,E$=g(()=>{y();me();Lt();Gr();M$();bc();Te();Ps();Yr();re();Re();kc();A$();
Z0={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"unkno\
wn",up:1},holders:{shape:"block",condition:"unknown"}}});var C$={};ne(C$,{show:()=>nS});async function nS(e){e.title("Crew");let{signal:t}=e,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>e.render(oS(n,o)),o=sS(n,s,
t),[a,r,l]=await Promise.all([M("GET","/devices",{signal:t}),M("GET","/crew-options",{signal:t}),bn(t).then(({
network:h})=>h?M("GET","/join",{signal:t}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),e.ready();let c=setInterval(o.look,tS);t.addEventListener("abort",()=>clearInterval(
c))}function sS(e,t,n){let s=async a=>{e.fault="";try{await a()}catch(r){if(n.aborted)return;e.fault=Ko(r)}t()};
async function o(){if(document.visibilityState!=="visible")return;let a=await M("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;e.devices=a.body.devices;let r=e.offer&&e.devices.find(l=>!e.known.has(
l.id)&&!l.revoked_at);r?Object.assign(e,{came:r,offer:null,name:""}):e.offer&&Date.parse(e.offer.expires_at)<=
Date.now()&&(e.offer=null),t()}return{look:o,draw:t,offer:()=>s(async()=>{let{body:a}=await M("POST","/pairing\
s",{body:{role:e.role,name:e.name.trim()},signal:n});Object.assign(e,{offer:a,came:null,known:new Set(e.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Remove ${a.name}? It can read nothing any more, and its cards\
 go from it when it next asks.`)&&(await M("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await M("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await M(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),e.open=a})}}function oS(e,t){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${e.fault?i`<p class="wrong" role="alert" data-test="fault">${e.fault}</p>`:d}
    ${e.joining?i`<div class="crew-grid">${rS(e,t)}${iS(e.joining)}</div>`:aS()}
    <section class="panel" data-test="devices">
      <h2>Devices in the shop</h2>
      ${lS(e,t)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${Y({name:"labels-open",label:"A device that is not paired",value:e.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>t.setOpen(n==="open")})}
    </section>`}function rS(e,t){let{offer:n,came:s}=e;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${Ye[n.role].word}${n.name?i`: <b>${n.name}</b>`:d}. Works once, until
        ${ae(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${P$(n.qr)} />
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
            ${k("ok","Paired")} <b>${s.name}</b> is in, as ${Ye[s.role].word.toLowerCase()}.
          </p>`:d}
    ${Y({name:"role",label:"As",value:e.role,options:N$,change:o=>{e.role=o,t.draw()}})}
    <p class="hint" data-test="role-does">${Ye[e.role].word}: ${Ye[e.role].does}.</p>
    ${A({name:"device-name",label:"Whose?",value:e.name,placeholder:"Ann's phone",change:o=>e.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${t.offer}>
      Show a pairing code
    </button>
  </section>`}function iS(e){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${P$(e.qr)} />
    <p>${e.shop}: ${e.https.map(t=>i`<span class="address">${t}</span> `)}</p>
    ${e.http.length?i`<p class="hint">Or type <span class="address">${e.http[0]}/join</span></p>`:d}
    ${e.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${cS(e.fingerprint)}</p>`:d}
  </section>`}function lS({devices:e},t){return e.length?i`<ul class="plain-list devices">
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
value:n.role,options:N$,change:s=>t.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>t.revoke(n)}>
                    Remove…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var tS,N$,aS,P$,cS,R$=g(()=>{y();F();wn();
G();J();Ge();tS=2e3,N$=Object.entries(Ye).map(([e,{word:t}])=>[e,t]);aS=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;P$=e=>`data:image/svg+xml,${encodeURIComponent(e)}`,cS=e=>e.replace(/(.{4})(?=.)/g,"$1 ")});var ei,Oc=g(()=>{y();ei=i`<p class="hint" data-test="kept-how-long">
  Some phones drop what a page keeps when it is not opened for seven days. An app on the home screen is not
  dropped: choose “Add to Home Screen” in the browser’s menu, and pair that app too. Cards come back from the
  shop; what still waits to be sent does not, so open Flangebook in the shop’s network first. Some phones ask
  each time before the camera may be used.
</p>`});var I$={};ne(I$,{show:()=>dS});async function dS(e){e.title("Pair this device"),e.render(Me("Asking the shop…"));
let t={me:null,code:hS(),name:R().name,fault:"",asking:!1,waits:0},n=()=>e.render(pS(t,n));t.me=await bn(e.signal).
catch(()=>null),t.waits=(await je().catch(()=>[])).length,n(),e.ready()}function hS(){if(location.pathname!=="\
/pair"||!location.hash)return"";let e=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),e}function pS(e,t){let{me:n}=e;return n?n.role?uS(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${B$[Ht()??n.why]?i`<p data-test="why">${k("caution","Not paired")} ${B$[Ht()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
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
      @submit=${s=>{s.preventDefault(),fS(e,t)}}>
      ${A({name:"pair-code",label:"Pairing code",value:e.code,placeholder:"ABCD-1234",change:s=>e.code=s,wrong:e.
fault?[e.fault]:[]})}
      ${A({name:"pair-name",label:"Whose device is this?",value:e.name,placeholder:"Ann's phone",change:s=>e.name=
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
    </div>`}function uS(e){let t=e.role;return e.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${k("ok",Ye[t].word)} <b>${e.name}</b>: ${Ye[t].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    ${ei}
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${mS}>Unpair this device…</button>
    </p>
  </div>`}async function mS(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await vd()}async function fS(e,t){Object.assign(e,{asking:!0,fault:""}),t();try{await yd(e.
code,e.name.trim()),H(),ge(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
e,{asking:!1,fault:Ko(n)}),t()}}var B$,W$=g(()=>{y();wn();Pe();Be();se();ve();G();J();Oc();Re();B$={revoked:"T\
his device was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used f\
or half a year, so its pairing has ended."}});function D$({show:e,done:t,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,h){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),e();try{if(o.size>$S)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");let p=await Io(`/import?${h}`,
o,"application/json",n,gS);s.told=p.body}catch(p){if(n.aborted)return;s.wrong=bS(p)}s.busy="",e(),s.told?.imported&&
t()}}return{state:s,choose:a,take:r}}function bS(e){if(!(e instanceof O))return[X(e)];let t=Object.entries(e.errors).
slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[e.message,...t]}var gS,$S,F$=g(()=>{F();gS=3e5,$S=6e7});function U$({state:e,choose:t,take:n}){let{name:s,busy:o,told:a,wrong:r}=e;return i`<section class="panel" data-test="panel-import">
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
      ${r.length?_S(s,r):d}
      ${a?a.imported?kS(a):yS(s,a,n):d}
    </div>
  </section>`}function yS(e,t,n){return i`<div data-test="import-preview">
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
        ${wS.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${H$(t.holds[s])}</td>
              <td>${H$(t.here[s])}</td>
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
              @click=${()=>vS(t)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var wS,j$,_S,H$,vS,kS,G$=g(()=>{y();G();Ge();wS=[["press","Press"],["tools","Tools"],["metals","Meta\
ls"],["cards","Cards"],["revisions","Revisions"],["trials","Results"],["test_bends","Test bends"]],j$=8;_S=(e,t)=>i`<div data-test="import-wrong">
    <p>${k("stop","Not brought in")} ${e}</p>
    <ul>
      ${t.slice(0,j$).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${t.length>j$?i`<p>There are more.</p>`:d}
    <p>Nothing in the shop was changed.</p>
  </div>`;H$=e=>e===""?"none":e,vS=({here:e,holds:t})=>confirm(`Replace the shop? Its ${e.cards} cards and ${e.
trials} results go, the file's ${t.cards} cards and ${t.trials} results come. A backup is made first.`),kS=({holds:e,
kept_as:t})=>i`<div data-test="import-done">
    <p>${k("ok","Brought in")} ${e.cards} cards, ${e.trials} results.</p>
    ${t?i`<p>The shop that was there is kept as ${t}.</p>`:d}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var V$={};ne(V$,{show:()=>SS});async function SS(e){e.title("Backups and export");let t=D$({show:a,done:s,signal:e.
signal}),n=await o();async function s(){H(),n=await o(),a()}async function o(){let{body:r}=await M("GET","/cop\
ies",{signal:e.signal});return r}function a(){e.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Backups and export</h1>
        <div class="settings-grid">
          ${TS(n)}
          <div class="stack">${AS()}${U$(t)}</div>
        </div>`)}a(),e.ready()}function TS({standing:e,last_good_at:t,trouble:n,folder:s,copies:o}){return i`<section class="panel" data-test="panel-copies">
    <h2>Backups</h2>
    <p data-test="standing">${MS(e)}</p>
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
                    <td>${xS[a.kind]}</td>
                    <td>${OS(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:d}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> restores one.
    </p>
  </section>`}function MS(e){return e==="ok"?k("ok","There is a good backup"):e==="late"?k("caution","The last\
 backup is over two days old"):e==="trouble"?k("stop","The last backup could not be made"):k("unknown","There \
is no backup yet")}function AS(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and results, as open JSON. Bring it in again here, or
      read it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var xS,OS,z$=g(()=>{y();F();F$();ve();G();G$();Ge();xS={night:"automatic","by-hand":"by hand",replaced:"\
before it was replaced"};OS=e=>`${(e/1e6).toFixed(1)} MB`});async function q$(e){let{code:t,part:n,title:s,note:o,created_by:a}=e,r={code:t,part:{...n,title:s},note:o,by:a},
{body:l}=await M("POST","/cards",{body:r,timeout:2e4}),c=ao(await ct(l),[]);await Zt(c,na(ss(e,["archived","se\
ttings"]),c),{reason:"Restored from a device"}),await pd(e),await qo(t)}var K$=g(()=>{F();as();Qt();Ce()});function Y$(e){return e.length?i`<section class="panel" data-test="lost">
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
              ${B("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>LS(t)}>
                  Restore it
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>ES(t)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:d}async function LS(e){try{await q$(e),await H()}catch(t){ee(X(t))}}async function ES(e){confirm(
`Throw away the card ${W(e.code)}, ${e.title}? This device may have the only copy.`)&&(await qo(e.code),await is())}
var J$=g(()=>{y();F();de();it();K$();Ce();ve();re()});var Q$={};ne(Q$,{show:()=>NS});async function NS(e){e.title("Settings");let t={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([Ft().catch(()=>[]),je().catch(()=>[]),zo().catch(()=>[])]);t=
{...t,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await M("GET","/cards?limit=1",{signal:e.signal,
timeout:4e3}).catch(()=>null);t={...t,total:a?.body?.total??null},o()}function o(){e.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${CS(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${RS(o)}
          </section>
          ${PS()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${BS(t.entries)}
          </section>
          ${Y$(t.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${DS(t)} ${ei}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:e.signal}),await n(),e.ready(),await s()}function PS(){
let e=Qn();return!e||e==="owner"?d:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${Ye[e].word}</b>: ${Ye[e].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function CS(e){let{units:t,inches:n}=R(),s=o=>{jt(o),e()};return i`${Y({name:"units",label:"Unit\
s",value:t,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${t==="inch"?Y({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):d}
  ${Y({name:"paper",label:"Paper",value:R().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${t==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:d}`}function RS(e){let{theme:t,name:n}=R();
return i`${Y({name:"theme",label:"Theme",value:t,options:[["system","As the device"],["day","Day"],["shop","Sh\
op, dark"]],change:s=>{jt({theme:s==="shop"||s==="day"?s:"system"}),e()}})}
  ${A({name:"name",label:"Your name",value:n,change:s=>jt({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function BS(e){return e.length?i`<ul class="waiting-list">
      ${e.map(t=>i`<li data-test="waits-${t.id}">
            <p>
              <b>${Z$(t)}</b> on <a href="/c/${t.code}">${W(t.code)}</a>,
              ${ae(t.queued_at)} by this device’s clock
              ${t.body.note?i`<br /><span class="soft">${t.body.note}</span>`:d}
            </p>
            ${t.refused?i`<p data-test="refused">
                      ${k("caution","Refused")} ${t.missing?`${Eo(t)}.`:""}
                      ${t.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>IS(t)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>WS(t)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${Eo(t)}. It is sent when the shop's server
                    ${t.late?"takes it":"answers"}.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>H()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every result, note and edit typed here is saved in the shop.
    </p>`}function Z$({kind:e,body:t}){if(e==="trial")return`${Wt(t)}, step ${t.step}`;if(e==="note")return"No\
te";let n=Object.keys(t).filter(s=>s in X$).map(s=>X$[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was resolved"}async function IS(e){await sd(e.id),await H()}async function WS(e){confirm(`Throw away ${Z$(e)} \
on ${W(e.code)}? It cannot be brought back.`)&&(await Uo(e.id),await is())}function DS({cards:e,total:t}){let{
reached:n,at:s}=Je(),o=t!==null&&e>=t,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
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
    <button type="button" class="button" data-test="check-now" @click=${()=>H()}>Look again</button>`}var X$,eb=g(
()=>{y();F();wn();de();Pe();Te();se();Ce();ve();G();J();Oc();Rs();J$();pn();Ge();X$={title:"title",note:"note",
archived:"in use or archived",settings:"settings"}});wn();Li();Be();var tb={home:()=>Promise.resolve().then(()=>(Mh(),Th)),bend:()=>Promise.resolve().then(()=>(Op(),Mp)),bench:()=>Promise.resolve().then(()=>(Tu(),Su)),
part:()=>Promise.resolve().then(()=>(Vm(),Gm)),scan:()=>Promise.resolve().then(()=>(uf(),pf)),card:()=>Promise.resolve().then(()=>(Mf(),Tf)),
step:()=>Promise.resolve().then(()=>(Ef(),Lf)),trial:()=>Promise.resolve().then(()=>(Vf(),Gf)),history:()=>Promise.resolve().then(()=>(Qf(),Zf)),
note:()=>Promise.resolve().then(()=>(tg(),eg)),settle:()=>Promise.resolve().then(()=>(sg(),ng)),print:()=>Promise.resolve().then(()=>(ig(),rg)),
label:()=>Promise.resolve().then(()=>(dg(),cg)),labels:()=>Promise.resolve().then(()=>(pg(),hg)),chart:()=>Promise.resolve().then(()=>(gg(),fg)),
shop:()=>Promise.resolve().then(()=>(kg(),vg)),press:()=>Promise.resolve().then(()=>(qg(),zg)),"test-bend":()=>Promise.resolve().then(()=>(_$(),w$)),
learned:()=>Promise.resolve().then(()=>(x$(),k$)),tools:()=>Promise.resolve().then(()=>(T$(),S$)),tool:()=>Promise.resolve().then(()=>(E$(),L$)),
crew:()=>Promise.resolve().then(()=>(R$(),C$)),pair:()=>Promise.resolve().then(()=>(W$(),I$)),copies:()=>Promise.resolve().then(()=>(z$(),V$)),
settings:()=>Promise.resolve().then(()=>(eb(),Q$))};se();ve();it();async function sb(){if("serviceWorker"in navigator)try{let e=await navigator.serviceWorker.register("/sw.\
js");e.waiting&&nb(e.waiting),e.addEventListener("updatefound",()=>{let t=e.installing;t?.addEventListener("st\
atechange",()=>{t.state==="installed"&&navigator.serviceWorker.controller&&nb(t)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(e){console.
warn("The app could not be kept on this device:",e)}}function nb(e){ee("A newer Flangebook is here. It opens w\
hen you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),e.postMessage("take over")}})}Ks();we(()=>Ks());document.addEventListener("sync",()=>zt());document.addEventListener("held",()=>zt());document.
addEventListener("storage",e=>{zt(),!e.detail.silent&&(document.documentElement.dataset.ready==="failed"&&St(),
H())});document.addEventListener("turned-away",()=>{zt(),document.documentElement.dataset.screen!=="pair"&&St()});
document.addEventListener("rights",()=>{Ht()===null&&document.documentElement.dataset.screen!=="pair"&&th()});
kd();nh(tb).finally(()=>{Yd(),sb()});
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
