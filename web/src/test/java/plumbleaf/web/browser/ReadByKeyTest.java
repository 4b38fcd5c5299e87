package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import plumbleaf.web.page.Room;

/**
 * What WCAG 2.2 asks at level AA and no rule engine checks: 2.1.1 and 2.1.2 keyboard, no trap; 2.4.7 focus visible; 2.4.11 focus not obscured; 2.5.8 target size;
 * 1.4.10 reflow at 320 px; 1.4.12 text spacing; and reduced motion. Tab goes through every page as a person would.
 */
class ReadByKeyTest extends InBrowser {
    private static final int MOST = 900;
    private static final int LOOKS = 20;

    @Test
    void everyPageIsGoneThroughByTabWithTheFocusInSight() {
        List<String> unseen = new ArrayList<>();
        for (boolean small : List.of(false, true)) {
            if (small) phone();
            for (String page : pages()) {
                go(page);
                String where = page + (small ? " on a phone: " : ": ");
                browser.executeScript(THERE);
                Set<String> seen = new LinkedHashSet<>();
                String last = "";
                for (int i = 0; i < MOST; i++) {
                    new Actions(browser).sendKeys(Keys.TAB).perform();
                    Map<?, ?> focus = focus();
                    String at = String.valueOf(focus.get("at"));
                    // A date has a place for its day, its month and its year.
                    if (at.isEmpty() || (!seen.add(at) && !at.equals(last))) break;
                    last = at;
                    if (!Boolean.TRUE.equals(focus.get("ringed"))) unseen.add(where + "no ring about " + focus);
                    if (!Boolean.TRUE.equals(focus.get("bare"))) unseen.add(where + "covered is " + focus);
                }
                Object missed = browser.executeScript(MISSED);
                if (!List.of().equals(missed)) unseen.add(where + seen.size() + " seen, not come to " + missed);
            }
        }
        assertThat(unseen).isEmpty();
    }

    /** A page may still move when it is looked at, and on a busy machine for long: what is unseen is looked at until it has come to rest. */
    private Map<?, ?> focus() {
        Map<?, ?> focus = Map.of();
        for (int looks = 0; looks < LOOKS; looks++) {
            if (looks > 0) browser.executeAsyncScript("setTimeout(arguments[0], 250)");
            focus = (Map<?, ?>) Objects.requireNonNull(browser.executeScript(FOCUS));
            if (Boolean.TRUE.equals(focus.get("ringed")) && Boolean.TRUE.equals(focus.get("bare"))) break;
        }
        return focus;
    }

    @Test
    void whatIsPressedIsAtLeastTwentyFourPixelsEachWay() {
        for (String page : pages()) {
            go(page);
            assertThat(browser.executeScript(SMALL)).as(page).isEqualTo(List.of());
        }
    }

    @Test
    void everyPageFitsThreeHundredAndTwentyPixelsAndWiderSetText() {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 320, "height", 640, "deviceScaleFactor", 2, "mobile", true));
        List<String> faults = new ArrayList<>();
        for (String page : pages()) {
            go(page);
            if (over() > 320) faults.add(page + " is " + over() + " wide: " + browser.executeScript(WIDE));
            browser.executeScript(SPACED);
            if (over() > 320) faults.add(page + " set wider is " + over() + " wide: " + browser.executeScript(WIDE));
            Object cut = browser.executeScript(CUT);
            if (!List.of().equals(cut)) faults.add(page + " set wider cuts " + cut);
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void whoAsksForLessMotionGetsNone() {
        browser.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
        for (String page : pages()) {
            go(page);
            assertThat(browser.executeScript(MOVING)).as(page).isEqualTo(List.of());
        }
    }

    private List<String> pages() {
        List<String> pages = new ArrayList<>(List.of("/", "/new", "/new/fence", "/yard", "/calendar"));
        for (Room room : Room.values()) pages.add("/jobs/" + job.id() + "/" + room.key());
        for (String more : List.of("walk/3", "walk/99", "history", "since/1", "files"))
            pages.add("/jobs/" + job.id() + "/" + more);
        return pages;
    }

    private int over() {
        return browser.executeScript("return document.documentElement.scrollWidth") instanceof Long wide
                ? Math.toIntExact(wide)
                : Integer.MAX_VALUE;
    }

    /** What has the focus, whether a ring is drawn about it, and whether any of it can be seen. */
    private static final String FOCUS = """
            const one = document.activeElement;
            if (!one || one === document.body) return { at: '', ringed: true, bare: true };
            document.gone ??= [];
            if (!document.gone.includes(one)) document.gone.push(one);
            // A field's ring stands about its unit too.
            const style = getComputedStyle(one.closest('.entry') ?? one);
            const box = one.getBoundingClientRect();
            const ringed = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) > 0 || style.boxShadow !== 'none' || style.filter !== 'none';
            const shown = { left: Math.max(box.left, 0), right: Math.min(box.right, innerWidth), top: Math.max(box.top, 0), bottom: Math.min(box.bottom, innerHeight) };
            let bare = box.width * box.height === 0 && one.nodeName !== 'g';
            for (let x = 1; x < 10 && !bare; x++) for (let y = 1; y < 10 && !bare; y++) {
                const hit = document.elementFromPoint(shown.left + (shown.right - shown.left) * x / 10, shown.top + (shown.bottom - shown.top) * y / 10);
                bare = Boolean(hit) && (one.contains(hit) || hit.contains(one) && !hit.matches('html, body') || hit.closest('label')?.control === one);
            }
            if (one instanceof SVGElement) bare = shown.right > shown.left - 1 && shown.bottom > shown.top - 1;
            return { at: document.gone.indexOf(one) + ' ' + one.nodeName + ' ' + (one.id || one.className?.baseVal || one.className || '') + ' ' + (one.getAttribute('aria-label') ?? one.textContent ?? '').trim().slice(0, 30),
                ringed, bare, box: [box.x, box.y, box.width, box.height].map(Math.round).join(' ') };
            """;

    /** What there is to come to and was not; of the radio buttons of one choice, one is enough, and a strip leafed to its end has no next. */
    private static final String MISSED = """
            const gone = document.gone ?? [];
            const names = new Set(gone.filter((one) => one.type === 'radio').map((one) => one.name));
            return document.there.filter((one) => !one.disabled).filter((one) => !(one.type === 'radio' && names.has(one.name)) && !gone.includes(one))
                .map((one) => one.nodeName + ' ' + (one.id || one.getAttribute('aria-label') || one.textContent.trim().slice(0, 30)));
            """;

    private static final String THERE = """
            document.there = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
                .filter((one) => !one.disabled && one.type !== 'hidden' && one.checkVisibility({ visibilityProperty: true }));
            """;

    private static final String WIDE = """
            return [...document.querySelectorAll('body *')].filter((one) => one.checkVisibility() && one.getBoundingClientRect().right > 321
                    && ![...(function* () { for (let up = one.parentElement; up; up = up.parentElement) yield up; })()]
                        .some((up) => ['auto', 'scroll', 'hidden'].includes(getComputedStyle(up).overflowX) && up !== document.body && up !== document.documentElement))
                .slice(0, 3).map((one) => one.nodeName + ' ' + (one.className?.baseVal ?? one.className) + ' ' + one.textContent.trim().slice(0, 30));
            """;

    /** Links in a line of text are as high as the line (the criterion's own exception), as are things with room for 24 px about their middle. */
    private static final String SMALL = """
            const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [role=slider]')]
                .filter((one) => one.type !== 'hidden' && one.checkVisibility({ visibilityProperty: true }) && !one.matches('.skip'));
            const boxes = all.map((one) => one.closest('label')?.getBoundingClientRect() ?? one.getBoundingClientRect());
            const inText = (one) => one.matches('a') && getComputedStyle(one).display === 'inline';
            const alone = (i) => { const x = boxes[i].x + boxes[i].width / 2, y = boxes[i].y + boxes[i].height / 2;
                return boxes.every((box, k) => k === i || all[k].contains(all[i]) || all[i].contains(all[k])
                    || Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom)) >= 12); };
            return all.filter((one, i) => boxes[i].width > 0 && Math.min(boxes[i].width, boxes[i].height) < 23.5 && !inText(one) && !alone(i))
                .map((one) => one.nodeName + ' ' + (one.dataset.of ?? one.id) + ' ' + one.textContent.trim().slice(0, 30) + ' '
                    + Math.round(one.getBoundingClientRect().width) + ' x ' + Math.round(one.getBoundingClientRect().height));
            """;

    /** As 1.4.12 sets it. */
    private static final String SPACED = """
            const style = new CSSStyleSheet();
            style.replaceSync('* { line-height: 1.5 !important; letter-spacing: .12em !important; word-spacing: .16em !important } p { margin-bottom: 2em !important }');
            document.adoptedStyleSheets = [style];
            """;

    private static final String CUT = """
            return [...document.querySelectorAll('main *')].filter((one) => !(one instanceof SVGElement) && one.textContent.trim() && one.checkVisibility())
                .filter((one) => { const style = getComputedStyle(one);
                    return style.overflowX === 'hidden' && one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 1
                        || style.overflowY === 'hidden' && one.scrollHeight > one.clientHeight + 1 && one.clientHeight > 1; })
                .map((one) => one.nodeName + ' ' + one.className + ' ' + one.textContent.trim().slice(0, 40));
            """;

    private static final String MOVING = """
            return [...document.querySelectorAll('*')].filter((one) => { const style = getComputedStyle(one);
                    const longest = (times) => Math.max(...times.split(',').map(parseFloat));
                    return longest(style.transitionDuration) > 0.01 || style.animationName !== 'none' && longest(style.animationDuration) > 0.01
                        || style.scrollBehavior === 'smooth'; })
                .map((one) => one.nodeName + ' ' + (one.className?.baseVal ?? one.className)).slice(0, 5);
            """;
}
