/**
 * Rig: how a machine is set so that a pass puts on what was decided.
 *
 * <p>In: {@link org.earleaf.farm.Rig}, a product's density, rate, row spacing and placement, from farm and field. Out:
 * outlets, pressure, speed range and what binds ({@link org.earleaf.rig.RigSetup}); every relation of rate, speed,
 * width, flow, pressure and size solved for whichever is left out ({@link org.earleaf.rig.FlowSolver}).
 *
 * <p>Inside everything is SI: rate m3/m2, speed m/s, width m, flow m3/s of the liquid itself through one outlet,
 * pressure Pa at the outlet (never at the pump). Not here: whether the machine may enter (farm), what goes in the tank
 * (load).
 */
@NullMarked
package org.earleaf.rig;

import org.jspecify.annotations.NullMarked;
