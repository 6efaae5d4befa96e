// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

/** What a rig is known by for good, whatever it is called: its first name, or what a folder says. */
public record RigId(String text) {}
