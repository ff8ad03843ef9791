package org.lowfirst.web;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.Map;
import org.lowfirst.web.view.Screens;
import org.lowfirst.web.workplace.Workplace;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.context.ApplicationContextException;
import org.springframework.context.ConfigurableApplicationContext;

/** Starts and stops the web pages of one bench. */
public final class WebApplication {

    /** Fields of the largest form, a table of bottles, with some to spare. */
    private static final int MOST_FIELDS = 10_000;

    private WebApplication() {}

    /**
     * Starts serving, or says why not.
     *
     * @param request where to listen and what to serve
     */
    public static Serving start(ServeRequest request) {
        InetAddress address;
        try {
            address = InetAddress.getByName(request.bind());
        } catch (UnknownHostException unknown) {
            return new Serving.Refused("The bind address (" + request.bind()
                    + ") is not an address of this machine.\nMaybe leave it out: 127.0.0.1 is used then.");
        }
        if (!address.isLoopbackAddress()) {
            return new Serving.Refused("The bind address (" + request.bind()
                    + ") must be a loopback address such as 127.0.0.1, because pages are served without sign-in.");
        }
        return isTaken(address, request.port()) ? taken(request) : start(request, address);
    }

    private static Serving start(ServeRequest request, InetAddress address) {
        SpringApplication application = new SpringApplication(Pages.class);
        application.setBannerMode(Banner.Mode.OFF);
        application.setLogStartupInfo(false);
        application.setRegisterShutdownHook(false);
        application.setLazyInitialization(true);
        application.setDefaultProperties(Map.of(
                "server.address",
                address.getHostAddress(),
                "server.port",
                request.port(),
                "server.shutdown",
                "graceful",
                "server.tomcat.max-parameter-count",
                MOST_FIELDS,
                "logging.level.root",
                "WARN"));
        Screens screens = new Screens();
        application.addInitializers(context -> {
            context.getBeanFactory().registerSingleton("screens", screens);
            context.getBeanFactory()
                    .registerSingleton(
                            "workplace", new Workplace(request.benches(), screens, request.clock(), request.ids()));
        });
        try {
            ConfigurableApplicationContext context = application.run();
            int port = context.getEnvironment().getRequiredProperty("local.server.port", Integer.class);
            return new Serving.Started(urlOf(address, port), context::close);
        } catch (ApplicationContextException failed) {
            if (failed.getCause() instanceof PortInUseException) {
                return taken(request);
            }
            throw failed;
        }
    }

    /** Asked beforehand, so that the common case is answered without a word in the log. */
    private static boolean isTaken(InetAddress address, int port) {
        try (ServerSocket probe = new ServerSocket(port, 1, address)) {
            return !probe.isBound();
        } catch (IOException taken) {
            return true;
        }
    }

    private static Serving taken(ServeRequest request) {
        return new Serving.Refused("Port " + request.port() + " on " + request.bind()
                + " is taken by another program.\nMaybe choose another port, or stop the other one.");
    }

    private static URI urlOf(InetAddress address, int port) {
        String host = address.getHostAddress();
        return URI.create("http://" + (host.contains(":") ? "[" + host + "]" : host) + ":" + port + "/");
    }
}
