// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * What the season model eats: one value a day of everything that follows from weather and place alone, computed once
 * for any number of runs. Arrays are shared, not copied: read only.
 */
public final class Forcing {
    /** Dew on a rain-free night under a canopy [mm] where the dew point is unknown; measured 0.01 to 0.41. */
    private static final double USUAL_DEW_MM = 0.15;

    private final LocalDate first;
    private final double[] tmax;
    private final double[] tmin;
    private final double[] rain;
    private final double[] solar;
    private final double[] et0;
    private final double[] dew;

    private Forcing(LocalDate first, int days) {
        this.first = first;
        tmax = new double[days];
        tmin = new double[days];
        rain = new double[days];
        solar = new double[days];
        et0 = new double[days];
        dew = new double[days];
    }

    public static Forcing of(WeatherSeries weather, Site site) {
        List<WeatherDay> days = weather.days();
        Forcing f = new Forcing(weather.first(), days.size());
        for (int k = 0; k < days.size(); k++) {
            f.put(k, days.get(k), site);
        }
        return f;
    }

    private void put(int k, WeatherDay d, Site site) {
        double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(
                site.latitude_deg(), d.date().getDayOfYear());
        double clear = ReferenceEvapotranspiration.clearSky_MJm2(ra, site.elevation_m());
        double rs = Double.isNaN(d.solar_MJm2())
                ? Math.min(ReferenceEvapotranspiration.solarOfRange_MJm2(ra, d.tmax_C(), d.tmin_C()), clear)
                : d.solar_MJm2();
        double wind = Double.isNaN(d.wind_ms()) ? ReferenceEvapotranspiration.USUAL_WIND_MS : d.wind_ms();
        tmax[k] = d.tmax_C();
        tmin[k] = d.tmin_C();
        rain[k] = d.rain_mm();
        solar[k] = rs;
        var air = new ReferenceEvapotranspiration.Air(d.tmax_C(), d.tmin_C(), vapour(d), wind);
        et0[k] = ReferenceEvapotranspiration.penmanMonteith_mm(air, rs, ra, site.elevation_m(), 0);
        dew[k] = Double.isNaN(d.dewPoint_C())
                ? USUAL_DEW_MM
                : Math.max(0, Math.min(0.4, 0.08 * (d.dewPoint_C() - d.tmin_C())));
    }

    private static double vapour(WeatherDay d) {
        if (!Double.isNaN(d.rhMax_pct()) && !Double.isNaN(d.rhMin_pct())) {
            return ReferenceEvapotranspiration.vapour_kPa(d.tmax_C(), d.tmin_C(), d.rhMax_pct(), d.rhMin_pct());
        }
        double dewPoint = Double.isNaN(d.dewPoint_C()) ? d.tmin_C() : d.dewPoint_C();
        return ReferenceEvapotranspiration.saturation_kPa(dewPoint);
    }

    public LocalDate first() {
        return first;
    }

    public int days() {
        return rain.length;
    }

    public LocalDate date(int k) {
        return first.plusDays(k);
    }

    public int index(LocalDate date) {
        return (int) ChronoUnit.DAYS.between(first, date);
    }

    public double[] tmax_C() {
        return tmax;
    }

    public double[] tmin_C() {
        return tmin;
    }

    public double[] rain_mm() {
        return rain;
    }

    public double[] solar_MJm2() {
        return solar;
    }

    public double[] et0_mm() {
        return et0;
    }

    public double[] dew_mm() {
        return dew;
    }
}
