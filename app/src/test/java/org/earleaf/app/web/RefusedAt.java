// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.earleaf.app.Main;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.words.Words;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.exchange.FolderWeather;
import org.earleaf.farm.Farm;
import org.earleaf.units.EarleafException;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The three doors, each telling the codes with which it refuses; no code where it takes what it is given. */
final class RefusedAt implements AutoCloseable {
    private static final Pattern CODE = Pattern.compile("data-code=\"([^\"]*)\"");
    private static final Wiring.FolderReader FOLDERS = new Wiring.FolderReader() {
        @Override
        public Farm farm(Path folder) {
            return FarmFolder.read(folder);
        }

        @Override
        public FolderWeather weather(Path folder) {
            return FarmFolder.readWeather(folder);
        }
    };

    private final Path work;
    private final Map<String, String> files = new LinkedHashMap<>();
    private final Served server = Preview.start();
    private final HttpClient client = HttpClient.newHttpClient();
    private final Path farm;
    private int folders;

    RefusedAt(Path work) throws IOException {
        this.work = work;
        files.put(
                "farm.csv",
                "key,value\nname,Tern Hollow\nlatitude,41.8\nlongitude,-93.4\nelevation_ft,1000\n"
                        + "time_zone,America/Chicago\ncorn_price_usd_bu,4.5\nn_price_usd_lb,0.6\n");
        files.put(
                "fields.csv",
                "field,zone,area_ac,crop,planted,relative_maturity_d,population_ac,row_spacing_in,previous_crop,gdd_silk,"
                        + "yield_goal_bu_ac,curve_number,residue_cover_pct,disease_rating\n"
                        + "Mill Eighty,,80,corn,2026-05-04,108,33000,30,corn,1350,210,78,30,5\n");
        files.put(
                "soil.csv",
                "field,zone,top_in,bottom_in,sand_pct,clay_pct,om_pct,ph,bulk_density_g_cm3\n"
                        + "Mill Eighty,,0,60,22,24,3,6.5,1.35\n");
        StringBuilder weather = new StringBuilder("date,tmax_f,tmin_f,rain_in,solar_mj_m2,wind_mph,rh_max_pct\n");
        for (int day = 1; day <= 30; day++) {
            weather.append("2026-06-%02d,80,60,0.16,20,5,90%n".formatted(day));
        }
        files.put("weather.csv", weather.toString());
        files.put(
                "products.csv",
                "product,form,density_lb_gal,price,price_unit,n_pct,urea_share,ammonium_share,nitrate_share,kind\n"
                        + "Demo F1,SC,9.1,245,usd/gal,,,,,fungicide\nDemo I2,WG,,3,usd/oz,,,,,insecticide\n"
                        + "Demo N1,SL,11,600,usd/ton,10,0.5,0.3,0.2,fertilizer\n");
        files.put("recipes.csv", "recipe,product,rate,rate_unit,carrier_gal_ac\nTassel,Demo F1,10,fl oz/ac,15\n");
        files.put("stock.csv", "product,amount,unit,lot,place\nDemo F1,12,gal,L-7,shed\n");
        files.put(
                "rigs.csv",
                "rig,kind,clearance_in,width_ft,tank_gal,speed_min_mph,speed_max_mph,pressure_min_psi,pressure_max_psi,"
                        + "outlets_per_row,placements,cost_usd_ac,heel_gal,prime_gal,field_efficiency,spray_clearance_in\n"
                        + "High,self-propelled,72,90,1000,5,12,15,60,2,row-base dribble;over the top,9,8,6,0.7,80\n");
        files.put("irrigation.csv", "field,date,depth_in\nMill Eighty,2026-06-10,0.75\n");
        Path folder = folder(Map.of());
        farm = work.resolve("earleaf.db");
        Files.writeString(work.resolve("recipe.csv"), "product,rate,rate_unit,form\nDemo F1,10,fl oz/ac,SC\n");
        if (!command("import", "--folder", folder.toString(), "--farm", farm.toString(), "--json")
                .isEmpty()) {
            throw new IllegalStateException("the farm of this test is refused");
        }
    }

    String text(String file) {
        return files.getOrDefault(file, "");
    }

    String farm() {
        return farm.toString();
    }

    String recipe() {
        return work.resolve("recipe.csv").toString();
    }

    /** A recipe file that stands alone, of one line. */
    String recipe(String line) throws IOException {
        Path file = work.resolve("recipe" + folders++ + ".csv");
        Files.writeString(file, "product,rate,rate_unit,form\n" + line + "\n");
        return file.toString();
    }

    private Path folder(Map<String, String> changed) throws IOException {
        Path folder = Files.createDirectory(work.resolve("folder" + folders++));
        Map<String, String> all = new LinkedHashMap<>(files);
        all.putAll(changed);
        for (Map.Entry<String, String> file : all.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        return folder;
    }

    /** A farm folder with one file written anew. */
    Set<String> file(String name, String text) throws IOException {
        try {
            FarmFolder.read(folder(Map.of(name, text)));
            return Set.of();
        } catch (EarleafException refused) {
            return refused.problems().stream()
                    .map(p -> Words.US.told(p).key())
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    Set<String> command(String... args) {
        Wiring wiring = new Wiring(
                FOLDERS,
                (asked, on, hindsight) -> {
                    throw new IllegalStateException("no answers are asked for here");
                },
                Clock.fixed(Instant.parse("2026-06-30T17:00:00Z"), ZoneOffset.UTC));
        CommandLine line = Main.commandLine(wiring);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = line.setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(args);
        if (exit == 0) {
            return Set.of();
        }
        if (!err.toString().startsWith("{")) {
            return Set.of("exit " + exit + ": " + err);
        }
        Set<String> codes = new TreeSet<>();
        for (JsonNode problem : JsonMapper.shared().readTree(err.toString()).get("problems")) {
            String what = problem.get("what").asString();
            codes.add(problem.get("code").asString() + (what.isEmpty() ? "" : " " + what));
        }
        return codes;
    }

    Set<String> page(String path, Map<String, String> boxes) throws IOException, InterruptedException {
        String form = boxes.entrySet().stream()
                .map(e -> encoded(e.getKey()) + "=" + encoded(e.getValue()))
                .collect(Collectors.joining("&"));
        String home = "http://127.0.0.1:" + server.port();
        boolean asks = path.equals("/rigs");
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(home + path + (asks ? "?" + form : "")));
        if (!asks) {
            request.header("Content-Type", "application/x-www-form-urlencoded")
                    .header("Origin", home)
                    .POST(HttpRequest.BodyPublishers.ofString(form));
        }
        HttpResponse<String> answer = client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() < 400) {
            return Set.of();
        }
        Set<String> codes = new TreeSet<>();
        Matcher m = CODE.matcher(answer.body());
        while (m.find()) {
            codes.add(m.group(1));
        }
        return codes.isEmpty() ? Set.of("status " + answer.statusCode()) : codes;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
    }
}
