package plumbleaf.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.logging.LoggingSystem;
import org.springframework.boot.web.server.WebServer;
import org.springframework.boot.web.server.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import plumbleaf.web.desk.DemoJob;
import plumbleaf.web.people.People;
import plumbleaf.web.people.SetupCode;
import plumbleaf.web.store.Database;

/** The whole workspace as one server. Started by the launcher; runs until its process is told to end. */
@SpringBootApplication
public class Workspace {
    /**
     * @param local     one person, this machine only
     * @param address   to listen on; local always listens on loopback
     * @param port      to listen on; 0 picks a free one
     * @param store     SQLite file or {@code jdbc:postgresql:} address
     * @param demo      whether the demo job is put in
     * @param balanced  whether a balancer on a private address stands before it, whose word on who asks is taken
     * @param jsonLog   whether every request is logged, one JSON object a line
     * @param styles    file of the company's own fence styles; empty for none
     */
    public record Settings(
            boolean local,
            String address,
            int port,
            String store,
            boolean demo,
            boolean balanced,
            boolean jsonLog,
            String styles) {
        /** For one person on this machine, with nothing else about it. */
        public static Settings alone(int port, String store, boolean demo) {
            return new Settings(true, "127.0.0.1", port, store, demo, false, false, "");
        }
    }

    /**
     * A workspace that answers.
     *
     * @param port      it listens on
     * @param setupCode what the first owner types; empty where there is one already, or none is needed
     * @param demoJob   id of the demo job; empty where it was not asked for
     * @param end       what stops it
     */
    public record Running(int port, String setupCode, String demoJob, Runnable end) {
        /** Answers what was asked, takes nothing new, and lets go of the store. */
        public void stop() {
            end.run();
        }
    }

    /**
     * Returns when the first page can be asked for.
     *
     * @throws plumbleaf.web.store.CannotOpen where the store does not open
     */
    public static Running start(Settings settings) {
        // Until the server sets them up, the libraries would log as they like.
        LoggingSystem.get(Workspace.class.getClassLoader()).beforeInitialize();
        Database store = Database.open(settings.store());
        SpringApplication application = new SpringApplication(Workspace.class);
        application.setRegisterShutdownHook(false);
        application.setDefaultProperties(properties(settings));
        application.addInitializers(
                context -> ((GenericApplicationContext) context).registerBean(Database.class, () -> store));
        ConfigurableApplicationContext context = application.run();
        WebServer server = Objects.requireNonNull(((ServletWebServerApplicationContext) context).getWebServer());
        boolean nobody = !settings.local() && context.getBean(People.class).nobodyYet();
        String code = nobody ? context.getBean(SetupCode.class).text() : "";
        String demo = settings.demo() ? context.getBean(DemoJob.class).put().text() : "";
        return new Running(server.getPort(), code, demo, context::close);
    }

    private static Map<String, Object> properties(Settings settings) {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("plumbleaf.mode", settings.local() ? "local" : "served");
        properties.put("plumbleaf.store", settings.store());
        properties.put("plumbleaf.styles", settings.styles());
        properties.put("server.address", settings.local() ? "127.0.0.1" : settings.address());
        properties.put("server.port", settings.port());
        properties.put("server.forward-headers-strategy", settings.balanced() ? "native" : "none");
        if (settings.jsonLog()) {
            properties.put("logging.structured.format.console", "logstash");
            properties.put("logging.level.plumbleaf.requests", "info");
        }
        return properties;
    }
}
