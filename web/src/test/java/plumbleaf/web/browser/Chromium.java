package plumbleaf.web.browser;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The system's own browser, without a window and without a word to any other machine. {@code CHROMIUM} and {@code CHROMEDRIVER} name others. */
final class Chromium {
    private Chromium() {}

    static ChromeDriver open(int width, int height) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program("CHROMIUM", "chromium", "chromium-browser", "google-chrome"));
        options.addArguments(
                "--headless=new",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + freshFolder(),
                "--enable-unsafe-swiftshader",
                "--window-size=" + width + "," + height);
        if ("root".equals(System.getProperty("user.name"))) options.addArguments("--no-sandbox");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService driver = new ChromeDriverService.Builder()
                .usingDriverExecutable(new File(program("CHROMEDRIVER", "chromedriver")))
                .build();
        ChromeDriver browser = new ChromeDriver(driver, options);
        browser.manage().timeouts().scriptTimeout(Duration.ofMinutes(2));
        return browser;
    }

    private static String program(String variable, String... names) {
        String given = System.getenv(variable);
        if (given != null && !given.isBlank()) return given;
        for (String name : names) {
            Optional<String> found = onPath(name);
            if (found.isPresent()) return found.get();
        }
        throw new IllegalStateException("Found none of " + List.of(names) + "; install it or name it with " + variable);
    }

    private static Optional<String> onPath(String name) {
        String path = System.getenv("PATH");
        if (path == null) return Optional.empty();
        for (String folder : path.split(File.pathSeparator, -1)) {
            Path file = Path.of(folder, name);
            if (Files.isExecutable(file)) return Optional.of(file.toString());
        }
        return Optional.empty();
    }

    private static Path freshFolder() {
        try {
            Path target = Files.createDirectories(Path.of("target", "browser"));
            return Files.createTempDirectory(target, "profile").toAbsolutePath();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
