package plumbleaf.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseCookie;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Light sheet or dark sheet, kept on this device. */
@Controller
class LookSwitch {
    private static final Duration KEPT = Duration.ofDays(365);

    @PostMapping("/look")
    ResponseEntity<Void> look(
            HttpServletRequest request, @RequestParam String look, @RequestParam(defaultValue = "/") String back) {
        String value = look.equals("dark") ? "dark" : "light";
        boolean ours = back.startsWith("/") && !back.startsWith("//") && !back.contains("\\");
        ResponseCookie cookie = ResponseCookie.from(Pages.LOOK_COOKIE, value)
                .path("/")
                .maxAge(KEPT)
                .sameSite("Lax")
                .httpOnly(true)
                .secure(request.isSecure())
                .build();
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.SET_COOKIE, cookie.toString())
                .location(URI.create(ours ? back : "/"))
                .build();
    }
}
