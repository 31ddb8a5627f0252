//! How large is the head of this screw: across flats, bearing face, hole under it, socket and key?
//!
//! Hexagon, metric: ISO 4014 grade A (grade B above M24) bearing diameter dw min and width across flats, with the
//! medium hole of ISO 273, mm, from memory. Hexagon, inch: ASME B18.2.1 width across flats, with the normal hole of
//! ASME B18.2.8, in, from memory; the inch bearing face is about the width across flats. Socket, inch: ASME B18.3 Table 1A
//! (1960 series), in. Socket, metric: ISO 4762 plain head, mm (the knurled head is larger). First column authoritative.

use crate::quantity::{Length, System};

/// A hexagon head.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct HexHead {
    /// Nominal size.
    pub size: Length,
    /// Which system.
    pub system: System,
    /// Width across flats: the wrench.
    pub across_flats: Length,
    /// Diameter of the bearing face.
    pub bearing: Length,
    /// Hole under the head.
    pub hole: Length,
}

/// A socket head cap screw.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SocketHead {
    /// Size as called.
    pub call: &'static str,
    /// Nominal size.
    pub size: Length,
    /// Which system.
    pub system: System,
    /// Largest head diameter.
    pub head_diameter: Length,
    /// Largest head height.
    pub head_height: Length,
    /// Hexagon key.
    pub key: Length,
    /// Least depth of the socket.
    pub socket_depth: Length,
}

const fn hm(size: f64, across_flats: f64, bearing: f64, hole: f64) -> HexHead {
    HexHead {
        size: Length::from_mm(size),
        system: System::Metric,
        across_flats: Length::from_mm(across_flats),
        bearing: Length::from_mm(bearing),
        hole: Length::from_mm(hole),
    }
}
const fn hi(size: f64, across_flats: f64, hole: f64) -> HexHead {
    HexHead {
        size: Length::from_inches(size),
        system: System::Inch,
        across_flats: Length::from_inches(across_flats),
        bearing: Length::from_inches(across_flats),
        hole: Length::from_inches(hole),
    }
}
const fn si(call: &'static str, size: f64, d: f64, h: f64, key: f64, depth: f64) -> SocketHead {
    SocketHead {
        call,
        size: Length::from_inches(size),
        system: System::Inch,
        head_diameter: Length::from_inches(d),
        head_height: Length::from_inches(h),
        key: Length::from_inches(key),
        socket_depth: Length::from_inches(depth),
    }
}
const fn sm(call: &'static str, size: f64, d: f64, h: f64, key: f64, depth: f64) -> SocketHead {
    SocketHead {
        call,
        size: Length::from_mm(size),
        system: System::Metric,
        head_diameter: Length::from_mm(d),
        head_height: Length::from_mm(h),
        key: Length::from_mm(key),
        socket_depth: Length::from_mm(depth),
    }
}

/// Metric: size, across flats, bearing face, medium hole (mm). Inch: size, across flats, normal hole (in).
#[rustfmt::skip]
pub const HEX: &[HexHead] = &[
    hm(3.0, 5.5, 4.57, 3.4), hm(4.0, 7.0, 5.88, 4.5), hm(5.0, 8.0, 6.88, 5.5), hm(6.0, 10.0, 8.88, 6.6),
    hm(8.0, 13.0, 11.63, 9.0),
    hm(10.0, 16.0, 14.63, 11.0),
    hm(12.0, 18.0, 16.63, 13.5),
    hm(14.0, 21.0, 19.64, 15.5),
    hm(16.0, 24.0, 22.49, 17.5),
    hm(18.0, 27.0, 25.34, 20.0),
    hm(20.0, 30.0, 28.19, 22.0),
    hm(22.0, 34.0, 31.71, 24.0),
    hm(24.0, 36.0, 33.61, 26.0),
    hm(27.0, 41.0, 38.0, 30.0),
    hm(30.0, 46.0, 42.75, 33.0),
    hm(36.0, 55.0, 51.11, 39.0),
    hi(0.25, 0.4375, 0.281),
    hi(0.3125, 0.5, 0.344),
    hi(0.375, 0.5625, 0.406),
    hi(0.4375, 0.625, 0.469),
    hi(0.5, 0.75, 0.562),
    hi(0.5625, 0.8125, 0.625),
    hi(0.625, 0.9375, 0.688),
    hi(0.75, 1.125, 0.812),
    hi(0.875, 1.3125, 0.938),
    hi(1.0, 1.5, 1.094),
    hi(1.125, 1.6875, 1.219),
    hi(1.25, 1.875, 1.344),
    hi(1.375, 2.0625, 1.5),
    hi(1.5, 2.25, 1.625),
];

/// call, size, largest head diameter, largest head height, key, least socket depth; in, then mm.
#[rustfmt::skip]
pub const SOCKET: &[SocketHead] = &[
    si("No. 0", 0.06, 0.096, 0.06, 0.05, 0.025),
    si("No. 1", 0.073, 0.118, 0.073, 0.0625, 0.031),
    si("No. 2", 0.086, 0.14, 0.086, 0.07812, 0.038),
    si("No. 3", 0.099, 0.161, 0.099, 0.07812, 0.044),
    si("No. 4", 0.112, 0.183, 0.112, 0.09375, 0.051),
    si("No. 5", 0.125, 0.205, 0.125, 0.09375, 0.057),
    si("No. 6", 0.138, 0.226, 0.138, 0.10938, 0.064),
    si("No. 8", 0.164, 0.27, 0.164, 0.14062, 0.077),
    si("No. 10", 0.19, 0.312, 0.19, 0.15625, 0.09),
    si("1/4", 0.25, 0.375, 0.25, 0.1875, 0.12),
    si("5/16", 0.3125, 0.469, 0.3125, 0.25, 0.151),
    si("3/8", 0.375, 0.562, 0.375, 0.3125, 0.182),
    si("7/16", 0.4375, 0.656, 0.4375, 0.375, 0.213),
    si("1/2", 0.5, 0.75, 0.5, 0.375, 0.245),
    si("5/8", 0.625, 0.938, 0.625, 0.5, 0.307),
    si("3/4", 0.75, 1.125, 0.75, 0.625, 0.37),
    si("7/8", 0.875, 1.312, 0.875, 0.75, 0.432),
    si("1", 1.0, 1.5, 1.0, 0.75, 0.495),
    si("1-1/8", 1.125, 1.688, 1.125, 0.875, 0.557),
    si("1-1/4", 1.25, 1.875, 1.25, 0.875, 0.62),
    si("1-3/8", 1.375, 2.062, 1.375, 1.0, 0.682),
    si("1-1/2", 1.5, 2.25, 1.5, 1.0, 0.745),
    sm("M1.6", 1.6, 3.0, 1.6, 1.5, 0.7),
    sm("M2", 2.0, 3.8, 2.0, 1.5, 1.0),
    sm("M2.5", 2.5, 4.5, 2.5, 2.0, 1.1),
    sm("M3", 3.0, 5.5, 3.0, 2.5, 1.3),
    sm("M4", 4.0, 7.0, 4.0, 3.0, 2.0),
    sm("M5", 5.0, 8.5, 5.0, 4.0, 2.5),
    sm("M6", 6.0, 10.0, 6.0, 5.0, 3.0),
    sm("M8", 8.0, 13.0, 8.0, 6.0, 4.0),
    sm("M10", 10.0, 16.0, 10.0, 8.0, 5.0),
    sm("M12", 12.0, 18.0, 12.0, 10.0, 6.0),
    sm("M14", 14.0, 21.0, 14.0, 12.0, 7.0),
    sm("M16", 16.0, 24.0, 16.0, 14.0, 8.0),
    sm("M20", 20.0, 30.0, 20.0, 17.0, 10.0),
    sm("M24", 24.0, 36.0, 24.0, 19.0, 12.0),
    sm("M30", 30.0, 45.0, 30.0, 22.0, 15.5),
    sm("M36", 36.0, 54.0, 36.0, 27.0, 19.0),
];

fn same(a: Length, b: Length) -> bool {
    (a - b).abs() < Length::from_mm(0.005)
}

/// The hexagon head of this size.
pub fn hex(size: Length, system: System) -> Option<&'static HexHead> {
    HEX.iter()
        .find(|h| h.system == system && same(h.size, size))
}

/// The socket head of this size.
pub fn socket(size: Length, system: System) -> Option<&'static SocketHead> {
    SOCKET
        .iter()
        .find(|h| h.system == system && same(h.size, size))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn socket_head_is_as_high_as_the_screw_is_thick() {
        for h in SOCKET {
            assert!(
                (h.head_height - h.size).abs() <= Length::from_inches(0.0008),
                "{}",
                h.call
            );
            assert!(
                h.key < h.head_diameter && h.socket_depth < h.head_height,
                "{}",
                h.call
            );
        }
    }

    #[test]
    fn sizes_rise_within_a_system() {
        for pair in HEX.windows(2) {
            if pair[0].system == pair[1].system {
                assert!(pair[0].size < pair[1].size && pair[0].across_flats < pair[1].across_flats);
                assert!(pair[0].hole > pair[0].size && pair[0].hole < pair[0].bearing);
            }
        }
    }
}
