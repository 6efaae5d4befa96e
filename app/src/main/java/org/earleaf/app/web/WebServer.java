// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.util.Map;
import java.util.Objects;
import org.earleaf.app.desk.Days;
import org.earleaf.app.desk.Notebook;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.support.GenericApplicationContext;
import org.springframework.core.env.MapPropertySource;

/** Starts and stops the pages. */
public final class WebServer implements AutoCloseable {
    private final ConfigurableApplicationContext context;

    private WebServer(ConfigurableApplicationContext context) {
        this.context = context;
    }

    /**
     * @param address to listen on, "127.0.0.1" for this machine alone
     * @param port 0 takes a free one
     */
    public static WebServer start(Days days, Notebook notebook, String address, int port) {
        return start(days, notebook, Map.of("server.address", address, "server.port", port));
    }

    /** @param settings that stand before those of application.properties */
    static WebServer start(Days days, Notebook notebook, Map<String, Object> settings) {
        SpringApplication spring = new SpringApplication(WebConfig.class);
        spring.setWebApplicationType(WebApplicationType.SERVLET);
        spring.addInitializers(context -> {
            context.getEnvironment().getPropertySources().addFirst(new MapPropertySource("earleaf", settings));
            GenericApplicationContext beans = (GenericApplicationContext) context;
            beans.registerBean(Desk.class, () -> new Desk(days, notebook));
        });
        return new WebServer(spring.run());
    }

    public int port() {
        return Objects.requireNonNull(((WebServerApplicationContext) context).getWebServer())
                .getPort();
    }

    /** A part of the running server, such as the table of its pages. */
    <T> T part(Class<T> type) {
        return context.getBean(type);
    }

    @Override
    public void close() {
        context.close();
    }
}
