package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Parts of the field book with an engine that the test answers for: what they do where an answer comes late, is overtaken, or never comes. */
class FieldBookPartsTest extends InBrowser {
    /** A job that is held, an engine whose questions wait in {@code asked} until they are answered, and what nobody caught. */
    private static final String AROUND = """
            const done = arguments[arguments.length - 1];
            const uncaught = [];
            addEventListener("unhandledrejection", (event) => uncaught.push(event.reason.message));
            const asked = [];
            const engine = { ask: (verb, ...texts) => new Promise((answer, fault) => asked.push({ verb, texts, answer: (tree) => answer(typeof tree === "string" ? tree : JSON.stringify(tree)), fault: (words) => fault(new Error(words)) })) };
            const laidOut = { findings: [], ofGround: [], ground: [], drawings: [] };
            const document_ = { title: "A yard", runs: [{ id: "R1", infill: "6'" }], gates: [{ id: "G1", opening: "4'" }], ground: { shots: [] } };
            const held = { id: "j1", person: "tester", title: "A yard", version: "3", document: JSON.stringify(document_) };
            const told = { asks: () => ({ parts: ["none"], known: [], later: [] }), step() {}, kept() {}, stopped() {} };
            const edit = (value) => ({ at: "/jobs/j1/gates/edit", path: "gates[G1].opening", fields: [["path", "gates[G1].opening"], ["unit", "WORDS"], ["value", value]] });
            const a_while = () => new Promise((then) => setTimeout(then, 60));
            const next = async (verb) => { for (let i = 0; i < 100; i++) { const at = asked.findIndex((one) => one.verb === verb); if (at >= 0) return asked.splice(at, 1)[0]; await a_while(); } throw new Error("never asked: " + verb); };
            (async () => {
                %s
            })().then(done, (fault) => done("fault: " + fault.message));
            """;

    @BeforeEach
    void theBook() {
        go("/field-book/");
    }

    @Test
    void aChangeThatIsOvertakenByAnAnswerFromTheDeskIsWorkedOutAllTheSame() {
        assertThat(run("""
                        const { OpenJob } = await import("/field-book/openjob.js");
                        const book = new OpenJob(held, engine, told);
                        book.work();
                        (await next("unpriced")).answer({});
                        const kept = book.put(edit("4' 2"));
                        const late = await next("laid");
                        // The desk's answer comes, and the job is worked out anew, before the engine has looked at the change.
                        book.work();
                        await a_while();
                        late.answer(laidOut);
                        await kept;
                        for (let i = 0; i < 3; i++) { const one = asked.find((each) => each.verb === "laid"); if (one) { asked.splice(asked.indexOf(one), 1); one.answer(laidOut); } await a_while(); }
                        const worked = JSON.parse((await next("unpriced")).texts[0]);
                        return worked.gates[0].opening + " " + book.job().gates[0].opening;
                        """)).isEqualTo("4' 2 4' 2");
    }

    @Test
    void anEngineThatFaultsWhileNumbersOrMeasuringAreDrawnIsSaidInTheirPlace() {
        assertThat(run("""
                        const { numbers } = await import("/field-book/numbers.js");
                        const { measuring } = await import("/field-book/measuring.js");
                        const broken = async () => { throw new Error("a post lost its name"); };
                        const book = { id: "j1", step: "designed", job: () => document_, drawings: broken, ground: broken, findings: () => [], metric: () => false };
                        const place = document.createElement("div");
                        document.body.append(place);
                        numbers(place, book);
                        await a_while();
                        const first = place.querySelector("#shown").textContent;
                        measuring(place, book);
                        await a_while();
                        return [first, place.querySelector("#closure").textContent, ...uncaught].join(" | ");
                        """)).isEqualTo("Not drawn: a post lost its name | Not worked out: a post lost its name");
    }

    @Test
    void theCrewSheetIsThereWithTheFindingsAndWaitsForNoPrice() {
        assertThat(run("""
                        const { crew } = await import("/field-book/crew.js");
                        const place = document.createElement("div");
                        document.body.append(place);
                        const book = { isWorked: true, step: "laid", crewSheet: async () => "<p>Dig first.</p>" };
                        const page = crew(place, book);
                        await a_while();
                        const before = place.textContent;
                        book.step = "designed";
                        page.step();
                        await a_while();
                        return before + " " + place.textContent;
                        """)).isEqualTo("Being worked out. Dig first.");
    }

    @Test
    void whatWasSentWithoutAnAnswerIsOnesOwnWhenItIsFoundAtTheDesk() {
        assertThat(run("""
                        const { queueOf, isOwn } = await import("/assets/queue.js");
                        const queue = queueOf("j1", "tester");
                        const id = queue.put({ ...edit("4' 2"), was: "4'" });
                        queue.goes(id);
                        queue.stays(id);
                        queue.put({ ...edit("4' 3"), was: "4'" });
                        const [only, ...others] = queue.list();
                        queue.drop(only.id);
                        return [others.length, isOwn(only, "4'"), isOwn(only, "4' 2"), isOwn(only, "4' 5")].join(" ");
                        """)).isEqualTo("0 true true false");
    }

    private String run(String script) {
        return String.valueOf(browser.executeAsyncScript(AROUND.formatted(script)));
    }
}
