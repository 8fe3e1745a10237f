import { getSource } from '@spindlewright/quantity/sources';
import { expect, it } from 'vitest';
import * as torque from './index.ts';
import { messages } from './messages/en.ts';

it('exports the functions of the contract', () => {
  const wanted = [
    'metricThread',
    'unifiedThread',
    'threadFor',
    'propertyClass',
    'torqueFromPreload',
    'preloadFromTorque',
    'assemblyLimit',
    'preloadRange',
    'wrenchSetting',
    'handForce',
    'boltStiffness',
    'frustumStiffness',
    'settlingLoss',
    'strippingEngagement',
    'checkFixing',
    'torqueTable',
  ];
  expect(Object.keys(torque)).toEqual(expect.arrayContaining(wanted));
});

it('has a sentence for every code, and fills every place in it', () => {
  for (const [code, template] of Object.entries(messages)) {
    expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(template).toMatch(/^[A-Z].*[.!]$/s);
  }
});

it('leaves no place unfilled in the findings of a busy joint', () => {
  const thread = torque.threadFor('M8x1-LH');
  const range = torque.preloadRange({
    torqueNm: 60,
    thread,
    threadFriction: 0.01,
    bearingFriction: 0.01,
    bearing: { outerDiameterMm: 13, squareHoleMm: 12.7 },
    propertyClass: '8.8',
  });
  const fixing = torque.checkFixing({
    fixing: 'bolt',
    thread,
    spindleThread: torque.threadFor('M8'),
    lengthUnderHeadMm: 22,
    threadLengthMm: 10,
    threadDepthMm: 12,
    endGapMm: 2,
    travelMm: 1,
    bearing: { outerDiameterMm: 20, squareHoleMm: 12.7 },
  });
  const findings = [...range.findings, ...fixing.findings];
  expect(findings.length).toBeGreaterThan(8);
  for (const finding of findings) {
    expect(finding.message).not.toMatch(/[{}]/);
    for (const id of finding.sources) expect(getSource(id).id).toBe(id);
  }
});
