// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.http.HttpServletResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Keeps the reader's choice of light and units in a cookie and goes back to the page it was made on. */
@Controller
class LookPage {
    private static final Duration KEPT = Duration.ofDays(365);

    @PostMapping("/look")
    String choose(
            @RequestParam(required = false) String light,
            @RequestParam(required = false) String units,
            @RequestParam(defaultValue = "/") String back,
            HttpServletResponse response) {
        if (light != null) {
            keep(response, Frame.LIGHT, Frame.LIGHTS.contains(light) ? light : "");
        }
        if (units != null) {
            keep(response, Frame.UNITS, "metric".equals(units) ? "metric" : "us");
        }
        return "redirect:" + local(back);
    }

    static void keep(HttpServletResponse response, String name, String value) {
        ResponseCookie cookie = ResponseCookie.from(name, URLEncoder.encode(value, StandardCharsets.UTF_8))
                .path("/")
                .maxAge(value.isEmpty() ? Duration.ZERO : KEPT)
                .httpOnly(true)
                .sameSite("Lax")
                .build();
        response.addHeader(HttpHeaders.SET_COOKIE, cookie.toString());
    }

    /** Only a path of this server; anything that a browser could read as another place becomes the first page. */
    private static String local(String back) {
        boolean isPath = back.startsWith("/") && !back.startsWith("//") && !back.contains("\\") && !back.contains("\n");
        return isPath ? back : "/";
    }
}
