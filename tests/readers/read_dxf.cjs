// Reads DXF files with two parsers that share no code with our writer or with each other; prints JSON.
// usage: node read_dxf.cjs FILE...   One object per file: { "dxf-parser": …, "dxf": … }, each with counts, lengths and outline areas per layer.
'use strict'
const fs = require('fs')
const DxfParser = require('dxf-parser')
const dxf = require('dxf')

const round = (bulge, a, b) => {
  const chord = Math.hypot(b.x - a.x, b.y - a.y)
  if (!bulge) return { length: chord, segment: 0 }
  const sweep = 4 * Math.atan(bulge)
  const radius = (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge))
  return { length: radius * Math.abs(sweep), segment: (radius * radius * (sweep - Math.sin(sweep))) / 2 }
}

const polyline = vertices => {
  let length = 0
  let area = 0
  vertices.forEach((a, i) => {
    const b = vertices[(i + 1) % vertices.length]
    const piece = round(a.bulge || 0, a, b)
    length += piece.length
    area += (a.x * b.y - b.x * a.y) / 2 + piece.segment
  })
  return { length, area: Math.abs(area) }
}

// Angles of an arc in radians.
const measure = (kind, e) => {
  switch (kind) {
    case 'LINE': return { length: Math.hypot(e.to.x - e.from.x, e.to.y - e.from.y) }
    case 'CIRCLE': return { length: 2 * Math.PI * e.r, area: Math.PI * e.r * e.r }
    case 'ARC': {
      const turn = 2 * Math.PI
      return { length: e.r * ((((e.end - e.start) % turn) + turn) % turn) }
    }
    case 'LWPOLYLINE': return polyline(e.vertices)
    default: return { length: 0 }
  }
}

const summary = (entities, plain) => {
  const result = { counts: {}, lengths: {}, outlines: {} }
  for (const e of entities) {
    const { layer } = e
    const counts = (result.counts[layer] ||= {})
    counts[e.type] = (counts[e.type] || 0) + 1
    const found = measure(e.type, plain(e))
    if (found.length) result.lengths[layer] = (result.lengths[layer] || 0) + found.length
    if (layer.startsWith('OUTLINE_')) (result.outlines[layer] ||= []).push({ type: e.type, area: found.area, length: found.length })
  }
  return result
}

const first = text => {
  const drawing = new DxfParser().parseSync(text)
  const result = summary(drawing.entities, e => ({
    from: e.vertices && e.vertices[0], to: e.vertices && e.vertices[1], r: e.radius, start: e.startAngle, end: e.endAngle, vertices: e.vertices
  }))
  result.dimensions = drawing.entities.filter(e => e.type === 'DIMENSION').map(e => ({ measured: e.actualMeasurement, text: e.text, block: e.block }))
  result.blocks = Object.keys(drawing.blocks).length
  return result
}

const second = text => {
  const drawing = dxf.parseString(text)
  return summary(drawing.entities, e => ({ from: e.start, to: e.end, r: e.r, start: e.startAngle, end: e.endAngle, vertices: e.vertices }))
}

process.stdout.write(JSON.stringify(process.argv.slice(2).map(file => {
  const text = fs.readFileSync(file, 'utf8')
  return { 'dxf-parser': first(text), dxf: second(text) }
})))
