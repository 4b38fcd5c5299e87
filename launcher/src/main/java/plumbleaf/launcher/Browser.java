package plumbleaf.launcher;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The browser of whoever sits here, where there is one. */
final class Browser {
    private Browser() {}

    /** Opens an address; where that cannot be done nothing happens, since the address was printed. */
    static void open(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        boolean screen = system.contains("mac") || system.contains("win") || hasScreen();
        if (!screen) return;
        List<String> opener = system.contains("mac")
                ? List.of("open", address)
                : system.contains("win")
                        ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                        : List.of("xdg-open", address);
        try {
            new ProcessBuilder(opener)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException noBrowser) {
            System.err.println("No browser could be opened; open the address yourself.");
        }
    }

    private static boolean hasScreen() {
        return System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
    }
}
