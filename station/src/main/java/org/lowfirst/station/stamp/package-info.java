/**
 * Reading what is stamped on a cylinder from one line of typing: each part, where it stands, and what it means. What is not
 * understood is kept and shown as unknown; what can be read two ways says so.
 */
@NullMarked
package org.lowfirst.station.stamp;

import org.jspecify.annotations.NullMarked;
