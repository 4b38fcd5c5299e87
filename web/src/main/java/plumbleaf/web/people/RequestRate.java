package plumbleaf.web.people;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.web.filter.OncePerRequestFilter;

/** So many requests at once and so many a second from one address, on this node; more are told to wait. */
final class RequestRate extends OncePerRequestFilter {
    private static final int REMEMBERED = 10_000;
    private static final double NANOS = 1e9;

    private final int burst;
    private final int perSecond;
    private final Map<String, Bucket> buckets = new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** What an address has left, and when that was so. */
    private record Bucket(double left, long at) {}

    RequestRate(int burst, int perSecond) {
        this.burst = burst;
        this.perSecond = perSecond;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse answer, FilterChain next)
            throws ServletException, IOException {
        if (take(request.getRemoteAddr(), System.nanoTime())) {
            next.doFilter(request, answer);
            return;
        }
        answer.setStatus(429);
        answer.setHeader("Retry-After", "5");
        answer.setContentType("text/plain;charset=UTF-8");
        answer.getWriter().println("Too many requests from one address. Wait a few seconds.");
    }

    boolean take(String address, long now) {
        synchronized (buckets) {
            Bucket before = buckets.getOrDefault(address, new Bucket(burst, now));
            double left = Math.min(burst, before.left + (now - before.at) / NANOS * perSecond);
            boolean enough = left >= 1;
            buckets.put(address, new Bucket(enough ? left - 1 : left, now));
            return enough;
        }
    }
}
