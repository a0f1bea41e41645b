var xg=Object.defineProperty;var $=(t,e,n)=>()=>{if(n)throw n[0];try{return t&&(e=t(t=0)),e}catch(s){throw n=[s],s}};var Q=(t,e)=>{for(var n in e)xg(t,n,{get:e[n],enumerable:!0})};function Sg(){try{let t=JSON.parse(localStorage.getItem(Ll)??"null");return t?.refused?t:Al}catch{return Al}}function El({
role:t,refused:e={}}){let n=JSON.stringify({role:t,refused:e});if(n===JSON.stringify(Nn))return!1;Nn={role:t,refused:e};
try{localStorage.setItem(Ll,n)}catch{}return!0}function Bl(t){t&&t!==Nn.role&&document.dispatchEvent(new CustomEvent(
"other-role"))}var Ll,Al,Nn,En,dt,Nl,Nt=$(()=>{Ll="flangebook.rights",Al={role:"owner",refused:{}},Nn=Sg();En=
()=>Nn.role,dt=t=>!Object.hasOwn(Nn.refused,t),Nl=t=>Nn.refused[t]??"owner"});async function M(t,e,{body:n,etag:s,seen:o,signal:a,timeout:r=8e3}={}){let l=n===void 0?"":"application/json";
return Cl(t,e,n===void 0?void 0:JSON.stringify(n),{type:l,etag:s,seen:o,signal:a,timeout:r})}async function ho(t,e,n,s,o=2e4){
return Cl("POST",t,e,{type:n,signal:s,timeout:o})}async function Cl(t,e,n,{type:s,etag:o,seen:a,signal:r,timeout:l}){
let c={Accept:"application/json"};s&&(c["Content-Type"]=s),o&&(c["If-Match"]=o),a&&(c["If-None-Match"]=a);let h=AbortSignal.
timeout(l),p=performance.now(),u;try{u=await fetch(`/api/v1${e}`,{method:t,headers:c,body:n,signal:r?AbortSignal.
any([r,h]):h,cache:"no-store"})}catch(g){throw r?.aborted?g:new j}if(Bl(u.headers.get("Flangebook-Role")),!u.ok&&
u.status!==304)throw await gr(u,p);let m=Tg.includes(u.status)?null:await Mg(u,r);return{status:u.status,body:m,
etag:u.headers.get("ETag"),at:Lg(u)}}async function Mg(t,e){try{return await t.json()}catch(n){throw e?.aborted?
n:new j}}async function gr(t,e=1/0){let n=await t.json().catch(()=>null);if(!n?.status)throw new j;let s=new S(
n);return Og(s,e),s}function Og({status:t,errors:e},n){t===401&&e.pairing&&document.dispatchEvent(new CustomEvent(
"not-paired",{detail:{why:e.pairing[0],asked:n}})),t===403&&e.role&&document.dispatchEvent(new CustomEvent("ot\
her-role"))}async function Pl(t,e,{signal:n,tell:s,silence:o=2e4}){let a=new AbortController,r=setTimeout(()=>a.
abort(),o),l=()=>{clearTimeout(r),r=setTimeout(()=>a.abort(),o)};try{let c=await fetch(`/api/v1${t}`,{method:"\
POST",headers:{Accept:"application/x-ndjson","Content-Type":"application/json"},body:JSON.stringify(e),signal:AbortSignal.
any([n,a.signal]),cache:"no-store"});if(!c.ok||!c.body)throw await gr(c);for await(let h of Ag(c.body,l)){let p=JSON.
parse(h);if(p.problem)throw new S(p.problem);if(!p.progress)return p;s(p.progress)}throw new j}catch(c){throw n.
aborted||c instanceof S?c:new j}finally{clearTimeout(r)}}async function*Ag(t,e){let n=t.pipeThrough(new TextDecoderStream).
getReader(),s="";for(;;){let{done:o,value:a}=await n.read();if(o)break;e();let r=(s+a).split(`
`);s=r.pop()??"",yield*r.filter(Boolean)}s&&(yield s)}async function Rl(t,e,n){let s;try{let a=await fetch(`/a\
pi/v1${t}`,{method:"POST",headers:{"Content-Type":"application/json"},body:JSON.stringify(e),signal:AbortSignal.
timeout(2e4),cache:"no-store"});if(!a.ok)throw await gr(a);s=await a.blob()}catch(a){throw a instanceof S?a:new j}
let o=document.createElement("a");o.href=URL.createObjectURL(s),o.download=n,o.click(),setTimeout(()=>URL.revokeObjectURL(
o.href),1e4)}var S,j,Tg,Lg,V=$(()=>{Nt();S=class extends Error{constructor(e){super(e.detail||e.title),this.status=
e.status,this.title=e.title,this.errors=e.errors??{},this.outline=e.outline??null}},j=class extends Error{constructor(){
super("The shop's server does not answer.")}};Tg=[204,304];Lg=t=>new Date(t.headers.get("Date")??Date.now()).toISOString()});function Ng(){return Il||(Il=[IDBIndex,IDBObjectStore,IDBCursor,IDBDatabase,IDBTransaction])}function Eg(){return Wl||
(Wl=["advance","continue","continuePrimaryKey"].map(t=>IDBCursor.prototype[t]))}function Bg(t){let e=new Promise(
(n,s)=>{let o=()=>{t.removeEventListener("success",a),t.removeEventListener("error",r)},a=()=>{n(ze(t.result)),
o()},r=()=>{s(t.error),o()};t.addEventListener("success",a),t.addEventListener("error",r)});return po.set(e,t),
e}function Cg(t){if(yr.has(t))return;let e=new Promise((n,s)=>{let o=()=>{t.removeEventListener("complete",a),
t.removeEventListener("error",r),t.removeEventListener("abort",r)},a=()=>{n(),o()},r=()=>{s(t.error||new DOMException(
"AbortError","AbortError")),o()};t.addEventListener("complete",a),t.addEventListener("error",r),t.addEventListener(
"abort",r)});yr.set(t,e)}function Hl(t){_r=t(_r)}function Pg(t){return Eg().includes(t)?function(...e){return t.
apply(vr(this),e),ze(this.request)}:function(...e){return ze(t.apply(vr(this),e))}}function Rg(t){return typeof t==
"function"?Pg(t):(t instanceof IDBTransaction&&Cg(t),wr(t,Ng())?new Proxy(t,_r):t)}function ze(t){if(t instanceof
IDBRequest)return Bg(t);if($r.has(t))return $r.get(t);let e=Rg(t);return Object.is(e,t)||($r.set(t,e),po.set(e,
t)),e}function Ul(t,e,{blocked:n,upgrade:s,blocking:o,terminated:a}={}){let r=indexedDB.open(t,e),l=ze(r);return s&&
r.addEventListener("upgradeneeded",c=>{s(ze(r.result),c.oldVersion,c.newVersion,ze(r.transaction),c)}),n&&r.addEventListener(
"blocked",c=>n(c.oldVersion,c.newVersion,c)),l.then(c=>{a&&c.addEventListener("close",()=>a()),o&&c.addEventListener(
"versionchange",h=>o(h.oldVersion,h.newVersion,h))}).catch(()=>{}),l}function Dl(t,e){if(!(t instanceof IDBDatabase&&
!(e in t)&&typeof e=="string"))return;if(br[e])return br[e];let n=e.replace(/FromIndex$/,""),s=e!==n,o=Wg.includes(
n);if(!(n in(s?IDBIndex:IDBObjectStore).prototype)||!(o||Ig.includes(n)))return;let a=async function(r,...l){let c=this.
transaction(r,o?"readwrite":"readonly"),h=c.store;return s&&(h=h.index(l.shift())),(await Promise.all([h[n](...l),
o&&c.done]))[0]};return br[e]=a}async function*jg(...t){let e=this;if(e instanceof IDBCursor||(e=await e.openCursor(
...t)),!e)return;e=e;let n=new Proxy(e,Fg);for(Vl.set(n,e),po.set(n,vr(e));e;)yield n,e=await(kr.get(n)||e.continue()),
kr.delete(n)}function jl(t,e){return e===Symbol.asyncIterator&&wr(t,[IDBIndex,IDBObjectStore,IDBCursor])||e===
"iterate"&&wr(t,[IDBIndex,IDBObjectStore])}var wr,Il,Wl,yr,$r,po,_r,vr,Ig,Wg,br,Dg,Fl,kr,Vl,Fg,Gl=$(()=>{wr=(t,e)=>e.
some(n=>t instanceof n);yr=new WeakMap,$r=new WeakMap,po=new WeakMap;_r={get(t,e,n){if(t instanceof IDBTransaction){
if(e==="done")return yr.get(t);if(e==="store")return n.objectStoreNames[1]?void 0:n.objectStore(n.objectStoreNames[0])}
return ze(t[e])},set(t,e,n){return t[e]=n,!0},has(t,e){return t instanceof IDBTransaction&&(e==="done"||e==="s\
tore")?!0:e in t}};vr=t=>po.get(t);Ig=["get","getKey","getAll","getAllKeys","count"],Wg=["put","add","delete",
"clear"],br={};Hl(t=>({...t,get:(e,n,s)=>Dl(e,n)||t.get(e,n,s),has:(e,n)=>!!Dl(e,n)||t.has(e,n)}));Dg=["advanc\
e","continue","continuePrimaryKey"],Fl={},kr=new WeakMap,Vl=new WeakMap,Fg={get(t,e){if(!Dg.includes(e))return t[e];
let n=Fl[e];return n||(n=Fl[e]=function(...s){kr.set(this,Vl.get(this)[e](...s))}),n}};Hl(t=>({...t,get(e,n,s){
return jl(e,n)?jg:t.get(e,n,s)},has(e,n){return jl(e,n)||t.has(e,n)}}))});function rt(){return Bn??=Ul("flangebook",Hg,{upgrade:(t,e,n,s)=>Vg(t,e,s),blocking:Ug,terminated:()=>Bn=void 0}).
catch(t=>{throw Bn=void 0,t}),Bn}async function Ug(){(await Bn)?.close(),Bn=void 0}async function Vg(t,e,n){e<
1&&(t.createObjectStore("cards",{keyPath:"code"}),t.createObjectStore("list",{keyPath:"code"}),t.createObjectStore(
"meta"),t.createObjectStore("outbox",{keyPath:"id"})),e<2&&(t.createObjectStore("sent",{keyPath:"id"}),t.createObjectStore(
"lost",{keyPath:"code"}),n.objectStore("list").createIndex("settle","settle"),e===1&&await Gg(n))}async function Gg(t){
let e=t.objectStore("outbox"),n=(await e.getAll()).sort((o,a)=>o.queued_at<a.queued_at?-1:1),s=0;for(let{trial:o,
...a}of n)e.put({...a,kind:"trial",body:o,number:++s});t.objectStore("meta").put(s,"number"),t.objectStore("me\
ta").delete("cursor")}function qg(t){return(t instanceof DOMException?t.name:"")==="QuotaExceededError"?"Not s\
aved: this device is full. Free some room on it, then save again.":"Not saved: this browser lets nothing be ke\
pt here, and the shop does not answer. Private windows do that."}var Hg,Bn,uo,xr=$(()=>{Gl();Hg=2;uo=class extends Error{constructor(e){
super(`${qg(e)} What you typed is still on this screen and nowhere else: leave it open, or write it on paper.`)}}});function Wt(){if(crypto.randomUUID)return crypto.randomUUID();let t=crypto.getRandomValues(new Uint8Array(16));
return t[6]=t[6]&15|64,t[8]=t[8]&63|128,[...t].map(n=>n.toString(16).padStart(2,"0")).join("").replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/,
"$1-$2-$3-$4-$5")}async function zl(t){try{let e=(await rt()).transaction(["outbox","meta"],"readwrite",ql),n=(await e.
objectStore("outbox").getAll()).sort(Sr).at(-1)?.number??0,s=Math.max(await e.objectStore("meta").get("number")??
0,n)+1,o={...t,number:s,queued_at:new Date().toISOString()};return e.objectStore("meta").put(s,"number"),e.objectStore(
"outbox").put(o),await e.done,o}catch(e){throw new uo(e)}}async function Kl(){let t=(await rt()).transaction("\
meta","readwrite"),e=(await t.store.get("number")??0)+1;return t.store.put(e,"number"),await t.done,e}async function Dt(){
return(await(await rt()).getAll("outbox")).sort(Sr)}async function Ke(t){return(await Dt()).filter(e=>e.code===
t)}async function Ss(t){return(await rt()).get("outbox",t)}async function mo(t){return(await rt()).get("sent",
t)}async function Cn(t,e){let n=(await rt()).transaction("outbox","readwrite",ql),s=await n.store.get(t);s&&n.
store.put({...s,...e}),await n.done}async function fo(t){let e=await Ss(t);await(await rt()).delete("outbox",t),
e?.after&&await go(t,e.after)}async function go(t,e,n=()=>!0){for(let s of await Dt())s.after===t&&n(s)&&await Cn(
s.id,{after:e})}async function Ts(t,e,n=!1){let{again:s,refused:o,missing:a,parked:r,...l}=t;try{let c=(await rt()).
transaction(["outbox","sent"],"readwrite");c.objectStore("sent").put({...l,proposed:n,sent_at:t.sent_at??e}),c.
objectStore("outbox").delete(t.id),await c.done}catch{await(await rt()).delete("outbox",t.id)}}async function Jl(t){
let e=Date.parse(t)-zg*Kg,n=(await rt()).transaction("sent","readwrite");for(let s of await n.store.getAll())Date.
parse(s.sent_at)<e&&n.store.delete(s.id);await n.done}async function Zl(t){let[e,n]=[t.objectStore("outbox"),t.
objectStore("sent")],s=(await n.getAll()).sort(Sr),o=await e.getAll(),a=new Set(o.map(r=>r.id));s.forEach((r,l)=>{
let{proposed:c,...h}=r;a.has(r.id)||e.put({...h,parked:c,again:!0,number:l-s.length})}),n.clear()}var zg,Kg,ql,
Sr,Yl,Et=$(()=>{xr();zg=90,Kg=864e5,ql={durability:"strict"};Sr=(t,e)=>t.number-e.number;Yl=t=>Cn(t,{refused:void 0})});async function Kt(t){return(await rt()).get("cards",t)}async function xe(){return(await(await rt()).getAll("li\
st")).sort((e,n)=>e.updated_at<n.updated_at?1:-1)}async function ne(t){let e=(await rt()).transaction(["cards",
"list"],"readwrite"),n=await e.objectStore("cards").get(t.code),s=n&&Yg(t,n);return s||Xl(e,t),await e.done,s?
n:t}function Xl(t,e){t.objectStore("cards").put(e),t.objectStore("list").put(Jg(e))}function Jg(t){let{code:e,
title:n,note:s,revision:o,updated_at:a,updated_by:r,worst:l,archived:c,part:h,trials_total:p,proposals:u}=t,{metal:m,
thickness_mm:g}=h,b=u?.length??0;return{code:e,title:n,note:s,metal:m,thickness_mm:g,bends:h.bends.length,revision:o,
updated_at:a,updated_by:r,worst:l,trials:p,archived:c,settle:b}}async function Ql(){return(await rt()).getAllFromIndex(
"list","settle",IDBKeyRange.lowerBound(1))}async function tc(){let t=["cards","list","meta","sent","lost"],e=(await rt()).
transaction(t,"readwrite");for(let n of t)e.objectStore(n).clear();await e.done}async function ue(){return(await rt()).
get("meta","shop")}async function ec(){return(await rt()).get("meta","cursor")}async function nc(t){let e=(await rt()).
transaction(["cards","list","meta","outbox","sent","lost"],"readwrite");t.reset&&(await Zg(e),await Zl(e));for(let s of t.
cards)Xl(e,s),await Xg(e,s);let n=e.objectStore("meta");t.shop&&n.put(t.shop,"shop"),n.put(t.cursor,"cursor"),
n.put(!!t.more,"more"),await e.done}async function Zg(t){let[e,n]=[t.objectStore("cards"),t.objectStore("lost")];
for(let s of await e.getAll())n.put(s);e.clear(),t.objectStore("list").clear()}async function Xg(t,e){let n=await t.
objectStore("lost").get(e.code);if(!n)return;t.objectStore("lost").delete(e.code);let s=new Set(e.trials.map(r=>r.
id)),o=new Set(await t.objectStore("outbox").getAllKeys()),a=n.trials.filter(r=>!s.has(r.id)&&!o.has(r.id));a.
forEach((r,l)=>t.objectStore("outbox").put(sc(e.code,r,l-a.length)))}function sc(t,{number:e,received_at:n,correction:s,
...o},a){return{id:o.id,kind:"trial",code:t,body:o,number:a,queued_at:n,again:!0}}async function oc(t){let e=(await rt()).
transaction("outbox","readwrite");t.trials.forEach((n,s)=>{e.store.put({...sc(t.code,n,s-t.trials.length),missing:!0})}),
await e.done}async function $o(){let t=await rt();return await t.get("meta","more")?[]:t.getAll("lost")}async function bo(t){
await(await rt()).delete("lost",t)}var Yg,vt=$(()=>{xr();Et();Yg=(t,e)=>t.revision<e.revision||t.revision===e.
revision&&(t.trials_total<e.trials_total||t.proposals_total<e.proposals_total)});function Qg(){try{return{...ac,...JSON.parse(localStorage.getItem(rc)??"{}")}}catch{return{...ac}}}function N(){
return Pn}function Se(t){Pn={...Pn,...t};try{localStorage.setItem(rc,JSON.stringify(Pn))}catch{}wo();for(let e of Tr)
e(Pn)}function gt(t,e){Tr.add(t),e?.addEventListener("abort",()=>Tr.delete(t))}function wo(){document.documentElement.
dataset.theme=Pn.theme}var rc,ac,Tr,Pn,tt=$(()=>{rc="flangebook.settings",ac={units:"mm",inches:"decimal",theme:"\
day",name:"",paper:"A4"},Tr=new Set,Pn=Qg()});function dc(t){return Ms!==null&&t!=="pair"&&!(lc?.labels_open&&t$.includes(t))}async function Ye(t){Mr+=1;try{
let{body:e}=await M("GET","/me",{signal:t,timeout:4e3});return lc=e,El(e)&&document.dispatchEvent(new CustomEvent(
"rights")),e}finally{Mr-=1}}async function hc(t){Ms!==t&&(Ms=t,await Promise.all([Ye().catch(()=>null),tc().catch(
()=>null)]),document.dispatchEvent(new CustomEvent("turned-away")))}async function pc(t,e){let{body:n}=await M(
"POST","/pair",{body:{code:t,name:e}});return N().name||Se({name:n.name}),Ms=null,cc=performance.now(),await Ye(),
n}async function uc(){await M("POST","/leave",{}),await hc("unknown")}function mc(){document.addEventListener(
"not-paired",t=>{let{why:e,asked:n}=t.detail;n>cc&&hc(e)}),document.addEventListener("other-role",ic),En()!=="\
owner"&&ic()}function ic(){Mr||Ye().catch(()=>null)}var Vt,t$,lc,Ms,cc,Mr,Te,yo,Je=$(()=>{V();Nt();vt();tt();Vt=
{operator:{word:"Operator",does:"reads cards, steps through them, types results and notes"},bench:{word:"Bench\
 screen",does:"shows the step chosen on a phone"},owner:{word:"Owner",does:"everything, this list too"}},t$=["\
card","step"],lc=null,Ms=null,cc=-1/0,Mr=0,Te=()=>Ms;yo=t=>t instanceof S||t instanceof Error?t.message:String(
t)});function xc(t,e){if(!Er(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return gc!==
void 0?gc.createHTML(e):e}function tn(t,e,n=t,s){if(e===se)return e;let o=s!==void 0?n._$Co?.[s]:n._$Cl,a=Ls(e)?
void 0:e._$litDirective$;return o?.constructor!==a&&(o?._$AO?.(!1),a===void 0?o=void 0:(o=new a(t),o._$AT(t,n,
s)),s!==void 0?(n._$Co??=[])[s]=o:n._$Cl=o),o!==void 0&&(e=tn(t,o._$AS(t,e.values),o,s)),e}var Ar,fc,_o,gc,Lr,
me,Nr,e$,Qe,As,Ls,Er,vc,Or,Os,$c,bc,Ze,wc,yc,kc,Br,i,k,Lx,se,d,_c,Xe,Sc,Ns,vo,Rn,en,ko,xo,So,To,Tc,n$,Me,_=$(()=>{
Ar=globalThis,fc=t=>t,_o=Ar.trustedTypes,gc=_o?_o.createPolicy("lit-html",{createHTML:t=>t}):void 0,Lr="$lit$",
me=`lit$${Math.random().toFixed(9).slice(2)}$`,Nr="?"+me,e$=`<${Nr}>`,Qe=document,As=()=>Qe.createComment(""),
Ls=t=>t===null||typeof t!="object"&&typeof t!="function",Er=Array.isArray,vc=t=>Er(t)||typeof t?.[Symbol.iterator]==
"function",Or=`[ 	
\f\r]`,Os=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,$c=/-->/g,bc=/>/g,Ze=RegExp(`>|${Or}(?:([^\\s"'\
>=/]+)(${Or}*=${Or}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),wc=/'/g,yc=/"/g,kc=/^(?:script|style|textarea|title)$/i,Br=t=>(e,...n)=>({_$litType$:t,
strings:e,values:n}),i=Br(1),k=Br(2),Lx=Br(3),se=Symbol.for("lit-noChange"),d=Symbol.for("lit-nothing"),_c=new WeakMap,
Xe=Qe.createTreeWalker(Qe,129);Sc=(t,e)=>{let n=t.length-1,s=[],o,a=e===2?"<svg>":e===3?"<math>":"",r=Os;for(let l=0;l<
n;l++){let c=t[l],h,p,u=-1,m=0;for(;m<c.length&&(r.lastIndex=m,p=r.exec(c),p!==null);)m=r.lastIndex,r===Os?p[1]===
"!--"?r=$c:p[1]!==void 0?r=bc:p[2]!==void 0?(kc.test(p[2])&&(o=RegExp("</"+p[2],"g")),r=Ze):p[3]!==void 0&&(r=
Ze):r===Ze?p[0]===">"?(r=o??Os,u=-1):p[1]===void 0?u=-2:(u=r.lastIndex-p[2].length,h=p[1],r=p[3]===void 0?Ze:p[3]===
'"'?yc:wc):r===yc||r===wc?r=Ze:r===$c||r===bc?r=Os:(r=Ze,o=void 0);let g=r===Ze&&t[l+1].startsWith("/>")?" ":"";
a+=r===Os?c+e$:u>=0?(s.push(h),c.slice(0,u)+Lr+c.slice(u)+me+g):c+me+(u===-2?l:g)}return[xc(t,a+(t[n]||"<?>")+
(e===2?"</svg>":e===3?"</math>":"")),s]},Ns=class t{constructor({strings:e,_$litType$:n},s){let o;this.parts=[];
let a=0,r=0,l=e.length-1,c=this.parts,[h,p]=Sc(e,n);if(this.el=t.createElement(h,s),Xe.currentNode=this.el.content,
n===2||n===3){let u=this.el.content.firstChild;u.replaceWith(...u.childNodes)}for(;(o=Xe.nextNode())!==null&&c.
length<l;){if(o.nodeType===1){if(o.hasAttributes())for(let u of o.getAttributeNames())if(u.endsWith(Lr)){let m=p[r++],
g=o.getAttribute(u).split(me),b=/([.?@])?(.*)/.exec(m);c.push({type:1,index:a,name:b[2],strings:g,ctor:b[1]===
"."?ko:b[1]==="?"?xo:b[1]==="@"?So:en}),o.removeAttribute(u)}else u.startsWith(me)&&(c.push({type:6,index:a}),
o.removeAttribute(u));if(kc.test(o.tagName)){let u=o.textContent.split(me),m=u.length-1;if(m>0){o.textContent=
_o?_o.emptyScript:"";for(let g=0;g<m;g++)o.append(u[g],As()),Xe.nextNode(),c.push({type:2,index:++a});o.append(
u[m],As())}}}else if(o.nodeType===8)if(o.data===Nr)c.push({type:2,index:a});else{let u=-1;for(;(u=o.data.indexOf(
me,u+1))!==-1;)c.push({type:7,index:a}),u+=me.length-1}a++}}static createElement(e,n){let s=Qe.createElement("\
template");return s.innerHTML=e,s}};vo=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=
n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:s}=this.
_$AD,o=(e?.creationScope??Qe).importNode(n,!0);Xe.currentNode=o;let a=Xe.nextNode(),r=0,l=0,c=s[0];for(;c!==void 0;){
if(r===c.index){let h;c.type===2?h=new Rn(a,a.nextSibling,this,e):c.type===1?h=new c.ctor(a,c.name,c.strings,this,
e):c.type===6&&(h=new To(a,this,e)),this._$AV.push(h),c=s[++l]}r!==c?.index&&(a=Xe.nextNode(),r++)}return Xe.currentNode=
Qe,o}p(e){let n=0;for(let s of this._$AV)s!==void 0&&(s.strings!==void 0?(s._$AI(e,s,n),n+=s.strings.length-2):
s._$AI(e[n])),n++}},Rn=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,s,o){this.type=2,this.
_$AH=d,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=s,this.options=o,this._$Cv=o?.isConnected??!0}get parentNode(){
let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){
return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=tn(this,e,n),Ls(e)?e===d||e==null||e===""?(this.
_$AH!==d&&this._$AR(),this._$AH=d):e!==this._$AH&&e!==se&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==
void 0?this.T(e):vc(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this.
_$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==d&&Ls(this._$AH)?this._$AA.nextSibling.data=e:this.
T(Qe.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:s}=e,o=typeof s=="number"?this._$AC(e):(s.el===
void 0&&(s.el=Ns.createElement(xc(s.h,s.h[0]),this.options)),s);if(this._$AH?._$AD===o)this._$AH.p(n);else{let a=new vo(
o,this),r=a.u(this.options);a.p(n),this.T(r),this._$AH=a}}_$AC(e){let n=_c.get(e.strings);return n===void 0&&_c.
set(e.strings,n=new Ns(e)),n}k(e){Er(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,s,o=0;for(let a of e)
o===n.length?n.push(s=new t(this.O(As()),this.O(As()),this,this.options)):s=n[o],s._$AI(a),o++;o<n.length&&(this.
_$AR(s&&s._$AB.nextSibling,o),n.length=o)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){
let s=fc(e).nextSibling;fc(e).remove(),e=s}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},
en=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,s,o,a){this.
type=1,this._$AH=d,this._$AN=void 0,this.element=e,this.name=n,this._$AM=o,this.options=a,s.length>2||s[0]!==""||
s[1]!==""?(this._$AH=Array(s.length-1).fill(new String),this.strings=s):this._$AH=d}_$AI(e,n=this,s,o){let a=this.
strings,r=!1;if(a===void 0)e=tn(this,e,n,0),r=!Ls(e)||e!==this._$AH&&e!==se,r&&(this._$AH=e);else{let l=e,c,h;
for(e=a[0],c=0;c<a.length-1;c++)h=tn(this,l[s+c],n,c),h===se&&(h=this._$AH[c]),r||=!Ls(h)||h!==this._$AH[c],h===
d?e=d:e!==d&&(e+=(h??"")+a[c+1]),this._$AH[c]=h}r&&!o&&this.j(e)}j(e){e===d?this.element.removeAttribute(this.
name):this.element.setAttribute(this.name,e??"")}},ko=class extends en{constructor(){super(...arguments),this.
type=3}j(e){this.element[this.name]=e===d?void 0:e}},xo=class extends en{constructor(){super(...arguments),this.
type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==d)}},So=class extends en{constructor(e,n,s,o,a){super(
e,n,s,o,a),this.type=5}_$AI(e,n=this){if((e=tn(this,e,n,0)??d)===se)return;let s=this._$AH,o=e===d&&s!==d||e.capture!==
s.capture||e.once!==s.once||e.passive!==s.passive,a=e!==d&&(s===d||o);o&&this.element.removeEventListener(this.
name,this,s),a&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="\
function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},To=class{constructor(e,n,s){
this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=s}get _$AU(){return this._$AM._$AU}_$AI(e){
tn(this,e)}},Tc={M:Lr,P:me,A:Nr,C:1,L:Sc,R:vo,D:vc,V:tn,I:Rn,H:en,N:xo,U:So,B:ko,F:To},n$=Ar.litHtmlPolyfillSupport;
n$?.(Ns,Rn),(Ar.litHtmlVersions??=[]).push("3.3.3");Me=(t,e,n)=>{let s=n?.renderBefore??e,o=s._$litPart$;if(o===
void 0){let a=n?.renderBefore??null;s._$litPart$=o=new Rn(e.insertBefore(As(),a),a,void 0,n??{})}return o._$AI(
t),o}});function Bs(t){return t.toUpperCase().replace(/[\s-]/g,"").replaceAll("O","0").replace(/[IL]/g,"1")}function I(t){
return t.length>3?`${t.slice(0,3)}-${t.slice(3)}`:t}function ht(t){let e=Bs(t),n=[...e].filter(s=>!Es.includes(
s));if(n.length){let s=n[0]==="U"?"There is no U in a card code.":`“${n[0]}” is not in any card code.`;return{
code:e,whole:!1,fault:`${s} Codes have digits and letters without I, L, O and U.`}}return e.length>7?{code:e,whole:!1,
fault:`A card code has seven characters. This one has ${e.length}.`}:e.length<7?{code:e,whole:!1,fault:""}:Oc(
e.slice(0,-1))!==e.at(-1)?{code:e,whole:!1,fault:"The check character does not fit: one character is wrong, or\
 two are swapped. Read the label again."}:{code:e,whole:!0,fault:""}}function Cr(){let t=crypto.getRandomValues(
new Uint8Array(6)),e=Array.from(t,n=>Es[n%Es.length]).join("");return e+Oc(e)}function Oc(t){let e=0,n=2;for(let s of t)
e^=Mc(n,Es.indexOf(s)),n=Mc(n,2);return Es[e]}function Mc(t,e){let n=0;for(let s=e,o=t;s;s>>=1)s&1&&(n^=o),o<<=
1,o&32&&(o^=37);return n}var Es,it=$(()=>{Es="0123456789ABCDEFGHJKMNPQRSTVWXYZ"});var nn,Mo,In,Pr=$(()=>{nn={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Mo=t=>(...e)=>({
_$litDirective$:t,values:e}),In=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,s){this._$Ct=e,
this._$AM=n,this._$Ci=s}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}}});var Px,Ac,s$,Oo,Rr=$(()=>{_();({I:Px}=Tc),Ac=t=>t.strings===void 0,s$={},Oo=(t,e=s$)=>t._$AH=e});var kt,Oe=$(()=>{_();Pr();Rr();kt=Mo(class extends In{constructor(t){if(super(t),t.type!==nn.PROPERTY&&t.type!==
nn.ATTRIBUTE&&t.type!==nn.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event\
 bindings");if(!Ac(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[
e]){if(e===se||e===d)return e;let n=t.element,s=t.name;if(t.type===nn.PROPERTY){if(e===n[s])return se}else if(t.
type===nn.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(s))return se}else if(t.type===nn.ATTRIBUTE&&n.getAttribute(
s)===e+"")return se;return Oo(t),e}})});function Wn(t,e=Ec){return Object.fromEntries(e.filter(n=>t[n]!==void 0).map(n=>[n,t[n]]))}function Lc(t){return Array.
isArray(t)?[...t].sort((e,n)=>e.step-n.step).map(({step:e,set_angle_deg:n,punch_depth_mm:s})=>[e,n??null,s??null]):
t??null}function Dn(t,e,n){let s=[];for(let[l,c]of[["title","Title"],["note","Note"],["archived","In use"]]){let[
h,p]=[t[l],e[l]];h!==void 0&&!Ao(h,n[l])&&s.push({name:l,label:c,shop:n[l],yours:h,before:p})}if(!t.settings)return s;
let[o,a,r]=[t.settings,e.settings??[],n.settings].map(Bc);for(let l of new Set([...o.keys(),...a.keys()])){let[
c,h,p]=[o.get(l),a.get(l),r.get(l)];Nc(c,h)||Nc(c,p)||s.push({name:`settings ${l}`,label:`Setting of step ${l}`,
shop:p,yours:c,before:h})}return s}function Cc(t,e,n){let s={},o=t.filter(l=>e[l.name]==="yours");for(let l of o)
l.name.startsWith("settings ")||(s[l.name]=l.yours);let a=o.filter(l=>l.name.startsWith("settings "));if(!a.length)
return s;let r=Bc(n.settings);for(let l of a){let c=Number(l.name.split(" ")[1]);l.yours?r.set(c,l.yours):r.delete(
c)}return{...s,settings:[...r.values()]}}var Ec,Ao,Lo,Ir,Bc,Nc,Fn=$(()=>{Ec=["title","note","archived","settin\
gs"];Ao=(t,e)=>JSON.stringify(Lc(t))===JSON.stringify(Lc(e));Lo=(t,e)=>Wn(t,Ec.filter(n=>n in t&&!Ao(t[n],e[n]))),
Ir=({before:t={}},e)=>Object.keys(t).every(n=>Ao(t[n],e[n]));Bc=t=>new Map(t.map(e=>[e.step,e])),Nc=(t,e)=>Ao(
t?[t]:[],e?[e]:[])});async function No(t){Wr.add(t.id);try{return await o$(t)}finally{Wr.delete(t.id)}}async function o$(t){let e;try{
e=await zl(t)}catch(n){return a$(t,n)}try{return await Ic(e,4e3)??{where:"here",answer:null}}catch(n){if(n instanceof
j||!Dr(n))return{where:"here",answer:null};throw await fo(e.id),n}}async function a$(t,e){try{return{where:"sh\
op",answer:(await Dc({...t,number:0,queued_at:""},8e3)).body}}catch(n){throw n instanceof S&&Dr(n)?n:e}}async function Rc(){
return navigator.locks?navigator.locks.request("flangebook.outbox",Pc):Pc()}async function Pc(){let t=0;for(let{
id:e}of await Dt()){if(Wr.has(e))continue;let n=await Ss(e);if(!(!n||!await r$(n)))try{await Ic(n,8e3)&&(t+=1)}catch(s){
if(s instanceof j)break;Dr(s)&&await Cn(n.id,{refused:s.message,missing:s.status===404})}}return{sent:t,left:(await Dt()).
length}}async function Ic(t,e){if(!await i$(t))return null;let n=await Ss(t.id)??t;try{let s=await(n.parked?Fc(
n,e):Dc(n,e));return await Wc(n,s),{where:n.parked?"settle":"shop",answer:s.body}}catch(s){if(!(s instanceof S&&
s.status===412)||n.parked)throw s;return l$(n,e)}}async function i$({id:t,code:e,after:n,before:s,parked:o}){if(!n||
o)return!0;if(await Ss(n))return!1;if(!(await mo(n))?.proposed)return!0;let a=await Kt(e);return!a||a.proposals?.
some(r=>r.id===n)?!1:(await Cn(t,Ir({before:s},a)?{after:a.revision_id}:{parked:!0}),!0)}async function l$(t,e){
if(t.body.part)throw new S(c$);let{body:n,at:s}=await M("GET",`/cards/${t.code}`,{timeout:e});await ne(n);let o=(t.
body.settles??[]).some(l=>n.proposals.some(c=>c.id===l));if(o||!Dn(t.body,t.before??{},n).length)return await Ts(
t,s),await go(t.id,n.revision_id,l=>Ir(l,n)),{where:o?"settle":"shop",answer:n};let a={...t,parked:!0};await Cn(
t.id,{parked:!0});let r=await Fc(a,e);return await Wc(a,r),{where:"settle",answer:r.body}}async function Wc(t,{
body:e,at:n}){t.kind!=="trial"&&(await ne(e).catch(()=>{}),!t.parked&&t.after&&e.revision_id===t.after&&await go(
t.id,t.after)),await Ts(t,n,!!t.parked),await Jl(n)}function Dc({kind:t,code:e,id:n,body:s,after:o,etag:a,missing:r},l){
return t==="trial"?M("POST",`/cards/${e}/trials`,{body:r?{...s,again:!0}:s,timeout:l}):M("PUT",`/cards/${e}`,{
body:{...s,id:n,...o?{after:o}:{}},etag:o?"*":a,timeout:l})}function Fc({id:t,code:e,body:n,before:s,revision:o,
queued_at:a},r){let{reason:l,by:c,settles:h,...p}=n,u={...l?{reason:l}:{},...c?{by:c}:{}};return M("POST",`/ca\
rds/${e}/proposals`,{body:{id:t,changes:p,before:s,revision:o,made_at:a,...u},timeout:r})}function Dr(t){if(!(t instanceof
S))throw t;return t.status<500&&![401,408,429].includes(t.status)}var Wr,r$,c$,Eo=$(()=>{V();Fn();Et();vt();Wr=
new Set;r$=async({refused:t,again:e,missing:n,code:s})=>!t||!!(e&&n&&await Kt(s));c$={title:"Changed meanwhile",
status:412,detail:"The part was changed here, the shop was put back to an earlier day, and the card was change\
d again since. Open the card and make the change anew."}});function sn(){return Ae}async function Bo(t,e=!1){let n=await Dt().catch(()=>[]),s=await $o().catch(()=>[]);Ae=
{...Ae,...t,waiting:n.length,words:jr(n),settle:await d$(n).catch(()=>[]),lost:s.length,refused:n.filter(o=>o.
refused).length},document.documentElement.dataset.reached=String(Ae.reached),document.documentElement.dataset.
settle=String(Ae.settle.length),document.documentElement.dataset.waiting=String(Ae.waiting),document.dispatchEvent(
new CustomEvent("sync",{detail:{...Ae,newData:e}}))}function jr(t){let n=["trial","note","edit"].map(s=>({kind:s,
many:t.filter(o=>o.kind===s).length})).filter(({many:s})=>s).map(({kind:s,many:o})=>`${o} ${s}${o===1?"":"s"}`);
return n.length<2?n.join(""):`${n.slice(0,-1).join(", ")} and ${n.at(-1)}`}async function d$(t){let e=(await Ql()).
flatMap(({code:n,settle:s})=>Array(s).fill(n));for(let n of t)for(let s of n.body.settles??[])e.includes(n.code)&&
e.splice(e.indexOf(n.code),1);return e}function jn(t,e){let n=t||!!(e&&!(e instanceof j));n!==Ae.reached&&Bo({
reached:n})}function Hn(){return Bo({})}function H(){return Cs?(Fr=!0,Cs):(Cs=h$().finally(()=>Cs=void 0),Cs)}
async function h$(){do Fr=!1,await p$();while(Fr)}async function p$(){let t=!1;try{t=await jc(),(await Rc()).sent>
0&&(await jc(),t=!0),await Bo({reached:!0,at:new Date().toISOString()},t)}catch(e){await Bo(e instanceof j?{reached:!1}:
e instanceof S?{reached:!0}:{},t),e instanceof j||e instanceof S&&e.status===401||console.warn("changes feed:",
e)}}async function jc(){for(let t=!1;;){let e=await ec()??"",{body:n}=await M("GET",`/changes?since=${encodeURIComponent(
e)}`,{timeout:15e3});if(t||=n.cards.length>0||!!n.shop||!!n.reset,await nc(n),!n.more)return t}}function Hc(){
H(),addEventListener("online",()=>H()),addEventListener("offline",()=>H()),document.addEventListener("visibili\
tychange",()=>document.visibilityState==="visible"&&H()),setInterval(()=>document.visibilityState==="visible"&&
H(),1e4)}var Ae,Cs,Fr,bt=$(()=>{V();Et();Eo();vt();Ae={reached:null,waiting:0,words:"",refused:0,settle:[],lost:0,
at:null},Fr=!1});function Co(t){let e=En()==="bench"?"This device is a bench screen":"This device is an operator's",n=Nl(t)==="\
owner";return i`<div class="state" data-test="not-yours">
    <h1>This is for the ${n?"owner":"crew's phones"}</h1>
    <p>
      ${e}.
      ${n?"The owner does this, or makes it an owner's device under Shop, Crew.":"Open it on a phone or comput\
er of the crew."}
    </p>
    <p><a class="button" href="/">Find a card</a></p>
  </div>`}var P,pt,lt=$(()=>{_();Nt();Un();P=(t,e,n=d)=>dt(t)?e:n,pt=(t,e,n=d)=>fe(t)?e:n});function ut(t,e){let n=t.toFixed(e);return Number(n)===0?n.replace("-",""):n.replace("-","−")}function w(t,e={}){
return t==null?{text:"–",unit:""}:Yt()?N().inches==="fraction"?{text:f$(t/ge),unit:"in"}:{text:ut(t/ge,(e.digits??
1)+2),unit:"in"}:{text:ut(t,e.digits??1),unit:"mm"}}function f$(t){let e=Math.round(Math.abs(t)*64),n=e%64,s=64;
for(;n>0&&n%2===0;)n/=2,s/=2;let o=Math.floor(e/64),a=t<0&&e>0?"−":"";return n===0?`${a}${o}`:`${a}${o>0?`${o}\
 `:""}${n}/${s}`}function $t(t,{up:e=!1}={}){if(t==null)return{text:"–",unit:""};let n=Yt()?t/Hr:t,s=Math.abs(
n)<10?1:0;return{text:ut(e?Uc(n,s):n,s),unit:Yt()?"tons":"kN"}}function Lt(t,{up:e=!1}={}){if(t==null)return{text:"\
–",unit:""};let n=Yt()?t/Hr*m$:t,s=Math.abs(n)<20?1:0;return{text:ut(e?Uc(n,s):n,s),unit:Yt()?"tons/ft":"kN/\
m"}}function Uc(t,e){let n=10**e;return Math.ceil(t*n-1e-9)/n}function T(t,e=1){return t==null?{text:"–",unit:""}:
{text:ut(t,e),unit:"°"}}function Ps(t){if(t==null)return{text:"–",unit:""};let e=Yt()?t/u$:t;return{text:ut(
e,e<10?2:1),unit:Yt()?"lb":"kg"}}function on(t,e){if(/_(low|high)$/.test(t))return on(t.replace(/_(low|high)$/,
""),e);if(t.endsWith("_kn_per_m"))return Lt(e);if(t.endsWith("_mm_s")){let n=w(e,{digits:0});return{text:n.text,
unit:`${n.unit}/s`}}return t.endsWith("_mm")?w(e,{digits:Math.abs(e)<10?2:1}):t.endsWith("_kn")?$t(e):t.endsWith(
"_deg")?T(e):t.endsWith("_kg")?Ps(e):t.endsWith("_percent")?{text:ut(e,0),unit:"%"}:{text:String(Math.round(e*
100)/100),unit:""}}function f(t){return t.unit==="°"?`${t.text}°`:`${t.text} ${t.unit}`.trim()}function Ur(){
return Yt()?{unit:"tons",size:Hr}:{unit:"kN",size:1}}function B(){return Yt()?"in":"mm"}function st(t,e=B()){let n=t.
trim().replace(/^(\d+),(\d+)$/,"$1.$2");return/^[+-]?(\d+(\.\d*)?|\.\d+|\d+\s*\/\s*\d+|\d+\s+\d+\s*\/\s*\d+)$/.
test(n)?`${n} ${e}`:n}function K(t){if(t==null)return"";let e=Yt()?t/ge:t;return String(Number(e.toFixed(Yt()?
4:3)))}var ge,Hr,u$,m$,Yt,L=$(()=>{tt();ge=25.4,Hr=8.896443230521,u$=.45359237,m$=.3048,Yt=()=>N().units==="in\
ch"});function Ft(t,e){return t.length*e*.6+e*.3}function g$(t,e){return Math.abs(t.x-e.x)*2<t.width+e.width&&Math.abs(
t.y-e.y)*2<t.height+e.height}function Vc(t,[[e,n],[s,o]]){let a=0,r=1,l=[[e-t.x,s-e,t.width/2],[n-t.y,o-n,t.height/
2]];for(let[c,h,p]of l){if(h===0){if(Math.abs(c)>p)return!1;continue}let[u,m]=[(-p-c)/h,(p-c)/h];a=Math.max(a,
Math.min(u,m)),r=Math.min(r,Math.max(u,m))}return a<=r}function $$([t,e],[n,s]){return Po(t,e,n)!==Po(t,e,s)&&
Po(n,s,t)!==Po(n,s,e)}function Po(t,e,n){return(e[0]-t[0])*(n[1]-t[1])>(e[1]-t[1])*(n[0]-t[0])}var Ro,Io=$(()=>{
Ro=class{constructor(e){this.edges=e,this.taken=[]}choose(e){let n=e[0],s=1/0;for(let o of e){let a=o.cost+this.
cost(o);a<s&&([n,s]=[o,a])}this.taken.push(n.box);for(let o of n.lines??[])this.edges.push(o);return n}cost({box:e,
lines:n=[]}){let s=this.taken.filter(l=>g$(e,l)).length,o=this.edges.filter(l=>Vc(e,l)).length,a=n.reduce((l,c)=>l+
this.edges.filter(h=>$$(c,h)).length,0),r=n.reduce((l,c)=>l+this.taken.filter(h=>Vc(h,c)).length,0);return s*40+
Math.min(o,6)*6+Math.min(a,6)*3+r*20}}});function St(t){return t.length?`M${t.map(([e,n])=>`${e} ${-n}`).join("L")}Z`:""}function Rs(t){return t.length?
`M${t.map(([e,n])=>`${e} ${-n}`).join("L")}`:""}function Gt(t){let e=t.flat().map(([s])=>s),n=t.flat().map(([,
s])=>s);return[Math.min(...e),Math.min(...n),Math.max(...e),Math.max(...n)]}function Gc([t,e,n,s],o){return`${t-
o} ${-s-o} ${n-t+2*o} ${s-e+2*o}`}function an([t,e,n,s],o,a){let r=Math.min(o/Math.max(n-t,1e-6),a/Math.max(s-
e,1e-6));return([l,c])=>[(l-t)*r,(s-c)*r]}var Le=$(()=>{});function F(t){let{text:e}=w(t,{digits:2});return N().inches==="fraction"?e:e.replace(/(\.\d*?)0+$/,"$1").replace(
/\.$/,"")}function zc({section:t,part:e},{pixels:n=Vn(),tallest:s=n*.75,test:o="section",mark:a=0}={}){let l=46.800000000000004,
c=an(Gt([t.outline]),n-2*l,s-2*l),h=t.outline.map(c),p=new Ro(h.map((v,A)=>[v,h[(A+1)%h.length]])),u=y$(t).map(
(v,A)=>v$(v.map(c),F(e.flats_mm[A]),p,18)),m=t.bend_points.map((v,A)=>_$(c(v),A+1,e.bends[A],p,18)),[g,b,y,W]=S$(
[...h,...m.flatMap(v=>qc(v.box)),...u.flatMap(v=>[...qc(v.box),...v.lines.flat()])]),[C,E]=[y-g+12,W-b+12];return i`<svg
    class="drawing section"
    data-test=${o}
    role="img"
    aria-label=${w$(e)}
    width=${C}
    height=${E}
    viewBox="${g-6} ${b-6} ${C} ${E}">
    <path class="sheet" d="M${h.map(v=>v.join(" ")).join("L")}Z" />
    ${u.map(({lines:v,box:A,text:Z})=>k`${v.map(([at,co])=>k`<path class="dimension" d="M${at}L${co}"/>`)}
      ${k$(v[0])}${x$(A,Z,18)}`)}
    ${m.map(({box:v,text:A,number:Z,badge:at})=>k`<circle class="badge ${Z===a?"marked":""}" cx=${at[0]} cy=${at[1]}
          r=${18*.68}/>
      <text class="badge-number" x=${at[0]} y=${at[1]} font-size=${18*.95} text-anchor="middle"
        dominant-baseline="central">${Z}</text>
      <text x=${at[0]+18*.95} y=${v.y} font-size=${18}
        dominant-baseline="central">${A}</text>`)}
  </svg>`}function Vn(){return Math.min(Math.max(innerWidth-32,300),720)}function w$(t){return`Section. ${t.flats_mm.
map((n,s)=>{let o=t.bends[s],a=o?`, bend ${s+1}: ${Kc(o)} ${o.direction}`:"";return`flat ${s+1}: ${f(w(n))}${a}`}).
join("; ")}.`}function Kc(t){return t.kind==="closed_hem"?"hem":t.kind==="open_hem"?"open hem":f(T(t.included_angle_deg)).
replace(".0°","°")}function y$({dimensions:t,bend_points:e,centre_line:n}){if(t)return t;let s=[n[0],...e,n[n.
length-1]];return s.slice(1).map((o,a)=>[s[a],o])}function _$(t,e,n,s,o){let a=Kc(n),r=Ft(a,o)+1.6*o,l=[1.4,1.9,
2.6].flatMap(p=>b$.map(u=>{let m=t[0]+Math.cos(u)*(p*o+r/2-o*.6),g=t[1]+Math.sin(u)*p*o;return{box:{x:m,y:g,width:r,
height:o*1.5},cost:p*2}})),{box:c}=s.choose(l),h=[c.x-r/2+o*.75,c.y];return{box:c,text:a,number:e,badge:h}}function v$([
t,e],n,s,o){let a=Math.hypot(e[0]-t[0],e[1]-t[1])||1,r=[-(e[1]-t[1])/a,(e[0]-t[0])/a],[l,c]=[Ft(n,o),o*1.3],h=(m,g)=>[
m[0]+r[0]*g,m[1]+r[1]*g],p=[1.8,3.2,4.8].flatMap(m=>[m,-m].flatMap(g=>[.5,.3,.7].map(b=>{let[y,W]=[h(t,g*o),h(
e,g*o)],C={x:y[0]+(W[0]-y[0])*b,y:y[1]+(W[1]-y[1])*b,width:l,height:c},E=a<l*1.4&&Math.abs(r[1])>.5?Math.sign(
g*r[1])*o*.9:0,v=[[y,W],[h(t,Math.sign(g)*o*.5),h(y,Math.sign(g)*4)],[h(e,Math.sign(g)*o*.5),h(W,Math.sign(g)*
4)]];return{box:{...C,y:C.y+E},cost:Math.abs(g)+(b===.5?0:.5),lines:v}}))),u=s.choose(p);return{box:u.box,lines:u.
lines,text:n}}function k$(t){return t.map(([e,n])=>k`<path class="dimension tick" d="M${e-4} ${n+4}L${e+4} ${n-
4}"/>`)}function x$({x:t,y:e,width:n,height:s},o,a){return k`<rect class="ground" x=${t-n/2} y=${e-s/2} width=${n} height=${s}/>
    <text x=${t} y=${e} font-size=${a} text-anchor="middle" dominant-baseline="central">${o}</text>`}function qc({
x:t,y:e,width:n,height:s}){return[[t-n/2,e-s/2],[t+n/2,e+s/2]]}function S$(t){return Gt([t])}var b$,Jt=$(()=>{
_();tt();L();Io();Le();b$=[0,90,180,270,45,135,225,315].map(t=>t*Math.PI/180)});function x(t,e=T$[t]){return i`<span class="flag ${t}"
    ><svg viewBox="0 0 24 24" aria-hidden="true">${M$[t]}</svg>${e}</span
  >`}function rn(t,e){return t.replace(/\{(\w+)\}/g,(n,s)=>s in e?f(on(s,e[s])):n)}function O$({step:t,steps:e=[]}){
return e.length>1?i`<b>Steps ${e.join(", ")}.</b> `:t?i`<b>Step ${t}.</b> `:d}function wt(t,{quiet:e=!1}={}){let n=t.
filter(s=>!e||s.level!=="ok").sort((s,o)=>Yc[jt(s)]-Yc[jt(o)]);return n.length===0?d:i`<ul class="checks" data-test="checks">
    ${n.map(s=>i`<li class="check" data-level=${s.level} data-code=${s.code}>
          ${x(jt(s))}
          <div class="say">
            ${O$(s)}${rn(s.template,s.numbers)}
            ${s.do?i`<div class="do">${rn(s.do_template??s.do,s.numbers)}</div>`:d}
          </div>
        </li>`)}
  </ul>`}var T$,Yc,M$,jt,q=$(()=>{_();L();T$={stop:"Stop",caution:"Caution",unknown:"Unknown",note:"Note",ok:"\
OK"},Yc={stop:0,caution:1,unknown:2,note:3,ok:4},M$={stop:k`<path d="M7 1h10l6 6v10l-6 6H7l-6-6V7z" fill="none" stroke="currentColor" stroke-width="3"/>`,
caution:k`<path d="M12 3.2 22 20.5H2z" fill="none" stroke="currentColor" stroke-width="2.6"
      stroke-linejoin="round"/>
    <path d="M12 9.2v5.4M12 16.4v2.2" fill="none" stroke="currentColor" stroke-width="2.4"/>`,unknown:k`<circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5"/>
    <path d="M8.5 9a3.5 3.5 0 1 1 5 3.2c-1 .5-1.5 1-1.5 2.3M12 17v2" fill="none" stroke="currentColor"
      stroke-width="2.5"/>`,note:k`<path d="M3 12h16M13 6l6 6-6 6" fill="none" stroke="currentColor" stroke-width="2.5"/>`,
ok:k`<path d="M3 13l6 6L21 5" fill="none" stroke="currentColor" stroke-width="3.5"/>`};jt=({level:t,sign:e,do:n,
step:s,steps:o=[]})=>e??(t==="ok"&&n&&(s||o.length)?"note":t)});function ln(t){let e=new Date(t);return Number.isNaN(e.valueOf())?"":e.toLocaleDateString("en-GB",{day:"numeri\
c",month:"short",year:"numeric"})}function et(t){let e=new Date(t);return Number.isNaN(e.valueOf())?"":`${ln(t)}\
, ${e.toLocaleTimeString("en-GB",{hour:"2-digit",minute:"2-digit"})}`}function Gn({made_at:t,received_at:e}){return e?
!t||Math.abs(Date.parse(t)-Date.parse(e))<A$?et(e):`in the shop ${et(e)}, made ${et(t)} by the device’s clock`:
et(t??"")}var A$,Ht=$(()=>{A$=5*6e4});function Jc(t,{metalName:e,waiting:n}){return i`<ul class="rows cards" data-test="cards">
    ${t.map(s=>i`<li class="row">
          <a href="/c/${s.code}" data-test="card" data-code=${s.code}>
            <span class="lead">${s.title||"Untitled"}</span>
            <span class="code">${I(s.code)}</span>
            <span class="more">
              ${e(s.metal)}, ${F(s.thickness_mm)} ${B()},
              ${s.bends===1?"1 bend":`${s.bends} bends`} · changed
              ${ln(s.updated_at)}${s.updated_by?` by ${s.updated_by}`:""}${s.archived?" · put away":""}
              ${L$(n.get(s.code)??"")}
              ${s.settle?i`<span data-test="settle">${x("caution",`${s.settle} to settle`)}</span>`:d}
              ${s.worst==="stop"?x("stop"):d}
            </span>
          </a>
        </li>`)}
  </ul>`}var L$,Zc=$(()=>{_();it();Jt();L();q();Ht();L$=t=>t?i`· <b>${t} ${/^1 \S+$/.test(t)?"waits":"wait"}</b>`:
d});function Ne(t){if(t instanceof j)return i`<div class="state" data-test="unreachable">
      <h1>The shop's server does not answer</h1>
      This page needs it. Cards that are on this device still open: <a href="/">find a card</a>.
    </div>`;let e=t instanceof S?t.message:String(t);return t instanceof S||console.error(t),i`<div class="state" data-test="failed">
    <h1>That did not work</h1>
    ${e}
  </div>`}var Tt,xt,Bt=$(()=>{_();V();Tt=t=>i`<p class="state" data-test="loading">${t}</p>`,xt=(t,e=d)=>i`<div class="state" data-test="empty">
    <h1>${t}</h1>
    ${e}
  </div>`});function mt(t,{replace:e=!1}={}){N$()&&(history[e?"replaceState":"pushState"](null,"",t),Ee(!0))}function oe(t){
Is=t}function N$(){let t=Is?.();return!t||confirm(t)}function Xc(){Is?.()?qn():Ee()}async function Ee(t=!1){Vr.
abort(),Vr=new AbortController,Is=null;let{signal:e}=Vr,n=document.documentElement;delete n.dataset.ready;let s=E$(
Do(location.pathname));n.dataset.screen=s?.route.name??"nowhere",n.toggleAttribute("data-floor",!!s?.route.floor),
qn();let o=r=>{e.aborted||Me(r,Wo())};if(Me(i``,Wo()),!s){o(i`<div class="state">
        <h1>No such page</h1>
        The address ${location.pathname} leads nowhere. <a href="/">Find a card</a>
      </div>`),n.dataset.ready="nowhere";return}let{needs:a}=s.route;if(a&&!dt(a)){o(Co(a)),n.dataset.ready="n\
ot-yours";return}try{let r=await s.route.load();if(e.aborted)return;scrollTo(0,0),await r.show({params:s.params,
query:new URLSearchParams(location.search),render:o,title:l=>document.title=`${l} · Flangebook`,ready:()=>{e.
aborted||(n.dataset.ready=s.route.name)},signal:e})}catch(r){if(e.aborted)return;o(Ne(r)),n.dataset.ready="fai\
led"}t&&!e.aborted&&Wo().focus({preventScroll:!0})}function E$(t){return t&&dc(t.route.name)?{route:td("pair"),
params:{}}:t}function Qc(){return addEventListener("popstate",()=>Ee()),addEventListener("beforeunload",t=>Is?.()&&
t.preventDefault()),document.addEventListener("click",t=>{let e=t.target.closest("a");!e||t.defaultPrevented||
t.button!==0||t.ctrlKey||t.metaKey||t.shiftKey||e.target||e.hasAttribute("download")||e.origin!==location.origin||
!Do(e.pathname)||e.hash&&e.pathname===location.pathname||(t.preventDefault(),mt(e.pathname+e.search+e.hash))}),
Wo().replaceChildren(),Ee()}var Vr,Is,Wo,Ct=$(()=>{_();Gr();Je();Nt();Un();lt();Bt();Vr=new AbortController,Is=
null,Wo=()=>document.getElementById("main")});function jo(t,e,n,s){let o=ht(t.code),a=o.fault||(t.asked&&!o.whole?C$(o.code):"");return i`<form class="code-form" @submit=${l=>{
l.preventDefault(),t.asked=!0,o.whole?mt(`/c/${o.code}`):n()}}>
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
        .value=${kt(t.code)}
        aria-invalid=${a?"true":"false"}
        aria-describedby="code-more"
        @input=${l=>{t.code=l.target.value,t.asked=!1,n()}} />
      <button class="button ${o.whole?"next":""}" data-test="open">Open</button>
    </div>
    <p id="code-more" class="code-more" role="status">
      ${a?i`<span class="wrong" data-test="code-fault">${a}</span>`:B$(o,e,s)}
    </p>
  </form>`}function B$(t,e,n){if(!t.whole)return n;let s=e.find(o=>o.code===t.code);return s?i`<span data-test="code-found"
        >${I(t.code)} is <b>${s.title||"untitled"}</b>.</span
      >`:i`<span data-test="code-unknown"
        >A right code, but not on this device yet. Open asks the shop.</span
      >`}var Fo,C$,qr=$(()=>{_();Oe();it();Ct();Fo=()=>({code:"",asked:!1});C$=t=>t?`A card code has seven cha\
racters. This is ${t.length}.`:"Type the seven characters printed on the label."});var nd={};Q(nd,{show:()=>R$});async function R$(t){t.title("Find a card");let e={typed:Fo(),search:"",shown:zr},
n=await ed(),s=!1,o=()=>{t.render(i`<div class="home">
        <h1>Find a card</h1>
        <div class="home-scan">
          <a class="button next wide" href="/scan" data-test="scan">${P$} Scan a label</a>
        </div>
        <div class="home-ways">
          ${jo(e.typed,n.list,o,"Seven characters, capitals or not.")}
          <nav class="home-new" aria-label="Start something">
            ${pt("/bend",i`<a class="button" href="/bend" data-test="check-a-bend">Check a bend</a>`)}
            ${pt("/part",i`<a class="button" href="/part" data-test="new-part"
                >${P("cards.create","New part","Plan a part")}</a
              >`)}
          </nav>
        </div>
        ${I$(e,n,s,o)}
      </div>`)};o();let a=async()=>{s||=sn().reached!==null,n=await ed(),o(),(s||n.list.length)&&t.ready()};document.
addEventListener("sync",a,{signal:t.signal}),n.list.length&&t.ready(),await H().then(a)}async function ed(){let[
t,e,n]=await Promise.all([xe().catch(()=>[]),ue().catch(()=>{}),Dt().catch(()=>[])]),s=new Map;for(let{code:a}of n)
s.set(a,jr(n.filter(r=>r.code===a)));let o=new Map((e?.metals??[]).map(a=>[a.code,a.name]));return{list:t,waiting:s,
metalName:a=>o.get(a)??a}}function I$(t,e,n,s){if(e.list.length===0)return n?F$():i`<p class="state" data-test="loading">Fetching the shop’s cards…</p>`;
let o=W$(e,t.search);return i`<section class="home-list" aria-label="Cards">
    <div class="field search">
      <label for="search">Look for a title, code, metal or note</label>
      <input
        id="search"
        data-test="search"
        type="search"
        autocomplete="off"
        .value=${kt(t.search)}
        @input=${a=>{t.search=a.target.value,t.shown=zr,s()}} />
    </div>
    <p class="count" role="status" data-test="count">
      ${D$(o.length,e.list.length,t.search)}
    </p>
    ${Jc(o.slice(0,t.shown),e)}
    ${o.length>t.shown?i`<div class="buttons">
            <button
              class="button"
              data-test="more"
              @click=${()=>{t.shown+=zr,s()}}>
              Show more
            </button>
          </div>`:d}
  </section>`}function W$({list:t,metalName:e},n){let s=n.toLowerCase().split(/\s+/).filter(Boolean);return s.
length===0?t.filter(o=>!o.archived):t.filter(o=>{let{code:a,title:r,note:l,metal:c}=o,h=`${a} ${I(a)} ${r} ${l}\
 ${c} ${e(c)}`.toLowerCase();return s.every(p=>h.includes(p))})}function D$(t,e,n){return n.trim()===""?t===1?
"1 card on this device":`${t} cards on this device`:t===0?`None of the ${e} cards has that.`:`${t} of ${e} car\
ds`}function F$(){return sn().reached===!1?i`<div class="state" data-test="empty">
        <strong>No cards on this device yet</strong>The shop’s server does not answer. Once it does, every
        card comes here and stays.
      </div>`:i`<div class="state" data-test="empty">
        <strong>The shop has no cards yet</strong>${P("cards.create","Describe a part, and keep its plan as th\
e first card.","Once the owner has made one, it comes here.")}
      </div>`}var zr,P$,sd=$(()=>{_();Oe();it();Et();vt();bt();lt();Zc();qr();zr=40,P$=i`<svg viewBox="0 0 40 40" aria-hidden="true">
  <path d="M2 9H38M2 31H38M9 2V38M31 2V38" />
  <rect x="15" y="15" width="10" height="10" />
</svg>`});var cn,od,ad,zn,Kr=$(()=>{cn=[{name:"tensile_mpa",label:"Tensile strength",unit:"MPa; safety checks use the hi\
gh end",needed:!0},{name:"yield_mpa",label:"Yield strength",unit:"MPa",needed:!0},{name:"youngs_modulus_mpa",label:"\
Stiffness E",unit:"MPa",needed:!0},{name:"density_kg_m3",label:"Density",unit:"kg/m³",needed:!0},{name:"radiu\
s_over_v",label:"Inside radius over V",unit:"",needed:!0},{name:"springback_at_90_deg",label:"Springback at 90\
°, V = 8 t",unit:"°",needed:!0},{name:"min_radius_over_t_across",label:"Smallest radius over t, across the g\
rain",unit:"",needed:!1},{name:"min_radius_over_t_with",label:"Smallest radius over t, with the grain",unit:"",
needed:!1},{name:"hardening_k_mpa",label:"Hardening K",unit:"MPa",needed:!1},{name:"hardening_n",label:"Harden\
ing n",unit:"",needed:!1}],od=["guaranteed minimum","typical","measured","common practice","from memory"],ad=[
["","none: gauge numbers are refused"],["steel","steel, uncoated"],["galvanised","galvanised steel"],["stainle\
ss","stainless steel"],["aluminium","aluminium"]],zn=[{name:"poisson",label:"Poisson's ratio",needed:!0},{name:"\
prestrain",label:"Prestrain (may be empty)",needed:!1}]});function dn(t=""){let n=t.split(`
`).filter(s=>s.trim()).map(s=>{let o=s.split(";").map(a=>a.trim());return Object.fromEntries(rd.map((a,r)=>[a,
o[r]??""]))});return n.length?n:[{...id}]}function dd(t){let e=dn(t),{angle:n,face:s}=e[e.length-1];return Ws(
[...e,{...id,angle:n,face:s}])}var rd,id,ld,Ws,cd,hd,Ds,Yr=$(()=>{rd=["v","angle","radius","face","centre","co\
de","rating"],id={v:"",angle:"",radius:"",face:"top",centre:"",code:"",rating:""},ld=[["top","top"],["back","b\
ack"],["bottom","bottom"],["front","front"]];Ws=t=>t.map(e=>rd.map(n=>e[n].replaceAll(";",",")).join("; ")).join(
`
`),cd=(t,e,n)=>Ws(dn(t).map((s,o)=>o===e?{...s,...n}:s));hd=(t,e)=>Ws(dn(t).filter((n,s)=>s!==e)),Ds={v_opening_mm:"\
v",angle_deg:"angle",shoulder_radius_mm:"radius",face:"face",centre_mm:"centre",code:"code",rating_kn_per_m:"r\
ating"}});var ud,Jr,pd,Zr,Xr,Ho,Kn,Qr,ti,Uo,ei=$(()=>{ud="Empty is unknown: checks with it then say so.",Jr={name:"ratin\
g_kn_per_m",label:"Rating",type:"rating",unit:"kN/m",hint:"As stamped on the tool or in its maker's papers."},
pd={name:"segments_mm",label:"Pieces owned",type:"lengths",hint:"Lengths with commas between, a piece owned tw\
ice twice."},Zr=[{name:"tray",label:"Tray",type:"text"},{name:"slot",label:"Slot",type:"text"}],Xr=[{name:"con\
dition",label:"Condition",type:"pick",options:[["good","good"],["worn","worn"],["damaged","damaged"],["unknown",
"unknown"]]},{name:"condition_note",label:"Note on its condition",type:"note"}],Ho={name:"name",label:"Name",type:"\
text",broad:!0},Kn=(t,e)=>({name:"points_mm",label:"Outline by points",type:"points",dxf:t,hint:`One point a l\
ine: x, y. x towards the back gauge, y up. ${e}`,when:n=>n.shape==="points"}),Qr=t=>t.shape!=="multi_v",ti=({die_holder_height_mm:t})=>!!t&&
!/^0+([.,]0*)?( mm| in)?$/.test(String(t)),Uo={punches:[{title:"What it is",part:"what",fields:[Ho,{name:"angl\
e_deg",label:"Nose angle",type:"number",unit:"°"},{name:"tip_radius_mm",label:"Tip radius",type:"length"}]},{
title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[["straight","\
straight"],["gooseneck","gooseneck"],["points","by points or DXF"]]},{name:"height_mm",label:"Height, tip to s\
eat",type:"length"},{name:"body_width_mm",label:"Width of the body",type:"length"},{name:"neck_relief_mm",label:"\
Throat behind the tip",type:"length",when:t=>t.shape==="gooseneck"},{name:"neck_width_mm",label:"Thickness of \
the neck",type:"length",when:t=>t.shape==="gooseneck",blank:"as the body"},{name:"throat_top_mm",label:"Throat\
 begins to close",type:"length",when:t=>t.shape==="gooseneck",blank:"as high as it can",hint:"Above the tip."},
Kn("punch","The tip is at 0, 0."),{name:"turned",label:"Sits in the press",type:"yes",options:[["no","as drawn"],
["yes","turned round"]]}]},{title:"Rating and pieces",part:"rest",fields:[Jr,pd]},{title:"Place and condition",
part:"rest",fields:[...Zr,...Xr]}],dies:[{title:"What it is",part:"what",fields:[Ho,{name:"v_opening_mm",label:"\
V opening",type:"length",hint:"Between the sharp corners of face and flanks.",when:Qr},{name:"angle_deg",label:"\
Angle of the V",type:"number",unit:"°",when:Qr},{name:"shoulder_radius_mm",label:"Shoulder radius",type:"leng\
th",when:Qr}]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pick",broad:!0,options:[
["single_v","single V"],["multi_v","block with several V's"],["points","by points or DXF"]]},{name:"height_mm",
label:"Height",type:"length"},{name:"width_mm",label:"Width",type:"length"},{name:"turned",label:"Sits in the \
press",type:"yes",options:[["no","as drawn"],["yes","turned round"]]},{name:"openings",label:"The V's of the b\
lock",type:"openings",when:t=>t.shape==="multi_v"},{name:"up",label:"V that is up",type:"number",hidden:!0,when:t=>t.
shape==="multi_v"},Kn("die","The top face is at y 0, the V's middle at x 0.")]},{title:"Rating and pieces",part:"\
rest",fields:[Jr,pd]},{title:"Place and condition",part:"rest",fields:[...Zr,...Xr]}],holders:[{title:"What it\
 is",part:"what",fields:[Ho,Jr]},{title:"Outline",part:"outline",fields:[{name:"shape",label:"Shape",type:"pic\
k",broad:!0,options:[["block","plain block"],["clamps","clamps that stick out"],["points","by points or DXF"]]},
{name:"height_mm",label:"Height, seat to ram",type:"length"},{name:"overhang_front_mm",label:"Overhang to the \
front",type:"length",hint:"From the tip's line, clamps included."},{name:"overhang_back_mm",label:"Overhang to\
 the back",type:"length"},{name:"clamp_height_mm",label:"Clamps up from the seat",type:"length",when:t=>t.shape===
"clamps"},{name:"body_front_mm",label:"Body above, to the front",type:"length",when:t=>t.shape==="clamps"},{name:"\
body_back_mm",label:"Body above, to the back",type:"length",when:t=>t.shape==="clamps"},Kn("holder","The punch\
's seat is at 0, 0.")]},{title:"Place and condition",part:"rest",fields:[...Zr,...Xr]}],press:[{title:"The pre\
ss",part:"what",fields:[Ho,{name:"force_kn",label:"Full force",type:"number",unit:"kN"},{name:"bed_length_mm",
label:"Bed length",type:"length"},{name:"between_frames_mm",label:"Between the frames",type:"length"},{name:"o\
pen_height_mm",label:"Open height",type:"length"},{name:"stroke_mm",label:"Stroke",type:"length"},{name:"throa\
t_mm",label:"Throat",type:"length"}]},{title:"Ram and bed",part:"outline",fields:[{name:"ram_width_mm",label:"\
Ram width",type:"length",needed:!0},{name:"ram_height_mm",label:"Ram height",type:"length",needed:!0},{name:"b\
ed_width_mm",label:"Bed width",type:"length",needed:!0},{name:"bed_height_mm",label:"Bed height",type:"length",
needed:!0},{name:"floor_below_die_mm",label:"Floor below the die",type:"length",broad:!0,blank:"not looked at",
hint:"From the face that the die stands on, down to the floor: long parts hang that far."},{...Kn("ram","From \
the face that carries the holder. Empty: a plain beam."),name:"ram_points_mm",label:"Ram by points",when:void 0,
folded:!0},{...Kn("bed","From the face that carries the die or its holder. Empty: a plain beam."),name:"bed_po\
ints_mm",label:"Bed by points",when:void 0,folded:!0}]},{title:"Riser or die holder on the bed",part:"rest",fields:[
{name:"die_holder_height_mm",label:"Height under the die",type:"length",blank:"none",broad:!0,hint:"0 or empty\
: the die stands on the bed."},{name:"die_holder_width_mm",label:"Width",type:"length",when:ti,blank:"by point\
s"},{name:"die_holder_rating_kn_per_m",label:"Rating of the die holder",type:"rating",unit:"kN/m",hint:"As sta\
mped on it or in its papers.",when:ti},{...Kn("die_holder","The die's seat is at y 0, the bed's at minus the h\
eight. Empty: a plain block."),name:"die_holder_points_mm",label:"Die holder by points",when:ti,folded:!0}]},{
title:"What it bears",part:"rest",fields:[{name:"force_per_m_limit_kn_per_m",label:"Most force per length of b\
ed",type:"rating",unit:"kN/m",hint:"What bed and ram bear over a short length."},{name:"off_centre_mm",label:"\
Full force off the middle, up to",type:"length",blank:"unknown"},{name:"bending_speed_mm_s",label:"Bending spe\
ed",type:"number",unit:"mm/s",blank:"unknown"}]},{title:"Back gauge",part:"rest",fields:[{name:"gauge_x_min_mm",
label:"X from",type:"length"},{name:"gauge_x_max_mm",label:"X to",type:"length"},{name:"gauge_r_min_mm",label:"\
R from",type:"length"},{name:"gauge_r_max_mm",label:"R to",type:"length"},{name:"finger_height_mm",label:"Fing\
er height",type:"length"},{name:"finger_depth_mm",label:"Finger depth",type:"length"},{name:"gauge_repeatabili\
ty_mm",label:"Comes back to a place within ±",type:"length",broad:!0,blank:"unknown",hint:"As in its papers. \
Empty: 0.1 mm is counted with (common practice)."}]},{title:"Holder in the ram, and notes",part:"rest",fields:[
{name:"holder",label:"Holder",type:"pick",options:[],blank:"none",broad:!0},{name:"note",label:"Note",type:"no\
te"}]}]}});function Pt(t=""){let e=t.trim().replace(/^([+-]?\d+),(\d+)$/,"$1.$2");return e===""?null:j$.test(e)?Number(e):
e}function U$(t){let{show:e}=hn.number;return{v:K(t.v_opening_mm),angle:e(t.angle_deg),radius:K(t.shoulder_radius_mm),
face:t.face,centre:K(t.centre_mm),code:t.code??"",rating:e(t.rating_kn_per_m)}}function V$({v:t,angle:e,radius:n,
face:s,centre:o,code:a,rating:r}){let l={v_opening_mm:Vo(t),angle_deg:Pt(e),shoulder_radius_mm:Vo(n),centre_mm:Vo(
o)};return{...Object.fromEntries(Object.entries(l).filter(([,h])=>h!==null)),face:s||"top",code:a||null,rating_kn_per_m:Pt(
r)}}function Go(t,e){return Object.fromEntries(Be(t).map(({name:n,type:s})=>[n,hn[s].show(e[n])]))}function qo(t,e,n={}){
let s=({name:r,type:l})=>r in n&&hn[l].show(n[r])===e[r]?n[r]:hn[l].take(e[r]),a=Be(t).filter(({when:r})=>!r||
r(e)).map(r=>({spec:r,value:s(r)}));return Object.fromEntries(a.filter(({spec:r,value:l})=>l!==null||G$(r)).map(
({spec:r,value:l})=>[r.name,l]))}function fd(t){let e={name:t.name??"",note:t.note??"",gauge_family:t.gauge_family??
""};for(let{name:n}of zn)e[n]=hn.number.show(t[n]);for(let{name:n}of cn){for(let s of q$)e[`${n}.${s}`]=hn.number.
show(t[n]?.[s]);e[`${n}.standing`]||="typical"}return e}function gd(t){let e={name:t.name.trim(),note:t.note.trim(),
gauge_family:t.gauge_family||null};for(let{name:n,needed:s}of zn)(t[n]?.trim()||!s)&&(e[n]=Pt(t[n]));for(let{name:n,
needed:s}of cn){let o=["low","nominal","high","source"].some(a=>t[`${n}.${a}`]?.trim());e[n]=o||s?z$(t,n):null}
return e}function z$(t,e){let n=["low","nominal","high"].map(s=>[s,Pt(t[`${e}.${s}`])]);return{...Object.fromEntries(
n.filter(([,s])=>s!==null)),source:(t[`${e}.source`]??"").trim(),standing:t[`${e}.standing`]}}function $d(t,e){
let n={},s=[];for(let[o,a]of Object.entries(t)){let r=`.${o}.`,c=(r.includes(".openings.")?e.filter(p=>p==="op\
enings"):e).filter(p=>r.includes(`.${p}.`)).sort((p,u)=>u.length-p.length)[0],h=/\.(\d+)$/.exec(o)?.[1];c==="o\
penings"?(n.openings??=[]).push(...a.map(p=>K$(o,p))):c?(n[c]??=[]).push(...h&&r.endsWith(`.${c}.${h}.`)?a.map(
p=>`Number ${Number(h)+1}: ${p}`):a):s.push(...a.map(p=>`${o}: ${p}`))}return{byName:n,others:s}}function K$(t,e){
let[,n,s]=/openings\.(\d+)(?:\.(\w+))?$/.exec(t)??[];return n===void 0?e:`V ${Number(n)+1}: ${s?`${s}: `:""}${e}`}
var j$,Vo,H$,hn,md,Be,G$,q$,ae=$(()=>{Kr();Yr();ei();L();j$=/^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;Vo=(t="")=>t.
trim()===""?null:st(t),H$=(t="")=>t.split(/[\n;]/).map(e=>e.trim()).filter(Boolean),hn={text:{show:t=>t??"",take:(t="")=>t.
trim()},note:{show:t=>t??"",take:(t="")=>t.trim()},pick:{show:t=>t??"",take:t=>t||null},yes:{show:t=>t?"yes":"\
no",take:t=>t==="yes"},length:{show:K,take:Vo},number:{show:t=>t==null?"":String(t),take:Pt},rating:{show:t=>t==
null?"":String(t),take:Pt},lengths:{show:t=>(t??[]).map(K).join(", "),take:(t="")=>t.split(/[,;\n]/).filter(e=>e.
trim()).map(e=>st(e))},points:{show:t=>(t??[]).map(([e,n])=>`${K(e)}, ${K(n)}`).join(`
`),take:t=>H$(t).map(e=>e.split(e.includes(",")?",":/\s+/).map(n=>st(n)))},openings:{show:t=>Ws((t??[]).map(U$)),
take:t=>dn(t).map(V$)},figure:{show:String,take:String}};md=t=>hn.points.show(t),Be=t=>Uo[t].flatMap(e=>e.fields);
G$=({type:t,blank:e})=>t==="rating"||e!==void 0,q$=["low","nominal","high","source","standing"]});function zo(t){let e={...Y$};for(let n of si){let s=t.get(ni[n])?.slice(0,60);if(s==null)continue;let o=` ${B()}`;
e[n]=oi(n)&&s.endsWith(o)?s.slice(0,-o.length):s}return e}function Ko(t){let e=new URLSearchParams;for(let n of si){
let s=t[n].trim();s!==""&&e.set(ni[n],oi(n)?st(s):s)}return e.toString()}function Fs(t){return J$.filter(e=>t[e].
trim()==="")}function pn(t){let e={};for(let n of si){let s=t[n].trim();s!==""&&(e[n]=oi(n)?st(s):n==="include\
d_angle_deg"?Pt(s):s)}return e}var Y$,ni,si,J$,oi,Yo=$(()=>{ae();L();Y$={metal:"",thickness_mm:"",bend_length_mm:"",
included_angle_deg:"90",die:"",punch:"",punch_radius_mm:""},ni={metal:"metal",thickness_mm:"thickness",bend_length_mm:"\
length",included_angle_deg:"angle",die:"die",punch:"punch",punch_radius_mm:"tip"},si=Object.keys(ni),J$=["meta\
l","thickness_mm","bend_length_mm","included_angle_deg"],oi=t=>t.endsWith("_mm")});function Jo(t){return Object.hasOwn(Ce,t)?t:void 0}async function ct(t,e){try{return await ai(t,e)}catch(n){let s=n instanceof
j?await ue():void 0;if(!s?.[t])throw n;return{items:s[t],etag:null,kept:!0}}}async function ai(t,e){let{body:n,
etag:s}=await M("GET",`/${t}`,{signal:e});return{items:n[t],etag:s,kept:!1}}async function bd(t,e,n){await M("\
PUT",`/${t}`,{body:{[t]:e.map(un),by:N().name},etag:n})}async function Zo(t){try{return await ri(t)}catch(e){let n=e instanceof
j?await ue():void 0;if(!n)throw e;return{press:n.press??null,etag:null,kept:!0}}}async function ri(t){let{body:e,
etag:n}=await M("GET","/press",{signal:t});return{press:e.press,etag:n,kept:!1}}async function wd(t,e){await M(
"PUT","/press",{body:{press:un(t),by:N().name},etag:e})}function un({outline_mm:t,outlines_mm:e,...n}){return n}
function yd(t,e){return JSON.stringify(t&&un(t))===JSON.stringify(e&&un(e))}function Pe({tray:t,slot:e}){return!t&&
!e?"place not given":[t&&(/^\S{1,4}$/.test(t)?`Tray ${t}`:t),e&&`slot ${e}`].filter(Boolean).join(", ")}var Ce,
ot,yt=$(()=>{V();tt();vt();Ce={punches:{one:"punch",many:"punches",title:"Punches"},dies:{one:"die",many:"dies",
title:"Dies"},holders:{one:"holder",many:"holders",title:"Holders"},metals:{one:"metal",many:"metals",title:"M\
etals"}},ot={press:"shop.write_press",punches:"shop.write_punches",dies:"shop.write_dies",holders:"shop.write_\
holders",metals:"shop.write_metals"}});function $e(t,e,n,s=250){let o,a,r=()=>{clearTimeout(o),a?.abort()};n.addEventListener("abort",r);async function l(c){
a=new AbortController;let{signal:h}=a;try{let p=await t(c,h);h.aborted||e({question:c,answer:p})}catch(p){h.aborted||
e({question:c,error:p})}}return{stop:r,ask(c,{now:h=!1}={}){r(),!n.aborted&&(o=setTimeout(()=>l(c),h?0:s))}}}var js=$(
()=>{});function be(t,e,{band:n=null,note:s="",origin:o="",test:a=""}={}){return i`<div class="figure" data-test=${a||
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
  </div>`}var Xo=$(()=>{_()});function Qo(t){return t.force_kn===null||t.force_kn===void 0?d:i`<b>${f(qt(t))}</b>
    <small class="expected">expected ${f(Re(t))}</small>`}function Hs(t,e,n="force_kn",{note:s=d,origin:o=""}={}){
return be(t,qt(e,n),{note:i`expected ${f(Re(e,n))}${s}`,origin:o,test:n})}var qt,Re,_d,re=$(()=>{_();L();Xo();
qt=(t,e="force_kn")=>_d(e)(t[`${e}_high`],{up:!0}),Re=(t,e="force_kn")=>_d(e)(t[e]),_d=t=>t==="force_kn"?$t:Lt});var ii,vd=$(()=>{ii=class extends HTMLElement{#t=new ResizeObserver(()=>this.measure());#e=new MutationObserver(
()=>this.measure());connectedCallback(){this.#t.observe(this),this.#e.observe(this,{subtree:!0,childList:!0,attributeFilter:[
"viewBox"]}),this.measure()}disconnectedCallback(){this.#t.disconnect(),this.#e.disconnect()}measure(){let e=this.
querySelector("svg"),{width:n,height:s}=e?.viewBox.baseVal??{width:0,height:0};if(!e||!n||!e.clientWidth||!e.clientHeight)
return;let o=Math.max(n/e.clientWidth,s/e.clientHeight);e.style.setProperty("--px",String(o))}};customElements.
define("drawing-frame",ii)});function li({distance_mm:t,tool:e}){let n=f(w(Math.abs(t)));return t<=0?[n,`into ${e}`]:[n,`to ${e}`]}function kd(t,{
left:e,right:n,bottom:s,top:o}){let[a,r]=mn(t),[[l,c],[h,p]]=[t.on_sheet,t.on_tool],u=a-e>n-a?-1:1,m=r-s>.7*(o-
s)?1:-1,[g,b]=li(t);return k`<g class="near ${t.distance_mm<=0?"hit":""}" data-test="near" data-tool=${t.tool}>
    <path class="near-line" d="M${l} ${-c}L${h} ${-p}" />
    ${ta(t,n-e)?d:[t.on_sheet,t.on_tool].map(Z$)}
    <g transform="translate(${a} ${-r})">
      ${ta(t,n-e)?k`<circle class="px near-ring" r="17" />`:d}
      <path class="px near-leader" d="M${u*12} ${m*12}L${u*34} ${m*30}H${u*44}" />
      <text class="px label near-label" x=${u*50} y=${m*30-2}
        text-anchor=${u>0?"start":"end"}>${g}<tspan x=${u*50}
          dy="1.1em">${b}</tspan></text>
    </g>
  </g>`}var mn,ta,Z$,ci=$(()=>{_();L();mn=({on_sheet:[t,e],on_tool:[n,s]})=>[(t+n)/2,(e+s)/2];ta=(t,e)=>Math.abs(
t.distance_mm)<.1*e,Z$=([t,e])=>k`<g transform="translate(${t} ${-e})"><circle class="px near-dot" r="4" /></g>`});function ie(t,{pose:e,close:n,opening:s,gauge:o,angle:a,words:r,moment:l=null,near:c=null,mark:h=!1,room:p=null}){
let u=s??(t.bounds[2]-t.bounds[0])/6,m=n?Q$(u,h?c:null):tb(t,u,c),g=p&&!n?eb(m,p,u):m,{left:b,bottom:y,right:W,
top:C}=g,E=l??X$(t,e==="after"?"after":"before");return i`<drawing-frame class="pose-frame">
    <svg
      class="drawing pose"
      role="img"
      aria-label=${r}
      data-test="pose"
      data-pose=${e}
      viewBox="${b} ${-C} ${W-b} ${C-y}"
      preserveAspectRatio="xMidYMid meet">
      ${[t.bed,t.die].map(St).map(xd)}
      <g transform="translate(0 ${E.down})">${E.tools.map(xd)}</g>
      ${t.die.length?k`<path class="axis" d="M0 ${-C-999}V999" />`:d}
      <path class="gauge" transform="translate(${E.back} 0)" d=${E.gauge} />
      <path class="sheet" data-test="sheet" d=${E.sheet} />
      ${e==="before"&&t.gauge_point?nb(t.gauge_point,o,g):d}
      ${e==="after"&&a?sb(t.after.sheet,a,u,g):d}
      ${h&&c?kd(c,g):d}
    </svg>
  </drawing-frame>`}function X$(t,e){let{sheet:n,ram:s,holder:o,punch:a,gauge:r}=t[e];return{sheet:St(n),tools:[
s,o,a].map(St),down:0,gauge:St(r),back:0}}function Q$(t,e){let[n,s]=e?mn(e):[0,.1*t];return{left:n-1.5*t,bottom:s-
t,right:n+1.5*t,top:s+t}}function tb(t,e,n){let[s,o,a,r]=Gt([t.before.sheet,t.after.sheet]),l=14*e,c=t.gauge_point?
t.gauge_point[0]+1.5*e:0,h={left:Math.max(Math.min(s-.4*e,-1.4*e),-l),right:Math.min(Math.max(a+.4*e,c,1.4*e),
Math.max(l,c))},p=h.right-h.left,u={...h,bottom:Math.max(Math.min(o-.3*e,-1.1*e,-.17*p),-l/2),top:Math.min(Math.
max(r+.3*e,1.6*e),8*e)},m=n?di(u,mn(n),Math.max(e,.1*p)):u;return{...m,bottom:Math.min(m.bottom,m.top*-.33)}}function eb(t,{
bounds:e,share:n},s){let o=di(di(t,[e[0],e[1]],s),[e[2],e[3]],s),a=r=>t[r]+(o[r]-t[r])*n;return{left:a("left"),
right:a("right"),bottom:a("bottom"),top:a("top")}}function nb([t,e],n,{bottom:s}){let o=s*.45;return k`<g class="dimension-line" data-test="gauge-dimension">
    <path class="extension" d="M${t} ${-e}V${-o}" />
    <path class="dimension" d="M0 ${-o}H${t}" />
    ${Sd(0,o,180)}${Sd(t,o,0)}
    <g transform="translate(${t} ${-e})"><circle class="px touch" r="5" /></g>
    ${Td(t/2,o,n,17)}
  </g>`}function sb(t,e,n,{left:s,right:o}){let a=Math.min(...t.filter(([p])=>Math.abs(p)<n/2).map(([,p])=>p)),
r=Math.max(1.25*n,.14*(o-s)),l=e/2*(Math.PI/180),[c,h]=[r*Math.sin(l),a+r*Math.cos(l)];return k`<g class="dimension-line" data-test="angle-dimension">
    <path class="dimension" d="M${-c} ${-h}A${r} ${r} 0 0 1 ${c} ${-h}" />
    ${Td(0,a+r,f(T(e)))}
  </g>`}var xd,di,Sd,Td,Us=$(()=>{_();L();vd();ci();Le();xd=t=>t?k`<path class="tool" d=${t} />`:d;di=({left:t,
right:e,bottom:n,top:s},[o,a],r)=>({left:Math.min(t,o-r),right:Math.max(e,o+r),bottom:Math.min(n,a-r),top:Math.
max(s,a+r)});Sd=(t,e,n)=>k`<g transform="translate(${t} ${-e})">
    <path class="px arrow ${n?"back":""}" d="M0 0L-12 -5V5Z" /></g>`,Td=(t,e,n,s=0)=>k`<g transform="translate(${t} ${-e})">
    <text class="px label" y=${s} text-anchor="middle"
      dominant-baseline="central">${n}</text></g>`});function Md(t,e){let n=[...t].sort((s,o)=>s.rank-o.rank);return i`<ol class="rows options" data-test="options">
    ${n.map(s=>i`<li class="row option" data-die=${s.die} data-level=${s.level}>
          <button
            type="button"
            aria-pressed=${s.chosen?"true":"false"}
            @click=${()=>e(s.die)}>
            <span class="lead"
              >${s.chosen?"✓ ":""}${s.die} <small>V ${ut(s.v_over_t,1)} t</small></span
            >
            ${s.level==="ok"?d:x(s.level)}
            <span class="facts"> ${ob(s).map(o=>ab(...o))} </span>
            <span class="more">${s.reason} ${Pe(s)}.</span>
          </button>
        </li>`)}
  </ol>`}var ob,ab,Od=$(()=>{_();yt();L();re();q();ob=t=>[["allow for",f(qt(t,"force_kn_per_m")),`expected ${Re(
t,"force_kn_per_m").text}`],["radius",f(w(t.inside_radius_mm))],["flange from",f(w(t.min_flange_mm))],["set",f(
T(t.set_angle_deg))]],ab=(t,e,n)=>i`<span class="fact"
    ><small>${t}</small> ${e}${n?i` <small class="beside">${n}</small>`:d}</span
  >`});function Yn(t){let e=t.filter(s=>!Ad(s)&&(s.level==="stop"||s.level==="caution"));if(e.length===0)return d;let n=e.
some(s=>s.level==="stop");return i`<section
    class="panel urgent ${n?"has-stop":""}"
    aria-label="Findings"
    data-test="urgent">
    ${wt(e)}
  </section>`}function Jn(t){let e=t.filter(o=>o.level==="unknown"),n=t.filter(o=>jt(o)==="note"),s=t.filter(o=>jt(
o)==="ok");return i`${e.length?i`<section>
          <h2>Not known</h2>
          ${wt(e)}
        </section>`:d}
  ${n.length?i`<section data-test="notes">
          <h2>How to do it</h2>
          ${wt(n)}
        </section>`:d}
  ${s.length?i`<details class="fine" data-test="fine">
          <summary>Also checked and well: ${s.length}</summary>
          ${wt(s)}
        </details>`:d}`}function Ie(t){let e=t.filter(Ad);return e.length===0?d:i`<section class="every-time" data-test="every-time">
    <h2>${x("caution")} At the press, every time</h2>
    <ul>
      ${e.map(n=>i`<li>
            <b>${rn(n.template,n.numbers)}</b>
            ${rn(n.do_template??n.do,n.numbers)}
          </li>`)}
    </ul>
  </section>`}var Ad,Vs=$(()=>{_();q();Ad=t=>t.code.startsWith("general-")});function O({name:t,label:e,value:n,change:s,hint:o="",wrong:a=[],keys:r="text",placeholder:l="",unit:c="",on:h="\
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
      .value=${kt(String(n))}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${t}-more"
      @input=${h==="input"?m:d}
      @change=${h==="change"?m:d} />
    <span id="${t}-more">
      ${a.map(g=>i`<span class="wrong" data-test="wrong-${t}">${g}</span>`)}
      ${o?i`<span class="hint">${o}</span>`:d}
    </span>
  </div>`}function fn({name:t,label:e,value:n,change:s,lines:o,hint:a="",wrong:r=[],unit:l=""}){return i`<div class="field broad ${r.
length?"has-wrong":""}">
    <label for=${t}>${e}${l?i` <span class="hint">(${l})</span>`:d}</label>
    <textarea
      id=${t}
      name=${t}
      data-test=${t}
      rows=${o}
      .value=${kt(String(n))}
      aria-invalid=${r.length?"true":"false"}
      aria-describedby="${t}-more"
      @input=${c=>s(c.target.value)}></textarea>
    <span id="${t}-more">
      ${r.map(c=>i`<span class="wrong" data-test="wrong-${t}">${c}</span>`)}
      ${a?i`<span class="hint">${a}</span>`:d}
    </span>
  </div>`}function Y({name:t,label:e,value:n,options:s,change:o,wrong:a=[]}){return i`<div class="field ${a.length?
"has-wrong":""}">
    <label for=${t}>${e}</label>
    <select
      id=${t}
      name=${t}
      data-test=${t}
      aria-invalid=${a.length?"true":"false"}
      aria-describedby="${t}-more"
      @change=${r=>o(r.target.value)}>
      ${s.map(([r,l])=>i`<option value=${r} .selected=${kt(r===n)}>${l}</option>`)}
    </select>
    <span id="${t}-more"
      >${a.map(r=>i`<span class="wrong" data-test="wrong-${t}">${r}</span>`)}</span
    >
  </div>`}function G({name:t,label:e,value:n,options:s,change:o}){return i`<div class="field" role="radiogroup" aria-label=${e}>
    <span class="legend" aria-hidden="true">${e}</span>
    <div class="choice" data-test=${t}>
      ${s.map(([a,r])=>i`<label>
            <input
              type="radio"
              name=${t}
              value=${a}
              .checked=${kt(a===n)}
              @change=${()=>o(a)} />
            <span>${r}</span>
          </label>`)}
    </div>
  </div>`}function Zt(t){Object.keys(t).length!==0&&requestAnimationFrame(()=>document.querySelector('[aria-in\
valid="true"]')?.focus())}var J=$(()=>{_();Oe()});function ea(t){let[e,n]=[t?.die?.trim(),t?.punch?.trim()];return{...e?{die:e}:{},...n?{punch:n}:{}}}function hi(t){
let e=ea(t);return Object.keys(e).length?{tools:e}:{}}function gn(t){let{die:e,punch:n}=ea(t);return[e&&`die ${e}`,
n&&`punch ${n}`].filter(Boolean).join(", ")}var Gs,Zn=$(()=>{Gs=t=>({die:t?.die??"",punch:t?.punch??""})});function R(t,e){return Object.entries(t).filter(([n])=>pi(n,e)).flatMap(([,n])=>n)}function Ld(t,e){return Object.
entries(t).filter(([n])=>!e.some(s=>pi(n,s))).flatMap(([,n])=>n)}function Nd(t,e,n){let s=Object.entries(t);return s.
length===0?d:i`<div class="panel error-summary" role="alert" data-test="error-summary">
    <h2>Not right yet</h2>
    <ul>
      ${s.map(([o,a])=>{let r=n.filter(c=>pi(o,c)).sort((c,h)=>h.length-c.length)[0],l=r?ui(e(r),a):a.join(" ");
return i`<li>
          ${r?i`<button type="button" class="link" @click=${()=>qs(r)}>${l}</button>`:l}
        </li>`})}
    </ul>
  </div>`}function ui(t,e){let n=e.join(" ");return n.startsWith(t)?n:`${t}: ${n}`}function qs(t){let e=document.
getElementById(t);e?.closest("details")?.setAttribute("open",""),e?.focus({preventScroll:!0}),e?.scrollIntoView(
{block:"center"})}var pi,Xt=$(()=>{_();pi=(t,e)=>t===e||t.startsWith(`${e}.`)});function fi(t,e,n,s){let o=(a,r)=>O({next:!0,name:`${t}.${a}`,label:r,hint:"Its code. Empty: what suits best.",
list:a==="die"?"codes-of-dies":"codes-of-punches",value:e[a]??"",wrong:R(n,`${t}.${a}`),change:l=>s({[a]:l})});
return i`<div class="fields">${o("die","Die")} ${o("punch","Punch")}</div>`}function Bd(t,{dies:e,punches:n},s,o){
let a=e.flatMap(({code:r,shape:l,openings:c})=>l==="multi_v"?c.map(h=>h.code):[r]);return i`<details class="wishes" data-test="tools">
      <summary>
        <span>Tools: <b>${gn(t.tools)||"chosen by the planner"}</b></span>
      </summary>
      <p class="hint">For every bend that names none of its own. What it costs stands under the order.</p>
      ${fi("tools",t.tools??{},s,r=>o({...t,tools:{die:"",punch:"",...t.tools,...r}}))}
    </details>
    ${Ed("codes-of-dies",a)}
    ${Ed("codes-of-punches",n.map(({code:r})=>r))}`}var mi,Ed,Xn,Qn=$(()=>{_();Zn();J();Xt();mi=["tools.die","\
tools.punch"];Ed=(t,e)=>i`<datalist id=${t}>${e.map(n=>i`<option value=${n}></option>`)}</datalist>`,Xn=({tools_reason:t})=>t?
i`<p class="tools-reason" data-test="tools-reason">${t}</p>`:d});function na(t){let e=(t??"").split(":")[0].trim();return rb.includes(e)?e:""}function zs(t){if(!t)return"";let e=new Map;
for(let[n,s]of ib){let o=t[n];o&&e.set(o,[...e.get(o)??[],s])}return[...e].map(([n,s])=>`${n[0].toUpperCase()}${n.
slice(1)}: ${s.join(", ")}.`).join(" ")}var rb,ib,sa=$(()=>{rb=["model","handbook","your test bends"];ib=[["fo\
rce_kn","force"],["springback_deg","springback"],["inside_radius_mm","radius"],["punch_depth_mm","depth"],["be\
nd_allowance_mm","allowance"]]});function Pd(t){return i`<ul class="ratings" data-test="ratings">
    ${t.map(lb)}
  </ul>`}function lb(t){let{what:e,name:n,share_percent:s,level:o}=t;return i`<li class="rating" data-level=${o} data-what=${e}>
    <span class="rating-of"
      ><b>${cb[e]??e}</b>${e.startsWith("press")||!n?d:` ${n}`}</span
    >
    ${x(o,s===null?"Unknown":`${ut(s,0)} %`)}
    <svg viewBox="0 0 250 18" preserveAspectRatio="none" aria-hidden="true">
      <path class="bar-ground ${s===null?"open":""}" d="M0 9H250" />
      ${s===null?d:hb(s)}
    </svg>
    <span class="rating-words">${db(t)}</span>
  </li>`}function db({load_kn:t,load_kn_per_m:e,rating_kn:n,rating_kn_per_m:s,share_percent:o}){let a=e===void 0?
f($t(t)):f(Lt(e));if(o===null)return`${a}; rating unknown. Read it off the plate before you bend.`;let r=e===void 0?
f($t(n)):f(Lt(s));return`${a} of ${r}`}function hb(t){let e=Math.min(t/100*Cd,250);return k`<path class="bar-load" d="M0 9H${e}" /><path class="bar-most" d="M${Cd} 0V18" />`}
var Cd,cb,Rd=$(()=>{_();L();q();Cd=200;cb={press:"Press","press per metre":"Bed and ram, per length",punch:"Pu\
nch",die:"Die",holder:"Holder","die holder":"Die holder"}});function ts(t,e,{from:n,to:s,size:o=1,most:a=6,steps:r}){let l=(e-t)/o,c=(r?.find(y=>l/y<=a)??pb(l,a))*o,h=Math.
floor(t/c+1e-9)*c,p=Math.ceil(e/c-1e-9)*c,u=y=>ub(n+(y-h)/(p-h)*(s-n)),m=Math.round((p-h)/c),g=Math.max(0,-Math.
floor(Math.log10(c/o)+1e-9)),b=Array.from({length:m+1},(y,W)=>h+W*c).map(y=>({at:u(y),text:(y/o).toFixed(g).replace(
/^-0(\.0*)?$/,"0").replace("-","−")}));return{at:u,marks:b}}function pb(t,e){let n=(t>0?t:1)/e,s=10**Math.floor(
Math.log10(n));return[1,2,5,10].map(o=>o*s).find(o=>o>=n*(1-1e-9))??10*s}function oa(t){return t.length?`M${t.
map(([e,n])=>`${e} ${n}`).join("L")}`:""}var ub,gi=$(()=>{ub=t=>Math.round(t*100)/100});function Id({curve:t,set:e,peak:n,limits:s}){let o=Math.max(...t.map(g=>g.force_kn_high)),a=s.filter(g=>g.limit_kn!==
null).sort((g,b)=>Number(b.limit_kn)-Number(g.limit_kn)),r=Number(a.at(-1)?.limit_kn),l=a.filter(({limit_kn:g})=>Number(
g)<=(g===r?fb:mb)*o),c=Fd(t),h=ts(0,Math.max(o,...l.map(g=>Number(g.limit_kn))),{from:Rt.bottom,to:Rt.top+28,size:Ur().
size}),p=(g,b)=>[c.at(g.punch_depth_mm),h.at(g[b])],u=[...t.map(g=>p(g,"force_kn_high")),...t.map(g=>p(g,"forc\
e_kn_low")).reverse()],m=n?`Force over punch depth. The peak is expected at ${f($t(n.force_kn))}, at a depth o\
f ${f(Dd(n.punch_depth_mm))}.`:"Force over punch depth, to where tools or press end.";return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${$i} ${aa}"
    role="img"
    aria-label=${m}
    data-test="stroke-force">
    ${jd(c,h,Ur().unit)}
    <path class="band" d="${oa(u)}Z" />
    ${e.punch_depth_mm===null?d:Hd(c.at(e.punch_depth_mm))} ${gb(l,h)}
    ${bb(a.filter(g=>!l.includes(g)))}
    <path class="curve" d=${oa(t.map(g=>p(g,"force_kn")))} data-test="force-curve" />
    ${n?yb(c.at(n.punch_depth_mm),h.at(n.force_kn)):d}
  </svg>`}function Wd({curve:t,set:e,trials:n}){let s=n.filter(u=>u.punch_depth_mm!==null),o=Fd(t,s.map(u=>Number(
u.punch_depth_mm))),a=[...t.map(u=>u.loaded_angle_deg),...s.map(u=>u.measured_deg)],r=ts(Math.min(...a),180,{from:Rt.
bottom,to:Rt.top,steps:[5,10,15,30,45]}),l=u=>oa(t.map(m=>[o.at(m.punch_depth_mm),r.at(m[u])])),c=e.set_angle_deg===
null?null:{x:o.at(Number(e.punch_depth_mm)),y:r.at(e.set_angle_deg)},p=`Angle over punch depth. ${c?`${f(T(e.set_angle_deg))}\
 under load at a depth of ${f(Dd(Number(e.punch_depth_mm)))}`:"Nothing to set"}. ${s.length} trials drawn.`;return i`<svg
    class="drawing chart-picture"
    viewBox="0 0 ${$i} ${aa}"
    role="img"
    aria-label=${p}
    data-test="stroke-angle">
    ${jd(o,r,"°")} ${c?Hd(c.x):d}
    <path class="curve" d=${l("loaded_angle_deg")} />
    <path class="curve let-go" d=${l("released_angle_deg")} />
    ${c?k`<circle class="set-point" cx=${c.x} cy=${c.y} r="5"/>`:d}
    ${s.map(u=>wb(o.at(Number(u.punch_depth_mm)),r.at(u.measured_deg),u))}
  </svg>`}function Fd(t,e=[]){let n=Math.max(...t.map(s=>s.punch_depth_mm),...e);return ts(0,n,{from:Rt.left,to:Rt.
right,size:B()==="in"?ge:1,most:6})}function jd(t,e,n){let{left:s,right:o,top:a,bottom:r}=Rt,l=n==="°",c=e.marks.
map(({at:u,text:m})=>k`<path class="faint" d="M${s} ${u}H${o}"/>
      <text x=${s-6} y=${u+6} text-anchor="end"
        font-size=${We}>${m}${l?"°":""}</text>`),h=t.marks.map(({at:u,text:m})=>k`<path class="faint" d="M${u} ${r}v6"/>
      <text x=${Math.min(u,o-4)} y=${r+24} text-anchor="middle"
        font-size=${We}>${m}</text>`),p=k`<text class="quiet" x=${s-6} y="18" text-anchor="end"
    font-size=${We}>${n}</text>`;return k`
    ${c}
    ${h}
    <path class="edge" d="M${s} ${a}V${r}H${o}"/>
    <text class="quiet" x=${o} y=${aa-8} text-anchor="end"
      font-size=${We}>punch depth, ${B()}</text>
    ${l?d:p}`}function gb(t,e){let n=-1/0;return $b(t).map(({limit_kn:s,names:o})=>{let a=e.at(s);return n=Math.
max(a-6,n+We+2),k`<path class="limit" d="M${Rt.left} ${a}H${Rt.right}" data-test="limit-line"
        data-kn=${s}/>
      <text class="limit-word" x=${Rt.left+6} y=${n}
        font-size=${We}>${o.join(", ")} ${f($t(s))}</text>`})}function $b(t){let e=new Map;for(let n of t)e.set(
Number(n.limit_kn),[...e.get(Number(n.limit_kn))??[],ra(n)]);return[...e].map(([n,s])=>({limit_kn:n,names:s}))}
function bb(t){if(!t.length)return d;let e=t.length>1?`, ${t.length-1} more`:"";return k`<text class="limit-word" x=${Rt.
right} y="18" text-anchor="end" font-size=${We}
      data-test="limit-far">↑ ${bi(t[t.length-1])}${e}</text>`}function ra({what:t,name:e}){return t==="pres\
s per metre"?"Bed and ram":t==="press"||!e?t[0].toUpperCase()+t.slice(1):`${t[0].toUpperCase()}${t.slice(1)} ${e}`}
function wb(t,e,{id:n,outlier:s}){return s?k`<path class="trial-odd" d="M${t-6} ${e-6}l12 12M${t+6} ${e-6}l-12 12"
        data-test="trial-point" data-id=${n} data-odd="true"/>`:k`<circle class="trial-point" cx=${t} cy=${e} r="6" data-test="trial-point" data-id=${n}/>`}
var $i,aa,Rt,We,mb,fb,Dd,Hd,bi,yb,Ud=$(()=>{_();L();gi();$i=400,aa=320,Rt={left:58,right:$i-14,top:20,bottom:aa-
54},We=18,mb=3,fb=5;Dd=t=>w(t,{digits:2});Hd=t=>k`<path class="set-line" d="M${t} ${Rt.top}V${Rt.bottom}"/>
  <text class="set-word" x=${t-5} y=${Rt.bottom-6} text-anchor="end" font-size=${We}>set</text>`;bi=({what:t,name:e,
limit_kn:n})=>`${ra({what:t,name:e})} ${f($t(n))}`;yb=(t,e)=>k`<circle class="peak" cx=${t} cy=${e} r="6" data-test="peak-mark"/>`});function qd({stroke:t,error:e,open:n,toggled:s}){return i`<details
    class="stroke"
    data-test="stroke"
    ?open=${n}
    @toggle=${o=>s(o.target.open)}>
    <summary>The stroke in pictures</summary>
    ${n?_b(t,e):d}
  </details>`}function _b(t,e){return e?i`<p class="hint" data-test="stroke-missing">
      ${e instanceof S?e.message:"The stroke could not be fetched."}
    </p>`:t?t.curve.length?i`<div class="stroke-pictures">
    <figure>
      <figcaption>Force over depth</figcaption>
      ${Id(t)}
      <div class="stroke-words">
        <p data-test="stroke-peak">${vb(t)}</p>
        ${kb(t)}
      </div>
    </figure>
    <figure>
      <figcaption>Angle over depth</figcaption>
      ${Wd(t)}
      <div class="stroke-words">
        <ul class="keys" aria-label="What the lines are">
          <li>${Vd("curve")} under load</li>
          <li>${Vd("curve let-go")} let go</li>
          ${t.trials.length?i`<li>${Tb} trials, let go</li>`:d}
        </ul>
        <p data-test="stroke-set">${xb(t)}</p>
        ${Sb(t)}
      </div>
    </figure>
  </div>`:i`<p class="hint" data-test="stroke-missing">There is no stroke to draw: see the findings.</p>`:i`<p class="hint">Working it out…</p>`}
function vb({peak:t,work_j:e}){if(!t)return"The curve ends where tools or press end.";let n=i`<b>Allow for ${f(
qt(t))}.</b> The peak is expected at
    ${f($t(t.force_kn))}, ${Gd(t.punch_depth_mm)} deep, ${f(T(t.loaded_angle_deg))}
    under load.`;return e?i`${n} Work in the stroke ${ut(e,0)} J.`:n}function kb({limits:t}){let e=t.filter(s=>s.
limit_kn!==null),n=t.filter(s=>s.limit_kn===null);return i`${e.length?i`<p class="hint" data-test="stroke-limits">
          Limits: ${e.map(bi).join(", ")}. The shaded band is what the force may be.
        </p>`:d}
  ${n.length?i`<p class="hint" data-test="stroke-unknown">
          <b>Rating unknown:</b> ${n.map(ra).join(", ")}. Read it off the plate.
        </p>`:d}`}function xb({set:t}){return t.set_angle_deg===null?"Tools and press end before the bend is s\
harp enough: there is nothing to set.":`Set ${f(T(t.set_angle_deg))} under load at a depth of ${Gd(t.punch_depth_mm)}\
.`}function Sb({trials:t}){let e=t.filter(n=>n.punch_depth_mm===null).length;return e?i`<p class="hint">
        ${e===1?"One trial has":`${e} trials have`} no depth written down and can't be drawn.
      </p>`:d}var Gd,Vd,Tb,zd=$(()=>{_();Ud();V();L();re();Gd=t=>f(w(t,{digits:2}));Vd=t=>i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
    <path class=${t} d="M2 8H38" />
  </svg>`,Tb=i`<svg class="drawing key" viewBox="0 0 40 16" aria-hidden="true">
  <circle class="trial-point" cx="20" cy="8" r="6" />
</svg>`});function $n(t,e,n,s){let[o,a]=[t[`${e}_low`],t[`${e}_high`]],r=typeof o=="number"&&typeof a=="number"&&o!==a;return be(
n,s(t[e]),{band:r?[s(o),s(a)]:null,note:Yd(t,e,s),origin:na(t.sources?.[e]),test:e})}function Yd({handbook:t,sources:e,
...n},s,o){let a=t?.[s];if(typeof a!="number"||na(e?.[s])==="handbook")return d;let r=o(a);if(r.text===o(n[s]).
text)return d;let l=a<n[`${s}_low`]||a>n[`${s}_high`];return i`<span class=${l?"handbook differs":"handbook"} data-test="handbook-${s}"
    >handbook says ${f(r)}</span
  >`}function Jd(t,e,n){return i`${Yn(t.checks)}
    <div class="columns bend-columns">
      <div>
        ${Mb(t,e)} ${Ob(t)} ${Ab(t)} ${Nb(t)}
        ${Jn(t.checks)} ${Cb(t)}
      </div>
      <div>${Eb(t,n)} ${qd(n.stroke)} ${Bb(t,n)}</div>
    </div>
    ${Ie(t.checks)}`}function Mb(t,{punches:e,dies:n}){let s=n.find(({code:a})=>a===t.die),o=e.find(({code:a})=>a===
t.punch);return!t.die&&!t.punch?i`<p class="panel" data-test="no-tools">
      No tools of the crib chosen: the figures are for a V of ${f(w(t.v_opening_mm))}.
    </p>`:i`<ul class="tools" data-test="chosen">
      ${[{kind:"die",code:t.die,tool:s},{kind:"punch",code:t.punch,tool:o}].map(({kind:a,code:r,tool:l})=>i`<li class="tool-row" data-kind=${a}>
            <span class="kind">${a}</span
            ><span class="name" data-test="chosen-${a}"><b>${r??"none"}</b> ${l?.name??""}</span>
            <span class="where">${l?Pe(l):""}</span>
            ${l&&l.condition!=="good"?i`<span class="more"
                    >condition:
                    ${l.condition}${l.condition_note?`, ${l.condition_note}`:""}</span
                  >`:d}
          </li>`)}
    </ul>
    ${Xn(t)}`}function Ob(t){return i`<section>
    <h2>Set</h2>
    <div class="figures">
      ${$n(t,"set_angle_deg","Set angle, loaded",T)}
      ${$n(t,"punch_depth_mm","Punch depth",Ks)}
      ${$n(t,"springback_deg","Springback",T)}
    </div>
  </section>`}function Ab(t){return i`<section>
    <h2>Force</h2>
    <div class="figures">
      ${Hs("Allow for",t,"force_kn",{note:Lb(t),origin:na(t.sources?.force_kn)})}
      ${Hs("Per length, allow for",t,"force_kn_per_m")}
    </div>
    ${t.ratings?.length?i`<p class="hint">The loads are the force to allow for; the mark is the rating.</p>
            ${Pd(t.ratings)}`:d}
  </section>`}function Lb(t){let e=t.force_kn_low,n=Yd(t,"force_kn",$t);return i`${typeof e=="number"?`, at le\
ast ${f($t(e))}`:d}${n===d?d:i` <br />${n}`}`}function Nb(t){return i`<section>
    <h2>Comes out</h2>
    <div class="figures">
      ${$n(t,"inside_radius_mm","Inside radius",Ks)}
      ${be("Smallest flange",w(t.min_flange_mm),{test:"min_flange_mm"})}
    </div>
    <h2>For the blank</h2>
    <div class="figures">
      ${$n(t,"bend_allowance_mm","Bend allowance",Ks)}
      ${$n(t,"bend_deduction_mm","Bend deduction",Ks)}
      ${$n(t,"k_factor","K-factor",Zd)}
    </div>
  </section>`}function Eb(t,{pose:e,show:n}){if(!t.drawing)return d;let s=f(T(t.set_angle_deg)),o=e==="before"?
"before the bend":`at the bottom of the stroke, ${s}`;return i`<section class="bend-drawing" aria-label="The bend in its tools">
    ${G({name:"pose-shown",label:"Drawn to scale",value:e,options:[["before","Before"],["after","Bent"]],change:a=>n(
a==="before"?"before":"after")})}
    ${ie(t.drawing,{pose:e,close:!0,opening:t.v_opening_mm,gauge:"",angle:t.set_angle_deg,words:`The sheet in \
die and punch, ${o}`})}
  </section>`}function Bb(t,{use:e}){return t.options?.length?i`<section>
    <h2>Dies of the crib</h2>
    <p class="hint">Tap one to use it. Every one shown with the reason for its rank.</p>
    ${Md(t.options,e)}
  </section>`:d}function Cb({opinions:t,sources:e}){return t?i`<section class="opinions">
    <h2>Second opinions</h2>
    ${t.force?.length?Kd("Force by published relations",t.force,[["force_kn","Force",$t],["force_kn_per_m","Pe\
r length",Lt]]):d}
    ${t.allowance?.length?Kd("Bend allowance by published relations",t.allowance,[["bend_allowance_mm","Allowa\
nce",Ks],["k_factor","K",Zd]]):d}
    ${e?i`<details>
            <summary>Where each figure comes from</summary>
            <dl class="sources">
              ${Object.entries(e).map(([n,s])=>i`<dt>${Pb[n]??n}</dt>
                    <dd>${s}</dd>`)}
            </dl>
          </details>`:d}
  </section>`:d}function Kd(t,e,n){return i`<div class="table">
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
  </div>`}var Ks,Zd,Pb,Xd=$(()=>{_();Us();yt();L();re();Od();Xo();Vs();J();Qn();sa();Rd();zd();Ks=t=>w(t,{digits:2});
Zd=t=>({text:t==null?"–":ut(t,2),unit:""});Pb={force_kn:"Force",inside_radius_mm:"Inside radius",springback_deg:"\
Springback",set_angle_deg:"Set angle",punch_depth_mm:"Punch depth",bend_allowance_mm:"Bend allowance",bend_deduction_mm:"\
Bend deduction",k_factor:"K-factor",min_flange_mm:"Smallest flange"}});var th={};Q(th,{show:()=>Wb});async function Wb(t){t.title("Check a bend"),t.render(Tt("Looking into the crib…"));
let[e,n,s]=await Promise.all(["metals","dies","punches"].map(async E=>(await ct(E,t.signal)).items)),o={dies:n,
punches:s},a=zo(t.query),r=!!(a.die||a.punch||a.punch_radius_mm);a.metal||=e[0]?.code??"";let l={answer:null,error:null,
busy:!1,pose:"after"},c={stroke:null,error:null,open:matchMedia("(min-width: 1000px)").matches},h=$e(async(E,v)=>(await M(
"POST","/bend",{body:E,signal:v})).body,({answer:E=null,error:v=null})=>{Object.assign(l,{answer:E,error:v,busy:!1}),
Object.assign(c,{stroke:null,error:null}),u(),b()},t.signal),p=$e(async(E,v)=>(await M("POST","/stroke",{body:E,
signal:v})).body,({answer:E=null,error:v=null})=>{Object.assign(c,{stroke:E,error:v}),b()},t.signal);function u(){
p.stop(),c.open&&l.answer&&!c.stroke&&p.ask(pn(a),{now:!0})}function m(E){history.replaceState(null,"",`/bend?${Ko(
a)}`),l.busy=Fs(a).length===0,l.busy?h.ask(pn(a),E):(h.stop(),Object.assign(l,{answer:null,error:null})),b()}function g(E,v){
Object.assign(a,E),m(v)}function b(){let E=l.error instanceof S?l.error.errors:{};t.render(i`<h1>Check a bend</h1>
        <div
          class="desk"
          aria-busy=${l.busy?"true":"false"}
          data-test="bend"
          data-busy=${String(l.busy)}>
          <form
            class="panel desk-form"
            aria-label="The bend"
            @submit=${v=>v.preventDefault()}>
            ${Db(a,{metals:e,...o,openTools:r,answer:l.answer},E,g)}
          </form>
          <p class="unseen" role="status">${y()}</p>
          <div class="desk-answer" data-test="answer">${W(E)}</div>
        </div>`),l.busy||t.ready()}function y(){let{answer:E}=l;if(!E||l.busy)return"";let v=E.worst==="ok"?"":
`${E.worst}. `,A=E.set_angle_deg===null?"nothing to set":`set ${f(T(E.set_angle_deg))}`;return`${v}Die ${E.die??
"none"}, allow for ${f(qt(E))}, ${A}.`}function W(E){let v=Fs(a);return v.length?xt("One bend, all its figures",
i`Still to type: ${v.map(A=>Ib[A]).join(", ")}.`):l.error?C(E):l.answer?Jd(l.answer,o,{pose:l.pose,show:A=>{l.
pose=A,b()},use:A=>g({die:a.die===A?"":A},{now:!0}),stroke:{...c,toggled:A=>{c.open!==A&&(c.open=A,u(),b())}}}):
Tt("Working it out…")}function C(E){if(!(l.error instanceof S)||l.error.status>=500)return i`${Ne(l.error)}
        <div class="buttons">
          <button type="button" class="button" data-test="again" @click=${()=>m({now:!0})}>
            Try again
          </button>
        </div>`;let v=Ld(E,Rb),A=Object.keys(E).length>v.length?["The words are beside the field."]:[l.error.message];
return i`<div class="state" data-test="refused">
      <strong>That can't be worked out yet</strong>${[...A,...v].map(Z=>i`<p>${Z}</p>`)}
    </div>`}m({now:!0})}function Db(t,{metals:e,dies:n,punches:s,openTools:o,answer:a},r,l){let c=(u,m,g={})=>O(
{name:u,label:m,value:t[u],wrong:R(r,u),change:b=>l({[u]:b}),...g}),h=(u,m,g)=>Y({name:u,label:m,value:t[u],options:g,
wrong:R(r,u),change:b=>l({[u]:b},{now:!0})}),p=t.metal&&!e.some(({code:u})=>u===t.metal);return i`${h("metal",
"Metal",[...p?[[t.metal,`${t.metal} (not in the shop)`]]:[],...jb(e)])}
    ${c("thickness_mm","Thickness",{unit:B(),hint:a&&Fb(a,t.thickness_mm)||"3, 1/8 in, 16 ga"})}
    <div class="fields">
      ${c("bend_length_mm","Bend length",{unit:B()})}
      ${c("included_angle_deg","Included angle",{unit:"°, 90 is square",keys:"decimal"})}
    </div>
    <details class="choose-tools" ?open=${o}>
      <summary>Choose tools yourself</summary>
      ${h("die","Die",[["","Best of the crib"],...Qd(t.die,n)])}
      ${h("punch","Punch",[["","Best of the crib"],...Qd(t.punch,s)])}
      ${c("punch_radius_mm","Punch tip radius, if it differs",{unit:B()})}
    </details>
    ${t.die||t.punch||t.punch_radius_mm?i`<button
            type="button"
            class="button"
            data-test="choose-for-me"
            @click=${()=>l({die:"",punch:"",punch_radius_mm:""},{now:!0})}>
            Choose the tools for me
          </button>`:d}`}function Fb({thickness_mm:t,thickness_gauge:e},n){return[/^[\d.,\s]+$/.test(n)?"":f(w(
t,{digits:2})),e??""].filter(Boolean).join(", ")}function Qd(t,e){let n=e.map(s=>[s.code,`${s.code} · ${s.name}`]);
return t&&!e.some(s=>s.code===t)?[[t,`${t} (not in the crib)`],...n]:n}var Rb,Ib,jb,eh=$(()=>{_();V();Yo();yt();
js();L();re();Xd();J();Bt();Xt();Rb=["metal","thickness_mm","bend_length_mm","included_angle_deg","die","punch",
"punch_radius_mm"],Ib={metal:"metal",thickness_mm:"thickness",bend_length_mm:"length",included_angle_deg:"angl\
e"};jb=t=>t.map(({code:e,name:n})=>[e,n])});function nh(t){let e,n=async()=>{document.visibilityState!=="visible"||t.aborted||(e=await navigator.wakeLock?.
request("screen").catch(()=>{}),t.aborted&&e?.release())};document.addEventListener("visibilitychange",n,{signal:t}),
t.addEventListener("abort",()=>e?.release()),n()}var sh=$(()=>{});async function bn(t){let{body:e}=await M("GET","/benches",{signal:t,timeout:3e3});return e.benches}async function rh(t){
let{body:e}=await M("PUT",`/benches/${encodeURIComponent(t)}`,{body:{code:null,step:0}});return e}async function ih(t){
await M("DELETE",`/benches/${encodeURIComponent(t)}`)}function wi(){let t=dh(oh);return typeof t?.name=="strin\
g"?{code:null,step:0,etag:null,...t}:null}function dh(t){try{return JSON.parse(localStorage.getItem(t)??"null")}catch{
return null}}function hh(t,e){try{e===null?localStorage.removeItem(t):localStorage.setItem(t,JSON.stringify(e))}catch{}}
var oh,ah,wn,we,yi,lh,ch,De=$(()=>{V();oh="flangebook.bench.here",ah="flangebook.bench.last";wn=t=>/^\d/.test(
t)?`bench ${t}`:t,we=t=>/^\d/.test(t)?`Bench ${t}`:t;yi=t=>hh(oh,t),lh=()=>String(dh(ah)??""),ch=t=>hh(ah,t)});function ia(t,e,n,s){let o=`/benches/${encodeURIComponent(t)}`,a={answers:null,gone:!1,waits:!1,late:!1,refused:""},
r=null,l=e,c=0,h=!1,p;function u(v){let A={...a,waits:r!==null,...v},Z=Object.keys(A).every(at=>A[at]===a[at]);
a=A,!Z&&!s.aborted&&n.changed(a)}async function m(){if(clearTimeout(p),h||s.aborted)return;h=!0;try{await(r&&!g()?
b():y()),W()}catch(A){s.aborted||C(A)}h=!1;let v=r!==null&&c===0;s.aborted||(p=setTimeout(m,v?0:Math.min(Ub,Hb*
1.5**c)))}function g(){return!r||Date.now()-r.at<=n.keepMs?!1:(r=null,u({late:!0}),!0)}async function b(){let v=r;
if(!v)return;let A=N().name?{by:N().name}:{};try{l=(await M("PUT",o,{body:{...v.place,...A},etag:v.whatever?null:
l,signal:s,timeout:ph})).etag,r===v&&(r=null),n.sent?.(v.place,l??"",r!==null),u({refused:"",late:!1})}catch(Z){
if(!(Z instanceof S)||Z.status>=500)throw Z;r=null,l=null,u({refused:Z.status===412?"":Z.message}),await y()}}
async function y(){let v=r,{status:A,body:Z,etag:at}=await M("GET",o,{seen:l,signal:s,timeout:ph});s.aborted||
r!==v||A===304||(l=at,u({late:!1}),n.heard(Z,at??""))}function W(){let v=a.answers===!1;c=0,u({answers:!0,gone:!1}),
jn(!0),v&&H()}function C(v){c+=1,v instanceof S&&v.status===404?u({answers:!0,gone:!0}):v instanceof S&&v.status<
500?u({answers:!0,refused:v.message}):u({answers:!1}),v instanceof j?jn(!1,v):v instanceof S||console.error(v)}
let E=()=>document.visibilityState==="visible"&&m();return document.addEventListener("visibilitychange",E,{signal:s}),
addEventListener("online",E,{signal:s}),s.addEventListener("abort",()=>clearTimeout(p)),m(),{move(v,{whatever:A=!1}={}){
r={place:v,at:Date.now(),whatever:A},u({late:!1,refused:""}),c===0&&m()},standing:()=>a}}var Hb,Ub,ph,_i=$(()=>{
V();tt();bt();Hb=1e3,Ub=4e3,ph=3e3});function uh(t,e){let s=e.filter(l=>l.kind!=="trial"&&!l.parked&&!l.refused).reduce((l,c)=>({...l,...Wn(c.body)}),
t),o=e.filter(l=>l.kind!=="trial"),a=new Set(o.flatMap(l=>l.body.settles??[])),r=(t.proposals??[]).filter(l=>!a.
has(l.id));return{...s,proposals:r,after:o.at(-1)?.id??t.revision_id,here:o}}async function yn(t){return uh(t,
await Ke(t.code).catch(()=>[]))}async function vi(t){let e=await Kt(t);return e&&uh(e,(await Ke(t)).filter(n=>n.
body.settles))}async function Ys(t){let e=await Kt(t);return e&&yn(e)}async function Fe(t,e,{reason:n="",settles:s=[]}={}){
let o=Lo(e,t),a=Object.keys(o);if(!a.length&&!s.length)return{where:"same",card:t};let{name:r}=N(),l=await No(
{id:Wt(),kind:a.every(h=>h==="note")&&!s.length?"note":"edit",code:t.code,body:{...o,...s.length?{settles:s}:{},
...n?{reason:n}:{},...r?{by:r}:{}},before:Wn(t,a),after:t.after,etag:t.etag,revision:t.revision}),c=await Ys(t.
code).catch(()=>{});return{where:l.where,card:c??l.answer??{...t,...o}}}var je=$(()=>{Fn();Et();Eo();tt();vt()});function ki(t){if(t.limits!==void 0)return t.limits;let e=[t,...t.corrections??[]].filter(Gb);if(!e.length)return null;
let n=qb(t)+.5,s=Math.max(Math.min(...e.map(r=>r.set_angle_deg)),n),o=e.filter(r=>r.set_angle_deg>=s).map(r=>r.
punch_depth_mm);if(!o.length)return{sharpest_deg:180,deepest_mm:0,limited_by:["die angle"]};let a=s===n?"die a\
ngle":"saved table";return{sharpest_deg:s,deepest_mm:Math.max(...o),limited_by:[a]}}function le(t,e){let n=ki(
t);if(!n)return!1;let{set_angle_deg:s,punch_depth_mm:o}=e;return(s===null||s>=n.sharpest_deg&&s<180)&&(o===null||
o>0&&o<=n.deepest_mm)}function qb({drawing:t,v_opening_mm:e}){let n=(t?.die??[]).filter(([s,o])=>Math.abs(s)<.05&&
o<0).map(([,s])=>-s);return n.length&&e?2*Math.atan(e/2/Math.min(...n))*Vb:0}var mh,Vb,Gb,_n=$(()=>{mh=["Read \
the angle again: the included angle between the flats, at this bend.","Compare the tools in the press with the\
 card: punch and die.","Measure the thickness of the sheet.","Zero the depth again, at first touch of the shee\
t."],Vb=180/Math.PI;Gb=t=>typeof t.set_angle_deg=="number"&&typeof t.punch_depth_mm=="number"});async function _t(t,e,n){let s=await Kt(t).catch(()=>{});if(!s){await e(await yn(await ye(t,n)),{where:"shop"});
return}await e(await yn(s),{where:"device"}),zb(s,e,n)}async function zb(t,e,n){try{let s=await ye(t.code,n);!n.
aborted&&s.etag!==t.etag&&await e(await yn(s),{where:"shop"})}catch{}}async function fh(t,e){if(await Kt(t).catch(
()=>{}))return"device";try{return await ye(t,e),"shop"}catch(n){if(n instanceof S&&n.status===404)return"nowhe\
re";if(n instanceof j)return"silent";throw n}}async function ye(t,e){try{let{body:n}=await M("GET",`/cards/${t}`,
{signal:e,timeout:4e3});return jn(!0),await ne(n).catch(()=>n)}catch(n){throw e?.aborted||jn(!1,n),n}}async function la(t,e){
let{body:n}=await M("PUT",`/cards/${t.code}`,{body:e,etag:t.etag,timeout:e.replan?6e4:8e3});return ne(n).catch(
()=>n)}function _e(t,e){let n=t.settings?.find(o=>o.step===e.number),s={set_angle_deg:n?.set_angle_deg??e.set_angle_deg,
punch_depth_mm:n?.punch_depth_mm??e.punch_depth_mm};return{...le(e,s)?s:{set_angle_deg:null,punch_depth_mm:null},
fromTrial:!!n,reason:n?.reason??""}}var Mt=$(()=>{V();je();_n();vt();bt()});function gh(t,e){let n=-1/0,s=o=>{if(o.altKey||o.ctrlKey||o.metaKey||o.shiftKey||o.isComposing)return;let a=Kb.
has(o.key)?t.next:Yb.has(o.key)?t.back:null;!a||Zb(o)||(o.preventDefault(),!(o.repeat||o.timeStamp-n<Jb)&&(n=o.
timeStamp,a()))};addEventListener("keydown",s,{signal:e}),addEventListener("click",o=>o.detail>0&&Xb(),{signal:e})}
function Zb({key:t,target:e,repeat:n}){let s=e;return s.matches("input, select, textarea")?!0:!n&&(t==="Enter"||
t===" ")&&s.matches("button, a, summary")}function Xb(){let t=document.activeElement;t?.matches("button, summa\
ry, input[type=range]")&&t.blur()}var Kb,Yb,Jb,$h=$(()=>{Kb=new Set(["ArrowRight","PageDown"," ","Enter"]),Yb=
new Set(["ArrowLeft","PageUp","Backspace"]),Jb=300});function ca(t,{pixels:e=Vn(),tallest:n=e*.7,test:s="folded",mark:o=""}={}){let a=U*2.4,r=an(t.bounds,e-2*a,n-1.6*
a),[,l,c]=t.bounds,[h,p]=r([c,l]),u=m=>m.map(([g,b,y,W])=>`M${r([g,b])}L${r([y,W])}`).join("");return i`<svg
    class="drawing folded"
    data-test=${s}
    role="img"
    aria-label=${ew(t)}
    width=${h+2*a}
    height=${p+1.6*a}
    viewBox="${-a} ${-U*.7} ${h+2*a} ${p+1.6*a}">
    ${t.faces.filter(({side:m})=>o&&m===o).map(({outline:m})=>k`<path class="marked-face" d="M${m.map(g=>r(g).
join(" ")).join("L")}Z"/>`)}
    <path class="hidden-line" d=${u(t.lines.hidden)} />
    <path class="bend-edge" d=${u(t.lines.bend)} />
    <path class="edge" d=${u(t.lines.edge)} />
    ${t.dimensions.map(({name:m,from:g,to:b,mm:y})=>Qb(r(g),r(b),m,F(y)))}
    ${t.faces.filter(({flat:m})=>m===1).map(({side:m,outline:g})=>tw(m,g.map(r),m===o))}
  </svg>`}function Qb(t,e,n,s){let o=n==="length"?[-U*.5,U*.95]:n==="width"?[U*.5,U*.95]:[U*.9,0],[a,r]=[t,e].
map(([p,u])=>[p+o[0],u+o[1]]),[l,c]=[(a[0]+r[0])/2,(a[1]+r[1])/2],h=Ft(s,U);return k`<path class="dimension" d="M${a}L${r}"/>
    <path class="dimension tick"
      d="M${a[0]-4} ${a[1]+4}L${a[0]+4} ${a[1]-4}M${r[0]-4} ${r[1]+4}L${r[0]+4} ${r[1]-4}"/>
    <rect class="ground" x=${l-h/2} y=${c-U*.65} width=${h} height=${U*1.3}/>
    <text x=${l} y=${c} font-size=${U} text-anchor="middle" dominant-baseline="central">${s}</text>`}function tw(t,e,n){
let s=e.reduce((r,l)=>r+l[0],0)/e.length,o=e.reduce((r,l)=>r+l[1],0)/e.length,a=Ft(t,U);return k`<rect class="ground ${n?
"marked-word":""}" x=${s-a/2} y=${o-U*.65}
      width=${a} height=${U*1.3}/>
    <text class="side-name ${n?"marked-word":""}" x=${s} y=${o} font-size=${U}
      text-anchor="middle" dominant-baseline="central">${t}</text>`}function ew({length_mm:t,width_mm:e,height_mm:n,
faces:s}){let o=s.filter(({flat:a})=>a===1).map(({side:a})=>a);return`Box ${vn({length_mm:t,width_mm:e,height_mm:n})}\
, folded, seen from the right front corner. Sides: ${o.join(", ")}.`}function vn({length_mm:t,width_mm:e,height_mm:n}){
return f({text:[t,e,n].map(F).join(" × "),unit:w(0).unit})}function bh(t,{pixels:e=Vn(),tallest:n=e*.9,test:s="\
blank"}={}){let[o,a]=[F(t.length_mm),F(t.width_mm)],r=Ft(a,U)+U*1.8,l=an([0,0,t.length_mm,t.width_mm],e-r-12,n-
U*3),[c,h]=l([t.length_mm,0]);return i`<svg
    class="drawing blank box-blank"
    data-test=${s}
    role="img"
    aria-label=${ow(t)}
    width=${c+r+12}
    height=${h+U*3}
    viewBox="-6 -6 ${c+r+12} ${h+U*3}">
    <path class="sheet" d="M${t.outline.map(p=>l(p).join(" ")).join("L")}Z" />
    ${t.lines.map(p=>sw(p,l))}
    <path
      class="dimension"
      d="M0 ${h+U*1.3}H${c}M-4 ${h+U*1.3+4}l8 -8M${c-4} ${h+U*1.3+4}l8 -8" />
    ${nw(c/2,h+U*1.3,o)}
    <path
      class="dimension"
      d="M${c+U} 0V${h}M${c+U-4} 4l8 -8M${c+U-4} ${h+4}l8 -8" />
    <text x=${c+U*1.6} y=${h/2} font-size=${U} dominant-baseline="central">
      ${a}
    </text>
  </svg>`}function nw(t,e,n){let s=Ft(n,U);return k`<rect class="ground" x=${t-s/2} y=${e-U*.7} width=${s} height=${U*
1.4}/>
    <text x=${t} y=${e} font-size=${U} text-anchor="middle" dominant-baseline="central">${n}</text>`}function sw({
bend:t,place:e,x1_mm:n,y1_mm:s,x2_mm:o,y2_mm:a,direction:r},l){let[c,h]=[l([n,s]),l([o,a])],p=.5+(e%2?-1:1)*.12*
Math.ceil((e-1)/1),[u,m]=[c[0]+(h[0]-c[0])*p,c[1]+(h[1]-c[1])*p];return k`<path class="fold ${r}" d="M${c}L${h}"/>
    <circle class="badge" cx=${u} cy=${m} r=${U*.68}/>
    <text class="badge-number" x=${u} y=${m} font-size=${U*.95} text-anchor="middle"
      dominant-baseline="central">${t}</text>`}function ow(t){let e=t.lines.map(n=>`bend ${n.bend} ${n.side} ${n.
direction}`);return`Blank ${F(t.length_mm)} by ${F(t.width_mm)}, inside of the box up. ${e.join("; ")}.`}var U,
It,es=$(()=>{_();L();Io();Le();Jt();U=18;It=t=>!!t?.folded});function da(t,e){return!It(t)||!e.side?d:i`<section class="box-step" data-test="box-step" aria-label="Which side">
    ${ca(t.folded,{mark:e.side,test:"step-folded",tallest:260,pixels:Math.min(innerWidth-32,460)})}
    <ul>
      <li>Bend line <b data-test="bend-length">${f(w(e.bend_length_mm))}</b> long.</li>
      ${wh("Punch",e.segments_mm?.punch)} ${wh("Die",e.segments_mm?.die)}
      ${e.clear_between_mm===null||e.clear_between_mm===void 0?d:i`<li data-test="clear-between">
              Clear between the finished sides: <b>${f(w(e.clear_between_mm))}</b>. Punch no
              longer than that.
            </li>`}
      ${aw(e.sides_near??[])}
    </ul>
  </section>`}function wh(t,e){if(!e?.length)return d;let n=e.reduce((o,a)=>o+a,0),s=e.length>1?`${e.map(F).join(
" + ")} = `:"";return i`<li class="pieces">${t}: <b>${s}${F(n)} ${w(0).unit}</b></li>`}function aw(t){if(!t.length)
return d;let[e]=[...t].sort((o,a)=>o.distance_mm-a.distance_mm),n=f(T(e.included_angle_deg)),s=f(w(Math.abs(e.
distance_mm)));return i`<li data-test="sides-near">
    ${e.distance_mm<0?i`<b>The finished ${e.side} side runs ${s} into the ${e.tool}</b>, at ${n}.`:i`The finished ${e.
side} side stays <b>${s}</b> from the ${e.tool}, nearest at ${n}.`}
  </li>`}var xi=$(()=>{_();es();Jt();L()});function vh(t){return t.number===1?"first":t.turn_quarter?t.turn_over?"quarter-over":"quarter":t.turn_over&&t.
turn_end?"both":t.turn_over?"over":t.turn_end?"end":"same"}function ns(t){let e=vh(t);return i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${xh}${Sh[e]}</svg
    ><b>${kh[e]}.</b>`}function ha(t,e){let n=vh(t);return i`<div class="lie ${n}" data-test="lie" data-move=${n}>
    <svg class="sign" viewBox="0 0 66 58" aria-hidden="true">${xh}${Sh[n]}</svg>
    <p>
      <b data-test="move">${kh[n]}.</b>
      <span data-test="face">${t.inside_face==="up"?"Top":"Bottom"} face up.</span>
      ${lw(t,e)}
    </p>
  </div>`}function Js({gauged_end:t,gauged_side:e},n){return e?`${e} side`:`${t} end${n?` (flat ${t==="left"?1:
n})`:""}`}function lw(t,e){let{gauged_end:n,gauged_against:s,gauge_x_mm:o,operation:a}=t;if(a==="hem flatten")
return i`<span data-test="end">The hem at the ${n} end goes under the flattening tool.</span>`;if(!n||o===null)
return i`<span data-test="end">No edge reaches the gauge: lay it to the bend line.</span>`;let r=Js(t,e);return i`<span data-test="end"
    >${r[0].toUpperCase()}${r.slice(1)} to the
    gauge${s==="finished flange"?", against the finished flange":""}.</span
  >`}var kh,xh,Si,yh,rw,_h,iw,Sh,ss=$(()=>{_();kh={first:"Lay it in",same:"As it lies",over:"Turn it over",end:"\
Turn it end for end",both:"Turn it over and end for end",quarter:"Turn it a quarter","quarter-over":"Turn it o\
ver and a quarter"},xh=k`<path class="sign-sheet" d="M14 34L44 34L52 24L22 24Z" />`,Si=k`<path class="sign-turn" d="M33 17C33 6 55 6 57 17M57 17l-5 -4M57 17l4 -5" />`,
yh=k`<path class="sign-turn" d="M10 41C16 54 48 54 55 42M55 42l-7 1M55 42l1 7" />`,rw=k`<path class="sign-turn" d="M33 4V18M33 18l-5 -5M33 18l5 -5" />`,
_h=k`<path class="sign-turn" d="M14 44C22 54 38 55 46 50M46 50l-7 -1M46 50l-2 6" />`,iw=k`<path class="sign-turn" d="M24 45H42M24 51H42" />`,
Sh={first:[rw],same:[iw],over:[Si],end:[yh],both:[Si,yh],quarter:[_h],"quarter-over":[Si,_h]}});function Zs({frames:t},e){let n=t.findIndex(a=>a.share>=e);if(n<0)return t[t.length-1];if(n===0)return t[0];let[
s,o]=[t[n-1],t[n]];return Ti(s,o,(e-s.share)/(o.share-s.share))}function Ti(t,e,n){let s=(a,r)=>a+(r-a)*n,o=(a,r)=>[
s(a[0],r[0]),s(a[1],r[1]),s(a[2],r[2])];return{share:s(t.share,e.share),phase:e.phase,included_angle_deg:s(t.included_angle_deg,
e.included_angle_deg),punch_y_mm:s(t.punch_y_mm,e.punch_y_mm),left:o(t.left,e.left),right:o(t.right,e.right),inside_radius_mm:s(
t.inside_radius_mm,e.inside_radius_mm),half_arc_mm:s(t.half_arc_mm,e.half_arc_mm),gauge_x_mm:t.gauge_x_mm===null||
e.gauge_x_mm===null?null:s(t.gauge_x_mm,e.gauge_x_mm)}}function Th({frames:t}){let e=t.find(o=>o.punch_y_mm<=0)??
t[0],n=Math.min(...t.map(o=>o.punch_y_mm)),s=[...t].reverse().find(o=>o.phase==="bend")??t[t.length-1];return{
before:e.share,after:n<0?s.share:t[t.length-1].share}}function Mh(t,e){let n=-e.punch_travel_mm,s=e.phase==="b\
end",o=c=>s?c.included_angle_deg:e.phase==="approach"?c.punch_y_mm:-c.punch_y_mm,a=s?e.included_angle_deg:e.phase===
"approach"?n:-n,r=cw(t.frames,e.phase);return{...dw(r,o,a),punch_y_mm:n}}function cw(t,e){let n=e==="withdrawa\
l"?["release","withdrawal"]:[e],s=t.findIndex(a=>n.includes(a.phase)),o=t.filter((a,r)=>n.includes(a.phase)||r===
s-1);return o.length?o:t}function dw(t,e,n){for(let a=1;a<t.length;a+=1){let[r,l]=[e(t[a-1]),e(t[a])];if(n<=r&&
n>=l&&r>l)return Ti(t[a-1],t[a],(r-n)/(r-l))}if(n>e(t[0]))return t[0];let[s,o]=t.slice(-2);return o.phase==="b\
end"?Ti(s,o,(e(s)-n)/(e(s)-e(o))):o}function hw({thickness_mm:t,left:e,right:n},{left:s,right:o,half_arc_mm:a,
inside_radius_mm:r}){let[l,c]=os([[-a,-t/2],[-a,t/2]],s),[h,p]=os([[a,-t/2],[a,t/2]],o),u=([g,b])=>`${g} ${-b}`,
m=g=>g.map(b=>`L${u(b)}`).join("");return`M${u(l)}A${r+t} ${r+t} 0 0 0 ${u(h)}${m(os(n,o))}L${u(p)}A${r} ${r} \
0 0 1 ${u(c)}${m(os(e,s))}Z`}function Oh(t,{phase:e,punch_y_mm:n}){let s=e==="putting in"||e==="approach",o=t.
frames.filter(u=>u.phase===(s?"putting in":"taking out"));if(!o.length||e==="bend"||e==="release")return null;
let a=o[0].punch_y_mm,l=(o.length>1?o.slice(s?1:0,s?void 0:-1):o).flatMap(({left:u,right:m})=>[...os(t.left,u),
...os(t.right,m)]),[c,h]=[l.map(([u])=>u),l.map(([,u])=>u)];return{bounds:[Math.min(...c),Math.min(...h),Math.
max(...c),Math.max(...h,a)],share:Math.max(0,Math.min(1,a>0?n/a:1))}}function os(t,[e,n,s]){let[o,a]=[Math.cos(
s*Math.PI/180),Math.sin(s*Math.PI/180)];return t.map(([r,l])=>[e+o*r-a*l,n+a*r+o*l])}function pa(t,e,n){let s=-n.
punch_y_mm,o=e.frames[0].gauge_x_mm,a=n.gauge_x_mm===null||o===null?0:n.gauge_x_mm-o;return{sheet:hw(e,n),tools:[
t.before.ram,t.before.holder,t.before.punch].map(St).filter(Boolean),down:s,gauge:St(t.before.gauge),back:a}}var Mi=$(
()=>{Le()});function ua({clearance:t}){let e=t?.hits?.[0]??t?.nearest??null;return e&&e.distance_mm<=Ph?e:null}function kn(t){
let{drawing:e,motion:n}=t;if(!e||!n?.frames?.length)return null;let s=ua(t),{before:o,after:a}=Th(n),r=s?Mh(n,
s):Zs(n,(o+a)/2),l=!!t.clearance?.hits?.length;return{before:o,during:r.share,after:a,moment:r,shown:pa(e,n,r),
near:s,hit:l,name:l?s&&s.distance_mm>0?"Too near":"Hit":s?"Closest":"Half way"}}function as(t){let{clearance:e}=t;
if(!e)return"Clearance was not checked at this step.";let n=ua(t);if(!n)return`Nothing comes within ${f(w(Ph,{
digits:0}))} of the part.`;let s=f(w(Math.abs(n.distance_mm))),o=typeof e.needed_mm=="number"?`, ${f(w(e.needed_mm))}\
 wanted`:"",a=n.flat_name?`${n.flat_name[0].toUpperCase()}${n.flat_name.slice(1)}`:n.flat?`Flat ${n.flat}`:"Th\
e part";return n.distance_mm<=0?`${a} runs ${s} into the ${Ah(n.tool)}, ${Lh(n)}.`:`Closest: ${a.toLowerCase()}\
 is ${s} from the ${Ah(n.tool)}, ${Lh(n)}${e.hits?.length?o:""}.`}function Lh({phase:t,included_angle_deg:e,punch_travel_mm:n}){
let s=f(w(Math.max(0,-n),{digits:0}));return t==="approach"?`as the punch comes down, ${s} above the sheet`:t===
"withdrawal"?n<0?`as the punch rises, ${s} above where it touched`:"as the punch starts to rise":`at ${f(T(e))}`}
function Oi({motion:t},e){let n=f(T(e.included_angle_deg));if(e.phase==="bend")return t.frames[0].phase==="ben\
d"?`Hem closing, ${n}`:`Bending, ${n}`;if(e.phase==="release")return`Letting go, ${n}`;if(e.phase==="taking ou\
t")return`Taking it out${Nh(t,e)}`;if(e.phase==="putting in")return`Putting it in${Nh(t,e)}`;let s=f(w(Math.max(
0,e.punch_y_mm),{digits:0}));return e.phase==="withdrawal"?`Punch rising, ${s} up`:e.punch_y_mm>0?`Punch comin\
g down, ${s} up`:"First touch, sheet flat"}function Nh({frames:t},{phase:e,right:n}){let s=e==="putting in"?t.
find(a=>a.phase==="approach"):[...t].reverse().find(a=>a.phase==="withdrawal"),o=Math.round(Math.abs(n[2]-(s??
t[0]).right[2]));return o?`, tilted by ${o}°`:", no tilt"}function pw({clearance:t}){let{way_in:e,way_out:n,rides_up:s,
clear:o}=t??{};if(n==="trapped")return{kind:"trapped",what:"Trapped",how:"After this bend it can be neither li\
fted away nor slid off the tools."};if(o===!1)return null;if(e==="unknown"||n==="unknown")return{kind:"unknown",
what:`No way ${n==="unknown"?"out":"in"} found`,how:"Try it with a scrap piece, the press off, before you bend\
."};let[a,r]=[Bh(e,n,"slide"),Bh(e,n,"swing")],l=s?"It rides up with it. ":"";return a&&r?{kind:"slide",what:`\
Slide it ${a}, tilt it ${r}`,how:`Slide along the tools. ${l}${Eh}`}:a?{kind:"slide",what:`Slide it ${a}`,how:"\
Along the tools: no way past the punch was found."}:r?{kind:"swing",what:l?`Unhook it from the punch${e==="swi\
ng"?", tilt it in":""}`:`Tilt it ${r}`,how:`${l}${Eh}`}:null}function ce(t,{short:e=!1}={}){let n=pw(t);return n?
e?i`<span class="turn" data-test="way" data-way=${n.kind}
      >${Ch(n.kind)}<b>${n.what}.</b></span
    >`:i`<div class="lie way ${n.kind}" data-test="way" data-way=${n.kind}>
    ${Ch(n.kind)}
    <p><b>${n.what}.</b> ${n.how}</p>
  </div>`:d}var Ph,Ah,Eh,Bh,Ch,uw,mw,ve=$(()=>{_();Mi();L();Ph=100;Ah=t=>({gauge:"gauge finger",sheet:"part it\
self"})[t]??t;Eh="Punch still, at its top. Fingers never between.";Bh=(t,e,n)=>[t===n&&"in",e===n&&"out"].filter(
Boolean).join(" and ");Ch=t=>t==="swing"?uw:mw(t!=="slide"),uw=i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
  <path class="sign-sheet" d="M46 4H60V24L53 32L46 24Z" />
  <path class="sign-edge" d="M10 30L34 48L44 34" />
  <path class="sign-turn" d="M36 12A22 22 0 0 0 12 18M12 18l8 1M12 18l1 -8" />
</svg>`,mw=t=>i`<svg class="sign" viewBox="0 0 66 58" aria-hidden="true">
    <path class="sign-sheet" d="M4 22H40V36H4Z" />
    <path class="sign-edge" d="M2 12H64M2 46H64" />
    <path class="sign-turn" d=${t?"M46 22L60 36M60 22L46 36":"M44 29H62M62 29l-6 -5M62 29l-6 5"} />
  </svg>`});function Li({segments_mm:t,segments_total_mm:e}){if(!t?.length)return"";let n=t.map(o=>F(o)).join(" + "),s=w(0).
unit;return t.length>1?`${n} = ${F(e??0)} ${s}`:`${n} ${s}`}function rs(t,e=0,n=[]){return t?.length?i`<ul class="tools" data-test="tools">
    ${t.map(s=>i`<li class="tool-row" data-kind=${s.kind} data-code=${s.code}>
          <span class="kind">${s.kind}</span>
          <span class="name"><b>${s.code}</b> ${s.name}</span>
          <span class="where">${Ai(s)}</span>
          <span class="more"
            >${[Li(s),Ih(s.steps,e),Ni(s,n),fw(s.condition)].filter(Boolean).join(" · ")}</span
          >
        </li>`)}
  </ul>`:i`<p data-test="no-tools">No tool in the crib does this. See the findings.</p>`}function Ih(t,e){return!t?.
length||t.length===e?"":`step${t.length>1?"s":""} ${t.join(", ")}`}function Ni({kind:t,code:e},n){let s=n.filter(
a=>t==="punch"&&a.punch===e),o=s.filter(a=>a.punch_turned);return o.length?`turned round${o.length<s.length?` \
for ${Ih(o.map(({number:a})=>a),0)}`:""}`:""}function fw(t){return t==="good"||!t?"":t==="unknown"?"condition \
unknown":t}function ma(t){let e=t.length_mm_low===t.length_mm_high||t.length_mm_low===void 0;return i`<div class="figures">
      ${be("Blank length",w(t.length_mm,{digits:2}),{test:"blank-length",band:e?null:[w(t.length_mm_low,{digits:2}),
w(t.length_mm_high,{digits:2})]})}
      ${be("Blank width",w(t.width_mm,t.outline?{digits:2}:{}),{test:"blank-width",band:t.width_mm_low===void 0||
t.width_mm_low===t.width_mm_high?null:[w(t.width_mm_low,{digits:2}),w(t.width_mm_high,{digits:2})]})}
      ${be("Mass",Ps(t.mass_kg),{test:"blank-mass"})}
    </div>
    ${t.lines?i`<p data-test="relief">${Ei(t)}</p>`:d}`}function Ei({relief:t,lines:e=[]}){let n=new Set(e.map(
({side:o})=>o));return!(["left","right"].some(o=>n.has(o))&&["front","back"].some(o=>n.has(o)))||!t?"":t.shape===
"none"?"Corners without relief.":`Corner reliefs ${t.shape}, ${f(w(t.size_mm,{digits:1}))} ${t.shape==="round"?
"across.":"a side."}`}function Wh(t){let e=s=>w(s,{digits:2}).text,n=[["At",s=>e(s.at_mm)],["Angle",s=>f(T(s.included_angle_deg))],
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
              <th role="rowheader" scope="row">${s.bend} ${gw(t,s)}${s.direction}</th>
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
  </div>`}function gw({lines:t},{bend:e}){let n=t?.find(s=>s.bend===e)?.side;return n?`${n} `:""}function Bi(t,e=0){
let n=t.turn_over||t.turn_end||t.turn_quarter,s=t.gauged_against&&t.gauged_against!=="flat edge"?`, against th\
e ${t.gauged_against}`:"",o=t.gauged_end?`${$w(Js(t,e))} to the gauge${s}, `:"";return i`<span class="handling">
    ${n?i`<span
            class="turn"
            data-test="turn"
            data-quarter=${String(!!t.turn_quarter)}
            data-over=${String(t.turn_over)}
            data-end=${String(t.turn_end)}
            >${ns(t)}</span
          > `:d}
    ${ce(t,{short:!0})} ${o}${t.inside_face==="up"?"top":"bottom"} face
    up.${bw(t)}
  </span>`}function bw({hits:t}){if(!t)return d;let e=t.gauge_x_mm.map(n=>F(n)).join(", ");return i` <span data-test="hits"
    >${t.count} hits, ${f(w(t.pitch_mm,{digits:2}))} apart, gauge X ${e}.</span
  >`}function de(t){let e=t.operation&&t.operation!=="bend"?t.operation:"bend",n=t.side?`Bend ${t.bend}, ${t.side}`:
`Bend ${t.bend}`;return e==="bend"?n:`${n}, ${e}`}function ww(t,e,n){let s=t[`${e}_low`],o=t[`${e}_high`],a=s==
null||s===o?d:i`<small class="band">${n(s).text} to ${f(n(o))}</small>`;return i`${f(n(t[e]))}${a}`}function Rh(t,e,n){
return le(t,t)?t.limits?ww(t,e,n):f(n(t[e])):f(n(null))}function fa(t,{link:e}={}){let n=o=>w(o,{digits:2}),s=t.
part?.flats_mm?.length??0;return i`<div class="steps-frame">
    <table class="steps stacks" role="table" data-test="steps">
      <thead role="rowgroup">
        <tr role="row">
          ${["Step","Gauge X","Gauge R","Set angle","Depth","Allow for","Tools","Sheet"].map(o=>i`<th role="columnheader" scope="col">${o}</th>`)}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${t.steps.map(o=>i`<tr role="row" data-step=${o.number}>
              <th role="rowheader" scope="row">
                ${e?i`<a href=${e(o.number)}>${o.number}. ${de(o)}</a>`:i`${o.number}. ${de(o)}`}
                <small>${f(T(o.included_angle_deg))} ${o.direction}</small>
              </th>
              <td role="cell" data-head="Gauge X" data-test="gauge-x">${f(n(o.gauge_x_mm))}</td>
              <td role="cell" data-head="Gauge R" data-test="gauge-r">${f(n(o.gauge_r_mm))}</td>
              <td role="cell" data-head="Set angle" data-test="set-angle">
                ${Rh(o,"set_angle_deg",T)}
              </td>
              <td role="cell" data-head="Depth" data-test="depth">${Rh(o,"punch_depth_mm",n)}</td>
              <td role="cell" data-head="Allow for" data-test="force">
                ${f(qt(o))}<small class="band">expected ${f(Re(o))}</small>
              </td>
              <td role="cell" data-head="Tools">
                ${[o.punch,o.die].filter(Boolean).join(" / ")||"none"}${o.punch_turned?i` <span class="punch-turned">punch turned round</span>`:
d}
              </td>
              <td role="cell" data-head="Sheet" class="long">${Bi(o,s)}</td>
            </tr>`)}
      </tbody>
    </table>
  </div>`}var Ai,$w,He=$(()=>{_();yt();_n();L();re();Jt();Xo();ss();ve();Ai=Pe;$w=t=>t[0].toUpperCase()+t.slice(
1)});function ga(t,e){return i`<header class="step-top">
    <a class="step-card" href="/c/${t.code}" data-test="to-card"
      ><span aria-hidden="true">‹</span> <span class="step-title">${t.title||t.display_code}</span></a
    >
    ${Ci(t,e)}
  </header>`}function Qt(t,e,n){return i`<div class="set-figure" data-test=${n}>
    <span class="what"
      >${t}${e.unit&&e.unit!=="°"?i` <span class="unit">${e.unit}</span>`:d}</span
    >
    <span class="value" data-test="${n}-value">${e.text}${e.unit==="°"?"°":d}</span>
  </div>`}var Ci,xn=$(()=>{_();He();Ci=(t,e)=>i`<h1>
    <span data-test="step-number">Step ${e.number} of ${t.plan.steps.length}</span>
    <small
      >${de(e)}
      ${e.direction}${e.punch_turned?i`, <b class="punch-turned" data-test="punch-turned">punch turned round</b>`:
d}</small
    >
  </h1>`});function Dh(t,e,n,s,o){let a=kn(t),{at:r}=n,l=!a||r==="between"?n.share:a[r],c=r==="between"?Zs(t.motion,l):null,
h=a&&r==="during"?a.shown:null,p=f(w(t.gauge_x_mm)),u=(m,g,b,y)=>i`<button
      type="button"
      class="button"
      aria-pressed=${b?"true":"false"}
      data-test=${y}
      @click=${()=>{Object.assign(n,g,{playing:!1}),s()}}>
      ${m}
    </button>`;return i`${ie(t.drawing,{pose:r==="between"?"during":r,close:n.close,opening:t.v_opening_mm,gauge:p,
angle:e,moment:h??(c&&pa(t.drawing,t.motion,c)),near:a?.near??null,mark:r==="during",room:c&&Oh(t.motion,c),words:`${de(
t)}, ${_w(t,r)}. Gauge at ${p}.`})}
    ${a?i`<p class="moment ${a.hit?"hit":""}" data-test="moment">
            ${vw(t,r,c)}
          </p>`:d}
    <div class="toggles">
      ${u("Before",{at:"before"},r==="before","before")}
      ${a?u(a.name,{at:"during"},r==="during","during"):d}
      ${u("After",{at:"after"},r==="after","after")}
      ${u(n.close?"Whole":"Zoom",{close:!n.close},n.close,"closer")}
    </div>
    ${a?kw(t,l,n,s,o):d}`}function _w(t,e){return e==="before"?"the sheet on the die before the bend":e==="aft\
er"?"at the bottom of the stroke":e==="during"?as(t):"on its way"}function vw(t,e,n){return n?Oi(t,n):as(t)}function kw(t,e,n,s,o){
let a=()=>{n.playing=!n.playing,n.playing&&xw(e>=1?0:e,n,s,o),s()};return i`<div class="motion">
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
      aria-valuetext=${Oi(t,Zs(t.motion,e))}
      data-test="motion"
      @input=${r=>{Object.assign(n,{playing:!1,at:"between",share:Number(r.target.value)}),s()}} />
  </div>`}function xw(t,e,n,s){let o=performance.now(),a=r=>{!e.playing||s.aborted||(e.share=Math.min(1,t+Math.
max(0,r-o)/yw),e.playing=e.share<1,n(),e.playing&&requestAnimationFrame(a))};Object.assign(e,{at:"between",share:t}),
requestAnimationFrame(a)}var yw,Xs,$a=$(()=>{_();Mi();Us();L();He();ve();yw=7e3,Xs=()=>({at:"before",share:0,close:!1,
playing:!1})});function Fh(t,{waits:e,correction:n}){if(!e&&!n?.to_check?.length)return i`<p data-test="no-setting">${n?.words||
"No new setting comes from this one."}</p>`;let s=n?.what??`${Sw(t)} Something else is wrong.`;return i`<div class="no-setting" data-test="no-setting" role="alert">
    <p>${x("stop")} <b>No new setting.</b> ${s}</p>
    <p><b>Do not press deeper.</b> Check in this order:</p>
    <ol>
      ${(n?.to_check??mh).map(o=>i`<li>${o}</li>`)}
    </ol>
  </div>`}function Sw(t){let e=ki(t),n="That is further off than the card’s table of corrections goes.";return e?
`${n} Tools and press end at ${f(T(e.sharpest_deg))} under load.`:n}function jh(t,e){return t.die?i`<p class="why-not-set" data-test="why-not-set">
    ${x("stop")} <b>No angle and depth.</b>
    ${e?"The setting kept on this card is beyond what its tools and press reach. Plan the card again and bend \
a first piece.":"Tools and press do not reach this bend. Read what stops it before anything is bent."}
  </p>`:d}var Pi=$(()=>{_();_n();L();q()});function Hh({stations:t=[]}){return t.length<2&&!t.some(e=>e.off_centre_level!=="ok")?d:i`<h3>Where the tools stand</h3>
    <ul class="order-list stations" data-test="stations">
      ${t.map(e=>i`<li>
            <b>Station ${e.number}</b> ${e.punch}${e.turned?", turned round,":d} over
            ${e.die}: ${Uh(e.centre_mm)}; step${e.steps.length>1?"s":""}
            ${e.steps.join(", ")}.
            ${e.off_centre_level==="ok"?d:i`${x(e.off_centre_level)} load off the middle, see the findings.`}
          </li>`)}
    </ul>`}function ba({stations:t=[]},e){let n=t.find(({steps:s})=>s.includes(e.number));return n&&t.length>1?
`Station ${n.number}, ${Uh(n.centre_mm)}`:""}function Uh(t){return Math.abs(t)<.5?"in the middle":`its middle ${f(
w(Math.abs(t),{digits:0}))} to the ${t>0?"right":"left"} of the press's middle`}var wa=$(()=>{_();L();q()});function ya(t,e){let n=e.checks.filter(l=>jt(l)!=="ok"),s=t.plan.checks.filter(l=>l.level==="stop"&&!l.step),o=t.
plan.checks.filter(l=>l.code==="general-hands"),r=[...new Map([...s,...n,...o].map(l=>[l.code+l.words,{...l,sign:jt(
l),step:null}])).values()];return{stops:r.filter(l=>l.level==="stop"),watch:r.filter(l=>l.level!=="stop")}}function _a(t,e,n,s,o){
return e.drawing?Dh(e,_e(t,e).set_angle_deg,n,s,o):i`<p class="state" data-test="no-drawing">
      ${e.die?"No setting":"No tool"}, so no drawing of this step.
    </p>`}function va(t,e){let n=_e(t,e);return n.set_angle_deg===null&&e.gauge_x_mm===null?i`<p class="nothing-to-set" data-test="nothing-to-set">No numbers to set at this step.</p>`:
i`<div class="set-figures">
      ${Qt("Gauge X",w(e.gauge_x_mm),"gauge-x")}
      ${Qt("Gauge R",w(e.gauge_r_mm),"gauge-r")}
      ${Qt("Angle to set",T(n.set_angle_deg),"set-angle")}
      ${Qt("Depth",w(n.punch_depth_mm,{digits:2}),"punch-depth")}
    </div>
    ${n.set_angle_deg===null?jh(e,n.fromTrial):d} ${Tw(e)}
    ${n.fromTrial&&n.set_angle_deg!==null?i`<p class="from-trial" data-test="from-trial">
            <b>Angle and depth from a first piece.</b> The plan said ${f(T(e.set_angle_deg))} and
            ${f(w(e.punch_depth_mm,{digits:2}))}.
          </p>`:d}
    ${e.gauge_draw_back_mm?i`<p class="draw-back" data-test="draw-back">
            <b>Draw the gauge back ${f(w(e.gauge_draw_back_mm,{digits:0}))}</b>
            before the stroke: the rising flange would hit it.
          </p>`:d}
    ${Mw(e)}`}function Tw(t){let e=Qo(t);return e===d?d:i`<p class="press-force" data-test="press-force">Allow for ${e}</p>`}
function Mw({hits:t}){return t?i`<div class="hits" data-test="hits">
    <b>${t.count} hits</b>, ${f(T(t.angle_each_deg))} each. Move the gauge
    ${f(w(t.pitch_mm,{digits:2}))} each time:
    ${t.gauge_x_mm.map(e=>w(e).text).join(" · ")}
  </div>`:d}function Vh(t,e){if(!e.die)return d;let n=ba(t,e);return i`<dl class="step-tools" data-test="step-tools">
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
        <dd><b>${f(T(e.included_angle_deg))}</b> ${e.direction}</dd>
      </div>
    </dl>
    ${Xn(e)}`}var ka=$(()=>{_();Mt();L();re();q();$a();Qn();Pi();xn();wa()});function Gh(t,e,{name:n,lines:s,acts:o},a){let{stops:r,watch:l}=ya(t,e),c=l.filter(m=>jt(m)!=="note"),h=l.length>
Ow,p=h?c:l,u=e.number===t.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-step"
    data-code=${t.code}
    data-step=${e.number}
    data-revision=${t.revision}>
    <header class="step-top">
      ${xa(n,o)}
      <p class="bench-card" data-test="bench-card">${t.title||t.display_code}</p>
      ${Ci(t,e)}
    </header>
    ${s} ${r.length?i`<div class="step-stop">${wt(r)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${ha(e,t.part.flats_mm.length)}${ce(e)}</div>
      <section class="step-set" aria-label="What to set">${va(t,e)}</section>
      <section class="step-picture" aria-label="Drawing">${a}</section>
      <section class="step-watch ${h?"many":""}" aria-label="What to watch">
        ${p.length?wt(p):d}${da(t.plan,e)}
      </section>
      <section class="step-with" aria-label="Tools">${rs(Aw(t,e),0)}</section>
    </div>
    ${zh({back:e.number>1,label:u?"Done":"Next",more:u?"":`step ${e.number+1}`},o)}
  </article>`}function qh(t,{name:e,lines:n,acts:s}){let o=t.plan.steps.length;return i`<article
    class="step bench-step"
    data-test="bench-done"
    data-code=${t.code}
    data-step=${o+1}>
    <header class="step-top">
      ${xa(e,s)}
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
    ${zh({back:!0,label:"Next piece",more:"step 1"},s)}
  </article>`}function zh({back:t,label:e,more:n},s){return i`<nav class="step-nav" aria-label="Steps">
    <button type="button" class="button" data-test="back" ?disabled=${!t} @click=${s.back}>Back</button>
    <button type="button" class="button next" data-test="next" @click=${s.next}>
      ${e}${n?i` <small>${n}</small>`:d}
    </button>
  </nav>`}var Ow,Aw,xa,Ri=$(()=>{_();De();xi();q();ss();He();xn();ve();ka();Ow=3;Aw=(t,e)=>t.plan.tools.filter(
n=>n.steps.includes(e.number)).map(n=>({...n,steps:[]}));xa=(t,e)=>i`<button
    type="button"
    class="button bench-name"
    data-test="bench-name"
    aria-label="${we(t)}, this display. Choose another"
    @click=${e.choose}>
    ${we(t)}
  </button>`});function Kh({names:t,silent:e,typed:n,wrong:s,here:o},a){return i`<div class="bench-choose" data-test="bench-choose">
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
                  ${we(r)}
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
            Stay at ${wn(o)}
          </button>`:d}
  </div>`}function Xh({answers:t,refused:e},n,s,o){return i`${t===!1?i`<p class="bench-line" role="status" data-test="alone">
          ${n?i`<b>The shop does not answer: stepping here only.</b> It is sent when the shop is back.`:i`<b>The shop does not answer.</b> It is asked again by itself.`}
        </p>`:d}
  ${e?i`<p class="bench-line" role="status" data-test="refused">
          <b>The shop did not take that step.</b> ${e}
        </p>`:d}
  ${s?i`<p class="bench-line" role="status" data-test="newer">
          This card is at revision ${s} now. It comes with the next step.
          <button type="button" class="button" data-test="show-newer" @click=${o}>Show it now</button>
        </p>`:d}`}var Yh,Jh,Zh,Ii,Qh=$(()=>{_();V();De();it();Ri();J();Yh=t=>Ii(t,"bench-idle",we(t.name),i`<p>Open a card on a phone and choose this bench.</p>`),
Jh=(t,e,n)=>Ii(n,"bench-no-card",I(t),e instanceof S?i`<p>${e.message}</p>`:i`<p>
          This card was never on this display, and the shop does not answer. It comes by itself when the shop
          is back.
        </p>`),Zh=(t,e,n)=>Ii(n,"bench-no-step",`There is no step ${e}`,i`<p>
      ${t.title||t.display_code} has ${t.plan.steps.length} now. Choose the step on the phone.
    </p>`),Ii=({name:t,lines:e,acts:n},s,o,a)=>i`<article class="step bench-step" data-test=${s}>
    <header class="step-top">${xa(t,n)}</header>
    ${e}
    <div class="bench-says">
      <h1>${o}</h1>
      ${a}
    </div>
  </article>`});var np={};Q(np,{show:()=>Nw});function Nw(t){nh(t.signal);let e=wi();e?ep(t,e):tp(t,"")}function tp(t,e){t.title(
"Bench screen");let n=new AbortController,s={names:null,silent:!1,typed:"",wrong:"",here:e},o;t.signal.addEventListener(
"abort",()=>n.abort(),{signal:n.signal}),n.signal.addEventListener("abort",()=>clearTimeout(o));let a=()=>!n.signal.
aborted&&t.render(Kh(s,c)),r=p=>{n.abort();let u=wi();ep(t,u?.name===p?u:{name:p,code:null,step:0,etag:null})},
c={take:r,make:async()=>{let p=s.typed.trim();if(s.names?.includes(p))return r(p);try{r((await rh(p||" ")).name)}catch(u){
s.wrong=u instanceof S?u.errors.name?.[0]??u.message:String(u.message),a()}},type:p=>Object.assign(s,{typed:p})},
h=async()=>{try{Object.assign(s,{names:(await bn(n.signal)).map(({name:p})=>p),silent:!1})}catch{s.silent=!0}n.
signal.aborted||(a(),t.ready(),o=setTimeout(h,Lw))};a(),h()}function ep(t,e){let{name:n}=e,s=new AbortController,
{signal:o}=s;t.signal.addEventListener("abort",()=>s.abort(),{signal:o});let a=new AbortController,r={code:e.code,
step:e.step},l=null,c=null,h=0,p=Xs(),u=ia(n,e.etag,{keepMs:1/0,heard:(v,A)=>{e={...e,etag:A},b({code:v.code,step:v.
step},!1)},sent:(v,A,Z)=>m({etag:A,unsent:Z}),changed:v=>v.gone?g(""):C()},o);function m(v){e={...e,...r,...v},
yi(e)}function g(v){s.abort(),v||yi(null),tp(t,v)}function b(v,A){let Z=v.code!==r.code||v.step!==r.step;v.code!==
r.code&&(l=null),Z&&(p=Xs()),r=v,m({unsent:A}),A&&u.move(v),Z||!l&&v.code?y():C()}async function y(){a.abort(),
a=new AbortController;let v=a.signal;if(h=0,c=null,C(),!!r.code)try{await _t(r.code,A=>{v.aborted||(l=A,h=0,C())},
v)}catch(A){if(v.aborted||o.aborted)return;c=A,C()}}let W={next:()=>{if(!l)return;let v=l.plan.steps.length;b(
{code:l.code,step:r.step>v?1:r.step+1},!0)},back:()=>l&&r.step>1&&b({code:l.code,step:r.step-1},!0),clear:()=>b(
{code:null,step:0},!0),choose:()=>g(n),newer:()=>y()};function C(){if(o.aborted)return;let v=Xh(u.standing(),!!l,
h,W.newer);t.title(l?`${l.title||l.code}, ${n}`:n),t.render(E({name:n,lines:v,acts:W})),(l||c||!r.code)&&t.ready()}
function E(v){if(!r.code)return Yh(v);if(!l)return c?Jh(r.code,c,v):Tt(`Opening ${I(r.code)}…`);let A=l.plan.
steps,Z=A[r.step-1];return Z?Gh(l,Z,v,_a(l,Z,p,C,a.signal)):r.step===A.length+1?qh(l,v):Zh(l,r.step,v)}gh(W,o),
gt(C,o),document.addEventListener("sync",async v=>{if(!l)return c&&v.detail.reached?y():void 0;let A=await Kt(
l.code).catch(()=>{});!A||A.code!==l?.code||A.revision===l.revision||h===A.revision||(h=A.revision,C())},{signal:o}),
o.addEventListener("abort",()=>a.abort()),m({}),e.unsent&&u.move(r),y()}var Lw,sp=$(()=>{V();sh();De();_i();Mt();
it();$h();tt();vt();Qh();Ri();$a();Bt();ka();Lw=3e3});function X(t,e){let n=document.getElementById("notices"),s=()=>Me(i``,n);Me(i`<div class="notice" data-test="notice">
      <span>${t}</span>
      <button type="button" @click=${()=>{s(),e?.act()}}>${e?.label??"Close"}</button>
    </div>`,n),clearTimeout(op),e||(op=setTimeout(s,8e3))}var op,te=$(()=>{_()});function ap(t){try{let e=JSON.parse(localStorage.getItem(Wi(t))??"null");return e&&Array.isArray(e.form?.flats)&&
Array.isArray(e.form?.bends)?e:null}catch{return null}}function Di(t,e){try{return localStorage.setItem(Wi(t),
JSON.stringify({...e,kept_at:new Date().toISOString()})),!0}catch{return!1}}function Fi(t){try{localStorage.removeItem(
Wi(t))}catch{}}var Wi,rp=$(()=>{Wi=t=>`flangebook.part.${t||"new"}`});var Sa,he,Ta,Ma,Qs=$(()=>{ae();Zn();L();Sa=[["bend","Bend"],["closed_hem","Closed hem"],["open_hem","Open hem"]],
he=()=>({angle:"90",direction:"up",radius:"",kind:"bend",gap:""}),Ta=t=>({angle:String(t.included_angle_deg),direction:t.
direction,radius:K(t.inside_radius_mm),kind:t.kind??"bend",gap:t.kind==="open_hem"?K(t.hem_gap_mm):"",...Gs(t)}),
Ma=(t,e)=>({included_angle_deg:t.kind==="bend"?Pt(t.angle):0,direction:t.direction,kind:t.kind,...t.radius.trim()&&
t.kind==="bend"?{inside_radius_mm:st(t.radius,e)}:{},...t.kind==="open_hem"?{hem_gap_mm:st(t.gap,e)}:{},...ea(
t)})});function Oa(t="tray"){let e=()=>t==="lips-in"?{flats:["",""],bends:[he(),he()]}:t==="lips-out"?{flats:["",""],
bends:[he(),{...he(),direction:"down"}]}:{flats:[""],bends:[he()]};return{length:"",width:"",there:t==="channe\
l"?["left","right"]:[...Sn],alike:!0,sides:{left:e(),right:e(),front:e(),back:e()},relief:"round",reliefSize:"",
corner:"closed",gap:"",firstPair:"left-right"}}function lp(t,e){let n=Oa(e);for(let s of Sn){let o=t.sides[t.alike?
t.there[0]??"left":s].flats;n.sides[s].flats=n.sides[s].flats.map((a,r)=>o[r]??a)}return{...t,there:n.there,sides:n.
sides}}function cp({there:t,sides:e,alike:n}){let s=(n?t.slice(0,1):t).map(r=>e[r]),o=({bends:r})=>r.length===
1&&r[0].kind==="bend"&&r[0].direction==="up",a=r=>({bends:l})=>l.length===2&&l[1].kind==="bend"&&l[0].direction===
"up"&&l[1].direction===r;return t.length===2&&t.includes("left")&&t.includes("right")&&s.every(o)?"channel":t.
length!==4?"":s.every(o)?"tray":s.every(a("up"))?"lips-in":s.every(a("down"))?"lips-out":""}function dp(t){let e=Sn.
filter(o=>t.sides[o]),n=e.map(o=>JSON.stringify(t.sides[o])),s=Oa().sides;for(let o of Sn){let a=t.sides[o]??t.
sides[e[0]];s[o]={flats:a.flats_mm.map(K),bends:a.bends.map(Ta)}}return{length:K(t.length_mm),width:K(t.width_mm),
there:e,alike:n.every(o=>o===n[0]),sides:s,relief:t.relief,reliefSize:K(t.relief_mm),corner:t.corner,gap:K(t.gap_mm),
firstPair:t.first_pair??"left-right"}}function mp(t,e){let n=s=>t.there.includes(s)?pp(t,s).flats.map((o,a)=>`${s}\
 ${cs(a)}`):[];return ji.filter(s=>s.some(o=>t.there.includes(o))).flatMap(([s,o])=>[...n(s).reverse(),...e(s,
o),...n(o)])}function fp(t,e){let n=o=>st(o,e),s=t.there.map(o=>{let a=pp(t,o);return[o,{flats_mm:a.flats.map(
n),bends:a.bends.map(r=>Ma(r,e))}]});return{length_mm:n(t.length),width_mm:n(t.width),sides:Object.fromEntries(
s),relief:t.relief,corner:t.corner,...t.firstPair==="front-back"?{first_pair:t.firstPair}:{},...t.reliefSize.trim()&&
t.relief!=="none"?{relief_mm:n(t.reliefSize)}:{},...t.gap.trim()&&t.corner==="closed"?{gap_mm:n(t.gap)}:{}}}function is(t){
return[["box.length_mm","length of the base",t.length],["box.width_mm","width of the base",t.width],...Hi(t).flatMap(
e=>Ew(t,e))]}function Ew({sides:t,alike:e},n){let s=e?"":`${n} `;return t[n].flats.flatMap((o,a)=>{let{kind:r,
angle:l,gap:c}=t[n].bends[a],h=`${s}${cs(a)}`;return[[ls(n,a),h,o],...r==="bend"?[[Aa(n,a),`angle of the ${h}`,
l]]:[],...r==="open_hem"?[[`${Ue(n,a)}.hem_gap_mm`,`gap of the ${h}`,c]]:[]]})}function gp(t,e){if(!t.alike)return e;
let n=t.there[0];return Object.fromEntries(Object.entries(e).map(([s,o])=>[s.replace(/^box\.sides\.(left|right|front|back)\./,
`box.sides.${n}.`),o]))}function $p(t){let[,e,n,s,o,a]=t.split(".");if(e!=="sides")return{length_mm:"Length of\
 the base",width_mm:"Width of the base",relief_mm:"Size of the relief",gap_mm:"Gap at the corner",relief:"Reli\
ef",corner:"Corner",first_pair:"Bent first"}[e]??"Box";if(!s)return n?`${n} side`:"Sides";let r={inside_radius_mm:"\
radius",hem_gap_mm:"gap"}[a]??"angle";return`${n} ${cs(Number(o??0))}${s==="bends"?`, ${r}`:""}`}function bp(t,e,n,s){
let o=t.sides[e];return La(t,e,{...o,flats:o.flats.with(n,s)})}function ds(t,e,n,s){let o=t.sides[e];return La(
t,e,{...o,bends:o.bends.with(n,{...o.bends[n],...s})})}function wp(t,e){let{flats:n,bends:s}=t.sides[e],o=s.map(
a=>({...a,kind:"bend"}));return La(t,e,{flats:[...n,""],bends:[...o,he()]})}function yp(t,e){let{flats:n,bends:s}=t.
sides[e];return La(t,e,{flats:n.slice(0,-1),bends:s.slice(0,-1)})}function _p(t,e){let n=Sn.filter(o=>o===e!==
t.there.includes(o));if(!n.length)return t;let s=t.sides[t.there[0]];return{...t,there:n,sides:t.alike?{...t.sides,
[n[0]]:s}:t.sides}}function vp(t,e){let n=t.sides[t.there[0]];return{...t,alike:e,sides:e?t.sides:{left:n,right:n,
front:n,back:n}}}var ji,Sn,ip,hp,pp,Tn,up,Hi,ls,Ue,Aa,cs,La,Mn=$(()=>{Qs();L();ji=[["left","right"],["front","\
back"]],Sn=ji.flat(),ip=6;hp=({there:t})=>ji.every(e=>e.some(n=>t.includes(n))),pp=(t,e)=>t.sides[t.alike?t.there[0]:
e],Tn=t=>mp(t,()=>[]),up=t=>mp(t,(e,n)=>[`base, ${e} to ${n}`]);Hi=({there:t,alike:e})=>e?t.slice(0,1):t;ls=(t,e)=>`\
box.sides.${t}.flats_mm.${e}`,Ue=(t,e)=>`box.sides.${t}.bends.${e}`,Aa=(t,e)=>`${Ue(t,e)}.included_angle_deg`,
cs=t=>t===0?"wall":t===1?"lip":`flat ${t+1}`;La=(t,e,n)=>({...t,sides:{...t.sides,[e]:n}})});function Vi(t){if(!t)return to();let{first:e,last:n,margin_mm:s}=t;return{first:e?String(e):"",last:n?String(n):
"",no_turn_over:!!t.no_turn_over,no_turn_end:!!t.no_turn_end,one_set_up:!!t.one_set_up,critical_flats:[...t.critical_flats??
[]],margin:s===void 0||s===Ui?"":K(s)}}function Gi(t,e){let{first:n,last:s,no_turn_over:o,no_turn_end:a,one_set_up:r,
critical_flats:l,margin:c}=t??to(),h={...n?{first:Number(n)}:{},...s?{last:Number(s)}:{},...o?{no_turn_over:o}:
{},...a?{no_turn_end:a}:{},...r?{one_set_up:r}:{},...l.length?{critical_flats:l}:{},...c.trim()?{margin_mm:st(
c,e)}:{}};return Object.keys(h).length?{wishes:h}:{}}function qi(t,e){if(!t)return{};let n=e?-1:1,s=a=>!a||Number(
a)===e?"":Number(a)>e?String(Number(a)+n):a,o=t.critical_flats.filter(a=>!e||a!==e+1).map(a=>a>e?a+n:a);return{
wishes:{...t,first:s(t.first),last:s(t.last),critical_flats:o}}}function Na(t){let{first:e,last:n,no_turn_over:s,
no_turn_end:o,one_set_up:a,critical_flats:r,margin:l}=t??to();return[e&&`bend ${e} first`,n&&`bend ${n} last`,
s&&"never turned over",o&&"never turned end for end",a&&"one set-up",r.length&&`flat${r.length>1?"s":""} ${r.join(
", ")} gauged`,l.trim()&&`${l.trim()} clear`].filter(Boolean).join(", ")}var Ui,to,kp,Ea=$(()=>{L();Ui=2,to=()=>({
first:"",last:"",no_turn_over:!1,no_turn_end:!1,one_set_up:!1,critical_flats:[],margin:""});kp=t=>({...t,first:"",
last:"",critical_flats:[]})});function Ki(t){return{unit:B(),title:"",note:"",metal:t,thickness:"",length:"",flats:["",""],bends:[he()],dimension:"\
din6935",grain:"",holes:[],order:null,box:null}}function Ba({aside:t,...e},n){let s=xp({...e,box:n?e.box??t??Oa():
null});return n?s:{...s,...e.box?{aside:e.box}:{}}}function Sp(t,e){return t.box&&e&&String(Tn(t.box))===String(
Tn(e))&&t.box.firstPair===e.firstPair?{...t,box:e}:xp({...t,box:e})}function eo(t,e){return t.box?{...Ki(t.metal),
title:t.title??"",note:e,thickness:K(t.thickness_mm),dimension:t.dimension??"din6935",order:t.order??null,wishes:Vi(
t.wishes),tools:Gs(t.tools),box:dp(t.box)}:{unit:B(),title:t.title??"",note:e,metal:t.metal,thickness:K(t.thickness_mm),
length:K(t.bend_length_mm),flats:t.flats_mm.map(K),bends:t.bends.map(Ta),dimension:t.dimension??"din6935",grain:t.
grain??"",order:t.order??null,wishes:Vi(t.wishes),tools:Gs(t.tools),holes:(t.holes??[]).map(n=>({flat:String(n.
flat),position:K(n.position_mm),diameter:K(n.diameter_mm)}))}}function hs(t){let e=n=>st(n,t.unit);return t.box?
{title:t.title.trim(),metal:t.metal,thickness_mm:e(t.thickness),dimension:t.dimension,box:fp(t.box,t.unit),...t.
order?{order:t.order}:{},...Gi(t.wishes,t.unit),...hi(t.tools)}:{title:t.title.trim(),metal:t.metal,thickness_mm:e(
t.thickness),bend_length_mm:e(t.length),flats_mm:t.flats.map(e),bends:t.bends.map(n=>Ma(n,t.unit)),dimension:t.
dimension,...t.grain?{grain:t.grain}:{},...t.order?{order:t.order}:{},...Gi(t.wishes,t.unit),...hi(t.tools),...t.
holes.length?{holes:t.holes.map(n=>({flat:Pt(n.flat),position_mm:e(n.position),diameter_mm:e(n.diameter)}))}:{}}}
function Ca(t){let e=[["metal","metal",t.metal],["thickness_mm","thickness",t.thickness]];return(t.box?[...e,...is(
t.box)]:[...e,["bend_length_mm","length",t.length],...t.flats.map((s,o)=>[`flats_mm.${o}`,`flat ${o+1}`,s]),...t.
bends.flatMap((s,o)=>Bw(s,o)),...t.holes.flatMap((s,o)=>[[`holes.${o}.flat`,`hole ${o+1}: flat`,s.flat],[`hole\
s.${o}.position_mm`,`hole ${o+1}: place`,s.position],[`holes.${o}.diameter_mm`,`hole ${o+1}: size`,s.diameter]])]).
filter(([,,s])=>s.trim()==="").map(([s,o])=>[s,o])}function Bw({kind:t,angle:e,gap:n},s){return t==="bend"?[[`\
bends.${s}.included_angle_deg`,`angle of bend ${s+1}`,e]]:t==="open_hem"?[[`bends.${s}.hem_gap_mm`,`gap of hem\
 ${s+1}`,n]]:[]}function Tp(t,e,n){return{...t,flats:t.flats.with(e,n)}}function On(t,e,n){return{...t,bends:t.
bends.with(e,{...t.bends[e],...n})}}function Ji(t,e){let n=t.bends.at(e==="left"?0:-1),s={...he(),direction:n?.
direction??"up"},o=e==="left"?t.bends:t.bends.map((r,l)=>l>0&&l===t.bends.length-1?{...r,kind:"bend"}:r);if(e===
"right")return{...t,bends:[...o,s],flats:[...t.flats,""],order:null};let a=t.holes.map(r=>({...r,flat:Op(r.flat,
1,1)}));return{...t,bends:[s,...o],flats:["",...t.flats],order:null,holes:a,...qi(t.wishes,0)}}function Mp(t,e){
let n=e+2,s=t.holes.filter(o=>o.flat.trim()!==String(n)).map(o=>({...o,flat:Op(o.flat,n,-1)}));return{...t,bends:t.
bends.toSpliced(e,1),flats:t.flats.toSpliced(e+1,1),order:null,holes:s,...qi(t.wishes,e+1)}}function Op(t,e,n){
let s=Number(t);return Number.isInteger(s)&&s>=e?String(s+n):t}function Pa(t){let e=t.split(/[^\d]+/).filter(Boolean).
map(Number);return e.length?e:null}function Ap(t,e){return e===0||e===t.bends.length-1}var zi,xp,Yi,Ve=$(()=>{
Qs();Mn();ae();Zn();L();Ea();zi=40;xp=t=>({...t,order:null,...t.wishes?{wishes:kp(t.wishes)}:{}});Yi=t=>JSON.stringify(
{...hs(t),title:""})});async function Zi(t,e){try{let{body:n}=await M("POST","/cards",{body:{...Np(t),code:e},timeout:Lp});return{saved:await Cp(
n)}}catch(n){if(n instanceof S&&n.status===409)return{taken:e};throw Bp(n)}}async function Ep(t,e){let n={...Np(
t),reason:t.reason??""},s=Cw(e,n);try{let{after:o,etag:a}=s,{body:r,at:l}=await M("PUT",`/cards/${e.code}`,{body:{
...n,id:s.id,...o?{after:o}:{}},etag:o?"*":a,timeout:Lp});return await Kl().then(c=>Ts({...s,number:c},l)).catch(
()=>{}),{saved:await Cp(r)}}catch(o){if(o instanceof S&&o.status===412)return{stale:await ye(e.code)};throw Bp(
o)}}function Cw(t,e){let n=JSON.stringify(e);t.saving?.wanted!==n&&(t.saving={id:Wt(),wanted:n});let{code:s,etag:o,
revision:a,revision_id:r}=t;return{id:t.saving.id,number:0,kind:"edit",code:s,body:e,queued_at:new Date().toISOString(),
after:r,etag:o,revision:a}}function Bp(t){return t instanceof S&&(t.errors=Object.fromEntries(Object.entries(t.
errors).map(([e,n])=>[e.replace(/^part\./,""),n]))),t}async function Cp(t){return ne(t).catch(()=>t)}var Lp,Np,
Pp=$(()=>{V();Mt();Et();Ve();tt();vt();Lp=6e4,Np=t=>({part:hs(t),note:t.note,...N().name?{by:N().name}:{}})});function Wp(t,{pixels:e=Vn(),tallest:n=e*.45,test:s="blank"}={}){let o=F(t.width_mm),a=e-Ft(o,z)-z*2,r=a/t.length_mm,
l=t.width_mm*r>n,c=l?n:Math.max(t.width_mm*r,3),h=Rp(t.bend_lines.map(b=>[b.at_mm*r,z*1.8+Ft(Xi(b),z)]),a),p=Rp(
t.bend_lines.map(b=>[b.at_mm*r,Ft(F(b.at_mm),z)]),a),u=Ip(h)*no+z*.4,m=Ip(p)*no+z*.4,g=u+c;return i`<svg
      class="drawing blank"
      data-test=${s}
      role="img"
      aria-label=${Pw(t)}
      viewBox="-8 -4 ${e+8} ${g+m+no*1.4}">
      ${l?Iw(a,u,g):k`<rect class="sheet" x="0" y=${u} width=${a} height=${c}/>`}
      ${t.bend_lines.map((b,y)=>Rw(b,b.at_mm*r,h[y],p[y],u,g))}
      ${Ww(a,g+m+z*.7,F(t.length_mm))}
      ${Dw(a+z,u,g,o)}
    </svg>
    ${l?i`<p class="hint">Width ${f({text:o,unit:""})} is drawn short at the break.</p>`:d}`}function Xi(t){let e=t.
included_angle_deg?f(T(t.included_angle_deg)).replace(".0°","°"):"hem";return`${t.direction} ${e}`}function Pw(t){
let e=t.bend_lines.map(n=>`bend ${n.bend} ${Xi(n)} at ${F(n.at_mm)}`);return`Blank ${F(t.length_mm)} by ${F(t.
width_mm)}. ${e.join("; ")}.`}function Rp(t,e){let n=[];return t.map(([s,o])=>{let a=Math.min(Math.max(s,o/2),
Math.max(e-o/2,o/2)),r=n.findIndex(l=>l<=a-o/2);return r<0&&(r=n.length),n[r]=a+o/2+4,{at:a,width:o,row:r}})}function Rw(t,e,n,s,o,a){
let r=o-z*.4-no*(n.row+.5),l=a+z*.4+no*(s.row+.5),c=n.at-n.width/2;return k`<path class="fold ${t.direction}" d="M${e} ${o}V${a}"/>
    <path class="leader" d="M${e} ${o}V${r+z*.8}M${e} ${a}V${l-z*.8}"/>
    <rect class="ground" x=${c} y=${r-z*.75} width=${n.width} height=${z*1.5}/>
    <circle class="badge" cx=${c+z*.75} cy=${r} r=${z*.68}/>
    <text class="badge-number" x=${c+z*.75} y=${r} font-size=${z*.95} text-anchor="middle"
      dominant-baseline="central">${t.bend}</text>
    <text x=${c+z*1.7} y=${r} font-size=${z} dominant-baseline="central">${Xi(t)}</text>
    <rect class="ground" x=${s.at-s.width/2} y=${l-z*.7} width=${s.width}
      height=${z*1.4}/>
    <text x=${s.at} y=${l} font-size=${z} text-anchor="middle"
      dominant-baseline="central">${F(t.at_mm)}</text>`}function Iw(t,e,n){let s=(e+n)/2,o=`L${t*.52} ${s+3}L${t*
.54} ${s-14}L${t*.58} ${s+8}L${t*.6} ${s-9}`,a=`L${t*.6} ${s-1}L${t*.58} ${s+16}L${t*.54} ${s-6}L${t*.52} ${s+
11}`;return k`<path class="sheet" d="M0 ${e}V${s+3}${o}L${t} ${s-9}V${e}Z"/>
    <path class="sheet" d="M0 ${n}V${s+11}L${t*.52} ${s+11}${a.split("L").slice(1).reverse().map(r=>`L${r}`).join(
"")}L${t} ${s-1}V${n}Z"/>`}function Ww(t,e,n){let s=Ft(n,z);return k`<path class="dimension"
      d="M0 ${e}H${t}M-4 ${e+4}L4 ${e-4}M${t-4} ${e+4}L${t+4} ${e-4}"/>
    <rect class="ground" x=${t/2-s/2} y=${e-z*.7} width=${s} height=${z*1.4}/>
    <text x=${t/2} y=${e} font-size=${z} text-anchor="middle"
      dominant-baseline="central">${n}</text>`}function Dw(t,e,n,s){let o=a=>`M${t-4} ${a+4}L${t+4} ${a-4}`;return k`<path class="dimension" d="M${t} ${e}V${n}${o(
e)}${o(n)}"/>
    <text x=${t+z*.6} y=${(e+n)/2} font-size=${z}
      dominant-baseline="central">${s}</text>`}var z,no,Ip,Dp=$(()=>{_();L();Io();Jt();z=18,no=z*1.5;Ip=t=>Math.
max(0,...t.map(e=>e.row+1))});function zt(t,{mark:e=0,...n}={}){if(!It(t))return zc(t,{mark:e,...n});let s=t.blank.lines.find(o=>o.bend===e)?.
side??"";return ca(t.folded,{...n,mark:s})}function ps(t,e={}){return t.outline?bh(t,e):Wp(t,e)}var Ge=$(()=>{
es();Dp();Jt()});function us({how:t,differences:e},n,{saveMine:s,takeTheirs:o}){return i`<section class="panel clash" data-test="clash" role="alert">
    <h2>${x("caution")} Somebody else saved meanwhile</h2>
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
  </section>`}function Ra(t,e,n){return n.filter(({name:s})=>(t[s]??"")!==(e[s]??"")).map(({name:s,label:o})=>({
label:o,theirs:e[s]??"",mine:t[s]??""}))}var ms=$(()=>{_();q()});function jp(t,e,{saveMine:n,takeTheirs:s,saveAsNew:o}){let a=eo(t.part,t.note),r=[...new Set([...Qi(e),...Qi(a)].
map(c=>c.label))].map(c=>({name:c,label:c})),l=Ra(Fp(e),Fp(a),r);return i`<section class="panel clash" data-test="clash" role="alert" tabindex="-1">
    <h2>${x("caution")} Somebody else saved this card meanwhile</h2>
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
        ${zt(t.plan,{pixels:330,tallest:260,test:"theirs-section"})}
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
  </section>`}function Qi(t){return[{label:"Title",value:t.title},{label:"Note",value:t.note},{label:"Metal",value:t.
metal},{label:"Thickness",value:t.thickness},{label:"Length",value:t.length},{label:"Measured",value:t.dimension},
{label:"Grain",value:t.grain},{label:"Order",value:t.order?.join(", ")??""},{label:"Order keeps to",value:Na(t.
wishes)},{label:"Tools",value:gn(t.tools)},...t.box?[...is(t.box).map(([,e,n])=>({label:`${e[0].toUpperCase()}${e.
slice(1)}`,value:n})),{label:"Corners",value:`${t.box.corner}, relief ${t.box.relief} ${t.box.reliefSize} ${t.
box.gap}`.trim()},{label:"Sides",value:t.box.there.join(", ")}]:[],...(t.box?[]:t.flats).map((e,n)=>({label:`F\
lat ${n+1}`,value:e})),...(t.box?[]:t.bends).map((e,n)=>({label:`Bend ${n+1}`,value:[e.kind==="bend"?`${e.angle}\
°`:e.kind.replace("_"," "),e.direction,e.radius&&`radius ${e.radius}`,e.gap&&`gap ${e.gap}`,gn(e)].filter(Boolean).
join(", ")})),...t.holes.map((e,n)=>({label:`Hole ${n+1}`,value:`flat ${e.flat}, at ${e.position}, size ${e.diameter}`}))]}
var Fp,Hp=$(()=>{_();Ge();Mn();Ve();Zn();Ea();q();ms();Fp=t=>Object.fromEntries(Qi(t).map(({label:e,value:n})=>[
e,n]))});function Vp(t,e,n){let{box:s,unit:o}=t,a=gp(s,e),r=(l,c)=>n(Sp(t,l),c);return i`${Vw(s,r)}
    <h2>Base <small>${o}</small></h2>
    <div class="base-grid">
      ${Gw(s,r)}
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
        @change=${l=>r(vp(s,l.target.checked))} /><span>All sides alike</span></label
    >
    ${Hi(s).map(l=>qw(s,l,a,r))}
    <h2>Corners</h2>
    ${Jw(t,a,r)}
    ${hp(s)?G({name:"box.first_pair",label:"Bent first; the others go between them",value:s.firstPair??Up[0][0],
options:Up,change:l=>r({...s,firstPair:l==="front-back"?l:"left-right"})}):d}`}function Vw(t,e){let n=cp(t);return i`<div class="box-kinds" role="group" aria-label="What it is like" data-test="box-kinds">
    ${Fw.map(([s,o,a])=>i`<button
          type="button"
          class="box-kind"
          aria-pressed=${String(n===s)}
          data-test="kind-${s}"
          @click=${()=>e(lp(t,s))}>
          <svg viewBox="0 0 96 56" aria-hidden="true"><path class="sheet-line" d=${a} /></svg
          ><span>${o}</span>
        </button>`)}
  </div>`}function Gw(t,e){let n=s=>{let o=t.there.includes(s),a=o&&t.there.length===1;return i`<button
      type="button"
      class="base-side ${s}"
      aria-pressed=${String(o)}
      ?disabled=${a}
      data-test="side-${s}"
      @click=${()=>e(_p(t,s))}>
      ${s}<small>${o?"stands":"plain"}</small>
    </button>`};return i`<div class="base-sketch" role="group" aria-label="Which sides stand">
    ${Sn.map(n)}<span class="base-middle" aria-hidden="true">inside<br />up</span>
  </div>`}function qw(t,e,n,s){let{flats:o,bends:a}=t.sides[e],r=t.alike?"Each side":`${e[0].toUpperCase()}${e.
slice(1)}`;return i`<fieldset class="box-side" data-test="chain-${e}">
    <legend>${r}</legend>
    ${Yw(a)}
    <ol class="box-chain">
      ${o.map((l,c)=>i`<li>${zw(t,e,c,n,s)}</li>`)}
    </ol>
    <div class="buttons">
      <button
        type="button"
        class="button"
        data-test="add-flat-${e}"
        ?disabled=${o.length>=ip}
        @click=${()=>s(wp(t,e),{focus:ls(e,o.length)})}>
        + Lip beyond
      </button>
      ${o.length>1?i`<button
              type="button"
              class="button"
              data-test="remove-flat-${e}"
              @click=${()=>s(yp(t,e),{focus:ls(e,o.length-2),undo:"The outermost flat is out."})}>
              Remove the outermost
            </button>`:d}
    </div>
  </fieldset>`}function zw(t,e,n,s,o){let{flats:a,bends:r}=t.sides[e],[l,c]=[r[n],Gp(cs(n))],h=`${Ue(e,n)}.hem\
_gap_mm`;return i`<div class="bend-main">
      ${O({next:!0,name:ls(e,n),label:c,value:a[n],wrong:[...R(s,ls(e,n)),...R(s,Ue(e,n))],change:p=>o(bp(t,e,
n,p))})}
      ${l.kind==="bend"?O({next:!0,name:Aa(e,n),label:"Bend",unit:"°",keys:"decimal",value:l.angle,wrong:R(s,
Aa(e,n)),change:p=>o(ds(t,e,n,{angle:p}))}):i`<p class="hem-word">${l.kind==="closed_hem"?"Closed hem":"Open h\
em"}</p>`}
    </div>
    ${l.kind==="open_hem"?O({next:!0,name:h,label:"Clear gap inside",value:l.gap,wrong:R(s,h),change:p=>o(ds(t,
e,n,{gap:p}))}):d}
    ${G({name:`${Ue(e,n)}.direction`,label:`${c} turns`,value:l.direction,options:n===0?[["up","↑ up"],["dow\
n","↓ down"]]:Uw,change:p=>o(ds(t,e,n,{direction:p==="down"?"down":"up"}))})}
    ${Kw(t,e,n,s,o)}`}function Kw(t,e,n,s,o){let{flats:a,bends:r}=t.sides[e],l=`${Ue(e,n)}.inside_radius_mm`,c=n===
a.length-1;return!c&&r[n].kind!=="bend"?d:i`<details class="bend-more">
    <summary>
      <span class="unseen">${Gp(cs(n))}: </span
      >${r[n].radius?`Radius ${r[n].radius}`:"Radius"}${c?", kind":d}
    </summary>
    ${r[n].kind==="bend"?O({next:!0,name:l,label:"Inside radius wanted",hint:"Empty: what the tools give.",value:r[n].
radius,wrong:R(s,l),change:h=>o(ds(t,e,n,{radius:h}))}):d}
    ${c?Y({name:`${Ue(e,n)}.kind`,label:"Kind",value:r[n].kind,options:Sa,change:h=>o(ds(t,e,n,{kind:h}))}):d}
  </details>`}function Yw(t){let e=[34,22,16,12,10,8],n=[[8,56],[56,56]],s=0;for(let[o,{angle:a,direction:r,kind:l}]of t.
entries()){let c=(180-(l==="bend"?Number(a)||90:12))*Math.PI/180;s+=r==="up"?c:-c;let[h,p]=n[n.length-1];n.push(
[h+e[o]*Math.cos(s),p-e[o]*Math.sin(s)])}return i`<svg class="chain-sketch" viewBox="0 0 110 70" aria-hidden="true">
    <path class="sheet-line" d="M${n.map(o=>o.join(" ")).join("L")}" />
    <text x="28" y="46" text-anchor="middle">base</text>
    ${n.slice(2).map(([o,a],r)=>k`<circle class="badge" cx=${(o+n[r+1][0])/2} cy=${(a+n[r+1][1])/2} r="9.5"/>
          <text class="badge-number" x=${(o+n[r+1][0])/2} y=${(a+n[r+1][1])/2}
            text-anchor="middle" dominant-baseline="central">${r+1}</text>`)}
  </svg>`}function Jw({box:t,unit:e},n,s){return i`<div class="corner-grid">
      ${Xw(t)}
      <div>
        ${G({name:"box.corner",label:"Walls at the corner",value:t.corner,options:Hw,change:o=>s({...t,corner:o===
"open"?"open":"closed"})})}
        ${G({name:"box.relief",label:"Relief",value:t.relief,options:jw,change:o=>s({...t,relief:o})})}
      </div>
    </div>
    <div class="fields">
      ${t.relief==="none"?d:O({next:!0,name:"box.relief_mm",label:t.relief==="round"?"Relief, diameter":"Relie\
f, side",unit:e,hint:"Empty: by radius and thickness.",value:t.reliefSize,wrong:R(n,"box.relief_mm"),change:o=>s(
{...t,reliefSize:o})})}
      ${t.corner==="open"?d:O({next:!0,name:"box.gap_mm",label:"Gap between the walls",unit:e,hint:"Empty: by \
thickness.",value:t.gap,wrong:R(n,"box.gap_mm"),change:o=>s({...t,gap:o})})}
    </div>`}function Xw({corner:t,relief:e}){let[n,s]=t==="closed"?[18,8]:[0,0];return i`<svg class="corner-sketch" viewBox="0 0 112 92" aria-hidden="true">
    <path
      class="flat-sheet"
      d="M110 4L${50-s} 4L${50-s} 20L50 20${Zw[e]}L30 ${40-n}L4 ${40-n}L4 90L110 90Z" />
    <path class="fold" d="M40 50V90M60 30H110" />
  </svg>`}var Fw,jw,Hw,Up,Uw,Gp,Zw,qp=$(()=>{_();Qs();Mn();Ve();J();Xt();Fw=[["tray","Tray","M10 14V44H86V14"],
["lips-in","Lips in","M24 14H10V44H86V14H72"],["lips-out","Lips out","M2 14H16V44H80V14H94"],["channel","Two s\
ides","M10 14V44H86V14M18 36H30M66 36H78"]],jw=[["round","Round"],["square","Square"],["none","None"]],Hw=[["c\
losed","Closed"],["open","Open"]],Up=[["left-right","Left and right"],["front-back","Front and back"]],Uw=[["u\
p","↑ in"],["down","↓ out"]];Gp=t=>t[0].toUpperCase()+t.slice(1);Zw={none:"L50 40L30 40",square:"L58 20L58\
 48L30 48",round:"L50 31A9 9 0 1 1 41 40L30 40"}});function tl(t,e){return i`<details class="convention" data-test="convention">
    <summary>
      <span>Flats are measured: <b>${zp[t.dimension].title.toLowerCase()}</b></span>
    </summary>
    <div role="radiogroup" aria-label="How flats are measured">
      ${Object.entries(zp).map(([n,{title:s,words:o,mark:a}])=>i`<label class="convention-choice">
            <input
              type="radio"
              name="dimension"
              data-test="dimension-${n}"
              value=${n}
              .checked=${kt(t.dimension===n)}
              @change=${()=>e({...t,dimension:n})} />
            <svg viewBox="0 0 64 38" aria-hidden="true">
              <g class="sheet-line">
                ${n==="inside"?k`<path d="M17 2V12a6 6 0 0 0 6 6H60"/>`:Qw(n)}
              </g>
              <g class="measure-line">${a}</g>
            </svg>
            <span><b>${s}</b> ${o}</span>
          </label>`)}
    </div>
  </details>`}function Qw(t){return t==="din6935"?k`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/>`:k`<path d="M34 2L20 13a5 5 0 0 0 3 9H60"/><path class="thin" d="M22 9L8 22H22"/>`}
function Kp(t,e,n){let s=(o,a)=>n({...t,holes:t.holes.with(o,{...t.holes[o],...a})});return i`<details class="holes">
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
  </details>`}function el(t,e,n,s){let o=t.box?Tn(t.box):[],a=t.order??e??t.bends.map((l,c)=>c+1),r=(l,c)=>s({
...t,order:a.toSpliced(l,1).toSpliced(c,0,a[l])},{focus:`order-${a[l]}-${c<l?"earlier":"later"}`});return i`<details class="order">
    <summary>
      <span
        >Order of bends:
        <b>${t.order?`${t.order.join(", ")} (yours)`:"found by the planner"}</b></span
      >
    </summary>
    ${O({next:!0,name:"order",label:"Bend numbers, first to last",hint:"Empty: the planner chooses.",value:t.order?.
join(", ")??"",wrong:R(n,"order"),on:"change",change:l=>s({...t,order:Pa(l)})})}
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
  </details>`}function Yp(t,e,n){return Y({name:"grain",label:"Rolling direction against the bend lines",value:t.
grain,wrong:R(e,"grain"),options:[["","Not known"],["across","Bend lines across the grain"],["with","Bend line\
s along the grain"]],change:s=>n({...t,grain:s})})}var zp,Jp=$(()=>{_();Oe();Mn();Ve();J();Xt();zp={din6935:{title:"\
Outside",words:"To the corner where the outer faces meet. Sharper than 90°: to the outermost point of the bend\
 (DIN 6935).",mark:k`<path d="M14 30H58M14 26v8M58 26v8"/>`},mould_line:{title:"Outside corner, always",words:"\
To the corner where the outer faces meet, sharp bends too.",mark:k`<path d="M8 30H58M8 26v8M58 26v8"/>`},inside:{
title:"Inside",words:"From inside face to inside face.",mark:k`<path d="M20 8H58M20 4v8M58 4v8"/>`}}});var Zp,Xp=$(()=>{_();Pr();Rr();Zp=Mo(class extends In{constructor(){super(...arguments),this.key=d}render(t,e){
return this.key=t,e}update(t,[e,n]){return e!==this.key&&(Oo(t),this.key=e),n}})});function Qp(t,e,n){let s=t.bends.length>=zi;return i`<div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-left"
        ?disabled=${s}
        @click=${()=>n(Ji(t,"left"),{focus:"flats_mm.0"})}>
        + Bend at the left end
      </button>
    </div>
    <ol class="section-rows" data-test="section-rows">
      ${t.flats.map((o,a)=>i`${ey(t,a,e,n)}${a<t.bends.length?ny(t,a,e,n):d}`)}
    </ol>
    <div class="add-bend">
      <button
        type="button"
        class="button"
        data-test="add-right"
        ?disabled=${s}
        @click=${()=>n(Ji(t,"right"),{focus:`flats_mm.${t.flats.length}`})}>
        + Bend at the right end
      </button>
    </div>
    ${s?i`<p class="hint">A part has at most ${zi} bends.</p>`:d}`}function ey(t,e,n,s){let o=`flats_mm.${e}`;
return i`<li class="flat-row">
    ${O({next:!0,name:o,label:`Flat ${e+1}`,value:t.flats[e],wrong:R(n,o),change:a=>s(Tp(t,e,a))})}
  </li>`}function ny(t,e,n,s){let o=t.bends[e],a=`bends.${e}`,r=o.kind!=="bend",l=`${a}.included_angle_deg`,c=Object.
fromEntries(Object.entries(n).filter(([h])=>h===a||h===`${a}.kind`||h===`${a}.direction`));return i`<li class="bend-row ${r?
"is-hem":""}" data-bend=${e+1}>
    <span class="badge-mark" aria-hidden="true">${e+1}</span>
    <div class="bend-main">
      ${r?i`<p class="hem-word">${o.kind==="closed_hem"?"Closed hem":"Open hem"}</p>`:O({next:!0,name:l,label:`\
Bend ${e+1}`,unit:"°",keys:"decimal",value:o.angle,wrong:R(n,l),change:h=>s(On(t,e,{angle:h}))})}
      ${G({name:`${a}.direction`,label:`Bend ${e+1} turns`,value:o.direction,options:ty,change:h=>s(On(t,e,{direction:h===
"down"?"down":"up"}))})}
    </div>
    ${Object.values(c).flat().map(h=>i`<p class="wrong" data-test="wrong-${a}">${h}</p>`)}
    ${o.kind==="open_hem"?sy(t,e,n,s):d}
    ${Zp(e,oy(t,e,n,s))}
  </li>`}function sy(t,e,n,s){let o=`bends.${e}.hem_gap_mm`;return O({next:!0,name:o,label:"Clear gap inside",
unit:t.unit,value:t.bends[e].gap,wrong:R(n,o),change:a=>s(On(t,e,{gap:a}))})}function oy(t,e,n,s){let o=t.bends[e],
a=`bends.${e}.inside_radius_mm`;return i`<details class="bend-more">
    <summary>
      <span class="unseen">Bend ${e+1}: </span>${o.radius?`Radius ${o.radius}`:"Radius"},
      ${gn(o)||"tools"}, kind, remove
    </summary>
    ${o.kind==="bend"?O({next:!0,name:a,label:"Inside radius wanted",unit:t.unit,hint:"Empty: what the tools g\
ive.",value:o.radius,wrong:R(n,a),change:r=>s(On(t,e,{radius:r}))}):d}
    ${fi(`bends.${e}`,o,n,r=>s(On(t,e,r)))}
    ${Ap(t,e)||o.kind!=="bend"?Y({name:`bends.${e}.kind`,label:"Kind",value:o.kind,options:Sa,change:r=>s(On(t,
e,{kind:r}))}):i`<p class="hint">Only the first and the last bend can be a hem.</p>`}
    <button
      type="button"
      class="button wide"
      data-test="remove-bend-${e+1}"
      ?disabled=${t.bends.length<2}
      @click=${()=>s(Mp(t,e),{focus:`flats_mm.${e}`,undo:`Bend ${e+1} and flat ${e+2} are out.`})}>
      Remove bend ${e+1} and flat ${e+2}
    </button>
  </details>`}var ty,tu=$(()=>{_();Xp();Qs();Ve();J();Zn();Qn();Xt();ty=[["up","↑ up"],["down","↓ down"]]});function nu(t,e,n){let s=t.wishes??to(),o=c=>n({...t,wishes:{...s,...c}}),a=t.box?Tn(t.box).map((c,h)=>[String(
h+1),`Bend ${h+1}: ${c}`]):t.bends.map((c,h)=>[String(h+1),`Bend ${h+1}`]),r=t.box?up(t.box).map(c=>c[0].toUpperCase()+
c.slice(1)):t.flats.map((c,h)=>`Flat ${h+1}`),l=Na(s);return i`<details class="wishes" data-test="wishes">
    <summary>
      <span>Order, what it must keep to: <b>${l||"nothing special"}</b></span>
    </summary>
    <div class="fields">
      ${Y({name:"wishes.first",label:"Bend first",value:s.first,options:[["","Any"],...a],wrong:R(e,"wishes.fi\
rst"),change:c=>o({first:c})})}
      ${Y({name:"wishes.last",label:"Bend last",value:s.last,options:[["","Any"],...a],wrong:R(e,"wishes.last"),
change:c=>o({last:c})})}
    </div>
    ${Ia("wishes.no_turn_over","Never turn it over",s.no_turn_over,c=>o({no_turn_over:c}))}
    ${Ia("wishes.no_turn_end","Never turn it end for end",s.no_turn_end,c=>o({no_turn_end:c}))}
    ${Ia("wishes.one_set_up","One set-up: no change of tools",s.one_set_up,c=>o({one_set_up:c}))}
    <fieldset class="tick-flats" id="wishes.critical_flats" tabindex="-1">
      <legend>Flats to gauge directly</legend>
      <p class="hint">Their length comes straight from the gauge, where an order allows it.</p>
      <div>
        ${r.map((c,h)=>Ia(`wishes.flat-${h+1}`,c,s.critical_flats.includes(h+1),p=>o({critical_flats:ay(s.critical_flats,
h+1,p)})))}
      </div>
      ${R(e,"wishes.critical_flats").map(c=>i`<span class="wrong">${c}</span>`)}
    </fieldset>
    ${O({next:!0,name:"wishes.margin_mm",label:"Clearance wanted between part and tools",unit:t.unit,hint:"Emp\
ty: the usual.",placeholder:K(Ui),value:s.margin,wrong:R(e,"wishes.margin_mm"),change:c=>o({margin:c})})}
  </details>`}function Ia(t,e,n,s){return i`<label class="tick"
    ><input
      type="checkbox"
      name=${t}
      data-test=${t}
      .checked=${kt(n)}
      @change=${o=>s(o.target.checked)} /><span
      >${e}</span
    ></label
  >`}var nl,eu,ay,su=$(()=>{_();Oe();Mn();L();Ea();J();Xt();nl=["wishes.first","wishes.last","wishes.critical_\
flats","wishes.margin_mm"],eu={first:"Bend first",last:"Bend last",critical_flats:"Flats to gauge directly",margin_mm:"\
Clearance wanted"};ay=(t,e,n)=>[...t.filter(s=>s!==e),...n?[e]:[]].sort((s,o)=>s-o)});function au(t,{metals:e,crib:n,plan:s,editing:o,errors:a,change:r}){let c=[...e.some(({code:p})=>p===t.metal)?
[]:[[t.metal,t.metal?`${t.metal} (not in the shop)`:"Choose"]],...e.map(({code:p,name:u})=>[p,u])],{box:h}=t;return i`${G(
{name:"shape",label:"What it is",value:h?"box":"section",options:[["section","Section"],["box","Box or tray"]],
change:p=>r(Ba(t,p==="box"))})}
    ${O({next:!0,name:"title",label:"Name of the part",value:t.title,wrong:R(a,"title"),change:p=>r({...t,title:p})})}
    ${Y({name:"metal",label:"Metal",value:t.metal,options:c,wrong:R(a,"metal"),change:p=>r({...t,metal:p})})}
    <div class="fields">
      ${O({next:!0,name:"thickness_mm",label:"Thickness",unit:t.unit,placeholder:"3 or 16 ga",hint:s?ry(s,t.thickness):
"",value:t.thickness,wrong:R(a,"thickness_mm"),change:p=>r({...t,thickness:p})})}
      ${h?d:O({next:!0,name:"bend_length_mm",label:"Bend length",unit:t.unit,value:t.length,wrong:R(a,"bend_le\
ngth_mm"),change:p=>r({...t,length:p})})}
    </div>
    ${h?i`${Vp({...t,box:h},a,r)}
            <h2>More, if it matters</h2>
            ${tl(t,r)}
            ${s||t.order?el(t,s?.order?.sequence,a,r):d}`:i`<h2>Section, left to right <small>${t.unit}</small></h2>
            ${tl(t,r)} ${Qp(t,a,r)}
            <h2>More, if it matters</h2>
            ${Yp(t,a,r)} ${Kp(t,a,r)}
            ${el(t,s?.order?.sequence,a,r)}`}
    ${nu(t,a,r)} ${Bd(t,n,a,r)}
    <div class="field">
      <label for="note">Note for the people at the press</label>
      <textarea
        id="note"
        name="note"
        data-test="note"
        rows="2"
        .value=${kt(t.note)}
        @input=${p=>r({...t,note:p.target.value})}></textarea>
    </div>
    ${o?O({next:!0,name:"reason",label:"Why this change, for the history",value:t.reason??"",wrong:R(a,"reason"),
change:p=>r({...t,reason:p})}):d}`}function ry({part:t,thickness_gauge:e},n){return[/^[\d.,\s]+$/.test(n)?"":f(
w(t.thickness_mm,{digits:2})),e??""].filter(Boolean).join(", ")}function sl(t){return t.box?["title","metal","\
thickness_mm",...is(t.box).map(([e])=>e),"box.relief_mm","box.gap_mm","order",...nl,...mi,"note","reason"]:["t\
itle","metal","thickness_mm","bend_length_mm",...t.flats.map((e,n)=>`flats_mm.${n}`),...t.bends.flatMap((e,n)=>[
`bends.${n}.included_angle_deg`,`bends.${n}.inside_radius_mm`,...e.kind==="open_hem"?[`bends.${n}.hem_gap_mm`]:
[],`bends.${n}.die`,`bends.${n}.punch`]),...t.holes.flatMap((e,n)=>[`holes.${n}.flat`,`holes.${n}.position_mm`,
`holes.${n}.diameter_mm`]),"grain","order",...nl,...mi,"note","reason"]}function Wa(t){if(t.startsWith("box"))
return $p(t);let[e,n,s]=t.split(".");return e==="tools"?n==="die"?"Die":"Punch":e==="wishes"?eu[n]??"Order":n===
void 0?ou[e]??e:`${{flats_mm:"Flat",bends:"Bend",holes:"Hole"}[e]??e} ${Number(n)+1}${s?`, ${ou[s]??s}`:""}`}function ru(t){
let e=t.target;if(t.key!=="Enter"||!(e instanceof HTMLInputElement))return;t.preventDefault();let n=[...e.form.
querySelectorAll("input:not([type=radio]), textarea, [type=submit]")],s=n.slice(n.indexOf(e)+1).find(o=>o.checkVisibility());
s instanceof HTMLElement&&s.focus()}var ou,ol=$(()=>{_();Oe();L();Ve();Mn();qp();J();Jp();Qn();tu();su();Xt();
ou={title:"Name",metal:"Metal",thickness_mm:"Thickness",bend_length_mm:"Bend length",grain:"Rolling direction",
order:"Order",note:"Note",included_angle_deg:"angle",inside_radius_mm:"radius",hem_gap_mm:"gap",flat:"flat",position_mm:"\
place",diameter_mm:"size",die:"die",punch:"punch"}});function iu({dimensions:t=[]}){let e=t.filter(({error_mm:s})=>s!==null);if(!e.length)return d;let n=e[0].basis;
return i`<h3>How close the flats come out</h3>
    <ul class="order-list sizes" data-test="sizes">
      ${e.map(ly)}
    </ul>
    ${n?i`<p class="hint" data-test="sizes-basis">${n}</p>`:d}`}function ly({flat:t,flat_name:e=`flat ${t}`,wanted_mm:n,
error_mm:s,critical:o,gauged_directly:a,step:r}){return i`<li data-flat=${t}>
    <b>${e[0].toUpperCase()}${e.slice(1)}</b> ${f(w(n))}
    <b>± ${f(iy(Number(s)))}</b>, from step
    ${r}${a?", gauged directly":""}${o?i`. <b>Critical${a?"":": measure it"}</b>`:d}.
  </li>`}var iy,lu=$(()=>{_();L();iy=t=>B()==="in"?{text:ut(t/ge,3),unit:"in"}:w(t,{digits:2})});function Da(t,e){if(!An(t))return d;let{order:n}=t,[s,o]=cy(t),a=!!t.part?.order?.length,r=a?e.free():d,l=n.sequence.
length;return i`<div class="order-panel" data-test="order-panel" data-level=${s}>
    <p class="order-standing">
      ${x(s,o)} <span class="order-words" data-test="order-words">${n.words}</span>
    </p>
    ${l>1?i`<p class="order-run">
            ${s==="stop"?"Nearest":a?"Yours":"Order"}: ${cu(n.sequence)}
          </p>`:d}
    ${dy(n.blocked??[])} ${hy(n.remedies??[])} ${py(n.wishes)}
    ${r===d?d:i`<div class="buttons">${r}</div>`}
    ${uy(n.alternatives,e)} ${Hh(t)} ${iu(t)}
  </div>`}function cy({order:t,checks:e}){let n=s=>e.some(o=>o.code===s);return t.proven?["ok","Proven"]:n("no\
-order")?["stop","No order"]:e.some(({level:s,code:o})=>s==="stop"&&o.startsWith("box-"))?["stop","In the way"]:
n("order-not-found")?["caution","None found"]:n("clearance-not-checked")?["caution","Not checked"]:["caution",
"Not proven"]}function cu(t){return i`<span class="run" role="img" aria-label="bends ${t.join(", ")}"
    >${t.map(e=>i`<span class="badge-mark" aria-hidden="true">${e}</span>`)}</span
  >`}function dy(t){return t.length?i`<h3>What is in the way</h3>
    <ul class="order-list" data-test="blocked">
      ${t.map(({bend:e,words:n})=>i`<li><b>Bend ${e}</b> ${n}</li>`)}
    </ul>`:d}function hy(t){return t.length?i`<h3>What would help</h3>
    <ul class="order-list" data-test="remedies">
      ${t.map(({template:e,numbers:n})=>i`<li>${rn(e,n)}</li>`)}
    </ul>`:d}function py(t){return t.length?i`<h3>What each wish costs</h3>
    <ul class="order-list" data-test="wish-costs">
      ${t.map(({wish:e,words:n})=>i`<li data-wish=${e}>${n}</li>`)}
    </ul>`:d}function uy(t,{use:e}){return t.length?i`<h3>Other orders that can be made</h3>
    <ul class="order-others" data-test="other-orders">
      ${t.map(({sequence:n,words:s})=>i`<li>${cu(n)} <span class="compared">${s}</span> ${e(n)}</li>`)}
    </ul>`:d}var An,du,hu,Fa=$(()=>{_();q();lt();lu();wa();An=({order:t})=>Array.isArray(t?.wishes)&&Array.isArray(
t?.alternatives);du=t=>({use:e=>i`<button
      type="button"
      class="button use-order"
      data-test="use-order"
      aria-label="Use this order: ${e.join(", ")}"
      @click=${()=>t(e)}>
      Use this order
    </button>`,free:()=>i`<button type="button" class="button use-order" data-test="let-it-choose" @click=${()=>t(
null)}>
      Let it choose
    </button>`}),hu=t=>({use:e=>P("cards.revise",i`<a
        class="button use-order"
        data-test="use-order"
        aria-label="Use this order: ${e.join(", ")}"
        href="/part?from=${t}&order=${e.join("-")}"
        >Use this order</a
      >`),free:()=>P("cards.revise",i`<a class="button use-order" data-test="let-it-choose" href="/part?from=${t}&order=free"
        >Let it choose</a
      >`)})});function pu(t,{save:e,order:n}){return i`${Yn(t.checks)}
    <section>
      <h2>Blank</h2>
      <div class="columns">
        <div>
          ${ma(t.blank)}${ps(t.blank,{pixels:innerWidth<1e3?innerWidth-24:560})}
        </div>
        <div>
          ${Wh(t.blank)} ${my(t.blank.bend_lines)}
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
    ${An(t)?i`<section>
            <h2>Order</h2>
            ${Da(t,n)}
          </section>`:d}
    <section>
      <h2>Fetch</h2>
      ${rs(t.tools,t.steps.length,t.steps)}
    </section>
    <section>
      <h2>Steps</h2>
      ${t.order&&!An(t)?i`<p data-test="order-words">${t.order.words}</p>`:d}
      ${fa(t)}
      <div class="step-drawings">
        ${t.steps.map(s=>fy(s,t.part.thickness_mm))}
      </div>
    </section>
    ${Jn(t.checks)} ${Ie(t.checks)}`}function my(t){let e=t.filter(n=>n.opinions?.length);return e.length===0?
d:i`<details data-test="other-allowances">
    <summary>
      Other sources differ on
      ${e.length===1?`bend ${e[0].bend}`:`${e.length} bends`}
    </summary>
    ${e.map(n=>i`<p>
          <b>Bend ${n.bend}:</b>
          ${n.opinions.map(s=>`${s.name} ${f(w(s.bend_allowance_mm,{digits:2}))}`).join("; ")}.
        </p>`)}
  </details>`}function fy(t,e){if(!t.drawing)return d;let n=w(t.gauge_x_mm,{digits:2}),s=f(T(t.set_angle_deg)),
o={close:!1,opening:t.v_opening_mm??8*e,gauge:n.text,angle:t.set_angle_deg,near:kn(t)?.near??null};return i`<figure class="step-drawing" data-step=${t.
number}>
    <figcaption>
      <b>${t.number}. ${de(t)}</b> ${Bi(t)} ${Xn(t)}
      <small data-test="origins">${zs(t.origin)}</small>
      ${t.motion?i`<span class="near-words ${t.clearance?.hits?.length?"hit":""}" data-test="near-words"
              >${as(t)}</span
            >`:d}
    </figcaption>
    <div class="poses">
      ${ie(t.drawing,{...o,pose:"before",words:`Step ${t.number} before the bend: the sheet on the die, gauge \
at ${f(n)}.`})}
      ${gy(t,o)}
      ${ie(t.drawing,{...o,pose:"after",words:`Step ${t.number} at the bottom of the stroke, ${s}.`})}
    </div>
  </figure>`}function gy(t,e){let n=kn(t);return n?ie(t.drawing,{...e,pose:"during",moment:n.shown,mark:!0,words:`\
Step ${t.number}. ${as(t)}`}):d}var uu=$(()=>{_();Ge();Us();L();Vs();Fa();Qn();sa();ve();He()});function mu({plan:t,error:e,busy:n},{open:s,stale:o,waiting:a}){let r=innerWidth<1e3;return i`<div
    class="part-picture ${t&&o?"stale":""} ${a===d?"":"searching"}"
    data-test="picture"
    data-stale=${String(o)}>
    ${t?.section?zt(t,r?{pixels:innerWidth-56,tallest:215}:{pixels:Math.min(860,innerWidth-560),tallest:440}):
d}
    ${a===d?i`<p class="picture-words" role="status" data-test="picture-words">
            ${by(t,e,n,s)}
          </p>`:r?a:d}
  </div>`}function $y(t){let[e]=Object.entries(t.errors);return e?ui(Wa(e[0]),e[1]):t.message}function by(t,e,n,s){
if(s.length)return`Still to type: ${s.slice(0,4).map(([,r])=>r).join(", ")}${s.length>4?` and ${s.length-4} mo\
re`:""}.`;if(e instanceof j)return"The shop's server does not answer. What you type stays on this device.";if(e instanceof
S)return`Not right yet. ${$y(e)}`;if(e)return String(e);if(!t)return n?"Working it out…":"";let o=t.blank.outline?
`Blank ${w(t.blank.length_mm,{digits:2}).text} × ${f(w(t.blank.width_mm,{digits:2}))}`:`Blank ${f(w(t.blank.length_mm,
{digits:2}))}`;return i`${o} ${t.worst==="ok"?d:x(t.worst)}`}var fu=$(()=>{_();Ge();V();L();q();ol();Xt()});function yy({seconds:t,deadline_s:e,looked_at:n,best:s},o){return i`<section class="looking" data-test="looking" aria-label="Looking for the order">
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
        <dd data-test="looking-best">${s?i`<b>${vy(s)}</b>`:"none yet"}</dd>
      </div>
    </dl>
    <button type="button" class="button wide" data-test="cancel-looking" @click=${o}>Cancel</button>
  </section>`}function vy(t){return _y.filter(([n])=>t[n]).map(([n,s,o])=>`${t[n]} ${t[n]===1?s:o}`).join(", ")||
"no turning"}function $u({plan:t,progress:e,stopped:n},{cancel:s,again:o,back:a}){return e?yy(e,s):n?ky({again:o,
back:t?a:null}):d}function ky({again:t,back:e}){return i`<section class="looking" data-test="stopped" aria-label="Search cancelled">
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
  </section>`}var wy,gu,_y,xy,Sy,bu,wu=$(()=>{_();wy=.6,gu=({seconds:t})=>t>=wy;_y=[["turn_overs","turn-over",
"turn-overs"],["turn_ends","end turn","end turns"],["tool_changes","tool change","tool changes"],["slides","sl\
ide or tilt","slides or tilts"]];xy="Type the flats from the left end to the right, and between them how far e\
ach bend is open: 90° is square, 180° flat. Up turns what follows upwards. Blank, bend lines, tools and steps \
stand here as soon as the section is whole.",Sy="Choose what it is like, type the base and the walls, outside \
measures. Blank with reliefs, bend lines, tools, pieces and steps stand here as soon as the box is whole; left\
 and right are bent first, then front and back between them.",bu=t=>i`<div class="state how-to" data-test="how-to">
    <strong>The plan comes here</strong> ${t?Sy:xy}
  </div>`});var _u={};Q(_u,{show:()=>Ty});async function Ty(t){let e=Bs(t.query.get("from")??"").slice(0,7),n=e?"cards.rev\
ise":"cards.create";t.title(e?`Edit ${I(e)}`:"New part"),t.render(Tt(e?"Fetching the card…":"Looking into th\
e shop…"));let[{items:s},{items:o},{items:a}]=await Promise.all([ct("metals",t.signal),ct("dies",t.signal),ct(
"punches",t.signal)]),r=await My(e,s,t.signal);!e&&t.query.get("shape")==="box"&&(r.form=Ba(r.form,!0));let l={
...r,plan:null,planned:null,progress:null,stopped:!1,key:"",error:null,clash:null,taken:"",busy:!1,saving:!1,summary:!1,
kept:!0},c=$e(async(D,nt)=>(await Pl("/plan",hs(D),{signal:nt,tell:h})).plan,({question:D,answer:nt,error:ee=null})=>{
nt&&Object.assign(l,{plan:nt,planned:D}),Object.assign(l,{error:ee,busy:!1,progress:null,summary:l.summary&&ee!==
null}),at()},t.signal,350);function h(D){gu(D)&&(l.progress=D,at())}function p(D=!1){let nt=Yi(l.form);if(!D&&
nt===l.key&&!l.error)return at();Object.assign(l,{key:nt,busy:Ca(l.form).length===0,progress:null,stopped:!1}),
l.busy?c.ask(l.form,{now:D}):(c.stop(),l.error=null),at()}let u={cancel(){c.stop(),Object.assign(l,{busy:!1,progress:null,
stopped:!0,error:null}),at()},again:()=>p(!0),back(){if(!l.planned)return;let D=l.form;Object.assign(l,{form:l.
planned,key:Yi(l.planned),stopped:!1}),l.kept=Di(e,{form:l.form,base:l.base,newCode:l.newCode}),at(),X("The pa\
rt of this plan is in the boxes again.",{label:"Put mine back",act:()=>m(D)})}};function m(D,{focus:nt,undo:ee}={}){
let pe=l.form;l.form=D,l.kept=Di(e,{form:D,base:l.base,newCode:l.newCode}),p(),nt&&requestAnimationFrame(()=>qs(
nt)),ee&&X(ee,{label:"Put it back",act:()=>m(pe)})}function g(D){m({...l.form,order:D},{undo:D?`Order ${D.join(
", ")} is yours now.`:"The planner chooses the order."})}function b(D){history.replaceState(history.state,"",e?
`/part?from=${e}`:"/part"),g(Pa(D))}async function y(D){let[nt]=Ca(l.form);if(nt){l.summary=!0,at(),qs(nt[0]);
return}Object.assign(l,{saving:!0,clash:null,taken:""}),at();try{let Ut=await D();if("saved"in Ut)return W(Ut.
saved);"stale"in Ut?l.clash=Ut.stale:l.taken=Ut.taken}catch(Ut){l.error=Ut,l.summary=!0}l.saving=!1,at();let ee=l.
error instanceof S?l.error.errors:{},pe=sl(l.form).find(Ut=>Object.keys(ee).some(Ol=>Ol===Ut||Ol.startsWith(`${Ut}\
.`)));pe&&qs(pe)}function W(D){Fi(e);let nt=D.revision===l.base?.revision;X(nt?"Nothing was changed, so nothin\
g was saved.":`Card ${I(D.code)} saved${D.revision>1?`, revision ${D.revision}`:""}.`),mt(`/c/${D.code}`)}let C=()=>dt(
n)&&y(()=>l.base?Ep(l.form,l.base):Zi(l.form,l.newCode)),E=()=>(l.newCode=Cr(),y(()=>Zi(l.form,l.newCode)));function v(){
Fi(e);let D=l.form;Object.assign(l,{restored:!1,plan:null,planned:null,clash:null,...yu(l.card,s)}),p(!0),X(e?
"The card as it is saved.":"An empty part.",{label:"Put mine back",act:()=>m(D)})}function A(D){let nt=l.form;
Object.assign(l,{clash:null,base:al(D)}),m(eo(D.part,D.note)),X("What is saved is in the boxes now.",{label:"P\
ut mine back",act:()=>m(nt)})}async function Z(D){try{await Rl(`/blank.${D}`,hs(l.form),`${l.form.title.trim()||
"blank"}.${D}`)}catch(nt){X(nt instanceof Error?nt.message:String(nt))}}function at(){let D=l.error instanceof
S?l.error.errors:{},nt=Ca(l.form),ee=$u(l,u),pe=!l.busy&&!l.stopped&&!nt.length&&!l.error;t.render(i`<h1>
          ${e?i`${P(n,"Edit","Plan")} ${l.card?.title||"card"}
                  <small class="code">${I(e)}</small>`:P(n,"New part","Plan a part")}
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
        ${l.clash?jp(l.clash,l.form,{saveMine:()=>{l.base=al(l.clash),C()},takeTheirs:()=>A(l.clash),saveAsNew:E}):
d}
        ${l.taken?i`<div class="panel" role="alert" data-test="taken">
                An earlier try did arrive: the shop has
                <a href="/c/${l.taken}">card ${I(l.taken)}</a>, and you changed the part
                since.
                <button type="button" class="button" data-test="save-as-new" @click=${E}>
                  Save this as another card
                </button>
              </div>`:d}
        ${l.summary?Nd(D,Wa,sl(l.form)):d}
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
            ${mu(l,{open:nt,stale:!pe,waiting:ee})}
            <form
              class="panel part-form"
              aria-label="The part"
              novalidate
              @keydown=${ru}
              @submit=${Ut=>{Ut.preventDefault(),C()}}>
              ${au(l.form,{metals:s,crib:{dies:o,punches:a},plan:pe?l.plan:null,editing:!!e,errors:D,change:m})}
              ${P(n,i`<div class="save-bar">
                  <button type="submit" class="button next wide" data-test="save" ?disabled=${l.saving}>
                    ${l.saving?"Saving…":e?"Save as the next revision":"Save as a card"}
                  </button>
                </div>`,i`<p class="hint" data-test="owners">Try here what you like. The owner saves cards.</p>`)}
            </form>
          </div>
          <div class="plan-side">
            ${innerWidth<1e3?d:ee}
            <div class="part-plan ${pe||!l.plan?"":"stale"}" data-test="plan">
              ${l.plan&&!pe&&!l.busy?i`<p class="stale-note">
                      ${l.stopped?"The plan from before your last change:":"The plan of the last section that \
was whole:"}
                    </p>`:d}
              ${l.plan?pu(l.plan,{save:Z,order:du(g)}):bu(!!l.form.box)}
            </div>
          </div>
        </div>`),l.busy||t.ready()}p(!0);let co=t.query.get("order");co&&b(co)}function yu(t,e){return t?{form:eo(
t.part,t.note),base:al(t)}:{form:Ki(e[0]?.code??""),base:null}}async function My(t,e,n){let s=ap(t),o=null;try{
t&&(o=await ye(t,n))}catch(a){if(!s)throw a}return s?{form:s.form,base:s.base,newCode:s.newCode,card:o,restored:!0}:
{...yu(o,e),newCode:Cr(),card:o,restored:!1}}var al,vu=$(()=>{_();V();Mt();it();yt();js();te();rp();Ve();Pp();
Nt();Ct();it();lt();Hp();ol();Fa();uu();fu();wu();Bt();Xt();al=t=>({code:t.code,etag:t.etag,revision:t.revision,
revision_id:t.revision_id})});async function ku(t,e){if(!navigator.mediaDevices?.getUserMedia)throw new Ln(isSecureContext?"none":"insecure");
let n;try{n=await navigator.mediaDevices.getUserMedia(Oy)}catch(o){throw new Ln(Ay[o.name]??"busy")}let s=()=>n.
getTracks().forEach(o=>o.stop());return t.aborted&&s(),t.addEventListener("abort",s),n.getVideoTracks()[0]?.addEventListener(
"ended",e),n}function xu(t){return!!t.getVideoTracks()[0]?.getCapabilities?.()?.torch}async function Su(t,e){await t.
getVideoTracks()[0].applyConstraints({advanced:[{torch:e}]})}var Ln,Oy,Ay,Tu=$(()=>{Ln=class extends Error{constructor(e){
super(e),this.fault=e}},Oy={audio:!1,video:{facingMode:{ideal:"environment"},width:{ideal:1920},height:{ideal:1080}}},
Ay={NotAllowedError:"refused",SecurityError:"refused",NotFoundError:"none",OverconstrainedError:"none"}});function Au(){return ja??=Ny(),ja.catch(()=>ja=void 0),ja}async function Ny(){let t=await Ey(),e=t??await Mu(),
n={own:!!t,async read(s){try{return await e.detect(s)}catch(o){if(e!==t)throw new fs(String(o));return e=await Mu(),
n.read(s)}}};return n}async function Ey(){let t=globalThis.BarcodeDetector;return(await t?.getSupportedFormats().
catch(()=>[]))?.includes("qr_code")?new t(Ou):null}async function Mu(){try{let{BarcodeDetector:t,prepareZXingModule:e}=await import("/vendor/barcode-detector/ponyfill.js");
return await e({overrides:{locateFile:()=>Ly},fireImmediately:!0}),new t(Ou)}catch(t){throw new fs(String(t))}}
var fs,Ly,Ou,ja,Lu=$(()=>{fs=class extends Error{},Ly="/vendor/zxing-wasm/zxing_reader.wasm",Ou={formats:["qr_\
code"]}});function Eu(t){let e=Py(t.trim()),n=e?By.exec(e.pathname)?.[1]:Cy.exec(t.trim())?.[0];if(!n)return{kind:"other",
code:"",words:Iy(t,e)};let{code:s,whole:o,fault:a}=ht(Ry(n));if(o)return{kind:"card",code:s,words:""};let r=a||
`A card code has seven characters. This one has ${s.length}.`;return{kind:"slip",code:"",words:`${rl(I(s))} is\
 no card’s code. ${r}`}}function Py(t){if(!URL.canParse(t))return null;let e=new URL(t);return/^https?:$/.test(
e.protocol)?e:null}function Ry(t){try{return decodeURIComponent(t)}catch{return t}}function Iy(t,e){return e?`\
It leads to ${rl(e.host)}, not to a card.`:t.trim()?`It holds “${rl(t.trim())}”, no card’s code.`:"It ho\
lds nothing that can be read."}var By,Cy,Nu,rl,Bu=$(()=>{it();By=/^\/c\/([^/]+)\/?$/i,Cy=/^[0-9A-HJKMNP-TV-Z]{3}-?[0-9A-HJKMNP-TV-Z]{4}$/i,
Nu=40;rl=t=>t.length>Nu?`${t.slice(0,Nu)}…`:t});async function Ru(t,e,n,s){for(;!s.aborted;){if(t.readyState>=t.HAVE_CURRENT_DATA){let o=await e.read(t);s.aborted||
await n(o)}await new Promise(o=>setTimeout(o,Wy))}}function Iu(t,e,n){let o=t.filter(l=>Pu(l,e,e)).map(l=>({...Eu(
l.rawValue),mark:l})),a=o.filter(l=>l.kind==="card");if(a.length===0)return o[0]??null;if(Cu(a))return a[0];let r=a.
filter(l=>Pu(l.mark,e,n));return r.length>0&&Cu(r)?r[0]:"several"}function Pu({boundingBox:t},e,n){let s=e.getBoundingClientRect(),
o=Math.max(s.width/e.videoWidth,s.height/e.videoHeight),a=s.x+s.width/2+(t.x+t.width/2-e.videoWidth/2)*o,r=s.y+
s.height/2+(t.y+t.height/2-e.videoHeight/2)*o,{left:l,right:c,top:h,bottom:p}=n.getBoundingClientRect();return a>=
l&&a<=c&&r>=h&&r<=p}var Wy,Cu,Wu=$(()=>{Bu();Wy=60;Cu=t=>t.every(e=>e.code===t[0].code)});function Du(t,e){let{title:n,words:s,again:o}=Dy[t];return i`<section class="panel scan-fault" data-test="scan-fault" data-fault=${t}>
    <h2>${n}</h2>
    ${s}
    ${o?i`<button class="button wide" type="button" data-test="again" @click=${e}>Try again</button>`:d}
  </section>`}var il,Dy,Fu=$(()=>{_();il=i`<p>
  Or use the phone’s own camera app: point it at the label, and tap the address that it shows.
</p>`,Dy={insecure:{title:"This page gets no camera",words:i`<p>
        It came over plain http, and browsers give the camera only to pages that came over https. If the shop
        has an https address, open that one.
      </p>
      <p>Type the code instead.</p>
      ${il}`,again:!1},none:{title:"No camera found",words:i`<p>
      This device has no camera that the browser can use. Connect one and try again, or type the code instead.
    </p>`,again:!0},refused:{title:"The camera is not allowed",words:i`<p>
        The browser may not use the camera here. Tap the sign beside the address and allow the camera; in an
        installed app, the phone’s settings have it. Then try again.
      </p>
      <p>Or type the code instead.</p>
      ${il}`,again:!0},busy:{title:"The camera does not start",words:i`<p>
      Another app or page is using it, or it was taken away. Close the other one and try again, or type the
      code instead.
    </p>`,again:!0},"no-decoder":{title:"The reader could not be loaded",words:i`<p>
        The part of the app that reads the label’s square is not on this device, and the shop’s server did not
        send it. Try again where the network reaches, or type the code instead.
      </p>
      ${il}`,again:!0}}});var Hu={};Q(Hu,{show:()=>Uy});async function Uy(t){t.title("Scan a label");let e={fault:null,stream:null,lamp:null,
says:ju},n=Fo(),s=await xe().catch(()=>[]),o=new AbortController,a=()=>t.render(zy(e,{again:h,lamp:p},()=>jo(n,
s,a,"Seven characters, capitals or not."))),r=u=>{Object.assign(e,u),a()},l=()=>{o.abort(),Object.assign(e,{stream:null,
lamp:null})},c=u=>{l(),u instanceof Ln?r({fault:u.fault}):u instanceof fs?r({fault:"no-decoder"}):t.render(Ne(
u)),t.ready()};async function h(){l();let{signal:u}=o=new AbortController;r({fault:null,says:ju});try{let[m,g]=await Promise.
all([ku(u,()=>c(new Ln("busy"))),Au()]);if(u.aborted)return;r({stream:m,lamp:xu(m)?!1:null,says:Fy});let b=document.
querySelector(".scan-view video"),y=document.querySelector(".scan-frame");b.play().catch(()=>{}),t.ready();let W=Vy(
C=>r({says:C}),u);await Ru(b,g,C=>W(Iu(C,b,y)),u)}catch(m){u.aborted||c(m)}}async function p(){if(!e.stream)return;
let u=!e.lamp;await Su(e.stream,u).then(()=>r({lamp:u}),()=>r({lamp:null}))}t.signal.addEventListener("abort",
l),document.addEventListener("visibilitychange",()=>document.hidden?l():h(),{signal:t.signal}),h()}function Vy(t,e){
let n="",s=0;return async function(a){let r=performance.now();if(!a){r-s>Hy&&(n="");return}let l=a==="several"?
a:a.code+a.words;s=r,l!==n&&(n=l,a==="several"?t(jy):a.kind==="card"?await qy(a.code,t,e):t(Gy(a)),s=performance.
now())}}function Gy({kind:t,words:e}){return{kind:"wrong",title:t==="slip"?"Not a right code":"Not a card’s la\
bel",words:`${e} Still looking.`}}async function qy(t,e,n){let s=I(t);e({kind:"found",title:s,words:"Opening i\
t…"}),navigator.userActivation?.hasBeenActive&&navigator.vibrate?.(60);let o=await fh(t,n).catch(a=>String(a.
message));n.aborted||(o==="device"||o==="shop"?mt(`/c/${t}`,{replace:!0}):e(o==="nowhere"?{kind:"wrong",title:`${s}\
 is not this shop’s`,words:"The code is a right one, but this shop has no such card: it is another shop’s la\
bel. Still looking."}:o==="silent"?{kind:"wrong",title:`${s} is not on this device`,words:"The shop’s server d\
oes not answer, so nobody can tell if it is a new card or another shop’s label. Still looking."}:{kind:"wron\
g",title:`${s} could not be opened`,words:o}))}function zy({fault:t,stream:e,lamp:n,says:s},o,a){return i`<div class="scan" data-test="scan-screen" data-says=${t??
s.kind}>
    <h1>Scan a label</h1>
    ${t?Du(t,o.again):i`<div class="scan-view">
            <video playsinline muted autoplay .srcObject=${e} aria-label="What the camera sees"></video>
            ${Ky}
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
  </div>`}var ju,Fy,jy,Hy,Ky,Uu=$(()=>{_();Tu();Mt();it();Lu();Wu();Ct();vt();qr();Fu();Bt();ju={kind:"wait",title:"\
Starting the camera…",words:"If the browser asks, allow it."},Fy={kind:"look",title:"Hold the label’s square\
 in the frame",words:"It opens by itself."},jy={kind:"wrong",title:"More than one label",words:"Hold only one \
in the frame."},Hy=2500;Ky=i`<div class="scan-frame" aria-hidden="true">
  <svg viewBox="0 0 100 100">
    <path d="M-6 0H106M-6 100H106M0 -6V106M100 -6V106M50 -3V3M50 97V103M-3 50H3M97 50H103" />
  </svg>
</div>`});function Vu(t,e,n){zu(t,e,n),ch(t),ft?.link.move({code:e,step:n},{whatever:!0})}function Ha(){ft?.end.abort(),
ft=null,Ua(),so()}function Gu(t,e){!ft||ft.at.code!==t||ft.at.step===e||(ft.at.step=e,Ua(),ft.link.move({code:t,
step:e}),so())}function qu(t){ft&&(ft.at.step=t,ft.link.move({code:ft.at.code,step:t},{whatever:!0}))}function Va(t,e){
document.addEventListener("bench",()=>t(oo()),{signal:e})}function zu(t,e,n,s=null){ft?.end.abort();let o=new AbortController,
a={name:t,code:e,step:n,answers:null,late:!1,refused:""},r=ia(t,s,{keepMs:Yy,heard:l=>{if(l.code!==a.code)return Ha();
a.step=l.step,Ua(),so()},changed:({gone:l,answers:c,late:h,refused:p})=>{if(l)return Ha();Object.assign(a,{answers:c,
late:h,refused:p}),so()}},o.signal);ft={at:a,link:r,end:o},Ua(),so()}function Ua(){try{ft?sessionStorage.setItem(
ll,JSON.stringify({name:ft.at.name,code:ft.at.code,step:ft.at.step})):sessionStorage.removeItem(ll)}catch{}}function Ga(){
if(!ft)try{let{name:t,code:e,step:n}=JSON.parse(sessionStorage.getItem(ll)??"{}");t&&e&&zu(t,e,n)}catch{}}var ll,
Yy,ft,oo,so,qa=$(()=>{_i();De();ll="flangebook.on-bench",Yy=5e3,ft=null,oo=()=>ft?{...ft.at}:null;so=()=>document.
dispatchEvent(new CustomEvent("bench"))});function Ot(t){let{fault:e}=ht(t);return i`<div class="state" data-test="bad-code">
    <h1>${I(t)} is not a card</h1>
    ${e||"A card code has seven characters, digits and letters without I, L, O and U."} ${cl}
  </div>`}function At(t,e){if(e instanceof j)return i`<div class="state" data-test="not-kept">
      <h1>${I(t)} is not on this device</h1>
      The shop’s server does not answer, and this card was never opened or fetched here. Go where the network
      reaches and open it again. ${cl}
    </div>`;if(e instanceof S&&e.status===404)return i`<div class="state" data-test="unknown-code">
      <h1>There is no card ${I(t)}</h1>
      The code is a right one, but this shop has no card of that number. Look at the label again. ${cl}
    </div>`;throw e}var cl,ke=$(()=>{_();V();it();cl=i`<span class="buttons"><a class="button" href="/">Find a card</a></span>`});function Yu(t,{busy:e,fault:n,take:s,settings:o}){return t?.differs?i`<details class="freshness panel" data-test="fresh">
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
                <td>${Ku(a,"saved")}</td>
                <td>${Ku(a,"fresh")}</td>
              </tr>`)}
        </tbody>
      </table>
    </div>
    ${o&&dt("cards.revise")?i`<p>Settings that came from first pieces belong to the old plan and go with it.</p>`:
d}
    <p class="wrong" role="alert">${n}</p>
    ${P("cards.revise",i`<button class="button" data-test="take-fresh" ?disabled=${e} @click=${s}>
        ${e?"Planning…":"Take the fresh plan"}
      </button>`,i`<p class="hint" data-test="owners">The owner may take the fresh plan.</p>`)}
  </details>`:d}function Ku(t,e){let n=e==="saved"?t.saved_value:t.fresh_value;return t.field&&/_(mm|kn|kn_per_m|deg|kg)$/.
test(t.field)&&typeof n=="number"?f(on(t.field??"",n)):t[e]}var Ju=$(()=>{_();Nt();L();lt()});function ao(t){return t.refused?t.missing?"The shop was put back and does not know its card":`Refused: ${t.refused}`:
t.parked?"Saved here. The card was changed meanwhile: to settle":"Saved here, not yet in the shop. Waiting to \
be sent"}function Zu(t){let e=t.here??[],n=t.proposals??[];if(!e.length&&!n.length)return d;let s=e.filter(o=>o.
refused);return i`<section class="changes-aside" aria-label="Changes on their way">
    ${n.length?i`<div class="to-settle" data-test="to-settle">
            <p>${x("caution","To settle")} This card was changed in two places at once. Both are kept.</p>
            ${P("cards.revise",i`<a class="button next" href="/c/${t.code}/settle" data-test="settle"
                >Settle ${n.length===1?"it":`${n.length} changes`}</a
              >`,i`<p data-test="owners">The owner settles which holds.</p>`)}
          </div>`:d}
    ${e.length?i`<p class="waits" data-test="saved-here">
            <b>Saved here, not yet in the shop.</b>
            ${e.length===1?"One change of this card waits":`${e.length} changes of this card wait`}
            ${n.length?"until the other one is settled.":"and goes out by itself."}
            ${s.length?i`<a href="/settings">${s.length} refused: look</a>`:d}
          </p>`:d}
  </section>`}function za(t){return t==="shop"?"Saved in the shop.":t==="here"?"Saved here, not yet in the sho\
p. It goes out by itself.":t==="settle"?`The card was changed meanwhile. Both are kept: ${dt("cards.revise")?"\
settle which holds.":"the owner settles which holds."}`:"Nothing was changed."}var gs=$(()=>{_();Nt();q();lt()});async function Ka(t,e){try{$s=(await bn(t)).map(({name:n})=>n),t.aborted||e()}catch{}}function Ya(t,e,{draw:n,
start:s}){let o=oo();if(o?.code===t)return Jy(o,e);if(!$s.length)return d;let a=[Xu,lh()].find(r=>$s.includes(
r))??$s[0];return i`<section class="show-on-bench" aria-label="Bench screen" data-test="show-on-bench">
    ${$s.length>1?Y({name:"bench",label:"Bench",value:a,options:$s.map(r=>[r,r]),change:r=>{Xu=r,n()}}):d}
    <button
      type="button"
      class="button"
      data-test="put-on-bench"
      @click=${()=>{Vu(a,t,e),n(),s?.()}}>
      Show on ${wn(a)}
    </button>
  </section>`}function Jy(t,e){let n=wn(t.name);return i`<section
    class="show-on-bench on"
    aria-label="Bench screen"
    data-test="on-bench"
    data-bench-step=${t.step}>
    <p role="status">${Zy(t,n)}</p>
    ${t.late?i`<button type="button" class="button" data-test="show-again" @click=${()=>qu(e)}>
            Show step ${e} there
          </button>`:d}
    <button type="button" class="button" data-test="off-bench" @click=${Ha}>Stop</button>
  </section>`}function Zy({answers:t,late:e,refused:n},s){return t===!1?i`<b>The shop does not answer:</b> ${s} does not follow.`:
n?i`<b>The shop did not take that step:</b> ${n}`:e?i`<b>Not shown there:</b> ${s} may stand at another step.`:
i`<b>On ${s}.</b>`}var $s,Xu,dl=$(()=>{_();De();qa();J();$s=[],Xu=""});function Ja(t){let{drawing:e}=t,n=kn(t),s=ua(t),o=Xy(e,t.v_opening_mm,n?s:null);return i`<div class="small-poses" data-test="small-poses">
    ${hl("before","before",Qu(e.before),e,o)}
    ${n?hl("during",s?li(s).join(" "):"half way",n.shown,e,o,s):d}
    ${hl("after","after",Qu(e.after),e,o)}
  </div>`}function Xy(t,e,n){let[s,o,a,r]=Gt([t.before.sheet,t.after.sheet]),l=e??(a-s)/6,[c,h]=n?mn(n):[0,0];
return{from:Math.min(s,-1.5*l,c-l)-2,to:Math.max(a,t.gauge_point?.[0]??0,1.5*l,c+l)+2,low:Math.min(o-.3*l,-1.3*
l,h-l),high:Math.max(r+.3*l,2*l,h+l)}}function hl(t,e,n,s,{from:o,to:a,low:r,high:l},c=null){return i`<figure class="small" data-moment=${t}>
    <svg
      class="small-pose"
      viewBox="${o} ${-l} ${a-o} ${l-r}"
      preserveAspectRatio="xMidYMid meet"
      aria-hidden="true">
      <path class="tool" d=${St(s.die)} />
      <g transform="translate(0 ${n.down})">
        ${n.tools.map(h=>k`<path class="tool" d=${h}/>`)}
      </g>
      <path class="gauge" transform="translate(${n.back} 0)" d=${n.gauge} />
      <path class="sheet" d=${n.sheet} />
      ${c?Qy(c,a-o):d}
    </svg>
    <figcaption data-test="small-${t}">${e}</figcaption>
  </figure>`}function Qy(t,e){if(!ta(t,e))return k`<path class="ring" d=${Rs([t.on_sheet,t.on_tool])}/>`;let[n,
s]=mn(t);return k`<circle class="ring" cx=${n} cy=${-s} r=${e*.05}/>`}var Qu,pl=$(()=>{_();ve();ci();Le();Qu=({
sheet:t,ram:e,holder:n,punch:s,gauge:o})=>({sheet:St(t),tools:[e,n,s].map(St).filter(Boolean),down:0,gauge:St(
o),back:0})});function bs(t,{waiting:e,step:n}={}){return i`<li class="row trial" data-test=${e?"waiting-trial":"trial"} data-id=${t.
id}>
    <div>
      <span class="lead">${qe(t)}</span>
      <span class="code">Step ${t.step}</span>
      <span class="more">
        ${e?i`<b class="waits">${ao(e)}</b> · `:d}
        ${[Gn(t),t.by,t_(t),e_(t.correction,n)].filter(Boolean).join(" · ")}
        ${t.note?i`<span class="trial-note">${t.note}</span>`:d}
        ${e?.refused?i`<a href="/settings">Decide</a>`:d}
      </span>
    </div>
  </li>`}function qe(t){let e=[t.left_deg,t.middle_deg,t.right_deg],s=e.some(o=>o!=null)?e.map(o=>f(T(o??null))).
join(" / "):f(T(t.measured_deg));return t.flange_mm?`${s}, flange ${n_(t.flange_mm)}`:s}var t_,e_,n_,ws=$(()=>{
_();_n();L();gs();Ht();t_=t=>t.set_angle_deg?`set at ${f(T(t.set_angle_deg))}`:"",e_=(t,e)=>t?.set_angle_deg&&
e&&le(e,t)?`new setting ${f(T(t.set_angle_deg))}`:"",n_=t=>typeof t=="string"?t:f(w(t,{digits:2}))});var em={};Q(em,{show:()=>s_});async function s_(t){let{code:e}=t.params;if(!ht(e).whole)return tm(t,Ot(e));let n,
s={waiting:[],fresh:null,metal:"",busy:!1,fault:""},o=()=>{t.title(n.title||I(e)),t.render(a_(n,s,a,o))},a=async()=>{
Object.assign(s,{busy:!0,fault:""}),o();try{let l=N().name?{by:N().name}:{};n=await yn(await la(n,{replan:!0,reason:"\
Planned afresh with today’s tools",id:Wt(),...l})),s.fresh=null,H()}catch(l){s.fault=l instanceof S&&l.status===
412?"The card was changed meanwhile. Open it again first.":l instanceof Error?l.message:String(l)}s.busy=!1,o()},
r=async l=>{n=l,s.waiting=(await Ke(e).catch(()=>[])).filter(c=>c.kind==="trial"),s.metal=await o_(n.part.metal),
o(),t.ready()};gt(()=>n&&o(),t.signal),Va(()=>n&&o(),t.signal),document.addEventListener("sync",async()=>n&&r(
await Ys(e).catch(()=>{})??n),{signal:t.signal});try{await _t(e,r,t.signal)}catch(l){t.signal.aborted||tm(t,At(
e,l));return}Ga(),Ka(t.signal,o),s.fresh=await M("GET",`/cards/${e}/fresh`,{signal:t.signal}).then(({body:l})=>l,
()=>null),o()}function tm(t,e){t.title("No such card"),t.render(e),t.ready()}async function o_(t){return(await ue().
catch(()=>{}))?.metals?.find(n=>n.code===t)?.name??t}function a_(t,e,n,s){let{plan:o}=t,a=o.checks.filter(c=>c.
level!=="ok"),r=a.filter(c=>c.level==="stop"),l=a.filter(c=>c.level!=="stop"&&!c.code.startsWith("general-"));
return i`<article class="card" data-test="card" data-revision=${t.revision}>
    <div class="card-head">
      <header class="card-top">
        <p class="card-code" data-test="card-code">${I(t.code)}</p>
        <h1 data-test="card-title">${t.title||"Untitled"}</h1>
        <p class="card-what" data-test="card-what">${i_(t,e.metal)}</p>
        ${t.note?i`<p class="card-note" data-test="card-note">${t.note}</p>`:d}
        ${t.archived?i`<p class="card-note"><b>Put away.</b> This card is not in use any more.</p>`:d}
      </header>
      ${Zu(t)}
      ${r.length?i`<section class="card-stops" aria-label="Stop">${wt(r)}</section>`:d}
      ${Yu(e.fresh,{...e,take:n,settings:t.settings.length})}
      ${r_(t,r.length>0)}
      ${o.steps.length?Ya(t.code,1,{draw:s,start:()=>mt(`/c/${t.code}/step/1`)}):d}
      <section class="panel card-picture" aria-label="What it becomes">
        ${zt(o,{tallest:innerHeight*.34})}
      </section>
      ${h_(t)}
    </div>
    <div class="card-body">
      <section class="panel card-fetch" data-test="fetch">
        <h2>What to fetch</h2>
        ${rs(o.tools,o.steps.length,o.steps)}${ma(o.blank)}${It(o)?ps(o.blank,{tallest:420}):d}
      </section>
      <section class="panel card-steps">
        <h2>Steps</h2>
        ${An(o)?d:l_(o.order)}${c_(t)}
      </section>
      ${An(o)?i`<section class="panel card-order">
              <h2>Order</h2>
              ${Da(o,hu(t.code))}
            </section>`:d}
      ${l.length?i`<section class="panel card-watch">
              <h2>What to watch</h2>
              ${wt(l)}
            </section>`:d}
      ${Ie(o.checks)}
      <section class="panel card-trials">
        <h2>What came out</h2>
        ${d_(t,e.waiting)}
      </section>
    </div>
  </article>`}function r_({code:t,plan:e},n){return e.steps.length?i`<div class="card-start">
    <a class="button next wide" href="/c/${t}/step/1" data-test="start">
      ${n?"See step 1":"Start"}
      <small>${e.steps.length===1?"1 step":`${e.steps.length} steps`}</small>
    </a>
  </div>`:d}function i_({part:t,plan:e},n){let s=e.thickness_gauge?` (${e.thickness_gauge})`:"",o=t.bends.length===
1?"1 bend":`${t.bends.length} bends`,a=It(e)?`box ${vn(e.folded)}`:`${F(t.bend_length_mm)} ${B()} long`;return`${n}\
, ${F(t.thickness_mm)} ${B()}${s}, ${a}, ${o}`}function c_(t){return i`<ol class="rows" data-test="step-list">
    ${t.plan.steps.map(e=>i`<li class="row">
          <a href="/c/${t.code}/step/${e.number}">
            <span class="lead">${e.number}. ${de(e)} ${e.direction}</span>
            <span class="code">${f(T(e.included_angle_deg))}</span>
            <span class="more"
              >${e.gauge_x_mm===null?"no gauge":`gauge at ${f(w(e.gauge_x_mm))}`}</span
            >
            ${e.turn_over||e.turn_end||e.turn_quarter?i`<span class="turn" data-test="turn">${ns(e)}</span>`:d}
            ${ce(e,{short:!0})} ${e.drawing?Ja(e):d}
          </a>
        </li>`)}
  </ol>`}function d_(t,e){let n=[...t.trials].reverse().slice(0,3);return!n.length&&!e.length?i`<p data-test="no-trials">
      Nothing measured yet.${P("trials.keep"," After a bend, type what came out.")}
    </p>`:i`<ul class="rows trials" data-test="trials">
    ${[...e].reverse().map(s=>bs(s.body,{waiting:s}))}
    ${n.map(s=>bs(s,{step:t.plan.steps[s.step-1]}))}
  </ul>`}function h_({code:t}){return i`<nav class="card-links" aria-label="This card">
    ${pt(`/c/${t}/note`,i`<a class="button" href="/c/${t}/note" data-test="write-note">Note</a>`)}
    <a class="button" href="/c/${t}/history" data-test="history">History</a>
    <a class="button" href="/c/${t}/label" data-test="label">Label</a>
    <a class="button" href="/c/${t}/print" data-test="print">Print</a>
    ${P("cards.revise",i`<a class="button" href="/part?from=${t}" data-test="edit">Edit</a>`)}
  </nav>`}var l_,nm=$(()=>{_();V();Mt();it();je();Et();qa();Ct();tt();vt();bt();L();ke();q();Vs();Ju();gs();ss();
lt();Fa();He();dl();pl();ve();ws();es();Ge();Jt();l_=t=>t?.words?i`<p class="order" data-test="order">${t.words}</p>`:
d});var rm={};Q(rm,{show:()=>p_});async function p_(t){let{code:e,step:n}=t.params;if(!ht(e).whole)return sm(t,Ot(
e));let s=Xs(),o,a=()=>{let r=o.plan.steps[Number(n)-1];if(!r)return t.render(f_(o,n));t.title(`${o.title||e},\
 step ${r.number}`),t.render($_(o,r,()=>_a(o,r,s,a,t.signal),Ya(o.code,r.number,{draw:a})))};gt(()=>o&&a(),t.signal),
Va(()=>o&&u_(o,Number(n),a),t.signal),document.addEventListener("sync",()=>o&&m_(o),{signal:t.signal}),addEventListener(
"keydown",r=>o&&g_(r,o,Number(n)),{signal:t.signal}),Ga();try{await _t(e,r=>{!o&&r.plan.steps[Number(n)-1]&&Gu(
e,Number(n)),o=r,a(),t.ready()},t.signal)}catch(r){t.signal.aborted||sm(t,At(e,r));return}Ka(t.signal,()=>o&&a())}
function u_(t,e,n){let s=oo(),o=s?.code===t.code&&s?.step!==e&&t.plan.steps[(s?.step??0)-1];o?mt(`/c/${t.code}\
/step/${o.number}`,{replace:!0}):n()}async function m_(t){let e=await Ys(t.code).catch(()=>{});e&&e.revision!==
t.revision&&X(`This card is at revision ${e.revision} now.`,{label:"Show it",act:()=>Ee()})}function sm(t,e){t.
title("No such card"),t.render(e),t.ready()}function g_(t,e,n){t.altKey||t.ctrlKey||t.metaKey||t.shiftKey||/^(INPUT|TEXTAREA|SELECT)$/.
test(t.target.tagName)||(t.key==="ArrowRight"&&mt(om(e,n).href),t.key==="ArrowLeft"&&mt(am(e,n).href))}function om(t,e){
let n=t.plan.steps.at(-1);return e<t.plan.steps.length?{href:`/c/${t.code}/step/${e+1}`,label:"Next",more:`ste\
p ${e+1}`}:n.set_angle_deg===null||!fe(`/c/${t.code}/trial/${e}`)?{href:`/c/${t.code}`,label:"Done: the card",
more:""}:{href:`/c/${t.code}/trial/${e}`,label:"What came out?",more:""}}function $_(t,e,n,s){let{stops:o,watch:a}=ya(
t,e),r=e.number===t.plan.steps.length,l=om(t,e.number);return i`<article class="step" data-test="step">
    ${ga(t,e)} ${o.length?i`<div class="step-stop">${wt(o)}</div>`:d}
    <div class="step-body">
      <div class="step-way">${ha(e,t.part.flats_mm.length)}${ce(e)}</div>
      <section class="step-set" aria-label="What to set">${va(t,e)}</section>
      <section class="step-picture" aria-label="Drawing">${n()}</section>
      <div class="step-bench">${s}</div>
      <section class="step-watch" aria-label="What to watch">
        ${a.length?wt(a):d}
      </section>
      <section class="step-with" aria-label="Tools">
        ${Vh(t.plan,e)} ${da(t.plan,e)}
        ${zs(e.origin)?i`<p class="hint origins" data-test="origins">${zs(e.origin)}</p>`:d}
      </section>
    </div>
    <nav class="step-nav" aria-label="Steps">
      <a class="button" href=${am(t,e.number).href} data-test="back">Back</a>
      ${r||e.set_angle_deg===null?d:pt(`/c/${t.code}/trial/${e.number}`,i`<a class="button" href="/c/${t.code}/trial/${e.
number}" data-test="came-out"
                >What came out?</a
              >`)}
      <a class="button next" href=${l.href} data-test="next"
        >${l.label}${l.more?i` <small>${l.more}</small>`:d}</a
      >
    </nav>
  </article>`}var f_,am,im=$(()=>{_();Mt();it();te();qa();Ct();Un();tt();je();ke();xi();q();ss();lt();$a();sa();
dl();xn();ve();ka();f_=(t,e)=>i`<div class="state" data-test="no-step">
    <strong>There is no step ${e}</strong>This card has ${t.plan.steps.length}.
    <span class="buttons"><a class="button" href="/c/${t.code}">Open the card</a></span>
  </div>`;am=(t,e)=>({href:e>1?`/c/${t.code}/step/${e-1}`:`/c/${t.code}`,label:"Back"})});function ul(t){let e=t.trim().replace(",",".").replace(/\s*(°|deg)$/,"");if(!/^(\d+\.?\d*|\.\d+)$/.test(e))return null;
let n=Number(e);return n>0&&n<180?n:null}function ro(t){let e={},n={},s=t.places==="one"?[["measured_deg",t.one]]:
[["left_deg",t.left],["middle_deg",t.middle],["right_deg",t.right]];for(let[o,a]of s){if(a.trim()==="")continue;
let r=ul(a);r===null?n[o]=[t.places==="one"?lm:b_]:e[o]=r}return!Object.keys(e).length&&!Object.keys(n).length&&
(n[s[0][0]]=[lm]),{angles:e,wrong:n}}function cm(t,e,n){let s=y_(e),o=t.corrections??[],a=h=>Math.abs(h.measured_deg-
s),r=o.reduce((h,p)=>h&&a(h)<=a(p)?h:p,o[0]);if(!r||a(r)>w_||n.set_angle_deg===null)return null;let l=o.map(h=>h.
measured_deg);if(s<Math.min(...l)||s>Math.max(...l))return null;let c={row:r.measured_deg,set_angle_deg:r.set_angle_deg+
(n.set_angle_deg-t.set_angle_deg),punch_depth_mm:n.punch_depth_mm===null?null:r.punch_depth_mm+(n.punch_depth_mm-
t.punch_depth_mm)};return le(t,c)?c:null}function y_(t){let e=Object.values(t);return e.reduce((n,s)=>n+s,0)/e.
length}function ys(t){return t?.correction?.set_angle_deg?t.correction:t?.table??null}var lm,b_,w_,io=$(()=>{_n();
lm="Type the angle between the flats in degrees, such as 90.5. Square is 90.",b_="Degrees, such as 90.5";w_=.5});function dm(t,e,n,{save:s,draw:o}){let{typed:a,wrong:r}=n,l=(h,p,u,m={})=>O({name:p,label:u,value:a[h],wrong:r[p],
change:g=>Object.assign(a,{[h]:g}),...m}),c=n.used?.set_angle_deg??_e(t,e).set_angle_deg;return i`<form
    class="trial-form"
    novalidate
    data-test="trial-form"
    @submit=${h=>{h.preventDefault(),s()}}>
    <div class="trial-main">
      <h2>What came out? <small>Wanted ${f(T(e.included_angle_deg))}</small></h2>
      ${n.general?i`<p class="wrong" role="alert" data-test="wrong">${n.general}</p>`:d}
      <div class="trial-angles ${a.places}">
        ${a.places==="one"?l("one","measured_deg","Angle measured",{keys:"decimal",unit:"°"}):[l("left","left\
_deg","Left",{keys:"decimal",unit:"°"}),l("middle","middle_deg","Middle",{keys:"decimal",unit:"°"}),l("right",
"right_deg","Right",{keys:"decimal",unit:"°"})]}
      </div>
      ${G({name:"places",label:"Measured at",value:a.places,options:[["one","One place"],["three","Left, middl\
e, right"]],change:h=>{Object.assign(a,{places:h}),o()}})}
      <div class="trial-more">
        ${l("set","set_angle_deg","Angle that was set",{keys:"decimal",unit:"°",placeholder:c===null?"":T(c).
text,hint:"Leave it if it was set as shown."})}
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
  </form>`}var hm=$(()=>{_();Mt();L();J()});function pm(t,e,n,{again:s,keep:o}){let a=ys(n),r=e.number===t.plan.steps.length;return i`<div
    class="trial-result"
    data-test="trial-result"
    data-waits=${n.waits?"true":"false"}>
    <div class="trial-main">
      <h2>${qe(n.trial)} <small>wanted ${f(T(e.included_angle_deg))}</small></h2>
      ${n.waits?i`<p class="waits" data-test="waits">
              <b>Saved here, not yet in the shop. Waiting:</b> the shop does not answer. It goes out by
              itself.
            </p>`:i`<p data-test="sent">Saved in the shop, on the card.</p>`}
      ${a?__(a):Fh(e,n)}
      ${a?i`<p class="basis" data-test="basis">${v_(n)}</p>`:d}
      ${k_(n.correction)}
      ${a?P("cards.revise",x_(n,o),i`<p class="hint" data-test="owners">The owner can make this the card's setting.</p>`):
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
  </div>`}function v_({correction:t,table:e}){return t?t.what:`Worked out on this device, from the card’s own \
table at ${f(T(e?.row??null))}. The shop works it out again when the result arrives.`}function k_(t){let e=t?.
tilt_mm_per_m;return e==null?d:i`<p data-test="tilt">
    Left and right differ: about ${ut(Math.abs(e),2)} mm in each metre,
    ${e>0?"the right end deeper":"the left end deeper"}.
  </p>`}function x_(t,e){return t.kept==="kept"?i`<p class="kept" data-test="kept" role="status">
      <b>${t.where==="here"?"Saved here, not yet in the shop.":"Kept."}</b> ${t.words}
    </p>`:i`<div class="buttons">
      <button class="button" data-test="keep" ?disabled=${t.kept==="asking"} @click=${e}>
        ${t.kept==="asking"?"Keeping…":"Keep this setting"}
      </button>
    </div>
    <p class="wrong" role="alert" data-test="keep-fault">${t.words}</p>`}var __,um=$(()=>{_();io();L();Pi();lt();
xn();ws();__=t=>i`<div class="set-figures" data-test="new-setting">
    ${Qt("Angle now",T(t.set_angle_deg),"new-angle")}
    ${t.punch_depth_mm===null?d:Qt("Depth now",w(t.punch_depth_mm,{digits:2}),"new-depth")}
  </div>`});async function mm(t,e,n,s){let o=ys(n);if(!(!o||n.kept==="asking")){Object.assign(n,{kept:"asking",words:""}),
s();try{let a=await Fe(t,{settings:[...t.settings.filter(r=>r.step!==e.number),T_(e,o,n.trial)]},{reason:`Step\
 ${e.number} set from a piece that came out at ${qe(n.trial)}`});Object.assign(t,a.card),Object.assign(n,{kept:"\
kept",where:a.where,words:S_(a)}),H()}catch(a){Object.assign(n,{kept:"no",words:a instanceof Error?a.message:String(
a)})}s()}}function S_({where:t,card:e}){return t==="shop"?`Revision ${e.revision} of the card has it. Steps sh\
ow it from now on.`:t==="settle"?"The card was changed meanwhile. Both are kept: settle on the card which hold\
s.":"Steps show it on this device from now on; it goes to the shop by itself."}var T_,fm=$(()=>{je();ws();io();
bt();T_=(t,e,n)=>({step:t.number,set_angle_deg:e.set_angle_deg,punch_depth_mm:e.punch_depth_mm,trial_id:n.id,reason:`\
Piece came out at ${qe(n)}`})});var $m={};Q($m,{show:()=>M_});async function M_(t){let{code:e,step:n}=t.params;if(!ht(e).whole)return ml(t,Ot(
e));let s={typed:{...gm},used:null,wrong:{},general:"",sending:!1,result:null},o,a=()=>{let r=o.plan.steps[Number(
n)-1];if(!r)return ml(t,i`<p class="state" data-test="no-step">
          There is no step ${n}. <a href="/c/${e}">Open the card</a>
        </p>`);t.title(`${o.title||e}: what came out`),t.render(O_(o,r,s,a))};oe(()=>!s.result&&s.typed.one+s.
typed.left+s.typed.note?"Leave without saving what you measured?":null);try{await _t(e,r=>{s.sending||s.result||
(o=r,a(),t.ready())},t.signal)}catch(r){t.signal.aborted||ml(t,At(e,r))}}function ml(t,e){t.title("No such car\
d"),t.render(e),t.ready()}function O_(t,e,n,s){let o=()=>A_(t,e,n,s),a=()=>{let l=ys(n.result);Object.assign(n,
{typed:{...gm,places:n.typed.places,lot:n.typed.lot,thickness:n.typed.thickness},used:l??n.used,result:null}),
s()},r=()=>mm(t,e,n.result,s);return i`<article class="step trial-screen" data-test="trial-screen">
    ${ga(t,e)}
    <div class="trial-body">
      ${n.result?pm(t,e,n.result,{again:a,keep:r}):dm(t,e,n,{save:o,draw:s})}
      <aside class="trial-aside" aria-label="Which bend">
        ${zt(t.plan,{mark:e.bend})}
      </aside>
    </div>
  </article>`}async function A_(t,e,n,s){if(n.sending)return;let{angles:o,wrong:a}=ro(n.typed),r=L_(t,e,n);if(r||
(a.set_angle_deg=["Type the angle that was set in degrees, such as 88.5."]),Object.assign(n,{wrong:a,general:""}),
Object.keys(a).length||!r)return s(),Zt(a);let l=N_(t,e,o,r,n.typed);n.sending=!0,s();try{let{answer:c}=await No(
{id:l.id,kind:"trial",code:t.code,body:l}),h=c?.correction??null;n.result={trial:l,correction:h,table:c?null:cm(
e,o,r),waits:!c,kept:"no",words:""},c&&H()}catch(c){n.wrong=c instanceof S?c.errors:{},n.general=c instanceof Error?
c.message:String(c)}n.sending=!1,await Hn(),s(),Zt(n.wrong)}function L_(t,e,n){let{set_angle_deg:s,punch_depth_mm:o}=n.
used??_e(t,e);if(n.typed.set.trim()==="")return{set_angle_deg:s,punch_depth_mm:o};let a=ul(n.typed.set);return a===
null?null:{set_angle_deg:a,punch_depth_mm:null}}function N_(t,e,n,s,o){let a={id:Wt(),revision:t.revision,step:e.
number,bend:e.bend,...n,made_at:new Date().toISOString()};return s.set_angle_deg!==null&&(a.set_angle_deg=s.set_angle_deg),
s.punch_depth_mm!==null&&(a.punch_depth_mm=s.punch_depth_mm),o.flange.trim()&&(a.flange_mm=st(o.flange)),o.radius.
trim()&&(a.radius_mm=st(o.radius)),o.thickness.trim()&&(a.thickness_mm=st(o.thickness)),o.lot.trim()&&(a.lot=o.
lot.trim()),o.note.trim()&&(a.note=o.note.trim()),N().name&&(a.by=N().name),a}var gm,bm=$(()=>{_();V();Mt();it();
io();Et();Ct();Eo();tt();bt();L();ke();J();xn();hm();um();Ge();fm();gm={one:"",left:"",middle:"",right:"",places:"\
one",flange:"",note:"",set:"",lot:"",radius:"",thickness:""}});function ym(t,e,n,s){return t.map(o=>i`<fieldset class="settle-row" data-test="differs" data-field=${o.name}>
        <legend>${o.label} <small>was ${lo(o,o.before)}</small></legend>
        ${wm(o,"shop","In the shop",e,s)} ${wm(o,"yours",n,e,s)}
      </fieldset>`)}function wm(t,e,n,s,o){return i`<label class="settle-side" data-test=${e}>
    <span class="settle-whose"
      ><input
        type="radio"
        name=${t.name}
        value=${e}
        .checked=${s[t.name]===e}
        @change=${()=>o(t.name,e)} />
      ${n}</span
    >
    <span class="settle-value">${lo(t,t[e])}</span>
  </label>`}function lo({name:t},e){if(t==="archived")return e?"Put away":"In use";if(!t.startsWith("settings "))
return e||"nothing";if(!e)return"as planned";let n=e.punch_depth_mm===null||e.punch_depth_mm===void 0?"":`, de\
pth ${f(w(e.punch_depth_mm,{digits:2}))}`;return`${f(T(e.set_angle_deg??null))}${n}`}var fl=$(()=>{_();L()});function _m(t,e){return t.length?i`<section class="panel">
    <h2>Changes that met another one</h2>
    <ol class="rows" data-test="proposals">
      ${t.map(n=>E_(n,e))}
    </ol>
  </section>`:d}function E_(t,e){let n=Dn(t.changes,t.before,{...t.before,settings:t.before.settings??[]});return i`<li class="row revision" data-test="proposal">
    <h3>
      ${t.settled_by?`Settled by revision ${t.settled_by}`:pt(`/c/${e}/settle`,i`<a href="/c/${e}/settle">To settle</a>`,
"To settle")}
    </h3>
    <p class="more">${[Gn(t),t.by?`by ${t.by}`:""].filter(Boolean).join(", ")}</p>
    <ul class="changes">
      ${n.map(s=>i`<li>${s.label}: ${lo(s,s.before)} to ${lo(s,s.yours)}</li>`)}
    </ul>
  </li>`}var vm=$(()=>{_();Fn();lt();fl();Ht()});function km({title:t,note:e,part:n,plan:s,settings:o}){return i`<div class="revision-view" data-test="snapshot">
    <p>
      <b>${t}</b>, ${f(w(n.thickness_mm,{digits:2}))},
      ${It(s)?vn(s.folded):`${f(w(n.bend_length_mm))} long`}${e?i`. ${e}`:d}
    </p>
    ${zt(s)}
    ${o.length?i`<ul class="changes">
            ${o.map(a=>i`<li>Step ${a.step} ${B_(s.steps[a.step-1],a)}: ${a.reason}</li>`)}
          </ul>`:d}
    ${fa(s)} ${wt(s.checks,{quiet:!0})}
  </div>`}function B_(t,e){let n={set_angle_deg:e.set_angle_deg??null,punch_depth_mm:e.punch_depth_mm??null};if(!t||
!le(t,n))return"had a setting beyond its tools";let s=f(w(n.punch_depth_mm,{digits:2}));return`set at ${f(T(n.
set_angle_deg))}, depth ${s}`}var xm=$(()=>{_();es();Ge();_n();L();q();He()});var Tm={};Q(Tm,{show:()=>C_});async function C_(t){let{code:e}=t.params;if(!ht(e).whole)return Sm(t,Ot(e));let n,
s={revisions:null,proposals:[],silent:!1,waiting:[],open:0,snapshot:null,busy:!1},o=()=>t.render(R_(n,s,{look:r,
bringBack:l})),a=async()=>{try{let c=u=>M("GET",`/cards/${e}/${u}`,{signal:t.signal}),[h,p]=await Promise.all(
[c("revisions?limit=200"),c("proposals")]);Object.assign(s,{revisions:h.body.revisions,proposals:p.body.proposals}),
s.silent=!1}catch(c){if(!(c instanceof j))throw c;s.silent=!0}},r=async c=>{if(s.open=s.open===c?0:c,s.snapshot=
null,o(),!!s.open){try{let{body:h}=await M("GET",`/cards/${e}/revisions/${c}`,{signal:t.signal});s.open===c&&(s.
snapshot=h)}catch(h){s.open=0,X(h instanceof Error?h.message:String(h))}o()}},l=async c=>{s.busy=!0,o();try{n=
await P_(n,c),X(`Revision ${c} is back, as revision ${n.revision}.`),s.open=0,H(),await a()}catch(h){X(h instanceof
S&&h.status===412?"The card was changed meanwhile. Look at the history again.":String(h instanceof Error?h.message:
h))}s.busy=!1,o()};gt(()=>n&&o(),t.signal);try{await _t(e,async c=>{n=c,t.title(`${n.title||I(e)}: history`),s.
waiting=(await Ke(e).catch(()=>[])).filter(h=>h.kind==="trial"),o()},t.signal),await a(),o(),t.ready()}catch(c){
t.signal.aborted||Sm(t,At(e,c))}}function Sm(t,e){t.title("No such card"),t.render(e),t.ready()}async function P_(t,e){
let n=await ye(t.code);return la(n,{restore_revision:e,reason:`Revision ${e} brought back`,id:Wt(),...N().name?
{by:N().name}:{}})}function R_(t,e,n){return i`<article class="history" data-test="history-screen">
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${I(t.code)}</a></p>
      <h1>History of ${t.title||"this card"}</h1>
    </header>
    <div class="history-body">
      <section class="panel">
        <h2>What changed</h2>
        ${I_(t,e,n)}
      </section>
      ${_m(e.proposals,t.code)}
      <section class="panel">
        <h2>What came out</h2>
        ${D_(t,e)}
      </section>
    </div>
  </article>`}function I_(t,e,n){return e.silent?i`<p data-test="silent">
      This device has revision ${t.revision}, of
      ${et(t.updated_at)}${t.updated_by?` by ${t.updated_by}`:""}. What was before it is kept
      in the shop, whose server does not answer.
    </p>`:e.revisions?i`<ol class="rows revisions" data-test="revisions">
    ${e.revisions.map(s=>W_(s,t,e,n))}
  </ol>`:i`<p data-test="loading">Asking the shop…</p>`}function W_(t,e,n,{look:s,bringBack:o}){let a=t.revision===
e.revision,r=n.open===t.revision;return i`<li class="row revision" data-test="revision" data-revision=${t.revision}>
    <h3>
      Revision ${t.revision}${a?", as it is now":""}
      ${t.worst==="stop"||t.worst==="caution"?x(t.worst):d}
    </h3>
    <p class="more">${[et(t.at),t.by].filter(Boolean).join(", by ")}</p>
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
      ${a?d:P("cards.revise",i`<button
                class="button"
                data-test="bring-back"
                ?disabled=${n.busy}
                @click=${()=>o(t.revision)}>
                Bring this one back
              </button>`)}
    </div>
    ${r?n.snapshot?km(n.snapshot):i`<p>Fetching it…</p>`:d}
  </li>`}function D_(t,e){return!t.trials.length&&!e.waiting.length?i`<p data-test="no-trials">Nothing measured yet.</p>`:
i`<ol class="rows trials" data-test="trials">
      ${[...e.waiting].reverse().map(n=>bs(n.body,{waiting:n}))}
      ${[...t.trials].reverse().map(n=>bs(n,{step:t.plan.steps[n.step-1]}))}
    </ol>
    ${t.trials_total>t.trials.length?i`<p>The newest ${t.trials.length} of ${t.trials_total}.</p>`:d}`}var Mm=$(
()=>{_();V();Mt();it();te();Et();tt();bt();ke();q();lt();vm();xm();ws();Ht()});var Am={};Q(Am,{show:()=>F_});async function F_(t){let{code:e}=t.params;if(!ht(e).whole)return Om(t,Ot(e));let n,
s={title:"",note:"",archived:!1,typed:!1,sending:!1,wrong:{},general:""},o=()=>{t.title(`${n.title||I(e)}: not\
e`),t.render(H_(n,s,{draw:o,save:()=>j_(n,s,o)}))};oe(()=>s.typed?"Leave without saving what you typed?":null);
try{await _t(e,a=>{s.typed||s.sending||(n=a,Object.assign(s,{title:a.title,note:a.note,archived:a.archived}),o(),
t.ready())},t.signal)}catch(a){t.signal.aborted||Om(t,At(e,a))}}function Om(t,e){t.title("No such card"),t.render(
e),t.ready()}async function j_(t,e,n){if(e.sending)return;let[s,o]=[e.title.trim(),e.note.replace(/\r\n/g,`
`).trim()];if(Object.assign(e,{wrong:s?{}:{title:["A card needs a title."]},general:""}),!s)return n(),Zt(e.wrong);
e.sending=!0,n();try{let{where:a}=await Fe(t,{title:s,note:o,archived:e.archived});e.typed=!1,X(za(a)),H(),mt(
a==="settle"&&fe(`/c/${t.code}/settle`)?`/c/${t.code}/settle`:`/c/${t.code}`)}catch(a){e.wrong=a instanceof S?
a.errors:{},e.general=a instanceof Error?a.message:String(a),e.sending=!1,n(),Zt(e.wrong)}}function H_(t,e,{draw:n,
save:s}){let o=a=>Object.assign(e,a,{typed:!0});return i`<form
    class="note-screen"
    novalidate
    data-test="note-screen"
    @submit=${a=>{a.preventDefault(),s()}}>
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${I(t.code)}</a></p>
      <h1>${P("cards.revise","Note and title","Note")}</h1>
    </header>
    ${e.general?i`<p class="wrong" role="alert" data-test="wrong">${e.general}</p>`:d}
    ${fn({name:"note",label:"Note",value:e.note,lines:5,wrong:e.wrong.note,change:a=>o({note:a})})}
    ${P("cards.revise",[O({name:"title",label:"Title",value:e.title,wrong:e.wrong.title,change:a=>o({title:a})}),
G({name:"archived",label:"This card",value:e.archived?"away":"use",options:[["use","In use"],["away","Put away"]],
change:a=>{o({archived:a==="away"}),n()}})])}
    <p class="hint">
      This works without the shop too: it is saved here and goes out by itself.
      ${P("cards.revise","To change the part itself, use Edit: that is planned by the shop, so the shop must a\
nswer.","The owner changes the rest of the card.")}
    </p>
    <div class="buttons">
      <button class="button next wide" data-test="save" ?disabled=${e.sending}>
        ${e.sending?"Saving…":"Save"}
      </button>
    </div>
  </form>`}var Lm=$(()=>{_();Mt();it();V();je();te();Ct();Un();bt();ke();lt();J();gs()});var Em={};Q(Em,{show:()=>U_});async function U_(t){let{code:e}=t.params;if(!ht(e).whole)return Nm(t,Ot(e));let n,
s={proposal:null,rows:[],mine:!1,chosen:{},sending:!1,fault:""},o=()=>{t.title(`${n.title||I(e)}: to settle`),
t.render(V_(n,s,c))},a=async h=>{if(!h||s.sending)return;let p=[n?.etag,s.proposal?.id].join();n=h,[s.proposal]=
n.proposals;let{changes:u={},before:m={}}=s.proposal??{};s.rows=Dn(u,m,n),s.mine=!!(s.proposal&&await mo(s.proposal.
id).catch(()=>{})),p!==[n.etag,s.proposal?.id].join()&&(s.chosen={}),o(),t.ready()},r=async()=>a(await vi(e).catch(
()=>{})),c={keep:async()=>{Object.assign(s,{sending:!0,fault:""}),o();try{let h=await Fe(n,Cc(s.rows,s.chosen,
n),{settles:[s.proposal.id],reason:"Settled"});X(za(h.where)),s.sending=!1,await r(),H()}catch(h){Object.assign(
s,{sending:!1,fault:h instanceof Error?h.message:String(h)}),o()}},choose:(h,p)=>{s.chosen[h]=p,o()},all:h=>{for(let{
name:p}of s.rows)s.chosen[p]=h;o()}};document.addEventListener("sync",r,{signal:t.signal});try{await _t(e,async h=>a(
await vi(e).catch(()=>{})??h),t.signal)}catch(h){t.signal.aborted||Nm(t,At(e,h))}}function Nm(t,e){t.title("No\
 such card"),t.render(e),t.ready()}function V_(t,e,n){return i`<article class="settle" data-test="settle-screen">
    <header>
      <p><a class="button" href="/c/${t.code}" data-test="to-card">‹ ${I(t.code)}</a></p>
      <h1>${e.proposal?"Two changes met":"Nothing to settle"} <small>${t.title}</small></h1>
    </header>
    ${e.proposal?G_(t,e,n):i`<p data-test="settled">
            Every change of this card is settled. Both sides are in its
            <a href="/c/${t.code}/history">history</a>.
          </p>`}
  </article>`}function G_(t,{proposal:e,rows:n,mine:s,chosen:o,sending:a,fault:r},l){let c=n.filter(({name:p})=>!o[p]).
length,h=s?"Yours":e.by?`By ${e.by}`:"The other one";return i`<p data-test="why">
      ${s?"You changed":e.by?`${e.by} changed`:"Somebody changed"} this card
      (${Gn(e)}) while it was changed in the shop (revision ${t.revision},
      ${et(t.updated_at)}${t.updated_by?`, ${t.updated_by}`:""}). Choose what holds. Both
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
            ${ym(n,o,h,l.choose)}`:i`<p data-test="same-now">The shop has the same by now. Nothing is lost whatever you do.</p>`}
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
    </div>`}var Bm=$(()=>{_();Fn();Mt();it();je();te();Et();bt();ke();gs();fl();Ht()});function Cm(t,e){let{plan:n}=t,s=nv(n.checks);return i`<article
    class="card-sheet ${n.steps.length<4?"few":n.steps.length>5?"many":""}"
    data-test="card-sheet">
    ${z_(t,e)}
    <figure class="strip ${It(n)?"of-box":""}">
      <figcaption>
        Blank ${Za(n.blank.length_mm)} × ${Za(n.blank.width_mm)},
        ${f(Ps(n.blank.mass_kg))}.
        ${It(n)?q_(n):"Bend lines from the left end."}
      </figcaption>
      ${ps(n.blank,It(n)?{pixels:520,tallest:250,test:"sheet-blank"}:{pixels:960,tallest:40,test:"sheet-blank"})}
    </figure>
    ${K_(n)} ${Y_(t,s)} ${ov(s)}
    <p class="last-line">
      Air bending only. Check the first piece before the rest. The press's and the tools' own plates and
      manuals come first.
    </p>
  </article>`}function q_({blank:t}){let e=({bend:a})=>{let r=t.bend_lines.find(l=>l.bend===a);return`${a} ${F(
r.at_mm)}`},n=a=>t.lines.filter(r=>a.includes(r.side)).map(e).join(", "),[s,o]=[n(["left","right"]),n(["front",
"back"])];return[s&&`Bends from the left end: ${s}.`,o&&`From the front end: ${o}.`,Ei(t),"Inside up."].filter(
Boolean).join(" ")}function z_(t,e){let{part:n,plan:s}=t;return i`<header>
    <div>
      <h2>${t.title}</h2>
      <p class="big-code" data-test="sheet-code">${t.display_code}</p>
      <p>
        <b
          >${e},
          ${Za(n.thickness_mm)}${s.thickness_gauge?i` (${s.thickness_gauge})`:d}</b
        >, ${It(s)?`box ${vn(s.folded)}`:i`bend length ${Za(n.bend_length_mm)}`}.
      </p>
      <p>
        Revision ${t.revision}, ${ln(t.updated_at)}${t.updated_by?`, ${t.updated_by}`:""}.
      </p>
      ${t.note?i`<p class="note">${t.note}</p>`:d}
    </div>
    ${s.section?zt({...s,part:n},{pixels:440,tallest:280,test:"sheet-section"}):d}
    <img
      class="qr"
      src="/api/v1/cards/${t.code}/qr.svg"
      alt="QR code that opens this card"
      data-test="sheet-qr"
      @error=${o=>o.target.setAttribute("hidden","")} />
  </header>`}function K_(t){let e=n=>{let s=Ni(n,t.steps);return s?i`, <b data-test="sheet-turned">${s}</b>`:d};
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
            <td>${Ai(n)}</td>
            <td>${Li(n)||"–"}</td>
            <td>${n.steps.length===t.steps.length?"all":n.steps.join(", ")}</td>
          </tr>`)}
    </tbody>
  </table>`:i`<p><b>No tool in the crib does this.</b></p>`}function Y_(t,e){let n=t.part.flats_mm.length;return i`<table class="paper-steps">
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
      ${t.plan.steps.map(s=>J_(t,s,e.filter(({steps:o})=>o.includes(s.number)),n))}
    </tbody>
  </table>`}function J_(t,e,n,s){let o=_e(t,e);return i`<tr data-test="sheet-step-${e.number}">
    <th scope="row">
      <span class="number">${e.number}</span> bend ${e.bend} ${e.side??""}
      ${e.direction}${e.operation&&e.operation!=="bend"?i`<br />${e.operation}`:d}
    </th>
    <td class="picture">
      ${X_(t.plan,e)}${e.drawing?Ja(e):"no drawing"}${Q_(e,t.plan.tools)}
    </td>
    <td class="figures-cell">
      X <b data-test="sheet-gauge-x">${w(e.gauge_x_mm).text}</b><br />R
      <b>${w(e.gauge_r_mm).text}</b>${tv(e)}
    </td>
    <td class="figures-cell">
      ${rv(e,o)}<br />
      <span class="small"
        >${Z_(e)}${iv(o)?i`<br />from a first piece`:d}</span
      >
    </td>
    <td class="move">
      ${ns(e)}
      <span class="small"
        >${e.inside_face==="up"?"Top":"Bottom"} face
        up${e.gauged_end?`, ${Js(e,s)} to the gauge`:""}.</span
      >${ce(e,{short:!0})}
    </td>
    <td>${ev(n)}</td>
    <td class="pen">
      <span
        >${e.included_angle_deg?f(T(e.included_angle_deg)).replace(".0°","°"):"flat"}
        wanted</span
      >
    </td>
  </tr>`}function Z_(t){let e=Qo(t);return e===d?d:i`<span data-test="sheet-force">allow for ${e}</span>`}function X_(t,e){
let n=ba(t,e);return n?i`<div class="pieces" data-test="sheet-station">
        ${n}: ${e.punch}${e.punch_turned?" turned round":""} over ${e.die}
      </div>`:d}function Q_({segments_mm:t,punch:e,die:n},s){return t?[["punch",e],["die",n]].map(([o,a])=>{let r=s.
find(c=>c.kind===o&&c.code===a)?.segments_mm??[],l=t[o]??[];return!l.length||l.length===r.length?d:i`<div class="pieces" data-test="own-pieces">
      ${o} ${l.map(F).join(" + ")} only
    </div>`}):d}function tv({hits:t}){return t?i`<br /><span class="small"
          >${t.count} hits, ${w(t.pitch_mm,{digits:2}).text} apart</span
        >`:d}function ev(t){return["stop","caution","unknown"].map(n=>({level:n,letters:t.filter(s=>s.level===
n).map(({letter:s})=>s)})).filter(({letters:n})=>n.length).map(({level:n,letters:s})=>i`<div class="mark">${x(
n)} <b>${s.join(" ")}</b></div>`)}function nv(t){let e=new Map;for(let[n]of Pm)for(let s of t.filter(o=>jt(o)===
n)){let o=`${n} ${s.template} ${s.do_template??""}`,a=e.get(o)??{letter:sv(e.size),level:n,checks:[],steps:[]};
a.checks.push(s),a.steps.push(...s.steps??(s.step?[s.step]:[])),e.set(o,a)}return[...e.values()]}function ov(t){
return i`<div class="remarks" data-test="sheet-remarks">
    ${Pm.map(([e,n])=>{let s=t.filter(o=>o.level===e);return s.length?i`<section data-level=${e}>
        <h3>${x(e,n)}</h3>
        <ul>
          ${s.map(({letter:o,checks:a,steps:r})=>i`<li>
                <b>${o}</b>
                ${r.length?i`<b>Step ${r.join(", ")}.</b> `:d}${av(a)}
              </li>`)}
        </ul>
      </section>`:d})}
  </div>`}function av(t){let{template:e,do_template:n=""}=t[0];return`${e} ${n}`.replace(/\{(\w+)\}/g,(s,o)=>[
...new Set(t.map(({numbers:a})=>f(on(o,a[o]))))].join(" / ")).trim()}function rv(t,{set_angle_deg:e,punch_depth_mm:n}){
return e===null&&t.die?i`<b>no setting</b>`:i`<b>${f(T(e))}</b><br />depth <b>${w(n,{digits:2}).text}</b>`}var Za,
Pm,sv,iv,Rm=$(()=>{_();es();Ge();Jt();pl();Mt();L();re();q();ss();He();wa();ve();Ht();Za=t=>f({text:F(t),unit:B()});
Pm=[["stop","Stop"],["caution","Caution"],["unknown","Unknown"]];sv=t=>String.fromCharCode(97+t%26)+(t<26?"":String(
Math.floor(t/26)+1));iv=t=>t.fromTrial&&t.set_angle_deg!==null});function _s(t){return G({name:"paper",label:"Paper",value:N().paper,options:[["A4","A4"],["Letter","Letter"]],
change(e){Se({paper:e==="Letter"?"Letter":"A4"}),t()}})}function vs(t="Print"){return i`<button type="button" class="button next" data-test="print" @click=${()=>window.
print()}>
    ${t}
  </button>`}function Xa(t,{lying:e=!1,about:n}){return i`<div class="sheet-frame" tabindex="0" role="region" aria-label=${n}>
    <div class="paper ${N().paper.toLowerCase()} ${e?"lying":"upright"}" data-test="sheet">
      ${t}
    </div>
  </div>`}var Qa=$(()=>{_();tt();J()});var Wm={};Q(Wm,{show:()=>lv});async function lv(t){let{code:e}=t.params;if(!ht(e).whole)return Im(t,Ot(e));let n,
s=[],o=async()=>{s=(await ue().catch(()=>{}))?.metals??s,n&&a()};function a(){let r=s.find(({code:l})=>l===n.part.
metal)?.name??n.part.metal;t.title(`${n.title}, on paper`),t.render(i`<p class="crumb screen-only"><a href="/c/${e}">${n.
title}</a></p>
        <h1 class="screen-only">On paper</h1>
        <div class="paper-tools screen-only">${_s(a)}${vs("Print the card")}</div>
        ${Xa(Cm(n,r),{about:"The card as it prints"})}`)}gt(()=>n&&a(),t.signal),document.addEventListener("sy\
nc",o,{signal:t.signal}),await o();try{await _t(e,r=>{n=r,a(),t.ready()},t.signal)}catch(r){t.signal.aborted||
Im(t,At(e,r))}}function Im(t,e){t.title("No such card"),t.render(e),t.ready()}var Dm=$(()=>{_();Mt();it();tt();
vt();ke();Rm();Qa()});var Hm={};Q(Hm,{show:()=>cv});async function cv(t){let{code:e}=t.params;if(!ht(e).whole)return jm(t,Ot(e));let n=N().
units,s=Fm[0],o;async function a(l){s=l,r(),await document.querySelector(".label-print").decode().catch(()=>{}),
window.print()}function r(){t.title(`Label of ${o.title}`),t.render(i`<p class="crumb screen-only"><a href="/c/${e}">${o.
title}</a></p>
        <h1 class="screen-only">Label</h1>
        <div class="paper-tools screen-only">
          ${G({name:"units",label:"Printed in",value:n,options:[["mm","mm"],["inch","inch"]],change:l=>{n=l===
"inch"?"inch":"mm",r()}})}
        </div>
        <div class="labels-both screen-only">
          ${Fm.map(l=>dv(o,l,n,()=>a(l)))}
        </div>
        <p class="screen-only">
          One label prints at true size on a page of its own size, for a label printer.
          ${pt("/labels",i`For office paper, lay them out <a href="/labels?codes=${e}">on a sheet</a>.`)}
        </p>
        <img
          class="label-print ${s.print}"
          src=${tr(e,s.size,n,"svg")}
          alt=""
          hidden />`)}try{await _t(e,l=>{o=l,r(),t.ready()},t.signal)}catch(l){t.signal.aborted||jm(t,At(e,l))}}
function dv(t,{size:e,words:n,print:s},o,a){let r=`label-${t.code}-${e}`;return i`<section class="panel label-panel" data-test="label-${e}">
    <h2>${n}</h2>
    <div class="label-ground">
      <img
        class="label-view ${s}"
        src=${tr(t.code,e,o,"svg")}
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
        href=${tr(t.code,e,o,"svg")}
        data-test="svg-${e}"
        >SVG</a
      >
      <a
        class="button"
        download="${r}.png"
        href=${tr(t.code,e,o,"png")}
        data-test="png-${e}"
        >PNG</a
      >
    </div>
  </section>`}function jm(t,e){t.title("No such card"),t.render(e),t.ready()}var Fm,tr,Um=$(()=>{_();Mt();it();
tt();ke();J();lt();Fm=[{size:"50x25",words:"50 × 25 mm, for a bin",print:"small"},{size:"100x50",words:"100 ×\
 50 mm, for a shelf or a door",print:"large"}];tr=(t,e,n,s)=>`/api/v1/cards/${t}/label.${s}?size=${e}&units=${n}`});var Vm={};Q(Vm,{show:()=>pv});async function pv(t){t.title("Labels on a sheet"),t.render(Tt("Fetching the card\
s…"));let e=(await mv(t.signal)).filter(b=>!b.archived);if(!e.length)return t.render(xt("No cards yet",P("ca\
rds.create",i`Save a part as a card first. <a href="/part">New part</a>`))),t.ready();let n=new Set((t.query.get(
"codes")??"").split(",").filter(b=>e.some(y=>y.code===b))),s="50x25",o=N().units,a="0",r="",l={key:"",pages:[],
wrong:""},c=b=>new URLSearchParams({codes:[...n].join(","),size:s,paper:N().paper,units:o,skip:a.trim()||"0",page:String(
b)}),h=(b,y)=>`/api/v1/labels/sheet.${b}?${c(y)}`;async function p(){let b=String(c(1));if(!n.size)l={key:b,pages:[],
wrong:""};else try{let{body:y}=await M("GET",`/labels/sheet.json?${c(1)}`,{signal:t.signal});l={key:b,pages:Array.
from({length:y.pages},(W,C)=>C+1),wrong:""}}catch(y){l={key:b,pages:[],wrong:y instanceof Error?y.message:String(
y)}}b===String(c(1))&&g()}let u=b=>{b(),g(),p()},m=b=>u(()=>n.has(b)?n.delete(b):n.add(b));function g(){let b=e.
filter(y=>`${y.code} ${y.title}`.toLowerCase().includes(r.trim().toLowerCase()));t.render(i`<h1 class="screen-only">Labels on a sheet</h1>
        <div class="labels-desk">
          <div class="screen-only">
            <section class="panel">
              <h2>
                Which cards <span class="soft" data-test="picked">${n.size} of ${e.length}</span>
              </h2>
              ${e.length>8?O({name:"find",label:"Find",value:r,change:y=>{r=y,g()}}):d}
              <div class="buttons">
                <button
                  type="button"
                  class="button"
                  data-test="all"
                  @click=${()=>u(()=>b.forEach(y=>n.add(y.code)))}>
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
              ${G({name:"size",label:"Label size",value:s,options:hv,change:y=>u(()=>s=y)})}
              ${_s(()=>u(()=>{}))}
              ${G({name:"units",label:"Printed in",value:o,options:[["mm","mm"],["inch","inch"]],change:y=>u(()=>o=
y==="inch"?"inch":"mm")})}
              ${O({name:"skip",label:"Places used already",value:a,keys:"numeric",hint:"Counted along the rows\
 from the top left.",change:y=>u(()=>a=y)})}
            </section>
          </div>
          <section class="sheets" aria-label="Sheets as they print">
            ${l.pages.length?i`<div class="buttons screen-only">
                      ${vs(l.pages.length===1?"Print the sheet":`Print ${l.pages.length} sheets`)}
                    </div>
                    ${l.pages.map(y=>uv(y,l.pages.length,h))}`:i`<p class="state screen-only" data-test="no-sheet">
                    ${l.wrong||"Pick cards, and the sheet appears here."}
                  </p>`}
          </section>
        </div>`)}gt(g,t.signal),g(),await p(),t.ready()}function uv(t,e,n){let s=`labels-${t}`;return i`<figure class="label-sheet ${N().
paper.toLowerCase()}">
    <img src=${n("svg",t)} alt="Sheet ${t} of ${e} with labels" data-test="sheet-${t}" />
    <figcaption class="screen-only">
      <span>Sheet ${t} of ${e}, ${N().paper}. Print at 100 %, without fitting to the page.</span>
      <div class="buttons">
        <a class="button" download="${s}.svg" href=${n("svg",t)} data-test="sheet-svg-${t}"
          >SVG</a
        >
        <a class="button" download="${s}.png" href=${n("png",t)} data-test="sheet-png-${t}"
          >PNG</a
        >
      </div>
    </figcaption>
  </figure>`}async function mv(t){try{let e=[];for(;;){let{body:n}=await M("GET",`/cards?limit=100&offset=${e.
length}`,{signal:t});if(e.push(...n.cards),e.length>=n.total||!n.cards.length)return e}}catch(e){let n=await xe().
catch(()=>[]);if(t.aborted||!n.length)throw e;return n}}var hv,Gm=$(()=>{_();V();tt();vt();J();lt();Qa();Bt();
hv=[["50x25","50 × 25 mm"],["100x50","100 × 50 mm"]]});function qm(t){return i`<article class="chart-sheet" data-test="chart">
    <header>
      <h2>${t.metal.name}</h2>
      <p>
        ${t.press?.name??"No press entered"}${t.press?i`, ${f($t(t.press.force_kn))}`:d}.
        Held against ratings at a bend length of ${f(w(t.bend_length_mm,{digits:0}))}.
      </p>
      <p class="printed">Printed ${ln(new Date().toISOString())}</p>
    </header>
    <table>
      <thead>
        <tr>
          <th scope="col" class="corner">Sheet<span class="sub">${B()}</span></th>
          ${t.dies.map(e=>i`<th scope="col" data-test="die-${e.code}">
                V ${F(e.v_opening_mm)}<span class="sub">${e.code}</span>
                <span class="sub"
                  >${e.rating_kn_per_m===null?"rating ?":f(Lt(e.rating_kn_per_m))}</span
                >
              </th>`)}
        </tr>
      </thead>
      <tbody>
        ${t.rows.map(e=>i`<tr>
              <th scope="row">${F(e.thickness_mm)}<span class="sub">${e.gauge??""}</span></th>
              ${e.cells.map(fv)}
            </tr>`)}
      </tbody>
    </table>
    ${$v()}
    <ul class="chart-words">
      ${t.words.map(e=>i`<li>${e}</li>`)}
    </ul>
  </article>`}function fv(t){return t.usable?i`<td
    class="cell ${t.level}"
    data-level=${t.level}
    data-die=${t.die}
    title=${t.why}>
    <span class="first"
      ><span class="force">${qt(t,"force_kn_per_m").text}</span>${t.level==="stop"?d:i`<span class="expected">${Re(
t,"force_kn_per_m").text}</span>`}${t.level==="ok"?d:x(t.level,gv(t))}</span
    >
    ${t.level==="stop"?d:i`<span class="rest"
            >${w(t.min_flange_mm).text} · R ${w(t.inside_radius_mm).text}</span
          >`}
  </td>`:i`<td class="unusable" data-level="none" data-die=${t.die} title=${t.why}>
      <span aria-hidden="true">–</span><span class="unseen">${t.why}</span>
    </td>`}function gv({level:t,limit:e,share_percent:n}){return t==="unknown"?"rating?":`${e??""}${n===null?"":
` ${Math.round(n)} %`}`.trim()||(t==="stop"?"over":"near")}function $v(){let t=Lt(0).unit;return i`<ul class="chart-legend">
    <li>
      <b>Large:</b> force to allow for, ${t}: set the press by it. <b>Beside it:</b> force expected.
      <b>Below:</b> smallest flange · inside radius, ${w(0).unit}.
    </li>
    <li>${x("stop","die 120 %")} over a rating: do not bend this</li>
    <li>${x("caution","die 85 %")} over 80 % of a rating</li>
    <li>${x("unknown","rating?")} a rating is not known</li>
    <li><b>–</b> outside the die's range</li>
  </ul>`}var zm=$(()=>{_();Jt();L();re();q();Ht()});var Km={};Q(Km,{show:()=>bv});async function bv(t){t.title("Wall chart"),t.render(Tt("Working out the chart…"));
let e=(await ct("metals",t.signal)).items;if(!e.length)return t.render(xt("No metals yet",i`A chart needs one. ${P(
ot.metals,i`<a href="/shop/metals">Metals</a>`)}`)),t.ready();let n=t.query.get("metal")??e[0].code,s=t.query.
get("bend_length")??"",o=null,a=null,{ask:r}=$e(async(p,u)=>(await M("GET",`/chart?${l()}`,{signal:u,timeout:2e4})).
body,p=>{o=p.answer??o,a=p.error??null,h(),t.ready()},t.signal);function l(){let p=new URLSearchParams({metal:n});
return s.trim()&&p.set("bend_length_mm",st(s)),p}function c(){let p=new URLSearchParams({metal:n,...s.trim()?{
bend_length:s.trim()}:{}});history.replaceState(null,"",`/chart?${p}`),r(null),h()}function h(){t.render(i`<h1 class="screen-only">Wall chart</h1>
        <div class="paper-tools screen-only">
          ${Y({name:"metal",label:"Metal",value:n,options:e.map(({code:p,name:u})=>[p,u]),change:p=>{n=p,c()}})}
          ${O({name:"bend_length",label:"Checked at a bend length of",value:s,unit:B(),keys:"decimal",placeholder:B()===
"mm"?"1000":"39.37",change:p=>{s=p,c()}})}
          ${_s(h)} ${vs("Print the chart")}
        </div>
        ${a?Ne(a):d}
        ${o?Xa(qm(o),{lying:!0,about:"Wall chart as it prints"}):a?d:Tt("Working out the chart…")}`)}gt(h,t.
signal),r(null,{now:!0})}var Ym=$(()=>{_();V();yt();tt();L();zm();J();lt();Qa();Bt();js()});function Jm(t,{fault:e,takeOut:n}){return i`<section class="panel" data-test="panel-benches">
    <h2>Benches <span class="soft">${t.length}</span></h2>
    ${e?i`<p class="wrong" role="alert" data-test="bench-fault">${e}</p>`:d}
    ${t.length?i`<ul class="plain-list bench-list">
            ${t.map(s=>i`<li data-test="bench-row" data-name=${s.name}>
                  <span><b>${we(s.name)}</b> ${wv(s)}</span>
                  ${P("benches.remove",i`<button
                      type="button"
                      class="button"
                      data-test="take-bench-out"
                      aria-label="Take it out… ${we(s.name)}"
                      @click=${()=>n(s)}>
                      Take it out…
                    </button>`)}
                </li>`)}
          </ul>`:i`<p>None yet.</p>`}
    <p class="hint">
      A large screen at a press becomes one when it opens the shop's address with
      <a href="/bench">/bench</a> behind it.
    </p>
  </section>`}var wv,Zm=$(()=>{_();De();it();lt();wv=({code:t})=>t?i`<a href="/c/${t}">${I(t)}</a>`:i`<span class="soft">empty</span>`});function Xm(t){let e=t.map(({ring:o})=>Gt([o])),n=gl-2*nr,s=Math.min(...e.map(([o,a,r,l])=>Math.min(n/(r-o),n/
(l-a))));return t.map(({name:o,ring:a},r)=>yv(o,a,e[r],s))}function yv(t,e,[n,s,o,a],r){let l=Math.round((a-s)*
r+2*nr),c=(gl-(o-n)*r)/2-n*r,h=u=>c+u*r,p=u=>nr+(a-u)*r;return i`<figure>
    <svg
      class="drawing outline"
      viewBox="0 0 ${gl} ${l}"
      role="img"
      aria-label="${t||"Outline"} to scale, ${er(o-n)} wide, ${er(a-s)} high"
      data-test="outline">
      ${_v(n,o,h(0),l)}
      <path
        class="tool"
        d=${St(e)}
        transform="translate(${c} ${nr+a*r}) scale(${r})" />
      ${vv(h(n),h(o),l-16,er(o-n))}
      ${kv(p(s),p(a),h(o)+16,er(a-s))}
    </svg>
    ${t?i`<figcaption>${t}</figcaption>`:d}
  </figure>`}function _v(t,e,n,s){return t>0||e<0?d:k`<path class="centre" d="M${n} 6V${s-6}"/>`}function vv(t,e,n,s){
return k`<path class="dimension" d="M${t} ${n}H${e}M${t} ${n-5}v10M${e} ${n-5}v10"/>
    <text class="measure" x=${(t+e)/2} y=${n-8} text-anchor="middle" font-size="20">${s}</text>`}function kv(t,e,n,s){
let o=(t+e)/2;return k`<path class="dimension" d="M${n} ${t}V${e}M${n-5} ${t}h10M${n-5} ${e}h10"/>
    <text class="measure" x=${n+22} y=${o} text-anchor="middle" font-size="20"
      transform="rotate(-90 ${n+22} ${o})">${s}</text>`}function sr(t,e){return t?.length?i`<svg class="small-outline" viewBox=${Gc(
e,2)} aria-hidden="true">
    <path class="tool" d=${St(t)} />
  </svg>`:d}function or(t){let e=t.filter(n=>n?.length);return e.length?Gt(e):[0,0,1,1]}var gl,nr,er,ar=$(()=>{
_();L();Le();Jt();gl=360,nr=50;er=t=>f({text:F(t),unit:B()})});function Qm(t,e){let n=or(e.map(s=>s.outline_mm));return i`<ul class="rack">
    ${e.map(s=>i`<li>
          <a
            href="/shop/${t}/${encodeURIComponent(s.code)}"
            aria-label="${s.code}, ${s.name}${s.rating_kn_per_m===null?", rating unknown":""}">
            ${sr(s.outline_mm,n)}<span class="under"
              >${s.code}${s.rating_kn_per_m===null?i`<span class="unknown-mark">?</span>`:d}</span
            >
          </a>
        </li>`)}
  </ul>`}var tf=$(()=>{_();ar()});var ef={};Q(ef,{show:()=>xv});async function xv(t){t.title("Shop");let[{press:e,kept:n},s,o,a,r,l]=await Promise.
all([Zo(t.signal),ct("punches",t.signal),ct("dies",t.signal),ct("holders",t.signal),ct("metals",t.signal),bn(t.
signal).catch(()=>null)]),c={benches:l,fault:""};async function h(u){let m=wn(u.name);if(confirm(`Take ${m} ou\
t of the shop? Its card stays as it is. A screen that stands there asks which bench it is.`)){c.fault="";try{await ih(
u.name)}catch(g){c.fault=g instanceof Error?g.message:String(g)}c.benches=await bn(t.signal).catch(()=>c.benches),
p()}}let p=()=>t.render(i`<h1>The shop</h1>
        ${n?i`<p data-test="kept">
                As this device last saw it.
                ${P(ot.press,"Changing anything needs the shop's server.")}
              </p>`:d}
        <div class="shop-grid">
          ${Tv(e)} ${$l("punches",s.items)} ${$l("dies",o.items)}
          ${$l("holders",a.items)}
          <section class="panel" data-test="panel-metals">
            <h2><a href="/shop/metals">Metals</a> <span class="soft">${r.items.length}</span></h2>
            ${pt("/shop/test-bend",i`<a class="button next wide" href="/shop/test-bend" data-test="to-test-bend">Test bend</a>`)}
            <ul class="plain-list metal-list">
              ${r.items.map(Sv)}
            </ul>
          </section>
          ${c.benches?Jm(c.benches,{...c,takeOut:h}):d} ${Mv()}
          ${pt("/crew",i`<section class="panel" data-test="panel-crew">
              <h2><a href="/crew">Crew</a></h2>
              <p>Phones and screens that may see this shop.</p>
              <a class="button wide" href="/crew" data-test="to-crew">Devices and pairing</a>
            </section>`)}
        </div>`);p(),t.ready()}function Tv(t){return t?i`<section class="panel" data-test="panel-press">
    <h2><a href="/shop/press">Press</a></h2>
    <p class="lead-line">${t.name}</p>
    <dl class="plate">
      <div>
        <dt>Force</dt>
        <dd>${f($t(t.force_kn))}</dd>
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
      <p>${x("unknown","No press yet")}</p>
      <p>Without its figures nothing can be checked against it.</p>
      ${P(ot.press,i`<a class="button next wide" href="/shop/press">Enter the press</a>`)}
    </section>`}function $l(t,e){let n=e.filter(o=>o.rating_kn_per_m===null).length,s=e.filter(o=>o.condition===
"damaged"||o.condition==="worn").length;return i`<section class="panel" data-test="panel-${t}">
    <h2><a href="/shop/${t}">${Ce[t].title}</a> <span class="soft">${e.length}</span></h2>
    ${e.length?Qm(t,e):i`<p>None yet. ${P(ot[t],i`<a href="/shop/${t}/+">Add the first</a>`)}</p>`}
    ${n?i`<p>${x("unknown",`${n} without a rating`)}</p>`:d}
    ${s?i`<p>${x("caution",`${s} worn or damaged`)}</p>`:d}
  </section>`}function Mv(){let t=pt("/copies",i`<a class="button wide" href="/copies" data-test="to-copies">Copies and export</a>`);
return pt("/chart",i`<section class="panel" data-test="panel-paper">
      <h2>On paper${t===d?"":", and away"}</h2>
      <div class="stack">
        <a class="button wide" href="/chart" data-test="to-chart">Wall chart</a>
        <a class="button wide" href="/labels" data-test="to-labels">Labels on a sheet</a>
        ${t}
      </div>
      ${t===d?d:i`<p class="hint">
              Whether there is a good copy of the shop; all of it in one open file, out and in.
            </p>`}
    </section>`)}var Sv,nf=$(()=>{_();De();yt();L();Zm();q();lt();tf();Sv=({code:t,name:e})=>i`<li>
    <a href="/shop/metals/${encodeURIComponent(t)}">${e}</a>
    ${pt("/shop/learned/x",i`<a href="/shop/learned/${encodeURIComponent(t)}" data-test="learned-${t}"
        >What the metal taught</a
      >`)}
  </li>`});function of(t,{took:e,show:n,signal:s}){let o={file:"",busy:!1,choices:{...sf},answer:null,wrong:"",fault:null,
code:"",layers:[]},a=null,r=0;function l(p){return a=p,Object.assign(o,{file:p.name,choices:{...sf},layers:[]}),
h()}function c(p,u){return o.choices={...o.choices,[p]:u},o.choices.origin==="point"&&!o.choices.point?n():h()}
async function h(){if(!a)return;let p=++r;Object.assign(o,{busy:!0,answer:null,wrong:"",fault:null,code:""}),n();
try{if(a.size>Ov)throw new Error("The file is over 2 MB. Save the tool's outline by itself.");let{body:u}=await ho(
`/outlines/dxf?${Av(o.choices,t)}`,a,"image/vnd.dxf",s);if(p!==r)return;Object.assign(o,{answer:u,layers:u.layers}),
e(u)}catch(u){if(p!==r||s.aborted)return;if(o.wrong=u instanceof Error?u.message:String(u),u instanceof S&&u.outline){
let{code:m,layers:g}=u.outline;Object.assign(o,{fault:u.outline,code:m,layers:g.length?g:o.layers})}}o.busy=!1,
n()}return{state:o,choose:l,set:c}}function Av(t,e){let n=Object.entries(t).filter(([s,o])=>o&&(s!=="point"||t.
origin==="point"));return new URLSearchParams([["kind",e],...n])}var sf,Ov,af=$(()=>{V();sf={units:"",layer:"",
origin:"rule",point:"",turn_deg:"0",mirror:"no"},Ov=2e6});async function ks(t,e){let n=await t.read(e),s={kept:n,draft:t.toDraft(n??t.blank),wrong:{},others:[],clash:null,
busy:!1},o=()=>t.fromDraft(s.draft,s.kept??{}),a=()=>t.draw(s),r=()=>t.boxes.filter(({name:b,needed:y})=>y&&b in
s.draft&&!s.draft[b].trim());function l(b,y){s.draft={...s.draft,[b]:y},delete s.wrong[b],oe(()=>"Leave withou\
t saving what you typed?"),t.preview?.(o()),a()}async function c(b){let y=b?Object.fromEntries(r().map(({name:C})=>[
C,["This is needed."]])):{},W=Object.keys(y).length===0;if(Object.assign(s,{busy:W,wrong:y,others:[],clash:null}),
a(),!W)return Zt(y);try{await t.write(b),oe(null),t.done(b);return}catch(C){await h(C)}s.busy=!1,a(),Zt(s.wrong)}
async function h(b){if(b instanceof S&&b.status===412){let y=s.kept;s.kept=await t.read(e);let W=s.kept?t.toDraft(
s.kept):{},C=yd(y,s.kept)?"others changed":s.kept?"this changed":"taken out";s.clash={how:C,differences:C==="t\
his changed"?Ra(s.draft,W,t.boxes):[]}}else if(b instanceof S&&Object.keys(b.errors).length){let{byName:y,others:W}=$d(
b.errors,t.boxes.map(({name:C})=>C));Object.assign(s,{wrong:y,others:W})}else s.others=[`Not saved: ${b instanceof
Error?b.message:b} What you typed is still here.`]}function p(){Object.assign(s,{draft:t.toDraft(s.kept??t.blank),
clash:null}),oe(null),t.preview?.(o()),a()}let u=new Map;function m(b,y){let W=u.get(y)??of(b,{signal:e,show:a,
took:C=>g(y,C)});return u.set(y,W),W}function g(b,{points_mm:y,height_mm:W}){b==="points_mm"&&s.draft.height_mm===
""&&l("height_mm",K(W)),l(b,md(y))}return t.preview?.(o()),{reader:m,state:s,change:l,takeTheirs:p,show:a,save:()=>c(
o()),takeOut:()=>c(null)}}var rr=$(()=>{V();yt();ae();af();Ct();L();ms();J()});function lr(t,e,n){let s=[],{ask:o}=$e(async(a,r)=>(await M("POST","/outline",{body:{kind:t,...Ev(t,a)},signal:r})).
body,({answer:a,error:r})=>{a&&(s=rf(a));let l=r instanceof S&&r.outline?.lines_mm.some(c=>c.length>1)?r.outline:
null;e({parts:s,checks:Nv(a),wrong:r?Bv(r):[],fault:l})},n);return a=>{Lv(t,a)&&o(a)}}function Lv(t,e){let n={
punch:"punches",die:"dies",holder:"holders",press:"press"}[t];return Be(n).filter(({type:s,blank:o,when:a})=>[
"length","number"].includes(s)&&o===void 0&&(!a||a(e))).every(({name:s})=>e[s]!==void 0)&&(e.shape!=="multi_v"||
e.openings.every(s=>s.v_opening_mm&&s.angle_deg&&s.shoulder_radius_mm))}function rf({outline_mm:t,ram:e,bed:n}){
return[{name:"",ring:t},{name:"Ram",ring:e},{name:"Bed",ring:n}].filter(({ring:s})=>s?.length)}function Ev(t,e){
return t==="press"?un(e):{...un(e),code:e.code||"new"}}function Bv(t){if(!(t instanceof S))return["The drawing\
 waits: the shop's server does not answer."];let e=[...new Set(Object.values(t.errors).flat())];return e.length?
e:[t.message]}var ir,Nv,bl=$(()=>{V();yt();ae();js();ir=t=>({parts:rf({...t,...t?.outlines_mm}),checks:[],wrong:[],
fault:null});Nv=t=>(t?.checks??[]).filter(({code:e})=>!e.endsWith("rating-unknown"))});function cr({state:t,change:e},n){let s=n.taken(t.draft.code)?["This code is in use already."]:t.wrong.code;return O(
{name:"code",label:"Code",value:t.draft.code,change:o=>e("code",o),wrong:s,hint:"As marked on the tool. It sta\
ys."})}function dr({state:t,takeOut:e},n,s){let o=`Take ${n.code} out of the shop? Saved cards keep their set-\
up, new plans no longer use this ${s}.`;return dt(ot[n.kind])?i`<div role="alert">
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
    </div>`:i`<div class="buttons"><a class="button" href="/shop/${n.kind}">Back to the list</a></div>`}var xs,
hr=$(()=>{_();yt();Nt();J();xs=(t,e)=>dt(t)?e:i`<p data-test="owners">The owner keeps these figures.</p>
        <fieldset class="only-read" disabled>${e}</fieldset>`});function pr({code:t,lines_mm:e,edges:n,marks_mm:s}){let o=Gt([...e,s]),a=an(o,wl-2*lf,yl-2*lf),[r,l]=a([o[2],o[1]]),
c=[(wl-r)/2,(yl-l)/2],h=m=>{let[g,b]=a(m);return[g+c[0],-(b+c[1])]},p=!["open","branching"].includes(t),u=`${s.
length} ${s.length===1?"place":"places"} marked`;return i`<svg
    class="drawing fault"
    viewBox="0 0 ${wl} ${yl}"
    role="img"
    aria-label="The outline as far as it was understood, ${u}"
    data-test="outline-fault">
    ${e.map(m=>k`<path class="fault-line" d=${Rs((p?[...m,m[0]]:m).map(h))}/>`)}
    ${n.map(m=>Cv(e[0],m,h))} ${s.map(m=>Pv(h(m)))}
  </svg>`}function Cv(t,e,n){let[s,o]=[t[e-1],t[e%t.length]].map(n);return k`<path class="fault-edge" d=${Rs([
s,o])}/>
    ${cf(s,e)}${cf(o,e%t.length+1)}`}var wl,yl,lf,cf,Pv,_l=$(()=>{_();Le();wl=360,yl=300,lf=30;cf=([t,e],n)=>k`<text class="fault-number" x=${t} y=${-e-
9} text-anchor="middle" font-size="19">${n}</text>`,Pv=([t,e])=>k`<g class="fault-mark" data-test="fault-mark"><circle cx=${t} cy=${-e} r="10"/>
    <path d="M${t-14} ${-e}h28M${t} ${-e-14}v28"/></g>`});function df(t,{state:e,choose:n,set:s}){let{file:o,busy:a,answer:r,wrong:l,fault:c,choices:h,layers:p}=e,u=`dx\
f-${t}`,m=(g,b,y)=>Y({name:`${u}-${g}`,label:b,value:h[g],options:y,change:W=>s(g,W)});return i`<div class="dxf broad" data-test=${u}>
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
                      <b>${o}</b>, read in ${r.units}: ${vl(r.width_mm)} wide,
                      ${vl(r.height_mm)} high, ${r.points_mm.length} points, arcs within
                      ${vl(r.within_mm)}. ${r.rule}${Fv(r)}
                    </p>`:d}
              ${l?i`<p class="wrong" data-test="${u}-wrong">${l}</p>`:d}
            </div>
            ${c?.lines_mm.length?pr(c):d}
            <div class="fields">
              ${m("units","Drawn in",Rv)}
              ${p.length>1||h.layer?m("layer","Layer",[["","all"],...p.map(g=>[g,g])]):d}
              ${m("origin","0, 0 is",Iv)}
              ${h.origin==="point"?O({name:`${u}-point`,label:"Point number",value:h.point,keys:"numeric",on:"\
change",hint:"As the points are listed below, from 1.",change:g=>s("point",g)}):d}
              ${m("turn_deg","Turned",Wv)} ${m("mirror","Mirrored",Dv)}
            </div>`:i`<p class="hint">
            One closed outline of the section: lines, arcs, circles, polylines or splines.
          </p>`}
  </div>`}function Fv({left_out:t}){return t.length?` Left out: ${t.map(({kind:e,count:n})=>`${n} ${e}`).join(
", ")}.`:""}var Rv,Iv,Wv,Dv,vl,hf=$(()=>{_();_l();L();J();Rv=[["","as the file says"],["mm","mm"],["cm","cm"],
["m","m"],["inch","inch"],["ft","foot"]],Iv=[["rule","by its shape"],["drawn","as drawn"],["point","at a point"]],
Wv=[["0","as drawn"],["90","a quarter left"],["180","upside down"],["270","a quarter right"]],Dv=[["no","no"],
["yes","front to back"]];vl=t=>f(w(t,{digits:2}))});function pf({draft:t,change:e,wrong:n}){let s=t.openings??"",o=dn(s),a=n.openings??[];return i`<div class="broad openings" data-test="openings">
    <h3>The V's of the block</h3>
    <p class="hint">
      Each V gets a code to plan with; its pieces are the block's. A face is named as the block is drawn with
      its top up. The middle is measured on the V's own face from the face's middle, to the back gauge with
      that face up.
    </p>
    ${o.map((l,c)=>jv(l,c,{rows:o,said:a,up:t.up||"1",set:h=>e("openings",cd(s,c,h)),raise:()=>e("up",String(c+
1)),drop:()=>r(c)}))}
    ${a.filter(l=>!/^V \d+: /.test(l)).map(l=>i`<p class="wrong" data-test="wrong-openings">${l}</p>`)}
    <button
      type="button"
      class="button"
      data-test="add-opening"
      @click=${()=>e("openings",dd(s))}>
      Add a V
    </button>
  </div>`;function r(l){let c=Number(t.up||"1");e("openings",hd(s,l)),(c>l+1||c>=o.length)&&e("up",String(Math.
max(c-1,1)))}}function jv(t,e,{rows:n,said:s,up:o,set:a,raise:r,drop:l}){let c=e+1,h=s.filter(g=>g.startsWith(
`V ${c}: `)).map(g=>g.slice(`V ${c}: `.length)),p=g=>h.filter(b=>b.startsWith(`${g}: `)).map(b=>b.slice(g.length+
2)),u=h.filter(g=>!Object.keys(Ds).some(b=>g.startsWith(`${b}: `))),m=(g,b,y,W="")=>O({name:`opening-${c}-${Ds[g]}`,
label:b,unit:y,placeholder:W,value:t[Ds[g]],keys:g==="code"?"text":"decimal",change:C=>a({[Ds[g]]:C}),wrong:p(
g)});return i`<fieldset class="opening" data-test="opening-${c}">
    <legend>V ${c}</legend>
    <div class="opening-head">
      <label class="tick"
        ><input
          type="radio"
          name="up"
          value=${c}
          data-test="up-${c}"
          .checked=${kt(o===String(c))}
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
      ${Y({name:`opening-${c}-face`,label:"Face",value:t.face||"top",options:ld,change:g=>a({face:g}),wrong:p(
"face")})}
      ${m("centre_mm","Off the middle",B(),"0")}
      ${m("rating_kn_per_m","Rating","kN/m","as the block")} ${m("code","Code","","by itself")}
    </div>
    ${u.map(g=>i`<p class="wrong">${g}</p>`)}
  </fieldset>`}var uf=$(()=>{_();Oe();Yr();L();J()});function ur({kind:t,draft:e,change:n,wrong:s,preview:o,options:a={},first:r=d,reader:l}){return i`<div class="workbench">
    ${Uo[t].map((c,h)=>i`<section class="panel ${c.part}">
          <h2>${c.title}</h2>
          ${h===0?r:d} ${c.part==="outline"?Hv(o):d}
          <div class="fields">
            ${c.fields.filter(({when:p,hidden:u})=>!u&&(!p||p(e))).map(p=>p.type==="openings"?pf({draft:e,change:n,
wrong:s}):Uv(p,e[p.name]??"",u=>n(p.name,u),{wrong:s[p.name],options:a[p.name],reader:l}))}
          </div>
        </section>`)}
  </div>`}function Hv(t){return i`<div class="outline-view" data-test="outline-view" aria-live="polite">
    ${t?.fault?pr(t.fault):t?.parts.length?i`<div class="outlines">${Xm(t.parts)}</div>`:i`<p class="hint">The outline appears as you type.</p>`}
    ${t?.wrong.map(e=>i`<p class="wrong" data-test="outline-wrong">${e}</p>`)}
    ${t?wt(t.checks,{quiet:!0}):d}
  </div>`}function Uv(t,e,n,{wrong:s=[],options:o=t.options,reader:a}){let{name:r,label:l,type:c,hint:h=""}=t;
if(c==="pick"||c==="yes"){let b=t.blank?[["",t.blank],...o??[]]:o??[];return mf(t,Y({name:r,label:l,value:e,options:b,
change:n,wrong:s}))}if(c==="points"||c==="note"){let b=t.dxf?df(r,a(t.dxf,r)):d;return Vv(t,e,i`${b}${Gv(t,e,n,
s)}`)}let p=ff(t),u=c==="number"||c==="length"||c==="rating"?"decimal":"text",m=c==="rating"?qv(e,h):c==="leng\
ths"?zv(e,h):h,g=O({name:r,label:l,value:e,change:n,wrong:s,unit:p,keys:u,hint:m,placeholder:t.blank??""});return c===
"rating"?i`<div class="broad">
      ${g}${e.trim()?d:x("unknown",`${l} unknown`)}
    </div>`:mf(t,g)}function Vv({folded:t,label:e},n,s){return t?i`<details class="broad" ?open=${!!n}>
        <summary>${e}</summary>
        ${s}
      </details>`:s}function Gv(t,e,n,s){let{name:o,label:a,hint:r,type:l}=t;return fn({name:o,label:a,value:e,
change:n,wrong:s,hint:r,unit:ff(t),lines:l==="points"?7:2})}function qv(t,e){let n=Pt(t);return n===null?`${e}\
 ${ud}`:N().units!=="inch"?e:`${typeof n=="number"?`That is ${f(Lt(n))}. `:""}May be typed with its unit: 25 s\
hort tons/ft.`}function zv(t,e){let n=t.split(/[,;\n]/).filter(s=>s.trim()).length;return n?`${e} ${n===1?"1 p\
iece.":`${n} pieces.`}`:e}var mf,ff,kl=$(()=>{_();_l();ar();ae();tt();ei();L();q();hf();J();uf();mf=({broad:t,
type:e},n)=>t||e==="lengths"?i`<div class="broad">${n}</div>`:n;ff=({type:t,unit:e=""})=>["length","lengths","\
points"].includes(t)?B():e});var gf={};Q(gf,{show:()=>Kv});async function Kv(t){let e=dt(ot.press),s=(await ct("holders",t.signal)).items.map(
({code:c,name:h})=>[c,`${c}, ${h}`]),o=null,a=null,r=await ks({async read(c){let h=await(e?ri:Zo)(c);return o=
h.etag,h.press??void 0},write:c=>wd(c,o),blank:{},boxes:Be("press"),toDraft:c=>Go("press",c),fromDraft:(c,h)=>qo(
"press",c,h),preview:e?lr("press",c=>{a=c,r.show()},t.signal):void 0,draw:()=>r&&l(),done(){X("The press is sa\
ved."),mt("/shop")}},t.signal);t.title("The press"),e||(a=ir(r.state.kept));function l(){let{state:c,change:h,
save:p}=r;t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>${c.kept?.name??"The press"}</h1>
        ${e?i`<p>
                ${c.kept?"Take every figure from the press's own plate and manual.":"No press yet. Take every \
figure from its own plate and manual."}
                What is not on the plate may stay empty where the box says unknown.
              </p>`:d}
        ${c.clash?us(c.clash,"press",{saveMine:p,takeTheirs:r.takeTheirs}):d}
        <form
          novalidate
          @submit=${u=>{u.preventDefault(),p()}}>
          ${xs(ot.press,ur({kind:"press",draft:c.draft,change:h,wrong:c.wrong,preview:a,reader:r.reader,options:{
holder:s}}))}
          <div role="alert">
            ${c.others.map(u=>i`<p class="wrong-line" data-test="not-saved">${u}</p>`)}
          </div>
          <div class="buttons">
            ${e?i`<button class="button next" data-test="save" ?disabled=${c.busy}>
                    ${c.busy?"Saving…":"Save the press"}
                  </button>`:d}
            <a class="button" href="/shop">Back to the shop</a>
          </div>
        </form>`)}l(),t.ready()}var $f=$(()=>{_();yt();ae();rr();te();bl();Nt();Ct();ms();hr();kl()});function wf(t,e,n,s){let{angles:o,wrong:a}=ro(s),{metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h}=pn(
e),p={id:t,metal:r,thickness_mm:l,bend_length_mm:c,included_angle_deg:h,die:n.die,punch:n.punch,...o};p.set_angle_deg=
s.set.trim()?Jv(s.set,a):n.set_angle_deg;for(let[u,m]of Yv)s[u].trim()&&(p[m]=st(s[u]));return s.lot.trim()&&(p.
lot=s.lot.trim()),s.note.trim()&&(p.note=s.note.trim()),N().name&&(p.by=N().name),{body:p,wrong:a}}function Jv(t,e){
let{angles:n}=ro({...mr,one:t});return n.measured_deg===void 0&&(e.set_angle_deg=["Type the angle that was set\
 in degrees, such as 88.5."]),n.measured_deg}var mr,Yv,bf,yf=$(()=>{Yo();io();tt();L();mr={one:"",left:"",middle:"",
right:"",places:"one",flange:"",note:"",set:"",lot:"",radius:"",thickness:"",depth:"",flat:"",leftFlange:"",rightFlange:""},
Yv=[["depth","punch_depth_mm"],["flat","flat_length_mm"],["leftFlange","flange_left_mm"],["rightFlange","flang\
e_right_mm"],["radius","radius_mm"]],bf=t=>Object.entries(t).some(([e,n])=>e!=="places"&&e!=="lot"&&n.trim()!==
"")});function kf(t,e){let n=Math.min((_f-2*vf-34)/t,170/e),[s,o]=[t*n,e*n],[a,r]=[vf+34,24],[l,c,h]=[a+s,r+o,a+s/2],
p=f(w(t,{digits:0})),u=f(w(e,{digits:0}));return i`<svg
    class="drawing strip"
    viewBox="0 0 ${_f} ${Math.round(c+52)}"
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
  </svg>`}var _f,vf,xf=$(()=>{_();L();_f=400,vf=30});function Mf({before:t,after:e,points:n=[],size:s=1,words:o}){let a=[t.low,t.high,e.low,e.high,...n.map(p=>p.value)],
[r,l]=[Math.min(...a),Math.max(...a)];if(r===l)return d;let c=ts(r,l,{from:Tf,to:Sf-Tf,size:s,most:5}),{at:h}=c;
return i`<svg
    class="drawing band-picture"
    viewBox="0 0 ${Sf} 112"
    role="img"
    aria-label=${o}
    data-test="band-picture">
    ${c.marks.map(p=>k`<path class="faint" d="M${p.at} 8V84"/>
          <text class="quiet" x=${p.at} y="104" text-anchor="middle"
            font-size=${Zv}>${p.text}</text>`)}
    <path
      class="was"
      d="M${h(t.low)} 24H${h(t.high)}M${h(t.low)} 17v14M${h(t.high)} 17v14M${h(t.nominal)} 17v14"
      data-test="band-before" />
    <path class="now" d="M${h(e.low)} 52H${h(e.high)}" data-test="band-after" />
    <path class="now-middle" d="M${h(e.nominal)} 42v20" />
    ${n.map(p=>Xv(h(p.value),74,p))}
  </svg>`}function Xv(t,e,{id:n,outlier:s,weight:o=1}){return s?k`<path class="trial-odd" d="M${t-6} ${e-6}l12 12M${t+
6} ${e-6}l-12 12" data-test="band-point"
        data-id=${n} data-odd="true"/>`:k`<circle class="trial-point" cx=${t} cy=${e} r=${o<.25?3:6} data-test="band-point"
        data-id=${n}/>`}var Sf,Tf,Zv,Of=$(()=>{_();gi();Sf=340,Tf=24,Zv=17});function fr(t){if(!t.length)return i`<p data-test="no-figures">No figure changed.</p>`;let e=t.flatMap(s=>s.points??
[]),n=["Thin: before. Thick: now. Rings: trials"];return e.some(s=>(s.weight??1)<.25)&&n.push("small ones, of \
other sheet or tools, count little"),e.some(s=>s.outlier)&&n.push("crosses: the odd ones out"),i`<div class="taught-figures" data-test="figures">${t.
map(Qv)}</div>
    ${e.length?i`<p class="hint">${n.join("; ")}.</p>`:d}`}function Qv(t){let{what:e,before:n,after:s,trials:o,
points:a=[]}=t,r=c=>tk(t.unit,c),l=`${e[0].toUpperCase()}${e.slice(1)}`;return i`<section class="taught-figure" data-test="taught" data-what=${e}>
    <h3>
      ${l} <small>${o===0?"no trials":o===1?"1 trial":`${o} trials`}</small>
    </h3>
    <dl class="was-now">
      <div class="was">
        <dt>Before</dt>
        <dd data-test="before">${Af(n,r)}</dd>
      </div>
      <div class="now">
        <dt>Now</dt>
        <dd data-test="after">${Af(s,r)}</dd>
      </div>
    </dl>
    ${Mf({before:n,after:s,points:a,size:t.unit==="mm"&&B()==="in"?ge:1,words:`${l}: before ${Lf(n,r)}, now ${Lf(
s,r)}, ${a.length} trials drawn.`})}
  </section>`}function tk(t,e){return t==="deg"?T(e,2):t==="mm"?w(e,{digits:2}):{text:ut(e,3),unit:t}}var Af,Lf,
xl=$(()=>{_();Of();L();Af=(t,e)=>i`<b>${f(e(t.nominal))}</b>
    <span class="band">${e(t.low).text} to ${e(t.high).text}</span>`,Lf=({low:t,high:e},n)=>`${n(t).text} to ${f(
n(e))}`});function Rf(t,{metals:e,dies:n,punches:s},{choose:o,draw:a}){let{form:r,typed:l,wrong:c,busy:h}=t,p=(m,g,b={})=>O(
{name:m,label:g,value:r[m],wrong:R(c,m),change:y=>Object.assign(r,{[m]:y}),unit:B(),next:!0,...b}),u=(m,g,b)=>Y(
{name:m,label:g,value:r[m],options:b,wrong:R(c,m),change:y=>{Object.assign(r,{[m]:y}),a()}});return i`<form novalidate data-test="choose-form" @submit=${Pf(
o)}>
    <p>One strip, bent and measured, makes the book’s figures those of your metal and your tools.</p>
    ${Cf(t)}
    <div class="test-fields">
      ${u("metal","Metal",e.map(({code:m,name:g})=>[m,g]))}
      ${p("thickness_mm","Thickness, measured",{hint:"With the micrometer, away from the burr."})}
      ${p("bend_length_mm","Strip’s width, along the bend")}
      ${p("included_angle_deg","Angle wanted",{unit:"°, 90 is square",keys:"decimal"})}
      ${u("die","Die",Ef(n,r.die))}
      ${u("punch","Punch",Ef(s,r.punch))}
      ${O({name:"lot",label:"Lot or heat",value:l.lot,wrong:R(c,"lot"),change:m=>Object.assign(l,{lot:m}),hint:"\
As on the sheet’s tag, if you know it."})}
    </div>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button class="button next" data-test="next" ?disabled=${h}>
        ${h?"Working it out…":"Next: bend it"}
      </button>
    </div>
  </form>`}function Ef(t,e){let n=t.map(({code:o,name:a})=>[o,`${o} · ${a}`]),s=e&&!t.some(({code:o})=>o===e)?
[[e,`${e} (not in the crib)`]]:[];return[["","Best of the crib"],...s,...n]}function If({bend:t},{go:e}){let n=t.
worst!=="stop"&&t.die&&t.punch,s=f(w(nk,{digits:0}));return i`${Yn(t.checks)}
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
            Cut a strip <b>${f(w(t.bend_length_mm,{digits:0}))}</b> wide and about
            <b>${f(w(Nf,{digits:0}))}</b> long, its grain as in your parts. Deburr it:
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
          ${Qt("Angle to set",T(t.set_angle_deg),"set-angle")}
          ${Qt("Depth",w(t.punch_depth_mm,{digits:2}),"punch-depth")}
        </div>
        <div class="figures">${Hs("Allow for",t)}</div>
      </div>
      <div class="strip-pictures">
        ${kf(Nf,t.bend_length_mm)}
        ${t.drawing?ie(t.drawing,{pose:"before",close:!0,opening:t.v_opening_mm,gauge:"",angle:t.set_angle_deg,
words:"The strip on the die before the bend"}):d}
      </div>
    </div>
    ${Jn(t.checks)} ${Ie(t.checks)}
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="back" @click=${()=>e("choose")}>Back</button>
      ${n?i`<button type="button" class="button next" data-test="next" @click=${()=>e("measure")}>
              It is bent: measure
            </button>`:i`<p class="nav-words" data-test="not-so">
              <b>Not like this.</b> Go back and choose other tools or another strip.
            </p>`}
    </div>`}function Wf(t,{go:e,send:n,draw:s}){let{typed:o,wrong:a,bend:r,busy:l}=t,c=(p,u,m,g={})=>O({name:u,
label:m,value:o[p],wrong:R(a,u),change:b=>Object.assign(o,{[p]:b}),unit:B(),next:!0,...g}),h={keys:"decimal",unit:"\
°"};return i`<form novalidate data-test="measure-form" @submit=${Pf(n)}>
    ${Cf(t)}
    <p>
      <b>Out of the tools, lying free.</b> Wanted: ${f(T(r.included_angle_deg))}. The angle is
      needed; the rest teaches more.
    </p>
    <div class="measures">
      <fieldset class="panel">
        <legend><span class="badge-word">1</span> Angle</legend>
        <div class="trial-angles ${o.places}">
          ${o.places==="one"?c("one","measured_deg","Angle measured",h):[c("left","left_deg","Left",h),c("midd\
le","middle_deg","Middle",h),c("right","right_deg","Right",h)]}
        </div>
        ${G({name:"places",label:"Measured at",value:o.places,options:[["one","One place"],["three","Left, mid\
dle, right"]],change:p=>{Object.assign(o,{places:p}),s()}})}
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
      ?open=${["set_angle_deg","punch_depth_mm","note"].some(p=>R(a,p).length)}>
      <summary>Set otherwise, depth shown, note</summary>
      <div class="test-fields">
        ${c("set","set_angle_deg","Angle that was set",{...h,placeholder:T(r.set_angle_deg).text,hint:"Leave i\
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
  </form>`}function Df({answer:t,form:e,busy:n},s,{again:o}){if(!t)return d;let a=s.find(({code:c})=>c===e.metal)?.
name??e.metal,{teaches:r,words:l}=t.test_bend;return i`<h2>What it taught <small>${a}</small></h2>
    <div class=${t.figures.length?"unseen":"panel"} role="status" data-test="taught-words">
      ${t.words.map(c=>i`<p>${c}</p>`)}
    </div>
    ${r?d:i`<section class="panel urgent" data-test="teaches-nothing">
            <p>${x("caution")} <b>Kept, but it does not count.</b> ${l}</p>
          </section>`}
    ${t.outliers.length?i`<section class="panel urgent" data-test="outliers">
            <h2>${x("caution","Odd one out")}</h2>
            ${t.outliers.map(({words:c})=>i`<p>${c}</p>`)}
            <p>
              Measured wrong? <a href="/shop/learned/${encodeURIComponent(e.metal)}">Forget it</a>, and the
              figures are as before.
            </p>
          </section>`:d}
    ${fr(t.figures)}
    <section data-test="changed-cards">
      <h2>Cards that would plan differently</h2>
      ${t.cards.length?i`<ul class="rows">
              ${t.cards.map(sk)}
            </ul>`:i`<p data-test="no-cards">None.</p>`}
    </section>
    <div class="step-nav" role="group" aria-label="Test bend">
      <button type="button" class="button" data-test="again" ?disabled=${n} @click=${o}>
        Bend another
      </button>
      <a class="button next" href="/shop/learned/${encodeURIComponent(e.metal)}" data-test="to-learned"
        >All it taught</a
      >
    </div>`}var ek,Nf,nk,Bf,Cf,Pf,sk,Ff=$(()=>{_();Us();xf();L();re();J();Vs();q();xl();xn();Xt();ek=[["choose",
"Choose"],["bend","Bend"],["measure","Measure"],["taught","Learned"]],Nf=300,nk=102,Bf=t=>i`<ol class="stages" aria-label="Stages">
    ${ek.map(([e,n])=>i`<li aria-current=${e===t?"step":"false"}>${n}</li>`)}
  </ol>`,Cf=({general:t})=>t?i`<p class="wrong" role="alert" data-test="wrong">${t}</p>`:d,Pf=t=>e=>{e.preventDefault(),
t()};sk=({code:t,title:e,changes:n})=>i`<li class="row" data-test="changed-card" data-code=${t}>
    <a href="/c/${t}">
      <span class="lead">${e||t}</span> <span class="code">${t}</span>
      <span class="more">${n.join("; ")}</span>
    </a>
  </li>`});var jf={};Q(jf,{show:()=>ak});async function ak(t){t.title("Test bend"),t.render(Tt("Looking into the crib…"));
let[e,n,s]=await Promise.all(["metals","dies","punches"].map(async b=>(await ct(b,t.signal)).items)),o=zo(t.query);
o.metal||=e[0]?.code??"",o.bend_length_mm||=B()==="in"?"4":"100";let a={stage:"choose",form:o,typed:{...mr},bend:null,
answer:null,id:Wt(),wrong:{},general:"",busy:!1};oe(()=>a.stage==="measure"&&bf(a.typed)?"Leave without keepin\
g what you measured?":null);let r=()=>t.render(i`<article
        class="test-bend"
        data-test="test-bend"
        data-stage=${a.stage}
        aria-busy=${a.busy?"true":"false"}>
        <p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Test bend</h1>
        ${Bf(a.stage)} ${l()}
      </article>`);function l(){let b={draw:r,go:c,choose:h,send:p,again:u};return a.stage==="bend"?If(a,b):a.
stage==="measure"?Wf(a,b):a.stage==="taught"?Df(a,e,b):Rf(a,{metals:e,dies:n,punches:s},b)}function c(b){Object.
assign(a,{stage:b,wrong:{},general:""}),r(),scrollTo(0,0)}async function h(){let b=Fs(o);if(b.length)return m(
Object.fromEntries(b.map(y=>[y,ok[y]])));history.replaceState(null,"",`/shop/test-bend?${Ko(o)}`),await g(async()=>{
a.bend=(await M("POST","/bend",{body:pn(o),signal:t.signal})).body,c("bend")})}async function p(){let{body:b,wrong:y}=wf(
a.id,o,a.bend,a.typed);if(Object.keys(y).length)return m(y);await g(async()=>{a.answer=(await M("POST","/test-\
bends",{body:b,timeout:2e4})).body,c("taught"),H()})}function u(){Object.assign(a,{typed:{...mr,lot:a.typed.lot,
places:a.typed.places},answer:null,id:Wt()}),h()}function m(b,y=""){Object.assign(a,{wrong:b,general:y}),r(),Zt(
b)}async function g(b){if(!a.busy){Object.assign(a,{busy:!0,wrong:{},general:""}),r();try{await b()}catch(y){return t.
signal.aborted?void 0:(a.busy=!1,m(y instanceof S?y.errors:{},rk(y)))}a.busy=!1,r()}}gt(r,t.signal),r(),t.ready()}
function rk(t){return t instanceof S?t.message:t instanceof j?"The shop’s server does not answer. What you typ\
ed stays here: try again.":String(t)}var ok,Hf=$(()=>{_();V();Yo();yt();Et();Ct();tt();bt();yf();L();J();Bt();
Ff();ok={metal:["Choose the metal."],thickness_mm:["Measure the strip and type its thickness, such as 1.98."],
bend_length_mm:["Type how wide the strip is along the bend."],included_angle_deg:["Type the angle you want, su\
ch as 90."]}});var Uf={};Q(Uf,{show:()=>ik});async function ik(t){let{metal:e}=t.params,n=`metal=${encodeURIComponent(e)}`;t.
title("What the metal taught");let{items:s}=await ct("metals",t.signal),o=s.find(({code:h})=>h===e);if(!o)return t.
title("No such metal"),t.render(xt(`No metal ${e} in the shop`,i`<a href="/shop/metals">Metals</a>`)),t.ready();
t.title(`What ${o.name} taught`);let a={groups:[],evidence:[],busy:""};async function r(){let[h,p]=await Promise.
all([M("GET",`/learned?${n}`,{signal:t.signal}),M("GET",`/test-bends?${n}`,{signal:t.signal})]);a.groups=h.body.
groups,a.evidence=[...p.body.evidence].sort((u,m)=>u.made_at<m.made_at?1:-1)}async function l(h){if(!a.busy){a.
busy=h.id,c();try{let{body:p}=await M("POST",`/evidence/${encodeURIComponent(h.id)}/${h.forgotten?"remember":"\
forget"}`,{body:N().name?{by:N().name}:{},timeout:2e4});await r(),X(lk(h,p.cards)),H()}catch(p){if(t.signal.aborted)
return;if(!(p instanceof S||p instanceof j))throw p;X(p.message)}a.busy="",c()}}let c=()=>t.render(i`<p class="crumb">
          <a href="/shop">Shop</a> / <a href="/shop/metals/${encodeURIComponent(e)}">${o.name}</a>
        </p>
        <div class="head-line">
          <h1>What the metal taught <span class="soft">${o.name}</span></h1>
          ${pt("/shop/test-bend",i`<a class="button next" href="/shop/test-bend?${n}" data-test="to-test-bend"
              >Test bend</a
            >`)}
        </div>
        ${a.evidence.length?i`<div class="learned" data-test="learned" aria-busy=${a.busy?"true":"false"}>
                <section class="learned-figures">${ck(a.groups)}</section>
                <section class="learned-evidence">
                  <h2>Trials</h2>
                  <ul class="rows" data-test="evidence">
                    ${a.evidence.map(h=>dk(h,a.busy,l))}
                  </ul>
                </section>
              </div>`:xt("Nothing yet",i`Bend one strip and measure it: the figures become those of your metal. First pieces on
                cards count too.`)}`);await r(),gt(c,t.signal),c(),t.ready()}function lk(t,e){let n=t.forgotten?
"Used again.":"Forgotten.";return e.length?`${n} ${e.length===1?"One card":`${e.length} cards`} would now plan\
 differently: ${e.map(({title:s,code:o})=>s||o).join(", ")}.`:n}function ck(t){return t.length?t.map(({thickness_mm:e,
v_opening_mm:n,lot:s,figures:o,words:a})=>i`<section data-test="group" data-thickness=${e} data-v=${n}>
        <h2>
          ${f(w(e,{digits:2}))} over V
          ${f(w(n))}${s?i` <small>lot ${s}</small>`:d}
        </h2>
        ${a.map(r=>i`<p class="together" data-test="together">${x("caution")} ${r}</p>`)}
        ${fr(o)}
      </section>`):i`<h2>Figures</h2>
      <p data-test="no-groups">No trial is in use: the figures are the metal’s own.</p>`}function dk(t,e,n){
let s=t.kind==="test bend"?"Test bend":i`First piece${t.code?i` of <a href="/c/${t.code}">${t.code}</a>`:d}`,o=[
t.set_angle_deg===null?"":`set at ${f(T(t.set_angle_deg))}`,f(w(t.thickness_mm,{digits:2})),t.die?`die ${t.die}`:
t.v_opening_mm?`V ${f(w(t.v_opening_mm))}`:"",t.lot?`lot ${t.lot}`:"",et(t.made_at),t.by??""];return i`<li
    class="row evidence ${t.forgotten?"forgotten":""}"
    data-test="evidence-row"
    data-id=${t.id}
    data-forgotten=${String(t.forgotten)}>
    <div class="evidence-what">
      <p>
        <span class="lead">${f(T(t.measured_deg))}</span> ${s}
        ${t.forgotten?x("unknown","Forgotten"):t.outlier?x("caution","Odd one out"):d}
      </p>
      <p class="more">${o.filter(Boolean).join(" · ")}</p>
      ${t.note?i`<p>${t.note}</p>`:d}
      ${t.words?i`<p class="more" data-test="evidence-words">${t.words}</p>`:d}
    </div>
    ${P("evidence.forget",i`<div>
        <button
          type="button"
          class="button"
          data-test=${t.forgotten?"remember":"forget"}
          ?disabled=${e!==""}
          @click=${()=>n(t)}>
          ${t.forgotten?"Use it again":"Forget this one"}
        </button>
      </div>`)}
  </li>`}var Vf=$(()=>{_();V();yt();te();tt();bt();L();q();xl();lt();Bt();Ht()});var Gf={};Q(Gf,{show:()=>hk});async function hk(t){let e=Jo(t.params.kind);if(!e)return t.title("Not here"),t.
render(xt("No such list in the shop",i`<a href="/shop">The shop</a>`)),t.ready();let{one:n,title:s,many:o}=Ce[e];
t.title(s);let{items:a,kept:r}=await ct(e,t.signal),l=or(a.map(c=>c.outline_mm));t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
      <div class="head-line">
        <h1>${s}</h1>
        ${r?d:P(ot[e],i`<a class="button" href="/shop/${e}/+" data-test="add">Add a ${n}</a>`)}
      </div>
      ${r?i`<p data-test="kept">
              As this device last saw them.
              ${P(ot[e],"Changing anything needs the shop's server.")}
            </p>`:d}
      ${a.length?i`<ul class="rows tool-rows" data-test="list">
              ${a.map(c=>e==="metals"?gk(c):pk(e,c,l))}
            </ul>`:xt(`No ${o} yet`,P(ot[e],"Add what lies in the rack: plans choose from it.","The owner adds\
 what lies in the rack."))}`),t.ready()}function pk(t,e,n){return i`<li class="row" data-test="row-${e.code}">
    <a href="/shop/${t}/${encodeURIComponent(e.code)}">
      <span class="thumb">${sr(e.outline_mm,n)}</span>
      <span class="who"><span class="lead">${e.code}</span> <span>${e.name}</span>${uk(e)}</span>
      <span class="fact"><span class="what">Place</span>${Pe(e)}</span>
      <span class="fact"
        ><span class="what">Rating</span>${e.rating_kn_per_m===null?x("unknown"):f(Lt(e.rating_kn_per_m))}</span
      >
      ${e.segments_mm?i`<span class="fact"
              ><span class="what">Pieces</span>${e.segments_mm.length?i`${e.segments_mm.length}, up to
                    ${f(w(mk(e.segments_mm),{digits:0}))}`:"none"}</span
            >`:d}
      <span class="fact"><span class="what">Condition</span>${fk(e)}</span>
    </a>
  </li>`}function uk({shape:t,openings:e}){return t!=="multi_v"?d:i`<span class="soft" data-test="block-vs"
    >${e.map(n=>`${n.code}: V ${f(w(n.v_opening_mm))}`).join(", ")}</span
  >`}function fk({condition:t,condition_note:e}){if(t==="good")return x("ok","Good");let n=t==="damaged"?x("st\
op","Damaged"):t==="worn"?x("caution","Worn"):x("unknown");return i`${n}${e?i` <span class="soft">${e}</span>`:
d}`}function gk(t){let{tensile_mpa:e}=t;return i`<li class="row" data-test="row-${t.code}">
    <a href="/shop/metals/${encodeURIComponent(t.code)}">
      <span class="who"><span class="lead">${t.name}</span> <span class="soft">${t.code}</span></span>
      <span class="fact"><span class="what">Tensile</span>${e.low} to ${e.high} MPa</span>
      <span class="fact"><span class="what">Standing</span>${e.standing}</span>
      <span class="fact"><span class="what">Gauge</span>${t.gauge_family??"none"}</span>
    </a>
  </li>`}var mk,qf=$(()=>{_();yt();L();q();lt();Bt();ar();mk=t=>Math.max(...t)});function Tl(t,e){let n=e.params.tool===Sl,s=n?void 0:e.params.tool,o={items:[],etag:null,kept:!1};return{kind:t,
isNew:n,code:s,async read(a){return o=await(dt(ot[t])?ai:ct)(t,a),o.items.find(r=>r.code===s)},async write(a){
let r=o.items.filter(h=>h.code!==s),l=o.items.findIndex(h=>h.code===s),c=a?[{...a,code:s??a.code}]:[];await bd(
t,r.toSpliced(l<0?r.length:l,0,...c),o.etag)},done(a){X(a?`${a.name||s} is saved.`:`${s} is taken out.`),mt(`/\
shop/${t}`)},taken:a=>n&&o.items.some(r=>r.code===a.trim())}}var Sl,zf=$(()=>{yt();te();Nt();Ct();Sl="+"});async function Kf(t,e){let n=await ks({...e,blank:{poisson:.3},boxes:$k,toDraft:o=>({code:o.code??"",...fd(o)}),
fromDraft:o=>({...gd(o),code:o.code.trim()}),draw:()=>n&&s()},t.signal);if(!n.state.kept&&!e.isNew)return t.title(
"No such metal"),t.render(xt(`No metal ${e.code} in the shop`,i`<a href="/shop/metals">Metals</a>`)),t.ready();
t.title(e.isNew?"New metal":`${n.state.kept?.name}`);function s(){let{state:o,change:a}=n,r=(l,c,h={})=>O({name:l,
label:c,value:o.draft[l]??"",change:p=>a(l,p),wrong:o.wrong[l],...h});t.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/metals">Metals</a></p>
        <h1>${e.isNew?"New metal":i`${e.code}<span class="soft"> ${o.kept?.name}</span>`}</h1>
        ${e.isNew?d:i`<div class="buttons">
                ${pt("/shop/learned/x",i`<a
                    class="button"
                    href="/shop/learned/${encodeURIComponent(e.code??"")}"
                    data-test="to-learned"
                    >What the metal taught</a
                  >`)}
                ${pt("/shop/test-bend",i`<a
                    class="button"
                    href="/shop/test-bend?metal=${encodeURIComponent(e.code??"")}"
                    data-test="to-test-bend"
                    >Test bend</a
                  >`)}
              </div>`}
        ${o.clash?us(o.clash,"metal",{saveMine:n.save,takeTheirs:n.takeTheirs}):d}
        <form
          novalidate
          @submit=${l=>{l.preventDefault(),n.save()}}>
          ${xs(ot.metals,i`<section class="panel">
                <h2>What it is</h2>
                <div class="fields">
                  ${e.isNew?cr(n,e):d} ${r("name","Name")}
                  ${Y({name:"gauge_family",label:"Gauge numbers mean",value:o.draft.gauge_family,options:ad,change:l=>a(
"gauge_family",l),wrong:o.wrong.gauge_family})}
                  ${zn.map(({name:l,label:c})=>r(l,c,{keys:"decimal"}))}
                </div>
                ${fn({name:"note",label:"Note",value:o.draft.note,change:l=>a("note",l),wrong:o.wrong.note,lines:2})}
              </section>
              <div class="figure-cards">${cn.map(l=>bk(l,n))}</div>`)}
          ${dr(n,e,"metal")}
        </form>`)}s(),t.ready()}function bk({name:t,label:e,unit:n,needed:s},{state:o,change:a}){let r=p=>o.draft[`${t}\
.${p}`]??"",l=p=>o.wrong[`${t}.${p}`]??[],c=p=>u=>a(`${t}.${p}`,u),h=!s&&!Ml.some(([p])=>r(p).trim());return i`<fieldset class="panel figure-card" data-test="figure-${t}">
    <legend>${e}${n?i` <span class="hint">(${n})</span>`:d}</legend>
    ${(o.wrong[t]??[]).map(p=>i`<p class="wrong-line">${p}</p>`)}
    <div class="fields three">
      ${Ml.map(([p,u])=>O({name:`${t}.${p}`,label:u,value:r(p),change:c(p),wrong:l(p),keys:"decimal"}))}
    </div>
    ${h?x("unknown","Not known"):d}
    <div class="fields source-line">
      ${fn({name:`${t}.source`,label:"Source",value:r("source"),change:c("source"),wrong:l("source"),lines:3})}
      ${Y({name:`${t}.standing`,label:"Standing",value:r("standing"),options:od.map(p=>[p,p]),change:c("standi\
ng"),wrong:l("standing")})}
    </div>
  </fieldset>`}var Ml,$k,Yf=$(()=>{_();ae();yt();rr();Kr();hr();ms();q();J();lt();Bt();Ml=[["low","Low"],["nom\
inal","Nominal"],["high","High"]],$k=[{name:"code",label:"Code"},{name:"name",label:"Name"},{name:"note",label:"\
Note"},{name:"gauge_family",label:"Gauge numbers"},...zn,...cn.flatMap(({name:t,label:e})=>[...Ml,["source","s\
ource"],["standing","standing"]].map(([n,s])=>({name:`${t}.${n}`,label:`${e}: ${s.toLowerCase()}`}))),...cn]});var Jf={};Q(Jf,{show:()=>yk});async function yk(t){let e=Jo(t.params.kind);return e?t.params.tool===Sl&&!dt(ot[e])?
(t.title(`New ${Ce[e].one}`),t.render(Co(ot[e])),t.ready()):e==="metals"?Kf(t,Tl(e,t)):_k(t,e):(t.render(xt("N\
o such list in the shop",i`<a href="/shop">The shop</a>`)),t.ready())}async function _k(t,e){let n=Ce[e],s=Tl(
e,t),o=dt(ot[e]),a=null,r=await ks({...s,blank:wk[e],boxes:[{name:"code",label:"Code"},...Be(e)],toDraft:c=>({
code:c.code??"",...Go(e,c)}),fromDraft:(c,h)=>({...qo(e,c,h),code:c.code.trim()}),preview:o?lr(n.one,c=>{a=c,r.
show()},t.signal):void 0,draw:()=>r&&l()},t.signal);if(!r.state.kept&&!s.isNew)return t.title("Not in the crib"),
t.render(xt(`No ${n.one} ${s.code} in the crib`,i`It may have been taken out. <a href="/shop/${e}">${n.title}</a>`)),
t.ready();t.title(s.isNew?`New ${n.one}`:`${s.code}, ${n.one}`),o||(a=ir(r.state.kept));function l(){let{state:c,
change:h}=r;t.render(i`<p class="crumb"><a href="/shop">Shop</a> / <a href="/shop/${e}">${n.title}</a></p>
        <h1>
          ${s.isNew?`New ${n.one}`:i`${s.code}<span class="soft"> ${c.kept?.name}</span>`}
        </h1>
        ${c.clash?us(c.clash,n.one,{saveMine:r.save,takeTheirs:r.takeTheirs}):d}
        <form
          novalidate
          @submit=${p=>{p.preventDefault(),r.save()}}>
          ${xs(ot[e],ur({kind:e,draft:c.draft,change:h,wrong:c.wrong,preview:a,reader:r.reader,first:s.isNew?cr(
r,s):d}))}
          ${dr(r,s,n.one)}
        </form>`)}l(),t.ready()}var wk,Zf=$(()=>{_();yt();ae();rr();zf();bl();Nt();ms();hr();lt();Bt();kl();Yf();
wk={punches:{shape:"straight",condition:"unknown",neck_relief_mm:null},dies:{shape:"single_v",condition:"unkno\
wn",up:1},holders:{shape:"block",condition:"unknown"}}});var tg={};Q(tg,{show:()=>kk});async function kk(t){t.title("Crew");let{signal:e}=t,n={devices:[],joining:null,
open:!1,role:"operator",name:"",offer:null,known:new Set,came:null,fault:""},s=()=>t.render(Sk(n,o)),o=xk(n,s,
e),[a,r,l]=await Promise.all([M("GET","/devices",{signal:e}),M("GET","/crew-options",{signal:e}),Ye(e).then(({
network:h})=>h?M("GET","/join",{signal:e}):null)]);Object.assign(n,{devices:a.body.devices,open:r.body.labels_open,
joining:l?.body??null}),s(),t.ready();let c=setInterval(o.look,vk);e.addEventListener("abort",()=>clearInterval(
c))}function xk(t,e,n){let s=async a=>{t.fault="";try{await a()}catch(r){if(n.aborted)return;t.fault=yo(r)}e()};
async function o(){if(document.visibilityState!=="visible")return;let a=await M("GET","/devices",{signal:n,timeout:4e3}).
catch(()=>null);if(!a||n.aborted)return;t.devices=a.body.devices;let r=t.offer&&t.devices.find(l=>!t.known.has(
l.id)&&!l.revoked_at);r?Object.assign(t,{came:r,offer:null,name:""}):t.offer&&Date.parse(t.offer.expires_at)<=
Date.now()&&(t.offer=null),e()}return{look:o,draw:e,offer:()=>s(async()=>{let{body:a}=await M("POST","/pairing\
s",{body:{role:t.role,name:t.name.trim()},signal:n});Object.assign(t,{offer:a,came:null,known:new Set(t.devices.
map(r=>r.id))})}),revoke:a=>s(async()=>{confirm(`Turn out ${a.name}? It can read nothing any more, and its car\
ds go from it when it next asks.`)&&(await M("DELETE",`/devices/${a.id}`,{signal:n}),await o())}),setRole:(a,r)=>s(
async()=>{await M("PUT",`/devices/${a.id}`,{body:{role:r},signal:n}),await o()}),setOpen:a=>s(async()=>{await M(
"PUT","/crew-options",{body:{labels_open:a},signal:n}),t.open=a})}}function Sk(t,e){return i`<p class="crumb"><a href="/shop">Shop</a></p>
    <h1>Crew</h1>
    ${t.fault?i`<p class="wrong" role="alert" data-test="fault">${t.fault}</p>`:d}
    ${t.joining?i`<div class="crew-grid">${Mk(t,e)}${Ok(t.joining)}</div>`:Tk()}
    <section class="panel" data-test="devices">
      <h2>Who is in</h2>
      ${Ak(t,e)}
    </section>
    <section class="panel">
      <h2>Labels without pairing</h2>
      ${G({name:"labels-open",label:"A device that is not paired",value:t.open?"open":"shut",options:[["shut",
"sees nothing"],["open","may read the card of a label it scans"]],change:n=>e.setOpen(n==="open")})}
    </section>`}function Mk(t,e){let{offer:n,came:s}=t;return n?i`<section class="panel" data-test="offer">
      <h2>Scan this with the new device</h2>
      <p>
        ${Vt[n.role].word}${n.name?i`: <b>${n.name}</b>`:d}. Works once, until
        ${et(n.expires_at).slice(-5)}.
      </p>
      <img class="pair-qr" data-test="offer-qr" alt="QR code: ${n.address}" src=${Qf(n.qr)} />
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
            ${x("ok","Paired")} <b>${s.name}</b> is in, as ${Vt[s.role].word.toLowerCase()}.
          </p>`:d}
    ${G({name:"role",label:"As",value:t.role,options:Xf,change:o=>{t.role=o,e.draw()}})}
    <p class="hint" data-test="role-does">${Vt[t.role].word}: ${Vt[t.role].does}.</p>
    ${O({name:"device-name",label:"Whose?",value:t.name,placeholder:"Ann's phone",change:o=>t.name=o})}
    <button type="button" class="button next wide" data-test="show-code" @click=${e.offer}>
      Show a pairing code
    </button>
  </section>`}function Ok(t){return i`<section class="panel" data-test="begin">
    <h2>A new phone begins here</h2>
    <img class="pair-qr" alt="QR code of the page that helps a phone to join" src=${Qf(t.qr)} />
    <p>${t.shop}: ${t.https.map(e=>i`<span class="address">${e}</span> `)}</p>
    ${t.http.length?i`<p class="hint">Or type <span class="address">${t.http[0]}/join</span></p>`:d}
    ${t.fingerprint?i`<p class="hint">The shop's authority, to compare on the phone (SHA-256):</p>
            <p class="fingerprint" data-test="fingerprint">${Lk(t.fingerprint)}</p>`:d}
  </section>`}function Ak({devices:t},e){return t.length?i`<ul class="plain-list devices">
    ${t.map(n=>i`<li data-test="device" class=${n.revoked_at?"turned-out":""}>
          <div class="who">
            <b>${n.name}</b>${n.own?i` <span class="soft">this device</span>`:d}
            <span class="soft"
              >${n.revoked_at?`turned out ${et(n.revoked_at)}`:`last seen ${et(n.seen_at)}`},
              paired ${et(n.paired_at)} by
              ${n.paired_by}${n.way==="http"?", over plain http":""}</span
            >
          </div>
          ${n.revoked_at?i`<p>${x("stop","Out")}</p>`:i`${Y({name:`role-${n.id}`,label:`Role of ${n.name}`,value:n.
role,options:Xf,change:s=>e.setRole(n,s)})}
                  <button type="button" class="button" data-test="revoke" @click=${()=>e.revoke(n)}>
                    Turn out…
                  </button>`}
        </li>`)}
  </ul>`:i`<p data-test="nobody">Nobody yet but this computer.</p>`}var vk,Xf,Tk,Qf,Lk,eg=$(()=>{_();V();Je();
q();J();Ht();vk=2e3,Xf=Object.entries(Vt).map(([t,{word:e}])=>[t,e]);Tk=()=>i`<section class="panel" data-test="no-network">
    <h2>Let a device in</h2>
    <p>
      This server answers only the computer it runs on. To let phones and screens in, stop it and start it
      with
    </p>
    <p><code>server/start --lan --shop "Your shop"</code></p>
    <p class="hint">The shop's cards, tools and press stay as they are.</p>
  </section>`;Qf=t=>`data:image/svg+xml,${encodeURIComponent(t)}`,Lk=t=>t.replace(/(.{4})(?=.)/g,"$1 ")});var sg={};Q(sg,{show:()=>Nk});async function Nk(t){t.title("Pair this device"),t.render(Tt("Asking the shop…"));
let e={me:null,code:Ek(),name:N().name,fault:"",asking:!1,waits:0},n=()=>t.render(Bk(e,n));e.me=await Ye(t.signal).
catch(()=>null),e.waits=(await Dt().catch(()=>[])).length,n(),t.ready()}function Ek(){if(location.pathname!=="\
/pair"||!location.hash)return"";let t=decodeURIComponent(location.hash.slice(1)).slice(0,20);return history.replaceState(
null,"",location.pathname),t}function Bk(t,e){let{me:n}=t;return n?n.role?Ck(n):i`<div class="door">
    <h1>Ask for pairing</h1>
    ${ng[Te()??n.why]?i`<p data-test="why">${x("caution","Not let in")} ${ng[Te()??n.why]}</p>`:i`<p class="lead" data-test="why">The shop does not know this device yet.</p>`}
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
      @submit=${s=>{s.preventDefault(),Rk(t,e)}}>
      ${O({name:"pair-code",label:"Pairing code",value:t.code,placeholder:"ABCD-1234",change:s=>t.code=s,wrong:t.
fault?[t.fault]:[]})}
      ${O({name:"pair-name",label:"Whose device is this?",value:t.name,placeholder:"Ann's phone",change:s=>t.name=
s,hint:"The owner sees this name in the list."})}
      <button class="button next wide" data-test="pair" ?disabled=${t.asking}>Pair this device</button>
    </form>
    ${n.way==="http"?i`<p data-test="plain-http">
            ${x("caution","Not encrypted")} This is plain http: whoever is in the network can listen.
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
    </div>`}function Ck(t){let e=t.role;return t.way==="loopback"?i`<div class="door">
      <h1>The owner's own screen</h1>
      <p data-test="paired">This is the shop's computer. It needs no pairing.</p>
      <a class="button next wide" href="/crew">Let another device in</a>
    </div>`:i`<div class="door">
    <h1>This device is paired</h1>
    <p data-test="paired">${x("ok",Vt[e].word)} <b>${t.name}</b>: ${Vt[e].does}.</p>
    <a class="button next wide" href="/" data-test="go-on">Find a card</a>
    <p>
      <button type="button" class="button wide" data-test="leave" @click=${Pk}>Unpair this device…</button>
    </p>
  </div>`}async function Pk(){confirm("Unpair this device? Its cards go; what waits to be sent stays until it \
is paired again.")&&await uc()}async function Rk(t,e){Object.assign(t,{asking:!0,fault:""}),e();try{await pc(t.
code,t.name.trim()),H(),mt(location.pathname==="/pair"?"/":location.pathname,{replace:!0})}catch(n){Object.assign(
t,{asking:!1,fault:yo(n)}),e()}}var ng,og=$(()=>{_();Je();Et();Ct();tt();bt();q();J();Bt();ng={revoked:"This d\
evice was taken off the shop's list. Its cards were removed from it.",expired:"This device was not used for ha\
lf a year, so its pairing has ended."}});function ag({show:t,done:e,signal:n}){let s={name:"",busy:"",told:null,wrong:[]},o=null;function a(c){return o=
c,s.name=c.name,l("looking","preview=true")}function r(){return l("importing",`replace=${!s.told?.untouched}`)}
async function l(c,h){if(!(!o||s.busy)){Object.assign(s,{busy:c,told:null,wrong:[]}),t();try{if(o.size>Wk)throw new Error(
"The file is over 60 MB. On the shop's own computer `flangebook import` takes it.");s.told=(await ho(`/import?${h}`,
o,"application/json",n,Ik)).body}catch(p){if(n.aborted)return;s.wrong=Dk(p)}s.busy="",t(),s.told?.imported&&e()}}
return{state:s,choose:a,take:r}}function Dk(t){if(!(t instanceof S))return[t instanceof Error?t.message:String(
t)];let e=Object.entries(t.errors).slice(1).map(([n,s])=>`${n}: ${s.join(" ")}`);return[t.message,...e]}var Ik,
Wk,rg=$(()=>{V();Ik=3e5,Wk=6e7});function cg({state:t,choose:e,take:n}){let{name:s,busy:o,told:a,wrong:r}=t;return i`<section class="panel" data-test="panel-import">
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
      ${r.length?jk(s,r):d}
      ${a?a.imported?Vk(a):Hk(s,a,n):d}
    </div>
  </section>`}function Hk(t,e,n){return i`<div data-test="import-preview">
    <p><b>${t}</b>, exported ${et(e.exported_at)} by ${e.made_by}</p>
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">In the file</th>
          <th scope="col">In the shop now</th>
        </tr>
      </thead>
      <tbody>
        ${Fk.map(([s,o])=>i`<tr>
              <th scope="row">${o}</th>
              <td>${lg(e.holds[s])}</td>
              <td>${lg(e.here[s])}</td>
            </tr>`)}
      </tbody>
    </table>
    ${e.untouched?i`<p>${x("ok","The shop is empty")}</p>
            <button type="button" class="button next wide" data-test="import-now" @click=${n}>
              Bring it in
            </button>`:i`<p>
              ${x("caution","Everything in the shop is replaced")} A copy of what is there now is kept
              first.
            </p>
            <button
              type="button"
              class="button next wide"
              data-test="import-now"
              @click=${()=>Uk(e)&&n()}>
              Replace the shop…
            </button>`}
  </div>`}var Fk,ig,jk,lg,Uk,Vk,dg=$(()=>{_();q();Ht();Fk=[["press","Press"],["tools","Tools"],["metals","Meta\
ls"],["cards","Cards"],["revisions","Revisions"],["trials","Trials"],["test_bends","Test bends"]],ig=8;jk=(t,e)=>i`<div data-test="import-wrong">
    <p>${x("stop","Not brought in")} ${t}</p>
    <ul>
      ${e.slice(0,ig).map(n=>i`<li class="wrong">${n}</li>`)}
    </ul>
    ${e.length>ig?i`<p>There are more.</p>`:d}
    <p>Nothing in the shop was changed.</p>
  </div>`;lg=t=>t===""?"none":t,Uk=({here:t,holds:e})=>confirm(`Replace the shop? Its ${t.cards} cards and ${t.
trials} trials go, the file's ${e.cards} cards and ${e.trials} trials come. A copy is kept first.`),Vk=({holds:t,
kept_as:e})=>i`<div data-test="import-done">
    <p>${x("ok","Brought in")} ${t.cards} cards, ${t.trials} trials.</p>
    ${e?i`<p>The shop that was there is kept as ${e}.</p>`:d}
    <p>Phones fetch everything anew when they next reach the server.</p>
  </div>`});var hg={};Q(hg,{show:()=>qk});async function qk(t){t.title("Copies and export");let e=ag({show:a,done:s,signal:t.
signal}),n=await o();async function s(){H(),n=await o(),a()}async function o(){return(await M("GET","/copies",
{signal:t.signal})).body}function a(){t.render(i`<p class="crumb"><a href="/shop">Shop</a></p>
        <h1>Copies and export</h1>
        <div class="settings-grid">
          ${zk(n)}
          <div class="stack">${Jk()}${cg(e)}</div>
        </div>`)}a(),t.ready()}function zk({standing:t,last_good_at:e,trouble:n,folder:s,copies:o}){return i`<section class="panel" data-test="panel-copies">
    <h2>Copies</h2>
    <p data-test="standing">${Kk(t)}</p>
    ${e?i`<p class="lead-line" data-test="last-good">Last good copy: ${et(e)}</p>`:d}
    ${n?i`<p class="wrong" data-test="trouble">${et(n.at)}: ${n.words}</p>`:d}
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
                    <td>${et(a.at)}</td>
                    <td>${Gk[a.kind]}</td>
                    <td>${Yk(a.size_bytes)}</td>
                  </tr>`)}
            </tbody>
          </table>`:d}
    <p class="hint path">
      They lie in ${s}. On the shop's own computer, with the server stopped,
      <code>flangebook restore FILE</code> puts one back.
    </p>
  </section>`}function Kk(t){return t==="ok"?x("ok","There is a good copy"):t==="late"?x("caution","The last c\
opy is over two days old"):t==="trouble"?x("stop","The last copy could not be made"):x("unknown","There is no \
copy yet")}function Jk(){return i`<section class="panel" data-test="panel-export">
    <h2>The whole shop in one file</h2>
    <p>
      Press, tools, metals, cards with their history and trials, as open JSON. Bring it in again here, or read
      it with any program.
    </p>
    <a class="button next wide" href="/api/v1/export" download="flangebook-shop.json" data-test="export"
      >Export the whole shop</a
    >
    <p class="hint">Paired devices are not in it.</p>
  </section>`}var Gk,Yk,pg=$(()=>{_();V();rg();bt();q();dg();Ht();Gk={night:"by itself","by-hand":"by hand",replaced:"\
before it was replaced"};Yk=t=>`${(t/1e6).toFixed(1)} MB`});async function ug(t){let{code:e,part:n,title:s,note:o,created_by:a}=t,r={code:e,part:{...n,title:s},note:o,by:a},
{body:l}=await M("POST","/cards",{body:r,timeout:2e4}),c=await ne(l),h={...c,after:c.revision_id};await Fe(h,Lo(
Wn(t,["archived","settings"]),h),{reason:"Put back from a device"}),await oc(t),await bo(e)}var mg=$(()=>{V();
Fn();je();vt()});function fg(t){return t.length?i`<section class="panel" data-test="lost">
    <h2>Not in the shop any more</h2>
    <p>
      The shop was put back to an earlier day and does not know these cards. This device still has
      them.${P("cards.create",d,i` <span data-test="owners"
          >The owner can put them back from here, once this is an owner's device.</span
        >`)}
    </p>
    <ul class="waiting-list">
      ${t.map(e=>i`<li data-test="lost-${e.code}">
            <p><b>${e.title}</b> ${I(e.code)}</p>
            <div class="buttons">
              ${P("cards.create",i`<button type="button" class="button" data-test="put-back" @click=${()=>Zk(e)}>
                  Put it back
                </button>`)}
              <button type="button" class="button" data-test="let-go" @click=${()=>Xk(e)}>
                Throw away…
              </button>
            </div>
          </li>`)}
    </ul>
  </section>`:d}async function Zk(t){try{await ug(t),await H()}catch(e){X(e instanceof Error?e.message:String(
e))}}async function Xk(t){confirm(`Throw away the card ${I(t.code)}, ${t.title}? This device may have the only\
 copy.`)&&(await bo(t.code),await Hn())}var gg=$(()=>{_();it();te();mg();vt();bt();lt()});var wg={};Q(wg,{show:()=>Qk});async function Qk(t){t.title("Settings");let e={cards:0,total:null,entries:[],lost:[]};
async function n(){let[a,r,l]=await Promise.all([xe().catch(()=>[]),Dt().catch(()=>[]),$o().catch(()=>[])]);e=
{...e,cards:a.length,entries:r,lost:l},o()}async function s(){let a=await M("GET","/cards?limit=1",{signal:t.signal,
timeout:4e3}).catch(()=>null);e={...e,total:a?.body.total??null},o()}function o(){t.render(i`<h1>Settings of this device</h1>
        <div class="settings-grid">
          <section class="panel">
            <h2>How numbers are shown</h2>
            ${ex(o)}
          </section>
          <section class="panel">
            <h2>How it looks</h2>
            ${nx(o)}
          </section>
          ${tx()}
          <section class="panel" data-test="waiting">
            <h2>Waiting to be sent</h2>
            ${sx(e.entries)}
          </section>
          ${fg(e.lost)}
          <section class="panel" data-test="complete">
            <h2>Is everything here?</h2>
            ${rx(e)}
          </section>
        </div>`)}document.addEventListener("sync",n,{signal:t.signal}),await n(),t.ready(),await s()}function tx(){
let t=En();return!t||t==="owner"?d:i`<section class="panel" data-test="own-role">
    <h2>What this device may do</h2>
    <p><b>${Vt[t].word}</b>: ${Vt[t].does}. The owner may change that under Shop, Crew.</p>
    <a class="button" href="/pair">Its pairing</a>
  </section>`}function ex(t){let{units:e,inches:n}=N(),s=o=>{Se(o),t()};return i`${G({name:"units",label:"Unit\
s",value:e,options:[["mm","mm and kN"],["inch","inch and tons"]],change:o=>s({units:o==="inch"?"inch":"mm"})})}
  ${e==="inch"?G({name:"inches",label:"Inches as",value:n,options:[["decimal","decimals"],["fraction","nearest\
 1/64"]],change:o=>s({inches:o==="fraction"?"fraction":"decimal"})}):d}
  ${G({name:"paper",label:"Paper",value:N().paper,options:[["A4","A4"],["Letter","Letter"]],change:o=>s({paper:o===
"Letter"?"Letter":"A4"})})}
  ${e==="inch"?i`<p class="hint">Tons are short tons of 2000 lb.</p>`:d}`}function nx(t){let{theme:e,name:n}=N();
return i`${G({name:"theme",label:"Theme",value:e,options:[["day","Day"],["shop","Shop, dark"]],change:s=>{Se({
theme:s==="shop"?"shop":"day"}),t()}})}
  ${O({name:"name",label:"Your name",value:n,change:s=>Se({name:s}),hint:"Written beside what you change, so t\
hat the history says who."})}`}function sx(t){return t.length?i`<ul class="waiting-list">
      ${t.map(e=>i`<li data-test="waits-${e.id}">
            <p>
              <b>${bg(e)}</b> on <a href="/c/${e.code}">${I(e.code)}</a>,
              ${et(e.queued_at)} by this device’s clock
              ${e.body.note?i`<br /><span class="soft">${e.body.note}</span>`:d}
            </p>
            ${e.refused?i`<p data-test="refused">
                      ${x("caution","Refused")} ${e.missing?`${ao(e)}.`:""}
                      ${e.refused}
                    </p>
                    <div class="buttons">
                      <button type="button" class="button" data-test="try-again" @click=${()=>ox(e)}>
                        Try again
                      </button>
                      <button
                        type="button"
                        class="button"
                        data-test="throw-away"
                        @click=${()=>ax(e)}>
                        Throw away…
                      </button>
                    </div>`:i`<p class="soft">
                    ${ao(e)}. It goes by itself when the shop's server answers.
                  </p>`}
          </li>`)}
    </ul>
    <div class="buttons">
      <button type="button" class="button" data-test="send-now" @click=${()=>H()}>Send now</button>
    </div>`:i`<p data-test="nothing-waits">
      Nothing. Every trial, note and edit typed here is saved in the shop.
    </p>`}function bg({kind:t,body:e}){if(t==="trial")return`${qe(e)}, step ${e.step}`;if(t==="note")return"No\
te";let n=Object.keys(e).filter(s=>s in $g).map(s=>$g[s]);return n.length?`Edit: ${n.join(", ")}`:"Edit: what \
was settled"}async function ox(t){await Yl(t.id),await H()}async function ax(t){confirm(`Throw away ${bg(t)} o\
n ${I(t.code)}? It cannot be brought back.`)&&(await fo(t.id),await Hn())}function rx({cards:t,total:e}){let{reached:n,
at:s}=sn(),o=e!==null&&t>=e,a=document.documentElement.dataset.offlineReady==="true";return i`<dl class="plate">
      <div>
        <dt>Cards on this device</dt>
        <dd data-test="kept-cards">${t}${e===null?d:` of ${e}`}</dd>
      </div>
      <div>
        <dt>Last heard from the shop</dt>
        <dd data-test="last-contact">${s?et(s):"not since this page was opened"}</dd>
      </div>
    </dl>
    <p>
      ${o?x("ok","Every card is here"):e===null?x("unknown","Not known: no answer from the shop"):x("caution",
"Still fetching")}
    </p>
    <p data-test="app-kept">
      ${a?x("ok","The app opens without network"):i`${x("caution","The app needs the network")}
            ${"serviceWorker"in navigator?"It is still being kept.":"This browser keeps apps only over https o\
r on the shop's own computer."}`}
    </p>
    ${n===!1?i`<p>${x("caution","Not connected now")}</p>`:d}
    <button type="button" class="button" data-test="check-now" @click=${()=>H()}>Look again</button>`}var $g,yg=$(
()=>{_();V();Je();it();Et();Nt();tt();vt();bt();q();J();gs();gg();ws();Ht();$g={title:"title",note:"note",archived:"\
in use or put away",settings:"settings"}});function fe(t){let e=Do(t.split("?")[0])?.route.needs;return!e||dt(e)}function Do(t){let e=t.split("/").filter(
Boolean);e[0]?.toLowerCase()==="c"&&(e[0]="c");for(let n of _g){let s=ix(n.path.split("/").filter(Boolean),e);
if(s)return{route:n,params:s}}}function ix(t,e){if(t.length!==e.length)return;let n={};for(let[s,o]of t.entries()){
if(!o.startsWith(":")){if(o!==e[s])return;continue}try{n[o.slice(1)]=decodeURIComponent(e[s])}catch{return}}return n.
code&&(n.code=Bs(n.code)),n}var _g,td,Un=$(()=>{it();Nt();_g=[{name:"home",path:"/",load:()=>Promise.resolve().then(()=>(sd(),nd))},
{name:"bend",path:"/bend",needs:"bends.bend",load:()=>Promise.resolve().then(()=>(eh(),th))},{name:"bench",path:"\
/bench",floor:!0,load:()=>Promise.resolve().then(()=>(sp(),np))},{name:"part",path:"/part",needs:"parts.plan",
load:()=>Promise.resolve().then(()=>(vu(),_u))},{name:"scan",path:"/scan",floor:!0,load:()=>Promise.resolve().then(()=>(Uu(),Hu))},
{name:"card",path:"/c/:code",floor:!0,load:()=>Promise.resolve().then(()=>(nm(),em))},{name:"step",path:"/c/:c\
ode/step/:step",floor:!0,load:()=>Promise.resolve().then(()=>(im(),rm))},{name:"trial",path:"/c/:code/trial/:s\
tep",floor:!0,needs:"trials.keep",load:()=>Promise.resolve().then(()=>(bm(),$m))},{name:"history",path:"/c/:co\
de/history",load:()=>Promise.resolve().then(()=>(Mm(),Tm))},{name:"note",path:"/c/:code/note",floor:!0,needs:"\
cards.change",load:()=>Promise.resolve().then(()=>(Lm(),Am))},{name:"settle",path:"/c/:code/settle",floor:!0,needs:"\
cards.revise",load:()=>Promise.resolve().then(()=>(Bm(),Em))},{name:"print",path:"/c/:code/print",load:()=>Promise.resolve().then(()=>(Dm(),Wm))},
{name:"label",path:"/c/:code/label",load:()=>Promise.resolve().then(()=>(Um(),Hm))},{name:"labels",path:"/labe\
ls",needs:"labels.sheet_json",load:()=>Promise.resolve().then(()=>(Gm(),Vm))},{name:"chart",path:"/chart",needs:"\
bends.chart",load:()=>Promise.resolve().then(()=>(Ym(),Km))},{name:"shop",path:"/shop",load:()=>Promise.resolve().then(()=>(nf(),ef))},
{name:"press",path:"/shop/press",load:()=>Promise.resolve().then(()=>($f(),gf))},{name:"test-bend",path:"/shop\
/test-bend",floor:!0,needs:"evidence.keep",load:()=>Promise.resolve().then(()=>(Hf(),jf))},{name:"learned",path:"\
/shop/learned/:metal",needs:"evidence.learned",load:()=>Promise.resolve().then(()=>(Vf(),Uf))},{name:"tools",path:"\
/shop/:kind",load:()=>Promise.resolve().then(()=>(qf(),Gf))},{name:"tool",path:"/shop/:kind/:tool",load:()=>Promise.resolve().then(()=>(Zf(),Jf))},
{name:"crew",path:"/crew",needs:"crew.listed",load:()=>Promise.resolve().then(()=>(eg(),tg))},{name:"pair",path:"\
/pair",load:()=>Promise.resolve().then(()=>(og(),sg))},{name:"copies",path:"/copies",needs:"copies.listed",load:()=>Promise.resolve().then(()=>(pg(),hg))},
{name:"settings",path:"/settings",load:()=>Promise.resolve().then(()=>(yg(),wg))}],td=t=>_g.find(e=>e.name===t)});function qn(){let t=location.pathname,e=n=>n==="/"?t==="/"||t==="/scan"||/^\/c\//i.test(t):t.startsWith(n);Me(
i`<div class="masthead">
        <a class="name" href="/" aria-label="Flangebook, find a card">${cx}<span>Flangebook</span></a>
        ${Te()===null?i`<nav aria-label="Main">
                ${lx.filter(([n])=>fe(n)).map(([n,s])=>i`<a href=${n} aria-current=${e(n)?"page":"false"}>${s}</a>`)}
              </nav>`:d}
      </div>
      ${dx()}${Te()===null?hx():d}`,document.getElementById("masthead"))}function hx(){let{reached:t,waiting:e,
words:n,refused:s,settle:o,lost:a}=sn(),r=o.filter(h=>fe(`/c/${h}/settle`)),l=e?`${n} ${e===1?"waits":"wait"} \
to be sent.`:"",c=t===!1?"Not connected to the shop. Cards on this device still open.":"";return!c&&!l&&!r.length&&
!a?d:i`<p class="standing" data-test="standing">
    ${c} ${l} ${s?i`<a href="/settings">${s} refused: look</a>`:d}
    ${r.length?i`<a href="/c/${r[0]}/settle" data-test="settle-count">${r.length} to settle</a>`:d}
    ${a?i`<a href="/settings" data-test="lost-count"
            >${a===1?"1 card is":`${a} cards are`} not in the shop any more: look</a
          >`:d}
  </p>`}var lx,cx,dx,Gr=$(()=>{_();Je();Un();bt();lx=[["/","Cards"],["/bend","Bend"],["/part","Part"],["/shop",
"Shop"],["/settings","Settings"]];cx=i`<svg viewBox="0 0 64 64" aria-hidden="true">
  <path d="M12 8v34a8 8 0 0 0 8 8h36" fill="none" stroke="currentColor" stroke-width="7" />
</svg>`,dx=()=>isSecureContext?d:i`<p class="standing" data-test="not-secure">
        Over plain http this device keeps no cards for dead spots and has no camera here.
        <a href="/join">Join the shop's https</a>
      </p>`});Je();Gr();Ct();tt();bt();te();async function kg(){if("serviceWorker"in navigator)try{let t=await navigator.serviceWorker.register("/sw.\
js");t.waiting&&vg(t.waiting),t.addEventListener("updatefound",()=>{let e=t.installing;e?.addEventListener("st\
atechange",()=>{e.state==="installed"&&navigator.serviceWorker.controller&&vg(e)})}),await navigator.serviceWorker.
ready,document.documentElement.dataset.offlineReady="true",await navigator.storage?.persist?.()}catch(t){console.
warn("The app could not be kept on this device:",t)}}function vg(t){X("A newer Flangebook is here. It opens wh\
en you say so.",{label:"Open it now",act:()=>{navigator.serviceWorker.addEventListener("controllerchange",()=>location.
reload(),{once:!0}),t.postMessage("take over")}})}wo();gt(()=>wo());document.addEventListener("sync",()=>qn());document.addEventListener("turned-away",()=>{qn(),
document.documentElement.dataset.screen!=="pair"&&Ee()});document.addEventListener("rights",()=>{Te()===null&&
document.documentElement.dataset.screen!=="pair"&&Xc()});mc();Qc().finally(()=>{Hc(),kg()});
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
