// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Objects;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/**
 * The version that a change was made on: of the header If-Match where it is sent, else of the form. Without either a
 * change is refused, so that nothing is overwritten unseen (RFC 9110, 13.1.1).
 *
 * @param number of the version
 * @param asked whether the header asked for it
 */
record Version(long number, boolean asked) {
    static Version of(HttpServletRequest request, @Nullable String field) {
        String header = Objects.requireNonNullElse(request.getHeader(HttpHeaders.IF_MATCH), "")
                .strip();
        String said = header.isEmpty() ? ReadingForm.text(field) : header.replace("\"", "");
        try {
            return new Version(Long.parseLong(said), !header.isEmpty());
        } catch (NumberFormatException none) {
            throw new EarleafException(Problem.of(
                    "version.the-version-that-was-changed", Said.text("version"), Said.text("\"" + said + "\"")));
        }
    }

    /** What a stale one answers with. */
    HttpStatus refused() {
        return asked ? HttpStatus.PRECONDITION_FAILED : HttpStatus.CONFLICT;
    }
}
