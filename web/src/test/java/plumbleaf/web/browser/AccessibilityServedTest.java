package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import plumbleaf.web.Trial;
import plumbleaf.web.Workspace;
import plumbleaf.web.people.SetupCode;

/** The pages that stand only where several people sign in: the first owner, the door, people, the log, oneself. */
@Tag("browser")
@SpringBootTest(classes = Workspace.class, webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class AccessibilityServedTest {
    @LocalServerPort
    private int port;

    @Autowired
    private SetupCode code;

    private ChromeDriver browser;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "served");
    }

    @BeforeEach
    void open() {
        browser = Chromium.open(1280, 900);
    }

    @AfterEach
    void close() {
        browser.quit();
    }

    @Test
    void noPageOfPeopleBreaksARule() {
        assertThat(faults("/first-owner")).isEmpty();
        browser.get(server() + "/first-owner");
        fill("code", code.text());
        fill("name", "Wen Hallow");
        fill("signIn", "wen");
        fill("password", "a long enough one");
        press();
        assertThat(faults("/sign-in", "/sign-in?again")).isEmpty();
        browser.get(server() + "/sign-in");
        fill("signIn", "wen");
        fill("password", "a long enough one");
        press();
        assertThat(faults("/", "/people", "/audit", "/me")).isEmpty();
        assertThat(browser.getCurrentUrl()).endsWith("/me");
    }

    private List<String> faults(String... pages) {
        return Axe.faults(browser, server(), List.of(pages));
    }

    private String server() {
        return "http://127.0.0.1:" + port;
    }

    private void fill(String name, String text) {
        browser.findElement(By.name(name)).sendKeys(text);
    }

    private void press() {
        InBrowser.follow(browser, browser.findElement(By.cssSelector(".sheet-form button")));
    }
}
