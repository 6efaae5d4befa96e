// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import org.earleaf.app.store.HandedPlans.Handed;
import org.earleaf.week.Week;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The plan that drivers hold, over the real server and store. */
class PlanHandedTest {
    private final Preview preview = new Preview();
    private final Served server = preview.serve();

    @AfterEach
    void stop() {
        server.close();
        preview.store().close();
    }

    private HttpRequest.Builder at(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + path));
    }

    private String get(String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(at(path).build(), BodyHandlers.ofString())
                .body();
    }

    /** The week once it stands: on a busy machine its page says for a while that it is being worked out. */
    private String planned(String path) throws IOException, InterruptedException {
        String plan = get(path);
        while (plan.contains("being worked out")) {
            Thread.sleep(50);
            plan = get(path);
        }
        return plan;
    }

    private HttpResponse<String> handOut(String form) throws IOException, InterruptedException {
        HttpRequest request = at("/plan/handed")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", "http://127.0.0.1:" + server.port())
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build();
        return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
    }

    @Test
    void a_plan_that_is_handed_out_is_kept_and_changes_are_told_against_it() throws Exception {
        String plan = planned("/plan");
        assertThat(plan).contains("Keep this plan as handed out").doesNotContain("handed out at");
        HttpResponse<String> kept = handOut("back=%2Fplan");
        assertThat(kept.statusCode()).isIn(302, 303);
        Handed handed = preview.store().handed().findNewest().orElseThrow();
        assertThat(handed.at()).isEqualTo(preview.now());
        assertThat(handed.passes()).isNotEmpty();
        assertThat(planned("/plan"))
                .contains("As handed out at", "nothing has changed")
                .doesNotContain("Planned anew for");

        Week.Told first = handed.passes().get(0);
        String rain = planned("/plan?rain=" + first.day());
        assertThat(rain).contains("Changed since handed out at", first.pass() + ": handed out for the " + first.rig());
    }

    @Test
    void what_was_told_otherwise_stays_told_until_a_change_pays() throws Exception {
        planned("/plan");
        handOut("back=%2Fplan");
        Handed handed = preview.store().handed().findNewest().orElseThrow();
        // A pass that is wanted no more, and one told to a rig that the farm does not have.
        preview.store()
                .handed()
                .keep(new Handed(
                        preview.now().plusSeconds(60),
                        java.util.stream.Stream.concat(
                                        handed.passes().stream().skip(1),
                                        java.util.stream.Stream.of(
                                                new Week.Told("Nowhere", "", "nitrogen", "highboy", Fixture.TODAY)))
                                .toList()));
        String plan = planned("/plan");
        assertThat(plan)
                .contains("Changed since handed out at")
                .contains("Nowhere, nitrogen: handed out for the highboy on")
                .contains("no longer among the passes of the week")
                .contains("New: " + handed.passes().get(0).pass());
    }

    @Test
    void the_calendar_marks_the_day_on_which_a_rig_comes() throws Exception {
        Week.Told first = told();
        String calendar = planned("/calendar");
        assertThat(calendar).contains("a rig comes, by the rigs’ week", "the rig’s turn", first.rig());
        assertThat(calendar).contains("M0 32l7 14h-14z");
    }

    private Week.Told told() throws IOException, InterruptedException {
        planned("/plan");
        handOut("back=%2Fplan");
        return preview.store().handed().findNewest().orElseThrow().passes().get(0);
    }

    @Test
    void an_address_elsewhere_is_not_gone_to_afterwards() throws Exception {
        planned("/plan");
        assertThat(handOut("back=https%3A%2F%2Fexample.org").headers().firstValue("Location"))
                .hasValueSatisfying(l -> assertThat(l).endsWith("/plan").doesNotContain("example"));
    }
}
