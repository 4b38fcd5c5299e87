package plumbleaf.web.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * In local mode nobody signs in, so nobody but this machine is let in: the sender must be this machine, and the host it asked for must
 * be one of this machine's own names, or a page elsewhere could reach in through a name that it points here.
 */
final class OnlyThisMachine extends OncePerRequestFilter {
    private static final List<String> OWN_NAMES = List.of("localhost", "127.0.0.1", "[::1]", "::1");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse answer, FilterChain next)
            throws ServletException, IOException {
        if (fromHere(request.getRemoteAddr())
                && OWN_NAMES.contains(request.getServerName().toLowerCase(Locale.ROOT))) {
            next.doFilter(request, answer);
            return;
        }
        answer.setStatus(HttpServletResponse.SC_FORBIDDEN);
        answer.setContentType("text/plain;charset=UTF-8");
        answer.getWriter()
                .println(
                        "This workspace runs for one person on one machine. Start it with `serve` to let others sign in.");
    }

    private static boolean fromHere(String address) {
        try {
            return InetAddress.getByName(address).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
