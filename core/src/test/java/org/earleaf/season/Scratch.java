package org.earleaf.season;
import org.earleaf.season.SeasonState.Ledger;
class Scratch {
  public static void main(String[] a){
    var w=SyntheticSeason.weather();
    double r=0,e=0; for(int i=0;i<w.days();i++){r+=w.rain_mm()[i];e+=w.et0_mm()[i];}
    System.out.printf("rain %.2f et0 %.2f; et0 121,181,201 %.3f %.3f %.3f gdd %.2f %.2f %.2f%n",r,e,w.et0_mm()[0],w.et0_mm()[60],w.et0_mm()[80],Phenology.gdd(w.tmax_C()[0],w.tmin_C()[0]),Phenology.gdd(w.tmax_C()[60],w.tmin_C()[60]),Phenology.gdd(w.tmax_C()[80],w.tmin_C()[80]));
    SeasonRun run=SyntheticSeason.zone().start(w);
    double n0=0,nh=0,org=0; for(int k=0;k<12;k++){double f=run.site().share[k/6];n0+=f*run.state().nitrate[k][0];nh+=f*run.state().ammonium[k][0];org+=f*run.state().organic[k][0];}
    System.out.printf("start water %.2f no3 %.2f nh4 %.2f org %.0f%n",run.water_mm(0),n0,nh,org);
    run.applyAll(SyntheticSeason.uan(180, org.earleaf.field.Placement.INCORPORATED));
    for(int j=121;j<=273;j++){
      run.step();
      if(j==160||j==170||j==180||j==190||j==200||j==220||j==240) System.out.printf("J %d LAI %.2f W %.2f N %.1f%n",j,run.state().lai[0],run.shoot_kgHa(0)/1000,run.shootN_kgHa(0));
      if(j==183){ var s=run.state(); var t=run.today();
        System.out.printf("GDD %.1f V %.2f LAI %.3f NNI %.3f zr %.1f T1 %.2f T3 %.2f Eint %.3f reach %.2f %.2f ET0 %.3f Tpot %.3f dW %.1f dem %.2f sup %.2f W %.0f N %.1f%n",s.gdd[0],s.collars[0],s.lai[0],t.nni[0],s.rootDepth[0],s.soilTemperature[0][0],s.soilTemperature[2][0],t.wetLeaves[0],t.reaching[0][0],t.reaching[1][0],t.et0[0],t.transpirable[0],t.growth[0],run.ledger(Ledger.DEMAND_TODAY,0),run.ledger(Ledger.SUPPLY_TODAY,0),s.shoot[0],s.shootN[0]);
        for(double[][] x: new double[][][]{t.roots,s.water,s.nitrate,s.ammonium}){ for(int k=0;k<12;k++)System.out.printf("%.3f ",x[k][0]); System.out.println();}
      }
    }
    System.out.println("VE "+(121+run.emergenceDay(0))+" R1 "+(121+run.silkDay(0))+" R6 "+(121+run.blackLayerDay(0))+" short "+run.shortDay(0));
    for(Ledger l: Ledger.values()) System.out.printf("%s %.2f; ",l,run.ledger(l,0));
    System.out.printf("%n W %.0f N %.1f root %.1f PGR %.2f yield %s %.1f bu rem %.2e %.2e Wsilk %.0f%n",run.shoot_kgHa(0),run.shootN_kgHa(0),run.state().rootN[0],run.plantGrowth_g(0),run.yield(0),org.earleaf.units.Units.buAc(run.yield(0).grain_kgHa()),run.waterRemainder_mm(0),run.nitrogenRemainder_kgHa(0),run.state().shootAtSilk[0]);
    for(double p: new double[]{0,50,100,150,180,200,250,300}){ var q=SyntheticSeason.zone().run(w,SyntheticSeason.pre(p)); System.out.printf("PRE %.0f yield %.1f N %.1f short %d%n",p,org.earleaf.units.Units.buAc(q.yield(0).grain_kgHa()),q.shootN_kgHa(0),q.shortDay(0)<0?-1:121+q.shortDay(0));}
    for(double p: new double[]{0,50,100,150,200}){ var q=SyntheticSeason.zone().lowOm().run(w,SyntheticSeason.pre(p)); System.out.printf("low PRE %.0f yield %.1f min %.1f%n",p,org.earleaf.units.Units.buAc(q.yield(0).grain_kgHa()),q.ledger(Ledger.MINERALISED,0));}
    var q=SyntheticSeason.zone().rm(95).run(w,SyntheticSeason.pre(180)); System.out.printf("RM95 %.1f %d %d%n",org.earleaf.units.Units.buAc(q.yield(0).grain_kgHa()),121+q.silkDay(0),121+q.blackLayerDay(0));
  }
}
