// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** A farm folder in text, small and whole, invented; tests break one thing in it at a time. */
final class TinyFolder {
    static final int WEATHER_DAYS = 300;
    private final Map<String, byte[]> files = new LinkedHashMap<>();

    /** The farm as an American grower writes it. */
    static TinyFolder us() {
        return new TinyFolder()
                .with("farm.csv", """
                        key,value
                        name,Two Creeks
                        latitude,41.5
                        longitude,-90.5
                        elevation_ft,700
                        time_zone,America/Chicago
                        corn_price_usd_bu,4.50
                        harvest_cost_usd_bu,0.30
                        n_price_usd_lb,0.55
                        uan_price_usd_ton,350
                        """)
                .with("fields.csv", """
                        field,zone,area_ac,crop,planted,relative_maturity_d,population_ac,row_spacing_in,previous_crop,drainage,tillage,residue_cover_pct,curve_number,hybrid,gdd_silk,gdd_black_layer,yield_goal_bu_ac
                        Home,,80,corn,2012-05-04,108,32000,30,soybean,tiled,reduced,30,78,Early 8,1350,2650,210
                        Creek,hill,30,corn,2012-05-10,105,30000,30,corn,well,none,,,,,,
                        Creek,flat,50,corn,2012-05-10,105,31000,30,corn,poor,full,,,,,,
                        """)
                .with("soil.csv", """
                        field,zone,top_in,bottom_in,sand_pct,clay_pct,om_pct,ph,cec_cmol_kg,bulk_density_g_cm3,wilting_point_pct,field_capacity_pct
                        Home,,0,12,12,24,3.6,6.4,22,1.35,14,31
                        Home,,12,60,10,30,1.2,6.8,,,,
                        Creek,,0,9,20,30,4.0,6.9,,,,
                        Creek,,9,60,22,32,1.0,,,,,
                        """)
                .with("weather.csv", weather())
                .with("forecast.csv", """
                        date,tmax_f,tmin_f,rain_in,rain_chance_pct
                        2012-10-27,59,41,0.1,40
                        2012-10-28,60.8,42.8,0,10
                        """)
                .with("hours.csv", """
                        time,temperature_f,rh_pct,wind_mph,gust_mph,wind_from_deg,rain_in,rain_chance_pct,cloud_pct
                        2012-07-01 06:00,68,80,5,8,180,0,10,25
                        """)
                .with("passes.csv", """
                        field,date,product,rate,rate_unit,placement,zone,inhibitor,made,planned
                        Home,2012-04-20,urea,100,lb N/ac,incorporated,,none,yes,
                        Home,2012-06-20,UAN 32,10,gal/ac,mid-row coulter,,both,,yes
                        Creek,2012-05-10,Starter 10,40,lb/ac,row-side coulter,flat,,,
                        """)
                .with("readings.csv", """
                        field,date,kind,value,unit,zone,top_in,bottom_in,position,note
                        Home,2012-06-05,nitrate,18,ppm,,0,12,random,20 cores
                        Home,2012-06-05,stage,V6,,,,,,
                        Home,2012-06-05,height,18,in,,,,,
                        Creek,2012-06-06,stand,31000,plants/ac,flat,,,,
                        Home,2012-06-07,rain,0.6,in,,,,,
                        """)
                .with("irrigation.csv", "field,date,depth_in,zone\nCreek,2012-07-03,0.75,hill\n")
                .with("manure.csv", """
                        field,date,organic_n_lb_ac,ammonium_n_lb_ac,placement,zone
                        Creek,2011-11-01,60,80,knifed,
                        """)
                .with("yields.csv", """
                        field,zone,year,crop,yield_bu_ac,nitrogen_lb_ac
                        Home,,2011,soybean,,0
                        Home,,2010,corn,188,165
                        Creek,flat,2011,corn,171,
                        """)
                .with("products.csv", """
                        product,form,density_lb_gal,price,price_unit,n_pct,urea_share,ammonium_share,nitrate_share,registration,caution
                        Starter 10,SL,11,600,usd/ton,10,0.5,0.3,0.2,,Invented: no label
                        Leaf Guard,SC,9,180,usd/gal,,,,,INV-12,Invented: no label
                        """)
                .with("recipes.csv", """
                        recipe,product,rate,rate_unit,carrier_gal_ac
                        Tassel,Leaf Guard,10,fl oz/ac,15
                        """)
                .with("stock.csv", "product,amount,unit,lot,place\nLeaf Guard,12,gal,L-7,north shed\n")
                .with("rigs.csv", """
                        rig,kind,clearance_in,width_ft,tank_gal,speed_min_mph,speed_max_mph,pressure_min_psi,pressure_max_psi,outlets_per_row,placements,cost_usd_ac,heel_gal,prime_gal,field_efficiency
                        High,self-propelled,72,90,1000,5,12,15,60,2,row-base dribble;over the top,9,8,6,0.7
                        Trailer,tender,,,3000,,,,,,,,,,
                        """);
    }

    /** The same farm as a grower of the rest of the world would write it. */
    static TinyFolder metric() {
        TinyFolder us = us();
        return us.convert(
                        "farm.csv",
                        Map.of(
                                "elevation_ft,700",
                                "elevation_m,213.36",
                                "n_price_usd_lb,0.55",
                                "n_price_usd_kg," + 0.55 / 0.45359237))
                .with("fields.csv", """
                        field,zone,area_ha,crop,planted,relative_maturity_d,population_ha,row_spacing_cm,previous_crop,drainage,tillage,residue_cover_share,curve_number,hybrid,gdd_silk_c,gdd_black_layer_f,yield_goal_t_ha
                        Home,,32.3748513792,corn,2012-05-04,108,79073.72206949291,76.2,soybean,tiled,reduced,0.3,78,Early 8,750,2650,13.181209596846806
                        Creek,hill,12.1405692672,corn,2012-05-10,105,74131.61444014961,76.2,corn,well,none,,,,,,
                        Creek,flat,20.234282112,corn,2012-05-10,105,76602.66825482126,76.2,corn,poor,full,,,,,,
                        """)
                .with("soil.csv", """
                        field,zone,top_cm,bottom_mm,sand_share,clay_pct,om_pct,ph,cec_meq_100g,bulk_density_kg_m3,wilting_point_share,field_capacity_pct
                        Home,,0,304.8,.12,24,3.6,6.4,22,1350,.14,31
                        Home,,30.48,1524,.10,30,1.2,6.8,,,,
                        Creek,,0,228.6,.20,30,4.0,6.9,,,,
                        Creek,,22.86,1524,.22,32,1.0,,,,,
                        """)
                .with("weather.csv", metricWeather())
                .with("forecast.csv", """
                        date,tmax_c,tmin_c,rain_mm,rain_chance_share
                        2012-10-27,15,5,2.54,0.4
                        2012-10-28,16,6,0,0.1
                        """)
                .with("hours.csv", """
                        time,temperature_c,rh_share,wind_ms,gust_km_h,wind_from,rain_mm,rain_chance_pct,cloud_share
                        2012-07-01 06:00,20,0.8,2.2352,12.874752,180,0,10,0.25
                        """)
                .convert("irrigation.csv", Map.of("depth_in", "depth_mm", "0.75", "19.05"))
                .convert(
                        "manure.csv",
                        Map.of(
                                "organic_n_lb_ac",
                                "organic_n_kg_ha",
                                "ammonium_n_lb_ac",
                                "ammonium_n_kg_ha",
                                ",60,80,",
                                ",67.25106937166737,89.6680924955565,"))
                .convert(
                        "yields.csv",
                        Map.of(
                                "yield_bu_ac,nitrogen_lb_ac",
                                "yield_t_ha,nitrogen_kg_ha",
                                "188,165",
                                "11.800320972415236,184.94044077208525",
                                "171,",
                                "10.733270671718111,"))
                .convert(
                        "readings.csv",
                        Map.of("top_in,bottom_in", "top_cm,bottom_cm", ",0,12,random", ",0,30.48,random"))
                .convert(
                        "products.csv",
                        Map.of(
                                "density_lb_gal",
                                "density_kg_l",
                                "SL,11,",
                                "SL,1.318090700485863,",
                                "SC,9,",
                                "SC,1.0784378458520698,"))
                .convert("recipes.csv", Map.of("carrier_gal_ac", "carrier_l_ha", ",15\n", ",140.30934343434345\n"))
                .with("rigs.csv", """
                        rig,kind,clearance_cm,width_m,tank_l,speed_min_ms,speed_max_km_h,pressure_min_bar,pressure_max_kpa,outlets_per_row,placements,cost_usd_ha,heel_l,prime_l,field_efficiency_pct
                        High,self-propelled,182.88,27.432,3785.411784,2.2352,19.312128,1.034213593975200,413.6854375900800,2,over the top; row-base dribble,22.23948433204488,30.283294272,22.712470704,70
                        Trailer,tender,,,11356.235352,,,,,,,,,,
                        """);
    }

    private static String weather() {
        StringBuilder text = new StringBuilder(
                "date,tmax_f,tmin_f,rain_in,solar_mj_m2,wind_mph,rh_max_pct,rh_min_pct,dew_point_f\n");
        for (int k = 0; k < WEATHER_DAYS; k++) {
            double c = celsius(k);
            text.append(String.format(
                    Locale.ROOT,
                    "%s,%.6f,%.6f,%.3f,%.1f,5,90,50,%.6f%n",
                    day(k),
                    c * 1.8 + 32,
                    (c - 11) * 1.8 + 32,
                    k % 5 == 0 ? 0.4 : 0,
                    solar(k),
                    (c - 10) * 1.8 + 32));
        }
        return text.toString();
    }

    private static String metricWeather() {
        StringBuilder text = new StringBuilder(
                "date,tmax_c,tmin_c,rain_mm,solar_mj_m2,wind_km_h,rh_max_pct,rh_min_share,dew_point_c\n");
        for (int k = 0; k < WEATHER_DAYS; k++) {
            double c = celsius(k);
            text.append(String.format(
                    Locale.ROOT,
                    "%s,%.6f,%.6f,%.2f,%.1f,8.04672,90,0.5,%.6f%n",
                    day(k),
                    c,
                    c - 11,
                    k % 5 == 0 ? 10.16 : 0,
                    solar(k),
                    c - 10));
        }
        return text.toString();
    }

    private static LocalDate day(int k) {
        return LocalDate.of(2012, 1, 1).plusDays(k);
    }

    /** Whole tenths of a degree Celsius turn into six digits of Fahrenheit without rest. */
    private static double celsius(int k) {
        return Math.round(10 * (12 + 17 * Math.sin((k - 110) / 58.0))) / 10.0;
    }

    private static double solar(int k) {
        return 8 + 8 * Math.sin((k - 80) / 58.0);
    }

    TinyFolder with(String file, String text) {
        files.put(file, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    TinyFolder withBytes(String file, byte[] bytes) {
        files.put(file, bytes);
        return this;
    }

    TinyFolder without(String file) {
        files.remove(file);
        return this;
    }

    String text(String file) {
        return new String(files.get(file), StandardCharsets.UTF_8);
    }

    /** Replaces one text, which must be there, by another. */
    TinyFolder edit(String file, String from, String to) {
        String text = text(file);
        if (!text.contains(from)) {
            throw new IllegalArgumentException(file + " holds no " + from);
        }
        return with(file, text.replace(from, to));
    }

    /** More columns behind those of a file; the cells of one row (2 is the first below the header), the others empty. */
    TinyFolder wider(String file, String columns, int row, String cells) {
        String[] lines = text(file).split("\n");
        String empty = columns.replaceAll("[^,]+", "");
        for (int k = 0; k < lines.length; k++) {
            lines[k] += "," + (k == 0 ? columns : k == row - 1 ? cells : empty);
        }
        return with(file, String.join("\n", lines) + "\n");
    }

    private TinyFolder convert(String file, Map<String, String> edits) {
        edits.forEach((from, to) -> edit(file, from, to));
        return this;
    }

    Path write(Path dir) {
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path path = dir.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue());
            }
            return dir;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
