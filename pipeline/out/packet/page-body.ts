/** The parts of the page that its script fills. The words of every packet's page are the same. */
export const BODY = `<p id="progress"></p>
<div class="tools">
<button type="button" id="only" aria-pressed="false">Only what changed</button>
<button type="button" id="help-open">Keys</button>
<button type="button" id="finish-open" class="main">Finish</button>
</div>
</header>
<p id="warning" role="alert" hidden></p>
<div class="frame">
<nav aria-label="Texts">
<details id="contents"><summary>All texts</summary><ol id="list"></ol></details>
</nav>
<main>
<article id="card" aria-label="The text"></article>
<section id="decide" aria-labelledby="decide-title">
<p id="said" role="status"></p>
<div class="turn"><button type="button" id="previous">Previous</button><button type="button" id="next">Next</button></div>
<h3 id="decide-title">Your decision</h3>
<p id="standing"></p>
<details id="parts-box"><summary>Decide part by part</summary><fieldset id="parts"><legend>The decision is for</legend></fieldset></details>
<div class="verdicts" id="verdicts" role="group" aria-label="Decide"></div>
<p class="more"><button type="button" id="remark-open">Remark …</button> <button type="button" id="undo">Undo</button></p>
<ul id="remarks"></ul>
</section>
</main>
</div>
<dialog id="dialog" aria-labelledby="dialog-title"></dialog>
<div id="print"></div>`;
