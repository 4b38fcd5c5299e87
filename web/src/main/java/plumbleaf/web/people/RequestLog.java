package plumbleaf.web.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.web.filter.OncePerRequestFilter;

/** One line a request: no query, no form, and of a link that carries a secret only its beginning. */
final class RequestLog extends OncePerRequestFilter {
    private static final Logger LOG = LoggerFactory.getLogger("plumbleaf.requests");
    private static final int LONGEST = 200;

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse answer, FilterChain next)
            throws ServletException, IOException {
        long start = System.nanoTime();
        try {
            next.doFilter(request, answer);
        } finally {
            LOG.atInfo()
                    .addKeyValue("method", request.getMethod())
                    .addKeyValue("path", shown(RoleRules.path(request)))
                    .addKeyValue("status", answer.getStatus())
                    .addKeyValue("ms", (System.nanoTime() - start) / 1_000_000)
                    .log("request");
        }
    }

    /** Without secrets, and without characters that would make another line of it. */
    static String shown(String path) {
        String open = path.replaceAll("^(/c/|/welcome/)[^/]+", "$1...");
        String plain = open.replaceAll("[^\\x21-\\x7e]", "?");
        return plain.length() > LONGEST ? plain.substring(0, LONGEST) : plain;
    }
}
