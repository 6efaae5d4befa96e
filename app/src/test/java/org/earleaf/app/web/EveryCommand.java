// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.earleaf.app.Main;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.web.Everywhere.Text;
import picocli.CommandLine;

/** What the commands print, done and refused, on the small farm. */
final class EveryCommand {
    /** They serve pages until they are stopped; what they print is the morning's, and their pages are read elsewhere. */
    private static final Set<String> SERVE = Set.of("demo", "serve");
    /** A picture of so many dots is a card of 1 in at 1200 dpi. */
    private static final int DOTS = 1200;

    /** One a line; in brackets what stands in US units and in metric. */
    private static final String LINES = """
            init --farm DIR/empty.db
            import --folder FOLDER --farm DIR/new.db
            morning --farm FARM
            field --all --farm FARM
            field 'Weir Sixty' --farm FARM
            field 'Bean Forty' --farm FARM
            field 'No Such' --farm FARM
            options 'Cemetery Eighty' --farm FARM
            options 'Weir Sixty' --farm FARM
            plan --farm FARM
            plan --farm FARM --rain 2026-07-01
            plan --farm FARM --down Highboy@2026-07-01
            plan --farm FARM --down Highboy
            plan --instance PLAN --seconds 1
            rig --rate '[15 gal/ac|140 L/ha]' --speed '[10 mph|16 km/h]' --width '[20 in|51 cm]'
            rig --rate '[15 gal/ac|140 L/ha]' --speed '[10 mph|16 km/h]' --width '[20 in|51 cm]' --size 05 --liquid uan32
            rig --rate '[15 gal/ac|140 L/ha]' --speed '[10 mph|16 km/h]' --width '[20 in|51 cm]' --fan 110
            rig --rate '[15 gal/ac|140 L/ha]' --speed '[10 mph|16 km/h]' --width '[20 in|51 cm]' --fan 110 --label-height '[16 in|41 cm]'
            rig --rate '[15 gal/ac|140 L/ha]' --speed '[10 mph|16 km/h]' --width '[20 in|51 cm]' --size 08 --pressure '[40 psi|2.8 bar]' --pulses 10
            rig --rate '[20 gal/ac|190 L/ha]' --speed '[9 mph|14 km/h]' --width '[30 in|76 cm]' --split 'top 40% 1.5, ear 60% 4'
            rig --find --farm FARM --rig Highboy --rate '[15 gal/ac|140 L/ha]' --speed '[10 mph|16 km/h]' --width '[20 in|51 cm]'
            rig --find --farm FARM --rig Highboy --rate '[15 gal/ac|140 L/ha]' --speed '[10 mph|16 km/h]' --width '[20 in|51 cm]' --droplets XC
            rig --rate '[900 gal/ac|9000 L/ha]' --speed '[10 mph|16 km/h]' --width '[20 in|51 cm]'
            rig --rate '[15 gal/ac|140 L/ha]' --speed '[90 mph|150 km/h]' --width '[20 in|51 cm]'
            cards CARD --dpi 1200 --for 'contact fungicide'
            cards CARD --dpi 1200 --for insecticide
            cards CARD --dpi 300
            cards CARD --dpi 1200 --margin '[2 in|50 mm]'
            load --recipe RECIPE --area '[147 ac|59.5 ha]' --rate '[15 gal/ac|140 L/ha]' --tank '[980 gal|3700 L]' --heel '[5 gal|20 L]' --water 'Ca 120, Mg 40, Na 30, K 5, Fe 0.5' --tender '[4000 gal|15000 L]' --rigs 4
            load --recipe RECIPE --area '[40 ac|16 ha]' --rate '[15 gal/ac|140 L/ha]' --tank '[980 gal|3700 L]' --folder FOLDER --crop corn --stage V12
            load --recipe RECIPE --area '[40 ac|16 ha]' --rate '[15 gal/ac|140 L/ha]' --tank '[980 gal|3700 L]' --folder FOLDER --crop corn --stage R1 --split full
            load --recipe RECIPE --area '[40 ac|16 ha]' --rate '[15 gal/ac|140 L/ha]' --tank '[90000 gal|340000 L]'
            load --recipe RECIPE --area '[40 ac|16 ha]' --tank '[980 gal|3700 L]'
            read --farm WRITE --field 'Cemetery Eighty' --kind nitrate --value '12 ppm' --top '[0 in|0 cm]' --bottom '[12 in|30 cm]' --on 2026-06-20
            read --farm WRITE --field 'Cemetery Eighty' --kind rain --value '[0.5 in|12 mm]' --on 2026-06-20
            read --farm WRITE --field 'Cemetery Eighty' --kind rain --value '[90 in|2500 mm]' --on 2026-06-20
            read --farm WRITE --field 'Cemetery Eighty' --kind nitrate --value 12 --on 2026-06-20
            read --farm WRITE --field 'Cemetery Eighty' --kind nitrate --value '12 ppm' --bottom '[400 in|1000 cm]' --on 2026-06-20
            read --farm WRITE --field 'Cemetery Eighty' --kind height --value '[400 in|1000 cm]' --on 2026-06-20
            past --farm FARM
            past --farm FARM --field 'Weir Sixty'
            past --farm FARM --field 'No Such'
            past --farm WRITE --field 'Cemetery Eighty' --year 2022 --yield '[190 bu/ac|12 t/ha]' --nitrogen '[160 lb N/ac|180 kg N/ha]'
            past --farm WRITE --field 'Cemetery Eighty' --year 2022 --yield '[500 bu/ac|32 t/ha]'
            past --farm WRITE --field 'Cemetery Eighty' --year 2022 --yield '[330 bu/ac|21 t/ha]'
            past --farm WRITE --field 'Cemetery Eighty' --year 2022 --out
            past --farm WRITE --field 'Cemetery Eighty' --year 1962 --out
            record --farm WRITE
            record made --farm WRITE --field 'Cemetery Eighty' --product 'UAN 32' --rate '[40 lb N/ac|45 kg N/ha]' --placement 'row-base dribble' --by 'A. Grower' --rig Highboy --on 2026-06-30
            record made --farm WRITE --field 'Cemetery Eighty' --product 'UAN 32' --rate '[900 lb N/ac|1000 kg N/ha]' --placement 'row-base dribble' --by 'A. Grower' --rig Highboy --on 2026-06-30
            record made --farm WRITE --field 'Cemetery Eighty' --product 'anhydrous ammonia' --rate '[90 lb N/ac|100 kg N/ha]' --placement 'broadcast' --by 'A. Grower' --rig Highboy --on 2026-06-30
            record list --farm WRITE
            record show 1 --farm WRITE
            record show 9 --farm WRITE
            record correct 1 --why 'the gauge said less' --amount '[880 gal|3300 L]' --by 'A. Grower' --farm WRITE
            record verify --farm WRITE
            record export --pdf DIR/sheets --farm WRITE
            export --photographs DIR/pictures --farm WRITE
            """;

    private static final String RECIPE = """
            product,rate,rate_unit,form,class
            Demo I1,2.8,fl oz/ac,EC,
            Demo Spreader,0.25,% v/v,SL,NIS
            Demo F1,10,fl oz/ac,SC,
            AMS,8.5,lb/100 gal,SG,WC
            """;

    private final SmallDemo small;
    private final Path dir;
    private final Path farm;

    EveryCommand(SmallDemo small) throws IOException {
        this.small = small;
        dir = Files.createTempDirectory("earleaf-commands-");
        farm = dir.resolve("farm.db");
        try (FarmStore store = FarmStore.create(farm)) {
            store.importFarm(
                    small.wiring().folders().farm(small.folder()),
                    small.wiring().folders().weather(small.folder()).observed());
        }
        Files.writeString(dir.resolve("recipe.csv"), RECIPE);
        ImageIO.write(card(), "png", dir.resolve("card.png").toFile());
    }

    /** Squares of 20 dots on yellow. */
    private static BufferedImage card() {
        BufferedImage image = new BufferedImage(DOTS, DOTS, BufferedImage.TYPE_INT_RGB);
        Graphics2D draw = image.createGraphics();
        draw.setColor(new Color(232, 214, 62));
        draw.fillRect(0, 0, DOTS, DOTS);
        draw.setColor(new Color(48, 66, 150));
        for (int k = 0; k < 100; k++) {
            draw.fillRect(50 + k % 10 * 120, 50 + k / 10 * 120, 20, 20);
        }
        draw.dispose();
        return image;
    }

    /** What a person typed in quotes, and the products of the recipe. */
    Stream<String> typed() {
        return Stream.concat(
                Pattern.compile("'([^']*)'").matcher(LINES).results().map(m -> m.group(1)),
                RECIPE.lines().skip(1).map(line -> line.substring(0, line.indexOf(','))));
    }

    /** The file of the farm, which no command here changes. */
    Path farm() {
        return farm;
    }

    /** What each line prints, from a fresh copy of the farm on. */
    List<Text> printed(boolean metric) throws IOException {
        Path day = Files.createTempDirectory(dir, "day-");
        Files.copy(farm, day.resolve("write.db"), StandardCopyOption.REPLACE_EXISTING);
        List<Text> texts = new ArrayList<>();
        Set<String> done = new TreeSet<>();
        for (String line : LINES.lines().toList()) {
            List<String> args = arguments(line, metric, day);
            CommandLine command = Main.commandLine(small.wiring());
            if (leaf(command, args).getCommandSpec().findOption("--units") != null) {
                args.addAll(List.of("--units", metric ? "metric" : "us"));
            }
            StringWriter out = new StringWriter();
            command.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(out, true));
            int exit = command.execute(args.toArray(String[]::new));
            assertThat(exit).as(line + "\n" + out).isIn(0, 2);
            if (exit == 0) {
                done.add(leaf(command, args).getCommandSpec().qualifiedName());
            }
            texts.add(new Text(line, out.toString().replace(dir.toString(), "")));
        }
        Set<String> all = new TreeSet<>();
        leaves(Main.commandLine(small.wiring()), all);
        assertThat(done).as("every command prints something once").containsAll(all);
        return texts;
    }

    private List<String> arguments(String line, boolean metric, Path day) {
        String told = line.replaceAll("\\[([^|\\]]*)\\|([^\\]]*)]", metric ? "$2" : "$1");
        List<String> args = new ArrayList<>();
        Matcher m = Pattern.compile("'([^']*)'|(\\S+)").matcher(told);
        while (m.find()) {
            args.add(m.group(1) != null ? m.group(1) : place(m.group(2), day));
        }
        return args;
    }

    private String place(String word, Path day) {
        return switch (word) {
            case "FARM" -> farm.toString();
            case "WRITE" -> day.resolve("write.db").toString();
            case "FOLDER" -> small.folder().toString();
            case "PLAN" -> "../docs/plan-example";
            case "RECIPE" -> dir.resolve("recipe.csv").toString();
            case "CARD" -> dir.resolve("card.png").toString();
            default -> word.replace("DIR/", day + "/");
        };
    }

    private static CommandLine leaf(CommandLine line, List<String> args) {
        CommandLine at = line;
        for (String arg : args) {
            CommandLine next = at.getSubcommands().get(arg);
            if (next == null) {
                return at;
            }
            at = next;
        }
        return at;
    }

    private static void leaves(CommandLine line, Set<String> into) {
        line.getSubcommands().forEach((name, sub) -> {
            if (!SERVE.contains(name) && !name.equals("help")) {
                into.add(sub.getCommandSpec().qualifiedName());
                leaves(sub, into);
            }
        });
    }
}
