package plumbleaf.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.RequestMappingInfoHandlerMapping;

/** Every door there is, as the server itself lists them, so that a test cannot forget one that is added later. */
final class Routes {
    /** A way to knock: {@code GET /jobs/abc/gates}. */
    record Route(String method, String pattern, String path) {}

    private Routes() {}

    /** @param known what each variable of a path may be; a door with a variable that is not known here fails the test */
    static List<Route> all(RequestMappingInfoHandlerMapping mapping, Map<String, List<String>> known) {
        List<Route> routes = new ArrayList<>();
        for (RequestMappingInfo info : mapping.getHandlerMethods().keySet()) {
            Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
            for (String pattern : new TreeSet<>(info.getPatternValues()))
                for (String path : filled(pattern, known)) {
                    if (methods.isEmpty()) routes.add(new Route("GET", pattern, path));
                    for (RequestMethod method : methods) routes.add(new Route(method.name(), pattern, path));
                }
        }
        routes.sort((a, b) -> (a.path() + " " + a.method()).compareTo(b.path() + " " + b.method()));
        return routes;
    }

    private static List<String> filled(String pattern, Map<String, List<String>> known) {
        int open = pattern.indexOf('{');
        if (open < 0) return List.of(pattern);
        int close = pattern.indexOf('}', open);
        String name = pattern.substring(open + 1, close);
        List<String> values = known.get(name);
        if (values == null) throw new AssertionError("Tell the test what {" + name + "} may be in " + pattern);
        List<String> paths = new ArrayList<>();
        for (String value : values)
            paths.addAll(filled(pattern.substring(0, open) + value + pattern.substring(close + 1), known));
        return paths;
    }
}
