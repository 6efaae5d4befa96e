// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import org.earleaf.app.picture.Photograph;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The pictures themselves. */
@Controller
class PhotographPage {
    private final Desk desk;

    PhotographPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/photographs/{id}")
    ResponseEntity<byte[]> whole(@PathVariable String id) {
        Photograph p = find(id);
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(p.type()))
                .body(p.image());
    }

    @GetMapping("/photographs/{id}/small")
    ResponseEntity<byte[]> small(@PathVariable String id) {
        return ResponseEntity.ok().contentType(MediaType.IMAGE_JPEG).body(find(id).small());
    }

    private Photograph find(String id) {
        return desk.notebook()
                .findPhotograph(id)
                .orElseThrow(() -> new Faults.NotHere(tell("page.photograph.there-is-no-such-photograph")));
    }
}
