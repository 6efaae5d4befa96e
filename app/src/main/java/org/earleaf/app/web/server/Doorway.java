// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.server;

import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.core.env.Environment;

/** Puts what holds for every answer into the server; its other bounds stand in application.properties. */
public final class Doorway implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {
    private final Arrivals.Pace pace;

    public Doorway(Environment settings) {
        pace = Binder.get(settings)
                .bind("earleaf.arrivals", Arrivals.Pace.class)
                .get();
    }

    @Override
    public void customize(TomcatServletWebServerFactory server) {
        server.addEngineValves(new SafeHeaders());
        // Inside of the server's own report, so that ours speaks first; and arrivals inside of that, so that it is
        // told.
        server.addContextCustomizers(pages -> {
            pages.getParent().getPipeline().addValve(new PlainFault());
            pages.getParent().getPipeline().addValve(new Arrivals(pace));
        });
    }
}
