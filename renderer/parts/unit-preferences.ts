import { createContext, useContext } from 'react';
import type { UnitPreferences } from '../units';

const UnitContext = createContext<UnitPreferences>({ length: 'mm', wire: 'metric', temperature: 'C' });

/** Gives the parts below the user's units. */
export const UnitProvider = UnitContext.Provider;

export const useUnits = (): UnitPreferences => useContext(UnitContext);
