package plumbleaf.web.browser;

import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;

/**
 * Does on a phone's page what a person would, and adds up how long the keystroke-level model says that takes someone who knows the page and errs nowhere.
 * It is a model, not a person: what is read, walked and taped is not in it.
 *
 * <p>Source: Card, Moran and Newell, The Psychology of Human-Computer Interaction, Erlbaum 1983, chapter 8, figure 8.1: keystroke K 0.28 s for an average typist,
 * 0.50 s for random letters, 0.75 s for complex codes; pointing P 1.10 s; pressing what is pointed at 0.20 s; mental preparation M 1.35 s. (First in Communications
 * of the ACM 23, 1980, pp. 396 to 410.) The times were taken with a mouse and a keyboard; that a thumb takes as long to a field as a mouse, as long to a key of
 * the pad as a code, and as long to a letter as one at random, and what a swipe and a new page take, are judgement.
 */
final class Keystrokes {
    private static final double MENTAL_S = 1.35;
    private static final double POINT_S = 1.10;
    private static final double PRESS_S = 0.20;
    private static final double LETTER_S = 0.50;
    private static final double CODE_S = 0.75;

    /** A page that is asked for and comes; judgement, above what any takes on the machine it was measured on. */
    private static final double PAGE_S = 1.0;

    /** What one swipe moves a page by, of its height. */
    private static final double SWIPE = 0.6;

    private final ChromeDriver browser;
    private int minds;
    private int taps;
    private int swipes;
    private int codes;
    private int letters;
    private int pages;

    Keystrokes(ChromeDriver browser) {
        this.browser = browser;
    }

    /** Thinks, finds, and taps what stays on this page. */
    void tap(WebElement what) {
        minds++;
        touch(what);
    }

    /** Thinks and taps what leads to another page. */
    void follow(WebElement what) {
        minds++;
        taps++;
        pages++;
        swipeTo(what);
        InBrowser.follow(browser, what);
    }

    /** A length on the pad, key by key; the pad stays for the next one. */
    void pad(WebElement field, String... keys) {
        minds++;
        if (!browser.switchTo().activeElement().equals(field)) touch(field);
        for (String key : keys) press(key);
    }

    /** Puts the pad away. */
    void done() {
        press("ok");
    }

    private void press(String key) {
        codes++;
        browser.findElement(By.cssSelector(".keypad [data-pad=\"" + key + "\"]"))
                .click();
    }

    /** Words on the phone's own keyboard. */
    void write(WebElement field, String words) {
        minds++;
        touch(field);
        letters += words.length();
        field.sendKeys(words);
    }

    /** From a list that opens over the page. */
    void pick(WebElement list, String value) {
        minds++;
        taps++;
        swipeTo(list);
        taps++;
        new Select(list).selectByValue(value);
    }

    private void touch(WebElement what) {
        taps++;
        swipeTo(what);
        what.click();
    }

    private void swipeTo(WebElement what) {
        // What the last press set going has come to rest: the pad gone, an answer laid out.
        browser.executeAsyncScript(
                "const [done] = arguments; requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)))");
        Object away = browser.executeScript("""
                const box = arguments[0].getBoundingClientRect();
                const tops = [...document.querySelectorAll('.keypad, .walk-on, .rooms')].map(bar => bar.getBoundingClientRect().top);
                const bottom = Math.min(innerHeight, ...tops.filter(top => top > innerHeight / 2));
                const away = box.bottom > bottom ? box.bottom - bottom : box.top < 0 ? -box.top : 0;
                if (away > 0) arguments[0].scrollIntoView({ block: 'center', behavior: 'instant' });
                return away / innerHeight;
                """, what);
        double screens = away instanceof Number number ? number.doubleValue() : 0;
        swipes += (int) Math.ceil(screens / SWIPE);
    }

    double seconds() {
        return MENTAL_S * minds
                + (POINT_S + PRESS_S) * taps
                + POINT_S * swipes
                + CODE_S * codes
                + LETTER_S * letters
                + PAGE_S * pages;
    }

    /** The counts as a line of the table in {@code docs/accessibility.md}. */
    String line(String walk, int limitS) {
        List<String> cells = List.of(
                walk,
                String.valueOf(minds),
                String.valueOf(taps),
                String.valueOf(swipes),
                String.valueOf(codes),
                String.valueOf(letters),
                String.valueOf(pages),
                told(seconds()),
                told(limitS));
        return "| " + String.join(" | ", cells) + " |";
    }

    private static String told(double seconds) {
        long whole = Math.round(seconds);
        return whole / 60 + ":" + (whole % 60 < 10 ? "0" : "") + whole % 60;
    }
}
